import { Injectable } from '@nestjs/common';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { READING } from '../platform/http/access-table.js';
import type { Access } from '../platform/http/may-use.js';
import { ProblemException, type ProblemDocument, problemOfStatus } from '../platform/http/problem.js';
import { type Actor, UNNAMED } from './actor.js';
import { readCookie } from './cookies.js';
import { AccountsRepository } from './database/accounts.repository.js';
import type { DeviceRow } from './database/device.row.js';
import type { OpenSession } from './database/sessions.repository.js';
import { DevicesService } from './devices.service.js';
import { SessionsService } from './sessions.service.js';

/** Whose name was picked on an enrolled device: the id of the account. An entry made offline names its own. */
const PERSON_HEADER = 'desk-person';

/**
 * Stands in front of every route, before its body is read: what does not say that the caller may use it, the caller may
 * not use.
 */
@Injectable()
export class AccessGate {
  constructor(
    private readonly sessions: SessionsService,
    private readonly devices: DevicesService,
    private readonly accounts: AccountsRepository,
  ) {}

  guard(server: FastifyInstance): void {
    server.addHook('onRequest', async (request) => this.admit(request));
  }

  private async admit(request: FastifyRequest): Promise<void> {
    const { access } = request.routeOptions.config;
    if (request.is404 || access?.who.includes('anyone') === true) return;
    const token = readCookie(request, 'desk_device');
    const device = await this.devices.of(token);
    const session = await this.sessions.of(readCookie(request, 'desk_session'));
    if (access !== undefined && session !== null && mayPerson(access, session, request.method)) {
      request.actor = personActor(session, device);
    } else if (access?.who.includes('device') === true && device !== null && session?.role !== 'counsel') {
      request.actor = await this.deviceActor(device, request.headers[PERSON_HEADER]);
    } else {
      const isShutOut = token !== undefined && device === null && access?.who.includes('device') === true;
      throw new ProblemException(isShutOut ? shutOut(session) : refusal(access, session, device));
    }
  }

  private async deviceActor(device: DeviceRow, picked: string | string[] | undefined): Promise<Actor> {
    const account = typeof picked === 'string' ? await this.accounts.find(picked) : null;
    const onDevice = { kind: 'device', deviceId: device.id, deviceName: device.name } as const;
    return account === null
      ? { ...onDevice, personName: UNNAMED }
      : { ...onDevice, accountId: account.id, personName: account.name };
  }
}

function mayPerson({ who, own }: Access, { role, passwordDue }: OpenSession, method: string): boolean {
  if (!who.includes(role)) return false;
  if (own) return true;
  return !passwordDue && (role !== 'counsel' || READING.has(method));
}

function personActor(session: OpenSession, device: DeviceRow | null): Actor {
  const { id: sessionId, accountId, personName, role } = session;
  const onDevice = device === null ? {} : { deviceId: device.id, deviceName: device.name };
  return { kind: 'person', sessionId, accountId, personName, role, ...onDevice };
}

/**
 * A device that comes with a token of ours that counts no more is told so apart from one that has none: the first takes
 * what it keeps off itself, and the second, which has only lost its cookie, keeps a call that it has not sent.
 */
function shutOut(session: OpenSession | null): ProblemDocument {
  return {
    ...problemOfStatus(session === null ? 401 : 403, 'Ask an administrator for a new code.'),
    type: '/problems/device-shut-out',
    title: 'This device was shut out',
  };
}

function refusal(
  access: Access | undefined,
  session: OpenSession | null,
  device: DeviceRow | null,
): ProblemDocument {
  const forPeople = access === undefined || access.who.some((who) => who !== 'device');
  if (session === null && (forPeople || device === null)) {
    return problemOfStatus(
      401,
      forPeople ? 'Sign in, and send it again.' : 'Only an enrolled device may do that.',
    );
  }
  if (session !== null && session.passwordDue && access?.who.includes(session.role) === true) {
    return {
      ...problemOfStatus(403, 'Your password was given to you: choose one of your own.'),
      type: '/problems/password-due',
      title: 'Choose a new password first',
    };
  }
  return problemOfStatus(403, 'Ask an administrator who may do that.');
}
