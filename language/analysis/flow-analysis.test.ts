import { describe, expect, it } from 'vitest';
import { resolve } from '../db/resolve.ts';
import { parse } from '../syntax/parse.ts';
import { variants } from './control-flow-graph.ts';
import { analyzeFlow, type FlowAnalysis } from './flow-analysis.ts';
import { allSteps } from './locations.ts';

const world = `
shop bench {
  station dirty dirty
  station clean clean
  station tester clean, pressure
  station wheel abrasive
  fluid solvent "Solvent"
  fluid oil "Test oil" test-oil
  stock shims of 1.00 mm, 1.05 mm
}
family holder {
  part body "Body"
  part shim "Shim" in body chosen from shims
  part spring "Spring" on shim
  part seat "Seat" on spring bears on needle
  part spacer "Spacer" on body located by "two dowels"
  part nozzle "Nozzle" on spacer
  part needle "Needle" in nozzle matched to nozzle
  part nut "Nut" on body holds nozzle
  part seal "Seal" on body renewed
  face body.end lapped meets spacer.top guarded by nut
  face spacer.bottom lapped meets nozzle.top
  port inlet on body
  joint nut to body
}
`;

function flows(body: string): FlowAnalysis[] {
  const text = `${world}\nprocedure p for holder at bench {\n spec opening pressure 250 bar ±5 source "x"\n spec fit torque 60 N·m ±5 source "x"\n number A\n number B\n${body}\n}`;
  const parsed = parse(text);
  const resolved = resolve([{ uri: 'p', ast: parsed.ast }]);
  expect([...parsed.problems, ...resolved.problems]).toEqual([]);
  return analyzeFlow(resolved.procedures[0]!);
}

/** What is possible of some cells before the last step on the first way, and on any way. */
function stateBefore(body: string, number: string, ...cells: string[]): Record<string, string[]> {
  const found: Record<string, Set<string>> = Object.fromEntries(cells.map((cell) => [cell, new Set<string>()]));
  for (const one of flows(body)) {
    one.visit({
      step({ step, before: state }) {
        if (step.number !== number) return;
        one.layout.locations.forEach((cell, index) => {
          const name = `${cell.of} ${cell.property}`;
          for (const word of one.layout.wordsOf(index, state.get(index))) found[name]?.add(word);
        });
      },
    });
  }
  return Object.fromEntries(Object.entries(found).map(([cell, words]) => [cell, [...words].sort()]));
}

const ways = (body: string) => {
  const met: string[] = [];
  for (const one of flows(body))
    one.visit({ step: ({ step, path }) => met.push(`${path.repair?.name ?? '-'}:${step.number}`) });
  return met;
};

describe('at entry', () => {
  it('the unit is assembled, dirty, its ports open, nothing known to be tight', () => {
    expect(
      stateBefore(
        'stage s at dirty { receive }',
        '1.1',
        'part shim place',
        'part shim surface',
        'port inlet is',
        'joint nut is',
        'unit station',
      ),
    ).toEqual({
      'part shim place': ['in place'],
      'part shim surface': ['dirty'],
      'port inlet is': ['open'],
      'joint nut is': ['tight as found'],
      'unit station': ['dirty'],
    });
  });
});

describe('taking apart', () => {
  it('takes a needle out with its nozzle, as a sub-assembly', () => {
    expect(
      stateBefore(
        'stage s at dirty {\n slacken nut\n remove nut, nozzle\n tag\n}',
        '1.3',
        'part needle place',
        'part nozzle place',
      ),
    ).toEqual({
      'part needle place': ['out with its sub-assembly'],
      'part nozzle place': ['off'],
    });
  });

  it('puts a guard on and takes it off with no joint', () => {
    const text =
      'stage s at dirty {\n slacken nut\n remove nut, nozzle, needle, spacer\n guard body.end with nut\n tag\n remove nut\n tag\n}';
    expect(stateBefore(text, '1.4', 'face body.end guard', 'part nut place', 'joint nut is')).toEqual({
      'face body.end guard': ['guarded'],
      'part nut place': ['on as a guard'],
      'joint nut is': ['apart'],
    });
    expect(stateBefore(text, '1.6', 'face body.end guard', 'part nut place')).toEqual({
      'face body.end guard': ['no guard'],
      'part nut place': ['off'],
    });
  });

  it('takes a discarded part off for good; the next fit takes a new one from the kit', () => {
    const text = 'stage s at dirty {\n discard seal\n tag\n fit seal\n tag\n}';
    expect(stateBefore(text, '1.2', 'part seal place', 'part seal age')).toEqual({
      'part seal place': ['discarded'],
      'part seal age': ['as found'],
    });
    expect(stateBefore(text, '1.4', 'part seal place', 'part seal age')).toEqual({
      'part seal place': ['in place'],
      'part seal age': ['new'],
    });
  });

  it('brings a renewed part in preservative, unless it is ready to fit', () => {
    expect(
      stateBefore(
        'stage s at dirty {\n slacken nut\n remove nut, nozzle, needle\n renew needle\n tag\n}',
        '1.4',
        'part needle surface',
      ),
    ).toEqual({ 'part needle surface': ['in preservative'] });
    expect(
      stateBefore(
        'stage s at dirty {\n slacken nut\n remove nut, nozzle, needle\n renew needle ready to fit\n tag\n}',
        '1.4',
        'part needle surface',
      ),
    ).toEqual({ 'part needle surface': ['rinsed'] });
  });
});

describe('joints and gates', () => {
  const test = 'test opening read pressure within opening';

  it('a loaded joint that is slackened loses the prime and makes what it proves stale', () => {
    const text = `stage s at tester {\n connect inlet\n prime 6 strokes\n ${test}\n slacken nut\n tag\n}`;
    expect(stateBefore(text, '1.5', 'gate opening is', 'unit primed', 'joint nut is')).toEqual({
      'gate opening is': ['stale'],
      'unit primed': ['no'],
      'joint nut is': ['slackened'],
    });
  });

  it('fitting a seal or a cap does not', () => {
    const text = `stage s at tester {\n connect inlet\n prime 6 strokes\n ${test}\n disconnect inlet\n cap inlet\n discard seal\n fit seal\n tag\n}`;
    expect(stateBefore(text, '1.8', 'gate opening is')).toEqual({ 'gate opening is': ['passed'] });
  });

  it('a gate that says through what it proves is stale for that only', () => {
    const text = `stage s at tester {\n connect inlet\n prime 6 strokes\n ${test} proves through body.end\n slacken nut\n tag\n}`;
    expect(stateBefore(text, '1.5', 'gate opening is')).toEqual({ 'gate opening is': ['passed'] });
  });

  it('a check of parts in the hand holds when the unit is opened later', () => {
    const text = 'stage s at tester {\n check needle "slides" on fail wash needle\n slacken nut\n tag\n}';
    expect(stateBefore(text, '1.3', 'gate check needle (1.1) is')).toEqual({
      'gate check needle (1.1) is': ['passed'],
    });
  });
});

describe('ways', () => {
  const repair = 'repair again { relieve    slacken nut    torque nut to fit    connect inlet    prime 6 strokes }';

  it('run all tests of a stage, then one repair, then the earliest gate not passed', () => {
    const text = `stage s at tester {\n connect inlet\n prime 6 strokes\n test a read pressure within opening on fail again\n test b accept "good" with gauge shut on fail again\n tag\n}\n${repair}`;
    expect(ways(text)).toEqual([
      '-:1.1',
      '-:1.2',
      '-:1.3',
      '-:1.4',
      '-:1.5',
      'again:1.3',
      'again:1.4',
      'again:1.5',
      'again:R1.1',
      'again:R1.2',
      'again:R1.3',
      'again:R1.4',
      'again:R1.5',
    ]);
  });

  it('go back to the earliest gate before the sender that the repair made stale, in another stage too', () => {
    const text = `stage s at tester {\n connect inlet\n prime 6 strokes\n test a read pressure within opening on fail again (3 times)\n}\nstage t at tester {\n test b accept "good" with gauge shut on fail again\n}\n${repair}`;
    expect(ways(text).filter((at) => at.startsWith('again'))).toContain('again:1.3');
  });

  it('do not enter a one-try repair twice', () => {
    const once = ways(`stage s at tester {\n test a accept "x" on fail wipe-it\n tag\n}\nrepair wipe-it { wipe body }`);
    expect(once.filter((at) => at === 'wipe-it:R1.1')).toHaveLength(1);
  });

  it('try the entries of a list in order: the second only when the first is used up', () => {
    const text =
      'stage s at tester {\n test a accept "x" on fail one, two\n}\nrepair one { wipe body }\nrepair two { wipe nut }';
    const replayed = flows(text)[0]!;
    const froms: string[] = [];
    replayed.visit({
      step: ({ step, path }) => void (step.number === 'R2.1' && froms.push(path.from!.path.repair?.name ?? '-')),
    });
    expect(froms).toEqual(['one']);
  });

  it('end where no repair is left or none is written: the unit waits for the lead', () => {
    expect(ways('stage s at tester {\n test a accept "x"\n tag\n}')).toEqual(['-:1.1', '-:1.2']);
  });

  it('stop at once where a test says so', () => {
    const text =
      'stage s at tester {\n test a accept "x" on fail one stop if fails\n tag\n test b accept "y" on fail one\n}\nrepair one { wipe body }';
    expect(stateBefore(text, 'R1.1', 'gate b is', 'unit tagged')).toEqual({
      'gate b is': ['failed', 'not yet'],
      'unit tagged': ['no', 'yes'],
    });
  });

  it('reach a fixpoint however many repairs send to each other', () => {
    const repairs = Array.from(
      { length: 6 },
      (_, index) =>
        `repair r${index} { relieve    slacken nut    torque nut to fit    connect inlet    prime 6 strokes }`,
    );
    const fails = repairs.map((_, index) => `r${index} (9 times)`).join(', ');
    const text = `stage s at tester {\n connect inlet\n prime 6 strokes\n test a read pressure within opening on fail ${fails}\n test b accept "x" on fail ${fails}\n}\n${repairs.join('\n')}`;
    const [one] = flows(text);
    let visits = 0;
    one!.visit({ step: () => void visits++ });
    expect(visits).toBeLessThan(200);
  });
});

describe('part numbers', () => {
  it('are replayed once for each set of steps that differ', () => {
    const text = 'stage s at dirty {\n receive\n only A { tag }\n}';
    const found = flows(text);
    expect(found.map(({ graph }) => graph.numbers)).toEqual([['A'], ['B']]);
    expect(variants(found[0]!.graph.procedure)).toHaveLength(2);
    expect(allSteps(found[0]!.graph.procedure)).toHaveLength(2);
  });
});
