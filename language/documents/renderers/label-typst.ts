import type { LabelSheet } from '../labels/index.ts';
import { dataFile, qrSvg, type TypstDocument, typesetJson } from './typst.ts';

/** Said where the words of a label do not go on it in type that can be read. */
export const labelTooSmall = 'label-too-small';

/**
 * Labels as Typst source, one to a page of the size of the label. Type is as large as the label has room for, and never
 * under 5.5 pt: a label that is too small for its words is refused.
 */
export function renderLabels(sheet: LabelSheet): TypstDocument {
  const labels = sheet.labels.map(({ qr, ...label }) => ({ ...label, alt: qr.alt, code: String(qrSvg(qr)) }));
  return { source, data: typesetJson({ ...sheet, labels }, sheet.language) };
}

const source = `
#let sheet = json("${dataFile}")
#set document(title: sheet.title, date: none)
#let margin = 2mm
#let width = sheet.size.width * 1mm - 2 * margin
#let height = sheet.size.height * 1mm - 2 * margin
#set page(width: sheet.size.width * 1mm, height: sheet.size.height * 1mm, margin: margin)
#set text(font: ("Atkinson Hyperlegible Next", "DejaVu Sans"), fallback: false, lang: sheet.language, hyphenate: false)
#set par(leading: 0.4em, spacing: 0.5em, justify: false)
#show "\\u{200b}": it => h(0pt) + it
#show heading: set text(size: 1em)
#show heading: set block(above: 0pt, below: 0.55em)
#let code-size = calc.min(height, 0.36 * width)
#let words(l) = {
  heading(level: 1, text(size: 1.7em, weight: "bold", l.large))
  par(strong(l.title))
  for f in l.facts { par(hanging-indent: 0.6em)[#f.label #strong(f.text)] }
}
#let label(l) = context {
  let area = width - code-size - 1.5mm
  let size = range(34).rev().map(step => (5.5 + step * 0.25) * 1pt).find(size => measure(width: area, { set text(size: size); words(l) }).height <= height)
  if size == none { panic("label-too-small") }
  grid(columns: (area, code-size), column-gutter: 1.5mm, align: (left + top, right + top),
    { set text(size: size); words(l) },
    image(bytes(l.code), format: "svg", width: code-size, alt: l.alt),
  )
}
#for (at, l) in sheet.labels.enumerate() {
  if at > 0 { pagebreak() }
  label(l)
}
`;
