import { html, joined, type Markup, trusted } from '../../i18n/markup.ts';
import type {
  Block,
  CautionBlock,
  Cell,
  Drawing,
  Fact,
  FailPath,
  Grid,
  LimitLine,
  Lookup,
  PlaceBlock,
  RouteBlock,
  Sheet,
  SourceLine,
  Span,
  StepBlock,
  TableBlock,
} from '../model.ts';
import { renderStyle } from './html-style.ts';
import { qrSvg } from './typst.ts';

/** A font as a data URL. */
export interface FontFace {
  readonly weight: 400 | 700;
  readonly dataUrl: string;
}

export interface HtmlOptions {
  /** Embedded fonts; without them the reader's own sans-serif is taken. */
  readonly fonts?: readonly FontFace[];
  /** Content security policy of the document; by default nothing is loaded and nothing runs. Null: the host sets its own. */
  readonly policy?: string | null;
}

/** Nothing is loaded and nothing runs. */
const closedPolicy = "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:";

/**
 * The sheet as one self-contained page, with no script and nothing loaded from elsewhere. Steps and stages carry
 * `data-source-line` (zero-based) and `data-source-file`.
 */
export function renderHtml(sheet: Sheet, options: HtmlOptions = {}): string {
  return documentOf([sheet], sheet.title, options);
}

/** Several sheets as one page, each beginning on a new sheet of paper. Ids have the place of the sheet before them. */
export function renderHtmlPages(
  sheets: readonly [Sheet, ...Sheet[]],
  title: string,
  options: HtmlOptions = {},
): string {
  return documentOf(sheets, title, options);
}

function documentOf(sheets: readonly [Sheet, ...Sheet[]], title: string, options: HtmlOptions): string {
  const [first] = sheets;
  const pages = sheets.map((sheet, index) => pagesOf(sheet, sheets.length === 1 ? '' : `${index + 1}-`));
  const style = renderStyle(first, options.fonts ?? []);
  return pageOf({ language: first.language, title, style, body: joined(pages, '\n') }, options);
}

/** A self-contained page. `style` holds nothing of an author’s but what the style sheet itself escapes. */
export function pageOf(
  page: { readonly language: string; readonly title: string; readonly style: string; readonly body: Markup },
  { policy = closedPolicy }: HtmlOptions,
): string {
  return String(html`<!doctype html>
<html lang="${page.language}">
<head>
<meta charset="utf-8">
${policy === null ? '' : html`<meta http-equiv="Content-Security-Policy" content="${policy}">\n`}<meta name="viewport" content="width=device-width">
<title>${page.title}</title>
<style>${trusted(page.style)}</style>
</head>
<body>
${page.body}
</body>
</html>
`);
}

function pagesOf(sheet: Sheet, prefix: string): Markup {
  return html`${sheet.watermark === null ? '' : html`<div class="watermark" aria-hidden="true">${sheet.watermark}</div>\n`}<table class="pages" role="presentation">
<thead><tr><td>${head(sheet)}</td></tr></thead>
<tfoot><tr><td>${foot(sheet)}</td></tr></tfoot>
<tbody><tr><td><main>
${joined(
  sheet.blocks.map((one) => block(one, prefix)),
  '\n',
)}
</main></td></tr></tbody>
</table>`;
}

function head(sheet: Sheet): Markup {
  const { subtitle, title, alarm, facts, qr } = sheet.header;
  return html`<header><div class="what"><p class="title"><span class="kind">${subtitle}</span> <b>${title}</b></p>
<dl>${joined(facts.map(entry), '\n')}</dl></div>
${alarm === null ? '' : html`<b class="alarm">${alarm}</b> `}<div class="qr" role="img" aria-label="${qr.alt}">${qrSvg(sheet)}</div></header>`;
}

function foot(sheet: Sheet): Markup {
  const aid = sheet.firstAid === null ? '' : html`<p class="aid">${saidWhole(sheet.firstAid)}</p>`;
  return html`<footer>${aid}<p>${sheet.foot}</p></footer>`;
}

/** Words in quotes are to be said: they are not broken, at a hyphen least of all. */
function saidWhole(text: string): Markup {
  const parts = text.split(/((?:"|[„«]).{1,60}?(?:"|[“»]))/u);
  return html`${parts.map((part, index) => (index % 2 === 1 ? html`<span class="said">${part}</span>` : part))}`;
}

function block(one: Block, prefix: string): Markup {
  switch (one.kind) {
    case 'heading':
      return html`<h2 class="section">${one.text}</h2>`;
    case 'text':
      return html`<p>${one.strong ? html`<b>${one.text}</b>` : one.text}</p>`;
    case 'facts':
      return html`<dl class="for">${joined(one.facts.map(entry), '\n')}</dl>`;
    case 'route':
      return route(one, prefix);
    case 'drawing':
      return html`<section class="drawing">${one.title === '' ? '' : html`<h2>${one.title}</h2>`}${drawing(one)}</section>`;
    case 'table':
      return table(one);
    case 'place':
      return place(one, prefix);
    case 'caution':
      return caution(one);
    case 'step':
      return step(one, prefix);
    case 'grid':
      return html`<section class="close">${one.title === '' ? '' : html`<h3>${one.title}</h3>`}${one.grids.map(grid)}</section>`;
  }
}

/** A fact at the head; one without a text is a line to write on. */
function entry({ label, text, href }: Fact): Markup {
  const said = href === undefined ? text : html`<a href="${href}">${text}</a>`;
  return html`<div><dt>${label}</dt> <dd${text === '' ? html` class="fill"` : ''}>${said}</dd></div>`;
}

function route({ title, stops }: RouteBlock, prefix: string): Markup {
  const stop = ({ station, stages }: RouteBlock['stops'][number]) =>
    html`<li>${station === '' ? '' : html`<b>${station}</b> `}${joined(
      stages.map(
        (stage) =>
          html`<a href="#${prefix}stage-${stage.number}"><span class="number">${stage.number}</span> ${stage.title}</a>`,
      ),
      ' ',
    )}</li>`;
  return html`<section class="route"><h2>${title}</h2><ol>${joined(stops.map(stop), ' ')}</ol></section>`;
}

/** The picture as it was made: it is sound SVG of our own, and authors' texts in it are escaped. */
function drawing({ svg, alt, width }: Drawing): Markup {
  return html`<div class="picture" role="img" aria-label="${alt}" style="width:${width}mm">${trusted(svg)}</div>`;
}

function fail({ lead, ways, units, stop }: FailPath, prefix: string): Markup {
  // Room for the numbers of the units that may come there.
  const wide = units > 3 ? ' wide' : '';
  const box = (name: string) =>
    html`${name === '' ? '' : html`<span class="count">${name}</span> `}<span class="try${wide}"></span>`;
  const stopped = ({ number, target, title, tries, boxes }: FailPath['ways'][number]['stops'][number]) =>
    html`<div class="stop"><p>${target === '' ? html`<b>${number}</b>` : html`<a href="#${prefix + target}">${number}</a>`} ${title}</p> <p class="tries"><span>${tries}</span> ${joined(boxes.map(box), ' ')}</p></div> `;
  const part = ({ verdict, stops, end }: FailPath['ways'][number]) =>
    html`<div class="way">${verdict === '' ? '' : html`<b class="verdict">${verdict}</b> `}${stops.map(stopped)}${end === '' ? '' : html`<div class="stop end"><p>${end}</p> <p class="tries">${box('')}</p></div>`}</div>`;
  return html`<div class="fail"><p><b>${lead}</b></p>${ways.map(part)}${stop === '' ? '' : html`<p><b>${stop}</b></p>`}</div>`;
}

function table({ title, columns, rows, ownPage }: TableBlock): Markup {
  const shares = columns.reduce((sum, { share }) => sum + share, 0);
  const cell = ({ text, fill, strong }: Cell) =>
    html`<td${fill === true ? html` class="fill"` : ''}>${strong === true ? html`<b>${text}</b>` : text}</td>`;
  return html`<table class="listing${ownPage === true ? ' own-page' : ''}"><caption>${title}</caption>
<colgroup>${columns.map(({ share }) => html`<col style="width:${((100 * share) / shares).toFixed(2)}%">`)}</colgroup>
<thead><tr>${joined(
    columns.map((column) => html`<th scope="col">${column.head}</th>`),
    ' ',
  )}</tr></thead>
<tbody>${joined(
    rows.map((row) => html`<tr>${joined(row.map(cell), ' ')}</tr>`),
    '\n',
  )}</tbody></table>`;
}

function place({ form, id, number, title, facts, line }: PlaceBlock, prefix: string): Markup {
  const level = form === 'stage' ? 'h2' : 'h3';
  return html`<section class="place" id="${prefix + id}"${where(line)}><${level}><span class="number">${number}</span> ${title}</${level}>${factList(facts)}</section>`;
}

function caution({ word, label, text, short }: CautionBlock): Markup {
  return html`<p class="caution ${word.toLowerCase()}${short ? ' short' : ''}" role="note"><b>${label}</b> <span>${text}</span></p>`;
}

function step(one: StepBlock, prefix: string): Markup {
  const label = `${prefix}${one.id}-text`;
  return html`<section class="step${one.gate ? ' gate' : ''}" id="${prefix + one.id}"${where(one.line)} aria-labelledby="${label}">
${joined(one.cautions.map(caution), '\n')}
<div class="row"><p class="number">${one.number}</p> <div class="words"><p id="${label}">${one.only === null ? '' : html`<b class="only">${one.only}</b> `}${spans(one.sentence)}</p>
${limits(one.limits)}
${joined(one.lookups.map(lookup), '\n')}
${one.drawings.length === 0 ? '' : html`<div class="pictures">${joined(one.drawings.map(drawing), ' ')}</div>`}
${factList(one.facts)}</div></div>
${joined(
  one.notes.map((note) => html`<p class="note"><b>${note.label}</b> ${note.text}</p>`),
  '\n',
)}
${joined(one.grids.map(grid), '\n')}
${
  one.lines.length === 0
    ? ''
    : html`<div class="lines">${joined(
        one.lines.map((line) => html`<p><span>${line}</span> <span class="line"></span></p>`),
        ' ',
      )}</div>`
}
${one.fail === null ? '' : fail(one.fail, prefix)}
</section>`;
}

function where({ file, line }: SourceLine): Markup {
  return html` data-source-line="${line}" data-source-file="${file}"`;
}

function spans(list: readonly Span[]): Markup {
  return html`${list.map(({ text, strong }) => (strong === true ? html`<b>${text}</b>` : text))}`;
}

/** Side by side where a reading is judged by more than one kind of limit. */
function limits(lines: readonly LimitLine[]): Markup {
  const columns: LimitLine[][] = [];
  for (const line of lines) {
    if (line.head !== '' || columns.length === 0) columns.push([line]);
    else columns.at(-1)!.push(line);
  }
  const column = (of: readonly LimitLine[]) =>
    html`<div>${of[0]!.head === '' ? '' : html`<p class="kind">${of[0]!.head}</p>`}${joined(of.map(limit), '\n')}</div>`;
  return columns.length === 0 ? html`` : html`<div class="limits">${joined(columns.map(column), ' ')}</div>`;
}

function limit({ label, value, also, source }: LimitLine): Markup {
  const part = (name: string, text: string) => (text === '' ? [] : [html`<span class="${name}">${text}</span>`]);
  const bold = html`<b class="value${[...value].length > 36 ? ' sentence' : ''}">${value}</b>`;
  return html`<p class="limit">${joined([...part('label', label), bold, ...part('also', also), ...part('source', source)], ' ')}</p>`;
}

function lookup({ title, from, to, pairs }: Lookup): Markup {
  return html`<table class="lookup">${title === '' ? '' : html`<caption>${title}</caption>`}
<tr><th scope="row">${from}</th> ${joined(
    pairs.map((pair) => html`<td>${pair.from}</td>`),
    ' ',
  )}</tr>
<tr><th scope="row">${to}</th> ${joined(
    pairs.map((pair) => html`<td><b>${pair.to}</b></td>`),
    ' ',
  )}</tr></table>`;
}

function factList(facts: readonly Fact[]): Markup {
  if (facts.length === 0) return html``;
  const fact = ({ label, text }: Fact) =>
    text === '' || label === '' ? html`<b>${label + text}</b>` : html`${label} <b>${text}</b>`;
  return html`<ul class="facts">${joined(
    facts.map((one) => html`<li>${fact(one)}</li>`),
    ' ',
  )}</ul>`;
}

function grid({ title, across, columns, rows }: Grid): Markup {
  const empty = Array.from({ length: across - columns.length }, () => html`<td class="none"></td>`);
  const cells = html`${columns.map(() => html`<td></td>`)}${empty}`;
  return html`<table class="boxes${across > 6 ? ' full' : ''}"><thead><tr><th scope="col" class="name">${title}</th> ${joined(
    columns.map(
      ({ place: name, detail }) =>
        html`<th scope="col">${name}${detail === '' ? '' : html` <small>${detail}</small>`}</th>`,
    ),
    ' ',
  )}${empty}</tr></thead>
<tbody>${joined(
    rows.map(
      ({ label, unit }) =>
        html`<tr><th scope="row">${label}${unit === '' ? '' : html`, <b>${unit}</b>`}</th>${cells}</tr>`,
    ),
    '\n',
  )}</tbody></table>`;
}
