/** The state at the cursor, in the one-spring procedure of the library. */
import { expect, test } from 'vitest';
import { libraryFiles } from '../../tests/library.ts';
import { english } from '../say/say.ts';
import { positionAt } from './offset.ts';
import { snapshotOf } from './snapshot.ts';
import { stateViewAt } from './state-view.ts';

const uri = 'procedures/one-spring/procedure.rebuild';
const files = libraryFiles().filter((file) => /^procedures\/(?:shared\/|one-spring\/|shop\.)/u.test(file.uri));
const text = files.find((file) => file.uri === uri)!.text;
const snapshot = snapshotOf(files);

/** The state with the cursor behind a text, a group to a line; what the step made so has a star. */
function stateBehind(before: string): string[] {
  const at = text.indexOf(before);
  expect(at, before).toBeGreaterThanOrEqual(0);
  const view = stateViewAt(snapshot, uri, positionAt(text, at + before.length));
  if (view.kind === 'none') return [english(view.reason)];
  return [
    `after ${view.after ?? 'nothing'}`,
    ...view.groups.map(({ kind, items }) => {
      const said = items.map(
        ({ name, words, since, isNew }) =>
          `${english(name)}${words === '' ? '' : `: ${english(words)}`} ${since?.number ?? '-'}${isNew ? '*' : ''}`,
      );
      return `${kind}: ${said.join('; ')}`;
    }),
  ];
}

test('after the step at the cursor, and what that step changed', () => {
  expect(stateBehind('    slacken nut with "deep socket')).toMatchInlineSnapshot(`
    [
      "after 3.3",
      "unit: station: strip 2.7; clamped 3.1; tagged 1.1b; clean outside 1.1e",
      "off: Sealing washer: discarded 3.2; Dust seal: discarded 3.2",
      "loose: Nozzle nut: slackened 3.3*",
      "tests: opening: not yet -; seat-leak: not yet -; chatter: not yet -; spray: not yet -; back-leak: not yet -; across opening: not yet -",
    ]
  `);
  expect(stateBehind('    run-down nut')).toMatchInlineSnapshot(`
    [
      "after 8.8",
      "unit: station: build 7.4; clamped 8.4; tagged 1.1b; marked 4.2; clean outside 1.1e",
      "off: Sealing washer: discarded 3.2; Dust seal: discarded 3.2",
      "open: inlet port: open 5.1; return port: open 5.1; spray holes: open 5.1",
      "wet: Holder: wet with test oil 8.2; Setting shim: wet with test oil 8.2; Pressure spring: wet with test oil 8.2; Spring seat: wet with test oil 8.2; Spacer disc: wet with test oil 8.2; Nozzle: wet with test oil 8.2; Needle: wet with test oil 8.2; Nozzle nut: wet with test oil 8.2",
      "loose: Nozzle nut: hand-tight 8.8*",
      "tests: opening: not yet -; seat-leak: not yet -; chatter: not yet -; spray: not yet -; back-leak: not yet -; across opening: not yet -",
    ]
  `);
});

test('a call counts as its last step, and what follows it begins there', () => {
  expect(stateBehind('  repair reshim "Change the setting shim" {\n    open')).toMatchInlineSnapshot(`
    [
      "after R1.1e",
      "unit: station: tester 8.10; clamped R1.1c; tagged 1.1b; marked 4.2; clean outside 1.1e",
      "off: Setting shim: off, rinsed, as found R1.1e*; Pressure spring: off, rinsed, as found or new R1.1e*; Spring seat: off, rinsed, as found R1.1e*; Spacer disc: off, rinsed, as found, new or lapped R1.1e*; Nozzle: off, rinsed, as found, new or lapped R1.1e*; Needle: off, rinsed, as found or new R1.1e*; Nozzle nut: off, rinsed, as found or new R1.1e*; Sealing washer: discarded 3.2; Dust seal: discarded 3.2",
      "bare: Holder, end: lapped 8.1",
      "open: inlet port: open R1.1b; return port: open 5.1; spring bore: open 5.1",
      "wet: Holder: wet with test oil 8.2; Setting shim: wet with test oil 8.2; Pressure spring: wet with test oil 8.2; Spring seat: wet with test oil 8.2; Spacer disc: wet with test oil 8.2; Nozzle: wet with test oil 8.2; Needle: wet with test oil 8.2; Nozzle nut: wet with test oil 8.2",
      "tests: opening: stale or failed R1.1d; seat-leak: stale or failed R1.1d; chatter: stale or failed R1.1d; spray: stale or failed R1.1d; back-leak: stale or failed R1.1d; across opening: not yet or failed 10.1",
    ]
  `);
});

test('where no step is, it says so', () => {
  expect(stateBehind('spec opening')).toEqual(['Put the cursor in a step of a procedure.']);
});
