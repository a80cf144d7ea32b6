/**
 * Files of a workspace that the server cannot reach itself: in a browser, or in a virtual folder, they are the client's. These
 * requests go from the server to the client; `files/files-of-client.ts` has the schemas of what comes back.
 */

/** All files of some folders of the workspace, {@link FindFilesParams} to URIs, in the spelling of the documents. */
export const findFilesMethod = 'handtight/findFiles';

/** URIs of folders. */
export interface FindFilesParams {
  readonly folders: readonly string[];
}

/** The text of one file, {@link ReadFileParams} to {@link ReadFileResult}. */
export const readFileMethod = 'handtight/readFile';

export interface ReadFileParams {
  readonly uri: string;
}

/** Null: it is no longer there. `problem` says in a sentence why it cannot be read, and what to do. */
export type ReadFileResult = { readonly text: string } | { readonly problem: string } | null;
