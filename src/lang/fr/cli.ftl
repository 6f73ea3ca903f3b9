# The command line.

# For every command.
defect-of-program = Une erreur dans ce programme (merci de la signaler avec le fichier de travail)
defect-of-program-because = Une erreur dans ce programme (merci de la signaler avec le fichier de travail). Aucune gamme n’est affichée. Raison : { $reason }
result-not-printed = Le résultat n’a pas pu être affiché : { $reason }.
interrupted = Interrompu.
option-out-of-range = `--{ $option }` ne peut pas être { $value }
option-out-of-range-help = Écrire un nombre de { $low } à { $high }
progress-counting = {"{msg} {bar:40} {pos} sur {len}, reste {eta}"}
progress-jobs = travaux
progress-ways = variantes

# Files that are written.
file-unwritable = `{ $file }` ne peut pas être écrit : { $reason }
file-now-at = L’ancien contenu de `{ $file }` est maintenant dans `{ $now }`. Renommer ce fichier
file-exists = `{ $file }` existe déjà
file-exists-help = Indiquer un autre fichier, ou supprimer celui-ci
file-no-name = `{ $file }` n’est pas un nom de fichier
file-no-name-help = Indiquer un autre fichier
file-is-device = `{ $file }` est un périphérique ou un tube, pas un fichier
file-is-input = `{ $file }` est une entrée de cet appel et serait écrasé
file-is-input-help = Indiquer un autre endroit pour la sortie
folder-not-made = Le dossier `{ $folder }` ne peut pas être créé : { $reason }

# at
at-note = Remarque : { $note }
at-turned = longueur tournée
at-turned-is = { $turned } { -mm }, tronçon { $section } ({ $work })
at-front = extrémité avant
at-front-is-held = tenue par la pince { $collet }, nez à { $nose } { -mm }
at-front-is-free = libre
at-front-is-on-centre = sur la pointe
at-headstock = poupée
at-headstock-is = à { $at } { -mm } de la face du canon
at-speed = vitesse
at-unsupported = longueur non soutenue
at-unsupported-is = { $length } { -mm }, L/d { $ratio }
at-critical-speed = vitesse critique
at-frequencies = fréquences propres
at-stiffness = raideur à l’outil
at-span-stiffness = point le plus souple
at-span-stiffness-is = { $stiffness } N/µm à { $at } { -mm }, entre la prise et le canon
at-sag = flèche due au poids
at-bow = courbure en rotation
at-main-force = effort de coupe principal
at-passive-force = effort passif
at-passive-force-is = { $force } { -n }, dont { $net } { -n } restent sur la barre
at-finisher = outil de finition
at-finisher-is = à { $at } { -mm }, où la flèche est indiquée
at-deflection = flèche à l’outil
at-deflection-is = { $deflection } { -um } ; le diamètre varie de { $change } { -um } le long de la passe
at-chatter-limit = limite de broutement
at-chatter-limit-is = { $depth } { -mm } de profondeur de passe
at-head-check = critère
at-head-found = trouvé
at-head-limit = limite
at-head-unit = unité
at-head-used = utilisé
at-head-place = pire point, { -mm }

# batch
batch-stdin-unreadable = stdin ne peut pas être lu : { $reason }
batch-stdin-twice = stdin (`-`) est donné deux fois
batch-stdin-twice-help = Donner `-` une seule fois
batch-document-too-large = Le document dépasse { $most } Mio
batch-document-too-large-help = Séparer les documents par des lignes `---`
batch-document-not-utf8 = Le document n’est pas un texte UTF-8
batch-document-not-utf8-help = Écrire les documents en UTF-8
batch-path-not-utf8 = Un chemin sur stdin n’est pas un texte UTF-8
batch-map-of-one = Une carte demande un seul travail et une seule machine
batch-map-of-one-help = Appeler `batch` une fois par travail et par machine, avec une carte pour chacun
batch-map-stdin = Une carte demande un fichier de travail, pas stdin
batch-map-stdin-help = Écrire le travail dans un fichier
batch-map-no-family = `{ $file }` n’a pas de `vary`, il n’y a donc rien à dessiner
batch-map-no-family-help = Ajouter `vary: {"{"}length: {"{"}section: body, from: 200, to: 1200, step: 50{"}"}{"}"}` au travail
batch-map-axis = { $key } de { $section }, { -mm }
batch-interrupted = Les lignes dans { $file } sont complètes. `--resume` continue après elles.
batch-same-file = Les lignes et la carte ont le même fichier, `{ $file }`
batch-same-file-help = Indiquer un autre fichier pour l’une des deux
batch-file-without-lines = `{ $file }` existe déjà et ne contient pas de lignes de `batch`
batch-file-without-drawing = `{ $file }` existe déjà et n’est pas un dessin
batch-file-in-use = Un autre appel écrit dans `{ $file }`
batch-file-in-use-help = Attendre sa fin, ou indiquer un autre fichier
batch-line-unwritten = Une ligne ne peut pas être écrite dans `{ $file }` : { $reason }
batch-line-unwritten-help = Supprimer la cause et appeler de nouveau avec `--resume`. Les lignes précédentes sont complètes
batch-resume-no-line = La ligne { $line } de `{ $file }` n’est pas une ligne de `batch`
batch-resume-other = La ligne { $line } de `{ $file }` est le résultat de { $found }, mais cet appel a { $wanted } à cet endroit
batch-resume-beyond = La ligne { $line } de `{ $file }` est le résultat de { $found }, mais cet appel n’a plus de travaux
batch-resume-help = Donner les travaux et les machines de l’appel interrompu dans le même ordre, ou enlever `--resume` pour réécrire le fichier
batch-lines = { $lines ->
    [one] { $lines } ligne en { $time } s
   *[other] { $lines } lignes en { $time } s
}
batch-lines-resumed = { $lines ->
    [one] { $lines } ligne ({ $before } de l’appel interrompu) en { $time } s
   *[other] { $lines } lignes ({ $before } de l’appel interrompu) en { $time } s
}
batch-machine-of-job = machine du travail
batch-head-machine = machine
batch-head-feasible = réalisable
batch-head-at-risk = à risque
batch-head-infeasible = non réalisable
batch-head-wrong = erreurs d’entrée
batch-head-defects = erreurs progr.
batch-head-time = calcul, s
batch-row-all = total

# compare
compare-no-bush = la machine n’a pas de canon
compare-only-bush = la machine ne travaille pas sans son canon
compare-best = Variantes réalisables : { $feasible } sur { $ways }{ $at_risk ->
    [0] {""}
   *[other] , dont { $at_risk } à risque
}. La meilleure : { $holding }, { $tools }, { $time } s par pièce sur { $machine }
compare-none = Aucune des { $ways } variantes n’est réalisable sur { $machines }
compare-bush = canon
compare-no-bush-short = sans canon
compare-single = outil seul
compare-opposed = outils opposés
compare-tandem = tandem
compare-feasible = Réalisables (celles à risque en dernier, les plus rapides d’abord ; tient : pour tant de pièces simulées sur 100)
compare-infeasible = Non réalisables (la plus grande longueur tournée d’abord)
compare-way = { $way }, { $tools } :
compare-way-reaches = { $way }, { $tools }, longueur tournée { $turned } sur { $length } { -mm } :
compare-way-full-length = { $way }, { $tools }, tourné sur toute la longueur :
compare-head-machine = machine
compare-head-holding = maintien
compare-head-tools = outils
compare-head-stages = étapes
compare-head-hand-overs = transferts
compare-head-lines = marques
compare-head-check = critère le + serré
compare-head-good = tient
compare-head-time = s/pièce
compare-head-pieces = par barre

# draft, new
draft-file-too-large-help = Enregistrer un dessin de l’arbre seul
draft-written = { $file } est écrit. Le vérifier, puis appeler : spanhold plan { $file }
new-shop-written = { $file } est écrit. Y mettre vos machines, pinces, matières et barres. Les travaux de son dossier et des sous-dossiers l’utilisent s’il s’appelle shop.yaml
new-two-files = `new` écrit un seul fichier, et `{ $file }` en est un second
new-two-files-help = Écrire `spanhold new FILE` pour un travail, ou `spanhold new shop FILE` pour un fichier d’atelier
new-written = { $file } est écrit. Appel suivant : spanhold plan { $file }

# recheck
recheck-no-plan = `{ $file }` n’est pas une gamme : { $reason }
recheck-no-plan-help = Donner le fichier plan.json de `plan --out`
recheck-changed = Le travail ou la machine a changé depuis que la gamme a été faite.
recheck-unchanged = Le travail et la machine n’ont pas changé.
recheck-margin = La marge a changé : il reste { $found } %, la gamme dit { $planned } %.
recheck-proven = TOUJOURS VÉRIFIÉE  { $job } : { $states } états vérifiés, le critère le plus serré est à { $used } de sa limite
recheck-not-proven = N’EST PLUS VÉRIFIÉE  { $job } : { $rules ->
    [one] { $rules } règle n’est pas respectée
   *[other] { $rules } règles ne sont pas respectées
}
recheck-breach-of-stage = Étape { $stage } : { $rule } : { $why }
recheck-breach-of-plan = Gamme : { $rule } : { $why }

# The language.
option-lang = Langue des textes : { $languages }. Sinon celle du travail ou du fichier de l’atelier (`language`), sinon l’anglais
option-units = Unités des textes : `mm` ou `inch`. Sinon celles du travail ou du fichier de l’atelier (`units`), sinon { -mm }
no-such-language = il y a des textes en { $languages }

# The font of the PDF.
font-help = indiquez un fichier de police, TTF ou OTF
font-unreadable = `{ $file }` ne peut pas être lu comme police : { $reason }
font-wanted = sheet.pdf est omis : ses polices n’ont pas les lettres de cette langue. Indiquez un fichier de police avec `--font FILE`.
