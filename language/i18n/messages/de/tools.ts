import type { Bundle } from '../bundle.ts';

export const tools: Bundle = {
  'the {0} does not get the torque that the wrench shows': '{0} bekommt nicht das Drehmoment, das der Schlüssel zeigt',
  'The adapter puts the {0} at the grip of {1}, or behind it.':
    'Der Adapter bringt {0} an den Griff von {1} oder dahinter.',
  'there is no lever left to tighten it with, and no setting for the wrench.':
    'es bleibt kein Hebel zum Anziehen und keine Einstellung für den Schlüssel.',
  'Turn the adapter the other way, or use a shorter one.':
    'Den Adapter andersherum drehen, oder einen kürzeren nehmen.',
  'The adapter makes {0} {1} longer, but the shop does not say how long the wrench is.':
    'Der Adapter macht {0} um {1} länger, aber die Werkstatt sagt nicht, wie lang der Schlüssel ist.',
  '{0}, and nobody can work out what to set.': '{0}, und niemand kann ausrechnen, was einzustellen ist.',
  'Write “length” at {0} in the shop, measured from the mark on its grip to the square drive. Or set the adapter “at 90°”, where it changes nothing.':
    'In der Werkstatt bei {0} „length“ schreiben, gemessen von der Marke am Griff bis zum Vierkant. Oder den Adapter „at 90°“ setzen, wo er nichts ändert.',
  '“{0}” extends beyond the square drive.': '„{0}“ ragt über den Vierkant hinaus.',
  'unless it is turned to 90°, {0}.': 'außer bei 90° gilt: {0}.',
  'Write its length after the wrench, such as “and adapter 50 mm at 0°”, so that the sheet gives the setting.':
    'Die Länge hinter dem Schlüssel schreiben, zum Beispiel „and adapter 50 mm at 0°“, damit das Blatt die Einstellung angibt.',
  '{0} {1}, which is off the scale of {2}.': '{0} {1}: außerhalb der Skala von {2}.',
  'nobody can see what it really is, and a tool that is driven past its scale breaks, or reads wrong on the next job.':
    'niemand sieht, was es wirklich ist, und ein Werkzeug, das über seine Skala getrieben wird, bricht oder zeigt beim nächsten Auftrag falsch an.',
  'Use a {0} that reaches it, or check the figure.': 'Eines verwenden, das reicht ({0}), oder den Wert prüfen.',
  '{0} is graduated in steps of {1}, but {2} is only {3} wide.':
    '{0} ist in Schritten von {1} geteilt, aber {2} ist nur {3} weit.',
  '{0}, so nobody can see whether the reading is inside.': '{0}, also sieht niemand, ob der Messwert darin liegt.',
  'its last digit steps over the limit': 'die letzte Ziffer überspringt den Grenzwert',
  'the eye cannot read finer than half a mark': 'das Auge liest nicht feiner als einen halben Teilstrich',
  'Use a {0} with finer {1}.':
    'Eines mit {en1, select, digits {feineren Ziffern} other {feineren Teilstrichen}} verwenden ({0}).',
  digits: 'Ziffern',
  marks: 'Teilstriche',
  '{0} is {1}, and {2} is accurate to ±{3}{4}.': '{0} gilt {1}, und {2} ist auf ±{3} genau{4}.',
  ' with marks of {0}': ' mit Teilstrichen von {0}',
  'no reading on it can pass, and every unit would be held.':
    'kein Messwert damit kann bestehen, und jede Einheit würde gesperrt.',
  'Use a finer {0}, or write “acceptance simple” at the spec.':
    'Ein feineres verwenden ({0}), oder bei der Vorgabe „acceptance simple“ schreiben.',
  'the shop': 'in der Werkstatt',
  'the shop, fixed at {0} or loose': 'in der Werkstatt, fest hier ({0}) oder lose',
  'No {0} is named, and there is none in {1}.': 'Es ist kein Werkzeug genannt ({0}), und es gibt keines {1}.',
  'No {0} is named, and none in {1}{2} {3} {4}.': 'Es ist kein Werkzeug genannt ({0}), und keines {1}{2} {3}: {4}.',
  '{0} {1} not reach it.': '{0} {en1, select, do {reichen} other {reicht}} nicht so weit.',
  does: 'ja',
  do: 'ja',
  'Add one to the shop with “{0}”, or name it in the step: “with "…"”.':
    'In der Werkstatt eines mit „{0}“ ergänzen, oder im Schritt nennen: „with "…"“.',
  'Its thread and class are declared here.': 'Gewinde und Festigkeitsklasse sind hier angegeben.',
  '{0} may stretch the {1} for good.': '{0} kann {1} bleibend strecken.',
  '{0} A stretched bolt holds less at every build.': '{0} Eine gestreckte Schraube hält bei jedem Zusammenbau weniger.',
  '{0} on {1} {2} pulls with {3} (nut factor {4}), which is {5} % of its proof load ({6} for class {7}).':
    '{0} an {2} ({1}) zieht mit {3} (Beiwert {4}), das sind {5} % der Prüfkraft ({6} für Klasse {7}).',
  'an oiled': 'geölt',
  'a dry': 'trocken',
  'Look up torque, thread and class again. The proof load is reached at {0}, which is not a torque to aim for.{1}':
    'Drehmoment, Gewinde und Klasse noch einmal nachschlagen. Die Prüfkraft ist bei {0} erreicht, und das ist kein Drehmoment, auf das man zielt.{1}',
  ' If the torque is meant for dry threads, do not oil them.':
    ' Gilt das Drehmoment für trockene Gewinde, dann nicht ölen.',
  'This rate is {0}, but shims of small nozzles change the pressure by 69 to 196 bar per mm.':
    'Diese Rate ist {0}, aber Einstellscheiben kleiner Düsen ändern den Druck um 69 bis 196 bar je mm.',
  'a shim worked out from it is far off, and the unit is opened again and again.':
    'eine danach berechnete Einstellscheibe liegt weit daneben, und die Einheit wird immer wieder geöffnet.',
  'Check the decimal point and the units (about 3 bar per 0.001 in is common), or fit the rate to your own readings.':
    'Dezimalpunkt und Maßeinheiten prüfen (üblich sind etwa 3 bar per 0.001 in), oder die Rate an eigene Messwerte anpassen.',
  '{0} {1} {2} up to {3}{4}': '{0} {1} {en2, select, go {reichen} other {reicht}} bis {3}{4}',
  stock: 'Vorrat',
  stocks: 'Vorräte',
  ', two stacked': ', zwei übereinander',
  'the step allows {0}': 'der Schritt erlaubt {0}',
  'The coils of the {0} bind above {1} of {2}, but {3}.':
    'Die Windungen von {0} liegen über {1} von {2} auf Block, aber {3}.',
  'when the spring is solid, the needle cannot lift, and the spring breaks.':
    'ist die Feder auf Block, kann die Nadel nicht abheben, und die Feder bricht.',
  'Write “never above {0}” in this step.': 'In diesem Schritt „never above {0}“ schreiben.',
  'Choose none above {0}': 'Keine über {0} auswählen',
  'The next size is worked out from the {0} that came out, but no step measures that one.':
    'Das nächste Maß wird aus dem ausgebauten Teil berechnet ({0}), aber kein Schritt misst es.',
  'without its size the bench hand guesses, and opens the unit three times.':
    'ohne sein Maß rät der Monteur und öffnet die Einheit dreimal.',
  'Write “measure {0} with” and a micrometer where it comes out.':
    'Wo es herauskommt, „measure {0} with“ und eine Messschraube schreiben.',
  'Measure {0} before the next is chosen': '{0} messen, bevor das nächste ausgewählt wird',
  'By its counts, stock {0} has nothing left that could be fitted.':
    'Nach seinen Stückzahlen hat der Vorrat {0} nichts mehr, was passt.',
  'the unit is opened, and lies open until somebody finds one.':
    'die Einheit wird geöffnet und liegt offen, bis jemand etwas Passendes findet.',
  'Refill the drawer and update the counts.': 'Die Schublade auffüllen und die Stückzahlen nachtragen.',
  'Stock {0} has only one size.': 'Der Vorrat {0} hat nur ein Maß.',
  'nothing can be chosen, and {0} stays where it is.': 'es gibt nichts auszuwählen, und {0} bleibt, wo es ist.',
  'Add the sizes that the shop has to the stock.': 'Die Maße, die die Werkstatt hat, beim Vorrat ergänzen.',
  'Stock {0} cannot bring a unit from {1}, which is still good in service{2}, to {3}.':
    'Der Vorrat {0} kann eine Einheit nicht von {1}, im Betrieb{2} noch gut, auf {3} bringen.',
  'from the thinnest {0} to the thickest{1}{2} the shims change it by only {3}.':
    'vom dünnsten Maß ({0}) zum dicksten{1}{2} ändern die Einstellscheiben es nur um {3}.',
  ', two stacked,': ', zwei übereinander,',
  ' up to {0}': ' bis {0}',
  'Widen the stock, renew the spring, or check the rate.':
    'Den Vorrat erweitern, die Feder ersetzen oder die Rate prüfen.',
  'the limit is only': 'der Grenzwert ist nur',
  ' wide': ' weit',
  'the set may spread by only': 'der Satz darf nur so weit auseinanderliegen:',
  'The stock has no {0} between {1} and {2}{3}. That step changes {4}{5} by {6}, but {7} {8}{9}.':
    'Der Vorrat hat kein Maß ({0}) zwischen {1} und {2}{3}. Dieser Sprung ändert {4}{5} um {6}, aber {7} {8}{9}.',
  ', nor two that add up to one': ', auch keine zwei, die zusammen passen',
  ' of {0}': ' von {0}',
  'some units cannot be brought into the limit, whatever is fitted.':
    'manche Einheiten lassen sich nicht in den Grenzwert bringen, was auch eingebaut wird.',
  'Stock finer steps{0}.': 'Feinere Stufen vorhalten{0}.',
  ', {0} at most': ', höchstens {0}',
  '{0} cannot {1} {2}.': '{0} kann das nicht {1}: {2}.',
  'a size': 'ein Maß',
  'a {0}': '{0}',
  'the joint would be tightened by feel': 'die Verbindung würde nach Gefühl angezogen',
  'the figure on the sheet would be a guess': 'der Wert auf dem Blatt wäre geraten',
  'Name a {0}.': 'Ein passendes Werkzeug nennen: {0}.',
  '{0} is fixed at {1}, but this step is done at {2}.':
    '{0} ist fest eingebaut ({1}), dieser Schritt wird aber anderswo gemacht ({2}).',
  'the tool is not there to be read.': 'das Werkzeug ist nicht da, um es abzulesen.',
  'Do the step where the tool is, or delete its station in the shop if it can be moved.':
    'Den Schritt dort machen, wo das Werkzeug ist, oder in der Werkstatt seinen Arbeitsplatz löschen, wenn es beweglich ist.',
  'Shop {0} has no {1}{2}.': 'In der Werkstatt {0} fehlt: {1}{2}.',
  'the job could name none, and the bench hand would use whatever is at hand.':
    'der Auftrag könnte keines nennen, und der Monteur nähme, was gerade da ist.',
  'Name a kind that the shop has{0}, or add one to the shop.':
    'Eine Art nennen, die die Werkstatt hat{0}, oder eine in der Werkstatt ergänzen.',
  ', which is {0} on the wrench with this adapter': ', das sind {0} am Schlüssel mit diesem Adapter',
  '{0} does not {1} {2}{3}.': '{0} kann das nicht {1}: {2}{3}.',
  'beyond its scale it shows nothing, and if it is forced there it reads wrong on the next job.':
    'jenseits der Skala zeigt es nichts, und wird es dorthin gezwungen, zeigt es beim nächsten Auftrag falsch an.',
  'Use a {0} that covers {1}.': 'Eines verwenden, das {1} abdeckt ({0}).',
  'No {0} is named to {1} this, but the shop has {2}.':
    'Es ist kein Werkzeug dafür genannt ({0}: {1}), aber die Werkstatt hat {2}.',
  'two people use two different ones, and the record does not say which.':
    'zwei Leute nehmen zwei verschiedene, und die Aufzeichnung sagt nicht, welches.',
  'Write “with {0}”, or the kind of tool.': '„with {0}“ schreiben, oder die Art des Werkzeugs.',
  'Use a smaller wrench.': 'Einen kleineren Schlüssel verwenden.',
  'Use a gauge with a longer scale.': 'Ein Manometer mit längerer Skala verwenden.',
  ' ({0} on the wrench with this adapter)': ' ({0} am Schlüssel mit diesem Adapter)',
  '{0}{1} is below {2} % of the maximum of {3}.': '{0}{1} liegt unter {2} % des Höchstwerts von {3}.',
  'that low, a torque wrench is not held to its stated error (ISO 6789), and the click is hardly felt.':
    'so niedrig muss ein Drehmomentschlüssel seine angegebene Abweichung nicht einhalten (ISO 6789), und das Auslösen ist kaum zu spüren.',
  '{0} is above {1} % of the scale of {2}.': '{0} liegt über {1} % der Skala von {2}.',
  'a dial gauge that is {0} that high does not stay accurate (EN 837-2).':
    'ein Zeigermanometer, so hoch {0}, bleibt nicht genau (EN 837-2).',
  pulsed: 'pulsierend belastet',
  used: 'benutzt',
  'Use a finer {0}.': 'Ein feineres verwenden ({0}).',
  '{0} is accurate to ±{1}, and {2} leaves less room than that.':
    '{0} ist auf ±{1} genau, und {2} lässt weniger Spielraum.',
  'however it is set, the joint may end up outside its torque.':
    'wie auch eingestellt, kann die Verbindung außerhalb ihres Drehmoments landen.',
  '{0} is accurate to ±{1}, but {2} is only {3} wide.': '{0} ist auf ±{1} genau, aber {2} ist nur {3} weit.',
  'half the width should be at least four times the error, or parts near either end pass or fail by chance.':
    'die halbe Weite soll mindestens das Vierfache der Abweichung sein, sonst bestehen Teile nahe den Enden oder fallen durch, wie es der Zufall will.',
  'a bad part reads good as often as not.': 'ein schlechtes Teil zeigt so oft gut wie schlecht an.',
  'A torque wrench': 'Ein Drehmomentschlüssel',
  '{0} is used to break the {1} loose.': '{0} wird zum Losbrechen benutzt ({1}).',
  'nobody knows what a seized joint takes, and a wrench that was forced once is wrong for every torque after that.':
    'niemand weiß, was eine festsitzende Verbindung braucht, und ein einmal überlasteter Schlüssel stimmt danach bei keinem Drehmoment mehr.',
  'Use a socket and breaker bar, and name them in quotes.':
    'Steckschlüssel und Knebel nehmen, und sie in Anführungszeichen nennen.',
  'The {0} is turned by {1} after its torque, and nothing is named that shows an angle.':
    '{0}: nach dem Drehmoment wird um {1} weitergedreht, und nichts ist genannt, was einen Winkel zeigt.',
  'by eye it is off by ten degrees or more, and there is no torque at the end that would tell.':
    'nach Augenmaß sind es zehn Grad oder mehr daneben, und am Ende gibt es kein Drehmoment, an dem es auffiele.',
  'Name the angle gauge: in the shop as a tool with a range in °, or here in quotes, with "angle disc".':
    'Den Winkelmesser nennen: in der Werkstatt als Werkzeug mit einem Bereich in °, oder hier in Anführungszeichen, with "angle disc".',
  '{0} was calibrated on {1} and is due on {2}, {3} years later.':
    '{0} wurde am {1} kalibriert und ist am {2} fällig, {3} Jahre später.',
  'no tool stays true for so long, and every reading on it would be certified.':
    'so lange bleibt kein Werkzeug genau, und jeder Messwert damit würde bescheinigt.',
  'Correct one of the two dates.': 'Eines der beiden Daten berichtigen.',
  '{0} was due on {1}, before this procedure was approved on {2}.':
    '{0} war am {1} fällig, bevor diese Anweisung am {2} freigegeben wurde.',
  'nothing that is read on it can be certified.': 'nichts, was damit abgelesen wird, lässt sich bescheinigen.',
  'Write the dates of its present calibration in {0}, or name another tool.':
    'In {0} die Daten der jetzigen Kalibrierung schreiben, oder ein anderes Werkzeug nennen.',
  'The tool is declared here.': 'Das Werkzeug ist hier angegeben.',
  '{0} is held {1} {2} {3}, and {4} is accurate to ±{5}.':
    '{0} wird mit {1} Abstand gehalten ({2} {3}), und {4} ist auf ±{5} genau.',
  'the pressure that is held may really be at the opening, and a good seat is taken for a leaking one.':
    'der Haltedruck kann in Wirklichkeit schon der Öffnungsdruck sein, und ein guter Sitz wird für undicht gehalten.',
  'Hold it further off, or read it on a finer gauge.':
    'Mit mehr Abstand halten, oder auf einem feineren Manometer ablesen.',
  'A pass of {0} is below the scale of {1}.': 'Ein Durchgang mit {0} liegt unter der Skala von {1}.',
  'the wrench never clicks there, and the first bolt takes all that the others should share.':
    'dort löst der Schlüssel nie aus, und die erste Schraube bekommt allein, was sich alle teilen sollten.',
  'Name a smaller wrench for the first passes as well, begin higher, or do them “by hand” in words.':
    'Für die ersten Durchgänge auch einen kleineren Schlüssel nennen, höher beginnen, oder in Worten „by hand“ schreiben.',
};
