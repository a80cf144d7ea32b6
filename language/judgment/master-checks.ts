import type { Words } from '../i18n/index.ts';
import { limitWords } from '../i18n/limit-words.ts';
import type { Job, ReadingResult } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import { testOf } from '../model/reading-id.ts';
import type { Master } from '../model/shop.ts';
import { readingOf } from '../model/steps.ts';
import { compare, window } from '../quantities/index.ts';
import { insideOf } from './inside.ts';
import type { LimitVerdict } from './judged.ts';
import { dayOf, uncalibrated } from './on-the-day.ts';
import { type Problem, problem } from './problem.ts';

/** What a master of the shop read, beside what it has to read. */
export interface MasterCheck {
  readonly master: Master;
  readonly reading: ReadingResult;
  /** Null: the shop gives no limit. */
  readonly passed: boolean | null;
}

/**
 * Checks of the testers, and what is wrong with them. Where the shop says what a master reads, and the procedure reads it, there is
 * one within that for each day on which a unit was tested at its station.
 */
export function masterChecks(
  procedure: Procedure,
  { checks, source }: Pick<Job, 'checks' | 'source'>,
  units: readonly LimitVerdict[],
): { readonly checks: MasterCheck[]; readonly problems: Problem[] } {
  const { masters, assets } = procedure.shop;
  const judged = checks.flatMap((reading): MasterCheck[] => {
    const master = masters.find(({ name }) => name === reading.name);
    if (master === undefined) return [];
    const inside = master.limit === null ? 'open' : insideOf(window(master.limit), reading.value, compare);
    return [{ master, reading, passed: inside === 'open' ? null : inside === 'yes' }];
  });
  const problems = judged.flatMap(({ master, reading, passed }): Problem[] => {
    const { value, tool, done, source: at } = reading;
    const name = master.title;
    const shown = (w: Words) => ({ name, reading: w.quantity(value) });
    const asset = assets.find((one) => one.name === tool);
    return [
      ...(passed === false
        ? [
            problem('result-fails', at, (w) =>
              w.certificate.missing.checkOutside({ ...shown(w), limit: limitWords(w, master.limit!, value) }),
            ),
          ]
        : []),
      ...(tool === null ? [problem('tool-not-written-down', at, (w) => w.certificate.missing.noTool(shown(w)))] : []),
      ...(done?.by == null || done.on === null
        ? [problem('nobody-answers', at, (w) => w.certificate.missing.checkUnsigned(shown(w)))]
        : []),
      ...(asset === undefined
        ? []
        : uncalibrated(asset, done?.on ?? null).map((say) => problem('tool-not-in-date', at, say))),
    ];
  });
  const missed = masters.flatMap((master): Problem[] => {
    const stages = procedure.stages.filter(({ station }) => station === master.station);
    const steps = stages.flatMap((stage) => stage.steps);
    if (master.limit === null || !steps.some((step) => readingOf(step) === master.name)) return [];
    const tests = new Set(steps.flatMap((step) => (step.verb === 'test' ? [step.gate.test] : [])));
    const days = units.flatMap(({ unit, outcomes }) =>
      outcomes.flatMap(({ asked, reading }) =>
        reading !== null && tests.has(testOf(asked.name)) ? (dayOf(unit, reading) ?? []) : [],
      ),
    );
    const checked = new Set(checks.filter(({ name }) => name === master.name).map(({ done }) => done?.on));
    return [...new Set(days)]
      .filter((day) => !checked.has(day))
      .sort()
      .map((on) =>
        problem('not-proven', source, (w) =>
          w.certificate.missing.notChecked({ name: master.title, on, limit: limitWords(w, master.limit!, null) }),
        ),
      );
  });
  return { checks: judged, problems: [...problems, ...missed] };
}
