import type { Bundle } from '../bundle.ts';

export const protection: Bundle = {
  '{0} is bare {1}.': '{0} queda al descubierto {1}.',
  'one knock or one grain of grit scores it, and it leaks.': 'un golpe o un grano de suciedad la raya, y fuga.',
  'Cover it first, and declare in the family what guards it.':
    'Cubrirla antes, y declarar en la familia qué la protege.',
  'The {0} guards it: write “guard {1} with {2}” before this.':
    '{0} la protege: escribir «guard {1} with {2}» antes de esto.',
  'while the unit waits': 'mientras espera la unidad',
  'while the unit is buffed': 'mientras se pule la unidad',
  'while the unit is blasted': 'mientras se chorrea la unidad',
  'when the unit leaves {0}': 'cuando la unidad deja {0}',
  'when the procedure ends': 'cuando acaba el procedimiento',
  'The {0} is fitted at {1}, which is dirty.': '{0} se monta en {1}, que es un puesto sucio.',
  'the dirt on the bench is built in with it.': 'la suciedad del banco queda montada dentro.',
  'Build at a clean station. For a guard write “guard”; for a trial fit add “for trial”.':
    'Montar en un puesto limpio. Para una protección escribir «guard»; para un montaje de prueba añadir «for trial».',
  '{0} when it is checked.': '{0} cuando se revisa.',
  'nobody can see it, and the tick on the sheet means nothing.':
    'nadie puede verlo, y la marca en la hoja no significa nada.',
  '{0} is under its guard': '{0} está bajo su protección',
  'Write “remove {0}” before this step': 'Escribir «remove {0}» antes de este paso',
  '{0} is shut by the {1}': '{0} está tapada por {1}',
  'Check it with the {0} off': 'Revisarla con {0} fuera',
  'the {0} is shut in under the {1}': '{0} está dentro, encerrado por {1}',
  'Check it before it goes in, or while it is out': 'Revisarlo antes de montarlo, o mientras está fuera',
  'The {0} {1} judged dirty.': '{0} se juzga con suciedad encima.',
  'a crack or a score line hides under the dirt.': 'bajo la suciedad se esconde una grieta o una raya.',
  'Wash {0} first.': 'Lavar antes {0}.',
  'The {0} {1} judged wet from the wash.': '{0} se juzga todavía con el líquido del lavado.',
  'a wet film shines like a good face and hides a hairline crack.':
    'una película húmeda brilla como una buena cara y esconde una fisura.',
  'Blow {0} dry first.': 'Secar antes con aire {0}.',
  'The cap is still in {0} {1} when the {2} goes over {3}.': 'El tapón sigue en la boca {1} cuando {2} la cubre.',
  ports: 'bocas',
  port: 'boca',
  'it stays in the unit and blocks the passage.': 'se queda en la unidad y obstruye el paso.',
  'Write “uncap {0}” before this step, and count the caps.':
    'Escribir «uncap {0}» antes de este paso, y contar los tapones.',
  'The {0} inside {1} in place for trial only when the joint over it ({2}) is tightened.':
    '{0}, dentro, está montado solo a modo de prueba cuando se aprieta la unión que va encima ({2}).',
  'a part that was only put in to try would be shipped.': 'saldría una pieza montada solo para probar.',
  'Remove {0} and fit {1} for good first.': 'Desmontar antes {0} y montar {1} en definitiva.',
  '{0} at {1}, which is clean.': '{0} en {1}, que es un puesto limpio.',
  'chips, grit and drips settle on the parts that are built there.':
    'virutas, polvo y gotas caen sobre las piezas que se montan allí.',
  'Do it at another station, before the last wash.': 'Hacerlo en otro puesto, antes del último lavado.',
  'The unit is marked': 'Se marca la unidad',
  'It is buffed': 'Se pule',
  'It is blasted': 'Se chorrea',
  'Parts are washed in {0}': 'Se lavan piezas ({0})',
  'The {0} {1} cleaned while the {2} shuts {3} in.': '{0} se limpia mientras {2} encierra {3}.',
  'neither bath nor rag reaches {0}, and fluid that runs in does not run out.':
    'ni el baño ni el trapo llegan a {0}, y el líquido que entra no sale.',
  'Take {0} out first, or clean only the outside.': 'Sacar antes {0}, o limpiar solo el exterior.',
  '{0} is covered here and has not been cleaned{1}.': '{0} se cubre aquí y no se ha limpiado{1}.',
  ' since the unit came in': ' desde que llegó la unidad',
  ' since it was dirtied': ' desde que se ensució',
  'one grain of grit between lapped faces holds them apart, and they leak.':
    'un grano de suciedad entre caras lapeadas las separa, y fugan.',
  'The {0} {1} {2} dirty{3}.': '{0}: se {2} con suciedad{3}.',
  'built on': 'monta encima',
  ', as {0} came in': ', tal como llegó',
  they: 'ellas',
  'the dirt is closed up in the unit.': 'la suciedad queda encerrada en la unidad.',
  'Wash or rinse {0} before this step.': 'Lavar o enjuagar {0} antes de este paso.',
  'The {0} {1} still wet with {2} when {3} together.': '{0}: sigue mojado con {2} al juntar las piezas.',
  'water or detergent': 'agua o detergente',
  solvent: 'disolvente',
  'they go': 'van',
  'it goes': 'va',
  'they rust inside.': 'se oxidan por dentro.',
  'it strips the oil film inside.': 'quita la película de aceite de dentro.',
  'Blow {0} dry or rinse {1} in test oil first.': 'Secar antes con aire, o enjuagar en aceite de prueba.',
  guard: 'la protección',
  '{0} still has the {1} on as its guard when the {2} is {3}.':
    '{0} todavía lleva {1} como protección cuando se {3} {2}.',
  rinsed: 'enjuaga',
  washed: 'lava',
  'the dirt stays under the guard.': 'la suciedad se queda bajo la protección.',
  'Write “remove {0}” before this step.': 'Escribir «remove {0}» antes de este paso.',
  'the guard': 'la protección',
  'Nothing says where the {0} {1} kept.': 'Nada dice dónde se guarda {0}.',
  'the next person has to look for {0}, and parts of two units get mixed.':
    'el siguiente tiene que buscar {0}, y se mezclan piezas de dos unidades.',
  'Write “at” and a station, and in quotes what they are kept in: “Own lidded tray, own number”.':
    'Escribir «at» y un puesto, y entre comillas en qué se guardan: «Own lidded tray, own number».',
  'The {0} {1} lapped or matched, and {2} kept at {3}.': '{0}, lapeado o de pareja, se guarda en {3}.',
  'grit from an abrasive station scores lapped faces and seizes matched fits.':
    'el polvo de un puesto abrasivo raya las caras lapeadas y agarra los ajustes de pareja.',
  'Keep {0} at another station.': 'Guardar {0} en otro puesto.',
  'The {0} {1} along to {2}.': '{0} va también a {2}.',
  'Write “keep {0} at” a clean place before this.': 'Escribir antes «keep {0} at» un lugar limpio.',
  'The {0} is lapped or matched and is {1}.': '{0} es de pareja o lapeado, y se {1}.',
  buffed: 'pule',
  blasted: 'chorrea',
  'rubbed with grit': 'frota con abrasivo',
  'abrasion rounds its edges and ruins the fit, and it leaks.':
    'la abrasión redondea los cantos y estropea el ajuste, y fuga.',
  'Wash and wipe it, or lap it. Or use another part.': 'Lavar y limpiar a mano, o lapear. O usar otra pieza.',
  '{0} {1} closed here, but no step has looked at {2}.': '{0} {1} cerrado aquí, y ningún paso lo ha mirado.',
  'a scored or stained face leaks, and is found only on the tester.':
    'una cara rayada o manchada fuga, y se descubre solo en el probador.',
  'Write “check {0} "…"” before this step, with what to look for.':
    'Escribir «check {0} "…"» antes de este paso, con lo que hay que buscar.',
  'the first stroke can seize them.': 'la primera embolada puede agarrarlas.',
  'Rinse both in clean test oil first.': 'Enjuagar antes las dos en aceite de prueba limpio.',
  'The {0} are lapped or matched and {1} together.': '{0} son piezas lapeadas o de pareja y {1} juntas.',
  soak: 'se remojan',
  'are put down': 'se dejan',
  'faces that knock together are scored before anybody fits them.':
    'las caras que se golpean se rayan antes de que nadie las monte.',
  'Write how they are kept apart at the end of the step, such as "Own lidded tray, each in its place".':
    'Escribir al final del paso cómo se mantienen separadas, por ejemplo "Own lidded tray, each in its place".',
  'The {0} {1} {2} wet with {3}.': '{0}: deja {2} con {3} encima.',
  leave: 'salen',
  leaves: 'sale',
  'bare steel rusts within the hour.': 'el acero desnudo se oxida en una hora.',
  'it drips on the next bench, and bare steel rusts.': 'gotea en el banco siguiente, y el acero desnudo se oxida.',
  'Blow {0} dry or rinse {1} in oil at the end of this stage.':
    'Secar con aire {0} o enjuagar en aceite al final de esta etapa.',
  'The {0} {1} left out of the first wash.': '{0} queda fuera del primer lavado.',
  '{0} on dirty among clean parts.': '{0} adelante con suciedad entre piezas limpias.',
  'Add {0} to it, or write “wash all except” and the parts that must not be washed.':
    'Añadir {0}, o escribir «wash all except» y las piezas que no se deben lavar.',
  'The {0} is renewed, but the {1} is not.': 'Se cambia {0}, pero no {1}.',
  'they are a pair, fitted to each other, and a new one with an old one sticks or leaks.':
    'son pareja, ajustadas la una a la otra, y una nueva con una vieja se atasca o fuga.',
  'Write “renew {0}”, or say how the new one is matched.': 'Escribir «renew {0}», o decir cómo se ajusta la nueva.',
  'The {0} are a matched pair, and one is put down at {1}, the other at {2}.':
    '{0} son pareja, y una se deja en {1} y la otra en {2}.',
  'by the end of the day nobody knows which ones belong together.': 'al final del día nadie sabe cuáles van juntas.',
  'Keep them together, or write how to tell which belong together.':
    'Guardarlas juntas, o escribir cómo saber cuáles van juntas.',
  'Renew {0} too': 'Cambiar también {0}',
  'when the unit is sent out': 'cuando la unidad se envía fuera',
  'nobody knows for how long, or who handles it': 'nadie sabe por cuánto tiempo, ni quién la maneja',
  '{0} {1} {2} open {3}.': '{0} {1}: sin tapar {3}.',
  Ports: 'Bocas',
  Port: 'Boca',
  'Write “cap {0}” before this step.': 'Escribir «cap {0}» antes de este paso.',
  'Cover it first': 'Cubrirla antes',
  'Write “guard {0} with {1}” before this step': 'Escribir «guard {0} with {1}» antes de este paso',
  'The {0} {1} loose {2}.': '{0}: queda suelto {2}.',
  lie: 'quedan',
  lies: 'queda',
  'Write “keep {0}” before this step.': 'Escribir «keep {0}» antes de este paso.',
  'Stage {0} has no step.': 'La etapa {0} no tiene ningún paso.',
  'the sheet would print an empty stage.': 'la hoja imprimiría una etapa vacía.',
  'Write what is done there, or delete the stage.': 'Escribir qué se hace ahí, o borrar la etapa.',
  'Stage {0} is at the {1}, but none of its steps buffs or blasts.':
    'La etapa {0} está en {1}, pero ninguno de sus pasos pule ni chorrea.',
  'the unit would go into the dust for nothing.': 'la unidad iría al polvo para nada.',
  'Write what is buffed, or do the stage at another station.': 'Escribir qué se pule, o hacer la etapa en otro puesto.',
  'grit goes in, and comes out in the {0}.': 'entra suciedad, y sale en {0}.',
  "customer's engine": 'el motor del cliente',
  tester: 'el probador',
  'Write “cap {0}” before this.': 'Escribir «cap {0}» antes de esto.',
  'when the unit is shipped': 'cuando se entrega la unidad',
  'The {0} is opened while the outside is still as dirty as it came in.':
    '{0} se abre cuando el exterior sigue tan sucio como llegó.',
  'the dirt on the thread falls onto the lapped faces.': 'la suciedad de la rosca cae en las caras lapeadas.',
  'Cap the ports and write “clean outside” before this step.':
    'Tapar las bocas y escribir «clean outside» antes de este paso.',
  '{0} {1} {2} open while the outside is cleaned.': '{0} {1}: sin tapar mientras se limpia el exterior.',
  'the dirt that the brush takes off goes in there.': 'la suciedad que quita el cepillo entra ahí.',
  'Cap {0} first': 'Tapar antes {0}',
  'parts of several units get mixed.': 'se mezclan piezas de varias unidades.',
  'Write “keep {0} at” and a station before this.': 'Escribir antes «keep {0} at» y un puesto.',
  '{0} {1} {2} still capped when {3}.': '{0} {1}: con el tapón puesto cuando {3}.',
  'Write “uncap {0}” before this step.': 'Escribir «uncap {0}» antes de este paso.',
  'it is connected': 'se conecta',
  'the line cannot go on over a cap': 'la línea no puede entrar sobre un tapón',
  'the unit works under pressure': 'la unidad trabaja bajo presión',
  'the fluid cannot get out, and the reading does not show what the unit does':
    'el líquido no puede salir, y la lectura no muestra lo que hace la unidad',
  'the {0} {1} washed': 'se lava {0}',
  'the dirt stays in the passage': 'la suciedad se queda en el conducto',
  capped: 'con tapón',
  open: 'sin tapón',
  connected: 'con la línea conectada',
  disconnected: 'sin línea',
  '{0} {1} {2} already {3}.': '{0} {1}: ya {3}.',
  'Delete this, or add the missing step in between.': 'Borrar esto, o añadir el paso que falta en medio.',
  'Delete this step': 'Borrar este paso',
  'The {0} of the whole set go into one bath.': '{0} de todo el juego van a un mismo baño.',
  'a needle comes out with another unit’s nozzle.': 'una aguja sale con la tobera de otra unidad.',
  'Write how the units are kept apart, such as "Own basket, own number", or do the stage one unit at a time.':
    'Escribir cómo se mantienen separadas las unidades, por ejemplo "Own basket, own number", o hacer la etapa unidad por unidad.',
  'The {0} {1} together dry after a wash in water or detergent.':
    '{0} se junta en seco tras lavar con agua o detergente.',
  'steel with no oil film rusts inside, where nobody sees it.':
    'el acero sin película de aceite se oxida por dentro, donde nadie lo ve.',
  'Rinse {0} in test oil or oil {1} first.': 'Enjuagar en aceite de prueba, o aceitar antes.',
  'The {0} and the {1} are a lapped pair and go together {2}.': '{0} y {1} son pareja lapeada y se juntan {2}.',
  dry: 'en seco',
  'in preserving oil': 'con aceite protector',
  'it is thick and gums the fit: the needle sticks at the first test, and on the engine when it is cold.':
    'es espeso y atasca el ajuste: la aguja se pega en la primera prueba, y en el motor en frío.',
  'Clean {0} another way: {1} spoils {2}.':
    'Limpiar {0} de otra manera: {1} estropea {en2, select, them {esas piezas} other {esa pieza}}.',
  'The {0} must never get into {1} ({2}), as the family says.':
    '{0} no debe entrar nunca en {1} ({2}), según la familia.',
  'it swells, corrodes or loses its grease there, and looks no different until it fails.':
    'ahí se hincha, se corroe o pierde la grasa, y no se le nota nada hasta que falla.',
  'Write “except {0}”, and clean {1} another way.':
    'Escribir «except {0}», y limpiar {en1, select, them {esas piezas} other {esa pieza}} de otra manera.',
  'Take {0} out of this step, and clean {1} another way.':
    'Quitar {0} de este paso, y limpiar {en1, select, them {esas piezas} other {esa pieza}} de otra manera.',
  'in test oil': 'con aceite de prueba',
  'in assembly oil': 'con aceite de montaje',
  'The {0} {1} fitted {2}{3}.': '{0}: se monta {2}{3}.',
  ', and the family says “fitted {0}”': ', y la familia dice «fitted {0}»',
  'oil there keeps it from gripping or sealing, or feeds a false reading.':
    'el aceite ahí le impide agarrar o sellar, o da una lectura falsa.',
  'it is thick, gums fine fits and holds grit: it is for what is put away.':
    'es espeso, atasca los ajustes finos y retiene suciedad: es para lo que se guarda.',
  'it is scuffed, twisted or stuck before the first fluid reaches it.':
    'se raya, se retuerce o se pega antes de que le llegue el primer líquido.',
  'Blow-dry or wipe {0} before this step, or leave {1} out of the rinse.':
    'Secar con aire o con un paño {0} antes de este paso, o no enjuagar {en1, select, them {esas piezas} other {esa pieza}}.',
  'Rinse {0} in clean oil instead, or write “fitted with preservative” in the family.':
    'Enjuagar {0} en aceite limpio, o escribir «fitted with preservative» en la familia.',
  'Write “oil {0} with” and the right fluid before this step.':
    'Escribir «oil {0} with» y el fluido correcto antes de este paso.',
  'caustic dissolves {0} and makes hydrogen of it, which a spark explodes.':
    'el cáustico disuelve: {0}, y forma hidrógeno, que explota con una chispa.',
  'The {0} {1} blasted, and grit cuts {2} away.': 'Se chorrea: {0}, y el abrasivo lo desgasta.',
  'it stays in what is soft, comes out in the running unit and wears it.':
    'se queda en lo blando, sale con la unidad en marcha y la desgasta.',
  'lapping paste is still on {0}, fills a score line, and cuts on in whatever it gets into.':
    'todavía tiene pasta de lapear: rellena una raya y sigue cortando donde entra.',
  'Write “then wash in FLUID” behind “lap if”: a rinse does not take paste off.':
    'Escribir “then wash in FLUIDO” detrás de “lap if”: un enjuague no quita la pasta.',
  'Wash {0} before this step: a rinse does not take it off.': 'Lavar {0} antes de este paso: un enjuague no lo quita.',
};
