import type { Words } from '../../i18n/index.ts';
import { ceilingText } from '../../i18n/limit-words.ts';
import type { LimitUse, Step, TestFigures } from '../../model/procedure.ts';
import { specFor } from '../../model/spec-for.ts';
import { isAsFound, limitUses, own } from '../../model/steps.ts';
import { capital, titleOf } from '../../model/titles.ts';
import type { Which } from '../figures/held.ts';
import { holdWords } from '../figures/hold-words.ts';
import { conditionFigure, type LimitFigure, lineOf as lineOfFigure } from '../figures/limit-figure.ts';
import { objectWords, specTitle } from '../names.ts';
import { type CompletedCell, lineOf, wordsCell } from './cells.ts';
import {
  type Cells,
  condition,
  figure,
  heldAt,
  type Layout,
  limit,
  merged,
  nothing,
  specOf,
  written,
} from './layout.ts';
import type { SpecFigure, SpecItem } from './model.ts';

export function tests(layout: Layout): SpecItem[] {
  const { words } = layout.setting;
  const adjusted = new Set(layout.procedure.family.adjusters.map(({ sets }) => sets));
  const byName = new Map<string, CompletedCell[]>();
  for (const done of layout.done) {
    const { step } = done;
    const name =
      step.verb === 'test' || step.verb === 'across'
        ? step.gate.test
        : step.verb === 'read' || (step.verb === 'set' && !adjusted.has(step.reading))
          ? step.reading
          : null;
    if (name === null) continue;
    byName.set(name, [...(byName.get(name) ?? []), done]);
  }
  // A test is listed where it is made, not where its reading was written down before.
  const first = (dones: readonly CompletedCell[]) =>
    layout.done.indexOf(dones.find(({ step }) => step.verb === 'test') ?? dones[0]!);
  const inOrder = [...byName].sort(([, a], [, b]) => first(a) - first(b));
  const items = inOrder.map(([name, dones]): SpecItem => {
    const accepts = dones.flatMap(({ step }) => [
      ...('gauge' in step && step.gauge !== null
        ? [`${words.inSentence(words.facts.gauge)} ${words.facts[step.gauge]}`]
        : []),
      ...lookFacts(words, step),
    ]);
    return {
      title: capital(specTitle(layout.procedure, name)),
      facts: [...new Set(accepts)],
      line: lineOf(dones[0]!.step.source),
      figures: merged(testFigures(layout, dones, name)),
    };
  });
  return items.filter(({ figures }) => figures.length > 0);
}

function testFigures(layout: Layout, dones: readonly CompletedCell[], name: string): SpecFigure[] {
  const { words } = layout.setting;
  const { what, missing } = words.specs;
  const foundSteps = dones.some(({ step }) => isAsFound(step));
  return dones.flatMap((done) => {
    const { step, where } = done;
    const test = own(step, 'test');
    const figures: SpecFigure[] = [];
    const use = own(step, 'limit') ?? (step.verb === 'read' ? specOf(layout, name, step.source) : null);
    if (use !== null)
      figures.push(
        ...readings(
          layout,
          done,
          use,
          what.read,
          foundSteps ? ['rebuilt', 'whenNew'] : ['rebuilt', 'whenNew', 'inService'],
        ),
      );
    else if (test?.reads != null && limitUses(step).length === 0)
      figures.push(nothing(layout, done, what.read, missing.limit));
    figures.push(...pointFigures(layout, done, what.read));
    const { hold, from, to, forTime, at } = done.figures.conditions;
    const { inTime, spread, ceiling } = done.figures;
    const add = (label: string, of: LimitFigure | null, value = of === null ? '' : lineOfFigure(of)) => {
      if (of !== null) figures.push(condition(layout, done, label, of, value));
    };
    if (test?.hold != null && hold !== null) add(what.hold, hold, holdWords(layout.setting, test.hold, hold));
    add(what.from, from);
    add(what.to, to);
    if (inTime !== null) figures.push(written(layout, done, what.inTime, inTime));
    add(what.forTime, forTime);
    const { figuresAt } = done.figures;
    add(what.at, at);
    if (figuresAt.length > 0)
      figures.push(figure(layout, what.at, done, () => wordsCell(figuresAt.join(', '), lineOf(step.source))));
    if (spread !== null) figures.push(written(layout, done, what.spread, spread));
    if (ceiling !== null) {
      const { most, unit } = ceiling;
      const of = conditionFigure(layout.setting, step, where, { form: 'at most', most });
      add(what.never, of, ceilingText(words, most, unit));
    }
    if (test != null && isTimedOnly(test)) figures.push(nothing(layout, done, what.hold, missing.pressure));
    // A test by eye has no figure, and still is one of the tests.
    if (figures.length === 0 && step.verb === 'test') {
      const cell = step.accept === null ? null : wordsCell(step.accept, lineOf(step.source));
      figures.push(
        cell === null
          ? nothing(layout, done, what.looked, missing.limit)
          : figure(layout, what.looked, done, () => cell),
      );
    }
    return figures;
  });
}

/** What is read at each point, and how far its places may lie apart. */
function pointFigures(layout: Layout, done: CompletedCell, read: string): SpecFigure[] {
  const { words } = layout.setting;
  const { what } = words.specs;
  return (done.figures.plan?.points ?? []).flatMap(({ point, at, spread }): SpecFigure[] => {
    const title = point === null ? '' : `${titleOf(point)}${at.length === 0 ? '' : ` (${at.join(', ')})`}: `;
    return [
      ...(point?.limit == null
        ? []
        : readings(layout, done, point.limit, `${title}${words.inSentence(read)}`, ['rebuilt'])),
      ...(spread === null ? [] : [written(layout, done, `${title}${words.inSentence(what.spread)}`, spread)]),
    ];
  });
}

/** The limits of a reading: as rebuilt, in service, with new parts; as found by the one for the service. */
export function readings(
  layout: Layout,
  done: CompletedCell,
  use: LimitUse,
  what: string,
  wanted: readonly Which[],
): SpecFigure[] {
  const { words } = layout.setting;
  const { step } = done;
  if (use.form === 'limit') return [figure(layout, what, done, limit(layout, done, use, 'rebuilt'))];
  const values = heldAt(layout.setting, done, use).flatMap(({ which, value }) => (which === 'rebuilt' ? value : []));
  const has = (which: Which) => values.some((value) => value?.[which] != null);
  const judgedBy: readonly Which[] = isAsFound(step) ? [has('inService') ? 'inService' : 'rebuilt'] : wanted;
  const settles = !isAsFound(step) && values.some((value) => value?.settling != null);
  const figures = judgedBy.flatMap((which) => {
    const cells = limit(layout, done, use, which);
    if (which !== 'rebuilt' && !has(which)) return [];
    const newPart = layout.procedure.family.parts.find(
      ({ name }) => name === values.find((value) => value?.whenNew != null)?.whenNewPart,
    );
    const label =
      which === 'whenNew' && newPart !== undefined
        ? words.limits.withNew({ part: words.inSentence(newPart.title) })
        : which === 'rebuilt' && what !== words.specs.what.read
          ? what
          : words.limits[which];
    return [figure(layout, isAsFound(step) && which === 'rebuilt' ? words.specs.what.asFound : label, done, cells)];
  });
  return settles ? [...figures, figure(layout, words.specs.what.settling, done, settling(layout, use.spec))] : figures;
}

/** What a new spring loses of a spec. */
function settling(layout: Layout, spec: string): Cells {
  const { words } = layout.setting;
  return (number) => {
    const value = specFor(layout.procedure, spec, number?.name ?? null);
    if (value?.settling == null) return null;
    const own = number?.values.find((other) => other.spec === spec && other.settling !== null);
    const source = own?.source ?? value.spec.source;
    return wordsCell(words.quantity(value.settling), lineOf(source), [], value.sourceText);
  };
}

export function measurements(layout: Layout): SpecItem[] {
  const { words } = layout.setting;
  const byTitle = new Map<string, SpecItem>();
  for (const done of layout.done) {
    const { step } = done;
    const known = ['torque', 'lock', 'test', 'set', 'read', 'across', 'choose'];
    const use = own(step, 'limit');
    if (use == null || known.includes(step.verb)) continue;
    const title = capital(objectWords(layout.setting, step.objects).join(', ') || step.verb);
    const label = use.form === 'spec' ? specTitle(layout.procedure, use.spec) : words.specs.what.limit;
    const figures = readings(layout, done, use, label, ['rebuilt', 'whenNew', 'inService']);
    const before = byTitle.get(title);
    byTitle.set(title, {
      title,
      facts: [...new Set([...(before?.facts ?? []), ...lookFacts(words, step)])],
      line: before?.line ?? lineOf(step.source),
      figures: merged([...(before?.figures ?? []), ...figures]),
    });
  }
  return [...byTitle.values()];
}

/** A test is timed, but no pressure is given. */
function isTimedOnly({ reads, hold, from, to, inTime, forTime }: TestFigures): boolean {
  const timed = forTime !== null || inTime !== null || to !== null;
  return timed && reads === null && hold === null && from === null;
}

/** What is looked for at a test or a measurement. */
function lookFacts(words: Words, step: Step): string[] {
  const [accept, reject] = [own(step, 'accept'), own(step, 'reject')];
  return [
    ...(accept == null ? [] : [`${words.inSentence(words.facts.accept)} “${accept}”`]),
    ...(reject == null ? [] : [`${words.inSentence(words.facts.reject)} “${reject}”`]),
  ];
}
