import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { beforeAll, describe, expect, test } from 'vitest';
import oniguruma from 'vscode-oniguruma';
import textmate from 'vscode-textmate';
import { drawnAs } from '../../language/model/drawn-as.ts';
import { verbs } from '../../language/model/verbs.ts';
import { units } from '../../language/quantities/index.ts';
import { itemHeads, stepWords } from '../../language/syntax/keywords.ts';
import { spellingOf } from '../../language/syntax/verbs/index.ts';

let grammar: textmate.IGrammar;
const colors = JSON.parse(readFileSync(new URL('./rebuild.tmLanguage.json', import.meta.url), 'utf8')) as {
  readonly repository: Record<'second-step', { readonly patterns: readonly { readonly match: string }[] }>;
};

beforeAll(async () => {
  const wasm = readFileSync(createRequire(import.meta.url).resolve('vscode-oniguruma/release/onig.wasm'));
  await oniguruma.loadWASM(wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength));
  const registry = new textmate.Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (sources) => new oniguruma.OnigScanner(sources),
      createOnigString: (text) => new oniguruma.OnigString(text),
    }),
    loadGrammar: async () =>
      textmate.parseRawGrammar(
        readFileSync(new URL('./rebuild.tmLanguage.json', import.meta.url), 'utf8'),
        'rebuild.tmLanguage.json',
      ),
  });
  grammar = (await registry.loadGrammar('source.rebuild'))!;
});

/** What is painted with a scope, in order. */
function painted(text: string, scope: string): string[] {
  const found: string[] = [];
  let state = textmate.INITIAL;
  for (const line of text.split('\n')) {
    const { tokens, ruleStack } = grammar.tokenizeLine(line, state);
    state = ruleStack;
    for (const { startIndex, endIndex, scopes } of tokens) {
      if (scopes.some((name) => name.startsWith(scope))) found.push(line.slice(startIndex, endIndex).trim());
    }
  }
  return found;
}

test('the shape that a part is drawn as has a color, and nothing else has it', () => {
  for (const shape of drawnAs) {
    const text = `  part a "A" on b   drawn as ${shape}   holds c`;
    expect(painted(text, 'support.type.shape'), shape).toEqual([shape]);
    expect(painted(text, 'keyword.other.clause'), shape).toContain('drawn as');
  }
  expect(painted('  part needle "Needle" in nozzle   drawn as needle-2', 'support.type.shape')).toEqual([]);
  expect(painted('  part spring "Spring" on needle', 'support.type.shape')).toEqual([]);
});

describe('verbs', () => {
  test('every verb is painted where a step begins', () => {
    for (const verb of verbs) {
      const written = spellingOf(verb);
      expect(painted(`    ${written} something`, 'keyword.control.step'), verb).toEqual([written]);
    }
  });

  test('a part that is called by a verb is none', () => {
    expect(painted('    remove cap, guard, clamp', 'keyword.control.step')).toEqual(['remove']);
    expect(painted('    wash body,\n      cap, seal\n    wipe lock', 'keyword.control.step')).toEqual(['wash', 'wipe']);
    expect(painted('    guard body.end with cap', 'keyword.control.step')).toEqual(['guard']);
    expect(painted('  part cap "Cap" on seal', 'keyword.control.step')).toEqual([]);
    expect(painted('  part seal "Seal"    on lock', 'keyword.control.step')).toEqual([]);
    expect(painted('  joint lock to cap', 'keyword.control.step')).toEqual([]);
    expect(painted('    fit cap with seal', 'keyword.control.step')).toEqual(['fit']);
    expect(painted('    check cap.top', 'keyword.control.step')).toEqual(['check']);
    expect(painted('    cap-nut', 'keyword.control.step')).toEqual([]);
  });

  test('short steps that share a line', () => {
    expect(painted('    guard body.end with nut    cap bore, inlet', 'keyword.control.step')).toEqual(['guard', 'cap']);
    expect(painted('    relieve    disconnect inlet', 'keyword.control.step')).toEqual(['relieve', 'disconnect']);
    expect(painted('  sequence open { relieve  disconnect inlet  slacken nut }', 'keyword.control.step')).toEqual([
      'relieve',
      'disconnect',
      'slacken',
    ]);
    expect(painted('  spec nut-fit    torque    60 N·m ±5', 'keyword.control.step')).toEqual([]);
  });

  test('what is painted in the middle of a line is a verb too', () => {
    const { patterns } = colors.repository['second-step'];
    const lists = patterns.map(
      ({ match }) => /\)\)?(?:\\s\*)?\(((?:[-a-z]|\\s\+|\||\(\?=[^)]*\))+)\)\(\?=/u.exec(match)![1]!,
    );
    const words = lists.flatMap((list) =>
      list
        .replaceAll('\\s+', ' ')
        .replace(/\(\?=[^)]*\)/gu, '')
        .split('|'),
    );
    expect(words.length).toBeGreaterThan(40);
    expect(words.filter((word) => !verbs.map(spellingOf).includes(word))).toEqual([]);
  });

  test('in strings and comments nothing is painted', () => {
    expect(painted('    do "fit the cap" // torque nut', 'keyword.control.step')).toEqual(['do']);
    expect(painted('  // remove nut', 'keyword')).toEqual([]);
    expect(painted('    note "an open string\n    fit nut', 'keyword.control.step')).toEqual(['fit']);
  });
});

test('numbers with their units', () => {
  expect(painted('    spec a torque 60 N·m ±5', 'constant.numeric')).toEqual(['60', '±5']);
  expect(painted('    spec a torque 60 N·m ±5', 'keyword.other.unit')).toEqual(['N·m']);
  expect(painted('    test t at 20..60 strokes/min', 'keyword.other.unit')).toEqual(['strokes/min']);
  expect(painted('    spec a rate 3 bar per 0.001 in', 'keyword.other.unit')).toEqual(['bar', 'in']);
  expect(painted('    fit shim in bar', 'keyword.other.unit')).toEqual([]);
  expect(painted('  unit 1 number A-250 serial 0411', 'keyword.other.unit')).toEqual([]);
});

test('dates, declared names and signal words', () => {
  expect(painted('  wrench TW-80 range 16..80 N·m due 2027-03-01', 'constant.numeric.date')).toEqual(['2027-03-01']);
  expect(painted('procedure rebuild-17 "Rebuild" for injector at bench', 'entity.name')).toEqual(['rebuild-17']);
  expect(painted('  stage as-found at tester {', 'entity.name')).toEqual(['as-found']);
  expect(painted('    hazard WARNING "Hot"', 'keyword.control.signal')).toEqual(['WARNING']);
});

test('counts and stacks of a stock, and what a new spring loses', () => {
  expect(painted('  stock shims of 1.00 mm (3), 1.05 mm stacks of two', 'keyword.other')).toEqual([
    'of',
    'mm',
    'mm',
    'stacks of two',
  ]);
  expect(painted('  spec a pressure 250 bar, settling 4 bar', 'keyword.other.clause')).toEqual(['settling']);
  expect(painted('    fit settling, two with stacks', 'keyword.other.clause')).toEqual([]);
});

test('what can hurt, of a part, a station and a step', () => {
  expect(painted('  part valve "Valve" on body   live   not hot', 'keyword.other.clause')).toEqual(['live', 'not hot']);
  expect(painted('    do "Out of the oven" hot', 'support.type.trait')).toEqual(['hot']);
  expect(painted('    wipe lid   stored pressure', 'keyword.other.clause')).toEqual(['stored pressure']);
  expect(painted('  station tank "Tank" wet, ultrasonic', 'support.type.trait')).toContain('ultrasonic');
  expect(painted('    remove hot, cold', 'keyword.other.clause')).toEqual([]);
});

test('a rate from spring and needle', () => {
  const rate = '  spec r "Rate" rate from stiffness 200 N/mm, guide 6 mm, seat 3 mm';
  expect(painted(rate, 'support.type.kind')).toEqual(['rate', 'stiffness']);
  expect(painted(rate, 'keyword.other.clause')).toEqual(['guide', 'seat']);
  expect(painted('    fit guide, seat 3', 'keyword.other.clause')).toEqual([]);
});

test('every unit of the table is painted, in every spelling', () => {
  const unpainted = units
    .flatMap(({ name, spellings }) => [name, ...spellings])
    .filter((unit) => painted(`  spec a length 60 ${unit}`, 'keyword.other.unit')[0] !== unit);
  expect(unpainted).toEqual([]);
});

test('the words that begin a step or an item are those of the grammar', () => {
  for (const word of stepWords)
    expect(
      painted(
        `    ${word === 'clean' ? 'clean outside' : word === 'across' ? 'across the set' : word} x`,
        'keyword.control.step',
      ),
      word,
    ).toHaveLength(1);
  const two: Record<string, string> = {
    proven: 'proven by',
    unless: 'unless stated',
    always: 'always checked',
    instead: 'instead of',
  };
  for (const word of itemHeads)
    expect(painted(`  ${two[word] ?? word} x1`, 'storage.type')[0], word).toBe(two[word] ?? word);
});
