import { type Diagnostic, stated } from '../model/diagnostic.ts';
import type { Source } from '../model/source.ts';
import { type Said, say } from '../say/say.ts';

/** Findings that belong to no rule: something was not checked. They are errors, so that no sheet is released. */
function notChecked(rule: 'internal-error' | 'too-many-ways', source: Source, message: Said): Diagnostic {
  return { rule, severity: 'error', ...stated({ message }), source };
}

/** A part of the checker threw. @param what the part, as the subject of the sentence */
export function internalError(what: Said, source: Source, error: unknown): Diagnostic {
  const words = error instanceof Error ? error.message : String(error);
  return notChecked(
    'internal-error',
    source,
    say`This is a defect of Handtight, not of your text: ${what} stopped with “${words.length > 120 ? say`${words.slice(0, 119)}…` : words}”, and what it looks for is not checked here. Everything else is. Please report it, with this file.`,
  );
}

export function isDefect({ rule }: Diagnostic): boolean {
  return rule === 'internal-error';
}

export function isNotChecked(one: Diagnostic): boolean {
  return isDefect(one) || one.rule === 'too-many-ways';
}

/** There are more paths through a procedure than are followed. @param most how many steps are visited, over all paths */
export function tooManyWays(name: string, source: Source, most: number): Diagnostic {
  return notChecked(
    'too-many-ways',
    source,
    say`There are too many paths through ${name}: every test can send the unit to every repair, and after ${most} steps some are still left. So the order of its steps is not checked, and no sheet of it is released. Give each test only the repairs that help it, or split the procedure in two.`,
  );
}

/** Runs something; an exception becomes a finding, and the result null. */
export function attempt<T>(what: Said, source: Source, diagnostics: Diagnostic[], work: () => T): T | null {
  try {
    return work();
  } catch (error) {
    diagnostics.push(internalError(what, source, error));
    return null;
  }
}
