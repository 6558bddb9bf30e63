import { Choice } from '../look/choice.js';
import { followUp as say } from '../words/follow-up.js';
import { type Reading, SHOWS, WAYS } from './use-reading.js';

/** In which order, and which of them. */
export function ReadingChoice({ way, shown, read }: Reading) {
  return (
    <div class="reading unprinted">
      <Choice
        legend={say.by.legend}
        options={WAYS.map((value) => ({ value, label: say.by[value] }))}
        value={way}
        onChoose={(by) => read({ by })}
      />
      <Choice
        legend={say.show.legend}
        options={SHOWS.map((value) => ({ value, label: say.show[value] }))}
        value={shown}
        onChoose={(show) => read({ show })}
      />
    </div>
  );
}
