import type * as ast from '../grammar/generated/ast.ts';
import type { Job, Unit } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Context } from './context.ts';
import { countOf } from './limits.ts';
import { resultsOf } from './results.ts';
import { dateOf } from './shop.ts';
import { unquoted } from './steps.ts';
import { unreadLine } from './unread.ts';

/** Makes a job plain data. Null where its procedure is not known (reported). */
export function jobOf(
  context: Context,
  node: ast.Job,
  procedures: readonly Procedure[],
  declared: readonly string[],
): Job | null {
  const head = <T extends ast.JobHead>(type: T['$type']) =>
    node.heads.find((other) => other.$type === type) as T | undefined;
  const of = head<ast.OfProcedure>('OfProcedure');
  const received = head<ast.Received>('Received');
  const name = unquoted(node.name);
  const source = context.source(node, 'name');
  if (of === undefined) {
    context.syntax(`Job ${name} does not say of which procedure it is: add of PROCEDURE to its head.`, source);
    return null;
  }
  const procedure = procedures.find((other) => other.name === of.procedure.name);
  if (procedure === undefined) {
    // One that is declared but could not be made plain has been reported at its own place.
    if (!declared.includes(of.procedure.name))
      context.unknown(of.procedure.name, 'procedure', declared, context.source(of.procedure));
    return null;
  }
  context.link(context.source(of.procedure), procedure.source, procedure.name, 'procedure');
  const revision = head<ast.InRevision>('InRevision');
  const written = revision === undefined ? null : unquoted(revision.revision);
  if (revision !== undefined && procedure.revision !== null && written !== procedure.revision) {
    context.syntax(
      `Job ${name} is of revision ${written}, but ${procedure.name} is at revision ${procedure.revision}. Print from the revision that the job was taken in under, or write ${procedure.revision}.`,
      context.source(revision, 'revision'),
      procedure.revision,
    );
  }
  for (const item of node.items) if (item.$type === 'Unread') unreadLine(context, item, ['unit']);
  const units = node.items.flatMap((item) => (item.$type === 'Unit' ? [unitOf(context, item, procedure)] : []));
  context.unique(
    units.map((unit) => ({ name: unit.place, source: unit.source })),
    'unit',
  );
  return {
    name,
    title: node.title ?? name,
    source,
    procedure,
    revision: written ?? procedure.revision,
    customer: head<ast.Customer>('Customer')?.text ?? null,
    received: received === undefined ? null : dateOf(context, received, 'date', received.date),
    units,
  };
}

function unitOf(context: Context, node: ast.Unit, procedure: Procedure): Unit {
  const numberText = node.number === undefined ? 'unknown' : unquoted(node.number.name);
  const number =
    numberText === 'unknown'
      ? null
      : context.find(numberText, 'part number', procedure.numbers, context.source(node.number!));
  countOf(context, node, 'place', node.place, { least: 1, like: 'unit 1' });
  const hold = node.lines.find((line) => line.$type === 'UnitHold') as ast.UnitHold | undefined;
  const written = node.lines.flatMap((line) => (line.$type === 'UnitResults' ? line.results : []));
  const { notes, results } = resultsOf(context, written, procedure);
  return {
    place: node.place,
    number: number?.name ?? null,
    numberText,
    serial: node.serial === undefined ? null : unquoted(node.serial),
    onHold: node.hold ?? hold?.text ?? null,
    note: notes.length === 0 ? null : notes.join(' '),
    results,
    source: context.source(node, 'place'),
  };
}
