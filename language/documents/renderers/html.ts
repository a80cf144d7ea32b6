import { printable } from '../../i18n/printable.ts';
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
import { styleOf } from './html-style.ts';
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
export const closedPolicy = "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:";

/**
 * The sheet as one self-contained page, with no script and nothing loaded from elsewhere. Steps and stages carry
 * `data-source-line` (zero-based) and `data-source-file`.
 */
export function htmlOf(sheet: Sheet, options: HtmlOptions = {}): string {
  return documentOf([sheet], sheet.title, options);
}

/** Several sheets as one page, each beginning on a new sheet of paper. Ids have the place of the sheet before them. */
export function htmlOfAll(sheets: readonly [Sheet, ...Sheet[]], title: string, options: HtmlOptions = {}): string {
  return documentOf(sheets, title, options);
}

function documentOf(sheets: readonly [Sheet, ...Sheet[]], title: string, options: HtmlOptions): string {
  const policy = options.policy === undefined ? closedPolicy : options.policy;
  const [first] = sheets;
  return `<!doctype html>
<html lang="${first.language}">
<head>
<meta charset="utf-8">
${policy === null ? '' : `<meta http-equiv="Content-Security-Policy" content="${escaped(policy)}">\n`}<meta name="viewport" content="width=device-width">
<title>${escaped(title)}</title>
<style>${styleOf(first, options.fonts ?? [])}</style>
</head>
<body>
${sheets.map((sheet, index) => pagesOf(sheet, sheets.length === 1 ? '' : `${index + 1}-`)).join('\n')}
</body>
</html>
`;
}

function pagesOf(sheet: Sheet, prefix: string): string {
  return `${sheet.watermark === null ? '' : `<div class="watermark" aria-hidden="true">${escaped(sheet.watermark)}</div>\n`}<table class="pages" role="presentation">
<thead><tr><td>${head(sheet)}</td></tr></thead>
<tfoot><tr><td>${foot(sheet)}</td></tr></tfoot>
<tbody><tr><td><main>
${sheet.blocks.map((one) => block(one, prefix)).join('\n')}
</main></td></tr></tbody>
</table>`;
}

/** Author's text in markup or in an attribute. */
export function escaped(text: string): string {
  return printable(text)
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}

function head(sheet: Sheet): string {
  const { subtitle, title, alarm, facts, qr } = sheet.header;
  return `<header><div class="what"><p class="title"><span class="kind">${escaped(subtitle)}</span> <b>${escaped(title)}</b></p>
<dl>${facts.map(entry).join('\n')}</dl></div>
${alarm === null ? '' : `<b class="alarm">${escaped(alarm)}</b> `}<div class="qr" role="img" aria-label="${escaped(qr.alt)}">${qrSvg(sheet)}</div></header>`;
}

function foot(sheet: Sheet): string {
  const aid = sheet.firstAid === null ? '' : `<p class="aid">${saidWhole(sheet.firstAid)}</p>`;
  return `<footer>${aid}<p>${escaped(sheet.foot)}</p></footer>`;
}

/** Words in quotes are to be said: they are not broken, at a hyphen least of all. */
function saidWhole(text: string): string {
  return escaped(text).replace(/(?:&quot;|[„«]).{1,60}?(?:&quot;|[“»])/gu, '<span class="said">$&</span>');
}

function block(one: Block, prefix: string): string {
  switch (one.kind) {
    case 'heading':
      return `<h2 class="section">${escaped(one.text)}</h2>`;
    case 'text':
      return `<p>${one.strong ? `<b>${escaped(one.text)}</b>` : escaped(one.text)}</p>`;
    case 'facts':
      return `<dl class="for">${one.facts.map(entry).join('\n')}</dl>`;
    case 'route':
      return route(one, prefix);
    case 'drawing':
      return `<section class="drawing">${one.title === '' ? '' : `<h2>${escaped(one.title)}</h2>`}${drawing(one)}</section>`;
    case 'table':
      return table(one);
    case 'place':
      return place(one, prefix);
    case 'caution':
      return caution(one);
    case 'step':
      return step(one, prefix);
    case 'grid':
      return `<section class="close">${one.title === '' ? '' : `<h3>${escaped(one.title)}</h3>`}${one.grids.map(grid).join('')}</section>`;
  }
}

/** A fact at the head; one without a text is a line to write on. */
function entry({ label, text, href }: Fact): string {
  const said = href === undefined ? escaped(text) : `<a href="${escaped(href)}">${escaped(text)}</a>`;
  return `<div><dt>${escaped(label)}</dt> <dd${text === '' ? ' class="fill"' : ''}>${said}</dd></div>`;
}

function route({ title, stops }: RouteBlock, prefix: string): string {
  const stop = ({ station, stages }: RouteBlock['stops'][number]) =>
    `<li>${station === '' ? '' : `<b>${escaped(station)}</b> `}${stages.map((stage) => `<a href="#${escaped(`${prefix}stage-${stage.number}`)}"><span class="number">${escaped(stage.number)}</span> ${escaped(stage.title)}</a>`).join(' ')}</li>`;
  return `<section class="route"><h2>${escaped(title)}</h2><ol>${stops.map(stop).join(' ')}</ol></section>`;
}

/** The picture as it was made: it is sound SVG of our own, and authors' texts in it are escaped. */
function drawing({ svg, alt, width }: Drawing): string {
  return `<div class="picture" role="img" aria-label="${escaped(alt)}" style="width:${width}mm">${svg}</div>`;
}

function fail({ lead, ways, units, stop }: FailPath, prefix: string): string {
  // Room for the numbers of the units that may come there.
  const wide = units > 3 ? ' wide' : '';
  const box = (name: string) =>
    `${name === '' ? '' : `<span class="count">${escaped(name)}</span> `}<span class="try${wide}"></span>`;
  const part = ({ verdict, stops, end }: FailPath['ways'][number]) =>
    `<div class="way">${verdict === '' ? '' : `<b class="verdict">${escaped(verdict)}</b> `}${stops
      .map(
        ({ number, target, title, tries, boxes }) =>
          `<div class="stop"><p>${target === '' ? `<b>${escaped(number)}</b>` : `<a href="#${escaped(prefix + target)}">${escaped(number)}</a>`} ${escaped(title)}</p> <p class="tries"><span>${escaped(tries)}</span> ${boxes.map(box).join(' ')}</p></div> `,
      )
      .join(
        '',
      )}${end === '' ? '' : `<div class="stop end"><p>${escaped(end)}</p> <p class="tries">${box('')}</p></div>`}</div>`;
  return `<div class="fail"><p><b>${escaped(lead)}</b></p>${ways.map(part).join('')}${stop === '' ? '' : `<p><b>${escaped(stop)}</b></p>`}</div>`;
}

function table({ title, columns, rows, ownPage }: TableBlock): string {
  const shares = columns.reduce((sum, { share }) => sum + share, 0);
  const cell = ({ text, fill, strong }: Cell) =>
    `<td${fill === true ? ' class="fill"' : ''}>${strong === true ? `<b>${escaped(text)}</b>` : escaped(text)}</td>`;
  return `<table class="listing${ownPage === true ? ' own-page' : ''}"><caption>${escaped(title)}</caption>
<colgroup>${columns.map(({ share }) => `<col style="width:${((100 * share) / shares).toFixed(2)}%">`).join('')}</colgroup>
<thead><tr>${columns.map((column) => `<th scope="col">${escaped(column.head)}</th>`).join(' ')}</tr></thead>
<tbody>${rows.map((row) => `<tr>${row.map(cell).join(' ')}</tr>`).join('\n')}</tbody></table>`;
}

function place({ form, id, number, title, facts, line }: PlaceBlock, prefix: string): string {
  const level = form === 'stage' ? 'h2' : 'h3';
  return `<section class="place" id="${escaped(prefix + id)}"${where(line)}><${level}><span class="number">${escaped(number)}</span> ${escaped(title)}</${level}>${factList(facts)}</section>`;
}

function caution({ word, label, text, short }: CautionBlock): string {
  return `<p class="caution ${word.toLowerCase()}${short ? ' short' : ''}" role="note"><b>${escaped(label)}</b> <span>${escaped(text)}</span></p>`;
}

function step(one: StepBlock, prefix: string): string {
  const label = `${prefix}${one.id}-text`;
  return `<section class="step${one.gate ? ' gate' : ''}" id="${escaped(prefix + one.id)}"${where(one.line)} aria-labelledby="${escaped(label)}">
${one.cautions.map(caution).join('\n')}
<div class="row"><p class="number">${escaped(one.number)}</p> <div class="words"><p id="${escaped(label)}">${one.only === null ? '' : `<b class="only">${escaped(one.only)}</b> `}${spans(one.sentence)}</p>
${limits(one.limits)}
${one.lookups.map(lookup).join('\n')}
${one.drawings.length === 0 ? '' : `<div class="pictures">${one.drawings.map(drawing).join(' ')}</div>`}
${factList(one.facts)}</div></div>
${one.notes.map((note) => `<p class="note"><b>${escaped(note.label)}</b> ${escaped(note.text)}</p>`).join('\n')}
${one.grids.map(grid).join('\n')}
${one.lines.length === 0 ? '' : `<div class="lines">${one.lines.map((line) => `<p><span>${escaped(line)}</span> <span class="line"></span></p>`).join(' ')}</div>`}
${one.fail === null ? '' : fail(one.fail, prefix)}
</section>`;
}

function where({ file, line }: SourceLine): string {
  return ` data-source-line="${line}" data-source-file="${escaped(file)}"`;
}

function spans(list: readonly Span[]): string {
  return list.map(({ text, strong }) => (strong === true ? `<b>${escaped(text)}</b>` : escaped(text))).join('');
}

/** Side by side where a reading is judged by more than one kind of limit. */
function limits(lines: readonly LimitLine[]): string {
  const columns: LimitLine[][] = [];
  for (const line of lines) {
    if (line.head !== '' || columns.length === 0) columns.push([line]);
    else columns.at(-1)!.push(line);
  }
  const column = (of: readonly LimitLine[]) =>
    `<div>${of[0]!.head === '' ? '' : `<p class="kind">${escaped(of[0]!.head)}</p>`}${of.map(limit).join('\n')}</div>`;
  return columns.length === 0 ? '' : `<div class="limits">${columns.map(column).join(' ')}</div>`;
}

function limit({ label, value, also, source }: LimitLine): string {
  const part = (name: string, text: string) => (text === '' ? '' : `<span class="${name}">${escaped(text)}</span>`);
  return `<p class="limit">${[part('label', label), `<b class="value${[...value].length > 36 ? ' sentence' : ''}">${escaped(value)}</b>`, part('also', also), part('source', source)].filter((text) => text !== '').join(' ')}</p>`;
}

function lookup({ title, from, to, pairs }: Lookup): string {
  return `<table class="lookup">${title === '' ? '' : `<caption>${escaped(title)}</caption>`}
<tr><th scope="row">${escaped(from)}</th> ${pairs.map((pair) => `<td>${escaped(pair.from)}</td>`).join(' ')}</tr>
<tr><th scope="row">${escaped(to)}</th> ${pairs.map((pair) => `<td><b>${escaped(pair.to)}</b></td>`).join(' ')}</tr></table>`;
}

function factList(facts: readonly Fact[]): string {
  if (facts.length === 0) return '';
  const fact = ({ label, text }: Fact) =>
    text === '' || label === '' ? `<b>${escaped(label + text)}</b>` : `${escaped(label)} <b>${escaped(text)}</b>`;
  return `<ul class="facts">${facts.map((one) => `<li>${fact(one)}</li>`).join(' ')}</ul>`;
}

function grid({ title, across, columns, rows }: Grid): string {
  const width = across > 6 ? ' class="boxes full"' : ' class="boxes"';
  const empty = across - columns.length;
  const cells = columns.map(() => '<td></td>').join('') + '<td class="none"></td>'.repeat(empty);
  return `<table${width}><thead><tr><th scope="col" class="name">${escaped(title)}</th> ${columns.map(({ place: name, detail }) => `<th scope="col">${escaped(name)}${detail === '' ? '' : ` <small>${escaped(detail)}</small>`}</th>`).join(' ')}${'<td class="none"></td>'.repeat(empty)}</tr></thead>
<tbody>${rows.map(({ label, unit }) => `<tr><th scope="row">${escaped(label)}${unit === '' ? '' : `, <b>${escaped(unit)}</b>`}</th>${cells}</tr>`).join('\n')}</tbody></table>`;
}
