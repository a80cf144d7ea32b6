import pc from 'picocolors';
import manifest from '../../package.json' with { type: 'json' };
import { worded } from './messages.ts';
import { tell } from './say.ts';

/** Set to anything but nothing, it shows where a defect lies, for those who work on Handtight. */
const traceVariable = 'HANDTIGHT_TRACE';

/**
 * The last resort: something that no part of this program has foreseen. Says in a sentence that it is a defect and what to
 * do; gives the exit code for it.
 */
export function defect(error: unknown): number {
  const { message, stack } = error instanceof Error ? error : { message: String(error), stack: undefined };
  const [line = ''] = message.split('\n');
  tell(
    `${pc.red('handtight:')} ${worded`This is a defect of Handtight ${manifest.version}, not a mistake of yours: ${line}. No file was left half-written. Please report it with the command and the files; ${traceVariable}=1 before the command shows where it happened.`}\n`,
  );
  if (process.env[traceVariable]) tell(`${stack ?? message}\n`);
  return 3;
}
