import type { Bundle } from '../bundle.ts';

export const gates: Bundle = {
  'no seat test is passed before {0}': 'vor {0} ist keine Sitzprüfung bestanden',
  'a leaking seat lets the pressure fall too, and the pair would be blamed.':
    'auch ein undichter Sitz lässt den Druck fallen, und die Schuld bekäme das Paar.',
  'Test the seat first, held below opening.': 'Zuerst den Sitz prüfen, unter dem Öffnungsdruck gehalten.',
  'Test {0} does not state the {1}{2}.': 'Die Prüfung {0} gibt nicht an: {1}{2}.',
  ', and {0}': ', und {0}',
  'the leak gap is only a few thousandths of a millimeter wide, and with another {0} a good pair fails or a worn one passes.{1}':
    'der Leckspalt ist nur einige Tausendstel Millimeter weit, und bei anderem Wert ({0}) fällt ein gutes Paar durch oder ein verschlissenes besteht.{1}',
  'Write “with "calibration fluid at 20 to 25 °C", "upright, tip down"”, or what the maker says.{0}':
    '„with "calibration fluid at 20 to 25 °C", "upright, tip down"“ schreiben, oder was der Hersteller angibt.{0}',
  fluid: 'Flüssigkeit',
  temperature: 'eine Temperatur',
  'attitude of the unit': 'Lage der Einheit',
  'Repair {0} ends with the {1} off, but the unit goes back to {2} ({3}), where {4} on.':
    'Die Nacharbeit {0} endet ohne {1}, aber die Einheit geht zurück zu {2} ({3}), und dort {4} eingebaut.',
  'they were': 'waren sie',
  'it was': 'war es',
  'the unit cannot be tested like that.': 'so lässt sich die Einheit nicht prüfen.',
  'At the end of the repair, close the unit the way it was closed before the test.':
    'Am Ende der Nacharbeit die Einheit so schließen, wie sie vor der Prüfung geschlossen war.',
  'The unit is not primed when {0} is {1}.':
    'Die Einheit ist nicht durchgepumpt, wenn {0} {en1, select, set {eingestellt} read {abgelesen} other {{1}}} wird.',
  tested: 'geprüft',
  'air in it makes the reading soft and the spray ragged.':
    'Luft darin macht die Anzeige weich und den Strahl unsauber.',
  'Write “prime 6 strokes with gauge shut” before this step.':
    '„prime 6 strokes with gauge shut“ vor diesen Schritt schreiben.',
  '{0} is tested{1} inside repair {2}.': '{0} wird{1} innerhalb der Nacharbeit {2} geprüft.',
  ' across the set': ' im ganzen Satz',
  'a test inside a repair is run twice or recorded nowhere.':
    'eine Prüfung in einer Nacharbeit wird zweimal gemacht oder nirgends festgehalten.',
  'After a repair the unit goes back to the earliest test that it has not passed, and that test has a box on the sheet. Move this test to a stage.':
    'Nach einer Nacharbeit geht die Einheit zur ersten Prüfung zurück, die sie nicht bestanden hat, und diese hat ein Feld auf dem Blatt. Diese Prüfung in einen Arbeitsgang verlegen.',
  'The family says so here.': 'Die Baureihe sagt es hier.',
  'The family is proven by {0}{1}, but no step of this procedure tests it.':
    'Die Baureihe verlangt den Nachweis {0}{1}, aber kein Schritt dieser Anweisung prüft das.',
  'a unit could leave without this proof.': 'eine Einheit könnte ohne diesen Nachweis hinausgehen.',
  'Write “{0}” in the stage where the unit is tested.':
    '„{0}“ in den Arbeitsgang schreiben, in dem die Einheit geprüft wird.',
  'The family gives the order here.': 'Die Baureihe gibt hier die Reihenfolge an.',
  '{0} is tested {1} {2}, but the family is proven by {3}, in that order.':
    '{0} wird {1} {2} geprüft, aber die Baureihe verlangt {3}, in dieser Reihenfolge.',
  before: 'vor',
  after: 'nach',
  'each test relies on what the tests before it proved.':
    'jede Prüfung stützt sich auf das, was die vorigen nachgewiesen haben.',
  'Move this test to its place, or change the order in the family.':
    'Diese Prüfung an ihren Platz setzen, oder die Reihenfolge in der Baureihe ändern.',
  'step {0} ({1}) changed what was tested': 'Schritt {0} ({1}) hat verändert, was geprüft war',
  'what was tested was changed': 'was geprüft war, wurde verändert',
  'The test is step {0}.': 'Die Prüfung ist Schritt {0}.',
  '{0} {1} no longer proven at the end.': '{0} {1} am Ende nicht mehr nachgewiesen.',
  are: 'sind',
  is: 'ist',
  'Test {0} again after that, or make the change before the {1}.':
    'Danach {0} noch einmal prüfen, oder die Änderung vor der Prüfung machen.',
  them: 'sie',
  tests: 'Prüfungen',
  test: 'Prüfung',
  'Test {0}': 'Prüfung {0}',
  'This test across the set': 'Diese Prüfung im ganzen Satz',
  'This check': 'Diese Kontrolle',
  '{0} says “on fail” and then nothing.': '{0}: nach „on fail“ kommt nichts.',
  '{0} does not say what to do when it fails.': '{0} sagt nicht, was zu tun ist, wenn sie nicht bestanden wird.',
  'the bench hand is left with a bad unit and no next step.':
    'der Monteur hat eine schlechte Einheit und keinen nächsten Schritt.',
  '{0} the repairs that are tried, in order.':
    '{en0, select, Name {Die Nacharbeiten nennen} other {„on fail“ und die Nacharbeiten schreiben}}, die versucht werden, der Reihe nach.',
  Name: 'Nennen:',
  'Write “on fail” and': '„on fail“ schreiben und',
  'The gauge is open while {0}.': 'Das Manometer ist offen, während {0}.',
  'the unit is primed': 'die Einheit durchgepumpt wird',
  '{0} is tested': '{0} geprüft wird',
  'the pulses knock its movement out of adjustment, and every reading after that is wrong.':
    'die Druckstöße verstellen das Messwerk, und jede spätere Anzeige ist falsch.',
  'Write “with gauge shut”, or declare in the shop that the gauge is damped.':
    '„with gauge shut“ schreiben, oder in der Werkstatt angeben, dass das Manometer gedämpft ist.',
  'Shut the gauge': 'Manometer absperren',
  '{0} with the gauge shut.': '{0}, aber das Manometer ist abgesperrt.',
  'The pressure is set for {0}': 'Der Druck für {0} wird eingestellt',
  'The pressure of {0} is read or held': 'Der Druck von {0} wird abgelesen oder gehalten',
  'the gauge shows the pressure from before, or nothing.': 'das Manometer zeigt den Druck von vorher oder nichts.',
  'Delete “with gauge shut” from this step.': '„with gauge shut“ in diesem Schritt löschen.',
  'The tester line is still connected to {0} when {1}.':
    'Die Leitung des Prüfgeräts ist noch an {0} angeschlossen, wenn {1}.',
  'it is pulled or bent with the unit, and its fitting leaks at the next test.':
    'sie wird mit der Einheit gezogen oder geknickt, und ihr Anschluss leckt bei der nächsten Prüfung.',
  'Relieve the pressure, then write “disconnect {0}” before this.':
    'Druck ablassen, dann „disconnect {0}“ davor schreiben.',
  'it is capped': 'er verschlossen wird',
  'the unit is opened': 'die Einheit geöffnet wird',
  'the unit leaves {0}': 'die Einheit den Arbeitsplatz ({0}) verlässt',
  'the procedure ends': 'die Anweisung endet',
  primed: 'durchgepumpt',
  'The unit is not at a station with pressure when it is {0}.':
    'Die Einheit ist nicht an einem Arbeitsplatz mit Druck, wenn sie {en0, select, set {eingestellt} read {abgelesen} other {{0}}} wird.',
  'there is nothing there to bring it up to pressure.': 'dort gibt es nichts, was sie unter Druck setzt.',
  'Move the step to a stage at the tester, or write pressure at that station in the shop.':
    'Den Schritt in einen Arbeitsgang am Prüfgerät verlegen, oder in der Werkstatt bei diesem Arbeitsplatz pressure schreiben.',
  'No line is connected when the unit is {0}.':
    'Keine Leitung ist angeschlossen, wenn die Einheit {en0, select, set {eingestellt} read {abgelesen} other {{0}}} wird.',
  'there is no pressure in it.': 'in ihr ist kein Druck.',
  'Write “connect” and the port before this step.': '„connect“ und den Anschluss vor diesen Schritt schreiben.',
  'The unit is opened before anybody has read it as found.':
    'Die Einheit wird geöffnet, bevor jemand sie im Anlieferungszustand gemessen hat.',
  'afterwards nobody can say what was wrong with it, or how far its spring had settled.':
    'danach kann niemand sagen, was ihr fehlte oder wie weit sich die Feder gesetzt hatte.',
  'Write “read {0} as found” at the tester before this{1}.': 'Davor am Prüfgerät „read {0} as found“ schreiben{1}.',
  ', or {0}': ', oder {0}',
  'the {0} {1} {2}': '{0} {2} wird',
  fitted: 'eingebaut',
  tightened: 'angezogen',
  'The unit may still be under pressure when {0}.': 'Die Einheit kann noch unter Druck sein, wenn {0}.',
  'this is opened': 'dies geöffnet wird',
  'fluid at test pressure goes through skin{0}.': 'Flüssigkeit unter Prüfdruck dringt durch die Haut{0}.',
  ', and a joint that is turned under pressure can let go':
    ', und eine Verbindung, die unter Druck gedreht wird, kann abspringen',
  'Write “relieve” before this step, and check that the gauge reads zero.':
    '„relieve“ vor diesen Schritt schreiben; das Manometer muss auf null stehen.',
  'The unit leaves {0} while it may be under pressure.':
    'Die Einheit verlässt den Arbeitsplatz ({0}), während sie unter Druck sein kann.',
  'the next person opens it without knowing, and fluid at test pressure goes through skin.':
    'der Nächste öffnet sie ahnungslos, und Flüssigkeit unter Prüfdruck dringt durch die Haut.',
  'Write “relieve” at the end of this stage.': '„relieve“ ans Ende dieses Arbeitsgangs schreiben.',
  'The procedure ends with the unit under pressure.': 'Die Anweisung endet mit der Einheit unter Druck.',
  'Write “relieve” at the end.': '„relieve“ ans Ende schreiben.',
  'Relieve the pressure first': 'Zuerst Druck ablassen',
  'The family says that the {0} {1} always checked, but no step of this procedure checks {2}.':
    'Die Baureihe sagt, dass {0} immer kontrolliert {en1, select, are {werden} other {wird}}, aber kein Schritt dieser Anweisung tut das.',
  it: 'es',
  'a worn or cracked one would go back in.': 'ein verschlissenes oder gerissenes käme wieder hinein.',
  'After the wash, write “check {0} "…"” with what to look for.':
    'Nach dem Waschen „check {0} "…"“ schreiben, und worauf zu achten ist.',
  '{0} {1}, but no step takes a reading of that name.':
    '{0} {1}, aber kein Schritt nimmt einen Messwert dieses Namens.',
  'the bench hand has no figure to use.': 'der Monteur hat keinen Wert, den er nehmen könnte.',
  'Name the test that takes the reading.': 'Die Prüfung nennen, die den Messwert liefert.',
  '{0} {1}, but {2} has not been read by then.': '{0} {1}, aber {2} ist bis dahin nicht abgelesen.',
  'the bench hand has no figure to use, or uses an old one.': 'der Monteur hat keinen Wert, oder er nimmt einen alten.',
  'Read or test {0} first.': 'Zuerst {0} ablesen oder prüfen.',
  '{0} {1}, but the unit was opened after {2} was read.':
    '{0} {1}, aber die Einheit wurde geöffnet, nachdem {2} abgelesen war.',
  'the figure belongs to an earlier build.': 'der Wert gehört zu einem früheren Zusammenbau.',
  'Read or test {0} again first.': 'Zuerst {0} noch einmal ablesen oder prüfen.',
  'The pressure is held {0}': 'Der Druck wird gehalten: {0}',
  'The part is chosen by': 'Das Teil wird ausgewählt nach',
  'The spread is that of': 'Die Spreizung gehört zu',
  'Repair {0} changes nothing.': 'Die Nacharbeit {0} ändert nichts.',
  'the unit would fail the same test again.': 'die Einheit fiele bei derselben Prüfung wieder durch.',
  'Add the step that cleans, laps, sets or renews something.':
    'Den Schritt ergänzen, der etwas reinigt, läppt, einstellt oder ersetzt.',
  'Repair {0} sends the unit out but does not book it in again.':
    'Die Nacharbeit {0} gibt die Einheit außer Haus, bucht sie aber nicht wieder ein.',
  'the sheet goes on to the test while the unit is at another shop.':
    'das Blatt geht zur Prüfung weiter, während die Einheit in einer anderen Werkstatt ist.',
  'Write “book-in” where it comes back.': '„book-in“ schreiben, wo sie zurückkommt.',
  '{0}, and nothing limits how often.': '{0}, und nichts begrenzt, wie oft.',
  'Repair {0} sends the unit to itself again': 'Die Nacharbeit {0} schickt die Einheit wieder zu sich selbst',
  'Repairs {0} send the unit to each other': 'Die Nacharbeiten {0} schicken einander die Einheit',
  'the unit may go around in circles and never return to its test.':
    'die Einheit kann im Kreis gehen und nie zu ihrer Prüfung zurückkommen.',
  'Write {0} (3 times), or as often as the shop allows.':
    '{0} (3 times) schreiben, oder so oft, wie die Werkstatt es erlaubt.',
  'Say how often it may be tried': 'Angeben, wie oft es versucht werden darf',
  'Nothing says how often {0} may be tried.': 'Nichts sagt, wie oft {0} versucht werden darf.',
  'a unit that cannot be brought into its limit would go around forever.':
    'eine Einheit, die sich nicht in ihren Grenzwert bringen lässt, ginge endlos im Kreis.',
  'a unit that keeps failing would go around forever.':
    'eine Einheit, die immer wieder durchfällt, ginge endlos im Kreis.',
  'Test {0} does not say how fast to work the lever.':
    'Die Prüfung {0} sagt nicht, wie schnell der Hebel zu betätigen ist.',
  'a good needle is silent at one speed and chatters at another, so each person would judge differently.':
    'eine gute Nadel ist bei einer Geschwindigkeit still und schnarrt bei einer anderen, also urteilte jeder anders.',
  'Write “at 20..60 strokes/min”, or the speed that the maker gives.':
    '„at 20..60 strokes/min“ schreiben, oder die Geschwindigkeit, die der Hersteller angibt.',
  'after the last': 'nach der letzten',
  'before the first': 'vor der ersten',
  'before the first and after the last': 'vor der ersten und nach der letzten',
  '{0} is not read {1} test at {2}.': '{0} wird {1} Prüfung nicht abgelesen ({2}).',
  'a tester that has drifted passes bad units and fails good ones, and nobody can say since when.':
    'ein verstelltes Prüfgerät lässt schlechte Einheiten bestehen und gute durchfallen, und niemand weiß, seit wann.',
  'Write “read {0}” {1} the tests.': '„read {0}“ {1} den Prüfungen schreiben.',
  'before and after': 'vor und nach',
  'This check says what is good, but not what is scrap.':
    'Diese Kontrolle sagt, was gut ist, aber nicht, was Ausschuss ist.',
  'two people sort the same face two ways.': 'zwei Leute sortieren dieselbe Fläche verschieden ein.',
  'Write “reject if "…"”, or “on fail” and what to do.':
    '„reject if "…"“ schreiben, oder „on fail“ und was zu tun ist.',
  'This check says what to lap and what is scrap, but not what is good as it is.':
    'Diese Kontrolle sagt, was geläppt wird und was Ausschuss ist, aber nicht, was so gut ist.',
  'faces that need no lapping get lapped.': 'Flächen werden geläppt, die es nicht brauchen.',
  'Write “reuse if "…"”.': '„reuse if "…"“ schreiben.',
  'This judges the {0}, and {1} touches nothing of {2}.':
    'Hier {en2, select, them {werden} other {wird}} {0} beurteilt, und die Nacharbeit {1} ändert daran nichts.',
  'the same part comes back to the same check, until the tries are used up.':
    'dasselbe Teil kommt zur selben Kontrolle zurück, bis die Versuche verbraucht sind.',
  'Name a repair that renews, laps, cleans or resets {0}.':
    'Eine Nacharbeit nennen, die {0} ersetzt, läppt, reinigt oder neu einstellt.',
  'one of them': 'eines davon',
  'The repair is here.': 'Hier steht die Nacharbeit.',
  'Repair {0} does not {1} the {2}.': 'In der Nacharbeit {0} fehlt „{1}“ für {2}.',
  'whoever is sent here trusts the name, and the unit goes back as it came.':
    'wer hierher geschickt wird, verlässt sich auf den Namen, und die Einheit geht zurück, wie sie kam.',
  'Write “{0} {1}” in it, or give it another name.': 'Darin „{0} {1}“ schreiben, oder ihr einen anderen Namen geben.',
  'Say what the work in your own words changes: do "…" to PARTS. If somebody else decides, write hold-for.':
    'Sagen, was die Arbeit in eigenen Worten ändert: do "…" to TEILE. Entscheidet jemand anderes, hold-for schreiben.',
};
