import { describe, expect, it } from 'vitest';
import { edited, plain, start } from '../../tests/fixtures/workspace-edits.ts';
import { Random } from '../../tests/fuzz/random.ts';
import type { SettingsFile } from '../config/config.ts';
import type { Snapshot } from '../ide/snapshot.ts';
import { workspaceSymbols } from '../ide/workspace-symbols.ts';
import { checkFiles, Workspace } from './workspace.ts';

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
    expect(whole.jobs[2]!.procedure).toBe(whole.procedures[1]!.procedure);
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
    // All in the issued revision that it names; the second shop is that of today, for its tools.
    expect(done('lowered').sort()).toEqual(['Family holder', 'Job 1', 'Procedure a', 'Shop bench', 'Shop bench']);
    expect(done('outcome')).toEqual([]);
    result.procedureOf(job.procedure.name)!.diagnostics.forEach(String);
    // b and c are like a: whether they use its concession is asked too.
    expect(done('outcome').sort()).toEqual(['Procedure a', 'Procedure b', 'Procedure c']);
    expect(done('judged').filter((one) => one.startsWith('Job'))).toEqual([]);
    expect(log).not.toContain('parsed more.rebuild');
  });
});

it('a search for names parses each file once, however many there are, and again only what was edited', () => {
  const files = Array.from({ length: 200 }, (_, index) => ({
    uri: `family-${index}.rebuild`,
    text: `family unit-${index} "Unit ${index}" {\n  part body "Body"\n}\n`,
  }));
  const checker = new Workspace();
  const found = (query: string) =>
    workspaceSymbols(snapshotOfResult(checker.check(files)), query).map(({ name }) => name);
  expect(found('unit199')).toContain('unit-199 Unit 199');
  checker.database.log = [];
  expect(found('unit7')).toContain('unit-7 Unit 7');
  expect(checker.database.log).toEqual([]);
  files[3] = { ...files[3]!, text: files[3]!.text.replace('Body', 'Holder') };
  expect(found('holder')).toEqual(['body Holder']);
  expect(checker.database.log.filter((line) => line.startsWith('searched '))).toEqual(['searched family-3.rebuild']);
});

function snapshotOfResult(result: ReturnType<Workspace['check']>): Snapshot {
  return { result, findingsIn: () => [], textOf: () => null };
}
