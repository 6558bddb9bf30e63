import { useState } from 'preact/hooks';
import type { LegalHold } from '../../../shared/record/legal-hold.js';
import { useAsk } from '../ask/use-ask.js';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Fold } from '../look/fold.js';
import { Empty, ErrorState, Loading } from '../look/notes.js';
import { Section } from '../look/section.js';
import { Sign } from '../look/sign.js';
import { tellInstant } from '../look/tell-instant.js';
import { useSession } from '../session/session.js';
import { counsel as say } from '../words/counsel.js';
import type { AccountLine, HoldsAnswer } from './counsel-answers.js';
import { WordsForm } from './words-form.js';

interface HoldsPartProps {
  readonly incident: string;
  /** Those who may be named; undefined for whoever starts and ends no hold. */
  readonly accounts: readonly AccountLine[] | undefined;
}

/** Each duty to keep everything: since when, who keeps things and said so, and counsel's release. */
export function HoldsPart({ incident, accounts }: HoldsPartProps) {
  const path = `/api/incidents/${incident}/holds`;
  const { data, error, again } = useAsk<HoldsAnswer>(path);
  const [key, setKey] = useState(() => crypto.randomUUID() as string);
  const telling = useTell();
  const start = async (body: object): Promise<boolean> => {
    const started = await telling.tell(path, { method: 'POST', body, key }, [`/api/incidents/${incident}`]);
    if (started !== undefined) setKey(crypto.randomUUID());
    return started !== undefined;
  };
  return (
    <Section title={say.holds.title}>
      {data === undefined && (error === null ? <Loading /> : <ErrorState error={error} again={again} />)}
      {data?.holds.length === 0 && <Empty>{say.holds.none}</Empty>}
      {data?.holds.map((hold) => (
        <HoldItem key={hold.id} path={path} hold={hold} accounts={accounts} />
      ))}
      {accounts !== undefined && (
        <Fold title={say.holds.start}>
          {() => (
            <WordsForm
              fields={[{ name: 'reason', label: say.holds.reason, rows: 2 }]}
              button={say.holds.startIt}
              send={start}
              pending={telling.pending}
              error={telling.error}
            />
          )}
        </Fold>
      )}
    </Section>
  );
}

interface HoldItemProps {
  readonly path: string;
  readonly hold: LegalHold;
  readonly accounts: readonly AccountLine[] | undefined;
}

function HoldItem({ path, hold, accounts }: HoldItemProps) {
  const { cause, reason, released } = hold;
  return (
    <article class="counsel-hold">
      <h3>{say.holds.causes[cause]}</h3>
      <p>
        <Sign of={released === undefined ? 'yes' : 'no'} />{' '}
        {released === undefined
          ? say.holds.standing
          : say.holds.released(released.counsel, released.releasedOn)}
      </p>
      <p class="quiet">{say.holds.since(tellInstant(hold.since), hold.startedBy)}</p>
      {reason !== undefined && <p>{reason}</p>}
      <Custodians path={`${path}/${hold.id}`} hold={hold} mayName={accounts !== undefined} />
      {accounts !== undefined && released === undefined && (
        <>
          <HoldForm
            title={say.holds.name}
            button={say.holds.nameIt}
            path={`${path}/${hold.id}/custodians`}
            fields={[
              {
                name: 'account',
                label: say.holds.person,
                none: say.holds.nobody,
                options: accounts.map(({ id, name }) => ({ value: id, label: name })),
              },
              { name: 'name', label: say.holds.personName },
            ]}
          />
          <HoldForm
            title={say.holds.release}
            button={say.holds.releaseIt}
            path={`${path}/${hold.id}/release`}
            fields={[
              { name: 'counsel', label: say.holds.counsel },
              { name: 'releasedOn', label: say.holds.releasedOn, type: 'date' },
              { name: 'reason', label: say.holds.releaseReason, rows: 2 },
            ]}
          />
        </>
      )}
    </article>
  );
}

function Custodians({ path, hold, mayName }: { path: string; hold: LegalHold; mayName: boolean }) {
  const { me } = useSession();
  const telling = useTell();
  const acknowledge = (body: object): void =>
    void telling.does(`${path}/acknowledgements`, { method: 'POST', body }, [pathOfHolds(path)]);
  return (
    <>
      <h4>{say.holds.custodians}</h4>
      {hold.custodians.length === 0 && <p class="quiet">{say.holds.noCustodians}</p>}
      <ul class="counsel-people">
        {hold.custodians.map(({ id, name, account, acknowledgedAt }) => (
          <li key={id}>
            <span>
              {name},{' '}
              {acknowledgedAt === undefined
                ? say.holds.open
                : say.holds.acknowledged(tellInstant(acknowledgedAt))}
            </span>
            {acknowledgedAt === undefined && account && id === me?.accountId && (
              <Button onPress={() => acknowledge({})}>{say.holds.acknowledge}</Button>
            )}
            {acknowledgedAt === undefined && !account && mayName && (
              <Button onPress={() => acknowledge({ custodian: id })}>{say.holds.acknowledgeFor(name)}</Button>
            )}
          </li>
        ))}
      </ul>
      {telling.error !== null && <ErrorState error={telling.error} />}
    </>
  );
}

const pathOfHolds = (path: string): string => path.slice(0, path.lastIndexOf('/'));

type HoldFormProps = Pick<Parameters<typeof WordsForm>[0], 'fields' | 'button'> & {
  readonly title: string;
  readonly path: string;
};

function HoldForm({ title, path, fields, button }: HoldFormProps) {
  const telling = useTell();
  return (
    <Fold title={title}>
      {() => (
        <WordsForm
          fields={fields}
          button={button}
          send={(body) =>
            telling.does(path, { method: 'POST', body }, [path.slice(0, path.indexOf('/holds/'))])
          }
          pending={telling.pending}
          error={telling.error}
        />
      )}
    </Fold>
  );
}
