import { type DynamicModule, Module } from '@nestjs/common';
import type { RulePack } from '../../../shared/law/rule-pack.js';
import { LawShelf } from './law-shelf.js';
import { LawController } from './law.controller.js';

@Module({ controllers: [LawController] })
export class LawModule {
  static with(packs: readonly RulePack[], recheckMonths: number): DynamicModule {
    return {
      module: LawModule,
      providers: [{ provide: LawShelf, useValue: new LawShelf(packs, recheckMonths) }],
    };
  }
}
