import { contains } from '../model/ranges.ts';
import type { Position, Range } from '../model/source.ts';
import type { Snapshot } from './snapshot.ts';

/** The serial of a unit, where it is written. */
export interface WrittenSerial {
  readonly serial: string;
  /** Number of its job. */
  readonly job: string;
  readonly range: Range;
}

/** Those at a place. */
export function serialsAt(snapshot: Snapshot, file: string, position: Position): WrittenSerial[] {
  return serialsIn(snapshot, file).filter(({ range }) => contains(range, position));
}

/** The serials of a file's jobs, as far as each is on the first line of its unit. */
export function serialsIn({ result, textOf }: Snapshot, file: string): WrittenSerial[] {
  const lines = (textOf(file) ?? '').split('\n');
  return result.jobsIn(file).flatMap((job) =>
    job.units.flatMap(({ serial, source }): WrittenSerial[] => {
      const { line, character } = source.range.start;
      const after = lines[line]?.slice(character) ?? '';
      const [before, word] = /^.*?\bserial[ \t]+("[^"]*"|\S+)/u.exec(after) ?? [];
      if (serial === null || before === undefined || word === undefined || source.file !== file) return [];
      const end = character + before.length;
      return [
        {
          serial,
          job: job.name,
          range: { start: { line, character: end - word.length }, end: { line, character: end } },
        },
      ];
    }),
  );
}
