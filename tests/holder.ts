/** A small workspace for questions of an editor: a shop, a family, and a procedure that is not finished. */
import { type Snapshot, snapshotOf } from '../language/ide/snapshot.ts';
import type { Position } from '../language/model/source.ts';

export const shopText = `shop bench "Bench" {
  station strip "Strip-down bench" dirty
  station tester "Nozzle tester" clean, pressure
  wrench TW-80 range 16..80 N·m within 4 % due 2027-03-01
  fluid cal-oil "Calibration fluid" test-oil
}

family holder "Nozzle holder" {
  part body "Holder" held in "holding fixture"
  part nozzle "Nozzle" on body located by "two dowels"
  part nut "Nozzle nut" on body holds nozzle
  part cap "Shipping cap" on nut
  port inlet, return on body
  joint nut to body "M20x1.5"
  proven by opening
}
`;

export const procedureText = `procedure rebuild "Rebuild and set" for holder at bench
  revision A
{
  spec opening pressure 250 bar +8 -0 source "Test sheet, page 4"
  spec nut-fit torque 60 N·m ±5 source "Test sheet, page 2"
  number A-250

  stage teardown at strip {
    clamp body in "holding fixture"
    slacken nut
    remove cap, nut, nozzle
    unclamp body
  }

  repair again {
    relieve
  }
}
`;

/** A place that is asked about. */
export interface Asked {
  readonly snapshot: Snapshot;
  readonly file: string;
  readonly position: Position;
}

/** The place of the marker `<|>` in a file, beside the shop of the holder. */
export function askedAt(marked: string, file = 'procedure.rebuild'): Asked {
  const [before = ''] = marked.split('<|>');
  const lines = before.split('\n');
  return {
    snapshot: snapshotOf([
      { uri: 'shop.rebuild', text: shopText },
      { uri: file, text: marked.replace('<|>', '') },
    ]),
    file,
    position: { line: lines.length - 1, character: lines.at(-1)!.length },
  };
}

/** The procedure with a text in the place of another; `<|>` in it is the marker. */
export function edited(old: string, text: string): string {
  if (!procedureText.includes(old)) throw new Error(`"${old}" is not in the procedure`);
  return procedureText.replace(old, () => text);
}
