import type { Bundle } from '../bundle.ts';

export const cli: Bundle = {
  '… and {0} more.': '… y {0} más.',
  error: 'error',
  warning: 'advertencia',
  'step {0}': 'paso {0}',
  '{0} file checked': '{0} archivo comprobado',
  '{0} files checked': '{0} archivos comprobados',
  '{0} error': '{0} error',
  '{0} errors': '{0} errores',
  '{0} warning': '{0} advertencia',
  '{0} warnings': '{0} advertencias',
  '{0}: nothing found.': '{0}: nada que señalar.',
  '{0} changes the severity of {1} finding or turns it off.': '{0} cambia la gravedad de {1} hallazgo o lo desactiva.',
  '{0} changes the severity of {1} findings or turns them off.':
    '{0} cambia la gravedad de {1} hallazgos o los desactiva.',
  'For more on the first: npx handtight explain {0}': 'Más sobre lo primero: npx handtight explain {0}',
  'For more on {0}: npx handtight explain {1}': 'Más sobre {0}: npx handtight explain {1}',
  '{0} cannot be read: {1}': '{0} no se puede leer: {1}',
  '{0} is not as it was written, so no certificate is printed from it. Take it back from a backup.':
    '{0} no está como se escribió, así que no se imprime ningún certificado. Recuperarlo de una copia de seguridad.',
  'Job {0} is not certified. What is missing:': 'El trabajo {0} no se certifica. Falta:',
  'Add it to the job, put a unit on hold, or print with --draft, which marks every page and lists what is missing.':
    'Añadirlo al trabajo, dejar una unidad en espera, o imprimir con --draft, que marca cada página e indica lo que falta.',
  'No safe fix is left to make.': 'No queda ninguna corrección segura por hacer.',
  'would fix': 'se corregiría',
  'Job {0} is not closed. What is open:': 'El trabajo {0} no se cierra. Queda pendiente:',
  'Add it to the job, or put a unit on hold.': 'Añadirlo al trabajo, o dejar una unidad en espera.',
  'Job {0} is closed: {1} of {2}. A record is never changed. Where its certificate has to be issued once more, give the reason: --reissue "…".':
    'El trabajo {0} está cerrado: {1} del {2}. Un registro no cambia nunca. Si hay que emitir otra vez su certificado, dar el motivo: --reissue "…".',
  'Job {0} was not closed before, so there is nothing to reissue. Leave --reissue out.':
    'El trabajo {0} no se había cerrado, así que no hay nada que emitir de nuevo. Quitar --reissue.',
  '{0} was written in the meantime. See whether the job is closed now.':
    '{0} se escribió entretanto. Comprobar si el trabajo está ya cerrado.',
  'Closed: job {0}, {1}': 'Cerrado: trabajo {0}, {1}',
  'Closed: job {0}, {1}, signed': 'Cerrado: trabajo {0}, {1}, firmado',
  'the procedure: revision {0} of {1} is not issued, so it could be changed under the record. Issue it first: npx handtight issue {2}.':
    'el procedimiento: la revisión {0} de {1} no está emitida, así que podría cambiarse después. Emitirla antes: npx handtight issue {2}.',
  '(none)': '(ninguna)',
  'the settings: {0}': 'los ajustes: {0}',
  '{0} is not as it was written, so nobody can say whether the job is closed. Take it back from a backup. npx handtight verify {1} lists all that was changed.':
    '{0} no está como se escribió, así que nadie puede decir si el trabajo está cerrado. Recuperarlo de una copia de seguridad. npx handtight verify {1} indica todo lo que cambió.',
  'Closed: job {0}, {1}. Its closing was interrupted, and is complete now.':
    'Cerrado: trabajo {0}, {1}. Su cierre se interrumpió, y ahora está completo.',
  '{0} is no private key of Ed25519 in PEM. Make one with: openssl genpkey -algorithm ed25519 -out shop.pem':
    '{0} no es una clave privada de Ed25519 en PEM. Crear una con: openssl genpkey -algorithm ed25519 -out shop.pem',
  '{0} is not in the calendar. Write the date as year-month-day.':
    '{0} no está en el calendario. Escribir la fecha como año-mes-día.',
  'This is a defect of Handtight {0}, not a mistake of yours: {1}. No file was left half-written. Please report it with the command and the files; {2}=1 before the command shows where it happened.':
    'Es un defecto de Handtight {0}, no un error suyo: {1}. Ningún archivo quedó a medio escribir. Le rogamos que lo comunique con la orden y los archivos; {2}=1 delante de la orden muestra dónde ocurrió.',
  'References: {0}.': 'Referencias: {0}.',
  'In Handtight since {0}.': 'En Handtight desde {0}.',
  'To list them all: npx handtight explain': 'Para verlas todas: npx handtight explain',
  'The page of {0} is missing from this installation ({1}). Install it again.':
    'La página de {0} falta en esta instalación ({1}). Instalarla de nuevo.',
  'After {0} rounds there is still something to fix. This is a defect of Handtight: please report it, with the files.':
    'Después de {0} vueltas queda todavía algo por corregir. Es un defecto de Handtight: le rogamos que lo comunique, con los archivos.',
  'As long as a line cannot be read, nothing else of its file is fixed. Correct it, and run the command again.':
    'Mientras no se pueda leer una línea, no se corrige nada más de su archivo. Corregirla, y ejecutar la orden otra vez.',
  'As long as a file cannot be read, no name is corrected: it may be declared in that file.':
    'Mientras no se pueda leer un archivo, no se corrige ningún nombre: puede estar declarado en él.',
  '{0} of {1} files were written.': 'Se escribieron {0} de {1} archivos.',
  '{0} changed while it was read, and is left as it is. Run the command again.{1}':
    '{0} cambió mientras se leía, y se deja como está. Ejecutar la orden otra vez.{1}',
  'not laid out': 'sin dar formato',
  '{0} Correct it, and run the command again.': '{0} Corregirlo, y ejecutar la orden otra vez.',
  'not read': 'no leído',
  'would lay out': 'recibiría formato',
  'laid out': 'con formato',
  'The file is laid out.': 'El archivo tiene el formato correcto.',
  'All {0} files are laid out.': 'Los {0} archivos tienen el formato correcto.',
  '{0} is not issued.': '{0} no se emite.',
  'Revision {0} of {1} is issued already, and is the same: {2}':
    'La revisión {0} de {1} ya está emitida, y es la misma: {2}',
  '{0} is in the way: it is there, and is not this revision. Where it was changed, take it back from version control; else move it away.':
    '{0} estorba: existe, y no es esta revisión. Si se cambió, recuperarlo del control de versiones; si no, quitarlo de ahí.',
  'Issued: revision {0} of {1}, {2}': 'Emitida: revisión {0} de {1}, {2}',
  'It has no revision, so no job could name it. Write one into the head of {0}: revision A.':
    'No tiene revisión, así que ningún trabajo podría citarlo. Escribir una en la cabecera de {0}: revision A.',
  'Nobody has approved it, or the day is missing: what is issued is what the bench works by. Write approved by "…" on the day, as year-month-day, into its head.':
    'Nadie lo ha aprobado, o falta el día: por lo que se emite se trabaja en el banco. Escribir en su cabecera approved by "…" on y el día, como año-mes-día.',
  'It is approved on {0}, which is after today, {1}. Correct the day; with --today, where the clock of this machine is wrong.':
    'Está aprobado el {0}, que es después de hoy, {1}. Corregir el día; con --today, si el reloj de esta máquina está mal.',
  'The job in {0} cannot be read. Line {1}: {2} Run npx handtight check {3} for all of it.':
    'El trabajo de {0} no se puede leer. Línea {1}: {2} Para verlo todo: npx handtight check {3}.',
  'Job {0} has no unit {1}. Its units: {2}.': 'El trabajo {0} no tiene ninguna unidad {1}. Sus unidades: {2}.',
  'Job {0} is not certified, so it has no such label.':
    'El trabajo {0} no está certificado, así que no tiene esa etiqueta.',
  'Add what is missing to the job.': 'Añadir al trabajo lo que falta.',
  'No unit of job {0} has a label: every one is on hold.':
    'Ninguna unidad del trabajo {0} tiene etiqueta: todas están en espera.',
  '{0} by {1} mm is too small for these words in type that can be read. Take larger labels with --size.':
    '{0} por {1} mm es demasiado pequeño para estas palabras en letra legible. Usar etiquetas mayores con --size.',
  '{0}: no font has {1}, which print as empty boxes.':
    '{0}: ningún tipo de letra tiene {1}; se imprime como casilla vacía.',
  '{0}: 1 label': '{0}: 1 etiqueta',
  '{0}: {1} labels': '{0}: {1} etiquetas',
  'Nothing is recorded of {0}: no closed job has it as serial, number, customer or renewed part.':
    'No consta nada de {0}: ningún trabajo cerrado lo tiene como número de serie, número, cliente o pieza renovada.',
  '{0} is a {1}: all units of it are listed.': '{0} se encontró como {1}: se listan todas sus unidades.',
  customer: 'cliente',
  received: 'recibido',
  '{0} revision {1}': '{0} revisión {1}',
  'on hold': 'en espera',
  'as found': 'al recibir',
  renewed: 'renovado',
  batches: 'lotes',
  'on record': 'anotado',
  'done by': 'hecho por',
  certificate: 'certificado',
  '{0}, issue {1}': '{0}, emisión {1}',
  'job {0}, unit {1}: {2} (no serial)': 'trabajo {0}, unidad {1}: {2} (sin número de serie)',
  'job {0}, unit {1}: {2} {3}': 'trabajo {0}, unidad {1}: {2} {3}',
  pass: 'pasa',
  fail: 'falla',
  '{0} (limit {1})': '{0} (límite {1})',
  '{0} on {1}': '{0} con {1}',
  'Say what is in question: --tool PG-400, --batch L-7, --by "…" or --procedure NAME, and the days with --from and --to.':
    'Decir qué está en duda: --tool PG-400, --batch L-7, --by "…" o --procedure NOMBRE, y los días con --from y --to.',
  'A revision is one of a procedure: give --procedure NAME too.':
    'Una revisión lo es de un procedimiento: dar también --procedure NOMBRE.',
  '--from {0} is after --to {1}. Turn them around.': '--from {0} es después de --to {1}. Cambiarlos entre sí.',
  day: 'día',
  number: 'número',
  serial: 'número de serie',
  what: 'qué',
  reading: 'lectura',
  limit: 'límite',
  'inside by': 'margen',
  by: 'por',
  '1 result': '1 resultado',
  '{0} results': '{0} resultados',
  '1 unit': '1 unidad',
  '{0} units': '{0} unidades',
  '1 job': '1 trabajo',
  '{0} jobs': '{0} trabajos',
  '1 customer': '1 cliente',
  '{0} customers': '{0} clientes',
  'Nothing was judged so.': 'No se juzgó nada así.',
  '{0} of {1}, {2}, {3}.': '{0} de {1}, {2}, {3}.',
  '--within {0} cannot be read: {1}': '--within {0} no se puede leer: {1}',
  'write a figure and its unit, such as "3 bar".': 'escribir un valor y su unidad, por ejemplo "3 bar".',
  'No closed job has --{0} {1}. {2}': 'Ningún trabajo cerrado tiene --{0} {1}. {2}',
  'No unit was closed so.': 'No se cerró ninguna unidad así.',
  month: 'mes',
  units: 'unidades',
  'passed at once': 'pasan a la primera',
  'as found still good': 'aún bien al recibir',
  'came back, by cause': 'devueltas, por causa',
  'Job {0} cannot be read. Run npx handtight check.': 'El trabajo {0} no se puede leer. Ejecutar npx handtight check.',
  'No job is open.': 'No hay ningún trabajo abierto.',
  missing: 'falta',
  file: 'archivo',
  'There are no records in {0}: no job was closed there. Give their folder with --records, or close a job: npx handtight close JOB.':
    'No hay registros en {0}: ahí no se ha cerrado ningún trabajo. Dar su carpeta con --records, o cerrar un trabajo: npx handtight close NÚMERO.',
  '{0} declares no {1} that can be used. Run npx handtight check {2}, or give a name. {3}':
    'En {0} no se declara, como {1}, nada que se pueda usar. Ejecutar npx handtight check {2}, o dar un nombre. {3}',
  'No {0} is called {1}. {2}': 'No hay, como {0}, nada llamado {1}. {2}',
  'There are: {0}.': 'Hay: {0}.',
  none: 'ninguno',
  'There is a job {0} already. Give the next number.': 'Ya hay un trabajo {0}. Dar el número siguiente.',
  '{0} has no part number {1}. It has: {2}.': '{0} no tiene el número de pieza {1}. Tiene: {2}.',
  'One unit': 'Una unidad',
  'Set of {0}': 'Juego de {0}',
  'Serial {0} is in job {1} too, which is not closed.':
    'El número de serie {0} está también en el trabajo {1}, que no está cerrado.',
  'Serial {0} was here before: job {1}, closed {2}, {3}. For all of it: npx handtight history {4}':
    'El número de serie {0} ya estuvo aquí: trabajo {1}, cerrado el {2}, {3}. Para verlo todo: npx handtight history {4}',
  '“{0}” is nothing that can be begun: write new procedure, new family, new job or new samples. {1}':
    '«{0}» no es nada que se pueda empezar: escribir new procedure, new family, new job o new samples. {1}',
  'Families that come with the program, to begin from:': 'Familias que trae el programa, para empezar:',
  'npx handtight new procedure FAMILY   writes a first procedure for one of these, or for a family of this folder\nnpx handtight new family NAME --parts body,spring,plug   writes a family of your own\nnpx handtight new job NUMBER --of PROCEDURE --units 6   writes the job of an order that has come in\nnpx handtight new samples FOLDER     copies all of them, with their procedures and jobs':
    'npx handtight new procedure FAMILIA   escribe un primer procedimiento para una de ellas, o para una familia de esta carpeta\nnpx handtight new family NOMBRE --parts body,spring,plug   escribe una familia propia\nnpx handtight new job NÚMERO --of PROCEDIMIENTO --units 6   escribe el trabajo de un pedido que ha entrado\nnpx handtight new samples CARPETA     las copia todas, con sus procedimientos y trabajos',
  'No family is called {0}. {1} To write one of your own: npx handtight new family {2} --parts body,spring,plug':
    'Ninguna familia se llama {0}. {1} Para escribir una propia: npx handtight new family {2} --parts body,spring,plug',
  'A family has at least two parts. Name them in the order in which they are built: --parts body,spring,plug':
    'Una familia tiene al menos dos piezas. Nombrarlas en el orden de montaje: --parts body,spring,plug',
  '{0} is there already. Name a new folder: nothing is overwritten.':
    '{0} ya existe. Dar una carpeta nueva: no se sobrescribe nada.',
  'Copied {0} files into {1}. Check them: npx handtight check {2}':
    'Copiados {0} archivos en {1}. Comprobarlos: npx handtight check {2}',
  '{0} is not proven by {1}. Its tests: {2}.': '{0} no se acredita con {1}. Sus pruebas: {2}.',
  '{0} is no kind of figure. Write it as {1}=pressure. Kinds: {2}.':
    '{0} no es una clase de valor. Escribirlo así: {1}=pressure. Clases: {2}.',
  '{0} is there already. Give another file with --to: nothing is overwritten.':
    '{0} ya existe. Dar otro archivo con --to: no se sobrescribe nada.',
  'It has a blank ({0}) for you to fill in.': 'Tiene un hueco ({0}) por rellenar.',
  'It has {0} blanks ({1}) for you to fill in.': 'Tiene {0} huecos ({1}) por rellenar.',
  'Wrote {0}.': 'Escrito {0}.',
  'To see what is left: npx handtight check {0}': 'Para ver lo que falta: npx handtight check {0}',
  '{0} {1} of {2} printed.': '{0} Impresos {1} de {2}.',
  '{0} printed': 'impresos: {0}',
  '{0} printed, {1} not printed': 'impresos: {0}, sin imprimir: {1}',
  '{0} into one file': '{0} en un solo archivo',
  '--unit prints one unit of a job: name the job by its number.':
    '--unit imprime una unidad de un trabajo: dar el trabajo por su número.',
  '{0} has no repair {1}. {2}': '{0} no tiene la reparación {1}. {2}',
  'It has none.': 'No tiene ninguna.',
  'Its repairs: {0}.': 'Sus reparaciones: {0}.',
  '--station prints what is done at one station: add --form instruction.':
    '--station imprime lo que se hace en un puesto: añadir --form instruction.',
  '{0} has no stage at {1}. Its stations: {2}.': '{0} no tiene ninguna etapa en {1}. Sus puestos: {2}.',
  'issue a revision of a procedure: its text is kept, and jobs that name it are judged by it':
    'emitir una revisión de un procedimiento: su texto se guarda, y los trabajos que la citan se juzgan por él',
  'date of issue, if the clock of this machine is wrong': 'fecha de emisión, si el reloj de esta máquina está mal',
  'look names up in this folder': 'buscar los nombres en esta carpeta',
  'close a finished job: write its record, which is never changed again':
    'cerrar un trabajo terminado: escribir su registro, que ya no cambia nunca',
  'close it once more, with a new issue of its certificate':
    'cerrarlo otra vez, con una nueva emisión de su certificado',
  "sign the record with the shop's private key (Ed25519, PEM)":
    'firmar el registro con la clave privada del taller (Ed25519, PEM)',
  'where the records are': 'dónde están los registros',
  'date of closing, if the clock of this machine is wrong': 'fecha de cierre, si el reloj de esta máquina está mal',
  'check the records of closed jobs: name each that was changed, is missing, or is new':
    'comprobar los registros de los trabajos cerrados: nombrar cada uno que cambió, falta o es nuevo',
  "require the signature of the shop's public key (PEM)": 'exigir la firma de la clave pública del taller (PEM)',
  'say what was done to a unit, by its serial; or all of a job, part number, customer or renewed part':
    'decir lo que se hizo a una unidad, por su número de serie; o todo lo de un trabajo, un número de pieza, un cliente o una pieza renovada',
  'list what was judged with a tool, by somebody or by a procedure, nearest to its limit first':
    'listar lo que se juzgó con una herramienta, por una persona o según un procedimiento, primero lo más cercano a su límite',
  'read with this tool': 'leído con esta herramienta',
  'a part of this batch went in': 'se montó una pieza de este lote',
  'done by this person': 'hecho por esta persona',
  'judged by this procedure': 'juzgado según este procedimiento',
  'of the procedure': 'del procedimiento',
  'on this day or later': 'ese día o después',
  'on this day or before': 'ese día o antes',
  'only what was nearer than this to its limit, such as "3 bar"':
    'solo lo que quedó más cerca que esto de su límite, por ejemplo "3 bar"',
  'show month by month what the closed jobs say: passed at once, as found, comebacks by cause':
    'mostrar mes a mes lo que dicen los trabajos cerrados: lo que pasa a la primera, cómo llega y lo devuelto, por causa',
  'of this procedure': 'de este procedimiento',
  'closed on this day or later': 'cerrado ese día o después',
  'closed on this day or before': 'cerrado ese día o antes',
  'list the jobs that are not closed: for whom, since when, how many units, and what is missing':
    'listar los trabajos que no están cerrados: para quién, desde cuándo, cuántas unidades y qué falta',
  'if the clock of this machine is wrong': 'si el reloj de esta máquina está mal',
  'the folder with the jobs': 'la carpeta con los trabajos',
  'list the tools of the shop by the day on which their calibration ends':
    'listar las herramientas del taller por el día en que vence su calibración',
  'only what is due within so many days, or overdue': 'solo lo que vence dentro de esos días, o ya venció',
  'output format': 'formato de salida',
  'the folder with the shop': 'la carpeta con el taller',
  'the records of closed jobs': 'los registros de los trabajos cerrados',
  'For {0}': 'Para {0}',
  'First path': 'Primer camino',
  'Checks and prints machine rebuild procedures (.rebuild files).':
    'Comprueba e imprime procedimientos de reacondicionamiento (archivos .rebuild).',
  'output the version number': 'mostrar el número de versión',
  'display help for command': 'mostrar la ayuda de una orden',
  '(add --help for the options)': '(con --help se ven las opciones)',
  'language of what the command says (else as in handtight.json, else that of the machine)':
    'idioma de lo que dice la orden (si no, el de handtight.json; si no, el de la máquina)',
  'check files or folders (this folder if none is given)': 'comprobar archivos o carpetas (si no se da ninguna, esta)',
  'fail if there are more warnings than this': 'fallar si hay más advertencias que estas',
  'also look names up in this folder': 'buscar los nombres también en esta carpeta',
  'make the safe fixes in the files, and report what is left':
    'hacer las correcciones seguras en los archivos, y mostrar lo que queda',
  'show what --fix would change, and change nothing': 'mostrar lo que cambiaría --fix, sin cambiar nada',
  'check again after each change, until Ctrl-C': 'comprobar otra vez tras cada cambio, hasta Ctrl-C',
  'lay out files or folders (this folder if none is given): indentation, blanks, columns':
    'dar formato a archivos o carpetas (si no se da ninguna, esta): sangrías, espacios, columnas',
  'only say which files are not laid out, and fail if there are any':
    'solo decir qué archivos no tienen el formato, y fallar si hay alguno',
  'print the card of a job (by number), of a procedure (by name), or of all jobs in a file or folder':
    'imprimir la ficha de un trabajo (por número), de un procedimiento (por nombre), o de todos los trabajos de un archivo o carpeta',
  'card: all of it; record: what is written down; instruction: what is done, for the wall (else as in handtight.json, else card)':
    'card: todo; record: lo que se anota; instruction: lo que se hace, para la pared (si no, como en handtight.json; si no, card)',
  'one unit of the job, which was added later': 'una unidad del trabajo, que se añadió después',
  'of an instruction: the stages at one station': 'de una instrucción: las etapas de un puesto',
  'specs, drawing, or a repair by its number (R3), alone':
    'specs, drawing, o una reparación por su número (R3), por separado',
  'put all sheets into one document of this name, each with its own page numbers':
    'poner todas las hojas en un documento con este nombre, cada una con su numeración de páginas',
  'print despite errors; every page is marked': 'imprimir a pesar de los errores; cada página queda marcada',
  "print the customer's certificate for a finished job (by number, file, or record of a closed job)":
    'imprimir el certificado del cliente de un trabajo terminado (por número, archivo, o registro de un trabajo cerrado)',
  'print it with a list of what is missing; every page is marked':
    'imprimirlo con una lista de lo que falta; cada página queda marcada',
  'print labels of a job, one to a page: a tag for each unit, a slip for the box, or what is certified':
    'imprimir etiquetas de un trabajo, una por página: una por unidad, una para la caja, o lo certificado',
  'what for': 'para qué',
  'width and height of the label in millimeters': 'ancho y alto de la etiqueta en milímetros',
  'of one unit': 'de una unidad',
  'of the fixed words (else as in handtight.json, else en)':
    'de las palabras fijas (si no, como en handtight.json; si no, en)',
  'where the file goes': 'adónde va el archivo',
  'show what each step of a procedure does to the unit, on every path through it':
    'mostrar lo que hace cada paso de un procedimiento a la unidad, en cada camino',
  'lay out the specifications of a procedure: limits, sources, tools, and what is missing':
    'mostrar las especificaciones de un procedimiento: límites, fuentes, herramientas, y lo que falta',
  'write it to a file': 'escribirlo en un archivo',
  'say what to fit in each unit of a job, from its last reading':
    'decir qué montar en cada unidad de un trabajo, según su última lectura',
  'choose the shims for a whole set at once, with the smallest spread':
    'elegir los suplementos de todo un juego a la vez, con la menor dispersión',
  'fit the rate of a shim to the readings of all jobs of a procedure':
    'calcular la variación de un suplemento con las lecturas de todos los trabajos de un procedimiento',
  'do a calculation and show the working; without a name, list the calculations':
    'hacer un cálculo y mostrar el desarrollo; sin nombre, listar los cálculos',
  'such as "guide=6 mm"': 'por ejemplo "guide=6 mm"',
  'begin a procedure or a family, or copy the samples; alone, list what there is to begin from':
    'empezar un procedimiento o una familia, o copiar los ejemplos; sin más, listar con qué se puede empezar',
  'write a first procedure for a family, with blanks for what only you know':
    'escribir un primer procedimiento para una familia, con huecos para lo que solo usted sabe',
  'of the procedure (else rebuild- and the family)': 'del procedimiento (si no, rebuild- y la familia)',
  'Rebuild and test': 'Reacondicionar y probar',
  'tests that give a figure, such as opening=pressure,leak=time':
    'pruebas que dan un valor, por ejemplo opening=pressure,leak=time',
  'where it goes (else a file of its name)': 'adónde va (si no, a un archivo con su nombre)',
  'the folder with your shop and families': 'la carpeta con su taller y sus familias',
  'write a first family from the names of its parts': 'escribir una primera familia con los nombres de sus piezas',
  'in the order in which they are built, such as body,spring,plug; the first again begins another stack on it':
    'en el orden de montaje, por ejemplo body,spring,plug; repetir la primera empieza otra pila sobre ella',
  'what every unit must pass': 'lo que toda unidad debe superar',
  'of the family': 'de la familia',
  Unit: 'Unidad',
  'write the job of an order that has come in, and say which of its serials were here before':
    'escribir el trabajo de un pedido que ha entrado, y decir cuáles de sus números de serie ya estuvieron aquí',
  'the procedure that it follows': 'el procedimiento que sigue',
  'how many came in': 'cuántas han entrado',
  'their part number': 'su número de pieza',
  'as marked on the bodies, in their order': 'como están marcados en los cuerpos, en su orden',
  'give each the next serial of the shop': 'dar a cada una el siguiente número de serie del taller',
  'whose they are': 'de quién son',
  'of the job': 'del trabajo',
  'day on which they came in': 'día en que entraron',
  'where it goes (else a file of its number)': 'adónde va (si no, a un archivo con su número)',
  'the folder with your procedures': 'la carpeta con sus procedimientos',
  'copy the library that comes with the program into a new folder':
    'copiar a una carpeta nueva los ejemplos que trae el programa',
  'serve an assistant: check, explain, replay, calculate and look up, by the Model Context Protocol':
    'atender a un asistente: comprobar, explicar, reproducir, calcular y consultar, con el Model Context Protocol',
  'the folder that it may read': 'la carpeta que puede leer',
  'work everything out again, and keep nothing for the next run':
    'calcularlo todo de nuevo, y no guardar nada para la próxima vez',
  'One of the arguments is empty. Give a name, a file or a folder there, or leave it out; in a script, check that the variable has a value.':
    'Uno de los argumentos está vacío. Dar un nombre, un archivo o una carpeta, o no darlo; en un script, comprobar que la variable tiene valor.',
  'The argument that begins with {0} has {1} characters. No name, file or figure is that long: check that the quotes are closed.':
    'El argumento que empieza por {0} tiene {1} caracteres. Ningún nombre, archivo ni valor es tan largo: comprobar que las comillas están cerradas.',
  'pdf, html, or both with a comma': 'pdf, html, o los dos con una coma',
  'size of the paper (else as in handtight.json, else a4)':
    'tamaño del papel (si no, como en handtight.json; si no, a4)',
  'where the files go': 'adónde van los archivos',
  'Give width and height of the label in millimeters: 70x36.':
    'Dar el ancho y el alto de la etiqueta en milímetros: 70x36.',
  'Parts are specs, drawing, or a repair by its number, such as R3.':
    'Las partes son specs, drawing, o una reparación por su número, por ejemplo R3.',
  'Give the name of a file. Give its folder with --to.': 'Dar el nombre de un archivo. Su carpeta se da con --to.',
  '“{0}” is no name. A name begins with a letter and has letters, digits and single hyphens, and is not a word such as {1}: spring-seat.':
    '«{0}» no es un nombre. Un nombre empieza por una letra y tiene letras, cifras y guiones sueltos, y no es una palabra como {1}: spring-seat.',
  'Give a whole number.': 'Dar un número entero.',
  'Formats are {0}, not {1}.': 'Los formatos son {0}, no {1}.',
  'It cannot have a quote or a line end in it.': 'No puede llevar comillas ni saltos de línea.',
  'Give a count from 1 to 99.': 'Dar una cantidad de 1 a 99.',
  '{0} is not printed: it has 1 error. Run npx handtight check {1} to see it, or print it with --draft, which marks every page.':
    '{0} no se imprime: tiene 1 error. Para verlo, npx handtight check {1}; o imprimir con --draft, que marca cada página.',
  '{0} is not printed: it has {1} errors. Run npx handtight check {2} to see them, or print it with --draft, which marks every page.':
    '{0} no se imprime: tiene {1} errores. Para verlos, npx handtight check {2}; o imprimir con --draft, que marca cada página.',
  '{0} ({1}) is not printed: its file {2} would be that of {3} ({4}). Print it alone into another folder with --to, or all into one file with --one-file.':
    '{0} ({1}) no se imprime: su archivo {2} sería el de {3} ({4}). Imprimirlo aparte en otra carpeta con --to, o todo en un archivo con --one-file.',
  'job {0}': 'trabajo {0}',
  '{0} has 1 error: what it affects may be missing here. Run npx handtight check {1} to see it.':
    '{0} tiene 1 error: lo que depende de él puede faltar aquí. Para verlo: npx handtight check {1}.',
  '{0} has {1} errors: what they affect may be missing here. Run npx handtight check {2} to see them.':
    '{0} tiene {1} errores: lo que depende de ellos puede faltar aquí. Para verlos: npx handtight check {2}.',
  '{0} is not printed: {1}': '{0} no se imprime: {1}',
  '{0} is both a procedure and a folder: the procedure is used. Write ./{1} for the folder.':
    '{0} es un procedimiento y también una carpeta: se usa el procedimiento. Para la carpeta, escribir ./{1}.',
  '{0} is both a job and a folder: the job is used. Write ./{1} for the folder.':
    '{0} es un trabajo y también una carpeta: se usa el trabajo. Para la carpeta, escribir ./{1}.',
  '{0} declares no procedure and no job that can be printed. Run npx handtight check {1} first.':
    '{0} no declara ningún procedimiento ni trabajo que se pueda imprimir. Ejecutar antes npx handtight check {1}.',
  'There is no .rebuild file in {0}. Give a folder that has jobs or procedures in it.':
    'No hay ningún archivo .rebuild en {0}. Dar una carpeta con trabajos o procedimientos.',
  '{0} declares no job and no procedure: there is nothing to print in it.':
    '{0} no declara ningún trabajo ni procedimiento: no hay nada que imprimir.',
  '{0} declares no job: its procedures are printed as blank sheets.':
    '{0} no declara ningún trabajo: sus procedimientos se imprimen como hojas en blanco.',
  'No job, procedure or folder is called {0}. {1}': 'No hay ningún trabajo, procedimiento ni carpeta llamado {0}. {1}',
  'No shop in {0} declares a wrench, a gauge or a tool.':
    'Ningún taller de {0} declara una llave, un manómetro o una herramienta.',
  'No tool is due by {0}.': 'Ninguna herramienta vence hasta el {0}.',
  due: 'vence',
  title: 'título',
  calibrated: 'calibrada',
  today: 'hoy',
  'found at calibration': 'hallado al calibrar',
  'out of use since {0}': 'fuera de uso desde el {0}',
  'in date': 'en vigor',
  overdue: 'vencida',
  'not calibrated': 'sin calibrar',
  '{0} is out of use since {1}. Use another tool.': '{0} está fuera de uso desde el {1}. Usar otra herramienta.',
  '{0} has been due for calibration since {1}: nothing read with it now can be certified.':
    'La calibración de {0} venció el {1}: lo que se lea ahora con ella no se puede certificar.',
  '{0} is due for calibration on {1}: what is read with it after that cannot be certified.':
    'La calibración de {0} vence el {1}: lo que se lea después con ella no se puede certificar.',
  '--within {0} is no number of days. Write it as --within "30 days".':
    '--within {0} no es una cantidad de días. Escribirlo así: --within "30 days".',
  'job {0} is not printed: its procedure was not found, or could not be read. Run npx handtight check {1} to see why.':
    'el trabajo {0} no se imprime: su procedimiento no se encontró, o no se pudo leer. Para ver por qué: npx handtight check {1}.',
  'procedure {0} is not printed: its family or its shop was not found, or could not be read. Run npx handtight check {1} to see why.':
    'el procedimiento {0} no se imprime: su familia o su taller no se encontró, o no se pudo leer. Para ver por qué: npx handtight check {1}.',
  '{0} is not printed: nothing in it can be read. Run npx handtight check {1} to see why.':
    '{0} no se imprime: no se puede leer nada de él. Para ver por qué: npx handtight check {1}.',
  '{0}: changed. It is not as it was written. Take it back from a backup.':
    '{0}: cambiado. No está como se escribió. Recuperarlo de una copia de seguridad.',
  '{0}: new. It is whole, and not in {1}: its closing was interrupted, or somebody put it here. If job {2} was closed here, close it again, which completes the list.':
    '{0}: nuevo. Está entero, y no figura en {1}: su cierre se interrumpió, o alguien lo puso aquí. Si el trabajo {2} se cerró aquí, cerrarlo otra vez: eso completa la lista.',
  '{0}: missing. It is in {1}. Take it back from a backup.':
    '{0}: falta. Figura en {1}. Recuperarlo de una copia de seguridad.',
  '{0}: changed. One of its lines was not written so. Take it back from a backup.':
    '{0}: cambiado. Una de sus líneas no se escribió así. Recuperarlo de una copia de seguridad.',
  '{0}: changed. {1} of its lines were not written so. Take it back from a backup.':
    '{0}: cambiado. {1} de sus líneas no se escribieron así. Recuperarlo de una copia de seguridad.',
  '{0} signed with the key {1}': '{0} firmados con la clave {1}',
  '{0} not signed': '{0} sin firmar',
  '1 record': '1 registro',
  '{0} records': '{0} registros',
  '{0}: all as they were written.': '{0}: todo como se escribió.',
  '{0}: {1} wrong.': '{0}: {1} mal.',
  'There is no record in {0}. Give the folder that npx handtight close writes to.':
    'No hay ningún registro en {0}. Dar la carpeta en la que escribe npx handtight close.',
  'not signed.': 'sin firmar.',
  "signed with another key, {0}. See whether that key is the shop's too.":
    'firmado con otra clave, {0}. Comprobar si también es del taller.',
  'changed. Its signature is not that of this record.': 'cambiado. Su firma no es la de este registro.',
  '{0} is no key of Ed25519 in PEM. Make the public one with: openssl pkey -in shop.pem -pubout -out shop.pub':
    '{0} no es una clave de Ed25519 en PEM. Crear la pública con: openssl pkey -in shop.pem -pubout -out shop.pub',
  'Watching for changes. Ctrl-C ends it.': 'Atento a los cambios. Ctrl-C lo termina.',
  'choices:': 'valores:',
  'default:': 'por omisión:',
  "error: unknown command '{0}'": "error: no existe la orden '{0}'",
  "error: unknown option '{0}'": "error: no existe la opción '{0}'",
  '(Did you mean {0}?)': '(¿Quiso decir {0}?)',
  '(Did you mean one of {0}?)': '(¿Quiso decir uno de estos: {0}?)',
  "error: missing required argument '{0}'": "error: falta '{0}'",
  "error: required option '{0}' not specified": "error: falta '{0}'",
  "error: option '{0}' argument missing": "error: no hay nada detrás de '{0}'",
  "error: option '{0}' cannot be used with option '{1}'": "error: '{0}' y '{1}' no se pueden dar a la vez",
  "error: too many arguments for '{0}'. Expected 1 argument but got {1}.":
    "error: '{0}' lleva 1 argumento como máximo, y se dan {1}.",
  "error: too many arguments for '{0}'. Expected {1} arguments but got {2}.":
    "error: '{0}' lleva {1} argumentos como máximo, y se dan {2}.",
  "error: option '{0}' argument '{1}' is invalid. {2}": "error: '{1}' no puede ir detrás de '{0}'. {2}",
  "error: command-argument value '{0}' is invalid for argument '{1}'. {2}":
    "error: '{0}' no se puede dar como '{1}'. {2}",
  'Allowed choices are {0}.': 'Dar uno de estos: {0}.',
  'To list them all: npx handtight work-out': 'Para verlos todos: npx handtight work-out',
  'No calculation is called {0}. {1}': 'No hay ningún cálculo llamado {0}. {1}',
  '{0} is not a .rebuild file. Give one, or a folder that has some.':
    '{0} no es un archivo .rebuild. Dar uno, o una carpeta que los tenga.',
  'There is no .rebuild file in {0}. Give a file or a folder that has some.':
    'No hay ningún archivo .rebuild en {0}. Dar un archivo, o una carpeta que los tenga.',
  'this folder': 'esta carpeta',
  'This file disappeared while it was being read. Run the command again.':
    'Este archivo desapareció mientras se leía. Ejecutar la orden otra vez.',
  'Cannot write {0}: {1}': 'No se puede escribir {0}: {1}',
  'the disk is full. Make room, or give another folder with {0}.':
    'el disco está lleno. Liberar espacio, o dar otra carpeta con {0}.',
  'no permission. Give a folder that you may write to with {0}; or, where the file is read-only or open in a reader, release it.':
    'no hay permiso. Dar con {0} una carpeta en la que pueda escribir; o, si el archivo es de solo lectura o está abierto en un visor, liberarlo.',
  'the disk is read-only. Give another folder with {0}.': 'el disco es de solo lectura. Dar otra carpeta con {0}.',
  'another program has it open. Close it and print again.':
    'otro programa lo tiene abierto. Cerrarlo e imprimir otra vez.',
  'the folder cannot be made there. Give another folder with {0}.':
    'ahí no se puede crear la carpeta. Dar otra con {0}.',
  'there is a file where a folder is needed. Give another folder with {0}.':
    'hay un archivo donde hace falta una carpeta. Dar otra con {0}.',
  'a folder of that name is in the way. Take it away, or give another folder with {0}.':
    'una carpeta de ese nombre estorba. Quitarla, o dar otra con {0}.',
  'the name is too long. Give a shorter folder with {0}.':
    'el nombre es demasiado largo. Dar con {0} una carpeta más corta.',
  'the disk is full. Make room and run the command again.':
    'el disco está lleno. Liberar espacio y ejecutar la orden otra vez.',
  'no permission. Let its owner give you the right to write to it and to its folder.':
    'no hay permiso. Pedir a su propietario el derecho a escribir en él y en su carpeta.',
  'the disk is read-only. Copy the files to another one and work there.':
    'el disco es de solo lectura. Copiar los archivos a otro y trabajar allí.',
  'another program has it open. Close it there and run the command again.':
    'otro programa lo tiene abierto. Cerrarlo allí y ejecutar la orden otra vez.',
  'Usage:': 'Uso:',
  'Arguments:': 'Argumentos:',
  'Options:': 'Opciones:',
  'Commands:': 'Órdenes:',
  '<options>': '<opciones>',
  '<command>': '<orden>',
  '<language>': '<idioma>',
  '<paths>': '<rutas>',
  '<format>': '<formato>',
  '<count>': '<cantidad>',
  '<folder>': '<carpeta>',
  '<names>': '<nombres>',
  '<formats>': '<formatos>',
  '<paper>': '<papel>',
  '<form>': '<forma>',
  '<place>': '<lugar>',
  '<name>': '<nombre>',
  '<part>': '<parte>',
  '<date>': '<fecha>',
  '<job>': '<trabajo>',
  '<kind>': '<clase>',
  '<size>': '<tamaño>',
  '<procedure>': '<procedimiento>',
  '<file>': '<archivo>',
  '<calculation>': '<cálculo>',
  '<figures>': '<valores>',
  '<rule>': '<regla>',
  '<what>': '<qué>',
  '<family>': '<familia>',
  '<title>': '<título>',
  '<tests>': '<pruebas>',
  '<number>': '<número>',
  '<serials>': '<series>',
  '<reason>': '<motivo>',
  '<serial>': '<serie>',
  '<batch>': '<lote>',
  '<person>': '<persona>',
  '<revision>': '<revisión>',
  '<quantity>': '<magnitud>',
  '<days>': '<días>',
  '{0} in {1}': '{0} en {1}',
  printed: 'impreso',
  fixed: 'corregido',
  note: 'nota',
  written: 'escrito',
  checking: 'comprobando',
  '{0} is not there. Check the spelling, or give a folder that has .rebuild files in it.':
    '{0} no está. Comprobar la escritura, o dar una carpeta con archivos .rebuild.',
  'This folder could not be read: {0}': 'Esta carpeta no se pudo leer: {0}',
  'This is a link to {0}, which is not there, so nothing is read. Correct the link, or delete it.':
    'Es un enlace a {0}, que no está, así que no se lee nada. Corregir el enlace, o borrarlo.',
  'This link could not be followed: {0}': 'Este enlace no se pudo seguir: {0}',
  'This is a pipe, a socket or a device, not a file, so it is not read. Move it out of the folder.':
    'Es una tubería, un socket o un dispositivo, no un archivo, así que no se lee. Sacarlo de la carpeta.',
  'This settings file is not read: only the one at the top of the workspace counts. Move it to the folder that is opened, or that the command is run in.':
    'Este archivo de ajustes no se lee: solo cuenta el de la carpeta superior. Llevarlo a la carpeta que se abre, o en la que se ejecuta la orden.',
  'This settings file is not read: only the one at the top of the workspace counts. Put what you need into {0}, and delete this one.':
    'Este archivo de ajustes no se lee: solo cuenta el de la carpeta superior. Poner lo necesario en {0}, y borrar este.',
  'This is a folder, not a file, so it is not read. Rename it, or take it away.':
    'Es una carpeta, no un archivo, así que no se lee. Cambiarle el nombre, o quitarla de ahí.',
  'This is a pipe, a socket or a device, not a file, so it is not read. Rename it, or take it away.':
    'Es una tubería, un socket o un dispositivo, no un archivo, así que no se lee. Cambiarle el nombre, o quitarlo de ahí.',
  'This file has {0} MB and was not read.': 'Este archivo tiene {0} MB y no se leyó.',
  '{0} Settings take a few lines: check that this is the right file.':
    '{0} Los ajustes ocupan unas líneas: comprobar que es el archivo correcto.',
  '{0} Put its declarations into several files.': '{0} Repartir sus declaraciones en varios archivos.',
  'This file could not be read: {0}': 'Este archivo no se pudo leer: {0}',
  'no permission. Ask its owner for permission to read it, or move it out of the folder.':
    'no hay permiso. Pedir a su propietario permiso para leerlo, o sacarlo de la carpeta.',
  'it is a link that leads back to itself. Correct the link, or delete it.':
    'es un enlace que vuelve a sí mismo. Corregir el enlace, o borrarlo.',
  'its name is longer than the system allows. Give it a shorter one.':
    'su nombre es más largo de lo que admite el sistema. Darle uno más corto.',
  'another program has it open. Close it there.': 'otro programa lo tiene abierto. Cerrarlo allí.',
  'too many files are open on this machine. Close some programs and try again.':
    'en esta máquina hay demasiados archivos abiertos. Cerrar algunos programas y probar otra vez.',
  'the disk or the network did not answer. See whether it is connected, and try again.':
    'el disco o la red no respondió. Comprobar que está conectado, y probar otra vez.',
  'This file and those after it are not read: there are more than {0} in this workspace. Open or name a smaller folder.':
    'Este archivo y los que siguen no se leen: hay más de {0} en esta área de trabajo. Abrir o nombrar una carpeta más pequeña.',
  'It is no longer there.': 'Ya no está.',
  '{0} cannot be written to, so the ledger is made again for each question.':
    'En {0} no se puede escribir, así que el libro se rehace para cada pregunta.',
  'The ledger was damaged, and was made again from the records.':
    'El libro estaba dañado, y se rehízo con los registros.',
  'Another program has kept the ledger busy, so it was made for this question alone.':
    'Otro programa tenía el libro ocupado, así que se hizo uno solo para esta pregunta.',
  'The list of records is another than before, so the ledger was made again.':
    'La lista de registros no es la de antes, así que el libro se rehízo.',
  '{0} is missing or not as written, and not in this answer. Run npx handtight verify.':
    '{0} falta o no está como se escribió, y no entra en esta respuesta. Ejecutar npx handtight verify.',
  '{0} records, {1} first, are missing or not as written, and not in this answer. Run npx handtight verify.':
    '{0} registros, el primero {1}, faltan o no están como se escribieron, y no entran en esta respuesta. Ejecutar npx handtight verify.',
  "There is no folder on this machine's disk behind {0}.":
    'En el disco de esta máquina no hay ninguna carpeta que corresponda a {0}.',
  '{0}: no font on the sheet has {1}: it prints as an empty box. Write it in other words.':
    '{0}: ningún tipo de letra de la hoja tiene {1}: se imprime como casilla vacía. Escribirlo con otras palabras.',
  'Stopped: {0} of {1} printed.': 'Detenido: {0} de {1} impresos.',
  '{0} of {1}: {2}': '{0} de {1}: {2}',
  '{0} high at {1}': '{0} de más a {1}',
  '{0} low at {1}': '{0} de menos a {1}',
  'print the page of a rule, or what a caution follows from; without a name, list the rules; “cautions” lists the cautions; a procedure and a step: the cautions of the step, and why':
    'muestra la página de una regla o de qué sale un aviso; sin nombre, lista las reglas; «cautions» lista los avisos; con un procedimiento y un paso: los avisos del paso y su motivo',
  'a rule, a caution, “cautions”, or a procedure': 'una regla, un aviso, «cautions» o un procedimiento',
  'number of a step of that procedure': 'número de un paso de ese procedimiento',
  'the folder that the procedure is in': 'la carpeta en la que está el procedimiento',
  'Follows from: {0}.': 'Sale de: {0}.',
  '{0} has no step {1}. Its steps go from {2} to {3}.': '{0} no tiene paso {1}. Sus pasos van de {2} a {3}.',
  'Step {0} calls for no caution.': 'El paso {0} no pide ningún aviso.',
  '--holds {0}: that is no result of this job that revision {1} has done otherwise.':
    '--holds {0}: no es ningún resultado de este trabajo que la revisión {1} haga hacer de otro modo.',
  'All of it is in the jobs already.': 'Todo está ya en los trabajos.',
  'All results hold over: both revisions have them done in the same way.':
    'Todos los resultados se conservan: las dos revisiones los hacen hacer igual.',
  'CSV with a line of heads, or NDJSON (.ndjson, .jsonl)':
    'CSV con una línea de encabezados, o NDJSON (.ndjson, .jsonl)',
  'Example of a mapping; a column is named, and what is in “is” holds for all rows:':
    'Ejemplo de asignación; se nombra una columna, y lo que está en “is” vale para todas las filas:',
  'History: {0} {1}': 'Historial: {0} {1}',
  'Inside its limit by': 'Dentro del límite por',
  'It holds over.': 'Se conserva.',
  'It is done again.': 'Se repite.',
  'JSON that says which column is what': 'JSON que dice qué es cada columna',
  'Job {0} has more than one unit with {1}.': 'El trabajo {0} tiene más de una unidad con {1}.',
  'Job {0} has no unit with {1}.': 'El trabajo {0} no tiene ninguna unidad con {1}.',
  'Job {0} is at revision {1} already.': 'El trabajo {0} está ya en la revisión {1}.',
  'Job {0} is closed. What is written into it now is on no certificate.':
    'El trabajo {0} está cerrado. Lo que se escriba ahora no está en ningún certificado.',
  'Job {0} is closed: its record says by which revision it was judged.':
    'El trabajo {0} está cerrado: su registro dice con qué revisión se juzgó.',
  'Month by month, by the day of closing.': 'Mes a mes, por el día de cierre.',
  'Neither place nor serial says which unit this is.': 'Ni lugar ni número de serie dicen qué unidad es.',
  'No job is named.': 'No se nombra ningún trabajo.',
  'Nothing was taken in from {0}.': 'No se tomó nada de {0}.',
  'Serial {0} was here before: job {1}, closed {2}, {3}.':
    'El número de serie {0} ya estuvo aquí: trabajo {1}, cerrado el {2}, {3}.',
  'The job in {0} cannot be read. Run npx handtight check {1}.':
    'El trabajo de {0} no se puede leer. Ejecutar npx handtight check {1}.',
  'The last visit first.': 'La última visita primero.',
  'There are {0} jobs {1}, and nobody can say which is meant. Give one of them another number: npx handtight check names both.':
    'Hay {0} trabajos {1}, y nadie puede decir cuál se entiende. Dar otro número a uno de ellos: npx handtight check nombra los dos.',
  '{0} has no column “{1}”. It has: {2}. Write in the mapping what the column is called here, and the separator if that is another.':
    '{0} no tiene la columna “{1}”. Tiene: {2}. Escribir en la asignación cómo se llama aquí la columna, y el separador si es otro.',
  '{0} has more than one column “{1}”, so nobody knows which is meant. Give each a head of its own.':
    '{0} tiene más de una columna “{1}”, y no se sabe cuál es. Dar a cada una un encabezado propio.',
  'The row has nothing in column “{0}”. It has: {1}. Complete it in the file, or delete the row.':
    'La fila no tiene nada en la columna “{0}”. Tiene: {1}. Completarla en el archivo, o quitar la fila.',
  'The row has more cells than there are heads, so what is in which column is not known. A separator inside a cell belongs in quotes.':
    'La fila tiene más celdas que encabezados, y no se sabe qué hay en cada columna. Un separador dentro de una celda va entre comillas.',
  'There is no job {0} here.': 'No hay ningún trabajo {0} aquí.',
  'There is no row in {0}.': 'No hay ninguna fila en {0}.',
  'This is what would be written. With --write it is.': 'Esto es lo que se escribiría. Con --write se escribe.',
  'This is what would be written: {0}. With --write it is.':
    'Esto es lo que se escribiría: {0}. Con --write se escribe.',
  'What a shim brought, with its standard error': 'Lo que aportó un suplemento, con su error típico',
  'What is in the house': 'Lo que hay en casa',
  'What the closed jobs show': 'Lo que muestran los trabajos cerrados',
  'What was judged so': 'Lo que se juzgó así',
  'Write --by and --reason in words, without quotes in them.':
    'Escribir --by y --reason con palabras, sin comillas dentro.',
  'a shim brings': 'aporta un suplemento',
  'approval of the quote': 'la aprobación del presupuesto',
  earlier: 'antes',
  'here before: job {0}, {1}': 'ya estuvo aquí: trabajo {0}, {1}',
  'it is done otherwise': 'se hace de otro modo',
  'job {0} from revision {1} to {2}, {3}': 'trabajo {0} de la revisión {1} a la {2}, {3}',
  'limit {0}, now {1}': 'límite {0}, ahora {1}',
  'line {0}': 'línea {0}',
  'move a job to another revision of its procedure, and say which of its results hold over':
    'pasar un trabajo a otra revisión de su procedimiento, y decir qué resultados se conservan',
  moved: 'pasado',
  'place {0}': 'lugar {0}',
  promised: 'prometido',
  'results that hold over though the new revision has them done otherwise, with commas':
    'resultados que se conservan aunque la nueva revisión los haga hacer de otro modo, con comas',
  'sent out, {0}': 'enviada fuera, {0}',
  'serial {0}': 'número de serie {0}',
  'take the results of a test bench into their jobs, from a file and a mapping that says what is in it':
    'tomar los resultados de un banco de pruebas en sus trabajos, de un archivo y una asignación que dice qué contiene',
  'the revision that it is judged by from now on': 'la revisión con la que se juzga desde ahora',
  'unit {0}: {1}': 'unidad {0}: {1}',
  verdict: 'veredicto',
  'waiting for': 'en espera de',
  'who decides that': 'quién lo decide',
  why: 'por qué',
  'write it; else what would be written is shown': 'escribirlo; si no, se muestra lo que se escribiría',
  'write the answer to this file as a page (HTML), with pictures over time':
    'escribir la respuesta en este archivo como página (HTML), con gráficos en el tiempo',
  '{0} cannot be read as CSV: {1}': '{0} no se puede leer como CSV: {1}',
  '{0} cannot be used: {1}. npx handtight help import has an example.':
    '{0} no se puede usar: {1}. npx handtight help import tiene un ejemplo.',
  '{0} has no revision {1}.': '{0} no tiene revisión {1}.',
  '{0} has no revision, so there is none to move from.':
    '{0} no tiene revisión, así que no hay ninguna desde la que pasar.',
  '{0} is no JSON: {1}': '{0} no es JSON: {1}',
  '{0} late': '{0} con retraso',
  '{0} since {1}': '{0} desde {1}',
  '{0}, line {1}: this is no object of JSON with plain figures and words in it.':
    '{0}, línea {1}: no es un objeto JSON con cifras y palabras sencillas.',
  '{0}, visit by visit': '{0}, visita a visita',
  '“{0} {1}” is no figure with a unit. The mapping says under decimal which sign it has.':
    '“{0} {1}” no es ninguna cifra con unidad. La asignación dice en decimal qué signo tiene.',
  '“{0}” does not fit into quotes: it has quotes in it, or is too long.':
    '“{0}” no cabe entre comillas: lleva comillas dentro, o es demasiado largo.',
  '“{0}” is no day as {1}. The mapping says under days how they are written.':
    '“{0}” no es ningún día como {1}. La asignación dice en days cómo se escriben.',
  '“{0}” is no name of the job. Say under words what it is called there.':
    '“{0}” no es ningún nombre del trabajo. Decir en words cómo se llama allí.',
  '“{0}” is no place.': '“{0}” no es ningún lugar.',
  '{0} does not say which unit a row is of: give unit (its place in the set) or serial.':
    '{0} no dice de qué unidad es una fila: dar unit (su lugar en el juego) o serial.',
  '{0} is the record of a closed job: it has its certificate, and no sheet. Print that: npx handtight certificate {1}':
    '{0} es el registro de un trabajo cerrado: tiene su certificado, y ninguna hoja. Imprimir ese: npx handtight certificate {1}',
};
