import { check as say } from '../words/check.js';

/** How far a check is, as a bar and in words. */
export function Progress({ done, total }: { done: number; total: number }) {
  return (
    <div class="progress">
      <progress value={done} max={Math.max(total, 1)} aria-label={say.title} />
      <p>{say.working(tellSize(done), tellSize(total))}</p>
    </div>
  );
}

/** `tellSize(1_500_000)` is `'1.5 MB'`. */
export function tellSize(bytes: number): string {
  const step = bytes === 0 ? 0 : Math.min(Math.floor(Math.log10(bytes) / 3), say.sizes.length - 1);
  const figure = bytes / 1000 ** step;
  return `${step === 0 ? figure : figure.toFixed(1)} ${say.sizes[step] ?? ''}`;
}
