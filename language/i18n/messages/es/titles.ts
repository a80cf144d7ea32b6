import type { Bundle } from '../bundle.ts';

export const titles: Bundle = {
  'A concession silences nothing.': 'Una concesión no silencia nada.',
  'A concession gives no reason.': 'Una concesión no da motivo.',
  'A blank has not been filled in.': 'Un hueco no se ha rellenado.',
  'A call and its sequence do not go together.': 'Una llamada y su secuencia no encajan.',
  'A clause, word or object means nothing where it is written.':
    'Una cláusula, palabra u objeto no significa nada donde está escrito.',
  'A name is declared twice.': 'Un nombre se declara dos veces.',
  'Steps lead back to themselves, or are more than anybody can follow.':
    'Los pasos vuelven sobre sí mismos, o son más de los que nadie puede seguir.',
  'The head of a procedure or job does not say what is needed to check it.':
    'La cabecera de un procedimiento o trabajo no dice lo necesario para comprobarlo.',
  'A character cannot be seen.': 'Un carácter no se ve.',
  'A figure is not possible: zero, below zero, or far beyond what there is.':
    'Un valor no es posible: cero, menor que cero, o mucho más allá de lo que existe.',
  'A job names another shop or revision than its procedure.':
    'Un trabajo cita otro taller u otra revisión que su procedimiento.',
  'A line ends before it is finished.': 'Una línea se corta antes de terminar.',
  'A step is named, and there is none of that name, or several.':
    'Se nombra un paso, y no hay ninguno con ese nombre, o hay varios.',
  'A name is missing, in quotes, or a word of the language.':
    'Un nombre falta, está entre comillas, o es una palabra del lenguaje.',
  'A file is not text in UTF-8.': 'Un archivo no es texto en UTF-8.',
  'A number can be read in several ways, or in none.': 'Un número se puede leer de varias maneras, o de ninguna.',
  'A word or sign does not belong where it is written.': 'Una palabra o un signo no corresponde donde está escrito.',
  'A patch changes nothing, or the same step as another patch.':
    'Un cambio sobre otro procedimiento no cambia nada, o cambia el mismo paso que otro.',
  'Words that need quotes have none, or only the first.':
    'Palabras que van entre comillas no las llevan, o solo la primera.',
  'A result or serial of a job cannot be read.': 'Un resultado o número de serie de un trabajo no se puede leer.',
  'A repair is never done: nothing sends a unit to it, or a repair before it has no limit.':
    'Una reparación no se hace nunca: nada envía una unidad a ella, o una anterior no tiene tope de intentos.',
  'A character has no meaning in the language.': 'Un carácter no tiene significado en el lenguaje.',
  'A text is longer, or nested deeper, than the checker reads.':
    'Un texto es más largo, o está más anidado, de lo que lee la comprobación.',
  'Two things are said that cannot both be true.': 'Se dicen dos cosas que no pueden ser ciertas a la vez.',
  'A brace is missing, or there is one too many.': 'Falta una llave, o sobra una.',
  'A figure has a unit of another kind than what is written there.':
    'Un valor lleva una unidad de otra clase que la que corresponde ahí.',
  'A unit is missing, or can be read in several ways.': 'Falta una unidad, o se puede leer de varias maneras.',
  'A name that nothing declares.': 'Un nombre que nada declara.',
  'A line begins with no word of the language, or a word is misspelled.':
    'Una línea no empieza con ninguna palabra del lenguaje, o una palabra está mal escrita.',
  'The same thing is written twice.': 'Lo mismo está escrito dos veces.',
  'A date is not in the calendar, not written year-month-day, or before what it follows.':
    'Una fecha no está en el calendario, no se escribe año-mes-día, o es anterior a lo que debe seguir.',
  'A limit lacks an end or a side, or has a form that does not belong here.':
    'A un límite le falta un extremo o un lado, o tiene una forma que no corresponde.',
  'A name stands for something that cannot be used in this way.': 'Un nombre designa algo que no se puede usar así.',
  'Parts rest on each other in a circle.': 'Las piezas se apoyan unas en otras en círculo.',
  'A face is neither lapped nor ground, so nothing protects it.':
    'Una cara no está lapeada ni rectificada, así que nada la protege.',
  'A lapped face meets no other face, or a face of a part that does not touch its own.':
    'Una cara lapeada no toca ninguna otra cara, o una cara de una pieza que no toca la suya.',
  'A joint holds nothing.': 'Una unión no sujeta nada.',
  'A part is fitted “located”, but nothing says what locates it.':
    'Una pieza se monta “located”, pero nada dice qué la posiciona.',
  'A part that locks no adjuster is locked.': 'Se asegura una pieza que no asegura ningún ajustador.',
  'Marks have to be lined up, but nothing says which.': 'Hay que alinear marcas, pero nada dice cuáles.',
  'A part is slackened, run down or torqued, but the family declares no joint for it.':
    'Una pieza se afloja, enrosca o aprieta, pero la familia no declara ninguna unión para ella.',
  'A face is guarded with a part that is not its guard.': 'Una cara se protege con una pieza que no es su protección.',
  'A part is chosen from no stock, or from one that the shop does not have.':
    'Una pieza no se elige de ningún surtido, o de uno que el taller no tiene.',
  'A thread is oiled before it is torqued, but the family does not say so.':
    'Una rosca se aceita antes de apretarla, pero la familia no lo dice.',
  'A part that slides in another is always renewed with it, but they are not declared as matched.':
    'Una pieza que desliza en otra se renueva siempre con ella, pero no se declaran emparejadas.',
  'A procedure takes the whole unit apart, but no step names one of its parts.':
    'Un procedimiento desmonta la unidad entera, pero ningún paso nombra una de sus piezas.',
  'More than one part of a family rests on nothing.': 'Más de una pieza de una familia no se apoya en nada.',
  'A reading is tested, set or compared across the set, but the family does not require it.':
    'Una lectura se prueba, ajusta o compara en el juego, pero la familia no la exige.',
  'A spring presses on something from above, and nothing holds its other end.':
    'Un muelle empuja algo desde arriba, y nada sujeta su otro extremo.',
  'A test reads nothing and does not say what to accept.': 'Una prueba no lee nada y no dice qué se acepta.',
  'A check does not say what to look for.': 'Una revisión no dice qué hay que mirar.',
  'A part is chosen, but nothing says which reading it has to bring to what.':
    'Se elige una pieza, pero nada dice qué lectura debe llevar adónde.',
  'A part is clamped, but nothing says in what.': 'Una pieza se sujeta, pero nada dice en qué.',
  'Something is washed, rinsed, soaked or oiled, but nothing says in what.':
    'Algo se lava, enjuaga, remoja o aceita, pero nada dice en qué.',
  'A pressure is held, but nothing says for how long.': 'Se mantiene una presión, pero nada dice cuánto tiempo.',
  'A seat is tested at a pressure that is not below the opening pressure.':
    'Un asiento se prueba a una presión que no está por debajo de la de apertura.',
  'A part number has no limit in service, or with a new part, although others have one.':
    'Un número de pieza no tiene límite en servicio, o con una pieza nueva, aunque otros sí lo tienen.',
  'No value fits a limit.': 'Ningún valor cumple un límite.',
  'Something is read or set as a gate, and no limit says what is good.':
    'Algo se lee o ajusta como control, y ningún límite dice qué es bueno.',
  'A value that is set or read has no tolerance, and the shop states none.':
    'Un valor que se ajusta o lee no tiene tolerancia, y el taller no indica ninguna.',
  'A spec has no value for a part number.': 'Una especificación no tiene valor para un número de pieza.',
  'A timed pressure test gives no pressure.': 'Una prueba de presión con tiempo no da presión.',
  'A unit is primed, but nothing says how much.': 'Una unidad se ceba, pero nada dice cuánto.',
  'A shim is chosen, but no rate is given to work it out from.':
    'Se elige un suplemento, pero no se da variación para calcularlo.',
  'A reading is set, but the step does not name its adjuster.':
    'Se ajusta una lectura, pero el paso no nombra su ajustador.',
  'A figure has no source.': 'Un valor no tiene fuente.',
  'No step uses a spec, or the value of a part number.':
    'Ningún paso usa una especificación, o el valor de un número de pieza.',
  'The target that a part is chosen for is outside the limit of its test.':
    'El objetivo para el que se elige una pieza está fuera del límite de su prueba.',
  'A torque step has no torque.': 'Un paso de apriete no tiene par.',
  'Two figures side by side, in two units, do not agree.': 'Dos valores contiguos, en dos unidades, no concuerdan.',
  'A number has a unit of the wrong kind.': 'Un número lleva una unidad de otra clase.',
  'A volume is judged without what it is collected over, a delivery without its speed, or a movement by air without its pressure.':
    'Se juzga un volumen sin lo que dura su recogida, una entrega sin su velocidad, o un movimiento por aire sin su presión.',
  'A spread is wider than the limit that it goes with, or a point cannot lie beyond an earlier one.':
    'Una dispersión es más ancha que el límite al que acompaña, o un punto no puede quedar más allá de uno anterior.',
  'Two figures of one spec are so far apart that one of them is a slip.':
    'Dos valores de una especificación están tan lejos que uno de ellos es un error.',
  'A joint is tightened to one figure at one place and to another elsewhere.':
    'Una unión se aprieta a un valor en un lugar y a otro en otro lugar.',
  'A limit is open at the end where going too far does the damage.':
    'Un límite está abierto por el extremo en que pasarse hace el daño.',
  'A test may never go as high as what it reads or holds.': 'Una prueba nunca puede subir hasta lo que lee o mantiene.',
  'The pressure that a fall is timed to is not below that from which it falls.':
    'La presión hasta la que se mide una caída no está por debajo de la inicial.',
  'A test is held to the spec of another test, although there is one of its own name.':
    'Una prueba se juzga con la especificación de otra, aunque hay una con su propio nombre.',
  'A spread across the set is as wide as the window of each unit, or finer than the gauge can be read.':
    'Una dispersión en el juego es tan ancha como la banda de cada unidad, o más fina de lo que se puede leer en el manómetro.',
  'A step uses a spec whose title names another part.': 'Un paso usa una especificación cuyo título nombra otra pieza.',
  'Something is set or read, but neither the step nor the shop has a tool for it.':
    'Algo se ajusta o lee, pero ni el paso ni el taller tiene herramienta para ello.',
  'The tool that a step names cannot do the work, or is not available.':
    'La herramienta que nombra un paso no sirve para el trabajo, o no está disponible.',
  'A step is done at a figure beyond the scale of its tool.':
    'Un paso se hace con un valor fuera de la escala de su herramienta.',
  'A torque goes through an adapter, but the setting of the wrench cannot be worked out.':
    'Un apriete pasa por un adaptador, pero no se puede calcular el ajuste de la llave.',
  'A joint is broken loose with a torque wrench.': 'Una unión se afloja con una llave dinamométrica.',
  'A tool is used at the end of its range, where it is not accurate.':
    'Una herramienta se usa en el extremo de su rango, donde no es exacta.',
  'The error of a tool may be greater than the width of the limit that it reads.':
    'El error de una herramienta puede ser mayor que el ancho del límite que lee.',
  'With guarded acceptance, no reading of the tool passes.':
    'Con aceptación con banda de guarda, ninguna lectura de la herramienta pasa.',
  'The error of a tool takes up too much of the limit that it reads or sets.':
    'El error de una herramienta ocupa demasiado del límite que lee o ajusta.',
  'The marks of a tool are too far apart to read the limit on it.':
    'Las divisiones de una herramienta están demasiado separadas para leer el límite.',
  'A torque takes a solid bolt or stud past its proof load.':
    'Un par lleva un tornillo o espárrago macizo más allá de su carga de prueba.',
  'A shim is chosen by the reading, but the one that came out is never measured.':
    'Un suplemento se elige por la lectura, pero el que se quitó no se mide nunca.',
  'A shim may be chosen that is so thick that the coils of the spring bind.':
    'Se puede elegir un suplemento tan grueso que las espiras del muelle hagan tope.',
  'The shims in stock cannot bring a worn unit to its setting.':
    'Los suplementos del surtido no llevan una unidad gastada a su ajuste.',
  'From one shim in stock to the next, the reading jumps over its limit.':
    'De un suplemento del surtido al siguiente, la lectura salta su límite.',
  'The shim rate of a nozzle is far from that of any nozzle.':
    'La variación por suplemento de una tobera está lejos de la de cualquier tobera.',
  'Something is set or measured, but the step names none of the tools that the shop has for it.':
    'Algo se ajusta o mide, pero el paso no nombra ninguna de las herramientas que el taller tiene para ello.',
  'A pressure is held below a reading by no more than what the gauge may be wrong by.':
    'Una presión se mantiene por debajo de una lectura en no más de lo que el manómetro puede errar.',
  'A pass of a joint is below the scale of its wrench.':
    'Una pasada de una unión está por debajo de la escala de su llave.',
  'A joint is turned by an angle with nothing to measure it.': 'Una unión se gira un ángulo sin nada con que medirlo.',
  'A calibration had run out when the procedure was approved, or is said to last for decades.':
    'Una calibración había vencido al aprobar el procedimiento, o se dice que dura decenios.',
  'A part is cleaned with air at or above the limit, or with no limit given.':
    'Una pieza se limpia con aire en el límite o por encima, o sin límite dado.',
  'A bath is as hot as the flash point of its fluid.':
    'Un baño está tan caliente como el punto de inflamación de su fluido.',
  'A hazard is written after the step that it warns about.':
    'Un peligro está escrito después del paso del que advierte.',
  'A hazard that can hurt somebody is marked NOTICE.': 'Un peligro que puede herir a alguien lleva NOTICE.',
  'A title or a step sounds dangerous, and the text does not say whether it is.':
    'Un título o un paso suena peligroso, y el texto no dice si lo es.',
  'A stack on a chosen shim presses on nothing: what its spring loads is not declared.':
    'Una pila sobre un suplemento elegido no aprieta nada: no se declara qué carga su muelle.',
  'The part of a tight joint is taken off before the joint is slackened.':
    'La pieza de una unión apretada se desmonta antes de aflojar la unión.',
  'A test is read while an adjuster is set but not locked.':
    'Se lee una prueba con un ajustador ajustado pero sin asegurar.',
  'The unit leaves with an adjuster that is not locked.': 'La unidad sale con un ajustador sin asegurar.',
  'A joint is slackened, and neither taken off nor torqued again when the unit is tested or leaves.':
    'Una unión se afloja, y ni se desmonta ni se vuelve a apretar cuando se prueba o sale la unidad.',
  'A union or connector is only hand-tight when pressure comes on.':
    'Un racor o conector solo tiene apriete a mano cuando llega la presión.',
  'A joint is run down but not torqued when the unit is tested or leaves.':
    'Una unión está enroscada pero sin apretar cuando se prueba o sale la unidad.',
  'An adjuster is turned while its lock is tight.': 'Un ajustador se gira con su seguro apretado.',
  'A joint is slackened or torqued against a spring that its adjuster still loads.':
    'Una unión se afloja o aprieta contra un muelle que su ajustador aún carga.',
  'A joint is broken loose or torqued with nothing holding the unit.':
    'Una unión se afloja o aprieta sin nada que sujete la unidad.',
  'A part that is always renewed, or was discarded, is fitted or tightened again.':
    'Una pieza que se renueva siempre, o que se desechó, se monta o aprieta otra vez.',
  'A part is discarded, and the unit is closed or leaves without a new one.':
    'Una pieza se desecha, y la unidad se cierra o sale sin una nueva.',
  'A part is fitted before the part that it rests on.': 'Una pieza se monta antes que la pieza en que se apoya.',
  'A part is taken off or fitted a second time with nothing in between.':
    'Una pieza se desmonta o monta por segunda vez sin nada entre medias.',
  'A part is missing when a joint closes over its place, or at the end.':
    'Falta una pieza cuando una unión se cierra sobre su sitio, o al final.',
  'A part is fitted at one station while it is at another, and no step brings it over.':
    'Una pieza se monta en un puesto mientras está en otro, y ningún paso la trae.',
  'A part that something locates is fitted, and the step does not say “located”.':
    'Se monta una pieza que algo posiciona, y el paso no dice “located”.',
  'A part with marks is fitted without lining them up.': 'Una pieza con marcas se monta sin alinearlas.',
  'A face is guarded with a part that is still in its own place.':
    'Una cara se protege con una pieza que sigue en su propio sitio.',
  'A part is taken off while another still lies on it or holds it.':
    'Una pieza se desmonta mientras otra se apoya en ella o la sujeta.',
  'A part is chosen, measured or lapped, or its holes are cleaned, while a joint is closed over it.':
    'Una pieza se elige, mide o lapea, o se limpian sus orificios, con una unión cerrada encima.',
  'A new part is fitted with its preservative still on it.':
    'Una pieza nueva se monta con el aceite protector todavía puesto.',
  'The unit leaves a station, or is clamped again, while it is still clamped.':
    'La unidad deja un puesto, o se sujeta otra vez, cuando aún está sujeta.',
  'A joint is torqued before it is run down, or with parts inside it missing.':
    'Una unión se aprieta antes de enroscarla, o con piezas de dentro sin montar.',
  'Four or more fasteners on one face are torqued, and no order is given.':
    'Se aprietan cuatro o más tornillos de una cara, y no se da orden.',
  'A part that must move freely is not checked for that after the last joint over it was tightened.':
    'Una pieza que debe moverse libremente no se comprueba después de apretar la última unión sobre ella.',
  'A part is fitted where something that is already on is in the way.':
    'Una pieza se monta donde estorba algo ya montado.',
  'Threads that are to be oiled are run down dry, or are oiled when they are down already.':
    'Roscas que se deben aceitar se enroscan en seco, o se aceitan cuando ya están enroscadas.',
  'A part that slides or turns is built in with no oil on it.': 'Una pieza que desliza o gira se monta sin aceite.',
  'A part is lined up when the joint that holds it is tight already.':
    'Una pieza se alinea cuando la unión que la sujeta ya está apretada.',
  'An adjuster or its lock is turned while the cap nut over it is on.':
    'Un ajustador o su seguro se gira con la tuerca ciega puesta encima.',
  'The unit is clamped by one part and unclamped by another.':
    'La unidad se sujeta por una pieza y se suelta por otra.',
  'A part is blasted or buffed after it was marked.': 'Una pieza se granalla o pule después de marcarla.',
  'What holds a loaded spring comes off or goes on while nothing holds the spring.':
    'Lo que sujeta un muelle cargado se quita o pone mientras nada sujeta el muelle.',
  'A bolt that is turned by an angle goes back in unmeasured.':
    'Un tornillo apretado por ángulo se vuelve a montar sin medirlo.',
  'A lapped face is bare when the unit leaves a station, waits, is abraded or is finished.':
    'Una cara lapeada está descubierta cuando la unidad deja un puesto, espera, se trabaja con abrasivo o termina.',
  'The unit waits for somebody or is sent out with ports open, lapped faces bare or parts loose.':
    'La unidad espera a alguien o se envía fuera con bocas destapadas, caras lapeadas descubiertas o piezas sueltas.',
  'A lapped, ground or matched part is itself buffed, blasted or rubbed with an abrasive.':
    'Una pieza lapeada, rectificada o emparejada se pule, granalla o frota con abrasivo.',
  'Lapped parts are put down or soaked together, and the text does not say how they are kept apart.':
    'Piezas lapeadas se dejan o remojan juntas, y el texto no dice cómo se separan.',
  'Lapped or matched parts are kept at an abrasive station, or go there with the unit.':
    'Piezas lapeadas o emparejadas se guardan en un puesto de abrasivo, o van allí con la unidad.',
  'One part of a matched or balanced pair is renewed, or kept elsewhere, without the other.':
    'Una pieza de un par emparejado o equilibrado se renueva, o se guarda aparte, sin la otra.',
  'Parts are off and kept nowhere when the unit leaves a station or waits.':
    'Hay piezas fuera, sin guardar en ningún sitio, cuando la unidad deja un puesto o espera.',
  'Parts are kept, but nothing says where or in what.': 'Se guardan piezas, pero nada dice dónde ni en qué.',
  'Loose parts of the set are washed together, and the text does not say how the units are kept apart.':
    'Piezas sueltas del juego se lavan juntas, y el texto no dice cómo se separan las unidades.',
  'A face or part is checked by eye while it is covered or shut in.':
    'Una cara o pieza se revisa a la vista estando cubierta o encerrada.',
  'A part is judged while it is dirty, or still wet from the wash.':
    'Una pieza se juzga estando sucia, o mojada aún del lavado.',
  'A lapped face is closed, and nobody has looked at it since the unit came in.':
    'Una cara lapeada se cierra, y nadie la ha mirado desde que entró la unidad.',
  'A part is fitted dirty, or onto a dirty part.': 'Una pieza se monta sucia, o sobre una pieza sucia.',
  'A lapped face is covered for good while its part is dirty.':
    'Una cara lapeada se cubre para siempre con su pieza sucia.',
  'Parts are still wet with solvent, detergent or water when the unit leaves a wet station.':
    'Hay piezas mojadas de disolvente, detergente o agua cuando la unidad deja un puesto mojado.',
  'A part is fitted with solvent, detergent or water still on it.':
    'Una pieza se monta con disolvente, detergente o agua encima.',
  'A lapped pair goes together dry instead of wet with clean test oil.':
    'Un par lapeado se monta en seco, no mojado de aceite de prueba limpio.',
  'A part that was washed in water or detergent is dried and fitted without being oiled.':
    'Una pieza lavada con agua o detergente se seca y monta sin aceitar.',
  'A part is washed while a guard is on its lapped face.':
    'Una pieza se lava con una protección puesta en su cara lapeada.',
  'A part is washed, soaked, rinsed or wiped while it is shut in.':
    'Una pieza se lava, remoja, enjuaga o frota estando encerrada.',
  'A part is washed, or the unit is primed, tested or connected, while one of its ports is capped.':
    'Una pieza se lava, o la unidad se ceba, prueba o conecta, con el tapón puesto en una de sus bocas.',
  'A cap, or a part that was put in for trial only, is closed up in the unit.':
    'Un tapón, o una pieza montada solo a prueba, queda encerrado en la unidad.',
  'A port is open while the outside of the unit is cleaned.':
    'Una boca está destapada mientras se limpia la unidad por fuera.',
  'A port is open while the unit is buffed, blasted, waits or is shipped.':
    'Una boca está destapada mientras la unidad se pule, granalla, espera o se envía.',
  'A port is capped, uncapped, connected or disconnected when it already is.':
    'Una boca se tapa, destapa, conecta o desconecta cuando ya lo está.',
  'A unit with lapped parts is opened before its outside is cleaned.':
    'Una unidad con piezas lapeadas se abre antes de limpiarla por fuera.',
  'A stage at an abrasive station abrades nothing, or a stage has no step.':
    'Una etapa en un puesto de abrasivo no trabaja nada con abrasivo, o una etapa no tiene pasos.',
  'Something is engraved, buffed, blasted or washed in solvent at a clean station.':
    'Algo se graba, pule, granalla o lava con disolvente en un puesto limpio.',
  'Parts are fitted for good at a dirty station.': 'Piezas se montan definitivamente en un puesto sucio.',
  'The first wash names its parts, but leaves out some that came in dirty.':
    'El primer lavado nombra sus piezas, pero omite algunas que llegaron sucias.',
  'A part gets into a fluid that spoils it.': 'Una pieza entra en un fluido que la estropea.',
  'A part goes in dry that is to be oiled, oiled that is to be dry, or with the wrong fluid on it.':
    'Una pieza se monta seca y debía ir aceitada, aceitada y debía ir seca, o con el fluido que no es.',
  'A repair contains a test.': 'Una reparación contiene una prueba.',
  'A repair ends with parts off that were on at the test that the unit goes back to.':
    'Una reparación termina con piezas fuera que estaban montadas en la prueba a la que vuelve la unidad.',
  'A pressure test is run on a unit that was not primed after it was opened or connected.':
    'Se hace una prueba de presión con una unidad sin cebar después de abrirla o conectarla.',
  'A test that proves the family is missing from the procedure.':
    'Falta en el procedimiento una prueba que acredita la familia.',
  'A step uses a reading that was not taken before it.': 'Un paso usa una lectura que no se ha tomado antes.',
  'The unit is changed after a test, and the test is not run again.':
    'La unidad cambia después de una prueba, y la prueba no se repite.',
  'Tests are run in a different order from the one that proves the family.':
    'Las pruebas se hacen en otro orden que el que acredita la familia.',
  'A test or check does not say what is done when it fails.': 'Una prueba o revisión no dice qué se hace cuando falla.',
  'The tester line is still connected when the unit leaves, is capped, is opened or is finished.':
    'La línea del probador sigue conectada cuando la unidad sale, se tapa, se abre o termina.',
  'A pressure test is run while the unit is not connected, or away from the tester.':
    'Se hace una prueba de presión con la unidad sin conectar, o lejos del probador.',
  'The unit is opened, tightened or disconnected while it may be under pressure.':
    'La unidad se abre, aprieta o desconecta cuando puede estar bajo presión.',
  'A unit that could be tested is opened before it is read as found.':
    'Una unidad que se podía probar se abre antes de leerla al recibir.',
  'A repair changes nothing: the same unit goes back to the same test.':
    'Una reparación no cambia nada: la misma unidad vuelve a la misma prueba.',
  'A unit never comes back from a repair to its test.': 'Una unidad nunca vuelve de una reparación a su prueba.',
  'A repair may be tried any number of times.': 'Una reparación se puede intentar sin límite.',
  'The gauge is not shut while the unit is primed, or made to chatter or spray.':
    'El manómetro no está cerrado mientras la unidad se ceba, o se hace vibrar o pulverizar.',
  'A pressure is read, held or set with the gauge shut.':
    'Una presión se lee, mantiene o ajusta con el manómetro cerrado.',
  'Chatter is judged, but no lever speed is stated.':
    'Se juzga la vibración, pero no se indica la velocidad de la palanca.',
  'A leak past a lapped pair is timed, but not everything that affects the time is stated.':
    'Se cronometra una fuga por un par lapeado, pero no se indica todo lo que influye en el tiempo.',
  'Readings are judged, but the tester’s master is not read before and after them.':
    'Se juzgan lecturas, pero no se lee el patrón del probador antes y después.',
  'A part that the family says is always checked comes off, and no step checks it.':
    'Se desmonta una pieza que la familia dice que se revisa siempre, y ningún paso la revisa.',
  'A check says only what is good, or only what is not.': 'Una revisión solo dice qué está bien, o solo qué no.',
  'A check sends to a repair that touches nothing of what failed, or a repair does not do what its name says.':
    'Una revisión envía a una reparación que no toca nada de lo que falló, o una reparación no hace lo que dice su nombre.',
  'Nobody signs the unit off at the end.': 'Nadie firma la unidad al final.',
  'The unit is worked on after it was signed off.': 'Se trabaja en la unidad después de firmarla.',
  'A stage is held for the same person who signs for it.': 'Una etapa espera a la misma persona que la firma.',
  'The unit leaves without being marked.': 'La unidad sale sin marcar.',
  'The unit is marked with neither its part number nor its serial number.':
    'La unidad se marca sin su número de pieza ni su número de serie.',
  'A unit with no tag has its parts sent elsewhere, or is put with other units.':
    'Las piezas de una unidad sin identificar se envían a otro sitio, o se ponen con otras unidades.',
  'Something has to be written down, and the step has no box for it.':
    'Hay que anotar algo, y el paso no tiene casilla para ello.',
  'A unit is sent out, and is tested or signed off without being booked in, or it is booked in and was never sent out.':
    'Una unidad sale y se prueba o se firma sin registrar su vuelta, o se registra su vuelta y nunca salió.',
  'A procedure has no revision, or no approval with a date.':
    'Un procedimiento no tiene revisión, o no tiene aprobación con fecha.',
  'A signature is required, but nothing says whose.': 'Se exige una firma, pero nada dice de quién.',
  'A result of a job cannot be right as written: a misplaced decimal point, zero, or more than the tool can show.':
    'Un resultado de un trabajo no puede ser correcto tal como está escrito: un punto decimal desplazado, cero, o más de lo que la herramienta muestra.',
  'The last result of a unit fails: a reading or a torque outside its limit, or a verdict.':
    'El último resultado de una unidad falla: una lectura o un par fuera de su límite, o un dictamen.',
  'The last reading is inside its limit, and nearer to its end than the decision rule of the shop allows with that tool.':
    'La última lectura está dentro de su límite, y más cerca de su extremo de lo que permite la regla de decisión del taller con esa herramienta.',
  'A result is from before something was changed that it depends on.':
    'Un resultado es anterior a un cambio del que depende.',
  'Two results of a unit contradict each other, and nothing is written down that explains it.':
    'Dos resultados de una unidad se contradicen, y no hay nada anotado que lo explique.',
  'The units of a set, or the places of a unit, lie further apart than the procedure allows.':
    'Las unidades de un juego, o los puestos de una unidad, difieren más de lo que permite el procedimiento.',
  'A figure is judged, and the tool that showed it is not written down.':
    'Se juzga un valor, y no está anotada la herramienta que lo mostró.',
  'A result was read with a tool whose calibration was not in force on that day.':
    'Un resultado se leyó con una herramienta cuya calibración no estaba en vigor ese día.',
  'The days of a job are out of order, or one is missing.': 'Los días de un trabajo no van en orden, o falta uno.',
  'Results are written down of a unit that has no serial.':
    'Hay resultados anotados de una unidad que no tiene número de serie.',
  'A unit is signed, its tests have begun, and something that its certificate needs is missing.':
    'Una unidad está firmada, sus pruebas han empezado, y falta algo que su certificado necesita.',
  'All results of a unit are there, and nobody is named who did it.':
    'Están todos los resultados de una unidad, y no se nombra a nadie que lo hiciera.',
  'Words name a figure, and the figure beside them is another.':
    'Las palabras nombran una cifra, y la cifra que hay al lado es otra.',
  'A part is blasted that grit cuts away.': 'Se chorrea una pieza que el abrasivo desgasta.',
  'A job in work names a revision after which another was issued.':
    'Un trabajo en curso nombra una revisión después de la cual se emitió otra.',
  'A serial is that of a unit in another job that is still in work.':
    'Un número de serie es el de una unidad de otro trabajo que sigue en curso.',
  'A procedure says a revision that is issued, and its text is no longer what was issued.':
    'Un procedimiento dice una revisión emitida, y su texto ya no es el que se emitió.',
  'The file of an issued revision is not as it was written.':
    'El archivo de una revisión emitida no está como se escribió.',
  'A unit is signed, and its last result fails: it is outside its limit, or the set lies too far apart.':
    'Una unidad está firmada, y su último resultado falla: está fuera de su límite, o el juego está demasiado disperso.',
  'A unit is signed, and the shop does not say from when to when a tool that it was read with is calibrated.':
    'Una unidad está firmada, y el taller no dice desde cuándo y hasta cuándo está calibrado un útil con el que se leyó.',
};
