/**
 * Text of an author, a file's name or an argument, made safe to show. Written raw, it could move the cursor of a terminal,
 * hide or turn around the text beside it, or give commands to a build server that reads the log.
 */
import pc from 'picocolors';
import { codeOf } from '../../language/syntax/text-problem.ts';

/** Characters that are not seen or steer what shows them; not line feed and tab. */
const hidden =
  /[\0-\u0008\u000B-\u001F\u007F-\u009F\u061C\u200B-\u200F\u2028-\u202E\u2060-\u206F\uFEFF\uFFF9-\uFFFB\u{E0000}-\u{E007F}]/gu;

/** The colors that picocolors sets here. Where there are none, an escape can only have come from outside. */
const color = /(\u001B\[(?:1|2|22|3[1236]|39)m)/u;

/** A line that begins so, or holds the second, is a command to GitHub Actions; the third to Azure Pipelines. */
const commands = /^((?:[ \t]|\u001B\[\d+m)*):(?=:)|#(?=#\[)|#(?=#vso\[)/gmu;

/** With every hidden character written out, as `<U+202E>`; `colored`: but for the colors that this program has set. */
export function visible(text: string, colored = false): string {
  const parts = text.replace(commands, (sign, before?: string) =>
    before === undefined ? `<${codeOf(sign)}>` : `${before}<${codeOf(':')}>`,
  );
  return (colored && pc.isColorSupported ? parts.split(color) : [parts])
    .map((part, index) => (index % 2 === 1 ? part : part.replace(hidden, (sign) => `<${codeOf(sign)}>`)))
    .join('');
}

/** JSON with the same value, in which no hidden character is raw. */
export function visibleJson(value: unknown, indent = 2): string {
  const units = (sign: string) =>
    Array.from({ length: sign.length }, (_, at) => `\\u${sign.charCodeAt(at).toString(16).padStart(4, '0')}`).join('');
  return JSON.stringify(value, null, indent)
    .replace(hidden, units)
    .replace(/##(?=\[|vso\[)/gu, `#${units('#')}`);
}

/** HTML that shows the same, in which no hidden character is raw. */
export function visibleHtml(html: string): string {
  const reference = (sign: string) => `&#x${sign.codePointAt(0)!.toString(16)};`;
  return html.replace(hidden, reference).replace(/##(?=\[|vso\[)/gu, `#${reference('#')}`);
}
