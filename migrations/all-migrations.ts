import { CreateOnce1795604400000 } from './1795604400000-create-once.js';
import { CreateAccounts1795608000000 } from './1795608000000-accounts.js';
import { CreateRecord1795615200000 } from './1795615200000-record.js';
import { CreateFleet1795611600000 } from './1795611600000-fleet.js';
import { CreateMail1795618800000 } from './1795618800000-mail.js';
import { CreateDutyStates1795622400000 } from './1795622400000-decision.js';
import { CreateDeterminations1795620600000 } from './1795620600000-determinations.js';
import { CreateFollowUp1795626000000 } from './1795626000000-follow-up.js';
import { CreateEvidence1795629600000 } from './1795629600000-evidence.js';
import { AddHolds1795633200000 } from './1795633200000-holds.js';
import { CreateCalendarFeeds1795636800000 } from './1795636800000-calendar-feeds.js';
import { CreateCheckedBackups1795639200000 } from './1795639200000-checked-backups.js';
import { CreateOutings1795642800000 } from './1795642800000-outings.js';
import { CreatePacketLinks1795646400000 } from './1795646400000-packet-links.js';
import { AddCounselLinks1795650000000 } from './1795650000000-counsel-links.js';
import { CreateLegalRequests1795657200000 } from './1795657200000-legal-requests.js';
import { CreateRetention1795660800000 } from './1795660800000-retention.js';
import type { Migration } from './kit/migration.js';

/** Every step of the schema, oldest first, for both engines. A step that has been released is never changed. */
export const ALL_MIGRATIONS: readonly (new () => Migration)[] = [
  CreateOnce1795604400000,
  CreateAccounts1795608000000,
  CreateFleet1795611600000,
  CreateRecord1795615200000,
  CreateMail1795618800000,
  CreateDeterminations1795620600000,
  CreateDutyStates1795622400000,
  CreateFollowUp1795626000000,
  CreateEvidence1795629600000,
  AddHolds1795633200000,
  CreateCalendarFeeds1795636800000,
  CreateCheckedBackups1795639200000,
  CreateOutings1795642800000,
  CreatePacketLinks1795646400000,
  AddCounselLinks1795650000000,
  CreateLegalRequests1795657200000,
  CreateRetention1795660800000,
];
