/**
 * Files of a workspace that the server cannot reach itself: in a browser they are the client's. These requests go from the
 * server to the client. What comes back passes a schema.
 */
import * as z from 'zod';

/** All files of some folders of the workspace, {@link FindFilesParams} to {@link findFilesResult}. */
export const findFilesMethod = 'handtight/findFiles';

/** URIs of folders. */
export interface FindFilesParams {
  readonly folders: readonly string[];
}

/** URIs of the files, in the spelling of the documents: at least those that end in `.rebuild`, and `handtight.json`. */
export const findFilesResult = z.array(z.string().min(1).max(4096));

/** The text of one file, {@link ReadFileParams} to {@link readFileResult}. */
export const readFileMethod = 'handtight/readFile';

export interface ReadFileParams {
  readonly uri: string;
}

/** Null: it is no longer there. `problem` says in a sentence why it cannot be read, and what to do. */
export const readFileResult = z.union([z.object({ text: z.string() }), z.object({ problem: z.string() })]).nullable();
