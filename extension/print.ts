/** The command `handtight.print`: the procedure or job at the cursor, to a PDF in the workspace, or a page where none can be made. */
import { commands, type Disposable, env, ProgressLocation, Uri, window, workspace } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { rebuildPlace } from './rebuild-place.ts';
import { type PrintParams, type PrintResult, printMethod } from './requests.ts';
import { l10n } from './words.ts';

/** A place to print from; without one the active editor's cursor is taken. */
export interface PrintPlace {
  readonly uri: string;
  readonly position?: { readonly line: number; readonly character: number } | undefined;
  readonly form?: PrintParams['form'];
}

/** Registers the command; it returns the URI of the file that it wrote, for other commands and tests. */
export function registerPrint(client: BaseLanguageClient): Disposable {
  return commands.registerCommand('handtight.print', async (place?: PrintPlace): Promise<string | undefined> => {
    const from = place ?? activePlace();
    if (from === undefined) {
      void window.showInformationMessage(l10n.t('Open a .rebuild file to print from.'));
      return undefined;
    }
    const folder = printFolder(Uri.parse(from.uri));
    if (folder === undefined) return undefined;
    const ask = (draft: boolean) =>
      print(client, { ...from, folder: folder.toString(), ...paper(Uri.parse(from.uri)), draft });
    let result = await ask(false);
    if (result.kind === 'errors') {
      const draft = l10n.t('Print a Draft');
      const problems = l10n.t('Show Problems');
      const count = result.errors === 1 ? l10n.t('one error') : l10n.t('{0} errors', result.errors);
      const chosen = await window.showWarningMessage(
        l10n.t(
          '"{0}" has {1} and is not released for the bench. A draft is marked as one on every page.',
          result.title,
          count,
        ),
        draft,
        problems,
      );
      if (chosen === problems) await commands.executeCommand('workbench.actions.view.problems');
      if (chosen !== draft) return undefined;
      result = await ask(true);
    }
    if (result.kind === 'page') return savePage(folder, result);
    if (result.kind !== 'printed') {
      void window.showErrorMessage(result.kind === 'none' ? result.reason : l10n.t('It could not be printed.'));
      return undefined;
    }
    for (const note of result.notes) void window.showWarningMessage(note);
    void offerToOpen(Uri.parse(result.file));
    return result.file;
  });
}

function print(client: BaseLanguageClient, params: PrintParams): Promise<PrintResult> {
  const title = l10n.t('Handtight: printing');
  return Promise.resolve(
    window.withProgress({ location: ProgressLocation.Window, title }, () =>
      client.sendRequest<PrintResult>(printMethod, params),
    ),
  );
}

/** Says why there is no PDF, and offers the sheet as a page. */
async function savePage(
  folder: Uri,
  { name, html }: Extract<PrintResult, { kind: 'page' }>,
): Promise<string | undefined> {
  const save = l10n.t('Save as HTML');
  const chosen = await window.showInformationMessage(
    l10n.t(
      'No PDF can be made here: that needs the desktop editor and a folder on its disk. The same sheet can be saved as an HTML page, which any browser prints.',
    ),
    save,
  );
  if (chosen !== save) return undefined;
  const file = `${name.replace(/[^\p{L}\p{N}._-]+/gu, '-')}.html`;
  const to = await window.showSaveDialog({
    defaultUri: Uri.joinPath(folder, file),
    filters: { HTML: ['html'] },
    title: l10n.t('Save the sheet'),
  });
  if (to === undefined) return undefined;
  await workspace.fs.writeFile(to, new TextEncoder().encode(html));
  void window.showInformationMessage(
    l10n.t('Saved to {0}. Open it in a browser, and print it from there.', workspace.asRelativePath(to)),
  );
  return to.toString();
}

/** Not awaited by the command: a message that nobody answers must not hold it. */
async function offerToOpen(file: Uri): Promise<void> {
  const open = l10n.t('Open');
  const folder = l10n.t('Show in Folder');
  const choices = env.remoteName === undefined ? [open, folder] : [open];
  const chosen = await window.showInformationMessage(
    l10n.t('Printed to {0}', workspace.asRelativePath(file)),
    ...choices,
  );
  if (chosen === folder) await commands.executeCommand('revealFileInOS', file);
  // The system's PDF viewer prints well; where files are on another machine the editor has to show them.
  if (chosen === open) {
    if (env.remoteName === undefined) await env.openExternal(file);
    else await commands.executeCommand('vscode.open', file);
  }
}

function activePlace(): PrintPlace | undefined {
  const place = rebuildPlace();
  if (place === undefined) return undefined;
  const { line, character } = place.position;
  return { uri: place.uri.toString(), position: { line, character } };
}

/** Nothing where it is left to the settings file. */
function paper(document: Uri): { paper?: 'a4' | 'letter' } {
  const asked = workspace.getConfiguration('handtight', document).get<string>('print.paper');
  return asked === 'a4' || asked === 'letter' ? { paper: asked } : {};
}

/** The folder of the setting, inside the workspace folder of the document: a setting must not lead out of it. */
function printFolder(document: Uri): Uri | undefined {
  const base =
    workspace.getWorkspaceFolder(document)?.uri ??
    (document.scheme !== 'untitled' ? Uri.joinPath(document, '..') : undefined);
  if (base === undefined) {
    void window.showErrorMessage(l10n.t('Save the file first: the sheet is printed into a folder beside it.'));
    return undefined;
  }
  const setting = workspace.getConfiguration('handtight', document).get<string>('print.folder', 'traveler');
  const folder = Uri.joinPath(base, setting);
  const inside = folder.path === base.path || folder.path.startsWith(base.path.replace(/\/?$/, '/'));
  if (inside) return folder;
  void window.showErrorMessage(l10n.t('The setting handtight.print.folder leads out of the workspace: {0}', setting));
  return undefined;
}
