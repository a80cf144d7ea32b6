/** A reading of a unit: of a test, at a point of its plan, at a place of the unit. */
export interface ReadingAt {
  readonly test: string;
  readonly point: string | null;
  readonly place: string | null;
}

/**
 * The name of a reading, by which it is written down, judged and printed: that of its test, and behind it point and place
 * (`delivery/full/3`, `phasing//5`). No name of the author's contains a slash.
 */
export function readingId({ test, point, place }: ReadingAt): string {
  return point === null && place === null ? test : `${test}/${point ?? ''}/${place ?? ''}`;
}

export function readingAt(id: string): ReadingAt {
  const [test = '', point = '', place = ''] = id.split('/');
  return { test, point: point === '' ? null : point, place: place === '' ? null : place };
}

/** The test that a reading is of. */
export function testOf(id: string): string {
  return readingAt(id).test;
}
