import { defineConfig } from 'vitest/config';

// Tests compare plain text. A machine that runs checks often sets CI or FORCE_COLOR, and either turns colors on.
delete process.env.FORCE_COLOR;
process.env.NO_COLOR = '1';
// No test finds what another has kept, and none writes into the user's own folder.
process.env.HANDTIGHT_CACHE = 'off';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: [
      'language/**/*.test.ts',
      'server/**/*.test.ts',
      'extension/**/*.test.ts',
      'tests/*.test.ts',
      'tests/*/*.test.ts',
    ],
    exclude: ['**/node_modules/**', 'out/**', 'tests/workbench/**'],
    // Every core, not all but one: of two, one would be idle.
    maxWorkers: '100%',
    // Only what hangs is ended: a machine that does other things too may need twenty times as long.
    testTimeout: 600_000,
    hookTimeout: 600_000,
  },
});
