import { type Said, say } from '../say/say.ts';
import { blank, list } from './blank.ts';

/** What a first family is written from: everything in it is the author's. */
export interface FamilyRequest {
  readonly name: string;
  readonly title: string;
  /** Names of the parts in the order in which they are built, what carries the others first; its name again begins another stack on it. */
  readonly parts: readonly string[];
  readonly tests: readonly string[];
  /** Says the remarks in the language of who writes on. */
  readonly tell: (said: Said) => string;
}

/**
 * A first family: each part on the one before, and the last one of a stack screwed to the body, over all between them. It can be
 * drawn, and is right for simple units alone: its remarks say what to change.
 */
export function draftFamily({ name, title, parts, tests, tell }: FamilyRequest): string {
  const [body = 'body', ...others] = parts;
  const stacks: string[][] = [];
  for (const part of [body, ...others]) {
    if (part === body) stacks.push([]);
    else stacks.at(-1)!.push(part);
  }
  const built = stacks.filter((stack) => stack.length > 0);
  // A lone part may just lie there.
  const screwed = (stack: readonly string[]) => (stack.length > 1 || built.length > 1 ? stack.at(-1)! : null);
  const width = Math.max(...parts.map((part) => part.length), body.length);
  const wide = width + 2;
  const line = (part: string, facts: string) =>
    `  part ${part.padEnd(width)}  ${`"${sentence(part)}"`.padEnd(wide)}  ${facts}`.trimEnd();
  const lines = (stack: readonly string[]) =>
    stack.map((part, index) => {
      if (part === screwed(stack)) return line(part, `on ${body}${index === 0 ? '' : `   holds ${stack[index - 1]}`}`);
      return line(part, index === 0 ? `in ${body}` : `on ${stack[index - 1]}`);
    });
  return [
    `family ${name} "${title}" {`,
    `  // ${tell(say`What does each part lie on, in or through? What holds it? Which parts are renewed every time?`)}`,
    line(body, `held in "${blank}"`),
    ...built.flatMap(lines),
    '',
    `  // ${tell(say`Ground and lapped faces, and what guards them: ${'face body.end lapped meets nozzle.top guarded by nut'}`)}`,
    `  port inlet, outlet on ${body}`,
    ...built.flatMap((stack) => (screwed(stack) === null ? [] : [`  joint ${screwed(stack)} to ${body}`])),
    ...(tests.length === 0 ? [] : ['', `  proven by ${list(tests)}`]),
    '}',
    '',
  ].join('\n');
}

function sentence(name: string): string {
  const words = name.replaceAll('-', ' ');
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}
