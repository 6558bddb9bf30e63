import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { useAskAll } from '../ask/use-ask-all.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { Empty, ErrorState, KeptNote, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { useManages } from '../lists/use-manages.js';
import '../lists/lists.css';
import { fleet as say } from '../words/fleet.js';
import type { Craft } from './craft-answers.js';
import { CraftLine } from './craft-line.js';
import { typeLabel } from './craft-specs.js';
import { ReleaseAmount } from './release-amount.js';

type Which = 'all' | 'in' | 'out';

/** Every craft, and whether it may go out; found as it is typed. */
export default function FleetPage() {
  const manages = useManages();
  const [retired, setRetired] = useState(false);
  const [words, setWords] = useState('');
  const [which, setWhich] = useState<Which>('all');
  const path = retired ? '/api/craft?retired=yes' : '/api/craft';
  const { data, error, keptAt, again } = useAskAll<Craft>(path, { keep: true });
  const out = data?.filter(({ inService }) => inService === false).length ?? 0;
  const shown = data?.filter((craft) => isOf(craft, which) && says(craft, words)) ?? [];
  return (
    <Page
      title={say.title}
      {...(data !== undefined && data.length > 0 && { lead: say.lead(data.length, out) })}
      {...(manages && {
        actions: (
          <Link class="button main" href="/fleet/add">
            {say.add}
          </Link>
        ),
      })}
    >
      <KeptNote keptAt={keptAt} />
      {error !== null && <ErrorState error={error} again={again} />}
      {data === undefined && error === null && <Loading />}
      {data?.length === 0 && <Empty>{say.empty}</Empty>}
      {data !== undefined && (data.length > 0 || retired) && (
        <div class="form">
          <Field label={say.search} hint={say.searchHint} type="search" value={words} onInput={setWords} />
          <Choice
            legend={say.which}
            options={[
              { value: 'all', label: say.all },
              { value: 'in', label: say.inService },
              { value: 'out', label: say.out },
            ]}
            value={which}
            onChoose={setWhich}
          />
        </div>
      )}
      {shown.length > 0 && (
        <ul class="thing-list">
          {shown.map((craft) => (
            <li key={craft.id}>
              <CraftLine craft={craft} />
            </li>
          ))}
        </ul>
      )}
      {data !== undefined && data.length > 0 && shown.length === 0 && <Empty>{say.noneFound}</Empty>}
      <label class="tick">
        <input type="checkbox" checked={retired} onChange={() => setRetired(!retired)} />
        <span>{say.retired}</span>
      </label>
      <ReleaseAmount />
    </Page>
  );
}

const isOf = ({ inService }: Craft, which: Which): boolean =>
  which === 'all' || (which === 'in') === (inService !== false);

/** Whether a craft says every word, in its name, type, colours or numbers. */
function says(craft: Craft, words: string): boolean {
  const { unitName, type, colours = [], registrationNumber = '', hullNumber = '' } = craft;
  const all = [unitName, typeLabel(type), ...colours, registrationNumber, hullNumber].join(' ').toLowerCase();
  return words
    .toLowerCase()
    .split(/\s+/)
    .every((word) => all.includes(word));
}
