/**
 * No name is ignored. Every place of the grammar that takes a name or a fixed word is found in
 * a workspace that uses them all, misspelled there, and must be reported there.
 */
import { type AstNode, AstUtils, CstUtils, GrammarAST, GrammarUtils, isAstNode } from 'langium';
import { describe, expect, it } from 'vitest';
import { checkFiles } from '../language/db/workspace.ts';
import { fullMessage } from '../language/model/diagnostic.ts';
import { RebuildGrammar } from '../language/syntax/generated/grammar.ts';
import { isProblemCode } from '../language/syntax/problem-code.ts';
import { langiumParse } from './parse/reference.ts';

const common = `shop bench "Bench" {
  station strip  "Strip bench"  dirty, wet   wear "Gloves"
  station build  "Clean room"   clean   allow not-on-the-tester because "worn everywhere"
  station tester "Tester"       clean, pressure
  station wheel  "Wheel"        abrasive
  wrench TW-80   range 16..80 N·m  within 4 %
  gauge  PG-400  range 0..400 bar  class 0.25  graduated 1 bar  at tester  damped  due 2027-01-01
  gauge  PG-401  range 0..400 bar  calibrated 2025-01-01 due 2026-01-01 certificate "K-1" found 3 bar high at 250 bar  retired 2027-01-01
  gauge  PG-402  range 0..400 bar  out of use since 2027-01-01
  tool   MIC-10  range 0..25 mm  within 0.003 mm  digital
  wrench LW-200  range 40..200 N·m  within 4 %  length 400 mm
  fluid  thinner "Cleaning solvent"  solvent, flammable 62 °C
  fluid  cal-oil "Calibration fluid" test-oil
  stock  shims   from 1.00 mm to 1.95 mm by 0.05 mm, stacks of two
  stock  discs   of 1.00 mm (3), 1.05 mm
  master known   "Known nozzle" at tester
  unless stated torque ±10 %, angle ±5°  source "Shop rule"
  air below 2 bar
  acceptance fully guarded  source "Shop rule"
}

family holder "Holder" {
  part body   "Body"       held in "fixture"   marks "on the flat"
  part shim   "Shim"       in body    chosen from shims   allow part-unused because "it is"
  part spring "Spring"     on shim    binds over 1.90 mm   drawn as spring   material steel
  part seat   "Seat"       on spring  bears on needle
  part spacer "Spacer"     on body    located by "two dowels"   supplied loose
  part nozzle "Nozzle"     on spacer  located by "two dowels"   ready to fit
  part needle "Needle"     in nozzle  matched to nozzle   slides
  part nut    "Nozzle nut" on body    holds nozzle
  part washer "Washer"     on nut     renewed   from below
  part foot   "Foot"       in bore of body from above
  part screw  "Screw"      through body  balanced with lockring
  part lockring "Lock ring"  on screw
  part valve  "Valve"      in body    for each cylinder 1..3
  part stud   "Stud"       in body    quantity 3
  assembly insert "Insert" of nozzle, needle
  part ring   "Seal ring"  in body    sides inner, outer

  places cylinder 1..3 in order 1, 3, 2
  places plane upper "Upper end", lower
  face body.end lapped       meets spacer.top   guarded by nut
  face spacer.bottom lapped  meets nozzle.top
  port inlet on body
  port tip on nozzle under nut open in transit
  joint nut to body "M20x1.5", threads oiled
  joint lockring to screw, left-hand
  joint valve to body, hand-tight is final
  adjuster screw sets opening, 25 bar per turn, locked by lockring
  proven by opening, leak
  proven across the set by opening
  always checked spring
}

sequence take-off with things {
  remove things
  wash things in thinner
  only A-250 { wipe things in cal-oil }
}
`;

const base = `procedure rebuild "Rebuild" for holder at bench
  revision A   written by "Lead"   approved by "Lead" on 2026-09-01   allow not-approved because "it is"
{
  spec opening  "Opening"  pressure  250 bar +8 -0, in service at least 200 bar, new spring 258 bar +8 -0, settling 4 bar, acceptance guarded  source "Sheet"
  spec nut-fit  "Torque"   torque    60 N·m ±5   allow torque-missing because "it is"
  spec shim-rate "Rate"    rate from stiffness 200 N/mm, guide 6 mm, seat 3 mm  source "Sheet"
  spec washer-fit "Washer" torque   not required source "Sheet"
  figures from "Sheet 12" unless stated
  number A-250 "Marine"
  number A-220 "Old" {
    figures from "Sheet 13" unless stated
    opening 220 bar +8 -0  source "Sheet"
  }
  hazard DANGER "Spray goes through skin." for test opening
  allow gate-missing because "it is"

  stage strip "Strip" at strip, the set together {
    receive
    send-out of insert for "Plating"
    book-in of needle
    mark body with serial
    clamp body
    measure shim with MIC-10
    take-off with nut, nozzle
    remove needle, spacer, seat, spring, shim
    keep spring, shim at build
    check body.end  reuse if "bright"  lap if "stained" then wash in thinner  reject if "scored"
    send nozzle to wheel
    only A-250, A-220 { rinse seat in cal-oil }
    unclamp body
  }
  stage build "Build" at build {
    check needle slides "Falls"  proves through nozzle  on fail renew nozzle, needle (once), lap nozzle then wash in thinner (once), wash nozzle in thinner (twice), reshim (3 times)
    fit shim, spring, seat, spacer located by "dowels", nozzle with needle
    hazard WARNING "Heavy."
    hazard spray "Oil."
    torque nut to nut-fit with LW-200 and adapter 100 mm at 90° in cross pattern
    fit valve 2
    wash all except needle
    blow-dry spring with air at most 1 bar
  }
  stage prove "Prove" at tester {
    connect inlet
    read opening as found
    read known
    set opening to opening by screw
    test opening  read pressure within opening with PG-400  stop if fails  on fail reshim (without limit)
    test leak  hold 20 bar below opening for 10 s with gauge shut  accept "no drop"  proves through nut, body.end  on fail reshim (3 times) of the furthest out
    test phase read angle at each cylinder from cylinder 1 within 120 cam ° ±1 per place in order on fail one-by-one (once)
    test amount read volume with MIC-10 in cal-oil
      point full at 1000 rpm, rack 9 mm ±1 for 1000 strokes within 90 mL ±5 spread at most 3 mL
      point idle at 300 rpm within 14 mL ±5 below full
    test lift read length worked out as depth-out "Depth out" less depth-in at each plane within 0.3 mm ±0.1 on fail reshim (once) then all again
    across the set opening spread at most 5 bar  on fail reshim (3 times)
    do "Work it" to needle
    do "Work them" to nozzle, body.end
    wait 5 min   note "Let it settle"
  }
  stage extra at wheel { wait 5 min }
  repair reshim "Another shim" at build {
    choose shim to bring opening to opening by shim-rate never above 300 bar
    choose shim to bring leak to 254 bar by shim-rate
    reset with needle
  }
  repair spare { renew spring }
  repair one-by-one for each cylinder that failed { renew spring }
  sequence reset with thing {
    check thing slides "Falls"  on fail reshim (once)
    torque nut to nut-fit with TW-80
  }
}
`;

const like = `procedure variant "Variant" for holder at bench like rebuild
  revision B
{
  spec opening  "Opening"  pressure  250 bar +8 -0
  spec nut-fit  "Torque"   torque    60 N·m ±5
  spec shim-rate "Rate"    rate  3 bar per 0.001 in
  number A-250
  instead of stage build "Build" at build { fit spring }
  instead of repair reshim { renew spring }
  instead of receive { receive }
  after connect inlet in prove { wait 5 min }
  before clamp body { wait 5 min }
  without read known (1)
  without stage extra
  without repair spare
}
job 2207 "A set" of rebuild revision A at bench
  customer "Customer"   received 2026-09-02   order 2200
{
  intake {
    complaint "Smokes"
    approved by "Owner" on 2026-09-02
  }
  unit 1 number A-250 serial S-1 {
    as found opening 231 bar on PG-400
    waiting for spring since 2026-09-02
    comeback "12" cause wear
    core returned
    renewed spring batch "L-7"
    shim in 1.20 mm
    torque nut 60 N·m with TW-80
    leak pass
    phase 120, 240 cam °   phase 120 cam ° at cylinder 2
    concession leak by "Lead" on 2026-09-03 "agreed"
    done by "Lead" on 2026-09-03
  }
}
`;

const text = common + base + like;

/** Names that nothing declares elsewhere, and why a slip in them can be seen by nobody but a reader. */
const free: Readonly<Record<string, string>> = {
  'Shop.name': 'declares',
  'Station.name': 'declares',
  'Asset.name': 'declares',
  'Fluid.name': 'declares',
  'Stock.name': 'declares',
  'Master.name': 'declares',
  'Family.name': 'declares',
  'Part.name': 'declares',
  'PartSides.sides': 'declares',
  'Assembly.name': 'declares',
  'Places.name': 'declares',
  'Place.name': 'declares',
  'PointClause.name': 'declares',
  'Operand.name': 'declares',
  'Condition.name': "the author's own word for what has the figure",
  'Port.names': 'declares',
  'Face.face.tail': 'declares',
  'Face.meets.tail': 'declares: the other face of a pair needs no line of its own',
  'Procedure.name': 'declares',
  'Spec.name': 'declares',
  'PartNumber.name': 'declares',
  'Stage.name': 'declares',
  'Repair.name': 'declares',
  'Sequence.name': 'declares',
  'Sequence.parameters': 'declares',
  'Job.name': 'declares',
  'TestStep.name': 'declares the test; one that the family is proven by and that is not tested is gate-missing',
  'InRevision.revision': 'declares; that of a job is held against its procedure where that has one',
  'Unit.serial': "the customer's own",
  'OrderOf.order': "a number of the shop's",
  'Hazard.about': 'words of the author, printed before his sentence; what is near a signal word is refused',
};

interface Place {
  /** `Face.meets.tail` */
  readonly of: string;
  readonly word: string;
  readonly start: number;
  readonly line: number;
  readonly character: number;
}

const nameRules = new Set(['Name', 'Label', 'IdRef', 'NameRef', 'LabelRef', 'Path']);

/** The places of the grammar that take a name: rule and property. */
function declaredPlaces(): Set<string> {
  const places = RebuildGrammar().rules.flatMap((rule) =>
    rule.$type !== 'ParserRule' || nameRules.has(rule.name)
      ? []
      : AstUtils.streamAllContents(rule)
          .filter((node) => node.$type === 'Assignment')
          .map((node) => node as unknown as { feature: string; terminal: AstNode & { rule?: { $refText: string } } })
          .filter(({ terminal }) => nameRules.has(terminal.rule?.$refText ?? ''))
          .map(({ feature, terminal }) => `${terminal.rule!.$refText} ${feature}`)
          .toArray(),
  );
  return new Set(places);
}

/** Every name in a text, with its place. */
function namesIn(source: string): Place[] {
  const { ast } = langiumParse(source);
  const place = (of: string, node: AstNode, property: string, index?: number): Place[] => {
    const cst = GrammarUtils.findNodeForProperty(node.$cstNode, property, index);
    if (cst === undefined) return [];
    const { start } = cst.range;
    return [{ of, word: cst.text, start: cst.offset, line: start.line, character: start.character }];
  };
  return AstUtils.streamAst(ast)
    .toArray()
    .flatMap((node) =>
      Object.entries(node).flatMap(([property, value]): Place[] => {
        if (property.startsWith('$')) return [];
        const own = `${node.$type}.${property}`;
        return [value].flat().flatMap((one, index): Place[] => {
          if (isAstNode(one)) {
            if (['NameRef', 'IdRef', 'LabelRef'].includes(one.$type)) return place(own, one, 'name');
            if (one.$type === 'Path')
              return [...place(`${own}.head`, one, 'head'), ...place(`${own}.tail`, one, 'tail')];
            return [];
          }
          const isName =
            (property === 'name' && !['NameRef', 'IdRef', 'LabelRef'].includes(node.$type)) ||
            ['AssetAt.station', 'Master.station', 'WhenNew.part', 'OnlySteps.numbers', 'Hazard.about'].includes(own) ||
            ['InRevision.revision', 'Unit.serial', 'OrderOf.order', 'Sequence.parameters', 'PartSides.sides'].includes(
              own,
            );
          return typeof one === 'string' && isName
            ? place(own, node, property, Array.isArray(value) ? index : undefined)
            : [];
        });
      }),
    );
}

/** A slip of the keyboard: two letters swapped, or a digit changed. */
function misspelt(word: string): string {
  const at = [...word].findIndex(
    (sign, index) =>
      index > 0 && /\p{L}/u.test(sign) && /\p{L}/u.test(word[index + 1] ?? '') && sign !== word[index + 1],
  );
  return at < 0 ? `${word}x` : word.slice(0, at) + word[at + 1] + word[at] + word.slice(at + 2);
}

const check = (source: string) => checkFiles([{ uri: 'a.rebuild', text: source }]).diagnostics;
const places = namesIn(text);

describe('the workspace that misspells', () => {
  it('can be read whole', () => {
    const found = check(text).filter(({ rule }) => isProblemCode(rule) || rule === 'unknown-name');
    expect(found.map((one) => `${one.source.range.start.line + 1}: ${fullMessage(one)}`)).toEqual([]);
  });

  it('has every place of the grammar that takes a name', () => {
    const used = new Set(places.map(({ of }) => of.split('.')[1]!));
    const missing = [...declaredPlaces()].map((one) => one.split(' ')[1]!).filter((property) => !used.has(property));
    expect(missing).toEqual([]);
  });
});

describe('a misspelled name', () => {
  it('is reported where it is written, with the name that is near, or is free for a reason', () => {
    const unread: string[] = [];
    for (const { of, word, start, line, character } of places) {
      if (Object.hasOwn(free, of)) continue;
      const slip = misspelt(word);
      const found = check(text.slice(0, start) + slip + text.slice(start + word.length));
      const here = found.filter(
        ({ rule, source: { range } }) =>
          (isProblemCode(rule) || ['unknown-name', 'allow-without-effect'].includes(rule)) &&
          range.start.line === line &&
          range.start.character <= character &&
          range.end.line >= line,
      );
      if (!here.some((one) => fullMessage(one).includes(word)))
        unread.push(`${line + 1}:${character + 1} ${of} ${slip}: ${here.map((one) => fullMessage(one)).join(' | ')}`);
    }
    expect(unread).toEqual([]);
  });
});

/** Every fixed word of the text that somebody can misspell, by its place. */
function wordsIn(source: string): Omit<Place, 'of'>[] {
  const { ast } = langiumParse(source);
  return (
    CstUtils.flattenCst(ast.$cstNode!)
      // A word of the language may be a name too.
      .filter(
        (leaf) =>
          AstUtils.getContainerOfType(leaf.grammarSource, GrammarAST.isParserRule)?.name.startsWith('Word') !== true,
      )
      .filter((leaf) => leaf.grammarSource?.$type === 'Keyword' && /^\p{L}{3}/u.test(leaf.text))
      .map(({ text: word, offset, range: { start } }) => ({ word, start: offset, ...start }))
      .toArray()
  );
}

describe('a misspelled word of the language', () => {
  const words = wordsIn(text);

  it('is reported in its statement', () => {
    expect(words.length).toBeGreaterThan(250);
    const unread = words.flatMap(({ word, start, line, character }) => {
      const slip = misspelt(word);
      const found = check(text.slice(0, start) + slip + text.slice(start + word.length));
      const here = found.some(
        ({ severity, source: { range } }) => severity === 'error' && range.start.line <= line && range.end.line >= line,
      );
      return here ? [] : [`${line + 1}:${character + 1} ${slip}`];
    });
    expect(unread).toEqual([]);
  });
});
