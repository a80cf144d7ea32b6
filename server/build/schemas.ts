/** Writes the JSON schemas that are published with the package, from the zod schemas that the program itself uses. */
import { mkdirSync, writeFileSync } from 'node:fs';
import * as z from 'zod';
import { settingsSchema } from '../../language/config/config.ts';
import { checkReport } from '../cli/check-schema.ts';
import { specsReport } from '../cli/specs-schema.ts';

mkdirSync('out/schemas', { recursive: true });
writeFileSync('out/schemas/settings.schema.json', `${JSON.stringify(z.toJSONSchema(settingsSchema), null, 2)}\n`);
writeFileSync('out/schemas/check.schema.json', `${JSON.stringify(z.toJSONSchema(checkReport), null, 2)}\n`);
writeFileSync('out/schemas/specs.schema.json', `${JSON.stringify(z.toJSONSchema(specsReport), null, 2)}\n`);
