import * as z from 'zod';

const position = z.object({
  line: z.number().int().nonnegative().describe('Zero-based, as in the Language Server Protocol'),
  character: z.number().int().nonnegative().describe('Zero-based, in UTF-16 units'),
});

/** The JSON that `handtight check --format json` writes. Published as check.schema.json with the package. */
export const checkReport = z
  .object({
    files: z.array(z.string()).describe('Paths of the files checked, from the current folder'),
    errors: z.number().int().nonnegative(),
    warnings: z.number().int().nonnegative(),
    fixed: z
      .array(z.object({ file: z.string(), count: z.number().int().positive() }))
      .optional()
      .describe('With --fix: files that were changed, and how many fixes were made in each'),
    findings: z.array(
      z.object({
        rule: z.string().describe('Stable name of the rule; handtight explain RULE prints its page'),
        severity: z.enum(['error', 'warning']),
        message: z.string().describe('What is wrong'),
        why: z.string().optional().describe('Why it matters at the bench: goes on behind the message after a colon'),
        help: z.string().optional().describe('What to do'),
        when: z.string().optional().describe('On which way and for which part numbers, where not always'),
        file: z.string(),
        range: z.object({ start: position, end: position }),
        step: z.string().optional().describe('Printed number of the step'),
      }),
    ),
  })
  .describe('What handtight check found');

export type CheckReport = z.infer<typeof checkReport>;
