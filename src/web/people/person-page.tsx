import type { PageProps } from '../app/page-route.js';
import { useAsk } from '../ask/use-ask.js';
import type { Thing } from '../lists/field-spec.js';
import { PartChange } from '../lists/part-change.js';
import { told } from '../lists/told.js';
import { Fold } from '../look/fold.js';
import { ErrorState, Loading, Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { DefinitionRows, Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { useSession } from '../session/session.js';
import { people as say } from '../words/en/people.js';
import { accountSpecs, type Account } from './account.js';
import { AccountAccess } from './account-access.js';
import { PeopleLinks } from './people-links.js';

/** One account: read by managers, changed by administrators. */
export default function PersonPage({ params: { id = '' } }: PageProps) {
  const { me } = useSession();
  const path = `/api/accounts/${id}`;
  const { data: account, error, again } = useAsk<Account>(path);
  if (account === undefined) {
    return (
      <Page title={say.title}>
        {error === null ? <Loading /> : <ErrorState error={error} again={again} />}
      </Page>
    );
  }
  const thing = account as unknown as Thing;
  return (
    <Page title={account.name} lead={account.active ? say.roles[account.role] : say.accounts.ended}>
      <PeopleLinks />
      {error !== null && <ErrorState error={error} again={again} />}
      <DefinitionRows
        rows={[
          ...accountSpecs.flatMap((spec) => {
            const value = told(spec, thing);
            return value === null ? [] : [{ term: spec.label, value }];
          }),
          { term: say.accounts.since, value: tellInstant(account.createdAt) },
        ]}
      />
      {account.active && account.passwordDue && <Note>{`${account.name} ${say.accounts.passwordDue}.`}</Note>}
      {me?.role === 'administrator' ? (
        <>
          <Fold title={say.accounts.change}>
            {() => (
              <PartChange
                path={path}
                specs={accountSpecs}
                thing={thing}
                submit={say.accounts.keep}
                touches={['/api/accounts']}
              />
            )}
          </Fold>
          <Section title={say.accounts.access}>
            <AccountAccess account={account} />
          </Section>
        </>
      ) : (
        <p>{say.accounts.readOnly}</p>
      )}
    </Page>
  );
}
