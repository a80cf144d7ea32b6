/** What can be done about findings, in the protocol's terms. */
import {
  type CodeAction,
  CodeActionKind,
  type Diagnostic as LspDiagnostic,
  type SnippetTextEdit,
  type TextDocumentEdit,
  type TextEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver-types';
import { type Action, allSafeTitle, type TextChange } from '../../language/ide/code-actions.ts';
import type { Reader } from '../../language/ide/problem.ts';
import type { Refactoring } from '../../language/ide/refactorings.ts';
import type { Diagnostic } from '../../language/model/diagnostic.ts';
import { fixAllKind } from './capabilities.ts';

/** Where edits go, and what the client makes of them. */
export interface Editing {
  readonly clientUri: (uri: string) => string;
  /** Version of an open document; null for one that is not open. */
  readonly versionOf: (uri: string) => number | null;
  /** The client takes snippets in edits: the cursor goes to what is to be written. */
  readonly snippets: boolean;
  readonly diagnosticOf: (diagnostic: Diagnostic) => LspDiagnostic;
  /** Command of the client that opens the page of a rule; null: it has none. */
  readonly explain: string | null;
  readonly reader: Reader;
}

/** An action; none where the client cannot do it. */
export function codeAction(action: Action, editing: Editing): CodeAction[] {
  const { title, diagnostic } = action;
  const common = { title, kind: CodeActionKind.QuickFix, diagnostics: [editing.diagnosticOf(diagnostic)] };
  switch (action.kind) {
    case 'fix':
      return [
        {
          ...common,
          ...(action.preferred ? { isPreferred: true } : {}),
          edit: workspaceEdit(action.changes, editing),
        },
      ];
    case 'explain':
      return editing.explain === null
        ? []
        : [{ ...common, command: { title, command: editing.explain, arguments: [action.rule] } }];
    case 'allow':
      return [{ ...common, edit: workspaceEdit(action.changes, editing) }];
  }
}

/** All safe changes as one action; null where there are none. */
export function fixAll(changes: readonly TextChange[], editing: Editing): CodeAction | null {
  if (changes.length === 0) return null;
  return { title: editing.reader.tell(allSafeTitle), kind: fixAllKind, edit: workspaceEdit(changes, editing) };
}

/** A refactoring as an action. */
export function refactoringAction(
  { title, kind }: Refactoring,
  changes: readonly TextChange[],
  editing: Editing,
): CodeAction {
  const refactor = kind === 'extract' ? CodeActionKind.RefactorExtract : CodeActionKind.RefactorRewrite;
  return { title: editing.reader.tell(title), kind: refactor, edit: workspaceEdit(changes, editing) };
}

function workspaceEdit(changes: readonly TextChange[], editing: Editing): WorkspaceEdit {
  const byFile = new Map<string, TextChange[]>();
  for (const change of changes) {
    const { file } = change.source;
    byFile.set(file, [...(byFile.get(file) ?? []), change]);
  }
  return {
    documentChanges: [...byFile].map(
      ([uri, ofFile]): TextDocumentEdit => ({
        textDocument: { uri: editing.clientUri(uri), version: editing.versionOf(uri) },
        edits: ofFile.map((change) => textEdit(change, editing)),
      }),
    ),
  };
}

/** What only the author knows is the gap of a snippet. */
function textEdit({ source: { range }, text, snippet }: TextChange, { snippets }: Editing): TextEdit | SnippetTextEdit {
  return snippets && snippet !== null
    ? { range, snippet: { kind: 'snippet', value: snippet } }
    : { range, newText: text };
}
