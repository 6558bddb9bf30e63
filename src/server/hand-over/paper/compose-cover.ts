import { fieldLabel, valueWord } from '../../../../shared/record/field-words/tell-field.js';
import { tellValue, tellZonedTime } from '../../../../shared/report/tell-value.js';
import { amountsOf, sumAmounts, tellSum } from '../../../../shared/report/sum-amounts.js';
import type { Officer } from '../../../../shared/record/response-sections.js';
import type { PaperRow } from './blocks.js';
import { sectionsOf, type Names } from './name-things.js';
import type { PaperMatter } from './paper-matter.js';

/** What stands on the cover below the title. */
export interface Cover {
  readonly reference: string;
  readonly title: string;
  readonly madeFor: string;
  readonly rows: readonly PaperRow[];
  readonly short: readonly PaperRow[];
  readonly cautions: readonly string[];
}

/** Who made what for whom, as of when; what it is about in a few lines; and what to know before relying on it. */
export function composeCover({ about, plan, profile, evidence, timeZone }: PaperMatter, names: Names): Cover {
  const { reference, recipient, purpose, madeBy, packet } = about;
  const { asOf, cautions } = plan.record;
  const files = evidence.length === 1 ? 'one file' : `${evidence.length} files`;
  return {
    reference,
    title: `File of incident ${reference}`,
    madeFor: `Made for ${recipient.name}`,
    rows: [
      { label: 'As of', text: tellZonedTime(asOf, timeZone) },
      { label: 'Purpose', text: purpose },
      { label: 'Kind of recipient', text: profile.title },
      { label: 'Made by', text: madeBy },
      { label: 'Packet', text: packet },
      { label: 'Evidence with it', text: evidence.length === 0 ? 'None leaves' : files },
    ],
    short: shortOf(plan.record, names, timeZone),
    cautions: [
      ...cautions,
      'It tells the record as it stood at that time, and does not change. Ask for a newer one before you rely on it.',
      `Times are those of the clock at the place (${timeZone}). “As told” is what somebody said; “seen by us” and “read off” are by our own people.`,
    ],
  };
}

function shortOf(record: PaperMatter['plan']['record'], names: Names, timeZone: string): PaperRow[] {
  const { account, people, authorities, damage: { lines: damage = [] } = {} } = sectionsOf(record);
  const place = sectionsOf(record)['time-and-place'];
  const where = [place?.description, place?.waterBody, place?.nearestTown].flatMap((one) =>
    typeof one?.value === 'string' ? [one.value.replace(/[.;,\s]+$/, '')] : [],
  );
  const outcomes = (people?.people ?? []).map(({ outcome }) =>
    outcome === undefined
      ? 'not said'
      : valueWord('people', '/people/*/outcome', outcome.value, 'en').toLowerCase(),
  );
  const types = account?.casualtyTypes?.value;
  const rows: [string, string][] = [
    [
      label('time-and-place', '/occurred'),
      place?.occurred === undefined ? '' : tellValue(place.occurred.value, { timeZone }),
    ],
    ['Where', where.join('; ')],
    [
      label('account', '/casualtyTypes'),
      Array.isArray(types) ? tellValue(types, { timeZone, terms: 'casualty-types' }) : '',
    ],
    ['Craft', [...names.craft.values()].join(', ')],
    ['People', tally(outcomes)],
    ['Damage', damage.length === 0 ? '' : tellSum(sumAmounts(damage.flatMap(amountsOf)))],
    ['Officers', (authorities?.officers ?? []).map(nameOfficer).join('; ')],
  ];
  return rows.flatMap(([name, text]) => (text === '' ? [] : [{ label: name, text }]));
}

/** `nameOfficer({ id: 'o1', name: 'L. Ortega', agency: 'Game wardens', reportNumber: 'W-1' })` is `'L. Ortega, Game wardens, report W-1'`. */
function nameOfficer({ name, agency, reportNumber }: Officer): string {
  return [name, agency, reportNumber === undefined ? undefined : `report ${reportNumber}`]
    .filter((part) => part !== undefined)
    .join(', ');
}

/** `tally(['unhurt', 'injured', 'unhurt'])` is `'3: 2 unhurt, 1 injured'`. */
function tally(outcomes: readonly string[]): string {
  if (outcomes.length === 0) return '';
  const kinds = [...new Set(outcomes)].map(
    (kind) => `${outcomes.filter((one) => one === kind).length} ${kind}`,
  );
  return `${outcomes.length}: ${kinds.join(', ')}`;
}

const label = (section: string, path: string): string => fieldLabel(section, path, 'en') ?? path;
