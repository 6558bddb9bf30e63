import exifr from 'exifr';
import type { Captured } from '../../../shared/record/evidence-section.js';

const LOCAL = /^(\d{4}):(\d\d):(\d\d) (\d\d):(\d\d):(\d\d)/;
const OFFSET = /^[+-]\d\d:\d\d$/;

/** Time and position as the camera wrote them into a picture; undefined where it wrote nothing that can be read. */
export async function readCaptured(path: string): Promise<Captured | undefined> {
  const tags = await readTags(path);
  const captured: Captured = {
    ...localOf(tags?.['DateTimeOriginal']),
    ...offsetOf(tags?.['OffsetTimeOriginal']),
    ...positionOf(tags),
  };
  return Object.keys(captured).length === 0 ? undefined : captured;
}

async function readTags(path: string): Promise<Record<string, unknown> | undefined> {
  try {
    return (await exifr.parse(path, {
      reviveValues: false,
      exif: { pick: ['DateTimeOriginal', 'OffsetTimeOriginal'] },
      gps: true,
      ifd0: { pick: [] },
      xmp: false,
      icc: false,
      iptc: false,
      jfif: false,
      ihdr: false,
    })) as Record<string, unknown> | undefined;
  } catch (error) {
    // Broken metadata is no reason to refuse a picture; it then says nothing. What it says is never repeated.
    if (error instanceof Error) return undefined;
    throw error;
  }
}

function localOf(value: unknown): Captured {
  const [, year, month, day, hour, minute, second] = LOCAL.exec(String(value)) ?? [];
  const local = `${year}-${month}-${day}T${hour}:${minute}:${second}`;
  return year === undefined || Number.isNaN(Date.parse(`${local}Z`)) ? {} : { local };
}

function offsetOf(value: unknown): Captured {
  return typeof value === 'string' && OFFSET.test(value) ? { offset: value } : {};
}

function positionOf(tags: Record<string, unknown> | undefined): Captured {
  const { latitude, longitude } = tags ?? {};
  const isPlace =
    typeof latitude === 'number' &&
    typeof longitude === 'number' &&
    Math.abs(latitude) <= 90 &&
    Math.abs(longitude) <= 180;
  return isPlace ? { latitude, longitude } : {};
}
