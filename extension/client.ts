/** What the extension is everywhere: a client of the language server, and the views and commands that need it. */
import { commands, EventEmitter, type ExtensionContext, Uri, window, workspace } from 'vscode';
import {
  type BaseLanguageClient,
  type LanguageClientOptions,
  type Location as LspLocation,
  type Position as LspPosition,
  State,
} from 'vscode-languageclient';
import { registerClientFiles } from './client-files.ts';
import { registerNewProcedure } from './new-procedure.ts';
import { registerPreview } from './preview.ts';
import { registerPrint } from './print.ts';
import { registerPrintLinks } from './print-link.ts';
import { rememberPlaces } from './rebuild-place.ts';
import { type CheckedNotification, checkedMethod } from './requests.ts';
import { registerRulePages, rulePageUri } from './rule-pages.ts';
import { registerSamples } from './samples.ts';
import { registerStateView } from './state-view.ts';
import { registerStatus } from './status.ts';
import { traceChannel } from './trace.ts';
import { l10n } from './words.ts';

let client: BaseLanguageClient | undefined;

/** What other extensions, and the tests, may use: the running client. */
export interface Handtight {
  readonly client: BaseLanguageClient;
}

/** Starts the server and registers everything. @param connect makes the client, for a process or a worker */
export async function start(
  context: ExtensionContext,
  connect: (options: LanguageClientOptions) => BaseLanguageClient,
): Promise<Handtight> {
  // A virtual folder has a scheme of its own. Other schemes are old states of a file, or text inside of something.
  const schemes = new Set(['file', 'untitled', ...(workspace.workspaceFolders ?? []).map(({ uri }) => uri.scheme)]);
  const outputChannel = window.createOutputChannel('Handtight', { log: true });
  const traceOutputChannel = traceChannel(outputChannel);
  const options: LanguageClientOptions = {
    documentSelector: [...schemes].flatMap((scheme) => [
      { scheme, language: 'rebuild' },
      // The settings of the workspace are checked as they are typed.
      { scheme, pattern: '**/handtight.json' },
    ]),
    outputChannel,
    traceOutputChannel,
    initializationOptions: {
      rulePages: Uri.joinPath(context.extensionUri, 'language/diagnostics/areas').toString(),
      explainCommand: 'handtight.explain',
      printCommand: 'handtight.print',
      usesCommand: 'handtight.showUses',
    },
    synchronize: { configurationSection: 'handtight' },
    middleware: {
      handleDiagnostics(uri, diagnostics, next) {
        // A file of the extension would open as plain text; the pages have a scheme that opens as a rendered page.
        for (const diagnostic of diagnostics) {
          const { code } = diagnostic;
          if (typeof code === 'object')
            diagnostic.code = { value: code.value, target: rulePageUri(String(code.value)) };
        }
        next(uri, diagnostics);
      },
    },
  };
  client = connect(options);
  const running = client;
  const restart = restartOf(running);
  // The client keeps one handler for a notification, the last that was given.
  const checked = new EventEmitter<CheckedNotification>();
  running.onNotification(checkedMethod, (result: CheckedNotification) => checked.fire(result));
  context.subscriptions.push(
    outputChannel,
    traceOutputChannel,
    checked,
    registerClientFiles(running),
    rememberPlaces(),
    registerStatus(running, checked.event),
    registerRulePages(context.extensionUri),
    registerPreview(context, running, checked.event),
    registerStateView(running, checked.event),
    registerPrint(running),
    registerPrintLinks(running),
    registerNewProcedure(running, context.extensionUri),
    registerSamples(context.extensionUri),
    commands.registerCommand('handtight.tour', () =>
      commands.executeCommand('workbench.action.openWalkthrough', `${context.extension.id}#start`, false),
    ),
    // The editor's own command takes its own kinds of places.
    commands.registerCommand(
      'handtight.showUses',
      (uri: string, position: LspPosition, uses: readonly LspLocation[]) => {
        const { asUri, asPosition, asLocation } = running.protocol2CodeConverter;
        const places = uses.map((use) => asLocation(use));
        return commands.executeCommand('editor.action.showReferences', asUri(uri), asPosition(position), places);
      },
    ),
    commands.registerCommand('handtight.showOutput', () => running.outputChannel.show()),
    commands.registerCommand('handtight.restartServer', async () => {
      await restart();
      window.setStatusBarMessage(l10n.t('Handtight: the language server was restarted.'), 4000);
    }),
    // The server cannot see a change of the workspace's folders in its own index otherwise.
    workspace.onDidChangeWorkspaceFolders(restart),
  );
  await running.start();
  await commands.executeCommand('setContext', 'handtight.isRunning', true);
  return { client: running };
}

/** Starts the server again, whatever it is doing; who asks meanwhile waits for the same. */
function restartOf(server: BaseLanguageClient): () => Promise<void> {
  let restarting: Promise<void> | undefined;
  const restart = async () => {
    try {
      // One that is starting cannot be stopped.
      if (server.state === State.Starting) await server.start();
      await server.stop();
    } catch {
      // It did not start, or did not answer: its connection is gone all the same.
    }
    await server.start();
  };
  return () => {
    restarting ??= restart().finally(() => {
      restarting = undefined;
    });
    return restarting;
  };
}

export async function deactivate(): Promise<void> {
  await client?.dispose();
}
