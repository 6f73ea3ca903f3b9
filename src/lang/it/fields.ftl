# What each number of a file means: a phrase that fits after "the". The key is that of the file, with `-` for each dot.

## Keys of the job

field-shaft-sections-length = lunghezza del tratto
field-shaft-sections-diameter = diametro del tratto
field-shaft-sections-taper = diametro a un'estremità del cono
field-shaft-sections-thread = diametro esterno della filettatura
field-shaft-sections-corners = diametro sugli spigoli delle spianature
field-shaft-sections-across_flats = larghezza in chiave
field-shaft-sections-sides = numero di spianature
field-shaft-sections-ra = rugosità Ra
field-shaft-sections-run_out = oscillazione del tratto rispetto all'asse tra serraggio e bussola, come lettura totale (ISO 1101)
field-shaft-sections-tolerance = scostamento ammesso dal diametro
field-shaft-straightness = curvatura dell'albero finito per metro di lunghezza
field-shaft-features-cross_hole = diametro del foro trasversale
field-shaft-features-at = distanza dalla faccia anteriore al centro del foro, o all'inizio dell'incisione
field-shaft-features-thrust = forza assiale della punta
field-shaft-features-keyseat = larghezza o profondità della cava per linguetta
field-shaft-features-from = distanza dalla faccia anteriore all'estremità anteriore della cava per linguetta
field-shaft-features-to = distanza dalla faccia anteriore all'estremità posteriore della cava per linguetta
field-shaft-back_work-radial_force = forza radiale sul pezzo
field-shaft-back_work-torque = coppia attorno all'asse del pezzo
field-shaft-back_work-time_s = tempo della lavorazione
field-shaft-back_work-tolerance = tolleranza della lavorazione
field-stock-diameter = diametro della barra
field-stock-bar_length = lunghezza della barra
field-shaft-material-e_gpa = modulo di Young
field-shaft-material-density = densità
field-shaft-material-kc11 = forza di taglio specifica kc1.1, a 1 mm di spessore del truciolo
field-shaft-material-mc = esponente mc dello spessore del truciolo
field-shaft-material-poisson = coefficiente di Poisson
field-shaft-material-vc = velocità di taglio consueta minima o massima del materiale
field-cutting-vc = velocità di taglio
field-cutting-feed = avanzamento al giro
field-cutting-nose_radius = raggio di punta dell'utensile
field-cutting-approach_angle = angolo di registrazione dell'utensile
field-cutting-ap_max = profondità di passata massima
field-cutting-ap_finish = profondità di passata dell'ultima passata
field-cutting-speed_floor = velocità minima ammessa, come quota della velocità prevista; 1 significa nessuna riduzione
field-cutting-lag = distanza lungo la barra dall'utensile di sgrossatura all'utensile di finitura, con utensili contrapposti o in tandem
field-cutting-finisher-nose_radius = raggio di punta dell'utensile di finitura
field-cutting-finisher-approach_angle = angolo di registrazione dell'utensile di finitura
field-cutting-unbalance = minima forza radiale che due utensili su lati opposti lasciano sulla barra, come quota della forza maggiore
field-cutting-in_plane_share = forza nel piano di avanzamento di ogni elemento del tagliente, come quota della sua forza di taglio principale
field-cutting-passive_floor = minima forza passiva (radiale) di un utensile, come quota della sua forza di taglio principale
field-cutting-ra_factor = rugosità Ra di una superficie tornita, come multiplo della Ra ideale da avanzamento e raggio di punta
field-cutting-ra_floor = rugosità Ra sotto cui la tornitura non scende, a qualsiasi avanzamento
field-limits-stiffness_min = minima rigidezza laterale ammessa
field-limits-span_stiffness_min = minima rigidezza laterale ammessa tra un serraggio e la bussola, un limite aziendale
field-limits-free_ratio = massima lunghezza libera all'estremità anteriore, come multiplo del suo diametro finito medio, una regola aziendale
field-limits-whirl_ratio = massima velocità ammessa, come quota della velocità critica
field-limits-whip = massima curvatura ammessa mentre la barra gira
field-limits-sag = massima inflessione della lunghezza non sostenuta per peso proprio
field-limits-pick_up = massima distanza di un'estremità anteriore libera dall'asse quando la pinza del contromandrino la prende
field-limits-release = massima inflessione per peso proprio al vecchio serraggio quando la pinza si apre
field-limits-tolerance_share = quota della tolleranza che l'inflessione può utilizzare
field-limits-drill = massima inflessione a un foro trasversale sotto la forza assiale della punta
field-planning-station_pitch = distanza tra le posizioni di arresto che si provano per prime
field-limits-damping_ratio = rapporto di smorzamento della vibrazione della barra
field-limits-bore_clearance = gioco attorno al pezzo nel foro del contromandrino, sul raggio
field-limits-torque_margin = fattore di sicurezza sulla coppia che un serraggio deve reggere
field-limits-buckling_share = massimo carico assiale ammesso, come quota del carico a cui la barra diventa instabile
field-limits-avoid_penalty_s = supplemento per un segno di ripresa su una superficie `avoid`, non è tempo macchina
field-rates-machine_per_hour = costo orario della macchina
field-rates-material_per_kg = costo del materiale al kg

## Edges of sections

field-shaft-sections-chamfer = larghezza di uno smusso a 45° all'estremità anteriore
field-shaft-sections-chamfer-front = larghezza di uno smusso a 45°
field-shaft-sections-chamfer-rear = larghezza di uno smusso a 45°
field-shaft-sections-radius = raggio dello spigolo anteriore o del raccordo davanti
field-shaft-sections-radius-front = raggio di uno spigolo arrotondato o di un raccordo
field-shaft-sections-radius-rear = raggio di uno spigolo arrotondato o di un raccordo
field-shaft-sections-grind = sovrametallo sul diametro da rettificare in seguito
field-shaft-sections-turned_ra = rugosità Ra della superficie tornita prima della rettifica
field-stock-bore = diametro interno di una barra cava

## Work on the ends and across

field-shaft-features-facing = lunghezza asportata sfacciando l'estremità
field-shaft-features-axial_hole = diametro del foro assiale
field-shaft-features-depth = profondità del foro assiale, della filettatura, dell'esagono incassato o dell'incisione
field-shaft-features-drill_depth = profondità di foratura per la filettatura
field-shaft-features-hex_socket = larghezza in chiave dell'esagono incassato
field-shaft-features-keyway = larghezza o profondità della cava interna per linguetta
field-shaft-features-length = lunghezza della cava interna per linguetta, dalla faccia d'estremità
field-shaft-features-step = profondità di passata di una corsa dell'utensile per stozzare
field-shaft-features-height = altezza delle lettere
field-shaft-back_work-axial_force = forza assiale sul pezzo
field-machine-headstock-clamp_force = forza di serraggio della pinza della fantina, come somma delle forze radiali
field-machine-headstock-power = potenza del motore della fantina in servizio continuo
field-machine-headstock-efficiency = quota della potenza del motore che arriva al taglio
field-machine-headstock-torque = coppia massima del mandrino della fantina
field-machine-headstock-feed_force = massima forza con cui la fantina fa avanzare la barra lungo l'asse
field-machine-counter_spindle-torque = coppia massima dell'azionamento del contromandrino, per la lavorazione dell'estremità posteriore
field-machine-headstock-friction = coefficiente d'attrito tra pinza della fantina e barra
field-machine-counter_spindle-unload_s = tempo per scaricare il pezzo finito
field-machine-tool_change_s = tempo di un cambio utensile
field-machine-bar_change_s = tempo per caricare una barra nuova
field-machine-rapid = velocità degli spostamenti in rapido
field-machine-tools-turning = numero di posti per utensili per tornire
field-machine-tools-cross_driven = numero di posti per utensili motorizzati trasversali alla barra
field-machine-tools-front_fixed = numero di posti per utensili fissi all'estremità anteriore
field-machine-tools-front_driven = numero di posti per utensili motorizzati all'estremità anteriore
field-machine-tools-back_fixed = numero di posti per utensili fissi all'estremità posteriore
field-machine-tools-back_driven = numero di posti per utensili motorizzati all'estremità posteriore
field-machine-tools-whirling = numero di gruppi di turbinatura per filettature
field-machine-tools-turret-stations = numero di stazioni della torretta
field-machine-tools-turret-tools_per_station = numero di utensili per stazione della torretta
field-order-pieces = numero di pezzi da fare
field-order-set_up_h = tempo di attrezzaggio della macchina
field-order-shift_h = durata di un turno
field-order-running_share = quota del turno in cui la macchina produce

## The machine

field-machine-bush-max_bar = massimo diametro della barra nella bussola di guida
field-machine-bush-land = lunghezza di guida della bussola
field-machine-bush-gap = distanza dalla punta dell'utensile alla faccia della bussola
field-machine-bush-stiffness = rigidezza radiale della bussola
field-machine-bush-engagement_min = parte della lunghezza di guida della bussola che deve restare su barra non tornita quando la barra viene arretrata
field-machine-no_bush-max_bar = massimo diametro della barra senza la bussola di guida
field-machine-no_bush-collet_gap = distanza dalla fine di una fase al naso della pinza della fantina
field-machine-headstock-nearest = distanza minima dal naso della pinza della fantina alla faccia della bussola
field-machine-headstock-stroke = corsa della fantina
field-machine-headstock-hold = lunghezza di serraggio della pinza della fantina
field-machine-headstock-stiffness = rigidezza radiale della pinza della fantina
field-machine-headstock-max_rpm = velocità massima della fantina
field-machine-headstock-regrip_s = tempo di un riserraggio della fantina
field-machine-counter_spindle-nearest = distanza minima dal naso del contromandrino alla faccia della bussola
field-machine-counter_spindle-farthest = distanza massima dal naso del contromandrino alla faccia della bussola
field-machine-counter_spindle-bore = diametro del foro del contromandrino
field-machine-counter_spindle-bore_depth = profondità del foro del contromandrino, dal suo naso
field-machine-counter_spindle-stiffness = rigidezza radiale della pinza del contromandrino
field-machine-counter_spindle-max_rpm = velocità massima del contromandrino
field-machine-counter_spindle-hand_over_s = tempo di una presa del contromandrino
field-machine-counter_spindle-friction = coefficiente d'attrito tra pinza del contromandrino e pezzo
field-machine-counter_spindle-axial_load = forza assiale che il contromandrino mantiene sull'albero serrato; positiva tira, negativa preme
field-machine-counter_spindle-torsional_stiffness = rigidezza torsionale del contromandrino con il suo azionamento; la fantina conta come altrettanto rigida
field-machine-counter_spindle-phase_error = angolo tra i due mandrini mentre tengono la stessa barra
field-machine-counter_spindle-centre-force = forza assiale con cui la contropunta preme sul pezzo
field-machine-counter_spindle-centre-stiffness = rigidezza radiale della contropunta al suo vertice
field-machine-counter_spindle-centre-stands_out = distanza dal naso del contromandrino al vertice della contropunta
field-machine-counter_spindle-sleeve-pitch = distanza da un sostegno nel foro del contromandrino al seguente
field-machine-counter_spindle-sleeve-stiffness = rigidezza radiale di ogni sostegno nel foro del contromandrino
field-machine-counter_spindle-collets-range = minimo o massimo diametro che la pinza serra
field-machine-counter_spindle-collets-hold = lunghezza di serraggio della pinza
field-machine-counter_spindle-collets-passes = massimo diametro che passa nella pinza aperta
field-machine-counter_spindle-collets-clamp_force = forza di serraggio della pinza, come somma delle forze radiali
field-machine-counter_spindle-collets-run_out = oscillazione della pinza al suo naso, come lettura totale
field-machine-bar_feed-max_rpm = massima velocità a cui il caricatore di barre può far girare la barra dietro la fantina
field-machine-driven_max_rpm = velocità massima degli utensili motorizzati
field-machine-shared_stop_saving_s = tempo risparmiato quando una presa del contromandrino e un riserraggio della fantina avvengono nello stesso arresto
field-machine-cross_tool_reach = distanza lungo la barra dall'utensile di taglio all'utensile motorizzato trasversale
field-machine-segment_overhead_s = tempo aggiuntivo per ogni passata di un utensile, oltre al taglio
field-machine-part_off-width = larghezza dell'utensile per troncare
field-machine-part_off-time_s = tempo della troncatura
field-machine-part_off-tray-max_length = lunghezza fino a cui un pezzo può cadere nel raccoglipezzi; 0: non cade nessun pezzo
field-machine-part_off-tray-max_diameter = massimo diametro fino a cui un pezzo può cadere nel raccoglipezzi
field-machine-bar_end = lunghezza dell'estremità della barra che nessuna pinza può serrare
field-machine-facing = lunghezza asportata sfacciando l'estremità anteriore di ogni pezzo, se il lavoro non ha una sfacciatura maggiore

## Wishes and families

field-wishes-hand_over_at = lunghezza tornita a cui deve avvenire una presa del contromandrino
field-wishes-hand_over_at-at = lunghezza tornita della presa del contromandrino
field-wishes-hand_over_at-nose = distanza dalla faccia anteriore al naso del contromandrino al momento della presa
field-wishes-never_grip = distanza dalla faccia anteriore a un'estremità di una lunghezza che nessun serraggio deve toccare
field-wishes-at_most_hand_overs = numero massimo di prese del contromandrino per pezzo, compresa la prima
field-vary-length-from = lunghezza minima del tratto variato
field-vary-length-to = lunghezza massima del tratto variato
field-vary-length-step = passo da una lunghezza alla seguente
field-vary-diameter-from = diametro minimo del tratto variato
field-vary-diameter-to = diametro massimo del tratto variato
field-vary-diameter-step = passo da un diametro al seguente

## Spread

field-confidence = quota di pezzi simulati in cui il piano deve restare entro ogni limite
field-confidence_warn = quota di pezzi simulati entro ogni limite sotto la quale un piano è a rischio
field-scatter-samples = numero di pezzi simulati
field-scatter-seed = numero iniziale dei campioni casuali
field-scatter-straightness = dispersione della curvatura, come quota del suo valore
field-scatter-supports = dispersione della rigidezza di ogni sostegno, come quota del suo valore
field-scatter-bush = dispersione della rigidezza della bussola di guida, come quota
field-scatter-headstock = dispersione della rigidezza della fantina, come quota
field-scatter-counter_spindle = dispersione della rigidezza del contromandrino, come quota
field-scatter-centre = dispersione della rigidezza della contropunta, come quota
field-scatter-sleeve = dispersione della rigidezza dei sostegni nel foro del contromandrino, come quota
field-scatter-kc = dispersione della forza di taglio specifica, come quota del suo valore
field-scatter-passive = dispersione della forza passiva e della forza di avanzamento oltre a quella della forza principale, come quota del loro valore
field-scatter-e = dispersione del modulo di Young, come quota del suo valore
field-scatter-damping = dispersione del rapporto di smorzamento, come quota del suo valore
field-scatter-ra = dispersione della rugosità reale rispetto a quella ideale (cutting.ra_factor), come quota del suo valore
field-scatter-run_out = dispersione dell'oscillazione delle pinze del contromandrino, come quota
field-scatter-bar = dispersione del diametro della barra
field-machine-scatter-bush = dispersione della rigidezza della bussola di guida, come quota
field-machine-scatter-headstock = dispersione della rigidezza della fantina, come quota
field-machine-scatter-counter_spindle = dispersione della rigidezza del contromandrino, come quota
field-machine-scatter-centre = dispersione della rigidezza della contropunta, come quota
field-machine-scatter-sleeve = dispersione della rigidezza dei sostegni nel foro del contromandrino, come quota
field-machine-scatter-damping = dispersione del rapporto di smorzamento, come quota
field-machine-scatter-run_out = dispersione dell'oscillazione delle pinze del contromandrino, come quota
field-shaft-material-scatter-kc = dispersione della forza di taglio specifica, come quota
field-shaft-material-scatter-e = dispersione del modulo di Young, come quota
field-shop-bars-scatter-straightness = dispersione della curvatura degli alberi fatti con questa barra, come quota
field-shop-bars-scatter-bar = dispersione del diametro di questa barra

## What a change is worth

field-change_prices-wish = rango della rinuncia a una richiesta del lavoro
field-change_prices-speed = rango della tornitura a velocità più bassa
field-change_prices-cut = rango di un'altra profondità di passata, di un avanzamento minore o di più corse
field-change_prices-tools = rango di un secondo utensile in taglio
field-change_prices-hold = rango di un'altra tenuta: bussola di guida o no, pinza o contropunta, meno corsa
field-change_prices-method = rango di un altro modo di fare una filettatura o un esagono incassato
field-change_prices-turn_round = rango del fare il pezzo dall'altra estremità
field-change_prices-bar = rango di un altro diametro della barra
field-change_prices-straightness = rango di una barra più diritta
field-change_prices-collet = rango di un'altra pinza
field-change_prices-tray = rango di un raccoglipezzi che accetti il pezzo
field-change_prices-stop = rango di un arresto su una superficie che non deve averne
field-change_prices-grip = rango di un serraggio su una superficie che non si deve serrare
field-change_prices-sleeve = rango di manicotti nel contromandrino
field-change_prices-set_up = rango di una lavorazione in un secondo piazzamento
field-change_prices-drawing = rango di una modifica del disegno
field-change_prices-shop_machine = rango di un'altra macchina dell'officina
field-change_prices-machine = rango di una macchina che può fare di più

## The tool list

field-tool_list-nose_radius = raggio di punta dell'inserto
field-tool_list-approach_angle = angolo di registrazione dell'utensile
field-tool_list-ap_max = profondità di passata massima dell'utensile
field-tool_list-width = larghezza di un utensile per gole o per troncare
field-tool_list-vc = velocità di taglio
field-tool_list-feed = avanzamento al giro; per la finitura quello massimo

## The shop's file

field-shop-machines-per_hour = costo orario di questa macchina
field-shop-materials-price_per_kg = prezzo del materiale al kg
field-shop-bars-diameter = diametro della barra
field-shop-bars-bar_length = lunghezza della barra
field-shop-bars-price_per_kg = prezzo di questa barra al kg

## Readings

field-readings-diameter = diametro della barra misurata
field-readings-set_ups-front = distanza dalla faccia della bussola all'estremità anteriore della barra
field-readings-set_ups-headstock = distanza dalla faccia della bussola al naso della pinza della fantina
field-readings-set_ups-grip = distanza dalla faccia della bussola al naso della pinza del contromandrino
field-readings-set_ups-frequency = prima frequenza propria laterale, da una prova a percussione
field-readings-set_ups-dial-load = carico sulla barra
field-readings-set_ups-dial-at = distanza dalla faccia della bussola al carico, negativa dietro la faccia
field-readings-set_ups-dial-read_at = distanza dalla faccia della bussola al comparatore, negativa dietro la faccia
field-readings-set_ups-dial-deflection = inflessione al comparatore, positiva nel verso del carico
field-readings-errors-dial = incertezza di una lettura del comparatore
field-readings-errors-load = incertezza di un carico, come quota del suo valore
field-readings-errors-tap = incertezza di una frequenza, come quota del suo valore
