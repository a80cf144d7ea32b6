import { allSteps } from '../../../analysis/locations.ts';
import { within } from '../../../analysis/within.ts';
import type { Procedure, Step } from '../../../model/procedure.ts';
import type { Shop } from '../../../model/shop.ts';
import type { Verb } from '../../../model/verbs.ts';
import { compare, formatLimit, formatQuantity, kindOfUnit, window } from '../../../quantities/index.ts';
import type { Limit, Quantity } from '../../../quantities/types.ts';
import { type Filling, type Said, say } from '../../../say/say.ts';
import { verbsThat } from '../../../syntax/verbs/index.ts';
import type { Rule } from '../../rule.ts';

/** 29 CFR 1910.242(b): compressed air for cleaning "reduced to less than 30 psi". */
const lawful: Quantity = { number: '30', unit: 'psi' };

const code = 'air-pressure-too-high';
const harm = say`air at that pressure drives chips into eyes and goes through skin.`;

/** Cleaning by hand. Air that moves a part or fills it for a test is another matter. */
const cleaning: ReadonlySet<Verb> = new Set(verbsThat('cleans'));

/** Hand-held blowing at or above the limit, or with no limit given; and a shop limit above the public one. */
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
      message: say`The shop allows air up to ${formatQuantity(airBelow.limit)} for blowing by hand, and 29 CFR 1910.242(b) requires less than ${formatQuantity(lawful)} for cleaning.`,
      why: harm,
      help: say`Write “air below 30 psi”, or your own lower limit.`,
    });
  },
  procedure(procedure, report) {
    const { limit, from } = ceilingOf(procedure);
    for (const step of allSteps(procedure)) {
      if (!cleaning.has(step.verb) || isGuarded(step)) continue;
      const tell = (message: Said, help: Said) => report({ at: step, message, why: harm, help });
      if (step.air === null) {
        if (step.verb === 'blow-dry' || step.gas !== null)
          report({
            at: step,
            ofAbsence: true,
            message: say`No pressure is given for ${step.verb === 'blow-dry' ? say`blowing dry` : say`the air`}.`,
            why: say`air at full line pressure drives chips into eyes and goes through skin.`,
            help: say`Write “with air at most” and a pressure below ${formatQuantity(limit)} (${from}).`,
          });
        continue;
      }
      const ends = endsOf(step.air);
      const over = ends.find((end) => kindOfUnit(end.unit) === 'pressure' && !isOver(limit, end));
      if (over !== undefined)
        tell(say`Air at ${formatQuantity(over)} is not below ${formatQuantity(limit)} (${from}).`, say`Lower it.`);
      else if (step.air.form === 'at least' && kindOfUnit(step.air.least.unit) === 'pressure')
        tell(
          say`Air of ${formatLimit(step.air)} may be as high as the line pressure.`,
          say`Write “at most” and a pressure below ${formatQuantity(limit)} (${from}).`,
        );
    }
  },
};

/** The limit for air. A shop limit above the public one counts only with a concession that gives a reason. */
function ceilingOf({ shop }: Procedure): { limit: Quantity; from: Filling } {
  const { airBelow } = shop;
  if (airBelow === null || kindOfUnit(airBelow.limit.unit) !== 'pressure' || !mayRule(shop, airBelow))
    return { limit: lawful, from: say`29 CFR 1910.242(b)` };
  return { limit: airBelow.limit, from: say`shop ${shop.name}` };
}

function mayRule({ allow }: Shop, { limit, source }: NonNullable<Shop['airBelow']>): boolean {
  return !isOver(limit, lawful) || allow.some((one) => one.rule === code && within(source, one.extent));
}

/** Every figure that may be set: both ends of a band, and a figure with no tolerance. The highest first. */
function endsOf(air: Limit): Quantity[] {
  const { low, high, nominal } = window(air);
  return [high, nominal, low].filter((end) => end !== null);
}

function isOver(a: Quantity, b: Quantity): boolean {
  return compare(a, b) === 1;
}

/** Not blown by hand in the open: a closed cabinet, or a nozzle that relieves the pressure when it is blocked. */
function isGuarded({ text, note, tools }: Step): boolean {
  const words = [text, note, ...tools.map((tool) => (tool.form === 'words' ? tool.text : ''))].join(' ');
  return /\b(cabinet|relieving|relief nozzle)\b/iu.test(words);
}
