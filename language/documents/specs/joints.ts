import type { Joint, Part } from '../../model/family.ts';
import type { StepObject } from '../../model/procedure.ts';
import { own } from '../../model/steps.ts';
import { capital, titleOf } from '../../model/titles.ts';
import { baseTitle, objectWords } from '../names.ts';
import { type CompletedCell, lineOf, missing, wordsCell } from './cells.ts';
import { cellKey, figure, type Layout, limit, merged, written } from './layout.ts';
import type { SpecFigure, SpecItem } from './model.ts';

export function joints(layout: Layout): SpecItem[] {
  const { family } = layout.procedure;
  const turned = layout.done.filter(({ step }) => step.verb === 'torque' || step.verb === 'lock');
  const items: { item: SpecItem; part: Part | undefined; name: string }[] = [];
  for (const joint of family.joints) {
    const part = family.parts.find(({ name }) => name === joint.part);
    const steps = turned.filter(({ step }) => step.objects.some(({ name }) => name === joint.part));
    items.push({
      part,
      name: joint.part,
      item: {
        title: capital(titleOf(part ?? { name: joint.part, title: joint.part })),
        facts: jointFacts(layout, joint, steps),
        line: lineOf(joint.source),
        figures: torques(layout, joint, steps),
      },
    });
  }
  const known = new Set([
    ...family.joints.map(({ part }) => part),
    ...family.adjusters.flatMap(({ part, lockedBy }) => [part, lockedBy]),
  ]);
  for (const done of turned) {
    for (const { name } of done.step.objects) {
      if (known.has(name)) continue;
      known.add(name);
      const part = family.parts.find((other) => other.name === name);
      const steps = turned.filter(({ step }) => step.objects.some((object) => object.name === name));
      items.push({
        part,
        name,
        item: {
          title: capital(titleOf(part ?? { name, title: name })),
          facts: [layout.setting.words.specs.facts.noJoint],
          line: lineOf(done.step.source),
          figures: merged(steps.flatMap((each) => torque(layout, each))),
        },
      });
    }
  }
  return copiesTogether(layout, items);
}

function jointFacts(
  layout: Layout,
  { to, thread, solid, oiled, leftHand, handTightIsFinal }: Joint,
  torqued: readonly CompletedCell[],
): string[] {
  const { words } = layout.setting;
  const { facts } = words.specs;
  const onto = layout.procedure.family.parts.find(({ name }) => name === to);
  return [
    onto === undefined ? null : facts.on({ part: words.inSentence(titleOf(onto)) }),
    thread,
    solid === null ? null : facts.ofClass({ propertyClass: solid.propertyClass }),
    oiled || torqued.some(({ step }) => own(step, 'oiled')) ? facts.oiled : null,
    leftHand ? facts.leftHand : null,
    handTightIsFinal ? words.inSentence(words.facts.handTight) : null,
  ].filter((fact) => fact !== null);
}

function torques(layout: Layout, joint: Joint, steps: readonly CompletedCell[]): SpecFigure[] {
  const { words } = layout.setting;
  const figures = merged(steps.flatMap((done) => torque(layout, done)));
  const line = lineOf(joint.source);
  const none = joint.handTightIsFinal
    ? wordsCell(words.facts.handTight, line)
    : wordsCell('', line, [missing('value', words.specs.missing.noTorqueStep)]);
  const left = layout.numbers.map((_, column) => figures.every(({ cells }) => cells[column] === null));
  if (figures.length > 0 && !left.includes(true)) return figures;
  const filled: SpecFigure = {
    what: words.specs.what.torque,
    steps: [],
    line,
    cells: left.map((open) => (open ? none : null)),
  };
  return merged([...figures, filled]);
}

/** Torque, and bolt stretch where it is tightened by that. */
export function torque(
  layout: Layout,
  done: CompletedCell,
  what: string = layout.setting.words.specs.what.torque,
): SpecFigure[] {
  const { words } = layout.setting;
  const { step } = done;
  const figures: SpecFigure[] = [];
  const use = own(step, 'limit');
  if (use != null) figures.push(figure(layout, what, done, limit(layout, done, use, 'rebuilt')));
  const { stretch } = done.figures;
  if (stretch !== null) figures.push(written(layout, done, words.facts.stretch, stretch));
  if (figures.length === 0) {
    const cell = wordsCell('', lineOf(step.source), [missing('value', words.specs.missing.torque)]);
    figures.push(figure(layout, what, done, () => cell));
  }
  return figures;
}

/** Nuts of several cylinders that are alike, together. */
function copiesTogether(
  layout: Layout,
  items: readonly { item: SpecItem; part: Part | undefined; name: string }[],
): SpecItem[] {
  const together = new Map<string, { items: SpecItem[]; parts: Part[]; base: string }>();
  for (const { item, part, name } of items) {
    const alike = JSON.stringify([
      part?.position == null ? name : part.base,
      item.facts,
      item.figures.map(({ what, cells }) => [what, cells.map(cellKey)]),
    ]);
    const known = together.get(alike);
    if (known === undefined)
      together.set(alike, {
        items: [item],
        parts: part === undefined ? [] : [part],
        base: part === undefined ? name : baseTitle(part),
      });
    else {
      known.items.push(item);
      if (part !== undefined) known.parts.push(part);
    }
  }
  return [...together.values()].map(({ items: [first, ...rest], parts }) => {
    if (rest.length === 0) return first!;
    const objects = parts.map(
      ({ name, source }): StepObject => ({ kind: 'part', name, located: null, marksAligned: false, source }),
    );
    return {
      ...first!,
      title: capital(objectWords(layout.setting, objects).join(', ')),
      figures: first!.figures.map((figure, index) => ({
        ...figure,
        steps: [...new Set([figure, ...rest.map(({ figures }) => figures[index]!)].flatMap(({ steps }) => steps))],
      })),
    };
  });
}
