import type { Bundle } from '../bundle.ts';

export const cli: Bundle = {
  '… and {0} more.': '… und {0} weitere.',
  error: 'Fehler',
  warning: 'Warnung',
  'step {0}': 'Schritt {0}',
  '{0} file checked': '{0} Datei geprüft',
  '{0} files checked': '{0} Dateien geprüft',
  '{0} error': '{0} Fehler',
  '{0} errors': '{0} Fehler',
  '{0} warning': '{0} Warnung',
  '{0} warnings': '{0} Warnungen',
  '{0}: nothing found.': '{0}: keine Befunde.',
  '{0} changes the severity of {1} finding or turns it off.':
    '{0} ändert die Schwere von {1} Befund oder schaltet ihn ab.',
  '{0} changes the severity of {1} findings or turns them off.':
    '{0} ändert die Schwere von {1} Befunden oder schaltet sie ab.',
  'For more on the first: npx handtight explain {0}': 'Mehr zum ersten: npx handtight explain {0}',
  'For more on {0}: npx handtight explain {1}': 'Mehr zu {0}: npx handtight explain {1}',
  '{0} cannot be read: {1}': '{0} ist nicht lesbar: {1}',
  '{0} is not as it was written, so no certificate is printed from it. Take it back from a backup.':
    '{0} ist nicht mehr so, wie es geschrieben wurde, also wird daraus kein Zertifikat gedruckt. Aus einer Sicherung zurückholen.',
  'Job {0} is not certified. What is missing:': 'Auftrag {0} wird nicht zertifiziert. Es fehlt:',
  'Add it to the job, put a unit on hold, or print with --draft, which marks every page and lists what is missing.':
    'Im Auftrag ergänzen, eine Einheit zurückstellen, oder mit --draft drucken: das kennzeichnet jede Seite und nennt, was fehlt.',
  'No safe fix is left to make.': 'Es bleibt keine sichere Korrektur zu machen.',
  'would fix': 'würde korrigiert',
  'Job {0} is not closed. What is open:': 'Auftrag {0} wird nicht geschlossen. Offen ist:',
  'Add it to the job, or put a unit on hold.': 'Im Auftrag ergänzen, oder eine Einheit zurückstellen.',
  'Job {0} is closed: {1} of {2}. A record is never changed. Where its certificate has to be issued once more, give the reason: --reissue "…".':
    'Auftrag {0} ist geschlossen: {1} vom {2}. Ein Protokoll wird nie geändert. Muss das Zertifikat noch einmal ausgestellt werden, den Grund angeben: --reissue "…".',
  'Job {0} was not closed before, so there is nothing to reissue. Leave --reissue out.':
    'Auftrag {0} wurde noch nicht geschlossen, also gibt es nichts neu auszustellen. --reissue weglassen.',
  '{0} was written in the meantime. See whether the job is closed now.':
    '{0} wurde inzwischen geschrieben. Prüfen, ob der Auftrag schon geschlossen ist.',
  'Closed: job {0}, {1}': 'Geschlossen: Auftrag {0}, {1}',
  'Closed: job {0}, {1}, signed': 'Geschlossen: Auftrag {0}, {1}, signiert',
  'the procedure: revision {0} of {1} is not issued, so it could be changed under the record. Issue it first: npx handtight issue {2}.':
    'die Anweisung: Revision {0} von {1} ist nicht freigegeben, also könnte sie nachträglich geändert werden. Zuerst freigeben: npx handtight issue {2}.',
  '(none)': '(keine)',
  'the settings: {0}': 'die Einstellungen: {0}',
  '{0} is not as it was written, so nobody can say whether the job is closed. Take it back from a backup. npx handtight verify {1} lists all that was changed.':
    '{0} ist nicht mehr so, wie es geschrieben wurde, also kann niemand sagen, ob der Auftrag geschlossen ist. Aus einer Sicherung zurückholen. npx handtight verify {1} nennt alles, was geändert wurde.',
  'Closed: job {0}, {1}. Its closing was interrupted, and is complete now.':
    'Geschlossen: Auftrag {0}, {1}. Das Schließen war unterbrochen und ist jetzt vollständig.',
  '{0} is no private key of Ed25519 in PEM. Make one with: openssl genpkey -algorithm ed25519 -out shop.pem':
    '{0} ist kein privater Ed25519-Schlüssel in PEM. Einen erzeugen mit: openssl genpkey -algorithm ed25519 -out shop.pem',
  '{0} is not in the calendar. Write the date as year-month-day.':
    '{0} gibt es im Kalender nicht. Das Datum als Jahr-Monat-Tag schreiben.',
  'This is a defect of Handtight {0}, not a mistake of yours: {1}. No file was left half-written. Please report it with the command and the files; {2}=1 before the command shows where it happened.':
    'Das ist ein Fehler von Handtight {0}, nicht Ihrer: {1}. Keine Datei ist halb geschrieben. Bitte melden Sie ihn mit dem Befehl und den Dateien; {2}=1 vor dem Befehl zeigt, wo er auftrat.',
  'References: {0}.': 'Verweise: {0}.',
  'In Handtight since {0}.': 'In Handtight seit {0}.',
  'To list them all: npx handtight explain': 'Alle auflisten: npx handtight explain',
  'The page of {0} is missing from this installation ({1}). Install it again.':
    'Die Seite zu {0} fehlt in dieser Installation ({1}). Neu installieren.',
  'After {0} rounds there is still something to fix. This is a defect of Handtight: please report it, with the files.':
    'Nach {0} Durchgängen ist immer noch etwas zu korrigieren. Das ist ein Fehler von Handtight: bitte melden Sie ihn, mit den Dateien.',
  'As long as a line cannot be read, nothing else of its file is fixed. Correct it, and run the command again.':
    'Solange eine Zeile nicht lesbar ist, wird in ihrer Datei sonst nichts korrigiert. Die Zeile berichtigen und den Befehl noch einmal ausführen.',
  'As long as a file cannot be read, no name is corrected: it may be declared in that file.':
    'Solange eine Datei nicht lesbar ist, wird kein Name korrigiert: er könnte darin angegeben sein.',
  '{0} of {1} files were written.': '{0} von {1} Dateien wurden geschrieben.',
  '{0} changed while it was read, and is left as it is. Run the command again.{1}':
    '{0} wurde während des Lesens geändert und bleibt, wie sie ist. Den Befehl noch einmal ausführen.{1}',
  'not laid out': 'nicht formatiert',
  '{0} Correct it, and run the command again.': '{0} Berichtigen und den Befehl noch einmal ausführen.',
  'not read': 'nicht gelesen',
  'would lay out': 'würde formatiert',
  'laid out': 'formatiert',
  'The file is laid out.': 'Die Datei ist richtig formatiert.',
  'All {0} files are laid out.': 'Alle {0} Dateien sind richtig formatiert.',
  '{0} is not issued.': '{0} wird nicht freigegeben.',
  'Revision {0} of {1} is issued already, and is the same: {2}':
    'Revision {0} von {1} ist schon freigegeben, und ist dieselbe: {2}',
  '{0} is in the way: it is there, and is not this revision. Where it was changed, take it back from version control; else move it away.':
    '{0} ist im Weg: die Datei gibt es, und sie ist nicht diese Revision. Wurde sie geändert, aus der Versionsverwaltung zurückholen; sonst verschieben.',
  'Issued: revision {0} of {1}, {2}': 'Freigegeben: Revision {0} von {1}, {2}',
  'It has no revision, so no job could name it. Write one into the head of {0}: revision A.':
    'Sie hat keine Revision, also könnte kein Auftrag sie nennen. Eine in den Kopf von {0} schreiben: revision A.',
  'Nobody has approved it, or the day is missing: what is issued is what the bench works by. Write approved by "…" on the day, as year-month-day, into its head.':
    'Niemand hat sie genehmigt, oder der Tag fehlt: nach dem Freigegebenen wird gearbeitet. approved by "…" on und den Tag, als Jahr-Monat-Tag, in den Kopf schreiben.',
  'It is approved on {0}, which is after today, {1}. Correct the day; with --today, where the clock of this machine is wrong.':
    'Sie ist am {0} genehmigt, das ist nach heute, {1}. Den Tag berichtigen; mit --today, wenn die Uhr dieses Rechners falsch geht.',
  'The job in {0} cannot be read. Line {1}: {2} Run npx handtight check {3} for all of it.':
    'Der Auftrag in {0} ist nicht lesbar. Zeile {1}: {2} Alles zeigt npx handtight check {3}.',
  'Job {0} has no unit {1}. Its units: {2}.': 'Auftrag {0} hat keine Einheit {1}. Seine Einheiten: {2}.',
  'Job {0} is not certified, so it has no such label.':
    'Auftrag {0} ist nicht zertifiziert, also gibt es dieses Etikett nicht.',
  'Add what is missing to the job.': 'Im Auftrag ergänzen, was fehlt.',
  'No unit of job {0} has a label: every one is on hold.':
    'Keine Einheit von Auftrag {0} hat ein Etikett: alle sind zurückgestellt.',
  '{0} by {1} mm is too small for these words in type that can be read. Take larger labels with --size.':
    '{0} mal {1} mm ist für diese Worte in lesbarer Schrift zu klein. Mit --size größere Etiketten nehmen.',
  '{0}: no font has {1}, which print as empty boxes.': '{0}: keine Schrift hat {1}; gedruckt wird ein leeres Kästchen.',
  '{0}: 1 label': '{0}: 1 Etikett',
  '{0}: {1} labels': '{0}: {1} Etiketten',
  'Nothing is recorded of {0}: no closed job has it as serial, number, customer or renewed part.':
    'Zu {0} ist nichts verzeichnet: kein geschlossener Auftrag hat das als Seriennummer, Nummer, Kunde oder erneuertes Teil.',
  '{0} is a {1}: all units of it are listed.': '{0} gefunden als {1}: alle Einheiten dazu sind aufgeführt.',
  customer: 'Kunde',
  received: 'angeliefert',
  '{0} revision {1}': '{0} Revision {1}',
  'on hold': 'zurückgestellt',
  'as found': 'Anlieferung',
  renewed: 'erneuert',
  batches: 'Chargen',
  'on record': 'eingetragen',
  'done by': 'ausgeführt von',
  certificate: 'Zertifikat',
  '{0}, issue {1}': '{0}, Ausgabe {1}',
  'job {0}, unit {1}: {2} (no serial)': 'Auftrag {0}, Einheit {1}: {2} (ohne Seriennummer)',
  'job {0}, unit {1}: {2} {3}': 'Auftrag {0}, Einheit {1}: {2} {3}',
  pass: 'bestanden',
  fail: 'nicht bestanden',
  '{0} (limit {1})': '{0} (Grenzwert {1})',
  '{0} on {1}': '{0} mit {1}',
  'Say what is in question: --tool PG-400, --batch L-7, --by "…" or --procedure NAME, and the days with --from and --to.':
    'Angeben, was in Frage steht: --tool PG-400, --batch L-7, --by "…" oder --procedure NAME, und die Tage mit --from und --to.',
  'A revision is one of a procedure: give --procedure NAME too.':
    'Eine Revision gehört zu einer Anweisung: auch --procedure NAME angeben.',
  '--from {0} is after --to {1}. Turn them around.': '--from {0} ist nach --to {1}. Die beiden vertauschen.',
  day: 'Tag',
  number: 'Nummer',
  serial: 'Seriennummer',
  what: 'was',
  reading: 'Messwert',
  limit: 'Grenzwert',
  'inside by': 'Abstand',
  by: 'von',
  '1 result': '1 Ergebnis',
  '{0} results': '{0} Ergebnisse',
  '1 unit': '1 Einheit',
  '{0} units': '{0} Einheiten',
  '1 job': '1 Auftrag',
  '{0} jobs': '{0} Aufträge',
  '1 customer': '1 Kunde',
  '{0} customers': '{0} Kunden',
  'Nothing was judged so.': 'So wurde nichts beurteilt.',
  '{0} of {1}, {2}, {3}.': '{0}: {1}, {2}, {3}.',
  '--within {0} cannot be read: {1}': '--within {0} ist nicht lesbar: {1}',
  'write a figure and its unit, such as "3 bar".': 'einen Wert und seine Einheit schreiben, zum Beispiel "3 bar".',
  'No closed job has --{0} {1}. {2}': 'Kein geschlossener Auftrag hat --{0} {1}. {2}',
  'No unit was closed so.': 'So wurde keine Einheit geschlossen.',
  month: 'Monat',
  units: 'Einheiten',
  'passed at once': 'sofort bestanden',
  'as found still good': 'bei Anlieferung noch gut',
  'came back, by cause': 'Rückläufer, nach Ursache',
  'Job {0} cannot be read. Run npx handtight check.': 'Auftrag {0} ist nicht lesbar. npx handtight check ausführen.',
  'No job is open.': 'Kein Auftrag ist offen.',
  missing: 'fehlt',
  file: 'Datei',
  'There are no records in {0}: no job was closed there. Give their folder with --records, or close a job: npx handtight close JOB.':
    'In {0} gibt es keine Protokolle: dort wurde kein Auftrag geschlossen. Ihren Ordner mit --records angeben, oder einen Auftrag schließen: npx handtight close NUMMER.',
  '{0} declares no {1} that can be used. Run npx handtight check {2}, or give a name. {3}':
    '{0} gibt nichts Brauchbares an ({1}). npx handtight check {2} ausführen, oder einen Namen angeben. {3}',
  'No {0} is called {1}. {2}': '{0} {1} gibt es nicht. {2}',
  'There are: {0}.': 'Es gibt: {0}.',
  none: 'keine',
  'There is a job {0} already. Give the next number.': 'Auftrag {0} gibt es schon. Die nächste Nummer angeben.',
  '{0} has no part number {1}. It has: {2}.': '{0} hat keine Teilenummer {1}. Es gibt: {2}.',
  'One unit': 'Eine Einheit',
  'Set of {0}': 'Satz von {0}',
  'Serial {0} is in job {1} too, which is not closed.':
    'Seriennummer {0} ist auch in Auftrag {1}, der nicht geschlossen ist.',
  'Serial {0} was here before: job {1}, closed {2}, {3}. For all of it: npx handtight history {4}':
    'Seriennummer {0} war schon hier: Auftrag {1}, geschlossen am {2}, {3}. Alles dazu: npx handtight history {4}',
  '“{0}” is nothing that can be begun: write new procedure, new family, new job or new samples. {1}':
    '“{0}” lässt sich nicht beginnen: new procedure, new family, new job oder new samples schreiben. {1}',
  'Families that come with the program, to begin from:': 'Baureihen, die das Programm zum Anfangen mitbringt:',
  'npx handtight new procedure FAMILY   writes a first procedure for one of these, or for a family of this folder\nnpx handtight new family NAME --parts body,spring,plug   writes a family of your own\nnpx handtight new job NUMBER --of PROCEDURE --units 6   writes the job of an order that has come in\nnpx handtight new samples FOLDER     copies all of them, with their procedures and jobs':
    'npx handtight new procedure BAUREIHE   schreibt eine erste Anweisung für eine davon, oder für eine Baureihe dieses Ordners\nnpx handtight new family NAME --parts body,spring,plug   schreibt eine eigene Baureihe\nnpx handtight new job NUMMER --of ANWEISUNG --units 6   schreibt den Auftrag zu einer Bestellung, die eingegangen ist\nnpx handtight new samples ORDNER     kopiert alle, mit ihren Anweisungen und Aufträgen',
  'No family is called {0}. {1} To write one of your own: npx handtight new family {2} --parts body,spring,plug':
    'Keine Baureihe heißt {0}. {1} Eine eigene schreiben: npx handtight new family {2} --parts body,spring,plug',
  'A family has at least two parts. Name them in the order in which they are built: --parts body,spring,plug':
    'Eine Baureihe hat mindestens zwei Teile. In der Reihenfolge des Zusammenbaus nennen: --parts body,spring,plug',
  '{0} is there already. Name a new folder: nothing is overwritten.':
    '{0} gibt es schon. Einen neuen Ordner nennen: nichts wird überschrieben.',
  'Copied {0} files into {1}. Check them: npx handtight check {2}':
    '{0} Dateien nach {1} kopiert. Prüfen: npx handtight check {2}',
  '{0} is not proven by {1}. Its tests: {2}.': '{0} wird nicht durch {1} nachgewiesen. Die Prüfungen: {2}.',
  '{0} is no kind of figure. Write it as {1}=pressure. Kinds: {2}.':
    '{0} ist keine Art von Wert. So schreiben: {1}=pressure. Arten: {2}.',
  '{0} is there already. Give another file with --to: nothing is overwritten.':
    '{0} gibt es schon. Mit --to eine andere Datei angeben: nichts wird überschrieben.',
  'It has a blank ({0}) for you to fill in.': 'Darin ist eine Lücke ({0}) auszufüllen.',
  'It has {0} blanks ({1}) for you to fill in.': 'Darin sind {0} Lücken ({1}) auszufüllen.',
  'Wrote {0}.': '{0} geschrieben.',
  'To see what is left: npx handtight check {0}': 'Was noch fehlt, zeigt: npx handtight check {0}',
  '{0} {1} of {2} printed.': '{0} {1} von {2} gedruckt.',
  '{0} printed': '{0} gedruckt',
  '{0} printed, {1} not printed': '{0} gedruckt, {1} nicht gedruckt',
  '{0} into one file': '{0} in eine Datei',
  '--unit prints one unit of a job: name the job by its number.':
    '--unit druckt eine Einheit eines Auftrags: den Auftrag mit seiner Nummer nennen.',
  '{0} has no repair {1}. {2}': '{0} hat keine Nacharbeit {1}. {2}',
  'It has none.': 'Es gibt keine.',
  'Its repairs: {0}.': 'Die Nacharbeiten: {0}.',
  '--station prints what is done at one station: add --form instruction.':
    '--station druckt, was an einem Arbeitsplatz getan wird: --form instruction hinzufügen.',
  '{0} has no stage at {1}. Its stations: {2}.': '{0} hat keinen Arbeitsgang bei {1}. Die Arbeitsplätze: {2}.',
  'issue a revision of a procedure: its text is kept, and jobs that name it are judged by it':
    'eine Revision einer Anweisung freigeben: ihr Text wird aufbewahrt, und Aufträge, die sie nennen, werden danach beurteilt',
  'date of issue, if the clock of this machine is wrong': 'Datum der Ausgabe, wenn die Uhr dieses Rechners falsch geht',
  'look names up in this folder': 'Namen in diesem Ordner nachschlagen',
  'close a finished job: write its record, which is never changed again':
    'einen fertigen Auftrag schließen: sein Protokoll schreiben, das nie mehr geändert wird',
  'close it once more, with a new issue of its certificate':
    'noch einmal schließen, mit einer neuen Ausgabe des Zertifikats',
  "sign the record with the shop's private key (Ed25519, PEM)":
    'das Protokoll mit dem privaten Schlüssel der Werkstatt signieren (Ed25519, PEM)',
  'where the records are': 'wo die Protokolle sind',
  'date of closing, if the clock of this machine is wrong':
    'Datum des Schließens, wenn die Uhr dieses Rechners falsch geht',
  'check the records of closed jobs: name each that was changed, is missing, or is new':
    'die Protokolle geschlossener Aufträge prüfen: jedes nennen, das geändert wurde, fehlt oder neu ist',
  "require the signature of the shop's public key (PEM)":
    'die Signatur des öffentlichen Schlüssels der Werkstatt verlangen (PEM)',
  'say what was done to a unit, by its serial; or all of a job, part number, customer or renewed part':
    'sagen, was an einer Einheit getan wurde, nach ihrer Seriennummer; oder alles zu einem Auftrag, einer Teilenummer, einem Kunden oder einem erneuerten Teil',
  'list what was judged with a tool, by somebody or by a procedure, nearest to its limit first':
    'auflisten, was mit einem Werkzeug, von jemandem oder nach einer Anweisung beurteilt wurde, das dem Grenzwert Nächste zuerst',
  'read with this tool': 'mit diesem Werkzeug abgelesen',
  'a part of this batch went in': 'ein Teil dieser Charge wurde eingebaut',
  'done by this person': 'von dieser Person ausgeführt',
  'judged by this procedure': 'nach dieser Anweisung beurteilt',
  'of the procedure': 'der Anweisung',
  'on this day or later': 'an diesem Tag oder später',
  'on this day or before': 'an diesem Tag oder früher',
  'only what was nearer than this to its limit, such as "3 bar"':
    'nur, was näher als das an seinem Grenzwert lag, zum Beispiel "3 bar"',
  'show month by month what the closed jobs say: passed at once, as found, comebacks by cause':
    'Monat für Monat zeigen, was die geschlossenen Aufträge sagen: sofort bestanden, Anlieferungszustand, Rückläufer nach Ursache',
  'of this procedure': 'dieser Anweisung',
  'closed on this day or later': 'an diesem Tag oder später geschlossen',
  'closed on this day or before': 'an diesem Tag oder früher geschlossen',
  'list the jobs that are not closed: for whom, since when, how many units, and what is missing':
    'die nicht geschlossenen Aufträge auflisten: für wen, seit wann, wie viele Einheiten, und was fehlt',
  'if the clock of this machine is wrong': 'wenn die Uhr dieses Rechners falsch geht',
  'the folder with the jobs': 'der Ordner mit den Aufträgen',
  'list the tools of the shop by the day on which their calibration ends':
    'die Werkzeuge der Werkstatt nach dem Ende ihrer Kalibrierung auflisten',
  'only what is due within so many days, or overdue': 'nur, was in so vielen Tagen fällig wird oder überfällig ist',
  'output format': 'Ausgabeformat',
  'the folder with the shop': 'der Ordner mit der Werkstatt',
  'the records of closed jobs': 'die Protokolle geschlossener Aufträge',
  'For {0}': 'Für {0}',
  'First path': 'Erster Weg',
  'Checks and prints machine rebuild procedures (.rebuild files).':
    'Prüft und druckt Anweisungen zur Überholung (.rebuild-Dateien).',
  'output the version number': 'die Versionsnummer ausgeben',
  'display help for command': 'Hilfe zu einem Befehl anzeigen',
  '(add --help for the options)': '(--help zeigt die Optionen)',
  'language of what the command says (else as in handtight.json, else that of the machine)':
    'Sprache dessen, was der Befehl sagt (sonst wie in handtight.json, sonst die des Rechners)',
  'check files or folders (this folder if none is given)': 'Dateien oder Ordner prüfen (ohne Angabe diesen Ordner)',
  'fail if there are more warnings than this': 'scheitern, wenn es mehr Warnungen gibt als das',
  'also look names up in this folder': 'Namen auch in diesem Ordner nachschlagen',
  'make the safe fixes in the files, and report what is left':
    'die sicheren Korrekturen in den Dateien machen und melden, was bleibt',
  'show what --fix would change, and change nothing': 'zeigen, was --fix ändern würde, und nichts ändern',
  'check again after each change, until Ctrl-C': 'nach jeder Änderung neu prüfen, bis Strg-C',
  'lay out files or folders (this folder if none is given): indentation, blanks, columns':
    'Dateien oder Ordner formatieren (ohne Angabe diesen Ordner): Einzüge, Leerzeichen, Spalten',
  'only say which files are not laid out, and fail if there are any':
    'nur nennen, welche Dateien nicht formatiert sind, und scheitern, wenn es welche gibt',
  'print the card of a job (by number), of a procedure (by name), or of all jobs in a file or folder':
    'die Karte eines Auftrags (nach Nummer), einer Anweisung (nach Name), oder aller Aufträge einer Datei oder eines Ordners drucken',
  'card: all of it; record: what is written down; instruction: what is done, for the wall (else as in handtight.json, else card)':
    'card: alles; record: was eingetragen wird; instruction: was getan wird, für die Wand (sonst wie in handtight.json, sonst card)',
  'one unit of the job, which was added later': 'eine Einheit des Auftrags, die später hinzukam',
  'of an instruction: the stages at one station':
    'von einer Anweisung zum Aushängen: die Arbeitsgänge an einem Arbeitsplatz',
  'specs, drawing, or a repair by its number (R3), alone':
    'specs, drawing, oder eine Nacharbeit nach ihrer Nummer (R3), allein',
  'put all sheets into one document of this name, each with its own page numbers':
    'alle Blätter in ein Dokument dieses Namens, jedes mit eigenen Seitenzahlen',
  'print despite errors; every page is marked': 'trotz Fehlern drucken; jede Seite ist gekennzeichnet',
  "print the customer's certificate for a finished job (by number, file, or record of a closed job)":
    'das Zertifikat für den Kunden zu einem fertigen Auftrag drucken (nach Nummer, Datei, oder Protokoll eines geschlossenen Auftrags)',
  'print it with a list of what is missing; every page is marked':
    'mit einer Liste dessen drucken, was fehlt; jede Seite ist gekennzeichnet',
  'print labels of a job, one to a page: a tag for each unit, a slip for the box, or what is certified':
    'Etiketten eines Auftrags drucken, eines je Seite: einen Anhänger je Einheit, einen Zettel für die Kiste, oder was zertifiziert ist',
  'what for': 'wofür',
  'width and height of the label in millimeters': 'Breite und Höhe des Etiketts in Millimetern',
  'of one unit': 'einer Einheit',
  'of the fixed words (else as in handtight.json, else en)': 'der festen Worte (sonst wie in handtight.json, sonst en)',
  'where the file goes': 'wohin die Datei kommt',
  'show what each step of a procedure does to the unit, on every path through it':
    'zeigen, was jeder Schritt einer Anweisung an der Einheit bewirkt, auf jedem Weg',
  'lay out the specifications of a procedure: limits, sources, tools, and what is missing':
    'die Vorgaben einer Anweisung zeigen: Grenzwerte, Quellen, Werkzeuge, und was fehlt',
  'write it to a file': 'in eine Datei schreiben',
  'say what to fit in each unit of a job, from its last reading':
    'sagen, was in jede Einheit eines Auftrags einzubauen ist, nach dem letzten Messwert',
  'choose the shims for a whole set at once, with the smallest spread':
    'die Einstellscheiben für einen ganzen Satz zugleich auswählen, mit der kleinsten Spanne',
  'fit the rate of a shim to the readings of all jobs of a procedure':
    'die Änderung je Einstellscheibe aus den Messwerten aller Aufträge einer Anweisung bestimmen',
  'do a calculation and show the working; without a name, list the calculations':
    'eine Berechnung ausführen und den Rechenweg zeigen; ohne Name die Berechnungen auflisten',
  'such as "guide=6 mm"': 'zum Beispiel "guide=6 mm"',
  'begin a procedure or a family, or copy the samples; alone, list what there is to begin from':
    'eine Anweisung oder eine Baureihe beginnen, oder die Beispiele kopieren; allein: auflisten, womit man beginnen kann',
  'write a first procedure for a family, with blanks for what only you know':
    'eine erste Anweisung für eine Baureihe schreiben, mit Lücken für das, was nur Sie wissen',
  'of the procedure (else rebuild- and the family)': 'der Anweisung (sonst rebuild- und die Baureihe)',
  'Rebuild and test': 'Überholen und prüfen',
  'tests that give a figure, such as opening=pressure,leak=time':
    'Prüfungen, die einen Wert geben, zum Beispiel opening=pressure,leak=time',
  'where it goes (else a file of its name)': 'wohin (sonst in eine Datei dieses Namens)',
  'the folder with your shop and families': 'der Ordner mit Ihrer Werkstatt und Ihren Baureihen',
  'write a first family from the names of its parts': 'eine erste Baureihe aus den Namen ihrer Teile schreiben',
  'in the order in which they are built, such as body,spring,plug; the first again begins another stack on it':
    'in der Reihenfolge des Zusammenbaus, zum Beispiel body,spring,plug; das erste noch einmal beginnt einen weiteren Stapel darauf',
  'what every unit must pass': 'was jede Einheit bestehen muss',
  'of the family': 'der Baureihe',
  Unit: 'Einheit',
  'write the job of an order that has come in, and say which of its serials were here before':
    'den Auftrag zu einer Bestellung schreiben, die eingegangen ist, und sagen, welche Seriennummern schon hier waren',
  'the procedure that it follows': 'die Anweisung, nach der er ausgeführt wird',
  'how many came in': 'wie viele eingegangen sind',
  'their part number': 'ihre Teilenummer',
  'as marked on the bodies, in their order': 'wie auf den Körpern markiert, in ihrer Reihenfolge',
  'give each the next serial of the shop': 'jeder die nächste Seriennummer der Werkstatt geben',
  'whose they are': 'wem sie gehören',
  'of the job': 'des Auftrags',
  'day on which they came in': 'Tag der Anlieferung',
  'where it goes (else a file of its number)': 'wohin (sonst in eine Datei dieser Nummer)',
  'the folder with your procedures': 'der Ordner mit Ihren Anweisungen',
  'copy the library that comes with the program into a new folder':
    'die Beispiele des Programms in einen neuen Ordner kopieren',
  'serve an assistant: check, explain, replay, calculate and look up, by the Model Context Protocol':
    'einen Assistenten bedienen: prüfen, erklären, durchspielen, rechnen und nachschlagen, mit dem Model Context Protocol',
  'the folder that it may read': 'der Ordner, den er lesen darf',
  'work everything out again, and keep nothing for the next run':
    'alles neu berechnen, und nichts für das nächste Mal aufbewahren',
  'One of the arguments is empty. Give a name, a file or a folder there, or leave it out; in a script, check that the variable has a value.':
    'Eines der Argumente ist leer. Einen Namen, eine Datei oder einen Ordner angeben, oder es weglassen; in einem Skript prüfen, ob die Variable einen Wert hat.',
  'The argument that begins with {0} has {1} characters. No name, file or figure is that long: check that the quotes are closed.':
    'Das Argument, das mit {0} beginnt, hat {1} Zeichen. So lang ist kein Name, keine Datei und kein Wert: prüfen, ob die Anführungszeichen geschlossen sind.',
  'pdf, html, or both with a comma': 'pdf, html, oder beides mit einem Komma',
  'size of the paper (else as in handtight.json, else a4)': 'Papierformat (sonst wie in handtight.json, sonst a4)',
  'where the files go': 'wohin die Dateien kommen',
  'Give width and height of the label in millimeters: 70x36.':
    'Breite und Höhe des Etiketts in Millimetern angeben: 70x36.',
  'Parts are specs, drawing, or a repair by its number, such as R3.':
    'Teile sind specs, drawing, oder eine Nacharbeit nach ihrer Nummer, zum Beispiel R3.',
  'Give the name of a file. Give its folder with --to.': 'Den Namen einer Datei angeben. Den Ordner mit --to angeben.',
  '“{0}” is no name. A name begins with a letter and has letters, digits and single hyphens, and is not a word such as {1}: spring-seat.':
    '“{0}” ist kein Name. Ein Name beginnt mit einem Buchstaben, hat Buchstaben, Ziffern und einzelne Bindestriche, und ist kein Wort wie {1}: spring-seat.',
  'Give a whole number.': 'Eine ganze Zahl angeben.',
  'Formats are {0}, not {1}.': 'Formate sind {0}, nicht {1}.',
  'It cannot have a quote or a line end in it.': 'Anführungszeichen und Zeilenenden sind darin nicht möglich.',
  'Give a count from 1 to 99.': 'Eine Anzahl von 1 bis 99 angeben.',
  '{0} is not printed: it has 1 error. Run npx handtight check {1} to see it, or print it with --draft, which marks every page.':
    '{0} wird nicht gedruckt: es gibt 1 Fehler. npx handtight check {1} zeigt ihn; oder mit --draft drucken, das kennzeichnet jede Seite.',
  '{0} is not printed: it has {1} errors. Run npx handtight check {2} to see them, or print it with --draft, which marks every page.':
    '{0} wird nicht gedruckt: es gibt {1} Fehler. npx handtight check {2} zeigt sie; oder mit --draft drucken, das kennzeichnet jede Seite.',
  '{0} ({1}) is not printed: its file {2} would be that of {3} ({4}). Print it alone into another folder with --to, or all into one file with --one-file.':
    '{0} ({1}) wird nicht gedruckt: die Datei {2} wäre die von {3} ({4}). Allein mit --to in einen anderen Ordner drucken, oder alles mit --one-file in eine Datei.',
  'job {0}': 'Auftrag {0}',
  '{0} has 1 error: what it affects may be missing here. Run npx handtight check {1} to see it.':
    '{0} hat 1 Fehler: was davon abhängt, kann hier fehlen. npx handtight check {1} zeigt ihn.',
  '{0} has {1} errors: what they affect may be missing here. Run npx handtight check {2} to see them.':
    '{0} hat {1} Fehler: was davon abhängt, kann hier fehlen. npx handtight check {2} zeigt sie.',
  '{0} is not printed: {1}': '{0} wird nicht gedruckt: {1}',
  '{0} is both a procedure and a folder: the procedure is used. Write ./{1} for the folder.':
    '{0} ist eine Anweisung und auch ein Ordner: verwendet wird die Anweisung. Für den Ordner ./{1} schreiben.',
  '{0} is both a job and a folder: the job is used. Write ./{1} for the folder.':
    '{0} ist ein Auftrag und auch ein Ordner: verwendet wird der Auftrag. Für den Ordner ./{1} schreiben.',
  '{0} declares no procedure and no job that can be printed. Run npx handtight check {1} first.':
    '{0} gibt keine Anweisung und keinen Auftrag an, die sich drucken lassen. Zuerst npx handtight check {1} ausführen.',
  'There is no .rebuild file in {0}. Give a folder that has jobs or procedures in it.':
    'In {0} gibt es keine .rebuild-Datei. Einen Ordner mit Aufträgen oder Anweisungen angeben.',
  '{0} declares no job and no procedure: there is nothing to print in it.':
    '{0} gibt keinen Auftrag und keine Anweisung an: es gibt nichts zu drucken.',
  '{0} declares no job: its procedures are printed as blank sheets.':
    '{0} gibt keinen Auftrag an: die Anweisungen werden als leere Blätter gedruckt.',
  'No job, procedure or folder is called {0}. {1}':
    'Einen Auftrag, eine Anweisung oder einen Ordner {0} gibt es nicht. {1}',
  'No shop in {0} declares a wrench, a gauge or a tool.':
    'Keine Werkstatt in {0} gibt einen Drehmomentschlüssel, ein Manometer oder ein Werkzeug an.',
  'No tool is due by {0}.': 'Bis {0} wird kein Werkzeug fällig.',
  due: 'fällig',
  title: 'Benennung',
  calibrated: 'kalibriert',
  today: 'heute',
  'found at calibration': 'bei der Kalibrierung gefunden',
  'out of use since {0}': 'außer Gebrauch seit {0}',
  'in date': 'gültig',
  overdue: 'überfällig',
  'not calibrated': 'nicht kalibriert',
  '{0} is out of use since {1}. Use another tool.': '{0} ist seit {1} außer Gebrauch. Ein anderes Werkzeug nehmen.',
  '{0} has been due for calibration since {1}: nothing read with it now can be certified.':
    'Die Kalibrierung von {0} ist seit {1} abgelaufen: was jetzt damit abgelesen wird, lässt sich nicht zertifizieren.',
  '{0} is due for calibration on {1}: what is read with it after that cannot be certified.':
    'Die Kalibrierung von {0} läuft am {1} ab: was danach damit abgelesen wird, lässt sich nicht zertifizieren.',
  '--within {0} is no number of days. Write it as --within "30 days".':
    '--within {0} ist keine Anzahl von Tagen. So schreiben: --within "30 days".',
  'job {0} is not printed: its procedure was not found, or could not be read. Run npx handtight check {1} to see why.':
    'Auftrag {0} wird nicht gedruckt: seine Anweisung wurde nicht gefunden oder ist nicht lesbar. Warum, zeigt npx handtight check {1}.',
  'procedure {0} is not printed: its family or its shop was not found, or could not be read. Run npx handtight check {1} to see why.':
    'Anweisung {0} wird nicht gedruckt: ihre Baureihe oder ihre Werkstatt wurde nicht gefunden oder ist nicht lesbar. Warum, zeigt npx handtight check {1}.',
  '{0} is not printed: nothing in it can be read. Run npx handtight check {1} to see why.':
    '{0} wird nicht gedruckt: nichts darin ist lesbar. Warum, zeigt npx handtight check {1}.',
  '{0}: changed. It is not as it was written. Take it back from a backup.':
    '{0}: geändert. Es ist nicht mehr so, wie es geschrieben wurde. Aus einer Sicherung zurückholen.',
  '{0}: new. It is whole, and not in {1}: its closing was interrupted, or somebody put it here. If job {2} was closed here, close it again, which completes the list.':
    '{0}: neu. Es ist ganz, und nicht in {1}: das Schließen wurde unterbrochen, oder jemand hat es hierher gelegt. Wurde Auftrag {2} hier geschlossen, noch einmal schließen: das vervollständigt die Liste.',
  '{0}: missing. It is in {1}. Take it back from a backup.':
    '{0}: fehlt. Es ist in {1} verzeichnet. Aus einer Sicherung zurückholen.',
  '{0}: changed. One of its lines was not written so. Take it back from a backup.':
    '{0}: geändert. Eine der Zeilen wurde nicht so geschrieben. Aus einer Sicherung zurückholen.',
  '{0}: changed. {1} of its lines were not written so. Take it back from a backup.':
    '{0}: geändert. {1} der Zeilen wurden nicht so geschrieben. Aus einer Sicherung zurückholen.',
  '{0} signed with the key {1}': '{0} mit dem Schlüssel {1} signiert',
  '{0} not signed': '{0} nicht signiert',
  '1 record': '1 Protokoll',
  '{0} records': '{0} Protokolle',
  '{0}: all as they were written.': '{0}: alle so, wie sie geschrieben wurden.',
  '{0}: {1} wrong.': '{0}: {1} fehlerhaft.',
  'There is no record in {0}. Give the folder that npx handtight close writes to.':
    'In {0} gibt es kein Protokoll. Den Ordner angeben, in den npx handtight close schreibt.',
  'not signed.': 'nicht signiert.',
  "signed with another key, {0}. See whether that key is the shop's too.":
    'mit einem anderen Schlüssel signiert, {0}. Prüfen, ob auch dieser der Werkstatt gehört.',
  'changed. Its signature is not that of this record.': 'geändert. Die Signatur ist nicht die dieses Protokolls.',
  '{0} is no key of Ed25519 in PEM. Make the public one with: openssl pkey -in shop.pem -pubout -out shop.pub':
    '{0} ist kein Ed25519-Schlüssel in PEM. Den öffentlichen erzeugen mit: openssl pkey -in shop.pem -pubout -out shop.pub',
  'Watching for changes. Ctrl-C ends it.': 'Wartet auf Änderungen. Strg-C beendet.',
  'choices:': 'Auswahl:',
  'default:': 'Vorgabe:',
  "error: unknown command '{0}'": "Fehler: den Befehl '{0}' gibt es nicht",
  "error: unknown option '{0}'": "Fehler: die Option '{0}' gibt es nicht",
  '(Did you mean {0}?)': '(Ist {0} gemeint?)',
  '(Did you mean one of {0}?)': '(Ist eines davon gemeint: {0}?)',
  "error: missing required argument '{0}'": "Fehler: '{0}' ist nicht angegeben",
  "error: required option '{0}' not specified": "Fehler: '{0}' ist nicht angegeben",
  "error: option '{0}' argument missing": "Fehler: hinter '{0}' steht nichts",
  "error: option '{0}' cannot be used with option '{1}'": "Fehler: '{0}' und '{1}' lassen sich nicht zusammen angeben",
  "error: too many arguments for '{0}'. Expected 1 argument but got {1}.":
    "Fehler: '{0}' nimmt höchstens 1 Argument, angegeben sind {1}.",
  "error: too many arguments for '{0}'. Expected {1} arguments but got {2}.":
    "Fehler: '{0}' nimmt höchstens {1} Argumente, angegeben sind {2}.",
  "error: option '{0}' argument '{1}' is invalid. {2}": "Fehler: '{1}' kann nicht hinter '{0}' stehen. {2}",
  "error: command-argument value '{0}' is invalid for argument '{1}'. {2}":
    "Fehler: '{0}' lässt sich nicht als '{1}' angeben. {2}",
  'Allowed choices are {0}.': 'Eines davon angeben: {0}.',
  'To list them all: npx handtight work-out': 'Alle auflisten: npx handtight work-out',
  'No calculation is called {0}. {1}': 'Eine Berechnung {0} gibt es nicht. {1}',
  '{0} is not a .rebuild file. Give one, or a folder that has some.':
    '{0} ist keine .rebuild-Datei. Eine angeben, oder einen Ordner mit welchen.',
  'There is no .rebuild file in {0}. Give a file or a folder that has some.':
    'In {0} gibt es keine .rebuild-Datei. Eine Datei angeben, oder einen Ordner mit welchen.',
  'this folder': 'diesem Ordner',
  'This file disappeared while it was being read. Run the command again.':
    'Diese Datei ist während des Lesens verschwunden. Den Befehl noch einmal ausführen.',
  'Cannot write {0}: {1}': '{0} lässt sich nicht schreiben: {1}',
  'the disk is full. Make room, or give another folder with {0}.':
    'die Platte ist voll. Platz schaffen, oder mit {0} einen anderen Ordner angeben.',
  'no permission. Give a folder that you may write to with {0}; or, where the file is read-only or open in a reader, release it.':
    'keine Berechtigung. Mit {0} einen Ordner angeben, in den Sie schreiben dürfen; ist die Datei schreibgeschützt oder in einem Betrachter offen, sie freigeben.',
  'the disk is read-only. Give another folder with {0}.':
    'die Platte ist schreibgeschützt. Mit {0} einen anderen Ordner angeben.',
  'another program has it open. Close it and print again.':
    'ein anderes Programm hat sie offen. Dort schließen und noch einmal drucken.',
  'the folder cannot be made there. Give another folder with {0}.':
    'der Ordner lässt sich dort nicht anlegen. Mit {0} einen anderen angeben.',
  'there is a file where a folder is needed. Give another folder with {0}.':
    'wo ein Ordner sein soll, ist eine Datei. Mit {0} einen anderen Ordner angeben.',
  'a folder of that name is in the way. Take it away, or give another folder with {0}.':
    'ein Ordner dieses Namens ist im Weg. Ihn wegnehmen, oder mit {0} einen anderen angeben.',
  'the name is too long. Give a shorter folder with {0}.':
    'der Name ist zu lang. Mit {0} einen kürzeren Ordner angeben.',
  'the disk is full. Make room and run the command again.':
    'die Platte ist voll. Platz schaffen und den Befehl noch einmal ausführen.',
  'no permission. Let its owner give you the right to write to it and to its folder.':
    'keine Berechtigung. Vom Eigentümer das Recht geben lassen, in die Datei und ihren Ordner zu schreiben.',
  'the disk is read-only. Copy the files to another one and work there.':
    'die Platte ist schreibgeschützt. Die Dateien auf eine andere kopieren und dort arbeiten.',
  'another program has it open. Close it there and run the command again.':
    'ein anderes Programm hat sie offen. Dort schließen und den Befehl noch einmal ausführen.',
  'Usage:': 'Aufruf:',
  'Arguments:': 'Argumente:',
  'Options:': 'Optionen:',
  'Commands:': 'Befehle:',
  '<options>': '<Optionen>',
  '<command>': '<Befehl>',
  '<language>': '<Sprache>',
  '<paths>': '<Pfade>',
  '<format>': '<Format>',
  '<count>': '<Anzahl>',
  '<folder>': '<Ordner>',
  '<names>': '<Namen>',
  '<formats>': '<Formate>',
  '<paper>': '<Papier>',
  '<form>': '<Form>',
  '<place>': '<Platz>',
  '<name>': '<Name>',
  '<part>': '<Teil>',
  '<date>': '<Datum>',
  '<job>': '<Auftrag>',
  '<kind>': '<Art>',
  '<size>': '<Größe>',
  '<procedure>': '<Anweisung>',
  '<file>': '<Datei>',
  '<calculation>': '<Berechnung>',
  '<figures>': '<Werte>',
  '<rule>': '<Regel>',
  '<what>': '<was>',
  '<family>': '<Baureihe>',
  '<title>': '<Titel>',
  '<tests>': '<Prüfungen>',
  '<number>': '<Nummer>',
  '<serials>': '<Seriennummern>',
  '<reason>': '<Grund>',
  '<serial>': '<Seriennummer>',
  '<batch>': '<Charge>',
  '<person>': '<Person>',
  '<revision>': '<Revision>',
  '<quantity>': '<Größe>',
  '<days>': '<Tage>',
  '{0} in {1}': '{0} in {1}',
  printed: 'gedruckt',
  fixed: 'korrigiert',
  note: 'Hinweis',
  written: 'geschrieben',
  checking: 'Prüfung läuft',
  '{0} is not there. Check the spelling, or give a folder that has .rebuild files in it.':
    '{0} gibt es nicht. Die Schreibweise prüfen, oder einen Ordner mit .rebuild-Dateien angeben.',
  'This folder could not be read: {0}': 'Dieser Ordner ist nicht lesbar: {0}',
  'This is a link to {0}, which is not there, so nothing is read. Correct the link, or delete it.':
    'Das ist ein Link auf {0}, das es nicht gibt, also wird nichts gelesen. Den Link berichtigen oder löschen.',
  'This link could not be followed: {0}': 'Diesem Link ließ sich nicht folgen: {0}',
  'This is a pipe, a socket or a device, not a file, so it is not read. Move it out of the folder.':
    'Das ist eine Pipe, ein Socket oder ein Gerät, keine Datei, und wird nicht gelesen. Aus dem Ordner nehmen.',
  'This settings file is not read: only the one at the top of the workspace counts. Move it to the folder that is opened, or that the command is run in.':
    'Diese Einstellungsdatei wird nicht gelesen: nur die oberste des Arbeitsbereichs zählt. In den Ordner legen, der geöffnet wird oder in dem der Befehl läuft.',
  'This settings file is not read: only the one at the top of the workspace counts. Put what you need into {0}, and delete this one.':
    'Diese Einstellungsdatei wird nicht gelesen: nur die oberste des Arbeitsbereichs zählt. Das Nötige in {0} schreiben, und diese löschen.',
  'This is a folder, not a file, so it is not read. Rename it, or take it away.':
    'Das ist ein Ordner, keine Datei, und wird nicht gelesen. Umbenennen oder wegnehmen.',
  'This is a pipe, a socket or a device, not a file, so it is not read. Rename it, or take it away.':
    'Das ist eine Pipe, ein Socket oder ein Gerät, keine Datei, und wird nicht gelesen. Umbenennen oder wegnehmen.',
  'This file has {0} MB and was not read.': 'Diese Datei hat {0} MB und wurde nicht gelesen.',
  '{0} Settings take a few lines: check that this is the right file.':
    '{0} Einstellungen brauchen wenige Zeilen: prüfen, ob es die richtige Datei ist.',
  '{0} Put its declarations into several files.': '{0} Ihre Angaben auf mehrere Dateien verteilen.',
  'This file could not be read: {0}': 'Diese Datei ist nicht lesbar: {0}',
  'no permission. Ask its owner for permission to read it, or move it out of the folder.':
    'keine Berechtigung. Den Eigentümer um Leserecht bitten, oder aus dem Ordner nehmen.',
  'it is a link that leads back to itself. Correct the link, or delete it.':
    'es ist ein Link, der auf sich selbst zurückführt. Den Link berichtigen oder löschen.',
  'its name is longer than the system allows. Give it a shorter one.':
    'der Name ist länger, als das System zulässt. Einen kürzeren geben.',
  'another program has it open. Close it there.': 'ein anderes Programm hat sie offen. Dort schließen.',
  'too many files are open on this machine. Close some programs and try again.':
    'auf diesem Rechner sind zu viele Dateien offen. Einige Programme schließen und noch einmal versuchen.',
  'the disk or the network did not answer. See whether it is connected, and try again.':
    'die Platte oder das Netz hat nicht geantwortet. Die Verbindung prüfen und noch einmal versuchen.',
  'This file and those after it are not read: there are more than {0} in this workspace. Open or name a smaller folder.':
    'Diese Datei und die folgenden werden nicht gelesen: es gibt mehr als {0} in diesem Arbeitsbereich. Einen kleineren Ordner öffnen oder nennen.',
  'It is no longer there.': 'Sie ist nicht mehr da.',
  '{0} cannot be written to, so the ledger is made again for each question.':
    '{0} lässt sich nicht beschreiben, also wird das Verzeichnis für jede Frage neu angelegt.',
  'The ledger was damaged, and was made again from the records.':
    'Das Verzeichnis war beschädigt und wurde aus den Protokollen neu angelegt.',
  'Another program has kept the ledger busy, so it was made for this question alone.':
    'Ein anderes Programm hielt das Verzeichnis belegt, also wurde für diese Frage ein eigenes angelegt.',
  'The list of records is another than before, so the ledger was made again.':
    'Die Liste der Protokolle ist eine andere als zuvor, also wurde das Verzeichnis neu angelegt.',
  '{0} is missing or not as written, and not in this answer. Run npx handtight verify.':
    '{0} fehlt oder ist nicht, wie es geschrieben wurde, und ist nicht in dieser Antwort. npx handtight verify ausführen.',
  '{0} records, {1} first, are missing or not as written, and not in this answer. Run npx handtight verify.':
    '{0} Protokolle, zuerst {1}, fehlen oder sind nicht, wie sie geschrieben wurden, und sind nicht in dieser Antwort. npx handtight verify ausführen.',
  "There is no folder on this machine's disk behind {0}.":
    'Zu {0} gibt es auf der Platte dieses Rechners keinen Ordner.',
  '{0}: no font on the sheet has {1}: it prints as an empty box. Write it in other words.':
    '{0}: keine Schrift des Blatts hat {1}: gedruckt wird ein leeres Kästchen. Mit anderen Worten schreiben.',
  'Stopped: {0} of {1} printed.': 'Angehalten: {0} von {1} gedruckt.',
  '{0} of {1}: {2}': '{0} von {1}: {2}',
  '{0} high at {1}': '{0} zu hoch bei {1}',
  '{0} low at {1}': '{0} zu niedrig bei {1}',
  'print the page of a rule, or what a caution follows from; without a name, list the rules; “cautions” lists the cautions; a procedure and a step: the cautions of the step, and why':
    'zeigt die Seite einer Regel oder woraus eine Warnung folgt; ohne Namen die Liste der Regeln; „cautions“ listet die Warnungen; mit Anweisung und Schritt: die Warnungen des Schritts und ihr Grund',
  'a rule, a caution, “cautions”, or a procedure': 'eine Regel, eine Warnung, „cautions“ oder eine Anweisung',
  'number of a step of that procedure': 'Nummer eines Schritts dieser Anweisung',
  'the folder that the procedure is in': 'der Ordner, in dem die Anweisung liegt',
  'Follows from: {0}.': 'Folgt aus: {0}.',
  '{0} has no step {1}. Its steps go from {2} to {3}.':
    '{0} hat keinen Schritt {1}. Die Schritte gehen von {2} bis {3}.',
  'Step {0} calls for no caution.': 'Schritt {0} verlangt keine Warnung.',
  '--holds {0}: that is no result of this job that revision {1} has done otherwise.':
    '--holds {0}: kein Ergebnis dieses Auftrags, das Revision {1} anders verlangt.',
  'All of it is in the jobs already.': 'Alles steht schon in den Aufträgen.',
  'All results hold over: both revisions have them done in the same way.':
    'Alle Ergebnisse gelten weiter: beide Revisionen verlangen sie gleich.',
  'CSV with a line of heads, or NDJSON (.ndjson, .jsonl)': 'CSV mit einer Kopfzeile, oder NDJSON (.ndjson, .jsonl)',
  'Example of a mapping; a column is named, and what is in “is” holds for all rows:':
    'Beispiel einer Zuordnung; eine Spalte wird genannt, und was in “is” steht, gilt für alle Zeilen:',
  'History: {0} {1}': 'Verlauf: {0} {1}',
  'Inside its limit by': 'Innerhalb des Grenzwerts um',
  'It holds over.': 'Es gilt weiter.',
  'It is done again.': 'Es wird wiederholt.',
  'JSON that says which column is what': 'JSON, das sagt, welche Spalte was ist',
  'Job {0} has more than one unit with {1}.': 'Der Auftrag {0} hat mehr als eine Einheit mit {1}.',
  'Job {0} has no unit with {1}.': 'Der Auftrag {0} hat keine Einheit mit {1}.',
  'Job {0} is at revision {1} already.': 'Der Auftrag {0} hat schon Revision {1}.',
  'Job {0} is closed. What is written into it now is on no certificate.':
    'Der Auftrag {0} ist abgeschlossen. Was jetzt eingetragen wird, steht auf keinem Zertifikat.',
  'Job {0} is closed: its record says by which revision it was judged.':
    'Der Auftrag {0} ist abgeschlossen: sein Protokoll sagt, nach welcher Revision er beurteilt wurde.',
  'Month by month, by the day of closing.': 'Monat für Monat, nach dem Tag des Abschlusses.',
  'Neither place nor serial says which unit this is.': 'Weder Platz noch Seriennummer sagen, welche Einheit das ist.',
  'No job is named.': 'Es ist kein Auftrag genannt.',
  'Nothing was taken in from {0}.': 'Aus {0} wurde nichts übernommen.',
  'Serial {0} was here before: job {1}, closed {2}, {3}.':
    'Seriennummer {0} war schon hier: Auftrag {1}, abgeschlossen am {2}, {3}.',
  'The job in {0} cannot be read. Run npx handtight check {1}.':
    'Der Auftrag in {0} lässt sich nicht lesen. npx handtight check {1} aufrufen.',
  'The last visit first.': 'Der letzte Besuch zuerst.',
  'There are {0} jobs {1}, and nobody can say which is meant. Give one of them another number: npx handtight check names both.':
    'Es gibt {0} Aufträge {1}, und niemand kann sagen, welcher gemeint ist. Einem davon eine andere Nummer geben: npx handtight check nennt beide.',
  '{0} has no column “{1}”. It has: {2}. Write in the mapping what the column is called here, and the separator if that is another.':
    '{0} hat keine Spalte “{1}”. Vorhanden: {2}. In der Zuordnung angeben, wie die Spalte hier heißt, und das Trennzeichen, falls es ein anderes ist.',
  '{0} has more than one column “{1}”, so nobody knows which is meant. Give each a head of its own.':
    '{0} hat mehr als eine Spalte “{1}”; welche gemeint ist, ist nicht bekannt. Jeder eine eigene Überschrift geben.',
  'The row has nothing in column “{0}”. It has: {1}. Complete it in the file, or delete the row.':
    'Die Zeile hat nichts in der Spalte “{0}”. Vorhanden: {1}. In der Datei ergänzen oder die Zeile entfernen.',
  'The row has more cells than there are heads, so what is in which column is not known. A separator inside a cell belongs in quotes.':
    'Die Zeile hat mehr Zellen als Überschriften; was in welcher Spalte steht, ist nicht bekannt. Ein Trennzeichen in einer Zelle gehört in Anführungszeichen.',
  'There is no job {0} here.': 'Es gibt hier keinen Auftrag {0}.',
  'There is no row in {0}.': 'In {0} ist keine Zeile.',
  'This is what would be written. With --write it is.': 'Das würde geschrieben. Mit --write geschieht es.',
  'This is what would be written: {0}. With --write it is.': 'Das würde geschrieben: {0}. Mit --write geschieht es.',
  'What a shim brought, with its standard error': 'Was eine Einstellscheibe brachte, mit Standardfehler',
  'What is in the house': 'Was im Haus ist',
  'What the closed jobs show': 'Was die abgeschlossenen Aufträge zeigen',
  'What was judged so': 'Was so beurteilt wurde',
  'Write --by and --reason in words, without quotes in them.':
    '--by und --reason in Worten schreiben, ohne Anführungszeichen darin.',
  'a shim brings': 'eine Scheibe bringt',
  'approval of the quote': 'die Freigabe des Angebots',
  earlier: 'vorher',
  'here before: job {0}, {1}': 'war schon hier: Auftrag {0}, {1}',
  'it is done otherwise': 'es wird anders gemacht',
  'job {0} from revision {1} to {2}, {3}': 'Auftrag {0} von Revision {1} auf {2}, {3}',
  'limit {0}, now {1}': 'Grenzwert {0}, jetzt {1}',
  'line {0}': 'Zeile {0}',
  'move a job to another revision of its procedure, and say which of its results hold over':
    'einen Auftrag auf eine andere Revision seiner Anweisung umstellen und sagen, welche Ergebnisse weiter gelten',
  moved: 'umgestellt',
  'place {0}': 'Platz {0}',
  promised: 'zugesagt',
  'results that hold over though the new revision has them done otherwise, with commas':
    'Ergebnisse, die weiter gelten, obwohl die neue Revision sie anders verlangt, mit Kommas',
  'sent out, {0}': 'außer Haus, {0}',
  'serial {0}': 'Seriennummer {0}',
  'take the results of a test bench into their jobs, from a file and a mapping that says what is in it':
    'die Ergebnisse eines Prüfstands in ihre Aufträge übernehmen, aus einer Datei und einer Zuordnung, die sagt, was darin steht',
  'the revision that it is judged by from now on': 'die Revision, nach der er von jetzt an beurteilt wird',
  'unit {0}: {1}': 'Einheit {0}: {1}',
  verdict: 'Urteil',
  'waiting for': 'wartet auf',
  'who decides that': 'wer das entscheidet',
  why: 'warum',
  'write it; else what would be written is shown': 'schreiben; sonst wird gezeigt, was geschrieben würde',
  'write the answer to this file as a page (HTML), with pictures over time':
    'die Antwort als Seite (HTML) in diese Datei schreiben, mit Bildern über die Zeit',
  '{0} cannot be read as CSV: {1}': '{0} lässt sich nicht als CSV lesen: {1}',
  '{0} cannot be used: {1}. npx handtight help import has an example.':
    '{0} lässt sich nicht verwenden: {1}. npx handtight help import hat ein Beispiel.',
  '{0} has no revision {1}.': '{0} hat keine Revision {1}.',
  '{0} has no revision, so there is none to move from.':
    '{0} hat keine Revision, also keine, von der umgestellt würde.',
  '{0} is no JSON: {1}': '{0} ist kein JSON: {1}',
  '{0} late': '{0} überfällig',
  '{0} since {1}': '{0} seit {1}',
  '{0}, line {1}: this is no object of JSON with plain figures and words in it.':
    '{0}, Zeile {1}: kein JSON-Objekt mit einfachen Zahlen und Wörtern.',
  '{0}, visit by visit': '{0}, Besuch für Besuch',
  '“{0} {1}” is no figure with a unit. The mapping says under decimal which sign it has.':
    '“{0} {1}” ist keine Zahl mit Einheit. Die Zuordnung sagt unter decimal, welches Zeichen sie hat.',
  '“{0}” does not fit into quotes: it has quotes in it, or is too long.':
    '“{0}” passt nicht in Anführungszeichen: es enthält welche oder ist zu lang.',
  '“{0}” is no day as {1}. The mapping says under days how they are written.':
    '“{0}” ist kein Tag in der Form {1}. Die Zuordnung sagt unter days, wie sie geschrieben sind.',
  '“{0}” is no name of the job. Say under words what it is called there.':
    '“{0}” ist kein Name des Auftrags. Unter words sagen, wie es dort heißt.',
  '“{0}” is no place.': '“{0}” ist kein Platz.',
  '{0} does not say which unit a row is of: give unit (its place in the set) or serial.':
    '{0} sagt nicht, zu welcher Einheit eine Zeile gehört: unit (ihr Platz im Satz) oder serial angeben.',
  '{0} is the record of a closed job: it has its certificate, and no sheet. Print that: npx handtight certificate {1}':
    '{0} ist das Protokoll eines geschlossenen Auftrags: Es hat das Zertifikat und kein Blatt. Das drucken: npx handtight certificate {1}',
};
