import type { Bundle } from '../bundle.ts';

export const ide: Bundle = {
  'Explain {0}': 'Explicar {0}',
  'Allow {0} here, with a reason': 'Permitir {0} aquí, con un motivo',
  'Step {0}: {1}': 'Paso {0}: {1}',
};
