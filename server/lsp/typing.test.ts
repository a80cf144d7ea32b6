import { expect, test } from 'vitest';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { Typing } from './typing.ts';

const line = (start: number, end: number, at = 0) => ({
  start: { line: at, character: start },
  end: { line: at, character: end },
});

/** The text after something was typed at the marker, and whether the range is at the word that is being typed. */
function typed(marked: string, text: string) {
  const character = marked.indexOf('|');
  const document = TextDocument.create('a', 'rebuild', 1, marked.replace('|', ''));
  const change = { range: line(character, character), text };
  const typing = new Typing();
  typing.edited(TextDocument.update(document, [change], 2), change);
  return (start: number, end: number, at = 0, uri = 'a') => typing.isAt(uri, line(start, end, at));
}

test('the word that is being typed is not finished', () => {
  const isAt = typed('slacken nu|', 't');
  expect([isAt(8, 11), isAt(0, 11), isAt(11, 11)]).toEqual([true, true, true]);
  expect([isAt(0, 6), isAt(8, 11, 1), isAt(8, 11, 0, 'b')]).toEqual([false, false, false]);
});

test('it ends where the next one begins', () => {
  const isAt = typed('remove nut|', ',');
  expect(isAt(7, 10)).toBe(false);
  expect(typed('slacken nut|', ' ')(8, 11)).toBe(false);
});

test('a name with a hyphen is one word, from the middle too', () => {
  const isAt = typed('torque nut to nut-f|', 'i');
  expect(isAt(14, 20)).toBe(true);
  expect(typed('fit sha|m', 'i')(4, 9)).toBe(true);
});

test('several lines are put in, not typed', () => {
  expect(typed('|', 'fit nix\nfit nut')(4, 7, 1)).toBe(false);
});

test('a block is not a word, though the word is in it', () => {
  const document = TextDocument.create('a', 'rebuild', 1, 'stage x {\n  fit nu\n}\n');
  const change = { range: { start: { line: 1, character: 8 }, end: { line: 1, character: 8 } }, text: 't' };
  const typing = new Typing();
  typing.edited(TextDocument.update(document, [change], 2), change);
  expect(typing.isAt('a', { start: { line: 0, character: 0 }, end: { line: 2, character: 1 } })).toBe(false);
  typing.finish();
  expect(typing.isAt('a', line(6, 9, 1))).toBe(false);
});
