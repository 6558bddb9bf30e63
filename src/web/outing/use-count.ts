import { useStore } from '../app/store.js';
import { type Asked, useAsk } from '../ask/use-ask.js';
import { useChoices } from '../call/use-choices.js';
import { useOutbox } from '../device/outbox.js';
import { useSession } from '../session/session.js';
import type { Counted, CountedCraft, CountReceipt, CountView } from './count-answers.js';
import { answeredHere, countPath, keyOf, waitingAnswers } from './count-queue.js';
import { useReceipt } from './receipts.js';
import type { WhereAnswer } from './service-answers.js';

export interface CountHere {
  readonly view: CountView | undefined;
  readonly known: CountReceipt;
  readonly craft: readonly CountedCraft[];
  /** How many answers are only on this device. */
  readonly waiting: number;
}

interface Asking {
  readonly unitName: string;
  readonly colours: readonly string[];
  readonly dueBackAt: string | null;
}

/** A count with what waits on this device; `here` is undefined while nothing is known of it. */
export function useCount(
  id: string,
): Pick<Asked<unknown>, 'error' | 'loading' | 'keptAt' | 'again'> & { readonly here: CountHere | undefined } {
  const { me } = useSession();
  const asked = useAsk<CountView>(me === null ? null : countPath(id), { keep: true });
  const list = useAsk<WhereAnswer>(me === null ? null : '/api/outings', { keep: true });
  const receipt = useReceipt<CountReceipt>(id);
  const choices = useChoices();
  const items = useOutbox(id);
  const local = useStore(answeredHere);
  const rest = { error: asked.error, loading: asked.loading, keptAt: asked.keptAt, again: asked.again };
  const view = asked.data;
  const known = view ?? receipt;
  if (known === undefined) return { ...rest, here: undefined };
  const stationId = view?.stationId ?? null;
  const fleet: readonly Asking[] =
    list.data?.items.filter(
      (one) => stationId === null || one.stationId === null || one.stationId === stationId,
    ) ?? choices.craft.map(({ unitName, colours }) => ({ unitName, colours, dueBackAt: null }));
  const waiting = waitingAnswers(items);
  const said = new Map((view?.answers ?? []).map((one) => [one.unitName, one]));
  const craft = [...fleet].sort(byName).map((one): CountedCraft => {
    const here = waiting.get(one.unitName);
    return {
      ...answerOf(here ?? said.get(one.unitName) ?? local.get(keyOf(id, one.unitName))),
      unitName: one.unitName,
      colours: one.colours,
      dueBackAt: one.dueBackAt,
      onlyHere: here !== undefined,
      ...(here === undefined &&
        known.unanswered.includes(one.unitName) &&
        unanswered(said.has(one.unitName))),
      ...(here === undefined && view === undefined && isAnsweredUnseen(one.unitName)),
    };
  });
  function isAnsweredUnseen(unitName: string): Partial<CountedCraft> {
    const isSeen = local.has(keyOf(id, unitName)) || known?.unanswered.includes(unitName);
    return isSeen === true ? {} : { answer: 'answered' };
  }
  return { ...rest, here: { view, known, craft, waiting: waiting.size } };
}

const unanswered = (askedAgain: boolean): Partial<CountedCraft> => ({
  answer: null,
  where: null,
  askedAgain,
});

function answerOf(counted: Counted | undefined): Pick<CountedCraft, 'answer' | 'where' | 'askedAgain'> {
  return { answer: counted?.answer ?? null, where: counted?.where ?? null, askedAgain: false };
}

const byName = (one: Asking, other: Asking): number =>
  one.unitName.localeCompare(other.unitName, 'en', { numeric: true });
