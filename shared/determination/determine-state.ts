import { STATE_NAMES } from '../place/state-codes.js';
import type { RulePack } from '../law/rule-pack.js';
import { askNow, askTheState } from './ask-the-state.js';
import type { Duty, Question } from './determination.js';
import { determinePack, reportClock, type Case } from './determine-pack.js';
import { jurisdictionId } from './jurisdiction-id.js';

const WHERE: Question = { fact: '/place', text: 'Where did it happen: in which state, or at what position?' };
const WHOSE_WATERS: Question = {
  fact: '/place',
  text: 'The position lies in no state: did it happen in the waters of this one?',
};

/**
 * The duties of one candidate state. One that was chosen only because the position lies off its shore keeps
 * the question of place last, wherever its duty is not ruled out.
 */
export function determineState(
  state: string,
  packs: readonly RulePack[],
  at: Case,
  offShore: boolean,
): Duty[] {
  const pack = packs.find(({ jurisdiction }) => jurisdiction === state);
  const duties = pack === undefined ? [withoutPack(state, at)] : determinePack(pack, at);
  if (!offShore) return duties;
  return duties.map((duty) =>
    duty.outcome === 'not-required' ? duty : { ...duty, questions: [...duty.questions, WHOSE_WATERS] },
  );
}

/**
 * No place, or one beyond every state's reach: one undetermined duty that asks where, with the earliest
 * deadline that any state's report could have on these facts.
 */
export function determineNowhere(packs: readonly RulePack[], at: Case): Duty {
  const duty = askTheState({
    jurisdiction: 'state',
    kind: 'accident-report',
    why: 'Each state has its own law, and no state is known.',
    packBasis: 'not-read',
    authority: null,
    facts: at.occurrence.facts,
    questions: [WHERE],
  });
  const clocks = packs
    .filter(({ jurisdiction }) => jurisdiction !== 'US')
    .flatMap((pack) => {
      const clock = reportClock(pack, at);
      return clock === null ? [] : [{ ...clock, jurisdiction: jurisdictionId(pack.jurisdiction) }];
    });
  const [soonest] = clocks.sort((a, b) => a.at - b.at || Number(b.immediate) - Number(a.immediate));
  if (soonest === undefined) return duty;
  return {
    ...duty,
    immediate: soonest.immediate,
    dueAtIfRequired: at.occurrence.clock.format(soonest.at),
    dueBasis: `the earliest of all states, here ${soonest.jurisdiction}: ${soonest.basis}`,
  };
}

function withoutPack(state: string, at: Case): Duty {
  const name = STATE_NAMES[state] ?? state;
  return askTheState({
    jurisdiction: jurisdictionId(state),
    kind: 'accident-report',
    why: `The law of ${name} has not been read.`,
    packBasis: 'not-read',
    authority: null,
    facts: at.occurrence.facts,
    questions: [askNow(name)],
  });
}
