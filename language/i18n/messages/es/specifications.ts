import type { Bundle } from '../bundle.ts';

export const specifications: Bundle = {
  'Test {0} says neither what is read nor what is good.': 'La prueba {0} no dice ni qué se lee ni qué está bien.',
  'one person passes a drop on the tip, and the next does not.':
    'uno da por buena una gota en la punta, y el siguiente no.',
  'Write “accept "…"”, or “read … within …”.': 'Escribir «accept "…"», o «read … within …».',
  'This check does not say what to look for.': 'Esta revisión no dice qué hay que buscar.',
  'it gets ticked, and a blued tip or a stained face goes in.':
    'se marca sin más, y entra una punta azulada o una cara manchada.',
  'Write what to look for in quotes, or “reuse if "…"  reject if "…"”.':
    'Escribir entre comillas qué hay que buscar, o «reuse if "…"  reject if "…"».',
  'Nothing says what the {0} is chosen for.': 'Nada dice para qué se elige {0}.',
  'the bench hand guesses a thickness and builds the unit for nothing.':
    'el operario adivina un espesor y monta la unidad para nada.',
  'Nothing says in what the {0} is clamped.': 'Nada dice en qué se sujeta {0}.',
  'bare vise jaws pull a bored body out of round and bruise its faces.':
    'las mordazas desnudas ovalan un cuerpo taladrado y marcan sus caras.',
  'Write “in "…"” here, or “held in "…"” at part {0} in the family.':
    'Escribir «in "…"» aquí, o «held in "…"» en la pieza {0}, en la familia.',
  soaked: 'remoja',
  oiled: 'aceita',
  'Nothing says in what this is {0}.': 'Nada dice con qué se {0} esto.',
  'solvent left on a lapped fit strips its oil film, detergent rusts it, and oil removes no dirt.':
    'el disolvente en un ajuste lapeado quita su película de aceite, el detergente lo oxida, y el aceite no quita suciedad.',
  'Write “{0}” and a fluid of the shop{1}.': 'Escribir «{0}» y un fluido del taller{1}.',
  'Test {0} holds a pressure, but does not say for how long.':
    'La prueba {0} mantiene una presión, pero no dice cuánto tiempo.',
  'a slow leak shows no drop in the two seconds that somebody in a hurry waits.':
    'una fuga lenta no muestra caída en los dos segundos que espera quien tiene prisa.',
  'Write “for” and a time, such as for 10 s.': 'Escribir «for» y un tiempo, por ejemplo for 10 s.',
  'Test {0} {1}.': 'Prueba {0}: {1}.',
  'the needle lifts, and a good seat is taken for a leaking one.':
    'la aguja se levanta, y un buen asiento se toma por uno que fuga.',
  'Write “hold … below” and the test that reads the opening.':
    'Escribir «hold … below» y la prueba que lee la apertura.',
  'holds {0} above {1}': 'mantiene {0} por encima de {1}',
  'holds {0}, and {1} is from {2}{3}': 'mantiene {0}, y {1} empieza en {2}{3}',
  'limit in service': 'límite en servicio',
  'as it comes in': 'tal como llega',
  'limit with a new part': 'límite con una pieza nueva',
  'with a new part': 'con una pieza nueva',
  '{0} has its own {1}, but no {2}.': '{0} tiene su propio valor de {1}, pero le falta: {2}.',
  '{0} it would be judged by {1}.': '{0} se juzgaría por {1}.',
  'no limit at all': 'ningún límite',
  'the figure of the other numbers': 'el valor de los otros números',
  "Write “{0}” from the maker's data.": 'Escribir «{0}» con los datos del fabricante.',
  'Spec {0} has no {1}, although other numbers have one, and {2} {3} the spec as it is.':
    'A la especificación {0} le falta: {1}. Otros números lo tienen, y {2} {3} la especificación tal cual.',
  use: 'usan',
  uses: 'usa',
  '{0} {1} would be judged by no limit at all.': '{0} no se juzgaría por ningún límite.',
  'the low end is above the high end, so no unit can pass':
    'el extremo inferior está por encima del superior, así que ninguna unidad puede pasar',
  'it leaves no room at all, and no gauge shows exactly that value':
    'no deja ningún margen, y ningún manómetro marca justo ese valor',
  '{0} is {1}.': '{0}: {1}.',
  "Correct the figures from the maker's data.": 'Corregir los valores con los datos del fabricante.',
  'This measurement says what to do on a fail, but not when it fails.':
    'Esta medición dice qué hacer si falla, pero no cuándo falla.',
  'the figure is written down, and the part goes in whatever it is.':
    'se anota el valor, y la pieza entra sea cual sea.',
  'Write “within” and a spec or a limit.': 'Escribir «within» y una especificación o un límite.',
  'Test {0} reads {1}, but no limit says what is good.':
    'La prueba {0} lee {1}, pero ningún límite dice qué está bien.',
  'one person passes what the next one opens again.': 'uno da por bueno lo que el siguiente vuelve a abrir.',
  'Test {0} says where the pressure fall starts, but not how long it may take.':
    'La prueba {0} dice dónde empieza la caída de presión, pero no cuánto puede tardar.',
  'too fast and too slow both pass.': 'pasa tanto lo demasiado rápido como lo demasiado lento.',
  'Write “in” and a time, such as in 6..20 s.': 'Escribir «in» y un tiempo, por ejemplo in 6..20 s.',
  'Nothing says what {0} is set to.': 'Nada dice a qué valor se ajusta {0}.',
  'each person stops turning somewhere else.': 'cada cual deja de girar en otro punto.',
  'Nothing says how far apart the units of the set may be.': 'Nada dice cuánto pueden diferir las unidades del juego.',
  'every set passes.': 'pasa cualquier juego.',
  'Write “spread at most” and a limit.': 'Escribir «spread at most» y un límite.',
  '{0} is {1} with no tolerance.': '{0}: {1} sin tolerancia.',
  'nobody can say whether a reading is good.': 'nadie puede decir si una lectura está bien.',
  "Write the tolerance from the maker's data, or “unless stated {0} ±…” in the shop.":
    'Escribir la tolerancia con los datos del fabricante, o «unless stated {0} ±…» en el taller.',
  'Spec {0} is “not required”, but no source is given for that.':
    'La especificación {0} es «not required», pero no se da ninguna fuente para eso.',
  'nobody can look up whether that is so.': 'nadie puede comprobar si es así.',
  'Write “source "…"”.': 'Escribir «source "…"».',
  'Spec {0} has no value.': 'La especificación {0} no tiene valor.',
  'the step that uses it has no figure to print.': 'el paso que la usa no tiene valor que imprimir.',
  "Write it from the maker's data, or give a value in each part number.":
    'Escribirlo con los datos del fabricante, o dar un valor en cada número de pieza.',
  'Part number {0} has no {1}.': 'Al número de pieza {0} le falta {1}.',
  'a unit of this number could not be set{0}.': 'una unidad de este número no se podría ajustar{0}.',
  ' (nor one of {0})': ' (ni una de {0})',
  'Write {0} in number {1}, or “{2} not required” with its source.':
    'Escribir {0} en number {1}, o «{2} not required» con su fuente.',
  'Test {0} is timed, but no pressure says where it starts.':
    'La prueba {0} se cronometra, pero ninguna presión dice dónde empieza.',
  'each person pumps to whatever pressure they remember.': 'cada cual bombea hasta la presión que recuerda.',
  'Write “hold” and a pressure, or “from … to …”.': 'Escribir «hold» y una presión, o «from … to …».',
  'Test {0} says where the pressure fall starts, but not where it ends.':
    'La prueba {0} dice dónde empieza la caída de presión, pero no dónde acaba.',
  'nobody knows when to stop the clock.': 'nadie sabe cuándo parar el reloj.',
  'Write “to” and the pressure at the end.': 'Escribir «to» y la presión final.',
  'Nothing says how much the unit is primed.': 'Nada dice cuánto se ceba la unidad.',
  'after two strokes there is still air in it, and the reading is soft.':
    'tras dos emboladas todavía hay aire dentro, y la lectura es blanda.',
  'Nothing says how far a thicker {0} moves {1}.': 'Nada dice cuánto cambia {1} con más espesor de {0}.',
  'the next size cannot be worked out, and each try opens the unit again.':
    'no se puede calcular la medida siguiente, y cada intento vuelve a abrir la unidad.',
  'The {0} sets {1}, but this step does not say to turn it.': '{0} ajusta {1}, pero este paso no dice que se gire.',
  'a setting that is never locked would go unnoticed.': 'un ajuste que nunca se bloquea pasaría inadvertido.',
  'Write “by {0}”.': 'Escribir «by {0}».',
  'Nothing says where the tolerances for {0} after “unless stated” come from.':
    'Nada dice de dónde salen las tolerancias de «unless stated» ({0}).',
  'they print on every sheet whose figures have none.': 'se imprimen en cada hoja cuyos valores no llevan ninguna.',
  'Write “source "…"” after them.': 'Escribir «source "…"» detrás.',
  'Nothing says where {0} comes from.': 'Nada dice de dónde sale {0}.',
  'nobody can look it up when in doubt, and an outdated figure stays forever.':
    'nadie puede consultarlo en caso de duda, y un valor anticuado se queda para siempre.',
  'Write “source "…"” with the sheet and the page.': 'Escribir «source "…"» con la hoja y la página.',
  'Nothing says where {0} of {1} comes from.': 'Nada dice de dónde sale {0} de {1}.',
  'the sheet would print the source of another number beside it.':
    'la hoja imprimiría al lado la fuente de otro número.',
  'The figure in this step has no source.': 'El valor de este paso no tiene fuente.',
  'nobody can look it up when in doubt.': 'nadie puede consultarlo en caso de duda.',
  'Write “source "…"”, or make it a spec.': 'Escribir «source "…"», o hacer de él una especificación.',
  'No step uses {0}.': 'Ningún paso usa {0}.',
  'the figure is on the sheet, but nobody works to it.': 'el valor está en la hoja, pero nadie trabaja con él.',
  'Name it in the step that it is for, or delete it.': 'Nombrarlo en el paso para el que es, o borrarlo.',
  'No step for {0} uses {1}.': 'Ningún paso para {0} usa {1}.',
  'nobody works to the figure of this number.': 'nadie trabaja con el valor de este número.',
  'Delete it, or name {0} at the steps that are only for other numbers.':
    'Borrarlo, o nombrar {0} en los pasos que son solo para otros números.',
  ' for {0}': ' para {0}',
  'This aims at {0}{1}, but {2} must be {3}.': 'Esto apunta a {0}{1}, pero {2} tiene que estar en {3}.',
  'the unit would come back to this repair each time.': 'la unidad volvería cada vez a esta reparación.',
  'Give {0} figures that agree.': 'Dar valores que concuerden: {0}.',
  'the target and the limit': 'el objetivo y el límite',
  'No torque is given for the {0}.': 'No se da par de apriete para {0}.',
  'the bench hand would have to guess.': 'el operario tendría que adivinarlo.',
  'Write “to” and a spec, or the figure with its source.':
    'Escribir «to» y una especificación, o el valor con su fuente.',
  'The range of {0}: {1}': 'El campo de {0}: {1}',
  'everything that is set or read on it is judged by only one of the two.':
    'todo lo que se ajusta o se lee con él se juzga solo por uno de los dos.',
  'Correct the one that is not marked on the tool.': 'Corregir el que no está marcado en la herramienta.',
  'one person sets one figure, and the next sets the other.': 'uno ajusta un valor, y el siguiente el otro.',
  'Correct the one that is not in the source.': 'Corregir el que no está en la fuente.',
  'Wrench {0} has a range in {1}.': 'La llave {0} tiene un campo en {1}.',
  'a torque wrench sets a torque.': 'una llave dinamométrica ajusta un par.',
  'Write it in N·m or lbf·ft.': 'Escribirlo en N·m o lbf·ft.',
  '{0} ranges in {1}, but {2} is a {3}.': '{0} tiene el campo en {1}, pero {2} es otra magnitud: {3}.',
  'nobody can work out what the tool can show, or how accurately.':
    'nadie puede calcular qué puede mostrar la herramienta, ni con qué exactitud.',
  'Write both in units of one kind.': 'Escribir las dos en unidades de una misma magnitud.',
  'Correct the unit.': 'Corregir la unidad de medida.',
  '“then” has to be followed by an angle, not by {0}.': 'Detrás de «then» tiene que ir un ángulo, no {0}.',
  'after the torque the joint is turned further by an angle.': 'después del par la unión se sigue girando un ángulo.',
  'Write it in °.': 'Escribirlo en °.',
  '{0} says {1}, which is a {2}, not a {3}.': '{0}: {1} es {2}, y no {3}.',
  'no tool for the work can set or show it.': 'ninguna herramienta para el trabajo puede ajustarlo ni mostrarlo.',
  '{0} says {1}, which is a {2}.': '{0}: {1} es {2}.',
  'the bench hand needs {0}.': 'el operario necesita {0}.',
  'strokes or a time': 'emboladas o un tiempo',
  'a time': 'un tiempo',
  'This step needs a {0}, but spec {1} is {2}, which is a {3}.':
    'Este paso pide otra magnitud ({0}): la especificación {1} es {2}, o sea {3}.',
  'Name the spec that is meant, or correct its unit.': 'Nombrar la especificación que se quiere, o corregir su unidad.',
  'Write “accept” before the words that say what is good, or “read … within …”.':
    'Escribir «accept» delante de las palabras que dicen qué está bien, o «read … within …».',
  'This test is never to go above {0}, and goes to {1}.': 'Esta prueba no debe pasar nunca de {0}, y llega a {1}.',
  'a good unit cannot be brought there, or the ceiling is broken every time and means nothing.':
    'una unidad buena no se puede llevar hasta ahí, o el tope se rebasa cada vez y no significa nada.',
  'Correct the ceiling, or the limit.': 'Corregir el tope, o el límite.',
  'Write “to bring” and the test, then “to” and its target; or “by” and in quotes how it is chosen.':
    'Escribir «to bring» y la prueba, y luego «to» y su valor objetivo; o «by» y entre comillas cómo se elige.',
  'Point {0} of test {1}': 'El punto {0} de la prueba {1}',
  'does not say over how many strokes or how long the volume is collected':
    'no dice en cuántas emboladas o cuánto tiempo se recoge el volumen',
  'does not say at what speed it delivers': 'no dice a qué velocidad entrega',
  'does not say at what pressure it is read': 'no dice a qué presión se lee',
  'The setting of {0}': 'El ajuste de {0}',
  'how far the air moves it depends on the pressure, so each person would judge differently.':
    'cuánto lo mueve el aire depende de la presión, y cada persona juzgaría de otra manera.',
  'Write, for example, at 0.80 bar.': 'Escriba, por ejemplo, at 0.80 bar.',
  'twice the strokes are twice the volume, and a good unit fails.':
    'el doble de emboladas es el doble de volumen, y una unidad buena no pasa.',
  'what is delivered depends on the speed, so each person would judge differently.':
    'lo que se entrega depende de la velocidad, así que cada cual juzgaría distinto.',
  'Write, for example, for 1000 strokes, or for 30 s.': 'Escribir, por ejemplo, for 1000 strokes, o for 30 s.',
  'Write, for example, at 1000 rpm.': 'Escribir, por ejemplo, at 1000 rpm.',
  'This times the pressure from {0} to {1}.': 'Esto cronometra la presión de {0} a {1}.',
  'a unit that leaks only ever falls, so nothing can be timed.':
    'en una unidad que fuga la presión solo cae, así que no hay nada que cronometrar.',
  'Write the higher pressure first, or the speed at which it is built up.':
    'Escribir primero la presión más alta, o la velocidad a la que se genera.',
  'The {0} is held to {1}, “{2}”, which names the {3}.': '{0} se juzga por {1}, «{2}», que nombra otra pieza: {3}.',
  'a figure that was copied from another line is worked to as if it were right.':
    'se trabaja con un valor copiado de otra línea como si fuera el bueno.',
  'Write the spec of this part, or a title that covers both.':
    'Escribir la especificación de esta pieza, o un título que valga para las dos.',
  'Spec {0}{1} is {2} as rebuilt and {3} {4}.': 'La especificación {0}{1} es {2} en la unidad reconstruida y {3} {4}.',
  'Compare both with the maker’s data, the point and the unit too.':
    'Comparar los dos valores con los datos del fabricante, también la coma decimal y la unidad de medida.',
  'in service': 'en servicio',
  'one of the two is a slip, and units are judged by it.':
    'uno de los dos es un error, y las unidades se juzgan por él.',
  'a unit that has just been rebuilt to the one would be rejected by the other.':
    'una unidad recién reconstruida según uno se rechazaría según el otro.',
  'Spec {0} is {1}{2}, and {3}{4}.': 'La especificación {0} es {1}{2}, y {3}{4}.',
  ' for the others': ' en los demás',
  'a joint that is turned by an angle after its torque is far looser without it.':
    'una unión que se gira un ángulo después del par queda mucho más floja sin él.',
  'sister numbers differ by a few tenths, not by so many times: a point or a unit has slipped.':
    'números hermanos difieren en unas décimas, no en tantas veces: se ha corrido una coma o una unidad de medida.',
  'Write “then” and the angle with both, or with neither.': 'Escribir «then» y el ángulo en los dos, o en ninguno.',
  'The other figure is here.': 'El otro valor está aquí.',
  'Point {0} of test {1} has no limit, and the other points have one.':
    'El punto {0} de la prueba {1} no tiene límite, y los demás puntos sí.',
  'Write “within” and a spec or a limit behind it.': 'Escribir detrás «within» y una especificación o un límite.',
  '{0} is held to {1}, which is the figure of another test; there is a spec called {2}.':
    '{0} se juzga por {1}, que es el valor de otra prueba; hay una especificación llamada {2}.',
  'the figures of two tests are seldom the same, and the certificate shows the wrong one.':
    'los valores de dos pruebas rara vez coinciden, y el certificado muestra el que no es.',
  'Write “within {0}”.': 'Escribir «within {0}».',
  'The {0} is tightened to {1} here, and to {2} at {3}.': '{0} se aprieta aquí a {1}, y en {3} a {2}.',
  'after one of the two the same joint is loose, or overstretched.':
    'con uno de los dos, la misma unión queda floja o demasiado estirada.',
  'Write one spec at both. Where the joint is pulled up in steps, write them in one stage.':
    'Escribir una sola especificación en los dos. Si la unión se aprieta por pasos, escribirlos en una misma etapa.',
  'nothing says where to stop, and a thread strips or a bolt yields.':
    'nada dice dónde parar, y una rosca se pasa o un tornillo cede.',
  'hand-tight is within it.': 'el apriete a mano ya está dentro.',
  'the best unit would be rejected, and the worst would pass.': 'se rechazaría la mejor unidad, y pasaría la peor.',
  '{0} is {1}, open at the other end.': '{0}: {1}, sin límite en el otro extremo.',
  'Write both ends from the maker’s data.': 'Escribir los dos extremos con los datos del fabricante.',
  'Write “at most”.': 'Escribir «at most».',
  'The spread of {0}, {1}, is as wide as its limit, {2}.':
    'La dispersión ({0}), {1}, abarca tanto como su límite, {2}.',
  'two places that pass can lie no further apart, so the spread never decides.':
    'dos lugares que pasan no pueden diferir más, así que la dispersión nunca decide.',
  'Check both figures. Write the smaller spread that the maker gives, or delete it.':
    'Comprobar los dos valores. Escribir la dispersión menor que dé el fabricante, o borrarla.',
  'test {0}': 'prueba {0}',
  'point {0} of test {1}': 'punto {0} de la prueba {1}',
  'What is read at {0} has to be {1} {2}, and its limit, {3}, lies on the other side of {4}.':
    'Lo que se lee ({0}) tiene que quedar {1} de {2}, y su límite, {3}, está al otro lado de {4}.',
  'no unit can pass both points.': 'ninguna unidad puede pasar los dos puntos.',
  'Correct one of the limits, or write {0}.':
    'Corregir uno de los límites, o cambiar {en0, select, below {above por below} other {below por above}}.',
  'Write the number of strokes, such as prime 6 strokes, or “for” and in quotes how long.':
    'Escribir el número de emboladas, por ejemplo prime 6 strokes, o «for» y entre comillas cuánto tiempo.',
  'Write “by” and a rate, such as spec shim-rate rate 3 bar per 0.001 in, or in quotes how the size is found.':
    'Escribir «by» y una variación, por ejemplo spec shim-rate rate 3 bar per 0.001 in, o entre comillas cómo se halla la medida.',
  'Across the set {0} may differ by {1}, and {2} is only {3} wide.':
    'En todo el juego {0} puede diferir en {1}, y {2} solo abarca {3}.',
  'units that have each passed never differ by more, so this compares nothing.':
    'unidades que han pasado una a una nunca difieren más, así que esto no compara nada.',
  'Write a spread that is narrower than the window.': 'Escribir una dispersión más estrecha que la banda.',
  'Across the set {0} may differ by {1}, and {2} cannot be read that finely.':
    'En todo el juego {0} puede diferir en {1}, y {2} no se lee tan fino.',
  'two units that read alike may differ by more.': 'dos unidades que dan igual lectura pueden diferir más.',
  'Write a spread that the gauge can show, or read it on a finer one.':
    'Escribir una dispersión que el manómetro pueda mostrar, o leer con otro más fino.',
  'Spec {0} is a rate of {1} per {2}{3}.': 'La especificación {0} es una variación de {1} por {2}{3}.',
  ', and {0} is a {1}': ', y {0} es {1}',
  'no shim and no turn can be worked out from it.':
    'con ella no se puede calcular ningún suplemento ni ninguna vuelta.',
  'Correct the unit: a rate is what is read, per length of shim or per turn, such as 3 bar per 0.001 in.':
    'Corregir la unidad de medida: una variación es lo que se lee, por longitud de suplemento o por vuelta, por ejemplo 3 bar per 0.001 in.',
  'The title of {0} says {1}, and its figure is {2}.': 'El título de {0} dice {1}, y su cifra es {2}.',
  'The words of this step say {0}, and its figure is {1}.': 'Las palabras de este paso dicen {0}, y su cifra es {1}.',
  'both are printed, and the bench hand picks one.': 'las dos salen impresas, y en el banco se elige una.',
  'Correct the one that is wrong, or leave the figure out of the title.':
    'Corregir la que esté mal, o quitar la cifra del título.',
  'Correct the one that is wrong, or leave the figure out of the words.':
    'Corregir la que esté mal, o quitar la cifra de las palabras.',
};
