# Tables, drawings and the sheet.

# Amounts.
stages = { $number ->
    [one] { $number } Etappe
   *[other] { $number } Etappen
}
hand-overs = { $number ->
    [one] { $number } Übergabe
   *[other] { $number } Übergaben
}
regrips = { $number ->
    [one] { $number } × Nachgreifen
   *[other] { $number } × Nachgreifen
}
pieces = { $number ->
    [one] { $number } Teil
   *[other] { $number } Teile
}
bars = { $number ->
    [one] { $number } Stange
   *[other] { $number } Stangen
}
readings = { $number ->
    [one] { $number } Messung
   *[other] { $number } Messungen
}

# The first line.
verdict-feasible = MACHBAR
verdict-at-risk = RISKANT
verdict-not-feasible = NICHT MACHBAR
verdict-holds = hält bei { $good } von 100 simulierten Teilen; { $made }
verdict-headline = { $name }: { $summary }
verdict-made = { $stages }, { $hand_overs }, { $regrips }, Taktzeit { $seconds } s, { $pieces } aus einer Stange
verdict-made-tightest = { $made }; knappste Prüfung: { $tightest }
verdict-made-short = { $stages }, Taktzeit { $seconds } s, { $pieces } aus einer Stange
verdict-tightest = { $check }, { $used } des Grenzwerts
verdict-tightest-in-stage = { $check }, { $used } des Grenzwerts, in Etappe { $stage }
verdict-stops-before-end = drehbar bis { $reached } { -mm } von { $length } { -mm }; dort: { $what }
verdict-stops-at-part-off = drehbar bis zur vollen Länge von { $length } { -mm }, aber nicht abzustechen: { $what }
verdict-no-plan = es wurde kein Plan gefunden
tightest-check = Knappste Prüfung: { $check }, bei gedrehter Länge { $turned } { -mm }
reasons-both = { $first }, und { $second }
stops-stiffness = die Stange ist am Werkzeug zu weich
stops-span-stiffness = die Stange ist zwischen Spannstelle und Buchse zu weich
stops-free-ratio = das freie vordere Ende ist zu lang für seinen Durchmesser (betriebliche Regel)
stops-whirl = die Stange dreht zu nahe an ihrer kritischen Drehzahl
stops-whip = die Krümmung der Stange schlägt bei dieser Drehzahl zu weit aus
stops-sag = die Stange hängt zwischen Spannstelle und Buchse zu weit durch
stops-bore = das vordere Ende hat zu wenig Platz in der Bohrung der Gegenspindel
stops-cut = der Durchmesser ändert sich entlang des Schnitts zu stark
stops-chatter = der Schnitt rattert
stops-buckling = die Stange kann unter der Axiallast ausknicken
stops-run-out = die Rundlaufabweichung der Spannzange zeigt sich zu stark an der Fläche im Schnitt
stops-drill = die Stange biegt sich unter einem Querwerkzeug zu weit durch
stops-pick-up = das vordere Ende liegt zu weit neben der Achse für die Spannzange oder die Zentrierspitze, die es aufnimmt
stops-release = das vordere Ende sinkt zu weit ab, wenn die Spannzange öffnet
stops-torque = die Spannzange hält das Drehmoment des Abstechens oder der Rückseitenbearbeitung nicht
stops-push = die Spannzange hält die Kraft der Bearbeitung an einem Ende nicht
stops-back = das hintere Ende biegt sich bei der Bearbeitung nach dem Abstechen zu weit durch
stops-travel = die Gegenspindel hat keinen Verfahrweg mehr
stops-collet = keine Spannzange hält das vordere Ende dort, wo eine halten muss
stops-stroke = der Spindelstock hat keinen Hub mehr und darf nicht nachgreifen
stops-interrupt = eine Fläche, die keine Ansatzlinie zeigen darf, bekäme eine
stops-tray = das Teil ist zu groß, um frei zu fallen
stops-tool-places = es gibt zu wenige Werkzeugplätze
stops-thread-length = das Gewinde ist zu lang für einen Gewindedrehmeißel
stops-support = die Stützstellen halten die Stange nicht
stops-wish = ein Wunsch des Auftrags ist nicht erfüllbar
stops-bush-size = die Stange ist zu dick für die Führungsbuchse
stops-collet-size = die Stange ist zu dick für die Hauptspindel
stops-power = die Hauptspindel hat zu wenig Leistung für den Schnitt
stops-spindle-torque = die Hauptspindel hat zu wenig Drehmoment für den Schnitt
stops-feed-force = der Spindelstock hat zu wenig Vorschubkraft für den Schnitt
stops-counter-torque = die Gegenspindel hat zu wenig Drehmoment
stops-other = Grund: { $rule }
check-free-ratio = freie Länge
check-bore = Platz in der Bohrung
check-cut = Ø-Änderung
check-drill = Biegung Querwerkzeug
check-pick-up = Versatz vorn
check-release = Absinken beim Öffnen
check-torque = Moment Spannstelle
check-push = Rutschen in Zange
check-back = Biegung hinten

# Keys of a plan in words.
key-hand-over = Übergabe
key-regrip = Nachgreifen
key-centre = Zentrierspitze
key-segment = Rückzug
key-whirl = kritische Drehzahl
key-interrupt = Ansatzlinie
key-stroke = Spindelstockhub
key-counter-spindle = Gegenspindel
key-counter-spindle-travel = Gegenspindelweg
key-part-off = Abstechen
key-bar-feed = Stangenlader
key-back-work = Rückseite
key-cross-driven = quer, angetrieben
key-front-fixed = vorn, fest
key-front-driven = vorn, angetrieben
key-back-fixed = hinten, fest
key-back-driven = hinten, angetrieben
key-stiffness = Steifigkeit
key-span-stiffness = Steifigkeit bis Buchse
key-whip = Schlagen
key-sag = Durchhang
key-chatter = Rattern
key-buckling = Knicken
key-run-out = Rundlauf
key-turn = Drehen
key-plunge = Einstechen
key-forward = vorwärts
key-back = rückwärts
key-headstock = Hauptspindel
key-both = beide
key-turning = Drehen
key-cylinder = Zylinder
key-groove = Einstich
key-knurl = Rändel
key-thread = Gewinde
key-taper = Kegel
key-flats = Schlüsselflächen
key-feature = Formelement
key-unload = Entladen
key-bar-change = Stangenwechsel
key-tool-change = Werkzeugwechsel
key-cross-hole = Querbohrung
key-keyseat = Passfedernut
key-keyway = Nabennut
key-axial-hole = Axialbohrung
key-centre-hole = Zentrierbohrung
key-facing = Planen
key-tapped-hole = Gewindebohrung
key-hex-socket = Innensechskant
key-engraving = Gravur
key-thread-rolling = Gewinderollen
key-rough = Schruppen
key-finish = Schlichten
key-high = hoch
key-medium = mittel
key-low = gering
key-tray = Auffangschale
key-collet = Spannzange
key-support = Stützstelle
key-wish = Wunsch
key-tool-places = Werkzeugplätze
key-thread-length = Gewindelänge
key-bush-size = Buchsengröße
key-collet-size = Zangengröße
key-spindle-power = Spindelleistung
key-spindle-torque = Spindelmoment
key-feed-force = Vorschubkraft
key-counter-spindle-torque = Moment der Gegenspindel
key-margin = Reserve
key-witnesses = Ansatzlinien
key-quote = Kalkulation
key-length = Länge
key-whirling = Wirbelgerät
holding-bush = Führungsbuchse
holding-no-bush = ohne Buchse, nur Spannzange der Hauptspindel
tools-single = Einzelwerkzeug
tools-opposed = gegenüberliegendes Paar
tools-tandem = Tandem: ein Schlichtwerkzeug folgt dem Schruppwerkzeug
work-whirl = Gewindewirbeln
work-thread = Gewindeschnitte
work-as-drawn = Stangenoberfläche
work-turn = Drehen
work-repeated = { $number } × { $work }
section-number = Abschnitt { $number }
check-used = { $check } { $used }
check-at-most = { $check } { $value }, höchstens { $limit } ({ $used } des Grenzwerts)
check-at-least = { $check } { $value }, mindestens { $limit } ({ $used } des Grenzwerts)
value-not-set = nicht gesetzt
value-yes = ja
value-no = nein

# Titles.
title-stages = Etappen ({ -mm }, 1/min, s)
title-stages-reached = Etappen, soweit möglich ({ -mm }, 1/min, s)
title-positions = Positionen ({ $from })
title-look-at = Diese Punkte zuerst ansehen
title-stops = Halte des Vorschubs (gedrehte Länge, { -mm })
title-segments = Segmente ({ -mm }, 1/min, { -mm-rev })
title-features = Formelemente ({ -mm }, s)
title-time = Zeit
title-quote = Kalkulation
title-limit-costs = Was jeder Grenzwert an Zeit kostet
title-scatter = Simulierte Teile je Etappe ({ -mm })
title-inputs = Unsichere Eingangsgrößen (kleiner – größer um eine Standardabweichung; ausgenutzter Grenzwert: { $check })
title-measure = Was zu messen ist, das Nützlichste zuerst
title-set-up = Einrichten
title-notes = Hinweise
title-origins = Werte, die der Auftrag nicht nennt
origins-of-shop = Aus der Betriebsdatei: { $values }
origins-by-default = Übliche Werte dieses Programms: { $values }
origin-of-shop = { $key } { $value } (Zeile { $line })
origin = { $key } { $value }
title-cautions = Sicherheitshinweise
title-cycle = Takt
title-timeline = Zeitablauf beider Spindeln (s)
title-shorten-first = Was zuerst zu verkürzen ist
title-tool-places = Werkzeugplätze
title-tools = Werkzeuge
title-tool-list = Drehwerkzeuge ({ -mm }, { -mm-rev }, 1/min)
sheet-tool-list = Drehwerkzeuge
sheet-tool-list-units = Tiefe in { -mm }, Vorschub in { -mm-rev }, Drehzahl in 1/min
tool-not-listed = { $tool } (nicht in der Liste)
tool-parts-off = Abstechen
tool-nose = r { $nose }
tool-insert-nose = { $insert }, { $nose }
tool-range = { $least }–{ $most }
title-order = Los
title-quantities = Los nach Stückzahl
title-sensitivity = Wirkung einer geänderten Zeit oder Geschwindigkeit
title-help-sets = Was den Auftrag machbar macht (jede Zeile genügt; was ein Betrieb eher tut, steht zuerst)
title-help-alone = Einzelne Änderungen, die ihn machbar machen
title-help-others = Weitere einzelne Änderungen, die genügen
title-help-house = Betriebliche Grenzwerte, die im Weg stehen (kein Rat: ein Betrieb ändert einen davon nur nach einem Versuch und verantwortet es selbst)
positions-from-bush = { -mm } ab Buchsenstirn
positions-without-bush = { -mm }; Gegenspindel ab dem Ende des Abstands hinter dem Werkzeug, Spindelstock ab dem Werkzeug

# Names of columns.
col-stage = Etappe
col-from = von
col-to = bis
col-travel = Weg
col-grip = Spannst.
col-collet = Zange
col-unsupported = ungestützt
col-l-over-d = L/d
col-unsupported-split = unge{ "\u00AD" }stützt
col-speed = 1/min
col-feed = Vorschub
col-tool = Werkzeug
col-station = Platz
col-insert = Platte
col-sections = Abschnitte
col-depth = Tiefe
col-time = Zeit
col-seconds = s
col-tightest = knappste Prüfung
col-counter-spindle-start = Gegenspindel am Anfang
col-headstock-start = Spindelstock am Anfang
col-end = am Ende
col-regrips-at = Nachgreifen bei
col-counter-spindle = Gegenspindel
col-headstock = Spindelstock
col-mark = Zeichen
col-done = was geschieht
col-surface = Fläche
col-leaves = was bleibt
col-section = Abschnitt
col-diameter = Ø
col-work = Arbeit
col-travels = Durchg.
col-turning = Drehen
col-feature = Formelem.
col-at = bei
col-turned-when-done = gedrehte Länge dabei
col-planned-to = geplant bis
col-input = unsichere Größe
col-input-range = kleiner – größer
col-input-used = Auslastung
col-input-good = gut unter – über
col-input-time = schnellster, s
col-holds-to = 99 % halten bis
col-broken-share = Teile über Grenzwert
col-broken-checks = Prüfungen über Grenzwert
col-cause = Ursache
col-interrupt = Kennung der Fläche
col-operation = Vorgang
col-share = Anteil
col-spindle = Spindel
col-what = was
col-place = Platz
col-places = Plätze
col-needed = nötig
col-elsewhere = anderswo
col-missing = fehlen
col-free = frei
col-tools = Werkz.
col-pieces = Teile
col-bars = Stangen
col-shifts = Schichten
col-cost-per-piece = Kosten je Teil
col-number = Nr.
col-size = Maß
col-measured = gemessen

# Cells.
grip-free = frei
grip-centre = Spitze
cell-none = keine
cell-range = { $low } – { $high }
cell-no-plan = kein Plan
cell-after-part-off = nach dem Abstechen
cell-part-off-face = Abstechfläche
cell-part-off = Abstechen
feature-with-kind = { $kind }: { $text }
time-cutting = Zerspanen
time-travels = Anfahren und Rücklauf
time-hand-overs = Übergaben
time-regrips = Nachgreifen
time-features = Formelemente
time-part-off = Abstechen
time-back-work = Rückseite
time-sum = Summe der Vorgänge
time-cycle = Taktzeit

# Where the feed stops.
stop-hand-over = Übergabe
stop-regrip = Nachgreifen
stop-regrip-then-hand-over = Nachgreifen + Übergabe (gemeinsam)
stop-hand-over-then-regrip = Übergabe + Nachgreifen (gemeinsam)
stop-then = { $first }, dann { $second }
stop-at-shoulder = keine Linie (Schulter)
stop-at-end = keine Linie (Endfläche)
stop-behind = keine Linie (hinter dem Teil)
stop-in-groove = keine Linie (Einstich)
stop-line = Ansatzlinie ({ $interrupt })
stop-between = zwischen den Abschnitten { $front } und { $rear }
stop-front-face = Stirnfläche vorn
stop-part-off-face = Abstechfläche
stop-behind-face = hinter der Abstechfläche

# Facts: a key and its value.
fact-drawing = Zeichnung
fact-date = Datum
fact-bush = Führungsbuchse
fact-bar-ends = Stangenenden
fact-drawing-revision = { $drawing }, Änderungsstand { $revision }
fact-bush-said = für { $bar }, { $kind }, Führungslänge { $land } { -mm }
bush-fixed = feststehend
bush-following = mitlaufend
bush-kind-not-given = Art nicht angegeben
fact-bar-ends-said = rechtwinklig abgelängt, vorn angefast, gratfrei und nicht verbogen
length-of-part = Länge { $length }
fact-length = Länge
fact-length-mm = { $length } { -mm }
fact-material = Werkstoff
fact-bar = Stange
fact-bar-length = { $stock }, Stangenlänge { $length } { -mm }
fact-machine = Maschine
fact-holding = Führung
fact-tools = Werkzeuge
fact-collet = Spannzange
fact-centre = Zentrierspitze
fact-centre-presses = im vorderen Ende mit { $force } { -n }; sie fährt bei { $leaves } { -mm } zurück, vor dem Abstechen
fact-collet-holds = { $collet } in der Gegenspindel, Spannlänge { $hold } { -mm }
fact-collet-named = { $collet } in der Gegenspindel
fact-collet-none = keine in der Gegenspindel
fact-part-off = Abstechen
fact-part-falls = das Teil fällt in die Auffangschale (für Teile bis { $length } { -mm } Länge und { $diameter } { -mm } Durchmesser)
fact-input = Eingabe
quote-bar = { $pieces } aus einer Stange von { $length } { -mm }, Reststück { $remnant } { -mm }
quote-material = { $mass } kg je Teil
fact-cost = Kosten
quote-cost = { $total } { $currency } je Teil: Maschine { $machine }, Werkstoff { $material }
fact-optimum = Optimum
fact-cycle = Taktzeit
cycle-steady = { $steady } s von Teil zu Teil; ein einzelnes Teil dauert { $alone } s
fact-spindles = belegt
cycle-spindles = Hauptspindel { $headstock } s, Gegenspindel { $counter } s
fact-rear-end = Rückseite
cycle-hidden-waits = { $hidden } s laufen während der freien Etappe des nächsten Teils; danach wartet die Hauptspindel { $wait } s
cycle-hidden-idle = { $hidden } s laufen während der freien Etappe des nächsten Teils; danach steht die Gegenspindel { $idle } s still
cycle-in-line = fertig, bevor das nächste Teil beginnt
fact-tool-changes = Werkzeugwechsel
cycle-tool-changes = { $number ->
    [one] { $number } Wechsel, { $seconds } s
   *[other] { $number } Wechsel, { $seconds } s
}
fact-bar-change = Stangenwechsel
cycle-bar-change = { $seconds } s je Teil
timeline-stage = Etappe { $stage }: { $parts }
timeline-previous = voriges Teil: { $parts }
timeline-turning = Drehen { $seconds }
timeline-features = Formelemente { $seconds }
timeline-back-work = hinteres Ende { $seconds }
timeline-tool-changes = Werkzeugwechsel { $seconds }
timeline-unloading = Entladen { $seconds }
shorten-one = { $what }: { $seconds } s, { $share } der Taktzeit
tools-turret = Revolver
tools-turret-holds = Werkzeuge ohne Platz neben der Stange oder am vorderen Ende
tools-at = { $place }: { $names }
tools-places = { $place } { $number }
tools-fit = jedes Werkzeug hat einen Platz; freie Plätze: { $free }
tools-missing = fehlende Plätze: { $missing }; freie Plätze: { $free }
fact-pieces = Stückzahl
order-pieces = { $pieces } aus { $bars }, je Schicht { $per_shift }
fact-time = Zeit
order-time = Rüsten { $set_up } h, Laufzeit { $run } h, Schichten: { $shifts }
order-cost = { $each } { $currency } je Teil, { $all } { $currency } insgesamt
sensitivity-speed = Schnittgeschwindigkeit × { $factor }: { $change } s je Teil
sensitivity-time = Zeit je Vorgang ({ $what }) × { $factor }: { $change } s je Teil

# What to look at first.
look-lines = { $number ->
    [one] Ansatzlinie auf { $section }, gekennzeichnet „{ $interrupt }“: { $places }
   *[other] Ansatzlinien auf { $section }, gekennzeichnet „{ $interrupt }“: { $places }
}
look-place = { $at } { -mm } ({ $cause })
look-over-limit = Grenzwert überschritten in Etappe { $stage }: { $check }, bei gedrehter Länge { $turned } { -mm }
look-near-limit = Nahe am Grenzwert in Etappe { $stage }: { $check }, bei gedrehter Länge { $turned } { -mm }
look-slowed = Drehzahl verringert auf { $places }, wegen: { $check }
look-slowed-cost = Drehzahl verringert auf { $places }, wegen: { $check }. Am stärksten von { $full } auf { $speed } 1/min. Das dauert { $seconds } s länger
look-back-turning = Nach hinten weisende Schulter, braucht ein Rückwärtsdrehwerkzeug: { $places }
look-fed-out = Vor dem Abstechen wird die Stange bis { $to } { -mm } vorgeschoben, für: { $works }. Ungestützt sind dann { $unsupported } { -mm }; im vorgeschobenen Zustand keine Drehbearbeitung

# What would help.
help-cost-of-limit = { $text } ({ $limit }: { $now } → { $next })
help-values = { " (" }{ $name }: { $from } → { $to })
help-change-slower = { $text }, { $seconds } s mehr als die schnellste dieser Änderungen
help-set-slower = { $text }, { $seconds } s mehr als die schnellste dieser Zeilen
help-set-holds = { $text }; hält bei { $good } von 100 simulierten Teilen
help-edits-job = { $text }. Im Auftrag ändern: { $edits }.
help-edits-machine = { $text }. In der Maschinendatei ändern: { $edits }.
help-edits-both = { $text }. Im Auftrag ändern: { $job }. In der Maschinendatei ändern: { $machine }.
help-edits-many = { $text }. Die Seite (spanhold page JOB) nimmt diese Änderungen für Sie vor.
help-edit-item = { $list } Eintrag { $number }
help-edit-new-item = { $list }, ein neuer Eintrag
help-edit-set = { $key }: { $value }
help-edit-remove = entfernen: { $item }
help-edit-swap = vertauschen: { $item } mit Eintrag { $with }
help-next = { $tried }. Eine Änderung der Zeichnung anfragen oder andere Maschinen vergleichen: spanhold compare JOB --machine FILE.
help-sentence = { $text }.

# The sheet.
sheet-title = { $job }: Einrichteblatt
sheet-input = Eingabe { $digest }
sheet-page = Seite { $page } von { $pages }
sheet-sign-off = Freigabe
sheet-sign-read = Plan gelesen; Maschine und Spannzange stimmen
sheet-sign-proved = Erstes Teil mit weniger Drehzahl und Vorschub eingefahren
sheet-sign-measured = Erstes Teil gemessen
sheet-sign-released = Für die Serie freigegeben
sheet-sign-name = Name
sheet-sign-date = Datum
sheet-sign-signature = Unterschrift
sheet-work-list = Arbeitsfolge
sheet-work-list-units = { -mm }, 1/min, { -mm-rev }, s; von und bis sind gedrehte Längen
sheet-directions = Nullpunkte und Richtungen
sheet-stages = Etappen
sheet-stages-units = { -mm }, 1/min, { -mm-rev }, s; Gegenspindel und Spindelstock: Anfang → Ende der Etappe, { $from }
sheet-stage-limits = Grenzen der Etappen: nicht überschreiten
sheet-stops = Halte des Vorschubs
sheet-stops-units = gedrehte Länge, { -mm }
sheet-witness-lines = Ansatzlinien
sheet-witness-lines-units = { -mm }
sheet-sure = Wie sicher dieser Plan ist
sheet-scatter = Simulierte Teile je Etappe
sheet-scatter-units = { -mm }
sheet-inputs = Unsichere Eingangsgrößen
sheet-inputs-units = kleiner – größer um eine Standardabweichung; ausgenutzter Grenzwert: { $check }; gute Teile von 100 bei einem Wert unter – über dem verwendeten
sheet-timeline = Zeitablauf beider Spindeln
sheet-bar = Stange
limit-stage = Etappe { $stage }: { $limits }
limit-turn-to = drehen bis { $to } { -mm }, nicht weiter
limit-speeds-below = nie über der Drehzahl, die unten für den Bereich steht
limit-speed = nie über { $speed } 1/min
limit-unsupported = nie mehr als { $unsupported } { -mm } ungestützt
limit-unsupported-turning = bei der Drehbearbeitung nie mehr als { $unsupported } { -mm } ungestützt
limit-grip-distance = Spannstelle der Gegenspindel { $grip }, Zangenstirn nie weiter als { $distance } { -mm } von der Buchse entfernt
limit-grip = Spannstelle der Gegenspindel { $grip }
limit-free = vorderes Ende frei, nichts darf es berühren
limit-centre = Zentrierspitze im vorderen Ende mit { $force } { -n }; sie fährt vor dem Abstechen zurück
limit-falls = das Teil fällt beim Abstechen in die Auffangschale
limit-range = Etappe { $stage }, gedrehte Länge { $from } bis { $to } { -mm }: nie über { $speed } 1/min
limit-fed-out = Etappe { $stage }, vor dem Abstechen: bis { $to } { -mm } vorschieben, nicht weiter, für: { $works }. Im vorgeschobenen Zustand keine Drehbearbeitung: { $positions }. Danach zurück auf { $back } { -mm }.
limit-fed-out-speed = Etappe { $stage }, vor dem Abstechen: bis { $to } { -mm } vorschieben, nicht weiter, für: { $works }. Im vorgeschobenen Zustand keine Drehbearbeitung: { $positions }; nie über { $speed } 1/min. Danach zurück auf { $back } { -mm }.
fed-unsupported = { $unsupported } { -mm } ungestützt
fed-counter-spindle = Gegenspindel { $distance } { -mm } von der Buchse
fed-headstock-bush = Spindelstock { $distance } { -mm } von der Buchse
fed-headstock-tool = Spindelstock { $distance } { -mm } vom Werkzeug
speed-range = { $from } bis { $to }: { $speed }

# The diagram.
diagram-title = { $job }: Plan der Etappen, Spannstellen und Halte
diagram-description = { $verdict }: { $summary }. { $panels }
diagram-panels = Oben: die Welle mit Spannstellen, Übergaben und Nachgreifen des Spindelstocks. Mitte: die Maschine am Anfang und am Ende jeder Etappe. Unten, auf derselben Achse: die Auslastung des Grenzwerts je Prüfung über der gedrehten Länge, und die Drehzahl.
diagram-description-setting = { $verdict }: { $summary }. Die Welle mit Längen, Spannstellen, Übergaben, Nachgreifen des Spindelstocks und Halten für andere Arbeiten.
diagram-numbers = Nummern: Abschnitte der Segmenttabelle
diagram-labels-left-out = { $number ->
    [one] kein Platz für { $number } Beschriftung
   *[other] kein Platz für { $number } Beschriftungen
}
diagram-machine-left-out = Positionen der Maschine: siehe Tabelle der Etappen
diagram-more = … der Rest steht im Text
diagram-shaft = Welle
diagram-true-scale =
    maß-
    stäblich
diagram-radial-scale =
    radialer
    Maßstab
    × { $factor }
diagram-not-reached = nicht erreicht; Ende bei { $at } { -mm }
diagram-axis = Position auf der Welle und gedrehte Länge, { -mm } ab der vorderen Stirnfläche
diagram-used =
    Nutzung
    des Grenz-
    werts
diagram-governs = knappste
diagram-limit = Grenze
diagram-at-most = { $check }, höchstens
diagram-strips = Die Maschine am Anfang und am Ende jeder Etappe
diagram-start = Anfang
diagram-end = Ende
diagram-unsupported = ungestützt { $unsupported } { -mm }
legend-grip = Spannstelle, mit Etappe
legend-centre = Zentrierspitze vorn
legend-hand-over = H Übergabe
legend-regrip = R Nachgreifen
legend-both = H+R beides an einem Halt
legend-work = F andere Arbeit an einem Halt
legend-bush = Führungsbuchse
legend-headstock = Hauptspindelzange
legend-headstock-right = Spindelstock weiter rechts
legend-bore = Gegenspindelbohrung
legend-sleeve = Stützhülse
legend-not-reached = nicht erreicht

# Both spindles in time.
gantt-title = { $job }: Zeitablauf beider Spindeln
gantt-bar = { $work }: { $name }, { $seconds } s
gantt-cycle = Taktzeit { $seconds } s
gantt-hidden = { $seconds } s Bearbeitung am hinteren Ende des vorigen Teils laufen gleichzeitig
gantt-wait = die Hauptspindel wartet { $seconds } s
gantt-headstock = Hauptspindel
gantt-counter-spindle = Gegenspindel
gantt-holds = hält das Teil
gantt-turning = Drehen
gantt-other-work = andere Arbeit
gantt-tool-change = Werkz.wechsel
gantt-hand-over = Übergabe
gantt-regrip = Nachgreifen
gantt-part-off = Abstechen
gantt-back-work = hinteres Ende des vorigen Teils
gantt-critical = auf dem kritischen Pfad

# A family of parts.
family-title = { $name }: eine Teilefamilie
family-count = { $good } von { $all } Teilen sind herstellbar.
family-range = { $least } bis { $hand_overs }, { $fastest } bis { $slowest } s je Teil.
family-same = { $hand_overs }, { $fastest } bis { $slowest } s je Teil.
family-longest = Größte veränderte Länge, die herstellbar ist: { $length } { -mm }.
family-machine = auf { $machine }
family-made = { $part }: { $hand_overs }, { $seconds } s
family-sizes = Länge { $length } { -mm }, Durchmesser { $diameter } { -mm }
family-size = { $size } { -mm }
family-not-made = { $part }: nicht herstellbar
family-stopped = { $part }: nicht herstellbar, Grund: { $check }
family-no-job = { $part }: diese Maße ergeben keinen gültigen Auftrag; siehe seine Zeile
family-hand-overs = Übergaben
family-number-on-line = Zahl an der Linie
family-hand-overs-word = { $number ->
    [one] Übergabe
   *[other] Übergaben
}
family-time-below = die Zeit steht unter der Zahl
family-from-here = Übergaben ab hier
family-cannot = nicht herstellbar
family-invalid = ungültiger Auftrag
family-time-axis = Zeit je Teil, s

# Stiffnesses from readings.
fitted-head = Angepasst: { $machine }, aus { $readings }; Messungen über die nötige Zahl hinaus: { $more }
fitted-misfit = Abweichung zwischen Messung und Rechnung: { $misfit } mal die Unsicherheit der Messungen (etwa 1 ist richtig)
fitted-condition = Konditionszahl { $condition } (1 ist am besten)
fitted-support = Stützstelle
fitted-stiffness = N/µm
fitted-error = Standardfehler
fitted-range = 95-%-Bereich
fitted-range-of = { $low } bis { $high }
fitted-before = Maschinendatei
fitted-set-up = Aufspannung
fitted-reading = Messung
fitted-measured = gemessen
fitted-fitted = gerechnet
fitted-unit = Einheit
fitted-off = Abweichung / Unsicherheit
fitted-into-file = Diese Werte in die Maschinendatei eintragen. Jeder ersetzt dort die Steifigkeit.

# The workbook.
xlsx-with-unit = { $name } ({ $unit })
xlsx-stages = Etappen
xlsx-segments = Segmente
xlsx-checks = Prüfungen
xlsx-quote = Kalkulation
xlsx-grip-from = Spannstelle von
xlsx-grip-to = Spannstelle bis
xlsx-grip-diameter = Spanndurchmesser
xlsx-unsupported = ungestützte Länge
xlsx-counter-start = Gegenspindel am Anfang
xlsx-counter-end = Gegenspindel am Ende
xlsx-headstock-start = Spindelstock am Anfang
xlsx-headstock-end = Spindelstock am Ende
xlsx-lowest-speed = kleinste Drehzahl
xlsx-highest-speed = größte Drehzahl
xlsx-regrips = Nachgreifen
xlsx-share = Auslastung
xlsx-speeds = größte Drehzahl von … bis … { -mm } gedrehter Länge
xlsx-section-number = Abschnittsnummer
xlsx-diameter = Durchmesser
xlsx-speed = Drehzahl
xlsx-slowed = Drehzahl verringert wegen
xlsx-check = Prüfung
xlsx-value = Wert
xlsx-limit = Grenzwert
xlsx-unit = Einheit
xlsx-check-unit = Einheit von Wert und Grenzwert
xlsx-turned = gedrehte Länge
xlsx-position = Position auf der Welle
xlsx-pieces-per-bar = Teile je Stange
xlsx-pieces = Stückzahl
xlsx-remnant = Reststück
xlsx-material = Werkstoff je Teil
xlsx-cost-machine = Maschinenkosten je Teil
xlsx-cost-material = Werkstoffkosten je Teil
xlsx-cost = Kosten je Teil
xlsx-cell = { $head } in Zeile { $row }

# The short answer on a terminal.
short-rows-left-out = … { $number } weitere
short-more = { $number } weitere: siehe --full
short-more-check = { $number } weitere: siehe `spanhold plan JOB --full`
short-more-changes = { $number ->
    [one] { $number } weitere Änderung: siehe --full
   *[other] { $number } weitere Änderungen: siehe --full
}
short-more-changes-check = { $number ->
    [one] { $number } weitere Änderung: siehe `spanhold plan JOB --full`
   *[other] { $number } weitere Änderungen: siehe `spanhold plan JOB --full`
}
short-tools = Werkzeuge: { $tools }
plan-to-write = Um Einrichteblatt, Schaubild und Tabellen zu schreiben:
plan-to-write-with = Um Einrichteblatt, Schaubild und Tabellen zu schreiben: { $command }
plan-written = Einrichteblatt, Schaubild und Tabellen liegen in: { $folder }
plan-full = --full gibt alles aus.

# Why something could not be drawn.
undrawn-plan = der Plan lässt sich nicht zeichnen: { $what }
undrawn-workbook = die Arbeitsmappe ließ sich nicht schreiben: { $what }
undrawn-chart = das Schaubild ließ sich nicht zeichnen: { $what }
undrawn-pdf = die PDF-Datei ließ sich nicht schreiben: { $what }
undrawn-time = eine Zeit des Takts ist keine Zahl
undrawn-beyond = die Längen sind für eine Zeichnung zu groß oder zu klein
undrawn-length = die Länge ist keine positive Zahl
undrawn-bar = der Durchmesser der Stange ist keine positive Zahl
undrawn-section = ein Abschnitt hat eine Zahl, die nicht endlich ist
undrawn-feature = ein Formelement hat eine Zahl, die nicht endlich ist
undrawn-stage = eine Etappe hat eine Zahl, die nicht endlich ist
undrawn-machine = die Maschine hat eine Zahl, die nicht endlich ist
undrawn-stop = die Position eines Halts ist nicht endlich
undrawn-check = eine Prüfung hat eine Zahl, die nicht endlich ist
undrawn-family = eine Zahl der Teilefamilie ist nicht endlich
undrawn-nothing-varies = weder Länge noch Durchmesser ändern sich
under-one = weniger als 1
sure-breaks = Was nicht hält: { $checks }.
sure-break = { $check } bei { $share } von 100 Teilen
sure-break-at-start = { $check } bei { $share } von 100 Teilen, bei der Hälfte davon von Anfang an
sure-break-from = { $check } bei { $share } von 100 Teilen, bei der Hälfte davon bis zur gedrehten Länge { $from } { -mm }
sure-more = { $number } weitere
sure-runs = Ein Teil, das nicht hält, überschreitet einen Grenzwert dieses Plans; es muss kein Ausschuss sein. Von { $runs } simulierten Serien zu je zwei Teilen halten in { $both } beide Teile, in { $one } eines, in { $none } keines. { $by ->
    [run] Also entscheiden Maschine, Werkstoff oder Werkzeug, gleich für die ganze Serie.
    [part] Also entscheidet das einzelne Teil: seine Krümmung, seine Stange.
    [both] Also entscheiden die Serie und das einzelne Teil.
   *[none] {""}
}
sure-ask = Mit `confidence: 0.95` im Auftrag oder mit `--confidence 0.95` sucht das Programm einen Plan, der bei 95 von 100 Teilen hält.
sure-nothing-uncertain = In diesem Auftrag ist keine Eingangsgröße unsicher. Jedes simulierte Teil gleicht also dem Nennteil.
sure-confidence = Geplant für { $asked } von 100 simulierten Teilen. Das kostet { $seconds } s je Teil: der schnellste Plan braucht { $fastest } s und hält bei { $good } von 100.
sure-confidence-free = Geplant für { $asked } von 100 simulierten Teilen: das leistet auch der schnellste Plan.
sure-confidence-missed = Es wurde kein Plan gefunden, der bei { $asked } von 100 simulierten Teilen hält. Von den versuchten Plänen hält dieser bei den meisten Teilen.
sure-measure = Zuerst messen: { $input }. Mit einem wahrscheinlich kleinen und einem wahrscheinlich großen Wert ({ $low }, { $high }) nutzt „{ $check }“ { $used_low } und { $used_high } des Grenzwerts. { $advice }.
sure-advice = { $input }: { $advice }
input-kc = Schnittkraft kc1.1
input-passive = Passivkraft, als Faktor
input-e = Elastizitätsmodul
input-damping = Dämpfungsgrad
input-bush = Buchsensteifigkeit
input-headstock = Hauptspindelsteifigkeit
input-counter-spindle = Gegenspindelsteifigkeit
input-centre = Spitzensteifigkeit
input-sleeve = Hülsensteifigkeit
input-ra = Rauheit zu idealer Rauheit
input-straightness = Krümmung der Welle
input-bar = Stangendurchmesser
input-run-out = Rundlaufabw. der Zange
input-other = andere Größe
diagram-band = 90 von 100 Teilen
diagram-part = dieses Teil
inputs-title = Unsichere Eingangsgrößen von { $job }
inputs-meaning = Ausgenutzter Anteil des Grenzwerts ({ $check }), wenn eine Eingangsgröße um eine Standardabweichung von ihrem Wert abweicht: helles Ende kleiner, dunkles Ende größer
inputs-percent = { $percent } %
undrawn-inputs = der Anteil einer Prüfung bei einer unsicheren Eingangsgröße ist keine endliche Zahl

# The table of positions for the programmer.
moves-on-part = Gedrehte Länge (Z): Lage des Werkzeugs am Teil, von der vorderen Stirnfläche zum Spindelstock hin. In einem Koordinatensystem nach ISO 841 mit der Null an der vorderen Stirnfläche ist Z dieser Wert mit negativem Vorzeichen.
moves-from-bush = Spindeln (Z): Abstand ihrer Stirn von der Buchsenstirn, die { $gap } { -mm } hinter dem Werkzeug stillsteht. Er zählt beim Spindelstock nach hinten, bei der Gegenspindel nach vorn; beide Werte sind positiv.
moves-without-bush = Spindeln (Z): beim Spindelstock der Abstand der Zangenstirn vom Werkzeug, nach hinten gezählt. Bei der Gegenspindel der Abstand der Stirn von einer Ebene { $gap } { -mm } hinter dem Werkzeug, nach vorn gezählt. Beide Werte sind positiv.
moves-across = Quer (X): Werte sind Durchmesser, die Null ist die Achse.
moves-stage = Etappe { $stage } beginnt
moves-cut = { $work }, { $section }
moves-travel = { $work }, { $section }, Durchgang { $travel } von { $travels }
moves-pass = Gewindeschnitt { $pass } von { $passes }, { $section }
moves-approach = zum Anfang von: { $cut }
moves-run-out = Auslauf des Tandems: das Schlichtwerkzeug schneidet bis zum Ende
moves-fed-out = Stange vorgeschoben, ohne Schnitt
moves-fed-back = Stange zurück, ohne Schnitt
moves-counter-opens = Spannzange der Gegenspindel öffnet
moves-counter-moves = Gegenspindel fährt an die Spannstelle
moves-counter-closes = Spannzange der Gegenspindel schließt
moves-headstock-opens = Spannzange der Hauptspindel öffnet
moves-headstock-moves = Spindelstock fährt entlang der Stange zurück
moves-headstock-closes = Spannzange der Hauptspindel schließt
moves-centre-comes = Spitze fährt in die vordere Stirnfläche ein
moves-centre-leaves = Spitze fährt von der vorderen Stirnfläche zurück
moves-part-taken = Gegenspindel fährt mit dem Teil weg
moves-wait-stopped = Vorschub steht, Werkzeug ist freigefahren
moves-wait-first-hand-over = Vorschub steht, Werkzeug ist freigefahren, Hauptspindel hält die Stange, Gegenspindel ist leer
moves-wait-hand-over = Vorschub steht, Werkzeug ist freigefahren, Hauptspindel hält die Stange
moves-wait-counter-closed = Spannzange der Gegenspindel ist geschlossen, beide Spindeln laufen mit gleicher Drehzahl
moves-wait-regrip = Vorschub steht, Werkzeug ist freigefahren, Gegenspindel hält das Teil
moves-wait-headstock-closed = Spannzange der Hauptspindel ist geschlossen
moves-wait-centre = Spitze drückt auf das vordere Ende
moves-wait-centre-left = Spitze ist zurückgefahren
moves-wait-part-off = Gegenspindel hält das Teil, beide Spindeln laufen mit gleicher Drehzahl
moves-wait-parted = Teil ist abgestochen
moves-col-actor = wer
moves-col-wait = Wartemarke
moves-col-waits-for = wartet auf
moves-col-start = beginnt bei
moves-col-turned = gedrehte Länge (Z)
moves-col-diameter = Werkzeug, Durchmesser (X)
moves-col-leading = vorlaufendes Werkzeug, Durchmesser (X)
moves-col-lag = Nachlauf des Schlichtwerkzeugs
moves-col-headstock = Zangenstirn Spindelstock (Z)
moves-col-counter = Stirn Gegenspindel (Z)
moves-col-headstock-speed = Drehzahl Hauptspindel
moves-col-counter-speed = Drehzahl Gegenspindel
key-tool = Werkzeug

# The drawing as DXF.
undrawn-dxf = ein Maß der Zeichnung ist keine endliche Zahl
dxf-grip = Spannstelle { $stage }
dxf-stage = Etappe { $stage }
dxf-about = Welle in mm, vordere Stirnfläche links. H Übergabe, R Nachgreifen, F Halt für ein Formelement, je mit der gedrehten Länge.

# More sheets of the workbook.
xlsx-features = Formelemente
xlsx-tools = Werkzeuge
xlsx-places = Werkzeugplätze
xlsx-order = Los
xlsx-positions = Positionen
xlsx-page = Seite { $page } von { $pages }
xlsx-fact = { $what }: { $told }
xlsx-thrust = Querkraft
xlsx-axial = Axialkraft
xlsx-torque = Drehmoment
xlsx-place-kind = Art des Platzes
xlsx-nose-radius = Eckenradius
xlsx-depth-least = kleinste Schnitttiefe
xlsx-depth-most = größte Schnitttiefe
xlsx-feed-least = kleinster Vorschub
xlsx-feed-most = größter Vorschub
