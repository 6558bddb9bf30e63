import { Link } from 'wouter-preact';
import { useAsk } from '../ask/use-ask.js';
import { Page } from '../look/page.js';
import { ownZone } from '../look/tell-instant.js';
import { useSession } from '../session/session.js';
import { common } from '../words/common.js';
import { titles } from '../words/titles.js';
import { today as say } from '../words/today.js';
import { ClockList } from './clock-list.js';
import { OpenList } from './open-list.js';
import type { ClockLine, Paged } from './service-answers.js';
import './today.css';

const EVERY_MINUTE = 60_000;

/** Where counsel begins: the clocks and the incidents that were assigned, and nothing of others. */
export function CounselStart() {
  const zone = ownZone();
  const clocks = useAsk<Paged<ClockLine>>('/api/clocks?limit=6', { keep: true, everyMs: EVERY_MINUTE });
  return (
    <Page title={say.title}>
      <ClockList asked={clocks} zone={zone} />
      <OpenList
        path="/api/register?limit=100"
        title={say.start.counsel}
        none={say.start.counselNone}
        zone={zone}
      />
      <Ways ways={[['/law/try', say.start.tryLaw]]} />
    </Page>
  );
}

/** Where an enrolled device begins, with nobody signed in: what it may do, in reach of a thumb. */
export function DeviceStart() {
  const { device } = useSession();
  return (
    <Page
      title={common.deskName}
      lead={<p>{say.start.device(device?.name ?? '')}</p>}
      actions={
        <Link href="/call" class="button act">
          {say.call}
        </Link>
      }
    >
      <Ways
        ways={[
          ['/out-and-back', say.outAndBack],
          ['/what-to-say', say.whatToSay],
          ['/served-paper', titles.servedPaper],
          ['/unsent', say.unsent],
          ['/sign-in', say.start.signIn],
        ]}
      />
    </Page>
  );
}

function Ways({ ways }: { ways: readonly (readonly [string, string])[] }) {
  return (
    <ul class="links">
      {ways.map(([href, words]) => (
        <li key={href}>
          <Link href={href}>{words}</Link>
        </li>
      ))}
    </ul>
  );
}
