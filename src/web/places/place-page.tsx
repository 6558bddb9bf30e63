import type { PageProps } from '../app/page-route.js';
import { KeptPage } from '../lists/kept-page.js';
import type { Thing } from '../lists/field-spec.js';
import { useStations } from '../lists/use-stations.js';
import { places as say } from '../words/en/places.js';
import { LightToday } from './light-today.js';
import { spotSpecs, stationSpecs } from './place-specs.js';
import { PositionRead } from './position-read.js';
import { StationNumbers } from './station-numbers.js';

const TOUCHES = ['/api/stations', '/api/places', '/api/device/fleet'];
const BACK = { href: '/places', words: say.title };
const nameOf = (thing: Thing): string => thing['name'] as string;

/** A station or a named place, or the form that adds one. */
export default function PlacePage({ params: { kind = '', id = '' } }: PageProps) {
  const stations = useStations();
  const shared = { id, nameOf, back: BACK, touches: TOUCHES, own: `/places/${kind}` };
  if (kind === 'stations') {
    return (
      <KeptPage
        {...shared}
        key={id}
        list="/api/stations"
        specs={stationSpecs}
        adding={say.stations.adding}
        apart={['numbers']}
        beside={(station) => (
          <>
            <PositionRead of={station} />
            <StationNumbers of={station} />
            <LightToday of={station} />
          </>
        )}
      />
    );
  }
  return (
    <KeptPage
      {...shared}
      key={id}
      list="/api/places"
      specs={spotSpecs(stations)}
      adding={say.spots.adding}
      beside={(spot) => <PositionRead of={spot} />}
    />
  );
}
