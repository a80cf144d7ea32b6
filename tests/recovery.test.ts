/**
 * What a slip of the keyboard costs: every step line of the library cut at every token. No other step may be lost, and
 * the error is on the damaged line.
 */
import type { AstNode } from 'langium';
import { describe, expect, it } from 'vitest';
import { english } from '../language/say/say.ts';
import { parse } from '../language/syntax/parse.ts';
import { contentsOf, rangeOf, textOf } from '../language/syntax/place.ts';
import { libraryFiles } from './library.ts';

interface ReadStep {
  readonly first: number;
  readonly last: number;
  readonly text: string;
}

const isStep = (node: AstNode) =>
  /^(ObjectStep|BareStep|CleanOutside|CleanHoles|TestStep|AcrossStep|Call|Hazard)$/u.test(node.$type);

function read(text: string) {
  const { ast, problems } = parse(text);
  const steps = [...contentsOf(ast)].filter(isStep).map(
    (node): ReadStep => ({
      first: rangeOf(node).start.line,
      last: rangeOf(node).end.line,
      text: textOf(node).replace(/\s+/gu, ' '),
    }),
  );
  return { steps, problems };
}

/** How many of the steps that are elsewhere are no longer read. */
function lost(before: readonly ReadStep[], after: readonly ReadStep[], line: number): number {
  const left = after.map(({ text }) => text);
  return before.filter(({ first, last, text }) => {
    if (first <= line && line <= last) return false;
    const at = left.indexOf(text);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  }).length;
}

describe.each(libraryFiles())('$uri', ({ text }) => {
  const lines = text.split('\n');
  const whole = read(text);
  // Each line once, however many steps share it.
  const chosen = [
    ...new Set(
      whole.steps.flatMap(({ first, last }) => Array.from({ length: last - first + 1 }, (_, index) => first + index)),
    ),
  ];

  it.runIf(chosen.length > 0)('loses no other step to a cut, and says so on the damaged line', () => {
    let cuts = 0;
    const elsewhere: string[] = [];
    const misplaced: string[] = [];
    for (const line of chosen) {
      const cutAt = [...lines[line]!.matchAll(/"[^"]*"?|[\p{L}\d_.-]+|[^\s\p{L}\d]/gu)].map(({ index }) => index);
      // A cut at the first token leaves a blank line: whatever went on from it belongs to the line above, as written.
      for (const at of cutAt.slice(1)) {
        cuts++;
        const damaged = [...lines.slice(0, line), lines[line]!.slice(0, at), ...lines.slice(line + 1)].join('\n');
        const { steps, problems } = read(damaged);
        const words = `${line + 1}: ${lines[line]!.slice(0, at)}`;
        if (lost(whole.steps, steps, line) > 0) elsewhere.push(words);
        const around = whole.steps.filter(({ first, last }) => first <= line && line <= last);
        const from = Math.min(line, ...around.map(({ first }) => first));
        const to = Math.max(line, ...around.map(({ last }) => last));
        if (problems.some(({ range }) => range.start.line < from || range.start.line > to))
          misplaced.push(
            `${words} → ${problems.map(({ range, message }) => `${range.start.line + 1} ${english(message)}`)}`,
          );
      }
    }
    expect(cuts).toBeGreaterThan(0);
    expect(elsewhere).toEqual([]);
    expect(misplaced).toEqual([]);
  });

  it.runIf(chosen.length > 0)('answers a misspelled verb with the nearest one, and loses nothing else', () => {
    const missed: string[] = [];
    for (const line of chosen.filter((one) =>
      /^\s+(fit|torque|remove|slacken|measure|connect|relieve|wash|rinse)\b/u.test(lines[one]!),
    )) {
      const verb = /^\s+(\S+)/u.exec(lines[line]!)![1]!;
      const slip = verb.slice(0, 1) + verb.slice(2, 3) + verb.slice(1, 2) + verb.slice(3);
      const damaged = [...lines.slice(0, line), lines[line]!.replace(verb, slip), ...lines.slice(line + 1)].join('\n');
      if (lost(whole.steps, read(damaged).steps, line) > 0) missed.push(`${line + 1}: ${slip}`);
    }
    expect(missed).toEqual([]);
  });
});
