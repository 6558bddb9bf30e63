import { spawnSync } from 'node:child_process';
import { beforeAll, describe, expect, it } from 'vitest';
import type { DuePack } from '../../shared/law/list-due-packs.js';
import { type Browser, describeHouse } from '../accounts/house.js';

/** Packs that nobody could read are due since the day on which that was tried. */
const NEVER_READ = ['GU', 'VI', 'WV'];
const DAY_BEFORE = '2027-11-24T23:59:00Z';
const ON_THE_DAY = '2027-11-25T00:01:00Z';

describeHouse('law that is due to be read again', (house) => {
  let administrator: Browser;
  const dueAt = async (moment: string): Promise<DuePack[]> => {
    house().letPass(Date.parse(moment) - Date.parse(house().now()));
    administrator = await house().signedIn('administrator');
    const answer = await administrator.get('/api/law/due').expect(200);
    return (answer.body as { items: DuePack[] }).items;
  };
  beforeAll(async () => {
    administrator = await house().signedIn('administrator');
  });

  it('is told to administrators, by the clock of the service, twelve months after it was read', async () => {
    expect((await dueAt(DAY_BEFORE)).map(({ pack }) => pack)).toEqual(NEVER_READ);
    const due = await dueAt(ON_THE_DAY);
    expect(due.length).toBeGreaterThan(NEVER_READ.length);
    expect(due.slice(0, 3).map(({ pack }) => pack)).toEqual(NEVER_READ);
    expect(due.find(({ pack }) => pack === 'TX')).toEqual({
      pack: 'TX',
      name: 'Texas',
      readOn: '2026-11-25',
      dueOn: '2027-11-25',
      basis: 'read-primary',
    });
    await (await house().signedIn('manager')).get('/api/law/due').expect(403);
    await house().browser().get('/api/law/due').expect(401);
  });
});

describe('the command that lists it', () => {
  /** Runs `npm run -s law -- --due` as if it were that moment. */
  const dueAt = (moment: string, environment: Record<string, string> = {}): string[] => {
    const clock = `const D = Date; globalThis.Date = class extends D {
      constructor(...given) { super(...(given.length === 0 ? [${JSON.stringify(moment)}] : given)); }
    };`;
    const command = [
      '--import',
      `data:text/javascript,${encodeURIComponent(clock)}`,
      'dist/cli/law.js',
      '--due',
    ];
    const env = { ...process.env, ...environment };
    const { status, stdout, stderr } = spawnSync(process.execPath, command, { encoding: 'utf8', env });
    expect([status, stderr]).toEqual([0, '']);
    return stdout.trimEnd().split('\n');
  };

  it('says since when, the longest overdue first', () => {
    expect(dueAt(DAY_BEFORE)).toEqual([
      '2026-11-25  GU                    Guam, read on 2026-11-25',
      expect.stringMatching(/^2026-11-25 {2}VI /),
      expect.stringMatching(/^2026-11-25 {2}WV /),
    ]);
    expect(dueAt(ON_THE_DAY)).toContain('2027-11-25  TX                    Texas, read on 2026-11-25');
  });

  it('goes by the months of the business', () => {
    const sooner = { LAW_RECHECK_MONTHS: '3' };
    expect(dueAt('2027-02-24T12:00:00Z', sooner)).toHaveLength(NEVER_READ.length);
    expect(dueAt('2027-02-25T12:00:00Z', sooner)).toContain(
      '2027-02-25  TX                    Texas, read on 2026-11-25',
    );
  });
});
