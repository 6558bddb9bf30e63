import sharp from 'sharp';

const WIDTH = 1200;
const HEIGHT = 900;
const SKY = '#dfe6e3';
const WATER = '#9db7bd';
const HULL = '#e0b43c';
const MARK = '#a8310b';

const block = (width: number, height: number, background: string) => ({
  create: { width, height, channels: 3 as const, background },
});

/**
 * A JPEG in place of a photograph: a hull on the water with a mark on it, elsewhere in each. The demonstration shows no
 * real craft and nobody.
 * @param place 0 or more: which of several pictures it is
 */
export function drawPicture(place: number): Promise<Buffer> {
  return sharp(block(WIDTH, HEIGHT, SKY))
    .composite([
      { input: block(WIDTH, HEIGHT / 2, WATER), top: HEIGHT / 2, left: 0 },
      { input: block(600, 150, HULL), top: 380, left: 300 },
      { input: block(40, 20, MARK), top: 400 + ((place * 37) % 100), left: 320 + ((place * 113) % 520) },
    ])
    .jpeg({ quality: 80 })
    .toBuffer();
}
