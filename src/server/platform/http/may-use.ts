import { applyDecorators } from '@nestjs/common';
import { RouteConfig } from '@nestjs/platform-fastify';
import { ApiExtension } from '@nestjs/swagger';
import { type Role, ROLES } from '../../../../shared/kernel/role.js';

/** Who may be named at a route: a role, a device that an administrator enrolled, or anyone who reaches the service. */
export type Who = Role | 'device' | 'anyone';

/** Who may use a route. */
export interface Access {
  readonly who: readonly Who[];
  /** The route is about nobody and nothing but the caller: its session, its password, its device. */
  readonly own: boolean;
}

declare module 'fastify' {
  interface FastifyContextConfig {
    access?: Access;
  }
}

const allow = (access: Access): MethodDecorator =>
  applyDecorators(RouteConfig({ access }), ApiExtension('x-may-use', access.who));

/**
 * Says at a route who may use it; a route without such a word stops the start. A device only writes and counsel only
 * reads: naming them at another kind of route stops the start too.
 * @example @Post() @MayUse('staff', 'manager', 'administrator', 'device') openCall(…)
 */
export const MayUse = (...who: [Who, ...Who[]]): MethodDecorator => allow({ who, own: false });

/** For whoever is signed in, about themselves alone; the one thing that counsel may write. */
export const OwnAccount = (): MethodDecorator => allow({ who: ROLES, own: true });

/** For an enrolled device, about itself alone; the one thing that a device may read. */
export const OwnDevice = (): MethodDecorator => allow({ who: ['device'], own: true });
