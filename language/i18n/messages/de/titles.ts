import type { Bundle } from '../bundle.ts';

export const titles: Bundle = {
  'A concession silences nothing.': 'Eine Sonderfreigabe unterdrückt nichts.',
  'A concession gives no reason.': 'Eine Sonderfreigabe gibt keine Begründung.',
  'A blank has not been filled in.': 'Eine Lücke ist nicht ausgefüllt.',
  'A call and its sequence do not go together.': 'Ein Aufruf und seine Schrittfolge passen nicht zusammen.',
  'A clause, word or object means nothing where it is written.':
    'Ein Zusatz, Wort oder Gegenstand bedeutet dort nichts, wo er steht.',
  'A name is declared twice.': 'Ein Name ist zweimal angegeben.',
  'Steps lead back to themselves, or are more than anybody can follow.':
    'Schritte führen zu sich selbst zurück, oder sind mehr, als jemand verfolgen kann.',
  'The head of a procedure or job does not say what is needed to check it.':
    'Der Kopf einer Anweisung oder eines Auftrags sagt nicht, was zum Prüfen nötig ist.',
  'A character cannot be seen.': 'Ein Zeichen ist unsichtbar.',
  'A figure is not possible: zero, below zero, or far beyond what there is.':
    'Ein Wert ist nicht möglich: null, unter null, oder weit jenseits dessen, was es gibt.',
  'A job names another shop or revision than its procedure.':
    'Ein Auftrag nennt eine andere Werkstatt oder Revision als seine Anweisung.',
  'A line ends before it is finished.': 'Eine Zeile bricht ab, bevor sie fertig ist.',
  'A step is named, and there is none of that name, or several.':
    'Ein Schritt wird genannt, und es gibt keinen dieses Namens, oder mehrere.',
  'A name is missing, in quotes, or a word of the language.':
    'Ein Name fehlt, steht in Anführungszeichen, oder ist ein Wort der Sprache.',
  'A file is not text in UTF-8.': 'Eine Datei ist kein Text in UTF-8.',
  'A number can be read in several ways, or in none.': 'Eine Zahl lässt sich auf mehrere Arten lesen, oder auf keine.',
  'A word or sign does not belong where it is written.': 'Ein Wort oder Zeichen gehört nicht dorthin, wo es steht.',
  'A patch changes nothing, or the same step as another patch.':
    'Eine Änderung an einer übernommenen Anweisung ändert nichts, oder denselben Schritt wie eine andere.',
  'Words that need quotes have none, or only the first.':
    'Worte, die Anführungszeichen brauchen, haben keine, oder nur das erste.',
  'A result or serial of a job cannot be read.': 'Ein Ergebnis oder eine Seriennummer eines Auftrags ist nicht lesbar.',
  'A repair is never done: nothing sends a unit to it, or a repair before it has no limit.':
    'Eine Nacharbeit wird nie gemacht: nichts schickt eine Einheit dorthin, oder eine davor ist nicht begrenzt.',
  'A character has no meaning in the language.': 'Ein Zeichen hat in der Sprache keine Bedeutung.',
  'A text is longer, or nested deeper, than the checker reads.':
    'Ein Text ist länger oder tiefer verschachtelt, als gelesen wird.',
  'Two things are said that cannot both be true.': 'Zwei Dinge sind angegeben, die nicht beide stimmen können.',
  'A brace is missing, or there is one too many.': 'Eine Klammer fehlt, oder es ist eine zu viel.',
  'A figure has a unit of another kind than what is written there.':
    'Ein Wert hat eine Einheit anderer Art als das, was dort steht.',
  'A unit is missing, or can be read in several ways.': 'Eine Einheit fehlt, oder lässt sich auf mehrere Arten lesen.',
  'A name that nothing declares.': 'Ein Name, den nichts angibt.',
  'A line begins with no word of the language, or a word is misspelled.':
    'Eine Zeile beginnt mit keinem Wort der Sprache, oder ein Wort ist falsch geschrieben.',
  'The same thing is written twice.': 'Dasselbe steht zweimal da.',
  'A date is not in the calendar, not written year-month-day, or before what it follows.':
    'Ein Datum gibt es nicht, ist nicht als Jahr-Monat-Tag geschrieben, oder liegt vor dem, worauf es folgt.',
  'A limit lacks an end or a side, or has a form that does not belong here.':
    'Einem Grenzwert fehlt ein Ende oder eine Seite, oder seine Form gehört nicht hierher.',
  'A name stands for something that cannot be used in this way.':
    'Ein Name steht für etwas, das sich so nicht verwenden lässt.',
  'Parts rest on each other in a circle.': 'Teile liegen im Kreis aufeinander.',
  'A face is neither lapped nor ground, so nothing protects it.':
    'Eine Fläche ist weder geläppt noch geschliffen, also schützt sie nichts.',
  'A lapped face meets no other face, or a face of a part that does not touch its own.':
    'Eine geläppte Fläche liegt an keiner anderen an, oder an der eines Teils, das ihres nicht berührt.',
  'A joint holds nothing.': 'Eine Verbindung hält nichts.',
  'A part is fitted “located”, but nothing says what locates it.':
    'Ein Teil wird „located“ eingebaut, aber nichts sagt, was es fixiert.',
  'A part that locks no adjuster is locked.': 'Ein Teil wird gekontert, das keine Einstellschraube sichert.',
  'Marks have to be lined up, but nothing says which.': 'Markierungen sind auszurichten, aber nichts sagt, welche.',
  'A part is slackened, run down or torqued, but the family declares no joint for it.':
    'Ein Teil wird gelöst, beigedreht oder angezogen, aber die Baureihe gibt dafür keine Verbindung an.',
  'A face is guarded with a part that is not its guard.':
    'Eine Fläche wird mit einem Teil geschützt, das nicht ihr Schutz ist.',
  'A part is chosen from no stock, or from one that the shop does not have.':
    'Ein Teil wird aus keinem Vorrat ausgewählt, oder aus einem, den die Werkstatt nicht hat.',
  'A thread is oiled before it is torqued, but the family does not say so.':
    'Ein Gewinde wird vor dem Anziehen geölt, aber die Baureihe sagt das nicht.',
  'A part that slides in another is always renewed with it, but they are not declared as matched.':
    'Ein Teil, das in einem anderen gleitet, wird immer mit ihm erneuert, aber sie sind nicht als gepaart angegeben.',
  'A procedure takes the whole unit apart, but no step names one of its parts.':
    'Eine Anweisung zerlegt die ganze Einheit, aber kein Schritt nennt eines ihrer Teile.',
  'More than one part of a family rests on nothing.': 'Mehr als ein Teil einer Baureihe liegt auf nichts.',
  'A reading is tested, set or compared across the set, but the family does not require it.':
    'Ein Messwert wird geprüft, eingestellt oder im Satz verglichen, aber die Baureihe verlangt ihn nicht.',
  'A spring presses on something from above, and nothing holds its other end.':
    'Eine Feder drückt von oben auf etwas, und nichts hält ihr anderes Ende.',
  'A test reads nothing and does not say what to accept.': 'Eine Prüfung liest nichts ab und sagt nicht, was gut ist.',
  'A check does not say what to look for.': 'Eine Sichtprüfung sagt nicht, worauf zu achten ist.',
  'A part is chosen, but nothing says which reading it has to bring to what.':
    'Ein Teil wird ausgewählt, aber nichts sagt, welchen Messwert es wohin bringen soll.',
  'A part is clamped, but nothing says in what.': 'Ein Teil wird eingespannt, aber nichts sagt, worin.',
  'Something is washed, rinsed, soaked or oiled, but nothing says in what.':
    'Etwas wird gewaschen, gespült, eingeweicht oder geölt, aber nichts sagt, worin.',
  'A pressure is held, but nothing says for how long.': 'Ein Druck wird gehalten, aber nichts sagt, wie lange.',
  'A seat is tested at a pressure that is not below the opening pressure.':
    'Ein Sitz wird bei einem Druck geprüft, der nicht unter dem Öffnungsdruck liegt.',
  'A part number has no limit in service, or with a new part, although others have one.':
    'Eine Teilenummer hat keinen Grenzwert im Betrieb oder mit einem neuen Teil, obwohl andere einen haben.',
  'No value fits a limit.': 'Kein Wert erfüllt einen Grenzwert.',
  'Something is read or set as a gate, and no limit says what is good.':
    'Etwas wird als Prüfung abgelesen oder eingestellt, und kein Grenzwert sagt, was gut ist.',
  'A value that is set or read has no tolerance, and the shop states none.':
    'Ein Wert, der eingestellt oder abgelesen wird, hat keine Toleranz, und die Werkstatt gibt keine an.',
  'A spec has no value for a part number.': 'Eine Vorgabe hat für eine Teilenummer keinen Wert.',
  'A timed pressure test gives no pressure.': 'Eine Druckprüfung auf Zeit gibt keinen Druck an.',
  'A unit is primed, but nothing says how much.': 'Eine Einheit wird durchgepumpt, aber nichts sagt, wie viel.',
  'A shim is chosen, but no rate is given to work it out from.':
    'Eine Einstellscheibe wird ausgewählt, aber es fehlt die Änderung, mit der sie sich berechnen lässt.',
  'A reading is set, but the step does not name its adjuster.':
    'Ein Messwert wird eingestellt, aber der Schritt nennt die Einstellschraube nicht.',
  'A figure has no source.': 'Ein Wert hat keine Quelle.',
  'No step uses a spec, or the value of a part number.':
    'Kein Schritt verwendet eine Vorgabe, oder den Wert einer Teilenummer.',
  'The target that a part is chosen for is outside the limit of its test.':
    'Der Zielwert, für den ein Teil ausgewählt wird, liegt außerhalb des Grenzwerts seiner Prüfung.',
  'A torque step has no torque.': 'Ein Anziehschritt hat kein Drehmoment.',
  'Two figures side by side, in two units, do not agree.':
    'Zwei Werte nebeneinander, in zwei Einheiten, passen nicht zusammen.',
  'A number has a unit of the wrong kind.': 'Eine Zahl hat eine Einheit der falschen Art.',
  'A volume is judged without what it is collected over, a delivery without its speed, or a movement by air without its pressure.':
    'Ein Volumen wird beurteilt, ohne dass gesagt ist, worüber es aufgefangen wird, eine Förderung ohne ihre Drehzahl, oder eine Bewegung durch Luft ohne ihren Druck.',
  'A spread is wider than the limit that it goes with, or a point cannot lie beyond an earlier one.':
    'Eine Spanne ist weiter als der Grenzwert, zu dem sie gehört, oder ein Punkt kann nicht jenseits eines früheren liegen.',
  'Two figures of one spec are so far apart that one of them is a slip.':
    'Zwei Werte einer Vorgabe liegen so weit auseinander, dass einer ein Versehen ist.',
  'A joint is tightened to one figure at one place and to another elsewhere.':
    'Eine Verbindung wird an einer Stelle auf einen Wert und anderswo auf einen anderen angezogen.',
  'A limit is open at the end where going too far does the damage.':
    'Ein Grenzwert ist an dem Ende offen, an dem zu viel den Schaden macht.',
  'A test may never go as high as what it reads or holds.':
    'Eine Prüfung darf nie so hoch gehen wie das, was sie abliest oder hält.',
  'The pressure that a fall is timed to is not below that from which it falls.':
    'Der Druck, bis zu dem ein Abfall gestoppt wird, liegt nicht unter dem Anfangsdruck.',
  'A test is held to the spec of another test, although there is one of its own name.':
    'Eine Prüfung wird an der Vorgabe einer anderen gemessen, obwohl es eine ihres eigenen Namens gibt.',
  'A spread across the set is as wide as the window of each unit, or finer than the gauge can be read.':
    'Eine Spanne im Satz ist so weit wie das Toleranzfeld jeder Einheit, oder feiner, als das Manometer ablesbar ist.',
  'A step uses a spec whose title names another part.':
    'Ein Schritt verwendet eine Vorgabe, deren Benennung ein anderes Teil nennt.',
  'Something is set or read, but neither the step nor the shop has a tool for it.':
    'Etwas wird eingestellt oder abgelesen, aber weder der Schritt noch die Werkstatt hat ein Werkzeug dafür.',
  'The tool that a step names cannot do the work, or is not available.':
    'Das Werkzeug, das ein Schritt nennt, kann die Arbeit nicht, oder ist nicht verfügbar.',
  'A step is done at a figure beyond the scale of its tool.':
    'Ein Schritt wird bei einem Wert jenseits der Skala seines Werkzeugs ausgeführt.',
  'A torque goes through an adapter, but the setting of the wrench cannot be worked out.':
    'Ein Drehmoment geht über einen Aufsatz, aber die Schlüsseleinstellung lässt sich nicht berechnen.',
  'A joint is broken loose with a torque wrench.': 'Eine Verbindung wird mit einem Drehmomentschlüssel gelöst.',
  'A tool is used at the end of its range, where it is not accurate.':
    'Ein Werkzeug wird am Ende seines Bereichs verwendet, wo es nicht genau ist.',
  'The error of a tool may be greater than the width of the limit that it reads.':
    'Der Fehler eines Werkzeugs kann größer sein als die Breite des Grenzwerts, den es anzeigt.',
  'With guarded acceptance, no reading of the tool passes.': 'Mit Schutzabstand besteht keine Anzeige des Werkzeugs.',
  'The error of a tool takes up too much of the limit that it reads or sets.':
    'Der Fehler eines Werkzeugs nimmt zu viel von dem Grenzwert ein, den es anzeigt oder einstellt.',
  'The marks of a tool are too far apart to read the limit on it.':
    'Die Teilstriche eines Werkzeugs liegen zu weit auseinander, um den Grenzwert abzulesen.',
  'A torque takes a solid bolt or stud past its proof load.':
    'Ein Drehmoment belastet eine volle Schraube oder einen Stehbolzen über die Prüfkraft.',
  'A shim is chosen by the reading, but the one that came out is never measured.':
    'Eine Einstellscheibe wird nach dem Messwert ausgewählt, aber die ausgebaute wird nie gemessen.',
  'A shim may be chosen that is so thick that the coils of the spring bind.':
    'Es kann eine so dicke Einstellscheibe ausgewählt werden, dass die Feder auf Block geht.',
  'The shims in stock cannot bring a worn unit to its setting.':
    'Die Einstellscheiben im Vorrat bringen eine verschlissene Einheit nicht auf ihren Einstellwert.',
  'From one shim in stock to the next, the reading jumps over its limit.':
    'Von einer Einstellscheibe im Vorrat zur nächsten überspringt der Messwert seinen Grenzwert.',
  'The shim rate of a nozzle is far from that of any nozzle.':
    'Die Änderung je Einstellscheibe einer Düse ist weit von der jeder Düse entfernt.',
  'Something is set or measured, but the step names none of the tools that the shop has for it.':
    'Etwas wird eingestellt oder gemessen, aber der Schritt nennt keines der Werkzeuge, die die Werkstatt dafür hat.',
  'A pressure is held below a reading by no more than what the gauge may be wrong by.':
    'Ein Druck wird um nicht mehr unter einem Messwert gehalten, als das Manometer falsch anzeigen kann.',
  'A pass of a joint is below the scale of its wrench.':
    'Ein Durchgang einer Verbindung liegt unter der Skala des Schlüssels.',
  'A joint is turned by an angle with nothing to measure it.':
    'Eine Verbindung wird um einen Winkel gedreht, und nichts misst ihn.',
  'A calibration had run out when the procedure was approved, or is said to last for decades.':
    'Eine Kalibrierung war bei der Genehmigung abgelaufen, oder soll jahrzehntelang gelten.',
  'A part is cleaned with air at or above the limit, or with no limit given.':
    'Ein Teil wird mit Druckluft am oder über dem Grenzwert gereinigt, oder ohne Grenzwert.',
  'A bath is as hot as the flash point of its fluid.': 'Ein Bad ist so heiß wie der Flammpunkt seiner Flüssigkeit.',
  'A hazard is written after the step that it warns about.': 'Eine Gefahr steht nach dem Schritt, vor dem sie warnt.',
  'A hazard that can hurt somebody is marked NOTICE.':
    'Eine Gefahr, die jemanden verletzen kann, ist mit NOTICE gekennzeichnet.',
  'A title or a step sounds dangerous, and the text does not say whether it is.':
    'Eine Benennung oder ein Schritt klingt gefährlich, und der Text sagt nicht, ob das so ist.',
  'A stack on a chosen shim presses on nothing: what its spring loads is not declared.':
    'Ein Stapel auf einer ausgewählten Einstellscheibe drückt auf nichts: was die Feder belastet, ist nicht angegeben.',
  'The part of a tight joint is taken off before the joint is slackened.':
    'Das Teil einer festen Verbindung wird abgenommen, bevor sie gelöst ist.',
  'A test is read while an adjuster is set but not locked.':
    'Eine Prüfung wird abgelesen, während eine Einstellschraube eingestellt, aber nicht gekontert ist.',
  'The unit leaves with an adjuster that is not locked.':
    'Die Einheit verlässt die Werkstatt mit einer nicht gekonterten Einstellschraube.',
  'A joint is slackened, and neither taken off nor torqued again when the unit is tested or leaves.':
    'Eine Verbindung wird gelöst, und weder abgenommen noch wieder angezogen, wenn die Einheit geprüft wird oder geht.',
  'A union or connector is only hand-tight when pressure comes on.':
    'Eine Verschraubung ist nur handfest, wenn Druck kommt.',
  'A joint is run down but not torqued when the unit is tested or leaves.':
    'Eine Verbindung ist beigedreht, aber nicht angezogen, wenn die Einheit geprüft wird oder geht.',
  'An adjuster is turned while its lock is tight.': 'Eine Einstellschraube wird gedreht, während sie gekontert ist.',
  'A joint is slackened or torqued against a spring that its adjuster still loads.':
    'Eine Verbindung wird gegen eine Feder gelöst oder angezogen, die die Einstellschraube noch belastet.',
  'A joint is broken loose or torqued with nothing holding the unit.':
    'Eine Verbindung wird gelöst oder angezogen, ohne dass etwas die Einheit hält.',
  'A part that is always renewed, or was discarded, is fitted or tightened again.':
    'Ein Teil, das immer erneuert wird oder entsorgt wurde, wird wieder eingebaut oder angezogen.',
  'A part is discarded, and the unit is closed or leaves without a new one.':
    'Ein Teil wird entsorgt, und die Einheit wird ohne neues geschlossen oder geht ohne.',
  'A part is fitted before the part that it rests on.': 'Ein Teil wird vor dem eingebaut, auf dem es liegt.',
  'A part is taken off or fitted a second time with nothing in between.':
    'Ein Teil wird ein zweites Mal aus- oder eingebaut, ohne etwas dazwischen.',
  'A part is missing when a joint closes over its place, or at the end.':
    'Ein Teil fehlt, wenn eine Verbindung über seinem Platz schließt, oder am Ende.',
  'A part is fitted at one station while it is at another, and no step brings it over.':
    'Ein Teil wird an einem Arbeitsplatz eingebaut, während es an einem anderen liegt, und kein Schritt bringt es herüber.',
  'A part that something locates is fitted, and the step does not say “located”.':
    'Ein Teil, das etwas fixiert, wird eingebaut, und der Schritt sagt nicht „located“.',
  'A part with marks is fitted without lining them up.':
    'Ein Teil mit Markierungen wird eingebaut, ohne sie auszurichten.',
  'A face is guarded with a part that is still in its own place.':
    'Eine Fläche wird mit einem Teil geschützt, das noch an seinem Platz ist.',
  'A part is taken off while another still lies on it or holds it.':
    'Ein Teil wird abgenommen, während ein anderes darauf liegt oder es hält.',
  'A part is chosen, measured or lapped, or its holes are cleaned, while a joint is closed over it.':
    'Ein Teil wird ausgewählt, gemessen oder geläppt, oder seine Bohrungen gereinigt, während eine Verbindung darüber geschlossen ist.',
  'A new part is fitted with its preservative still on it.': 'Ein neues Teil wird noch mit Konservierung eingebaut.',
  'The unit leaves a station, or is clamped again, while it is still clamped.':
    'Die Einheit verlässt einen Arbeitsplatz, oder wird noch einmal eingespannt, während sie eingespannt ist.',
  'A joint is torqued before it is run down, or with parts inside it missing.':
    'Eine Verbindung wird angezogen, bevor sie beigedreht ist, oder während darin Teile fehlen.',
  'Four or more fasteners on one face are torqued, and no order is given.':
    'Vier oder mehr Schrauben einer Fläche werden angezogen, und keine Reihenfolge ist angegeben.',
  'A part that must move freely is not checked for that after the last joint over it was tightened.':
    'Ein Teil, das sich frei bewegen muss, wird nach dem Anziehen der letzten Verbindung darüber nicht darauf geprüft.',
  'A part is fitted where something that is already on is in the way.':
    'Ein Teil wird eingebaut, wo etwas schon Eingebautes im Weg ist.',
  'Threads that are to be oiled are run down dry, or are oiled when they are down already.':
    'Gewinde, die geölt werden sollen, werden trocken beigedreht, oder erst geölt, wenn sie schon beigedreht sind.',
  'A part that slides or turns is built in with no oil on it.':
    'Ein gleitendes oder drehendes Teil wird ohne Öl eingebaut.',
  'A part is lined up when the joint that holds it is tight already.':
    'Ein Teil wird ausgerichtet, wenn die Verbindung, die es hält, schon fest ist.',
  'An adjuster or its lock is turned while the cap nut over it is on.':
    'Eine Einstellschraube oder ihre Sicherung wird gedreht, während die Hutmutter darüber sitzt.',
  'The unit is clamped by one part and unclamped by another.':
    'Die Einheit wird an einem Teil eingespannt und an einem anderen ausgespannt.',
  'A part is blasted or buffed after it was marked.': 'Ein Teil wird nach dem Markieren gestrahlt oder poliert.',
  'What holds a loaded spring comes off or goes on while nothing holds the spring.':
    'Was eine gespannte Feder hält, kommt ab oder drauf, während nichts die Feder hält.',
  'A bolt that is turned by an angle goes back in unmeasured.':
    'Eine nach Winkel angezogene Schraube kommt ungemessen wieder hinein.',
  'A lapped face is bare when the unit leaves a station, waits, is abraded or is finished.':
    'Eine geläppte Fläche ist frei, wenn die Einheit einen Arbeitsplatz verlässt, wartet, abgetragen wird oder fertig ist.',
  'The unit waits for somebody or is sent out with ports open, lapped faces bare or parts loose.':
    'Die Einheit wartet auf jemanden oder geht außer Haus mit offenen Anschlüssen, freien geläppten Flächen oder losen Teilen.',
  'A lapped, ground or matched part is itself buffed, blasted or rubbed with an abrasive.':
    'Ein geläpptes, geschliffenes oder gepaartes Teil wird selbst poliert, gestrahlt oder abgerieben.',
  'Lapped parts are put down or soaked together, and the text does not say how they are kept apart.':
    'Geläppte Teile werden zusammen abgelegt oder eingeweicht, und der Text sagt nicht, wie sie getrennt bleiben.',
  'Lapped or matched parts are kept at an abrasive station, or go there with the unit.':
    'Geläppte oder gepaarte Teile liegen an einem Arbeitsplatz mit Schleifmitteln, oder kommen mit der Einheit dorthin.',
  'One part of a matched or balanced pair is renewed, or kept elsewhere, without the other.':
    'Ein Teil eines gepaarten oder gemeinsam gewuchteten Paars wird ohne das andere erneuert oder anderswo abgelegt.',
  'Parts are off and kept nowhere when the unit leaves a station or waits.':
    'Teile sind ausgebaut und nirgends abgelegt, wenn die Einheit einen Arbeitsplatz verlässt oder wartet.',
  'Parts are kept, but nothing says where or in what.': 'Teile werden abgelegt, aber nichts sagt, wo oder worin.',
  'Loose parts of the set are washed together, and the text does not say how the units are kept apart.':
    'Lose Teile des Satzes werden zusammen gewaschen, und der Text sagt nicht, wie die Einheiten getrennt bleiben.',
  'A face or part is checked by eye while it is covered or shut in.':
    'Eine Fläche oder ein Teil wird mit dem Auge geprüft, während es bedeckt oder eingeschlossen ist.',
  'A part is judged while it is dirty, or still wet from the wash.':
    'Ein Teil wird beurteilt, während es schmutzig oder noch nass von der Wäsche ist.',
  'A lapped face is closed, and nobody has looked at it since the unit came in.':
    'Eine geläppte Fläche wird verschlossen, und niemand hat sie seit der Anlieferung angesehen.',
  'A part is fitted dirty, or onto a dirty part.': 'Ein Teil wird schmutzig eingebaut, oder auf ein schmutziges.',
  'A lapped face is covered for good while its part is dirty.':
    'Eine geläppte Fläche wird endgültig bedeckt, während ihr Teil schmutzig ist.',
  'Parts are still wet with solvent, detergent or water when the unit leaves a wet station.':
    'Teile sind noch nass von Lösemittel, Waschmittel oder Wasser, wenn die Einheit einen Nassarbeitsplatz verlässt.',
  'A part is fitted with solvent, detergent or water still on it.':
    'Ein Teil wird noch mit Lösemittel, Waschmittel oder Wasser eingebaut.',
  'A lapped pair goes together dry instead of wet with clean test oil.':
    'Ein geläpptes Paar kommt trocken zusammen, nicht nass von sauberem Prüföl.',
  'A part that was washed in water or detergent is dried and fitted without being oiled.':
    'Ein mit Wasser oder Waschmittel gewaschenes Teil wird getrocknet und ungeölt eingebaut.',
  'A part is washed while a guard is on its lapped face.':
    'Ein Teil wird gewaschen, während ein Schutz auf seiner geläppten Fläche sitzt.',
  'A part is washed, soaked, rinsed or wiped while it is shut in.':
    'Ein Teil wird gewaschen, eingeweicht, gespült oder abgewischt, während es eingeschlossen ist.',
  'A part is washed, or the unit is primed, tested or connected, while one of its ports is capped.':
    'Ein Teil wird gewaschen, oder die Einheit durchgepumpt, geprüft oder angeschlossen, während einer ihrer Anschlüsse verschlossen ist.',
  'A cap, or a part that was put in for trial only, is closed up in the unit.':
    'Eine Kappe oder ein nur probeweise eingebautes Teil wird in der Einheit eingeschlossen.',
  'A port is open while the outside of the unit is cleaned.':
    'Ein Anschluss ist offen, während die Einheit außen gereinigt wird.',
  'A port is open while the unit is buffed, blasted, waits or is shipped.':
    'Ein Anschluss ist offen, während die Einheit poliert, gestrahlt oder versandt wird oder wartet.',
  'A port is capped, uncapped, connected or disconnected when it already is.':
    'Ein Anschluss wird verschlossen, geöffnet, angeschlossen oder abgenommen, obwohl er es schon ist.',
  'A unit with lapped parts is opened before its outside is cleaned.':
    'Eine Einheit mit geläppten Teilen wird geöffnet, bevor sie außen gereinigt ist.',
  'A stage at an abrasive station abrades nothing, or a stage has no step.':
    'Ein Arbeitsgang an einem Arbeitsplatz mit Schleifmitteln trägt nichts ab, oder ein Arbeitsgang hat keinen Schritt.',
  'Something is engraved, buffed, blasted or washed in solvent at a clean station.':
    'Etwas wird an einem sauberen Arbeitsplatz graviert, poliert, gestrahlt oder in Lösemittel gewaschen.',
  'Parts are fitted for good at a dirty station.':
    'Teile werden an einem schmutzigen Arbeitsplatz endgültig eingebaut.',
  'The first wash names its parts, but leaves out some that came in dirty.':
    'Die erste Wäsche nennt ihre Teile, lässt aber einige aus, die schmutzig ankamen.',
  'A part gets into a fluid that spoils it.': 'Ein Teil kommt in eine Flüssigkeit, die es verdirbt.',
  'A part goes in dry that is to be oiled, oiled that is to be dry, or with the wrong fluid on it.':
    'Ein Teil kommt trocken hinein, das geölt sein soll, geölt, das trocken sein soll, oder mit der falschen Flüssigkeit.',
  'A repair contains a test.': 'Eine Nacharbeit enthält eine Prüfung.',
  'A repair ends with parts off that were on at the test that the unit goes back to.':
    'Eine Nacharbeit endet mit ausgebauten Teilen, die bei der Prüfung, zu der die Einheit zurückgeht, eingebaut waren.',
  'A pressure test is run on a unit that was not primed after it was opened or connected.':
    'Eine Druckprüfung läuft an einer Einheit, die nach dem Öffnen oder Anschließen nicht durchgepumpt wurde.',
  'A test that proves the family is missing from the procedure.':
    'In der Anweisung fehlt eine Prüfung, die die Baureihe nachweist.',
  'A step uses a reading that was not taken before it.':
    'Ein Schritt verwendet einen Messwert, der davor nicht genommen wurde.',
  'The unit is changed after a test, and the test is not run again.':
    'Die Einheit wird nach einer Prüfung geändert, und die Prüfung wird nicht wiederholt.',
  'Tests are run in a different order from the one that proves the family.':
    'Prüfungen laufen in einer anderen Reihenfolge als der, die die Baureihe nachweist.',
  'A test or check does not say what is done when it fails.':
    'Eine Prüfung sagt nicht, was zu tun ist, wenn sie nicht bestanden wird.',
  'The tester line is still connected when the unit leaves, is capped, is opened or is finished.':
    'Die Leitung des Prüfgeräts ist noch angeschlossen, wenn die Einheit geht, verschlossen, geöffnet oder fertig wird.',
  'A pressure test is run while the unit is not connected, or away from the tester.':
    'Eine Druckprüfung läuft, während die Einheit nicht angeschlossen oder nicht am Prüfgerät ist.',
  'The unit is opened, tightened or disconnected while it may be under pressure.':
    'Die Einheit wird geöffnet, angezogen oder abgenommen, während sie unter Druck stehen kann.',
  'A unit that could be tested is opened before it is read as found.':
    'Eine Einheit, die sich prüfen ließe, wird geöffnet, bevor der Anlieferungszustand gemessen ist.',
  'A repair changes nothing: the same unit goes back to the same test.':
    'Eine Nacharbeit ändert nichts: dieselbe Einheit geht zu derselben Prüfung zurück.',
  'A unit never comes back from a repair to its test.':
    'Eine Einheit kommt aus einer Nacharbeit nie zu ihrer Prüfung zurück.',
  'A repair may be tried any number of times.': 'Eine Nacharbeit darf beliebig oft versucht werden.',
  'The gauge is not shut while the unit is primed, or made to chatter or spray.':
    'Das Manometer ist nicht abgesperrt, während die Einheit durchgepumpt wird, schnarrt oder spritzt.',
  'A pressure is read, held or set with the gauge shut.':
    'Ein Druck wird bei abgesperrtem Manometer abgelesen, gehalten oder eingestellt.',
  'Chatter is judged, but no lever speed is stated.':
    'Das Schnarren wird beurteilt, aber keine Hebelgeschwindigkeit ist angegeben.',
  'A leak past a lapped pair is timed, but not everything that affects the time is stated.':
    'Die Leckage an einem geläppten Paar wird gestoppt, aber nicht alles ist angegeben, was die Zeit beeinflusst.',
  'Readings are judged, but the tester’s master is not read before and after them.':
    'Messwerte werden beurteilt, aber die Referenz des Prüfgeräts wird davor und danach nicht gemessen.',
  'A part that the family says is always checked comes off, and no step checks it.':
    'Ein Teil, das laut Baureihe immer geprüft wird, kommt ab, und kein Schritt prüft es.',
  'A check says only what is good, or only what is not.':
    'Eine Sichtprüfung sagt nur, was gut ist, oder nur, was nicht.',
  'A check sends to a repair that touches nothing of what failed, or a repair does not do what its name says.':
    'Eine Prüfung schickt zu einer Nacharbeit, die nichts vom Beanstandeten berührt, oder eine Nacharbeit tut nicht, was ihr Name sagt.',
  'Nobody signs the unit off at the end.': 'Niemand zeichnet die Einheit am Ende ab.',
  'The unit is worked on after it was signed off.': 'An der Einheit wird nach dem Abzeichnen gearbeitet.',
  'A stage is held for the same person who signs for it.':
    'Ein Arbeitsgang wartet auf dieselbe Person, die ihn unterschreibt.',
  'The unit leaves without being marked.': 'Die Einheit geht unmarkiert.',
  'The unit is marked with neither its part number nor its serial number.':
    'Die Einheit wird weder mit Teilenummer noch mit Seriennummer markiert.',
  'A unit with no tag has its parts sent elsewhere, or is put with other units.':
    'Teile einer Einheit ohne Anhänger gehen anderswohin, oder kommen zu anderen Einheiten.',
  'Something has to be written down, and the step has no box for it.':
    'Etwas ist einzutragen, und der Schritt hat kein Feld dafür.',
  'A unit is sent out, and is tested or signed off without being booked in, or it is booked in and was never sent out.':
    'Eine Einheit geht außer Haus und wird ohne Einbuchen geprüft oder abgezeichnet, oder sie wird eingebucht und war nie außer Haus.',
  'A procedure has no revision, or no approval with a date.':
    'Eine Anweisung hat keine Revision, oder keine Genehmigung mit Datum.',
  'A signature is required, but nothing says whose.': 'Eine Unterschrift ist verlangt, aber nichts sagt, wessen.',
  'A result of a job cannot be right as written: a misplaced decimal point, zero, or more than the tool can show.':
    'Ein Ergebnis eines Auftrags kann so nicht stimmen: ein verschobener Dezimalpunkt, null, oder mehr, als das Werkzeug zeigen kann.',
  'The last result of a unit fails: a reading or a torque outside its limit, or a verdict.':
    'Das letzte Ergebnis einer Einheit besteht nicht: ein Messwert oder Drehmoment außerhalb des Grenzwerts, oder ein Urteil.',
  'The last reading is inside its limit, and nearer to its end than the decision rule of the shop allows with that tool.':
    'Der letzte Messwert liegt im Grenzwert, und näher an dessen Ende, als die Entscheidungsregel der Werkstatt mit diesem Werkzeug zulässt.',
  'A result is from before something was changed that it depends on.':
    'Ein Ergebnis stammt von vor einer Änderung, von der es abhängt.',
  'Two results of a unit contradict each other, and nothing is written down that explains it.':
    'Zwei Ergebnisse einer Einheit widersprechen sich, und nichts Eingetragenes erklärt es.',
  'The units of a set, or the places of a unit, lie further apart than the procedure allows.':
    'Die Einheiten eines Satzes, oder die Messstellen einer Einheit, liegen weiter auseinander, als die Anweisung zulässt.',
  'A figure is judged, and the tool that showed it is not written down.':
    'Ein Wert wird beurteilt, und das Werkzeug, das ihn angezeigt hat, ist nicht eingetragen.',
  'A result was read with a tool whose calibration was not in force on that day.':
    'Ein Ergebnis wurde mit einem Werkzeug abgelesen, dessen Kalibrierung an diesem Tag nicht galt.',
  'The days of a job are out of order, or one is missing.':
    'Die Tage eines Auftrags sind nicht in Reihenfolge, oder einer fehlt.',
  'Results are written down of a unit that has no serial.':
    'Zu einer Einheit ohne Seriennummer sind Ergebnisse eingetragen.',
  'A unit is signed, its tests have begun, and something that its certificate needs is missing.':
    'Eine Einheit ist abgezeichnet, ihre Prüfungen haben begonnen, und etwas fehlt, was ihr Zertifikat braucht.',
  'All results of a unit are there, and nobody is named who did it.':
    'Alle Ergebnisse einer Einheit sind da, und niemand ist genannt, der sie ausgeführt hat.',
  'Words name a figure, and the figure beside them is another.':
    'Worte nennen eine Angabe, und die Angabe daneben ist eine andere.',
  'A part is blasted that grit cuts away.': 'Ein Teil wird gestrahlt, das vom Strahlkorn abgetragen wird.',
  'A job in work names a revision after which another was issued.':
    'Ein Auftrag in Arbeit nennt eine Revision, nach der eine andere ausgegeben wurde.',
  'A serial is that of a unit in another job that is still in work.':
    'Eine Seriennummer gehört zu einer Einheit in einem anderen Auftrag, der noch in Arbeit ist.',
  'A procedure says a revision that is issued, and its text is no longer what was issued.':
    'Ein Verfahren nennt eine ausgegebene Revision, und sein Text ist nicht mehr der ausgegebene.',
  'The file of an issued revision is not as it was written.':
    'Die Datei einer ausgegebenen Revision ist nicht so, wie sie geschrieben wurde.',
  'A unit is signed, and its last result fails: it is outside its limit, or the set lies too far apart.':
    'Eine Einheit ist abgezeichnet, und ihr letztes Ergebnis fällt durch: es liegt außerhalb der Grenzwerte, oder der Satz streut zu weit.',
  'A unit is signed, and the shop does not say from when to when a tool that it was read with is calibrated.':
    'Eine Einheit ist abgezeichnet, und die Werkstatt sagt nicht, von wann bis wann ein Werkzeug kalibriert ist, mit dem gemessen wurde.',
};
