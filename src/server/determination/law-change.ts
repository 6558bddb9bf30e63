import { Injectable, type OnApplicationBootstrap } from '@nestjs/common';
import type { ServiceActor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { ServiceSections } from '../record/record.api.js';
import { DeterminationsRepository } from './database/determinations.repository.js';
import { Determinations } from './determinations.js';
import { Law } from './law-in-force.js';

const AT_ONCE = 50;
const LAW_CHANGED: ServiceActor = { kind: 'service', personName: 'the service, as the law was corrected' };

/** When the service starts with other packs than last time, every incident is determined under them. */
@Injectable()
export class LawChange implements OnApplicationBootstrap {
  constructor(
    private readonly rows: DeterminationsRepository,
    private readonly sections: ServiceSections,
    private readonly determinations: Determinations,
    private readonly law: Law,
    private readonly clock: Clock,
  ) {}

  async onApplicationBootstrap(): Promise<void> {
    if ((await this.rows.lawApplied()) === this.law.digest) return;
    for (let after: string | null = null; ;) {
      const ids: string[] = await this.sections.ids(after, AT_ONCE);
      await this.sections.run(async () => {
        for (const id of ids) {
          // Facts that were deleted when their time was over would count as unknown, and reopen what was settled.
          const { deletions = [] } = await this.sections.read<{ deletions: object[] }>(id, 'retention');
          if (deletions.length === 0) await this.determinations.bringForward(id, LAW_CHANGED);
        }
      });
      after = ids.at(-1) ?? null;
      if (ids.length < AT_ONCE) break;
    }
    // Last, so that a start that was cut short is done again.
    await this.sections.run(() => this.rows.setLawApplied(this.law.digest, this.clock.now()));
  }
}
