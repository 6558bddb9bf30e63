import type { IncidentRecord } from '../../../../shared/record/incident-record.js';
import { localDayOf } from '../../../../shared/record/when-it-happened.js';
import type { Fleet } from '../../fleet/fleet.api.js';

type Policy = Awaited<ReturnType<Fleet['policiesFor']>>[number];

/** A policy with those of our craft in the incident that it schedules, by their ids in the record. */
export interface CoveringPolicy {
  readonly policy: Policy;
  readonly craft: readonly string[];
}

export interface Coverage {
  readonly policies: readonly CoveringPolicy[];
  /** Our craft that no policy schedules which held on that day, by their ids in the record. */
  readonly uncovered: readonly string[];
}

/** Which policies held on the day for which of our craft: one first notice goes for each. */
export async function coverageOf(record: IncidentRecord, fleet: Fleet): Promise<Coverage> {
  const day = localDayOf(record);
  const ours = (record.sections.craft?.craft ?? []).filter(({ fleetCraft }) => fleetCraft !== undefined);
  const found = new Map<string, { policy: Policy; craft: string[] }>();
  const uncovered: string[] = [];
  for (const { id, fleetCraft = '' } of ours) {
    const policies = await fleet.policiesFor(fleetCraft, day);
    if (policies.length === 0) uncovered.push(id);
    for (const policy of policies) {
      const one = found.get(policy.id) ?? { policy, craft: [] };
      one.craft.push(id);
      found.set(policy.id, one);
    }
  }
  return { policies: [...found.values()], uncovered };
}
