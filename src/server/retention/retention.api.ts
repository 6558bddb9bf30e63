export { RETENTION_ROWS } from './database/retention.row.js';
export { readRetentionForms } from './retention-forms.js';
export { RETENTION_SCHEMAS } from './retention-schemas.js';
