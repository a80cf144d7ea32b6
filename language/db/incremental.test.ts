import { describe, expect, it } from 'vitest';
import { exampleFamily, exampleShop } from '../../tests/fixtures/example-base.ts';
import { Random } from '../../tests/fuzz/random.ts';
import type { SettingsFile } from '../config/config.ts';
import { type CheckResult, checkFiles, type SourceFile, Workspace } from './workspace.ts';

const body = (name: string) => `procedure ${name} "Example" for holder at bench revision A {
  spec opening    pressure  250 bar +8 -0  source "Example sheet"
  spec nut-fit    torque    60 N·m ±5      source "Example sheet"
  spec shim-rate  rate      3 bar per 0.001 in  source "Example sheet"
  number A-250
  stage teardown at strip {
    receive  tag
    cap inlet, tip
    open
    discard washer
    remove nut, nozzle, needle, spacer, seat, spring, shim
  }
  stage build at build {
    rinse all in cal-oil
    only A-250 { check shim reuse if "flat" reject if "scored" }
    clamp body
    fit shim, spring, seat, spacer located, nozzle located with needle
    torque nut to nut-fit with TW-80
    unclamp body  allow not-clamped because "held by hand"
  }
  stage prove at tester {
    uncap inlet, tip
    connect inlet
    test opening  read pressure within opening  on fail reshim (2 times)
    relieve  disconnect inlet
    sign-off by "Bench lead"
  }
  repair reshim {
    open
    choose shim to bring opening to opening by shim-rate
  }
}
`;

/** Seven files, several declarations in most, with names that lead from each to others. */
const start: readonly SourceFile[] = [
  { uri: 'shop.rebuild', text: `${exampleShop}\n` },
  {
    uri: 'families.rebuild',
    text: `${exampleFamily}\nfamily cartridge "Cartridge" {\n  part core "Core"\n  part cap "Cap" on core\n  joint cap to core\n  proven by balance\n}\n`,
  },
  {
    uri: 'sequences.rebuild',
    text: 'sequence open {\n  clamp body\n  slacken nut\n  unclamp body\n}\nsequence rest {\n  wait 10 min\n}\n',
  },
  { uri: 'a.rebuild', text: body('a') },
  {
    uri: 'b.rebuild',
    text: 'procedure b like a revision B {\n  without teardown\n  after torque nut in build {\n    rest\n  }\n  number A-250\n}\n\nprocedure c like b {\n}\n',
  },
  {
    uri: 'd.rebuild',
    text: 'procedure d for cartridge at bench {\n  spec play  length 0.1 mm ±0.05  source "x"\n  stage look at build {\n    fit cap\n    test balance accept "even"\n    missing\n  }\n}\njob 9 of d {\n  unit 1 unknown serial "1"\n    play 0.1 mm\n}\n',
  },
  {
    uri: 'jobs.rebuild',
    text: 'job 1 of a revision A received 2026-10-01 {\n  unit 1 A-250 serial "S1"\n    as found opening 214 bar\n    shim out 1.30 mm\n    opening 253 bar on PG-400\n}\njob 2 of b {\n  unit 1 A-250 serial "S2"\n    opening 2530 bar on PG-400\n}\n',
  },
];

/** What a check gives, as plain data. */
const plain = ({ diagnostics, procedures, jobs, resolved, references: links, symbols, restated }: CheckResult) => ({
  diagnostics,
  procedures: procedures.map((one) => ({ procedure: one.procedure, diagnostics: one.diagnostics })),
  jobs,
  resolved,
  links,
  symbols: [...symbols],
  restated,
});

const words = (text: string) =>
  [...text.matchAll(/[\p{L}\p{N}-]+|"[^"]*"|[^\s\p{L}\p{N}-]/gu)].map(({ 0: word, index }) => ({
    from: index,
    to: index + word.length,
    word,
  }));

/** Names that one edit takes in another's place, so that names come, go and meet. */
const names = [
  'a',
  'b',
  'c',
  'd',
  'open',
  'rest',
  'missing',
  'holder',
  'cartridge',
  'bench',
  'opening',
  'nut',
  'A-250',
];

const additions = [
  'sequence missing {\n  wait 5 min\n}\n',
  'sequence lone {\n  wait 5 min\n}\n',
  'procedure e for holder at bench {\n  stage s at build {\n    missing\n    fit nut\n  }\n}\n',
  'procedure f like d {\n}\n',
  'family holder "Second" {\n  part body "Body"\n}\n',
  'shop bench "Second" {\n  station one\n}\n',
  'job 3 of e {\n}\n',
  'job 1 of a received 2026 1 {\n}\n',
  '// a remark\n\n',
  'wait what\n',
];

/** One edit of one text: a splice of tokens, another name, something new, a declaration gone or moved. */
function edited(random: Random, text: string): string {
  const all = words(text);
  const at = all.length === 0 ? null : random.pick(all);
  const blocks = text.split(/^(?=\S)/mu);
  switch (random.below(10)) {
    case 0:
      return at === null ? text : text.slice(0, at.from) + text.slice(at.to);
    case 1:
      return at === null ? text : `${text.slice(0, at.to)} ${at.word} ${text.slice(at.to)}`;
    case 2: {
      const named = all.filter(({ word }) => names.includes(word));
      if (named.length === 0) return text;
      const { from, to } = random.pick(named);
      return text.slice(0, from) + random.pick(names) + text.slice(to);
    }
    case 3: {
      const place = random.below(blocks.length + 1);
      return [...blocks.slice(0, place), random.pick(additions), ...blocks.slice(place)].join('');
    }
    case 4: {
      const gone = random.below(blocks.length);
      return blocks.filter((_, index) => index !== gone).join('');
    }
    case 5: {
      const from = random.below(blocks.length);
      const [block = ''] = blocks.splice(from, 1);
      blocks.splice(random.below(blocks.length + 1), 0, block);
      return blocks.join('');
    }
    case 6: {
      const lines = text.split('\n');
      lines.splice(random.below(lines.length + 1), 0, '');
      return lines.join('\n');
    }
    case 7:
      return at === null ? text : `${text.slice(0, at.from)} ${text.slice(at.from)}`;
    case 8: {
      const braces = all.filter(({ word }) => word === '{' || word === '}');
      if (braces.length === 0) return `${text}}`;
      const { from, to, word } = random.pick(braces);
      return text.slice(0, from) + (random.chance(0.5) ? '' : `${word}\n${word}`) + text.slice(to);
    }
    default:
      return text.replace(/\b(\d)/u, (digit) => String((Number(digit) + 1) % 10));
  }
}

describe('a checker that is kept through edits', () => {
  it.each([1, 2, 3, 4])('gives what a fresh one gives after each, seed %i', { timeout: 300_000 }, (seed) => {
    const random = new Random(seed);
    const checker = new Workspace();
    let files = [...start];
    let settings: SettingsFile | null = null;
    for (let count = 0; count < 60; count++) {
      const at = random.below(files.length);
      if (random.chance(0.1)) {
        const severity = random.pick(['error', 'hint', 'off']);
        settings = random.chance(0.3)
          ? null
          : { uri: 'handtight.json', text: `{ "severities": { "part-unused": "${severity}" } }` };
      } else if (random.chance(0.06)) files = files.filter((_, index) => index !== at);
      else if (random.chance(0.11)) files = [...start.slice(0, 1 + at), ...files.slice(1 + at)];
      else if (files[at] !== undefined) files[at] = { uri: files[at].uri, text: edited(random, files[at].text) };
      if (files.length === 0 || random.chance(0.03)) files = [...start];
      const kept = plain(checker.check(files, settings));
      expect(kept, `edit ${count}`).toEqual(plain(checkFiles(files, settings)));
    }
  });
});

describe('what an edit computes', () => {
  /** Checks, changes one text, checks again: what was computed, by query, without the names of files. */
  const computed = (uri: string, change: (text: string) => string, files = start) => {
    const checker = new Workspace();
    checker.check(files);
    checker.database.log = [];
    checker.check(files.map((file) => (file.uri === uri ? { uri, text: change(file.text) } : file)));
    const log = checker.database.log;
    return (query: string) =>
      log
        .filter((line) => line.startsWith(`${query} `))
        .map((line) =>
          line
            .slice(query.length + 1)
            .split('\0')
            .slice(0, 3)
            .join(' '),
        )
        .sort();
  };

  it('is one lowering and one analysis for an edit inside a procedure', () => {
    const of = computed('a.rebuild', (text) => text.replace('"flat"', '"flat, bright"'));
    expect(of('parsed')).toEqual(['a.rebuild']);
    // b is like a, and c like b: their steps are those of a.
    expect(of('lowered')).toEqual(['a.rebuild Procedure a', 'b.rebuild Procedure b', 'b.rebuild Procedure c']);
    expect(of('index')).toEqual([]);
    const alone = computed('d.rebuild', (text) => text.replace('fit cap', 'fit cap note "by hand"'));
    expect(alone('lowered')).toEqual(['d.rebuild Procedure d']);
    expect(alone('outcome')).toEqual(['d.rebuild Procedure d']);
  });

  it('is nothing but the file’s own parse for an edit between declarations', () => {
    const of = computed('d.rebuild', (text) => `// a remark\n\n${text}`);
    expect(of('parsed')).toEqual(['d.rebuild']);
    expect([...of('lowered'), ...of('outcome'), ...of('judged'), ...of('told')]).toEqual([]);
  });

  it('ends where the model is the same', () => {
    const of = computed('d.rebuild', (text) => text.replace('fit cap', 'fit cap  // by hand'));
    expect(of('lowered')).toEqual(['d.rebuild Procedure d']);
    expect([...of('outcome'), ...of('signature'), ...of('tests')]).toEqual([]);
  });

  it('is no lowering but its own for a name that nobody looked up', () => {
    const of = computed('sequences.rebuild', (text) => `${text}sequence lone {\n  wait 5 min\n}\n`);
    expect(of('lowered')).toEqual(['sequences.rebuild Sequence lone']);
    expect(of('outcome')).toEqual([]);
  });

  it('is the users of a name that was missing, and no others', () => {
    const of = computed('sequences.rebuild', (text) => `${text}sequence missing {\n  wait 5 min\n}\n`);
    expect(of('lowered')).toEqual(['d.rebuild Procedure d', 'sequences.rebuild Sequence missing']);
    expect(of('outcome')).toEqual(['d.rebuild Procedure d']);
  });

  it('is the users of a name that goes', () => {
    const of = computed('sequences.rebuild', (text) => text.replace('sequence rest', 'sequence resting'));
    expect(of('outcome')).toEqual(['b.rebuild Procedure b', 'b.rebuild Procedure c']);
  });

  it.each([
    ['a line', '  stage prove', '\n  stage prove'],
    ['a note to a test', 'read pressure within opening', 'read pressure within opening note "slowly"'],
  ])('leaves jobs alone while the figures of their procedure are the same: %s', (_, one, other) => {
    const of = computed('a.rebuild', (text) => text.replace(one, other));
    expect(of('outcome')).toContain('a.rebuild Procedure a');
    expect([...of('lowered'), ...of('judged')].filter((each) => each.includes('Job'))).toEqual([]);
  });

  it('is forgotten with the names that it was of', () => {
    const checker = new Workspace();
    for (let round = 0; round < 400; round++)
      checker.check([start[2]!, { uri: 'd', text: `sequence s${round} {\n  wait 5 min\n}\njob ${round} of s {\n}\n` }]);
    expect(checker.database.size).toBeLessThan(2_500);
  });

  it('is nothing for the same files', () => {
    const checker = new Workspace();
    checker.check(start);
    checker.database.log = [];
    checker.check(start.map((file) => ({ ...file })));
    expect(checker.database.log).toEqual([]);
  });
});

describe('one question about a workspace', () => {
  const asked = () => {
    const checker = new Workspace();
    checker.database.log = [];
    const result = checker.open([...start, { uri: 'more.rebuild', text: 'job 77 of a {\n}\n' }]);
    return { result, log: checker.database.log };
  };

  it('is answered as a whole check does', () => {
    const whole = checkFiles([...start, { uri: 'more.rebuild', text: 'job 77 of a {\n}\n' }]);
    for (const job of whole.jobs) {
      expect(asked().result.jobOf(job.name)).toEqual(job);
      const { file } = job.source;
      expect(asked().result.findingsIn(file)).toEqual(whole.diagnostics.filter(({ source }) => source.file === file));
      expect(asked().result.linksIn(file)).toEqual(whole.references.filter(({ use }) => use.file === file));
    }
    for (const { procedure, diagnostics } of whole.procedures) {
      expect(asked().result.procedureOf(procedure.name)?.procedure).toEqual(procedure);
      expect(asked().result.procedureOf(procedure.name)?.diagnostics).toEqual(diagnostics);
    }
    expect(asked().result.jobOf('jobs.rebuild')).toEqual(whole.jobs[1]);
    // Sheets to be printed are distinguished by these objects.
    expect(whole.jobOf('1')).toBe(whole.jobs[1]);
    expect(whole.procedureOf('a')).toBe(whole.procedures[0]);
    expect(whole.jobs[1]!.procedure).toBe(whole.procedures[0]!.procedure);
    expect(asked().result.jobOf('none')).toBeNull();
  });

  it('takes no job for a second one where the head of the first is none when it is parsed', () => {
    const files = [
      { uri: 'broken.rebuild', text: 'job 5 of a received 2026 1 {\n}\n' },
      { uri: 'sound.rebuild', text: 'job 5 of a {\n}\n' },
      ...start,
    ];
    const { diagnostics, jobs } = checkFiles(files);
    expect(diagnostics.filter(({ rule }) => rule === 'duplicate-name')).toEqual([]);
    expect(jobs.map(({ name }) => name)).toContain('5');
    expect(new Workspace().open(files).jobOf('5')?.source.file).toBe('sound.rebuild');
  });

  it('leaves other jobs and procedures alone', () => {
    const { result, log } = asked();
    const job = result.jobOf('1')!;
    const done = (query: string) =>
      log.filter((line) => line.startsWith(`${query} `)).map((line) => line.split('\0').slice(1, 3).join(' '));
    expect(done('lowered').sort()).toEqual(['Family holder', 'Job 1', 'Procedure a', 'Shop bench']);
    expect(done('outcome')).toEqual([]);
    result.procedureOf(job.procedure.name)!.diagnostics.forEach(String);
    // b and c are like a: whether they use its concession is asked too.
    expect(done('outcome').sort()).toEqual(['Procedure a', 'Procedure b', 'Procedure c']);
    expect(done('judged').filter((one) => one.startsWith('Job'))).toEqual([]);
    expect(log).not.toContain('parsed more.rebuild');
  });
});
