import type { Bundle } from '../bundle.ts';

export const config: Bundle = {
  'None of these settings is used. {0}': 'Keine dieser Einstellungen wird verwendet. {0}',
  'This settings file is not text in UTF-8, so none of it is used. Save it as UTF-8.':
    'Diese Einstellungsdatei ist kein Text in UTF-8, also wird nichts davon verwendet. Als UTF-8 speichern.',
  'is empty': 'ist leer',
  'cannot be read here ({0})': 'ist hier nicht lesbar ({0})',
  'This settings file {0}, so none of it is used. Correct it, or delete the file.':
    'Diese Einstellungsdatei {0}, also wird nichts davon verwendet. Berichtigen oder löschen.',
  'Did you mean {0}?': 'Ist {0} gemeint?',
  ' or ': ' oder ',
  'Delete it.': 'Löschen.',
  'No rule is called {0}. {1}': 'Keine Regel heißt {0}. {1}',
  '{0} is no setting. {1}': '{0} ist keine Einstellung. {1}',
  '{0} keeps a sheet from being released that could hurt somebody: it stays an error. Where one step is right as it is, write allow {1} because "…" there; the reason prints on the sheet.':
    '{0} verhindert, dass ein Blatt freigegeben wird, das jemanden verletzen könnte, und bleibt ein Fehler. Wo ein Schritt so richtig ist, dort allow {1} because "…" schreiben; die Begründung wird mitgedruckt.',
  'A severity is "error", "warning", "hint" or "off".': 'Eine Schwere ist "error", "warning", "hint" oder "off".',
  'What is not read is a list of up to 100 patterns as in .gitignore, such as ["archive/", "*.draft.rebuild"]: each with at most 200 characters, two * between slashes, and two **.':
    'Was nicht gelesen wird, ist eine Liste von bis zu 100 Mustern wie in .gitignore, zum Beispiel ["archive/", "*.draft.rebuild"]: jedes mit höchstens 200 Zeichen, zwei * zwischen Schrägstrichen und zwei **.',
  'Messages are in "en", "es" or "de".': 'Meldungen gibt es in "en", "es" oder "de".',
  'Settings are written like { "severities": { "part-not-located": "error" } }.':
    'Einstellungen werden so geschrieben: { "severities": { "part-not-located": "error" } }.',
  'Of the sheet a word, a language ("en", "es" or "de"), a paper ("a4" or "letter") and a form ("card", "record" or "instruction") can be said, and kinds: what shim, shims, spring and springs are called.':
    'Zum Blatt lassen sich ein Wort, eine Sprache ("en", "es" oder "de"), ein Papier ("a4" oder "letter") und eine Form ("card", "record" oder "instruction") angeben, und kinds: wie shim, shims, spring und springs heißen.',
};
