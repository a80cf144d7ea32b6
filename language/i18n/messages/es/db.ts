import type { Bundle } from '../bundle.ts';

export const db: Bundle = {
  'reading this shop': 'la lectura de este taller',
  'reading this family': 'la lectura de esta familia',
  'reading this procedure': 'la lectura de este procedimiento',
  'reading this job': 'la lectura de este trabajo',
  'reading this sequence': 'la lectura de esta secuencia',
  'reading what is allowed': 'la lectura de las concesiones',
  'the check of its steps': 'la comprobación de los pasos',
  'Revision {0} of {1} is issued, and its text is no longer what was issued.':
    'La revisión {0} de {1} está emitida, y su texto ya no es el que se emitió.',
  '{0} changed since {1}. A sheet that is printed now would say revision {2} and show other work than the sheets on the bench.':
    '{0}: cambió desde el {1}. Una hoja que se imprima ahora diría revisión {2} y mostraría otro trabajo que las hojas del banco.',
  'Give the procedure the next revision, have it approved, and issue that: npx handtight issue {0}. Or take the change back: {1} has the text that was issued.':
    'Dar al procedimiento la revisión siguiente, hacerla aprobar y emitirla: npx handtight issue {0}. O deshacer el cambio: {1} tiene el texto que se emitió.',
  'This file of an issued revision is not as it was written, so no job is judged by it.':
    'Este archivo de una revisión emitida no está como se escribió, y ningún trabajo se juzga por él.',
  'Take it back from version control or from a backup. What an issued revision says is changed by a new revision only.':
    'Recuperarlo del control de versiones o de una copia de seguridad. Lo que dice una revisión emitida solo lo cambia una revisión nueva.',
  'a limit could be moved in it after the work was done.':
    'en él se podría mover un límite después de hecho el trabajo.',
};
