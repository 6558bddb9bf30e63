import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { bodyOf } from '../lists/draft.js';
import { ThingForm } from '../lists/thing-form.js';
import { useSend } from '../lists/use-send.js';
import { Page } from '../look/page.js';
import { people as say } from '../words/en/people.js';
import { accountSpecs, type NewAccount } from './account.js';
import { PeopleLinks } from './people-links.js';
import { ShownOnce } from './shown-once.js';

/** An account is made, and its one-time password shown once. */
export default function AddPersonPage() {
  const sending = useSend();
  const [made, setMade] = useState<NewAccount | null>(null);
  return (
    <Page title={say.accounts.add} lead={say.accounts.addLead}>
      <PeopleLinks />
      {made === null ? (
        <ThingForm
          specs={accountSpecs}
          submit={say.accounts.add}
          pending={sending.pending}
          error={sending.error}
          send={async (draft) => {
            const answer = await sending.create<NewAccount>('/api/accounts', bodyOf(accountSpecs, draft), [
              '/api/accounts',
            ]);
            if (answer !== undefined) setMade(answer);
            return answer !== undefined;
          }}
        />
      ) : (
        <>
          <p>
            <Link href={`/people/${made.id}`}>{made.name}</Link>
          </p>
          <ShownOnce
            what={`${say.once.password}: ${made.name}`}
            secret={made.oneTimePassword}
            until={made.passwordExpiresAt}
            onSeen={() => setMade(null)}
          />
        </>
      )}
    </Page>
  );
}
