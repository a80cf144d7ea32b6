/** Hovers that know the unit: in the one-spring procedure of the library. */
import { expect, test } from 'vitest';
import { libraryFiles } from '../../../tests/library.ts';
import { readerOf } from '../../i18n/translate.ts';
import { positionAt } from '../offset.ts';
import { snapshotOf } from '../snapshot.ts';
import { hoverAt } from './hover.ts';
import { specMarkdown } from './spec.ts';

const uri = 'procedures/one-spring/procedure.rebuild';
const files = libraryFiles().filter((file) => /^procedures\/(?:shared\/|one-spring\/|shop\.)/u.test(file.uri));
const text = files.find((file) => file.uri === uri)!.text;
const snapshot = snapshotOf(files);

function markdown(before: string): string | undefined {
  const at = text.indexOf(before);
  expect(at, before).toBeGreaterThanOrEqual(0);
  const hover = hoverAt(snapshot, uri, positionAt(text, at + before.length - 1), readerOf('en'), specMarkdown);
  return hover?.markdown.replace(/[\u00a0\u202f]/gu, ' ');
}

test('a part says what it is, and where it is at this step and since when', () => {
  expect(markdown('    run-down nut\n    torque nut')).toContain(
    'Here: in place since step 8.8; as found or new since step R8.1; rinsed since step 8.2; wet with test oil',
  );
  expect(markdown('    run-down nut\n    torque nut')).toContain('hand-tight since step 8.8.');
  expect(markdown('    measure shim')).toContain('chosen from shims-8');
  expect(markdown('    measure shim')).toMatch(/Here: off since step 3\.\d/u);
});

test('a spec shows its limits for all part numbers, with tool and accuracy ratio', () => {
  const shown = markdown('torque nut to nut')!;
  expect(shown).toContain('| Number | Figure | Limit | Tool | Ratio | Steps |');
  expect(shown).toMatch(
    /\| A-250, A-235, A-220 \| Nozzle nut: Torque \| 60 N·m, 55 to 65 N·m, 40\.6 to 47\.9 lbf·ft \| TW-80 \| 2\.0:1 \|/u,
  );
});

test('a verb says what it takes, and what its step changes', () => {
  const shown = markdown('    run-dow')!;
  expect(shown).toMatch(/^\*\*run-down\*\* PARTS: turns a joint home, hand-tight\./u);
  expect(shown).toContain('Step 8.8 changes:\n\n- nut: off → in place');
  expect(shown).toContain('- nut: apart → hand-tight');
});

test('a clause says what it is after this verb', () => {
  expect(markdown('torque nut t')).toMatch(/^\*\*to\*\* after torque: `to SPEC`, `to LIMIT`/u);
});

test('a figure is shown in the other units of its kind', () => {
  expect(markdown('pressure  250 ba')).toContain('**250 bar** = ');
  expect(markdown('pressure  250 ba')).toContain('= 25 MPa = 3626 psi = ');
  expect(markdown('takes 15 mi')).toContain('**15 min** = ');
});
