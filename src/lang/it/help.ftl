# The topics of `help`: files, checks, materials.
help-job =
    Il file del lavoro dice che cosa si deve tornire: l'albero, la barra, la macchina e come tagliare. È un file YAML.
    Le lunghezze sono in mm, o in pollici con `units: inch`. Le posizioni sull'albero si contano dalla faccia anteriore: l'estremità che esce per prima dalla bussola di guida.
    `spanhold new` stampa un esempio più lungo con commenti. Un editor può controllare il file mentre si scrive: `spanhold schema job`.
    `[]` dopo un nome significa: ogni voce della lista.
help-machine =
    Il file della macchina descrive un tornio. È un file YAML. Un lavoro lo indica, oppure un lavoro ha le stesse chiavi sotto `machine`.
    Le lunghezze sono in mm, o in pollici con `units: inch`. Le rigidezze sono in N/µm. Prendere lunghezze e velocità dal manuale della macchina. Misurare le rigidezze: vedere `spanhold help readings`.
    `[]` dopo un nome significa: ogni voce della lista.
help-shop =
    Il file dell'officina contiene ciò che è uguale per tutti i lavori di un'officina: macchine, pinze, materiali con prezzi, barre, tariffe, valori aziendali.
    È un file YAML. spanhold lo trova come `shop.yaml` nella cartella di un lavoro o in quelle superiori; `--shop FILE` o `shop` nel lavoro ne indica un altro.
    Un lavoro può omettere tutto ciò che vi si trova, e ciò che il lavoro indica ha la precedenza. `spanhold new shop shop.yaml` ne scrive uno con commenti.
    `cutting`, `limits`, `planning`, `scatter`, `order` e `rates` hanno le chiavi di un lavoro (`spanhold help job`), tranne `cutting.vc` e `order.pieces`.
    `[]` dopo un nome significa: ogni voce della lista.
help-readings =
    Il file delle letture contiene ciò che si è misurato sulla macchina. `spanhold fit` ne calcola la rigidezza di ogni sostegno.
    Le posizioni si contano in mm dalla faccia della bussola verso il contromandrino. Senza bussola si contano dal naso della pinza della fantina.
    Sezionare la macchina e bloccarla contro il riavvio prima di misurare. Seguire il suo manuale e le norme locali.
    `[]` dopo un nome significa: ogni voce della lista.
help-materials =
    Materiali incorporati per `shaft.material` in un lavoro. Indicare il nome, il numero o un altro nome. Maiuscole, spazi, trattini, il nome del sistema (AISI, JIS, UNS, W.-Nr.) e una norma davanti al nome non contano.
    E: modulo di Young. kc1.1 e mc: forza di taglio specifica a 1 mm di spessore del truciolo, e il suo esponente. vc: velocità di taglio consuete con metallo duro rivestito e refrigerante.
    L'affidabilità dice quanto ci si può fidare di kc1.1 e mc. high: una fonte nota per questo materiale. medium: le fonti differiscono, oppure vale un gruppo adatto. low: una stima.
    I valori vengono a memoria da manuali e norme, dal catalogo di un costruttore di utensili, oppure sono stime. Le forze di taglio sono precise a ± 25 % nel migliore dei casi.
    Per un altro materiale indicare un gruppo di chiavi: `name`, `e_gpa`, `density`, `kc11`, `mc`, e se si vuole `poisson`, `vc` e `class`. Vedere `spanhold help job`.
help-speeds =
    Velocità e avanzamenti di punte, maschi e frese. Li dà la classe del materiale. Un materiale incorporato ha la sua classe. Per un materiale proprio indicare `class`; altrimenti la si presume dagli altri numeri, e il piano lo dice.
    Punte e maschi sono di acciaio rapido, le frese di metallo duro integrale rivestito e tagliano su tutta la loro larghezza, tutti con refrigerante. Le punte in metallo duro girano da due a quattro volte più veloci. Gli utensili motorizzati non girano più veloci di `driven_max_rpm` della macchina.
    Le lettere dicono da dove viene ogni valore: punta; maschio; fresa. I campi delle fonti sono larghi.
    Tra due diametri l'avanzamento al dente è interpolato in linea retta. Una fresa più sottile lo ha in proporzione, una più grossa ha l'ultimo.
help-checks =
    Le verifiche di un piano. Una verifica confronta un valore con il suo limite. Un piano regge se ogni valore utilizza al massimo il 100 % del suo limite.
    I limiti sono valori predefiniti di pratica comune, senza fonte. Cambiarli nel lavoro sotto `limits`.
help-plan-file =
    Le chiavi di plan.json, il file che `spanhold plan --out` scrive e `spanhold plan --format json` stampa.
    Ogni numero è finito. `null` significa: non c'è. Molti nomi finiscono con la loro unità. Le lunghezze tornite e le posizioni sull'albero si contano dalla faccia anteriore.
    `[]` dopo un nome significa: ogni voce della lista.
help-group-root = Chiavi del file: { $what }.
help-group = { $paths }: { $what }.
help-group-kinds = { $title } Indicare esattamente uno di questi tipi: { $kinds }.
help-head-key = chiave
help-head-meaning = significato
help-head-unit = unità
help-head-takes = accetta
help-head-holds = contiene
help-head-left-out = se omessa
help-head-check = verifica
help-head-looks-at = guarda
help-head-made = quando
help-head-limit = chiave del limite
help-head-material = nome
help-head-class = classe
help-head-drill-vc = punta, m/min
help-head-drill-feed = avanz. punta, × diametro
help-head-tap-vc = maschio, m/min
help-head-mill-vc = fresa, m/min
help-head-tooth-feed = avanz. al dente
help-head-sources = fonti
help-head-cutter = diametro della fresa, mm
help-head-letter = lettera
help-head-source = fonte
help-speeds-meaning = Classi:
help-speeds-classes = Velocità e avanzamenti:
help-speeds-teeth = Avanzamento al dente secondo il diametro della fresa, mm:
help-speeds-sources = Fonti:
tooth-feed-full = pieno
tooth-feed-small = piccolo
help-head-number = numero
help-head-names = altri nomi
help-head-state = stato
help-head-e = E, GPa
help-head-density = densità, kg/m³
help-head-kc = kc1.1, N/mm²
help-head-mc = mc
help-head-vc = vc, m/min
help-head-confidence = affidabilità
help-takes-range = da { $least } a { $most }
help-takes-text = testo
help-takes-number = numero
help-takes-whole = numero intero
help-takes-flag = `true` o `false`
help-takes-null = `null`
help-takes-map = gruppo di chiavi
help-takes-list = lista: { $item }
help-takes-pair = due valori: { $item }
help-takes-or = { $one } o { $other }
help-takes-any = qualsiasi valore
help-must-be-given = obbligatoria
help-must-be-given-with = obbligatoria con { $keys }
help-another-kind = un altro tipo
help-another-kind-of = un altro tipo: { $others }
help-material-about = { $name } ({ $group }, { $state }), coefficiente di Poisson { $poisson }, classe { $class }. kc1.1 e mc: { $source }.
help-material-group = { $group }:
help-materials-more =
    `spanhold materials WORD` riporta gli altri nomi, lo stato della barra e le fonti di ciò che corrisponde a una parola: un nome, un numero o un gruppo.
    `--format json` riporta tutto.
help-material-names = { "  " }Altri nomi: { $names }.
help-check-at-rest = a ogni lunghezza tornita
help-check-by-speed = a ogni lunghezza tornita; una velocità più bassa aiuta
help-check-at-event = in un solo evento
help-check-at-both = in ogni stato di una passata, e per la lavorazione su un'estremità
help-check-no-limit = nessuno
help-check-no-default = dipende da utensile, barra e tenuta
help-check-stiffness = La rigidezza laterale della barra all'utensile.
help-check-span-stiffness = La minima rigidezza laterale tra il serraggio e la bussola: un limite aziendale per un utensile singolo. Non vale dove l'estremità anteriore potrebbe girare libera.
help-check-free-ratio = Una regola aziendale, non attiva se la chiave è omessa: la lunghezza libera all'estremità anteriore divisa per il suo diametro finito medio (L/d).
help-check-whirl = Velocità divisa per la velocità critica più bassa. Nei testi è «velocità critica».
help-check-whip = Curvatura dell'albero tornito, ingrandita dalla rotazione.
help-check-sag = Flessione per peso proprio dell'albero tra il serraggio e la bussola. Estremità anteriore libera: vedere `pick_up`.
help-check-pick-up = Quanto un'estremità anteriore libera è fuori asse, per la sua curvatura e il suo peso, quando la pinza del contromandrino la prende.
help-check-bore = La stessa flessione dentro il contromandrino, ingrandita dalla rotazione, rispetto allo spazio nel foro. La chiave del limite è il gioco che resta libero.
help-check-cut = Variazione del diametro lungo una passata perché la barra si flette. Il limite è una quota della tolleranza.
help-check-chatter = Profondità di passata rispetto alla profondità a cui cominciano le vibrazioni rigenerative. `limits.damping_ratio` cambia questa profondità.
help-check-buckling = Carico assiale che comprime la barra, rispetto a una quota del carico a cui diventa instabile. La riga si omette sotto un quarto di quel limite.
help-check-run-out = Oscillazione della superficie in lavorazione perché la pinza del contromandrino oscilla. Si esegue dove pinza e tratto hanno entrambi `run_out`.
help-check-drill = Flessione sotto la forza di una punta o fresa trasversale, nel momento in cui lavora.
help-check-release = Abbassamento dell'albero al vecchio serraggio quando la pinza si apre a una presa del contromandrino.
help-check-torque = Coppia della troncatura e della lavorazione dell'estremità posteriore, per un margine, rispetto all'attrito dell'ultimo serraggio.
help-check-push = Spinta e coppia della lavorazione su un'estremità, per un margine, rispetto all'attrito della pinza che tiene.
help-check-back = Flessione dell'estremità posteriore sotto la lavorazione dopo la troncatura. Il limite è una quota della tolleranza di quella lavorazione.
help-unknown-topic = non c'è un aiuto su `{ $word }`
help-topics-and-commands = Argomenti: { $topics }. Comandi: { $commands }
help-nearest = si intendeva `{ $near }`? { $all }
help-more-topics = Argomenti: { $topics }. Per leggerne uno: spanhold help TOPIC
help-materials-of-shop = Di `{ $file }`
help-head-price = al kg
help-no-material = nessun materiale incorporato corrisponde a `{ $word }`
help-all-materials = `spanhold materials` li elenca tutti
left-out-none = nessuno
left-out-defaults = i valori predefiniti delle sue chiavi
left-out-shaft-name = `shaft`
left-out-run-out = `run_out` non si verifica
left-out-section-name = «tratto» e il suo numero
left-out-section-kind = un cilindro liscio, una filettatura, un cono o spianature
left-out-section-sides = obbligatoria con `across_flats`
left-out-section-ra = nessuna rugosità richiesta
left-out-section-tolerance = ISO 2768-m
left-out-thread-by = `single_point`; `whirling` dove la barra non si può arretrare per tutta la filettatura
left-out-section-interrupt = `never` per una filettatura, per IT7 o più stretta, per Ra 0,8 o più fine; `avoid` fino a IT9 o Ra 1,6; altrimenti `free`
left-out-section-grip = `true` per un cilindro liscio, altrimenti `false`
left-out-feature-thrust = calcolata dal foro
left-out-feature-at = obbligatoria con `cross_hole`, e con `tapped_hole` o `engrave` lungo l'albero
left-out-language = quella del file dell'officina, altrimenti `en`
left-out-feature-depth = obbligatoria con `axial_hole`, `hex_socket`, e con `tapped_hole` su un'estremità; { $default } per `engrave`
left-out-feature-drill-depth = `depth` più quattro passi
left-out-material-vc = allora indicare `cutting.vc`
left-out-material-class = presunta da modulo, densità e kc1.1
left-out-finisher = stesso lato, con il tagliente dell'utensile di sgrossatura
left-out-finisher-edge = quello dell'utensile di sgrossatura
left-out-cutting-vc = centro del campo consueto del materiale
left-out-cutting-feed = sgrossatura 0,15; finitura da Ra, al massimo 0,15
left-out-cutting-ap-finish = { $default }, ma al massimo `ap_max`
left-out-stiffness = { $share } N/µm per ogni mm di diametro della barra
left-out-span-stiffness = come `stiffness_min`
left-out-whip = { $share } mm per ogni mm di diametro della barra
left-out-rates = non si calcola nessun costo
left-out-order = non si fa un preventivo per un ordine
left-out-vary = un solo pezzo
left-out-wish-nose = la sceglie il programma
left-out-wish-most = nessun limite
left-out-scatter-support = `scatter` della macchina, altrimenti `supports`
left-out-own-scatter = `scatter` del lavoro o dell'officina
left-out-confidence = nessuna: il piano più rapido
left-out-scatter-bar = uniforme sulla tolleranza della barra; senza tolleranza: nessuna
left-out-machine-name = nome del file
left-out-bush = nessuna bussola; solo `holding: no_bush`
left-out-no-bush = nessuna lavorazione senza bussola
left-out-engagement = metà di `land`
left-out-counter-spindle = nessun contromandrino
left-out-sleeve = nessun sostegno
left-out-centre = nessuna contropunta
left-out-centre-stands-out = il suo vertice conta come al naso
left-out-torsional-stiffness = l'ultimo serraggio regge tutta la coppia di troncatura
left-out-edge = uno spigolo vivo
left-out-grind = non viene rettificato
left-out-drive = non si verifica; il piano dice quanto serve
left-out-clamp-force = `push` sull'estremità anteriore non si verifica
left-out-bush-kind = nessuna avvertenza sulla tolleranza della barra
left-out-bar-feed = il caricatore di barre non limita la velocità
left-out-tray = con contromandrino: possono cadere pezzi fino a { $length } mm × Ø{ $diameter } mm; senza: cadono tutti i pezzi
left-out-tools = i posti utensile non si verificano
left-out-turret = nessuna torretta
left-out-fit = tutti i sostegni della macchina
left-out-set-up-name = «montaggio» e il suo numero
left-out-set-up-headstock = obbligatoria con la bussola
left-out-set-up-grip = l'estremità anteriore è libera
left-out-set-up-collet = obbligatoria se più di una pinza può serrare la barra
left-out-dial = allora indicare `frequency`
left-out-frequency = allora indicare `dial`
left-out-read-at = nel punto del carico
man-unknown-command = non c'è un comando `{ $word }`
man-commands = Comandi: { $commands }
class-free-cutting-steel = acciaio automatico
class-structural-steel = acciaio da costruzione e da cementazione
class-carbon-steel = acciaio non legato da circa 0,35 % di carbonio
class-alloy-steel = acciaio legato, bonificato
class-tool-steel = acciaio da utensili
class-free-cutting-stainless = acciaio inossidabile con zolfo
class-ferritic-stainless = acciaio inossidabile ferritico e martensitico
class-austenitic-stainless = acciaio inossidabile austenitico
class-duplex-stainless = acciaio inossidabile duplex e indurente per precipitazione
class-heat-resistant-steel = lega di ferro resistente al calore
class-pure-titanium = titanio puro
class-titanium-alloy = lega di titanio
class-cobalt-chromium = lega cobalto-cromo
class-nickel-alloy = lega di nichel
class-free-cutting-copper = ottone al piombo e altre leghe di rame a buona truciolabilità
class-copper-alloy = rame, bronzo, ottone senza piombo
class-aluminium = lega di alluminio
class-plastic = materia plastica

# The shop's file.
schema-shop = che cosa ha un'officina
schema-shop-of-job = percorso del file dell'officina; `none`: non vale nessun file dell'officina
schema-shop-machine = una macchina
schema-shop-machines = le macchine; la prima è quella abituale
schema-shop-machine-name = nome con cui un lavoro la chiede
schema-shop-collets = pinze per i contromandrini, oltre a quelle dei file delle macchine
schema-shop-collet-machines = macchine su cui va bene
schema-shop-materials = prezzi e valori dei materiali, oppure il percorso di un file con questa lista
schema-shop-material = un materiale
schema-shop-grade = un materiale della tabella incorporata; i valori accanto sostituiscono quelli della tabella
schema-shop-grade-name = nome di un materiale proprio
schema-shop-bars = barre in magazzino
schema-shop-bar = una barra
schema-shop-bar-material = nome del suo materiale
schema-language = lingua dei testi e delle schede
left-out-to-shop = dal file dell'officina
left-out-shop-machine-name = nome del suo file
left-out-shop-machine-file = si deve indicare `machine`
left-out-shop-machine-here = si deve indicare `file`
left-out-shop-per-hour = `rates.machine_per_hour`
left-out-shop-collet = tutte le macchine
left-out-shop-grade = un materiale proprio
left-out-shop-grade-value = quello della tabella; obbligatorio senza `grade`
left-out-shop-grade-or = quello della tabella; senza `grade` { $default }
left-out-shop-grade-maybe = quello della tabella; senza `grade` nessuno
left-out-shop-grade-name = quello della tabella; obbligatorio senza `grade`
left-out-shop-price = `rates.material_per_kg`
left-out-shop-house = valori consueti
left-out-shop-bar-length = 3000

# The tool list.
schema-tool-list = gli utensili che ci sono; il piano sceglie tra questi
schema-tool = un utensile
schema-tool-name = nome dell'utensile
schema-tool-kind = che cosa fa
schema-tool-station = dove è montato
schema-tool-insert = il suo inserto, a parole proprie
schema-tool-rough = la sua passata di sgrossatura
schema-tool-finish = la sua passata di finitura
schema-tool-materials = altre passate in alcuni materiali, per nome del materiale
schema-tool-material = le sue passate in questo materiale
left-out-tool-list = un solo gruppo di numeri, `cutting`
left-out-tool-cutting = come sotto `cutting`
left-out-tool-width = va bene per ogni gola
left-out-tool-cut = entrambe, se nessuna è indicata
# Units of a file.
schema-units = unità dei numeri senza unità in questo file: metriche o pollici
left-out-machine-units = quelle del file che la contiene, altrimenti `mm`
