import type { Bundle } from '../bundle.ts';

export const mcp: Bundle = {
  '{0} is not in the folder of this server. Give a path from that folder.':
    '{0} liegt nicht im Ordner dieses Servers. Einen Pfad von diesem Ordner aus angeben.',
  '{0} is not a .rebuild file. Give it a name that ends so.':
    '{0} ist keine .rebuild-Datei. Einen Namen geben, der so endet.',
  'The text has {0} characters; a procedure has at most {1}.':
    'Der Text hat {0} Zeichen; eine Anweisung hat höchstens {1}.',
  'The reference is missing from this installation: its README is not there. Install it again.':
    'In dieser Installation fehlt die Referenz: das README ist nicht da. Neu installieren.',
  'No chapter is called {0}. {1}': 'Ein Kapitel {0} gibt es nicht. {1}',
  '{0}\n… and {1} characters more. Ask about less at a time.':
    '{0}\n… und {1} weitere Zeichen. Weniger auf einmal fragen.',
  'Does a calculation of the bench exactly, with formula, source and working (shims, wrench settings, gauges, needles). Without a name: the list. With a name alone: what it takes.':
    'Führt eine Werkstattberechnung exakt aus, mit Formel, Quelle und Rechenweg (Einstellscheiben, Schlüsseleinstellungen, Manometer, Nadeln). Ohne Name: die Liste. Nur mit Name: was sie braucht.',
  'Checks .rebuild files with all rules and returns every finding: what is wrong, why it matters, what to do, and where. With `text`, checks that text as if it were saved under `file`, among the other files of the folder; nothing is written. Without, checks the files as they are. A draft is done when there is no error and no warning left that the shop has not answered with `allow … because`. Never invent a figure to silence a finding: leave a blank for the lead.':
    'Prüft .rebuild-Dateien mit allen Regeln und gibt jeden Befund zurück: was falsch ist, warum es zählt, was zu tun ist, und wo. Mit `text` wird dieser Text geprüft, als wäre er als `file` gespeichert, unter den anderen Dateien des Ordners; nichts wird geschrieben. Ohne `text` werden die Dateien geprüft, wie sie sind. Ein Entwurf ist fertig, wenn kein Fehler und keine Warnung bleibt, die die Werkstatt nicht mit `allow … because` beantwortet hat. Nie einen Wert erfinden, um einen Befund zum Schweigen zu bringen: eine Lücke für die Werkstattleitung lassen.',
  'Returns the page of a rule (what is wrong, why it matters, a wrong and a right example, what it leaves alone); without a name, the list of all rules.':
    'Gibt die Seite zu einer Regel zurück (was falsch ist, warum es zählt, ein falsches und ein richtiges Beispiel, was sie durchlässt); ohne Name die Liste aller Regeln.',
  'Read the language reference': 'Die Sprachreferenz lesen',
  'Returns a chapter of the reference of the language of .rebuild files. Read at least “Files, lines, names”, “family”, “procedure” and “Verbs” before you draft one. Chapters: {0}.':
    'Gibt ein Kapitel der Referenz der Sprache von .rebuild-Dateien zurück. Vor dem Entwerfen mindestens “Files, lines, names”, “family”, “procedure” und “Verbs” lesen. Kapitel: {0}.',
  'Lay out a procedure': 'Eine Anweisung formatieren',
  'Returns a .rebuild text laid out: indentation, blanks, columns. Nothing but white space changes. With `text`, lays out that text and writes nothing. Without, takes the file as it is, and with `write` saves it. A text with a line that cannot be read is refused, with that line: correct it first.':
    'Gibt einen .rebuild-Text formatiert zurück: Einzüge, Leerzeichen, Spalten. Nur Leerraum ändert sich. Mit `text` wird dieser Text formatiert und nichts geschrieben. Ohne `text` wird die Datei genommen, wie sie ist, und mit `write` gespeichert. Ein Text mit einer nicht lesbaren Zeile wird abgelehnt, mit dieser Zeile: zuerst berichtigen.',
  'A text that is given is not written: save it as the file first, or leave `text` out.':
    'Ein übergebener Text wird nicht geschrieben: zuerst als Datei speichern, oder `text` weglassen.',
  'Not laid out: line {0} cannot be read. {1} Correct it first.':
    'Nicht formatiert: Zeile {0} ist nicht lesbar. {1} Zuerst berichtigen.',
  '{0} is not there. Give its text, or another path.': '{0} ist nicht da. Den Text angeben, oder einen anderen Pfad.',
  'Advise on a job': 'Zu einem Auftrag beraten',
  'Returns what to fit or to turn in each unit of a job, from its last reading; nothing for a unit that passes.':
    'Gibt zurück, was in jede Einheit eines Auftrags einzubauen oder zu drehen ist, nach dem letzten Messwert; nichts für eine Einheit, die besteht.',
  'Find the history of a unit': 'Die Vorgeschichte einer Einheit finden',
  'Returns each job in which a serial number occurs, closed ones first and oldest first: what was found, fitted, read and done.':
    'Gibt jeden Auftrag zurück, in dem eine Seriennummer vorkommt, geschlossene und älteste zuerst: was gefunden, eingebaut, gemessen und getan wurde.',
  'No job of this folder has a unit with the serial {0}.':
    'Kein Auftrag in diesem Ordner hat eine Einheit mit der Seriennummer {0}.',
  'Job {0}': 'Auftrag {0}',
  'received {0}': 'angeliefert am {0}',
  'unit {0}, {1}': 'Einheit {0}, {1}',
  'on hold: {0}': 'zurückgestellt: {0}',
  'Returns each step of a procedure with what it changes on the unit (parts on or off, faces bare, joints tight, ports open, gates proven or stale), on every path through its repairs. With `step`, that step alone with the whole state before and after it.':
    'Gibt jeden Schritt einer Anweisung mit dem zurück, was er an der Einheit ändert (Teile ein- oder ausgebaut, Flächen frei, Verbindungen angezogen, Anschlüsse offen, Prüfungen bestanden oder hinfällig), auf jedem Weg durch die Nacharbeiten. Mit `step` nur diesen Schritt, mit dem ganzen Zustand davor und danach.',
  '{0} has no step {1}.': '{0} hat keinen Schritt {1}.',
  'Handtight checks machine rebuild procedures (.rebuild files) of a repair shop.':
    'Handtight prüft Anweisungen zur Überholung (.rebuild-Dateien) einer Werkstatt.',
  'Read the chapters of the `language` tool before you draft; check each draft with `check` until it is clean.':
    'Vor dem Entwerfen die Kapitel des Werkzeugs `language` lesen; jeden Entwurf mit `check` prüfen, bis nichts mehr gemeldet wird.',
  'A specification comes from the maker or the lead. Where you do not have one, leave it blank (`spec opening pressure source "…"` is not a place to guess), say so, and let the lead fill it in.':
    'Eine Vorgabe kommt vom Hersteller oder von der Werkstattleitung. Wo keine vorliegt, die Stelle leer lassen (`spec opening pressure source "…"` ist kein Platz zum Raten), das sagen, und die Werkstattleitung ausfüllen lassen.',
  'Local codes, the maker’s data and licensed practice come first.':
    'Örtliche Vorschriften, Herstellerangaben und Fachpraxis gehen vor.',
  'Each as name=value with its unit, such as "guide=6 mm"; several values with commas between':
    'Jeder als Name=Wert mit Einheit, zum Beispiel "guide=6 mm"; mehrere Werte mit Kommas dazwischen',
  'Path from the folder of the server': 'Pfad vom Ordner des Servers aus',
  'The whole text of that file; left out: the files as they are':
    'Der ganze Text dieser Datei; ohne Angabe die Dateien, wie sie sind',
  'Name of the rule, as in a finding': 'Name der Regel, wie in einem Befund',
  'A chapter; left out: the whole reference': 'Ein Kapitel; ohne Angabe die ganze Referenz',
  'The text to lay out; left out: that of the file': 'Der zu formatierende Text; ohne Angabe der der Datei',
  'Save the file. Not together with `text`': 'Die Datei speichern. Nicht zusammen mit `text`',
  'Number of the job': 'Nummer des Auftrags',
  'Serial number, as it is marked on the unit': 'Seriennummer, wie auf der Einheit markiert',
  'Name of the procedure': 'Name der Anweisung',
  'Printed number of a step, such as 6.3 or R1.2': 'Gedruckte Nummer eines Schritts, zum Beispiel 6.3 oder R1.2',
  'Path from the folder of the server, for `text`': 'Pfad vom Ordner des Servers aus, für `text`',
  'A text that is not saved, in which the procedure may be':
    'Ein nicht gespeicherter Text, in dem die Anweisung sein kann',
};
