/** A sheet with one thing taken out or moved: a test that does not complain of it proves nothing. */
import type { Block, Sheet, StepBlock } from '../../language/documents/model.ts';

export interface Spoiled {
  /** `limit`, `step`: what was taken. */
  readonly kind: string;
  readonly where: string;
  readonly sheet: Sheet;
}

/** The sheet once for each thing that can be taken out of it. */
export function spoiledSheets(sheet: Sheet): Spoiled[] {
  const { blocks } = sheet;
  const put = (index: number, ...instead: readonly Block[]): Sheet => ({
    ...sheet,
    blocks: [...blocks.slice(0, index), ...instead, ...blocks.slice(index + 1)],
  });
  return blocks.flatMap((block, index): Spoiled[] => {
    const without = (kind: string, where: string, ...instead: readonly Block[]) => ({
      kind,
      where,
      sheet: put(index, ...instead),
    });
    switch (block.kind) {
      case 'step': {
        const next = blocks[index + 1];
        return [
          without('step', block.number),
          ...stepParts(block).map(({ kind, step }) => without(kind, block.number, step)),
          ...(next?.kind === 'step'
            ? [
                {
                  kind: 'order',
                  where: block.number,
                  sheet: { ...sheet, blocks: blocks.with(index, next).with(index + 1, block) },
                },
              ]
            : []),
        ];
      }
      case 'place':
        return [
          without('place', block.number),
          ...block.warnings.map((_, at) =>
            without('line of a stage', block.number, { ...block, warnings: block.warnings.toSpliced(at, 1) }),
          ),
        ];
      case 'safety':
        return [
          ...block.rows.map(({ text }, at) => without('hazard', text, { ...block, rows: block.rows.toSpliced(at, 1) })),
          ...block.rows.map((row, at) =>
            without('steps of a hazard', row.text, {
              ...block,
              rows: block.rows.with(at, { ...row, steps: row.steps.replace(/^[^,–]+/u, '') }),
            }),
          ),
          ...block.rules.map(({ text }, at) =>
            without('rule', text, { ...block, rules: block.rules.toSpliced(at, 1) }),
          ),
        ];
      case 'repairs':
        return [
          without('repairs', block.repairs.map(({ number }) => number).join()),
          ...block.columns.flatMap(({ parts }, column) =>
            parts.flatMap((part, at) =>
              part.steps.map(({ label }, step) =>
                without('step of a repair', label, {
                  ...block,
                  columns: block.columns.with(column, {
                    ...block.columns[column]!,
                    parts: parts.with(at, { ...part, steps: part.steps.toSpliced(step, 1) }),
                  }),
                }),
              ),
            ),
          ),
          ...block.lookups.map(({ title }, at) =>
            without('table', title, { ...block, lookups: block.lookups.toSpliced(at, 1) }),
          ),
        ];
      case 'log':
        return [without('log', block.title)];
      case 'drawing':
        return [without('drawing', block.title)];
      case 'facts':
        return block.facts.map(({ label }, at) =>
          without(`entry ${label}`, '', { ...block, facts: block.facts.toSpliced(at, 1) }),
        );
      case 'table':
        return block.rows.map((row, at) =>
          without('row', `${block.title}: ${row[0]!.text}`, { ...block, rows: block.rows.toSpliced(at, 1) }),
        );
      default:
        return [];
    }
  });
}

function stepParts(step: StepBlock): { kind: string; step: StepBlock }[] {
  const dropped = <K extends 'limits' | 'cautions' | 'notes'>(kind: string, key: K) =>
    step[key].map((_, at) => ({ kind, step: { ...step, [key]: (step[key] as readonly unknown[]).toSpliced(at, 1) } }));
  // Several limits of a step may have one source; none has it then.
  const bare = step.limits.map((limit) => ({ ...limit, sources: [] }));
  const figures = step.limits.map(({ value }, at) => ({
    kind: 'figure',
    step: {
      ...step,
      limits: step.limits.with(at, { ...step.limits[at]!, value: value.replace(/\d/u, '7 and '), also: '' }),
    },
  }));
  return [
    ...dropped('limit', 'limits'),
    ...dropped('caution', 'cautions'),
    ...dropped('note', 'notes'),
    ...figures,
    ...(step.limits.some(({ sources = [] }) => sources.length > 0)
      ? [{ kind: 'sources', step: { ...step, limits: bare } }]
      : []),
    ...step.facts.map((fact, at) => ({
      kind: `fact ${fact.label}`,
      step: { ...step, facts: step.facts.toSpliced(at, 1) },
    })),
    ...(step.fail === null ? [] : [{ kind: 'fail path', step: { ...step, fail: null } }]),
    ...(step.alert === '' ? [] : [{ kind: 'triangle', step: { ...step, alert: '' } }]),
    ...(step.sign === null ? [] : [{ kind: 'lines', step: { ...step, sign: null } }]),
    ...(step.only === null ? [] : [{ kind: 'only', step: { ...step, only: null } }]),
    { kind: 'sentence', step: { ...step, sentence: [] } },
  ];
}
