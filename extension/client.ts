/** The extension's entry: starts the language server and hangs the views and commands on it. */
import { commands, EventEmitter, type ExtensionContext, l10n, Uri, window, workspace } from 'vscode';
import {
  LanguageClient,
  type LanguageClientOptions,
  type Location as LspLocation,
  type Position as LspPosition,
  type ServerOptions,
  TransportKind,
} from 'vscode-languageclient/node';
import { registerAssistant } from './assistant.ts';
import { registerNewProcedure } from './new-procedure.ts';
import { registerPreview } from './preview.ts';
import { registerPrint } from './print.ts';
import { registerPrintLinks } from './print-link.ts';
import { type CheckedNotification, checkedMethod } from './requests.ts';
import { registerRulePages, rulePageUri } from './rule-pages.ts';
import { registerSamples } from './samples.ts';
import { registerStatus } from './status.ts';

let client: LanguageClient | undefined;

/** What other extensions, and the tests, may use: the running client. */
export interface Handtight {
  readonly client: LanguageClient;
}

export async function activate(context: ExtensionContext): Promise<Handtight> {
  const module = context.asAbsolutePath('out/server.cjs');
  const server: ServerOptions = {
    run: { module, transport: TransportKind.ipc },
    debug: { module, transport: TransportKind.ipc, options: { execArgv: ['--nolazy', '--inspect=6009'] } },
  };
  const options: LanguageClientOptions = {
    documentSelector: [
      { scheme: 'file', language: 'rebuild' },
      { scheme: 'untitled', language: 'rebuild' },
      // The settings of the workspace are checked as they are typed.
      { scheme: 'file', pattern: '**/handtight.json' },
    ],
    outputChannel: window.createOutputChannel('Handtight', { log: true }),
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
  client = new LanguageClient('handtight', 'Handtight', server, options);
  const running = client;
  // The client keeps one handler for a notification, the last that was given.
  const checked = new EventEmitter<CheckedNotification>();
  running.onNotification(checkedMethod, (result: CheckedNotification) => checked.fire(result));
  context.subscriptions.push(
    checked,
    registerStatus(running, checked.event),
    registerRulePages(context.extensionUri),
    registerPreview(context, running, checked.event),
    registerPrint(running),
    registerPrintLinks(running),
    registerAssistant(context),
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
      await running.restart();
      window.setStatusBarMessage(l10n.t('Handtight: the language server was restarted.'), 4000);
    }),
    // The server cannot see a change of the workspace's folders in its own index otherwise.
    workspace.onDidChangeWorkspaceFolders(() => running.restart()),
  );
  await running.start();
  return { client: running };
}

export async function deactivate(): Promise<void> {
  await client?.dispose();
}
