/** Short, common, unlike each other when shouted over an engine, and no name of a craft, a place or a person. */
const FIRST =
  'amber bronze chalk cobalt copper coral cotton crystal denim ember fern garnet golden granite ivory jade lemon linen maple marble mint olive onyx pepper pewter quartz ruby rustic saffron silver sorrel velvet'.split(
    ' ',
  );
const SECOND =
  'anchor badger beetle bobcat candle cricket dragon falcon feather gopher hammer heron kettle lantern lizard magpie mitten otter paddle parrot pelican pickle pigeon rabbit ribbon robin saddle sparrow thimble turtle violin whistle'.split(
    ' ',
  );

/**
 * What a call is called until the service has given its reference: two words to say to each other. Two calls of one
 * day may by chance be called the same once in a thousand times, which is why it is no reference.
 * @param id a UUID
 * @example wordPair('00000000-0000-4000-8000-000000000000') // 'amber anchor'
 */
export function wordPair(id: string): string {
  const digits = id.replaceAll('-', '');
  const first = FIRST[parseInt(digits.slice(0, 4), 16) % FIRST.length] ?? '';
  const second = SECOND[parseInt(digits.slice(4, 8), 16) % SECOND.length] ?? '';
  return `${first} ${second}`;
}
