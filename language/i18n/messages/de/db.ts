import type { Bundle } from '../bundle.ts';

export const db: Bundle = {
  'reading this shop': 'das Lesen dieser Werkstatt',
  'reading this family': 'das Lesen dieser Baureihe',
  'reading this procedure': 'das Lesen dieser Anweisung',
  'reading this job': 'das Lesen dieses Auftrags',
  'reading this sequence': 'das Lesen dieser Schrittfolge',
  'reading what is allowed': 'das Lesen der Sonderfreigaben',
  'the check of its steps': 'die Prüfung der Schritte',
};
