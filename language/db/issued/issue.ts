import type { Procedure } from '../../model/procedure.ts';
import type { Source } from '../../model/source.ts';
import { type CheckedFiles, cut, type WrittenDeclaration } from '../printed-content.ts';
import type { IssuedRevision } from './format.ts';

/** Issues a procedure as it is now. It has a revision and an approval: the caller has made sure of both. */
export function buildIssued(procedure: Procedure, checked: CheckedFiles, issuedOn: string): IssuedRevision {
  const { sheet, severities } = checked.result;
  const textOf = (uri: string) => checked.files.find((file) => file.uri === uri)?.text ?? '';
  return {
    procedure: procedure.name,
    revision: procedure.revision ?? '',
    approvedBy: procedure.approvedBy ?? '',
    approvedOn: procedure.approvedOn,
    issuedOn,
    settings: {
      word: sheet.word,
      kinds: sheet.kinds,
      severities: [...severities].sort(([one], [other]) => (one < other ? -1 : 1)),
    },
    body: madeOf(procedure, checked)
      .map(({ file, symbol }) => `\n${cut(textOf(file), symbol.range)}\n`)
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
