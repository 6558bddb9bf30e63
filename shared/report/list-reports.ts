import { valueOf } from '../call/known.js';
import type { Craft } from '../record/craft-section.js';
import type { IncidentRecord } from '../record/incident-record.js';
import type { ReportHead, Reporter } from './filled-report.js';
import { operatorsOf } from './find-operators.js';

/**
 * The reports of an incident, one for each of our craft and each reporter: the owner's, which is the business's where
 * the operator cannot report (33 CFR 173.55(c)), and the operator's (33 CFR 173.55(a)). While no craft is known to be
 * ours, every one that may be is in; while none is named at all, there is one report without a craft.
 * @example listReports(recordOfABareCall).map(({ id }) => id) // ['_.owner', '_.operator']
 */
export function listReports({ sections }: Pick<IncidentRecord, 'sections'>): ReportHead[] {
  const craft = ownCraft(sections.craft?.craft ?? []);
  if (craft.length === 0)
    return (['owner', 'operator'] as const).map((reporter) => headOf(null, reporter, true));
  return craft.flatMap((one) => [
    headOf(one, 'owner', false),
    headOf(one, 'operator', isDrivenByCustomer(one, sections)),
  ]);
}

function ownCraft(craft: readonly Craft[]): Craft[] {
  const ours = craft.filter(({ ours, fleetCraft }) => ours === true || fleetCraft !== undefined);
  return ours.length > 0 ? ours : craft.filter(({ ours }) => ours !== false);
}

function headOf(craft: Craft | null, reporter: Reporter, customer: boolean): ReportHead {
  return {
    id: `${craft?.id ?? '_'}.${reporter}`,
    craft: craft?.id ?? null,
    reporter,
    vessel: craft === null ? 'No craft named yet' : nameOf(craft),
    customerWrites: reporter === 'operator' && customer,
  };
}

/** `nameOf({ id: 'c1' })` is `'c1'`. */
export function nameOf({ id, name }: Pick<Craft, 'id' | 'name'>): string {
  return name ?? id;
}

/** Only somebody who is known to work here writes our report; where nobody has said, it is a customer's. */
function isDrivenByCustomer(craft: Craft, sections: IncidentRecord['sections']): boolean {
  const use = valueOf(craft.use);
  if (use === 'staff-operated' || use === 'passenger-for-hire') return false;
  const drivers = operatorsOf(craft.id, sections);
  return drivers.length === 0 || drivers.some(({ employee }) => valueOf(employee) !== 'yes');
}
