import { type Settings, withSeverities } from '../config/config.ts';
import type { Diagnostic } from '../model/diagnostic.ts';
import { uriOfId } from '../semantics/declaration-id.ts';
import { inOrder, joined, type LocatedFindings, locatedFindings } from './findings.ts';
import { locatedModel } from './located.ts';
import type { FileFindings, ParsedFile, Queries } from './queries.ts';

/** What came of a file when it was last looked at. */
interface Known {
  readonly found: FileFindings;
  readonly problems: ParsedFile['problems'];
  /** Where the declarations began that the findings are in, or mention. */
  readonly lines: ReadonlyMap<string, number>;
  readonly isWhole: boolean;
  /** By the file that they are in. */
  readonly byFile: ReadonlyMap<string, LocatedFindings>;
}

/** The findings of a workspace, kept file by file: a look at a file changes only what came of that. */
export class LiveFindings {
  private readonly queries: Queries;
  private readonly known = new Map<string, Known>();
  /** Where what is found in a file comes from, by that file. */
  private readonly sources = new Map<string, Set<string>>();

  constructor(queries: Queries) {
    this.queries = queries;
  }

  /**
   * Looks at what comes of a file, and gives the files in which the findings are others now.
   * @param isWhole false while not every file has been checked: whether a concession is needed is not yet known
   */
  refresh(uri: string, isWhole: boolean): readonly string[] {
    const found = this.queries.findingsFrom(uri);
    const parsed = this.queries.parsed(uri);
    const lineOf = (id: string) => this.queries.parsed(uriOfId(id)).lines.get(id) ?? 0;
    const before = this.known.get(uri);
    const isSame =
      before !== undefined &&
      before.found === found &&
      before.problems === parsed.problems &&
      before.isWhole === isWhole &&
      [...before.lines].every(([id, line]) => lineOf(id) === line);
    if (isSame) return [];
    const lines = new Map<string, number>();
    const recorded = (id: string) => {
      const line = lineOf(id);
      lines.set(id, line);
      return line;
    };
    const all = locatedFindings(parsed, isWhole ? found : { ...found, idle: [] }, uri, (diagnostic) =>
      locatedModel(diagnostic, recorded),
    );
    return this.put(uri, { found, problems: parsed.problems, lines, isWhole, byFile: byFile(all) });
  }

  /** A file is gone. Gives the files in which something came of it. */
  forget(uri: string): readonly string[] {
    return this.put(uri, null);
  }

  /** The findings in a file, by place. */
  in(uri: string, uris: readonly string[], severities: Settings['severities']): Diagnostic[] {
    const sources = this.sources.get(uri);
    if (sources === undefined) return [];
    const files = sources.size === 1 ? [...sources] : uris.filter((one) => sources.has(one));
    const found = files.flatMap((from) => this.known.get(from)?.byFile.get(uri) ?? []);
    return inOrder(withSeverities(joined(found), severities), [uri]);
  }

  /** Files that something is found in. */
  files(): Iterable<string> {
    return this.sources.keys();
  }

  private put(uri: string, now: Known | null): readonly string[] {
    const before = this.known.get(uri)?.byFile ?? new Map<string, LocatedFindings>();
    const after = now?.byFile ?? new Map<string, LocatedFindings>();
    for (const file of before.keys()) {
      if (after.has(file)) continue;
      const sources = this.sources.get(file)!;
      sources.delete(uri);
      if (sources.size === 0) this.sources.delete(file);
    }
    for (const file of after.keys()) this.sources.set(file, (this.sources.get(file) ?? new Set()).add(uri));
    if (now === null) this.known.delete(uri);
    else this.known.set(uri, now);
    return [...new Set([...before.keys(), ...after.keys()])];
  }
}

function byFile(all: LocatedFindings): Map<string, LocatedFindings> {
  const every = [...all.syntax, ...all.common, ...all.own.flatMap(({ diagnostics }) => diagnostics), ...all.idle];
  const files = new Set([...every, ...all.unmade].map(({ source }) => source.file));
  return new Map(
    [...files].map((file) => {
      const here = (diagnostics: readonly Diagnostic[]) => diagnostics.filter(({ source }) => source.file === file);
      return [
        file,
        {
          syntax: here(all.syntax),
          common: here(all.common),
          own: all.own.map(({ id, diagnostics }) => ({ id, diagnostics: here(diagnostics) })),
          idle: here(all.idle),
          unmade: here(all.unmade),
        },
      ];
    }),
  );
}
