import { type DefaultTreeAdapterMap, parse } from 'parse5';

type Node = DefaultTreeAdapterMap['node'];
type Element = DefaultTreeAdapterMap['element'];

const isAddress = (name: string) => /^(?:href|src|xlink:href|action|formaction|data)$/iu.test(name);

/** Where an address leads, by its scheme; `#` stays on the page. */
function addressOf({ tagName }: Element, value: string): string {
  return `${tagName} to ${value.match(/^(?:#|[a-z][-+.a-z0-9]*:|)/iu)![0].toLowerCase()}`;
}

/** What a page is made of: its elements, their attributes as `element.attribute`, and where they lead. */
export function madeOf(html: string): Set<string> {
  const found = new Set<string>();
  for (const element of elementsOf(parse(html))) {
    found.add(element.tagName);
    for (const { name, value } of element.attrs) {
      found.add(`${element.tagName}.${name}`);
      if (isAddress(name)) found.add(addressOf(element, value));
    }
  }
  return found;
}

/**
 * What no author may bring into a page: an element or attribute that a page of the library has not, what runs, and
 * what leads out of it. Null: nothing of that.
 */
export function intruder(html: string, usual: ReadonlySet<string>): string | null {
  for (const element of elementsOf(parse(html))) {
    if (!usual.has(element.tagName)) return `element ${element.tagName}`;
    for (const { name, value } of element.attrs) {
      if (!usual.has(`${element.tagName}.${name}`)) return `attribute ${element.tagName}.${name}`;
      if (/^on/iu.test(name)) return `attribute ${element.tagName}.${name}`;
      if (isAddress(name) && !usual.has(addressOf(element, value))) return addressOf(element, value);
    }
  }
  return null;
}

function* elementsOf(node: Node): Iterable<Element> {
  if ('tagName' in node) yield node;
  if ('childNodes' in node) for (const child of node.childNodes) yield* elementsOf(child);
}
