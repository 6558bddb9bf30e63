import { useState } from 'preact/hooks';
import { PERMIT_MS } from '../../../shared/wire/packet-link-requests.dto.js';
import type { PageProps } from '../app/page-route.js';
import { useAsk } from '../ask/use-ask.js';
import { ErrorState, Loading, Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { tellInstant } from '../look/tell-instant.js';
import { collect as say } from '../words/collect.js';
import { Collected } from './collected.js';
import type { Collection, LinkStanding } from './collection.js';
import { CounselDoor } from './counsel-door.js';
import { PasscodeForm } from './passcode-form.js';

/** A packet for somebody outside: how the link stands, then its passcode or sign-in, then who sent it, why, what and until when. */
export default function CollectPage({ params: { token = '' } }: PageProps) {
  const path = `/api/collections/${encodeURIComponent(token)}`;
  const { data, error, again } = useAsk<LinkStanding>(path);
  const [collection, setCollection] = useState<Collection | null>(null);
  const [over, setOver] = useState(false);
  const open = (opened: Collection): void => {
    setCollection(opened);
    // From then on the service begins no download: a press would fail without a word.
    setTimeout(() => {
      setCollection(null);
      setOver(true);
    }, PERMIT_MS);
  };
  if (data === undefined && error !== null) {
    return error.trouble === 'not-there' ? (
      <Closed why="never" />
    ) : (
      <Page title={say.title}>
        <ErrorState error={error} again={again} />
      </Page>
    );
  }
  if (data === undefined) {
    return (
      <Page title={say.title}>
        <Loading />
      </Page>
    );
  }
  const { state, opensBy, triesLeft, until } = data;
  if (state !== 'open') return <Closed why={state} />;
  const bySignIn = opensBy === 'sign-in';
  if (collection !== null) {
    return (
      <Page title={say.title}>
        <Collected
          archive={bySignIn ? `${path}/for-counsel/archive` : `${path}/archive`}
          note={bySignIn ? say.downloadNoteSignedIn : say.downloadNote}
          collection={collection}
          onDownload={again}
        />
        {error !== null && <ErrorState error={error} again={again} />}
        <p class="quiet">{say.loggedNote}</p>
      </Page>
    );
  }
  return (
    <Page title={say.title} lead={bySignIn ? say.counsel.lead : say.lead}>
      {over && <Note>{say.over}</Note>}
      {bySignIn ? (
        <CounselDoor path={`${path}/for-counsel`} onOpen={setCollection} onRefused={again} />
      ) : (
        <PasscodeForm path={path} triesLeft={triesLeft} onOpen={open} onRefused={again} />
      )}
      <p class="quiet">
        {say.opensUntil(tellInstant(until))} {say.loggedNote}
      </p>
    </Page>
  );
}

function Closed({ why }: { why: keyof typeof say.closed }) {
  return (
    <Page title={say.nothing}>
      <Note kind="error">{say.closed[why]}</Note>
    </Page>
  );
}
