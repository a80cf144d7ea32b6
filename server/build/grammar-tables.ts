/** Writes the grammar as small tables, from which `language/syntax/rules.ts` makes the parser: `npm run generate`. */
import { writeFileSync } from 'node:fs';
import { type AstNode, AstUtils, GrammarAST, GrammarUtils } from 'langium';
import { RebuildAstReflection } from '../../language/syntax/generated/ast.ts';
import { RebuildGrammar } from '../../language/syntax/generated/grammar.ts';
import type { Element, GrammarTables, NodeType, Rule } from '../../language/syntax/grammar-tables.ts';

/** What the generated types ask for, and the grammar does not: one of several ways of writing has it. */
const mayLack: ReadonlyMap<string, string> = new Map([
  ['SpecValue', 'more'],
  ['Tolerance', 'both'],
  ['Minus', 'both'],
]);

const grammar = RebuildGrammar();
const parserRules = grammar.rules.filter(GrammarAST.isParserRule);

function elementOf(element: GrammarAST.AbstractElement): Element {
  const once = onceOf(element);
  switch (element.cardinality) {
    case '?':
      return ['optional', once];
    case '*':
      return ['many', once];
    case '+':
      return ['some', once];
    default:
      return once;
  }
}

function onceOf(element: GrammarAST.AbstractElement): Element {
  if (GrammarAST.isKeyword(element)) return ['token', element.value];
  if (GrammarAST.isAction(element) && element.feature === undefined) return ['type', GrammarUtils.getTypeName(element)];
  if (GrammarAST.isAssignment(element))
    return ['assign', element.operator, element.feature, elementOf(element.terminal)];
  if (GrammarAST.isRuleCall(element)) {
    const rule = element.rule.ref!;
    return GrammarAST.isTerminalRule(rule) ? ['token', rule.name] : ['call', rule.name];
  }
  if (GrammarAST.isGroup(element)) {
    const all = element.elements.map(elementOf);
    return all.length === 1 ? all[0]! : ['sequence', ...all];
  }
  if (GrammarAST.isAlternatives(element)) {
    const all = element.elements.map(elementOf);
    const tokens = all.flatMap((one) => (one[0] === 'token' ? [one[1]] : []));
    return tokens.length === all.length ? ['any', ...tokens] : ['choice', ...all];
  }
  throw new Error(`The parser cannot read ${element.$type} of the grammar: teach it in language/syntax/rules.ts.`);
}

function ruleOf(rule: GrammarAST.ParserRule): Rule {
  const kind = rule.fragment ? 'fragment' : GrammarUtils.isDataTypeRule(rule) ? 'words' : 'node';
  return { kind, type: GrammarUtils.getTypeName(rule), element: elementOf(rule.definition) };
}

function typesOf(): Record<string, NodeType> {
  const reflection = new RebuildAstReflection();
  const made = (type: string): NodeType => {
    const properties = Object.values(reflection.getTypeMetaData(type).properties);
    const named = (test: (property: (typeof properties)[number]) => boolean) =>
      properties.filter(test).map(({ name }) => name);
    return {
      lists: named(({ defaultValue }) => Array.isArray(defaultValue)),
      flags: named(({ defaultValue }) => defaultValue === false),
      needed: named(({ name, optional }) => optional !== true && mayLack.get(type) !== name),
    };
  };
  return Object.fromEntries(reflection.getAllTypes().map((type) => [type, made(type)]));
}

const keywords = parserRules.flatMap((rule) =>
  AstUtils.streamAllContents(rule as AstNode)
    .filter(GrammarAST.isKeyword)
    .map(({ value }) => value)
    .toArray(),
);
const tables: GrammarTables = {
  entry: parserRules.find((rule) => rule.entry)!.name,
  terminals: grammar.rules.flatMap((rule) => (GrammarAST.isTerminalRule(rule) && !rule.hidden ? [rule.name] : [])),
  keywords: [...new Set(keywords)].sort(),
  rules: Object.fromEntries(parserRules.map((rule) => [rule.name, ruleOf(rule)])),
  types: typesOf(),
};
writeFileSync(
  'language/syntax/tables.generated.ts',
  `// Generated from rebuild.langium by npm run generate. Do not edit.
import type { GrammarTables } from './grammar-tables.ts';

export const tables: GrammarTables = JSON.parse(
  '${JSON.stringify(tables).replace(/[\\']/gu, String.raw`\$&`)}',
);
`,
);
