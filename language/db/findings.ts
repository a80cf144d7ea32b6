import { readSettings, type Settings, type SettingsFile, withSeverities } from '../config/config.ts';
import { isSettings } from '../config/settings-name.ts';
import { touches } from '../diagnostics/engine.ts';
import { type Diagnostic, stated } from '../model/diagnostic.ts';
import type { Procedure } from '../model/procedure.ts';
import { kindOfId, uriOfId } from '../semantics/declaration-id.ts';
import type { SyntaxProblem } from '../syntax/parse.ts';
import type { FileFindings, ParsedFile } from './queries.ts';
import type { Snapshot } from './snapshot.ts';

/** What is found in a file, or comes of what it declares, in the files where it is. */
export interface LocatedFindings extends FileFindings {
  readonly syntax: readonly Diagnostic[];
}

/** The findings of a workspace in their files, with the severities that its settings give them. */
export class Findings {
  readonly settings: Settings | null;
  private readonly snapshot: Snapshot;
  private readonly located = new Map<string, LocatedFindings>();

  constructor(snapshot: Snapshot, settings: SettingsFile | null) {
    this.snapshot = snapshot;
    this.settings = settings === null ? null : readSettings(settings);
  }

  /** By file in the order of the files, then by place. */
  all(): Diagnostic[] {
    const { uris } = this.snapshot.complete();
    return inOrder(this.stated([...(this.settings?.problems ?? []), ...joined(uris.map((uri) => this.of(uri)))]), uris);
  }

  /** What is in one file. */
  in(uri: string): Diagnostic[] {
    if (!this.snapshot.has(uri)) return [];
    const here = joined([this.of(uri)]).filter(({ source }) => source.file === uri);
    return inOrder(this.stated(here), [uri]);
  }

  /** Those that count for a procedure. */
  on(id: string, procedure: Procedure): readonly Diagnostic[] {
    const uris = filesAround(this.snapshot, procedure);
    const files = uris.map((uri) => this.of(uri));
    // What a job in the same file gets wrong is no matter of the procedure.
    const common = uris
      .flatMap((uri) => this.snapshot.diagnostics(uri).common)
      .filter(({ source }) => kindOfId(source.file) !== 'Job')
      .map((one) => this.snapshot.located(one));
    const unread = [...files.flatMap(({ syntax }) => syntax), ...files.flatMap(({ unmade }) => unmade)];
    const touching = (diagnostics: readonly Diagnostic[]) =>
      diagnostics.filter((diagnostic) => touches(diagnostic, procedure));
    return this.stated([
      ...[...(this.settings?.problems ?? []), ...unread].filter((diagnostic) => standsIn(diagnostic, procedure)),
      ...touching(common),
      ...files.flatMap(({ own }) => own.flatMap((one) => (one.id === id ? one.diagnostics : []))),
      ...touching(files.flatMap(({ idle }) => idle)),
    ]);
  }

  /** How many the settings raised, lowered or turned off. */
  restated(): number {
    const severities = this.settings?.severities;
    if (severities === undefined || severities.size === 0) return 0;
    const found = joined(this.snapshot.uris.map((uri) => ({ ...this.of(uri), syntax: [], unmade: [] })));
    return found.filter(
      ({ rule, severity, isSettled }) => isSettled === undefined && (severities.get(rule) ?? severity) !== severity,
    ).length;
  }

  private stated(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
    return withSeverities(diagnostics, this.settings?.severities ?? new Map());
  }

  private of(uri: string): LocatedFindings {
    const known = this.located.get(uri);
    if (known !== undefined) return known;
    const made = locatedFindings(this.snapshot.file(uri), this.snapshot.diagnostics(uri), uri, (one) =>
      this.snapshot.located(one),
    );
    this.located.set(uri, made);
    return made;
  }
}

/** @param located a finding in the file that it is in */
export function locatedFindings(
  { problems }: ParsedFile,
  { common, own, idle, unmade }: FileFindings,
  uri: string,
  located: (diagnostic: Diagnostic) => Diagnostic,
): LocatedFindings {
  return {
    syntax: problems.map((problem) => syntaxFinding(uri, problem)),
    common: common.map(located),
    own: own.map(({ id, diagnostics }) => ({ id, diagnostics: diagnostics.map(located) })),
    idle: idle.map(located),
    unmade: unmade.map(located),
  };
}

/** By what they come of: of several at one place the first of them is shown first. */
export function joined(files: readonly LocatedFindings[]): Diagnostic[] {
  return [
    ...files.flatMap(({ syntax }) => syntax),
    ...files.flatMap(({ common }) => common),
    ...files.flatMap(({ own }) => own.flatMap(({ diagnostics }) => diagnostics)),
    ...files.flatMap(({ idle }) => idle),
    ...files.flatMap(({ unmade }) => unmade),
  ];
}

/** By file, then by place. The settings file is not among the files: it comes before them. */
export function inOrder(diagnostics: readonly Diagnostic[], uris: readonly string[]): Diagnostic[] {
  const order = new Map(uris.map((uri, index) => [uri, index]));
  return [...diagnostics].sort(
    (a, b) =>
      (order.get(a.source.file) ?? -1) - (order.get(b.source.file) ?? -1) ||
      a.source.range.start.line - b.source.range.start.line ||
      a.source.range.start.character - b.source.range.start.character,
  );
}

/** The files in which something can be found that counts for a procedure: its own, and those of a second of its names. */
function filesAround(snapshot: Snapshot, { name, family, shop, files }: Procedure): string[] {
  const same = [
    ...snapshot.idsOf('Procedure', name),
    ...snapshot.idsOf('Family', family.name),
    ...snapshot.idsOf('Shop', shop.name),
  ];
  return snapshot.inOrder([...files, ...same.map(uriOfId)]);
}

function syntaxFinding(file: string, problem: SyntaxProblem): Diagnostic {
  return {
    rule: problem.code,
    severity: 'error',
    ...stated({ message: problem.message }),
    source: { file, range: problem.range },
  };
}

/**
 * A slip anywhere in the files of a procedure may have cost it a step: its sheet waits until it is fixed. So may one in the
 * settings, where the shop can have raised a warning to an error.
 */
function standsIn(diagnostic: Diagnostic, procedure: Procedure): boolean {
  const { file } = diagnostic.source;
  return isSettings(file) || procedure.files.includes(file);
}
