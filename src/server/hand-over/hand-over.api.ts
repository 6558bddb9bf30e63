export { HandOverBook } from './hand-over-book.js';
export { HandOverForms, readHandOverForms } from './hand-over-forms.js';
export { HAND_OVER_SCHEMAS } from './hand-over-schemas.js';
export { LinkSettings } from './links/link-settings.js';
export { HAND_OVER_ROWS } from './database/packet-link.row.js';
export { checkPacket } from './check-packet.js';
export type { Block } from './paper/blocks.js';
export { drawBlock } from './paper/draw-blocks.js';
