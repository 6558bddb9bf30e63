import type { RulePack, ScopeAid } from '../law/rule-pack.js';
import type { IncidentFacts, ScopeAnswer } from '../record/incident-facts.js';
import type { ShownAid } from './determination.js';
import { jurisdictionId } from './jurisdiction-id.js';
import type { ScopePart } from './scope-part.js';

/**
 * The questions whether it is a reportable occurrence at all that these facts suggest, or that somebody answered. An aid
 * by itself changes nothing: it shows what a source says and what is not known, and a person answers.
 */
export function weighAids(
  packs: readonly RulePack[],
  jurisdictions: readonly string[],
  facts: IncidentFacts,
): ShownAid[] {
  return packs.flatMap((pack) => {
    const own = jurisdictionId(pack.jurisdiction);
    if (pack.subject !== undefined || !jurisdictions.includes(own)) return [];
    return (pack.aids ?? []).flatMap((aid) => {
      const answers = answersTo(aid.id, facts);
      if (answers.length === 0 && !isSuggested(aid, facts)) return [];
      const { id, question, text, source, basis, notKnown } = aid;
      return [{ jurisdiction: own, id, question, text, source, basis, notKnown, answers: [...answers] }];
    });
  });
}

/**
 * What people answered for one jurisdiction, as conditions of its accident duties. The last answer to an aid counts, and
 * only "not reportable" takes a duty away; an answer to an aid that no pack holds counts for nothing.
 */
export function answeredParts(
  aids: readonly ScopeAid[],
  jurisdiction: string,
  facts: IncidentFacts,
): ScopePart[] {
  return aids.flatMap((aid) => {
    const answer = answersTo(aid.id, facts).findLast((one) => one.jurisdictions.includes(jurisdiction));
    if (answer === undefined) return [];
    const out = answer.answer === 'not-reportable';
    return [
      {
        name: `answer-${aid.id}`,
        value: out ? 'false' : 'true',
        text: `${aid.question} ${answer.by} answered on ${answer.at}: ${out ? 'not a reportable occurrence' : 'reportable'}. Reason: ${answer.reason}`,
        citation: aid.source,
        open: [],
      },
    ];
  });
}

function answersTo(aid: string, { scopeAnswers = [] }: IncidentFacts): readonly ScopeAnswer[] {
  return scopeAnswers.filter((answer) => answer.aid === aid);
}

function isSuggested({ suggestedBy }: ScopeAid, { casualtyTypes, vessels }: IncidentFacts): boolean {
  if (suggestedBy.casualtyTypes?.some((type) => casualtyTypes.includes(type)) === true) return true;
  switch (suggestedBy.vessels) {
    case 'without-motor':
      return vessels.some(({ motorized }) => motorized === 'no');
    case 'lost':
      return vessels.some(({ completeLoss }) => completeLoss === 'yes');
    case 'none-of-ours-numbered':
      return vessels.length > 0 && vessels.every(({ ours, numbered }) => ours !== true && numbered === 'no');
    default:
      return false;
  }
}
