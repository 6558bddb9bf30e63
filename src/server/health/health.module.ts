import { type DynamicModule, Module } from '@nestjs/common';
import type { RulePack } from '../../../shared/law/rule-pack.js';
import { Health, HealthController } from './health.controller.js';

@Module({ controllers: [HealthController] })
export class HealthModule {
  static with({ version, packs }: { version: string; packs: readonly RulePack[] }): DynamicModule {
    return {
      module: HealthModule,
      providers: [{ provide: Health, useValue: new Health(version, packs) }],
    };
  }
}
