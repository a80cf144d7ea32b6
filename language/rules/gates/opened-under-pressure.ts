import { flag, place } from '../../replay/cells.ts';
import type { Departure } from '../../replay/replay.ts';
import type { Rule } from '../rule.ts';
import { stationWords } from '../words.ts';

/** Something is slackened, taken off or disconnected while the unit may be under pressure. */
export const openedUnderPressure: Rule = {
  code: 'opened-under-pressure',
  severity: 'error',
  unsafe: true,
  title: 'The unit is opened or disconnected while it may be under pressure.',
  replay: ({ program, layout, relations }, report) => {
    const left = ({ last, block, state, way }: Departure, message: string) => {
      const since = state.since[layout.unit.pressure];
      if (!state.may(layout.unit.pressure, flag.yes)) return;
      report({ at: last ?? block.source, way, since, cause: `pressure:${since}`, message });
    };
    return {
      step({ step, before, way }) {
        const opens =
          step.verb === 'disconnect' ||
          (['slacken', 'remove', 'discard', 'back-off', 'renew'].includes(step.verb) &&
            step.objects.some(
              (object) =>
                before.may(before.part(object.name).place, place.in) &&
                (layout.joints.has(object.name) ||
                  relations.closedBy(object.name).length > 0 ||
                  layout.adjusters.has(object.name)),
            ));
        if (!opens || !before.may(layout.unit.pressure, flag.yes)) return;
        const since = before.since[layout.unit.pressure];
        report({
          at: step,
          way,
          since,
          cause: `pressure:${step.number}`,
          message:
            'The unit may still be under pressure when this is opened: fluid at test pressure goes through skin. Write “relieve” before it, and see the gauge at zero.',
          data: step.call === null ? { source: step.source } : undefined,
        });
      },
      leave(leaving) {
        const words = stationWords(program.procedure, leaving.block.station);
        left(
          leaving,
          `The unit leaves ${words} while it may be under pressure. Write “relieve” at the end of this stage.`,
        );
      },
      end(ending) {
        left(ending, 'The procedure ends with the unit under pressure. Write relieve.');
      },
    };
  },
  fix(data) {
    const { source } = data as { source: import('../../model/source.ts').Source };
    const at = { file: source.file, range: { start: source.range.start, end: source.range.start } };
    return { title: 'Relieve the pressure first', edits: [{ source: at, text: 'relieve    ' }] };
  },
};
