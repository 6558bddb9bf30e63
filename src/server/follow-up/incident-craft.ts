import { Injectable } from '@nestjs/common';
import type { ServiceState } from '../../../shared/record/follow-service.js';
import type { IncidentRecord } from '../../../shared/record/incident-record.js';
import { Fleet } from '../fleet/fleet.api.js';

/** One of our craft that a record names. */
export interface IncidentCraft {
  readonly id: string;
  readonly name: string;
}

/** The craft of the fleet that records name: by id in the section on craft, by name in the call. */
@Injectable()
export class IncidentCrafts {
  constructor(private readonly fleet: Fleet) {}

  async of({ sections }: IncidentRecord): Promise<IncidentCraft[]> {
    const found = new Map<string, IncidentCraft>();
    for (const { fleetCraft, name } of sections.craft?.craft ?? []) {
      if (fleetCraft !== undefined) found.set(fleetCraft, { id: fleetCraft, name: name ?? fleetCraft });
    }
    for (const words of [...(sections.call?.craftNamed ?? []), sections.call?.said ?? '']) {
      for (const { named, craft } of await this.fleet.findCraft(words)) {
        if (named) found.set(craft.id, { id: craft.id, name: craft.unitName });
      }
    }
    return [...found.values()];
  }

  /** Why a craft is kept in, in words; empty when it is in service. */
  async whyHeld(craftId: string): Promise<string[]> {
    return wordsOf(await this.fleet.serviceOf(craftId));
  }

  /** The station that a craft of the record leaves from. */
  async stationOf(record: IncidentRecord, instant: string): Promise<string | null> {
    for (const { id } of await this.of(record)) {
      const details = await this.fleet.craftAsOf(id, instant);
      if (details !== null && 'stationId' in details && typeof details.stationId === 'string') {
        return details.stationId;
      }
    }
    return null;
  }
}

function wordsOf({ holds, heldByAgency, doNotStart }: ServiceState): string[] {
  return [
    ...(heldByAgency === null ? [] : [`Held by ${heldByAgency.agency}.`]),
    ...doNotStart.map((reason) => `Do not start the engine: ${reason}`),
    ...holds.map(({ reason }) => reason),
  ];
}
