/** Tools over the years: a result is judged by the calibration that was in force on its day. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, test } from 'vitest';
import { checkFiles, Workspace } from '../language/db/workspace.ts';
import { findMissing } from '../language/documents/certificate/index.ts';
import { wordsIn } from '../language/i18n/index.ts';
import type { Asset } from '../language/model/shop.ts';
import { command } from './command.ts';
import { libraryFiles, root } from './library.ts';

function gauge(facts: string): { readonly asset: Asset | undefined; readonly problems: readonly string[] } {
  const { resolved, diagnostics } = checkFiles([
    { uri: 'shop.rebuild', text: `shop s {\n  station t clean\n  gauge PG-1 range 0..400 bar ${facts}\n}\n` },
  ]);
  return { asset: resolved.shops[0]?.assets[0], problems: diagnostics.map(({ rule }) => rule) };
}

describe('the line of a tool', () => {
  it('holds several calibrations, each with its own end, certificate and what was found', () => {
    const { asset, problems } = gauge(
      'calibrated 2026-01-15 due 2027-01-15 certificate "K-2" found 3 bar high at 250 bar calibrated 2025-01-10 due 2026-01-10 certificate "K-1"',
    );
    expect(problems).toEqual([]);
    expect(asset).toMatchObject({ calibrated: '2026-01-15', due: '2027-01-15', outOfUse: null });
    expect(asset!.calibrations).toMatchObject([
      { calibrated: '2025-01-10', due: '2026-01-10', certificate: 'K-1', found: null },
      { calibrated: '2026-01-15', certificate: 'K-2', found: { error: { number: '3', unit: 'bar' }, high: true } },
    ]);
  });

  it('is read as before where there is one', () => {
    expect(gauge('due 2027-01-15 calibrated 2026-01-15')).toMatchObject({
      problems: [],
      asset: { calibrations: [{ calibrated: '2026-01-15', due: '2027-01-15' }] },
    });
    expect(gauge('due 2027-01-15').asset).toMatchObject({ calibrated: null, due: '2027-01-15' });
    expect(gauge('').asset).toMatchObject({ calibrations: [], calibrated: null, due: null });
  });

  it.each([
    ['calibrated 2026-01-15 calibrated 2026-02-15 due 2027-01-15', 'written-twice'],
    ['calibrated 2026-01-15 due 2027-01-15 due 2028-01-15', 'written-twice'],
    ['calibrated 2026-01-15 due 2025-01-15', 'wrong-date'],
    ['calibrated 2026-01-15 due 2027-01-15 calibrated 2027-01-12 due 2026-01-12', 'wrong-date'],
    ['calibrated 2026-01-15 due 2027-01-15 found 3 mm high at 250 bar', 'unit-of-another-kind'],
    ['retired 2026-13-01', 'wrong-date'],
  ])('with %s reports %s', (facts, rule) => {
    expect(gauge(facts).problems).toEqual([rule]);
  });

  it('says what to write where what was found is of another kind', () => {
    const { diagnostics } = checkFiles([
      { uri: 's.rebuild', text: 'shop s {\n  gauge PG-1 found 3 mm high at 250 bar\n}\n' },
    ]);
    expect(diagnostics.map(({ message }) => message)).toEqual([
      'PG-1 was found 3\u00a0mm off at 250\u00a0bar, and the two measure different things. Write both as it reads them: found 3 bar high at 250 bar.',
    ]);
  });

  it('is out of use from the earlier of two days', () => {
    expect(gauge('out of use since 2026-05-01 retired 2026-09-01').asset).toMatchObject({ outOfUse: '2026-05-01' });
  });
});

/** What is missing on job 2198, done on 15 and 16 October 2026 with PG-400, of these calibrations. */
function missing(calibrations: string): string[] {
  const files = libraryFiles().map((file) => ({
    ...file,
    text: file.text.replace(/(gauge +PG-400 .*?)calibrated .*$/mu, `$1${calibrations}`),
  }));
  const job = new Workspace().open(files).jobOf('2198')!;
  const words = wordsIn('en');
  return [
    ...new Set(findMissing(job.procedure, job, { diagnostics: [], today: '2028-01-01' }).map((one) => one.say(words))),
  ];
}

describe('a result', () => {
  it('is judged by the calibration of its day, whatever came later', () => {
    expect(
      missing('calibrated 2026-01-15 due 2027-01-15 calibrated 2027-01-12 due 2028-01-12 retired 2027-06-01'),
    ).toEqual([]);
  });

  it('between two calibrations is in doubt, though a later one is in force', () => {
    expect(missing('calibrated 2025-01-15 due 2026-01-15 calibrated 2027-01-12 due 2028-01-12')).toEqual([
      'PG-400 was due for calibration on 2026-01-15, and was used on 2026-10-15. Read again with a tool that is in date, or correct the date.',
      'PG-400 was due for calibration on 2026-01-15, and was used on 2026-10-16. Read again with a tool that is in date, or correct the date.',
    ]);
  });

  it('of a tool that was out of use on its day proves nothing', () => {
    expect(missing('calibrated 2026-01-15 due 2027-01-15 out of use since 2026-10-16')).toEqual([
      'PG-400 is out of use since 2026-10-16, and was used on 2026-10-16. Read again with a tool that is in use, or correct the date.',
    ]);
  });
});

describe('the command', () => {
  const folder = mkdtempSync(join(tmpdir(), 'handtight-tools-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  beforeAll(() => {
    cpSync(join(root, 'procedures'), folder, { recursive: true });
    rmSync(join(folder, 'flawed'), { recursive: true });
    const shop = join(folder, 'shop.rebuild');
    const text = readFileSync(shop, 'utf8');
    writeFileSync(
      shop,
      text
        .replace(/(tool +MIC-2 .*?)due 2027-02-01/u, '$1due 2026-11-01')
        .replace(/(tool +VC-150 .*?due \S+)/u, '$1 found 0.05 mm low at 100 mm out of use since 2026-10-01'),
    );
  });
  const text = async (...args: string[]) => (await command(folder, ...args)).stdout;

  test('lists tools by the day on which they are due', async () => {
    const all = await text('tools', '--today', '2026-12-01');
    const lines = all.split('\n').filter((line) => line.includes('bench-two'));
    expect(lines[0]).toMatch(/^2026-11-01 {2}MIC-2 .* overdue$/u);
    expect(lines.find((line) => line.includes('VC-150'))).toMatch(
      /out of use since 2026-10-01 {2}2026-02-01 0\.05.mm low at 100.mm$/u,
    );
    expect(lines.find((line) => line.includes('PG-400'))).toContain('in date');
  });

  test('lists only what is due within some days, and what is overdue', async () => {
    const json = ['--format', 'ndjson'];
    const names = async (within: string) => {
      const answer = await text('tools', '--today', '2026-12-20', '--within', within, ...json);
      const rows = answer
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line) as { tool: string; shop: string });
      return rows.flatMap(({ tool, shop }) => (shop === 'bench-two' ? tool : []));
    };
    expect(await names('30 days')).toEqual(['MIC-2', 'PG-400', 'PG-250']);
    expect(await names('5')).toEqual(['MIC-2']);
    expect((await command(folder, 'tools', '--within', 'soon')).stderr).toContain('is no number of days');
  });

  test('says at a print that a tool will not do for long', async () => {
    const print = async (today: string) =>
      (await command(folder, 'print', '2207', '--format', 'html', '--today', today)).stderr;
    expect(await print('2026-10-20')).not.toContain('PG-400');
    expect(await print('2026-10-20')).toContain('VC-150 is out of use since 2026-10-01');
    expect(await print('2027-01-01')).toContain('PG-400 is due for calibration on 2027-01-15');
    expect(await print('2027-01-20')).toContain('PG-400 has been due for calibration since 2027-01-15');
  });
});
