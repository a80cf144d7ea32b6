/** The tester's check with its master: a reading with limit, tool, person and day, on the certificate. */
import { describe, expect, it } from 'vitest';
import { buildRecord } from '../language/archive/build.ts';
import { checkFiles } from '../language/db/workspace.ts';
import { buildCertificate, findMissing } from '../language/documents/certificate/index.ts';
import { renderText } from '../language/documents/renderers/index.ts';
import { wordsIn } from '../language/i18n/index.ts';
import { fullMessage } from '../language/model/diagnostic.ts';
import { libraryFiles } from './library.ts';

const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/gu, ' ');
const today = '2026-12-31';
const closing = {
  paper: 'a4',
  hash: 'ab',
  today,
  issue: 1,
  reason: null,
  replaces: null,
  texts: { job: '', issued: '', tools: '' },
  version: '0',
} as const;

/** The library with a master at its tester that the procedure reads before and after the tests. */
const library = (master: string) =>
  libraryFiles()
    .filter(({ uri }) => !uri.includes('/jobs/'))
    .map(({ uri, text }) => ({
      uri,
      text: uri.endsWith('procedures/shop.rebuild')
        ? text.replace('  // Torque:', `  ${master}\n  // Torque:`)
        : text.includes('procedure rebuild-one-spring ')
          ? text.replace(/^( *)test opening /mu, '$1read M-1 with PG-400\n$1test opening ')
          : text,
    }));

const master = 'master M-1 "Master nozzle" at tester within 250 bar ±2';

function jobWith(intake: string, of = master, day = '2026-10-15') {
  const text = `job 9 "One" of rebuild-one-spring at bench-two
  received 2026-10-01
{
  intake {
    ${intake}
  }
  unit 1 number A-250 serial 041 {
    as found opening 208 bar on PG-400
    shim out 1.30 mm with MIC-1
    shim in 1.50 mm   torque nut 60 N·m with TW-80   opening 254 bar on PG-400
    seat-leak pass  chatter pass  spray pass  back-leak 11 s
    done by "A. B." on ${day}
  }
}
`;
  const { jobs, diagnostics } = checkFiles([...library(of), { uri: 'job.rebuild', text }]);
  const job = jobs.find(({ name }) => name === '9')!;
  const missing = findMissing(job.procedure, job, { diagnostics: [], today }).map((one) =>
    plain(one.say(wordsIn('en'))),
  );
  const errors = diagnostics
    .filter(({ source, severity }) => source.file === 'job.rebuild' && severity === 'error')
    .map((one) => plain(fullMessage(one)));
  return { job, missing, errors };
}

const good = 'M-1 250.5 bar on PG-400 by "R. A." on 2026-10-15';

describe('the check of a tester with its master', () => {
  it('is certified, with its limit, tool, person and day, and kept in the record', () => {
    const { job, missing, errors } = jobWith(good);
    expect([missing, errors]).toEqual([[], []]);
    const sheet = buildCertificate(job.procedure, job, {
      paper: 'a4',
      draft: false,
      diagnostics: [],
      today,
      hash: 'ab',
    });
    expect(renderText(sheet).map(plain)).toContain(
      'Check with Master nozzle: 250.5 bar, limit 248 to 252 bar, on PG-400; R. A., 2026-10-15.',
    );
    expect(buildRecord(job, closing).answers.checks).toEqual([
      {
        master: 'M-1',
        value: { number: '250.5', unit: 'bar' },
        limit: '250\u00a0bar ±2',
        passed: true,
        tool: 'PG-400',
        by: 'R. A.',
        on: '2026-10-15',
      },
    ]);
  });

  it.each([
    [
      'outside its limit',
      good.replace('250.5', '253'),
      'Master nozzle: it read 253 bar, and has to read 248 to 252 bar.',
    ],
    ['without a tool', good.replace(' on PG-400', ''), 'Master nozzle: the tool that 250.5 bar was read with'],
    ['without a person', good.replace(' by "R. A."', ''), 'Master nozzle: 250.5 bar has no person or no day.'],
    ['on another day', good.replace('-15', '-14'), 'Master nozzle was not read on 2026-10-15'],
    ['not made at all', 'complaint "Smokes"', 'Master nozzle was not read on 2026-10-15'],
    ['with a gauge that was overdue', good.replace('2026-10-15', '2025-12-01'), 'PG-400 was calibrated on 2026-01-15'],
  ])('keeps units from being certified: %s', (_, intake, said) => {
    expect(jobWith(intake).missing.join('\n')).toContain(said);
  });

  it('is not required where the shop does not say what the master reads', () => {
    expect(jobWith('complaint "Smokes"', master.replace(' within 250 bar ±2', '')).missing).toEqual([]);
  });

  it('is a reading of the kind that the master gives, and no result of a unit', () => {
    expect(jobWith(good.replace('250.5 bar', '9 s')).errors.join('\n')).toContain('a pressure is read here');
    expect(jobWith('opening 250 bar on PG-400').errors.join('\n')).toContain('This belongs to a unit');
  });
});
