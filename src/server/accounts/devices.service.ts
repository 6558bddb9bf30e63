import { Injectable } from '@nestjs/common';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { pageOf, type PageRequest } from '../platform/http/cursor.js';
import type { Versioned } from '../platform/http/entity-tag.js';
import { ProblemException, problemOfStatus } from '../platform/http/problem.js';
import type { DeviceCreationDto } from '../../../shared/wire/accounts-device.dto.js';
import type { Page } from '../../../shared/wire/page-query.dto.js';
import { AttemptLimits } from './attempt-limits.js';
import type { PersonActor } from './actor.js';
import { DevicesRepository } from './database/devices.repository.js';
import type { DeviceRow } from './database/device.row.js';
import { noteUse } from './note-use.js';
import { networkOf } from './network-of.js';
import { refuse } from '../platform/http/refuse.js';
import { hashOf, newCode, newToken, readCode } from './secrets.js';
import { SessionsService } from './sessions.service.js';

const MINUTE_MS = 60_000;

/** The administrator has the device at hand while enrolling it. */
const CODE_LIFE_MS = 15 * MINUTE_MS;
const TRIES_AN_ADDRESS = 10;

/** An enrolled device as administrators see it. */
export interface DeviceView extends Versioned {
  readonly id: string;
  readonly name: string;
  readonly state: 'waiting' | 'enrolled' | 'revoked';
  readonly codeExpiresAt: string | null;
  readonly enrolledAt: string | null;
  readonly lastUsedAt: string | null;
  readonly revokedAt: string | null;
  readonly createdAt: string;
}

/** The code is told once; a retry of the create is not told it again. */
export interface NewDevice extends DeviceView {
  readonly code: string | null;
}

@Injectable()
export class DevicesService {
  constructor(
    private readonly unitOfWork: UnitOfWork,
    private readonly createOnce: CreateOnce,
    private readonly devices: DevicesRepository,
    private readonly sessions: SessionsService,
    private readonly limits: AttemptLimits,
    private readonly clock: Clock,
  ) {}

  async list(request: PageRequest): Promise<Page<DeviceView>> {
    const { items, next } = pageOf(
      await this.devices.page(request),
      request,
      DevicesRepository.cursorOf.bind(DevicesRepository),
    );
    return { items: items.map(viewOf), next };
  }

  /** Makes the place for a device, and the code that one device may take it with. */
  async create(draft: DeviceCreationDto, key: string, by: PersonActor): Promise<NewDevice> {
    const code = newCode(12, 4);
    const createdAt = this.clock.now();
    const { id, again } = await this.createOnce.run({ operation: 'device', key, body: draft }, (newId) =>
      this.devices.add({
        id: newId,
        name: draft.name.trim(),
        codeHash: hashOf(readCode(code)),
        codeExpiresAt: new Date(Date.parse(createdAt) + CODE_LIFE_MS).toISOString(),
        tokenHash: null,
        enrolledAt: null,
        lastUsedAt: null,
        revokedAt: null,
        createdBy: by.accountId,
        version: 1,
        createdAt,
      }),
    );
    return { ...viewOf(await this.found(id)), code: again ? null : code };
  }

  /**
   * Gives a token for a code that has not been used.
   * @throws ProblemException 401 for any other code, 429 for too many tries
   */
  async enrol(code: string, address: string): Promise<{ token: string; device: DeviceView }> {
    const subject = { name: `enrolment ${networkOf(address)}`, most: TRIES_AN_ADDRESS };
    const enrolled = await this.limits.limit([subject], () => this.takeCode(hashOf(readCode(code))));
    return enrolled ?? refuseCode();
  }

  /** The device that a token opens; null for one that was revoked or never was. */
  async of(token: string | undefined): Promise<DeviceRow | null> {
    if (token === undefined) return null;
    const device = await this.devices.findByToken(hashOf(token));
    const now = this.clock.now();
    if (device !== null) {
      await noteUse(device.lastUsedAt, now, () =>
        this.unitOfWork.run(() => this.devices.change(device.id, { lastUsedAt: now })),
      );
    }
    return device;
  }

  /** Shuts a device out, and every session that was begun on it. */
  revoke(id: string): Promise<DeviceView> {
    return this.unitOfWork.run(async () => {
      const device = await this.found(id);
      if (device.revokedAt !== null) return viewOf(device);
      const change = {
        revokedAt: this.clock.now(),
        version: device.version + 1,
        codeHash: null,
        tokenHash: null,
      };
      await this.devices.change(id, change);
      await this.sessions.endAllOn(id);
      return viewOf({ ...device, ...change });
    });
  }

  private takeCode(codeHash: string): Promise<{ token: string; device: DeviceView } | null> {
    const token = newToken();
    return this.unitOfWork.run(async () => {
      const device = await this.devices.findByCode(codeHash);
      const now = this.clock.now();
      if (device === null || (device.codeExpiresAt ?? '') <= now) return null;
      const change = {
        codeHash: null,
        tokenHash: hashOf(token),
        enrolledAt: now,
        lastUsedAt: now,
        version: device.version + 1,
      };
      await this.devices.change(device.id, change);
      return { token, device: viewOf({ ...device, ...change }) };
    });
  }

  private async found(id: string): Promise<DeviceRow> {
    return (await this.devices.find(id)) ?? refuse(404, 'There is no such device.');
  }
}

function viewOf(device: DeviceRow): DeviceView {
  const { id, name, codeExpiresAt, enrolledAt, lastUsedAt, revokedAt, createdAt, version } = device;
  const state = revokedAt !== null ? 'revoked' : enrolledAt !== null ? 'enrolled' : 'waiting';
  return { id, name, state, codeExpiresAt, enrolledAt, lastUsedAt, revokedAt, createdAt, version };
}

function refuseCode(): never {
  throw new ProblemException({
    ...problemOfStatus(401, 'A code does for one device and 15 minutes: ask an administrator for a new one.'),
    type: '/problems/code-refused',
    title: 'That code does not enrol a device',
  });
}
