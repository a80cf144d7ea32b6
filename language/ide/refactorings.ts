/** Changes of a text that keep what it means, or that begin what comes next. */
import { allSteps, place } from '../analysis/locations.ts';
import { orderOn } from '../analysis/order.ts';
import type { CheckedProcedure } from '../db/workspace.ts';
import { blank } from '../diagnostics/edits.ts';
import type { Edit } from '../model/diagnostic.ts';
import { contains, touches } from '../model/ranges.ts';
import type { Range } from '../model/source.ts';
import { kindOfUnit, readQuantity } from '../quantities/index.ts';
import { type Said, say } from '../say/say.ts';
import type { DeclaredSymbol } from '../semantics/symbols.ts';
import { kindWords } from '../syntax/keywords.ts';
import type { Token } from '../syntax/token.ts';
import { torqueOf } from './completion/by-state.ts';
import type { Snapshot } from './snapshot.ts';
import { rangeOfToken, scannedFile, tokensIn } from './words.ts';

export interface Refactoring {
  readonly title: Said;
  readonly kind: 'extract' | 'rewrite';
  readonly edits: readonly Edit[];
}

interface Asked {
  readonly snapshot: Snapshot;
  readonly file: string;
  readonly range: Range;
  readonly lines: readonly string[];
  /** The procedure around the range. */
  readonly symbol: DeclaredSymbol;
  /** The stage or repair around it. */
  readonly block: DeclaredSymbol | null;
  readonly checked: CheckedProcedure | null;
}

/** What can be done with a range of a file. */
export function refactoringsIn(snapshot: Snapshot, file: string, range: Range): Refactoring[] {
  const symbol = snapshot.result.symbols
    .get(file)
    ?.find((one) => one.kind === 'procedure' && contains(one.range, range.start) && contains(one.range, range.end));
  if (symbol === undefined) return [];
  const block = symbol.children.find(
    (child) =>
      (child.kind === 'stage' || child.kind === 'repair') &&
      contains(child.range, range.start) &&
      contains(child.range, range.end),
  );
  const checked = snapshot.result.proceduresIn(file).find(({ procedure }) => procedure.name === symbol.name) ?? null;
  const lines = (snapshot.textOf(file) ?? '').split(/\r\n|\n|\r/u);
  const asked: Asked = { snapshot, file, range, lines, symbol, block: block ?? null, checked };
  return [sequence, spec, partNumber, build, sister, split].flatMap((make) => make(asked) ?? []);
}

/** A name that nothing in the procedure has. */
function freeName(name: string, { children }: DeclaredSymbol): string {
  const taken = new Set(children.flatMap(({ declares }) => declares.map((one) => one.name)));
  for (let count = 1; ; count++) {
    const tried = count === 1 ? name : `${name}-${count}`;
    if (!taken.has(tried)) return tried;
  }
}

/** Whole steps of a stage or repair as a sequence of their own, and its call in their place. */
function sequence(asked: Asked): Refactoring | null {
  const { block, range, file, symbol, lines } = asked;
  if (block === null || (range.start.line === range.end.line && range.start.character === range.end.character))
    return null;
  const steps = block.children.filter((step) => touches(step.range, range));
  const [first, last] = [steps[0], steps.at(-1)];
  if (
    first === undefined ||
    last === undefined ||
    steps.some(({ declares }) => declares.some(({ kind }) => kind === 'test'))
  )
    return null;
  const [start, end] = [first.range.start.line, last.range.end.line];
  const isShared = block.children.some(
    (step) => !steps.includes(step) && (step.range.start.line === end || step.range.end.line === start),
  );
  if (isShared || end >= symbol.range.end.line) return null;
  const name = freeName('new-sequence', symbol);
  const depth = /^\s*/u.exec(lines[start]!)![0];
  const body = lines
    .slice(start, end + 1)
    .map((line) => (line.startsWith(depth) ? `    ${line.slice(depth.length)}` : line));
  const whole = { start: { line: start, character: depth.length }, end: { line: end, character: lines[end]!.length } };
  return {
    title: say`Extract a sequence`,
    kind: 'extract',
    edits: [
      { source: { file, range: whole }, text: name },
      behindLine(asked, symbol.children.at(-1)!.range.end.line, ['', `  sequence ${name} {`, ...body, '  }']),
    ],
  };
}

/** The line behind which a spec or a part number goes: the last of its kind, else the head. */
function lineBehind({ symbol, lines }: Asked, kinds: readonly string[]): number {
  const last = symbol.children.findLast(({ kind }) => kinds.includes(kind));
  if (last !== undefined) return last.range.end.line;
  const brace = lines.findIndex((line, index) => index >= symbol.range.start.line && /\{\s*(?:\/\/.*)?$/u.test(line));
  return brace < 0 ? symbol.range.start.line : brace;
}

/** Text at the end of a line. */
function behindLine({ file, lines }: Asked, line: number, added: readonly string[]): Edit {
  const at = { line, character: lines[line]!.length };
  return {
    source: { file, range: { start: { ...at, character: at.character - 1 }, end: at } },
    text: `${lines[line]!.slice(-1)}\n${added.join('\n')}`,
  };
}

/** A limit that is written in a step, as a spec with a name. */
function spec(asked: Asked): Refactoring | null {
  const { snapshot, file, range, block, symbol } = asked;
  const step = block?.children.find((one) => contains(one.range, range.start));
  if (step === undefined) return null;
  const tokens = tokensIn(scannedFile(snapshot, file), step.range);
  const at = tokens.findIndex((token) => contains(rangeOfToken(token), range.start));
  const start =
    tokens.findLastIndex((token, index) => index <= at && (token.image === 'to' || token.image === 'within')) + 1;
  let end = start;
  while (end < tokens.length && isOfLimit(tokens[end]!)) end++;
  if (start === 0 || at < start || at >= end) return null;
  const verb = tokens[0]!.image;
  if (!['torque', 'lock', 'test', 'measure', 'check', 'set'].includes(verb)) return null;
  const figure = tokens.slice(start, end).find(({ name }) => name === 'QUANTITY');
  const read = figure === undefined ? null : readQuantity(figure.image);
  const kind = read === null || 'problem' in read ? null : kindOfUnit(read.quantity.unit);
  if (kind === null || !kindWords.includes(kind)) return null;
  const name = freeName(
    verb === 'torque' || verb === 'lock' ? `${tokens[1]!.image}-fit` : `${tokens[1]!.image}`,
    symbol,
  );
  const cut = (from: Token, to: Token) => ({ start: rangeOfToken(from).start, end: rangeOfToken(to).end });
  const written = tokens.slice(start, end);
  const text = asked.lines[rangeOfToken(written[0]!).start.line]!.slice(written[0]!.column, written.at(-1)!.endColumn);
  const from = tokens.findIndex(({ image }, index) => image === 'source' && tokens[index + 1]?.name === 'STRING');
  const source = from < 0 ? blank : tokens[from + 1]!.image;
  return {
    title: say`Make it a spec: ${name}`,
    kind: 'extract',
    edits: [
      { source: { file, range: cut(written[0]!, written.at(-1)!) }, text: name },
      ...(from < 0 ? [] : [{ source: { file, range: cut(tokens[from]!, tokens[from + 1]!) }, text: '' }]),
      behindLine(asked, lineBehind(asked, ['spec']), [`  spec ${name}  ${kind}  ${text}  source ${source}`]),
    ],
  };
}

function isOfLimit({ name, image }: Token): boolean {
  return (
    name === 'QUANTITY' || name === 'NUMBER' || /^(?:±|\+\/-|\+|-|−|\.\.|\/|at|least|most|then|\(|\))$/u.test(image)
  );
}

/** A further part number, with a blank for it. */
function partNumber(asked: Asked): Refactoring | null {
  if (asked.block !== null) return null;
  const line = lineBehind(asked, ['spec', 'number']);
  return { title: say`Add a part number`, kind: 'rewrite', edits: [behindLine(asked, line, [`  number ${blank}`])] };
}

/** What a stage has taken apart, put together in a stage behind it, in the order that the parts allow. */
function build(asked: Asked): Refactoring | null {
  const { block, checked } = asked;
  if (block?.kind !== 'stage' || checked?.states == null) return null;
  const { procedure, states } = checked;
  const stage = procedure.stages.find(({ name }) => name === block.name);
  const last = stage?.steps.at(-1);
  if (stage === undefined || last === undefined || !stage.steps.some(({ verb }) => verb === 'remove')) return null;
  const state = states.states[allSteps(procedure).indexOf(last)]?.after;
  if (state === undefined) return null;
  const { parts } = procedure.family;
  const isOff = ({ name, renewed }: (typeof parts)[number]) =>
    state.may(state.part(name).place, place.off | place.sub | place.guard | (renewed ? place.gone : 0));
  const off = parts.filter((part) => part.position === null && isOff(part)).map(({ name }) => name);
  const steps: string[] = [];
  let fitted: string[] = [];
  const flush = () => {
    if (fitted.length > 0) steps.push(`fit ${fitted.join(', ')}`);
    fitted = [];
  };
  for (const name of orderOn(states.relations, state, off)) {
    if (states.layout.joints.has(name)) {
      flush();
      steps.push(`run-down ${name}`, `torque ${name} to ${torqueOf(procedure, name) ?? blank}`);
    } else fitted.push(states.relations.part(name).locatedBy === null ? name : `${name} located`);
  }
  flush();
  if (steps.length === 0) return null;
  const carrier = parts.find(({ heldIn }) => heldIn !== null)?.name;
  const held = carrier === undefined ? steps : [`clamp ${carrier}`, ...steps, `unclamp ${carrier}`];
  const station = procedure.shop.stations.find((one) => one.clean && !one.pressure)?.name ?? blank;
  const name = freeName('build', asked.symbol);
  return {
    title: say`Write the build from this teardown`,
    kind: 'rewrite',
    edits: [
      behindLine(asked, block.range.end.line, [
        '',
        `  stage ${name} at ${station} {`,
        ...held.map((step) => `    ${step}`),
        '  }',
      ]),
    ],
  };
}

/** A procedure for a sister family, like this one: with the specs, which are its own. */
function sister(asked: Asked): Refactoring | null {
  const { symbol, range, checked, lines } = asked;
  if (checked === null || !contains(symbol.nameRange, range.start)) return null;
  const { family, shop } = checked.procedure;
  const name = `${symbol.name}-sister`;
  const specs = symbol.children.flatMap(({ kind, range: { start, end } }) =>
    kind === 'spec' ? lines.slice(start.line, end.line + 1) : [],
  );
  const title = symbol.title === '' ? '' : ` "${symbol.title}"`;
  const head = `procedure ${name}${title} for ${family.name} at ${shop.name} like ${symbol.name}`;
  return {
    title: say`Write a sister procedure like this one`,
    kind: 'rewrite',
    edits: [
      behindLine(asked, symbol.range.end.line, ['', head, '  revision A', '{', ...specs, `  number ${blank}`, '}']),
    ],
  };
}

/** A stage in two, where the cursor is. */
function split(asked: Asked): Refactoring | null {
  const { block, range, symbol, checked, file, lines } = asked;
  if (block?.kind !== 'stage') return null;
  const at = block.children.findIndex((step) => contains(step.range, range.start));
  const step = block.children[at];
  if (
    step === undefined ||
    at === 0 ||
    lines[step.range.start.line]!.slice(0, step.range.start.character).trim() !== ''
  )
    return null;
  const stage = checked?.procedure.stages.find(({ name }) => name === block.name);
  const where = stage?.station == null ? '' : ` at ${stage.station}`;
  const together = stage?.together === true ? ', the set together' : '';
  const { start } = step.range;
  const text = `}\n\n  stage ${freeName(block.name, symbol)}${where}${together} {\n${' '.repeat(start.character)}`;
  const from = { line: start.line, character: 0 };
  return {
    title: say`Split the stage here`,
    kind: 'rewrite',
    edits: [{ source: { file, range: { start: from, end: start } }, text: `  ${text}` }],
  };
}
