import { hasBlades, springTrait } from '../../../analysis/cautions/index.ts';
import { type Danger, type Dangerous, dangers, saidOf } from '../../../model/danger.ts';
import type { Statement } from '../../../model/diagnostic.ts';
import type { Family, Part } from '../../../model/family.ts';
import type { Step } from '../../../model/procedure.ts';
import { namedIn, own } from '../../../model/steps.ts';
import { say, term } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';
import { suspectWord } from '../../suspect-words.ts';

/** Words that sound like a danger that is declared neither as one nor as none: no caution follows from them. */
export const dangerUnsaid: Rule = {
  code: 'danger-unsaid',
  severity: 'warning',
  since: '0.2.0',
  title: 'A title or a step sounds dangerous, and the text does not say whether it is.',
  shop(shop, report) {
    for (const station of shop.stations)
      for (const { danger, word } of unsaid(station.title, saidAround([station])))
        report({ at: station.source, rootCause: causeOf(danger, station), ...statementOf(danger, word) });
  },
  family(family, report) {
    for (const part of family.parts)
      for (const { danger, word } of unsaid(part.title, (danger) => partSays(family, part, danger)))
        report({
          at: part.source,
          rootCause: causeOf(danger, part),
          ...statementOf(danger, word),
          allow: part.allow,
        });
  },
  eachStep(step, { family, shop, station: here }, report) {
    const station = shop.stations.find(({ name }) => name === here);
    const handled = family.parts.filter(({ name }) => namedIn(step).some((object) => object.name === name));
    for (const { danger, word } of unsaid(
      ownWords(step),
      saidAround([step, ...(station === undefined ? [] : [station]), ...handled]),
    ))
      report({ at: step, rootCause: causeOf(danger, step), ...statementOf(danger, word) });
  },
};

/** A spring and a blade are parts: “lifted by the spring hook” in a step is none. */
const saidAround = (all: readonly Dangerous[]) => (danger: Danger) =>
  danger === 'spring-loaded' || danger === 'sharp' || all.some((one) => saidOf(one, danger) !== undefined);

/** The family says whether a part is such a danger, by its word or by another fact. */
function partSays(family: Family, part: Part, danger: Danger): boolean {
  if (saidOf(part, danger) !== undefined) return true;
  switch (danger) {
    case 'toxic':
      return part.material !== null;
    case 'heavy':
      return part.weight !== null;
    case 'spring-loaded':
      return springTrait(family, part) !== null;
    case 'sharp':
      return hasBlades(part);
    default:
      return false;
  }
}

/** The author's own words of a step. */
function ownWords(step: Step): string {
  return [
    step.text,
    own(step, 'reading'),
    step.note,
    own(step, 'holder'),
    own(step, 'accept'),
    ...(own(step, 'conditions') ?? []),
    ...step.tools.map((tool) => (tool.form === 'words' ? tool.text : '')),
  ]
    .filter((word) => word != null)
    .join(' ');
}

/** The dangers that a text sounds like and that nothing says or denies. */
function unsaid(text: string, isSaid: (danger: Danger) => boolean) {
  return dangers.flatMap((danger) => {
    const word = isSaid(danger) ? null : suspectWord(danger, text);
    return word === null ? [] : [{ danger, word }];
  });
}

function causeOf(danger: Danger, { source }: Pick<Step, 'source'>): string {
  const { start } = source.range;
  return `danger-unsaid:${danger}@${source.file}:${start.line}:${start.character}`;
}

function statementOf(danger: Danger, word: string): Statement {
  return {
    message: say`“${word}” sounds like something ${danger === 'stored pressure' ? say`under stored pressure` : term(danger)}, and nothing says whether it is.`,
    why: say`the sheet does not warn of it, since no caution follows from a title.`,
    help: say`Write ${danger}, or not ${danger}.`,
  };
}
