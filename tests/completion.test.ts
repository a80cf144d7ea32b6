/**
 * What stands in a step is offered at its place: every word of every step of library and corpus.
 */
import { AstUtils, type CstNode, CstUtils } from 'langium';
import { describe, expect, it } from 'vitest';
import type { CheckResult } from '../language/check.ts';
import { parse } from '../language/grammar/parse.ts';
import { symbolsOf } from '../language/resolve/symbols.ts';
import { completions } from '../server/lsp/completion.ts';
import { corpusFiles } from './corpus/files.ts';
import { libraryFiles } from './library.ts';

interface Parsed {
  readonly uri: string;
  readonly text: string;
  readonly ast: ReturnType<typeof parse>['ast'];
}

const parsed = (files: readonly { readonly uri: string; readonly text: string }[]): Parsed[] =>
  files.map(({ uri, text }) => ({ uri, text, ast: parse(text).ast }));

/** Library and corpus, each with the files that it is written for. */
const workspaces = [parsed(libraryFiles()), parsed(corpusFiles())];

function offering(files: readonly Parsed[]) {
  const symbols = new Map(files.map(({ uri, ast }) => [uri, symbolsOf(ast)]));
  const textOf = (uri: string) => files.find((file) => file.uri === uri)?.text ?? null;
  const options = { rules: [{ code: 'not-clamped', title: '' }], textOf, snippets: false, onlyNames: false };
  return (text: string, offset: number) =>
    completions(text, offset, { symbols } as unknown as CheckResult, options).map(({ label }) => label);
}

/** Words and marks of a step's line, as they are written. */
function leaves(node: CstNode): CstNode[] {
  return CstUtils.flattenCst(node)
    .filter((leaf) => !leaf.hidden && leaf.text.trim() !== '')
    .toArray();
}

/** Lines of steps outside of `only`, whose braces hold lines of their own. */
const linesOf = (file: Parsed) =>
  AstUtils.streamAllContents(file.ast)
    .filter((node) => node.$type === 'StepLine')
    .map((node) => node as unknown as { readonly steps: readonly { readonly $type: string }[]; $cstNode?: CstNode })
    .filter(({ steps, $cstNode }) => $cstNode !== undefined && steps.every(({ $type }) => $type !== 'OnlySteps'))
    .map((line) => ({ line, cst: line.$cstNode! }))
    .toArray();

describe.each(['the library', 'the corpus'])('completion in %s', (which) => {
  const files = workspaces[which === 'the library' ? 0 : 1]!;
  const offers = offering(files);

  it('offers every word that stands in a step', () => {
    const withheld = files.flatMap((file) =>
      linesOf(file).flatMap(({ line, cst }) => {
        const heads = new Set(line.steps.map((step) => (step as { $cstNode?: CstNode }).$cstNode?.offset));
        return leaves(cst).flatMap((leaf, index, all) => {
          const before = all[index - 1]?.text ?? '';
          if (!/^\p{L}/u.test(leaf.text)) return [];
          // A test has the name that it gives itself; a face is offered with its part.
          if (before === 'test' || before === '.') return [];
          // A second step on a line is not offered: every clause would stand among all verbs.
          if (index > 0 && heads.has(leaf.offset)) return [];
          const said = offers(file.text, leaf.offset);
          const is = (label: string) =>
            label === leaf.text || label.startsWith(`${leaf.text} `) || label.startsWith(`${leaf.text}.`);
          const place = all.slice(0, index).map(({ text }) => text);
          return said.some(is) ? [] : [`${place.join(' ')} <${leaf.text}>`];
        });
      }),
    );
    expect([...new Set(withheld)]).toEqual([]);
  });
});
