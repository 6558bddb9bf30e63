import { useEffect, useRef } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { DefinitionRows } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { collect as say } from '../words/collect.js';

/** What waits for somebody, as the service tells it to whoever gave the passcode. */
export interface Collection {
  readonly reference: string;
  readonly sender: string;
  readonly to: string;
  readonly purpose: string;
  readonly madeAt: string;
  readonly until: string;
  readonly files: number;
  readonly head: { readonly size: number; readonly root: string };
}

/** Who sent what, why and until when, and the way to have it. */
export function Collected({ path, collection }: { path: string; collection: Collection }) {
  const { reference, sender, to, purpose, madeAt, until, files, head } = collection;
  const top = useRef<HTMLHeadingElement>(null);
  // What was pressed is gone; without this a keyboard and a screen reader would begin again at the top.
  useEffect(() => top.current?.focus(), []);
  return (
    <div class="form">
      <h2 ref={top} tabIndex={-1}>
        {say.from(sender)}
      </h2>
      <DefinitionRows
        rows={[
          { term: say.to, value: to },
          { term: say.about, value: say.incident(reference) },
          { term: say.why, value: purpose },
          { term: say.made, value: tellInstant(madeAt) },
          { term: say.until, value: tellInstant(until) },
          { term: say.files, value: files },
          { term: say.head, value: <code>{`${head.size}:${head.root}`}</code>, about: say.headAbout },
        ]}
      />
      <a class="button main" href={`${path}/archive`} download>
        {say.download}
      </a>
      <p class="hint">{say.downloadNote}</p>
      <p class="links-line">
        <Link href="/check">{say.check}</Link>
      </p>
    </div>
  );
}
