import type { Bundle } from '../bundle.ts';

export const syntax: Bundle = {
  'This statement has {0} words and symbols; the longest that is read has {1}. Nothing in this file is read until the statement is split into several':
    'Esta instrucción tiene {0} palabras y signos; la más larga que se lee tiene {1}. No se lee nada de este archivo hasta que se divida en varias',
  'This is nested in more than {0} blocks or brackets. Nothing in this file is read until it is nested less deeply':
    'Esto está anidado en más de {0} bloques o paréntesis. No se lee nada de este archivo hasta que haya menos niveles',
  'This number has {0} characters; the longest that is read has {1}. Nothing in this file is read until it is shorter':
    'Este número tiene {0} caracteres; el más largo que se lee tiene {1}. No se lee nada de este archivo hasta que sea más corto',
  'This text has {0} letters; at most {1} are read. Shorten it, or split it over several steps':
    'Este texto tiene {0} letras; se leen {1} como máximo. Acortarlo, o repartirlo en varios pasos',
  'This name has {0} letters; at most {1} are read. Give it a shorter one, with the long one in quotes after it':
    'Este nombre tiene {0} letras; se leen {1} como máximo. Darle uno más corto, con el largo entre comillas detrás',
  'the {0} is not closed here: put } after this line': '{0} no está cerrado aquí: poner } después de esta línea',
  'this { opens nothing: write the head before it, or delete it':
    'esta { no abre nada: escribir antes la cabecera, o borrarla',
  'this } closes nothing: delete it': 'esta } no cierra nada: borrarla',
  '{0} follows': '{0} va detrás',
  'steps follow': 'hay pasos detrás',
  'this } ends the {0}, but {1} it: delete it': 'esta } cierra {0}, pero {1}: borrarla',
  'the head of this {0} ends without {: put { at the end of the line':
    'la cabecera de {0} acaba sin {: poner { al final de la línea',
  'the {0} that begins on this line is not closed: put } at its end':
    '{0}, que empieza en esta línea, no está cerrado: poner } en su final',
  'the {0} is not closed: put } at the end': '{0} no está cerrado: poner } al final',
  'a name is written without quotes: write {0} {1}': 'un nombre se escribe sin comillas: escribir {0} {1}',
  'the name is missing before the title: write {0} {1} {2}, or another short name':
    'falta el nombre antes del título: escribir {0} {1} {2}, u otro nombre corto',
  'the name of this {0} is missing: write a short one of your own after {1}':
    'falta el nombre de {0}: escribir uno corto propio detrás de {1}',
  'no such word: {0}. It is read as {1}; write {2}': 'no existe esa palabra: {0}. Se lee como {1}; escribir {2}',
  'This file has {0} characters; the longest that is read has {1}. Split the declarations over several files.':
    'Este archivo tiene {0} caracteres; el más largo que se lee tiene {1}. Repartir las declaraciones en varios archivos.',
  'What follows has not been read yet: correct the lines above first.':
    'Lo que sigue todavía no se ha leído: corregir antes las líneas de arriba.',
  'The closing quote is missing: put " at the end of the text.':
    'Faltan las comillas de cierre: poner " al final del texto.',
  'This blank is still to be filled in: write the figure, the name or the words in the place of “…”.':
    'Este hueco está por rellenar: escribir el valor, el nombre o las palabras en el lugar de «…».',
  'A remark begins with //: write // instead of #.': 'Una nota empieza con //: escribir // en lugar de #.',
  'Curly quotes are not read: use straight ones, "…".': 'Las comillas tipográficas no se leen: usar rectas, "…".',
  'A long dash is not read: write .. between the ends of a range, or - inside a name.':
    'La raya no se lee: escribir .. entre los extremos de un intervalo, o - dentro de un nombre.',
  '{0} has no meaning here: delete it, or put it inside "…".':
    '{0} no significa nada aquí: borrarlo, o ponerlo entre "…".',
  ' after {0}': ' después de {0}',
  'This line breaks off after {0}: something is missing. Finish the line, or delete {1}.':
    'Esta línea se corta después de {0}: falta algo. Acabar la línea, o borrar {1}.',
  'This line breaks off{0}: {1}. Finish the line, or delete it.':
    'Esta línea se corta{0}: {1}. Acabar la línea, o borrarla.',
  'something is missing': 'falta algo',
  '{0} is missing': 'falta {0}',
  '{0} is a word of the language and cannot be a name. Choose another name.':
    '{0} es una palabra del lenguaje y no puede ser un nombre. Elegir otro nombre.',
  '“{0} {1}” is read as two numbers: thousands have no space. Write {2}{3}, or delete one of them.':
    '«{0} {1}» se lee como dos números: los millares no llevan espacio. Escribir {2}{3}, o borrar uno de ellos.',
  '{0} has no unit here{1}. Write the number with its unit, such as 250 bar or 3 times.':
    '{0} no lleva unidad aquí{1}. Escribir el número con su unidad, por ejemplo 250 bar o 3 times.',
  '{0} is out of place here{1}{2}. Correct the line, or delete {3}.':
    '{0} está fuera de lugar aquí{1}{2}. Corregir la línea, o borrar {3}.',
  ': {0} should follow': ': debería seguir {0}',
  'A list has commas, and no “and”: write a comma here.': 'Una lista lleva comas, y no «and»: escribir aquí una coma.',
  '{0} has no unit. Write the number with its unit, then the tolerance, such as 20 bar ±2.':
    '{0} no lleva unidad. Escribir el número con su unidad, y luego la tolerancia, por ejemplo 20 bar ±2.',
  'A date is written year-month-day, such as 2026-09-01.': 'Una fecha se escribe año-mes-día, por ejemplo 2026-09-01.',
  '{0} is out of place here after {1}. If it begins a title, put the whole title in quotes: "{2} …".':
    '{0} está fuera de lugar aquí después de {1}. Si empieza un título, poner todo el título entre comillas: "{2} …".',
  'This file is in UTF-16. Save it as UTF-8: in the editor, click the encoding at the bottom of the window and choose Save with Encoding, UTF-8.':
    'Este archivo está en UTF-16. Guardarlo en UTF-8: en el editor, pulsar la codificación en la parte inferior de la ventana y elegir guardar con codificación, UTF-8.',
  'This file is not text: it holds binary data. Move it out of the folder, or give it a different extension than .rebuild.':
    'Este archivo no es texto: contiene datos binarios. Sacarlo de la carpeta, o darle otra extensión que .rebuild.',
  'This character was not written in UTF-8, so the file is not read. Save it as UTF-8: then ° ± · µ and accents come out right.':
    'Este carácter no se escribió en UTF-8, así que el archivo no se lee. Guardarlo en UTF-8: entonces salen bien ° ± · µ y los acentos.',
  'This is a control character. It cannot be seen, and on a screen or a printer it can hide or change the text around it':
    'Es un carácter de control. No se ve, y en una pantalla o impresora puede esconder o cambiar el texto de alrededor',
  'This character changes the direction of the text. It cannot be seen, and what is shown can differ from what is read and printed':
    'Este carácter cambia el sentido del texto. No se ve, y lo que se muestra puede diferir de lo que se lee y se imprime',
  'This character has no width. It cannot be seen, and a name or a number with it is not the same as one without':
    'Este carácter no tiene ancho. No se ve, y un nombre o un número con él no es el mismo que sin él',
  '{0} ({1}). Delete it; if that does not work, retype the line.':
    '{0} ({1}). Borrarlo; si eso no basta, volver a escribir la línea.',
  'These quotes are empty, and whatever needs their words would take them as given. Write the words, or delete the quotes and what introduces them.':
    'Estas comillas están vacías, y lo que necesita sus palabras las daría por escritas. Escribir las palabras, o borrar las comillas y lo que las introduce.',
  '{0} is out of place here after {1}. Quotes are for your own words; a name is written without them: {2}.':
    '{0} está fuera de lugar aquí después de {1}. Las comillas son para las palabras propias; un nombre se escribe sin ellas: {2}.',
};
