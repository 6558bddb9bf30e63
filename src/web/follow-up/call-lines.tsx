import type { CallLine } from '../../../shared/follow-up/build-call-list.js';
import { followUp as say } from '../words/follow-up.js';

/** Numbers for a thumb, the most urgent first, each with what to say there. */
export function CallLines({ lines }: { lines: readonly CallLine[] }) {
  if (lines.length === 0) return null;
  return (
    <ul class="call-lines">
      {lines.map(({ name, tel, phone, channel, note, about }) => (
        <li key={`${name} ${phone ?? ''}`}>
          {tel === null ? (
            <strong>{name}</strong>
          ) : (
            <a href={tel}>
              <strong>{name}</strong> <span>{phone}</span>
            </a>
          )}
          {channel !== null && <span>{say.call.radio(channel)}</span>}
          {[...about, ...(note === null ? [] : [note])].map((words) => (
            <span class="quiet" lang="en" key={words}>
              {words}
            </span>
          ))}
        </li>
      ))}
    </ul>
  );
}
