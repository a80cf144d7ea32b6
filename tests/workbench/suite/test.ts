/** Small helps for the editor tests: there is no test runner in an extension host. */
import * as assert from 'node:assert/strict';
import {
  commands,
  type Diagnostic,
  extensions,
  languages,
  Position,
  Range,
  Selection,
  type TextDocument,
  type TextEditor,
  Uri,
  window,
  workspace,
} from 'vscode';
import type { Handtight } from '../../../extension/client.ts';

export { assert };

export interface Test {
  readonly name: string;
  run(): Promise<void>;
}

/** Waits until the answer is one, looking every 50 ms; says what was waited for when it does not come. */
export async function until<T>(
  what: string,
  look: () => T | Promise<T>,
  milliseconds = 15_000,
): Promise<NonNullable<T>> {
  const end = Date.now() + milliseconds;
  for (;;) {
    const found = await look();
    if (found) return found as NonNullable<T>;
    if (Date.now() > end) throw new Error(`waited in vain for ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

/** The extension, running. */
export async function extension(): Promise<Handtight> {
  const found = extensions.getExtension<Handtight>('handtight.handtight');
  assert.ok(found, 'the extension is there');
  return found.activate();
}

/** URI of a file of the test's workspace. */
export function fileUri(name: string): Uri {
  const [folder] = workspace.workspaceFolders ?? [];
  assert.ok(folder, 'a folder is open');
  return Uri.joinPath(folder.uri, name);
}

/** Opens a file of the workspace in the first column, as it is on the disk. */
export async function open(name: string): Promise<TextEditor> {
  await extension();
  const document = await workspace.openTextDocument(fileUri(name));
  const editor = await window.showTextDocument(document, { preview: false });
  if (document.isDirty) await commands.executeCommand('workbench.action.files.revert');
  return editor;
}

/** Diagnostics of a document that are this extension's. */
export function problems(document: TextDocument): Diagnostic[] {
  return languages.getDiagnostics(document.uri).filter(({ source }) => source === 'handtight');
}

/** Name of the rule that a diagnostic is of. */
export function rule({ code }: Diagnostic): string {
  return String(typeof code === 'object' ? code.value : code);
}

/** Range of the first occurrence of a text. */
export function find(document: TextDocument, text: string): Range {
  const offset = document.getText().indexOf(text);
  assert.ok(offset >= 0, `"${text}" is in the document`);
  return new Range(document.positionAt(offset), document.positionAt(offset + text.length));
}

/** Puts a text in the place of another, as an edit by hand. */
export async function replace(editor: TextEditor, old: string, text: string): Promise<void> {
  const range = find(editor.document, old);
  assert.ok(await editor.edit((edit) => edit.replace(range, text)));
}

/** Puts the cursor at a place. */
export function put(editor: TextEditor, line: number, character = 0): void {
  const place = new Position(line, character);
  editor.selection = new Selection(place, place);
}
