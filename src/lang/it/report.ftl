# Tables, drawings and the sheet.

# Amounts.
stages = { $number ->
    [one] { $number } fase
   *[other] { $number } fasi
}
hand-overs = { $number ->
    [one] { $number } presa del contromandrino
   *[other] { $number } prese del contromandrino
}
regrips = { $number ->
    [one] { $number } riserraggio della fantina
   *[other] { $number } riserraggi della fantina
}
pieces = { $number ->
    [one] { $number } pezzo
   *[other] { $number } pezzi
}
bars = { $number ->
    [one] { $number } barra
   *[other] { $number } barre
}
readings = { $number ->
    [one] { $number } lettura
   *[other] { $number } letture
}

# The first line.
verdict-feasible = FATTIBILE
verdict-at-risk = A RISCHIO
verdict-not-feasible = NON FATTIBILE
verdict-holds = rispetta i limiti in { $good } pezzi simulati su 100; { $made }
verdict-headline = { $name }: { $summary }
verdict-made = { $stages }, { $hand_overs }, { $regrips }, tempo ciclo { $seconds } s, { $pieces } per barra
verdict-made-tightest = { $made }; verifica più critica: { $tightest }
verdict-made-short = { $stages }, tempo ciclo { $seconds } s, { $pieces } per barra
verdict-tightest = { $check }, { $used } del suo limite
verdict-tightest-in-stage = { $check }, { $used } del suo limite, nella fase { $stage }
verdict-stops-before-end = si può tornire fino a { $reached } { -mm } su { $length } { -mm }; a quel punto { $what }
verdict-stops-at-part-off = si può tornire per tutta la lunghezza di { $length } { -mm }, ma non troncare: { $what }
verdict-no-plan = nessun piano trovato
tightest-check = Verifica più critica: { $check }, alla lunghezza tornita di { $turned } { -mm }
reasons-both = { $first }, e { $second }
stops-stiffness = la barra è troppo cedevole all'utensile
stops-span-stiffness = la barra è troppo cedevole tra il serraggio e la bussola
stops-free-ratio = l'estremità anteriore libera è troppo lunga per il suo diametro (regola aziendale)
stops-whirl = la barra gira troppo vicino alla sua velocità critica
stops-whip = la curvatura della barra in rotazione è troppo grande a questa velocità (colpo di frusta)
stops-sag = la barra si abbassa troppo tra il serraggio e la bussola
stops-bore = l'estremità anteriore ha troppo poco spazio nel foro del contromandrino
stops-cut = il diametro varia troppo lungo la passata
stops-chatter = il taglio entra in vibrazione
stops-buckling = il carico assiale può rendere instabile la barra (carico di punta)
stops-run-out = l'oscillazione della pinza si riporta troppo sulla superficie in lavorazione
stops-drill = la barra si flette troppo sotto un utensile trasversale
stops-pick-up = l'estremità anteriore è troppo fuori asse per la pinza o la contropunta che la deve prendere
stops-release = l'estremità anteriore si abbassa troppo quando la pinza si apre
stops-torque = la pinza non tiene la coppia della troncatura o della lavorazione sull'estremità posteriore
stops-push = la pinza non tiene contro la forza della lavorazione su un'estremità
stops-back = l'estremità posteriore si flette troppo sotto la lavorazione dopo la troncatura
stops-travel = il contromandrino non ha più corsa
stops-collet = nessuna pinza serra l'estremità anteriore dove è necessario
stops-stroke = la fantina non ha più corsa e il riserraggio non è ammesso
stops-interrupt = una superficie che non ammette segni di ripresa ne avrebbe uno
stops-tray = il pezzo è troppo grande per cadere libero
stops-tool-places = i posti utensile non bastano
stops-thread-length = la filettatura è troppo lunga per un utensile monotagliente
stops-support = i sostegni non tengono la barra
stops-wish = una richiesta del lavoro non si può soddisfare
stops-bush-size = la barra è troppo grossa per la bussola di guida
stops-collet-size = la barra è troppo grossa per la fantina
stops-power = la fantina ha troppo poca potenza per il taglio
stops-spindle-torque = la fantina ha troppo poca coppia per il taglio
stops-feed-force = la fantina ha troppo poca forza di avanzamento per il taglio
stops-counter-torque = il contromandrino ha troppo poca coppia
stops-other = impedimento: { $rule }
check-free-ratio = lunghezza libera
check-bore = spazio nel foro
check-cut = variaz. Ø
check-drill = fless. utens. trasv.
check-pick-up = fuori asse ant.
check-release = calo all'apertura
check-torque = coppia sulla pinza
check-push = slittam. pinza
check-back = fless. estr. post.

# Keys of a plan in words.
key-hand-over = presa contromandrino
key-regrip = riserraggio fantina
key-centre = contropunta
key-segment = arretramento
key-whirl = velocità critica
key-interrupt = segno di ripresa
key-stroke = corsa della fantina
key-counter-spindle = contromandrino
key-counter-spindle-travel = corsa contromandrino
key-part-off = troncatura
key-bar-feed = caricatore di barre
key-back-work = lavoraz. estr. post.
key-cross-driven = trasv., motorizzati
key-front-fixed = estr. ant., fissi
key-front-driven = estr. ant., motorizz.
key-back-fixed = estr. post., fissi
key-back-driven = estr. post., motorizz.
key-stiffness = rigidezza
key-span-stiffness = rigidezza in campata
key-whip = colpo di frusta
key-sag = flessione (peso)
key-chatter = vibraz. rigenerative
key-buckling = carico di punta
key-run-out = oscillazione
key-turn = tornitura
key-plunge = tornitura a tuffo
key-forward = in avanti
key-back = all'indietro
key-headstock = fantina
key-both = entrambi
key-turning = tornitura
key-cylinder = cilindro
key-groove = gola
key-knurl = zigrinatura
key-thread = filettatura
key-taper = cono
key-flats = spianature
key-feature = elemento
key-unload = scarico
key-bar-change = cambio barra
key-tool-change = cambio utensile
key-cross-hole = foro trasversale
key-keyseat = cava per linguetta
key-keyway = cava interna per linguetta
key-axial-hole = foro assiale
key-centre-hole = foro da centro
key-facing = sfacciatura
key-tapped-hole = foro filettato
key-hex-socket = esagono incassato
key-engraving = incisione
key-thread-rolling = rullatura filettatura
key-rough = sgrossatura
key-finish = finitura
key-high = alta
key-medium = media
key-low = bassa
key-tray = raccoglipezzi
key-collet = pinza
key-support = sostegno
key-wish = richiesta
key-tool-places = posti utensile
key-thread-length = lunghezza filettatura
key-bush-size = misura bussola
key-collet-size = misura pinza
key-spindle-power = potenza mandrino
key-spindle-torque = coppia mandrino
key-feed-force = forza di avanzamento
key-counter-spindle-torque = coppia contromandrino
key-margin = margine
key-witnesses = segni di ripresa
key-quote = preventivo
key-length = lunghezza
key-whirling = gruppo di turbinatura
holding-bush = bussola di guida
holding-no-bush = senza bussola, solo pinza della fantina
tools-single = utensile singolo
tools-opposed = utensili contrapposti
tools-tandem = tandem: un utensile di finitura segue quello di sgrossatura
work-whirl = turbinatura filettatura
work-thread = passate di filettatura
work-as-drawn = superficie della barra
work-turn = tornitura
work-repeated = { $number } × { $work }
section-number = tratto { $number }
check-used = { $check } { $used }
check-at-most = { $check } { $value }, al massimo { $limit } ({ $used } del suo limite)
check-at-least = { $check } { $value }, almeno { $limit } ({ $used } del suo limite)
value-not-set = non impostato
value-yes = sì
value-no = no

# Titles.
title-stages = Fasi ({ -mm }, giri/min, s)
title-stages-reached = Fasi fin dove è possibile ({ -mm }, giri/min, s)
title-positions = Posizioni ({ $from })
title-look-at = Punti da guardare per primi
title-stops = Arresti dell'avanzamento (lunghezza tornita, { -mm })
title-segments = Segmenti ({ -mm }, giri/min, { -mm-rev })
title-features = Elementi ({ -mm }, s)
title-time = Tempi
title-quote = Preventivo
title-limit-costs = Quanto tempo costa ogni limite
title-scatter = Pezzi simulati per fase ({ -mm })
title-inputs = Dati incerti (valore più basso – più alto di uno scarto tipo; utilizzo del limite: { $check })
title-measure = Che cosa misurare, prima ciò che serve di più
title-set-up = Attrezzaggio
title-notes = Note
title-origins = Valori che il lavoro non indica
origins-of-shop = Dal file dell'officina: { $values }
origins-by-default = Valori consueti di questo programma: { $values }
origin-of-shop = { $key } { $value } (riga { $line })
origin = { $key } { $value }
title-cautions = Avvertenze
title-cycle = Ciclo
title-timeline = Diagramma dei tempi dei due mandrini (s)
title-shorten-first = Che cosa accorciare per primo
title-tool-places = Posti utensile
title-tools = Utensili
title-tool-list = Utensili per tornire ({ -mm }, { -mm-rev }, giri/min)
sheet-tool-list = Utensili per tornire
sheet-tool-list-units = profondità in { -mm }, avanzamento in { -mm-rev }, velocità in giri/min
tool-not-listed = { $tool } (non nella lista)
tool-parts-off = troncatura
tool-nose = r { $nose }
tool-insert-nose = { $insert }, { $nose }
tool-range = { $least }–{ $most }
title-order = Ordine
title-quantities = Ordine per quantità
title-sensitivity = Effetto di un tempo o di una velocità diversi
title-help-sets = Che cosa lo rende fattibile (basta una riga; in cima ciò a cui si ricorre prima in officina)
title-help-alone = Singole modifiche che lo rendono fattibile
title-help-others = Altre singole modifiche che bastano
title-help-house = Limiti aziendali che lo impediscono (nessun consiglio: l'azienda ne cambia uno solo dopo una prova, e ne risponde)
positions-from-bush = { -mm } dalla faccia della bussola
positions-without-bush = { -mm }; contromandrino dalla fine della distanza dietro l'utensile, fantina dall'utensile

# Names of columns.
col-stage = fase
col-from = da
col-to = a
col-travel = corsa
col-grip = serraggio
col-collet = pinza
col-unsupported = non sostenuta
col-l-over-d = L/d
col-unsupported-split = non soste{ "\u00AD" }nuta
col-speed = giri/min
col-feed = avanz.
col-tool = utens.
col-station = stazione
col-insert = inserto
col-sections = tratti
col-depth = prof.
col-time = tempo
col-seconds = s
col-tightest = verifica più critica
col-counter-spindle-start = contromandrino all'inizio
col-headstock-start = fantina all'inizio
col-end = alla fine
col-regrips-at = riserraggi fantina a
col-counter-spindle = contromandrino
col-headstock = fantina
col-mark = segno
col-done = operazione
col-surface = superficie
col-leaves = che cosa lascia
col-section = tratto
col-diameter = Ø
col-work = lavoraz.
col-travels = passate
col-turning = tornitura
col-feature = elemento
col-at = pos.
col-turned-when-done = lunghezza tornita all'esecuzione
col-planned-to = previsto fino a
col-input = dato incerto
col-input-range = basso – alto
col-input-used = util. limite
col-input-good = buoni sotto – sopra
col-input-time = più rapido, s
col-holds-to = il 99 % regge fino a
col-broken-share = pezzi oltre un limite
col-broken-checks = verifiche oltre il limite
col-cause = causa
col-interrupt = contrassegno della superf.
col-operation = operazione
col-share = quota
col-spindle = mandrino
col-what = voce
col-place = posto
col-places = posti
col-needed = richiesti
col-elsewhere = messi altrove
col-missing = mancanti
col-free = liberi
col-tools = utensili
col-pieces = pezzi
col-bars = barre
col-shifts = turni
col-cost-per-piece = costo per pezzo
col-number = n.
col-size = quota
col-measured = misurato

# Cells.
grip-free = libera
grip-centre = contropunta
cell-none = nessuno
cell-range = { $low } – { $high }
cell-no-plan = nessun piano
cell-after-part-off = dopo la troncatura
cell-part-off-face = faccia di troncatura
cell-part-off = troncatura
feature-with-kind = { $kind }: { $text }
time-cutting = taglio
time-travels = accostamento e ritorno
time-hand-overs = prese contromandrino
time-regrips = riserraggi fantina
time-features = elementi
time-part-off = troncatura
time-back-work = lavoraz. estr. post.
time-sum = somma delle operazioni
time-cycle = tempo ciclo

# Where the feed stops.
stop-hand-over = presa del contromandrino
stop-regrip = riserraggio della fantina
stop-regrip-then-hand-over = riserraggio + presa (arresto comune)
stop-hand-over-then-regrip = presa + riserraggio (arresto comune)
stop-then = { $first }, poi { $second }
stop-at-shoulder = nessun segno (spallamento)
stop-at-end = nessun segno (faccia d'estremità)
stop-behind = nessun segno (dietro il pezzo)
stop-in-groove = nessun segno (gola)
stop-line = segno di ripresa ({ $interrupt })
stop-between = tra i tratti { $front } e { $rear }
stop-front-face = faccia anteriore
stop-part-off-face = faccia di troncatura
stop-behind-face = dietro la faccia di troncatura

# Facts: a key and its value.
fact-drawing = disegno
fact-date = data
fact-bush = bussola di guida
fact-bar-ends = estremità della barra
fact-drawing-revision = { $drawing }, revisione { $revision }
fact-bush-said = per { $bar }, { $kind }, lunghezza di guida { $land } { -mm }
bush-fixed = fissa
bush-following = gira con la barra
bush-kind-not-given = tipo non indicato
fact-bar-ends-said = tagliate in squadro, quella anteriore smussata, senza bave e non piegate
length-of-part = lunghezza { $length }
fact-length = lunghezza
fact-length-mm = { $length } { -mm }
fact-material = materiale
fact-bar = barra
fact-bar-length = { $stock }, lunghezza della barra { $length } { -mm }
fact-machine = macchina
fact-holding = tenuta barra
fact-tools = utensili
fact-collet = pinza
fact-centre = contropunta
fact-centre-presses = nell'estremità anteriore con { $force } { -n }; si ritira a { $leaves } { -mm }, prima della troncatura
fact-collet-holds = { $collet } nel contromandrino, serra su { $hold } { -mm }
fact-collet-named = { $collet } nel contromandrino
fact-collet-none = nessuna nel contromandrino
fact-part-off = troncatura
fact-part-falls = il pezzo cade nel raccoglipezzi (per pezzi fino a { $length } { -mm } di lunghezza e { $diameter } { -mm } di diametro)
fact-input = dati
quote-bar = { $pieces } da una barra di { $length } { -mm }, spezzone { $remnant } { -mm }
quote-material = { $mass } kg per pezzo
fact-cost = costo
quote-cost = { $total } { $currency } per pezzo: macchina { $machine }, materiale { $material }
fact-optimum = ottimo
fact-cycle = tempo ciclo
cycle-steady = { $steady } s da pezzo a pezzo; un pezzo da solo richiede { $alone } s
fact-spindles = in uso
cycle-spindles = fantina { $headstock } s, contromandrino { $counter } s
fact-rear-end = estremità posteriore
cycle-hidden-waits = { $hidden } s si svolgono durante la fase libera del pezzo seguente; la fantina attende poi { $wait } s
cycle-hidden-idle = { $hidden } s si svolgono durante la fase libera del pezzo seguente; il contromandrino resta poi inattivo per { $idle } s
cycle-in-line = terminata prima che cominci il pezzo seguente
fact-tool-changes = cambi utensile
cycle-tool-changes = { $number ->
    [one] { $number } cambio, { $seconds } s
   *[other] { $number } cambi, { $seconds } s
}
fact-bar-change = cambio barra
cycle-bar-change = { $seconds } s per pezzo
timeline-stage = fase { $stage }: { $parts }
timeline-previous = pezzo precedente: { $parts }
timeline-turning = tornitura { $seconds }
timeline-features = elementi { $seconds }
timeline-back-work = estremità posteriore { $seconds }
timeline-tool-changes = cambi utensile { $seconds }
timeline-unloading = scarico { $seconds }
shorten-one = { $what }: { $seconds } s, { $share } del tempo ciclo
tools-turret = torretta
tools-turret-holds = utensili senza posto accanto alla barra o sull'estremità anteriore
tools-at = { $place }: { $names }
tools-places = { $place } { $number }
tools-fit = ogni utensile ha un posto; posti liberi: { $free }
tools-missing = posti mancanti: { $missing }; posti liberi: { $free }
fact-pieces = pezzi
order-pieces = { $pieces } da { $bars }, { $per_shift } per turno
fact-time = tempo
order-time = attrezzaggio { $set_up } h, produzione { $run } h, turni: { $shifts }
order-cost = { $each } { $currency } per pezzo, { $all } { $currency } in totale
sensitivity-speed = velocità di taglio × { $factor }: { $change } s per pezzo
sensitivity-time = tempo di ogni operazione ({ $what }) × { $factor }: { $change } s per pezzo

# What to look at first.
look-lines = { $number ->
    [one] Segno di ripresa su { $section }, contrassegno «{ $interrupt }»: { $places }
   *[other] Segni di ripresa su { $section }, contrassegno «{ $interrupt }»: { $places }
}
look-place = { $at } { -mm } ({ $cause })
look-over-limit = Oltre il limite nella fase { $stage }: { $check }, alla lunghezza tornita di { $turned } { -mm }
look-near-limit = Vicino al limite nella fase { $stage }: { $check }, alla lunghezza tornita di { $turned } { -mm }
look-slowed = Velocità ridotta su { $places }, a causa della verifica: { $check }
look-slowed-cost = Velocità ridotta su { $places }, a causa della verifica: { $check }. Al massimo da { $full } a { $speed } giri/min. Costa { $seconds } s in più
look-back-turning = Spallamento rivolto all'indietro, richiede un utensile per tornitura posteriore: { $places }
look-fed-out = Prima della troncatura la barra è fatta avanzare fino a { $to } { -mm } per: { $works }; { $unsupported } { -mm } non sono sostenuti; non tornire con la barra avanzata

# What would help.
help-cost-of-limit = { $text } ({ $limit }: { $now } → { $next })
help-values = { " (" }{ $name }: { $from } → { $to })
help-change-slower = { $text }, { $seconds } s in più della più rapida di queste
help-set-slower = { $text }, { $seconds } s in più della più rapida di queste
help-set-holds = { $text }; rispetta i limiti in { $good } pezzi simulati su 100
help-edits-job = { $text }. Modificare il lavoro: { $edits }.
help-edits-machine = { $text }. Modificare il file della macchina: { $edits }.
help-edits-both = { $text }. Modificare il lavoro: { $job }. Modificare il file della macchina: { $machine }.
help-edits-many = { $text }. La pagina (spanhold page JOB) esegue queste modifiche.
help-edit-item = { $list } voce { $number }
help-edit-new-item = { $list }, una voce nuova
help-edit-set = { $key }: { $value }
help-edit-remove = eliminare { $item }
help-edit-swap = scambiare { $item } con la voce { $with }
help-next = { $tried }. Chiedere una modifica del disegno, oppure confrontare altre macchine: spanhold compare JOB --machine FILE.
help-sentence = { $text }.

# The sheet.
sheet-title = { $job }: scheda di attrezzaggio
sheet-input = dati { $digest }
sheet-page = pagina { $page } di { $pages }
sheet-sign-off = Benestare
sheet-sign-read = Piano letto; macchina e pinza sono quelle giuste
sheet-sign-proved = Primo pezzo provato a velocità e avanzamento ridotti
sheet-sign-measured = Primo pezzo misurato
sheet-sign-released = Autorizzato per la produzione
sheet-sign-name = nome
sheet-sign-date = data
sheet-sign-signature = firma
sheet-work-list = Lavorazioni in ordine di esecuzione
sheet-work-list-units = { -mm }, giri/min, { -mm-rev }, s; «da» e «a» sono lunghezze tornite
sheet-directions = Punti zero e versi degli assi
sheet-stages = Fasi
sheet-stages-units = { -mm }, giri/min, { -mm-rev }, s; contromandrino e fantina: inizio → fine della fase, { $from }
sheet-stage-limits = Limiti delle fasi: non superarli
sheet-stops = Arresti dell'avanzamento
sheet-stops-units = lunghezza tornita, { -mm }
sheet-witness-lines = Segni di ripresa
sheet-witness-lines-units = { -mm }
sheet-sure = Quanto è sicuro questo piano
sheet-scatter = Pezzi simulati per fase
sheet-scatter-units = { -mm }
sheet-inputs = Dati incerti
sheet-inputs-units = valore più basso – più alto di uno scarto tipo; utilizzo del limite: { $check }; pezzi buoni su 100 con un valore sotto – sopra quello usato
sheet-timeline = Diagramma dei tempi dei due mandrini
sheet-bar = Barra
limit-stage = Fase { $stage }: { $limits }
limit-turn-to = tornire fino a { $to } { -mm }, non oltre
limit-speeds-below = mai sopra la velocità indicata qui sotto per ogni campo
limit-speed = mai sopra { $speed } giri/min
limit-unsupported = mai più di { $unsupported } { -mm } non sostenuti
limit-unsupported-turning = mai più di { $unsupported } { -mm } non sostenuti durante la tornitura
limit-grip-distance = serraggio del contromandrino { $grip }, mai a più di { $distance } { -mm } dalla bussola
limit-grip = serraggio del contromandrino { $grip }
limit-free = estremità anteriore libera, nulla deve toccarla
limit-centre = contropunta nell'estremità anteriore con { $force } { -n }; si ritira prima della troncatura
limit-falls = il pezzo cade nel raccoglipezzi alla troncatura
limit-range = Fase { $stage }, lunghezza tornita da { $from } a { $to } { -mm }: mai sopra { $speed } giri/min
limit-fed-out = Fase { $stage }, prima della troncatura: far avanzare la barra fino a { $to } { -mm }, non oltre, per: { $works }. Non tornire con la barra avanzata: { $positions }. Poi riportare la barra a { $back } { -mm }.
limit-fed-out-speed = Fase { $stage }, prima della troncatura: far avanzare la barra fino a { $to } { -mm }, non oltre, per: { $works }. Non tornire con la barra avanzata: { $positions }; mai sopra { $speed } giri/min. Poi riportare la barra a { $back } { -mm }.
fed-unsupported = { $unsupported } { -mm } non sostenuti
fed-counter-spindle = contromandrino a { $distance } { -mm } dalla bussola
fed-headstock-bush = fantina a { $distance } { -mm } dalla bussola
fed-headstock-tool = fantina a { $distance } { -mm } dall'utensile
speed-range = da { $from } a { $to }: { $speed }

# The diagram.
diagram-title = { $job }: piano di fasi, serraggi e arresti
diagram-description = { $verdict }: { $summary }. { $panels }
diagram-panels = In alto: l'albero con i serraggi, le prese del contromandrino e i riserraggi della fantina. Al centro: la macchina all'inizio e alla fine di ogni fase. In basso, sullo stesso asse: la quota del limite che ogni verifica utilizza lungo la lunghezza tornita, e la velocità.
diagram-description-setting = { $verdict }: { $summary }. L'albero con le lunghezze, i serraggi, le prese del contromandrino, i riserraggi della fantina e gli arresti per altre lavorazioni.
diagram-numbers = numeri: tratti della tabella dei segmenti
diagram-labels-left-out = { $number ->
    [one] manca spazio per { $number } etichetta
   *[other] manca spazio per { $number } etichette
}
diagram-machine-left-out = posizioni della macchina: vedere tabella fasi
diagram-more = … il resto è nel testo
diagram-shaft = Albero
diagram-true-scale =
    in
    scala
diagram-radial-scale =
    scala
    radiale
    × { $factor }
diagram-not-reached = non raggiunto; si ferma a { $at } { -mm }
diagram-axis = posizione sull'albero e lunghezza tornita, { -mm } dalla faccia anteriore
diagram-used =
    quota
    del
    limite
diagram-governs = più critica
diagram-limit = limite
diagram-at-most = { $check }, al massimo
diagram-strips = La macchina all'inizio e alla fine di ogni fase
diagram-start = inizio
diagram-end = fine
diagram-unsupported = non sostenuti { $unsupported } { -mm }
legend-grip = serraggio, con la sua fase
legend-centre = contropunta nella faccia ant.
legend-hand-over = H presa contr.
legend-regrip = R riserraggio fantina
legend-both = H+R insieme, un solo arresto
legend-work = F altra lavorazione a un arresto
legend-bush = bussola di guida
legend-headstock = pinza della fantina
legend-headstock-right = la fantina è più a destra
legend-bore = foro del contromandrino
legend-sleeve = manicotto nel foro
legend-not-reached = non raggiunto

# Both spindles in time.
gantt-title = { $job }: diagramma dei tempi dei due mandrini
gantt-bar = { $work }: { $name }, { $seconds } s
gantt-cycle = tempo ciclo { $seconds } s
gantt-hidden = { $seconds } s di lavorazione dell'estremità posteriore del pezzo precedente, in parallelo
gantt-wait = la fantina attende { $seconds } s
gantt-headstock = fantina
gantt-counter-spindle = contromandrino
gantt-holds = tiene il pezzo
gantt-turning = tornitura
gantt-other-work = altre lavoraz.
gantt-tool-change = cambio utensile
gantt-hand-over = presa contr.
gantt-regrip = riserraggio
gantt-part-off = troncatura
gantt-back-work = estr. posteriore del pezzo precedente
gantt-critical = sul percorso critico

# A family of parts.
family-title = { $name }: una famiglia di pezzi
family-count = Si possono fare { $good } pezzi su { $all }.
family-range = Da { $least } a { $hand_overs }, da { $fastest } a { $slowest } s per pezzo.
family-same = { $hand_overs }, da { $fastest } a { $slowest } s per pezzo.
family-longest = Massima lunghezza variata che si può fare: { $length } { -mm }.
family-machine = su { $machine }
family-made = { $part }: { $hand_overs }, { $seconds } s
family-sizes = lunghezza { $length } { -mm }, diametro { $diameter } { -mm }
family-size = { $size } { -mm }
family-not-made = { $part }: non si può fare
family-stopped = { $part }: non si può fare, motivo: { $check }
family-no-job = { $part }: queste misure non danno un lavoro valido; vedere la sua riga
family-hand-overs = Prese contr.
family-number-on-line = Numero sulla linea
family-hand-overs-word = { $number ->
    [one] presa contr.
   *[other] prese contr.
}
family-time-below = il tempo è sotto il numero
family-from-here = prese contr. da qui in poi
family-cannot = non si può fare
family-invalid = lavoro non valido
family-time-axis = tempo per pezzo, s

# Stiffnesses from readings.
fitted-head = Calcolato: { $machine }, da { $readings }; letture oltre il necessario: { $more }
fitted-misfit = Scostamento tra letture e calcolo: { $misfit } volte gli errori delle letture (circa 1 è giusto)
fitted-condition = Condizionamento { $condition } (1 è il migliore)
fitted-support = sostegno
fitted-stiffness = N/µm
fitted-error = errore tipo
fitted-range = campo 95 %
fitted-range-of = da { $low } a { $high }
fitted-before = file macchina
fitted-set-up = montaggio
fitted-reading = lettura
fitted-measured = misurato
fitted-fitted = calcolato
fitted-unit = unità
fitted-off = scostamento / errore
fitted-into-file = Mettere questi valori nel file della macchina. Ognuno sostituisce la rigidezza che vi si trova.

# The workbook.
xlsx-with-unit = { $name } ({ $unit })
xlsx-stages = fasi
xlsx-segments = segmenti
xlsx-checks = verifiche
xlsx-quote = preventivo
xlsx-grip-from = serraggio da
xlsx-grip-to = serraggio a
xlsx-grip-diameter = diametro di serraggio
xlsx-unsupported = lunghezza non sostenuta
xlsx-counter-start = contromandrino all'inizio
xlsx-counter-end = contromandrino alla fine
xlsx-headstock-start = fantina all'inizio
xlsx-headstock-end = fantina alla fine
xlsx-lowest-speed = velocità minima
xlsx-highest-speed = velocità massima
xlsx-regrips = riserraggi della fantina
xlsx-share = quota del suo limite
xlsx-speeds = velocità massima da … a … { -mm } di lunghezza tornita
xlsx-section-number = numero del tratto
xlsx-diameter = diametro
xlsx-speed = velocità
xlsx-slowed = velocità ridotta a causa di
xlsx-check = verifica
xlsx-value = valore
xlsx-limit = limite
xlsx-unit = unità
xlsx-check-unit = unità di valore e limite
xlsx-turned = lunghezza tornita
xlsx-position = posizione sull'albero
xlsx-pieces-per-bar = pezzi per barra
xlsx-pieces = pezzi
xlsx-remnant = spezzone
xlsx-material = materiale per pezzo
xlsx-cost-machine = costo macchina per pezzo
xlsx-cost-material = costo materiale per pezzo
xlsx-cost = costo per pezzo
xlsx-cell = { $head } nella riga { $row }

# The short answer on a terminal.
short-rows-left-out = … ancora { $number }
short-more = ancora { $number }: vedere --full
short-more-check = ancora { $number }: vedere `spanhold plan JOB --full`
short-more-changes = { $number ->
    [one] un'altra modifica: vedere --full
   *[other] altre { $number } modifiche: vedere --full
}
short-more-changes-check = { $number ->
    [one] un'altra modifica: vedere `spanhold plan JOB --full`
   *[other] altre { $number } modifiche: vedere `spanhold plan JOB --full`
}
short-tools = Utensili: { $tools }
plan-to-write = Per scrivere la scheda, il diagramma e le tabelle:
plan-to-write-with = Per scrivere la scheda, il diagramma e le tabelle: { $command }
plan-written = La scheda, il diagramma e le tabelle sono in: { $folder }
plan-full = --full stampa tutto.

# Why something could not be drawn.
undrawn-plan = il piano non si può disegnare: { $what }
undrawn-workbook = la cartella di lavoro non si è potuta scrivere: { $what }
undrawn-chart = il grafico non si è potuto disegnare: { $what }
undrawn-pdf = il PDF non si è potuto scrivere: { $what }
undrawn-time = un tempo del ciclo non è un numero
undrawn-beyond = le sue lunghezze sono troppo grandi o troppo piccole per un disegno
undrawn-length = la sua lunghezza non è un numero positivo
undrawn-bar = il diametro della barra non è un numero positivo
undrawn-section = un tratto ha un numero non finito
undrawn-feature = un elemento ha un numero non finito
undrawn-stage = una fase ha un numero non finito
undrawn-machine = la macchina ha un numero non finito
undrawn-stop = la posizione di un arresto è un numero non finito
undrawn-check = una verifica ha un numero non finito
undrawn-family = un numero della famiglia non è finito
undrawn-nothing-varies = non variano né la lunghezza né il diametro
under-one = meno di 1
sure-breaks = Che cosa non regge: { $checks }.
sure-break = { $check } in { $share } pezzi su 100
sure-break-at-start = { $check } in { $share } pezzi su 100, nella metà di essi fin dall'inizio
sure-break-from = { $check } in { $share } pezzi su 100, nella metà di essi entro { $from } { -mm } di lunghezza tornita
sure-more = ancora { $number }
sure-runs = Un pezzo che non regge supera un limite di questo piano; non è detto che sia uno scarto. Su { $runs } serie simulate di due pezzi, reggono entrambi i pezzi in { $both }, uno in { $one }, nessuno in { $none }. { $by ->
    [run] Decidono quindi macchina, materiale o utensile, uguali per tutta la serie.
    [part] Decide quindi il singolo pezzo: la sua curvatura, la sua barra.
    [both] Decidono quindi sia la serie sia il singolo pezzo.
   *[none] {""}
}
sure-ask = Con `confidence: 0.95` nel lavoro, oppure con `--confidence 0.95`, il programma cerca un piano che regga in 95 pezzi su 100.
sure-nothing-uncertain = In questo lavoro nessun dato è incerto, perciò ogni pezzo simulato è quello nominale.
sure-confidence = Fatto per reggere in { $asked } pezzi simulati su 100. Costa { $seconds } s al pezzo: il piano più rapido richiede { $fastest } s e regge in { $good } su 100.
sure-confidence-free = Fatto per reggere in { $asked } pezzi simulati su 100: ci riesce il piano più rapido.
sure-confidence-missed = Non è stato trovato nessun piano che regga in { $asked } pezzi simulati su 100. Tra quelli provati, questo regge nel maggior numero.
sure-measure = Misurare per primo: { $input }. Con un valore basso e uno alto probabili ({ $low }, { $high }) la verifica «{ $check }» utilizza { $used_low } e { $used_high } del suo limite. { $advice }.
sure-advice = { $input }: { $advice }
input-kc = forza di taglio kc1.1
input-passive = forza passiva, come fattore
input-e = modulo di Young
input-damping = smorzamento
input-bush = rigidezza bussola
input-headstock = rigidezza fantina
input-counter-spindle = rigidezza contromandrino
input-centre = rigidezza contropunta
input-sleeve = rigidezza sostegni nel foro
input-ra = rugosità reale / ideale
input-straightness = curvatura albero
input-bar = diametro barra
input-run-out = oscillazione pinza
input-other = altro dato
diagram-band = 90 pezzi su 100
diagram-part = questo pezzo
inputs-title = Dati incerti di { $job }
inputs-meaning = Quota del limite utilizzata dalla verifica «{ $check }» con un solo dato scostato di uno scarto tipo: estremo chiaro valore più basso, estremo scuro più alto
inputs-percent = { $percent } %
undrawn-inputs = la quota di una verifica con un dato incerto non è un numero finito

# The table of positions for the programmer.
moves-on-part = Lunghezza tornita (Z): posizione dell'utensile sul pezzo, dalla faccia anteriore verso la fantina. In un sistema di coordinate secondo ISO 841 con lo zero sulla faccia anteriore, Z è questo valore con segno meno.
moves-from-bush = Mandrini (Z): distanza del naso dalla faccia della bussola, che resta ferma { $gap } { -mm } dietro l'utensile. La distanza della fantina si conta all'indietro, quella del contromandrino in avanti; entrambi i valori sono positivi.
moves-without-bush = Mandrini (Z): la posizione del naso della fantina si conta all'indietro dall'utensile. Quella del naso del contromandrino si conta in avanti da un piano { $gap } { -mm } dietro l'utensile. Entrambi i valori sono positivi.
moves-across = Trasversale (X): i valori sono diametri, lo zero è l'asse.
moves-stage = inizia la fase { $stage }
moves-cut = { $work }, { $section }
moves-travel = { $work }, { $section }, passata { $travel } di { $travels }
moves-pass = passata di filettatura { $pass } di { $passes }, { $section }
moves-approach = accostamento all'inizio di: { $cut }
moves-run-out = corsa d'uscita del tandem: l'utensile di finitura taglia fino alla fine
moves-fed-out = barra avanzata, senza taglio
moves-fed-back = barra riportata indietro, senza taglio
moves-counter-opens = la pinza del contromandrino si apre
moves-counter-moves = il contromandrino va alla posizione di serraggio
moves-counter-closes = la pinza del contromandrino si chiude
moves-headstock-opens = la pinza della fantina si apre
moves-headstock-moves = la fantina torna indietro lungo la barra
moves-headstock-closes = la pinza della fantina si chiude
moves-centre-comes = la contropunta entra nella faccia anteriore
moves-centre-leaves = la contropunta lascia la faccia anteriore
moves-part-taken = il contromandrino porta via il pezzo
moves-wait-stopped = avanzamento fermo, utensile disimpegnato
moves-wait-first-hand-over = avanzamento fermo, utensile disimpegnato, la fantina tiene la barra, contromandrino vuoto
moves-wait-hand-over = avanzamento fermo, utensile disimpegnato, la fantina tiene la barra
moves-wait-counter-closed = pinza del contromandrino chiusa, i due mandrini girano alla stessa velocità
moves-wait-regrip = avanzamento fermo, utensile disimpegnato, il contromandrino tiene il pezzo
moves-wait-headstock-closed = pinza della fantina chiusa
moves-wait-centre = la contropunta preme
moves-wait-centre-left = la contropunta è disimpegnata
moves-wait-part-off = il contromandrino tiene il pezzo, i due mandrini girano alla stessa velocità
moves-wait-parted = pezzo troncato
moves-col-actor = chi
moves-col-wait = punto di attesa
moves-col-waits-for = attende
moves-col-start = inizia a
moves-col-turned = lunghezza tornita (Z)
moves-col-diameter = utensile, diametro (X)
moves-col-leading = utensile che precede, diametro (X)
moves-col-lag = distanza dell'utensile di finitura che segue
moves-col-headstock = naso della fantina (Z)
moves-col-counter = naso del contromandrino (Z)
moves-col-headstock-speed = velocità di rotazione della fantina
moves-col-counter-speed = velocità di rotazione del contromandrino
key-tool = utensile

# The drawing as DXF.
undrawn-dxf = una misura del disegno non è un numero finito
dxf-grip = serraggio { $stage }
dxf-stage = fase { $stage }
dxf-about = Albero in mm, faccia anteriore a sinistra. H presa del contromandrino, R riserraggio della fantina, F arresto per un elemento, ognuno con la propria lunghezza tornita.

# More sheets of the workbook.
xlsx-features = elementi
xlsx-tools = utensili
xlsx-places = posti utensile
xlsx-order = ordine
xlsx-positions = posizioni
xlsx-page = pagina { $page } di { $pages }
xlsx-fact = { $what }: { $told }
xlsx-thrust = spinta
xlsx-axial = forza assiale
xlsx-torque = coppia
xlsx-place-kind = tipo di posto
xlsx-nose-radius = raggio di punta
xlsx-depth-least = profondità di passata minima
xlsx-depth-most = profondità di passata massima
xlsx-feed-least = avanzamento minimo
xlsx-feed-most = avanzamento massimo
