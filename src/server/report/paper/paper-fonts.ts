import { createRequire } from 'node:module';
import { type Font, openSync } from 'fontkit';

const require = createRequire(import.meta.url);
const fileOf = (name: string): string => require.resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`);

/**
 * Typefaces of paper, each embedded as far as it is used. The fonts that every PDF reader has know Western European
 * letters alone: they print Łódź as something else, without a word. DejaVu holds Latin, Greek, Cyrillic and more.
 */
export const PAPER_FONTS = {
  plain: fileOf('DejaVuSansCondensed'),
  bold: fileOf('DejaVuSansCondensed-Bold'),
  figures: fileOf('DejaVuSans-Bold'),
} as const;

export type PaperFont = keyof typeof PAPER_FONTS;

let opened: Font | undefined;

/**
 * A text as it can be printed: a letter that the typefaces do not hold is told by its number, since an empty box would
 * be taken for nothing. Control characters, which have no width, are left out.
 * @example writable('Łódź, 張') // 'Łódź, [U+5F35]'
 */
export function writable(text: string): string {
  const plain = text.normalize('NFC').replaceAll(/[\p{Cc}\p{Cf}]/gu, (one) => (one === '\n' ? one : ''));
  if (/^[\u0020-\u024f\n]*$/.test(plain)) return plain;
  const font = (opened ??= openSync(PAPER_FONTS.plain) as Font);
  return [...plain]
    .map((letter) => {
      const code = letter.codePointAt(0) ?? 0;
      const known = letter === '\n' || font.hasGlyphForCodePoint(code);
      return known ? letter : `[U+${code.toString(16).toUpperCase().padStart(4, '0')}]`;
    })
    .join('');
}

/** Whether a text, as it is printed, has letters that are told by their numbers. */
export function hasUnprintable(text: string): boolean {
  return /\[U\+[0-9A-F]{4,6}\]/.test(writable(text));
}
