import {
  type ClientCapabilities,
  CodeActionKind,
  type InitializeResult,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import type { Color } from '../../language/ide/semantic-tokens.ts';

/** The kind of what fixes all that can be fixed without a question. */
export const fixAllKind = `${CodeActionKind.SourceFixAll}.handtight`;

/** All colors of names, in the order in which the protocol numbers them. */
export const colors: readonly Color[] = ['function', 'parameter', 'variable'];

/** The keys after which the line is laid out. */
export const onType = { firstTriggerCharacter: '}', moreTriggerCharacter: ['\n'] };

/**
 * Whether the layout is registered for procedures once the client is there. Announced here it would be for the settings file too,
 * which the editor's own formatter lays out.
 */
export function registersFormatting(client: ClientCapabilities['textDocument']): boolean {
  return (
    client?.formatting?.dynamicRegistration === true &&
    client.rangeFormatting?.dynamicRegistration === true &&
    client.onTypeFormatting?.dynamicRegistration === true
  );
}

/** What the server can do for a client. It is answered before anything else is loaded. */
export function initializeResult({ textDocument }: ClientCapabilities): InitializeResult {
  return {
    serverInfo: { name: 'handtight' },
    capabilities: {
      textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental, save: false },
      completionProvider: { triggerCharacters: [' ', ','], resolveProvider: true },
      signatureHelpProvider: { triggerCharacters: [' '], retriggerCharacters: [','] },
      documentSymbolProvider: { label: 'Handtight' },
      workspaceSymbolProvider: true,
      hoverProvider: true,
      definitionProvider: true,
      typeDefinitionProvider: true,
      referencesProvider: true,
      documentHighlightProvider: true,
      renameProvider: textDocument?.rename?.prepareSupport === true ? { prepareProvider: true } : true,
      linkedEditingRangeProvider: true,
      callHierarchyProvider: true,
      inlayHintProvider: true,
      semanticTokensProvider: { legend: { tokenTypes: [...colors], tokenModifiers: [] }, full: true, range: false },
      codeLensProvider: { resolveProvider: true },
      documentLinkProvider: { resolveProvider: false },
      foldingRangeProvider: true,
      selectionRangeProvider: true,
      ...(registersFormatting(textDocument)
        ? {}
        : {
            documentFormattingProvider: true,
            documentRangeFormattingProvider: true,
            documentOnTypeFormattingProvider: onType,
          }),
      codeActionProvider: {
        codeActionKinds: [
          CodeActionKind.QuickFix,
          CodeActionKind.RefactorExtract,
          CodeActionKind.RefactorRewrite,
          fixAllKind,
        ],
      },
      // A client that takes both would show each finding twice: to such a one they are pushed.
      ...(textDocument?.diagnostic !== undefined && textDocument.publishDiagnostics === undefined
        ? { diagnosticProvider: { interFileDependencies: true, workspaceDiagnostics: false } }
        : {}),
      workspace: { workspaceFolders: { supported: true } },
    },
  };
}
