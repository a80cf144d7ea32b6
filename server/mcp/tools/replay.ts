import * as z from 'zod';
import { worded } from '../../cli/messages.ts';
import { named } from '../../cli/named.ts';
import { cellText, type ReplayedStep, stepsOf, valuesText } from '../../cli/replay.ts';
import { draftOf } from '../folder.ts';
import { type AddTool, answered, readOnly, text } from '../tool.ts';

/** What each step does to the unit. */
export const addReplay: AddTool = (server, folder) => {
  server.registerTool(
    'replay',
    {
      title: 'Replay a procedure',
      description: worded`Returns each step of a procedure with what it changes on the unit (parts on or off, faces bare, joints tight, ports open, gates proven or stale), on every path through its repairs. With \`step\`, that step alone with the whole state before and after it.`,
      inputSchema: {
        procedure: z.string().min(1).describe(worded`Name of the procedure`),
        step: z.string().min(1).optional().describe(worded`Printed number of a step, such as 6.3 or R1.2`),
        file: z
          .string()
          .min(1)
          .default('draft.rebuild')
          .describe(worded`Path from the folder of the server, for \`text\``),
        text: z.string().optional().describe(worded`A text that is not saved, in which the procedure may be`),
      },
      annotations: readOnly,
    },
    ({ procedure: name, step, file, text: typed }) =>
      answered(async () => {
        const { result } = await folder.open(draftOf(file, typed));
        const found = result.procedureOf(name) ?? named('procedure', name, result.procedures, (one) => one.procedure);
        const lines = found.flows.flatMap((flow) => {
          const head = flow.graph.numbers === null ? [] : [worded`For ${flow.graph.numbers.join(', ')}`];
          const steps = stepsOf(flow).filter(({ number }) => step === undefined || number === step);
          return [...head, ...steps.map((one) => (step === undefined ? changed(one) : whole(one)))];
        });
        return text(lines.length === 0 ? worded`${name} has no step ${step ?? ''}.` : lines.join('\n'));
      }),
  );
};

function head({ number, words, path }: ReplayedStep): string {
  return `${number} ${words}${path === '' ? '' : ` (${path})`}`;
}

function changed(one: ReplayedStep): string {
  const changes = Object.entries(one.after)
    .filter(([location, values]) => one.before[location]!.join() !== values.join())
    .map(
      ([location, values]) =>
        `  ${cellText(location)}: ${valuesText(location, one.before[location]!)} → ${valuesText(location, values)}`,
    );
  return [head(one), ...changes].join('\n');
}

function whole(one: ReplayedStep): string {
  const state = Object.entries(one.after).map(([location, values]) => {
    const [before, after] = [valuesText(location, one.before[location]!), valuesText(location, values)];
    return `  ${cellText(location)}: ${before === after ? after : `${before} → ${after}`}`;
  });
  const cautions = one.cautions.map(({ word, topic, because }) => `  ${word} ${topic}: ${because}`);
  return [head(one), ...state, ...cautions].join('\n');
}
