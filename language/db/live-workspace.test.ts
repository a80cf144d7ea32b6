import { describe, expect, it } from 'vitest';
import { start } from '../../tests/fixtures/workspace-edits.ts';
import { LiveWorkspace } from './live-workspace.ts';
import { checkFiles } from './workspace.ts';

const procedure = start.find(({ uri }) => uri === 'd.rebuild')!;

function loaded(files = start): LiveWorkspace {
  const workspace = new LiveWorkspace();
  for (const { uri, text } of files) workspace.edit(uri, text, 'in time');
  finish(workspace);
  return workspace;
}

function finish(workspace: LiveWorkspace, open: readonly string[] = []) {
  return [...workspace.work(open)].flat();
}

/** What was computed by the queries, without the names of files. */
function computed(workspace: LiveWorkspace, work: () => void): string[] {
  workspace.database.log = [];
  work();
  const log = workspace.database.log;
  workspace.database.log = null;
  return log.map((line) => line.split('\0').slice(0, 3).join(' '));
}

const findings = (files = start) => {
  const { diagnostics } = checkFiles(files);
  return (uri: string) => diagnostics.filter(({ source }) => source.file === uri);
};

describe('a live workspace', () => {
  it('finds what a check of everything does, file by file', () => {
    const workspace = loaded();
    for (const { uri } of start) expect(workspace.findingsIn(uri)).toEqual(findings()(uri));
  });

  it('finds the same where the work is left in the middle and started again', () => {
    const workspace = new LiveWorkspace();
    for (const { uri, text } of start) workspace.edit(uri, text, 'in time');
    for (let pieces = 0; pieces < 60; pieces++) {
      const work = workspace.work(['a.rebuild']);
      for (let piece = 0; piece < pieces; piece++) work.next();
    }
    finish(workspace);
    for (const { uri } of start) expect(workspace.findingsIn(uri)).toEqual(findings()(uri));
  });

  it('works an edit out in many pieces, between which it answers and takes edits', () => {
    const workspace = loaded();
    const texts = ['fit cap', 'fit core', 'fit cap, core'].map((words) => procedure.text.replace('fit cap', words));
    const asWhole = texts.map((text) => findings(start.map((file) => (file === procedure ? { ...file, text } : file))));
    let pieces = 0;
    for (let round = 0; round < 12; round++) {
      workspace.edit(procedure.uri, texts[round % texts.length]!, 'at once');
      const work = workspace.work([procedure.uri]);
      // The first rounds are left in the middle: for the next edit, or for a question that takes the rest at once.
      for (pieces = 0; round === 11 || pieces < 17 * round; pieces++) {
        if (work.next().value?.includes(procedure.uri) === true) break;
        expect(workspace.result.procedureOf('d')!.states).not.toBeNull();
      }
      workspace.refresh(procedure.uri);
      expect(workspace.findingsIn(procedure.uri)).toEqual(asWhole[round % texts.length]!(procedure.uri));
    }
    // It listens at least as often as there are rules.
    expect(pieces).toBeGreaterThan(100);
  });

  it.each(start)('has findings where they are after all lines of $uri have moved', ({ uri, text }) => {
    const workspace = loaded();
    workspace.edit(uri, `\n${text}`, 'at once');
    const [first] = finish(workspace, [uri]);
    if (findings()(uri).length > 0) expect(first).toBe(uri);
    const moved = start.map((file) => (file.uri === uri ? { uri, text: `\n${text}` } : file));
    for (const file of start) expect(workspace.findingsIn(file.uri)).toEqual(findings(moved)(file.uri));
  });

  it('forgets what came of a file that is gone', () => {
    const workspace = loaded();
    workspace.edit('d.rebuild', null, 'in time');
    expect(finish(workspace)).toContain('d.rebuild');
    expect(workspace.findingsIn('d.rebuild')).toEqual([]);
  });

  it('has the findings of the edited file after its own analysis and no other', () => {
    const workspace = loaded();
    workspace.edit(procedure.uri, procedure.text.replace('fit cap', 'fit core'), 'at once');
    const log = computed(workspace, () => {
      const work = workspace.work([procedure.uri]);
      while (!work.next().value?.includes(procedure.uri));
    });
    expect(log.filter((line) => line.startsWith('outcome'))).toEqual(['outcome d.rebuild Procedure d']);
    expect(log.filter((line) => line.startsWith('parsed'))).toEqual(['parsed d.rebuild']);
  });

  it('answers questions about names without an analysis, and without the other files', () => {
    const workspace = loaded();
    workspace.edit(procedure.uri, procedure.text.replace('fit cap', 'fit core'), 'at once');
    const log = computed(workspace, () => {
      const { result } = workspace;
      expect(result.linksIn(procedure.uri).map(({ name }) => name)).toContain('core');
      expect(result.symbols.get(procedure.uri)).toHaveLength(2);
      expect(result.jobsIn(procedure.uri)).toHaveLength(1);
      expect(result.proceduresIn(procedure.uri)).toHaveLength(1);
    });
    expect(log.filter((line) => /^(?:outcome|judged|findings)/u.test(line))).toEqual([]);
    expect(log.filter((line) => line.startsWith('parsed'))).toEqual(['parsed d.rebuild']);
  });

  it('keeps nothing of a file that was opened, edited and closed, however often', () => {
    const workspace = loaded();
    const rounds = (count: number) => {
      for (let round = 0; round < count; round++) {
        const text = `sequence s${round % 50} {\n  wait 5 min\n}\njob ${round} of s {\n}\n`;
        workspace.edit('more.rebuild', text, 'at once');
        finish(workspace, ['more.rebuild']);
        workspace.edit('more.rebuild', `${text}// more`, 'at once');
        finish(workspace, ['more.rebuild']);
        workspace.edit('more.rebuild', null, 'at once');
        finish(workspace);
      }
      return workspace.database.size;
    };
    const few = rounds(50);
    // Results without a reader are swept once there are two thousand new ones.
    expect(rounds(1000)).toBeLessThan(few + 2_000);
  });
});

describe('a workspace that is being read', () => {
  it('checks the open file as soon as what it names is there, and leaves the others unread', () => {
    const workspace = new LiveWorkspace();
    workspace.isLoading = true;
    const text = procedure.text.replace('    missing\n', '');
    workspace.edit(procedure.uri, text, 'at once');
    const others = start.filter(({ uri }) => uri !== procedure.uri);
    const open = () => [...workspace.work([procedure.uri])].flat();
    expect(open()).toEqual([]);
    for (const file of others) workspace.edit(file.uri, file.text, 'in time');
    const log = computed(workspace, () => {
      const work = workspace.work([procedure.uri]);
      while (!work.next().value?.includes(procedure.uri));
    });
    expect(log.filter((line) => line.startsWith('parsed')).sort()).toEqual([
      'parsed families.rebuild',
      'parsed shop.rebuild',
    ]);
    const files = start.map((file) => (file.uri === procedure.uri ? { ...file, text } : file));
    expect(workspace.findingsIn(procedure.uri)).toEqual(findings(files)(procedure.uri));
  });

  it('blames nothing for a name that may be in a file that has not been read', () => {
    const workspace = new LiveWorkspace();
    workspace.isLoading = true;
    for (const file of start) workspace.edit(file.uri, file.text, file.uri === procedure.uri ? 'at once' : 'in time');
    expect([...workspace.work([procedure.uri])].flat()).toEqual([]);
    workspace.isLoading = false;
    expect(finish(workspace, [procedure.uri])).toContain(procedure.uri);
    expect(workspace.findingsIn(procedure.uri)).toEqual(findings()(procedure.uri));
  });
});
