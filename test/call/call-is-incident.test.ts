import { describe, expect, it } from 'vitest';
import type { Call } from '../../shared/call/call.js';
import { callIsIncident } from '../../shared/call/call-is-incident.js';
import { stampInstant } from '../../shared/call/stamp.js';

describe('a call', () => {
  it.each<[Call, boolean]>([
    [{ said: 'help, PWC 7' }, true],
    [{ craftNamed: ['PWC 7'] }, true],
    [{ peopleInWater: { value: 0, known: 'told' } }, true],
    [{}, false],
    [{ said: '  ' }, false],
    [{ caller: {}, craftNamed: [] }, false],
  ])('%j holds something: %s', (call, expected) => {
    expect(callIsIncident(call)).toBe(expected);
  });
});

describe('a stamp', () => {
  it.each([
    [{ at: '2026-06-13T16:20:30Z', how: 'pressed', phoneOffsetS: 30 }, '2026-06-13T16:20:00.000Z'],
    [{ at: '2026-06-13T16:20:30Z', how: 'pressed', phoneOffsetS: -30 }, '2026-06-13T16:21:00.000Z'],
    [{ at: '2026-06-13T16:20:30Z', how: 'pressed' }, '2026-06-13T16:20:30.000Z'],
    [{ at: '2026-06-13T11:20:30-05:00', how: 'entered', phoneOffsetS: 30 }, '2026-06-13T16:20:30.000Z'],
  ] as const)('%j was at %s by our clock', (stamp, expected) => {
    expect(new Date(stampInstant(stamp)).toISOString()).toBe(expected);
  });
});
