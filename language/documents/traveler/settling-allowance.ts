import type { Part } from '../../model/family.ts';
import type { Repair, Stage, Step, StepOf } from '../../model/procedure.ts';
import { namedIn } from '../../model/steps.ts';
import { settlingOf, springsOf } from '../../analysis/settling-allowance.ts';
import { byNumber, withNumbers } from './by-number.ts';
import type { Fact } from './model.ts';
import { baseTitle } from './names.ts';
import type { Setting } from './print-context.ts';

/**
 * `New spring: set 4 bar higher, it settles`, where a shim is chosen under a spring that was renewed earlier in the same
 * block and the spec of the reading says what a new one loses; one for each part number that differs.
 */
export function settlingFacts(
  { procedure, numbers, words }: Setting,
  step: StepOf<'choose'>,
  place: Stage | Repair,
): Fact[] {
  const { choose } = step;
  if (choose === null) return [];
  const earlier = place.steps.slice(
    0,
    place.steps.findIndex(({ key }) => key === step.key),
  );
  const facts = byNumber({ numbers }, (number): Fact | null => {
    const settling = settlingOf(procedure, choose, number);
    const spring = springsOf(procedure, step).find((part) => earlier.some((one) => isRenewed(part, one, number)));
    if (settling === null || spring === undefined) return null;
    return {
      label: words.facts.newPart({ part: words.inSentence(baseTitle(spring)) }),
      text: words.facts.settles({ amount: words.quantity(settling) }),
    };
  });
  return facts.map(({ told, whose }) => ({ ...told, text: withNumbers({ told: told.text, whose }) }));
}

/** By the step itself, or because it is fitted and always renewed. */
function isRenewed(part: Part, step: Step, number: string | null): boolean {
  const { verb, only } = step;
  if (only !== null && number !== null && !only.includes(number)) return false;
  if (verb !== 'renew' && !(verb === 'fit' && part.renewed)) return false;
  return namedIn(step).some(({ kind, name }) => kind === 'part' && name === part.name);
}
