import { randomUUID } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { mkdtemp, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Injectable, Logger, type OnApplicationShutdown, StreamableFile } from '@nestjs/common';
import type { RegisterExportDto } from '../../../shared/wire/register-queries.dto.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { refuse } from '../platform/http/refuse.js';
import { RecordSettings } from '../record/record.api.js';
import { RegisterRepository } from './database/register.repository.js';
import { type ExportProgress, exportRegister } from './export-register.js';

const KEPT_MS = 60 * 60 * 1000;
const AT_ONCE = 2;

type State = 'running' | 'ready' | 'failed';

interface Job {
  readonly id: string;
  readonly owner: string;
  readonly key: string;
  readonly startedAt: string;
  readonly asked: RegisterExportDto;
  state: State;
  progress: ExportProgress;
  readonly finished: Promise<void>;
}

export interface ShownExport extends ExportProgress {
  readonly id: string;
  readonly state: State;
  readonly startedAt: string;
  /** What to do where it failed. */
  readonly advice: string | null;
}

const TYPES = {
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  csv: 'text/csv; charset=utf-8',
} as const;

/**
 * Exports that are being written or wait to be fetched by whoever asked for them. They are no part of what is kept:
 * an hour later, or when the service stops, they are gone, and are asked for again.
 */
@Injectable()
export class RegisterExports implements OnApplicationShutdown {
  private readonly logger = new Logger('register');
  private readonly jobs = new Map<string, Job>();
  private folder: Promise<string> | undefined;

  constructor(
    private readonly register: RegisterRepository,
    private readonly settings: RecordSettings,
    private readonly clock: Clock,
  ) {}

  /** Begins an export; the same key again finds the one that was begun. */
  async start(asked: RegisterExportDto, key: string, actor: PersonActor): Promise<ShownExport> {
    await this.forgetOld();
    const before = [...this.jobs.values()].find((job) => job.owner === actor.accountId && job.key === key);
    if (before !== undefined) return shown(before);
    if ([...this.jobs.values()].filter(({ state }) => state === 'running').length >= AT_ONCE) {
      refuse(409, 'Two exports are being written already: wait until one of them is ready.');
    }
    const id = randomUUID();
    const now = this.clock.now();
    const job: Job = {
      id,
      owner: actor.accountId,
      key,
      startedAt: now,
      asked,
      state: 'running',
      progress: { done: 0, total: 0 },
      finished: Promise.resolve().then(() => this.write(id, asked, now)),
    };
    this.jobs.set(id, job);
    return shown(job);
  }

  /** How far it has come. */
  read(id: string, actor: PersonActor): ShownExport {
    return shown(this.found(id, actor));
  }

  /** The file, once it is ready. */
  async file(id: string, actor: PersonActor): Promise<StreamableFile> {
    const { state, asked, startedAt } = this.found(id, actor);
    if (state !== 'ready') refuse(409, 'The export is not ready: ask how far it has come.');
    const path = await this.pathOf(id);
    const name = `register-${startedAt.slice(0, 10)}${asked.subject ? `-${asked.subject}` : ''}.${asked.format}`;
    return new StreamableFile(createReadStream(path), {
      type: TYPES[asked.format],
      disposition: `attachment; filename="${name}"`,
      length: (await stat(path)).size,
    });
  }

  async onApplicationShutdown(): Promise<void> {
    await Promise.all([...this.jobs.values()].map(({ finished }) => finished));
    if (this.folder !== undefined) await rm(await this.folder, { recursive: true, force: true });
  }

  private async write(id: string, asked: RegisterExportDto, now: string): Promise<void> {
    const job = this.jobs.get(id);
    if (job === undefined) return;
    try {
      await exportRegister(await this.pathOf(id), asked, {
        register: this.register,
        now,
        timeZone: this.settings.timeZone,
        progress: (progress) => {
          job.progress = progress;
        },
      });
      job.state = 'ready';
    } catch (error) {
      job.state = 'failed';
      this.logger.error(`Export ${id} failed: ${error instanceof Error ? error.message : String(error)}`);
    }
  }

  private async pathOf(id: string): Promise<string> {
    this.folder ??= mkdtemp(join(tmpdir(), 'incident-desk-exports-'));
    return join(await this.folder, id);
  }

  private found(id: string, actor: PersonActor): Job {
    const job = this.jobs.get(id);
    return job?.owner === actor.accountId ? job : refuse(404, 'There is no such export: ask for it again.');
  }

  private async forgetOld(): Promise<void> {
    const now = Date.parse(this.clock.now());
    for (const { id, startedAt, state } of this.jobs.values()) {
      if (state === 'running' || now - Date.parse(startedAt) < KEPT_MS) continue;
      this.jobs.delete(id);
      await rm(await this.pathOf(id), { force: true });
    }
  }
}

function shown({ id, state, startedAt, progress }: Job): ShownExport {
  const advice = state === 'failed' ? 'The file could not be written. Ask for it again.' : null;
  return { id, state, startedAt, ...progress, advice };
}
