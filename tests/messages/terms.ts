/** Words of closed lists that are said: kinds of quantities, and what a name can be of. */
import { stateWords } from '../../language/analysis/locations.ts';
import { rules } from '../../language/diagnostics/index.ts';
import { dangers } from '../../language/model/danger.ts';
import { units } from '../../language/quantities/unit-table.ts';
import { fluidWords } from '../../language/syntax/keywords.ts';
import { verbs, verbTable } from '../../language/syntax/verbs/index.ts';

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

/** What a declaration or a location of a state is of, and its properties. */
const kinds = ['number', 'places', 'only', 'gate', 'reading', 'parameter', 'check'];
const properties = [
  ...['place', 'age', 'stays with', 'kept', 'surface', 'wet', 'guard', 'is', 'setting', 'felt to move'],
  ...['held compressed', 'clamped', 'under pressure', 'primed', 'tagged', 'marked', 'signed off', 'clean outside'],
  ...['looked at', 'station'],
];

/** What is to be filled in behind a verb: in capitals, as the language has them. */
const places = [
  ...['PARTS', 'FACES', 'PORTS', 'ADJUSTER', 'TEST', 'SPEC', 'LIMIT', 'FIGURE', 'KIND', 'RULE', 'PART', 'FACE'],
  ...['JOINT', 'TOOL', 'FLUID', 'STATION', 'REPAIR', 'PLACE', 'NAME'],
];

/** What the library of the command line says by itself, and what it takes. */
const command = [
  ...['Usage:', 'Arguments:', 'Options:', 'Commands:'],
  ...['options', 'command', 'language', 'paths', 'format', 'count', 'folder', 'names', 'formats', 'paper', 'form'],
  ...['place', 'name', 'part', 'date', 'job', 'kind', 'size', 'procedure', 'file', 'calculation', 'figures', 'rule'],
  ...['what', 'family', 'title', 'tests', 'number', 'serials', 'reason', 'serial', 'batch', 'person', 'revision'],
  ...['quantity', 'days'],
].map((word) => (/:$/u.test(word) ? word : `<${word}>`));

/** How a figure of a record was taken, and what a unit is found by. */
const ofRecords = ['as found', 'earlier', 'as left', 'shim out', 'shim in', 'customer', 'renewed part', 'serial'];

export const terms: readonly string[] = [
  ...new Set([
    ...units.map(({ kind }) => kind),
    ...[...figures, ...named, ...dangers, ...signs, ...others, ...kinds, ...places, ...command],
    ...[...stateWords, 'ground'].map((word) => `${word} (state)`),
    ...properties.map((word) => `${word} (property)`),
    ...[...ofRecords, ...['error', 'warning', 'hint']],
    ...verbs.map((verb) => verbTable[verb].does),
    ...rules.map(({ title }) => title),
  ]),
];
