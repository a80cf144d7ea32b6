import { describe, expect, it } from 'vitest';
import { procedureWith } from '../../tests/fixtures/sound-procedure.ts';
import { checkFiles, Workspace } from '../db/workspace.ts';
import { fullMessage } from '../model/diagnostic.ts';

const sound = procedureWith();

/** A job as written after the sound procedure, and what is reported about it. */
function jobs(text: string) {
  const made = checkFiles([{ uri: 'x', text: `${sound}\n${text}` }]);
  return { jobs: made.jobs, messages: made.diagnostics.map((one) => fullMessage(one).replaceAll('\u00a0', ' ')) };
}

const job = (units: string, head = '') => jobs(`job 7 of example at bench ${head} {\n${units}\n}\n`);

describe('a job', () => {
  it('gives the serial of a unit, or says outright that it has none', () => {
    const { jobs: made, messages } = job(`
  unit 1 number A-250 serial none "ground off"
  unit 2 number A-250 serial "07/3"
  unit 3 number A-250`);
    expect(messages).toEqual([]);
    expect(made[0]!.units.map(({ serial, noSerial }) => [serial, noSerial])).toEqual([
      [null, 'ground off'],
      ['07/3', null],
      [null, null],
    ]);
  });

  it.each(['3003B', '3003A', '04-11C', '12mm', '10F', '1-2', '12/7', '2.5x', '1.2.3', '0411', '2.5'])(
    'takes a serial as it is on the body, whatever unit or figure it looks like: %s',
    (serial) => {
      const { jobs: made, messages } = job(`  unit 1 number A-250 serial ${serial}  as found "Rusty"`);
      expect(messages).toEqual([]);
      expect(made[0]!.units[0]).toMatchObject({ serial, results: [{ text: 'Rusty' }] });
    },
  );

  it.each([
    [
      'unit 1 number A-250 serial none',
      'Write why it has none: serial none "ground off". Nothing else leads from the unit to its papers.',
    ],
    [
      'unit 1 number A-250 serial none "  "',
      'Write why it has none: serial none "ground off". Nothing else leads from the unit to its papers.',
    ],
    ['unit 1 number A-250 serial ""', 'The serial is empty. Write what is on the body, or serial none "…" and why.'],
    [
      'unit 1 number A-250 serial 041 "on the flat"',
      'There are words after the serial 041, and they would not be printed. Write them as a note, or serial none "on the flat" where it has none.',
    ],
    [
      'unit 0 number A-250 serial 041',
      'Units are counted 1, 2, 3 …, and 0 is not such a number: the sheet and the certificate name a unit by it. Write its place in the set.',
    ],
    [
      'unit 01 number A-250 serial 041',
      'Units are counted 1, 2, 3 …, and 01 is not such a number: the sheet and the certificate name a unit by it. Write its place in the set.',
    ],
    [
      'unit 1.5 number A-250 serial 041',
      'Units are counted 1, 2, 3 …, and 1.5 is not such a number: the sheet and the certificate name a unit by it. Write its place in the set.',
    ],
    [
      'unit 1 number A-250 serial 041\n  unit 2 number A-250 serial 041',
      'Units 1 and 2 have the same serial, 041: nobody could say later which readings belong to which. Read it again from both bodies.',
    ],
    [
      'unit 1 number A-250 serial 041 on hold ""',
      'Write why it is on hold: on hold "…". The certificate shows it to the customer.',
    ],
    [
      'unit 1 number A-250 serial 041 { on hold " " }',
      'Write why it is on hold: on hold "…". The certificate shows it to the customer.',
    ],
    ['unit 1 number A-250 serial 041 { done by "" on 2026-11-05 }', 'Write done by and a name in quotes.'],
    [
      'unit 1 number A-250 serial 041 { done by "A" on 2026-11-02 }',
      'Done on 2026-11-02, and the job was received on 2026-11-03: one of the two dates is wrong. Correct it.',
    ],
    ...['15.11.2026', '15/11/2026', '2026-1-5'].map((date) => [
      `unit 1 number A-250 serial 041 { done by "A" on ${date} }`,
      'A date is written year-month-day, such as 2026-09-01.',
    ]),
  ])('%s: one sentence', (units, message) => {
    const none =
      'No unit is left that could be certified: every one is on hold, or there is none: the certificate is not made out without it. Take off hold what is done, with its results.';
    const { messages } = job(`  ${units}`, 'customer "C" received 2026-11-03');
    expect(messages).toEqual(units.includes('on hold') ? [none, message] : [message]);
  });

  it.each([
    ['received 2026-13-45', '2026-13-45 is not in the calendar: write the date as year-month-day.'],
    ['received 2026-02-29', '2026-02-29 is not in the calendar: write the date as year-month-day.'],
    ['customer ""', 'Write whose it is: customer "…".'],
  ])('%s: one sentence', (head, message) => {
    expect(job('  unit 1 number A-250 serial 041', head).messages).toEqual([message]);
  });

  it('whose head breaks off is reported, and never throws', () => {
    const text =
      'job 7 "Set" of example revision A at bench customer "C" received 2026-11-03 {\n  unit 1 number A-250 serial none "ground off" on hold "ask"\n  unit 2 number A-250 serial 041 {\n    as found opening -5 bar, "x"\n    shim out -1.3 mm with MIC-1  opening 254 bar on PG-400\n    done by "A" on 2026-11-05\n  }\n}\n';
    const words = [...text.matchAll(/\S+/gu)];
    const broken = [
      ...Array.from({ length: text.length }, (_, end) => text.slice(0, end)),
      ...words.map(({ 0: word, index }) => text.slice(0, index) + text.slice(index + word.length)),
      'job 2207 received',
      'job 7 of',
      'job of example {\n}',
      'job 7 of example revision {\n}',
      'job 7 of example received {\n}',
      'job 7 of example customer {\n}',
    ];
    // The procedure is read once.
    const checker = new Workspace();
    const of = (written: string) => [
      { uri: 'x', text: sound },
      { uri: 'job', text: written },
    ];
    for (const one of broken) expect(() => checker.check(of(one)), one).not.toThrow();
    expect(jobs('job 2207 received').messages.length).toBeGreaterThan(0);
  });
});
