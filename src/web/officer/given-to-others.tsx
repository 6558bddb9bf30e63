import type { Contact } from '../../../shared/record/account-sections.js';
import { givenInRecord } from '../words/en/officer.js';
import { GivenEntries } from './given-entries.js';
import { sectionsOf } from './read-record.js';
import { useWaiting } from './use-waiting.js';
import type { WholeRecord } from './use-whole-record.js';

/** To whom the sheet was given so far: the contacts that this page wrote. */
export function GivenToOthers({ whole: { record, timeZone } }: { whole: WholeRecord }) {
  const waiting = useWaiting<{ contacts?: Contact[] }>(record.id, 'contacts').flatMap(
    ({ contacts = [] }) => contacts,
  );
  const arrived = (sectionsOf(record).contacts?.contacts ?? []).filter(
    ({ channel }) => channel === givenInRecord.channel,
  );
  return <GivenEntries timeZone={timeZone} arrived={arrived.map(entryOf)} waiting={waiting.map(entryOf)} />;
}

const entryOf = ({ id, at, by, name, summary }: Contact) => ({ id, at, by, to: name ?? null, what: summary });
