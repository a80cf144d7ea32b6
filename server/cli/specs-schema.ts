import * as z from 'zod';

const place = z.object({
  file: z.string().describe('Path from the current folder'),
  line: z.number().int().nonnegative().describe('Zero-based'),
  last: z.number().int().nonnegative().describe('Last line of the statement, zero-based'),
});

const quantity = z.object({
  number: z.string().describe('Decimal digits with a point, as exactly as written'),
  unit: z.string(),
});

const cell = z.object({
  value: z.string().describe('As the sheet prints it; empty where none is given'),
  also: z.string().describe('Printed beside: the window, and what was written'),
  standing: z.string().nullable().describe("The shop's standing tolerance, where none was written, with its source"),
  source: z.string().nullable(),
  low: quantity.nullable().describe('Low end, in the unit that it is written in; null: open, or no limit'),
  high: quantity.nullable(),
  tool: z
    .object({
      number: z.string().nullable().describe('Null: a kind of tool, or words'),
      words: z.string(),
      error: z.string().nullable().describe('Permissible error where the tool reads this limit'),
    })
    .nullable(),
  ratio: z
    .string()
    .regex(/^\d+\.\d:1$/u)
    .nullable()
    .describe('Half of what the limit lets through, over the permissible error of the tool, rounded down'),
  missing: z.array(z.object({ kind: z.enum(['value', 'source', 'tolerance', 'tool', 'accuracy']), words: z.string() })),
  line: place,
});

/** The JSON that `handtight specs --format json` writes. Published as specs.schema.json with the package. */
export const specsReport = z
  .object({
    procedure: z.string(),
    title: z.string(),
    revision: z.string().nullable(),
    family: z.string(),
    shop: z.string(),
    missing: z.number().int().nonnegative().describe('How many things are missing'),
    columns: z
      .array(z.object({ number: z.string().nullable(), title: z.string() }))
      .min(1)
      .describe('The part numbers; a single one with no number where there are none'),
    groups: z.array(
      z.object({
        kind: z.enum(['joints', 'adjusters', 'tests', 'measurements', 'others']),
        title: z.string(),
        items: z.array(
          z.object({
            title: z.string(),
            facts: z.array(z.string()),
            line: place,
            figures: z.array(
              z.object({
                what: z.string(),
                steps: z.array(z.string()).describe('Printed numbers of the steps that use it'),
                line: place,
                cells: z.array(cell.nullable()).describe('In the order of the columns; null: not for this part number'),
              }),
            ),
          }),
        ),
      }),
    ),
    remarks: z.array(z.string()).describe('How the ratio is reckoned, and how readings near a limit are judged'),
  })
  .describe('The specifications of a procedure, as handtight specs lays them out');

export type SpecsReport = z.infer<typeof specsReport>;
