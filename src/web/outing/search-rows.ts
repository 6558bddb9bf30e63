import { findVesselType } from '../../../shared/vocabulary/vessel-types.js';
import { tellInstant } from '../look/tell-instant.js';
import { notBack as say } from '../words/not-back.js';
import type { NotBackHere } from './use-not-back.js';

export interface CalledPerson {
  readonly name: string;
  readonly phone?: string | undefined;
}

export interface SearchRow {
  readonly term: string;
  /** Empty where nobody knows it. */
  readonly said: readonly string[];
}

/** The renter, and those aboard who are not the renter again. */
export function peopleOf({ view, listed }: NotBackHere): CalledPerson[] {
  const { renter, phone, riders = [] } = (view?.outing ?? listed?.outing)?.details ?? {};
  const others = riders.filter(({ name }) => name.trim().toLowerCase() !== renter?.trim().toLowerCase());
  return [...(renter === undefined && phone === undefined ? [] : [{ name: renter ?? '', phone }]), ...others];
}

/** What searchers are told, in the order in which they ask: what to look for, whom, where, since when. */
export function searchRows(here: NotBackHere): SearchRow[] {
  const { view, listed, known, zone } = here;
  const { unit } = known;
  const outing = view?.outing ?? listed?.outing;
  const details = outing?.details ?? {};
  const sheet = view?.sheet ?? {};
  const craft = view?.craft;
  const at = (instant: string | null | undefined): string | undefined =>
    instant === null || instant === undefined ? undefined : tellInstant(instant, zone);
  const row = (term: string, ...said: (string | null | undefined)[]): SearchRow => ({
    term,
    said: said.filter((words): words is string => typeof words === 'string' && words !== ''),
  });
  return [
    row(
      say.sheet.craft,
      unit,
      craft && findVesselType(craft.type)?.label,
      craft && [craft.make, craft.model].filter(Boolean).join(' '),
      craft?.registrationNumber && say.sheet.registration(craft.registrationNumber),
    ),
    row(say.sheet.colours, (craft?.colours ?? listed?.colours ?? []).join(', ')),
    row(
      say.sheet.aboard,
      details.aboard === undefined ? undefined : say.sheet.aboardCount(details.aboard),
      ...peopleOf(here).map(({ name, phone }) => [name, phone].filter(Boolean).join(', ')),
    ),
    row(say.sheet.seen, at(sheet.lastSeenAt), sheet.lastSeenWhere),
    row(say.sheet.plan, sheet.plan ?? details.plan),
    row(say.sheet.out, at(outing?.outAt)),
    row(say.sheet.due, at(outing?.dueBackAt)),
    row(say.sheet.spoken, at(sheet.lastSpokenAt)),
    row(say.sheet.vehicle, details.vehicle),
    row(say.sheet.fuel, sheet.fuel ?? details.fuel),
    row(say.sheet.remark, details.remark, sheet.remark),
  ];
}
