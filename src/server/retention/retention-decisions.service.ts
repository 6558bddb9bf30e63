import { Injectable } from '@nestjs/common';
import type { RetentionKind } from '../../../shared/retention/retention-form.js';
import type {
  RetentionDecision,
  RetentionLine,
  RetentionSection,
} from '../../../shared/retention/retention-line.js';
import { type Page, readPageQuery } from '../../../shared/wire/page-query.dto.js';
import {
  readRetentionDecision,
  type RetentionDecisionDto,
} from '../../../shared/wire/retention-requests.dto.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { pageOf, pageRequest } from '../platform/http/cursor.js';
import { assertFresh } from '../platform/http/entity-tag.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import { ServiceSections } from '../record/record.api.js';
import type { RetentionDecisionRow } from './database/retention.row.js';
import { RetentionRepository } from './database/retention.repository.js';
import { DeletionSteps, type Gone } from './deletion-steps.js';
import { RetentionForms } from './retention-forms.js';
import { RetentionList } from './retention-list.service.js';

/** A person decides: what is due is deleted for good, or kept until a day. Nothing is deleted by itself. */
@Injectable()
export class RetentionDecisions {
  constructor(
    private readonly list: RetentionList,
    private readonly steps: DeletionSteps,
    private readonly forms: RetentionForms,
    private readonly rows: RetentionRepository,
    private readonly sections: ServiceSections,
    private readonly createOnce: CreateOnce,
    private readonly unitOfWork: UnitOfWork,
    private readonly clock: Clock,
  ) {}

  async page(query: unknown): Promise<Page<RetentionDecision>> {
    const request = pageRequest(readInput(readPageQuery(query), 'query'));
    const rows = await this.rows.page(request);
    const { items, next } = pageOf(rows, request, ({ at, id }) => ({ sort: at, id }));
    return { items: await this.named(items), next };
  }

  async decide(
    body: unknown,
    { ifMatch, key }: { ifMatch: string | undefined; key: string | undefined },
    actor: PersonActor,
  ): Promise<RetentionDecision> {
    const asked = readInput(readRetentionDecision(body));
    const kind = this.forms.kind(asked.kind) ?? refuse(422, 'There is no such kind.', '/kind');
    const request = { operation: 'retention', key: readIdempotencyKey(key), body: asked };
    const { id } = await this.sections.run(() =>
      this.createOnce.run(request, async (own) => {
        const line = (await this.list.line(kind.id, asked)) ?? refuse(409, NOTHING);
        assertFresh(ifMatch, line, {});
        const gone =
          asked.decision === 'delete' ? await this.delete(kind, line, asked, actor) : this.keep(asked);
        await this.write(own, line, asked, gone, actor);
      }),
    );
    const row = (await this.rows.find(id)) ?? refuse(404, 'There is no such decision.');
    return (await this.named([row]))[0] ?? refuse(404, 'There is no such decision.');
  }

  private async named(rows: readonly RetentionDecisionRow[]): Promise<RetentionDecision[]> {
    const references = await this.sections.references(rows.flatMap(({ incidentId }) => incidentId ?? []));
    return rows.map((row) => ({ ...row, reference: references.get(row.incidentId ?? '') ?? null }));
  }

  private async delete(
    kind: RetentionKind,
    line: RetentionLine,
    { reason, counsel, directedOn }: RetentionDecisionDto,
    actor: PersonActor,
  ): Promise<Gone> {
    if (line.stops.length > 0) refuse(409, `${STOPPED} ${line.stops.map(({ words }) => words).join(' ')}`);
    if (line.state !== 'due') refuse(409, `${NOT_DUE} ${line.missing.join(' ')}`.trim());
    if (kind.counsel === true && (line.holds['privileged'] ?? 0) > 0) {
      if (counsel === undefined) refuse(422, DIRECTED, '/counsel');
      if (directedOn === undefined) refuse(422, DIRECTED, '/directedOn');
    }
    this.unitOfWork.afterCommit(() => this.unitOfWork.purge());
    return line.incidentId === null
      ? this.steps.ofMonth(kind, line.month ?? '', reason, actor)
      : this.steps.ofIncident(kind, line.incidentId, reason, actor);
  }

  private keep({ keepUntil = '' }: RetentionDecisionDto): Gone {
    if (keepUntil <= this.list.today()) refuse(422, 'Must be a day to come.', '/keepUntil');
    return {};
  }

  private async write(
    id: string,
    { incidentId, month }: RetentionLine,
    asked: RetentionDecisionDto,
    gone: Gone,
    actor: PersonActor,
  ): Promise<void> {
    const { kind, decision, reason } = asked;
    const keepUntil = asked.keepUntil ?? null;
    const counsel = asked.counsel ?? null;
    const directedOn = asked.directedOn ?? null;
    const { accountId, personName: person, role } = actor;
    const at = this.clock.now();
    const by = { id, kind, at, person, role, reason };
    const row = { ...by, incidentId, month, decision, keepUntil, counsel, directedOn, gone, accountId };
    await this.rows.addDecision(row);
    if (incidentId === null) return;
    const before = await this.sections.read<RetentionSection>(incidentId, 'retention');
    const directed = { ...(counsel !== null && { counsel }), ...(directedOn !== null && { directedOn }) };
    const after: RetentionSection =
      decision === 'delete'
        ? { ...before, deletions: [...(before.deletions ?? []), { ...by, gone, ...directed }] }
        : { ...before, kept: [...(before.kept ?? []), { ...by, until: keepUntil ?? '' }] };
    await this.sections.write(incidentId, 'retention', after, actor, reason);
  }
}

const NOTHING = 'There is nothing of it whose time is over or soon over: look at the list again.';
const STOPPED = 'Nothing of it may go now.';
const NOT_DUE = 'Its time is not surely over.';
const DIRECTED = 'Notes for counsel go on the direction of counsel alone: name counsel and the day of it.';
