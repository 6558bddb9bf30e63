import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Region } from '../../../shared/hand-over/sender-choices.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { handOver as say } from '../words/hand-over.js';

interface StrangersFormProps {
  readonly source: string;
  readonly name: string;
  readonly isPicture: boolean;
  /** Undefined while nobody has looked. */
  readonly regions: readonly Region[] | undefined;
  readonly onLook: (regions: readonly Region[]) => void;
}

const EDGES = ['left', 'top', 'width', 'height'] as const;

/** The picture, upright and whole, on which parts are marked by two presses or by figures; both do the same. */
export function StrangersForm({ source, name, isPicture, regions = [], onLook }: StrangersFormProps) {
  const [size, setSize] = useState<{ width: number; height: number } | null>(null);
  const [failed, setFailed] = useState(false);
  const [corner, setCorner] = useState<{ x: number; y: number } | null>(null);
  const press = (event: JSX.TargetedMouseEvent<SVGSVGElement>): void => {
    if (size === null) return;
    const box = event.currentTarget.getBoundingClientRect();
    const x = Math.round(((event.clientX - box.left) / box.width) * size.width);
    const y = Math.round(((event.clientY - box.top) / box.height) * size.height);
    if (corner === null) return setCorner({ x, y });
    setCorner(null);
    onLook([...regions, between(corner, { x, y })]);
  };
  const setEdge = (place: number, edge: (typeof EDGES)[number], text: string): void => {
    const figure = Number(text);
    if (!Number.isInteger(figure) || figure < 0) return;
    onLook(regions.map((region, at) => (at === place ? { ...region, [edge]: figure } : region)));
  };
  return (
    <div class="strangers">
      <p>{say.strangersLead}</p>
      {isPicture && !failed && (
        <div class="picture">
          <img
            src={source}
            alt={say.picture(name)}
            onError={() => setFailed(true)}
            onLoad={({ currentTarget }) =>
              setSize({ width: currentTarget.naturalWidth, height: currentTarget.naturalHeight })
            }
          />
          {size !== null && (
            <svg viewBox={`0 0 ${size.width} ${size.height}`} aria-hidden="true" onClick={press}>
              {regions.map(({ left, top, width, height }) => (
                <rect
                  key={`${left} ${top} ${width} ${height}`}
                  x={left}
                  y={top}
                  width={width}
                  height={height}
                />
              ))}
              {corner !== null && <circle cx={corner.x} cy={corner.y} r={size.width / 80} />}
            </svg>
          )}
        </div>
      )}
      {isPicture && !failed && <p class="quiet">{say.coverHint}</p>}
      {failed && <p class="fault">{say.notShown}</p>}
      {regions.map((region, place) => (
        <fieldset class="part" key={place}>
          <legend>{say.part(place + 1)}</legend>
          {EDGES.map((edge) => (
            <Field
              key={edge}
              label={say.edges[edge]}
              unit={say.pixels}
              inputMode="numeric"
              value={String(region[edge])}
              onInput={(text) => setEdge(place, edge, text)}
            />
          ))}
          <Button look="plain" onPress={() => onLook(regions.filter((_, at) => at !== place))}>
            {say.removePart(place + 1)}
          </Button>
        </fieldset>
      ))}
      <p class="links-line">
        <Button onPress={() => onLook([])}>{say.noStrangers}</Button>
        {size !== null && <Button onPress={() => onLook([...regions, middleOf(size)])}>{say.cover}</Button>}
      </p>
    </div>
  );
}

interface Point {
  readonly x: number;
  readonly y: number;
}

function between(one: Point, other: Point): Region {
  const [left, top] = [Math.min(one.x, other.x), Math.min(one.y, other.y)];
  return {
    left,
    top,
    width: Math.max(1, Math.abs(one.x - other.x)),
    height: Math.max(1, Math.abs(one.y - other.y)),
  };
}

/** A part to begin from, for whoever writes figures. */
function middleOf({ width, height }: { width: number; height: number }): Region {
  const [wide, high] = [Math.max(1, Math.round(width / 4)), Math.max(1, Math.round(height / 4))];
  return {
    left: Math.round((width - wide) / 2),
    top: Math.round((height - high) / 2),
    width: wide,
    height: high,
  };
}
