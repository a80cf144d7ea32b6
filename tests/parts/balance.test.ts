/** What a balance is lost by, and what it is not. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { type Changes, coverWith } from './cover.ts';

const read = (name: string) =>
  readFileSync(fileURLToPath(new URL(`../corpus/${name}.rebuild`, import.meta.url)), 'utf8');
const text = `${read('shop')}\n${read('cartridge-sent-out-as-one')}`;
const stage = '  stage clean "Wash what was left behind" at tank {\n';

/** What is done to the rotor after it was balanced, and whether the balance is then stale. */
function staleAfter(work: string, more: Changes = []) {
  const { found } = coverWith([[stage, `${stage}    ${work.split(' / ').join('\n    ')}\n`], ...more], text);
  return found.filter((one) => one.startsWith('gate-stale')).join('\n');
}
const apart = 'slacken nut held by "socket" / remove nut, wheel';
const together = 'run-down nut / torque nut to 1.6 N·m ±0.15 with TW-2 held by "socket" source "Own"';
const unmarked: Changes = [['   marks "Balance dots in line"', '']];

describe('a balance', () => {
  it('stays through unrelated assembly, and through taking apart and fitting by the marks', () => {
    expect(staleAfter('wash screw in solvent')).toBe('');
    expect(staleAfter(`${apart} / fit wheel with marks aligned / ${together}`)).toBe('');
  });

  it('is lost where a part is renewed, ground, or worked at', () => {
    expect(
      staleAfter(`${apart} / renew wheel / wash wheel in solvent / fit wheel with marks aligned / ${together}`),
    ).toContain('Balance is no longer proven at the end');
    expect(staleAfter('do "Grind a burr off the back of the wheel" to wheel')).toContain('Balance is no longer proven');
    expect(staleAfter('do "Look for burr"')).toBe('');
  });

  it('is lost where nothing says how a part was turned', () => {
    expect(staleAfter(`${apart} / fit wheel / ${together}`, unmarked)).toContain('(fit wheel) changed what was tested');
    // With marks that are not lined up, that is what is wrong.
    const { found } = coverWith([[stage, `${stage}    ${apart.replace(' / ', '\n    ')}\n    fit wheel\n`]], text);
    expect(found.join('\n')).toContain('marks-not-lined-up');
  });

  it('may be read off the paper that is booked in, and is lost in the same way', () => {
    const paper: Changes = [['with BAL-1 "Our own run"', 'with "sheet of the balancer"']];
    expect(coverWith(paper, text).found).toEqual([]);
    expect(staleAfter('do "Grind a burr off" to wheel', paper)).toContain('Balance is no longer proven');
  });
});
