/** Compares what the parser makes of a text with what Langium makes of it: trees and problems. */
import { type AstNode, GrammarUtils, isAstNode } from 'langium';
import type { Range } from '../../language/model/source.ts';
import { english } from '../../language/say/say.ts';
import type { File } from '../../language/syntax/generated/ast.ts';
import type { Parsed, SyntaxProblem } from '../../language/syntax/parse.ts';
import { rangeOf, textOf } from '../../language/syntax/place.ts';

export interface Reference {
  readonly ast: File;
  readonly problems: readonly SyntaxProblem[];
}

/** The first difference, in words; null: there is none. */
export function difference(langium: Reference, ours: Pick<Parsed, 'ast' | 'problems'>): string | null {
  const [theirs, own] = [langium.problems, ours.problems].map((all) => all.map(shownProblem).join('\n'));
  if (theirs !== own) return `problems:\n${theirs}\n--- and ours:\n${own}`;
  return nodesDiffer('File', langium.ast, ours.ast);
}

/** The first difference of two trees of ours. */
export function treesDiffer(one: Pick<Parsed, 'ast' | 'problems'>, other: Pick<Parsed, 'ast' | 'problems'>) {
  const problems = [one, other].map((parsed) => parsed.problems.map(shownProblem).join('\n'));
  if (problems[0] !== problems[1]) return `problems:\n${problems.join('\n--- and\n')}`;
  const trees = [one, other].map(({ ast }) => shownNode(ast, ''));
  const at = trees[0]!.findIndex((line, index) => line !== trees[1]![index]);
  return at < 0 && trees[0]!.length === trees[1]!.length ? null : `${trees[0]![at]}\n--- and\n${trees[1]![at]}`;
}

function shownNode(node: AstNode, path: string): string[] {
  const own = `${path} ${node.$type} ${shown(rangeOf(node))} ${textOf(node)}`;
  const properties = propertiesOf(node).flatMap(([name, value]) => {
    const all = [value].flat();
    return all.flatMap((one, index) => {
      const range = shown(rangeOf(node, name, index));
      if (!isAstNode(one)) return [`${path}.${name} ${JSON.stringify(one)} ${range}`];
      return [
        `${path}.${name} ${range}${one.$container === node ? '' : ' of another'}`,
        ...shownNode(one, `${path}.${name}`),
      ];
    });
  });
  return [own, ...properties];
}

function shown({ start, end }: Range): string {
  return `${start.line}:${start.character}-${end.line}:${end.character}`;
}

function shownProblem({ code, message, range }: SyntaxProblem): string {
  return `${shown(range)} ${code} ${english(message)}`;
}

function propertiesOf(node: AstNode): [string, unknown][] {
  return Object.entries(node)
    .filter(([name, value]) => !name.startsWith('$') && value !== undefined)
    .sort(([one], [other]) => (one < other ? -1 : 1));
}

function nodesDiffer(path: string, langium: AstNode, own: AstNode): string | null {
  if (langium.$type !== own.$type) return `${path}: ${langium.$type} and ours ${own.$type}`;
  const [theirs, ours] = [propertiesOf(langium), propertiesOf(own)];
  const [names, ownNames] = [theirs, ours].map((all) => all.map(([name]) => name).join(' '));
  if (names !== ownNames) return `${path} ${langium.$type}: ${names} and ours ${ownNames}`;
  const cst = langium.$cstNode!;
  // Langium says where a file is that has nothing but remarks.
  const isEmpty = langium.$type === 'File';
  if (!isEmpty && shown(cst.range) !== shown(rangeOf(own)))
    return `${path} ${langium.$type}: ${shown(cst.range)} and ours ${shown(rangeOf(own))}`;
  // A line that is not read is one token, which Langium lets go on where nothing is.
  if (!isEmpty && isWhole(cst.range, cst.text) && !cst.text.startsWith(textOf(own)))
    return `${path}: “${cst.text}” and ours “${textOf(own)}”`;
  for (const [index, [name, value]] of theirs.entries()) {
    const [all, allOwn] = [[value].flat(), [ours[index]![1]].flat()];
    if (all.length !== allOwn.length || Array.isArray(value) !== Array.isArray(ours[index]![1]))
      return `${path}.${name}: ${all.length} and ours ${allOwn.length}`;
    for (const [place, one] of all.entries()) {
      const here = `${path}.${name}[${place}]`;
      const leaf = GrammarUtils.findNodeForProperty(cst, name, place) ?? cst;
      // The place of a node is compared with the node: Langium counts fragments too.
      if (!isAstNode(one) && shown(leaf.range) !== shown(rangeOf(own, name, place)))
        return `${here}: ${shown(leaf.range)} and ours ${shown(rangeOf(own, name, place))}`;
      const ownOne = allOwn[place];
      if (isAstNode(one)) {
        if (!isAstNode(ownOne) || ownOne.$container !== own) return `${here}: no node, or of another`;
        const inner = nodesDiffer(here, one, ownOne);
        if (inner !== null) return inner;
      } else if (one !== ownOne) return `${here}: ${JSON.stringify(one)} and ours ${JSON.stringify(ownOne)}`;
    }
  }
  return null;
}

/** The text of a node is as long as its range says: not so where a word was put in or cut. */
function isWhole({ start, end }: Range, text: string): boolean {
  return start.line !== end.line || end.character - start.character === text.length;
}
