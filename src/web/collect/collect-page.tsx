import { useState } from 'preact/hooks';
import type { PageProps } from '../app/page-route.js';
import { Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { collect as say } from '../words/collect.js';
import { Collected, type Collection } from './collected.js';
import { PasscodeForm } from './passcode-form.js';

/** A packet for somebody without an account: the passcode first, then who sent it, why, what and until when. */
export default function CollectPage({ params: { token = '' } }: PageProps) {
  const [collection, setCollection] = useState<Collection | null>(null);
  const [closed, setClosed] = useState<string | null>(null);
  const path = `/api/collections/${encodeURIComponent(token)}`;
  if (closed !== null) {
    return (
      <Page title={say.nothing}>
        <Note kind="error">{closed}</Note>
      </Page>
    );
  }
  return (
    <Page title={say.title} {...(collection === null && { lead: say.lead })}>
      {collection === null ? (
        <PasscodeForm path={path} onOpen={setCollection} onClosed={setClosed} />
      ) : (
        <Collected path={path} collection={collection} />
      )}
      <p class="quiet">{say.loggedNote}</p>
    </Page>
  );
}
