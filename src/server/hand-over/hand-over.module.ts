import { type DynamicModule, Module } from '@nestjs/common';
import type { EvidenceSettings } from '../evidence/evidence.api.js';
import { FirstNoticesController } from './first-notice/first-notices.controller.js';
import { FirstNoticesService } from './first-notice/first-notices.service.js';
import { HandOverBook } from './hand-over-book.js';
import { HandOverForms } from './hand-over-forms.js';
import { MatterReader } from './matter-reader.js';
import { CollectionsController } from './links/collections.controller.js';
import { Collections } from './links/collections.service.js';
import { CounselCollectionsController } from './links/counsel-collections.controller.js';
import { CounselCollections } from './links/counsel-collections.service.js';
import { LinkLog } from './links/link-log.js';
import { LinkPackets } from './links/link-packets.js';
import { LinkSettings } from './links/link-settings.js';
import { MailedHeads } from './links/mailed-heads.js';
import { PacketLinksController } from './links/packet-links.controller.js';
import { PacketLinksRepository } from './database/packet-links.repository.js';
import { PacketLinks } from './links/packet-links.service.js';
import { SendLinks } from './links/send-links.service.js';
import { PacketDeletion } from './packet-deletion.js';
import { PacketStore } from './packet-store.js';
import { PacketsController } from './packets.controller.js';
import { PacketsService } from './packets.service.js';
import { TimeStampSettings } from './time-stamp/time-stamp-settings.js';
import { TimeStamps } from './time-stamp/time-stamps.js';

/** The file that leaves the house. */
@Module({
  controllers: [
    PacketsController,
    FirstNoticesController,
    PacketLinksController,
    CollectionsController,
    CounselCollectionsController,
  ],
})
export class HandOverModule {
  static with(
    forms: HandOverForms,
    { folder }: EvidenceSettings,
    links: LinkSettings,
    timeStamps: TimeStampSettings,
  ): DynamicModule {
    return {
      module: HandOverModule,
      global: true,
      providers: [
        { provide: HandOverForms, useValue: forms },
        { provide: PacketStore, useFactory: () => new PacketStore(folder) },
        { provide: LinkSettings, useValue: links },
        { provide: TimeStampSettings, useValue: timeStamps },
        TimeStamps,
        HandOverBook,
        MatterReader,
        PacketsService,
        FirstNoticesService,
        PacketLinksRepository,
        LinkLog,
        LinkPackets,
        MailedHeads,
        PacketLinks,
        SendLinks,
        Collections,
        CounselCollections,
        PacketDeletion,
      ],
      exports: [HandOverBook, HandOverForms, PacketDeletion],
    };
  }
}
