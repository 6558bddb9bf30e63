import { Link } from 'wouter-preact';
import { useAskAll } from '../ask/use-ask-all.js';
import { ThingList } from '../lists/thing-list.js';
import { Page } from '../look/page.js';
import { useSession } from '../session/session.js';
import { people as say } from '../words/en/people.js';
import type { Account } from './account.js';
import { PeopleLinks } from './people-links.js';

/** Everyone who has an account; administrators change them. */
export default function PeoplePage() {
  const { me } = useSession();
  const asked = useAskAll<Account>('/api/accounts');
  return (
    <Page
      title={say.title}
      lead={say.lead}
      {...(me?.role === 'administrator' && {
        actions: (
          <Link class="button main" href="/people/add">
            {say.accounts.add}
          </Link>
        ),
      })}
    >
      <PeopleLinks />
      <ThingList asked={asked} empty={say.accounts.empty} lineOf={lineOf} />
    </Page>
  );
}

function lineOf({ id, name, signInName, role, active, passwordDue }: Account) {
  return {
    href: `/people/${id}`,
    name,
    state: active ? say.roles[role] : say.accounts.ended,
    about: [signInName, active && passwordDue && say.accounts.passwordDue].filter(Boolean).join(' · '),
  };
}
