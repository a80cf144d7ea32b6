import type { Bundle } from '../bundle.ts';

export const config: Bundle = {
  'None of these settings is used. {0}': 'No se usa ninguno de estos ajustes. {0}',
  'This settings file is not text in UTF-8, so none of it is used. Save it as UTF-8.':
    'Este archivo de ajustes no es texto en UTF-8, así que no se usa nada de él. Guardarlo en UTF-8.',
  'is empty': 'está vacío',
  'cannot be read here ({0})': 'no se puede leer aquí ({0})',
  'This settings file {0}, so none of it is used. Correct it, or delete the file.':
    'Este archivo de ajustes {0}, así que no se usa nada de él. Corregirlo o borrarlo.',
  'Did you mean {0}?': '¿Quería decir {0}?',
  ' or ': ' o ',
  'Delete it.': 'Borrarlo.',
  'No rule is called {0}. {1}': 'Ninguna regla se llama {0}. {1}',
  '{0} is no setting. {1}': '{0} no es un ajuste. {1}',
  '{0} keeps a sheet from being released that could hurt somebody: it stays an error. Where one step is right as it is, write allow {1} because "…" there; the reason prints on the sheet.':
    '{0} impide que se libere una hoja que podría herir a alguien: sigue siendo un error. Donde un paso está bien así, escribir allow {1} because "…"; el motivo se imprime en la hoja.',
  'A severity is "error", "warning", "hint" or "off".': 'Una gravedad es "error", "warning", "hint" u "off".',
  'What is not read is a list of up to 100 patterns as in .gitignore, such as ["archive/", "*.draft.rebuild"]: each with at most 200 characters, two * between slashes, and two **.':
    'Lo que no se lee es una lista de hasta 100 patrones como en .gitignore, por ejemplo ["archive/", "*.draft.rebuild"]: cada uno con 200 caracteres como máximo, dos * entre barras y dos **.',
  'Messages are in "en", "es" or "de".': 'Los mensajes van en "en", "es" o "de".',
  'Settings are written like { "severities": { "part-not-located": "error" } }.':
    'Los ajustes se escriben así: { "severities": { "part-not-located": "error" } }.',
  'Of the sheet a word, a language ("en", "es" or "de"), a paper ("a4" or "letter") and a form ("card", "record" or "instruction") can be said, and kinds: what shim, shims, spring and springs are called.':
    'De la hoja se pueden indicar una palabra, un idioma ("en", "es" o "de"), un papel ("a4" o "letter") y una forma ("card", "record" o "instruction"), y clases: cómo se llaman shim, shims, spring y springs.',
};
