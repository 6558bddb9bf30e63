import { Injectable } from '@nestjs/common';
import { appendLeaf, frontierHead } from '../../../shared/proof/merkle-frontier.js';
import { Clock } from '../platform/clock.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import type { Author } from './actor-words.js';
import { LogRepository } from './database/log.repository.js';
import { HeadsFile } from './heads-file.js';
import { makeAmendment, type NewAmendment } from './make-amendment.js';

/** Where amendments were put: when, and the number of the last of them. */
export interface Appended {
  readonly at: string;
  readonly last: number;
}

/** The one place where the log of amendments grows. */
@Injectable()
export class RecordLog {
  constructor(
    private readonly unitOfWork: UnitOfWork,
    private readonly log: LogRepository,
    private readonly heads: HeadsFile,
    private readonly clock: Clock,
  ) {}

  /** A unit of work that writes to the record. */
  run<T>(work: () => Promise<T>): Promise<T> {
    return this.unitOfWork.run(async () => {
      await this.log.lock();
      return work();
    });
  }

  /**
   * Adds amendments in their order, within `run`; the new head leaves the database once it is committed.
   * @param before writes the incident that they belong to, where it is new
   */
  async append(
    amendments: readonly NewAmendment[],
    author: Author,
    before?: (appended: Appended) => Promise<void>,
  ): Promise<Appended> {
    const { frontier: now, lastAt } = await this.log.state();
    // A clock that was set back must not put an amendment before those that it came after.
    const at = later(this.clock.now(), lastAt);
    const rows = amendments.map((one, index) => makeAmendment(one, author, now.size + index + 1, at));
    const frontier = rows.reduce((grown, { leafHash }) => appendLeaf(grown, leafHash), now);
    const head = frontierHead(frontier);
    await before?.({ at, last: head.size });
    await this.log.add(rows);
    await this.log.save(frontier, head.root, at);
    this.unitOfWork.afterCommit(() => this.heads.append(head));
    return { at, last: head.size };
  }
}

/** Both in UTC to the millisecond, so that the order of texts is that of time. */
function later(now: string, last: string | null): string {
  return last !== null && last > now ? last : now;
}
