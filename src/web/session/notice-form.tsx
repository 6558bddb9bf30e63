import { useState } from 'preact/hooks';
import { useAsk } from '../ask/use-ask.js';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState, Loading, Note } from '../look/notes.js';
import { Section } from '../look/section.js';
import { session as say } from '../words/session.js';

const PATH = '/api/notice-address';

interface NoticeAddress {
  readonly mail: string | null;
  readonly phone: string | null;
}

/** Where somebody is told of tasks and of packets that were collected; each says so for themselves. */
export function NoticeForm() {
  const { data, error, again } = useAsk<NoticeAddress>(PATH);
  const telling = useTell();
  const [draft, setDraft] = useState<{ mail?: string; phone?: string }>({});
  const [kept, setKept] = useState(false);
  const shown = { mail: draft.mail ?? data?.mail ?? '', phone: draft.phone ?? data?.phone ?? '' };
  const keep = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (telling.pending) return;
    const body = Object.fromEntries(Object.entries(shown).filter(([, text]) => text.trim() !== ''));
    setKept((await telling.tell(PATH, { method: 'PUT', body }, [PATH])) !== undefined);
  };
  if (data === undefined) return error === null ? <Loading /> : <ErrorState error={error} again={again} />;
  return (
    <Section title={say.notice.title}>
      <p class="quiet">{say.notice.lead}</p>
      <form class="form" onSubmit={(event) => void keep(event)} noValidate>
        <Field
          label={say.notice.mail}
          type="email"
          value={shown.mail}
          onInput={(mail) => setDraft({ ...draft, mail })}
          error={telling.error?.faultAt('/mail')}
        />
        <Field
          label={say.notice.phone}
          type="tel"
          value={shown.phone}
          onInput={(phone) => setDraft({ ...draft, phone })}
          error={telling.error?.faultAt('/phone')}
        />
        {telling.error !== null && <ErrorState error={telling.error} />}
        {kept && <Note kind="saved">{say.notice.kept}</Note>}
        <Button type="submit" busy={telling.pending}>
          {say.notice.button}
        </Button>
      </form>
    </Section>
  );
}
