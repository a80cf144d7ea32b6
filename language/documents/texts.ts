import { spanText } from '../i18n/message.ts';
import type {
  Block,
  BoxRow,
  Cell,
  Fact,
  FailPath,
  LimitLine,
  Lookup,
  RepairsBlock,
  Sheet,
  SignBoxes,
  StepBlock,
} from './model.ts';

/** Every printed text of a sheet's body, in reading order; what the pages repeat (head and foot) comes first. */
export function renderText(sheet: Sheet): string[] {
  return [...headTexts(sheet), ...sheet.blocks.flatMap(blockTexts)].filter((text) => text.trim() !== '');
}

/** Texts of the page head, in order. */
export function headTexts({ header }: Sheet): string[] {
  return [header.title, header.subtitle, ...header.facts.flatMap(factTexts), header.alarm ?? ''].filter(
    (text) => text.trim() !== '',
  );
}

/** Texts of one block, in reading order. */
export function blockTexts(block: Block): string[] {
  switch (block.kind) {
    case 'page':
      return [];
    case 'heading':
    case 'text':
      return [block.text];
    case 'facts':
      return block.facts.flatMap(factTexts);
    case 'drawing':
      return [block.title];
    case 'table':
      return [
        block.title,
        ...block.columns.map(({ head }) => head),
        ...block.rows.flatMap((row) => row.map(({ text }: Cell) => text)),
      ];
    case 'tables':
      return block.tables.flatMap(blockTexts);
    case 'safety':
      return [
        block.title,
        block.lead,
        block.read,
        block.firstAid ?? '',
        ...block.rows.flatMap(({ label, text, steps }) => [label, text, block.where, steps]),
        ...block.rules.flatMap(({ label, text }) => [label, text]),
      ];
    case 'place':
      return [
        block.number,
        block.title,
        ...block.facts.flatMap(factTexts),
        ...(block.danger === null ? [] : [block.danger.label, block.danger.text]),
        ...block.warnings.flatMap(({ label, text }) => [label, text]),
        ...block.texts,
      ];
    case 'step':
      return stepTexts(block);
    case 'close':
      return rowTexts(block.row);
    case 'repairs':
      return repairsTexts(block);
    case 'log':
      return [
        block.title,
        block.lead,
        block.unit,
        ...block.columns.flatMap(({ step, name, unit }) => [step, name, unit]),
        ...block.units.flatMap(({ lines }) => lines.flatMap(({ head, cells }) => [...head, ...cells])),
        ...block.advice.flatMap(factTexts),
        ...block.fails.flatMap(factTexts),
        block.foot,
      ];
  }
}

/** Texts of a step, in reading order. */
export function stepTexts(step: StepBlock): string[] {
  const heads = step.limits.filter(({ head }) => head !== '').length;
  const [headed, wide] = [heads > 0, heads > 1];
  const path = step.fail === null ? [] : failTexts(step.fail);
  return [
    step.number,
    ...step.cautions.flatMap(({ label, text }) => [label, text]),
    step.only ?? '',
    spanText(step.sentence),
    ...(headed ? [] : step.limits.flatMap(limitTexts)),
    ...step.facts.flatMap(factTexts),
    ...step.notes.flatMap(factTexts),
    ...(headed && !wide ? step.limits.flatMap(limitTexts) : []),
    ...path,
    ...step.rows.flatMap(rowTexts),
    ...(step.close === null ? [] : rowTexts(step.close)),
    ...(step.set === null ? [] : [...step.set.heads, ...step.set.rows.flatMap(rowTexts)]),
    ...(wide ? step.limits.flatMap(limitTexts) : []),
    ...step.lookups.flatMap(lookupTexts),
    ...step.tables.flatMap(blockTexts),
    ...(step.sign === null ? [] : signTexts(step.sign)),
  ];
}

function rowTexts({ label, unit, boxes }: BoxRow): string[] {
  return [label, unit, ...boxes];
}

function signTexts({ statement, boxes }: SignBoxes): string[] {
  return [statement, ...boxes.map(({ label }) => label)];
}

function lookupTexts({ title, from, to, pairs, besides = [] }: Lookup): string[] {
  const others = besides.flatMap((row) => [row.from, ...row.reads]);
  return [title, from, ...pairs.map((pair) => pair.from), ...others, to, ...pairs.map((pair) => pair.to)];
}

function failTexts({ ways, stop }: FailPath): string[] {
  return [
    ...ways.flatMap(({ mark, when, stops, end }) => [
      mark,
      when,
      ...stops.flatMap(({ number, title, tries, steps, back }) => [
        number,
        title,
        ...(steps.length === 1 ? inlineTexts(steps[0]!) : []),
        tries,
        back,
        ...(steps.length > 1 ? steps.flatMap((step) => [step.number, ...inlineTexts(step)]) : []),
      ]),
      end,
    ]),
    stop,
  ];
}

/** A step in a line of others. */
function inlineTexts(step: StepBlock): string[] {
  return [
    ...step.cautions.flatMap(({ label, text }) => [label, text]),
    step.only ?? '',
    spanText(step.sentence),
    ...step.limits.flatMap(({ head, ...limit }) => [head, ...limitTexts({ ...limit, head: '' })]),
    ...step.facts.flatMap(factTexts),
    ...step.notes.flatMap(factTexts),
  ];
}

function repairsTexts({ repairs, back: after, facts, warnings, columns, lookups, advice }: RepairsBlock): string[] {
  return [
    ...repairs.flatMap(({ number, title, tries, back }) => [number, title, tries, back]),
    after,
    ...repairs.flatMap(({ number, texts }) => texts.flatMap((text) => [number, text])),
    ...facts.flatMap(factTexts),
    ...warnings.flatMap(({ label, text }) => [label, text]),
    ...columns.flatMap(({ parts }) =>
      parts.flatMap(({ title, steps }) => [
        title,
        ...steps.flatMap(({ label, step }) => [
          label,
          ...inlineTexts(step),
          ...(step.fail === null ? [] : failTexts(step.fail)),
          ...(step.sign === null ? [] : signTexts(step.sign)),
        ]),
      ]),
    ),
    ...lookups.flatMap(lookupTexts),
    ...advice.flatMap(factTexts),
  ];
}

function factTexts({ label, text, sources }: Fact): string[] {
  return [label, text, refText(sources)];
}

function limitTexts({ head, label, value, also, sources }: LimitLine): string[] {
  return [head, label, value, refText(sources), also];
}

/** `[a][b]` */
export function refText(sources: readonly string[] = []): string {
  return sources.map((letter) => `[${letter}]`).join('');
}
