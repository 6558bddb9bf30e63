import type { WordsOfChange } from './compare-determinations.js';

/** What is not as it was, a report each. */
export function ChangeList({ changed }: { changed: readonly WordsOfChange[] }) {
  return (
    <ul class="changes">
      {changed.map(({ title, changes }) => (
        <li key={title}>
          <strong>{title}.</strong> {changes.join(' ')}
        </li>
      ))}
    </ul>
  );
}
