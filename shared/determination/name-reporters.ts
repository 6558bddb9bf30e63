import { truthOf, type Truth } from '../kernel/truth.js';
import type { DutyRule, ReporterRule } from '../law/rule-pack.js';
import type { IncidentFacts, Vessel } from '../record/incident-facts.js';
import type { Reporter } from './determination.js';

/**
 * Who must act, one entry for each vessel concerned. Under 33 CFR 173.55(c) the owner reports when the
 * operator cannot; for a rental the operator is the customer and the business is the owner. An operator who
 * died or is missing cannot report, whatever else is stated.
 */
export function nameReporters(
  rule: Pick<DutyRule, 'who' | 'whoNote'>,
  facts: IncidentFacts,
  vessels: readonly Vessel[],
): Reporter[] {
  if (rule.who.includes('employer')) return [{ vessel: null, who: 'employer', text: words(rule.whoNote) }];
  if (vessels.length === 0) return [reporterOf(rule, facts, null)];
  return vessels.map((vessel) => reporterOf(rule, facts, vessel));
}

function reporterOf(
  rule: Pick<DutyRule, 'who' | 'whoNote'>,
  facts: IncidentFacts,
  vessel: Vessel | null,
): Reporter {
  const { who, text } = nameReporter(rule.who, operatorAble(facts, vessel));
  const people = peopleWords(vessel);
  const words = [text, people, rule.whoNote].filter((part) => part !== '').join(' ');
  return { vessel: vessel?.id ?? null, who, text: words };
}

/** Whether the operator of the vessel can report: false for who died or is missing. */
function operatorAble(facts: IncidentFacts, vessel: Vessel | null): Truth {
  const operators = facts.people.filter(
    (person) => person.role === 'operator' && (person.vessel ?? vessel?.id) === vessel?.id,
  );
  const lost = operators.some(({ outcome }) => outcome === 'died' || outcome === 'missing');
  return lost ? 'false' : truthOf(facts.operatorAbleToReport);
}

function words(note: string): string {
  return ['The employer, which is the business.', note].filter((part) => part !== '').join(' ');
}

function nameReporter(rules: readonly ReporterRule[], able: Truth): Pick<Reporter, 'who' | 'text'> {
  const names = (rule: ReporterRule): boolean => rules.includes(rule);
  if (rules.length === 0) {
    return {
      who: 'operator-or-owner',
      text: 'The law read does not say who; the operator or the owner should act.',
    };
  }
  if (names('person-in-charge')) {
    return { who: 'person-in-charge', text: 'The person in charge of the vessel.' };
  }
  if (names('livery')) return { who: 'owner', text: 'The business, which rents the craft out.' };
  if (names('operator-or-owner') || (names('operator') && names('owner'))) {
    return { who: 'operator-or-owner', text: 'The operator or the owner.' };
  }
  if (names('owner')) return { who: 'owner', text: 'The owner.' };
  if (names('owner-if-operator-cannot') || names('owner-if-no-operator')) return elseOwner(able);
  if (names('anyone-aboard-if-operator-cannot') || names('anyone-aboard')) return elseAnyoneAboard(able);
  if (able === 'false') {
    const text =
      'The law read names only the operator, who cannot: the owner should act, and ask the agency.';
    return { who: 'operator-or-owner', text };
  }
  return { who: 'operator', text: 'The operator.' };
}

function elseOwner(able: Truth): Pick<Reporter, 'who' | 'text'> {
  switch (able) {
    case 'true':
      return { who: 'operator', text: 'The operator.' };
    case 'false':
      return { who: 'owner', text: 'The owner, because the operator cannot.' };
    case 'unknown':
      return { who: 'operator-else-owner', text: 'The operator; the owner if the operator cannot.' };
  }
}

function elseAnyoneAboard(able: Truth): Pick<Reporter, 'who' | 'text'> {
  switch (able) {
    case 'true':
      return { who: 'operator', text: 'The operator.' };
    case 'false':
      return {
        who: 'anyone-aboard',
        text: 'Each person aboard must do it or see that it is done: the operator cannot.',
      };
    case 'unknown': {
      const text =
        'The operator; if the operator cannot, each person aboard must do it or see that it is done. The owner should make sure.';
      return { who: 'operator-or-owner', text };
    }
  }
}

function peopleWords(vessel: Vessel | null): string {
  if (vessel === null) return '';
  if (vessel.use === 'rental') {
    const owner = vessel.ours ? 'the business' : 'the business that rents it out';
    return `For ${vessel.id}, a rental, the operator is the customer and the owner is ${owner}.`;
  }
  return vessel.ours ? `For ${vessel.id} the owner is the business.` : '';
}
