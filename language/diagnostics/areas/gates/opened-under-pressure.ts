import type { Departure } from '../../../analysis/flow-analysis.ts';
import { flag, place } from '../../../analysis/locations.ts';
import { partsWords, stationWords } from '../../../analysis/prose.ts';
import type { AbstractState } from '../../../analysis/state.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import type { Statement } from '../../../model/diagnostic.ts';
import type { Step } from '../../../model/procedure.ts';
import type { Source } from '../../../model/source.ts';
import type { Verb } from '../../../model/verbs.ts';
import { say } from '../../../say/say.ts';
import { verbsThat } from '../../../syntax/verbs/index.ts';
import { stepBefore } from '../../edits.ts';
import { on, type Rule } from '../../rule.ts';

const opening: readonly Verb[] = verbsThat('opens');
const tightening: readonly Verb[] = verbsThat('tightens');

/** Something that holds pressure is slackened, taken off, tightened or disconnected while it may be under pressure. */
export const openedUnderPressure: Rule<{ source: Source }> = {
  code: 'opened-under-pressure',
  severity: 'error',
  since: '0.1.0',
  unsafe: true,
  title: 'The unit is opened, tightened or disconnected while it may be under pressure.',
  flow: ({ graph, layout, relations }, report) => {
    const { procedure } = graph;
    /** A lock nut on the outside, or a lever, holds no pressure: it may be turned with the pump running. */
    const holdsPressure = (part: string) =>
      relations.loaded(part) || relations.ports(part).length > 0 || relations.closedBy(part).length > 0;
    const worksOn = (step: Step, before: AbstractState) =>
      (opening.includes(step.verb) &&
        step.objects.some(({ name }) => before.may(before.part(name).place, place.in) && holdsPressure(name))) ||
      (tightening.includes(step.verb) && step.objects.some(({ name }) => holdsPressure(name)));
    /** Tightening relieves nothing: what follows in the same block is the same forgotten relieve. */
    const told = new Set<string>();
    const isNew = (state: AbstractState, path: number, block: string) => {
      const slip = `${path}:${state.since(layout.unit.pressure)}:${block}`;
      if (told.has(slip)) return false;
      told.add(slip);
      return true;
    };
    const left = ({ last, block, state, path }: Departure, said: Statement) => {
      if (!state.may(layout.unit.pressure, flag.yes) || !isNew(state, path.id, block.name)) return;
      const since = state.since(layout.unit.pressure);
      report({
        at: last ?? block.source,
        path,
        since,
        rootCause: `pressure:${last === null ? since : writtenAt(last)}`,
        ...said,
      });
    };
    return {
      looksAround: true,
      step: on([...opening, ...tightening, 'disconnect'], ({ step, block, before, path }) => {
        if (step.verb !== 'disconnect' && !worksOn(step, before)) return;
        if (!before.may(layout.unit.pressure, flag.yes) || !isNew(before, path.id, block.name)) return;
        const names = step.objects.map(({ name }) => name);
        const tightened = tightening.includes(step.verb)
          ? say`the ${partsWords(procedure, names)} ${names.length > 1 ? say`are` : say`is`} ${step.verb === 'fit' ? say`fitted` : say`tightened`}`
          : null;
        report({
          at: step,
          path,
          since: before.since(layout.unit.pressure),
          rootCause: `pressure:${writtenAt(step)}`,
          message: say`The unit may still be under pressure when ${tightened ?? say`this is opened`}.`,
          why: say`fluid at test pressure goes through skin${tightened === null ? '' : say`, and a joint that is turned under pressure can let go`}.`,
          help: say`Write “relieve” before this step, and check that the gauge reads zero.`,
          data: step.call === null ? { source: step.source } : undefined,
        });
      }),
      leave(leaving) {
        const words = stationWords(procedure, leaving.block.station);
        left(leaving, {
          message: say`The unit leaves ${words} while it may be under pressure.`,
          why: say`the next person opens it without knowing, and fluid at test pressure goes through skin.`,
          help: say`Write “relieve” at the end of this stage.`,
        });
      },
      end(ending) {
        left(ending, {
          message: say`The procedure ends with the unit under pressure.`,
          why: say`the next person opens it without knowing, and fluid at test pressure goes through skin.`,
          help: say`Write “relieve” at the end.`,
        });
      },
    };
  },
  fix({ source }) {
    return { title: say`Relieve the pressure first`, safe: true, edits: [stepBefore(source, 'relieve')] };
  },
};
