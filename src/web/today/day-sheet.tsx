import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { useAsk } from '../ask/use-ask.js';
import { AskedSection } from '../follow-up/asked-section.js';
import { DoneStrip } from '../follow-up/done-strip.js';
import type { TaskDone } from '../follow-up/task-props.js';
import { Page } from '../look/page.js';
import { PrintedBy } from '../look/printed-by.js';
import { ownZone, tellInstant } from '../look/tell-instant.js';
import { useNow } from '../look/use-now.js';
import { useSession } from '../session/session.js';
import { titles } from '../words/titles.js';
import { today as say } from '../words/today.js';
import { BackupsPart } from './backups-part.js';
import { ClockList } from './clock-list.js';
import { FirstClock } from './first-clock.js';
import { MailPart } from './mail-part.js';
import { OpenList } from './open-list.js';
import { RequestsPart } from './requests-part.js';
import { RosterPart } from './roster-part.js';
import type { ClockLine, Paged } from './service-answers.js';
import { TasksPart } from './tasks-part.js';
import { WaterPart } from './water-part.js';
import '../follow-up/follow-up.css';
import './today.css';

const EVERY_MINUTE = 60_000;

/** The day of those who work here. Each part asks for itself, and stands without signal as this device kept it. */
export function DaySheet() {
  const now = useNow();
  const role = useSession().me?.role;
  // The office begins with what the law asks, the dock with what is on the water.
  const manages = role === 'manager' || role === 'administrator';
  const [done, setDone] = useState<TaskDone | null>(null);
  const zone = ownZone();
  const clocks = useAsk<Paged<ClockLine>>('/api/clocks?limit=6', { keep: true, everyMs: EVERY_MINUTE });
  const instant = new Date(now).toISOString();
  return (
    <Page
      title={say.title}
      lead={<p>{say.lead(tellInstant(instant, zone, now), zone)}</p>}
      {...(clocks.data !== undefined && {
        figure: <FirstClock clock={clocks.data.items[0]} zone={zone} />,
      })}
      actions={
        <>
          <Link href="/call" class="button act">
            {say.call}
          </Link>
          <Link href="/out-and-back" class="button">
            {say.outAndBack}
          </Link>
        </>
      }
    >
      <PrintedBy />
      {done !== null && <DoneStrip done={done} onDone={setDone} />}
      <AskedSection zone={zone} onDone={setDone} most={1} />
      <div class="sheet">
        <div class="day-column">
          {manages ? <ClockList asked={clocks} zone={zone} /> : <WaterPart zone={zone} />}
          <OpenList
            path="/api/register?status=open&limit=6"
            title={say.open.title}
            none={say.open.none}
            zone={zone}
          />
          <TasksPart />
        </div>
        <div class="day-column">
          {manages ? <WaterPart zone={zone} /> : <ClockList asked={clocks} zone={zone} />}
          <RosterPart zone={zone} />
          {manages ? (
            <RequestsPart />
          ) : (
            <p class="links-line unprinted">
              <Link href="/served-paper">{titles.servedPaper}</Link>
            </p>
          )}
          {manages && <BackupsPart zone={zone} />}
          {role === 'administrator' && <MailPart />}
        </div>
      </div>
    </Page>
  );
}
