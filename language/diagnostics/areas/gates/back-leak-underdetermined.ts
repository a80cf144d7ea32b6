import { gate } from '../../../analysis/locations.ts';
import { capital, either, listed } from '../../../analysis/prose.ts';
import { stageSteps } from '../../../analysis/stages.ts';
import type { Procedure, StepOf } from '../../../model/procedure.ts';
import { amount, kindOfLimit, window } from '../../../quantities/index.ts';
import { type Said, say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** The time that a pressure takes to fall past a lapped pair depends on more than the pair. */
export const backLeakUnderdetermined: Rule = {
  code: 'back-leak-underdetermined',
  severity: 'warning',
  since: '0.2.0',
  title: 'A leak past a lapped pair is timed, but not everything that affects the time is stated.',
  flow: ({ graph, layout }, report) => {
    const { procedure } = graph;
    if (procedure.family.parts.every((part) => part.matchedTo.length === 0)) return {};
    const seats = stageSteps(graph)
      .flatMap(({ step }) => (step.verb === 'test' ? [step] : []))
      .filter(({ gate, test }) => isSeatTest(gate.test) || test.hold !== null)
      .map((step) => layout.gates.get(step.gate.id)!);
    // Where the family lists a seat test, gate-missing and gate-out-of-order report it.
    const listedSeat = procedure.family.provenBy.some((proof) => isSeatTest(proof.name));
    return {
      looksAround: true,
      step: on(['test'], ({ step, before, path }) => {
        if (!timesALeak(step)) return;
        const name = step.gate.test;
        const unsaid = unsaidBy(procedure, step);
        // A family that is proven by this test and by no seat test has none: the pressure fall tests its seat.
        const proven = procedure.family.provenBy.some((proof) => proof.name === name);
        const seat = listedSeat || proven || seats.some((cell) => before.must(cell, ~gate.notYet));
        if (unsaid.length === 0 && seat) return;
        const noSeat = say`no seat test is passed before ${name}`;
        const seatWhy = say`a leaking seat lets the pressure fall too, and the pair would be blamed.`;
        const seatHelp = say`Test the seat first, held below opening.`;
        report({
          at: step,
          path,
          ...(unsaid.length === 0
            ? { message: say`${capital(noSeat)}.`, why: seatWhy, help: seatHelp }
            : {
                message: say`Test ${name} does not state the ${listed(unsaid)}${seat ? '' : say`, and ${noSeat}`}.`,
                why: say`the leak gap is only a few thousandths of a millimeter wide, and with another ${either(unsaid)} a good pair fails or a worn one passes.${seat ? '' : say` ${capital(seatWhy)}`}`,
                help: say`Write “with "calibration fluid at 20 to 25 °C", "upright, tip down"”, or what the maker says.${seat ? '' : say` ${seatHelp}`}`,
              }),
        });
      }),
    };
  },
};

function isSeatTest(name: string): boolean {
  return /\bseat/iu.test(name);
}

function timesALeak({ gate, test, limit }: StepOf<'test'>): boolean {
  const { from, to } = test;
  if (from !== null && to !== null) {
    const [start, end] = [window(from).high, window(to).low];
    if (kindOfLimit(from) !== 'pressure' || kindOfLimit(to) !== 'pressure') return false;
    return start === null || end === null || amount(end).compare(amount(start)) < 0;
  }
  return (
    limit?.form === 'limit' && kindOfLimit(limit.limit) === 'drops' && /back-?leak|leak-?(back|off)/iu.test(gate.test)
  );
}

/** What neither the conditions nor the text nor the notes of a test state. */
function unsaidBy(procedure: Procedure, step: StepOf<'test'>): Said[] {
  const said = [...step.conditions, step.text, step.note, step.accept].join(' ');
  const fluids = procedure.shop.fluids.some(({ name, title }) => said.includes(name) || said.includes(title));
  const at = step.at === null ? null : kindOfLimit(step.at);
  return [
    fluids || /\b(fluid|oil|diesel|fuel|ISO 4113)\b/iu.test(said) ? null : say`fluid`,
    at === 'temperature' || /°|\bdegrees?\b|\btemperature\b|\bwarm|\bcold\b/iu.test(said) ? null : say`temperature`,
    /\b(up|down|upright|upside|vertical(ly)?|horizontal(ly)?|level|lying|standing|hanging|inverted|attitude|position)\b/iu.test(
      said,
    )
      ? null
      : say`attitude of the unit`,
  ].filter((one) => one !== null);
}
