import { type DynamicModule, Module } from '@nestjs/common';
import { ALL_MIGRATIONS } from '../../migrations/all-migrations.js';
import type { RulePack } from '../../shared/law/rule-pack.js';
import type { Geography } from '../../shared/place/geography.js';
import { AccountsModule } from './accounts/accounts.module.js';
import { ACCOUNT_ROWS } from './accounts/database/account-rows.js';
import { BACKUP_ROWS } from './backup/backup.api.js';
import { BackupModule } from './backup/backup.module.js';
import { DECISION_ROWS, DecisionSettings } from './decision/decision.api.js';
import { DecisionModule } from './decision/decision.module.js';
import { DETERMINATION_ROWS, Law } from './determination/determination.api.js';
import { DeterminationModule } from './determination/determination.module.js';
import { EVIDENCE_ROWS } from './evidence/evidence.api.js';
import { EvidenceModule } from './evidence/evidence.module.js';
import type { EvidenceSettings } from './evidence/evidence-settings.js';
import { FLEET_ROWS } from './fleet/database/fleet-rows.js';
import { FleetModule } from './fleet/fleet.module.js';
import { CalendarModule } from './follow-up/calendar.module.js';
import { FOLLOW_UP_ROWS, FollowUpForms } from './follow-up/follow-up.api.js';
import { FollowUpModule } from './follow-up/follow-up.module.js';
import {
  HAND_OVER_ROWS,
  LinkSettings,
  readHandOverForms,
  TimeStampSettings,
} from './hand-over/hand-over.api.js';
import { HandOverModule } from './hand-over/hand-over.module.js';
import { HealthModule } from './health/health.module.js';
import { LawModule } from './law/law.module.js';
import { MailDeskModule } from './mail/mail-desk.module.js';
import { OUTING_ROWS } from './outing/outing.api.js';
import { OutingModule } from './outing/outing.module.js';
import { DatabaseModule } from './platform/database/database.module.js';
import type { DatabaseTarget } from './platform/database/database-target.js';
import { AccessTable } from './platform/http/access-table.js';
import type { MailSettings } from './platform/mail-config.js';
import type { MapTiles } from './platform/map-config.js';
import { PlaceModule } from './place/place.module.js';
import { MailModule } from './platform/mail/mail.module.js';
import type { Published } from './platform/http/read-published.js';
import { Schemas, SchemasController } from './platform/http/schemas.controller.js';
import { RECORD_ROWS, type RecordSettings } from './record/record.api.js';
import { RecordModule } from './record/record.module.js';
import { RegisterModule } from './register/register.module.js';
import { ReportForms } from './report/report.api.js';
import { ReportModule } from './report/report.module.js';
import { REQUEST_ROWS } from './requests/requests.api.js';
import { RequestsModule } from './requests/requests.module.js';
import { readRetentionForms, RETENTION_ROWS } from './retention/retention.api.js';
import { RetentionModule } from './retention/retention.module.js';
import { VocabularyModule } from './vocabulary/vocabulary.module.js';

/** What the modules are handed when the service is put together. */
export interface Parts {
  packs: RulePack[];
  geography: Geography;
  published: Published;
  database: DatabaseTarget;
  access: AccessTable;
  record: RecordSettings;
  evidence: EvidenceSettings;
  decision: DecisionSettings;
  mail: MailSettings;
  mapTiles: MapTiles | null;
  links: LinkSettings;
  timeStamps: TimeStampSettings;
}

@Module({})
export class AppModule {
  static with({
    packs,
    geography,
    published,
    database,
    access,
    record,
    evidence,
    decision,
    mail,
    mapTiles,
    links,
    timeStamps,
  }: Parts): DynamicModule {
    const handOver = readHandOverForms();
    const followUp = FollowUpForms.read();
    return {
      module: AppModule,
      controllers: [SchemasController],
      providers: [
        { provide: Schemas, useValue: new Schemas(published.schemas) },
        { provide: AccessTable, useValue: access },
      ],
      imports: [
        DatabaseModule.with({
          target: database,
          rows: [
            ...ACCOUNT_ROWS,
            ...FLEET_ROWS,
            ...RECORD_ROWS,
            ...OUTING_ROWS,
            ...EVIDENCE_ROWS,
            ...DETERMINATION_ROWS,
            ...DECISION_ROWS,
            ...FOLLOW_UP_ROWS,
            ...HAND_OVER_ROWS,
            ...REQUEST_ROWS,
            ...RETENTION_ROWS,
            ...BACKUP_ROWS,
          ],
          migrations: ALL_MIGRATIONS,
        }),
        MailModule.with(mail),
        AccountsModule,
        MailDeskModule,
        FleetModule.with(AccountsModule),
        LawModule.with(packs, decision.recheckMonths),
        VocabularyModule,
        PlaceModule.with(mapTiles),
        RecordModule.with(record),
        OutingModule,
        EvidenceModule.with(evidence),
        DeterminationModule.with(new Law(packs, geography)),
        DecisionModule.with(decision),
        FollowUpModule.with(followUp),
        CalendarModule.with(AccountsModule, followUp, record),
        ReportModule.with(ReportForms.read()),
        HandOverModule.with(handOver, evidence, links, timeStamps),
        RequestsModule,
        RetentionModule.with(readRetentionForms(handOver, packs)),
        RegisterModule,
        BackupModule,
        HealthModule.with({ packs, version: published.version }),
      ],
    };
  }
}
