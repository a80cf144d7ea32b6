import type { Bundle } from '../bundle.ts';

export const traceability: Bundle = {
  'which calibration was in force, and who did it, depends on the day.':
    'del día depende qué calibración regía y quién lo hizo.',
  'nobody answers for it.': 'nadie responde de ello.',
  'the certificate is not made out without it.': 'sin eso no se extiende el certificado.',
  'the unit cannot go out like this.': 'así la unidad no puede salir.',
  'the certificate shows the unit as it goes out.': 'el certificado muestra la unidad tal como sale.',
  'the unit may be outside although the gauge says it is inside.':
    'la unidad puede estar fuera aunque el instrumento diga que está dentro.',
  'one of the two is wrong, or work is missing from the paper.':
    'uno de los dos está mal, o falta trabajo en el papel.',
  'the serial is all that leads from a unit to its papers.':
    'solo el número de serie lleva de una unidad a sus papeles.',
  'the engine runs unevenly, although each of them passes.':
    'el motor gira desigual, aunque cada una por sí sola pase.',
  'nothing shows that the tool was right.': 'nada demuestra que la herramienta medía bien.',
  'whoever certifies a figure says what showed it.': 'quien certifica un valor dice con qué se leyó.',
  'Write the tool': 'Escribir la herramienta',
  'The work is held for {0}, who also signs for it.': 'El trabajo se retiene para {0}, que también lo firma.',
  'a hold is for a second pair of eyes, and people overlook their own mistakes.':
    'una retención es para otro par de ojos, y uno pasa por alto sus propios fallos.',
  'Name somebody else here or at the sign-off, or delete the hold.':
    'Nombrar aquí o en la firma a otra persona, o borrar la retención.',
  'nothing can be judged or worked out from it.': 'con eso no se puede juzgar ni calcular nada.',
  'The mark has neither the part number nor the serial number.':
    'La marca no lleva ni el número de pieza ni el de serie.',
  'when the unit comes back, the mark does not lead to its job.':
    'cuando vuelve la unidad, la marca no lleva a su trabajo.',
  'Write “with number, serial”, or say in the text of the step what is marked.':
    'Escribir «with number, serial», o decir en el texto del paso qué se marca.',
  'Mark it with number and serial': 'Marcarla con número y serie',
  'Nobody signs the unit off.': 'Nadie firma la unidad.',
  'without a signature the sheet is not a record.': 'sin firma la hoja no es un registro.',
  'Write “sign-off by "…"” as the last step.': 'Escribir «sign-off by "…"» como último paso.',
  'no revision': 'la revisión',
  'no approval': 'la aprobación',
  'no approval date': 'la fecha de aprobación',
  'The procedure has {0}.': 'Al procedimiento le falta {0}.',
  'nobody could distinguish its sheet from a draft, or trace a unit to what was valid at the time.':
    'nadie distinguiría su hoja de un borrador, ni podría saber qué regía cuando se hizo una unidad.',
  'Write “{0}” in its head.': 'Escribir «{0}» en la cabecera.',
  'No step marks the unit.': 'Ningún paso marca la unidad.',
  'when it comes back, nobody can say what was done to it.': 'cuando vuelve, nadie puede decir qué se le hizo.',
  'Before the last wash, write “mark” and a part, “with number, serial”.':
    'Antes del último lavado, escribir «mark» y una pieza, «with number, serial».',
  'This step says to write something down, but “do” has no box on the sheet.':
    'Este paso manda anotar algo, pero «do» no tiene casilla en la hoja.',
  'the reading ends up on a scrap of paper.': 'la lectura acaba en un trozo de papel.',
  'Write “read … as found”, “measure …” or “check …” instead: these have a box for each unit.':
    'Escribir en su lugar «read … as found», «measure …» o «check …»: tienen una casilla por unidad.',
  'The unit is sent out here, and nothing books it in before it is tested or signed off.':
    'La unidad se envía fuera aquí, y nada registra su vuelta antes de probarla o firmarla.',
  'nobody inspects what came back, and the sheet does not say whose work it was.':
    'nadie revisa lo que volvió, y la hoja no dice de quién fue el trabajo.',
  'The unit is booked in here, and no step before sends it out.':
    'La unidad se registra aquí de vuelta y ningún paso anterior la envía fuera.',
  'The {0} is booked in here, and no step before sends it out.':
    'Se registra aquí de vuelta {0} y ningún paso anterior lo envía fuera.',
  'the sheet does not say what was to be done to it, or that it ever left.':
    'la hoja no dice qué había que hacerle, ni que haya salido.',
  'Write “send-out” where it goes.': 'Escriba “send-out” donde sale.',
  'Nothing says who signs here.': 'Nada dice quién firma aquí.',
  'anybody may, and nobody answers for it.': 'puede hacerlo cualquiera, y nadie responde de ello.',
  'Write “{0}” with the job title, such as the bench lead.': 'Escribir «{0}» con el cargo, por ejemplo the bench lead.',
  'sign-off by "…"': 'sign-off by "…"',
  'hold-for "…"': 'hold-for "…"',
  'It is signed off in step {0}.': 'Se firma en el paso {0}.',
  'The unit is signed off in step {0} and worked on after that.':
    'La unidad se firma en el paso {0} y después se trabaja en ella.',
  'the signature vouches for a unit that was not finished.': 'la firma responde de una unidad que no estaba acabada.',
  'Move the sign-off after the last step that works on the unit.':
    'Poner la firma después del último paso que trabaja en la unidad.',
  '{0}, but it has no tag.': '{0}, pero no lleva etiqueta.',
  'The unit is put with the rest of its set': 'La unidad se pone con el resto de su juego',
  'The parts of the unit go to {0}': 'Las piezas de la unidad van a {0}',
  "it gets another unit's parts and readings.": 'le tocan las piezas y las lecturas de otra unidad.',
  'Write “tag” where the unit is received.': 'Escribir «tag» donde se recibe la unidad.',
  'The {0} is sent out here, and nothing books it in before the unit is tested or signed off.':
    'Aquí sale fuera {0}, y nada registra su entrada antes de que la unidad se pruebe o se firme.',
  'Job {0} is worked by revision {1}, and revision {2} was issued on {3}.':
    'El trabajo {0} sigue la revisión {1}, y la revisión {2} se emitió el {3}.',
  'what was changed since is not done in these units, and their sheet shows the older limits.':
    'lo que se cambió desde entonces no se hace en estas unidades, y su hoja muestra los límites anteriores.',
  'See which results hold over: npx handtight move {0} --to {1}. Or finish the job by {2}, if what was changed does not concern it.':
    'Ver qué resultados siguen valiendo: npx handtight move {0} --to {1}. O terminar el trabajo según {2}, si lo que se cambió no le afecta.',
  'Nothing is written down yet: write revision {0}, and print the sheet again.':
    'Todavía no hay nada anotado: escribir revision {0} e imprimir de nuevo la hoja.',
  'Write revision {0}': 'Escribir revision {0}',
  'Serial {0} is in work in job {1} too, as unit {2} there.':
    'El número de serie {0} también está en curso en el trabajo {1}, como unidad {2}.',
  'of one body there would be two papers, and nobody could say later which readings are its own.':
    'de un mismo cuerpo habría dos papeles, y nadie podría decir después qué lecturas son las suyas.',
  'Read the serial again from the body. If it is the same unit, finish it in one of the two jobs, or put it on hold there. If two makers gave the same serial, write the part number of each.':
    'Leer de nuevo el número de serie en el cuerpo. Si es la misma unidad, terminarla en uno de los dos trabajos o ponerla allí en espera. Si dos fabricantes dieron el mismo número de serie, escribir la referencia de cada una.',
  'Unit {0} of job {1}.': 'Unidad {0} del trabajo {1}.',
  'whoever reads the signature takes the unit for a good one, and it cannot be certified.':
    'quien lee la firma la toma por buena, y no se puede certificar.',
  'the certificate is not made out on the word of a tool that nobody vouches for.':
    'el certificado no se extiende por la palabra de un útil del que nadie responde.',
};
