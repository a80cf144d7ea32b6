import { describe, expect, it } from 'vitest';
import type { Edit } from '../model/diagnostic.ts';
import { stepBefore } from './edits.ts';
import { edited } from './fixes.ts';

const text = 'stage s at b {\n\tclamp body\n\tremove nut   remove shim  // both\n\tcap inlet\n}\n';

/** A text with an edit as it fits; the place is that of a word. */
function put(whole: string, word: string, edit: (source: Edit['source']) => Edit): string {
  const offset = whole.indexOf(word);
  const lines = whole.slice(0, offset).split(/\r\n|\n|\r/u);
  const start = { line: lines.length - 1, character: lines.at(-1)!.length };
  const end = { line: start.line, character: start.character + word.length };
  return edited(whole, [edit({ file: 'x', range: { start, end } })]);
}

const out = (source: Edit['source']): Edit => ({ source, text: '' });
const before = (source: Edit['source']) => stepBefore(source, 'slacken nut');

describe('an edit fits into its text', () => {
  it('as a line of its own before a step that begins its line, with its indentation and line end', () => {
    expect(put(text, 'remove nut', before)).toBe(text.replace('remove nut', 'slacken nut\n\tremove nut'));
    const windows = text.replaceAll('\n', '\r\n');
    expect(put(windows, 'remove nut', before)).toBe(windows.replace('remove nut', 'slacken nut\r\n\tremove nut'));
    const old = text.replaceAll('\n', '\r');
    expect(put(old, 'remove nut', before)).toBe(old.replace('remove nut', 'slacken nut\r\tremove nut'));
    // The last line has no end of its own.
    expect(put('{\r\n  cap inlet', 'cap inlet', before)).toBe('{\r\n  slacken nut\r\n  cap inlet');
  });

  it('in the same line before a step that does not', () => {
    expect(put(text, 'remove shim', before)).toBe(text.replace('remove shim', 'slacken nut   remove shim'));
  });

  it('and leaves no blanks where a step is taken out', () => {
    expect(put(text, 'cap inlet', out)).toBe(text.replace('\tcap inlet\n', ''));
    expect(put(text, 'remove nut', out)).toBe(text.replace('remove nut   ', ''));
    expect(put(text, 'remove shim', out)).toBe(text.replace('   remove shim', ''));
  });
});
