import type { Part } from '../model/family.ts';
import type { Repair, Stage, Step } from '../model/procedure.ts';
import { settlingOf, springsOf } from '../rules/settling.ts';
import type { Fact } from './model.ts';
import { baseTitle } from './names.ts';
import type { Setting } from './setting.ts';

/**
 * `New spring: set 4 bar higher, it settles`, where a shim is chosen under a spring that was renewed earlier in the same
 * block and the spec of the reading says what a new one loses; one for each part number that differs.
 */
export function settlingFacts({ procedure, numbers, words }: Setting, step: Step, place: Stage | Repair): Fact[] {
  const earlier = place.steps.slice(
    0,
    place.steps.findIndex(({ key }) => key === step.key),
  );
  const several = numbers.length === 0 ? [null] : numbers.map(({ name }) => name);
  const byText = new Map<string, { fact: Fact; numbers: string[] }>();
  for (const number of several) {
    const settling = settlingOf(procedure, step.choose!, number);
    const spring = springsOf(procedure, step).find((part) => earlier.some((one) => isRenewed(part, one, number)));
    if (settling === null || spring === undefined) continue;
    const label = words.facts.newPart({ part: words.inSentence(baseTitle(spring)) });
    const text = words.facts.settles({ amount: words.quantity(settling) });
    const known = byText.get(`${label} ${text}`);
    if (known === undefined) byText.set(`${label} ${text}`, { fact: { label, text }, numbers: [number ?? ''] });
    else known.numbers.push(number ?? '');
  }
  return [...byText.values()].map(({ fact, numbers: of }) =>
    of.length === several.length ? fact : { ...fact, text: `${of.join(', ')}: ${fact.text}` },
  );
}

/** By the step itself, or because it is fitted and always renewed. */
function isRenewed(part: Part, { verb, objects, withObjects, only }: Step, number: string | null): boolean {
  if (only !== null && number !== null && !only.includes(number)) return false;
  if (verb !== 'renew' && !(verb === 'fit' && part.renewed)) return false;
  return [...objects, ...withObjects].some(({ kind, name }) => kind === 'part' && name === part.name);
}
