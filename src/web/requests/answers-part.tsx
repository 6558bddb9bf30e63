import type { Objection, Production } from '../../../shared/record/legal-request.js';
import { standing } from '../../../shared/record/legal-request.js';
import { Fold } from '../look/fold.js';
import { Empty } from '../look/notes.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { requests as say } from '../words/requests.js';
import { AnswerForm } from './answer-form.js';
import type { RequestView } from './request-answers.js';

interface AnswersPartProps {
  readonly request: RequestView;
  readonly what: 'productions' | 'objections';
  readonly writes: boolean;
}

/** What was produced, or objected: to whom, when and how; what was recorded wrongly stays and says so. */
export function AnswersPart({ request, what, writes }: AnswersPartProps) {
  const { page } = say;
  const words = {
    productions: { title: page.produced, none: page.noneProduced, add: page.produce },
    objections: { title: page.objected, none: page.noneObjected, add: page.object },
  }[what];
  const entries: readonly (Production | Objection)[] = request[what];
  const counting = new Set(standing(entries).map(({ id }) => id));
  return (
    <Section title={words.title}>
      {entries.length === 0 && (
        <Empty>
          <p>{words.none}</p>
        </Empty>
      )}
      <ul class="request-entries">
        {entries.map((entry) => (
          <li class="request-entry" key={entry.id}>
            <Entry request={request} entry={entry} counts={counting.has(entry.id)} />
          </li>
        ))}
      </ul>
      {writes && <Fold title={words.add}>{() => <AnswerForm request={request} what={what} />}</Fold>}
    </Section>
  );
}

interface EntryProps {
  readonly request: RequestView;
  readonly entry: Production | Objection;
  readonly counts: boolean;
}

function Entry({ request, entry, counts }: EntryProps) {
  const { page } = say;
  const { at, to, way, what, by, recordedAt } = entry;
  const { incident, head } = entry as Production;
  const reference = request.incidents.find((one) => one.incident === incident)?.reference;
  const line = [tellInstant(at), to, way, ...(reference === undefined ? [] : [page.of(reference)])].join(
    ' · ',
  );
  return (
    <>
      <p>
        <strong>{line}</strong>
      </p>
      {!counts && <p>{page.replaced}</p>}
      <p class="request-words">{what}</p>
      {head !== undefined && (
        <p>
          {page.head} <code>{`${head.size}:${head.root}`}</code>
        </p>
      )}
      <p class="quiet">{page.by(by.person, tellInstant(recordedAt))}</p>
    </>
  );
}
