import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import type { Role } from '../../../shared/kernel/role.js';

interface OnDevice {
  readonly deviceId?: string;
  readonly deviceName?: string;
}

/** A person who signed in, perhaps on an enrolled device. */
export interface PersonActor extends OnDevice {
  readonly kind: 'person';
  readonly accountId: string;
  readonly personName: string;
  readonly role: Role;
  readonly sessionId: string;
}

/**
 * An enrolled device, and the person who picked a name on it. The name is a claim until a PIN confirms it
 * (`PinConfirmations`); an entry without one is taken all the same, since a call for help waits for nobody's name.
 */
export interface DeviceActor {
  readonly kind: 'device';
  readonly deviceId: string;
  readonly deviceName: string;
  readonly accountId?: string;
  readonly personName: string;
}

/** The service itself, acting on nobody's request: a rule pack was corrected, a time came. */
export interface ServiceActor {
  readonly kind: 'service';
  readonly accountId?: never;
  readonly deviceId?: never;
  readonly deviceName?: never;
  /** What it acts for, as it stands in the record: `the service, as the law was corrected`. */
  readonly personName: string;
}

/** Who does what is written down: every entry says person and device. */
export type Actor = PersonActor | DeviceActor | ServiceActor;

/** What stands where a name was not picked. */
export const UNNAMED = 'not named';

declare module 'fastify' {
  interface FastifyRequest {
    /** Set by the gate on every route that is not for anyone. */
    actor?: Actor;
  }
}

/** The actor of a route that is not for anyone: `create(@CurrentActor() actor: Actor)`. */
export const CurrentActor = createParamDecorator((_: unknown, context: ExecutionContext): Actor => {
  const { actor } = context.switchToHttp().getRequest<FastifyRequest>();
  if (actor === undefined) throw new Error('This route is for anyone: there is no actor.');
  return actor;
});

/** The actor of a route that only devices may use. */
export const CurrentDevice = createParamDecorator((_: unknown, context: ExecutionContext): DeviceActor => {
  const { actor } = context.switchToHttp().getRequest<FastifyRequest>();
  if (actor?.kind !== 'device') throw new Error('This route is not for devices alone.');
  return actor;
});

/** The actor of a route that only people may use. */
export const CurrentPerson = createParamDecorator((_: unknown, context: ExecutionContext): PersonActor => {
  const { actor } = context.switchToHttp().getRequest<FastifyRequest>();
  if (actor?.kind !== 'person') throw new Error('This route is not for people alone.');
  return actor;
});
