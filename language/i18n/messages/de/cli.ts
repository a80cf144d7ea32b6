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
};
