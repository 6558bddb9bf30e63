import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

/** A part of a page under a thick rule, with its heading. */
export function Section({
  title,
  children,
  aside,
}: {
  title: string;
  children: ComponentChildren;
  aside?: ComponentChildren;
}) {
  const id = useId();
  return (
    <section class="section" aria-labelledby={id}>
      <div class="section-head">
        <h2 id={id}>{title}</h2>
        {aside}
      </div>
      {children}
    </section>
  );
}

export interface Row {
  readonly term: string;
  readonly value: ComponentChildren;
  /** Smaller, below the value: where it comes from, what is odd about it. */
  readonly about?: ComponentChildren;
  /** At the end of the row, such as Change. */
  readonly action?: ComponentChildren;
}

/** What is known, a line each: the term, the value, what can be done about it. */
export function DefinitionRows({ rows }: { rows: readonly Row[] }) {
  return (
    <dl class="rows">
      {rows.map(({ term, value, about, action }) => (
        <div class="row" key={term}>
          <dt>{term}</dt>
          <dd>
            <span class="row-value">{value}</span>
            {about !== undefined && <span class="row-about">{about}</span>}
          </dd>
          {action !== undefined && <dd class="row-action">{action}</dd>}
        </div>
      ))}
    </dl>
  );
}
