import type { Outcome } from '../diagnostics/engine.ts';
import type { Procedure } from '../model/procedure.ts';
import type { DeclaredSymbol } from '../semantics/symbols.ts';

interface Kept extends Outcome {
  readonly names: string;
  readonly texts: ReadonlyMap<string, string | undefined>;
}

/** The files of a check, as far as a procedure can depend on them. */
export interface World {
  /** Every name that is declared, with its file: while it is the same, names mean the same. */
  readonly names: string;
  /** Files that every procedure may take steps from. */
  readonly shared: readonly string[];
  readonly textOf: (file: string) => string | undefined;
}

/**
 * Caches the result of each procedure, as long as no text that it depends on changes: a keystroke costs the procedures
 * that it affects. One written `like` another depends on too many texts, and is computed again.
 */
export class Memory {
  private readonly kept = new Map<string, Kept>();

  recall(procedure: Procedure, world: World): Outcome | null {
    const known = this.kept.get(keyOf(procedure));
    if (known === undefined || known.names !== world.names) return null;
    for (const [file, text] of known.texts) if (world.textOf(file) !== text) return null;
    return known;
  }

  keep(procedure: Procedure, outcome: Outcome, world: World) {
    if (procedure.like !== null) return;
    const texts = new Map(filesOf(procedure, world).map((file) => [file, world.textOf(file)]));
    this.kept.set(keyOf(procedure), { ...outcome, names: world.names, texts });
  }
}

/** @param symbols what each file declares, in order */
export function worldOf(symbols: ReadonlyMap<string, readonly DeclaredSymbol[]>, textOf: World['textOf']): World {
  const files = [...symbols];
  return {
    names: files.flatMap(([file, of]) => of.map(({ kind, name }) => `${file} ${kind} ${name}`)).join('\n'),
    shared: files.filter(([, of]) => of.some(({ kind }) => kind === 'sequence')).map(([file]) => file),
    textOf,
  };
}

function keyOf({ name, source }: Procedure): string {
  return `${source.file} ${name}`;
}

function filesOf(procedure: Procedure, world: World): string[] {
  const steps = [...procedure.stages, ...procedure.repairs].flatMap((block) => block.steps);
  return [
    ...new Set([
      ...world.shared,
      procedure.source.file,
      procedure.family.source.file,
      procedure.shop.source.file,
      ...steps.flatMap(({ source, call }) => (call === null ? [source.file] : [source.file, call.source.file])),
    ]),
  ];
}
