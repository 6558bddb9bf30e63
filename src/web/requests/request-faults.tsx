import type { AskError } from '../ask/ask-error.js';
import { ErrorState, Note } from '../look/notes.js';
import { lists } from '../words/lists.js';
import { requests as say } from '../words/requests.js';
import { ALL_SPECS } from './request-specs.js';

/** What was refused, each fault by the name of its field. */
export function RequestFaults({ error }: { error: AskError }) {
  if (error.trouble !== 'refused' || error.errors.length === 0) return <ErrorState error={error} />;
  return (
    <Note kind="error">
      <p>
        <strong>{lists.look}</strong>
      </p>
      <ul class="faults">
        {error.errors.map(({ pointer, detail }) => (
          <li key={pointer}>
            {labelOf(pointer)}: {tellFault(detail)}
          </li>
        ))}
      </ul>
    </Note>
  );
}

/** `labelOf('/dueDay')` is `'Due on'`. */
function labelOf(pointer: string): string {
  const [, name = '', , member] = pointer.split('/');
  if (name === 'incidents') return member === 'reason' ? say.form.notHeld : say.form.concerns;
  const words = say.form as unknown as Record<string, unknown>;
  const label = ALL_SPECS.find((spec) => spec.name === name)?.label ?? words[name];
  return typeof label === 'string' ? label : name;
}

/** What a member must be is for whoever writes a program; that it is missing is said in the words of the page. */
export function tellFault<Fault extends string | null>(fault: Fault): string | Fault {
  return fault?.startsWith('Missing:') === true ? say.form.missing : fault;
}
