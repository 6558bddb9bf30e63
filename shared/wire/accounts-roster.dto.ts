import type { FieldError } from '../kernel/field-error.js';
import { DayFact, IdOf, LineFact } from './accounts-facts.js';
import { MayBeAbsent, MayBeNull, OneOf } from './declare-fact.js';
import { PageQueryDto } from './page-query.dto.js';

/** What somebody does on a day. The shift lead decides on the spot, and may release a craft with little damage. */
export const DUTIES = [
  'shift-lead',
  'dock',
  'check-in',
  'briefing',
  'guide',
  'rescue',
  'maintenance',
  'office',
] as const;

export type Duty = (typeof DUTIES)[number];

export class RosterEntryDto {
  @IdOf('the account of the person')
  accountId: string;

  @OneOf(DUTIES)
  duty: Duty;

  /** The first day, and the last one: the same for a single day. */
  @DayFact()
  from: string;

  @DayFact()
  to: string;
}

export class RosterEntryChangeDto {
  @MayBeAbsent()
  @OneOf(DUTIES)
  duty?: Duty;

  @MayBeAbsent()
  @DayFact()
  from?: string;

  @MayBeAbsent()
  @DayFact()
  to?: string;
}

/** Who is on, on each day from one to another. */
export class RosterQueryDto {
  @DayFact()
  from: string;

  @DayFact()
  to: string;
}

export class DayQueryDto {
  @DayFact()
  day: string;
}

/** Certificates as they stand on a day. */
export class CertificatesQueryDto extends PageQueryDto {
  @DayFact()
  day: string;
}

export class CertificateDto {
  @IdOf('the account of the person')
  accountId: string;

  @LineFact('what is certified, such as first aid')
  title: string;

  @MayBeNull()
  @LineFact('the number on the certificate', 80)
  number?: string | null;

  @MayBeNull()
  @DayFact()
  issuedOn?: string | null;

  /** The last day on which it is good; null where it has no end. */
  @MayBeNull()
  @DayFact()
  expiresOn?: string | null;
}

export class CertificateChangeDto {
  @MayBeAbsent()
  @LineFact('what is certified, such as first aid')
  title?: string;

  @MayBeNull()
  @LineFact('the number on the certificate', 80)
  number?: string | null;

  @MayBeNull()
  @DayFact()
  issuedOn?: string | null;

  @MayBeNull()
  @DayFact()
  expiresOn?: string | null;
}

/**
 * A last day must not lie before the first. Days are compared as text, which is their order.
 * @example findDayOrderFaults('2026-06-13', '2026-06-12', '/to')
 * // [{ pointer: '/to', detail: 'Must not be before 2026-06-13.' }]
 */
export function findDayOrderFaults(
  first: string | null | undefined,
  last: string | null | undefined,
  pointer: string,
): FieldError[] {
  if (first === null || first === undefined || last === null || last === undefined || first <= last)
    return [];
  return [{ pointer, detail: `Must not be before ${first}.` }];
}
