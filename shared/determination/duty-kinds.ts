import type { Duty } from './determination.js';

const CONDUCT = ['chemical-test', 'assistance-duty', 'livery-duty'];
const OTHER_MATTERS = [
  'workplace-injury-report',
  'oil-discharge-notice',
  'marine-casualty-notice',
  'marine-casualty-report',
  ...CONDUCT,
];

/** A duty to do something or to keep something: no paper answers it, so nothing is decided or filed on it. */
export function isConduct({ kind }: Pick<Duty, 'kind'>): boolean {
  return CONDUCT.includes(kind);
}

/** A duty on another matter than the accident itself: no state's accident report answers it. */
export function isOtherMatter({ kind }: Pick<Duty, 'kind'>): boolean {
  return OTHER_MATTERS.includes(kind);
}
