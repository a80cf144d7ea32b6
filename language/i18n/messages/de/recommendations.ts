import type { Bundle } from '../bundle.ts';

export const recommendations: Bundle = {
  'one step of {0} brings {1}': 'eine Stufe von {0} bringt {1}',
  '{0} chooses no part from a stock of the shop: there is no rate to fit.':
    '{0} wählt kein Teil aus einem Vorrat der Werkstatt: es gibt keine Änderung zu bestimmen.',
  '{0} by {1}{2}': '{0} durch {1}{2}',
  '{0}: too few readings. The fit needs units that were read with at least two shims each, and one extra reading in all.':
    '{0}: zu wenige Messwerte. Gebraucht werden Einheiten, die mit mindestens zwei Einstellscheiben gemessen wurden, und insgesamt ein Messwert mehr.',
  '{0}: the readings give no usable rate. Check them and the shims.':
    '{0}: die Messwerte ergeben keine brauchbare Änderung. Sie und die Einstellscheiben prüfen.',
  '{0} readings of 1 unit': '{0} Messwerte von 1 Einheit',
  '{0} readings of {1} units': '{0} Messwerte von {1} Einheiten',
  '{0}, job {1}': '{0}, Auftrag {1}',
  '{0}, jobs {1}': '{0}, Aufträge {1}',
  '{0}: {1} {2}, standard error {3} {4}; a reading scatters by {5}, its marks and digits included':
    '{0}: {1} {2}, Standardfehler {3} {4}; ein Messwert streut um {5}, Teilstriche und Stellen eingeschlossen',
  '  from {0}': '  aus {0}',
  '  A thicker shim brought no more: something else was changed between these readings.':
    '  Eine dickere Einstellscheibe brachte nicht mehr: zwischen diesen Messwerten wurde etwas anderes geändert.',
  '  The error is as large as the rate, so there is no rate to write down. Look for a reading or a shim that is written down wrong, or add readings.':
    '  Der Fehler ist so groß wie die Änderung, also gibt es nichts einzutragen. Nach einem falsch eingetragenen Messwert oder einer falschen Einstellscheibe suchen, oder Messwerte ergänzen.',
  'Fitted from {0}': 'Bestimmt aus {0}',
  'a shim of {0}': 'eine Einstellscheibe von {0}',
  '  Left out: unit {0} of job {1}, {2}, is off by a power of ten beside the others. Is it {3}? Put it right in the job.':
    '  Weggelassen: Einheit {0} von Auftrag {1}, {2}, weicht um eine Zehnerpotenz von den anderen ab. Ist {3} gemeint? Im Auftrag berichtigen.',
  'The procedure reckons with {0}.': 'Die Anweisung rechnet mit {0}.',
  'The procedure reckons with {0}: the same.': 'Die Anweisung rechnet mit {0}: dasselbe.',
  '{0} standard errors from it': '{0} Standardfehler davon entfernt',
  'The procedure reckons with {0}: {1}, which may be chance.':
    'Die Anweisung rechnet mit {0}: {1}, das kann Zufall sein.',
  'The procedure reckons with {0}: {1}. Look for what was read wrong, or write the fitted one:':
    'Die Anweisung rechnet mit {0}: {1}. Nach falsch Abgelesenem suchen, oder die bestimmte Änderung eintragen:',
  'unit {0}': 'Einheit {0}',
  '{0} chooses no part from a stock of the shop, and gives no change per turn for any screw: there is nothing to advise.':
    '{0} wählt kein Teil aus einem Vorrat der Werkstatt und gibt für keine Schraube eine Änderung je Umdrehung an: es gibt nichts zu raten.',
  '{0}: on hold, {1}': '{0}: zurückgestellt, {1}',
  '{0}, inside its window: it stays': '{0}, im Toleranzfeld: bleibt so',
  '{0}: no part is chosen for its number': '{0}: für ihre Nummer wird kein Teil ausgewählt',
  '{0}: no reading of {1} yet. Write into the job, for instance: {2}':
    '{0}: noch kein Messwert von {1}. In den Auftrag eintragen, zum Beispiel: {2}',
  'Write into the job, for instance: {0}': 'In den Auftrag eintragen, zum Beispiel: {0}',
  'no reading of {0} with its {1} yet. {2}': 'noch kein Messwert von {0} mit {1}. {2}',
  '{0} is read, but the {1} that was in is not written down. {2}':
    '{0} ist gemessen, aber {1} im Einbauzustand ist nicht eingetragen. {2}',
  'the {0} was changed after {1} was read: read it again with the one that is in, and write it behind it':
    '{0} wurde nach dem Messen von {1} gewechselt: mit dem eingebauten Teil noch einmal messen und dahinter eintragen',
  '{0} has no limit for this part number: there is nothing to bring it to. Give one in the procedure':
    '{0} hat für diese Teilenummer keinen Grenzwert: es gibt nichts, worauf es zu bringen wäre. In der Anweisung einen angeben',
  'the limit of {0} has no end: there is nothing to aim at. Write “choose {1} to bring {2} to” and a figure':
    'der Grenzwert von {0} hat kein Ende: es gibt keinen Zielwert. „choose {1} to bring {2} to“ und einen Wert schreiben',
  'nothing says how far a {0} moves {1}. Write “by” and a rate above zero after the choose, such as 96 bar per mm, a band with two ends, or one quantity per another':
    'nichts sagt, wie weit {0} {1} verändert. Nach choose „by“ und eine Änderung über null schreiben: zum Beispiel 96 bar per mm, einen Bereich mit zwei Enden, oder eine Größe je einer anderen',
  '{0} is read in another kind of unit than its limit has: look at the unit of the reading':
    '{0} ist in einer anderen Art von Einheit gemessen als der Grenzwert: die Einheit des Messwerts prüfen',
  '{0} are chosen together for {1}: how the change is shared between them is the lead’s to say':
    '{0} werden zusammen für {1} ausgewählt: wie sich die Änderung verteilt, entscheidet die Werkstattleitung',
  'a {0} of {1}': '{0} von {1}',
  ' Is it {0}?': ' Ist {0} gemeint?',
  '{0} cannot be: nothing is worked out from it.{1} Put it right in the job':
    '{0} kann nicht sein: daraus wird nichts berechnet.{1} Im Auftrag berichtigen',
  '{0} chooses no part from a stock of the shop: there is nothing to match.':
    '{0} wählt kein Teil aus einem Vorrat der Werkstatt: es gibt nichts abzustimmen.',
  'No unit of this job can be calculated yet. handtight shim {0} says what is missing for each.':
    'In diesem Auftrag lässt sich noch keine Einheit berechnen. handtight shim {0} sagt, was bei jeder fehlt.',
  '{0}: {1} of 1 unit read': '{0}: {1} von 1 Einheit gemessen',
  '{0}: {1} of {2} units read': '{0}: {1} von {2} Einheiten gemessen',
  '{0}. Not every one can be brought into its window from this drawer. handtight shim {1} says which, and why.':
    '{0}. Aus diesem Vorrat lassen sich nicht alle ins Toleranzfeld bringen. handtight shim {1} sagt, welche, und warum.',
  ' (at most {0})': ' (höchstens {0})',
  '; {0} when new springs have settled': '; {0}, wenn sich neue Federn gesetzt haben',
  '{0}, all inside their window, spread {1} measured{2}{3}: nothing to do':
    '{0}, alle im Toleranzfeld, gemessene Spanne {1}{2}{3}: nichts zu tun',
  '{0}, all inside their window, spread {1} measured{2}: this drawer has nothing that brings them nearer and lands surely. Put finer steps into it, or let the lead decide.':
    '{0}, alle im Toleranzfeld, gemessene Spanne {1}{2}: dieser Vorrat hat nichts, was sie näher zusammenbringt und sicher trifft. Feinere Stufen beschaffen, oder die Werkstattleitung entscheiden lassen.',
  '  spread {0} expected{1}{2}: no choice opens fewer, and none of those has less':
    '  erwartete Spanne {0}{1}{2}: keine Auswahl öffnet weniger, und keine von diesen hat eine kleinere',
  '  spread {0} expected{1}{2}: no choice from this drawer keeps it, and none has less':
    '  erwartete Spanne {0}{1}{2}: keine Auswahl aus diesem Vorrat hält sie ein, und keine hat eine kleinere',
  '  {0}: {1} stays, it stays closed: {2} read': '  {0}: {1} bleibt, sie bleibt zu: gemessen {2}',
  '  {0}: fit {1} (now {2}): expect {3}': '  {0}: {1} einbauen (jetzt {2}): erwartet {3}',
};
