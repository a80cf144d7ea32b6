/** What a mechanic sees in the drawings of real families: each part as what it is, in its place, the right way up. */
import { describe, expect, it } from 'vitest';
import { written } from '../../../tests/drawing/families.ts';
import { Relations } from '../../analysis/relations.ts';
import { checkFiles } from '../../db/workspace.ts';
import { deriveFigures } from '../figures/step-figures.ts';
import { buildPrintContext } from '../print-context.ts';
import { annotate } from './annotations.ts';
import type { Drawing, Mark } from './drawing.ts';
import { buildExploded, type ExplodedOptions } from './exploded.ts';
import { findShapes } from './shape-of.ts';

const { resolved, procedures } = written();
const familyOf = (name: string) => resolved.families.find((family) => family.name === name)!;
const procedureOf = (name: string) => procedures.find(({ procedure }) => procedure.name === name)!.procedure;
const drawnOf = (name: string, options?: ExplodedOptions) => buildExploded(familyOf(name), options);
const shapesOf = (name: string) => Object.fromEntries(findShapes(Relations.of(familyOf(name))));
const annotationsOf = (name: string) => {
  const procedure = procedureOf(name);
  const setting = buildPrintContext(procedure, {
    job: null,
    number: null,
    paper: 'a4',
    draft: false,
    diagnostics: [],
    hash: '',
  });
  return annotate(setting, deriveFigures(setting));
};

/** Names of the parts from the top of the page down. */
const fromTop = (drawing: Drawing, ...parts: string[]) =>
  drawing.labels
    .filter(({ role, of }) => role === 'part' && (parts.length === 0 || parts.includes(of[0]!)))
    .sort((a, b) => a.box.y - b.box.y)
    .map(({ of }) => of[0]!);
const boxOf = (drawing: Drawing, of: string) => drawing.labels.find((label) => label.of.includes(of))!.box;
const textOf = (drawing: Drawing, of: string, role = 'part') =>
  drawing.labels
    .find((label) => label.role === role && label.of.includes(of))!
    .lines.map(({ text }) => text.replaceAll('\u00a0', ' '))
    .join(' | ');
const runsOf = (drawing: Drawing, role: Mark['role']) =>
  drawing.marks.filter((mark) => mark.role === role).flatMap(({ runs }) => runs);

describe('an injector that is built nozzle up', () => {
  const drawing = drawnOf('one-spring');
  it('has its needle go into the nozzle from below, as it opens at its lapped face', () => {
    expect(fromTop(drawing)).toEqual([
      'washer',
      'nut',
      'nozzle',
      'needle',
      'spacer',
      'seat',
      'spring',
      'shim',
      'body',
      'dust-seal',
    ]);
  });
  it('has its spray holes over the face that closes against the spacer', () => {
    expect(boxOf(drawing, 'tip').y).toBeLessThan(boxOf(drawing, 'nozzle').y);
    expect(textOf(drawing, 'nozzle.top', 'face')).toBe('top face of nozzle | lapped to | bottom face of spacer disc');
    expect(boxOf(drawing, 'tip').y).toBeLessThan(boxOf(drawing, 'nozzle.top').y);
  });
  it('has its dust seal round the holder', () => {
    const [seal, holder] = [boxOf(drawing, 'dust-seal'), boxOf(drawing, 'body')];
    expect(seal.y - holder.y).toBeLessThan(30);
    expect(boxOf(drawing, 'shim').y).toBeLessThan(holder.y);
  });
  it('says which end is up, and what the broken line is', () => {
    expect(drawing.labels.find(({ role }) => role === 'note')!.lines.map(({ text }) => text)).toEqual([
      'Built with the nozzle up. Broken line: path of the fluid.',
    ]);
  });
  it('leads the fluid through each lapped pair, broken, from the holder into the nozzle', () => {
    const [way, ...more] = runsOf(drawing, 'duct');
    expect(more).toEqual([]);
    const [from, to] = [way![0]!.y, way!.at(-1)!.y];
    expect(to).toBeLessThan(boxOf(drawing, 'nozzle.top').y);
    expect(from).toBeGreaterThan(boxOf(drawing, 'shim').y);
    expect(drawing.marks.find(({ role }) => role === 'duct')!.dash.length).toBe(2);
    const fed = drawnOf('one-spring', { feeds: new Set(['inlet']) });
    expect(runsOf(fed, 'duct')[0]!.length).toBe(way!.length + 1);
  });
  it('has the line only where lapped faces lead to an opening', () => {
    for (const name of ['valve', 'cartridge', 'pump-element', 'actuator'])
      expect(runsOf(drawnOf(name), 'duct')).toEqual([]);
  });
});

describe('an injector with two ends', () => {
  const drawing = drawnOf('pintle');
  it('has what is screwed in from above over the holder, and what comes from below under it', () => {
    expect(fromTop(drawing)).toEqual([
      'cap-nut',
      'cap-washer',
      'lock-nut',
      'screw',
      'spring',
      'spindle',
      'body',
      'needle',
      'nozzle',
      'nut',
      'washer',
    ]);
    expect(drawing.labels.find(({ role }) => role === 'note')!.lines.map(({ text }) => text)).toEqual([
      'From above: spindle. From below: pintle nozzle. Broken line: path of the fluid.',
    ]);
  });
  it('has its lapped face, and the bore under the nozzle, at the end where the nozzle is', () => {
    expect(textOf(drawing, 'body.end', 'face')).toBe(
      'end face of holder | lapped to | top face of pintle nozzle | guarded by nozzle nut',
    );
    const [face, bore, inlet] = [boxOf(drawing, 'body.end'), boxOf(drawing, 'bore'), boxOf(drawing, 'inlet')];
    expect(inlet.y).toBeLessThan(bore.y);
    expect(bore.y).toBeLessThan(face.y);
    expect(face.y).toBeLessThan(boxOf(drawing, 'nozzle').y + 10);
  });
});

describe('a family that says which end', () => {
  it('has the turbine side of a cartridge below, and all that is built onto the shaft above', () => {
    expect(fromTop(drawnOf('cartridge'), 'wheel', 'collar', 'housing', 'shroud', 'shaft', 'ring-t', 'nut')).toEqual([
      'nut',
      'wheel',
      'collar',
      'housing',
      'shroud',
      'shaft',
      'ring-t',
    ]);
  });
  it('has the nozzle of a rail injector below, and its solenoid above', () => {
    const one = drawnOf('rail-injector');
    expect(fromTop(one, 'guide', 'rod', 'body', 'n-spring', 'pin', 'needle', 'nozzle', 'nut', 'washer')).toEqual([
      'guide',
      'rod',
      'body',
      'n-spring',
      'pin',
      'needle',
      'nozzle',
      'nut',
      'washer',
    ]);
  });
});

describe('a part is drawn as', () => {
  it('what its family calls it, or what follows from its relations', () => {
    expect(shapesOf('one-spring')).toMatchObject({
      shim: 'shim',
      spring: 'spring',
      seat: 'seat',
      spacer: 'disc',
      nozzle: 'nozzle',
      needle: 'needle',
      nut: 'retaining-nut',
      washer: 'washer',
      'dust-seal': 'o-ring',
    });
    expect(shapesOf('valve')).toMatchObject({ ball: 'ball', spring: 'spring', washer: 'washer', plug: 'plug' });
    expect(shapesOf('pintle')).toMatchObject({
      spindle: 'rod',
      screw: 'setting-screw',
      'lock-nut': 'nut',
      'cap-washer': 'washer',
      'cap-nut': 'cap-nut',
      nozzle: 'nozzle',
      nut: 'retaining-nut',
    });
    expect(shapesOf('one-spring-filter')).toMatchObject({ filter: 'filter', connector: 'union' });
  });
  it('never what its title says', () => {
    const family = familyOf('one-spring');
    const renamed = { ...family, parts: family.parts.map((part) => ({ ...part, title: 'Ball', baseTitle: 'Ball' })) };
    expect(findShapes(Relations.of(renamed))).toEqual(findShapes(Relations.of(family)));
  });
  it('a washer where it is renewed and pressed between two parts, or between the unit and what it is put into', () => {
    const family = familyOf('one-spring');
    const untold = { ...family, parts: family.parts.map((part) => ({ ...part, drawnAs: null })) };
    expect(Object.fromEntries(findShapes(Relations.of(untold)))).toMatchObject({
      washer: 'washer',
      spring: 'block',
      'dust-seal': 'block',
    });
    expect(shapesOf('pintle')['cap-washer']).toBe('washer');
  });
  it('a screw where it goes through what it holds, and a nut where it is on a shaft', () => {
    expect(shapesOf('cartridge')).toMatchObject({ screws: 'screw', nut: 'nut' });
  });
});

describe('the figures of a procedure', () => {
  it('are in one style: tolerance to both sides, and the step', () => {
    const { torques } = annotationsOf('rebuild-pintle');
    expect([...torques!.values()].map((text) => text.replaceAll('\u00a0', ' '))).toEqual([
      '70 N·m ±5, step 8.10',
      '20 N·m ±2, step 9.5',
      '50 N·m ±5, step 9.8',
    ]);
  });
  it('are at the parts: steps, lengths of springs, shims of the drawer', () => {
    const drawing = drawnOf('one-spring', annotationsOf('rebuild-one-spring'));
    expect(textOf(drawing, 'nut', 'step')).toBe('8.8');
    expect(textOf(drawing, 'spring')).toMatch(/^Pressure spring \| length A-250, A-235: 31\.50 mm ±0\.30;/u);
    expect(textOf(drawing, 'shim')).toBe('Setting shim | 1.00 to 1.98 mm');
    expect(drawing.alt.replaceAll('\u00a0', ' ')).toContain('1.00 to 1.98 mm');
  });
  it('show where the gaps of two springs are set', () => {
    const told = annotationsOf('rebuild-two-spring');
    expect([...told.gaps!]).toEqual(['lift-shim', 'needle']);
    const drawing = drawnOf('two-spring', { ...told, maxHeight: 208 });
    expect(textOf(drawing, 'lift-shim')).toContain('pre-lift two-175: 0.050 to 0.070 mm');
    expect(textOf(drawing, 'needle')).toContain('total lift two-175: 0.240 to 0.280 mm');
    expect(runsOf(drawing, 'dimension').length).toBeGreaterThanOrEqual(3);
    expect(drawing.shortened).toEqual([]);
    expect(runsOf(drawnOf('two-spring'), 'dimension')).toEqual([]);
  });
  it('name each lapped face where it is', () => {
    const drawing = drawnOf('two-spring');
    const named = drawing.labels.filter(({ role }) => role === 'face').flatMap(({ of }) => of);
    expect(named.sort()).toEqual(
      familyOf('two-spring')
        .faces.map(({ id }) => id)
        .sort(),
    );
    expect(boxOf(drawing, 'gauge-bore').y).toBeGreaterThan(boxOf(drawing, 'inlet').y);
  });
});

it('an end that is said is kept, and a word that is no shape is reported', () => {
  const { resolved: one, diagnostics } = checkFiles([
    {
      uri: 'a.rebuild',
      text: 'family f "F" {\n  part body "B"\n  part pin "P" in body from below drawn as rod\n  part cup "C" on pin drawn as cupp\n}\n',
    },
  ]);
  expect(one.families[0]!.parts.map(({ fromBelow, drawnAs }) => [fromBelow, drawnAs])).toEqual([
    [false, null],
    [true, 'rod'],
    [false, null],
  ]);
  expect(diagnostics.filter(({ rule }) => rule === 'unknown-word').map(({ message }) => message)).toEqual([
    expect.stringMatching(/^Nothing can be drawn as cupp\. (?:Did you mean|Write one of)/u),
  ]);
});

it('a drawing is kept for its family, and made again for other figures', () => {
  const family = familyOf('one-spring');
  const torques = () => new Map([['nut', '60 N·m ±5']]);
  expect(buildExploded(family, { torques: torques() })).toBe(buildExploded(family, { torques: torques() }));
  expect(buildExploded(family, { torques: torques(), maxHeight: 190 })).not.toBe(
    buildExploded(family, { torques: torques() }),
  );
  expect(buildExploded(structuredClone(family))).toEqual(buildExploded(family));
});
