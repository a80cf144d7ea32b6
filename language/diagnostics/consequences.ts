/** What is not reported, since it may follow from a statement that could not be read as it was meant. */
import { fullMessage, stated } from '../model/diagnostic.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Named } from '../model/source.ts';
import { isTest } from '../model/steps.ts';
import type { Report } from './rule.ts';

/** A statement with a word that could not be read, or a name that nothing has. */
export interface LostStatement {
  /** Its words, those in quotes too; of a name that nothing has, what is near to it. */
  readonly words: readonly string[];
  /** The name that nothing has; null: something could not be read. */
  readonly unknown: string | null;
  /** It is a step, or the head of steps: where it names no part, nothing is known of the unit after it. */
  readonly isStep: boolean;
}

/** Answers whether a finding may be a consequence of statements that are reported as lost. */
export class Consequences {
  /** What the lost statements name, as a message says it: by name or by title. */
  private readonly names: readonly RegExp[];
  /** The words themselves: some are what a cause is called. */
  private readonly words: ReadonlySet<string>;
  /** A lost step names no part. */
  private readonly ofAll: boolean;

  constructor(procedure: Procedure | null, lost: readonly LostStatement[]) {
    const known = procedure === null || lost.length === 0 ? [] : namedIn(procedure);
    const saidOf = (word: string) => known.filter(({ name }) => name === word || name.startsWith(`${word}-`));
    this.names = lost.flatMap(({ words, unknown }) => [
      ...(unknown === null ? [] : [asWritten(unknown)]),
      ...words.flatMap(saidOf).flatMap(({ name, title }) => [asWritten(name), asWritten(title)]),
    ]);
    this.words = new Set(procedure === null ? [] : lost.flatMap(({ words }) => words));
    this.ofAll = lost.some(({ words, isStep }) => isStep && words.slice(1).flatMap(saidOf).length === 0);
  }

  /** @param onPath it was found on a path through the steps */
  mayFollow(report: Report, onPath: boolean): boolean {
    if (this.names.length === 0 && this.words.size === 0) return false;
    if (this.ofAll && onPath) return true;
    const { rootCause = '' } = report;
    if (rootCause.split(':').some((word) => this.words.has(word))) return true;
    const text = `${fullMessage(stated(report))} ${rootCause}`;
    return this.names.some((name) => name.test(text));
  }
}

/** What a message may call by a name. */
function namedIn({ family, specs, stages, repairs }: Procedure): Pick<Named, 'name' | 'title'>[] {
  const tests = [...stages, ...repairs].flatMap(({ steps }) =>
    steps.flatMap((step) => (isTest(step) ? [step.gate.test] : [])),
  );
  return [
    ...family.parts,
    ...family.parts.map(({ base, baseTitle }) => ({ name: base, title: baseTitle })),
    ...family.ports,
    ...specs,
    ...repairs,
    ...[...tests, ...family.provenBy.map(({ name }) => name)].map((name) => ({ name, title: name })),
  ];
}

/** A whole name or title, in capitals or not. */
function asWritten(words: string): RegExp {
  return new RegExp(`(?<![\\p{L}\\p{N}])${words.replace(/[^\p{L}\p{N} -]/gu, '.')}(?![\\p{L}\\p{N}])`, 'iu');
}
