/** One walk for the command and the editor: what it finds, and what a bad entry costs. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { english } from '../../../language/say/say.ts';
import { excludedBy, FileFinder, settingsAt } from './find-files.ts';
import { readText } from './read-text.ts';
import { isRead } from './which-files.ts';

const top = realpathSync(mkdtempSync(join(tmpdir(), 'handtight-files-')));
const folder = join(top, 'work');
const posix = process.platform !== 'win32';

beforeEach(() => {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder);
});
afterAll(() => rmSync(top, { recursive: true, force: true }));

function write(path: string, text: string | Uint8Array = '') {
  mkdirSync(join(folder, path, '..'), { recursive: true });
  writeFileSync(join(folder, path), text);
}

async function found(...paths: string[]) {
  return foundWithout([], ...paths);
}

async function foundWithout(patterns: readonly string[], ...paths: string[]) {
  const finder = new FileFinder();
  const isExcluded = excludedBy(folder, patterns);
  const files: string[] = [];
  for (const path of paths.length === 0 ? ['.'] : paths) {
    const at = await finder.at(join(folder, path), isExcluded);
    files.push(...('problem' in at ? [english(at.problem)] : at.files.map((file) => relative(folder, file))));
  }
  const unread = finder.unread.map(({ path, message }) => `${relative(folder, path)}: ${english(message)}`);
  return { files, unread };
}

describe('a walk', () => {
  it('does not list the records of closed jobs, which may be a hundred thousand; a folder of that name without them it does', async () => {
    write('records/a.rebuild');
    expect((await found('.')).files).toEqual(['records/a.rebuild']);
    write('records/records.list');
    expect((await found('.')).files).toEqual([]);
  });

  it('finds procedures and settings by code unit, and leaves out what is no author’s', async () => {
    for (const path of ['b.rebuild', 'B.rebuild', 'ä.rebuild', 'a/z.rebuild', 'handtight.json', 'a/note.txt'])
      write(path);
    for (const path of ['._b.rebuild', '.#b.rebuild', '.git/c.rebuild', 'node_modules/c.rebuild', 'out/c.rebuild'])
      write(path);
    write('named.rebuild/inside.rebuild');
    expect(await found()).toEqual({
      files: ['B.rebuild', 'a/z.rebuild', 'b.rebuild', 'handtight.json', 'named.rebuild/inside.rebuild', 'ä.rebuild'],
      unread: [],
    });
    expect(['x.rebuild', 'a/handtight.json', '.x.rebuild', 'a/._x.rebuild', 'rebuild', 'x.json'].map(isRead)).toEqual([
      true,
      true,
      false,
      false,
      false,
      false,
    ]);
  });

  it.runIf(posix)('follows links to files and folders, each file once and by its own name', async () => {
    write('one.rebuild');
    write('sub/two.rebuild');
    mkdirSync(join(top, 'shared'), { recursive: true });
    writeFileSync(join(top, 'shared/three.rebuild'), '');
    symlinkSync('one.rebuild', join(folder, 'again.rebuild'));
    symlinkSync('..', join(folder, 'sub/up'));
    symlinkSync('sub', join(folder, 'a-sub'));
    symlinkSync('../shared', join(folder, 'shared'));
    symlinkSync('../shared', join(folder, 'shared-too'));
    expect(await found()).toEqual({ files: ['one.rebuild', 'shared/three.rebuild', 'sub/two.rebuild'], unread: [] });
    // What is named by hand keeps that name.
    expect(await found('again.rebuild', '.')).toEqual({
      files: ['again.rebuild', 'again.rebuild', 'shared/three.rebuild', 'sub/two.rebuild'],
      unread: [],
    });
  });

  it.runIf(posix)('goes on where an entry cannot be read, and says which and what to do', async () => {
    write('good.rebuild');
    symlinkSync('gone.rebuild', join(folder, 'dangling.rebuild'));
    symlinkSync('gone', join(folder, 'other-link'));
    symlinkSync('loop-b.rebuild', join(folder, 'loop-a.rebuild'));
    symlinkSync('loop-a.rebuild', join(folder, 'loop-b.rebuild'));
    symlinkSync('loop', join(folder, 'loop'));
    execFileSync('mkfifo', [join(folder, 'pipe.rebuild')]);
    expect(await found()).toEqual({
      files: ['good.rebuild'],
      unread: [
        'pipe.rebuild: This is a pipe, a socket or a device, not a file, so it is not read. Move it out of the folder.',
        'dangling.rebuild: This is a link to gone.rebuild, which is not there, so nothing is read. Correct the link, or delete it.',
        'loop-a.rebuild: This link could not be followed: it is a link that leads back to itself. Correct the link, or delete it.',
        'loop-b.rebuild: This link could not be followed: it is a link that leads back to itself. Correct the link, or delete it.',
      ],
    });
  });
});

describe('what the settings leave out', () => {
  it('is passed over, as in .gitignore, from the folder of the settings', async () => {
    for (const path of [
      'a.rebuild',
      'a.draft.rebuild',
      'archive/b.rebuild',
      'jobs/archive/c.rebuild',
      'jobs/d.rebuild',
    ])
      write(path);
    expect((await foundWithout(['archive/'])).files).toEqual(['a.draft.rebuild', 'a.rebuild', 'jobs/d.rebuild']);
    expect((await foundWithout(['/archive', '*.draft.rebuild'])).files).toEqual([
      'a.rebuild',
      'jobs/archive/c.rebuild',
      'jobs/d.rebuild',
    ]);
    expect((await foundWithout(['jobs/**', '!a.rebuild'])).files).not.toContain('jobs/d.rebuild');
    expect((await foundWithout(['*.rebuild', '!jobs/d.rebuild'])).files).toEqual(['jobs/d.rebuild']);
    // The same on every disk.
    expect((await foundWithout(['ARCHIVE/', 'A.rebuild'])).files).toHaveLength(5);
    expect((await foundWithout(['archive/'], 'jobs')).files).toEqual(['jobs/d.rebuild']);
  });

  it('and is named by hand is read all the same', async () => {
    write('archive/b.rebuild');
    write('archive/deep/c.rebuild');
    expect((await foundWithout(['archive/'], 'archive/b.rebuild')).files).toEqual(['archive/b.rebuild']);
    expect((await foundWithout(['archive/'], 'archive')).files).toEqual([
      'archive/b.rebuild',
      'archive/deep/c.rebuild',
    ]);
  });

  it('is nothing outside the folder of the settings', () => {
    const isExcluded = excludedBy(folder, ['*']);
    expect(isExcluded(join(top, 'a.rebuild'), 'file')).toBe(false);
    expect(isExcluded(folder, 'folder')).toBe(false);
    expect(isExcluded(join(folder, 'a.rebuild'), 'file')).toBe(true);
  });

  it.runIf(posix)('is reported for nothing: no folder below it is opened, no link followed', async () => {
    write('a.rebuild');
    write('archive/b.rebuild');
    symlinkSync('gone.rebuild', join(folder, 'archive/lost.rebuild'));
    symlinkSync('gone.rebuild', join(folder, 'lost.rebuild'));
    symlinkSync('archive', join(folder, 'old'));
    expect(await foundWithout(['archive/', 'lost.rebuild', 'old/'])).toEqual({ files: ['a.rebuild'], unread: [] });
  });
});

describe('a file', () => {
  it('is read without its byte order mark', async () => {
    write('a.rebuild', '\uFEFFshop');
    expect(await readText(join(folder, 'a.rebuild'))).toEqual({ kind: 'text', text: 'shop' });
  });

  it.runIf(posix)('that is gone, a folder, a pipe or far too long is never waited for', async () => {
    expect(await readText(join(folder, 'gone.rebuild'))).toEqual({ kind: 'gone' });
    mkdirSync(join(folder, 'handtight.json'));
    const why = async (name: string) => {
      const read = await readText(join(folder, name));
      return read.kind === 'unreadable' ? english(read.message) : read.kind;
    };
    expect(await why('handtight.json')).toBe(
      'This is a folder, not a file, so it is not read. Rename it, or take it away.',
    );
    execFileSync('mkfifo', [join(folder, 'pipe.rebuild')]);
    expect(await readText(join(folder, 'pipe.rebuild'))).toMatchObject({ kind: 'unreadable' });
    write('big/handtight.json', new Uint8Array(10 * 1024 * 1024));
    expect(await why('big/handtight.json')).toMatch(
      /^This file has 10 MB and was not read\. Settings take a few lines/u,
    );
  });
});

describe('the settings in force', () => {
  it('are those of the folder, else of the nearest above; none of a folder below', () => {
    write('a/b/c.rebuild');
    write('a/b/handtight.json', '{}');
    expect(settingsAt(folder)).toBe(null);
    expect(settingsAt(join(folder, 'a/b'))).toBe(join(folder, 'a/b/handtight.json'));
    write('handtight.json', '{}');
    expect(settingsAt(join(folder, 'a'))).toBe(join(folder, 'handtight.json'));
    expect(settingsAt(join(folder, 'a/b'))).toBe(join(folder, 'a/b/handtight.json'));
  });
});
