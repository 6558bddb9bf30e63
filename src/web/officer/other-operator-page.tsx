import './officer.css';
import { Link } from 'wouter-preact';
import type { PageProps } from '../app/page-route.js';
import { ErrorState, KeptNote, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintedBy } from '../look/printed-by.js';
import { tellInstant } from '../look/tell-instant.js';
import { officer as sayOfficer, onSheet, otherOperator as say, sheetTerm } from '../words/officer.js';
import { GiveOther } from './give-other.js';
import { GivenToOthers } from './given-to-others.js';
import { lineOf, type OurCraft, ourCraftOf } from './our-craft.js';
import { namesAndAddresses } from './officer-sheet.js';
import { OwnerForm } from './owner-form.js';
import { SheetActions } from './sheet-actions.js';
import { type SheetLine, SheetLines, SheetPart } from './sheet-lines.js';
import { useWholeRecord, type WholeRecord } from './use-whole-record.js';

/**
 * What 46 U.S.C. 2303(a)(2) has the other side told, and nothing more: who was in charge, with the address, and which
 * vessel. Nobody's telephone, age, insurance or injury stands here, whatever the record knows.
 */
export default function OtherOperatorPage({ params: { id = '' } }: PageProps) {
  const { whole, error, keptAt, again } = useWholeRecord(id);
  if (whole === undefined) {
    return (
      <Page title={say.titleWithout}>
        {error === null ? <Loading /> : <ErrorState error={error} again={again} />}
      </Page>
    );
  }
  return (
    <Page
      title={say.title(whole.record.reference)}
      lead={
        <div class="unprinted">
          <p>{say.law}</p>
          <p>{say.nothing}</p>
        </div>
      }
      actions={<SheetActions />}
    >
      <KeptNote keptAt={keptAt} />
      <OwnerForm whole={whole} />
      <OtherSheet whole={whole} />
      <p class="links-line unprinted">
        <Link href={`/incidents/${id}/officer`}>{sayOfficer.toOfficer}</Link>
        <Link href="/what-to-say">{sayOfficer.toSay}</Link>
      </p>
      <GiveOther whole={whole} />
      <GivenToOthers whole={whole} />
    </Page>
  );
}

function OtherSheet({ whole: { record, sections, fleet, timeZone, asOf } }: { whole: WholeRecord }) {
  const craft = ourCraftOf(sections, fleet);
  return (
    <div class="given" lang="en">
      {craft.length === 0 && <p>{sayOfficer.noCraft}</p>}
      {craft.map((one) => (
        <SheetPart key={one.name} title={one.name || sheetTerm('craft')}>
          <SheetLines lines={identificationOf(one, namesAndAddresses(one, sections))} />
        </SheetPart>
      ))}
      <p class="quiet">
        {onSheet.law} {record.reference}. {onSheet.asOf(tellInstant(asOf, timeZone), record.version)}.
      </p>
      <PrintedBy {...(timeZone !== undefined && { timeZone })} />
    </div>
  );
}

/** The hull number identifies only where there is no registration number: it is also what a thief needs. */
function identificationOf(craft: OurCraft, operators: readonly string[]): SheetLine[] {
  return [
    craft.registrationNumber === null && craft.hullNumber !== null
      ? ['hullNumber', craft.hullNumber]
      : ['registrationNumber', craft.registrationNumber],
    ['kind', lineOf(craft.kind, craft.look)],
    ['operatorShort', ...operators],
    ['owner', craft.owner],
  ];
}
