import type { Duty } from '../determination/determination.js';

/** A number of the station, as the fleet keeps it. */
export interface StationNumber {
  readonly of: 'dispatch' | 'wardens' | 'coast-guard' | 'tow' | 'hospital' | 'insurer' | 'counsel' | 'other';
  readonly name: string;
  readonly phone?: string;
  readonly channel?: string;
  readonly note?: string;
}

/** One line of the list of whom to call, for a thumb. */
export interface CallLine {
  readonly name: string;
  readonly of: StationNumber['of'];
  /** RFC 3966; null where only a radio channel is known. */
  readonly tel: string | null;
  readonly phone: string | null;
  readonly channel: string | null;
  readonly note: string | null;
  /** What to call them about, in words. */
  readonly about: readonly string[];
}

const ORDER: readonly StationNumber['of'][] = [
  'dispatch',
  'coast-guard',
  'wardens',
  'hospital',
  'tow',
  'insurer',
  'counsel',
  'other',
];

/** Who takes a notice of death or disappearance (33 CFR 173.53(a)): the nearest reporting authority, a state or the Coast Guard. */
const AUTHORITIES: readonly StationNumber['of'][] = ['dispatch', 'coast-guard', 'wardens'];

/** A marine casualty is told to the Coast Guard, and to nobody else (46 CFR 4.05-1(a)). */
const COAST_GUARD_ALONE = 'marine-casualty-notice';

export type NoticeToGive = Pick<Duty, 'outcome' | 'authority' | 'kind' | 'telephone'>;

/** Emergency services come before any number of a station. */
const EMERGENCY: CallLine = {
  name: 'Emergency services',
  of: 'dispatch',
  tel: 'tel:911',
  phone: '911',
  channel: 'VHF 16',
  note: 'First, if anyone is hurt, missing or in danger.',
  about: [],
};

/**
 * Whom to call, the most urgent first: emergency services, the numbers that the law names, then those of the station,
 * those that can take a notice saying which.
 * @param notices duties that are or may be due and are told by telephone or without delay
 * @example buildCallList([], [])[0].tel // 'tel:911'
 */
export function buildCallList(
  numbers: readonly StationNumber[],
  notices: readonly NoticeToGive[],
): CallLine[] {
  const local = notices.filter(({ telephone }) => telephone === undefined);
  const lines = numbers.map((number): CallLine => ({
    name: number.name,
    of: number.of,
    tel: number.phone === undefined ? null : telOf(number.phone),
    phone: number.phone ?? null,
    channel: number.channel ?? null,
    note: number.note ?? null,
    about: AUTHORITIES.includes(number.of)
      ? local.filter(({ kind }) => kind !== COAST_GUARD_ALONE || number.of === 'coast-guard').map(words)
      : [],
  }));
  return [
    EMERGENCY,
    ...linesOfLaw(notices),
    ...lines.sort((a, b) => ORDER.indexOf(a.of) - ORDER.indexOf(b.of)),
  ];
}

/** Numbers that the law itself names: each once, whatever is to be said there. */
function linesOfLaw(notices: readonly NoticeToGive[]): CallLine[] {
  const numbers = new Map(
    notices.flatMap(({ telephone }) =>
      telephone === undefined ? [] : [[telephone.number, telephone] as const],
    ),
  );
  return [...numbers.values()].map(({ name, number }) => ({
    name,
    of: 'other',
    tel: telOf(number),
    phone: number,
    channel: null,
    note: null,
    about: notices.filter(({ telephone }) => telephone?.number === number).map(words),
  }));
}

function words({ outcome, authority, kind, telephone }: NoticeToGive): string {
  const what = `${outcome === 'required' ? 'Give' : 'May be due'}: ${kind.replaceAll('-', ' ')}`;
  return authority === null || telephone !== undefined ? what : `${what}, to ${authority}`;
}

/** An extension stays an extension (RFC 3966): `telOf('(903) 555-0142 x 7')` is `'tel:9035550142;ext=7'`. */
export function telOf(phone: string): string {
  const [number = '', extension] = phone.split(/\s*(?:ext\.?|x|#)\s*/i);
  const digits = number.replaceAll(/\D/g, '');
  const plus = number.trim().startsWith('+') ? '+' : '';
  const ext = (extension ?? '').replaceAll(/\D/g, '');
  return `tel:${plus}${digits}${ext === '' ? '' : `;ext=${ext}`}`;
}
