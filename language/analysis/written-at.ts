import type { Step } from '../model/procedure.ts';

/** The place where a step is written. One in a sequence is written once, however often the sequence is called. */
export function writtenAt(step: Step): string {
  const { file, range } = step.call?.source ?? step.source;
  return `${file}:${range.start.line}:${range.start.character}`;
}
