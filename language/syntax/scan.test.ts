import { describe, expect, it } from 'vitest';
import { english } from '../say/say.ts';
import { scan } from './scan.ts';
import { tables } from './tables.generated.ts';

const tokensOf = (text: string) =>
  scan(text).lines.map(({ tokens }) => tokens.map(({ name, image }) => (name === image ? name : `${name} ${image}`)));

describe('the scanner', () => {
  it.each(tables.keywords)('reads the keyword %s as one token', (keyword) => {
    expect(tokensOf(keyword)).toEqual([[keyword]]);
    expect(tokensOf(`${keyword} ${keyword}`)).toEqual([[keyword, keyword]]);
  });

  it('reads the lines of a text, whatever ends them, and none of its remarks', () => {
    expect(tokensOf('fit a-1 // now\r\n\r  12.5 bar..3 x\n"one" "two')).toEqual([
      ['fit', 'ID a-1'],
      [],
      ['QUANTITY 12.5 bar', '..', 'NUMBER 3', 'ID x'],
      ['STRING "one"', 'STRING "two'],
    ]);
  });

  it('reports what has no meaning once, with its whole first character', () => {
    const [line] = scan('fit 😀😀 a').lines;
    expect(line!.slips.map(({ column, length, message }) => [column, length, english(message)])).toEqual([
      [4, 4, '😀 has no meaning here: delete it, or put it inside "…".'],
    ]);
  });

  it('keeps the lines that an edit does not touch, at their new places', () => {
    const before = scan('shop a\nshop b\r\nshop c\nshop d');
    const [a, b, c, d] = before.lines;
    const { lines } = scan('shop a\nshop x\nshop y\r\nshop c\nshop d', before);
    expect(lines.map((line) => [a, b, c, d].indexOf(line))).toEqual([0, -1, -1, 2, 3]);
    expect(lines.map(({ number, offset }) => [number, offset])).toEqual([
      [0, 0],
      [1, 7],
      [2, 14],
      [3, 22],
      [4, 29],
    ]);
  });

  it('scans again where the end of a line changes', () => {
    for (const [one, other] of [
      ['a\rb', 'a\r\nb'],
      ['a\nb', 'a\r\nb'],
      ['a\r\nb', 'a\n\rb'],
      ['a\n', 'a'],
      ['', '\n'],
    ] as const)
      for (const [from, to] of [
        [one, other],
        [other, one],
      ]) {
        const shown = (text: ReturnType<typeof scan>) =>
          text.lines.map(({ number, offset, tokens }) => [number, offset, tokens.map(({ image }) => image)]);
        expect(shown(scan(to!, scan(from!)))).toEqual(shown(scan(to!)));
      }
  });
});
