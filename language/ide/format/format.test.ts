import fc from 'fast-check';
import { expect, test } from 'vitest';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { corpusFiles } from '../../../tests/corpus/files.ts';
import { libraryFiles } from '../../../tests/library.ts';
import { checkFiles } from '../../db/workspace.ts';
import { parse } from '../../syntax/parse.ts';
import { scan } from '../../syntax/scan.ts';
import { formatEdits, formatTyped, formatted, unreadable } from './format.ts';

test('indentation by braces, one more where a statement goes on', () => {
  expect(
    formatted(`procedure p "P" for f at s
 revision A
{
stage one at strip {
      // Remark of the step.
  check body.end,
        spacer.top
      reuse if "bright"
wash  body ,nut in solvent   takes 15 min//long
   only A-220 { tag }
}
      }
`),
  ).toBe(`procedure p "P" for f at s
  revision A
{
  stage one at strip {
    // Remark of the step.
    check body.end,
      spacer.top
      reuse if "bright"
    wash body, nut in solvent   takes 15 min   //long
    only A-220 { tag }
  }
}
`);
});

test('specs, values and parts in columns', () => {
  expect(
    formatted(`procedure p "P" for f at s {
  spec opening "Opening pressure" pressure 250 bar + 8 - 0 , in service at least 200 bar source "Sheet"
  spec nut-fit torque 60 N·m ± 5 source "Sheet"

  number A-220 {
    opening 220 bar +8 -0 source "Sheet"
    nut-fit 55..65 N·m source "Sheet"
  }
}
`),
  ).toBe(`procedure p "P" for f at s {
  spec opening  "Opening pressure"  pressure  250 bar +8 -0, in service at least 200 bar   source "Sheet"
  spec nut-fit                      torque    60 N·m ±5                                    source "Sheet"

  number A-220 {
    opening  220 bar +8 -0   source "Sheet"
    nut-fit  55..65 N·m      source "Sheet"
  }
}
`);
});

test('what is set off in a table keeps a column of its own', () => {
  expect(
    formatted(`family f "F" {
  part body "Body"   held in "vise"
  part nut "Nut" on body   holds nozzle
}
`),
  ).toBe(`family f "F" {
  part body  "Body"  held in "vise"
  part nut   "Nut"   on body  holds nozzle
}
`);
});

test('line ends and a mark at the beginning stay', () => {
  expect(formatted('\ufeffshop s "S" {\r\nstation a "A" dirty\r\n}\r\n')).toBe(
    '\ufeffshop s "S" {\r\n  station a "A" dirty\r\n}\r\n',
  );
});

test('a text that cannot be read says where', () => {
  expect(unreadable('shop s "S" {\n  station a "A\n}\n')).toMatchObject({ line: 1 });
  expect(unreadable('shop s "S" {\n}\n')).toBeNull();
});

const texts = [...libraryFiles(), ...corpusFiles()];

/** As a client applies edits. */
const edited = (text: string, edits: ReturnType<typeof formatEdits>) =>
  TextDocument.applyEdits(
    TextDocument.create('x', 'rebuild', 1, text),
    edits.map(({ source: { range }, text: newText }) => ({ range, newText })),
  );

/** A text without white space. */
const black = (text: string) => text.replace(/\s/gu, '');
const tokens = (text: string) =>
  scan(text).lines.map((line) => line.tokens.map(({ name, image }) => `${name} ${image}`));

function expectLaidOut(text: string) {
  const put = formatted(text);
  expect(black(put)).toBe(black(text));
  expect(tokens(put)).toEqual(tokens(text));
  expect(parse(put).problems.length).toBe(parse(text).problems.length);
  expect(formatted(put)).toBe(put);
  return put;
}

test.each(texts)('$uri: nothing but white space, and a second time nothing', ({ uri, text }) => {
  const put = expectLaidOut(text);
  expect(edited(text, formatEdits(text, uri))).toBe(put);
});

test('the library says the same when it is laid out', () => {
  const found = (files: typeof texts) =>
    checkFiles(files).diagnostics.map(
      ({ rule, message, source }) => `${source.file}:${source.range.start.line} ${rule} ${message}`,
    );
  const library = libraryFiles();
  expect(found(library.map((file) => ({ ...file, text: formatted(file.text) })))).toEqual(found(library));
});

test('random white space, cuts and words: nothing but white space changes', () => {
  const lines = texts.flatMap(({ text }) => text.split('\n'));
  const blanks = fc.constantFrom(' ', '  ', '\t', '    ', '');
  const piece = fc.tuple(blanks, fc.constantFrom(...lines), blanks, fc.constantFrom('\n', '\r\n', '\n\n', ' '));
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 40 }), (pieces) => {
      expectLaidOut(
        pieces.map(([before, line, after, end]) => before + line.replaceAll(' ', `${after} `) + end).join(''),
      );
    }),
    { numRuns: 300, seed: 1 },
  );
});

test('when a line is ended, it and what shares its columns is laid out, and nothing else', () => {
  const text = 'shop s "S" {\nstation a "A" dirty\nstation long-name "B" clean\n\n   unless stated torque ±10 %\n}\n';
  expect(edited(text, formatTyped(text, 'x', 2))).toBe(
    'shop s "S" {\n  station a          "A"  dirty\n  station long-name  "B"  clean\n\n   unless stated torque ±10 %\n}\n',
  );
});
