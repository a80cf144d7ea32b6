/** One spelling for each file, whatever the editor writes. */
import { describe, expect, it, test } from 'vitest';
import { canonicalUri, pathOfUri, uriOfPath } from './uris.ts';

const posix = process.platform !== 'win32';

describe('a file', () => {
  it('has one spelling, in whichever way it is encoded', () => {
    const spellings = [
      'file:///c:/Shop/a b.rebuild',
      'file:///C%3A/Shop/a%20b.rebuild',
      'file:///c%3a/Shop/a%20b.rebuild',
    ];
    expect(new Set(spellings.map(canonicalUri))).toEqual(new Set(['file:///c%3A/Shop/a%20b.rebuild']));
  });

  test
    .runIf(posix)
    .each([
      '/shop/100 % of #4 (copy) [old] & new?.rebuild',
      '/shop/Düsen/½″ 喷油器.rebuild',
      "/shop/it's +1;2=3@4$5,6!7*8~9.rebuild",
      '/shop/%41.rebuild',
    ])('%s comes back from its URI', (path) => {
    expect(pathOfUri(uriOfPath(path))).toBe(path);
    expect(canonicalUri(uriOfPath(path))).toBe(uriOfPath(path));
    expect(uriOfPath(path)).toMatch(/^file:\/\/\/[\w./%~-]+$/u);
  });

  it('with half a character in its name has a URI', () => {
    expect(uriOfPath('/a\ud800.rebuild')).toBe('file:///a%EF%BF%BD.rebuild');
    expect(canonicalUri('file:///a\udc00.rebuild')).toBe('file:///a%EF%BF%BD.rebuild');
  });
});

it.each(['untitled:Untitled-1', 'git:/shop/a.rebuild?x', '', '%', 'http://[', 'file:////', 'file://[', 'file:////a/b'])(
  '%s is no path of this machine, and is kept as it is written',
  (uri) => {
    expect(pathOfUri(uri)).toBeNull();
    expect(canonicalUri(uri)).toBe(uri);
  },
);

it.runIf(posix)('a share is not taken for a folder of this machine', () => {
  expect(pathOfUri('file://server/share/a.rebuild')).toBeNull();
});
