import type { Bundle } from '../bundle.ts';

export const recommendations: Bundle = {
  'one step of {0} brings {1}': 'un escalón de {0} aporta {1}',
  '{0} chooses no part from a stock of the shop: there is no rate to fit.':
    '{0} no elige ninguna pieza de un surtido del taller: no hay variación que calcular.',
  '{0} by {1}{2}': '{0} por {1}{2}',
  '{0}: too few readings. The fit needs units that were read with at least two shims each, and one extra reading in all.':
    '{0}: muy pocas lecturas. Hacen falta unidades leídas con al menos dos suplementos cada una, y una lectura más en total.',
  '{0}: the readings give no usable rate. Check them and the shims.':
    '{0}: las lecturas no dan una variación útil. Comprobarlas, y los suplementos también.',
  '{0} readings of 1 unit': '{0} lecturas de 1 unidad',
  '{0} readings of {1} units': '{0} lecturas de {1} unidades',
  '{0}, job {1}': '{0}, trabajo {1}',
  '{0}, jobs {1}': '{0}, trabajos {1}',
  '{0}: {1} {2}, standard error {3} {4}; a reading scatters by {5}, its marks and digits included':
    '{0}: {1} {2}, error típico {3} {4}; una lectura se dispersa {5}, con divisiones y cifras incluidas',
  '  from {0}': '  de {0}',
  '  A thicker shim brought no more: something else was changed between these readings.':
    '  Un suplemento más grueso no dio más: entre estas lecturas se cambió otra cosa.',
  '  The error is as large as the rate, so there is no rate to write down. Look for a reading or a shim that is written down wrong, or add readings.':
    '  El error es tan grande como la variación, así que no hay nada que anotar. Buscar una lectura o un suplemento mal anotado, o añadir lecturas.',
  'Fitted from {0}': 'Calculado con {0}',
  'a shim of {0}': 'un suplemento de {0}',
  '  Left out: unit {0} of job {1}, {2}, is off by a power of ten beside the others. Is it {3}? Put it right in the job.':
    '  Omitido: unidad {0} del trabajo {1}, {2}, se aparta de los demás en una potencia de diez. ¿Es {3}? Corregirlo en el trabajo.',
  'The procedure reckons with {0}.': 'El procedimiento cuenta con {0}.',
  'The procedure reckons with {0}: the same.': 'El procedimiento cuenta con {0}: lo mismo.',
  '{0} standard errors from it': 'a {0} errores típicos',
  'The procedure reckons with {0}: {1}, which may be chance.':
    'El procedimiento cuenta con {0}: {1}, que puede ser casualidad.',
  'The procedure reckons with {0}: {1}. Look for what was read wrong, or write the fitted one:':
    'El procedimiento cuenta con {0}: {1}. Buscar lo que se leyó mal, o escribir la calculada:',
  'unit {0}': 'unidad {0}',
  '{0} chooses no part from a stock of the shop, and gives no change per turn for any screw: there is nothing to advise.':
    '{0} no elige ninguna pieza de un surtido del taller, ni da la variación por vuelta de ningún tornillo: no hay nada que aconsejar.',
  '{0}: on hold, {1}': '{0}: en espera, {1}',
  '{0}, inside its window: it stays': '{0}, dentro de su banda: se queda así',
  '{0}: no part is chosen for its number': '{0}: para su número no se elige ninguna pieza',
  '{0}: no reading of {1} yet. Write into the job, for instance: {2}':
    '{0}: aún no hay lectura de {1}. Anotar en el trabajo, por ejemplo: {2}',
  'Write into the job, for instance: {0}': 'Anotar en el trabajo, por ejemplo: {0}',
  'no reading of {0} with its {1} yet. {2}': 'aún no hay lectura de {0} con su {1}. {2}',
  '{0} is read, but the {1} that was in is not written down. {2}':
    '{0} está leído, pero no se anotó el {1} que llevaba. {2}',
  'the {0} was changed after {1} was read: read it again with the one that is in, and write it behind it':
    '{0} se cambió después de leer {1}: leer otra vez con la que lleva, y anotarlo detrás',
  '{0} has no limit for this part number: there is nothing to bring it to. Give one in the procedure':
    '{0} no tiene límite para este número de pieza: no hay adónde llevarlo. Dar uno en el procedimiento',
  'the limit of {0} has no end: there is nothing to aim at. Write “choose {1} to bring {2} to” and a figure':
    'el límite de {0} no tiene extremo: no hay objetivo. Escribir «choose {1} to bring {2} to» y un valor',
  'nothing says how far a {0} moves {1}. Write “by” and a rate above zero after the choose, such as 96 bar per mm, a band with two ends, or one quantity per another':
    'nada dice cuánto mueve {0} a {1}. Escribir «by» y una variación mayor que cero detrás de choose: por ejemplo 96 bar per mm, una banda con dos extremos, o una magnitud por otra',
  '{0} is read in another kind of unit than its limit has: look at the unit of the reading':
    '{0} se lee en otra clase de unidad que la de su límite: revisar la unidad de la lectura',
  '{0} are chosen together for {1}: how the change is shared between them is the lead’s to say':
    '{0} se eligen juntas para {1}: cómo se reparte el cambio lo decide el jefe de taller',
  'a {0} of {1}': '{0} de {1}',
  ' Is it {0}?': ' ¿Es {0}?',
  '{0} cannot be: nothing is worked out from it.{1} Put it right in the job':
    '{0} no puede ser: no se calcula nada con eso.{1} Corregirlo en el trabajo',
  '{0} chooses no part from a stock of the shop: there is nothing to match.':
    '{0} no elige ninguna pieza de un surtido del taller: no hay nada que emparejar.',
  'No unit of this job can be calculated yet. handtight shim {0} says what is missing for each.':
    'De este trabajo aún no se puede calcular ninguna unidad. handtight shim {0} dice qué falta en cada una.',
  '{0}: {1} of 1 unit read': '{0}: {1} de 1 unidad leída',
  '{0}: {1} of {2} units read': '{0}: {1} de {2} unidades leídas',
  '{0}. Not every one can be brought into its window from this drawer. handtight shim {1} says which, and why.':
    '{0}. Con este cajón no se pueden llevar todas a su banda. handtight shim {1} dice cuáles, y por qué.',
  ' (at most {0})': ' (como máximo {0})',
  '; {0} when new springs have settled': '; {0} con los muelles nuevos ya asentados',
  '{0}, all inside their window, spread {1} measured{2}{3}: nothing to do':
    '{0}, todas dentro de su banda, dispersión medida {1}{2}{3}: nada que hacer',
  '{0}, all inside their window, spread {1} measured{2}: this drawer has nothing that brings them nearer and lands surely. Put finer steps into it, or let the lead decide.':
    '{0}, todas dentro de su banda, dispersión medida {1}{2}: este cajón no tiene nada que las acerque y caiga con seguridad. Poner escalones más finos, o que decida el jefe de taller.',
  '  spread {0} expected{1}{2}: no choice opens fewer, and none of those has less':
    '  dispersión esperada {0}{1}{2}: ninguna elección abre menos, y ninguna de esas tiene menos',
  '  spread {0} expected{1}{2}: no choice from this drawer keeps it, and none has less':
    '  dispersión esperada {0}{1}{2}: ninguna elección de este cajón la cumple, y ninguna tiene menos',
  '  {0}: {1} stays, it stays closed: {2} read': '  {0}: {1} se queda, no se abre: lectura {2}',
  '  {0}: fit {1} (now {2}): expect {3}': '  {0}: montar {1} (ahora {2}): se espera {3}',
};
