import type { PacketRecord, Withheld } from '../../../shared/hand-over/packet.js';
import { flattenSection } from '../../../shared/record/flatten-section.js';
import { isJsonObject, type JsonObject, type JsonValue } from '../../../shared/record/json-value.js';

export type PacketCell = string | number | boolean | Date | null;

export interface SheetOfPacket {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly PacketCell[][];
}

const FIELD_COLUMNS = ['Where', 'Item', 'Field', 'Value', 'How it is known', 'By', 'Learned (UTC)'];

/** The longest text of a cell that spreadsheets take (ECMA-376 implementations); the whole of it stands in record.json. */
const LONGEST_CELL = 32_767;

/** One sheet for each section and list, one for what is withheld, and one that says what the workbook is. */
export function sheetsOfPacket(record: PacketRecord, withheld: Withheld): SheetOfPacket[] {
  const { reference, asOf, recipient, timeZone, cautions } = record;
  const about: PacketCell[][] = [
    ['Incident', reference],
    ['As of (UTC)', new Date(asOf)],
    ['Made for', recipient],
    ['Zone of the business', timeZone],
    ...cautions.map((caution): PacketCell[] => ['Caution', caution]),
  ];
  const parts = [...Object.entries(record.sections), ...Object.entries(record.attachments)];
  return [
    { title: 'About', columns: ['What', 'Value'], rows: about },
    ...parts.map(([name, document]) => sheetOf(name, document)),
    {
      title: 'Withheld',
      columns: ['What', 'Kind', 'How many', 'Reason'],
      rows: [
        ...withheld.withheld.map(({ what, kind, count, reason }): PacketCell[] => [
          what,
          kind,
          count,
          reason,
        ]),
        ...withheld.masked.map(({ section, path, how, reason }): PacketCell[] => [
          `${section} ${path}`,
          `masked: ${how}`,
          1,
          reason,
        ]),
      ],
    },
  ];
}

/** A section field by field; a list of like things, such as tasks, one a row. */
function sheetOf(name: string, document: object): SheetOfPacket {
  if (!Array.isArray(document)) {
    const rows = [...flattenSection(document as JsonObject)].map(([path, value]) => rowOf(path, value));
    return { title: titleOf(name), columns: FIELD_COLUMNS, rows };
  }
  const things = document as JsonObject[];
  const columns = [...new Set(things.flatMap((thing) => Object.keys(thing)))];
  const rows = things.map((thing) => columns.map((column) => cellOf(thing[column])));
  return { title: titleOf(name), columns, rows };
}

/** `titleOf('time-and-place')` is `'Time and place'`; 31 characters is the most that a sheet's name may have. */
function titleOf(name: string): string {
  return (name.charAt(0).toUpperCase() + name.slice(1)).replaceAll('-', ' ').slice(0, 31);
}

function rowOf(path: string, value: JsonValue): PacketCell[] {
  const tokens = path.split('/').slice(1);
  const [where = '', item = '', ...field] =
    tokens.length > 2 ? tokens : [tokens[0] ?? '', '', ...tokens.slice(1)];
  const name = field.length === 0 ? where : field.join(' ');
  if (isJsonObject(value) && 'value' in value && 'known' in value) {
    const { value: fact, known, by, learnedAt } = value;
    return [where, item, name, cellOf(fact), cellOf(known), cellOf(by), timeOf(learnedAt)];
  }
  if (isJsonObject(value) && typeof value['at'] === 'string' && typeof value['how'] === 'string') {
    return [where, item, name, timeOf(value['at']), value['how'], '', ''];
  }
  return [where, item, name, cellOf(value), '', '', ''];
}

function cellOf(value: JsonValue | undefined): PacketCell {
  if (value === undefined || value === null) return '';
  if (typeof value === 'number' || typeof value === 'boolean') return value;
  const text = typeof value === 'string' ? value : listOf(value);
  return text.length <= LONGEST_CELL ? text : `${text.slice(0, LONGEST_CELL - 1)}…`;
}

function listOf(value: JsonValue): string {
  if (Array.isArray(value) && value.every((one: JsonValue) => typeof one === 'string'))
    return value.join(', ');
  return JSON.stringify(value);
}

function timeOf(value: JsonValue | undefined): PacketCell {
  return typeof value === 'string' && !Number.isNaN(Date.parse(value)) ? new Date(value) : cellOf(value);
}
