import { Injectable } from '@nestjs/common';
import { onDay, type RetentionFacts } from '../../../shared/retention/retention-facts.js';
import type { RetentionKind } from '../../../shared/retention/retention-form.js';
import { RentalData } from '../outing/outing.api.js';
import { MailRows } from '../platform/database/mail-rows.js';
import { RetentionForms } from './retention-forms.js';
import { keyOf, lastDayOf, type RetentionSubject } from './retention-subject.js';
import type { Standing } from './incident-subjects.js';

interface Month {
  readonly month: string;
  readonly count: number;
  readonly version: number;
}

/** What is kept of no incident: rental data and mail, month by month, each from the last day of its month. */
@Injectable()
export class MonthSubjects {
  constructor(
    private readonly forms: RetentionForms,
    private readonly rentals: RentalData,
    private readonly mails: MailRows,
  ) {}

  async all(standing: Standing): Promise<RetentionSubject[]> {
    const found: RetentionSubject[] = [];
    for (const kind of this.forms.form.kinds) {
      for (const month of await this.monthsOf(kind)) found.push(this.subject(kind, month, standing));
    }
    return found;
  }

  async one(kind: RetentionKind, month: string, standing: Standing): Promise<RetentionSubject | undefined> {
    const found = (await this.monthsOf(kind)).find((one) => one.month === month);
    return found && this.subject(kind, found, standing);
  }

  private monthsOf({ of }: RetentionKind): Promise<Month[]> {
    if (of === 'outings') return this.rentals.months();
    return of === 'mails' ? this.mails.monthsWithText() : Promise.resolve([]);
  }

  private subject(
    kind: RetentionKind,
    { month, count, version }: Month,
    standing: Standing,
  ): RetentionSubject {
    // A month of UTC ends at most a day after that of any zone of the business, and never before what was in it.
    const last = onDay(dayAfter(lastDayOf(month)));
    const facts: RetentionFacts = {
      starts: { return: last, queued: last },
      employeeHurt: 'false',
      states: null,
      chosenMonths: standing.chosenMonths,
      keptUntil: standing.keptUntil.get(keyOf(kind.id, month)) ?? null,
    };
    const holds = { [kind.of]: count };
    const periods = this.forms.periodsOf(kind);
    return { kind, periods, facts, version, incidentId: null, reference: null, month, holds };
  }
}

function dayAfter(day: string): string {
  return new Date(Date.parse(day) + 86_400_000).toISOString().slice(0, 10);
}
