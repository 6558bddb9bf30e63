import { lightAt } from '../../../shared/place/light-at.js';
import { zoneClock } from '../../../shared/time/zone-clock.js';
import type { Thing } from '../lists/field-spec.js';
import { DefinitionRows } from '../look/section.js';
import { tellClock } from '../look/tell-instant.js';
import { useNow } from '../look/use-now.js';
import { places as say } from '../words/en/places.js';

interface Lit {
  readonly latitude?: number;
  readonly longitude?: number;
  readonly timeZone: string;
}

/** Until when there is light at a station today: craft that are out then are looked for. */
export function LightToday({ of }: { of: Thing }) {
  const now = useNow();
  const { latitude, longitude, timeZone } = of as unknown as Lit;
  if (latitude === undefined || longitude === undefined) return null;
  const { sunset, civilDusk } = lightAt(latitude, longitude, now, offsetOf(timeZone, now));
  const tell = (at: number | null): string =>
    at === null ? say.light.none : tellClock(new Date(at).toISOString(), timeZone);
  return (
    <>
      <h3>{say.light.title}</h3>
      <DefinitionRows
        rows={[
          { term: say.light.sunset, value: tell(sunset) },
          { term: say.light.civilDusk, value: tell(civilDusk), about: say.light.about },
        ]}
      />
    </>
  );
}

/** By how many minutes the clock of a zone is ahead of UTC at an instant. */
function offsetOf(timeZone: string, instant: number): number {
  const wallClock = zoneClock(timeZone).format(instant).slice(0, 19);
  return Math.round((Date.parse(`${wallClock}Z`) - instant) / 60_000);
}
