import { Injectable } from '@nestjs/common';
import { flattenSection } from '../../../shared/record/flatten-section.js';
import { reasonOf } from '../../../shared/record/replay-amendments.js';
import type { WithdrawDto, WithdrawReasonDto } from '../../../shared/wire/record-requests.dto.js';
import type { Actor } from '../accounts/accounts.api.js';
import { AmendmentsRepository } from './database/amendments.repository.js';
import { DraftsRepository } from './database/drafts.repository.js';
import { IncidentsRepository } from './database/incidents.repository.js';
import { Holds } from './holds.js';
import { assertRole, IncidentAccess, sectionNamed } from './incident-access.js';
import { type SectionView, viewOf } from './incident-views.js';
import { RecordLog } from './record-log.js';
import { refuse } from '../platform/http/refuse.js';
import { SectionWriter, unwritten } from './section-writer.js';
import { isUnder, without, WithdrawnContent } from './withdrawn-content.js';

/**
 * Takes the content of a field out of the record, wherever it ever stood: the section, the amendments, the drafts. The
 * commitments stay, so that the log still proves itself, and so does the reason. While the incident is held, content goes
 * on the direction of counsel alone.
 */
@Injectable()
export class WithdrawalsService {
  constructor(
    private readonly log: RecordLog,
    private readonly writer: SectionWriter,
    private readonly content: WithdrawnContent,
    private readonly incidents: IncidentsRepository,
    private readonly amendments: AmendmentsRepository,
    private readonly drafts: DraftsRepository,
    private readonly access: IncidentAccess,
    private readonly holds: Holds,
  ) {}

  async withdraw(
    id: string,
    name: string,
    { path, reason, ...direction }: WithdrawDto,
    actor: Actor,
  ): Promise<SectionView> {
    assertRole(actor, 'manager', 'administrator');
    const section = REASONS_OF_THE_SERVICE[name]?.test(path) === true ? name : sectionNamed(name);
    return this.log.run(async () => {
      await this.access.find(id, actor);
      await this.directed(id, direction, { section, path }, actor);
      const incident = await this.access.find(id, actor);
      const withdrawn = await this.content.pathsUnder(id, section, path);
      assertWithdrawable(path, withdrawn);
      const before = (await this.incidents.section(id, section)) ?? unwritten(id, section);
      await this.clearDrafts(id, section, path);
      return viewOf(await this.content.takeOut(incident, before, withdrawn, reason, actor));
    });
  }

  /** Of the words by which an amendment was justified, where they should not have been written. */
  async withdrawReason(
    id: string,
    sequence: number,
    { reason, ...direction }: WithdrawReasonDto,
    actor: Actor,
  ): Promise<{ sequence: number; reasonWithdrawn: true }> {
    assertRole(actor, 'manager', 'administrator');
    await this.log.run(async () => {
      await this.access.find(id, actor);
      const row = await this.amendments.find(id, sequence);
      if (row === null || row.reasonOpening === null)
        refuse(404, 'There is no reason that could be withdrawn.');
      const { section } = row;
      const path = reasonOf(sequence);
      await this.directed(id, direction, { section, path }, actor);
      await this.amendments.dropReason(sequence);
      const incident = await this.access.find(id, actor);
      const before = (await this.incidents.section(id, section)) ?? unwritten(id, section);
      const change = { document: before.document, reason, withdrawn: [path] };
      await this.writer.amend(incident, before, change, actor);
    });
    return { sequence, reasonWithdrawn: true };
  }

  /** While the incident is held, counsel is named with the day of the direction; that is noted with the holds. */
  private async directed(
    id: string,
    { counsel, directedOn }: Pick<WithdrawDto, 'counsel' | 'directedOn'>,
    what: { section: string; path: string },
    actor: Actor,
  ): Promise<void> {
    if (counsel !== undefined && directedOn !== undefined) {
      await this.holds.noteWithdrawal(id, { ...what, counsel, directedOn }, actor);
      return;
    }
    const missing = counsel === undefined ? '/counsel' : '/directedOn';
    if (await this.holds.isHeld(id)) refuse(409, HELD, missing);
    if (counsel !== undefined || directedOn !== undefined) refuse(422, BOTH, missing);
  }

  private async clearDrafts(id: string, section: string, path: string): Promise<void> {
    for (const draft of await this.drafts.ofSection(id, section)) {
      const paths = [...flattenSection(draft.document).keys()].filter((one) => isUnder(one, path));
      if (paths.length > 0) {
        await this.drafts.save({ ...draft, document: without(draft.document, new Set(paths)) });
      }
    }
  }
}

/**
 * In sections of the service only the words of a reason go: that a hold began, by whom it was released, and what was
 * answered to the question whether it is reportable, stays.
 */
const REASONS_OF_THE_SERVICE: Readonly<Record<string, RegExp>> = {
  holds: /^\/holds\/[^/]+\/(released\/)?reason$/,
  'scope-answers': /^\/answers\/[^/]+\/reason$/,
};

const HELD =
  'This incident is held, so nothing goes out of it but on the direction of counsel: name counsel and the day of the direction.';
const BOTH = 'Name counsel and the day of the direction, both or neither.';

function assertWithdrawable(path: string, paths: readonly string[]): void {
  if (paths.length === 0)
    refuse(422, 'Nothing was ever written there. A fact goes with how it is known.', '/path');
  if (paths.includes(path) && path.endsWith('/id')) {
    refuse(422, 'An id says nothing by itself: withdraw the item that it names, or fields of it.', '/path');
  }
}
