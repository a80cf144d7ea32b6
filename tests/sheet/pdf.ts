/** A printed PDF read back with pdf.js: words, tags, outline, fonts. */
import { getDocument, type PDFDocumentProxy, type PDFPageProxy, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Piece, Words } from './words.ts';

/** Opens a PDF, hands it to `use`, and lets go of it again. */
export async function withPdf<T>(bytes: Uint8Array, use: (document: PDFDocumentProxy) => Promise<T>): Promise<T> {
  const task = getDocument({
    // pdf.js takes the buffer away from its owner.
    data: new Uint8Array(bytes),
    useSystemFonts: false,
    verbosity: VerbosityLevel.ERRORS,
    fontExtraProperties: true,
  });
  try {
    return await use(await task.promise);
  } finally {
    await task.destroy();
  }
}

/** All pages, in order. */
export async function pagesOf(document: PDFDocumentProxy): Promise<PDFPageProxy[]> {
  const pages: PDFPageProxy[] = [];
  for (let number = 1; number <= document.numPages; number++) pages.push(await document.getPage(number));
  return pages;
}

/** The words of a PDF: those that are tagged as content, and apart from them what is on each page as furniture. */
export async function pdfWords(bytes: Uint8Array): Promise<Words> {
  return withPdf(bytes, async (document) => {
    const body: Piece[] = [];
    const drawings: string[] = [];
    const furniture: string[] = [];
    for (const page of await pagesOf(document)) {
      const own = await pageWords(page);
      body.push(...own.body);
      drawings.push(...own.drawings);
      furniture.push(own.furniture.join(' '));
    }
    return { body, drawings, furniture };
  });
}

/** One piece for each marked sequence: page heads, feet and watermark are marked as artifacts, so none is guessed. */
async function pageWords(page: PDFPageProxy): Promise<Words> {
  const { items } = await page.getTextContent({ includeMarkedContent: true });
  const headings = new Set((await contentsOf(page, isHeading)).flat());
  const figures = await contentsOf(page, isFigure);
  const body: Piece[] = [];
  const drawings = figures.map(() => '');
  const furniture: string[] = [];
  const open: { readonly tag: string; readonly id: string }[] = [];
  for (const item of items) {
    const artifact = open.some(({ tag }) => tag === 'Artifact');
    const figure = figures.findIndex((ids) => open.some(({ id }) => ids.includes(id)));
    if ('type' in item) {
      if (item.type === 'endMarkedContent') open.pop();
      else {
        const { tag = '', id } = item as { readonly tag?: string; readonly id: string | null };
        open.push({ tag, id: id ?? '' });
        // What is marked within a heading, and has no id of its own, is of the heading.
        const heading = open.some((one) => headings.has(one.id));
        if (!artifact && tag !== 'Artifact') body.push({ text: '', heading });
      }
    } else {
      const text = item.str + (item.hasEOL ? ' ' : '');
      if (artifact) furniture.push(text);
      else if (figure >= 0) drawings[figure] += text;
      else {
        const last = body.pop() ?? { text: '', heading: false };
        body.push({ ...last, text: last.text + text });
      }
    }
  }
  return {
    body: body.filter(({ text }) => text.trim() !== ''),
    // Boxes to write in, and the code on the front, have no words.
    drawings: drawings.filter((text) => text.trim() !== ''),
    furniture,
  };
}

const isHeading = (role: string) => /^H\d?$/u.test(role);
export const isFigure = (role: string) => role === 'Figure';

/** For each element of such a role, in the order of the tree: ids of the marked contents under it. */
export async function contentsOf(page: PDFPageProxy, is: (role: string) => boolean): Promise<string[][]> {
  const ids = ({ type, id, children = [] }: TreeNode): string[] =>
    type === 'content' && id !== undefined ? [id] : children.flatMap(ids);
  const found = (node: TreeNode): string[][] =>
    is(node.role ?? '') ? [ids(node)] : (node.children ?? []).flatMap(found);
  const tree = (await page.getStructTree()) as TreeNode | null;
  return tree === null ? [] : found(tree);
}

/** An element of the tag tree with the text under it. */
export interface Tag {
  readonly role: string;
  readonly alt: string | null;
  readonly text: string;
  readonly children: readonly Tag[];
}

interface TreeNode {
  readonly role?: string;
  readonly alt?: string;
  readonly id?: string;
  readonly type?: string;
  readonly children?: readonly TreeNode[];
}

/** The tag tree of one page. */
export async function tagsOf(page: PDFPageProxy): Promise<Tag | null> {
  const tree = (await page.getStructTree()) as TreeNode | null;
  const { items } = await page.getTextContent({ includeMarkedContent: true });
  const texts = new Map<string, string>();
  const open: (string | null)[] = [];
  for (const item of items) {
    if ('type' in item) {
      if (item.type === 'endMarkedContent') open.pop();
      else open.push(item.id ?? null);
    } else {
      const id = open.findLast((one) => one !== null);
      if (id != null) texts.set(id, (texts.get(id) ?? '') + item.str);
    }
  }
  const tag = (node: TreeNode): Tag => {
    const children = (node.children ?? []).filter(({ role }) => role !== undefined).map(tag);
    const text = (one: TreeNode): string =>
      one.type === 'content' ? (texts.get(one.id ?? '') ?? '') : (one.children ?? []).map(text).join(' ');
    return { role: node.role ?? '', alt: node.alt ?? null, text: text(node), children };
  };
  return tree === null ? null : tag(tree);
}

/** All tags of a tree, from the root down. */
export function allTags(tag: Tag | null): Tag[] {
  return tag === null ? [] : [tag, ...tag.children.flatMap(allTags)];
}

/** Titles of all bookmarks, in order, those within others after them. */
export async function outlineOf(document: PDFDocumentProxy): Promise<string[]> {
  type Entry = Awaited<ReturnType<PDFDocumentProxy['getOutline']>>[number];
  const titles = (entries: readonly Entry[]): string[] =>
    entries.flatMap(({ title, items }) => [title, ...titles(items)]);
  return titles((await document.getOutline()) ?? []);
}
