import type { Caution } from '../../analysis/cautions/index.ts';
import type { Words } from '../../i18n/index.ts';
import type { Hazard } from '../../model/procedure.ts';
import type { CautionBlock } from '../model.ts';

/** The whole text of a usual caution. */
export function fullCaution({ cautions, signals }: Words, { topic, word }: Caution): CautionBlock {
  return {
    kind: 'caution',
    word,
    label: signals[word],
    text: cautions[topic].text,
    short: false,
    pressure: topic === 'injection',
  };
}

/** The line that later steps get; the whole text where it has none. */
export function shortCaution({ cautions, signals }: Words, { topic, word }: Caution): CautionBlock {
  const said: { readonly text: string; readonly short?: string } = cautions[topic];
  return {
    kind: 'caution',
    word,
    label: signals[word],
    text: said.short ?? said.text,
    short: true,
    pressure: topic === 'injection',
  };
}

/** The author's own warning. */
export function ownCaution({ signals }: Words, { word, text }: Hazard): CautionBlock {
  return { kind: 'caution', word, label: signals[word], text, short: false, pressure: false };
}
