import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import ExcelJS from 'exceljs';
import sharp from 'sharp';
import { afterAll, describe, expect, it } from 'vitest';
import { readCaptured } from '../../src/server/evidence/read-captured.js';
import { readContent } from '../../src/server/evidence/read-content.js';
import { sample } from './samples.js';

const folder = mkdtempSync(join(tmpdir(), 'desk-content-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function written(bytes: Buffer | string): string {
  const path = join(folder, 'file');
  writeFileSync(path, bytes);
  return path;
}

const picture = (format: 'jpeg' | 'png' | 'webp' | 'avif' | 'tiff' | 'gif') =>
  sharp({ create: { width: 8, height: 8, channels: 3, background: '#28f' } })
    .toFormat(format)
    .toBuffer();

/** First bytes as they are published: ISO/IEC 14496-12 `ftyp`, WAVE, PE, ELF, ZIP (APPNOTE), Java class files. */
const ISO_MEDIA = (brand: string) => Buffer.from(`\0\0\0\x18ftyp${brand}\0\0\0\0mp41${brand}`, 'latin1');

describe('what a file is', () => {
  it.each(['jpeg', 'png', 'webp', 'avif', 'tiff', 'gif'] as const)('%s is a photo', async (format) => {
    expect(await readContent(written(await picture(format)))).toEqual({
      type: `image/${format}`,
      kind: 'photo',
    });
  });

  it.each([
    ['a video', ISO_MEDIA('isom'), { type: 'video/mp4', kind: 'video' }],
    ['a video of a phone', ISO_MEDIA('qt  '), { type: 'video/quicktime', kind: 'video' }],
    ['a photo of a phone', ISO_MEDIA('heic'), { type: 'image/heic', kind: 'photo' }],
    ['a recording', 'RIFF\x24\0\0\0WAVEfmt ', { type: 'audio/wav', kind: 'audio' }],
    ['a document', '%PDF-1.7\n%âãÏÓ\n', { type: 'application/pdf', kind: 'document' }],
    ['a track', sample('track.gpx'), { type: 'application/gpx+xml', kind: 'document' }],
    ['text', 'Wind 12 kt, gusts 18. Señora Núñez rief an.', { type: 'text/plain', kind: 'document' }],
    ['text cut in a letter', `${'x'.repeat(65_535)}ñ`, { type: 'text/plain', kind: 'document' }],
  ])('%s is told by content', async (_what, bytes, content) => {
    expect(await readContent(written(bytes))).toEqual(content);
  });

  it.each([
    ['a web page', sample('page-posing-as-photo.jpg'), 'HTML'],
    ['a web page behind words', 'Dear all, <SCRIPT src=//x>', 'HTML'],
    ['a web page as XML', '<?xml version="1.0"?>\n<html xmlns="http://www.w3.org/1999/xhtml"/>', 'HTML'],
    ['a drawing', sample('drawing.svg'), 'SVG'],
    ['a drawing behind a declaration', '<?xml version="1.0"?><!-- x --><svg xmlns="x"/>', 'SVG'],
    ['another XML', '<?xml version="1.0"?><kml/>', 'GPX'],
    ['a script', '#!/bin/sh\nrm -rf /\n', 'program'],
    ['a program of Windows', 'MZ\x90\0\x03\0\0\0', 'program'],
    ['a program of Linux', '\x7fELF\x02\x01\x01\0\0\0\0\0\0\0\0\0\x02\0\x3e\0', 'program'],
    ['an archive', 'PK\x03\x04\x14\0\0\0\x08\0', 'archive'],
    ['bytes of no kind', Buffer.from([1, 2, 3, 0xff, 0xfe, 7]), 'none of'],
    ['text of Latin-1', Buffer.from('Wind böig', 'latin1'), 'none of'],
  ])('%s is refused with the reason', async (_what, bytes, words) => {
    const path = written(typeof bytes === 'string' ? Buffer.from(bytes, 'latin1') : bytes);
    expect(await readContent(path)).toMatchObject({ refused: expect.stringContaining(words) as string });
  });
});

it('takes a sheet of an office, once the part is there that says so', async () => {
  const workbook = new ExcelJS.Workbook();
  workbook.addWorksheet('Trips').addRow(['PWC 7', 3]);
  const sheet = Buffer.from(await workbook.xlsx.writeBuffer());
  const type = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
  expect(await readContent(written(sheet))).toEqual({ type, kind: 'document' });
  // The beginning alone, before the part that names the type.
  expect(await readContent(written(sheet.subarray(0, 60)))).toMatchObject({ certain: false });
});

describe('what a camera wrote', () => {
  it('is time and position, and nothing else', async () => {
    // 33° 50' N, 96° 34' 12" W, as the sample was made.
    const captured = await readCaptured(written(sample('photo-with-position.jpg')));
    expect(captured).toEqual({
      local: '2026-06-13T14:02:00',
      latitude: expect.closeTo(33.8333, 3) as number,
      longitude: expect.closeTo(-96.57, 3) as number,
    });
  });

  it.each([
    ['no metadata', () => picture('jpeg')],
    ['no picture', () => Promise.resolve(Buffer.from('none'))],
    ['half of it', () => Promise.resolve(sample('photo-with-position.jpg').subarray(0, 60))],
  ])('is nothing for %s', async (_what, bytes) => {
    expect(await readCaptured(written(await bytes()))).toBeUndefined();
  });
});
