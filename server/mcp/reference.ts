import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { nearest } from '../../language/syntax/nearest.ts';
import { worded } from '../cli/messages.ts';
import { meant } from '../cli/near.ts';
import { UsageError } from '../cli/usage-error.ts';
import { packageRoot } from '../host/files/package-root.ts';

interface Chapter {
  readonly title: string;
  readonly text: string;
}

/** The chapters under “Reference” of the README, as they are packed with the program. */
function chapters(): readonly Chapter[] {
  const path = join(packageRoot(), 'README.md');
  if (!existsSync(path)) return [];
  const [, text = ''] = /^## Reference\n([\s\S]*?)(?=^## |$(?![\s\S]))/mu.exec(readFileSync(path, 'utf8')) ?? [];
  return text
    .split(/^(?=### )/mu)
    .filter((part) => part.startsWith('### '))
    .map((part) => ({ title: /^### (.*)$/mu.exec(part)![1]!, text: part }));
}

/** Titles of the chapters. */
export function referenceTopics(): readonly string[] {
  return chapters().map(({ title }) => title);
}

/** A chapter, or all of them. Throws a UsageError with the titles where there is none of that title. */
export function reference(topic: string | undefined): string {
  const all = chapters();
  if (all.length === 0)
    throw new UsageError(
      worded`The reference is missing from this installation: its README is not there. Install it again.`,
    );
  if (topic === undefined) return all.map(({ text }) => text).join('');
  const found = all.find(({ title }) => title.toLowerCase() === topic.toLowerCase());
  if (found !== undefined) return found.text;
  const titles = all.map(({ title }) => title);
  const near = nearest(topic, titles);
  throw new UsageError(worded`No chapter is called ${topic}. ${meant(near, worded`There are: ${titles.join('; ')}.`)}`);
}
