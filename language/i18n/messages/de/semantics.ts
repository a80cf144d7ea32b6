import type { Bundle } from '../bundle.ts';

export const semantics: Bundle = {
  'There is nothing to patch: this procedure is not written like another.':
    'Hier gibt es nichts abzuändern (patch): diese Anweisung ist nicht wie eine andere geschrieben.',
  'Two patches touch the same step: it would not be clear which comes first. Combine them into one.':
    'Zwei Änderungen (patch) betreffen denselben Schritt: es wäre unklar, welche zuerst kommt. Zu einer zusammenfassen.',
  'This step is in {0}, which another patch replaces or deletes: this patch would change nothing. Delete it, or put its steps there.':
    'Dieser Schritt ist in {0}, das ein anderer patch ersetzt oder löscht: dieser würde nichts ändern. Löschen, oder seine Schritte dorthin setzen.',
  'No step is called “{0}”. {1}': 'Kein Schritt heißt „{0}“. {1}',
  '{0} steps are called “{1}”. Say which: add the stage (in build), or (2) for the second.':
    '{0} Schritte heißen „{1}“. Angeben, welcher: den Arbeitsgang ergänzen (in build), oder (2) für den zweiten.',
  'A step is named by its verb, its first object and the stage: torque nut in build.':
    'Ein Schritt wird mit Verb, erstem Objekt und Arbeitsgang genannt: torque nut in build.',
  '{0} is written twice here. Delete one.': '{0} steht hier zweimal. Eines löschen.',
  'Both {0} and not {1} are written here: the sheet cannot warn of it and leave the caution out. Keep the one that is true.':
    'Hier stehen {0} und not {1}: das Blatt kann nicht zugleich warnen und die Warnung weglassen. Behalten, was stimmt.',
  'Cylinders are counted up from a whole number, at most {0} of them: write, for example, 1..6.':
    'Zylinder werden ab einer ganzen Zahl gezählt, höchstens {0}: zum Beispiel 1..6 schreiben.',
  'What {0} binds over': 'Die Dicke, über der {0} auf Block geht,',
  'no shim over it is given out': 'darüber wird keine Einstellscheibe ausgegeben',
  'Nothing can be drawn as {0}. Did you mean {1}?': 'Nichts lässt sich als {0} zeichnen. Ist {1} gemeint?',
  'Nothing can be drawn as {0}. Write one of {1}, or delete it: the drawing then has a plain turned piece.':
    'Nichts lässt sich als {0} zeichnen. Eines von {1} schreiben, oder löschen: die Zeichnung hat dann ein glattes Drehteil.',
  '{0} already meets {1}: a face meets one other face.':
    '{0} trifft schon auf {1}: eine Fläche trifft auf eine andere.',
  'A face belongs to a part: write, for example, body.{0}.':
    'Eine Fläche gehört zu einem Teil: zum Beispiel body.{0} schreiben.',
  '{0} does not say how much one turn in adds. Write a pressure per turn, above zero, such as 25 bar per turn. If a turn out raises it, leave the rate out and say so in a note.':
    '{0} sagt nicht, wie viel eine Umdrehung hinein bringt. Einen Druck je Umdrehung über null schreiben, zum Beispiel 25 bar per turn. Steigt er beim Herausdrehen, die Rate weglassen und es in einer Notiz sagen.',
  'Job {0} does not say which procedure it follows: add of PROCEDURE to its head.':
    'Der Auftrag {0} sagt nicht, welcher Anweisung er folgt: im Kopf of PROCEDURE ergänzen.',
  'Job {0} is not checked: {1} cannot be read yet. Correct what is reported there first.':
    'Der Auftrag {0} wird nicht geprüft: {1} ist noch nicht lesbar. Zuerst berichtigen, was dort gemeldet ist.',
  'Job {0} is at {1}, and {2} is written for {3}: its tools and stations are those of that shop. Write {4}, or name a procedure for {5}.':
    'Der Auftrag {0} ist in {1}, und {2} ist für {3} geschrieben: Werkzeuge und Arbeitsplätze sind die jener Werkstatt. {4} schreiben, oder eine Anweisung für {5} nennen.',
  'The job says that it is at revision {0}, and that it was moved from that one. Write the revision that it was moved from.':
    'Der Auftrag nennt Revision {0} und sagt, dass er von derselben umgestellt wurde. Die Revision schreiben, von der er umgestellt wurde.',
  'Job {0} is for revision {1}, but {2} is at revision {3}. Print from the revision that the job was taken in under, or write {4}.':
    'Der Auftrag {0} gilt für Revision {1}, aber {2} hat Revision {3}. Aus der Revision drucken, unter der der Auftrag angenommen wurde, oder {4} schreiben.',
  'Write whose it is: customer "…".': 'Schreiben, wem sie gehört: customer "…".',
  'Write why it is on hold: on hold "…". The certificate shows it to the customer.':
    'Schreiben, warum sie gesperrt ist: on hold "…". Das Zertifikat zeigt es dem Kunden.',
  'Units are counted 1, 2, 3 …, and {0} is not such a number: the sheet and the certificate name a unit by it. Write its place in the set.':
    'Einheiten werden 1, 2, 3 … gezählt, und {0} ist keine solche Zahl: Blatt und Zertifikat nennen die Einheit danach. Ihren Platz im Satz schreiben.',
  'Write why it has none: serial none "ground off". Nothing else leads from the unit to its papers.':
    'Schreiben, warum sie keine hat: serial none "ground off". Sonst führt nichts von der Einheit zu ihren Papieren.',
  'There are words after the serial {0}, and they would not be printed. Write them as a note, or serial none "{1}" where it has none.':
    'Nach der Seriennummer {0} stehen Wörter, die nicht gedruckt würden. Als Notiz schreiben, oder serial none "{1}", wenn sie keine hat.',
  'The serial is empty. Write what is on the body, or serial none "…" and why.':
    'Die Seriennummer ist leer. Schreiben, was auf dem Körper steht, oder serial none "…" und warum.',
  'Units {0} and {1} have the same serial, {2}: nobody could say later which readings belong to which. Read it again from both bodies.':
    'Die Einheiten {0} und {1} haben dieselbe Seriennummer, {2}: später könnte niemand sagen, welche Messwerte zu welcher gehören. An beiden Körpern noch einmal ablesen.',
  'Done on {0}, and the job was received on {1}: one of the two dates is wrong. Correct it.':
    'Gemacht am {0}, und der Auftrag wurde am {1} angenommen: eines der beiden Daten ist falsch. Berichtigen.',
  'More than {0} procedures are like {1}, and {2} is not checked. Variants that differ only in their figures are part numbers of one procedure: write number and its lines.':
    'Mehr als {0} Anweisungen sind wie {1}, und {2} wird nicht geprüft. Varianten, die sich nur in ihren Werten unterscheiden, sind Teilenummern einer Anweisung: number und seine Zeilen schreiben.',
  '{0} is not checked: it takes its steps from {1}, which is like {2}, and there is no procedure of that name. Correct it there.':
    '{0} wird nicht geprüft: die Schritte kommen aus {1}, das wie {2} ist, und eine Anweisung dieses Namens gibt es nicht. Dort berichtigen.',
  '{0}: a ring of like has no beginning, so {1} has no steps to check or print. Write out the steps of one of them.':
    '{0}: ein Ring aus like hat keinen Anfang, also hat {1} keine Schritte zum Prüfen oder Drucken. Die Schritte einer davon ausschreiben.',
  '{0} is like {1}, and so on through more than {2} procedures: nobody can follow that, and it is not checked. Make it like a procedure that is written out.':
    '{0} ist wie {1}, und so weiter über mehr als {2} Anweisungen: dem kann niemand folgen, und es wird nicht geprüft. Wie eine ausgeschriebene Anweisung machen.',
  '{0} is not a count: write a whole number, at least {1}, such as {2}.':
    '{0} ist keine Anzahl: eine ganze Zahl schreiben, mindestens {1}, zum Beispiel {2}.',
  '{0} is a {1}, and {2} is a {3}': '{0}: hier gehört {1} hin, und {2} ist {3}',
  '{0} cannot be {1}': '{0}: {1} kann nicht sein',
  '{0}: {1}. Write, for example, {2}.': '{0}: {1}. Zum Beispiel {2} schreiben.',
  '{0}: {1}. Check the number, its sign and its unit.': '{0}: {1}. Zahl, Vorzeichen und Einheit prüfen.',
  '{0} reaches {1}': '{0} reicht bis {1}',
  '{0} of {1} makes no sense: it must be more than zero. Check the number and its sign.':
    '{0} von {1} ergibt keinen Sinn: es muss mehr als null sein. Zahl und Vorzeichen prüfen.',
  'A spread': 'Eine Spreizung',
  'A spread of {0} has no upper end, so every set passes. Write the most that the units may differ: spread at most 5 bar.':
    'Eine Spreizung von {0} hat kein oberes Ende, also besteht jeder Satz. Schreiben, wie weit die Einheiten höchstens auseinanderliegen dürfen: spread at most 5 bar.',
  'A range has two ends: write, for example, 16..80 N·m.':
    'Ein Bereich hat zwei Enden: zum Beispiel 16..80 N·m schreiben.',
  '{0} goes from a {1} to a {2}: a scale has one kind of unit. Write both ends in the same unit.':
    '{0} mischt zwei Größen ({1} und {2}): eine Skala hat nur eine. Beide Enden in derselben Einheit schreiben.',
  '{0} has no length, and nothing can be read on such a scale. Write both ends, such as 16..80 N·m.':
    '{0} hat keine Länge, und auf so einer Skala lässt sich nichts ablesen. Beide Enden schreiben, zum Beispiel 16..80 N·m.',
  '{0} goes down: a scale is written from its lower end up. Write {1} if that is what you mean, and check the digits.':
    '{0} geht abwärts: eine Skala wird vom unteren Ende an geschrieben. {1} schreiben, wenn das gemeint ist, und die Ziffern prüfen.',
  'A standing tolerance has no nominal value: write, for example, ±10 %.':
    'Eine allgemeine Toleranz hat keinen Nennwert: zum Beispiel ±10 % schreiben.',
  'A tolerance has two sides: write {0} where the other side is nothing, or ±{1}.':
    'Eine Toleranz hat zwei Seiten: {0} schreiben, wenn die andere Seite nichts ist, oder ±{1}.',
  '{0} is not a step: it is {1} of the family. Put a comma before it if it belongs to the list, or a verb that says what to do with it.':
    '{0} ist kein Schritt, sondern {1} der Baureihe. Ein Komma davor setzen, wenn es zur Liste gehört, oder ein Verb, das sagt, was damit geschieht.',
  'a part': 'ein Teil',
  'a port': 'ein Anschluss',
  'Sequence {0} calls itself: it would never end. Delete the call.':
    'Die Schrittfolge {0} ruft sich selbst auf: sie würde nie enden. Den Aufruf löschen.',
  nothing: 'nichts',
  'Sequence {0} is called with {1}: give it {2}.': 'Die Schrittfolge {0} wird mit {1} aufgerufen: sie braucht {2}.',
  'one list': 'eine Liste',
  '{0} lists, separated by ;': '{0} Listen, durch ; getrennt',
  'Sequence {0} is called here.': 'Die Schrittfolge {0} wird hier aufgerufen.',
  '{0} takes one reading at a time: give {1} a step of its own.':
    '{0} nimmt jeweils einen Messwert: {1} einen eigenen Schritt geben.',
  'all is too vague after {0}: name the parts, or the bench hand has to guess.':
    'all ist nach {0} zu ungenau: die Teile nennen, sonst muss der Monteur raten.',
  'There is only one {0}: the family does not declare it “for each cylinder”. Write {1} without {2}.':
    'Es gibt nur ein {0}: in der Baureihe steht nicht „for each cylinder“. {1} ohne {2} schreiben.',
  'There is no {0} {1}: the family has {2} {3} to {4}.': 'Es gibt kein {0} {1}: die Baureihe hat {2} {3} bis {4}.',
  '{0} appears twice in this step. Delete one.': '{0} steht in diesem Schritt zweimal. Eines löschen.',
  'The time of a step': 'Die Zeit eines Schritts',
  'the time for the job is added up from it': 'daraus wird die Zeit für den Auftrag zusammengezählt',
  'except goes with all: write wash all … except ….': 'except gehört zu all: wash all … except … schreiben.',
  'A pressure difference': 'Eine Druckdifferenz',
  Air: 'Druckluft',
  'The length of an adapter': 'Die Länge eines Adapters',
  'what to set on the wrench is worked out from it': 'daraus wird die Einstellung des Schlüssels berechnet',
  'An adapter is at 0° to 180° to its wrench, but this says {0}: what to set cannot be worked out. Write, for example, at 90°.':
    'Ein Adapter steht in 0° bis 180° zum Schlüssel, hier steht aber {0}: die Einstellung lässt sich nicht berechnen. Zum Beispiel at 90° schreiben.',
  '{0} is a second limit of this step, which is held to one: it would be nowhere on the sheet. Delete one of the two, or give each a step of its own.':
    '{0} ist ein zweiter Grenzwert dieses Schritts, der nur einen hat: er stünde nirgends auf dem Blatt. Einen von beiden löschen, oder jedem einen eigenen Schritt geben.',
  'A ceiling': 'Eine Obergrenze',
  'nothing could be done below it': 'darunter ließe sich nichts machen',
  'A stretch': 'Eine Längung',
  'Write what holds the unit in quotes: in "{0}".': 'In Anführungszeichen schreiben, was die Einheit hält: in "{0}".',
  '{0} has no meaning after {1}. Delete it.': '{0} hat nach {1} keine Bedeutung. Löschen.',
  '{0} stands for one name here, and the call gives it several. Give {1} a call of its own.':
    '{0} steht hier für einen einzigen Namen, und der Aufruf gibt mehrere. {1} einen eigenen Aufruf geben.',
  '{0} is not a joint, and {1} closes over it: left loose, it would not be seen before this test. Write proves through {2}.':
    '{0} ist keine Verbindung, und {1} schließt darüber: bliebe es locker, wäre das vor dieser Prüfung nicht zu sehen. proves through {2} schreiben.',
  '“in {0}” has no meaning after {1}. Delete it.': '„in {0}“ hat nach {1} keine Bedeutung. Löschen.',
  'A hazard names its step by verb and first object, and is printed at each of those: delete the rest. Put a hazard for a single step before that step, without “for”.':
    'Eine Gefahr nennt ihren Schritt mit Verb und erstem Objekt und wird bei jedem davon gedruckt: den Rest löschen. Eine Gefahr für einen einzelnen Schritt davor setzen, ohne „for“.',
  'There is no signal word {0}, and the hazard would print as a WARNING. Write {1}.':
    'Es gibt kein Signalwort {0}, und die Gefahr würde als WARNING gedruckt. {1} schreiben.',
  'Sequence {0} does nothing with {1}: what a call gives it would be lost. Use it in a step, or delete it.':
    'Die Schrittfolge {0} macht nichts mit {1}: was ein Aufruf übergibt, ginge verloren. In einem Schritt verwenden, oder löschen.',
  '{0}: the joint would be tightened unevenly, or past its torque. Write passes that rise to the full torque, such as passes 50 % 75 % 100 %.':
    '{0}: die Verbindung würde ungleich oder über ihr Drehmoment angezogen. Durchgänge schreiben, die bis zum vollen Drehmoment steigen, zum Beispiel passes 50 % 75 % 100 %.',
  'A pass is a percentage of the torque or a torque, and {0} is a {1}':
    'Ein Durchgang ist ein Prozentsatz des Drehmoments oder ein Drehmoment, und {0} ist {1}',
  'A pass of {0} turns nothing': 'Ein Durchgang von {0} dreht nichts',
  'A pass of {0} is more than the whole torque': 'Ein Durchgang von {0} ist mehr als das ganze Drehmoment',
  'The passes mix percentages and torques ({0}, {1})': 'Die Durchgänge mischen Prozentsätze und Drehmomente ({0}, {1})',
  'The pass of {0} is no more than the one before it ({1})': 'Der Durchgang von {0} ist nicht mehr als der davor ({1})',
  '{0} takes this over here.': '{0} übernimmt es hier.',
  '{0} appears twice in the head of {1}. Delete one.': '{0} steht zweimal im Kopf von {1}. Eines löschen.',
  '{0} is not checked: it takes {1} from {2}, where it is missing or unknown. Correct it there, or add “{3}” here.':
    '{0} wird nicht geprüft: {1} kommt aus {2}, wo sie fehlt oder unbekannt ist. Dort berichtigen, oder hier „{3}“ ergänzen.',
  'its family': 'die Baureihe',
  'its shop': 'die Werkstatt',
  'for FAMILY': 'for FAMILY',
  'at SHOP': 'at SHOP',
  'neither says which family it is for nor at which shop it is done: add “for FAMILY at SHOP”':
    'sagt weder, für welche Baureihe sie ist, noch, in welcher Werkstatt sie ausgeführt wird: „for FAMILY at SHOP“',
  'does not say which family it is for: add “for FAMILY”': 'sagt nicht, für welche Baureihe sie ist: „for FAMILY“',
  'does not say at which shop it is done: add “at SHOP”':
    'sagt nicht, in welcher Werkstatt sie ausgeführt wird: „at SHOP“',
  'Procedure {0} {1} to its head. Until then the procedure is not checked.':
    'Die Anweisung {0} {1} im Kopf ergänzen. Bis dahin wird sie nicht geprüft.',
  'Procedure {0}': 'Die Anweisung {0}',
  'Sequence {0}': 'Die Schrittfolge {0}',
  '{0} has more than {1} steps once every sequence is expanded: nobody can follow that, and it is not checked. Have the sequences call one another less.':
    '{0} hat mit allen Schrittfolgen mehr als {1} Schritte: dem kann niemand folgen, und es wird nicht geprüft. Die Schrittfolgen einander seltener aufrufen lassen.',
  'This hazard is for “{0}”, and there is no such step. {1}':
    'Diese Gefahr ist für „{0}“, und so einen Schritt gibt es nicht. {1}',
  'Name the step by its verb and first object.': 'Den Schritt mit Verb und erstem Objekt nennen.',
  'Spec {0} is {1}, but a spring and a needle give the rate of a shim. Write “spec {2} rate from …”, or write the figure itself.':
    'Vorgabe {0} ist {1}, aber eine Feder und eine Nadel ergeben die Rate einer Einstellscheibe. „spec {2} rate from …“ schreiben, oder den Wert selbst.',
  'not declared as a rate': 'nicht als rate angegeben',
  'Spec {0} is written per {1}, and a spring and a needle give a rate per mm: the two do not go together. Write the rate of the spec in one unit, such as 96 bar per mm.':
    'Vorgabe {0} ist je {1} geschrieben, und eine Feder und eine Nadel ergeben eine Rate je mm: das passt nicht zusammen. Die Rate in einer einzigen Einheit schreiben, zum Beispiel 96 bar per mm.',
  '{0}, and {1} is a {2}: no rate follows from it. Write, for example, {3}.':
    '{0}, und {1} ist {2}: daraus folgt keine Rate. Zum Beispiel {3} schreiben.',
  'The stiffness of a spring is a force per length': 'Die Steifigkeit einer Feder ist eine Kraft je Länge',
  'A {0} has a diameter': 'Hier steht ein Durchmesser ({0})',
  '200 N/mm': '200 N/mm',
  '6 mm': '6 mm',
  'A spring with a stiffness of {0} presses no harder on a thicker shim: nothing could be set with it. Write the measured stiffness or the one on the drawing, such as 200 N/mm.':
    'Eine Feder mit einer Steifigkeit von {0} drückt auf eine dickere Einstellscheibe nicht stärker: damit ließe sich nichts einstellen. Die gemessene Steifigkeit oder die der Zeichnung schreiben, zum Beispiel 200 N/mm.',
  'The rate of this spring and needle is too large to calculate with. Check the units.':
    'Die Rate dieser Feder und Nadel ist zu groß zum Rechnen. Die Einheiten prüfen.',
  'Write what was found: as found opening 214 bar, or as found "…".':
    'Schreiben, was vorgefunden wurde: as found opening 214 bar, oder as found "…".',
  'Write the note in quotes.': 'Die Notiz in Anführungszeichen schreiben.',
  'Write what went in new: renewed spring, washer.': 'Schreiben, was neu eingebaut wurde: renewed spring, washer.',
  'Write done by and a name in quotes.': 'done by und einen Namen in Anführungszeichen schreiben.',
  'Write the torque that was set: torque nut 60 N·m.': 'Das eingestellte Drehmoment schreiben: torque nut 60 N·m.',
  'Nothing is tightened at {0}: it is not a joint of the family, and no step torques it. Name the part that is turned.':
    'An {0} wird nichts angezogen: es ist keine Verbindung der Baureihe, und kein Schritt zieht es an. Das Teil nennen, das gedreht wird.',
  'Write one part, “in” and its size: shim in 1.45 mm.': 'Ein Teil, „in“ und sein Maß schreiben: shim in 1.45 mm.',
  'Write the size: shim out 1.30 mm.': 'Das Maß schreiben: shim out 1.30 mm.',
  'Write what its maker calls it in quotes: {0} "L-7".':
    'In Anführungszeichen schreiben, wie der Hersteller es nennt: {0} "L-7".',
  'Write all of it: {0}.': 'Alles davon schreiben: {0}.',
  '“{0}” has no meaning after {1}. Write {2}.': '„{0}“ bedeutet nach {1} nichts. {2} schreiben.',
  'Something is missing of {0}. Write {1}.': 'Bei {0} fehlt etwas. {1} schreiben.',
  'A concession is for one reading, and {0} is read at each {1}: write at which behind it.':
    'Eine Sonderfreigabe gilt für einen einzelnen Messwert, und {0} wird an jeder Stelle abgelesen ({1}): dahinter schreiben, an welcher.',
  'This belongs to a unit: the intake is for what holds for the whole job. Write it under its unit.':
    'Das gehört zu einer Einheit: intake ist für das, was für den ganzen Auftrag gilt. Unter die Einheit schreiben.',
  'A note belongs to a unit. Write it there, or as complaint "…".':
    'Eine Notiz gehört zu einer Einheit. Dorthin schreiben, oder als complaint "…".',
  '“{0}” is not a result here.': '„{0}“ ist hier kein Ergebnis.',
  'Write what was read, or pass or fail.': 'Schreiben, was abgelesen wurde, oder pass oder fail.',
  '“{0}” is not a result here. Did you mean {1}?': '„{0}“ ist hier kein Ergebnis. Ist {1} gemeint?',
  '“{0}” belongs to no result here, and would be lost. Write the result that it belongs to before it, or delete it.':
    '„{0}“ gehört hier zu keinem Ergebnis und ginge verloren. Davor das Ergebnis schreiben, zu dem es gehört, oder löschen.',
  '{0} is a {1}, and a {2} is read here. Check the unit.':
    '{0} ist {1}, hier wird aber abgelesen: {2}. Die Maßeinheit prüfen.',
  'The shop says {0} twice: nobody knows which one counts. Delete one.':
    'Die Werkstatt sagt {0} zweimal: niemand weiß, was gilt. Eines davon löschen.',
  'The shop says twice how readings are accepted. Delete one.':
    'Die Werkstatt sagt zweimal, wie Messwerte angenommen werden. Eines löschen.',
  'Station {0} cannot be clean and {1} at the same time: split it into two stations.':
    'Der Arbeitsplatz {0} kann nicht zugleich clean und {1} sein: in zwei Arbeitsplätze teilen.',
  dirty: 'dirty',
  abrasive: 'abrasive',
  '{0} says “{1}” and gives the same fact again: nobody knows which one counts. Delete one.':
    '{0} sagt „{1}“ und gibt dieselbe Angabe noch einmal: niemand weiß, welche gilt. Eine löschen.',
  'The graduation of {0}': 'Der Teilstrich von {0}',
  'nothing could be read on it': 'daran ließe sich nichts ablesen',
  'The length of {0}': 'Die Länge von {0}',
  'what to set through an adapter is worked out from it': 'daraus wird die Einstellung mit Adapter berechnet',
  '{0} was calibrated on {1} and was due on {2}, before that: nothing that it reads could be certified. Correct one of the two dates.':
    '{0} wurde am {1} kalibriert und war am {2} fällig, also davor: nichts, was es anzeigt, ließe sich bescheinigen. Eines der beiden Daten berichtigen.',
  '{0} cannot be of class {1}: the class is how far a gauge may be off, in percent of its span (EN 837-1). Write the one on its dial, such as class 0.6 or class 1.6.':
    '{0} kann nicht Klasse {1} haben: die Klasse ist die zulässige Abweichung eines Manometers in Prozent der Messspanne (EN 837-1). Die auf dem Zifferblatt schreiben, zum Beispiel class 0.6 oder class 1.6.',
  'The error of {0}': 'Die Abweichung von {0}',
  'no tool is exact, and every limit read with it would be judged as if this one were':
    'kein Werkzeug ist exakt, und jeder damit abgelesene Grenzwert würde beurteilt, als wäre es dieses',
  'within 4 %, or within 0.003 mm': 'within 4 % oder within 0.003 mm',
  '{0} could be off by as much as it reads: within {1} says nothing about it. Look the figure up on its calibration sheet.':
    '{0} könnte um so viel abweichen, wie es anzeigt: within {1} sagt nichts darüber. Den Wert im Kalibrierschein nachschlagen.',
  '{0} {1} {2}, and its whole scale is {3} long: one of the two is wrong. Check the digits and the units.':
    '{0} {1} {2}, und die ganze Skala ist {3} lang: eines von beiden ist falsch. Ziffern und Einheiten prüfen.',
  'may be off by': 'darf abweichen um',
  'has a mark only every': 'hat einen Teilstrich nur alle',
  'The shop gives the limit for compressed air twice. Delete one.':
    'Die Werkstatt gibt den Grenzwert für Druckluft zweimal an. Einen löschen.',
  'The limit of the shop for compressed air': 'Der Grenzwert der Werkstatt für Druckluft',
  'every blow-dry is checked against it': 'jedes Trockenblasen wird danach beurteilt',
  '{0} is not in the calendar: write the date as year-month-day.':
    '{0} steht nicht im Kalender: das Datum als Jahr-Monat-Tag schreiben.',
  'is a temperature, and {0} is a {1}': 'ist eine Temperatur, und {0} ist {1}',
  'cannot be {0}: flash points of liquids range from {1}':
    'kann nicht {0} sein: Flammpunkte von Flüssigkeiten liegen bei {1}',
  'The flash point of {0} {1}. Baths and cautions are judged by it: take it from the safety data sheet, such as flammable 62 °C.':
    'Der Flammpunkt von {0} {1}. Bäder und Warnungen werden danach beurteilt: aus dem Sicherheitsdatenblatt nehmen, zum Beispiel flammable 62 °C.',
  'Stock {0} has {1} twice: nobody knows which count is meant. Write it once, with the total count.':
    'Der Vorrat {0} hat {1} zweimal: niemand weiß, welche Stückzahl gilt. Einmal schreiben, mit der Gesamtzahl.',
  'The step of stock {0}': 'Die Stufe des Vorrats {0}',
  'A size of stock {0}': 'Ein Maß des Vorrats {0}',
  'shims are chosen by their thickness': 'Einstellscheiben werden nach ihrer Dicke ausgewählt',
  'goes from {0} to {1}: the first size must be less than the last':
    'geht von {0} bis {1}: das erste Maß muss kleiner sein als das letzte',
  'has a step of {0}, which is more than the distance from {1} to {2}: it would have one size only':
    'hat eine Stufe von {0}, mehr als der Abstand von {1} bis {2}: er hätte nur ein Maß',
  'Stock {0} {1}. Check the digits and the units.': 'Der Vorrat {0} {1}. Ziffern und Einheiten prüfen.',
  'has more than 10000 sizes: the step is too small': 'hat mehr als 10000 Maße: die Stufe ist zu klein',
  'The size of a shim': 'Das Maß einer Einstellscheibe',
  'Shims come in whole numbers, and {0} is not a count. Write a whole number, 0 if there is none, or leave out the count if there are always enough.':
    'Einstellscheiben gibt es in ganzen Stückzahlen, und {0} ist keine. Eine ganze Zahl schreiben, 0 wenn keine da ist, oder die Stückzahl weglassen, wenn immer genug da sind.',
  'The shop gives the tolerance of a {0} twice. Delete one.':
    'Die Werkstatt gibt die Toleranz für {0} zweimal an. Eine löschen.',
  'A {0} cannot have a tolerance of {1}: {2} is a {3}. Write it in percent, or in a unit of {4}.':
    'Hier ({0}) passt eine Toleranz von {1} nicht: {2} ist {3}. In Prozent schreiben, oder in einer passenden Einheit ({4}).',
  'A tolerance of {0} lets no reading through. Write what the shop works to, such as ±10 %.':
    'Eine Toleranz von {0} lässt keinen Messwert bestehen. Schreiben, wonach die Werkstatt arbeitet, zum Beispiel ±10 %.',
  'A tolerance of {0} reaches down to zero, which is no tolerance. Check the digits.':
    'Eine Toleranz von {0} reicht bis null, und das ist keine Toleranz. Die Ziffern prüfen.',
  'The joint gives its class twice. Delete one.': 'Die Verbindung gibt ihre Klasse zweimal an. Eine löschen.',
  'There is no property class {0}: write the one marked on the head or the end of the bolt, {1}.':
    'Die Festigkeitsklasse {0} gibt es nicht: die auf dem Kopf oder am Ende der Schraube schreiben, {1}.',
  'What a bolt can take is calculated from its thread: write it before “solid class”, like "M8x1.25", or "M8" for the coarse pitch.':
    'Was eine Schraube aushält, wird aus dem Gewinde berechnet: es vor „solid class“ schreiben, wie "M8x1.25", oder "M8" für Regelgewinde.',
  '“{0}” is not read as a metric thread, and only ISO metric threads are judged by their class: write it with its pitch, like "M8x1.25" ("M8" alone is the coarse one, M3 to M36). Leave “solid class” out for inch threads.':
    '„{0}“ wird nicht als metrisches Gewinde gelesen, und nur metrische ISO-Gewinde werden nach der Klasse beurteilt: mit Steigung schreiben, wie "M8x1.25" ("M8" allein ist Regelgewinde, M3 bis M36). Bei Zollgewinden „solid class“ weglassen.',
  '{0} has {1} in it, so it is hollow: it has less metal than its thread suggests, and its torque cannot be judged by the thread. Leave “solid class” out.':
    'In {0} steckt {1}, es ist also hohl: es hat weniger Material, als das Gewinde vermuten lässt, und sein Drehmoment lässt sich nicht danach beurteilen. „solid class“ weglassen.',
  'The second quantity of rate {0}': 'Die zweite Größe der Rate {0}',
  'no shim change has such an effect, and none could be calculated':
    'kein Wechsel der Einstellscheibe wirkt so, und keiner ließe sich berechnen',
  'The rate of {0}': 'Die Rate von {0}',
  'A new spring loses pressure as it settles, and {0}{1} says that it gains: the unit would be set too low. Write the loss: settling {2}.':
    'Eine neue Feder verliert beim Setzen Druck, und {0}{1} sagt, dass sie gewinnt: die Einheit würde zu niedrig eingestellt. Den Verlust schreiben: settling {2}.',
  'Spec {0} is a {1}, and {2} is a {3}: nobody can set a unit higher by that. Write what a new spring loses of this {4}.':
    'Vorgabe {0} ist {1}, und {2} ist {3}: niemand kann eine Einheit um so viel höher einstellen. Schreiben, was eine neue Feder verliert ({4}).',
  'Here {0} is called {1}. Write {2}.': 'Hier heißt {0}: {1}. {2} schreiben.',
  '{0} is a word of the language: a sequence of that name cannot be called. Give the sequence another name.':
    '{0} ist ein Wort der Sprache: eine Schrittfolge dieses Namens lässt sich nicht aufrufen. Der Schrittfolge einen anderen Namen geben.',
  '{0} continues a statement, and there is none before it. Write that statement above, or delete this.':
    '{0} setzt eine Angabe fort, und davor steht keine. Diese darüber schreiben, oder dies löschen.',
  'Delete the line, or begin it with a word of the language.':
    'Die Zeile löschen, oder mit einem Wort der Sprache beginnen.',
  'No such step or word: {0}. {1}': 'Diesen Schritt oder dieses Wort gibt es nicht: {0}. {1}',
  'The family lists no cylinders, so nobody knows how many of these there are. Write places cylinder 1..6 in the family, or for each cylinder 1..6 here.':
    'Die Baureihe nennt keine Zylinder, also weiß niemand, wie viele es davon gibt. In der Baureihe places cylinder 1..6 schreiben, oder hier for each cylinder 1..6.',
  'a spec: write “to {0}” behind a torque, “within {1}” behind what is read':
    'ein Sollwert: „to {0}“ hinter ein Anzugsmoment schreiben, „within {1}“ hinter das, was abgelesen wird',
  'a fluid of the shop: write “in {0}”': 'eine Flüssigkeit der Werkstatt: „in {0}“ schreiben',
  'a tool of the shop: write “with {0}”': 'ein Werkzeug der Werkstatt: „with {0}“ schreiben',
  'a station of the shop: write “at {0}”': 'ein Arbeitsplatz der Werkstatt: „at {0}“ schreiben',
  '{0} is not a step: it is {1}.': '{0} ist kein Schritt, sondern {1}.',
  'Places are counted up, at most {0} of them: write, for example, places {1} 1..6.':
    'Stellen werden aufwärts gezählt, höchstens {0}: zum Beispiel places {1} 1..6 schreiben.',
  'there is no {0} {1}': '{0} {1} gibt es nicht',
  '{0} {1} is in it twice': '{0} {1} steht zweimal darin',
  '{0} {1} is not in it': '{0} {1} fehlt',
  'This order does not go through every {0} once: {1}. Write each of {2} in the order in which they follow each other.':
    'Diese Reihenfolge nennt nicht jede Stelle ({0}) genau einmal: {1}. Alle schreiben ({2}), in der Reihenfolge, in der sie aufeinanderfolgen.',
  'The family lists no places, so nobody knows where each {0} is. Write in the family, for example, places {1} 1..6.':
    'Die Baureihe nennt keine Stellen, also weiß niemand, wo each {0} ist. In der Baureihe zum Beispiel places {1} 1..6 schreiben.',
  'There is no {0} {1}: the family has {2} {3}.': '{0} {1} gibt es nicht: die Baureihe hat {2} {3}.',
  'Nobody knows from which place “per place in order” is counted. Write, for example, at each cylinder from cylinder 1.':
    'Niemand weiß, von welcher Stelle an „per place in order“ gezählt wird. Zum Beispiel at each cylinder from cylinder 1 schreiben.',
  'A spread lies between several places of one unit, and this is read at one. Write at each and the places, or across the set to compare the units.':
    'Eine Spreizung liegt zwischen mehreren Stellen einer Einheit, und hier wird an einer abgelesen. at each und die Stellen schreiben, oder across the set, um die Einheiten zu vergleichen.',
  'Point {0} says this twice. Delete one.': 'Bei Punkt {0} steht das zweimal. Eines löschen.',
  'No language has the code {0}, so a reader program cannot speak these words right. Write the code of ISO 639: en, es, de, pt, fr.':
    'Keine Sprache hat das Kürzel {0}, also kann ein Vorleseprogramm diese Wörter nicht richtig aussprechen. Das Kürzel nach ISO 639 schreiben: en, es, de, pt, fr.',
  '{0} is read once, and at no place.': '{0} wird nur einmal abgelesen, an keiner bestimmten Stelle.',
  '{0} is read at {1}: write at which, behind its name.':
    '{0} wird an mehreren Punkten abgelesen ({1}): hinter dem Namen schreiben, an welchem.',
  '“{0}” is no part of this result.{1}': '„{0}“ gehört nicht zu diesem Ergebnis.{1}',
  ' Behind the figure goes at {0}, and which.': ' Hinter den Wert gehört at {0}, und welche Stelle.',
  'Write which {0}: {1}.': 'Die Stelle schreiben ({0}): {1}.',
  'the others are read from {0} {1}, so it has no reading':
    'von {0} {1} aus werden die anderen abgelesen, also gibt es dort keinen Messwert',
  '{0} is read at no place, and {1} is none': '{0} wird an keiner bestimmten Stelle abgelesen, und {1} ist keine',
  'There is no {0} {1}: they are {2}': 'es gibt {0} {1} nicht, nur {2}',
  '{0} is read at each {1}: write one figure for each of {2}, separated by commas, or at which behind the figure.':
    '{0} wird an jeder Stelle abgelesen ({1}): je einen Wert für {2} schreiben, durch Kommas getrennt, oder hinter den Wert, an welcher.',
  '{0} is one figure here, and these are {1}.': '{0} ist hier ein einziger Wert, und es stehen {1} da.',
  'These are {0} figures, and {1} are read: one for each {2}, {3}.':
    'Hier stehen {0} Werte, und {1} werden abgelesen: je einer für {2} {3}.',
  '{0} is written down at each {1}: write at which behind it, one to a line.':
    '{0} wird an jeder Stelle notiert ({1}): dahinter schreiben, an welcher, jede in einer eigenen Zeile.',
  'Nothing is written between the quotes.': 'Zwischen den Anführungszeichen steht nichts.',
  '“{0}” is none of the words to choose from. Write {1}.': '„{0}“ steht nicht zur Auswahl. {1} schreiben.',
  '“{0}” is no code of {1} {2}. Read it again and write it whole, without blanks.':
    '„{0}“ ist kein Code aus {1} {2}. Noch einmal ablesen und ganz schreiben, ohne Leerzeichen.',
  'What {0} was found with': 'Die vorgefundene Abweichung von {0}',
  'which readings were in doubt is worked out from it': 'daraus wird berechnet, welche Messwerte zweifelhaft waren',
  '{0} was found {1} off at {2}, and the two measure different things. Write both as it reads them: found 3 bar high at 250 bar.':
    'Bei {0} wurde eine Abweichung von {1} bei {2} gefunden, und das sind zwei verschiedene Größen. Beide schreiben, wie sie angezeigt werden: found 3 bar high at 250 bar.',
  '{0} has no meaning after {1}. Write it before, if it belongs to the step, or delete it.':
    '{0} hat hinter {1} keine Bedeutung. Davor schreiben, wenn es zum Schritt gehört, oder löschen.',
  'not {0}': 'not {0}',
  'What follows {0} is a {1}, and {2} is a {3}. Write it before {4}, if it belongs to the step.':
    'Hinter {0} steht eine Größe der Art {1}, und {2} ist von der Art {3}. Vor {4} schreiben, wenn es zum Schritt gehört.',
  'The weight of a part': 'Das Gewicht eines Teils',
  'it says whether the part is lifted by hand': 'es sagt, ob das Teil von Hand gehoben wird',
  'No material is called {0}. Did you mean {1}?': 'Kein Werkstoff heißt {0}. Gemeint war {1}?',
  'No material is called {0}. Write one of {1}, or delete it: nothing follows from another.':
    'Kein Werkstoff heißt {0}. Einen von {1} schreiben oder löschen: aus einem anderen folgt nichts.',
  '{0} is told apart by cylinder and by side, and a step could not say which is meant. Write a part for each side, each of them for each cylinder.':
    '{0} wird nach Zylinder und nach Seite unterschieden, und ein Schritt könnte nicht sagen, welches gemeint ist. Für jede Seite ein Teil schreiben, jedes davon for each cylinder.',
  '{0} has the same side twice. Give each side a name of its own, or write quantity {1} if they are all alike.':
    '{0} hat dieselbe Seite zweimal. Jeder Seite einen eigenen Namen geben, oder quantity {1} schreiben, wenn alle gleich sind.',
  '{0} has one side only, which tells nothing apart. Name all sides: sides left, right.':
    '{0} hat nur eine Seite, und die unterscheidet nichts. Alle Seiten nennen: sides left, right.',
  '{0} is told apart by side, not by number. Write {1}, or {2} for all of them.':
    '{0} wird nach Seite unterschieden, nicht nach Nummer. {1} schreiben, oder {2} für alle.',
  '“figures from” is written twice here, and a figure cannot come from both. Delete one, and write “source "…"” at the figures that are from elsewhere.':
    '„figures from“ steht hier zweimal, und eine Angabe kann nicht aus beidem stammen. Eines löschen, und „source "…"“ zu den Angaben schreiben, die woandersher stammen.',
  '“then wash in {0}” belongs to lapping, which leaves paste: it has no meaning after {1}. Delete it, or write a repair that washes.':
    '„then wash in {0}“ gehört zum Läppen, das Paste hinterlässt: nach {1} hat es keine Bedeutung. Löschen, oder eine Nacharbeit schreiben, die wäscht.',
  'In {0} nothing carries {1} together: taken off as one, it would fall apart. Name the part that they rest on too, or say in the family what they rest on.':
    'In {0} trägt nichts {1} zusammen: als Ganzes abgenommen fiele es auseinander. Auch das Teil nennen, auf dem sie sitzen, oder in der Familie sagen, worauf sie sitzen.',
  '{0} is an assembly, and {1} is done to single parts: name those that are meant, of {2}.':
    '{0} ist eine Baugruppe, und {1} wird an einzelnen Teilen gemacht: die gemeinten nennen, aus {2}.',
  '{0} goes in from below and from above: nobody knows at which end to look for it. Delete one.':
    '{0} geht von unten und von oben hinein: niemand weiß, an welchem Ende es zu suchen ist. Eines löschen.',
};
