import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { Button } from '../look/button.js';
import { MapOnDemand } from '../map/map-on-demand.js';
import { type MapPoint, placedOf } from '../map/map-types.js';
import { call as say } from '../words/call.js';
import type { Where } from './call-draft.js';
import { nearestOf, positionOfWhere } from './tell-where.js';
import type { Choices } from './use-choices.js';

interface WhereOnMapProps {
  readonly choices: Choices;
  readonly keep: (where: Where, words: string) => void;
}

/** A finger on the map says where; what was pressed is read back before it is kept. */
export function WhereOnMap({ choices: { places, stations }, keep }: WhereOnMapProps) {
  const [mark, setMark] = useState<MapPoint | null>(null);
  const named = useMemo(() => placedOf([...places, ...stations]), [places, stations]);
  const readBack = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (mark !== null) readBack.current?.scrollIntoView({ block: 'nearest' });
  }, [mark]);
  const where: Where | null = mark && { how: 'map', ...mark };
  const position = where && positionOfWhere(where);
  const near = where && nearestOf(where, [...places, ...stations])?.words;
  return (
    <>
      <MapOnDemand
        title={say.where.map}
        places={named}
        mark={mark}
        onTap={(point) => setMark(rounded(point))}
      />
      <div class="read-back" ref={readBack}>
        <p role="status">
          {position === null ? say.where.mapHint : [position, near].filter(Boolean).join(', ')}
        </p>
        {where !== null && position !== null && (
          <Button look="main" onPress={() => keep(where, `${position}, tapped on the map`)}>
            {say.where.keep}
          </Button>
        )}
      </div>
    </>
  );
}

/** To a metre: a finger is no surer. */
function rounded({ latitude, longitude }: MapPoint): MapPoint {
  const round = (degrees: number): number => Math.round(degrees * 1e5) / 1e5;
  return { latitude: round(latitude), longitude: round(longitude) };
}
