/** The outline, in the protocol's terms. */
import { type DocumentSymbol, SymbolKind } from 'vscode-languageserver-types';
import type { OutlineEntry } from '../../language/ide/outline.ts';

export function documentSymbol({ name, detail, kind, range, nameRange, children }: OutlineEntry): DocumentSymbol {
  return {
    name,
    ...(detail === null ? {} : { detail }),
    kind: symbolKind(kind),
    range,
    selectionRange: nameRange,
    children: children.map(documentSymbol),
  };
}

/** The editor's icon for what is declared. */
export function symbolKind(kind: string): SymbolKind {
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
    case 'assembly':
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
