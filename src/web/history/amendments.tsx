import { useState } from 'preact/hooks';
import type { JsonObject } from '../../../shared/record/json-value.js';
import { useAsk } from '../ask/use-ask.js';
import { Button } from '../look/button.js';
import { Empty, ErrorState, Loading } from '../look/notes.js';
import { history as say } from '../words/history.js';
import { AmendmentItem } from './amendment-item.js';
import type { AmendmentsAnswer, RecordAnswer } from './history-answers.js';

interface AmendmentsProps {
  readonly record: RecordAnswer;
  /** What of the record, and how many at a time. */
  readonly query: string;
  readonly timeZone: string | undefined;
}

/** One page of changes, and behind it the next when it is asked for. */
export function Amendments({ record, query, timeZone }: AmendmentsProps) {
  const [more, setMore] = useState(false);
  const path = `/api/incidents/${record.id}/amendments?${query}`;
  const { data, error, again } = useAsk<AmendmentsAnswer>(path, { keep: true });
  if (data === undefined) {
    return <li>{error === null ? <Loading /> : <ErrorState error={error} again={again} />}</li>;
  }
  if (data.items.length === 0) {
    return (
      <li>
        <Empty>
          <p>{say.none}</p>
        </Empty>
      </li>
    );
  }
  return (
    <>
      {data.items.map((amendment) => (
        <AmendmentItem
          key={amendment.sequence}
          incident={record.id}
          amendment={amendment}
          sections={record.sections}
          timeZone={timeZone}
        />
      ))}
      {data.next !== null && more && (
        <Amendments record={record} query={behind(query, data.next)} timeZone={timeZone} />
      )}
      {data.next !== null && !more && (
        <li class="unprinted">
          <Button onPress={() => setMore(true)}>{say.earlier}</Button>
        </li>
      )}
    </>
  );
}

function behind(query: string, next: string): string {
  const search = new URLSearchParams(query);
  search.set('after', next);
  return search.toString();
}

export function documentIn({ sections }: RecordAnswer, section: string): JsonObject {
  return sections.find((one) => one.section === section)?.document ?? {};
}
