/**
 * Single mistakes of practice, each put into a clean procedure of the corpus: what a hand forgets, swaps or copies. A slip
 * replaces one text by another, with `/` for a new line.
 */
export interface Seeded {
  /** The file of the corpus. */
  readonly file: string;
  readonly what: string;
  /** Texts of the file, each with what takes its place. */
  readonly edits: readonly (readonly [string, string])[];
}

export interface Slip extends Seeded {
  readonly rule: string;
  /** Number of the step that the finding is at; null: at no step. */
  readonly step: string | null;
}

const turbo = 'turbo-cartridge-with-a-left-hand-nut';
const rotor = 'rotor-rebalanced-by-send-out';
const pump = 'torqued-slackened-torqued';
const angle = 'torqued-then-turned-by-angle';
const coil = 'coil-by-ohms-and-air-gap-by-shim';
const governor = 'two-adjusters';
const actuator = 'actuator-moved-by-air';
const holders = 'six-valve-holders';

export const slips: readonly Slip[] = [
  // Used once
  {
    file: pump,
    what: 'the gasket stays on the seat when the holder is reopened',
    edits: [
      [
        '    discard gasket/    remove seat with valve/    remove plunger, barrel/    renew',
        '    remove seat with valve/    remove plunger, barrel/    renew',
      ],
    ],
    rule: 'part-still-held',
    step: 'R3.6',
  },
  {
    file: pump,
    what: 'the crushed gasket is taken off and put on again in the repair',
    edits: [
      [
        '    discard gasket/    remove seat with valve/    remove plunger, barrel/    renew',
        '    remove gasket/    rinse gasket in cal-oil/    remove seat with valve/    remove plunger, barrel/    renew',
      ],
    ],
    rule: 'old-part-refitted',
    step: 'R3.15',
  },
  {
    file: turbo,
    what: 'the O-ring goes back in after the end play was wrong',
    edits: [
      [
        '    remove screws, plate/    discard o-ring/    remove flinger, collar/  }',
        '    remove screws, plate/    remove o-ring/    rinse o-ring in build-oil/    remove flinger, collar/  }',
      ],
    ],
    rule: 'old-part-refitted',
    step: 'R2.4d',
  },
  // Wet and dry
  {
    file: angle,
    what: 'needle and nozzle in preserving oil instead of test oil',
    edits: [['    rinse all in cal-oil', '    rinse all in preserver']],
    rule: 'lapped-pair-fitted-dry',
    step: '5.4b',
  },
  {
    file: angle,
    what: 'the nut is oiled when it is down',
    edits: [['    oil nut with cal-oil/    run-down nut', '    run-down nut/    oil nut with cal-oil']],
    rule: 'threads-dry',
    step: '5.4d',
  },
  {
    file: coil,
    what: 'the coil goes into the bath',
    edits: [
      ['on shim      live', 'on shim      live   never in solvent'],
      [
        '    wash body, nut, spring, shim, armature in solvent/    wipe coil in solvent "Never into the bath: the potting swells"',
        '    wash body, nut, coil, spring, shim, armature in solvent',
      ],
    ],
    rule: 'spoilt-by-the-bath',
    step: '2.2',
  },
  {
    file: turbo,
    what: 'the shaft goes in dry',
    edits: [['    rinse all in build-oil', '    rinse housing in build-oil']],
    rule: 'run-dry',
    step: '4.5',
  },
  // Order with an effect
  {
    file: rotor,
    what: 'the wheel is renewed after it was balanced',
    edits: [
      [
        '    wash shaft, wheel, nut in solvent/    blow-dry shaft, wheel, nut',
        '    renew wheel/    wash shaft, wheel, nut in solvent/    blow-dry shaft, wheel, nut',
      ],
    ],
    rule: 'gate-stale',
    step: '4.1',
  },
  {
    file: rotor,
    what: 'the shaft is buffed after it was balanced',
    edits: [
      [
        '    wash shaft, wheel, nut in solvent/    blow-dry shaft, wheel, nut',
        '    buff shaft/    wash shaft, wheel, nut in solvent/    blow-dry shaft, wheel, nut',
      ],
    ],
    rule: 'gate-stale',
    step: '4.1',
  },
  {
    file: turbo,
    what: 'another part is unclamped than was clamped',
    edits: [['    unclamp housing/    cap oil-in', '    unclamp plate/    cap oil-in']],
    rule: 'unclamped-another',
    step: '4.19',
  },
  {
    file: governor,
    what: 'idle is set and its lock left, then idle is read',
    edits: [['    lock idle-nut to idle-fit with TW-10 held by "screwdriver in the screw"/    check', '    check']],
    rule: 'reading-before-lock',
    step: '2.9',
  },
  // Figures and their partners
  {
    file: angle,
    what: 'in service a tenth',
    edits: [['in service at least 150 bar', 'in service at least 15 bar']],
    rule: 'figures-far-apart',
    step: null,
  },
  {
    file: turbo,
    what: 'worn play allowed less than new',
    edits: [['in service at most 0.12 mm', 'in service at most 0.08 mm']],
    rule: 'figures-far-apart',
    step: null,
  },
  {
    file: rotor,
    what: 'at least of an unbalance',
    edits: [['unbalance  at most 0.15 g·mm', 'unbalance  at least 0.15 g·mm']],
    rule: 'open-to-the-unsafe-side',
    step: null,
  },
  {
    file: pump,
    what: 'a torque with no upper end',
    edits: [['torque    40 N·m ±3', 'torque    at least 40 N·m']],
    rule: 'open-to-the-unsafe-side',
    step: null,
  },
  {
    file: pump,
    what: 'a ceiling below what is pumped up to',
    edits: [['never above 45 bar', 'never above 25 bar']],
    rule: 'ceiling-under-the-window',
    step: '6.4',
  },
  {
    file: pump,
    what: 'the fall written backwards',
    edits: [['from 25 bar to 20 bar', 'from 20 bar to 25 bar']],
    rule: 'fall-that-rises',
    step: '6.3',
  },
  {
    file: pump,
    what: 'another torque in the repair',
    edits: [
      [
        '"Barrel pressed against its pin, clear of the bore\'s wall" to barrel/    torque holder to holder-fit with TW-80',
        '"Barrel pressed against its pin, clear of the bore\'s wall" to barrel/    torque holder to 60 N·m ±4 with TW-80 source "Old sheet"',
      ],
    ],
    rule: 'one-joint-two-figures',
    step: 'R2.4',
  },
  {
    file: turbo,
    what: 'the screws to the figure of the nut',
    edits: [
      [
        'torque screws to plate-fit with TW-10 in cross pattern/    fit wheel with marks aligned/    oil nut with build-oil "Thread and face"/    run-down nut/    torque nut to nut-fit with TW-10 held by "12-point socket on the turbine wheel"/    check shaft turns-free "One flick: runs on and stops softly, touches',
        'torque screws to nut-fit with TW-10 in cross pattern/    fit wheel with marks aligned/    oil nut with build-oil "Thread and face"/    run-down nut/    torque nut to nut-fit with TW-10 held by "12-point socket on the turbine wheel"/    check shaft turns-free "One flick: runs on and stops softly, touches',
      ],
    ],
    rule: 'figure-of-another-part',
    step: '4.11',
  },
  {
    file: governor,
    what: 'idle held to the travel at full load',
    edits: [['test idle-travel  read length within idle-travel', 'test idle-travel  read length within full-travel']],
    rule: 'limit-of-another-test',
    step: '2.10',
  },
  {
    file: angle,
    what: 'no disc for the angle',
    edits: [
      ['    torque nut to nut-fit with TW-25, "angle disc"   note', '    torque nut to nut-fit with TW-25   note'],
    ],
    rule: 'angle-not-measured',
    step: '5.4e',
  },
  // A cure that can cure
  {
    file: pump,
    what: 'a repair that no longer renews what it is called after',
    edits: [
      ['on fail renew-pairs (once)/    test delivery', 'on fail renew-valve (once)/    test delivery'],
      [
        '  repair renew-pairs "New pairs" {',
        '  repair renew-valve "New valve" {/    relieve/    do "Tap it"/  }/  repair renew-pairs "New pairs" {',
      ],
    ],
    rule: 'repair-cannot-cure',
    step: null,
  },
  {
    file: turbo,
    what: 'a bad wheel sent to a repair of the housing',
    edits: [
      [
        'check wheel "Blades whole, bore not scuffed, no rub on the back"   on fail new-rotor',
        'check wheel "Blades whole, bore not scuffed, no rub on the back"   on fail new-case',
      ],
      [
        '  repair new-housing',
        '  repair new-case "Housing washed" {/    wash housing in solvent/    blow-dry housing with air at most 1.8 bar/  }/  repair new-housing',
      ],
    ],
    rule: 'repair-cannot-cure',
    step: '3.6',
  },
  // Words that silence
  {
    file: turbo,
    what: 'the dots, with other words beside the wheel',
    edits: [
      [
        '    fit wheel with marks aligned/    oil nut with build-oil "Thread and face"/    run-down nut/    torque nut to nut-fit with TW-10 held by "12-point socket on the turbine wheel"/    check shaft turns-free "One flick: runs on and stops softly, touches',
        '    fit wheel "Straight, not tilted"/    oil nut with build-oil "Thread and face"/    run-down nut/    torque nut to nut-fit with TW-10 held by "12-point socket on the turbine wheel"/    check shaft turns-free "One flick: runs on and stops softly, touches',
      ],
    ],
    rule: 'marks-not-lined-up',
    step: '4.12',
  },
  {
    file: actuator,
    what: 'a leak test with words, and nothing that is good',
    edits: [['with air  accept "', 'with air  "']],
    rule: 'accept-missing',
    step: '2.4',
  },
];

/** Changes to the same procedures that are right, if unusual: nothing is found. */
export const sound: readonly Seeded[] = [
  {
    file: turbo,
    what: 'a cover that goes on after the end play was read',
    edits: [
      [
        '  port oil-in, oil-out on housing',
        '  part cover "Compressor cover" on plate/  part v-band "V-band" on cover holds cover/  port oil-in, oil-out on housing',
      ],
      ['  joint nut to shaft', '  joint v-band to housing/  joint nut to shaft'],
      [
        '    slacken nut held by "12-point socket on the turbine wheel"   note',
        '    slacken v-band/    remove v-band, cover/    slacken nut held by "12-point socket on the turbine wheel"   note',
      ],
      [
        '    keep shield, collar, flinger, plate, screws in',
        '    keep cover, v-band, shield, collar, flinger, plate, screws in',
      ],
      ['    keep shaft, wheel, shield', '    keep cover, v-band, shaft, wheel, shield'],
      [
        '    unclamp housing/    cap oil-in, oil-out/    wipe',
        '    fit cover/    run-down v-band/    torque v-band to 8 N·m ±1 with TW-10 source "Invented figure"/    unclamp housing/    cap oil-in, oil-out/    wipe',
      ],
    ],
  },
  {
    file: turbo,
    what: 'a ring that comes out on its shaft',
    edits: [['in shaft          renewed', 'on shaft          renewed']],
  },
  {
    file: governor,
    what: 'full travel read again while idle is still open',
    edits: [
      [
        '    lock idle-nut to idle-fit with TW-10 held by "screwdriver in the screw"/    check',
        '    test full-travel  read length within full-travel with SG-10   on fail again (3 times)/    lock idle-nut to idle-fit with TW-10 held by "screwdriver in the screw"/    check',
      ],
    ],
  },
  {
    file: holders,
    what: 'a part for each cylinder in what a test proves through',
    edits: [
      [
        'source "Invented figure"   on fail bed-again',
        'source "Invented figure"   proves through holder   on fail bed-again',
      ],
    ],
  },
  {
    file: actuator,
    what: 'a leak test with the air limited',
    edits: [['with air  accept', 'with air at most 1.2 bar  accept']],
  },
  {
    file: angle,
    what: 'the body washed first, the rest in a stage of its own',
    edits: [
      [
        '    uncap inlet, return, bore, tip/    remove nut/    remove needle/    wash body, nut, seat, spring, shim in solvent',
        '    uncap inlet, return, bore, tip/    remove nut/    wash body in solvent/    blow-dry body with air at most 1.8 bar/  }/  stage rest "The small parts" at tank {/    remove needle/    wash nut, seat, spring, shim in solvent',
      ],
    ],
  },
  {
    file: pump,
    what: 'a sister of twice the torque',
    edits: [
      [
        '  stage receive "Take in" at strip {',
        '  number P-1 "Small"/  number P-2 "Large" {/    holder-fit  75 N·m ±4   source "Invented figure"/  }/  stage receive "Take in" at strip {',
      ],
      [
        'with TW-80/    slacken holder/    torque holder to holder-fit with TW-80 "This',
        'with TW-80/    slacken holder/    torque holder to holder-fit with TW-80 "This',
      ],
    ],
  },
];
