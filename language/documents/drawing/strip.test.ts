import { describe, expect, it } from 'vitest';
import { corpus, written } from '../../../tests/drawing/families.ts';
import { faultsOf } from '../../../tests/drawing/geometry.ts';
import type { Procedure, Step } from '../../model/procedure.ts';
import { buildStrip, type Strip, stripsOf } from './strip.ts';
import type { Presence } from './strip-states.ts';
import { renderSvg } from './svg.ts';

const { procedures } = written();
const named = (name: string) => procedures.find(({ procedure }) => procedure.name === name)!.procedure;

const signs: Readonly<Record<Presence, string>> = { on: '#', off: '.', guard: 'g', discarded: 'x', some: '?' };
const rowsText = ({ rows }: Strip) =>
  rows.map(({ title, cells }) => `${cells.map(({ presence }) => signs[presence]).join('')} ${title}`);

describe('the strip of stages', () => {
  it('says what is on at the end of each, by the replay', () => {
    const strip = buildStrip(named('rebuild-one-spring'));
    expect(strip.rows[0]!.cells.map(({ part }) => part).join(' ')).toBe(
      'body shim spring seat spacer nozzle needle nut washer dust-seal',
    );
    expect(rowsText(strip)).toEqual([
      '########## As received to As found',
      '#......gxx Strip to Dress and mark',
      '#.......xx First wash to Look over',
      '#......gxx Last wash',
      '########xx Build to Match the set',
      '########## Finish',
    ]);
  });
  it('has copies once, and what is supplied loose as off', () => {
    const six = corpus()
      .flatMap((one) => one.procedures)
      .find(({ procedure }) => procedure.name === 'reseal-six')!;
    expect(rowsText(buildStrip(six.procedure))).toEqual([
      '#######. As received',
      '##..x..g Take in and open to Wash by cylinder',
      '#######. Build to On the rig',
    ]);
  });
  it('is described in words', () => {
    const { alt } = buildStrip(named('rebuild-valve'));
    expect(alt).toBe(
      'Rebuild and test: which parts are off the unit after each stage. As received to As found: all parts on. ' +
        'Take apart and wash: off: ball, spring and plug; discarded: copper washer. Build to Test: all parts on.',
    );
  });
  it('is drawn with its texts apart and on the page', () => {
    const all: Procedure[] = [...procedures, ...corpus().flatMap((one) => one.procedures)].map(
      ({ procedure }) => procedure,
    );
    for (const procedure of all) {
      const strip = buildStrip(procedure);
      expect(faultsOf(strip), procedure.name).toEqual([]);
      expect(strip.height).toBeLessThanOrEqual(230);
      expect(faultsOf(buildStrip(procedure, { width: 90 })), procedure.name).toEqual([]);
    }
  });
  it('goes on below where there are more parts than columns', () => {
    const { resolved } = written();
    const procedure = { ...named('rebuild-one-spring') };
    const parts = resolved.families.find(({ name }) => name === 'long-cartridge')!.parts;
    const family = {
      ...procedure.family,
      parts: [
        ...procedure.family.parts,
        ...parts.map((part) => ({
          ...part,
          name: `x-${part.name}`,
          base: `x-${part.base}`,
          on: ['body'],
          in: [],
          through: [],
          holds: [],
          balancedWith: [],
        })),
      ],
    };
    const strip = buildStrip({ ...procedure, family });
    expect(strip.rows[0]!.cells).toHaveLength(38);
    expect(strip.labels.filter(({ role }) => role === 'row').length).toBe(12);
    expect(faultsOf(strip)).toEqual([]);
  });
  it('is the same each time', () => {
    for (const { procedure } of procedures)
      expect(renderSvg(buildStrip(procedure))).toBe(renderSvg(buildStrip(structuredClone(procedure))));
  });
});

describe('a strip that is higher than a page', () => {
  const { procedure } = procedures.find((one) => one.procedure.name === 'rebuild-one-spring')!;
  const { family } = procedure;
  const [first] = family.parts;
  const turned = (verb: 'remove' | 'fit', name: string): Step => {
    const step = procedure.stages.flatMap(({ steps }) => steps).find((one) => one.verb === verb)!;
    return { ...step, objects: [{ ...step.objects[0]!, name }] };
  };
  const many = (parts: number, stages: number): Procedure => ({
    ...procedure,
    family: {
      ...family,
      parts: Array.from({ length: parts }, (_, index) => ({
        ...first!,
        name: `part-${index}`,
        base: `part-${index}`,
        title: `Retaining plate of the governor housing ${index}`,
      })),
      faces: [],
      ports: [],
      joints: [],
      adjusters: [],
    },
    stages: Array.from({ length: stages }, (_, index) => ({
      ...procedure.stages[0]!,
      name: `stage-${index}`,
      title: `Stage ${index}`,
      // One after the other comes off, and goes on again, so that no two stages are alike.
      steps: [turned(Math.floor(index / parts) % 2 === 0 ? 'remove' : 'fit', `part-${index % parts}`)],
    })),
    repairs: [],
  });

  it.each([
    [30, 12],
    [60, 12],
    [60, 45],
    [5, 60],
  ])('of %i parts and %i stages is several, with each cell once', (parts, stages) => {
    const strips = stripsOf(many(parts, stages), { maxHeight: 190 });
    expect(Math.max(...strips.map(({ height }) => height))).toBeLessThanOrEqual(190);
    const cells = strips.flatMap(({ rows }) =>
      rows.flatMap(({ title, cells: of }) => of.map(({ part }) => `${title} ${part}`)),
    );
    expect(cells.length).toBe(parts * (stages + 1));
    expect(new Set(cells).size).toBe(cells.length);
  });
});
