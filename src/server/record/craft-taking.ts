import { Injectable } from '@nestjs/common';
import type { Call } from '../../../shared/call/call.js';
import { readConsequence } from '../../../shared/law/read-consequence.js';
import type { Craft } from '../../../shared/record/craft-section.js';
import { readClaim } from '../../../shared/record/read-claim.js';
import { recordToFacts } from '../../../shared/record/record-to-facts.js';
import { isSectionName } from '../../../shared/wire/record-sections.js';
import { Fleet } from '../fleet/fleet.api.js';
import { refuse } from '../platform/http/refuse.js';
import { type RecordChange, RecordChanges } from './record-changes.js';

/**
 * An incident takes its craft out of service: those that the section on craft names, and before anybody has written
 * that, those that the call names in full. The fleet is told what came of the incident whenever that changes. Nothing
 * here brings a craft back: that is somebody's decision.
 */
@Injectable()
export class CraftTaking {
  constructor(
    private readonly fleet: Fleet,
    changes: RecordChanges,
  ) {
    changes.onChange((change) => this.follow(change));
  }

  private async follow({ incidentId, sections, actor, deletion, record: read }: RecordChange): Promise<void> {
    if (deletion || !sections.some(isSectionName)) return;
    const record = await read();
    const { call = {}, craft: { craft = [] } = {} } = record.sections;
    const taken = [
      ...(sections.includes('craft') ? await this.listed(craft) : []),
      ...(sections.includes('call') ? await this.named(call) : []),
    ];
    const reason = `Named in ${record.incident.reference}.`;
    for (const id of new Set(taken))
      await this.fleet.takeOut({ craft: id, incident: incidentId, reason }, actor);
    const consequence = readConsequence(recordToFacts(record), readClaim(record).claimed);
    await this.fleet.tellConsequence({ incident: incidentId, consequence }, actor);
  }

  /** @throws ProblemException 422 naming the craft that the fleet does not have */
  private async listed(craft: readonly Craft[]): Promise<string[]> {
    const ids: string[] = [];
    for (const [place, { fleetCraft }] of craft.entries()) {
      if (fleetCraft === undefined) continue;
      if (!(await this.fleet.hasCraft(fleetCraft))) {
        refuse(422, 'There is no such craft in the fleet.', `/document/craft/${place}/fleetCraft`);
      }
      ids.push(fleetCraft);
    }
    return ids;
  }

  private async named({ craftNamed = [], said = '' }: Call): Promise<string[]> {
    const ids: string[] = [];
    for (const words of [...craftNamed, said]) {
      const matches = await this.fleet.findCraft(words);
      ids.push(...matches.filter(({ named }) => named).map(({ craft }) => craft.id));
    }
    return ids;
  }
}
