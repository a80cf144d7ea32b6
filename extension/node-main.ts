/** The extension's entry where there is Node: the server is a process, and so are assistants, tasks and answers from records. */
import { commands, type ExtensionContext } from 'vscode';
import { LanguageClient, type ServerOptions, TransportKind } from 'vscode-languageclient/node';
import { registerAssistant } from './assistant.ts';
import { type Handtight, start } from './client.ts';
import { registerRecords } from './records.ts';
import { registerTasks } from './tasks.ts';

export { deactivate } from './client.ts';

export function activate(context: ExtensionContext): Promise<Handtight> {
  const module = context.asAbsolutePath('out/server.cjs');
  const server: ServerOptions = {
    run: { module, transport: TransportKind.ipc },
    debug: { module, transport: TransportKind.ipc, options: { execArgv: ['--nolazy', '--inspect=6009'] } },
  };
  context.subscriptions.push(registerAssistant(context), registerTasks(context), registerRecords(context));
  void commands.executeCommand('setContext', 'handtight.hasDisk', true);
  return start(context, (options) => new LanguageClient('handtight', 'Handtight', server, options));
}
