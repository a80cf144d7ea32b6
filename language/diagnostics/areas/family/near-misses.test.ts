import { describe, expect, it } from 'vitest';
import { check } from '../../../../tests/fixtures/example-pages.ts';
import { instead, procedureWith } from '../../../../tests/fixtures/sound-procedure.ts';
import { fullMessage } from '../../../model/diagnostic.ts';
import { language } from '../language/index.ts';
import { family as familyRules } from './index.ts';

const mine = new Set([...language, ...familyRules].map(({ code }) => code));

/** What the rules of this area and of `language` find in a text. */
const found = (text: string): string[] =>
  check(text)
    .diagnostics.filter(({ rule }) => mine.has(rule))
    .map((one) => `${one.rule}: ${fullMessage(one)}`);
const rulesFound = (text: string) => found(text).map((line) => line.slice(0, line.indexOf(':')));

const family = (text: string) => `family other "Another" {\n${text}\n}\n`;

it('the sound procedure raises nothing', () => {
  expect(found(procedureWith())).toEqual([]);
});

describe('rests-on-nothing. Not:', () => {
  it('the body, wherever it is declared', () => {
    expect(
      found(
        family(
          '  part plug "Plug" on body holds spring\n  part spring "Spring" in body\n  part body "Body"\n  joint plug to body',
        ),
      ),
    ).toEqual([]);
  });

  it('six bodies built alike, and what is supplied loose', () => {
    const six =
      '  part holder "Holder" for each cylinder 1..6\n  part spring "Spring" in holder for each cylinder 1..6\n  part key "Key" supplied loose';
    expect(found(family(six))).toEqual([]);
  });

  it('is reported once for parts that are built alike', () => {
    const six = '  part body "Body"\n  part seat "Seat" in body\n  part valve "Valve" for each cylinder 1..6';
    expect(rulesFound(family(six))).toEqual(['rests-on-nothing']);
  });

  it('is the only finding where the part had a face that meets another', () => {
    expect(rulesFound(procedureWith({ family: instead('"Spacer"           on body', '"Spacer"') }))).toEqual([
      'rests-on-nothing',
    ]);
  });
});

describe('joint-holds-nothing, spring-held-by-nothing:', () => {
  const top = (screw: string) =>
    family(
      `  part body "Body"\n  part spindle "Spindle" in body bears on needle\n  part spring "Spring" on spindle\n${screw}\n  part nozzle "Nozzle" on body\n  part needle "Needle" in nozzle matched to nozzle\n  part nut "Nut" on body holds nozzle\n  joint nut to body`,
    );

  it('a nut that loses what it holds is reported, though a washer lies on it', () => {
    expect(rulesFound(procedureWith({ family: instead('on body    holds nozzle', 'on body') }))).toEqual([
      'joint-holds-nothing',
    ]);
  });

  it('a screw that loses its spring is reported', () => {
    const screw = '  part screw "Screw" on body holds spring\n  adjuster screw sets opening';
    expect(rulesFound(top(screw))).toEqual([]);
    expect(rulesFound(top(screw.replace(' holds spring', '')))).toEqual(['spring-held-by-nothing']);
  });

  it('Not: a screw that is on its spring', () => {
    expect(found(top('  part screw "Screw" on spring\n  adjuster screw sets opening'))).toEqual([]);
  });

  it('Not: a stud that carries what is bolted to it, or a shaft nut that holds its wheel', () => {
    const text =
      '  part housing "Housing"\n  part stud "Stud" in housing\n  part bracket "Bracket" on stud\n  part shaft "Shaft" through housing\n  part wheel "Wheel" on shaft\n  part nut "Nut" on wheel holds wheel\n  joint stud to housing\n  joint nut to shaft left-hand';
    expect(found(family(text))).toEqual([]);
  });

  it('Not: a spindle with nothing on it', () => {
    expect(
      found(family('  part body "Body"\n  part rod "Rod" in body bears on valve\n  part valve "Valve" in body')),
    ).toEqual([]);
  });
});

describe('faces-do-not-meet, face-without-finish:', () => {
  it('a face and its pair are reported once', () => {
    expect(rulesFound(procedureWith({ family: instead('face spacer.bottom lapped', 'face spacer.bottom') }))).toEqual([
      'face-without-finish',
    ]);
  });

  it('Not: the face of a part that rests on the other, whichever way around it is written', () => {
    expect(
      found(
        procedureWith({
          family: instead('face spacer.bottom lapped  meets nozzle.top', 'face nozzle.top lapped  meets spacer.bottom'),
        }),
      ),
    ).toEqual([]);
  });

  it('Not: an outer face of the unit', () => {
    expect(
      found(family('  part barrel "Barrel"\n  part plunger "Plunger" in barrel\n  face barrel.top lapped')),
    ).toEqual([]);
  });
});

describe('located-without-feature, no-marks-to-line-up. Not:', () => {
  it('features that the step names', () => {
    const own = instead('fit shim, spring, seat,', 'fit shim, spring, seat located by "slot over the pin",');
    expect(found(procedureWith({ build: own }))).toEqual([]);
  });

  it('is reported once, however many steps mention it', () => {
    expect(
      rulesFound(
        procedureWith({ family: instead('"Spacer"           on body    located by "two dowels"', '"Spacer" on body') }),
      ),
    ).toEqual(['located-without-feature']);
  });

  it('marks that only one part of the step has', () => {
    const marked = {
      family: instead('part needle "Needle"           in nozzle', 'part needle "Needle"  marks "Dot up"  in nozzle'),
      build: instead('nozzle located with needle', 'nozzle located with needle, marks aligned'),
    };
    expect(found(procedureWith(marked))).toEqual([]);
  });
});

describe('not-its-guard. Not:', () => {
  it('a guard that is no part of the unit', () => {
    expect(
      found(
        procedureWith({
          teardown: instead('guard body.end with nut', 'guard body.end "Plastic cap"'),
          clean: instead('      remove nut\n', ''),
        }),
      ),
    ).toEqual([]);
  });

  it('is reported where the family declares none', () => {
    expect(
      rulesFound(procedureWith({ family: instead('meets spacer.top   guarded by nut', 'meets spacer.top') })),
    ).toEqual(['not-its-guard']);
  });
});

describe('nothing-to-choose-from. Not:', () => {
  it('a part whose drawer the step names', () => {
    const change = {
      family: instead('in body    chosen from shims', 'in body'),
      repairs: instead(
        'choose shim to bring opening to opening by shim-rate',
        'choose shim to bring opening to opening by shim-rate "Drawer 4"',
      ),
    };
    expect(found(procedureWith(change))).toEqual([]);
  });

  it('a drawer that the shop lacks, where nothing is chosen', () => {
    const change = {
      shop: instead('  stock  shims   from 1.00 mm to 1.95 mm by 0.05 mm\n', ''),
      repairs: instead(
        'choose shim to bring opening to opening by shim-rate',
        'renew spring   rinse spring in cal-oil',
      ),
    };
    expect(found(procedureWith(change))).toEqual([]);
  });
});

describe('not-a-joint, locks-nothing. Not:', () => {
  it('an adjuster, and a joint named by its position', () => {
    const text = `family six "Six valves" {
  part body "Body" held in "cradle"
  part valve "Valve" in body for each cylinder 1..3
  part holder "Holder" on body holds valve for each cylinder 1..3
  part screw "Idle screw" on body
  joint holder to body
  adjuster screw sets idle
}
procedure example "Example" for six at bench revision A {
  stage build at build { clamp body   slacken holder 2   slacken screw   lock screw to 5 N·m ±1 source "Sheet"   run-down holder }
}
`;
    expect(found(`${procedureWith().split('family')[0]}${text}`)).toEqual([]);
  });
});

describe('oiled-thread-unsaid. Not:', () => {
  it('oil against rust after the torque, oil on what is no joint, a joint whose threads are oiled', () => {
    const late = instead(
      'with TW-80\n      unclamp',
      'with TW-80\n      oil nut with cal-oil "Outside"\n      unclamp',
    );
    const spring = instead('      clamp body\n', '      oil spring with cal-oil\n      clamp body\n');
    expect(found(procedureWith({ build: (text) => spring(late(text)) }))).toEqual([]);
    const oiled = instead('      run-down nut\n', '      oil nut with cal-oil\n      run-down nut\n');
    expect(
      found(procedureWith({ build: oiled, family: instead('joint nut to body', 'joint nut to body  threads oiled') })),
    ).toEqual([]);
    expect(rulesFound(procedureWith({ build: oiled }))).toEqual(['oiled-thread-unsaid']);
  });
});

describe('set-and-not-proven. Not:', () => {
  it('a test more than the family asks for', () => {
    const more = instead(
      '      relieve ',
      '      test seat-leak  hold 20 bar below opening for 10 s  accept "no drop"  on fail reshim (3 times)  source "Sheet"\n      relieve ',
    );
    expect(found(procedureWith({ prove: more }))).toEqual([]);
  });

  it('a family with no proof, as long as nothing is tested', () => {
    const change = { family: instead('  proven by opening\n', ''), prove: '', repairs: '' };
    expect(found(procedureWith(change))).toEqual([]);
    expect(rulesFound(procedureWith({ family: change.family }))).toEqual(['set-and-not-proven']);
  });
});

describe('pair-unsaid. Not:', () => {
  const pair = instead('in nozzle  matched to nozzle', 'in nozzle');
  const slides = 'check needle slides "Falls by its own weight"  on fail';
  const built = (steps: string) =>
    rulesFound(
      procedureWith({ family: pair, build: instead('      clamp body\n', `      ${steps}\n      clamp body\n`) }),
    );

  it('parts that are never renewed, or also singly, or that turn in each other', () => {
    expect(built(`${slides} renew nozzle, needle (once)`)).toEqual(['pair-unsaid']);
    expect(built(`${slides} reshim (3 times)`)).toEqual([]);
    expect(built(`${slides} renew nozzle, needle (once), renew needle (once)`)).toEqual([]);
    expect(built('check needle turns-free "No catch"  on fail renew nozzle, needle (once)')).toEqual([]);
  });
});

describe('part-unused. Not:', () => {
  /** The sound procedure with a part in none of its lists; `all` written out, or not. */
  const unnamed = (part: string, all: boolean) => {
    const cut = (text: string) => {
      const short = text.replaceAll(`, ${part}`, '').replaceAll(`${part}, `, '');
      const parts = ['nozzle', 'needle', 'nut', 'spacer', 'seat', 'spring', 'shim', 'body'].filter(
        (one) => one !== part,
      );
      return all ? short : short.replaceAll(' all ', ` ${parts.join(', ')} `);
    };
    return {
      teardown: (text: string) => cut(text).replace(/.*measure shim.*\n/u, ''),
      clean: cut,
      build: cut,
      repairs: (text: string) =>
        cut(text).replace(/choose shim[\s\S]*rinse shim.*\n/u, 'renew spring   rinse spring in cal-oil\n'),
    };
  };

  it('a part under parts that all come off is reported', () => {
    expect(rulesFound(procedureWith(unnamed('shim', false)))).toEqual(['part-unused']);
  });

  it('one that “all” reaches', () => {
    expect(found(procedureWith(unnamed('shim', true)))).toEqual([]);
  });

  it('one that lies on what comes off: part-still-held tells it', () => {
    expect(found(procedureWith(unnamed('seat', false)))).toEqual([]);
  });

  it('a partial job: the stack stays where it is', () => {
    const job = `procedure example "New nozzle" for holder at bench revision A {
  stage strip at strip { clamp body   slacken nut   discard washer   remove nut, nozzle, needle   unclamp body }
}
`;
    expect(found(`${procedureWith().split('procedure')[0]}${job}`)).toEqual([]);
  });

  it('one that touches the body alone', () => {
    const pin = instead('  part washer', '  part pin    "Dowel"            in body\n  part washer');
    const named = (text: string) => text.replaceAll(' all ', ' nozzle, needle, nut, spacer, seat, spring, shim, body ');
    expect(found(procedureWith({ family: pin, clean: named, build: named }))).toEqual([]);
  });
});

describe('step-unreachable. Not:', () => {
  it('a repair that only another repair sends to', () => {
    const change = {
      build: instead('      clamp body\n', '      check spring "Ends square"  on fail look (once)\n      clamp body\n'),
      repairs: (text: string) =>
        `${text}\n    repair look { do "Grind it square"   check spring "Now square"  on fail other-spring (once) }\n    repair other-spring { renew spring   rinse spring in cal-oil }`,
    };
    expect(found(procedureWith(change))).toEqual([]);
  });

  it('an adjuster that is turned as often as it takes, where nothing is behind it', () => {
    const turn = (list: string) =>
      rulesFound(
        procedureWith({
          prove: instead('reshim (3 times)', list),
          repairs: (text) =>
            `${text}\n    repair turn { set opening within opening   prime 2 strokes with gauge shut }\n    repair note-it { do "Write it down" }`,
        }),
      ).filter((rule) => rule === 'step-unreachable');
    expect(turn('reshim (3 times), note-it (once), turn')).toEqual([]);
    expect(turn('reshim (3 times), turn, note-it (once)')).toEqual(['step-unreachable']);
  });

  it('a repair that `like` takes over and does not use', () => {
    const like = `procedure sister "Sister" for holder at bench like example revision A {
  spec opening    pressure  250 bar +8 -0  source "Example sheet"
  spec nut-fit    torque    60 N·m ±5      source "Example sheet"
  spec shim-rate  rate      3 bar per 0.001 in  source "Example sheet"
  without stage prove
}
`;
    expect(rulesFound(`${procedureWith()}\n${like}`)).toEqual([]);
  });
});
