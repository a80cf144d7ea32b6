import { exampleFamily, exampleShop } from './example-base.ts';

/*
 * Test helper: a whole procedure for the example family in which the checker finds nothing. A test replaces one of the
 * stages with its own text, or changes the family, and looks at what is found then.
 */

export interface Texts {
  readonly shop: string;
  readonly family: string;
  readonly head: string;
  readonly specs: string;
  readonly receive: string;
  readonly asFound: string;
  readonly teardown: string;
  readonly dress: string;
  readonly clean: string;
  readonly build: string;
  readonly prove: string;
  readonly finish: string;
  readonly repairs: string;
}

const sound: Texts = {
  shop: exampleShop,
  family: exampleFamily,
  head: 'procedure example "Example" for holder at bench revision A approved by "Works manager" on 2026-10-05',
  specs: `
    spec opening    pressure  250 bar +8 -0  source "Example sheet"
    spec nut-fit    torque    60 N·m ±5      source "Example sheet"
    spec shim-rate  rate      3 bar per 0.001 in  source "Example sheet"
    number A-250
    number A-220 { opening 220 bar +8 -0  source "Example sheet" }`,
  receive: `
    stage receive at strip {
      receive    tag
      cap inlet, tip
      clean outside
    }`,
  asFound: `
    stage as-found at tester {
      uncap inlet, tip
      connect inlet
      read opening as found
      relieve    disconnect inlet
      cap inlet, tip
    }`,
  teardown: `
    stage teardown at strip {
      clamp body
      slacken nut
      discard washer
      remove nut, nozzle, needle, spacer, seat, spring, shim
      measure shim with MIC-1
      keep nozzle, needle, spacer, seat, spring, shim at tank "Own basket, own number"
      guard body.end with nut
      unclamp body
    }`,
  dress: `
    stage dress at wheel {
      buff body
      mark body with number, serial
    }`,
  clean: `
    stage clean at tank {
      uncap inlet, tip
      remove nut
      wash all in solvent
      clean holes of nozzle
      wash nozzle, needle in solvent
      blow-dry all with air at most 1.5 bar
      guard body.end with nut
      keep nozzle, needle, spacer, seat, spring, shim at build "Own tray, own number"
    }`,
  build: `
    stage build at build {
      remove nut
      rinse all in cal-oil
      check body.end, spacer.top, spacer.bottom, nozzle.top
        reuse if "bright, even, no line"   reject if "scored or pitted"
      clamp body
      fit shim, spring, seat, spacer located, nozzle located with needle
      run-down nut
      torque nut to nut-fit with TW-80
      unclamp body
    }`,
  prove: `
    stage prove at tester {
      connect inlet
      prime 6 strokes with gauge shut
      test opening  read pressure within opening  on fail reshim (3 times)
      relieve    disconnect inlet
    }`,
  finish: `
    stage finish at build {
      fit washer
      cap inlet, tip
      sign-off by "Bench lead"
    }`,
  repairs: `
    repair reshim {
      open
      choose shim to bring opening to opening by shim-rate
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
    }`,
};

/** The sound procedure with some of its texts changed: replaced, or derived from the sound ones. */
export function procedureWith(
  change: { readonly [text in keyof Texts]?: string | ((sound: string) => string) } = {},
): string {
  const at = (name: keyof Texts): string => {
    const changed = change[name];
    return changed === undefined ? sound[name] : typeof changed === 'string' ? changed : changed(sound[name]);
  };
  const items = (
    ['specs', 'receive', 'asFound', 'teardown', 'dress', 'clean', 'build', 'prove', 'finish', 'repairs'] as const
  ).map(at);
  return `${at('shop')}\n${at('family')}\n${at('head')}\n{${items.join('\n')}\n}\n`;
}

/** The sound text with one piece of it changed. Fails if the piece is missing, or is there twice. */
export function instead(piece: string, put: string): (text: string) => string {
  return (text) => {
    const parts = text.split(piece);
    if (parts.length !== 2) throw new Error(`“${piece}” appears ${parts.length - 1} times in the text`);
    return parts.join(put);
  };
}
