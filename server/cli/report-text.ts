import { codeFrameColumns } from '@babel/code-frame';
import pc from 'picocolors';
import wrapAnsi from 'wrap-ansi';
import { areaOf } from '../../language/diagnostics/index.ts';
import { type Diagnostic, fullMessage } from '../../language/model/diagnostic.ts';
import { say } from '../../language/say/say.ts';
import type { Checked } from './check.ts';
import { fixedLines } from './fix.ts';
import { words } from './messages.ts';
import { visible } from './visible.ts';

/** Most findings that are shown with their lines; the rest are only counted. */
const most = 200;

/** For a person at a terminal: what, where, the line, and what else has a part in it. */
export function textReport(checked: Checked): string {
  const shown = checked.diagnostics.slice(0, most).map((diagnostic) => one(diagnostic, checked));
  const left = checked.diagnostics.length - shown.length;
  const rest = left > 0 ? [`${words(say`… and ${left} more.`)}\n`] : [];
  const fixed = checked.fixed.length === 0 ? [] : [fixedLines(checked.fixed, words(say`fixed`))];
  return [...fixed, ...shown, ...rest, summary(checked)].join('\n');
}

function one(diagnostic: Diagnostic, checked: Checked): string {
  const { file, range } = diagnostic.source;
  const severity =
    diagnostic.severity === 'error' ? pc.bold(pc.red(words(say`error`))) : pc.bold(pc.yellow(words(say`warning`)));
  const step = diagnostic.step === undefined ? '' : pc.dim(`  ${words(say`step ${diagnostic.step}`)}`);
  const head = `${pc.cyan(`${visible(file)}:${range.start.line + 1}:${range.start.character + 1}`)}  ${severity}  ${pc.bold(diagnostic.rule)}${step}`;
  const related = (diagnostic.related ?? []).map(({ message, source }) =>
    pc.dim(`  ${visible(message)} (${visible(source.file)}:${source.range.start.line + 1})`),
  );
  const lines = frame(diagnostic, checked.textOf(file));
  return [head, wrapped(visible(fullMessage(diagnostic))), ...(lines === null ? [] : [lines]), ...related, ''].join(
    '\n',
  );
}

/** The line with the place marked; a finding of many lines is marked where it begins. Null: no line to show. */
function frame(diagnostic: Diagnostic, text: string | null): string | null {
  const { start, end } = diagnostic.source.range;
  if (text === null) return null;
  const lines = text.split(/\r\n|\n|\r/u);
  const line = lines[start.line];
  if (line === undefined || line.length > 400) return null;
  const last = end.line === start.line ? end.character : line.length;
  // Marked where it is shown: a hidden character written out is longer than it was.
  const shown = (character: number) => visible(line.slice(0, character)).length;
  const marked = codeFrameColumns(
    lines.map((one) => visible(one)).join('\n'),
    {
      start: { line: start.line + 1, column: shown(start.character) },
      end: { line: start.line + 1, column: shown(Math.max(last, start.character + 1)) },
    },
    { highlightCode: false, linesAbove: 1, linesBelow: 0 },
  );
  return marked.replace(/^/gmu, '  ');
}

function wrapped(message: string): string {
  const width = Math.max(60, Math.min(process.stdout.columns ?? 100, 120)) - 2;
  return wrapAnsi(message, width).replace(/^/gmu, '  ');
}

function summary({ files, errors, warnings, diagnostics, settings }: Checked): string {
  const checked = files.length === 1 ? say`${1} file checked` : say`${files.length} files checked`;
  const first = errors === 1 ? say`${1} error` : say`${errors} errors`;
  const second = warnings === 1 ? say`${1} warning` : say`${warnings} warnings`;
  const summed =
    diagnostics.length === 0
      ? pc.green(words(say`${checked}: nothing found.`))
      : (errors > 0 ? pc.red : pc.yellow)(words(say`${checked}: ${first}, ${second}.`));
  const explained = diagnostics.find(({ rule }) => areaOf(rule) !== null);
  return [
    summed,
    ...(settings === null || settings.restated === 0
      ? []
      : [
          words(
            settings.restated === 1
              ? say`${settings.file} changes the severity of ${1} finding or turns it off.`
              : say`${settings.file} changes the severity of ${settings.restated} findings or turns them off.`,
          ),
        ]),
    ...(explained === undefined
      ? []
      : [
          pc.dim(
            words(
              explained === diagnostics[0]
                ? say`For more on the first: npx handtight explain ${explained.rule}`
                : say`For more on ${explained.rule}: npx handtight explain ${explained.rule}`,
            ),
          ),
        ]),
    '',
  ].join('\n');
}
