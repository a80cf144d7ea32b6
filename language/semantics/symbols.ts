import type { AstNode } from 'langium';
import type { Range } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { placeOf, rangeOf, textOf } from '../syntax/place.ts';

/** One line of a file's outline. */
export interface DeclaredSymbol {
  readonly name: string;
  readonly title: string;
  /** The word that declares it: shop, family, stage, part, step, … */
  readonly kind: string;
  /** The names that may be used for it elsewhere: a line of ports declares several, a test that of its reading. */
  readonly declares: readonly DeclaredWord[];
  readonly range: Range;
  readonly nameRange: Range;
  readonly children: readonly DeclaredSymbol[];
}

/** A name that a line declares, where it is written. */
interface DeclaredWord {
  readonly name: string;
  readonly kind: string;
  readonly nameRange: Range;
}

/** What can be searched for: a name that a file declares, with the author's words. */
export interface SearchedName {
  readonly name: string;
  readonly kind: string;
  /** What it is declared in; null at the margin of a file. */
  readonly container: string | null;
  readonly range: Range;
}

/** Steps are no names, and the rest is found by what it is in. */
const leftOut = new Set(['step', 'only', 'joint', 'adjuster']);

/** What can be searched for in an outline, flat. */
export function searchedNames(outline: readonly DeclaredSymbol[], container: string | null = null): SearchedName[] {
  return outline.flatMap(({ name, title, kind, nameRange, children }) => [
    ...(leftOut.has(kind)
      ? []
      : [{ name: title === '' ? name : `${name} ${title}`, kind, container, range: nameRange }]),
    ...searchedNames(children, name),
  ]);
}

/** The outline of a file: what it declares, in order. */
export function collectSymbols(file: ast.File): DeclaredSymbol[] {
  return file.declarations.flatMap((node) => {
    switch (node.$type) {
      case 'Shop':
        return symbol(node, 'shop', node.items.flatMap(item));
      case 'Family':
        return symbol(node, 'family', node.items.flatMap(item));
      case 'Procedure':
        return symbol(node, 'procedure', node.items.flatMap(item));
      case 'Job':
        return symbol(
          node,
          'job',
          node.items.flatMap((unit) =>
            unit.$type === 'Unit' ? made(unit, `unit ${unit.place}`, unit.number?.name ?? '', 'unit', 'place') : [],
          ),
        );
      case 'Sequence':
        return symbol(node, 'sequence', steps(node.lines));
      default:
        return [];
    }
  });
}

function item(node: ast.ShopItem | ast.FamilyItem | ast.ProcedureItem): DeclaredSymbol[] {
  switch (node.$type) {
    case 'Station':
      return symbol(node, 'station');
    case 'Asset':
      return symbol(node, node.kind);
    case 'Fluid':
      return symbol(node, 'fluid');
    case 'Stock':
      return symbol(node, 'stock');
    case 'Master':
      return symbol(node, 'master');
    case 'Part':
      return symbol(node, 'part');
    case 'Assembly':
      return symbol(node, 'assembly');
    case 'Places':
      return symbol(node, 'places');
    case 'Face':
      return made(node, textOf(node.face), node.title ?? '', 'face', 'face');
    case 'Port':
      return made(node, node.names.map((ref) => ref.name).join(', '), '', 'port', 'names').map((port) => ({
        ...port,
        declares: node.names.map((ref) => ({ name: ref.name, kind: 'port', nameRange: rangeOf(ref) })),
      }));
    case 'Joint':
      return made(node, node.part.name, node.thread ?? '', 'joint', 'part');
    case 'Adjuster':
      return made(node, node.part.name, '', 'adjuster', 'part');
    case 'Spec':
      return symbol(node, 'spec');
    case 'PartNumber':
      return made(node, String(node.name).replace(/"/gu, ''), node.title ?? '', 'number', 'name');
    case 'Stage':
      return symbol(node, 'stage', steps(node.lines));
    case 'Repair':
      return symbol(node, 'repair', steps(node.lines));
    case 'Sequence':
      return symbol(node, 'sequence', steps(node.lines));
    default:
      return [];
  }
}

function steps(lines: readonly ast.StepLine[]): DeclaredSymbol[] {
  return lines.flatMap((line) =>
    line.steps.flatMap((step) => {
      if (step.$type === 'Unread' || step.$type === 'Hazard') return [];
      if (step.$type === 'OnlySteps')
        return made(step, `only ${step.numbers.join(', ')}`, '', 'only', 'numbers', steps(step.lines));
      const text = textOf(step).replace(/\s+/gu, ' ');
      const declared = made(step, text.length > 60 ? `${text.slice(0, 59)}…` : text, '', 'step');
      if (step.$type !== 'TestStep') return declared;
      const test = { name: step.name.name, kind: 'test', nameRange: rangeOf(step.name) };
      const workedOut = step.clauses.flatMap((clause) =>
        clause.$type === 'WorkedClause' ? [clause.first, clause.second] : [],
      );
      const parts = workedOut.map((part) => ({ name: part.name, kind: 'test', nameRange: rangeOf(part, 'name') }));
      return declared.map((one) => ({ ...one, declares: [...one.declares, test, ...parts] }));
    }),
  );
}

function symbol(
  node: AstNode & { name: string; title?: string },
  kind: string,
  children: DeclaredSymbol[] = [],
): DeclaredSymbol[] {
  return made(node, node.name, node.title ?? '', kind, 'name', children);
}

function made(
  node: AstNode,
  name: string,
  title: string,
  kind: string,
  property?: string,
  children: readonly DeclaredSymbol[] = [],
): DeclaredSymbol[] {
  if (placeOf(node) === null || name === undefined || name === '') return [];
  const nameRange = rangeOf(node, property);
  return [{ name, title, kind, declares: [{ name, kind, nameRange }], range: rangeOf(node), nameRange, children }];
}
