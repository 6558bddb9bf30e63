export { HandOverForms, readHandOverForms } from './hand-over-forms.js';
export { HAND_OVER_SCHEMAS } from './hand-over-schemas.js';
export { checkPacket } from './check-packet.js';
