// What XML 1.0 (2.2) cannot hold: controls but tab and ends of lines, halves of characters, two signs that are none.
const UNHOLDABLE = /[\p{Surrogate}\ufffe\uffff]|(?![\t\n\r])[\u0000-\u001f]/gu;

/**
 * A text as a workbook can hold it: one sign that it cannot hold, and no spreadsheet opens any of it.
 * @example sheetText('a\uffffb') // 'a\ufffdb'
 */
export function sheetText<T>(cell: T): T | string {
  return typeof cell === 'string' ? cell.replaceAll(UNHOLDABLE, '\ufffd') : cell;
}
