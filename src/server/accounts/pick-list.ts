import { Injectable } from '@nestjs/common';
import { Clock } from '../platform/clock.js';
import { readInput } from '../platform/http/read-input.js';
import { type PersonOnDuty, RosterService } from './roster.service.js';

const DAY_MS = 24 * 60 * 60_000;

/** The names that a shared device shows: of today alone, as whoever holds it may be anyone. */
@Injectable()
export class PickList {
  constructor(
    private readonly roster: RosterService,
    private readonly clock: Clock,
  ) {}

  /** @param day as the device has it: of the zones of the earth, the dates differ from UTC by one day at most */
  async of(day: string): Promise<{ day: string; people: PersonOnDuty[] }> {
    const today = this.clock.now().slice(0, 10);
    if (Math.abs(Date.parse(day) - Date.parse(today)) > DAY_MS) {
      const errors = [
        { pointer: '/day', detail: 'Must be today where you are: a shared device shows no other day.' },
      ];
      return readInput<never>({ ok: false, errors }, 'query');
    }
    return { day, people: await this.roster.onDuty(day) };
  }
}
