import type { Bundle } from '../bundle.ts';

export const syntax: Bundle = {
  'This statement has {0} words and symbols; the longest that is read has {1}. Nothing in this file is read until the statement is split into several':
    'Diese Angabe hat {0} Wörter und Zeichen; die längste, die gelesen wird, hat {1}. Nichts in dieser Datei wird gelesen, bis sie in mehrere geteilt ist',
  'This is nested in more than {0} blocks or brackets. Nothing in this file is read until it is nested less deeply':
    'Dies ist in mehr als {0} Blöcke oder Klammern verschachtelt. Nichts in dieser Datei wird gelesen, bis es flacher ist',
  'This number has {0} characters; the longest that is read has {1}. Nothing in this file is read until it is shorter':
    'Diese Zahl hat {0} Zeichen; die längste, die gelesen wird, hat {1}. Nichts in dieser Datei wird gelesen, bis sie kürzer ist',
  'This text has {0} letters; at most {1} are read. Shorten it, or split it over several steps':
    'Dieser Text hat {0} Buchstaben; höchstens {1} werden gelesen. Kürzen, oder auf mehrere Schritte verteilen',
  'This name has {0} letters; at most {1} are read. Give it a shorter one, with the long one in quotes after it':
    'Dieser Name hat {0} Buchstaben; höchstens {1} werden gelesen. Einen kürzeren geben, mit dem langen in Anführungszeichen dahinter',
  'the {0} is not closed here: put } after this line': '{0} ist hier nicht geschlossen: nach dieser Zeile } setzen',
  'this { opens nothing: write the head before it, or delete it':
    'diese { öffnet nichts: davor den Kopf schreiben, oder sie löschen',
  'this } closes nothing: delete it': 'diese } schließt nichts: löschen',
  '{0} follows': '{0} folgt',
  'steps follow': 'Schritte folgen',
  'this } ends the {0}, but {1} it: delete it': 'diese } beendet {0}, aber {1} noch: löschen',
  'the head of this {0} ends without {: put { at the end of the line':
    'der Kopf von {0} endet ohne {: am Ende der Zeile { setzen',
  'the {0} that begins on this line is not closed: put } at its end':
    '{0}, das in dieser Zeile beginnt, ist nicht geschlossen: an seinem Ende } setzen',
  'the {0} is not closed: put } at the end': '{0} ist nicht geschlossen: am Ende } setzen',
  'a name is written without quotes: write {0} {1}': 'ein Name steht ohne Anführungszeichen: {0} {1} schreiben',
  'the name is missing before the title: write {0} {1} {2}, or another short name':
    'vor der Benennung fehlt der Name: {0} {1} {2} schreiben, oder einen anderen kurzen Namen',
  'the name of this {0} is missing: write a short one of your own after {1}':
    'der Name fehlt ({0}): nach {1} einen kurzen eigenen schreiben',
  'no such word: {0}. It is read as {1}; write {2}':
    'dieses Wort gibt es nicht: {0}. Es wird als {1} gelesen; {2} schreiben',
  'This file has {0} characters; the longest that is read has {1}. Split the declarations over several files.':
    'Diese Datei hat {0} Zeichen; die längste, die gelesen wird, hat {1}. Die Angaben auf mehrere Dateien verteilen.',
  'What follows has not been read yet: correct the lines above first.':
    'Was folgt, ist noch nicht gelesen: zuerst die Zeilen darüber berichtigen.',
  'The closing quote is missing: put " at the end of the text.':
    'Das schließende Anführungszeichen fehlt: am Ende des Textes " setzen.',
  'This blank is still to be filled in: write the figure, the name or the words in the place of “…”.':
    'Diese Lücke ist noch auszufüllen: den Wert, den Namen oder die Wörter an die Stelle von „…“ schreiben.',
  'A remark begins with //: write // instead of #.': 'Eine Bemerkung beginnt mit //: // statt # schreiben.',
  'Curly quotes are not read: use straight ones, "…".':
    'Typografische Anführungszeichen werden nicht gelesen: gerade verwenden, "…".',
  'A long dash is not read: write .. between the ends of a range, or - inside a name.':
    'Ein Gedankenstrich wird nicht gelesen: .. zwischen die Enden eines Bereichs schreiben, oder - in einem Namen.',
  '{0} has no meaning here: delete it, or put it inside "…".':
    '{0} hat hier keine Bedeutung: löschen, oder in "…" setzen.',
  ' after {0}': ' nach {0}',
  'This line breaks off after {0}: something is missing. Finish the line, or delete {1}.':
    'Diese Zeile bricht nach {0} ab: es fehlt etwas. Die Zeile beenden, oder {1} löschen.',
  'This line breaks off{0}: {1}. Finish the line, or delete it.':
    'Diese Zeile bricht{0} ab: {1}. Die Zeile beenden, oder löschen.',
  'something is missing': 'es fehlt etwas',
  '{0} is missing': '{0} fehlt',
  '{0} is a word of the language and cannot be a name. Choose another name.':
    '{0} ist ein Wort der Sprache und kann kein Name sein. Einen anderen Namen wählen.',
  '“{0} {1}” is read as two numbers: thousands have no space. Write {2}{3}, or delete one of them.':
    '„{0} {1}“ wird als zwei Zahlen gelesen: Tausender haben kein Leerzeichen. {2}{3} schreiben, oder eine davon löschen.',
  '{0} has no unit here{1}. Write the number with its unit, such as 250 bar or 3 times.':
    '{0} hat hier{1} keine Einheit. Die Zahl mit ihrer Einheit schreiben, zum Beispiel 250 bar oder 3 times.',
  '{0} is out of place here{1}{2}. Correct the line, or delete {3}.':
    '{0} ist hier{1} fehl am Platz{2}. Die Zeile berichtigen, oder {3} löschen.',
  ': {0} should follow': ': {0} müsste folgen',
  'A list has commas, and no “and”: write a comma here.':
    'Eine Liste hat Kommas und kein „and“: hier ein Komma schreiben.',
  '{0} has no unit. Write the number with its unit, then the tolerance, such as 20 bar ±2.':
    '{0} hat keine Einheit. Die Zahl mit ihrer Einheit schreiben, dann die Toleranz, zum Beispiel 20 bar ±2.',
  'A date is written year-month-day, such as 2026-09-01.':
    'Ein Datum wird Jahr-Monat-Tag geschrieben, zum Beispiel 2026-09-01.',
  '{0} is out of place here after {1}. If it begins a title, put the whole title in quotes: "{2} …".':
    '{0} ist hier nach {1} fehl am Platz. Beginnt damit eine Benennung, die ganze Benennung in Anführungszeichen setzen: "{2} …".',
  'This file is in UTF-16. Save it as UTF-8: in the editor, click the encoding at the bottom of the window and choose Save with Encoding, UTF-8.':
    'Diese Datei ist in UTF-16. Als UTF-8 speichern: im Editor unten im Fenster auf die Codierung klicken und „Mit Codierung speichern“, UTF-8 wählen.',
  'This file is not text: it holds binary data. Move it out of the folder, or give it a different extension than .rebuild.':
    'Diese Datei ist kein Text: sie enthält Binärdaten. Aus dem Ordner entfernen, oder eine andere Endung als .rebuild geben.',
  'This character was not written in UTF-8, so the file is not read. Save it as UTF-8: then ° ± · µ and accents come out right.':
    'Dieses Zeichen ist nicht in UTF-8 geschrieben, also wird die Datei nicht gelesen. Als UTF-8 speichern: dann stimmen ° ± · µ und Umlaute.',
  'This is a control character. It cannot be seen, and on a screen or a printer it can hide or change the text around it':
    'Das ist ein Steuerzeichen. Es ist unsichtbar und kann auf Bildschirm oder Drucker den Text darum verbergen oder verändern',
  'This character changes the direction of the text. It cannot be seen, and what is shown can differ from what is read and printed':
    'Dieses Zeichen ändert die Richtung des Textes. Es ist unsichtbar, und was angezeigt wird, kann von dem abweichen, was gelesen und gedruckt wird',
  'This character has no width. It cannot be seen, and a name or a number with it is not the same as one without':
    'Dieses Zeichen hat keine Breite. Es ist unsichtbar, und ein Name oder eine Zahl damit ist nicht dasselbe wie ohne',
  '{0} ({1}). Delete it; if that does not work, retype the line.':
    '{0} ({1}). Löschen; hilft das nicht, die Zeile neu schreiben.',
  'These quotes are empty, and whatever needs their words would take them as given. Write the words, or delete the quotes and what introduces them.':
    'Diese Anführungszeichen sind leer, und die Wörter würden als angegeben gelten. Die Wörter schreiben, oder die Anführungszeichen mit dem löschen, was davor dazugehört.',
  '{0} is out of place here after {1}. Quotes are for your own words; a name is written without them: {2}.':
    '{0} ist hier nach {1} fehl am Platz. In Anführungszeichen stehen eigene Worte; ein Name wird ohne sie geschrieben: {2}.',
};
