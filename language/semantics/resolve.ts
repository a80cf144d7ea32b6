import type { Family } from '../model/family.ts';
import type { Job } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Shop } from '../model/shop.ts';
import type { Allow } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { allowsWithin } from './allows.ts';
import type { Body } from './body.ts';
import { Context, type Defect, type Link, type ResolveProblem } from './context.ts';
import { familyOf } from './family.ts';
import { familyUses } from './family-uses.ts';
import { jobOf } from './job.ts';
import { unquoted } from './lower-steps.ts';
import { unusedParameters } from './parameters.ts';
import { procedureOf } from './procedure.ts';
import { shopOf } from './shop.ts';
import { unreadLine } from './unread.ts';

/** A parsed file and the name that it is known by. */
export interface ParsedFile {
  readonly uri: string;
  readonly ast: ast.File;
}

/** All that the files declare, as plain data in trade terms. */
export interface Resolved {
  readonly shops: readonly Shop[];
  readonly families: readonly Family[];
  readonly procedures: readonly Procedure[];
  readonly jobs: readonly Job[];
  /** Every concession, wherever it is. */
  readonly concessions: readonly Allow[];
  readonly problems: readonly ResolveProblem[];
  readonly links: readonly Link[];
  /** Declarations that are missing above because something threw. */
  readonly defects: readonly Defect[];
}

/** Resolves names across files and lowers syntax trees to the model. Never throws. */
export function resolve(files: readonly ParsedFile[]): Resolved {
  const context = new Context();
  for (const file of files) context.register(file.ast, file.uri);
  const declarations = files.flatMap((file) => file.ast.declarations);
  const of = <T extends ast.Declaration>(type: T['$type']) => declarations.filter((node) => node.$type === type) as T[];

  for (const node of of<ast.Unread>('Unread'))
    unreadLine(context, node, ['shop', 'family', 'procedure', 'job', 'sequence']);
  const shops = context.unique(
    of<ast.Shop>('Shop').flatMap(
      (node) => context.attempt('reading this shop', node, () => shopOf(context, node)) ?? [],
    ),
    'shop',
  );
  const familyNodes = new Map(
    of<ast.Family>('Family').flatMap((node) => {
      const family = context.attempt('reading this family', node, () => familyOf(context, node));
      return family === null ? [] : [[family, node] as const];
    }),
  );
  const families = context.unique([...familyNodes.keys()], 'family');
  const declared = of<ast.Procedure>('Procedure').map((node) => ({
    node,
    name: node.name,
    source: context.source(node, 'name'),
  }));
  const procedureNodes = context.unique(declared, 'procedure');
  const sequenceNodes = context.unique(
    of<ast.Sequence>('Sequence').map((node) => ({ node, name: node.name, source: context.source(node, 'name') })),
    'sequence',
  );
  for (const node of declarations)
    for (const item of node.$type === 'Procedure' ? node.items : [node])
      if (item.$type === 'Sequence')
        context.attempt('reading this sequence', item, () => unusedParameters(context, item));
  const byName = new Map(procedureNodes.map(({ name, node }) => [name, node] as const));
  const world = {
    shops,
    families,
    sequences: new Map(sequenceNodes.map(({ node }) => [node.name, node] as const)),
    findProcedure: (name: string) => byName.get(name) ?? null,
    procedures: procedureNodes.map(({ name }) => name),
    numbers: new Set(
      of<ast.Procedure>('Procedure').flatMap(({ items }) =>
        items.flatMap((item) => (item.$type === 'PartNumber' ? [unquoted(item.name)] : [])),
      ),
    ),
    likes: new Map<string, number>(),
    bodies: new Map<ast.Procedure, Body>(),
  };
  const procedures = procedureNodes.flatMap(
    ({ node }) =>
      context.attempt('reading this procedure', node, () =>
        context.readAs(node, () => procedureOf(context, node, world)),
      ) ?? [],
  );
  for (const [family, node] of familyNodes)
    context.attempt('reading this family', node, () => familyUses(context, node, family, shops, procedures));
  const jobs = of<ast.Job>('Job').flatMap(
    (node) =>
      context.attempt('reading this job', node, () => jobOf(context, node, procedures, world.procedures, shops)) ?? [],
  );
  context.unique(
    of<ast.Job>('Job').map((node) => ({
      name: String(node.name).replace(/"/gu, ''),
      source: context.source(node, 'name'),
    })),
    'job',
  );
  const concessions = declarations.flatMap(
    (node) => context.attempt('reading what is allowed', node, () => allowsWithin(context, node)) ?? [],
  );
  const { problems, links, defects } = context;
  return { shops, families, procedures, jobs, concessions, problems, links, defects };
}
