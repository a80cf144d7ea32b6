/** The words of an HTML sheet, read with a real parser. */
import { type DefaultTreeAdapterMap, parse } from 'parse5';
import type { Words } from './words.ts';

type Node = DefaultTreeAdapterMap['node'];

/** Elements whose words stand apart from those beside them; all others are of the line that they stand in. */
const apart = /^(p|div|dl|dt|dd|ul|li|table|caption|tr|t[dhr]|thead|tbody|h\d|section|header|footer|main)$/u;
/** Their text is not printed. */
const silent: ReadonlySet<string> = new Set(['head', 'style', 'script', 'title', 'template', 'svg']);

/** The words of the page: what stands in the head, the foot and the watermark is furniture. */
export function htmlWords(html: string): Words {
  const body: string[] = [];
  const furniture: string[] = [];
  const walk = (node: Node, repeated: boolean): void => {
    const into = repeated ? furniture : body;
    if (node.nodeName === '#text' && 'value' in node) into.push(`${into.pop() ?? ''}${node.value}`);
    if (silent.has(node.nodeName) || !('childNodes' in node)) return;
    const classes = 'attrs' in node ? (node.attrs.find(({ name }) => name === 'class')?.value ?? '') : '';
    const outside = repeated || node.nodeName === 'header' || node.nodeName === 'footer' || classes === 'watermark';
    const own = outside ? furniture : body;
    // A number at the head of a line is a word of its own.
    const block = apart.test(node.nodeName) || classes.split(' ').includes('number');
    if (block) own.push('');
    for (const child of node.childNodes) walk(child, outside);
    if (block) own.push('');
  };
  walk(parse(html), false);
  const filled = (pieces: readonly string[]) => pieces.filter((piece) => piece.trim() !== '');
  return { body: filled(body), furniture: filled(furniture) };
}
