import type { Bundle } from '../bundle.ts';

export const family: Bundle = {
  'The {0} rests on the {1}.': '{0} apoya en {1}.',
  ', which rests on the ': ', que apoya en ',
  'none of them can be fitted first.': 'ninguna de ellas puede montarse primero.',
  'Delete one “on”, “in” or “through”.': 'Borrar un «on», «in» o «through».',
  'Nothing says how the {0} face of the {1} is finished.': 'Nada dice qué acabado tiene la cara {0} de {1}.',
  'no rule makes sure that it is inspected, guarded and kept off the wheel.':
    'ninguna regla vigila que se revise, se proteja y no llegue al disco.',
  'Write lapped or ground, or delete the face if it needs no care.':
    'Escribir lapped o ground, o borrar la cara si no pide cuidado.',
  'The {0} face of the {1} is lapped but meets no other face.':
    'La cara {0} de {1} está lapeada, pero no casa con ninguna otra.',
  'nothing says when it is covered, so it always counts as bare.':
    'nada dice cuándo queda cubierta, así que cuenta siempre como descubierta.',
  'Write “meets” and the face that it closes against.': 'Escribir «meets» y la cara contra la que cierra.',
  '{0} meets {1}, but neither the {2} nor the {3} is declared to touch the other.':
    '{0} casa con {1}, pero ni {2} ni {3} declaran que se tocan.',
  'a face cannot be covered by a part that does not touch it, so it could stay bare unnoticed.':
    'una pieza que no toca la cara no puede cubrirla, y podría quedar descubierta sin que se note.',
  'Write “on” at the part that lies on the other, or correct the name of the face.':
    'Escribir «on» en la pieza que apoya en la otra, o corregir el nombre de la cara.',
  'The {0} is a joint but holds nothing.': '{0} es una unión, pero no sujeta nada.',
  'the parts that it keeps in could come out before it, and a test would still count after it was slackened.':
    'las piezas que retiene podrían salir antes, y una prueba seguiría contando después de aflojarla.',
  'Write “holds” and the parts at part {0}; for a plug or a connector, write the port that is under it or on it.':
    'Escribir «holds» y las piezas en la pieza {0}; para un tapón o un racor, la boca que tiene debajo o encima.',
  '{0} is declared here.': '{0} se declara aquí.',
  'The {0} has to be located, but nothing says by what.': '{0} tiene que ir posicionado, pero nada dice con qué.',
  'the bench hand does not know what to look for, and a step that forgets to locate it goes unnoticed.':
    'el operario no sabe qué buscar, y un paso que olvida posicionarlo pasa inadvertido.',
  'Write “located by "…"” in the family, or here.': 'Escribir «located by "…"» en la familia, o aquí.',
  'The {0} is locked here, but it locks no adjuster of the family.':
    'Aquí se bloquea {0}, pero no bloquea ningún ajustador de la familia.',
  'a setting that is left unlocked would go unnoticed.': 'un ajuste sin bloquear pasaría inadvertido.',
  'Write “locked by {0}” at the adjuster; for a joint that locks nothing, write “torque”.':
    'Escribir «locked by {0}» en el ajustador; para una unión que no bloquea nada, escribir «torque».',
  'Marks have to be lined up, but the family declares no marks on the {0}.':
    'Hay que alinear marcas, pero la familia no declara marcas en {0}.',
  'the bench hand does not know what to line up with what.': 'el operario no sabe qué alinear con qué.',
  'Write “marks "…"” at the part in the family, or describe the marks here in quotes.':
    'Escribir «marks "…"» en la pieza, en la familia, o describir aquí las marcas entre comillas.',
  slackened: 'afloja',
  'run down': 'enroscado a mano',
  torqued: 'aprieta al par',
  locked: 'bloqueado',
  'The {0} is {1} here, but the family declares no joint for it.':
    'Aquí se trabaja {0} como unión ({1}), pero la familia no declara ninguna.',
  'leaving it loose, or taking it off tight, would go unnoticed.':
    'dejarlo flojo, o desmontarlo apretado, pasaría inadvertido.',
  'In the family, write “joint {0} to” and the part that it is screwed to.':
    'En la familia, escribir «joint {0} to» y la pieza a la que se enrosca.',
  'The face is declared here.': 'La cara se declara aquí.',
  '{0} is guarded here, but the family names no guard for it.':
    '{0} se protege aquí, pero la familia no nombra ninguna protección.',
  'a step that forgets the guard goes unnoticed.': 'un paso que olvida la protección pasa inadvertido.',
  'Write “guarded by {0}” at the face in the family.': 'Escribir «guarded by {0}» en la cara, en la familia.',
  'The guard of {0} is the {1}, but this step uses the {2}.': 'La protección de {0} es {1}, pero este paso usa {2}.',
  'a part that does not fit the face does not cover it.': 'una pieza que no encaja en la cara no la cubre.',
  'Write “guard {0} with {1}”, or correct the face in the family.':
    'Escribir «guard {0} with {1}», o corregir la cara en la familia.',
  ', such as {0}': ', por ejemplo {0}',
  'The {0} is chosen here, but the family does not say from which stock.':
    'Aquí se elige {0}, pero la familia no dice de qué surtido.',
  'the next size cannot be worked out, and the bench hand takes whatever is at hand.':
    'no se puede calcular la medida siguiente, y el operario toma lo que tiene a mano.',
  'Write “chosen from” and a stock of the shop{0}, at part {1}.':
    'Escribir «chosen from» y un surtido del taller{0}, en la pieza {1}.',
  'The {0} is chosen from {1}, but the shop has no stock of that name.':
    '{0} se elige de {1}, pero el taller no tiene ningún surtido con ese nombre.',
  'nobody knows which sizes there are.': 'nadie sabe qué medidas hay.',
  'Write “stock {0}” in the shop, or name a stock that it has{1}.':
    'Escribir «stock {0}» en el taller, o nombrar un surtido que tenga{1}.',
  'The joint is declared here.': 'La unión se declara aquí.',
  'The {0} is oiled before it is torqued, but nothing says that the torque is for oiled threads.':
    '{0} se aceita antes de apretar al par, pero nada dice que el par sea para roscas aceitadas.',
  'the same torque clamps a dry joint far less.': 'el mismo par aprieta mucho menos una unión seca.',
  'Write “threads oiled” at the joint or at the torque, or leave out the oil.':
    'Escribir «threads oiled» en la unión o en el apriete, o no aceitar.',
  'The {0} and the {1} are always renewed together here, but the family does not say that they are a pair.':
    '{0} y {1} se cambian aquí siempre juntos, pero la familia no dice que sean pareja.',
  'one of them could go into another unit unnoticed.': 'una de ellas podría acabar en otra unidad sin que se note.',
  'If they are lapped together, write “matched to {0}” at part {1}.':
    'Si se lapean juntas, escribir «matched to {0}» en la pieza {1}.',
  'The unit is taken apart, but no step names the {0}.': 'La unidad se desarma, pero ningún paso nombra {0}.',
  'it is neither taken off nor washed nor fitted, and nobody will miss it.':
    'ni se desmonta ni se lava ni se monta, y nadie lo echará de menos.',
  'Name it where it comes off and where it goes back on, or delete it from the family.':
    'Nombrarlo donde se desmonta y donde se monta, o borrarlo de la familia.',
  'Nothing says what the {0} rests on.': 'Nada dice en qué apoya {0}.',
  'a step that takes it off or fits it out of order goes unnoticed.':
    'un paso que lo desmonta o lo monta fuera de orden pasa inadvertido.',
  'Write “on”, “in” or “through” and the part that it rests on, such as “on {0}”.':
    'Escribir «on», «in» o «through» y la pieza en la que apoya, por ejemplo «on {0}».',
  'The family is declared here.': 'La familia se declara aquí.',
  'another procedure that forgets it would check clean.': 'otro procedimiento que lo olvide no daría ningún aviso.',
  '{0} is tested, but the family does not say what proves a unit.':
    '{0} se prueba, pero la familia no dice qué demuestra que una unidad está bien.',
  'Write “proven by” and the tests that every unit must pass in the family.':
    'Escribir «proven by» y las pruebas que toda unidad debe pasar, en la familia.',
  '{0} is set and tested, but is not among the tests that prove the family.':
    '{0} se ajusta y se prueba, pero no está entre las pruebas de la familia.',
  'Add {0} to “proven by” in the family.': 'Añadir {0} a «proven by» en la familia.',
  '{0} is compared across the set, but the family does not require that.':
    '{0} se compara en todo el juego, pero la familia no lo exige.',
  'Write “proven across the set by {0}” in the family.': 'Escribir «proven across the set by {0}» en la familia.',
  'Nothing holds the {0} on the {1}.': 'Nada sujeta {0} sobre {1}.',
  'a spring there would jump out, and the sheet could have it removed before the part that holds it.':
    'un muelle saltaría de ahí, y la hoja podría desmontarlo antes que la pieza que lo sujeta.',
  'Write “holds {0}” at the screw, plug or nut over it.':
    'Escribir «holds {0}» en el tornillo, tapón o tuerca que va encima.',
};
