import type { Words } from '../../i18n/index.ts';
import { type Dangerous, dangerKinds } from '../../model/danger.ts';
import type { Step } from '../../model/procedure.ts';
import { namedIn } from '../../model/steps.ts';
import { verbsThat } from '../../syntax/verbs/index.ts';
import type { Fact } from '../model.ts';
import type { PrintContext } from '../print-context.ts';

type DangerLabel = keyof Words['facts']['dangers'];

/** The figures of what can hurt: `Hot 120 °C`. */
export function dangerFigures(words: Words, { dangers }: Dangerous): Fact[] {
  return dangers.flatMap(({ danger, figure }) =>
    figure === null || !(danger in dangerKinds)
      ? []
      : [{ label: words.facts.dangers[danger as DangerLabel], text: words.quantity(figure) }],
  );
}

/** Verbs at which what is heavy is taken up or set down. */
const lifts: ReadonlySet<string> = new Set(verbsThat('lifts'));

/** The figures of what can hurt at a step: its own, those of the parts that it handles, and what it lifts weighs. */
export function dangerFacts({ words, procedure }: PrintContext, step: Step): Fact[] {
  const parts = procedure.family.parts.filter(({ name }) => namedIn(step).some((object) => object.name === name));
  const facts = [
    ...dangerFigures(words, step),
    ...parts.flatMap((part) => [
      ...dangerFigures(words, part),
      ...(part.weight === null || !lifts.has(step.verb)
        ? []
        : [{ label: words.facts.dangers.heavy, text: words.quantity(part.weight) }]),
    ]),
  ];
  return [...new Map(facts.map((fact) => [`${fact.label} ${fact.text}`, fact])).values()];
}
