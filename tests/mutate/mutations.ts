import { type AstNode, AstUtils, GrammarUtils } from 'langium';
import type * as ast from '../../language/syntax/generated/ast.ts';
import { langiumParse } from '../parse/reference.ts';
import type { Edit, Kind, Mutant } from './mutant.ts';

/** Every single break of a file, of each kind. */
export function mutantsOf(file: string, text: string): Mutant[] {
  return new Breaker(file, text).all();
}

/** Clauses whose loss is counted by itself; the rest are counted together. */
const clauseKinds: Readonly<Record<string, Kind>> = {
  AcceptClause: 'delete an accept',
  FailClause: 'delete an on fail',
  ForClause: 'delete a time',
  SourceClause: 'delete a source',
};

/** Clauses that say something to the reader and nothing to the checker. */
const words: ReadonlySet<string> = new Set(['TextClause', 'NoteClause', 'TakesClause', 'AllowClause']);

class Breaker {
  private readonly found: Mutant[] = [];
  private readonly file: string;
  private readonly text: string;
  private readonly root: ast.File;

  constructor(file: string, text: string) {
    this.file = file;
    this.text = text;
    this.root = langiumParse(text).ast;
  }

  all(): Mutant[] {
    for (const node of AstUtils.streamAllContents(this.root)) this.node(node);
    return this.found;
  }

  private node(node: AstNode) {
    const own = node as AstNode & { lines?: unknown };
    if (isSteps(own.lines)) this.block(own.lines);
    switch (node.$type) {
      case 'ObjectStep':
      case 'BareStep':
      case 'CleanOutside':
      case 'CleanHoles':
      case 'TestStep':
      case 'AcrossStep':
        this.step(node as ast.ObjectStep);
        break;
      case 'Call':
        for (const argument of (node as ast.Call).arguments) this.list(argument.objects);
        break;
      case 'WithClause':
        this.list((node as ast.WithClause).items.filter((item) => item.$type === 'WithObject'));
        break;
      case 'FailClause':
        this.failList(node as ast.FailClause);
        this.otherRepair(node as ast.FailClause);
        break;
      case 'ToClause':
        this.otherSpec(node as ast.ToClause);
        break;
      case 'InClause':
        this.otherFluid(node as ast.InClause);
        break;
      case 'SpecSource':
      case 'ApprovedBy':
      case 'Hazard':
        this.emptied(node);
        break;
      case 'InService':
        this.quantityOf((node as ast.InService).limit, 'slip a point', tenth);
        break;
      case 'AtMost':
        this.turned(node, 'most', 'least');
        break;
      case 'NominalLimit':
        this.tolerance(node as ast.NominalLimit);
        break;
      case 'Spec':
      case 'NumberValue':
        this.specValue(node as ast.Spec);
        break;
      case 'NumberValues':
        for (const value of (node as ast.NumberValues).values)
          this.add('drop a spec of a part number', value, [this.cut(value)]);
        break;
      case 'Part':
        for (const fact of (node as ast.Part).facts) this.partFact(fact);
        break;
      case 'Face':
      case 'Port':
      case 'Joint':
      case 'Adjuster':
      case 'ProvenBy':
        this.familyItem(node);
        break;
      case 'WithAir':
        this.quantityOf((node as ast.WithAir).limit, 'raise the air', tripled);
        break;
    }
    if (isLimit(node)) {
      this.quantityOf(node, 'change a unit to another kind', otherKind);
      const { pair } = node as { pair?: ast.Pair };
      if (pair !== undefined) this.quantityOf(pair.limit, 'change one of a pair', tripled);
    }
  }

  // ---- steps -------------------------------------------------------------------------------------------

  private block(lines: readonly ast.StepLine[]) {
    /** A step with the hazards that are before it, whether or not they name it. */
    const units: AstNode[][] = [];
    let hazards: AstNode[] = [];
    for (const step of lines.flatMap((line) => line.steps)) {
      if (step.$type === 'Hazard') hazards.push(step);
      else {
        units.push([...hazards, step]);
        hazards = [];
      }
    }
    units.forEach((unit, index) => {
      const step = unit.at(-1)!;
      const hazard = unit.length > 1 ? unit[0]! : null;
      this.add('delete a step', step, [this.cut(step)]);
      if (hazard !== null) {
        const moved = `${this.cutText(hazard)}`;
        this.add('move a caution behind its step', hazard, [
          this.cut(hazard),
          { start: end(step), end: end(step), text: `\n${moved}` },
        ]);
      }
      const next = units[index + 1];
      if (next === undefined) return;
      const [a, b] = [
        { start: start(unit[0]!), end: end(step) },
        { start: start(next[0]!), end: end(next.at(-1)!) },
      ];
      this.add(
        'swap two steps',
        step,
        [
          { ...a, text: this.text.slice(b.start, b.end) },
          { ...b, text: this.text.slice(a.start, a.end) },
        ],
        `${this.words(step)} ⇄ ${this.words(next.at(-1)!)}`,
        [...this.namesIn(step), ...this.namesIn(next.at(-1)!)],
      );
    });
  }

  private step(step: ast.ObjectStep) {
    if (step.verb === 'discard') {
      const edit = { start: start(step), end: start(step) + 'discard'.length, text: 'remove' };
      this.add('keep what is used once', step, [edit]);
    }
    this.list(step.objects ?? []);
    for (const subject of step.objects ?? []) this.located(subject);
    for (const clause of step.clauses) {
      if (words.has(clause.$type)) continue;
      if (clause.$type === 'WithClause') {
        for (const item of clause.items) {
          if (item.$type === 'WithObject') this.located(item.object);
          if (clause.items.length === 1) this.add(this.withKind(item), clause, [this.cut(clause)]);
          else if (item.$type !== 'WithObject') this.fromList(this.withKind(item), clause.items, item);
        }
        continue;
      }
      this.add(clauseKinds[clause.$type] ?? 'delete another clause', clause, [this.cut(clause)]);
    }
  }

  private withKind(item: ast.WithItem): Kind {
    return item.$type === 'WithObject' || item.$type === 'WithKind' || item.$type === 'WithWords'
      ? 'delete a tool'
      : 'delete another clause';
  }

  private located(subject: ast.Subject) {
    if (!subject.located) return;
    const path = subject.path.$cstNode!;
    this.add('delete located', subject, [{ start: path.end, end: end(subject), text: '' }]);
  }

  /** One out of a list with commas. */
  private list(items: readonly AstNode[]) {
    if (items.length > 1) for (const item of items) this.fromList('delete a part from a list', items, item);
  }

  private fromList(kind: Kind, items: readonly AstNode[], item: AstNode) {
    const at = items.indexOf(item);
    const edit =
      at === 0
        ? { start: start(item), end: start(items[1]!), text: '' }
        : { start: end(items[at - 1]!), end: end(item), text: '' };
    this.add(kind, item, [edit], `${this.words(item)} of ${this.words(item.$container!)}`);
  }

  private failList(clause: ast.FailClause) {
    for (const entry of clause.entries) {
      if (clause.entries.length > 1) this.fromList('delete a repair from an on fail', clause.entries, entry);
      const tries = GrammarUtils.findNodeForKeyword(entry.$cstNode, '(');
      const closing = GrammarUtils.findNodeForKeyword(entry.$cstNode, ')');
      if (tries !== undefined && closing !== undefined)
        this.add('delete a count of tries', entry, [{ start: tries.offset, end: closing.end, text: '' }]);
    }
  }

  // ---- names ------------------------------------------------------------------------------------------

  /** A check that sends to the next repair of the file. */
  private otherRepair(clause: ast.FailClause) {
    const container = clause.$container as unknown as ast.ObjectStep;
    if (container.verb !== 'check' && container.verb !== 'measure') return;
    const names = [...AstUtils.streamAllContents(this.root)].flatMap((node) =>
      node.$type === 'Repair' ? (node as ast.Repair).name : [],
    );
    for (const entry of clause.entries) {
      const at = entry.repair === undefined ? -1 : names.indexOf(entry.repair.name);
      const other = names[(at + 1) % names.length];
      if (entry.repair === undefined || at < 0 || other === entry.repair.name) continue;
      this.replaced('send to another repair', entry.repair, other!);
    }
  }

  /** A joint that is tightened to the torque of another. */
  private otherSpec(clause: ast.ToClause) {
    const step = clause.$container as unknown as ast.ObjectStep;
    if (clause.name === undefined || (step.verb !== 'torque' && step.verb !== 'lock')) return;
    const torques = [...AstUtils.streamAllContents(this.root)].flatMap((node) =>
      node.$type === 'Spec' && (node as ast.Spec).kind === 'torque' ? (node as ast.Spec).name : [],
    );
    const other = torques.find((name) => name !== clause.name!.name);
    if (torques.includes(clause.name.name) && other !== undefined)
      this.replaced('take the figure of another', clause.name, other);
  }

  private otherFluid(clause: ast.InClause) {
    if (clause.name?.name === 'cal-oil') this.replaced('take another fluid', clause.name, 'preserver');
  }

  private replaced(kind: Kind, node: AstNode, text: string) {
    const edit = { start: start(node), end: end(node), text };
    this.add(kind, node, [edit], `${this.words(node)} → ${text} in ${this.line(node)}`);
  }

  /** The words in quotes, taken out of them. */
  private emptied(node: AstNode) {
    const quoted = /"[^"]+"/u.exec(this.cutText(node));
    if (quoted === null) return;
    const from = start(node) + quoted.index;
    this.add('empty the words', node, [{ start: from, end: from + quoted[0].length, text: '""' }]);
  }

  private turned(node: AstNode, from: string, to: string) {
    const word = GrammarUtils.findNodeForKeyword(node.$cstNode, from);
    if (word === undefined) return;
    const edit = { start: word.offset, end: word.end, text: to };
    this.add('turn a limit round', node, [edit], `at ${from} → at ${to} in ${this.line(node)}`);
  }

  // ---- specs -------------------------------------------------------------------------------------------

  private tolerance(limit: ast.NominalLimit) {
    if (limit.tolerance !== undefined) this.add('drop a tolerance', limit, [this.cut(limit.tolerance)]);
  }

  private specValue(node: { value?: ast.SpecValue }) {
    for (const more of node.value?.more ?? [])
      this.add(more.$type === 'SpecSource' ? 'delete a source' : 'delete another clause', more, [this.cut(more)]);
  }

  /** Changes the first quantity of a limit. */
  private quantityOf(limit: AstNode, kind: Kind, change: (quantity: string) => string | null) {
    for (const property of ['value', 'high', 'low']) {
      const node = GrammarUtils.findNodeForProperty(limit.$cstNode, property);
      if (node === undefined) continue;
      const now = change(node.text);
      if (now === null) continue;
      this.add(
        kind,
        limit,
        [{ start: node.offset, end: node.end, text: now }],
        `${node.text} → ${now} in ${this.line(limit)}`,
      );
      return;
    }
  }

  // ---- family ------------------------------------------------------------------------------------------

  private partFact(fact: ast.PartFact) {
    if (fact.$type === 'PartAllow' || fact.$type === 'PartEach') return;
    this.add(
      'drop a fact of the family',
      fact,
      [this.cut(fact)],
      `${this.words(fact)} of ${this.words(fact.$container!)}`,
    );
  }

  private familyItem(node: AstNode) {
    this.add('drop a fact of the family', node, [this.cut(node)]);
    const pieces: [string, string, number][] =
      node.$type === 'Face'
        ? [
            ['finish', 'finish', 0],
            ['meets', 'meets', 1],
            ['guarded', 'guard', 2],
          ]
        : node.$type === 'Port'
          ? [['under', 'under', 1]]
          : node.$type === 'Adjuster'
            ? [['locked', 'lock', 2]]
            : [];
    for (const [keyword, property] of pieces) {
      const value = GrammarUtils.findNodeForProperty(node.$cstNode, property);
      if (value === undefined) continue;
      const head = GrammarUtils.findNodeForKeyword(node.$cstNode, keyword)?.offset ?? value.offset;
      const edit = { start: head, end: value.end, text: '' };
      this.add(
        'drop a fact of the family',
        node,
        [edit],
        `${this.text.slice(edit.start, edit.end)} of ${this.words(node)}`,
      );
    }
    const lists = { ProvenBy: 'tests', Joint: 'traits', Port: 'names' } as Readonly<Record<string, string>>;
    const property = lists[node.$type];
    if (property === undefined) return;
    const items = GrammarUtils.findNodesForProperty(node.$cstNode, property);
    items.forEach((item, index) => {
      if (node.$type !== 'Joint' && items.length === 1) return;
      const from = index === 0 ? item.offset : items[index - 1]!.end;
      const to = index === 0 && items.length > 1 ? items[1]!.offset : item.end;
      this.add(
        'drop a fact of the family',
        node,
        [{ start: from, end: to, text: '' }],
        `${item.text} of ${this.words(node)}`,
      );
    });
  }

  // ---- text --------------------------------------------------------------------------------------------

  /** Takes a node out; with its line where nothing else is on it. */
  private cut(node: AstNode): Edit {
    let [from, to] = [start(node), end(node)];
    const before = this.text.lastIndexOf('\n', from - 1) + 1;
    const after = this.text.indexOf('\n', to);
    const rest = this.text.slice(to, after < 0 ? undefined : after).replace(/\/\/.*$/u, '');
    if (this.text.slice(before, from).trim() === '' && rest.trim() === '') {
      from = before;
      to = after < 0 ? this.text.length : after + 1;
    }
    return { start: from, end: to, text: '' };
  }

  private cutText(node: AstNode): string {
    return this.text.slice(start(node), end(node));
  }

  private words(node: AstNode): string {
    const text = this.cutText(node).replace(/\s+/gu, ' ');
    return text.length > 70 ? `${text.slice(0, 69)}…` : text;
  }

  private line(node: AstNode): string {
    const from = this.text.lastIndexOf('\n', start(node)) + 1;
    const to = this.text.indexOf('\n', from);
    return this.text.slice(from, to).trim().replace(/\s+/gu, ' ').slice(0, 70);
  }

  /** Identifiers in the text of a node. */
  private namesIn(node: AstNode): string[] {
    return this.cutText(node).match(/\p{L}[\p{L}\d_-]*/gu) ?? [];
  }

  private add(kind: Kind, node: AstNode, edits: readonly Edit[], label = this.words(node), names = this.namesIn(node)) {
    const line = this.text.slice(0, start(node)).split('\n').length;
    this.found.push({ kind, file: this.file, edits, label, line, names });
  }
}

function start(node: AstNode): number {
  return node.$cstNode!.offset;
}

function end(node: AstNode): number {
  return node.$cstNode!.end;
}

function isSteps(lines: unknown): lines is readonly ast.StepLine[] {
  return Array.isArray(lines) && lines.length > 0 && (lines[0] as AstNode).$type === 'StepLine';
}

function isLimit(node: AstNode): boolean {
  return ['NominalLimit', 'RangeLimit', 'AtLeast', 'AtMost'].includes(node.$type);
}

/** The same number in a unit of another kind. */
function otherKind(quantity: string): string | null {
  const unit = quantity.replace(/^[\d\s.,+−-]+/u, '');
  if (unit === '' || unit === quantity) return null;
  const other = /bar|psi|Pa/u.test(unit) ? 'N·m' : 'bar';
  return quantity.replace(unit, other);
}

function tenth(quantity: string): string | null {
  const number = /^[\d.]+/u.exec(quantity)?.[0];
  return number === undefined ? null : quantity.replace(number, String(Number(number) / 10));
}

function tripled(quantity: string): string | null {
  const number = /^[\d.]+/u.exec(quantity)?.[0];
  return number === undefined ? null : quantity.replace(number, String(Number(number) * 3));
}
