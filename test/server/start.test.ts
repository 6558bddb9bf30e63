import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { once } from 'node:events';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readConfig } from '../../src/server/platform/config.js';
import { failToStart, startServer } from '../support/start-server.js';

const LAW = join(import.meta.dirname, '..', '..', 'forms', 'law');

describe('the start', () => {
  it('prints where it listens, and ends in order when told to', async () => {
    const server = await startServer();
    const health = await fetch(`${server.url}/api/health`);
    expect(health.status).toBe(200);
    await health.text();
    expect(await server.stop()).toBe(0);
  });

  it('fills an empty desk with the demonstration, and lives in the zone of its stations from then on', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'desk-demo-start-'));
    const settings = { DEMO: 'yes', TZ: 'UTC', DATABASE_URL: `sqlite:${join(folder, 'desk.sqlite')}` };
    for (const isFirst of [true, false]) {
      const server = await startServer(settings);
      await expect.poll(server.said).toContain('Mail goes');
      expect(server.said()).toContain('Time zone of the business: America/Chicago');
      expect(server.said().includes('loading the demonstration')).toBe(isFirst);
      expect(await server.stop()).toBe(0);
    }
    await rm(folder, { recursive: true });
  });

  it('says when the port is taken', async () => {
    const holder = createServer().listen(0, '127.0.0.1');
    await once(holder, 'listening');
    const { port } = holder.address() as AddressInfo;
    const { status, stderr } = await failToStart({ PORT: String(port) });
    holder.close();
    expect([status, stderr]).toEqual([1, expect.stringContaining('set PORT to a free one')]);
  });

  it('says which setting is wrong', async () => {
    const { status, stdout, stderr } = await failToStart({ PORT: 'eighty' });
    expect([status, stdout]).toEqual([1, '']);
    expect(stderr).toContain('PORT is "eighty": give a whole number from 0 to 65535');
  });
});

describe('the start with a broken rule pack', () => {
  let folder: string;
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'law-'));
    await cp(LAW, folder, { recursive: true });
  });
  afterEach(() => rm(folder, { recursive: true, force: true }));

  const breakPack = async (file: string, edit: (pack: Record<string, unknown>) => void): Promise<void> => {
    const pack = JSON.parse(await readFile(join(folder, file), 'utf8')) as Record<string, unknown>;
    edit(pack);
    await writeFile(join(folder, file), JSON.stringify(pack));
  };

  it('starts with the folder as it is', async () => {
    const server = await startServer({ RULE_PACKS_DIR: folder });
    expect(await server.stop()).toBe(0);
  });

  it('is refused with file, pointer and reason', async () => {
    await breakPack('tx.json', (pack) => (pack['basis'] = 'hearsay'));
    await breakPack('ok.json', (pack) => delete pack['readOn']);
    const { status, stdout, stderr } = await failToStart({ RULE_PACKS_DIR: folder });
    expect([status, stdout]).toEqual([1, '']);
    expect(stderr).toMatch(/tx\.json \/basis: .*read-primary/);
    expect(stderr).toMatch(/ok\.json \/readOn: is missing/);
  });

  it('is refused where a trigger has no limit', async () => {
    await breakPack('tx.json', (pack) => {
      const { limits } = pack['report'] as { limits: { tests: string[] }[] };
      for (const limit of limits) limit.tests = limit.tests.filter((test) => test !== 'death');
    });
    const { status, stderr } = await failToStart({ RULE_PACKS_DIR: folder });
    expect([status, stderr]).toEqual([1, expect.stringMatching(/tx\.json \/report\/triggers\/\d+\S*: .+/)]);
  });
});

describe('the settings', () => {
  it('have defaults that only this machine can reach', () => {
    expect(readConfig({})).toMatchObject({ host: '127.0.0.1', port: 8080, rulePacksDir: undefined });
  });

  it.each([
    [{ PORT: '65536' }, 'PORT'],
    [{ PORT: '' }, 'PORT'],
    [{ PORT: '-1' }, 'PORT'],
    [{ HOST: 'a b' }, 'HOST'],
    [{ HOST: '' }, 'HOST'],
    [{ RULE_PACKS_DIR: '' }, 'RULE_PACKS_DIR'],
    [{ BUSINESS_TIME_ZONE: 'Lake Texoma' }, 'BUSINESS_TIME_ZONE'],
    [{ DECISION_LEAD_HOURS: '0' }, 'DECISION_LEAD_HOURS'],
    [{ LAW_RECHECK_MONTHS: '1e1' }, 'LAW_RECHECK_MONTHS'],
  ])('%j is refused', (environment, name) => {
    expect(() => readConfig(environment)).toThrow(new RegExp(`^The service cannot start\\.\\n  ${name} is`));
  });
});
