/**
 * Markup in which no text can be forgotten: what `html` is given as text is escaped, in attributes too, and made printable.
 * Only what is `Markup` goes in as it is, and that comes from here.
 */
import { type SafeHtml, html as template } from '@remix-run/html-template';
import { printable } from './printable.ts';

export type Markup = SafeHtml;
export type Part = Markup | string | number | readonly Part[];

/** Template tag of HTML and SVG. */
export function html(strings: TemplateStringsArray, ...parts: readonly Part[]): Markup {
  return template(strings, ...parts.map(shown));
}

type Shown = Markup | string | number | Shown[];

function shown(part: Part): Shown {
  if (typeof part === 'string') return printable(part);
  return isList(part) ? part.map(shown) : part;
}

function isList(part: Part): part is readonly Part[] {
  return Array.isArray(part);
}

export function joined(parts: readonly Markup[], between: ' ' | '\n' | '; '): Markup {
  return trusted(parts.join(between));
}

/** A string that is markup, or a style sheet, and holds no text of an author’s that is not escaped in it. */
export function trusted(markup: string): Markup {
  return template.raw`${markup}`;
}
