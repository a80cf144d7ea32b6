import type { Bundle } from '../bundle.ts';

export const traceability: Bundle = {
  'which calibration was in force, and who did it, depends on the day.':
    'vom Tag hängt ab, welche Kalibrierung galt und wer es war.',
  'nobody answers for it.': 'niemand steht dafür ein.',
  'the certificate is not made out without it.': 'ohne das wird die Bescheinigung nicht ausgestellt.',
  'the unit cannot go out like this.': 'so darf die Einheit nicht hinaus.',
  'the certificate shows the unit as it goes out.': 'die Bescheinigung zeigt die Einheit, wie sie hinausgeht.',
  'the unit may be outside although the gauge says it is inside.':
    'die Einheit kann außerhalb liegen, obwohl die Anzeige innerhalb liegt.',
  'one of the two is wrong, or work is missing from the paper.':
    'eines von beiden ist falsch, oder auf dem Papier fehlt Arbeit.',
  'the serial is all that leads from a unit to its papers.':
    'nur die Seriennummer führt von einer Einheit zu ihren Papieren.',
  'the engine runs unevenly, although each of them passes.': 'der Motor läuft unrund, obwohl jede für sich besteht.',
  'nothing shows that the tool was right.': 'nichts belegt, dass das Werkzeug richtig angezeigt hat.',
  'whoever certifies a figure says what showed it.': 'wer einen Wert bescheinigt, sagt, womit er abgelesen wurde.',
  'Write the tool': 'Das Werkzeug schreiben',
  'The work is held for {0}, who also signs for it.':
    'Die Arbeit wird für {0} angehalten, und dieselbe Person zeichnet sie ab.',
  'a hold is for a second pair of eyes, and people overlook their own mistakes.':
    'angehalten wird für ein zweites Paar Augen, und eigene Fehler übersieht man.',
  'Name somebody else here or at the sign-off, or delete the hold.':
    'Hier oder beim Abzeichnen jemand anderen nennen, oder das Anhalten löschen.',
  'nothing can be judged or worked out from it.': 'damit lässt sich nichts beurteilen oder ausrechnen.',
  'The mark has neither the part number nor the serial number.':
    'Die Kennzeichnung hat weder Teilenummer noch Seriennummer.',
  'when the unit comes back, the mark does not lead to its job.':
    'kommt die Einheit zurück, führt die Kennzeichnung nicht zu ihrem Auftrag.',
  'Write “with number, serial”, or say in the text of the step what is marked.':
    '„with number, serial“ schreiben, oder im Text des Schritts sagen, was gekennzeichnet wird.',
  'Mark it with number and serial': 'Mit Nummer und Seriennummer kennzeichnen',
  'Nobody signs the unit off.': 'Niemand zeichnet die Einheit ab.',
  'without a signature the sheet is not a record.': 'ohne Unterschrift ist das Blatt keine Aufzeichnung.',
  'Write “sign-off by "…"” as the last step.': '„sign-off by "…"“ als letzten Schritt schreiben.',
  'no revision': 'eine Revision',
  'no approval': 'eine Freigabe',
  'no approval date': 'das Datum der Freigabe',
  'The procedure has {0}.': 'Der Anweisung fehlt {0}.',
  'nobody could distinguish its sheet from a draft, or trace a unit to what was valid at the time.':
    'niemand könnte ihr Blatt von einem Entwurf unterscheiden oder feststellen, was für eine Einheit damals galt.',
  'Write “{0}” in its head.': '„{0}“ in den Kopf schreiben.',
  'No step marks the unit.': 'Kein Schritt kennzeichnet die Einheit.',
  'when it comes back, nobody can say what was done to it.':
    'kommt sie zurück, kann niemand sagen, was an ihr gemacht wurde.',
  'Before the last wash, write “mark” and a part, “with number, serial”.':
    'Vor der letzten Wäsche „mark“ und ein Teil schreiben, „with number, serial“.',
  'This step says to write something down, but “do” has no box on the sheet.':
    'Dieser Schritt lässt etwas aufschreiben, aber „do“ hat kein Feld auf dem Blatt.',
  'the reading ends up on a scrap of paper.': 'der Messwert landet auf einem Zettel.',
  'Write “read … as found”, “measure …” or “check …” instead: these have a box for each unit.':
    'Stattdessen „read … as found“, „measure …“ oder „check …“ schreiben: diese haben ein Feld je Einheit.',
  'The unit is sent out here, and nothing books it in before it is tested or signed off.':
    'Die Einheit geht hier außer Haus, und nichts bucht sie ein, bevor sie geprüft oder abgezeichnet wird.',
  'nobody inspects what came back, and the sheet does not say whose work it was.':
    'niemand kontrolliert, was zurückkam, und das Blatt sagt nicht, wessen Arbeit es war.',
  'The unit is booked in here, and no step before sends it out.':
    'Die Einheit wird hier eingebucht, und kein Schritt davor gibt sie außer Haus.',
  'The {0} is booked in here, and no step before sends it out.':
    '{0} wird hier eingebucht, und kein Schritt davor gibt es außer Haus.',
  'the sheet does not say what was to be done to it, or that it ever left.':
    'das Blatt sagt nicht, was daran zu tun war, und nicht, dass es je außer Haus war.',
  'Write “send-out” where it goes.': '„send-out“ schreiben, wo es außer Haus geht.',
  'Nothing says who signs here.': 'Nichts sagt, wer hier unterschreibt.',
  'anybody may, and nobody answers for it.': 'jeder darf, und niemand steht dafür ein.',
  'Write “{0}” with the job title, such as the bench lead.':
    '„{0}“ mit der Funktion schreiben, zum Beispiel the bench lead.',
  'sign-off by "…"': 'sign-off by "…"',
  'hold-for "…"': 'hold-for "…"',
  'It is signed off in step {0}.': 'Abgezeichnet wird in Schritt {0}.',
  'The unit is signed off in step {0} and worked on after that.':
    'Die Einheit wird in Schritt {0} abgezeichnet und danach noch bearbeitet.',
  'the signature vouches for a unit that was not finished.':
    'die Unterschrift steht für eine Einheit, die nicht fertig war.',
  'Move the sign-off after the last step that works on the unit.':
    'Das Abzeichnen hinter den letzten Schritt setzen, der an der Einheit arbeitet.',
  '{0}, but it has no tag.': '{0}, aber die Einheit hat keinen Anhänger.',
  'The unit is put with the rest of its set': 'Die Einheit kommt zu den anderen ihres Satzes',
  'The parts of the unit go to {0}': 'Die Teile der Einheit gehen weiter ({0})',
  "it gets another unit's parts and readings.": 'sie bekommt Teile und Messwerte einer anderen Einheit.',
  'Write “tag” where the unit is received.': '„tag“ schreiben, wo die Einheit angenommen wird.',
  'The {0} is sent out here, and nothing books it in before the unit is tested or signed off.':
    '{0} geht hier außer Haus, und nichts bucht es ein, bevor die Einheit geprüft oder abgezeichnet wird.',
  'Job {0} is worked by revision {1}, and revision {2} was issued on {3}.':
    'Auftrag {0} wird nach Revision {1} bearbeitet, und Revision {2} wurde am {3} ausgegeben.',
  'what was changed since is not done in these units, and their sheet shows the older limits.':
    'was seither geändert wurde, wird an diesen Einheiten nicht gemacht, und ihr Blatt zeigt die älteren Grenzwerte.',
  'See which results hold over: npx handtight move {0} --to {1}. Or finish the job by {2}, if what was changed does not concern it.':
    'Nachsehen, welche Ergebnisse weiter gelten: npx handtight move {0} --to {1}. Oder den Auftrag nach {2} abschließen, wenn ihn die Änderung nicht betrifft.',
  'Nothing is written down yet: write revision {0}, and print the sheet again.':
    'Noch ist nichts eingetragen: revision {0} schreiben und das Blatt neu drucken.',
  'Write revision {0}': 'revision {0} schreiben',
  'Serial {0} is in work in job {1} too, as unit {2} there.':
    'Seriennummer {0} ist auch in Auftrag {1} in Arbeit, dort als Einheit {2}.',
  'of one body there would be two papers, and nobody could say later which readings are its own.':
    'zu einem Körper gäbe es zwei Papiere, und niemand könnte später sagen, welche Messwerte seine eigenen sind.',
  'Read the serial again from the body. If it is the same unit, finish it in one of the two jobs, or put it on hold there. If two makers gave the same serial, write the part number of each.':
    'Die Seriennummer noch einmal am Körper ablesen. Ist es dieselbe Einheit, sie in einem der beiden Aufträge fertigstellen oder dort sperren. Haben zwei Hersteller dieselbe Seriennummer vergeben, zu jeder die Teilenummer schreiben.',
  'Unit {0} of job {1}.': 'Einheit {0} von Auftrag {1}.',
  'whoever reads the signature takes the unit for a good one, and it cannot be certified.':
    'wer die Unterschrift liest, hält die Einheit für gut, und ein Zertifikat bekommt sie nicht.',
  'the certificate is not made out on the word of a tool that nobody vouches for.':
    'ein Zertifikat wird nicht auf das Wort eines Werkzeugs ausgestellt, für das niemand einsteht.',
};
