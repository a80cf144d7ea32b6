import type { Bundle } from '../bundle.ts';

export const diagnostics: Bundle = {
  'the rule {0}': 'die Regel {0}',
  'The step was taken over from {0}.': 'Der Schritt wurde aus {0} übernommen.',
  'Step {0}, taken over from {1}: {2}': 'Schritt {0}, aus {1} übernommen: {2}',
  'This concession silences nothing: {0} finds nothing here.':
    'Diese Sonderfreigabe unterdrückt nichts: {0} findet hier nichts.',
  'it would print on the sheet for no reason.': 'sie stünde ohne Grund auf dem Blatt.',
  'No rule is called {0}, so this concession silences nothing.':
    'Keine Regel heißt {0}, also unterdrückt diese Sonderfreigabe nichts.',
  'the finding that it is meant for is still reported.': 'der Befund, für den sie gedacht ist, wird weiter gemeldet.',
  'Copy the name from the finding that it is for.': 'Den Namen aus dem Befund kopieren, für den sie gedacht ist.',
  'This is a defect of Handtight, not of your text: {0} stopped with “{1}”, and what it looks for is not checked here. Everything else is. Please report it, with this file.':
    'Das ist ein Fehler von Handtight, nicht Ihres Textes: {0} wurde abgebrochen („{1}“), und was damit gesucht wird, ist hier nicht geprüft. Alles andere schon. Bitte melden Sie es, mit dieser Datei.',
  'There are too many paths through {0}: every test can send the unit to every repair, and after {1} steps some are still left. So the order of its steps is not checked, and no sheet of it is released. Give each test only the repairs that help it, or split the procedure in two.':
    'Es gibt zu viele Wege durch {0}: Jede Prüfung kann die Einheit zu jeder Nacharbeit schicken, und nach {1} Schritten sind noch welche übrig. Darum wird die Reihenfolge der Schritte nicht geprüft und kein Blatt freigegeben. Jeder Prüfung nur die Nacharbeiten geben, die ihr helfen, oder die Anweisung in zwei teilen.',
  'Only for {0}.': 'Nur für {0}.',
  'Since step {0}.': 'Seit Schritt {0}.',
  'The step is part of sequence {0}.': 'Der Schritt gehört zur Schrittfolge {0}.',
  'This happens {0}.': 'Das geschieht {0}.',
  'Write it in quotes': 'In Anführungszeichen schreiben',
  'Write “{0}”': '„{0}“ schreiben',
  'Write “{0}” before {1}': '{en1, select, it {„{0}“ davor schreiben} other {„{0}“ vor {1} schreiben}}',
  'Write “{0}” after {1}': '{en1, select, it {„{0}“ dahinter schreiben} other {„{0}“ nach {1} schreiben}}',
  'Write “{0}” where it is declared': '„{0}“ bei der Angabe schreiben',
  'Delete it': 'Löschen',
  'Write “{0}” instead': 'Stattdessen „{0}“ schreiben',
  'It follows from this line of the family: {0} {1}.': 'Das folgt aus dieser Zeile der Familie: {0} {1}.',
};
