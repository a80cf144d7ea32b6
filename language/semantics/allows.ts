import type { AstNode } from 'langium';
import type { Allow } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { contentsOf } from '../syntax/place.ts';
import type { Context } from './context.ts';

/** What may carry a concession: it applies to the nearest of these around it. */
const statements: ReadonlySet<string> = new Set([
  'Station',
  'Asset',
  'Fluid',
  'Stock',
  'Master',
  'UnlessStated',
  'AirBelow',
  'Acceptance',
  'Part',
  'Face',
  'Port',
  'Joint',
  'Adjuster',
  'ProvenBy',
  'AlwaysChecked',
  'Spec',
  'PartNumber',
  'NumberValues',
  'ObjectStep',
  'BareStep',
  'CleanOutside',
  'CleanHoles',
  'TestStep',
  'AcrossStep',
  'RecordStep',
  'Call',
  'Stage',
  'Repair',
  'Procedure',
]);

/** A concession as plain data, with the statement that it covers. */
export function lowerAllow(context: Context, node: ast.Allow): Allow {
  let around: AstNode = node;
  while (!statements.has(around.$type) && around.$container !== undefined) around = around.$container;
  return {
    rule: node.rule.name,
    because: node.because,
    source: context.source(node),
    extent: context.source(around),
  };
}

/** Every concession inside a declaration. */
export function allowsWithin(context: Context, node: AstNode): Allow[] {
  return [...contentsOf(node)]
    .filter((inner) => inner.$type === 'Allow')
    .map((inner) => lowerAllow(context, inner as ast.Allow));
}
