# A plan: its reasons, notes, changes and cautions, as they stand in plan.json.

## Lists

list-and = { $before } e { $item }
list-comma = { $before }, { $item }
list-semicolon = { $before }; { $item }
list-more = { $items } e ancora { $more }

## What a check found. The numbers carry their unit.

finding-at-most = il valore di «{ $check }» è { $demand }, è ammesso al massimo { $limit }
finding-stiffness = la rigidezza della barra all'utensile è { $demand }, è necessario almeno { $limit }
finding-span-stiffness = la rigidezza minima tra serraggio e bussola è { $demand }, il limite aziendale è { $limit }
finding-free-ratio = l'estremità anteriore libera è lunga { $demand } diametri, la regola aziendale ne ammette { $limit }
finding-whirl = la velocità è { $demand } volte la velocità critica, sono ammesse al massimo { $limit } volte
finding-whip = la curvatura della barra in rotazione (colpo di frusta) è { $demand }, è ammesso al massimo { $limit }
finding-sag = la barra si flette di { $demand } per peso proprio, è ammesso al massimo { $limit }
finding-pick-up = l'estremità anteriore libera è fuori asse di { $demand } al momento della presa, è ammesso al massimo { $limit }
finding-bore = la curvatura del pezzo nel foro del contromandrino è { $demand }, è ammesso al massimo { $limit }
finding-bore-no-room = il pezzo non ha spazio nel foro del contromandrino se si rispetta il gioco nel foro
finding-cut = la flessione della barra fa variare il diametro di { $demand } lungo la passata, è ammesso al massimo { $limit }
finding-chatter = la profondità di passata è { $demand }, le vibrazioni rigenerative cominciano a { $limit }
finding-drill = l'utensile flette la barra di { $demand }, è ammesso al massimo { $limit }
finding-release = la barra si abbassa di { $demand } quando la pinza del contromandrino si apre, è ammesso al massimo { $limit }
finding-torque = la coppia è { $demand }, la pinza tiene al massimo { $limit }
finding-push = il carico è { $demand }, la pinza tiene al massimo { $limit }
finding-buckling = la barra è compressa lungo il suo asse con { $demand }, è ammesso al massimo { $limit } perché non diventi instabile (carico di punta)
finding-run-out = l'oscillazione della pinza dà alla superficie in lavorazione un'oscillazione di { $demand }, è ammesso al massimo { $limit }
finding-back = la flessione dell'estremità posteriore fa variare il diametro di { $demand }, è ammesso al massimo { $limit }

## Where a check fails: one clause before the colon, what the check found after it

reason-gripped = con la pinza del contromandrino a { $nose } { -mm } e una lunghezza tornita di { $turned } { -mm }: { $finding }
reason-front-free = con l'estremità anteriore libera e una lunghezza tornita di { $turned } { -mm }: { $finding }
reason-on-centre = con la contropunta nell'estremità anteriore e una lunghezza tornita di { $turned } { -mm }: { $finding }
reason-centre = la forza della contropunta
reason-centre-comes = prima che la contropunta entri: { $finding }
reason-turned = a una lunghezza tornita di { $turned } { -mm }: { $finding }
reason-bar-fed-out = a una lunghezza tornita di { $turned } { -mm }, con la barra avanzata per tornire fino a { $end } { -mm }: { $finding }
reason-along-cut = lungo la passata che finisce a { $end } { -mm }: { $finding }
reason-under-tool = durante la lavorazione «{ $work }», a una lunghezza tornita di { $turned } { -mm }: { $finding }
reason-fed-on = con la barra avanzata fino a { $turned } { -mm } per la lavorazione «{ $work }»: { $finding }
reason-last-grip-torque = ultimo serraggio, alla troncatura o durante la lavorazione dell'estremità posteriore: { $finding } (compreso torque_margin { $margin })
reason-last-grip-torque-share = ultimo serraggio, alla troncatura o durante la lavorazione dell'estremità posteriore: { $finding } (compreso torque_margin { $margin }; per la sola torsione della barra, a questo serraggio andrebbe una quota di { $percent } % della coppia di troncatura; indicare torsional_stiffness per tenerne conto)
reason-last-grip-push = ultimo serraggio, durante la lavorazione «{ $work }»: { $finding } (compreso torque_margin { $margin })
reason-last-grip-back = ultimo serraggio, durante la lavorazione dell'estremità posteriore ({ $work }): { $finding }
reason-part-off = troncatura
reason-front-work = pinza della fantina, sotto il carico sull'estremità anteriore ({ $work }): { $finding } (compreso torque_margin { $margin })
reason-front-work-presses = durante la lavorazione dell'estremità anteriore: { $finding }

## Why there is no plan

stopped-together = qui più limiti fermano la barra insieme, e vanno cambiati tutti: { $reasons }
stopped-other-collet = con la pinza { $collet } la lunghezza tornita arriva a { $turned } { -mm }: { $reason }
stopped-no-grip = { $reason }; il contromandrino non aiuta: { $why }
bar-too-thick-for-bush = la barra da { $bar } { -mm } è troppo grossa per la bussola di guida, che accetta al massimo { $most } { -mm }
bar-too-thick-for-bush-only = la barra da { $bar } { -mm } è troppo grossa per la bussola di guida, che accetta al massimo { $most } { -mm }; senza bussola la macchina accetta { $collet } { -mm } per pezzi corti
bar-too-thick-for-both = la barra da { $bar } { -mm } è troppo grossa per la bussola di guida, che accetta al massimo { $most } { -mm }, e per la pinza della fantina senza bussola, che accetta al massimo { $collet } { -mm }
bar-too-thick-for-collet = la barra da { $bar } { -mm } è troppo grossa per la pinza della fantina, che accetta al massimo { $most } { -mm }
tools-no-place = la macchina non ha un posto per ogni utensile: { $missing }
tools-no-pair = tutti gli utensili per tornire stanno da un lato, perciò non si può tagliare con utensili contrapposti
tools-no-tandem = non ci sono due utensili per tornire che possano tagliare in tandem con l'utensile di finitura da questo lato (vedere `opposed` e `tandem` negli utensili della macchina)
tools-room = posti per { $place }: richiesti { $needed } ({ $names }), sulla macchina { $places }
tools-room-elsewhere = posti per { $place }: richiesti { $needed } ({ $names }), sulla macchina { $places }, utilizzabili in più di un altro tipo { $elsewhere }
place-turning = utensili per tornire
place-cross-driven = utensili motorizzati trasversali
place-front-fixed = utensili fissi per l'estremità anteriore
place-front-driven = utensili motorizzati per l'estremità anteriore
place-back-fixed = utensili fissi per l'estremità posteriore
place-back-driven = utensili motorizzati per l'estremità posteriore
place-whirling = gruppi di turbinatura
support-fails = nulla tiene la barra
support-fails-last-grip = l'ultimo serraggio non tiene il pezzo dopo la troncatura
check-fails = un limite è superato
proof-found-limit = la controprova ha trovato che con questo procedimento un limite è superato
drill-fails = un utensile motorizzato flette la barra più di quanto è ammesso
part-off-not-held = nulla tiene il pezzo alla troncatura
part-off-rear-work = la lavorazione dell'estremità posteriore richiede un serraggio alla troncatura, e questa macchina non ha contromandrino
part-off-too-large = nulla tiene il pezzo alla troncatura, e con { $length } { -mm } di lunghezza e { $diameter } { -mm } di diametro è troppo grande per il raccoglipezzi, che accetta pezzi fino a { $most_length } { -mm } di lunghezza e { $most_diameter } { -mm } di diametro (part_off.tray)
part-off-too-large-default = nulla tiene il pezzo alla troncatura, e con { $length } { -mm } di lunghezza e { $diameter } { -mm } di diametro è troppo grande per cadere senza serraggio: senza part_off.tray nel file della macchina è ammesso che cadano solo pezzi fino a { $most_length } { -mm } di lunghezza e { $most_diameter } { -mm } di diametro
part-off-no-collet = il contromandrino non ha pinze, perciò nulla tiene il pezzo alla troncatura
front-not-gripped = nessuna pinza serra l'estremità anteriore finita
travel-end = il contromandrino, con la pinza a { $nose } { -mm }, è alla fine della sua corsa di { $farthest } { -mm }
travel-end-centre = il contromandrino con la contropunta è alla fine della sua corsa di { $farthest } { -mm }
travel-too-short = il contromandrino, con la pinza a { $nose } { -mm }, non arriva così lontano
stroke-end-no-stop = la fantina è alla fine della sua corsa di { $stroke } { -mm }, e non c'è un punto per il riserraggio: ogni superficie lungo il percorso deve restare senza segno di ripresa
stroke-end-front-free = la fantina è alla fine della sua corsa di { $stroke } { -mm }, e il riserraggio è vietato finché l'estremità anteriore è libera
stroke-end-centre = la fantina è alla fine della sua corsa di { $stroke } { -mm }, e il riserraggio è vietato finché una contropunta preme sull'estremità anteriore
driven-part-off = troncatura
driven-torque = { $section } richiede una coppia di { $needed } N·m al mandrino, ma la fantina ha { $most } N·m
driven-feed = { $section } richiede una forza di avanzamento di { $needed } { -n }, ma la fantina avanza al massimo con { $most } { -n }
driven-power = { $section } richiede un motore da { $needed } kW anche alla velocità minima ammessa, { $rpm } giri/min (speed_floor), ma la fantina ha { $most } kW
driven-front-work = { $work }: è richiesta una coppia di { $needed } N·m al mandrino, ma la fantina ha { $most } N·m
driven-rear-work = { $work }, sull'estremità posteriore: è richiesta una coppia di { $needed } N·m, ma il contromandrino ha { $most } N·m
segments-pull-back = { $section } richiede più passate, e nessun arretramento è abbastanza corto per la sua tolleranza
thread-long-no-unit = { $section } è una filettatura di { $length } { -mm }. Con un utensile monotagliente la barra va arretrata per tutta la lunghezza della filettatura; qui può arretrare al massimo di { $longest } { -mm }, perché { $stays } { -mm } della lunghezza di guida della bussola devono restare su barra non tornita. La macchina non ha un gruppo di turbinatura (`tools.whirling`). Soluzioni: un gruppo di turbinatura, la rullatura (`thread_by: rolling`), nessuna bussola di guida oppure una filettatura più corta
thread-long-asked = { $section } è una filettatura di { $length } { -mm }. Con un utensile monotagliente la barra va arretrata per tutta la lunghezza della filettatura; qui può arretrare al massimo di { $longest } { -mm }, perché { $stays } { -mm } della lunghezza di guida della bussola devono restare su barra non tornita. Eliminare `thread_by: single_point`: la filettatura si può turbinare. Altre soluzioni: la rullatura (`thread_by: rolling`), nessuna bussola di guida oppure una filettatura più corta
segments-interrupt = { $section } non si deve interrompere, ma richiede { $travels } passate e quindi { $segments } segmenti con segni di ripresa tra l'uno e l'altro

## Why no collet takes hold of the front

grip-no-stop = la pinza { $collet } potrebbe serrare a una lunghezza tornita da { $from } a { $to } { -mm }, ma lì l'avanzamento non si può arrestare: { $why }
grip-no-stop-thread = { $section } è una filettatura, e una filettatura non si deve interrompere
grip-no-stop-never = { $section } non si deve interrompere
grip-no-stop-segments = un tratto che si taglia in più passate ammette un arresto solo tra i suoi segmenti
grip-no-farther = con un serraggio a { $nose } { -mm } la lunghezza tornita arriva solo a { $turned } { -mm }: { $why }
grip-fails = la pinza { $collet } non può serrare a una lunghezza tornita di { $turned } { -mm }: { $why }
grip-out-of-travel = a una lunghezza tornita di { $turned } { -mm } il contromandrino non può portare la pinza { $collet } in nessun punto dove possa serrare
grip-no-counter-spindle = la macchina non ha contromandrino
grip-forbidden = { $section } non si deve serrare
grip-wished-never = una richiesta vieta di serrare su { $section }
grip-front-too-thick = il diametro di { $front } { -mm } davanti a { $section } non passa nella pinza { $collet }, che si apre a { $passes } { -mm }
grip-too-deep = { $section } è troppo in profondità, il foro del contromandrino accetta una lunghezza di soli { $depth } { -mm }
grip-no-clear-length = { $section } non ha una lunghezza libera di { $hold } { -mm } per la pinza { $collet }
grip-more-sections = { $reasons }; { $more ->
    [one] neanche un altro tratto si può serrare
   *[other] neanche altri { $more } tratti si possono serrare
}
grip-too-early = il primo tratto su cui la pinza { $collet } può serrare è { $section }, e per questo la lunghezza tornita deve essere almeno { $from } { -mm }
grip-nothing-plain = l'albero non ha un tratto cilindrico liscio che una pinza possa serrare
grip-no-collet-fits = nessuna pinza va bene per un tratto cilindrico liscio ({ $diameters }): { $collets }
grip-collet-range = la pinza { $collet } serra da { $from } a { $to } { -mm }
length-mm = { $length } { -mm }

## Wishes

wish-impossible-no-counter-spindle = la richiesta «{ $wish }» non è possibile: la macchina non ha contromandrino
wish-impossible-no-stop = la richiesta «{ $wish }» non è possibile: lì l'avanzamento non si deve arrestare, su { $section }
wish-impossible-no-grip = la richiesta «{ $wish }» non è possibile: lì la pinza { $collet } non può serrare
wish-no-grip-goes-on = dopo la presa del contromandrino richiesta a { $at } { -mm } nessun serraggio permette di proseguire
wish-prevents = la richiesta «{ $wish }» impedisce un piano: { $reason }; senza questa richiesta il tempo ciclo è { $seconds } s
wishes-prevent = le richieste insieme impediscono un piano: { $reason }; senza di esse il tempo ciclo è { $seconds } s

## Changes

change-works = { $change }: tempo ciclo { $seconds } s
set-works = { $changes }: tempo ciclo { $seconds } s
change-saves = { $change }: risparmia { $seconds } s per pezzo
change-saves-most = { $change }: risparmia { $seconds } s per pezzo; il risparmio massimo è { $most } s: { $best }
change-drop-wish = rinunciare alla richiesta «{ $wish }»
change-rpm = ridurre la velocità a { $rpm } giri/min sul diametro della barra ({ $vc } { -m-min })
change-speed-floor = ammettere una velocità ridotta dove un limite lo richiede, fino a { $percent } % della velocità piena
change-ap-max = ammettere una profondità di passata di { $depth } { -mm } (se l'utensile lo permette)
change-no-bush = lavorare senza la bussola di guida
change-bush = lavorare con la bussola di guida
change-centre = tenere l'estremità anteriore con la contropunta del contromandrino (hold: centre)
change-tandem = sgrossare e finire in una sola passata con due utensili in tandem
change-opposed = tornire con utensili contrapposti, perché le loro forze radiali si equilibrino
change-interrupt = ammettere un arresto su { $section } (lascia un segno di ripresa)
change-grip = ammettere un serraggio su { $section }
change-straightness = ridurre la curvatura residua dell'albero tornito a { $bow } { -mm } per { -m }
change-collet = procurare una pinza per { $diameter } { -mm } (lunghezza di serraggio { $hold } { -mm }, forza di serraggio { $force } { -n })
change-collet-opens = procurare una pinza per { $diameter } { -mm } che si apra a { $opens } { -mm }, in modo che passi la parte anteriore più grossa (lunghezza di serraggio { $hold } { -mm }, forza di serraggio { $force } { -n })
change-bar = usare una barra da { $diameter } { -mm }
change-set-up = eseguire { $work } in un secondo piazzamento, come operazione a sé ({ $seconds } s di lavorazione e circa { $loading } s per caricare il pezzo)
change-turn-round = fare il pezzo dall'altra estremità: la faccia posteriore esce per prima dalla bussola
change-shop-machine = farlo su { $machine }
change-limit = allentare il limite { $limit } a { $value } (se il pezzo e la macchina lo permettono)
change-collet-run-out = usare nel contromandrino pinze con un'oscillazione di al massimo { $mm } { -mm }
change-section-run-out = ammettere { $times } volte l'oscillazione dei tratti (se l'ufficio tecnico è d'accordo)
change-shorter-stroke = far usare alla fantina solo { $stroke } { -mm } della sua corsa, con riserraggi più frequenti
change-axial-load = far mantenere al contromandrino una forza assiale di soli { $force } { -n } sull'albero
change-stroke = usare una macchina con una corsa della fantina di { $stroke } { -mm }
change-bush-max-bar = usare una macchina con una bussola di guida per { $bar } { -mm }
change-smaller-ap-max = usare una profondità di passata di al massimo { $depth } { -mm } (ap_max)
change-smaller-feed = usare un avanzamento di al massimo { $feed } { -mm-rev }
change-power = usare una macchina con { $power } kW alla fantina
change-torque = usare una macchina con { $torque } N·m alla fantina
change-feed-force = usare una macchina con una forza di avanzamento della fantina di { $force } { -n }
change-counter-torque = usare una macchina con { $torque } N·m al contromandrino
change-headstock-clamp-force = usare una pinza della fantina con una forza di serraggio di { $force } { -n } (se la barra lo permette)
change-farthest = usare un contromandrino che arrivi a { $farthest } { -mm } dalla faccia della bussola
change-bore-depth = usare un contromandrino con un foro profondo { $depth } { -mm }
change-bore = usare un contromandrino con un foro di { $bore } { -mm } di diametro
change-clamp-force = usare { $times } volte la forza di serraggio nel contromandrino: { $collets } (se il pezzo lo permette)
change-clamp-force-collet = pinza { $collet } { $force } { -n }
change-tray = lasciar cadere il pezzo in un raccoglipezzi per pezzi fino a { $length } { -mm } di lunghezza e { $diameter } { -mm } di diametro, se la macchina ne ha uno (part_off.tray)
change-sleeve = mettere manicotti di sostegno nel foro del contromandrino, a { $pitch } { -mm } l'uno dall'altro, { $stiffness } N/µm ciascuno
change-forming = stozzare l'esagono incassato { $size } con corse fini invece di punzonarlo
change-step = stozzare asportando { $step } { -mm } di profondità a ogni corsa
change-whirling = usare una macchina con un gruppo di turbinatura, per le filettature troppo lunghe per un utensile monotagliente
change-rolling = rullare le filettature troppo lunghe per un utensile monotagliente (`thread_by: rolling`), con rulli larghi quanto la filettatura
change-engagement = lasciare { $mm } { -mm } della lunghezza di guida della bussola su barra non tornita quando la barra viene arretrata (`engagement_min`)
change-tool-places = usare una macchina con { $number ->
    [one] { $number } posto
   *[other] { $number } posti
} per { $place }

## What was tried

progress-sets = ricerca di modifiche utili: combinazioni provate { $tried }, ora { $set }
tried-stopped = La ricerca di modifiche è stata interrotta. Si riporta quanto è noto finora
tried-bound = La ricerca di modifiche è finita al suo limite di calcolo, dopo { $sets } combinazioni di modifiche. Può esistere una combinazione utile
tried-forbidden = Nessuna combinazione di modifiche aiuta. Anche con tutte le { $changes } modifiche della lista insieme: { $reason }
tried-more = Nessuna combinazione fino a { $most } modifiche basta (combinazioni provate: { $sets }). Tutte le modifiche della lista insieme basterebbero
tried-all = Nessuna combinazione di modifiche basta per { $job } (combinazioni provate: { $sets })
progress-finer-stops = nessun piano con posizioni di arresto ogni { $coarse } { -mm }, si prova ogni { $fine } { -mm }

## Notes

note-not-listed = Non nella lista degli utensili: { $tools }. Per questi valgono i numeri sotto `cutting`
note-drive = Alle velocità di questo piano la tornitura richiede fino a { $power } kW del motore della fantina ({ $power_at }), una coppia di { $torque } N·m al mandrino ({ $torque_at }) e una forza di avanzamento di { $force } { -n } ({ $force_at })
note-drive-not-given = { $told }. Il file della macchina non indica { $keys }: controllare la macchina.
note-power-lowers = { $section }: la potenza della fantina di { $power } kW abbassa la velocità. Le sue passate girano al massimo a { $speeds } giri/min
note-ground = { $section } viene rettificato in seguito: tornito a { $turned }, rettificato a { $ground }
note-small-radius = { $section }: il raccordo ha un raggio di { $radius } { -mm }, e la punta dell'utensile lascia almeno { $nose } { -mm }
note-whirled = una filettatura è troppo lunga per arretrare la barra tra le passate di un utensile monotagliente, o lo dice `thread_by`: viene turbinata in una sola passata
note-whirled-assumed = una filettatura è troppo lunga per arretrare la barra tra le passate di un utensile monotagliente, o lo dice `thread_by`: viene turbinata in una sola passata. Si presume un gruppo di turbinatura, perché il file della macchina non elenca posti utensile. Scrivere `tools` con `whirling: 1`, o senza `whirling` se la macchina non ne ha
note-rolled = { $section }: la filettatura è rullata su un diametro di preparazione di { $blank } { -mm }, circa il diametro medio. I rulli devono essere larghi almeno quanto la filettatura, { $length } { -mm }. Trovare con prove il diametro di preparazione esatto; la forza non è calcolata
note-left-hand = { $section }: { $thread } è una filettatura sinistra. Controllare senso del mandrino, avanzamento e utensile
note-passive-deep = Le forze passive sono state confrontate con forze misurate fino a una profondità di passata di { $measured } { -mm }. Qui la passata più profonda è { $depth } { -mm }, perciò la sua forza passiva è estrapolata.
note-passive-floor = Dove il tagliente dà una forza passiva più piccola, vale { $share } della forza principale (cutting.passive_floor; pratica comune, senza fonte).
note-chips-of-drill = Il truciolo della punta da { $size } { -mm } è spesso { $chip } { -mm }; la sua forza è estrapolata: le forze di taglio specifiche sono note per trucioli da { $low } a { $high } { -mm }. Trucioli più sottili richiedono più forza di quella estrapolata, perché il tagliente non è perfettamente affilato.
note-chips-of-tap = Il truciolo del maschio da { $size } { -mm } è spesso { $chip } { -mm }; la sua forza è estrapolata: le forze di taglio specifiche sono note per trucioli da { $low } a { $high } { -mm }. Trucioli più sottili richiedono più forza di quella estrapolata, perché il tagliente non è perfettamente affilato.
note-chips-of-cutter = Il truciolo della fresa da { $size } { -mm } è spesso in media { $chip } { -mm }; la sua forza è estrapolata: le forze di taglio specifiche sono note per trucioli da { $low } a { $high } { -mm }. Trucioli più sottili richiedono più forza di quella estrapolata, perché il tagliente non è perfettamente affilato.
note-chips-of-turning = Il truciolo di tornitura con un avanzamento di { $size } { -mm-rev } è spesso { $chip } { -mm }; la sua forza è estrapolata: le forze di taglio specifiche sono note per trucioli da { $low } a { $high } { -mm }. Trucioli più sottili richiedono più forza di quella estrapolata, perché il tagliente non è perfettamente affilato.
note-drill-size = La spinta della punta da { $size } { -mm } è estrapolata: la sua formula è nota per punte di diametro da { $low } a { $high } { -mm }.
note-class-assumed = Punte, maschi e frese lavorano come in { $class }. Lo si è presunto da modulo, densità e kc1.1 di { $material }. Indicare `class` in shaft.material se è altro.
note-feed-lowered = { $section }: avanzamento ridotto da { $given } a { $feed } { -mm-rev } per ottenere Ra { $ra } { -um }, con { $factor } volte la rugosità ideale (cutting.ra_factor)
note-ra-floor = { $section }: Ra { $ra } { -um } non è sopra la finitura che la tornitura lascia a qualsiasi avanzamento, { $floor } { -um } (cutting.ra_floor). L'avanzamento è quello per { $floor } { -um }. Rettificare o lucidare questa superficie, oppure abbassare ra_floor se la macchina tornisce più fine.
note-unusual-pitch = { $thread }: { $standard } non contiene una filettatura simile; verificare che ci sia un utensile
note-falls-by-default = Il pezzo cade alla troncatura, perché è piccolo: senza part_off.tray nel file della macchina è ammesso che cadano pezzi fino a { $length } { -mm } di lunghezza e { $diameter } { -mm } di diametro (pratica comune, senza fonte). Se la macchina non ha un raccoglipezzi, o ne ha uno più piccolo, indicare part_off.tray: con una lunghezza di 0 non cade nessun pezzo.
note-centre = La contropunta arriva quando l'estremità anteriore è finita e si ritira prima della troncatura. Per le due cose insieme si conta il tempo di una presa del contromandrino (pratica comune, senza fonte).
note-torque-share = La verifica più critica è la coppia di troncatura, e l'ultimo serraggio vale per tutta la coppia. Per la sola torsione della barra, a questo serraggio ne andrebbe una quota di { $percent } %. Per tenerne conto indicare `torsional_stiffness` del contromandrino.
note-no-limit-costs = Nessun limite costa tempo: nessun limite da solo, se allentato, dà un piano più rapido.
note-rule-left-out = { $rule }; questa regola è stata omessa per i valori mostrati qui
optimum-proven = non esiste un piano più rapido (provate { $stops } posizioni di arresto)
note-slow-cutting = La velocità ridotta su { $section } è una velocità di taglio di { $speed } { -m-min }, sotto il campo consueto da { $low } a { $high } { -m-min } di { $material }. La superficie può risultare più ruvida. Controllarla sul primo pezzo.
optimum-gap = al massimo { $percent } % più lento del piano più rapido possibile (provate { $stops } posizioni di arresto)

## The timeline

timeline-hand-over = presa del contromandrino a { $at } { -mm }
timeline-centre = contropunta: arriva prima della prima passata, si ritira prima della troncatura
timeline-regrip = riserraggio della fantina a { $at } { -mm }
timeline-part-off = troncatura
timeline-part-off-falls = troncatura, il pezzo cade nel raccoglipezzi
timeline-unload = scarico del pezzo
critical-hand-overs = prese del contromandrino
critical-regrips = riserraggi della fantina
critical-tool-changes = cambi utensile
critical-cutting = taglio { $section }
critical-overhead = accostamento e ritorno

## Tolerances

tolerance-not-in-table = la tabella delle classi di tolleranza non contiene un diametro di { $diameter } mm, arriva a { $most } mm
tolerance-not-in-table-help = indicare gli scostamenti in mm: `tolerance: [-0.05 mm, 0]`

## The mechanics at one moment

at-out-of-range = `--{ $option }` è { $value }
at-out-of-range-help = `--{ $option }` deve essere da { $low } a { $high }
at-not-held = in questo stato nulla tiene la barra
at-not-held-help = controllare le rigidezze nel file della macchina
at-no-counter-spindle = la macchina non ha contromandrino
at-no-counter-spindle-help = omettere `--grip`
at-grip-on-centre = Con `hold: centre` nessuna pinza tiene l'estremità anteriore
at-grip-on-centre-help = Omettere `--grip`, oppure scrivere `hold: collet` nel lavoro
at-no-such-collet = la macchina non ha la pinza { $collet }
at-no-such-collet-help = le sue pinze sono: { $collets }
at-no-collet-fits = nessuna pinza della macchina serra { $diameter } { -mm }, il diametro a { $at } { -mm }
at-no-collet-fits-help = spostare `--grip`, oppure scegliere una pinza per il calcolo con `--collet`: { $collets }
at-stage-end-with-bush = `--stage-end` serve per lavorare senza bussola
at-stage-end-with-bush-help = omettere `--stage-end`
at-headstock-without-bush = `--headstock` serve per lavorare con la bussola di guida
at-headstock-without-bush-help = usare `--stage-end`: senza bussola la pinza della fantina è posizionata per la fine della fase
at-cannot-be-cut-help = eseguire `check` per vedere che cosa aiuterebbe

## A place of a plan moved by hand

move-no-plan = non c'è un piano, perciò non si può spostare nulla
move-no-plan-help = correggere prima il lavoro
move-not-there = la posizione non si può spostare lì
move-not-there-help = una fase deve conservare una lunghezza, e una presa del contromandrino deve restare tra le due prese vicine
move-off-shaft = la pinza non sarebbe sull'albero

## Faults found by the proof

proof-failed = il piano non supera la controprova ({ $rule }: { $text })
proof-limit = a una lunghezza tornita di { $turned } { -mm } il valore è { $demand }, il limite è { $limit }
proof-no-plan = questo non è un piano fattibile
proof-no-such-collet = la macchina non ha la pinza { $collet }
proof-no-counter-spindle = il piano usa la pinza { $collet }, ma la macchina non ha contromandrino
proof-way-of-turning = il piano è per { $holding } e { $tools }, il lavoro chiede { $job_holding } e { $job_tools }
proof-bar-too-thick = la barra da { $bar } { -mm } è troppo grossa, questo modo di tornire accetta al massimo { $most } { -mm }
proof-stage-order = la fase va da { $from } a { $to } { -mm }, ma la fase precedente finisce a { $before } { -mm }
proof-free-stage = l'estremità anteriore deve essere libera nella prima fase, e in nessun'altra
proof-centre-not-asked = il piano ha una contropunta, e il lavoro non la chiede
proof-centre-told = il piano non riporta la contropunta del lavoro
proof-centre-stages = con la contropunta tutto il pezzo è una sola fase
proof-centre-travel = alla fine il naso del contromandrino è a { $at } { -mm } dalla faccia della bussola, e la sua corsa arriva a { $farthest } { -mm }
proof-driven = la passata da { $from } a { $to } { -mm } richiede { $needed }, e la fantina ha { $limit }
proof-drive = il piano indica per la fantina un fabbisogno diverso da { $power } kW, { $torque } N·m e { $force } { -n }
proof-bar-feed = la passata da { $from } a { $to } { -mm } si esegue a { $rpm } giri/min, ma il caricatore di barre ammette al massimo { $most }
proof-part-off-told = ciò che il piano dice del pezzo alla troncatura non concorda con la sua ultima fase e con la macchina
proof-falls-rear-work = nulla tiene il pezzo alla troncatura, ma dopo si deve lavorare la sua estremità posteriore
proof-too-large-to-fall = nulla tiene il pezzo alla troncatura, e con { $length } { -mm } di lunghezza e { $diameter } { -mm } di diametro non deve cadere: per cadere sono ammessi al massimo { $most_length } { -mm } di lunghezza e { $most_diameter } { -mm } di diametro
proof-end = l'ultima fase finisce a { $end } { -mm }, ma la troncatura è a { $part_off } { -mm }
proof-no-stop = l'avanzamento non si deve arrestare a { $at } { -mm }
proof-hand-overs-listed = l'elenco delle prese del contromandrino non concorda con le fasi
proof-regrips-listed = l'elenco dei riserraggi della fantina non concorda con le fasi
proof-no-feed-out = senza bussola ogni fase dopo la prima deve cominciare con un riserraggio della fantina
proof-regrip-outside = il riserraggio della fantina a { $at } { -mm } è fuori dalla sua fase
proof-regrip-front-free = la fantina si apre a { $at } { -mm } mentre l'estremità anteriore è libera
proof-stroke = da { $from } a { $to } { -mm } alla fantina servirebbe più della sua corsa di { $stroke } { -mm }
proof-grip-no-collet = la fase ha un serraggio, ma il piano non ha una pinza
proof-grip-length = il serraggio non ha la lunghezza di serraggio della pinza
proof-grip-forbidden = { $section } non si deve serrare
proof-grip-diameter = la pinza { $collet } non serra { $diameter } { -mm }
proof-grip-described = il piano dice che il serraggio è su { $diameter } { -mm } del tratto { $section }, ma è su { $real_diameter } { -mm } del tratto { $real_section }
proof-grip-not-plain = il serraggio da { $from } a { $to } { -mm } non è su un solo cilindro
proof-grip-feature = un foro o una cava per linguetta da { $from } a { $to } { -mm } è sotto il serraggio
proof-grip-front = il diametro di { $front } { -mm } davanti al serraggio non passa nella pinza { $collet }, che si apre a { $passes } { -mm }
proof-grip-depth = { $length } { -mm } dell'albero non entrano nel foro del contromandrino, profondo { $depth } { -mm }
proof-grip-not-turned = a una lunghezza tornita di { $turned } { -mm } il serraggio fino a { $to } { -mm } non è ancora tornito
proof-grip-travel = a una lunghezza tornita di { $turned } { -mm } la pinza è a { $distance } { -mm } dalla faccia della bussola; il campo ammesso va da { $nearest } a { $farthest } { -mm }
proof-time = il piano indica { $given } s per { $name }, ma la somma è { $sum } s
proof-cycle-time = il piano indica un tempo ciclo di { $given } s, ma le operazioni danno { $sum } s
proof-wish = la richiesta «{ $wish }» non è rispettata
proof-wish-grip = il serraggio da { $from } a { $to } { -mm } è contro la richiesta «non serrare mai { $name }»
proof-wish-hand-overs = prese del contromandrino nel piano: { $number }, ma la richiesta ne ammette al massimo { $most }
proof-cut-not-as-asked = la passata da { $from } a { $to } { -mm } non è come chiede il lavoro
proof-cut-missing = nessuna passata lavora la lunghezza da { $from } a { $to } { -mm }
proof-speed = da { $from } a { $to } { -mm } il piano prevede { $rpm } giri/min, il lavoro chiede { $wanted } giri/min
proof-speed-range = da { $from } a { $to } { -mm } il piano prevede { $rpm } giri/min, il lavoro chiede da { $least } a { $wanted } giri/min
proof-not-held = nulla tiene la barra
proof-not-held-at = a una lunghezza tornita di { $turned } { -mm } nulla tiene la barra
proof-not-held-open = nulla tiene la barra mentre la pinza del contromandrino è aperta
proof-not-held-last = l'ultimo serraggio non tiene il pezzo
proof-no-tool-place = la macchina non ha un posto per ogni utensile
proof-timeline-order = il diagramma dei tempi non mostra le lavorazioni agli arresti nell'ordine confermato dalla controprova
proof-fed-on = { $work }: si esegue a una lunghezza tornita di { $turned } { -mm }, ma la macchina non può far avanzare la barra fin lì
proof-work-missing = { $work }: non si esegue dove il suo utensile può arrivare
proof-work-stage = { $work }: a una lunghezza tornita di { $turned } { -mm } non appartiene a questa fase
proof-length = il piano dice { $told } { -mm }, ma l'albero è lungo { $length } { -mm }
proof-margin = il piano dice { $told }, ma la controprova trova { $proven }
proof-margin-missing = il piano non indica un margine, ma la controprova trova { $proven }
proof-margin-at = { $check } utilizza { $used } del suo limite, e questo non dà un margine di { $margin }
proof-line-missing = l'arresto a { $at } { -mm } lascia un segno di ripresa che non è nel piano
proof-line-without-stop = il piano ha un segno di ripresa a { $at } { -mm }, ma lì l'avanzamento non si arresta
proof-line-section = il segno di ripresa a { $at } { -mm } è sul tratto { $section }, contrassegno { $interrupt }
proof-pieces = pezzi per barra: il piano dice { $told }, ma una barra ne dà { $real }
proof-material = il piano dice { $told_kg } kg per pezzo e uno spezzone di { $told_mm } { -mm }, ma sono { $kg } kg e { $mm } { -mm }
proof-cost = il piano dice { $told } per pezzo, ma il costo è { $real }
proof-cost-no-rates = il piano dice { $told } per pezzo, ma il lavoro non indica tariffe
proof-cost-missing = il piano non indica un costo, ma le tariffe del lavoro danno { $real }

## Cautions: general rules of safe turning, common practice, no source

estimate = È una stima: decidono il manuale della macchina, le norme locali e un attrezzista qualificato.
caution-not-a-plan = Non eseguirlo: non è un piano. Le fasi mostrano soltanto fin dove arriverebbe la lavorazione entro i suoi limiti.
caution-twice = { $own } (English: { $english })
caution-read-first = Prima dell'attrezzaggio leggere le avvertenze nelle pagine seguenti. Decidono il manuale della macchina, le norme locali e un attrezzista qualificato.
caution-estimate = È una stima. Le forze di taglio sono precise a ± 25 % nel migliore dei casi. Le rigidezze sono attendibili solo quanto i valori indicati per la macchina.
caution-who-decides = Decidono il manuale della macchina, le norme locali e un attrezzista qualificato. Se differiscono da questo piano, seguire quelli e non il piano.
caution-first-piece = Provare il primo pezzo a velocità e avanzamento ridotti, blocco per blocco, con le porte chiuse. Misurarlo prima di aumentare la velocità o l'avanzamento.
caution-limits = Non superare mai i limiti di una fase: la sua lunghezza tornita, la sua lunghezza non sostenuta, la sua velocità. Valgono anche i limiti della macchina, delle pinze e del caricatore di barre. Vale il limite più basso.
caution-at-risk = Questo piano è A RISCHIO. Con dati incerti, solo { $good } pezzi simulati su 100 restano entro ogni limite. Aumentare velocità e profondità a piccoli passi, osservare la barra a ogni passo, e fermarsi quando vibra, dà colpi di frusta o esce di quota.
caution-bar-behind = Mai una barra senza sostegno dietro il mandrino della fantina: sopra una certa velocità si piega verso l'esterno e colpisce. Guidare la barra per tutta la sua lunghezza, oppure tagliarla più corta.
caution-front-free = { $number ->
    [one] Nella fase { $stages } l'estremità anteriore del pezzo gira libera. Stare fuori dal suo piano di rotazione, e aumentare la velocità a passi successivi.
   *[other] Nelle fasi { $stages } l'estremità anteriore del pezzo gira libera. Stare fuori dal suo piano di rotazione, e aumentare la velocità a passi successivi.
}
caution-counter-spindle = Pezzo nel contromandrino: controllare la pinza, il serraggio e la sincronizzazione prima che si apra la pinza della fantina, e di nuovo prima della troncatura. Se il serraggio o la sincronizzazione vengono a mancare, i due mandrini devono fermarsi insieme.
caution-front-long = L'estremità anteriore libera diventa lunga { $ratio } volte il suo diametro. Un'estremità lunga e sottile può dare colpi di frusta: aumentare la velocità a passi successivi, osservarla, e stare fuori dalla sua portata.
caution-centre = Una contropunta sostiene l'estremità anteriore: ingrassarla o raffreddarla, regolarne la forza prima che la barra giri, e controllare che il foro da centro sia pulito. Non tornire la fase senza di essa. Deve ritirarsi prima della troncatura; poi l'estremità anteriore gira libera, perciò stare fuori dal suo piano di rotazione.
caution-thin-wall = La parete è di soli { $wall } { -mm } dove una pinza tiene Ø{ $held } { -mm }. La pinza può schiacciarla: serrare con meno forza, oppure mettere un tampone nel foro, e misurare il primo pezzo.
caution-part-off-not-held = Nulla tiene il pezzo alla troncatura: si stacca mentre gira. Troncare lentamente, far cadere il pezzo in un raccoglipezzi, stare fuori dalla sua traiettoria e non allungare mai la mano verso di esso.
caution-part-falls = Il pezzo cade nel raccoglipezzi alla troncatura. Si stacca mentre gira: può impigliarsi nell'utensile, e cadendo può segnarsi o piegarsi. Rallentare l'ultima parte del taglio, tenere libera la via verso il raccoglipezzi, tenere le porte chiuse, e guardare i primi pezzi prima di proseguire.
caution-no-bush = Senza la bussola di guida, solo la pinza della fantina tiene la barra. Non superare le lunghezze indicate.
caution-fixed-bush = La bussola di guida è fissa, non gira con la barra, e il diametro della barra { $bar } può variare di { $width } { -mm }, cioè di { $side } { -mm } per lato. Una bussola fissa richiede da { $least } a { $widest } { -mm } di gioco per lato, quindi barra h6 o h7 (al massimo { $most } { -mm }). In una bussola troppo larga il pezzo risulta fuori rotondità; in una troppo stretta la barra grippa. Usare barra rettificata, una bussola che gira con la barra, oppure lavorare senza la bussola.
caution-fixed-bush-unknown = La bussola di guida è fissa, non gira con la barra, e la tolleranza della barra non è indicata. Una bussola fissa richiede da { $least } a { $widest } { -mm } di gioco per lato, quindi barra rettificata h6 o h7 (al massimo { $most } { -mm }). La barra trafilata o pelata (da h9 a h12) richiede una bussola che gira con la barra, oppure il lavoro senza la bussola.
caution-following-bush = La bussola di guida gira con la barra, e il diametro della barra { $bar } può variare di { $width } { -mm }. Una bussola di questo tipo accetta barra fino a circa h9 (al massimo { $most } { -mm }; pratica comune). In una bussola troppo larga il pezzo risulta fuori rotondità; in una troppo stretta la barra si blocca. Usare barra h9 o più precisa, oppure lavorare senza la bussola.
caution-following-bush-unknown = La bussola di guida gira con la barra, e la tolleranza della barra non è indicata. Una bussola di questo tipo accetta barra fino a circa h9 (al massimo { $most } { -mm }; pratica comune). Usare barra h9 o più precisa, oppure lavorare senza la bussola.
caution-bored = La rigidezza non tiene conto di fori, esagoni incassati e cave interne: in quei punti l'albero è più cedevole di quanto calcolato.
caution-cross-work = La rigidezza non tiene conto di fori trasversali e cave per linguetta: in quei punti l'albero è più cedevole di quanto calcolato.
caution-work-aside = Mentre si lavora l'estremità posteriore di un pezzo, il pezzo seguente viene già tornito alla sua estremità anteriore. Assicurarsi che contromandrino, pezzo e utensili restino a distanza dal pezzo seguente in ogni posizione. Provarlo prima senza pezzo.
caution-shaving = Gli utensili per stozzare e per punzonare non girano. Il mandrino deve stare fermo, essere tenuto nella sua posizione angolare ed essere bloccato contro l'avviamento durante le loro corse. La forza agisce lungo l'asse: controllare prima il serraggio.
caution-never-line = L'avanzamento si arresta per un elemento su una superficie contrassegnata «never» e vi lascia un segno di ripresa: { $places }. Concordarlo con l'ufficio tecnico, oppure eseguire l'elemento altrove.
caution-never-line-place = { $at } { -mm } su { $section }
caution-section = tratto { $number }
caution-section-named = tratto { $number } ({ $name })
caution-not-a-program = Questa tabella non è un programma: nessuna macchina deve eseguirla. Un programmatore qualificato deve ricavarne un programma: aggiungere distanze di sicurezza, ritiri, le velocità che la tabella non indica e tutti gli interblocchi. Provare prima il programma a vuoto, senza pezzo. Vale il manuale della macchina.
caution-chips = I trucioli lunghi si avvolgono attorno ai pezzi snelli. Fermare la macchina per toglierli. Non toglierli mai con le mani mentre la macchina gira.

## Roughing and finishing

tandem-no-bush = non c'è bussola di guida, perciò l'ultima passata si fa a sé
tandem-no-tools = la macchina non elenca due utensili adatti (`opposed` o `tandem` nei suoi utensili)
tandem-back = al suo lato anteriore il diametro scende con un gradino, e i due utensili dovrebbero essere per tornitura posteriore
tandem-in-counter-spindle = il contromandrino arriva a { $nearest } { -mm } dalla bussola, e l'utensile di finitura vi si troverebbe dentro
tandem-step = quando l'utensile di sgrossatura si stacca alla fine, il diametro varia di { $step } { -um }, e sono ammessi al massimo { $limit } { -um }
note-one-cut = { $section } richiede { $asked } e viene tornito con { $depth } { -mm } di profondità in una sola passata, senza passata di finitura. { $instead }
note-one-cut-both = È possibile un'ultima passata senza segno (`finish_pass: true`), oppure un secondo utensile finisce nella stessa passata (`tools: tandem`).
note-one-cut-pass = È possibile un'ultima passata senza segno (`finish_pass: true`).
note-one-cut-tandem = Non si può arretrare per intero per un'ultima passata. Un secondo utensile può finire nella stessa passata (`tools: tandem`).
note-one-cut-why = Non si può arretrare per intero per un'ultima passata, né possono tagliarlo due utensili in una sola passata: { $why }.
note-tandem = Sgrossati e finiti in una sola passata da due utensili: { $sections }.
note-tandem-last-pass = { $section } ha un'ultima passata a sé. I due utensili del tandem non lo tagliano: { $why }.
asked-ra = Ra { $ra }
asked-tolerance = una tolleranza di { $width } { -mm }
asked-both = una tolleranza di { $width } { -mm } con Ra { $ra }
progress-confidence = ricerca di un piano che regga in una quota di pezzi simulati pari a { $share }
plan-confidence-range = serve una quota di pezzi, { $range }: scrivere 0.95 per 95 pezzi su 100
measure-support = { $reading }. `spanhold fit` ricava da queste letture una rigidezza e la sua dispersione
measure-centre = Premere una barra di prova con la contropunta, caricarla di lato accanto alla contropunta e leggere lì un comparatore: il carico diviso per l'inflessione, tolta la flessione della barra, è la sua rigidezza
measure-sleeve = Caricare di lato una barra di prova dentro il contromandrino, accanto a un sostegno, e leggere lì un comparatore
measure-kc = Tornire una passata di prova abbastanza profonda da leggere la potenza del mandrino principale con e senza di essa. La differenza divisa per sezione del truciolo e velocità di taglio è kc allo spessore del truciolo h di quella passata. Scrivere kc per h (in mm) elevato a mc come kc11 di un materiale proprio
measure-passive = Tornire due volte un'estremità libera alla stessa profondità, vicino alla pinza e lontano da essa. I diametri differiscono del doppio della forza passiva diviso per la rigidezza in quel punto
measure-e = Appoggiare la barra su due sostegni, caricarla al centro e leggere lì un comparatore. Misurare il diametro con la precisione di { $fine } { -mm }: E si ricava dall'inflessione
measure-damping = Dare un colpetto alla barra serrata, registrare l'oscillazione smorzata e contare le oscillazioni n finché si dimezza: il rapporto di smorzamento è 0,11 / n
measure-ra = Misurare Ra di un pezzo tornito. Dividerlo per il rapporto tra l'avanzamento al quadrato e 32 raggi di punta, e scrivere il risultato come cutting.ra_factor
measure-straightness = Tornire alcuni pezzi, farli rotolare uno alla volta su due sostegni e leggere un comparatore al centro. La rettilineità è metà della lettura media, divisa per il quadrato della distanza dei sostegni in metri
measure-bar = Misurare le barre del lotto alle due estremità e scriverne la tolleranza o scatter.bar
measure-run-out = Serrare una spina rettificata nella pinza, farla girare e leggere un comparatore. Scrivere la lettura come run_out della pinza
sampled-no-plan-help = serve prima un piano; vedere che cosa lo impedisce
sampled-no-part = non c'è un pezzo simulato con questo numero
sampled-no-part-help = indicare un numero da 1 a { $samples }
recheck-holds = Regge in { $good } pezzi simulati su 100.
recheck-holds-told = Regge in { $good } pezzi simulati su 100; il piano dice { $told }.
recheck-at-risk = A RISCHIO: regge soltanto in { $good } pezzi simulati su 100.
recheck-at-risk-told = A RISCHIO: regge soltanto in { $good } pezzi simulati su 100; il piano dice { $told }.
measure-counter-spindle = Serrare una barra di prova con un diametro che una delle pinze tiene, caricarla accanto al naso e leggere lì un comparatore. `spanhold fit` ricava da queste letture una rigidezza e la sua dispersione
