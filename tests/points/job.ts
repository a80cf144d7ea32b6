import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { checkFiles } from '../../language/db/workspace.ts';
import { buildCertificate, findMissing, placeWords } from '../../language/documents/certificate/index.ts';
import { renderText } from '../../language/documents/renderers/index.ts';
import { buildSheet } from '../../language/documents/traveler/index.ts';
import { wordsIn } from '../../language/i18n/index.ts';
import { fullMessage } from '../../language/model/diagnostic.ts';

const corpus = fileURLToPath(new URL('../corpus/', import.meta.url));
const read = (uri: string) => ({ uri, text: readFileSync(join(corpus, uri), 'utf8') });

/** The tools as a shop has them that certifies. */
const dated = ({ uri, text }: { uri: string; text: string }) => ({
  uri,
  text: text.replaceAll(/ due (\d{4})/gu, ' calibrated 2026-01-10 due $1'),
});

const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/gu, ' ');

/** A job of a procedure of the corpus: what is found in it, what is missing for its certificate, and what is printed. */
export function jobOf(
  file: string,
  procedure: string,
  units: string,
  changes: readonly (readonly [string, string])[] = [],
) {
  const own = read(`${file}.rebuild`);
  const text = changes.reduce((whole, [from, to]) => {
    if (!whole.includes(from)) throw new Error(`not in ${file}: ${from}`);
    return whole.replace(from, to);
  }, own.text);
  const job = `job 9 "Order" of ${procedure} at corpus-shop\n  customer "Somebody"   received 2026-10-01\n{\n${units}\n}\n`;
  const { diagnostics, jobs, procedures } = checkFiles([
    dated(read('shop.rebuild')),
    { uri: own.uri, text },
    { uri: 'job', text: job },
  ]);
  const [made] = jobs;
  const found = diagnostics.map((one) => plain(`${one.rule}: ${fullMessage(one)}`));
  const about = { paper: 'a4', draft: false, diagnostics: [], hash: 'ab'.repeat(32) } as const;
  return {
    found,
    job: made!,
    procedure: procedures.find(({ procedure: one }) => one.name === procedure)!.procedure,
    missing: () =>
      findMissing(made!.procedure, made!, { diagnostics: [], today: '2026-12-01' }).map((one) =>
        plain(`${placeWords(wordsIn('en'), one)}: ${one.say(wordsIn('en'))}`),
      ),
    certificate: () =>
      renderText(buildCertificate(made!.procedure, made!, { ...about, today: '2026-12-01' })).map(plain),
    card: () => buildSheet(made!.procedure, { ...about, job: made!, number: null }),
  };
}
