import * as z from 'zod';
import { calculations } from '../../../language/calculator/work-out.ts';
import { worded, words } from '../../cli/messages.ts';
import { calculationAnswer } from '../../cli/work-out.ts';
import { type AddTool, answered, readOnly, text } from '../tool.ts';

/** The calculations of the bench, with their working. */
export const addCalculate: AddTool = (server) => {
  server.registerTool(
    'calculate',
    {
      title: 'Do a calculation',
      description: worded`Does a calculation of the bench exactly, with formula, source and working (shims, wrench settings, gauges, needles). Without a name: the list. With a name alone: what it takes.`,
      inputSchema: {
        calculation: z.string().min(1).optional(),
        figures: z
          .array(z.string())
          .default([])
          .describe(worded`Each as name=value with its unit, such as "guide=6 mm"; several values with commas between`),
      },
      annotations: readOnly,
    },
    ({ calculation: name, figures }) =>
      answered(() => {
        if (name === undefined) return text(calculations.map((one) => `${one.name}: ${words(one.title)}`).join('\n'));
        return text(
          calculationAnswer(name, figures, worded`There are: ${calculations.map((one) => one.name).join(', ')}.`),
        );
      }),
  );
};
