import type { Bundle } from '../bundle.ts';

export const language: Bundle = {
  'This concession silences {0} but does not say why.': 'Esta concesión silencia {0}, pero no dice por qué.',
  'it prints on the sheet, and nobody who reads it can judge it.':
    'se imprime en la hoja, y nadie que la lea puede juzgarla.',
  'Write the reason in the quotes, or delete the concession.':
    'Escribir el motivo entre las comillas, o borrar la concesión.',
  '{0} is first declared here.': '{0} se declara aquí por primera vez.',
  '{0} {1} is already declared.': '{0} {1}: ya está declarado.',
  'the first declaration is used, and this one is ignored.': 'se usa la primera declaración, y esta no cuenta.',
  'Rename one of them.': 'Cambiar uno de los nombres.',
  'Nothing sends a unit to {0}, so it is never done.': 'Nada envía una unidad a {0}, así que nunca se hace.',
  'the test that it was written for cannot use it.': 'la prueba para la que se escribió no puede usarla.',
  'Name it after “on fail”, or delete the repair.': 'Nombrarla después de «on fail», o borrar la reparación.',
  'A unit never gets to {0}.': 'Una unidad nunca llega a {0}.',
  '{0} comes first and may be tried any number of times.':
    '{0} viene antes y se puede intentar cuantas veces se quiera.',
  'Limit the tries, such as {0} (3 times).': 'Limitar los intentos, por ejemplo {0} (3 times).',
  'Declare it, or correct the name.': 'Declararlo, o corregir el nombre.',
  '{0} is named here too.': '{0} se nombra también aquí.',
  'No {0} is called {1}.': 'No está declarado: {0} {1}.',
  'Write {0}': 'Escribir {0}',
};
