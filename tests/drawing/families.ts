/** Families that drawings are tested with: those of the library and the corpus, invented ones, and random ones. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { type CheckResult, checkFiles } from '../../language/db/workspace.ts';
import { drawnAs } from '../../language/model/drawn-as.ts';
import type { Face, Family, Joint, Part, Port } from '../../language/model/family.ts';
import { libraryFiles, root } from '../library.ts';

const read = (path: string) => ({ uri: path, text: readFileSync(join(root, path), 'utf8') });

/** The library with the invented families. */
export function written(): CheckResult {
  return checkFiles([...libraryFiles(), read('tests/drawing/invented.rebuild'), read('tests/drawing/units.rebuild')]);
}

/** All of the corpus, one file at a time: names repeat. */
export function corpus(): CheckResult[] {
  const shop = read('tests/corpus/shop.rebuild');
  return readdirSync(join(root, 'tests/corpus'))
    .filter((name) => name.endsWith('.rebuild') && name !== 'shop.rebuild')
    .sort()
    .map((name) => checkFiles([shop, read(`tests/corpus/${name}`)]));
}

const source = { file: 'random', range: { start: { line: 0, character: 0 }, end: { line: 0, character: 1 } } };

/** Words as authors write them, and some that nobody would. */
const titles = fc.oneof(
  {
    weight: 6,
    arbitrary: fc
      .array(
        fc.constantFrom(
          'Setting',
          'shim',
          'Spring',
          'seat',
          'turbine',
          'O-ring',
          'housing',
          'M8',
          'Übergangsstück',
          'двигатель',
          '/',
        ),
        { minLength: 1, maxLength: 5 },
      )
      .map((words) => words.join(' ')),
  },
  { weight: 1, arbitrary: fc.string({ unit: 'grapheme', maxLength: 60 }) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 20 }) },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      '',
      'W'.repeat(80),
      'Donaudampfschifffahrtsgesellschaftskapitän',
      '喷油器体',
      'a & b <c> "d"',
    ),
  },
);

type Changing<T> = { -readonly [key in keyof T]: T[key] };

/**
 * A family with any relations between any parts: circles, parts that rest on nothing or on themselves, copies for each
 * cylinder. None of it has to make sense; a checker would report it, and the drawing must work all the same.
 */
export function randomFamilies(most = 40, sane = false): fc.Arbitrary<Family> {
  return fc
    .record({
      count: fc.integer({ min: 1, max: most }),
      titles: fc.array(titles, { minLength: most, maxLength: most }),
      seed: fc.nat(),
      title: titles,
    })
    .map(({ count, titles: words, seed, title }) => {
      const next = numbers(seed);
      const pick = (below: number) => Math.floor(next() * below);
      const chance = (share: number) => next() < share;
      const names = Array.from({ length: count }, (_, index) => `p${index}`);
      const other = (index: number) =>
        sane ? names[Math.max(0, index - 1 - pick(Math.min(3, Math.max(1, index))))]! : names[pick(count)]!;
      const parts: Part[] = names.flatMap((name, index) => {
        const part: Changing<Part> = {
          name,
          title: sane ? words[index]!.slice(0, 40) : words[index]!,
          baseTitle: sane ? words[index]!.slice(0, 40) : words[index]!,
          source,
          base: name,
          position: null,
          quantity: 1,
          side: null,
          on: [],
          in: [],
          through: [],
          bearsOn: [],
          holds: [],
          matchedTo: chance(0.12) ? [other(index)] : [],
          balancedWith: chance(0.06) ? [other(index)] : [],
          locatedBy: chance(0.2) ? 'two dowels' : null,
          marks: null,
          chosenFrom: chance(0.1) ? 'shims' : null,
          renewed: chance(0.2),
          usedOnce: false,
          film: null,
          neverIn: [],
          heldIn: null,
          suppliedLoose: chance(0.04),
          readyToFit: false,
          moves: null,
          drawnAs: chance(0.5) ? drawnAs[pick(drawnAs.length)]! : null,
          fromAbove: false,
          fromBelow: chance(0.08),
          bindsOver: chance(0.1) ? ({ number: '1.9', unit: 'mm' } as Part['bindsOver']) : null,
          material: null,
          weight: null,
          dangers: [],
          allow: [],
        };
        if (index > 0) {
          const way = next();
          const host = [chance(0.3) ? names[0]! : other(index)];
          if (way < 0.5) part.on = host;
          else if (way < 0.8) part.in = host;
          else if (way < 0.9) part.through = host;
          if (chance(0.2)) part.holds = [other(index)];
          if (chance(0.1)) part.bearsOn = [other(index)];
        }
        if (!chance(0.05)) return [part];
        return [1, 2, 3].map((position) => ({
          ...part,
          name: `${name}-${position}`,
          base: name,
          position,
          title: `${part.title}, cylinder ${position}`,
        }));
      });
      const all = parts.map(({ name }) => name);
      const any = () => all[pick(all.length)]!;
      const faces: Changing<Face>[] = [];
      for (const part of all) {
        if (!chance(0.15)) continue;
        const face = (of: string, name: string): Changing<Face> => ({
          name,
          id: `${of}.${name}`,
          title: name,
          part: of,
          source,
          finish: chance(0.8) ? 'lapped' : 'ground',
          meets: null,
          guardedBy: null,
        });
        const [one, mate] = [face(part, `end-${faces.length}`), face(any(), `top-${faces.length}`)];
        one.meets = mate.id;
        mate.meets = one.id;
        one.guardedBy = chance(0.5) ? any() : null;
        faces.push(one, mate);
      }
      const ports: Port[] = Array.from({ length: pick(6) }, (_, index) => ({
        name: `port-${index}`,
        base: `port-${index}`,
        title: sane ? 'inlet port' : words[pick(count)]!,
        source,
        part: any(),
        under: chance(0.3) ? any() : null,
        openInTransit: chance(0.2),
      }));
      const joints: Joint[] = parts
        .filter(({ holds, position }) => position === null && (holds.length > 0 || chance(0.06)))
        .map((part) => ({
          name: part.name,
          title: part.title,
          source,
          part: part.name,
          to: any(),
          thread: chance(0.8) ? 'M20x1.5' : null,
          oiled: false,
          leftHand: chance(0.2),
          handTightIsFinal: false,
          solid: null,
        }));
      return {
        name: 'random',
        title,
        source,
        parts,
        assemblies: [],
        places: [],
        faces,
        ports,
        joints,
        adjusters: chance(0.2)
          ? [
              {
                name: any(),
                title: 'screw',
                source,
                part: any(),
                sets: 'opening',
                rate: null,
                lockedBy: chance(0.5) ? any() : null,
              },
            ]
          : [],
        provenBy: [],
        provenAcrossSet: [],
        alwaysChecked: [],
        allow: [],
      };
    });
}

/** mulberry32: numbers from 0 to 1 that a seed brings again. */
function numbers(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
