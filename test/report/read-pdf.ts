import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** One element of the structure, with what it holds as text. */
export interface Tag {
  readonly role: string;
  readonly text: string;
  readonly kids: readonly Tag[];
}

export interface ReadPdf {
  readonly pages: number;
  readonly title: string | undefined;
  readonly language: string | undefined;
  readonly isTagged: boolean;
  /** What each page holds outside and inside of the structure, in the order in which it is drawn. */
  readonly texts: readonly string[];
  /** What the structure holds, page after page, in reading order. */
  readonly tags: readonly Tag[];
  /** Words that are in no element of the structure: heads and feet. */
  readonly untagged: string;
  /** What readers call each page, and the outline that they show beside them. */
  readonly labels: readonly string[];
  readonly outline: readonly string[];
  /** Names of the fonts, each with whether its shapes are in the file. */
  readonly fonts: ReadonlyMap<string, boolean>;
}

/** Reads a PDF with another library than the one that wrote it. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const document = await getDocument({ data: new Uint8Array(bytes), useSystemFonts: false, verbosity: 0 })
    .promise;
  const { info } = await document.getMetadata();
  const facts = info as { Title?: string; Language?: string };
  const read = await Promise.all(
    Array.from({ length: document.numPages }, (_, page) => readPage(document, page + 1)),
  );
  const mark = await document.getMarkInfo();
  const labels = await document.getPageLabels();
  const outline = (await document.getOutline()) as { title: string }[] | null;
  await document.destroy();
  return {
    pages: read.length,
    title: facts.Title,
    language: facts.Language,
    isTagged: mark?.Marked === true,
    texts: read.map(({ text }) => text),
    tags: read.flatMap(({ tags }) => tags),
    untagged: read.map(({ untagged }) => untagged).join(' '),
    labels: labels ?? [],
    outline: (outline ?? []).map(({ title }) => title),
    fonts: new Map(read.flatMap(({ fonts }) => fonts)),
  };
}

interface Node {
  readonly role?: string;
  readonly children?: readonly (Node | { readonly type: string; readonly id: string })[];
}

async function readPage(document: PDFDocumentProxy, number: number) {
  const page = await document.getPage(number);
  const { items } = await page.getTextContent({ includeMarkedContent: true });
  const byId = new Map<string, string>();
  const open: (string | null)[] = [];
  let untagged = '';
  let text = '';
  for (const item of items) {
    if ('str' in item) {
      const id = open.findLast((one) => one !== null) ?? null;
      const words = `${item.str}${item.hasEOL ? ' ' : ''}`;
      text += words;
      if (id === null) untagged += words;
      else byId.set(id, (byId.get(id) ?? '') + words);
    } else if (item.type === 'endMarkedContent') open.pop();
    else open.push(item.id ?? null);
  }
  const tree = (await page.getStructTree()) as Node | null;
  await page.getOperatorList();
  return { text: tidy(text), untagged: tidy(untagged), tags: tagsOf(tree, byId), fonts: fontsOf(page) };
}

function tagsOf(node: Node | null, texts: ReadonlyMap<string, string>): Tag[] {
  return (node?.children ?? []).flatMap((child) => {
    if (!('children' in child)) return [];
    const kids = tagsOf(child, texts);
    const own = (child.children ?? []).flatMap((one) => ('id' in one ? [texts.get(one.id) ?? ''] : []));
    return [{ role: child.role ?? '', text: tidy(own.join(' ')), kids }];
  });
}

interface LoadedFont {
  readonly name?: string;
  readonly missingFile?: boolean;
}

function fontsOf(page: Awaited<ReturnType<PDFDocumentProxy['getPage']>>): [string, boolean][] {
  const fonts: [string, boolean][] = [];
  for (const [, value] of page.commonObjs as Iterable<[string, LoadedFont | null]>) {
    if (value?.name !== undefined) fonts.push([value.name, value.missingFile !== true]);
  }
  return fonts;
}

function tidy(text: string): string {
  return text.replaceAll(/\s+/g, ' ').trim();
}

/** Every element of a role, at whatever depth, in reading order. */
export function tagsCalled(role: string, tags: readonly Tag[]): Tag[] {
  return tags.flatMap((tag) => [...(tag.role === role ? [tag] : []), ...tagsCalled(role, tag.kids)]);
}

/** Everything that a tag holds, as it is read out. */
export function readOut({ text, kids }: Tag): string {
  return [text, ...kids.map(readOut)].filter((one) => one !== '').join(' ');
}
