import { describe, expect, it } from 'vitest';
import { wholeExample } from '../../../../tests/fixtures/example-base.ts';
import { check, checkExample } from '../../../../tests/fixtures/example-pages.ts';
import { instead, procedureWith } from '../../../../tests/fixtures/sound-procedure.ts';
import { Workspace } from '../../../db/workspace.ts';
import { fullMessage } from '../../../model/diagnostic.ts';
import { rulesByArea } from '../../index.ts';

const own = new Set(rulesByArea.traceability.map((rule) => rule.code));

/** What the rules of this area find in a text. */
function diagnostics(text: string) {
  return check(text).diagnostics.filter(({ rule }) => own.has(rule));
}

/** Each finding as `step rule`. */
function found(text: string): string[] {
  return diagnostics(text).map(({ rule, step }) => `${step ?? '–'} ${rule}`);
}

const sign = '      sign-off by "Bench lead"\n';

describe('step-after-sign-off', () => {
  it('leaves alone closing, packing and sending off', () => {
    const after = `${sign}      seal nut "Lead seal"\n      pack "One bag to a unit"\n      photo\n      do "Put the sheet into the bag"\n      send-out for "the customer"\n`;
    expect(found(procedureWith({ finish: instead(sign, after) }))).toEqual([]);
    const cap = '      cap inlet, tip\n';
    expect(found(procedureWith({ finish: (text) => instead(sign, sign + cap)(instead(cap, '')(text)) }))).toEqual([]);
  });

  it('leaves alone a stage that is signed by who did it', () => {
    const build = instead('      unclamp body\n', '      unclamp body\n      sign-off by "Fitter"\n');
    expect(found(procedureWith({ build }))).toEqual([]);
  });

  it('is one finding for a signature that came too early', () => {
    const early = instead('      connect inlet\n', `${sign}      connect inlet\n`);
    expect(found(procedureWith({ prove: early, finish: instead(sign, '') }))).toEqual(['7.2 step-after-sign-off']);
  });
});

describe('mark-not-traceable', () => {
  const marked = (mark: string) => procedureWith({ dress: instead('mark body with number, serial', mark) });

  it.each([
    'mark body with serial',
    'mark body "Job number on the flat"',
    'mark body "Job and place in the set"',
    'mark nut "Match mark to the holder"\n      mark body with number',
  ])('leaves alone: %s', (mark) => {
    expect(found(marked(mark))).toEqual([]);
  });

  it('is one finding for a mark that leads nowhere', () => {
    expect(found(marked('mark body'))).toEqual(['4.2 mark-not-traceable']);
    expect(found(marked('mark body "Paint dot"\n      mark nut "Paint dot"'))).toEqual(['4.2 mark-not-traceable']);
  });

  it('uses the marks of each part number', () => {
    const [diagnostic, ...others] = diagnostics(
      marked('only A-250 { mark body with number }\n      only A-220 { mark body "Paint dot" }'),
    );
    expect(others).toEqual([]);
    expect(fullMessage(diagnostic!)).toMatch(/Only for A-220\.$/u);
  });
});

describe('unit-not-tagged', () => {
  const untagged = (text: string) => text.replace('receive    tag', 'receive');

  it('is found at the first place where it can be mixed up', () => {
    expect(found(procedureWith({ receive: untagged }))).toEqual(['3.6 unit-not-tagged']);
  });

  it('leaves alone a unit that is marked before it is taken apart', () => {
    const early = (text: string) =>
      `${untagged(text)}`.replace('clean outside', 'clean outside\n      mark body with serial');
    expect(found(procedureWith({ receive: early }))).toEqual([]);
  });

  it('leaves alone a unit whose parts stay beside it', () => {
    const beside = (text: string) => text.replace(' at tank "Own basket, own number"', ' "In its own tray"');
    expect(
      check(procedureWith({ receive: untagged, teardown: beside })).diagnostics.filter(
        ({ rule }) => rule === 'unit-not-tagged',
      ),
    ).toEqual([]);
  });

  it('is found where it is put with the rest of the set', () => {
    const text = procedureWith({
      receive: untagged,
      teardown: instead(' at tank "Own basket, own number"', ' "In its own tray"'),
      dress: (dress) => `${dress.replace('at wheel', 'at wheel, the set together')}`,
    });
    expect(found(text).filter((line) => line.endsWith('unit-not-tagged'))).toEqual(['4.1 unit-not-tagged']);
  });

  it('is found on the way of a repair only', () => {
    // Tagged late: a unit that the first check sends away has no tag yet.
    const text = procedureWith({
      receive: (receive) =>
        untagged(receive).replace(
          'clean outside',
          'clean outside\n      check body "No crack"  on fail aside (once)\n      tag',
        ),
      repairs: (repairs) =>
        `${repairs}\n    repair aside {\n      do "Stop the crack"\n      send washer to tank\n    }`,
    });
    const [diagnostic] = diagnostics(text).filter(({ rule }) => rule === 'unit-not-tagged');
    expect(fullMessage(diagnostic!)).toContain('fails and aside (R2) is done');
  });
});

describe('reading-not-recorded', () => {
  it('leaves alone other work in free words, and notes beside a box', () => {
    const shim = instead(
      'measure shim with MIC-1',
      'measure shim with MIC-1  note "Write down the highest of three"\n      do "Write the number on the tray"',
    );
    expect(found(procedureWith({ teardown: shim }))).toEqual([]);
  });
});

describe('checker-is-doer', () => {
  const hold = (who: string) => instead('      unclamp body\n', `      unclamp body\n      hold-for "${who}"\n`);
  const doer = (text: string) => found(text).filter((line) => line.endsWith('checker-is-doer'));

  it('leaves alone a hold for somebody who signs another stage', () => {
    expect(doer(procedureWith({ build: hold('Bench lead') }))).toEqual([]);
  });

  it('is found whatever the capitals', () => {
    const signed = (text: string) => hold('fitter')(text).replace(/ {4}\}$/u, '      sign-off by "Fitter"\n    }');
    expect(doer(procedureWith({ build: signed }))).toEqual(['6.9 checker-is-doer']);
  });
});

describe('sent-out-not-booked-in', () => {
  it('leaves alone a unit that comes back before it is tested', () => {
    const dress = instead('buff body', 'buff body\n      send-out for "plating"\n      book-in');
    expect(found(procedureWith({ dress }))).toEqual([]);
  });

  it('is found where it is tested without having come back', () => {
    const dress = instead('buff body', 'buff body\n      send-out for "plating"');
    expect(found(procedureWith({ dress }))).toEqual(['4.2 sent-out-not-booked-in']);
  });
});

describe('not-approved', () => {
  it.each([
    [' approved by "Works manager" on 2026-10-05', '', 'no approval'],
    [' on 2026-10-05', '', 'no approval date'],
    [' revision A', '', 'no revision'],
  ])('is found without%s', (words, put, message) => {
    const [diagnostic, ...others] = diagnostics(procedureWith({ head: instead(words, put) }));
    expect(others).toEqual([]);
    expect(diagnostic).toMatchObject({ rule: 'not-approved' });
    expect(fullMessage(diagnostic!)).toContain(message);
  });
});

describe('implausible-result', () => {
  const job = (lines: string, change: Parameters<typeof procedureWith>[0] = {}) =>
    diagnostics(
      `${procedureWith(change)}\njob 7 of example at bench {\n  unit 1 number A-250 serial 041 {\n    ${lines}\n  }\n}\n`,
    ).flatMap(({ rule }) => (rule === 'implausible-result' ? [rule] : []));
  const stacks = { shop: instead('by 0.05 mm', 'by 0.05 mm  stacks of two') };
  const slipped = ['implausible-result'];

  it.each([
    ['a unit that came in dead', 'as found opening 12 bar on PG-400', {}],
    ['a reading that is only wrong', 'opening 180 bar on PG-400', {}],
    ['a shim of another maker that came out', 'shim out 1.37 mm', {}],
    ['the own shim back in', 'shim out 1.37 mm  shim in 1.37 mm', {}],
    ['a shim written in another unit', 'shim in 1450 µm', {}],
    ['two shims where two may lie on each other', 'shim in 2.45 mm', stacks],
    ['two of the thickest', 'shim out 3.90 mm', stacks],
    ['a torque through a wrench that nobody names', 'torque nut 61 N·m', {}],
    ['a torque in another unit', 'torque nut 44 lbf·ft with TW-80', {}],
  ])('leaves alone %s', (_, lines, change) => {
    expect(job(lines, change)).toEqual([]);
  });

  it.each([
    ['shim in 2.45 mm', {}],
    ['shim in 4.00 mm', stacks],
    ['shim in 1.47 mm', {}],
    ['torque nut 600 N·m', {}],
    ['torque nut 6.0 N·m', {}],
    ['torque nut 12 N·m with TW-80', {}],
    ['opening 25.4 bar', {}],
    ['opening 410 bar on PG-400', {}],
    ['opening 410 bar', {}],
  ])('is found in %s', (lines, change) => {
    expect(job(lines, change)).toEqual(slipped);
  });

  it('is found in a shim over what the procedure allows', () => {
    const never = { repairs: instead('to opening by shim-rate', 'to opening by shim-rate never above 1.60 mm') };
    expect(job('shim in 1.65 mm', never)).toEqual(slipped);
    expect(job('shim in 1.60 mm', never)).toEqual([]);
  });
});

describe('what keeps a job from being certified', () => {
  const judged = (lines: string, change: Parameters<typeof procedureWith>[0] = {}) =>
    diagnostics(
      `${procedureWith(change)}\njob 7 of example at bench received 2026-10-05 {\n  unit 1 number A-250 serial 041 {\n${lines}\n  }\n}\n`,
    )
      // The shop of the examples gives no dates.
      .filter(({ rule }) => rule !== 'calibration-not-dated')
      .map(({ rule, source }) => `${source.range.start.character} ${rule}`);
  const torque = '    shim in 1.45 mm  torque nut 60 N·m with TW-80\n';
  const done = '    done by "A. B." on 2026-10-06\n';

  it.each([
    ['nothing yet', ''],
    ['a unit as it came in', '    as found opening 190 bar on PG-400\n'],
    ['a unit that was taken apart and signed', `    as found opening 190 bar on PG-400\n${done}`],
    ['a failure that was put right', `    opening 231 bar on PG-400\n${torque}    opening 254 bar on PG-400\n${done}`],
    [
      'work over several days',
      `    opening 231 bar on PG-400\n${done}${torque}    opening 254 bar on PG-400\n    done by "C. D." on 2026-10-07\n`,
    ],
    ['a shim that the unit came with', '    shim out 1.30 mm with MIC-1\n'],
    ['an exact end of the limit', `${torque}    opening 258 bar on PG-400\n${done}`],
    ['a remark', '    as found "light rust"\n    note "Tip blued"\n'],
  ])('is not: %s', (_, lines) => {
    expect(judged(lines)).toEqual([]);
  });

  it.each([
    ['one step over', `${torque}    opening 259 bar on PG-400\n`, ['4 result-fails']],
    ['a fail that is last', '    opening fail\n', ['4 result-fails']],
    [
      'torque after the test',
      `    opening 254 bar on PG-400\n    torque nut 60 N·m with TW-80\n`,
      ['4 result-from-before'],
    ],
    ['no gauge', `${torque}    opening 254 bar\n${done}`, ['4 tool-not-written-down']],
    [
      'a day before the last',
      `${torque}    opening 254 bar on PG-400\n    done by "A. B." on 2026-10-07\n${done}`,
      ['4 done-on-wrong-day'],
    ],
    ['no day', `${torque}    opening 254 bar on PG-400\n    done by "A. B."\n`, ['4 done-on-wrong-day']],
    ['nobody', `${torque}    opening 254 bar on PG-400\n`, ['7 nobody-answers']],
  ])('is: %s', (_, lines, expected) => {
    expect(judged(lines)).toEqual(expected);
  });

  it('is never reported in the procedure, and leaves its sheet alone', () => {
    const { procedures } = check(
      `${procedureWith({})}\njob 7 of example at bench {\n  unit 1 number A-250 serial 041 {\n    opening 259 bar\n  }\n}\n`,
    );
    expect(procedures.flatMap((one) => one.diagnostics)).toEqual([]);
  });
});

describe('superseded-revision', () => {
  const job = (revision: string, units: string) => found(`job 7 of kept revision ${revision} at bench {\n${units}}\n`);
  const done = (on: string) => `  unit 1 number A-250 serial 0411 {\n    done by "A. Hand" on ${on}\n  }\n`;

  it.each([
    ['B', '  unit 1 number A-250 serial 0411\n'],
    ['A', done('2026-03-02')],
    ['A', `${done('2026-02-01')}  unit 2 number A-250 serial 0412 on hold "Body cracked"\n`],
  ])('leaves alone: revision %s, %j', (revision, units) => {
    expect(job(revision, units)).not.toContain('– superseded-revision');
  });

  it.each([
    done('2026-03-03'),
    `${done('2026-02-01')}  unit 2 number A-250 serial 0412\n`,
    '  unit 1 number A-250 serial 0411 on hold "Body cracked"\n',
  ])('reports a job that is still to be done: %j', (units) => {
    expect(job('A', units)).toContain('– superseded-revision');
  });
});

describe('serial-in-two-jobs', () => {
  const job = (name: string, received: string, unit: string) =>
    `job ${name} of example at bench${received === '' ? '' : ` received ${received}`} {\n  unit ${unit}\n}\n`;
  const unit = (serial = '0411', number = 'number A-250') => `1 ${number} serial ${serial}`;
  const done = (on: string, line = 'opening 254 bar on PG-400') =>
    `${unit()} {\n    ${line}\n    done by "A. Hand" on ${on}\n  }`;
  const places = (...jobs: string[]) =>
    checkExample(jobs.join(''))
      .diagnostics.filter(({ rule }) => rule === 'serial-in-two-jobs')
      .map(({ message }) => /in job (\S+) too/u.exec(message)![1]);

  it('is reported where it came in later, and in both where nobody can say', () => {
    const early = job('7', '2026-03-02', unit());
    expect(places(early, job('8', '2026-03-09', unit()))).toEqual(['7']);
    expect(places(job('8', '2026-03-09', unit()), early)).toEqual(['7']);
    expect(places(early, job('8', '', unit()))).toEqual(['8', '7']);
    expect(places(early, job('8', '2026-03-02', unit()))).toEqual(['8', '7']);
  });

  it.each([
    ['another serial', job('8', '2026-03-09', unit('0412'))],
    ['another part number', job('8', '2026-03-09', unit('0411', 'number A-251'))],
    ['on hold', job('8', '2026-03-09', `${unit()} on hold "In job 7"`)],
    ['done before the other came in', job('8', '2026-02-09', done('2026-02-12'))],
    ['done on the day on which the other came in', job('8', '2026-02-09', done('2026-03-02'))],
  ])('leaves alone: %s', (_, other) => {
    expect(places(job('7', '2026-03-02', unit()), other)).toEqual([]);
  });

  it('leaves alone one that came in on an unknown day, beside one that is done', () => {
    expect(places(job('7', '', unit()), job('8', '2026-02-09', done('2026-03-12')))).toEqual([]);
  });

  it.each([
    ['only taken apart and signed', job('8', '2026-02-09', done('2026-02-12', 'as found opening 214 bar on PG-400'))],
    ['done after the other came in', job('8', '2026-02-09', done('2026-03-03'))],
    ['of an unknown number', job('8', '2026-02-09', unit('0411', 'number unknown'))],
    ['in quotes, with a space', job('8', '2026-02-09', unit('"0411 "'))],
  ])('is found: %s', (_, other) => {
    expect(places(job('7', '2026-03-02', unit()), other)).toEqual(['8']);
  });

  it('is found between files, and goes with the other job', () => {
    const [base, own] = wholeExample(job('7', '2026-03-02', unit())).text.split(/(?=^job )/mu);
    const workspace = new Workspace();
    const of = (other: string) =>
      workspace
        .check([
          { uri: 'base', text: base! },
          { uri: 'seven', text: own! },
          { uri: 'eight', text: job('8', '2026-03-01', other) },
        ])
        .diagnostics.filter(({ rule }) => rule === 'serial-in-two-jobs')
        .map(({ source, related }) => `${source.file} → ${related?.[0]?.source.file}`);
    expect(of(unit())).toEqual(['seven → eight']);
    expect(of(unit('0412'))).toEqual([]);
    expect(of(`${unit()} {\n  }\n  unit 2 number A-250 serial 0413`)).toEqual(['seven → eight']);
    expect(of(`${unit()} on hold "In job 7"`)).toEqual([]);
  });
});

describe('what is missing in a line that cannot be read', () => {
  const job = (unit: string) =>
    checkExample(
      `job 7 of example at bench {\n  unit 1 number A-250 ${unit}\n    done by "A. B." on 2026-10-05\n  }\n}\n`,
    )
      .diagnostics.map(({ rule }) => rule)
      .filter((rule) => own.has(rule));

  it('is not missed where a tool or the serial is there, and misspelled', () => {
    expect(job('serial 0411 {\n    opening 254 bar')).toContain('tool-not-written-down');
    expect(job('serial 0411 {\n    opening 254 bar on PG-40')).not.toContain('tool-not-written-down');
    expect(job('{\n    opening 254 bar on PG-400')).toContain('serial-not-written-down');
    expect(job('seril 0411 {\n    opening 254 bar on PG-400')).not.toContain('serial-not-written-down');
  });
});
