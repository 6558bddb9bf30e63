export { DETERMINATION_ROWS } from './database/determination.row.js';
export {
  type DeterminationChange,
  type DeterminationListener,
  Determinations,
  type StoredDetermination,
} from './determinations.js';
export type { PackVersion } from './pack-version.js';
export { SCOPE_ANSWER_SCHEMAS } from './scope-answer-schemas.js';
export { Law } from './law-in-force.js';
