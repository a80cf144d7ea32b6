const jobHead =
  /^job[ \t]+(?:"([^"]+)"|(\d+(?:\.\d+)?|\p{L}[\p{L}\d_]*(?:-[\p{L}\d_]+)*))(?=[ \t]*(?:$|["{]|\/\/|(?:of|at|revision|customer|received|order)\b))/u;
const otherHead = /^(?:shop|family|procedure|sequence)\b/u;

/**
 * The names of a file that declares jobs and nothing else, without parsing it: a shop has thousands of jobs, and most are
 * never needed. Null for any other file. Where a head is broken the parser may see another declaration in its place;
 * it is found when that file is parsed.
 */
export function jobHeads(text: string): string[] | null {
  const names: string[] = [];
  let depth = 0;
  let isInHead = false;
  for (const line of linesOf(text)) {
    const bare = (plain.test(line) ? line : withoutWords(line)).trim();
    if (bare === '') continue;
    if (depth === 0) {
      const head = jobHead.exec(line.trim());
      const name = head?.[1] ?? head?.[2];
      if (name !== undefined) names.push(name);
      else if (!isInHead || otherHead.test(bare)) return null;
      isInHead = true;
    }
    for (let at = 0; at < bare.length; at++) {
      const sign = bare[at];
      if (sign === '{') depth++;
      else if (sign === '}') depth--;
    }
    if (depth > 0) isInHead = false;
    if (depth < 0) return null;
  }
  return depth === 0 && !isInHead ? names : null;
}

/** One after the other: most files have something else in one of the first. */
function* linesOf(text: string): Generator<string> {
  const ends = /\r\n|\n|\r/gu;
  let start = 0;
  for (let end = ends.exec(text); end !== null; end = ends.exec(text)) {
    yield text.slice(start, end.index);
    start = ends.lastIndex;
  }
  yield text.slice(start);
}

/** A line with nothing in quotes and no remark. */
const plain = /^[^"/]*$/u;

function withoutWords(line: string): string {
  return line.replace(/("[^"]*"?)|\/\/.*/gu, (_, quoted?: string) => (quoted === undefined ? '' : '""'));
}
