import type { CallableCraft, CraftMatch } from '../../../shared/call/match-craft.js';
import { matchCraft } from '../../../shared/call/match-craft.js';
import type { ServiceState } from '../../../shared/record/follow-service.js';
import { type Consequence, isGraver, weighConsequence } from '../../../shared/record/weigh-consequence.js';
import type { StationNumberDto } from '../../../shared/wire/fleet-station.dto.js';
import type { Actor } from '../accounts/accounts.api.js';
import type { UnitOfWork } from '../platform/database/unit-of-work.js';
import type { CraftRow } from './database/craft.row.js';
import type { KeptThings } from './database/kept-things.js';
import type { PolicyRow } from './database/policy.row.js';
import type { ServiceSteps } from './database/service-steps.js';
import type { StationRow } from './database/station.row.js';
import { nameKey } from './name-key.js';
import type { ServiceBook } from './service-book.js';

/** A craft as a call finds it. */
export interface FoundCraft extends CallableCraft {
  readonly id: string;
  readonly inService: boolean;
}

/** A craft of the fleet as lists of where craft are show it. */
export type CraftInUse = Pick<
  CraftRow,
  | 'id'
  | 'unitName'
  | 'colours'
  | 'type'
  | 'registrationNumber'
  | 'make'
  | 'model'
  | 'fuel'
  | 'stationId'
  | 'inService'
>;

export type FoundStation = Pick<StationRow, 'id' | 'name' | 'timeZone' | 'latitude' | 'longitude'>;

export interface FleetParts {
  readonly unitOfWork: UnitOfWork;
  readonly craft: KeptThings<CraftRow>;
  readonly stations: KeptThings<StationRow>;
  readonly policies: KeptThings<PolicyRow>;
  readonly steps: ServiceSteps;
  readonly book: ServiceBook;
}

/** What other modules ask of the fleet. What it writes becomes a part of the unit of work that they run. */
export class Fleet {
  constructor(private readonly parts: FleetParts) {}

  /** The craft in the fleet that a caller may mean, the likeliest first. */
  async findCraft(words: string): Promise<CraftMatch<FoundCraft>[]> {
    const fleet = await this.parts.craft.inUse();
    return matchCraft(
      words,
      fleet.map(({ id, unitName, colours, type, registrationNumber, inService }) => ({
        id,
        unitName,
        colours: colours ?? [],
        type,
        registrationNumber,
        inService,
      })),
    );
  }

  /** All craft of the fleet, by name. */
  inUse(): Promise<CraftInUse[]> {
    return this.parts.craft.inUse();
  }

  /** The craft with this unit name, without regard to letter case, blanks and zeros before numbers. */
  async craftCalled(unit: string): Promise<CraftInUse | null> {
    const key = nameKey(unit);
    return (await this.parts.craft.inUse()).find(({ sortKey }) => sortKey === key) ?? null;
  }

  /** A craft by its id, retired ones among them. */
  craft(craftId: string): Promise<CraftInUse | null> {
    return this.parts.craft.find(craftId);
  }

  station(stationId: string): Promise<FoundStation | null> {
    return this.parts.stations.find(stationId);
  }

  /** The IANA zone that all stations share; null where there is none, or they lie in several. */
  async commonTimeZone(): Promise<string | null> {
    const zones = new Set((await this.parts.stations.inUse()).map(({ timeZone }) => timeZone));
    const [zone = null] = zones;
    return zones.size === 1 ? zone : null;
  }

  async hasCraft(craftId: string): Promise<boolean> {
    return (await this.parts.craft.find(craftId)) !== null;
  }

  /** The details of a craft as they were written down by an instant; null before it was in the fleet. */
  async craftAsOf(craftId: string, instant: string): Promise<object | null> {
    return (await this.parts.craft.versionAsOf(craftId, instant))?.details ?? null;
  }

  /** Whom to call from a station. */
  async numbersOf(stationId: string): Promise<readonly StationNumberDto[]> {
    return (await this.parts.stations.find(stationId))?.numbers ?? [];
  }

  /** Policies that schedule a craft and hold on a day. */
  async policiesFor(craftId: string, day: string): Promise<PolicyRow[]> {
    return (await this.parts.policies.inUse()).filter(
      ({ scheduledCraft, firstDay, lastDay }) =>
        scheduledCraft.includes(craftId) && firstDay <= day && day <= lastDay,
    );
  }

  serviceOf(craftId: string): Promise<ServiceState> {
    return this.parts.book.stateOf(craftId);
  }

  /** Takes a craft out of service for an incident; once is enough. */
  takeOut(
    {
      craft,
      incident,
      reason,
      at = null,
    }: { craft: string; incident: string; reason: string; at?: string | null },
    actor: Actor,
  ): Promise<void> {
    return this.parts.unitOfWork.run(async () => {
      const { holds } = await this.parts.book.stateOf(craft);
      if (holds.some((hold) => hold.incident === incident)) return;
      await this.parts.book.add(craft, { at, step: { kind: 'taken-out', incident, reason } }, actor);
    });
  }

  /**
   * Tells the fleet what an incident came to, as far as it is known; to be told again whenever that changes. A craft
   * that was released when the incident looked lighter is taken out again.
   */
  tellConsequence(
    { incident, consequence }: { incident: string; consequence: Consequence },
    actor: Actor,
  ): Promise<void> {
    return this.parts.unitOfWork.run(async () => {
      for (const craft of await this.parts.steps.craftOf(incident)) {
        await this.tellCraft(craft, incident, consequence, actor);
      }
    });
  }

  /** A craft was named for an incident by mistake. */
  notConcerned(
    { craft, incident, reason }: { craft: string; incident: string; reason: string },
    actor: Actor,
  ): Promise<void> {
    return this.parts.book.add(craft, { at: null, step: { kind: 'not-concerned', incident, reason } }, actor);
  }

  /**
   * Releases a craft from an incident.
   * @throws ProblemException 409 with every reason against it
   */
  release(
    release: { craft: string; incident: string; photographs: readonly string[]; remark: string | null },
    actor: Actor,
  ): Promise<void> {
    const { craft, ...rest } = release;
    const step = { kind: 'released', ...rest, gravity: null, ownerAmountCents: null } as const;
    return this.parts.book.add(craft, { at: null, step }, actor);
  }

  private async tellCraft(
    craft: string,
    incident: string,
    consequence: Consequence,
    actor: Actor,
  ): Promise<void> {
    const { holds, released } = await this.parts.book.stateOf(craft);
    const hold = holds.find((one) => one.incident === incident);
    const before = released.find((one) => one.incident === incident);
    if (hold !== undefined && same(hold.consequence, consequence)) return;
    if (hold === undefined) {
      if (before === undefined || !isGraver(weighConsequence(consequence), before.gravity)) return;
      await this.takeOut(
        { craft, incident, reason: 'The incident is graver than when the craft was released.' },
        actor,
      );
    }
    await this.parts.book.add(craft, { at: null, step: { kind: 'weighed', incident, consequence } }, actor);
  }
}

function same(one: Consequence, other: Consequence): boolean {
  return (Object.keys(one) as (keyof Consequence)[]).every(
    (name) => JSON.stringify(one[name]) === JSON.stringify(other[name]),
  );
}
