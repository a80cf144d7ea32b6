import type { Fix } from '../model/finding.ts';
import type { Source } from '../model/source.ts';

/** A fix that writes a step on a line of its own before another. */
export function putBefore(source: Source, step: string, title: string): Fix {
  const { start } = source.range;
  const at = { file: source.file, range: { start, end: start } };
  return { title, edits: [{ source: at, text: `${step}\n${' '.repeat(start.character)}` }] };
}
