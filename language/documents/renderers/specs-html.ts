import type { Paper } from '../model.ts';
import { specWords, sheetWords as words } from '../specs/labels.ts';
import type { SpecCell, SpecFigure, SpecGroup, SpecItem, SpecLine, Specs } from '../specs/model.ts';
import { missingCount } from '../specs/specs.ts';
import { closedPolicy, escaped, type HtmlOptions } from './html.ts';
import { styleOf } from './html-style.ts';
import { blocksOf, columnHead, headFacts, inBlock, type Strip, stripsOf } from './specs-strips.ts';

export interface SpecsHtmlOptions extends HtmlOptions {
  readonly paper?: Paper;
}

/** Most part numbers side by side on a page. */
const mostColumns = 6;
/** From this many on the page lies on its side. */
const wide = 5;

/**
 * The specifications as one self-contained page in the look of the sheet, with no script and nothing loaded from
 * elsewhere. Cells and figures carry `data-source-line`, `data-source-last` (zero-based) and `data-source-file`.
 */
export function specsHtml(specs: Specs, options: SpecsHtmlOptions = {}): string {
  const policy = options.policy === undefined ? closedPolicy : options.policy;
  const paper = options.paper ?? 'a4';
  const blocks = blocksOf(specs.columns.length, mostColumns);
  const onSide = blocks[0]!.to - blocks[0]!.from >= wide;
  const page = { paper, pageWords: { page: words.page, of: words.of } };
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
${policy === null ? '' : `<meta http-equiv="Content-Security-Policy" content="${escaped(policy)}">\n`}<meta name="viewport" content="width=device-width">
<title>${escaped(`${specWords.title}: ${specs.title}`)}</title>
<style>${styleOf(page, options.fonts ?? [])}${rules}${onSide ? `@page{size:${paper === 'a4' ? 'A4' : 'letter'} landscape}body{max-width:287mm}` : ''}</style>
</head>
<body>
${head(specs)}
<main>
${specs.groups.length === 0 ? `<p>${escaped(specWords.nothing)}</p>` : blocks.map((block) => table(specs, block)).join('\n')}
${specs.remarks.map((remark) => `<p class="remark">${escaped(remark)}</p>`).join('\n')}
</main>
</body>
</html>
`;
}

function head(specs: Specs): string {
  const count = missingCount(specs);
  const alarm = count === 0 ? '' : ` <b class="alarm">${escaped(specWords.missingCount(count))}</b>`;
  return `<header><div class="what"><p class="title"><span class="kind">${escaped(specWords.title)}</span> <b>${escaped(specs.title)}</b>${alarm}</p>
<dl>${headFacts(specs)
    .map(({ label, text }) => `<div><dt>${escaped(label)}</dt> <dd>${escaped(text)}</dd></div>`)
    .join('\n')}</dl></div></header>`;
}

type Block = ReturnType<typeof blocksOf>[number];

function table(specs: Specs, block: Block): string {
  const heads = specs.columns.slice(block.from, block.to).map(columnHead);
  const titles = heads.every((one) => one !== null)
    ? `<thead><tr><th scope="col">${escaped(specWords.numbers)}</th> ${heads
        .map(
          ({ number, title }) =>
            `<th scope="col"><b>${escaped(number)}</b>${title === '' ? '' : ` <small>${escaped(title)}</small>`}</th>`,
        )
        .join(' ')}</tr></thead>\n`
    : '';
  return `<table class="specs"><colgroup><col class="what">${'<col>'.repeat(heads.length)}</colgroup>
${titles}${specs.groups.map((one) => group(one, block)).join('\n')}</table>`;
}

function group({ title, items }: SpecGroup, block: Block): string {
  const across = block.to - block.from + 1;
  return `<tbody class="group"><tr><th scope="rowgroup" colspan="${across}"><h2>${escaped(title)}</h2></th></tr></tbody>
${items.map((one) => item(one, block, across)).join('\n')}`;
}

function item({ title, facts, line, figures }: SpecItem, block: Block, across: number): string {
  const more = facts.length === 0 ? '' : ` <span>${facts.map(escaped).join('; ')}</span>`;
  return `<tbody class="item"><tr><th scope="rowgroup" colspan="${across}"${place(line)}><b>${escaped(title)}</b>${more}</th></tr></tbody>
${figures.map((one) => figure(one, block, across - 1)).join('\n')}`;
}

function figure(one: SpecFigure, block: Block, columns: number): string {
  const cells = inBlock(one, block);
  const strips = stripsOf(cells);
  const rows: readonly Strip[] = strips.length === 0 ? [{ kind: 'value', texts: [''], all: '' }] : strips;
  const steps = one.steps.length === 0 ? '' : ` <small>${escaped(specWords.step(one.steps.join(', ')))}</small>`;
  const label = `<th scope="rowgroup" rowspan="${rows.length}"${place(one.line)}>${escaped(one.what)}${steps}</th> `;
  return `<tbody class="figure">${rows
    .map((row, index) => `<tr class="${row.kind}">${index === 0 ? label : ''}${strip(row, cells, columns)}</tr>`)
    .join('\n')}</tbody>`;
}

function strip({ kind, texts, all }: Strip, cells: readonly (SpecCell | null)[], columns: number): string {
  const span = texts.length === 1 && columns > 1 ? ` colspan="${columns}"` : '';
  return texts
    .map((text, column) => {
      const from = cells[column] ?? (texts.length === 1 ? cells.find((cell) => cell !== null) : null);
      const words =
        text === '' ? '' : kind === 'value' || kind === 'missing' ? `<b>${escaped(text)}</b>` : escaped(text);
      return `<td${span}${from == null ? '' : place(from.line)}>${all === '' ? '' : `<span class="all">${escaped(all)}</span> `}${words}</td>`;
    })
    .join(' ');
}

function place({ file, line, last }: SpecLine): string {
  return ` data-source-line="${line}" data-source-last="${last}" data-source-file="${escaped(file)}"`;
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
