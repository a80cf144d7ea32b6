import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { Position, Range } from 'vscode-languageserver-types';

/** What a word is made of that is being typed: a name, a number, a word of the language. */
const wordSign = /[\p{L}\p{N}\p{M}_.-]/u;

/**
 * The word that is being typed. It is not called wrong before it is finished: before another is begun, something is typed
 * elsewhere, or a pause.
 */
export class Typing {
  #at: { readonly uri: string; readonly word: Range } | null = null;

  /** Takes note of the last change to a document, which has been made in it. */
  edited(document: TextDocument, change: { readonly range?: Range; readonly text: string } | undefined): void {
    this.#at = null;
    if (change?.range === undefined || change.text.includes('\n')) return;
    const { line, character } = change.range.start;
    const word = wordAround(document, { line, character: character + change.text.length });
    if (word !== null) this.#at = { uri: document.uri, word };
  }

  /** The document of the word; null: there is none. */
  get uri(): string | null {
    return this.#at?.uri ?? null;
  }

  /** Whether a range is at the word, and not that of a block around it. */
  isAt(uri: string, { start, end }: Range): boolean {
    if (this.#at?.uri !== uri || start.line !== end.line) return false;
    const { word } = this.#at;
    return (
      start.line === word.start.line && start.character <= word.end.character && end.character >= word.start.character
    );
  }

  finish(): void {
    this.#at = null;
  }
}

function wordAround(document: TextDocument, { line, character }: Position): Range | null {
  const text = document.getText({ start: { line, character: 0 }, end: { line: line + 1, character: 0 } });
  let [start, end] = [character, character];
  while (start > 0 && wordSign.test(text[start - 1]!)) start--;
  while (end < text.length && wordSign.test(text[end]!)) end++;
  return start === end ? null : { start: { line, character: start }, end: { line, character: end } };
}
