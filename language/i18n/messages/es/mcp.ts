import type { Bundle } from '../bundle.ts';

export const mcp: Bundle = {
  '{0} is not in the folder of this server. Give a path from that folder.':
    '{0} no está en la carpeta de este servidor. Dar una ruta desde esa carpeta.',
  '{0} is not a .rebuild file. Give it a name that ends so.':
    '{0} no es un archivo .rebuild. Darle un nombre que termine así.',
  'The text has {0} characters; a procedure has at most {1}.':
    'El texto tiene {0} caracteres; un procedimiento tiene como máximo {1}.',
  'The reference is missing from this installation: its README is not there. Install it again.':
    'Falta la referencia en esta instalación: no está su README. Instalarla de nuevo.',
  'No chapter is called {0}. {1}': 'No hay ningún capítulo llamado {0}. {1}',
  '{0}\n… and {1} characters more. Ask about less at a time.':
    '{0}\n… y {1} caracteres más. Preguntar menos de una vez.',
  'Does a calculation of the bench exactly, with formula, source and working (shims, wrench settings, gauges, needles). Without a name: the list. With a name alone: what it takes.':
    'Hace con exactitud un cálculo de taller, con fórmula, fuente y desarrollo (suplementos, ajustes de llave, manómetros, agujas). Sin nombre: la lista. Solo con un nombre: lo que pide.',
  'Checks .rebuild files with all rules and returns every finding: what is wrong, why it matters, what to do, and where. With `text`, checks that text as if it were saved under `file`, among the other files of the folder; nothing is written. Without, checks the files as they are. A draft is done when there is no error and no warning left that the shop has not answered with `allow … because`. Never invent a figure to silence a finding: leave a blank for the lead.':
    'Comprueba archivos .rebuild con todas las reglas y devuelve cada hallazgo: qué está mal, por qué importa, qué hacer y dónde. Con `text`, comprueba ese texto como si estuviera guardado como `file`, entre los demás archivos de la carpeta; no se escribe nada. Sin él, comprueba los archivos tal como están. Un borrador está listo cuando no queda ningún error ni advertencia que el taller no haya contestado con `allow … because`. No inventar nunca un valor para callar un hallazgo: dejar un hueco para el jefe de taller.',
  'Returns the page of a rule (what is wrong, why it matters, a wrong and a right example, what it leaves alone); without a name, the list of all rules.':
    'Devuelve la página de una regla (qué está mal, por qué importa, un ejemplo malo y uno bueno, lo que deja pasar); sin nombre, la lista de todas las reglas.',
  'Read the language reference': 'Leer la referencia del lenguaje',
  'Returns a chapter of the reference of the language of .rebuild files. Read at least “Files, lines, names”, “family”, “procedure” and “Verbs” before you draft one. Chapters: {0}.':
    'Devuelve un capítulo de la referencia del lenguaje de los archivos .rebuild. Leer al menos “Files, lines, names”, “family”, “procedure” y “Verbs” antes de redactar uno. Capítulos: {0}.',
  'Lay out a procedure': 'Dar formato a un procedimiento',
  'Returns a .rebuild text laid out: indentation, blanks, columns. Nothing but white space changes. With `text`, lays out that text and writes nothing. Without, takes the file as it is, and with `write` saves it. A text with a line that cannot be read is refused, with that line: correct it first.':
    'Devuelve un texto .rebuild con formato: sangrías, espacios, columnas. Solo cambian los espacios en blanco. Con `text`, da formato a ese texto y no escribe nada. Sin él, toma el archivo como está, y con `write` lo guarda. Un texto con una línea que no se puede leer se rechaza, con esa línea: corregirla antes.',
  'A text that is given is not written: save it as the file first, or leave `text` out.':
    'Un texto que se da no se escribe: guardarlo antes como archivo, o no dar `text`.',
  'Not laid out: line {0} cannot be read. {1} Correct it first.':
    'Sin dar formato: la línea {0} no se puede leer. {1} Corregirla antes.',
  '{0} is not there. Give its text, or another path.': '{0} no está. Dar su texto, u otra ruta.',
  'Advise on a job': 'Aconsejar sobre un trabajo',
  'Returns what to fit or to turn in each unit of a job, from its last reading; nothing for a unit that passes.':
    'Devuelve qué montar o girar en cada unidad de un trabajo, según su última lectura; nada para una unidad que pasa.',
  'Find the history of a unit': 'Buscar el historial de una unidad',
  'Returns each job in which a serial number occurs, closed ones first and oldest first: what was found, fitted, read and done.':
    'Devuelve cada trabajo en el que aparece un número de serie, primero los cerrados y los más antiguos: lo que se encontró, montó, leyó e hizo.',
  'No job of this folder has a unit with the serial {0}.':
    'Ningún trabajo de esta carpeta tiene una unidad con el número de serie {0}.',
  'Job {0}': 'Trabajo {0}',
  'received {0}': 'recibido el {0}',
  'unit {0}, {1}': 'unidad {0}, {1}',
  'on hold: {0}': 'en espera: {0}',
  'Returns each step of a procedure with what it changes on the unit (parts on or off, faces bare, joints tight, ports open, gates proven or stale), on every path through its repairs. With `step`, that step alone with the whole state before and after it.':
    'Devuelve cada paso de un procedimiento con lo que cambia en la unidad (piezas montadas o desmontadas, caras descubiertas, uniones apretadas, bocas destapadas, pruebas superadas o caducadas), en cada camino por sus reparaciones. Con `step`, solo ese paso, con todo el estado antes y después.',
  '{0} has no step {1}.': '{0} no tiene el paso {1}.',
  'Handtight checks machine rebuild procedures (.rebuild files) of a repair shop.':
    'Handtight comprueba procedimientos de reacondicionamiento (archivos .rebuild) de un taller.',
  'Read the chapters of the `language` tool before you draft; check each draft with `check` until it is clean.':
    'Leer los capítulos de la herramienta `language` antes de redactar; comprobar cada borrador con `check` hasta que no quede nada.',
  'A specification comes from the maker or the lead. Where you do not have one, leave it blank (`spec opening pressure source "…"` is not a place to guess), say so, and let the lead fill it in.':
    'Una especificación viene del fabricante o del jefe de taller. Donde no se tenga, dejarla en blanco (`spec opening pressure source "…"` no es lugar para adivinar), decirlo, y que la rellene el jefe de taller.',
  'Local codes, the maker’s data and licensed practice come first.':
    'Las normas locales, los datos del fabricante y la práctica autorizada van primero.',
  'Each as name=value with its unit, such as "guide=6 mm"; several values with commas between':
    'Cada uno como nombre=valor con su unidad, por ejemplo "guide=6 mm"; varios valores, separados por comas',
  'Path from the folder of the server': 'Ruta desde la carpeta del servidor',
  'The whole text of that file; left out: the files as they are':
    'El texto entero de ese archivo; si no se da, los archivos como están',
  'Name of the rule, as in a finding': 'Nombre de la regla, como en un hallazgo',
  'A chapter; left out: the whole reference': 'Un capítulo; si no se da, toda la referencia',
  'The text to lay out; left out: that of the file': 'El texto al que dar formato; si no se da, el del archivo',
  'Save the file. Not together with `text`': 'Guardar el archivo. No junto con `text`',
  'Number of the job': 'Número del trabajo',
  'Serial number, as it is marked on the unit': 'Número de serie, como está marcado en la unidad',
  'Name of the procedure': 'Nombre del procedimiento',
  'Printed number of a step, such as 6.3 or R1.2': 'Número impreso de un paso, por ejemplo 6.3 o R1.2',
  'Path from the folder of the server, for `text`': 'Ruta desde la carpeta del servidor, para `text`',
  'A text that is not saved, in which the procedure may be':
    'Un texto sin guardar en el que puede estar el procedimiento',
};
