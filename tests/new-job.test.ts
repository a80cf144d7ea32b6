/** `handtight new job`, and the lines of a unit in the order of the card. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { checkFiles } from '../language/db/workspace.ts';
import { findMissing } from '../language/documents/certificate/index.ts';
import { draftJob, nextSerials } from '../language/drafting/job.ts';
import { unitLines } from '../language/drafting/unit-lines.ts';
import { command } from './command.ts';
import { libraryFiles } from './library.ts';

const folder = mkdtempSync(join(tmpdir(), 'handtight-new-job-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const handtight = (...args: string[]) => command(folder, ...args);

const library = libraryFiles();
const procedure = checkFiles(library).procedureOf('rebuild-one-spring')!.procedure;

describe('handtight new job', () => {
  beforeAll(async () => {
    await handtight('new', 'samples', '.');
    await handtight('issue', 'rebuild-one-spring', '--today', '2026-10-06');
    await handtight('close', '2198', '--today', '2026-10-20');
  });

  it('writes the units with the next serials of the shop, and says who was here before', async () => {
    const made = await handtight(
      ...['new', 'job', '2300', '--of', 'rebuild-one-spring', '--number', 'A-250', '--serials', '1107,9999'],
      ...['--own-serials', '--customer', 'Somebody', '--today', '2026-11-04'],
    );
    expect(made.status).toBe(0);
    expect(made.stderr).toContain('Serial 1107 was here before: job 2198, closed 2026-10-20');
    expect(made.stderr).not.toContain('9999');
    const text = readFileSync(join(folder, 'job-2300.rebuild'), 'utf8');
    expect(text).toContain('unit 2 number A-250 serial 9999  shop-serial "S-0002"');
    const { stdout } = await handtight('check', 'job-2300.rebuild', '--format', 'json');
    const { findings } = JSON.parse(stdout) as { findings: { rule: string }[] };
    expect(findings.map(({ rule }) => rule)).toEqual(['blank-left']);
  });

  it.each([
    [['2198', '--of', 'rebuild-one-spring'], 'There is a job 2198 already'],
    [['2400', '--of', 'rebuild-one-sprng'], 'rebuild-one-spring'],
    [['2400', '--of', 'rebuild-one-spring', '--number', 'A-1'], 'has no part number A-1'],
    [['2400', '--of', 'rebuild-one-spring', '--units', '0'], 'from 1 to 99'],
    [['24"00', '--of', 'rebuild-one-spring'], 'cannot have a quote'],
  ])('refuses %j', async (args, said) => {
    const made = await handtight('new', 'job', ...args);
    expect(made.status).toBe(2);
    expect(made.stderr).toContain(said);
  });
});

it.each([
  [[], ['S-0001', 'S-0002']],
  [
    ['S-0411', 'S-0099'],
    ['S-0412', 'S-0413'],
  ],
  [['HT9'], ['HT10', 'HT11']],
])('gives out the next serials after %j', (given, next) => {
  expect(nextSerials(given, 2)).toEqual(next);
});

it('the lines of a unit are in the order of the card, and read without a word when they are filled in', () => {
  const figures = ['208', '1.30', '1.50', '60', '254', '11'];
  const filled: Readonly<Record<string, string>> = { name: 'A. B.', date: '2026-11-05', pass: 'pass' };
  const lines = unitLines(procedure, (like) => filled[like] ?? figures.shift()!);
  expect(unitLines(procedure, () => '_')).toMatchInlineSnapshot(`
    [
      "as found opening _ bar on PG-400",
      "as found spray _",
      "shim out _ mm with MIC-1",
      "shim in _ mm",
      "torque nut _ N·m with TW-80",
      "opening _ bar on PG-400",
      "seat-leak _",
      "chatter _",
      "spray _",
      "back-leak _ s",
      "done by "_" on _",
    ]
  `);
  const draft = draftJob(procedure, {
    name: '2300',
    title: 'One',
    customer: 'Somebody',
    received: '2026-11-04',
    number: 'A-250',
    serials: ['1'],
    units: 1,
    ownSerials: [],
  });
  const text = draft.replace('…', 'Smokes').replace('serial 1\n', `serial 1 {\n${lines.join('\n')}\n}\n`);
  const { diagnostics, jobs } = checkFiles([...library, { uri: 'job.rebuild', text }]);
  expect(diagnostics.filter(({ source }) => source.file === 'job.rebuild')).toEqual([]);
  const job = jobs.find(({ name }) => name === '2300')!;
  expect(findMissing(procedure, job, { diagnostics: [], today: '2026-12-31' })).toEqual([]);
});
