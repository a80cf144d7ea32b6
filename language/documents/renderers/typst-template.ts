/**
 * The page in Typst. It sets what `sheets` holds, one after the other, and adds no word of its own. Sizes: step text 11 pt, values 15 pt
 * bold, boxes 9 mm high; lines no finer than 0.5 pt, so that they live through a bad copy.
 */
export const template = `
#let fonts = ("Atkinson Hyperlegible Next", "DejaVu Sans")
#let black = luma(0)
#let hair = 0.5pt + black
#let rule = 1pt + black
#let heavy = 2.5pt + black

#set document(title: title, date: none)
#set text(font: fonts, fallback: false, size: 11pt, lang: sheets.first().language, hyphenate: false, fill: black)
#set par(leading: 0.5em, spacing: 0.6em, justify: false)
// A place to break in a very long word. As a letter of its own it would join the letter before it, which is then not
// counted where lines are broken, and could not be found by a reader program's search.
#show "\\u{200b}": it => h(0pt) + it
#show heading: set text(size: 13pt, weight: "bold")
#show heading: set block(above: 0pt, below: 0pt)

#let fact(f, size: 10pt) = if f.label == "" or f.text == "" {
  text(size: size, weight: "bold", f.label + f.text)
} else {
  text(size: size)[#f.label #text(weight: "bold", f.text)]
}

#let note(f) = text(size: 10pt)[#strong(f.label) #f.text]

// Facts side by side, a bullet of space between; a fact is not broken where it fits on a line.
#let facts(list, size: 10pt) = par(leading: 0.55em, list.map(f => fact(f, size: size)).join([#h(1.1em, weak: true)#sym.zws]))

// Words in a column: a long one goes on a line of its own, and is broken anywhere only where it is wider than that.
// Others stay as they are, so that a search finds them; capitals and digits are wide.
#let fitted(words, most: 12) = words.split(" ").map(w => if w.clusters().len() > if w == upper(w) { calc.min(most, 8) } else { most } { box(w.clusters().join(sym.zws)) } else { w }).join(" ")

#let spans(list) = list.map(s => if s.at("strong", default: false) { strong(s.text) } else { s.text }).join()

// ---- head and foot of each page --------------------------------------------------------------------------

#let qr(sheet) = image(bytes(sheet.code), format: "svg", width: 17mm, alt: sheet.header.qr.alt)

// A line to write on is as long as a name; all else takes the room that it needs, and is broken only where it fills a line.
#let head-fact(f) = box({
  set text(size: 9.5pt)
  f.label
  h(1.5mm)
  if f.text == "" { box(width: 34mm, height: 8.5pt, stroke: (bottom: hair)) } else { strong(f.text) }
})

// Room for the page's number, and the code beside it.
#let number-width = 34mm
#let code-width = 17mm

// The same on each page of a sheet: it is laid out once, since nothing in it depends on its place.
#let page-head(sheet) = grid(
  columns: (1fr, auto, number-width, code-width), column-gutter: 4mm, align: (left + horizon, right + horizon, right, right + horizon),
  {
    par(leading: 0.5em)[#text(size: 10pt, sheet.header.subtitle, tracking: 0.06em)#h(3mm)#text(size: 14pt, weight: "bold", sheet.header.title)]
    v(1.8mm, weak: true)
    par(leading: 0.55em, sheet.header.facts.map(head-fact).join([#h(4mm, weak: true)#sym.zws]))
  },
  if sheet.header.alarm != none { box(stroke: heavy, inset: (x: 2mm, y: 1.4mm), text(size: 12pt, weight: "bold", sheet.header.alarm)) },
  [],
  qr(sheet),
)

// Which page of its sheet this is, and of how many: put over the room for it in the head.
#let page-number(sheet) = text(size: 10.5pt, weight: "bold", context [#sheet.pageWords.page #counter(page).display() #sheet.pageWords.of #counter(page).at(query(sheet.end).first().location()).first()])

// Words in quotes are to be said: they are not broken, at a hyphen least of all.
#let said-whole(words) = { show regex("[\\"„«][^\\"“»]{1,60}[\\"“»]"): it => box(it); words }

#let page-foot(sheet) = context {
  let here-page = here().page()
  let pressed = query(<pressure>).any(m => m.location().page() == here-page)
  set text(size: 9pt)
  if sheet.firstAid != none and pressed {
    block(width: 100%, stroke: 1.5pt + black, inset: (x: 2mm, y: 1.5mm), below: 1.5mm, text(weight: "bold", size: 10pt, said-whole(sheet.firstAid)))
  }
  sheet.foot
}

// ---- cautions --------------------------------------------------------------------------------------------

#let word-strokes = (DANGER: 2.5pt + black, WARNING: 1.5pt + black, CAUTION: 0.8pt + black, NOTICE: 0.5pt + black)

#let signal(label) = text(weight: "bold", size: 12pt, label)

// The words are in a column as wide as the widest of the sheet: not all languages have short ones.
#let signal-width(blocks) = {
  let labels = blocks.map(b => if b.kind == "caution" { (b.label,) } else if b.kind == "step" { b.cautions.map(c => c.label) } else { () }).flatten().dedup()
  calc.max(23mm, ..labels.map(l => measure(signal(l)).width))
}

#let caution(c, width) = if c.short {
  block(width: 100%, above: 0mm, below: 0mm, sticky: true, breakable: false)[#if c.pressure [#metadata(c.label)<pressure>]#text(weight: "bold", size: 10pt, c.label)#h(0.6em)#text(size: 10pt, c.text)]
} else {
  block(width: 100%, above: 1.4mm, below: 1.4mm, sticky: true, breakable: c.text.len() > 1500, stroke: word-strokes.at(c.word), inset: (x: 2mm, y: 1.5mm),
    grid(columns: (width, 1fr), column-gutter: 2mm, signal(c.label), text(size: 10pt)[#if c.pressure [#metadata(c.label)<pressure>]#c.text]))
}

// ---- boxes -----------------------------------------------------------------------------------------------

#let box-height = 9mm
// Labels fill lines of some twenty letters: of more than a few dozen lines no page is sure to hold all rows.
#let letters(g) = g.rows.map(r => r.label.len() + r.unit.len()).sum(default: 0)
#let boxes(g) = {
  let n = g.across
  let empty = n - g.columns.len()
  block(width: 100%, above: 1.6mm, below: 1.6mm, breakable: g.rows.len() > 15 or letters(g) > 600, {
    table(
      columns: (if n > 8 { 32mm } else { 40mm },) + (if n > 6 { (1fr,) * n } else { (23mm,) * n }),
      stroke: none,
      inset: (x, y) => (left: if x == 0 { 0mm } else { 1mm }, right: 1mm, y: 0.8mm),
      align: (x, y) => if x == 0 { left + horizon } else { center + horizon },
      table.header(
        table.cell(text(size: 10pt, weight: "bold", g.title)),
        ..g.columns.map(c => [
          #text(size: 10pt, weight: "bold", c.place)
          #if c.detail != "" [ #h(0.3em)#text(size: 8.5pt, fitted(c.detail, most: 5)) ]
        ]),
        ..([],) * empty,
      ),
      // A row stays whole unless its label alone fills a page: a box in two halves is none to write in.
      ..g.rows.map(r => (
        table.cell(breakable: r.label.len() > 800, text(size: 10pt)[#fitted(r.label)#if r.unit != "" [, #strong(r.unit)]]),
        ..g.columns.map(c => table.cell(stroke: 1pt + black, box(height: box-height - 1.6mm, width: 100%))),
        ..([],) * empty,
      )).flatten(),
    )
  })
}

// ---- tables ----------------------------------------------------------------------------------------------

#let cell-text(c) = if c.text == "" { if c.at("fill", default: false) { box(height: 5.5mm) } } else if c.at("strong", default: false) { strong(fitted(c.text)) } else { fitted(c.text) }

#let listing(b) = {
  block(above: 5mm, below: 1.5mm, sticky: true, heading(level: 1, b.title))
  set text(size: 10pt)
  table(
    columns: b.columns.map(c => c.share * 1fr),
    stroke: (x, y) => (top: if y == 0 { rule } else { hair }, bottom: hair),
    inset: (x: 1.5mm, y: 1.4mm),
    align: left + horizon,
    table.header(..b.columns.map(c => text(size: 9pt, c.head))),
    ..b.rows.flatten().map(c => if c.at("fill", default: false) { table.cell(stroke: (left: hair, right: hair, top: hair, bottom: hair), cell-text(c)) } else { table.cell(cell-text(c)) }),
  )
}

// ---- at the beginning --------------------------------------------------------------------------------------

// For what, for whom, by whom: two columns, ruled, with room to write where nothing is said.
#let facts-block(b) = {
  let entry(f) = (
    text(size: 10pt, f.label),
    if f.text == "" { box(height: 6.5mm) } else {
      let said = text(size: 11pt, weight: "bold", f.text)
      if f.at("href", default: none) == none { said } else { link(f.href, said) }
    },
  )
  let cells = b.facts.map(entry)
  if calc.odd(cells.len()) { cells.push(([], [])) }
  // No table: it has no heads that a reader program could say.
  block(above: 2mm, below: 4mm, grid(
    columns: (auto, 1fr, auto, 1fr),
    stroke: (x, y) => (bottom: hair),
    inset: (x, y) => (left: if x == 2 { 6mm } else { 0mm }, right: 3mm, y: 1.4mm),
    align: left + horizon,
    ..cells.flatten(),
  ))
}

// One box for each stop, in rows; a line goes from each to the next.
#let route(b) = {
  block(above: 5mm, below: 2.4mm, sticky: true, heading(level: 1, b.title))
  let each = calc.min(4, b.stops.len())
  let joint(at) = if at + 1 < b.stops.len() and calc.rem(at + 1, each) != 0 { line(length: 100%, stroke: 1.5pt + black) }
  let cells = ()
  for (at, s) in b.stops.enumerate() {
    // A box that went on overleaf would be read across: all stations, then all stages.
    cells.push(grid.cell(stroke: rule, breakable: s.stages.map(p => p.title.len()).sum(default: 0) > 1500, {
      if s.station != "" { block(above: 0mm, below: 1.4mm, text(size: 11pt, weight: "bold", s.station)) }
      stack(spacing: 1.6mm, ..s.stages.map(p => text(size: 10pt)[#strong(p.number)#h(0.5em)#p.title]))
    }))
    if calc.rem(at + 1, each) != 0 { cells.push(grid.cell(inset: 0mm, align: horizon, joint(at))) }
  }
  grid(
    columns: range(2 * each - 1).map(at => if calc.odd(at) { 4mm } else { 1fr }),
    stroke: none, inset: (x: 2mm, y: 1.8mm), row-gutter: 2.5mm, align: left + top,
    ..cells,
  )
}

#let picture(d) = image(bytes(d.svg), format: "svg", width: d.width * 1mm, alt: d.alt)

#let drawing(b) = {
  if b.title != "" { block(above: 5mm, below: 2mm, sticky: true, heading(level: 1, b.title)) }
  block(breakable: false, picture(b))
}

// ---- where a unit goes that fails ----------------------------------------------------------------------------

// The number comes before its box: inside it would be taken for what was written.
#let try-box(name, width: 14mm) = stack(dir: ltr, spacing: 1mm, ..if name == "" { () } else { (box(height: 8mm, align(horizon, text(size: 10pt, name))),) }, box(width: width, height: 8mm, stroke: rule))

// Room for the numbers of the units that may come there, and no more than a line of the page has.
#let try-width(units, boxes) = calc.max(14mm, calc.min(if units > 3 { 24mm } else { 14mm + (units - 1) * 5mm }, 108mm / boxes))

// A long title is broken, so that two boxes find room on a line; the row of tries is not.
#let stop-box(s, stroke) = context {
  let head = text(size: 10pt, s.head)
  // Words that are long are over the boxes.
  let over = s.tries.clusters().len() > 14
  let row = stack(dir: ltr, spacing: 2mm, ..if s.tries != "" and not over { (box(height: 8mm, align(horizon, text(size: 10pt, s.tries))),) } else { () }, ..s.boxes.map(name => try-box(name, width: s.wide)))
  let width = calc.max(calc.min(measure(head).width, 66mm), measure(row).width)
  box(stroke: stroke, inset: (x: 1.6mm, y: 1.2mm), width: width + 3.2mm, {
    set par(leading: 0.45em)
    block(above: 0mm, below: 1.2mm, head)
    if over { block(above: 0mm, below: 1.2mm, text(size: 10pt, s.tries)) }
    row
  })
}

// Boxes joined by a line, on as many lines as they take: what is followed with a finger.
#let fail-path(p, prefix) = {
  block(above: 2mm, below: 1.4mm, sticky: true, text(size: 10.5pt, weight: "bold", p.lead))
  for w in p.ways {
    let stops = w.stops.map(s => stop-box((wide: try-width(p.units, s.boxes.len()), head: [#if s.target == "" { strong(s.number) } else { link(label(prefix + s.target), strong(s.number)) }#h(0.5em)#s.title], tries: s.tries, boxes: s.boxes), rule))
    let end = if w.end == "" { none } else { stop-box((wide: try-width(p.units, 1), head: strong(w.end), tries: "", boxes: ("",)), 2pt + black) }
    let joint = box(height: 8mm, align(horizon, line(length: 4mm, stroke: 1.5pt + black)))
    // The line that leads on stays with the box that it leads to.
    let flow = { set par(leading: 1.5mm); stops.map(s => box[#s]).join(joint) + if end != none { if stops.len() > 0 { sym.zws } + box(if stops.len() > 0 { joint } + end) } }
    block(above: 1.4mm, below: 1mm, if w.verdict == "" { flow } else {
      grid(columns: (auto, 1fr), column-gutter: 2.5mm, align: (left + horizon, left), text(size: 10.5pt, weight: "bold", w.verdict), flow)
    })
  }
  if p.stop != "" { block(above: 1.4mm, below: 0.8mm, text(size: 10.5pt, weight: "bold", p.stop)) }
}

// ---- steps -----------------------------------------------------------------------------------------------

#let limit-line(l, alone) = {
  let value = {
    if l.label != "" { text(size: 10.5pt, l.label); h(2.5mm) }
    // A figure is printed large; a sentence no larger than it takes to read it at arm's length.
    text(size: if l.value.clusters().len() > 36 { 12pt } else { 15pt }, weight: "bold", l.value)
    if l.also != "" { h(2.5mm); text(size: 10pt, l.also) }
  }
  // Beside a long line there is no room for it.
  if alone and (l.label + l.value + l.also).clusters().len() < 90 {
    grid(columns: (auto, 1fr), column-gutter: 4mm, align: (left + bottom, right + bottom), value, text(size: 8.5pt, l.source))
  } else {
    value
    if l.source != "" { block(above: 1.2mm, below: 0mm, text(size: 8.5pt, l.source)) }
  }
}

// Side by side where a reading is judged by more than one kind of limit.
#let limits(lines) = {
  let columns = ()
  for l in lines { if l.head != "" or columns.len() == 0 { columns.push((l,)) } else { columns.last().push(l) } }
  let alone = columns.len() == 1
  let column(of) = {
    if of.first().head != "" { block(above: 0mm, below: 1.6mm, text(size: 10pt, of.first().head)) }
    stack(spacing: 1.8mm, ..of.map(l => limit-line(l, alone)))
  }
  grid(columns: (1fr,) * columns.len(), column-gutter: 5mm, ..columns.map(column))
}

#let lookup(l) = {
  if l.title != "" { block(above: 2.8mm, below: 1.2mm, text(size: 10pt, l.title)) }
  table(
    columns: (auto,) + (auto,) * l.pairs.len(),
    stroke: hair, inset: (x: 1.6mm, y: 1.2mm), align: center + horizon,
    table.header(text(size: 10pt, l.from), ..l.pairs.map(p => text(size: 12pt, p.from))),
    text(size: 10pt, l.to), ..l.pairs.map(p => text(size: 12pt, weight: "bold", p.to)),
  )
}

#let write-lines(names) = block(above: 3mm, below: 1mm, grid(
  columns: (1fr,) * names.len(), column-gutter: 6mm,
  ..names.map(n => grid(columns: (auto, 1fr), column-gutter: 2mm, align: bottom, text(size: 10pt, n), box(width: 100%, height: 9mm, stroke: (bottom: rule)))),
))

#let step(s, last, breaks) = block(width: 100%, breakable: breaks, sticky: last and not breaks, above: 0mm, below: 0mm,
  stroke: if s.gate { (top: 2pt + black, bottom: 2pt + black, left: 4pt + black) } else { (bottom: hair) },
  inset: (left: 2.5mm, right: 0mm, y: if s.gate { 2.4mm } else { 2mm }),
  {
    if s.cautions.len() > 0 { stack(spacing: 1.6mm, ..s.cautions.map(c => caution(c, s.signal))); v(1.4mm) }
    grid(
      columns: (if s.number.len() > 4 { 17mm } else { 13mm }, 1fr),
      text(size: 12pt, weight: "bold", s.number),
      {
        if s.pressure [#metadata(s.number)<pressure>]
        if s.only != none { box(stroke: rule, inset: (x: 1.5mm, y: 0.8mm), baseline: 0.8mm, text(weight: "bold", size: 10.5pt, s.only)); h(2mm) }
        spans(s.sentence)
        if s.limits.len() > 0 { block(above: 2mm, below: 1.4mm, limits(s.limits)) }
        s.lookups.map(lookup).join()
        if s.drawings.len() > 0 { block(above: 2mm, below: 1.4mm, { set par(leading: 2mm); s.drawings.map(d => box(picture(d))).join(h(3mm, weak: true) + sym.zws) }) }
        if s.facts.len() > 0 { block(above: 1.8mm, below: 1mm, facts(s.facts)) }
      },
    )
    // What is to be known before a figure is written down is over the boxes.
    if s.notes.len() > 0 { pad(left: 13mm, block(above: 1.8mm, below: 0.8mm, stack(spacing: 1.4mm, ..s.notes.map(note)))) }
    s.grids.map(boxes).join()
    if s.lines.len() > 0 { pad(left: 13mm, write-lines(s.lines)) }
    if s.fail != none { pad(left: 13mm, fail-path(s.fail, s.prefix)) }
  },
)

// About how many letters would fill the room that a step takes, on the high side: measuring each step is slow.
#let bulk(s) = {
  let written(list, more) = list.map(f => f.text.len() + more).sum(default: 0)
  written(s.cautions, 200) + written(s.sentence, 0) + written(s.facts, 60) + (if s.fail == none { 0 } else { 500 * s.fail.ways.len() }) + 900 * s.drawings.len() + written(s.notes, 110) + 200 * s.limits.len() + 500 * s.lookups.len() + s.grids.map(g => 300 + 260 * g.rows.len() + 4 * letters(g)).sum(default: 0)
}

#let place-head(b) = block(width: 100%, above: 8mm, below: 2mm, sticky: true, breakable: false, stroke: (top: heavy), inset: (top: 2.2mm, bottom: 0.6mm), {
  [#heading(level: if b.form == "stage" { 1 } else { 2 }, text(size: 17pt)[#b.number #h(0.45em)#b.title])#label(b.prefix + b.id)]
  v(2mm, weak: true)
  facts(b.facts, size: 10.5pt)
})

#let show-block(b) = if b.kind == "heading" {
  block(above: 9mm, below: 0mm, sticky: true, heading(level: 1, text(size: 19pt, b.text)))
} else if b.kind == "text" {
  block(above: 2mm, below: 2mm, sticky: b.opens, if b.strong { strong(b.text) } else { b.text })
} else if b.kind == "facts" { facts-block(b) } else if b.kind == "route" { route(b) } else if b.kind == "drawing" { drawing(b) } else if b.kind == "table" {
  if b.at("ownPage", default: false) { pagebreak(weak: true) }
  listing(b)
} else if b.kind == "place" { place-head(b) } else if b.kind == "caution" { caution(b, b.signal) } else if b.kind == "step" {
  // A step stays whole; only one that is longer than a page has to break.
  let breaks = bulk(b) > 2500 and measure(width: b.area.width, step(b, false, false)).height > b.area.height
  step(b, b.last, breaks)
} else if b.kind == "grid" {
  if b.title != "" { block(above: 3.5mm, below: 0.5mm, sticky: true, inset: (left: 2.5mm), text(size: 12pt, weight: "bold", b.title)) }
  b.grids.map(g => pad(left: 2.5mm, boxes(g))).join()
}

// ---- page ------------------------------------------------------------------------------------------------

#let margins = (left: 14mm, right: 10mm, bottom: 24mm)
// Headings of the second level where several sheets are one document: each has its own above them.
#let traveler(sheet, several) = context {
  let page-width = if sheet.paper == "a4" { 210mm } else { 215.9mm }
  let page-height = if sheet.paper == "a4" { 297mm } else { 279.4mm }
  let head-height = measure(block(width: page-width - margins.left - margins.right, page-head(sheet))).height
  set page(
    paper: if sheet.paper == "a4" { "a4" } else { "us-letter" },
    margin: (..margins, top: head-height + 14mm),
    header: block(width: 100%, stroke: (bottom: rule), inset: (bottom: 2mm), {
      page-head(sheet)
      place(right + horizon, dx: -(code-width + 4mm), page-number(sheet))
    }),
    header-ascent: 4mm,
    footer: page-foot(sheet),
    footer-descent: 3mm,
    background: if sheet.watermark != none { rotate(-50deg, text(size: 150pt, weight: "bold", fill: luma(222), sheet.watermark)) },
  )
  counter(page).update(1)
  set text(lang: sheet.language)
  // Who sees a page reads in its head which sheet it is. A reader program leaves the head out: this heading is for it and for
  // the bookmark. It takes no room, and lies between head and body, so that no words get mixed where text is copied.
  if several { place(dy: -4mm, heading(level: 1, text(size: 5pt, fill: rgb(0, 0, 0, 0), sheet.title))) }
  set heading(offset: if several { 1 } else { 0 })
  let area = (width: page-width - margins.left - margins.right, height: page-height - margins.bottom - head-height - 14mm)
  let width = signal-width(sheet.blocks)
  // The last step of a stage stays with the boxes that close it, and what is said at its beginning with its first step.
  let opens = false
  for (at, b) in sheet.blocks.enumerate() {
    let after = sheet.blocks.at(at + 1, default: none)
    opens = b.kind == "place" or opens and (b.kind == "text" or b.kind == "caution")
    show-block((..b, opens: opens, prefix: sheet.prefix, area: area, signal: width, last: after != none and after.kind == "grid"))
  }
  [#metadata(none)#sheet.end]
}

#for (at, s) in sheets.enumerate() {
  let prefix = str(at + 1) + "-"
  traveler((..s, prefix: prefix, code: codes.at(at), end: label(prefix + "end")), sheets.len() > 1)
}
`;
