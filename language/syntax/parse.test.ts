import type { AstNode } from 'langium';
import { describe, expect, it } from 'vitest';
import { english } from '../say/say.ts';
import { parse } from './parse.ts';
import { contentsOf, textOf } from './place.ts';

/** The statements of a text as the grammar reads them, one a line: type and text. */
function read(text: string): string[] {
  const { ast } = parse(text);
  return [...contentsOf(ast)]
    .filter(
      (node: AstNode) =>
        /Step$|^(Call|Unread|Hazard|CleanOutside|CleanHoles|Spec|Stage|Repair|PartNumber|Part|Face|Port|Joint)$/u.test(
          node.$type,
        ) && !(node.$type === 'OnlySteps'),
    )
    .map((node: AstNode) => `${node.$type}: ${textOf(node).replace(/\s+/gu, ' ').slice(0, 70)}`);
}

const problems = (text: string) =>
  parse(text).problems.map(
    ({ message, range }) => `${range.start.line + 1}:${range.start.character + 1} ${english(message)}`,
  );

const procedure = (body: string) => `procedure p for f at s {\n${body}\n}`;
const stage = (steps: string) => procedure(`stage one at bench {\n${steps}\n}`);

describe('lines', () => {
  it('end a statement; short ones may share a line', () => {
    expect(read(stage('relieve    disconnect inlet\nfit shim, spring'))).toEqual([
      expect.stringMatching(/^Stage/u),
      'BareStep: relieve',
      'ObjectStep: disconnect inlet',
      'ObjectStep: fit shim, spring',
    ]);
  });

  it('go on before a word that can only continue, and after a comma if deeper', () => {
    expect(
      read(
        stage(
          '  test opening read pressure\n    within opening\n  on fail reshim (3 times)\n  fit shim,\n      spring',
        ),
      ).slice(1),
    ).toEqual([
      'TestStep: test opening read pressure within opening on fail reshim (3 times)',
      'ObjectStep: fit shim, spring',
    ]);
  });

  it('do not go on after a comma at the same depth: the comma is a slip of its own line', () => {
    const text = stage('  fit shim,\n  run-down nut');
    expect(read(text).slice(1)).toEqual(['Unread: fit shim,', 'ObjectStep: run-down nut']);
    expect(problems(text)).toEqual([
      '3:11 This line breaks off after “,”: something is missing. Finish the line, or delete “,”.',
    ]);
  });

  it('may end in CR LF, and be indented with tabs', () => {
    const text = stage('\tfit shim,\n\t\tspring\n\trelieve').replaceAll('\n', '\r\n');
    expect(problems(text)).toEqual([]);
    expect(read(text)).toHaveLength(3);
  });

  it('leave out blank lines and comments', () => {
    expect(problems(stage('// first\n\n  relieve // last\n\n  // end'))).toEqual([]);
  });
});

describe('names', () => {
  it('may be words that are also verbs or clause words', () => {
    const text = stage(
      '  fit cap, guard, clamp, seal, lock with note\n  remove cap    guard body.end with cap\n  cap cap',
    );
    expect(problems(text)).toEqual([]);
    expect(read(text).slice(1)).toEqual([
      'ObjectStep: fit cap, guard, clamp, seal, lock with note',
      'ObjectStep: remove cap',
      'ObjectStep: guard body.end with cap',
      'ObjectStep: cap cap',
    ]);
  });

  it('allow accents and inner hyphens', () => {
    expect(problems(stage('  fit Ölring-2, écrou'))).toEqual([]);
  });

  it('cannot be a connective, and the message says so', () => {
    expect(problems(stage('  fit with'))).toEqual([
      '3:7 This line breaks off after “with”: something is missing. Finish the line, or delete “with”.',
    ]);
    expect(problems(stage('  torque of to nut-fit'))[0]).toMatch(/“of”/u);
  });
});

describe('quantities', () => {
  it('leave in, bar, s, min, h and K free as words', () => {
    const text = stage('  test back-leak from 150 bar to 100 bar in 6..20 s\n  check shim within 0.001 in in solvent');
    expect(problems(text)).toEqual([]);
  });

  it('may have no blank before the unit', () => {
    expect(problems(procedure('spec opening pressure 250bar +8 -0 source "x"'))).toEqual([]);
  });

  it('may have two units, each with its tolerance', () => {
    expect(
      problems(
        procedure(
          'spec nut torque 45 N·m ±5 (33 lbf·ft ±4) source "x"\nspec a torque 40 N·m then 90° ±5\nspec b angle +/-4 %\nspec c pressure 10 bar +8/-0',
        ),
      ),
    ).toEqual([]);
  });
});

describe('what cannot be read', () => {
  it('costs its own line only', () => {
    const text = stage('  receive\n  torque nut to\n  relieve');
    expect(read(text).slice(1)).toEqual(['BareStep: receive', 'Unread: torque nut to', 'BareStep: relieve']);
    expect(problems(text)).toEqual([
      '4:14 This line breaks off after “to”: something is missing. Finish the line, or delete “to”.',
    ]);
  });

  it('is UNREAD behind an unknown word; resolve tells whether that word is a sequence', () => {
    expect(read(stage('  fti shim, spring with needle\n  relieve')).slice(1)).toEqual([
      'Call: fti',
      'Unread: shim, spring with needle',
      'BareStep: relieve',
    ]);
  });

  it('may be a call, alone or with others', () => {
    expect(
      read(stage('  relieve\n  open    choose shim to bring opening to 254 bar by rate   close')).slice(1),
    ).toEqual([
      'BareStep: relieve',
      'Call: open',
      'ObjectStep: choose shim to bring opening to 254 bar by rate',
      'Call: close',
    ]);
  });

  it('has a missing quote corrected at its line’s end', () => {
    const text = stage('  do "look at it\n  relieve');
    expect(problems(text)).toEqual(['3:6 The closing quote is missing: put " at the end of the text.']);
    expect(read(text)).toHaveLength(3);
  });

  it('has a missing } corrected before the next head', () => {
    const text = procedure('stage one {\n  receive\nstage two {\n  relieve\n}');
    expect(problems(text)).toEqual(['3:3 The stage is not closed here: put } after this line.']);
    expect(read(text).filter((line) => line.startsWith('Stage'))).toHaveLength(2);
  });

  it('has a missing { corrected at the head', () => {
    const text = procedure('stage one at bench\n  receive\n}');
    expect(problems(text)).toEqual(['2:14 The head of this stage ends without {: put { at the end of the line.']);
    expect(read(text).at(-1)).toBe('BareStep: receive');
  });

  it('has a superfluous } dropped', () => {
    const text = procedure('stage one {\n  receive\n}\n  relieve\n}');
    expect(problems(text)).toEqual(['4:1 This } ends the stage, but steps follow it: delete it.']);
    expect(read(text).at(-1)).toBe('BareStep: relieve');
  });

  it('keeps the block of a misspelled head', () => {
    const text = procedure('stge one at bench {\n  receive\n}');
    expect(problems(text)).toEqual(['2:1 No such word: stge. It is read as stage; write stage.']);
    expect(read(text).at(-1)).toBe('BareStep: receive');
  });

  it('names curly quotes and long dashes', () => {
    expect(problems(stage('  do “look”'))[0]).toBe('3:6 Curly quotes are not read: use straight ones, "…".');
    expect(problems(procedure('spec a pressure 16–80 bar'))).toEqual([
      '2:19 A long dash is not read: write .. between the ends of a range, or - inside a name.',
    ]);
  });
});

describe('a blank', () => {
  it.each([
    ['torque nut to nut-fit with …', 'ObjectStep: torque nut to nut-fit'],
    ['torque nut to … with TW-80', 'ObjectStep: torque nut to … with TW-80'],
    ['measure shim within … with MIC-1', 'ObjectStep: measure shim within … with MIC-1'],
    ['test opening   on fail reshim (… times) note "x"', 'TestStep: test opening on fail reshim (… times) note "x"'],
    ['do "…"', 'BareStep: do "…"'],
  ])('costs no more than what says nothing without it: %s', (line, statement) => {
    expect(read(stage(line)).slice(1)).toEqual([statement]);
    const place = `3:${line.indexOf('…') + (line.includes('"…"') ? 0 : 1)}`;
    expect(problems(stage(line))).toEqual([
      `${place} This blank is still to be filled in: write the figure, the name or the words in the place of “…”.`,
    ]);
  });

  it('is an ordinary sign among other words in quotes', () => {
    expect(problems(stage('do "Slowly … and stop"'))).toEqual([]);
  });
});

describe('bad input', () => {
  it('of nothing, a byte order mark, or blanks is an empty file', () => {
    for (const text of ['', '\uFEFF', '  \n\n\t', '// only a comment']) expect(problems(text)).toEqual([]);
  });

  it('of any characters never throws', () => {
    for (const text of [
      '}',
      '{',
      '}}}{{{',
      '"',
      'procedure',
      'procedure {',
      'stage',
      '\u0000\u0001',
      '🙂 fit 🙂',
      'procedure p { stage s { fit',
      'number {',
      'unit 1 }',
    ]) {
      expect(() => parse(text)).not.toThrow();
    }
  });

  it('that is too long is refused before it is read', () => {
    expect(problems('a'.repeat(4_000_001))).toEqual([expect.stringMatching(/^1:1 This file has 4000001 characters/u)]);
  });
});
