/** What is often written so by those who are new to the language: one finding, at its place, that says what to write. */
import { describe, expect, it } from 'vitest';
import { checkFiles } from '../language/db/workspace.ts';
import { fullMessage } from '../language/model/diagnostic.ts';
import { libraryFiles } from './library.ts';

const [first] = libraryFiles().filter(({ uri }) => uri.endsWith('first.rebuild'));

/** Findings in the first procedure of the library with a piece changed: `line:column message`. */
function found(piece: string, put: string): string[] {
  const parts = first!.text.split(piece);
  if (parts.length < 2) throw new Error(`“${piece}” does not stand in the text`);
  return told([parts[0], parts.slice(1).join(piece)].join(put));
}

function told(text: string): string[] {
  return checkFiles([{ uri: 'a.rebuild', text }]).diagnostics.map(
    ({ source: { range }, ...said }) => `${range.start.line + 1}:${range.start.character + 1} ${fullMessage(said)}`,
  );
}

describe('a slip', () => {
  it.each([
    [
      'procedure rebuild-valve "Rebuild and test"',
      'procedure rebuild-valve Rebuild and test',
      '28:25 “Rebuild” is out of place here after “rebuild-valve”. If it begins a title, put the whole title in quotes: "Rebuild …".',
    ],
    [
      'stage strip "Take apart and wash"',
      'stage strip Take apart and wash',
      '43:15 “Take” is out of place here after “strip”. If it begins a title, put the whole title in quotes: "Take …".',
    ],
    ['part ball    "Ball"', 'part "ball" "Ball"', '17:8 A name is written without quotes: write part ball.'],
    ['shop my-bench', 'shop "my-bench"', '4:6 A name is written without quotes: write shop my-bench.'],
    [
      'stage strip "Take apart and wash"',
      'stage "Take apart and wash"',
      '43:9 The name is missing before the title: write stage take-apart-and-wash "Take apart and wash", or another short name.',
    ],
    [
      'stage strip "Take apart and wash"',
      'stage',
      '43:3 The name of this stage is missing: write a short one of your own after stage.',
    ],
    ['    relieve\n', '    relieve\n# let it cool\n', '40:1 A remark begins with //: write // instead of #.'],
    [
      '    sign-off by "Shop lead"\n',
      '    sign-off by "Shop lead"\n  }\n',
      '72:3 This } ends the procedure, but repair follows it: delete it.',
    ],
    ['    clamp body\n', '    clamp body\n  }\n', '45:3 This } ends the stage, but steps follow it: delete it.'],
  ])('%s → %s is one finding, and costs nothing else', (piece, put, message) => {
    expect(found(piece, put)).toEqual([message]);
  });

  it.each([
    [
      'fit ball, spring, washer',
      'fit ball spring washer',
      '57:14 spring is not a step: it is a part of the family. Put a comma before it if it belongs to the list, or a verb that says what to do with it.',
    ],
    [
      'fit ball, spring, washer',
      'fit ball, spring and washer',
      '57:22 A list has commas, and no “and”: write a comma here.',
    ],
    [
      'pressure  20 bar ±2',
      'pressure  20 ±2',
      '31:51 “20” has no unit. Write the number with its unit, then the tolerance, such as 20 bar ±2.',
    ],
    ['on 2026-09-01', 'on 01/09/2026', '29:68 A date is written year-month-day, such as 2026-09-01.'],
    ['class 0.6', 'class 0.6 due 01.09.2026', '9:51 A date is written year-month-day, such as 2026-09-01.'],
    ['proven by opening', 'proven by openning', '24:13 No test is called openning. Did you mean opening?'],
    [
      'stage strip "Take apart and wash"',
      'stage with "Take apart and wash"',
      '43:9 “with” is a word of the language and cannot be a name. Choose another name.',
    ],
    [
      'family valve "Relief valve"',
      'family "Relief valve"',
      '15:8 The name is missing before the title: write family relief-valve "Relief valve", or another short name.',
    ],
    [
      'stage strip "Take apart and wash"',
      'stage strip Take apart',
      '43:15 “Take” is out of place here after “strip”. If it begins a title, put the whole title in quotes: "Take …".',
    ],
    [
      'part plug    "Plug"',
      'part plug    Plug',
      '20:16 “Plug” is out of place here after “plug”. If it begins a title, put the whole title in quotes: "Plug …".',
    ],
    [
      '    slacken plug\n',
      '    slacken "plug"\n',
      '45:13 “"plug"” is out of place here after “slacken”. Quotes are for your own words; a name is written without them: plug.',
    ],
    ['class 0.6', 'class 0,6', '9:43 The decimal separator is a point, and thousands have no separator: write 0.6.'],
    ['  port inlet', '  }\n  port inlet', '22:3 This } ends the family, but port follows it: delete it.'],
    ['  fluid  solvent', '  }\n  fluid  solvent', '11:3 This } ends the shop, but fluid follows it: delete it.'],
    [
      '    torque plug to plug-fit with TW-60\n',
      '    torqe plug to plug-fit with TW-60\n',
      '59:5 No step or sequence is called torqe. Did you mean torque?',
    ],
    [
      '    prime 6 strokes with gauge shut\n    test',
      '    prim 6 strokes with gauge shut\n    test',
      '65:5 No such step or word: prim. Did you mean prime?',
    ],
  ])('%s → %s is one finding, and nothing that follows from it', (piece, put, message) => {
    expect(found(piece, put)).toEqual([message]);
  });
});

describe('the first lines of somebody new', () => {
  it.each([
    [
      'procedure p {\n}\n',
      '1:11 Procedure p neither says which family it is for nor at which shop it is done: add “for FAMILY at SHOP” to its head. Until then the procedure is not checked.',
    ],
    [
      'procedure p at s {\n}\n',
      '1:11 Procedure p does not say which family it is for: add “for FAMILY” to its head. Until then the procedure is not checked.',
    ],
    [
      'procedure p for f {\n}\n',
      '1:11 Procedure p does not say at which shop it is done: add “at SHOP” to its head. Until then the procedure is not checked.',
    ],
    ['procedure {\n}\n', '1:1 The name of this procedure is missing: write a short one of your own after procedure.'],
    ['job of x {\n}\n', '1:1 The name of this job is missing: write a short one of your own after job.'],
    ['job 2207 received', '1:10 The head of this job ends without {: put { at the end of the line.'],
    ['procedure p for f for g at s {\n}\n', '1:19 for appears twice in the head of p. Delete one.'],
  ])('%s', (text, message) => {
    expect(told(text)).toContain(message);
  });
});

describe('like', () => {
  const like = (name: string, of: string, rest = '') => `procedure ${name} "P" like ${of} {\n${rest}}\n`;
  const withLike = (more: string) =>
    told(`${first!.text}${more}`).map((one) => one.replace(/^\d+/u, (line) => String(Number(line) - 89)));

  it('that comes back to itself is said at each member, the ring spelled out', () => {
    expect(told(like('a', 'a'))).toContain(
      '1:22 a is like a: a ring of like has no beginning, so a has no steps to check or print. Write out the steps of one of them.',
    );
    const ring = told(`${like('a', 'b')}${like('b', 'c')}${like('c', 'a')}${like('d', 'a')}`);
    expect(ring).toEqual([
      '1:22 a is like b, b is like c, c is like a: a ring of like has no beginning, so a has no steps to check or print. Write out the steps of one of them.',
      '3:22 b is like c, c is like a, a is like b: a ring of like has no beginning, so b has no steps to check or print. Write out the steps of one of them.',
      '5:22 c is like a, a is like b, b is like c: a ring of like has no beginning, so c has no steps to check or print. Write out the steps of one of them.',
      '7:22 a is like b, b is like c, c is like a: a ring of like has no beginning, so d has no steps to check or print. Write out the steps of one of them.',
    ]);
  });

  it('what is missing is said by all that take their steps from it', () => {
    expect(told(`${like('a', 'zorp')}${like('b', 'a')}`)).toEqual([
      '1:22 No procedure is called zorp. Declare it, or correct the name.',
      '3:22 b is not checked: it takes its steps from a, which is like zorp, and there is no procedure of that name. Correct it there.',
    ]);
    expect(told(`procedure a {\n}\n${like('b', 'a')}`)).toContain(
      '3:11 b is not checked: it takes its family from a, where it is missing or unknown. Correct it there, or add “for FAMILY” here.',
    );
  });

  it('goes on through 20 procedures, and 100 may be like one', () => {
    const chain = Array.from({ length: 21 }, (_, at) => like(`p${at}`, at === 0 ? 'rebuild-valve' : `p${at - 1}`)).join(
      '',
    );
    expect(withLike(chain).filter((one) => one.includes('through more than'))).toEqual([
      '41:24 p20 is like p19, and so on through more than 20 procedures: nobody can follow that, and it is not checked. Make it like a procedure that is written out.',
    ]);
    const star = Array.from({ length: 101 }, (_, at) => like(`p${at}`, 'x')).join('');
    expect(told(`procedure x {\n}\n${star}`).filter((one) => one.includes('More than'))).toEqual([
      '203:25 More than 100 procedures are like x, and p100 is not checked. Variants that differ only in their figures are part numbers of one procedure: write number and its lines.',
    ]);
  });

  it('a patch in what another patch takes out is refused', () => {
    const patches = '  without stage as-found\n  after receive { wait 1 min }\n';
    expect(withLike(like('a', 'rebuild-valve', patches))).toContain(
      '3:3 This step is in stage as-found, which another patch replaces or deletes: this patch would change nothing. Delete it, or put its steps there.',
    );
  });

  it('a patch of a step that is not there names the nearest', () => {
    expect(withLike(like('a', 'rebuild-valve', '  without remove plgu\n'))).toContain(
      '2:11 No step is called “remove plgu”. Did you mean remove plug?',
    );
  });
});

describe('a job', () => {
  it('names a shop that there is, and its procedure’s own', () => {
    const job = (at: string) => `${first!.text}job 7 of rebuild-valve at ${at} {\n}\n`;
    const none =
      '90:5 No unit is left that could be certified: every one is on hold, or there is none: the certificate is not made out without it. Take off hold what is done, with its results.';
    expect(told(job('nowhere'))).toEqual([none, '90:27 No shop is called nowhere. Declare it, or correct the name.']);
    expect(told(`${job('other')}shop other {\n}\n`)).toEqual([
      none,
      '90:27 Job 7 is at other, and rebuild-valve is written for my-bench: its tools and stations are those of that shop. Write my-bench, or name a procedure for other.',
    ]);
  });

  it('says that it is not checked where its procedure cannot be', () => {
    expect(told('procedure p {\n}\njob 7 of p {\n}\n')).toContain(
      '3:10 Job 7 is not checked: p cannot be read yet. Correct what is reported there first.',
    );
  });
});

describe('a hazard', () => {
  it.each([
    ['DANGR', 'DANGER'],
    ['danger', 'DANGER'],
    ['Waring', 'WARNING'],
    ['NOTCE', 'NOTICE'],
  ])('with %s for its signal word is refused', (word, near) => {
    expect(found('    clamp body\n', `    hazard ${word} "Heavy."\n    clamp body\n`)).toEqual([
      `44:12 There is no signal word ${word}, and the hazard would print as a WARNING. Write ${near}.`,
    ]);
  });

  it('may say what it is of', () => {
    expect(found('    clamp body\n', '    hazard spray "Oil under the skin."\n    clamp body\n')).toEqual([]);
  });

  it('that would choose among steps is refused', () => {
    expect(
      found('    clamp body\n', '    hazard CAUTION "Heavy." for clamp body in build\n    clamp body\n'),
    ).toContain(
      '44:47 A hazard names its step by verb and first object, and is printed at each of those: delete the rest. Put a hazard for a single step before that step, without “for”.',
    );
  });
});

describe('proves through', () => {
  const through = (name: string) =>
    found('within opening   on fail', `within opening   proves through ${name}   on fail`);

  it('names a joint, an adjuster, a part or a face', () => {
    expect(through('plgu')).toContain('66:65 No joint, adjuster, part or face is called plgu. Did you mean plug?');
    expect(through('plug')).toEqual([]);
  });

  it('of a pressure names the joint that closes over a part, or a loose one would not be seen', () => {
    expect(through('spring')).toContain(
      '66:50 spring is not a joint, and plug closes over it: left loose, it would not be seen before this test. Write proves through plug.',
    );
  });

  it('of a pressure names the joint, too, for the part that it is on and the seal between them', () => {
    for (const name of ['body', 'washer'])
      expect(through(name)).toContain(
        `66:50 ${name} is not a joint, and plug closes over it: left loose, it would not be seen before this test. Write proves through plug.`,
      );
  });
});

describe('a sequence', () => {
  const shared = `${first!.text.replace('    relieve\n', '    bled\n    relieve\n')}sequence bled {\n  wipe bod\n}\n`;

  it('is reported where it is written, and names its calls', () => {
    const { diagnostics, procedures } = checkFiles([{ uri: 'a.rebuild', text: shared }]);
    expect(diagnostics.map(({ source, message, related }) => [source.range.start.line + 1, message, related])).toEqual([
      [
        92,
        'No part or face is called bod.',
        [
          {
            message: 'Sequence bled is called here.',
            said: expect.anything(),
            source: expect.objectContaining({ file: 'a.rebuild' }),
          },
        ],
      ],
    ]);
    expect(procedures[0]!.diagnostics).toHaveLength(1);
  });

  it('of another file counts for every procedure that calls it', () => {
    const [own, other] = shared.split(/(?=^sequence bled)/mu);
    const { procedures } = checkFiles([
      { uri: 'a.rebuild', text: own! },
      { uri: 'b.rebuild', text: other! },
    ]);
    expect(procedures[0]!.diagnostics.map(({ rule, source }) => [rule, source.file])).toEqual([
      ['unknown-name', 'b.rebuild'],
    ]);
  });

  it('that does nothing with what it is called with says so', () => {
    const text = `${first!.text.replace('    relieve\n', '    bled with body; zorp\n    relieve\n')}sequence bled with a; b {\n  wipe a\n}\n`;
    expect(told(text)).toEqual([
      '91:23 Sequence bled does nothing with b: what a call gives it would be lost. Use it in a step, or delete it.',
    ]);
  });

  it('is not expanded where that gives too many steps', () => {
    const doubling = Array.from({ length: 40 }, (_, at) => `sequence s${at + 1} { s${at} s${at} }`).join('\n');
    const text = `${first!.text.replace('    relieve\n', '    s40\n    relieve\n')}sequence s0 { wait 1 min }\n${doubling}\n`;
    expect(told(text)).toEqual([
      '39:5 Sequence s40 has more than 20000 steps once every sequence is expanded: nobody can follow that, and it is not checked. Have the sequences call one another less.',
    ]);
  });
});
