import type { Bundle } from '../bundle.ts';

export const quantities: Bundle = {
  '"{0}" is written {1}: {2}.': '"{0}" wird {1} geschrieben: {2}.',
  'a unit takes no other ending': 'eine Maßeinheit hat keine andere Endung',
  'the hyphen reads as a minus or as nothing': 'der Bindestrich liest sich als Minus oder als nichts',
  'a blank or a star between two units reads as two words':
    'ein Leerzeichen oder ein Stern zwischen zwei Einheiten liest sich als zwei Wörter',
  'the force comes first, so that the unit is not taken for work':
    'die Kraft steht vorn, damit die Einheit nicht für Arbeit gehalten wird',
  'the force of a pound or a kilogram carries an f': 'die Kraft eines Pfunds oder Kilogramms trägt ein f',
  'gauge or absolute is said in the title': 'ob Über- oder Absolutdruck, steht in der Benennung',
  'one spelling for one unit': 'eine Schreibweise je Einheit',
  'one word for one unit': 'ein Wort je Einheit',
  'the mark is read as the end of a text or as seconds':
    'das Zeichen liest sich als Ende eines Textes oder als Sekunden',
  'no blank after the degree': 'kein Leerzeichen nach dem Gradzeichen',
  'the degree belongs to the unit': 'das Gradzeichen gehört zur Einheit',
  'a kelvin has no degree': 'ein Kelvin hat kein Gradzeichen',
  'the same volume under its usual name': 'dasselbe Volumen unter seinem üblichen Namen',
  '"{0}" is an angle in one shop and a thousandth of an inch in the next: write thou for 0.001 in, or ° for an angle.':
    '"{0}" ist in der einen Werkstatt ein Winkel und in der nächsten ein tausendstel Zoll: thou für 0.001 in schreiben, oder ° für einen Winkel.',
  '"Pa" is not used here: write kPa, mbar or bar.': '"Pa" wird hier nicht verwendet: kPa, mbar oder bar schreiben.',
  '"hPa" is not used here: write mbar, which is the same.':
    '"hPa" wird hier nicht verwendet: mbar schreiben, das ist dasselbe.',
  '"mmHg" is not used here: write mbar, kPa or inHg.':
    '"mmHg" wird hier nicht verwendet: mbar, kPa oder inHg schreiben.',
  '"atm" is the air around or a metric one in older papers: write bar or kgf/cm².':
    '"atm" ist die Umgebungsluft, in älteren Unterlagen auch die technische Atmosphäre: bar oder kgf/cm² schreiben.',
  '"cm" is not used here: write mm.': '"cm" wird hier nicht verwendet: mm schreiben.',
  '"L/min" is not used here: write mL/min.': '"L/min" wird hier nicht verwendet: mL/min schreiben.',
  '"l/min" is not used here: write mL/min.': '"l/min" wird hier nicht verwendet: mL/min schreiben.',
  'the parentheses hold the limit in a second unit: write a value there, not {0}.':
    'in der Klammer steht der Grenzwert in einer zweiten Einheit: dort einen Wert schreiben, nicht {0}.',
  '{0} and {1} are two kinds of limit: write both the same way.':
    '{0} und {1} sind zwei Arten von Grenzwert: beide gleich schreiben.',
  'a single figure beside a band is its middle, but the middle of {0} is {1}, not {2}.':
    'ein einzelner Wert neben einem Bereich ist dessen Mitte, aber die Mitte von {0} ist {1}, nicht {2}.',
  'the tolerances {0}{1} and {2}{3} do not agree{4}.': 'die Toleranzen {0}{1} und {2}{3} passen nicht zusammen{4}.',
  '{0} is a {1} and {2} a {3}.': '{0} ist {1}, und {2} ist {3}.',
  '{0} and {1} do not agree ({2} is {3}).': '{0} und {1} passen nicht zusammen ({2} sind {3}).',
  ' ({0} is {1})': ' ({0} sind {1})',
  'nothing is colder than −273.15 °C': 'nichts ist kälter als −273,15 °C',
  'no pressure is lower than a full vacuum, about −1.01 bar':
    'kein Druck ist niedriger als volles Vakuum, etwa −1,01 bar',
  'a {0} cannot be below zero': 'diese Größe ({0}) kann nicht unter null sein',
  'after “then” comes how far the joint is turned on': 'nach „then“ kommt, wie weit die Verbindung weitergedreht wird',
  'that is zero, which is no figure to work to': 'das ist null und kein Wert, nach dem man arbeitet',
  'a length cannot be below zero': 'eine Länge kann nicht unter null sein',
  '"{0}" can be read as {1}, or as {2}: thousands have no separator and no space. Write {3}, or put what belongs between the two.':
    '"{0}" kann als {1} gelesen werden oder als {2}: Tausender haben weder Trennzeichen noch Leerzeichen. {3} schreiben, oder einsetzen, was dazwischengehört.',
  ' and ': ' und ',
  '"{0}" is no number: write digits with a point, such as 0.25.':
    '"{0}" ist keine Zahl: Ziffern mit einem Punkt schreiben, zum Beispiel 0.25.',
  '"{0}" is no number: write digits with one point, such as 0.25, and no commas.':
    '"{0}" ist keine Zahl: Ziffern mit einem einzigen Punkt schreiben, zum Beispiel 0.25, ohne Kommas.',
  '"{0}" can be read as {1}: write the one that is meant, without a comma.':
    '"{0}" kann als {1} gelesen werden: das Gemeinte ohne Komma schreiben.',
  ' or as ': ' oder als ',
  '"{0}" is larger than anything measured at a bench (1 000 000 000 000): check the digits or take a larger unit.':
    '"{0}" ist größer als alles, was in der Werkstatt gemessen wird (1 000 000 000 000): die Ziffern prüfen oder eine größere Einheit nehmen.',
  '"{0}" has more than {1} digits: write only those that the tool can show.':
    '"{0}" hat mehr als {1} Ziffern: nur die schreiben, die das Werkzeug zeigen kann.',
  'Write the number out: {0}.': 'Die Zahl ausschreiben: {0}.',
  'The decimal separator is a point, and thousands have no separator: write {0}.':
    'Das Dezimalzeichen ist ein Punkt, und Tausender haben kein Trennzeichen: {0} schreiben.',
  '"{0}" is no quantity: write a number and a unit, such as 250 bar.':
    '"{0}" ist keine Größe: eine Zahl und eine Einheit schreiben, zum Beispiel 250 bar.',
  'nm is a nanometre': 'nm ist ein Nanometer',
  'mPa is a millipascal': 'mPa ist ein Millipascal',
  'Mbar is a million bar': 'Mbar ist eine Million bar',
  'Mm is a megameter': 'Mm ist ein Megameter',
  'MS is a megasiemens': 'MS ist ein Megasiemens',
  'mS is a millisiemens': 'mS ist ein Millisiemens',
  'Ms is a megasecond': 'Ms ist eine Megasekunde',
  '"{0}" should be {1}: {2}.': '"{0}" müsste {1} heißen: {2}.',
  'upper and lower case make different units': 'Groß- und Kleinschreibung ergibt verschiedene Einheiten',
  '"{0}" is no unit of this language.': '"{0}" ist keine Einheit dieser Sprache.',
  'a large G is the unit of a magnetic field': 'das große G ist die Einheit eines Magnetfelds',
  'no vacuum is deeper than a full one, about 101 kPa': 'kein Vakuum ist tiefer als ein volles, etwa 101 kPa',
  '"{0}" can be read as {1}: upper and lower case make different units.':
    '"{0}" kann als {1} gelesen werden: Groß- und Kleinschreibung ergibt verschiedene Einheiten.',
};
