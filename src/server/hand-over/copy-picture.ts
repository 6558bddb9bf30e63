import type { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import sharp from 'sharp';
import type { Region } from '../../../shared/hand-over/sender-choices.js';

const SLOWEST_S = 60;
export const COPY_TYPE = 'image/jpeg';
const QUALITY = 90;

/**
 * A copy of a picture, turned upright, without anything that the camera wrote into it, and with parts covered. A covered
 * part is first brought down to a few grey squares, so that no sharpening brings a face back.
 * @throws RangeError for a region that does not lie within the picture
 */
export async function copyPicture(original: Readable, regions: readonly Region[]): Promise<Buffer> {
  const upright = sharp({ failOn: 'none', sequentialRead: true })
    .timeout({ seconds: SLOWEST_S })
    .autoOrient();
  const [{ data, info }] = await Promise.all([
    upright
      .toColourspace('srgb')
      .flatten({ background: '#ffffff' })
      .raw()
      .toBuffer({ resolveWithObject: true }),
    pipeline(original, upright),
  ]);
  const raw = { width: info.width, height: info.height, channels: info.channels };
  const covers = await Promise.all(
    regions.map(async (region) => {
      if (region.left + region.width > info.width || region.top + region.height > info.height) {
        throw new RangeError(
          `A region lies outside of the picture of ${info.width} by ${info.height} pixels.`,
        );
      }
      const { left, top, width, height } = region;
      const squares = await sharp(data, { raw })
        .extract({ left, top, width, height })
        .resize(SQUARES, SQUARES, { fit: 'fill' })
        .greyscale()
        .png()
        .toBuffer();
      const input = await sharp(squares)
        .resize(width, height, { fit: 'fill', kernel: 'nearest' })
        .png()
        .toBuffer();
      return { input, left, top };
    }),
  );
  return sharp(data, { raw }).composite(covers).jpeg({ quality: QUALITY }).toBuffer();
}

const SQUARES = 3;
