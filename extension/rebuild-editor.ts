import { type TextEditor, window } from 'vscode';

/** The editor that a command is about: the active one, or where another tab is, such as the tour, one that can be seen. */
export function rebuildEditor(): TextEditor | undefined {
  return [window.activeTextEditor, ...window.visibleTextEditors].find(
    (editor) => editor?.document.languageId === 'rebuild',
  );
}
