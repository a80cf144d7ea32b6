import { ceilingText } from '../i18n/limit-words.ts';
import { own } from '../model/steps.ts';
import { holdWords } from './figures/hold-words.ts';
import { type LimitFigure, lineOf } from './figures/limit-figure.ts';
import type { StepFigures } from './figures/step-figures.ts';
import type { Fact } from './model.ts';
import type { PrintContext } from './print-context.ts';
import { conditionsOf } from './tools.ts';

/** At what a test is done: held pressure, from and to, time, speed, and the author's conditions. */
export function testFacts(setting: PrintContext, { step, conditions, ceiling, figuresAt }: StepFigures): Fact[] {
  const { words } = setting;
  const label = words.facts;
  const said = own(step, 'test')?.hold;
  const { hold, from, to, forTime, at } = conditions;
  const fact = (name: string, figure: LimitFigure | null) =>
    figure === null ? [] : [{ label: name, text: lineOf(figure) }];
  return [
    ...(said == null || hold === null ? [] : [{ label: label.hold, text: holdWords(setting, said, hold) }]),
    ...fact(label.from, from),
    ...fact(label.to, to),
    ...fact(label.forTime, forTime),
    ...(at === null && figuresAt.length === 0
      ? []
      : [{ label: label.at, text: [...(at === null ? [] : [lineOf(at)]), ...figuresAt].join(', ') }]),
    ...(ceiling === null ? [] : [{ label: label.never, text: ceilingText(words, ceiling.most, ceiling.unit) }]),
    ...conditionsOf(words, step).map((text) => ({ label: label.conditions, text })),
  ];
}
