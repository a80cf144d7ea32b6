import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { tables, written } from './tables.ts';

it.each(tables)('$path says what the table of verbs says (npm run tables writes it)', (table) => {
  const now = readFileSync(new URL(`../${table.path}`, import.meta.url), 'utf8');
  expect(now).toBe(written(table, now));
});
