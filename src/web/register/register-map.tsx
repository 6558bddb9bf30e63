import { Link } from 'wouter-preact';
import { useAskAll } from '../ask/use-ask-all.js';
import { useMemo } from 'preact/hooks';
import { MapOnDemand } from '../map/map-on-demand.js';
import { type MapPin, placedOf } from '../map/map-types.js';
import { useSession } from '../session/session.js';
import { register as say } from '../words/register.js';
import type { RegisterLine } from './register-answers.js';
import { whatOf } from './tell-line.js';

type Named = Parameters<typeof placedOf>[0];

interface RegisterMapProps {
  readonly lines: readonly RegisterLine[];
  readonly picked: string | null;
  readonly pick: (id: string) => void;
}

/** The incidents of this page where they happened, under the numbers of the list. */
export function RegisterMap({ lines, picked, pick }: RegisterMapProps) {
  const { me } = useSession();
  const isCounsel = me?.role === 'counsel';
  const places = useAskAll<Named[number]>(isCounsel ? null : '/api/places', { keep: true }).data;
  const stations = useAskAll<Named[number]>(isCounsel ? null : '/api/stations', { keep: true }).data;
  const named = useMemo(() => placedOf([...(places ?? []), ...(stations ?? [])]), [places, stations]);
  const pins = useMemo(() => pinsOf(lines), [lines]);
  const chosen = lines.find(({ id }) => id === picked);
  const without = lines.length - pins.length;
  return (
    <div class="register-map unprinted">
      <MapOnDemand title={say.map.title} places={named} pins={pins} picked={picked} onPick={pick} />
      <p class="picked-line" role="status">
        {chosen !== undefined && (
          <>
            {say.map.picked}:{' '}
            <Link class="register-link" href={`/incidents/${chosen.id}`}>
              <span class="reference">{chosen.reference}</span> <strong>{whatOf(chosen)}</strong>
            </Link>
          </>
        )}
      </p>
      {without > 0 && <p>{pins.length === 0 ? say.map.nowhere : say.map.without(without)}</p>}
    </div>
  );
}

/** A pin for each incident whose position is known, numbered as the list is. */
export function pinsOf(lines: readonly RegisterLine[]): MapPin[] {
  return lines
    .flatMap(({ id, reference, summary: { position } }) =>
      position === undefined ? [] : [{ id, reference, ...position }],
    )
    .map(({ reference, ...pin }, at) => ({ ...pin, number: at + 1, name: say.map.pin(at + 1, reference) }));
}
