import { Injectable } from '@nestjs/common';
import { determine, type DeterminationContext } from '../../../shared/determination/determine.js';
import type { Determination } from '../../../shared/determination/determination.js';
import { problemOf } from '../../../shared/wire/problem.js';
import { readIncidentFacts } from '../../../shared/wire/read-incident-facts.js';
import { ProblemException } from '../platform/http/problem.js';

const SOURCE = 'request';

/** What determinations are made with; handed in when the service is put together. */
export type Law = Pick<DeterminationContext, 'packs' | 'geography'>;

@Injectable()
export class DeterminationService {
  constructor(private readonly law: Law) {}

  /** @throws ProblemException naming every fault of the facts */
  determine(body: unknown): Determination {
    const reading = readIncidentFacts(body);
    if (!reading.ok) throw new ProblemException(problemOf(422, reading.errors, SOURCE));
    return determine(reading.facts, { ...this.law, source: SOURCE });
  }
}
