/** Opens what a printed sheet was made of: its code is a link to here. */
import { type Disposable, l10n, Position, Range, Uri, type UriHandler, window } from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';
import { type OriginAnswer, type OriginQuestion, originMethod } from './requests.ts';

export function registerOrigin(client: LanguageClient): Disposable {
  return window.registerUriHandler(new SheetLinks(client));
}

class SheetLinks implements UriHandler {
  readonly #client: LanguageClient;

  constructor(client: LanguageClient) {
    this.#client = client;
  }

  async handleUri(uri: Uri): Promise<void> {
    const said = new URLSearchParams(uri.query);
    if (uri.path !== '/sheet') return;
    const question: OriginQuestion = {
      procedure: said.get('procedure') ?? '',
      job: said.get('job') ?? '',
      hash: said.get('hash') ?? '',
    };
    const answer = await this.#client.sendRequest<OriginAnswer>(originMethod, question);
    if (answer.kind === 'none') {
      void window.showWarningMessage(answer.reason);
      return;
    }
    const { line, character } = answer.position;
    const at = new Position(line, character);
    await window.showTextDocument(Uri.parse(answer.uri), { selection: new Range(at, at) });
    if (!answer.same)
      void window.showWarningMessage(
        l10n.t(
          'The text has changed since this sheet was printed, or a sheet of another revision is there. Print it again before work continues.',
        ),
      );
  }
}
