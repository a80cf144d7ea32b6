import { defineConfig } from 'vitest/config';

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
