import { X509Certificate } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { parseArgs } from 'node:util';
import { tellPacketCheck } from '../../shared/hand-over/tell-packet-check.js';
import type { LogHead } from '../../shared/proof/merkle-log.js';
import { checkEvidence } from '../server/evidence/evidence.api.js';
import { checkPacket } from '../server/hand-over/hand-over.api.js';
import { checkRecord } from '../server/record/record.api.js';

/**
 * `npm run -s verify` holds the record against its log and the heads kept outside the database, and every file of
 * evidence against the record. `npm run -s verify -- PACKET.zip` holds a packet against itself, and with
 * `--head SIZE:ROOT` against a head that somebody received before, and its time stamps against the certificates of
 * `--roots FILE`. Exit status 0 when everything is as it was written, 1
 * with one line a fault when not, 2 when it could not be looked at.
 */
async function main(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: { head: { type: 'string', multiple: true }, roots: { type: 'string' } },
  });
  const [packet, more] = positionals;
  if (more !== undefined) throw new Error('Name one packet.');
  if (packet === undefined) return verifyDesk();
  const roots = values.roots === undefined ? [] : await readRoots(values.roots);
  return verifyArchive(packet, (values.head ?? []).map(readHead), roots);
}

async function verifyDesk(): Promise<number> {
  const { incidents, amendments, faults: ofRecord } = await checkRecord(process.env);
  const { files, faults: ofEvidence } = await checkEvidence(process.env);
  const faults = [...ofRecord, ...ofEvidence];
  for (const { code, text } of faults) console.log(`${code}: ${text}`);
  const found = faults.length === 0 ? 'all as written' : `${faults.length} faults`;
  console.log(`${incidents} incidents, ${amendments} amendments, ${files} files of evidence: ${found}.`);
  return faults.length === 0 ? 0 : 1;
}

async function verifyArchive(
  path: string,
  heads: readonly LogHead[],
  roots: readonly Uint8Array[],
): Promise<number> {
  const check = await checkPacket(path, heads, process.stderr.isTTY ? tellProgress : undefined, roots);
  for (const line of tellPacketCheck(check, heads.length)) console.log(line);
  return check.faults.length === 0 ? 0 : 1;
}

/** On one line that is written over; a file or another program is told only what was found. */
function tellProgress(done: number, total: number): void {
  process.stderr.write(done < total ? `\rLooked at ${Math.floor((done / total) * 100)} %` : '\r\u001b[K');
}

/** @throws Error where a file holds no certificate in PEM */
async function readRoots(path: string): Promise<Uint8Array[]> {
  const found = (await readFile(path, 'utf8')).match(
    /-----BEGIN CERTIFICATE-----[^-]+-----END CERTIFICATE-----/g,
  );
  if (found === null) throw new Error(`${path} holds no certificate in PEM.`);
  return found.map((pem) => new Uint8Array(new X509Certificate(pem).raw));
}

/** @throws Error for anything but SIZE:ROOT */
function readHead(text: string): LogHead {
  const [, size, root] = /^(\d{1,15}):([0-9a-f]{64})$/.exec(text) ?? [];
  if (size === undefined || root === undefined) throw new Error(`${text} is no head: write it as SIZE:ROOT.`);
  return { size: Number(size), root };
}

main(process.argv.slice(2)).then(
  (status) => (process.exitCode = status),
  (error: unknown) => {
    console.error(error instanceof Error ? error.message : String(error));
    process.exitCode = 2;
  },
);
