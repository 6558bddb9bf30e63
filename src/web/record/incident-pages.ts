import type { Role } from '../../../shared/kernel/role.js';
import { counsel } from '../words/counsel.js';
import { evidence } from '../words/evidence.js';
import { handOver } from '../words/hand-over.js';
import { history, wholeRecord } from '../words/history.js';
import { officer, otherOperator } from '../words/officer.js';
import { requests } from '../words/requests.js';
import { scene } from '../words/scene.js';
import { titles } from '../words/titles.js';

/** A page of one incident, by what follows its address. */
export interface IncidentPage {
  readonly path: string;
  readonly name: string;
  readonly who: readonly Role[];
}

/** Pages that the overview leads to, beside the duties and the sections. A page adds its line here when it exists. */
export const INCIDENT_PAGES: readonly IncidentPage[] = [
  { path: 'follow-up', name: titles.followUp, who: ['staff', 'manager', 'administrator', 'counsel'] },
  { path: 'shots', name: evidence.titleWithout, who: ['staff', 'manager', 'administrator', 'counsel'] },
  { path: 'officer', name: officer.titleWithout, who: ['staff', 'manager', 'administrator'] },
  { path: 'other-operator', name: otherOperator.titleWithout, who: ['staff', 'manager', 'administrator'] },
  { path: 'scene', name: scene.title, who: ['staff', 'manager', 'administrator', 'counsel'] },
  { path: 'record', name: wholeRecord.titleWithout, who: ['staff', 'manager', 'administrator', 'counsel'] },
  { path: 'history', name: history.titleWithout, who: ['staff', 'manager', 'administrator', 'counsel'] },
  { path: 'hand-over', name: handOver.name, who: ['manager', 'administrator', 'counsel'] },
  { path: 'requests', name: requests.ofIncidentTitle, who: ['manager', 'administrator', 'counsel'] },
  { path: 'counsel', name: counsel.title, who: ['staff', 'manager', 'administrator', 'counsel'] },
];
