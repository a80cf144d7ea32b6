import { describe, expect, it } from 'vitest';
import { resolve } from '../db/resolve.ts';
import type { Procedure, Step } from '../model/procedure.ts';
import { isGate } from '../model/steps.ts';
import { english } from '../say/say.ts';
import { parse } from '../syntax/parse.ts';

const shop =
  'shop bench {\n station dirty dirty\n station tester pressure\n wrench W range 16..80 N·m\n fluid solvent\n stock shims from 1.00 mm to 1.10 mm by 0.05 mm\n}\n';
const family =
  'family holder {\n part body "Body"\n part nut "Nut" on body holds nozzle\n part nozzle "Nozzle" on body\n face body.end lapped meets nozzle.top\n port inlet on body\n joint nut to body\n}\n';

/** Files by name in one literal, with `//- name` before each. */
function files(text: string) {
  const parts = text.split(/^\/\/- (.+)$/mu);
  const named =
    parts.length === 1
      ? [['main', text]]
      : Array.from({ length: (parts.length - 1) / 2 }, (_, index) => [parts[2 * index + 1]!, parts[2 * index + 2]!]);
  return named.map(([uri, content]) => ({ uri: uri!, ...parse(content!) }));
}

function resolved(text: string) {
  const all = files(text);
  expect(all.flatMap(({ problems }) => problems)).toEqual([]);
  return resolve(all.map(({ uri, ast }) => ({ uri, ast })));
}

const problems = (text: string) =>
  resolved(text).problems.map(
    (problem) =>
      `${problem.source.file}:${problem.source.range.start.line + 1} ${problem.kind === 'syntax' ? english(problem.message) : problem.kind === 'unknown-name' ? `no ${problem.what} ${problem.name} (${problem.near.join(', ')})` : problem.kind === 'duplicate-name' ? `twice ${problem.what} ${problem.name}` : `${problem.kind} ${problem.step}`}`,
  );

const only = (text: string): Procedure => {
  const { procedures, problems: found } = resolved(text);
  expect(found).toEqual([]);
  return procedures[0]!;
};

const inProcedure = (body: string) =>
  `${shop}${family}procedure p for holder at bench {\n spec fit torque 60 N·m ±5 source "x"\n spec opening pressure 250 bar ±5 source "x"\n number A\n${body}\n}`;
const steps = (body: string): Step[] => only(inProcedure(body)).stages.flatMap((stage) => stage.steps);
const told = (step: Step) =>
  `${step.number} ${step.verb} ${step.objects.map((object) => object.name).join(', ')}`.trim();

describe('stock', () => {
  const of = (sizes: string) => shop.replace('from 1.00 mm to 1.10 mm by 0.05 mm', sizes);
  const stockOf = (sizes: string) =>
    only(`${of(sizes)}${family}procedure p for holder at bench {\n stage s {\n  fit nut\n }\n}`).shop.stocks[0]!;

  it('has single sizes with their counts, thinnest first, and may stack two', () => {
    expect(stockOf('of 1.10 mm, 1.00 mm (3), 1.05 mm (0) stacks of two')).toMatchObject({
      sizes: ['1.00', '1.05', '1.10'].map((number) => ({ number, unit: 'mm' })),
      counts: [3, 0, null],
      stacks: true,
    });
    expect(stockOf('from 1.00 mm to 1.10 mm by 0.05 mm')).toMatchObject({ counts: [null, null, null], stacks: false });
    for (const stacking of [
      'from 1.00 mm to 1.10 mm by 0.05 mm stacks of two',
      'from 1.00 mm to 1.10 mm by 0.05 mm, stacks of two',
      'of 1.00 mm, 1.05 mm (2), stacks of two',
    ])
      expect(stockOf(stacking)).toMatchObject({ stacks: true });
  });

  it('refuses halves of a shim, and a size that is listed twice', () => {
    expect(problems(of('of 1.00 mm (2.5), 1.05 mm'))).toEqual([
      expect.stringContaining('Shims come in whole numbers, and 2.5 is not a count'),
    ]);
    expect(problems(of('of 1.00 mm (1), 1.05 mm, 1.00 mm (2)'))).toEqual([
      expect.stringContaining('Stock shims has 1.00\u00a0mm twice'),
    ]);
  });

  it('leaves its words free for names', () => {
    const text = inProcedure(
      ' sequence stacks {\n  fit nut\n }\n sequence two {\n  wash nut in solvent\n }\n stage s {\n  two  stacks\n }',
    );
    expect(only(text).stages[0]!.steps.map(told)).toEqual(['1.1a wash nut', '1.2a fit nut']);
  });
});

describe('settling of a new spring', () => {
  const withSpec = (more: string, number = '') =>
    inProcedure('').replace('250 bar ±5', `250 bar ±5, ${more}`).replace(' number A\n', ` number A {\n${number}\n}\n`);
  const settlingIn = (more: string, number?: string) => {
    const { specs, numbers } = only(withSpec(more, number));
    return [specs[1]!.settling, ...numbers[0]!.values.map(({ settling }) => settling)];
  };

  it('is a figure of the spec, or of a part number', () => {
    const bar = (number: string) => ({ number, unit: 'bar' });
    expect(settlingIn('settling 4 bar')).toEqual([bar('4')]);
    expect(settlingIn('in service at least 200 bar, settling 4 bar', '  opening settling 6 bar')).toEqual([
      bar('4'),
      bar('6'),
    ]);
    expect(settlingIn('settling 0 bar', '  opening 220 bar ±5')).toEqual([bar('0'), null]);
  });

  it('is of the kind of its spec, and no gain', () => {
    expect(problems(withSpec('settling 0.1 mm'))).toEqual([
      expect.stringContaining('Spec opening is a pressure, and 0.1\u00a0mm is a length'),
    ]);
    expect(problems(withSpec('settling 4 bar', '  opening settling 3 N'))).toEqual([
      expect.stringContaining('3\u00a0N is a force'),
    ]);
    expect(problems(withSpec('settling -4 bar'))).toEqual([expect.stringContaining('says that it gains')]);
  });
});

describe('a rate from spring and needle', () => {
  const withRate = (rate: string, number = '') =>
    inProcedure('').replace(' number A\n', ` spec shim-rate ${rate} source "x"\n number A {\n${number}\n}\n`);
  const figures = 'from stiffness 200 N/mm, guide 6 mm, seat 3 mm';
  const nominalOf = (limit: unknown) => (limit as { nominal: unknown }).nominal;

  it('is an ordinary rate, to four digits, and keeps what it came of', () => {
    // 200 N over π/4 · (36 − 9) mm² = 21.2058 mm², for each millimeter: 9.4314 MPa. Balance of forces, by hand.
    const spec = only(withRate(`rate ${figures}`)).specs[2]!;
    expect(spec).toMatchObject({
      kind: 'setting rate',
      rebuilt: { form: 'nominal', nominal: { number: '94.31', unit: 'bar per mm' }, plus: null, minus: null },
      rateFrom: {
        stiffness: { number: '200', unit: 'N/mm' },
        guide: { number: '6', unit: 'mm' },
        seat: { number: '3', unit: 'mm' },
      },
      per: null,
      sourceText: 'x',
    });
  });

  it('may be a part number’s own, and take inches', () => {
    // 1142 lbf/in is 200 N/mm; 0.2362 and 0.1181 in are 6 and 3 mm.
    const inches = '  shim-rate from stiffness 1142 lbf/in, guide 0.2362 in, seat 0.1181 in';
    const [value] = only(withRate('rate 96 bar per mm', inches)).numbers[0]!.values;
    expect(Number((nominalOf(value!.rebuilt) as { number: string }).number)).toBeCloseTo(94.31, 1);
    expect(value!.rateFrom).not.toBeNull();
  });

  it('is refused where none comes of it', () => {
    const refused = (rate: string, number?: string) =>
      problems(withRate(rate, number)).map((line) => line.replace(/^\S+ /u, ''));
    const one = (text: string) => [expect.stringContaining(text)];
    expect(refused('rate from stiffness 200 N/mm, guide 6 mm, seat 6 mm')).toEqual(one('no pressure would lift'));
    expect(refused('rate from stiffness 200 N/mm, guide 0 mm, seat 0 mm')).toEqual(one('must have a diameter'));
    expect(refused('rate from stiffness 0 N/mm, guide 6 mm, seat 3 mm')).toEqual(one('presses no harder'));
    expect(refused('rate from stiffness 200 N, guide 6 mm, seat 3 mm')).toEqual(one('is a force per length'));
    expect(refused('rate from stiffness 200 N/mm, guide 6 bar, seat 3 mm')).toEqual(one('A guide has a diameter'));
    expect(refused(`pressure ${figures}`)).toEqual(one('Spec shim-rate is a pressure'));
    expect(refused(figures)).toEqual(one('not declared as a rate'));
    expect(refused('rate 3 bar per 0.001 in', `  shim-rate ${figures}`)).toEqual(one('is written per 0.001\u00a0in'));
  });

  it('leaves guide and seat free for parts and sequences', () => {
    const text = inProcedure(' sequence seat {\n  fit nut\n }\n stage s {\n  seat\n }');
    expect(only(text).stages[0]!.steps.map(told)).toEqual(['1.1a fit nut']);
    const parts = text.replace(' port inlet', ' part guide "Guide" on body\n part seat "Seat" on guide\n port inlet');
    expect(only(parts.replace('  fit nut', '  fit guide, seat')).stages[0]!.steps.map(told)).toEqual([
      '1.1a fit guide, seat',
    ]);
  });
});

describe('names', () => {
  it('are visible across files', () => {
    expect(
      problems(
        `//- shop\n${shop}//- family\n${family}//- procedure\nprocedure p for holder at bench {\n stage s at dirty {\n  fit nut\n }\n}`,
      ),
    ).toEqual([]);
  });

  it('that nothing declares are reported with the nearest', () => {
    expect(problems(inProcedure(' stage s at dity {\n  fit nutt\n  torque nut to ft\n }'))).toEqual([
      'main:20 no station dity (dirty)',
      'main:21 no part nutt (nut)',
      'main:22 no spec ft (fit)',
    ]);
  });

  it('declared twice are reported at the second, in any file; the first is taken', () => {
    expect(problems(`//- a\n${shop}//- b\n${shop}`)).toEqual(['b:2 twice shop bench']);
  });

  it('of a misspelled verb are answered with the nearest one', () => {
    expect(problems(inProcedure(' stage s at dirty {\n  fti nut, nozzle\n  torqe nut to fit\n }'))).toEqual([
      'main:21 no step or sequence fti (fit)',
      'main:22 no step or sequence torqe (torque)',
    ]);
  });
});

describe('sequences', () => {
  const sequence = ' sequence close with what; where {\n  fit what\n  cap where\n }';

  it('are written out with their parameters, numbered with letters, known at the call', () => {
    const found = steps(` stage s at dirty {\n  tag\n  close with nozzle, nut; inlet\n  receive\n }\n${sequence}`);
    expect(found.map(told)).toEqual(['1.1 tag', '1.2a fit nozzle, nut', '1.2b cap inlet', '1.3 receive']);
    expect(found[1]!.source.range.start.line).toBe(21);
    expect(found[1]!.call).toMatchObject({ name: 'close', source: { range: { start: { line: 25 } } } });
  });

  it('are in a file of their own too', () => {
    expect(
      problems(`//- a\nsequence greet { tag }\n//- b\n${inProcedure(' stage s at dirty {\n  greet\n }')}`),
    ).toEqual([]);
  });

  it('that call themselves are reported, not followed', () => {
    expect(problems(inProcedure(' stage s at dirty {\n  round\n }\n sequence round { tag  round }'))).toEqual([
      'main:23 Sequence round calls itself: it would never end. Delete the call.',
    ]);
  });

  it('want as many lists as they declare', () => {
    expect(problems(inProcedure(` stage s at dirty {\n  close with nut\n }\n${sequence}`))).toEqual([
      'main:21 Sequence close is called with what; where: give it 2 lists, separated by ;.',
    ]);
  });
});

describe('steps', () => {
  it('have keys that stay when others are put in: stage, verb, first object, an ordinal where alike', () => {
    expect(
      steps(
        ' stage build at dirty {\n  fit nut\n  torque nut to fit\n  slacken nut\n  torque nut to fit\n  test opening read pressure within opening\n }',
      ).map(({ key }) => key),
    ).toEqual(['build/fit nut', 'build/torque nut', 'build/slacken nut', 'build/torque nut (2)', 'build/test opening']);
  });

  it('report a clause that has no meaning after their verb', () => {
    expect(problems(inProcedure(' stage s at dirty {\n  relieve in solvent\n  torque nut to fit to fit\n }'))).toEqual([
      'main:21 “in solvent” has no meaning after relieve. Delete it.',
      'main:22 “to fit” appears twice in this step. Delete one.',
    ]);
  });

  it('are held to one limit, however it is written', () => {
    const of = (test: string) => problems(inProcedure(` stage s at tester {\n  ${test}\n }`));
    expect(of('test opening read pressure within opening accept at most 3 drops')).toEqual([
      'main:21 “accept at most 3 drops” is a second limit of this step, which is held to one: it would be nowhere on the sheet. Delete one of the two, or give each a step of its own.',
    ]);
    expect(of('test opening read pressure within opening accept "no drop"')).toEqual([]);
    expect(of('torque nut to fit by stretch 0.10..0.12 mm')).toEqual([]);
  });

  it('inside on fail take no fluid where their verb takes none', () => {
    const of = (fix: string) =>
      problems(inProcedure(` stage s at dirty {\n  check nozzle "bright" on fail ${fix}\n }`));
    expect(of('renew nozzle in solvent')).toEqual(['main:21 “in solvent” has no meaning after renew. Delete it.']);
    expect(of('wash nozzle in solvent')).toEqual([]);
  });

  it('have the fields of their verb, and no others', () => {
    const [fit, torque, check, test] = steps(
      ' stage s at tester {\n  fit nut\n  torque nut to fit\n  check nozzle "bright" on fail renew nozzle\n  test opening read pressure within opening\n }',
    );
    const own = (step: Step | undefined) =>
      ['forTrial', 'limit', 'oiled', 'gate', 'test', 'verdicts'].filter((field) => field in step!);
    expect([fit, torque, check, test].map(own)).toEqual([
      ['forTrial'],
      ['limit', 'oiled'],
      ['limit', 'gate', 'verdicts'],
      ['limit', 'gate', 'test'],
    ]);
  });

  it('are gates of what they judge: tests of one name are one, every check is one of its own', () => {
    const gates = steps(
      ' stage s at tester {\n  test opening read pressure within opening\n  set opening within opening by "x"\n  across the set opening spread at most 5 bar\n  test opening read pressure within opening\n  check nut "a"\n  check nut "b"\n  measure nut\n }',
    ).filter(isGate);
    expect(gates.map(({ gate }) => [gate.kind, 'test' in gate ? gate.test : null])).toEqual([
      ['test', 'opening'],
      ['set', 'opening'],
      ['across', 'opening'],
      ['test', 'opening'],
      ['check', null],
      ['check', null],
    ]);
    expect(new Set(gates.map(({ gate }) => gate.id)).size).toBe(5);
  });

  it('for some part numbers leave gaps in the numbers of the others', () => {
    expect(
      steps(' stage s at dirty {\n  tag\n  only A { receive }\n  fit nut\n }').map(
        ({ number, only: numbers }) => `${number} ${numbers ?? ''}`,
      ),
    ).toEqual(['1.1 ', '1.2 A', '1.3 ']);
  });

  it('take a hazard before them, and report one behind', () => {
    const body = ' stage s at dirty {\n  hazard CAUTION "hot"\n  receive\n  hazard "sharp" for fit nut\n  fit nut\n }';
    expect(steps(body).map(({ hazards }) => hazards.map(({ word, text }) => `${word} ${text}`))).toEqual([
      ['CAUTION hot'],
      ['WARNING sharp'],
    ]);
    expect(
      problems(inProcedure(' stage s at dirty {\n  fit nut\n  hazard "sharp" for fit nut\n  hazard "late"\n }')),
    ).toEqual(['main:22 hazard-after-step fit nut', 'main:23 hazard-after-step null']);
  });

  it('name the ports of all copies by the name that these share, and no other', () => {
    const of = (ports: string, cap: string) =>
      resolved(
        `${shop}${family.replace('port inlet on body', ports)}procedure p for holder at bench {\n stage s at tester {\n  cap ${cap}\n }\n}`,
      );
    const each = of('part cup "Cup" on body for each cylinder 1..3\n port inlet on cup', 'inlet');
    expect(each.problems).toEqual([]);
    expect(each.procedures[0]!.stages[0]!.steps[0]!.objects.map(({ name }) => name)).toEqual([
      'inlet-1',
      'inlet-2',
      'inlet-3',
    ]);
    expect(of('port inlet-1, inlet-2 on body', 'inlet').problems).toMatchObject([{ kind: 'unknown-name' }]);
  });

  it('take a hazard that names them by what they read', () => {
    const read = (verb: string) =>
      steps(` stage s at tester {\n  hazard "hot" for ${verb} opening\n  ${verb} opening\n }`)[0]!.hazards.length;
    expect(['read', 'set', 'test'].map(read)).toEqual([1, 1, 1]);
    expect(problems(inProcedure(' stage s at tester {\n  hazard "hot" for set opning\n  set opening\n }'))).toEqual([
      'main:21 This hazard is for “set opning”, and there is no such step. Did you mean set opening?',
    ]);
  });

  it('make a repair of what is written inside on fail', () => {
    const procedure = only(inProcedure(' stage s at dirty {\n  check nozzle "bright" on fail renew nozzle\n }'));
    expect(procedure.repairs.map(({ name, tries, inline }) => ({ name, tries, inline }))).toEqual([
      { name: 'renew nozzle', tries: 1, inline: true },
    ]);
    expect(procedure.repairs[0]!.steps.map(told)).toEqual(['R1.1 renew nozzle']);
  });

  it('count the tries of a repair over all its mentions', () => {
    const procedure = only(
      inProcedure(
        ' stage s at dirty {\n  check nozzle "a" on fail again (3 times)\n  check nut "b" on fail again\n  check body "c" on fail clean\n }\n repair again { wipe nozzle }\n repair clean { wipe nut }',
      ),
    );
    expect(procedure.repairs.map(({ name, tries }) => `${name} ${tries}`)).toEqual(['again 3', 'clean 1']);
  });
});

describe('like', () => {
  const base = `${inProcedure(' stage s at dirty {\n  receive\n  fit nut\n  torque nut to fit\n  tag\n }\n stage t at dirty {\n  tag\n }\n repair r { wipe nut }')}\n`;
  const sister = (patches: string) =>
    resolved(`${base}procedure q like p revision C {\n spec fit torque 70 N·m ±5 source "x"\n number B\n${patches}\n}`);
  const text = (patches: string) =>
    sister(patches).procedures[1]!.stages.map((stage) => `${stage.name}: ${stage.steps.map(told).join('; ')}`);

  it('takes over stages and repairs; names, specs and revision are its own', () => {
    const q = sister('').procedures[1]!;
    expect(q).toMatchObject({
      name: 'q',
      revision: 'C',
      family: { name: 'holder' },
      shop: { name: 'bench' },
      like: 'p',
    });
    expect(q.specs.map(({ name }) => name)).toEqual(['fit']);
    expect(q.repairs.map(({ name }) => name)).toEqual(['r']);
  });

  it('patches by verb, first object and stage', () => {
    expect(
      text(' after fit nut in s {\n  cap inlet\n }\n without receive in s\n instead of stage t {\n  receive\n }'),
    ).toEqual(['s: 1.1 fit nut; 1.2 cap inlet; 1.3 torque nut; 1.4 tag', 't: 2.1 receive']);
    expect(text(' before torque nut {\n  oil nut\n }\n instead of tag in s { photo }')).toEqual([
      's: 1.1 receive; 1.2 fit nut; 1.3 oil nut; 1.4 torque nut; 1.5 photo',
      't: 2.1 tag',
    ]);
  });

  it('reports an address that fits none or several, and two patches of one step', () => {
    const found = (patches: string) =>
      sister(patches).problems.map((problem) =>
        problem.kind === 'syntax' ? english(problem.message).split('.')[0] : problem.kind,
      );
    expect(found(' without lap nut')).toEqual(['No step is called “lap nut”']);
    expect(found(' without tag')).toEqual(['2 steps are called “tag”']);
    expect(found(' without fit nut\n after fit nut { tag }')).toEqual([
      'Two patches touch the same step: it would not be clear which comes first',
    ]);
  });

  it('of itself, by any way, is reported and ends', () => {
    const ring = `${shop}${family}procedure a for holder at bench like b {\n}\nprocedure b for holder at bench like a {\n}`;
    expect(problems(ring).some((message) => message.includes('ring of like'))).toBe(true);
  });
});

describe('numbers', () => {
  const one = (limit: string) =>
    problems(`${shop}${family}procedure p for holder at bench {\n spec a ${limit} source "x"\n}`);

  it('with a decimal comma offer the point', () => {
    expect(one('length 0,20 mm ±0.01')[0]).toContain('0.20');
    expect(one('pressure 3,750 psi ±10')[0]).toMatch(/3750.*3\.75/u);
  });

  it('that are absurd are refused', () => {
    expect(one('pressure 1e999 bar')).toHaveLength(1);
    expect(one('pressure 99999999999999999999 bar')).toHaveLength(1);
  });

  it('with a nearly correct unit are answered with the correct one', () => {
    expect(one('pressure 250 Bar ±5')[0]).toContain('bar');
    expect(one('length 5 mil ±1')[0]).toContain('thou');
    expect(one('pressure 250bar ±5')).toEqual([]);
  });

  it('with one side of a tolerance ask for the other', () => {
    expect(one('pressure 250 bar +8')).toEqual([
      'main:17 A tolerance has two sides: write +8 -0 where the other side is nothing, or ±8.',
    ]);
  });
});

describe('jobs', () => {
  const job = (rest: string) =>
    `${inProcedure(' stage s at dirty {\n  receive\n }').replace('at bench {', 'at bench revision B {')}\njob 2207 "Six" of p revision ${rest}`;

  it('hold units with the number of each', () => {
    const { jobs, problems: found } = resolved(
      job(
        'B customer "Harbour" received 2026-11-03 {\n unit 1 number A serial 0411\n unit 2 number unknown on hold "no number"\n}',
      ),
    );
    expect(found).toEqual([]);
    expect(jobs[0]).toMatchObject({
      name: '2207',
      customer: 'Harbour',
      received: '2026-11-03',
      units: [
        { place: '1', number: 'A', serial: '0411' },
        { number: null, numberText: 'unknown', onHold: 'no number' },
      ],
    });
  });

  it('of another revision, an unknown number, a day that is not in the calendar, a unit twice are reported', () => {
    const found = problems(job('A received 2026-02-30 {\n unit 1 number A\n unit 1 number C\n}'));
    expect(found).toHaveLength(4);
  });
});

describe('positions', () => {
  it('of a part for each cylinder are parts of their own, related position by position', () => {
    const text = `family engine {\n part head "Head"\n part holder "Holder" in head for each cylinder 1..3\n part clamp "Clamp" on holder for each cylinder 1..3\n joint clamp to head\n port tip on holder\n face holder.seat lapped meets head.seat\n}`;
    const { families, problems: found } = resolved(text.replace('\n face holder.seat lapped meets head.seat', ''));
    expect(found).toEqual([]);
    expect(families[0]!.parts.map(({ name, on, in: inside }) => `${name} ${on} ${inside}`)).toEqual([
      'head  ',
      'holder-1  head',
      'holder-2  head',
      'holder-3  head',
      'clamp-1 holder-1 ',
      'clamp-2 holder-2 ',
      'clamp-3 holder-3 ',
    ]);
    expect(families[0]!.joints.map(({ part, to }) => `${part} ${to}`)).toEqual([
      'clamp-1 head',
      'clamp-2 head',
      'clamp-3 head',
    ]);
    expect(families[0]!.ports.map(({ name }) => name)).toEqual(['tip-1', 'tip-2', 'tip-3']);
  });
});
