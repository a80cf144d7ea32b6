/** Suggestions, in the protocol's terms. */
import { type CompletionItem, CompletionItemKind, InsertTextFormat } from 'vscode-languageserver-types';
import type { Suggestion } from '../../language/ide/completion/completions.ts';

export function completionItem(suggestion: Suggestion): CompletionItem {
  const { label, detail, description, documentation, insert, order } = suggestion;
  return {
    label,
    kind: itemKind(suggestion),
    ...(detail === undefined ? {} : { detail }),
    ...(description === undefined ? {} : { labelDetails: { description } }),
    ...(documentation === undefined ? {} : { documentation: { kind: 'markdown', value: documentation } }),
    ...(insert === undefined ? {} : { insertText: insert.text }),
    ...(insert?.snippet === true ? { insertTextFormat: InsertTextFormat.Snippet } : {}),
    sortText: order,
  };
}

/** The editor's icon for what is offered. */
function itemKind({ kind, names }: Suggestion): CompletionItemKind {
  switch (kind) {
    case 'name':
      return nameKind(names);
    case 'parameter':
      return CompletionItemKind.Variable;
    case 'verb':
    case 'word':
      return CompletionItemKind.Keyword;
    case 'snippet':
      return CompletionItemKind.Snippet;
    case 'rule':
      return CompletionItemKind.EnumMember;
  }
}

function nameKind(kind: string | undefined): CompletionItemKind {
  switch (kind) {
    case 'part':
    case 'face':
    case 'port':
    case 'adjuster':
      return CompletionItemKind.Field;
    case 'spec':
      return CompletionItemKind.Constant;
    case 'test':
      return CompletionItemKind.Event;
    case 'repair':
    case 'sequence':
      return CompletionItemKind.Function;
    case 'number':
      return CompletionItemKind.EnumMember;
    case 'shop':
    case 'family':
    case 'procedure':
    case 'job':
      return CompletionItemKind.Class;
    case 'station':
      return CompletionItemKind.Module;
    default:
      return CompletionItemKind.Value;
  }
}
