/** What the command and the editor report besides what the check finds: files that are there and are not read. */
import type { Diagnostic } from '../../../language/model/diagnostic.ts';

const start = { line: 0, character: 0 };

/** A file or folder that was found and could not be read, reported at its beginning. */
export function unreadFinding(file: string, message: string): Diagnostic {
  return { rule: 'unreadable-file', severity: 'error', message, source: { file, range: { start, end: start } } };
}

/**
 * A settings file that is not the one in force. If it were read, a file anywhere below could lower what the shop has raised.
 * @param inForce as it is shown; null: no settings file is
 */
export function idleSettings(file: string, inForce: string | null): Diagnostic {
  const instead =
    inForce === null
      ? 'Move it to the folder that is opened, or that the command is run in'
      : `Put what you need into ${inForce}, and delete this one`;
  return {
    rule: 'settings-not-read',
    severity: 'warning',
    message: `This settings file is not read: only the one at the top of the workspace counts. ${instead}.`,
    source: { file, range: { start, end: start } },
  };
}
