import { type Bundle, withoutArticle } from '../bundle.ts';
import { terms } from './terms.ts';

const article = /^una? /u;

export const ide: Bundle = {
  'Explain {0}': 'Explicar {0}',
  'Allow {0} here, with a reason': 'Permitir {0} aquí, con un motivo',
  'Step {0}: {1}': 'Paso {0}: {1}',
  'Apply all safe fixes': 'Aplicar todas las correcciones seguras',
  Print: 'Imprimir',
  'Not called': 'No se usa',
  'Called once': 'Se usa una vez',
  'Called {0} times': 'Se usa {0} veces',
  'under {0}': 'debajo de {0}',
  'discarded: renew it first': 'desechada: antes, renovarla',
  'goes on {0}': 'va sobre {0}',
  'already tested': 'ya probado',
  'still owed: proves the family': 'pendiente: acredita la familia',
  'not passed yet': 'aún no superada',
  'All that is written down of a unit, in the order of the card; tab goes to the next blank':
    'Todo lo que se anota de una unidad, en el orden de la ficha; el tabulador pasa al siguiente hueco',
  'Results of a unit': 'Resultados de una unidad',
  'unit of {0}': `unidad de ${withoutArticle(terms, article, 0)}`,
  Shop: 'Taller',
  'A shop: stations, wrenches, gauges, tools, fluids, stock':
    'Un taller: puestos, llaves, manómetros, herramientas, fluidos, surtido',
  Family: 'Familia',
  'A family of units: parts, faces, ports, joints, what proves them':
    'Una familia de unidades: piezas, caras, bocas, uniones, y qué la acredita',
  Procedure: 'Procedimiento',
  'A procedure for a family at a shop': 'Un procedimiento para una familia en un taller',
  'Part number': 'Número de pieza',
  'A part number with the specs that differ': 'Un número de pieza con las especificaciones que difieren',
  Spec: 'Especificación',
  'A limit with its source': 'Un límite con su fuente',
  Stage: 'Etapa',
  'Steps done at one station': 'Pasos que se hacen en un mismo puesto',
  Test: 'Prueba',
  'A test with a reading, its limit and what to do when it fails':
    'Una prueba con su lectura, su límite y qué hacer si falla',
  Check: 'Revisión',
  'A look at a face or a part, with what is good enough': 'Una mirada a una cara o pieza, con lo que se da por bueno',
  Repair: 'Reparación',
  'What is done when a gate fails, before it is tried again':
    'Lo que se hace cuando falla un control, antes de repetirlo',
  Job: 'Trabajo',
  'A work order: the set of units that came in': 'Una orden de trabajo: el juego de unidades que ha entrado',
  'it is run down, and not tight': 'está enroscada y sin apretar',
  'they are tight': 'están apretadas',
  'in the order in which they come off': 'en el orden en que se desmontan',
  'in the order in which they go on': 'en el orden en que se montan',
  'what they hold is in place': 'lo que sujetan está en su sitio',
  'they are capped': 'llevan el tapón puesto',
  'they are open': 'están destapadas',
  'it is open': 'está destapada',
  'the unit is under pressure': 'la unidad está bajo presión',
  'no pressure is on them': 'no tienen presión',
  'it is clamped': 'está sujeta',
  'nothing holds it': 'nada la sujeta',
  'still owed: the family is proven by it': 'pendiente: acredita la familia',
  'Not laid out: line {0} cannot be read. {1}': 'Sin dar formato: la línea {0} no se puede leer. {1}',
  '{0}, to four digits': `${withoutArticle(terms, article, 0)}, con cuatro cifras`,
  'Step {0} changes:': 'El paso {0} cambia:',
  '{0} of {1} {2}':
    '{0} {en1, select, family {de la familia} shop {del taller} procedure {del procedimiento} job {del trabajo} sequence {de la secuencia} other {de {1}}} {2}',
  all: 'todos',
  Number: 'Número',
  Figure: 'Valor',
  Limit: 'Límite',
  Tool: 'Herramienta',
  Ratio: 'Relación',
  Steps: 'Pasos',
  '{0} to {1}': '{0} a {1}',
  'at least {0}': 'al menos {0}',
  'at most {0}': 'como máximo {0}',
  'always renewed': 'se renueva siempre',
  'located by {0}': 'posicionada por {0}',
  'chosen from {0}': 'se elige de {0}',
  'matched to {0}': 'emparejada con {0}',
  'held in {0}': 'se sujeta en {0}',
  'marks: {0}': 'marcas: {0}',
  'must slide': 'debe deslizarse',
  'must turn freely': 'debe girar libremente',
  'supplied loose': 'se entrega suelta',
  'its coils bind over {0} {1} of shim': 'sus espiras hacen tope por encima de {0} {1} de suplemento',
  'with {0}': 'con {0}',
  '{0} since step {1}': '{0} desde el paso {1}',
  'Here: {0}.': 'Aquí: {0}.',
  'and {0} more': 'y {0} más',
  'There is no procedure and no job in this file: only they print.':
    'En este archivo no hay ningún procedimiento ni trabajo: solo ellos se imprimen.',
  'There is no family in this file, and no procedure for one: only they are drawn.':
    'En este archivo no hay ninguna familia, ni un procedimiento para una: solo ellos se dibujan.',
  'Family {0} could not be read yet.': 'Aún no se ha podido leer la familia {0}.',
  'Family {0} has no parts yet. Write “part body "Body"” to begin.':
    'La familia {0} no tiene piezas todavía. Escribir «part body "Body"» para empezar.',
  'Job {0} has no sheet yet: its procedure was not found, or could not be read.':
    'El trabajo {0} no tiene hoja todavía: su procedimiento no se encontró, o no se pudo leer.',
  'Procedure {0} has no sheet yet: its family or its shop was not found, or could not be read.':
    'El procedimiento {0} no tiene hoja todavía: su familia o su taller no se encontró, o no se pudo leer.',
  'No procedure of this workspace is called {0}. Open the folder that the sheet was printed from, and scan or click again.':
    'Ningún procedimiento de esta área de trabajo se llama {0}. Abrir la carpeta desde la que se imprimió la hoja, y escanear o pulsar otra vez.',
  'No job of this workspace is called {0}. Open the folder that the sheet was printed from, and scan or click again.':
    'Ningún trabajo de esta área de trabajo se llama {0}. Abrir la carpeta desde la que se imprimió la hoja, y escanear o pulsar otra vez.',
  'Extract a sequence': 'Extraer una secuencia',
  'Make it a spec: {0}': 'Convertir en especificación: {0}',
  'Add a part number': 'Añadir un número de pieza',
  'Write the build from this teardown': 'Escribir el montaje a partir de este desmontaje',
  'Write a sister procedure like this one': 'Escribir un procedimiento hermano de este',
  'Split the stage here': 'Dividir aquí la etapa',
  'There is no name here. Put the cursor on a name that you gave: of a part, a spec, a stage.':
    'Aquí no hay ningún nombre. Poner el cursor en un nombre suyo: de una pieza, una especificación, una etapa.',
  'Words in quotes are printed as they are: change them in the text.':
    'Lo que va entre comillas se imprime tal cual: cambiarlo en el texto.',
  '“{0}” is a word of the language here, not a name that you gave.':
    '«{0}» es aquí una palabra del lenguaje, no un nombre suyo.',
  '“{0}” is not declared anywhere. Declare it, or correct it, before you rename it.':
    '«{0}» no está declarado en ninguna parte. Declararlo o corregirlo antes de cambiarle el nombre.',
  'There is no name here.': 'Aquí no hay ningún nombre.',
  '{0} is a name of an issued revision, which never changes: {1}. Rename it in the procedure, under its next revision.':
    '{0} es un nombre de una revisión emitida, que no cambia nunca: {1}. Cambiarlo en el procedimiento, con su próxima revisión.',
  'A name cannot be empty, nor have a quote or a line end in it.':
    'Un nombre no puede estar vacío, ni llevar comillas o saltos de línea.',
  '“{0}” cannot be a name. A name begins with a letter and goes on with letters, digits, _ and single hyphens.':
    '«{0}» no puede ser un nombre. Un nombre empieza por una letra y sigue con letras, cifras, _ y guiones sueltos.',
  '“{0}” joins the words of a step, and cannot be a name.':
    '«{0}» une las palabras de un paso, y no puede ser un nombre.',
  '“{0}” is a word of the language: a sequence of this name could not be called.':
    '«{0}» es una palabra del lenguaje: una secuencia con ese nombre no se podría llamar.',
  'There is already a {0} {1}: {2}. Two of one name cannot be distinguished.':
    'Ya existe, como {0}, {1}: {2}. Dos con el mismo nombre no se distinguen.',
  '“{0}” already means something else there: {1}. Choose another name.':
    '«{0}» ya significa otra cosa ahí: {1}. Elegir otro nombre.',
  '“{0}” would be read as something else where it is used. Choose another name.':
    '«{0}» se leería como otra cosa donde se usa. Elegir otro nombre.',
  'line {0} of {1}': 'línea {0} de {1}',
  'A sequence has a state only where it is called.': 'Una secuencia solo tiene estado donde se la llama.',
  'Put the cursor in a step of a procedure.': 'Poner el cursor en un paso de un procedimiento.',
  'Nothing is known of the unit here: no path leads to this place, or the procedure cannot be followed.':
    'Aquí no se sabe nada de la unidad: ningún camino llega a este lugar, o el procedimiento no se puede seguir.',
  'at {0}': 'en {0}',
  bare: 'descubierta',
  'on some paths': 'en algunos caminos',
  'Goes on with {0}.': 'Sigue con {0}.',
  '**{0}** after {1}: {2}': '**{0}** después de {1}: {2}',
  'Its cautions:': 'Sus avisos:',
  'weighs {0}': 'pesa {0}',
  'of {0}': 'de {0}',
  '{0} per unit': '{0} por unidad',
};
