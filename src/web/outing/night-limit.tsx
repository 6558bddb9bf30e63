import { Section } from '../look/section.js';
import { tellClock } from '../look/tell-instant.js';
import { notBack as say } from '../words/not-back.js';
import type { NotBackHere } from './use-not-back.js';

/** Until when our own boat may search: two times, large. */
export function NightLimitSection({ here: { limit, zone } }: { here: NotBackHere }) {
  const { sunset, civilDusk, lightNow } = limit;
  const times = [
    { at: sunset, words: say.light.sunset },
    { at: civilDusk, words: say.light.dusk },
  ];
  const isDark = lightNow !== 'day' && lightNow !== 'unknown';
  return (
    <Section title={say.light.title}>
      {isDark && (
        <p>
          <strong>{say.light.dark}</strong>
        </p>
      )}
      {sunset === null && civilDusk === null && !isDark && <p>{say.light.unknown}</p>}
      <div class="night-limit">
        {times.map(
          ({ at, words }) =>
            at !== null && (
              <p class="deadline" key={words}>
                <strong>{tellClock(at, zone)}</strong>
                <span>{words}</span>
              </p>
            ),
        )}
      </div>
    </Section>
  );
}
