import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { digest } from './digest.ts';

/**
 * Names the program that is running, by its own text: what another one worked out may be different. Null where it runs from
 * its source, since this file is only a part of that.
 */
export function programVersion(): string | null {
  const path = fileURLToPath(import.meta.url);
  if (path.endsWith('.ts')) return null;
  try {
    return `${digest(readFileSync(path))} ${process.versions.v8}`;
  } catch {
    return null;
  }
}
