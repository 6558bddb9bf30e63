import type { AuthoritiesSection, HandedOver } from '../../../shared/record/response-sections.js';
import { officer as say } from '../words/officer.js';
import { GivenEntries } from './given-entries.js';
import { lineOf } from './our-craft.js';
import { sectionsOf } from './read-record.js';
import { useWaiting } from './use-waiting.js';
import type { WholeRecord } from './use-whole-record.js';

/** What was given to authorities so far. */
export function GivenToOfficers({ whole: { record, timeZone } }: { whole: WholeRecord }) {
  const { officers = [], handedOver = [] } = sectionsOf(record).authorities ?? {};
  const waiting = useWaiting<AuthoritiesSection>(record.id, 'authorities');
  const known = [...officers, ...waiting.flatMap((addition) => addition.officers ?? [])];
  const entryOf = ({ id, at, by, to, officer, what }: HandedOver) => {
    const found = known.find((one) => one.id === officer);
    const badge = found?.badge === undefined ? null : say.given.badge(found.badge);
    return { id, at, by, what, to: lineOf(found?.name ?? to, found?.agency, badge) };
  };
  return (
    <GivenEntries
      timeZone={timeZone}
      arrived={handedOver.map(entryOf)}
      waiting={waiting.flatMap((addition) => addition.handedOver ?? []).map(entryOf)}
    />
  );
}
