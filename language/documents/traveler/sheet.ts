import { usualCautions } from '../../analysis/cautions/index.ts';
import { waitsForOthers } from '../../analysis/control-flow-graph.ts';
import { stationsOf } from '../../analysis/stages.ts';
import type { Words } from '../../i18n/index.ts';
import { fullMessage } from '../../model/diagnostic.ts';
import type { Allow, Procedure, Step } from '../../model/index.ts';
import { isGate } from '../../model/steps.ts';
import { capital, titleOf } from '../../model/titles.ts';
import { acceptanceText } from '../acceptance.ts';
import { concessionsTable } from '../concessions.ts';
import { deriveFigures } from '../figures/step-figures.ts';
import { buildHeader, documentTitle, factsOf, shortHash } from '../header.ts';
import type { Block, Fact, Sheet, TableBlock } from '../model.ts';
import { stationTitle } from '../names.ts';
import { buildPrintContext, type PrintContext, type SheetOptions, shownSteps } from '../print-context.ts';
import { attemptGrids, setGrid, unitGrids } from './boxes.ts';
import { fullCaution, ownCaution } from './cautions.ts';
import { buildDrawings } from './drawings.ts';
import { backText, repairWords } from './fail-path.ts';
import { fluidsTable, numberTitles, renewTable, toolsTable, unitsTable } from './lists.ts';
import { buildRoute } from './route.ts';
import { setPage } from './set-page.ts';
import { stepBlock } from './steps.ts';

/**
 * The traveler of a procedure, for a job or blank: plain data, every word in the order in which it is read. Pure: the
 * same procedure and options give the same sheet.
 */
export function buildSheet(procedure: Procedure, options: SheetOptions): Sheet {
  const setting = buildPrintContext(procedure, options);
  const { words } = setting;
  const cautions = usualCautions(procedure);
  const draft = options.draft || options.diagnostics.some(({ severity }) => severity === 'error');
  const stations = stationsOf(procedure);
  const figures = deriveFigures(setting, cautions);
  const stages = procedure.stages.flatMap((stage, index): Block[] => {
    const steps = shownSteps(setting, stage);
    if (steps.length === 0 && stage.steps.length > 0) return [];
    return [
      {
        kind: 'place',
        form: 'stage',
        id: `stage-${index + 1}`,
        number: String(index + 1),
        title: capital(titleOf(stage)),
        facts: placeFacts(setting, stage.station === null ? [] : [stage.station], [
          {
            label: words.place.work,
            text: stage.together ? words.place.together : words.place.one,
          },
        ]),
        line: { file: stage.source.file, line: stage.source.range.start.line },
      },
      ...severalFail(setting, steps),
      ...allowedHere(words, stage.allow),
      ...(cautions.stages.get(stage.name) ?? []).map((one) => fullCaution(words, one)),
      ...steps.map((step) => stepBlock(setting, figures.get(step)!, false)),
      {
        kind: 'grid',
        title: words.boxes.stageDone({ stage: words.inSentence(titleOf(stage)) }),
        grids: stage.together ? setGrid(words) : unitGrids(setting, '', [{ label: words.boxes.done, unit: '' }]),
      },
    ];
  });
  const repairs = procedure.repairs.flatMap((repair, index): Block[] => {
    const steps = shownSteps(setting, repair);
    if (steps.length === 0 && repair.steps.length > 0) return [];
    const tries =
      repair.tries === null || !Number.isFinite(repair.tries) ? words.place.unlimited : String(repair.tries);
    return [
      {
        kind: 'place',
        form: 'repair',
        id: `repair-${index + 1}`,
        number: `R${index + 1}`,
        title: capital(repairWords(setting, repair.name)),
        facts: placeFacts(
          setting,
          [...stations.get(repair)!].filter((station) => station !== null),
          [
            { label: words.place.tries, text: tries },
            { label: words.place.back, text: backText(setting, repair.name) },
          ],
        ),
        line: {
          file: repair.source.file,
          line: repair.source.range.start.line,
        },
      },
      ...allowedHere(words, repair.allow),
      ...(cautions.repairs.get(repair.name) ?? []).map((one) => fullCaution(words, one)),
      ...steps.map((step) => stepBlock(setting, figures.get(step)!, true)),
      {
        kind: 'grid',
        title: words.boxes.attempts({ repair: `R${index + 1}` }),
        grids: attemptGrids(setting, figures, repair),
      },
    ];
  });
  const blocks: (Block | null)[] = [
    draft ? { kind: 'text', text: words.draftLine, strong: true } : null,
    { kind: 'text', text: words.first, strong: true },
    factsOf(setting),
    findingsTable(setting),
    buildRoute(setting),
    unitsTable(setting),
    numberTitles(setting),
    renewTable(setting),
    toolsTable(setting),
    acceptanceText(setting),
    fluidsTable(setting),
    ...buildDrawings(setting, figures),
    ...procedure.hazards.map((one) => ownCaution(words, one)),
    ...stages,
    setPage(setting),
    repairs.length === 0 ? null : { kind: 'heading', text: words.sections.repairs },
    ...repairs,
    concessionsTable(setting),
  ];
  return {
    language: words.language,
    paper: options.paper,
    title: documentTitle(setting),
    watermark: draft ? words.draft : null,
    header: buildHeader(setting),
    firstAid: cautions.pressure ? words.firstAid : null,
    foot: words.foot({ hash: shortHash(options.hash) }),
    pageWords: { page: words.page, of: words.of },
    blocks: blocks.filter((block) => block !== null),
  };
}

/** Stations, protective equipment, and what else is at the head of a stage or repair. */
function placeFacts({ procedure, words }: PrintContext, stations: readonly string[], more: readonly Fact[]): Fact[] {
  const found = procedure.shop.stations.filter(({ name }) => stations.includes(name));
  const wear = [...new Set(found.flatMap((station) => station.wear ?? []))];
  const titles = stations.map((station) => stationTitle(procedure, station));
  return [
    ...(titles.length === 0 ? [] : [{ label: words.place.station, text: titles.join(' / ') }]),
    ...more,
    ...(wear.length === 0 ? [] : [{ label: words.place.wear, text: wear.join(' / ') }]),
  ];
}

/**
 * What to do where tests of a stage fail, printed before the first of them: those that wait for each other are all run, and
 * one repair is done; a check is judged at once, and so is a test that says so at its own step.
 */
function severalFail({ words }: PrintContext, steps: readonly Step[]): Block[] {
  const sending = steps.filter(isGate).filter(({ gate }) => gate.onFail.length > 0);
  const waiting = sending.filter(waitsForOthers);
  const repairs = new Set(waiting.flatMap(({ gate }) => gate.onFail.map(({ repair }) => repair)));
  const stops = sending.some(({ gate }) => gate.stopIfFails);
  if (sending.length === 0) return [];
  const { finishFirst, finishOthers, oneRepair, whereToWrite } = words.sections;
  const text = [
    ...(waiting.length < 2 ? [] : [stops ? finishOthers : finishFirst]),
    ...(waiting.length < 2 || repairs.size < 2 ? [] : [oneRepair]),
    whereToWrite,
  ];
  return [{ kind: 'text', text: text.join(' '), strong: false }];
}

/** Warnings that the procedure is printed with; on a draft, errors too. */
function findingsTable({ options, words }: PrintContext): TableBlock | null {
  const { title, kind, step, message, error, warning } = words.diagnostics;
  const open = options.diagnostics.filter(({ severity }) => severity !== 'hint');
  if (open.length === 0) return null;
  return {
    kind: 'table',
    title,
    columns: [
      { head: kind, share: 2 },
      { head: step, share: 1 },
      { head: message, share: 9 },
    ],
    rows: open.map((diagnostic) => [
      { text: diagnostic.severity === 'error' ? error : warning, strong: true },
      { text: diagnostic.step ?? '' },
      { text: fullMessage(diagnostic) },
    ]),
  };
}

/** Concessions on a whole stage or repair, at its head. */
function allowedHere(words: Words, allow: readonly Allow[]): Block[] {
  return allow.map(({ rule, because }) => ({
    kind: 'text',
    text: `${words.facts.allowed}: ${rule} ${words.facts.because} ${because}`,
    strong: false,
  }));
}
