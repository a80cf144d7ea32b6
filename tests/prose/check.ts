/** `npm run lint`: fails where a text has a phrase that the prose avoids (phrases.ts). */
import { avoidedIn } from './avoided.ts';
import { piecesToSearch } from './texts.ts';

const found = piecesToSearch().flatMap(({ file, line, text }) =>
  avoidedIn(text).map(({ phrase, instead, below }) => `${file}:${line + below}  “${phrase}”: ${instead}`),
);
for (const one of found) console.error(one);
if (found.length > 0) {
  console.error(`${found.length} phrases to reword. Right uses are listed as exceptions in tests/prose/phrases.ts.`);
  process.exitCode = 1;
}
