/** The text of a job that is moved to another revision of its procedure. */
import type { Range } from '../model/source.ts';
import { label } from './job.ts';

export interface Move {
  readonly from: string;
  readonly to: string;
  readonly by: string;
  /** ISO date. */
  readonly on: string;
  readonly reason: string;
}

/** Says the new revision in the head, and the move in the intake. @param range of the job, from its word to its end */
export function movedText(text: string, { start, end }: Range, { from, to, by, on, reason }: Move): string {
  const lines = text.split('\n');
  const at = ({ line, character }: Range['start']) =>
    lines.slice(0, line).reduce((sum, one) => sum + one.length + 1, 0) + character;
  const job = text.slice(at(start), at(end));
  const open = headEnd(job);
  const head = job.slice(0, open);
  const named = /\brevision\s+(?:"[^"\n]*"|[^\s"{]+)/u;
  const newHead = named.test(head)
    ? head.replace(named, `revision ${label(to)}`)
    : head.replace(/\bof\s+\S+/u, (of) => `${of} revision ${label(to)}`);
  const line = `    moved ${label(from, true)} by "${by}" on ${on} reason "${reason}"\n`;
  const body = job.slice(open);
  const intake = /^[ \t]*intake[ \t]*\{[^\n]*\n/mu.exec(body);
  const closed = intake === null ? -1 : body.slice(intake.index + intake[0].length).search(/^[ \t]*\}/mu);
  const newBody =
    intake === null || closed < 0
      ? body.replace(/^\{[^\n]*\n/u, (brace) => `${brace}  intake {\n${line}  }\n`)
      : inserted(body, intake.index + intake[0].length + closed, line);
  return text.slice(0, at(start)) + newHead + newBody + text.slice(at(end));
}

function inserted(text: string, at: number, line: string): string {
  return text.slice(0, at) + line + text.slice(at);
}

/** Where the block of a job begins: at the first brace that is in no quotes and no remark. */
function headEnd(job: string): number {
  return /^(?:"[^"\n]*"?|\/\/[^\n]*|[^"{/]|\/(?!\/))*/u.exec(job)![0].length;
}
