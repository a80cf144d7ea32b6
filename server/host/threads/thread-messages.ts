import type { Part } from '../../../language/db/workspace.ts';

export interface ThreadData {
  /** URI and text of each file of the workspace. */
  readonly files: readonly (readonly [uri: string, text: string])[];
}

export interface ThreadTask {
  readonly part: Part;
  readonly uris: readonly string[];
  /** What others have worked out so far. */
  readonly packs: readonly string[];
}

/** Both sides are the same program. */
export const packVersion = 'threads';
