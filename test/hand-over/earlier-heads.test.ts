import { describe, expect, it } from 'vitest';
import { type EarlierPacket, earlierHeads } from '../../shared/hand-over/earlier-heads.js';
import type { Recipient } from '../../shared/hand-over/hand-over-profile.js';

const head = { size: 7, root: 'ab'.repeat(32) };
const packet = (recipient: Recipient, name: string, ...to: string[]): EarlierPacket => ({
  ...{ id: name, recipient, name, head },
  deliveries: to.map((one) => ({ to: one, at: '2026-06-14T09:00:00.000Z' })),
});
const PACKETS = [
  packet('counsel', 'Díaz and Vale', 'Rosa Díaz'),
  packet('insurer', 'Red River Marine', 'Kim Ortega'),
  packet('renter', 'Ann Lee', 'Ann Lee'),
  packet('insurer', 'Prairie Shore Mutual'),
];
const MAILINGS = [
  { packet: 'Prairie Shore Mutual', to: 'Lou Reyes', at: '2026-06-15T09:00:00.000Z' },
  // It arrived after all: the delivery says more.
  { packet: 'Red River Marine', to: 'Kim Ortega', at: '2026-06-13T09:00:00.000Z' },
];
const SOMEBODY = 'another recipient, whom the sender can name';

describe('the heads that left before', () => {
  it.each<[Recipient, string, string[]]>([
    ['counsel', 'Anybody', ['Rosa Díaz', 'Kim Ortega', 'Ann Lee', 'Lou Reyes']],
    ['in-house', 'Training', ['Rosa Díaz', 'Kim Ortega', 'Ann Lee', 'Lou Reyes']],
    ['insurer', 'Red River Marine', [SOMEBODY, 'Kim Ortega', SOMEBODY, SOMEBODY]],
    ['insurer', 'Prairie Shore Mutual', [SOMEBODY, SOMEBODY, SOMEBODY, 'Lou Reyes']],
    ['renter', 'Ann Lee', [SOMEBODY, SOMEBODY, 'Ann Lee', SOMEBODY]],
    ['renter', 'Red River Marine', [SOMEBODY, SOMEBODY, SOMEBODY, SOMEBODY]],
    ['agency', 'Parks and Wildlife', [SOMEBODY, SOMEBODY, SOMEBODY, SOMEBODY]],
    ['other-party', 'Díaz and Vale', [SOMEBODY, SOMEBODY, SOMEBODY, SOMEBODY]],
  ])('name for %s, %s, only whom they may know of', (recipient, name, named) => {
    const heads = earlierHeads(PACKETS, MAILINGS, { recipient, name });
    expect(heads.map(({ by }) => by)).toEqual(named);
    expect(heads.map(({ how }) => how)).toEqual(['received', 'received', 'received', 'mailed']);
  });
});
