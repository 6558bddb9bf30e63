export { REQUEST_ROWS } from './database/legal-request.row.js';
export { OpenRequests } from './open-requests.js';
export { REQUEST_SCHEMAS } from './request-schemas.js';
