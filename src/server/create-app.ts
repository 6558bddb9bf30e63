import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { NestFactory } from '@nestjs/core';
import { FastifyAdapter, type NestFastifyApplication } from '@nestjs/platform-fastify';
import { AccessGate } from './accounts/access-gate.js';
import { ACCOUNT_ANSWERS, ACCOUNT_REQUESTS } from './accounts/account-schemas.js';
import { FirstAdministrator } from './accounts/first-administrator.js';
import { AppModule } from './app.module.js';
import { BACKUP_SCHEMAS } from './backup/backup-schemas.js';
import { DECISION_SCHEMAS, DecisionSettings } from './decision/decision.api.js';
import { SCOPE_ANSWER_SCHEMAS } from './determination/determination.api.js';
import { DeterminationService } from './determination/determination.service.js';
import { EVIDENCE_SCHEMAS } from './evidence/evidence-schemas.js';
import { EvidenceSettings } from './evidence/evidence-settings.js';
import { isForOctets } from './evidence/octet-routes.js';
import { FLEET_SCHEMAS } from './fleet/fleet-schemas.js';
import { CALENDAR_SCHEMAS } from './follow-up/calendar-schemas.js';
import { FOLLOW_UP_SCHEMAS } from './follow-up/follow-up.api.js';
import { HAND_OVER_SCHEMAS, LinkSettings, TimeStampSettings } from './hand-over/hand-over.api.js';
import { loadRulePacks, readRulePacks, withCorrections } from './law/law.api.js';
import { loadGeography } from './place/place.api.js';
import { MAP_SCHEMAS } from './place/map-schemas.js';
import { MAIL_SCHEMAS } from './mail/mail-schemas.js';
import { REQUEST_SCHEMAS } from './requests/requests.api.js';
import { OUTING_SCHEMAS } from './outing/outing.api.js';
import type { Config } from './platform/config.js';
import { AccessTable } from './platform/http/access-table.js';
import {
  type ApiParts,
  DOCUMENTATION_PATH,
  documentApi,
  isApiDescription,
} from './platform/http/document-api.js';
import { ProblemFilter } from './platform/http/problem.filter.js';
import { type Published, readPublished } from './platform/http/read-published.js';
import { RouteTable } from './platform/http/route-table.js';
import { readJsonBodies, refuseAddress } from './platform/http/read-json-bodies.js';
import { readOctets } from './platform/http/read-octets.js';
import { addSecurityHeaders } from './platform/http/security-headers.js';
import { listPages, openByAddress, serveWeb } from './platform/http/serve-web.js';
import { tileHost } from './platform/map-config.js';
import { projectRoot } from './platform/project-root.js';
import { headsFileOf, RecordSettings } from './record/record.api.js';
import { REGISTER_SCHEMAS } from './register/register-schemas.js';
import { REPORT_SCHEMAS } from './report/report.api.js';
import { RETENTION_SCHEMAS } from './retention/retention.api.js';
import { VOCABULARY_SCHEMAS } from './vocabulary/vocabulary.api.js';

/** A document of facts is a few kilobytes; this leaves room for the longest that people could write. */
const BODY_LIMIT_BYTES = 1024 * 1024;
const REQUEST_TIMEOUT_MS = 30_000;

/**
 * The service, put together and ready to listen.
 * @throws RulePackError when a rule pack cannot be used: the service must not start on half-read law
 * @throws DatabaseUnavailableError when the database cannot be used
 * @throws Error when a route does not say who may use it
 */
export async function createApp(config: Config): Promise<NestFastifyApplication> {
  const { rulePacksDir, database, tls, trustedProxy, firstAdministrator, timeZone, recordHeadsFile } = config;
  const { mapTiles } = config;
  const packs = await (rulePacksDir === undefined
    ? loadRulePacks()
    : withCorrections(await readRulePacks(rulePacksDir)));
  const root = projectRoot();
  const published = readPublished(root);

  const web = join(root, 'dist', 'web');
  const pages = listPages(web);

  const adapter = new FastifyAdapter({
    bodyLimit: BODY_LIMIT_BYTES,
    requestTimeout: REQUEST_TIMEOUT_MS,
    genReqId: () => randomUUID(),
    frameworkErrors: refuseAddress,
    rewriteUrl: openByAddress(pages),
    trustProxy: trustedProxy ?? false,
    ...(tls === undefined ? {} : { https: { ...tls } }),
  });
  const server = adapter.getInstance();
  const routes = new RouteTable(server);
  addSecurityHeaders(server, DOCUMENTATION_PATH, mapTiles === null ? [] : [tileHost(mapTiles)]);
  readJsonBodies(server);
  readOctets(server, isForOctets);
  const access = new AccessTable(server, (path) => pages.has(path) || isApiDescription(path));
  await serveWeb(server, web);

  const app = await NestFactory.create<NestFastifyApplication>(
    AppModule.with({
      packs,
      geography: loadGeography(),
      published,
      database,
      access,
      record: new RecordSettings(timeZone, headsFileOf(recordHeadsFile, database, root)),
      decision: new DecisionSettings(config.decision.leadHours, config.decision.recheckMonths),
      evidence: new EvidenceSettings(config.evidence.folder, config.evidence.longestBytes),
      mail: config.mail,
      mapTiles,
      links: new LinkSettings(config.publicAddress),
      timeStamps: new TimeStampSettings(config.timeStampUrl),
    }),
    adapter,
    { bodyParser: false, logger: ['error', 'warn'], abortOnError: false },
  );
  try {
    app.useGlobalFilters(new ProblemFilter(routes));
    documentApi(app, () => ({ ...published, ...describe(published, app.get(DeterminationService)) }));
    app.get(AccessGate).guard(server);
    // Refuses a page of strangers that has a visitor's browser send something here.
    app.enableCsrfProtection();
    await app.init();
    await server.ready();
    access.assertComplete();
    if (firstAdministrator !== undefined) await app.get(FirstAdministrator).make(firstAdministrator);
    return app;
  } catch (error) {
    await app.close();
    throw error;
  }
}

/** The schemas under their names in the API's document, and the samples as its examples. */
function describe(
  { schemas, samples }: Published,
  determinations: DeterminationService,
): Omit<ApiParts, 'version'> {
  return {
    schemas: {
      ...ACCOUNT_REQUESTS,
      ...ACCOUNT_ANSWERS,
      ...FLEET_SCHEMAS,
      ...HAND_OVER_SCHEMAS,
      ...REQUEST_SCHEMAS,
      ...OUTING_SCHEMAS,
      ...EVIDENCE_SCHEMAS,
      ...SCOPE_ANSWER_SCHEMAS,
      ...DECISION_SCHEMAS,
      ...MAIL_SCHEMAS,
      ...FOLLOW_UP_SCHEMAS,
      ...CALENDAR_SCHEMAS,
      ...REPORT_SCHEMAS,
      ...VOCABULARY_SCHEMAS,
      ...REGISTER_SCHEMAS,
      ...RETENTION_SCHEMAS,
      ...MAP_SCHEMAS,
      ...BACKUP_SCHEMAS,
      ...Object.fromEntries(
        [...schemas].map(([name, schema]) => [
          name.replaceAll(/(^|-)(.)/g, (_all, _dash, letter: string) => letter.toUpperCase()),
          schema,
        ]),
      ),
    },
    examples: [
      {
        path: '/api/determinations',
        request: Object.fromEntries(
          samples.map(({ title, facts }) => [title, { summary: title, value: facts }]),
        ),
        response: determinations.determine(samples[0]?.facts),
      },
    ],
  };
}
