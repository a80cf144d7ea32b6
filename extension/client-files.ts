/** Gives the server the files that it cannot reach itself: all of them in a browser, those of virtual folders elsewhere. */
import { Disposable, FileSystemError, FileType, Uri, workspace } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { settingsName } from '../language/config/settings-name.ts';
import {
  type FindFilesParams,
  findFilesMethod,
  type ReadFileParams,
  type ReadFileResult,
  readFileMethod,
} from '../server/host/client-files.ts';
import { isNamePassedOver, isRead, mostFiles } from '../server/host/files/which-files.ts';
import { l10n } from './words.ts';

export function registerClientFiles(client: BaseLanguageClient): Disposable {
  return Disposable.from(
    client.onRequest(findFilesMethod, async ({ folders }: FindFilesParams) => {
      const found = await Promise.all(folders.map((folder) => filesOf(Uri.parse(folder))));
      return [...new Set(found.flat().map(String))];
    }),
    client.onRequest<ReadFileResult, void>(readFileMethod, (params: ReadFileParams) => read(Uri.parse(params.uri))),
  );
}

/** What is below a folder, and settings above it. A search would leave out what the editor's own settings leave out. */
async function filesOf(folder: Uri): Promise<Uri[]> {
  const found: Uri[] = [];
  for (let at = folder; at.path !== '/' && at.path !== ''; at = Uri.joinPath(at, '..')) {
    const settings = Uri.joinPath(at, '..', settingsName);
    if (await isThere(settings)) found.push(settings);
  }
  const folders = [folder];
  // One more than is read, so that the server can say that there are more.
  for (let at = folders.shift(); at !== undefined && found.length <= mostFiles; at = folders.shift()) {
    for (const [name, type] of await entriesOf(at)) {
      if (isNamePassedOver(name)) continue;
      const uri = Uri.joinPath(at, name);
      // A link to a folder may lead back to where it is, and nothing here says so.
      if (type === FileType.Directory) folders.push(uri);
      else if ((type & FileType.File) !== 0 && isRead(name)) found.push(uri);
    }
  }
  return found;
}

async function isThere(uri: Uri): Promise<boolean> {
  try {
    return ((await workspace.fs.stat(uri)).type & FileType.File) !== 0;
  } catch {
    return false;
  }
}

/** A folder that cannot be listed costs itself. */
async function entriesOf(folder: Uri): Promise<[string, FileType][]> {
  try {
    return await workspace.fs.readDirectory(folder);
  } catch {
    return [];
  }
}

async function read(uri: Uri): Promise<ReadFileResult> {
  try {
    return { text: new TextDecoder().decode(await workspace.fs.readFile(uri)) };
  } catch (error) {
    if (error instanceof FileSystemError && error.code === 'FileNotFound') return null;
    return {
      problem: l10n.t('This file could not be read: {0}', error instanceof Error ? error.message : String(error)),
    };
  }
}
