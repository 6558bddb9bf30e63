import { CraftNoteRow } from './craft-note.row.js';
import { CraftRow } from './craft.row.js';
import { KeptVersionRow } from './kept-version.row.js';
import { PlaceRow } from './place.row.js';
import { PolicyRow } from './policy.row.js';
import { ReleaseAmountRow } from './release-amount.row.js';
import { ServiceStepRow } from './service-step.row.js';
import { StationRow } from './station.row.js';

/** Every row of the fleet. */
export const FLEET_ROWS = [
  StationRow,
  CraftRow,
  PlaceRow,
  PolicyRow,
  KeptVersionRow,
  CraftNoteRow,
  ServiceStepRow,
  ReleaseAmountRow,
];
