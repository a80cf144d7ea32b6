import type { Block, Cell, Fact, FailPath, Grid, LimitLine, Sheet, Span, StepBlock } from '../model.ts';

/** Every printed text of a sheet's body, in reading order; what the pages repeat (head and foot) comes first. */
export function renderText(sheet: Sheet): string[] {
  return [...headTexts(sheet), ...sheet.blocks.flatMap(blockTexts)].filter((text) => text.trim() !== '');
}

/** Texts of the page head, in order. */
export function headTexts({ header }: Sheet): string[] {
  return [header.subtitle, header.title, ...header.facts.flatMap(factTexts), header.alarm ?? ''].filter(
    (text) => text.trim() !== '',
  );
}

/** Texts of one block, in reading order. */
export function blockTexts(block: Block): string[] {
  switch (block.kind) {
    case 'heading':
    case 'text':
      return [block.text];
    case 'facts':
      return block.facts.flatMap(factTexts);
    case 'route':
      return [
        block.title,
        ...block.stops.flatMap(({ station, stages }) => [
          station,
          ...stages.flatMap(({ number, title }) => [number, title]),
        ]),
      ];
    case 'drawing':
      return [block.title];
    case 'table':
      return [
        block.title,
        ...block.columns.map(({ head }) => head),
        ...block.rows.flatMap((row) => row.map(({ text }: Cell) => text)),
      ];
    case 'place':
      return [block.number, block.title, ...block.facts.flatMap(factTexts)];
    case 'caution':
      return [block.label, block.text];
    case 'step':
      return stepTexts(block);
    case 'grid':
      return [block.title, ...block.grids.flatMap(gridTexts)];
  }
}

function stepTexts(step: StepBlock): string[] {
  return [
    ...step.cautions.flatMap(blockTexts),
    step.number,
    step.only ?? '',
    spanText(step.sentence),
    ...step.limits.flatMap(limitTexts),
    ...step.lookups.flatMap((lookup) => [
      lookup.title,
      lookup.from,
      ...lookup.pairs.map(({ from }) => from),
      lookup.to,
      ...lookup.pairs.map(({ to }) => to),
    ]),
    ...step.facts.flatMap(factTexts),
    ...step.notes.flatMap(factTexts),
    ...step.grids.flatMap(gridTexts),
    ...step.lines,
    ...(step.fail === null ? [] : failTexts(step.fail)),
  ];
}

function failTexts({ lead, ways, stop }: FailPath): string[] {
  return [
    lead,
    ...ways.flatMap(({ verdict, stops, end }) => [
      verdict,
      ...stops.flatMap(({ number, title, tries, boxes }) => [number, title, tries, ...boxes]),
      end,
    ]),
    stop,
  ];
}

/** The words of a run of spans. */
export function spanText(spans: readonly Span[]): string {
  return spans.map(({ text }) => text).join('');
}

function factTexts({ label, text }: Fact): string[] {
  return [label, text];
}

function limitTexts({ head, label, value, also, source }: LimitLine): string[] {
  return [head, label, value, also, source];
}

function gridTexts(grid: Grid): string[] {
  return [
    grid.title,
    ...grid.columns.flatMap(({ place, detail }) => [place, detail]),
    ...grid.rows.flatMap(({ label, unit }) => [label, unit]),
  ];
}
