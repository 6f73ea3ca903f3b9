# What is wrong with a job, a machine or a readings file.

# The place of an error in a file.
diag-place = { $file }, Zeile { $line }, Spalte { $column }
diag-place-of-key = { $file }, Zeile { $line }, Spalte { $column }, { $key }

errors-more = { $count ->
    [one] { $count } weiterer Fehler ist nicht gezeigt
   *[other] { $count } weitere Fehler sind nicht gezeigt
}
errors-more-help = Berichtigen Sie zuerst die Fehler oben
did-you-mean = Meinten Sie `{ $near }`?
defect-of-reader = Ein Fehler in diesem Programm bricht das Lesen der Datei ab
defect-of-reader-help = Bitte melden Sie ihn

# Kinds of values.
kind-nothing = nichts
kind-flag = true oder false
kind-number = eine Zahl
kind-text = Text
kind-list = eine Liste
kind-map = eine Gruppe von Schlüsseln

# The text as YAML.
yaml-empty = Die Datei ist leer
yaml-empty-help = Gehen Sie von dem Auftrag aus, den `spanhold new` ausgibt
yaml-nested = Die Werte sind zu tief verschachtelt
yaml-nested-help = Verwenden Sie höchstens acht Ebenen
yaml-anchors = Anker und Aliase (`&`, `*`) werden nicht unterstützt
yaml-anchors-help = Schreiben Sie die Werte aus. Setzen Sie Text, der mit & oder * beginnt, in Anführungszeichen
yaml-documents = Die Datei hat mehr als ein Dokument
yaml-documents-help = Schreiben Sie einen Auftrag je Datei. Entfernen Sie die Zeilen mit `---`
yaml-values = Die Datei hat mehr Werte, als ein Auftrag haben kann
yaml-values-help = Schreiben Sie höchstens 1000 Abschnitte und 1000 Formelemente
yaml-tags = Tags (`!`) werden nicht unterstützt
yaml-tags-help = Entfernen Sie das Tag. Setzen Sie Text, der mit `!` beginnt, in Anführungszeichen
yaml-merge-keys = Merge-Schlüssel (`<<`) werden nicht unterstützt
yaml-merge-keys-help = Schreiben Sie die Schlüssel aus
yaml-invalid = Dies ist kein gültiges YAML: { $reason }
yaml-invalid-help = Prüfen Sie Klammern, Doppelpunkte, Anführungszeichen und Einrückung hier und in den Zeilen darüber

# Keys.
keys-needed = Hier sind Schlüssel mit Werten nötig; angegeben ist: { $kind }
keys-needed-help = Schreiben Sie `key: value`. Die Schlüssel sind: { $keys }
key-twice = `{ $key }` ist zweimal angegeben
key-twice-help = Entfernen Sie eine der Angaben. Die erste steht in Zeile { $line }
key-unknown = Unbekannter Schlüssel `{ $key }`
key-unknown-help = Verwenden Sie einen dieser Schlüssel: { $keys }
key-is-of-planning = Schreiben Sie ihn unter `planning`: `planning: {"{"}station_pitch: 5{"}"}`
key-is-decimal = `{ $key }` ist kein Schlüssel
key-is-decimal-help = Schreiben Sie Dezimalzahlen mit Punkt: `{ $meant }`
key-not-text = Ein Schlüssel muss Text sein; angegeben ist: { $kind }
key-missing = `{ $key }` fehlt
key-missing-help = Fügen Sie `{ $key }` hinzu: { $hint }
value-missing = `{ $key }` hat keinen Wert
value-missing-help = Schreiben Sie einen Wert, oder entfernen Sie den Schlüssel

# Numbers.
number-too-small = { $value } ist zu klein
number-too-large = { $value } ist zu groß
number-not-finite = Dies ist keine endliche Zahl
number-range = Schreiben Sie eine Zahl von { $low } bis { $high } ({ $meaning })
number-range-in-unit = Schreiben Sie eine Zahl von { $low } bis { $high }, in { $unit } ({ $meaning })
number-needed = Hier ist eine Zahl nötig; angegeben ist: { $kind }
number-not-whole = { $value } ist keine ganze Zahl
number-not-whole-help = Schreiben Sie eine ganze Zahl ({ $meaning })
number-not-decimal = `{ $value }` ist keine Dezimalzahl
number-write = Schreiben Sie { $value }
number-in-quotes = Die Anführungszeichen machen { $value } zu Text, nicht zu einer Zahl
number-in-quotes-help = Schreiben Sie { $value } ohne Anführungszeichen
number-unreadable = `{ $text }` ist keine Zahl
number-decimal-comma = `{ $text }` hat ein Dezimalkomma
number-has-unit = `{ $text }` hat eine Einheit, die hier nicht passt
number-in-unit = Schreiben Sie eine dieser Einheiten hinter die Zahl: { $units }. Eine Zahl allein gilt als { $own }
number-without-unit = Schreiben Sie die Zahl allein. Dieser Wert hat keine Einheit
pair-needed = Hier sind zwei Zahlen nötig; angegeben ist: { $kind }
pair-needed-list = Hier sind zwei Zahlen nötig, nicht eine Liste von { $count }
pair-needed-help = Schreiben Sie `{ $key }: { $form }`
pair-needed-point = Schreiben Sie `{ $key }: { $form }`, mit Dezimalpunkt

# Lists, texts, words.
list-too-long = `{ $key }` hat { $count } Einträge
list-too-long-help = Schreiben Sie höchstens { $most } Einträge
list-needed = Hier ist eine Liste nötig; angegeben ist: { $kind }
list-needed-help = Schreiben Sie einen Eintrag je Zeile, jeden nach `- `, oder alle Einträge in Klammern: [..., ...]
text-needed = `{ $key }` braucht Text; angegeben ist: { $kind }
text-needed-help = Schreiben Sie einen Text auf einer Zeile
text-empty = `{ $key }` ist leer
text-too-long = Der Text ist zu lang oder hat Zeilenumbrüche
text-too-long-help = Schreiben Sie höchstens { $most } Zeichen auf einer Zeile
choice-unknown = `{ $word }` ist kein Wert von `{ $key }`
choice-help = Schreiben Sie eines von diesen: { $words }
flag-needed = Hier ist `true` oder `false` nötig; angegeben ist: { $kind }
flag-needed-help = Schreiben Sie `{ $key }: true` oder `{ $key }: false`

# Files.
file-missing = Die Datei `{ $file }` gibt es nicht
file-check-path = Prüfen Sie den Pfad
file-not-permitted = `{ $file }` darf nicht gelesen werden
file-not-permitted-help = Prüfen Sie die Zugriffsrechte der Datei
file-unreadable = `{ $file }` lässt sich nicht lesen: { $reason }
file-not-utf8 = `{ $file }` ist kein UTF-8-Text (erster Fehler in Zeile { $line })
file-not-utf8-help = Speichern Sie die Datei als UTF-8
file-is-folder = `{ $file }` ist ein Ordner
file-is-folder-help = Nennen Sie eine Datei in diesem Ordner
file-too-large = `{ $file }` ist größer als { $most } MiB
file-too-large-help = Prüfen Sie den Dateinamen: eine Auftrags- oder Maschinendatei hat nur wenige kB

# Machine files.
machine-not-job = Dies ist eine Maschinendatei, kein Auftrag
machine-not-job-help = Geben Sie eine Auftragsdatei an. Nennen Sie die Maschine im Auftrag mit `machine: { $file }` oder im Aufruf mit `JOB --machine { $file }`
machine-in-file = Die Maschine steht in einer anderen Datei, `{ $file }`
machine-in-file-help = Öffnen Sie auch diese Datei, oder schreiben Sie die Maschine in den Auftrag
machine-path-or-name = Oder schreiben Sie einen Namen aus `{ $file }`: { $names }
machine-path-from = Der Pfad beginnt im Ordner von { $file }
machine-without = Die Maschine `{ $machine }` hat kein `{ $key }`
machine-without-holding = Die Maschine `{ $machine }` hat kein `{ $key }`, aber der Auftrag arbeitet mit `holding: { $key }`
machine-without-holding-help = Fügen Sie der Maschine `{ $key }` hinzu, oder schreiben Sie `holding: { $other }`
phase-error-alone = ein Phasenfehler braucht die Drehsteifigkeit der Gegenspindel
phase-error-alone-help = Fügen Sie torsional_stiffness in N·m/rad hinzu, oder lassen Sie phase_error weg
bush-engagement = { $engagement } mm sind mehr als die Führungslänge der Buchse
bush-engagement-help = Schreiben Sie höchstens { $most }
spindle-farthest = { $farthest } mm sind nicht mehr als `nearest`
spindle-farthest-help = Schreiben Sie einen Abstand von der Buchsenstirn zur Stirn der Gegenspindel von mehr als { $nearest }
collets-none = Die Gegenspindel hat keine Spannzangen
collets-none-help = Fügen Sie mindestens eine Spannzange hinzu, oder entfernen Sie `counter_spindle`
collets-same-name = Zwei Spannzangen haben den Namen `{ $name }`
collets-same-name-help = Geben Sie jeder Spannzange einen eigenen Namen
collet-range = Der größere Durchmesser steht zuerst
collet-range-help = Schreiben Sie den kleineren Durchmesser zuerst: `range: [{ $smallest }, { $largest }]`
collet-passes = { $passes } mm sind weniger als der größte Durchmesser, den die Spannzange spannt
collet-passes-help = Schreiben Sie mindestens { $largest }
headstock-in-bush = { $nearest } mm sind weniger als die Führungslänge der Buchse
headstock-in-bush-help = Schreiben Sie den Abstand von der Buchsenstirn zur Zangenstirn: mindestens { $land }

# Bar and cutting.
stock-too-thin = Die Stange von { $bar } mm ist zu dünn: { $section } braucht { $needed } mm
stock-too-thin-help = Verwenden Sie eine Stange von { $needed } mm oder mehr
stock-too-short = Die Stange von { $bar } mm ist zu kurz für eine Welle
stock-too-short-help = Setzen Sie `bar_length` auf { $needed } mm (Welle, Abstechen und Planen) plus Reststück, oder mehr
cutting-last-pass = Der letzte Schnitt von { $depth } mm ist tiefer als `ap_max`
cutting-last-pass-help = Schreiben Sie höchstens { $most }
cutting-no-lag = Im Tandem muss das Schlichtwerkzeug hinter dem Schruppwerkzeug stehen
cutting-no-lag-help = Schreiben Sie `lag` in mm, größer als 0. Zwei Werkzeuge an derselben Stelle sind ein gegenüberliegendes Paar: `tools: opposed`
cutting-finisher-alone = `finisher` beschreibt das Schlichtwerkzeug eines Tandems, aber `tools` ist { $tools }
cutting-finisher-alone-help = Schreiben Sie `tools: tandem`, oder lassen Sie `finisher` weg
cutting-no-speed = Die Schnittgeschwindigkeit fehlt, und der Werkstoff { $material } hat keinen üblichen Bereich
cutting-no-speed-help = Fügen Sie `vc` in m/min unter `cutting` hinzu, oder `vc: [low, high]` beim Werkstoff
material-unknown = kein Werkstoff `{ $name }` in der Tabelle
material-near = meinten Sie `{ $near }`? Oder geben Sie einen eigenen an: {"{"}name, e_gpa, density, kc11, mc, vc: [low, high]{"}"}
material-far = nach seiner Nummer ist er { $family }, und keine Nummer in ihrer Nähe steht in der Tabelle; `spanhold materials "{ $word }"` zeigt diese Gruppe; oder geben Sie einen eigenen an: {"{"}name, e_gpa, density, kc11, mc, vc: [low, high]{"}"}
material-none-near = kein ähnlicher Name steht in der Tabelle; `spanhold materials` zeigt alle; oder geben Sie einen eigenen an: {"{"}name, e_gpa, density, kc11, mc, vc: [low, high]{"}"}
material-unalloyed = ein unlegierter Stahl
material-tool = ein Werkzeugstahl
material-special = ein Schnellarbeits- oder Wälzlagerstahl
material-stainless = ein nichtrostender Stahl
material-heat-resistant = ein hitzebeständiger Stahl
material-alloyed = ein legierter Stahl
material-copper = Kupfer oder eine Kupferlegierung
material-nickel = eine Nickel- oder Kobaltlegierung
material-aluminium = Aluminium oder eine Aluminiumlegierung
material-titanium = Titan oder eine Titanlegierung
material-vc = Die höhere Geschwindigkeit steht zuerst
material-vc-help = Schreiben Sie `vc: [{ $low }, { $high }]`

# Sections.
shaft-no-sections = Die Welle hat keine Abschnitte
shaft-no-sections-help = Schreiben Sie mindestens einen Abschnitt: `- {"{"}length: 60, diameter: 12{"}"}`
shaft-too-long = Die Abschnitte zusammen sind { $length } mm lang
shaft-too-long-help = Schreiben Sie Längen in mm. Eine Welle kann höchstens { $most } mm lang sein
section-is-thread = Eine Spannzange kann kein Gewinde spannen
section-is-taper = Eine Spannzange kann keinen Kegel spannen
section-is-groove = Eine Spannzange kann keinen Einstich spannen
section-is-knurl = Eine Spannzange kann kein Rändel spannen
section-has-flats = Eine Spannzange kann keinen Abschnitt mit Schlüsselflächen spannen
section-grip-help = Schreiben Sie `grip: false`, oder machen Sie den glatten Zylinder zu einem eigenen Abschnitt
section-no-size = Der Abschnitt hat keinen Durchmesser
section-no-size-help = Fügen Sie eines von diesen hinzu: `diameter: 18`, `thread: M16x1.5`, `taper: [18, 22]` oder `across_flats: 17` mit `sides: 6`
section-kind-size = Ein Einstich oder ein Rändel hat nur `diameter`
section-kind-size-help = Entfernen Sie `kind`, oder geben Sie das Maß allein als `diameter` an
section-two-sizes = Der Abschnitt hat mehr als eine Form: { $keys }
section-two-sizes-help = Behalten Sie einen dieser Schlüssel, oder teilen Sie den Abschnitt
section-unknown = Kein Abschnitt hat den Namen `{ $name }`
section-unknown-help = Schreiben Sie den `name` eines Abschnitts oder seine Nummer von vorn, 1 bis { $most }
sections-same-name = { $count } Abschnitte haben den Namen `{ $name }`
sections-same-name-help = Geben Sie jedem Abschnitt einen eigenen Namen, oder schreiben Sie die Nummer von vorn: `section: { $number }`
thread-interrupted = Der Vorschub darf nicht in einem Gewinde anhalten
thread-interrupted-help = Entfernen Sie `interrupt` bei diesem Abschnitt
thread-class = `{ $class }` ist eine Toleranzklasse für Gewinde
thread-class-help = Entfernen Sie `tolerance`, und schreiben Sie die Klasse hinter das Gewinde: `thread: { $designation }-{ $class }`
thread-by-alone = `thread_by` ist ohne `thread` angegeben
thread-by-alone-help = Entfernen Sie `thread_by`. Es sagt, wie ein Gewinde hergestellt wird
taper-same = Beide Enden des Kegels haben denselben Durchmesser
taper-same-help = Schreiben Sie `diameter: { $diameter }`
sides-alone = `sides` ist ohne `across_flats` angegeben
sides-alone-help = Schreiben Sie `across_flats: 17, sides: 6`
sides-number = { $sides } ist keine mögliche Zahl von Schlüsselflächen
sides-number-help = Schreiben Sie 2, 4, 6 oder 8
flats-too-thick = Der Durchmesser von { $diameter } mm ist nicht größer als die Schlüsselweite
flats-too-thick-help = Schreiben Sie einen Durchmesser von mehr als { $across }
flats-beyond-corners = Der Durchmesser von { $diameter } mm ist größer als das Eckenmaß
flats-beyond-corners-help = Entfernen Sie `diameter`. Die Stange wird auf { $corners } mm gedreht, das Eckenmaß
flats-without-diameter = Zwei Schlüsselflächen brauchen den Durchmesser des Zylinders
flats-without-diameter-help = Fügen Sie `diameter` hinzu
tolerance-order = Das erste Abmaß liegt nicht unter dem zweiten
tolerance-order-help = Schreiben Sie `tolerance: [lower, upper]`, etwa `[-0.05, 0]`
tolerance-one-number = Eine Toleranz braucht zwei Abmaße, nicht eine Zahl
tolerance-one-number-help = Schreiben Sie beide Abmaße, etwa `tolerance: [-0.05, 0.05]` oder `tolerance: ±0.05`

# Features.
feature-kind = Ein Formelement braucht genau eine Art
feature-kind-help = Schreiben Sie einen dieser Schlüssel zuerst: { $kinds }. Beispiele: `{"{"}cross_hole: 5, at: 120{"}"}`, `{"{"}keyseat: [6, 3.5], from: 500, to: 540{"}"}`
feature-key = `{ $key }` ist kein Schlüssel von `{ $kind }`
place-beyond-shaft = Das Formelement reicht von { $from } bis { $to } mm, über die Welle hinaus
place-beyond-shaft-help = Schreiben Sie Abstände in mm ab der vorderen Stirnfläche. Die Welle endet bei { $length } mm
hole-too-wide = Die Bohrung ist nicht kleiner als die Welle, die bei { $at } mm { $diameter } mm dick ist
hole-too-wide-help = Verwenden Sie eine kleinere Bohrung oder eine andere Stelle
keyseat-backwards = Die Passfedernut geht von { $from } bis { $to } mm
keyseat-backwards-help = Schreiben Sie `to` größer als `from`
keyseat-too-wide = Die Passfedernut ist { $width } mm breit, aber die Welle ist dort nur { $diameter } mm dick
keyseat-too-wide-help = Schreiben Sie `keyseat: [width, depth]` in mm, mit einer Breite kleiner als der Durchmesser
keyseat-too-deep = Die Passfedernut ist { $depth } mm tief, aber die Welle ist dort nur { $diameter } mm dick
keyseat-too-deep-help = Schreiben Sie `keyseat: [width, depth]` in mm, mit einer Tiefe von weniger als dem halben Durchmesser
centre-hole-too-wide = Die Zentrierbohrung { $hole } ist { $mouth } mm weit, aber die Stirnfläche ist nur { $face } mm breit
centre-hole-too-wide-help = Verwenden Sie eine kleinere Zentrierbohrung
work-too-deep = Eine Tiefe von { $depth } mm ist mehr als die Länge der Welle, { $length } mm
work-too-deep-help = Schreiben Sie die Tiefe in mm ab der Stirnfläche
work-too-wide = Die Welle ist dort nur { $diameter } mm dick, nötig sind aber mehr als { $size } mm
work-too-wide-help = Verwenden Sie ein kleineres Maß oder eine kleinere Tiefe
thread-deeper-than-hole = Die Bohrung von { $hole } mm ist nicht so tief wie das Gewinde
thread-deeper-than-hole-help = Schreiben Sie mindestens { $least }, oder entfernen Sie `drill_depth`
tapped-hole-where = Eine Gewindebohrung braucht eine Stelle quer zur Welle (`at`) oder eine Tiefe in einem Ende (`depth`)
tapped-hole-where-help = Schreiben Sie `{"{"}tapped_hole: M4, at: 60{"}"}` oder `{"{"}tapped_hole: M6, depth: 12, end: front{"}"}`
socket-punched-step = Ein mit dem Stempel eingedrückter Innensechskant hat kein `step`
socket-punched-step-help = Entfernen Sie `step`, oder schreiben Sie `forming: shave`
engraving-too-long = Der Text ist zu lang für eine Gravur
engraving-too-long-help = Schreiben Sie höchstens { $most } Buchstaben
engraving-beyond-face = Der Text braucht { $needed } mm, aber die Stirnfläche ist nur { $diameter } mm breit
engraving-beyond-face-help = Verwenden Sie kleinere Buchstaben oder einen kürzeren Text
engraving-where = Eine Gravur braucht eine Stelle längs der Welle (`at`) oder eine Stirnfläche (`end`)
engraving-where-help = Schreiben Sie `{"{"}engrave: LP 42, height: 2, at: 60{"}"}` oder `{"{"}engrave: 42, height: 2, end: front{"}"}`
engraving-on-two = Der Text von { $from } bis { $to } mm liegt nicht auf einem einzigen Zylinder oder einer einzigen Fläche
engraving-on-two-help = Verschieben Sie den Text, oder verwenden Sie kleinere Buchstaben
engraving-too-high = Buchstaben von { $height } mm sind höher als die Fläche
engraving-too-high-help = Schreiben Sie höchstens { $most }
keyway-without-hole = Die Nabennut braucht eine Axialbohrung am selben Ende, tief und weit genug
keyway-without-hole-help = Fügen Sie `{"{"}axial_hole: 12, depth: { $depth }{"}"}` an diesem Ende hinzu, mit einem Durchmesser von mehr als { $width }
keyway-no-wall = Die Nabennut lässt keine Wand stehen: sie reicht bis { $reach } mm von der Achse
keyway-no-wall-help = Verwenden Sie eine kleinere Bohrung oder Nabennut. Die Oberfläche der Welle ist { $most } mm von der Achse entfernt

# Families and wishes.
vary-nothing = `vary` ist leer
vary-nothing-help = Schreiben Sie `length: {"{"}section: body, from: 200, to: 1200, step: 50{"}"}`, `diameter` oder beides
vary-too-many = `vary` ergibt { $parts } Teile
vary-too-many-help = Verwenden Sie einen größeren `step`. Höchstens { $most } Teile sind möglich
vary-backwards = Der Bereich geht von { $from } bis { $to } mm
vary-backwards-help = Schreiben Sie `to` nicht kleiner als `from`
vary-no-diameter = { $section } hat keinen glatten Durchmesser, der sich verändern ließe
vary-no-diameter-help = Verändern Sie die Länge. Der Durchmesser von Gewinden, Kegeln und Schlüsselflächen lässt sich nicht verändern
wish-too-few = { $most } ist zu wenig: `hand_over_at` verlangt { $wished }
wish-too-few-help = Schreiben Sie mindestens { $wished }, oder entfernen Sie Übergaben aus `hand_over_at`
wish-twice = Die Übergabe bei { $at } mm ist zweimal angegeben
wish-twice-help = Entfernen Sie eine davon
wish-off-shaft = Eine Übergabe bei { $at } mm liegt nicht auf der Welle
wish-off-shaft-help = Schreiben Sie eine gedrehte Länge zwischen 0 und { $length } mm
wish-nose = Bei { $nose } mm ist die Welle noch nicht gedreht
wish-nose-help = Schreiben Sie höchstens { $most }. Die Gegenspindel spannt nur fertige Flächen
wish-backwards = Die Länge geht von { $from } bis { $to } mm
wish-backwards-help = Schreiben Sie das vordere Ende zuerst: `[120, 140]`
wish-section-help = Schreiben Sie den Namen oder die Nummer (1 bis { $most }) eines Abschnitts, oder zwei Stellen: `[120, 140]`

# Readings.
set-ups-empty-help = Fügen Sie mindestens eine Aufspannung mit einer Messung hinzu
set-up-unnamed = Aufspannung { $number }
set-up-no-reading = Die Aufspannung hat keine Messung
set-up-no-reading-help = Fügen Sie `dial` hinzu, eine Liste von {"{"}load, at, deflection{"}"}, oder `frequency`, aus einem Anschlagversuch
set-up-bar-too-thick = Eine Stange von { $bar } mm ist zu dick: `{ $key }` nimmt höchstens { $most } mm auf
set-up-bar-too-thick-help = Prüfen Sie, ob `diameter` und `machine` die der Messung sind
set-up-holding-help = Fügen Sie der Maschine `{ $key }` hinzu, oder schreiben Sie das `holding` der Messung
set-up-headstock = Die Stelle des Spindelstocks wird ohne Führungsbuchse nicht verwendet
set-up-headstock-help = Entfernen Sie `headstock`. Ohne die Buchse zählen Abstände ab der Zangenstirn der Hauptspindel
set-up-out-of-travel = { $at } mm von der Buchsenstirn liegen außerhalb des Verfahrwegs von `{ $machine }`
set-up-out-of-travel-help = Schreiben Sie einen Abstand von { $nearest } bis { $farthest } mm
set-up-collet-alone = `collet` ist ohne `grip` angegeben
set-up-collet-alone-help = Fügen Sie `grip` hinzu, den Abstand von der Buchsenstirn zur Zangenstirn der Gegenspindel, oder entfernen Sie `collet`
set-up-no-spindle-help = Entfernen Sie `grip`
set-up-collet-size = Die Spannzange `{ $collet }` spannt keine Stange von { $bar } mm
set-up-collet-unknown = Keine Spannzange hat den Namen `{ $collet }`
set-up-no-collet = Keine Spannzange der Maschine spannt eine Stange von { $bar } mm
set-up-no-collet-help = Fügen Sie der Maschine die Spannzange der Messung hinzu, oder messen Sie mit einer anderen Stange. Die Spannzangen sind { $collets }
set-up-collet-which = Mehr als eine Spannzange spannt eine Stange von { $bar } mm
set-up-collet-which-help = Schreiben Sie `collet: "{ $first }"`, oder eine andere von { $collets }
set-up-bar-in-collet = Die Stange endet { $front } mm von der Buchsenstirn, innerhalb der Spannzange
set-up-bar-in-collet-help = Setzen Sie `front` auf mindestens { $least }: die Spannzange { $collet } muss ausgefüllt sein
fit-not-on-machine-help = Entfernen Sie es aus `fit`, oder fügen Sie es der Maschine hinzu
fit-twice-help = Entfernen Sie eine der Angaben
reading-beyond-bar = Diese Stelle liegt jenseits des vorderen Endes der Stange
reading-in-spindle = Diese Stelle liegt in der Gegenspindel
reading-in-headstock = Diese Stelle liegt in der Spannzange der Hauptspindel
reading-in-bush = Diese Stelle liegt in der Buchse
reading-behind-headstock = Diese Stelle liegt in der Spannzange der Hauptspindel oder dahinter
reading-place-help = Schreiben Sie den Abstand von der Buchsenstirn (ohne die Buchse: von der Zangenstirn der Hauptspindel), negativ hinter der Stirn
reading-no-deflection = Die Auslenkung an der Last ist nicht größer als 0
reading-no-deflection-help = Schreiben Sie die Auslenkung in Richtung der Last, in µm, als positive Zahl

# Edits of a text.
edit-impossible = Dieser Wert lässt sich hier nicht ändern
edit-refused = Diese Änderung würde mehr als diesen Wert ändern
edit-help = Ändern Sie den Text der Datei

# What the reader assumed: notes of a plan.
note-speed-unusual = Die Schnittgeschwindigkeit von { $speed } { -m-min } liegt außerhalb des üblichen Bereichs für { $material }, { $low } bis { $high } { -m-min }.
note-speed-assumed = Es ist keine Schnittgeschwindigkeit angegeben. { $speed } { -m-min } werden angenommen, die Mitte des üblichen Bereichs für { $material } ({ $low } bis { $high } { -m-min }).
note-straightness-of-bar = Die Geradheit der gedrehten Welle ist nicht angegeben. Eine Krümmung von { $bow } { -mm } je { -m } wird angenommen, nach der Stange (stock.kind: { $kind }).
note-straightness = Die Geradheit der gedrehten Welle ist nicht angegeben. Eine Krümmung von { $bow } { -mm } je { -m } wird angenommen.
note-cutting-force = Schnittkraft von { $material }: kc1.1 { $kc11 } N/mm², mc { $mc }. Quelle: { $source }. Vertrauen: { $confidence }.
note-wishes = Der Plan hält diese Wünsche ein: { $wishes }.
note-not-turned = Abschnitt { $section } hat den Durchmesser der Stange und wird nicht gedreht. Seine Toleranz { $label } erlaubt { $needed }, die Stangentoleranz { $bar } ergibt aber { $found }. Verwenden Sie eine dickere Stange, um ihn zu drehen, oder bestellen Sie die Stange mit dieser Toleranz.
note-not-turned-unknown = Abschnitt { $section } hat den Durchmesser der Stange und wird nicht gedreht. Seine Toleranz { $label } erlaubt { $needed }, die Toleranz der Stange ist aber nicht angegeben. Verwenden Sie eine dickere Stange, um ihn zu drehen, oder bestellen Sie die Stange mit dieser Toleranz.
note-family = Der Auftrag verändert { $ranges }. Dieser Plan verwendet die Werte der Abschnitte. `spanhold batch` plant den ganzen Bereich.
note-part-of-family = Ein Teil einer Teilefamilie: { $sizes }.

# A centre in the front face.
centre-not-there = `hold: centre` braucht eine Zentrierspitze, und die Maschine { $machine } hat keine
centre-not-there-help = Schreiben Sie `centre: {"{"}force: 300, stiffness: 40{"}"}` unter `counter_spindle` in die Maschinendatei, mit den Zahlen Ihrer Maschine, oder schreiben Sie `hold: collet`
centre-no-counter-spindle-help = Wählen Sie eine Maschine mit einer Gegenspindel, die eine Zentrierspitze (`centre`) hat, oder entfernen Sie `hold`
centre-no-hole = `hold: centre` braucht eine Zentrierbohrung in der vorderen Stirnfläche
centre-no-hole-help = Fügen Sie sie unter `shaft.features` hinzu: `- {"{"}centre_hole: A2, end: front{"}"}`, oder schreiben Sie `hold: collet`
centre-hand-over = Mit `hold: centre` ist das ganze Teil eine einzige Etappe, ohne Übergabe
centre-hand-over-help = Entfernen Sie `hand_over_at`, oder schreiben Sie `hold: collet`
centre-too-short = Die Zentrierspitze steht { $out } mm vor, und die Gegenspindel kommt nicht näher als { $nearest } mm an die Buchse, sie erreicht die vordere Stirnfläche deshalb nicht
centre-too-short-help = Verwenden Sie eine Zentrierspitze mit `stands_out` von mindestens { $least } mm, oder schreiben Sie `hold: collet`

# The shop's file.
note-shop = Aus `{ $file }`: { $keys }
note-cutting-force-shop = Schnittkraft von { $material } (kc1.1 { $kc11 } N/mm², mc { $mc }): die eigenen Werte des Betriebs, aus `{ $file }`
shop-machine-unknown = `{ $name }` ist keine Maschine dieses Betriebs
shop-machine-unknown-help = Schreiben Sie einen Namen aus `machines` oben: { $machines }
shop-material-twice = { $name } steht zweimal in der Liste
shop-material-twice-help = Entfernen Sie einen der Einträge
shop-no-bar-of = `{ $file }` hat keine Stange aus { $material }
shop-no-bar-of-help = Geben Sie die Stange im Auftrag an, etwa `stock: {"{"}diameter: 20{"}"}`, oder fügen Sie sie zu `bars` hinzu. Es gibt Stangen aus { $grades }
shop-no-bar = Keine Stange aus { $material } in `{ $file }` ergibt diese Welle: nötig ist Ø{ $needed } oder mehr
shop-no-bar-help = Es gibt { $sizes }, und { $machine } muss die Stange aufnehmen. Geben Sie die Stange im Auftrag an, etwa `stock: {"{"}diameter: { $needed }{"}"}`
shop-no-collet = Für die Gegenspindel von { $machine } ist keine Spannzange bekannt: weder ihre Datei noch `{ $file }` hat eine
shop-no-collet-help = Führen Sie `collets` in der Maschinendatei auf oder Spannzangen für diese Maschine in der Betriebsdatei

# The tool list.
tools-number = { $number ->
    [one] { $number } Werkzeug
   *[other] { $number } Werkzeuge
}
tool-twice = Den Namen { $name } gibt es zweimal
tool-twice-help = Geben Sie jedem Werkzeug einen eigenen Namen
tool-key-unused = Ein Werkzeug der Art `{ $kind }` hat kein `{ $key }`
tool-key-unused-help = Entfernen Sie `{ $key }`, oder schreiben Sie einen anderen Wert für `kind`
tool-materials-help = Schreiben Sie den Namen eines Werkstoffs und seine Schnitte, etwa `C45: {"{"}rough: {"{"}vc: 160, feed: 0.2{"}"}{"}"}`

edge-both = Ein Ende hat eine Fase und einen Radius
edge-both-help = Schreiben Sie für jedes Ende nur eines von beiden
edge-too-long = Die Fasen oder Radien von { $section } brauchen die ganze Länge von { $length } mm
edge-no-step = { $section } hat dort keine freie Kante: der Abschnitt daneben ist ebenso dick oder dicker
edge-too-large = { $size } mm sind mehr als der Absatz von { $step } mm an { $section }
edge-help = Eine Fase gehört an eine freie Kante und ist nicht größer als der Absatz. Geben Sie das Ende an: `chamfer: {"{"}front: 1, rear: 0.5{"}"}`. Eine einzelne Zahl gilt für das vordere Ende
turned-alone = `{ $key }` braucht `grind`
turned-alone-help = Schreiben Sie das Aufmaß, das später abgeschliffen wird, etwa `grind: 0.3`, oder lassen Sie den Schlüssel weg
grind-cylinder = Nur ein glatter Zylinder kann `grind` haben
grind-cylinder-help = Geben Sie die gedrehten Maße an, und schreiben Sie das Schleifen in den Namen
grind-nothing-left = auf Ø{ $turned } mm { $label } gedreht, bleibt möglicherweise nichts zu schleifen
grind-nothing-left-help = Machen Sie `grind` größer oder `turned_tolerance` feiner
bore-too-wide = Die Bohrung der Stange von { $bore } mm lässt bei { $section } keine Wand stehen: { $smallest } mm
bore-too-wide-help = Schreiben Sie einen Innendurchmesser unter { $smallest } mm, oder lassen Sie `bore` weg, bei Vollmaterial
bore-hole = Die Bohrung der Stange ist { $bore } mm, für { $size } mm gibt es also nichts zu bohren
bore-hole-help = Eine Bearbeitung in einem Ende muss größer sein als die Bohrung der Stange

# Designations of threads.
thread-unknown = `{ $text }` ist keine Gewindebezeichnung
thread-unknown-help = Schreiben Sie `M16x1.5`, `1/4-20 UNC`, `G1/4` oder `Tr20x4`. Eine Klasse und `LH` für Linksgewinde können folgen: `M16x1.5-6g-LH`
thread-write = Schreiben Sie `{ $designation }`
thread-no-coarse = M{ $major } hat in ISO 261 keine Regelsteigung
thread-no-coarse-help = Schreiben Sie die Steigung, `M{ $major }x1`, oder das nächste Maß mit Regelsteigung, `M{ $near }`
thread-too-fine = `{ $text }`: eine Steigung von { $pitch } mm ist zu fein
thread-too-fine-help = Schreiben Sie eine Steigung von mindestens { $least } mm
thread-too-coarse = `{ $text }`: eine Steigung von { $pitch } mm ist zu grob für einen Durchmesser von { $major } mm
thread-write-coarse = Die Regelsteigung von M{ $major } ist { $coarse } mm: schreiben Sie `M{ $major }` oder eine feinere Steigung
thread-finer = Schreiben Sie eine feinere Steigung, höchstens { $most } mm
thread-lead = `{ $text }`: die Steigung von { $lead } mm ist kein ganzes Vielfaches der Teilung von { $pitch } mm
thread-lead-help = Schreiben Sie die Steigung eines mehrgängigen Gewindes als 2 bis { $most } Teilungen, hier { $twice } mm oder ein Vielfaches, und die Teilung in Klammern
thread-no-pitch = `{ $text }`: ein Trapezgewinde braucht seine Steigung
thread-no-pipe-size = `{ $text }`: ISO 228-1 hat kein Rohrgewinde dieses Maßes
thread-no-unified = `{ $text }` steht nicht in ASME B1.1
thread-no-unified-help = ASME B1.1 hat { $near }
thread-no-unified-special = ASME B1.1 hat { $near }. Schreiben Sie ein Sondergewinde als `{ $special }`
thread-tail-unknown = `{ $text }`: `{ $word }` ist keine Toleranzklasse dieses Gewindes
thread-tail-help = Schreiben Sie zum Beispiel `{ $designation }`, oder `LH` für ein Linksgewinde
thread-class-of-hole = `{ $class }` ist eine Klasse für Innengewinde
thread-class-of-shaft = `{ $class }` ist eine Klasse für Außengewinde
thread-class-write = Schreiben Sie zum Beispiel `{ $with }`, oder ohne Klasse: `{ $without }`
# Units of a file.
note-mixed-units = `{ $file }` enthält Werte in beiden Einheitensystemen: { $values }. Jeder wurde nach seiner eigenen Einheit umgerechnet. Prüfen Sie, ob jede Einheit so gemeint ist.
note-mixed-units-value = `{ $key }` in Zeile { $line }
