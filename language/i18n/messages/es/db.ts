import type { Bundle } from '../bundle.ts';

export const db: Bundle = {
  'reading this shop': 'la lectura de este taller',
  'reading this family': 'la lectura de esta familia',
  'reading this procedure': 'la lectura de este procedimiento',
  'reading this job': 'la lectura de este trabajo',
  'reading this sequence': 'la lectura de esta secuencia',
  'reading what is allowed': 'la lectura de las concesiones',
  'the check of its steps': 'la comprobación de los pasos',
};
