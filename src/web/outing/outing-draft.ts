import type { OutingDetails, Rider } from '../../../shared/outing/outing.js';
import { fieldMoment, momentOf } from '../look/moment.js';
import { ownZone } from '../look/tell-instant.js';
import { nowByService } from '../look/use-now.js';
import type { Outing } from './service-answers.js';

export type DueIn = '30' | '60' | '120' | '240' | 'at' | 'unknown';

/** What is typed of a craft that went out. */
export interface OutingDraft {
  readonly unit: string;
  readonly due: DueIn | undefined;
  /** As fields of day and time give them, on the clock of this device. */
  readonly dueAt: string;
  readonly outAt: string;
  readonly renter: string;
  readonly phone: string;
  readonly aboard: string;
  /** One a line: name, phone. */
  readonly riders: string;
  readonly vehicle: string;
  readonly fuel: string;
  readonly plan: string;
  readonly remark: string;
}

export const NEW_OUTING: OutingDraft = {
  unit: '',
  due: undefined,
  dueAt: '',
  outAt: '',
  renter: '',
  phone: '',
  aboard: '',
  riders: '',
  vehicle: '',
  fuel: '',
  plan: '',
  remark: '',
};

/** What was written down, to be changed. */
export function draftOf({ unit, outAt, dueBackAt, details = {} }: Outing): OutingDraft {
  const zone = ownZone();
  const { aboard, riders = [], ...words } = details;
  return {
    ...NEW_OUTING,
    ...words,
    unit,
    due: dueBackAt === null ? 'unknown' : 'at',
    dueAt: dueBackAt === null ? '' : fieldMoment(dueBackAt, zone),
    outAt: outAt === null ? '' : fieldMoment(outAt, zone),
    aboard: aboard === undefined ? '' : String(aboard),
    riders: riders.map(({ name, phone }) => (phone === undefined ? name : `${name}, ${phone}`)).join('\n'),
  };
}

/** What is sent; null where a time is none, or nobody said when it is due. */
export function outingBody(draft: OutingDraft, before?: Outing): (OutingDetails & { unit: string }) | null {
  const { unit, outAt, aboard, riders, renter, phone, vehicle, fuel, plan, remark } = draft;
  const zone = ownZone();
  const now = nowByService();
  const went = outAt === '' ? (before?.outAt ?? new Date(now).toISOString()) : momentOf(outAt, zone);
  const back = dueOf(draft, now, zone);
  if (went === null || back === null) return null;
  const typed = Object.entries({ renter, phone, vehicle, fuel, plan, remark }).filter(
    ([, text]) => text.trim() !== '',
  );
  const others = ridersOf(riders, before?.details?.riders ?? []);
  return {
    unit: unit.trim(),
    outAt: went,
    ...(back !== undefined && { dueBackAt: back }),
    ...Object.fromEntries(typed.map(([name, text]) => [name, text.trim()])),
    ...(aboard.trim() !== '' && { aboard: Number(aboard) }),
    ...(others.length > 0 && { riders: others }),
  } as OutingDetails & { unit: string };
}

/** When it is due; undefined where nobody knows, null where that was not said or is no time. */
function dueOf({ due, dueAt }: OutingDraft, now: number, zone: string): string | null | undefined {
  if (due === 'unknown') return undefined;
  if (due === undefined || (due === 'at' && dueAt === '')) return null;
  return due === 'at' ? momentOf(dueAt, zone) : new Date(now + Number(due) * 60_000).toISOString();
}

function ridersOf(lines: string, before: readonly Rider[]): Rider[] {
  return lines
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line, place) => {
      const [name = '', phone = ''] = line.split(',').map((part) => part.trim());
      const id = before.find((rider) => rider.name === name)?.id ?? `r${place + 1}`;
      return { id, name, ...(phone !== '' && { phone }) };
    });
}
