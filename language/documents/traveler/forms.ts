/** What each form of a sheet has of what there is to say, and in which order. */

import { spanText } from '../../i18n/message.ts';
import type { Repair, Stage } from '../../model/procedure.ts';
import { acceptanceText } from '../acceptance.ts';
import { concessionsTable } from '../concessions.ts';
import { factsOf, shortHash } from '../header.ts';
import type {
  Block,
  Fact,
  FailPath,
  FailStop,
  LogBlock,
  PageBlock,
  Paper,
  RepairColumn,
  RepairsBlock,
  StepBlock,
  TableBlock,
} from '../model.ts';
import { repairNumber } from '../names.ts';
import type { SheetPart } from '../print-context.ts';
import type { SheetContext } from './context.ts';
import { isDraft } from './draft.ts';
import { explodedView, stageStrips } from './drawings.ts';
import { findingsTable } from './findings.ts';
import { fluidsTable, numberTitles, peopleTable, renewTable, routeTable, toolBlocks, unitsTable } from './lists.ts';
import { logBlock, moreLines } from './log.ts';
import { repairBlocks } from './repairs.ts';
import { over } from './room.ts';
import { safetyBlock } from './safety.ts';
import { sourcesHere } from './sources.ts';
import { specsTable } from './specs-table.ts';
import { closeBlock, stageBlocks } from './stages.ts';

const newPage: PageBlock = { kind: 'page', side: 'any' };
/** Two pages that lie open together. */
const spread: PageBlock = { kind: 'page', side: 'left' };

type Maybe = Block | null;
const present = (blocks: readonly Maybe[]): Block[] => blocks.filter((block) => block !== null);

/** All of it: front, what can hurt, the stages, tests and log side by side, the rest. */
export function cardBlocks(context: SheetContext): Block[] {
  const work = workBlocks(context);
  const safety = safetyBlock(context);
  // One unit that was added later has the lists and the drawings of its set.
  if (context.options.unit != null)
    return present([...unitFront(context), safety, newPage, ...work.blocks, ...work.more, concessionsTable(context)]);
  return present([
    ...frontBlocks(context),
    newPage,
    safety,
    ...explodedView(context, safety),
    ...beforeSpread(work.blocks, stageStrips(context)),
    ...work.more,
    concessionsTable(context),
  ]);
}

/** Pictures fill the page that is left over before two that lie open together. */
function beforeSpread(blocks: readonly Block[], pictures: readonly Block[]): Block[] {
  const at = blocks.findIndex((block) => block.kind === 'page' && block.side === 'left');
  return at < 0 ? [...pictures, ...blocks] : [...blocks.slice(0, at), ...pictures, ...blocks.slice(at)];
}

/** What is written down for a job. */
export function recordBlocks(context: SheetContext): Block[] {
  const { words } = context;
  const work = workBlocks(context, true);
  const { name, revision } = context.procedure;
  return present([
    ...frontBlocks(context, [
      {
        label: words.record.instruction,
        text: words.record.by({
          name,
          revision: revision ?? words.header.noRevision,
          hash: shortHash(context.options.hash),
        }),
      },
      { label: words.record.read, text: '' },
    ]),
    newPage,
    ...work.blocks,
    ...work.more,
  ]);
}

/** What is done and why, for the wall of the station: no boxes, nothing of a job. */
export function instructionBlocks(context: SheetContext): Block[] {
  const { procedure, options } = context;
  const here = (stage: Stage) => options.station == null || stage.station === options.station;
  const groups = context.arrangement.groups;
  const safety = safetyBlock(context);
  const stages = procedure.stages.flatMap((stage): Block[] => {
    if (!here(stage)) return [];
    const group = groups.find((one) => one.stages.at(-1) === stage);
    const repairs = group?.repairs ?? context.arrangement.after.get(stage) ?? [];
    return [...stageBlocks(context, stage), ...repairBlocks(context, repairs, stage)].map(wordsOnly);
  });
  return present([
    ...openingBlocks(context),
    factsOf(context),
    safety,
    ...(options.station == null ? [...explodedView(context, safety), ...stageStrips(context)] : []),
    numberTitles(context),
    sourcesHere,
    ...stages,
    ...toolBlocks(context),
    fluidsTable(context),
    acceptanceText(context),
    concessionsTable(context),
  ]);
}

/** One thing alone. */
export function partBlocks(context: SheetContext, part: SheetPart): Block[] {
  const { procedure } = context;
  if (part === 'specs') return present([...openingBlocks(context), specsTable(context), sourcesHere]);
  if (part === 'drawing')
    return present([...openingBlocks(context), ...explodedView(context), ...stageStrips(context)]);
  const repair = procedure.repairs.find(({ name }) => repairNumber(procedure, name) === part);
  const stage = procedure.stages[0];
  if (repair === undefined || stage === undefined) return openingBlocks(context);
  return present([...openingBlocks(context), ...repairBlocks(context, [repair], stage), sourcesHere]);
}

/** What comes before everything else. */
function openingBlocks(context: SheetContext): Block[] {
  const { words } = context;
  return present([
    isDraft(context) ? { kind: 'text', text: words.draftLine, strong: true } : null,
    { kind: 'text', text: words.first, strong: true },
  ]);
}

function frontBlocks(context: SheetContext, own: readonly Fact[] = []): Maybe[] {
  const { words } = context;
  const front = factsOf(context);
  const onRecord = own.length > 0;
  return [
    ...openingBlocks(context),
    { ...front, facts: [...front.facts, ...own] },
    findingsTable(context),
    // Boxes take what they know of the units first: what is left is said here.
    unitsTable(context),
    numberTitles(context),
    routeTable(context),
    ...toolBlocks(context),
    ...listsBesides(context, onRecord),
    // What is said on the wall is not said again where things are written down.
    onRecord ? null : acceptanceText(context),
    { kind: 'text', text: words.boxes.legend, strong: false },
    sourcesHere,
  ];
}

/** The front of one unit that was added later. */
function unitFront(context: SheetContext): Maybe[] {
  return [
    ...openingBlocks(context),
    factsOf(context),
    findingsTable(context),
    unitsTable(context),
    renewTable(context),
    { kind: 'text', text: context.words.boxes.legend, strong: false },
    sourcesHere,
  ];
}

/** Rows of a list that leave room for who worked on it beside them, under the fluids. */
const leavesRoom = 3;

/** Small tables beside each other. */
function listsBesides(context: SheetContext, onRecord: boolean): Block[] {
  const [renew, fluids] = [renewTable(context), onRecord ? null : fluidsTable(context)];
  if (renew === null || fluids === null) return present([renew ?? fluids, peopleTable(context)]);
  const beside = renew.rows.length - fluids.rows.length >= leavesRoom;
  return beside
    ? [{ kind: 'tables', tables: [renew, fluids, peopleTable(context, 1)] }]
    : [{ kind: 'tables', tables: [renew, fluids] }, peopleTable(context)];
}

/** Stages and repairs in the order of the work. */
function workBlocks(context: SheetContext, recordOnly = false): { blocks: Block[]; more: Block[] } {
  const { procedure, arrangement } = context;
  const blocks: Block[] = [];
  const more: LogBlock[] = [];
  const kept = (list: readonly Block[]) => (recordOnly ? list.flatMap(recorded) : list);
  const repairs = (list: readonly Repair[], stage: Stage) =>
    recordOnly ? repairBlocks(context, list, stage).flatMap(signedOnly) : repairBlocks(context, list, stage);
  for (const stage of procedure.stages) {
    const group = arrangement.groups.find(({ stages }) => stages.includes(stage));
    if (group === undefined) {
      blocks.push(...kept(stageBlocks(context, stage)));
      blocks.push(...repairs(arrangement.after.get(stage) ?? [], stage));
      continue;
    }
    if (group.stages[0] !== stage) continue;
    const own = group.stages.map((one) => kept(stageBlocks(context, one)));
    // Nobody signs before the log is written.
    const signed = recordOnly ? own.at(-1)!.filter((block) => block.kind === 'step' && block.sign !== null) : [];
    const tests = own.flat().filter((block) => !signed.includes(block));
    const repaired = repairs(
      [...group.repairs, ...group.stages.flatMap((one) => arrangement.after.get(one) ?? [])],
      group.stages.at(-1)!,
    );
    const log = logBlock(context, group);
    const printed = recordOnly ? log : { ...log, fails: [] };
    blocks.push(...opened(context.options.paper, blocks, { tests, repaired, log: printed, signed }, recordOnly));
    if (log.needed > (log.units[0]?.lines.length ?? log.needed)) more.push(moreLines(log, context, 4));
  }
  return { blocks: blocks.filter((block, index) => block.kind !== 'page' || blocks[index + 1]?.kind !== 'page'), more };
}

interface Tested {
  readonly tests: readonly Block[];
  readonly repaired: readonly Block[];
  readonly log: LogBlock;
  readonly signed: readonly Block[];
}

/** Of a page: room is reckoned, and a log that does not go on it would be overleaf. */
const spare = 0.1;

/**
 * Tests, repairs and log so that no page is turned for a repair: on one page where they go on one, that of what is before them
 * if it has the room; else the log lies opposite the tests, and the repairs with them as far as the page goes.
 */
function opened(
  paper: Paper,
  before: readonly Block[],
  { tests, repaired, log, signed }: Tested,
  recordOnly: boolean,
): Block[] {
  const whole = [...tests, ...repaired, log, ...signed];
  const begun = before.findLastIndex(({ kind }) => kind === 'page');
  // A record begins on a page of its own. Tests that begin on the left take two.
  const pages = (before[begun] === spread ? 2 : 1) - spare;
  if ((begun >= 0 || recordOnly) && over(paper, before.slice(begun + 1), whole, pages) === 0) return whole;
  // A small one stays whole by itself, on whichever of the two pages has the room.
  const page = log.large ? [newPage] : [];
  if (recordOnly) return [...tests, ...page, log, ...repaired, ...signed];
  if (over(paper, [], whole, 1 - spare) === 0) return [newPage, ...whole];
  const fitting = log.large ? repaired.length - over(paper, tests, repaired) : repaired.length;
  return [spread, ...tests, ...repaired.slice(0, fitting), ...page, log, ...repaired.slice(fitting)];
}

/** On a record: what is written down, what it is held to and where a unit goes that fails. */
function recorded(block: Block): Block[] {
  switch (block.kind) {
    case 'place':
      return [];
    case 'step': {
      const { rows, set, sign, close, logged, tables } = block;
      const own = tables.length > 0 || rows.length > 0 || set !== null || sign !== null;
      const closing = close === null ? [] : closeBlock(close);
      // What is signed has its boxes here, in whichever stage it is.
      if ((logged && sign === null && tables.length === 0) || !own) return closing;
      const facts = block.facts.filter(({ sources }) => sources !== undefined);
      return [{ ...block, alert: '', cautions: [], notes: [], lookups: [], facts, fail: briefPath(block.fail), close }];
    }
    default:
      return [block];
  }
}

/** What a repair does is said by the instruction. */
function briefPath(path: FailPath | null): FailPath | null {
  if (path === null) return null;
  const stop = (one: FailStop): FailStop => ({
    ...one,
    title: one.title === '' && one.steps.length > 0 ? spanText(one.steps[0]!.sentence) : one.title,
    steps: [],
  });
  return { ...path, ways: path.ways.map((way) => ({ ...way, stops: way.stops.map(stop) })) };
}

/** What is read and what it is held to, without the boxes; of tables that differ in their boxes alone one is enough. */
function withoutBoxes(table: TableBlock, index: number, all: readonly TableBlock[]): TableBlock[] {
  const bare = (one: TableBlock): TableBlock => {
    const boxed = new Set(one.rows.flatMap((row) => row.flatMap(({ fill }, at) => (fill === true ? [at] : []))));
    return {
      ...one,
      columns: one.columns.filter((_, at) => !boxed.has(at)),
      rows: one.rows.map((row) => row.filter((_, at) => !boxed.has(at))),
    };
  };
  const made = bare(table);
  const same = (other: TableBlock) => JSON.stringify(bare(other).rows) === JSON.stringify(made.rows);
  return made.columns.length < 2 || all.slice(0, index).some(same) ? [] : [made];
}

/** Of repairs a record has what is signed. */
function signedOnly(block: RepairsBlock): RepairsBlock[] {
  const columns = block.columns.flatMap((column) => {
    const parts = column.parts.flatMap((part) => {
      const steps = part.steps.filter(({ step }) => step.sign !== null);
      return steps.length === 0 ? [] : [{ ...part, steps }];
    });
    return parts.length === 0 ? [] : [{ ...column, parts }];
  });
  return columns.length === 0 ? [] : [{ ...block, columns, facts: [], warnings: [], lookups: [], advice: [] }];
}

/** On an instruction nothing is written. */
function wordsOnly(block: Block): Block {
  if (block.kind === 'repairs') {
    const unsigned = (steps: RepairColumn['parts'][number]['steps']) =>
      steps.map((one) => ({ ...one, step: { ...one.step, sign: null } }));
    return {
      ...block,
      columns: block.columns.map((column) => ({
        ...column,
        parts: column.parts.map((part) => ({ ...part, steps: unsigned(part.steps) })),
      })),
    };
  }
  if (block.kind !== 'step') return block;
  const step: StepBlock = {
    ...block,
    tables: block.tables.flatMap(withoutBoxes),
    rows: [],
    set: null,
    sign: null,
    close: null,
    logged: false,
  };
  return step;
}
