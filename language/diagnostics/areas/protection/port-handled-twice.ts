import type { ControlFlowGraph } from '../../../analysis/control-flow-graph.ts';
import { age, allSteps, port } from '../../../analysis/locations.ts';
import { listed } from '../../../analysis/prose.ts';
import type { Port } from '../../../model/family.ts';
import type { Block, Step } from '../../../model/procedure.ts';
import type { Source } from '../../../model/source.ts';
import { failEntries, isOfAll } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** The state of a port in which a step on it does nothing, and the steps that bring that state about. */
const already = {
  cap: { bits: port.capped, words: say`capped`, by: ['cap'] },
  uncap: { bits: port.open, words: say`open`, by: ['uncap', 'disconnect'] },
  connect: { bits: port.connected, words: say`connected`, by: ['connect'] },
  disconnect: { bits: port.open | port.capped, words: say`disconnected`, by: ['disconnect'] },
} as const;

/**
 * A port that is already capped, opened, connected or disconnected is so again. It is reported only where no path needs
 * the step: on the first path through the stages, and in a repair straight from the one place that sends to it.
 */
export const portHandledTwice: Rule<{ source: Source }> = {
  code: 'port-handled-twice',
  severity: 'warning',
  since: '0.2.0',
  title: 'A port is capped, uncapped, connected or disconnected when it already is.',
  flow: ({ graph, layout, relations }, report) => {
    const isDoneBy = (one: Port, at: number, verb: keyof typeof already, block: Block) => {
      // A unit may come in with transit caps or lines on; a port that a part covered has none.
      if (at < 0) return verb === 'uncap' && one.under !== null;
      const point = graph.nodes[at];
      if (point?.kind !== 'step' || !already[verb].by.some((other) => other === point.step.verb)) return false;
      // A line that should have come off or on between two blocks is reported by their tests.
      return verb === 'cap' || verb === 'uncap' || point.block === block;
    };
    return {
      looksAround: true,
      step: on(['cap', 'uncap', 'connect', 'disconnect'], ({ step, block, before, path }) => {
        const { verb } = step;
        const { bits, words } = already[verb];
        const cells = (name: string) => layout.ports.get(name)!;
        const twice = step.objects.filter(({ name }) => {
          const one = relations.port(name);
          return (
            before.must(cells(name), bits) &&
            isDoneBy(one, before.since(cells(name)), verb, block) &&
            // A new part comes without the old one's cap.
            !before.may(before.part(one.part).age, age.new)
          );
        });
        const whole = twice.length === step.objects.length;
        if (twice.length === 0 || (isOfAll(step) && !whole)) return;
        const first =
          path.repair === null ||
          (path.from?.path.repair === null && path.repair === block && sendersOf(graph, block) === 1);
        if (!first) return;
        const names = twice.map(({ name }) => name);
        const since = Math.max(...names.map((name) => before.since(cells(name))));
        report({
          at: step,
          source: isOfAll(step) ? step.source : twice[0]!.source,
          path,
          since,
          // These may already have reported the missing step in between.
          rootCause: verb === 'cap' ? `capped:${since}` : verb === 'uncap' ? `open:${since}` : undefined,
          message: say`${names.length > 1 ? say`Ports` : say`Port`} ${listed(names)} ${names.length > 1 ? say`are` : say`is`} already ${words}.`,
          why: say`the bench hand looks for what is not there, and wonders which step was left out.`,
          help: say`Delete this, or add the missing step in between.`,
          data: whole && step.call === null ? { source: step.source } : undefined,
        });
      }),
    };
  },
  fix({ source }) {
    return { title: say`Delete this step`, safe: false, edits: [{ source, text: '' }] };
  },
};

/** From how many places a unit is sent to a repair; gates that are judged together count as one. */
function sendersOf({ procedure, gates, decisions }: ControlFlowGraph, block: Block): number {
  const judgedAt = (step: Step) => {
    const gate = gates.find((one) => one.step === step);
    return gate === undefined ? step.number : decisions.get(gate.node)!;
  };
  const senders = allSteps(procedure).filter((step) => failEntries(step).some((entry) => entry.repair === block.name));
  return new Set(senders.map(judgedAt)).size;
}
