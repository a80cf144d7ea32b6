import { html, joined, type Markup, trusted } from '../../i18n/markup.ts';
import type {
  Block,
  BoxRow,
  Cell,
  DrawingBlock,
  Fact,
  FailPath,
  LimitLine,
  LogBlock,
  Lookup,
  PlaceBlock,
  RepairsBlock,
  SafetyBlock,
  SetBoxes,
  Sheet,
  SignBoxes,
  SourceLine,
  Span,
  StepBlock,
  TableBlock,
  TextBlock,
  UnitHead,
} from '../model.ts';
import { type OwnLanguage, phrasePattern } from '../own-language.ts';
import { refText } from '../texts.ts';
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

/** Drawings alone, under the name of what they are of. */
export function renderDrawingsHtml(
  { title, blocks }: { readonly title: string; readonly blocks: readonly (DrawingBlock | TextBlock)[] },
  options: HtmlOptions = {},
): string {
  const style = renderStyle({ paper: 'a4', language: 'en', pageWords: { page: '', of: '' } }, options.fonts ?? []);
  const body = html`<main><h1>${title}</h1>
${joined(
  blocks.map((one) => (one.kind === 'drawing' ? drawing(one) : html`<p>${one.text}</p>`)),
  '\n',
)}
</main>`;
  return pageOf({ language: 'en', title, style, body }, options);
}

/** What the blocks of a sheet are written with. */
interface Context {
  readonly sheet: Sheet;
  /** Before each id, where several sheets are one page. */
  readonly prefix: string;
}

function pagesOf(sheet: Sheet, prefix: string): Markup {
  return tagged(bodyOf(sheet, prefix), sheet.own);
}

/** The author's words with their language. Names of boxes and pictures are one text, in the language of the sheet. */
function tagged(body: Markup, own: OwnLanguage | null): Markup {
  if (own === null) return body;
  const written = (text: string) => String(html`${text}`);
  const pattern = new RegExp(phrasePattern(own, { edge: '(?<![\\p{L}\\p{N}])', written }), 'gu');
  const texts = /<svg[\s\S]*?<\/svg>|<[^>]*>|[^<]+/gu;
  return trusted(
    String(body).replace(texts, (part) =>
      part.startsWith('<') ? part : part.replace(pattern, (words) => `<span lang="${own.language}">${words}</span>`),
    ),
  );
}

function bodyOf(sheet: Sheet, prefix: string): Markup {
  const context = { sheet, prefix };
  return html`${sheet.watermark === null ? '' : html`<div class="watermark" aria-hidden="true">${sheet.watermark}</div>\n`}<table class="pages ${sheet.form}" role="presentation">
<thead><tr><td>${head(sheet)}${unitHeads(sheet.columns)}</td></tr></thead>
<tfoot><tr><td><footer><p>${sheet.foot}</p></footer></td></tr></tfoot>
<tbody><tr><td><main>
${joined(
  folded(sheet.blocks).map((group) => groupOf(group, context)),
  '\n',
)}
</main></td></tr></tbody>
</table>`;
}

/** A stage with all that belongs to it, which is folded as one; everything else alone. */
function folded(blocks: readonly Block[]): Block[][] {
  const groups: Block[][] = [];
  for (const block of blocks) {
    const inPlace = groups.at(-1)?.[0]?.kind === 'place';
    if (inPlace && (block.kind === 'step' || block.kind === 'close')) groups.at(-1)!.push(block);
    else groups.push([block]);
  }
  return groups;
}

function groupOf([first, ...others]: readonly Block[], context: Context): Markup {
  if (first?.kind !== 'place')
    return joined(
      [first!, ...others].map((one) => block(one, context)),
      '\n',
    );
  const boxed = others.some(
    (one) => one.kind === 'close' || (one.kind === 'step' && (one.rows.length > 0 || one.close !== null)),
  );
  return html`<details open class="place" id="${context.prefix + first.id}"${where(first.line)}><summary>${placeHead(first)}</summary>
${placeWords(first, context)}${boxed ? unitHeads(context.sheet.columns) : ''}
${steps(others, context)}</details>`;
}

function head(sheet: Sheet): Markup {
  const { subtitle, title, alarm, facts } = sheet.header;
  return html`<header><div class="what"><p class="title"><b>${title}</b> <span class="kind">${subtitle}</span></p>
<dl>${joined(facts.map(entry), '\n')}</dl></div>
${alarm === null ? '' : html`<b class="alarm">${alarm}</b> `}</header>`;
}

function qr(sheet: Sheet): Markup {
  return html`<div class="qr" role="img" aria-label="${sheet.header.qr.alt}">${qrSvg(sheet.header.qr)}</div>`;
}

/** Words in quotes are to be said: they are not broken, at a hyphen least of all. */
function saidWhole(text: string): Markup {
  const parts = text.split(/((?:"|[„«“]).{1,60}?(?:"|[“»”]))/u);
  return html`${parts.map((part, index) => (index % 2 === 1 ? html`<span class="said">${part}</span>` : part))}`;
}

function block(one: Block, context: Context): Markup {
  switch (one.kind) {
    case 'page':
      return html`<div class="new-page${one.side === 'left' ? ' left' : ''}"></div>`;
    case 'heading':
      return html`<h2 class="section">${one.text}</h2>`;
    case 'text':
      return html`<p>${one.strong ? html`<b>${one.text}</b>` : one.text}</p>`;
    case 'facts':
      return html`<div class="front"><dl class="for">${joined(one.facts.map(entry), '\n')}</dl>${qr(context.sheet)}</div>`;
    case 'drawing':
      return drawing(one);
    case 'table':
      return table(one);
    case 'tables':
      return html`<div class="beside">${table(one.tables[0]!)} <div>${joined(one.tables.slice(1).map(table), '\n')}</div></div>`;
    case 'safety':
      return safety(one);
    case 'place':
      return html`<section class="place" id="${context.prefix + one.id}"${where(one.line)}>${placeHead(one)}${placeWords(one, context)}</section>`;
    case 'step':
      return html`<ol class="steps">${step(one, context)}</ol>`;
    case 'close':
      return html`<div class="close">${rows([one.row], context.sheet.columns)}</div>`;
    case 'repairs':
      return repairs(one, context);
    case 'log':
      return log(one);
  }
}

function steps(list: readonly Block[], context: Context): Markup {
  const [items, others] = [list.filter((one) => one.kind === 'step'), list.filter((one) => one.kind !== 'step')];
  return html`${
    items.length === 0
      ? ''
      : html`<ol class="steps">${joined(
          items.map((one) => step(one, context)),
          '\n',
        )}</ol>`
  }${others.map((one) => block(one, context))}`;
}

/** A fact at the head; one without a text is a line to write on. */
function entry({ label, text, href }: Fact): Markup {
  const said = href === undefined ? text : html`<a href="${href}">${text}</a>`;
  return html`<div><dt>${label}</dt> <dd${text === '' ? html` class="fill"` : ''}>${said}</dd></div>`;
}

/** The picture as it was made: it is sound SVG of our own, and authors' texts in it are escaped. */
function drawing({ title, svg, alt, width }: DrawingBlock): Markup {
  return html`<section class="drawing">${title === '' ? '' : html`<h2>${title}</h2>`}<div class="picture" role="img" aria-label="${alt}" style="width:${width}mm">${trusted(svg)}</div></section>`;
}

function table({ title, columns, rows: lines }: TableBlock): Markup {
  const shares = columns.reduce((sum, { share }) => sum + share, 0);
  const cell = ({ text, fill, strong }: Cell, at: number, first: string) =>
    fill === true && text === ''
      ? html`<td class="fill" data-head="${columns[at]?.head ?? ''}">${box(`${columns[at]?.head ?? ''}, ${first}`)}</td>`
      : html`<td data-head="${columns[at]?.head ?? ''}">${strong === true ? html`<b>${text}</b>` : text}</td>`;
  return html`<table class="listing"><caption>${title}</caption>
<colgroup>${columns.map(({ share }) => html`<col style="width:${((100 * share) / shares).toFixed(2)}%">`)}</colgroup>
<thead><tr>${joined(
    columns.map((column) => html`<th scope="col">${column.head}</th>`),
    ' ',
  )}</tr></thead>
<tbody>${joined(
    lines.map(
      (row) =>
        html`<tr>${joined(
          row.map((one, at) => cell(one, at, row[0]?.text ?? '')),
          ' ',
        )}</tr>`,
    ),
    '\n',
  )}</tbody></table>`;
}

/** A box to write in, on paper or on a screen. */
function box(name: string): Markup {
  return html`<input class="box" aria-label="${name}" autocomplete="off">`;
}

function safety({ title, lead, read, firstAid, where: heading, rows: lines, rules }: SafetyBlock): Markup {
  return html`<section class="safety"><div class="bar"><h2>${title}</h2> <p>⚠ ${lead}</p> ${read === '' ? '' : html`<p class="read">${read} ${box(read)}</p>`}</div>
${firstAid === null ? '' : html`<p class="aid">${saidWhole(firstAid)}</p>`}
${
  lines.length === 0
    ? ''
    : html`<dl>${joined(
        lines.map(
          ({ word, label, text, steps: of }) =>
            html`<div class="${word.toLowerCase()}"><dt>${label}</dt> <dd>${text} <span class="at">${heading} <b>${of}</b></span></dd></div>`,
        ),
        '\n',
      )}</dl>`
}
${joined(
  rules.map(({ label, text }) => html`<p><b>${label}:</b> ${text}</p>`),
  '\n',
)}</section>`;
}

function placeHead({ number, title, facts }: PlaceBlock): Markup {
  return html`<h2><span class="number">${number}</span> ${title}</h2> ${factList(facts)}`;
}

function placeWords({ danger, warnings, texts, pressure }: PlaceBlock, { sheet }: Context): Markup {
  return html`${danger === null ? '' : html`<p class="danger"><b>⚠ ${danger.label}</b> ${danger.text}</p> `}${warningLine(warnings)}${
    pressure && sheet.pressed !== null
      ? html`<p class="aid small" role="note">${saidWhole(sheet.pressed.firstAid)}</p>`
      : ''
  }${texts.map((text) => html`<p class="say">${text}</p>`)}`;
}

function warningLine(list: PlaceBlock['warnings']): Markup {
  if (list.length === 0) return html``;
  return html`<p class="warnings">${joined(
    list.map(({ label, text }) => html`<span>⚠\u00a0${label === '' ? '' : html`<b>${label}</b> `}${text}</span>`),
    ' ',
  )}</p>`;
}

/** The units over their boxes: on a screen at each stage, on paper at the head of it. */
function unitHeads(columns: readonly UnitHead[]): Markup {
  if (columns.length === 0 || columns.length > lineOf) return html``;
  return html`<div class="units" style="--units:${columns.length}" aria-hidden="true">${columns.map(
    ({ place, detail, odd }) => html`<span${odd ? html` class="odd"` : ''}><b>${place}</b> ${detail}</span>`,
  )}</div>`;
}

/** Boxes on one line; of more units on several. */
const lineOf = 12;

function step(one: StepBlock, context: Context): Markup {
  const { prefix, sheet } = context;
  const boxed = [...one.rows, ...(one.close === null ? [] : [one.close])];
  const heads = one.limits.filter(({ head: of }) => of !== '').length;
  const [headed, wide] = [heads > 0, heads > 1];
  const path = one.fail === null ? '' : fail(one.fail, context);
  const kind = one.logged && one.fail !== null ? ' logged' : boxed.length > 0 ? ' boxed' : '';
  return html`<li class="step${one.gate ? ' gate' : ''}${kind}" id="${prefix + one.id}"${where(one.line)}><p class="number">${one.number}</p> <div class="words">${cautions(one)}<p>${alert(one)}${one.only === null ? '' : html`<b class="only">${one.only}</b> `}${spans(one.sentence)}${headed ? '' : one.limits.map((line) => html` ${limit(line)}`)}${tail([...one.facts, ...one.notes])}</p>${headed && !wide ? limits(one.limits) : ''}${path}</div> ${boxed.length === 0 ? '' : rows(boxed, sheet.columns)}${one.set === null ? '' : setBoxes(one.set)}${wide ? limits(one.limits) : ''}${lookups(one.lookups)}${one.tables.length === 0 ? '' : html`<div class="plan">${joined(one.tables.map(table), '\n')}</div>`}${one.sign === null ? '' : sign(one.sign)}</li>`;
}

function cautions({ cautions: list }: StepBlock): Markup {
  return html`${list.map(({ label, text }) => html`<p class="own"><b>⚠ ${label}: ${text}</b></p>`)}`;
}

function alert({ alert: name }: StepBlock): Markup {
  return name === '' ? html`` : html`<span class="alert" role="img" aria-label="${name}">⚠</span>\u00a0`;
}

/** What to know behind what is done. */
function tail(facts: readonly Fact[]): Markup {
  return html`${facts.map((one) => html` <span class="fact">${fact(one)}</span>`)}`;
}

function fact({ label, text, sources }: Fact): Markup {
  const said = label === '' ? text : text === '' ? html`<b>${label}</b>` : html`${label} <b>${text}</b>`;
  return html`${said}${refs(sources)}`;
}

function refs(sources: readonly string[] | undefined): Markup {
  return sources === undefined || sources.length === 0 ? html`` : html`<span class="ref">${refText(sources)}</span>`;
}

/** A step in a line of others. */
function inline(one: StepBlock): Markup {
  return html`${one.cautions.map(({ label, text }) => html`<b>⚠ ${label}: ${text}</b> `)}${alert(one)}${one.only === null ? '' : html`<b>${one.only}</b> `}${spans(one.sentence)}${one.limits.map((line) => html` ${line.head === '' ? '' : `${line.head} `}${limit(line)}`)}${tail([...one.facts, ...one.notes])}`;
}

function fail({ ways, stop }: FailPath, context: Context): Markup {
  const { prefix } = context;
  const stopped = (one: FailPath['ways'][number]['stops'][number]) => {
    const here = one.steps.length > 0;
    const number = here
      ? html`<b id="${prefix + one.target}"${one.line === null ? '' : where(one.line)}>${one.number}</b>`
      : one.target === ''
        ? html`<b>${one.number}</b>`
        : html`<a href="#${prefix + one.target}">${one.number}</a>`;
    const [first] = one.steps;
    return html` → ${number}${one.title === '' ? '' : ` ${one.title}`}${one.steps.length === 1 ? html` <span id="${prefix + first!.id}"${where(first!.line)}>${inline(first!)}</span>` : ''}, ${one.tries}${one.back === '' ? '' : `, ${one.back}`}${
      one.steps.length < 2
        ? ''
        : one.steps.map(
            (each) =>
              html`; <span id="${prefix + each.id}"${where(each.line)}><b>${each.number}</b> ${inline(each)}</span>`,
          )
    }`;
  };
  return html`<div class="fail">${ways.map(
    ({ mark, when, stops, end }) =>
      html`<p><b>${mark}</b>${when === '' ? '' : ` ${when}`}${stops.map(stopped)}${end === '' ? '' : html` → <b>${end}</b>`}</p>`,
  )}${stop === '' ? '' : html`<p><b>${stop}</b></p>`}</div>`;
}

function where({ file, line }: SourceLine): Markup {
  return html` data-source-line="${line}" data-source-file="${file}"`;
}

function spans(list: readonly Span[]): Markup {
  return html`${list.map(({ text, strong }) => (strong === true ? html`<b>${text}</b>` : text))}`;
}

/** By kind, where a reading is judged by more than one. */
function limits(lines: readonly LimitLine[]): Markup {
  const kinds: LimitLine[][] = [];
  for (const line of lines) {
    if (line.head !== '' || kinds.length === 0) kinds.push([line]);
    else kinds.at(-1)!.push(line);
  }
  return html`<div class="limits">${kinds.map((of) => html`<p>${of[0]!.head === '' ? '' : html`<span class="kind">${of[0]!.head}</span> `}${joined(of.map(limit), ' ')}</p>`)}</div>`;
}

function limit({ label, value, also, sources }: LimitLine): Markup {
  return html`<span class="limit">${label === '' ? '' : html`<span class="label">${label}</span> `}<b class="value${[...value].length > 36 ? ' sentence' : ''}">${value}</b>${refs(sources)}${also === '' ? '' : html` <span class="also">${also}</span>`}</span>`;
}

function lookups(list: readonly Lookup[]): Markup {
  return list.length === 0 ? html`` : html`<div class="lookups">${joined(list.map(lookup), ' ')}</div>`;
}

function lookup({ title, from, to, pairs, besides = [] }: Lookup): Markup {
  const label = (text: string) => (text === '' ? '' : html`<th scope="row">${text}</th> `);
  return html`<table class="lookup">${title === '' ? '' : html`<caption>${title}</caption>`}
<tr>${label(from)}${joined(
    pairs.map((pair) => html`<td>${pair.from}</td>`),
    ' ',
  )}</tr>
${besides.map(
  (row) => html`<tr>${label(row.from)}${joined(
    row.reads.map((read) => html`<td>${read}</td>`),
    ' ',
  )}</tr>
`,
)}<tr>${label(to)}${joined(
    pairs.map((pair) => html`<td><b>${pair.to}</b></td>`),
    ' ',
  )}</tr></table>`;
}

function factList(facts: readonly Fact[]): Markup {
  if (facts.length === 0) return html``;
  return html`<ul class="facts">${joined(
    facts.map((one) => html`<li>${fact(one)}</li>`),
    ' ',
  )}</ul>`;
}

/** Rows of boxes beside a step; each box knows its unit, for a screen that has no room for heads. */
function rows(list: readonly BoxRow[], columns: readonly UnitHead[]): Markup {
  const cell = (row: BoxRow, value: string, at: number) => {
    const unit = row.boxes.length === columns.length ? (columns[at]?.place ?? '') : '';
    const name = unit === '' ? row.name : `${row.name}, ${unit}`;
    return html`<span class="cell"${unit === '' ? '' : html` data-unit="${unit}"`}>${value === '' ? box(name) : html`<b class="known">${value}</b>`}</span>`;
  };
  return html`<div class="rows${columns.length > 8 ? ' under' : ''}" style="--units:${Math.min(lineOf, Math.max(1, columns.length))}">${joined(
    list.map(
      (row) =>
        html`<div class="row"><p class="label">${row.label}${row.unit === '' ? '' : html`, <b>${row.unit}</b>`}</p> <div class="cells">${row.boxes.map((value, at) => cell(row, value, at))}</div></div>`,
    ),
    ' ',
  )}</div>`;
}

function setBoxes({ heads, rows: list }: SetBoxes): Markup {
  return html`<table class="set"><thead><tr><td></td> ${joined(
    heads.map((one) => html`<th scope="col">${one}</th>`),
    ' ',
  )}</tr></thead>
<tbody>${joined(
    list.map(
      ({ label, unit, boxes, name }) =>
        html`<tr><th scope="row">${label}${unit === '' ? '' : html`, <b>${unit}</b>`}</th> ${joined(
          boxes.map((value, at) => html`<td>${value === '' ? box(`${name}, ${heads[at] ?? ''}`) : value}</td>`),
          ' ',
        )}</tr>`,
    ),
    '\n',
  )}</tbody></table>`;
}

function sign({ statement, boxes }: SignBoxes): Markup {
  return html`<div class="sign">${statement === '' ? '' : html`<p>${statement}</p>`}<div class="fields">${joined(
    boxes.map(({ label, share }) => html`<label style="flex:${share}">${label} ${box(label)}</label>`),
    ' ',
  )}</div></div>`;
}

function repairs(one: RepairsBlock, context: Context): Markup {
  const { prefix } = context;
  const title = ({ id, number, title: said, tries, back, line }: RepairsBlock['repairs'][number]) =>
    html`<span class="repair" id="${prefix + id}"${where(line)}><h2><span class="number">${number}</span> ${said}</h2> (${tries})${back === '' ? '' : ` ${back}`}</span>`;
  const part = ({ title: said, steps: list }: RepairsBlock['columns'][number]['parts'][number]) =>
    html`${said === '' ? '' : html`<p><b>${said}</b></p> `}<ol>${joined(
      list.map(
        ({ label, step: each }) =>
          html`<li id="${prefix + each.id}"${where(each.line)}><b class="number">${label}</b> ${inline(each)}${each.fail === null ? '' : fail(each.fail, context)}${each.sign === null ? '' : sign(each.sign)}</li>`,
      ),
      '\n',
    )}</ol>`;
  return html`<section class="repairs"><div class="titles">${joined(one.repairs.map(title), ' ')}${one.back === '' ? '' : html` <b>${one.back}</b>`}</div>
${one.repairs.map(({ number, texts }) => texts.map((text) => html`<p class="say">${number}: ${text}</p>`))}${factList(one.facts)}${warningLine(one.warnings)}
<div class="columns">${joined(
    one.columns.map(({ share, parts }) => html`<div style="flex:${share}">${joined(parts.map(part), '\n')}</div>`),
    '\n',
  )}</div>
${lookups(one.lookups)}${one.advice.map((each) => html`<p class="say">${fact(each)}</p>`)}</section>`;
}

function log({ title, lead, unit, columns, units, advice, fails, foot, large }: LogBlock): Markup {
  const heads = columns.map(
    ({ step: number, name, unit: of }) =>
      html`<th scope="col">${number === '' ? '' : html`<b>${number}</b> `}${name}${of === '' ? '' : html` <b>${of}</b>`}</th>`,
  );
  const cell = (value: string, place: string, line: number, at: number) => {
    const column = columns[at]!;
    const name = [`${unit} ${place}`.trim(), String(line + 1), column.step, column.name, column.unit];
    return html`<td data-head="${`${column.step} ${column.name}`.trim()}">${value === '' ? box(name.filter((word) => word !== '').join(', ')) : html`<b class="known">${value}</b>`}</td>`;
  };
  return html`<section class="log${large ? '' : ' whole'}"><h2>${title}</h2> <p>${lead}</p>
<table><thead><tr><th scope="col">${unit}</th> ${joined(heads, ' ')}</tr></thead>
${joined(
  units.map(
    ({ place, odd, lines }) =>
      html`<tbody>${joined(
        lines.map(
          ({ head: said, cells }, at) =>
            html`<tr><th scope="row"${odd ? html` class="odd"` : ''}>${said.map((text, nth) => (at === 0 && nth === 0 ? html`<b class="place">${text}</b>` : html` <span>${text}</span>`))}</th> ${joined(
              cells.map((value, column) => cell(value, place, at, column)),
              ' ',
            )}</tr>`,
        ),
        '\n',
      )}</tbody>`,
  ),
  '\n',
)}</table>
${[...advice, ...fails].map((one) => html`<p class="say">${fact(one)}</p>`)}${foot === '' ? '' : html`<p class="say">${foot}</p>`}</section>`;
}
