import { useEffect, useRef } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { DefinitionRows } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { collect as say } from '../words/collect.js';
import type { Collection } from './collection.js';

interface CollectedProps {
  /** Address of the archive. */
  readonly archive: string;
  readonly note: string;
  readonly collection: Collection;
  /** Told when a download is asked for: the link may have been closed meanwhile. */
  readonly onDownload: () => void;
}

/** Who sent what, why and until when, and the way to have it. */
export function Collected({ archive, note, collection, onDownload }: CollectedProps) {
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
      <a class="button main" href={archive} download onClick={onDownload}>
        {say.download}
      </a>
      <p class="hint">{note}</p>
      <p class="links-line">
        <Link href="/check">{say.check}</Link>
      </p>
    </div>
  );
}
