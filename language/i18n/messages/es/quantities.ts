import type { Bundle } from '../bundle.ts';

export const quantities: Bundle = {
  '"{0}" is written {1}: {2}.': '"{0}" se escribe {1}: {2}.',
  'a unit takes no other ending': 'una unidad de medida no lleva otra terminación',
  'the hyphen reads as a minus or as nothing': 'el guion se lee como signo menos o como nada',
  'a blank or a star between two units reads as two words':
    'un espacio o un asterisco entre dos unidades se lee como dos palabras',
  'the force comes first, so that the unit is not taken for work':
    'la fuerza va delante, para que no se tome por trabajo',
  'the force of a pound or a kilogram carries an f': 'la fuerza de una libra o de un kilogramo lleva una f',
  'gauge or absolute is said in the title': 'si es relativa o absoluta se dice en el título',
  'one spelling for one unit': 'una sola grafía por unidad',
  'one word for one unit': 'una sola palabra por unidad',
  'the mark is read as the end of a text or as seconds': 'el signo se lee como fin de un texto o como segundos',
  'no blank after the degree': 'sin espacio detrás del grado',
  'the degree belongs to the unit': 'el grado forma parte de la unidad',
  'a kelvin has no degree': 'un kelvin no lleva grado',
  'the same volume under its usual name': 'el mismo volumen con su nombre habitual',
  '"{0}" is an angle in one shop and a thousandth of an inch in the next: write thou for 0.001 in, or ° for an angle.':
    '"{0}" es un ángulo en un taller y una milésima de pulgada en el siguiente: escribir thou para 0.001 in, o ° para un ángulo.',
  '"Pa" is not used here: write kPa, mbar or bar.': '"Pa" no se usa aquí: escribir kPa, mbar o bar.',
  '"hPa" is not used here: write mbar, which is the same.': '"hPa" no se usa aquí: escribir mbar, que es lo mismo.',
  '"mmHg" is not used here: write mbar, kPa or inHg.': '"mmHg" no se usa aquí: escribir mbar, kPa o inHg.',
  '"atm" is the air around or a metric one in older papers: write bar or kgf/cm².':
    '"atm" es el aire ambiente, o una métrica en papeles antiguos: escribir bar o kgf/cm².',
  '"cm" is not used here: write mm.': '"cm" no se usa aquí: escribir mm.',
  '"L/min" is not used here: write mL/min.': '"L/min" no se usa aquí: escribir mL/min.',
  '"l/min" is not used here: write mL/min.': '"l/min" no se usa aquí: escribir mL/min.',
  'the parentheses hold the limit in a second unit: write a value there, not {0}.':
    'el paréntesis lleva el límite en una segunda unidad: escribir ahí un valor, no {0}.',
  '{0} and {1} are two kinds of limit: write both the same way.':
    '{0} y {1} son dos formas de límite: escribir los dos de la misma manera.',
  'a single figure beside a band is its middle, but the middle of {0} is {1}, not {2}.':
    'un solo valor junto a una banda es su centro, pero el centro de {0} es {1}, no {2}.',
  'the tolerances {0}{1} and {2}{3} do not agree{4}.': 'las tolerancias {0}{1} y {2}{3} no concuerdan{4}.',
  '{0} is a {1} and {2} a {3}.': '{0} es {1}, y {2} es {3}.',
  '{0} and {1} do not agree ({2} is {3}).': '{0} y {1} no concuerdan ({2} son {3}).',
  ' ({0} is {1})': ' ({0} son {1})',
  'nothing is colder than −273.15 °C': 'nada es más frío que −273,15 °C',
  'no pressure is lower than a full vacuum, about −1.01 bar':
    'ninguna presión es menor que el vacío total, unos −1,01 bar',
  'a {0} cannot be below zero': 'esta magnitud ({0}) no puede ser menor que cero',
  'after “then” comes how far the joint is turned on': 'detrás de «then» va cuánto se sigue girando la unión',
  'that is zero, which is no figure to work to': 'eso es cero, y no es un valor al que trabajar',
  'a length cannot be below zero': 'una longitud no puede ser menor que cero',
  '"{0}" can be read as {1}, or as {2}: thousands have no separator and no space. Write {3}, or put what belongs between the two.':
    '"{0}" se puede leer como {1}, o como {2}: los millares no llevan separador ni espacio. Escribir {3}, o poner lo que va entre los dos.',
  ' and ': ' y ',
  '"{0}" is no number: write digits with a point, such as 0.25.':
    '"{0}" no es un número: escribir cifras con un punto, por ejemplo 0.25.',
  '"{0}" is no number: write digits with one point, such as 0.25, and no commas.':
    '"{0}" no es un número: escribir cifras con un solo punto, por ejemplo 0.25, y sin comas.',
  '"{0}" can be read as {1}: write the one that is meant, without a comma.':
    '"{0}" se puede leer como {1}: escribir el que se quiere, sin coma.',
  ' or as ': ' o como ',
  '"{0}" is larger than anything measured at a bench (1 000 000 000 000): check the digits or take a larger unit.':
    '"{0}" es más grande que nada que se mida en un banco (1 000 000 000 000): revisar las cifras o usar una unidad mayor.',
  '"{0}" has more than {1} digits: write only those that the tool can show.':
    '"{0}" tiene más de {1} cifras: escribir solo las que puede mostrar la herramienta.',
  'Write the number out: {0}.': 'Escribir el número completo: {0}.',
  'The decimal separator is a point, and thousands have no separator: write {0}.':
    'El separador decimal es un punto, y los millares no llevan separador: escribir {0}.',
  '"{0}" is no quantity: write a number and a unit, such as 250 bar.':
    '"{0}" no es una cantidad: escribir un número y una unidad, por ejemplo 250 bar.',
  'nm is a nanometre': 'nm es un nanómetro',
  'mPa is a millipascal': 'mPa es un milipascal',
  'Mbar is a million bar': 'Mbar es un millón de bar',
  'Mm is a megameter': 'Mm es un megámetro',
  'MS is a megasiemens': 'MS es un megasiemens',
  'mS is a millisiemens': 'mS es un milisiemens',
  'Ms is a megasecond': 'Ms es un megasegundo',
  '"{0}" should be {1}: {2}.': '"{0}" debería ser {1}: {2}.',
  'upper and lower case make different units': 'las mayúsculas y minúsculas dan unidades distintas',
  '"{0}" is no unit of this language.': '"{0}" no es una unidad de este lenguaje.',
  'a large G is the unit of a magnetic field': 'la G mayúscula es la unidad de un campo magnético',
  'no vacuum is deeper than a full one, about 101 kPa': 'ningún vacío es más profundo que el total, unos 101 kPa',
  '"{0}" can be read as {1}: upper and lower case make different units.':
    '"{0}" se puede leer como {1}: mayúsculas y minúsculas son unidades distintas.',
};
