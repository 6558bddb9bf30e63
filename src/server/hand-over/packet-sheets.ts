import type { PacketRecord, Withheld } from '../../../shared/hand-over/packet.js';
import { fieldLabel, sectionTitle } from '../../../shared/record/field-words/tell-field.js';
import type { JsonObject } from '../../../shared/record/json-value.js';
import type { Block } from './paper/blocks.js';
import { composeDetermination, composePrivileged, type LeavingTask } from './paper/compose-law.js';
import { composeLists } from './paper/compose-lists.js';
import { LISTS } from './paper/compose-paper.js';
import { composeSection, maskedOf } from './paper/compose-section.js';
import { nameIds, type Names, nameThings } from './paper/name-things.js';
import { MASKED_WORDS } from './paper/tell-fact.js';
import { cellOf, localTimeCell, type PacketCell, textCell } from './sheet-cells.js';
import { zoneOf } from './zone-of.js';

export interface SheetOfPacket {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly PacketCell[][];
}

const FIELD_COLUMNS = ['Of what', 'Part', 'Field', 'Value', 'Unit', 'How it is known', 'Path in record.json'];

/**
 * One sheet for each section and list, in the words of the paper, one for what is withheld, and one that says what the
 * workbook is. Numbers, days and times stay what they are.
 */
export function sheetsOfPacket(record: PacketRecord, withheld: Withheld): SheetOfPacket[] {
  const timeZone = zoneOf(record);
  const names = nameThings(record);
  const composing = { names, timeZone, masked: maskedOf(withheld) };
  const { determination, task, privileged, ...lists } = record.attachments;
  return [
    { title: 'About', columns: ['What', 'Value'], rows: aboutRows(record, timeZone) },
    ...Object.entries(record.sections).map(([section, document]) =>
      sheetOf(
        sectionTitle(section, 'en'),
        composeSection(section, document as JsonObject, composing),
        timeZone,
      ),
    ),
    ...Object.entries(lists).map(([section, document]) =>
      sheetOf(listTitle(section), composeLists(section, document as JsonObject, names, timeZone), timeZone),
    ),
    ...(determination
      ? [sheetOf('Law', composeDetermination(determination, names, timeZone), timeZone)]
      : []),
    ...(task ? [taskSheet(task, names, timeZone)] : []),
    ...(privileged ? [sheetOf('Notes for counsel', composePrivileged(privileged, timeZone), timeZone)] : []),
    { title: 'Withheld', columns: ['What', 'How', 'How many', 'Reason'], rows: withheldRows(withheld) },
  ].filter(({ rows }) => rows.length > 0);
}

function aboutRows({ reference, asOf, recipient, cautions }: PacketRecord, timeZone: string): PacketCell[][] {
  return [
    ['Incident', reference],
    ['As of', localTimeCell(asOf, timeZone)],
    ['Times', `Those of the clock at the place (${timeZone})`],
    ['Made for', recipient.replaceAll('-', ' ')],
    ...cautions.map((caution): PacketCell[] => ['Caution', caution]),
    ['Caution', 'A field that is not here was not recorded or is withheld. The proof covers record.json.'],
  ];
}

const listTitle = (section: string): string =>
  section === 'evidence'
    ? 'Photographs and other files'
    : (LISTS.find(([name]) => name === section)?.[1] ?? section);

/** The characters that a sheet's name may not have, and the 31 that it may be long (ECMA-376 implementations). */
const sheetName = (title: string): string => title.replaceAll(/[[\]:*?/\\]/g, ' ').slice(0, 31);

function sheetOf(title: string, blocks: readonly Block[], timeZone: string): SheetOfPacket {
  let of = '';
  const rows = blocks.flatMap((block): PacketCell[][] => {
    if (block.kind === 'heading') of = block.title;
    if (block.kind === 'text') return [[of, '', '', textCell(block.text), '', '', '']];
    if (block.kind !== 'rows') return [];
    return block.rows.map(({ under = '', label, text, known = '', field }) => {
      const { value, unit } = cellOf(text, field, timeZone);
      return [of, under, label, value, unit, textCell(known), field?.path ?? ''];
    });
  });
  return { title: sheetName(title), columns: FIELD_COLUMNS, rows };
}

function taskSheet(tasks: object, names: Names, timeZone: string): SheetOfPacket {
  return {
    title: 'Tasks',
    columns: ['Task', 'Whose', 'Due', 'Stands'],
    rows: (tasks as readonly LeavingTask[]).map(({ title, owner, dueAt, state }) => [
      textCell(nameIds(names, title)),
      owner.replaceAll('-', ' '),
      dueAt === null ? 'No time' : localTimeCell(dueAt, timeZone),
      state.replaceAll('-', ' '),
    ]),
  };
}

function withheldRows({ withheld, masked }: Withheld): PacketCell[][] {
  const rows = [
    ...withheld.map(({ what, count, reason }): PacketCell[] => [what, 'stays', count, reason]),
    ...masked.map(({ section, path, how, reason }): PacketCell[] => [
      `${sectionTitle(section, 'en')}: ${fieldLabel(section, path, 'en') ?? path}`,
      `masked: ${MASKED_WORDS[how]}`,
      1,
      reason,
    ]),
  ];
  return rows.length > 0 ? rows : [['Nothing of the record stays, and nothing is masked.', '', '', '']];
}
