import { codeFrameColumns } from '@babel/code-frame';
import pc from 'picocolors';
import type { Finding } from '../../language/model/finding.ts';
import { areaOf } from '../../language/rules/index.ts';
import type { Checked } from './check.ts';

/** Most findings that are written with their lines; of the rest the count is. */
const most = 200;

/** For a person at a terminal: what, where, the line, what else bears on it. */
export function textReport(checked: Checked): string {
  const shown = checked.findings.slice(0, most).map((finding) => one(finding, checked));
  const left = checked.findings.length - shown.length;
  const rest = left > 0 ? [`… and ${left} more.\n`] : [];
  return [...shown, ...rest, summary(checked)].join('\n');
}

function one(finding: Finding, checked: Checked): string {
  const { file, range } = finding.source;
  const severity = finding.severity === 'error' ? pc.bold(pc.red('error')) : pc.bold(pc.yellow('warning'));
  const step = finding.step === undefined ? '' : pc.dim(`  step ${finding.step}`);
  const head = `${pc.cyan(`${file}:${range.start.line + 1}:${range.start.character + 1}`)}  ${severity}  ${pc.bold(finding.rule)}${step}`;
  const related = (finding.related ?? []).map(({ message, source }) =>
    pc.dim(`  ${message} (${source.file}:${source.range.start.line + 1})`),
  );
  return [head, wrapped(finding.message), frame(finding, checked.textOf(file)), ...related, ''].join('\n');
}

/** The line with the place marked; a finding of many lines is marked where it begins. */
function frame(finding: Finding, text: string): string {
  const { start, end } = finding.source.range;
  const line = text.split(/\r\n|\n|\r/u)[start.line];
  if (line === undefined || line.length > 400) return '';
  const last = end.line === start.line ? end.character : line.length;
  const marked = codeFrameColumns(
    text,
    {
      start: { line: start.line + 1, column: start.character },
      end: { line: start.line + 1, column: Math.max(last, start.character + 1) },
    },
    { highlightCode: false, linesAbove: 1, linesBelow: 0 },
  );
  return marked.replace(/^/gmu, '  ');
}

function wrapped(message: string): string {
  const width = Math.max(60, Math.min(process.stdout.columns ?? 100, 120)) - 2;
  const rows: string[] = [];
  for (const word of message.split(' ')) {
    const row = rows.at(-1);
    if (row !== undefined && row.length + 1 + word.length <= width) rows[rows.length - 1] = `${row} ${word}`;
    else rows.push(word);
  }
  return rows.map((row) => `  ${row}`).join('\n');
}

function summary({ files, errors, warnings, findings }: Checked): string {
  const counted = (count: number, word: string) => `${count} ${word}${count === 1 ? '' : 's'}`;
  const checked = `${counted(files.length, 'file')} checked`;
  if (findings.length === 0) return pc.green(`${checked}: nothing found.\n`);
  const words = `${checked}: ${counted(errors, 'error')}, ${counted(warnings, 'warning')}.`;
  const [first] = findings;
  // A defect of the tool has no page.
  const explain = areaOf(first!.rule) === null ? '' : `handtight explain ${first!.rule} says more of the first.\n`;
  return `${errors > 0 ? pc.red(words) : pc.yellow(words)}\n${pc.dim(explain)}`;
}
