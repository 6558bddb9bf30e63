import { markWording } from '../../../shared/record/wording/mark-wording.js';
import { record as say } from '../words/record.js';
import { language } from '../words/speak.js';

/** What of somebody's own words blames, guesses or judges, before it is saved. It stops nothing and keeps nothing. */
export function WordingAid({ text }: { text: string }) {
  const marks = markWording(text, language());
  if (marks.length === 0) return null;
  return (
    <div class="wording" role="note">
      <p>
        <strong>{say.wording.title}</strong> {say.wording.lead}
      </p>
      <ul>
        {marks.map(({ start, said, kind, ask }) => (
          <li key={start}>
            <mark>{said}</mark> <span class="quiet">({say.wording.kinds[kind]})</span>
            <br />
            {ask}
          </li>
        ))}
      </ul>
    </div>
  );
}
