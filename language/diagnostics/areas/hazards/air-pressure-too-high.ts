import { allSteps } from '../../../analysis/locations.ts';
import { within } from '../../../analysis/within.ts';
import type { Procedure, Step } from '../../../model/procedure.ts';
import type { Shop } from '../../../model/shop.ts';
import type { Verb } from '../../../model/verbs.ts';
import { compare, formatLimit, formatQuantity, kindOfUnit, window } from '../../../quantities/index.ts';
import type { Limit, Quantity } from '../../../quantities/types.ts';
import { verbsThat } from '../../../syntax/verbs/index.ts';
import type { Rule } from '../../rule.ts';

/** 29 CFR 1910.242(b): compressed air for cleaning "reduced to less than 30 psi". */
const lawful: Quantity = { number: '30', unit: 'psi' };

const code = 'air-pressure-too-high';
const harm = 'it drives chips into eyes and goes through skin';

/** Cleaning by hand. Air that moves a part or fills it for a test is another thing. */
const cleaning: ReadonlySet<Verb> = new Set(verbsThat('cleans'));

/** Hand-held blowing at or above the limit, or with none given; and a shop that sets its limit above the public one. */
export const airPressureTooHigh: Rule = {
  code,
  severity: 'error',
  since: '0.1.0',
  references: ['29 CFR 1910.242(b)'],
  unsafe: true,
  title: 'A part is cleaned with air at or above the limit, or with no limit given.',
  shop({ airBelow }, report) {
    if (airBelow === null || !isOver(airBelow.limit, lawful)) return;
    report({
      at: airBelow.source,
      message: `The shop lets air up to ${formatQuantity(airBelow.limit)} be blown by hand, and 29 CFR 1910.242(b) wants less than ${formatQuantity(lawful)} for cleaning.`,
      why: `${harm}.`,
      help: 'Write “air below 30 psi”, or the lower limit of your own.',
    });
  },
  procedure(procedure, report) {
    const { limit, from } = ceilingOf(procedure);
    for (const step of allSteps(procedure)) {
      if (!cleaning.has(step.verb) || isGuarded(step)) continue;
      const tell = (message: string) => report({ at: step, message });
      if (step.air === null) {
        if (step.verb === 'blow-dry' || step.gas !== null)
          report({
            at: step,
            ofAbsence: true,
            message: `No air pressure is given for ${step.verb === 'blow-dry' ? 'blowing dry' : 'the air'}.`,
            why: 'the line in the shop may drive chips into eyes and air through skin.',
            help: `Write “with air at most” and a pressure under ${formatQuantity(limit)} (${from}).`,
          });
        continue;
      }
      const ends = endsOf(step.air);
      const over = ends.find((end) => kindOfUnit(end.unit) === 'pressure' && !isOver(limit, end));
      if (over !== undefined)
        tell(`Air at ${formatQuantity(over)} is not under ${formatQuantity(limit)} (${from}): ${harm}. Lower it.`);
      else if (step.air.form === 'at least' && kindOfUnit(step.air.least.unit) === 'pressure')
        tell(
          `Air of ${formatLimit(step.air)} may be as high as the line gives: ${harm}. Write “at most” and a pressure under ${formatQuantity(limit)} (${from}).`,
        );
    }
  },
};

/** What air must stay under. What a shop sets above the public limit counts only where it has conceded that with a reason. */
function ceilingOf({ shop }: Procedure): { limit: Quantity; from: string } {
  const { airBelow } = shop;
  if (airBelow === null || kindOfUnit(airBelow.limit.unit) !== 'pressure' || !mayRule(shop, airBelow))
    return { limit: lawful, from: '29 CFR 1910.242(b)' };
  return { limit: airBelow.limit, from: `shop ${shop.name}` };
}

function mayRule({ allow }: Shop, { limit, source }: NonNullable<Shop['airBelow']>): boolean {
  return !isOver(limit, lawful) || allow.some((one) => one.rule === code && within(source, one.extent));
}

/** Every figure that the hand may set: both ends of a band, and one with no tolerance. The highest first. */
function endsOf(air: Limit): Quantity[] {
  const { low, high, nominal } = window(air);
  return [high, nominal, low].filter((end) => end !== null);
}

function isOver(a: Quantity, b: Quantity): boolean {
  return compare(a, b) === 1;
}

/** Not in the open hand: a closed cabinet, or a nozzle that lets the pressure off when it is blocked. */
function isGuarded({ text, note, tools }: Step): boolean {
  const words = [text, note, ...tools.map((tool) => (tool.form === 'words' ? tool.text : ''))].join(' ');
  return /\b(cabinet|relieving|relief nozzle)\b/iu.test(words);
}
