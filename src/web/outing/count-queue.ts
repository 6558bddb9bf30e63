import { AskError } from '../ask/ask-error.js';
import { Store } from '../app/store.js';
import { queueRequest } from '../device/outbox.js';
import type { QueuedItem } from '../device/outbox-item.js';
import { dayIn } from '../look/tell-instant.js';
import { nowByService } from '../look/use-now.js';
import { closingCount as say } from '../words/closing-count.js';
import type { Counted, CountReceipt } from './count-answers.js';
import { noteReceipt } from './receipts.js';
import { sendOrKeep } from './send-or-keep.js';
import type { CountAnswer } from './service-answers.js';

export const countPath = (id: string): string => `/api/closing-counts/${id}`;

/** What was answered on this device while the page is open, by count and unit: a device is not told it again. */
export const answeredHere = new Store<ReadonlyMap<string, Counted>>(new Map());

export const keyOf = (id: string, unitName: string): string => `${id} ${unitName}`;

/**
 * Begins a count and gives its id; the one that somebody began before where there is one.
 * @param units what is to be counted, as far as this device knows, for when there is no signal
 * @throws AskError where the service does not take it
 */
export async function beginCount(stationId: string | undefined, units: readonly string[]): Promise<string> {
  const id = crypto.randomUUID();
  try {
    const answer = await sendOrKeep<CountReceipt>({
      line: id,
      about: say.begin.about,
      path: '/api/closing-counts',
      body: { id, ...(stationId !== undefined && { stationId }) },
      key: crypto.randomUUID(),
      opens: true,
    });
    await noteReceipt(answer ?? ({ id, version: 0, day: dayIn(), unanswered: units } satisfies CountReceipt));
    return id;
  } catch (error) {
    const open = error instanceof AskError ? (error.problem.current as CountReceipt | undefined) : undefined;
    if (open === undefined) throw error;
    await noteReceipt(open);
    return open.id;
  }
}

/** Answers for a craft as it is seen at this moment; it is on the disk when this returns. */
export async function answerCount(
  id: string,
  unit: string,
  answer: CountAnswer,
  where: string | null,
): Promise<void> {
  await queueRequest({
    line: id,
    about: say.about(unit, say[answer]),
    method: 'POST',
    path: `${countPath(id)}/answers`,
    body: {
      unit,
      answer,
      ...(where !== null && { where }),
      at: new Date(nowByService()).toISOString(),
    },
  });
  answeredHere.set(new Map(answeredHere.value).set(keyOf(id, unit), { unitName: unit, answer, where }));
}

/** The latest answer for each craft that waits on this device, by unit. */
export function waitingAnswers(waiting: readonly QueuedItem[]): Map<string, Counted> {
  const answers = new Map<string, Counted>();
  for (const item of waiting) {
    if (item.kind !== 'request' || !item.path.endsWith('/answers')) continue;
    if (item.state === 'refused' || item.state === 'conflict') continue;
    const { unit, answer, where = null } = item.body as { unit: string; answer: CountAnswer; where?: string };
    answers.set(unit, { unitName: unit, answer, where });
  }
  return answers;
}
