import type { PathContext } from '../../../analysis/flow-analysis.ts';
import { flag, place, port } from '../../../analysis/locations.ts';
import { listed, stationWords } from '../../../analysis/prose.ts';
import type { AbstractState } from '../../../analysis/state.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import type { Step } from '../../../model/procedure.ts';
import type { Source } from '../../../model/source.ts';
import { type Said, say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingAfter, type StepFix } from '../../step-fixes.ts';

/** The tester's line is still on when the unit leaves the station, is capped or opened, or is done. */
export const leftConnected: Rule<StepFix> = {
  code: 'left-connected',
  severity: 'error',
  since: '0.1.0',
  unsafe: true,
  title: 'The tester line is still connected when the unit leaves, is capped, is opened or is finished.',
  flow: ({ graph, layout, relations }, report) => {
    const { procedure } = graph;
    /** The line stays on after the report: what follows on the same path is the same mistake. */
    const told = new Set<string>();
    const tell = (
      at: Step | Source,
      state: AbstractState,
      path: PathContext,
      names: readonly string[],
      when: Said,
      isDone = false,
    ) => {
      const on = names.filter((name) => state.may(layout.ports.get(name)!, port.connected));
      const [first] = on;
      if (first === undefined) return;
      const since = state.since(layout.ports.get(first)!);
      const slip = `${path.id}:${first}:${since}`;
      if (told.has(slip)) return;
      told.add(slip);
      report({
        at,
        path,
        since,
        rootCause: `line:${first}:${'verb' in at ? writtenAt(at) : ''}`,
        message: say`The tester line is still connected to ${listed(on)} when ${when}.`,
        why: say`it is pulled or bent with the unit, and its fitting leaks at the next test.`,
        help: say`Relieve the pressure, then write “disconnect ${on.join(', ')}” before this.`,
        data:
          isDone && 'verb' in at && state.must(layout.unit.pressure, flag.no)
            ? missingAfter(at, `disconnect ${on.join(', ')}`)
            : undefined,
      });
    };
    const all = procedure.family.ports.map(({ name }) => name);
    return {
      looksAround: true,
      step: on(['cap', 'remove', 'discard', 'renew'], ({ step, before, path }) => {
        if (step.verb === 'cap')
          tell(
            step,
            before,
            path,
            step.objects.map(({ name }) => name),
            say`it is capped`,
          );
        const opens = step.verb !== 'cap';
        const loaded =
          opens &&
          step.objects.some(
            ({ name }) =>
              (relations.loaded(name) || relations.closedBy(name).length > 0) &&
              before.may(before.part(name).place, place.in),
          );
        if (loaded) tell(step, before, path, all, say`the unit is opened`);
      }),
      leave({ last, block, state, path }) {
        tell(
          last ?? block.source,
          state,
          path,
          all,
          say`the unit leaves ${stationWords(procedure, block.station)}`,
          true,
        );
      },
      end({ state, path, last, block }) {
        tell(last ?? block.source, state, path, all, say`the procedure ends`);
      },
    };
  },
  fix: fixStep,
};
