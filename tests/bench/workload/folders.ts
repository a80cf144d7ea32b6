import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { WorkloadFile } from './procedures.ts';

/** Folders that are gone when the run is over. */
export class Folders {
  readonly #root = mkdtempSync(join(tmpdir(), 'handtight-bench-'));
  readonly #written = new Map<string, string>();
  #count = 0;

  /** An empty one. */
  empty(): string {
    const folder = join(this.#root, String(this.#count++));
    mkdirSync(folder);
    return folder;
  }

  /** One with the files of a workload, which is written once under its name. */
  of(name: string, files: () => readonly WorkloadFile[]): string {
    const known = this.#written.get(name);
    if (known !== undefined) return known;
    const folder = this.empty();
    for (const { path, text } of files()) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
    this.#written.set(name, folder);
    return folder;
  }

  remove(): void {
    rmSync(this.#root, { recursive: true, force: true });
  }
}
