import { callsForHold, type LegalRequest } from './legal-request.js';

/** Something to mind about a request, with where it comes from. */
export interface RequestCaution {
  readonly key: string;
  readonly words: string;
  readonly source: string;
}

const PRACTICE = 'common practice, no source';

/** Written for a manager who has the paper on the desk; nothing here is legal advice. */
const CAUTIONS = {
  read: {
    key: 'read',
    words: 'Nobody has read this paper yet. Read it today: what it asks and by when is not known until then.',
    source: PRACTICE,
  },
  counsel: {
    key: 'counsel',
    words:
      'Counsel has to see it first. Until then answer nothing, sign nothing, and change or throw away nothing that it may be about.',
    source: PRACTICE,
  },
  silence: {
    key: 'silence',
    words:
      'Do not talk about it with whoever served it or with the other side: give your name, take the paper, and say that counsel will answer.',
    source: PRACTICE,
  },
  keep: {
    key: 'keep',
    words:
      'Keep everything that it may be about, also what is deleted by itself: camera recordings, messages, craft trackers. Tell whoever holds some of it.',
    source: 'Fed. R. Civ. P. 37(e)',
  },
  objections: {
    key: 'objections',
    words:
      'Objections to a federal subpoena have to be served before the earlier of the time for compliance and 14 days after it was served. An agreement about the first does not move the second.',
    source: 'Fed. R. Civ. P. 45(d)(2)(B)',
  },
  state: {
    key: 'state',
    words:
      'How long there is to object, and how, is for the law of the court that it comes from: ask counsel.',
    source: PRACTICE,
  },
  unknown: {
    key: 'unknown',
    words: 'No due time is known. Ask whoever sent it, through counsel where there is one: it may be short.',
    source: PRACTICE,
  },
  day: {
    key: 'day',
    words: 'Only a day is stated. It counts here to its last minute; an office may close hours earlier.',
    source: 'Fed. R. Civ. P. 6(a)(4), for filing in a federal court',
  },
  medical: {
    key: 'medical',
    words:
      'Medical detail and papers of identity stay out of an answer unless counsel says otherwise: the paper may not be enough to give them to whoever asks.',
    source: PRACTICE,
  },
  identity: {
    key: 'identity',
    words:
      'Make sure that whoever asks is who they say. Whether and by when they must get an answer differs by state: ask counsel.',
    source: PRACTICE,
  },
  scope: {
    key: 'scope',
    words: 'It is not known which incidents it concerns. Nothing is deleted while that is open.',
    source: PRACTICE,
  },
} as const satisfies Record<string, RequestCaution>;

/**
 * What to mind about a request as it stands, the first thing first.
 * @example adviseOnRequest(servedPaperNobodyRead).map(({ key }) => key) // ['read', 'counsel', 'silence', 'scope']
 */
export function adviseOnRequest(request: Pick<LegalRequest, 'details' | 'incidents'>): RequestCaution[] {
  const { details, incidents } = request;
  const { kind, counselSawAt, court, due } = details;
  const unread = kind === 'not-read';
  const ofCourt = kind === 'subpoena' || kind === 'court-order';
  const counselFirst = unread || callsForHold(kind);
  const applies: readonly (readonly [boolean, RequestCaution])[] = [
    [unread, CAUTIONS.read],
    [counselFirst && counselSawAt === undefined, CAUTIONS.counsel],
    [counselFirst, CAUTIONS.silence],
    [callsForHold(kind), CAUTIONS.keep],
    [kind === 'subpoena' && court === 'federal', CAUTIONS.objections],
    [ofCourt && court !== 'federal', CAUTIONS.state],
    [!unread && due === 'unknown', CAUTIONS.unknown],
    [due === 'day', CAUTIONS.day],
    [kind === 'access-request', CAUTIONS.identity],
    [!unread && kind !== 'preservation-letter', CAUTIONS.medical],
    [incidents.every(({ ended }) => ended !== undefined), CAUTIONS.scope],
  ];
  return applies.flatMap(([does, caution]) => (does ? [caution] : []));
}
