import type { Block } from './blocks.js';

/** On which pages of the paper a name stands, found as the pages are drawn. */
export class PageIndex {
  private readonly pages = new Map<string, Set<number>>();

  constructor(private readonly names: readonly string[]) {}

  /** Notes every name in a piece that was drawn from one page to another, the first being 1. */
  note(block: Block, from: number, to: number): void {
    const text = textOf(block);
    for (const name of this.names) {
      if (!text.includes(name)) continue;
      const pages = this.pages.get(name) ?? new Set<number>();
      for (let page = from; page <= to; page += 1) pages.add(page);
      this.pages.set(name, pages);
    }
  }

  /** Each name that was found, by the alphabet, with its pages. */
  entries(): { name: string; pages: string }[] {
    return [...this.pages]
      .sort(([one], [other]) => one.localeCompare(other, 'en'))
      .map(([name, pages]) => ({ name, pages: runsOf([...pages].sort((one, other) => one - other)) }));
  }
}

/** `runsOf([3, 4, 5, 9])` is `'3–5, 9'`. */
export function runsOf(pages: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const page of pages) {
    const last = runs.at(-1);
    if (last !== undefined && page === last[1] + 1) last[1] = page;
    else runs.push([page, page]);
  }
  return runs.map(([from, to]) => (from === to ? String(from) : `${from}–${to}`)).join(', ');
}

function textOf(block: Block): string {
  switch (block.kind) {
    case 'rows':
      return block.rows.map(({ text, known = '' }) => `${text}\n${known}`).join('\n');
    case 'table':
      return block.rows.flat().join('\n');
    case 'text':
      return block.text;
    case 'list':
      return block.items.join('\n');
    case 'picture':
      return [block.title, block.caption, ...block.lines].join('\n');
    case 'sketch':
      return block.lines.join('\n');
    case 'map':
    case 'sign':
      return '';
    default:
      return block.title;
  }
}
