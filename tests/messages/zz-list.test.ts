import { writeFileSync } from 'node:fs';
import { it } from 'vitest';
import { saidInSource } from './templates.ts';
it('lists', () => { writeFileSync('/tmp/l10n-tool/templates.json', JSON.stringify(saidInSource(), null, 1)); });
