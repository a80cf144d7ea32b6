import type { Bundle } from '../bundle.ts';

export const calculator: Bundle = {
  'low end of the limit': 'unteres Ende des Grenzwerts',
  'high end of the limit': 'oberes Ende des Grenzwerts',
  'Give low=, high= or both: without a limit nothing is judged.':
    'low=, high= oder beide angeben: ohne Grenzwert wird nichts beurteilt.',
  'The low end is over the high one. Look at what was typed.':
    'Das untere Ende liegt über dem oberen. Die Eingabe prüfen.',
  'What a gauge may be off, by its class': 'Wie weit ein Manometer abweichen darf, nach seiner Klasse',
  'error = class / 100 · (top of the scale − bottom)': 'error = class / 100 · (Ende der Skala − Anfang)',
  'EN 837-1: the class is percent of span, wherever on the dial it is read':
    'EN 837-1: die Klasse ist ein Prozentsatz der Messspanne, gleich wo auf der Skala abgelesen wird',
  'accuracy class on the dial': 'Genauigkeitsklasse auf dem Zifferblatt',
  'bottom of the scale': 'Anfang der Skala',
  'top of the scale': 'Ende der Skala',
  'The top of the scale must be over its bottom. Look at low and high.':
    'Das Ende der Skala muss über ihrem Anfang liegen. low und high prüfen.',
  'error ±{0}': 'Fehlergrenze ±{0}',
  'What a gauge may read, so that the true value is inside the limit':
    'Was ein Manometer anzeigen darf, damit der wahre Wert im Grenzwert liegt',
  'lowest reading = low + r · error, up to a mark':
    'kleinster Messwert = low + r · error, aufgerundet auf einen Teilstrich',
  'highest reading = high − r · error, down to a mark':
    'größter Messwert = high − r · error, abgerundet auf einen Teilstrich',
  'Guard band of ISO 14253-1 (r = 0.83, from memory); r = 0 is simple acceptance, r = 1 guards in full':
    'Schutzabstand nach ISO 14253-1 (r = 0.83, aus dem Gedächtnis); r = 0 ist einfache Annahme, r = 1 voller Schutzabstand',
  'what the gauge may be off (gauge-error works it out)':
    'wie weit das Manometer abweichen darf (gauge-error rechnet es aus)',
  'from one mark of the dial to the next that the eye can read':
    'von einem mit dem Auge ablesbaren Teilstrich zum nächsten',
  '0, 0.83 or 1; 0 where none is given': '0, 0.83 oder 1; ohne Angabe 0',
  'r is 0, 0.83 or 1, not {0}: these are the rules that a sheet may name.':
    'r ist 0, 0.83 oder 1, nicht {0}: das sind die Regeln, die ein Blatt nennen kann.',
  'A mark must be wider than nothing.': 'Ein Teilstrichabstand muss größer als null sein.',
  'kept away from each end: {0} · {1}': 'Abstand von jedem Ende: {0} · {1}',
  'No mark of this gauge is safe to pass: take a finer gauge, or a wider limit.':
    'Kein Teilstrich dieses Manometers besteht sicher: ein feineres Manometer nehmen oder einen weiteren Grenzwert.',
  'lowest reading that passes {0}': 'kleinster Messwert, der besteht {0}',
  'highest reading that passes {0}': 'größter Messwert, der besteht {0}',
  'How likely a unit just outside its limit is read as good':
    'Wie wahrscheinlich eine Einheit knapp außerhalb des Grenzwerts als gut abgelesen wird',
  'probability = Φ(−2r), one side, error normal, uncertainty two standard deviations':
    'Wahrscheinlichkeit = Φ(−2r), einseitig, Fehler normalverteilt, Unsicherheit zwei Standardabweichungen',
  'Normal distribution; a guard band of r times the expanded uncertainty':
    'Normalverteilung; ein Schutzabstand vom r-Fachen der erweiterten Unsicherheit',
  'share of the uncertainty that is kept away from the limit':
    'Anteil der Unsicherheit, der als Abstand zum Grenzwert bleibt',
  'probability {0} %': 'Wahrscheinlichkeit {0} %',
  'How likely the true value is inside the limit, of a reading':
    'Wie wahrscheinlich der wahre Wert zu einem Messwert im Grenzwert liegt',
  'JCGM 106:2012, 7 (from memory): error normal, nothing known of the unit before':
    'JCGM 106:2012, 7 (aus dem Gedächtnis): Fehler normalverteilt, über die Einheit vorher nichts bekannt',
  'what the gauge showed': 'was das Manometer angezeigt hat',
  'standard uncertainty u (half of what is given for 95 %)':
    'Standardunsicherheit u (die Hälfte der für 95 % angegebenen)',
  'The uncertainty must be over nothing.': 'Die Unsicherheit muss größer als null sein.',
  'diameter of the needle in its guide': 'Durchmesser der Nadel in ihrer Führung',
  'diameter of the seat that it closes': 'Durchmesser des Sitzes, den sie schließt',
  'force of the spring on the closed needle': 'Kraft der Feder auf die geschlossene Nadel',
  'lifting area = π/4 · ({0}² − {1}²) = {2} mm²': 'Hubfläche = π/4 · ({0}² − {1}²) = {2} mm²',
  'Pressure at which a needle lifts (first opening only)': 'Druck, bei dem eine Nadel abhebt (nur erstes Öffnen)',
  'Balance of forces on the needle': 'Kräftegleichgewicht an der Nadel',
  'The preload is too large to reckon with.': 'Die Vorspannung ist zum Rechnen zu groß.',
  'opening = {0} / lifting area': 'opening = {0} / Hubfläche',
  'opening {0}': 'Öffnungsdruck {0}',
  'Pressure at which a needle falls shut': 'Druck, bei dem eine Nadel schließt',
  'Balance of forces on the needle; all of it is under pressure once it has lifted':
    'Kräftegleichgewicht an der Nadel; ist sie abgehoben, steht sie ganz unter Druck',
  'closing {0}': 'Schließdruck {0}',
  'Seat over guide, from where a needle opens and closes':
    'Sitz zu Führung, aus Öffnungs- und Schließdruck einer Nadel',
  'pressure at which it opens': 'Druck, bei dem sie öffnet',
  'pressure at which it closes': 'Druck, bei dem sie schließt',
  'A needle closes at a pressure over nothing and under that at which it opens. Read both again.':
    'Eine Nadel schließt bei einem Druck über null und unter dem Öffnungsdruck. Beide noch einmal ablesen.',
  'seat / guide {0}': 'Sitz / Führung {0}',
  'Stiffness of a coil spring of round wire': 'Steifigkeit einer Schraubenfeder aus Runddraht',
  'Shigley, Mechanical Engineering Design, helical compression springs (from memory)':
    'Shigley, Mechanical Engineering Design, Schraubendruckfedern (aus dem Gedächtnis)',
  'shear modulus G of the wire': 'Schubmodul G des Drahts',
  'diameter d of the wire': 'Durchmesser d des Drahts',
  'mean diameter D of the coil': 'mittlerer Windungsdurchmesser D',
  'coils n that work, without the closed ends': 'federnde Windungen n, ohne die angelegten Enden',
  'All four must be over nothing, and the wire thinner than the coil is wide. Measure again.':
    'Alle vier müssen größer als null sein, und der Draht dünner als die Windung weit ist. Noch einmal messen.',
  'stiffness {0}': 'Steifigkeit {0}',
  'What a shim brings, from its spring and needle (first opening only)':
    'Was eine Einstellscheibe bringt, aus Feder und Nadel (nur erstes Öffnen)',
  'Balance of forces on the needle; published shop rates run from 69 to 196 bar/mm':
    'Kräftegleichgewicht an der Nadel; veröffentlichte Werkstattwerte liegen zwischen 69 und 196 bar/mm',
  'stiffness of the spring': 'Steifigkeit der Feder',
  'The spring must have a stiffness over nothing.': 'Die Feder muss eine Steifigkeit über null haben.',
  'rate = {0} / lifting area': 'rate = {0} / Hubfläche',
  'rate {0}': 'Änderung {0}',
  'thicknesses in the drawer': 'Dicken im Vorrat',
  'or the thinnest,': 'oder die dünnste,',
  'the thickest,': 'die dickste',
  'and the step': 'und die Stufe',
  'Say what is in the drawer, in one way: shims="1.00 mm, 1.05 mm", or from=, to= and by=.':
    'Den Vorrat auf eine Weise angeben: shims="1.00 mm, 1.05 mm", oder from=, to= und by=.',
  'The drawer goes from a thickness up to a thicker one, and has at most 10 000 sizes. Look at from, to and by.':
    'Der Vorrat reicht von einer Dicke zu einer größeren und hat höchstens 10 000 Maße. from, to und by prüfen.',
  'The rate of a shim is in pressure per length, such as 96 bar per mm.':
    'Die Änderung je Einstellscheibe ist ein Druck je Länge, zum Beispiel 96 bar per mm.',
  'The error of the rate has the unit of the rate, such as 4 bar per mm.':
    'Der Fehler der Änderung hat deren Einheit, zum Beispiel 4 bar per mm.',
  'The error of the rate is as large as the rate: it says nothing. Fit the rate to more readings.':
    'Der Fehler der Änderung ist so groß wie sie selbst: sie sagt nichts aus. Aus mehr Messwerten bestimmen.',
  'A shim of {0} is not of a drawer of {1} to {2}. Look at the decimal mark.':
    'Eine Einstellscheibe von {0} gehört nicht in einen Vorrat von {1} bis {2}. Das Dezimalzeichen prüfen.',
  'fit {0} (now {1}): expect {2}': '{0} einbauen (jetzt {1}): erwartet {2}',
  '{0}, {1} to {2} (95 %)': '{0}, {1} bis {2} (95 %)',
  '{0} {1}, {2}, is off by a power of ten beside the others. Is it {3}?':
    '{0} {1}, {2}, weicht um eine Zehnerpotenz von den anderen ab. Ist {3} gemeint?',
  'The low end of the window is over the high one. Look at what was typed.':
    'Das untere Ende des Toleranzfelds liegt über dem oberen. Die Eingabe prüfen.',
  'lands in the window: {0} %': 'landet im Toleranzfeld: {0} %',
  'There is no shim in the drawer that may be fitted.':
    'Im Vorrat ist keine Einstellscheibe, die eingebaut werden darf.',
  'The spring loses more by settling than the window is wide: no reading allows for it.':
    'Die Feder verliert durch Setzen mehr, als das Toleranzfeld breit ist: kein Messwert gleicht das aus.',
  'By these figures every shim brings less than nothing, or more than can be written out. Look at the reading, the shim that is in, and the rate.':
    'Nach diesen Werten ergibt jede Einstellscheibe weniger als null oder mehr, als sich schreiben lässt. Messwert, eingebaute Einstellscheibe und Änderung prüfen.',
  'Nothing in the drawer that may be fitted is thick enough. The most it can do: {0}.':
    'Nichts, was eingebaut werden darf, ist dick genug. Das Äußerste: {0}.',
  'Nothing in the drawer is thick enough. The most it can do: {0}.':
    'Nichts im Vorrat ist dick genug. Das Äußerste: {0}.',
  'Nothing in the drawer is thin enough. The least it can do: {0}.':
    'Nichts im Vorrat ist dünn genug. Das Äußerste: {0}.',
  'The drawer steps over the window:': 'Die Stufen im Vorrat überspringen das Toleranzfeld:',
  'Grind a shim between the two, or put finer ones into the drawer.':
    'Eine Einstellscheibe dazwischen schleifen, oder feinere in den Vorrat legen.',
  'The shim that most surely brings a reading into its window':
    'Die Einstellscheibe, die einen Messwert am sichersten ins Toleranzfeld bringt',
  'expected = reading + rate · (shim − shim now in), from low + settling to high':
    'erwartet = reading + rate · (Einstellscheibe − now), von low + settling bis high',
  'doubt = √((shim − shim now in)² · rate error² + 2 · scatter²)':
    'Unsicherheit = √((Einstellscheibe − now)² · rate-error² + 2 · scatter²)',
  'the nearest to the aim of those that land with 95 %; else the surest':
    'die dem Zielwert nächste von denen, die zu 95 % treffen; sonst die sicherste',
  'Straight line; a second opening and its rate are given or fitted, never taken from the needle':
    'Gerade; ein zweites Öffnen und seine Änderung werden angegeben oder aus Messwerten bestimmt, nie aus der Nadel',
  'what the unit reads now': 'was die Einheit jetzt anzeigt',
  'shim that is in': 'eingebaute Einstellscheibe',
  'low end of the window': 'unteres Ende des Toleranzfelds',
  'high end of the window': 'oberes Ende des Toleranzfelds',
  'where it should land; the surest place where none is given':
    'wo er landen soll; ohne Angabe an der sichersten Stelle',
  'what a shim brings': 'was eine Einstellscheibe bringt',
  'standard error of the rate (fit-rate works it out)': 'Standardfehler der Änderung (fit-rate rechnet ihn aus)',
  'standard deviation of one reading of the same build': 'Standardabweichung eines Messwerts bei gleichem Zusammenbau',
  'what a new spring will lose by settling: it must read so much more':
    'was eine neue Feder durch Setzen verliert: um so viel mehr muss sie anzeigen',
  'shims that may lie on each other: 1 or 2': 'Einstellscheiben, die aufeinanderliegen dürfen: 1 oder 2',
  'what they may never pass, all together (where the spring binds)':
    'was sie zusammen nie überschreiten dürfen (wo die Feder auf Block geht)',
  'The aim, {0}, is outside the window: what lands on it does not pass.':
    'Der Zielwert {0} liegt außerhalb des Toleranzfelds: was dort landet, besteht nicht.',
  'One shim or two lie on each other: together is 1 or 2.':
    'Eine oder zwei Einstellscheiben liegen aufeinander: together ist 1 oder 2.',
  ', never above {0}': ', nie über {0}',
  '{0} sizes in the drawer{1}, rate {2}': '{0} Maße im Vorrat{1}, Änderung {2}',
  'How far to turn an adjusting screw': 'Wie weit eine Einstellschraube zu drehen ist',
  'Straight line': 'Gerade',
  'what it should read': 'was sie anzeigen soll',
  'how much one turn in adds': 'was eine Umdrehung hinein bringt',
  'The rate of a screw is in pressure per turn, such as 25 bar per turn.':
    'Die Änderung einer Schraube ist ein Druck je Umdrehung, zum Beispiel 25 bar per turn.',
  'That would be {0} turns: no screw has so many. Look at the figures and their units.':
    'Das wären {0} Umdrehungen: so viele hat keine Schraube. Die Werte und ihre Einheiten prüfen.',
  'it is where it should be': 'steht, wo sie stehen soll',
  'What a shim brings, fitted from readings of the shop':
    'Was eine Einstellscheibe bringt, aus Messwerten der Werkstatt',
  'pressure = a + rate · shim, by least squares': 'Druck = a + rate · Einstellscheibe, kleinste Quadrate',
  'scatter = √(about the line² + (mark / √12)² + (rate · last digit of the shim / √12)²)':
    'Streuung = √(um die Gerade² + (mark / √12)² + (rate · letzte Stelle der Einstellscheibe / √12)²)',
  'doubt of the rate: its standard error; of a new reading: Student’s t':
    'Unsicherheit der Änderung: ihr Standardfehler; eines neuen Messwerts: Student-t',
  'Least squares by ml-regression-multivariate-linear, held against NIST StRD Norris and GUM H.3; marks and digits: GUM 4.3.7':
    'Kleinste Quadrate mit ml-regression-multivariate-linear, geprüft an NIST StRD Norris und GUM H.3; Teilstriche und Stellen: GUM 4.3.7',
  'thicknesses that were in': 'Dicken, die eingebaut waren',
  'what each one read, in the same order': 'was jede angezeigt hat, in derselben Reihenfolge',
  'from one mark of the gauge to the next; the last digit written where none is given':
    'von einem Teilstrich des Manometers zum nächsten; ohne Angabe die letzte geschriebene Stelle',
  '{0} shims and {1} pressures: give one pressure for each shim.':
    '{0} Einstellscheiben und {1} Drücke: zu jeder Einstellscheibe einen Druck angeben.',
  'A line needs at least three readings, with different shims.':
    'Eine Gerade braucht mindestens drei Messwerte mit verschiedenen Einstellscheiben.',
  'A thicker shim brought no more pressure: something else was changed between these readings.':
    'Eine dickere Einstellscheibe brachte nicht mehr Druck: zwischen diesen Messwerten wurde etwas anderes geändert.',
  '{0} readings, scatter {1} (one standard deviation, marks and digits included)':
    '{0} Messwerte, Streuung {1} (eine Standardabweichung, Teilstriche und Stellen eingeschlossen)',
  'rate {0}, standard error {1}': 'Änderung {0}, Standardfehler {1}',
  'at {0} a new reading falls between {1} and {2} (95 %)':
    'bei {0} liegt ein neuer Messwert zwischen {1} und {2} (95 %)',
  'Shims for a set: every unit in its window, and the least spread across it':
    'Einstellscheiben für einen Satz: jede Einheit im Toleranzfeld, und die kleinste Spanne im Satz',
  'expected = reading + rate · (shim − shim now in)': 'erwartet = reading + rate · (Einstellscheibe − now)',
  'of all ways to give out the drawer, the least of highest − lowest':
    'von allen Verteilungen des Vorrats die mit dem kleinsten Abstand von größtem und kleinstem Wert',
  'Exact (bottleneck assignment): no other choice from this drawer has less spread':
    'Exakt (Engpasszuordnung): keine andere Auswahl aus diesem Vorrat hat eine kleinere Spanne',
  'opening pressure of each unit as it is': 'Öffnungsdruck jeder Einheit, wie sie ist',
  'shim that is in each, in the same order': 'eingebaute Einstellscheibe in jeder, in derselben Reihenfolge',
  'how many there are of each; one of each where none is given': 'wie viele es von jedem Maß gibt; ohne Angabe je eine',
  '{0} readings and {1} shims: give the shim that is in each unit.':
    '{0} Messwerte und {1} Einstellscheiben: zu jeder Einheit die eingebaute angeben.',
  '{0} units and {1} sizes are more than can be looked through: give the sizes about what is wanted.':
    '{0} Einheiten und {1} Maße sind mehr, als sich durchsuchen lässt: die Maße um das Gesuchte herum angeben.',
  'Give a whole number of pieces for each of the {0} sizes.': 'Zu jedem der {0} Maße eine ganze Stückzahl angeben.',
  'unit {0} can be brought to {1} to {2}': 'Einheit {0} lässt sich auf {1} bis {2} bringen',
  'No shim of this drawer brings every unit into the window: {0}, in steps. Grind a shim, or make the drawer finer.':
    'Keine Einstellscheibe aus diesem Vorrat bringt jede Einheit ins Toleranzfeld: {0}, in Stufen. Eine schleifen, oder feinere beschaffen.',
  'Each unit could be brought into the window, but not all from this drawer at once: there are too few of some size.':
    'Jede Einheit ließe sich ins Toleranzfeld bringen, aber nicht alle zugleich aus diesem Vorrat: von einem Maß sind zu wenige da.',
  '{0} units, {1} sizes, rate {2}': '{0} Einheiten, {1} Maße, Änderung {2}',
  'spread {0} % of the window, {1}': 'Spanne {0} % des Toleranzfelds, {1}',
  'torque at the nut': 'Drehmoment an der Mutter',
  'force along the bolt': 'Kraft in Richtung der Schraube',
  'nut factor K; 0.2 is common for dry steel, no more than a guess':
    'Reibwert K der Mutter; 0.2 ist bei trockenem Stahl üblich und nicht mehr als eine Schätzung',
  'nominal diameter of the thread': 'Nenndurchmesser des Gewindes',
  'Each figure must be over nothing. Look at what was typed.':
    'Jeder Wert muss größer als null sein. Die Eingabe prüfen.',
  'What to set on a wrench that turns the nut through an adapter':
    'Was an einem Drehmomentschlüssel einzustellen ist, der die Mutter über einen Aufsatz dreht',
  'setting = torque · wrench / (wrench + adapter · cos angle)':
    'setting = torque · wrench / (wrench + adapter · cos angle)',
  'TM 9-254, general maintenance of torque wrenches': 'TM 9-254, allgemeine Instandhaltung von Drehmomentschlüsseln',
  'from the mark on the grip to the square drive': 'von der Griffmarke zum Vierkant',
  'from the square drive to the nut': 'vom Vierkant zur Mutter',
  'between wrench and adapter; 0° where none is given': 'zwischen Schlüssel und Aufsatz; ohne Angabe 0°',
  'The nut would lie at the grip or behind it, or the wrench has no length. Measure again.':
    'Die Mutter läge am Griff oder dahinter, oder der Schlüssel hat keine Länge. Noch einmal messen.',
  'setting {0}': 'Einstellung {0}',
  'Torque for a preload, by the nut factor': 'Drehmoment für eine Vorspannkraft, mit dem Reibwert K',
  'Shigley, Mechanical Engineering Design (from memory)': 'Shigley, Mechanical Engineering Design (aus dem Gedächtnis)',
  'torque {0}': 'Drehmoment {0}',
  'Preload that a torque brings, by the nut factor': 'Vorspannkraft aus einem Drehmoment, mit dem Reibwert K',
  'preload {0}': 'Vorspannkraft {0}',
  'Torque for a preload, from the friction of thread and face':
    'Drehmoment für eine Vorspannkraft, aus der Reibung von Gewinde und Auflage',
  'Long form for 60° threads, as in Shigley, Mechanical Engineering Design (from memory)':
    'Ausführliche Form für 60°-Gewinde, wie in Shigley, Mechanical Engineering Design (aus dem Gedächtnis)',
  'pitch of the thread': 'Steigung des Gewindes',
  'rt, half the pitch diameter': 'rt, der halbe Flankendurchmesser',
  'µt, the friction of the thread': 'µt, die Reibungszahl des Gewindes',
  'rn, mean radius of the face under the head': 'rn, mittlerer Radius der Auflage unter dem Kopf',
  'µn, the friction of the face': 'µn, die Reibungszahl der Auflage',
  'How far a torque loads a solid bolt or stud (never a hollow nut or holder)':
    'Wie weit ein Drehmoment eine volle Schraube oder einen Stehbolzen belastet (nie eine hohle Mutter oder einen Halter)',
  'stress area = π/4 · (d − 0.9382 · P)²': 'Spannungsquerschnitt = π/4 · (d − 0.9382 · P)²',
  'share = preload / (proof stress · stress area)': 'Anteil = Vorspannkraft / (Prüfspannung · Spannungsquerschnitt)',
  'ISO 898-1 (stress area, and proof stress by class: from memory); nut factor as in Shigley (from memory)':
    'ISO 898-1 (Spannungsquerschnitt, und Prüfspannung nach Klasse: aus dem Gedächtnis); Reibwert K wie in Shigley (aus dem Gedächtnis)',
  'pitch of the metric thread': 'Steigung des metrischen Gewindes',
  'property class on the head: {0}': 'Festigkeitsklasse auf dem Kopf: {0}',
  'There is no class {0}: they are {1}. Read it off the head.':
    'Eine Klasse {0} gibt es nicht: es sind {1}. Am Kopf ablesen.',
  'stress area = π/4 · ({0} − 0.9382 · {1})² = {2} mm²': 'Spannungsquerschnitt = π/4 · ({0} − 0.9382 · {1})² = {2} mm²',
  'proof load = {0}': 'Prüfkraft = {0}',
  '{0} % of the proof load{1}': '{0} % der Prüfkraft{1}',
  ': the bolt stretches for good. Look at the torque, the thread and the class again':
    ': die Schraube dehnt sich bleibend. Drehmoment, Gewinde und Klasse prüfen',
  'Source: {0}.': 'Quelle: {0}.',
  '{0} (need not be given)': '{0} (wahlweise)',
  'For example: handtight work-out {0} {1}': 'Zum Beispiel: handtight work-out {0} {1}',
  '“{0}” is not a name, an equals sign and a value, such as {1}.':
    '„{0}“ ist nicht Name, Gleichheitszeichen und Wert, zum Beispiel {1}.',
  'It has {0}.': 'Es gibt {0}.',
  '{0} has no figure {1}. {2}': '{0} hat keinen Wert {1}. {2}',
  '{0} is given twice. Delete one.': '{0} ist zweimal angegeben. Eines löschen.',
  'Not given: {0}.': 'Nicht angegeben: {0}.',
  '{0} is a {1}, and {2} a {3}: they must be of one kind. Look at the units.':
    '{0} ist {1}, und {2} ist {3}: sie müssen von einer Art sein. Die Einheiten prüfen.',
  '“{0}” in {1} has no unit of its own. Write each figure with its unit, a comma between two of them, and decimals with a point: 1.30 mm, 1.35 mm.':
    '„{0}“ in {1} hat keine eigene Einheit. Jeden Wert mit Einheit schreiben, ein Komma zwischen zweien, Dezimalstellen mit Punkt: 1.30 mm, 1.35 mm.',
  'nothing is given behind the equals sign. It is {0}.':
    'hinter dem Gleichheitszeichen steht nichts. Gemeint ist: {0}.',
  '{0} has no unit. Write it with one, such as {1}.': '{0} hat keine Einheit. Mit einer schreiben, zum Beispiel {1}.',
  '{0} is a {1}, but a {2} is needed. Check the unit.': '{0} ist {1}, gebraucht wird {2}. Die Einheit prüfen.',
  '{0} is more than anything that is measured at a bench, and it is {1}. Look at the decimal mark and the unit.':
    '{0} ist mehr als alles, was in der Werkstatt gemessen wird; gemeint ist: {1}. Dezimalzeichen und Einheit prüfen.',
  '{0} is less than anything that is measured at a bench, and it is {1}. Look at the decimal mark and the unit.':
    '{0} ist weniger als alles, was in der Werkstatt gemessen wird; gemeint ist: {1}. Dezimalzeichen und Einheit prüfen.',
  '{0} is more than {1}, and it is {2}: that is a slip. Look at the decimal mark and the unit.':
    '{0} ist mehr als {1}; gemeint ist: {2}. Das ist ein Tippfehler. Dezimalzeichen und Einheit prüfen.',
  '{0} is under nothing, and it is {1}. Give it without its sign, or leave it out.':
    '{0} ist kleiner als null; gemeint ist: {1}. Ohne Vorzeichen angeben, oder weglassen.',
  '{0} is not over nothing, and it is {1}. Look at what was typed.':
    '{0} ist nicht größer als null; gemeint ist: {1}. Die Eingabe prüfen.',
};
