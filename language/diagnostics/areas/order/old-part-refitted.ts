import type { FlowAnalysis, Visit } from '../../../analysis/flow-analysis.ts';
import { age, joint, place } from '../../../analysis/locations.ts';
import { partsWords, partsWritten } from '../../../analysis/prose.ts';
import type { Statement } from '../../../model/diagnostic.ts';
import type { StepObject } from '../../../model/procedure.ts';
import { namedIn } from '../../../model/steps.ts';
import { type Filling, joined, say } from '../../../say/say.ts';
import { on, type Report as Reported, type Rule } from '../../rule.ts';
import { fixStep, missingBefore, type StepFix } from '../../step-fixes.ts';

type Report = Reported<StepFix>;
type Closing = 'fit' | 'run-down' | 'torque';

/** Why a part is old: it was never renewed, it was thrown out, or it went in new and was tightened and released. */
type Old = 'found' | 'gone' | 'used';

/** A part that is always renewed, or that was discarded, goes back in, or is tightened again where it is. */
export const oldPartRefitted: Rule<StepFix> = {
  code: 'old-part-refitted',
  severity: 'error',
  since: '0.1.0',
  title: 'A part that is always renewed, or was discarded, is fitted or tightened again.',
  flow: (flow, report) => ({
    step: on(['fit', 'run-down', 'torque'], (visit) => {
      if (visit.step.verb !== 'torque') refitted(flow, visit, report);
      if (visit.step.verb !== 'fit') tightenedAgain(flow, visit, report);
    }),
  }),
  fix: fixStep,
};

/** Parts that go in and are old. */
function refitted(
  { graph, relations }: FlowAnalysis,
  { step, before, path }: Visit<Closing>,
  report: (one: Report) => void,
) {
  const oldAs = (name: string): Old | null => {
    const cells = before.part(name);
    if (!relations.part(name).renewed) return before.may(cells.place, place.gone) ? 'gone' : null;
    if (!before.may(cells.place, place.off | place.sub)) return null;
    if (before.may(cells.age, age.found)) return 'found';
    return before.may(cells.age, age.used) ? 'used' : null;
  };
  const sinceOf = (name: string) => before.since(before.part(name).place);
  const old = namedIn(step).flatMap((object: StepObject) => {
    // What lies in it goes in with it.
    const inner = relations.inside(object.name).map(({ name }) => name);
    return [object.name, ...inner.filter((name) => before.must(before.part(name).place, place.sub))].flatMap((name) => {
      const as = oldAs(name);
      return as === null ? [] : [{ name, as, source: object.source }];
    });
  });
  /** Parts that came off at one step are one mistake. */
  const told = new Set<string>();
  for (const { name, as, source } of old) {
    const since = sinceOf(name);
    if (told.has(`${since} ${as}`)) continue;
    told.add(`${since} ${as}`);
    const names = old.filter((other) => sinceOf(other.name) === since && other.as === as).map((other) => other.name);
    // What lay in another part is out of it once it is renewed.
    const laid = names.filter((one) => namedIn(step).every((object) => object.name !== one));
    const steps = [`renew ${partsWritten(graph.procedure, names)}`];
    if (laid.length > 0) steps.push(`fit ${partsWritten(graph.procedure, laid)}`);
    report({
      at: step,
      source,
      path,
      since,
      rootCause: `old:${names[0]}:${since}`,
      data: missingBefore(step, steps.join('   ')),
      ...said(as, names.length > 1, partsWords(graph.procedure, names), partsWritten(graph.procedure, names)),
    });
  }
}

/** Parts that stay where they are while the joint over them is released and tightened again. */
function tightenedAgain(
  { graph, layout, relations }: FlowAnalysis,
  { step, before, path }: Visit<Closing>,
  report: (one: Report) => void,
) {
  for (const object of step.objects) {
    const cell = layout.joints.get(object.name);
    if (cell === undefined || !before.may(cell, joint.slack | joint.apart)) continue;
    const since = before.since(cell);
    const names = relations.squeezedBy(object.name).filter(
      (name) =>
        !graph.absent.has(name) &&
        before.may(before.part(name).place, place.in) &&
        before.may(before.part(name).age, age.found | age.used) &&
        // A gasket that stays shut in between its faces, as where a union is bled or screws are evened out, keeps its set.
        (name === object.name || before.may(cell, joint.apart)),
    );
    if (names.length === 0 || since < 0 || isBedding(graph.nodes, since, object.name)) continue;
    const words = partsWords(graph.procedure, names);
    report({
      at: step,
      source: object.source,
      path,
      since,
      rootCause: `old:${names[0]}:${since}`,
      message: say`The ${words} ${names.length > 1 ? say`are` : say`is`} always renewed, but ${names.length > 1 ? say`stay` : say`stays`} in place while the joint over ${names.length > 1 ? say`them` : say`it`} is released and tightened again.`,
      why: say`a used one does not seal or hold a second time.`,
      help: say`Write “discard ${partsWritten(graph.procedure, names)}” where the joint is open, and “fit ${partsWritten(graph.procedure, names)}” before it is tightened. Where the family renews it at a rebuild only, write “renewed at rebuild” there.`,
    });
  }
}

/** Tightened, released and at once tightened again: the first pull beds a new gasket, the second one counts. */
function isBedding(nodes: FlowAnalysis['graph']['nodes'], since: number, joint: string): boolean {
  const [before, released] = [nodes[since - 1], nodes[since]];
  return (
    before?.kind === 'step' &&
    before.step.verb === 'torque' &&
    before.step.objects.some(({ name }) => name === joint) &&
    released?.kind === 'step' &&
    released.step.verb === 'slacken'
  );
}

function said(as: Old, several: boolean, words: Filling, written: string): Statement {
  const discard = say`Write “discard” instead of “remove” where ${several ? say`they come` : say`it comes`} off, or write “renew ${written}” before this step.`;
  const why = say`a used one does not seal or hold a second time.`;
  switch (as) {
    case 'found':
      return {
        message: say`The ${words} ${several ? say`are` : say`is`} always renewed, but the old ${several ? say`ones go` : say`one goes`} back in.`,
        why,
        help: discard,
      };
    case 'used':
      return {
        message: say`The ${words} went in new, but ${several ? say`have` : say`has`} been tightened and released since, and ${several ? say`go` : say`goes`} back in.`,
        why,
        help: joined([
          discard,
          say`If a new one is needed at a rebuild only, write “renewed at rebuild” in the family.`,
        ]),
      };
    case 'gone':
      return {
        message: say`The ${words} ${several ? say`were` : say`was`} discarded, and there is no new one to fit.`,
        why: say`the scrapped one goes back in, or the unit waits for a new one.`,
        help: say`Write “renew ${written}” before this step. If the old one is good, write remove instead of discard.`,
      };
  }
}
