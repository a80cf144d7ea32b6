import pc from 'picocolors';
import { cautionsByStep, type Topic, usualHazards } from '../../language/analysis/cautions/index.ts';
import { allSteps } from '../../language/analysis/locations.ts';
import { wordsIn } from '../../language/i18n/index.ts';
import { messageLanguage, worded, words } from './messages.ts';
import { openProcedure } from './procedure.ts';
import { say } from './say.ts';
import { UsageError } from './usage-error.ts';

/** The usual cautions: signal word, topic, and what each follows from. */
export function explainCautions(): void {
  const width = Math.max(...usualHazards.map(({ topic }) => topic.length));
  for (const { topic, word, from } of usualHazards) say(`${topic.padEnd(width)}  ${word.padEnd(7)}  ${words(from)}\n`);
}

/** One of them, as it is printed, and what it follows from. False: none is called so. */
export function explainCaution(topic: string): boolean {
  const caution = usualHazards.find((one) => one.topic === topic);
  if (caution === undefined) return false;
  say(`${textOf(caution.topic, caution.word)}\n\n${worded`Follows from: ${caution.from}.`}\n`);
  return true;
}

/** The usual cautions of one step of a procedure, and the fact that each follows from. */
export async function explainStep(name: string, number: string, workspace: string): Promise<number> {
  const { procedure } = (await openProcedure(name, workspace)).found;
  const steps = allSteps(procedure);
  const step = steps.find((one) => one.number === number);
  if (step === undefined)
    throw new UsageError(
      worded`${procedure.name} has no step ${number}. Its steps go from ${steps[0]?.number ?? '–'} to ${steps.at(-1)?.number ?? '–'}.`,
    );
  const called = cautionsByStep(procedure)(step);
  if (called.length === 0) say(`${worded`Step ${number} calls for no caution.`}\n`);
  for (const { topic, word, because } of called)
    say(`${pc.bold(topic)}: ${words(because)}\n${textOf(topic, word)}\n\n`);
  return 0;
}

function textOf(topic: Topic, word: keyof ReturnType<typeof wordsIn>['signals']): string {
  const { cautions, signals } = wordsIn(messageLanguage());
  return `${signals[word]}: ${cautions[topic].text}`;
}
