import { useEffect, useRef, useState } from 'preact/hooks';
import { useAsk } from '../ask/use-ask.js';
import { Note } from '../look/notes.js';
import { map as say } from '../words/map.js';
import { DrawnMap } from './draw-map.js';
import { loadStateLines } from './load-state-lines.js';
import './map.css';
import type { MapPin, MapPlace, MapPoint, MapTiles } from './map-types.js';

export interface MapSheetProps {
  /** What a screen reader calls it. */
  readonly title: string;
  readonly places: readonly MapPlace[];
  readonly pins?: readonly MapPin[];
  readonly picked?: string | null;
  readonly onPick?: (id: string) => void;
  /** A point that was chosen on it. */
  readonly mark?: MapPoint | null;
  readonly onTap?: (point: MapPoint) => void;
}

const NO_PINS: readonly MapPin[] = [];

/** The map itself. Import it when it is wanted: it brings the library that draws it. */
export default function MapSheet(props: MapSheetProps) {
  const { title, places, pins = NO_PINS, picked = null, mark = null, onTap } = props;
  const place = useRef<HTMLDivElement>(null);
  const drawn = useRef<DrawnMap | null>(null);
  const hands = useRef(props);
  hands.current = props;
  const [withoutLines, setWithoutLines] = useState(false);
  const tiles = useAsk<{ tiles: MapTiles | null }>('/api/map', { keep: true }).data?.tiles ?? null;

  useEffect(() => {
    if (place.current === null) return;
    const map = new DrawnMap(place.current, {
      zoomIn: say.zoomIn,
      zoomOut: say.zoomOut,
      pick: (id) => hands.current.onPick?.(id),
      tap: (point) => hands.current.onTap?.(point),
    });
    drawn.current = map;
    let left = false;
    loadStateLines().then(
      (lines) => left || map.showLines(lines),
      () => left || setWithoutLines(true),
    );
    return () => {
      left = true;
      drawn.current = null;
      map.remove();
    };
  }, []);
  useEffect(() => drawn.current?.showPlaces(places), [places]);
  useEffect(() => drawn.current?.showPins(pins, picked), [pins, picked]);
  // What is looked at changes with what there is to see, and not when one of it is picked.
  useEffect(() => drawn.current?.lookAtAll(pins.length > 0 ? pins : places), [pins, places]);
  useEffect(() => {
    const pin = pins.find(({ id }) => id === picked);
    if (pin !== undefined) drawn.current?.lookAt(pin);
  }, [picked]);
  useEffect(() => drawn.current?.showMark(mark), [mark?.latitude, mark?.longitude]);
  useEffect(() => {
    if (tiles !== null) drawn.current?.showTiles(tiles);
  }, [tiles?.url]);

  return (
    <div class="map-sheet">
      <div class={onTap === undefined ? 'map' : 'map to-tap'} ref={place} role="region" aria-label={title} />
      {onTap !== undefined && (
        <button
          type="button"
          class="button"
          onClick={() => drawn.current !== null && onTap(drawn.current.middle)}
        >
          {say.markMiddle}
        </button>
      )}
      {withoutLines && <Note kind="offline">{say.withoutLines}</Note>}
      <p class="quiet">{tiles === null ? say.limits : say.withTiles}</p>
    </div>
  );
}
