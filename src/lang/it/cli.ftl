# The command line.

# For every command.
defect-of-program = Un errore in questo programma (si prega di segnalarlo con il file del lavoro)
defect-of-program-because = Un errore in questo programma (si prega di segnalarlo con il file del lavoro). Non si stampa nessun piano. Motivo: { $reason }
result-not-printed = Il risultato non si è potuto stampare: { $reason }.
interrupted = Interrotto.
option-out-of-range = `--{ $option }` non può essere { $value }
option-out-of-range-help = Scrivere un numero da { $low } a { $high }
progress-counting = {"{msg} {bar:40} {pos} di {len}, ancora {eta}"}
progress-jobs = lavori
progress-ways = modi

# Files that are written.
file-unwritable = `{ $file }` non si può scrivere: { $reason }
file-now-at = Il vecchio contenuto di `{ $file }` è ora in `{ $now }`. Rinominare questo file
file-exists = `{ $file }` esiste già
file-exists-help = Indicare un altro file, oppure eliminare questo
file-no-name = `{ $file }` non è il nome di un file
file-no-name-help = Indicare un altro file
file-is-device = `{ $file }` è un dispositivo o una pipe, non un file
file-is-input = `{ $file }` è un dato d'ingresso di questa chiamata e verrebbe sovrascritto
file-is-input-help = Indicare un altro posto per il risultato
folder-not-made = La cartella `{ $folder }` non si può creare: { $reason }

# at
at-note = Nota: { $note }
at-turned = lunghezza tornita
at-turned-is = { $turned } { -mm }, tratto { $section } ({ $work })
at-front = estremità anteriore
at-front-is-held = tenuta dalla pinza { $collet }, naso a { $nose } { -mm }
at-front-is-free = libera
at-front-is-on-centre = sulla contropunta
at-headstock = fantina
at-headstock-is = { $at } { -mm } dalla faccia della bussola
at-speed = velocità
at-unsupported = lunghezza non sostenuta
at-unsupported-is = { $length } { -mm }, L/d { $ratio }
at-critical-speed = velocità critica
at-frequencies = frequenze proprie
at-stiffness = rigidezza all'utensile
at-span-stiffness = punto più cedevole
at-span-stiffness-is = { $stiffness } N/µm a { $at } { -mm }, tra serraggio e bussola
at-sag = flessione per peso proprio
at-bow = curvatura in rotazione
at-main-force = forza di taglio principale
at-passive-force = forza passiva
at-passive-force-is = { $force } { -n }, { $net } { -n } restano sulla barra
at-finisher = utensile di finitura
at-finisher-is = a { $at } { -mm }, dove si riporta l'inflessione
at-deflection = inflessione all'utensile
at-deflection-is = { $deflection } { -um }; il diametro varia di { $change } { -um } lungo la passata
at-chatter-limit = limite vibraz. rigenerative
at-chatter-limit-is = { $depth } { -mm } di profondità di passata
at-head-check = verifica
at-head-found = valore
at-head-limit = limite
at-head-unit = unità
at-head-used = utiliz.
at-head-place = peggiore a { -mm }

# batch
batch-stdin-unreadable = stdin non si può leggere: { $reason }
batch-stdin-twice = stdin (`-`) è indicato due volte
batch-stdin-twice-help = Indicare `-` una volta sola
batch-document-too-large = Il documento è più grande di { $most } MiB
batch-document-too-large-help = Separare i documenti con righe `---`
batch-document-not-utf8 = Il documento non è testo UTF-8
batch-document-not-utf8-help = Scrivere i documenti in UTF-8
batch-path-not-utf8 = Un percorso su stdin non è testo UTF-8
batch-map-of-one = Una mappa richiede un solo lavoro e una sola macchina
batch-map-of-one-help = Chiamare `batch` una volta per ogni lavoro e macchina, ogni volta con una mappa
batch-map-stdin = Una mappa richiede un file del lavoro, non stdin
batch-map-stdin-help = Scrivere il lavoro in un file
batch-map-no-family = `{ $file }` non ha `vary`, perciò non c'è nulla da disegnare
batch-map-no-family-help = Aggiungere `vary: {"{"}length: {"{"}section: body, from: 200, to: 1200, step: 50{"}"}{"}"}` al lavoro
batch-map-axis = { $key } di { $section }, { -mm }
batch-interrupted = Le righe in { $file } sono complete. `--resume` prosegue dopo di esse.
batch-same-file = Le righe e la mappa hanno lo stesso file, `{ $file }`
batch-same-file-help = Indicare un altro file per una delle due
batch-file-without-lines = `{ $file }` esiste già e non contiene righe di `batch`
batch-file-without-drawing = `{ $file }` esiste già e non è un disegno
batch-file-in-use = Un'altra chiamata sta scrivendo in `{ $file }`
batch-file-in-use-help = Attendere che finisca, oppure indicare un altro file
batch-line-unwritten = Una riga non si può scrivere in `{ $file }`: { $reason }
batch-line-unwritten-help = Eliminare la causa e chiamare di nuovo con `--resume`. Le righe precedenti sono complete
batch-resume-no-line = La riga { $line } di `{ $file }` non è una riga di `batch`
batch-resume-other = La riga { $line } di `{ $file }` è il risultato di { $found }, ma questa chiamata lì ha { $wanted }
batch-resume-beyond = La riga { $line } di `{ $file }` è il risultato di { $found }, ma questa chiamata non ha altri lavori
batch-resume-help = Indicare i lavori e le macchine della chiamata interrotta nello stesso ordine, oppure togliere `--resume` per riscrivere il file da capo
batch-lines = { $lines ->
    [one] { $lines } riga in { $time } s
   *[other] { $lines } righe in { $time } s
}
batch-lines-resumed = { $lines ->
    [one] { $lines } riga ({ $before } dalla chiamata interrotta) in { $time } s
   *[other] { $lines } righe ({ $before } dalla chiamata interrotta) in { $time } s
}
batch-machine-of-job = macchina del lavoro
batch-head-machine = macchina
batch-head-feasible = fattibili
batch-head-at-risk = a rischio
batch-head-infeasible = non fattibili
batch-head-wrong = errori nei dati
batch-head-defects = errori del programma
batch-head-time = calcolo, s
batch-row-all = tutti

# compare
compare-no-bush = la macchina non ha bussola di guida
compare-only-bush = la macchina non lavora senza la sua bussola di guida
compare-best = Modi fattibili: { $feasible } su { $ways }{ $at_risk ->
    [0] {""}
   *[other] , di cui { $at_risk } a rischio
}. Il migliore: { $holding }, { $tools }, { $time } s per pezzo su { $machine }
compare-none = Nessuno dei { $ways } modi è fattibile su { $machines }
compare-bush = bussola
compare-no-bush-short = senza bussola
compare-single = utensile singolo
compare-opposed = contrapposti
compare-tandem = tandem
compare-feasible = Fattibili (quelli a rischio in fondo, prima il tempo più breve; regge: in quanti pezzi simulati su 100)
compare-infeasible = Non fattibili (prima la lunghezza tornita maggiore)
compare-way = { $way }, { $tools }:
compare-way-reaches = { $way }, { $tools }, lunghezza tornita { $turned } su { $length } { -mm }:
compare-way-full-length = { $way }, { $tools }, tornito per tutta la lunghezza:
compare-head-machine = macchina
compare-head-holding = tenuta
compare-head-tools = utensili
compare-head-stages = fasi
compare-head-hand-overs = prese contr.
compare-head-lines = segni
compare-head-check = più critica
compare-head-good = regge
compare-head-time = s/pezzo
compare-head-pieces = per barra

# draft, new
draft-file-too-large-help = Salvare un disegno del solo albero
draft-written = { $file } è stato scritto. Controllarlo, poi chiamare: spanhold plan { $file }
new-shop-written = { $file } è stato scritto. Inserirvi le proprie macchine, pinze, materiali e barre. I lavori nella sua cartella e in quelle sotto di essa lo usano se si chiama shop.yaml
new-two-files = `new` scrive un solo file, e `{ $file }` è il secondo
new-two-files-help = Scrivere `spanhold new FILE` per un lavoro, oppure `spanhold new shop FILE` per un file dell'officina
new-written = { $file } è stato scritto. Chiamata seguente: spanhold plan { $file }

# recheck
recheck-no-plan = `{ $file }` non è un piano: { $reason }
recheck-no-plan-help = Indicare il file plan.json di `plan --out`
recheck-changed = Il lavoro o la macchina sono cambiati da quando è stato fatto il piano.
recheck-unchanged = Il lavoro e la macchina non sono cambiati.
recheck-margin = Il margine è cambiato: resta { $found } %, il piano dice { $planned } %.
recheck-proven = ANCORA CONFERMATO  { $job }: { $states } stati verificati, la verifica più critica utilizza { $used } del suo limite
recheck-not-proven = NON PIÙ CONFERMATO  { $job }: { $rules ->
    [one] { $rules } regola non rispettata
   *[other] { $rules } regole non rispettate
}
recheck-breach-of-stage = Fase { $stage }: { $rule }: { $why }
recheck-breach-of-plan = Piano: { $rule }: { $why }

# The language.
option-lang = Lingua dei testi: { $languages }. Altrimenti quella del lavoro o del file dell'officina (`language`), altrimenti inglese
option-units = Unità dei testi: `mm` o `inch`. Altrimenti quelle del lavoro o del file dell'officina (`units`), altrimenti { -mm }
no-such-language = ci sono testi in { $languages }

# The font of the PDF.
font-help = indicare un file di carattere, TTF o OTF
font-unreadable = `{ $file }` non si può leggere come carattere: { $reason }
font-wanted = sheet.pdf è omesso: ai suoi caratteri mancano le lettere di questa lingua. Indicare un file di carattere con `--font FILE`.
