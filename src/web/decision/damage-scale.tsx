import { dollars } from '../../../shared/quantity/cents.js';
import type { DamageAgainst } from './damage-against.js';

const WIDTH = 320;
const HEIGHT = 46;
const BAR_TOP = 18;
const BAR_HEIGHT = 12;
/** Room behind the largest figure, so that an open end shows. */
const ROOM = 1.25;

/** The range as a bar and each amount as a mark. The words beside it say the same, so that it is hidden from a screen reader. */
export function DamageScale({ one: { low, high, amounts } }: { one: DamageAgainst }) {
  const figures = [low, ...amounts.map(({ cents }) => cents), ...(Number.isFinite(high) ? [high] : [])];
  const end = Math.max(...figures, 1) * ROOM;
  const at = (cents: number): number => Math.min(cents / end, 1) * WIDTH;
  const open = !Number.isFinite(high);
  const width = Math.max((open ? WIDTH - 8 : at(high)) - at(low), 3);
  return (
    <svg class="scale" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
      <path class="scale-line" d={`M0 ${BAR_TOP + BAR_HEIGHT}H${WIDTH}`} />
      <rect class="scale-range" x={at(low)} y={BAR_TOP} width={width} height={BAR_HEIGHT} />
      {open && (
        <path
          class="scale-end"
          d={`M${WIDTH - 8} ${BAR_TOP - 3}L${WIDTH} ${BAR_TOP + BAR_HEIGHT / 2}L${WIDTH - 8} ${BAR_TOP + BAR_HEIGHT + 3}z`}
        />
      )}
      {amounts.map(({ cents, source }) => (
        <g key={source}>
          <path class="scale-mark" d={`M${at(cents)} ${BAR_TOP - 6}V${BAR_TOP + BAR_HEIGHT + 5}`} />
          <text x={at(cents)} y={10} text-anchor="middle">
            {dollars(cents)}
          </text>
        </g>
      ))}
      <text x={0} y={HEIGHT - 2}>
        {dollars(0)}
      </text>
    </svg>
  );
}
