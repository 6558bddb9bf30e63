import { useState } from 'preact/hooks';
import { MAIL_STATES, type MailState } from '../../../shared/kernel/mail-state.js';
import '../lists/lists.css';
import { usePages } from '../lists/use-pages.js';
import { Button } from '../look/button.js';
import { Empty, ErrorState, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { Select } from '../look/select.js';
import { lists } from '../words/lists.js';
import { mail as say } from '../words/en/mail.js';
import { type Mail, MailItem } from './mail-item.js';

/** Every mail with what became of it, the newest first; administrators decide about what did not go through. */
export default function MailPage() {
  const [state, setState] = useState<MailState | ''>('');
  const { data, error, again, more } = usePages<Mail>(
    state === '' ? '/api/mail' : `/api/mail?state=${state}`,
  );
  return (
    <Page title={say.title} lead={say.lead}>
      <Select
        label={say.which}
        value={state}
        onChoose={setState}
        groups={[{ options: MAIL_STATES.map((value) => ({ value, label: say.states[value] })) }]}
        none={say.all}
        optional
      />
      {error !== null && <ErrorState error={error} again={again} />}
      {data === undefined && error === null && <Loading />}
      {data?.items.length === 0 && <Empty>{state === '' ? say.empty : say.noneSo}</Empty>}
      <ul class="log">
        {data?.items.map((mail) => (
          <li key={mail.id}>
            <MailItem mail={mail} />
          </li>
        ))}
      </ul>
      {more !== undefined && <Button onPress={more}>{lists.more}</Button>}
    </Page>
  );
}
