import { type DynamicModule, Module } from '@nestjs/common';
import { DeterminationController } from './determination.controller.js';
import { DeterminationService, type Law } from './determination.service.js';

@Module({ controllers: [DeterminationController] })
export class DeterminationModule {
  static with(law: Law): DynamicModule {
    const service = new DeterminationService(law);
    return {
      module: DeterminationModule,
      providers: [{ provide: DeterminationService, useValue: service }],
    };
  }
}
