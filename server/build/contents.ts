/**
 * Lists what comes with the extension: out/contents.json. In a browser its files have addresses, and an address cannot be asked what is
 * below it.
 */
import { readdirSync, writeFileSync } from 'node:fs';

/** Paths from the folder of the extension. */
export interface Contents {
  readonly rulePages: readonly string[];
  /** The library, without the procedure that is wrong on purpose. */
  readonly samples: readonly string[];
}

export function contents(): Contents {
  return {
    rulePages: below('language/diagnostics/areas', /^[^/]+\/[^/]+\.md$/u),
    samples: below('procedures', /^(?!flawed\/).*\.rebuild$/u),
  };
}

function below(folder: string, wanted: RegExp): string[] {
  return (readdirSync(folder, { recursive: true }) as string[])
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => wanted.test(path))
    .sort()
    .map((path) => `${folder}/${path}`);
}

export function writeContents(): void {
  writeFileSync('out/contents.json', JSON.stringify(contents()));
}
