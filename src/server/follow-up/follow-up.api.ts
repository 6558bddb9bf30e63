export { FOLLOW_UP_ROWS } from './database/follow-up-rows.js';
export { DutyCrew } from './duty-crew.js';
export { EscalationWatch } from './escalation-watch.js';
export { FollowUpForms } from './follow-up-forms.js';
export { FOLLOW_UP_SCHEMAS } from './follow-up-schemas.js';
export { type DueTask, FollowUp, type TaskOfIncident } from './follow-up.service.js';
export { NoticeAddresses } from './notice-addresses.service.js';
export { WorkDeletion } from './work-deletion.js';
export type { NoticeAddress } from './notice-addresses.service.js';
