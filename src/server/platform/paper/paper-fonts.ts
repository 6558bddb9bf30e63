import { createRequire } from 'node:module';
import { type Font, openSync } from 'fontkit';

const require = createRequire(import.meta.url);

/**
 * Typefaces of paper, each embedded as far as it is used. The fonts that every PDF reader has know Western European
 * letters alone: they print Łódź as something else, without a word. DejaVu holds Latin, Greek, Cyrillic and more.
 */
const FILES = { plain: 'DejaVuSansCondensed', bold: 'DejaVuSansCondensed-Bold' } as const;

export type PaperFont = keyof typeof FILES;

const fileOf = (name: PaperFont): string => require.resolve(`dejavu-fonts-ttf/ttf/${FILES[name]}.ttf`);

/**
 * The files of the typefaces. Each paper opens them anew: an opened typeface remembers letters of the paper before it,
 * and then tells readers of the next one other letters than it shows.
 */
export const PAPER_FONTS: Readonly<Record<PaperFont, string>> = {
  plain: fileOf('plain'),
  bold: fileOf('bold'),
};

let opened: Font | undefined;

/**
 * A text as it can be printed: a letter that the typefaces do not hold is told by its number, since an empty box would
 * be taken for nothing. Control characters, which have no width, are left out.
 * @example writable('Łódź, 張') // 'Łódź, [U+5F35]'
 */
export function writable(text: string): string {
  const plain = text
    .normalize('NFC')
    .replaceAll('\t', ' ')
    .replaceAll(/[\p{Cc}\p{Cf}]/gu, (one) => (one === '\n' ? one : ''));
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
