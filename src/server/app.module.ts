import { type DynamicModule, Module } from '@nestjs/common';
import type { RulePack } from '../../shared/law/rule-pack.js';
import type { Geography } from '../../shared/place/geography.js';
import { DeterminationModule } from './determination/determination.module.js';
import { HealthModule } from './health/health.module.js';
import { LawModule } from './law/law.module.js';
import type { Published } from './platform/http/read-published.js';
import { Schemas, SchemasController } from './platform/http/schemas.controller.js';

/** What the modules are handed when the service is put together. */
export interface Parts {
  packs: RulePack[];
  geography: Geography;
  published: Published;
}

@Module({})
export class AppModule {
  static with({ packs, geography, published }: Parts): DynamicModule {
    return {
      module: AppModule,
      controllers: [SchemasController],
      providers: [{ provide: Schemas, useValue: new Schemas(published.schemas) }],
      imports: [
        LawModule.with(packs),
        DeterminationModule.with({ packs, geography }),
        HealthModule.with({ packs, version: published.version }),
      ],
    };
  }
}
