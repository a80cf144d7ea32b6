/** The words of an HTML sheet, read with a real parser. */
import { type DefaultTreeAdapterMap, parse, parseFragment } from 'parse5';
import type { Piece, Words } from './words.ts';

type Node = DefaultTreeAdapterMap['node'];

/** Elements whose words are separate from those beside them; all others belong to the line that they are in. */
const apart = /^(p|div|dl|dt|dd|ul|li|table|caption|tr|t[dhr]|thead|tbody|h\d|section|header|footer|main)$/u;
/** Their text is not printed. */
const silent: ReadonlySet<string> = new Set(['head', 'style', 'script', 'title', 'template']);

/** The words of the page: the text of head, foot and watermark is furniture, and drawings are kept apart. */
export function htmlWords(html: string): Words {
  const body: Piece[] = [];
  const drawings: string[] = [];
  const furniture: string[] = [];
  const walk = (node: Node, { repeated, heading, drawn }: Inside): void => {
    if (node.nodeName === '#text' && 'value' in node) {
      if (repeated) furniture.push((furniture.pop() ?? '') + node.value);
      else if (drawn) drawings.push(`${drawings.pop() ?? ''}${node.value} `);
      else body.push({ text: (body.pop()?.text ?? '') + node.value, heading });
    }
    if (silent.has(node.nodeName) || !('childNodes' in node)) return;
    const classes = 'attrs' in node ? (node.attrs.find(({ name }) => name === 'class')?.value ?? '') : '';
    const inside = {
      // The code on the front, and the units that are over their boxes on paper and on a screen, say nothing more.
      repeated:
        repeated ||
        node.nodeName === 'header' ||
        node.nodeName === 'footer' ||
        ['watermark', 'units', 'qr'].includes(classes),
      heading: heading || /^h\d$/u.test(node.nodeName),
      drawn: drawn || node.nodeName === 'svg',
    };
    if (inside.drawn && !drawn && !inside.repeated) drawings.push('');
    // A number at the head of a line is a word of its own.
    const block = !inside.drawn && (apart.test(node.nodeName) || classes.split(' ').includes('number'));
    const part = (of: Inside) => {
      if (!block) return;
      if (inside.repeated) furniture.push('');
      else body.push({ text: '', heading: of.heading });
    };
    part(inside);
    for (const child of node.childNodes) walk(child, inside);
    part({ repeated, heading, drawn });
  };
  walk(parse(html), { repeated: false, heading: false, drawn: false });
  return {
    body: body.filter(({ text }) => text.trim() !== ''),
    drawings,
    furniture: furniture.filter((piece) => piece.trim() !== ''),
  };
}

/** The ancestor that a node is in. */
interface Inside {
  readonly repeated: boolean;
  readonly heading: boolean;
  readonly drawn: boolean;
}

/** What is written in a drawing, text by text. */
export function drawnTexts(svg: string): string[] {
  const texts: string[] = [];
  const walk = (node: Node): void => {
    if (node.nodeName === '#text' && 'value' in node) texts.push(node.value);
    if (node.nodeName === 'title' || node.nodeName === 'desc' || !('childNodes' in node)) return;
    for (const child of node.childNodes) walk(child);
  };
  walk(parseFragment(svg));
  return texts.filter((text) => text.trim() !== '');
}
