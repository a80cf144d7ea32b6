import { describe, expect, it } from 'vitest';
import { procedureWith } from '../../tests/fixtures/sound-procedure.ts';
import { libraryFiles } from '../../tests/library.ts';
import { checkFiles, Workspace } from './workspace.ts';

const whole = procedureWith();
const at = whole.indexOf('procedure example');
/** The sound procedure in two files: what it is based on, and the procedure itself. */
const base = whole.slice(0, at);
const own = whole.slice(at);

/** Rule and step of all that is found. */
const found = (checker: Workspace, texts: Readonly<Record<string, string>>) =>
  checker
    .check(Object.entries(texts).map(([uri, text]) => ({ uri, text })))
    .diagnostics.map(({ rule, step }) => `${step ?? '–'} ${rule}`);

describe('a checker that is kept', () => {
  it('finds what a fresh check finds, whatever changes', () => {
    const checker = new Workspace();
    const states: Record<string, string>[] = [
      { base, own },
      { base: base.replace('on nut     renewed', 'on nut'), own },
      { base, own },
      { base, own: own.replace('      torque nut to nut-fit with TW-80\n', '') },
      { base, own, more: 'sequence open {\n  relieve\n}\n' },
      { base, own, more: 'sequence open {\n  tag\n}\n' },
      { base, own, more: 'family holder "Another" {\n  part body "Body"\n}\n' },
      { base, own: `${own.trimEnd().slice(0, -1)}  allow no-sign-off because "x"\n}\n` },
      { own },
      { base, own },
    ];
    for (const texts of states) expect(found(checker, texts)).toEqual(found(new Workspace(), texts));
  });

  it('gives the same as a single check', () => {
    expect(checkFiles([{ uri: 'whole', text: whole }]).diagnostics).toEqual([]);
  });
});

describe('a slip in any file that a procedure is made of', () => {
  const library = libraryFiles();
  /** Names of the procedures that do not print when a text of the library is changed. */
  const heldBack = (path: string, one: string, other: string) => {
    const files = library.map(({ uri, text }) => ({ uri, text: uri.endsWith(path) ? text.replace(one, other) : text }));
    expect(files.some(({ text }, index) => text !== library[index]!.text)).toBe(one !== other);
    return checkFiles(files)
      .procedures.filter(({ diagnostics }) => diagnostics.some(({ severity }) => severity === 'error'))
      .map(({ procedure }) => procedure.name)
      .sort();
  };

  it('holds its sheet back, in a sequence or in what it is like: a step may be lost', () => {
    expect(heldBack('shared/sequences.rebuild', 'x', 'x')).toEqual([]);
    const callers = ['rebuild-one-spring', 'rebuild-one-spring-filter', 'rebuild-pintle', 'rebuild-two-spring'];
    // No rule misses a photo: it would print without it.
    expect(heldBack('shared/sequences.rebuild', 'photo "', 'phtoo "')).toEqual(callers);
    expect(heldBack('shared/sequences.rebuild', 'photo "', 'photo (9 "')).toEqual(callers);
    expect(heldBack('shared/sequences.rebuild', '// ', '// \u202E')).toEqual(callers);
    const like = ['rebuild-one-spring', 'rebuild-one-spring-filter'];
    expect(heldBack('one-spring/procedure.rebuild', 'send-off with', 'sent-off with')).toEqual(like);
  });
});
