/** Zero-based line and UTF-16 character, as in the Language Server Protocol 3.18. */
export interface Position {
  readonly line: number;
  readonly character: number;
}

/** Half-open range of text: `end` is exclusive. */
export interface Range {
  readonly start: Position;
  readonly end: Position;
}

/** Where something was written: the document's URI (or path) and the range in it. */
export interface Source {
  readonly file: string;
  readonly range: Range;
}

export function sameSource(one: Source, other: Source): boolean {
  if (one === other) return true;
  const [a, b] = [one.range, other.range];
  return one.file === other.file && samePosition(a.start, b.start) && samePosition(a.end, b.end);
}

function samePosition(one: Position, other: Position): boolean {
  return one.line === other.line && one.character === other.character;
}

/** Something with a name, the words printed for it, and the place of its name. */
export interface Named {
  readonly name: string;
  /** The author's own words in quotes; the name if there are none. */
  readonly title: string;
  readonly source: Source;
}

/** A concession: `allow RULE because "…"`. */
export interface Allow {
  readonly rule: string;
  readonly because: string;
  readonly source: Source;
  /** The statement that it is on: what is found there is silenced. */
  readonly extent: Source;
}

/** A name as used at a place. */
export interface NameUse {
  readonly name: string;
  readonly source: Source;
}
