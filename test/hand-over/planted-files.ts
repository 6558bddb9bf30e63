import { crc32, deflateSync } from 'node:zlib';
import PDFDocument from 'pdfkit';
import sharp from 'sharp';
import { buffer } from 'node:stream/consumers';

const square = (background: string) => sharp({ create: { width: 64, height: 48, channels: 3, background } });

/**
 * A photograph in which each of these texts stands in one of the places where cameras and programs write text: comment,
 * EXIF description, notes of the maker, thumbnail, XMP, IPTC and colour profile.
 */
export async function plantedJpeg(
  texts: Readonly<Record<(typeof JPEG_PLACES)[number], string>>,
): Promise<Buffer> {
  const bare = await square('#336699').jpeg().toBuffer();
  const thumbnail = segmented(await square('#336699').jpeg().toBuffer(), [
    segment(0xfe, Buffer.from(texts.thumbnail)),
  ]);
  const exif = Buffer.concat([Buffer.from('Exif\0\0'), tiff(texts.description, texts.makerNote, thumbnail)]);
  const xmp = `http://ns.adobe.com/xap/1.0/\0<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf>${texts.xmp}</rdf></x:xmpmeta>`;
  const iptc = Buffer.concat([
    Buffer.from('Photoshop 3.0\x008BIM\x04\x04\0\0', 'latin1'),
    sized(Buffer.concat([Buffer.from([0x1c, 2, 120]), sized(Buffer.from(texts.iptc), 2)]), 4),
  ]);
  const icc = Buffer.concat([Buffer.from('ICC_PROFILE\0\x01\x01', 'latin1'), Buffer.from(texts.icc)]);
  return segmented(bare, [
    segment(0xe1, exif),
    segment(0xe1, Buffer.from(xmp)),
    segment(0xed, iptc),
    segment(0xe2, icc),
    segment(0xfe, Buffer.from(texts.comment)),
  ]);
}

export const JPEG_PLACES = [
  ...(['comment', 'description', 'makerNote', 'thumbnail', 'xmp', 'iptc', 'icc'] as const),
];

/** A picture with plain, compressed and international text in its chunks (PNG, third edition, 11.3.3). */
export async function plantedPng(plain: string, compressed: string, international: string): Promise<Buffer> {
  const bare = await square('#996633').png().toBuffer();
  const afterHeader = 8 + 25;
  return Buffer.concat([
    bare.subarray(0, afterHeader),
    chunk('tEXt', Buffer.concat([Buffer.from('Comment\0'), Buffer.from(plain)])),
    chunk('zTXt', Buffer.concat([Buffer.from('Title\0\0'), deflateSync(compressed)])),
    chunk('iTXt', Buffer.concat([Buffer.from('Title\0\x01\0\0\0'), deflateSync(international)])),
    bare.subarray(afterHeader),
  ]);
}

/** A paper with text on its page, in its information and in a file attached to it. */
export function plantedPdf(page: string, information: string, attached: string): Promise<Buffer> {
  const paper = new PDFDocument({ info: { Title: information, Keywords: information } });
  paper.file(Buffer.from(attached), { name: 'note.txt' });
  paper.text(page);
  paper.end();
  return buffer(paper);
}

function segmented(jpeg: Buffer, segments: Buffer[]): Buffer {
  return Buffer.concat([jpeg.subarray(0, 2), ...segments, jpeg.subarray(2)]);
}

function segment(marker: number, content: Buffer): Buffer {
  const length = Buffer.alloc(2);
  length.writeUInt16BE(content.length + 2);
  return Buffer.concat([Buffer.from([0xff, marker]), length, content]);
}

function sized(content: Buffer, bytes: 2 | 4): Buffer {
  const length = Buffer.alloc(bytes);
  length.writeUIntBE(content.length, 0, bytes);
  return Buffer.concat([length, content]);
}

/** TIFF 6.0, little-endian: image description, an Exif directory with the notes of the maker, and a thumbnail (Exif 2.32). */
function tiff(description: string, makerNote: string, thumbnail: Buffer): Buffer {
  const texts = [Buffer.from(`${description}\0`), Buffer.from(makerNote)];
  const [first, exif, second] = [8, 8 + 2 + 24 + 4, 8 + 2 + 24 + 4 + 2 + 12 + 4];
  const data = second + 2 + 36 + 4;
  const at = [data, data + (texts[0]?.length ?? 0), data + (texts[0]?.length ?? 0) + (texts[1]?.length ?? 0)];
  const entry = (tag: number, type: number, count: number, value: number): Buffer => {
    const bytes = Buffer.alloc(12);
    bytes.writeUInt16LE(tag, 0);
    bytes.writeUInt16LE(type, 2);
    bytes.writeUInt32LE(count, 4);
    bytes.writeUInt32LE(value, 8);
    return bytes;
  };
  const directory = (entries: Buffer[], next: number): Buffer => {
    const [count, behind] = [Buffer.alloc(2), Buffer.alloc(4)];
    count.writeUInt16LE(entries.length);
    behind.writeUInt32LE(next);
    return Buffer.concat([count, ...entries, behind]);
  };
  const header = Buffer.from([0x49, 0x49, 42, 0, first, 0, 0, 0]);
  return Buffer.concat([
    header,
    directory([entry(0x010e, 2, texts[0]?.length ?? 0, at[0] ?? 0), entry(0x8769, 4, 1, exif)], second),
    directory([entry(0x927c, 7, texts[1]?.length ?? 0, at[1] ?? 0)], 0),
    directory(
      [entry(0x0103, 3, 1, 6), entry(0x0201, 4, 1, at[2] ?? 0), entry(0x0202, 4, 1, thumbnail.length)],
      0,
    ),
    ...texts,
    thumbnail,
  ]);
}

function chunk(type: string, data: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(type), data]);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc32(named));
  return Buffer.concat([sized(Buffer.alloc(0), 4), named, check]).fill(lengthOf(data), 0, 4);
}

function lengthOf(data: Buffer): Buffer {
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  return length;
}
