import type { StepStates } from '../analysis/step-states.ts';
import type { Family } from '../model/family.ts';
import type { Job } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import { contains } from '../model/ranges.ts';
import type { Allow, Position, Source } from '../model/source.ts';
import type { Reference } from '../semantics/context.ts';
import { type Declared, kindOfId, uriOfId } from '../semantics/declaration-id.ts';
import type { LoweredJob } from '../semantics/job.ts';
import type { ResolvedWorkspace } from '../semantics/resolved.ts';
import { isSomewhere, readableNames } from '../semantics/signature.ts';
import type { DeclaredSymbol, SearchedName } from '../semantics/symbols.ts';
import { type Declaration, type Index, nameKey } from './declarations.ts';
import type { Gathering } from './gathering.ts';
import { type IssuedFile, isIssuedFile } from './issued/format.ts';
import { type LineOf, locatedModel } from './located.ts';
import { type FileFindings, type Model, type ParsedFile, phases, type Queries, type Reported } from './queries.ts';

interface DeclarationState {
  readonly model: Model;
  readonly reported: Reported;
  readonly concessions: readonly Allow[];
}

/**
 * Results as they are now, worked out when they are read. They are kept relative to their declarations, and given out
 * in their files. Once the files change only what was read can be had, or all that is found where it was `completed`.
 */
export class Snapshot {
  readonly uris: readonly string[];
  private readonly queries: Queries;
  /** Place of each file among them. */
  private readonly places: ReadonlyMap<string, number>;
  private readonly parsed = new Map<string, ParsedFile>();
  private readonly states = new Map<string, DeclarationState>();
  /** Where each procedure reads what, by name. */
  private readonly readings = new Map<string, ReadonlyMap<string, Source>>();
  private readonly jobs = new Map<string, Job>();
  private readonly found = new Map<string, FileFindings>();
  private readonly lineOf: LineOf = (id) => this.file(uriOfId(id)).lines.get(id) ?? 0;

  private readonly gathering: Gathering;
  private readonly hasGathered: { readings: boolean; checks: boolean };

  /** @param isLive what comes of other files is taken as it was gathered last, so that no answer waits for every file */
  constructor(queries: Queries, gathering: Gathering, uris: readonly string[], isLive = false) {
    this.queries = queries;
    this.gathering = gathering;
    this.hasGathered = { readings: isLive, checks: isLive };
    this.uris = uris;
    this.places = new Map(uris.map((uri, index) => [uri, index]));
  }

  /** Works out all that is found. */
  complete(): this {
    if (this.found.size === this.uris.length) return this;
    // File by file: while it is at hand, what was lowered of it is looked at.
    for (const uri of this.uris) {
      this.queries.saidIn(uri);
      this.queries.resultIn(uri);
      this.gathering.meet(uri);
      this.queries.trimTrees();
    }
    this.gathering.settle();
    for (const uri of this.uris) this.diagnostics(uri);
    for (const uri of this.uris) this.file(uri);
    return this;
  }

  file(uri: string): ParsedFile {
    const known = this.parsed.get(uri) ?? this.queries.parsed(uri);
    this.parsed.set(uri, known);
    return known;
  }

  has(uri: string): boolean {
    return this.places.has(uri);
  }

  /** Those of some files that are here, in the order of the files. */
  inOrder(uris: Iterable<string>): string[] {
    const places = [...new Set(uris)].flatMap((uri) => this.places.get(uri) ?? []);
    return places.sort((a, b) => a - b).map((place) => this.uris[place]!);
  }

  diagnostics(uri: string): FileFindings {
    const known = this.found.get(uri);
    if (known !== undefined) return known;
    this.gatherFor(uri);
    const found = this.queries.findingsFrom(uri);
    this.found.set(uri, found);
    return found;
  }

  /** Has ready what comes of other files and is about this one. */
  private gatherFor(uri: string) {
    this.gatherReadings();
    if (this.hasGathered.checks) return;
    // What a concession in a procedure silences comes of that procedure.
    const isHeardElsewhere = (id: string) => kindOfId(id) !== 'Procedure' && this.queries.concessions(id).length > 0;
    if (!this.idsIn(uri).some(isHeardElsewhere)) return;
    for (const other of this.queries.sources('')) this.gathering.check(other);
    this.gathering.settle();
    this.hasGathered.checks = true;
  }

  private gatherReadings() {
    if (this.hasGathered.readings) return;
    for (const other of this.queries.sources('')) this.gathering.read(other);
    this.gathering.settle();
    this.hasGathered.readings = true;
  }

  private get index(): Index {
    return this.queries.index('');
  }

  /** A result with its sources in their files. */
  located<T extends object>(model: T): T {
    return locatedModel(model, this.lineOf);
  }

  /** All declarations, whether or not they can be read. */
  declarations(): { readonly uri: string; readonly kind: string; readonly name: string }[] {
    return this.index.all.map(({ id, name }) => ({ uri: uriOfId(id), kind: kindOfId(id).toLowerCase(), name }));
  }

  /** Declarations of one kind, whether or not they can be read. */
  declared(kind: Declared): Declaration[] {
    return this.index.all.filter(({ id }) => kindOfId(id) === kind);
  }

  /** Ids of one kind, or of all, in order, without issued revisions. */
  ids(kind?: Declared): string[] {
    return this.uris.flatMap((uri) => (isIssuedFile(uri) ? [] : this.idsIn(uri, kind)));
  }

  idsIn(uri: string, kind?: Declared): string[] {
    return this.file(uri).declarations.flatMap(({ id }) => (kind === undefined || kindOfId(id) === kind ? [id] : []));
  }

  /** Ids of all declarations of a name. */
  idsOf(kind: Declared, name: string): readonly string[] {
    return this.index.named.get(nameKey(kind, name)) ?? [];
  }

  /** Null where it cannot be read, or another of its name comes first. */
  procedure(id: string): Procedure | null {
    return this.state(id).model as Procedure | null;
  }

  /** Null where it cannot be read. */
  stepStates(id: string): StepStates | null {
    return this.queries.stepStates(id);
  }

  /** As they were before the last edits, where the steps up to an index are the same. */
  statesUpTo(id: string, index: number): StepStates | null {
    return this.queries.keptStates(id, index);
  }

  /** Null where it cannot be read. */
  family(id: string): Family | null {
    const family = this.state(id).model as Family | null;
    return family === null ? null : this.located(family);
  }

  /** The same object each time. */
  job(id: string): Job | null {
    const known = this.jobs.get(id);
    if (known !== undefined) return known;
    const lowered = this.state(id).model as LoweredJob | null;
    if (lowered === null) return null;
    const procedure = this.queries.procedureNamed(lowered.of, this.queries.worldOf(id));
    const made = this.queries.jobOf(id, this.located(lowered), this.located(this.procedure(procedure!)!));
    this.jobs.set(id, made);
    return made;
  }

  /** All issued revisions that are as they were written. */
  issues(): IssuedFile[] {
    return this.uris.flatMap((uri) => (isIssuedFile(uri) ? (this.queries.issue(uri) ?? []) : []));
  }

  /** The issued revision that a job is judged by; null: the sources. */
  issueOf(id: string): IssuedFile | null {
    const world = this.queries.worldOf(id);
    return world === '' ? null : this.queries.issue(world);
  }

  links(): Reference[] {
    return phases.flatMap((kind) => this.ids(kind).flatMap((id) => this.ended(this.state(id).reported.links)));
  }

  /**
   * The links of names that are written in a file, or of the one that is written at a place there. Those of a sequence come of
   * the procedures that call it.
   */
  linksIn(uri: string, at: Position | null = null): Reference[] {
    if (!this.has(uri)) return [];
    this.gatherReadings();
    const written = new Set(this.idsIn(uri));
    const readers = new Set([uri, ...this.gathering.readersOf(uri)]);
    const files = readers.size === 1 ? [uri] : this.uris.filter((one) => readers.has(one));
    const linking = files.flatMap((other) => {
      if (other === uri) return [...written];
      const { reaches } = this.queries.saidIn(other);
      return reaches.flatMap(({ id, others }) => (others.some((one) => written.has(one)) ? [id] : []));
    });
    return phases.flatMap((kind) =>
      linking.flatMap((id) => {
        if (kindOfId(id) !== kind) return [];
        const byUse = linksByUse(this.state(id).reported);
        return [...written].flatMap((one) => this.ended(linksAt(byUse.get(one) ?? [], at, this.lineOf(one))));
      }),
    );
  }

  searched(uri: string): readonly SearchedName[] {
    return this.queries.searched(uri);
  }

  symbols(uri: string): readonly DeclaredSymbol[] {
    return this.queries.symbols(uri);
  }

  resolved(jobs: readonly Job[], links: readonly Reference[]): ResolvedWorkspace {
    const reported = phases.flatMap((kind) => this.ids(kind).map((id) => this.state(id).reported));
    return {
      shops: firstOfEach(this.models('Shop')),
      families: firstOfEach(this.models('Family')),
      procedures: this.models('Procedure'),
      jobs,
      concessions: this.ids().flatMap((id) => this.state(id).concessions.map((one) => this.located(one))),
      problems: reported.flatMap(({ problems }) => problems.map((one) => this.located(one))),
      references: links,
      defects: reported.flatMap(({ defects }) => defects.map((one) => this.located(one))),
    };
  }

  /** Links with their targets: of a job that names what its procedure reads, where that is read. */
  private ended(links: readonly Reference[]): Reference[] {
    return links.map((link) => {
      const { target, name } = link;
      return this.located(isSomewhere(target) ? { ...link, target: this.reading(target.file, name) } : link);
    });
  }

  private reading(id: string, name: string): Source {
    const known =
      this.readings.get(id) ?? new Map(readableNames(this.procedure(id)!).map((use) => [use.name, use.source]));
    this.readings.set(id, known);
    return known.get(name)!;
  }

  private state(id: string): DeclarationState {
    const known = this.states.get(id) ?? {
      model: this.queries.model(id),
      reported: this.queries.reported(id),
      concessions: this.queries.concessions(id),
    };
    this.states.set(id, known);
    return known;
  }

  private models<T extends object>(kind: Declared): T[] {
    return this.ids(kind).flatMap((id) => {
      const { model } = this.state(id);
      return model === null ? [] : [this.located(model as object) as T];
    });
  }
}

const linksOf = new WeakMap<Reported, ReadonlyMap<string, readonly Reference[]>>();

function linksByUse(reported: Reported): ReadonlyMap<string, readonly Reference[]> {
  const known = linksOf.get(reported);
  if (known !== undefined) return known;
  const links = new Map<string, Reference[]>();
  for (const link of reported.links) {
    const same = links.get(link.use.file);
    if (same === undefined) links.set(link.use.file, [link]);
    else same.push(link);
  }
  linksOf.set(reported, links);
  return links;
}

/** Those of a declaration at a place in its file; null: all. @param line on which the declaration begins */
function linksAt(links: readonly Reference[], at: Position | null, line: number): readonly Reference[] {
  if (at === null) return links;
  const inIt = { ...at, line: at.line - line };
  return links.filter(({ use }) => contains(use.range, inIt));
}

function firstOfEach<T extends { readonly name: string }>(models: readonly T[]): T[] {
  const names = new Set<string>();
  return models.filter(({ name }) => !names.has(name) && names.add(name));
}
