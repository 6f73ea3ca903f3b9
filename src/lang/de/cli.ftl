# The command line.

# For every command.
defect-of-program = Ein Fehler in diesem Programm (bitte mit der Auftragsdatei melden)
defect-of-program-because = Ein Fehler in diesem Programm (bitte mit der Auftragsdatei melden). Es wird kein Plan ausgegeben. Grund: { $reason }
result-not-printed = Das Ergebnis ließ sich nicht ausgeben: { $reason }.
interrupted = Abgebrochen.
option-out-of-range = `--{ $option }` kann nicht { $value } sein
option-out-of-range-help = Schreiben Sie eine Zahl von { $low } bis { $high }
progress-counting = {"{msg} {bar:40} {pos} von {len}, noch {eta}"}
progress-jobs = Aufträge
progress-ways = Varianten

# Files that are written.
file-unwritable = `{ $file }` lässt sich nicht schreiben: { $reason }
file-now-at = Der alte Inhalt von `{ $file }` steht jetzt in `{ $now }`. Benennen Sie diese Datei um
file-exists = `{ $file }` gibt es schon
file-exists-help = Nennen Sie eine andere Datei, oder entfernen Sie diese
file-no-name = `{ $file }` ist kein Dateiname
file-no-name-help = Nennen Sie eine andere Datei
file-is-device = `{ $file }` ist ein Gerät oder eine Pipe, keine Datei
file-is-input = `{ $file }` ist eine Eingabe dieses Aufrufs und würde überschrieben
file-is-input-help = Nennen Sie ein anderes Ziel für die Ausgabe
folder-not-made = Der Ordner `{ $folder }` lässt sich nicht anlegen: { $reason }

# at
at-note = Hinweis: { $note }
at-turned = gedrehte Länge
at-turned-is = { $turned } { -mm }, Abschnitt { $section } ({ $work })
at-front = vorderes Ende
at-front-is-held = gehalten von Spannzange { $collet }, Zangenstirn bei { $nose } { -mm }
at-front-is-free = frei
at-front-is-on-centre = auf der Zentrierspitze
at-headstock = Spindelstock
at-headstock-is = { $at } { -mm } ab Buchsenstirn
at-speed = Drehzahl
at-unsupported = ungestützte Länge
at-unsupported-is = { $length } { -mm }, L/d { $ratio }
at-critical-speed = kritische Drehzahl
at-frequencies = Eigenfrequenzen
at-stiffness = Steifigkeit am Werkzeug
at-span-stiffness = weichste Stelle
at-span-stiffness-is = { $stiffness } N/µm bei { $at } { -mm }, zwischen Spannstelle und Buchse
at-sag = Durchhang
at-bow = Krümmung beim Drehen
at-main-force = Schnittkraft
at-passive-force = Passivkraft
at-passive-force-is = { $force } { -n }, davon bleiben { $net } { -n } an der Stange
at-finisher = Schlichtwerkzeug
at-finisher-is = bei { $at } { -mm }; die genannte Auslenkung gilt für diese Stelle
at-deflection = Auslenkung am Werkzeug
at-deflection-is = { $deflection } { -um }; der Durchmesser ändert sich entlang des Durchgangs um { $change } { -um }
at-chatter-limit = Rattergrenze
at-chatter-limit-is = { $depth } { -mm } Schnitttiefe
at-head-check = Prüfung
at-head-found = Wert
at-head-limit = Grenze
at-head-unit = Einheit
at-head-used = genutzt
at-head-place = knappste Stelle, { -mm }

# batch
batch-stdin-unreadable = stdin lässt sich nicht lesen: { $reason }
batch-stdin-twice = stdin (`-`) ist zweimal angegeben
batch-stdin-twice-help = Geben Sie `-` einmal an
batch-document-too-large = Das Dokument ist größer als { $most } MiB
batch-document-too-large-help = Trennen Sie die Dokumente durch Zeilen mit `---`
batch-document-not-utf8 = Das Dokument ist kein UTF-8-Text
batch-document-not-utf8-help = Schreiben Sie die Dokumente in UTF-8
batch-path-not-utf8 = Ein Pfad auf stdin ist kein UTF-8-Text
batch-map-of-one = Eine Karte braucht einen Auftrag und eine Maschine
batch-map-of-one-help = Rufen Sie `batch` für jeden Auftrag und jede Maschine einmal auf, jeweils mit einer Karte
batch-map-stdin = Eine Karte braucht eine Auftragsdatei, nicht stdin
batch-map-stdin-help = Schreiben Sie den Auftrag in eine Datei
batch-map-no-family = `{ $file }` hat kein `vary`, es gibt also nichts zu zeichnen
batch-map-no-family-help = Fügen Sie `vary: {"{"}length: {"{"}section: body, from: 200, to: 1200, step: 50{"}"}{"}"}` in den Auftrag ein
batch-map-axis = { $key } von { $section }, { -mm }
batch-interrupted = Die Zeilen in { $file } sind vollständig. `--resume` setzt nach ihnen fort.
batch-same-file = Die Zeilen und die Karte haben dieselbe Datei, `{ $file }`
batch-same-file-help = Nennen Sie für eines von beiden eine andere Datei
batch-file-without-lines = `{ $file }` gibt es schon, und sie enthält keine Zeilen von `batch`
batch-file-without-drawing = `{ $file }` gibt es schon, und sie ist keine Zeichnung
batch-file-in-use = Ein anderer Aufruf schreibt gerade in `{ $file }`
batch-file-in-use-help = Warten Sie auf sein Ende, oder nennen Sie eine andere Datei
batch-line-unwritten = Eine Zeile lässt sich nicht in `{ $file }` schreiben: { $reason }
batch-line-unwritten-help = Beseitigen Sie die Ursache, und rufen Sie noch einmal auf, mit `--resume`. Die Zeilen davor sind vollständig
batch-resume-no-line = Zeile { $line } von `{ $file }` ist keine Zeile von `batch`
batch-resume-other = Zeile { $line } von `{ $file }` ist das Ergebnis von { $found }, dieser Aufruf hat dort aber { $wanted }
batch-resume-beyond = Zeile { $line } von `{ $file }` ist das Ergebnis von { $found }, dieser Aufruf hat aber keine weiteren Aufträge
batch-resume-help = Geben Sie die Aufträge und Maschinen des abgebrochenen Aufrufs in derselben Reihenfolge an, oder lassen Sie `--resume` weg, um die Datei neu zu schreiben
batch-lines = { $lines ->
    [one] { $lines } Zeile in { $time } s
   *[other] { $lines } Zeilen in { $time } s
}
batch-lines-resumed = { $lines ->
    [one] { $lines } Zeile ({ $before } aus dem abgebrochenen Aufruf) in { $time } s
   *[other] { $lines } Zeilen ({ $before } aus dem abgebrochenen Aufruf) in { $time } s
}
batch-machine-of-job = Maschine des Auftrags
batch-head-machine = Maschine
batch-head-feasible = machbar
batch-head-at-risk = riskant
batch-head-infeasible = nicht machbar
batch-head-wrong = Eingabefehler
batch-head-defects = Programmfehler
batch-head-time = Planung, s
batch-row-all = alle

# compare
compare-no-bush = die Maschine hat keine Führungsbuchse
compare-only-bush = die Maschine arbeitet nicht ohne ihre Führungsbuchse
compare-best = { $feasible } von { $ways } Varianten machbar{ $at_risk ->
    [0] {""}
   *[other] , davon { $at_risk } riskant
}. Beste: { $holding }, { $tools }, { $time } s je Teil auf { $machine }
compare-none = Keine von { $ways } Varianten ist machbar auf { $machines }
compare-bush = Buchse
compare-no-bush-short = ohne Buchse
compare-single = Einzelwerkzeug
compare-opposed = gegenüb. Paar
compare-tandem = Tandem
compare-feasible = Machbar (riskante zuletzt, kürzeste Zeit zuerst; hält: bei so vielen von 100 simulierten Teilen)
compare-infeasible = Nicht machbar (größte gedrehte Länge zuerst)
compare-way = { $way }, { $tools }:
compare-way-reaches = { $way }, { $tools }, gedrehte Länge { $turned } von { $length } { -mm }:
compare-way-full-length = { $way }, { $tools }, bis zur vollen Länge gedreht:
compare-head-machine = Maschine
compare-head-holding = Führung
compare-head-tools = Werkzeuge
compare-head-stages = Etappen
compare-head-hand-overs = Übergaben
compare-head-lines = Linien
compare-head-check = knappste Prüfung
compare-head-good = hält
compare-head-time = s/Teil
compare-head-pieces = je Stange

# draft, new
draft-file-too-large-help = Speichern Sie eine Zeichnung der Welle allein
draft-written = { $file } ist geschrieben. Prüfen Sie die Datei, dann rufen Sie auf: spanhold plan { $file }
new-shop-written = { $file } ist geschrieben. Tragen Sie Ihre Maschinen, Spannzangen, Werkstoffe und Stangen ein. Aufträge in ihrem Ordner und darunter verwenden sie, wenn sie shop.yaml heißt
new-two-files = `new` schreibt eine Datei, und `{ $file }` ist eine zweite
new-two-files-help = Schreiben Sie `spanhold new FILE` für einen Auftrag oder `spanhold new shop FILE` für eine Betriebsdatei
new-written = { $file } ist geschrieben. Nächster Aufruf: spanhold plan { $file }

# recheck
recheck-no-plan = `{ $file }` ist kein Plan: { $reason }
recheck-no-plan-help = Geben Sie die Datei plan.json von `plan --out` an
recheck-changed = Der Auftrag oder die Maschine hat sich geändert, seit der Plan erstellt wurde.
recheck-unchanged = Auftrag und Maschine haben sich nicht geändert.
recheck-margin = Die Reserve hat sich geändert: { $found } % sind übrig, der Plan sagt { $planned } %.
recheck-proven = WEITERHIN NACHGEWIESEN  { $job }: { $states } Zustände geprüft, die knappste Prüfung liegt bei { $used } des Grenzwerts
recheck-not-proven = NICHT MEHR NACHGEWIESEN  { $job }: { $rules ->
    [one] { $rules } Regel ist verletzt
   *[other] { $rules } Regeln sind verletzt
}
recheck-breach-of-stage = Etappe { $stage }: { $rule }: { $why }
recheck-breach-of-plan = Plan: { $rule }: { $why }

# The language.
option-lang = Sprache der Texte: { $languages }. Sonst die des Auftrags oder der Betriebsdatei (`language`), sonst Englisch
option-units = Einheiten der Texte: `mm` oder `inch`. Sonst die des Auftrags oder der Betriebsdatei (`units`), sonst { -mm }
no-such-language = es gibt Texte in { $languages }

# The font of the PDF.
font-help = nennen Sie eine Schriftdatei, TTF oder OTF
font-unreadable = `{ $file }` kann nicht als Schrift gelesen werden: { $reason }
font-wanted = sheet.pdf fehlt: seinen Schriften fehlen die Buchstaben dieser Sprache. Nennen Sie eine Schriftdatei mit `--font FILE`.
