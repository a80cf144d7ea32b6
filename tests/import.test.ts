/** Results of a test bench, from a file with a mapping into the jobs. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { missingLines, withLines } from '../language/drafting/imported.ts';
import { command } from './command.ts';
import { root } from './library.ts';

const folder = mkdtempSync(join(tmpdir(), 'handtight-import-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
for (const part of ['shop.rebuild', 'one-spring', 'shared', 'jobs/job-2198.rebuild', 'jobs/job-2207.rebuild'])
  cpSync(join(root, 'procedures', part), join(folder, part), { recursive: true });
const jobFile = join(folder, 'jobs', 'job-2207.rebuild');
const before = readFileSync(jobFile, 'utf8');

const heads = 'Order;SN;Date;Operator;P_open;Chatter';
const rows = ['2207;0413;5.11.2026;R. Abel;214,5;OK', '2207;0414;5.11.2026;R. Abel;222;NOK'];
const mapping = {
  job: 'Order',
  serial: 'SN',
  by: 'Operator',
  on: 'Date',
  days: 'day.month.year',
  decimal: ',',
  separator: ';',
  results: [
    { test: { is: 'opening' }, value: 'P_open', unit: { is: 'bar' }, tool: { is: 'PG-400' } },
    { test: { is: 'chatter' }, value: { column: 'Chatter', words: { OK: 'pass', NOK: 'fail' } } },
  ],
};

const put = (name: string, text: string) => writeFileSync(join(folder, name), text);
const taken = (file = 'bench.csv', ...more: string[]) =>
  command(folder, 'import', file, '--mapping', 'mapping.json', ...more);
put('mapping.json', JSON.stringify(mapping));
put('bench.csv', `${[heads, ...rows].join('\n')}\n`);

describe('handtight import', () => {
  it('shows what it would write, writes it, and takes in nothing twice', async () => {
    const shown = await taken();
    expect([shown.status, shown.stderr]).toEqual([
      0,
      expect.stringContaining('This is what would be written: 4 results.'),
    ]);
    expect(shown.stdout).toContain('+    opening 214.5 bar on PG-400 by "R. Abel" on 2026-11-05\n');
    expect(readFileSync(jobFile, 'utf8')).toBe(before);
    expect((await taken('bench.csv', '--write')).stdout).toBe('written  jobs/job-2207.rebuild: 4\n');
    const after = readFileSync(jobFile, 'utf8');
    expect(after).toContain(
      '  unit 4 number A-250 serial 0414 {\n    opening 222 bar on PG-400 by "R. Abel" on 2026-11-05\n    chatter fail',
    );
    expect((await command(folder, 'check')).stdout).toContain('nothing found');
    expect((await taken('bench.csv', '--write')).stdout).toBe('All of it is in the jobs already.\n');
    expect(readFileSync(jobFile, 'utf8')).toBe(after);
    writeFileSync(jobFile, before);
  });

  it('takes NDJSON, a row for each reading', async () => {
    put(
      'mapping.json',
      JSON.stringify({
        job: 'job',
        unit: 'place',
        results: [{ test: { column: 'what', words: { OP: 'opening' } }, value: 'value', unit: 'in', tool: 'gauge' }],
      }),
    );
    put('bench.ndjson', '{"job":2207,"place":3,"what":"OP","value":3000,"in":"psi","gauge":"PG-400"}\n');
    const { status, stdout } = await taken('bench.ndjson');
    expect([status, stdout]).toEqual([0, expect.stringContaining('+    opening 3000 psi on PG-400\n')]);
    put('mapping.json', JSON.stringify(mapping));
  });

  it.each<[string, string, string]>([
    ['no such job', rows[0]!.replace('2207', '9999'), 'line 2: There is no job 9999 here.'],
    ['no such unit', rows[0]!.replace('0413', '1'), 'line 2: Job 2207 has no unit with serial 1.'],
    ['no unit named', rows[0]!.replace('0413', ''), 'line 2: Neither place nor serial says which unit this is.'],
    ['a figure that is none', rows[0]!.replace('214,5', '2x'), 'line 2: “2x bar” is no figure with a unit.'],
    ['a day in another form', rows[0]!.replace('5.11.2026', '2026-11-05'), 'is no day as day.month.year'],
    ['a day that is not in the calendar', rows[0]!.replace('5.11.2026', '31.2.2026'), '2026-02-31'],
    ['an impossible figure', rows[0]!.replace('214,5', '2145'), '2145 bar'],
    ['words that would end the quotes', rows[0]!.replace('R. Abel', "x'''\" on hold"), 'does not fit into quotes'],
    [
      'another row that is wrong: all or nothing',
      `${rows[0]}\n2207;1;5.11.2026;R. Abel;1;OK`,
      'line 3: Job 2207 has no unit',
    ],
  ])('writes nothing where a row has %s', async (_, row, said) => {
    put('bad.csv', `${heads}\n${row.includes('"') ? row.replace(/x'''" on hold/u, '"x"" on hold"') : row}\n`);
    const { status, stderr } = await taken('bad.csv', '--write');
    expect([status, stderr]).toEqual([1, expect.stringContaining('Nothing was taken in from bad.csv.')]);
    expect(stderr.replaceAll('\u00a0', ' ')).toContain(said);
    expect(readFileSync(jobFile, 'utf8')).toBe(before);
  });

  it.each<[string, object | string, string]>([
    ['no JSON', '{', 'mapping.json is no JSON'],
    ['no results', { ...mapping, results: [] }, 'mapping.json cannot be used: results'],
    ['no unit', { ...mapping, serial: undefined }, 'does not say which unit a row is of'],
    ['a key that has no meaning', { ...mapping, tools: 1 }, 'tools'],
  ])('refuses a mapping with %s', async (_, wrong, said) => {
    put('mapping.json', typeof wrong === 'string' ? wrong : JSON.stringify(wrong));
    const { status, stderr } = await taken();
    put('mapping.json', JSON.stringify(mapping));
    expect([status, stderr]).toEqual([2, expect.stringContaining(said)]);
  });

  it('says which columns there are, and what cannot be read', async () => {
    const columns = async (text: string, file = 'bad.csv') => {
      put(file, text);
      return (await taken(file)).stderr.replaceAll('\u00a0', ' ').replace(/\s+/gu, ' ');
    };
    expect(await columns(`${heads.replace('P_open', 'Pressure')}\n${rows[0]}\n`)).toContain(
      'bad.csv has no column “P_open”. It has: Order, SN, Date, Operator, Pressure, Chatter. Write in the mapping',
    );
    expect(await columns(`${heads};SN\n${rows[0]};1\n`)).toContain('bad.csv has more than one column “SN”');
    // Each row that lacks something is named with the column.
    const short = await columns(`${heads}\n${rows[0]}\n2207;0414;5.11.2026;R. Abel\n${rows[1]};OK\n`);
    expect(short).toContain('line 3: The row has nothing in column “P_open”. It has: Order, SN, Date, Operator.');
    expect(short).toContain('line 4: The row has more cells than there are heads');
    const object = { Order: '2207', SN: '0413', Date: '5.11.2026', P_open: '214,5', Chatter: 'OK' };
    expect(await columns(`${JSON.stringify(object)}\n`, 'bad.ndjson')).toContain(
      'line 1: The row has nothing in column “Operator”. It has: Order, SN, Date, P_open, Chatter.',
    );
    put('bad.csv', `${heads}\n2207;"0413\n`);
    expect((await taken('bad.csv')).stderr).toContain('bad.csv cannot be read as CSV');
    put('bad.ndjson', '{"job":{}}\n');
    expect((await taken('bad.ndjson')).stderr).toContain('bad.ndjson, line 1');
    expect((await taken('none.csv')).stderr).toContain('none.csv cannot be read');
  });
});

const at = (text: string, unit: string) => {
  const line = text.split('\n').findIndex((one) => one.includes(unit));
  return { line, character: text.split('\n')[line]!.indexOf(unit) };
};

it.each([
  ['{\n  unit 1 serial 2\n}\n', 'unit 1 serial 2', '{\n  unit 1 serial 2 {\n    x\n  }\n}\n'],
  ['{\n  unit 1 {\n    a\n  }\n}\n', 'unit 1 {\n    a\n  }', '{\n  unit 1 {\n    a\n    x\n  }\n}\n'],
  ['{\r\n  unit 1\r\n}\r\n', 'unit 1', '{\r\n  unit 1 {\r\n    x\r\n  }\r\n}\r\n'],
  ['{\n  unit 1 { note "b" }\n}\n', 'unit 1 { note "b" }', '{\n  unit 1 { note "b"\n    x\n  }\n}\n'],
])('puts lines at the end of a unit: %j', (text, unit, wanted) => {
  const start = at(text, 'unit');
  const all = unit.split('\n');
  const end = {
    line: start.line + all.length - 1,
    character: (all.length === 1 ? start.character : 0) + all.at(-1)!.length,
  };
  expect(withLines(text, { start, end }, ['x'])).toBe(wanted);
});

it('counts a line that is there as often as it is there', () => {
  expect(missingLines('unit 1 {\n  x  1\n  y\n}', ['x 1', 'x 1', 'y', 'z'])).toEqual(['x 1', 'z']);
});
