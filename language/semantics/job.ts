import type { AstNode } from 'langium';
import type { Job, ReadingResult, Result, Unit } from '../model/job.ts';
import type { Source } from '../model/source.ts';
import { type Said, say } from '../say/say.ts';
import type * as ast from '../syntax/generated/ast.ts';
import type { Context } from './context.ts';
import { lowerNumber } from './limits.ts';
import { unquoted } from './lower-steps.ts';
import { lookUp } from './procedure.ts';
import { lowerResults } from './results.ts';
import type { Scope } from './scope.ts';
import { lowerDate } from './shop.ts';
import type { Signature } from './signature.ts';
import { unreadLine } from './unread.ts';

/** A job with the name of its procedure. */
export interface LoweredJob extends Omit<Job, 'procedure' | 'newerIssue'> {
  readonly of: string;
  /** The revision as it is written; null: it is not. */
  readonly revisionAt: Source | null;
}

/** Makes a job plain data. Null where its procedure is not known (reported). */
export function lowerJob(context: Context, node: ast.Job, scope: Scope): LoweredJob | null {
  const head = <T extends ast.JobHead>(type: T['$type']) =>
    node.heads.find((other) => other.$type === type) as T | undefined;
  const of = head<ast.OfProcedure>('OfProcedure');
  // Of a head that breaks off, name or date may be missing: that is reported already, and nothing can be made of it.
  if (node.name === undefined) return null;
  const name = unquoted(node.name);
  const source = context.source(node, 'name');
  if (of === undefined) {
    context.syntax(
      'head-incomplete',
      say`Job ${name} does not say which procedure it follows: add of PROCEDURE to its head.`,
      source,
    );
    return null;
  }
  if (of.procedure?.name === undefined) return null;
  const at = head<ast.AtShop>('AtShop');
  const shop = at?.shop?.name === undefined ? null : lookUp(context, at.shop, 'shop', scope.shop(at.shop.name), scope);
  const { name: called } = of.procedure;
  const procedure = scope.signature(called);
  if (procedure === null) {
    if (scope.isDeclared('Procedure', called))
      context.syntax(
        'head-incomplete',
        say`Job ${name} is not checked: ${called} cannot be read yet. Correct what is reported there first.`,
        context.source(of.procedure),
      );
    else context.isUnknown(called, 'procedure', scope.nearest(called, 'Procedure'), context.source(of.procedure));
    return null;
  }
  context.link(context.source(of.procedure), procedure.source, procedure.name, 'procedure');
  if (shop !== null && shop.name !== procedure.shop.name)
    context.syntax(
      'job-mismatch',
      say`Job ${name} is at ${shop.name}, and ${procedure.name} is written for ${procedure.shop.name}: its tools and stations are those of that shop. Write ${procedure.shop.name}, or name a procedure for ${shop.name}.`,
      context.source(at!.shop),
      procedure.shop.name,
    );
  const revision = head<ast.InRevision>('InRevision');
  const written = revision?.revision === undefined ? null : unquoted(revision.revision);
  if (written !== null && procedure.revision !== null && written !== procedure.revision) {
    context.syntax(
      'job-mismatch',
      say`Job ${name} is for revision ${written}, but ${procedure.name} is at revision ${procedure.revision}. Print from the revision that the job was taken in under, or write ${procedure.revision}.`,
      context.source(revision!, 'revision'),
      procedure.revision,
    );
  }
  for (const item of node.items) if (item.$type === 'Unread') unreadLine(context, item, ['unit', 'intake']);
  const units = node.items.flatMap((item) => (item.$type === 'Unit' ? [unitOf(context, item, procedure)] : []));
  context.unique(
    units.map((unit) => ({ name: unit.place, source: unit.source })),
    'unit',
  );
  const customer = head<ast.Customer>('Customer');
  const received = head<ast.Received>('Received');
  const order = head<ast.OrderOf>('OrderOf');
  const came = received?.date === undefined ? null : lowerDate(context, received, 'date', received.date);
  sameSerials(context, units);
  if (came !== null) doneEarlier(context, units, came);
  return {
    name,
    title: node.title ?? name,
    source,
    of: procedure.name,
    revision: written ?? procedure.revision,
    revisionAt: written === null ? null : context.source(revision!, 'revision'),
    customer:
      customer?.text === undefined
        ? null
        : said(context, customer, customer.text, say`Write whose it is: customer "…".`),
    received: came,
    order: order?.order === undefined ? null : unquoted(order.order),
    ...intakeOf(context, node, procedure, written ?? procedure.revision),
    units,
  };
}

/** What was written down for the whole job: facts, and what the masters of the shop read. */
function intakeOf(
  context: Context,
  node: ast.Job,
  procedure: Signature,
  revision: string | null,
): Pick<Job, 'intake' | 'checks'> {
  const { masters } = procedure.shop;
  const lines = node.items.flatMap((item) => (item.$type === 'Intake' ? item.lines : []));
  const { results, notes } = lowerResults(
    context,
    lines.flatMap((line) => (line.$type === 'UnitResults' ? line.results : [])),
    procedure,
    masters,
  );
  const isCheck = (result: Result): result is ReadingResult =>
    result.form === 'reading' && masters.some(({ name }) => name === result.name);
  for (const result of results)
    if (result.form === 'fact' && result.word === 'moved' && result.text !== null && result.text === revision)
      context.syntax(
        'job-mismatch',
        say`The job says that it is at revision ${result.text}, and that it was moved from that one. Write the revision that it was moved from.`,
        result.source,
      );
    else if (result.form !== 'fact' && !isCheck(result))
      context.syntax(
        'result-unreadable',
        say`This belongs to a unit: the intake is for what holds for the whole job. Write it under its unit.`,
        result.source,
      );
  const [first] = lines;
  if (notes.length > 0 && first !== undefined)
    context.syntax(
      'result-unreadable',
      say`A note belongs to a unit. Write it there, or as complaint "…".`,
      context.source(first),
    );
  return { intake: results.filter((one) => one.form === 'fact'), checks: results.filter(isCheck) };
}

function unitOf(context: Context, node: ast.Unit, procedure: Signature): Unit {
  const numberText = node.number === undefined ? 'unknown' : unquoted(node.number.name);
  const number =
    numberText === 'unknown'
      ? null
      : context.find(numberText, 'part number', procedure.numbers, context.source(node.number!));
  const line = node.lines.find((one) => one.$type === 'UnitHold') as ast.UnitHold | undefined;
  const hold = node.hold ?? line?.text;
  if (hold !== undefined)
    said(
      context,
      line ?? node,
      hold,
      say`Write why it is on hold: on hold "…". The certificate shows it to the customer.`,
    );
  const place = lowerNumber(context, node, 'place', node.place);
  if (place !== null && !/^[1-9]\d*$/u.test(place))
    context.syntax(
      'impossible-figure',
      say`Units are counted 1, 2, 3 …, and ${place} is not such a number: the sheet and the certificate name a unit by it. Write its place in the set.`,
      context.source(node, 'place'),
    );
  const written = [
    ...node.results,
    ...node.lines.flatMap((line) => (line.$type === 'UnitResults' ? line.results : [])),
  ];
  const { notes, results } = lowerResults(context, written, procedure);
  return {
    place: node.place,
    number: number?.name ?? null,
    numberText,
    ...serialOf(context, node),
    onHold: hold ?? null,
    note: notes.length === 0 ? null : notes.join(' '),
    results,
    source: context.source(node, 'place'),
  };
}

/** Its serial, or why it has none. */
function serialOf(context: Context, node: ast.Unit): Pick<Unit, 'serial' | 'noSerial'> {
  const { serial, noSerial } = node;
  const none = say`Write why it has none: serial none "ground off". Nothing else leads from the unit to its papers.`;
  if (serial === 'none') {
    const why = said(context, node, noSerial ?? '', none);
    return { serial: null, noSerial: why };
  }
  if (noSerial !== undefined)
    context.syntax(
      'result-unreadable',
      say`There are words after the serial ${serial!}, and they would not be printed. Write them as a note, or serial none "${noSerial}" where it has none.`,
      context.source(node, 'noSerial'),
    );
  if (serial === undefined) return { serial: null, noSerial: null };
  const empty = say`The serial is empty. Write what is on the body, or serial none "…" and why.`;
  return { serial: said(context, node, serial, empty), noSerial: null };
}

/** Words that were written; null: there is nothing in them, which is reported. */
function said(context: Context, node: AstNode, text: string, problem: Said): string | null {
  const words = unquoted(text).trim();
  if (words !== '') return unquoted(text);
  context.syntax('result-unreadable', problem, context.source(node));
  return null;
}

/** One serial is one unit: a second one was read wrong, or typed twice. */
function sameSerials(context: Context, units: readonly Unit[]) {
  for (const [index, { serial, place, source }] of units.entries()) {
    const first = serial === null ? undefined : units.find((other) => other.serial?.trim() === serial.trim());
    if (first === undefined || units.indexOf(first) === index) continue;
    context.syntax(
      'written-twice',
      say`Units ${first.place} and ${place} have the same serial, ${serial!}: nobody could say later which readings belong to which. Read it again from both bodies.`,
      source,
    );
  }
}

/** What is done before the job came in was done to another unit, or a date is wrong. */
function doneEarlier(context: Context, units: readonly Unit[], received: string) {
  for (const result of units.flatMap(({ results }) => results))
    if (result.form === 'done' && result.on !== null && result.on < received)
      context.syntax(
        'wrong-date',
        say`Done on ${result.on}, and the job was received on ${received}: one of the two dates is wrong. Correct it.`,
        result.source,
      );
}
