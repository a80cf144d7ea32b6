import { defineConfig } from 'vitest/config';

// Tests compare plain text. A machine that runs checks often sets CI or FORCE_COLOR, and either turns colors on.
delete process.env.FORCE_COLOR;
process.env.NO_COLOR = '1';

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
    // Two cores, and some tests start programs of their own.
    testTimeout: 180_000,
    hookTimeout: 60_000,
  },
});
