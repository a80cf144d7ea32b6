/** Writes the JSON schemas that are published with the package, from the zod schemas that the program itself uses. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { z } from 'zod';
import { checkReport } from './cli/check-schema.ts';

mkdirSync('out/schemas', { recursive: true });
writeFileSync('out/schemas/check.schema.json', `${JSON.stringify(z.toJSONSchema(checkReport), null, 2)}\n`);
