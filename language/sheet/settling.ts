import type { Part } from '../model/family.ts';
import type { Procedure, Repair, Stage, Step } from '../model/procedure.ts';
import { formatQuantity } from '../quantities/index.ts';
import type { Quantity } from '../quantities/types.ts';
import { restsOn } from '../replay/relations.ts';
import { limitOfReading } from '../rules/shim-choices.ts';
import { specLimits } from './limits.ts';
import type { Fact } from './model.ts';
import { baseTitle, inSentence } from './names.ts';
import type { Setting } from './setting.ts';
import { words } from './words.ts';

/**
 * `New spring: set 4 bar higher, it settles`, where a shim is chosen under a spring that was renewed earlier in the same
 * block and the spec of the reading says what a new one loses; one for each part number that differs.
 */
export function settlingFacts({ procedure, numbers }: Setting, step: Step, place: Stage | Repair): Fact[] {
  const earlier = place.steps.slice(
    0,
    place.steps.findIndex(({ key }) => key === step.key),
  );
  const several = numbers.length === 0 ? [null] : numbers.map(({ name }) => name);
  const byText = new Map<string, { fact: Fact; numbers: string[] }>();
  for (const number of several) {
    const settling = settlingOf(procedure, step, number);
    const spring = springsOf(procedure, step).find((part) => earlier.some((one) => isRenewed(part, one, number)));
    if (settling === null || spring === undefined) continue;
    const label = words.facts.newPart(inSentence(baseTitle(spring)));
    const text = words.facts.settles(formatQuantity(settling));
    const known = byText.get(`${label} ${text}`);
    if (known === undefined) byText.set(`${label} ${text}`, { fact: { label, text }, numbers: [number ?? ''] });
    else known.numbers.push(number ?? '');
  }
  return [...byText.values()].map(({ fact, numbers: of }) =>
    of.length === several.length ? fact : { ...fact, text: `${of.join(', ')}: ${fact.text}` },
  );
}

/** What a new spring loses, by the spec that is aimed at or else that of the reading. Null: nothing, or nobody says. */
function settlingOf(procedure: Procedure, step: Step, number: string | null): Quantity | null {
  const { test, targetSpec } = step.choose!;
  const use = limitOfReading(procedure, test);
  const specs = [targetSpec, use?.form === 'spec' ? use.spec : null];
  const [settling] = specs.flatMap((name) =>
    name === null ? [] : (specLimits(procedure, name, number)?.settling ?? []),
  );
  return settling === undefined || Number(settling.number) === 0 ? null : settling;
}

/**
 * The springs that the chosen shims load: of what lies on a shim or under it those that bind over some shim, or that a
 * spec calls new; where the family and the specs do not tell, any of them.
 */
function springsOf({ family, specs }: Procedure, { objects }: Step): Part[] {
  const shims = family.parts.filter((part) => objects.some(({ kind, name }) => kind === 'part' && name === part.name));
  const beside = family.parts.filter(
    (part) =>
      !shims.includes(part) &&
      (restsOn(part).some((under) => shims.some(({ name }) => name === under)) ||
        // What a shim is in is no spring.
        shims.some(({ on }) => on.includes(part.name))),
  );
  const known = beside.filter(
    ({ name, bindsOver }) => bindsOver !== null || specs.some(({ whenNewPart }) => whenNewPart === name),
  );
  return known.length > 0 ? known : beside;
}

/** By the step itself, or because it is fitted and always renewed. */
function isRenewed(part: Part, { verb, objects, withObjects, only }: Step, number: string | null): boolean {
  if (only !== null && number !== null && !only.includes(number)) return false;
  if (verb !== 'renew' && !(verb === 'fit' && part.renewed)) return false;
  return [...objects, ...withObjects].some(({ kind, name }) => kind === 'part' && name === part.name);
}
