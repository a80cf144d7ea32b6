/** Suggestions, in the protocol's terms. */
import { type CompletionItem, CompletionItemKind, InsertTextFormat } from 'vscode-languageserver-types';
import * as z from 'zod';
import type { Suggestion } from '../../language/ide/completion/completions.ts';
import { documentationOf } from '../../language/ide/documentation.ts';
import type { Reader } from '../../language/ide/problem.ts';
import type { Snapshot } from '../../language/ide/snapshot.ts';

/** What an item is found again by when it is looked at. */
const subject = z.strictObject({
  uri: z.string().max(4096),
  label: z.string().max(400),
  kind: z.enum(['name', 'parameter', 'verb', 'word', 'snippet', 'rule', 'step', 'unit']),
  names: z.string().max(40).optional(),
  about: z.string().max(400).optional(),
});

/** The item with what there is to read about it. */
export function resolvedItem(
  item: CompletionItem,
  snapshotOf: (uri: string) => Snapshot,
  { tell }: Reader,
): CompletionItem {
  const read = subject.safeParse(item.data);
  if (!read.success) return item;
  const value = documentationOf(snapshotOf(read.data.uri), read.data, tell);
  return value === null ? item : { ...item, documentation: { kind: 'markdown', value } };
}

/** @param uri the document that it is offered in */
export function completionItem(suggestion: Suggestion, uri: string, { tell }: Reader): CompletionItem {
  const { label, kind, names, about, detail, description, insert, order } = suggestion;
  return {
    label,
    kind: itemKind(suggestion),
    ...(detail === undefined ? {} : { detail: tell(detail) }),
    ...(description === undefined ? {} : { labelDetails: { description: tell(description) } }),
    ...(insert === undefined ? {} : { insertText: insert.text }),
    ...(insert?.snippet === true ? { insertTextFormat: InsertTextFormat.Snippet } : {}),
    sortText: order,
    ...(about === undefined && kind !== 'step' ? {} : { data: { uri, label, kind, names, about } }),
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
    case 'unit':
      return CompletionItemKind.Unit;
    case 'snippet':
    case 'step':
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
