import type { LogFault } from '../../../shared/proof/verify-log.js';

/** Something in the record that is not as it was written: a code, and a sentence that holds no word of the record. */
export interface RecordFault {
  readonly code: LogFault['code'] | OwnCode;
  readonly text: string;
}

type OwnCode =
  | 'content-removed'
  | 'withdrawn-still-there'
  | 'section-changed'
  | 'section-missing'
  | 'section-unexplained'
  | 'incident-changed'
  | 'incident-missing'
  | 'incident-unexplained'
  | 'privileged-changed'
  | 'privileged-missing'
  | 'privileged-unexplained'
  | 'privileged-not-deleted'
  | 'assignment-changed'
  | 'log-end-changed'
  | 'heads-missing'
  | 'heads-unreadable';

/** A fault of the log in words; `nameOf` says which amendment a number is. */
export function logFault(fault: LogFault, nameOf: (sequence: number) => string): RecordFault {
  return { code: fault.code, text: wordsOf(fault, nameOf) };
}

function wordsOf(fault: LogFault, nameOf: (sequence: number) => string): string {
  switch (fault.code) {
    case 'leaf-changed':
      return `${nameOf(fault.sequence)} is not the one that was written.`;
    case 'leaf-unreadable':
      return `${nameOf(fault.sequence)} cannot be read at ${fault.pointer}: ${fault.problem}`;
    case 'value-changed':
      return `${nameOf(fault.sequence)}: ${placeOf(fault.field)} is not the value that was written.`;
    case 'value-unproven':
      return `${nameOf(fault.sequence)}: ${placeOf(fault.field)} shows a value that was never committed to.`;
    case 'sequence-gap':
      return `Amendment ${fault.expected} is missing: ${fault.found} stands in its place.`;
    case 'tail-removed':
      return `The last amendments are gone: there were ${fault.remembered}, and the log ends with ${fault.found}.`;
    case 'head-mismatch':
      return `The first ${fault.size} amendments are not those whose head was kept outside the database.`;
    case 'head-unreadable':
      return `A head that was kept outside the database is none (its size is ${fault.size}).`;
  }
}

function placeOf(field: { of: string; path?: string }): string {
  return field.path === undefined ? `the ${field.of}` : `"${field.of}" at ${field.path}`;
}
