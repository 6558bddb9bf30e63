import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { REQUEST_KINDS, type RequestKind } from '../../../shared/record/legal-request.js';
import '../lists/lists.css';
import { usePages } from '../lists/use-pages.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { ErrorState, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintedBy } from '../look/printed-by.js';
import { Select } from '../look/select.js';
import { useSession } from '../session/session.js';
import { lists } from '../words/lists.js';
import { requests as say } from '../words/requests.js';
import { titles } from '../words/titles.js';
import type { RequestLine } from './request-answers.js';
import { RequestList } from './request-list.js';
import './requests.css';

/** Papers that ask for records: the open ones by when they are due, or those that were closed. */
export default function RequestsPage() {
  const [state, setState] = useState<'open' | 'closed'>('open');
  const [kind, setKind] = useState<RequestKind | ''>('');
  const logs = useSession().me?.role !== 'counsel';
  const { data, error, again, more } = usePages<RequestLine>(
    `/api/requests?state=${state}${kind === '' ? '' : `&kind=${kind}`}`,
  );
  return (
    <Page
      title={say.title}
      lead={say.lead}
      {...(logs && {
        actions: (
          <Link href="/requests/new" class="button main">
            {say.new}
          </Link>
        ),
      })}
    >
      <PrintedBy />
      {logs && (
        <p class="links-line unprinted">
          <Link href="/served-paper">{titles.servedPaper}</Link>
        </p>
      )}
      <div class="request-filters unprinted">
        <Choice
          legend={say.state}
          options={(['open', 'closed'] as const).map((value) => ({ value, label: say.states[value] }))}
          value={state}
          onChoose={setState}
        />
        <Select
          label={say.kindFilter}
          value={kind}
          onChoose={setKind}
          groups={[{ options: REQUEST_KINDS.map((value) => ({ value, label: say.kinds[value] })) }]}
          none={say.allKinds}
          optional
        />
      </div>
      {error !== null && <ErrorState error={error} again={again} />}
      {data === undefined && error === null && <Loading />}
      {data !== undefined && <RequestList items={data.items} none={say.none[state]} />}
      {more !== undefined && <Button onPress={more}>{lists.more}</Button>}
    </Page>
  );
}
