import { valueOf } from '../../../shared/call/known.js';
import { PrintedBy } from '../look/printed-by.js';
import { tellInstant } from '../look/tell-instant.js';
import { common } from '../words/en/common.js';
import { officer as say, onSheet, sheetTerm } from '../words/officer.js';
import { useSession } from '../session/session.js';
import { lineOf } from './our-craft.js';
import { craftSheets, deadOrMissing, placeSheet, type CraftSheet } from './officer-sheet.js';
import { type SheetLine, SheetLines, SheetPart } from './sheet-lines.js';
import { tellOccurred } from './tell-occurred.js';
import type { WholeRecord } from './use-whole-record.js';

/** The sheet itself: each craft of ours, then when, where and who. In English, since an officer reads it. */
export function OfficerSheetView({ whole }: { whole: WholeRecord }) {
  const { record, sections, fleet, timeZone, asOf } = whole;
  const me = useSession().me;
  const sheets = craftSheets(sections, fleet);
  const { position, decimals, words } = placeSheet(sections);
  const { dead, missing } = deadOrMissing(sections);
  const accounted = valueOf(sections.people?.everyoneAccountedFor) ?? 'unknown';
  const scene: SheetLine[] = [
    [
      'when',
      tellOccurred(valueOf(sections['time-and-place']?.occurred), timeZone) ??
        valueOf(sections.call?.happenedWhen) ??
        null,
    ],
    ['position', position, decimals],
    ['place', words],
    ['accounted', common.answer[accounted]],
    ...(missing.length > 0 ? [['missing', ...missing] as const] : []),
    ...(dead.length > 0 ? [['dead', ...dead] as const] : []),
    ['contact', lineOf(me?.name, me && common.roles[me.role])],
  ];
  return (
    <div class="given" lang="en">
      {sheets.length === 0 && <p>{say.noCraft}</p>}
      {sheets.map((sheet) => (
        <SheetPart key={sheet.craft.name} title={sheet.craft.name || sheetTerm('craft')}>
          <SheetLines lines={craftLines(sheet)} />
        </SheetPart>
      ))}
      <SheetPart title={sheetTerm('scene')}>
        <SheetLines lines={scene} />
      </SheetPart>
      <p class="quiet">
        {record.reference}. {onSheet.asOf(tellInstant(asOf, timeZone), record.version)}.
      </p>
      <PrintedBy {...(timeZone !== undefined && { timeZone })} />
      <p class="printed given-to">{say.printedTo}</p>
    </div>
  );
}

function craftLines({ craft, operators, riders, aboard, agreement }: CraftSheet): SheetLine[] {
  return [
    ['hullNumber', craft.hullNumber],
    ['registrationNumber', craft.registrationNumber],
    ['kind', craft.kind],
    ['look', craft.look],
    ['owner', craft.owner],
    ['operator', ...operators],
    ['aboard', aboard === null ? null : String(aboard)],
    ...(riders.length > 0 ? [['riders', ...riders] as const] : []),
    ...(agreement === null ? [] : [['agreement', agreement] as const]),
    ...(craft.insurer === null ? [] : [['insurer', craft.insurer] as const]),
  ];
}
