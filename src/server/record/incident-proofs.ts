import { Injectable } from '@nestjs/common';
import { buildTree, type MerkleTree } from '../../../shared/proof/merkle-log.js';
import type { LogEntry } from '../../../shared/proof/verify-amendment.js';
import { AmendmentsRepository } from './database/amendments.repository.js';
import { entryOf } from './verify-log-rows.js';

/** What proves an incident to a stranger. */
export interface IncidentProof {
  /** Of the whole log, of which it is a part. */
  readonly tree: MerkleTree;
  /** The amendments of the incident with every opening there is, oldest first: for whoever decides what of it leaves. */
  readonly entries: readonly LogEntry[];
}

/** The log as other modules prove things by it. */
@Injectable()
export class IncidentProofs {
  constructor(private readonly amendments: AmendmentsRepository) {}

  /** Within `ServiceSections.run`, so that the log does not grow meanwhile. */
  async read(incidentId: string): Promise<IncidentProof> {
    const rows = await this.amendments.ofIncident(incidentId);
    return { tree: buildTree(await this.amendments.leafHashes()), entries: rows.map(entryOf) };
  }
}
