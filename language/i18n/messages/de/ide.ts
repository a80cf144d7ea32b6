import { type Bundle, withoutArticle } from '../bundle.ts';
import { terms } from './terms.ts';

const article = /^eine? /u;

export const ide: Bundle = {
  'Explain {0}': '{0} erklären',
  'Allow {0} here, with a reason': '{0} hier zulassen, mit Begründung',
  'Step {0}: {1}': 'Schritt {0}: {1}',
  'Apply all safe fixes': 'Alle sicheren Korrekturen anwenden',
  Print: 'Drucken',
  'Not called': 'Nicht aufgerufen',
  'Called once': 'Einmal aufgerufen',
  'Called {0} times': '{0}-mal aufgerufen',
  'under {0}': 'unter {0}',
  'discarded: renew it first': 'entsorgt: zuerst erneuern',
  'goes on {0}': 'kommt auf {0}',
  'already tested': 'schon geprüft',
  'still owed: proves the family': 'noch offen: weist die Baureihe nach',
  'not passed yet': 'noch nicht bestanden',
  'All that is written down of a unit, in the order of the card; tab goes to the next blank':
    'Alles, was zu einer Einheit eingetragen wird, in der Reihenfolge der Karte; die Tabulatortaste springt zur nächsten Lücke',
  'Results of a unit': 'Ergebnisse einer Einheit',
  'unit of {0}': `Einheit für ${withoutArticle(terms, article, 0)}`,
  Shop: 'Werkstatt',
  'A shop: stations, wrenches, gauges, tools, fluids, stock':
    'Eine Werkstatt: Arbeitsplätze, Drehmomentschlüssel, Manometer, Werkzeuge, Flüssigkeiten, Vorrat',
  Family: 'Baureihe',
  'A family of units: parts, faces, ports, joints, what proves them':
    'Eine Baureihe: Teile, Flächen, Anschlüsse, Verbindungen, und was sie nachweist',
  Procedure: 'Anweisung',
  'A procedure for a family at a shop': 'Eine Anweisung für eine Baureihe in einer Werkstatt',
  'Part number': 'Teilenummer',
  'A part number with the specs that differ': 'Eine Teilenummer mit den abweichenden Vorgaben',
  Spec: 'Vorgabe',
  'A limit with its source': 'Ein Grenzwert mit seiner Quelle',
  Stage: 'Arbeitsgang',
  'Steps done at one station': 'Schritte an einem Arbeitsplatz',
  Test: 'Prüfung',
  'A test with a reading, its limit and what to do when it fails':
    'Eine Prüfung mit Messwert, Grenzwert und dem, was zu tun ist, wenn sie nicht bestanden wird',
  Check: 'Sichtprüfung',
  'A look at a face or a part, with what is good enough':
    'Ein Blick auf eine Fläche oder ein Teil, mit dem, was gut genug ist',
  Repair: 'Nacharbeit',
  'What is done when a gate fails, before it is tried again':
    'Was zu tun ist, wenn eine Prüfung nicht bestanden wird, bevor sie wiederholt wird',
  Job: 'Auftrag',
  'A work order: the set of units that came in': 'Ein Arbeitsauftrag: der Satz Einheiten, der angeliefert wurde',
  'it is run down, and not tight': 'sie ist beigedreht und nicht angezogen',
  'they are tight': 'sie sind angezogen',
  'in the order in which they come off': 'in der Reihenfolge, in der sie abgehen',
  'in the order in which they go on': 'in der Reihenfolge, in der sie eingebaut werden',
  'what they hold is in place': 'was sie halten, ist eingebaut',
  'they are capped': 'sie sind verschlossen',
  'they are open': 'sie sind offen',
  'it is open': 'er ist offen',
  'the unit is under pressure': 'die Einheit steht unter Druck',
  'no pressure is on them': 'sie sind drucklos',
  'it is clamped': 'sie ist eingespannt',
  'nothing holds it': 'nichts hält sie',
  'still owed: the family is proven by it': 'noch offen: die Baureihe wird damit nachgewiesen',
  'Not laid out: line {0} cannot be read. {1}': 'Nicht formatiert: Zeile {0} ist nicht lesbar. {1}',
  '{0}, to four digits': `${withoutArticle(terms, article, 0)}, auf vier Stellen`,
  'Step {0} changes:': 'Schritt {0} ändert:',
  '{0} of {1} {2}':
    '{0} {en1, select, family {der Baureihe} shop {der Werkstatt} procedure {der Anweisung} job {des Auftrags} sequence {der Schrittfolge} other {von {1}}} {2}',
  all: 'alle',
  Number: 'Nummer',
  Figure: 'Wert',
  Limit: 'Grenzwert',
  Tool: 'Werkzeug',
  Ratio: 'Verhältnis',
  Steps: 'Schritte',
  '{0} to {1}': '{0} bis {1}',
  'at least {0}': 'mindestens {0}',
  'at most {0}': 'höchstens {0}',
  'always renewed': 'wird immer erneuert',
  'located by {0}': 'fixiert durch {0}',
  'chosen from {0}': 'wird ausgewählt aus {0}',
  'matched to {0}': 'gepaart mit {0}',
  'held in {0}': 'eingespannt in {0}',
  'marks: {0}': 'Markierungen: {0}',
  'must slide': 'muss gleiten',
  'must turn freely': 'muss sich frei drehen',
  'supplied loose': 'wird lose geliefert',
  'its coils bind over {0} {1} of shim': 'geht über {0} {1} Einstellscheibe auf Block',
  'with {0}': 'bei {0}',
  '{0} since step {1}': '{0} seit Schritt {1}',
  'Here: {0}.': 'Hier: {0}.',
  'and {0} more': 'und {0} weitere',
  'There is no procedure and no job in this file: only they print.':
    'In dieser Datei gibt es keine Anweisung und keinen Auftrag: nur diese werden gedruckt.',
  'There is no family in this file, and no procedure for one: only they are drawn.':
    'In dieser Datei gibt es keine Baureihe und keine Anweisung für eine: nur diese werden gezeichnet.',
  'Family {0} could not be read yet.': 'Die Baureihe {0} ist noch nicht lesbar.',
  'Family {0} has no parts yet. Write “part body "Body"” to begin.':
    'Die Baureihe {0} hat noch keine Teile. Zum Anfang „part body "Body"“ schreiben.',
  'Job {0} has no sheet yet: its procedure was not found, or could not be read.':
    'Der Auftrag {0} hat noch kein Blatt: seine Anweisung wurde nicht gefunden oder ist nicht lesbar.',
  'Procedure {0} has no sheet yet: its family or its shop was not found, or could not be read.':
    'Die Anweisung {0} hat noch kein Blatt: ihre Baureihe oder ihre Werkstatt wurde nicht gefunden oder ist nicht lesbar.',
  'No procedure of this workspace is called {0}. Open the folder that the sheet was printed from, and scan or click again.':
    'Keine Anweisung in diesem Arbeitsbereich heißt {0}. Den Ordner öffnen, aus dem das Blatt gedruckt wurde, und noch einmal scannen oder klicken.',
  'No job of this workspace is called {0}. Open the folder that the sheet was printed from, and scan or click again.':
    'Kein Auftrag in diesem Arbeitsbereich heißt {0}. Den Ordner öffnen, aus dem das Blatt gedruckt wurde, und noch einmal scannen oder klicken.',
  'Extract a sequence': 'Eine Schrittfolge herausziehen',
  'Make it a spec: {0}': 'Als Vorgabe schreiben: {0}',
  'Add a part number': 'Eine Teilenummer hinzufügen',
  'Write the build from this teardown': 'Den Zusammenbau zu dieser Zerlegung schreiben',
  'Write a sister procedure like this one': 'Eine Schwesteranweisung wie diese schreiben',
  'Split the stage here': 'Den Arbeitsgang hier teilen',
  'There is no name here. Put the cursor on a name that you gave: of a part, a spec, a stage.':
    'Hier ist kein Name. Den Cursor auf einen selbst vergebenen Namen setzen: eines Teils, einer Vorgabe, eines Arbeitsgangs.',
  'Words in quotes are printed as they are: change them in the text.':
    'Worte in Anführungszeichen werden gedruckt, wie sie sind: im Text ändern.',
  '“{0}” is a word of the language here, not a name that you gave.':
    '„{0}“ ist hier ein Wort der Sprache, kein selbst vergebener Name.',
  '“{0}” is not declared anywhere. Declare it, or correct it, before you rename it.':
    '„{0}“ ist nirgends angegeben. Vor dem Umbenennen angeben oder berichtigen.',
  'There is no name here.': 'Hier ist kein Name.',
  '{0} is a name of an issued revision, which never changes: {1}. Rename it in the procedure, under its next revision.':
    '{0} ist ein Name einer freigegebenen Revision, die sich nie ändert: {1}. In der Anweisung umbenennen, unter ihrer nächsten Revision.',
  'A name cannot be empty, nor have a quote or a line end in it.':
    'Ein Name darf nicht leer sein und weder Anführungszeichen noch Zeilenende enthalten.',
  '“{0}” cannot be a name. A name begins with a letter and goes on with letters, digits, _ and single hyphens.':
    '„{0}“ kann kein Name sein. Ein Name beginnt mit einem Buchstaben; danach kommen Buchstaben, Ziffern, _ und einzelne Bindestriche.',
  '“{0}” joins the words of a step, and cannot be a name.':
    '„{0}“ verbindet die Wörter eines Schritts und kann kein Name sein.',
  '“{0}” is a word of the language: a sequence of this name could not be called.':
    '„{0}“ ist ein Wort der Sprache: eine Schrittfolge dieses Namens ließe sich nicht aufrufen.',
  'There is already a {0} {1}: {2}. Two of one name cannot be distinguished.':
    '{0} {1} gibt es schon: {2}. Zwei gleichen Namens lassen sich nicht unterscheiden.',
  '“{0}” already means something else there: {1}. Choose another name.':
    '„{0}“ bedeutet dort schon etwas anderes: {1}. Einen anderen Namen wählen.',
  '“{0}” would be read as something else where it is used. Choose another name.':
    '„{0}“ würde dort, wo es verwendet wird, als etwas anderes gelesen. Einen anderen Namen wählen.',
  'line {0} of {1}': 'Zeile {0} in {1}',
  'A sequence has a state only where it is called.':
    'Eine Schrittfolge hat nur dort einen Zustand, wo sie aufgerufen wird.',
  'Put the cursor in a step of a procedure.': 'Den Cursor in einen Schritt einer Anweisung setzen.',
  'Nothing is known of the unit here: no path leads to this place, or the procedure cannot be followed.':
    'Hier ist von der Einheit nichts bekannt: kein Weg führt hierher, oder die Anweisung lässt sich nicht verfolgen.',
  'at {0}': 'bei {0}',
  bare: 'frei',
  'on some paths': 'auf manchen Wegen',
  'Goes on with {0}.': 'Weiter mit {0}.',
  '**{0}** after {1}: {2}': '**{0}** nach {1}: {2}',
  'Its cautions:': 'Die Warnungen dazu:',
  'weighs {0}': 'wiegt {0}',
  'of {0}': 'aus {0}',
  '{0} per unit': '{0} je Einheit',
};
