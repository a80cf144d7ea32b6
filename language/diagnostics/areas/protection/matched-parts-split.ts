import { age, allSteps, place } from '../../../analysis/locations.ts';
import { partsWords, partWords, stationWords } from '../../../analysis/prose.ts';
import type { Family } from '../../../model/family.ts';
import type { Block, Step } from '../../../model/procedure.ts';
import type { Source } from '../../../model/source.ts';
import { namedIn, own } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { behind } from '../../edits.ts';
import { on, type Rule } from '../../rule.ts';

/** Words that say that a single new part is made to fit. */
const suited = /chos|select|grade|match|lap|pair|balanc|size|fit/iu;

/** One of a matched or balanced pair is renewed, or kept elsewhere, without the other. */
export const matchedPartsSplit: Rule<{ old: string; source: Source }> = {
  code: 'matched-parts-split',
  severity: 'error',
  since: '0.2.0',
  title: 'One part of a matched or balanced pair is renewed, or kept elsewhere, without the other.',
  flow: ({ graph, relations }, report) => {
    const { procedure, nodes } = graph;
    const { parts } = procedure.family;
    const balances = allSteps(procedure).some(
      (step) =>
        /balanc/iu.test(`${step.text ?? ''} ${step.verb === 'test' ? step.gate.test : ''}`) ||
        own(step, 'test')?.reads === 'unbalance',
    );
    const balancedWith = (name: string) =>
      parts
        .filter((other) => other.balancedWith.includes(name) || relations.part(name).balancedWith.includes(other.name))
        .map((other) => other.name);
    const partnersOf = (name: string) => [...relations.matches(name), ...(balances ? [] : balancedWith(name))];
    const stepAt = (index: number) => {
      const point = nodes[index];
      return point?.kind === 'step' ? point : null;
    };
    return {
      looksAround: true,
      step: on(['fit'], ({ step, before, path }) => {
        if (step.forTrial) return;
        for (const { name } of namedIn(step)) {
          for (const other of partnersOf(name)) {
            for (const [fresh, old] of [
              [name, other],
              [other, name],
            ] as const) {
              const since = before.since(before.part(fresh).age);
              const renewed = stepAt(since);
              if (renewed?.step.verb !== 'renew' || !before.may(before.part(fresh).age, age.new)) continue;
              const cells = before.part(old);
              if (before.must(cells.age, age.new) || before.may(cells.place, place.gone)) continue;
              const { step: at, block } = renewed;
              if (isMadeToSuit(procedure.family, at, block, fresh, old)) continue;
              const object = at.objects.find((one) => one.name === fresh)!;
              report({
                at,
                source: object.source,
                path,
                rootCause: `split:${since}`,
                message: say`The ${partWords(procedure, fresh)} is renewed, but the ${partWords(procedure, old)} is not.`,
                why: say`they are a pair, fitted to each other, and a new one with an old one sticks or leaks.`,
                help: say`Write “renew ${[fresh, old].map((part) => relations.part(part).base).join(', ')}”, or say how the new one is matched.`,
                data: at.call === null ? { old: relations.part(old).base, source: object.source } : undefined,
              });
            }
          }
        }
      }),
      leave({ state, path }) {
        for (const part of parts) {
          for (const other of part.matchedTo) {
            const places = [part.name, other].map((name) => state.part(name).where);
            const away = [part.name, other].every(
              (name) =>
                state.must(state.part(name).place, place.off | place.sub) && !state.may(state.part(name).where, 1),
            );
            if (!away || (state.get(places[0]!) & state.get(places[1]!)) !== 0) continue;
            const putDown = places.map((cell) => stepAt(state.since(cell))?.step ?? null);
            if (putDown.some((step) => step === null || step.text !== null)) continue;
            const since = Math.max(...places.map((cell) => state.since(cell)));
            const [here, there] = putDown.map((step) => stationWords(procedure, own(step!, 'station') ?? null));
            report({
              at: stepAt(since)!.step,
              path,
              rootCause: `split:${since}`,
              message: say`The ${partsWords(procedure, [part.name, other])} are a matched pair, and one is put down at ${here!}, the other at ${there!}.`,
              why: say`by the end of the day nobody knows which ones belong together.`,
              help: say`Keep them together, or write how to tell which belong together.`,
            });
          }
        }
      },
    };
  },
  fix({ old, source }) {
    return { title: say`Renew ${old} too`, safe: false, edits: [behind(source, `, ${old}`)] };
  },
};

/** The other is renewed with it, they are lapped to each other, or the text says that the new one is made to fit. */
function isMadeToSuit({ faces }: Family, renewed: Step, block: Block, fresh: string, old: string): boolean {
  if (suited.test(`${renewed.text ?? ''} ${renewed.note ?? ''}`)) return true;
  const after = block.steps.slice(block.steps.indexOf(renewed) + 1);
  const isOf = (name: string) => {
    const part = faces.find(({ id }) => id === name)?.part ?? name;
    return part === fresh || part === old;
  };
  return (
    block.steps.some((step) => step.verb === 'renew' && step.objects.some(({ name }) => name === old)) ||
    after.some((step) => step.verb === 'lap' && step.objects.some(({ name }) => isOf(name)))
  );
}
