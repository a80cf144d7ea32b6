import type { Unit } from '../../model/job.ts';
import { capital } from '../../model/titles.ts';
import { buildRecommendations } from '../../recommendations/advised.ts';
import { matchedSets } from '../../recommendations/set-shims.ts';
import type { TableBlock } from '../model.ts';
import { specTitle } from '../names.ts';
import { type PrintContext, setSize, stageSteps } from '../print-context.ts';

/**
 * A page for the set, where units are compared: each one's reading, the shim that is in and the one that is to go in, to
 * be written in or taken from the job, and what it reads then. Null: nothing is compared.
 */
export function setPage(setting: PrintContext): TableBlock | null {
  const { procedure, words, options, units, columns } = setting;
  const compared = [
    ...new Set(stageSteps(setting).flatMap(({ step }) => (step.verb === 'across' ? [step.gate.test] : []))),
  ];
  if (compared.length === 0 || setSize(setting) < 2) return null;
  const job = options.job;
  const advised = job === null ? [] : buildRecommendations(job, words);
  const matched = job === null ? [] : matchedSets(job).flatMap(({ choices }) => choices ?? []);
  const chooses = [...procedure.stages, ...procedure.repairs].some(({ steps }) =>
    steps.some((step) => step.verb === 'choose' && step.choose !== null && compared.includes(step.choose.test)),
  );
  const { place, number, read, now, fit, after } = words.set;
  const readingOf = (unit: Unit | undefined, test: string) => {
    const found = advised.find((one) => one.unit === unit && one.test === test);
    return found === undefined ? '' : words.quantity(found.reading.value);
  };
  const filled = (text: string) => ({ text, fill: text === '', strong: true });
  return {
    kind: 'table',
    ownPage: true,
    title: words.set.title,
    columns: [
      { head: place, share: 1.6 },
      { head: number, share: 2 },
      ...compared.map((test) => ({ head: read({ name: capital(specTitle(procedure, test)) }), share: 3 })),
      ...(chooses
        ? [
            { head: now, share: 2 },
            { head: fit, share: 2 },
            { head: after, share: 2 },
          ]
        : []),
    ],
    rows: [
      ...columns.map((column, index) => {
        const unit = units[index];
        const match = matched.find(({ stand }) => stand.unit === unit);
        return [
          { text: column.place, strong: true },
          filled(unit?.numberText ?? ''),
          ...compared.map((test) => filled(readingOf(unit, test))),
          ...(chooses
            ? [
                filled(match === undefined ? '' : words.quantity(match.stand.now)),
                filled(match === undefined ? '' : (match.shims?.map(words.quantity).join(' + ') ?? words.set.stays)),
                filled(''),
              ]
            : []),
        ];
      }),
    ],
  };
}
