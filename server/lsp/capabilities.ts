import { CodeActionKind, type InitializeResult, TextDocumentSyncKind } from 'vscode-languageserver';

/** The kind of what fixes all that can be fixed without a question. */
export const fixAllKind = `${CodeActionKind.SourceFixAll}.handtight`;

/** What the server can do. It is answered before anything else is loaded. */
export const initializeResult: InitializeResult = {
  serverInfo: { name: 'handtight' },
  capabilities: {
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental, save: false },
    completionProvider: { triggerCharacters: [' ', ','] },
    documentSymbolProvider: { label: 'Handtight' },
    hoverProvider: true,
    definitionProvider: true,
    inlayHintProvider: true,
    codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix, fixAllKind] },
    workspace: { workspaceFolders: { supported: true } },
  },
};
