import { type Said, say } from '../say/say.ts';
import type { UnitName } from './types.ts';

/** A spelling that is understood but not accepted, since it is misread or means another thing elsewhere. */
export interface NearUnit {
  readonly written: string;
  readonly near: UnitName;
  readonly why: Said;
}

const near = (name: UnitName, why: Said, ...spellings: readonly string[]): readonly NearUnit[] =>
  spellings.map((written) => ({ written, near: name, why: say`"${written}" is written ${name}: ${why}.` }));

const plural = say`a unit takes no other ending`;
const product = say`the hyphen reads as a minus or as nothing`;
const dot = say`a blank or a star between two units reads as two words`;
const order = say`the force comes first, so that the unit is not taken for work`;
const mass = say`the force of a pound or a kilogram carries an f`;

/** Near misses that are more than a difference of case (those are found by `readUnit` itself). */
export const nearUnits: readonly NearUnit[] = [
  ...near('bar', plural, 'bars'),
  ...near('psi', say`gauge or absolute is said in the title`, 'psig', 'psia'),
  ...near(
    'psi',
    say`one spelling for one unit`,
    'lbf/in²',
    'lbf/in2',
    'lb/in²',
    'lb/in2',
    'lbs/in²',
    'lbs/in2',
    'lb/sq in',
  ),
  ...near('kgf/cm²', mass, 'kg/cm²', 'kg/cm2', 'kp/cm²', 'kp/cm2'),
  ...near('inHg', say`one word for one unit`, 'in Hg', 'in. Hg', 'in.Hg', '″Hg'),
  ...near('inH2O', say`one word for one unit`, 'in H2O', 'in H₂O', 'in. H2O', 'inWC', 'in WC', 'inWG', 'in WG'),

  ...near('N·m', product, 'N-m'),
  ...near('N·m', dot, 'N m', 'N*m', 'N·M'),
  ...near('N·m', plural, 'Nms'),
  ...near('N·cm', product, 'N-cm'),
  ...near('N·cm', dot, 'N cm', 'N*cm'),
  ...near('cN·m', product, 'cN-m'),
  ...near('cN·m', dot, 'cN m', 'cN*m'),
  ...near(
    'lbf·ft',
    order,
    'ft-lb',
    'ft·lb',
    'ft.lb',
    'ft-lbs',
    'ft·lbs',
    'ft.lbs',
    'ft-lbf',
    'ft·lbf',
    'ft.lbf',
    'ft lb',
    'ft lbs',
    'ft lbf',
    'ftlb',
    'ftlbs',
    'ftlbf',
  ),
  ...near('lbf·ft', plural, 'lbs-ft', 'lbs·ft', 'lbs.ft', 'lbs ft'),
  ...near('lbf·ft', dot, 'lbf ft', 'lb ft', 'lbf*ft', 'lbfft', 'lbft'),
  ...near(
    'lbf·in',
    order,
    'in-lb',
    'in·lb',
    'in.lb',
    'in-lbs',
    'in·lbs',
    'in.lbs',
    'in-lbf',
    'in·lbf',
    'in.lbf',
    'in lb',
    'in lbs',
    'in lbf',
    'inlb',
    'inlbs',
    'inlbf',
  ),
  ...near('lbf·in', plural, 'lbs-in', 'lbs·in', 'lbs.in', 'lbs in'),
  ...near('lbf·in', dot, 'lbf in', 'lb in', 'lbf*in', 'lbfin', 'lbin'),
  ...near('kgf·m', mass, 'kg-m', 'kg·m', 'kg.m', 'kgm', 'mkp', 'm-kg', 'kp·m', 'kpm'),
  ...near('kgf·m', dot, 'kgf m', 'kgfm', 'kgf*m'),
  ...near('kgf·cm', mass, 'kg-cm', 'kg·cm', 'kg.cm', 'kgcm', 'cm-kg', 'kp·cm', 'kpcm'),
  ...near('kgf·cm', dot, 'kgf cm', 'kgfcm', 'kgf*cm'),

  ...near('µm', say`one spelling for one unit`, 'micron', 'microns', 'mµ'),
  ...near('in', plural, 'inch', 'inches', 'ins'),
  ...near('in', say`the mark is read as the end of a text or as seconds`, '″'),
  ...near('thou', plural, 'thous'),

  ...near('N', plural, 'newton', 'newtons'),
  ...near('lb', plural, 'lbs'),
  ...near('kgf', mass, 'kp'),
  ...near('N/mm', say`one spelling for one unit`, 'N per mm'),
  ...near('lbf/in', mass, 'lb/in', 'lbs/in', 'lb per in'),
  ...near('lbf/in', say`one spelling for one unit`, 'lbf per in'),

  ...near('µs', plural, 'usec', 'µsec'),
  ...near('ms', plural, 'msec', 'msecs'),
  ...near('s', plural, 'sec', 'secs', 'second', 'seconds', 'S'),
  ...near('min', plural, 'mins', 'minute', 'minutes'),
  ...near('h', plural, 'hr', 'hrs', 'hour', 'hours', 'H'),

  ...near('°C', say`no blank after the degree`, '° C', 'deg C', 'deg. C'),
  ...near('°C', say`the degree belongs to the unit`, 'C'),
  ...near('°F', say`no blank after the degree`, '° F', 'deg F', 'deg. F'),
  ...near('°F', say`the degree belongs to the unit`, 'F'),
  ...near('K', say`a kelvin has no degree`, '°K', 'degK', '° K', 'deg K', 'kelvin'),

  ...near('mm³', say`one spelling for one unit`, 'mm^3', 'cmm', 'cu mm'),
  ...near('mL', say`the same volume under its usual name`, 'cc', 'cm³', 'cm3', 'ccm'),
  ...near(
    'mm³/stroke',
    say`one spelling for one unit`,
    'mm³/str',
    'mm3/str',
    'mm³/st',
    'mm3/st',
    'mm³/strokes',
    'mm3/strokes',
    'mm³ per stroke',
    'mm3 per stroke',
    'mm^3/stroke',
  ),
  ...near(
    'mL/1000 strokes',
    say`the same volume under its usual name`,
    'cc/1000 strokes',
    'cm³/1000 strokes',
    'cm3/1000 strokes',
  ),
  ...near(
    'mL/1000 strokes',
    say`one spelling for one unit`,
    'mL/1000strokes',
    'ml/1000strokes',
    'mL/1000 st',
    'ml/1000 st',
    'cc/1000 st',
    'mL per 1000 strokes',
    'ml per 1000 strokes',
    'cc per 1000 strokes',
  ),
  ...near('mL/min', say`the same volume under its usual name`, 'cc/min', 'cm³/min', 'cm3/min'),
  ...near('mL/min', say`one spelling for one unit`, 'mL per min', 'ml per min'),

  ...near('rpm', say`one spelling for one unit`, 'rpms', 'revs/min', 'rev per min', 'turns/min', '1/min'),
  ...near(
    'strokes/min',
    say`one spelling for one unit`,
    'stroke/min',
    'strokes per min',
    'strokes per minute',
    'strokes/minute',
    'spm',
  ),
  ...near('Hz', say`one spelling for one unit`, 'hertz', 'cps'),
  ...near('g', say`a large G is the unit of a magnetic field`, 'G'),
  ...near('mm/s', say`one spelling for one unit`, 'mm/sec', 'mm per s'),
  ...near('m/s²', say`one spelling for one unit`, 'm/s^2'),
  ...near('°', say`one spelling for one unit`, 'degs', 'degree', 'degrees'),
  ...near(
    'cam °',
    say`one spelling for one unit`,
    'cam°',
    'cam degree',
    'cam degrees',
    'cam degs',
    'cam-deg',
    '°cam',
    'deg cam',
    'degrees cam',
  ),

  ...near('bar per mm', say`one spelling for one unit`, 'bar per millimetre', 'bars per mm'),
  ...near('bar per in', say`one spelling for one unit`, 'bar per inch', 'bar/inch'),
  ...near('bar per turn', say`one spelling for one unit`, 'bars per turn', 'bar per rev', 'bar/rev', 'bar per turns'),
  ...near('psi per turn', say`one spelling for one unit`, 'psi per rev', 'psi/rev'),

  ...near('mm²/s', say`one spelling for one unit`, 'mm^2/s'),
  ...near('cSt', say`one spelling for one unit`, 'centistokes', 'centistoke'),
  ...near('g·mm', product, 'g-mm'),
  ...near('g·mm', dot, 'g mm', 'g*mm'),
  ...near('oz·in', dot, 'oz in', 'ozin', 'oz*in'),

  ...near('V', plural, 'volt', 'volts', 'v'),
  ...near('A', plural, 'amp', 'amps', 'ampere', 'amperes'),
  ...near('Ω', plural, 'ohms'),
  ...near('kΩ', plural, 'kohms'),
  ...near('%', say`one spelling for one unit`, 'percent', 'per cent', 'pct'),
];

/** Units that are not in the language, with what to write in their place. */
export const refusedUnits: readonly { readonly written: string; readonly why: Said }[] = [
  ...['mil', 'mils'].map((written) => ({
    written,
    why: say`"${written}" is an angle in one shop and a thousandth of an inch in the next: write thou for 0.001 in, or ° for an angle.`,
  })),
  { written: 'Pa', why: say`"Pa" is not used here: write kPa, mbar or bar.` },
  { written: 'hPa', why: say`"hPa" is not used here: write mbar, which is the same.` },
  { written: 'mmHg', why: say`"mmHg" is not used here: write mbar, kPa or inHg.` },
  { written: 'atm', why: say`"atm" is the air around or a metric one in older papers: write bar or kgf/cm².` },
  { written: 'cm', why: say`"cm" is not used here: write mm.` },
  { written: 'L/min', why: say`"L/min" is not used here: write mL/min.` },
  { written: 'l/min', why: say`"l/min" is not used here: write mL/min.` },
];
