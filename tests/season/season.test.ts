/** A season of invented jobs: judged, closed, asked; and the same jobs cut up at random. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { Workspace } from '../../language/db/workspace.ts';
import { buildCertificate, findMissing } from '../../language/documents/certificate/index.ts';
import { judgeJob } from '../../language/judgment/judge.ts';
import type { Job } from '../../language/model/job.ts';
import { openLedger } from '../../server/host/ledger/ledger.ts';
import { history, learned } from '../../server/host/ledger/questions.ts';
import { numbersFrom } from '../legal/walk.ts';
import { closeSeason, writeSeason } from './closed-season.ts';
import { printJob } from './print-job.ts';
import { season, trueRate } from './season.ts';

const count = 120;
const all = season(count, 7);
const { files, closed } = closeSeason(all);
const library = files.filter(({ uri }) => !uri.startsWith('jobs/'));
const folder = mkdtempSync(join(tmpdir(), 'handtight-season-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const records = join(folder, 'records');
writeSeason(records, closed);
const units = closed.flatMap(({ job, record }) => (record === null ? [] : job.units)).filter(({ onHold }) => !onHold);

describe('a season', () => {
  it('is the same for the same seed', () => {
    expect(season(20, 7).jobs).toEqual(all.jobs.slice(0, 20));
    expect(season(20, 8).jobs).not.toEqual(all.jobs.slice(0, 20));
  });

  it('is written without an error, and closes, but for jobs that are on hold as a whole', () => {
    const result = new Workspace().open(files);
    const errors = all.jobs.flatMap(({ file }) =>
      result.findingsIn(file.uri).filter(({ severity }) => severity === 'error'),
    );
    expect(errors).toEqual([]);
    for (const { job, missing } of closed) if (missing > 0) expect(job.units.every(({ onHold }) => onHold)).toBe(true);
    expect(closed.filter(({ record }) => record !== null).length).toBeGreaterThan(count * 0.95);
  });

  it('shows in its records what went into it: rate, first pass, comebacks', async () => {
    const ledger = await openLedger(records, { cache: join(folder, 'cache') });
    expect(ledger.notes).toEqual([]);
    const months = learned(ledger, {});
    expect(months.reduce((sum, one) => sum + one.units, 0)).toBe(units.length);
    for (const { rate } of months.filter((one) => (one.rate?.units ?? 0) >= 20)) {
      expect(rate).toMatchObject({ part: 'shim', test: 'opening', unit: 'bar' });
      // Four standard errors: the seed is fixed, and the errors are those of the fit.
      expect(Math.abs(rate!.slope - trueRate.mean)).toBeLessThan(4 * Math.max(rate!.error, 0.5));
    }
    expect(months.filter((one) => (one.rate?.units ?? 0) >= 20).length).toBeGreaterThan(1);
    expect(months.reduce((sum, one) => sum + one.firstPass, 0)).toBe(units.filter(({ atOnce }) => atOnce).length);
    const came = months.flatMap(({ comebacks }) => Object.entries(comebacks));
    for (const cause of new Set(units.flatMap((one) => one.cause ?? [])))
      expect(came.filter(([name]) => name === cause).reduce((sum, [, number]) => sum + number, 0)).toBe(
        units.filter((one) => one.cause === cause).length,
      );
    const back = units.find(({ cause }) => cause !== null)!;
    expect(history(ledger, back.serial)!.visits.length).toBeGreaterThan(1);
    ledger.close();
  });

  it('keeps every try in order, the last as the one that counts', () => {
    for (const { job, record } of closed)
      for (const unit of record?.answers.units ?? []) {
        const { readings, onHold } = job.units.find(({ place }) => String(place) === unit.place)!;
        if (onHold) continue;
        const read = unit.results.filter(({ name, role }) => name === 'opening' && role !== 'as found');
        expect(read.map(({ role, tries }) => [role, tries])).toEqual(
          Array.from({ length: readings }, (_, at) => [at === readings - 1 ? 'as left' : 'earlier', at + 1]),
        );
        const places = unit.results.map(({ role, name }) => `${role} ${name}`);
        expect(places.indexOf('shim out shim')).toBeLessThan(places.indexOf('shim in shim'));
        expect(places.lastIndexOf('shim in shim')).toBeLessThan(places.indexOf('as left opening'));
      }
  });
});

/** Without places, which are others in another text. */
function bare(job: Job): unknown {
  const { procedure, source, intake, checks, units: own, ...head } = job;
  return JSON.parse(
    JSON.stringify({ ...head, intake, checks, units: own, procedure: procedure.name }, (key, value: unknown) =>
      key === 'source' ? undefined : value,
    ),
  );
}

describe('jobs cut up at random', () => {
  const random = numbersFrom(11);
  const one = <T>(of: readonly T[]): T => of[Math.floor(random() * of.length)]!;
  const words = [
    'opening',
    'shim in 1.50 mm',
    'renewed spring',
    'done by "X" on 2026-10-05',
    'again opening',
    'pass',
    '}',
  ];
  const damaged = (text: string): string => {
    let lines = text.split('\n');
    for (let times = 1 + Math.floor(random() * 4); times > 0; times--) {
      const at = Math.floor(random() * lines.length);
      const other = Math.floor(random() * lines.length);
      const line = lines[at]!;
      lines = one<() => string[]>([
        () => lines.toSpliced(at, 1),
        () => lines.toSpliced(at, 0, lines[other]!),
        () => lines.with(at, lines[other]!).with(other, line),
        () => lines.with(at, line.slice(0, Math.floor(random() * line.length))),
        () =>
          lines.with(
            at,
            line.replace(/\d+/u, (digits) => one([`${digits}0`, digits.slice(1), '0'])),
          ),
        () => lines.with(at, `${line} ${one(words)}`),
        () => lines.slice(0, at),
      ])();
    }
    return lines.join('\n');
  };

  it('are judged without a throw, certified only where the last reading is inside, and read again as they print', () => {
    const workspace = new Workspace();
    let read = 0;
    for (let round = 0; round < 250; round++) {
      const { file, name, done } = one(all.jobs);
      const text = damaged(file.text);
      const result = workspace.check([...library, { uri: 'job.rebuild', text }]);
      const job = result.jobs.find((other) => other.name === name);
      if (job === undefined) continue;
      read++;
      const diagnostics = result.diagnostics.filter(({ source }) => source.file === 'job.rebuild');
      const today = one([done, '2026-01-01', null]);
      const judged = judgeJob(job.procedure, job, today);
      const sheet = buildCertificate(job.procedure, job, { paper: 'a4', draft: false, diagnostics, today, hash: 'ab' });
      const missing = findMissing(job.procedure, job, { diagnostics, today });
      expect(sheet.watermark === null).toBe(missing.length === 0);
      if (missing.length === 0)
        for (const { outcomes } of judged.units)
          for (const { asked, reading } of outcomes)
            if (asked.name === 'opening') expect(inWindow(reading?.value.number)).toBe(true);
      const again = workspace.check([...library, { uri: 'job.rebuild', text: printJob(job) }]);
      const same = again.jobs.find((other) => other.name === name);
      expect(bare(same!), text).toEqual(bare(job));
    }
    expect(read).toBeGreaterThan(200);
  });
});

function inWindow(number: string | undefined): boolean {
  return Number(number) >= 250 && Number(number) <= 258;
}
