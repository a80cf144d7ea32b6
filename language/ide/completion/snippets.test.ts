import { expect, test } from 'vitest';
import { checkFiles } from '../../db/workspace.ts';
import { isProblemCode } from '../../syntax/problem-code.ts';
import { snippets } from './snippets.ts';

/** The text that comes of a snippet when every gap is left as it is. */
function filled(body: string): string {
  const words = new Map<string, string>();
  const chosen = body
    .replace(/\$\{(\d+)\|([^,|]*)[^|]*\|\}/g, (_, gap: string, first: string) => `\${${gap}:${first}}`)
    .replace(/\$\{(\d+):([^}]*)\}/g, (_, gap: string, word: string) => {
      words.set(gap, word);
      return word;
    });
  return chosen.replace(/\$(\d+)/g, (_, gap: string) => words.get(gap) ?? '');
}

/** Where a snippet belongs. */
function surrounded(prefix: string, text: string): string {
  const procedure = (inside: string) => `procedure p "P" for f at s\n  revision A\n{\n${inside}\n}\n`;
  switch (prefix) {
    case 'shop':
    case 'family':
    case 'procedure':
    case 'job':
      return `${text}\n`;
    case 'test':
    case 'check':
      return procedure(`  stage t at b {\n    ${text}\n  }`);
    default:
      return procedure(text);
  }
}

test.each(snippets.map((snippet) => [snippet.name, snippet] as const))(
  '%s is read without an error of syntax',
  (_, { prefix, body }) => {
    const { diagnostics } = checkFiles([{ uri: 'a.rebuild', text: surrounded(prefix, filled(body)) }]);
    expect(diagnostics.filter(({ rule }) => isProblemCode(rule)).map(({ message }) => message)).toEqual([]);
  },
);
