import type { Bundle } from '../bundle.ts';

export const specifications: Bundle = {
  'Test {0} says neither what is read nor what is good.':
    'Die Prüfung {0} sagt weder, was abgelesen wird, noch, was gut ist.',
  'one person passes a drop on the tip, and the next does not.':
    'der eine lässt einen Tropfen an der Spitze gelten, der Nächste nicht.',
  'Write “accept "…"”, or “read … within …”.': '„accept "…"“ schreiben, oder „read … within …“.',
  'This check does not say what to look for.': 'Diese Kontrolle sagt nicht, worauf zu achten ist.',
  'it gets ticked, and a blued tip or a stained face goes in.':
    'sie wird abgehakt, und eine blau angelaufene Spitze oder eine fleckige Fläche kommt hinein.',
  'Write what to look for in quotes, or “reuse if "…"  reject if "…"”.':
    'In Anführungszeichen schreiben, worauf zu achten ist, oder „reuse if "…"  reject if "…"“.',
  'Nothing says what the {0} is chosen for.': 'Nichts sagt, wofür {0} ausgewählt wird.',
  'the bench hand guesses a thickness and builds the unit for nothing.':
    'der Monteur rät eine Dicke und baut die Einheit umsonst zusammen.',
  'Nothing says in what the {0} is clamped.': 'Nichts sagt, worin {0} eingespannt wird.',
  'bare vise jaws pull a bored body out of round and bruise its faces.':
    'blanke Schraubstockbacken drücken einen gebohrten Körper unrund und beschädigen seine Flächen.',
  'Write “in "…"” here, or “held in "…"” at part {0} in the family.':
    'Hier „in "…"“ schreiben, oder in der Baureihe beim Teil {0} „held in "…"“.',
  soaked: 'eingeweicht',
  oiled: 'geölt',
  'Nothing says in what this is {0}.': 'Nichts sagt, womit dies {0} wird.',
  'solvent left on a lapped fit strips its oil film, detergent rusts it, and oil removes no dirt.':
    'Lösemittel an einer geläppten Passung löst den Ölfilm, Waschmittel lässt sie rosten, und Öl entfernt keinen Schmutz.',
  'Write “{0}” and a fluid of the shop{1}.': '„{0}“ und eine Flüssigkeit der Werkstatt schreiben{1}.',
  'Test {0} holds a pressure, but does not say for how long.':
    'Die Prüfung {0} hält einen Druck, sagt aber nicht, wie lange.',
  'a slow leak shows no drop in the two seconds that somebody in a hurry waits.':
    'ein langsames Leck zeigt in den zwei Sekunden, die ein Eiliger wartet, keinen Abfall.',
  'Write “for” and a time, such as for 10 s.': '„for“ und eine Zeit schreiben, zum Beispiel for 10 s.',
  'Test {0} {1}.': 'Prüfung {0}: {1}.',
  'the needle lifts, and a good seat is taken for a leaking one.':
    'die Nadel hebt ab, und ein guter Sitz wird für undicht gehalten.',
  'Write “hold … below” and the test that reads the opening.':
    '„hold … below“ und die Prüfung schreiben, die den Öffnungsdruck abliest.',
  'holds {0} above {1}': 'sie hält {0} über {1}',
  'holds {0}, and {1} is from {2}{3}': 'sie hält {0}, und {1} beginnt bei {2}{3}',
  'limit in service': 'Grenzwert im Betrieb',
  'as it comes in': 'bei der Anlieferung',
  'limit with a new part': 'Grenzwert mit neuem Teil',
  'with a new part': 'mit einem neuen Teil',
  '{0} has its own {1}, but no {2}.': '{0} hat einen eigenen Wert für {1}, aber es fehlt: {2}.',
  '{0} it would be judged by {1}.': '{0} würde es so beurteilt: {1}.',
  'no limit at all': 'ohne jeden Grenzwert',
  'the figure of the other numbers': 'nach dem Wert der anderen Nummern',
  "Write “{0}” from the maker's data.": '„{0}“ aus den Herstellerangaben schreiben.',
  'Spec {0} has no {1}, although other numbers have one, and {2} {3} the spec as it is.':
    'Bei Vorgabe {0} fehlt: {1}. Andere Nummern haben ihn, und {2} {3} die Vorgabe, wie sie ist.',
  use: 'verwenden',
  uses: 'verwendet',
  '{0} {1} would be judged by no limit at all.': '{0} würde es nach keinem Grenzwert beurteilt.',
  'the low end is above the high end, so no unit can pass':
    'das untere Ende liegt über dem oberen, also kann keine Einheit bestehen',
  'it leaves no room at all, and no gauge shows exactly that value':
    'es lässt keinen Spielraum, und kein Manometer zeigt genau diesen Wert',
  '{0} is {1}.': '{0}: {1}.',
  "Correct the figures from the maker's data.": 'Die Werte nach den Herstellerangaben berichtigen.',
  'This measurement says what to do on a fail, but not when it fails.':
    'Diese Messung sagt, was bei Nichtbestehen zu tun ist, aber nicht, wann sie nicht bestanden ist.',
  'the figure is written down, and the part goes in whatever it is.':
    'der Wert wird notiert, und das Teil kommt hinein, wie er auch ist.',
  'Write “within” and a spec or a limit.': '„within“ und eine Vorgabe oder einen Grenzwert schreiben.',
  'Test {0} reads {1}, but no limit says what is good.':
    'Bei der Prüfung {0} wird {1} abgelesen, aber kein Grenzwert sagt, was gut ist.',
  'one person passes what the next one opens again.': 'der eine lässt gelten, was der Nächste wieder öffnet.',
  'Test {0} says where the pressure fall starts, but not how long it may take.':
    'Die Prüfung {0} sagt, wo der Druckabfall beginnt, aber nicht, wie lange er dauern darf.',
  'too fast and too slow both pass.': 'zu schnell und zu langsam besteht beides.',
  'Write “in” and a time, such as in 6..20 s.': '„in“ und eine Zeit schreiben, zum Beispiel in 6..20 s.',
  'Nothing says what {0} is set to.': 'Nichts sagt, worauf {0} eingestellt wird.',
  'each person stops turning somewhere else.': 'jeder hört an einer anderen Stelle auf zu drehen.',
  'Nothing says how far apart the units of the set may be.':
    'Nichts sagt, wie weit die Einheiten des Satzes auseinanderliegen dürfen.',
  'every set passes.': 'jeder Satz besteht.',
  'Write “spread at most” and a limit.': '„spread at most“ und einen Grenzwert schreiben.',
  '{0} is {1} with no tolerance.': '{0}: {1} ohne Toleranz.',
  'nobody can say whether a reading is good.': 'niemand kann sagen, ob ein Messwert gut ist.',
  "Write the tolerance from the maker's data, or “unless stated {0} ±…” in the shop.":
    'Die Toleranz aus den Herstellerangaben schreiben, oder in der Werkstatt „unless stated {0} ±…“.',
  'Spec {0} is “not required”, but no source is given for that.':
    'Vorgabe {0} ist „not required“, aber dafür ist keine Quelle angegeben.',
  'nobody can look up whether that is so.': 'niemand kann nachsehen, ob das stimmt.',
  'Write “source "…"”.': '„source "…"“ schreiben.',
  'Spec {0} has no value.': 'Vorgabe {0} hat keinen Wert.',
  'the step that uses it has no figure to print.': 'der Schritt, der sie verwendet, hat keinen Wert zu drucken.',
  "Write it from the maker's data, or give a value in each part number.":
    'Aus den Herstellerangaben schreiben, oder bei jeder Teilenummer einen Wert angeben.',
  'Part number {0} has no {1}.': 'Bei Teilenummer {0} fehlt {1}.',
  'a unit of this number could not be set{0}.': 'eine Einheit dieser Nummer ließe sich nicht einstellen{0}.',
  ' (nor one of {0})': ' (auch keine von {0})',
  'Write {0} in number {1}, or “{2} not required” with its source.':
    '{0} in number {1} schreiben, oder „{2} not required“ mit der Quelle.',
  'Test {0} is timed, but no pressure says where it starts.':
    'Die Prüfung {0} wird gestoppt, aber kein Druck sagt, wo sie beginnt.',
  'each person pumps to whatever pressure they remember.': 'jeder pumpt auf den Druck, den er im Kopf hat.',
  'Write “hold” and a pressure, or “from … to …”.': '„hold“ und einen Druck schreiben, oder „from … to …“.',
  'Test {0} says where the pressure fall starts, but not where it ends.':
    'Die Prüfung {0} sagt, wo der Druckabfall beginnt, aber nicht, wo er endet.',
  'nobody knows when to stop the clock.': 'niemand weiß, wann die Uhr zu stoppen ist.',
  'Write “to” and the pressure at the end.': '„to“ und den Enddruck schreiben.',
  'Nothing says how much the unit is primed.': 'Nichts sagt, wie lange die Einheit durchgepumpt wird.',
  'after two strokes there is still air in it, and the reading is soft.':
    'nach zwei Hüben ist noch Luft darin, und die Anzeige ist weich.',
  'Nothing says how far a thicker {0} moves {1}.': 'Nichts sagt, wie weit mehr Dicke ({0}) den Wert {1} ändert.',
  'the next size cannot be worked out, and each try opens the unit again.':
    'das nächste Maß lässt sich nicht ausrechnen, und jeder Versuch öffnet die Einheit wieder.',
  'The {0} sets {1}, but this step does not say to turn it.':
    '{0} stellt {1} ein, aber dieser Schritt sagt nicht, dass daran gedreht wird.',
  'a setting that is never locked would go unnoticed.': 'eine Einstellung, die nie gesichert wird, fiele nicht auf.',
  'Write “by {0}”.': '„by {0}“ schreiben.',
  'Nothing says where the tolerances for {0} after “unless stated” come from.':
    'Nichts sagt, woher die Toleranzen nach „unless stated“ stammen ({0}).',
  'they print on every sheet whose figures have none.': 'sie stehen auf jedem Blatt, dessen Werte keine haben.',
  'Write “source "…"” after them.': '„source "…"“ dahinter schreiben.',
  'Nothing says where {0} comes from.': 'Nichts sagt, woher {0} stammt.',
  'nobody can look it up when in doubt, and an outdated figure stays forever.':
    'niemand kann es im Zweifel nachschlagen, und ein überholter Wert bleibt für immer.',
  'Write “source "…"” with the sheet and the page.': '„source "…"“ mit Blatt und Seite schreiben.',
  'Nothing says where {0} of {1} comes from.': 'Nichts sagt, woher {0} von {1} stammt.',
  'the sheet would print the source of another number beside it.':
    'das Blatt druckte daneben die Quelle einer anderen Nummer.',
  'The figure in this step has no source.': 'Der Wert in diesem Schritt hat keine Quelle.',
  'nobody can look it up when in doubt.': 'niemand kann ihn im Zweifel nachschlagen.',
  'Write “source "…"”, or make it a spec.': '„source "…"“ schreiben, oder eine Vorgabe daraus machen.',
  'No step uses {0}.': 'Kein Schritt verwendet {0}.',
  'the figure is on the sheet, but nobody works to it.': 'der Wert steht auf dem Blatt, aber niemand arbeitet danach.',
  'Name it in the step that it is for, or delete it.': 'In dem Schritt nennen, für den er ist, oder löschen.',
  'No step for {0} uses {1}.': 'Kein Schritt für {0} verwendet {1}.',
  'nobody works to the figure of this number.': 'niemand arbeitet nach dem Wert dieser Nummer.',
  'Delete it, or name {0} at the steps that are only for other numbers.':
    'Löschen, oder {0} bei den Schritten nennen, die nur für andere Nummern sind.',
  ' for {0}': ' für {0}',
  'This aims at {0}{1}, but {2} must be {3}.': 'Hier ist das Ziel {0}{1}, aber {2} muss {3} sein.',
  'the unit would come back to this repair each time.': 'die Einheit käme jedes Mal zu dieser Nacharbeit zurück.',
  'Give {0} figures that agree.': 'Werte angeben, die zusammenpassen ({0}).',
  'the target and the limit': 'Ziel und Grenzwert',
  'No torque is given for the {0}.': 'Für {0} ist kein Drehmoment angegeben.',
  'the bench hand would have to guess.': 'der Monteur müsste raten.',
  'Write “to” and a spec, or the figure with its source.':
    '„to“ und eine Vorgabe schreiben, oder den Wert mit der Quelle.',
  'The range of {0}: {1}': 'Der Messbereich von {0}: {1}',
  'everything that is set or read on it is judged by only one of the two.':
    'alles, was damit eingestellt oder abgelesen wird, wird nur nach einem der beiden beurteilt.',
  'Correct the one that is not marked on the tool.': 'Den berichtigen, der nicht auf dem Werkzeug steht.',
  'one person sets one figure, and the next sets the other.':
    'der eine stellt den einen Wert ein, der Nächste den anderen.',
  'Correct the one that is not in the source.': 'Den berichtigen, der nicht in der Quelle steht.',
  'Wrench {0} has a range in {1}.': 'Der Schlüssel {0} hat einen Bereich in {1}.',
  'a torque wrench sets a torque.': 'ein Drehmomentschlüssel stellt ein Drehmoment ein.',
  'Write it in N·m or lbf·ft.': 'In N·m oder lbf·ft schreiben.',
  '{0} ranges in {1}, but {2} is a {3}.': '{0} hat den Bereich in {1}, aber {2} ist eine andere Größe: {3}.',
  'nobody can work out what the tool can show, or how accurately.':
    'niemand kann ausrechnen, was das Werkzeug anzeigen kann oder wie genau.',
  'Write both in units of one kind.': 'Beides in Einheiten derselben Größe schreiben.',
  'Correct the unit.': 'Die Maßeinheit berichtigen.',
  '“then” has to be followed by an angle, not by {0}.': 'Nach „then“ muss ein Winkel kommen, nicht {0}.',
  'after the torque the joint is turned further by an angle.':
    'nach dem Drehmoment wird die Verbindung um einen Winkel weitergedreht.',
  'Write it in °.': 'In ° schreiben.',
  '{0} says {1}, which is a {2}, not a {3}.': '{0}: {1} ist {2}, nicht {3}.',
  'no tool for the work can set or show it.': 'kein Werkzeug für die Arbeit kann das einstellen oder anzeigen.',
  '{0} says {1}, which is a {2}.': '{0}: {1} ist {2}.',
  'the bench hand needs {0}.': 'der Monteur braucht {0}.',
  'strokes or a time': 'Hübe oder eine Zeit',
  'a time': 'eine Zeit',
  'This step needs a {0}, but spec {1} is {2}, which is a {3}.':
    'Dieser Schritt braucht eine andere Größe ({0}): Vorgabe {1} ist {2}, also {3}.',
  'Name the spec that is meant, or correct its unit.': 'Die gemeinte Vorgabe nennen, oder ihre Maßeinheit berichtigen.',
  'Write “accept” before the words that say what is good, or “read … within …”.':
    'Vor die Worte, die sagen, was gut ist, „accept“ schreiben, oder „read … within …“.',
  'This test is never to go above {0}, and goes to {1}.': 'Diese Prüfung darf nie über {0} gehen, und geht bis {1}.',
  'a good unit cannot be brought there, or the ceiling is broken every time and means nothing.':
    'eine gute Einheit lässt sich nicht dorthin bringen, oder die Obergrenze wird jedes Mal überschritten und bedeutet nichts.',
  'Correct the ceiling, or the limit.': 'Die Obergrenze berichtigen, oder den Grenzwert.',
  'Write “to bring” and the test, then “to” and its target; or “by” and in quotes how it is chosen.':
    '„to bring“ und die Prüfung schreiben, dann „to“ und den Zielwert; oder „by“ und in Anführungszeichen, wie ausgewählt wird.',
  'does not say over how many strokes or how long the volume is collected':
    'sagt nicht, über wie viele Hübe oder wie lange das Volumen aufgefangen wird',
  'does not say at what speed it delivers': 'sagt nicht, bei welcher Drehzahl gefördert wird',
  'does not say at what pressure it is read': 'sagt nicht, bei welchem Druck abgelesen wird',
  'The setting of {0}': 'Die Einstellung von {0}',
  'how far the air moves it depends on the pressure, so each person would judge differently.':
    'wie weit die Luft es bewegt, hängt vom Druck ab, und jeder würde anders urteilen.',
  'Write, for example, at 0.80 bar.': 'Schreiben Sie zum Beispiel at 0.80 bar.',
  'twice the strokes are twice the volume, and a good unit fails.':
    'doppelt so viele Hübe sind doppelt so viel Volumen, und eine gute Einheit fällt durch.',
  'what is delivered depends on the speed, so each person would judge differently.':
    'die Fördermenge hängt von der Drehzahl ab, also urteilte jeder anders.',
  'Write, for example, for 1000 strokes, or for 30 s.': 'Zum Beispiel for 1000 strokes schreiben, oder for 30 s.',
  'Write, for example, at 1000 rpm.': 'Zum Beispiel at 1000 rpm schreiben.',
  'This times the pressure from {0} to {1}.': 'Hier wird gestoppt, wie lange der Druck von {0} bis {1} braucht.',
  'a unit that leaks only ever falls, so nothing can be timed.':
    'in einer undichten Einheit fällt der Druck nur, also gibt es nichts zu stoppen.',
  'Write the higher pressure first, or the speed at which it is built up.':
    'Den höheren Druck zuerst schreiben, oder die Drehzahl, mit der er aufgebaut wird.',
  'The {0} is held to {1}, “{2}”, which names the {3}.':
    '{0} wird nach {1} beurteilt, „{2}“, und diese Vorgabe nennt {3}.',
  'a figure that was copied from another line is worked to as if it were right.':
    'nach einem Wert, der aus einer anderen Zeile kopiert ist, wird gearbeitet, als wäre er richtig.',
  'Write the spec of this part, or a title that covers both.':
    'Die Vorgabe dieses Teils schreiben, oder eine Benennung, die für beide passt.',
  'Spec {0}{1} is {2} as rebuilt and {3} {4}.': 'Vorgabe {0}{1} ist {2} nach der Instandsetzung und {3} {4}.',
  'Compare both with the maker’s data, the point and the unit too.':
    'Beide mit den Herstellerangaben vergleichen, auch Dezimalpunkt und Maßeinheit.',
  'in service': 'im Betrieb',
  'one of the two is a slip, and units are judged by it.':
    'einer von beiden ist ein Schreibfehler, und danach werden Einheiten beurteilt.',
  'a unit that has just been rebuilt to the one would be rejected by the other.':
    'eine Einheit, die gerade nach dem einen instandgesetzt ist, fiele nach dem anderen durch.',
  'Spec {0} is {1}{2}, and {3}{4}.': 'Vorgabe {0} ist {1}{2} und {3}{4}.',
  ' for the others': ' für die anderen',
  'a joint that is turned by an angle after its torque is far looser without it.':
    'eine Verbindung, die nach dem Drehmoment um einen Winkel weitergedreht wird, ist ohne ihn viel lockerer.',
  'sister numbers differ by a few tenths, not by so many times: a point or a unit has slipped.':
    'verwandte Nummern unterscheiden sich um wenige Zehntel, nicht um ein Vielfaches: Dezimalpunkt oder Maßeinheit ist verrutscht.',
  'Write “then” and the angle with both, or with neither.':
    '„then“ und den Winkel bei beiden schreiben, oder bei keinem.',
  'The other figure is here.': 'Hier steht der andere Wert.',
  'Point {0} of test {1}': 'Punkt {0} der Prüfung {1}',
  'test {0}': 'Prüfung {0}',
  'point {0} of test {1}': 'Punkt {0} der Prüfung {1}',
  ', and {0} is a {1}': ', und {0} ist ein Wert für {1}',
  'Point {0} of test {1} has no limit, and the other points have one.':
    'Punkt {0} der Prüfung {1} hat keinen Grenzwert, und die anderen Punkte haben einen.',
  'Write “within” and a spec or a limit behind it.':
    'Dahinter „within“ und eine Vorgabe oder einen Grenzwert schreiben.',
  '{0} is held to {1}, which is the figure of another test; there is a spec called {2}.':
    '{0} wird nach {1} beurteilt, dem Wert einer anderen Prüfung; es gibt eine Vorgabe {2}.',
  'the figures of two tests are seldom the same, and the certificate shows the wrong one.':
    'zwei Prüfungen haben selten denselben Wert, und das Zertifikat zeigt den falschen.',
  'Write “within {0}”.': '„within {0}“ schreiben.',
  'The {0} is tightened to {1} here, and to {2} at {3}.': '{0} wird hier mit {1} angezogen, und mit {2} in {3}.',
  'after one of the two the same joint is loose, or overstretched.':
    'nach einem von beiden ist dieselbe Verbindung locker oder überdehnt.',
  'Write one spec at both. Where the joint is pulled up in steps, write them in one stage.':
    'An beiden Stellen dieselbe Vorgabe schreiben. Wird die Verbindung stufenweise angezogen, die Stufen in einen Arbeitsgang schreiben.',
  'nothing says where to stop, and a thread strips or a bolt yields.':
    'nichts sagt, wo aufzuhören ist, und ein Gewinde reißt aus oder eine Schraube wird überdehnt.',
  'hand-tight is within it.': 'auch handfest liegt darin.',
  'the best unit would be rejected, and the worst would pass.':
    'die beste Einheit fiele durch, und die schlechteste bestünde.',
  '{0} is {1}, open at the other end.': '{0} ist {1}, am anderen Ende offen.',
  'Write both ends from the maker’s data.': 'Beide Enden aus den Herstellerangaben schreiben.',
  'Write “at most”.': '„at most“ schreiben.',
  'The spread of {0}, {1}, is as wide as its limit, {2}.':
    'Die Spreizung von {0}, {1}, ist so weit wie der Grenzwert, {2}.',
  'two places that pass can lie no further apart, so the spread never decides.':
    'zwei Stellen, die bestehen, können nicht weiter auseinanderliegen, also entscheidet die Spreizung nie.',
  'Check both figures. Write the smaller spread that the maker gives, or delete it.':
    'Beide Werte prüfen. Die kleinere Spreizung schreiben, die der Hersteller angibt, oder sie löschen.',
  'What is read at {0} has to be {1} {2}, and its limit, {3}, lies on the other side of {4}.':
    'Für den Messwert bei {0} gilt {1} {2}, aber der Grenzwert, {3}, liegt auf der anderen Seite von {4}.',
  'no unit can pass both points.': 'keine Einheit kann beide Punkte bestehen.',
  'Correct one of the limits, or write {0}.':
    'Einen der Grenzwerte berichtigen, oder {en0, select, above {above} other {below}} schreiben.',
  'Write the number of strokes, such as prime 6 strokes, or “for” and in quotes how long.':
    'Die Zahl der Hübe schreiben, zum Beispiel prime 6 strokes, oder „for“ und in Anführungszeichen, wie lange.',
  'Write “by” and a rate, such as spec shim-rate rate 3 bar per 0.001 in, or in quotes how the size is found.':
    '„by“ und eine Rate schreiben, zum Beispiel spec shim-rate rate 3 bar per 0.001 in, oder in Anführungszeichen, wie das Maß gefunden wird.',
  'Across the set {0} may differ by {1}, and {2} is only {3} wide.':
    'Im ganzen Satz darf {0} um {1} auseinanderliegen, und {2} ist nur {3} weit.',
  'units that have each passed never differ by more, so this compares nothing.':
    'Einheiten, die einzeln bestanden haben, liegen nie weiter auseinander, also vergleicht das nichts.',
  'Write a spread that is narrower than the window.': 'Eine Spreizung schreiben, die enger ist als der Grenzwert.',
  'Across the set {0} may differ by {1}, and {2} cannot be read that finely.':
    'Im ganzen Satz darf {0} um {1} auseinanderliegen, und so fein lässt sich {2} nicht ablesen.',
  'two units that read alike may differ by more.':
    'zwei Einheiten mit gleicher Anzeige können weiter auseinanderliegen.',
  'Write a spread that the gauge can show, or read it on a finer one.':
    'Eine Spreizung schreiben, die das Manometer zeigen kann, oder auf einem feineren ablesen.',
  'Spec {0} is a rate of {1} per {2}{3}.': 'Vorgabe {0} ist eine Rate von {1} je {2}{3}.',
  'no shim and no turn can be worked out from it.': 'daraus lässt sich weder Einstellscheibe noch Umdrehung berechnen.',
  'Correct the unit: a rate is what is read, per length of shim or per turn, such as 3 bar per 0.001 in.':
    'Die Maßeinheit berichtigen: eine Rate ist das, was abgelesen wird, je Dicke der Einstellscheibe oder je Umdrehung, zum Beispiel 3 bar per 0.001 in.',
  'The title of {0} says {1}, and its figure is {2}.': 'Der Titel von {0} sagt {1}, und die Angabe ist {2}.',
  'The words of this step say {0}, and its figure is {1}.':
    'Die Worte dieses Schritts sagen {0}, und die Angabe ist {1}.',
  'both are printed, and the bench hand picks one.': 'beide werden gedruckt, und an der Werkbank gilt dann eine davon.',
  'Correct the one that is wrong, or leave the figure out of the title.':
    'Die falsche berichtigen oder die Angabe aus dem Titel streichen.',
  'Correct the one that is wrong, or leave the figure out of the words.':
    'Die falsche berichtigen oder die Angabe aus den Worten streichen.',
};
