/** What a job may write down besides results: intake, parts with batch, comeback, concession; and where it prints. */
import { describe, expect, it } from 'vitest';
import { buildRecord } from '../language/archive/build.ts';
import { checkFiles } from '../language/db/workspace.ts';
import { buildCertificate, findMissing } from '../language/documents/certificate/index.ts';
import { renderText } from '../language/documents/renderers/index.ts';
import { buildSheet } from '../language/documents/traveler/index.ts';
import { wordsIn } from '../language/i18n/index.ts';
import { fullMessage } from '../language/model/diagnostic.ts';
import { libraryFiles } from './library.ts';

const library = libraryFiles();
const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/gu, ' ');

function jobWith(body: string, head = '') {
  const text = `job 9 "Pair" of rebuild-one-spring at bench-two\n  customer "Somebody"  received 2026-10-01 ${head}\n{\n${body}\n}\n`;
  const { jobs, diagnostics } = checkFiles([...library, { uri: 'job.rebuild', text }]);
  const job = jobs.find(({ name }) => name === '9')!;
  return {
    job,
    found: diagnostics
      .filter(({ source, severity }) => source.file === 'job.rebuild' && severity !== 'hint')
      .map((one) => plain(fullMessage(one))),
  };
}

const proven = `shim out 1.30 mm with MIC-1   renewed spring number "2 417" batch "L-7"
    shim in 1.50 mm   torque nut 60 N·m with TW-80   opening 254 bar on PG-400
    seat-leak pass  chatter pass  spray pass  back-leak 11 s`;
const unit = (lines: string, place = 1) =>
  `  unit ${place} number A-250 serial 04${place} {\n    as found opening 208 bar on PG-400\n    ${lines}\n    done by "A. B." on 2026-10-05\n  }`;

const intake = `  intake {
    brought by "Driver" on 2026-10-01   taken-in by "A. B." on 2026-10-01
    complaint "Smokes at idle"
    missing "Two return banjos"
    photo "set.jpg" hash "3f9a"
    promised 2026-10-20
    quote "1,240" on 2026-10-02
    approved by "Owner" on 2026-10-03 "by telephone"
  }
`;
const whole = `${intake}${unit(`comeback "2107" cause workmanship
    waiting for spring since 2026-10-02
    sent-out "plating" on 2026-10-02 paper "LS-881"
    booked-in on 2026-10-04 paper "WE-12"
    exchange serial "B-77"
    core scrapped by "Customer" on 2026-10-04
    shop-serial "S-0412"
    deviation "Step 3.4: rinsed, not washed" by "Lead" on 2026-10-04
    ${proven}`)}`;

describe('a job with all that is written down of it', () => {
  const { job, found } = jobWith(whole, 'order 2207');
  it('is read without a word', () => {
    expect(found).toEqual([]);
    expect(job.order).toBe('2207');
    expect(job.intake.map(({ word }) => word)).toEqual([
      'brought',
      'taken-in',
      'complaint',
      'missing',
      'photo',
      'promised',
      'quote',
      'approved',
    ]);
    const facts = job.units[0]!.results.filter((one) => one.form === 'fact');
    expect(facts).toMatchObject([
      { word: 'comeback', text: '2107', label: 'workmanship' },
      { word: 'waiting', name: 'spring', on: '2026-10-02' },
      { word: 'sent-out', text: 'plating', label: 'LS-881', on: '2026-10-02' },
      { word: 'booked-in', label: 'WE-12' },
      { word: 'exchange', label: 'B-77' },
      { word: 'core', name: 'scrapped', by: 'Customer' },
      { word: 'shop-serial', text: 'S-0412' },
      { word: 'deviation', by: 'Lead' },
    ]);
    expect(job.units[0]!.results).toContainEqual(
      expect.objectContaining({ form: 'renewed', part: 'spring', number: '2 417', batch: 'L-7' }),
    );
  });

  it('is certified, and the customer reads it', () => {
    expect(findMissing(job.procedure, job, { diagnostics: [], today: '2026-12-31' })).toEqual([]);
    const options = { paper: 'a4', draft: false, diagnostics: [], today: '2026-12-31', hash: 'ab' } as const;
    const text = renderText(buildCertificate(job.procedure, job, options))
      .map(plain)
      .join('\n');
    for (const word of ['Smokes at idle', '2107, workmanship', 'LS-881', 'B-77', '(2 417, L-7)', 'rinsed, not washed'])
      expect(text).toContain(word);
    expect(text).not.toContain('1,240');
  });

  it('is on the traveler', () => {
    const sheet = buildSheet(job.procedure, {
      job,
      number: null,
      paper: 'a4',
      draft: false,
      diagnostics: [],
      hash: '0',
    });
    const text = renderText(sheet).map(plain).join('\n');
    for (const word of ['Smokes at idle', '2026-10-20', '1,240', 'set.jpg', '2207', 'LS-881', 'L-7'])
      expect(text).toContain(word);
  });

  it('is in its record', () => {
    const record = buildRecord(job, {
      paper: 'a4',
      hash: 'ab',
      today: '2026-12-31',
      issue: 1,
      reason: null,
      replaces: null,
      texts: { job: '', issued: '', tools: '' },
      version: '0',
    });
    expect(record.answers.order).toBe('2207');
    expect(record.answers.units[0]!.renewed).toEqual([{ part: 'spring', number: '2 417', batch: 'L-7' }]);
    expect(record.answers.units[0]!.facts).toContainEqual(
      expect.objectContaining({ word: 'comeback', text: '2107', label: 'workmanship' }),
    );
  });
});

it('a job was moved from another revision than the one that it is at', () => {
  const { found } = jobWith(
    `  intake {\n    moved "C" by "Lead" on 2026-10-05 reason "limit"\n  }\n${unit(proven)}`,
    'revision C',
  );
  expect(found).toEqual([
    'The job says that it is at revision C, and that it was moved from that one. Write the revision that it was moved from.',
  ]);
});

describe('a concession for one unit', () => {
  const low = unit(`${proven.replace('254 bar', '248 bar')}
    concession opening by "Works manager" on 2026-10-05 "Customer agreed by telephone"`);
  it('allows the result, and the certificate says so', () => {
    const { job, found } = jobWith(low);
    expect(found).toEqual([]);
    expect(findMissing(job.procedure, job, { diagnostics: [], today: '2026-12-31' })).toEqual([]);
    const options = { paper: 'a4', draft: false, diagnostics: [], today: '2026-12-31', hash: 'ab' } as const;
    const text = renderText(buildCertificate(job.procedure, job, options))
      .map(plain)
      .join('\n');
    expect(text).toContain(
      'Opening pressure: 248 bar, limit 250 to 258 bar; allowed by Works manager, 2026-10-05: Customer agreed',
    );
    expect(text).toContain('248 bar ✗');
    expect(text).toContain('except where a concession is listed');
  });

  it('is for that result: a later one needs its own', () => {
    const { job } = jobWith(low.replace('done by', 'opening 247 bar on PG-400 "again"\n    done by'));
    const missing = findMissing(job.procedure, job, { diagnostics: [], today: '2026-12-31' });
    expect(missing.map((one) => plain(one.say(wordsIn('en')))).join('\n')).toContain('247 bar, is outside');
  });
});

it.each([
  ['waiting for spring since 2026-10-02', 'waiting for it since 2026-10-02'],
  ['sent-out "plating" on 2026-10-02 paper "LS-1"', 'sent out on 2026-10-02'],
])('is not certified while it is not over: %s', (line, said) => {
  const { job } = jobWith(unit(`${proven.replace('renewed spring number "2 417" batch "L-7"', '')}\n    ${line}`));
  const missing = findMissing(job.procedure, job, { diagnostics: [], today: '2026-12-31' });
  expect(missing.map((one) => plain(one.say(wordsIn('en')))).join('\n')).toContain(said);
});

it.each([
  ['waiting spring', 'Something is missing of waiting'],
  ['comeback "2107" cause workmanshp', 'workmanship'],
  ['comeback "2107"', 'Something is missing of comeback'],
  ['core lost', 'lost'],
  ['exchange "B-77"', 'Write exchange serial'],
  ['concession openning by "X" on 2026-10-05 "y"', 'opening'],
  ['promised soon', 'promised'],
  ['renewed spring batch', 'Write what its maker calls it in quotes: batch "L-7"'],
  ['waiting for spring since', 'Write all of it: waiting for spring since 2026-11-03'],
  ['again chater', 'chatter'],
  ['moved "B" by "X" on 2026-10-05', 'Something is missing of moved'],
])('says what is wrong in: %s', (line, said) => {
  const { found } = jobWith(unit(line));
  expect(found.join('\n')).toContain(said);
});

it('a line by somebody else on another day says so', () => {
  const { job, found } = jobWith(
    unit(proven.replace('opening 254 bar on PG-400', 'opening 254 bar on PG-400 by "C. D." on 2026-10-04')),
  );
  expect(found).toEqual([]);
  expect(job.units[0]!.results).toContainEqual(
    expect.objectContaining({ name: 'opening', tool: 'PG-400', done: { by: 'C. D.', on: '2026-10-04' } }),
  );
});

it('units can be written as lines, one each', () => {
  const { job, found } = jobWith(
    '  unit 1 number A-250 serial 041  as found opening 208 bar on PG-400  shim out 1.30 mm with MIC-1\n  unit 2 number A-250 serial 042  as found opening 210 bar on PG-400',
  );
  expect(found).toEqual([]);
  expect(job.units.map(({ serial, results }) => [serial, results.length])).toEqual([
    ['041', 2],
    ['042', 1],
  ]);
});

it.each([
  [
    'opening 254 bar on PG-400',
    'This belongs to a unit: the intake is for what holds for the whole job. Write it under its unit.',
  ],
  ['note "wet"', 'A note belongs to a unit. Write it there, or as complaint "…".'],
])('an intake takes no result: %s', (line, said) => {
  const { found } = jobWith(`  intake {\n    ${line}\n  }\n${unit(proven)}`);
  expect(found.join('\n')).toContain(said);
});
