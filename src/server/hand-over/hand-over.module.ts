import { type DynamicModule, Module } from '@nestjs/common';
import type { EvidenceSettings } from '../evidence/evidence.api.js';
import { FirstNoticesController } from './first-notice/first-notices.controller.js';
import { FirstNoticesService } from './first-notice/first-notices.service.js';
import { HandOverBook } from './hand-over-book.js';
import { HandOverForms } from './hand-over-forms.js';
import { MatterReader } from './matter-reader.js';
import { PacketStore } from './packet-store.js';
import { PacketsController } from './packets.controller.js';
import { PacketsService } from './packets.service.js';

/** The file that leaves the house. */
@Module({ controllers: [PacketsController, FirstNoticesController] })
export class HandOverModule {
  static with(forms: HandOverForms, { folder }: EvidenceSettings): DynamicModule {
    return {
      module: HandOverModule,
      providers: [
        { provide: HandOverForms, useValue: forms },
        { provide: PacketStore, useFactory: () => new PacketStore(folder) },
        HandOverBook,
        MatterReader,
        PacketsService,
        FirstNoticesService,
      ],
    };
  }
}
