import { describe, expect, it } from 'vitest';
import { SHOTS, shotsOf, shotStates } from '../../shared/record/shots.js';

describe('the pictures to take', () => {
  it.each<[string | null, boolean, string[], string[]]>([
    ['personal-watercraft', true, ['lanyard', 'hour-meter', 'capacity-plate'], ['other-craft']],
    ['paddlecraft', true, ['hull-number', 'warning-labels'], ['lanyard', 'hour-meter', 'controls']],
    // A type that nobody knows is taken to have an engine: a picture too many does no harm.
    [null, true, ['lanyard'], []],
    ['personal-watercraft', false, ['registration-number', 'damage'], ['controls', 'hull-number']],
  ])('of %s, ours: %s', (type, isOurs, those, notThose) => {
    const shots = shotsOf(type, isOurs);
    expect(shots).toEqual(expect.arrayContaining(those));
    for (const shot of notThose) expect(shots).not.toContain(shot);
    expect(SHOTS).toEqual(expect.arrayContaining([...shots]));
  });

  it('are done where a file shows them, and a reason does not outlast the picture', () => {
    const states = shotStates(
      ['bow', 'lanyard', 'hour-meter'],
      [
        { id: 'f1', shot: 'lanyard' },
        { id: 'f2', shot: undefined },
        { id: 'f3', shot: 'lanyard' },
      ],
      [
        { id: 'm1', shot: 'hour-meter', reason: 'Too dark.' },
        { id: 'm2', shot: 'lanyard', reason: 'Not found.' },
        { id: 'm3', shot: 'hour-meter', reason: 'Under water.' },
      ],
    );
    expect(states).toEqual([
      { shot: 'bow', state: 'open', files: [], reason: null },
      { shot: 'lanyard', state: 'done', files: ['f1', 'f3'], reason: 'Not found.' },
      { shot: 'hour-meter', state: 'cannot', files: [], reason: 'Under water.' },
    ]);
  });
});
