import type { Bundle } from '../bundle.ts';

export const cli: Bundle = {
  '… and {0} more.': '… y {0} más.',
  error: 'error',
  warning: 'advertencia',
  'step {0}': 'paso {0}',
  '{0} file checked': '{0} archivo comprobado',
  '{0} files checked': '{0} archivos comprobados',
  '{0} error': '{0} error',
  '{0} errors': '{0} errores',
  '{0} warning': '{0} advertencia',
  '{0} warnings': '{0} advertencias',
  '{0}: nothing found.': '{0}: nada que señalar.',
  '{0} changes the severity of {1} finding or turns it off.': '{0} cambia la gravedad de {1} hallazgo o lo desactiva.',
  '{0} changes the severity of {1} findings or turns them off.':
    '{0} cambia la gravedad de {1} hallazgos o los desactiva.',
  'For more on the first: npx handtight explain {0}': 'Más sobre lo primero: npx handtight explain {0}',
  'For more on {0}: npx handtight explain {1}': 'Más sobre {0}: npx handtight explain {1}',
};
