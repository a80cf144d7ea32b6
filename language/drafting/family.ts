import { blank, list } from './blank.ts';

/** What a first family is written from: everything in it is the author's. */
export interface FamilyRequest {
  readonly name: string;
  readonly title: string;
  /** Names of the parts in the order in which they are built, what carries the others first. */
  readonly parts: readonly string[];
  readonly tests: readonly string[];
}

/**
 * A first family: each part on the one before, and the last one screwed to the first, over all between them. It can be drawn, and
 * is right for the simplest units alone: its remarks say what to change.
 */
export function draftFamily({ name, title, parts, tests }: FamilyRequest): string {
  const [body = 'body', ...others] = parts;
  const last = others.length > 1 ? others.at(-1)! : null;
  const stack = last === null ? others : others.slice(0, -1);
  const width = Math.max(...parts.map((part) => part.length), body.length);
  const wide = width + 2;
  const line = (part: string, facts: string) =>
    `  part ${part.padEnd(width)}  ${`"${sentence(part)}"`.padEnd(wide)}  ${facts}`.trimEnd();
  return [
    `family ${name} "${title}" {`,
    '  // What does each part lie on, in or through? What holds it? Which parts are renewed every time?',
    line(body, `held in "${blank}"`),
    ...stack.map((part, index) => line(part, index === 0 ? `in ${body}` : `on ${stack[index - 1]}`)),
    ...(last === null ? [] : [line(last, `on ${body}   holds ${stack.at(-1)}`)]),
    '',
    '  // Ground and lapped faces, and what guards them: face body.end lapped meets nozzle.top guarded by nut',
    `  port inlet, outlet on ${body}`,
    ...(last === null ? [] : [`  joint ${last} to ${body}`]),
    ...(tests.length === 0 ? [] : ['', `  proven by ${list(tests)}`]),
    '}',
    '',
  ].join('\n');
}

function sentence(name: string): string {
  const words = name.replaceAll('-', ' ');
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}
