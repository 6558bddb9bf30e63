import { Injectable } from '@nestjs/common';
import { determine } from '../../../shared/determination/determine.js';
import type { Determination } from '../../../shared/determination/determination.js';
import { problemOf } from '../../../shared/wire/problem.js';
import { readIncidentFacts } from '../../../shared/wire/read-incident-facts.js';
import { ProblemException } from '../platform/http/problem.js';
import { Law } from './law-in-force.js';

const SOURCE = 'request';

@Injectable()
export class DeterminationService {
  constructor(private readonly law: Law) {}

  /** @throws ProblemException naming every fault of the facts */
  determine(body: unknown): Determination {
    const reading = readIncidentFacts(body);
    if (!reading.ok) throw new ProblemException(problemOf(422, reading.errors, SOURCE));
    const { packs, geography } = this.law;
    return determine(reading.facts, { packs, geography, source: SOURCE });
  }
}
