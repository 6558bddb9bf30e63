export { DECISION_ROWS } from './database/duty-state.row.js';
export { DECISION_SCHEMAS } from './decision-schemas.js';
export { DecisionSettings } from './decision-settings.js';
export { Decisions, type DecisionsChanged, type DecisionsReopened, type OpenDuty } from './decisions.js';
export type { DutyView } from './duty-views.js';
