import { ownWords, suspectWord } from '../../../analysis/cautions/index.ts';
import { type Danger, type DangerFact, dangers } from '../../../model/danger.ts';
import type { Rule } from '../../rule.ts';

/** A spring is one by its place or its name in nearly every family: to ask of each would be a nuisance. */
const asked = dangers.filter((danger) => danger !== 'spring-loaded');

/** Words that sound like a danger which nobody declared, or said not to be one. */
export const dangerUnsaid: Rule = {
  code: 'danger-unsaid',
  severity: 'hint',
  since: '0.2.0',
  title: 'A title or a step sounds like something that can hurt, and the text does not say whether it does.',
  shop(shop, report) {
    for (const station of shop.stations)
      for (const { danger, word } of unsaid(station.title, [station.dangers]))
        report({ at: station.source, cause: causeOf(danger, station), message: messageOf(danger, word) });
  },
  family(family, report) {
    for (const part of family.parts)
      for (const { danger, word } of unsaid(part.title, [part.dangers]))
        report({
          at: part.source,
          cause: causeOf(danger, part),
          message: messageOf(danger, word),
          allow: part.allow,
        });
  },
  procedure(procedure, report) {
    for (const place of [...procedure.stages, ...procedure.repairs]) {
      const station = procedure.shop.stations.find(({ name }) => name === place.station);
      for (const step of place.steps)
        for (const { danger, word } of unsaid(ownWords(step), [step.dangers, station?.dangers ?? []]))
          report({ at: step, cause: causeOf(danger, step), message: messageOf(danger, word) });
    }
  },
};

/** The dangers that a text sounds like, and that none of these facts speaks of. */
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

function messageOf(danger: Danger, word: string): string {
  return `“${word}” sounds like something ${danger === 'stored pressure' ? 'under stored pressure' : danger}, and nothing says whether it is. The sheet warns of it by this word alone, and would not in another language. Write ${danger}, or not ${danger}.`;
}
