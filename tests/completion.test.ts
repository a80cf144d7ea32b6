/**
 * What a step contains is offered at its place: every word of every step of library and corpus. And what is offered after
 * a word of a step is read there, and means something.
 */
import { AstUtils, type CstNode, CstUtils } from 'langium';
import { describe, expect, it } from 'vitest';
import { resolve } from '../language/db/resolve.ts';
import type { CheckResult } from '../language/db/workspace.ts';
import { completionsAt, completionsIn, type Suggestion } from '../language/ide/completion/completions.ts';
import { positionAt } from '../language/ide/offset.ts';
import { snapshotOf } from '../language/ide/snapshot.ts';
import { english } from '../language/say/say.ts';
import { collectSymbols } from '../language/semantics/symbols.ts';
import { isProcedure, isSequence, type Procedure, type StepLine } from '../language/syntax/generated/ast.ts';
import { RebuildGrammar } from '../language/syntax/generated/grammar.ts';
import { parse } from '../language/syntax/parse.ts';
import { corpusFiles } from './corpus/files.ts';
import { libraryFiles } from './library.ts';
import { langiumParse } from './parse/reference.ts';

interface Parsed {
  readonly uri: string;
  readonly text: string;
  readonly ast: ReturnType<typeof parse>['ast'];
  /** With its concrete syntax. */
  readonly tree: ReturnType<typeof langiumParse>['ast'];
}

const parsed = (files: readonly { readonly uri: string; readonly text: string }[]): Parsed[] =>
  files.map(({ uri, text }) => ({ uri, text, ast: parse(text).ast, tree: langiumParse(text).ast }));

/** Library and corpus, each with the files that it is written for. */
const workspaces = [parsed(libraryFiles()), parsed(corpusFiles())];

function offering(files: readonly Parsed[]) {
  const symbols = new Map(files.map(({ uri, ast }) => [uri, collectSymbols(ast)]));
  const declarations = [...symbols].flatMap(([uri, all]) => all.map(({ kind, name }) => ({ uri, kind, name })));
  const textOf = (uri: string) => files.find((file) => file.uri === uri)?.text ?? null;
  const snapshot = {
    result: { symbols, declarations, procedureOf: () => null } as unknown as CheckResult,
    findingsIn: () => [],
    textOf,
  };
  return (text: string, offset: number) => completionsIn(snapshot, text, offset, options);
}

const options = { snippets: false, onlyNames: false };

const keywords = new Set(
  AstUtils.streamAllContents(RebuildGrammar())
    .filter((node) => node.$type === 'Keyword')
    .map((node) => (node as unknown as { readonly value: string }).value),
);

/** Words and marks of a step's line, as they are written. */
function leaves(node: CstNode): CstNode[] {
  return CstUtils.flattenCst(node)
    .filter((leaf) => !leaf.hidden && leaf.text.trim() !== '')
    .toArray();
}

/** Lines of steps outside of `only`, whose braces hold lines of their own. */
const linesOf = (file: Parsed) =>
  AstUtils.streamAllContents(file.tree)
    .filter((node) => node.$type === 'StepLine')
    .map((node) => node as StepLine)
    .filter(({ steps, $cstNode }) => $cstNode !== undefined && steps.every(({ $type }) => $type !== 'OnlySteps'))
    .map((line) => ({ line, cst: line.$cstNode! }))
    .toArray();

/** Whether a word is a name that its author makes up there: of a point, of what is written down, of a figure. */
function isMadeUp(leaf: CstNode, index: number, all: readonly CstNode[]): boolean {
  const node = leaf.astNode;
  const isName = 'name' in node && (node.name as unknown) === leaf.text;
  if (node.$type === 'RecordStep' && isName) return all[index - 1]?.text === 'record';
  if (node.$type === 'PointClause' && isName) return all[index - 1]?.text === 'point';
  if (node.$type === 'Operand') return isName;
  return node.$type === 'NameRef' && node.$container?.$type === 'Condition';
}

/** What may have to follow a word before its step is whole, by what the phrase says follows. */
const amounts = [' 60 N·m', ' 5 mm', ' 5 min', ' 20 bar', ' 50 °C', ' 50 %', ' 16..80 N·m'];
const endings = ['', ')', ' times)', ' "x"', amounts[0]!, ' because "x"'];

/** Names of the author's own. */
const madeUp = [' own', ' own less other'];

/** Lines that begin so and are read; of a figure in each of several units. Empty: whatever follows, it is not read. */
function whole(line: string, offersAt: (line: string) => readonly Suggestion[], depth = 3): string[] {
  const items = depth === 0 ? [] : firstOfEach(offersAt(line));
  const named = items.filter(({ kind }) => kind !== 'verb' && kind !== 'word').map(({ label }) => ` ${label}`);
  const read = [...endings, ...named, ...(/ (?:point|worked out as)$/u.test(line) ? madeUp : [])].filter((ending) =>
    isRead(line + ending),
  );
  if (read.length > 0)
    return read.flatMap((ending) => (ending === amounts[0] ? amounts : [ending]).map((one) => line + one));
  // Further words come first.
  for (const { label } of items.slice(0, 2)) {
    const found = whole(`${line} ${label}`, offersAt, depth - 1);
    if (found.length > 0) return found;
  }
  return [];
}

/** Whether a line in a stage is read. */
const isRead = (line: string) => parse(`procedure p for f at s {\n stage t {\n${line}\n}\n}\n`).problems.length === 0;

/** Every word of the language, and one name of each kind. */
function firstOfEach(items: readonly Suggestion[]): Suggestion[] {
  const seen = new Set<string>();
  return items.filter(({ label, kind, names }) => {
    const key = kind === 'verb' || kind === 'word' ? label.replace(/^not .*/u, 'not') : `${kind} ${names}`;
    return kind !== 'parameter' && !seen.has(key) && seen.add(key);
  });
}

/** A word of a line by what it is, so that lines of one kind are tried once. */
const shapeOf = (text: string) =>
  /^\d/u.test(text)
    ? '1'
    : text.startsWith('"')
      ? '"'
      : keywords.has(text)
        ? text
        : /^\p{L}/u.test(text)
          ? 'name'
          : text;

describe.each(['the library', 'the corpus'])('completion in %s', (which) => {
  const files = workspaces[which === 'the library' ? 0 : 1]!;
  const offers = offering(files);

  it('offers every word that is in a step, whatever is known of the unit there', () => {
    const library = snapshotOf(files);
    // A file of the corpus is a world of its own, with the shop of all.
    const shop = files.find(({ uri }) => uri === 'shop.rebuild');
    const withheld = files.flatMap((file) => {
      const snapshot = shop === undefined || shop === file ? library : snapshotOf([shop, file]);
      return linesOf(file).flatMap(({ line, cst }) => {
        const heads = new Set(line.steps.map((step) => step.$cstNode?.offset));
        return leaves(cst).flatMap((leaf, index, all) => {
          const before = all[index - 1]?.text ?? '';
          if (!/^\p{L}/u.test(leaf.text)) return [];
          // A test has the name that it gives itself; a face is offered with its part.
          if (before === 'test' || before === '.') return [];
          if (isMadeUp(leaf, index, all)) return [];
          // A second step on a line is not offered: every clause would show up among all verbs.
          if (index > 0 && heads.has(leaf.offset)) return [];
          const position = positionAt(file.text, leaf.offset);
          const said = completionsAt(snapshot, file.uri, position, options).map(({ label }) => label);
          const is = (label: string) =>
            label === leaf.text || label.startsWith(`${leaf.text} `) || label.startsWith(`${leaf.text}.`);
          const place = all.slice(0, index).map(({ text }) => text);
          return said.some(is) ? [] : [`${place.join(' ')} <${leaf.text}>`];
        });
      });
    });
    expect([...new Set(withheld)]).toEqual([]);
  });

  // The files of the corpus are each a world of their own, with the same names in many: tried together they see each other's.
  it.runIf(which === 'the library')('offers nothing that is not read or means nothing', () => {
    const tried = new Set<string>();
    const unread: string[] = [];
    /** Lines that were tried, by file, each with what it tries. */
    const added = new Map<Parsed, { readonly said: string; readonly line: string }[]>();
    for (const file of files) {
      const procedure = file.tree.declarations.find(({ $type }) => $type === 'Procedure') as Procedure | undefined;
      if (procedure === undefined) continue;
      const head = file.text.slice(procedure.$cstNode!.offset, file.text.indexOf('{', procedure.$cstNode!.offset) + 1);
      const offersAt = (line: string) => {
        const text = `${head}\n stage tried-here {\n${line} `;
        return offers(text, text.length);
      };
      for (const { line: node, cst } of linesOf(file)) {
        // What a sequence is called with is known where it is called.
        if (AstUtils.getContainerOfType(node, isSequence) !== undefined) continue;
        if (AstUtils.getContainerOfType(node, isProcedure) !== procedure) continue;
        const all = leaves(cst);
        // How many lists a sequence takes, and which steps there are for a hazard to name, only the check knows.
        if (node.steps.some(({ $type }) => $type === 'Call' || $type === 'Hazard')) continue;
        for (const [index, leaf] of all.entries()) {
          // `body` of `body.end` is no face.
          if (all[index + 1]?.text === '.') continue;
          const shape = [...new Set([all[0]!, all[index]!])].map(({ text }) => shapeOf(text)).join(' ');
          if (tried.has(shape)) continue;
          tried.add(shape);
          const line = file.text.slice(cst.offset, leaf.end).replace(/\/\/.*|\s+/gu, ' ');
          for (const { label } of firstOfEach(offersAt(line))) {
            if (tried.has(`${shape} ${label}`)) continue;
            tried.add(`${shape} ${label}`);
            const said = `${line} <${label}>`;
            const lines = whole(`${line} ${label}`, offersAt);
            if (lines.length === 0) unread.push(said);
            added.set(file, [...(added.get(file) ?? []), ...lines.map((one) => ({ said, line: one }))]);
          }
        }
      }
    }
    expect(unread).toEqual([]);
    const offset = new Map<string, number>();
    const longer = files.map((file) => {
      const lines = added.get(file);
      if (lines === undefined) return file;
      const end = file.tree.declarations.find(({ $type }) => $type === 'Procedure')!.$cstNode!.end - 1;
      const before = `${file.text.slice(0, end)}\n stage tried-here {\n`;
      offset.set(file.uri, before.split('\n').length - 1);
      const text = `${before}${lines.map(({ line }) => `${line}\n`).join('')} }\n${file.text.slice(end)}`;
      return { ...file, ast: parse(text).ast };
    });
    const refused = new Map<string, Map<number, string>>();
    for (const problem of resolve(longer).problems) {
      if (problem.kind !== 'syntax' && problem.kind !== 'unknown-name') continue;
      const { file, range } = problem.source;
      const line = range.start.line - (offset.get(file) ?? 0);
      const text = problem.kind === 'syntax' ? english(problem.message) : `${problem.name} is unknown`;
      refused.set(file, (refused.get(file) ?? new Map<number, string>()).set(line, text));
    }
    const meansNothing = [...added].flatMap(([{ uri }, lines]) => {
      const sound = new Set(lines.filter((_, index) => !refused.get(uri)?.has(index)).map(({ said }) => said));
      return lines.flatMap(({ said }, index) => (sound.has(said) ? [] : [`${said}: ${refused.get(uri)!.get(index)}`]));
    });
    expect(tried.size).toBeGreaterThan(500);
    expect(meansNothing).toEqual([]);
  });
});
