import { valueOf } from '../call/known.js';
import type { DamageLine } from '../record/damage-section.js';
import type { IncidentRecord } from '../record/incident-record.js';
import { nameListed } from '../record/name-listed.js';
import { hasUnlistedFinding } from '../record/record-to-facts.js';
import type { Remark, Subject, Subjects } from './report-matter.js';

type Sections = Pick<IncidentRecord, 'sections'>;

/** What was damaged, but for what was known to be so before the craft went out. */
export function chooseDamage({ sections }: Sections): Subjects {
  return choose(sections, () => true, 'Nothing was damaged.');
}

/** What was damaged and belongs to no craft of the record. */
export function chooseOtherProperty({ sections }: Sections): Subjects {
  return choose(sections, isOther, 'No other property was damaged.');
}

function isOther({ of, craft }: DamageLine): boolean {
  const kind = valueOf(of);
  return craft === undefined && kind !== 'vessel' && kind !== 'vessel-equipment';
}

function choose(
  sections: Sections['sections'],
  which: (line: DamageLine) => boolean,
  none: string,
): Subjects {
  const lines = (sections.damage?.lines ?? [])
    .filter(({ newSinceCheckOut }) => valueOf(newSinceCheckOut) !== 'no')
    .filter(which);
  const remarks = listMayGrow(sections);
  const empty: Remark = { name: null, state: 'answered', text: none, section: 'damage', path: '/lines' };
  return {
    subjects: lines.map((line) => subjectOf(line, sections)),
    remarks: lines.length + remarks.length === 0 ? [empty] : remarks,
  };
}

function subjectOf(line: DamageLine, { craft, damage }: Sections['sections']): Subject {
  const { id, material, labour } = line;
  const name = nameListed('Damage', damage?.lines ?? [], { id });
  const of = craft?.craft?.find((one) => one.id === line.craft);
  const amount =
    line.amount ?? (material === undefined && labour === undefined ? undefined : { material, labour });
  return {
    name: of === undefined ? name : `${nameListed('Craft', craft?.craft ?? [], of)}, ${name}`,
    section: 'damage',
    path: `/lines/${id}`,
    value: { ...line, amount },
  };
}

function listMayGrow(sections: Sections['sections']): Remark[] {
  const whole = valueOf(sections.damage?.assessment) === 'complete';
  if (whole && !hasUnlistedFinding(sections)) return [];
  const text = whole
    ? 'Something found at check-in has no line of damage.'
    : 'Nobody has said that all damage is listed.';
  return [{ name: null, state: 'missing', text, section: 'damage', path: '/assessment' }];
}
