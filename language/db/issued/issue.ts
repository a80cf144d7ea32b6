import type { Procedure } from '../../model/procedure.ts';
import type { Source } from '../../model/source.ts';
import {
  type CheckedFiles,
  contentOf,
  cut,
  printedDeclarations,
  textsOf,
  type WrittenDeclaration,
} from '../printed-content.ts';
import { blanked, toolsIn } from './content.ts';
import type { IssuedRevision } from './format.ts';
import { hashOf } from './hash.ts';

/** What an issued procedure is compared by, declaration by declaration: all that it prints from but the shop's tools. */
export function issuedDeclarations(
  procedure: Procedure,
  checked: CheckedFiles,
): ReadonlyMap<string, { readonly symbol: WrittenDeclaration['symbol']; readonly text: string }> {
  const texts = textsOf(checked);
  return new Map(
    printedDeclarations({ procedure, job: null }, checked).map(({ file, symbol }) => {
      const text = texts.get(file) ?? '';
      const tools = symbol.kind === 'shop' ? toolsIn(symbol) : [];
      const left =
        tools.length === 0
          ? text
          : blanked(
              text,
              tools.map(({ range }) => range),
            );
      return [`${symbol.kind} ${symbol.name}`, { symbol, text: cut(left, symbol.range) }];
    }),
  );
}

/** Hash of the same. */
export function issuedContent(procedure: Procedure, checked: CheckedFiles): string {
  const declarations = [...issuedDeclarations(procedure, checked).values()];
  return hashOf(
    contentOf(
      declarations.map(({ symbol, text }) => [symbol, text]),
      checked.result,
    ),
  );
}

/** Issues a procedure as it is now. It has a revision and an approval: the caller has made sure of both. */
export function buildIssued(procedure: Procedure, checked: CheckedFiles, issuedOn: string): IssuedRevision {
  const { sheet, severities } = checked.result;
  const texts = textsOf(checked);
  return {
    procedure: procedure.name,
    revision: procedure.revision ?? '',
    approvedBy: procedure.approvedBy ?? '',
    approvedOn: procedure.approvedOn,
    issuedOn,
    settings: { word: sheet.word, severities: [...severities].sort(([one], [other]) => (one < other ? -1 : 1)) },
    content: issuedContent(procedure, checked),
    body: madeOf(procedure, checked)
      .map(({ file, symbol }) => `\n${cut(texts.get(file) ?? '', symbol.range)}\n`)
      .join(''),
  };
}

const order = ['shop', 'family', 'sequence', 'procedure'];

/** Names of these lead from one declaration to another that it cannot be read without. */
const leading: ReadonlySet<string> = new Set([...order, 'stock']);

/** A procedure and every declaration that is needed to read it, itself last. */
function madeOf(procedure: Procedure, { result }: CheckedFiles): WrittenDeclaration[] {
  const at = (source: Source): WrittenDeclaration | null => {
    const { line } = source.range.start;
    const symbol = (result.symbols.get(source.file) ?? []).find(
      ({ range }) => range.start.line <= line && line <= range.end.line,
    );
    return symbol === undefined ? null : { file: source.file, symbol };
  };
  const own = at(procedure.source);
  const found = new Map<unknown, WrittenDeclaration>(own === null ? [] : [[own.symbol, own]]);
  for (const { file, symbol } of found.values()) {
    const { start, end } = symbol.range;
    for (const { use, target, what } of result.linksIn(file)) {
      const { line } = use.range.start;
      if (use.file !== file || line < start.line || line > end.line || !leading.has(what)) continue;
      const next = at(target);
      // A family names tests: of each of its procedures.
      if (next !== null && !(symbol.kind === 'family' && next.symbol.kind === 'procedure'))
        found.set(next.symbol, next);
    }
  }
  const rank = ({ symbol }: WrittenDeclaration) => (symbol === own?.symbol ? order.length : order.indexOf(symbol.kind));
  return [...found.values()].sort(
    (one, other) => rank(one) - rank(other) || (one.symbol.name < other.symbol.name ? -1 : 1),
  );
}
