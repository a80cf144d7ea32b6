import type { Bundle } from '../bundle.ts';

export const diagnostics: Bundle = {
  'the rule {0}': 'la regla {0}',
  'The step was taken over from {0}.': 'El paso se tomó de {0}.',
  'Step {0}, taken over from {1}: {2}': 'Paso {0}, tomado de {1}: {2}',
  'This concession silences nothing: {0} finds nothing here.':
    'Esta concesión no silencia nada: {0} no encuentra nada aquí.',
  'it would print on the sheet for no reason.': 'se imprimiría en la hoja sin motivo.',
  'No rule is called {0}, so this concession silences nothing.':
    'Ninguna regla se llama {0}, así que esta concesión no silencia nada.',
  'the finding that it is meant for is still reported.': 'el hallazgo al que va destinada se sigue mostrando.',
  'Copy the name from the finding that it is for.': 'Copiar el nombre del hallazgo al que va destinada.',
  'This is a defect of Handtight, not of your text: {0} stopped with “{1}”, and what it looks for is not checked here. Everything else is. Please report it, with this file.':
    'Es un defecto de Handtight, no de su texto: {0} se detuvo con «{1}», y aquí no se comprueba lo que busca. Todo lo demás, sí. Le rogamos que lo comunique, con este archivo.',
  'There are too many paths through {0}: every test can send the unit to every repair, and after {1} steps some are still left. So the order of its steps is not checked, and no sheet of it is released. Give each test only the repairs that help it, or split the procedure in two.':
    'Hay demasiados caminos por {0}: cada prueba puede enviar la unidad a cada reparación, y tras {1} pasos quedan todavía algunos. Por eso no se comprueba el orden de sus pasos, y no se libera ninguna hoja. Dar a cada prueba solo las reparaciones que la ayudan, o dividir el procedimiento en dos.',
  'Only for {0}.': 'Solo para {0}.',
  'Since step {0}.': 'Desde el paso {0}.',
  'The step is part of sequence {0}.': 'El paso forma parte de la secuencia {0}.',
  'This happens {0}.': 'Esto ocurre {0}.',
  'Write it in quotes': 'Escribirlo entre comillas',
  'Write “{0}”': 'Escribir «{0}»',
  'Write “{0}” before {1}': 'Escribir «{0}» antes {en1, select, it {de esto} other {del {1}}}',
  'Write “{0}” after {1}': 'Escribir «{0}» después {en1, select, it {de esto} other {del {1}}}',
  'Write “{0}” where it is declared': 'Escribir «{0}» donde se declara',
  'Delete it': 'Borrarlo',
  'Write “{0}” instead': 'Escribir «{0}» en su lugar',
  'It follows from this line of the family: {0} {1}.': 'Se deduce de esta línea de la familia: {0} {1}.',
};
