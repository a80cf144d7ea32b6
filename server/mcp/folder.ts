import { isAbsolute, relative, resolve, sep } from 'node:path';
import { type CheckResult, type SourceFile, Workspace } from '../../language/db/workspace.ts';
import { worded } from '../cli/messages.ts';
import { UsageError } from '../cli/usage-error.ts';
import { type CliWorkspace, openWorkspace } from '../cli/workspace.ts';
import { shownPath } from '../host/files/find-files.ts';

/** A text that an assistant is writing, under the name that it is to have. */
export interface Draft {
  readonly file: string;
  readonly text: string;
}

/** The files of a folder as they are now, with a draft laid over them. */
export interface Opened {
  readonly files: readonly SourceFile[];
  readonly result: CheckResult;
  readonly workspace: CliWorkspace;
}

/** Longer texts are no procedure. */
const longestText = 4_000_000;

/** The folder that a server was started for; nothing outside it is read. It keeps what it worked out between calls. */
export class Folder {
  private readonly workspace = new Workspace();
  readonly path: string;

  constructor(path: string) {
    this.path = path;
  }

  /** Reads the folder again, since files may have changed. Throws a UsageError where there is nothing to read. */
  async open(draft: Draft | null = null): Promise<Opened> {
    const workspace = await this.read(draft !== null);
    const name = draft === null ? null : this.inside(draft.file);
    const files =
      draft === null
        ? workspace.files
        : [...workspace.files.filter(({ uri }) => uri !== name), { uri: name!, text: draft.text }].sort((a, b) =>
            a.uri < b.uri ? -1 : 1,
          );
    return { files, workspace, result: this.workspace.open(files, workspace.settings) };
  }

  /** A path from the folder, as findings carry it. Throws a UsageError for one that leads out of it or is no procedure's. */
  inside(file: string): string {
    const path = resolve(this.path, file);
    const way = relative(resolve(this.path), path);
    if (way === '' || way === '..' || way.startsWith(`..${sep}`) || isAbsolute(way))
      throw new UsageError(worded`${file} is not in the folder of this server. Give a path from that folder.`);
    if (!file.endsWith('.rebuild'))
      throw new UsageError(worded`${file} is not a .rebuild file. Give it a name that ends so.`);
    return shownPath(path);
  }

  /** A folder without files is no mistake where a first text is being written. */
  private async read(isDraft: boolean): Promise<CliWorkspace> {
    try {
      return await openWorkspace([this.path], undefined);
    } catch (error) {
      if (!isDraft || !(error instanceof UsageError)) throw error;
      return { files: [], asked: new Set(), settings: null, result: this.workspace.open([]), notRead: [] };
    }
  }
}

/** Checked for length before anything is read of it. */
export function draftOf(file: string, text: string | undefined): Draft | null {
  if (text === undefined) return null;
  if (text.length > longestText)
    throw new UsageError(worded`The text has ${text.length} characters; a procedure has at most ${longestText}.`);
  return { file, text };
}
