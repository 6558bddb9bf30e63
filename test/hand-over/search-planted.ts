import { inflateRawSync, inflateSync } from 'node:zlib';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { readZip } from './read-zip.js';

/** Letters that stand for the sixteen digits, so that a mark holds no figure and no vowel, and is one word to everybody. */
const LETTERS = 'bdfghjklmnprstvw';
const MARK = /qzx([bdfghjklmnprstvw]{3})q/g;

/** `markNamed(18)` is `'Qzxbdfq'`: a word that stands in one place of a record and nowhere else. */
export function markNamed(place: number): string {
  const digits = [place >> 8, place >> 4, place].map((digit) => LETTERS[digit & 15] ?? '');
  return `Qzx${digits.join('')}q`;
}

/** What can be read in some bytes, however it is packed, encoded and spelled. */
export interface Readable {
  /** Every mark in it, as `markNamed` made it. */
  readonly marks: ReadonlySet<string>;
  /** Whether a text stands in it, whatever separates its letters and figures. */
  readonly holds: (text: string) => boolean;
}

/** Reads a file of any kind, with everything packed inside of it. */
export async function readWhole(bytes: Buffer): Promise<Readable> {
  const views = (await unpack(bytes)).flatMap(viewsOf).map(bare);
  const marks = views.flatMap((view) =>
    [...view.matchAll(MARK)].map(([, letters]) => `Qzx${letters ?? ''}q`),
  );
  return { marks: new Set(marks), holds: (text) => views.some((view) => view.includes(bare(text))) };
}

const bare = (text: string): string => text.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, '');

/** The bytes, and those of everything inside: of archives, papers, and compressed parts of papers and pictures. */
async function unpack(bytes: Buffer): Promise<Buffer[]> {
  if (bytes.subarray(0, 4).equals(Buffer.from('PK\x03\x04'))) {
    const files = [...(await readZip(bytes))];
    const inside = await Promise.all(files.map(([, content]) => unpack(content)));
    return [Buffer.from(files.map(([path]) => path).join('\n')), ...inside.flat()];
  }
  if (bytes.subarray(0, 5).toString() === '%PDF-') {
    return [bytes, ...streamsOf(bytes), ...(await textsOf(bytes)).map((text) => Buffer.from(text))];
  }
  if (bytes.subarray(1, 4).toString() === 'PNG') return [bytes, ...chunksOf(bytes)];
  return [bytes];
}

/** Text, information and attachments of a paper, as another library reads them. */
async function textsOf(bytes: Buffer): Promise<string[]> {
  const document = await getDocument({ data: new Uint8Array(bytes), useSystemFonts: false, verbosity: 0 })
    .promise;
  const { info, metadata } = await document.getMetadata();
  const attached = (await document.getAttachments()) as Record<string, { content: Uint8Array }> | null;
  const pages: string[] = [];
  for (let page = 1; page <= document.numPages; page += 1) {
    const { items } = await (await document.getPage(page)).getTextContent();
    pages.push(items.map((item) => ('str' in item ? item.str : '')).join(' '));
  }
  await document.destroy();
  return [
    ...pages,
    JSON.stringify(info),
    JSON.stringify(metadata?.getAll() ?? {}),
    ...Object.entries(attached ?? {}).map(([name, { content }]) => name + Buffer.from(content).toString()),
  ];
}

function streamsOf(bytes: Buffer): Buffer[] {
  const found: Buffer[] = [];
  for (let at = bytes.indexOf('stream\n'); at >= 0; at = bytes.indexOf('stream\n', at + 7)) {
    const end = bytes.indexOf('endstream', at);
    if (end > at) found.push(...inflated(bytes.subarray(at + 7, end)));
  }
  return found;
}

function chunksOf(bytes: Buffer): Buffer[] {
  const found: Buffer[] = [];
  for (let at = 8; at + 8 < bytes.length; at += 12 + bytes.readUInt32BE(at)) {
    const data = bytes.subarray(at + 8, at + 8 + bytes.readUInt32BE(at));
    // Keyword, a zero, and the way of compression stand before what is compressed; iTXt has more zeros between.
    data.forEach((byte, place) => {
      if (byte === 0x78) found.push(...inflated(data.subarray(place)));
    });
  }
  return found;
}

/** Nothing where it is not compressed in this way. */
function inflated(bytes: Buffer): Buffer[] {
  for (const inflate of [inflateSync, inflateRawSync]) {
    try {
      return [inflate(bytes)];
    } catch (error) {
      if (!(error instanceof Error) || !('code' in error)) throw error;
    }
  }
  return [];
}

/** The bytes as text, in every way in which text is written into bytes, and text into text. */
function viewsOf(bytes: Buffer): string[] {
  const even = bytes.subarray(0, bytes.length & ~1);
  const odd = bytes.subarray(1, 1 + ((bytes.length - 1) & ~1));
  const text = bytes.toString('utf8');
  const hex = [...text.matchAll(/[0-9a-f]{12,}/gi)].map(([run]) =>
    Buffer.from(run, 'hex').toString('latin1'),
  );
  const base64 = [...text.matchAll(/[A-Za-z0-9+/_-]{12,}/g)].flatMap(([run]) =>
    [0, 1, 2, 3].map((from) => Buffer.from(run.slice(from), 'base64').toString('latin1')),
  );
  return [
    text,
    bytes.toString('latin1'),
    even.toString('utf16le'),
    odd.toString('utf16le'),
    Buffer.from(even).swap16().toString('utf16le'),
    Buffer.from(odd).swap16().toString('utf16le'),
    text.replaceAll(/[%=]([0-9A-F]{2})/gi, (_, code: string) => String.fromCharCode(parseInt(code, 16))),
    text.replaceAll(/&#x?([0-9a-f]+);/gi, (whole, code: string) =>
      String.fromCodePoint(Math.min(parseInt(code, whole[2] === 'x' ? 16 : 10), 0x10ffff)),
    ),
    text.replaceAll(/\\u([0-9a-f]{4})/gi, (_, code: string) => String.fromCharCode(parseInt(code, 16))),
    hex.join(' '),
    base64.join(' '),
  ];
}
