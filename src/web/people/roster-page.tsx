import { useState } from 'preact/hooks';
import { useAsk } from '../ask/use-ask.js';
import { bodyOf } from '../lists/draft.js';
import '../lists/lists.css';
import { tellDay } from '../lists/tell-day.js';
import { ThingForm } from '../lists/thing-form.js';
import { useManages } from '../lists/use-manages.js';
import { useSend } from '../lists/use-send.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { Fold } from '../look/fold.js';
import { Empty, ErrorState, KeptNote, Loading, Note, UndoStrip } from '../look/notes.js';
import { Page } from '../look/page.js';
import { dayIn } from '../look/tell-instant.js';
import { people } from '../words/en/people.js';
import { type RosterLine, rosterSpecs } from './account.js';
import { PeopleLinks } from './people-links.js';
import { usePeople } from './use-people.js';

const { roster: say } = people;
const ROSTER = ['/api/roster', '/api/device/people'];
const WEEK_MS = 6 * 86_400_000;

/** Who is on, on the days that are looked at. */
export default function RosterPage() {
  const manages = useManages();
  const specs = rosterSpecs(usePeople(manages));
  const [from, setFrom] = useState(() => dayIn());
  const [to, setTo] = useState(() => dayIn(undefined, Date.now() + WEEK_MS));
  const { data, error, keptAt, again } = useAsk<{ items: readonly RosterLine[] }>(
    from === '' || to === '' ? null : `/api/roster?from=${from}&to=${to}`,
    { keep: true },
  );
  const sending = useSend();
  const taking = useSend();
  const [off, setOff] = useState<RosterLine | null>(null);
  const [on, setOn] = useState(false);
  const put = async ({ accountId, duty, from: first, to: last }: RosterLine): Promise<void> => {
    if (
      (await taking.create('/api/roster', { accountId, duty, from: first, to: last }, ROSTER)) !== undefined
    )
      setOff(null);
  };
  const takeOff = async (line: RosterLine): Promise<void> => {
    const asked = { method: 'DELETE', version: line.version } as const;
    if (await taking.does(`/api/roster/${line.id}`, asked, ROSTER)) setOff(line);
  };
  return (
    <Page title={say.title} lead={say.lead}>
      <PeopleLinks />
      <KeptNote keptAt={keptAt} />
      <div class="days">
        <Field label={say.from} type="date" value={from} onInput={setFrom} />
        <Field label={say.to} type="date" value={to} onInput={setTo} />
      </div>
      {off !== null && <UndoStrip undo={() => void put(off)}>{say.off(off.personName)}</UndoStrip>}
      {taking.error !== null && <ErrorState error={taking.error} />}
      {error !== null && <ErrorState error={error} again={again} />}
      {data === undefined && error === null && <Loading />}
      {data?.items.length === 0 && <Empty>{say.empty}</Empty>}
      <ul class="log">
        {data?.items.map((line) => (
          <li key={line.id}>
            <strong>
              {line.personName}, {say.duties[line.duty]}
            </strong>
            <span>{say.days(tellDay(line.from), tellDay(line.to))}</span>
            {line.outOfDate.map(({ title, expiresOn }) => (
              <strong key={title}>{say.outOfDate(title, tellDay(expiresOn))}</strong>
            ))}
            {manages && keptAt === null && (
              <Button look="plain" busy={taking.pending} onPress={() => void takeOff(line)}>
                {say.takeOff(line.personName, say.duties[line.duty])}
              </Button>
            )}
          </li>
        ))}
      </ul>
      {on && <Note kind="saved">{say.on}</Note>}
      {manages && (
        <Fold title={say.add}>
          {() => (
            <ThingForm
              specs={specs}
              first={{ from, to: from }}
              submit={say.add}
              pending={sending.pending}
              error={sending.error}
              send={async (draft) => {
                const made = await sending.create('/api/roster', bodyOf(specs, draft), ROSTER);
                setOn(made !== undefined);
                return made !== undefined;
              }}
            />
          )}
        </Fold>
      )}
    </Page>
  );
}
