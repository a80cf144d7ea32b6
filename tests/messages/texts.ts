/** Short texts with one mistake each, for the messages that no page of a rule shows. */
import { exampleFamily, exampleShop, wholeExample } from '../fixtures/example-base.ts';

const added = (text: string, line: string) => text.replace(/\}\n$/u, `  ${line}\n}\n`);
const inShop = (line: string) => `${added(exampleShop, line)}\n${exampleFamily}`;
const inFamily = (line: string) => `${exampleShop}\n${added(exampleFamily, line)}`;
const replacedInFamily = (piece: string, put: string) => `${exampleShop}\n${exampleFamily.replace(piece, put)}`;
const items = (text: string) => wholeExample(text).text;
const steps = (text: string, station = 'build') => items(`stage one at ${station} {\n  ${text}\n}\n`);
const spec = (text: string) => items(`spec ${text}\nstage one at build {\n  do "Nothing"\n}\n`);
const result = (text: string) =>
  items(`job 7 of example at bench {\n  unit 1 number A-250 serial 041 {\n    ${text}\n  }\n}\n`);
const each = (made: (text: string) => string, texts: readonly string[]) => texts.map((text) => made(text));

/** What cannot be read at all. */
const unreadable = [
  `${exampleShop}\u0000`,
  'a\u0000b\u0000c\u0000',
  `${exampleShop}\uFFFD`,
  ...each((sign) => steps(`do "a${sign}b"`), ['\u0007', '\u202E', '\u200B']),
  ...each(steps, [
    'wash needle in “solvent”',
    'prime 6 strokes — 8 strokes',
    'prime 6 strokes; ; §',
    'torque nut to 60 N·m 5',
    'test opening  within 250',
    'prime 1 000 strokes',
    'wash',
    'measure needle within 0,2.5 mm',
    'measure needle within 1e3 mm',
    'measure needle within 9999999999999 mm',
    'measure needle within 0.12345678901234567 mm',
    'measure needle within .5 mm',
    'measure needle within 12 xyz',
    'measure needle within 12 Mm',
    'test opening  read pressure within 250 Mbar',
    'measure needle within 12 MM',
    'test opening  read pressure within 250 BAR',
    'hit "the nut"',
    'qqqqqqqq "the nut"',
    'within 250 bar',
    'zzzzqqqq needle',
  ]),
  items('sequence fit { do "Nothing" }\nstage one at build {\n  fit\n}\n'),
  items('sequence within { do "Nothing" }\nstage one at build {\n  within\n}\n'),
];

/** Points and places. */
const planned = (test: string, more = 'places bore 1..3') =>
  `${exampleShop}\n${added(exampleFamily, more)}\nprocedure example for holder at bench revision A {\n  stage one at tester {\n${test}\n  }\n}\n`;
const plans = [
  ...each(inFamily, [
    'part plunger "Plunger" on body for each cylinder',
    'places bore 1..90',
    'places bore 1..3 in order 1, 2, 2',
    'places bore 1..3 in order 1, 2',
    'places bore 1..3 in order 1, 2, 4',
  ]),
  steps('test other read volume at each bore within 5 mL ±1', 'tester'),
  ...each(planned, [
    'test other read angle at each bore within 90 cam ° ±1 per place in order',
    'test other read angle from bore 9 within 90 cam ° ±1 per place in order',
    'test other read volume within 5 mL ±1 spread at most 1 mL',
    'test other read volume point full within 5 mL ±1 within 6 mL ±1 for 0 strokes',
    'test other read volume point full within 5 mL ±1 point idle for 5 strokes',
    'test other read volume within 5 mL ±1 for 500 strokes',
    'test other read volume at each bore within 5 mL ±1 spread at most 4 mL for 5 s',
    'test other read speed point low within 50 rpm ±5 point high within 30 rpm ±5 above low',
  ]),
  ...each(
    (line) =>
      `${planned('test other read volume at each bore within 5 mL ±1 record look record code as 2 digits at each bore record seat as "good" or "bad"')}job 7 of example at bench {\n  unit 1 number none serial 041 {\n    ${line}\n  }\n}\n`,
    [
      'other 5 mL at bore 1, "x"',
      'other 5, 6 mL at bore 1',
      'other 5, 6, 7, 8 mL',
      'other 5 mL at bore 9',
      'code "12"',
      'code "1" at bore 2',
      'look " "',
      'seat "fair"',
      'look "dull" at bore 1',
    ],
  ),
];

/** Shop. */
const shops = [
  ...each(inShop, [
    'station odd "Odd" clean, dirty',
    'station odd "Odd" clean, abrasive',
    'wrench TW-1 range 1..5 N·m range 1..5 N·m',
    'wrench TW-1 range 5 N·m',
    'wrench TW-1 range 5..5 N·m',
    'wrench TW-1 range 5..1 N·m',
    'wrench TW-1 range 1..5 N·m length 0 mm',
    'wrench TW-1 range 1..5 N·m length 5 bar',
    'tool   MIC-9 range 0..25 mm within 0 mm',
    'tool   MIC-9 range 0..25 mm within 150 %',
    'tool   MIC-9 range 0..25 mm within 30 mm',
    'tool   MIC-9 range 0..25 mm graduated 30 mm',
    'air below 0 psi',
    'air below 5 mm',
    'fluid petrol "Petrol" solvent, flammable 5 bar',
    'fluid petrol "Petrol" solvent, flammable -300 °C',
    'stock odd of 1.00 mm, 1.00 mm',
    'stock odd of 0 mm',
    'stock odd of 5 bar',
    'stock odd of 1.00 mm (1.5)',
    'stock odd from 1.00 mm to 2.00 mm by 0 mm',
    'stock odd from 1.00 mm to 2.00 mm by 0.00001 mm',
    'stock odd from 2.00 mm to 1.00 mm by 0.01 mm',
    'unless stated torque 10 N·m ±5',
    'unless stated torque ±5 bar',
    'unless stated torque ±0 %',
    'unless stated torque ±120 %',
    'station near "Near" live, not live',
  ]),
  inShop('air below 20 psi\n  air below 25 psi'),
  inShop('terms "Thirty days"\n  terms "Sixty days"'),
  inShop('unless stated torque ±5 %\n  unless stated torque ±6 %'),
];

/** Family. */
const families = [
  ...each(inFamily, [
    'part six "Six" in body for each cylinder 0..6',
    'face spacer.top lapped meets body.end\n  face seat.top lapped meets body.end',
    'face end lapped',
    'part screw "Screw" on spring\n  adjuster screw sets opening, 0 bar per turn',
    'part screw "Screw" on spring\n  adjuster screw sets opening, 25 bar',
    'part stud "Stud" in body\n  joint stud to body "M8" solid class 8.8 solid class 8.8',
    'part bush "Bush" in body sides left, left',
    'part bush "Bush" in body sides left',
    'part bush "Bush" in body sides left, right for each cylinder 1..2',
    'part bush "Bush" in body from below from above',
    'assembly insert "Insert" of spring, needle',
  ]),
  replacedInFamily('joint nut to body', 'joint nut to body "M8" solid class 8.8'),
];

/** Procedure: specs, steps, sequences, `like`. */
const procedures = [
  ...each(spec, [
    'a  pressure  250 bar ±5 (3625 N·m)  source "S"',
    'a  pressure  250 bar ±5 (at most 3700 psi)  source "S"',
    'a  length  0.20 mm -0.02  source "S"',
    'a  pressure  from stiffness 200 N/mm guide 6 mm seat 3 mm  source "S"',
    'shim-rate  rate from stiffness 200 N guide 6 mm seat 3 mm  source "S"',
    'shim-rate  rate from stiffness 200 N/mm guide 6 bar seat 3 mm  source "S"',
    'shim-rate  rate from stiffness 0 N/mm guide 6 mm seat 3 mm  source "S"',
    'shim-rate  rate from stiffness 999999999999 N/mm guide 0.00001 mm seat 0.000001 mm  source "S"',
    'a  from stiffness 200 N/mm guide 6 mm seat 3 mm  source "S"',
    'shim-rate  rate  3 bar per 0 in  source "S"',
    'a  count  1.5  source "S"',
    'opening  pressure  250 bar +8 -0 settling -5 bar  source "S"',
    'opening  pressure  250 bar +8 -0 settling 5 mm  source "S"',
  ]),
  ...each(steps, [
    'torque nut to nut-fit passes 50 mm',
    'torque nut to nut-fit passes 0 % 100 %',
    'torque nut to nut-fit passes 50 % 150 %',
    'torque nut to nut-fit passes 50 % 60 N·m',
    'torque nut to nut-fit passes 75 % 50 %',
    'read opening, chatter',
    'renew all',
    'wash nozzle 3 in solvent',
    'wash nozzle in solvent except needle',
    'clamp body in vise',
    'prime 0 strokes',
    'soak needle in solvent for 0 s',
    'torque nut to nut-fit with TW-80 and adapter 0 mm at 0°',
    'torque nut to nut-fit with TW-80 and adapter 50 mm at 270°',
    'test seat  hold 0 bar below opening for 10 s accept "dry"',
    'test opening  read pressure within opening never above 0 bar',
    'test opening  read pressure within opening on fail reshim (0 times)',
    'hazard WARNING "It springs" for torque nutt\n  torque nut to nut-fit',
    'hazard WARNING "It springs" for prime\n  torque nut to nut-fit',
  ]),
  items('sequence work with part { read part as found }\nstage one at tank {\n  work with nozzle, needle\n}\n'),
  items(
    'sequence work with part { choose shim to bring part to 250 bar by shim-rate }\nstage one at tank {\n  work with opening, chatter\n}\n',
  ),
  items('stage one at build {\n  do "Nothing"\n}\nafter torque nut { do "Nothing" }\n'),
  `${exampleShop}\n${exampleFamily}\nprocedure example for holder at bench revision A language xx {\n  stage one at build {\n    do "Nothing"\n  }\n}\n`,
  ...each(steps, ['fit nut\n  nut-fit nut', 'fit nut\n  cal-oil nut', 'fit nut\n  PG-400 nut', 'fit nut\n  tank nut']),
];

const like = (patches: string) =>
  items(
    `procedure first "First" for holder at bench revision A {\n  stage one at build {\n    torque nut to 60 N·m ±5 source "S"\n    run-down nut\n  }\n}\nprocedure second "Second" like first revision A {\n  ${patches}\n}\n`,
  );

const patched = each(like, [
  'instead of torque nut { do "Nothing" }\n  without torque nut',
  'without torque nutt',
  'without torque nut in two',
  'without torque needle',
  'without lap',
  'after torque nut { do "a" }\n  after torque nut { do "b" }',
  'instead of stage one { do "a" }\n  after torque nut { do "b" }',
]);

/** Job. */
const jobs = [
  items('job 7 at bench {\n  unit 1 number A-250 serial 041 {\n  }\n}\n'),
  items('job 7 of example revision B at bench {\n  unit 1 number A-250 serial 041 {\n  }\n}\n'),
  ...each(result, [
    'as found',
    'as found opening',
    'note',
    'note opening',
    'torque nut',
    'torque 60 N·m',
    'shim in',
    'in 1.45 mm',
    'shim, nut in 1.45 mm',
    'openning 250 bar',
    'torqe nut 60 N·m',
    'with TW-80',
    'shim in 0 mm',
    'opening 250 bar note "a" "b"',
    'opening 250 bar on PG-400 on PG-400',
    'mark "a" 250 bar',
  ]),
];

/** A shop and a family with one line more, or with a piece replaced, and what a procedure has in them. */
const whole = ({ shop = '', family = '', swap = [] as readonly (readonly [string, string])[], text = '' }) =>
  wholeExample(
    swap.reduce(
      (made, [piece, put]) => made.replace(piece, put),
      `${added(exampleShop, shop)}\n${added(exampleFamily, family)}\n${text}`,
    ),
  ).text;
const at = (station: string, lines: string) => `stage one at ${station} {\n  ${lines}\n}\n`;

/** Findings of rules in situations that their pages do not show. */
const situations = [
  steps('slacken nut allow zzzzzzzz because "Two wrenches on the flats"'),
  steps('wash nutt in solvent\n  wash nutt in suds'),
  steps('slacken nut with wrench 16..80 N·m'),
  steps('buff body'),
  steps('blast body'),
  steps('clamp body', 'strip'),
  steps('slacken nut\n  remove nut, nozzle, needle\n  run-down nut\n  torque nut to nut-fit with TW-80'),
  steps('renew nozzle, needle\n  wash nozzle, needle in suds\n  fit nozzle located with needle', 'tank'),
  steps('do "Nothing" takes 0 min'),
  steps('wait 5 Ms'),
  items('job 7 of example at bench {\n  unit 1 000 number A-250 serial 041 {\n  }\n}\n'),
  ...each((name) => items(`sequence ${name} { do "Nothing" }\n${at('build', name)}`), ['clean', 'gauge', 'pressure']),
  steps('slacken nut\n  remove spring\n  torque nut to nut-fit with TW-80'),
  steps('across the set opening spread at most 5 bar', 'tester'),
  steps('across the set chatter spread at most 5 bar on fail renew nozzle, needle (once)', 'tester'),
  steps('connect inlet\n  prime 6 strokes with gauge shut', 'tester'),
  steps('test seat  hold 20 bar below opennning for 10 s accept "dry" on fail renew needle (once)', 'tester'),
  steps(
    'connect inlet\n  prime 6 strokes with gauge shut\n  read rebuilt as left\n  relieve\n  torque nut to nut-fit with TW-80\n  prime 6 strokes with gauge shut\n  test seat  hold 20 bar below rebuilt for 10 s accept "dry" on fail renew needle (once)',
    'tester',
  ),
  steps(
    'check body.end "Bright" on fail wipe-it (without limit)\n}\nrepair wipe-it {\n  wipe body with "lint-free cloth"',
  ),
  whole({
    family: 'part screw "Screw" on spring\n  adjuster screw sets idle',
    text: at('tester', 'set idle by screw\n  test idle  read pressure within 5..6 bar on fail renew needle (once)'),
  }),
  steps('slacken nut\n  remove nut\n  check body.end "Bright, even" on fail renew body (once)', 'strip'),
  spec('a  pressure not required'),
  spec('shim-rate  rate  3 bar per 5 s  source "S"'),
  spec('nut-fit  torque  20 N·m ±2 then 5 mm  source "S"'),
  spec('a  pressure  250 bar ±5 (at most 3700 psi)  source "S"'),
  spec('a  pressure  250 bar ±5 (±72 psi)  source "S"'),
  spec('a  resistance  5 MS  source "S"'),
  spec('a  time  5..6 Ms  source "S"'),
  spec('a  length  0,20 mm ±0.02  source "S"'),
  items(
    'spec opening  pressure  250 bar +8 -0  source "S"\nnumber A-250\nnumber A-220 { opening 220 bar +8 -0, in service at least 180 bar  source "S" }\nstage one at build {\n  do "Nothing"\n}\n',
  ),
  items(
    'stage one at tank {\n  slacken nut\n  remove nut\n  wash nut in solvent\n}\nstage two at build {\n  do "Nothing"\n}\n',
  ),
  items('sequence work with part { read part as found }\nstage one at tester {\n  work with opening, chatter\n}\n'),
  whole({ shop: 'tool TH-1 range 0..100 °C', text: at('tank', 'soak needle in solvent at 200 °C') }),
  whole({
    shop: 'fluid petrol "Petrol" solvent, flammable 20 °C',
    text: at('tank', 'soak needle in petrol at at least 10 °C'),
  }),
  whole({
    shop: 'wrench TW-9 range 16..80 N·m within 4 % length 300 mm',
    text: at('build', 'torque nut to nut-fit with TW-9 and adapter 300 mm at 180°'),
  }),
  whole({
    swap: [['from 1.00 mm to 1.95 mm by 0.05 mm', 'of 1.00 mm (0), 1.05 mm (0)']],
    text: at('build', 'choose shim to bring opening to 254 bar by shim-rate'),
  }),
  whole({
    shop: 'gauge PG-250 range 0..300 bar class 0.1 graduated 1 bar at build',
    text: at('tester', 'test opening  read pressure within opening with PG-250 on fail renew needle (once)'),
  }),
  whole({
    shop: 'wrench TW-5 range 5..200 N·m within 1 %',
    swap: [['  wrench TW-80   range 16..80 N·m  within 4 %\n', '']],
    text: at('build', 'torque nut to 12 N·m ±1 with TW-5'),
  }),
  whole({
    swap: [['within 4 %\n', 'within 4 %  at tester\n']],
    text: at('build', 'torque nut to nut-fit with TW-80'),
  }),
  inShop('wrench TW-1 range 16..80 N·m (1..2 lbf·ft)'),
  inShop('tool T-1 range 0..25 mm within 5 bar'),
  inShop('tool T-1 range 0..25 mm graduated 0 mm'),
  inShop('stock odd from 0 mm to 1.00 mm by 0.01 mm'),
  whole({
    swap: [['   guarded by nut', '']],
    text: `${at('strip', 'slacken nut\n  remove nut, nozzle, needle, spacer, seat, spring, shim')}stage two at tank {\n  wash body in solvent\n}\n`,
  }),
  whole({
    swap: [['  proven by opening\n', '']],
    text: at('tester', 'test opening  read pressure within opening on fail renew needle (once)'),
  }),
  `${exampleShop}\n${'family {\n'.repeat(400)}`,
  steps('wash\n'.repeat(70)),
  `${whole({ shop: 'station odd "Odd"' })}\nprocedure first "First" for holder at bench revision A {\n  stage one at odd {\n    torque nut to nut-fitt\n  }\n}\nprocedure second "Second" like first revision A {\n}\n`,
];

export const texts: readonly string[] = [
  ...unreadable,
  ...plans,
  ...shops,
  ...families,
  ...procedures,
  ...patched,
  ...jobs,
  ...situations,
];
