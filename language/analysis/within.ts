import type { Source } from '../model/source.ts';

/** Whether a place begins inside a range of text. */
export function within(source: Source, extent: Source): boolean {
  if (source.file !== extent.file) return false;
  const { start } = source.range;
  const { range } = extent;
  const afterStart =
    start.line > range.start.line || (start.line === range.start.line && start.character >= range.start.character);
  const beforeEnd =
    start.line < range.end.line || (start.line === range.end.line && start.character <= range.end.character);
  return afterStart && beforeEnd;
}
