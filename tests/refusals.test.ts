/** Whatever a certificate is refused for is reported where it is written: each refusal, in a unit that is signed. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkFiles, type SourceFile } from '../language/db/workspace.ts';
import { findMissing } from '../language/documents/certificate/index.ts';
import { type Words, wordsIn } from '../language/i18n/index.ts';
import type { Source } from '../language/model/source.ts';
import { done, good, proven } from './fixtures/certified-unit.ts';
import { libraryFiles } from './library.ts';

const today = '2027-12-31';
const words = wordsIn('en');
const texts = words.certificate.missing;

/** What is reported under another rule, in its own words; and what only a day can tell, which nobody knows while a text is checked. */
const elsewhere: Readonly<Record<string, string | null>> = {
  serialTwice: 'written-twice',
  doneBeforeReceived: 'wrong-date',
  doneInFuture: null,
  receivedInFuture: null,
  hasErrors: null,
};

/** They are not met here: a unit of another kind is an error of the text, and the others are `implausible-result` like `far`. */
const byThemselves = ['otherKind', 'spreadKind', 'overMost', 'beyondAll'];

/** Heads of the table, and words inside of others. */
const noRefusals = ['title', 'where', 'what', 'unit', 'set', 'job', 'errors'];

const met = new Set<string>();
const all = new Set<string>();

/** The refusals of the jobs of a file that no finding in it says. */
function unreported(files: readonly SourceFile[]): string[] {
  const { jobs, diagnostics } = checkFiles(files);
  const job = jobs.find(({ name }) => name === '9')!;
  const own = diagnostics.filter(({ source }) => source.file === job.source.file);
  const errors = own.filter(({ severity }) => severity === 'error');
  return findMissing(job.procedure, job, { diagnostics: errors, today }).flatMap((one) => {
    const keys: string[] = [];
    const recording = new Proxy(texts, {
      get: (of, key: keyof typeof texts) => {
        keys.push(key);
        return of[key];
      },
    });
    const said = one.say({ ...words, certificate: { ...words.certificate, missing: recording } } as Words);
    for (const key of keys) met.add(key);
    const other = keys.map((key) => elsewhere[key]).find((rule) => rule !== undefined);
    const isReported =
      other === null ||
      own.some(({ rule, message, source }) =>
        other === undefined
          ? // Of several at one place one is reported after the other.
            said.startsWith(message) || (rule === one.problem?.rule && beginsAt(source, one.problem.at))
          : rule === other,
      );
    return isReported ? [] : [`${keys}: ${said}`];
  });
}

function beginsAt({ range: { start } }: Source, { range }: Source): boolean {
  return start.line === range.start.line && start.character === range.start.character;
}

const library = libraryFiles().filter(({ uri }) => /^procedures\/(?:[^/]+|shared\/.*|one-spring\/.*)$/u.test(uri));
const changed = (changes: readonly (readonly [string, string])[]) =>
  library.map(({ uri, text }) => ({
    uri,
    text: changes.reduce((all, [from, to]) => all.replaceAll(from, to), text),
  }));
const unit = (lines: string, place = 1, number = 'A-250') =>
  `  unit ${place} number ${number} serial 04${place} {\n    ${lines}\n  }\n`;
const job = (units: string) =>
  `job 9 "Pair" of rebuild-one-spring at bench-two\n  customer "Somebody"   received 2026-10-01\n{\n${units}}\n`;
const but = (from: string, to: string) => good.replace(from, to);

type Changes = readonly (readonly [string, string])[];
const guarded: Changes = [
  [
    'air below 30 psi',
    'acceptance guarded source "Demo"\n  tool SW-1 "Stopwatch" range 0..60 s within 0.2 s calibrated 2026-02-01 due 2027-02-01',
  ],
];
const dates = 'graduated 1 bar    at tester      calibrated 2026-01-15 due 2027-01-15';
const gauge = (to: string): Changes => [[dates, `graduated 1 bar    at tester ${to}`]];
const settling: Changes = [['250 bar +8 -0, in service', '250 bar +8 -0, settling 3 bar, in service']];
const timed = but('back-leak 11 s', 'back-leak 11 s with SW-1');

describe('a refusal of the certificate of a set of nozzles', () => {
  it.each<[string, string, Changes?]>([
    ['empty', ''],
    ['empty', '  unit 1 number A-250 serial 1 on hold "ask"\n'],
    ['number', unit(good, 1, 'unknown')],
    ['noSerial', `  unit 1 number A-250 {\n    ${good}\n  }\n`],
    ['serialTwice', unit(good) + unit(good, 2).replace('serial 042', 'serial 041')],
    ['nothing', `${unit(good)}  unit 2 number A-250 serial 042\n`],
    ['noResult', unit(but('chatter pass', ''))],
    ['onlyFound', unit(but('spray pass', '').replace('seat-leak', 'as found spray pass\n    seat-leak'))],
    ['noReading', unit(but('back-leak 11 s', 'back-leak pass'))],
    ['outside', unit(but('254 bar', '249 bar'))],
    ['failed', unit(but('spray pass', 'spray fail'))],
    ['stale', unit(but('spray pass', 'spray pass  renewed needle  torque nut 60 N·m with TW-80'))],
    [
      'tightened',
      unit(but('   torque nut 60 N·m with TW-80', '').replace(done, `torque nut 60 N·m with TW-80  ${done}`)),
    ],
    [
      'torqueStale',
      unit(
        but('   torque nut 60 N·m with TW-80', '').replace(
          '    shim in',
          '    torque nut 60 N·m with TW-80\n    shim in',
        ),
      ),
    ],
    ['again', unit(but(done, `again back-leak\n    ${done}`))],
    ['passedAfterFail', unit(but('opening 254', 'opening 231 bar on PG-250  opening 254'))],
    ['contrary', unit(but('renewed spring', 'opening 231 bar on PG-400').replace('shim in 1.50', 'shim in 1.10'))],
    ['jump', unit(`as found opening 231 bar on PG-400  opening 254 bar on PG-400  ${proven}  ${done}`)],
    ['torque', unit(but('60 N·m', '70 N·m'))],
    ['zero', unit(but('254 bar', '0 bar'))],
    ['hasErrors', unit(but('254 bar', '0 bar'))],
    ['slip', unit(but('254 bar', '2540 bar'))],
    ['far', unit(but('254 bar', '1000 bar'))],
    ['notInStock', unit(but('1.50 mm', '1.51 mm'))],
    ['wrongTool', unit(but('254 bar on PG-400', '254 bar on PG-250'))],
    ['noTool', unit(but('254 bar on PG-400', '254 bar'))],
    ['waiting', unit(but('renewed spring', 'waiting for washer since 2026-10-02'))],
    ['sentOut', unit(but('renewed spring', 'sent-out on 2026-10-02 "Plating of the nut"'))],
    ['noDate', unit(but(' on 2026-10-05', ''))],
    ['noDone', unit(but(done, ''))],
    ['unsigned', unit(`${good}\n    opening 254 bar on PG-400`)],
    ['doneBeforeReceived', unit(but('2026-10-05', '2026-09-30'))],
    ['doneUnapproved', unit(but('2026-10-05', '2026-10-04'))],
    ['doneOutOfOrder', unit(`${good}\n    opening 253 bar on PG-400\n    done by "C. D." on 2026-10-04`)],
    ['doneInFuture', unit(but('2026-10-05', '2036-10-05'))],
    ['overdue', unit(but('2026-10-05', '2027-01-16'))],
    ['spread', unit(but('254 bar', '250 bar')) + unit(but('254 bar', '257 bar'), 2)],
    ['noCalibration', unit(good), gauge('')],
    ['outOfUse', unit(good), gauge('calibrated 2026-01-15 due 2027-01-15 out of use since 2026-10-01')],
    ['notYetCalibrated', unit(good), gauge('calibrated 2026-10-20 due 2027-10-20')],
    ['outsideGuarded', unit(timed.replace('254 bar', '257.5 bar')), guarded],
    ['noToolForRule', unit(timed.replace('254 bar on PG-400', '254 bar')), guarded],
    ['noAccuracy', unit(timed), [[guarded[0]![0], guarded[0]![1].replace(' within 0.2 s', '')]]],
    ['settles', unit(but('254 bar', '252 bar')), settling],
    [
      'spreadSettled',
      unit(but('254 bar', '254 bar')) + unit(but('254 bar', '257 bar').replace('renewed spring', ''), 2),
      settling,
    ],
    [
      'noProof',
      unit(good),
      [
        ['  proven by opening, seat-leak, chatter, spray, back-leak ', '  //'],
        ['  proven across the set by opening\n  always checked needle', '  always checked needle'],
      ],
    ],
    ['noTolerance', unit(good), [['250 bar +8 -0, in service at least 200 bar', '250 bar']]],
    ['noSpread', unit(good) + unit(good, 2), [['across the set opening', '// across the set opening']]],
  ])('is reported: %s', (key, units, changes = []) => {
    met.clear();
    expect(unreported([...changed(changes), { uri: 'job.rebuild', text: job(units) }])).toEqual([]);
    expect([...met]).toContain(key);
    all.add(key);
  });
});

/** The tester has a master, which the procedure reads. */
const mastered: Changes = [
  ['  // Torque:', '  master M-1 "Master nozzle" at tester within 250 bar ±2\n  // Torque:'],
  ['    test opening ', '    read M-1 with PG-400\n    test opening '],
];
const check = 'M-1 250.5 bar on PG-400 by "R. A." on 2026-10-05';
const corpus = (file: string, changes: Changes = []) => {
  const read = (uri: string) => ({ uri, text: readFileSync(new URL(`corpus/${uri}`, import.meta.url), 'utf8') });
  const shop = read('shop.rebuild');
  const own = read(`${file}.rebuild`);
  return [
    { ...shop, text: shop.text.replaceAll(/ due (\d{4})/gu, ' calibrated 2026-01-10 due $1') },
    { ...own, text: changes.reduce((text, [from, to]) => text.replaceAll(from, to), own.text) },
  ];
};
const pump = `phasing 240.1, 120.2, 300.0, 59.9, 180.3 cam °
    delivery full 92.1, 91.5, 92.0, 91.8, 92.3, 91.9 mL on GC-100
    delivery torque 96.0, 95.5, 96.2, 95.8, 96.4, 95.9 mL on GC-100
    delivery idle 14.0, 13.5, 14.5, 14.0, 13.8, 14.1 mL on GC-100
    delivery starting 26.0, 25.5, 26.5, 26.0, 25.8, 26.1 mL on GC-100
    governor begins 1042 rpm with TM-1   governor ends 1118 rpm with TM-1
    ${done}`;
const turbo = `balance 0.30 g·mm at turbine with BAL-1   balance compressor 0.22 g·mm with BAL-1
    sheet "00417"
    travel begins 1.0 mm with SG-10   travel half 5.8 mm with SG-10   travel ends 10.4 mm with SG-10
    ${done}`;
const wide = ['1040 rpm ±15', '1040 rpm ±100'] as const;

it.each<[string, readonly SourceFile[], string]>([
  ['checkOutside', changed(mastered), job(`  intake {\n    ${check.replace('250.5', '253')}\n  }\n${unit(good)}`)],
  ['checkUnsigned', changed(mastered), job(`  intake {\n    ${check.replace(' by "R. A."', '')}\n  }\n${unit(good)}`)],
  ['notChecked', changed(mastered), job(unit(good))],
  [
    'noVerdict',
    changed([['read pressure within opening   note', 'read pressure within opening  accept "crisp"   note']]),
    job(unit(good)),
  ],
  ['receivedInFuture', library, job(unit(good)).replace('2026-10-01', '2036-10-01')],
  [
    'placesApart',
    corpus('pump-phased-and-calibrated-by-a-table'),
    `job 9 of calibrate-six at corpus-shop {\n  unit 1 number P-6 serial 0411 {\n    ${pump.replace('14.0, 13.5, 14.5', '12.2, 13.5, 15.6')}\n  }\n}\n`,
  ],
  [
    'notAbove',
    corpus('pump-phased-and-calibrated-by-a-table', [wide]),
    `job 9 of calibrate-six at corpus-shop {\n  unit 1 number P-6 serial 0411 {\n    ${pump.replace('1042', '1120')}\n  }\n}\n`,
  ],
  [
    'notBelow',
    corpus('pump-phased-and-calibrated-by-a-table', [wide, ['above begins', 'below begins']]),
    `job 9 of calibrate-six at corpus-shop {\n  unit 1 number P-6 serial 0411 {\n    ${pump}\n  }\n}\n`,
  ],
  [
    'noWords',
    corpus('turbocharger-balanced-at-two-planes'),
    `job 9 of balance-turbo at corpus-shop {\n  unit 1 number T-1 serial 77 {\n    ${turbo}\n  }\n}\n`,
  ],
])('is reported in other jobs: %s', (key, files, text) => {
  met.clear();
  expect(unreported([...files, { uri: 'job.rebuild', text }])).toEqual([]);
  expect([...met]).toContain(key);
  all.add(key);
});

it('is tried for every refusal that there is', () => {
  const keys = Object.keys(texts).filter((key) => !noRefusals.includes(key));
  expect(keys.filter((key) => !all.has(key) && !byThemselves.includes(key))).toEqual([]);
});
