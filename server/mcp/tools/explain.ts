import * as z from 'zod';
import { rules } from '../../../language/diagnostics/index.ts';
import { term } from '../../../language/say/say.ts';
import { rulePage } from '../../cli/explain.ts';
import { worded, words } from '../../cli/messages.ts';
import { reference, referenceTopics } from '../reference.ts';
import { type AddTool, answered, readOnly, text } from '../tool.ts';

/** The pages of the rules. */
export const addExplain: AddTool = (server) => {
  server.registerTool(
    'explain',
    {
      title: 'Explain a rule',
      description: worded`Returns the page of a rule (what is wrong, why it matters, a wrong and a right example, what it leaves alone); without a name, the list of all rules.`,
      inputSchema: { rule: z.string().min(1).optional().describe(worded`Name of the rule, as in a finding`) },
      annotations: readOnly,
    },
    ({ rule }) =>
      answered(() =>
        text(
          rule === undefined
            ? rules
                .map(({ code, severity, title }) => `${code} (${words(term(severity))}): ${words(term(title))}`)
                .join('\n')
            : rulePage(rule).markdown,
        ),
      ),
  );
};

/** The reference of the language. */
export const addLanguage: AddTool = (server) => {
  const topics = referenceTopics();
  server.registerTool(
    'language',
    {
      title: worded`Read the language reference`,
      description: worded`Returns a chapter of the reference of the language of .rebuild files. Read at least “Files, lines, names”, “family”, “procedure” and “Verbs” before you draft one. Chapters: ${topics.join('; ')}.`,
      inputSchema: { topic: z.string().min(1).optional().describe(worded`A chapter; left out: the whole reference`) },
      annotations: readOnly,
    },
    ({ topic }) => answered(() => text(reference(topic))),
  );
};
