export interface ThreadData {
  /** URI and text of each file of the workspace. */
  readonly files: readonly (readonly [uri: string, text: string])[];
}

/** Files that a thread is to work on. */
export type ThreadTask = readonly string[];

/** Both sides are the same program. */
export const packVersion = 'threads';
