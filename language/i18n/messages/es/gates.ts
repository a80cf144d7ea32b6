import type { Bundle } from '../bundle.ts';

export const gates: Bundle = {
  'no seat test is passed before {0}': 'no se ha pasado ninguna prueba de asiento antes de {0}',
  'a leaking seat lets the pressure fall too, and the pair would be blamed.':
    'un asiento que fuga también deja caer la presión, y se culparía a la pareja.',
  'Test the seat first, held below opening.': 'Probar antes el asiento, por debajo de la apertura.',
  'Test {0} does not state the {1}{2}.': 'La prueba {0} no indica {1}{2}.',
  ', and {0}': ', y {0}',
  'the leak gap is only a few thousandths of a millimeter wide, and with another {0} a good pair fails or a worn one passes.{1}':
    'la holgura de fuga es de unas milésimas de milímetro, y con otro valor ({0}) una buena pareja no pasa o una gastada sí.{1}',
  'Write “with "calibration fluid at 20 to 25 °C", "upright, tip down"”, or what the maker says.{0}':
    'Escribir «with "calibration fluid at 20 to 25 °C", "upright, tip down"», o lo que diga el fabricante.{0}',
  fluid: 'fluido',
  temperature: 'una temperatura',
  'attitude of the unit': 'posición de la unidad',
  'Repair {0} ends with the {1} off, but the unit goes back to {2} ({3}), where {4} on.':
    'La reparación {0} acaba con {1} fuera, pero la unidad vuelve a {2} ({3}), donde {4} en su sitio.',
  'they were': 'estaban',
  'it was': 'estaba',
  'the unit cannot be tested like that.': 'así no se puede probar la unidad.',
  'At the end of the repair, close the unit the way it was closed before the test.':
    'Al final de la reparación, cerrar la unidad como estaba cerrada antes de la prueba.',
  'The unit is not primed when {0} is {1}.': 'La unidad no está cebada cuando se {1} {0}.',
  tested: 'prueba',
  'air in it makes the reading soft and the spray ragged.': 'el aire dentro ablanda la lectura y deshace el chorro.',
  'Write “prime 6 strokes with gauge shut” before this step.':
    'Escribir «prime 6 strokes with gauge shut» antes de este paso.',
  '{0} is tested{1} inside repair {2}.': '{0} se prueba{1} dentro de la reparación {2}.',
  ' across the set': ' en todo el juego',
  'a test inside a repair is run twice or recorded nowhere.':
    'una prueba dentro de una reparación se hace dos veces o no se anota en ningún sitio.',
  'After a repair the unit goes back to the earliest test that it has not passed, and that test has a box on the sheet. Move this test to a stage.':
    'Después de una reparación la unidad vuelve a la primera prueba que no ha pasado, y esa prueba tiene casilla en la hoja. Pasar esta prueba a una etapa.',
  'The family says so here.': 'La familia lo dice aquí.',
  'The family is proven by {0}{1}, but no step of this procedure tests it.':
    'La familia se demuestra con {0}{1}, pero ningún paso de este procedimiento lo prueba.',
  'a unit could leave without this proof.': 'una unidad podría salir sin esa prueba.',
  'Write “{0}” in the stage where the unit is tested.': 'Escribir «{0}» en la etapa donde se prueba la unidad.',
  'The family gives the order here.': 'La familia da el orden aquí.',
  '{0} is tested {1} {2}, but the family is proven by {3}, in that order.':
    '{0} se prueba {1} de {2}, pero la familia pide {3}, en ese orden.',
  before: 'antes',
  after: 'después',
  'each test relies on what the tests before it proved.': 'cada prueba se apoya en lo que demostraron las anteriores.',
  'Move this test to its place, or change the order in the family.':
    'Poner esta prueba en su sitio, o cambiar el orden en la familia.',
  'step {0} ({1}) changed what was tested': 'el paso {0} ({1}) cambió lo que se había probado',
  'what was tested was changed': 'cambió lo que se había probado',
  'The test is step {0}.': 'La prueba es el paso {0}.',
  '{0} {1} no longer proven at the end.': '{0}: al final ya no vale la prueba.',
  are: 'son',
  is: 'es',
  'Test {0} again after that, or make the change before the {1}.':
    'Probar otra vez {0} después, o hacer el cambio antes de la prueba.',
  them: 'todo',
  tests: 'pruebas',
  test: 'prueba',
  'Test {0}': 'La prueba {0}',
  'This test across the set': 'Esta prueba en todo el juego',
  'This check': 'Esta revisión',
  '{0} says “on fail” and then nothing.': '{0} dice «on fail» y luego nada.',
  '{0} does not say what to do when it fails.': '{0} no dice qué hacer si falla.',
  'the bench hand is left with a bad unit and no next step.':
    'el operario se queda con una unidad mala y sin paso siguiente.',
  '{0} the repairs that are tried, in order.': '{0} las reparaciones que se intentan, en orden.',
  Name: 'Nombrar',
  'Write “on fail” and': 'Escribir «on fail» y',
  'The gauge is open while {0}.': 'El manómetro está abierto mientras {0}.',
  'the unit is primed': 'se ceba la unidad',
  '{0} is tested': 'se prueba {0}',
  'the pulses knock its movement out of adjustment, and every reading after that is wrong.':
    'los golpes de presión desajustan su mecanismo, y toda lectura posterior es falsa.',
  'Write “with gauge shut”, or declare in the shop that the gauge is damped.':
    'Escribir «with gauge shut», o declarar en el taller que el manómetro está amortiguado.',
  'Shut the gauge': 'Cerrar el manómetro',
  '{0} with the gauge shut.': '{0} con el manómetro cerrado.',
  'The pressure is set for {0}': 'Se ajusta la presión de {0}',
  'The pressure of {0} is read or held': 'Se lee o mantiene la presión de {0}',
  'the gauge shows the pressure from before, or nothing.': 'el manómetro marca la presión de antes, o nada.',
  'Delete “with gauge shut” from this step.': 'Borrar «with gauge shut» de este paso.',
  'The tester line is still connected to {0} when {1}.': 'La línea del probador sigue conectada a {0} cuando {1}.',
  'it is pulled or bent with the unit, and its fitting leaks at the next test.':
    'tira de ella o la dobla la unidad, y su racor fuga en la prueba siguiente.',
  'Relieve the pressure, then write “disconnect {0}” before this.':
    'Descargar la presión y escribir «disconnect {0}» antes de esto.',
  'it is capped': 'se tapa',
  'the unit is opened': 'se abre la unidad',
  'the unit leaves {0}': 'la unidad deja {0}',
  'the procedure ends': 'acaba el procedimiento',
  primed: 'ceba',
  'The unit is not at a station with pressure when it is {0}.':
    'La unidad no está en un puesto con presión cuando se {0}.',
  'there is nothing there to bring it up to pressure.': 'allí no hay nada que le dé presión.',
  'Move the step to a stage at the tester, or write pressure at that station in the shop.':
    'Pasar el paso a una etapa en el probador, o escribir pressure en ese puesto, en el taller.',
  'No line is connected when the unit is {0}.': 'No hay ninguna línea conectada cuando la unidad se {0}.',
  'there is no pressure in it.': 'no hay presión en ella.',
  'Write “connect” and the port before this step.': 'Escribir «connect» y la boca antes de este paso.',
  'The unit is opened before anybody has read it as found.':
    'La unidad se abre antes de que nadie la haya leído al recibir.',
  'afterwards nobody can say what was wrong with it, or how far its spring had settled.':
    'después nadie puede decir qué tenía, ni cuánto se había asentado su muelle.',
  'Write “read {0} as found” at the tester before this{1}.':
    'Escribir «read {0} as found» en el probador antes de esto{1}.',
  ', or {0}': ', o {0}',
  'the {0} {1} {2}': 'se {2} {0}',
  fitted: 'monta',
  tightened: 'aprieta',
  'The unit may still be under pressure when {0}.': 'La unidad puede estar todavía bajo presión cuando {0}.',
  'this is opened': 'se abre esto',
  'fluid at test pressure goes through skin{0}.': 'el líquido a presión de prueba atraviesa la piel{0}.',
  ', and a joint that is turned under pressure can let go': ', y una unión que se gira bajo presión puede soltarse',
  'Write “relieve” before this step, and check that the gauge reads zero.':
    'Escribir «relieve» antes de este paso, y comprobar que el manómetro marca cero.',
  'The unit leaves {0} while it may be under pressure.': 'La unidad deja {0} cuando puede estar bajo presión.',
  'the next person opens it without knowing, and fluid at test pressure goes through skin.':
    'el siguiente la abre sin saberlo, y el líquido a presión de prueba atraviesa la piel.',
  'Write “relieve” at the end of this stage.': 'Escribir «relieve» al final de esta etapa.',
  'The procedure ends with the unit under pressure.': 'El procedimiento acaba con la unidad bajo presión.',
  'Write “relieve” at the end.': 'Escribir «relieve» al final.',
  'Relieve the pressure first': 'Descargar antes la presión',
  'The family says that the {0} {1} always checked, but no step of this procedure checks {2}.':
    'La familia dice que {0} se revisa siempre, pero ningún paso de este procedimiento lo revisa.',
  it: 'eso',
  'a worn or cracked one would go back in.': 'volvería a montarse una gastada o agrietada.',
  'After the wash, write “check {0} "…"” with what to look for.':
    'Después del lavado, escribir «check {0} "…"» con lo que hay que buscar.',
  '{0} {1}, but no step takes a reading of that name.': '{0} {1}, pero ningún paso toma una lectura con ese nombre.',
  'the bench hand has no figure to use.': 'el operario no tiene ningún valor que usar.',
  'Name the test that takes the reading.': 'Nombrar la prueba que toma la lectura.',
  '{0} {1}, but {2} has not been read by then.': '{0} {1}, pero {2} todavía no se ha leído.',
  'the bench hand has no figure to use, or uses an old one.':
    'el operario no tiene ningún valor que usar, o usa uno viejo.',
  'Read or test {0} first.': 'Leer o probar antes {0}.',
  '{0} {1}, but the unit was opened after {2} was read.': '{0} {1}, pero la unidad se abrió después de leer {2}.',
  'the figure belongs to an earlier build.': 'el valor es de un montaje anterior.',
  'Read or test {0} again first.': 'Leer o probar antes otra vez {0}.',
  'The pressure is held {0}': 'La presión se mantiene {0}',
  'The part is chosen by': 'La pieza se elige por',
  'The spread is that of': 'La dispersión es la de',
  'Repair {0} changes nothing.': 'La reparación {0} no cambia nada.',
  'the unit would fail the same test again.': 'la unidad volvería a fallar la misma prueba.',
  'Add the step that cleans, laps, sets or renews something.':
    'Añadir el paso que limpia, lapea, ajusta o cambia algo.',
  'Repair {0} sends the unit out but does not book it in again.':
    'La reparación {0} envía la unidad fuera, pero no registra su vuelta.',
  'the sheet goes on to the test while the unit is at another shop.':
    'la hoja sigue con la prueba mientras la unidad está en otro taller.',
  'Write “book-in” where it comes back.': 'Escribir «book-in» donde vuelve.',
  '{0}, and nothing limits how often.': '{0}, y nada limita cuántas veces.',
  'Repair {0} sends the unit to itself again': 'La reparación {0} envía la unidad otra vez a sí misma',
  'Repairs {0} send the unit to each other': 'Las reparaciones {0} se envían la unidad unas a otras',
  'the unit may go around in circles and never return to its test.':
    'la unidad puede dar vueltas y no volver nunca a su prueba.',
  'Write {0} (3 times), or as often as the shop allows.': 'Escribir {0} (3 times), o las veces que permita el taller.',
  'Say how often it may be tried': 'Decir cuántas veces se puede intentar',
  'Nothing says how often {0} may be tried.': 'Nada dice cuántas veces se puede intentar {0}.',
  'a unit that cannot be brought into its limit would go around forever.':
    'una unidad que no se puede llevar a su límite daría vueltas sin fin.',
  'a unit that keeps failing would go around forever.': 'una unidad que sigue fallando daría vueltas sin fin.',
  'Test {0} does not say how fast to work the lever.': 'La prueba {0} no dice a qué ritmo mover la palanca.',
  'a good needle is silent at one speed and chatters at another, so each person would judge differently.':
    'una buena aguja calla a un ritmo y castañetea a otro, así que cada cual juzgaría distinto.',
  'Write “at 20..60 strokes/min”, or the speed that the maker gives.':
    'Escribir «at 20..60 strokes/min», o el ritmo que dé el fabricante.',
  'after the last': 'después de la última',
  'before the first': 'antes de la primera',
  'before the first and after the last': 'antes de la primera y después de la última',
  '{0} is not read {1} test at {2}.': '{0} no se lee {1} prueba en {2}.',
  'a tester that has drifted passes bad units and fails good ones, and nobody can say since when.':
    'un probador desviado deja pasar unidades malas y rechaza buenas, y nadie puede decir desde cuándo.',
  'Write “read {0}” {1} the tests.': 'Escribir «read {0}» {1} de las pruebas.',
  'before and after': 'antes y después',
  'This check says what is good, but not what is scrap.': 'Esta revisión dice qué está bien, pero no qué se desecha.',
  'two people sort the same face two ways.': 'dos personas clasifican la misma cara de dos maneras.',
  'Write “reject if "…"”, or “on fail” and what to do.': 'Escribir «reject if "…"», o «on fail» y qué hacer.',
  'This check says what to lap and what is scrap, but not what is good as it is.':
    'Esta revisión dice qué se lapea y qué se desecha, pero no qué está bien como está.',
  'faces that need no lapping get lapped.': 'se lapean caras que no lo necesitan.',
  'Write “reuse if "…"”.': 'Escribir «reuse if "…"».',
  'This judges the {0}, and {1} touches nothing of {2}.':
    'Esto juzga {0}, y {1} no toca nada de {en2, select, them {esas piezas} other {esa pieza}}.',
  'the same part comes back to the same check, until the tries are used up.':
    'la misma pieza vuelve a la misma revisión, hasta agotar los intentos.',
  'Name a repair that renews, laps, cleans or resets {0}.':
    'Nombrar una reparación que cambie, lapee, limpie o reajuste {en0, select, one_of_them {alguna de las piezas} other {la pieza}}.',
  'one of them': 'alguna de las piezas',
  'The repair is here.': 'La reparación está aquí.',
  'Repair {0} does not {1} the {2}.': 'La reparación {0} no hace «{1}» con {2}.',
  'whoever is sent here trusts the name, and the unit goes back as it came.':
    'quien llega aquí se fía del nombre, y la unidad vuelve tal como vino.',
  'Write “{0} {1}” in it, or give it another name.': 'Escribir «{0} {1}» en ella, o darle otro nombre.',
  'Say what the work in your own words changes: do "…" to PARTS. If somebody else decides, write hold-for.':
    'Decir qué cambia el trabajo escrito con palabras propias: do "…" to PIEZAS. Si decide otra persona, escribir hold-for.',
};
