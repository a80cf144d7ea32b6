/** The unit at the cursor, in words: what is off, bare, open, wet, loose and under pressure, and since which step. */
import { allSteps, flag, place, port, wet } from '../analysis/locations.ts';
import { loose, loosened } from '../analysis/loose.ts';
import { bareFaces, portExposed } from '../analysis/openings.ts';
import type { AbstractState } from '../analysis/state.ts';
import type { Procedure, Step } from '../model/procedure.ts';
import { comparePositions } from '../model/ranges.ts';
import type { Position, Source } from '../model/source.ts';
import { isTest } from '../model/steps.ts';
import { type Filling, joined, say, stateTerm } from '../say/say.ts';
import { placeAt } from './completion/place.ts';
import { offsetAt } from './offset.ts';
import type { Snapshot } from './snapshot.ts';
import { type StateAt, stateAt } from './state-at.ts';

/** One thing that may be so. */
export interface StateItem<Text = string> {
  readonly name: Text;
  /** How it is: `off, washed`. */
  readonly words: Text;
  /** The step since which it may be so; null: as received. */
  readonly since: { readonly number: string; readonly source: Source } | null;
  /** The step at the cursor made it so. */
  readonly isNew: boolean;
}

export interface StateGroup<Text = string> {
  readonly kind: 'unit' | 'off' | 'bare' | 'open' | 'wet' | 'loose' | 'tests';
  readonly items: readonly StateItem<Text>[];
}

/** The state after the step at the cursor; where there is none, before what is written there. */
export type StateView<Text = string> =
  | {
      readonly kind: 'state';
      readonly procedure: string;
      /** The step that it is after; null: as the unit comes in. */
      readonly after: string | null;
      readonly groups: readonly StateGroup<Text>[];
    }
  | { readonly kind: 'none'; readonly reason: Text };

export function stateViewAt(snapshot: Snapshot, file: string, position: Position): StateView<Filling> {
  const text = snapshot.textOf(file) ?? '';
  // From the end of the line: a cursor in the indentation is at the step that follows it.
  const line = text.split(/\r\n|\n|\r/u)[position.line] ?? '';
  const before = placeAt(
    text,
    offsetAt(text, { line: position.line, character: Math.max(position.character, line.search(/\S|$/u)) }),
  );
  const [outer] = before.blocks;
  if (before.blocks.some(({ word }) => word === 'sequence'))
    return { kind: 'none', reason: say`A sequence has a state only where it is called.` };
  if (outer?.word !== 'procedure' || before.blocks.length < 2)
    return { kind: 'none', reason: say`Put the cursor in a step of a procedure.` };
  const at = stateAt(snapshot, file, before);
  if (at === null)
    return {
      kind: 'none',
      reason: say`Nothing is known of the unit here: no path leads to this place, or the procedure cannot be followed.`,
    };
  const { states, procedure } = at;
  const steps = allSteps(procedure);
  const here = steps.findLastIndex(({ source }) => holds(source, file, position));
  const after = here < 0 ? null : (states.states[here]?.after ?? null);
  const known = after === null ? at : { ...at, state: after, last: steps[here]! };
  const now = after === null ? -1 : here;
  return {
    kind: 'state',
    procedure: procedure.title,
    after: known.last?.number ?? null,
    groups: groupsOf(known, steps, now).filter(({ items }) => items.length > 0),
  };
}

function holds({ file: own, range }: Source, file: string, position: Position): boolean {
  return own === file && range.start.line <= position.line && comparePositions(position, range.end) <= 0;
}

function groupsOf({ states, state, procedure }: StateAt, steps: readonly Step[], now: number): StateGroup<Filling>[] {
  const { layout } = states;
  const { family } = procedure;
  const laid = { layout, graph: { procedure } };
  const words = (location: number) => layout.saidOf(location, state.get(location));
  const item = (name: Filling, said: Filling, ...locations: number[]): StateItem<Filling> => {
    const since = Math.max(...locations.map((location) => states.since(state, location)));
    const step = steps[since];
    return {
      name,
      words: said,
      since: step === undefined ? null : { number: step.number, source: step.source },
      isNew: since >= 0 && since === now,
    };
  };
  const titleOf = (name: string) => family.parts.find((part) => part.name === name)?.title ?? name;
  const off = family.parts.filter(({ name }) => state.may(state.part(name).place, ~(place.in | place.trial)));
  return [
    { kind: 'unit', items: unitItems(state, layout.unit, item, words) },
    {
      kind: 'off',
      items: off.map(({ name, title }) => {
        const { place: location, where, dirt, age } = state.part(name);
        const with_ = state.get(where) === 1 ? [] : [say`at ${words(where)}`];
        const how = state.must(location, place.gone) ? [] : [...with_, words(dirt), words(age)];
        return item(title, joined([words(location), ...how], ', '), location);
      }),
    },
    {
      kind: 'bare',
      items: bareFaces(laid, state).map(({ face }) =>
        item(
          `${titleOf(face.part)}, ${face.name}`,
          face.finish === null ? say`bare` : stateTerm(face.finish),
          layout.faces.get(face.id)!.guard,
        ),
      ),
    },
    {
      kind: 'open',
      items: family.ports.flatMap((one) => {
        const location = layout.ports.get(one.name)!;
        return portExposed(state, one) && state.may(location, port.open)
          ? [item(one.title, words(location), location)]
          : [];
      }),
    },
    {
      kind: 'wet',
      items: family.parts.flatMap(({ name, title }) => {
        const location = state.part(name).wet;
        return state.must(location, wet.dry) ? [] : [item(title, words(location), location)];
      }),
    },
    {
      kind: 'loose',
      items: loosened(laid, state, loose).map(({ joint: { part } }) => {
        const location = layout.joints.get(part)!;
        return item(titleOf(part), words(location), location);
      }),
    },
    { kind: 'tests', items: testItems(procedure, layout.gates, item, words) },
  ];
}

type Item = (name: Filling, said: Filling, ...locations: number[]) => StateItem<Filling>;

/** What is so of the unit as a whole; what it is not is left out. */
function unitItems(
  state: AbstractState,
  unit: AbstractState['layout']['unit'],
  item: Item,
  words: (location: number) => Filling,
): StateItem<Filling>[] {
  const flags: readonly [number, string][] = [
    [unit.pressure, 'under pressure'],
    [unit.clamped, 'clamped'],
    [unit.primed, 'primed'],
    [unit.tagged, 'tagged'],
    [unit.marked, 'marked'],
    [unit.outside, 'clean outside'],
    [unit.signed, 'signed off'],
  ];
  return [
    ...(state.get(unit.station) === 1 ? [] : [item(stateTerm('station'), words(unit.station), unit.station)]),
    ...flags.flatMap(([location, name]) =>
      state.may(location, flag.yes)
        ? [item(stateTerm(name), state.may(location, flag.no) ? say`on some paths` : '', location)]
        : [],
    ),
  ];
}

function testItems(
  { stages }: Procedure,
  gates: ReadonlyMap<string, number>,
  item: Item,
  words: (location: number) => Filling,
): StateItem<Filling>[] {
  const tests = stages.flatMap(({ steps }) => steps.filter(isTest).map(({ gate }) => gate.id));
  return [...new Set(tests)].flatMap((id) => {
    const location = gates.get(id);
    return location === undefined ? [] : [item(id, words(location), location)];
  });
}
