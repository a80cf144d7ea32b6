import type { Bundle } from '../bundle.ts';

export const order: Bundle = {
  '{0} is shut in under the {1}.': '{0} queda encerrada bajo {1}.',
  'The {0}': '{0}',
  'nobody can reach it{0}.': 'nadie puede llegar ahí{0}.',
  ', and what the wire pushes in stays in': ', y lo que el alambre empuja hacia dentro se queda dentro',
  'Slacken and remove {0}, and whatever is in between, before this step.':
    'Aflojar y desmontar {0}, y lo que haya en medio, antes de este paso.',
  were: 'se han',
  was: 'se ha',
  'The {0} {1} discarded, and there is no new one {2}.':
    '{0}: {en1, select, were {se han} other {se ha}} desechado, y no hay recambio nuevo {2}.',
  '{0} not come in the kit, and the unit would be built without {1}.':
    '{en0, select, they_do {no vienen} other {no viene}} en el kit, y la unidad se montaría sin eso.',
  'they do': 'ellas',
  'it does': 'eso',
  'Write “renew {0}” and fit {1} first. If the old {2} good, write remove instead of discard.':
    'Escribir «renew {0}» y montarlo antes. Si la pieza vieja está bien, escribir remove en lugar de discard.',
  'ones are': 'las viejas están',
  'one is': 'la vieja está',
  'when the {0} goes over {1}': 'cuando se monta encima {0}',
  'at the end': 'al final',
  'The {0} is still in its own place when it has to guard {1}.': '{0} sigue en su sitio cuando tiene que proteger {1}.',
  'a face': 'una cara',
  'it cannot be in two places, and the face is not bare yet.':
    'no puede estar en dos sitios, y la cara aún no está al descubierto.',
  'Write “remove {0}” before this step, with the parts under it.':
    'Escribir «remove {0}» antes de este paso, con las piezas de debajo.',
  'Take it off first': 'Desmontarlo antes',
  'The {0} is still tight when it is taken off.': '{0} sigue con el apriete dado al desmontar.',
  'breaking a joint loose takes its own step, with the unit held and the tool for it named.':
    'aflojar una unión pide un paso propio, con la unidad sujeta y la herramienta indicada.',
  'Write “slacken {0}” first, while the unit is held.': 'Escribir antes «slacken {0}», con la unidad sujeta.',
  'Slacken {0} first': 'Aflojar antes {0}',
  'The {0} was slackened and is not tight again when pressure comes on.':
    '{0}: se aflojó y sigue sin apretar cuando llega la presión.',
  'it leaks or lets go, and fluid at test pressure goes through skin.':
    'fuga o se suelta, y el líquido a presión de prueba atraviesa la piel.',
  'Torque {0} before this step, or delete the step that slackens it.':
    'Apretar al par {0} antes de este paso, o borrar el paso que lo afloja.',
  'The {0} was slackened, and is neither off nor tight again when the unit leaves.':
    '{0}: se aflojó, y la unidad sale sin haberlo desmontado ni vuelto a apretar.',
  'it comes loose on the engine.': 'se suelta en el motor.',
  '{0} {1} again, or delete the step that slackens it.':
    '{en0, select, Run_down {Enroscar a mano} other {Apretar al par}} {1} otra vez, o borrar el paso que lo afloja.',
  'Run down': 'Enroscar a mano',
  Torque: 'Apretar al par',
  'The {0} is only hand-tight when {1} is tested.': '{0} solo tiene apriete a mano cuando se prueba {1}.',
  'it can leak or let go under pressure.': 'puede fugar o soltarse bajo presión.',
  'Torque it before this test.': 'Apretar al par antes de esta prueba.',
  'The {0} is only hand-tight when the unit leaves.': '{0} solo tiene apriete a mano cuando sale la unidad.',
  'it will come loose on the engine.': 'se soltará en el motor.',
  'Torque it, or write “hand-tight is final” at the joint in the family.':
    'Apretar al par, o escribir «hand-tight is final» en la unión, en la familia.',
  'The {0} has marks ({1}), but this step does not line them up.':
    '{0} tiene marcas ({1}), pero este paso no las alinea.',
  'it goes on in the wrong position as easily as in the right one.':
    'entra igual de fácil en la posición equivocada que en la correcta.',
  'Write “with marks aligned”.': 'Escribir «with marks aligned».',
  'Line the marks up': 'Alinear las marcas',
  bear: 'apoyan',
  bears: 'apoya',
  'The {0} on the {1} {2} on nothing, and nothing holds {3}.': '{0} sobre {1} no {2} en nada, y nada lo sujeta.',
  'the spring would load nothing, and a unit closed without {0} would go unnoticed.':
    'el muelle no cargaría nada, y una unidad cerrada sin esa pieza pasaría inadvertida.',
  'At part {0}, write what it presses on{1}.': 'En la pieza {0}, escribir sobre qué apoya{1}.',
  ', such as “bears on {0}”': ', por ejemplo «bears on {0}»',
  'The {0} bears on nothing, and nothing holds it.': '{0} no apoya en nada, y nada lo sujeta.',
  'it would set nothing, and a unit closed without it would go unnoticed.':
    'no ajustaría nada, y una unidad cerrada sin esa pieza pasaría inadvertida.',
  'At part {0}, write “bears on” and the part that it comes up against.':
    'En la pieza {0}, escribir «bears on» y la pieza contra la que hace tope.',
  'The new {0} {1} in with the preservative still on.': 'Pieza nueva ({0}): se monta con el protector todavía puesto.',
  go: 'entran',
  goes: 'entra',
  'it gums up lapped fits and holds grit.': 'atasca los ajustes lapeados y retiene suciedad.',
  'Write “rinse {0}{1}” before this step, or “ready to fit” if {2} clean in a bag.':
    'Escribir «rinse {0}{1}» antes de este paso, o «ready to fit» si {2} limpio en su bolsa.',
  ' in {0}': ' in {0}',
  'they come': 'viene',
  'it comes': 'viene',
  'Rinse it first': 'Enjuagar antes',
  '{0} fasteners hold the {1} down, but nothing says in which order they are torqued.':
    '{0} tornillos sujetan {1}, pero nada dice en qué orden se aprietan.',
  'tightened on one side first, it tilts, warps and leaks on the other side.':
    'si se aprieta primero un lado, se ladea, se deforma y fuga por el otro.',
  'Torque in cross pattern': 'Apretar en cruz',
  'After this, write “check {0} {1} "…"” with how it should feel.':
    'Después de esto, escribir «check {0} {1} "…"» y cómo debe sentirse.',
  'Write “proves through {0}” in the check at {1}, so that the unit goes back to it, or check the part here.':
    'Escribir «proves through {0}» en la revisión de {1}, para que la unidad vuelva a ella, o revisar la pieza aquí.',
  'The {0} must move freely, but no step after this checks whether it does.':
    '{0} debe moverse libremente, pero ningún paso posterior lo revisa.',
  'a tightened joint can bind it, and then it sticks on the engine.':
    'una unión apretada puede trabarlo, y entonces se atasca en el motor.',
  'Nothing holds the unit while the {0} is {1}.': 'Nada sujeta la unidad mientras se {1} {0}.',
  'broken loose': 'afloja',
  'it turns in the hand, and the wrench slips': 'gira en la mano, y la llave resbala',
  'it turns in the hand, and the torque is not what the wrench shows':
    'gira en la mano, y el par no es el que marca la llave',
  'Clamp it first, or write “held by "…"” in this step.': 'Sujetarla antes, o escribir «held by "…"» en este paso.',
  'The {0} goes on the {1}, which {2} not in place yet.':
    '{0} va sobre {1}, que todavía no {en2, select, are {están} other {está}} en su sitio.',
  'there is nothing to fit it on, and the bench hand stops or guesses what is missing.':
    'no hay sobre qué montar, y el operario se detiene o adivina qué falta.',
  'Fit {0} first, or in the same step.': 'Montar antes {0}, o en el mismo paso.',
  those: 'esas piezas',
  that: 'esa pieza',
  'The {0} {1} always renewed, but the old {2} back in.': 'Pieza de cambio obligado ({0}): vuelve a montarse la vieja.',
  'ones go': 'las viejas vuelven',
  'one goes': 'la vieja vuelve',
  'a used one does not seal or hold a second time.': 'una usada no sella ni sujeta por segunda vez.',
  'Write “discard” instead of “remove” where {0} off, or write “renew {1}” before this step.':
    'Al desmontar, escribir «discard» en lugar de «remove», o «renew {1}» antes de este paso.',
  'The {0} {1} discarded, and there is no new one to fit.':
    '{0}: {en1, select, were {se han} are {se han} other {se ha}} desechado, y no hay recambio nuevo que montar.',
  'the scrapped one goes back in, or the unit waits for a new one.':
    'se vuelve a montar la pieza desechada, o la unidad espera a una nueva.',
  'Write “renew {0}” before this step. If the old one is good, write remove instead of discard.':
    'Escribir «renew {0}» antes de este paso. Si la pieza vieja está bien, escribir remove en lugar de discard.',
  'tight or run down': 'con apriete',
  off: 'fuera',
  'in place': 'en su sitio',
  'The {0} {1} already {2}.': '{0} ya {en1, select, are {están} other {está}} {2}.',
  'the bench hand looks for what is not there, and wonders which step was left out.':
    'el operario busca lo que no está, y se pregunta qué paso falta.',
  '{0}, or add the missing step in between.': '{0}, o añadir el paso que falta en medio.',
  'Slacken it first': 'Aflojar antes',
  'Delete this': 'Borrar esto',
  'they are': 'se',
  'it is': 'se',
  'The {0} {1} at {2} when {3} fitted at {4}, and no step brings {5} over.':
    '{0} {en1, select, are {están} other {está}} en {2} cuando hay que montar en {4}, y ningún paso lo lleva allí.',
  'the bench hand reaches into an empty tray.': 'el operario busca en una bandeja vacía.',
  'Write “send {0} to {1}” after the work on {2} is done.':
    'Escribir «send {0} to {1}» al acabar el trabajo en esa pieza.',
  'The {0} {1} not in place when the {2} closes over {3}.': '{0}: aún fuera cuando se cierra encima {2}.',
  'the unit would be built without {0}.': 'la unidad se montaría sin esa pieza.',
  'Fit {0} before this step.': 'Montar {0} antes de este paso.',
  'At the end the {0} {1} {2}.': 'Al final, {0}: {2}.',
  'the unit would leave without {0}.': 'la unidad saldría sin esa pieza.',
  '{0} in the family.': '{0} en la familia.',
  'Fit them, or write “supplied loose” at these parts': 'Montarlas, o escribir «supplied loose» en estas piezas',
  'Fit it, or write “supplied loose” at the part': 'Montarla, o escribir «supplied loose» en la pieza',
  'in place for trial only': 'solo a modo de prueba',
  'on as a guard only': 'solo como protección',
  'not in place': 'no está en su sitio',
  'The {0} is located by {1}, but this step does not say so.': '{0} se posiciona con {1}, pero este paso no lo dice.',
  'forced on out of position, it shears a dowel or gets torqued crooked.':
    'si se fuerza fuera de posición, corta un pasador o se aprieta torcido.',
  'Write “{0} located”.': 'Escribir «{0} located».',
  'Say that it is located': 'Decir que va posicionado',
  'The {0} cannot come off yet.': '{0} todavía no se puede desmontar.',
  'the {0} {1} still in place over it.': '{0} {en1, select, are {siguen} other {sigue}} encima.',
  'Take {0} off first, or in the same step.': 'Desmontar antes {0}, o en el mismo paso.',
  'The {0} is set but not locked when {1} is tested.': '{0} está ajustado pero sin bloquear cuando se prueba {1}.',
  'tightening the {0} moves it, and the unit leaves with another figure than the sheet shows.':
    'al apretar {0} se mueve, y la unidad sale con otro valor que el de la hoja.',
  'Write “lock {0}” before this test.': 'Escribir «lock {0}» antes de esta prueba.',
  'The {0} is still tight when the {1} is turned.': '{0} sigue con el apriete dado cuando se gira {1}.',
  'it does not turn, or its thread or slot gives way.': 'no gira, o cede su rosca o su ranura.',
  'Write “slacken {0}” before this step, with the pressure off.':
    'Escribir «slacken {0}» antes de este paso, sin presión.',
  'The {0} is not locked when the unit leaves.': '{0} queda sin bloquear cuando sale la unidad.',
  'it turns by itself on the engine, and the setting is lost.': 'gira solo en el motor, y se pierde el ajuste.',
  'After it is set, write “lock {0}” with its torque.': 'Después del ajuste, escribir «lock {0}» con su par.',
  'The {0} still loads the {1} when the {2} is {3}.': '{0} todavía carga {1} cuando se {3} {2}.',
  '{0}, and it bends.': '{0}, y se dobla.',
  'the spring pushes it aside down to the last thread': 'el muelle lo empuja de lado hasta el último filete',
  'it cannot sit square under that load while the joint is tightened':
    'no puede asentar a escuadra bajo esa carga al apretar la unión',
  'Write “back-off {0}” before this step.': 'Escribir «back-off {0}» antes de este paso.',
  'Back the adjuster off first': 'Retroceder antes el ajustador',
  'The unit is already clamped.': 'La unidad ya está sujeta.',
  'the bench hand has to guess whether to clamp it another way.':
    'el operario tiene que adivinar si hay que sujetarla de otro modo.',
  'Unclamp it first, or delete this.': 'Soltarla antes, o borrar esto.',
  'The unit is not clamped here, so there is nothing to unclamp.':
    'Aquí la unidad no está sujeta: no hay nada que soltar.',
  'a step that needed the clamp may have been done without it.':
    'un paso que pedía la sujeción puede haberse hecho sin ella.',
  'Delete this, or add the missing clamp step before it.': 'Borrar esto, o añadir antes el paso clamp que falta.',
  'The unit leaves {0} while it is still clamped.': 'La unidad deja {0} todavía sujeta.',
  'the sheet sends the unit on while the vise still holds it.':
    'la hoja envía la unidad adelante mientras el tornillo de banco la sujeta.',
  'Unclamp it at the end of this stage.': 'Soltarla al final de esta etapa.',
  'The procedure ends with the unit still clamped.': 'El procedimiento acaba con la unidad todavía sujeta.',
  'the sheet ends while the vise still holds the unit.':
    'la hoja acaba mientras el tornillo de banco sujeta la unidad.',
  'Unclamp it.': 'Soltarla.',
  'The {0} is torqued before it is run down by hand.': '{0} se aprieta al par antes de enroscar a mano.',
  'a crossed thread would go unnoticed.': 'una rosca cruzada pasaría inadvertida.',
  'Run it down first.': 'Enroscar antes a mano.',
  'The {0} is torqued while the {1} inside {2} not in place.': '{0} se aprieta al par mientras falta dentro {1}.',
  'the unit is closed without what belongs inside.': 'la unidad se cierra sin lo que va dentro.',
  'Fit {0} first.': 'Montar antes {0}.',
  'The {0} carries port {1}, but is only hand-tight when pressure comes on.':
    '{0} lleva la boca {1}, pero solo tiene apriete a mano cuando llega la presión.',
  'it leaks at its thread, and the leak is blamed on the unit.': 'fuga por la rosca, y se culpa a la unidad.',
  'Torque {0} before this step.': 'Apretar al par {0} antes de este paso.',
  'The {0} goes under the {1}, which {2} already on.':
    '{0} va debajo de {1}, que ya {en2, select, are {están} other {está}} en su sitio.',
  'it cannot get past {0}, and a hand that forces it scores both parts.':
    'no puede pasar {0}, y una mano que fuerza raya las dos piezas.',
  'Fit it earlier, or take {0} off first.': 'Montarlo antes, o desmontar primero {0}.',
  '{0} still has its guard on when the {1} goes in.': '{0} aún lleva su protección cuando entra {1}.',
  'the guard is in the way, or is built in.': 'la protección estorba, o queda montada dentro.',
  'Remove the {0} first.': 'Desmontar antes {0}.',
  'The {0} cannot be turned while the {1} {2} on.': '{0} no se puede girar con {1} encima.',
  'nothing reaches it there, and the setting leaves unlocked, or is locked by the cap alone.':
    'nada llega hasta ahí, y el ajuste sale sin bloquear, o lo bloquea solo la tapa.',
  'Take the {0} off before this step, and put {1} on when the lock is tight.':
    'Desmontar {0} antes de este paso, y volver a montar cuando el bloqueo esté apretado.',
  'The {0} is lined up when the {1} {2} tight already.':
    '{0} se alinea cuando {1} ya {en2, select, are {están} other {está}} con el apriete dado.',
  'it no longer moves, or it is forced and what holds it is loose again.':
    'ya no se mueve, o se fuerza y lo que lo sujeta vuelve a quedar flojo.',
  'Line it up when the joint is hand-tight, before it is torqued.':
    'Alinear cuando la unión tiene apriete a mano, antes de apretar al par.',
  'The {0} is {1} after it was marked.': '{0}: se {1} después de marcar.',
  'the wheel takes the mark off or makes it unreadable, and the unit cannot be led back to its job.':
    'el disco borra la marca o la deja ilegible, y ya no se puede saber de qué trabajo es la unidad.',
  'Mark it after this step.': 'Marcar después de este paso.',
  'Write “in cross pattern”, or the order in words: in "…".':
    'Escribir «in cross pattern», o el orden con palabras: in "…".',
  'The {0} {1} always renewed, but {2} in place while the joint over {3} is released and tightened again.':
    'Pieza de cambio obligado ({0}): se queda en su sitio mientras la unión que va encima se suelta y se vuelve a apretar.',
  stay: 'se quedan',
  stays: 'se queda',
  'Write “discard {0}” where the joint is open, and “fit {1}” before it is tightened. Where the family renews it at a rebuild only, write “renewed at rebuild” there.':
    'Escribir «discard {0}» donde la unión está abierta, y «fit {1}» antes de apretarla. Si la familia lo cambia solo en una reconstrucción, escribir allí «renewed at rebuild».',
  'The {0} went in new, but {1} been tightened and released since, and {2} back in.':
    'Pieza montada nueva ({0}): desde entonces se ha apretado y soltado, y vuelve a montarse.',
  have: 'se han',
  has: 'se ha',
  'If a new one is needed at a rebuild only, write “renewed at rebuild” in the family.':
    'Si solo hace falta nueva en una reconstrucción, escribir «renewed at rebuild» en la familia.',
  'The {0} is built in dry, and nothing puts oil on it before it moves.':
    '{0} se monta en seco, y nada le pone aceite antes de que se mueva.',
  'the first turns run metal on metal, before any oil gets there.':
    'las primeras vueltas van metal contra metal, antes de que llegue el aceite.',
  'Write “oil {0} with” and the oil before this step, or “fitted dry” in the family if it runs dry.':
    'Escribir «oil {0} with» y el aceite antes de este paso, o «fitted dry» en la familia si trabaja en seco.',
  'The {0} is let go while the {1} is not in place.': '{0} se suelta cuando {1} no está en su sitio.',
  'nothing holds it then, and it flies.': 'nada lo sujeta entonces, y sale disparado.',
  'Fit the {0} first, and let the spring go into it.': 'Montar antes {0}, y dejar que el muelle apoye ahí.',
  'The {0} holds the {1}, and {2} while nothing else holds it.': '{0} sujeta {1}, y se {2} cuando nada más lo sujeta.',
  'goes on': 'monta',
  'comes off': 'desmonta',
  'a loaded spring flies into the face of whoever lets it go.': 'un muelle cargado salta a la cara de quien lo suelta.',
  'Write “compress {0} in "…"” before this step{1}.': 'Escribir «compress {0} in "…"» antes de este paso{1}.',
  ', and “release” when it is out': ', y «release» cuando esté fuera',
  'The {0} is turned by an angle, which stretches it, and the old one goes back in unmeasured.':
    '{0} se gira un ángulo, lo que lo estira, y vuelve a montarse el viejo sin medir.',
  'a bolt that has yielded once necks at the second turn, and holds less or breaks.':
    'un tornillo que ya ha cedido se estrangula al segundo giro, y sujeta menos o se rompe.',
  'Write “renewed” at {0} in the family, or measure its length against a limit before it goes in.':
    'Escribir «renewed» en {0}, en la familia, o medir su longitud con un límite antes de montarlo.',
  'The {0} is oiled when it is already run down.': '{0} se aceita cuando ya se ha enroscado a mano.',
  'The {0} is oiled while it is on as a guard.': '{0} se aceita mientras está puesto como protección.',
  'no oil gets between the threads there, and the torque goes into friction instead of clamp.':
    'ahí no entra aceite entre las roscas, y el par se va en rozamiento y no en apriete.',
  'Oil it before “run-down {0}”.': 'Aceitar antes de «run-down {0}».',
  'The {0} is run down dry, and the family says “threads oiled”.':
    '{0} se enrosca a mano en seco, y la familia dice «threads oiled».',
  'dry, the same torque gives far less clamp, and the threads gall.':
    'en seco, el mismo par aprieta mucho menos, y las roscas se agarran.',
  'Write “oil {0} with” and the oil before this step.': 'Escribir «oil {0} with» y el aceite antes de este paso.',
  'The {0} {1} clamped at {2}, and the {3} {4} unclamped here.': '{0} se sujetó en {2}, y aquí se suelta {3}.',
  'the hand looks for a second vise, and what is really clamped goes on in it.':
    'el operario busca un segundo tornillo de banco, y lo que está sujeto de verdad sigue en el suyo.',
  'Write “unclamp {0}”, or clamp what is to be held.': 'Escribir «unclamp {0}», o sujetar lo que haya que sujetar.',
  'Repair {0} sends the unit back to step {1} with the {2} still tight, and the {3} is turned there.':
    'La reparación {0} devuelve la unidad al paso {1} con el apriete dado ({2}), y allí se gira: {3}.',
  'Write “slacken {0}” in the repair, with the pressure off.': 'Escribir «slacken {0}» en la reparación, sin presión.',
};
