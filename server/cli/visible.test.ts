import pc from 'picocolors';
import { describe, expect, it } from 'vitest';
import { visible, visibleHtml, visibleJson } from './visible.ts';

const nasty = 'a\u001B[8mb\u202Ec\u200Bd\re\u0007f\u009Bg\u{E0041}h\uFEFF';

describe('text that is shown', () => {
  it('has what cannot be seen written out, and leaves the rest alone', () => {
    expect(visible(nasty)).toBe('a<U+001B>[8mb<U+202E>c<U+200B>d<U+000D>e<U+0007>f<U+009B>g<U+E0041>h<U+FEFF>');
    expect(visible('Düse ±2\n\t“ñ” 針 🔧 250\u202Fbar\u00A0')).toBe('Düse ±2\n\t“ñ” 針 🔧 250\u202Fbar\u00A0');
  });

  it('keeps the colors of the command where it sets them, and no others', () => {
    const wanted = pc.isColorSupported ? '\u001B[31mx\u001B[39m' : '<U+001B>[31mx<U+001B>[39m';
    expect(visible('\u001B[31mx\u001B[39m', true)).toBe(wanted);
    expect(visible('\u001B[31mx\u001B[39m')).toBe('<U+001B>[31mx<U+001B>[39m');
    expect(visible('\u001B[5mx\u001B[2J')).toBe('<U+001B>[5mx<U+001B>[2J');
  });

  it('gives a build server no commands', () => {
    expect(visible('::set-env name=A::b\n  ::error::x\na ::b::\n##[group]y\nx##vso[task.complete]')).toBe(
      '<U+003A>:set-env name=A::b\n  <U+003A>:error::x\na ::b::\n<U+0023>#[group]y\nx<U+0023>#vso[task.complete]',
    );
  });

  it('is the same value as JSON, and shows the same as HTML', () => {
    const json = visibleJson({ a: `${nasty}##[group]::x` });
    expect(json).toMatch(/^[\n\x20-\x7E]*$/u);
    expect(json).not.toContain('##[');
    expect(JSON.parse(json)).toEqual({ a: `${nasty}##[group]::x` });
    expect(visibleHtml('<p>a\u202Eb</p>\n')).toBe('<p>a&#x202e;b</p>\n');
  });
});
