import { ownWords, suspectWord } from '../../../analysis/cautions/index.ts';
import { type Danger, type DangerFact, dangers } from '../../../model/danger.ts';
import type { Statement } from '../../../model/diagnostic.ts';
import { say, term } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** Nearly every family has a spring, known by its place or its name: asking about each would be a nuisance. */
const asked = dangers.filter((danger) => danger !== 'spring-loaded');

/** Words that sound like a danger that is declared neither as one nor as none. */
export const dangerUnsaid: Rule = {
  code: 'danger-unsaid',
  severity: 'hint',
  since: '0.2.0',
  title: 'A title or a step sounds dangerous, and the text does not say whether it is.',
  shop(shop, report) {
    for (const station of shop.stations)
      for (const { danger, word } of unsaid(station.title, [station.dangers]))
        report({ at: station.source, rootCause: causeOf(danger, station), ...statementOf(danger, word) });
  },
  family(family, report) {
    for (const part of family.parts)
      for (const { danger, word } of unsaid(part.title, [part.dangers]))
        report({
          at: part.source,
          rootCause: causeOf(danger, part),
          ...statementOf(danger, word),
          allow: part.allow,
        });
  },
  eachStep(step, { shop, station: here }, report) {
    const station = shop.stations.find(({ name }) => name === here);
    for (const { danger, word } of unsaid(ownWords(step), [step.dangers, station?.dangers ?? []]))
      report({ at: step, rootCause: causeOf(danger, step), ...statementOf(danger, word) });
  },
};

/** The dangers that a text sounds like and that none of these facts covers. */
function unsaid(text: string, said: readonly (readonly DangerFact[])[]) {
  return asked.flatMap((danger) => {
    if (said.some((facts) => facts.some((fact) => fact.danger === danger))) return [];
    const word = suspectWord(danger, text);
    return word === null ? [] : [{ danger, word }];
  });
}

function causeOf(danger: Danger, { source }: { readonly source: DangerFact['source'] }): string {
  const { start } = source.range;
  return `danger-unsaid:${danger}@${source.file}:${start.line}:${start.character}`;
}

function statementOf(danger: Danger, word: string): Statement {
  return {
    message: say`“${word}” sounds like something ${danger === 'stored pressure' ? say`under stored pressure` : term(danger)}, and nothing says whether it is.`,
    why: say`the sheet prints its warning because of this word alone, and would not print it in another language.`,
    help: say`Write ${danger}, or not ${danger}.`,
  };
}
