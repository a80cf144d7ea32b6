/**
 * What the examples on the rule pages leave out: a small shop, a small family, and for an example of procedure items the
 * head of a procedure around them. README.md shows the shop and the family; rules.test.ts compares it with these.
 */

export const exampleShop = `shop bench "Example bench" {
  station strip  "Strip-down bench"  dirty
  station tank   "Wash tank"         wet
  station wheel  "Polishing wheel"   abrasive
  station build  "Clean room"        clean
  station tester "Nozzle tester"     clean, pressure
  wrench TW-80   range 16..80 N·m  within 4 %
  gauge  PG-400  range 0..400 bar  class 0.25  graduated 1 bar  at tester
  tool   MIC-1   range 0..25 mm  within 0.003 mm
  fluid  solvent "Cleaning solvent"  solvent
  fluid  suds    "Washing suds"      detergent
  fluid  cal-oil "Calibration fluid" test-oil
  stock  shims   from 1.00 mm to 1.95 mm by 0.05 mm
}
`;

export const exampleFamily = `family holder "Nozzle holder with one spring" {
  part body   "Holder body"      held in "holding fixture"
  part shim   "Setting shim"     in body    chosen from shims
  part spring "Pressure spring"  on shim
  part seat   "Spring seat"      on spring  bears on needle
  part spacer "Spacer"           on body    located by "two dowels"
  part nozzle "Nozzle"           on spacer  located by "two dowels"
  part needle "Needle"           in nozzle  matched to nozzle
  part nut    "Nozzle nut"       on body    holds nozzle
  part washer "Sealing washer"   on nut     renewed

  face body.end lapped       meets spacer.top   guarded by nut
  face spacer.bottom lapped  meets nozzle.top
  port inlet on body
  port tip on nozzle
  joint nut to body
  proven by opening
}
`;

/** Specs of the example procedure, by name. A spec in the example itself replaces the one here. */
const exampleSpecs: Readonly<Record<string, string>> = {
  opening: '  spec opening    pressure  250 bar +8 -0  source "Example sheet"',
  'nut-fit': '  spec nut-fit    torque    60 N·m ±5      source "Example sheet"',
  'shim-rate': '  spec shim-rate  rate      3 bar per 0.001 in  source "Example sheet"',
};

const exampleNumber = '  number A-250';

/** The repair that an example of the example family may send to without writing it. */
const exampleRepair = `  repair reshim {
    open
    choose shim to bring opening to 254 bar by shim-rate
    rinse shim in cal-oil
    close
  }
  sequence open {
    relieve    disconnect inlet
    clamp body    slacken nut
    remove nut, nozzle, needle, spacer, seat, spring, shim
  }
  sequence close {
    fit shim, spring, seat, spacer located, nozzle located with needle
    run-down nut    torque nut to nut-fit with TW-80
    unclamp body    connect inlet
    prime 6 strokes with gauge shut
  }
`;

export interface WholeExample {
  /** A file that can be checked. */
  readonly text: string;
  /** Line of the file for a line of the example, both zero-based. */
  readonly lineOf: (line: number) => number;
}

/** Adds the missing parts around an example. */
export function wholeExample(example: string): WholeExample {
  const all = example.replace(/\n$/u, '').split('\n');
  // A job comes after its procedure.
  const jobAt = all.findIndex((row) => row.startsWith('job '));
  const rows = jobAt < 0 ? all : all.slice(0, jobAt);
  const job = jobAt < 0 ? [] : all.slice(jobAt);
  const declared = (kind: string) =>
    rows.map((row) => new RegExp(`^${kind} (\\S+)`, 'u').exec(row)?.[1]).find((name) => name !== undefined);
  const family = declared('family');
  const before = [
    ...(declared('shop') === undefined ? block(exampleShop) : []),
    ...(family === undefined ? block(exampleFamily) : []),
  ];
  const firstItem = rows.findIndex((row) => /^(spec|number|stage|repair|sequence|hazard|allow) /u.test(row));
  if (declared('procedure') !== undefined || (firstItem < 0 && jobAt < 0)) {
    return { text: `${[...before, ...all].join('\n')}\n`, lineOf: (line) => line + before.length };
  }
  const head = [
    `procedure example "Example" for ${family ?? 'holder'} at ${declared('shop') ?? 'bench'} revision A {`,
    ...missingSpecs(rows),
  ];
  if (!rows.some((row) => row.startsWith('number '))) head.push(exampleNumber);
  const sends = /on fail\b.*\breshim\b/u.test(example) && !rows.some((row) => row.startsWith('repair reshim'));
  const tail = sends && family === undefined ? exampleRepair.trimEnd().split('\n') : [];
  // With a job alone, the procedure has only its head.
  const first = firstItem < 0 ? rows.length : firstItem;
  const text = [...before, ...rows.slice(0, first), ...head, ...rows.slice(first), ...tail, '}', ...job].join('\n');
  const behind = head.length + tail.length + 1;
  return {
    text: `${text}\n`,
    lineOf: (line) => line + before.length + (jobAt >= 0 && line >= jobAt ? behind : line >= first ? head.length : 0),
  };
}

function block(text: string): string[] {
  return text.split('\n');
}

function missingSpecs(rows: readonly string[]): string[] {
  return Object.entries(exampleSpecs).flatMap(([name, text]) =>
    rows.some((row) => row.startsWith(`spec ${name} `)) ? [] : [text],
  );
}
