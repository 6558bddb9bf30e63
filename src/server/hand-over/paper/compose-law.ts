import type { Determination, Duty } from '../../../../shared/determination/determination.js';
import {
  BASIS_SENTENCES,
  clockOf,
  nameJurisdiction,
  nameKind,
  OUTCOME_WORDS,
  TRUTH_WORDS,
} from '../../../../shared/determination/duty-words.js';
import { tellTime, tellZonedTime } from '../../../../shared/report/tell-value.js';
import { tellDay } from '../../../../shared/time/tell-time.js';
import type { Block } from './blocks.js';
import { nameIds, type Names } from './name-things.js';

/** A determination as it stands in a packet. */
interface LeavingDetermination {
  readonly sequence: number;
  readonly madeAt: string;
  readonly result: Determination;
}

/** What the law was found to call for, each duty with its reasons. */
export function composeDetermination(document: object, names: Names, timeZone: string): Block[] {
  const { sequence, madeAt, result } = document as LeavingDetermination;
  return [
    {
      kind: 'text',
      text: `Determination ${sequence}, made ${tellZonedTime(madeAt, timeZone)} by the rules that the desk then had. It is no legal advice and binds nobody.`,
    },
    ...result.duties.flatMap((duty) => composeDuty(duty, names, timeZone)),
  ];
}

function composeDuty(duty: Duty, names: Names, timeZone: string): Block[] {
  const due = clockOf(duty);
  const title = `${nameKind(duty.kind)}, ${nameJurisdiction(duty.jurisdiction)}`;
  return [
    { kind: 'heading', title },
    {
      kind: 'rows',
      of: title,
      rows: [
        { label: 'Outcome', text: OUTCOME_WORDS[duty.outcome] },
        ...(due === null
          ? []
          : [{ label: duty.dueAt === null ? 'If due, by' : 'Due by', text: tellZonedTime(due, timeZone) }]),
        ...(duty.authority === null ? [] : [{ label: 'To', text: duty.authority }]),
        ...duty.reporters.map(({ text }) => ({ label: 'Who', text: nameIds(names, text) })),
        ...duty.reasons.map(({ value, text, citation = '' }) => ({
          label: `Reason: ${TRUTH_WORDS[value].toLowerCase()}`,
          text: nameIds(names, text),
          known: citation,
        })),
        { label: 'Law', text: `${duty.citations.join('; ')}. ${BASIS_SENTENCES[duty.packBasis]}` },
      ],
    },
  ];
}

/** A task as it stands in a packet. */
export interface LeavingTask {
  readonly title: string;
  readonly owner: string;
  readonly state: string;
  readonly dueAt: string | null;
}

/** What was planned and what became of it. */
export function composeTasks(tasks: object, names: Names, timeZone: string): Block[] {
  return [
    {
      kind: 'table',
      columns: [
        { title: 'Task', share: 0.44 },
        { title: 'Whose', share: 0.14 },
        { title: 'Due', share: 0.28 },
        { title: 'Stands', share: 0.14 },
      ],
      rows: (tasks as readonly LeavingTask[]).map(({ title, owner, dueAt, state }) => [
        nameIds(names, title),
        words(owner),
        dueAt === null ? 'No time' : tellTime(dueAt, timeZone),
        words(state),
      ]),
    },
  ];
}

/** `words('shift-lead')` is `'shift lead'`. */
const words = (slug: string): string => slug.replaceAll('-', ' ');

interface LeavingRequest {
  readonly counsel: string;
  readonly requestedOn: string;
  readonly entries: readonly { writtenBy: string; writtenAt: string; words: string }[];
}

/** Notes that a lawyer asked for: in packets for counsel alone. */
export function composePrivileged(requests: object, timeZone: string): Block[] {
  return [
    {
      kind: 'text',
      strong: true,
      text: 'Written at the request of counsel. Do not copy, and do not pass on.',
    },
    ...(requests as readonly LeavingRequest[]).flatMap(({ counsel, requestedOn, entries }): Block[] => [
      { kind: 'heading', title: `Asked for by ${counsel}, ${tellDay(requestedOn)}` },
      {
        kind: 'rows',
        rows: entries.map(({ writtenBy, writtenAt, words }) => ({
          label: `${writtenBy}, ${tellTime(writtenAt, timeZone)}`,
          text: words,
        })),
      },
    ]),
  ];
}
