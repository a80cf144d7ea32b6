import { variantParts } from '../../../analysis/assembly.ts';
import { isSpoiltBy } from '../../../analysis/films.ts';
import { dirt, place } from '../../../analysis/locations.ts';
import { partsWords, partsWritten } from '../../../analysis/prose.ts';
import { restsOn } from '../../../analysis/relations.ts';
import type { Stage } from '../../../model/procedure.ts';
import { isOfAll } from '../../../model/steps.ts';
import { joined, say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** The first stage that washes names its parts, and forgets some that lie beside them, as dirty as they came. */
export const leftOutOfTheWash: Rule = {
  code: 'left-out-of-the-wash',
  severity: 'error',
  since: '0.2.0',
  title: 'The first wash names its parts, but leaves out some that came in dirty.',
  flow: (flow, report) => {
    const { graph, relations } = flow;
    const { procedure } = graph;
    const washing = procedure.stages.filter((stage) => stage.steps.some(({ verb }) => verb === 'wash'));
    const [first] = washing;
    const last = first === undefined ? undefined : washes(first).at(-1);
    // `all` means all, and `all except` says what is left out.
    if (first === undefined || washes(first).some((step) => step.all)) return {};
    /** Washed in another bath, wiped, or renewed: a part that cannot go into the first bath is not forgotten. */
    const otherwise = new Set(
      procedure.stages.flatMap((stage) => {
        const baths = stage.station === first.station && !isTheRest(stage, first) ? [] : washes(stage);
        const others = stage.steps.filter(({ verb }) => ['wipe', 'renew', 'discard'].includes(verb));
        return [...baths, ...others].flatMap((step) => (isOfAll(step) ? [] : step.objects.map(({ name }) => name)));
      }),
    );
    const mine = variantParts(flow);
    return {
      looksAround: true,
      step: on(['wash', 'soak'], ({ step, before, path }) => {
        if (step !== last || path.repair !== null) return;
        const out = (name: string) => before.may(before.part(name).place, place.off | place.sub | place.guard);
        const left = procedure.family.parts.filter(({ name, suppliedLoose }) => {
          if (!mine(name) || suppliedLoose || otherwise.has(name)) return false;
          if (step.objects.some((object) => object.name === name)) return false;
          // The unit's own body stays where it is: it has to be washed once it is open.
          const open = restsOn(relations.part(name)).length === 0 && relations.onIt(name).some((on) => out(on.name));
          return (out(name) || open) && before.may(before.part(name).dirt, dirt.dirty);
        });
        if (left.length === 0) return;
        const names = left.map(({ name }) => name);
        const fluid = procedure.shop.fluids.find(({ name }) => name === step.fluid);
        const spoilt = left.filter((part) => fluid !== undefined && isSpoiltBy(part, fluid.kind));
        const rest = left.filter((part) => !spoilt.includes(part));
        report({
          at: step,
          path,
          rootCause: 'dirty:-1',
          message: say`The ${partsWords(procedure, names)} ${names.length > 1 ? say`are` : say`is`} left out of the first wash.`,
          why: say`${names.length > 1 ? say`they go` : say`it goes`} on dirty among clean parts.`,
          help: joined([
            ...(rest.length === 0
              ? []
              : [
                  say`Add ${partsWritten(
                    procedure,
                    rest.map(({ name }) => name),
                  )} to it, or write “wash all except” and the parts that must not be washed.`,
                ]),
            ...(spoilt.length === 0
              ? []
              : [
                  say`Clean ${partsWritten(
                    procedure,
                    spoilt.map(({ name }) => name),
                  )} another way: ${fluid!.name} spoils ${spoilt.length > 1 ? say`them` : say`it`}.`,
                ]),
          ]),
        });
      }),
    };
  },
};

/** A stage that washes what the first one leaves to it, and nothing a second time. */
function isTheRest(stage: Stage, first: Stage): boolean {
  // A last wash of all is not what each of them was waiting for.
  const namesIn = (one: Stage) =>
    washes(one).flatMap((step) => (isOfAll(step) ? [] : step.objects.map(({ name }) => name)));
  const before = new Set(namesIn(first));
  return stage !== first && namesIn(stage).every((name) => !before.has(name));
}

function washes(stage: Stage) {
  return stage.steps.filter((step) => step.verb === 'wash' || step.verb === 'soak');
}
