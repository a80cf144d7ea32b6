import { expect, test } from 'vitest';
import { askedAt, edited } from '../../tests/holder.ts';
import { libraryFiles } from '../../tests/library.ts';
import { readerOf } from '../i18n/translate.ts';
import { inlayHintsIn, type ShownHints } from './inlay-hints.ts';
import { snapshotOf } from './snapshot.ts';

test('hints behind the readings of a job, of the lines that are shown', () => {
  const snapshot = snapshotOf(libraryFiles());
  const uri = 'procedures/jobs/job-2207.rebuild';
  const lines = snapshot.textOf(uri)!.split('\n');
  const whole = { start: { line: 0, character: 0 }, end: { line: lines.length, character: 0 } };
  const all = inlayHintsIn(snapshot, uri, whole, only('shims'), readerOf('en'));
  expect(all.length).toBeGreaterThan(0);
  for (const { position } of all) expect(lines[position.line]!.slice(0, position.character)).toMatch(/\d/u);
  const [{ position: first }] = all as [(typeof all)[number]];
  const shown = { start: { line: first.line, character: 0 }, end: { line: first.line, character: 99 } };
  const here = inlayHintsIn(snapshot, uri, shown, only('shims'), readerOf('en'));
  expect(here).toEqual(all.filter(({ position }) => position.line === first.line));
  expect(inlayHintsIn(snapshot, 'nowhere.rebuild', shown, only('shims'), readerOf('en'))).toEqual([]);
});

const only = (kind: keyof ShownHints): ShownHints => ({ shims: false, steps: false, limits: false, [kind]: true });

test('each kind of hint has its switch', () => {
  const { snapshot, file } = askedAt(edited('    unclamp body\n', '    torque nut to nut-fit\n    unclamp body\n'));
  const whole = { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } };
  const shown = (kind: keyof ShownHints) =>
    inlayHintsIn(snapshot, file, whole, only(kind), readerOf('en')).map(
      ({ position, text }) => `${position.line + 1}: ${text}`,
    );
  expect(shown('steps')).toEqual(['9: 1.1', '10: 1.2', '11: 1.3', '12: 1.4', '13: 1.5', '17: R1.1']);
  expect(shown('limits')).toEqual(['12: 60\u00a0N·m ±5']);
});
