import { formatPosition } from '../../../../shared/place/format-position.js';
import { isJsonObject, type JsonObject } from '../../../../shared/record/json-value.js';
import type { Position } from '../../../../shared/record/time-and-place.js';
import type { Block } from './blocks.js';

/** A small map of the position, with the same in words; nothing where no position leaves. */
export function composeMap(document: JsonObject, timeZone: string): Block[] {
  const fact = document['position'];
  const value = isJsonObject(fact) ? fact['value'] : undefined;
  if (value === undefined || !isPosition(value)) return [];
  const { latitude, longitude, accuracyM, asSaid } = value;
  return [
    {
      kind: 'map',
      position: value,
      lines: [
        formatPosition(latitude, longitude, 'degrees-minutes'),
        `${formatPosition(latitude, longitude, 'decimal-degrees')} (WGS 84)`,
        ...(accuracyM === undefined ? ['How exact it is was not said.'] : [`Within ${accuracyM} m.`]),
        ...(asSaid === undefined ? [] : [`As it was said or read: ${asSaid}`]),
        `Clock of the place: ${timeZone}.`,
        'State lines are generalised (Census Bureau, 1 : 10 million): they err by up to 300 m, and shores of lakes are not drawn. Not for navigation.',
      ],
    },
  ];
}

function isPosition(value: unknown): value is Position {
  return (
    typeof value === 'object' &&
    value !== null &&
    typeof (value as Position).latitude === 'number' &&
    typeof (value as Position).longitude === 'number'
  );
}
