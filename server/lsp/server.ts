/**
 * The language server: the protocol on one side, the library of files and its check on the other. Each feature is a
 * function in a file of its own; this one only connects them.
 */
import {
  CodeActionKind,
  CompletionTriggerKind,
  type Connection,
  DidChangeWatchedFilesNotification,
  ErrorCodes,
  type InitializeResult,
  ResponseError,
  TextDocumentSyncKind,
  TextDocuments,
} from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { z } from 'zod';
import { isSettings } from '../../language/config/config.ts';
import { rules } from '../../language/diagnostics/index.ts';
import { codeActions, fixAll, fixAllKind } from './code-actions.ts';
import { completions } from './completion.ts';
import { debounce } from './debounce.ts';
import { diagnosticOf } from './diagnostics.ts';
import { Library } from './document-store.ts';
import { definitionAt, hoverAt } from './hover.ts';
import { inlayHints } from './inlay-hints.ts';
import { sheetAt } from './preview.ts';
import { printAt } from './print.ts';
import { originOf } from './print-link.ts';
import { Publisher } from './publish.ts';
import { checkedMethod, originMethod, printMethod, sheetMethod, specsMethod } from './request-names.ts';
import {
  initializationOptions,
  type OriginAnswer,
  originQuestion,
  type PrintAnswer,
  printQuestion,
  type SheetAnswer,
  type SpecsAnswer,
  settings as settingsSchema,
  sheetQuestion,
} from './requests.ts';
import { rulePages } from './rule-pages.ts';
import { specsAt } from './specs.ts';
import { documentSymbols } from './symbols.ts';
import { canonicalUri } from './uris.ts';

/** Quiet time after a keystroke before all is checked, ms. */
const quiet = 150;

/** Serves one client until it says `exit`. */
export function serve(connection: Connection): void {
  const library = new Library();
  const documents = new TextDocuments(TextDocument);
  let scope: 'workspace' | 'open' = 'workspace';
  let showsHints = true;
  let folders: string[] = [];
  let explain: string | null = null;
  let snippets = false;
  let completesSnippets = false;
  let watches = false;
  let configures = false;
  let refreshesHints = false;
  let pages: ReadonlyMap<string, string> = new Map();

  const rulePage = (rule: string): string | null => pages.get(rule) ?? null;
  const publisher = new Publisher(connection, library, rulePage);
  const clientUri = (uri: string) => library.clientUri(uri);
  const textOf = (uri: string) => library.text(uri);

  const check = () => {
    try {
      const checked = publisher.publish(scope);
      void connection.sendNotification(checkedMethod, checked);
      // A hint may follow from another file: the shop's drawer, the procedure's rate.
      if (refreshesHints) void connection.languages.inlayHint.refresh();
    } catch (error) {
      // A defect of the checker must not end the session: what was typed next may check again.
      connection.console.error(`The check failed: ${error instanceof Error ? error.stack : String(error)}`);
    }
  };
  const checking = debounce(check, quiet);

  connection.onInitialize((params): InitializeResult => {
    const options = initializationOptions.safeParse(params.initializationOptions ?? {});
    if (options.success) {
      pages = rulePages(options.data.rulePages ?? null);
      explain = options.data.explainCommand ?? null;
    } else {
      connection.console.warn(`Initialization options were not understood: ${options.error.message}`);
    }
    folders = (params.workspaceFolders ?? []).map(({ uri }) => uri);
    if (folders.length === 0 && params.rootUri) folders = [params.rootUri];
    snippets = params.capabilities.workspace?.workspaceEdit?.snippetEditSupport === true;
    completesSnippets = params.capabilities.textDocument?.completion?.completionItem?.snippetSupport === true;
    watches = params.capabilities.workspace?.didChangeWatchedFiles?.dynamicRegistration === true;
    refreshesHints = params.capabilities.workspace?.inlayHint?.refreshSupport === true;
    configures = params.capabilities.workspace?.configuration === true;
    return {
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
  });

  connection.onInitialized(async () => {
    if (watches) {
      await connection.client.register(DidChangeWatchedFilesNotification.type, {
        watchers: [{ globPattern: '**/*.rebuild' }, { globPattern: '**/handtight.json' }],
      });
    }
    await readSettings();
    await library.scan(folders);
    check();
  });

  async function readSettings(): Promise<void> {
    if (!configures) return;
    try {
      const read = settingsSchema.safeParse(await connection.workspace.getConfiguration('handtight'));
      if (read.success) {
        scope = read.data.problems.scope;
        showsHints = read.data.hints.shims;
      } else connection.console.warn(`A setting of Handtight was not understood: ${read.error.message}`);
    } catch {
      // A client may say that it has settings and then not answer: the defaults hold.
    }
  }

  connection.onDidChangeConfiguration(async () => {
    await readSettings();
    if (refreshesHints) void connection.languages.inlayHint.refresh();
    checking.ask();
  });

  connection.onDidChangeWatchedFiles(async ({ changes }) => {
    for (const { uri } of changes) await library.refresh(uri);
    checking.ask();
  });

  documents.onDidOpen(({ document }) => {
    library.open(document);
    checking.ask();
  });
  documents.onDidChangeContent(({ document }) => {
    library.open(document);
    checking.ask();
  });
  documents.onDidClose(async ({ document }) => {
    library.close(document);
    // It may have been deleted, or changed without the watcher's telling, while it was open.
    await library.refresh(document.uri);
    checking.ask();
  });
  documents.listen(connection);

  connection.onDocumentSymbol(({ textDocument }) =>
    documentSymbols(library.check(textDocument.uri).symbols.get(canonicalUri(textDocument.uri)) ?? []),
  );

  connection.onCompletion(({ textDocument, position, context }) => {
    const document = library.document(textDocument.uri);
    if (document === undefined || isSettings(document.uri)) return [];
    return completions(document.getText(), document.offsetAt(position), library.check(textDocument.uri), {
      rules,
      textOf,
      snippets: completesSnippets,
      onlyNames: context?.triggerKind === CompletionTriggerKind.TriggerCharacter,
    });
  });

  connection.onHover(({ textDocument, position }) =>
    hoverAt(canonicalUri(textDocument.uri), position, library.check(textDocument.uri), textOf),
  );

  connection.onDefinition(({ textDocument, position }) =>
    definitionAt(canonicalUri(textDocument.uri), position, library.check(textDocument.uri), clientUri),
  );

  connection.languages.inlayHint.on(({ textDocument, range }) =>
    showsHints ? inlayHints(canonicalUri(textDocument.uri), range, library.check(textDocument.uri)) : [],
  );

  connection.onCodeAction(({ textDocument, range, context }) => {
    const document = library.document(textDocument.uri);
    if (document === undefined) return [];
    const { findings, symbols } = library.check(textDocument.uri);
    const uri = canonicalUri(textDocument.uri);
    const versionOf = (file: string) => library.document(file)?.version ?? null;
    const editing = { textOf, clientUri, versionOf, snippets };
    const wants = (kind: string) =>
      context.only === undefined || context.only.some((only) => kind === only || kind.startsWith(`${only}.`));
    const actions = wants(CodeActionKind.QuickFix)
      ? codeActions({
          uri,
          range,
          findings,
          symbols: symbols.get(uri) ?? [],
          diagnosticOf: (finding) => diagnosticOf(finding, rulePage, clientUri),
          explain,
          ...editing,
        })
      : [];
    // Only when it is requested by kind: on save, or from the menu of source actions.
    const all = context.only !== undefined && wants(fixAllKind) ? fixAll({ uri, findings, ...editing }) : null;
    return all === null ? actions : [...actions, all];
  });

  connection.onRequest<SheetAnswer, void>(sheetMethod, (params: unknown) =>
    sheetAt(library, understood(sheetQuestion, params)),
  );
  connection.onRequest<SpecsAnswer, void>(specsMethod, (params: unknown) =>
    specsAt(library, understood(sheetQuestion, params)),
  );
  connection.onRequest<PrintAnswer, void>(printMethod, (params: unknown) =>
    printAt(library, understood(printQuestion, params)),
  );

  connection.onRequest<OriginAnswer, void>(originMethod, (params: unknown) =>
    originOf(library, understood(originQuestion, params), clientUri),
  );

  connection.onShutdown(() => checking.cancel());
  connection.listen();
}

/** Parameters of a request through their schema; a refusal says what was wrong with them. */
function understood<T extends z.ZodType>(schema: T, params: unknown): z.output<T> {
  const read = schema.safeParse(params);
  if (read.success) return read.data;
  throw new ResponseError(ErrorCodes.InvalidParams, read.error.message);
}
