import argon2 from 'argon2';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { noteUse } from '../../src/server/accounts/note-use.js';
import { Passwords } from '../../src/server/accounts/passwords.js';
import { databaseError } from '../../src/server/platform/database/database-errors.js';
import { describeHouse, PASSWORD } from './house.js';

describe('a password', () => {
  const passwords = new Passwords();

  it('fits the hash of itself and no other', async () => {
    const hash = await passwords.hash('low tide, red buoy');
    expect(await passwords.fits('low tide, red buoy', hash)).toBe(true);
    expect(await passwords.fits('low tide, red buoy ', hash)).toBe(false);
    expect(await passwords.hash('low tide, red buoy')).not.toBe(hash);
  });

  // Unicode Standard Annex 15: é as one character or as e with a combining accent.
  it('is the same from every keyboard', async () => {
    const hash = await passwords.hash('caf\u00e9 at low tide');
    expect(await passwords.fits('cafe\u0301 at low tide', hash)).toBe(true);
  });

  it.each([null, undefined])('fits nothing where there is none (%s)', async (none) => {
    expect(await passwords.fits('', none)).toBe(false);
  });

  it('is looked at two at a time, so that threads are left for everything else', async () => {
    const hash = await passwords.hash('x');
    let [now, most] = [0, 0];
    const verify = vi.spyOn(argon2, 'verify').mockImplementation(async () => {
      now += 1;
      most = Math.max(most, now);
      await Promise.resolve();
      now -= 1;
      return true;
    });
    await Promise.all(Array.from({ length: 20 }, () => passwords.fits('x', hash)));
    verify.mockRestore();
    expect(most).toBe(2);
  });
});

describeHouse('a stranger at the sign-in', (house) => {
  const watch = () => vi.spyOn(argon2, 'verify');
  let verify: ReturnType<typeof watch>;
  beforeEach(() => {
    verify = watch();
  });
  afterEach(() => verify.mockRestore());

  it('cannot tell a name that is there by the work that is done', async () => {
    const ana = await house().person('staff');
    const costOf = async (signInName: string): Promise<unknown[]> => {
      verify.mockClear();
      await house()
        .browser()
        .post('/api/session')
        .send({ signInName, password: `${PASSWORD}!` })
        .expect(401);
      return verify.mock.calls.map(([hash]) => hash.split('$').slice(0, 4));
    };
    const cost = await costOf(ana.signInName);
    expect(cost).toEqual([['', 'argon2id', 'v=19', 'm=19456,t=2,p=1']]);
    expect(await costOf('nobody of that name')).toEqual(cost);
  });
});

describe('that something is in use', () => {
  const [at, later] = ['2026-06-13T16:20:00.000Z', '2026-06-13T16:25:00.000Z'];

  it.each([
    [null, at, 1],
    [at, '2026-06-13T16:24:59.999Z', 0],
    [at, later, 1],
  ])('after %s is written down at %s: %d', async (last, now, times) => {
    const write = vi.fn(() => Promise.resolve());
    await noteUse(last, now, write);
    expect(write).toHaveBeenCalledTimes(times);
  });

  it('keeps nobody waiting when others are writing, and hides no fault of ours', async () => {
    const silent = vi.spyOn(process.stdout, 'write').mockReturnValue(true);
    await expect(
      noteUse(null, at, () => Promise.reject(databaseError('DATABASE.BUSY'))),
    ).resolves.toBeUndefined();
    silent.mockRestore();
    await expect(noteUse(null, at, () => Promise.reject(new TypeError('ours')))).rejects.toThrow('ours');
  });
});
