/** The only place where the command writes to its two streams (held by tests/architecture.test.ts). */
import pc from 'picocolors';
import { worded } from './messages.ts';
import { visible } from './visible.ts';

/** Writes the answer, with what could steer a terminal or a build server written out. */
export function say(text: string): void {
  process.stdout.write(visible(text, true));
}

/** Empties the terminal; where the answer goes to a file or a program nothing. */
export function clearTerminal(): void {
  if (process.stdout.isTTY) process.stdout.write('\u001b[2J\u001b[3J\u001b[H');
}

/** Writes what accompanies the answer: notes, refusals, errors. */
export function tell(text: string): void {
  process.stderr.write(visible(text, true));
}

/** Something to know that stops nothing. */
export function note(text: string): void {
  tell(`${pc.yellow(worded`note`)}  ${text}\n`);
}

/** Writes for a program. The text must have been made safe by its writer: `visibleJson`, `visibleHtml`. */
export function sayData(text: string): void {
  process.stdout.write(text);
}
