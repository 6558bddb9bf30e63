import { setImmediate } from 'node:timers/promises';
import { Paper } from '../../platform/paper/paper.js';
import { tellZonedTime } from '../../../../shared/report/tell-value.js';
import type { Block } from './blocks.js';
import { composeCover } from './compose-cover.js';
import { composePaper } from './compose-paper.js';
import { drawBlock } from './draw-blocks.js';
import { drawCover } from './draw-cover.js';
import { nameThings, type Names, sectionsOf } from './name-things.js';
import { drawFrame } from './page-frame.js';
import { PageIndex } from './page-index.js';
import { pagePrefix, type PaperMatter } from './paper-matter.js';

/**
 * The record as paper, as far as it leaves: cover, contents, its parts, an index of names. The same packet is the same
 * bytes. It is drawn in slices, so that whoever calls for help meanwhile does not wait for it.
 * @returns the PDF as a stream
 */
export async function drawPaper(matter: PaperMatter): Promise<PDFKit.PDFDocument> {
  const { about, plan, timeZone } = matter;
  const names = nameThings(plan.record);
  const cover = composeCover(matter, names);
  const prefix = pagePrefix(about);
  const paper = new Paper({
    title: `${cover.title}, made for ${about.recipient.name}`,
    subject: about.purpose,
    language: 'en-US',
    asOf: about.madeAt,
    pagePrefix: `${prefix}-`,
  });
  paper.bookmark('Cover');
  drawCover(paper, cover);
  // The contents have a page of their own, which is filled in at the end.
  paper.document.addPage();
  paper.bookmark('Contents');
  paper.write('H2', 'Contents', { font: 'bold', size: 15 });
  const contents = paper.group('TOC');
  const below = paper.document.y;
  const contentsPage = paper.pages;
  paper.document.addPage();
  const parts: Listed[] = [];
  const found = new PageIndex(indexed(plan.record, names));
  let rested = performance.now();
  for (const block of composePaper(matter, names)) {
    if (performance.now() - rested > LONGEST_TURN_MS) {
      await setImmediate();
      rested = performance.now();
    }
    drawNext(paper, block, parts, found);
  }
  drawIndex(paper, found, parts);
  drawContents(paper, contents, parts, contentsPage, below);
  const frame = {
    reference: about.reference,
    madeFor: cover.madeFor,
    asOf: tellZonedTime(plan.record.asOf, timeZone),
    prefix,
  };
  return paper.finish((page, pages) => {
    const on = parts.filter((one) => one.page <= page && one.until >= page).map(({ title }) => title);
    drawFrame(paper, frame, page, pages, on);
  });
}

/** Whom and what a reader looks for: people, officers, whoever gave a statement, and craft. */
function indexed(record: PaperMatter['plan']['record'], { people, officers, craft }: Names): string[] {
  const { statements: { statements = [] } = {} } = sectionsOf(record);
  const witnesses = statements.flatMap(({ name }) => name ?? []);
  return [...new Set([...people.values(), ...officers.values(), ...witnesses, ...craft.values()])];
}

/** So long others wait at most, but for one block. */
const LONGEST_TURN_MS = 20;

/** A part of the file, with the pages on which it begins and ends. */
interface Listed {
  readonly title: string;
  readonly page: number;
  until: number;
}

function drawNext(paper: Paper, block: Block, parts: Listed[], found: PageIndex): void {
  const from = paper.pages;
  drawBlock(paper, block);
  if (block.kind === 'part') {
    parts.push({ title: block.title, page: paper.pages, until: paper.pages });
    paper.bookmark(block.title);
  }
  const part = parts.at(-1);
  if (part !== undefined) part.until = paper.pages;
  found.note(block, from, paper.pages);
}

function drawIndex(paper: Paper, found: PageIndex, parts: Listed[]): void {
  const entries = found.entries();
  if (entries.length === 0) return;
  const rows = entries.map(({ name, pages }) => ({ label: name, text: pages }));
  drawNext(paper, { kind: 'part', title: 'Index of people and craft' }, parts, found);
  drawBlock(paper, {
    kind: 'text',
    text: 'Pages on which each stands by the name that it has in this file.',
  });
  drawBlock(paper, { kind: 'rows', rows });
}

function drawContents(
  paper: Paper,
  contents: PDFKit.PDFStructureElement,
  parts: readonly Listed[],
  page: number,
  below: number,
): void {
  paper.document.switchToPage(page - 1);
  paper.document.y = below + 8;
  for (const { title, page: on } of parts) {
    const line = paper.group('TOCI', contents);
    const top = paper.document.y;
    paper.write('Reference', title, { size: 11, width: 430 }, line, top);
    paper.write(
      'Lbl',
      String(on),
      { size: 11, font: 'bold', left: 494, width: 70, align: 'right' },
      line,
      top,
    );
    line.end();
    paper.space(5);
  }
  contents.end();
}
