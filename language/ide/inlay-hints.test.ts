import { expect, test } from 'vitest';
import { libraryFiles } from '../../tests/library.ts';
import { inlayHintsIn } from './inlay-hints.ts';
import { snapshotOf } from './snapshot.ts';

test('hints behind the readings of a job, of the lines that are shown', () => {
  const snapshot = snapshotOf(libraryFiles());
  const uri = 'procedures/jobs/job-2207.rebuild';
  const lines = snapshot.textOf(uri)!.split('\n');
  const all = inlayHintsIn(snapshot, uri, {
    start: { line: 0, character: 0 },
    end: { line: lines.length, character: 0 },
  });
  expect(all.length).toBeGreaterThan(0);
  for (const { position } of all) expect(lines[position.line]!.slice(0, position.character)).toMatch(/\d/u);
  const [{ position: first }] = all as [(typeof all)[number]];
  const shown = { start: { line: first.line, character: 0 }, end: { line: first.line, character: 99 } };
  const here = inlayHintsIn(snapshot, uri, shown);
  expect(here).toEqual(all.filter(({ position }) => position.line === first.line));
  expect(inlayHintsIn(snapshot, 'nowhere.rebuild', shown)).toEqual([]);
});
