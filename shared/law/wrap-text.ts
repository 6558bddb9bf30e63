/**
 * Breaks a text at spaces so that no line is wider than `width`; a word that is wider than that, such as a web
 * address, keeps a line of its own.
 * @param first what the first line begins with; the lines after it are indented by the width of `first`
 * @example wrapText('- ', 'the owner, if the operator cannot', 20)
 * // ['- the owner, if the', '  operator cannot']
 */
export function wrapText(first: string, text: string, width = 80): string[] {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of text.split(/\s+/).filter(Boolean)) {
    if (!empty && line.length + 1 + word.length > width) {
      lines.push(line);
      line = ' '.repeat(first.length);
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line];
}
