/**
 * The page in Typst. `print-sheets` sets sheets one after the other, and adds no word of its own. Nothing in it depends on what is
 * printed, and its functions are given no more than they show: so the typesetter finds again what it has laid out before,
 * where only other words have changed. Sizes: steps and warnings
 * 10.5 pt, limits 15 pt bold, nothing under 9 pt; boxes 8.4 mm high; lines no finer than 0.5 pt, so that they live through a bad copy.
 */
export const template = `
#let fonts = ("Atkinson Hyperlegible Next", "DejaVu Sans")
#let black = luma(0)
#let hair = 0.5pt + black
#let rule = 1pt + black
#let heavy = 2pt + black
// Steps and warnings: smaller only where that saves a page.
#let step-size = 10.5pt
#let least-size = 9.25pt
#let small = 9pt

// Words in a column: a long one goes on a line of its own, and is broken anywhere only where it is wider than that.
// Others stay as they are, so that a search finds them; capitals and digits are wide.
#let fitted(words, most: 12) = words.split(" ").map(w => if w.clusters().len() > if w == upper(w) { calc.min(most, 8) } else { most } { box(w.clusters().join(sym.zws)) } else { w }).join(" ")

// The typesetter gives up on a text with many hundred places to break: a list of very long names is set name by name.
#let named(words) = if words.len() > 2000 { words.split(", ").join(", " + h(0pt)) } else { words }
#let spans(list) = list.map(s => if s.at("strong", default: false) { strong(named(s.text)) } else { named(s.text) }).join()

// Letters of the sources: small, and never at the head of a line.
#let refs(x) = { let of = x.at("sources", default: ()); if of.len() > 0 [#sym.wj#text(size: small, of.map(l => "[" + l + "]").join())] }

#let fact(f) = {
  if f.label == "" or f.text == "" { strong(f.label + f.text) } else [#f.label #strong(f.text)]
  refs(f)
}

// Facts side by side, a bullet of space between; a fact is not broken where it fits on a line.
#let facts(list) = list.map(fact).join([#h(0.9em, weak: true)#sym.zws])

#let triangle(name) = if name != "" { text(weight: "bold", size: 1.05em, "⚠") + sym.space.nobreak }

// A reader program says the name of a box only if there is something in it: a picture of nothing.
#let nothing = bytes("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 1 1'/>")
#let blank(name, width: 100%, height) = box(width: width, height: height, image(nothing, format: "svg", alt: name, width: 1mm, height: 1mm))

// ---- head and foot of each page --------------------------------------------------------------------------

#let qr(sheet, size) = image(bytes(sheet.code), format: "svg", width: size, alt: sheet.header.qr.alt)

// A line to write on is as long as a name; all else takes the room that it needs, and is broken only where it fills a line.
#let head-fact(f) = box({
  set text(size: 9.5pt)
  if f.label != "" { f.label; h(1.5mm) }
  if f.text == "" { box(width: 34mm, height: 8.5pt, stroke: (bottom: hair)) } else { strong(f.text) }
})

#let number-width = 30mm

#let alarm(sheet) = if sheet.header.alarm != none { box(stroke: heavy, inset: (x: 2mm, y: 1mm), text(size: 12pt, weight: "bold", sheet.header.alarm)) }

#let page-head(sheet) = grid(
  columns: (1fr, auto, number-width), column-gutter: 3mm, align: (left + bottom, right + horizon, right),
  par(leading: 0.45em)[#text(size: 13pt, weight: "bold", sheet.header.title)#h(3mm)#text(size: 9.5pt, sheet.header.subtitle)#h(3mm)#sheet.header.facts.map(head-fact).join([#h(3mm, weak: true)#sym.zws])],
  alarm(sheet),
  [],
)

// Which page of its sheet this is, and of how many: put over the room for it in the head.
#let page-number(sheet) = text(size: 10.5pt, weight: "bold", context [#sheet.pageWords.page #counter(page).display() #sheet.pageWords.of #counter(page).at(query(sheet.end).first().location()).first()])

// Words in quotes are to be said: they are not broken, at a hyphen least of all.
#let said-whole(words) = { show regex("[\\"„«“][^\\"“»”]{1,60}[\\"“»”]"): it => box(it); words }

// What is marked so on this page.
#let on-page(mark) = { let page = here().page(); query(mark).filter(m => m.location().page() == page) }

// Head and foot are styles of all that is on the page. So that a sheet's own words are no part of these, and what is on the
// page is found again when only they have changed, they are looked up: those of the sheet that began here, or last before.
#let of-sheet(show-it) = context { let page = here().page(); show-it(query(<sheet>).filter(m => m.location().page() <= page).last().value) }

// What can hurt most is repeated at the foot of each page where it can happen: it is said in its place besides.
#let foot-words(sheet, pressed) = {
  set text(size: small)
  if pressed {
    let p = sheet.pressed
    block(width: 100%, stroke: 1.5pt + black, inset: (x: 2mm, y: 1.2mm), below: 1.2mm, text(weight: "bold", [⚠ #p.alert.label #p.alert.text #said-whole(p.firstAid)]))
  }
  sheet.foot
}
#let page-foot(sheet) = foot-words(sheet, sheet.pressed != none and on-page(<pressure>).len() > 0)

// ---- boxes -----------------------------------------------------------------------------------------------

#let box-height = 8.4mm
#let label-width = 22mm
#let number-col = 13mm

// A box to write in says its name to those who cannot see it; one that is filled says what is in it.
// Words that a job has written down take the lines that they need.
#let cell(value, name) = {
  let height = box-height - 1mm
  let said = text(size: 10pt, fitted(value, most: 6))
  if value == "" { blank(name, height) } else if value.clusters().len() <= 6 { box(height: height, align(center + horizon, said)) } else { grid(columns: (0pt, 1fr), align: center + horizon, box(height: height), pad(y: 0.6mm, { set par(leading: 0.35em); said })) }
}

// As wide as a figure needs to be written; of many units all that the page has.
#let box-width(n, width) = if n <= 1 { 30mm } else if n == 2 { 24mm } else if n == 3 { 20mm } else if n == 4 { 17mm } else if n <= 6 { 14mm } else if n <= 8 { 11mm } else { calc.min(14mm, (width - number-col - label-width) / calc.min(n, 12)) }
// Of more units than this the boxes are under the step, and of more than twelve on several lines.
#let beside = 8
#let line-of = 12

#let row-label(r) = text(size: 9.5pt)[#fitted(r.label)#if r.unit != "" [, #strong(fitted(r.unit))]]

// Rows of boxes, each with its label at the left; with heads where the page has none for them.
#let box-rows(rows, columns, w, heads: false, label: label-width) = grid(
  columns: (label,) + (w,) * calc.max(..rows.map(r => r.boxes.len())),
  inset: (x, y) => if x == 0 { (right: 1.6mm, y: 0.4mm) } else if heads and y == 0 { (x: 0.4mm, top: 0.4mm, bottom: 1mm) } else { 0.4mm },
  align: (x, y) => if x == 0 { right + horizon } else { center + horizon },
  ..if heads { (grid.header(repeat: false, [], ..columns.map(c => text(size: small)[#strong(c.place) #fitted(c.detail, most: 5)])),) } else { () },
  ..rows.map(r => (
    row-label(r),
    ..r.boxes.enumerate().map(((at, v)) => grid.cell(stroke: 0.9pt + black, cell(v, r.name + ", " + columns.at(at, default: (place: "")).place))),
    ..([],) * (calc.max(..rows.map(r => r.boxes.len())) - r.boxes.len()),
  )).flatten(),
)

// Of one unit the boxes of a step lie beside each other, each under its label.
#let one-width = 21mm
#let one-line = 3
#let unit-line(rows, columns) = grid(
  columns: (one-width,) * calc.min(rows.len(), one-line), column-gutter: 1mm, row-gutter: 1mm, align: left + bottom,
  ..rows.map(r => stack(spacing: 0.7mm, { set text(size: small); set par(leading: 0.35em); [#r.label#if r.unit != "" [, #strong(r.unit)]] }, box(width: 100%, stroke: 0.9pt + black, inset: 0.5mm, cell(r.boxes.first(), r.name + ", " + columns.first().place)))),
)

// Units on as many lines as it takes, evenly.
#let unit-rows(sheet, rows, label: label-width) = if sheet.columns.len() == 1 and rows.len() > 1 {
  [#metadata(none)<boxes>#unit-line(rows, sheet.columns)]
} else {
  let n = sheet.columns.len()
  let w = box-width(n, sheet.area.width)
  // What is for the set is under what is for each unit.
  let of-units = rows.filter(r => r.boxes.len() == n)
  let of-set = rows.filter(r => r.boxes.len() != n)
  if n <= line-of {
    if of-units.len() > 0 [#metadata(none)<boxes>#box-rows(of-units, sheet.columns, w, label: label)]
  } else {
    let each = calc.ceil(n / calc.ceil(n / line-of))
    for from in range(0, n, step: each) {
      let to = calc.min(n, from + each)
      if of-units.len() > 0 { block(above: 0.6mm, below: 0.6mm, breakable: of-units.len() > 12, box-rows(of-units.map(r => (..r, boxes: r.boxes.slice(from, to))), sheet.columns.slice(from, to), w, heads: true)) }
    }
  }
  if of-set.len() > 0 { box-rows(of-set, (), w, label: label) }
}

#let rows-width(sheet, rows: 1) = if sheet.columns.len() == 1 and rows > 1 { calc.min(rows, one-line) * (one-width + 1mm) - 1mm } else { label-width + box-width(sheet.columns.len(), sheet.area.width) * calc.max(1, sheet.columns.len()) }

// Over the boxes, once a page: the units.
#let unit-heads(columns, width) = {
  let n = columns.len()
  if n == 0 or n > line-of { [] } else {
    let w = box-width(n, width)
    align(right, grid(columns: (w,) * n, align: center + bottom,
      ..columns.map(c => {
        let said = text(size: small)[#strong(c.place)#if c.detail != "" [ #fitted(c.detail, most: 5)]]
        if c.odd { box(fill: black, inset: (x: 0.8mm, y: 0.5mm), outset: (y: 0.3mm), text(fill: white, weight: "bold", said)) } else { said }
      })))
  }
}

// ---- tables ----------------------------------------------------------------------------------------------

#let cell-text(c, name, height) = if c.text == "" { if c.at("fill", default: false) { blank(name, height) } } else if c.at("strong", default: false) { strong(fitted(c.text)) } else { fitted(c.text) }

// A page that holds nothing else has room between the lines, and a short list on it stays whole.
#let listing(b, roomy: false) = {
  let above = if roomy { 4mm } else { 0.7em }
  let body = {
    block(above: above, below: if roomy { 1.5mm } else { 1.3mm }, sticky: true, heading(level: 1, b.title))
    context { set text(size: calc.max(small, 0.905 * text.size)); table(
      columns: b.columns.map(c => c.share * 1fr),
      stroke: (x, y) => (top: if y == 0 { rule } else { hair }, bottom: hair),
      inset: (x: 1.4mm, top: if roomy { 0.9mm } else { 0.2em }, bottom: if roomy { 0.9mm } else { 0.3em }),
      align: left + horizon,
      table.header(..b.columns.map(c => text(size: small, c.head))),
      ..b.rows.map(r => {
        // A line stays whole, unless what is in a cell may be longer than a page.
        let breaks = r.any(c => c.text.len() > 600)
        r.enumerate().map(((at, c)) => {
          let said = cell-text(c, b.columns.at(at).head + ", " + r.first().text, if roomy { 7.5mm } else { 1.5em })
          table.cell(breakable: breaks, ..if c.at("fill", default: false) { (stroke: hair) } else { (:) }, said)
        })
      }).flatten(),
    ) }
  }
  let short = roomy and b.rows.len() <= 8 and b.rows.flatten().map(c => c.text.len()).sum(default: 0) < 1500
  if short { block(breakable: false, above: above, body) } else { body }
}

// ---- at the beginning --------------------------------------------------------------------------------------

// For what, for whom, by whom, and the code: two columns, ruled, with room to write where nothing is said.
#let facts-block(b, code) = {
  let entry(f) = (
    text(size: small, f.label),
    if f.text == "" { box(height: 5.5mm) } else {
      let said = text(size: 10pt, weight: "bold", f.text)
      if f.at("href", default: none) == none { said } else { link(f.href, said) }
    },
  )
  let cells = b.facts.map(entry)
  if calc.odd(cells.len()) { cells.push(([], [])) }
  // No table: it has no heads that a reader program could say.
  block(above: 1.5mm, below: 2mm, grid(columns: (1fr, 20mm), column-gutter: 4mm,
    grid(
      columns: (auto, 1fr, auto, 1fr),
      stroke: (x, y) => (bottom: hair),
      inset: (x, y) => (left: if x == 2 { 4mm } else { 0mm }, right: 2mm, top: 0.7mm, bottom: 1mm),
      align: left + horizon,
      ..cells.flatten(),
    ),
    code,
  ))
}

#let picture(d) = image(bytes(d.svg), format: "svg", width: d.width * 1mm, alt: d.alt)

#let drawing(b) = {
  if b.title != "" { block(above: 3mm, below: 1.5mm, sticky: true, heading(level: 1, b.title)) }
  block(breakable: false, above: 1mm, below: 1mm, picture(b))
}

// ---- what can hurt -----------------------------------------------------------------------------------------

#let word-strokes = (DANGER: 3pt + black, WARNING: 1.8pt + black, CAUTION: 1pt + black, NOTICE: 0.5pt + black)

#let first-aid(words) = block(width: 100%, stroke: heavy, inset: (x: 2.2mm, y: 1.8mm), above: 1.4mm, below: 1.4mm, text(size: 12pt, weight: "bold", said-whole(words)))

#let safety(b) = {
  block(above: 0mm, below: 1.5mm, sticky: true, grid(columns: (1fr, auto, 26mm), align: (left + horizon, right + horizon, left), column-gutter: 2mm,
    [#box(heading(level: 1, text(size: 14pt, b.title)))#h(4mm)⚠ #b.lead],
    text(size: small, b.read),
    if b.read != "" { box(stroke: rule, blank(b.read, width: 26mm, box-height)) },
  ))
  if b.firstAid != none { first-aid(b.firstAid) }
  if b.rows.len() > 0 {
    v(1.4mm, weak: true)
    grid(
      columns: (auto, 1fr), stroke: (x, y) => (top: hair, bottom: hair), inset: (x: 1.2mm, top: 0.2em, bottom: 0.3em), align: left + horizon,
      ..b.rows.map(r => (
        grid.cell(stroke: (left: word-strokes.at(r.word), top: hair, bottom: hair), breakable: r.text.len() > 1500, strong(r.label)),
        grid.cell(breakable: r.text.len() > 1500)[#r.text#h(1em, weak: true)#sym.zws#text(size: 9.5pt)[#b.where #strong(r.steps)]],
      )).flatten(),
    )
  }
  for f in b.rules { block(above: 1mm, below: 0.6mm, [#strong(f.label + ":") #f.text]) }
}

// The lines of a stage: what its steps call for, a triangle before each.
#let warnings(list) = if list.len() > 0 { par(list.map(w => [⚠~#if w.label != "" [#strong(w.label) ]#w.text]).join([#h(0.8em, weak: true)#sym.zws])) }

#let pressed(on, what) = if on [#metadata(what)<pressure>]

// ---- where a unit goes that fails ----------------------------------------------------------------------------

#let arrow = [ →~]

// ---- steps -----------------------------------------------------------------------------------------------

#let limit-line(l) = {
  if l.label != "" { text(size: 10pt, l.label); h(2mm) }
  // A figure is printed large; a sentence no larger than it takes to read it at arm's length.
  text(size: if l.value.clusters().len() > 36 { 12pt } else { 15pt }, weight: "bold", l.value)
  refs(l)
  if l.also != "" { h(2mm); text(size: 9.5pt, l.also) }
}

// By kind, where a reading is judged by more than one: a line for each, the part numbers behind each other.
#let limits(lines) = {
  let kinds = ()
  for l in lines { if l.head != "" or kinds.len() == 0 { kinds.push((l,)) } else { kinds.last().push(l) } }
  let figures(of) = of.map(l => box(limit-line(l))).join([#h(5mm, weak: true)#sym.zws])
  if kinds.len() == 1 { par[#kinds.first().first().head #figures(kinds.first())] } else {
    stack(spacing: 1.2mm, ..kinds.map(of => par(leading: 0.4em, hanging-indent: 5mm)[#of.first().head#h(3mm)#figures(of)]))
  }
}

// A row of figures under a row of figures; short ones beside each other.
#let lookup(l) = box(baseline: 0mm, {
  if l.title != "" { block(above: 0mm, below: 0.7mm, text(size: 9.5pt, l.title)) }
  table(
    columns: l.pairs.len() + if l.from == "" { 0 } else { 1 },
    stroke: hair, inset: (x: 0.45mm, top: 0.25mm, bottom: 0.75mm), align: center + horizon,
    table.header(..if l.from == "" { () } else { (text(size: small, l.from),) }, ..l.pairs.map(p => text(size: small, p.from)), ..l.at("besides", default: ()).map(r => (r.from, ..r.reads).map(t => text(size: small, t))).flatten()),
    ..if l.to == "" { () } else { (text(size: small, l.to),) }, ..l.pairs.map(p => text(size: 10.5pt, weight: "bold", p.to)),
  )
})
#let lookups(list) = if list.len() > 0 { block(above: 1.2mm, below: 0.8mm, par(leading: 1mm, spacing: 1mm, list.map(lookup).join([#h(4mm, weak: true)#sym.zws]))) }

#let caution-line(c) = block(width: 100%, above: 0mm, below: 1mm, strong[⚠~#c.label: #c.text])

#let note(f) = if f.label == "" { f.text } else [#strong(f.label + ":") #f.text]

// The words of a step, as one paragraph: what is done, with what, and what to know.
#let words-of(s) = {
  s.cautions.map(caution-line).join()
  let inline = if s.limits.all(l => l.head == "") { s.limits.map(l => box(limit-line(l))) } else { () }
  let said = (triangle(s.alert), if s.only != none { box(fill: black, inset: (x: 1mm, y: 0mm), outset: (y: 0.9mm), text(fill: white, weight: "bold", s.only)); h(1.5mm) }, spans(s.sentence)).join()
  let more = (inline + s.facts.map(fact) + s.notes.map(note)).join([#h(0.9em, weak: true)#sym.zws])
  par[#said#if more != none [#h(0.9em, weak: true)#sym.zws#more]]
}

#let stop-words(s, prefix, inner) = {
  let name = strong(s.number)
  if s.target == "" or s.steps.len() > 0 { name } else { link(label(prefix + s.target), name) }
  if s.title != "" [~#s.title]
  if s.steps.len() == 1 [~#inner(s.steps.first())]
  [, #s.tries]
  if s.back != "" [, #s.back]
  if s.steps.len() > 1 { s.steps.map(one => [; #strong(one.number)~#inner(one)]).join() }
}

#let inline-step(s) = {
  if s.cautions.len() > 0 { strong(s.cautions.map(c => [⚠~#c.label: #c.text ]).join()) }
  triangle(s.alert)
  if s.only != none [#strong(s.only) ]
  let end = spans(s.sentence)
  end
  for l in s.limits [ #if l.head != "" [#l.head ]#limit-line(l)]
  for f in s.facts + s.notes [#h(0.7em, weak: true)#sym.zws#fact(f)]
}

#let fail-path(p, prefix) = {
  for w in p.ways {
    block(above: 1mm, below: 0mm, {
      text(size: 1.05em, strong(w.mark))
      if w.when != "" [ #w.when]
      for s in w.stops [ →~#stop-words(s, prefix, inline-step)]
      if w.end != "" [ →~#strong(w.end)]
    })
    // Heads of repairs that are here: the number leads to it.
    for s in w.stops { if s.steps.len() > 0 { place(hide[#metadata(s.number)#label(prefix + s.target)]) } }
  }
  if p.stop != "" { block(above: 1mm, below: 0mm, strong(p.stop)) }
}

#let sign-boxes(s) = {
  if s.statement != "" { block(above: 1.4mm, below: 1.4mm, s.statement) }
  table(
    columns: s.boxes.map(b => b.share * 1fr), stroke: rule, inset: 1mm, align: left + top,
    table.header(..s.boxes.map(b => text(size: small, b.label))),
    ..s.boxes.map(b => blank(b.label, 12mm)),
  )
}

#let set-width = 15mm
// Boxes for points and places: points down, places across.
#let plan-table(b) = {
  block(above: 1.6mm, below: 0.8mm, sticky: true, strong(b.title))
  table(
    columns: b.columns.map(c => c.share * 1fr),
    stroke: hair,
    inset: (x: 1mm, top: 0.5mm, bottom: 1mm),
    align: left + horizon,
    table.header(..b.columns.map(c => text(size: small, c.head))),
    ..b.rows.map(r => r.enumerate().map(((at, c)) => {
      if c.at("fill", default: false) {
        table.cell(align: center + horizon, box(height: 7.2mm, align(center + horizon, if c.text == "" { blank(b.columns.at(at).head + ", " + r.first().text, 7.2mm) } else { strong(c.text) })))
      } else if c.at("strong", default: false) { strong(c.text) } else { text(size: small, c.text) }
    })).flatten(),
  )
}

#let set-boxes(b) = box-rows(b.rows, b.heads.map(h => (place: h, detail: "")), set-width, heads: true)

// About how many letters would fill the room that a step takes, on the high side: measuring each step is slow.
#let bulk(s, units) = {
  let written(list, more) = list.map(f => f.text.len() + more).sum(default: 0)
  let path = if s.fail == none { 0 } else { s.fail.ways.map(w => 200 + w.when.len() + w.stops.map(t => 100 + t.title.len() + t.steps.map(o => written(o.sentence, 0) + written(o.facts, 20) + written(o.notes, 20)).sum(default: 0)).sum(default: 0)).sum(default: 0) }
  written(s.cautions, 100) + written(s.sentence, 0) + written(s.facts, 30) + path + written(s.notes, 40) + 200 * s.limits.len() + 400 * s.lookups.len() + s.tables.map(t => 120 + 140 * t.rows.len()).sum(default: 0) + s.rows.map(r => 200 + r.label.len()).sum(default: 0) * calc.max(1, calc.ceil(units / line-of))
}

#let step-body(s, sheet, breaks) = {
  let n = sheet.columns.len()
  let rows = s.rows
  let close = if s.close == none { () } else { (s.close,) }
  let boxed = rows.len() + close.len() > 0
  // What goes on overleaf is set in one column, so that it is read in its order.
  let side = boxed and n <= beside and not breaks
  let set-beside = s.set != none and s.set.heads.len() * set-width + label-width <= rows-width(sheet)
  // Limits of several kinds, and tables, need more room than there is beside the boxes.
  let wide = s.limits.filter(l => l.head != "").len() > 1
  let words = {
    pressed(s.pressure, s.number)
    words-of(s)
    if not wide and s.limits.any(l => l.head != "") { block(above: 1.2mm, below: 1.2mm, limits(s.limits)) }
  }
  let path = if s.fail != none { fail-path(s.fail, sheet.prefix) }
  let body = if s.logged and s.fail != none {
    grid(columns: (1fr, 42mm), column-gutter: 3mm, words, path)
  } else if side {
    // A closing row alone is low: it goes beside the last lines of the step.
    grid(columns: (1fr, rows-width(sheet, rows: rows.len() + close.len())), column-gutter: 2mm, align: (left + if rows.len() == 0 { horizon } else { top }, right + top), { words; path }, { unit-rows(sheet, rows + close); if s.set != none and set-beside { v(1.2mm); align(right, set-boxes(s.set)) } })
  } else {
    words
    path
    if boxed { align(right, block(above: 1.2mm, below: 0mm, unit-rows(sheet, rows + close))) }
  }
  let more = {
    if wide { block(above: 1mm, below: 1.3mm, limits(s.limits)) }
    lookups(s.lookups)
    for t in s.tables { plan-table(t) }
    if s.set != none and not (side and set-beside) { align(right, block(above: 1.2mm, below: 0mm, set-boxes(s.set))) }
    if s.sign != none { sign-boxes(s.sign) }
  }
  block(width: 100%, breakable: breaks, above: 0mm, below: 0mm, stroke: (bottom: if s.gate { rule } else { hair }), inset: (top: if boxed { 0.16em } else { 0.24em }, bottom: 0.36em), body + more)
}

#let step-number(s) = box(width: number-col, inset: (top: 0.24em), {
  if s.gate { box(fill: black, inset: (x: 0.9mm, y: 0mm), outset: (y: 0.9mm), text(fill: white, weight: "bold", s.number)) } else { strong(s.number) }
})

// Steps are a list: a reader program says how many there are, and which one it is at.
#let step-list(list, sheet) = enum(
  numbering: n => step-number(list.at(n - 1)),
  ..list.map(s => {
    // A step stays whole; only one that is longer than a page has to break.
    let breaks = bulk(s, sheet.columns.len()) > 2500 and measure(width: sheet.area.width - number-col, step-body(s, sheet, false)).height > sheet.area.height
    [#metadata(none)#label(sheet.prefix + s.id)] + step-body(s, sheet, breaks)
  }),
)

#let place-head(b, sheet) = block(width: 100%, above: 3mm, below: 0.4mm, sticky: true, breakable: false, stroke: (top: heavy), inset: (top: 1.3mm, bottom: 0.3mm), {
  set par(leading: 0.44em)
  pressed(b.pressure, b.number)
  par[#box[#heading(level: 1, text(size: 13.5pt)[#b.number #h(0.2em)#b.title])#label(sheet.prefix + b.id)]#if b.facts.len() > 0 [#h(4mm, weak: true)#sym.zws#facts(b.facts)]]
  if b.danger != none { block(width: 100%, stroke: word-strokes.DANGER, inset: (x: 2mm, y: 1.3mm), above: 1.3mm, below: 1mm)[#strong[⚠~#b.danger.label] #b.danger.text] }
  if b.warnings.len() > 0 { block(above: 1.2mm, below: 0.9mm, warnings(b.warnings)) }
  for t in b.texts { block(above: 0.9mm, below: 0.9mm, t) }
})

// ---- repairs ---------------------------------------------------------------------------------------------

#let repairs(b, sheet) = {
  pressed(b.pressure, b.repairs.first().number)
  block(width: 100%, above: 2.6mm, below: 1mm, sticky: true, breakable: false, stroke: (top: heavy), inset: (top: 1.3mm), {
    set par(leading: 0.44em)
    par(b.repairs.map(r => box[#box[#heading(level: 1, text(size: 11.5pt)[#r.number~#r.title])#label(sheet.prefix + r.id)]#h(1.5mm, weak: true)#sym.zws#box[(#r.tries)]#if r.back != "" [ #r.back]]).join([#h(3mm, weak: true)#sym.zws]) + if b.back != "" [#h(3mm, weak: true)#sym.zws#strong(b.back)])
    for r in b.repairs { for t in r.texts { block(above: 1.6mm, below: 0.8mm)[#r.number: #t] } }

    if b.facts.len() > 0 { block(above: 0.8mm, below: 0.8mm, facts(b.facts)) }
    if b.warnings.len() > 0 { block(above: 0.8mm, below: 0.8mm, warnings(b.warnings)) }
  })
  let one(s) = block(above: 0.9mm, below: 0mm, [#strong(s.label)#h(0.5em)#inline-step(s.step)#if s.step.fail != none { fail-path(s.step.fail, sheet.prefix) }#if s.step.sign != none { sign-boxes(s.step.sign) }])
  let part(p) = { if p.title != "" { block(above: 1.4mm, below: 0.4mm, sticky: true, strong(p.title)) }; p.steps.map(one).join() }
  context {
    set text(size: calc.max(small, 0.9 * text.size))
    set par(leading: 0.42em)
    let columns = b.columns.map(c => c.parts.map(part).join({ v(1mm, weak: true); line(length: 100%, stroke: hair) }))
    let beside = grid(columns: b.columns.map(c => c.share * 1fr), stroke: hair, inset: (x: 1.4mm, top: 0.8mm, bottom: 1.2mm), align: left + top, ..columns.map(c => grid.cell(breakable: false, c)))
    // What goes on overleaf is one column after the other, so that it is read in its order.
    let long = b.columns.any(c => c.parts.map(p => p.steps.map(s => bulk(s.step, sheet.columns.len())).sum(default: 0)).sum(default: 0) > 2500) and measure(width: sheet.area.width, beside).height > sheet.area.height - 40mm
    if long { columns.map(c => block(width: 100%, stroke: (top: hair), inset: (top: 0.8mm, bottom: 1.2mm), c)).join() } else { beside }
  }
  lookups(b.lookups)
  for f in b.advice { block(above: 1mm, below: 0.6mm, note(f)) }
}

// ---- log -------------------------------------------------------------------------------------------------

// A column is as wide as its longest word asks for, within reason.
#let log-share(c, least) = calc.max(least, calc.min(1.5, calc.max(..(c.name + " " + c.unit).split(" ").map(w => w.clusters().len())) / 8)) * 1fr

#let log(b, sheet) = {
  pressed(b.pressure, b.title)
  block(above: 4mm, below: 1.6mm, sticky: true)[#box(heading(level: 1, text(size: 13pt, b.title)))#h(3mm)#text(size: 9.5pt, b.lead)]
  let units = b.units
  let below = {
    for f in b.advice { block(above: 0.9mm, below: 0mm, note(f)) }
    for f in b.fails { block(above: 0.9mm, below: 0mm)[#strong(f.label) #f.text] }
    if b.foot != "" { block(above: 1mm, below: 0mm, text(size: 9.5pt, b.foot)) }
  }
  // Lines as high as a hand likes them, where the page has room.
  let left = sheet.area.height - calc.max(52mm, 36mm + measure(width: sheet.area.width, below).height)
  let line = if not b.large { 7.4mm } else { calc.max(7mm, calc.min(9mm, left / units.map(u => u.lines.len()).sum() - 1mm)) }
  table(
    columns: (if units.first().place == "" { 13mm } else { 22mm }, ..b.columns.enumerate().map(((at, c)) => log-share(c, if at == 0 { 1.35 } else { 1 }))),
    stroke: (x, y) => 0.7pt + black,
    inset: (x: 0.5mm, top: 0.4mm, bottom: 0.8mm), align: center + horizon,
    table.header(
      text(size: small, b.unit),
      ..b.columns.map(c => { set text(size: small); set par(leading: 0.35em); if c.step != "" { strong(c.step); linebreak() }; fitted(c.name, most: 9); if c.unit != "" { linebreak(); strong(fitted(c.unit, most: 9)) } }),
    ),
    ..units.map(u => (table.hline(stroke: 1.6pt + black), ..u.lines.enumerate().map(((nth, l)) => {
      let last = nth + 1 == u.lines.len()
      (
        table.cell(fill: if u.odd { black } else { none }, stroke: (left: 0.7pt + black, right: 0.7pt + black, top: if nth == 0 { 1.6pt + black } else { none }, bottom: if last { 0.7pt + black } else { none }), {
          set text(fill: if u.odd { white } else { black })
          set par(leading: 0.35em)
          l.head.enumerate().map(((at, t)) => if nth == 0 and at == 0 { text(size: 14pt, weight: "bold", t) } else { text(size: small, weight: if t.contains(":") { "bold" } else { "regular" }, fitted(t, most: 9)) }).join(linebreak())
        }),
        ..l.cells.enumerate().map(((at, v)) => {
          let c = b.columns.at(at)
          if v == "" { blank((b.unit + " " + u.place, str(nth + 1), c.step, c.name, c.unit).filter(t => t != "").join(", "), line) } else { text(size: if at == 0 { small } else { 10pt }, fitted(v, most: 9)) }
        }),
      )
    }).flatten())).flatten(),
  )
  below
}

// ---- blocks ----------------------------------------------------------------------------------------------

#let roomy-size = 10pt
#let roomy(sheet) = sheet.form == "certificate" or sheet.form == "part"

#let show-block(b, sheet, code) = if b.kind == "heading" {
  block(above: 6mm, below: 0mm, sticky: true, heading(level: 1, text(size: 16pt, b.text)))
} else if b.kind == "text" {
  let gap = if roomy(sheet) { 2mm } else { 1.2mm }
  block(above: gap, below: gap, if b.strong { strong(b.text) } else { b.text })
} else if b.kind == "facts" { facts-block(b, code)
} else if b.kind == "drawing" { drawing(b)
} else if b.kind == "table" { listing(b, roomy: roomy(sheet))
} else if b.kind == "tables" { context {
  let beside = grid(columns: (1fr, 1fr), column-gutter: 6mm, listing(b.tables.first()), b.tables.slice(1).map(listing).join())
  // Cut by a page break, each would be continued after its neighbor: so both end on one page, or follow each other.
  if measure(width: sheet.area.width, beside).height > sheet.area.height / 3 { b.tables.map(listing).join() } else { block(breakable: false, above: 1.2mm, below: 0mm, beside) }
}
} else if b.kind == "safety" { safety(b)
} else if b.kind == "place" { place-head(b, sheet)
} else if b.kind == "close" { block(above: 0.8mm, below: 0.8mm, breakable: false, width: 100%, align(right, unit-rows(sheet, (b.row,), label: auto)))
} else if b.kind == "repairs" { repairs(b, sheet)
} else if b.kind == "log" {
  // What is over its lines may be longer than a page.
  let words = b.units.map(u => u.lines.map(l => l.head).flatten()).flatten() + b.columns.map(c => c.name)
  if b.large { log(b, sheet) } else { block(width: 100%, breakable: words.map(w => w.len()).sum() > 1000, above: 4mm, below: 1.2mm, log(b, sheet)) }
} else if b.kind == "page" { pagebreak(weak: true, to: if b.side == "left" { "even" } else { none }) }

// Steps that follow each other are one list.
#let flow(blocks, sheet, code) = {
  let run = ()
  for b in blocks {
    if b.kind == "step" { run.push(b) } else {
      if run.len() > 0 { step-list(run, sheet); run = () }
      show-block(b, sheet, code)
    }
  }
  if run.len() > 0 { step-list(run, sheet) }
}

// ---- page ------------------------------------------------------------------------------------------------

// Mirrored: the holes of a sheet printed on both sides are beside the inner margin.
#let margins = (inside: 14mm, outside: 10mm)
// Under the foot: what office printers leave blank, and a little.
#let below-foot = 5.5mm
// What is over the body: which sheet it is, which page of it, and the units where there are boxes.
#let page-top(sheet) = {
  block(width: 100%, stroke: (bottom: rule), inset: (bottom: 1.2mm), below: 1mm, {
    page-head(sheet)
    place(right + bottom, page-number(sheet))
  })
  if sheet.heads > 0mm { block(width: 100%, height: sheet.heads, above: 0mm, below: 0mm, if on-page(<boxes>).len() > 0 { unit-heads(sheet.columns, sheet.width) }) }
}

// Headings of the second level where several sheets are one document: each has its own above them.
#let traveler(sheet, several, sizes) = context {
  let page-width = if sheet.paper == "a4" { 210mm } else { 215.9mm }
  let page-height = if sheet.paper == "a4" { 297mm } else { 279.4mm }
  let width = page-width - margins.inside - margins.outside
  let head-height = measure(block(width: width, page-head(sheet))).height
  let over = sheet.columns.len() > 0 and sheet.columns.len() <= line-of
  let heads-height = if over { measure(block(width: width, unit-heads(sheet.columns, width))).height + 1mm } else { 0mm }
  let above = head-height + heads-height + if roomy(sheet) { 14mm } else { 10.5mm }
  // The foot has more lines in some languages.
  let below = calc.max(20mm, measure(block(width: width, foot-words(sheet, sheet.pressed != none))).height + 2mm + below-foot)
  let area = (width: width, height: page-height - below - above)
  let body = (form: sheet.form, columns: sheet.columns, prefix: sheet.prefix, area: area)
  set page(
    paper: if sheet.paper == "a4" { "a4" } else { "us-letter" },
    margin: (..margins, top: above, bottom: below),
    header: of-sheet(page-top),
    header-ascent: if roomy(sheet) { 4mm } else { 1mm },
    footer: of-sheet(page-foot),
    footer-descent: 2mm,
    background: if sheet.watermark != none { rotate(-50deg, text(size: 150pt, weight: "bold", fill: luma(222), sheet.watermark)) },
  )
  counter(page).update(1)
  [#metadata((form: sheet.form, header: sheet.header, pageWords: sheet.pageWords, pressed: sheet.pressed, foot: sheet.foot, columns: sheet.columns, width: width, heads: heads-height, end: sheet.end))<sheet>]
  set text(lang: sheet.language, size: if roomy(sheet) { roomy-size } else { step-size })
  // Who sees a page reads in its head which sheet it is. A reader program leaves the head out: this heading is for it and for
  // the bookmark. It takes no room, and lies between head and body, so that no words get mixed where text is copied.
  if several { place(dy: -4mm, heading(level: 1, text(size: 9pt, fill: rgb(0, 0, 0, 0), sheet.title))) }
  set heading(offset: if several { 1 } else { 0 })
  // A reader program speaks an author's words in their own language.
  let tagged(body) = if sheet.own == none { body } else {
    show regex(sheet.own.pattern): set text(lang: sheet.own.language)
    body
  }
  let code = qr(sheet, 20mm)
  // What begins on a page of its own, up to the next: one part.
  let parts = ((),)
  for b in sheet.blocks { if b.kind == "page" and parts.last().len() > 0 { parts.push((b,)) } else { parts.last().push(b) } }
  for (at, part) in parts.enumerate() {
    let breaks = part.filter(b => b.kind == "page")
    for b in breaks { show-block(b, body, none) }
    [#metadata(none)#label(sheet.prefix + str(at))]
    {
      set text(size: if roomy(sheet) { roomy-size } else { sizes.at(at, default: step-size / 1pt) * 1pt })
      tagged(flow(part.filter(b => b.kind != "page"), body, code))
    }
    // How far it goes. A large log fills its page by itself.
    if not (roomy(sheet) or part.any(b => b.kind == "log" and b.large)) {
      context {
        let end = here().position()
        let pages = end.page - locate(label(sheet.prefix + str(at))).page() + 1
        [#metadata((sheet: sheet.at, part: at, pages: pages, used: (end.y - above) / area.height))<extent>]
      }
    }
  }
  [#metadata(none)#sheet.end]
}

#let print-sheets(sheets, title, sizes) = {
  // Alone, so that it is no part of the styles of what follows.
  [#set document(title: title, date: none)]
  set text(font: fonts, fallback: false, size: step-size, lang: sheets.first().language, hyphenate: false, fill: black)
  set par(leading: 0.48em, spacing: 0.55em, justify: false)
  // A place to break in a very long word. As a letter of its own it would join the letter before it, which is then not
  // counted where lines are broken, and could not be found by a reader program's search.
  show "\\u{200b}": it => h(0pt) + it
  show heading: set text(size: 12.5pt, weight: "bold")
  show heading: set block(above: 0pt, below: 0pt)
  set enum(indent: 0pt, body-indent: 0pt, spacing: 0pt, number-align: start + top)
  for (at, s) in sheets.enumerate() {
    let prefix = str(at + 1) + "-"
    traveler((..s, at: at, prefix: prefix, end: label(prefix + "end")), sheets.len() > 1, sizes.at(at, default: ()))
  }
}
`;
