/** What a suggestion costs right after a keystroke, counted by the log of queries. */
import { expect, test } from 'vitest';
import { procedureText, shopText } from '../../../tests/holder.ts';
import { Workspace } from '../../db/workspace.ts';
import { positionAt } from '../offset.ts';
import { completionsAt } from './completions.ts';

test('a half-typed step is completed without another flow analysis, and without a check', () => {
  const workspace = new Workspace();
  const typed = (half: string) => {
    const text = procedureText.replace('    remove cap, nut, nozzle\n', `    ${half}\n`);
    const result = workspace.open([
      { uri: 'shop.rebuild', text: shopText },
      { uri: 'p.rebuild', text },
    ]);
    const snapshot = { result, findingsIn: () => [], textOf: (uri: string) => (uri === 'p.rebuild' ? text : shopText) };
    const at = positionAt(text, text.indexOf(half) + half.length);
    return completionsAt(snapshot, 'p.rebuild', at, { snippets: false, onlyNames: false });
  };
  const labels = (half: string) => typed(half).flatMap(({ label, kind }) => (kind === 'name' ? [label] : []));
  workspace.database.log = [];
  expect(labels('remove ')).toEqual(expect.arrayContaining(['cap', 'nut']));
  expect(workspace.database.log.some((line) => line.startsWith('step states '))).toBe(true);
  workspace.database.log = [];
  expect(labels('remove c')).toContain('cap');
  expect(labels('remove cap, ')).toContain('nut');
  const queries = new Set(workspace.database.log.map((line) => line.replace(/ [^ ]*\0.*$| p\.rebuild$/u, '')));
  expect([...queries].filter((query) => /^(?:step states|outcome|findings from)/u.test(query))).toEqual([]);
  expect(queries.size).toBeGreaterThan(0);
});
