import { describe, expect, it } from 'vitest';
import { check, told } from '../../../../tests/fixtures/example-pages.ts';
import { instead, procedureWith } from '../../../../tests/fixtures/sound-procedure.ts';
import { fullMessage } from '../../../model/diagnostic.ts';
import { isProblemCode } from '../../../syntax/problem-code.ts';
import { protection } from './index.ts';

const area = protection.map(({ code }) => code);

/** What is found in a text, as `step rule`. */
const found = (text: string) => told(text).map(({ rule, step }) => `${step ?? '–'} ${rule}`);
const messages = (text: string, rule: string) =>
  check(text)
    .diagnostics.filter((diagnostic) => diagnostic.rule === rule)
    .map((one) => fullMessage(one));

type Change = NonNullable<Parameters<typeof procedureWith>[0]>;
/** A near-miss is correct practice: no rule of this area finds anything. */
const near = (change: Change) => {
  const { diagnostics } = check(procedureWith(change));
  expect(
    diagnostics
      .filter(({ rule }) => isProblemCode(rule) || [...area, 'unknown-name'].includes(rule))
      .map((one) => `${one.step} ${one.rule}: ${fullMessage(one)}`),
  ).toEqual([]);
};

/** The one line of a text that begins so, put in another's place. */
const line = (start: string, put: (row: string) => string) => (text: string) => {
  const rows = text.split('\n').filter((row) => row.trim().startsWith(start));
  if (rows.length !== 1) throw new Error(`“${start}” begins ${rows.length} lines of the text`);
  return text.replace(`${rows[0]}\n`, put(`${rows[0]}\n`));
};
const ahead = (start: string, lines: string) => line(start, (row) => `${lines}\n${row}`);
const without = (start: string) => line(start, () => '');

describe('cannot-see. Not:', () => {
  it('a movement that is felt, of a part that is closed in', () => {
    near({ prove: ahead('connect inlet', '      check needle slides "Heard to fall"  on fail reshim (3 times)') });
  });

  it('the outside of a closed unit, the end of the nozzle, a port', () => {
    near({
      prove: ahead(
        'connect inlet',
        '      check body, nut, nozzle "No burr, tip not blued"  reuse if "bright"  reject if "blued"\n      check inlet "Thread whole"  reject if "torn"',
      ),
    });
  });

  it('what sweats under pressure', () => {
    near({
      prove: ahead(
        'relieve    disconnect inlet',
        '      check body.end "Dry at the joint"  reuse if "dry"  reject if "weeping"',
      ),
    });
  });

  it('a part that a nut clamps onto a shaft', () => {
    const text = `
family turbo "Turbocharger core" {
  part housing "Bearing housing"
  part shaft   "Shaft and turbine wheel"  in housing
  part collar  "Thrust collar"            on shaft
  part wheel   "Compressor wheel"         on collar
  part nut     "Shaft nut"                on shaft  holds wheel
  joint nut to shaft
}
procedure look "Look" for turbo at bench revision A {
  stage look at build {
    check wheel, collar "No rub mark"  reuse if "bright"  reject if "rubbed"
  }
}`;
    expect(messages(`${procedureWith()}${text}`, 'cannot-see')).toEqual([]);
  });

  it('is found where only a repair leaves it shut', () => {
    const change: Change = {
      build: ahead('clamp body', '      check body.end "Even"  on fail regrind (once)'),
      repairs: (sound) =>
        `${sound}\n    repair regrind at build {\n      lap body.end\n      wipe body in solvent\n      rinse body in cal-oil\n      guard body.end with nut\n    }`,
    };
    expect(messages(procedureWith(change), 'cannot-see')).toEqual([
      expect.stringMatching(
        /is under its guard .* This happens after the check at .* fails and regrind \(R2\) is done\.$/u,
      ),
    ]);
  });
});

describe('port-handled-twice. Not:', () => {
  const take = 'take-off (once)';
  const repairs = (sound: string) =>
    `${sound}\n    repair take-off at strip {\n      disconnect inlet\n      cap inlet\n      wipe body in solvent\n      uncap inlet\n    }`;

  it('a disconnect in a repair that is entered with the line on and with the line off', () => {
    const text = procedureWith({
      prove: (sound) =>
        instead(
          'on fail reshim (3 times)',
          `on fail reshim (3 times), ${take}`,
        )(ahead('connect inlet', `      check body "Clean"  on fail ${take}`)(sound)),
      repairs,
    });
    expect(messages(text, 'port-handled-twice')).toEqual([]);
  });

  it('a cap that the way of a repair finds on already', () => {
    near({
      build: instead(
        '      unclamp body\n',
        '      unclamp body\n      check nut "Marked with paint after the torque"  on fail mark-it (once)\n      cap tip\n      uncap tip\n',
      ),
      repairs: (sound) => `${sound}\n    repair mark-it {\n      cap tip\n      wipe nut\n    }`,
    });
  });

  it('transit caps and a line that the unit comes in with', () => {
    near({
      receive: instead(
        '      cap inlet, tip\n',
        '      disconnect inlet\n      uncap inlet, tip\n      cap inlet, tip\n',
      ),
    });
  });

  it('a new part, which comes without the cap of the old one', () => {
    near({
      teardown: instead('keep nozzle', 'cap tip\n      keep nozzle'),
      asFound: instead('      cap inlet, tip\n', '      cap inlet\n'),
      clean: instead('uncap inlet, tip', 'uncap inlet, tip'),
    });
  });

  it('one forgotten cap or line is one finding', () => {
    expect(found(procedureWith({ asFound: without('uncap inlet, tip') }))).toEqual(['2.1 passage-blocked']);
    expect(found(procedureWith({ clean: without('uncap inlet, tip') }))).toEqual(['5.2 passage-blocked']);
    expect(found(procedureWith({ asFound: instead('      cap inlet, tip\n', '') }))).toEqual(['4.1 open-port-in-dirt']);
    expect(found(procedureWith({ asFound: without('connect inlet') }))).toEqual(['2.2 not-on-the-tester']);
  });
});

describe('leaves-wet. Not:', () => {
  it('oiled instead of dried', () => {
    near({
      clean: instead('blow-dry all with air at most 1.5 bar', 'rinse all in cal-oil'),
    });
  });

  it('parts left to soak at the tank while the unit goes on', () => {
    near({
      teardown: instead(
        'at tank "Own basket, own number"',
        'at tank "Own basket, own number"\n      send nozzle, needle to tank',
      ),
      dress: (sound) =>
        `\n    stage soak at tank {\n      uncap tip\n      soak nozzle, needle in solvent for 2 h "Apart"\n      keep nozzle, needle at tank "In the bath, own basket"\n      cap tip\n    }${sound}`,
    });
  });

  it('is found where only a repair leaves it wet', () => {
    const repair = (dry: string) => ({
      prove: instead('on fail reshim (3 times)', 'on fail reshim (3 times), flush (once)'),
      repairs: (sound: string) =>
        `${sound}\n    repair flush at tank {\n      open\n      wash nozzle, needle in solvent\n${dry}      rinse spring in cal-oil\n      fit shim, spring, seat, spacer located, nozzle located with needle\n      run-down nut    torque nut to nut-fit with TW-80\n      unclamp body\n    }`,
    });
    expect(messages(procedureWith(repair('      rinse nozzle, needle in cal-oil\n')), 'leaves-wet')).toEqual([]);
    const wet = procedureWith({
      prove: instead('on fail reshim (3 times)', 'on fail reshim (3 times), flush (once)'),
      repairs: (sound: string) =>
        `${sound}\n    repair flush at tank {\n      relieve   disconnect inlet\n      cap inlet, tip\n      wash body in solvent\n      uncap inlet, tip\n    }`,
    });
    expect(messages(wet, 'leaves-wet')).toEqual([
      expect.stringMatching(/^The holder body leaves the wash tank wet .*fails and flush \(R2\) is done\.$/u),
    ]);
  });

  it('a forgotten blow-dry is one finding', () => {
    expect(found(procedureWith({ clean: without('blow-dry all with air at most 1.5 bar') }))).toEqual([
      '5.7 leaves-wet',
    ]);
  });
});

describe('lapped-face-abraded. Not:', () => {
  it('lapping and stoning, a brush, and parts with no lapped face', () => {
    near({
      build: ahead(
        'clamp body',
        '      lap needle, nozzle "To each other"\n      wipe needle, nozzle in solvent with "brass brush"\n      rinse needle, nozzle in cal-oil\n      check nozzle.top  reuse if "bright"  reject if "line left"',
      ),
      dress: instead('buff body', 'buff body\n      blast nut in "soft grit"\n      guard body.end with nut'),
      teardown: (sound) => sound,
    });
  });

  it('a body whose faces are covered, and a nozzle that is in its place', () => {
    near({
      dress: '',
      asFound: (sound) =>
        `${sound}\n    stage dress at wheel {\n      buff body, nozzle\n      mark body with number, serial\n    }`,
    });
  });
});

describe('lapped-parts-together. Not:', () => {
  it('a matched pair, or one lapped part among others', () => {
    near({
      teardown: instead(
        'keep nozzle, needle, spacer, seat, spring, shim at tank "Own basket, own number"',
        'keep nozzle, needle at tank\n      keep spacer, seat, spring, shim at tank',
      ),
    });
  });

  it('any words of the author', () => {
    near({
      teardown: instead('at tank "Own basket, own number"', 'at tank in "cups of their own"'),
    });
  });

  it('the six needles of one pump are found', () => {
    const text = `
family pump "Pump" {
  part body    "Body"
  part barrel  "Barrel"   in body     for each cylinder 1..6
  part plunger "Plunger"  in barrel   matched to barrel   for each cylinder 1..6
}
procedure strip "Strip" for pump at bench revision A {
  stage strip at strip {
    remove plunger
    keep plunger at tank
  }
}`;
    expect(messages(`${procedureWith()}${text}`, 'lapped-parts-together')).toHaveLength(1);
  });
});

describe('outside-cleaned-with-ports-open and opened-before-outside-cleaned. Not:', () => {
  it('an outer part that opens nothing, taken off before', () => {
    near({
      receive: instead('      clean outside\n', '      discard washer\n      clean outside\n'),
      teardown: instead('      discard washer\n', ''),
    });
  });

  it('a procedure that takes no unit in, and one with no fine part', () => {
    const text = procedureWith({ receive: '' });
    expect(messages(text, 'opened-before-outside-cleaned')).toEqual([]);
  });

  it('a forgotten cleaning is reported once, repairs and all', () => {
    expect(found(procedureWith({ receive: without('clean outside') }))).toEqual(['3.2 opened-before-outside-cleaned']);
  });
});

describe('dunked-part. Not:', () => {
  it('a rough wash with the guard on, before another', () => {
    near({ clean: instead('      remove nut\n', '      wash body in solvent "Rough"\n      remove nut\n') });
  });

  it('rinsing and wiping with the guard on', () => {
    near({
      clean: (sound) =>
        sound.replace(
          /( +)guard body\.end with nut\n/u,
          '$1guard body.end with nut\n$1wipe body in solvent\n$1wipe body\n',
        ),
    });
  });

  it('`all` of a partial job: what no one has opened stays shut', () => {
    const family = instead(
      '  joint nut to body\n',
      '  part valve  "Relief valve"  in body\n  part plug   "Plug"  on body  holds valve\n  joint plug to body\n  joint nut to body\n',
    );
    near({ family });
  });

  it('a unit that is closed is found', () => {
    expect(
      messages(
        procedureWith({
          receive: (sound) =>
            `${sound}\n    stage dip at tank {\n      wash needle in solvent\n      blow-dry all with air at most 1.5 bar\n    }`,
        }),
        'dunked-part',
      ),
    ).toHaveLength(1);
  });

  it.each(['rinse needle in cal-oil', 'wipe needle with "lint-free cloth"'])(
    'nor does %s reach it there',
    (cleaned) => {
      expect(
        messages(
          procedureWith({ receive: (sound) => `${sound}\n    stage dip at tank {\n      ${cleaned}\n    }` }),
          'dunked-part',
        ),
      ).toHaveLength(1);
    },
  );

  it('a guard that stays on is one finding', () => {
    expect(found(procedureWith({ clean: without('remove nut') }))).toEqual(['5.2 guard-in-the-wash']);
  });
});

describe('units-mixed-in-the-bath. Not:', () => {
  const together = instead('stage clean at tank {', 'stage clean at tank, the set together {');

  it('parts in a basket of their own', () => {
    near({ clean: together });
  });

  it('parts with no word on them are found once', () => {
    const text = procedureWith({
      teardown: instead(
        'keep nozzle, needle, spacer, seat, spring, shim at tank "Own basket, own number"',
        'keep nozzle, needle at tank\n      keep spacer, seat, spring, shim at tank',
      ),
      clean: together,
    });
    expect(found(text)).toEqual(['5.3 units-mixed-in-the-bath']);
  });
});

describe('matched-parts-split. Not:', () => {
  const renewed = (step: string, after = '') =>
    ahead('clamp body', `      ${step}\n      rinse all in cal-oil\n${after}`.trimEnd());

  it('chosen to fit', () => {
    near({ build: renewed('renew needle "Chosen to this bore"') });
  });

  it('lapped together', () => {
    near({
      build: renewed('renew needle\n      lap needle, nozzle\n      wipe needle, nozzle in solvent'),
    });
  });

  it('renewed in two steps, or with a lapped face', () => {
    near({ build: renewed('renew nozzle\n      renew needle') });
    near({
      build: renewed('renew nozzle, needle\n      lap nozzle.top\n      wipe nozzle in solvent'),
    });
  });

  it('balanced again before fitting', () => {
    const text = (balance: string) => `${procedureWith()}
family turbo "Turbocharger core" {
  part housing "Bearing housing"
  part shaft   "Shaft"             in housing
  part wheel   "Compressor wheel"  on shaft  balanced with shaft
}
procedure core "Core" for turbo at bench revision A {
  stage build at build {
    remove wheel
    renew wheel
    ${balance}
    fit wheel
  }
}`;
    expect(messages(text('send-out for "Balancing with its shaft"'), 'matched-parts-split')).toEqual([]);
    expect(messages(text('rinse wheel in cal-oil'), 'matched-parts-split')).toHaveLength(1);
  });

  it('a pair kept in one place by two steps, or in two with words', () => {
    near({
      teardown: instead(
        'keep nozzle, needle, spacer,',
        'keep needle at tank "With its nozzle"\n      keep nozzle, spacer,',
      ),
    });
  });

  it('is found on the path of the repair that renews one alone', () => {
    const text = procedureWith({
      build: ahead('clamp body', '      check needle slides "Falls"  on fail renew needle (once), reshim'),
    });
    expect(messages(text, 'matched-parts-split')).toEqual([
      expect.stringMatching(/This happens after the check at .* fails and renew \(R\d\) is done\.$/u),
    ]);
  });
});

describe('face-closed-unclean. Not:', () => {
  it('a face whose part was lapped and then washed', () => {
    near({
      build: ahead(
        'clamp body',
        '      lap spacer.top\n      wipe spacer in solvent\n      rinse spacer in cal-oil\n      check spacer.top  reuse if "even"  reject if "line left"',
      ),
    });
  });
});

describe('dirty-work-in-clean-room. Not:', () => {
  it('rinsing in test oil, wiping, lapping, a mark with a pen or a tag', () => {
    near({
      build: ahead('clamp body', '      wipe body in solvent "Lint-free cloth"\n      rinse body in cal-oil'),
      finish: ahead('fit washer', '      mark body with number "Paint pen"'),
    });
  });

  it('a clean station that is made for washing', () => {
    near({
      shop: (sound) => sound.replace('"Clean room"        clean', '"Clean room"  clean, wet'),
      build: ahead('clamp body', '      wash spring in solvent\n      rinse spring in cal-oil'),
    });
  });

  it('a needle washed in a cup by a repair that names no station', () => {
    near({
      build: ahead('clamp body', '      check needle slides "Falls"  on fail cup (once)'),
      repairs: (sound) =>
        `${sound}\n    repair cup {\n      wash needle in solvent\n      rinse needle in cal-oil\n    }`,
    });
  });
});

describe('built-at-dirty-station. Not:', () => {
  it('trial fits and guards', () => {
    near({
      teardown: instead(
        '      guard body.end with nut\n',
        '      guard body.end with nut\n      remove nut\n      fit nut for trial "Does the thread run free?"\n      remove nut\n      guard body.end with nut\n',
      ),
    });
  });

  it('a joint that is slackened and pulled up again', () => {
    const text = procedureWith({
      finish: (sound) =>
        `\n    stage ease at strip {\n      clamp body\n      slacken nut\n      run-down nut\n      torque nut to nut-fit with TW-80\n      unclamp body\n    }${sound}`,
    });
    expect(messages(text, 'built-at-dirty-station')).toEqual([]);
  });
});

describe('count-does-not-close. Not:', () => {
  const family = instead('  port tip on nozzle', '  port bore on body  under spacer\n  port tip on nozzle');
  const capped = instead('      guard body.end with nut\n', '      cap bore\n      guard body.end with nut\n');

  it('a cap that comes out before its cover goes on, and one under a guard or a trial fit', () => {
    near({
      family,
      teardown: capped,
      clean: instead('uncap inlet, tip', 'uncap inlet, tip, bore'),
      build: ahead(
        'clamp body',
        '      cap bore\n      fit spacer located for trial "Does it rock?"\n      remove spacer\n      uncap bore',
      ),
    });
  });

  it('a cap that is left in is found', () => {
    const text = procedureWith({ family, build: ahead('clamp body', '      cap bore') });
    expect(messages(text, 'count-does-not-close')).toHaveLength(1);
  });

  it('a part left in for trial is reported once', () => {
    const text = procedureWith({
      build: (sound) => sound.replace('fit shim, spring,', 'fit shim for trial\n      fit spring,'),
    });
    expect(found(text)).toEqual([expect.stringMatching(/count-does-not-close$/u)]);
  });
});

describe('no-safe-stop. Not:', () => {
  it('a unit that is closed, covered and put away; one that drains on the tester', () => {
    near({
      teardown: (sound) => sound.replace(/( +)unclamp body\n/u, '$1unclamp body\n$1hold-for "the customer’s word"\n'),
      prove: ahead('relieve    disconnect inlet', '      hold-for "the inspector, who sees the opening"'),
    });
  });

  it('ports, faces and parts are reported once each, and not again where the unit leaves', () => {
    const text = procedureWith({
      teardown: (sound) =>
        sound
          .replace(/ +guard body\.end with nut\n/u, '')
          .replace(/( +)unclamp body\n/u, '$1unclamp body\n$1hold-for "the word"\n'),
    });
    expect(found(text).filter((one) => !one.endsWith('part-handled-twice'))).toEqual(['3.8 no-safe-stop']);
  });
});

describe('water-washed-not-oiled. Not:', () => {
  const suds = (sound: string) => sound.replaceAll('in solvent', 'in suds');

  it('oiled at the next bench', () => {
    near({ clean: suds });
  });

  it('a pair that is blown dry is reported as dry, the rest as bare', () => {
    const text = procedureWith({
      clean: suds,
      build: line('rinse all in cal-oil', () => '      rinse nozzle, needle in cal-oil\n'),
    });
    expect(messages(text, 'water-washed-not-oiled')).toEqual([expect.stringContaining('go together dry')]);
  });

  it('is found where only a repair washes so', () => {
    const text = procedureWith({
      repairs: instead(
        '      rinse shim in cal-oil\n',
        '      wash shim in suds\n      blow-dry shim with air at most 1.5 bar\n',
      ),
    });
    expect(messages(text, 'water-washed-not-oiled')).toEqual([
      expect.stringMatching(/^The setting shim goes together dry .*fails and reshim \(R1\) is done\.$/u),
    ]);
  });
});

describe('a forgotten guard', () => {
  it('is one finding of the face', () => {
    const text = procedureWith({ teardown: without('guard body.end with nut') });
    expect(found(text)).toEqual(['3.7 bare-lapped-face']);
  });

  it('and other parts that lie loose are reported besides', () => {
    const text = procedureWith({
      teardown: (sound) =>
        without('guard body.end with nut')(instead(' seat, spring, shim at tank', ' seat, shim at tank')(sound)),
    });
    expect(messages(text, 'parts-left-loose')).toEqual([expect.stringContaining('The pressure spring lies loose')]);
  });
});
