import { findRefusedNumber } from '../../../shared/record/find-refused-number.js';
import { isObject } from '../../../shared/wire/is-object.js';

/** Stands where a file was called by a number that the record does not keep. */
export const NAME_WITHHELD = 'name withheld: it looked like the number of a card or of a person';

/**
 * The announcement of a file with a name that may be kept. Cameras and banks name files by long numbers, and no
 * photograph is refused for its name.
 */
export function nameToKeep(announcement: unknown): unknown {
  if (!isObject(announcement) || typeof announcement['name'] !== 'string') return announcement;
  const isKept = findRefusedNumber(announcement['name']) === null;
  return isKept ? announcement : { ...announcement, name: NAME_WITHHELD };
}
