import type { Bundle } from '../bundle.ts';

export const calculator: Bundle = {
  'low end of the limit': 'extremo inferior del límite',
  'high end of the limit': 'extremo superior del límite',
  'Give low=, high= or both: without a limit nothing is judged.':
    'Dar low=, high= o los dos: sin límite no se juzga nada.',
  'The low end is over the high one. Look at what was typed.':
    'El extremo inferior está por encima del superior. Revisar lo escrito.',
  'What a gauge may be off, by its class': 'Cuánto puede desviarse un manómetro, según su clase',
  'error = class / 100 · (top of the scale − bottom)': 'error = class / 100 · (fin de la escala − principio)',
  'EN 837-1: the class is percent of span, wherever on the dial it is read':
    'EN 837-1: la clase es un porcentaje del alcance, se lea donde se lea en la esfera',
  'accuracy class on the dial': 'clase de exactitud indicada en la esfera',
  'bottom of the scale': 'principio de la escala',
  'top of the scale': 'fin de la escala',
  'The top of the scale must be over its bottom. Look at low and high.':
    'El fin de la escala debe estar por encima de su principio. Revisar low y high.',
  'error ±{0}': 'error ±{0}',
  'What a gauge may read, so that the true value is inside the limit':
    'Qué puede marcar un manómetro para que el valor verdadero esté dentro del límite',
  'lowest reading = low + r · error, up to a mark': 'lectura mínima = low + r · error, hacia arriba hasta una división',
  'highest reading = high − r · error, down to a mark':
    'lectura máxima = high − r · error, hacia abajo hasta una división',
  'Guard band of ISO 14253-1 (r = 0.83, from memory); r = 0 is simple acceptance, r = 1 guards in full':
    'Banda de guarda de ISO 14253-1 (r = 0.83, de memoria); r = 0 es aceptación simple, r = 1 guarda completa',
  'what the gauge may be off (gauge-error works it out)':
    'cuánto puede desviarse el manómetro (lo calcula gauge-error)',
  'from one mark of the dial to the next that the eye can read':
    'de una división de la esfera a la siguiente que se distingue a simple vista',
  '0, 0.83 or 1; 0 where none is given': '0, 0.83 o 1; si no se da, 0',
  'r is 0, 0.83 or 1, not {0}: these are the rules that a sheet may name.':
    'r es 0, 0.83 o 1, no {0}: son las reglas que una hoja puede indicar.',
  'A mark must be wider than nothing.': 'Una división debe ser mayor que cero.',
  'kept away from each end: {0} · {1}': 'margen respecto a cada extremo: {0} · {1}',
  'No mark of this gauge is safe to pass: take a finer gauge, or a wider limit.':
    'Ninguna división de este manómetro se puede aceptar con seguridad: usar un manómetro más fino o un límite más ancho.',
  'lowest reading that passes {0}': 'lectura mínima que pasa {0}',
  'highest reading that passes {0}': 'lectura máxima que pasa {0}',
  'How likely a unit just outside its limit is read as good':
    'Con qué probabilidad una unidad justo fuera de su límite se lee como buena',
  'probability = Φ(−2r), one side, error normal, uncertainty two standard deviations':
    'probabilidad = Φ(−2r), un lado, error normal, incertidumbre de dos desviaciones típicas',
  'Normal distribution; a guard band of r times the expanded uncertainty':
    'Distribución normal; una banda de guarda de r veces la incertidumbre expandida',
  'share of the uncertainty that is kept away from the limit':
    'parte de la incertidumbre que se deja como margen hasta el límite',
  'probability {0} %': 'probabilidad {0} %',
  'How likely the true value is inside the limit, of a reading':
    'Con qué probabilidad el valor verdadero de una lectura está dentro del límite',
  'JCGM 106:2012, 7 (from memory): error normal, nothing known of the unit before':
    'JCGM 106:2012, 7 (de memoria): error normal, sin conocimiento previo de la unidad',
  'what the gauge showed': 'lo que marcó el manómetro',
  'standard uncertainty u (half of what is given for 95 %)':
    'incertidumbre típica u (la mitad de la que se da para el 95 %)',
  'The uncertainty must be over nothing.': 'La incertidumbre debe ser mayor que cero.',
  'diameter of the needle in its guide': 'diámetro de la aguja en su guía',
  'diameter of the seat that it closes': 'diámetro del asiento que cierra',
  'force of the spring on the closed needle': 'fuerza del muelle sobre la aguja cerrada',
  'lifting area = π/4 · ({0}² − {1}²) = {2} mm²': 'área de apertura = π/4 · ({0}² − {1}²) = {2} mm²',
  'Pressure at which a needle lifts (first opening only)':
    'Presión a la que se levanta una aguja (solo la primera apertura)',
  'Balance of forces on the needle': 'Equilibrio de fuerzas en la aguja',
  'The preload is too large to reckon with.': 'La precarga es demasiado grande para el cálculo.',
  'opening = {0} / lifting area': 'opening = {0} / área de apertura',
  'opening {0}': 'apertura {0}',
  'Pressure at which a needle falls shut': 'Presión a la que se cierra una aguja',
  'Balance of forces on the needle; all of it is under pressure once it has lifted':
    'Equilibrio de fuerzas en la aguja; levantada, toda ella está bajo presión',
  'closing {0}': 'cierre {0}',
  'Seat over guide, from where a needle opens and closes':
    'Relación asiento/guía, a partir de dónde abre y cierra una aguja',
  'pressure at which it opens': 'presión a la que abre',
  'pressure at which it closes': 'presión a la que cierra',
  'A needle closes at a pressure over nothing and under that at which it opens. Read both again.':
    'Una aguja cierra a una presión mayor que cero y menor que la de apertura. Leer otra vez las dos.',
  'seat / guide {0}': 'asiento / guía {0}',
  'Stiffness of a coil spring of round wire': 'Rigidez de un muelle helicoidal de alambre redondo',
  'Shigley, Mechanical Engineering Design, helical compression springs (from memory)':
    'Shigley, Mechanical Engineering Design, muelles helicoidales de compresión (de memoria)',
  'shear modulus G of the wire': 'módulo de cizalladura G del alambre',
  'diameter d of the wire': 'diámetro d del alambre',
  'mean diameter D of the coil': 'diámetro medio D de la espira',
  'coils n that work, without the closed ends': 'espiras útiles n, sin los extremos cerrados',
  'All four must be over nothing, and the wire thinner than the coil is wide. Measure again.':
    'Los cuatro deben ser mayores que cero, y el alambre más delgado que la espira. Medir otra vez.',
  'stiffness {0}': 'rigidez {0}',
  'What a shim brings, from its spring and needle (first opening only)':
    'Cuánto aporta un suplemento, según su muelle y su aguja (solo la primera apertura)',
  'Balance of forces on the needle; published shop rates run from 69 to 196 bar/mm':
    'Equilibrio de fuerzas en la aguja; las variaciones publicadas por talleres van de 69 a 196 bar/mm',
  'stiffness of the spring': 'rigidez del muelle',
  'The spring must have a stiffness over nothing.': 'El muelle debe tener una rigidez mayor que cero.',
  'rate = {0} / lifting area': 'rate = {0} / área de apertura',
  'rate {0}': 'variación {0}',
  'thicknesses in the drawer': 'espesores que hay en el cajón',
  'or the thinnest,': 'o el más delgado,',
  'the thickest,': 'el más grueso,',
  'and the step': 'y el escalón',
  'Say what is in the drawer, in one way: shims="1.00 mm, 1.05 mm", or from=, to= and by=.':
    'Indicar lo que hay en el cajón de una sola manera: shims="1.00 mm, 1.05 mm", o from=, to= y by=.',
  'The drawer goes from a thickness up to a thicker one, and has at most 10 000 sizes. Look at from, to and by.':
    'El cajón va de un espesor a otro mayor, y tiene como máximo 10 000 medidas. Revisar from, to y by.',
  'The rate of a shim is in pressure per length, such as 96 bar per mm.':
    'La variación por suplemento se da en presión por longitud, por ejemplo 96 bar per mm.',
  'The error of the rate has the unit of the rate, such as 4 bar per mm.':
    'El error de la variación lleva la unidad de la variación, por ejemplo 4 bar per mm.',
  'The error of the rate is as large as the rate: it says nothing. Fit the rate to more readings.':
    'El error de la variación es tan grande como ella: no dice nada. Calcularla con más lecturas.',
  'A shim of {0} is not of a drawer of {1} to {2}. Look at the decimal mark.':
    'Un suplemento de {0} no es de un cajón de {1} a {2}. Revisar el signo decimal.',
  'fit {0} (now {1}): expect {2}': 'montar {0} (ahora {1}): se espera {2}',
  '{0}, {1} to {2} (95 %)': '{0}, {1} a {2} (95 %)',
  '{0} {1}, {2}, is off by a power of ten beside the others. Is it {3}?':
    '{0} {1}, {2}, se aparta de los demás en una potencia de diez. ¿Es {3}?',
  'The low end of the window is over the high one. Look at what was typed.':
    'El extremo inferior de la banda está por encima del superior. Revisar lo escrito.',
  'lands in the window: {0} %': 'cae dentro de la banda: {0} %',
  'There is no shim in the drawer that may be fitted.': 'No hay en el cajón ningún suplemento que se pueda montar.',
  'The spring loses more by settling than the window is wide: no reading allows for it.':
    'Al asentarse, el muelle pierde más que el ancho de la banda: ninguna lectura lo compensa.',
  'By these figures every shim brings less than nothing, or more than can be written out. Look at the reading, the shim that is in, and the rate.':
    'Con estos valores, cualquier suplemento da menos que cero, o más de lo que se puede escribir. Revisar la lectura, el suplemento montado y la variación.',
  'Nothing in the drawer that may be fitted is thick enough. The most it can do: {0}.':
    'Nada de lo que se puede montar es lo bastante grueso. Lo máximo posible: {0}.',
  'Nothing in the drawer is thick enough. The most it can do: {0}.':
    'Nada de lo que hay en el cajón es lo bastante grueso. Lo máximo posible: {0}.',
  'Nothing in the drawer is thin enough. The least it can do: {0}.':
    'Nada de lo que hay en el cajón es lo bastante delgado. Lo mínimo posible: {0}.',
  'The drawer steps over the window:': 'Los escalones del cajón saltan la banda:',
  'Grind a shim between the two, or put finer ones into the drawer.':
    'Rectificar un suplemento intermedio, o poner medidas más finas en el cajón.',
  'The shim that most surely brings a reading into its window':
    'El suplemento que con más seguridad lleva una lectura a su banda',
  'expected = reading + rate · (shim − shim now in), from low + settling to high':
    'esperado = reading + rate · (suplemento − now), de low + settling a high',
  'doubt = √((shim − shim now in)² · rate error² + 2 · scatter²)':
    'duda = √((suplemento − now)² · rate-error² + 2 · scatter²)',
  'the nearest to the aim of those that land with 95 %; else the surest':
    'el más cercano al objetivo entre los que caen dentro con un 95 %; si no, el más seguro',
  'Straight line; a second opening and its rate are given or fitted, never taken from the needle':
    'Línea recta; una segunda apertura y su variación se dan o se calculan con lecturas, nunca a partir de la aguja',
  'what the unit reads now': 'lo que marca la unidad ahora',
  'shim that is in': 'suplemento que lleva montado',
  'low end of the window': 'extremo inferior de la banda',
  'high end of the window': 'extremo superior de la banda',
  'where it should land; the surest place where none is given': 'dónde debe quedar; si no se da, el lugar más seguro',
  'what a shim brings': 'cuánto aporta un suplemento',
  'standard error of the rate (fit-rate works it out)': 'error típico de la variación (lo calcula fit-rate)',
  'standard deviation of one reading of the same build': 'desviación típica de una lectura con el mismo montaje',
  'what a new spring will lose by settling: it must read so much more':
    'lo que un muelle nuevo perderá al asentarse: debe marcar eso de más',
  'shims that may lie on each other: 1 or 2': 'suplementos que se pueden apilar: 1 o 2',
  'what they may never pass, all together (where the spring binds)':
    'lo que no pueden pasar entre todos (donde el muelle hace tope)',
  'The aim, {0}, is outside the window: what lands on it does not pass.':
    'El objetivo, {0}, está fuera de la banda: lo que cae ahí no pasa.',
  'One shim or two lie on each other: together is 1 or 2.': 'Se apilan uno o dos suplementos: together es 1 o 2.',
  ', never above {0}': ', nunca por encima de {0}',
  '{0} sizes in the drawer{1}, rate {2}': '{0} medidas en el cajón{1}, variación {2}',
  'How far to turn an adjusting screw': 'Cuánto girar un tornillo de ajuste',
  'Straight line': 'Línea recta',
  'what it should read': 'lo que debe marcar',
  'how much one turn in adds': 'cuánto añade una vuelta hacia dentro',
  'The rate of a screw is in pressure per turn, such as 25 bar per turn.':
    'La variación de un tornillo se da en presión por vuelta, por ejemplo 25 bar per turn.',
  'That would be {0} turns: no screw has so many. Look at the figures and their units.':
    'Serían {0} vueltas: ningún tornillo tiene tantas. Revisar los valores y sus unidades.',
  'it is where it should be': 'está donde debe estar',
  'What a shim brings, fitted from readings of the shop':
    'Cuánto aporta un suplemento, calculado con lecturas del taller',
  'pressure = a + rate · shim, by least squares': 'presión = a + rate · suplemento, por mínimos cuadrados',
  'scatter = √(about the line² + (mark / √12)² + (rate · last digit of the shim / √12)²)':
    'dispersión = √(en torno a la recta² + (mark / √12)² + (rate · última cifra del suplemento / √12)²)',
  'doubt of the rate: its standard error; of a new reading: Student’s t':
    'duda de la variación: su error típico; de una lectura nueva: t de Student',
  'Least squares by ml-regression-multivariate-linear, held against NIST StRD Norris and GUM H.3; marks and digits: GUM 4.3.7':
    'Mínimos cuadrados con ml-regression-multivariate-linear, contrastados con NIST StRD Norris y GUM H.3; divisiones y cifras: GUM 4.3.7',
  'thicknesses that were in': 'espesores que estaban montados',
  'what each one read, in the same order': 'lo que marcó cada uno, en el mismo orden',
  'from one mark of the gauge to the next; the last digit written where none is given':
    'de una división del manómetro a la siguiente; si no se da, la última cifra escrita',
  '{0} shims and {1} pressures: give one pressure for each shim.':
    '{0} suplementos y {1} presiones: dar una presión por cada suplemento.',
  'A line needs at least three readings, with different shims.':
    'Una recta necesita al menos tres lecturas con suplementos distintos.',
  'A thicker shim brought no more pressure: something else was changed between these readings.':
    'Un suplemento más grueso no dio más presión: entre estas lecturas se cambió otra cosa.',
  '{0} readings, scatter {1} (one standard deviation, marks and digits included)':
    '{0} lecturas, dispersión {1} (una desviación típica, con divisiones y cifras incluidas)',
  'rate {0}, standard error {1}': 'variación {0}, error típico {1}',
  'at {0} a new reading falls between {1} and {2} (95 %)': 'con {0}, una lectura nueva cae entre {1} y {2} (95 %)',
  'Shims for a set: every unit in its window, and the least spread across it':
    'Suplementos para un juego: cada unidad en su banda y la menor dispersión del conjunto',
  'expected = reading + rate · (shim − shim now in)': 'esperado = reading + rate · (suplemento − now)',
  'of all ways to give out the drawer, the least of highest − lowest':
    'de todas las maneras de repartir el cajón, la de menor diferencia entre máxima y mínima',
  'Exact (bottleneck assignment): no other choice from this drawer has less spread':
    'Exacto (asignación de cuello de botella): ninguna otra elección de este cajón tiene menos dispersión',
  'opening pressure of each unit as it is': 'presión de apertura de cada unidad tal como está',
  'shim that is in each, in the same order': 'suplemento montado en cada una, en el mismo orden',
  'how many there are of each; one of each where none is given': 'cuántos hay de cada medida; si no se da, uno',
  '{0} readings and {1} shims: give the shim that is in each unit.':
    '{0} lecturas y {1} suplementos: dar el suplemento montado en cada unidad.',
  '{0} units and {1} sizes are more than can be looked through: give the sizes about what is wanted.':
    '{0} unidades y {1} medidas son más de lo que se puede revisar: dar las medidas cercanas a lo que se busca.',
  'Give a whole number of pieces for each of the {0} sizes.':
    'Dar un número entero de suplementos por cada una de las {0} medidas.',
  'unit {0} can be brought to {1} to {2}': 'la unidad {0} se puede llevar de {1} a {2}',
  'No shim of this drawer brings every unit into the window: {0}, in steps. Grind a shim, or make the drawer finer.':
    'Ningún suplemento de este cajón lleva todas las unidades a la banda: {0}, por escalones. Rectificar un suplemento, o tener un cajón más fino.',
  'Each unit could be brought into the window, but not all from this drawer at once: there are too few of some size.':
    'Cada unidad podría llevarse a la banda, pero no todas a la vez con este cajón: de alguna medida hay muy pocos.',
  '{0} units, {1} sizes, rate {2}': '{0} unidades, {1} medidas, variación {2}',
  'spread {0} % of the window, {1}': 'dispersión {0} % de la banda, {1}',
  'torque at the nut': 'par en la tuerca',
  'force along the bolt': 'fuerza a lo largo del tornillo',
  'nut factor K; 0.2 is common for dry steel, no more than a guess':
    'factor de tuerca K; 0.2 es habitual en acero seco, y no es más que una estimación',
  'nominal diameter of the thread': 'diámetro nominal de la rosca',
  'Each figure must be over nothing. Look at what was typed.':
    'Cada valor debe ser mayor que cero. Revisar lo escrito.',
  'What to set on a wrench that turns the nut through an adapter':
    'Qué ajustar en una llave que gira la tuerca con un adaptador',
  'setting = torque · wrench / (wrench + adapter · cos angle)':
    'setting = torque · wrench / (wrench + adapter · cos angle)',
  'TM 9-254, general maintenance of torque wrenches': 'TM 9-254, mantenimiento general de llaves dinamométricas',
  'from the mark on the grip to the square drive': 'de la marca de la empuñadura al cuadradillo',
  'from the square drive to the nut': 'del cuadradillo a la tuerca',
  'between wrench and adapter; 0° where none is given': 'entre llave y adaptador; si no se da, 0°',
  'The nut would lie at the grip or behind it, or the wrench has no length. Measure again.':
    'La tuerca quedaría en la empuñadura o detrás, o la llave no tiene longitud. Medir otra vez.',
  'setting {0}': 'ajuste {0}',
  'Torque for a preload, by the nut factor': 'Par para una precarga, con el factor de tuerca',
  'Shigley, Mechanical Engineering Design (from memory)': 'Shigley, Mechanical Engineering Design (de memoria)',
  'torque {0}': 'par {0}',
  'Preload that a torque brings, by the nut factor': 'Precarga que da un par, con el factor de tuerca',
  'preload {0}': 'precarga {0}',
  'Torque for a preload, from the friction of thread and face':
    'Par para una precarga, a partir del rozamiento de la rosca y de la cara',
  'Long form for 60° threads, as in Shigley, Mechanical Engineering Design (from memory)':
    'Fórmula completa para roscas de 60°, como en Shigley, Mechanical Engineering Design (de memoria)',
  'pitch of the thread': 'paso de la rosca',
  'rt, half the pitch diameter': 'rt, la mitad del diámetro de paso',
  'µt, the friction of the thread': 'µt, el rozamiento de la rosca',
  'rn, mean radius of the face under the head': 'rn, radio medio de la cara bajo la cabeza',
  'µn, the friction of the face': 'µn, el rozamiento de la cara',
  'How far a torque loads a solid bolt or stud (never a hollow nut or holder)':
    'Cuánto carga un par un tornillo o espárrago macizo (nunca una tuerca o un portatobera hueco)',
  'stress area = π/4 · (d − 0.9382 · P)²': 'sección resistente = π/4 · (d − 0.9382 · P)²',
  'share = preload / (proof stress · stress area)': 'parte = precarga / (tensión de prueba · sección resistente)',
  'ISO 898-1 (stress area, and proof stress by class: from memory); nut factor as in Shigley (from memory)':
    'ISO 898-1 (sección resistente, y tensión de prueba por clase: de memoria); factor de tuerca como en Shigley (de memoria)',
  'pitch of the metric thread': 'paso de la rosca métrica',
  'property class on the head: {0}': 'clase de resistencia en la cabeza: {0}',
  'There is no class {0}: they are {1}. Read it off the head.': 'No hay clase {0}: son {1}. Leerla en la cabeza.',
  'stress area = π/4 · ({0} − 0.9382 · {1})² = {2} mm²': 'sección resistente = π/4 · ({0} − 0.9382 · {1})² = {2} mm²',
  'proof load = {0}': 'carga de prueba = {0}',
  '{0} % of the proof load{1}': '{0} % de la carga de prueba{1}',
  ': the bolt stretches for good. Look at the torque, the thread and the class again':
    ': el tornillo se alarga para siempre. Revisar el par, la rosca y la clase',
  'Source: {0}.': 'Fuente: {0}.',
  '{0} (need not be given)': '{0} (opcional)',
  'For example: handtight work-out {0} {1}': 'Por ejemplo: handtight work-out {0} {1}',
  '“{0}” is not a name, an equals sign and a value, such as {1}.':
    '«{0}» no es un nombre, un signo igual y un valor, por ejemplo {1}.',
  'It has {0}.': 'Tiene {0}.',
  '{0} has no figure {1}. {2}': '{0} no tiene ningún valor {1}. {2}',
  '{0} is given twice. Delete one.': '{0} se da dos veces. Borrar uno.',
  'Not given: {0}.': 'Falta: {0}.',
  '{0} is a {1}, and {2} a {3}: they must be of one kind. Look at the units.':
    '{0} es {1}, y {2}, {3}: deben ser de la misma clase. Revisar las unidades.',
  '“{0}” in {1} has no unit of its own. Write each figure with its unit, a comma between two of them, and decimals with a point: 1.30 mm, 1.35 mm.':
    '«{0}» no tiene unidad propia en {1}. Escribir cada valor con su unidad, una coma entre dos valores y los decimales con punto: 1.30 mm, 1.35 mm.',
  'nothing is given behind the equals sign. It is {0}.': 'no hay nada detrás del signo igual. Es: {0}.',
  '{0} has no unit. Write it with one, such as {1}.': '{0} no tiene unidad. Escribirlo con una, por ejemplo {1}.',
  '{0} is a {1}, but a {2} is needed. Check the unit.': '{0} es {1}, y hace falta {2}. Comprobar la unidad.',
  '{0} is more than anything that is measured at a bench, and it is {1}. Look at the decimal mark and the unit.':
    '{0} es más que todo lo que se mide en un taller, y es: {1}. Revisar el signo decimal y la unidad.',
  '{0} is less than anything that is measured at a bench, and it is {1}. Look at the decimal mark and the unit.':
    '{0} es menos que todo lo que se mide en un taller, y es: {1}. Revisar el signo decimal y la unidad.',
  '{0} is more than {1}, and it is {2}: that is a slip. Look at the decimal mark and the unit.':
    '{0} es más que {1}, y es: {2}. Es un error al escribir. Revisar el signo decimal y la unidad.',
  '{0} is under nothing, and it is {1}. Give it without its sign, or leave it out.':
    '{0} es menor que cero, y es: {1}. Darlo sin signo, o no darlo.',
  '{0} is not over nothing, and it is {1}. Look at what was typed.':
    '{0} no es mayor que cero, y es: {1}. Revisar lo escrito.',
};
