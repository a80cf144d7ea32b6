/** Opens what a printed sheet was made of: its code is a link to here. */
import { type Disposable, Position, Range, Uri, type UriHandler, window } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { type PrintLinkParams, type PrintLinkResult, printLinkMethod } from './requests.ts';
import { l10n } from './words.ts';

export function registerPrintLinks(client: BaseLanguageClient): Disposable {
  return window.registerUriHandler(new SheetLinks(client));
}

class SheetLinks implements UriHandler {
  readonly #client: BaseLanguageClient;

  constructor(client: BaseLanguageClient) {
    this.#client = client;
  }

  async handleUri(uri: Uri): Promise<void> {
    const said = new URLSearchParams(uri.query);
    if (uri.path !== '/sheet') return;
    const params: PrintLinkParams = {
      procedure: said.get('procedure') ?? '',
      job: said.get('job') ?? '',
      hash: said.get('hash') ?? '',
    };
    const result = await this.#client.sendRequest<PrintLinkResult>(printLinkMethod, params);
    if (result.kind === 'none') {
      void window.showWarningMessage(result.reason);
      return;
    }
    const { line, character } = result.position;
    const at = new Position(line, character);
    await window.showTextDocument(Uri.parse(result.uri), { selection: new Range(at, at) });
    if (!result.same)
      void window.showWarningMessage(
        l10n.t(
          'The text has changed since this sheet was printed, or a sheet of another revision is there. Print it again before work continues.',
        ),
      );
  }
}
