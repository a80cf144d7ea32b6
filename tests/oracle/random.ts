import fc from 'fast-check';

/*
 * Small families and procedures as text: a sensible rebuild of the family, then a few slips: lines lost, doubled,
 * swapped, moved, or put in where they do not belong. At most four gates, two repairs and three checks, or the
 * concrete runs are too many.
 */

type Pick = {
  readonly number: (from: number, to: number) => number;
  /** True in so many of a hundred. */
  readonly chance: (percent: number) => boolean;
  readonly of: <T>(list: readonly T[]) => T;
};

interface Family {
  readonly lines: readonly string[];
  /** From the body's end, without body and nut. */
  readonly stack: readonly string[];
  readonly needle: boolean;
  readonly washer: boolean;
  readonly plug: boolean;
  readonly faces: readonly string[];
  readonly ports: readonly string[];
  readonly bore: boolean;
}

interface Block {
  readonly head: string;
  readonly lines: string[];
}

/** The shop of all of them, a file of its own. */
export const shopText = `shop bench "Bench" {
  station strip "Strip" dirty
  station tank "Tank" wet
  station wheel "Wheel" abrasive
  station build "Build" clean
  station tester "Tester" clean, pressure
  fluid solvent "Solvent" solvent
  fluid suds "Suds" detergent
  fluid cal-oil "Test oil" test-oil
  stock shims from 1.00 mm to 1.95 mm by 0.05 mm
}
`;

/** Whole files of one procedure, by seed. */
export const procedureTexts: fc.Arbitrary<string> = fc.gen().map((gen) => {
  const number = (from: number, to: number): number => gen(fc.integer, { min: from, max: to });
  const pick: Pick = {
    number,
    chance: (percent) => number(1, 100) <= percent,
    of: (list) => list[number(0, list.length - 1)]!,
  };
  return procedureText(pick);
});

function procedureText(pick: Pick): string {
  const family = familyOf(pick);
  const blocks = [...stages(pick, family), ...repairs(pick, family)];
  const stageBlocks = blocks.filter(({ head }) => head.startsWith('stage'));
  slips(pick, family, blocks);
  if (pick.chance(15) && stageBlocks.length > 2) blocks.splice(pick.number(0, stageBlocks.length - 1), 1);
  const body = blocks
    .map(({ head, lines }) => ({ head, lines: lines.length === 0 ? ['tag'] : lines }))
    .map(({ head, lines }) => `  ${head} {\n${lines.map((line) => `    ${line}`).join('\n')}\n  }`);
  return [
    ...family.lines,
    'procedure p "P" for holder at bench revision A',
    '{',
    '  spec opening pressure 250 bar ±5 source "x"',
    '  spec nut-fit torque 60 N·m ±5 source "x"',
    '  spec shim-rate rate 3 bar per 0.001 in source "x"',
    ...body,
    '}',
    '',
  ].join('\n');
}

function familyOf(pick: Pick): Family {
  const needle = pick.chance(40);
  const spring = pick.chance(40);
  const shim = pick.chance(70);
  const spacer = pick.chance(50);
  const washer = pick.chance(40);
  const plug = pick.chance(20);
  const over = spacer ? 'spacer' : 'body';
  const faced = pick.chance(60);
  const lines = ['family holder "Holder" {', '  part body "Body"'];
  if (shim) lines.push('  part shim "Shim" in body chosen from shims');
  if (spring) lines.push(`  part spring "Spring" ${shim ? 'on shim' : 'in body'}${needle ? ' bears on needle' : ''}`);
  if (spacer) lines.push('  part spacer "Spacer" on body');
  lines.push(`  part nozzle "Nozzle" on ${over}`);
  if (needle) lines.push('  part needle "Needle" in nozzle');
  lines.push('  part nut "Nut" on body holds nozzle');
  if (washer) lines.push(`  part washer "Washer" on ${pick.of(['nut', 'body'])}${pick.chance(70) ? ' renewed' : ''}`);
  if (plug) {
    lines.push('  part valve "Valve" in body');
    lines.push(`  part plug "Plug" on body${pick.chance(60) ? ' holds valve' : ''}`);
  }
  const faces: string[] = [];
  if (faced) {
    const met = spacer ? 'spacer.top' : 'nozzle.top';
    lines.push(`  face body.end lapped meets ${met}${pick.chance(80) ? ' guarded by nut' : ''}`);
    faces.push('body.end', met);
    if (spacer && pick.chance(50)) {
      lines.push('  face spacer.bottom lapped meets nozzle.top');
      faces.push('spacer.bottom', 'nozzle.top');
    }
  }
  const ports = ['inlet'];
  lines.push('  port inlet on body');
  if (pick.chance(50)) {
    ports.push('tip');
    lines.push(`  port tip on nozzle${pick.chance(20) ? ' open in transit' : ''}`);
  }
  const bore = pick.chance(30);
  if (bore) {
    ports.push('bore');
    lines.push(`  port bore on body under ${over === 'body' ? 'nozzle' : over}`);
  }
  lines.push('  joint nut to body');
  if (plug) lines.push(`  joint plug to body${pick.chance(20) ? ' hand-tight is final' : ''}`);
  lines.push('}');
  const stack = [...(shim ? ['shim'] : []), ...(spring ? ['spring'] : []), ...(spacer ? ['spacer'] : []), 'nozzle'];
  return { lines, stack, needle, washer, plug, faces, ports, bore };
}

function stages(pick: Pick, family: Family): Block[] {
  const { stack, needle, washer, plug, faces, bore } = family;
  const outside = family.ports.filter((port) => port !== 'bore');
  const ports = outside.join(', ');
  const down = [...stack].reverse();
  const out = [
    'nut',
    ...down.flatMap((part) => (part === 'nozzle' && needle && pick.chance(70) ? [part, 'needle'] : [part])),
  ];
  const parts = ['body', 'nut', ...stack, ...(needle ? ['needle'] : []), ...(plug ? ['plug', 'valve'] : [])];
  const guarded = family.lines.some((line) => line.includes('guarded by nut'));
  const blocks: Block[] = [];
  if (pick.chance(60))
    blocks.push({ head: 'stage receive at strip', lines: ['receive', `cap ${ports}`, 'clean outside'] });
  const capped = blocks.length > 0;
  if (pick.chance(40))
    blocks.push({
      head: 'stage as-found at tester',
      lines: [
        ...(capped ? [`uncap ${ports}`] : []),
        'connect inlet',
        'read opening as found',
        'relieve',
        'disconnect inlet',
        ...(capped ? [`cap ${ports}`] : []),
      ],
    });
  const teardown = ['clamp body', 'slacken nut'];
  if (plug) teardown.push('slacken plug', 'remove plug, valve');
  if (washer) teardown.push('discard washer');
  if (pick.chance(60)) teardown.push(`remove ${out.join(', ')}`);
  else for (const part of out) teardown.push(`remove ${part}`);
  if (guarded) teardown.push('guard body.end with nut');
  if (bore) teardown.push('cap bore');
  teardown.push('unclamp body');
  blocks.push({ head: 'stage teardown at strip', lines: teardown });
  if (pick.chance(25)) blocks.push({ head: 'stage dress at wheel', lines: ['buff body'] });
  const clean = [
    ...(capped ? [`uncap ${ports}`] : []),
    ...(bore ? ['uncap bore'] : []),
    ...(guarded ? ['remove nut'] : []),
  ];
  clean.push(pick.chance(50) ? 'wash all in solvent' : `wash ${parts.join(', ')} in ${pick.of(['solvent', 'suds'])}`);
  if (pick.chance(20)) clean.push('clean holes of nozzle', 'wash nozzle in solvent');
  if (pick.chance(50)) clean.push('blow-dry all with air at most 1.5 bar');
  if (guarded) clean.push('guard body.end with nut');
  blocks.push({ head: 'stage clean at tank', lines: clean });
  let checks = 0;
  const build = [...(guarded ? ['remove nut'] : []), 'rinse all in cal-oil'];
  if (faces.length > 0) {
    const fails = ['', ` on fail renew ${pick.of(stack)} (once)`, ' on fail rework (once)'];
    build.push(`check ${faces.join(', ')} reuse if "bright" reject if "scored"${pick.of(fails)}`);
    checks++;
  }
  if (pick.chance(30) && checks < 3)
    build.push(
      `check ${pick.of(stack)} "whole" on fail ${pick.of(['renew-it', `wash ${pick.of(stack)} in solvent`, 'rework (twice)'])}`,
    );
  build.push('clamp body');
  const inside = needle ? ' with needle' : '';
  if (pick.chance(50)) build.push(`fit ${stack.join(', ')}${inside}`);
  else for (const part of stack) build.push(part === 'nozzle' ? `fit nozzle${inside}` : `fit ${part}`);
  if (plug) build.push('fit valve', 'run-down plug', 'torque plug to nut-fit');
  build.push('run-down nut', 'torque nut to nut-fit', 'unclamp body');
  blocks.push({ head: 'stage build at build', lines: build });
  blocks.push(...prove(pick, family));
  const finish = [...(washer ? ['fit washer'] : []), `cap ${ports}`, 'sign-off by "Lead"'];
  blocks.push({ head: `stage finish at ${pick.of(['build', 'build', 'strip'])}`, lines: finish });
  return blocks;
}

const repairNames = ['rework', 'renew-it'];

function fails(pick: Pick): string {
  if (pick.chance(8)) return '';
  const counts = ['', ' (once)', ' (once)', ' (twice)', ' (3 times)'];
  const entries = pick.chance(40)
    ? [...repairNames].sort(() => pick.number(0, 1) * 2 - 1).map((name) => `${name}${pick.of(counts)}`)
    : [`${pick.of(repairNames)}${pick.of(counts)}`];
  return ` on fail ${entries.join(', ')}`;
}

/** One or two stages with one to four tests. */
function prove(pick: Pick, { plug, faces }: Family): Block[] {
  const tests = pick.number(1, 4);
  const names = ['opening', 'leak', 'chatter', 'spray'].slice(0, tests);
  const lines = names.map((name, index) => {
    const what =
      index === 0
        ? 'read pressure within opening'
        : name === 'leak' && pick.chance(60)
          ? 'hold 20 bar below opening for 10 s accept "dry"'
          : 'with gauge shut accept "good"';
    const named = ['nut', ...(plug ? ['plug', 'nut, plug'] : []), ...faces.slice(0, 1)];
    const through = pick.chance(20) ? ` proves through ${pick.of(named)}` : '';
    const stop = pick.chance(20) ? ' stop if fails' : '';
    return `test ${name} ${what}${through}${stop}${fails(pick)}`;
  });
  const start = ['connect inlet', 'prime 6 strokes with gauge shut'];
  const stop = ['relieve', 'disconnect inlet'];
  if (pick.chance(20)) lines.splice(pick.number(0, lines.length), 0, `check nozzle "dry"${fails(pick)}`);
  if (tests < 2 || pick.chance(60)) return [{ head: 'stage prove at tester', lines: [...start, ...lines, ...stop] }];
  const cut = pick.number(1, tests - 1);
  const between = pick.chance(50);
  return [
    { head: 'stage prove at tester', lines: [...start, ...lines.slice(0, cut), ...(between ? stop : [])] },
    ...(between && pick.chance(40) ? [{ head: 'stage cool at build', lines: ['wait 10 min', 'check nut "dry"'] }] : []),
    { head: 'stage prove-on at tester', lines: [...(between ? start : []), ...lines.slice(cut), ...stop] },
  ];
}

function repairs(pick: Pick, family: Family): Block[] {
  return repairNames.map((name, index) => {
    const { stack, needle } = family;
    const station = pick.chance(15) ? ` at ${pick.of(['build', 'strip', 'tester'])}` : '';
    const depth = pick.number(0, 3);
    if (depth === 0)
      return {
        head: `repair ${name}${station}`,
        lines: [pick.of(['relieve', 'wash nozzle in solvent', 'rinse nozzle in cal-oil'])],
      };
    const out = [...stack].reverse();
    const lines = ['relieve', 'disconnect inlet', 'clamp body', 'slacken nut', `remove nut, ${out.join(', ')}`];
    if (pick.chance(50) && stack.includes('shim')) lines.push('choose shim to bring opening to 254 bar by shim-rate');
    if (pick.chance(40)) {
      const part = pick.of(stack);
      lines.push(`renew ${part}${pick.chance(30) ? ' ready to fit' : ''}`);
      if (pick.chance(80)) lines.push(`rinse ${part} in cal-oil`);
    }
    if (index === 0 && pick.chance(15))
      lines.push(`check nozzle "seat"${pick.of([' on fail renew-it', ' on fail renew-it (once)', ''])}`);
    lines.push(`fit ${stack.join(', ')}${needle && pick.chance(20) ? ' with needle' : ''}`);
    lines.push(
      'run-down nut',
      'torque nut to nut-fit',
      'unclamp body',
      'connect inlet',
      'prime 6 strokes with gauge shut',
    );
    return { head: `repair ${name}${station}`, lines };
  });
}

function slips(pick: Pick, family: Family, blocks: readonly Block[]) {
  const count = pick.of([0, 1, 1, 2, 2, 3, 5]);
  for (let done = 0; done < count; done++) {
    const { lines } = pick.of(blocks);
    if (lines.length === 0) continue;
    const at = pick.number(0, lines.length - 1);
    switch (pick.number(1, 7)) {
      case 1:
      case 2:
        lines.splice(at, 1);
        break;
      case 3:
        if (!lines[at]!.startsWith('test ') && !lines[at]!.startsWith('check ')) lines.splice(at, 0, lines[at]!);
        break;
      case 4:
        if (at > 0) lines.splice(at - 1, 2, lines[at]!, lines[at - 1]!);
        break;
      case 5: {
        const [line] = lines.splice(at, 1);
        lines.splice(pick.number(0, lines.length), 0, line!);
        break;
      }
      case 6:
        lines[at] = shorter(pick, lines[at]!);
        break;
      default:
        lines.splice(at, 0, stray(pick, family));
    }
  }
}

/** A line with one thing of its list less. */
function shorter(pick: Pick, line: string): string {
  const match = /^(remove|fit|wash|rinse|cap|uncap) ([\w-]+(?:, [\w-]+)+)(.*)$/u.exec(line);
  if (match === null) return line;
  const list = match[2]!.split(', ');
  list.splice(pick.number(0, list.length - 1), 1);
  return `${match[1]} ${list.join(', ')}${match[3]}`;
}

function stray(pick: Pick, { stack, ports, faces, plug, needle }: Family): string {
  const part = pick.of([...stack, 'nut']);
  return pick.of([
    `remove ${part}`,
    `fit ${pick.of(stack)}`,
    `fit ${pick.of(stack)} for trial`,
    `discard ${pick.of(stack)}`,
    `renew ${pick.of(stack)}`,
    `wash ${part} in ${pick.of(['solvent', 'suds', 'cal-oil'])}`,
    `rinse ${part} in ${pick.of(['solvent', 'cal-oil'])}`,
    'wait 10 min',
    'clean outside',
    `cap ${pick.of(ports)}`,
    `uncap ${pick.of(ports)}`,
    'connect inlet',
    'disconnect inlet',
    'relieve',
    'prime 6 strokes',
    'clamp body',
    'unclamp body',
    'slacken nut',
    'slacken nut held by "spanner"',
    'run-down nut',
    'torque nut to nut-fit',
    'torque nut to nut-fit held by "spanner"',
    'sign-off by "Lead"',
    'buff body',
    ...(faces.length > 0 ? [`lap ${pick.of(faces)}`] : []),
    ...(plug ? ['slacken plug', 'torque plug to nut-fit', 'remove plug'] : []),
    ...(needle ? ['remove needle', 'fit needle', 'renew nozzle, needle', 'remove nut, nozzle'] : []),
  ]);
}
