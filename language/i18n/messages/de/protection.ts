import type { Bundle } from '../bundle.ts';

export const protection: Bundle = {
  '{0} is bare {1}.': '{0} liegt frei, {1}.',
  'one knock or one grain of grit scores it, and it leaks.':
    'ein Stoß oder ein Schmutzkorn verkratzt sie, und sie leckt.',
  'Cover it first, and declare in the family what guards it.':
    'Zuerst bedecken, und in der Baureihe angeben, was sie schützt.',
  'The {0} guards it: write “guard {1} with {2}” before this.':
    '{0} schützt sie: davor „guard {1} with {2}“ schreiben.',
  'while the unit waits': 'während die Einheit wartet',
  'while the unit is buffed': 'während die Einheit poliert wird',
  'while the unit is blasted': 'während die Einheit gestrahlt wird',
  'when the unit leaves {0}': 'wenn die Einheit den Arbeitsplatz ({0}) verlässt',
  'when the procedure ends': 'wenn die Anweisung endet',
  'The {0} is fitted at {1}, which is dirty.': '{0} wird an einem schmutzigen Arbeitsplatz eingebaut ({1}).',
  'the dirt on the bench is built in with it.': 'der Schmutz der Werkbank wird mit eingebaut.',
  'Build at a clean station. For a guard write “guard”; for a trial fit add “for trial”.':
    'An einem sauberen Arbeitsplatz zusammenbauen. Für einen Schutz „guard“ schreiben, für einen Probeeinbau „for trial“ ergänzen.',
  '{0} when it is checked.': '{0}, wenn kontrolliert wird.',
  'nobody can see it, and the tick on the sheet means nothing.':
    'niemand kann es sehen, und der Haken auf dem Blatt bedeutet nichts.',
  '{0} is under its guard': '{0} ist unter dem Schutz',
  'Write “remove {0}” before this step': '„remove {0}“ vor diesen Schritt schreiben',
  '{0} is shut by the {1}': '{0} ist durch {1} verdeckt',
  'Check it with the {0} off': 'Kontrollieren, wenn {0} ausgebaut ist',
  'the {0} is shut in under the {1}': '{0} ist unter {1} eingeschlossen',
  'Check it before it goes in, or while it is out': 'Vor dem Einbau kontrollieren, oder solange es ausgebaut ist',
  'The {0} {1} judged dirty.': '{0} {en1, select, are {werden} other {wird}} schmutzig beurteilt.',
  'a crack or a score line hides under the dirt.': 'unter dem Schmutz verbirgt sich ein Riss oder eine Riefe.',
  'Wash {0} first.': 'Zuerst waschen.',
  'The {0} {1} judged wet from the wash.':
    '{0} {en1, select, are {werden} other {wird}} noch nass vom Waschen beurteilt.',
  'a wet film shines like a good face and hides a hairline crack.':
    'ein nasser Film glänzt wie eine gute Fläche und verbirgt einen Haarriss.',
  'Blow {0} dry first.': 'Zuerst trocken blasen.',
  'The cap is still in {0} {1} when the {2} goes over {3}.': 'Die Kappe ist noch am {0} {1}, wenn {2} darüber kommt.',
  ports: 'Anschluss',
  port: 'Anschluss',
  'it stays in the unit and blocks the passage.': 'sie bleibt in der Einheit und verstopft den Kanal.',
  'Write “uncap {0}” before this step, and count the caps.':
    '„uncap {0}“ vor diesen Schritt schreiben, und die Kappen zählen.',
  'The {0} inside {1} in place for trial only when the joint over it ({2}) is tightened.':
    '{0} innen {1} nur zur Probe eingebaut, wenn die Verbindung darüber ({2}) angezogen wird.',
  'a part that was only put in to try would be shipped.': 'ein Teil, das nur zur Probe drin ist, ginge mit hinaus.',
  'Remove {0} and fit {1} for good first.': 'Zuerst ausbauen und endgültig einbauen.',
  '{0} at {1}, which is clean.': '{0}, und das an einem sauberen Arbeitsplatz ({1}).',
  'chips, grit and drips settle on the parts that are built there.':
    'Späne, Staub und Tropfen setzen sich auf die Teile, die dort eingebaut werden.',
  'Do it at another station, before the last wash.': 'An einem anderen Arbeitsplatz machen, vor der letzten Wäsche.',
  'The unit is marked': 'Die Einheit wird gekennzeichnet',
  'It is buffed': 'Es wird poliert',
  'It is blasted': 'Es wird gestrahlt',
  'Parts are washed in {0}': 'Teile werden gewaschen ({0})',
  'The {0} {1} cleaned while the {2} shuts {3} in.':
    '{0} {en1, select, are {werden} other {wird}} gereinigt, während {2} noch {3} einschließt.',
  'neither bath nor rag reaches {0}, and fluid that runs in does not run out.':
    'weder Bad noch Lappen erreicht {0}, und was hineinläuft, läuft nicht heraus.',
  'Take {0} out first, or clean only the outside.': 'Zuerst {0} herausnehmen, oder nur außen reinigen.',
  '{0} is covered here and has not been cleaned{1}.': '{0} wird hier bedeckt und ist nicht gereinigt worden{1}.',
  ' since the unit came in': ' seit der Annahme der Einheit',
  ' since it was dirtied': ' seit der letzten Verschmutzung',
  'one grain of grit between lapped faces holds them apart, and they leak.':
    'ein Schmutzkorn zwischen geläppten Flächen hält sie auseinander, und sie lecken.',
  'The {0} {1} {2} dirty{3}.': '{0} {1} schmutzig {2}{3}.',
  'built on': 'überbaut',
  ', as {0} came in': ', wie angeliefert',
  they: 'sie',
  'the dirt is closed up in the unit.': 'der Schmutz wird in der Einheit eingeschlossen.',
  'Wash or rinse {0} before this step.': '{0} vor diesem Schritt waschen oder spülen.',
  'The {0} {1} still wet with {2} when {3} together.': '{0} {1} beim Zusammenbau noch nass von {2}.',
  'water or detergent': 'Wasser oder Waschmittel',
  solvent: 'Lösemittel',
  'they go': 'sie',
  'it goes': 'es',
  'they rust inside.': 'sie rosten innen.',
  'it strips the oil film inside.': 'es löst innen den Ölfilm ab.',
  'Blow {0} dry or rinse {1} in test oil first.': 'Zuerst trocken blasen oder in Prüföl spülen.',
  guard: 'den Schutz',
  '{0} still has the {1} on as its guard when the {2} is {3}.': '{0} trägt noch {1} als Schutz, wenn {2} {3} wird.',
  rinsed: 'gespült',
  washed: 'gewaschen',
  'the dirt stays under the guard.': 'der Schmutz bleibt unter dem Schutz.',
  'Write “remove {0}” before this step.': '„remove {0}“ vor diesen Schritt schreiben.',
  'the guard': 'den Schutz',
  'Nothing says where the {0} {1} kept.': 'Nichts sagt, wo {0} aufbewahrt {en1, select, are {werden} other {wird}}.',
  'the next person has to look for {0}, and parts of two units get mixed.':
    'der Nächste muss {0} suchen, und Teile zweier Einheiten geraten durcheinander.',
  'Write “at” and a station, and in quotes what they are kept in: “Own lidded tray, own number”.':
    '„at“ und einen Arbeitsplatz schreiben, und in Anführungszeichen, worin sie liegen: „Own lidded tray, own number“.',
  'The {0} {1} lapped or matched, and {2} kept at {3}.':
    '{0} {1} geläppt oder gepaart und {en2, select, are {werden} other {wird}} hier aufbewahrt: {3}.',
  'grit from an abrasive station scores lapped faces and seizes matched fits.':
    'Schleifstaub verkratzt geläppte Flächen und lässt gepaarte Passungen fressen.',
  'Keep {0} at another station.': '{0} an einem anderen Arbeitsplatz aufbewahren.',
  'The {0} {1} along to {2}.': '{0} {en1, select, go {kommen} other {kommt}} mit zu: {2}.',
  'Write “keep {0} at” a clean place before this.': 'Davor „keep {0} at“ und einen sauberen Platz schreiben.',
  'The {0} is lapped or matched and is {1}.': '{0} ist geläppt oder gepaart und wird {1}.',
  buffed: 'poliert',
  blasted: 'gestrahlt',
  'rubbed with grit': 'mit Schleifmittel abgerieben',
  'abrasion rounds its edges and ruins the fit, and it leaks.':
    'Abrieb rundet die Kanten und verdirbt die Passung, und es leckt.',
  'Wash and wipe it, or lap it. Or use another part.':
    'Waschen und abwischen, oder läppen. Oder ein anderes Teil nehmen.',
  '{0} {1} closed here, but no step has looked at {2}.':
    '{0} {en1, select, are {werden} other {wird}} hier geschlossen, aber kein Schritt hat sie angesehen.',
  'a scored or stained face leaks, and is found only on the tester.':
    'eine verkratzte oder fleckige Fläche leckt, und das zeigt sich erst am Prüfgerät.',
  'Write “check {0} "…"” before this step, with what to look for.':
    '„check {0} "…"“ vor diesen Schritt schreiben, und worauf zu achten ist.',
  'the first stroke can seize them.': 'beim ersten Hub können sie fressen.',
  'Rinse both in clean test oil first.': 'Zuerst beide in sauberem Prüföl spülen.',
  'The {0} are lapped or matched and {1} together.': '{0} sind geläppt oder gepaart und {1} zusammen.',
  soak: 'weichen',
  'are put down': 'liegen',
  'faces that knock together are scored before anybody fits them.':
    'Flächen, die aneinanderstoßen, verkratzen, bevor sie jemand einbaut.',
  'Write how they are kept apart at the end of the step, such as "Own lidded tray, each in its place".':
    'Am Ende des Schritts schreiben, wie sie getrennt bleiben, zum Beispiel "Own lidded tray, each in its place".',
  'The {0} {1} {2} wet with {3}.': '{0} {1} den Arbeitsplatz ({2}) noch nass von {3}.',
  leave: 'verlassen',
  leaves: 'verlässt',
  'bare steel rusts within the hour.': 'blanker Stahl rostet binnen einer Stunde.',
  'it drips on the next bench, and bare steel rusts.': 'es tropft auf die nächste Werkbank, und blanker Stahl rostet.',
  'Blow {0} dry or rinse {1} in oil at the end of this stage.':
    'Am Ende dieses Arbeitsgangs trocken blasen oder in Öl spülen.',
  'The {0} {1} left out of the first wash.': '{0} {en1, select, are {fehlen} other {fehlt}} bei der ersten Wäsche.',
  '{0} on dirty among clean parts.':
    '{en0, select, they_go {sie gehen} other {es geht}} schmutzig zwischen sauberen Teilen weiter.',
  'Add {0} to it, or write “wash all except” and the parts that must not be washed.':
    '{0} ergänzen, oder „wash all except“ und die Teile schreiben, die nicht gewaschen werden dürfen.',
  'The {0} is renewed, but the {1} is not.': '{0} wird ersetzt, aber {1} nicht.',
  'they are a pair, fitted to each other, and a new one with an old one sticks or leaks.':
    'sie sind ein Paar, aufeinander eingepasst, und neu mit alt klemmt oder leckt.',
  'Write “renew {0}”, or say how the new one is matched.':
    '„renew {0}“ schreiben, oder angeben, wie das neue Teil eingepasst wird.',
  'The {0} are a matched pair, and one is put down at {1}, the other at {2}.':
    '{0} sind ein Paar, werden aber getrennt abgelegt ({1} und {2}).',
  'by the end of the day nobody knows which ones belong together.':
    'am Ende des Tages weiß niemand, welche zusammengehören.',
  'Keep them together, or write how to tell which belong together.':
    'Zusammen aufbewahren, oder schreiben, woran man erkennt, was zusammengehört.',
  'Renew {0} too': '{0} auch ersetzen',
  'when the unit is sent out': 'wenn die Einheit außer Haus geht',
  'nobody knows for how long, or who handles it': 'niemand weiß, für wie lange und wer sie anfasst',
  '{0} {1} {2} open {3}.': '{0} {1} {2} offen, {3}.',
  Ports: 'Anschlüsse',
  Port: 'Anschluss',
  'Write “cap {0}” before this step.': '„cap {0}“ vor diesen Schritt schreiben.',
  'Cover it first': 'Zuerst bedecken',
  'Write “guard {0} with {1}” before this step': '„guard {0} with {1}“ vor diesen Schritt schreiben',
  'The {0} {1} loose {2}.': '{0} {1} lose herum, {2}.',
  lie: 'liegen',
  lies: 'liegt',
  'Write “keep {0}” before this step.': '„keep {0}“ vor diesen Schritt schreiben.',
  'Stage {0} has no step.': 'Der Arbeitsgang {0} hat keinen Schritt.',
  'the sheet would print an empty stage.': 'das Blatt würde einen leeren Arbeitsgang drucken.',
  'Write what is done there, or delete the stage.': 'Schreiben, was dort gemacht wird, oder den Arbeitsgang löschen.',
  'Stage {0} is at the {1}, but none of its steps buffs or blasts.':
    'Der Arbeitsgang {0} ist hier: {1}, aber keiner seiner Schritte poliert oder strahlt.',
  'the unit would go into the dust for nothing.': 'die Einheit käme umsonst in den Staub.',
  'Write what is buffed, or do the stage at another station.':
    'Schreiben, was poliert wird, oder den Arbeitsgang an einem anderen Arbeitsplatz machen.',
  'grit goes in, and comes out in the {0}.': 'Schmutz gerät hinein und kommt hier heraus: {0}.',
  "customer's engine": 'Motor des Kunden',
  tester: 'Prüfgerät',
  'Write “cap {0}” before this.': 'Davor „cap {0}“ schreiben.',
  'when the unit is shipped': 'wenn die Einheit versandt wird',
  'The {0} is opened while the outside is still as dirty as it came in.':
    '{0} wird geöffnet, während die Einheit außen noch so schmutzig ist wie angeliefert.',
  'the dirt on the thread falls onto the lapped faces.': 'der Schmutz am Gewinde fällt auf die geläppten Flächen.',
  'Cap the ports and write “clean outside” before this step.':
    'Die Anschlüsse verschließen und „clean outside“ vor diesen Schritt schreiben.',
  '{0} {1} {2} open while the outside is cleaned.': '{0} {1} {2} offen, während außen gereinigt wird.',
  'the dirt that the brush takes off goes in there.': 'der Schmutz, den die Bürste löst, gerät dort hinein.',
  'Cap {0} first': 'Zuerst {0} verschließen',
  'parts of several units get mixed.': 'Teile mehrerer Einheiten geraten durcheinander.',
  'Write “keep {0} at” and a station before this.': 'Davor „keep {0} at“ und einen Arbeitsplatz schreiben.',
  '{0} {1} {2} still capped when {3}.': '{0} {1} {2} noch verschlossen, wenn {3}.',
  'Write “uncap {0}” before this step.': '„uncap {0}“ vor diesen Schritt schreiben.',
  'it is connected': 'die Leitung angeschlossen wird',
  'the line cannot go on over a cap': 'die Leitung geht nicht über eine Kappe',
  'the unit works under pressure': 'die Einheit unter Druck arbeitet',
  'the fluid cannot get out, and the reading does not show what the unit does':
    'die Flüssigkeit kann nicht heraus, und die Anzeige zeigt nicht, was die Einheit tut',
  'the {0} {1} washed': '{0} gewaschen {en1, select, are {werden} other {wird}}',
  'the dirt stays in the passage': 'der Schmutz bleibt im Kanal',
  capped: 'verschlossen',
  open: 'offen',
  connected: 'angeschlossen',
  disconnected: 'getrennt',
  '{0} {1} {2} already {3}.': '{0} {1} {2} schon {3}.',
  'Delete this, or add the missing step in between.': 'Dies löschen, oder den fehlenden Schritt dazwischen ergänzen.',
  'Delete this step': 'Diesen Schritt löschen',
  'The {0} of the whole set go into one bath.': '{0} des ganzen Satzes kommen in ein Bad.',
  'a needle comes out with another unit’s nozzle.': 'eine Nadel kommt mit der Düse einer anderen Einheit heraus.',
  'Write how the units are kept apart, such as "Own basket, own number", or do the stage one unit at a time.':
    'Schreiben, wie die Einheiten getrennt bleiben, zum Beispiel "Own basket, own number", oder den Arbeitsgang einzeln je Einheit machen.',
  'The {0} {1} together dry after a wash in water or detergent.':
    '{0} {1} nach dem Waschen mit Wasser oder Waschmittel trocken zusammen.',
  'steel with no oil film rusts inside, where nobody sees it.': 'Stahl ohne Ölfilm rostet innen, wo es niemand sieht.',
  'Rinse {0} in test oil or oil {1} first.': 'Zuerst in Prüföl spülen oder ölen.',
  'The {0} and the {1} are a lapped pair and go together {2}.':
    '{0} und {1} sind ein geläpptes Paar und kommen {2} zusammen.',
  dry: 'trocken',
  'in preserving oil': 'mit Konservierungsöl',
  'it is thick and gums the fit: the needle sticks at the first test, and on the engine when it is cold.':
    'es ist dick und verklebt die Passung: die Nadel hängt bei der ersten Prüfung, und am Motor, wenn er kalt ist.',
  'Clean {0} another way: {1} spoils {2}.': '{0} anders reinigen: {1} verdirbt {2}.',
  'The {0} must never get into {1} ({2}), as the family says.': '{0}: laut Baureihe nie in {1} ({2}).',
  'it swells, corrodes or loses its grease there, and looks no different until it fails.':
    'dort quillt es, korrodiert oder verliert sein Fett, und man sieht es ihm nicht an, bis es versagt.',
  'Write “except {0}”, and clean {1} another way.': '„except {0}“ schreiben, und {1} anders reinigen.',
  'Take {0} out of this step, and clean {1} another way.': '{0} aus diesem Schritt nehmen und anders reinigen.',
  'in test oil': 'mit Prüföl',
  'in assembly oil': 'mit Montageöl',
  'The {0} {1} fitted {2}{3}.': '{0} {en1, select, are {werden} other {wird}} {2} eingebaut{3}.',
  ', and the family says “fitted {0}”': ', und die Baureihe sagt „fitted {0}“',
  'oil there keeps it from gripping or sealing, or feeds a false reading.':
    'mit Öl greift oder dichtet es nicht, oder es verfälscht den Messwert.',
  'it is thick, gums fine fits and holds grit: it is for what is put away.':
    'es ist dick, verklebt feine Passungen und hält Schmutz fest: es ist für das, was eingelagert wird.',
  'it is scuffed, twisted or stuck before the first fluid reaches it.':
    'es reibt auf, verdreht sich oder hängt, bevor die erste Flüssigkeit hinkommt.',
  'Blow-dry or wipe {0} before this step, or leave {1} out of the rinse.':
    '{0} vor diesem Schritt trocken blasen oder abwischen, oder nicht mitspülen.',
  'Rinse {0} in clean oil instead, or write “fitted with preservative” in the family.':
    '{0} stattdessen in sauberem Öl spülen, oder in der Baureihe „fitted with preservative“ schreiben.',
  'Write “oil {0} with” and the right fluid before this step.':
    'Vor diesem Schritt „oil {0} with“ und die richtige Flüssigkeit schreiben.',
  'caustic dissolves {0} and makes hydrogen of it, which a spark explodes.':
    'Lauge löst {0} auf und bildet Wasserstoff, den ein Funke zur Explosion bringt.',
  'The {0} {1} blasted, and grit cuts {2} away.': 'Gestrahlt wird: {0}, und das Strahlkorn trägt es ab.',
  'it stays in what is soft, comes out in the running unit and wears it.':
    'es bleibt im Weichen stecken, kommt in der laufenden Einheit heraus und verschleißt sie.',
  'lapping paste is still on {0}, fills a score line, and cuts on in whatever it gets into.':
    'die Läpppaste ist noch darauf, füllt eine Riefe, und schneidet in allem weiter, in das sie gerät.',
  'Write “then wash in FLUID” behind “lap if”: a rinse does not take paste off.':
    '„then wash in MITTEL“ hinter „lap if“ schreiben: Spülen nimmt die Paste nicht ab.',
  'Wash {0} before this step: a rinse does not take it off.':
    '{0} vor diesem Schritt waschen: Spülen nimmt es nicht ab.',
};
