import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { corpus, randomFamilies, written } from '../../../tests/drawing/families.ts';
import { faultsOf } from '../../../tests/drawing/geometry.ts';
import type { Family } from '../../model/family.ts';
import { buildExploded, type Exploded } from './exploded.ts';
import { englishWords } from './labels.ts';
import { renderSvg } from './svg.ts';

const { resolved } = written();
const families = new Map(resolved.families.map((family) => [family.name, family]));
const named = (name: string) => families.get(name)!;
const torques = (family: Family) => new Map(family.joints.map(({ part }) => [part, '60 N·m ±5']));
const drawnOf = (name: string) => buildExploded(named(name), { torques: torques(named(name)) });

/** Stacks from the bottom up, what lies in a part in brackets behind it. */
const stacksText = ({ stacks }: Exploded) =>
  stacks.map(
    ({ foot, rows }) =>
      `${foot === null ? '' : `(${foot}) `}${rows
        .map(({ part, inner }) =>
          inner.length === 0 ? part.name : `${part.name}[${inner.map(({ name }) => name).join(' ')}]`,
        )
        .join(' ')}`,
  );

const labelText = (drawing: Exploded, of: string) =>
  drawing.labels
    .filter((label) => label.of.includes(of) && label.role !== 'tie' && label.role !== 'foot')
    .map(({ lines }) => lines.map(({ text }) => text.replaceAll('\u00a0', ' ')).join(' | '))
    .join(' || ');

describe('sections', () => {
  /** Of the cut parts from the top down: which way their hatching goes. */
  const hatching = (name: string) => {
    const ways = new Map<number, string>();
    for (const mark of drawnOf(name).marks) {
      if (mark.role !== 'hatch') continue;
      const points = mark.runs.flat();
      const [from, to] = mark.runs[0]!;
      const middle = Math.round(points.reduce((sum, { y }) => sum + y, 0) / points.length);
      ways.set(middle, (to!.x - from!.x) * (to!.y - from!.y) > 0 ? 'falling' : 'rising');
    }
    const fromTop = [...ways].sort(([a], [b]) => a - b);
    // The two halves of a part lie beside each other.
    return fromTop.filter(([y], at) => at === 0 || y - fromTop[at - 1]![0] > 2).map(([, way]) => way);
  };

  // ISO 128-3: hatching of adjacent parts differs in direction or spacing.
  it('of parts that touch are hatched in turn both ways', () => {
    expect(hatching('one-spring')).toEqual(['falling', 'rising', 'falling', 'rising']);
    expect(hatching('pintle')).toEqual(['rising', 'falling', 'rising']);
    expect(hatching('two-spring')).toEqual(['falling', 'rising', 'falling', 'rising', 'falling', 'rising']);
  });
});

describe('stacks', () => {
  it('are in build order, what is beside the axis for itself', () => {
    expect(stacksText(drawnOf('one-spring'))).toEqual([
      'body shim spring seat spacer nozzle[needle] nut washer dust-seal',
    ]);
    expect(stacksText(drawnOf('one-spring-filter'))).toEqual([
      'body shim spring seat spacer nozzle[needle] nut washer dust-seal',
      '(body) filter connector',
    ]);
    expect(stacksText(drawnOf('pintle'))).toEqual([
      'body spindle spring screw lock-nut cap-washer cap-nut',
      '(body) nozzle[needle] nut washer',
    ]);
    expect(stacksText(drawnOf('two-spring'))).toEqual([
      'body shim-1 spring-1 rod guide sleeve shim-2 spring-2 seat-2 lift-shim stop-disc nozzle[needle] nut washer o-ring',
    ]);
  });
  it('of a long cartridge keep what is built in between on the axis', () => {
    expect(stacksText(drawnOf('long-cartridge'))).toEqual([
      'housing core-plug circlip-a bearing-t circlip-b spacer bearing-c circlip-c shield spring shaft[ring-t] collar thrust washer baffle flinger[ring-c] o-ring plate screws wheel nut',
      '(housing) drain-gasket drain drain-bolts',
      '(housing) inlet-seal banjo',
    ]);
  });
  it('have copies once, and guards that come loose apart', () => {
    expect(stacksText(drawnOf('six-row'))).toEqual([
      'housing tappet-1 spring-1 plate-1 barrel-1[plunger-1] seat-1[valve-1] gasket-1 v-spring-1 holder-1',
      '(housing) stop stop-nut',
      '(housing) relief vent',
      '(barrel-1) plug-1',
    ]);
  });
});

describe('labels', () => {
  it('say what the picture does not', () => {
    const drawing = drawnOf('one-spring');
    expect(labelText(drawing, 'shim')).toBe('Setting shim');
    expect(labelText(drawing, 'spacer')).toBe('Spacer disc | located by two dowels');
    expect(labelText(drawing, 'nut')).toBe('Nozzle nut | M20x1.5, threads oiled | 60 N·m ±5');
    expect(labelText(drawing, 'body.end')).toBe(
      'top face of spacer disc | lapped to | end face of holder | guarded by nozzle nut',
    );
    expect(labelText(drawing, 'washer')).toBe('Sealing washer | new');
    expect(labelText(drawing, 'inlet')).toBe('inlet port, capped');
    expect(labelText(drawing, 'bore')).toBe('spring bore, under spacer disc');
    const ties = drawing.labels.filter(({ role }) => role === 'tie');
    expect(ties.map(({ of, lines }) => `${lines[0]!.text}: ${of.join(', ')}`)).toEqual(['matched: nozzle, needle']);
  });
  it('count copies, and give a left-hand thread a line of its own', () => {
    expect(labelText(drawnOf('six-row'), 'holder-1')).toBe('Valve holder × 6 | on gasket | M18x1.5 | 60 N·m ±5');
    expect(labelText(drawnOf('long-cartridge'), 'nut')).toMatch(
      /^Shaft nut \| new \| M6x0\.75, threads oiled \| 60 N·m ±5 \| left-hand thread \|/u,
    );
  });
  it('take all fixed words from the caller', () => {
    const shout = (value: unknown): unknown =>
      typeof value === 'string'
        ? value.toUpperCase()
        : typeof value === 'function'
          ? (...given: unknown[]) => String(value(...given)).toUpperCase()
          : Object.fromEntries(Object.entries(value as object).map(([key, one]) => [key, shout(one)]));
    const loud = buildExploded(named('six-row'), { words: shout(englishWords) as typeof englishWords });
    const said = loud.labels.flatMap(({ lines }) => lines.map(({ text }) => text)).join(' ');
    expect(said).toContain('LOCATED BY PIN');
    expect(said.replace(/Bore plug, plastic|M18x1\.5|M14x1\.5|M8x1/gu, '')).not.toMatch(
      /\b(on|in|located|guarded|matched|supplied|capped|holds)\b/u,
    );
  });
});

describe('the description', () => {
  it('is the whole drawing in build order', () => {
    expect(drawnOf('one-spring').alt.replaceAll('\u00a0', ' ')).toBe(
      'Injector, hole nozzle, one spring, set by shim, exploded view, from the bottom up in the order of assembly. ' +
        'Holder: end face of holder, lapped, meets top face of spacer disc, guarded by nozzle nut; inlet port, capped; return port, capped; spring bore, under spacer disc. ' +
        'Setting shim: in holder. Pressure spring: on setting shim; spring. Spring seat: on pressure spring; bears on needle. ' +
        'Spacer disc: on holder; located by two dowels; top face of spacer disc, lapped, meets end face of holder; bottom face of spacer disc, lapped, meets top face of nozzle. ' +
        'Nozzle: on spacer disc; located by two dowels; top face of nozzle, lapped, meets bottom face of spacer disc; spray holes, capped. ' +
        'Needle: in nozzle; matched to nozzle. ' +
        'Nozzle nut: on holder; screwed to holder; M20x1.5; threads oiled; 60 N·m ±5; holds nozzle. ' +
        'Sealing washer: on nozzle nut; new. Dust seal: on holder; new.',
    );
  });
  it('has what is cut in the picture', () => {
    const long =
      'A very long title of a part that no column of a drawing on a page of paper could ever hold in two lines of ten points, word after word';
    const family = {
      ...named('one-spring'),
      parts: named('one-spring').parts.map((part) => (part.name === 'shim' ? { ...part, title: long } : part)),
    };
    const drawing = buildExploded(family);
    expect(drawing.shortened).toEqual([long]);
    expect(drawing.alt).toContain(long);
    expect(labelText(drawing, 'shim')).toMatch(/…$/u);
  });
});

describe('the picture', () => {
  const sound = (drawing: Exploded, most = Number.POSITIVE_INFINITY) => {
    expect(faultsOf(drawing)).toEqual([]);
    expect(drawing.height).toBeLessThanOrEqual(most);
  };
  it.each([...families.keys()])('%s: labels are apart, on the page, and nothing is cut', (name) => {
    const drawing = drawnOf(name);
    sound(drawing, 230);
    expect(drawing.shortened).toEqual([]);
    sound(buildExploded(named(name), { maxHeight: 180 }));
    sound(buildExploded(named(name), { width: 150 }));
  });
  it('of each family of the corpus too', () => {
    for (const { resolved: one } of corpus())
      for (const family of one.families) sound(buildExploded(family, { torques: torques(family) }), 230);
  });
  it('of any family, sense or none', () => {
    fc.assert(
      fc.property(randomFamilies(), (family) => {
        const drawing = buildExploded(family, { torques: torques(family) });
        expect(faultsOf(drawing)).toEqual([]);
      }),
      { numRuns: 200, seed: 7 },
    );
  });
  it('of up to thirty parts goes on a page', () => {
    fc.assert(
      fc.property(randomFamilies(30, true), (family) => {
        expect(buildExploded(family, { torques: torques(family) }).height).toBeLessThanOrEqual(230);
      }),
      { numRuns: 100, seed: 11 },
    );
  });
  it('is the same for the same family', () => {
    for (const name of families.keys())
      expect(renderSvg(drawnOf(name))).toBe(
        renderSvg(buildExploded(structuredClone(named(name)), { torques: torques(named(name)) })),
      );
  });
});
