import { printable } from '../../i18n/printable.ts';
import type { Sheet } from '../model.ts';
import type { FontFace } from './html.ts';

/** The look of the HTML sheet: that of the PDF, on paper and in a window. Black on white in every color theme. */
export function renderStyle(sheet: Pick<Sheet, 'paper' | 'pageWords'>, fonts: readonly FontFace[]): string {
  const faces = fonts
    .map(
      ({ weight, dataUrl }) =>
        `@font-face{font-family:"Atkinson Hyperlegible Next";font-weight:${weight};src:url("${dataUrl}") format("truetype")}`,
    )
    .join('\n');
  return `${faces}
@page{size:${sheet.paper === 'a4' ? 'A4' : 'letter'};margin:10mm 10mm 14mm 14mm;@bottom-right{content:${cssText(sheet.pageWords.page)} " " counter(page) " " ${cssText(sheet.pageWords.of)} " " counter(pages);font:bold 10pt sans-serif}}
${rules}`;
}

/** A string in a style sheet; nothing in it can end the string or the style element. */
function cssText(text: string): string {
  return `"${printable(text).replace(/[^\p{L}\p{N} .,-]/gu, (character) => `\\${character.codePointAt(0)!.toString(16)} `)}"`;
}

const rules = `
*{box-sizing:border-box}
html{background:#fff;color:#000;color-scheme:light}
body{margin:0 auto;max-width:200mm;padding:0 4mm;background:#fff;color:#000;font:11pt/1.22 "Atkinson Hyperlegible Next",sans-serif;overflow-wrap:anywhere}
@media print{body{max-width:none;padding:0}}
p,h2,h3,dl,dd,ul,caption{margin:0;padding:0}
table{border-collapse:collapse}
.pages{width:100%;table-layout:fixed}
.pages>*>tr>td{padding:0 1pt 0 0}
header{display:flex;gap:4mm;border-bottom:1pt solid;padding-bottom:1.5mm;margin-bottom:3mm}
header .what{flex:1}
header .title{display:flex;align-items:baseline;gap:3mm;font-size:14pt;flex-wrap:wrap}
header .kind{font-size:10pt;letter-spacing:.06em}
header .alarm{align-self:center;border:2.5pt solid;padding:1mm 2mm;font-size:13pt}
header dl{display:flex;flex-wrap:wrap;gap:.6mm 4mm;font-size:9.5pt;margin-top:1.5mm}
header dl div{display:flex;gap:1.5mm}
header dt{flex:none}
header dd{font-weight:bold}
header dd.fill{width:34mm;border-bottom:.5pt solid}
header svg{display:block;width:17mm;height:17mm}
header dl div,.for div{break-inside:avoid}
.for{display:grid;grid-template-columns:1fr 1fr;column-gap:8mm;font-size:10.5pt;margin:2mm 0 4mm}
.for div{display:grid;grid-template-columns:30mm 1fr;gap:2mm;border-bottom:.5pt solid;padding:1mm 0;align-items:baseline}
.for dd{font-weight:bold}
.for dd.fill{min-height:8mm}
.route h2,.drawing h2{font-size:13pt;margin-top:5mm}
.route ol,.way{overflow-x:clip}
.route ol{list-style:none;margin:2mm 0 0;padding:0;display:flex;flex-wrap:wrap;gap:2mm 6mm}
.route li{position:relative;border:1pt solid;padding:1.2mm 2mm;font-size:10pt;break-inside:avoid}
.route li>*{display:block}
.route li>*+*{margin-top:.6mm}
.route li:not(:last-child)::after{content:"";position:absolute;left:100%;top:50%;width:6mm;border-top:1pt solid}
.route li b{font-size:11pt}
.route a,.fail a,.for a{color:inherit;text-decoration:none}
.route .number{font-weight:bold;margin-right:.3em}
.picture{max-width:100%;margin:2mm 0}
.picture svg{display:block;width:100%;height:auto}
.pictures{display:flex;flex-wrap:wrap;gap:3mm}
.pages+.pages,.pages+.watermark+.pages{break-before:page}
.own-page{break-before:page}
.way{display:flex;flex-wrap:wrap;gap:1.5mm 5mm;align-items:stretch;margin-top:1.2mm}
.way .verdict{align-self:center;min-width:14mm}
.stop{position:relative;border:.8pt solid;padding:1mm 1.6mm;font-size:10pt;max-width:112mm;display:grid;gap:1mm;align-content:space-between}
.stop:not(:last-child)::after{content:"";position:absolute;left:100%;top:50%;width:5mm;border-top:1pt solid}
.stop.end{border-width:1.8pt}
.stop a{font-weight:bold}
.tries{display:flex;align-items:center;gap:1.2mm}
.try{display:inline-block;border:1pt solid;width:14.6mm;height:8.6mm}
.try.wide{width:24mm}
footer{font-size:9pt;padding-top:3mm}
.aid{border:1.5pt solid;padding:1.5mm 2mm;margin-bottom:1.5mm;font-weight:bold;font-size:10pt}
.said{white-space:nowrap}
.watermark{position:fixed;inset:0;display:flex;align-items:center;justify-content:center;font-size:150pt;font-weight:bold;color:#dedede;transform:rotate(-50deg);z-index:-1;pointer-events:none}
@media print{html,body{background:none}}
main>p{margin:2mm 0}
h2,h3{break-after:avoid;line-height:1.2}
h2.section{font-size:19pt;margin-top:9mm}
.listing{width:100%;margin-top:5mm;font-size:10pt;table-layout:fixed}
.listing caption{text-align:left;font-size:13pt;font-weight:bold;padding-bottom:1.5mm;break-after:avoid}
.listing th{text-align:left;font-weight:normal;font-size:9pt;border-top:1pt solid;border-bottom:.5pt solid;padding:.8mm 1.5mm}
.listing td{border-bottom:.5pt solid;padding:.8mm 1.5mm}
.listing td.fill{border:.5pt solid;height:8.5mm}
tr{break-inside:avoid}
.place{border-top:2.5pt solid;margin-top:8mm;padding:2mm 0 2mm;break-inside:avoid;break-after:avoid}
.place h2,.place h3{font-size:17pt}
.place .number{margin-right:.5em}
.facts{list-style:none;display:flex;flex-wrap:wrap;gap:.6mm 4mm;font-size:10pt;margin-top:1.4mm}
.place .facts{font-size:10.5pt}
.caution{display:grid;grid-template-columns:minmax(23mm,max-content) 1fr;gap:2mm;padding:1.2mm 2mm;margin:1.2mm 0;font-size:10pt;break-inside:avoid;break-after:avoid;border:.5pt solid}
.caution b{font-size:12pt}
.caution.danger{border-width:2.5pt}
.caution.warning{border-width:1.5pt}
.caution.caution{border-width:.8pt}
.caution.danger.caution{border-width:2.5pt}
.caution.warning.caution{border-width:1.5pt}
.caution.notice.caution{border-width:.5pt}
.caution.short.caution{display:block;border:0;padding:0;margin:0 0 1mm}
.caution.short b{font-size:10pt;margin-right:.4em}
.step{break-inside:avoid;border-bottom:.5pt solid;padding:2mm 0 2mm 2.5mm}
.step.gate{border-top:2pt solid;border-bottom:2pt solid;border-left:4pt solid;padding:2.4mm 0 2.4mm 2.5mm}
.step .row{display:flex}
.step .number{flex:none;min-width:13mm;padding-right:2mm;font-size:12pt;font-weight:bold;line-height:1.2}
.step .words{flex:1;min-width:0}
.only{border:1pt solid;padding:.4mm 1.5mm;margin-right:1mm;font-size:10.5pt}
.limits{display:flex;gap:6mm}
.limits>div{flex:1;min-width:0}
.limits .kind{font-size:10pt;margin-top:1mm}
.limit{display:flex;flex-wrap:wrap;align-items:baseline;gap:2.5mm;margin-top:1mm}
.limit .label{font-size:10.5pt}
.limit .value{font-size:15pt;line-height:1.2}
.limit .value.sentence{font-size:12pt}
.limit .also{font-size:10pt}
.limit .source{margin-left:auto;font-size:8.5pt;text-align:right}
.lookup{margin-top:1.5mm}
.lookup caption{text-align:left;font-size:10pt}
.lookup th{font-weight:normal;font-size:10pt;text-align:left}
.lookup th,.lookup td{border:.5pt solid;padding:.8mm 1.6mm;text-align:center}
.lookup td{font-size:12pt}
.boxes{margin:1.6mm 0;break-inside:avoid;table-layout:fixed;width:auto}
.boxes th{font-weight:normal;font-size:10pt;text-align:left;padding:0 1mm 0 0;width:40mm}
.boxes thead th{text-align:center;font-weight:bold;width:23mm}
.boxes thead th.name{text-align:left;width:40mm}
.boxes small{font-weight:normal;font-size:8.5pt}
.boxes td{border:1pt solid;height:9mm;width:23mm}
.boxes td.none{border:0;height:auto}
.boxes.full{width:100%}
.boxes.full td,.boxes.full thead th{width:auto}
.boxes.full th.name{width:32mm}
.close{break-inside:auto;padding-left:2.5mm;break-before:avoid}
.close h3{font-size:12pt;margin-top:3.5mm}
.lines{display:flex;gap:6mm;padding-left:13mm;margin-top:3mm}
.lines p{flex:1;display:flex;align-items:flex-end;gap:2mm;font-size:10pt}
.lines .line{flex:1;height:9mm;border-bottom:1pt solid}
.fail,.note{padding-left:13mm;margin-top:1.6mm;font-size:10.5pt;break-inside:avoid}
.note{font-size:10pt}
`;
