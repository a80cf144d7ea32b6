/** What is known of the unit and its parts at a step, in words. */
import { allSteps } from '../../analysis/locations.ts';
import type { AbstractState } from '../../analysis/state.ts';
import type { StepStates } from '../../analysis/step-states.ts';
import type { Part, Procedure } from '../../model/index.ts';
import type { Step } from '../../model/procedure.ts';
import { markdownText } from './markdown.ts';

/** What a family declares about a part. */
export function traitsText({
  locatedBy,
  renewed,
  chosenFrom,
  matchedTo,
  heldIn,
  marks,
  moves,
  suppliedLoose,
  bindsOver,
  quantity,
}: Part): string | null {
  const traits = [
    ...(quantity === 1 ? [] : [`${quantity} per unit`]),
    ...(renewed ? ['always renewed'] : []),
    ...(locatedBy === null ? [] : [`located by ${locatedBy}`]),
    ...(chosenFrom === null ? [] : [`chosen from ${chosenFrom}`]),
    ...(matchedTo.length === 0 ? [] : [`matched to ${matchedTo.join(', ')}`]),
    ...(heldIn === null ? [] : [`held in ${heldIn}`]),
    ...(marks === null ? [] : [`marks: ${marks}`]),
    ...(moves === null ? [] : [moves === 'slides' ? 'must slide' : 'must turn freely']),
    ...(suppliedLoose ? ['supplied loose'] : []),
    ...(bindsOver === null ? [] : [`its coils bind over ${bindsOver.number} ${bindsOver.unit} of shim`]),
  ];
  return traits.length === 0 ? null : markdownText(`${traits.join('; ')}.`);
}

/** Properties that say where a thing is and how, in the order in which they are said. */
const said: ReadonlySet<string> = new Set(['place', 'is', 'surface', 'wet', 'age', 'setting', 'guard', 'stays with']);

/** Before a step: where a part, face or port is and how, and since which step. Null: nothing is known of it. */
export function whereMarkdown(
  procedure: Procedure,
  states: StepStates,
  state: AbstractState,
  name: string,
): string | null {
  const steps = allSteps(procedure);
  const parts = states.layout.locations.flatMap((location, index) => {
    const [kind, of] = location.of.split(' ');
    if (of !== name || !said.has(location.property) || kind === 'gate' || kind === 'reading') return [];
    if (location.property === 'stays with' && state.get(index) === 1) return [];
    const words = states.layout.wordsOf(index, state.get(index)).join(' or ');
    const at = states.since(state, index);
    const since = steps[at] === undefined ? '' : ` since step ${steps[at].number}`;
    const what = location.property === 'stays with' ? `with ${words}` : words;
    return [`${what}${since}`];
  });
  return parts.length === 0 ? null : `Here: ${markdownText(parts.join('; '))}.`;
}

/** Most changes of one step that are said. */
const mostChanges = 12;

/** What a step changes, before and after. Null: nothing that is followed. */
export function changesMarkdown(procedure: Procedure, states: StepStates, step: Step): string | null {
  const around = states.states[allSteps(procedure).indexOf(step)];
  if (around == null) return null;
  const { before, after } = around;
  const { layout } = states;
  const changes = layout.locations.flatMap(({ of, property }, index) => {
    const [one, other] = [before.get(index), after.get(index)];
    if (one === other || property === 'kept') return [];
    const words = (value: number) => layout.wordsOf(index, value).join(' or ');
    const what =
      property === 'is' || property === 'place' || property === 'surface'
        ? of.replace(/^\w+ /u, '')
        : `${of.replace(/^(?:part|face) /u, '')}, ${property}`;
    return [`- ${markdownText(`${what}: ${words(one)} → ${words(other)}`)}`];
  });
  if (changes.length === 0) return null;
  const more = changes.length - mostChanges;
  return [...changes.slice(0, mostChanges), ...(more > 0 ? [`- and ${more} more`] : [])].join('\n');
}
