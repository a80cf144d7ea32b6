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
  'Write “to bring” and the test, then “to” and its target.':
    '„to bring“ und die Prüfung schreiben, dann „to“ und den Zielwert.',
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
    'Die Prüfung {0} liest ab ({1}), aber kein Grenzwert sagt, was gut ist.',
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
  'Write the number of strokes, such as prime 6 strokes, or in quotes what to prime until.':
    'Die Zahl der Hübe schreiben, zum Beispiel prime 6 strokes, oder in Anführungszeichen, bis wann durchzupumpen ist.',
  'Nothing says how far a thicker {0} moves {1}.': 'Nichts sagt, wie weit mehr Dicke ({0}) den Wert {1} ändert.',
  'the next size cannot be worked out, and each try opens the unit again.':
    'das nächste Maß lässt sich nicht ausrechnen, und jeder Versuch öffnet die Einheit wieder.',
  'Write “by” and a rate, such as spec shim-rate rate 3 bar per 0.001 in.':
    '„by“ und eine Rate schreiben, zum Beispiel spec shim-rate rate 3 bar per 0.001 in.',
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
  'Give {0} figures that agree.': 'Werte angeben, die zusammenpassen: {0}.',
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
  'Spec {0} is a rate of {1} per {2}.': 'Vorgabe {0} ist eine Rate von {1} je {2}.',
  'a shim rate is a pressure per length, such as 3 bar per 0.001 in.':
    'die Rate einer Einstellscheibe ist ein Druck je Länge, zum Beispiel 3 bar per 0.001 in.',
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
};
