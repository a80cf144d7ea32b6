/** Each refactoring by its text before and after; what it writes is read, and says what was said. */
import { expect, test } from 'vitest';
import { procedureText, shopText } from '../../tests/holder.ts';
import { edited } from '../db/fixes.ts';
import { checkFiles } from '../db/workspace.ts';
import { english } from '../say/say.ts';
import { changesOf } from './code-actions.ts';
import { positionAt } from './offset.ts';
import { refactoringsIn } from './refactorings.ts';
import { snapshotOf } from './snapshot.ts';

const full = procedureText.replace(
  '    unclamp body\n',
  '    unclamp body\n    torque nut to 60 N·m ±5 source "Sheet, page 3"\n',
);

/** The text after the refactoring of a title, of what is between two markers. */
function refactored(title: RegExp, marked: string): string | null {
  const start = marked.indexOf('<');
  const text = marked.replace('<', '');
  const end = text.indexOf('>') < 0 ? start : text.indexOf('>');
  const whole = text.replace('>', '');
  const snapshot = snapshotOf([
    { uri: 'shop.rebuild', text: shopText },
    { uri: 'p.rebuild', text: whole },
  ]);
  const range = { start: positionAt(whole, start), end: positionAt(whole, end) };
  const found = refactoringsIn(snapshot, 'p.rebuild', range).find((one) => title.test(english(one.title)));
  return found === undefined ? null : edited(whole, changesOf(found.edits, snapshot));
}

/** The steps of a text as they are written out. */
const stepsOf = (text: string) => {
  const { procedures } = checkFiles([
    { uri: 'shop.rebuild', text: shopText },
    { uri: 'p.rebuild', text },
  ]);
  return procedures[0]!.procedure.stages.flatMap(({ steps }) =>
    steps.map(({ verb, objects }) => `${verb} ${objects.map(({ name }) => name).join(', ')}`),
  );
};

test('steps become a sequence that is called', () => {
  const after = refactored(
    /sequence/u,
    full.replace('slacken nut\n', '<slacken nut\n').replace('nut, nozzle\n', 'nut, nozzle>\n'),
  )!;
  expect(after).toContain('    clamp body in "holding fixture"\n    new-sequence\n    unclamp body\n');
  expect(after).toContain('\n\n  sequence new-sequence {\n    slacken nut\n    remove cap, nut, nozzle\n  }\n}\n');
  expect(stepsOf(after)).toEqual(stepsOf(full));
  expect(refactored(/sequence/u, full.replace('slacken nut', 'slacken <nut'))).toBeNull();
});

test('a figure becomes a spec, with its source', () => {
  const after = refactored(/^Make it a spec: nut-fit-2$/u, full.replace('to 60 N·m', 'to <60 N·m'))!;
  expect(after).toContain('    torque nut to nut-fit-2\n');
  expect(after).toContain('page 2"\n  spec nut-fit-2  torque  60 N·m ±5  source "Sheet, page 3"\n');
  expect(refactored(/spec/u, full.replace('slacken nut', 'slacken <nut'))).toBeNull();
});

test('a part number more, with a blank for it', () => {
  expect(refactored(/part number/u, full.replace('number A-250', 'number <A-250'))).toContain(
    '  number A-250\n  number …\n',
  );
});

test('the build is written from the teardown, in the order that the parts allow', () => {
  expect(refactored(/build/u, procedureText.replace('slacken nut', 'slacken <nut'))).toContain(`  }

  stage build at … {
    clamp body
    fit nozzle located
    run-down nut
    torque nut to nut-fit
    fit cap
    unclamp body
  }
`);
});

test('a sister procedure has specs of its own', () => {
  const after = refactored(/sister/u, procedureText.replace('procedure rebuild', 'procedure <rebuild'))!;
  expect(after).toMatch(
    /\}\n\nprocedure rebuild-sister "Rebuild and set" for holder at bench like rebuild\n {2}revision A\n\{\n {2}spec opening .*\n {2}spec nut-fit .*\n {2}number …\n\}\n$/u,
  );
});

test('a stage is split where the cursor is', () => {
  const after = refactored(/Split/u, full.replace('unclamp body', '<unclamp body'))!;
  expect(after).toContain('nozzle\n  }\n\n  stage teardown-2 at strip {\n    unclamp body\n');
  expect(stepsOf(after)).toEqual(stepsOf(full));
  expect(refactored(/Split/u, full.replace('clamp body in', '<clamp body in'))).toBeNull();
});
