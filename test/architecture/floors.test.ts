import { execFile } from 'node:child_process';
import { cp, mkdir, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const ROOT = join(import.meta.dirname, '..', '..');
const CONFIG = join(ROOT, '.dependency-cruiser.mjs');
const { default: config } = (await import(CONFIG)) as { default: { forbidden: Rule[] } };
const FOLDERS = ['src', 'shared', 'migrations', 'test', 'forms', 'fixtures'];

interface Rule {
  name: string;
  comment: string;
}

interface Violation {
  rule: { name: string };
  from: string;
  to: string;
}

/** Files that stand in the planted tree so that faults have something to lean on; they break no rule. */
const GROUND: Record<string, string> = {
  'package.json': JSON.stringify({
    name: 'planted',
    type: 'module',
    dependencies: {
      typeorm: '1',
      nodemailer: '1',
      rxjs: '1',
      'temporal-polyfill': '1',
      'class-validator': '1',
    },
    devDependencies: { vitest: '1' },
  }),
  'tsconfig.json': JSON.stringify({ compilerOptions: { module: 'nodenext' } }),
  ...Object.fromEntries(
    ['typeorm', 'nodemailer', 'rxjs', 'vitest', 'temporal-polyfill', 'class-validator'].flatMap((name) => [
      [`node_modules/${name}/package.json`, JSON.stringify({ name, version: '1.0.0', main: 'main.js' })],
      [`node_modules/${name}/main.js`, 'module.exports = {};'],
    ]),
  ),
  'shared/kernel/low.ts': 'export type Low = 1;',
  'shared/time/clock.ts':
    "import 'temporal-polyfill';\nimport type { Low } from '../kernel/low.js';\nexport type T = Low;",
  'shared/place/shape.ts': "import type { Point } from 'geojson';",
  'shared/determination/high.ts': 'export type High = 1;',
  'shared/wire/read.ts': "import 'class-validator';",
  'test/support/help.ts': "import 'vitest';\nimport '../../src/cli/good.js';\nexport const help = 1;",
  'migrations/0001-good.ts': "import 'typeorm';",
  'src/server/law/law.api.ts': "import './inner.js';\nexport const api = 1;",
  'src/server/law/inner.ts': 'export const inner = 1;',
  'src/server/record/record.api.ts': 'export const api = 1;',
  'src/server/platform/ground.ts': "import 'node:fs';\nimport '../../../shared/kernel/low.js';",
  'src/server/platform/database/door.ts': "import 'typeorm';",
  'src/server/platform/mail/post.ts': "import 'nodemailer';",
  'src/server/record/database/rows.ts': "import 'typeorm';\nimport '../../platform/database/door.js';",
  'src/server/register/good.ts': "import '../law/law.api.js';\nimport '../platform/ground.js';",
  'src/server/main.ts': "import './register/good.js';",
  'src/cli/good.ts': "import '../server/law/law.api.js';\nimport '../../shared/wire/read.js';",
  'src/web/good.ts': "import '../../shared/determination/high.js';",
  'fixtures/data.json': '{}',
};

/** One planted fault of each kind: the rule that must fail, the file at fault and what stands in it. */
const FAULTS: [rule: string, file: string, text: string][] = [
  ['no-circular', 'shared/record/ring-a.ts', "import type { B } from './ring-b.js';\nexport type A = B;"],
  ['no-unresolvable', 'src/cli/lost.ts', "import './nowhere.js';"],
  ['no-barrel', 'src/cli/through-barrel.ts', "import '../../shared/report/index.js';"],
  ['nothing-imports-test', 'src/cli/leans-on-test.ts', "import '../../test/support/help.js';"],
  ['data-imports-nothing', 'forms/law/code.ts', "import '../../shared/kernel/low.js';"],
  ['data-imports-nothing', 'fixtures/code.ts', "import 'node:fs';"],
  ['migrations-stand-alone', 'migrations/0002-entity.ts', "import '../src/server/record/database/rows.js';"],
  ['migrations-stand-alone', 'migrations/0003-shared.ts', "import '../shared/kernel/low.js';"],
  ['product-needs-no-dev-package', 'src/server/register/dev.ts', "import 'vitest';"],
  ['shared-room-listed', 'src/cli/unlisted-room.ts', "import '../../shared/attic/box.js';"],
  ['shared-room-listed-importer', 'shared/attic/box.ts', "import '../kernel/low.js';"],
  ['shared-no-node', 'shared/kernel/reads-file.ts', "import { readFileSync } from 'node:fs';"],
  ['shared-no-node', 'shared/kernel/reads-file-type.ts', "import type { Stats } from 'fs';"],
  ['shared-no-outside', 'shared/law/calls-server.ts', "import '../../src/server/law/law.api.js';"],
  ['shared-no-outside', 'shared/law/reads-data.ts', "import '../../fixtures/data.json';"],
  ['shared-room-order-kernel', 'shared/kernel/looks-down.ts', "import '../determination/high.js';"],
  [
    'shared-room-order-time',
    'shared/time/type-only.ts',
    "import type { High } from '../determination/high.js';",
  ],
  ['shared-packages-time', 'shared/time/wrong-package.ts', "import 'class-validator';"],
  ['shared-packages-kernel', 'shared/kernel/types-alone.ts', "import type { Point } from 'geojson';"],
  ['shared-packages-kernel', 'shared/kernel/any-package.ts', "import 'rxjs';"],
  ['web-only-shared', 'src/web/calls-server.ts', "import '../server/law/law.api.js';"],
  ['web-only-shared', 'src/web/reads-fixture.ts', "import '../../fixtures/data.json';"],
  ['web-no-node', 'src/web/reads-file.ts', "import 'node:fs';"],
  ['web-packages', 'src/web/any-package.ts', "import 'rxjs';"],
  ['cli-only-faces', 'src/cli/inside.ts', "import '../server/law/inner.js';"],
  ['cli-only-faces', 'src/cli/web.ts', "import '../web/good.js';"],
  ['build-only-faces', 'src/build/inside.ts', "import '../server/law/inner.js';"],
  ['server-not-upstairs', 'src/server/register/upstairs.ts', "import '../../cli/good.js';"],
  ['server-top-is-top', 'src/server/register/top.ts', "import '../main.js';"],
  ['server-module-listed', 'src/cli/unlisted-module.ts', "import '../server/cellar/cellar.api.js';"],
  ['server-module-listed-importer', 'src/server/cellar/cellar.api.ts', "import 'node:fs';"],
  ['server-platform-floor', 'src/server/platform/knows-law.ts', "import '../law/law.api.js';"],
  ['server-platform-floor', 'src/server/platform/knows-wire.ts', "import '../../../shared/wire/read.js';"],
  ['server-module-face', 'src/server/register/inside.ts', "import '../law/inner.js';"],
  ['server-module-order-law', 'src/server/law/looks-down.ts', "import '../record/record.api.js';"],
  ['nodemailer-behind-the-queue', 'src/server/record/posts.ts', "import 'nodemailer';"],
  ['typeorm-behind-the-door', 'src/server/record/service.ts', "import 'typeorm';"],
];

/** Files that faults need beside them. */
const BESIDE: Record<string, string> = {
  'shared/record/ring-b.ts': "import type { A } from './ring-a.js';\nexport type B = A;",
  'shared/report/index.ts': 'export const barrel = 1;',
};

async function cruise(folder: string, paths: readonly string[]): Promise<Violation[]> {
  const depcruise = join(ROOT, 'node_modules', 'dependency-cruiser', 'bin', 'dependency-cruise.mjs');
  const command = [depcruise, '--config', '.dependency-cruiser.mjs', '--output-type', 'json', ...paths];
  const output = await new Promise<string>((resolve, reject) => {
    execFile(process.execPath, command, { cwd: folder, maxBuffer: 1 << 28 }, (error, stdout, stderr) => {
      if (stdout === '') reject(new Error(stderr || error?.message || 'dependency-cruiser printed nothing'));
      else resolve(stdout);
    });
  });
  return (JSON.parse(output) as { summary: { violations: Violation[] } }).summary.violations;
}

describe('the floors, each with a fault planted', () => {
  let folder: string;
  let violations: Violation[];

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'floors-'));
    const faults = Object.fromEntries(FAULTS.map(([, file, text]) => [file, text]));
    for (const [file, text] of Object.entries({ ...GROUND, ...BESIDE, ...faults })) {
      await mkdir(dirname(join(folder, file)), { recursive: true });
      await writeFile(join(folder, file), text);
    }
    await cp(CONFIG, join(folder, '.dependency-cruiser.mjs'));
    violations = await cruise(folder, FOLDERS);
  });
  afterAll(async () => {
    await rm(folder, { recursive: true, force: true });
  });

  it.each(FAULTS)('%s fails on %s', (rule, file) => {
    expect(violations.filter(({ from }) => from === file).map((violation) => violation.rule.name)).toContain(
      rule,
    );
  });

  it('blames no file without a fault', () => {
    const blamed = new Set(violations.map(({ from }) => from));
    expect(Object.keys(GROUND).filter((file) => blamed.has(file))).toEqual([]);
  });

  it('has a planted fault for every rule, one room or module standing for its kind', () => {
    const kind = (rule: string): string =>
      rule.replace(/^(shared-room-order|shared-packages|server-module-order)-.*$/, '$1');
    const planted = new Set(FAULTS.map(([rule]) => kind(rule)));
    const rules = new Set(config.forbidden.map(({ name }) => kind(name)));
    expect([...rules].sort()).toEqual([...planted].sort());
  });

  it('says with every rule what to do instead', () => {
    expect(config.forbidden.filter(({ comment }) => comment.length < 40)).toEqual([]);
  });
});

describe('the house as it stands', () => {
  it.each(['forms', 'fixtures'])('has data and no code in %s', async (folder) => {
    const files = await readdir(join(ROOT, folder), { recursive: true });
    expect(files.filter((file) => /\.[cm]?[jt]sx?$/.test(file))).toEqual([]);
  });

  it('breaks no floor', async () => {
    expect(await cruise(ROOT, FOLDERS)).toEqual([]);
  });
});
