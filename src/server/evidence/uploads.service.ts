import { Readable } from 'node:stream';
import { Injectable } from '@nestjs/common';
import { evidenceKind } from '../../../shared/record/evidence-kind.js';
import { StartUploadDto } from '../../../shared/wire/evidence-file.dto.js';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import type { Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { ProblemException, problemOfStatus } from '../platform/http/problem.js';
import { readInput } from '../platform/http/read-input.js';
import { OCTETS } from '../platform/http/read-octets.js';
import { refuse } from '../platform/http/refuse.js';
import { IncomingFiles, TooManyBytesError } from '../platform/storage/incoming-files.js';
import type { UploadRow } from './database/upload.row.js';
import { UploadsRepository } from './database/uploads.repository.js';
import { EvidenceAccess } from './evidence-access.js';
import { EvidenceSettings } from './evidence-settings.js';
import { LONGEST_PIECE_BYTES, type UploadView, uploadView } from './evidence-views.js';
import { nameToKeep } from './name-to-keep.js';
import { HEAD_BYTES } from './read-content.js';
import { assertRoom, isBrokenOff, problemAt, readOffset, wrongOffset } from './upload-problems.js';
import { UploadArrival } from './upload-arrival.js';
import { UploadTurns } from './upload-turns.js';

/** Files on their way in: announced, sent in pieces that may break off, and dropped when nobody wants them. */
@Injectable()
export class UploadsService {
  constructor(
    private readonly uploads: UploadsRepository,
    private readonly incoming: IncomingFiles,
    private readonly turns: UploadTurns,
    private readonly arrival: UploadArrival,
    private readonly access: EvidenceAccess,
    private readonly settings: EvidenceSettings,
    private readonly createOnce: CreateOnce,
    private readonly clock: Clock,
  ) {}

  async start(incidentId: string, body: unknown, key: string | undefined, actor: Actor): Promise<UploadView> {
    const input = readInput(readRecordInput(StartUploadDto, nameToKeep(body)));
    const { size, ...announced } = input;
    this.access.assertMaySay(announced.about ?? {}, actor);
    this.assertFits(size, announced.type);
    await this.access.add(incidentId, actor);
    const request = { operation: 'evidence', key: readIdempotencyKey(key), body: { incidentId, ...input } };
    const { id } = await this.createOnce.run(request, (made) =>
      this.uploads.add({
        id: made,
        incidentId,
        size,
        announced,
        startedAt: this.clock.now(),
        finishedAt: null,
      }),
    );
    return this.show(await this.get(incidentId, id));
  }

  async read(incidentId: string, id: string, actor: Actor): Promise<UploadView> {
    await this.access.read(incidentId, actor);
    return this.show(await this.get(incidentId, id));
  }

  /** Those of an incident that have not been finished. */
  async arriving(incidentId: string): Promise<UploadView[]> {
    const uploads = await this.uploads.arriving(incidentId);
    return Promise.all(uploads.map((upload) => this.show(upload)));
  }

  /**
   * Adds a piece. What arrived of one that broke off is kept, so that the next begins behind it.
   * @param tell is given the bytes that have arrived, also where the piece is refused
   */
  async append(
    incidentId: string,
    id: string,
    piece: { offset: string | undefined; body: unknown },
    actor: Actor,
    tell: (offset: number) => void,
  ): Promise<void> {
    const begins = readOffset(piece.offset);
    const bytes = bytesOf(piece.body);
    await this.access.add(incidentId, actor);
    const stop = (): void => void bytes.destroy();
    await this.turns.take(id, stop, async () => {
      const upload = await this.get(incidentId, id);
      if (upload.finishedAt !== null) refuse(409, 'All of this file has arrived: nothing is added to it.');
      const before = await this.incoming.offsetOf(id);
      tell(before);
      if (before !== begins) throw wrongOffset(before);
      await assertRoom(this.incoming, LONGEST_PIECE_BYTES);
      try {
        await this.take(upload, before, bytes);
      } finally {
        tell(await this.incoming.offsetOf(id));
      }
      await this.refuseEarly(upload, before);
    });
  }

  async drop(incidentId: string, id: string, actor: Actor): Promise<void> {
    await this.access.add(incidentId, actor);
    await this.turns.take(id, nothing, async () => {
      const { finishedAt } = await this.get(incidentId, id);
      if (finishedAt !== null) refuse(409, 'It has arrived and is evidence: a wrong file is withdrawn.');
      await this.arrival.drop(id);
    });
  }

  private async take({ id, size }: UploadRow, before: number, bytes: Readable): Promise<void> {
    const longest = Math.min(size, before + LONGEST_PIECE_BYTES);
    try {
      await this.incoming.append(id, bytes, longest);
    } catch (error) {
      const arrived = await this.incoming.offsetOf(id);
      if (error instanceof TooManyBytesError) {
        if (longest === size)
          throw problemAt(422, arrived, `The file was announced with ${size} bytes, and more came.`);
        throw problemAt(413, arrived, `A piece has at most ${LONGEST_PIECE_BYTES} bytes.`);
      }
      if (isBrokenOff(error)) throw problemAt(408, arrived, `The line broke off: go on at byte ${arrived}.`);
      throw error;
    }
  }

  /** Whoever sends two gigabytes over a weak signal is told at once that they will not be taken. */
  private async refuseEarly(upload: UploadRow, before: number): Promise<void> {
    if (before >= HEAD_BYTES || (await this.incoming.offsetOf(upload.id)) < HEAD_BYTES) return;
    await this.arrival.judgeBeginning(upload);
  }

  private assertFits(size: number, type: string | undefined): void {
    const kind = evidenceKind(type ?? '');
    const longest = kind === undefined ? this.settings.longestOfAll : this.settings.longestBytes[kind];
    if (size > longest)
      refuse(422, `Must be at most ${longest} bytes${kind ? ` for a ${kind}` : ''}.`, '/size');
  }

  private async get(incidentId: string, id: string): Promise<UploadRow> {
    return (await this.uploads.find(incidentId, id)) ?? refuse(404, 'There is no such upload.');
  }

  private async show(upload: UploadRow): Promise<UploadView> {
    const arrived = upload.finishedAt === null ? await this.incoming.offsetOf(upload.id) : upload.size;
    return uploadView(upload, arrived);
  }
}

/** A request without a body adds nothing, and learns the offset. */
function bytesOf(body: unknown): Readable {
  if (body instanceof Readable) return body;
  if (body === undefined || body === null) return Readable.from([]);
  throw new ProblemException(problemOfStatus(415, `A piece of a file is sent as ${OCTETS}.`));
}

/** What cannot be ended early. */
function nothing(): void {
  return undefined;
}
