import { describe, expect, it } from 'vitest';
import { checkFiles } from '../../db/workspace.ts';
import type { Procedure } from '../../model/procedure.ts';
import { stepFigures } from '../figures/step-figures.ts';
import { buildPrintContext, shownSteps } from '../print-context.ts';
import { renderSpecsHtml, renderSpecsText } from '../renderers/index.ts';
import { stepLimits } from '../traveler/limits.ts';
import { buildSpecs, missingCount, type SpecCell, type SpecFigure, type Specs } from './index.ts';

interface Texts {
  readonly shop?: string;
  readonly family?: string;
  readonly specs?: string;
  readonly steps?: string;
  readonly more?: string;
}

/** A procedure of a valve with one joint, in the shop of the worked example. */
function procedureOf({ shop = '', family = '', specs = '', steps = '', more = '' }: Texts): Procedure {
  const text = `
shop bench "Bench" {
  station build "Bench" clean
  station tester "Tester" clean, pressure
  station yard "Yard" clean, pressure
  wrench TW-80 range 16..80 N·m within 4 %
  wrench TW-1 range 10..100 N·m
  gauge PG-400 range 0..400 bar class 0.25 graduated 1 bar at tester
  tool MIC-1 range 0..25 mm within 0.003 mm
  ${shop}
}
family valve "Relief valve" {
  part body "Body"
  part ball "Ball" in body
  part spring "Spring" on ball
  part screw "Adjusting screw" on spring
  part lock-nut "Lock nut" on screw
  part plug "Plug" on body holds spring
  port inlet on body
  ${family}
}
procedure p "Rebuild" for valve at bench revision A {
  spec opening "Opening pressure" pressure 250 bar +8 -0, in service at least 200 bar, new spring 258 bar +8 -0 source "Test sheet"
  spec fit "Plug torque" torque 60 N·m ±5 source "Test sheet"
  ${specs}
  stage build at build {
    ${steps}
  }
  ${more}
}
`;
  return checkFiles([{ uri: 'p.rebuild', text }]).procedures[0]!.procedure;
}

const plain = (text: string) => text.replace(/[\u00a0\u202f]/gu, ' ');
const joint = 'joint plug to body "M16x1.5"';

function figures(specs: Specs, kind: string, title: string): SpecFigure[] {
  return specs.groups
    .filter((group) => group.kind === kind)
    .flatMap(({ items }) => items.filter((item) => item.title === title).flatMap((item) => item.figures));
}

/** What a cell says, in one line. */
function said(cell: SpecCell | null): string {
  if (cell === null) return '–';
  const { value, also, standing, source, tool, ratio, missing } = cell;
  const parts = [value, also, standing, source, tool?.number ?? tool?.words, tool?.error, ratio];
  return plain([...parts, ...missing.map(({ words }) => `!${words}`)].filter((part) => part).join(' | '));
}

const lines = (found: readonly SpecFigure[]) =>
  found.map(({ what, steps, cells }) => `${what} [${steps.join(', ')}] ${cells.map(said).join(' / ')}`);

describe('joints', () => {
  it('have the torque of the step, with thread and tool', () => {
    const specs = buildSpecs(
      procedureOf({
        family: 'joint plug to body "M16x1.5" left-hand, threads oiled',
        steps: 'torque plug to fit with TW-80',
      }),
    );
    expect(specs.groups[0]!.items[0]!.facts).toEqual(['on body', 'M16x1.5', 'threads oiled', 'LEFT-HAND THREAD']);
    // ISO 6789: 4 % of the 60 N·m that are set, so ±2.4 N·m; half of 55..65 is 5.
    expect(lines(figures(specs, 'joints', 'Plug'))).toEqual([
      'Torque [1.1] 60 N·m | 55 to 65 N·m | Test sheet | TW-80 | ±2.4 N·m | 2.0:1',
    ]);
  });

  it('have the class of a solid bolt beside its thread', () => {
    const specs = buildSpecs(
      procedureOf({
        family: 'joint plug to body "M16x1.5" solid class 10.9, threads oiled',
        steps: 'torque plug to fit with TW-80',
      }),
    );
    expect(specs.groups[0]!.items[0]!.facts).toEqual(['on body', 'M16x1.5', 'class 10.9', 'threads oiled']);
  });

  it('that are torqued alike in a repair appear once; another tool is another line', () => {
    const specs = buildSpecs(
      procedureOf({
        family: joint,
        steps: 'torque plug to fit with TW-80',
        more: 'repair a {\n torque plug to fit with TW-80\n}\nrepair b {\n torque plug to fit with TW-1\n}',
      }),
    );
    expect(lines(figures(specs, 'joints', 'Plug'))).toEqual([
      'Torque [1.1, R1.1] 60 N·m | 55 to 65 N·m | Test sheet | TW-80 | ±2.4 N·m | 2.0:1',
      'Torque [R2.1] 60 N·m | 55 to 65 N·m | Test sheet | TW-1 | !no accuracy given for TW-1',
    ]);
  });

  it('that no step torques say so, unless hand-tight is final', () => {
    const none = buildSpecs(procedureOf({ family: joint }));
    expect(lines(figures(none, 'joints', 'Plug'))).toEqual(['Torque [] !no step torques it']);
    const final = buildSpecs(procedureOf({ family: `${joint} hand-tight is final` }));
    expect(lines(figures(final, 'joints', 'Plug'))).toEqual(['Torque [] Hand-tight is final']);
    expect(missingCount(final)).toBe(0);
  });

  it('say which part numbers are left out', () => {
    const specs = buildSpecs(
      procedureOf({
        family: joint,
        specs: 'number A\n number B',
        steps: 'only A {\n torque plug to fit with TW-80\n }',
      }),
    );
    expect(lines(figures(specs, 'joints', 'Plug'))).toEqual([
      'Torque [1.1] 60 N·m | 55 to 65 N·m | Test sheet | TW-80 | ±2.4 N·m | 2.0:1 / !no step torques it',
    ]);
  });

  it('of several cylinders are together', () => {
    const specs = buildSpecs(
      procedureOf({
        family: 'part nut "Union nut" on body for each cylinder 1..3\n  joint nut to body',
        steps: 'torque nut to fit with TW-80',
      }),
    );
    expect(specs.groups[0]!.items.map(({ title }) => title)).toEqual(['3 union nuts']);
  });
});

describe('adjusters', () => {
  const family = 'joint lock-nut to screw\n  adjuster screw sets opening, 25 bar per turn, locked by lock-nut';

  it('have what they set, the rate and the lock torque', () => {
    const specs = buildSpecs(
      procedureOf({
        family,
        shop: 'unless stated torque ±10 % source "Shop standard"',
        more: `stage set at tester {
          set opening within opening by screw  on fail again (3 times)
          lock lock-nut to 20 N·m with TW-80 source "Test sheet"
        }
        repair again { set opening within opening by screw }`,
      }),
    );
    // A repair with no station is done where the unit came from: it has that station's gauge.
    expect(lines(figures(specs, 'adjusters', 'Adjusting screw'))).toEqual([
      'Sets opening pressure [2.1, R1.1] 250 to 258 bar | 250 bar +8 −0 | Test sheet | PG-400 | ±1 bar | 4.0:1',
      'With new spring [2.1, R1.1] 258 to 266 bar | 258 bar +8 −0 | Test sheet | PG-400 | ±1 bar | 4.0:1',
      'Rate [] 25 bar per turn',
      'Lock torque [2.2] 20 N·m | 18 to 22 N·m | Tolerance ±10 %: Shop standard | Test sheet | TW-80 | ±0.8 N·m | 2.5:1',
    ]);
  });

  it('that are never set or locked say so', () => {
    expect(lines(figures(buildSpecs(procedureOf({ family })), 'adjusters', 'Adjusting screw'))).toEqual([
      'Sets opening pressure [] !no limit given',
      'Rate [] 25 bar per turn',
      'Lock torque [] !no step torques it',
    ]);
  });
});

describe('tests', () => {
  it('a worked example of EN 837-1: class 0.25 of 0..400 bar is ±1 bar, half of 250..258 bar is 4: 4.0 to 1', () => {
    const specs = buildSpecs(procedureOf({ more: 'stage t at tester { test opening read pressure within opening }' }));
    expect(lines(figures(specs, 'tests', 'Opening pressure'))).toEqual([
      'As rebuilt [2.1] 250 to 258 bar | 250 bar +8 −0 | Test sheet | PG-400 | ±1 bar | 4.0:1',
      'With new spring [2.1] 258 to 266 bar | 258 bar +8 −0 | Test sheet | PG-400 | ±1 bar | 4.0:1',
      // One end: no ratio.
      'In service [2.1] at least 200 bar | Test sheet | PG-400 | ±1 bar',
    ]);
    const cell = figures(specs, 'tests', 'Opening pressure')[0]!.cells[0]!;
    expect([cell.low, cell.high]).toEqual([
      { number: '250', unit: 'bar' },
      { number: '258', unit: 'bar' },
    ]);
  });

  it('a rate says what it was worked out from', () => {
    const made = procedureOf({
      specs: `spec rate "Shim rate" rate from stiffness 200 N/mm, guide 6 mm, seat 3 mm source "x"
  number A
  number B { rate 96 bar per mm source "y" }`,
    });
    expect(lines(figures(buildSpecs(made), 'others', 'Shim rate'))).toEqual([
      'Value [] 94.31 bar per mm, from 200 N/mm, guide 6 mm, seat 3 mm | x / 96 bar per mm | y',
    ]);
  });

  it('say what a new spring loses, of a part number by its own figure', () => {
    const made = procedureOf({
      specs: `spec crack "Crack pressure" pressure 30 bar ±1, settling 2 bar source "x"
  number A
  number B { crack settling 3 bar source "y" }`,
      more: 'stage t at tester {\n read crack as found\n test crack read pressure within crack\n}',
    });
    const found = figures(buildSpecs(made), 'tests', 'Crack pressure').filter(({ what }) => what.includes('settles'));
    expect(lines(found)).toEqual(['A new spring settles by [2.2] 2 bar | x / 3 bar | y']);
  });

  it('a ratio is rounded down, and holds over units', () => {
    const specs = buildSpecs(
      procedureOf({
        specs: 'spec seat pressure 100 psi ±10 source "x"\n spec lift length 0.05 mm ±0.0119 source "x"',
        more: 'stage t at tester {\n test seat read pressure within seat\n test lift read length within lift with MIC-1\n}',
      }),
    );
    // 10 psi are 0.6895 bar, over 1 bar: 0.689…; 0.0119 over 0.003: 3.966….
    expect(lines(figures(specs, 'tests', 'Seat'))[0]).toMatch(/\| PG-400 \| ±1 bar \| 0\.6:1$/u);
    expect(lines(figures(specs, 'tests', 'Lift'))[0]).toMatch(/\| MIC-1 \| ±0.003 mm \| 3\.9:1$/u);
  });

  it('have a spread of temperatures in its own unit, as the sheet: 5 °C apart are no 41 °F', () => {
    const shop = 'gauge TH-1 range 0..200 °F within 2 °F at tester';
    const more =
      'stage t at tester { test warm read temperature accept "warm"  across the set warm spread at most 5 °C }';
    const spread = lines(figures(buildSpecs(procedureOf({ shop, more })), 'tests', 'Warm')).at(-1);
    expect(spread).toMatch(/^Spread over the set \[2\.2\] at most 5 °C \|/u);
  });

  it('have every figure, in the order of the procedure, with what is found and the spread', () => {
    const specs = buildSpecs(
      procedureOf({
        more: `stage t at tester {
          read opening as found
          test opening read pressure within opening
          test leak hold 20 bar below opening for 10 s accept "no drop" source "Test sheet"
          test back-leak from 150 bar to 100 bar in 6..20 s source "Test sheet"
          test spray at 20..60 strokes/min with gauge shut accept "even"
          test look accept "dry"
          across the set opening spread at most 5 bar
        }`,
      }),
    );
    expect(specs.groups.find(({ kind }) => kind === 'tests')!.items.map(({ title, facts }) => [title, facts])).toEqual([
      ['Opening pressure', []],
      ['Leak', ['accept “no drop”']],
      ['Back leak', []],
      ['Spray', ['gauge SHUT', 'accept “even”']],
      ['Look', ['accept “dry”']],
    ]);
    expect(lines(figures(specs, 'tests', 'Opening pressure'))).toEqual([
      'In service [2.1] at least 200 bar | Test sheet | PG-400 | ±1 bar',
      'As rebuilt [2.2] 250 to 258 bar | 250 bar +8 −0 | Test sheet | PG-400 | ±1 bar | 4.0:1',
      'With new spring [2.2] 258 to 266 bar | 258 bar +8 −0 | Test sheet | PG-400 | ±1 bar | 4.0:1',
      'Spread over the set [2.7] at most 5 bar | PG-400 | ±1 bar | !no source',
    ]);
    expect(lines(figures(specs, 'tests', 'Leak'))).toEqual([
      'Hold [2.3] 20 bar below the opening pressure read | Test sheet | PG-400 | ±1 bar',
      'For [2.3] 10 s | Test sheet',
    ]);
    expect(lines(figures(specs, 'tests', 'Back leak'))).toEqual([
      'From [2.4] 150 bar | Test sheet | PG-400 | ±1 bar',
      'Down to [2.4] 100 bar | Test sheet | PG-400 | ±1 bar',
      'In [2.4] 6 to 20 s | Test sheet',
    ]);
    expect(lines(figures(specs, 'tests', 'Spray'))).toEqual(['At [2.5] 20 to 60 strokes/min | !no source']);
    expect(lines(figures(specs, 'tests', 'Look'))).toEqual(['Accept [2.6] dry']);
  });
});

describe('what is missing', () => {
  const missing = (texts: Texts) =>
    buildSpecs(procedureOf(texts)).groups.flatMap(({ items }) =>
      items.flatMap((item) =>
        item.figures.flatMap((figure) =>
          figure.cells.flatMap(
            (cell) => cell?.missing.map(({ kind, words }) => `${item.title}: ${kind}, ${words}`) ?? [],
          ),
        ),
      ),
    );
  it.each([
    ['a torque', { family: joint, steps: 'torque plug with TW-80' }, 'Plug: value, no torque given'],
    [
      'a value',
      { specs: 'spec bare pressure', more: 'stage t at tester { test x read pressure within bare }' },
      'X: value, no limit given',
    ],
    ['a limit', { more: 'stage t at tester { test x read pressure }' }, 'X: value, no limit given'],
    ['a pressure', { more: 'stage t at tester { test x for 10 s source "x" }' }, 'X: value, no pressure given'],
    ['a source', { family: joint, steps: 'torque plug to 60 N·m ±5 with TW-80' }, 'Plug: source, no source'],
    [
      "the source of the shop's tolerance",
      { shop: 'unless stated torque ±10 %', family: joint, steps: 'torque plug to 60 N·m with TW-80 source "x"' },
      "Plug: source, no source for the shop's tolerance",
    ],
    [
      'a tolerance',
      { family: joint, steps: 'torque plug to 60 N·m with TW-80 source "x"' },
      'Plug: tolerance, no tolerance',
    ],
    ['a tool', { family: joint, steps: 'torque plug to fit' }, 'Plug: tool, no tool named'],
    [
      'a gauge',
      { more: 'stage t at yard { test x hold 200 bar for 10 s source "x" }' },
      'X: tool, no tool named, no gauge at the station',
    ],
    [
      'an accuracy',
      { family: joint, steps: 'torque plug to fit with TW-1' },
      'Plug: accuracy, no accuracy given for TW-1',
    ],
  ] satisfies [string, Texts, string][])('%s', (_, texts, expected) => {
    expect(missing(texts)).toEqual([expected]);
  });

  it('counts what part numbers share once', () => {
    const specs = buildSpecs(procedureOf({ family: joint, specs: 'number A\n number B', steps: 'torque plug to fit' }));
    expect(missingCount(specs)).toBe(1);
  });

  it('not a tool whose number the job gives', () => {
    const specs = buildSpecs(procedureOf({ family: joint, steps: 'torque plug to fit with wrench 16..80 N·m' }));
    expect(lines(figures(specs, 'joints', 'Plug'))).toEqual([
      'Torque [1.1] 60 N·m | 55 to 65 N·m | Test sheet | torque wrench, 16 to 80 N·m',
    ]);
  });
});

describe('part numbers, measurements and the rest', () => {
  const made = procedureOf({
    specs: `spec length "Free length" length 31.50 mm ±0.30 source "x"
  spec rate "Shim rate" rate 3 bar per 0.001 in source "y"
  spec spare "Spare" pressure 10 bar
  number A "Marine"
  number B { length 30.80 mm ±0.30 source "z"   opening 220 bar +8 -0 source "z" }
  number C { length not required source "w" }`,
    steps: 'measure spring within length with MIC-1\n    measure ball with MIC-1',
    more: `stage t at tester { test opening read pressure within opening  on fail r (once) }
  repair r { choose screw to bring opening to 254 bar by rate }`,
  });
  const specs = buildSpecs(made);

  it('are across, each with its own figure and line', () => {
    expect(specs.columns).toEqual([
      { number: 'A', title: 'Marine' },
      { number: 'B', title: '' },
      { number: 'C', title: '' },
    ]);
    expect(lines(figures(specs, 'measurements', 'Spring'))).toEqual([
      'Free length [1.1] 31.20 to 31.80 mm | 31.50 mm ±0.30 | x | MIC-1 | ±0.003 mm | 100.0:1 / 30.50 to 31.10 mm | 30.80 mm ±0.30 | z | MIC-1 | ±0.003 mm | 100.0:1 / not required | w',
    ]);
    const [cellA, cellB] = figures(specs, 'measurements', 'Spring')[0]!.cells;
    expect(cellB!.line.line - cellA!.line.line).toBe(4);
  });

  it('specs that nothing else uses come last', () => {
    expect(specs.groups.at(-1)).toMatchObject({ kind: 'others' });
    expect(lines(figures(specs, 'others', 'Shim rate'))[0]).toMatch(/^Value \[R1\.1\] 3 bar per 0\.001 in \| y/u);
    expect(lines(figures(specs, 'others', 'Spare'))[0]).toBe(
      'Value [] 10 bar | !no source / 10 bar | !no source / 10 bar | !no source',
    );
    expect(lines(figures(specs, 'others', 'Adjusting screw'))[0]).toMatch(/^Aim: opening pressure \[R1\.1\] 254 bar/u);
  });

  it('the limits are those of the sheet, word for word', () => {
    const cells = specs.groups.flatMap(({ items }) =>
      items.flatMap((item) => item.figures.flatMap((one) => one.cells)),
    );
    const printed = new Set(cells.map((cell) => `${cell?.value} ${cell?.also}`));
    const setting = buildPrintContext(made, {
      job: null,
      number: null,
      paper: 'a4',
      draft: false,
      diagnostics: [],
      hash: '',
    });
    const limits = made.stages.flatMap((stage) =>
      shownSteps(setting, stage).flatMap((step) => stepLimits(setting, stepFigures(setting, step, stage))),
    );
    expect(limits.length).toBeGreaterThan(4);
    // The sheet leaves out how a window was written that is in the unit of its tool.
    for (const { value, also } of limits)
      expect(
        [...printed].some((text) => text.startsWith(`${value} ${also}`)),
        value,
      ).toBe(true);
  });

  it('as text: aligned, in the width, a column for each number', () => {
    const text = renderSpecsText(specs, { width: 80 });
    expect(text.split('\n').every((line) => [...line].length <= 80)).toBe(true);
    expect(text).toContain('Part number             A                 B                 C\n');
    expect(text).toMatch(/^ {2}As rebuilt {12}250 to 258 bar {4}220 to 228 bar {4}250 to 258 bar$/mu);
    // Too narrow for three: the last is below.
    const narrow = renderSpecsText(specs, { width: 44 });
    expect(narrow.split('\n').every((line) => [...line].length <= 44)).toBe(true);
    expect(narrow.match(/^Part number/gmu)).toHaveLength(3);
  });

  it('as HTML: nothing from outside, no script, and what the author writes stays text', () => {
    const html = renderSpecsHtml(
      buildSpecs(
        procedureOf({ specs: 'number A "</table><script>x</script>"', family: joint, steps: 'torque plug to fit' }),
      ),
    );
    expect(html).not.toMatch(/<script|https?:|<link/u);
    expect(html).toContain('&lt;/table&gt;&lt;script&gt;');
    expect(html).toMatch(/<td[^>]* data-source-line="\d+" data-source-last="\d+" data-source-file="p\.rebuild">/u);
  });

  it('nothing to lay out is said', () => {
    const { groups, ...empty } = specs;
    expect(groups.length).toBeGreaterThan(0);
    expect(renderSpecsText({ ...empty, groups: [] }, { width: 80 })).toContain(
      'No joint, no test and no spec has a figure.',
    );
  });
});

it('the remarks name the decision rules, and what each risks', () => {
  // Φ(−2r) at r 0 and 0.83: 50 % and 4.85 % (JCGM 106:2012, from memory).
  const made = procedureOf({
    specs: `spec crack "Crack pressure" pressure 30 bar ±1, acceptance guarded source "x"
  number A`,
    more: 'stage t at tester {\n test crack read pressure within crack\n}',
  });
  const simple =
    'Acceptance simple (a reading within its limit passes); a unit just outside it would pass 50 of 100 readings at worst.';
  const guarded =
    'Acceptance guarded (limits drawn in by 0.83 of the error of the tool); a unit just outside it would pass 4.8 of 100 readings at worst.';
  expect(buildSpecs(made).remarks.slice(1)).toEqual([simple, guarded]);
});

it('columns line up under wide characters in a terminal', () => {
  const specs = buildSpecs(procedureOf({}));
  const groups = specs.groups.map((group) => ({
    ...group,
    items: group.items.map((item) => ({
      ...item,
      figures: item.figures.map((one) => ({ ...one, what: '喷油压力', steps: [] })),
    })),
  }));
  const lines = renderSpecsText({ ...specs, groups }, { width: 80 }).split('\n');
  const starts = lines.flatMap((line) => /^ {2}喷油压力 +/u.exec(line)?.[0] ?? []);
  expect(starts.length).toBeGreaterThan(0);
  // Each of the four takes two columns.
  for (const start of starts) expect(start.length + 4).toBe(24);
});
