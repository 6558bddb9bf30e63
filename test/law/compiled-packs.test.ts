import { mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { compileRulePacks, loadCompiledPacks, RulePackError } from '../../src/server/law/law.api.js';
import { copyPacks, readPack, writePack } from './pack-folder.js';

const files = ['us.json', 'ok.json', 'tx.json'];
const LONG_AGO = new Date('2000-01-01');

/** A folder of packs and their compiled document, which is newer than the packs, their folder and the schema. */
async function compiledFolder(): Promise<{ folder: string; compiled: string }> {
  const folder = copyPacks(files);
  const compiled = join(mkdtempSync(join(tmpdir(), 'compiled-')), 'forms', 'rule-packs.json');
  await compileRulePacks(compiled, folder);
  for (const path of [folder, ...files.map((file) => join(folder, file))]) {
    utimesSync(path, LONG_AGO, LONG_AGO);
  }
  backdate(compiled);
  return { folder, compiled };
}

/** A second before now: after everything that lay there, before what a test does next. */
function backdate(path: string): void {
  const justNow = new Date(Date.now() - 1000);
  utimesSync(path, justNow, justNow);
}

describe('the compiled rule packs', () => {
  it('hold every pack, the federal one first, each with the hash of its content', async () => {
    const { folder, compiled } = await compiledFolder();
    const document = await loadCompiledPacks(compiled, folder);
    expect(document.packs).toEqual(files.map((file) => readPack(file)));
    expect(Object.keys(document.hashes)).toEqual(['US', 'OK', 'TX']);
    expect(new Set(Object.values(document.hashes)).size).toBe(3);
    expect(document.hashes['TX']).toMatch(/^[0-9a-f]{64}$/);
  });

  it('change the hash of a pack with its content, and not with its layout', async () => {
    const { folder, compiled } = await compiledFolder();
    const before = await loadCompiledPacks(compiled, folder);
    writeFileSync(join(folder, 'ok.json'), JSON.stringify(readPack('ok.json'), null, 4));
    writePack(folder, 'tx.json', { ...readPack('tx.json'), reportConfidential: 'yes' });
    const after = await loadCompiledPacks(compiled, folder);
    expect(after.hashes['OK']).toBe(before.hashes['OK']);
    expect(after.hashes['TX']).not.toBe(before.hashes['TX']);
  });

  it.each([
    { change: 'nothing', make: () => undefined, found: ['as compiled'] },
    {
      change: 'the text of a pack',
      make: (folder: string) => writePack(folder, 'tx.json', { ...readPack('tx.json'), name: 'Edited' }),
      found: ['United States, federal law', 'Oklahoma', 'Edited'],
    },
    {
      change: 'the packs by one more',
      make: (folder: string) => {
        writePack(folder, 'ar.json', readPack('ar.json'));
        utimesSync(join(folder, 'ar.json'), LONG_AGO, LONG_AGO);
      },
      found: ['United States, federal law', 'Arkansas', 'Oklahoma', 'Texas'],
    },
    {
      change: 'the packs by one less',
      make: (folder: string) => rmSync(join(folder, 'ok.json')),
      found: ['United States, federal law', 'Texas'],
    },
  ])('are read anew when anything changed after them: $change', async ({ make, found }) => {
    const { folder, compiled } = await compiledFolder();
    writeFileSync(compiled, JSON.stringify({ packs: [{ name: 'as compiled' }], hashes: {} }));
    backdate(compiled);
    make(folder);
    const document = await loadCompiledPacks(compiled, folder);
    expect(document.packs.map(({ name }) => name)).toEqual(found);
  });

  it('do not hide a fault in a pack that changed after them', async () => {
    const { folder, compiled } = await compiledFolder();
    writePack(folder, 'tx.json', { ...readPack('tx.json'), basis: 'hearsay' });
    await expect(loadCompiledPacks(compiled, folder)).rejects.toThrow(RulePackError);
  });

  it('are not written from packs with a fault', async () => {
    const folder = copyPacks(files);
    writePack(folder, 'tx.json', { ...readPack('tx.json'), basis: 'hearsay' });
    await expect(compileRulePacks(join(folder, 'out', 'x.json'), folder)).rejects.toThrow(/tx\.json \/basis/);
  });

  it('are done without when the build has not written them', async () => {
    const document = await loadCompiledPacks(join(tmpdir(), 'no-such-folder', 'x.json'), copyPacks(files));
    expect(document.packs).toHaveLength(3);
  });
});
