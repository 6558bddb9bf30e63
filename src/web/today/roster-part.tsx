import { Link } from 'wouter-preact';
import { useAsk } from '../ask/use-ask.js';
import { DefinitionRows } from '../look/section.js';
import { dayIn } from '../look/tell-instant.js';
import { useNow } from '../look/use-now.js';
import { today as say } from '../words/today.js';
import { DayPart } from './day-part.js';
import type { Listed, RosterLine } from './service-answers.js';

/** Who is on today as what, and whose certificates are out of date. */
export function RosterPart({ zone }: { zone: string }) {
  const day = dayIn(zone, useNow());
  const asked = useAsk<Listed<RosterLine>>(`/api/roster?from=${day}&to=${day}`, { keep: true });
  return (
    <DayPart title={say.roster.title} asked={asked}>
      {({ items }) => (
        <>
          {items.length === 0 && <p>{say.roster.none}</p>}
          <DefinitionRows
            rows={items.map(({ personName, duty, outOfDate }) => ({
              term: say.roster.duties[duty],
              value: personName,
              ...(outOfDate.length > 0 && {
                about: say.roster.outOfDate(outOfDate.map(({ title }) => title).join(', ')),
              }),
            }))}
          />
          <p class="links-line">
            <Link href="/people/roster">{say.roster.toPeople}</Link>
          </p>
        </>
      )}
    </DayPart>
  );
}
