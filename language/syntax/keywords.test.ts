import { type AstNode, AstUtils, GrammarUtils } from 'langium';
import { describe, expect, it } from 'vitest';
import { dangers } from '../model/danger.ts';
import { verbs } from '../model/verbs.ts';
import { RebuildGrammar } from './generated/grammar.ts';
import {
  blockHeads,
  callable,
  continuing,
  declarationHeads,
  fluidWords,
  itemHeads,
  kindWords,
  reserved,
  stepBlocks,
  stepWords,
} from './keywords.ts';
import { phrases } from './verbs/phrases.ts';

const grammar = RebuildGrammar();

const keywordsBelow = (node: AstNode) =>
  AstUtils.streamAllContents(node)
    .filter((inner) => inner.$type === 'Keyword')
    .map((inner) => (inner as unknown as { value: string }).value)
    .toArray();

const rule = (name: string) => grammar.rules.find((one) => one.name === name)!;
const all = new Set(grammar.rules.flatMap(keywordsBelow));
const words = [...all].filter((word) => /^\p{L}/u.test(word)).sort();

describe('words of the language', () => {
  it('are each a name or reserved, none both', () => {
    const names = new Set(['WordToL', 'WordFromM'].flatMap((part) => keywordsBelow(rule(part))));
    expect(words.filter((word) => !names.has(word) && !reserved.includes(word))).toEqual([]);
    expect(reserved.filter((word) => names.has(word))).toEqual([]);
    expect(reserved.filter((word) => !all.has(word))).toEqual([]);
  });

  it('of the token pass are keywords of the grammar', () => {
    const lists = {
      blockHeads,
      continuing,
      declarationHeads,
      itemHeads,
      kindWords,
      stepBlocks,
      stepWords,
      callable,
      fluidWords,
    };
    for (const [name, list] of Object.entries(lists))
      expect(
        list.filter((word) => !all.has(word)),
        name,
      ).toEqual([]);
  });

  it('that begin a step are the verbs, and the words of blocks that hold steps', () => {
    const begin = new Set(verbs.map((verb) => verb.replace(/^clean-.*/u, 'clean')));
    expect([...stepWords].sort()).toEqual([...begin, 'only', 'hazard'].sort());
  });

  it('of what can hurt, and of what a repair of one step does, are those of the grammar', () => {
    expect(keywordsBelow(rule('DangerWord'))).toEqual(dangers.join(' ').split(' '));
    const repairs: string[] = phrases.flatMap(({ name, said }) => (/^fail (?:part|lap)$/u.test(name) ? said : []));
    expect(keywordsBelow(rule('FailEntry')).slice(0, repairs.length).sort()).toEqual(repairs.sort());
  });

  it('of a kind are the spec kinds of the grammar', () => {
    expect([...kindWords].sort()).toEqual([...new Set(keywordsBelow(rule('SpecKind')))].sort());
  });

  it('have terminals for the rest', () => {
    expect(GrammarUtils.isOptionalCardinality('?')).toBe(true);
    expect(grammar.rules.filter((one) => one.$type === 'TerminalRule').map((one) => one.name)).toEqual(
      expect.arrayContaining(['EOL', 'UNREAD', 'DATE', 'QUANTITY', 'NUMBER', 'STRING', 'ID']),
    );
  });
});
