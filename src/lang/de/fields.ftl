# What each number of a file means: a phrase that fits after "the". The key is that of the file, with `-` for each dot.

## Keys of the job

field-shaft-sections-length = Länge des Abschnitts
field-shaft-sections-diameter = Durchmesser des Abschnitts
field-shaft-sections-taper = Durchmesser an einem Ende des Kegels
field-shaft-sections-thread = Außendurchmesser des Gewindes
field-shaft-sections-corners = Eckenmaß der Schlüsselflächen
field-shaft-sections-across_flats = Schlüsselweite
field-shaft-sections-sides = Zahl der Schlüsselflächen
field-shaft-sections-ra = Rauheit Ra
field-shaft-sections-run_out = Rundlaufabweichung des Abschnitts zur Achse zwischen Spannstelle und Buchse, als volle Anzeige (ISO 1101)
field-shaft-sections-tolerance = zulässige Abweichung vom Durchmesser
field-shaft-straightness = Krümmung der fertigen Welle je Meter Länge
field-shaft-features-cross_hole = Durchmesser der Querbohrung
field-shaft-features-at = Abstand von der vorderen Stirnfläche zur Mitte der Bohrung oder zum Anfang der Gravur
field-shaft-features-thrust = Vorschubkraft des Bohrers
field-shaft-features-keyseat = Breite oder Tiefe der Passfedernut
field-shaft-features-from = Abstand von der vorderen Stirnfläche zum vorderen Ende der Passfedernut
field-shaft-features-to = Abstand von der vorderen Stirnfläche zum hinteren Ende der Passfedernut
field-shaft-back_work-radial_force = Radialkraft auf das Teil
field-shaft-back_work-torque = Drehmoment um die Achse des Teils
field-shaft-back_work-time_s = Zeit für die Bearbeitung
field-shaft-back_work-tolerance = Toleranz der Bearbeitung
field-stock-diameter = Durchmesser der Stange
field-stock-bar_length = Länge der Stange
field-shaft-material-e_gpa = Elastizitätsmodul
field-shaft-material-density = Dichte
field-shaft-material-kc11 = spezifische Schnittkraft kc1.1, bei 1 mm Spanungsdicke
field-shaft-material-mc = Exponent mc der Spanungsdicke
field-shaft-material-poisson = Querkontraktionszahl
field-shaft-material-vc = kleinste oder größte übliche Schnittgeschwindigkeit des Werkstoffs
field-cutting-vc = Schnittgeschwindigkeit
field-cutting-feed = Vorschub je Umdrehung
field-cutting-nose_radius = Eckenradius des Werkzeugs
field-cutting-approach_angle = Einstellwinkel des Werkzeugs
field-cutting-ap_max = größte Schnitttiefe
field-cutting-ap_finish = Schnitttiefe des letzten Schnitts
field-cutting-speed_floor = kleinste erlaubte Drehzahl, als Anteil der geplanten Drehzahl; 1 bedeutet keine Verringerung
field-cutting-lag = Abstand längs der Stange vom Schruppwerkzeug zum Schlichtwerkzeug eines gegenüberliegenden Paars oder eines Tandems
field-cutting-finisher-nose_radius = Eckenradius des Schlichtwerkzeugs
field-cutting-finisher-approach_angle = Einstellwinkel des Schlichtwerkzeugs
field-cutting-unbalance = kleinste Radialkraft, die zwei Werkzeuge auf gegenüberliegenden Seiten an der Stange lassen, als Anteil der größeren Kraft
field-cutting-in_plane_share = Kraft in der Vorschubebene je Stück der Schneide, als Anteil seiner Schnittkraft
field-cutting-passive_floor = kleinste Passivkraft (Radialkraft) eines Werkzeugs, als Anteil seiner Schnittkraft
field-cutting-ra_factor = Rauheit Ra einer gedrehten Fläche, als Vielfaches des idealen Ra aus Vorschub und Eckenradius
field-cutting-ra_floor = Rauheit Ra, die beim Drehen mit keinem Vorschub unterschritten wird
field-limits-stiffness_min = kleinste zulässige Quersteifigkeit
field-limits-span_stiffness_min = kleinste zulässige Quersteifigkeit zwischen einer Spannstelle und der Buchse, ein betrieblicher Grenzwert
field-limits-free_ratio = größte freie Länge vorn, als Vielfaches ihres mittleren Fertigdurchmessers, eine betriebliche Regel
field-limits-whirl_ratio = größte zulässige Drehzahl, als Anteil der kritischen Drehzahl
field-limits-whip = größte zulässige Krümmung, während die Stange dreht
field-limits-sag = größter Durchhang der ungestützten Länge unter ihrem Eigengewicht
field-limits-pick_up = größter Abstand des freien vorderen Endes von der Achse, wenn die Spannzange der Gegenspindel darüberfährt
field-limits-release = größter Durchhang an der alten Spannstelle unter dem Eigengewicht, wenn die Spannzange öffnet
field-limits-tolerance_share = Anteil der Toleranz, den die Durchbiegung verbrauchen darf
field-limits-drill = größte Durchbiegung an einer Querbohrung unter der Vorschubkraft des Bohrers
field-planning-station_pitch = Abstand der möglichen Halte, die zuerst versucht werden
field-limits-damping_ratio = Dämpfungsgrad der Stangenschwingung
field-limits-bore_clearance = Freiraum um das Teil in der Bohrung der Gegenspindel, im Radius
field-limits-torque_margin = Sicherheitsfaktor auf das Drehmoment, das eine Spannstelle tragen muss
field-limits-buckling_share = größte zulässige Axiallast, als Anteil der Last, bei der die Stange ausknickt
field-limits-avoid_penalty_s = Zuschlag für eine Ansatzlinie auf einer Fläche mit `avoid`, keine Maschinenzeit
field-rates-machine_per_hour = Maschinenkosten je Stunde
field-rates-material_per_kg = Werkstoffkosten je kg

## Edges of sections

field-shaft-sections-chamfer = Breite einer 45°-Fase am vorderen Ende
field-shaft-sections-chamfer-front = Breite einer 45°-Fase
field-shaft-sections-chamfer-rear = Breite einer 45°-Fase
field-shaft-sections-radius = Radius der vorderen Kante oder der Ecke davor
field-shaft-sections-radius-front = Radius einer gerundeten Kante oder einer Ecke
field-shaft-sections-radius-rear = Radius einer gerundeten Kante oder einer Ecke
field-shaft-sections-grind = Aufmaß im Durchmesser, das später abgeschliffen wird
field-shaft-sections-turned_ra = Rauheit Ra der gedrehten Fläche vor dem Schleifen
field-stock-bore = Innendurchmesser einer Hohlstange

## Work on the ends and across

field-shaft-features-facing = Länge, die am Ende abgeplant wird
field-shaft-features-axial_hole = Durchmesser der Axialbohrung
field-shaft-features-depth = Tiefe der Axialbohrung, des Gewindes, des Innensechskants oder der Gravur
field-shaft-features-drill_depth = Tiefe der Kernbohrung für das Gewinde
field-shaft-features-hex_socket = Schlüsselweite des Innensechskants
field-shaft-features-keyway = Breite oder Tiefe der Nabennut
field-shaft-features-length = Länge der Nabennut, ab der Stirnfläche
field-shaft-features-step = Schnitttiefe eines Hubs des Stoßwerkzeugs
field-shaft-features-height = Höhe der Buchstaben
field-shaft-back_work-axial_force = Axialkraft auf das Teil
field-machine-headstock-clamp_force = Spannkraft der Spannzange der Hauptspindel, als Summe der Radialkräfte
field-machine-headstock-power = Leistung des Motors der Hauptspindel im Dauerbetrieb
field-machine-headstock-efficiency = Anteil der Motorleistung, der am Schnitt ankommt
field-machine-headstock-torque = größtes Drehmoment der Hauptspindel
field-machine-headstock-feed_force = größte Kraft, mit der der Spindelstock die Stange längs der Achse vorschiebt
field-machine-counter_spindle-torque = größtes Drehmoment des Antriebs der Gegenspindel, für Rückseitenbearbeitung
field-machine-headstock-friction = Reibungszahl zwischen Spannzange der Hauptspindel und Stange
field-machine-counter_spindle-unload_s = Zeit zum Entladen des fertigen Teils
field-machine-tool_change_s = Zeit für einen Werkzeugwechsel
field-machine-bar_change_s = Zeit zum Laden einer neuen Stange
field-machine-rapid = Eilganggeschwindigkeit
field-machine-tools-turning = Zahl der Plätze für Drehwerkzeuge
field-machine-tools-cross_driven = Zahl der Plätze für angetriebene Querwerkzeuge
field-machine-tools-front_fixed = Zahl der Plätze für feste Werkzeuge am vorderen Ende
field-machine-tools-front_driven = Zahl der Plätze für angetriebene Werkzeuge am vorderen Ende
field-machine-tools-back_fixed = Zahl der Plätze für feste Werkzeuge am hinteren Ende
field-machine-tools-back_driven = Zahl der Plätze für angetriebene Werkzeuge am hinteren Ende
field-machine-tools-whirling = Zahl der Wirbelgeräte für Gewinde
field-machine-tools-turret-stations = Zahl der Revolverstationen
field-machine-tools-turret-tools_per_station = Zahl der Werkzeuge je Revolverstation
field-order-pieces = Stückzahl des Loses
field-order-set_up_h = Rüstzeit der Maschine
field-order-shift_h = Länge einer Schicht
field-order-running_share = Anteil der Schicht, in dem die Maschine läuft

## The machine

field-machine-bush-max_bar = größter Stangendurchmesser in der Führungsbuchse
field-machine-bush-land = Führungslänge der Buchse
field-machine-bush-gap = Abstand von der Werkzeugspitze zur Buchsenstirn
field-machine-bush-stiffness = radiale Steifigkeit der Buchse
field-machine-bush-engagement_min = Teil der Führungslänge, der beim Zurückziehen der Stange auf ungedrehter Stange bleiben muss
field-machine-no_bush-max_bar = größter Stangendurchmesser ohne Führungsbuchse
field-machine-no_bush-collet_gap = Abstand vom Ende einer Etappe zur Zangenstirn der Hauptspindel
field-machine-headstock-nearest = kleinster Abstand von der Zangenstirn der Hauptspindel zur Buchsenstirn
field-machine-headstock-stroke = Hub des Spindelstocks
field-machine-headstock-hold = Spannlänge der Spannzange der Hauptspindel
field-machine-headstock-stiffness = radiale Steifigkeit der Spannzange der Hauptspindel
field-machine-headstock-max_rpm = größte Drehzahl der Hauptspindel
field-machine-headstock-regrip_s = Zeit für ein Nachgreifen des Spindelstocks
field-machine-counter_spindle-nearest = kleinster Abstand von der Stirn der Gegenspindel zur Buchsenstirn
field-machine-counter_spindle-farthest = größter Abstand von der Stirn der Gegenspindel zur Buchsenstirn
field-machine-counter_spindle-bore = Durchmesser der Bohrung der Gegenspindel
field-machine-counter_spindle-bore_depth = Tiefe der Bohrung der Gegenspindel, ab ihrer Stirn
field-machine-counter_spindle-stiffness = radiale Steifigkeit der Spannzange der Gegenspindel
field-machine-counter_spindle-max_rpm = größte Drehzahl der Gegenspindel
field-machine-counter_spindle-hand_over_s = Zeit für eine Übergabe
field-machine-counter_spindle-friction = Reibungszahl zwischen Spannzange der Gegenspindel und Teil
field-machine-counter_spindle-axial_load = Axialkraft, die die Gegenspindel auf die gespannte Welle hält; eine positive Kraft zieht, eine negative drückt
field-machine-counter_spindle-torsional_stiffness = Drehsteifigkeit der Gegenspindel mit ihrem Antrieb; die Hauptspindel gilt als ebenso steif
field-machine-counter_spindle-phase_error = Winkel zwischen beiden Spindeln, während sie dieselbe Stange halten
field-machine-counter_spindle-centre-force = Axialkraft, mit der die Zentrierspitze auf das Teil drückt
field-machine-counter_spindle-centre-stiffness = radiale Steifigkeit der Zentrierspitze an ihrem vordersten Punkt
field-machine-counter_spindle-centre-stands_out = Abstand von der Stirn der Gegenspindel zum vordersten Punkt der Zentrierspitze
field-machine-counter_spindle-sleeve-pitch = Abstand von einer Stützhülse in der Bohrung der Gegenspindel zur nächsten
field-machine-counter_spindle-sleeve-stiffness = radiale Steifigkeit jeder Stützhülse in der Bohrung der Gegenspindel
field-machine-counter_spindle-collets-range = kleinster oder größter Durchmesser, den die Spannzange spannt
field-machine-counter_spindle-collets-hold = Spannlänge der Spannzange
field-machine-counter_spindle-collets-passes = größter Durchmesser, der durch die offene Spannzange geht
field-machine-counter_spindle-collets-clamp_force = Spannkraft der Spannzange, als Summe der Radialkräfte
field-machine-counter_spindle-collets-run_out = Rundlaufabweichung der Spannzange an ihrer Stirn, als volle Anzeige
field-machine-bar_feed-max_rpm = größte Drehzahl, mit der der Stangenlader die Stange hinter dem Spindelstock drehen lassen darf
field-machine-driven_max_rpm = größte Drehzahl angetriebener Werkzeuge
field-machine-shared_stop_saving_s = Zeit, die gespart wird, wenn Übergabe und Nachgreifen des Spindelstocks am selben Halt geschehen
field-machine-cross_tool_reach = Abstand längs der Stange vom schneidenden Werkzeug zum angetriebenen Querwerkzeug
field-machine-segment_overhead_s = zusätzliche Zeit für jeden Durchgang eines Werkzeugs, neben dem Zerspanen
field-machine-part_off-width = Breite des Abstechwerkzeugs
field-machine-part_off-time_s = Zeit zum Abstechen
field-machine-part_off-tray-max_length = Länge, bis zu der ein Teil in die Auffangschale fallen darf; 0: kein Teil fällt
field-machine-part_off-tray-max_diameter = größter Durchmesser, bis zu dem ein Teil in die Auffangschale fallen darf
field-machine-bar_end = Länge des Stangenendes, das keine Spannzange spannen kann
field-machine-facing = Länge, die am vorderen Ende jedes Teils abgeplant wird, wenn der Auftrag kein größeres Maß nennt

## Wishes and families

field-wishes-hand_over_at = gedrehte Länge, bei der eine Übergabe geschehen muss
field-wishes-hand_over_at-at = gedrehte Länge der Übergabe
field-wishes-hand_over_at-nose = Abstand von der vorderen Stirnfläche zur Stirn der Gegenspindel bei der Übergabe
field-wishes-never_grip = Abstand von der vorderen Stirnfläche zu einem Ende einer Länge, die keine Spannstelle berühren darf
field-wishes-at_most_hand_overs = größte Zahl der Übergaben je Teil, einschließlich des ersten Fassens
field-vary-length-from = kleinste Länge des veränderten Abschnitts
field-vary-length-to = größte Länge des veränderten Abschnitts
field-vary-length-step = Schritt von einer Länge zur nächsten
field-vary-diameter-from = kleinster Durchmesser des veränderten Abschnitts
field-vary-diameter-to = größter Durchmesser des veränderten Abschnitts
field-vary-diameter-step = Schritt von einem Durchmesser zum nächsten

## Spread

field-confidence = Anteil der simulierten Teile, bei denen der Plan innerhalb jedes Grenzwerts bleiben muss
field-confidence_warn = Anteil der simulierten Teile innerhalb jedes Grenzwerts, unter dem ein Plan riskant ist
field-scatter-samples = Zahl der simulierten Teile
field-scatter-seed = Startzahl der Zufallszahlen
field-scatter-straightness = Streuung der Krümmung, als Anteil ihres Werts
field-scatter-supports = Streuung der Steifigkeit jeder Stützstelle, als Anteil ihres Werts
field-scatter-bush = Streuung der Steifigkeit der Führungsbuchse, als Anteil
field-scatter-headstock = Streuung der Steifigkeit der Hauptspindel, als Anteil
field-scatter-counter_spindle = Streuung der Steifigkeit der Gegenspindel, als Anteil
field-scatter-centre = Streuung der Steifigkeit der Zentrierspitze, als Anteil
field-scatter-sleeve = Streuung der Steifigkeit der Stützhülsen in der Bohrung der Gegenspindel, als Anteil
field-scatter-kc = Streuung der spezifischen Schnittkraft, als Anteil ihres Werts
field-scatter-passive = Streuung von Passivkraft und Vorschubkraft zusätzlich zu der der Schnittkraft, als Anteil ihres Werts
field-scatter-e = Streuung des Elastizitätsmoduls, als Anteil seines Werts
field-scatter-damping = Streuung des Dämpfungsgrads, als Anteil seines Werts
field-scatter-ra = Streuung der wirklichen Rauheit gegenüber der idealen (cutting.ra_factor), als Anteil ihres Werts
field-scatter-run_out = Streuung der Rundlaufabweichung der Spannzangen der Gegenspindel, als Anteil
field-scatter-bar = Streuung des Stangendurchmessers
field-machine-scatter-bush = Streuung der Steifigkeit der Führungsbuchse, als Anteil
field-machine-scatter-headstock = Streuung der Steifigkeit der Hauptspindel, als Anteil
field-machine-scatter-counter_spindle = Streuung der Steifigkeit der Gegenspindel, als Anteil
field-machine-scatter-centre = Streuung der Steifigkeit der Zentrierspitze, als Anteil
field-machine-scatter-sleeve = Streuung der Steifigkeit der Stützhülsen in der Bohrung der Gegenspindel, als Anteil
field-machine-scatter-damping = Streuung des Dämpfungsgrads, als Anteil
field-machine-scatter-run_out = Streuung der Rundlaufabweichung der Spannzangen der Gegenspindel, als Anteil
field-shaft-material-scatter-kc = Streuung der spezifischen Schnittkraft, als Anteil
field-shaft-material-scatter-e = Streuung des Elastizitätsmoduls, als Anteil
field-shop-bars-scatter-straightness = Streuung der Krümmung von Wellen aus dieser Stange, als Anteil
field-shop-bars-scatter-bar = Streuung des Durchmessers dieser Stange

## What a change is worth

field-change_prices-wish = Rang für das Streichen eines Wunschs im Auftrag
field-change_prices-speed = Rang für langsameres Drehen
field-change_prices-cut = Rang für eine andere Schnitttiefe, einen kleineren Vorschub oder mehr Hübe
field-change_prices-tools = Rang für ein zweites Werkzeug im Schnitt
field-change_prices-hold = Rang für eine andere Führung: Führungsbuchse oder keine, Spannzange oder Zentrierspitze, weniger Hub
field-change_prices-method = Rang für ein anderes Verfahren für ein Gewinde oder einen Innensechskant
field-change_prices-turn_round = Rang für die Fertigung des Teils vom anderen Ende her
field-change_prices-bar = Rang für einen anderen Stangendurchmesser
field-change_prices-straightness = Rang für eine geradere Stange
field-change_prices-collet = Rang für eine andere Spannzange
field-change_prices-tray = Rang für eine Auffangschale, die das Teil aufnimmt
field-change_prices-stop = Rang für einen Halt auf einer Fläche, die keinen haben darf
field-change_prices-grip = Rang für eine Spannstelle auf einer Fläche, die nicht gespannt werden darf
field-change_prices-sleeve = Rang für Stützhülsen in der Gegenspindel
field-change_prices-set_up = Rang für Arbeit in einer zweiten Aufspannung
field-change_prices-drawing = Rang für eine Änderung der Zeichnung
field-change_prices-shop_machine = Rang für eine andere Maschine des Betriebs
field-change_prices-machine = Rang für eine Maschine, die mehr kann

## The tool list

field-tool_list-nose_radius = Eckenradius der Schneidplatte
field-tool_list-approach_angle = Einstellwinkel des Werkzeugs
field-tool_list-ap_max = größte Schnitttiefe des Werkzeugs
field-tool_list-width = Breite eines Einstech- oder Abstechwerkzeugs
field-tool_list-vc = Schnittgeschwindigkeit
field-tool_list-feed = Vorschub je Umdrehung; beim Schlichten der größte

## The shop's file

field-shop-machines-per_hour = Kosten dieser Maschine je Stunde
field-shop-materials-price_per_kg = Preis des Werkstoffs je kg
field-shop-bars-diameter = Durchmesser der Stange
field-shop-bars-bar_length = Länge der Stange
field-shop-bars-price_per_kg = Preis dieser Stange je kg

## Readings

field-readings-diameter = Durchmesser der gemessenen Stange
field-readings-set_ups-front = Abstand von der Buchsenstirn zum vorderen Ende der Stange
field-readings-set_ups-headstock = Abstand von der Buchsenstirn zur Zangenstirn der Hauptspindel
field-readings-set_ups-grip = Abstand von der Buchsenstirn zur Zangenstirn der Gegenspindel
field-readings-set_ups-frequency = erste Biegeeigenfrequenz, aus einem Anschlagversuch
field-readings-set_ups-dial-load = Last auf der Stange
field-readings-set_ups-dial-at = Abstand von der Buchsenstirn zur Last, negativ hinter der Stirn
field-readings-set_ups-dial-read_at = Abstand von der Buchsenstirn zur Messuhr, negativ hinter der Stirn
field-readings-set_ups-dial-deflection = Auslenkung an der Messuhr, positiv in Richtung der Last
field-readings-errors-dial = Unsicherheit einer Anzeige der Messuhr
field-readings-errors-load = Unsicherheit einer Last, als Anteil ihres Werts
field-readings-errors-tap = Unsicherheit einer Frequenz, als Anteil ihres Werts
