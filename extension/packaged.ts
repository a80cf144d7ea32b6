/** The files that come with the extension. In a browser they are at an address: what there is has to be known beforehand. */
import { Uri, workspace } from 'vscode';
import type { Contents } from '../server/build/contents.ts';

export async function packagedFiles(extension: Uri, kind: keyof Contents): Promise<readonly string[]> {
  return (JSON.parse(await packagedText(extension, 'out/contents.json')) as Contents)[kind];
}

/** @param path from the folder of the extension */
export async function packagedText(extension: Uri, path: string): Promise<string> {
  return new TextDecoder().decode(await workspace.fs.readFile(Uri.joinPath(extension, path)));
}
