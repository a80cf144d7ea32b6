import fc from 'fast-check';
import { analyzeFlow, type Visitor } from '../../language/analysis/flow-analysis.ts';
import { resolve } from '../../language/db/resolve.ts';
import { rules } from '../../language/diagnostics/index.ts';
import { parse } from '../../language/syntax/parse.ts';
import { visitorOf } from '../visitor.ts';
import { facesOf, familyText, hasShim, outerPorts, partsOf, type Shape, shapes, shopText } from './family.ts';

/*
 * Random legal procedures, by walking the flow analysis: each stage has a bag of steps that must be done in it. The next one is
 * drawn at random from those to which no rule objects in the state that the flow analysis has reached. The result is in no
 * order that anybody thought of.
 */

/** A stage, and the bag of steps that it must have. A step may ask that others of its bag be done before. */
interface Bag {
  readonly head: string;
  readonly steps: readonly Draw[];
}

interface Draw {
  readonly text: string;
  /** Texts that must have been drawn before: what no rule can know, such as that the clamp is let go last. */
  readonly after?: readonly string[];
}

/** A list of steps that do the same work: all parts in one step, or one step for each. */
function spread(verb: string, parts: readonly string[], behind: string, apart: boolean): string[] {
  if (parts.length === 0) return [];
  return apart ? parts.map((part) => `${verb} ${part}${behind}`) : [`${verb} ${parts.join(', ')}${behind}`];
}

interface Taste {
  readonly shape: Shape;
  readonly apart: boolean;
  readonly fitApart: boolean;
  readonly washAll: boolean;
  readonly guards: boolean;
  readonly oils: boolean;
}

function bagsOf({ shape, apart, fitApart, washAll, guards, oils }: Taste): Bag[] {
  const { bore, discs, seals } = partsOf(shape);
  const faces = facesOf(shape);
  const ports = outerPorts(shape).join(', ');
  const off = ['nozzle', 'needle', ...[...discs].reverse(), ...[...bore].reverse()];
  const located = (part: string) => (shape.located ? `${part} located` : part);
  const removed = spread('remove', ['nut', ...off], '', apart);
  const fitted = fitApart
    ? [
        ...bore.map((part) => `fit ${part}`),
        ...discs.map((part) => `fit ${located(part)}`),
        `fit ${located('nozzle')} with needle`,
      ]
    : [`fit ${[...bore, ...discs.map(located), located('nozzle')].join(', ')} with needle`];
  const guard = shape.lapped && guards ? ['guard body.end with nut'] : [];
  const keep = `keep ${[...off, ...(guard.length > 0 ? [] : ['nut'])].join(', ')}`;
  const bareEnd = shape.lapped && !guards;
  const capBore = shape.borePort ? ['cap bore'] : [];
  const measure = hasShim(shape) ? ['measure shim with MIC-1'] : [];
  const bag = (head: string, ...steps: (string | Draw)[]): Bag => ({
    head,
    steps: steps.map((step) => (typeof step === 'string' ? { text: step } : step)),
  });
  const later = (text: string, ...after: string[]): Draw => ({ text, after });
  return [
    bag('receive at strip', 'receive', 'tag', `cap ${ports}`, later('clean outside', `cap ${ports}`)),
    bag(
      'as-found at tester',
      `uncap ${ports}`,
      'connect inlet',
      'read opening as found',
      later('relieve', 'read opening as found'),
      later('disconnect inlet', 'relieve'),
      later(`cap ${ports}`, 'disconnect inlet'),
    ),
    bag(
      'teardown at strip',
      'clamp body',
      later('mark body with number, serial'),
      ...spread('discard', seals, '', apart),
      'slacken nut',
      ...removed,
      ...measure.map((text) => later(text, ...removed)),
      later(`${keep} at tank "Own basket, own number"`, ...removed, ...measure),
      ...guard.map((text) => later(text, ...removed)),
      ...capBore.map((text) => later(text, ...removed)),
      later('unclamp body', 'slacken nut', ...removed),
    ),
    bag(
      'clean at tank',
      `uncap ${['inlet', ...(shape.returnPort ? ['return'] : []), ...(shape.borePort ? ['bore'] : []), 'tip'].join(', ')}`,
      ...guard.map(() => 'remove nut'),
      ...(washAll
        ? ['wash all in solvent "Own basket"']
        : spread('wash', ['body', 'nut', ...off], ' in solvent "Own basket"', apart).map((text) =>
            later(text, ...guard.map(() => 'remove nut')),
          )),
      later(
        'blow-dry all with air at most 1.5 bar',
        ...(washAll
          ? ['wash all in solvent "Own basket"']
          : spread('wash', ['body', 'nut', ...off], ' in solvent "Own basket"', apart)),
      ),
      ...guard.map((text) => later(text, 'blow-dry all with air at most 1.5 bar', 'remove nut')),
      later(`${keep} at build "Own tray"`, 'blow-dry all with air at most 1.5 bar'),
    ),
    bag(
      'build at build',
      ...guard.map(() => 'remove nut'),
      'rinse all in cal-oil',
      ...(faces.length > 0
        ? [`check ${faces.join(', ')}  reuse if "bright, even"   reject if "scored or pitted"`]
        : []),
      'clamp body',
      ...fitted,
      ...(oils && shape.oiled ? ['oil nut with cal-oil "Threads and shoulder"'] : []),
      'run-down nut',
      'torque nut to nut-fit with TW-80',
      later('unclamp body', 'torque nut to nut-fit with TW-80'),
    ),
    bag(
      'prove at tester',
      'connect inlet',
      'prime 6 strokes with gauge shut',
      'test opening  read pressure within opening  on fail again (3 times)',
      ...(shape.leak
        ? [
            later(
              'test seat-leak  hold 20 bar below opening for 10 s  accept "no drop"  source "Invented"  on fail again (3 times)',
              'test opening  read pressure within opening  on fail again (3 times)',
            ),
          ]
        : []),
      later(
        'relieve',
        'test opening  read pressure within opening  on fail again (3 times)',
        ...(shape.leak
          ? [
              'test seat-leak  hold 20 bar below opening for 10 s  accept "no drop"  source "Invented"  on fail again (3 times)',
            ]
          : []),
      ),
      later('disconnect inlet', 'relieve'),
    ),
    bag(
      'finish at build',
      ...spread('fit', seals, '', apart),
      `cap ${ports}`,
      later('sign-off by "Bench lead"', ...spread('fit', seals, '', apart), `cap ${ports}`),
    ),
  ].map((one) => (bareEnd ? one : one));
}

function repairText(shape: Shape): string {
  const { bore, discs } = partsOf(shape);
  const located = (part: string) => (shape.located ? `${part} located` : part);
  const off = ['nut', 'nozzle', 'needle', ...[...discs].reverse(), ...[...bore].reverse()];
  const work = hasShim(shape)
    ? ['choose shim to bring opening to 254 bar by shim-rate', 'rinse shim in cal-oil']
    : ['renew nozzle, needle', 'rinse nozzle, needle in cal-oil'];
  return `  repair again {
    relieve    disconnect inlet
    clamp body
    slacken nut
    remove ${off.join(', ')}
    ${work.join('\n    ')}
    fit ${[...bore, ...discs.map(located), located('nozzle')].join(', ')} with needle
    run-down nut
    torque nut to nut-fit with TW-80
    unclamp body
    connect inlet
    prime 6 strokes with gauge shut
  }
`;
}

const head = (shape: Shape) => `procedure example "Example" for holder at bench
  revision A   written by "Shop lead"   approved by "Works manager" on 2026-10-05
{
  spec opening    pressure  250 bar +8 -0, in service at least 200 bar  source "Invented"
  spec nut-fit    torque    60 N·m ±5                                   source "Invented"
${hasShim(shape) ? '  spec shim-rate  rate      3 bar per 0.001 in                          source "Invented"\n' : ''}`;

type Tree = Parameters<typeof resolve>[0][number];

/** The steps drawn so far, by stage. */
type Drawn = readonly { readonly head: string; readonly steps: readonly string[] }[];

const aroundText = (shape: Shape) => `${shopText}${familyText(shape)}`;

/** The procedure with these steps in its stages. */
function procedureText(shape: Shape, stages: Drawn): string {
  const written = stages.map(
    ({ head: stage, steps }) => `  stage ${stage} {\n${steps.map((step) => `    ${step}\n`).join('')}  }\n`,
  );
  return `${head(shape)}${written.join('')}${repairText(shape)}}\n`;
}

/**
 * Whether no rule objects to the last step, on the first way. What the check does besides is left out: a walk asks this
 * hundreds of times.
 */
function isLegal(around: Tree, text: string): boolean {
  const [procedure] = resolve([around, { uri: 'walk', ast: parse(text).ast }]).procedures;
  const step = procedure?.stages.at(-1)?.steps.at(-1);
  if (procedure === undefined || step === undefined) return false;
  return analyzeFlow(procedure).every((flow) => {
    let objects = false;
    const visitors = rules.flatMap((rule) => {
      const checks = rule.flow?.(flow, ({ at }) => {
        if (at === step) objects = true;
      });
      return checks === undefined ? [] : [visitorOf(checks)];
    });
    flow.visit(firstPath(visitors));
    return !objects;
  });
}

/** Steps on the first path alone: findings about a unit that leaves or is finished apply to a whole stage. */
function firstPath(visitors: readonly Visitor[]): Visitor {
  return {
    step(visit) {
      for (const visitor of visitors) if (visit.path.repair === null) visitor.step?.(visit);
    },
  };
}

/** A procedure whose steps were drawn by `random` (from 0 to 1); null if the draw reached a dead end. */
export function walk(taste: Taste, random: () => number): string | null {
  const around: Tree = { uri: 'around', ast: parse(aroundText(taste.shape)).ast };
  const stages: { head: string; steps: string[] }[] = [];
  for (const { head: stage, steps } of bagsOf(taste)) {
    const drawn: string[] = [];
    const here = { head: stage, steps: drawn };
    stages.push(here);
    let left = [...steps];
    while (left.length > 0) {
      const ready = left.filter(({ after }) => (after ?? []).every((text) => drawn.includes(text)));
      const next = shuffled(ready, random).find(({ text }) => {
        drawn.push(text);
        const legal = isLegal(around, procedureText(taste.shape, stages));
        drawn.pop();
        return legal;
      });
      if (next === undefined) return null;
      drawn.push(next.text);
      left = left.filter((one) => one !== next);
    }
  }
  return aroundText(taste.shape) + procedureText(taste.shape, stages);
}

function shuffled<T>(items: readonly T[], random: () => number): T[] {
  return items
    .map((item) => ({ item, at: random() }))
    .sort((a, b) => a.at - b.at)
    .map(({ item }) => item);
}

export const tastes: fc.Arbitrary<Taste> = fc.record({
  shape: shapes,
  apart: fc.boolean(),
  fitApart: fc.boolean(),
  washAll: fc.boolean(),
  guards: fc.constant(true),
  oils: fc.boolean(),
});

/** Numbers from 0 to 1, the same for the same seed (mulberry32). */
export function numbersFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
