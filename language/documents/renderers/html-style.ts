import { printable } from '../../i18n/printable.ts';
import type { Sheet } from '../model.ts';
import type { FontFace } from './html.ts';

/** The look of the HTML sheet: that of the PDF, on paper and in a window. Black on white in every color theme. */
export function renderStyle(
  sheet: Pick<Sheet, 'paper' | 'pageWords' | 'language'>,
  fonts: readonly FontFace[],
): string {
  return `${fontFaces(fonts)}
@page{size:${sheet.paper === 'a4' ? 'A4' : 'letter'};margin:6.5mm 10mm 9.5mm 14mm;@bottom-right{content:${cssText(sheet.pageWords.page)} " " counter(page) " " ${cssText(sheet.pageWords.of)} " " counter(pages);font:bold 10pt sans-serif;vertical-align:top;padding-top:.4mm}}
:root{--print:${printSize(sheet)}}
${rules}`;
}

/** In print: smaller where that saves a page, which the PDF finds out by trying. German has the longest words. */
function printSize({ paper, language }: Pick<Sheet, 'paper' | 'language'>): string {
  const size = paper === 'a4' ? 9.6 : 9.25;
  return `${language === 'de' ? size - 0.25 : size}pt`;
}

/** The fonts that a page carries. */
export function fontFaces(fonts: readonly FontFace[]): string {
  return fonts
    .map(
      ({ weight, dataUrl }) =>
        `@font-face{font-family:"Atkinson Hyperlegible Next";font-weight:${weight};src:url("${dataUrl}") format("truetype")}`,
    )
    .join('\n');
}

/** A string in a style sheet; nothing in it can end the string or the style element. */
function cssText(text: string): string {
  return `"${printable(text).replace(/[^\p{L}\p{N} .,-]/gu, (character) => `\\${character.codePointAt(0)!.toString(16)} `)}"`;
}

const rules = `
*{box-sizing:border-box}
html{background:#fff;color:#000;color-scheme:light}
body{margin:0 auto;max-width:200mm;padding:0 4mm;background:#fff;color:#000;font:10.5pt/1.22 "Atkinson Hyperlegible Next",sans-serif;overflow-wrap:break-word}
p,h2,h3,dl,dd,ul,ol,caption{margin:0;padding:0}
ol{list-style:none}
table{border-collapse:collapse}
a{color:inherit;text-decoration:none}
.pages{width:100%;table-layout:fixed}
.certificate{font-size:11pt}
.pages>*>tr>td{padding:0 1pt 0 0}
.pages+.pages,.pages+.watermark+.pages{break-before:page}
header{display:flex;gap:4mm;border-bottom:1pt solid;padding-bottom:1mm;margin-bottom:2mm}
header .what{flex:1;min-width:0}
header .title{display:flex;align-items:baseline;gap:3mm;font-size:13pt;flex-wrap:wrap}
header .kind{font-size:10pt}
header .alarm{align-self:center;border:2pt solid;padding:1mm 2mm;font-size:12pt}
header dl{display:flex;flex-wrap:wrap;gap:.6mm 4mm;font-size:9.5pt}
header dl div{display:flex;gap:1.5mm}
header dt{flex:none}
header dd{font-weight:bold}
header dd.fill{width:34mm;border-bottom:.5pt solid}
.qr svg{display:block;width:19mm;height:19mm}
.front{display:flex;gap:4mm;margin:1.5mm 0 2mm}
.for{flex:1;display:grid;grid-template-columns:1fr 1fr;column-gap:4mm;font-size:10pt}
.for div{display:grid;grid-template-columns:24mm 1fr;gap:1.5mm;border-bottom:.5pt solid;padding:.6mm 0;align-items:baseline;break-inside:avoid}
.for dt{font-size:9pt}
.for dd{font-weight:bold}
.for dd.fill{min-height:5.5mm}
h2{font-size:12.5pt;break-after:avoid;line-height:1.2}
h2.section{font-size:16pt;margin-top:6mm}
main>p{margin:1.5mm 0}
.drawing h2{margin-top:3mm}
.picture{max-width:100%;margin:1mm 0;break-inside:avoid}
.picture svg{display:block;width:100%;height:auto}
.beside{display:flex;gap:6mm;flex-wrap:wrap;align-items:flex-start}
.beside>*{flex:1;min-width:70mm}
.listing{width:100%;margin-top:2.5mm;font-size:9.5pt;table-layout:fixed}
.listing caption{text-align:left;font-size:12.5pt;font-weight:bold;padding-bottom:.8mm;break-after:avoid}
.listing th{text-align:left;font-weight:normal;font-size:9pt;border-top:1pt solid;border-bottom:.5pt solid;padding:.5mm 1.2mm}
.listing td{border-bottom:.5pt solid;padding:.5mm 1.2mm}
.listing td.fill{border:.5pt solid;padding:0}
.listing .box{height:6.4mm}
tr{break-inside:avoid}
.box{display:block;width:100%;height:8mm;border:0;margin:0;padding:0 .5mm;background:none;font:inherit;text-align:center;border-radius:0}
.box:focus{outline:2pt solid;outline-offset:-1pt}
.known{font-weight:normal}
.safety .bar{display:flex;gap:4mm;align-items:center;flex-wrap:wrap}
.safety h2{font-size:14pt}
.safety .read{margin-left:auto;display:flex;align-items:center;gap:2mm;font-size:9pt}
.safety .read .box{width:26mm;border:1pt solid}
.aid{border:2pt solid;padding:1.5mm 2mm;margin:1.2mm 0;font-weight:bold;font-size:12pt}
.aid.small{font-size:10.5pt;border-width:1pt;padding:.8mm 2mm}
.said{white-space:nowrap}
.safety dl div{display:grid;grid-template-columns:23mm 1fr;gap:1.5mm;border-bottom:.5pt solid;border-left:.5pt solid;padding:.6mm 1.2mm;break-inside:avoid;align-items:center}
.safety dl div:first-child{border-top:.5pt solid}
.safety .danger{border-left-width:3pt!important}
.safety .warning{border-left-width:1.8pt!important}
.safety .caution{border-left-width:1pt!important}
.safety dt{font-weight:bold}
.at{font-size:9.5pt;margin-left:.6em}
.place{border-top:2pt solid;margin-top:2.6mm;padding-top:1mm}
.place>summary{break-after:avoid;list-style:none;display:flex;flex-wrap:wrap;gap:0 4mm;align-items:baseline;cursor:pointer}
.place>summary::-webkit-details-marker{display:none}
.place h2{font-size:13.5pt}
.place h2 .number,.repair .number{margin-right:.3em}
.facts{list-style:none;display:flex;flex-wrap:wrap;gap:0 3mm}
p.danger{border:3pt solid;padding:1mm 2mm;margin:1mm 0}
.warnings{margin:.8mm 0;break-after:avoid}
.warnings span{margin-right:.8em}
.say{margin:.8mm 0}
.place>.say{break-after:avoid}
.units{display:flex;justify-content:flex-end;font-size:9pt;break-after:avoid}
.units span{width:var(--box);text-align:center}
.units .odd,th.odd{background:#000;color:#fff;print-color-adjust:exact;-webkit-print-color-adjust:exact}
.units,.rows{--box:calc(min(30mm,84mm/var(--units)))}
.step{display:grid;grid-template-columns:13mm minmax(0,1fr) auto;border-bottom:.5pt solid;padding:.8mm 0;break-inside:avoid;column-gap:0}
.step.gate{border-bottom-width:1pt}
.step>.number{font-weight:bold}
.step.gate>.number{justify-self:start;align-self:start;background:#000;color:#fff;padding:0 .9mm;print-color-adjust:exact;-webkit-print-color-adjust:exact}
.step>.words{grid-column:2/4}
.step.boxed>.words{grid-column:2}
/* Nothing is painted beyond the page: the last box keeps its right side. */
.step>.rows{grid-column:3;margin:0 1pt 0 2mm}
.step>.rows.under{grid-column:1/4;justify-self:end;--box:calc(150mm/var(--units));margin-top:1mm}
/* Over pages a browser lays rows of a grid on each other: boxes and tables under a step are in its flow. */
.step:has(>.under,>.plan){display:flow-root}
/* On the line of the words, and before them for a reader of the page. */
.step:has(>.under,>.plan)>.number{width:max-content;margin-bottom:-1lh}
.step:has(>.under,>.plan)>:not(.number){margin-left:13mm}
.step:has(>.plan){break-inside:auto}
.plan .listing caption{font-size:10.5pt}
.step:has(>.under)>.rows.under{display:table;margin-left:auto}
.step>.limits,.step>.lookups,.step>.plan,.step>.set,.step>.sign{grid-column:2/4}
.step.logged>.words{display:grid;grid-template-columns:minmax(0,1fr) 42mm;column-gap:3mm}
.step.logged>.words>*{grid-column:1}
.step.logged>.words>.fail{grid-column:2;grid-row:1/span 4}
.step:has(.own) .own{margin-bottom:.6mm}
.fact{margin-left:.6em}
.only{background:#000;color:#fff;padding:0 1mm;print-color-adjust:exact;-webkit-print-color-adjust:exact}
.alert{font-weight:bold}
.ref{font-size:9pt}
.limit{display:inline-block;margin-left:.5em;overflow-wrap:anywhere}
.columns .limit{display:inline}
.value{font-size:15pt;line-height:1}
.value.sentence{font-size:12pt}
.also{font-size:9.5pt}
.limits p{margin-top:.6mm}
.fail p{margin-top:.6mm}
.fail a,.repair a{font-weight:bold;text-decoration:none}
.row{display:flex;align-items:center;justify-content:flex-end;gap:1.6mm}
.row .label{width:22mm;text-align:right;font-size:9.5pt}
.cells{display:grid;grid-template-columns:repeat(var(--units),var(--box));width:calc(var(--units)*var(--box))}
.cell{border:.9pt solid;margin:0 -.9pt -.9pt 0;min-height:8.4mm;display:flex;align-items:center;justify-content:center}
.cell .known{min-width:0;overflow-wrap:anywhere;text-align:center;line-height:1.1}
.close{display:flex;justify-content:flex-end;break-inside:avoid;margin:.6mm 0}
.set{justify-self:end;margin-top:1mm}
.set th{font-weight:normal;font-size:9.5pt;padding-right:1.6mm;text-align:right}
.set thead th{font-weight:bold;font-size:9pt;text-align:center}
.set td{width:17mm}
.set tbody td{border:.9pt solid}
.sign .fields{display:flex;margin-top:1mm}
.sign label{border:1pt solid;margin-left:-1pt;padding:.6mm 1mm;font-size:9pt}
.sign .box{height:11mm}
.lookups{display:flex;flex-wrap:wrap;gap:1mm 4mm;margin:1mm 0}
.lookup{width:min-content;break-inside:avoid}
.lookup caption{text-align:left;font-size:9.5pt}
.lookup td,.lookup th{white-space:nowrap}
.lookup th{font-weight:normal;font-size:9pt;text-align:left}
.lookup th,.lookup td{border:.5pt solid;padding:.4mm .5mm;text-align:center;font-size:9pt}
.lookup td b{font-size:10.5pt}
.repairs{border-top:2pt solid;margin-top:2.4mm;padding-top:1mm}
.repair{margin-right:3mm}
.repair h2{display:inline;font-size:11.5pt}
.columns{display:flex;font-size:9.5pt;margin-top:1mm}
.columns>div{border:.5pt solid;margin-left:-.5pt;padding:.6mm 1.4mm;min-width:0}
.columns li{margin-top:.8mm}
.log.whole{break-inside:avoid}
.log h2{display:inline;font-size:13pt}
.log h2+p{display:inline;font-size:9.5pt;margin-left:3mm}
.log table{width:100%;table-layout:fixed;margin-top:1mm}
.log th{border:.7pt solid;font-size:9pt;font-weight:normal;padding:.3mm;line-height:1.1}
.log td{border:.7pt solid;text-align:center;font-size:10pt;padding:0;height:8.4mm}
.log tbody{border-top:1.6pt solid;break-inside:avoid}
.log tbody th{border-width:0 .7pt}
.log .place{display:block;font-size:16pt;border:0;margin:0;padding:0}
.log tbody th>*{display:block}
footer{font-size:9pt;padding-top:2mm}
.watermark{position:fixed;inset:0;display:flex;align-items:center;justify-content:center;font-size:150pt;font-weight:bold;color:#dedede;transform:rotate(-50deg);z-index:-1;pointer-events:none}
@media print{
html,body{background:none}
body{max-width:none;padding:0}
.pages:not(.certificate){font-size:var(--print);line-height:1.07}
main .units{display:none}
thead .units{min-height:3.6mm}
main>p{margin:.6mm 0}
.front{margin:.8mm 0 1mm}
.for div{padding:.3mm 0}
.step{padding:.25mm 0 .35mm}
.place{margin-top:1.8mm;padding-top:.7mm}
.repairs{margin-top:1.4mm;padding-top:.6mm}
.aid.small{font-size:10pt;padding:.4mm 2mm;margin:.6mm 0}
.listing{margin-top:1.4mm}
.listing td,.listing th{padding:.2mm 1.2mm}
.listing .box{height:5.6mm}
.plan .listing{margin-top:.6mm;line-height:1;font-size:9pt}
.plan .listing caption{font-size:10pt;padding-bottom:.2mm}
.cell{min-height:8.1mm}
.row .label{font-size:9pt}
.columns{font-size:9pt;line-height:.98}
.columns>div{padding:.4mm 1mm}
.repair h2{font-size:11pt}
.repair{margin-right:2mm}
.columns li{margin-top:.25mm}
p.danger{padding:.5mm 2mm;margin:.5mm 0}
.lookup th,.lookup td{padding:0 .4mm .3mm;line-height:1}
.lookups{margin:.4mm 0;gap:.4mm 2.5mm}
.log td{height:7.9mm}
.warnings,.say{margin:.3mm 0}
footer{padding-top:.5mm}
.what{display:flex;gap:4mm;align-items:baseline}
.pages:not(.certificate) header{margin-bottom:1mm}
.new-page{break-before:page}
.new-page.left{break-before:left}
details::details-content{content-visibility:visible;block-size:auto}
.box{border-color:#000}
}
@media screen{
thead .units{display:none}
.place{padding-bottom:2mm}
.place>summary{min-height:44px;align-content:center}
.safety dl div{grid-template-columns:27mm 1fr}
.listing,.log table{table-layout:auto}
.log{overflow-x:auto}
.place>summary:focus-visible{outline:2pt solid;outline-offset:1pt}
.place>summary::before{content:"▾";align-self:center}
.place:not([open])>summary::before{content:"▸"}
.new-page{height:6mm}
}
@media screen and (max-width:180mm){
.step,.step.logged>.words{display:block}
.step>.number{display:inline-block;margin-right:2mm}
.step>.words{display:inline}
.step>.words>p:first-child{display:inline}
.step>.rows,.step>.rows.under{margin:1mm 0 0;--box:14mm}
.units{display:none}
.row{display:block;margin-top:1mm}
.row .label{width:auto;text-align:left}
.cells{grid-template-columns:repeat(auto-fill,minmax(12.5mm,1fr));gap:1mm;width:auto}
.cell{margin:0;min-height:11mm;flex-direction:column}
.cell[data-unit]::before{content:attr(data-unit);font-size:9pt;line-height:1}
.columns,.for,.safety dl div{display:block}
.columns>div{margin:0 0 -.5pt}
.for div{grid-template-columns:28mm 1fr}
.beside>*{min-width:100%}
.lookups{display:block;overflow-x:auto}
.sign .fields{display:block}
.sign label{display:block;margin:-1pt 0 0}
.log,.listing{overflow-wrap:normal}
.log table{width:max-content;min-width:100%}
.log tbody th{position:sticky;left:0;background:#fff}
.log tbody th.odd{background:#000}
.log td .box{min-width:13mm}
.listing,.listing tbody,.listing tr,.listing td{display:block}
.listing caption{display:block}
.listing thead,.listing colgroup,.listing td:empty{display:none}
.drawing{overflow-x:auto}
.picture{width:170mm!important;max-width:none}
.listing tr{border-bottom:1pt solid;padding:1mm 0}
.listing td{border:0;padding:.3mm 0}
.listing td[data-head]:not([data-head=""])::before{content:attr(data-head) ": ";font-size:9pt}
.listing td.fill{border:.5pt solid;padding-left:1mm;margin-top:1mm}
}
`;
