/** The extension's entry in a browser: the server is a worker. */
import { type ExtensionContext, Uri } from 'vscode';
import { BrowserMessageReader, BrowserMessageWriter, LanguageClient } from 'vscode-languageclient/browser';
import { type Handtight, start } from './client.ts';

export { deactivate } from './client.ts';

/** Of the browser; the types of the project are those of Node. */
declare const Worker: new (address: string) => { terminate(): void };

export function activate(context: ExtensionContext): Promise<Handtight> {
  const script = Uri.joinPath(context.extensionUri, 'out/server-worker.js').toString(true);
  let worker: InstanceType<typeof Worker> | undefined;
  const server = async () => {
    worker?.terminate();
    worker = new Worker(script);
    // Made here: the client would ask whether it is a Worker, and the editor puts a function of its own in that one's place.
    const port = worker as unknown as ConstructorParameters<typeof BrowserMessageReader>[0];
    return { reader: new BrowserMessageReader(port), writer: new BrowserMessageWriter(port) };
  };
  context.subscriptions.push({ dispose: () => worker?.terminate() });
  return start(context, (options) => new LanguageClient('handtight', 'Handtight', server, options));
}
