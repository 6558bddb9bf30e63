export { NotBackReader } from './not-back-reader.js';
export { OutingModule } from './outing.module.js';
export { OUTING_ROWS } from './database/outing-rows.js';
export { OUTING_SCHEMAS } from './outing-schemas.js';
