import type { Bundle } from '../bundle.ts';

export const language: Bundle = {
  'This concession silences {0} but does not say why.': 'Diese Sonderfreigabe unterdrückt {0}, sagt aber nicht, warum.',
  'it prints on the sheet, and nobody who reads it can judge it.':
    'sie wird gedruckt, und niemand, der sie liest, kann sie beurteilen.',
  'Write the reason in the quotes, or delete the concession.':
    'Die Begründung in die Anführungszeichen schreiben, oder die Sonderfreigabe löschen.',
  '{0} is first declared here.': '{0} ist hier zum ersten Mal angegeben.',
  '{0} {1} is already declared.': '{0} {1} ist schon angegeben.',
  'the first declaration is used, and this one is ignored.': 'die erste Angabe gilt, und diese wird nicht beachtet.',
  'Rename one of them.': 'Eines von beiden umbenennen.',
  'Nothing sends a unit to {0}, so it is never done.': 'Nichts schickt eine Einheit zu {0}, also wird das nie gemacht.',
  'the test that it was written for cannot use it.':
    'die Prüfung, für die sie geschrieben wurde, kann sie nicht nutzen.',
  'Name it after “on fail”, or delete the repair.': 'Nach „on fail“ nennen, oder die Nacharbeit löschen.',
  'A unit never gets to {0}.': 'Eine Einheit kommt nie zu {0}.',
  '{0} comes first and may be tried any number of times.': '{0} kommt zuerst und darf beliebig oft versucht werden.',
  'Limit the tries, such as {0} (3 times).': 'Die Versuche begrenzen, zum Beispiel {0} (3 times).',
  'Declare it, or correct the name.': 'Angeben, oder den Namen berichtigen.',
  '{0} is named here too.': '{0} wird auch hier genannt.',
  'No {0} is called {1}.': '{0} {1} gibt es nicht.',
  'Write {0}': '{0} schreiben',
};
