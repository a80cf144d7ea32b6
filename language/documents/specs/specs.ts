import type { Joint, Part } from '../../model/family.ts';
import type { LimitUse, PartNumber, Procedure, Stage, Step, StepObject, TestFigures } from '../../model/procedure.ts';
import type { Source } from '../../model/source.ts';
import { specFor } from '../../model/spec-for.ts';
import { failEntries, isAsFound, isTestOf, own } from '../../model/steps.ts';
import { formatQuantity, kindOfUnit, type Limit, type Quantity } from '../../quantities/index.ts';
import { ceilingText, limitText } from '../traveler/figures.ts';
import { figureText, rateWords, type Which } from '../traveler/limits.ts';
import { baseTitle, capital, objectWords, specTitle, titleOf } from '../traveler/names.ts';
import { type Setting, settingOf } from '../traveler/print-context.ts';
import { holdWords } from '../traveler/steps.ts';
import { toolUnit } from '../traveler/units.ts';
import { type Done, limitCell, lineOf, missing, wordsCell } from './cells.ts';
import { specWords, sheetWords as words } from './labels.ts';
import type { GroupKind, SpecCell, SpecFigure, SpecGroup, SpecItem, SpecLine, Specs } from './model.ts';
import { remarksOf } from './remarks.ts';

/**
 * All figures that a procedure goes by, for every part number: plain data, pure. Limits are worded as the sheet prints
 * them, since both take the same functions.
 */
export function specsOf(procedure: Procedure): Specs {
  return new Layout(procedure).specs();
}

/** How many things are missing; what is the same for several part numbers counts once. */
export function missingCount({ groups }: Specs): number {
  return groups
    .flatMap(({ items }) => items.flatMap(({ figures }) => figures))
    .reduce(
      (sum, { cells }) => sum + new Set(cells.flatMap((cell) => cell?.missing.map((one) => one.words) ?? [])).size,
      0,
    );
}

/** Makes the cell of one part number; null: the figure is not for it. */
type Cells = (number: PartNumber | null) => SpecCell | null;

class Layout {
  readonly #procedure: Procedure;
  readonly #setting: Setting;
  /** Every step with the station that it is done at, stages first. */
  readonly #done: readonly Done[];
  readonly #used = new Set<string>();

  constructor(procedure: Procedure) {
    this.#procedure = procedure;
    this.#setting = settingOf(procedure, {
      job: null,
      number: null,
      paper: 'a4',
      draft: false,
      findings: [],
      hash: '',
    });
    this.#done = [
      ...procedure.stages.flatMap((where) => where.steps.map((step) => ({ step, where, stations: [where] }))),
      ...procedure.repairs.flatMap((where) => {
        const senders = where.station === null ? sendersOf(procedure, where.name) : [];
        const stations = senders.length === 0 ? [where] : senders;
        return where.steps.map((step) => ({ step, where, stations }));
      }),
    ];
  }

  specs(): Specs {
    const { name, title, revision, family, shop, numbers } = this.#procedure;
    const groups: [GroupKind, SpecItem[]][] = [
      ['joints', this.#joints()],
      ['adjusters', this.#adjusters()],
      ['tests', this.#tests()],
      ['measurements', this.#measurements()],
    ];
    // What is left over is known when all others are laid out.
    groups.push(['others', this.#others()]);
    const shown = groups
      .filter(([, items]) => items.length > 0)
      .map(([kind, items]): SpecGroup => ({ kind, title: specWords.groups[kind], items }));
    return {
      procedure: name,
      title,
      revision,
      family: family.title,
      shop: shop.title,
      columns:
        numbers.length === 0
          ? [{ number: null, title: '' }]
          : numbers.map((number) => ({ number: number.name, title: number.title === number.name ? '' : number.title })),
      groups: shown,
      remarks: remarksOf(this.#procedure, shown),
    };
  }

  get #numbers(): readonly (PartNumber | null)[] {
    return this.#procedure.numbers.length === 0 ? [null] : this.#procedure.numbers;
  }

  #figure(what: string, { step }: Done, cells: Cells): SpecFigure {
    return {
      what,
      steps: [step.number],
      line: lineOf(step.source),
      cells: this.#numbers.map((number) => (isFor(step, number) ? cells(number) : null)),
    };
  }

  /** A figure that no step says. */
  #stated(what: string, source: Source, cells: Cells, steps: readonly string[] = []): SpecFigure {
    return { what, steps, line: lineOf(source), cells: this.#numbers.map(cells) };
  }

  /** The limit of a step through its spec, or as it is written there. */
  #limit(done: Done, use: LimitUse, which: Which, judged = true): Cells {
    const { step } = done;
    if (use.form === 'limit') {
      return () =>
        which === 'rebuilt'
          ? limitCell(this.#setting, done, use.limit, step.sourceText, lineOf(step.source), { judged })
          : null;
    }
    this.#used.add(use.spec);
    return (number) => {
      const value = specFor(this.#procedure, use.spec, number?.name ?? null);
      if (value === null) return null;
      const line = this.#lineOfSpec(use.spec, number, which);
      const limit = value[which];
      if (limit !== null) return limitCell(this.#setting, done, limit, value.sourceText, line, { judged });
      if (which !== 'rebuilt') return null;
      return value.notRequired
        ? wordsCell(
            words.limits.notRequired,
            line,
            value.sourceText === null ? [missing('source', specWords.missing.source)] : [],
            value.sourceText,
          )
        : wordsCell('', line, [missing('value', specWords.missing.limit)]);
    };
  }

  /** Where a number's value stands: with the number if it has one of its own, else with the spec. */
  #lineOfSpec(name: string, number: PartNumber | null, which: Which): SpecLine {
    const own = number?.values.find(({ spec }) => spec === name);
    const spec = this.#procedure.specs.find((other) => other.name === name)!;
    const written = own !== undefined && (own[which] !== null || own.notRequired || spec[which] === null);
    return lineOf(written ? own.source : spec.source);
  }

  // Joints

  #joints(): SpecItem[] {
    const { family } = this.#procedure;
    const turned = this.#done.filter(({ step }) => step.verb === 'torque' || step.verb === 'lock');
    const items: { item: SpecItem; part: Part | undefined; name: string }[] = [];
    for (const joint of family.joints) {
      const part = family.parts.find(({ name }) => name === joint.part);
      const steps = turned.filter(({ step }) => step.objects.some(({ name }) => name === joint.part));
      items.push({
        part,
        name: joint.part,
        item: {
          title: capital(titleOf(part ?? { name: joint.part, title: joint.part })),
          facts: this.#jointFacts(joint, steps),
          line: lineOf(joint.source),
          figures: this.#torques(joint, steps),
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
            facts: [specWords.facts.noJoint],
            line: lineOf(done.step.source),
            figures: merged(steps.flatMap((each) => this.#torque(each))),
          },
        });
      }
    }
    return this.#copiesTogether(items);
  }

  #jointFacts({ to, thread, solid, oiled, leftHand, handTightIsFinal }: Joint, torqued: readonly Done[]): string[] {
    const { facts } = specWords;
    const onto = this.#procedure.family.parts.find(({ name }) => name === to);
    return [
      onto === undefined ? null : facts.on(words.inSentence(titleOf(onto))),
      thread,
      solid === null ? null : facts.ofClass(solid.propertyClass),
      oiled || torqued.some(({ step }) => own(step, 'oiled')) ? facts.oiled : null,
      leftHand ? facts.leftHand : null,
      handTightIsFinal ? words.inSentence(words.facts.handTight) : null,
    ].filter((fact) => fact !== null);
  }

  #torques(joint: Joint, steps: readonly Done[]): SpecFigure[] {
    const figures = merged(steps.flatMap((done) => this.#torque(done)));
    const line = lineOf(joint.source);
    const none = joint.handTightIsFinal
      ? wordsCell(words.facts.handTight, line)
      : wordsCell('', line, [missing('value', specWords.missing.noTorqueStep)]);
    const left = this.#numbers.map((_, column) => figures.every(({ cells }) => cells[column] === null));
    if (figures.length > 0 && !left.includes(true)) return figures;
    const filled: SpecFigure = {
      what: specWords.what.torque,
      steps: [],
      line,
      cells: left.map((open) => (open ? none : null)),
    };
    return merged([...figures, filled]);
  }

  /** Torque, and bolt stretch where it is tightened by that. */
  #torque(done: Done, what: string = specWords.what.torque): SpecFigure[] {
    const { step } = done;
    const figures: SpecFigure[] = [];
    const [use, stretch] = [own(step, 'limit'), own(step, 'stretch')];
    if (use != null) figures.push(this.#figure(what, done, this.#limit(done, use, 'rebuilt')));
    if (stretch != null) figures.push(this.#written(done, words.facts.stretch, stretch));
    if (figures.length === 0) {
      const cell = wordsCell('', lineOf(step.source), [missing('value', specWords.missing.torque)]);
      figures.push(this.#figure(what, done, () => cell));
    }
    return figures;
  }

  /** Nuts of several cylinders that are alike stand together. */
  #copiesTogether(items: readonly { item: SpecItem; part: Part | undefined; name: string }[]): SpecItem[] {
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
        title: capital(objectWords(this.#setting, objects).join(', ')),
        figures: first!.figures.map((figure, index) => ({
          ...figure,
          steps: [...new Set([figure, ...rest.map(({ figures }) => figures[index]!)].flatMap(({ steps }) => steps))],
        })),
      };
    });
  }

  // Adjusters

  #adjusters(): SpecItem[] {
    const { family } = this.#procedure;
    return family.adjusters.map((adjuster): SpecItem => {
      const { part, sets, rate, lockedBy, source } = adjuster;
      const reading = words.inSentence(specTitle(this.#procedure, sets));
      const what = specWords.what.sets(reading);
      const setting = this.#done.filter(
        ({ step }) => step.verb === 'set' && (step.reading === sets || step.objects.some(({ name }) => name === part)),
      );
      const tests = this.#done.filter(({ step }) => isTestOf(step, sets));
      const by = setting.length > 0 ? setting : tests;
      const limits = merged(
        by.flatMap((done) => {
          const use = own(done.step, 'limit') ?? this.#specOf(sets, source);
          return use === null ? [] : this.#readings(done, use, what, ['rebuilt', 'whenNew']);
        }),
      );
      const locks =
        lockedBy === null
          ? []
          : this.#done.filter(
              ({ step }) =>
                (step.verb === 'lock' || step.verb === 'torque') &&
                step.objects.some(({ name }) => name === lockedBy || (step.verb === 'lock' && name === part)),
            );
      const lockTorque = merged(locks.flatMap((done) => this.#torque(done, specWords.what.lockTorque)));
      const rateCell = rate === null ? null : wordsCell(formatQuantity(rate), lineOf(source));
      const noLock = wordsCell('', lineOf(source), [missing('value', specWords.missing.noTorqueStep)]);
      const noLimit = wordsCell('', lineOf(source), [missing('value', specWords.missing.limit)]);
      return {
        title: capital(titleOf(family.parts.find(({ name }) => name === part) ?? adjuster)),
        facts: lockedBy === null ? [] : [specWords.facts.lockedBy(this.#partTitle(lockedBy))],
        line: lineOf(source),
        figures: [
          ...(limits.length > 0 ? limits : [this.#stated(what, source, () => noLimit)]),
          ...(rateCell === null ? [] : [this.#stated(specWords.what.rate, source, () => rateCell)]),
          ...(lockedBy !== null && lockTorque.length === 0
            ? [this.#stated(specWords.what.lockTorque, source, () => noLock)]
            : lockTorque),
        ],
      };
    });
  }

  #partTitle(name: string): string {
    return words.inSentence(
      titleOf(this.#procedure.family.parts.find((part) => part.name === name) ?? { name, title: name }),
    );
  }

  #specOf(name: string | null, source: Source): LimitUse | null {
    const spec = this.#procedure.specs.find((other) => other.name === name);
    return spec === undefined ? null : { form: 'spec', spec: spec.name, source };
  }

  // Tests

  #tests(): SpecItem[] {
    const adjusted = new Set(this.#procedure.family.adjusters.map(({ sets }) => sets));
    const byName = new Map<string, Done[]>();
    for (const done of this.#done) {
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
    // A test stands where it is made, not where its reading was written down before.
    const first = (dones: readonly Done[]) =>
      this.#done.indexOf(dones.find(({ step }) => step.verb === 'test') ?? dones[0]!);
    const inOrder = [...byName].sort(([, a], [, b]) => first(a) - first(b));
    const items = inOrder.map(([name, dones]): SpecItem => {
      const accepts = dones.flatMap(({ step }) => [
        ...('gauge' in step && step.gauge !== null
          ? [`${words.inSentence(words.facts.gauge)} ${words.facts[step.gauge]}`]
          : []),
        ...lookFacts(step),
      ]);
      return {
        title: capital(specTitle(this.#procedure, name)),
        facts: [...new Set(accepts)],
        line: lineOf(dones[0]!.step.source),
        figures: merged(this.#testFigures(dones, name)),
      };
    });
    return items.filter(({ figures }) => figures.length > 0);
  }

  #testFigures(dones: readonly Done[], name: string): SpecFigure[] {
    const foundSteps = dones.some(({ step }) => isAsFound(step));
    return dones.flatMap((done) => {
      const { step, where } = done;
      const test = own(step, 'test');
      const figures: SpecFigure[] = [];
      const use = own(step, 'limit') ?? (step.verb === 'read' ? this.#specOf(name, step.source) : null);
      const { what } = specWords;
      if (use !== null)
        figures.push(
          ...this.#readings(
            done,
            use,
            what.read,
            foundSteps ? ['rebuilt', 'whenNew'] : ['rebuilt', 'whenNew', 'inService'],
          ),
        );
      else if (test?.reads != null) figures.push(this.#nothing(done, what.read, specWords.missing.limit));
      const condition = (label: string, limit: Limit | null | undefined, value?: string) => {
        if (limit != null)
          figures.push(
            this.#written(done, label, limit, false, value ?? figureText(this.#setting, step, where, limit)),
          );
      };
      if (test?.hold != null) {
        const amount = figureText(this.#setting, step, where, test.hold.amount);
        condition(what.hold, test.hold.amount, holdWords(this.#setting, test.hold, amount));
      }
      condition(what.from, test?.from);
      condition(what.to, test?.to);
      if (test?.inTime != null) figures.push(this.#written(done, what.inTime, test.inTime));
      condition(what.forTime, test?.forTime);
      condition(what.at, own(step, 'at'));
      if (step.verb === 'across' && step.spread !== null) figures.push(this.#written(done, what.spread, step.spread));
      if (test?.neverAbove != null) {
        const most: Limit = { form: 'at most', most: test.neverAbove };
        const unit = toolUnit(this.#setting, step, where, kindOfUnit(test.neverAbove.unit), most);
        condition(what.never, most, ceilingText(words, test.neverAbove, unit));
      }
      if (test != null && isTimedOnly(test)) figures.push(this.#nothing(done, what.hold, specWords.missing.pressure));
      // A test by eye has no figure, and still is one of the tests.
      if (figures.length === 0 && step.verb === 'test') {
        const cell = step.accept === null ? null : wordsCell(step.accept, lineOf(step.source));
        figures.push(
          cell === null
            ? this.#nothing(done, what.looked, specWords.missing.limit)
            : this.#figure(what.looked, done, () => cell),
        );
      }
      return figures;
    });
  }

  #nothing(done: Done, what: string, text: string): SpecFigure {
    const cell = wordsCell('', lineOf(done.step.source), [missing('value', text)]);
    return this.#figure(what, done, () => cell);
  }

  /** The limits of a reading: as rebuilt, in service, with new parts; as found by the one for the service. */
  #readings(done: Done, use: LimitUse, what: string, wanted: readonly Which[]): SpecFigure[] {
    const { step } = done;
    if (use.form === 'limit') return [this.#figure(what, done, this.#limit(done, use, 'rebuilt'))];
    const values = this.#numbers.map((number) => specFor(this.#procedure, use.spec, number?.name ?? null));
    const has = (which: Which) => values.some((value) => value?.[which] != null);
    const judgedBy: readonly Which[] = isAsFound(step) ? [has('inService') ? 'inService' : 'rebuilt'] : wanted;
    const settles = !isAsFound(step) && values.some((value) => value?.settling != null);
    const figures = judgedBy.flatMap((which) => {
      const cells = this.#limit(done, use, which);
      if (which !== 'rebuilt' && !has(which)) return [];
      const newPart = this.#procedure.family.parts.find(
        ({ name }) => name === values.find((value) => value?.whenNew != null)?.whenNewPart,
      );
      const label =
        which === 'whenNew' && newPart !== undefined
          ? words.limits.withNew({ part: words.inSentence(newPart.title) })
          : which === 'rebuilt' && what !== specWords.what.read
            ? what
            : words.limits[which];
      return [this.#figure(isAsFound(step) && which === 'rebuilt' ? specWords.what.asFound : label, done, cells)];
    });
    return settles ? [...figures, this.#figure(specWords.what.settling, done, this.#settling(use.spec))] : figures;
  }

  /** What a new spring loses of a spec. */
  #settling(spec: string): Cells {
    return (number) => {
      const value = specFor(this.#procedure, spec, number?.name ?? null);
      if (value?.settling == null) return null;
      const own = number?.values.find((other) => other.spec === spec && other.settling !== null);
      const source = own?.source ?? value.spec.source;
      return wordsCell(formatQuantity(value.settling), lineOf(source), [], value.sourceText);
    };
  }

  /** A limit that is written in the step. */
  #written(done: Done, what: string, limit: Limit, judged = true, value?: string): SpecFigure {
    const { step } = done;
    const cell = limitCell(this.#setting, done, limit, step.sourceText, lineOf(step.source), {
      judged,
      ...(value === undefined ? {} : { value }),
    });
    return this.#figure(what, done, () => cell);
  }

  // Measurements

  #measurements(): SpecItem[] {
    const byTitle = new Map<string, SpecItem>();
    for (const done of this.#done) {
      const { step } = done;
      const known = ['torque', 'lock', 'test', 'set', 'read', 'across', 'choose'];
      const use = own(step, 'limit');
      if (use == null || known.includes(step.verb)) continue;
      const title = capital(objectWords(this.#setting, step.objects).join(', ') || step.verb);
      const label = use.form === 'spec' ? specTitle(this.#procedure, use.spec) : specWords.what.limit;
      const figures = this.#readings(done, use, label, ['rebuilt', 'whenNew', 'inService']);
      const before = byTitle.get(title);
      byTitle.set(title, {
        title,
        facts: [...new Set([...(before?.facts ?? []), ...lookFacts(step)])],
        line: before?.line ?? lineOf(step.source),
        figures: merged([...(before?.figures ?? []), ...figures]),
      });
    }
    return [...byTitle.values()];
  }

  // Others

  #others(): SpecItem[] {
    const { specs, family } = this.#procedure;
    const left = specs.filter(({ name }) => !this.#used.has(name));
    return [
      ...left.map((spec): SpecItem => {
        const steps = this.#done
          .filter(({ step }) => {
            const target = own(step, 'choose')?.target;
            const aim = target?.form === 'spec' ? target.spec : null;
            return [own(step, 'rate'), aim, own(step, 'test')?.hold?.of].includes(spec.name);
          })
          .map(({ step }) => step.number);
        return {
          title: capital(titleOf(spec)),
          facts: steps.length === 0 ? [specWords.facts.unused] : [],
          line: lineOf(spec.source),
          figures: (['rebuilt', 'inService', 'whenNew'] as const)
            .filter(
              (which) =>
                which === 'rebuilt' ||
                this.#numbers.some(
                  (number) => specFor(this.#procedure, spec.name, number?.name ?? null)?.[which] != null,
                ),
            )
            .map((which) =>
              this.#stated(
                which === 'rebuilt' ? specWords.what.value : words.limits[which],
                spec.source,
                (number) => this.#plainCell(spec.name, spec.per, number, which),
                steps,
              ),
            ),
        };
      }),
      ...this.#chosen(),
      ...family.parts.flatMap((part): SpecItem[] => {
        if (part.bindsOver === null) return [];
        const cell = wordsCell(formatQuantity(part.bindsOver), lineOf(part.source));
        return [
          {
            title: capital(titleOf(part)),
            facts: [],
            line: lineOf(part.source),
            figures: [this.#stated(specWords.what.binds, part.source, () => cell)],
          },
        ];
      }),
    ];
  }

  /** A value that nothing is measured by: as it is written, with `per` behind it. */
  #plainCell(name: string, per: Quantity | null, number: PartNumber | null, which: Which): SpecCell | null {
    const value = specFor(this.#procedure, name, number?.name ?? null);
    const line = this.#lineOfSpec(name, number, which);
    const limit = value?.[which] ?? null;
    if (value === null || (limit === null && which !== 'rebuilt')) return null;
    const noSource = value.sourceText === null ? [missing('source', specWords.missing.source)] : [];
    if (value.notRequired) return wordsCell(words.limits.notRequired, line, noSource, value.sourceText);
    if (limit === null) return wordsCell('', line, [missing('value', specWords.missing.limit)]);
    const text = rateWords(words, limit, per, which === 'rebuilt' ? value.rateFrom : null);
    return wordsCell(text, line, noSource, value.sourceText);
  }

  /** What a `choose` says in figures of its own. */
  #chosen(): SpecItem[] {
    const byTitle = new Map<string, SpecItem>();
    for (const done of this.#done) {
      const { step } = done;
      if (step.verb !== 'choose') continue;
      const { choose, neverAbove } = step;
      const aim = choose?.target?.form === 'limit' ? { test: choose.test, limit: choose.target.limit } : null;
      if (aim === null && neverAbove === null) continue;
      const line = lineOf(step.source);
      const noSource = step.sourceText === null ? [missing('source', specWords.missing.source)] : [];
      const cell = (value: string) => {
        const made = wordsCell(value, line, noSource, step.sourceText);
        return () => made;
      };
      const figures = [
        aim === null
          ? null
          : this.#figure(
              `${specWords.what.aim}: ${words.inSentence(specTitle(this.#procedure, aim.test))}`,
              done,
              cell(limitText(aim.limit, words.wording)),
            ),
        neverAbove === null ? null : this.#figure(specWords.what.never, done, cell(formatQuantity(neverAbove))),
      ].filter((figure) => figure !== null);
      const title = capital(objectWords(this.#setting, step.objects).join(', '));
      const before = byTitle.get(title);
      byTitle.set(title, {
        title,
        facts: [],
        line: before?.line ?? line,
        figures: merged([...(before?.figures ?? []), ...figures]),
      });
    }
    return [...byTitle.values()];
  }
}

/** Stages that send a unit to a repair; the repair is done at their stations. */
function sendersOf({ stages }: Procedure, repair: string): Stage[] {
  return stages.filter(({ steps }) => steps.some((step) => failEntries(step).some((entry) => entry.repair === repair)));
}

/** A test is timed, and no pressure is said. */
function isTimedOnly({ reads, hold, from, to, inTime, forTime }: TestFigures): boolean {
  const timed = forTime !== null || inTime !== null || to !== null;
  return timed && reads === null && hold === null && from === null;
}

/** What is looked for at a test or a measurement. */
function lookFacts(step: Step): string[] {
  const [accept, reject] = [own(step, 'accept'), own(step, 'reject')];
  return [
    ...(accept == null ? [] : [`${words.inSentence(words.facts.accept)} “${accept}”`]),
    ...(reject == null ? [] : [`${words.inSentence(words.facts.reject)} “${reject}”`]),
  ];
}

function isFor({ only }: Step, number: PartNumber | null): boolean {
  return only === null || (number !== null && only.includes(number.name));
}

/** What a cell says, wherever it is written. */
function cellKey(cell: SpecCell | null): string {
  return JSON.stringify(cell === null ? null : { ...cell, line: 0 });
}

/**
 * Figures of the same thing that say the same for each number that both are for stand once, with the steps of both: a
 * joint is torqued in a stage and in every repair that opens it.
 */
function merged(figures: readonly SpecFigure[]): SpecFigure[] {
  const made: SpecFigure[] = [];
  for (const figure of figures) {
    const index = made.findIndex(
      ({ what, cells }) =>
        what === figure.what &&
        cells.every((cell, column) => {
          const other = figure.cells[column]!;
          return cell === null || other === null || cellKey(cell) === cellKey(other);
        }),
    );
    const known = made[index];
    if (known === undefined) made.push(figure);
    else
      made[index] = {
        ...known,
        steps: [...new Set([...known.steps, ...figure.steps])],
        cells: known.cells.map((cell, column) => cell ?? figure.cells[column]!),
      };
  }
  return made;
}
