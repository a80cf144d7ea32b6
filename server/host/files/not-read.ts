/** What the command and the editor report besides what the check finds: files that are there and are not read. */
import { type Diagnostic, stated } from '../../../language/model/diagnostic.ts';
import { type Filling, joined, say } from '../../../language/say/say.ts';

const start = { line: 0, character: 0 };

/** A file or folder that was found and could not be read, reported at its beginning. */
export function unreadFinding(file: string, message: Filling): Diagnostic {
  return {
    rule: 'unreadable-file',
    severity: 'error',
    ...stated({ message: joined([message]) }),
    source: { file, range: { start, end: start } },
  };
}

/**
 * A settings file that is not the one in force. If it were read, a file anywhere below could lower what the shop has raised.
 * @param inForce as it is shown; null: no settings file is
 */
export function idleSettings(file: string, inForce: string | null): Diagnostic {
  const message =
    inForce === null
      ? say`This settings file is not read: only the one at the top of the workspace counts. Move it to the folder that is opened, or that the command is run in.`
      : say`This settings file is not read: only the one at the top of the workspace counts. Put what you need into ${inForce}, and delete this one.`;
  return {
    rule: 'settings-not-read',
    severity: 'warning',
    ...stated({ message }),
    source: { file, range: { start, end: start } },
  };
}
