import type { Bundle } from '../bundle.ts';

export const ide: Bundle = {
  'Explain {0}': '{0} erklären',
  'Allow {0} here, with a reason': '{0} hier zulassen, mit Begründung',
  'Step {0}: {1}': 'Schritt {0}: {1}',
};
