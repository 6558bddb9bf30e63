import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { RetentionPeriodDto } from '../../../shared/wire/retention-requests.dto.js';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { assertFresh } from '../platform/http/entity-tag.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import { RetentionRepository } from './database/retention.repository.js';
import { RetentionForms } from './retention-forms.js';

/** The times that the business itself chose. Those of a law are not for it to change. */
@Injectable()
export class RetentionChoices {
  constructor(
    private readonly rows: RetentionRepository,
    private readonly forms: RetentionForms,
    private readonly unitOfWork: UnitOfWork,
    private readonly clock: Clock,
  ) {}

  /** Everything that decides how long what is kept, with the choices that stand. */
  async kinds() {
    const chosen = await this.rows.choices();
    const { kinds, majority, soonDays } = this.forms.form;
    return {
      soonDays,
      majority,
      kinds: kinds.map((kind) => ({
        ...kind,
        periods: this.forms.periodsOf(kind).map((period) => {
          const choice = chosen.get(period.id);
          return {
            ...period,
            doubts: period.doubts ?? [],
            chosenMonths: choice?.months ?? null,
            chosenWhy: choice?.reason ?? null,
            version: choice?.version ?? 0,
          };
        }),
      })),
    };
  }

  async months(): Promise<Record<string, number>> {
    return Object.fromEntries([...(await this.rows.choices())].map(([id, { months }]) => [id, months]));
  }

  async lengthen(id: string, body: unknown, ifMatch: string | undefined, actor: PersonActor) {
    const { months, reason } = readInput(readRecordInput(RetentionPeriodDto, body));
    const period = this.forms.period(id) ?? refuse(404, 'There is no such period.');
    if (period.basis !== 'choice')
      refuse(409, 'The law sets this time: it is not for the business to change.');
    if (months < period.months)
      refuse(422, `Must be at least ${period.months} months: it can be lengthened.`, '/months');
    await this.unitOfWork.run(async () => {
      const before = (await this.rows.choices()).get(id);
      const version = before?.version ?? 0;
      assertFresh(ifMatch, { version }, { months });
      const { accountId, personName: person, role } = actor;
      const at = this.clock.now();
      const row = { id: randomUUID(), period: id, months, reason, person, role, accountId, at };
      await this.rows.addChoice({ ...row, version: version + 1 });
    });
    return this.kinds();
  }
}
