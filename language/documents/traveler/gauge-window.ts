import { betweenWords } from '../../i18n/limit-words.ts';
import { isAsFound } from '../../model/steps.ts';
import { byNumber, withNumbers } from '../figures/by-number.ts';
import type { HeldFigure, Which } from '../figures/held.ts';
import type { StepFigures } from '../figures/step-figures.ts';
import type { Fact } from '../model.ts';
import type { PrintContext } from '../print-context.ts';

/**
 * What a tool may show where the shop, or the spec, guards its limits: `252 to 256 bar`, one for each part number that
 * differs. None where acceptance is simple: then the limit itself is what is read.
 */
export function gaugeWindows(setting: PrintContext, { step, held }: StepFigures): Fact[] {
  const of = (which: Which, number: string | null) =>
    held.find((one) => one.which === which && (one.number === number || one.number === null));
  const found = (number: string | null) => (isAsFound(step) ? of('inService', number) : undefined);
  const rebuilt = byNumber(setting, (number) => {
    const service = found(number);
    return factOf(setting, service?.figure == null ? of('rebuilt', number) : service);
  });
  // With new parts another limit counts.
  const withNew = isAsFound(step) ? [] : byNumber(setting, (number) => factOf(setting, of('whenNew', number)));
  return [...rebuilt, ...withNew].map(({ told, whose }) => ({
    ...told,
    text: withNumbers({ told: told.text, whose }),
  }));
}

function factOf({ procedure, words }: PrintContext, held: HeldFigure | undefined): Fact | null {
  if (held?.mayRead == null) return null;
  const { tool, shut, low, high } = held.mayRead;
  const label = words.facts.mayRead({ tool: tool ?? words.tools.called.gauge });
  const text = shut ? words.facts.nothingPasses : betweenWords(words, low, high);
  if (held.which !== 'whenNew') return { label, text };
  const part = procedure.family.parts.find(({ name }) => name === held.value?.whenNewPart);
  const head = part === undefined ? words.limits.whenNew : words.limits.withNew({ part: words.inSentence(part.title) });
  return { label: `${head}: ${label}`, text };
}
