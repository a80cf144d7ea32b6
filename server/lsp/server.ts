/**
 * The language server: the protocol on one side, `language/ide/` on the other, and between them the documents. It decides
 * nothing about the language.
 */
import {
  CodeActionKind,
  CompletionTriggerKind,
  type Connection,
  DidChangeWatchedFilesNotification,
  ErrorCodes,
  type InitializeParams,
  type Location,
  ResponseError,
  TextDocuments,
} from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type * as z from 'zod';
import { isSettings } from '../../language/config/settings-name.ts';
import { actionsIn, allSafeChanges, changesOf } from '../../language/ide/code-actions.ts';
import { completionsAt } from '../../language/ide/completion/completions.ts';
import { definitionsAt } from '../../language/ide/definition.ts';
import { hoverAt } from '../../language/ide/hover/hover.ts';
import { outlineOf } from '../../language/ide/outline.ts';
import { languageOf, readerOf, rulePage } from '../../language/ide/problem.ts';
import { refactoringsIn } from '../../language/ide/refactorings.ts';
import { serialsAt } from '../../language/ide/serials.ts';
import type { Diagnostic } from '../../language/model/diagnostic.ts';
import type { Host } from '../host/host.ts';
import { visitMarkdown } from '../host/ledger/result-words.ts';
import { unlessCanceled } from './canceled.ts';
import { fixAllKind, registersFormatting } from './capabilities.ts';
import { Checking } from './checking.ts';
import { codeAction, fixAll, refactoringAction } from './code-actions.ts';
import { completionItem, resolvedItem } from './completion.ts';
import { diagnosticOf } from './diagnostics.ts';
import { DocumentStore } from './document-store.ts';
import { registerFeatures } from './features.ts';
import { registerFormatting } from './format.ts';
import { knownSerials } from './known-serials.ts';
import { resolvePrintLink } from './print-link.ts';
import { Publisher } from './publish.ts';
import {
  checkedMethod,
  drawingMethod,
  familyChoicesMethod,
  firstProcedureMethod,
  printLinkMethod,
  printMethod,
  sheetMethod,
  specsMethod,
  stateMethod,
} from './request-names.ts';
import {
  type DrawingResult,
  type FamilyChoicesResult,
  type FirstProcedureResult,
  familyChoicesParams,
  firstProcedureParams,
  initializationOptions,
  type PrintLinkResult,
  type PrintResult,
  placeParams,
  printLinkParams,
  printParams,
  type SheetResult,
  type SpecsResult,
  type StateResult,
  settings as settingsSchema,
  sheetParams,
} from './requests.ts';
import { documentSymbol } from './symbols.ts';
import { Typing } from './typing.ts';

/**
 * Pause after which a word counts as finished though the cursor is still there, ms: longer than between two keystrokes of
 * somebody who types slowly, shorter than it takes to look up at the list of problems.
 */
const settlingTime = 400;

/** Serves one client, which has sent `initialize`, until it says `exit`. What it gives is called before each message. */
export function serve(connection: Connection, host: Host, params: InitializeParams): () => void {
  const typing = new Typing();
  const checking = new Checking({
    work: () => store.work(),
    publish: (uri) => publisher.publish(uri),
    isUrgent: (uri) => store.isOpen(uri),
    isWaiting: () => store.isWaiting,
    done: finished,
    failed: (error) =>
      connection.console.error(`The check failed: ${error instanceof Error ? error.stack : String(error)}`),
  });
  const store = new DocumentStore(host.files, checking, (folder) => host.results(folder));
  const documents = new TextDocuments({
    create: TextDocument.create,
    update(document, changes, version) {
      const edited = TextDocument.update(document, changes, version);
      typing.edited(edited, changes.at(-1));
      return edited;
    },
  });
  let settings = settingsSchema.parse({});
  /** What the first check has found is there for the next session, however this one ends. */
  let isKept = false;
  const { capabilities: client, rootUri } = params;
  const named = (params.workspaceFolders ?? []).map(({ uri }) => uri);
  const folders = named.length === 0 && rootUri ? [rootUri] : named;
  const snippets = client.workspace?.workspaceEdit?.snippetEditSupport === true;
  const completesSnippets = client.textDocument?.completion?.completionItem?.snippetSupport === true;
  const watches = client.workspace?.didChangeWatchedFiles?.dynamicRegistration === true;
  const refreshesHints = client.workspace?.inlayHint?.refreshSupport === true;
  const configures = client.workspace?.configuration === true;
  const read = initializationOptions.safeParse(params.initializationOptions ?? {});
  if (!read.success) connection.console.warn(`Initialization options were not understood: ${read.error.message}`);
  const options = read.success ? read.data : {};
  const pages = options.rulePages ?? host.rulePages();
  const explain = options.explainCommand ?? null;

  const pageOf = (rule: string): string | null => {
    const page = rulePage(rule);
    return pages === null || page === null ? null : `${pages.replace(/\/$/u, '')}/${page}`;
  };
  /** Of what is said: as it is set, else that of the editor. */
  const language = () => languageOf(settings.language) ?? languageOf(params.locale ?? '') ?? 'en';
  const reader = () => readerOf(language());
  const clientUri = (uri: string) => store.clientUri(uri);
  const toDiagnostic = (diagnostic: Diagnostic) => diagnosticOf(diagnostic, pageOf, clientUri, client, language());
  const session = {
    connection,
    store,
    settings: () => settings,
    options,
    reader,
    pageOf,
    visits: (folder: string) => host.visits(folder),
    diagnosticOf: toDiagnostic,
  };
  registerFeatures(session);
  const publisher = new Publisher(connection, store, typing, toDiagnostic);

  let settling: ReturnType<typeof setTimeout> | undefined;
  /** The word that was being typed is finished: what is found there is shown. */
  const finishWord = () => {
    const { uri } = typing;
    typing.finish();
    if (uri !== null) publisher.publish(store.canonical(uri));
    if (publisher.isHolding) finished();
  };

  /** All is checked and published. */
  function finished() {
    if (publisher.isHolding && typing.uri !== null) return;
    publisher.isHolding = false;
    if (!isKept && !store.isWaiting) {
      isKept = true;
      store.keep();
    }
    void connection.sendNotification(checkedMethod, publisher.counts());
    // A hint may follow from another file: the shop's drawer, the procedure's rate.
    if (refreshesHints) void connection.languages.inlayHint.refresh();
  }

  connection.onInitialized(async () => {
    const scanned = store.scan(folders);
    if (watches) {
      await connection.client.register(DidChangeWatchedFilesNotification.type, {
        watchers: [{ globPattern: '**/*.rebuild' }, { globPattern: '**/handtight.json' }],
      });
    }
    if (registersFormatting(client.textDocument)) await registerFormatting(connection);
    await readSettings();
    await scanned;
  });

  async function readSettings(): Promise<void> {
    if (!configures) return;
    try {
      const said = language();
      const read = settingsSchema.safeParse(await connection.workspace.getConfiguration('handtight'));
      if (read.success) {
        settings = read.data;
        const { scope } = settings.problems;
        if (scope !== publisher.scope || language() !== said) {
          publisher.scope = scope;
          publisher.publishAll();
        }
      } else connection.console.warn(`A setting of Handtight was not understood: ${read.error.message}`);
    } catch {
      // A client may say that it has settings and then not answer: the defaults hold.
    }
  }

  connection.onDidChangeConfiguration(async () => {
    await readSettings();
    if (refreshesHints) void connection.languages.inlayHint.refresh();
    checking.resume();
  });

  connection.onDidChangeWatchedFiles(({ changes }) => {
    void Promise.all(changes.map(({ uri }) => store.refresh(uri))).then(() => checking.resume());
  });

  documents.onDidChangeContent(({ document }) => {
    store.open(document);
    clearTimeout(settling);
    settling = setTimeout(finishWord, settlingTime);
  });
  documents.onDidClose(({ document }) => {
    store.close(document);
    // It may have been deleted, or changed without a word from the watcher, while it was open.
    void store.refresh(document.uri);
  });
  documents.listen(connection);

  connection.onDocumentSymbol(({ textDocument: { uri } }) =>
    outlineOf(store.snapshot(uri), store.canonical(uri)).map(documentSymbol),
  );

  connection.onCompletion(({ textDocument: { uri }, position, context }) => {
    if (!store.isOpen(uri) || isSettings(uri)) return [];
    const onlyNames = context?.triggerKind === CompletionTriggerKind.TriggerCharacter;
    const options = { snippets: completesSnippets, onlyNames };
    return completionsAt(store.snapshot(uri), store.canonical(uri), position, options).map((one) =>
      completionItem(one, uri, reader()),
    );
  });
  connection.onCompletionResolve((item) => resolvedItem(item, (uri) => store.snapshot(uri), reader()));

  connection.onHover(async ({ textDocument: { uri }, position }) => {
    const { specMarkdown } = await import('../../language/ide/hover/spec.ts');
    const hover = hoverAt(store.snapshot(uri), store.canonical(uri), position, reader(), specMarkdown);
    const [known] = await knownSerials(session, uri, serialsAt(store.snapshot(uri), store.canonical(uri), position));
    const told = known === undefined ? [] : [visitMarkdown(known.serial, known.visit, reader().tell)];
    const range = hover?.range ?? known?.range;
    if (range === undefined) return null;
    const value = [...(hover === null ? [] : [hover.markdown]), ...told].join('\n\n---\n\n');
    return { range, contents: { kind: 'markdown', value } };
  });

  connection.onDefinition(({ textDocument: { uri }, position }) =>
    definitionsAt(store.snapshot(uri), store.canonical(uri), position).map(
      ({ file, range }): Location => ({ uri: clientUri(file), range }),
    ),
  );

  connection.onCodeAction(({ textDocument: { uri }, range, context: { only } }) => {
    if (!store.isOpen(uri)) return [];
    // Edits are made in the text as it is now.
    store.bringUpToDate(uri);
    const snapshot = store.snapshot(uri);
    const file = store.canonical(uri);
    const versionOf = (of: string) => store.document(of)?.version ?? null;
    const editing = { clientUri, versionOf, snippets, diagnosticOf: toDiagnostic, explain, reader: reader() };
    const wants = (kind: string) =>
      only === undefined || only.some((one) => kind === one || kind.startsWith(`${one}.`));
    const actions = wants(CodeActionKind.QuickFix)
      ? actionsIn(snapshot, file, range, language()).flatMap((action) => codeAction(action, editing))
      : [];
    // Only when it is requested by kind: on save, or from the menu of source actions.
    const all = only !== undefined && wants(fixAllKind) ? fixAll(allSafeChanges(snapshot, file), editing) : null;
    const refactorings =
      wants(CodeActionKind.RefactorExtract) || wants(CodeActionKind.RefactorRewrite)
        ? refactoringsIn(snapshot, file, range)
            .map((one) => refactoringAction(one, changesOf(one.edits, snapshot), editing))
            .filter(({ kind }) => wants(kind!))
        : [];
    return [...actions, ...refactorings, ...(all === null ? [] : [all])];
  });

  // Pages are loaded with the first request, so that an editor that starts does not wait for them.
  connection.onRequest<SheetResult, void>(
    sheetMethod,
    unlessCanceled(async (params: unknown) => {
      const { sheetAt } = await import('./pages.ts');
      return sheetAt(store, host, understood(sheetParams, params), reader());
    }),
  );
  connection.onRequest<SpecsResult, void>(
    specsMethod,
    unlessCanceled(async (params: unknown) => {
      const { specsAt } = await import('./pages.ts');
      return specsAt(store, host, understood(placeParams, params), reader());
    }),
  );
  connection.onRequest<DrawingResult, void>(
    drawingMethod,
    unlessCanceled(async (params: unknown) => {
      const { drawingAt } = await import('./pages.ts');
      return drawingAt(store, host, understood(placeParams, params), reader());
    }),
  );
  connection.onRequest<StateResult, void>(
    stateMethod,
    unlessCanceled(async (params: unknown) => {
      const { stateOf } = await import('./pages.ts');
      return stateOf(store, understood(placeParams, params), reader());
    }),
  );
  connection.onRequest<PrintResult, void>(
    printMethod,
    unlessCanceled(async (params: unknown) => {
      const { printAt } = await import('./print.ts');
      const to = understood(printParams, params);
      await checking.settled();
      return printAt(store, host, to, reader());
    }),
  );
  connection.onRequest<PrintLinkResult, void>(
    printLinkMethod,
    unlessCanceled(async (params: unknown) => {
      const link = understood(printLinkParams, params);
      await checking.settled();
      return resolvePrintLink(store, host, link, reader());
    }),
  );

  connection.onRequest<FamilyChoicesResult, void>(
    familyChoicesMethod,
    unlessCanceled(async (params: unknown) => {
      const { choicesFor } = await import('./first-procedure.ts');
      return choicesFor(store, understood(familyChoicesParams, params));
    }),
  );
  connection.onRequest<FirstProcedureResult, void>(
    firstProcedureMethod,
    unlessCanceled(async (params: unknown) => {
      const { firstProcedureFor } = await import('./first-procedure.ts');
      const draft = understood(firstProcedureParams, params);
      return firstProcedureFor(store, draft, reader().tell);
    }),
  );

  connection.onShutdown(() => {
    clearTimeout(settling);
    checking.stop();
    store.stop();
    store.keep();
  });
  return () => checking.notice();
}

/** Parameters of a request through their schema; a refusal says what was wrong with them. */
function understood<T extends z.ZodType>(schema: T, params: unknown): z.output<T> {
  const read = schema.safeParse(params);
  if (read.success) return read.data;
  throw new ResponseError(ErrorCodes.InvalidParams, read.error.message);
}
