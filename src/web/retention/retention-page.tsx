import { useEffect, useRef, useState } from 'preact/hooks';
import { RETENTION_STATES, type RetentionLine } from '../../../shared/retention/retention-line.js';
import { useAsk } from '../ask/use-ask.js';
import '../lists/lists.css';
import { usePages } from '../lists/use-pages.js';
import { Button } from '../look/button.js';
import { Empty, ErrorState, KeptNote, Loading, Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintButton } from '../look/print-button.js';
import { PrintedBy } from '../look/printed-by.js';
import { Section } from '../look/section.js';
import { lists } from '../words/lists.js';
import { retention as say } from '../words/en/retention.js';
import { DecidedLog } from './decided-log.js';
import type { KindsAnswer } from './retention-answer.js';
import { RetentionItem } from './retention-item.js';
import { RetentionKinds } from './retention-kinds.js';

/** What has been kept long enough, what stops its deletion, and how long everything is kept and why. */
export default function RetentionPage() {
  const lines = usePages<RetentionLine>('/api/retention');
  const kinds = useAsk<KindsAnswer>('/api/retention/kinds');
  const [said, setSaid] = useState<string | null>(null);
  const note = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (said !== null) note.current?.focus();
  }, [said]);
  const error = lines.error ?? kinds.error;
  const again = (): void => {
    lines.again();
    kinds.again();
  };
  const isThere = lines.data !== undefined && kinds.data !== undefined;
  return (
    <Page title={say.title} lead={<p>{say.lead}</p>}>
      <PrintedBy />
      <KeptNote keptAt={lines.keptAt} />
      <p class="links-line unprinted">
        <PrintButton />
      </p>
      <div ref={note} tabIndex={-1}>
        {said !== null && <Note kind="saved">{said}</Note>}
      </div>
      {!isThere && (error === null ? <Loading /> : <ErrorState error={error} again={again} />)}
      {lines.data !== undefined && kinds.data !== undefined && (
        <>
          {lines.data.items.length === 0 && <Empty>{say.empty}</Empty>}
          {RETENTION_STATES.map((state) => (
            <Group
              key={state}
              state={state}
              lines={lines.data?.items.filter((line) => line.state === state) ?? []}
              kinds={kinds.data?.kinds ?? []}
              onDone={setSaid}
              again={again}
            />
          ))}
          {lines.more !== undefined && <Button onPress={lines.more}>{lists.more}</Button>}
          <DecidedLog kinds={kinds.data.kinds} />
          <RetentionKinds answer={kinds.data} />
        </>
      )}
    </Page>
  );
}

interface GroupProps {
  readonly state: RetentionLine['state'];
  readonly lines: readonly RetentionLine[];
  readonly kinds: KindsAnswer['kinds'];
  readonly onDone: (words: string) => void;
  readonly again: () => void;
}

function Group({ state, lines, ...rest }: GroupProps) {
  if (lines.length === 0) return null;
  const { title, lead } = say.groups[state];
  return (
    <Section title={title}>
      <p class="quiet">{lead}</p>
      <ul class="log">
        {lines.map((line) => (
          <li key={line.id}>
            <RetentionItem line={line} {...rest} />
          </li>
        ))}
      </ul>
    </Section>
  );
}
