import { Injectable } from '@nestjs/common';
import {
  concerned,
  type LegalRequest,
  type Objection,
  type Production,
} from '../../../shared/record/legal-request.js';
import { ObjectionDto, ProductionDto } from '../../../shared/wire/legal-requests.dto.js';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { HandOverBook } from '../hand-over/hand-over.api.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import { ServiceSections } from '../record/record.api.js';
import { RequestBook, type RequestChange } from './request-book.js';
import { RequestsService } from './requests.service.js';
import { writtenBy } from './written-by.js';

/** What was produced on a request, and what was objected. That it was done is written down whatever counsel says of it. */
@Injectable()
export class RequestAnswers {
  constructor(
    private readonly book: RequestBook,
    private readonly requests: RequestsService,
    private readonly packets: HandOverBook,
    private readonly sections: ServiceSections,
    private readonly createOnce: CreateOnce,
    private readonly clock: Clock,
  ) {}

  object(id: string, body: unknown, key: string | undefined, actor: PersonActor) {
    const said = readInput(readRecordInput(ObjectionDto, body));
    this.refuseToCome(said.at);
    return this.add(id, body, key, { what: 'objected' }, actor, (request, own) => {
      assertReplaces(said.replaces, request.objections);
      const objection: Objection = { ...said, ...this.mark(own, actor) };
      return { ...request, objections: [...request.objections, objection] };
    });
  }

  produce(id: string, body: unknown, key: string | undefined, actor: PersonActor) {
    const said = readInput(readRecordInput(ProductionDto, body));
    this.refuseToCome(said.at);
    return this.add(id, body, key, { what: 'produced' }, actor, async (request, own) => {
      assertReplaces(said.replaces, request.productions);
      const head = await this.headOf(request, said);
      const production: Production = { ...said, ...(head && { head }), ...this.mark(own, actor) };
      return { ...request, productions: [...request.productions, production] };
    });
  }

  /** The head of the log in the packet: whoever has it can later show what they were given. */
  private async headOf(
    request: LegalRequest,
    { incident, packet }: ProductionDto,
  ): Promise<Production['head'] | undefined> {
    if (incident === undefined) {
      return packet === undefined
        ? undefined
        : refuse(422, 'Say of which incident the packet is.', '/incident');
    }
    if (!concerned(request).some((one) => one.incident === incident)) {
      refuse(422, 'The request is not said to concern this incident: add it first.', '/incident');
    }
    if (packet === undefined) return undefined;
    const made = (await this.packets.read(incident)).find((one) => one.id === packet);
    return made?.head ?? refuse(422, 'There is no such packet of this incident.', '/packet');
  }

  private mark(id: string, actor: PersonActor) {
    return { id, recordedAt: this.clock.now(), by: writtenBy(actor) };
  }

  private refuseToCome(at: string): void {
    if (Date.parse(at) > Date.parse(this.clock.now())) {
      refuse(422, 'It is recorded once it has happened.', '/at');
    }
  }

  private async add(
    id: string,
    body: unknown,
    key: string | undefined,
    change: RequestChange,
    actor: PersonActor,
    to: (request: LegalRequest, own: string) => LegalRequest | Promise<LegalRequest>,
  ) {
    const once = { operation: `request ${change.what}`, key: readIdempotencyKey(key), body: { id, body } };
    await this.sections.run(async () => {
      const { request, version } = await this.requests.find(id, actor);
      await this.createOnce.run(once, async (own) => {
        await this.book.write(await to(request, own), version + 1, change, actor);
      });
    });
    return this.requests.read(id, actor);
  }
}

function assertReplaces(replaces: string | undefined, entries: readonly { readonly id: string }[]): void {
  if (replaces !== undefined && !entries.some(({ id }) => id === replaces)) {
    refuse(422, 'There is no such entry of this request.', '/replaces');
  }
}
