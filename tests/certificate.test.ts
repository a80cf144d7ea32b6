/** The certificate of a job: from the text of a job to the words that the customer reads, or to what is missing. */

import { dirname } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { checkFiles, Workspace } from '../language/db/workspace.ts';
import { buildCertificate, findMissing, placeWords } from '../language/documents/certificate/index.ts';
import { renderHtml, renderText } from '../language/documents/renderers/index.ts';
import { languages, wordsIn } from '../language/i18n/index.ts';
import type { Result } from '../language/model/job.ts';
import type { Quantity } from '../language/quantities/types.ts';
import { pdfOf } from '../server/host/print/pdf.ts';
import { done, good, proven } from './fixtures/certified-unit.ts';
import { libraryFiles } from './library.ts';

/** The day on which the certificates are made out. */
const today = '2027-12-31';
const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/gu, ' ');
const library = libraryFiles();
/** Those with the same changes look again only at the job. */
const checkers = new Map<string, Workspace>();

interface Changes {
  /** Text of the library → its replacement. */
  readonly library?: readonly (readonly [string, string])[];
  readonly procedure?: string;
  /** Whether what the check finds counts; else what the results say by themselves. */
  readonly errors?: boolean;
}

/** The job of such units, with what is missing for its certificate. */
function certified(
  units: string,
  { library: changes = [], procedure = 'rebuild-one-spring', errors = true }: Changes = {},
) {
  const own = dirname(library.find(({ text }) => text.includes(`procedure ${procedure} `))!.uri);
  // What the procedure is made of, without the others.
  const files = library
    .filter(({ uri }) => ['procedures', 'procedures/shared', own].includes(dirname(uri)))
    .map((file) => ({ ...file, text: changes.reduce((text, [from, to]) => text.replaceAll(from, to), file.text) }));
  const text = `job 9 "Pair" of ${procedure} at bench-two\n  customer "Somebody"   received 2026-10-01\n{\n${units}\n}\n`;
  const all = [...files, { uri: 'job.rebuild', text }];
  const key = JSON.stringify([procedure, changes]);
  const checker = checkers.get(key) ?? new Workspace();
  checkers.set(key, checker);
  const { jobs, diagnostics } = checker.check(all);
  const job = jobs.find(({ name }) => name === '9')!;
  const ofJob = errors ? diagnostics.filter(({ source }) => source.file === 'job.rebuild') : [];
  const missing = findMissing(job.procedure, job, { diagnostics: ofJob, today }).map((one) =>
    plain(`${placeWords(wordsIn('en'), one)}: ${one.say(wordsIn('en'))}`),
  );
  const sheet = (more = {}) =>
    buildCertificate(job.procedure, job, {
      paper: 'a4',
      draft: false,
      diagnostics: ofJob,
      today,
      hash: 'ab'.repeat(32),
      ...more,
    });
  return { job, missing, diagnostics: ofJob, sheet, text: () => renderText(sheet()).map(plain) };
}

const unit = (lines: string, place = 1, number = 'A-250') =>
  `  unit ${place} number ${number} serial 04${place} {\n    ${lines}\n  }`;
/** What is missing of one unit, without what to do about it: see the whole sentences below. */
const one = (lines: string, changes?: Changes) => certified(unit(lines), changes).missing.map(first);
const first = (sentences: string) => sentences.replace(/(?<![A-Z])\. .*$|\.$/u, '');

const guardedShop: Changes = {
  library: [
    [
      'air below 30 psi',
      'acceptance guarded source "Demo"\n  tool SW-1 "Stopwatch" range 0..60 s within 0.2 s calibrated 2026-02-01 due 2027-02-01',
    ],
  ],
};

describe('a job that is done', () => {
  it('is certified with all that was found, fitted, read and held to', () => {
    const { missing, sheet, text } = certified(unit(good));
    expect(missing).toEqual([]);
    expect(sheet().watermark).toBeNull();
    const texts = text();
    for (const word of [
      'Certificate of rebuild',
      'Injector bench two',
      '9, Pair',
      'Somebody',
      'Rebuild and set (rebuild-one-spring)',
      'Works manager, 2026-10-05',
      'Unit 1: rebuilt to the procedure above; every required test passed.',
      'Light rust',
      'A. B., 2026-10-05',
      'Opening pressure, as found',
      'in service at least 200 bar',
      '208 bar ✓',
      'Setting shim, fitted',
      '1.50 mm',
      '60 N·m (55 to 65 N·m)',
      '250 to 258 bar',
      '254 bar ✓',
      '6 to 20 s',
      '11 s ✓',
      'tip dry or damp, no drop',
      'PG-400',
      'class 0.25, marks 1 bar',
      '2026-01-15 to 2027-01-15, K-205',
      'MIC-1',
      'Procedure approved by',
      'From 150 bar, down to 100 bar, with calibration fluid at 20 to 25 °C, with unit upright, tip down',
      'Hold 20 bar below the opening pressure read, for 10 s',
      'New parts: 1 × sealing washer (every unit), 1 × dust seal (every unit), 1 × pressure spring (unit 1).',
      'Inspected in every unit, by the procedure: needle, nozzle, nozzle nut, holder and pressure spring.',
      'Acceptance: simple (a reading within its limit passes). No margin is kept for the tool: near its limit a reading may be off by the accuracy of the tool.',
      '9-1',
      '2027-12-31',
      'Injector bench two, Dock road 14, Sampleton (invented)',
      'Claims within twelve months, with the unit unopened and this certificate. (Invented terms.)',
      'abab abab abab',
      'Signature',
    ])
      expect(texts).toContain(word);
    expect(texts.join('\n')).toContain('Source of limits: Demo shop, invented figure (opening pressure,');
    expect(sheet().foot).toBe('Work order 9, Pair. Valid only with all its pages. Printed from abababababab.');
    expect(texts.join('\n')).not.toContain('Local codes');
  });

  it('says who is on hold and why, and leaves the unit out of the readings', () => {
    const { missing, text } = certified(
      `${unit(good)}\n  unit 2 number unknown serial 0413 on hold "No number on the body"`,
    );
    expect(missing).toEqual([]);
    const texts = text();
    expect(texts.slice(texts.indexOf('Not certified')).slice(0, 9)).toContain('No number on the body');
    expect(texts).toContain('Unit 1');
    expect(texts).not.toContain('Unit 2');
  });

  it('counts the last reading, not those before it', () => {
    expect(one(good.replace('renewed spring', 'opening 231 bar on PG-250'))).toEqual([]);
    const seat = (between: string) => one(good.replace('seat-leak pass', `seat-leak fail  ${between}`));
    expect(seat('renewed needle  torque nut 60 N·m with TW-80  opening 253 bar on PG-400  seat-leak pass')).toEqual([]);
    expect(seat('seat-leak pass "seat scraped, three turns"')).toEqual([]);
  });

  it('shows the limits of each part number', () => {
    const other = good.replace('254 bar', '224 bar');
    const { missing, text } = certified(`${unit(good)}\n${unit(other, 2, 'A-220')}`);
    expect(missing).toEqual([]);
    expect(text()).toContain('1: 250 to 258 bar; 2: 220 to 228 bar');
  });

  it('tells the customer of concessions', () => {
    const { text } = certified(unit(good), {
      library: [['sign-off by "Bench lead"', 'sign-off by "Bench lead" allow checker-is-doer because "two men only"']],
    });
    expect(text()).toEqual(expect.arrayContaining(['Concessions', 'checker-is-doer', 'two men only']));
  });

  it('of pintle units is held to the limit with a new spring', () => {
    const pintle = (read: string) =>
      certified(
        unit(
          `renewed spring  opening ${read} on PG-250  chatter pass  spray pass  seat-leak pass  back-leak 9 s  ${done}`,
          1,
          'pin-130',
        ),
        { procedure: 'rebuild-pintle' },
      );
    expect(pintle('137 bar').missing).toEqual([]);
    expect(pintle('137 bar').text()).toContain('135 to 141 bar, with new pressure spring');
    expect(pintle('132 bar').missing.map(first)).toEqual([
      'unit 1 pin-130 041: Opening pressure: the last reading, 132 bar, is outside 135 to 141 bar',
    ]);
  });

  it('says about a guarded limit what the gauge may show', () => {
    const lines = good.replace('back-leak 11 s', 'back-leak 11 s with SW-1');
    const { missing, text } = certified(unit(lines), guardedShop);
    expect(missing).toEqual([]);
    expect(text()).toContain('250 to 258 bar; passes from 251 bar to 257 bar on PG-400');
    expect(text().join('\n')).toContain(
      'Acceptance: guarded (limits drawn in by 0.83 of the error of the tool) (Source: Demo).',
    );
  });
});

describe('nothing is invented: it is refused', () => {
  const a = 'unit 1 A-250 041: ';

  test.each<[string, string, string[]]>([
    [
      'with no result',
      done,
      ['Opening pressure', 'Seat leak', 'Chatter', 'Spray', 'Back leak'].map(
        (name) => `${name}: no result is written down`,
      ),
    ],
    [
      'where a last reading is outside',
      good.replace('254 bar', '249 bar'),
      ['Opening pressure: the last reading, 249 bar, is outside 250 to 258 bar'],
    ],
    [
      'where a time is outside',
      good.replace('11 s', '21 s'),
      ['Back leak: the last reading, 21 s, is outside 6 to 20 s'],
    ],
    [
      'where the last verdict is fail',
      good.replace('spray pass', 'spray pass  spray fail'),
      ['Spray: the last verdict is fail'],
    ],
    [
      'where a figure is only said to pass',
      good.replace('back-leak 11 s', 'back-leak pass'),
      ['Back leak: no reading is written down, and the limit is 6 to 20 s'],
    ],
    [
      'where a verdict is only as found',
      good.replace('spray pass', '').replace('seat-leak', 'as found spray pass\n    seat-leak'),
      ['Spray: there are results as found only, and they prove nothing of the rebuilt unit'],
    ],
    [
      'where another shim went in since',
      good.replace(done, `shim in 1.52 mm  torque nut 60 N·m with TW-80  ${done}`),
      ['Opening pressure', 'Seat leak', 'Chatter', 'Spray', 'Back leak'].map(
        (name) =>
          `${name}: the last result is from before setting shim was changed, and says nothing about the unit as it is now`,
      ),
    ],
    [
      'where a needle was renewed since',
      good.replace('spray pass', 'spray pass  renewed needle  torque nut 60 N·m with TW-80'),
      ['Opening pressure', 'Seat leak', 'Chatter', 'Spray'].map(
        (name) =>
          `${name}: the last result is from before needle was changed, and says nothing about the unit as it is now`,
      ),
    ],
    ['where nobody did it', good.replace(done, ''), ['Nobody is named who did it']],
    [
      'where it was done on no day',
      good.replace(' on 2026-10-05', ''),
      ['The day on which A. B. did it is not written down'],
    ],
    [
      'where a gauge was past its date',
      good.replaceAll('2026-10-05', '2027-01-16'),
      ['PG-400 was due for calibration on 2027-01-15, and was used on 2027-01-16'],
    ],
    [
      'where a torque names no wrench',
      good.replace(' with TW-80', ''),
      ['Nozzle nut: the tool that 60 N·m was read with is not written down'],
    ],
    [
      'where a torque is outside',
      good.replace('60 N·m', '70 N·m'),
      ['Nozzle nut torque: 70 N·m is outside 55 to 65 N·m'],
    ],
    [
      'where a tool cannot show it',
      good.replace('254 bar on PG-400', '254 bar on PG-250'),
      ['Opening pressure: PG-250 cannot show 254 bar'],
    ],
    [
      'where the tool reads something else',
      good.replace('254 bar on PG-400', '254 bar on MIC-1'),
      ['Opening pressure: MIC-1 cannot show 254 bar'],
    ],
    [
      'where a part that was measured is outside',
      good.replace(done, `spring-length 30.00 mm with VC-150  ${done}`),
      ['Free length of the spring: the last reading, 30.00 mm, is outside 31.20 to 31.80 mm'],
    ],
    [
      'where a part was rejected',
      good.replace(done, `needle fail "scored"  ${done}`),
      ['Needle: the last verdict is fail'],
    ],
  ])('%s', (_, lines, wanted) => {
    expect(certified(unit(lines), { errors: false }).missing.map(first)).toEqual(wanted.map((word) => a + word));
  });

  it('on the day that a tool is due, it may still be used; the day of the work counts, not a later one', () => {
    expect(one(good.replaceAll('2026-10-05', '2027-01-15'))).toEqual([]);
    expect(one(`${good}\n    done by "C. D." on 2027-06-01`)).toEqual([]);
  });

  it('a measurement of a part that was renewed since says nothing about the new one', () => {
    expect(one(good.replace('renewed spring', 'spring-length 30.00 mm with VC-150  renewed spring'))).toEqual([]);
  });

  it('with a part number that is not known, or units that are all on hold', () => {
    expect(certified(`  unit 1 number unknown serial 1 {\n    ${good}\n  }`).missing.map(first)).toEqual([
      'unit 1 unknown 1: The part number unknown is not one of the procedure, so no limit applies to it',
    ]);
    expect(certified('  unit 1 number A-250 serial 1 on hold "ask"').missing.map(first)).toEqual([
      'the job: No unit is left that could be certified: every one is on hold, or there is none',
    ]);
  });

  it('where the units of a number are too far apart', () => {
    const low = good.replace('254 bar', '250 bar');
    const high = good.replace('254 bar', '257 bar');
    expect(certified(`${unit(low)}\n${unit(high, 2)}`).missing.map(first)).toEqual([
      'the set: Opening pressure across the set, units 1 and 2: the spread is 7 bar, and the limit at most 5 bar',
    ]);
    expect(certified(`${unit(low)}\n${unit(low.replace('250 bar', '224 bar'), 2, 'A-220')}`).missing).toEqual([]);
  });

  it('by a guarded rule: near the end, with no tool, and with a tool about which nothing is known', () => {
    const timed = good.replace('back-leak 11 s', 'back-leak 11 s with SW-1');
    expect(one(timed.replace('254 bar', '257.5 bar'), guardedShop)).toEqual([
      `${a}Opening pressure: the last reading, 257.5 bar on PG-400, is not safely inside 250 to 258 bar by the decision rule`,
    ]);
    expect(one(timed.replace('254 bar on PG-400', '254 bar'), guardedShop)[0]).toContain(
      'the decision rule asks how far',
    );
    const [from, to] = guardedShop.library![0]!;
    expect(one(timed, { library: [[from, to.replace(' within 0.2 s', '')]] })[0]).toContain(
      'the shop does not say how far SW-1 may be off',
    );
  });

  it('says about a spread that it was measured, and whether new springs had settled', () => {
    const settling: Changes = { library: [['250 bar +8 -0, in service', '250 bar +8 -0, settling 3 bar, in service']] };
    const spread = (of: ReturnType<typeof certified>) =>
      of.text().filter((text) => text.includes('across the set, units'));
    const high = good.replace('254 bar', '257 bar');
    expect(spread(certified(`${unit(good)}\n${unit(high, 2)}`))).toEqual([
      'Opening pressure across the set, units 1 and 2: spread 3 bar measured, limit at most 5 bar.',
    ]);
    expect(spread(certified(`${unit(good)}\n${unit(high, 2)}`, settling))).toEqual([
      'Opening pressure across the set, units 1 and 2: spread 3 bar once the new springs have settled, 3 bar as read; limit at most 5 bar.',
    ]);
  });

  it('where a new spring will settle out of the window', () => {
    const settling: Changes = { library: [['250 bar +8 -0, in service', '250 bar +8 -0, settling 3 bar, in service']] };
    const low = good.replace('254 bar', '252 bar');
    expect(one(low, settling)).toEqual([
      `${a}Opening pressure: the last reading, 252 bar, does not allow for the 3 bar that the new spring will lose`,
    ]);
    expect(one(low.replace('renewed spring', ''), settling)).toEqual([]);
  });

  it('of a family that no test proves', () => {
    expect(
      one(good, {
        library: [
          ['  proven by opening, seat-leak, chatter, spray, back-leak ', '  //'],
          [
            '  proven across the set by opening\n  always checked needle, nozzle, nut',
            '  always checked needle, nozzle, nut',
          ],
        ],
      }),
    ).toContain('the job: The family names no test that proves a unit');
  });

  it('with errors in the job; as a draft it is marked, and lists what is missing, whatever is requested', () => {
    const { missing, sheet, text } = certified(unit(`${good.replace('254 bar', '240 bar')}  openin 3 bar`));
    expect(missing[0]).toBe(
      'the job: The procedure or the job has 1 error. Run npx handtight check, and correct what it says.',
    );
    expect(sheet().watermark).toBe('DRAFT');
    expect(text()).toEqual(
      expect.arrayContaining([
        'Draft: this is not a certificate.',
        'What is missing',
        'Opening pressure: the last reading, 240 bar, is outside 250 to 258 bar. Correct the unit and write what was changed and read, or put it on hold.',
        '240 bar ✗',
      ]),
    );
    expect(text().join('\n')).not.toContain('with every test that proves the family passed');
    expect(certified(unit(good)).sheet({ draft: true }).watermark).toBe('DRAFT');
  });
});

describe('a record that cannot be', () => {
  const a = 'unit 1 A-250 041: ';
  const proofs = ['Opening pressure', 'Seat leak', 'Chatter', 'Spray', 'Back leak'];

  test.each<[string, string, string[]]>([
    [
      'names no gauge for a pressure that is judged',
      good.replace('254 bar on PG-400', '254 bar'),
      [
        'Opening pressure: the tool that 254 bar was read with is not written down. If one is found wrong later, nobody knows which units it judged. Write on and the gauge, or with and the tool.',
      ],
    ],
    [
      'names no gauge for what was found',
      good.replace('208 bar on PG-400', '208 bar'),
      [expect.stringContaining('Opening pressure: the tool that 208 bar was read with is not written down.')],
    ],
    [
      'names no micrometer for a shim that the procedure measures with one',
      good.replace(' with MIC-1', ''),
      [expect.stringContaining('Setting shim: the tool that 1.30 mm was read with is not written down.')],
    ],
    [
      'tightens a joint after the tests that prove through it',
      good.replace('   torque nut 60 N·m with TW-80', '').replace(done, `torque nut 60 N·m with TW-80  ${done}`),
      proofs.map(
        (name) =>
          `${name}: the last result is from before nozzle nut was tightened again, which may have moved it. Test it again, and write the result after the torque; if the torque came first, write it first.`,
      ),
    ],
    [
      'tightens a joint before what is under it went in',
      good
        .replace('   torque nut 60 N·m with TW-80', '')
        .replace('    shim in', '    torque nut 60 N·m with TW-80\n    shim in'),
      [
        'Nozzle nut torque: the last torque is from before setting shim was changed, and the joint was opened for that. Write the torque it was tightened to again, after the change.',
      ],
    ],
    [
      'is done before the job came in',
      good.replace('2026-10-05', '2026-09-30'),
      [
        'Done on 2026-09-30, and the job was received on 2026-10-01. Correct the wrong one of the two dates.',
        'Done on 2026-09-30, and the procedure was approved on 2026-10-05: it was done to a text that nobody had approved. Correct the date, or have it looked over by the approved procedure and signed again.',
      ],
    ],
    [
      'is done ten years ahead',
      good.replace('2026-10-05', '2036-10-05'),
      [
        ...['PG-400', 'TW-80', 'MIC-1'].map((tool) =>
          expect.stringContaining(`${tool} was due for calibration on 2027-`),
        ),
        'Done on 2036-10-05, and today is 2027-12-31. Correct the date.',
      ],
    ],
    [
      'is done by one after another, and dated the other way around',
      `${good}\n    opening 253 bar on PG-400\n    done by "C. D." on 2026-10-04`,
      [
        expect.stringContaining('approved on 2026-10-05'),
        'Done on 2026-10-04, and the entry before it says 2026-10-05. Correct the dates, or write the lines in the order in which the work was done.',
      ],
    ],
    [
      'has results that nobody signs for',
      `${good}\n    opening 253 bar on PG-400`,
      [
        'There are results after the last done by: nobody answers for them. Write done by "…" on and the date after them.',
      ],
    ],
    [
      'has a shim that is not in the drawer',
      good.replace('1.50 mm', '1.51 mm'),
      [
        'Setting shim: 1.51 mm is not in shim drawer, 8 mm; the nearest are 1.50 mm and 1.52 mm. Measure it again and correct the size, or add the size to the stock in the shop.',
      ],
    ],
    [
      'goes from 231 to 254 bar on the same shim',
      good.replace('opening 254', 'opening 231 bar on PG-250  opening 254'),
      ['Opening pressure: it failed and then passed, and nothing is written down between the two.'].map((text) =>
        expect.stringContaining(text),
      ),
    ],
    [
      'goes far inside its limit, too',
      good.replace(done, `as found opening 232 bar on PG-400  ${done}`),
      [
        'Opening pressure: it went from 254 bar to 232 bar, and no other shim, new part or torque is written down in between. Write what was changed, in the order in which it was done, or the reason in quotes after the reading.',
      ],
    ],
    [
      'rises on a thinner shim',
      good.replace('renewed spring', 'opening 231 bar on PG-400').replace('shim in 1.50', 'shim in 1.10'),
      [
        'Opening pressure: it went from 231 bar to 254 bar, and that is not what the shim that was fitted in between brings. Check both shims and both readings, and correct what is wrong, or write the reason in quotes after the reading.',
      ],
    ],
    [
      'rises by a third of what the shim brings',
      good.replace('renewed spring', 'opening 231 bar on PG-400').replace('shim in 1.50', 'shim in 1.90'),
      [expect.stringContaining('that is not what the shim that was fitted in between brings')],
    ],
    [
      'is set from what was found with nothing done to it',
      `as found opening 231 bar on PG-400  opening 254 bar on PG-400  ${proven}  ${done}`,
      [expect.stringContaining('Opening pressure: it went from 231 bar to 254 bar, and no other shim')],
    ],
    [
      'fits the same shim again and reads another pressure',
      good
        .replace('renewed spring', 'opening 231 bar on PG-250')
        .replace('shim in 1.50 mm   torque nut 60 N·m with TW-80', 'shim in 1.30 mm'),
      [expect.stringContaining('Opening pressure: it failed and then passed')],
    ],
    [
      'is all as found',
      `as found opening 254 bar on PG-400\n    as found ${proven}\n    ${done}`,
      proofs.map(
        (name) =>
          `${name}: there are results as found only, and they prove nothing of the rebuilt unit. Test it again, and write the result without as found.`,
      ),
    ],
    ['has nothing in it', '', ['Nothing is written down of it. Write what was read and done, or on hold "…" and why.']],
    [
      'says pass and then fail',
      good.replace('opening 254 bar on PG-400', 'opening 254 bar on PG-400  opening pass  opening fail'),
      [expect.stringContaining('Opening pressure: the last verdict is fail.')],
    ],
  ])('%s', (_, lines, wanted) => {
    const own = certified(unit(lines), { errors: false }).missing;
    expect(own).toEqual(wanted.map((word) => (typeof word === 'string' ? a + word : word)));
  });

  test.each<[string, string]>([
    [
      'a reading that says why it moved',
      good.replace(
        'opening 254 bar on PG-400',
        'opening 231 bar on PG-250  opening 254 bar on PG-400, "gauge tap was shut"',
      ),
    ],
    ['the own shim back in, whatever the drawer has', good.replace('1.30 mm', '1.51 mm').replace('1.50 mm', '1.51 mm')],
    ['a reading that repeats within the error of the gauge', good.replace(done, `opening 255 bar on PG-400  ${done}`)],
    ['a seal that goes on at the end', good.replace(done, `renewed washer, dust-seal  ${done}`)],
    ['a time with no watch, where the shop has none', good],
    ['a leak-down timed on the gauge', good.replace('back-leak 11 s', 'back-leak 11 s on PG-400')],
  ])('is not one with %s', (_, lines) => {
    expect(one(lines)).toEqual([]);
  });

  it('has a serial for each unit, once, or says that there is none', () => {
    const none = (serial: string) => certified(`  unit 1 number A-250 ${serial} {\n    ${good}\n  }`);
    expect(none('').missing).toEqual([
      'unit 1 A-250: No serial is written down: nobody could find this unit again. Write serial and what is on the body, or serial none "…" and why it has none.',
    ]);
    expect(none('serial none "ground off"').missing).toEqual([]);
    expect(none('serial none "ground off"').text()).toContain('none (ground off)');
    const twice = certified(`${unit(good)}\n${unit(good, 2).replace('serial 042', 'serial 041')}`, { errors: false });
    expect(twice.missing).toEqual(
      [2, 1].map(
        (place, index) =>
          `unit ${index + 1} A-250 041: Serial 041 is also that of unit ${place}: nobody could say which readings belong to which. Read it again from both bodies.`,
      ),
    );
  });

  it('has a calibration in force on the day, of every tool that is used', () => {
    const gauge = (dates: string) =>
      one(good, {
        library: [
          [
            'graduated 1 bar    at tester      calibrated 2026-01-15 due 2027-01-15',
            `graduated 1 bar    at tester ${dates}`,
          ],
        ],
      });
    // The gauge was calibrated again after the work, and its due date moved on: the work was done while it was overdue.
    expect(gauge('calibrated 2026-10-20 due 2027-10-20')).toEqual([
      `${a}PG-400 was calibrated on 2026-10-20, and was used on 2026-10-05, before that: nothing shows that it was right then`,
    ]);
    expect(gauge('due 2027-10-20')).toEqual([
      `${a}PG-400: the shop does not say from when to when its calibration holds, so nothing shows that it was right on that day`,
    ]);
    expect(gauge('calibrated 2026-01-15')).toEqual([expect.stringContaining('PG-400: the shop does not say')]);
    expect(gauge('calibrated 2026-10-05 due 2026-10-05')).toEqual([]);
    expect(gauge('calibrated 2025-01-15 due 2026-01-15')).toEqual([
      `${a}PG-400 was due for calibration on 2026-01-15, and was used on 2026-10-05`,
    ]);
  });

  it('is not dated later than the day on which it is made out; where nobody knows the day, the future is not judged', () => {
    const { job } = certified(unit(good));
    const on = (day: string | null) => findMissing(job.procedure, job, { diagnostics: [], today: day }).length;
    expect([on('2026-10-05'), on('2026-10-04'), on('2026-09-30'), on(null)]).toEqual([0, 1, 2, 0]);
  });

  it('with a cap that the procedure itself tightens after the tests is one', () => {
    const last: Changes = {
      library: [
        [
          'fit dust-seal, washer\n    send-off',
          'fit dust-seal, washer\n    torque nut to nut-fit with TW-80\n    send-off',
        ],
      ],
    };
    expect(one(good.replace(done, `torque nut 60 N·m with TW-80  ${done}`), last)).toEqual([]);
  });

  it('renews a washer under the nut that the test proves through', () => {
    const inside: Changes = {
      library: [
        ['fit dust-seal, washer', 'fit dust-seal'],
        ['fit shim, spring, seat\n    fit spacer', 'fit shim, spring, seat, washer\n    fit spacer'],
      ],
    };
    expect(one(good.replace(done, `renewed washer  ${done}`), inside)[0]).toContain(
      'Opening pressure: the last result is from before sealing washer was changed',
    );
  });

  it('with readings in two units says their spread in the digits that were read', () => {
    const psi = good.replace('254 bar', '3740 psi');
    expect(certified(`${unit(good.replace('254 bar', '250 bar'))}\n${unit(psi, 2)}`).missing.map(first)).toEqual([
      'the set: Opening pressure across the set, units 1 and 2: the spread is 115 psi, and the limit at most 72 psi',
    ]);
  });

  it('has a job with every unit on hold, or with none', () => {
    expect(certified('').missing.map(first)).toEqual([
      'the job: No unit is left that could be certified: every one is on hold, or there is none',
    ]);
  });
});

describe('what came in', () => {
  it('is judged by the limit in service, in the words of the language', () => {
    const { missing, sheet } = certified(unit(good.replace('208 bar', '196 bar')));
    expect(missing).toEqual([]);
    const found = (language: (typeof languages)[number]) =>
      renderText(sheet({ language }))
        .map(plain)
        .find((text) => text.startsWith('196 bar'));
    expect(languages.map(found)).toEqual(['196 bar ✗', '196 bar ✗', '196 bar ✗']);
  });

  it('has no verdict where nobody gives a limit in service', () => {
    const bare = good.replace('208 bar', '196 bar');
    const { text } = certified(unit(bare), { library: [[', in service at least 200 bar', '']] });
    expect(text()).toContain('196 bar');
  });
});

describe('the spread of a set with new springs', () => {
  const settling: Changes = { library: [['250 bar +8 -0, in service', '250 bar +8 -0, settling 3 bar, in service']] };
  const set = (fresh: number, old: number) =>
    certified(
      `${unit(good.replace('254 bar', `${fresh} bar`))}\n${unit(good.replace('254 bar', `${old} bar`).replace('renewed spring', ''), 2)}`,
      settling,
    );

  it('is certified as it will be when they have settled, and says so', () => {
    const { missing, text } = set(257, 251);
    expect(missing).toEqual([]);
    expect(text()).toContain(
      'Opening pressure across the set, units 1 and 2: spread 3 bar once the new springs have settled, 6 bar as read; limit at most 5 bar.',
    );
  });

  it('is not said about one unit, which has none', () => {
    const { missing, text } = certified(unit(good));
    expect(missing).toEqual([]);
    expect(text().join('\n')).not.toContain('across the set');
  });

  it('is refused where it will then be too wide', () => {
    expect(set(253, 256).missing.map(first)).toEqual([
      'the set: Opening pressure across the set, units 1 and 2: the spread will be 6 bar once the new springs have settled, and the limit is at most 5 bar',
    ]);
  });
});

describe('figures that cannot be', () => {
  const a = 'unit 1 A-250 041: ';

  test.each([
    [
      '254 bar',
      '2540 bar',
      'Opening pressure: 2540 bar is far from 250 to 258 bar, as if the decimal point were misplaced. If 254 bar was meant, correct the figure.',
    ],
    [
      '208 bar',
      '2080 bar',
      'Opening pressure: 2080 bar is far from 250 to 258 bar, as if the decimal point were misplaced. If 208 bar was meant, correct the figure.',
    ],
    [
      '254 bar',
      '25.4 bar',
      'Opening pressure: 25.4 bar is far from 250 to 258 bar, as if the decimal point were misplaced. If 254 bar was meant, correct the figure.',
    ],
    [
      '254 bar',
      '0 bar',
      'Opening pressure: 0 bar cannot have been read. Write the figure, or in words what happened: as found "…" or note "…".',
    ],
    [
      '254 bar',
      '-254 bar',
      'Opening pressure: −254 bar cannot have been read. Write the figure, or in words what happened: as found "…" or note "…".',
    ],
    [
      '254 bar',
      '1000 bar',
      'Opening pressure: 1000 bar is far from 250 to 258 bar, too far to judge anything by it. Correct the figure, or write in words what happened: note "…".',
    ],
    [
      '60 N·m',
      '600 N·m',
      'Nozzle nut: 600 N·m is far from 55 to 65 N·m, as if the decimal point were misplaced. If 60 N·m was meant, correct the figure.',
    ],
    [
      '60 N·m',
      '0 N·m',
      'Nozzle nut: 0 N·m cannot have been read. Write the figure, or in words what happened: as found "…" or note "…".',
    ],
    [
      '1.30 mm',
      '1300 mm',
      'Setting shim: 1300 mm is far from 1.00 to 1.98 mm, as if the decimal point were misplaced. If 1.30 mm was meant, correct the figure.',
    ],
    [
      '1.50 mm',
      '15.0 mm',
      'Setting shim: 15.0 mm is far from 1.00 to 1.98 mm, as if the decimal point were misplaced. If 1.50 mm was meant, correct the figure.',
    ],
    [
      '1.50 mm',
      '-1.50 mm',
      'Setting shim: −1.50 mm cannot have been read. Write the figure, or in words what happened: as found "…" or note "…".',
    ],
    [
      'back-leak 11 s',
      'back-leak 0 s',
      'Back leak: 0 s cannot have been read. Write the figure, or in words what happened: as found "…" or note "…".',
    ],
    [
      '254 bar on PG-400',
      '254 bar on PG-250',
      'Opening pressure: PG-250 cannot show 254 bar. Correct the figure, or name the tool that showed it.',
    ],
    [
      'back-leak 11 s',
      'back-leak 11 s on MIC-1',
      'Back leak: MIC-1 cannot show 150 bar. Correct the figure, or name the tool that showed it.',
    ],
  ])('%s written as %s: reported at its place, and no certificate', (from, to, wanted) => {
    const { missing, diagnostics } = certified(unit(good.replace(from, to)));
    expect(missing).toContain(a + wanted);
    const slips = diagnostics.filter(({ rule }) => rule === 'implausible-result');
    expect(slips.map(({ message, help }) => plain(`${message} ${help}`))).toEqual([wanted]);
  });
});

describe('the demo job', () => {
  const { jobs } = checkFiles(library);
  const job = jobs.find(({ name }) => name === '2198')!;
  const sheet = (more: Partial<Omit<Parameters<typeof buildCertificate>[2], 'today'>>) =>
    buildCertificate(job.procedure, job, {
      paper: 'a4',
      draft: false,
      diagnostics: [],
      today,
      hash: '0'.repeat(64),
      ...more,
    });

  test.each(languages.flatMap((language) => [[language, 'a4'] as const, [language, 'letter'] as const]))(
    'of six units is two pages, and what a customer reads is on the first: %s on %s',
    (language, paper) => {
      const made = sheet({ language, paper });
      expect(made.watermark).toBeNull();
      expect(pdfOf([made])).toMatchObject({ pages: 2, accessible: true, missing: [] });
      expect(renderHtml(made)).toContain(`<html lang="${language}">`);
      expect(renderText(made)).toContain(wordsIn(language).certificate.title);
    },
  );

  it('has a title of its own in each language', () => {
    expect(languages.map((language) => sheet({ language }).blocks.find(({ kind }) => kind === 'heading'))).toEqual([
      { kind: 'heading', text: 'Certificate of rebuild' },
      { kind: 'heading', text: 'Certificado de reconstrucción' },
      { kind: 'heading', text: 'Instandsetzungsbescheinigung' },
    ]);
  });

  it('shows what did not pass at once, and what was done about it', () => {
    const table = sheet({}).blocks.find(
      (block) => block.kind === 'table' && block.title === 'Corrected before release',
    );
    expect(table?.kind === 'table' ? table.rows.map((row) => row.map(({ text }) => plain(text))) : []).toEqual([
      ['2', 'Opening pressure 246 bar ✗', 'Setting shim, fitted 1.38 mm; nozzle nut torque 61 N·m'],
      [
        '4',
        'Opening pressure 252 bar ✓; Seat leak ✗',
        'New nozzle; new needle; setting shim, fitted 1.38 mm; nozzle nut torque 60 N·m',
      ],
    ]);
  });

  it('is signed by who did the work and by who releases it, before the evidence', () => {
    const titles = sheet({}).blocks.flatMap((block) => (block.kind === 'table' ? [block.title] : []));
    expect(titles.slice(-4)).toEqual(['Corrected before release', 'Release', 'Test conditions', 'Test equipment']);
    const release = sheet({}).blocks.find((block) => block.kind === 'table' && block.title === 'Release');
    expect(release?.kind === 'table' ? release.rows.map((row) => row.slice(0, 2).map(({ text }) => text)) : []).toEqual(
      [
        ['Work done', 'R. Abel'],
        ['Work done', 'M. Ortiz'],
        ['Release', ''],
      ],
    );
  });

  it('has a code that says in words what the paper says, and no link', () => {
    const { text } = sheet({}).header.qr;
    expect(text).toContain('Certificate no.: 2198-1\nWork order: 2198\nPrinted from: 000000000000');
    expect(text).toContain('1: 1107, 2: 1108');
    expect(text).not.toContain('://');
  });

  it('has no number and no day while it is a draft; a line for the day where nobody knows it', () => {
    const facts = (more: Partial<Parameters<typeof buildCertificate>[2]>) => {
      const made = buildCertificate(job.procedure, job, {
        paper: 'a4',
        draft: false,
        diagnostics: [],
        today,
        hash: '0',
        ...more,
      });
      const block = made.blocks.find(({ kind }) => kind === 'facts');
      return block?.kind === 'facts' ? block.facts.map(({ label, text }) => `${label}: ${text}`) : [];
    };
    expect(facts({})).toEqual(expect.arrayContaining(['Certificate no.: 2198-1', `Issued on: ${today}`]));
    expect(facts({ issue: { number: 2, reason: 'serial misread' } })).toContain('Certificate no.: 2198-2');
    expect(facts({ draft: true }).join()).not.toMatch(/Certificate no|Issued on/u);
    expect(facts({ today: null })).toContain('Issued on: ');
  });

  it('with more units goes on to further pages, six to a table, each with its heads', () => {
    const units = Array.from({ length: 14 }, (_, index) => ({
      ...job.units[index % 6]!,
      place: String(index + 1),
      serial: String(1107 + index),
    }));
    const made = buildCertificate(
      job.procedure,
      { ...job, units },
      { paper: 'a4', draft: false, diagnostics: [], today, hash: '00' },
    );
    const tables = made.blocks.filter((block) => block.kind === 'table' && block.title.startsWith('Readings'));
    expect(tables).toHaveLength(3);
    expect(made.watermark).toBeNull();
    expect(pdfOf([made]).pages).toBeGreaterThan(1);
  });

  it('has as many units side by side as there is room for their figures', () => {
    const long = job.units.map((one) => ({
      ...one,
      results: one.results.map((result) =>
        result.form === 'reading' && result.name === 'opening' && !result.asFound
          ? { ...result, value: { number: String(Number(result.value.number) * 100), unit: 'kPa' as const } }
          : result,
      ),
    }));
    const made = buildCertificate(
      job.procedure,
      { ...job, units: long },
      { paper: 'a4', draft: false, diagnostics: [], today, hash: '00' },
    );
    expect(made.watermark).toBeNull();
    expect(made.blocks.filter((block) => block.kind === 'table' && block.title.startsWith('Readings'))).toHaveLength(2);
    expect(renderText(made).map(plain)).toContain('25 000 to 25 800 kPa');
  });
});

describe('whatever was written down', () => {
  const { jobs } = checkFiles(library);
  const job = jobs.find(({ name }) => name === '2198')!;
  const [sound] = job.units;
  const { source } = sound!;
  const reading = (name: string, asFound: boolean) => (value: Quantity) => [
    { form: 'reading' as const, name, asFound, value, tool: 'PG-400', watched: null, text: null, source },
  ];
  const bar = fc.integer({ min: 2450, max: 2630 }).map((value): Quantity => ({ number: `${value / 10}`, unit: 'bar' }));
  const line: fc.Arbitrary<Result[]> = fc.oneof(
    bar.map(reading('opening', false)),
    bar.map(reading('opening', true)),
    fc.integer({ min: 1, max: 30 }).map((value): Result[] => [
      {
        form: 'reading',
        name: 'back-leak',
        asFound: false,
        value: { number: `${value}`, unit: 's' },
        tool: null,
        watched: null,
        text: null,
        source,
      },
    ]),
    fc
      .tuple(fc.constantFrom('seat-leak', 'chatter', 'spray', 'opening'), fc.integer({ min: 0, max: 3 }))
      .map(([name, odds]): Result[] => [
        { form: 'verdict', name, asFound: false, passed: odds > 0, watched: null, text: null, source },
      ]),
    fc.constantFrom<Result[]>(
      [{ form: 'shim', part: 'shim', fitted: true, size: { number: '1.50', unit: 'mm' }, tool: null, source }],
      [{ form: 'shim', part: 'shim', fitted: false, size: { number: '1.30', unit: 'mm' }, tool: null, source }],
      [{ form: 'renewed', part: 'needle', source }],
      [{ form: 'renewed', part: 'washer', source }],
    ),
  );
  // A unit that is good to begin with, so that many random ones are, too.
  const unitResults = fc
    .tuple(
      fc.array(line, { maxLength: 6 }),
      fc.constantFrom<readonly Result[]>(sound!.results, sound!.results, []),
      fc.array(line, { maxLength: 2 }),
    )
    .map(([before, middle, after]) => [...before.flat(), ...middle, ...after.flat()]);

  it('it never certifies a unit whose last reading is outside its limit, and never prints what is no number', () => {
    let passed = 0;
    fc.assert(
      fc.property(fc.array(unitResults, { minLength: 1, maxLength: 3 }), (all) => {
        const units = all.map((results, index) => ({
          ...sound!,
          place: String(index + 1),
          serial: String(1107 + index),
          results,
        }));
        const made = { ...job, units };
        const missing = findMissing(job.procedure, made, { diagnostics: [], today });
        const left = (results: readonly Result[], form: 'reading' | 'verdict', name: string) =>
          results.findLast((result) => result.form === form && result.name === name && result.asFound !== true);
        const figure = (results: readonly Result[], name: string) => {
          const last = left(results, 'reading', name);
          return last?.form === 'reading' ? Number(last.value.number) : Number.NaN;
        };
        const openings = all.map((results) => figure(results, 'opening'));
        const good =
          openings.every((value) => value >= 250 && value <= 258) &&
          Math.max(...openings) - Math.min(...openings) <= 5.0001 &&
          all.every((results) => {
            const leak = figure(results, 'back-leak');
            const verdicts = ['seat-leak', 'chatter', 'spray'].map((name) => left(results, 'verdict', name));
            return leak >= 6 && leak <= 20 && verdicts.every((one) => one?.form === 'verdict' && one.passed);
          });
        if (missing.length === 0) {
          passed++;
          expect(good).toBe(true);
        }
        const sheet = buildCertificate(job.procedure, made, {
          paper: 'a4',
          draft: false,
          diagnostics: [],
          today,
          hash: '00',
        });
        expect(sheet.watermark).toBe(missing.length === 0 ? null : 'DRAFT');
        expect(renderText(sheet).join(' ')).not.toMatch(/NaN|undefined|null|Infinity/u);
      }),
      { numRuns: 500, seed: 7 },
    );
    expect(passed).toBeGreaterThan(20);
  });
});
