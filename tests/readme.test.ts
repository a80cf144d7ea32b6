/** The README's first file is that of the library, and what it says the checker says is what it says. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkFiles } from '../language/db/workspace.ts';
import { dangers } from '../language/model/danger.ts';
import { fullMessage } from '../language/model/diagnostic.ts';
import { drawnAs } from '../language/model/drawn-as.ts';
import { materials } from '../language/model/material.ts';
import { units } from '../language/quantities/index.ts';
import { root } from './library.ts';

const readme = readFileSync(join(root, 'README.md'), 'utf8');
const first = readFileSync(join(root, 'procedures/first/first.rebuild'), 'utf8');
const blocks = (from: string, to: string) =>
  [...readme.slice(readme.indexOf(from), readme.indexOf(to)).matchAll(/^```(?:rebuild)?\n([\s\S]*?)^```$/gmu)].map(
    (match) => match[1]!,
  );
/** Lines that say something. */
const lines = (text: string) => text.split('\n').filter((line) => line.trim() !== '' && !line.startsWith('//'));

describe('the README', () => {
  it('shows the first file of the library, piece by piece', () => {
    const shown = blocks('### 2.', '### 5.').filter((text) => /^(shop|family|procedure) /u.test(text));
    expect(lines(shown.join('\n'))).toEqual(lines(first));
  });

  it('names each shape that a part may be drawn as', () => {
    const from = readme.indexOf('**What is drawn.**');
    const listed = readme.slice(readme.indexOf('`ball`', from), readme.indexOf('`wheel`.', from) + 7);
    expect([...listed.matchAll(/`([a-z-]+)`/gu)].map(([, word]) => word)).toEqual([...drawnAs]);
  });

  it('has every word of the language in its reference', () => {
    const grammar = readFileSync(join(root, 'language/syntax/rebuild.langium'), 'utf8');
    const rules = grammar.replaceAll(/\/\*.*?\*\/|\/\/[^\n]*/gsu, '');
    const words = new Set([
      ...[...rules.matchAll(/'([a-z][a-z-]*)'/gu)].map((match) => match[1]!),
      ...units.map(({ name }) => name),
      ...materials,
      ...dangers,
    ]);
    const reference = readme.slice(readme.indexOf('## Reference'));
    const written = [...reference.matchAll(/^```[\s\S]*?^```|`[^`]+`/gmu)].join(' ').replaceAll(/\s+/gu, ' ');
    const isWritten = (word: string) =>
      new RegExp(`(?<![\\p{L}\\p{N}-])${word.replaceAll(/[.*+?^${}()|[\]\\]/gu, '\\$&')}(?![\\p{L}\\p{N}-])`, 'u').test(
        written,
      );
    expect(words.size).toBeGreaterThan(300);
    expect([...words].filter((word) => !isWritten(word))).toEqual([]);
  });

  it('shows what is reported when its torque is forgotten', () => {
    const at = first.indexOf('    torque plug to plug-fit with TW-60\n');
    const line = first.slice(at, first.indexOf('\n', at) + 1);
    const { diagnostics } = checkFiles([{ uri: 'valve.rebuild', text: first.replace(line, '') }]);
    expect(diagnostics).toHaveLength(1);
    const [diagnostic] = diagnostics as [(typeof diagnostics)[number]];
    const { rule, step, source } = diagnostic;
    const place = `valve.rebuild:${source.range.start.line + 1}:${source.range.start.character + 1}`;
    const [said] = blocks('### 6.', '### 7.') as [string];
    expect(said).toContain(`${place}  error  ${rule}  step ${step}`);
    expect(said.replace(/\s+/gu, ' ')).toContain(fullMessage(diagnostic));
  });
});
