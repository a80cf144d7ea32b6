/** The place that a command is about. */
import { Disposable, Position, TabInputText, type TextEditor, type Uri, window } from 'vscode';

export interface RebuildPlace {
  readonly uri: Uri;
  readonly position: Position;
}

/** Where the cursor was last in each file, by its URI. */
const last = new Map<string, Position>();

/** Keeps where the cursor was: an editor behind another tab does not say. */
export function rememberPlaces(): Disposable {
  const keep = (editor: TextEditor | undefined) => {
    if (editor?.document.languageId !== 'rebuild') return;
    const uri = editor.document.uri.toString();
    // The last one is the last of the map.
    last.delete(uri);
    last.set(uri, editor.selection.active);
  };
  keep(window.activeTextEditor);
  return Disposable.from(
    window.onDidChangeActiveTextEditor(keep),
    window.onDidChangeTextEditorSelection(({ textEditor }) => keep(textEditor)),
  );
}

/** The editor that a command is about: the active one, or where another tab is, such as the tour, one that can be seen. */
export function rebuildEditor(): TextEditor | undefined {
  return [window.activeTextEditor, ...window.visibleTextEditors].find(
    (editor) => editor?.document.languageId === 'rebuild',
  );
}

/** The cursor of that editor; where none can be seen, that of a file behind another tab, the one that was left last. */
export function rebuildPlace(): RebuildPlace | undefined {
  const editor = rebuildEditor();
  if (editor !== undefined) return { uri: editor.document.uri, position: editor.selection.active };
  const isRebuild = (uri: Uri) => last.has(uri.toString()) || /\.rebuild$/u.test(uri.path);
  const behind = window.tabGroups.all
    .flatMap(({ tabs }) => tabs)
    .flatMap(({ input }) => (input instanceof TabInputText && isRebuild(input.uri) ? [input.uri] : []));
  const left = [...last.keys()];
  const when = (uri: Uri) => left.indexOf(uri.toString());
  const uri = behind.sort((a, b) => when(b) - when(a))[0];
  return uri && { uri, position: last.get(uri.toString()) ?? new Position(0, 0) };
}
