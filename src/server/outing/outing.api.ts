export { OUTING_ROWS } from './database/outing-rows.js';
export { OUTING_SCHEMAS } from './outing-schemas.js';
