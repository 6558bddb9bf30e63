import { CreateOnce1795604400000 } from './1795604400000-create-once.js';
import type { Migration } from './kit/migration.js';

/** Every step of the schema, oldest first, for both engines. A step that has been released is never changed. */
export const ALL_MIGRATIONS: readonly (new () => Migration)[] = [CreateOnce1795604400000];
