import { isTestOf, own } from '../../model/steps.ts';
import { capital, titleOf } from '../../model/titles.ts';
import { specTitle } from '../names.ts';
import { lineOf, missing, wordsCell } from './cells.ts';
import { torque } from './joints.ts';
import { type Layout, merged, specOf, stated } from './layout.ts';
import type { SpecItem } from './model.ts';
import { readings } from './tests.ts';

export function adjusters(layout: Layout): SpecItem[] {
  const { words } = layout.setting;
  const { specs } = words;
  const { family } = layout.procedure;
  return family.adjusters.map((adjuster): SpecItem => {
    const { part, sets, rate, lockedBy, source } = adjuster;
    const reading = words.inSentence(specTitle(layout.procedure, sets));
    const what = specs.what.sets({ reading });
    const setting = layout.done.filter(
      ({ step }) => step.verb === 'set' && (step.reading === sets || step.objects.some(({ name }) => name === part)),
    );
    const tests = layout.done.filter(({ step }) => isTestOf(step, sets));
    const by = setting.length > 0 ? setting : tests;
    const limits = merged(
      by.flatMap((done) => {
        const use = own(done.step, 'limit') ?? specOf(layout, sets, source);
        return use === null ? [] : readings(layout, done, use, what, ['rebuilt', 'whenNew']);
      }),
    );
    const locks =
      lockedBy === null
        ? []
        : layout.done.filter(
            ({ step }) =>
              (step.verb === 'lock' || step.verb === 'torque') &&
              step.objects.some(({ name }) => name === lockedBy || (step.verb === 'lock' && name === part)),
          );
    const lockTorque = merged(locks.flatMap((done) => torque(layout, done, specs.what.lockTorque)));
    const rateCell = rate === null ? null : wordsCell(words.quantity(rate), lineOf(source));
    const noLock = wordsCell('', lineOf(source), [missing('value', specs.missing.noTorqueStep)]);
    const noLimit = wordsCell('', lineOf(source), [missing('value', specs.missing.limit)]);
    return {
      title: capital(titleOf(family.parts.find(({ name }) => name === part) ?? adjuster)),
      facts: lockedBy === null ? [] : [specs.facts.lockedBy({ part: partTitle(layout, lockedBy) })],
      line: lineOf(source),
      figures: [
        ...(limits.length > 0 ? limits : [stated(layout, what, source, () => noLimit)]),
        ...(rateCell === null ? [] : [stated(layout, specs.what.rate, source, () => rateCell)]),
        ...(lockedBy !== null && lockTorque.length === 0
          ? [stated(layout, specs.what.lockTorque, source, () => noLock)]
          : lockTorque),
      ],
    };
  });
}

function partTitle(layout: Layout, name: string): string {
  return layout.setting.words.inSentence(
    titleOf(layout.procedure.family.parts.find((part) => part.name === name) ?? { name, title: name }),
  );
}
