import type { Bundle } from '../bundle.ts';

export const db: Bundle = {
  'reading this shop': 'das Lesen dieser Werkstatt',
  'reading this family': 'das Lesen dieser Baureihe',
  'reading this procedure': 'das Lesen dieser Anweisung',
  'reading this job': 'das Lesen dieses Auftrags',
  'reading this sequence': 'das Lesen dieser Schrittfolge',
  'reading what is allowed': 'das Lesen der Sonderfreigaben',
  'the check of its steps': 'die Prüfung der Schritte',
  'Revision {0} of {1} is issued, and its text is no longer what was issued.':
    'Revision {0} von {1} ist ausgegeben, und ihr Text ist nicht mehr der ausgegebene.',
  '{0} changed since {1}. A sheet that is printed now would say revision {2} and show other work than the sheets on the bench.':
    '{0}: seit dem {1} geändert. Ein Blatt, das jetzt gedruckt wird, trüge die Revision {2} und zeigte andere Arbeit als die Blätter am Arbeitsplatz.',
  'Give the procedure the next revision, have it approved, and issue that: npx handtight issue {0}. Or take the change back: {1} has the text that was issued.':
    'Dem Verfahren die nächste Revision geben, sie freigeben lassen und ausgeben: npx handtight issue {0}. Oder die Änderung zurücknehmen: {1} enthält den ausgegebenen Text.',
  'This file of an issued revision is not as it was written, so no job is judged by it.':
    'Diese Datei einer ausgegebenen Revision ist nicht so, wie sie geschrieben wurde; kein Auftrag wird danach beurteilt.',
  'Take it back from version control or from a backup. What an issued revision says is changed by a new revision only.':
    'Sie aus der Versionsverwaltung oder aus einer Sicherung zurückholen. Was eine ausgegebene Revision sagt, ändert nur eine neue Revision.',
  'a limit could be moved in it after the work was done.':
    'darin könnte ein Grenzwert verschoben werden, nachdem die Arbeit getan ist.',
};
