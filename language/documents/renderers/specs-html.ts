import { type Language, type Words, wordsIn } from '../../i18n/index.ts';
import { html, joined, type Markup } from '../../i18n/markup.ts';
import type { Paper } from '../model.ts';
import type { SpecCell, SpecFigure, SpecGroup, SpecItem, SpecLine, Specs } from '../specs/model.ts';
import { missingCount } from '../specs/specs.ts';
import { type HtmlOptions, pageOf } from './html.ts';
import { renderStyle } from './html-style.ts';
import { blocksOf, columnHead, headFacts, inBlock, type Strip, stepsText, stripsOf } from './specs-strips.ts';

export interface SpecsHtmlOptions extends HtmlOptions {
  readonly paper?: Paper;
  /** That it was laid out in. */
  readonly language?: Language;
}

/** Most part numbers side by side on a page. */
const mostColumns = 6;
/** From this many on the page lies on its side. */
const wide = 5;

/**
 * The specifications as one self-contained page in the look of the sheet, with no script and nothing loaded from
 * elsewhere. Cells and figures carry `data-source-line`, `data-source-last` (zero-based) and `data-source-file`.
 */
export function renderSpecsHtml(specs: Specs, options: SpecsHtmlOptions = {}): string {
  const paper = options.paper ?? 'a4';
  const words = wordsIn(options.language ?? 'en');
  const blocks = blocksOf(specs.columns.length, mostColumns);
  const onSide = blocks[0]!.to - blocks[0]!.from >= wide;
  const style = renderStyle(
    { paper, language: words.language, pageWords: { page: words.page, of: words.of } },
    options.fonts ?? [],
  );
  const turned = `@page{size:${paper === 'a4' ? 'A4' : 'letter'} landscape}body{max-width:287mm}`;
  return pageOf(
    {
      language: words.language,
      title: `${words.specs.title}: ${specs.title}`,
      style: `${style}${rules}${onSide ? turned : ''}`,
      body: html`${head(specs, words)}
<main>
${
  specs.groups.length === 0
    ? html`<p>${words.specs.nothing}</p>`
    : joined(
        blocks.map((block) => table(specs, block, words)),
        '\n',
      )
}
${joined(
  specs.remarks.map((remark) => html`<p class="remark">${remark}</p>`),
  '\n',
)}
</main>`,
    },
    options,
  );
}

function head(specs: Specs, words: Words): Markup {
  const count = missingCount(specs);
  const alarm = count === 0 ? '' : html` <b class="alarm">${words.specs.missingCount({ count })}</b>`;
  return html`<header><div class="what"><p class="title"><span class="kind">${words.specs.title}</span> <b>${specs.title}</b>${alarm}</p>
<dl>${joined(
    headFacts(specs, words).map(({ label, text }) => html`<div><dt>${label}</dt> <dd>${text}</dd></div>`),
    '\n',
  )}</dl></div></header>`;
}

type Block = ReturnType<typeof blocksOf>[number];

function table(specs: Specs, block: Block, words: Words): Markup {
  const heads = specs.columns.slice(block.from, block.to).map(columnHead);
  const titles = heads.every((one) => one !== null)
    ? html`<thead><tr><th scope="col">${words.specs.numbers}</th> ${joined(
        heads.map(
          ({ number, title }) =>
            html`<th scope="col"><b>${number}</b>${title === '' ? '' : html` <small>${title}</small>`}</th>`,
        ),
        ' ',
      )}</tr></thead>\n`
    : '';
  return html`<table class="specs"><colgroup><col class="what">${heads.map(() => html`<col>`)}</colgroup>
${titles}${joined(
  specs.groups.map((one) => group(one, block, words)),
  '\n',
)}</table>`;
}

function group({ title, items }: SpecGroup, block: Block, words: Words): Markup {
  const across = block.to - block.from + 1;
  return html`<tbody class="group"><tr><th scope="rowgroup" colspan="${across}"><h2>${title}</h2></th></tr></tbody>
${joined(
  items.map((one) => item(one, block, across, words)),
  '\n',
)}`;
}

function item({ title, facts, line, figures }: SpecItem, block: Block, across: number, words: Words): Markup {
  const more = facts.length === 0 ? '' : html` <span>${facts.join('; ')}</span>`;
  return html`<tbody class="item"><tr><th scope="rowgroup" colspan="${across}"${place(line)}><b>${title}</b>${more}</th></tr></tbody>
${joined(
  figures.map((one) => figure(one, block, across - 1, words)),
  '\n',
)}`;
}

function figure(one: SpecFigure, block: Block, columns: number, words: Words): Markup {
  const cells = inBlock(one, block);
  const strips = stripsOf(cells, words);
  const rows: readonly Strip[] = strips.length === 0 ? [{ kind: 'value', texts: [''], all: '' }] : strips;
  const steps = one.steps.length === 0 ? '' : html` <small>${stepsText(one.steps, words)}</small>`;
  const label = html`<th scope="rowgroup" rowspan="${rows.length}"${place(one.line)}>${one.what}${steps}</th> `;
  return html`<tbody class="figure">${joined(
    rows.map(
      (row, index) => html`<tr class="${row.kind}">${index === 0 ? label : ''}${strip(row, cells, columns)}</tr>`,
    ),
    '\n',
  )}</tbody>`;
}

function strip({ kind, texts, all }: Strip, cells: readonly (SpecCell | null)[], columns: number): Markup {
  const span = texts.length === 1 && columns > 1 ? html` colspan="${columns}"` : '';
  return joined(
    texts.map((text, column) => {
      const from = cells[column] ?? (texts.length === 1 ? cells.find((cell) => cell !== null) : null);
      const words = text === '' ? '' : kind === 'value' || kind === 'missing' ? html`<b>${text}</b>` : text;
      return html`<td${span}${from == null ? '' : place(from.line)}>${all === '' ? '' : html`<span class="all">${all}</span> `}${words}</td>`;
    }),
    ' ',
  );
}

function place({ file, line, last }: SpecLine): Markup {
  return html` data-source-line="${line}" data-source-last="${last}" data-source-file="${file}"`;
}

/** Over the rules of the sheet. */
const rules = `
@media screen{body{padding:4mm}}
.specs{width:100%;table-layout:fixed;margin-top:2mm}
.specs+.specs{margin-top:10mm}
.specs col.what{width:42mm}
.specs th{text-align:left;font-weight:normal;vertical-align:top}
.specs thead th{border-bottom:1pt solid;padding:1mm 1.5mm;font-size:10pt}
.specs thead b{font-size:12pt}
.specs thead small{display:block;font-size:9pt}
.specs thead th:first-child,.specs .figure th{padding-left:2.5mm}
.specs tbody{break-inside:avoid}
.specs .group,.specs .item{break-after:avoid}
.specs .group h2{font-size:15pt;padding:4mm 0 1mm;border-bottom:2pt solid}
.specs .item th{padding:2mm 0 .6mm;font-size:10pt}
.specs .item b{font-size:11.5pt;margin-right:2mm}
.specs .figure>tr:first-child>*{border-top:.5pt solid;padding-top:.8mm}
.specs .figure th{padding:.8mm 1.5mm .8mm 2.5mm;font-size:10pt}
.specs .figure th small{display:block;font-size:8.5pt}
.specs .figure td{padding:0 1.5mm .3mm;vertical-align:baseline}
.specs .figure>tr:last-child>td{padding-bottom:.9mm}
.specs .all{font-size:8.5pt;font-weight:normal;margin-right:.5mm}
.specs .value td{font-size:12.5pt}
.specs .also td{font-size:9.5pt}
.specs .tool td{font-size:9.5pt}
.specs .source td{font-size:8.5pt}
.specs .missing b{border:1pt solid;padding:.1mm 1.2mm;font-size:9.5pt}
.specs .missing td{padding-top:.6mm}
.remark{font-size:8.5pt}
`;
