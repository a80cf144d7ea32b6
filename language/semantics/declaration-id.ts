import type * as ast from '../syntax/generated/ast.ts';

/** What is declared at the top of a file, as its syntax tree calls it. */
export type Declared = ast.Declaration['$type'];

const separator = '\0';

/**
 * What a declaration is known by, wherever it moves in its file. The sources in it have it as their file.
 * @param ordinal how many of its kind and name come before it in the file
 */
export function declarationId(uri: string, kind: Declared, name: string, ordinal: number): string {
  return `${uri}${separator}${kind}${separator}${name}${separator}${ordinal}`;
}

export function kindOfId(id: string): Declared {
  const start = id.indexOf(separator) + 1;
  return id.slice(start, id.indexOf(separator, start)) as Declared;
}

export function nameOfId(id: string): string {
  return id.split(separator)[2]!;
}

export function uriOfId(id: string): string {
  const end = id.indexOf(separator);
  return end < 0 ? id : id.slice(0, end);
}
