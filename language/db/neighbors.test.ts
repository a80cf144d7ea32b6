import { describe, expect, it } from 'vitest';
import { edited, start } from '../../tests/fixtures/workspace-edits.ts';
import { Random } from '../../tests/fuzz/random.ts';
import { libraryFiles } from '../../tests/library.ts';
import { procedureFindings, unreadPlaces } from '../diagnostics/engine.ts';
import type { Procedure } from '../model/procedure.ts';
import { kindOfId } from '../semantics/declaration-id.ts';
import { Database } from './engine.ts';
import { Neighbors } from './neighbors.ts';
import { buildQueries } from './queries.ts';
import { Trees } from './trees.ts';
import type { SourceFile } from './workspace.ts';

/** The procedures of some files as they are analyzed, in order. */
function proceduresIn(files: readonly SourceFile[]) {
  const queries = buildQueries(new Database(), new Trees());
  for (const { uri, text } of files) queries.texts.set(uri, text);
  queries.files.set(
    '',
    files.map(({ uri }) => uri),
  );
  return files
    .flatMap(({ uri }) => queries.idsIn(uri))
    .filter((id) => kindOfId(id) === 'Procedure')
    .flatMap((id) => {
      const procedure = queries.model(id) as Procedure | null;
      if (procedure === null) return [];
      const unread = unreadPlaces(queries.reported(id).problems);
      return [{ id, procedure, surroundings: { concessionsIn: queries.concessions, unread } }];
    });
}

/** What is found in them one after the other, and how many analyses that took. */
function found(files: readonly SourceFile[]) {
  let analyses = 0;
  const neighbors = new Neighbors((...given) => {
    analyses++;
    return procedureFindings(...given);
  });
  const all = proceduresIn(files);
  const together = all.map(({ id, procedure, surroundings }) => neighbors.findings(id, procedure, surroundings));
  const alone = all.map(({ procedure, surroundings }) => procedureFindings(procedure, surroundings));
  return { analyses, count: all.length, together, alone };
}

/** Each file with a procedure twice, the second time under a longer name. */
function twice(files: readonly SourceFile[]): SourceFile[] {
  return files.flatMap(({ uri, text }) => {
    const isProcedure = /^procedure /mu.test(text);
    const other = text.replace(/^(procedure \S+)/gmu, '$1-again');
    return isProcedure
      ? [
          { uri, text },
          { uri: `again/${uri}`, text: other },
        ]
      : [{ uri, text }];
  });
}

describe('procedures that are checked one after the other', () => {
  it('have the findings that each has by itself: the library, the flawed one too', () => {
    const { together, alone, count, analyses } = found(twice(libraryFiles(true)));
    expect(together).toEqual(alone);
    expect(together.some(({ diagnostics }) => diagnostics.length > 3)).toBe(true);
    expect(analyses).toBe(count / 2);
  });

  it.each([1, 2, 3, 4, 5, 6])('have them whatever is other in one of them, seed %i', (seed) => {
    const random = new Random(seed);
    const procedure = start.find(({ uri }) => uri === 'a.rebuild')!;
    const others = Array.from({ length: 12 }, (_, index) => ({
      uri: `other-${index}.rebuild`,
      text: edited(random, procedure.text.replace('procedure a ', `procedure a-${index} `)),
    }));
    const { together, alone } = found(twice([...start, ...others]));
    expect(together).toEqual(alone);
  });
});
