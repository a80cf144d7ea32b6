import { markdownText } from '../../../language/ide/hover/markdown.ts';
import { type Filling, say, term } from '../../../language/say/say.ts';
import type { KnownVisit } from '../host.ts';
import type { Row } from './sqlite.ts';

/** Puts what is said into the language of who reads it. */
type Tell = (said: Filling) => string;

/** `as left opening 254 bar, pass (limit 250 to 258 bar) on PG-400`. */
export function resultText(row: Row, tell: Tell): string {
  const { role, name, value, value_unit: unit, passed, limited, tool, watched, note } = row;
  if (role === 'words') return `${name} “${note}”`;
  const figure = value === null ? [] : [`${value} ${unit}`];
  const verdict = passed === null || role === 'torque' ? [] : [tell(passed === 1 ? say`pass` : say`fail`)];
  const read = `${roleText(row, tell)} ${[...figure, ...verdict].join(', ')}`;
  const held = limited == null ? read : tell(say`${read} (limit ${String(limited)})`);
  const tools = [tool, watched].filter((one) => one != null);
  return tools.length === 0 ? held : tell(say`${held} on ${tools.join(', ')}`);
}

/** `as left opening`; of a shim its own name is in its role. */
export function roleText({ role, name }: Row, tell: Tell): string {
  const said = tell(term(String(role)));
  return name === 'shim' && /^shim /u.test(String(role)) ? said : `${said} ${name}`;
}

/** `here before: job 2107, 2026-03-02, wear`. */
export function visitWords({ job, closed, cause }: KnownVisit, tell: Tell): string {
  const when = tell(say`here before: job ${job}, ${closed}`);
  return cause === null ? when : `${when}, ${cause}`;
}

export function visitMarkdown(serial: string, { job, closed, customer, results }: KnownVisit, tell: Tell): string {
  const head = tell(say`Serial ${serial} was here before: job ${job}, closed ${closed}, ${customer ?? ''}.`);
  return [markdownText(head), ...results.map((one) => `- ${markdownText(resultText(one, tell))}`)].join('\n');
}
