import { execFile } from 'node:child_process';
import { createReadStream, createWriteStream } from 'node:fs';
import { mkdir, mkdtemp, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { promisify } from 'node:util';
import { createBrotliDecompress } from 'node:zlib';
import { type Browser, type BrowserContext, type BrowserContextOptions, chromium } from 'playwright-core';

/**
 * A Chromium that lies packed in a package of the registry: `npm ci` brings it, nothing is downloaded when it
 * is installed, and its archive has the shared libraries beyond the C library that it needs (NSS, expat) and a
 * typeface, so that it runs on a machine without either. Linux on x86-64.
 */
const PACKAGE = packageFolder('@sparticuz/chromium');
const UNPACKED = join(PACKAGE, '..', '..', '.cache', 'chromium');
const ARCHIVES = ['al2023', 'fonts', 'swiftshader'];
const LAUNCH_TIMEOUT_MS = 60_000;

/** Starts the browser; whoever starts it closes it. */
export async function launchBrowser(): Promise<Browser> {
  return chromium.launch(await launchOptions());
}

/** Starts a browser that keeps its profile in a folder, as the one on a phone does. */
export async function launchProfile(folder: string, options: BrowserContextOptions): Promise<BrowserContext> {
  return chromium.launchPersistentContext(folder, { ...(await launchOptions()), ...options });
}

/** Kills the browser of a profile as a phone does that runs out of battery: no page hears of it. */
export async function killProfile(folder: string): Promise<void> {
  for (const entry of await readdir('/proc')) {
    if (!/^\d+$/.test(entry)) continue;
    // A process may end while the list is read.
    const command = await readFile(`/proc/${entry}/cmdline`, 'utf8').catch(() => '');
    if (command.includes(`--user-data-dir=${folder}`)) process.kill(Number(entry), 'SIGKILL');
  }
}

async function launchOptions() {
  const folder = await unpack();
  return {
    executablePath: join(folder, 'chromium'),
    timeout: LAUNCH_TIMEOUT_MS,
    // The package's own list of arguments is left alone: it has one process for everything, so that closing a
    // page ends the browser, and it switches off the guards that the tests look at. Without a sandbox because
    // tests run as root on build machines; the pages are our own.
    args: ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage', '--disable-background-networking'],
    env: {
      ...process.env,
      LD_LIBRARY_PATH: join(folder, 'lib'),
      FONTCONFIG_FILE: join(folder, 'fonts.conf'),
    },
  };
}

/** Unpacks once for each installation; two runs at the same time do not see each other's half. */
async function unpack(): Promise<string> {
  const ready = await stat(UNPACKED).then(
    () => true,
    () => false,
  );
  if (ready) return UNPACKED;
  await mkdir(dirname(UNPACKED), { recursive: true });
  const half = await mkdtemp(`${UNPACKED}-`);
  try {
    await inflate('chromium.br', join(half, 'chromium'), 0o755);
    for (const archive of ARCHIVES) {
      const tar = join(half, `${archive}.tar`);
      await inflate(`${archive}.tar.br`, tar, 0o644);
      await promisify(execFile)('tar', ['-xf', tar, '-C', half, '--no-same-owner']);
      await rm(tar);
    }
    await writeFile(
      join(half, 'fonts.conf'),
      `<fontconfig><dir>${join(UNPACKED, 'fonts')}</dir><cachedir>${join(UNPACKED, 'font-cache')}</cachedir></fontconfig>`,
    );
    await rename(half, UNPACKED).catch((error: unknown) => whenAlreadyThere(error));
  } finally {
    await rm(half, { recursive: true, force: true });
  }
  return UNPACKED;
}

function whenAlreadyThere(error: unknown): void {
  const { code } = error as NodeJS.ErrnoException;
  if (code !== 'ENOTEMPTY' && code !== 'EEXIST') throw error;
}

async function inflate(packed: string, to: string, mode: number): Promise<void> {
  await pipeline(
    createReadStream(join(PACKAGE, 'bin', packed)),
    createBrotliDecompress({ chunkSize: 2 ** 21 }),
    createWriteStream(to, { mode }),
  );
}

/** The package exports its entry alone, which lies in build/cjs; its folder is what is wanted. */
function packageFolder(name: string): string {
  return join(dirname(createRequire(import.meta.url).resolve(name)), '..', '..');
}
