import { expect, it } from 'vitest';
import { EditingSession } from './edits/session.ts';
import { Random } from './fuzz/random.ts';

it.each([1, 2, 3])(
  'a server that was edited at random publishes what a fresh one does, seed %i',
  async (seed) => {
    const session = new EditingSession(new Random(seed));
    await session.begin();
    for (let count = 1; count <= 200; count++) {
      session.step();
      // Some edits come in one burst, others one by one.
      if (count % 7 === 0) await new Promise((resolve) => setTimeout(resolve, 5));
      if (count % 100 !== 0) continue;
      await session.settled();
      expect(session.expected().size).toBeGreaterThan(0);
      await expect.poll(() => session.published, { timeout: 10_000 }).toEqual(session.expected());
    }
    expect(session.refused).toEqual([]);
    expect(session.canceled).toBeGreaterThan(0);
    await session.end();
  },
  120_000,
);
