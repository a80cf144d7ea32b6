/** The library that comes with the extension. */
import { commands, type Disposable, FileType, l10n, Uri, window, workspace } from 'vscode';

export interface Sample {
  /** Path from the folder of the library. */
  readonly uri: string;
  readonly text: string;
}

/** All procedures of the library but the one that is wrong on purpose. */
export async function readSamples(extensionUri: Uri): Promise<Sample[]> {
  const root = Uri.joinPath(extensionUri, 'procedures');
  const found: Sample[] = [];
  const walk = async (folder: Uri, path: string): Promise<void> => {
    for (const [name, type] of await workspace.fs.readDirectory(folder)) {
      const at = Uri.joinPath(folder, name);
      if (type === FileType.Directory && `${path}${name}` !== 'flawed') await walk(at, `${path}${name}/`);
      else if (name.endsWith('.rebuild'))
        found.push({ uri: `${path}${name}`, text: new TextDecoder().decode(await workspace.fs.readFile(at)) });
    }
  };
  await walk(root, '');
  return found.sort((a, b) => (a.uri < b.uri ? -1 : 1));
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
