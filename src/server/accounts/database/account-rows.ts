import type { MappedClass } from '../../platform/database/data-source.js';
import { AccountRow } from './account.row.js';
import { AttemptRow } from './attempt.row.js';
import { CertificateRow } from './certificate.row.js';
import { DeviceRow } from './device.row.js';
import { PinConfirmationRow } from './pin-confirmation.row.js';
import { RosterEntryRow } from './roster-entry.row.js';
import { SessionRow } from './session.row.js';

/** Every row class of this module. */
export const ACCOUNT_ROWS: readonly MappedClass[] = [
  AccountRow,
  DeviceRow,
  SessionRow,
  AttemptRow,
  PinConfirmationRow,
  RosterEntryRow,
  CertificateRow,
];
