import type { ComponentChildren } from 'preact';
import { sheetTerm } from '../words/officer.js';

type Term = Parameters<typeof sheetTerm>[0];
export type SheetLine = readonly [term: Term, ...values: (string | null)[]];

/** Lines of a sheet, large enough to be read by somebody who stands beside the phone. What is not known is said. */
export function SheetLines({ lines }: { lines: readonly SheetLine[] }) {
  return (
    <dl class="given-sheet">
      {lines.map(([term, ...values]) => (
        <div key={term}>
          <dt>{sheetTerm(term)}</dt>
          {told(values).map((value) => (
            <dd key={value}>{value}</dd>
          ))}
        </div>
      ))}
    </dl>
  );
}

function told(values: readonly (string | null)[]): string[] {
  const known = values.filter((value) => value !== null).map((value) => value || sheetTerm('noName'));
  return known.length > 0 ? known : [sheetTerm('unknown')];
}

/** A part of a sheet, in English for whoever is given it. */
export function SheetPart({ title, children }: { title: string; children: ComponentChildren }) {
  return (
    <section class="given-part" aria-label={title}>
      <h2>{title}</h2>
      {children}
    </section>
  );
}
