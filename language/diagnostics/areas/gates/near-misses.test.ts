import { describe, expect, it } from 'vitest';
import { check } from '../../../../tests/fixtures/example-pages.ts';
import { instead, procedureWith } from '../../../../tests/fixtures/sound-procedure.ts';
import { fullMessage } from '../../../model/diagnostic.ts';
import { rulesByArea } from '../../index.ts';

const own = new Set(rulesByArea.gates.map((rule) => rule.code));

/** What the rules of this area find in a text. A near-miss is correct practice: nothing is found. */
function diagnostics(text: string) {
  return check(text).diagnostics.filter(({ rule }) => own.has(rule));
}

/** Each finding as `step rule`. */
function found(text: string): string[] {
  return diagnostics(text).map(({ rule, step }) => `${step ?? '–'} ${rule}`);
}

const one = (text: string, rule: string) => diagnostics(text).filter((diagnostic) => diagnostic.rule === rule);

const opening = '      test opening  read pressure within opening  on fail reshim (3 times)\n';
const seat =
  '      test seat-leak  hold 20 bar below opening for 10 s  accept "no drop"  source "Example sheet"  on fail reshim (3 times)\n';
const relieve = '      relieve    disconnect inlet\n';
const proven = (by: string) => instead('proven by opening', `proven by ${by}`);

describe('gate-missing', () => {
  const slides = '      check needle slides "Falls by its own weight"  on fail renew nozzle, needle\n';
  const build = instead('      clamp body\n', `${slides}      rinse nozzle, needle in cal-oil\n      clamp body\n`);
  const missing = (by: string) => one(procedureWith({ family: proven(`opening, ${by}`), build }), 'gate-missing');

  it('leaves alone a part that is proven by a check of it', () => {
    expect(missing('needle')).toEqual([]);
  });

  it('is not met by a check of a part whose name only holds that of the proof', () => {
    expect(missing('check')).toHaveLength(1);
    // It may be a slip for the needle: then that alone is said.
    expect(check(procedureWith({ family: proven('opening, need'), build })).diagnostics.map(fullMessage)).toEqual([
      'No test is called need. Did you mean needle?',
    ]);
  });
});

describe('gate-out-of-order', () => {
  it('leaves alone a test that is run again, or once too early', () => {
    const family = proven('opening, seat-leak');
    expect(found(procedureWith({ family, prove: instead(opening, opening + seat + opening) }))).toEqual([]);
    const early = seat.replace('20 bar below opening', '230 bar ±5');
    expect(found(procedureWith({ family, prove: instead(opening, early + opening + early) }))).toEqual([]);
  });

  it('leaves alone a check or a setting, which are no tests, and tests that the family does not name', () => {
    const check = '      check needle slides "Falls by its own weight"  on fail renew nozzle, needle\n';
    const build = instead('      clamp body\n', `${check}      rinse nozzle, needle in cal-oil\n      clamp body\n`);
    expect(one(procedureWith({ family: proven('opening, needle'), build }), 'gate-out-of-order')).toEqual([]);
    expect(found(procedureWith({ prove: instead(opening, opening + seat) }))).toEqual([]);
  });

  it('is one finding for two tests that changed places', () => {
    const other = seat.replace('20 bar below opening', '230 bar ±5');
    const text = procedureWith({ family: proven('opening, seat-leak'), prove: instead(opening, other + opening) });
    expect(found(text)).toEqual(['7.4 gate-out-of-order']);
  });

  it('is one finding with the reading that is missing then', () => {
    const text = procedureWith({ family: proven('opening, seat-leak'), prove: instead(opening, seat + opening) });
    expect(found(text)).toEqual(['7.3 reading-not-taken-yet']);
  });

  it('is one finding for one test that went to the front, however many it passed', () => {
    const other = seat.replace('20 bar below opening', '230 bar ±5');
    const spray = '      test spray  with gauge shut  accept "even"  on fail reshim (3 times)\n';
    const family = proven('opening, seat-leak, spray');
    expect(found(procedureWith({ family, prove: instead(opening, spray + opening + other) }))).toEqual([
      '7.3 gate-out-of-order',
    ]);
  });

  it('uses the tests of each part number', () => {
    const only = (number: string, test: string) => `      only ${number} {\n${test}      }\n`;
    const other = seat.replace('20 bar below opening', '230 bar ±5');
    const prove = only('A-250', opening + other) + only('A-220', opening + other);
    const text = procedureWith({ family: proven('opening, seat-leak'), prove: instead(opening, prove) });
    expect(found(text)).toEqual([]);
  });
});

describe('gate-in-repair', () => {
  it('leaves alone what is read, measured, checked or set in a repair', () => {
    const repairs = instead(
      '      choose shim',
      '      measure shim with MIC-1\n      check spring "No crack"  on fail renew spring (once)\n      choose shim',
    );
    expect(one(procedureWith({ repairs }), 'gate-in-repair')).toEqual([]);
  });

  it('is one finding, where the stages have no such test either', () => {
    const repairs = (text: string) => instead('      close\n    }', `      close\n${opening}    }`)(text);
    const text = procedureWith({
      prove: instead(opening, '      test spray  with gauge shut  accept "even"  on fail reshim (3 times)\n'),
      repairs,
    });
    const rules = found(text).map((line) => line.split(' ')[1]);
    expect(rules).toContain('gate-in-repair');
    expect(rules).not.toContain('gate-missing');
    expect(rules).not.toContain('gate-without-fail-path');
  });
});

describe('repair-never-returns', () => {
  it('leaves alone repairs that send the unit on, counted', () => {
    const repairs = instead(
      '      choose shim',
      '      check spring "No crack"  on fail other-spring (once)\n      choose shim',
    );
    const other = (text: string) =>
      `${repairs(text)}\n    repair other-spring {\n      renew spring ready to fit\n      close\n    }`;
    expect(one(procedureWith({ repairs: other }), 'repair-never-returns')).toEqual([]);
  });

  it('leaves alone a repair that sends the unit out and books it in again', () => {
    const repairs = instead('      choose shim', '      send-out for "plating"\n      book-in\n      choose shim');
    expect(one(procedureWith({ repairs }), 'repair-never-returns')).toEqual([]);
  });
});

describe('reading-not-taken-yet', () => {
  it('leaves alone what uses a spec, and `below reading`', () => {
    const specs = (text: string) => `${text}\n    spec seat-line  pressure  230 bar ±5  source "Example sheet"`;
    const below = (name: string) => seat.replace('below opening', `below ${name}`);
    const names = (text: string) => one(text, 'reading-not-taken-yet');
    expect(names(procedureWith({ specs, prove: instead(opening, opening + below('seat-line')) }))).toEqual([]);
    expect(names(procedureWith({ prove: instead(opening, opening + below('reading')) }))).toEqual([]);
  });

  it('leaves a name that no reading has to the rule on names', () => {
    const text = procedureWith({ prove: instead(opening, opening + seat.replace('below opening', 'below openning')) });
    expect(check(text).diagnostics.map(fullMessage)).toEqual([
      'No test or spec is called openning. Did you mean opening?',
    ]);
  });

  it('leaves alone a reading taken by setting, and by reading alone', () => {
    const left = '      read opening as left\n';
    const text = procedureWith({ prove: instead(opening, opening + left + seat) });
    expect(found(text)).toEqual([]);
  });

  it('is not reported beside a test that is missing altogether', () => {
    const text = procedureWith({ prove: instead(opening, seat) });
    expect(found(text)).toEqual(['– gate-missing']);
  });

  it('is found on the way of a repair only', () => {
    const early = '      measure spring within 20..30 mm  on fail early (once)\n';
    const text = procedureWith({
      asFound: '',
      build: instead('      clamp body\n', `${early}      clamp body\n`),
      repairs: (sound) =>
        `${sound}\n    repair early {\n      choose shim to bring opening to 254 bar by shim-rate\n      rinse shim in cal-oil\n    }`,
    });
    const [diagnostic, ...others] = one(text, 'reading-not-taken-yet');
    expect(others).toEqual([]);
    expect(fullMessage(diagnostic!)).toMatch(/after the measure at .* fails and early/u);
  });

  it('leaves a test that the opening made stale to gate-stale', () => {
    const text = procedureWith({ prove: instead(opening, `${opening}      open\n      close\n${seat}`) });
    const rules = found(text).map((line) => line.split(' ')[1]);
    expect(rules).toEqual(['gate-stale']);
  });
});

describe('gauge-open-while-pulsing', () => {
  const prime = instead('prime 6 strokes with gauge shut', 'prime 6 strokes');
  const gauge = (words: string) => instead('graduated 1 bar  at tester', `graduated 1 bar  ${words}`);

  it.each(['at tester  damped', 'at tester  digital', 'at strip', ''])('leaves alone a gauge %s', (words) => {
    expect(one(procedureWith({ shop: gauge(words), prove: prime }), 'gauge-open-while-pulsing')).toEqual([]);
  });

  it('leaves alone a figure read at slow strokes, and a delivery', () => {
    const slow = opening.replace('within opening', 'within opening at 2..6 strokes/min');
    expect(found(procedureWith({ prove: instead(opening, slow) }))).toEqual([]);
    const volume = '      test delivery  read volume within 10..12 mL at 100 strokes/min  on fail reshim (3 times)\n';
    expect(one(procedureWith({ prove: instead(opening, opening + volume) }), 'gauge-open-while-pulsing')).toEqual([]);
  });

  it('is found in a repair that has no station of its own', () => {
    expect(found(procedureWith({ repairs: prime }))).toEqual(['R1.4f gauge-open-while-pulsing']);
  });
});

describe('gauge-shut-while-reading', () => {
  it('is found where the pressure is held', () => {
    const shut = seat.replace(' accept', ' with gauge shut  accept');
    expect(found(procedureWith({ prove: instead(opening, opening + shut) }))).toEqual(['7.4 gauge-shut-while-reading']);
  });

  it('leaves alone a spray timed with the gauge shut', () => {
    const spray =
      '      test spray  at 60..100 strokes/min for 10 s with gauge shut  accept "even"  on fail reshim (3 times)\n';
    expect(one(procedureWith({ prove: instead(opening, opening + spray) }), 'gauge-shut-while-reading')).toEqual([]);
  });
});

describe('opened-before-tested', () => {
  it('leaves alone a family that is proven without pressure', () => {
    const lift = '      test lift  read length within 0.20..0.25 mm with MIC-1  on fail reshim (3 times)\n';
    const text = procedureWith({ family: proven('lift'), asFound: '', prove: instead(opening, lift) });
    expect(one(text, 'opened-before-tested')).toEqual([]);
  });

  it('is a hint, once', () => {
    expect(found(procedureWith({ asFound: '' }))).toEqual(['2.2 opened-before-tested']);
  });
});

describe('speed-not-stated', () => {
  it.each(['at 20..60 strokes/min', '"Slow strokes first, then quick"'])('leaves alone %s', (speed) => {
    const chatter = `      test chatter  ${speed} with gauge shut  accept "even chatter"  on fail reshim (3 times)\n`;
    expect(found(procedureWith({ prove: instead(opening, opening + chatter) }))).toEqual([]);
  });
});

describe('back-leak-underdetermined', () => {
  const leak = (more: string) =>
    `      test back-leak  from 150 bar to 100 bar in 6..20 s ${more}  source "Example sheet"  on fail reshim (3 times)\n`;

  it.each([
    'with "cal-oil at 23 °C", "hanging in the holder"',
    'with "test oil, 20 to 25 degrees", "horizontal"',
    '"Diesel at room temperature, nozzle upright"',
  ])('leaves alone %s', (more) => {
    expect(found(procedureWith({ prove: instead(opening, opening + seat + leak(more)) }))).toEqual([]);
  });

  it('leaves the missing seat test to the family’s list', () => {
    const text = procedureWith({
      family: proven('opening, seat-leak, back-leak'),
      prove: instead(opening, opening + leak('with "test oil at 23 °C", "upright"')),
    });
    expect(found(text)).toEqual(['– gate-missing']);
  });
});

describe('tester-not-checked', () => {
  const shop = instead('  fluid  solvent', '  master MN-1 "Master nozzle" at tester\n  fluid  solvent');
  const read = '      read MN-1 "Within 2 bar of its plate"\n';

  it('leaves alone readings between two of the master, over two stages', () => {
    const prove = (text: string) =>
      text
        .replace('      connect inlet\n', `${read}      connect inlet\n`)
        .replace(relieve, `    }\n    stage again at tester {\n${seat}${relieve}${read}`);
    expect(found(procedureWith({ shop, prove }))).toEqual([]);
  });

  it.each([
    ['before', '7.3'],
    ['after', '7.4'],
  ])('is one finding where it is not read %s', (when, step) => {
    const prove = (text: string) =>
      when === 'before'
        ? text.replace(relieve, relieve + read)
        : text.replace('      connect inlet\n', `${read}      connect inlet\n`);
    expect(found(procedureWith({ shop, prove }))).toEqual([`${step} tester-not-checked`]);
  });
});

describe('opened-under-pressure', () => {
  const family = `family screw-holder "Holder with adjusting screw" {
  part body     "Body"
  part spring   "Spring"           in body
  part screw    "Adjusting screw"  on spring
  part lock-nut "Lock nut"         on screw
  part washer   "Cap washer"       on lock-nut  renewed
  port inlet on body
  joint screw to body
  joint lock-nut to screw
  adjuster screw sets opening, 25 bar per turn, locked by lock-nut
  proven by opening
}
`;
  const adjusted = (relieved: string) =>
    procedureWith({
      family,
      head: (text) => text.replace('for holder', 'for screw-holder'),
      receive: instead('cap inlet, tip', 'cap inlet'),
      asFound: '',
      teardown: '',
      clean: '',
      build: '',
      prove: `
    stage prove at tester {
      uncap inlet
      slacken lock-nut held by "screwdriver in the slot"
      connect inlet
      prime 6 strokes with gauge shut
      set opening to opening by screw
      ${relieved}
      lock lock-nut to 30 N·m ±3 with TW-80 held by "screwdriver in the slot"
      run-down lock-nut
      torque lock-nut to 30 N·m ±3 with TW-80 held by "screwdriver in the slot"
      lock lock-nut to 30 N·m ±3 with TW-80 held by "screwdriver in the slot"
      prime 2 strokes with gauge shut
      test opening  read pressure within opening  on fail turn (3 times)
      relieve    disconnect inlet
    }`,
      finish: 'stage finish at build {\n cap inlet\n sign-off by "Bench lead"\n }',
      repairs:
        'repair turn {\n relieve\n slacken lock-nut held by "screwdriver"\n prime 2 strokes with gauge shut\n set opening to opening by screw\n relieve\n lock lock-nut to 30 N·m ±3 with TW-80 held by "screwdriver"\n prime 2 strokes with gauge shut\n }',
    });

  it('is one finding for one forgotten relieve, however much is tightened after it', () => {
    const again = '      torque nut to nut-fit with TW-80\n';
    const pulled = (relieve: string) =>
      procedureWith({ prove: instead(opening, `${relieve}${again}      run-down nut\n${again}${opening}`) });
    expect(one(pulled(''), 'opened-under-pressure').map(({ step }) => step)).toEqual(['7.3']);
    expect(one(pulled('      relieve\n'), 'opened-under-pressure')).toEqual([]);
  });

  it('leaves alone a lock nut outside, which is worked with the pump running', () => {
    expect(one(adjusted(''), 'opened-under-pressure')).toEqual([]);
  });

  it('is found on the way of a repair only', () => {
    const weeping = (relieve: string) =>
      procedureWith({
        prove: instead('reshim (3 times)', 'tighten, reshim (3 times)'),
        repairs: (text) =>
          `${text}\n    repair tighten {\n      ${relieve}clamp body   torque nut to nut-fit with TW-80   unclamp body\n      prime 6 strokes with gauge shut\n    }`,
      });
    const [diagnostic, ...others] = diagnostics(weeping(''));
    expect(others).toEqual([]);
    expect(diagnostic).toMatchObject({ rule: 'opened-under-pressure', step: 'R2.2' });
    expect(fullMessage(diagnostic!)).toContain('after opening (7.3) fails and tighten (R2) is done');
    expect(found(weeping('relieve   '))).toEqual([]);
  });

  it('leaves alone what is fitted on the outside under pressure', () => {
    const outside = instead(opening, `      fit washer\n${opening}`);
    const repairs = (text: string) =>
      text
        .replace('clamp body    slacken nut', 'discard washer    clamp body    slacken nut')
        .replace('gauge shut\n    }', 'gauge shut\n      fit washer\n    }');
    expect(found(procedureWith({ prove: outside, finish: instead('      fit washer\n', ''), repairs }))).toEqual([]);
  });
});

describe('gate-stale', () => {
  it('of a test that names a joint which closes over nothing, when its part comes off', () => {
    const family = (text: string) =>
      instead(
        '  joint nut to body\n',
        '  part plug "Vent plug" on body\n  joint nut to body\n  joint plug to body  hand-tight is final\n',
      )(text);
    const prove = instead('on fail reshim (3 times)', 'on fail reshim (3 times)  proves through plug');
    const finish = instead('sign-off', 'remove plug    fit plug    run-down plug\n      sign-off');
    expect(found(procedureWith({ family, prove, finish }))).toEqual(['8.3 gate-stale']);
  });

  it('is one finding for one slip, however many tests it undoes', () => {
    const spray = '      test spray  with gauge shut  accept "even"  on fail reshim (3 times)\n';
    const text = procedureWith({
      prove: instead(relieve, `${seat}${spray}      open\n      close\n${relieve}`),
    });
    const [diagnostic, ...others] = diagnostics(text);
    expect(others).toEqual([]);
    expect(diagnostic).toMatchObject({ rule: 'gate-stale' });
    expect(fullMessage(diagnostic!)).toMatch(/^Opening, seat-leak and spray are no longer proven at the end/u);
  });
});

describe('comes-back-different', () => {
  it('is one finding for a repair that does not close', () => {
    const open = (text: string) => text.replace('      close\n', '');
    const [diagnostic, ...others] = diagnostics(procedureWith({ repairs: open }));
    expect(others).toEqual([]);
    expect(diagnostic).toMatchObject({ rule: 'comes-back-different', step: 'R1.3' });
    expect(fullMessage(diagnostic!)).toContain('after opening (7.3) fails and reshim (R1) is done');
  });

  it('leaves alone a part that goes on after the test', () => {
    // The washer is fitted in the last stage: off at the test on every way.
    expect(found(procedureWith())).toEqual([]);
  });
});
