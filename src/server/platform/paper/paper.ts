import PDFDocument from 'pdfkit';
import { PAPER_FONTS, type PaperFont, writable } from './paper-fonts.js';

type Structure = PDFKit.PDFStructureElement;

/** US Letter, in points of 1/72 inch. */
export const PAGE = { width: 612, height: 792, left: 48, right: 564, top: 84, bottom: 732 } as const;
export const WIDTH = PAGE.right - PAGE.left;

const INK = '#000000';

export interface PaperText {
  readonly font?: PaperFont;
  /** Points. */
  readonly size?: number;
  /** Points from the left edge of the page, and across. */
  readonly left?: number;
  readonly width?: number;
  readonly align?: 'left' | 'right';
  /** Of a heading cell: what it heads; a row unless it says so (ISO 32000-1, table 349). */
  readonly scope?: 'Row' | 'Column';
}

export interface PaperInfo {
  readonly title: string;
  readonly subject: string;
  /** BCP 47. */
  readonly language: string;
  /** RFC 3339: the date of making too, so that the same paper is the same bytes. */
  readonly asOf: string;
  /** Before the number of each page, as readers show it (ISO 32000-1, 12.4.2). */
  readonly pagePrefix?: string;
}

/** A picture as it is put on paper: JPEG or PNG, and what it shows for whoever does not see it. */
export interface PaperPicture {
  readonly content: Buffer;
  readonly alt: string;
  /** Points; it is fitted into them. */
  readonly width: number;
  readonly height: number;
}

/**
 * Black on white, tagged: whatever is written belongs to an element of the structure, in reading order, and what is only
 * drawn is marked as no part of it (ISO 32000-1, 14.8).
 */
export class Paper {
  readonly document: PDFKit.PDFDocument;
  private readonly root: Structure;

  constructor({ title, subject, language, asOf, pagePrefix }: PaperInfo) {
    const made = new Date(asOf);
    this.document = new PDFDocument({
      size: 'LETTER',
      margins: { left: PAGE.left, right: PAGE.left, top: PAGE.top, bottom: PAGE.height - PAGE.bottom },
      bufferPages: true,
      tagged: true,
      lang: language,
      displayTitle: true,
      pdfVersion: '1.7',
      // None: one opened by its path would be opened again at every change of typeface, as the library looks by name.
      font: '',
      info: {
        Title: writable(title),
        Subject: writable(subject),
        Producer: 'Incident desk',
        Creator: 'Incident desk',
        CreationDate: made,
        ModDate: made,
      },
    });
    for (const [name, file] of Object.entries(PAPER_FONTS)) this.document.registerFont(name, file);
    if (pagePrefix !== undefined) labelPages(this.document, pagePrefix);
    this.root = this.document.struct('Document');
    this.document.addStructure(this.root);
    this.document.fillColor(INK);
  }

  /** A part of the structure that holds others, such as a table, a row or a list. */
  group(type: string, within: Structure = this.root): Structure {
    const element = this.document.struct(type);
    within.add(element);
    return element;
  }

  /** Writes a text as an element of its own, where the pen is or at a height. */
  write(
    type: string,
    text: string,
    look: PaperText = {},
    within: Structure = this.root,
    y = this.document.y,
  ): void {
    // The types of the library do not know the option yet.
    const options: object = type === 'TH' ? { scope: look.scope ?? 'Row' } : {};
    const element = this.document.struct(type, options);
    within.add(element);
    // The blank at the end keeps words apart where a reader joins the lines.
    element.add(() => this.draw(`${text} `, look, y));
    element.end();
  }

  /** Shows a picture where the pen is, and moves the pen below it. */
  picture({ content, alt, width, height }: PaperPicture, left: number, within: Structure = this.root): void {
    const element = this.document.struct('Figure', { alt });
    within.add(element);
    const { y } = this.document;
    element.add(() => this.document.image(content, left, y, { fit: [width, height] }));
    element.end();
    this.document.y = y + height;
  }

  /** A drawing as one element, which is read out as `alt`. */
  drawing(alt: string, draw: () => void, within: Structure = this.root): void {
    const element = this.document.struct('Figure', { alt });
    within.add(element);
    element.add(draw);
    element.end();
  }

  /** An entry of the outline that readers show beside the pages, for this page. */
  bookmark(title: string): void {
    this.document.outline.addItem(writable(title));
  }

  /** What is no part of the text: rules, signs, heads and feet of pages. */
  artifact(type: 'Layout' | 'Pagination', draw: () => void): void {
    this.document.markContent('Artifact', { type });
    draw();
    this.document.endMarkedContent();
  }

  /** A rule from margin to margin, or between two points of its height. */
  rule(y: number, thickness: number, from: number = PAGE.left, to: number = PAGE.right): void {
    this.artifact('Layout', () => {
      this.document.rect(from, y - thickness / 2, to - from, thickness).fill(INK);
    });
  }

  /** Words at a place, outside of the structure: only within `artifact`. */
  draw(
    text: string,
    { font = 'plain', size = 10, left = PAGE.left, width = WIDTH, align = 'left' }: PaperText,
    y: number,
  ): void {
    this.document
      .font(font)
      .fontSize(size)
      .text(writable(text), left, y, { width, align, lineGap: size * 0.2 });
  }

  heightOf(text: string, { font = 'plain', size = 10, width = WIDTH }: PaperText = {}): number {
    return this.document
      .font(font)
      .fontSize(size)
      .heightOfString(writable(text), { width, lineGap: size * 0.2 });
  }

  /** Of one line, in points. */
  widthOf(text: string, { font = 'plain', size = 10 }: PaperText = {}): number {
    return this.document.font(font).fontSize(size).widthOfString(writable(text));
  }

  /** How many there are so far. */
  get pages(): number {
    return this.document.bufferedPageRange().count;
  }

  /** A new page, unless this much still fits on this one; whether there is one. */
  needs(height: number): boolean {
    const turns = this.document.y + height > PAGE.bottom;
    if (turns) this.document.addPage();
    return turns;
  }

  space(points: number): void {
    this.document.y += points;
  }

  /** Draws on every page, once they are all there, and ends the paper. */
  finish(draw: (page: number, pages: number) => void): PDFKit.PDFDocument {
    this.root.end();
    const count = this.pages;
    for (let page = 0; page < count; page += 1) {
      this.document.switchToPage(page);
      // The foot lies in the margin, where a text would begin another page.
      this.document.page.margins.bottom = 0;
      this.artifact('Pagination', () => draw(page + 1, count));
    }
    this.document.end();
    return this.document;
  }
}

/** The library writes no page labels; its catalog takes them as they are. */
function labelPages(document: PDFKit.PDFDocument, prefix: string): void {
  const catalog = (document as unknown as { _root: { data: Record<string, unknown> } })._root;
  // A String object becomes a string of the file; a bare one would become a name.
  catalog.data['PageLabels'] = { Nums: [0, { S: 'D', P: Object(prefix) as unknown }] };
}
