import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { SourceFile } from '../../../language/db/workspace.ts';
import { packageRoot } from './package-root.ts';

/** The library that comes with the program, without the procedure that is wrong on purpose. Paths are from its folder. */
export function sampleFiles(): SourceFile[] {
  const folder = join(packageRoot(), 'procedures');
  return (readdirSync(folder, { recursive: true }) as string[])
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => path.endsWith('.rebuild') && !path.startsWith('flawed/'))
    .sort()
    .map((path) => ({ uri: path, text: readFileSync(join(folder, path), 'utf8') }));
}
