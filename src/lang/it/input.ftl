# What is wrong with a job, a machine or a readings file.

# The place of an error in a file.
diag-place = { $file }, riga { $line }, colonna { $column }
diag-place-of-key = { $file }, riga { $line }, colonna { $column }, { $key }

errors-more = { $count ->
    [one] Un altro errore non è mostrato
   *[other] Altri { $count } errori non sono mostrati
}
errors-more-help = Correggere prima gli errori qui sopra
did-you-mean = Si intendeva `{ $near }`?
defect-of-reader = Un errore in questo programma interrompe la lettura del file
defect-of-reader-help = Si prega di segnalarlo

# Kinds of values.
kind-nothing = nulla
kind-flag = true o false
kind-number = un numero
kind-text = testo
kind-list = una lista
kind-map = un gruppo di chiavi

# The text as YAML.
yaml-empty = Il file è vuoto
yaml-empty-help = Partire dal lavoro che `spanhold new` stampa
yaml-nested = I valori sono annidati troppo in profondità
yaml-nested-help = Usare al massimo otto livelli
yaml-anchors = Ancore e alias (`&`, `*`) non sono ammessi
yaml-anchors-help = Scrivere i valori per esteso. Mettere tra virgolette un testo che comincia con & o *
yaml-documents = Il file ha più di un documento
yaml-documents-help = Scrivere un solo lavoro per file. Togliere le righe `---`
yaml-values = Il file ha più valori di quanti un lavoro possa avere
yaml-values-help = Scrivere al massimo 1000 tratti e 1000 elementi
yaml-tags = I tag (`!`) non sono ammessi
yaml-tags-help = Togliere il tag. Mettere tra virgolette un testo che comincia con `!`
yaml-merge-keys = Le chiavi di fusione (`<<`) non sono ammesse
yaml-merge-keys-help = Scrivere le chiavi per esteso
yaml-invalid = Non è YAML valido: { $reason }
yaml-invalid-help = Controllare parentesi, due punti, virgolette e rientri qui e nelle righe precedenti

# Keys.
keys-needed = Qui servono chiavi con valori, non { $kind }
keys-needed-help = Scrivere `key: value`. Le chiavi sono: { $keys }
key-twice = `{ $key }` è indicata due volte
key-twice-help = Eliminarne una. La prima è nella riga { $line }
key-unknown = Chiave `{ $key }` sconosciuta
key-unknown-help = Usare una di queste chiavi: { $keys }
key-is-of-planning = Scriverla sotto `planning`: `planning: {"{"}station_pitch: 5{"}"}`
key-is-decimal = `{ $key }` non è una chiave
key-is-decimal-help = Scrivere i numeri decimali con il punto: `{ $meant }`
key-not-text = Una chiave deve essere testo, non { $kind }
key-missing = `{ $key }` manca
key-missing-help = Aggiungere `{ $key }`: { $hint }
value-missing = `{ $key }` non ha valore
value-missing-help = Scrivere un valore, oppure togliere la chiave

# Numbers.
number-too-small = { $value } è troppo piccolo
number-too-large = { $value } è troppo grande
number-not-finite = Non è un numero finito
number-range = Scrivere un numero da { $low } a { $high } ({ $meaning })
number-range-in-unit = Scrivere un numero da { $low } a { $high }, in { $unit } ({ $meaning })
number-needed = Qui serve un numero, non { $kind }
number-not-whole = { $value } non è un numero intero
number-not-whole-help = Scrivere un numero intero ({ $meaning })
number-not-decimal = `{ $value }` non è un numero decimale
number-write = Scrivere { $value }
number-in-quotes = Le virgolette fanno di { $value } un testo, non un numero
number-in-quotes-help = Scrivere { $value } senza virgolette
number-unreadable = `{ $text }` non è un numero
number-decimal-comma = `{ $text }` ha una virgola decimale
number-has-unit = `{ $text }` ha un'unità che qui non va bene
number-in-unit = Scrivere una di queste unità dopo il numero: { $units }. Un numero da solo si intende in { $own }
number-without-unit = Scrivere solo il numero. Questo valore non ha unità
pair-needed = Qui servono due numeri, non { $kind }
pair-needed-list = Qui servono due numeri, non una lista di { $count }
pair-needed-help = Scrivere `{ $key }: { $form }`
pair-needed-point = Scrivere `{ $key }: { $form }`, con il punto decimale

# Lists, texts, words.
list-too-long = `{ $key }` ha { $count } voci
list-too-long-help = Scrivere al massimo { $most } voci
list-needed = Qui serve una lista, non { $kind }
list-needed-help = Scrivere una voce per riga, ognuna dopo `- `, oppure tutte le voci tra parentesi quadre: [..., ...]
text-needed = `{ $key }` richiede testo, non { $kind }
text-needed-help = Scrivere un testo su una riga
text-empty = `{ $key }` è vuota
text-too-long = Il testo è troppo lungo o contiene interruzioni di riga
text-too-long-help = Scrivere al massimo { $most } caratteri su una riga
choice-unknown = `{ $word }` non è un valore di `{ $key }`
choice-help = Scrivere uno di questi: { $words }
flag-needed = Qui serve `true` o `false`, non { $kind }
flag-needed-help = Scrivere `{ $key }: true` oppure `{ $key }: false`

# Files.
file-missing = Il file `{ $file }` non esiste
file-check-path = Controllare il percorso
file-not-permitted = Manca il permesso di leggere `{ $file }`
file-not-permitted-help = Controllare i permessi del file
file-unreadable = `{ $file }` non si può leggere: { $reason }
file-not-utf8 = `{ $file }` non è testo UTF-8 (primo errore nella riga { $line })
file-not-utf8-help = Salvare il file in UTF-8
file-is-folder = `{ $file }` è una cartella
file-is-folder-help = Indicare un file in questa cartella
file-too-large = `{ $file }` è più grande di { $most } MiB
file-too-large-help = Controllare il nome del file: un file del lavoro o della macchina ha solo pochi kB

# Machine files.
machine-not-job = Questo è un file della macchina, non un lavoro
machine-not-job-help = Indicare un file del lavoro. Indicare la macchina nel lavoro con `machine: { $file }`, oppure nella chiamata con `JOB --machine { $file }`
machine-in-file = La macchina è in un altro file, `{ $file }`
machine-in-file-help = Aprire anche quel file, oppure scrivere la macchina nel lavoro
machine-path-or-name = Oppure scrivere un nome da `{ $file }`: { $names }
machine-path-from = Il percorso parte dalla cartella di { $file }
machine-without = La macchina `{ $machine }` non ha `{ $key }`
machine-without-holding = La macchina `{ $machine }` non ha `{ $key }`, ma il lavoro prevede `holding: { $key }`
machine-without-holding-help = Aggiungere `{ $key }` alla macchina, oppure scrivere `holding: { $other }`
phase-error-alone = un errore di fase richiede la rigidezza torsionale del contromandrino
phase-error-alone-help = Aggiungere torsional_stiffness in N·m/rad, oppure omettere phase_error
bush-engagement = { $engagement } mm superano la lunghezza di guida della bussola
bush-engagement-help = Scrivere al massimo { $most }
spindle-farthest = { $farthest } mm non è oltre `nearest`
spindle-farthest-help = Scrivere una distanza dalla faccia della bussola al naso maggiore di { $nearest }
collets-none = Il contromandrino non ha pinze
collets-none-help = Aggiungere almeno una pinza, oppure togliere `counter_spindle`
collets-same-name = Due pinze hanno il nome `{ $name }`
collets-same-name-help = Dare a ogni pinza un nome proprio
collet-range = Il diametro maggiore è scritto per primo
collet-range-help = Scrivere prima il diametro minore: `range: [{ $smallest }, { $largest }]`
collet-passes = { $passes } mm è meno del diametro massimo che la pinza serra
collet-passes-help = Scrivere almeno { $largest }
headstock-in-bush = { $nearest } mm è meno della lunghezza di guida della bussola
headstock-in-bush-help = Scrivere la distanza dalla faccia della bussola al naso della pinza: almeno { $land }

# Bar and cutting.
stock-too-thin = La barra di { $bar } mm è troppo sottile: { $section } richiede { $needed } mm
stock-too-thin-help = Usare una barra di { $needed } mm o più
stock-too-short = La barra di { $bar } mm è troppo corta per un albero
stock-too-short-help = Impostare `bar_length` a { $needed } mm (albero, troncatura e sfacciatura) più lo spezzone, o di più
cutting-last-pass = L'ultima passata di { $depth } mm è più profonda di `ap_max`
cutting-last-pass-help = Scrivere al massimo { $most }
cutting-no-lag = In un tandem l'utensile di finitura deve stare dietro all'utensile di sgrossatura
cutting-no-lag-help = Scrivere `lag` in mm, maggiore di 0. Due utensili nello stesso punto sono utensili contrapposti: `tools: opposed`
cutting-finisher-alone = `finisher` descrive l'utensile di finitura di un tandem, e `tools` è { $tools }
cutting-finisher-alone-help = Scrivere `tools: tandem`, oppure omettere `finisher`
cutting-no-speed = Manca la velocità di taglio, e il materiale { $material } non ha un campo consueto
cutting-no-speed-help = Aggiungere `vc` in m/min a `cutting`, oppure `vc: [low, high]` al materiale
material-unknown = nessun materiale `{ $name }` nella tabella
material-near = si intendeva `{ $near }`? oppure indicare il proprio: {"{"}name, e_gpa, density, kc11, mc, vc: [low, high]{"}"}
material-far = secondo il suo numero è { $family }, e nella tabella non c'è un numero vicino; `spanhold materials "{ $word }"` elenca questo gruppo; oppure indicare il proprio: {"{"}name, e_gpa, density, kc11, mc, vc: [low, high]{"}"}
material-none-near = nella tabella non c'è un nome vicino; `spanhold materials` li elenca tutti; oppure indicare il proprio: {"{"}name, e_gpa, density, kc11, mc, vc: [low, high]{"}"}
material-unalloyed = un acciaio non legato
material-tool = un acciaio da utensili
material-special = un acciaio rapido o per cuscinetti
material-stainless = un acciaio inossidabile
material-heat-resistant = un acciaio resistente al calore
material-alloyed = un acciaio legato
material-copper = rame o una lega di rame
material-nickel = una lega di nichel o cobalto
material-aluminium = alluminio o una lega di alluminio
material-titanium = titanio o una lega di titanio
material-vc = La velocità maggiore è scritta per prima
material-vc-help = Scrivere `vc: [{ $low }, { $high }]`

# Sections.
shaft-no-sections = L'albero non ha tratti
shaft-no-sections-help = Scrivere almeno un tratto: `- {"{"}length: 60, diameter: 12{"}"}`
shaft-too-long = I tratti insieme sono lunghi { $length } mm
shaft-too-long-help = Scrivere le lunghezze in mm. Un albero può essere lungo al massimo { $most } mm
section-is-thread = Una pinza non può serrare una filettatura
section-is-taper = Una pinza non può serrare un cono
section-is-groove = Una pinza non può serrare una gola
section-is-knurl = Una pinza non può serrare una zigrinatura
section-has-flats = Una pinza non può serrare un tratto con spianature
section-grip-help = Scrivere `grip: false`, oppure fare del cilindro liscio un tratto a sé
section-no-size = Il tratto non ha diametro
section-no-size-help = Aggiungere uno di questi: `diameter: 18`, `thread: M16x1.5`, `taper: [18, 22]` oppure `across_flats: 17` con `sides: 6`
section-kind-size = Una gola o una zigrinatura ha solo un `diameter`
section-kind-size-help = Togliere `kind`, oppure indicare la misura solo come `diameter`
section-two-sizes = Il tratto ha più di una forma: { $keys }
section-two-sizes-help = Tenere una di queste chiavi, oppure dividere il tratto
section-unknown = Nessun tratto ha il nome `{ $name }`
section-unknown-help = Scrivere il `name` di un tratto, oppure il suo numero dall'estremità anteriore, da 1 a { $most }
sections-same-name = { $count } tratti hanno il nome `{ $name }`
sections-same-name-help = Dare a ogni tratto un nome proprio, oppure scrivere il numero dall'estremità anteriore: `section: { $number }`
thread-interrupted = L'avanzamento non si deve arrestare in una filettatura
thread-interrupted-help = Togliere `interrupt` da questo tratto
thread-class = `{ $class }` è una classe di tolleranza per filettature
thread-class-help = Togliere `tolerance`, e scrivere la classe dopo la filettatura: `thread: { $designation }-{ $class }`
thread-by-alone = `thread_by` è indicata senza `thread`
thread-by-alone-help = Togliere `thread_by`. Dice come si fa una filettatura
taper-same = Le due estremità del cono hanno lo stesso diametro
taper-same-help = Scrivere `diameter: { $diameter }`
sides-alone = `sides` è indicata senza `across_flats`
sides-alone-help = Scrivere `across_flats: 17, sides: 6`
sides-number = { $sides } non è un numero di spianature possibile
sides-number-help = Scrivere 2, 4, 6 o 8
flats-too-thick = Il diametro di { $diameter } mm non è maggiore della larghezza in chiave
flats-too-thick-help = Scrivere un diametro maggiore di { $across }
flats-beyond-corners = Il diametro di { $diameter } mm è maggiore della larghezza sugli spigoli
flats-beyond-corners-help = Togliere `diameter`. La barra è tornita a { $corners } mm, la larghezza sugli spigoli
flats-without-diameter = Due spianature richiedono il diametro del cilindro
flats-without-diameter-help = Aggiungere `diameter`
tolerance-order = Il primo scostamento non è inferiore al secondo
tolerance-order-help = Scrivere `tolerance: [lower, upper]`, per esempio `[-0.05, 0]`
tolerance-one-number = Una tolleranza richiede due scostamenti, non un numero solo
tolerance-one-number-help = Scrivere i due scostamenti, per esempio `tolerance: [-0.05, 0.05]` o `tolerance: ±0.05`

# Features.
feature-kind = Un elemento richiede un solo tipo
feature-kind-help = Scrivere prima una di queste chiavi: { $kinds }. Esempi: `{"{"}cross_hole: 5, at: 120{"}"}`, `{"{"}keyseat: [6, 3.5], from: 500, to: 540{"}"}`
feature-key = `{ $key }` non è una chiave di `{ $kind }`
place-beyond-shaft = L'elemento va da { $from } a { $to } mm, oltre l'albero
place-beyond-shaft-help = Scrivere le distanze in mm dalla faccia anteriore. L'albero finisce a { $length } mm
hole-too-wide = Il foro non è più piccolo dell'albero, che a { $at } mm ha { $diameter } mm di diametro
hole-too-wide-help = Usare un foro più piccolo, oppure un altro punto
keyseat-backwards = La cava per linguetta va da { $from } a { $to } mm
keyseat-backwards-help = Scrivere un `to` maggiore di `from`
keyseat-too-wide = La cava per linguetta è larga { $width } mm, ma lì l'albero ha solo { $diameter } mm di diametro
keyseat-too-wide-help = Scrivere `keyseat: [width, depth]` in mm, con una larghezza minore del diametro
keyseat-too-deep = La cava per linguetta è profonda { $depth } mm, ma lì l'albero ha solo { $diameter } mm di diametro
keyseat-too-deep-help = Scrivere `keyseat: [width, depth]` in mm, con una profondità minore di metà diametro
centre-hole-too-wide = Il foro da centro { $hole } è largo { $mouth } mm, ma la faccia è larga solo { $face } mm
centre-hole-too-wide-help = Usare un foro da centro più piccolo
work-too-deep = Una profondità di { $depth } mm supera la lunghezza dell'albero, { $length } mm
work-too-deep-help = Scrivere la profondità in mm dalla faccia d'estremità
work-too-wide = Lì l'albero ha solo { $diameter } mm di diametro, ma servono più di { $size } mm
work-too-wide-help = Usare una misura minore o una profondità minore
thread-deeper-than-hole = Il foro di { $hole } mm non è profondo quanto la filettatura
thread-deeper-than-hole-help = Scrivere almeno { $least }, oppure togliere `drill_depth`
tapped-hole-where = Un foro filettato richiede una posizione lungo l'albero (`at`) o una profondità in un'estremità (`depth`)
tapped-hole-where-help = Scrivere `{"{"}tapped_hole: M4, at: 60{"}"}` oppure `{"{"}tapped_hole: M6, depth: 12, end: front{"}"}`
socket-punched-step = Un esagono incassato punzonato non ha `step`
socket-punched-step-help = Togliere `step`, oppure scrivere `forming: shave`
engraving-too-long = Il testo è troppo lungo per un'incisione
engraving-too-long-help = Scrivere al massimo { $most } lettere
engraving-beyond-face = Il testo richiede { $needed } mm, ma la faccia è larga solo { $diameter } mm
engraving-beyond-face-help = Usare lettere più piccole o un testo più corto
engraving-where = Un'incisione richiede una posizione lungo l'albero (`at`) o una faccia (`end`)
engraving-where-help = Scrivere `{"{"}engrave: LP 42, height: 2, at: 60{"}"}` oppure `{"{"}engrave: 42, height: 2, end: front{"}"}`
engraving-on-two = Il testo da { $from } a { $to } mm non è su un solo cilindro o una sola spianatura
engraving-on-two-help = Spostare il testo, oppure usare lettere più piccole
engraving-too-high = Lettere di { $height } mm sono più alte della superficie
engraving-too-high-help = Scrivere al massimo { $most }
keyway-without-hole = La cava interna per linguetta richiede un foro assiale alla stessa estremità, abbastanza profondo e largo
keyway-without-hole-help = Aggiungere `{"{"}axial_hole: 12, depth: { $depth }{"}"}` a questa estremità, con un diametro maggiore di { $width }
keyway-no-wall = La cava interna per linguetta non lascia parete: arriva a { $reach } mm dall'asse
keyway-no-wall-help = Usare un foro o una cava interna più piccoli. La superficie dell'albero è a { $most } mm dall'asse

# Families and wishes.
vary-nothing = `vary` è vuota
vary-nothing-help = Scrivere `length: {"{"}section: body, from: 200, to: 1200, step: 50{"}"}`, `diameter`, o entrambi
vary-too-many = `vary` dà { $parts } pezzi
vary-too-many-help = Usare uno `step` più grande. Sono possibili al massimo { $most } pezzi
vary-backwards = Il campo va da { $from } a { $to } mm
vary-backwards-help = Scrivere un `to` che non sia minore di `from`
vary-no-diameter = { $section } non ha un diametro liscio da variare
vary-no-diameter-help = Variare la lunghezza. Il diametro di una filettatura, di un cono o di spianature non può variare
wish-too-few = { $most } è troppo poco: `hand_over_at` ne chiede { $wished }
wish-too-few-help = Scrivere almeno { $wished }, oppure togliere prese del contromandrino da `hand_over_at`
wish-twice = La presa del contromandrino a { $at } mm è indicata due volte
wish-twice-help = Eliminarne una
wish-off-shaft = Una presa del contromandrino a { $at } mm non è sull'albero
wish-off-shaft-help = Scrivere una lunghezza tornita tra 0 e { $length } mm
wish-nose = A { $nose } mm l'albero non è ancora tornito
wish-nose-help = Scrivere al massimo { $most }. Il contromandrino serra solo superfici finite
wish-backwards = La lunghezza va da { $from } a { $to } mm
wish-backwards-help = Scrivere prima l'estremità anteriore: `[120, 140]`
wish-section-help = Scrivere il nome o il numero (da 1 a { $most }) di un tratto, oppure due posizioni: `[120, 140]`

# Readings.
set-ups-empty-help = Aggiungere almeno un montaggio con una lettura
set-up-unnamed = montaggio { $number }
set-up-no-reading = Il montaggio non ha letture
set-up-no-reading-help = Aggiungere `dial`, una lista di {"{"}load, at, deflection{"}"}, oppure `frequency`, da una prova a percussione
set-up-bar-too-thick = Una barra di { $bar } mm è troppo grossa: `{ $key }` accetta al massimo { $most } mm
set-up-bar-too-thick-help = Controllare che `diameter` e `machine` siano quelli della misura
set-up-holding-help = Aggiungere `{ $key }` alla macchina, oppure scrivere il valore di `holding` della misura
set-up-headstock = Senza la bussola di guida la posizione della fantina non si usa
set-up-headstock-help = Togliere `headstock`. Senza bussola le distanze partono dal naso della pinza della fantina
set-up-out-of-travel = { $at } mm dalla faccia della bussola è fuori dalla corsa di `{ $machine }`
set-up-out-of-travel-help = Scrivere una distanza da { $nearest } a { $farthest } mm
set-up-collet-alone = `collet` è indicata senza `grip`
set-up-collet-alone-help = Aggiungere `grip`, la distanza dalla faccia della bussola al naso del contromandrino, oppure togliere `collet`
set-up-no-spindle-help = Togliere `grip`
set-up-collet-size = La pinza `{ $collet }` non serra una barra di { $bar } mm
set-up-collet-unknown = Nessuna pinza ha il nome `{ $collet }`
set-up-no-collet = Nessuna pinza della macchina serra una barra di { $bar } mm
set-up-no-collet-help = Aggiungere alla macchina la pinza della misura, oppure misurare con un'altra barra. Le pinze sono { $collets }
set-up-collet-which = Più di una pinza serra una barra di { $bar } mm
set-up-collet-which-help = Scrivere `collet: "{ $first }"`, oppure un'altra tra { $collets }
set-up-bar-in-collet = La barra finisce a { $front } mm dalla faccia della bussola, dentro la pinza
set-up-bar-in-collet-help = Impostare `front` ad almeno { $least }: la pinza { $collet } deve essere piena
fit-not-on-machine-help = Toglierlo da `fit`, oppure aggiungerlo alla macchina
fit-twice-help = Eliminarne uno
reading-beyond-bar = Questo punto è oltre l'estremità anteriore della barra
reading-in-spindle = Questo punto è dentro il contromandrino
reading-in-headstock = Questo punto è dentro la pinza della fantina
reading-in-bush = Questo punto è dentro la bussola
reading-behind-headstock = Questo punto è dentro la pinza della fantina o dietro di essa
reading-place-help = Scrivere la distanza dalla faccia della bussola (senza bussola: dal naso della fantina), negativa dietro la faccia
reading-no-deflection = L'inflessione nel punto del carico non è maggiore di 0
reading-no-deflection-help = Scrivere l'inflessione nel verso del carico, in µm, come numero positivo

# Edits of a text.
edit-impossible = Questo valore non si può modificare qui
edit-refused = Questa modifica cambierebbe più di questo valore
edit-help = Modificare il testo del file

# What the reader assumed: notes of a plan.
note-speed-unusual = La velocità di taglio di { $speed } { -m-min } è fuori dal campo consueto per { $material }, da { $low } a { $high } { -m-min }.
note-speed-assumed = Non è indicata una velocità di taglio. Si assumono { $speed } { -m-min }, il centro del campo consueto per { $material } (da { $low } a { $high } { -m-min }).
note-straightness-of-bar = La rettilineità dell'albero tornito non è indicata. Si assume una curvatura di { $bow } { -mm } per { -m }, dalla barra (stock.kind: { $kind }).
note-straightness = La rettilineità dell'albero tornito non è indicata. Si assume una curvatura di { $bow } { -mm } per { -m }.
note-cutting-force = Forza di taglio di { $material }: kc1.1 { $kc11 } N/mm², mc { $mc }. Fonte: { $source }. Affidabilità: { $confidence }.
note-wishes = Il piano rispetta queste richieste: { $wishes }.
note-not-turned = Il tratto { $section } ha il diametro della barra e non viene tornito. La sua tolleranza { $label } ammette { $needed }, ma la tolleranza della barra { $bar } dà { $found }. Usare una barra più grossa per tornirlo, oppure ordinare la barra con questa tolleranza.
note-not-turned-unknown = Il tratto { $section } ha il diametro della barra e non viene tornito. La sua tolleranza { $label } ammette { $needed }, ma la tolleranza della barra non è indicata. Usare una barra più grossa per tornirlo, oppure ordinare la barra con questa tolleranza.
note-family = Il lavoro varia { $ranges }. Questo piano usa i valori dei tratti. `spanhold batch` calcola il piano per tutto il campo.
note-part-of-family = Un pezzo di una famiglia: { $sizes }.

# A centre in the front face.
centre-not-there = `hold: centre` richiede una contropunta, e la macchina { $machine } non ne ha
centre-not-there-help = Scrivere `centre: {"{"}force: 300, stiffness: 40{"}"}` sotto `counter_spindle` nel file della macchina, con i numeri della propria macchina, oppure scrivere `hold: collet`
centre-no-counter-spindle-help = Scegliere una macchina con un contromandrino che abbia `centre`, oppure togliere `hold`
centre-no-hole = `hold: centre` richiede un foro da centro nella faccia anteriore
centre-no-hole-help = Aggiungerlo sotto `shaft.features`: `- {"{"}centre_hole: A2, end: front{"}"}`, oppure scrivere `hold: collet`
centre-hand-over = Con `hold: centre` tutto il pezzo è una sola fase, senza presa del contromandrino
centre-hand-over-help = Togliere `hand_over_at`, oppure scrivere `hold: collet`
centre-too-short = La contropunta sporge di { $out } mm, e il contromandrino non si avvicina alla bussola a meno di { $nearest } mm, perciò non raggiunge la faccia anteriore
centre-too-short-help = Usare una contropunta con `stands_out` di almeno { $least } mm, oppure scrivere `hold: collet`

# The shop's file.
note-shop = Da `{ $file }`: { $keys }
note-cutting-force-shop = Forza di taglio di { $material } (kc1.1 { $kc11 } N/mm², mc { $mc }): i valori propri dell'officina, da `{ $file }`
shop-machine-unknown = `{ $name }` non è una macchina di questa officina
shop-machine-unknown-help = Scrivere un nome da `machines` qui sopra: { $machines }
shop-material-twice = { $name } è elencato due volte
shop-material-twice-help = Eliminare una delle due voci
shop-no-bar-of = `{ $file }` non ha una barra di { $material }
shop-no-bar-of-help = Indicare la barra nel lavoro, per esempio `stock: {"{"}diameter: 20{"}"}`, oppure aggiungerla a `bars`. Ci sono barre di { $grades }
shop-no-bar = Nessuna barra di { $material } in `{ $file }` dà questo albero: serve Ø{ $needed } o più
shop-no-bar-help = Ci sono { $sizes }, e { $machine } deve accettare la barra. Indicare la barra nel lavoro, per esempio `stock: {"{"}diameter: { $needed }{"}"}`
shop-no-collet = Per il contromandrino di { $machine } non è nota nessuna pinza: né il suo file né `{ $file }` ne hanno una
shop-no-collet-help = Elencare `collets` nel file della macchina, oppure pinze per questa macchina nel file dell'officina

# The tool list.
tools-number = { $number ->
    [one] { $number } utensile
   *[other] { $number } utensili
}
tool-twice = Il nome { $name } compare due volte
tool-twice-help = Dare a ogni utensile un nome proprio
tool-key-unused = Un utensile del tipo `{ $kind }` non ha `{ $key }`
tool-key-unused-help = Togliere `{ $key }`, oppure scrivere un altro `kind`
tool-materials-help = Scrivere il nome di un materiale e le sue passate, per esempio `C45: {"{"}rough: {"{"}vc: 160, feed: 0.2{"}"}{"}"}`

edge-both = Un'estremità ha uno smusso e un raggio
edge-both-help = Scriverne uno solo per ogni estremità
edge-too-long = Gli smussi o i raggi di { $section } occupano tutta la sua lunghezza di { $length } mm
edge-no-step = { $section } lì non ha uno spigolo libero: il tratto accanto è grosso uguale o di più
edge-too-large = { $size } mm è più del gradino di { $step } mm su { $section }
edge-help = Uno smusso sta su uno spigolo libero, e non è maggiore del gradino. Indicare l'estremità: `chamfer: {"{"}front: 1, rear: 0.5{"}"}`. Un solo numero vale per l'estremità anteriore
turned-alone = `{ $key }` richiede `grind`
turned-alone-help = Scrivere il sovrametallo da rettificare in seguito, per esempio `grind: 0.3`, oppure omettere la chiave
grind-cylinder = Solo un cilindro liscio può avere `grind`
grind-cylinder-help = Indicare le misure tornite, e scrivere la rettifica nel nome
grind-nothing-left = tornito a Ø{ $turned } mm { $label } può non restare nulla da rettificare
grind-nothing-left-help = Rendere `grind` più grande o `turned_tolerance` più stretta
bore-too-wide = Il foro di { $bore } mm non lascia parete su { $section }: { $smallest } mm
bore-too-wide-help = Scrivere un diametro interno inferiore a { $smallest } mm, oppure omettere `bore` per una barra piena
bore-hole = Il foro della barra è { $bore } mm, perciò per { $size } mm non c'è nulla da forare
bore-hole-help = La lavorazione in un'estremità deve essere più grande del foro della barra

# Designations of threads.
thread-unknown = `{ $text }` non è la designazione di una filettatura
thread-unknown-help = Scriverla come `M16x1.5`, `1/4-20 UNC`, `G1/4` o `Tr20x4`. Possono seguire una classe e `LH` per una filettatura sinistra: `M16x1.5-6g-LH`
thread-write = Scrivere `{ $designation }`
thread-no-coarse = M{ $major } non ha un passo grosso nella ISO 261
thread-no-coarse-help = Scrivere il passo, `M{ $major }x1`, oppure la misura più vicina con un passo grosso, `M{ $near }`
thread-too-fine = `{ $text }`: un passo di { $pitch } mm è troppo fine
thread-too-fine-help = Scrivere un passo di almeno { $least } mm
thread-too-coarse = `{ $text }`: un passo di { $pitch } mm è troppo grosso per un diametro di { $major } mm
thread-write-coarse = Il passo grosso di M{ $major } è { $coarse } mm: scrivere `M{ $major }` o un passo più fine
thread-finer = Scrivere un passo più fine, al massimo { $most } mm
thread-lead = `{ $text }`: il passo d'elica di { $lead } mm non è un numero intero di passi di { $pitch } mm
thread-lead-help = Scrivere il passo d'elica di una filettatura a più principi come un numero di passi da 2 a { $most }, qui { $twice } mm o un multiplo, e il passo tra parentesi
thread-no-pitch = `{ $text }`: una filettatura trapezoidale richiede il suo passo
thread-no-pipe-size = `{ $text }`: la ISO 228-1 non ha una filettatura per tubi di questa misura
thread-no-unified = `{ $text }` non è nella ASME B1.1
thread-no-unified-help = La ASME B1.1 ha { $near }
thread-no-unified-special = La ASME B1.1 ha { $near }. Scrivere una filettatura speciale come `{ $special }`
thread-tail-unknown = `{ $text }`: `{ $word }` non è una classe di tolleranza di questa filettatura
thread-tail-help = Scrivere per esempio `{ $designation }`, oppure `LH` per una filettatura sinistra
thread-class-of-hole = `{ $class }` è una classe per filettature interne
thread-class-of-shaft = `{ $class }` è una classe per filettature esterne
thread-class-write = Scrivere per esempio `{ $with }`, oppure senza classe: `{ $without }`
# Units of a file.
note-mixed-units = `{ $file }` ha valori in entrambi i sistemi di unità: { $values }. Ognuno è stato convertito secondo la sua unità. Controllare che ogni unità sia voluta.
note-mixed-units-value = `{ $key }` alla riga { $line }
