/** The outline: what a file declares. */
import { type DocumentSymbol, SymbolKind } from 'vscode-languageserver-types';
import type { DeclaredSymbol } from '../../language/semantics/symbols.ts';

/** Most entries that are sent for one file: more make no outline, and the editor slow. */
const mostSymbols = 5000;

/** Symbols of a file in the protocol's terms; the author's own words follow the name. */
export function documentSymbols(symbols: readonly DeclaredSymbol[]): DocumentSymbol[] {
  let left = mostSymbols;
  const of = (list: readonly DeclaredSymbol[]): DocumentSymbol[] => {
    const made: DocumentSymbol[] = [];
    for (const symbol of list) {
      if (left-- <= 0) break;
      made.push({
        name: symbol.name === '' ? symbol.kind : symbol.name,
        ...(symbol.title === '' || symbol.title === symbol.name ? {} : { detail: symbol.title }),
        kind: symbolKind(symbol.kind),
        range: symbol.range,
        selectionRange: symbol.nameRange,
        children: of(symbol.children),
      });
    }
    return made;
  };
  return of(symbols);
}

/** The editor's icon for what is declared. */
function symbolKind(kind: string): SymbolKind {
  switch (kind) {
    case 'shop':
      return SymbolKind.Module;
    case 'family':
      return SymbolKind.Class;
    case 'procedure':
      return SymbolKind.Package;
    case 'job':
      return SymbolKind.File;
    case 'stage':
      return SymbolKind.Namespace;
    case 'repair':
    case 'sequence':
      return SymbolKind.Function;
    case 'test':
    case 'check':
      return SymbolKind.Event;
    case 'step':
      return SymbolKind.Method;
    case 'spec':
      return SymbolKind.Constant;
    case 'number':
      return SymbolKind.EnumMember;
    case 'part':
      return SymbolKind.Field;
    case 'face':
    case 'port':
    case 'joint':
    case 'adjuster':
      return SymbolKind.Property;
    case 'unit':
      return SymbolKind.Object;
    default:
      return SymbolKind.Variable;
  }
}
