import type { Bundle } from '../bundle.ts';

export const tools: Bundle = {
  'the {0} does not get the torque that the wrench shows': '{0} no recibe el par que marca la llave',
  'The adapter puts the {0} at the grip of {1}, or behind it.':
    'El adaptador deja {0} en la empuñadura de {1}, o detrás.',
  'there is no lever left to tighten it with, and no setting for the wrench.':
    'no queda palanca para apretar, ni ajuste posible de la llave.',
  'Turn the adapter the other way, or use a shorter one.':
    'Girar el adaptador hacia el otro lado, o usar uno más corto.',
  'The adapter makes {0} {1} longer, but the shop does not say how long the wrench is.':
    'El adaptador alarga {0} {1}, pero el taller no dice cuánto mide la llave.',
  '{0}, and nobody can work out what to set.': '{0}, y nadie puede calcular qué ajustar.',
  'Write “length” at {0} in the shop, measured from the mark on its grip to the square drive. Or set the adapter “at 90°”, where it changes nothing.':
    'Escribir «length» en {0}, en el taller, medido de la marca de la empuñadura al cuadradillo. O poner el adaptador «at 90°», donde no cambia nada.',
  '“{0}” extends beyond the square drive.': '«{0}» sobresale del cuadradillo.',
  'unless it is turned to 90°, {0}.': 'si no se gira a 90°, {0}.',
  'Write its length after the wrench, such as “and adapter 50 mm at 0°”, so that the sheet gives the setting.':
    'Escribir su longitud detrás de la llave, por ejemplo «and adapter 50 mm at 0°», para que la hoja dé el ajuste.',
  '{0} {1}, which is off the scale of {2}.': '{0} {1}, fuera de la escala de {2}.',
  'nobody can see what it really is, and a tool that is driven past its scale breaks, or reads wrong on the next job.':
    'nadie ve cuánto es en realidad, y una herramienta llevada más allá de su escala se rompe, o lee mal en el trabajo siguiente.',
  'Use a {0} that reaches it, or check the figure.': 'Usar uno que llegue ({0}), o comprobar el valor.',
  '{0} is graduated in steps of {1}, but {2} is only {3} wide.':
    '{0} tiene divisiones de {1}, pero {2} solo abarca {3}.',
  '{0}, so nobody can see whether the reading is inside.': '{0}, así que nadie ve si la lectura está dentro.',
  'its last digit steps over the limit': 'su última cifra salta por encima del límite',
  'the eye cannot read finer than half a mark': 'el ojo no lee más fino que media división',
  'Use a {0} with finer {1}.': 'Usar otro ({0}) más fino: {1}.',
  digits: 'cifras',
  marks: 'divisiones',
  '{0} is {1}, and {2} is accurate to ±{3}{4}.': '{0} es {1}, y {2} tiene una exactitud de ±{3}{4}.',
  ' with marks of {0}': ' con divisiones de {0}',
  'no reading on it can pass, and every unit would be held.':
    'ninguna lectura con él puede pasar, y toda unidad quedaría retenida.',
  'Use a finer {0}, or write “acceptance simple” at the spec.':
    'Usar otro más fino ({0}), o escribir «acceptance simple» en la especificación.',
  'the shop': 'el taller',
  'the shop, fixed at {0} or loose': 'el taller, fijos en {0} o sueltos',
  'No {0} is named, and there is none in {1}.': 'No se nombra ninguno ({0}), y no hay ninguno en {1}.',
  'No {0} is named, and none in {1}{2} {3} {4}.': 'No se nombra ninguno ({0}), y ninguno de {1}{2} {3} {4}.',
  '{0} {1} not reach it.': '{0} no llega.',
  does: 'sí',
  do: 'sí',
  'Add one to the shop with “{0}”, or name it in the step: “with "…"”.':
    'Añadir uno al taller con «{0}», o nombrarlo en el paso: «with "…"».',
  'Its thread and class are declared here.': 'Su rosca y su clase se declaran aquí.',
  '{0} may stretch the {1} for good.': '{0} puede estirar {1} para siempre.',
  '{0} A stretched bolt holds less at every build.': '{0} Un tornillo estirado sujeta menos en cada montaje.',
  '{0} on {1} {2} pulls with {3} (nut factor {4}), which is {5} % of its proof load ({6} for class {7}).':
    '{0} en {2} {1} tira con {3} (factor de tuerca {4}), el {5} % de su carga de prueba ({6} para la clase {7}).',
  'an oiled': 'aceitado',
  'a dry': 'seco',
  'Look up torque, thread and class again. The proof load is reached at {0}, which is not a torque to aim for.{1}':
    'Consultar otra vez par, rosca y clase. La carga de prueba se alcanza con {0}, que no es un par al que apuntar.{1}',
  ' If the torque is meant for dry threads, do not oil them.': ' Si el par es para roscas secas, no aceitarlas.',
  'This rate is {0}, but shims of small nozzles change the pressure by 69 to 196 bar per mm.':
    'Esta variación es de {0}, pero los suplementos de toberas pequeñas cambian la presión de 69 a 196 bar por mm.',
  'a shim worked out from it is far off, and the unit is opened again and again.':
    'un suplemento calculado con ella queda muy lejos, y la unidad se abre una y otra vez.',
  'Check the decimal point and the units (about 3 bar per 0.001 in is common), or fit the rate to your own readings.':
    'Comprobar el punto decimal y las unidades (lo habitual es unos 3 bar per 0.001 in), o ajustar la variación a las lecturas propias.',
  '{0} {1} {2} up to {3}{4}': '{1} {0}: hasta {3}{4}',
  stock: 'surtido',
  stocks: 'surtidos',
  ', two stacked': ', dos apilados',
  'the step allows {0}': 'el paso admite {0}',
  'The coils of the {0} bind above {1} of {2}, but {3}.':
    'Las espiras de {0} se cierran por encima de {1} de {2}, pero {3}.',
  'when the spring is solid, the needle cannot lift, and the spring breaks.':
    'con el muelle a bloque, la aguja no puede levantarse, y el muelle se rompe.',
  'Write “never above {0}” in this step.': 'Escribir «never above {0}» en este paso.',
  'Choose none above {0}': 'No elegir ninguno por encima de {0}',
  'The next size is worked out from the {0} that came out, but no step measures that one.':
    'La medida siguiente se calcula a partir de la pieza que salió ({0}), pero ningún paso la mide.',
  'without its size the bench hand guesses, and opens the unit three times.':
    'sin su medida el operario adivina, y abre la unidad tres veces.',
  'Write “measure {0} with” and a micrometer where it comes out.':
    'Escribir «measure {0} with» y un micrómetro donde sale.',
  'Measure {0} before the next is chosen': 'Medir {0} antes de elegir el siguiente',
  'By its counts, stock {0} has nothing left that could be fitted.':
    'Según su recuento, en el surtido {0} no queda nada que montar.',
  'the unit is opened, and lies open until somebody finds one.':
    'la unidad se abre, y queda abierta hasta que alguien encuentre uno.',
  'Refill the drawer and update the counts.': 'Reponer el cajón y actualizar el recuento.',
  'Stock {0} has only one size.': 'El surtido {0} solo tiene una medida.',
  'nothing can be chosen, and {0} stays where it is.': 'no hay nada que elegir, y {0} se queda donde está.',
  'Add the sizes that the shop has to the stock.': 'Añadir al surtido las medidas que tiene el taller.',
  'Stock {0} cannot bring a unit from {1}, which is still good in service{2}, to {3}.':
    'El surtido {0} no puede llevar una unidad de {1}, que en servicio{2} todavía es buena, a {3}.',
  'from the thinnest {0} to the thickest{1}{2} the shims change it by only {3}.':
    'de {0} más delgado al más grueso{1}{2} los suplementos solo lo cambian en {3}.',
  ', two stacked,': ', dos apilados,',
  ' up to {0}': ' hasta {0}',
  'Widen the stock, renew the spring, or check the rate.':
    'Ampliar el surtido, cambiar el muelle o comprobar la variación.',
  'the limit is only': 'el límite solo abarca',
  ' wide': ' de ancho',
  'the set may spread by only': 'el juego solo puede diferir en',
  'The stock has no {0} between {1} and {2}{3}. That step changes {4}{5} by {6}, but {7} {8}{9}.':
    'El surtido no tiene {0} entre {1} y {2}{3}. Ese salto cambia {4}{5} en {6}, pero {7} {8}.',
  ', nor two that add up to one': ', ni dos que sumen uno',
  ' of {0}': ' de {0}',
  'some units cannot be brought into the limit, whatever is fitted.':
    'algunas unidades no se pueden llevar al límite, se monte lo que se monte.',
  'Stock finer steps{0}.': 'Tener en el surtido saltos más finos{0}.',
  ', {0} at most': ', {0} como máximo',
  '{0} cannot {1} {2}.': '{0} no puede {1} {2}.',
  'a size': 'una medida',
  'a {0}': '{0}',
  'the joint would be tightened by feel': 'la unión se apretaría a ojo',
  'the figure on the sheet would be a guess': 'el valor de la hoja sería una suposición',
  'Name a {0}.': 'Nombrar otra herramienta: {0}.',
  '{0} is fixed at {1}, but this step is done at {2}.': '{0} está fijo en {1}, pero este paso se hace en {2}.',
  'the tool is not there to be read.': 'la herramienta no está allí para leerla.',
  'Do the step where the tool is, or delete its station in the shop if it can be moved.':
    'Hacer el paso donde está la herramienta, o borrar su puesto en el taller si se puede mover.',
  'Shop {0} has no {1}{2}.': 'El taller {0} no tiene ningún {1}{2}.',
  'the job could name none, and the bench hand would use whatever is at hand.':
    'el trabajo no podría nombrar ninguno, y el operario usaría lo que tiene a mano.',
  'Name a kind that the shop has{0}, or add one to the shop.':
    'Nombrar una clase que el taller tenga{0}, o añadir una al taller.',
  ', which is {0} on the wrench with this adapter': ', que son {0} en la llave con este adaptador',
  '{0} does not {1} {2}{3}.': '{0} no sirve para {1} {2}{3}.',
  'beyond its scale it shows nothing, and if it is forced there it reads wrong on the next job.':
    'más allá de su escala no muestra nada, y si se fuerza lee mal en el trabajo siguiente.',
  'Use a {0} that covers {1}.': 'Usar uno que abarque {1} ({0}).',
  'No {0} is named to {1} this, but the shop has {2}.':
    'No se nombra ninguno ({0}) para {1} esto, pero el taller tiene {2}.',
  'two people use two different ones, and the record does not say which.':
    'dos personas usan dos distintos, y el registro no dice cuál.',
  'Write “with {0}”, or the kind of tool.': 'Escribir «with {0}», o la clase de herramienta.',
  'Use a smaller wrench.': 'Usar una llave más pequeña.',
  'Use a gauge with a longer scale.': 'Usar un manómetro con más escala.',
  ' ({0} on the wrench with this adapter)': ' ({0} en la llave con este adaptador)',
  '{0}{1} is below {2} % of the maximum of {3}.': '{0}{1} está por debajo del {2} % del máximo de {3}.',
  'that low, a torque wrench is not held to its stated error (ISO 6789), and the click is hardly felt.':
    'tan abajo, una llave dinamométrica no está obligada a su error indicado (ISO 6789), y el salto apenas se nota.',
  '{0} is above {1} % of the scale of {2}.': '{0} está por encima del {1} % de la escala de {2}.',
  'a dial gauge that is {0} that high does not stay accurate (EN 837-2).':
    'un manómetro de aguja {0} tan arriba no conserva su exactitud (EN 837-2).',
  pulsed: 'con presión pulsante',
  used: 'usado',
  'Use a finer {0}.': 'Usar otro más fino ({0}).',
  '{0} is accurate to ±{1}, and {2} leaves less room than that.':
    '{0} tiene una exactitud de ±{1}, y {2} deja menos margen.',
  'however it is set, the joint may end up outside its torque.':
    'se ajuste como se ajuste, la unión puede acabar fuera de su par.',
  '{0} is accurate to ±{1}, but {2} is only {3} wide.': '{0} tiene una exactitud de ±{1}, pero {2} solo abarca {3}.',
  'half the width should be at least four times the error, or parts near either end pass or fail by chance.':
    'la mitad del ancho debe ser al menos cuatro veces el error, o las piezas cerca de los extremos pasan o fallan por azar.',
  'a bad part reads good as often as not.': 'una pieza mala da buena lectura tantas veces como mala.',
  'A torque wrench': 'Una llave dinamométrica',
  '{0} is used to break the {1} loose.': '{0} se usa para aflojar {1}.',
  'nobody knows what a seized joint takes, and a wrench that was forced once is wrong for every torque after that.':
    'nadie sabe cuánto pide una unión agarrotada, y una llave forzada una vez queda mal para todo par posterior.',
  'Use a socket and breaker bar, and name them in quotes.': 'Usar vaso y mango de fuerza, y nombrarlos entre comillas.',
  'The {0} is turned by {1} after its torque, and nothing is named that shows an angle.':
    '{0} se gira {1} después del par, y no se nombra nada que muestre un ángulo.',
  'by eye it is off by ten degrees or more, and there is no torque at the end that would tell.':
    'a ojo se yerra en diez grados o más, y al final no hay un par que lo delate.',
  'Name the angle gauge: in the shop as a tool with a range in °, or here in quotes, with "angle disc".':
    'Nombrar el medidor de ángulo: en el taller como herramienta con un campo en °, o aquí entre comillas, with "angle disc".',
  '{0} was calibrated on {1} and is due on {2}, {3} years later.':
    '{0} se calibró el {1} y vence el {2}, {3} años después.',
  'no tool stays true for so long, and every reading on it would be certified.':
    'ninguna herramienta se mantiene exacta tanto tiempo, y toda lectura con ella se certificaría.',
  'Correct one of the two dates.': 'Corregir una de las dos fechas.',
  '{0} was due on {1}, before this procedure was approved on {2}.':
    '{0} venció el {1}, antes de aprobarse este procedimiento el {2}.',
  'nothing that is read on it can be certified.': 'nada de lo que se lea con ella se puede certificar.',
  'Write the dates of its present calibration in {0}, or name another tool.':
    'Escribir en {0} las fechas de su calibración actual, o nombrar otra herramienta.',
  'The tool is declared here.': 'La herramienta se declara aquí.',
  '{0} is held {1} {2} {3}, and {4} is accurate to ±{5}.':
    '{0} se mantiene {en2, select, at {a {1} de {3}} other {{1} {2} de {3}}}, y {4} tiene una exactitud de ±{5}.',
  'the pressure that is held may really be at the opening, and a good seat is taken for a leaking one.':
    'la presión que se mantiene puede estar en realidad en la apertura, y un buen asiento se toma por uno que fuga.',
  'Hold it further off, or read it on a finer gauge.': 'Mantenerla más lejos, o leerla en un manómetro más fino.',
  'A pass of {0} is below the scale of {1}.': 'Una pasada de {0} queda por debajo de la escala de {1}.',
  'the wrench never clicks there, and the first bolt takes all that the others should share.':
    'ahí la llave nunca salta, y el primer tornillo se lleva todo lo que deberían repartirse los demás.',
  'Name a smaller wrench for the first passes as well, begin higher, or do them “by hand” in words.':
    'Nombrar también una llave más pequeña para las primeras pasadas, empezar más arriba, o hacerlas a mano, con palabras: «by hand».',
};
