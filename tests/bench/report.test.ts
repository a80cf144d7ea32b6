import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { Result } from './bench.ts';
import { sharesOf } from './measure/profile.ts';
import { markdownOf, resultInWords, withTable } from './measure/report.ts';

const spread = (median: number, p95: number) => ({ median, p95, least: median, count: 20 });
const results: readonly Result[] = [
  {
    kind: 'comparison',
    work: 'edit to findings',
    unit: 'ms',
    measured: [
      { name: 'Handtight', spread: spread(3, 12.34) },
      { name: 'JSON server', spread: spread(2, 4) },
    ],
    limits: [{ of: 'median', times: 1, than: 'JSON server' }],
  },
  {
    kind: 'growth',
    work: 'a check',
    of: 'steps',
    unit: 'ms',
    points: [10, 100, 1000].map((size) => ({ size, value: size ** 2 / 100 })),
    most: 1.15,
  },
  { kind: 'skipped', work: 'PDF against Chromium', why: 'it is not there' },
];

test('A missed target, an exponent above linear and what was not measured are in the words', () => {
  const [edit, check, skipped] = results.map(resultInWords);
  expect(edit).toMatch(/^✗ edit to findings\n +Handtight +3 ms +p95 +12\.3/u);
  expect(edit).toMatch(/JSON server +2 ms .* ratio 1\.5 /u);
  expect(edit).toMatch(/target ≤ 1 × JSON server: missed$/u);
  expect(check).toContain('exponent 2.00, between the last two sizes 2.00, above linear; target ≤ 1.15: missed');
  expect(skipped).toBe('? PDF against Chromium\n    not measured: it is not there');
});

test('The tables have a row for each result, and go between the markers of a page', () => {
  const table = markdownOf(results);
  expect(table).toContain('| edit to findings | 3 ms | 12.3 | JSON server 2 | 1.5 | ≤ 1 × JSON server | missed |');
  expect(table).toContain('| a check, by steps | 10: 1, 100: 100, 1,000: 10,000 ms | 2.00 | 2.00 | ≤ 1.15 | missed |');
  expect(table).toContain('- Not measured: PDF against Chromium: it is not there.');
  const page = 'before\n<!-- bench: written by npm run bench -->\nold\n<!-- bench: end -->\nafter\n';
  const written = withTable(page, table);
  expect(written).toMatch(/^before\n<!--/u);
  expect(written).toMatch(/-->\nafter\n$/u);
  expect(written).not.toContain('old');
  expect(withTable(written, table)).toBe(written);
  expect(() => withTable('no markers', table)).toThrow(/no place for the table/u);
});

test('A profile is summed up by function and by folder, without the time in which nothing ran', () => {
  const folder = mkdtempSync(join(tmpdir(), 'handtight-profile-'));
  const frame = (functionName: string, url: string) => ({ functionName, url, lineNumber: 4, columnNumber: 0 });
  const profile = {
    nodes: [
      { id: 1, callFrame: frame('(idle)', '') },
      { id: 2, callFrame: frame('(garbage collector)', '') },
      { id: 3, callFrame: frame('parse', new URL('../../language/syntax/parse.ts', import.meta.url).href) },
      { id: 4, callFrame: frame('read', 'node:fs') },
      { id: 5, callFrame: frame('split', new URL('../../node_modules/@a/b/index.js', import.meta.url).href) },
    ],
    samples: [1, 2, 3, 3, 4, 5],
    timeDeltas: [9000, 1000, 2000, 2000, 500, 500],
  };
  writeFileSync(join(folder, 'one.cpuprofile'), JSON.stringify(profile));
  const { functions, folders, total } = sharesOf(folder);
  rmSync(folder, { recursive: true });
  expect(total).toBe(6);
  expect(functions[0]).toEqual({ name: 'parse  language/syntax/parse.ts:5', self: 4 });
  expect(folders).toEqual([
    { name: 'language/syntax/', self: 4 },
    { name: '(garbage collector)', self: 1 },
    { name: 'Node', self: 0.5 },
    { name: 'package @a/b', self: 0.5 },
  ]);
});
