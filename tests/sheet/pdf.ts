/** A printed PDF read back with pdf.js: words, tags, outline, fonts. */
import { getDocument, type PDFDocumentProxy, type PDFPageProxy, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Words } from './words.ts';

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

/** The words of a PDF: those that are tagged as content, and apart from them what stands on each page as furniture. */
export async function pdfWords(bytes: Uint8Array): Promise<Words> {
  return withPdf(bytes, async (document) => {
    const body: string[] = [];
    const furniture: string[] = [];
    for (const page of await pagesOf(document)) {
      const { body: own, furniture: repeated } = await pageWords(page);
      body.push(...own);
      furniture.push(repeated.join(' '));
    }
    return { body, furniture };
  });
}

/** One piece for each marked sequence: page heads, feet and watermark are marked as artifacts, so none is guessed. */
async function pageWords(page: PDFPageProxy): Promise<Words> {
  const { items } = await page.getTextContent({ includeMarkedContent: true });
  const body: string[] = [];
  const furniture: string[] = [];
  const open: string[] = [];
  for (const item of items) {
    if ('type' in item) {
      if (item.type === 'endMarkedContent') open.pop();
      else {
        open.push((item as { readonly tag?: string }).tag ?? '');
        if (!open.includes('Artifact')) body.push('');
      }
    } else {
      const text = item.str + (item.hasEOL ? ' ' : '');
      if (open.includes('Artifact')) furniture.push(text);
      else body.push(`${body.pop() ?? ''}${text}`);
    }
  }
  return { body: body.filter((piece) => piece.trim() !== ''), furniture };
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
