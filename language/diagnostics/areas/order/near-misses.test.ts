import { describe, expect, it } from 'vitest';
import { check, checkExample } from '../../../../tests/fixtures/example-pages.ts';
import { instead, procedureWith } from '../../../../tests/fixtures/sound-procedure.ts';
import { fullMessage } from '../../../model/diagnostic.ts';
import { order } from './index.ts';

const codes: readonly string[] = order.map((rule) => rule.code);

/** What the rules of this area find: each finding as `step rule`. */
const told = (diagnostics: ReturnType<typeof check>['diagnostics']) =>
  diagnostics.filter(({ rule }) => codes.includes(rule)).map(({ rule, step }) => `${step ?? '–'} ${rule}`);
const found = (text: string) => told(check(text).diagnostics);
const inExample = (text: string) => told(checkExample(text).diagnostics);
/** Of one rule, with the message. */
const ofRule = (code: string, text: string) =>
  check(text)
    .diagnostics.filter(({ rule }) => rule === code)
    .map((one) => `${one.step ?? '–'} ${fullMessage(one)}`);

/** A holder whose spring a screw sets from above, locked by a nut. */
const screwHolder = `family screw-holder "Holder with adjusting screw" {
  part body     "Body"
  part spindle  "Spindle"          in body       bears on needle
  part spring   "Spring"           on spindle
  part screw    "Adjusting screw"  on body       holds spring
  part lock-nut "Lock nut"         on screw
  part nozzle   "Nozzle"           on body
  part needle   "Needle"           in nozzle     matched to nozzle
  part nut      "Nozzle nut"       on body       holds nozzle
  port inlet on body
  joint nut to body
  joint lock-nut to screw
  adjuster screw sets opening, locked by lock-nut
}
`;
const tester = (steps: string) => `${screwHolder}stage prove at tester {
  connect inlet
${steps}
  relieve    disconnect inlet
}
`;
const setAndLock = `  slacken lock-nut
  prime 6 strokes with gauge shut
  set opening to opening by screw
  relieve    lock lock-nut to 30 N·m ±3
  prime 2 strokes with gauge shut
  test opening  read pressure within opening  on fail turn (3 times)`;
const turn = `repair turn {
  relieve    slacken lock-nut
  prime 2 strokes with gauge shut
  set opening to opening by screw
  relieve    lock lock-nut to 30 N·m ±3
  prime 2 strokes with gauge shut
}
`;

it('the sound procedure and the sound setting raise nothing', () => {
  expect(found(procedureWith())).toEqual([]);
  expect(inExample(tester(setAndLock) + turn)).toEqual([]);
});

describe('needle-not-loaded. Not:', () => {
  const stack = (facts: string, more = '') => `family any "Any" {
  part body   "Body"
  part shim   "Shim"    in body  chosen from shims
  part spring "Spring"  on shim
  part seat   "Seat"    on spring  ${facts}
${more}}
`;

  it('a stack whose last part bears on nothing is found', () => {
    expect(inExample(stack(''))).toEqual(['– needle-not-loaded']);
  });

  it('one that a cap or an adjuster holds, or that rests against a part beside it', () => {
    expect(inExample(stack('', '  part cap "Cap" on body holds seat\n'))).toEqual([]);
    expect(inExample(stack('', '  adjuster seat sets opening\n'))).toEqual([]);
    expect(inExample(stack(', in sleeve', '  part sleeve "Sleeve" in body\n').replace('spring  ,', 'spring'))).toEqual(
      [],
    );
  });

  it('a shim under a cover, a bearing, or the nozzle itself', () => {
    const shims = `family any "Any" {
  part body     "Body"
  part bearing  "Bearing"   in body
  part end-shim "End shim"  on bearing  chosen from shims
  part washer   "Washer"    in body
  part lift     "Lift shim" on body     chosen from shims
  part nozzle   "Nozzle"    on lift
  part needle   "Needle"    in nozzle   matched to nozzle
  part nut      "Nut"       on body     holds nozzle
}
`;
    expect(inExample(shims)).toEqual([]);
  });

  it('a concession on a part of the stack', () => {
    expect(inExample(stack('allow needle-not-loaded because "a dummy, for training"'))).toEqual([]);
  });
});

describe('joint-slackened-then-left. Not:', () => {
  it('a joint that is slackened at one station and taken off at the next', () => {
    const split = instead(
      '      slacken nut\n',
      '      slacken nut\n      unclamp body\n    }\n    stage strip-down at strip {\n      clamp body\n',
    );
    expect(found(procedureWith({ teardown: split }))).toEqual([]);
  });

  it('is reported once, and only on the path where it happens', () => {
    const weeping = (torque: string) =>
      procedureWith({
        prove: instead('reshim (3 times)', 'tighten, reshim (3 times)'),
        repairs: (text) =>
          `${text}\n    repair tighten {\n      relieve    clamp body   slacken nut   ${torque}unclamp body\n      prime 6 strokes with gauge shut\n    }`,
      });
    expect(found(weeping('torque nut to nut-fit with TW-80   '))).toEqual([]);
    const [one, ...others] = ofRule('joint-slackened-then-left', weeping(''));
    expect(others).toEqual([]);
    expect(one).toMatch(/^7\.3 .*This happens after opening \(7\.3\) fails and tighten/u);
    expect(found(weeping(''))).toHaveLength(1);
  });
});

describe('union-left-hand-tight. Not:', () => {
  const change = (torque: string) => ({
    family: instead(
      '  port inlet on body',
      '  part union  "Inlet union"      on body\n  joint union to body\n  port inlet on union',
    ),
    teardown: (text: string) =>
      instead(
        'keep nozzle',
        'keep union, nozzle',
      )(instead('      slacken nut\n', '      slacken nut, union\n      remove union\n')(text)),
    build: instead(
      '      unclamp body\n',
      `      fit union\n      run-down union\n${torque}      unclamp body\n`.replace('      fit union\n', ''),
    ),
  });
  const torque = '      torque union to 45 N·m ±5 with TW-80\n';

  it('one that is torqued; one that is not is reported once', () => {
    expect(found(procedureWith(change(torque)))).toEqual([]);
    expect(found(procedureWith(change('')))).toEqual(['7.3 union-left-hand-tight']);
  });

  it('`hand-tight is final`', () => {
    const { family, ...rest } = change('');
    const final = (text: string) =>
      instead('joint union to body', 'joint union to body  hand-tight is final')(family(text));
    expect(found(procedureWith({ family: final, ...rest }))).toEqual([]);
  });

  it('a reading as found, of the unit as it came', () => {
    const { family } = change('');
    expect(found(procedureWith({ family }))).toEqual([]);
  });
});

describe('part-left-behind. Not:', () => {
  it('parts kept in their tray at the station at which they are built in', () => {
    expect(
      found(
        procedureWith({
          teardown: instead('at tank "Own basket, own number"', 'at build "Own lidded tray"'),
          clean: (text) => text.replace(/ *clean holes of nozzle\n *wash nozzle, needle in solvent\n/u, ''),
        }),
      ),
    ).toEqual([]);
  });

  it('a part that a step names at the other station', () => {
    const named = instead(
      '      clamp body\n',
      '      send spring to tank\n      rinse spring in cal-oil\n      clamp body\n',
    );
    expect(found(procedureWith({ build: named }))).toEqual([]);
    const sent = instead('      clamp body\n', '      send spring to tank\n      clamp body\n');
    expect(found(procedureWith({ build: sent }))).toEqual(['6.6 part-left-behind']);
  });

  it('is found on the way of a repair only', () => {
    const text = procedureWith({
      repairs: instead('      choose shim', '      send spring to tank\n      choose shim'),
    });
    const [one, ...others] = ofRule('part-left-behind', text);
    expect(others).toEqual([]);
    expect(one).toContain('This happens after opening (7.3) fails and reshim (R1) is done.');
  });
});

describe('discarded-and-not-renewed. Not:', () => {
  const discarded = (build: string) =>
    procedureWith({
      teardown: instead(' spring, shim at tank', ' shim at tank'),
      build: instead('      clamp body\n', `${build}      clamp body\n`),
    });

  it('a part that is renewed after it was discarded', () => {
    expect(found(discarded('      discard spring\n      renew spring\n      rinse spring in cal-oil\n'))).toEqual([]);
  });

  it('is reported once, however much is built on the empty place', () => {
    const text = procedureWith({
      build: (sound) =>
        sound.replace('      clamp body\n', '      discard spacer\n      clamp body\n').replace(' spacer located,', ''),
    });
    expect(found(text)).toEqual(['6.6 discarded-and-not-renewed']);
  });

  it('is reported at the end where nothing closes over it', () => {
    const clip = {
      family: instead('  part washer', '  part clip   "Pipe clip"        on body\n  part washer'),
      finish: instead('      fit washer\n', '      fit washer\n      discard clip\n'),
    };
    expect(found(procedureWith(clip))).toEqual(['8.4 discarded-and-not-renewed']);
  });

  it('`supplied loose`', () => {
    const clip = {
      family: instead('  part washer', '  part clip   "Pipe clip"        on body  supplied loose\n  part washer'),
      finish: instead('      fit washer\n', '      fit washer\n      discard clip\n'),
    };
    expect(ofRule('discarded-and-not-renewed', procedureWith(clip))).toEqual([]);
  });
});

describe('no-tightening-pattern. Not:', () => {
  const cover = (facts: string, torque: string) => `family pump "Pump" {
  part body  "Body"
  part valve "Valve"  in body  for each cylinder 1..6
  part cover "Cover"  on body
  part bolt  "Bolt"   ${facts}
  joint bolt to body
}
stage build at build {
  clamp body
  ${torque}
  unclamp body
}
`;

  it('four and more on one face are found, whatever the family calls them', () => {
    const torque = 'torque bolt to 20 N·m ±2 with TW-80';
    const one = ['1.2 no-tightening-pattern'];
    expect(inExample(cover('on cover holds cover for each cylinder 1..4', torque))).toEqual(one);
    expect(inExample(cover('through cover for each cylinder 1..4', torque))).toEqual(one);
  });

  it('six separate valve holders', () => {
    const torque = 'torque bolt to 20 N·m ±2 with TW-80';
    expect(inExample(cover('on valve holds valve for each cylinder 1..6', torque))).toEqual([]);
    expect(inExample(cover('on body for each cylinder 1..6', torque))).toEqual([]);
  });

  it('three on a face, one alone, a pattern, the author’s own words', () => {
    const six = 'on cover holds cover for each cylinder 1..6';
    const torque = 'torque bolt to 20 N·m ±2 with TW-80';
    expect(inExample(cover('on cover holds cover for each cylinder 1..3', torque))).toEqual([]);
    expect(inExample(cover(six, torque.replace('bolt', 'bolt 3')))).toEqual([]);
    expect(inExample(cover(six, `${torque} in cross pattern`))).toEqual([]);
    expect(inExample(cover(six, `${torque} in "from the middle out"`))).toEqual([]);
    expect(inExample(cover(six, `${torque}  note "Left and right in turn"`))).toEqual(['1.2 no-tightening-pattern']);
  });
});

describe('marks-not-lined-up. Not:', () => {
  const family = instead('on spring  bears on needle', 'on spring  bears on needle  marks "Flat to the inlet"');
  const build = (put: string) => instead('fit shim, spring, seat, spacer', put);
  const repairs = (text: string) =>
    text.replace('fit shim, spring, seat,', 'fit shim, spring, seat with marks aligned\n fit');

  it('lined up in its own step or for trial; words beside it do not count', () => {
    const told = (put: string) => found(procedureWith({ family, build: build(put), repairs }));
    expect(told('fit shim, spring, seat, spacer')).toEqual(['6.5 marks-not-lined-up']);
    expect(told('fit shim, spring, seat with marks aligned\n fit spacer')).toEqual([]);
    expect(told('fit shim, spring, seat "Flat to the inlet"\n fit spacer')).toEqual(['6.5 marks-not-lined-up']);
    expect(told('fit shim, spring, seat\n line-up seat\n fit spacer')).toEqual([]);
    expect(
      told(
        'fit shim, spring, seat for trial\n remove seat, spring, shim\n fit shim, spring, seat with marks aligned\n fit spacer',
      ),
    ).toEqual([]);
  });

  it('in a sequence it is one slip, however often it is called', () => {
    const twice = procedureWith({
      family,
      build: build('fit shim, spring, seat with marks aligned\n fit spacer'),
      prove: instead('reshim (3 times)', 'reshim (3 times), again (once)'),
      repairs: (text) =>
        `${text}\n    repair again {\n open\n clean holes of nozzle\n rinse nozzle, needle in cal-oil\n close\n }`,
    });
    expect(ofRule('marks-not-lined-up', twice)).toHaveLength(1);
  });
});

describe('new-part-not-washed. Not:', () => {
  it('`ready to fit`, said by the family', () => {
    const ready = {
      family: instead('in nozzle  matched to nozzle', 'in nozzle  matched to nozzle  ready to fit'),
      build: instead('      clamp body\n', '      renew needle\n      clamp body\n'),
    };
    expect(found(procedureWith(ready))).toEqual([]);
  });

  it('a part in its preservative for trial', () => {
    const tried = instead(
      '      clamp body\n',
      '      renew spacer\n      fit spacer located for trial\n      remove spacer\n      rinse spacer in cal-oil\n      clamp body\n',
    );
    expect(found(procedureWith({ build: tried }))).toEqual([]);
  });

  it('is reported once, and not as dirty besides, on the path of the repair', () => {
    const text = procedureWith({
      prove: instead('reshim (3 times)', 'reshim (3 times), renew-nozzle (once)'),
      repairs: (sound) =>
        `${sound}\n    repair renew-nozzle {\n      open\n      renew nozzle, needle\n      close\n    }`,
    });
    expect(check(text).diagnostics.map(({ rule }) => rule)).toEqual(['new-part-not-washed']);
  });
});

describe('not-checked-free. Not:', () => {
  const family = instead('in nozzle  matched to nozzle', 'in nozzle  matched to nozzle  slides');
  const feel = '      check needle slides "Through the tip, with the wire"   on fail reshim\n';

  it('a part that is felt after its joint is tight', () => {
    const text = procedureWith({
      family,
      build: instead('      unclamp body\n', `${feel}      unclamp body\n`),
      prove: instead('on fail reshim (3 times)', 'on fail turn (once)'),
      repairs: (sound) =>
        `${sound}\n    repair turn {\n      relieve    wipe nozzle\n      prime 2 strokes with gauge shut\n    }`,
    });
    expect(ofRule('not-checked-free', text)).toEqual([]);
  });

  it('a part that is only felt before is reported at the torque', () => {
    const text = procedureWith({
      family,
      build: instead('      clamp body\n', `${feel}      clamp body\n`),
    });
    expect(ofRule('not-checked-free', text).map((one) => one.slice(0, 20))).toContain('6.8 The needle must ');
  });

  it('a repair that closes it again, where the check proves through the joint', () => {
    const rack = (proves: string) => `family pump "Pump" {
  part body  "Housing"
  part rack  "Rack"   in body  slides
  part cover "Cover"  on body  holds rack
  joint cover to body
}
stage build at build {
  clamp body
  slacken cover
  torque cover to 20 N·m ±2 with TW-80
  check rack slides "By its own weight" ${proves} on fail ease (once)
  test travel  read length within 12.0 mm ±0.1  on fail ease (once)
  unclamp body
}
repair ease {
  slacken cover
  do "Work the rack"
  torque cover to 20 N·m ±2 with TW-80
}
`;
    expect(inExample(rack('proves through cover'))).toEqual([]);
    expect(inExample(rack(''))).toEqual(['R1.3 not-checked-free']);
    expect(
      checkExample(rack(''))
        .diagnostics.map((one) => fullMessage(one))
        .join(),
    ).toContain('“proves through cover” in the check at 1.4');
  });

  it('untouched parts of a partial job', () => {
    const partial = `family pump "Pump" {
  part body  "Housing"
  part rack  "Rack"   in body  slides
  part cover "Cover"  on body  holds rack
  part plug  "Plug"   on body
  joint cover to body
  joint plug to body
}
stage build at build {
  clamp body
  slacken plug
  torque plug to 20 N·m ±2 with TW-80
  unclamp body
}
`;
    expect(inExample(partial)).toEqual([]);
    expect(
      inExample(
        partial
          .replaceAll('plug to', 'cover to')
          .replace('slacken plug', 'slacken cover')
          .replace('joint cover to body\n', ''),
      ),
    ).toEqual(['1.3 not-checked-free']);
  });
});

describe('spring-not-backed-off. Not:', () => {
  const opened = `  relieve    disconnect inlet
  slacken lock-nut held by "screwdriver"   back-off screw
  clamp body   slacken nut
  remove nut, nozzle, needle
  rinse all in cal-oil
  fit nozzle with needle
  run-down nut   torque nut to nut-fit with TW-80
  unclamp body
  connect inlet   prime 6 strokes with gauge shut
`;
  const renewed = (steps: string) =>
    `${tester(setAndLock.replace('turn (3 times)', 'turn (3 times), again (once)'))}${turn}repair again {\n${steps}}\n`;
  const set =
    '  set opening to opening by screw\n  relieve    lock lock-nut to 30 N·m ±3\n  prime 2 strokes with gauge shut\n';

  it('backed off before the nut is slackened; it comes back to be set', () => {
    expect(inExample(renewed(opened + set))).toEqual([]);
  });

  it('is reported once, on the path of the repair, for slackening and torque together', () => {
    expect(inExample(renewed(opened.replace('   back-off screw', '') + set))).toEqual(['R2.5 spring-not-backed-off']);
  });

  it('a screw that is out, or just fitted', () => {
    const fitted = opened
      .replace('back-off screw', 'back-off screw\n  remove lock-nut, screw, spring')
      .replace('  run-down nut', '  fit spring, screw "Two turns in"\n  run-down nut')
      .replace('  connect inlet', '  run-down lock-nut\n  connect inlet');
    expect(inExample(renewed(fitted + set))).toEqual([]);
  });

  it('a lock nut or a cap over the screw', () => {
    expect(inExample(tester(setAndLock) + turn)).toEqual([]);
  });
});

describe('reading-before-lock, setting-not-locked. Not:', () => {
  it('a lock that was torqued, not locked', () => {
    const torqued = (text: string) => text.replaceAll('lock lock-nut to', 'torque lock-nut to');
    expect(inExample(torqued(tester(setAndLock) + turn))).toEqual([]);
  });

  it('a lock with no joint of its own', () => {
    const plate = (text: string) =>
      text.replace('  joint lock-nut to screw\n', '').replaceAll('slacken lock-nut', 'do "Bend the lock plate back"');
    expect(inExample(plate(tester(setAndLock) + turn))).toEqual([]);
  });

  it('one setting after the other, each locked before its own test', () => {
    const two = `family governor "Governor" {
  part body  "Body"
  part idle  "Idle screw"  on body
  part idle-nut "Idle lock nut"  on idle
  part stop  "Stop screw"  on body
  part stop-nut "Stop lock nut"  on stop
  joint idle-nut to idle
  joint stop-nut to stop
  adjuster idle sets idle-travel, locked by idle-nut
  adjuster stop sets stop-travel, locked by stop-nut
}
spec idle-travel length 5 mm ±0.1 source "Example"
spec stop-travel length 9 mm ±0.1 source "Example"
stage build at build {
  clamp body
  slacken idle-nut, stop-nut
  set idle-travel to idle-travel by idle
  lock idle-nut to 8 N·m ±1
  test idle-travel  read length within idle-travel  on fail ask (once)
  set stop-travel to stop-travel by stop
  lock stop-nut to 8 N·m ±1
  test stop-travel  read length within stop-travel  on fail ask (once)
  unclamp body
}
repair ask { do "Ask the lead" }
`;
    // The lead’s answer turns a screw whose lock is tight: that is another finding.
    expect(inExample(two)).toEqual(['R1.1 set-while-locked']);
  });

  it('a lock that is never tightened is one finding, and the lock nut is not reported besides', () => {
    const open = tester(setAndLock.replace('  relieve    lock lock-nut to 30 N·m ±3\n', '')) + turn;
    expect(inExample(open)).toEqual(['1.6 reading-before-lock']);
  });

  it('is reported for the repair where it is forgotten there', () => {
    const open = tester(setAndLock) + turn.replace('  relieve    lock lock-nut to 30 N·m ±3\n', '');
    expect(
      checkExample(open)
        .diagnostics.filter(({ rule }) => rule === 'reading-before-lock')
        .map((one) => fullMessage(one).replace(/.*(This happens)/u, '$1')),
    ).toEqual(['This happens after opening (1.8) fails and turn (R1) is done.']);
  });
});

describe('set-while-locked. Not:', () => {
  it('a lock nut that is off, slack or only run down', () => {
    const off = setAndLock
      .replace('  slacken lock-nut\n', '  slacken lock-nut\n  remove lock-nut\n')
      .replace('  relieve    lock', '  relieve    rinse lock-nut, screw in cal-oil\n  run-down lock-nut\n  lock');
    expect(inExample(tester(off) + turn)).toEqual([]);
  });

  it('is found in the repair, where the stage has locked it', () => {
    expect(inExample(tester(setAndLock) + turn.replace('slacken lock-nut', 'wipe body'))).toEqual([
      'R1.4 set-while-locked',
    ]);
  });
});

describe('guard-still-in-place. Not:', () => {
  it('a part that is off, or on as a guard; one whose removal is forgotten is found', () => {
    const twice = instead(
      '      guard body.end with nut\n',
      '      guard body.end with nut\n      guard body.end with nut\n',
    );
    expect(found(procedureWith({ teardown: twice }))).toEqual([]);
    const held = instead(
      '      remove nut, nozzle, needle, spacer, seat, spring, shim\n      measure shim with MIC-1\n      keep nozzle, needle, spacer, seat, spring, shim at tank "Own basket, own number"\n',
      '',
    );
    expect(found(procedureWith({ teardown: held }))).toContain('3.4 guard-still-in-place');
  });
});

describe('chosen-while-in-place. Not:', () => {
  it('a part in place and open to the hand', () => {
    const open = instead(
      '      run-down nut\n',
      '      measure shim with MIC-1\n      fit nut "Not turned yet"\n      remove nut\n      run-down nut\n',
    );
    expect(ofRule('chosen-while-in-place', procedureWith({ build: open }))).toEqual([]);
  });

  it('lift or end play, measured on the part in its place', () => {
    const lift = instead(
      '      unclamp body\n',
      '      measure needle "Lift"\n      measure seat "Its play"\n      unclamp body\n',
    );
    expect(found(procedureWith({ build: lift }))).toEqual([]);
  });

  it('the body’s own outside', () => {
    expect(found(procedureWith({ receive: instead('clean outside', 'clean outside\n      measure body') }))).toEqual(
      [],
    );
  });

  it('is found where a step is taken before it is open', () => {
    const early = (text: string) =>
      text
        .replace('      measure shim with MIC-1\n', '')
        .replace('      slacken nut\n', '      slacken nut\n      measure shim with MIC-1\n');
    expect(found(procedureWith({ teardown: early }))).toEqual(['3.3 chosen-while-in-place']);
  });

  it('is found in a repair that works on a closed unit', () => {
    const closed = procedureWith({
      prove: instead('reshim (3 times)', 'prick (once), reshim (3 times)'),
      repairs: (text) =>
        `${text}\n    repair prick {\n      relieve    clean holes of nozzle\n      prime 2 strokes with gauge shut\n    }`,
    });
    expect(ofRule('chosen-while-in-place', closed)).toHaveLength(1);
  });
});
