import type { Bundle } from '../bundle.ts';

export const family: Bundle = {
  'The {0} rests on the {1}.': '{0} liegt auf {1}.',
  ', which rests on the ': ', das liegt auf ',
  'none of them can be fitted first.': 'keines davon lässt sich zuerst einbauen.',
  'Delete one “on”, “in” or “through”.': 'Ein „on“, „in“ oder „through“ löschen.',
  'Nothing says how the {0} face of the {1} is finished.': 'Nichts sagt, wie die Fläche {0} an {1} bearbeitet ist.',
  'no rule makes sure that it is inspected, guarded and kept off the wheel.':
    'keine Regel achtet darauf, dass sie kontrolliert, geschützt und von der Scheibe ferngehalten wird.',
  'Write lapped or ground, or delete the face if it needs no care.':
    'lapped oder ground schreiben, oder die Fläche löschen, wenn sie keine Sorgfalt braucht.',
  'The {0} face of the {1} is lapped but meets no other face.':
    'Die Fläche {0} an {1} ist geläppt, trifft aber auf keine andere.',
  'nothing says when it is covered, so it always counts as bare.':
    'nichts sagt, wann sie bedeckt ist, also gilt sie immer als frei.',
  'Write “meets” and the face that it closes against.': '„meets“ und die Fläche schreiben, gegen die sie schließt.',
  '{0} meets {1}, but neither the {2} nor the {3} is declared to touch the other.':
    '{0} trifft auf {1}, aber weder bei {2} noch bei {3} ist angegeben, dass sie sich berühren.',
  'a face cannot be covered by a part that does not touch it, so it could stay bare unnoticed.':
    'ein Teil, das die Fläche nicht berührt, kann sie nicht bedecken, und sie bliebe unbemerkt frei.',
  'Write “on” at the part that lies on the other, or correct the name of the face.':
    'Bei dem Teil, das auf dem anderen liegt, „on“ schreiben, oder den Namen der Fläche berichtigen.',
  'The {0} is a joint but holds nothing.': '{0} ist eine Verbindung, hält aber nichts.',
  'the parts that it keeps in could come out before it, and a test would still count after it was slackened.':
    'die Teile, die sie hält, könnten vor ihr herauskommen, und eine Prüfung gälte noch, nachdem sie gelöst wurde.',
  'Write “holds” and the parts at part {0}; for a plug or a connector, write the port that is under it or on it.':
    'Beim Teil {0} „holds“ und die Teile schreiben; bei einem Stopfen oder Anschlussstück den Anschluss darunter oder darauf.',
  '{0} is declared here.': '{0} ist hier angegeben.',
  'The {0} has to be located, but nothing says by what.': '{0} muss fixiert werden, aber nichts sagt, wodurch.',
  'the bench hand does not know what to look for, and a step that forgets to locate it goes unnoticed.':
    'der Monteur weiß nicht, worauf er achten soll, und ein Schritt, der die Fixierung vergisst, fällt nicht auf.',
  'Write “located by "…"” in the family, or here.': 'In der Baureihe oder hier „located by "…"“ schreiben.',
  'The {0} is locked here, but it locks no adjuster of the family.':
    '{0} wird hier gekontert, sichert aber keine Einstellung der Baureihe.',
  'a setting that is left unlocked would go unnoticed.': 'eine ungesicherte Einstellung fiele nicht auf.',
  'Write “locked by {0}” at the adjuster; for a joint that locks nothing, write “torque”.':
    'Bei der Einstellung „locked by {0}“ schreiben; bei einer Verbindung, die nichts sichert, „torque“.',
  'Marks have to be lined up, but the family declares no marks on the {0}.':
    'Markierungen sollen ausgerichtet werden, aber in der Baureihe sind keine angegeben: {0}.',
  'the bench hand does not know what to line up with what.': 'der Monteur weiß nicht, was er woran ausrichten soll.',
  'Write “marks "…"” at the part in the family, or describe the marks here in quotes.':
    'In der Baureihe beim Teil „marks "…"“ schreiben, oder die Markierungen hier in Anführungszeichen beschreiben.',
  slackened: 'gelöst',
  'run down': 'handfest angezogen',
  torqued: 'angezogen',
  locked: 'gekontert',
  'The {0} is {1} here, but the family declares no joint for it.':
    '{0} wird hier {1}, aber in der Baureihe ist keine Verbindung dafür angegeben.',
  'leaving it loose, or taking it off tight, would go unnoticed.':
    'bliebe es locker oder würde es fest ausgebaut, fiele das nicht auf.',
  'In the family, write “joint {0} to” and the part that it is screwed to.':
    'In der Baureihe „joint {0} to“ und das Teil schreiben, an das es geschraubt ist.',
  'The face is declared here.': 'Die Fläche ist hier angegeben.',
  '{0} is guarded here, but the family names no guard for it.':
    '{0} wird hier geschützt, aber die Baureihe nennt keinen Schutz dafür.',
  'a step that forgets the guard goes unnoticed.': 'ein Schritt, der den Schutz vergisst, fällt nicht auf.',
  'Write “guarded by {0}” at the face in the family.': 'In der Baureihe bei der Fläche „guarded by {0}“ schreiben.',
  'The guard of {0} is the {1}, but this step uses the {2}.':
    'Der Schutz für {0} ist {1}, aber dieser Schritt nimmt {2}.',
  'a part that does not fit the face does not cover it.':
    'ein Teil, das nicht auf die Fläche passt, bedeckt sie nicht.',
  'Write “guard {0} with {1}”, or correct the face in the family.':
    '„guard {0} with {1}“ schreiben, oder die Fläche in der Baureihe berichtigen.',
  ', such as {0}': ', zum Beispiel {0}',
  'The {0} is chosen here, but the family does not say from which stock.':
    '{0} wird hier ausgewählt, aber die Baureihe sagt nicht, aus welchem Vorrat.',
  'the next size cannot be worked out, and the bench hand takes whatever is at hand.':
    'das nächste Maß lässt sich nicht ausrechnen, und der Monteur nimmt, was gerade da ist.',
  'Write “chosen from” and a stock of the shop{0}, at part {1}.':
    'Beim Teil {1} „chosen from“ und einen Vorrat der Werkstatt schreiben{0}.',
  'The {0} is chosen from {1}, but the shop has no stock of that name.':
    '{0} wird aus {1} ausgewählt, aber die Werkstatt hat keinen Vorrat dieses Namens.',
  'nobody knows which sizes there are.': 'niemand weiß, welche Maße es gibt.',
  'Write “stock {0}” in the shop, or name a stock that it has{1}.':
    'In der Werkstatt „stock {0}“ schreiben, oder einen vorhandenen Vorrat nennen{1}.',
  'The joint is declared here.': 'Die Verbindung ist hier angegeben.',
  'The {0} is oiled before it is torqued, but nothing says that the torque is for oiled threads.':
    '{0} wird vor dem Anziehen geölt, aber nichts sagt, dass das Drehmoment für geölte Gewinde gilt.',
  'the same torque clamps a dry joint far less.': 'dasselbe Drehmoment spannt eine trockene Verbindung viel weniger.',
  'Write “threads oiled” at the joint or at the torque, or leave out the oil.':
    'An der Verbindung oder am Drehmoment „threads oiled“ schreiben, oder das Öl weglassen.',
  'The {0} and the {1} are always renewed together here, but the family does not say that they are a pair.':
    '{0} und {1} werden hier immer zusammen ersetzt, aber die Baureihe sagt nicht, dass sie ein Paar sind.',
  'one of them could go into another unit unnoticed.': 'eines davon könnte unbemerkt in eine andere Einheit geraten.',
  'If they are lapped together, write “matched to {0}” at part {1}.':
    'Sind sie aufeinander geläppt, beim Teil {1} „matched to {0}“ schreiben.',
  'The unit is taken apart, but no step names the {0}.': 'Die Einheit wird zerlegt, aber kein Schritt nennt {0}.',
  'it is neither taken off nor washed nor fitted, and nobody will miss it.':
    'es wird weder ausgebaut noch gewaschen noch eingebaut, und niemand wird es vermissen.',
  'Name it where it comes off and where it goes back on, or delete it from the family.':
    'Nennen, wo es ausgebaut und wo es wieder eingebaut wird, oder aus der Baureihe löschen.',
  'Nothing says what the {0} rests on.': 'Nichts sagt, worauf {0} liegt.',
  'a step that takes it off or fits it out of order goes unnoticed.':
    'ein Schritt, der es in falscher Reihenfolge aus- oder einbaut, fällt nicht auf.',
  'Write “on”, “in” or “through” and the part that it rests on, such as “on {0}”.':
    '„on“, „in“ oder „through“ und das Teil schreiben, auf dem es liegt, zum Beispiel „on {0}“.',
  'The family is declared here.': 'Die Baureihe ist hier angegeben.',
  'another procedure that forgets it would check clean.': 'eine andere Anweisung, die es vergisst, bliebe ohne Befund.',
  '{0} is tested, but the family does not say what proves a unit.':
    '{0} wird geprüft, aber die Baureihe sagt nicht, was eine Einheit nachweist.',
  'Write “proven by” and the tests that every unit must pass in the family.':
    'In der Baureihe „proven by“ und die Prüfungen schreiben, die jede Einheit bestehen muss.',
  '{0} is set and tested, but is not among the tests that prove the family.':
    '{0} wird eingestellt und geprüft, gehört aber nicht zu den Prüfungen der Baureihe.',
  'Add {0} to “proven by” in the family.': '{0} in der Baureihe bei „proven by“ ergänzen.',
  '{0} is compared across the set, but the family does not require that.':
    '{0} wird im ganzen Satz verglichen, aber die Baureihe verlangt das nicht.',
  'Write “proven across the set by {0}” in the family.': 'In der Baureihe „proven across the set by {0}“ schreiben.',
  'Nothing holds the {0} on the {1}.': 'Nichts hält {0} auf {1}.',
  'a spring there would jump out, and the sheet could have it removed before the part that holds it.':
    'eine Feder spränge dort heraus, und das Blatt könnte sie vor dem Teil ausbauen lassen, das sie hält.',
  'Write “holds {0}” at the screw, plug or nut over it.':
    'Bei der Schraube, dem Stopfen oder der Mutter darüber „holds {0}“ schreiben.',
};
