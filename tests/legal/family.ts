import fc from 'fast-check';

/** What a random family is made of: a body with a stack in its bore, discs, a nozzle with its needle, a nut over all. */
export interface Shape {
  /** Parts of the stack in the bore, one on the other. */
  readonly bore: number;
  /** The first of the bore is a shim that is chosen. */
  readonly shimmed: boolean;
  /** Discs between body and nozzle. */
  readonly discs: number;
  readonly located: boolean;
  /** The joints between body, discs and nozzle are lapped. */
  readonly lapped: boolean;
  /** Seals that are always renewed. */
  readonly seals: number;
  readonly returnPort: boolean;
  readonly borePort: boolean;
  readonly oiled: boolean;
  readonly leak: boolean;
}

export const shapes: fc.Arbitrary<Shape> = fc.record({
  // One part alone in the bore would be a spindle that is loaded from above.
  bore: fc.constantFrom(0, 2, 3),
  shimmed: fc.boolean(),
  discs: fc.integer({ min: 0, max: 2 }),
  located: fc.boolean(),
  lapped: fc.boolean(),
  seals: fc.integer({ min: 0, max: 2 }),
  returnPort: fc.boolean(),
  borePort: fc.boolean(),
  oiled: fc.boolean(),
  leak: fc.boolean(),
});

/** Names of the parts of a shape, in groups. */
export function partsOf(shape: Shape) {
  const bore = Array.from({ length: shape.bore }, (_, index) =>
    index === 0 ? (shape.shimmed ? 'shim' : 'washer-0') : index === 1 ? 'spring' : 'seat',
  );
  const discs = Array.from({ length: shape.discs }, (_, index) => `disc-${'ab'[index]}`);
  const seals = Array.from({ length: shape.seals }, (_, index) => ['dust-seal', 'ring'][index]!);
  return { bore, discs, seals };
}

export function hasShim(shape: Shape): boolean {
  return shape.bore > 0 && shape.shimmed;
}

/** The family in the language. */
export function familyText(shape: Shape): string {
  const { bore, discs, seals } = partsOf(shape);
  const located = shape.located ? '  located by "two dowels"' : '';
  const rows = ['  part body "Holder"  held in "holding fixture"'];
  bore.forEach((part, index) => {
    const chosen = part === 'shim' ? '  chosen from shims' : '';
    const bears = index === bore.length - 1 ? '  bears on needle' : '';
    rows.push(
      `  part ${part}  ${index === 0 ? 'in body' : `on ${bore[index - 1]}`}${bears}${chosen}${part === 'spring' ? '  drawn as spring' : ''}`,
    );
  });
  discs.forEach((part, index) => {
    rows.push(`  part ${part}  on ${index === 0 ? 'body' : discs[index - 1]}${located}`);
  });
  rows.push(
    `  part nozzle  on ${discs.at(-1) ?? 'body'}${located}`,
    '  part needle  in nozzle  matched to nozzle',
    '  part nut     on body    holds nozzle',
    ...seals.map((part) => `  part ${part}  on body  renewed`),
  );
  if (shape.lapped) {
    const chain = ['body', ...discs, 'nozzle'];
    chain.slice(1).forEach((part, index) => {
      const below = chain[index]!;
      rows.push(
        `  face ${below}.${index === 0 ? 'end' : 'lower'} lapped  meets ${part}.upper${index === 0 ? '  guarded by nut' : ''}`,
      );
    });
  }
  rows.push(`  port ${['inlet', ...(shape.returnPort ? ['return'] : [])].join(', ')} on body`);
  if (shape.borePort) rows.push(`  port bore on body  under ${discs[0] ?? 'nozzle'}`);
  rows.push('  port tip on nozzle', `  joint nut to body${shape.oiled ? '  threads oiled' : ''}`);
  rows.push(`  proven by opening${shape.leak ? ', seat-leak' : ''}`);
  return `family holder "Holder" {\n${rows.join('\n')}\n}\n`;
}

/** Faces of the family, each once. */
export function facesOf(shape: Shape): string[] {
  if (!shape.lapped) return [];
  const chain = ['body', ...partsOf(shape).discs, 'nozzle'];
  return chain.slice(1).flatMap((part, index) => [`${chain[index]}.${index === 0 ? 'end' : 'lower'}`, `${part}.upper`]);
}

/** Ports that are open to the hand when the unit is whole. */
export function outerPorts(shape: Shape): string[] {
  return ['inlet', ...(shape.returnPort ? ['return'] : []), 'tip'];
}

export const shopText = `shop bench "Bench" {
  station strip  "Strip-down bench"  dirty
  station tank   "Wash tank"         wet
  station build  "Clean room"        clean
  station tester "Nozzle tester"     clean, pressure
  wrench TW-80   range 16..80 N·m    within 4 %
  gauge  PG-400  range 0..400 bar    class 0.25  graduated 1 bar  at tester
  tool   MIC-1   range 0..25 mm      within 0.003 mm
  fluid  solvent "Cleaning solvent"  solvent, flammable 62 °C
  fluid  cal-oil "Calibration fluid" test-oil
  stock  shims   from 1.00 mm to 1.98 mm by 0.02 mm
}
`;
