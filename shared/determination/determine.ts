import { readOccurrence } from '../law/read-occurrence.js';
import type { RulePack } from '../law/rule-pack.js';
import { readPeople } from '../law/test-people.js';
import type { Geography } from '../place/geography.js';
import type { IncidentFacts } from '../record/incident-facts.js';
import { zoneClock } from '../time/zone-clock.js';
import { chooseStates } from './choose-states.js';
import { chooseZone } from './choose-zone.js';
import { determinePack, determineNumberNotices, type Case } from './determine-pack.js';
import type { Determination } from './determination.js';
import { determineOther, isOther, listUnasked } from './determine-other.js';
import { jurisdictionId } from './jurisdiction-id.js';
import { weighAids } from './weigh-aids.js';
import { determineNowhere, determineState } from './determine-state.js';

/** What a determination works with beside the facts. */
export interface DeterminationContext {
  /** The federal pack (`US`), one of each jurisdiction that was read, and those on other matters. */
  readonly packs: readonly RulePack[];
  readonly geography: Geography;
  /** Where the facts came from, for example a file's path or `request`. */
  readonly source: string;
}

/**
 * Which reports and notices the law calls for on the facts as they stand: the federal duties, then those of
 * each candidate state on its own, the accident report first; duties on other matters follow where the facts speak of them.
 *
 * The facts must have passed the reader in `wire/`. Nothing is read from a clock: the same facts, packs and
 * geography give the same answer anywhere.
 * @throws Error when the federal pack is not among the packs.
 */
export function determine(facts: IncidentFacts, context: DeterminationContext): Determination {
  const zone = chooseZone(facts, context.geography);
  const occurrence = readOccurrence(facts, zoneClock(zone));
  const chosen = chooseStates(facts.place, context.geography);
  const states = chosen.states.map(({ state }) => state);
  const packs = context.packs.filter((pack) => !isOther(pack));
  const at: Case = {
    occurrence,
    people: readPeople(occurrence),
    candidates: states,
    aids: packs.flatMap((pack) => pack.aids ?? []),
  };
  const federal = packs.find(({ jurisdiction }) => jurisdiction === 'US');
  if (federal === undefined) throw new Error('The federal rule pack (US) is missing');
  return {
    schemaVersion: 1,
    source: context.source,
    timeZone: zone,
    states: [...chosen.states],
    duties: [
      ...determinePack(federal, at),
      ...determineOther(context.packs, 'US', at),
      ...states.flatMap((state) => [
        ...determineState(state, packs, at, chosen.offShore.has(state)),
        ...determineOther(context.packs, state, at),
      ]),
      ...(states.length === 0 ? [determineNowhere(packs, at)] : []),
      ...packs.flatMap((pack) => determineNumberNotices(pack, at)),
    ],
    notAsked: listUnasked(context.packs, facts),
    aids: weighAids(packs, ['us', ...states.map(jurisdictionId)], facts),
  };
}
