/** Words of closed lists that are said: kinds of quantities, and what a name can be of. */
import { dangers } from '../../language/model/danger.ts';
import { units } from '../../language/quantities/unit-table.ts';
import { fluidWords } from '../../language/syntax/keywords.ts';

const named = [
  ...['station', 'tool', 'fluid', 'stock', 'master', 'spec', 'part number', 'stage', 'repair', 'part', 'face', 'port'],
  ...['joint', 'joint of', 'adjuster', 'test', 'unit', 'job', 'procedure', 'family', 'shop', 'sequence', 'step'],
  ...['value of spec', 'cause', 'word'],
];

/** What a figure of a spring and a needle is of, and the words that stand for several kinds. */
const figures = ['guide', 'seat', 'rate', 'count', 'ratio', 'stiffness'];

/** What a code is made of. */
const signs = ['letters', 'digits', 'letters or digits'];

/** Where a pressure is held, what a part is washed in, how a reading is accepted, which tool. */
const others = ['at', 'below', 'above', ...fluidWords, 'simple', 'guarded', 'fully guarded', 'wrench', 'gauge'];

export const terms: readonly string[] = [
  ...new Set([...units.map(({ kind }) => kind), ...figures, ...named, ...dangers, ...signs, ...others]),
];
