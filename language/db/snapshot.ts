import type { Job } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Allow } from '../model/source.ts';
import type { Link } from '../semantics/context.ts';
import { type Declared, kindOfId, uriOfId } from '../semantics/declaration-id.ts';
import type { LoweredJob } from '../semantics/job.ts';
import type { Resolved } from '../semantics/resolved.ts';
import { type LineOf, locatedModel } from './located.ts';
import { type FileFindings, type Model, type ParsedFile, phases, type Queries, type Told } from './queries.ts';

interface DeclarationState {
  readonly id: string;
  readonly kind: Declared;
  readonly model: Model;
  readonly told: Told;
  readonly concessions: readonly Allow[];
}

interface FileState {
  readonly uri: string;
  readonly parsed: ParsedFile;
  readonly declarations: readonly DeclarationState[];
  readonly found: FileFindings;
}

/**
 * All results as they are now; what is asked of a snapshot later is of the same files. It holds them relative to
 * their declarations, and gives them out in their files.
 */
export class Snapshot {
  readonly files: readonly FileState[];
  private readonly lines = new Map<string, ParsedFile['lines']>();
  private readonly lineOf: LineOf = (id) => this.lines.get(uriOfId(id))?.get(id) ?? 0;

  constructor(queries: Queries, uris: readonly string[]) {
    this.files = uris.map((uri) => {
      const parsed = queries.parsed(uri);
      this.lines.set(uri, parsed.lines);
      const declarations = parsed.declarations.map(({ id }) => ({
        id,
        kind: kindOfId(id),
        model: queries.model(id),
        told: queries.told(id),
        concessions: queries.concessions(id),
      }));
      return { uri, parsed, declarations, found: queries.findingsFrom(uri) };
    });
  }

  /** A result with its sources in their files. */
  located<T extends object>(model: T): T {
    return locatedModel(model, this.lineOf);
  }

  /** Of a name that is declared twice, the first. */
  procedures(): { readonly id: string; readonly model: Procedure }[] {
    return this.declarations('Procedure').flatMap(({ id, model }) =>
      model === null ? [] : [{ id, model: model as Procedure }],
    );
  }

  jobs(): Job[] {
    const procedures = new Map(this.procedures().map(({ model }) => [model.name, model]));
    return this.models<LoweredJob>('Job').map(({ of, ...job }) => ({
      ...job,
      procedure: this.located(procedures.get(of)!),
    }));
  }

  resolved(jobs: readonly Job[], links: readonly Link[]): Resolved {
    const all = phases.flatMap((kind) => this.declarations(kind));
    return {
      shops: firstOfEach(this.models('Shop')),
      families: firstOfEach(this.models('Family')),
      procedures: this.procedures().map(({ model }) => this.located(model)),
      jobs,
      concessions: this.files.flatMap(({ declarations }) =>
        declarations.flatMap(({ concessions }) => concessions.map((one) => this.located(one))),
      ),
      problems: all.flatMap(({ told }) => told.problems.map((one) => this.located(one))),
      links,
      defects: all.flatMap(({ told }) => told.defects.map((one) => this.located(one))),
    };
  }

  links(): Link[] {
    return phases.flatMap((kind) =>
      this.declarations(kind).flatMap(({ told }) => told.links.map((one) => this.located(one))),
    );
  }

  private declarations(kind: Declared): DeclarationState[] {
    return this.files.flatMap(({ declarations }) => declarations.filter((one) => one.kind === kind));
  }

  private models<T extends object>(kind: Declared): T[] {
    return this.declarations(kind).flatMap(({ model }) => (model === null ? [] : [this.located(model as object) as T]));
  }
}

function firstOfEach<T extends { readonly name: string }>(models: readonly T[]): T[] {
  const names = new Set<string>();
  return models.filter(({ name }) => !names.has(name) && names.add(name));
}
