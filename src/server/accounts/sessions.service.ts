import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { Clock } from '../platform/clock.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { type OpenSession, SessionsRepository } from './database/sessions.repository.js';
import { noteUse } from './note-use.js';
import { hashOf, newToken } from './secrets.js';

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

/** A session ends when it has not been used for a shift, and on a device that others pick up much sooner. */
const IDLE_MS = 12 * HOUR_MS;
const IDLE_ON_DEVICE_MS = HOUR_MS;

/** However busy it is, after this the person signs in again. */
export const LONGEST_SESSION_MS = 7 * 24 * HOUR_MS;

export interface NewSession {
  readonly token: string;
  readonly expiresAt: string;
}

@Injectable()
export class SessionsService {
  constructor(
    private readonly unitOfWork: UnitOfWork,
    private readonly sessions: SessionsRepository,
    private readonly clock: Clock,
  ) {}

  /** Begins a session; the token is told once and kept nowhere. */
  async begin(accountId: string, deviceId: string | null): Promise<NewSession> {
    const token = newToken();
    const createdAt = this.clock.now();
    const expiresAt = expiryOf({ createdAt, deviceId }, createdAt);
    await this.unitOfWork.run(() =>
      this.sessions.add({
        id: randomUUID(),
        accountId,
        deviceId,
        tokenHash: hashOf(token),
        createdAt,
        lastUsedAt: createdAt,
        expiresAt,
        endedAt: null,
      }),
    );
    return { token, expiresAt };
  }

  /** The session that a token opens; null for one that has ended, expired or never was. */
  async of(token: string | undefined): Promise<OpenSession | null> {
    if (token === undefined) return null;
    const session = await this.sessions.findOpen(hashOf(token));
    const now = this.clock.now();
    if (session === null || session.expiresAt <= now) return null;
    await noteUse(session.lastUsedAt, now, () =>
      this.unitOfWork.run(() => this.sessions.touch(session.id, now, expiryOf(session, now))),
    );
    return session;
  }

  end(id: string): Promise<void> {
    return this.unitOfWork.run(() => this.sessions.end(id, this.clock.now()));
  }

  endAllOf(accountId: string, exceptId?: string): Promise<void> {
    return this.unitOfWork.run(() => this.sessions.endAllOf(accountId, this.clock.now(), exceptId));
  }

  endAllOn(deviceId: string): Promise<void> {
    return this.unitOfWork.run(() => this.sessions.endAllOn(deviceId, this.clock.now()));
  }
}

function expiryOf(
  { createdAt, deviceId }: { createdAt: string; deviceId: string | null },
  now: string,
): string {
  const idle = Date.parse(now) + (deviceId === null ? IDLE_MS : IDLE_ON_DEVICE_MS);
  return new Date(Math.min(idle, Date.parse(createdAt) + LONGEST_SESSION_MS)).toISOString();
}
