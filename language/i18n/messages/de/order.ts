import type { Bundle } from '../bundle.ts';

export const order: Bundle = {
  '{0} is shut in under the {1}.': '{0} ist unter {1} eingeschlossen.',
  'The {0}': '{0}',
  'nobody can reach it{0}.': 'niemand kommt heran{0}.',
  ', and what the wire pushes in stays in': ', und was der Draht hineindrückt, bleibt drin',
  'Slacken and remove {0}, and whatever is in between, before this step.':
    '{0} und alles dazwischen vor diesem Schritt lösen und ausbauen.',
  were: 'wurden',
  was: 'wurde',
  'The {0} {1} discarded, and there is no new one {2}.': '{0} {1} entsorgt, und {2} gibt es keinen Ersatz.',
  '{0} not come in the kit, and the unit would be built without {1}.':
    '{en0, select, they_do {sie sind} other {es ist}} nicht im Reparatursatz, und die Einheit würde unvollständig zusammengebaut.',
  'they do': 'sie',
  'it does': 'es',
  'Write “renew {0}” and fit {1} first. If the old {2} good, write remove instead of discard.':
    '„renew {0}“ schreiben und zuerst einbauen. Ist das alte Teil gut, remove statt discard schreiben.',
  'ones are': 'die alten sind',
  'one is': 'das alte ist',
  'when the {0} goes over {1}': 'beim Aufsetzen von {0}',
  'at the end': 'am Ende',
  'The {0} is still in its own place when it has to guard {1}.':
    '{0} ist noch am eigenen Platz, soll aber {1} schützen.',
  'a face': 'eine Fläche',
  'it cannot be in two places, and the face is not bare yet.':
    'an zwei Stellen zugleich geht nicht, und die Fläche liegt noch gar nicht frei.',
  'Write “remove {0}” before this step, with the parts under it.':
    '„remove {0}“ vor diesen Schritt schreiben, mit den Teilen darunter.',
  'Take it off first': 'Zuerst ausbauen',
  'The {0} is still tight when it is taken off.': '{0} ist beim Ausbauen noch fest.',
  'breaking a joint loose takes its own step, with the unit held and the tool for it named.':
    'eine Verbindung zu lösen ist ein eigener Schritt, mit gehaltener Einheit und benanntem Werkzeug.',
  'Write “slacken {0}” first, while the unit is held.':
    'Vorher „slacken {0}“ schreiben, solange die Einheit gehalten wird.',
  'Slacken {0} first': 'Zuerst {0} lösen',
  'The {0} was slackened and is not tight again when pressure comes on.':
    '{0} wurde gelöst und ist nicht wieder fest, wenn Druck aufkommt.',
  'it leaks or lets go, and fluid at test pressure goes through skin.':
    'es leckt oder springt ab, und Flüssigkeit unter Prüfdruck dringt durch die Haut.',
  'Torque {0} before this step, or delete the step that slackens it.':
    '{0} vor diesem Schritt mit Drehmoment anziehen, oder den Schritt löschen, der es löst.',
  'The {0} was slackened, and is neither off nor tight again when the unit leaves.':
    '{0} wurde gelöst und ist weder ausgebaut noch wieder fest, wenn die Einheit das Haus verlässt.',
  'it comes loose on the engine.': 'es lockert sich am Motor.',
  '{0} {1} again, or delete the step that slackens it.':
    '{1} wieder {en0, select, Run_down {handfest} other {mit Drehmoment}} anziehen, oder den Schritt löschen, der es löst.',
  'Run down': 'Handfest anziehen',
  Torque: 'Mit Drehmoment anziehen',
  'The {0} is only hand-tight when {1} is tested.': '{0} ist nur handfest, wenn {1} geprüft wird.',
  'it can leak or let go under pressure.': 'es kann unter Druck lecken oder abspringen.',
  'Torque it before this test.': 'Vor dieser Prüfung mit Drehmoment anziehen.',
  'The {0} is only hand-tight when the unit leaves.': '{0} ist nur handfest, wenn die Einheit das Haus verlässt.',
  'it will come loose on the engine.': 'es lockert sich am Motor.',
  'Torque it, or write “hand-tight is final” at the joint in the family.':
    'Mit Drehmoment anziehen, oder in der Baureihe an der Verbindung „hand-tight is final“ schreiben.',
  'The {0} has marks ({1}), but this step does not line them up.':
    '{0} hat Markierungen ({1}), aber dieser Schritt richtet sie nicht aus.',
  'it goes on in the wrong position as easily as in the right one.':
    'es geht falsch herum genauso leicht hinein wie richtig.',
  'Write “with marks aligned”.': '„with marks aligned“ schreiben.',
  'Line the marks up': 'Markierungen ausrichten',
  bear: 'drücken',
  bears: 'drückt',
  'The {0} on the {1} {2} on nothing, and nothing holds {3}.': '{0} auf {1} {2} auf nichts, und nichts hält {3}.',
  'the spring would load nothing, and a unit closed without {0} would go unnoticed.':
    'die Feder würde nichts belasten, und es fiele nicht auf, wenn die Einheit ohne {0} geschlossen wird.',
  'At part {0}, write what it presses on{1}.': 'Beim Teil {0} schreiben, worauf es drückt{1}.',
  ', such as “bears on {0}”': ', zum Beispiel „bears on {0}“',
  'The {0} bears on nothing, and nothing holds it.': '{0} drückt auf nichts, und nichts hält es.',
  'it would set nothing, and a unit closed without it would go unnoticed.':
    'es würde nichts einstellen, und es fiele nicht auf, wenn die Einheit ohne es geschlossen wird.',
  'At part {0}, write “bears on” and the part that it comes up against.':
    'Beim Teil {0} „bears on“ und das Teil schreiben, gegen das es drückt.',
  'The new {0} {1} in with the preservative still on.': '{0} {1} neu und noch konserviert hinein.',
  go: 'gehen',
  goes: 'geht',
  'it gums up lapped fits and holds grit.': 'die Konservierung verklebt geläppte Passungen und hält Schmutz fest.',
  'Write “rinse {0}{1}” before this step, or “ready to fit” if {2} clean in a bag.':
    '„rinse {0}{1}“ vor diesen Schritt schreiben, oder „ready to fit“, wenn {2} sauber im Beutel kommt.',
  ' in {0}': ' in {0}',
  'they come': 'alles',
  'it comes': 'es',
  'Rinse it first': 'Zuerst spülen',
  '{0} fasteners hold the {1} down, but nothing says in which order they are torqued.':
    '{0} Schrauben halten {1}, aber nichts sagt, in welcher Reihenfolge sie angezogen werden.',
  'tightened on one side first, it tilts, warps and leaks on the other side.':
    'zuerst an einer Seite angezogen, verkantet und verzieht es sich und leckt an der anderen.',
  'Torque in cross pattern': 'Über Kreuz anziehen',
  'After this, write “check {0} {1} "…"” with how it should feel.':
    'Danach „check {0} {1} "…"“ schreiben, und wie es sich anfühlen muss.',
  'Write “proves through {0}” in the check at {1}, so that the unit goes back to it, or check the part here.':
    'In der Kontrolle in {1} „proves through {0}“ schreiben, damit die Einheit dorthin zurückkommt, oder das Teil hier kontrollieren.',
  'The {0} must move freely, but no step after this checks whether it does.':
    '{0} muss sich frei bewegen, aber kein späterer Schritt kontrolliert das.',
  'a tightened joint can bind it, and then it sticks on the engine.':
    'eine angezogene Verbindung kann es einklemmen, und dann hängt es am Motor.',
  'Nothing holds the unit while the {0} is {1}.': 'Nichts hält die Einheit, während {0} {1} wird.',
  'broken loose': 'gelöst',
  'it turns in the hand, and the wrench slips': 'sie dreht sich in der Hand, und der Schlüssel rutscht ab',
  'it turns in the hand, and the torque is not what the wrench shows':
    'sie dreht sich in der Hand, und das Drehmoment ist nicht das, was der Schlüssel zeigt',
  'Clamp it first, or write “held by "…"” in this step.':
    'Zuerst einspannen, oder in diesem Schritt „held by "…"“ schreiben.',
  'The {0} goes on the {1}, which {2} not in place yet.': '{0} gehört auf etwas, das noch nicht eingebaut ist ({1}).',
  'there is nothing to fit it on, and the bench hand stops or guesses what is missing.':
    'es gibt nichts, worauf es passt, und der Monteur hält an oder rät, was fehlt.',
  'Fit {0} first, or in the same step.': 'Zuerst {0} einbauen, oder im selben Schritt.',
  those: 'diese Teile',
  that: 'dieses Teil',
  'The {0} {1} always renewed, but the old {2} back in.':
    'Stets zu ersetzen ({0}), aber das alte Teil kommt wieder hinein.',
  'ones go': 'die alten gehen',
  'one goes': 'das alte geht',
  'a used one does not seal or hold a second time.': 'ein gebrauchtes dichtet oder hält kein zweites Mal.',
  'Write “discard” instead of “remove” where {0} off, or write “renew {1}” before this step.':
    'Beim Ausbauen „discard“ statt „remove“ schreiben, oder „renew {1}“ vor diesen Schritt.',
  'The {0} {1} discarded, and there is no new one to fit.':
    '{0} {1} entsorgt, und es gibt kein neues Teil zum Einbauen.',
  'the scrapped one goes back in, or the unit waits for a new one.':
    'das Schrottteil kommt wieder hinein, oder die Einheit wartet auf ein neues.',
  'Write “renew {0}” before this step. If the old one is good, write remove instead of discard.':
    '„renew {0}“ vor diesen Schritt schreiben. Ist das alte Teil gut, remove statt discard schreiben.',
  'tight or run down': 'fest oder handfest',
  off: 'ausgebaut',
  'in place': 'eingebaut',
  'The {0} {1} already {2}.': '{0} {1} schon {2}.',
  'the bench hand looks for what is not there, and wonders which step was left out.':
    'der Monteur sucht, was nicht da ist, und fragt sich, welcher Schritt fehlt.',
  '{0}, or add the missing step in between.': '{0}, oder den fehlenden Schritt dazwischen ergänzen.',
  'Slacken it first': 'Zuerst lösen',
  'Delete this': 'Diesen Schritt löschen',
  'they are': 'sie',
  'it is': 'es',
  'The {0} {1} at {2} when {3} fitted at {4}, and no step brings {5} over.':
    '{0} {1} noch hier: {2}. Eingebaut wird aber hier: {4}. Kein Schritt bringt {5} hin.',
  'the bench hand reaches into an empty tray.': 'der Monteur greift in eine leere Schale.',
  'Write “send {0} to {1}” after the work on {2} is done.': 'Nach der Arbeit daran „send {0} to {1}“ schreiben.',
  'The {0} {1} not in place when the {2} closes over {3}.': '{0} {1} nicht eingebaut, wenn {2} darüber schließt.',
  'the unit would be built without {0}.': 'die Einheit würde unvollständig zusammengebaut.',
  'Fit {0} before this step.':
    '{en0, select, it {Vor diesem Schritt einbauen.} them {Vor diesem Schritt einbauen.} other {{0} vor diesem Schritt einbauen.}}',
  'At the end the {0} {1} {2}.': 'Am Ende {1} {0} {2}.',
  'the unit would leave without {0}.': 'die Einheit würde unvollständig das Haus verlassen.',
  '{0} in the family.': '{0}.',
  'Fit them, or write “supplied loose” at these parts':
    'Einbauen, oder in der Baureihe bei diesen Teilen „supplied loose“ schreiben',
  'Fit it, or write “supplied loose” at the part':
    'Einbauen, oder in der Baureihe beim Teil „supplied loose“ schreiben',
  'in place for trial only': 'nur zur Probe eingebaut',
  'on as a guard only': 'nur als Schutz aufgesetzt',
  'not in place': 'nicht eingebaut',
  'The {0} is located by {1}, but this step does not say so.':
    '{0} wird durch {1} fixiert, aber dieser Schritt sagt es nicht.',
  'forced on out of position, it shears a dowel or gets torqued crooked.':
    'versetzt hineingezwungen, schert es einen Stift ab oder wird schief angezogen.',
  'Write “{0} located”.': '„{0} located“ schreiben.',
  'Say that it is located': 'Die Fixierung angeben',
  'The {0} cannot come off yet.': '{0} lässt sich noch nicht ausbauen.',
  'the {0} {1} still in place over it.': '{0} {1} noch darüber eingebaut.',
  'Take {0} off first, or in the same step.': 'Zuerst {0} ausbauen, oder im selben Schritt.',
  'The {0} is set but not locked when {1} is tested.':
    '{0} ist eingestellt, aber nicht gekontert, wenn {1} geprüft wird.',
  'tightening the {0} moves it, and the unit leaves with another figure than the sheet shows.':
    'beim Anziehen ({0}) verstellt es sich, und die Einheit geht mit einem anderen Wert hinaus, als auf dem Blatt steht.',
  'Write “lock {0}” before this test.': '„lock {0}“ vor diese Prüfung schreiben.',
  'The {0} is still tight when the {1} is turned.': '{0} ist noch fest, wenn {1} gedreht wird.',
  'it does not turn, or its thread or slot gives way.': 'es dreht sich nicht, oder Gewinde oder Schlitz geben nach.',
  'Write “slacken {0}” before this step, with the pressure off.':
    '„slacken {0}“ vor diesen Schritt schreiben, ohne Druck.',
  'The {0} is not locked when the unit leaves.': '{0} ist nicht gekontert, wenn die Einheit das Haus verlässt.',
  'it turns by itself on the engine, and the setting is lost.':
    'es verdreht sich am Motor von selbst, und die Einstellung ist verloren.',
  'After it is set, write “lock {0}” with its torque.': 'Nach dem Einstellen „lock {0}“ mit dem Drehmoment schreiben.',
  'The {0} still loads the {1} when the {2} is {3}.': '{0} belastet noch {1}, wenn {2} {3} wird.',
  '{0}, and it bends.': '{0}, und es verbiegt sich.',
  'the spring pushes it aside down to the last thread': 'die Feder drückt es bis zum letzten Gewindegang zur Seite',
  'it cannot sit square under that load while the joint is tightened':
    'unter dieser Last sitzt es beim Anziehen nicht gerade',
  'Write “back-off {0}” before this step.': '„back-off {0}“ vor diesen Schritt schreiben.',
  'Back the adjuster off first': 'Zuerst die Einstellung zurückdrehen',
  'The unit is already clamped.': 'Die Einheit ist schon eingespannt.',
  'the bench hand has to guess whether to clamp it another way.':
    'der Monteur muss raten, ob er anders einspannen soll.',
  'Unclamp it first, or delete this.': 'Zuerst ausspannen, oder dies löschen.',
  'The unit is not clamped here, so there is nothing to unclamp.':
    'Hier ist die Einheit nicht eingespannt, es gibt nichts auszuspannen.',
  'a step that needed the clamp may have been done without it.':
    'ein Schritt, der die Spannung brauchte, wurde vielleicht ohne sie gemacht.',
  'Delete this, or add the missing clamp step before it.':
    'Dies löschen, oder davor den fehlenden Schritt clamp ergänzen.',
  'The unit leaves {0} while it is still clamped.': 'Die Einheit verlässt den Arbeitsplatz ({0}) noch eingespannt.',
  'the sheet sends the unit on while the vise still holds it.':
    'das Blatt schickt die Einheit weiter, während der Schraubstock sie noch hält.',
  'Unclamp it at the end of this stage.': 'Am Ende dieses Arbeitsgangs ausspannen.',
  'The procedure ends with the unit still clamped.': 'Die Anweisung endet mit eingespannter Einheit.',
  'the sheet ends while the vise still holds the unit.':
    'das Blatt endet, während der Schraubstock die Einheit noch hält.',
  'Unclamp it.': 'Ausspannen.',
  'The {0} is torqued before it is run down by hand.':
    '{0} wird mit Drehmoment angezogen, bevor es von Hand eingedreht ist.',
  'a crossed thread would go unnoticed.': 'ein schief angesetztes Gewinde fiele nicht auf.',
  'Run it down first.': 'Zuerst von Hand eindrehen.',
  'The {0} is torqued while the {1} inside {2} not in place.':
    '{0} wird mit Drehmoment angezogen, während innen {1} fehlt.',
  'the unit is closed without what belongs inside.': 'die Einheit wird ohne das geschlossen, was hineingehört.',
  'Fit {0} first.': '{en0, select, it {Zuerst einbauen.} them {Zuerst einbauen.} other {Zuerst {0} einbauen.}}',
  'The {0} carries port {1}, but is only hand-tight when pressure comes on.':
    '{0} trägt den Anschluss {1}, ist aber nur handfest, wenn Druck aufkommt.',
  'it leaks at its thread, and the leak is blamed on the unit.':
    'es leckt am Gewinde, und die Schuld bekommt die Einheit.',
  'Torque {0} before this step.': '{0} vor diesem Schritt mit Drehmoment anziehen.',
  'The {0} goes under the {1}, which {2} already on.': '{0} gehört unter etwas, das schon eingebaut ist ({1}).',
  'it cannot get past {0}, and a hand that forces it scores both parts.':
    'daran kommt es nicht vorbei, und mit Gewalt werden beide Teile verkratzt.',
  'Fit it earlier, or take {0} off first.': 'Früher einbauen, oder zuerst {0} ausbauen.',
  '{0} still has its guard on when the {1} goes in.': '{0} trägt noch den Schutz, wenn {1} hineingeht.',
  'the guard is in the way, or is built in.': 'der Schutz ist im Weg oder wird eingebaut.',
  'Remove the {0} first.': 'Zuerst {0} ausbauen.',
  'The {0} cannot be turned while the {1} {2} on.':
    '{0} lässt sich nicht drehen, solange {1} darauf {en2, select, are {sitzen} other {sitzt}}.',
  'nothing reaches it there, and the setting leaves unlocked, or is locked by the cap alone.':
    'dort kommt nichts heran, und die Einstellung geht ungekontert hinaus oder wird nur von der Kappe gehalten.',
  'Take the {0} off before this step, and put {1} on when the lock is tight.':
    '{0} vor diesem Schritt abnehmen, und erst aufsetzen, wenn fest gekontert ist.',
  'The {0} is lined up when the {1} {2} tight already.': '{0} wird ausgerichtet, wenn {1} schon fest {2}.',
  'it no longer moves, or it is forced and what holds it is loose again.':
    'es bewegt sich nicht mehr, oder mit Gewalt lockert sich wieder, was es hält.',
  'Line it up when the joint is hand-tight, before it is torqued.':
    'Ausrichten, wenn die Verbindung handfest ist, vor dem Anziehen mit Drehmoment.',
  'The {0} is {1} after it was marked.': '{0} wird nach dem Kennzeichnen {1}.',
  'the wheel takes the mark off or makes it unreadable, and the unit cannot be led back to its job.':
    'die Scheibe nimmt die Kennzeichnung weg oder macht sie unlesbar, und die Einheit lässt sich ihrem Auftrag nicht mehr zuordnen.',
  'Mark it after this step.': 'Nach diesem Schritt kennzeichnen.',
  'Write “in cross pattern”, or the order in words: in "…".':
    '„in cross pattern“ schreiben, oder die Reihenfolge in Worten: in "…".',
  'The {0} {1} always renewed, but {2} in place while the joint over {3} is released and tightened again.':
    'Stets zu ersetzen ({0}), {2} aber eingebaut, während die Verbindung darüber gelöst und wieder angezogen wird.',
  stay: 'bleiben',
  stays: 'bleibt',
  'Write “discard {0}” where the joint is open, and “fit {1}” before it is tightened. Where the family renews it at a rebuild only, write “renewed at rebuild” there.':
    '„discard {0}“ schreiben, wo die Verbindung offen ist, und „fit {1}“, bevor sie angezogen wird. Wird es nur bei der Instandsetzung ersetzt, in der Baureihe „renewed at rebuild“ schreiben.',
  'The {0} went in new, but {1} been tightened and released since, and {2} back in.':
    '{0} {en1, select, have {wurden} other {wurde}} neu eingebaut, aber seither angezogen und gelöst, und {en2, select, go {kommen} other {kommt}} wieder hinein.',
  have: 'haben',
  has: 'hat',
  'If a new one is needed at a rebuild only, write “renewed at rebuild” in the family.':
    'Braucht es nur bei der Instandsetzung ein neues, in der Baureihe „renewed at rebuild“ schreiben.',
  'The {0} is built in dry, and nothing puts oil on it before it moves.':
    '{0} wird trocken eingebaut, und vor der ersten Bewegung kommt kein Öl daran.',
  'the first turns run metal on metal, before any oil gets there.':
    'die ersten Umdrehungen laufen Metall auf Metall, bevor Öl hinkommt.',
  'Write “oil {0} with” and the oil before this step, or “fitted dry” in the family if it runs dry.':
    'Vor diesem Schritt „oil {0} with“ und das Öl schreiben, oder in der Baureihe „fitted dry“, wenn es trocken läuft.',
  'The {0} is let go while the {1} is not in place.': '{0} wird losgelassen, während {1} nicht eingebaut ist.',
  'nothing holds it then, and it flies.': 'nichts hält dann, und die Feder fliegt weg.',
  'Fit the {0} first, and let the spring go into it.': 'Zuerst {0} einbauen, und die Feder hinein entlasten.',
  'The {0} holds the {1}, and {2} while nothing else holds it.': '{0} hält {1} und {2}, während sonst nichts hält.',
  'goes on': 'wird eingebaut',
  'comes off': 'wird ausgebaut',
  'a loaded spring flies into the face of whoever lets it go.':
    'eine gespannte Feder fliegt dem ins Gesicht, der sie loslässt.',
  'Write “compress {0} in "…"” before this step{1}.': 'Vor diesem Schritt „compress {0} in "…"“ schreiben{1}.',
  ', and “release” when it is out': ', und „release“, wenn es ausgebaut ist',
  'The {0} is turned by an angle, which stretches it, and the old one goes back in unmeasured.':
    '{0} wird um einen Winkel gedreht und dabei gestreckt, und das alte Teil kommt ungemessen wieder hinein.',
  'a bolt that has yielded once necks at the second turn, and holds less or breaks.':
    'eine Schraube, die einmal über die Streckgrenze ging, schnürt sich beim zweiten Mal ein und hält weniger oder bricht.',
  'Write “renewed” at {0} in the family, or measure its length against a limit before it goes in.':
    'In der Baureihe bei {0} „renewed“ schreiben, oder vor dem Einbau die Länge gegen einen Grenzwert messen.',
  'The {0} is oiled when it is already run down.': '{0} wird geölt, wenn es schon eingedreht ist.',
  'The {0} is oiled while it is on as a guard.': '{0} wird geölt, während es als Schutz aufgesetzt ist.',
  'no oil gets between the threads there, and the torque goes into friction instead of clamp.':
    'dort kommt kein Öl mehr ins Gewinde, und das Drehmoment geht in Reibung statt in Klemmkraft.',
  'Oil it before “run-down {0}”.': 'Vor „run-down {0}“ ölen.',
  'The {0} is run down dry, and the family says “threads oiled”.':
    '{0} wird trocken eingedreht, und die Baureihe sagt „threads oiled“.',
  'dry, the same torque gives far less clamp, and the threads gall.':
    'trocken ergibt dasselbe Drehmoment viel weniger Klemmkraft, und das Gewinde frisst.',
  'Write “oil {0} with” and the oil before this step.': 'Vor diesem Schritt „oil {0} with“ und das Öl schreiben.',
  'The {0} {1} clamped at {2}, and the {3} {4} unclamped here.':
    '{0} {1} in {2} eingespannt, aber hier {en4, select, are {werden} other {wird}} {3} ausgespannt.',
  'the hand looks for a second vise, and what is really clamped goes on in it.':
    'der Monteur sucht einen zweiten Schraubstock, und was wirklich eingespannt ist, bleibt eingespannt.',
  'Write “unclamp {0}”, or clamp what is to be held.':
    '„unclamp {0}“ schreiben, oder einspannen, was gehalten werden soll.',
  'Repair {0} sends the unit back to step {1} with the {2} still tight, and the {3} is turned there.':
    'Die Reparatur {0} schickt die Einheit zu Schritt {1} zurück, während {2} noch fest ist, und dort wird gedreht: {3}.',
  'Write “slacken {0}” in the repair, with the pressure off.': 'In die Reparatur „slacken {0}“ schreiben, ohne Druck.',
};
