import type { RequestCaution } from '../../../shared/record/legal-request-advice.js';
import { requests as say } from '../words/requests.js';

/** What to mind about a paper, each with where it comes from. */
export function Cautions({ cautions }: { cautions: readonly RequestCaution[] }) {
  if (cautions.length === 0) return null;
  return (
    <section class="request-cautions" aria-label={say.mind}>
      <p>
        <strong>{say.mind}</strong>
      </p>
      <ul>
        {cautions.map(({ key, words, source }) => (
          <li key={key}>
            {words} <small class="quiet">{say.source(source)}</small>
          </li>
        ))}
      </ul>
    </section>
  );
}
