import type { ObjectLiteral, SelectQueryBuilder } from 'typeorm';
import type { Ternary } from '../../../../shared/kernel/truth.js';
import type { RegisterFilter } from '../../../../shared/wire/register-queries.dto.js';
import { withWords } from '../../platform/database/with-words.js';

export type Query = SelectQueryBuilder<ObjectLiteral>;

const SECTION_WORDS = { table: 'incident_section', column: 'words', owner: 'incident_id', id: 'i.id' };

/** What is asked for, and of which account of counsel the assignments bound it; without one, nothing does. */
export interface ReadableFilter extends RegisterFilter {
  readonly counselAccount?: string;
}

/** Keeps, of the incidents that a query calls `i`, those that are asked for. */
export function filterRegister(query: Query, filter: ReadableFilter, now: string): Query {
  if (filter.counselAccount !== undefined) assignedTo(query, filter.counselAccount);
  const { status, openedFrom, openedUntil, outcome, reports, craft, station, casualty, hurt, q } = filter;
  if (status !== undefined) query.andWhere('i.status = :status', { status });
  if (openedFrom !== undefined) query.andWhere('i.opened_at >= :openedFrom', { openedFrom: utc(openedFrom) });
  if (openedUntil !== undefined)
    query.andWhere('i.opened_at < :openedUntil', { openedUntil: utc(openedUntil) });
  if (outcome !== undefined) withDuty(query, 'd.outcome = :outcome', { outcome });
  if (reports === 'open') withDuty(query, 'd.settled = :unsettled', { unsettled: false });
  if (reports === 'overdue') {
    withDuty(query, 'd.settled = :unsettled AND d.overdue_after < :now', { unsettled: false, now });
  }
  if (craft !== undefined) withCraft(query, craft);
  if (station !== undefined) withStation(query, station);
  if (casualty !== undefined) {
    const named = isIn(query, 'account', 'casualtyTypes', '= :casualty');
    query.andWhere(named, { casualty });
  }
  if (hurt !== undefined) withHurt(query, hurt);
  if (q !== undefined) withWords(query, SECTION_WORDS, q);
  return query;
}

/** Of the incidents that a query calls `i`, those that were assigned to an account of counsel. */
export function assignedTo(query: Query, counselAccount: string): void {
  query.andWhere(
    `EXISTS (SELECT 1 FROM "counsel_assignment" ca
      WHERE ca.incident_id = i.id AND ca.account_id = :counselAccount)`,
    { counselAccount },
  );
}

function withDuty(query: Query, condition: string, parameters: ObjectLiteral): void {
  query.andWhere(
    `EXISTS (SELECT 1 FROM "duty_state" d WHERE d.incident_id = i.id AND ${condition})`,
    parameters,
  );
}

/** By the section on craft, or as the caller named it. */
function withCraft(query: Query, craft: string): void {
  const parts = ['craft', 'call'].map((part) => isIn(query, part, 'craft', '= :craft'));
  query.andWhere(`(${parts.join(' OR ')})`, { craft });
}

/**
 * By the craft that the record links to the fleet, which may be called otherwise today, or by the names that stand for
 * those that it does not link.
 */
function withStation(query: Query, station: string): void {
  const link = linkedCraft(query);
  const named = ['craft', 'call'].map((part) => isIn(query, part, 'craft', '= c.unit_name'));
  query.andWhere(
    `EXISTS (SELECT 1 FROM "craft" c JOIN "station" st ON st.id = c.station_id
      WHERE st.name = :station AND (${[link, ...named].join(' OR ')}))`,
    { station },
  );
}

/** That the section on craft links the craft that a query calls `c`. */
function linkedCraft(query: Query): string {
  const [items, id] = isPostgres(query)
    ? [`json_array_elements(CAST(s.document AS json) -> 'craft') AS e(value)`, `e.value ->> 'fleetCraft'`]
    : [`json_each(s.document, '$.craft') AS e`, `json_extract(e.value, '$.fleetCraft')`];
  return `EXISTS (SELECT 1 FROM "incident_section" s, ${items}
    WHERE s.incident_id = i.id AND s.section = 'craft' AND ${id} = c.id)`;
}

const HARMED = ['injured', 'died', 'missing', 'not-back'];

/** Nobody was hurt only where everybody who is named is known to be unhurt, and somebody is named. */
function withHurt(query: Query, hurt: Ternary): void {
  const is = (condition: string): string => isIn(query, 'people', 'outcomes', condition);
  const harmed = is('IN (:...harmed)');
  const unhurt = is("= 'unhurt'");
  const open = is("= 'unknown'");
  if (hurt === 'yes') query.andWhere(harmed, { harmed: HARMED });
  if (hurt === 'no') query.andWhere(`${unhurt} AND NOT ${open} AND NOT ${harmed}`, { harmed: HARMED });
  if (hurt === 'unknown') query.andWhere(`NOT ${harmed} AND (${open} OR NOT ${unhurt})`, { harmed: HARMED });
}

/** That some text of a list in the summary fits; each engine reads JSON in its own words. */
function isIn(query: Query, part: string, list: string, condition: string): string {
  const texts = isPostgres(query)
    ? `json_array_elements_text(CAST(i.summary AS json) -> '${part}' -> '${list}') AS t(value)`
    : `json_each(i.summary, '$.${part}.${list}') AS t`;
  return `EXISTS (SELECT 1 FROM ${texts} WHERE t.value ${condition})`;
}

const isPostgres = (query: Query): boolean => query.connection.options.type === 'postgres';

/** Instants are kept in UTC to the millisecond, so that the order of texts is that of time. */
const utc = (instant: string): string => new Date(instant).toISOString();
