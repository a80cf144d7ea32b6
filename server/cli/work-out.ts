import { calculations, usage, workOut } from '../../language/calculator/work-out.ts';
import { nearest } from '../../language/syntax/nearest.ts';
import { say } from './say.ts';
import { UsageError } from './usage-error.ts';

/** Prints a calculation with its way; without figures what it asks for; without a name the list. */
export function workOutCommand(name: string | undefined, typed: readonly string[]): number {
  if (name === undefined) {
    const width = Math.max(...calculations.map((one) => one.name.length));
    for (const one of calculations) say(`${one.name.padEnd(width)}  ${one.title}\n`);
    return 0;
  }
  const calculation = calculations.find((one) => one.name === name);
  if (calculation === undefined) {
    const near = nearest(
      name,
      calculations.map((one) => one.name),
    );
    throw new UsageError(
      `No calculation is called ${name}. ${near.length > 0 ? `Did you mean ${near.join(' or ')}?` : 'To list them all: npx handtight work-out'}`,
    );
  }
  if (typed.length === 0) {
    say(`${calculation.title}\n${usage(calculation)}\n`);
    return 0;
  }
  const made = workOut(calculation, typed);
  if ('problem' in made) throw new UsageError(made.problem);
  say(made.text);
  return 0;
}
