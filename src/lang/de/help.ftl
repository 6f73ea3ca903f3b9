# The topics of `help`: files, checks, materials.
help-job =
    Die Auftragsdatei sagt, was zu drehen ist: die Welle, die Stange, die Maschine und wie zerspant wird. Sie ist eine YAML-Datei.
    Längen sind in mm, oder in Zoll mit `units: inch`. Positionen auf der Welle zählen ab der vorderen Stirnfläche: dem Ende, das die Führungsbuchse zuerst verlässt.
    `spanhold new` gibt ein längeres Beispiel mit Kommentaren aus. Ein Editor kann die Datei beim Schreiben prüfen: `spanhold schema job`.
    `[]` nach einem Namen bedeutet: jeder Eintrag der Liste.
help-machine =
    Die Maschinendatei beschreibt einen Drehautomaten. Sie ist eine YAML-Datei. Ein Auftrag nennt sie, oder er hat dieselben Schlüssel unter `machine`.
    Längen sind in mm, oder in Zoll mit `units: inch`. Steifigkeiten sind in N/µm. Nehmen Sie Längen und Drehzahlen aus der Anleitung der Maschine. Messen Sie die Steifigkeiten: siehe `spanhold help readings`.
    `[]` nach einem Namen bedeutet: jeder Eintrag der Liste.
help-shop =
    Die Betriebsdatei enthält, was für alle Aufträge eines Betriebs gleich ist: Maschinen, Spannzangen, Werkstoffe mit Preisen, Stangen, Kostensätze, betriebliche Werte.
    Sie ist eine YAML-Datei. spanhold findet sie als `shop.yaml` im Ordner eines Auftrags oder darüber; `--shop FILE` oder `shop` im Auftrag nennt eine andere.
    Ein Auftrag darf alles weglassen, was in ihr steht. Was ein Auftrag angibt, geht vor. `spanhold new shop shop.yaml` schreibt eine mit Kommentaren.
    `cutting`, `limits`, `planning`, `scatter`, `order` und `rates` haben die Schlüssel eines Auftrags (`spanhold help job`), außer `cutting.vc` und `order.pieces`.
    `[]` nach einem Namen bedeutet: jeder Eintrag der Liste.
help-readings =
    Die Messdatei enthält, was Sie an der Maschine gemessen haben. `spanhold fit` berechnet daraus die Steifigkeit jeder Stützstelle.
    Positionen zählen in mm ab der Buchsenstirn zur Gegenspindel hin. Ohne Buchse zählen sie ab der Zangenstirn der Hauptspindel.
    Sichern Sie die Maschine gegen Wiedereinschalten, bevor Sie messen. Befolgen Sie ihre Anleitung und die örtlichen Vorschriften.
    `[]` nach einem Namen bedeutet: jeder Eintrag der Liste.
help-materials =
    Eingebaute Werkstoffe für `shaft.material` in einem Auftrag. Geben Sie den Namen, die Nummer oder einen anderen Namen an. Großschreibung, Leerzeichen, Bindestriche, der Name des Systems (AISI, JIS, UNS, W.-Nr.) und eine Norm vor dem Namen spielen keine Rolle.
    E: Elastizitätsmodul. kc1.1 und mc: spezifische Schnittkraft bei 1 mm Spanungsdicke und ihr Exponent. vc: übliche Schnittgeschwindigkeiten mit beschichtetem Hartmetall und Kühlschmierstoff.
    Das Vertrauen sagt, wie weit kc1.1 und mc zu trauen ist. high: eine bekannte Quelle für die Sorte. medium: die Quellen weichen voneinander ab, oder eine passende Gruppe. low: eine Schätzung.
    Die Werte stammen aus der Erinnerung an Handbücher und Normen, aus dem Katalog eines Werkzeugherstellers oder sind Schätzungen. Schnittkräfte sind bestenfalls auf ± 25 % genau.
    Für einen anderen Werkstoff geben Sie eine Gruppe von Schlüsseln an: `name`, `e_gpa`, `density`, `kc11`, `mc` und nach Wunsch `poisson`, `vc` und `class`. Siehe `spanhold help job`.
help-speeds =
    Drehzahlen und Vorschübe von Bohrern, Gewindebohrern und Fräsern. Die Werkstoffklasse bestimmt sie. Ein eingebauter Werkstoff hat seine Klasse. Geben Sie `class` für einen eigenen Werkstoff an; sonst wird sie aus den anderen Zahlen angenommen, und der Plan sagt es.
    Bohrer und Gewindebohrer sind aus Schnellarbeitsstahl, Fräser aus beschichtetem Vollhartmetall, die in voller Breite schneiden, alle mit Kühlschmierstoff. Hartmetallbohrer laufen zwei- bis viermal so schnell. Angetriebene Werkzeuge drehen nicht schneller als `driven_max_rpm` der Maschine.
    Die Buchstaben sagen, woher jeder Wert stammt: Bohrer; Gewindebohrer; Fräser. Die Bereiche der Quellen sind weit.
    Zwischen zwei Durchmessern verläuft der Vorschub je Zahn geradlinig. Ein dünnerer Fräser hat ihn im Verhältnis kleiner, ein dickerer hat den letzten.
help-checks =
    Die Prüfungen eines Plans. Eine Prüfung vergleicht einen Wert mit seinem Grenzwert. Ein Plan hält, wenn jeder Wert höchstens 100 % seines Grenzwerts nutzt.
    Die Grenzwerte sind Vorgaben aus allgemeiner Praxis, ohne Quelle. Ändern Sie sie im Auftrag unter `limits`.
help-plan-file =
    Die Schlüssel von plan.json, der Datei, die `spanhold plan --out` schreibt und `spanhold plan --format json` ausgibt.
    Jede Zahl ist endlich. `null` bedeutet: es gibt keinen Wert. Viele Namen enden mit ihrer Einheit. Gedrehte Längen und Positionen auf der Welle zählen ab der vorderen Stirnfläche.
    `[]` nach einem Namen bedeutet: jeder Eintrag der Liste.
help-group-root = Schlüssel der Datei: { $what }.
help-group = { $paths }: { $what }.
help-group-kinds = { $title } Geben Sie genau eine dieser Arten an: { $kinds }.
help-head-key = Schlüssel
help-head-meaning = Bedeutung
help-head-unit = Einheit
help-head-takes = zulässig
help-head-holds = enthält
help-head-left-out = wenn es fehlt
help-head-check = Prüfung
help-head-looks-at = betrachtet
help-head-made = wann
help-head-limit = Schlüssel des Grenzwerts
help-head-material = Name
help-head-class = Klasse
help-head-drill-vc = Bohrer, m/min
help-head-drill-feed = Vorschub Bohrer, × Durchm.
help-head-tap-vc = Gew.bohrer, m/min
help-head-mill-vc = Fräser, m/min
help-head-tooth-feed = Vorschub je Zahn
help-head-sources = Quellen
help-head-cutter = Durchmesser des Fräsers, mm
help-head-letter = Buchst.
help-head-source = Quelle
help-speeds-meaning = Klassen:
help-speeds-classes = Drehzahlen und Vorschübe:
help-speeds-teeth = Vorschub je Zahn nach dem Durchmesser des Fräsers, mm:
help-speeds-sources = Quellen:
tooth-feed-full = voll
tooth-feed-small = klein
help-head-number = Nummer
help-head-names = andere Namen
help-head-state = Zustand
help-head-e = E, GPa
help-head-density = Dichte, kg/m³
help-head-kc = kc1.1, N/mm²
help-head-mc = mc
help-head-vc = vc, m/min
help-head-confidence = Vertrauen
help-takes-range = { $least } bis { $most }
help-takes-text = Text
help-takes-number = Zahl
help-takes-whole = ganze Zahl
help-takes-flag = `true` oder `false`
help-takes-null = `null`
help-takes-map = Gruppe von Schlüsseln
help-takes-list = Liste: { $item }
help-takes-pair = zwei Werte: { $item }
help-takes-or = { $one } oder { $other }
help-takes-any = beliebiger Wert
help-must-be-given = muss angegeben werden
help-must-be-given-with = muss angegeben werden mit { $keys }
help-another-kind = eine andere Art
help-another-kind-of = eine andere Art: { $others }
help-material-about = { $name } ({ $group }, { $state }), Querkontraktionszahl { $poisson }, Klasse { $class }. kc1.1 und mc: { $source }.
help-material-group = { $group }:
help-materials-more =
    `spanhold materials WORD` nennt die anderen Namen, den Zustand der Stange und die Quellen zu allem, worauf ein Wort passt: Name, Nummer oder Gruppe.
    `--format json` gibt alles aus.
help-material-names = { "  " }Andere Namen: { $names }.
help-check-at-rest = bei jeder gedrehten Länge
help-check-by-speed = bei jeder gedrehten Länge; eine kleinere Drehzahl hilft
help-check-at-event = bei einem Ereignis
help-check-at-both = in jedem Zustand eines Schnitts und bei Bearbeitung an einem Ende
help-check-no-limit = keiner
help-check-no-default = hängt von Werkzeug, Stange und Führung ab
help-check-stiffness = Die Quersteifigkeit der Stange am Werkzeug.
help-check-span-stiffness = Die kleinste Quersteifigkeit zwischen Spannstelle und Buchse: ein betrieblicher Grenzwert für ein einzelnes Werkzeug. Gilt nicht, wo das vordere Ende frei laufen könnte.
help-check-free-ratio = Eine betriebliche Regel, aus, wenn der Schlüssel fehlt: die freie Länge vorn, geteilt durch ihren mittleren Fertigdurchmesser (L/d).
help-check-whirl = Drehzahl, geteilt durch die niedrigste kritische Drehzahl. In Texten heißt die Prüfung „kritische Drehzahl“.
help-check-whip = Krümmung der gedrehten Welle, durch die Drehung vergrößert.
help-check-sag = Durchhang der Welle unter ihrem Eigengewicht zwischen Spannstelle und Buchse. Freies vorderes Ende: siehe `pick_up`.
help-check-pick-up = Wie weit ein freies vorderes Ende durch Krümmung und Eigengewicht neben der Achse liegt, wenn die Spannzange der Gegenspindel darüberfährt.
help-check-bore = Dieselbe Biegung in der Gegenspindel, durch die Drehung vergrößert, gegen den Platz in der Bohrung. Der Schlüssel des Grenzwerts ist der Freiraum, der bleibt.
help-check-cut = Änderung des Durchmessers entlang eines Schnitts, weil sich die Stange durchbiegt. Der Grenzwert ist ein Anteil der Toleranz.
help-check-chatter = Schnitttiefe gegen die Tiefe, bei der regeneratives Rattern beginnt. `limits.damping_ratio` ändert diese Tiefe.
help-check-buckling = Axiallast, die die Stange drückt, gegen einen Anteil der Last, bei der sie ausknickt. Unter einem Viertel dieses Grenzwerts fehlt die Zeile.
help-check-run-out = Rundlaufabweichung der Fläche im Schnitt, weil die Spannzange der Gegenspindel nicht rund läuft. Wird geprüft, wo Spannzange und Abschnitt beide `run_out` haben.
help-check-drill = Durchbiegung unter der Kraft eines Querbohrers oder Fräsers, im Augenblick seiner Arbeit.
help-check-release = Absinken der Welle an der alten Spannstelle, wenn die Spannzange bei einer Übergabe öffnet.
help-check-torque = Drehmoment des Abstechens und der Rückseitenbearbeitung, mal Sicherheitsfaktor, gegen die Reibung der letzten Spannstelle.
help-check-push = Axialkraft und Drehmoment der Bearbeitung an einem Ende, mal Sicherheitsfaktor, gegen die Reibung der haltenden Spannzange.
help-check-back = Durchbiegung des hinteren Endes bei der Bearbeitung nach dem Abstechen. Der Grenzwert ist ein Anteil der Toleranz dieser Bearbeitung.
help-unknown-topic = es gibt keine Hilfe zu `{ $word }`
help-topics-and-commands = Themen: { $topics }. Befehle: { $commands }
help-nearest = meinten Sie `{ $near }`? { $all }
help-more-topics = Themen: { $topics }. Eines lesen mit: spanhold help TOPIC
help-materials-of-shop = Aus `{ $file }`
help-head-price = je kg
help-no-material = kein eingebauter Werkstoff passt zu `{ $word }`
help-all-materials = `spanhold materials` zeigt alle
left-out-none = entfällt
left-out-defaults = die Vorgaben der Schlüssel darin
left-out-shaft-name = `shaft`
left-out-run-out = `run_out` wird nicht geprüft
left-out-section-name = „Abschnitt“ und seine Nummer
left-out-section-kind = ein glatter Zylinder, Gewinde, Kegel oder Schlüsselflächen
left-out-section-sides = muss angegeben werden mit `across_flats`
left-out-section-ra = keine Rauheit verlangt
left-out-section-tolerance = ISO 2768-m
left-out-thread-by = `single_point`; `whirling`, wo die Stange nicht um das ganze Gewinde zurückgezogen werden kann
left-out-section-interrupt = `never` bei einem Gewinde, bei IT7 oder feiner, bei Ra 0,8 oder feiner; `avoid` bis IT9 oder Ra 1,6; sonst `free`
left-out-section-grip = `true` bei einem glatten Zylinder, sonst `false`
left-out-feature-thrust = aus der Bohrung berechnet
left-out-feature-at = muss angegeben werden mit `cross_hole`, und mit `tapped_hole` oder `engrave` längs der Welle
left-out-language = die der Betriebsdatei, sonst `en`
left-out-feature-depth = muss angegeben werden mit `axial_hole`, `hex_socket`, und mit `tapped_hole` an einem Ende; { $default } bei `engrave`
left-out-feature-drill-depth = `depth` plus vier Steigungen
left-out-material-vc = dann `cutting.vc` angeben
left-out-material-class = aus Elastizitätsmodul, Dichte und kc1.1 angenommen
left-out-finisher = gleiche Seite, mit der Schneide des Schruppwerkzeugs
left-out-finisher-edge = der Wert des Schruppwerkzeugs
left-out-cutting-vc = Mitte des üblichen Bereichs des Werkstoffs
left-out-cutting-feed = Schruppen 0,15; Schlichten nach Ra, höchstens 0,15
left-out-cutting-ap-finish = { $default }, aber höchstens `ap_max`
left-out-stiffness = { $share } N/µm je mm Stangendurchmesser
left-out-span-stiffness = wie `stiffness_min`
left-out-whip = { $share } mm je mm Stangendurchmesser
left-out-rates = keine Kosten werden berechnet
left-out-order = kein Los wird kalkuliert
left-out-vary = ein einzelnes Teil
left-out-wish-nose = wählt der Planer
left-out-wish-most = keine Grenze
left-out-scatter-support = `scatter` der Maschine, sonst `supports`
left-out-own-scatter = `scatter` des Auftrags oder des Betriebs
left-out-confidence = keine: der schnellste Plan
left-out-scatter-bar = gleichmäßig über die Toleranz der Stange; ohne Toleranz: keine
left-out-machine-name = Name der Datei
left-out-bush = keine Buchse; nur `holding: no_bush`
left-out-no-bush = keine Arbeit ohne Buchse
left-out-engagement = die Hälfte von `land`
left-out-counter-spindle = keine Gegenspindel
left-out-sleeve = keine Stützhülsen
left-out-centre = keine Zentrierspitze
left-out-centre-stands-out = ihr vorderster Punkt gilt als an der Stirn
left-out-torsional-stiffness = die letzte Spannstelle trägt das ganze Drehmoment des Abstechens
left-out-edge = eine scharfe Kante
left-out-grind = wird nicht geschliffen
left-out-drive = wird nicht geprüft; der Plan sagt, was nötig ist
left-out-clamp-force = `push` am vorderen Ende wird nicht geprüft
left-out-bush-kind = kein Sicherheitshinweis zur Toleranz der Stange
left-out-bar-feed = der Stangenlader begrenzt keine Drehzahl
left-out-tray = mit Gegenspindel: Teile bis { $length } mm × Ø{ $diameter } mm dürfen fallen; ohne: alle Teile fallen
left-out-tools = Werkzeugplätze werden nicht geprüft
left-out-turret = kein Revolver
left-out-fit = alle Stützstellen der Maschine
left-out-set-up-name = „Aufspannung“ und ihre Nummer
left-out-set-up-headstock = muss mit der Buchse angegeben werden
left-out-set-up-grip = das vordere Ende ist frei
left-out-set-up-collet = muss angegeben werden, wenn mehr als eine Spannzange die Stange spannen kann
left-out-dial = dann `frequency` angeben
left-out-frequency = dann `dial` angeben
left-out-read-at = an der Last
man-unknown-command = es gibt keinen Befehl `{ $word }`
man-commands = Befehle: { $commands }
class-free-cutting-steel = Automatenstahl
class-structural-steel = Bau- und Einsatzstahl
class-carbon-steel = unlegierter Stahl ab etwa 0,35 % Kohlenstoff
class-alloy-steel = legierter Stahl, vergütet
class-tool-steel = Werkzeugstahl
class-free-cutting-stainless = nichtrostender Stahl mit Schwefel
class-ferritic-stainless = ferritischer und martensitischer nichtrostender Stahl
class-austenitic-stainless = austenitischer nichtrostender Stahl
class-duplex-stainless = Duplexstahl und ausscheidungshärtender nichtrostender Stahl
class-heat-resistant-steel = warmfeste Eisenlegierung
class-pure-titanium = Reintitan
class-titanium-alloy = Titanlegierung
class-cobalt-chromium = Kobalt-Chrom-Legierung
class-nickel-alloy = Nickellegierung
class-free-cutting-copper = bleihaltiges Messing und andere Automaten-Kupferlegierungen
class-copper-alloy = Kupfer, Bronze, bleifreies Messing
class-aluminium = Aluminiumlegierung
class-plastic = Kunststoff

# The shop's file.
schema-shop = was ein Betrieb hat
schema-shop-of-job = Pfad der Betriebsdatei; `none`: keine Betriebsdatei gilt
schema-shop-machine = eine Maschine
schema-shop-machines = die Maschinen; die erste ist die übliche
schema-shop-machine-name = Name, unter dem ein Auftrag sie verlangt
schema-shop-collets = Spannzangen für die Gegenspindeln, zusätzlich zu denen der Maschinendateien
schema-shop-collet-machines = Maschinen, zu denen sie passt
schema-shop-materials = Preise und Werte von Sorten, oder der Pfad einer Datei mit dieser Liste
schema-shop-material = eine Sorte
schema-shop-grade = eine Sorte der eingebauten Tabelle; Werte daneben ersetzen die der Tabelle
schema-shop-grade-name = Name einer eigenen Sorte
schema-shop-bars = Stangen im Lager
schema-shop-bar = eine Stange
schema-shop-bar-material = Name ihres Werkstoffs
schema-language = Sprache der Texte und Blätter
left-out-to-shop = aus der Betriebsdatei
left-out-shop-machine-name = Name ihrer Datei
left-out-shop-machine-file = `machine` muss angegeben werden
left-out-shop-machine-here = `file` muss angegeben werden
left-out-shop-per-hour = `rates.machine_per_hour`
left-out-shop-collet = alle Maschinen
left-out-shop-grade = eine eigene Sorte
left-out-shop-grade-value = der Wert der Tabelle; muss ohne `grade` angegeben werden
left-out-shop-grade-or = der Wert der Tabelle; ohne `grade` { $default }
left-out-shop-grade-maybe = der Wert der Tabelle; ohne `grade` keiner
left-out-shop-grade-name = der Name der Tabelle; muss ohne `grade` angegeben werden
left-out-shop-price = `rates.material_per_kg`
left-out-shop-house = übliche Werte
left-out-shop-bar-length = 3000

# The tool list.
schema-tool-list = die vorhandenen Werkzeuge; der Plan wählt daraus
schema-tool = ein Werkzeug
schema-tool-name = Name des Werkzeugs
schema-tool-kind = was es tut
schema-tool-station = wo es steht
schema-tool-insert = seine Schneidplatte, in Ihren Worten
schema-tool-rough = sein Schruppschnitt
schema-tool-finish = sein Schlichtschnitt
schema-tool-materials = andere Schnitte in manchen Werkstoffen, nach Name des Werkstoffs
schema-tool-material = seine Schnitte in diesem Werkstoff
left-out-tool-list = ein Satz Zahlen, `cutting`
left-out-tool-cutting = wie unter `cutting`
left-out-tool-width = passt in jeden Einstich
left-out-tool-cut = beide, wenn keines angegeben ist
# Units of a file.
schema-units = Einheiten der Zahlen ohne Einheit in dieser Datei: metrisch oder Zoll
left-out-machine-units = die der Datei, in der sie steht, sonst `mm`
