# Drawings and tables of sections; stiffnesses from readings.

# Stiffnesses from readings.
fit-loose-bar = Un montaggio non tiene la barra
fit-loose-bar-help = Controllare `grip` e `holding`. La barra deve essere tenuta in due punti
fit-spindle-never-used = Nessun montaggio tiene la barra nel contromandrino, perciò la sua rigidezza non si può trovare
fit-undetermined = Queste letture non bastano per la rigidezza di: { $supports }
fit-leave-out = Oppure scrivere `fit: [{ $supports }]`
fit-other-bar = Misurare con una barra più grossa e più corta, in modo che il sostegno ceda più della barra
fit-add = Aggiungere { $reading }. Darebbe la rigidezza di { $supports } a ± { $error } % o meglio
fit-add-several = Aggiungere più letture. La più utile è { $reading }, ma da sola non basta per { $supports }
fit-reading-in = una lettura { $reading } (circa { $expected } µm) nel montaggio `{ $set_up }`
fit-reading-of-new = un montaggio con `{ $key }` e una lettura { $reading } (circa { $expected } µm)
fit-load-free = Serrare una barra di prova Ø{ $bar } con il naso della fantina { $headstock } { -mm } dietro la faccia della bussola e { $front } { -mm } di barra davanti ad essa. Caricarla con { $load } { -n }, { $at } { -mm } { $behind ->
    [yes] dietro
   *[no] davanti
} alla faccia della bussola, e leggere lì un comparatore (circa { $expected } { -um })
fit-load-gripped = Serrare una barra di prova Ø{ $bar } con il naso della fantina { $headstock } { -mm } dietro la faccia della bussola, e serrarla anche con il contromandrino, il cui naso sta a { $nose } { -mm } davanti alla faccia della bussola. Caricarla con { $load } { -n }, { $at } { -mm } { $behind ->
    [yes] dietro
   *[no] davanti
} alla faccia della bussola, e leggere lì un comparatore (circa { $expected } { -um })
fit-load-no-bush = Serrare una barra di prova Ø{ $bar } nella fantina senza la bussola, con { $front } { -mm } di barra sporgenti davanti. Caricarla con { $load } { -n }, { $at } { -mm } davanti al naso della fantina, e leggere lì un comparatore (circa { $expected } { -um })
fit-load-no-bush-gripped = Serrare una barra di prova Ø{ $bar } nella fantina senza la bussola, e serrarla anche con il contromandrino, il cui naso sta a { $nose } { -mm } davanti al naso della fantina. Caricarla con { $load } { -n }, { $at } { -mm } davanti al naso della fantina, e leggere lì un comparatore (circa { $expected } { -um })
fit-misfit = Nessuna rigidezza concorda con le letture. Lo scostamento maggiore è a { $reading } di { $set_up }: misurato { $measured } { $unit }, calcolato { $fitted } { $unit }
fit-misfit-help = Controllarne il punto e le unità (N, mm, µm, Hz). Precaricare la barra contro il gioco. Se la lettura è giusta, scrivere `errors` più grandi
fit-dial-reading = lettura del comparatore { $number }
fit-tap = prova a percussione
fit-note-no-spare = Ci sono tante letture quante rigidezze, perciò il risultato non si può controllare. Aggiungere letture.
fit-note-misfit = Le letture differiscono dal risultato { $times } volte più di quanto i loro errori ammettano. Gli errori tipo sono ingranditi di questo fattore. Controllare se c'è gioco, un serraggio che slitta o un punto sbagliato.
fit-note-fixed = Non calcolati, presi dal file della macchina: { $supports }.
fit-note-sleeves = I sostegni nel foro del contromandrino hanno la rigidezza del file della macchina. Non vengono calcolati.

# Drawings: what prevents a draft.
draft-is-dwg = `{ $file }` è un file DWG, non un file DXF
draft-is-dwg-help = Salvare il disegno come DXF (ASCII o binario, versione da R12 a 2018)
draft-not-dxf = `{ $file }` non si può leggere come DXF (versione { $version }): { $reason }
draft-not-dxf-help = Salvare il disegno come DXF ASCII di un'altra versione, da R12 a 2018, e provare con quel file
draft-reader-failed = il contenuto è danneggiato
draft-empty = `{ $file }` non contiene un disegno
draft-empty-help = Controllare che sia un file DXF e che l'albero sia nello spazio modello
draft-damaged = `{ $file }` è danneggiato: si leggono { $read } entità { $kind } su { $there }
draft-damaged-help = Aprire il file nel programma CAD, ripararlo e salvarlo di nuovo
draft-unknown-file = Il tipo di `{ $file }` è sconosciuto
draft-unknown-file-help = Indicare un disegno (.dxf) o una tabella (.csv, .xlsx)
draft-sections = `{ $file }` dà { $sections ->
    [one] { $sections } tratto
   *[other] { $sections } tratti
}
draft-sections-help = Un albero ha da 1 a { $most } tratti
draft-no-job = La bozza di `{ $file }` non si può usare come lavoro per un piano
draft-no-job-help = Correggere gli errori qui sotto. Le loro posizioni sono nel testo della bozza
draft-no-contour = Il disegno non ha linee per un contorno
draft-no-contour-help = Disegnare il contorno con linee continue, non su layer per quote, cornici, tratteggi o testi
draft-no-axis = Non si trova un asse: non ci sono né una linea d'asse, né una simmetria, né un lato diritto di un mezzo contorno
draft-no-axis-help = Disegnare l'asse lungo tutto l'albero come linea su un layer CENTER, oppure con il tipo di linea CENTER
draft-open-contour = Il contorno è aperto tra { $from } e { $to }
draft-open-contour-help = Chiudere il contorno nel disegno, oppure usare un `--gap` più grande. Ora si chiudono interruzioni fino a { $gap } mm
draft-no-profile = Nessuna linea del contorno è lungo l'asse
draft-no-profile-help = Controllare che l'asse nel disegno sia l'asse dell'albero

# Drawings: what was found and assumed.
draft-axis-is-line = L'asse è la linea d'asse da { $from } a { $to } sul layer `{ $layer }`.
draft-axis-is-symmetry-level = Non c'è una linea d'asse. L'asse è la linea di simmetria orizzontale per { $through }.
draft-axis-is-symmetry-upright = Non c'è una linea d'asse. L'asse è la linea di simmetria verticale per { $through }.
draft-axis-is-side = CONTROLLARE: Non ci sono né una linea d'asse né una simmetria. Il disegno è letto come mezzo albero: il suo asse è il lato diritto a { $axis } = { $at }, e i diametri sono il doppio della distanza da esso.
draft-axis-through-ends = CONTROLLARE: Non ci sono né una linea d'asse né una simmetria. Il disegno è letto come mezzo albero: il suo asse è la linea per le sue estremità aperte { $from } e { $to }.
draft-halves-differ = CONTROLLARE: Le due metà del contorno differiscono, la prima volta a { $at }: diametro { $used } da un lato, { $other } dall'altro. Si usa il primo.
draft-front-left = CONTROLLARE: L'estremità anteriore (la prima a uscire dalla bussola di guida) è quella sinistra, a { $at }. Chiamare con `--flip` se è quella destra.
draft-front-right = CONTROLLARE: L'estremità anteriore (la prima a uscire dalla bussola di guida) è quella destra, a { $at }. Chiamare senza `--flip` se è quella sinistra.
draft-front-lower = CONTROLLARE: L'estremità anteriore (la prima a uscire dalla bussola di guida) è quella inferiore, a { $at }. Chiamare con `--flip` se è quella superiore.
draft-front-upper = CONTROLLARE: L'estremità anteriore (la prima a uscire dalla bussola di guida) è quella superiore, a { $at }. Chiamare senza `--flip` se è quella inferiore.
draft-unit = L'unità del disegno è { $unit }: 1 corrisponde a { $mm } mm.
draft-unit-of-call = L'unità nel disegno è { $unit }, ma la chiamata dice { $used }. Il disegno è letto in { $used }.
draft-no-unit = CONTROLLARE: Il disegno non ha un'unità. È letto in mm. Se l'unità è il pollice, chiamare con `--units inch`.
draft-no-unit-but-metric = CONTROLLARE: Il disegno non ha un'unità, ma è contrassegnato come metrico. È letto in mm. Se l'unità è il pollice, chiamare con `--units inch`.
unit-inches = pollici
draft-scale = CONTROLLARE: Le quote sono { $factor } volte le lunghezze disegnate. Il disegno è letto in scala { $scale }. Se è disegnato 1:1, chiamare con `--scale 1`.
draft-factor-of-new = CONTROLLARE: Il disegno non ha quote, ma la sua impostazione per nuove quote è { $factor } volte le lunghezze disegnate. Il lavoro ha le lunghezze disegnate. Se il disegno è in scala 1:2, chiamare con `--scale 0.5`.
draft-other-factor = CONTROLLARE: { $count ->
    [one] { $count } quota è
   *[other] { $count } quote sono
} { $factor } volte la lunghezza disegnata, la prima a { $at }. La maggior parte delle quote è { $used } volte la lunghezza disegnata. Il lavoro segue la maggior parte delle quote. Se è sbagliato, chiamare con `--scale`.
draft-arc = CONTROLLARE: L'arco di raggio { $radius } mm a { $at } diventa un cono diritto nel lavoro.
section-with-radius = con raggio { $radius } mm
section-with-chamfer = con smusso { $chamfer }
section-from-arc = CONTROLLARE: arco di raggio { $radius } mm nel disegno
draft-needs-tolerance = CONTROLLARE: Il tratto { $section } (diametro { $diameter } mm) è troppo sottile per una tolleranza generale. Aggiungere `tolerance`.
draft-inside = DENTRO IL CONTORNO, non usati (spigoli, fori, filettature, cave per linguetta): { $count } { $kind } sul layer `{ $layer }`, il primo a { $at }.
draft-beside = NON PARTE DEL CONTORNO: { $count } { $kind } sul layer `{ $layer }`, il primo a { $at }.
draft-beside-near = CONTROLLARE: Uno di questi finisce a { $distance } mm dal contorno, a { $at }. Se appartiene al contorno, usare un `--gap` più grande.
draft-not-read = NON LETTI: { $count } { $kind } sul layer `{ $layer }`, il primo a { $at }: { $why }.
draft-not-understood = NON COMPRESO: { $entity } `{ $text }` sul layer `{ $layer }` a { $at }: { $why }.

# Why an entity is not read.
entity-unknown = questo tipo di entità non è ammesso
entity-hidden = è nascosta
entity-squeezed = è inclinata o ha una scala non uniforme
entity-squeezed-arc = questo arco ha una scala non uniforme
entity-mesh = è una mesh
entity-at-angle = è inclinata
entity-not-finite = i suoi numeri non sono finiti
entity-too-many = ci sono troppe linee
entity-circle = è un cerchio intero
entity-no-block = il suo blocco manca nel disegno
entity-nested = i suoi blocchi sono annidati troppo in profondità
entity-copies = ci sono più di 100 copie

# Texts and dimensions of a drawing.
label-no-size = non contiene una misura con tolleranza, filettatura o rugosità
label-at-no-surface = non è sulla superficie di un tratto
label-no-roughness = una zigrinatura o spianature non possono avere una rugosità
label-second = il tratto ha già un altro valore
label-given = Il tratto { $section }, lungo { $length } mm, riceve { $values } dal disegno.
label-unknown-word = `{ $word }` è sconosciuto
label-other-size = il testo dice { $text }, ma sono disegnati { $drawn } mm; il lavoro ha la misura disegnata
label-length-tolerance = in un lavoro non si può indicare la tolleranza di una lunghezza
label-no-diameter = non ha un diametro
label-no-section = nessun tratto liscio ha il diametro { $diameter } mm
label-several-sections = va bene per più tratti e non si usa per nessuno
title-material = materiale
title-drawing = numero di disegno
title-revision = revisione
title-taken = Dal disegno: { $field } { $value }.
title-several = CONTROLLARE: Il disegno ha più di un valore per «{ $field }»: { $values }. Non se ne usa nessuno.
title-material-unknown = CONTROLLARE: Il materiale { $material } del disegno non è nella tabella dei materiali. Il lavoro ha un segnaposto. Chiamare con `--material` per impostarne uno.

# The text of a draft.
draft-head = Bozza ricavata da { $file }. Controllare ogni riga con il disegno prima di calcolare un piano con questo lavoro.
draft-head-lengths = Le lunghezze sono in mm. I tratti cominciano dalla faccia anteriore: l'estremità che esce per prima dalla bussola di guida.
draft-head-notes = Che cosa è stato trovato, presunto e non compreso:
draft-placeholder-material = SEGNAPOSTO: nessun materiale noto nel disegno
draft-placeholder-bar = SEGNAPOSTO: la misura di barra comune seguente; `--stock` ne imposta un'altra
draft-placeholder-machine = SEGNAPOSTO: una macchina di esempio. Indicare il file della propria macchina: `machine: my-machine.yaml`, oppure fare la bozza con `--machine my-machine.yaml`.
draft-placeholder-cutting = SEGNAPOSTO: valori comuni. Impostare i propri.
draft-straightness = curvatura dell'albero finito, mm per m: misurare la propria
draft-default-speed = m/min; predefinito: centro del campo consueto per il materiale
draft-default-feed = mm/giro; predefinito: dalla rugosità, al massimo 0,15

# Tables of sections.
table-not-utf8 = `{ $file }` non è testo UTF-8
table-not-utf8-help = Salvare la tabella come CSV in UTF-8
table-not-csv = `{ $file }` non si può leggere come CSV: { $reason }
table-too-long = `{ $file }` ha troppe righe
table-empty = `{ $file }` è vuoto
table-form = Scrivere le intestazioni nella prima riga, in inglese: «length (mm)», «diameter (mm)» e se serve «rear diameter (mm)», «kind», «thread», «tolerance», «Ra (µm)», «name», «across flats (mm)», «sides» (lunghezza, diametro, diametro posteriore, tipo, filettatura, tolleranza, Ra, nome, larghezza in chiave, numero di spianature). Scrivere una riga per ogni tratto, dall'estremità anteriore
table-cell = { $file }, riga { $row }, colonna { $column }: { $what }
table-row = { $file }, riga { $row }: { $what }
table-heading = { $file }, riga { $row }, colonna { $column }, `{ $heading }`: { $what }
table-heading-missing = { $file }, riga { $row }: manca l'intestazione `{ $heading }`
table-heading-unknown = intestazione sconosciuta
table-heading-twice = questa colonna è indicata due volte
table-heading-twice-help = Eliminarne una
table-heading-unit = unità sconosciuta
table-heading-unit-help = Usare una di queste unità: { $units }
table-heading-no-unit-help = Togliere l'unità. Questa colonna non ne ha
table-tolerance-in-inches = CONTROLLARE: Gli scostamenti nella colonna { $column } (`{ $heading }`) sono letti in pollici, come le misure nella tabella. Se sono in mm, scrivere `tolerance (mm)` nell'intestazione.
table-roughness-unit = manca l'unità in una tabella in pollici
table-roughness-unit-help = Scrivere `Ra (µin)` oppure `Ra (µm)` nell'intestazione. Ra 16 µin è 0,4 µm
table-number = `{ $text }` non è un numero positivo
table-number-help = Scrivere solo il numero, con l'unità nell'intestazione, `length (mm)`, oppure scrivere l'unità dopo il numero, `1 in`
table-no-length = manca la lunghezza
table-no-length-help = Scrivere una lunghezza per ogni tratto
table-thread-size = { $thread } ha un diametro di { $major } mm, non di { $given } mm
table-thread-size-help = Togliere il diametro della filettatura
table-flats = manca il numero di spianature
table-flats-help = Scrivere 2, 4, 6 o 8 sotto `sides`
table-kind-needs = mancano le misure per il tipo «{ $kind }»
table-no-kind = la riga deve essere un cilindro, un cono, una filettatura o spianature
table-no-kind-help = Scrivere diametro e diametro posteriore per un cono, la designazione per una filettatura, larghezza in chiave e numero di spianature per spianature, e un diametro per tutti gli altri
table-tolerance-unit = manca l'unità di `{ $text }` in una tabella che non è in mm
table-tolerance-unit-help = Scrivere `tolerance (mm)` nell'intestazione
table-tolerance = `{ $text }` non è una tolleranza
table-tolerance-help = Scrivere una classe come h6, oppure ±0.1, oppure +0.02/-0.01 in mm
table-kind = `{ $text }` non è un tipo di tratto

# Workbooks.
workbook-sheet-used = CONTROLLARE: I tratti vengono dal foglio `{ $sheet }`. La cartella di lavoro ha { $sheets } fogli. Chiamare con `--sheet` per usarne un altro.
workbook-cells-beyond = NON LETTE: { $cells } celle oltre la riga { $row } o la colonna { $column } del foglio.
workbook-unreadable = `{ $file }` non si può leggere come cartella di lavoro: { $reason }
workbook-unreadable-help = Salvarlo come .xlsx, oppure come .csv in UTF-8
workbook-too-large = `{ $file }` è troppo grande per una cartella di lavoro: { $reason }
workbook-too-large-help = Salvare solo il foglio dei tratti, come .xlsx o .csv
workbook-parts = ha { $parts } parti, e se ne leggono al massimo { $most }
workbook-unpacked = scompattato supera { $part } MiB in una parte o { $all } MiB in tutte le parti
workbook-cells = ha { $cells } celle, e se ne leggono al massimo { $most }
workbook-repeats = il numero di una riga o colonna ripetuta non è un numero intero
workbook-no-sheet = `{ $file }` non ha un foglio `{ $sheet }`
workbook-no-sheet-help = Usare uno di questi fogli: { $sheets }
workbook-no-sheets = `{ $file }` non ha fogli
