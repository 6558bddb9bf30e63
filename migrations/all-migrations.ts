import type { Migration } from './kit/migration.js';

/** Every step of the schema, oldest first, for both engines. A step that has been released is never changed. */
export const ALL_MIGRATIONS: readonly (new () => Migration)[] = [];
