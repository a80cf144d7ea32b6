/** What is known of the unit and its parts at a step, in words. */
import { cautionsByStep } from '../../analysis/cautions/index.ts';
import { allSteps } from '../../analysis/locations.ts';
import type { StepStates } from '../../analysis/step-states.ts';
import type { Part, Procedure } from '../../model/index.ts';
import type { Step } from '../../model/procedure.ts';
import { formatQuantity } from '../../quantities/index.ts';
import { type Filling, joined, propertyTerm, say, type Tell, term } from '../../say/say.ts';
import type { StateAt } from '../state-at.ts';
import { markdownText } from './markdown.ts';

/** What a family declares about a part. */
export function traitsText(
  {
    locatedBy,
    renewed,
    chosenFrom,
    matchedTo,
    heldIn,
    marks,
    moves,
    suppliedLoose,
    bindsOver,
    material,
    weight,
    quantity,
  }: Part,
  tell: Tell,
): string | null {
  const traits: Filling[] = [
    ...(quantity === 1 ? [] : [say`${quantity} per unit`]),
    ...(renewed ? [say`always renewed`] : []),
    ...(locatedBy === null ? [] : [say`located by ${locatedBy}`]),
    ...(chosenFrom === null ? [] : [say`chosen from ${chosenFrom}`]),
    ...(matchedTo.length === 0 ? [] : [say`matched to ${matchedTo.join(', ')}`]),
    ...(heldIn === null ? [] : [say`held in ${heldIn}`]),
    ...(marks === null ? [] : [say`marks: ${marks}`]),
    ...(moves === null ? [] : [moves === 'slides' ? say`must slide` : say`must turn freely`]),
    ...(suppliedLoose ? [say`supplied loose`] : []),
    ...(bindsOver === null ? [] : [say`its coils bind over ${bindsOver.number} ${bindsOver.unit} of shim`]),
    ...(material === null ? [] : [say`of ${material}`]),
    ...(weight === null ? [] : [say`weighs ${formatQuantity(weight)}`]),
  ];
  return traits.length === 0 ? null : markdownText(`${tell(joined(traits, '; '))}.`);
}

/** Properties that say where a thing is and how, in the order in which they are said. */
const said: ReadonlySet<string> = new Set(['place', 'is', 'surface', 'wet', 'age', 'setting', 'guard', 'stays with']);

/** Before a step: where a part, face or port is and how, and since which step. Null: nothing is known of it. */
export function whereMarkdown({ procedure, states, state }: StateAt, name: string, tell: Tell): string | null {
  const steps = allSteps(procedure);
  const parts = states.layout.locations.flatMap((location, index) => {
    const [kind, of] = location.of.split(' ');
    if (of !== name || !said.has(location.property) || kind === 'gate' || kind === 'reading') return [];
    if (location.property === 'stays with' && state.get(index) === 1) return [];
    const words = states.layout.saidOf(index, state.get(index));
    const since = steps[states.since(state, index)];
    const what = location.property === 'stays with' ? say`with ${words}` : words;
    return [since === undefined ? what : say`${what} since step ${since.number}`];
  });
  return parts.length === 0 ? null : markdownText(tell(say`Here: ${joined(parts, '; ')}.`));
}

/** `part shim` without its kind. */
function nameOf(of: string): string {
  return of.replace(/^\w+ /u, '');
}

/** What a location is of: a part or a face by its name, others with what they are. */
function subject(of: string): Filling {
  const [kind] = of.split(' ');
  if (kind === of) return term(of);
  return kind === 'part' || kind === 'face' ? nameOf(of) : joined([term(kind!), nameOf(of)]);
}

/** Most changes of one step that are said. */
const mostChanges = 12;

/** What a step changes, before and after. Null: nothing that is followed. */
export function changesMarkdown(procedure: Procedure, states: StepStates, step: Step, tell: Tell): string | null {
  const around = states.states[allSteps(procedure).indexOf(step)];
  if (around == null) return null;
  const { before, after } = around;
  const { layout } = states;
  const changes = layout.locations.flatMap(({ of, property }, index) => {
    const [one, other] = [before.get(index), after.get(index)];
    if (one === other || property === 'kept') return [];
    const words = (value: number) => layout.saidOf(index, value);
    const isPlain = property === 'is' || property === 'place' || property === 'surface';
    const what = isPlain ? nameOf(of) : joined([subject(of), propertyTerm(property)], ', ');
    return [`- ${markdownText(tell(say`${what}: ${words(one)} → ${words(other)}`))}`];
  });
  if (changes.length === 0) return null;
  const more = changes.length - mostChanges;
  return [...changes.slice(0, mostChanges), ...(more > 0 ? [`- ${tell(say`and ${more} more`)}`] : [])].join('\n');
}

/** The usual cautions that a step calls for, each with what it follows from. Null: none. */
export function cautionsMarkdown(procedure: Procedure, step: Step, tell: Tell): string | null {
  const lines = cautionsByStep(procedure)(step).map(
    ({ topic, word, because }) => `- **${word}** ${topic}: ${markdownText(tell(because))}`,
  );
  return lines.length === 0 ? null : lines.join('\n');
}
