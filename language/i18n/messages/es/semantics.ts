import type { Bundle } from '../bundle.ts';

export const semantics: Bundle = {
  'There is nothing to patch: this procedure is not written like another.':
    'No hay nada que cambiar con patch: este procedimiento no está escrito como otro.',
  'Two patches touch the same step: it would not be clear which comes first. Combine them into one.':
    'Dos cambios (patch) tocan el mismo paso: no se sabría cuál va antes. Juntarlos en uno.',
  'This step is in {0}, which another patch replaces or deletes: this patch would change nothing. Delete it, or put its steps there.':
    'Este paso está en {0}, que otro patch sustituye o borra: este no cambiaría nada. Borrarlo, o poner sus pasos ahí.',
  'No step is called “{0}”. {1}': 'Ningún paso se llama «{0}». {1}',
  '{0} steps are called “{1}”. Say which: add the stage (in build), or (2) for the second.':
    '{0} pasos se llaman «{1}». Decir cuál: añadir la etapa (in build), o (2) para el segundo.',
  'A step is named by its verb, its first object and the stage: torque nut in build.':
    'Un paso se nombra por su verbo, su primer objeto y la etapa: torque nut in build.',
  '{0} is written twice here. Delete one.': '{0} está escrito dos veces aquí. Borrar uno.',
  'Both {0} and not {1} are written here: the sheet cannot warn of it and leave the caution out. Keep the one that is true.':
    'Aquí están escritos {0} y not {1}: la hoja no puede avisar y a la vez callar el aviso. Dejar el que es cierto.',
  'Cylinders are counted up from a whole number, at most {0} of them: write, for example, 1..6.':
    'Los cilindros se cuentan desde un número entero, {0} como máximo: escribir, por ejemplo, 1..6.',
  'What {0} binds over': 'El espesor a partir del cual se bloquea {0}',
  'no shim over it is given out': 'por encima de eso no se entrega ningún suplemento',
  'Nothing can be drawn as {0}. Did you mean {1}?': 'Nada se puede dibujar como {0}. ¿Quería decir {1}?',
  'Nothing can be drawn as {0}. Write one of {1}, or delete it: the drawing then has a plain turned piece.':
    'Nada se puede dibujar como {0}. Escribir una de {1}, o borrarlo: el dibujo lleva entonces una pieza torneada lisa.',
  '{0} already meets {1}: a face meets one other face.': '{0} ya casa con {1}: una cara casa con una sola.',
  'A face belongs to a part: write, for example, body.{0}.':
    'Una cara es de una pieza: escribir, por ejemplo, body.{0}.',
  '{0} does not say how much one turn in adds. Write a pressure per turn, above zero, such as 25 bar per turn. If a turn out raises it, leave the rate out and say so in a note.':
    '{0} no dice cuánto añade una vuelta hacia dentro. Escribir una presión por vuelta, mayor que cero, por ejemplo 25 bar per turn. Si sube al girar hacia fuera, quitar la variación y decirlo en una nota.',
  'Job {0} does not say which procedure it follows: add of PROCEDURE to its head.':
    'El trabajo {0} no dice qué procedimiento sigue: añadir of PROCEDURE en la cabecera.',
  'Job {0} is not checked: {1} cannot be read yet. Correct what is reported there first.':
    'El trabajo {0} no se comprueba: {1} todavía no se puede leer. Corregir antes lo que se indica ahí.',
  'Job {0} is at {1}, and {2} is written for {3}: its tools and stations are those of that shop. Write {4}, or name a procedure for {5}.':
    'El trabajo {0} es en {1}, y {2} está escrito para {3}: sus herramientas y puestos son de ese taller. Escribir {4}, o nombrar un procedimiento para {5}.',
  'The job says that it is at revision {0}, and that it was moved from that one. Write the revision that it was moved from.':
    'El trabajo dice que está en la revisión {0} y que pasó de esa misma. Escribir la revisión de la que pasó.',
  'Job {0} is for revision {1}, but {2} is at revision {3}. Print from the revision that the job was taken in under, or write {4}.':
    'El trabajo {0} es para la revisión {1}, pero {2} está en la revisión {3}. Imprimir de la revisión con la que se aceptó el trabajo, o escribir {4}.',
  'Write whose it is: customer "…".': 'Escribir de quién es: customer "…".',
  'Write why it is on hold: on hold "…". The certificate shows it to the customer.':
    'Escribir por qué está retenida: on hold "…". El certificado se lo muestra al cliente.',
  'Units are counted 1, 2, 3 …, and {0} is not such a number: the sheet and the certificate name a unit by it. Write its place in the set.':
    'Las unidades se cuentan 1, 2, 3 …, y {0} no es un número así: la hoja y el certificado nombran la unidad por él. Escribir su lugar en el juego.',
  'Write why it has none: serial none "ground off". Nothing else leads from the unit to its papers.':
    'Escribir por qué no lo tiene: serial none "ground off". Nada más lleva de la unidad a sus papeles.',
  'There are words after the serial {0}, and they would not be printed. Write them as a note, or serial none "{1}" where it has none.':
    'Hay palabras detrás del número de serie {0}, y no se imprimirían. Escribirlas como nota, o serial none "{1}" si no tiene.',
  'The serial is empty. Write what is on the body, or serial none "…" and why.':
    'El número de serie está vacío. Escribir lo que lleva el cuerpo, o serial none "…" y por qué.',
  'Units {0} and {1} have the same serial, {2}: nobody could say later which readings belong to which. Read it again from both bodies.':
    'Las unidades {0} y {1} tienen el mismo número de serie, {2}: nadie podría decir después qué lecturas son de cuál. Leerlo otra vez en los dos cuerpos.',
  'Done on {0}, and the job was received on {1}: one of the two dates is wrong. Correct it.':
    'Hecho el {0}, y el trabajo se recibió el {1}: una de las dos fechas está mal. Corregirla.',
  'More than {0} procedures are like {1}, and {2} is not checked. Variants that differ only in their figures are part numbers of one procedure: write number and its lines.':
    'Más de {0} procedimientos son como {1}, y {2} no se comprueba. Las variantes que solo difieren en sus valores son números de pieza de un mismo procedimiento: escribir number y sus líneas.',
  '{0} is not checked: it takes its steps from {1}, which is like {2}, and there is no procedure of that name. Correct it there.':
    '{0} no se comprueba: toma sus pasos de {1}, que es como {2}, y no hay ningún procedimiento con ese nombre. Corregirlo ahí.',
  '{0}: a ring of like has no beginning, so {1} has no steps to check or print. Write out the steps of one of them.':
    '{0}: un anillo de like no tiene principio, así que {1} no tiene pasos que comprobar ni imprimir. Escribir los pasos de uno de ellos.',
  '{0} is like {1}, and so on through more than {2} procedures: nobody can follow that, and it is not checked. Make it like a procedure that is written out.':
    '{0} es como {1}, y así por más de {2} procedimientos: nadie puede seguirlo, y no se comprueba. Hacerlo como un procedimiento escrito entero.',
  '{0} is not a count: write a whole number, at least {1}, such as {2}.':
    '{0} no es una cantidad contable: escribir un número entero, al menos {1}, por ejemplo {2}.',
  '{0} is a {1}, and {2} is a {3}': '{0} pide {1}, y {2} es {3}',
  '{0} cannot be {1}': '{0}: no puede ser {1}',
  '{0}: {1}. Write, for example, {2}.': '{0}: {1}. Escribir, por ejemplo, {2}.',
  '{0}: {1}. Check the number, its sign and its unit.': '{0}: {1}. Comprobar el número, su signo y su unidad.',
  '{0} reaches {1}': '{0} llega a {1}',
  '{0} of {1} makes no sense: it must be more than zero. Check the number and its sign.':
    '{0} de {1} no tiene sentido: tiene que ser mayor que cero. Comprobar el número y su signo.',
  'A spread': 'Una dispersión',
  'A spread of {0} has no upper end, so every set passes. Write the most that the units may differ: spread at most 5 bar.':
    'Una dispersión de {0} no tiene extremo superior, así que pasa cualquier juego. Escribir cuánto pueden diferir las unidades como máximo: spread at most 5 bar.',
  'A range has two ends: write, for example, 16..80 N·m.':
    'Un intervalo tiene dos extremos: escribir, por ejemplo, 16..80 N·m.',
  '{0} goes from a {1} to a {2}: a scale has one kind of unit. Write both ends in the same unit.':
    '{0} mezcla dos magnitudes ({1} y {2}): una escala lleva una sola. Escribir los dos extremos en la misma unidad.',
  '{0} has no length, and nothing can be read on such a scale. Write both ends, such as 16..80 N·m.':
    '{0} no tiene longitud, y en una escala así no se lee nada. Escribir los dos extremos, por ejemplo 16..80 N·m.',
  '{0} goes down: a scale is written from its lower end up. Write {1} if that is what you mean, and check the digits.':
    '{0} va hacia abajo: una escala se escribe desde su extremo inferior. Escribir {1} si es eso lo que se quiere, y comprobar las cifras.',
  'A standing tolerance has no nominal value: write, for example, ±10 %.':
    'Una tolerancia general no lleva valor nominal: escribir, por ejemplo, ±10 %.',
  'A tolerance has two sides: write {0} where the other side is nothing, or ±{1}.':
    'Una tolerancia tiene dos lados: escribir {0} si el otro lado es nada, o ±{1}.',
  '{0} is not a step: it is {1} of the family. Put a comma before it if it belongs to the list, or a verb that says what to do with it.':
    '{0} no es un paso: es {1} de la familia. Poner antes una coma si es de la lista, o un verbo que diga qué se hace con eso.',
  'a part': 'una pieza',
  'a port': 'una boca',
  'Sequence {0} calls itself: it would never end. Delete the call.':
    'La secuencia {0} se llama a sí misma: no acabaría nunca. Borrar la llamada.',
  nothing: 'nada',
  'Sequence {0} is called with {1}: give it {2}.': 'La secuencia {0} se llama con {1}: darle {2}.',
  'one list': 'una lista',
  '{0} lists, separated by ;': '{0} listas, separadas por ;',
  'Sequence {0} is called here.': 'Aquí se llama la secuencia {0}.',
  '{0} takes one reading at a time: give {1} a step of its own.':
    '{0} toma una sola lectura cada vez: dar a {1} su propio paso.',
  'all is too vague after {0}: name the parts, or the bench hand has to guess.':
    'all es demasiado vago detrás de {0}: nombrar las piezas, o el operario tiene que adivinar.',
  'There is only one {0}: the family does not declare it “for each cylinder”. Write {1} without {2}.':
    'Solo hay un {0}: la familia no lo declara «for each cylinder». Escribir {1} sin {2}.',
  'There is no {0} {1}: the family has {2} {3} to {4}.': 'No hay {0} {1}: la familia tiene {2} de {3} a {4}.',
  '{0} appears twice in this step. Delete one.': '{0} aparece dos veces en este paso. Borrar uno.',
  'The time of a step': 'El tiempo de un paso',
  'the time for the job is added up from it': 'el tiempo del trabajo se suma con él',
  'except goes with all: write wash all … except ….': 'except va con all: escribir wash all … except ….',
  'A pressure difference': 'Una diferencia de presión',
  Air: 'El aire',
  'The length of an adapter': 'La longitud de un adaptador',
  'what to set on the wrench is worked out from it': 'con ella se calcula qué ajustar en la llave',
  'An adapter is at 0° to 180° to its wrench, but this says {0}: what to set cannot be worked out. Write, for example, at 90°.':
    'Un adaptador forma con su llave de 0° a 180°, pero aquí dice {0}: no se puede calcular qué ajustar. Escribir, por ejemplo, at 90°.',
  '{0} is a second limit of this step, which is held to one: it would be nowhere on the sheet. Delete one of the two, or give each a step of its own.':
    '{0} es un segundo límite de este paso, que lleva uno: no saldría en la hoja. Borrar uno de los dos, o dar a cada uno su paso.',
  'A ceiling': 'Un tope máximo',
  'nothing could be done below it': 'por debajo de eso no se podría hacer nada',
  'A stretch': 'Un estiramiento',
  'Write what holds the unit in quotes: in "{0}".': 'Escribir entre comillas lo que sujeta la unidad: in "{0}".',
  '{0} has no meaning after {1}. Delete it.': '{0} no significa nada detrás de {1}. Borrarlo.',
  '{0} stands for one name here, and the call gives it several. Give {1} a call of its own.':
    '{0} vale aquí por un solo nombre, y la llamada le da varios. Dar a {1} su propia llamada.',
  '{0} is not a joint, and {1} closes over it: left loose, it would not be seen before this test. Write proves through {2}.':
    '{0} no es una unión, y {1} cierra encima: si quedara flojo, no se vería antes de esta prueba. Escribir proves through {2}.',
  '“in {0}” has no meaning after {1}. Delete it.': '«in {0}» no significa nada detrás de {1}. Borrarlo.',
  'A hazard names its step by verb and first object, and is printed at each of those: delete the rest. Put a hazard for a single step before that step, without “for”.':
    'Un peligro nombra su paso por verbo y primer objeto, y se imprime en cada uno de esos: borrar el resto. Un peligro para un solo paso se pone antes de ese paso, sin «for».',
  'There is no signal word {0}, and the hazard would print as a WARNING. Write {1}.':
    'No existe la palabra de señal {0}, y el peligro se imprimiría como WARNING. Escribir {1}.',
  'Sequence {0} does nothing with {1}: what a call gives it would be lost. Use it in a step, or delete it.':
    'La secuencia {0} no hace nada con {1}: se perdería lo que le da una llamada. Usarlo en un paso, o borrarlo.',
  '{0}: the joint would be tightened unevenly, or past its torque. Write passes that rise to the full torque, such as passes 50 % 75 % 100 %.':
    '{0}: la unión se apretaría desigual, o por encima de su par. Escribir pasadas que suban hasta el par completo, por ejemplo passes 50 % 75 % 100 %.',
  'A pass is a percentage of the torque or a torque, and {0} is a {1}':
    'Una pasada es un porcentaje del par o un par, y {0} es {1}',
  'A pass of {0} turns nothing': 'Una pasada de {0} no gira nada',
  'A pass of {0} is more than the whole torque': 'Una pasada de {0} es más que todo el par',
  'The passes mix percentages and torques ({0}, {1})': 'Las pasadas mezclan porcentajes y pares ({0}, {1})',
  'The pass of {0} is no more than the one before it ({1})': 'La pasada de {0} no es más que la anterior ({1})',
  '{0} takes this over here.': '{0} lo toma aquí.',
  '{0} appears twice in the head of {1}. Delete one.': '{0} aparece dos veces en la cabecera de {1}. Borrar uno.',
  '{0} is not checked: it takes {1} from {2}, where it is missing or unknown. Correct it there, or add “{3}” here.':
    '{0} no se comprueba: toma {1} de {2}, donde falta o no se conoce. Corregirlo ahí, o añadir «{3}» aquí.',
  'its family': 'su familia',
  'its shop': 'su taller',
  'for FAMILY': 'for FAMILY',
  'at SHOP': 'at SHOP',
  'neither says which family it is for nor at which shop it is done: add “for FAMILY at SHOP”':
    'no dice ni para qué familia es ni en qué taller se hace: añadir «for FAMILY at SHOP»',
  'does not say which family it is for: add “for FAMILY”': 'no dice para qué familia es: añadir «for FAMILY»',
  'does not say at which shop it is done: add “at SHOP”': 'no dice en qué taller se hace: añadir «at SHOP»',
  'Procedure {0} {1} to its head. Until then the procedure is not checked.':
    'El procedimiento {0} {1} en la cabecera. Hasta entonces no se comprueba.',
  'Procedure {0}': 'El procedimiento {0}',
  'Sequence {0}': 'La secuencia {0}',
  '{0} has more than {1} steps once every sequence is expanded: nobody can follow that, and it is not checked. Have the sequences call one another less.':
    '{0} tiene más de {1} pasos con todas las secuencias desplegadas: nadie puede seguirlo, y no se comprueba. Hacer que las secuencias se llamen menos unas a otras.',
  'This hazard is for “{0}”, and there is no such step. {1}':
    'Este peligro es para «{0}», y no hay ningún paso así. {1}',
  'Name the step by its verb and first object.': 'Nombrar el paso por su verbo y su primer objeto.',
  'Spec {0} is {1}, but a spring and a needle give the rate of a shim. Write “spec {2} rate from …”, or write the figure itself.':
    'La especificación {0} es {1}, pero un muelle y una aguja dan la variación de un suplemento. Escribir «spec {2} rate from …», o escribir el valor mismo.',
  'not declared as a rate': 'de otra clase, no rate',
  'Spec {0} is written per {1}, and a spring and a needle give a rate per mm: the two do not go together. Write the rate of the spec in one unit, such as 96 bar per mm.':
    'La especificación {0} está escrita por {1}, y un muelle y una aguja dan una variación por mm: las dos cosas no van juntas. Escribir la variación en una sola unidad, por ejemplo 96 bar per mm.',
  '{0}, and {1} is a {2}: no rate follows from it. Write, for example, {3}.':
    '{0}, y {1} es {2}: de ahí no sale ninguna variación. Escribir, por ejemplo, {3}.',
  'The stiffness of a spring is a force per length': 'La rigidez de un muelle es una fuerza por longitud',
  'A {0} has a diameter': 'Aquí va un diámetro ({0})',
  '200 N/mm': '200 N/mm',
  '6 mm': '6 mm',
  'A spring with a stiffness of {0} presses no harder on a thicker shim: nothing could be set with it. Write the measured stiffness or the one on the drawing, such as 200 N/mm.':
    'Un muelle con una rigidez de {0} no aprieta más sobre un suplemento más grueso: no se podría ajustar nada con él. Escribir la rigidez medida o la del plano, por ejemplo 200 N/mm.',
  'The rate of this spring and needle is too large to calculate with. Check the units.':
    'La variación de este muelle y esta aguja es demasiado grande para calcular. Comprobar las unidades.',
  'Write what was found: as found opening 214 bar, or as found "…".':
    'Escribir lo que se encontró: as found opening 214 bar, o as found "…".',
  'Write the note in quotes.': 'Escribir la nota entre comillas.',
  'Write what went in new: renewed spring, washer.': 'Escribir qué se puso nuevo: renewed spring, washer.',
  'Write done by and a name in quotes.': 'Escribir done by y un nombre entre comillas.',
  'Write the torque that was set: torque nut 60 N·m.': 'Escribir el par que se dio: torque nut 60 N·m.',
  'Nothing is tightened at {0}: it is not a joint of the family, and no step torques it. Name the part that is turned.':
    'En {0} no se aprieta nada: no es una unión de la familia, y ningún paso la aprieta al par. Nombrar la pieza que se gira.',
  'Write one part, “in” and its size: shim in 1.45 mm.': 'Escribir una pieza, «in» y su medida: shim in 1.45 mm.',
  'Write the size: shim out 1.30 mm.': 'Escribir la medida: shim out 1.30 mm.',
  'Write what its maker calls it in quotes: {0} "L-7".':
    'Escribir entre comillas cómo lo llama el fabricante: {0} "L-7".',
  'Write all of it: {0}.': 'Escribirlo entero: {0}.',
  '“{0}” has no meaning after {1}. Write {2}.': '«{0}» no significa nada detrás de {1}. Escribir {2}.',
  'Something is missing of {0}. Write {1}.': 'A {0} le falta algo. Escribir {1}.',
  'A concession is for one reading, and {0} is read at each {1}: write at which behind it.':
    'Una concesión vale para una sola lectura, y {0} se lee en cada {1}: escribir detrás en cuál.',
  'This belongs to a unit: the intake is for what holds for the whole job. Write it under its unit.':
    'Esto pertenece a una unidad: intake es para lo que vale para todo el trabajo. Escribirlo en su unidad.',
  'A note belongs to a unit. Write it there, or as complaint "…".':
    'Una nota pertenece a una unidad. Escribirla allí, o como complaint "…".',
  '“{0}” is not a result here.': '«{0}» no es un resultado aquí.',
  'Write what was read, or pass or fail.': 'Escribir lo que se leyó, o pass o fail.',
  '“{0}” is not a result here. Did you mean {1}?': '«{0}» no es un resultado aquí. ¿Quería decir {1}?',
  '“{0}” belongs to no result here, and would be lost. Write the result that it belongs to before it, or delete it.':
    '«{0}» no es de ningún resultado aquí, y se perdería. Escribir antes el resultado al que corresponde, o borrarlo.',
  '{0} is a {1}, and a {2} is read here. Check the unit.':
    '{0} es {1}, y aquí se lee {2}. Comprobar la unidad de medida.',
  'The shop says {0} twice: nobody knows which one counts. Delete one.':
    'El taller dice {0} dos veces: nadie sabe cuál vale. Borrar una.',
  'The shop says twice how readings are accepted. Delete one.':
    'El taller dice dos veces cómo se aceptan las lecturas. Borrar una.',
  'Station {0} cannot be clean and {1} at the same time: split it into two stations.':
    'El puesto {0} no puede ser clean y {1} a la vez: dividirlo en dos puestos.',
  dirty: 'dirty',
  abrasive: 'abrasive',
  '{0} says “{1}” and gives the same fact again: nobody knows which one counts. Delete one.':
    '{0} dice «{1}» y vuelve a dar el mismo dato: nadie sabe cuál vale. Borrar uno.',
  'The graduation of {0}': 'La división de {0}',
  'nothing could be read on it': 'no se podría leer nada',
  'The length of {0}': 'La longitud de {0}',
  'what to set through an adapter is worked out from it': 'con ella se calcula qué ajustar con un adaptador',
  '{0} was calibrated on {1} and was due on {2}, before that: nothing that it reads could be certified. Correct one of the two dates.':
    '{0} se calibró el {1} y caducaba el {2}, antes: nada de lo que lee se podría certificar. Corregir una de las dos fechas.',
  '{0} cannot be of class {1}: the class is how far a gauge may be off, in percent of its span (EN 837-1). Write the one on its dial, such as class 0.6 or class 1.6.':
    '{0} no puede ser de clase {1}: la clase es cuánto puede errar un manómetro, en tanto por ciento de su campo (EN 837-1). Escribir la de su esfera, por ejemplo class 0.6 o class 1.6.',
  'The error of {0}': 'El error de {0}',
  'no tool is exact, and every limit read with it would be judged as if this one were':
    'ninguna herramienta es exacta, y todo límite leído con ella se juzgaría como si lo fuera',
  'within 4 %, or within 0.003 mm': 'within 4 % o within 0.003 mm',
  '{0} could be off by as much as it reads: within {1} says nothing about it. Look the figure up on its calibration sheet.':
    '{0} podría errar tanto como lo que lee: within {1} no dice nada. Consultar el valor en su hoja de calibración.',
  '{0} {1} {2}, and its whole scale is {3} long: one of the two is wrong. Check the digits and the units.':
    '{0} {1} {2}, y toda su escala mide {3}: uno de los dos está mal. Comprobar las cifras y las unidades.',
  'may be off by': 'puede errar',
  'has a mark only every': 'tiene una marca solo cada',
  'The shop gives the limit for compressed air twice. Delete one.':
    'El taller da dos veces el límite del aire comprimido. Borrar uno.',
  'The limit of the shop for compressed air': 'El límite del taller para el aire comprimido',
  'every blow-dry is checked against it': 'todo secado con aire se compara con él',
  '{0} is not in the calendar: write the date as year-month-day.':
    '{0} no está en el calendario: escribir la fecha como año-mes-día.',
  'is a temperature, and {0} is a {1}': 'es una temperatura, y {0} es {1}',
  'cannot be {0}: flash points of liquids range from {1}':
    'no puede ser {0}: los puntos de inflamación de los líquidos van de {1}',
  'The flash point of {0} {1}. Baths and cautions are judged by it: take it from the safety data sheet, such as flammable 62 °C.':
    'El punto de inflamación de {0} {1}. Baños y avisos se juzgan por él: tomarlo de la ficha de datos de seguridad, por ejemplo flammable 62 °C.',
  'Stock {0} has {1} twice: nobody knows which count is meant. Write it once, with the total count.':
    'El surtido {0} lleva {1} dos veces: nadie sabe qué recuento vale. Escribirlo una vez, con el total.',
  'The step of stock {0}': 'El salto del surtido {0}',
  'A size of stock {0}': 'Una medida del surtido {0}',
  'shims are chosen by their thickness': 'los suplementos se eligen por su espesor',
  'goes from {0} to {1}: the first size must be less than the last':
    'va de {0} a {1}: la primera medida tiene que ser menor que la última',
  'has a step of {0}, which is more than the distance from {1} to {2}: it would have one size only':
    'tiene un salto de {0}, más que la distancia de {1} a {2}: tendría una sola medida',
  'Stock {0} {1}. Check the digits and the units.': 'El surtido {0} {1}. Comprobar las cifras y las unidades.',
  'has more than 10000 sizes: the step is too small': 'tiene más de 10000 medidas: el salto es demasiado pequeño',
  'The size of a shim': 'La medida de un suplemento',
  'Shims come in whole numbers, and {0} is not a count. Write a whole number, 0 if there is none, or leave out the count if there are always enough.':
    'Los suplementos van en números enteros, y {0} no lo es. Escribir un número entero, 0 si no hay ninguno, o quitar el recuento si siempre hay bastantes.',
  'The shop gives the tolerance of a {0} twice. Delete one.':
    'El taller da dos veces la tolerancia para {0}. Borrar una.',
  'A {0} cannot have a tolerance of {1}: {2} is a {3}. Write it in percent, or in a unit of {4}.':
    'Aquí ({0}) no cabe una tolerancia de {1}: {2} es {3}. Escribirla en tanto por ciento, o en una unidad que corresponda ({4}).',
  'A tolerance of {0} lets no reading through. Write what the shop works to, such as ±10 %.':
    'Una tolerancia de {0} no deja pasar ninguna lectura. Escribir con qué trabaja el taller, por ejemplo ±10 %.',
  'A tolerance of {0} reaches down to zero, which is no tolerance. Check the digits.':
    'Una tolerancia de {0} llega hasta cero, y eso no es tolerancia. Comprobar las cifras.',
  'The joint gives its class twice. Delete one.': 'La unión da su clase dos veces. Borrar una.',
  'There is no property class {0}: write the one marked on the head or the end of the bolt, {1}.':
    'No existe la clase de resistencia {0}: escribir la marcada en la cabeza o el extremo del tornillo, {1}.',
  'What a bolt can take is calculated from its thread: write it before “solid class”, like "M8x1.25", or "M8" for the coarse pitch.':
    'Lo que aguanta un tornillo se calcula de su rosca: escribirla antes de «solid class», como "M8x1.25", o "M8" para el paso basto.',
  '“{0}” is not read as a metric thread, and only ISO metric threads are judged by their class: write it with its pitch, like "M8x1.25" ("M8" alone is the coarse one, M3 to M36). Leave “solid class” out for inch threads.':
    '«{0}» no se lee como rosca métrica, y solo las roscas métricas ISO se juzgan por su clase: escribirla con su paso, como "M8x1.25" ("M8" solo es el basto, de M3 a M36). Quitar «solid class» en roscas en pulgadas.',
  '{0} has {1} in it, so it is hollow: it has less metal than its thread suggests, and its torque cannot be judged by the thread. Leave “solid class” out.':
    '{0} lleva {1} dentro, así que es hueco: tiene menos metal de lo que sugiere su rosca, y su par no se puede juzgar por ella. Quitar «solid class».',
  'The second quantity of rate {0}': 'La segunda cantidad de la variación {0}',
  'no shim change has such an effect, and none could be calculated':
    'ningún cambio de suplemento tiene ese efecto, y no se podría calcular ninguno',
  'The rate of {0}': 'La variación de {0}',
  'A new spring loses pressure as it settles, and {0}{1} says that it gains: the unit would be set too low. Write the loss: settling {2}.':
    'Un muelle nuevo pierde presión al asentarse, y {0}{1} dice que la gana: la unidad quedaría baja. Escribir la pérdida: settling {2}.',
  'Spec {0} is a {1}, and {2} is a {3}: nobody can set a unit higher by that. Write what a new spring loses of this {4}.':
    'La especificación {0} es {1}, y {2} es {3}: nadie puede ajustar una unidad más alta en eso. Escribir lo que pierde un muelle nuevo ({4}).',
  'Here {0} is called {1}. Write {2}.': 'Aquí {0} se llama {1}. Escribir {2}.',
  '{0} is a word of the language: a sequence of that name cannot be called. Give the sequence another name.':
    '{0} es una palabra del lenguaje: una secuencia con ese nombre no se puede llamar. Dar otro nombre a la secuencia.',
  '{0} continues a statement, and there is none before it. Write that statement above, or delete this.':
    '{0} continúa una instrucción, y antes no hay ninguna. Escribirla arriba, o borrar esto.',
  'Delete the line, or begin it with a word of the language.':
    'Borrar la línea, o empezarla con una palabra del lenguaje.',
  'No such step or word: {0}. {1}': 'No existe ese paso o palabra: {0}. {1}',
  'The family lists no cylinders, so nobody knows how many of these there are. Write places cylinder 1..6 in the family, or for each cylinder 1..6 here.':
    'La familia no indica cilindros, así que nadie sabe cuántos hay de estos. Escribir places cylinder 1..6 en la familia, o for each cylinder 1..6 aquí.',
  '{0} is not a step: it is {1}.': '{0} no es un paso: es {1}.',
  'a spec: write “to {0}” behind a torque, “within {1}” behind what is read':
    'una especificación: escribir «to {0}» detrás de un apriete, «within {1}» detrás de lo que se lee',
  'a fluid of the shop: write “in {0}”': 'un fluido del taller: escribir «in {0}»',
  'a tool of the shop: write “with {0}”': 'una herramienta del taller: escribir «with {0}»',
  'a station of the shop: write “at {0}”': 'un puesto del taller: escribir «at {0}»',
  'Places are counted up, at most {0} of them: write, for example, places {1} 1..6.':
    'Los lugares se cuentan hacia arriba, como máximo {0}: escribir, por ejemplo, places {1} 1..6.',
  'This order does not go through every {0} once: {1}. Write each of {2} in the order in which they follow each other.':
    'Este orden no pasa una vez por cada {0}: {1}. Escribir cada uno de {2} en el orden en que se siguen.',
  'there is no {0} {1}': 'no hay {0} {1}',
  '{0} {1} is in it twice': '{0} {1} está dos veces',
  '{0} {1} is not in it': 'falta {0} {1}',
  'The family lists no places, so nobody knows where each {0} is. Write in the family, for example, places {1} 1..6.':
    'La familia no indica lugares, así que nadie sabe dónde está cada {0}. Escribir en la familia, por ejemplo, places {1} 1..6.',
  'There is no {0} {1}: the family has {2} {3}.': 'No hay {0} {1}: la familia tiene {2} {3}.',
  'Nobody knows from which place “per place in order” is counted. Write, for example, at each cylinder from cylinder 1.':
    'Nadie sabe desde qué lugar se cuenta «per place in order». Escribir, por ejemplo, at each cylinder from cylinder 1.',
  'A spread lies between several places of one unit, and this is read at one. Write at each and the places, or across the set to compare the units.':
    'Una dispersión es entre varios lugares de una unidad, y esto se lee en uno. Escribir at each y los lugares, o across the set para comparar las unidades.',
  'Point {0} says this twice. Delete one.': 'El punto {0} lo dice dos veces. Borrar una.',
  'No language has the code {0}, so a reader program cannot speak these words right. Write the code of ISO 639: en, es, de, pt, fr.':
    'Ningún idioma tiene el código {0}, así que un lector de pantalla no puede pronunciar bien estas palabras. Escribir el código de ISO 639: en, es, de, pt, fr.',
  '{0} is read once, and at no place.': '{0} se lee una vez, y en ningún lugar.',
  '{0} is read at {1}: write at which, behind its name.': '{0} se lee en {1}: escribir en cuál, detrás de su nombre.',
  '“{0}” is no part of this result.{1}': '«{0}» no forma parte de este resultado.{1}',
  ' Behind the figure goes at {0}, and which.': ' Detrás del valor va at {0}, y cuál.',
  'Write which {0}: {1}.': 'Escribir cuál ({0}): {1}.',
  'the others are read from {0} {1}, so it has no reading':
    'los demás se leen a partir de {0} {1}, así que ahí no hay lectura',
  '{0} is read at no place, and {1} is none': '{0} no se lee en ningún lugar, y {1} no lo es',
  'There is no {0} {1}: they are {2}': 'No hay {0} {1}: son {2}',
  '{0} is read at each {1}: write one figure for each of {2}, separated by commas, or at which behind the figure.':
    '{0} se lee en cada {1}: escribir un valor para cada uno de {2}, separados por comas, o en cuál detrás del valor.',
  '{0} is one figure here, and these are {1}.': '{0} es aquí un solo valor, y estos son {1}.',
  'These are {0} figures, and {1} are read: one for each {2}, {3}.':
    'Estos son {0} valores, y se leen {1}: uno por cada {2}, {3}.',
  '{0} is written down at each {1}: write at which behind it, one to a line.':
    '{0} se anota en cada {1}: escribir detrás en cuál, uno por línea.',
  'Nothing is written between the quotes.': 'No hay nada escrito entre las comillas.',
  '“{0}” is none of the words to choose from. Write {1}.':
    '«{0}» no es ninguna de las palabras que se pueden elegir. Escribir {1}.',
  '“{0}” is no code of {1} {2}. Read it again and write it whole, without blanks.':
    '«{0}» no es un código de {1} {2}. Leerlo otra vez y escribirlo entero, sin espacios.',
  'What {0} was found with': 'El error hallado en {0}',
  'which readings were in doubt is worked out from it': 'con él se calcula qué lecturas quedaron en duda',
  '{0} was found {1} off at {2}, and the two measure different things. Write both as it reads them: found 3 bar high at 250 bar.':
    'En {0} se halló un error de {1} a {2}, y son magnitudes distintas. Escribir los dos tal como los lee: found 3 bar high at 250 bar.',
  '{0} has no meaning after {1}. Write it before, if it belongs to the step, or delete it.':
    '{0} no tiene sentido detrás de {1}. Escribirlo delante, si es del paso, o borrarlo.',
  'not {0}': 'not {0}',
  'What follows {0} is a {1}, and {2} is a {3}. Write it before {4}, if it belongs to the step.':
    'Detrás de {0} va una magnitud de tipo {1}, y {2} es de tipo {3}. Escribirla delante de {4}, si es del paso.',
  'The weight of a part': 'El peso de una pieza',
  'it says whether the part is lifted by hand': 'dice si la pieza se levanta a mano',
  'No material is called {0}. Did you mean {1}?': 'Ningún material se llama {0}. ¿Se quiso decir {1}?',
  'No material is called {0}. Write one of {1}, or delete it: nothing follows from another.':
    'Ningún material se llama {0}. Escribir uno de {1}, o borrarlo: de otro no sale nada.',
  '{0} is told apart by cylinder and by side, and a step could not say which is meant. Write a part for each side, each of them for each cylinder.':
    '{0} se distingue por cilindro y por lado, y un paso no podría decir cuál es. Escribir una pieza para cada lado, cada una con for each cylinder.',
  '{0} has the same side twice. Give each side a name of its own, or write quantity {1} if they are all alike.':
    '{0} tiene dos veces el mismo lado. Dar a cada lado un nombre propio, o escribir quantity {1} si todas son iguales.',
  '{0} has one side only, which tells nothing apart. Name all sides: sides left, right.':
    '{0} tiene un solo lado, que no distingue nada. Nombrar todos los lados: sides left, right.',
  '{0} is told apart by side, not by number. Write {1}, or {2} for all of them.':
    '{0} se distingue por lado, no por número. Escribir {1}, o {2} para todas.',
  '“figures from” is written twice here, and a figure cannot come from both. Delete one, and write “source "…"” at the figures that are from elsewhere.':
    '“figures from” aparece dos veces aquí, y un valor no puede venir de ambos. Borrar uno, y escribir “source "…"” en los valores que vienen de otra parte.',
  '“then wash in {0}” belongs to lapping, which leaves paste: it has no meaning after {1}. Delete it, or write a repair that washes.':
    '“then wash in {0}” corresponde a lapear, que deja pasta: después de {1} no tiene sentido. Borrarlo, o escribir una reparación que lave.',
  'In {0} nothing carries {1} together: taken off as one, it would fall apart. Name the part that they rest on too, or say in the family what they rest on.':
    'En {0} nada sostiene juntas {1}: al quitarlo entero se desarmaría. Nombrar también la pieza en que se apoyan, o decir en la familia en qué se apoyan.',
  '{0} is an assembly, and {1} is done to single parts: name those that are meant, of {2}.':
    '{0} es un conjunto, y {1} se hace a piezas sueltas: nombrar las que sean, de {2}.',
  '{0} goes in from below and from above: nobody knows at which end to look for it. Delete one.':
    '{0} entra por abajo y por arriba: nadie sabe en qué extremo buscar. Borrar uno.',
};
