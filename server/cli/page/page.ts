/** An answer as a page: pictures over time, and the table that they were drawn from. It needs nothing beside it. */
import pc from 'picocolors';
import { html, type Markup, trusted } from '../../../language/i18n/markup.ts';
import { shownPath } from '../../host/files/find-files.ts';
import { WriteError, writeWhole } from '../../host/print/write.ts';
import { messageLanguage, worded } from '../messages.ts';
import type { Column } from '../rows.ts';
import { say } from '../say.ts';
import { UsageError } from '../usage-error.ts';
import { visibleHtml } from '../visible.ts';
import { drawPlot, type Plot } from './plot.ts';

const style = `
body { font: 15px/1.45 system-ui, sans-serif; color: #1a1a1a; background: #fff; max-width: 1080px; margin: 24px auto; padding: 0 16px; }
h1 { font-size: 22px; margin: 0 0 4px; } h2 { font-size: 17px; margin: 28px 0 6px; } p { margin: 4px 0 12px; }
table { border-collapse: collapse; margin: 8px 0 20px; font-variant-numeric: tabular-nums; }
th, td { text-align: left; vertical-align: top; padding: 3px 12px 3px 0; border-bottom: 1px solid #ddd; }
td:first-child { white-space: nowrap; } th { border-bottom: 2px solid #888; } td.figure { text-align: right; }
figure { margin: 16px 0; max-width: 760px; } figcaption { font-weight: 600; }
svg { max-width: 100%; } figure > svg { width: 100%; height: auto; } svg text { font-size: 12px; fill: #444; } .grid { stroke: #e2e2e2; }
.key span { margin-right: 14px; white-space: nowrap; }
@media print { body { margin: 0; max-width: none; } figure, tr { break-inside: avoid; } thead { display: table-header-group; } }
`;

export interface Page {
  readonly title: string;
  /** What is shown, of what and when. */
  readonly about: string;
  readonly blocks: readonly (Markup | null)[];
}

/** Writes a page, whole or not at all. Throws a UsageError. */
export function writePage(file: string, page: Page): void {
  try {
    writeWhole(file, visibleHtml(renderPage(page)), '--page');
  } catch (error) {
    throw error instanceof WriteError ? new UsageError(error.message) : error;
  }
  say(`${pc.green(worded`written`)}  ${shownPath(file)}\n`);
}

/** The whole page, with everything in it. */
function renderPage({ title, about, blocks }: Page): string {
  return `<!doctype html>\n${html`<html lang="${messageLanguage()}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title><style>${trusted(style)}</style></head>
<body><h1>${title}</h1>
<p>${about}</p>
${blocks.filter((one) => one !== null)}</body></html>`}\n`;
}

export function heading(text: string): Markup {
  return html`<h2>${text}</h2>\n`;
}

export function plots(all: readonly Plot[]): Markup[] {
  return all.flatMap((one) => drawPlot(one) ?? []);
}

/** The same columns as in the terminal. */
export function pageTable<Row>(rows: readonly Row[], columns: readonly Column<Row>[]): Markup {
  const shown = columns.filter(({ head }) => head !== null);
  return html`<table><thead><tr>${shown.map(({ head }) => html`<th scope="col">${head ?? ''}</th>`)}</tr></thead><tbody>
${rows.map(
  (row) =>
    html`<tr>${shown.map(({ value, shown: words }) => {
      const cell = (words ?? value)(row) ?? '';
      // A bar of ten signs is for the terminal: here there is a picture.
      const text = typeof cell === 'number' ? cell : cell.replace(/ [█·]+$/u, '');
      return html`<td${typeof cell === 'number' ? html` class="figure"` : ''}>${text}</td>`;
    })}</tr>\n`,
)}</tbody></table>
`;
}

export function lines(all: readonly string[]): Markup {
  return html`<ul>${all.map((one) => html`<li>${one}</li>`)}</ul>\n`;
}
