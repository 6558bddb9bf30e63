import { Injectable } from '@nestjs/common';
import { type HouseRule, rulesOn } from '../../../shared/follow-up/house-rule.js';
import { readHouseRules } from '../../../shared/wire/follow-up-requests.dto.js';
import { zoneClock } from '../../../shared/time/zone-clock.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import type { AdoptedHouseRulesRow } from './database/adopted-house-rules.row.js';
import { HouseRepository } from './database/house.repository.js';
import { FollowUpForms } from './follow-up-forms.js';

export interface HouseRulesView {
  /** What rental businesses often write; in force nowhere by itself. */
  readonly offered: readonly HouseRule[];
  /** All that were ever adopted, the first written first. */
  readonly adopted: readonly AdoptedHouseRulesRow[];
  /** Id of those in force today; null while none are. */
  readonly inForce: string | null;
}

/** The rules that the owner adopted. None holds before, and none by itself. */
@Injectable()
export class HouseRules {
  constructor(
    private readonly house: HouseRepository,
    private readonly forms: FollowUpForms,
    private readonly createOnce: CreateOnce,
    private readonly clock: Clock,
  ) {}

  async read(): Promise<HouseRulesView> {
    const adopted = await this.house.rules();
    // A day begins somewhere before it begins here: rules adopted for today are never shown a day late.
    const today = zoneClock('UTC').localDate(Date.parse(this.clock.now()));
    const current = rulesOn(adopted, today);
    const inForce = adopted.find((rules) => rules === current)?.id ?? null;
    return { offered: this.forms.houseRules, adopted, inForce };
  }

  async adopt(body: unknown, key: string | undefined, actor: PersonActor): Promise<AdoptedHouseRulesRow> {
    const { adoptedOn, document, rules = [] } = readInput(readHouseRules(body));
    const request = { operation: 'house-rules', key: readIdempotencyKey(key), body };
    const { id } = await this.createOnce.run(request, (newId) =>
      this.house.addRules({
        id: newId,
        adoptedOn,
        document,
        rules: rules.map(({ id: rule, value }) => ({ id: rule, value: value ?? null })),
        person: actor.personName,
        accountId: actor.accountId,
        recordedAt: this.clock.now(),
      }),
    );
    const row = (await this.house.rules()).find((one) => one.id === id);
    return row ?? refuse(404, 'There are no such rules.');
  }
}
