import { inUnits, type ShimChoice, shimChoices } from '../analysis/shims.ts';
import { workedOut } from '../analysis/tool-words.ts';
import { within } from '../analysis/within.ts';
import { widestStep } from '../engineering/shim-stock.ts';
import { wordsIn } from '../i18n/index.ts';
import { type Reader, readerOf } from '../i18n/translate.ts';
import type { Job } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Source } from '../model/source.ts';
import { formatQuantity } from '../quantities/index.ts';
import { type Said, say } from '../say/say.ts';
import { buildRecommendations } from './advised.ts';

/** A few words shown after a place in the text. */
export interface Hint {
  readonly source: Source;
  readonly text: string;
}

/** What to fit or to turn, after the reading that it is based on; and the change for one step of the drawer, after each `choose`. */
export function buildHints(
  procedures: readonly Procedure[],
  jobs: readonly Job[],
  reader: Reader = readerOf('en'),
): Hint[] {
  const ofJobs = jobs.flatMap((job) =>
    buildRecommendations(job, wordsIn(reader.language)).flatMap(({ reading, sentence }) =>
      sentence === null ? [] : [{ source: reading.source, text: sentence }],
    ),
  );
  const ofChoices = procedures.flatMap((procedure) =>
    shimChoices(procedure).flatMap((choice) => {
      const said = stepWords(choice);
      // A sequence is written once and called often, and text taken over by `like` has the other procedure's figures.
      const isOwn = choice.step.call === null && within(choice.step.source, procedure.extent);
      return said === null || !isOwn ? [] : [{ source: choice.step.source, text: reader.tell(said) }];
    }),
  );
  return [...ofChoices, ...ofJobs];
}

/** `one step of 0.05 mm brings 5.9 bar`. Null: the steps differ, or so do the rates of the part numbers. */
function stepWords({ sizes, stocks, cases }: ShimChoice): Said | null {
  const widest = sizes === null ? null : widestStep(sizes);
  if (sizes === null || widest === null) return null;
  const width = widest.to.sub(widest.from);
  if (sizes.some((size, index) => index > 0 && !size.sub(sizes[index - 1]!).equals(width))) return null;
  const [first, ...others] = cases.flatMap(({ rate, target }) =>
    rate === null || target === null ? [] : [{ rate, target }],
  );
  if (first === undefined || others.some(({ rate }) => !rate.equals(first.rate))) return null;
  const step = formatQuantity(inUnits(width, stocks[0]!.sizes[0]!.unit));
  return say`one step of ${step} brings ${workedOut(inUnits(first.rate.mul(width), first.target.unit))}`;
}
