/** What a file of text is: text, a track of positions, or why it is not taken. */
export type TextVerdict = { readonly type: string } | { readonly refused: string };

const PAGE =
  /<\s*(?:!doctype\s+html|html|head|body|script|iframe|object|embed|svg|img|link|meta|style|form)\b/i;
/** What comes before the first element of XML: declaration, remarks, a type, in any order. */
const BEFORE_ROOT = /^(?:\s+|<\?[\s\S]*?\?>|<!--[\s\S]*?-->)+/;
const ROOT = /^<([A-Za-z_][\w.:-]*)/;

const WEB_PAGE =
  'This is a web page or a drawing with code in it (HTML, SVG), which could act on whoever opens it: ' +
  'send a picture of it, or print it to PDF.';

/**
 * Judges the beginning of a file that no reader of binary formats knows; null where it is no text.
 * @param head the first characters of the file, undefined where its bytes are not UTF-8
 * @example judgeEvidenceText('<html><body>') // { refused: 'This is a web page …' }
 * @example judgeEvidenceText('wind 12 kt, gusts 18') // { type: 'text/plain' }
 */
export function judgeEvidenceText(head: string | undefined): TextVerdict | null {
  if (head === undefined || /[\u0000-\u0008\u000e-\u001f]/.test(head)) return null;
  const text = head.replace(/^\ufeff/, '');
  if (text.startsWith('#!')) return { refused: 'This is a program: nothing that can be run is taken.' };
  if (PAGE.test(text)) return { refused: WEB_PAGE };
  const root = ROOT.exec(text.replace(BEFORE_ROOT, ''))?.[1];
  if (root === undefined) return { type: 'text/plain' };
  if (root === 'gpx') return { type: 'application/gpx+xml' };
  return { refused: 'Of XML only tracks are taken (GPX): send anything else as PDF.' };
}
