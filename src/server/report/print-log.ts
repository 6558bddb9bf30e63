import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { canonicalBytes } from '../../../shared/proof/canonical-json.js';
import { sha256Hex } from '../../../shared/proof/sha256-hex.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { ServiceSections } from '../record/record.api.js';
import { type Printed, ReportBook } from './report-book.js';

/** What was printed, before it is known as what. */
interface Print extends Pick<Printed, 'report' | 'paper' | 'at'> {
  readonly content: object;
}

/** Keeps with an incident who printed what: paper leaves the house. */
@Injectable()
export class PrintLog {
  constructor(
    private readonly sections: ServiceSections,
    private readonly book: ReportBook,
  ) {}

  /** The same content by the same person is kept once. */
  async note(incidentId: string, { report, paper, content, at }: Print, actor: PersonActor): Promise<void> {
    const hash = sha256Hex(canonicalBytes(content));
    await this.sections.run(async () => {
      const book = await this.book.read(incidentId);
      const before = book.printed.some(
        (one) =>
          one.report === report &&
          one.paper === paper &&
          one.content === hash &&
          one.by.account === actor.accountId,
      );
      if (before) return;
      const by = { account: actor.accountId, person: actor.personName, role: actor.role };
      const printed = { id: randomUUID(), report, paper, by, at, content: hash };
      await this.book.write(incidentId, { ...book, printed: [...book.printed, printed] }, actor);
    });
  }
}
