/**
 * Whatever a step takes is on its sheet: each clause behind each verb is refused, or says something more there. Walked
 * from the grammar's own list, so that a new clause or a new verb cannot be forgotten.
 */
import { describe, expect, it } from 'vitest';
import { checkFiles } from '../../language/db/workspace.ts';
import type { StepBlock } from '../../language/documents/model.ts';
import { blockTexts } from '../../language/documents/texts.ts';
import { buildSheet } from '../../language/documents/traveler/index.ts';
import { verbs } from '../../language/model/verbs.ts';
import type { Clause, TestClause } from '../../language/syntax/generated/ast.ts';
import { isProblemCode } from '../../language/syntax/problem-code.ts';
import { spellingOf, verbTable } from '../../language/syntax/verbs/index.ts';
import { exampleFamily, exampleShop } from '../fixtures/example-base.ts';
import { lowBones } from './words.ts';

type ClauseType = (Clause | TestClause)['$type'];

/** Every way to write a clause, and what of it must be found in print. */
const written: Readonly<Record<ClauseType, readonly (readonly [text: string, ...printed: string[]])[]>> = {
  TextClause: [['"own words"', 'own words']],
  AmountClause: [
    ['7 min', '7 min'],
    ['at least 7 min', 'at least 7 min'],
    ['at most 0.7 mm', '0.7 mm'],
    ['6..8 strokes', '6 to 8 strokes'],
  ],
  WithClause: [
    ['with "special key"', 'special key'],
    ['with MIC-1', 'MIC-1'],
    ['with TW-80 and adapter 50 mm at 0°', '50 mm'],
    ['with wrench 16..80 N·m', '16 to 80 N·m'],
    ['with gauge shut', 'SHUT'],
    ['with gauge open', 'OPEN'],
    ['with air at most 1.7 bar', '1.7 bar'],
    ['with spacer', 'spacer'],
    ['with marks aligned', 'aligned'],
    ['with number', 'part number'],
    ['with cal-oil', 'calibration fluid'],
  ],
  InClause: [
    ['in "own place"', 'own place'],
    ['in solvent', 'solvent'],
    ['in cross pattern', 'cross pattern'],
    ['in 7..9 s', '7 to 9 s'],
  ],
  AtClause: [
    ['at wheel', 'wheel'],
    ['at wheel "own corner"', 'wheel', 'own corner'],
    ['at 45 °C', '45 °C'],
    ['at 600 rpm, rack 9.2 mm ±0.05', '600 rpm', 'rack 9.2 mm'],
    ['at 70..90 strokes/min', '70 to 90 strokes/min'],
  ],
  ToClause: [
    ['to wheel', 'wheel'],
    ['to nut-fit', '55 to 65 N·m'],
    ['to 47 N·m ±3', '44 to 50 N·m'],
    ['to 110 bar', '110 bar'],
    ['to needle, nozzle', 'needle'],
  ],
  BringClause: [
    ['to bring opening to 253 bar', '253 bar'],
    ['to bring opening to opening', '250 to 258 bar'],
  ],
  FromClause: [['from 140 bar', '140 bar']],
  ByClause: [
    ['by "own name"', 'own name'],
    ['by stretch 0.009..0.010 in', '0.009 to 0.010 in'],
    ['by shim-rate', '3 bar per'],
    ['by 4 mm', '4 mm'],
    ['by screw', 'screw'],
  ],
  ForClause: [
    ['for 7 min', '7 min'],
    ['for 7..8 min', '7 to 8 min'],
    ['for at least 7 min', 'at least 7 min'],
    ['for trial', 'trial'],
    ['for "own reason"', 'own reason'],
  ],
  WithinClause: [
    ['within 41.2..41.6 mm', '41.2 to 41.6 mm'],
    ['within opening', '250 to 258 bar'],
  ],
  AcceptClause: [
    ['accept "what is good"', 'what is good'],
    ['accept 41.2..41.6 mm', '41.2 to 41.6 mm'],
  ],
  RejectClause: [['reject if "what is bad"', 'what is bad']],
  VerdictClause: [
    ['reuse if "bright"', 'bright'],
    ['lap if "hazed"', 'hazed'],
    ['lap if "hazed" then wash in solvent', 'hazed'],
  ],
  FailClause: [
    ['on fail reshim (2 times)', 'R1', '2 attempts max.'],
    ['on fail renew needle (once)', 'replace the needle'],
  ],
  NoteClause: [['note "own note"', 'own note']],
  AllowClause: [['allow prime-how because "own cause"', 'prime-how', 'own cause']],
  TakesClause: [['takes 17 min', '17 min']],
  SourceClause: [['source "own source"', 'own source']],
  HeldClause: [['held by "own spanner"', 'own spanner']],
  WordsClause: [
    ['threads oiled', 'Oil the threads'],
    ['as found', 'as found'],
    ['as left', 'as left'],
    ['stop if fails', 'stop'],
    ['ready to fit', 'ready to fit'],
    ['proven', 'proven'],
  ],
  PassesClause: [['passes 20 N·m 40 N·m', '20 N·m', '40 N·m']],
  SlidesClause: [
    ['slides "own way"', 'own way'],
    ['turns-free "own turn"', 'own turn'],
  ],
  SpreadClause: [['spread at most 6 bar', 'at most 6 bar']],
  // What a gate proves is for the check, and nothing that a hand does.
  ProvesClause: [],
  OfClause: [['of nozzle', 'nozzle']],
  NeverClause: [['never above 1.9 mm', '1.9 mm']],
  ExceptClause: [],
  // Its caution is before the step or at the head of the stage: tests/cautions.test.ts.
  DangerClause: [],
  ReadClause: [['read pressure']],
  // Points and places have a table of their own: tests/points/card.test.ts.
  PointClause: [],
  WorkedClause: [],
  HoldClause: [
    ['hold 17 bar below opening', '17 bar below'],
    ['hold 217 bar', '217 bar'],
  ],
};

/** What each verb acts on here. */
function objectOf(verb: (typeof verbs)[number]): string {
  const { objects } = verbTable[verb];
  if (verb === 'guard') return 'body.end';
  if (verb === 'torque' || verb === 'slacken' || verb === 'run-down' || verb === 'lock') return 'nut';
  if (verb === 'choose') return 'shim';
  switch (objects[0]) {
    case 'part':
      return 'needle';
    case 'face':
      return 'body.end';
    case 'port':
      return 'inlet';
    case 'adjuster':
      return 'screw';
    case 'reading':
    case 'gate':
      return 'opening';
    default:
      return '';
  }
}

/** Steps with these texts behind the verb, as each is printed; null: the checker refuses it. */
function printedOf(verb: (typeof verbs)[number], clauses: readonly string[]): (string | null)[] {
  const start = `${spellingOf(verb)} ${objectOf(verb)}`.trim();
  const before = `${exampleShop}
${exampleFamily.replace(/\}\s*$/u, '  part screw "Screw" on body\n  adjuster screw sets opening\n}\n')}
procedure example for holder at bench {
  spec opening    pressure  250 bar +8 -0
  spec nut-fit    torque    60 N·m ±5
  spec shim-rate  rate      3 bar per 0.001 in
  repair reshim { choose shim }
  stage prove at tester {
`;
  const text = `${before}${clauses.map((clause) => `${start} ${clause}\n`).join('')}}\n}\n`;
  const first = before.split('\n').length - 1;
  const { diagnostics, procedures } = checkFiles([{ uri: 'x', text }]);
  const { procedure } = procedures[0]!;
  const sheet = buildSheet(procedure, {
    job: null,
    number: null,
    paper: 'a4',
    draft: false,
    diagnostics: [],
    hash: '',
  });
  const steps = sheet.blocks.filter((block): block is StepBlock => block.kind === 'step');
  const refused = diagnostics.filter(({ rule }) => isProblemCode(rule) || rule === 'unknown-name');
  // Sources are listed under their letters; what a test records is in the log, and where it sends a unit, under it.
  const around = sheet.blocks
    .filter(
      (block) =>
        block.kind === 'log' || block.kind === 'repairs' || (block.kind === 'text' && block.text.startsWith('Sources')),
    )
    .flatMap(blockTexts);
  return clauses.map((_, index) => {
    const step = steps.find(({ line }) => line.line === first + index);
    return step === undefined || refused.some(({ source }) => source.range.start.line === first + index)
      ? null
      : lowBones([...blockTexts(step), ...around].join(' '));
  });
}

describe.each(verbs)('after %s', (verb) => {
  const cases = (Object.keys(written) as ClauseType[]).flatMap((type) => {
    // Nothing can fail at a measure that has no limit: `limit-missing` says so.
    const before = verb === 'measure' && type === 'FailClause' ? 'within 41.2..41.6 mm ' : '';
    return written[type].map(([text, ...printed]) => ({ text: before + text, printed }));
  });
  const lost = (all: typeof cases) =>
    printedOf(
      verb,
      all.map(({ text }) => text),
    ).flatMap((now, index) =>
      now === null
        ? []
        : all[index]!.printed.filter((one) => !now.includes(lowBones(one))).map(
            (one) => `${all[index]!.text}: “${one}” is lost`,
          ),
    );

  it('each clause is refused or printed', () => {
    expect(lost(cases)).toEqual([]);
  });
  it('some of them are taken', () => {
    expect(printedOf(verb, ['note "own note"'])[0]).toContain('ownnote');
  });
  it('the words of two clauses are both printed', () => {
    const own = cases.filter(({ text }) => text.includes('"own'));
    const pairs = own.flatMap((one) =>
      own.map((other) => ({ text: `${one.text} ${other.text}`, printed: [...one.printed, ...other.printed] })),
    );
    expect(lost(pairs)).toEqual([]);
  });
});

describe('what is around steps', () => {
  const printed = (body: string, more = '') => {
    const text = `${exampleShop}
${exampleFamily}
procedure example for holder at bench {
  ${more}
  stage prove at tester {
    ${body}
  }
}
`;
    const { procedure } = checkFiles([{ uri: 'x', text }]).procedures[0]!;
    const sheet = buildSheet(procedure, {
      job: null,
      number: null,
      paper: 'a4',
      draft: false,
      diagnostics: [],
      hash: '',
    });
    return {
      text: sheet.blocks
        .flatMap(blockTexts)
        .join('\n')
        .replaceAll(/[\u00a0\u202f]/gu, ' '),
    };
  };
  const sequence = 'sequence off "Off the tester" {\n    relieve note "own note"\n    disconnect inlet\n  }';

  it('the title of a sequence, and every note of its call and of its first step', () => {
    const { text } = printed('off note "first note" note "second note"', sequence);
    expect(text).toContain('Off the tester. Release the pressure');
    expect(text).toContain('first note second note own note');
  });
  it('the titles of a spec and of a master', () => {
    const spec = 'spec length "Free length" length 31.5 mm ±0.3 source "own"';
    expect(printed('measure spring within length', spec).text).toMatch(/Free length\n31.2 to 31.8 mm/u);
    const master = exampleShop.replace(/\}\s*$/u, '  master ring "Ring of known size" at tester\n}\n');
    const { procedures } = checkFiles([
      {
        uri: 'x',
        text: `${master}\n${exampleFamily}\nprocedure p for holder at bench { stage prove at tester { read ring } }`,
      },
    ]);
    const { procedure } = procedures[0]!;
    const sheet = buildSheet(procedure, {
      job: null,
      number: null,
      paper: 'a4',
      draft: false,
      diagnostics: [],
      hash: '',
    });
    expect(sheet.blocks.flatMap(blockTexts)).toContain('Read the ring of known size.');
  });
});
