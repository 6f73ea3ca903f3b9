# Drawings and tables of sections; stiffnesses from readings.

# Stiffnesses from readings.
fit-loose-bar = Eine Aufspannung hält die Stange nicht
fit-loose-bar-help = Prüfen Sie `grip` und `holding`. Die Stange muss an zwei Stellen gehalten sein
fit-spindle-never-used = Keine Aufspannung hält die Stange in der Gegenspindel, deren Steifigkeit lässt sich deshalb nicht ermitteln
fit-undetermined = Diese Messungen reichen nicht für die Steifigkeit von: { $supports }
fit-leave-out = Oder schreiben Sie `fit: [{ $supports }]`
fit-other-bar = Messen Sie mit einer dickeren, kürzeren Stange, damit die Stützstelle stärker nachgibt als die Stange
fit-add = Ergänzen Sie: { $reading }. Das gäbe die Steifigkeit auf ± { $error } % oder besser, für: { $supports }
fit-add-several = Ergänzen Sie mehrere Messungen. Die nützlichste ist: { $reading }. Allein reicht sie aber nicht für: { $supports }
fit-reading-in = eine Messung { $reading } (etwa { $expected } µm) in der Aufspannung `{ $set_up }`
fit-reading-of-new = eine Aufspannung mit `{ $key }` und eine Messung { $reading } (etwa { $expected } µm)
fit-load-free = Einen Prüfstab Ø{ $bar } in der Hauptspindel spannen, Zangenstirn { $headstock } { -mm } hinter der Buchsenstirn, { $front } { -mm } Stab vor der Buchsenstirn. Mit { $load } { -n } belasten, { $at } { -mm } { $behind ->
    [yes] hinter
   *[no] vor
} der Buchsenstirn, und dort eine Messuhr ablesen (etwa { $expected } { -um })
fit-load-gripped = Einen Prüfstab Ø{ $bar } in der Hauptspindel spannen, Zangenstirn { $headstock } { -mm } hinter der Buchsenstirn, und ihn mit der Gegenspindel { $nose } { -mm } vor der Buchsenstirn spannen. Mit { $load } { -n } belasten, { $at } { -mm } { $behind ->
    [yes] hinter
   *[no] vor
} der Buchsenstirn, und dort eine Messuhr ablesen (etwa { $expected } { -um })
fit-load-no-bush = Einen Prüfstab Ø{ $bar } ohne Buchse in der Hauptspindel spannen, { $front } { -mm } Stab vor der Zangenstirn. Mit { $load } { -n } belasten, { $at } { -mm } vor der Zangenstirn, und dort eine Messuhr ablesen (etwa { $expected } { -um })
fit-load-no-bush-gripped = Einen Prüfstab Ø{ $bar } ohne Buchse in der Hauptspindel spannen, und ihn mit der Gegenspindel { $nose } { -mm } vor der Zangenstirn spannen. Mit { $load } { -n } belasten, { $at } { -mm } vor der Zangenstirn, und dort eine Messuhr ablesen (etwa { $expected } { -um })
fit-misfit = Keine Steifigkeit passt zu den Messungen. Die größte Abweichung ist bei { $reading }, { $set_up }: gemessen { $measured } { $unit }, gerechnet { $fitted } { $unit }
fit-misfit-help = Prüfen Sie Stelle und Einheiten (N, mm, µm, Hz). Spannen Sie die Stange gegen Spiel vor. Stimmt die Messung, schreiben Sie größere `errors`
fit-dial-reading = Messuhranzeige { $number }
fit-tap = Anschlagversuch
fit-note-no-spare = Es gibt so viele Messungen wie Steifigkeiten, das Ergebnis lässt sich deshalb nicht prüfen. Nehmen Sie weitere Messungen auf.
fit-note-misfit = Die Messungen weichen { $times } mal stärker vom Ergebnis ab, als ihre Unsicherheiten erlauben. Die Standardfehler sind um diesen Faktor vergrößert. Prüfen Sie auf Spiel, rutschende Einspannung oder eine falsche Stelle.
fit-note-fixed = Nicht angepasst, aus der Maschinendatei übernommen: { $supports }.
fit-note-sleeves = Die Stützhülsen in der Bohrung der Gegenspindel haben die Steifigkeit der Maschinendatei. Sie werden nicht angepasst.

# Drawings: what prevents a draft.
draft-is-dwg = `{ $file }` ist eine DWG-Datei, keine DXF-Datei
draft-is-dwg-help = Speichern Sie die Zeichnung als DXF (ASCII oder binär, Version R12 bis 2018)
draft-not-dxf = `{ $file }` lässt sich nicht als DXF lesen (Version { $version }): { $reason }
draft-not-dxf-help = Speichern Sie die Zeichnung als ASCII-DXF einer anderen Version, R12 bis 2018, und versuchen Sie es mit dieser Datei
draft-reader-failed = der Inhalt ist beschädigt
draft-empty = `{ $file }` enthält keine Zeichnung
draft-empty-help = Prüfen Sie, ob es eine DXF-Datei ist und die Welle im Modellbereich liegt
draft-damaged = `{ $file }` ist beschädigt: { $read } von { $there } Elementen der Art { $kind } sind lesbar
draft-damaged-help = Öffnen Sie die Datei im CAD-Programm, reparieren Sie sie, und speichern Sie sie neu
draft-unknown-file = Der Typ von `{ $file }` ist unbekannt
draft-unknown-file-help = Geben Sie eine Zeichnung (.dxf) oder eine Tabelle (.csv, .xlsx) an
draft-sections = `{ $file }` ergibt { $sections ->
    [one] { $sections } Abschnitt
   *[other] { $sections } Abschnitte
}
draft-sections-help = Eine Welle hat 1 bis { $most } Abschnitte
draft-no-job = Der Entwurf aus `{ $file }` lässt sich nicht als Auftrag planen
draft-no-job-help = Berichtigen Sie die Fehler unten. Ihre Stellen beziehen sich auf den Text des Entwurfs
draft-no-contour = Die Zeichnung hat keine Linie für eine Kontur
draft-no-contour-help = Zeichnen Sie die Kontur mit durchgezogenen Linien, nicht auf Layern für Maße, Rahmen, Schraffuren oder Texte
draft-no-axis = Es wurde keine Achse gefunden: keine Mittellinie, keine Symmetrie und keine gerade Seite einer halben Kontur
draft-no-axis-help = Zeichnen Sie die Achse über die ganze Welle als Linie auf einem Layer CENTER oder mit dem Linientyp CENTER
draft-open-contour = Die Kontur ist offen zwischen { $from } und { $to }
draft-open-contour-help = Schließen Sie die Kontur in der Zeichnung, oder verwenden Sie einen größeren Wert für `--gap`. Jetzt werden Lücken bis { $gap } mm geschlossen
draft-no-profile = Keine Linie der Kontur verläuft längs der Achse
draft-no-profile-help = Prüfen Sie, ob die Achse in der Zeichnung die Achse der Welle ist

# Drawings: what was found and assumed.
draft-axis-is-line = Die Achse ist die Mittellinie von { $from } bis { $to } auf Layer `{ $layer }`.
draft-axis-is-symmetry-level = Es gibt keine Mittellinie. Die Achse ist die waagerechte Symmetrielinie durch { $through }.
draft-axis-is-symmetry-upright = Es gibt keine Mittellinie. Die Achse ist die senkrechte Symmetrielinie durch { $through }.
draft-axis-is-side = PRÜFEN: Es gibt keine Mittellinie und keine Symmetrie. Die Zeichnung wird als halbe Welle gelesen: ihre Achse ist die gerade Seite bei { $axis } = { $at }, und die Durchmesser sind das Doppelte des Abstands davon.
draft-axis-through-ends = PRÜFEN: Es gibt keine Mittellinie und keine Symmetrie. Die Zeichnung wird als halbe Welle gelesen: ihre Achse ist die Linie durch ihre offenen Enden { $from } und { $to }.
draft-halves-differ = PRÜFEN: Die beiden Hälften der Kontur unterscheiden sich, zuerst bei { $at }: Durchmesser { $used } auf der einen Seite, { $other } auf der anderen. Verwendet wird der erste.
draft-front-left = PRÜFEN: Das vordere Ende (zuerst aus der Führungsbuchse) ist das linke Ende, bei { $at }. Ist es das rechte Ende, mit `--flip` aufrufen.
draft-front-right = PRÜFEN: Das vordere Ende (zuerst aus der Führungsbuchse) ist das rechte Ende, bei { $at }. Ist es das linke Ende, ohne `--flip` aufrufen.
draft-front-lower = PRÜFEN: Das vordere Ende (zuerst aus der Führungsbuchse) ist das untere Ende, bei { $at }. Ist es das obere Ende, mit `--flip` aufrufen.
draft-front-upper = PRÜFEN: Das vordere Ende (zuerst aus der Führungsbuchse) ist das obere Ende, bei { $at }. Ist es das untere Ende, ohne `--flip` aufrufen.
draft-unit = Die Einheit der Zeichnung ist { $unit }: 1 entspricht { $mm } mm.
draft-unit-of-call = Die Einheit in der Zeichnung ist { $unit }, der Aufruf sagt aber { $used }. Die Zeichnung wird in { $used } gelesen.
draft-no-unit = PRÜFEN: Die Zeichnung hat keine Einheit. Sie wird in mm gelesen. Ist die Einheit Zoll, mit `--units inch` aufrufen.
draft-no-unit-but-metric = PRÜFEN: Die Zeichnung hat keine Einheit, ist aber als metrisch gekennzeichnet. Sie wird in mm gelesen. Ist die Einheit Zoll, mit `--units inch` aufrufen.
unit-inches = Zoll
draft-scale = PRÜFEN: Die Maße sind das { $factor }-Fache der gezeichneten Längen. Die Zeichnung wird im Maßstab { $scale } gelesen. Ist sie 1:1 gezeichnet, mit `--scale 1` aufrufen.
draft-factor-of-new = PRÜFEN: Die Zeichnung hat keine Maße, aber ihre Einstellung für neue Maße ist das { $factor }-Fache der gezeichneten Längen. Der Auftrag hat die gezeichneten Längen. Ist die Zeichnung 1:2, mit `--scale 0.5` aufrufen.
draft-other-factor = PRÜFEN: { $count ->
    [one] { $count } Maß ist
   *[other] { $count } Maße sind
} das { $factor }-Fache der gezeichneten Länge, das erste bei { $at }. Die meisten Maße sind das { $used }-Fache der gezeichneten Länge. Der Auftrag folgt den meisten Maßen. Ist das falsch, mit `--scale` aufrufen.
draft-arc = PRÜFEN: Der Bogen mit Radius { $radius } mm bei { $at } wird im Auftrag ein gerader Kegel.
section-with-radius = mit Radius { $radius } mm
section-with-chamfer = mit Fase { $chamfer }
section-from-arc = PRÜFEN: in der Zeichnung ein Bogen mit Radius { $radius } mm
draft-needs-tolerance = PRÜFEN: Abschnitt { $section } (Durchmesser { $diameter } mm) ist zu dünn für eine Allgemeintoleranz. Fügen Sie `tolerance` hinzu.
draft-inside = INNERHALB DER KONTUR, nicht verwendet (Kanten, Bohrungen, Gewinde, Passfedernuten): { $count } { $kind } auf Layer `{ $layer }`, das erste bei { $at }.
draft-beside = NICHT TEIL DER KONTUR: { $count } { $kind } auf Layer `{ $layer }`, das erste bei { $at }.
draft-beside-near = PRÜFEN: Eines davon endet { $distance } mm neben der Kontur, bei { $at }. Gehört es zur Kontur, verwenden Sie einen größeren Wert für `--gap`.
draft-not-read = NICHT GELESEN: { $count } { $kind } auf Layer `{ $layer }`, das erste bei { $at }: { $why }.
draft-not-understood = NICHT VERSTANDEN: { $entity } `{ $text }` auf Layer `{ $layer }` bei { $at }: { $why }.

# Why an entity is not read.
entity-unknown = diese Art von Element wird nicht unterstützt
entity-hidden = es ist ausgeblendet
entity-squeezed = es ist gekippt oder ungleichmäßig skaliert
entity-squeezed-arc = dieser Bogen ist ungleichmäßig skaliert
entity-mesh = es ist ein Netz
entity-at-angle = es ist gekippt
entity-not-finite = seine Zahlen sind nicht endlich
entity-too-many = es sind zu viele Linien
entity-circle = es ist ein voller Kreis
entity-no-block = sein Block fehlt in der Zeichnung
entity-nested = seine Blöcke sind zu tief verschachtelt
entity-copies = es gibt mehr als 100 Kopien

# Texts and dimensions of a drawing.
label-no-size = kein Maß mit Toleranz, kein Gewinde, keine Rauheit
label-at-no-surface = nicht an der Fläche eines Abschnitts
label-no-roughness = ein Rändel oder Schlüsselflächen können keine Rauheit haben
label-second = der Abschnitt hat schon einen anderen Wert
label-given = Abschnitt { $section }, { $length } mm lang, erhält aus der Zeichnung: { $values }.
label-unknown-word = `{ $word }` ist unbekannt
label-other-size = der Text sagt { $text }, gezeichnet sind aber { $drawn } mm; der Auftrag hat das gezeichnete Maß
label-length-tolerance = die Toleranz einer Länge lässt sich in einem Auftrag nicht angeben
label-no-diameter = kein Durchmesser
label-no-section = kein glatter Abschnitt hat den Durchmesser { $diameter } mm
label-several-sections = passt zu mehreren Abschnitten und wird für keinen verwendet
title-material = Werkstoff
title-drawing = Zeichnungsnummer
title-revision = Änderungsstand
title-taken = Aus der Zeichnung: { $field } { $value }.
title-several = PRÜFEN: Die Zeichnung hat mehr als einen Eintrag für „{ $field }“: { $values }. Keiner wird verwendet.
title-material-unknown = PRÜFEN: Der Werkstoff { $material } der Zeichnung steht nicht in der Werkstofftabelle. Der Auftrag hat einen Platzhalter. Mit `--material` aufrufen, um einen zu setzen.

# The text of a draft.
draft-head = Entwurf aus { $file }. Prüfen Sie jede Zeile gegen die Zeichnung, bevor Sie mit diesem Auftrag planen.
draft-head-lengths = Längen sind in mm. Die Abschnitte beginnen an der vorderen Stirnfläche: dem Ende, das die Führungsbuchse zuerst verlässt.
draft-head-notes = Was gefunden, angenommen und nicht verstanden wurde:
draft-placeholder-material = PLATZHALTER: kein bekannter Werkstoff in der Zeichnung
draft-placeholder-bar = PLATZHALTER: das nächste übliche Stangenmaß; `--stock` setzt ein anderes
draft-placeholder-machine = PLATZHALTER: eine Beispielmaschine. Nennen Sie die Datei Ihrer Maschine: `machine: my-machine.yaml`, oder erstellen Sie den Entwurf mit `--machine my-machine.yaml`.
draft-placeholder-cutting = PLATZHALTER: übliche Werte. Setzen Sie Ihre eigenen.
draft-straightness = Krümmung der fertigen Welle, mm je m: messen Sie Ihre
draft-default-speed = m/min; Vorgabe: Mitte des üblichen Bereichs für den Werkstoff
draft-default-feed = mm/U; Vorgabe: aus der Rauheit, höchstens 0,15

# Tables of sections.
table-not-utf8 = `{ $file }` ist kein UTF-8-Text
table-not-utf8-help = Speichern Sie die Tabelle als CSV in UTF-8
table-not-csv = `{ $file }` lässt sich nicht als CSV lesen: { $reason }
table-too-long = `{ $file }` hat zu viele Zeilen
table-empty = `{ $file }` ist leer
table-form = Schreiben Sie die Überschriften in die erste Zeile: length (mm), diameter (mm), und nach Bedarf rear diameter (mm), kind, thread, tolerance, Ra (µm), name, across flats (mm), sides. Schreiben Sie eine Zeile je Abschnitt, von vorn
table-cell = { $file }, Zeile { $row }, Spalte { $column }: { $what }
table-row = { $file }, Zeile { $row }: { $what }
table-heading = { $file }, Zeile { $row }, Spalte { $column }, `{ $heading }`: { $what }
table-heading-missing = { $file }, Zeile { $row }: die Überschrift `{ $heading }` fehlt
table-heading-unknown = unbekannte Überschrift
table-heading-twice = diese Spalte ist zweimal angegeben
table-heading-twice-help = Entfernen Sie eine davon
table-heading-unit = unbekannte Einheit
table-heading-unit-help = Verwenden Sie eine dieser Einheiten: { $units }
table-heading-no-unit-help = Entfernen Sie die Einheit. Diese Spalte hat keine
table-tolerance-in-inches = PRÜFEN: Die Abmaße in Spalte { $column } (`{ $heading }`) werden in Zoll gelesen, wie die Maße in der Tabelle. Sind sie in mm, schreiben Sie `tolerance (mm)` in die Überschrift.
table-roughness-unit = in einer Tabelle in Zoll fehlt die Einheit
table-roughness-unit-help = Schreiben Sie `Ra (µin)` oder `Ra (µm)` in die Überschrift. Ra 16 µin sind 0,4 µm
table-number = `{ $text }` ist keine positive Zahl
table-number-help = Schreiben Sie die Zahl allein, mit der Einheit in der Überschrift, `length (mm)`, oder schreiben Sie die Einheit hinter die Zahl, `1 in`
table-no-length = die Länge fehlt
table-no-length-help = Schreiben Sie für jeden Abschnitt eine Länge
table-thread-size = { $thread } hat einen Durchmesser von { $major } mm, nicht { $given } mm
table-thread-size-help = Entfernen Sie den Durchmesser des Gewindes
table-flats = die Zahl der Schlüsselflächen fehlt
table-flats-help = Schreiben Sie 2, 4, 6 oder 8 unter `sides`
table-kind-needs = Maße fehlen für die Art { $kind }
table-no-kind = die Zeile muss genau eines sein: Zylinder, Kegel, Gewinde oder Schlüsselflächen
table-no-kind-help = Schreiben Sie für einen Kegel diameter und rear diameter, für ein Gewinde die Bezeichnung, für Schlüsselflächen across flats und sides, für alles andere einen diameter
table-tolerance-unit = die Einheit von `{ $text }` fehlt in einer Tabelle, die nicht in mm ist
table-tolerance-unit-help = Schreiben Sie `tolerance (mm)` in die Überschrift
table-tolerance = `{ $text }` ist keine Toleranz
table-tolerance-help = Schreiben Sie eine Klasse wie h6, oder ±0.1, oder +0.02/-0.01 in mm
table-kind = `{ $text }` ist keine Art von Abschnitt

# Workbooks.
workbook-sheet-used = PRÜFEN: Die Abschnitte stammen vom Blatt `{ $sheet }`. Die Arbeitsmappe hat { $sheets } Blätter. Mit `--sheet` aufrufen, um ein anderes zu verwenden.
workbook-cells-beyond = NICHT GELESEN: { $cells } Zellen jenseits von Zeile { $row } oder Spalte { $column } des Blatts.
workbook-unreadable = `{ $file }` lässt sich nicht als Arbeitsmappe lesen: { $reason }
workbook-unreadable-help = Speichern Sie sie als .xlsx oder als .csv in UTF-8
workbook-too-large = `{ $file }` ist zu groß für eine Arbeitsmappe: { $reason }
workbook-too-large-help = Speichern Sie das Blatt der Abschnitte allein, als .xlsx oder .csv
workbook-parts = sie hat { $parts } Teile, gelesen werden höchstens { $most }
workbook-unpacked = sie wird entpackt größer als { $part } MiB in einem Teil oder { $all } MiB in allen Teilen
workbook-cells = sie hat { $cells } Zellen, gelesen werden höchstens { $most }
workbook-repeats = die Anzahl einer wiederholten Zeile oder Spalte ist keine ganze Zahl
workbook-no-sheet = `{ $file }` hat kein Blatt `{ $sheet }`
workbook-no-sheet-help = Verwenden Sie eines dieser Blätter: { $sheets }
workbook-no-sheets = `{ $file }` hat keine Blätter
