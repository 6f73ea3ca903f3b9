# A plan: its reasons, notes, changes and cautions, as they stand in plan.json.

## Lists

list-and = { $before } und { $item }
list-comma = { $before }, { $item }
list-semicolon = { $before }; { $item }
list-more = { $items } und { $more } weitere

## What a check found. The numbers carry their unit.

finding-at-most = { $check }: { $demand }, zulässig sind höchstens { $limit }
finding-stiffness = die Steifigkeit der Stange am Werkzeug beträgt { $demand }, nötig sind mindestens { $limit }
finding-span-stiffness = die kleinste Steifigkeit zwischen Spannstelle und Buchse beträgt { $demand }, der betriebliche Grenzwert ist { $limit }
finding-free-ratio = das freie vordere Ende ist { $demand } Durchmesser lang, die betriebliche Regel erlaubt { $limit }
finding-whirl = die Drehzahl beträgt das { $demand }-Fache der kritischen Drehzahl, zulässig ist höchstens das { $limit }-Fache
finding-whip = die Krümmung der drehenden Stange (Schlagen) beträgt { $demand }, zulässig sind höchstens { $limit }
finding-sag = die Stange hängt unter ihrem Eigengewicht um { $demand } durch, zulässig sind höchstens { $limit }
finding-pick-up = das freie vordere Ende liegt beim Aufnehmen { $demand } neben der Achse, zulässig sind höchstens { $limit }
finding-bore = die Krümmung des Teils in der Bohrung der Gegenspindel beträgt { $demand }, zulässig sind höchstens { $limit }
finding-bore-no-room = das Teil hat in der Bohrung der Gegenspindel keinen Platz, wenn der Freiraum eingehalten wird
finding-cut = die Durchbiegung der Stange ändert den Durchmesser entlang des Schnitts um { $demand }, zulässig sind höchstens { $limit }
finding-chatter = die Schnitttiefe beträgt { $demand }, Rattern beginnt bei { $limit }
finding-drill = das Werkzeug biegt die Stange um { $demand } durch, zulässig sind höchstens { $limit }
finding-release = die Stange sinkt um { $demand } ab, wenn die Spannzange der Gegenspindel öffnet, zulässig sind höchstens { $limit }
finding-torque = das Drehmoment beträgt { $demand }, die Spannzange hält höchstens { $limit }
finding-push = die Last beträgt { $demand }, die Spannzange hält höchstens { $limit }
finding-buckling = die Stange wird in Achsrichtung mit { $demand } gedrückt, zulässig sind höchstens { $limit }, damit sie nicht ausknickt
finding-run-out = die Rundlaufabweichung der Spannzange gibt der Fläche im Schnitt eine Rundlaufabweichung von { $demand }, zulässig sind höchstens { $limit }
finding-back = die Durchbiegung des hinteren Endes ändert den Durchmesser um { $demand }, zulässig sind höchstens { $limit }

## Where a check fails: one clause before the colon, what the check found after it

reason-gripped = mit der Spannzange der Gegenspindel bei { $nose } { -mm } und einer gedrehten Länge von { $turned } { -mm }: { $finding }
reason-front-free = mit freiem vorderem Ende und einer gedrehten Länge von { $turned } { -mm }: { $finding }
reason-on-centre = mit der Zentrierspitze im vorderen Ende und einer gedrehten Länge von { $turned } { -mm }: { $finding }
reason-centre = die Kraft der Zentrierspitze
reason-centre-comes = bevor die Zentrierspitze einfährt: { $finding }
reason-turned = bei einer gedrehten Länge von { $turned } { -mm }: { $finding }
reason-bar-fed-out = bei einer gedrehten Länge von { $turned } { -mm }, mit der Stange zum Drehen bis { $end } { -mm } vorgeschoben: { $finding }
reason-along-cut = entlang des Schnitts, der bei { $end } { -mm } endet: { $finding }
reason-under-tool = bei der Bearbeitung „{ $work }“, bei einer gedrehten Länge von { $turned } { -mm }: { $finding }
reason-fed-on = mit der Stange bis { $turned } { -mm } vorgeschoben für „{ $work }“: { $finding }
reason-last-grip-torque = letzte Spannstelle, beim Abstechen oder bei der Rückseitenbearbeitung: { $finding } (torque_margin { $margin } ist eingerechnet)
reason-last-grip-torque-share = letzte Spannstelle, beim Abstechen oder bei der Rückseitenbearbeitung: { $finding } (torque_margin { $margin } ist eingerechnet; allein nach der Verdrehung der Stange gingen { $percent } % des Abstechmoments an diese Spannstelle; um das anzurechnen, torsional_stiffness angeben)
reason-last-grip-push = letzte Spannstelle, bei der Bearbeitung „{ $work }“: { $finding } (torque_margin { $margin } ist eingerechnet)
reason-last-grip-back = letzte Spannstelle, bei der Rückseitenbearbeitung („{ $work }“): { $finding }
reason-part-off = Abstechen
reason-front-work = Spannzange der Hauptspindel, unter der Last am vorderen Ende („{ $work }“): { $finding } (torque_margin { $margin } ist eingerechnet)
reason-front-work-presses = bei der Bearbeitung am vorderen Ende: { $finding }

## Why there is no plan

stopped-together = mehrere Grenzwerte halten die Stange hier auf, und alle müssen sich ändern: { $reasons }
stopped-other-collet = mit Spannzange { $collet } kommt die gedrehte Länge bis { $turned } { -mm }: { $reason }
stopped-no-grip = { $reason }; die Gegenspindel hilft nicht: { $why }
bar-too-thick-for-bush = die Stange von { $bar } { -mm } ist zu dick für die Führungsbuchse, die höchstens { $most } { -mm } aufnimmt
bar-too-thick-for-bush-only = die Stange von { $bar } { -mm } ist zu dick für die Führungsbuchse, die höchstens { $most } { -mm } aufnimmt; ohne die Buchse nimmt die Maschine { $collet } { -mm } auf, für kurze Teile
bar-too-thick-for-both = die Stange von { $bar } { -mm } ist zu dick für die Führungsbuchse, die höchstens { $most } { -mm } aufnimmt, und ohne die Buchse zu dick für die Spannzange der Hauptspindel, die höchstens { $collet } { -mm } aufnimmt
bar-too-thick-for-collet = die Stange von { $bar } { -mm } ist zu dick für die Spannzange der Hauptspindel, die höchstens { $most } { -mm } aufnimmt
tools-no-place = die Maschine hat nicht für jedes Werkzeug einen Platz: { $missing }
tools-no-pair = alle Drehwerkzeuge stehen auf einer Seite, ein gegenüberliegendes Paar kann deshalb nicht schneiden
tools-no-tandem = keine zwei Drehwerkzeuge können im Tandem schneiden, wenn das Schlichtwerkzeug auf dieser Seite steht (siehe `opposed` und `tandem` bei den Werkzeugen der Maschine)
tools-room = Plätze für { $place }: { $needed } nötig ({ $names }), { $places } an der Maschine
tools-room-elsewhere = Plätze für { $place }: { $needed } nötig ({ $names }), { $places } an der Maschine, { $elsewhere } weitere anderer Art sind nutzbar
place-turning = Drehwerkzeuge
place-cross-driven = angetriebene Querwerkzeuge
place-front-fixed = feste Werkzeuge für das vordere Ende
place-front-driven = angetriebene Werkzeuge für das vordere Ende
place-back-fixed = feste Werkzeuge für das hintere Ende
place-back-driven = angetriebene Werkzeuge für das hintere Ende
place-whirling = Wirbelgeräte
support-fails = nichts hält die Stange
support-fails-last-grip = die letzte Spannstelle hält das Teil nach dem Abstechen nicht
check-fails = ein Grenzwert ist überschritten
proof-found-limit = der Nachweis ergab, dass auf diesem Weg ein Grenzwert überschritten wird
drill-fails = ein angetriebenes Werkzeug biegt die Stange stärker durch als zulässig
part-off-not-held = beim Abstechen hält nichts das Teil
part-off-rear-work = Rückseitenbearbeitung braucht beim Abstechen eine Spannstelle, und diese Maschine hat keine Gegenspindel
part-off-too-large = beim Abstechen hält nichts das Teil, und mit { $length } { -mm } Länge und { $diameter } { -mm } Durchmesser ist es zu groß für die Auffangschale, die Teile bis { $most_length } { -mm } Länge und { $most_diameter } { -mm } Durchmesser aufnimmt (part_off.tray)
part-off-too-large-default = beim Abstechen hält nichts das Teil, und mit { $length } { -mm } Länge und { $diameter } { -mm } Durchmesser ist es zu groß, um ungespannt zu fallen: ohne part_off.tray in der Maschinendatei dürfen Teile bis { $most_length } { -mm } Länge und { $most_diameter } { -mm } Durchmesser fallen
part-off-no-collet = die Gegenspindel hat keine Spannzange, beim Abstechen hält deshalb nichts das Teil
front-not-gripped = keine Spannzange fasst das fertige vordere Ende
travel-end = die Gegenspindel mit ihrer Spannzange bei { $nose } { -mm } ist am Ende ihres Verfahrwegs von { $farthest } { -mm }
travel-end-centre = die Gegenspindel mit ihrer Zentrierspitze ist am Ende ihres Verfahrwegs von { $farthest } { -mm }
travel-too-short = die Gegenspindel mit ihrer Spannzange bei { $nose } { -mm } fährt nicht so weit
stroke-end-no-stop = der Spindelstock ist am Ende seines Hubs von { $stroke } { -mm }, und es gibt keine Stelle zum Nachgreifen: jede Fläche auf dem Weg muss ohne Ansatzlinie bleiben
stroke-end-front-free = der Spindelstock ist am Ende seines Hubs von { $stroke } { -mm }, und er darf nicht nachgreifen, solange das vordere Ende frei ist
stroke-end-centre = der Spindelstock ist am Ende seines Hubs von { $stroke } { -mm }, und er darf nicht nachgreifen, solange eine Zentrierspitze auf das vordere Ende drückt
driven-part-off = Abstechen
driven-torque = { $section } braucht ein Drehmoment von { $needed } N·m an der Spindel, die Hauptspindel hat aber nur { $most } N·m
driven-feed = { $section } braucht eine Vorschubkraft von { $needed } { -n }, der Spindelstock schiebt aber nur mit höchstens { $most } { -n }
driven-power = { $section } braucht selbst bei der kleinsten erlaubten Drehzahl { $rpm } 1/min (speed_floor) einen Motor mit { $needed } kW, die Hauptspindel hat aber nur { $most } kW
driven-front-work = { $work } braucht ein Drehmoment von { $needed } N·m an der Spindel, die Hauptspindel hat aber nur { $most } N·m
driven-rear-work = { $work } am hinteren Ende braucht ein Drehmoment von { $needed } N·m, die Gegenspindel hat aber nur { $most } N·m
segments-pull-back = { $section } braucht mehrere Durchgänge, und kein Rückzug ist kurz genug für die Toleranz
thread-long-no-unit = { $section } ist ein Gewinde von { $length } { -mm }. Für einen Gewindedrehmeißel muss die Stange um das ganze Gewinde zurückgezogen werden, möglich sind hier aber höchstens { $longest } { -mm }, denn { $stays } { -mm } der Führungslänge müssen auf ungedrehter Stange bleiben. Die Maschine hat kein Wirbelgerät (`tools.whirling`). Auswege: ein Wirbelgerät, Gewinderollen (`thread_by: rolling`), ohne Führungsbuchse arbeiten oder ein kürzeres Gewinde
thread-long-asked = { $section } ist ein Gewinde von { $length } { -mm }. Für einen Gewindedrehmeißel muss die Stange um das ganze Gewinde zurückgezogen werden, möglich sind hier aber höchstens { $longest } { -mm }, denn { $stays } { -mm } der Führungslänge müssen auf ungedrehter Stange bleiben. `thread_by: single_point` entfernen: das Gewinde kann gewirbelt werden. Andere Auswege: Gewinderollen (`thread_by: rolling`), ohne Führungsbuchse arbeiten oder ein kürzeres Gewinde
segments-interrupt = { $section } darf nicht unterbrochen werden, braucht aber { $travels } Durchgänge und deshalb { $segments } Segmente mit Ansatzlinien dazwischen

## Why no collet takes hold of the front

grip-no-stop = Spannzange { $collet } könnte bei einer gedrehten Länge von { $from } bis { $to } { -mm } fassen, aber der Vorschub kann dort nicht anhalten: { $why }
grip-no-stop-thread = { $section } ist ein Gewinde, und ein Gewinde darf nicht unterbrochen werden
grip-no-stop-never = { $section } darf nicht unterbrochen werden
grip-no-stop-segments = ein Abschnitt, der in mehreren Durchgängen gedreht wird, erlaubt einen Halt nur zwischen seinen Segmenten
grip-no-farther = mit einer Spannstelle bei { $nose } { -mm } kommt die gedrehte Länge nur bis { $turned } { -mm }: { $why }
grip-fails = Spannzange { $collet } kann bei einer gedrehten Länge von { $turned } { -mm } nicht fassen: { $why }
grip-out-of-travel = bei einer gedrehten Länge von { $turned } { -mm } kann die Gegenspindel Spannzange { $collet } an keine Stelle bringen, an der sie spannen könnte
grip-no-counter-spindle = die Maschine hat keine Gegenspindel
grip-forbidden = { $section } darf nicht gespannt werden
grip-wished-never = ein Wunsch verbietet eine Spannstelle auf { $section }
grip-front-too-thick = der Durchmesser von { $front } { -mm } vor { $section } geht nicht durch Spannzange { $collet }, die bis { $passes } { -mm } öffnet
grip-too-deep = { $section } liegt zu tief, die Bohrung der Gegenspindel nimmt nur { $depth } { -mm } auf
grip-no-clear-length = { $section } hat keine ungestörte Länge von { $hold } { -mm } für Spannzange { $collet }
grip-more-sections = { $reasons }; { $more ->
    [one] { $more } weiterer Abschnitt kann auch nicht gespannt werden
   *[other] { $more } weitere Abschnitte können auch nicht gespannt werden
}
grip-too-early = Spannzange { $collet } kann frühestens auf { $section } fassen, und dafür muss die gedrehte Länge mindestens { $from } { -mm } betragen
grip-nothing-plain = die Welle hat keinen glatten Abschnitt, den eine Spannzange spannen könnte
grip-no-collet-fits = keine Spannzange passt auf einen glatten Abschnitt ({ $diameters }): { $collets }
grip-collet-range = Spannzange { $collet } spannt { $from } bis { $to } { -mm }
length-mm = { $length } { -mm }

## Wishes

wish-impossible-no-counter-spindle = der Wunsch „{ $wish }“ ist nicht möglich: die Maschine hat keine Gegenspindel
wish-impossible-no-stop = der Wunsch „{ $wish }“ ist nicht möglich: der Vorschub darf dort nicht anhalten, auf { $section }
wish-impossible-no-grip = der Wunsch „{ $wish }“ ist nicht möglich: Spannzange { $collet } kann dort nicht spannen
wish-no-grip-goes-on = von der gewünschten Übergabe bei { $at } { -mm } aus führt keine Spannstelle weiter
wish-prevents = der Wunsch „{ $wish }“ verhindert einen Plan: { $reason }; ohne diesen Wunsch ist die Taktzeit { $seconds } s
wishes-prevent = die Wünsche zusammen verhindern einen Plan: { $reason }; ohne sie ist die Taktzeit { $seconds } s

## Changes

change-works = { $change }: Taktzeit { $seconds } s
set-works = { $changes }: Taktzeit { $seconds } s
change-saves = { $change }: spart { $seconds } s je Teil
change-saves-most = { $change }: spart { $seconds } s je Teil; die größte Ersparnis ist { $most } s: { $best }
change-drop-wish = den Wunsch „{ $wish }“ streichen
change-rpm = die Drehzahl auf { $rpm } 1/min am Stangendurchmesser senken ({ $vc } { -m-min })
change-speed-floor = verringerte Drehzahl zulassen, wo ein Grenzwert es verlangt, bis hinab zu { $percent } % der vollen Drehzahl
change-ap-max = eine Schnitttiefe von { $depth } { -mm } je Durchgang zulassen (wenn das Werkzeug es erlaubt)
change-no-bush = ohne Führungsbuchse arbeiten
change-bush = mit Führungsbuchse arbeiten
change-centre = das vordere Ende mit der Zentrierspitze der Gegenspindel halten (hold: centre)
change-tandem = in einem Durchgang schruppen und schlichten, mit zwei Werkzeugen im Tandem
change-opposed = mit einem gegenüberliegenden Paar drehen, damit sich die Radialkräfte ausgleichen
change-interrupt = einen Halt auf { $section } zulassen (er hinterlässt eine Ansatzlinie)
change-grip = eine Spannstelle auf { $section } zulassen
change-straightness = die bleibende Krümmung der gedrehten Welle auf { $bow } { -mm } je { -m } verringern
change-collet = eine Spannzange für { $diameter } { -mm } beschaffen (Spannlänge { $hold } { -mm }, Spannkraft { $force } { -n })
change-collet-opens = eine Spannzange für { $diameter } { -mm } beschaffen, die bis { $opens } { -mm } öffnet, damit das dickere vordere Ende durchgeht (Spannlänge { $hold } { -mm }, Spannkraft { $force } { -n })
change-bar = eine Stange von { $diameter } { -mm } verwenden
change-set-up = in einer zweiten Aufspannung als eigenen Arbeitsgang ausführen: { $work } ({ $seconds } s Bearbeitung und etwa { $loading } s zum Einlegen des Teils)
change-turn-round = das Teil vom anderen Ende her fertigen: die hintere Stirnfläche kommt zuerst aus der Buchse
change-shop-machine = auf { $machine } fertigen
change-limit = den Grenzwert { $limit } auf { $value } lockern (wenn Teil und Maschine es erlauben)
change-collet-run-out = Spannzangen der Gegenspindel mit höchstens { $mm } { -mm } Rundlaufabweichung verwenden
change-section-run-out = das { $times }-Fache der Rundlaufabweichung der Abschnitte zulassen (wenn die Konstruktion zustimmt)
change-shorter-stroke = den Spindelstock nur { $stroke } { -mm } seines Hubs nutzen und öfter nachgreifen lassen
change-axial-load = die Gegenspindel nur eine Axialkraft von { $force } { -n } auf die Welle halten lassen
change-stroke = eine Maschine mit einem Spindelstockhub von { $stroke } { -mm } verwenden
change-bush-max-bar = eine Maschine mit einer Führungsbuchse für { $bar } { -mm } verwenden
change-smaller-ap-max = höchstens { $depth } { -mm } in einem Schnitt abnehmen (ap_max)
change-smaller-feed = den Vorschub auf höchstens { $feed } { -mm-rev } begrenzen
change-power = eine Maschine mit { $power } kW an der Hauptspindel verwenden
change-torque = eine Maschine mit { $torque } N·m an der Hauptspindel verwenden
change-feed-force = eine Maschine verwenden, deren Spindelstock mit { $force } { -n } vorschiebt
change-counter-torque = eine Maschine mit { $torque } N·m an der Gegenspindel verwenden
change-headstock-clamp-force = eine Spannzange der Hauptspindel mit einer Spannkraft von { $force } { -n } verwenden (wenn die Stange es erlaubt)
change-farthest = eine Gegenspindel verwenden, die bis { $farthest } { -mm } ab Buchsenstirn fährt
change-bore-depth = eine Gegenspindel mit einer { $depth } { -mm } tiefen Bohrung verwenden
change-bore = eine Gegenspindel mit einer Bohrung von { $bore } { -mm } verwenden
change-clamp-force = in der Gegenspindel die { $times }-fache Spannkraft verwenden: { $collets } (wenn das Teil es erlaubt)
change-clamp-force-collet = Spannzange { $collet } { $force } { -n }
change-tray = das Teil in eine Auffangschale für Teile bis { $length } { -mm } Länge und { $diameter } { -mm } Durchmesser fallen lassen, wenn die Maschine eine hat (part_off.tray)
change-sleeve = Stützhülsen in die Bohrung der Gegenspindel setzen, im Abstand von { $pitch } { -mm }, je { $stiffness } N/µm
change-forming = den Innensechskant { $size } in feinen Hüben stoßen, statt ihn mit dem Stempel einzudrücken
change-step = mit { $step } { -mm } Schnitttiefe je Hub stoßen
change-whirling = eine Maschine mit Wirbelgerät verwenden, für die Gewinde, die für einen Gewindedrehmeißel zu lang sind
change-rolling = die Gewinde rollen, die für einen Gewindedrehmeißel zu lang sind (`thread_by: rolling`), mit Rollen so breit wie das Gewinde
change-engagement = beim Zurückziehen der Stange { $mm } { -mm } der Führungslänge auf ungedrehter Stange lassen (`engagement_min`)
change-tool-places = eine Maschine verwenden mit { $number ->
    [one] { $number } Platz
   *[other] { $number } Plätzen
} für { $place }

## What was tried

progress-sets = Suche nach Änderungen, die helfen: { $tried } Kombinationen versucht, jetzt { $set }
tried-stopped = Die Suche nach Änderungen wurde abgebrochen. Genannt ist, was bis dahin bekannt ist
tried-bound = Die Suche nach Änderungen endete an ihrer Rechengrenze, nach { $sets } Kombinationen von Änderungen. Eine Kombination, die hilft, kann es geben
tried-forbidden = Keine Kombination von Änderungen hilft. Selbst mit allen { $changes } Änderungen der Liste zusammen gilt: { $reason }
tried-more = Keine Kombination von bis zu { $most } Änderungen genügt ({ $sets } Kombinationen wurden versucht). Alle Änderungen der Liste zusammen würden genügen
tried-all = Keine Kombination von Änderungen genügt für { $job } ({ $sets } Kombinationen wurden versucht)
progress-finer-stops = kein Plan mit Halten alle { $coarse } { -mm }, nächster Versuch: alle { $fine } { -mm }

## Notes

note-not-listed = Nicht in der Werkzeugliste: { $tools }. Für diese gelten die Zahlen unter `cutting`
note-drive = Bei den Drehzahlen dieses Plans braucht das Drehen bis zu { $power } kW vom Motor der Hauptspindel ({ $power_at }), ein Drehmoment von { $torque } N·m an der Spindel ({ $torque_at }) und eine Vorschubkraft von { $force } { -n } ({ $force_at })
note-drive-not-given = { $told }. Die Maschinendatei nennt nicht: { $keys }. Prüfen Sie die Maschine.
note-power-lowers = { $section }: die Leistung der Hauptspindel von { $power } kW senkt die Drehzahl. Die Durchgänge laufen mit höchstens { $speeds } 1/min
note-ground = { $section } wird später geschliffen: gedreht auf { $turned }, geschliffen auf { $ground }
note-small-radius = { $section }: die Ecke hat einen Radius von { $radius } { -mm }, mit dem Eckenradius des Werkzeugs wird er mindestens { $nose } { -mm }
note-whirled = ein Gewinde ist zu lang, um die Stange für einzelne Gewindeschnitte zurückzuziehen, oder `thread_by` verlangt es so: es wird in einem Durchgang gewirbelt
note-whirled-assumed = ein Gewinde ist zu lang, um die Stange für einzelne Gewindeschnitte zurückzuziehen, oder `thread_by` verlangt es so: es wird in einem Durchgang gewirbelt. Ein Wirbelgerät wird angenommen, weil die Maschinendatei keine Werkzeugplätze nennt. Schreiben Sie `tools` mit `whirling: 1`, oder ohne `whirling`, wenn die Maschine keines hat
note-rolled = { $section }: das Gewinde wird gerollt, auf einem Vordrehdurchmesser von { $blank } { -mm }, etwa dem Flankendurchmesser. Die Rollen müssen mindestens so breit sein wie das Gewinde, { $length } { -mm }. Ermitteln Sie den genauen Vordrehdurchmesser durch Versuch; die Rollkraft wird nicht berechnet
note-left-hand = { $section }: { $thread } ist ein Linksgewinde. Drehrichtung der Spindel, Vorschub und Werkzeug prüfen
note-passive-deep = Die Passivkräfte wurden bis zu einer Schnitttiefe von { $measured } { -mm } mit gemessenen verglichen. Der tiefste Schnitt hier ist { $depth } { -mm }, seine Passivkraft ist deshalb extrapoliert.
note-passive-floor = Wo die Schneide eine kleinere Passivkraft ergibt, zählen { $share } der Schnittkraft (cutting.passive_floor; allgemeine Praxis, ohne Quelle).
note-chips-of-drill = Der Span des Bohrers von { $size } { -mm } ist { $chip } { -mm } dick; seine Kraft ist extrapoliert: spezifische Schnittkräfte sind bekannt für Späne von { $low } bis { $high } { -mm }. Dünnere Späne brauchen mehr Kraft als extrapoliert, weil die Schneide nicht scharf ist.
note-chips-of-tap = Der Span des Gewindebohrers von { $size } { -mm } ist { $chip } { -mm } dick; seine Kraft ist extrapoliert: spezifische Schnittkräfte sind bekannt für Späne von { $low } bis { $high } { -mm }. Dünnere Späne brauchen mehr Kraft als extrapoliert, weil die Schneide nicht scharf ist.
note-chips-of-cutter = Der Span des Fräsers von { $size } { -mm } ist im Mittel { $chip } { -mm } dick; seine Kraft ist extrapoliert: spezifische Schnittkräfte sind bekannt für Späne von { $low } bis { $high } { -mm }. Dünnere Späne brauchen mehr Kraft als extrapoliert, weil die Schneide nicht scharf ist.
note-chips-of-turning = Der Span beim Drehen mit einem Vorschub von { $size } { -mm-rev } ist { $chip } { -mm } dick; seine Kraft ist extrapoliert: spezifische Schnittkräfte sind bekannt für Späne von { $low } bis { $high } { -mm }. Dünnere Späne brauchen mehr Kraft als extrapoliert, weil die Schneide nicht scharf ist.
note-drill-size = Die Vorschubkraft des Bohrers von { $size } { -mm } ist extrapoliert: ihre Formel ist bekannt für Bohrer von { $low } bis { $high } { -mm }.
note-class-assumed = Bohrer, Gewindebohrer und Fräser laufen wie in dieser Werkstoffklasse: { $class }. Das wurde aus Elastizitätsmodul, Dichte und kc1.1 angenommen (Werkstoff { $material }). Geben Sie `class` in shaft.material an, wenn es etwas anderes ist.
note-feed-lowered = { $section }: Vorschub von { $given } auf { $feed } { -mm-rev } gesenkt, um Ra { $ra } { -um } zu erreichen, mit dem { $factor }-Fachen der idealen Rauheit (cutting.ra_factor)
note-ra-floor = { $section }: Ra { $ra } { -um } liegt nicht über der Rauheit, die beim Drehen mit jedem Vorschub bleibt, { $floor } { -um } (cutting.ra_floor). Der Vorschub ist der für { $floor } { -um }. Schleifen oder polieren Sie diese Fläche, oder senken Sie ra_floor, wenn Ihre Maschine feiner dreht.
note-unusual-pitch = { $thread }: { $standard } hat kein solches Gewinde; prüfen, ob es ein Werkzeug dafür gibt
note-falls-by-default = Das Teil fällt beim Abstechen, weil es klein ist: ohne part_off.tray in der Maschinendatei dürfen Teile bis { $length } { -mm } Länge und { $diameter } { -mm } Durchmesser fallen (allgemeine Praxis, ohne Quelle). Hat die Maschine keine Auffangschale oder eine kleinere, geben Sie part_off.tray an: mit einer Länge von 0 fällt kein Teil.
note-centre = Die Zentrierspitze kommt, wenn das vordere Ende fertig ist, und fährt vor dem Abstechen zurück. Für beides zusammen zählt die Zeit einer Übergabe (allgemeine Praxis, ohne Quelle).
note-torque-share = Die knappste Prüfung ist das Drehmoment beim Abstechen, und der letzten Spannstelle wird das ganze angerechnet. Allein nach der Verdrehung der Stange gingen { $percent } % davon an diese Spannstelle. Um das anzurechnen, geben Sie `torsional_stiffness` der Gegenspindel an.
note-no-limit-costs = Kein Grenzwert kostet Zeit: kein einzelner Grenzwert ergibt gelockert einen schnelleren Plan.
note-rule-left-out = { $rule }; diese Regel ist bei den hier gezeigten Werten weggelassen
optimum-proven = es gibt keinen schnelleren Plan ({ $stops } mögliche Halte versucht)
note-slow-cutting = Die verringerte Drehzahl auf { $section } ergibt eine Schnittgeschwindigkeit von { $speed } { -m-min }, unter den üblichen { $low } bis { $high } { -m-min } für { $material }. Die Fläche kann rauer werden. Prüfen Sie sie am ersten Teil.
optimum-gap = höchstens { $percent } % langsamer als der schnellste mögliche Plan ({ $stops } mögliche Halte versucht)

## The timeline

timeline-hand-over = Übergabe bei { $at } { -mm }
timeline-centre = Zentrierspitze: kommt vor dem ersten Schnitt, fährt vor dem Abstechen zurück
timeline-regrip = Nachgreifen des Spindelstocks bei { $at } { -mm }
timeline-part-off = Abstechen
timeline-part-off-falls = Abstechen, das Teil fällt in die Auffangschale
timeline-unload = Teil entladen
critical-hand-overs = Übergaben
critical-regrips = Nachgreifen
critical-tool-changes = Werkzeugwechsel
critical-cutting = Zerspanen { $section }
critical-overhead = Anfahren und Rücklauf

## Tolerances

tolerance-not-in-table = die Tabelle der Toleranzklassen enthält keinen Durchmesser von { $diameter } mm, sie reicht bis { $most } mm
tolerance-not-in-table-help = geben Sie die Abmaße in mm an: `tolerance: [-0.05 mm, 0]`

## The mechanics at one moment

at-out-of-range = `--{ $option }` ist { $value }
at-out-of-range-help = `--{ $option }` muss von { $low } bis { $high } sein
at-not-held = nichts hält die Stange in diesem Zustand
at-not-held-help = prüfen Sie die Steifigkeiten in der Maschinendatei
at-no-counter-spindle = die Maschine hat keine Gegenspindel
at-no-counter-spindle-help = lassen Sie `--grip` weg
at-grip-on-centre = Mit `hold: centre` hält keine Spannzange das vordere Ende
at-grip-on-centre-help = Lassen Sie `--grip` weg, oder schreiben Sie `hold: collet` in den Auftrag
at-no-such-collet = die Maschine hat keine Spannzange { $collet }
at-no-such-collet-help = ihre Spannzangen sind: { $collets }
at-no-collet-fits = keine Spannzange der Maschine spannt { $diameter } { -mm }, den Durchmesser bei { $at } { -mm }
at-no-collet-fits-help = verschieben Sie `--grip`, oder wählen Sie für die Rechnung eine Spannzange mit `--collet`: { $collets }
at-stage-end-with-bush = `--stage-end` gilt für Arbeit ohne Buchse
at-stage-end-with-bush-help = lassen Sie `--stage-end` weg
at-headstock-without-bush = `--headstock` gilt für Arbeit mit Führungsbuchse
at-headstock-without-bush-help = verwenden Sie `--stage-end`: ohne Buchse wird die Spannzange der Hauptspindel für das Ende der Etappe gestellt
at-cannot-be-cut-help = rufen Sie `check` auf, um zu sehen, was helfen würde

## A place of a plan moved by hand

move-no-plan = es gibt keinen Plan, also kann nichts verschoben werden
move-no-plan-help = berichtigen Sie zuerst den Auftrag
move-not-there = die Stelle lässt sich nicht dorthin verschieben
move-not-there-help = eine Etappe muss eine Länge behalten, und eine Übergabe muss zwischen den benachbarten Übergaben bleiben
move-off-shaft = die Spannzange wäre nicht auf der Welle

## Faults found by the proof

proof-failed = der Plan besteht seinen Nachweis nicht ({ $rule }: { $text })
proof-limit = bei einer gedrehten Länge von { $turned } { -mm } ist der Wert { $demand }, der Grenzwert ist { $limit }
proof-no-plan = dies ist kein machbarer Plan
proof-no-such-collet = die Maschine hat keine Spannzange { $collet }
proof-no-counter-spindle = der Plan verwendet Spannzange { $collet }, aber die Maschine hat keine Gegenspindel
proof-way-of-turning = der Plan gilt für: { $holding }, { $tools }; der Auftrag verlangt: { $job_holding }, { $job_tools }
proof-bar-too-thick = die Stange von { $bar } { -mm } ist zu dick, bei dieser Art zu drehen sind höchstens { $most } { -mm } möglich
proof-stage-order = die Etappe läuft von { $from } bis { $to } { -mm }, aber die vorige Etappe endet bei { $before } { -mm }
proof-free-stage = das vordere Ende muss in der ersten Etappe frei sein und in keiner anderen
proof-centre-not-asked = der Plan hat eine Zentrierspitze, und der Auftrag verlangt keine
proof-centre-told = der Plan nennt die Zentrierspitze des Auftrags nicht
proof-centre-stages = mit Zentrierspitze ist das ganze Teil eine einzige Etappe
proof-centre-travel = am Ende ist die Stirn der Gegenspindel { $at } { -mm } von der Buchsenstirn entfernt, und sie fährt bis { $farthest } { -mm }
proof-driven = der Schnitt von { $from } bis { $to } { -mm } braucht { $needed }, und die Hauptspindel hat { $limit }
proof-drive = der Plan nennt für die Hauptspindel einen anderen Bedarf als { $power } kW, { $torque } N·m und { $force } { -n }
proof-bar-feed = der Schnitt von { $from } bis { $to } { -mm } läuft mit { $rpm } 1/min, aber der Stangenlader erlaubt höchstens { $most }
proof-part-off-told = was der Plan über das Teil beim Abstechen sagt, stimmt nicht mit seiner letzten Etappe und der Maschine überein
proof-falls-rear-work = beim Abstechen hält nichts das Teil, aber sein hinteres Ende muss danach bearbeitet werden
proof-too-large-to-fall = beim Abstechen hält nichts das Teil, und mit { $length } { -mm } Länge und { $diameter } { -mm } Durchmesser darf es nicht fallen: zulässig sind höchstens { $most_length } { -mm } Länge und { $most_diameter } { -mm } Durchmesser
proof-end = die letzte Etappe endet bei { $end } { -mm }, aber abgestochen wird bei { $part_off } { -mm }
proof-no-stop = der Vorschub darf bei { $at } { -mm } nicht anhalten
proof-hand-overs-listed = die Liste der Übergaben stimmt nicht mit den Etappen überein
proof-regrips-listed = die Liste des Nachgreifens stimmt nicht mit den Etappen überein
proof-no-feed-out = ohne Buchse muss jede Etappe nach der ersten mit dem Nachgreifen des Spindelstocks beginnen
proof-regrip-outside = das Nachgreifen des Spindelstocks bei { $at } { -mm } liegt außerhalb seiner Etappe
proof-regrip-front-free = die Spannzange der Hauptspindel öffnet bei { $at } { -mm }, während das vordere Ende frei ist
proof-stroke = von { $from } bis { $to } { -mm } bräuchte der Spindelstock mehr als seinen Hub von { $stroke } { -mm }
proof-grip-no-collet = die Etappe hat eine Spannstelle, aber der Plan hat keine Spannzange
proof-grip-length = die Spannstelle hat nicht die Spannlänge der Spannzange
proof-grip-forbidden = { $section } darf nicht gespannt werden
proof-grip-diameter = Spannzange { $collet } spannt { $diameter } { -mm } nicht
proof-grip-described = der Plan sagt, die Spannstelle sei auf { $diameter } { -mm } von Abschnitt { $section }, sie ist aber auf { $real_diameter } { -mm } von Abschnitt { $real_section }
proof-grip-not-plain = die Spannstelle von { $from } bis { $to } { -mm } liegt nicht auf einem einzigen Zylinder
proof-grip-feature = eine Bohrung oder Passfedernut von { $from } bis { $to } { -mm } liegt unter der Spannstelle
proof-grip-front = der Durchmesser von { $front } { -mm } davor geht nicht durch Spannzange { $collet }, die bis { $passes } { -mm } öffnet
proof-grip-depth = { $length } { -mm } der Welle passen nicht in die Bohrung der Gegenspindel, die { $depth } { -mm } tief ist
proof-grip-not-turned = bei einer gedrehten Länge von { $turned } { -mm } ist die Spannstelle bis { $to } { -mm } noch nicht gedreht
proof-grip-travel = bei einer gedrehten Länge von { $turned } { -mm } ist die Spannzange { $distance } { -mm } von der Buchsenstirn entfernt, zulässig sind { $nearest } bis { $farthest } { -mm }
proof-time = der Plan gibt { $given } s an für { $name }, die Summe ist aber { $sum } s
proof-cycle-time = der Plan gibt eine Taktzeit von { $given } s an, die Vorgänge ergeben aber { $sum } s
proof-wish = der Wunsch „{ $wish }“ ist nicht eingehalten
proof-wish-grip = die Spannstelle von { $from } bis { $to } { -mm } widerspricht dem Wunsch „nie spannen: { $name }“
proof-wish-hand-overs = der Plan hat { $number } Übergaben, der Wunsch erlaubt aber höchstens { $most }
proof-cut-not-as-asked = der Schnitt von { $from } bis { $to } { -mm } ist nicht so, wie der Auftrag es verlangt
proof-cut-missing = die Länge von { $from } bis { $to } { -mm } wird von keinem Schnitt gedreht
proof-speed = von { $from } bis { $to } { -mm } sieht der Plan { $rpm } 1/min vor, der Auftrag verlangt { $wanted } 1/min
proof-speed-range = von { $from } bis { $to } { -mm } sieht der Plan { $rpm } 1/min vor, der Auftrag verlangt { $least } bis { $wanted } 1/min
proof-not-held = nichts hält die Stange
proof-not-held-at = bei einer gedrehten Länge von { $turned } { -mm } hält nichts die Stange
proof-not-held-open = nichts hält die Stange, während die Spannzange der Gegenspindel offen ist
proof-not-held-last = die letzte Spannstelle hält das Teil nicht
proof-no-tool-place = die Maschine hat nicht für jedes Werkzeug einen Platz
proof-timeline-order = der Zeitablauf zeigt die Arbeit an den Halten nicht in der Reihenfolge, die nachgewiesen ist
proof-fed-on = { $work }: vorgesehen bei einer gedrehten Länge von { $turned } { -mm }, aber die Maschine kann die Stange nicht so weit vorschieben
proof-work-missing = { $work }: nicht dort vorgesehen, wo das Werkzeug hinkommt
proof-work-stage = { $work } bei einer gedrehten Länge von { $turned } { -mm } gehört nicht zu dieser Etappe
proof-length = der Plan sagt { $told } { -mm }, die Welle ist aber { $length } { -mm } lang
proof-margin = der Plan sagt { $told }, der Nachweis ergibt aber { $proven }
proof-margin-missing = der Plan nennt keine Reserve, der Nachweis ergibt aber { $proven }
proof-margin-at = { $check } nutzt { $used } des Grenzwerts, das ergibt keine Reserve von { $margin }
proof-line-missing = der Halt bei { $at } { -mm } hinterlässt eine Ansatzlinie, die nicht im Plan steht
proof-line-without-stop = der Plan hat eine Ansatzlinie bei { $at } { -mm }, aber dort ist kein Halt
proof-line-section = die Ansatzlinie bei { $at } { -mm } liegt auf Abschnitt { $section }, gekennzeichnet „{ $interrupt }“
proof-pieces = der Plan sagt { $told } Teile je Stange, eine Stange ergibt aber { $real }
proof-material = der Plan sagt { $told_kg } kg je Teil und ein Reststück von { $told_mm } { -mm }, es sind aber { $kg } kg und { $mm } { -mm }
proof-cost = der Plan sagt { $told } je Teil, die Kosten sind aber { $real }
proof-cost-no-rates = der Plan sagt { $told } je Teil, der Auftrag nennt aber keine Kostensätze
proof-cost-missing = der Plan nennt keine Kosten, die Kostensätze des Auftrags ergeben aber { $real }

## Cautions: general rules of safe turning, common practice, no source

estimate = Eine Schätzung: Es entscheiden die Anleitung der Maschine, die örtlichen Vorschriften und ein qualifizierter Einrichter.
caution-not-a-plan = Nicht ausführen: Dies ist kein Plan. Die Etappen zeigen nur, wie weit die Arbeit innerhalb ihrer Grenzwerte käme.
caution-twice = { $own } (English: { $english })
caution-read-first = Vor dem Einrichten die Sicherheitshinweise auf den folgenden Seiten lesen. Es entscheiden die Anleitung der Maschine, die örtlichen Vorschriften und ein qualifizierter Einrichter.
caution-estimate = Dies ist eine Schätzung. Schnittkräfte sind bestenfalls auf ± 25 % genau. Steifigkeiten sind nur so gut wie die Werte, die für die Maschine angegeben sind.
caution-who-decides = Es entscheiden die Anleitung der Maschine, die örtlichen Vorschriften und ein qualifizierter Einrichter. Weichen sie von diesem Plan ab, befolgen Sie diese und nicht den Plan.
caution-first-piece = Das erste Teil mit verringerter Drehzahl und verringertem Vorschub einfahren, Satz für Satz, bei geschlossenen Türen. Das Teil messen, bevor Drehzahl oder Vorschub erhöht werden.
caution-limits = Nie die Grenzen einer Etappe überschreiten: ihre gedrehte Länge, ihre ungestützte Länge, ihre Drehzahl. Auch die Grenzen der Maschine, der Spannzangen und des Stangenladers gelten. Die niedrigste Grenze zählt.
caution-at-risk = Dieser Plan ist RISKANT. Mit unsicheren Eingangsgrößen bleiben nur { $good } von 100 simulierten Teilen innerhalb jedes Grenzwerts. Drehzahl und Tiefe in kleinen Schritten erhöhen, die Stange bei jedem Schritt beobachten und die Maschine anhalten, wenn die Stange schwingt, schlägt oder aus dem Maß läuft.
caution-bar-behind = Keine ungestützte Stange hinter der Hauptspindel: über einer bestimmten Drehzahl biegt sie sich aus und schlägt um sich. Die Stange über ihre volle Länge führen oder kürzer ablängen.
caution-front-free = { $number ->
    [one] In Etappe { $stages } dreht sich das vordere Ende des Teils frei. Sich nicht in der Ebene aufhalten, in der es sich dreht, und die Drehzahl in Schritten erhöhen.
   *[other] In den Etappen { $stages } dreht sich das vordere Ende des Teils frei. Sich nicht in der Ebene aufhalten, in der es sich dreht, und die Drehzahl in Schritten erhöhen.
}
caution-counter-spindle = Teil in der Gegenspindel: Spannzange, Einspannung und Synchronlauf prüfen, bevor die Spannzange der Hauptspindel öffnet, und noch einmal vor dem Abstechen. Versagt die Einspannung oder der Synchronlauf, müssen beide Spindeln gemeinsam anhalten.
caution-front-long = Das freie vordere Ende wird { $ratio } mal so lang wie sein Durchmesser. Ein langes dünnes vorderes Ende kann schlagen: die Drehzahl in Schritten erhöhen, es beobachten und außerhalb seiner Reichweite bleiben.
caution-centre = Eine Zentrierspitze stützt das vordere Ende: die Spitze schmieren oder kühlen, ihre Kraft einstellen, bevor sich die Stange dreht, und prüfen, ob die Zentrierbohrung sauber ist. Die Etappe nicht ohne die Spitze drehen. Die Spitze muss vor dem Abstechen zurückfahren; danach dreht sich das vordere Ende frei: sich deshalb nicht in der Ebene aufhalten, in der es sich dreht.
caution-thin-wall = Die Wand ist nur { $wall } { -mm } dick, wo eine Spannzange Ø{ $held } { -mm } spannt. Die Spannzange kann die Wand zusammendrücken: mit weniger Kraft spannen oder einen Stopfen in die Bohrung setzen, und das erste Teil messen.
caution-part-off-not-held = Beim Abstechen hält nichts das Teil: es kommt frei, während es sich dreht. Langsam abstechen, das Teil von einer Auffangschale auffangen lassen, sich von seinem Weg fernhalten und nie nach dem Teil greifen.
caution-part-falls = Das Teil fällt beim Abstechen in die Auffangschale. Es kommt frei, während es sich dreht: es kann sich im Werkzeug verfangen, und es kann beim Fallen Druckstellen bekommen oder verbogen werden. Das letzte Stück des Schnitts verlangsamen, den Weg zur Auffangschale frei halten, die Türen geschlossen halten und die ersten Teile ansehen, bevor es weitergeht.
caution-no-bush = Ohne die Führungsbuchse hält nur die Spannzange der Hauptspindel die Stange. Die angegebenen Längen nicht überschreiten.
caution-fixed-bush = Die Führungsbuchse steht still, und der Durchmesser der Stange { $bar } kann um { $width } { -mm } schwanken, das sind { $side } { -mm } auf jeder Seite. Eine feste Buchse braucht { $least } bis { $widest } { -mm } Spiel auf jeder Seite, also Stangen in h6 oder h7 (Toleranz höchstens { $most } { -mm }). In einer zu weiten Buchse wird das Teil unrund; in einer zu engen frisst die Stange. Geschliffene Stangen oder eine mitlaufende Buchse verwenden oder ohne die Buchse arbeiten.
caution-fixed-bush-unknown = Die Führungsbuchse steht still, und die Toleranz der Stange ist nicht angegeben. Eine feste Buchse braucht { $least } bis { $widest } { -mm } Spiel auf jeder Seite, also geschliffene Stangen in h6 oder h7 (Toleranz höchstens { $most } { -mm }). Für gezogene oder gedrehte Stangen (h9 bis h12) eine mitlaufende Buchse verwenden oder ohne die Buchse arbeiten.
caution-following-bush = Die Führungsbuchse läuft mit der Stange um, und der Durchmesser der Stange { $bar } kann um { $width } { -mm } schwanken. Eine solche Buchse nimmt Stangen bis etwa h9 auf (Toleranz höchstens { $most } { -mm }; allgemeine Praxis). In einer zu weiten Buchse wird das Teil unrund; in einer zu engen klemmt die Stange. Stangen in h9 oder enger toleriert verwenden oder ohne die Buchse arbeiten.
caution-following-bush-unknown = Die Führungsbuchse läuft mit der Stange um, und die Toleranz der Stange ist nicht angegeben. Eine solche Buchse nimmt Stangen bis etwa h9 auf (Toleranz höchstens { $most } { -mm }; allgemeine Praxis). Stangen in h9 oder enger toleriert verwenden oder ohne die Buchse arbeiten.
caution-bored = Die Steifigkeit berücksichtigt Bohrungen, Innensechskante und Nabennuten nicht: an diesen Stellen ist die Welle weicher als berechnet.
caution-cross-work = Die Steifigkeit berücksichtigt Querbohrungen und Passfedernuten nicht: an diesen Stellen ist die Welle weicher als berechnet.
caution-work-aside = Während das hintere Ende eines Teils bearbeitet wird, wird das nächste Teil am vorderen Ende schon gedreht. Sicherstellen, dass Gegenspindel, Teil und Werkzeuge in jeder Stellung vom nächsten Teil frei bleiben. Dies zuerst ohne Teil ausprobieren.
caution-shaving = Stoßwerkzeuge und Stempel drehen sich nicht. Die Spindel muss stillstehen, in ihrer Winkellage gehalten werden und gegen Anlaufen gesperrt sein, während diese Werkzeuge ihre Hübe machen. Die Kraft wirkt in Achsrichtung: zuerst die Einspannung prüfen.
caution-never-line = Der Vorschub hält für ein Formelement auf einer Fläche an, die mit „never“ gekennzeichnet ist, und hinterlässt dort eine Ansatzlinie: { $places }. Dies mit der Konstruktion vereinbaren oder das Formelement anderswo fertigen.
caution-never-line-place = { $at } { -mm } auf { $section }
caution-section = Abschnitt { $number }
caution-section-named = Abschnitt { $number } ({ $name })
caution-not-a-program = Diese Tabelle ist kein Programm und darf auf keiner Maschine ausgeführt werden. Ein qualifizierter Programmierer muss daraus ein Programm machen und ergänzen: Sicherheitsabstände, Freifahrwege der Werkzeuge, Drehzahlen der Arbeiten, für die hier keine steht, und alle Verriegelungen. Das Programm zuerst ohne Teil testen (Trockenlauf). Es gilt die Anleitung der Maschine.
caution-chips = Lange Späne wickeln sich um schlanke Werkstücke. Zum Entfernen der Späne die Maschine anhalten. Späne nie von Hand entfernen, solange sich die Maschine dreht.

## Roughing and finishing

tandem-no-bush = es gibt keine Führungsbuchse, der letzte Schnitt ist deshalb ein eigener Durchgang
tandem-no-tools = die Maschine nennt keine zwei Werkzeuge dafür (`opposed` oder `tandem` bei ihren Werkzeugen)
tandem-back = der Durchmesser fällt an seinem vorderen Ende ab, und beide Werkzeuge müssten Rückwärtsdrehwerkzeuge sein
tandem-in-counter-spindle = die Gegenspindel kommt bis auf { $nearest } { -mm } an die Buchse, und das Schlichtwerkzeug stünde in ihr
tandem-step = wenn das Schruppwerkzeug am Ende abhebt, ändert sich der Durchmesser um { $step } { -um }, und zulässig sind höchstens { $limit } { -um }
note-one-cut = { $section } verlangt { $asked } und wird { $depth } { -mm } tief in einem Schnitt gedreht, ohne Schlichtschnitt. { $instead }
note-one-cut-both = Ein letzter Schnitt ist ohne Linie möglich (`finish_pass: true`), oder ein zweites Werkzeug schlichtet im selben Durchgang (`tools: tandem`).
note-one-cut-pass = Ein letzter Schnitt ist ohne Linie möglich (`finish_pass: true`).
note-one-cut-tandem = Für einen letzten Schnitt lässt sich der Abschnitt nicht im Ganzen zurückziehen. Ein zweites Werkzeug kann im selben Durchgang schlichten (`tools: tandem`).
note-one-cut-why = Für einen letzten Schnitt lässt sich der Abschnitt nicht im Ganzen zurückziehen, und zwei Werkzeuge können ihn nicht in einem Durchgang drehen: { $why }.
note-tandem = Von zwei Werkzeugen in einem Durchgang geschruppt und geschlichtet: { $sections }.
note-tandem-last-pass = { $section } hat einen eigenen letzten Schnitt. Die beiden Werkzeuge des Tandems drehen den Abschnitt nicht zusammen: { $why }.
asked-ra = Ra { $ra }
asked-tolerance = eine Toleranz von { $width } { -mm }
asked-both = eine Toleranz von { $width } { -mm } mit Ra { $ra }
progress-confidence = Suche nach einem Plan, der bei { $share } der simulierten Teile hält
plan-confidence-range = verlangt ist ein Anteil von Teilen, { $range }: für 95 von 100 Teilen 0.95 schreiben
measure-support = { $reading }. `spanhold fit` macht aus solchen Messungen eine Steifigkeit und ihre Streuung
measure-centre = Einen Prüfstab mit der Zentrierspitze andrücken, ihn neben der Spitze seitlich belasten und dort eine Messuhr ablesen: Last durch Auslenkung, abzüglich der Biegung des Stabs, ist die Steifigkeit der Spitze
measure-sleeve = Einen Prüfstab in der Gegenspindel neben einer Stützhülse seitlich belasten und dort eine Messuhr ablesen
measure-kc = Einen Probeschnitt drehen, der tief genug ist, um die Leistung der Hauptspindel mit und ohne Schnitt abzulesen. Die Differenz, geteilt durch Spanungsquerschnitt und Schnittgeschwindigkeit, ist kc bei der Spanungsdicke h dieses Schnitts. kc mal h (in mm) hoch mc als kc11 eines eigenen Werkstoffs eintragen
measure-passive = Ein freies Ende zweimal mit derselben Tiefe drehen, nahe an der Spannzange und weit davon. Die Durchmesser unterscheiden sich um das Doppelte der Passivkraft durch die dortige Steifigkeit
measure-e = Die Stange auf zwei Auflager legen, in der Mitte belasten und dort eine Messuhr ablesen. Den Durchmesser auf { $fine } { -mm } messen: E folgt aus der Durchbiegung
measure-damping = Die gespannte Stange anschlagen, das Ausschwingen aufzeichnen und die Schwingungen n zählen, bis es auf die Hälfte abgeklungen ist: der Dämpfungsgrad ist 0,11 / n
measure-ra = Ra an einem gedrehten Teil messen. Diesen Wert durch f² / (32 × Eckenradius) teilen (f: Vorschub je Umdrehung) und das Ergebnis als cutting.ra_factor eintragen
measure-straightness = Einige Teile drehen, jedes auf zwei Auflagern rollen und in der Mitte eine Messuhr ablesen. Die Geradheit ist die Hälfte der mittleren Anzeige, geteilt durch das Quadrat des Auflagerabstands in Metern
measure-bar = Die Stangen des Loses an beiden Enden messen und ihre Toleranz oder scatter.bar eintragen
measure-run-out = Einen geschliffenen Prüfstift in die Spannzange spannen, ihn drehen und eine Messuhr ablesen. Die Anzeige als run_out der Spannzange eintragen
sampled-no-plan-help = zuerst ist ein Plan nötig; sehen Sie nach, was ihn verhindert
sampled-no-part = es gibt kein simuliertes Teil mit dieser Nummer
sampled-no-part-help = geben Sie eine Nummer von 1 bis { $samples } an
recheck-holds = Er hält bei { $good } von 100 simulierten Teilen.
recheck-holds-told = Er hält bei { $good } von 100 simulierten Teilen; der Plan sagt { $told }.
recheck-at-risk = RISKANT: er hält nur bei { $good } von 100 simulierten Teilen.
recheck-at-risk-told = RISKANT: er hält nur bei { $good } von 100 simulierten Teilen; der Plan sagt { $told }.
measure-counter-spindle = Einen Prüfstab spannen, dessen Durchmesser eine der Spannzangen hält, ihn neben der Zangenstirn belasten und dort eine Messuhr ablesen. `spanhold fit` macht aus solchen Messungen eine Steifigkeit und ihre Streuung
