import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../library.ts';
import { reasons } from './reasons.ts';

describe('the reasons for which a break may stay unnoticed', () => {
  it('are in DEVELOPERS.md, all of them and no others', () => {
    const text = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8');
    const list = text.split('What may survive, and why:\n\n')[1]!.split('\n\n')[0]!;
    const told = list
      .split(/^- /mu)
      .slice(1)
      .map((item) => item.replaceAll(/\s+/gu, ' ').trim());
    expect(told).toEqual(reasons.map(({ reason }) => reason));
  });
});
