export { NotBackReader } from './not-back-reader.js';
export { type MonthOfOutings, type PastOuting, RentalData } from './rental-data.js';
export { OutingModule } from './outing.module.js';
export { OUTING_ROWS } from './database/outing-rows.js';
export { OUTING_SCHEMAS } from './outing-schemas.js';
