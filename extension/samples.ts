/** The library that comes with the extension. */
import { commands, type Disposable, Uri, window, workspace } from 'vscode';
import { packagedFiles, packagedText } from './packaged.ts';
import { l10n } from './words.ts';

export interface Sample {
  /** Path from the folder of the library. */
  readonly uri: string;
  readonly text: string;
}

/** All procedures of the library but the one that is wrong on purpose. */
export async function readSamples(extensionUri: Uri): Promise<Sample[]> {
  const paths = await packagedFiles(extensionUri, 'samples');
  return Promise.all(
    paths.map(async (path) => ({
      uri: path.replace(/^procedures\//u, ''),
      text: await packagedText(extensionUri, path),
    })),
  );
}

/** The command `handtight.samples`: copies the library into a folder of its own, and opens that. */
export function registerSamples(extensionUri: Uri): Disposable {
  return commands.registerCommand('handtight.samples', async (into?: string): Promise<string | undefined> => {
    const chosen =
      into !== undefined
        ? [Uri.parse(into)]
        : await window.showOpenDialog({
            canSelectFolders: true,
            canSelectFiles: false,
            openLabel: l10n.t('Put the samples here'),
            title: l10n.t('A folder for the samples'),
          });
    const base = chosen?.[0];
    if (base === undefined) return undefined;
    const folder = Uri.joinPath(base, 'handtight-samples');
    const isThere = await workspace.fs.stat(folder).then(
      () => true,
      () => false,
    );
    if (isThere) {
      void window.showErrorMessage(l10n.t('{0} is there already. Nothing was overwritten.', folder.fsPath));
      return undefined;
    }
    for (const { uri, text } of await readSamples(extensionUri))
      await workspace.fs.writeFile(Uri.joinPath(folder, ...uri.split('/')), new TextEncoder().encode(text));
    if (into === undefined) await commands.executeCommand('vscode.openFolder', folder, { forceNewWindow: false });
    return folder.toString();
  });
}
