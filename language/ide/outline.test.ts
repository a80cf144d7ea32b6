import { expect, test } from 'vitest';
import { askedAt, procedureText } from '../../tests/holder.ts';
import { type OutlineEntry, outlineOf } from './outline.ts';
import { snapshotOf } from './snapshot.ts';

test('what a file declares, with the words of the author', () => {
  const { snapshot, file } = askedAt(procedureText);
  const [entry, ...others] = outlineOf(snapshot, file);
  expect(others).toEqual([]);
  expect(entry).toMatchObject({ name: 'rebuild', detail: 'Rebuild and set', kind: 'procedure' });
  expect(entry!.children.map(({ name, kind }) => [name, kind])).toEqual([
    ['opening', 'spec'],
    ['nut-fit', 'spec'],
    ['A-250', 'number'],
    ['teardown', 'stage'],
    ['again', 'repair'],
  ]);
  expect(outlineOf(snapshot, 'nowhere.rebuild')).toEqual([]);
});

test('a file without an end has an outline with one', () => {
  const stations = Array.from({ length: 6000 }, (_, index) => `  station s${index}`).join('\n');
  const count = (entries: readonly OutlineEntry[]): number =>
    entries.reduce((sum, { children }) => sum + 1 + count(children), 0);
  expect(count(outlineOf(snapshotOf([{ uri: 'x', text: `shop x {\n${stations}\n}\n` }]), 'x'))).toBe(5000);
});
