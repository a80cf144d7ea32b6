import type { ResolvedWorkspace } from '../semantics/resolved.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { placeOf } from '../syntax/place.ts';
import { Database } from './engine.ts';
import { Gathering } from './gathering.ts';
import { buildQueries } from './queries.ts';
import { Snapshot } from './snapshot.ts';
import { Trees } from './trees.ts';

/** A parsed file and the name that it is known by. */
export interface ParsedFile {
  readonly uri: string;
  readonly ast: ast.File;
}

/** Resolves names across files and lowers their syntax trees to the model, once. Never throws. */
export function resolve(files: readonly ParsedFile[]): ResolvedWorkspace {
  const trees = new Trees();
  const queries = buildQueries(new Database(), trees);
  for (const { uri, ast: tree } of files) {
    trees.give(uri, { ast: tree, problems: [] });
    queries.texts.set(uri, placeOf(tree)?.first?.line.source.text ?? '');
  }
  const uris = files.map(({ uri }) => uri);
  queries.files.set('', uris);
  const snapshot = new Snapshot(queries, new Gathering(queries), uris);
  const jobs = snapshot.ids('Job').flatMap((id) => snapshot.job(id) ?? []);
  return snapshot.resolved(jobs, snapshot.links());
}
