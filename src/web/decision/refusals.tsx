import type { AskError } from '../ask/ask-error.js';
import { ErrorState, Note } from '../look/notes.js';
import { decision as say } from '../words/decision.js';

/** Why it may not be done as the duty stands, each reason with what mends it; other failures as everywhere. */
export function Refusals({ error, title }: { error: AskError | null; title: string }) {
  if (error === null) return null;
  const reasons = error.errors.map(({ detail, ...rest }) => ({ detail, code: codeOf(rest) }));
  if (error.trouble !== 'refused' || reasons.some(({ code }) => code === null))
    return <ErrorState error={error} />;
  return (
    <Note kind="error">
      <p>
        <strong>{title}</strong>
      </p>
      <ul class="faults">
        {reasons.map(({ detail, code }) => (
          <li key={`${code} ${detail}`}>
            {detail} {fixOf(code)}
          </li>
        ))}
      </ul>
    </Note>
  );
}

function codeOf(error: object): string | null {
  return 'code' in error && typeof error.code === 'string' ? error.code : null;
}

function fixOf(code: string | null): string {
  return (say.sign.fixes as Readonly<Record<string, string>>)[code ?? ''] ?? '';
}
