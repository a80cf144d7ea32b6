import * as z from 'zod';
import { calculations, usage, workOut } from '../../../language/calculator/work-out.ts';
import { nearest } from '../../../language/syntax/nearest.ts';
import { UsageError } from '../../cli/usage-error.ts';
import { type AddTool, answered, readOnly, text } from '../tool.ts';

/** The calculations of the bench, with their working. */
export const addCalculate: AddTool = (server) => {
  server.registerTool(
    'calculate',
    {
      title: 'Do a calculation',
      description:
        'Does a calculation of the bench exactly, with formula, source and working (shims, wrench settings, gauges, needles). Without a name: the list. With a name alone: what it takes.',
      inputSchema: {
        calculation: z.string().min(1).optional(),
        figures: z
          .array(z.string())
          .default([])
          .describe('Each as name=value with its unit, such as "guide=6 mm"; several values with commas between'),
      },
      annotations: readOnly,
    },
    ({ calculation: name, figures }) =>
      answered(() => {
        if (name === undefined) return text(calculations.map((one) => `${one.name}: ${one.title}`).join('\n'));
        const calculation = calculations.find((one) => one.name === name);
        if (calculation === undefined) {
          const names = calculations.map((one) => one.name);
          const near = nearest(name, names);
          throw new UsageError(
            `No calculation is called ${name}. ${near.length > 0 ? `Did you mean ${near.join(' or ')}?` : `There are: ${names.join(', ')}.`}`,
          );
        }
        if (figures.length === 0) return text(`${calculation.title}\n${usage(calculation)}`);
        const made = workOut(calculation, figures);
        if ('problem' in made) throw new UsageError(made.problem);
        return text(made.text);
      }),
  );
};
