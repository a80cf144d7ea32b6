import { waitsForOthers } from '../../analysis/control-flow-graph.ts';
import type { Words } from '../../i18n/index.ts';
import type { Stage, Step } from '../../model/procedure.ts';
import { isGate } from '../../model/steps.ts';
import { capital, titleOf } from '../../model/titles.ts';
import type { Block, BoxRow, CloseBlock, Fact, StepBlock } from '../model.ts';
import { stationTitle } from '../names.ts';
import { type PrintContext, setSize, shownSteps } from '../print-context.ts';
import type { SheetContext } from './context.ts';
import { dangerFigures } from './danger-facts.ts';
import { emptyBoxes, rowOf } from './rows.ts';
import { sectionMessages } from './safety.ts';
import { allowedHere, stepBlock } from './steps.ts';

/** A stage: its head, its steps, and at the last of them who has done it. */
export function stageBlocks(context: SheetContext, stage: Stage): Block[] {
  const { words, procedure, arrangement } = context;
  const steps = shownSteps(context, stage);
  if (steps.length === 0 && stage.steps.length > 0) return [];
  const number = String(procedure.stages.indexOf(stage) + 1);
  const title = capital(titleOf(stage));
  const logged = arrangement.groups.some(({ stages }) => stages.includes(stage));
  const blocks = steps.map((step) => stepBlock(context, step));
  const close = logged ? null : closeRow(context, stage, number);
  return [
    {
      kind: 'place',
      id: `stage-${number}`,
      number,
      title,
      facts: stageFacts(context, stage),
      // The worst is in full where the family is tested, once.
      ...sectionMessages(context, [stage], logged && isFirstLogged(context, stage)),
      texts: [...severalFail(context, steps, logged), ...allowedHere(words, stage.allow)],
      pressure: blocks.some(({ pressure }) => pressure),
      line: { file: stage.source.file, line: stage.source.range.start.line },
    },
    ...closed(blocks, close),
  ];
}

function isFirstLogged({ arrangement }: SheetContext, stage: Stage): boolean {
  return arrangement.groups.some(({ stages }) => stages[0] === stage);
}

function closeRow(context: SheetContext, stage: Stage, number: string): BoxRow {
  const { boxes } = context.words;
  const label = boxes.closed({ stage: number });
  return rowOf(label, '', '', emptyBoxes(stage.together ? 1 : setSize(context)));
}

/** The initials are in the row of the last step. */
function closed(steps: readonly StepBlock[], close: BoxRow | null): Block[] {
  const last = steps.at(-1);
  if (close === null) return [...steps];
  // What is signed says it better.
  if (last?.verb === 'sign-off') return [...closed(steps.slice(0, -1), close), last];
  return last === undefined ? closeBlock(close) : [...steps.slice(0, -1), { ...last, close }];
}

export function closeBlock(row: BoxRow): CloseBlock[] {
  return [{ kind: 'close', row }];
}

/** Station, protective equipment, and whether the set is worked together. */
function stageFacts({ procedure, words }: PrintContext, stage: Stage): Fact[] {
  const station = procedure.shop.stations.find(({ name }) => name === stage.station);
  return [
    ...(stage.station === null ? [] : [{ label: words.place.station, text: stationTitle(procedure, stage.station) }]),
    ...(station?.wear == null ? [] : [{ label: words.place.wear, text: station.wear }]),
    ...(station === undefined ? [] : dangerFigures(words, station)),
    ...(stage.together ? [{ label: words.place.work, text: words.place.together }] : []),
  ];
}

/**
 * What to do where tests of a stage fail, before the first of them: those that wait for each other are all run, and one
 * repair is done; a check is judged at once, and so is a test that says so at its own step.
 */
function severalFail({ words }: { readonly words: Words }, steps: readonly Step[], logged: boolean): string[] {
  const sending = steps.filter(isGate).filter(({ gate }) => gate.onFail.length > 0);
  const waiting = sending.filter(waitsForOthers);
  const repairs = new Set(waiting.flatMap(({ gate }) => gate.onFail.map(({ repair }) => repair)));
  const stops = sending.some(({ gate }) => gate.stopIfFails);
  if (sending.length === 0) return [];
  const { finishFirst, finishOthers, oneRepair, nextLine, nextRow } = words.sections;
  return [
    [
      ...(waiting.length < 2 ? [] : [stops ? finishOthers : finishFirst]),
      ...(waiting.length < 2 || repairs.size < 2 ? [] : [oneRepair]),
      ...(logged ? [nextLine] : sending.some(({ verb }) => verb === 'check' || verb === 'measure') ? [nextRow] : []),
    ].join(' '),
  ].filter((text) => text !== '');
}
