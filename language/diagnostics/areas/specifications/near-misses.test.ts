import { describe, expect, it } from 'vitest';
import { check } from '../../../../tests/fixtures/example-pages.ts';
import { instead, procedureWith } from '../../../../tests/fixtures/sound-procedure.ts';
import { fullMessage } from '../../../model/diagnostic.ts';
import { specifications } from './index.ts';

const mine = new Set(specifications.map(({ code }) => code));

/** What the rules of this area find in a text. */
const found = (text: string): string[] =>
  check(text)
    .diagnostics.filter(({ rule }) => mine.has(rule))
    .map((one) => `${one.rule}: ${fullMessage(one)}`);
const rulesFound = (text: string) => found(text).map((line) => line.slice(0, line.indexOf(':')));

/** The sound procedure with more tests before the pressure is let down. */
const tested = (...tests: string[]) =>
  procedureWith({
    prove: instead('      relieve ', `${tests.map((test) => `      ${test}\n`).join('')}      relieve `),
  });
const built = (...steps: string[]) =>
  procedureWith({
    build: instead('      clamp body\n', `${steps.map((step) => `      ${step}\n`).join('')}      clamp body\n`),
  });
const fails = ' on fail reshim (3 times)';
const sheet = ' source "Sheet"';

it('the sound procedure raises nothing', () => {
  expect(found(procedureWith())).toEqual([]);
});

describe('limit-missing, accept-missing, pressure-missing. Not:', () => {
  it.each([
    [
      'a fall that is watched and judged by words',
      `test back-leak  from 150 bar for 10 s  accept "falls slowly"${fails}${sheet}`,
    ],
    ['a test that says what is not good', `test spray  with gauge shut  reject "streak or drip"${fails}`],
    ['a test in the author’s own words', `test chatter  with gauge shut accept "sings at every stroke"${fails}`],
    ['drops that are counted in a time', `test back-flow  read count for 30 s within 3..10 drops${fails}${sheet}`],
    ['a time that is read', `test body-leak  hold 100 bar read time within at least 20 s${fails}${sheet}`],
    ['a reading that is written down', 'read opening as left'],
    ['a setting that is held to the spec of its name', 'set opening'],
  ])('%s', (_, test) => {
    expect(found(tested(test))).toEqual([]);
  });

  it('a measurement with no limit and nothing on fail; one with both', () => {
    expect(
      found(built('measure shim with MIC-1', `measure spring within 31..32 mm on fail renew spring (once)${sheet}`)),
    ).toEqual([]);
  });

  it.each([
    [`test lift  read length${fails}`, 'limit-missing'],
    [`test back-leak  from 150 bar to 100 bar${fails}${sheet}`, 'limit-missing'],
    [`test back-leak  from 150 bar in 6..20 s${fails}${sheet}`, 'pressure-missing'],
    [`test seat-leak  for 10 s  accept "no drop"${fails}`, 'pressure-missing'],
    [`test spray  with gauge shut${fails}`, 'accept-missing'],
    [`test seat-leak  hold 20 bar below opening for 10 s${fails}${sheet}`, 'accept-missing'],
    [`test seat-leak  hold 20 bar below opening  accept "no drop"${fails}${sheet}`, 'hold-how-long'],
  ])('one slip is one finding: %s', (test, rule) => {
    expect(rulesFound(tested(test))).toEqual([rule]);
  });

  it('one slip is one finding where the step is in a sequence that is called twice', () => {
    const text = procedureWith({ repairs: (repairs) => repairs.replace('prime 6 strokes', 'prime') });
    expect(rulesFound(text)).toEqual(['prime-how']);
  });
});

describe('limit-empty. Not:', () => {
  it('what is counted, a tolerance on one side, a value that takes the shop’s tolerance', () => {
    const specs = (text: string) =>
      `${text}\n    spec drops  count  3..3 drops  source "Sheet"\n    spec lift  length  0.20 mm +0.02 -0  source "Sheet"\n    spec aim  pressure  254 bar  source "Sheet"`;
    expect(rulesFound(procedureWith({ specs })).filter((rule) => rule === 'limit-empty')).toEqual([]);
  });

  it('an angle with no room is reported, and a range the wrong way around', () => {
    const at = (limit: string) =>
      rulesFound(built(`torque nut to ${limit} with TW-80${sheet}`)).filter((rule) => rule === 'limit-empty');
    expect(at('20 N·m ±2 then 60° ±0')).toEqual(['limit-empty']);
    expect(at('65..55 N·m')).toEqual(['limit-empty']);
    expect(at('20 N·m ±2 then 60° ±5')).toEqual([]);
  });
});

describe('spec-unused. Not:', () => {
  const withSpec = (spec: string, step: string) =>
    procedureWith({
      specs: (text) => `${text}\n    ${spec}`,
      prove: instead('      relieve ', `      ${step}\n      relieve `),
    });

  it('a spec that a reading is named after, an aim, a rate', () => {
    expect(found(withSpec('spec return  pressure  at most 2 bar  source "Sheet"', 'read return as found'))).toEqual([]);
  });

  it('a procedure that is only begun', () => {
    const begun = `${procedureWith().split('procedure')[0]}procedure begun "Begun" for holder at bench revision A {\n  spec opening pressure 250 bar +8 -0 source "Sheet"\n}\n`;
    expect(found(begun)).toEqual([]);
  });

  it('a spec that a step has forgotten to name: that step is reported', () => {
    expect(
      rulesFound(
        procedureWith({ build: instead(' to nut-fit', ''), repairs: (text) => text.replace(' to nut-fit', '') }),
      ),
    ).toEqual(['torque-missing', 'torque-missing']);
  });

  it('one that steps of some numbers read, with a value for these', () => {
    const text = procedureWith({
      specs: (specs) =>
        `${specs.replace('number A-220 {', 'number A-220 { lift 0.20 mm ±0.02 source "Sheet"  ').replace('number A-250\n', 'number A-250 { lift not required source "Sheet" }\n')}\n    spec lift length`,
      prove: instead(
        '      relieve ',
        `      only A-220 { test lift read length within lift${fails} }\n      relieve `,
      ),
    });
    expect(found(text)).toEqual([]);
  });
});

describe('source-missing. Not:', () => {
  it('ways of working: the lever’s speed, a soak, the air, an aim, the strokes of priming', () => {
    expect(
      found(
        procedureWith({
          clean: instead('wash all in solvent', 'wash all in solvent\n      soak nozzle in solvent for 20 min'),
          prove: instead(
            '      relieve ',
            `      test chatter  at 20..60 strokes/min with gauge shut  accept "even"${fails}\n      relieve `,
          ),
        }),
      ),
    ).toEqual([]);
  });

  it('part numbers whose spec gives the source for all of them', () => {
    const specs = (text: string) =>
      text
        .replace('pressure  250 bar +8 -0  source "Example sheet"', 'pressure  source "The whole table"')
        .replace('number A-250', 'number A-250 { opening 250 bar +8 -0 }')
        .replace('220 bar +8 -0  source "Example sheet"', '220 bar +8 -0');
    expect(found(procedureWith({ specs }))).toEqual([]);
  });

  it('a number that would print the source of another is reported', () => {
    expect(
      rulesFound(procedureWith({ specs: instead('220 bar +8 -0  source "Example sheet"', '220 bar +8 -0') })),
    ).toEqual(['source-missing']);
  });
});

describe('hold-not-below-opening. Not:', () => {
  it.each([
    [
      'an absolute pressure below all of them',
      `test seat-leak  hold 200 bar for 10 s  accept "no drop"${fails}${sheet}`,
    ],
    ['a body with the tip blanked off', `test body-leak  hold 350 bar for 10 s  accept "dry"${fails}${sheet}`],
    [
      'an amount below the reading, however large',
      `test seat-leak  hold 60 bar below opening for 10 s  accept "no drop"${fails}${sheet}`,
    ],
  ])('%s', (_, test) => {
    expect(found(tested(test))).toEqual([]);
  });

  it('names the part numbers for which it is too high', () => {
    const [diagnostic] = found(tested(`test seat-leak  hold 230 bar for 10 s  accept "no drop"${fails}${sheet}`));
    expect(diagnostic).toContain('hold-not-below-opening');
    expect(diagnostic).toMatch(/220\sbar \(A-220\)/u);
    expect(diagnostic).not.toContain('A-250');
  });

  it('another pressure that is read is no opening', () => {
    expect(
      found(
        tested(
          `test feed  read pressure within 2..3 bar${fails}${sheet}`,
          `test seat-leak  hold 6 bar for 10 s  accept "no bubble"${fails}${sheet}`,
        ),
      ),
    ).toEqual([]);
  });
});

describe('clauses that words say already. Not:', () => {
  it.each([
    ['prime-how', 'prime for "as long as bubbles come" with gauge shut'],
    ['prime-how', 'prime for 20 s with gauge shut'],
    ['hold-how-long', `test seat-leak  hold 20 bar below opening  accept "no drop in 10 s"${fails}${sheet}`],
  ])('%s: %s', (_, step) => {
    expect(found(tested(step))).toEqual([]);
  });

  it.each([
    ['fluid-missing', 'wash nut "In the parts washer, programme 2"'],
    ['fluid-missing', 'wipe body "Lint-free cloth, dry"'],
    ['check-for-what', 'check nut  note "Threads whole"  on fail renew nut (once)'],
    ['check-for-what', 'check needle slides "Falls by its own weight"  on fail renew needle (once)'],
    ['fixture-missing', 'clamp nut in "lead jaws"   unclamp nut'],
  ])('%s: %s', (_, step) => {
    expect(found(built(step))).toEqual([]);
  });

  it('choose-for-what, rate-missing: in words, or one for one in lengths', () => {
    const chosen = (put: string) =>
      found(procedureWith({ repairs: instead('choose shim to bring opening to opening by shim-rate', put) })).filter(
        (line) => !line.startsWith('spec-unused'),
      );
    expect(chosen('choose shim by "As thick as the one that came out"')).toEqual([]);
    expect(chosen('choose shim to bring opening to opening by "One size up for 6 bar"')).toEqual([]);
    expect(chosen('choose shim to bring lift to 0.20 mm').filter((line) => line.startsWith('rate'))).toEqual([]);
  });
});

describe('fixture-missing. Not:', () => {
  it('either half that the family says how to hold', () => {
    const change = instead('"Holder body"      held in "holding fixture"', '"Holder body"');
    const nut = instead('on body    holds nozzle', 'on body    holds nozzle  held in "hexagon fixture"');
    const clampNut = (text: string) => text.replaceAll('clamp body', 'clamp nut');
    expect(
      found(
        procedureWith({ family: (text) => nut(change(text)), teardown: clampNut, build: clampNut, repairs: clampNut }),
      ),
    ).toEqual([]);
    expect(rulesFound(procedureWith({ family: change }))).toEqual(['fixture-missing']);
  });
});

describe('unit-pair-disagrees, wrong-kind-of-unit, number-missing-spec. Not:', () => {
  const spec = (text: string) =>
    procedureWith({ specs: instead('torque    60 N·m ±5      source', `torque  ${text}  source`) });

  it('the torque’s second unit behind an angle', () => {
    expect(found(spec('20 N·m ±2 then 60° ±5 (14.8 lbf·ft ±1.4)'))).toEqual([]);
    expect(rulesFound(spec('20 N·m ±2 then 60° ±5 (12 lbf·ft ±1)'))).toEqual(['unit-pair-disagrees']);
  });

  it('amounts and spreads of the right kind', () => {
    expect(
      found(
        tested(
          'prime for 20 s with gauge shut',
          `across the set opening spread at most 70 psi${fails} of the furthest out${sheet}`,
        ),
      ),
    ).toEqual([]);
    expect(rulesFound(tested('prime 6 bar with gauge shut'))).toEqual(['wrong-kind-of-unit']);
    expect(
      rulesFound(tested(`across the set opening spread at most 5 N·m${fails} of the furthest out${sheet}`)),
    ).toEqual(['wrong-kind-of-unit']);
  });

  it('a unit that is only tested has a limit in service and no other', () => {
    const specs = (text: string) =>
      text.replace('250 bar +8 -0', ', in service at least 200 bar').replace(/ *number A-220.*$/mu, '');
    expect(rulesFound(procedureWith({ specs })).filter((rule) => rule === 'number-missing-spec')).toEqual([]);
  });
});

describe('torque-missing. Not:', () => {
  const family = instead(
    '  proven by opening',
    '  part screw    "Screw"     on body\n  part lock-nut "Lock nut"  on screw\n  joint lock-nut to screw\n  adjuster screw sets idle, locked by lock-nut\n  proven by opening',
  );
  const locked = (step: string) =>
    rulesFound(
      procedureWith({ family, build: instead('      unclamp body\n', `      ${step}\n      unclamp body\n`) }),
    );

  it('a lock nut that is pulled up by feel', () => {
    expect(locked('lock lock-nut with "open spanner"')).toEqual([]);
    expect(locked('lock lock-nut')).toEqual([]);
    expect(locked('lock lock-nut with TW-80')).toEqual(['torque-missing']);
  });
});

describe('one slip is one finding:', () => {
  it('a torque in bar with no tolerance', () => {
    expect(rulesFound(procedureWith({ specs: instead('60 N·m ±5', '60 bar') }))).toEqual(['wrong-kind-of-unit']);
  });

  it('a measurement, and an aim, that lost their spec', () => {
    const lost = procedureWith({
      specs: (text) => `${text}\n    spec spring-length  length  31.5 mm ±0.3  source "Sheet"`,
      build: instead(
        '      clamp body\n',
        '      measure spring with MIC-1  on fail renew spring (once)\n      clamp body\n',
      ),
    });
    expect(rulesFound(lost)).toEqual(['limit-missing']);
    expect(
      rulesFound(procedureWith({ repairs: (text) => text.replace(' to bring opening to opening by shim-rate', '') })),
    ).toEqual(['choose-for-what']);
  });

  it('the lever’s speed in bar, with the gauge shut', () => {
    expect(rulesFound(tested(`test chatter  at 20..60 bar with gauge shut  accept "even"${fails}`))).toEqual([
      'wrong-kind-of-unit',
    ]);
  });
});
