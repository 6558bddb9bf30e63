import { truthOf } from '../kernel/truth.js';
import type { NoticeRule, RulePack } from '../law/rule-pack.js';
import type { IncidentFacts, Vessel } from '../record/incident-facts.js';
import { commercialServicePart, readService } from './commercial-service.js';
import { factPart, vesselCondition, vesselPart, type ScopePart, type VesselCondition } from './scope-part.js';

const FEDERAL_SCOPE = '33 CFR 173.51';

/**
 * What must hold before a pack's duties apply: for the federal rule waters, vessel and coverage
 * (33 CFR 173.51), for a state the vessel and the pack's own limits. Federal waters never touch a state duty.
 */
export function applyScope(pack: RulePack, facts: IncidentFacts): ScopePart[] {
  switch (pack.appliesTo) {
    case 'federal-scope':
      return [federalWaters(facts), involvesVessel(facts), vesselCovered(facts)];
    case 'employer':
      return [];
    case 'federal-waters':
      return [federalWaters(facts, null)];
    case 'commercial-service':
      return [federalWaters(facts, null), commercialServicePart(facts)];
    case 'rented-out':
      return [rentedOut(facts)];
    default:
      return stateScope(pack, facts);
  }
}

function stateScope(pack: RulePack, facts: IncidentFacts): ScopePart[] {
  const parts = [involvesVessel(facts)];
  if (pack.appliesTo === 'motorized' || pack.appliesTo === 'numbered' || pack.excludes.length > 0) {
    const text = 'Some vessel involved is one that the state law covers.';
    parts.push(vesselPart('vessel-covered', text, facts.vessels, (vessel) => packConditions(pack, vessel)));
  }
  return parts;
}

/** Whether a vessel is known to be outside the pack's reach; then nobody reports for it. */
export function isOutside(pack: RulePack, vessel: Vessel): boolean {
  switch (pack.appliesTo) {
    case 'federal-scope':
      return federalConditions(vessel).some(({ value }) => value === 'false');
    case 'commercial-service':
      return readService(vessel, 0).value === 'false';
    case 'rented-out':
      return !isRentedOut(vessel);
    default:
      return packConditions(pack, vessel).some(({ value }) => value === 'false');
  }
}

/** Where a report of an officer stands for the operator's own; not known leaves the duty, and is not asked. */
export function officerExcuse(pack: RulePack, facts: IncidentFacts): ScopePart[] {
  if (pack.officerReportExcuses !== 'yes') return [];
  const filed = facts.officerFiledReport === 'yes';
  const text = filed
    ? "An officer has filed a report, which here stands for the operator's."
    : "No officer's report is known that would stand for the operator's.";
  return [{ name: 'officer-report', value: filed ? 'false' : 'true', text, citation: null, open: [] }];
}

/** The condition of a notice; one that only words say is a question of law. */
export function noticeCondition(
  pack: RulePack,
  notice: NoticeRule,
  facts: IncidentFacts,
  candidates: readonly string[],
): ScopePart[] {
  const { condition, onlyWhen } = notice;
  const text = `Due only when: ${onlyWhen}`;
  if (condition === null) {
    const point = { fact: null, text: `Is the notice due here? ${text}`, proves: true, denies: true };
    return [{ name: 'condition', value: 'unknown', text, citation: null, open: [point] }];
  }
  switch (condition.is) {
    case 'always':
      return [];
    case 'fact': {
      const known = truthOf(facts[condition.fact]);
      const wanted = condition.equals === 'yes' ? 'true' : 'false';
      const value = known === 'unknown' ? known : known === wanted ? 'true' : 'false';
      return [
        factPart('condition', condition.fact, value, { text, question: CONDITION_QUESTIONS[condition.fact] }),
      ];
    }
    case 'vessel-use':
      return [
        vesselPart('condition', text, facts.vessels, (vessel) => [
          { member: 'use', value: vessel.use === condition.use ? 'true' : 'false', question: '' },
        ]),
      ];
    case 'numbered-here-occurred-elsewhere':
      return [
        vesselPart('numbered-here', text, facts.vessels, (vessel) => [numberedHere(pack, vessel)]),
        occurredElsewhere(pack, candidates, text),
      ];
  }
}

const CONDITION_QUESTIONS = {
  officerAtScene: 'Was a peace officer at the scene?',
  operatorAbleToReport: 'Is the operator able to make the report?',
} as const;

function isRentedOut({ ours, use }: Vessel): boolean {
  return ours === true && use === 'rental';
}

function rentedOut({ vessels }: IncidentFacts): ScopePart {
  const value = vessels.some(isRentedOut) ? 'true' : 'false';
  return {
    name: 'rented-out',
    value,
    text: 'Some vessel is one that the business rents out.',
    citation: null,
    open: [],
  };
}

function federalWaters(facts: IncidentFacts, citation: string | null = FEDERAL_SCOPE): ScopePart {
  const value = truthOf(facts.federalWaters ?? 'yes');
  const words = {
    text: 'On waters subject to the jurisdiction of the United States (taken as so unless said otherwise).',
    question: 'Was it on waters subject to the jurisdiction of the United States?',
  };
  return factPart('federal-waters', 'federalWaters', value, words, citation);
}

function involvesVessel(facts: IncidentFacts): ScopePart {
  const value = truthOf(facts.involvesVesselOrEquipment ?? 'yes');
  const words = {
    text: 'The occurrence involves a vessel or its equipment (taken as so unless said otherwise).',
    question: 'Did the occurrence involve a vessel or its equipment?',
  };
  return factPart('involves-vessel', 'involvesVesselOrEquipment', value, words);
}

function vesselCovered(facts: IncidentFacts): ScopePart {
  const text = 'Some vessel is used for recreation (a rental is) or must be numbered, and is not inspected.';
  return vesselPart('vessel-covered', text, facts.vessels, federalConditions, FEDERAL_SCOPE);
}

/** An inspection that is not known does not undo the federal report; only a known one does. */
function federalConditions(vessel: Vessel): VesselCondition[] {
  const inspected = vessel.inspected === 'yes' ? 'false' : 'true';
  const known: VesselCondition = { member: 'inspected', value: inspected, question: '' };
  const recreational = vessel.use === 'rental' || vessel.use === 'recreational';
  return recreational ? [known] : [known, vesselCondition(vessel, 'numbered', 'yes')];
}

function packConditions(pack: RulePack, vessel: Vessel): VesselCondition[] {
  const conditions = pack.excludes.map((excluded) => vesselCondition(vessel, excluded, 'no'));
  if (pack.appliesTo === 'motorized' || pack.appliesTo === 'numbered') {
    conditions.push(vesselCondition(vessel, pack.appliesTo, 'yes'));
  }
  return conditions;
}

function numberedHere(pack: RulePack, vessel: Vessel): VesselCondition {
  const question = `Which state numbered ${vessel.id}?`;
  if (vessel.stateOfNumber !== undefined) {
    return {
      member: 'stateOfNumber',
      value: vessel.stateOfNumber === pack.jurisdiction ? 'true' : 'false',
      question,
    };
  }
  return { member: 'stateOfNumber', value: vessel.numbered === 'no' ? 'false' : 'unknown', question };
}

/** Outside the state's waters: no while the state is the only candidate, not known while it is one of several. */
function occurredElsewhere(pack: RulePack, candidates: readonly string[], text: string): ScopePart {
  const here = candidates.includes(pack.jurisdiction);
  const value =
    candidates.length === 0 || (here && candidates.length > 1) ? 'unknown' : here ? 'false' : 'true';
  const point = {
    fact: '/place',
    text: `Was it outside the waters of ${pack.name}?`,
    proves: true,
    denies: true,
  };
  return {
    name: 'occurred-elsewhere',
    value,
    text,
    citation: null,
    open: value === 'unknown' ? [point] : [],
  };
}
