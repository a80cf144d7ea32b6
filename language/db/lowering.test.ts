import { describe, expect, it } from 'vitest';
import { Random } from '../../tests/fuzz/random.ts';
import { libraryFiles } from '../../tests/library.ts';
import type { Procedure } from '../model/procedure.ts';
import { Database } from './engine.ts';
import { buildQueries } from './queries.ts';
import { Trees } from './trees.ts';
import type { SourceFile } from './workspace.ts';

const library = libraryFiles().filter(({ uri }) => /shop|shared|one-spring|like/u.test(uri));
const main = 'procedures/one-spring/procedure.rebuild';

/** A workspace that is lowered and not checked. */
class Lowering {
  private readonly queries = buildQueries(new Database(), new Trees());

  update(files: readonly SourceFile[]): this {
    for (const { uri, text } of files) this.queries.texts.set(uri, text);
    const uris = files.map(({ uri }) => uri);
    this.queries.files.set('', uris);
    return this;
  }

  /** The procedure of the file with the stages that are looked at here. */
  get procedure(): Procedure {
    return this.queries.model(this.queries.idsIn(main)[0]!) as Procedure;
  }

  /** All that lowering makes of files. */
  all(files: readonly SourceFile[]) {
    const { queries } = this;
    return files.flatMap(({ uri }) => queries.idsIn(uri).map((id) => [id, queries.model(id), queries.reported(id)]));
  }
}

const edited = (change: (text: string) => string, uri = main) =>
  library.map((file) => (file.uri === uri ? { uri, text: change(file.text) } : file));

const replaced = (one: string, other: string) => (text: string) => {
  expect(text).toContain(one);
  return text.replace(one, other);
};

/** The procedure before and after an edit; before that there was another, so that what was made of it is kept. */
function around(change: (text: string) => string, uri = main): [Procedure, Procedure] {
  const lowering = new Lowering().update(edited((text) => `${text}\n// remark`));
  expect(lowering.procedure.stages.length).toBeGreaterThan(5);
  lowering.update(edited(replaced('Slow strokes', 'Slow, even strokes')));
  const before = lowering.procedure;
  lowering.update(library);
  expect(lowering.procedure).not.toBe(before);
  const files = edited(change, uri);
  return [lowering.procedure, lowering.update(files).procedure];
}

/** Names of the stages and repairs that are others than before. */
const changed = ([before, after]: [Procedure, Procedure]) => {
  const same = new Set<unknown>([...before.stages, ...before.repairs]);
  return [...after.stages, ...after.repairs].filter((block) => !same.has(block)).map(({ name }) => name);
};

/** What a workspace makes of files that were edited, and what one makes that has seen nothing else. */
const compared = (change: (text: string) => string) => {
  const files = edited(change);
  const kept = new Lowering().update(edited((text) => `${text}\n// remark`));
  kept.all(files);
  kept.update(library).all(library);
  return [kept.update(files).all(files), new Lowering().update(files).all(files)];
};

describe('lowering after an edit', () => {
  it('makes the statement again that it is in, and no other', () => {
    const both = around(replaced('Falls by its own', 'Falls of its own'));
    expect(changed(both)).toEqual(['build']);
    const [before, after] = both.map(({ stages }) => stages.find(({ name }) => name === 'build')!.steps);
    expect(after!.filter((step, index) => step !== before![index]).map(({ verb }) => verb)).toEqual(['check']);
  });

  it('leaves what is above a new line as it is', () => {
    const lines = replaced('    run-down nut\n    torque nut to nut-fit with TW-80   takes', '$&');
    expect(lines(library.find(({ uri }) => uri === main)!.text)).toContain('run-down');
    const names = changed(around(replaced('  stage prove', '\n  stage prove')));
    expect(names).toContain('prove');
    expect(names).toContain('reshim');
    // Its step on the fit is a call of a sequence below: that is in another place now.
    for (const name of ['receive', 'dress', 'last-wash', 'clean']) expect(names).not.toContain(name);
  });

  it('makes again what calls a sequence of another file that changed', () => {
    const change = replaced('Brush and pan', 'Pan and brush');
    expect(changed(around(change, 'procedures/shared/sequences.rebuild'))).toEqual(['receive']);
  });

  it.each([
    ['a remark inside a statement', 'reuse if "bright', '// remark\n      reuse if "bright'],
    ['a repair of another name', 'repair reshim', 'repair shim-again'],
    ['a spec of another name', 'spec aim ', 'spec target '],
    ['a test of another name', 'test chatter ', 'test chattering '],
    ['a sequence of another name', 'sequence open', 'sequence undo'],
    ['a sequence with another line', '  sequence close {', '  sequence close {\n'],
    ['a part number of another name', 'number A-220', 'number A-221'],
    ['a stage that goes', '  stage dress "Dress and mark" at wheel {', '  stage inspect "Again" at wheel {'],
    ['a hazard for other steps', 'for slacken nut', 'for torque nut'],
    ['a hazard of its own', '  stage finish', '  hazard "Hot" for run-down nut\n  stage finish'],
    ['a sequence with a hazard', '  sequence close {', '  sequence close {\n    hazard "Hot"'],
  ])('gives what a fresh one gives: %s', (_, one, other) => {
    const [kept, fresh] = compared(replaced(one, other));
    expect(kept).toEqual(fresh);
  });

  it.each([1, 2])('gives what a fresh one gives after each of many, seed %i', { timeout: 120_000 }, (seed) => {
    const random = new Random(seed);
    const kept = new Lowering();
    let files: SourceFile[] = [...library];
    for (let count = 0; count < 60; count++) {
      const at = random.below(files.length);
      const { uri, text } = files[at]!;
      const lines = text.split('\n');
      const from = random.below(lines.length);
      const words = lines[from]!.split(/(?<=\s)/u);
      const place = random.below(words.length);
      const kind = random.below(10);
      if (kind < 3)
        lines.splice(from, 0, random.pick(['', '// remark', '    open', '    hazard "Hot" for torque nut']));
      else if (kind < 4) lines.splice(from, 1);
      else if (kind < 6) lines.push(...lines.splice(from, 1));
      else lines[from] = words.toSpliced(place, 1, ...(random.chance(0.5) ? [] : ['nut ', 'reshim '])).join('');
      const now = random.chance(0.1) ? library[at]!.text : lines.join('\n');
      files = files.with(at, { uri, text: now });
      expect(kept.update(files).all(files), `edit ${count}`).toEqual(new Lowering().update(files).all(files));
    }
  });
});
