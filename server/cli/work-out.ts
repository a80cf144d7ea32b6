import { calculations, usage, workOut } from '../../language/calculator/work-out.ts';
import { nearest } from '../../language/syntax/nearest.ts';
import { worded, words } from './messages.ts';
import { meant } from './near.ts';
import { say } from './say.ts';
import { UsageError } from './usage-error.ts';

/** Prints a calculation with its way; without figures what it asks for; without a name the list. */
export function workOutCommand(name: string | undefined, typed: readonly string[]): number {
  if (name === undefined) {
    const width = Math.max(...calculations.map((one) => one.name.length));
    for (const one of calculations) say(`${one.name.padEnd(width)}  ${words(one.title)}\n`);
    return 0;
  }
  say(calculationAnswer(name, typed, worded`To list them all: npx handtight work-out`));
  return 0;
}

/**
 * A calculation with its way, or without figures what it asks for. Throws a UsageError.
 * @param otherwise what to say where no name is near
 */
export function calculationAnswer(name: string, typed: readonly string[], otherwise: string): string {
  const names = calculations.map((one) => one.name);
  const calculation = calculations.find((one) => one.name === name);
  if (calculation === undefined) {
    const near = nearest(name, names);
    throw new UsageError(worded`No calculation is called ${name}. ${meant(near, otherwise)}`);
  }
  if (typed.length === 0) return `${words(calculation.title)}\n${words(usage(calculation))}\n`;
  const made = workOut(calculation, typed, words);
  if ('problem' in made) throw new UsageError(words(made.problem));
  return made.text;
}
