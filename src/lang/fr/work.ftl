# Names of works and tools, and wishes, as they stand in a plan.

## Works. Lengths are in mm.

work-centre-hole = trou de centre { $hole }
work-hole = trou Ø{ $diameter }, profondeur { $depth }
work-hole-for-thread = { $hole } pour { $thread }
work-hole-for-socket = { $hole } pour le six pans creux
work-hole-across-for-thread = trou Ø{ $diameter } pour { $thread }
work-tap = taraudage { $thread }, profondeur { $depth }
work-tap-across = taraudage { $thread } transversal
work-socket-shaved = six pans creux { $size }, profondeur { $depth }, mortaisé en 6 × { $strokes } courses
work-socket-punched = six pans creux { $size }, profondeur { $depth }, poinçonné
work-keyway = rainure de clavette int. { $width } × { $depth }, longueur { $length }, mortaisée en { $strokes } courses
work-keyseat = rainure de clavette { $width } × { $depth }, { $from } à { $to }
work-engraving = gravure { $text }, hauteur { $height }
work-facing = dressage de { $depth }
work-rolling = roulage { $thread } sur { $section }
work-flats = { $sides } méplats, { $across } sur plats, sur { $section }
work-knurl = moletage sur { $section }
work-cross-hole = trou transversal Ø{ $diameter }
work-front = { $work }, avant
work-back = { $work }, arrière

## Tools

tool-turning = outil de tournage
tool-roughing-of-pair = outil d’ébauche de la paire
tool-finishing-of-pair = outil de finition de la paire
tool-finishing = outil de finition
tool-back-turning = outil de tournage arrière
tool-pitch = pas { $pitch }
tool-angle-pitch = { $angle }°, pas { $pitch }
tool-part-off = outil à tronçonner
tool-grooving = outil à gorge { $width }
tool-whirling = tête de tourbillonnage, { $cutter }
tool-threading = outil à fileter, { $cutter }
tool-centre-drill = foret à centrer { $hole }
tool-drill = foret Ø{ $diameter }
tool-tap = taraud { $thread }
tool-shaving-hexagon = outil à mortaiser, six pans { $size }
tool-shaving-keyway = outil à mortaiser, rainure de clavette int. { $width }
tool-punch = poinçon, six pans { $size }
tool-engraver = fraise à graver
tool-facing = outil à dresser
tool-rolls = molettes de roulage { $thread }
tool-flats = fraise à méplats
tool-knurling = outil à moleter
tool-slot = fraise à rainurer { $width }

## Wishes, to be put after "the wish to".

wish-hand-over = faire un transfert à { $at } { -mm }
wish-hand-over-nose = faire un transfert à { $at } { -mm } avec le nez à { $nose } { -mm }
wish-never-grip = ne jamais serrer { $what }
wish-at-most = { $number ->
    [one] faire au plus { $number } transfert
   *[other] faire au plus { $number } transferts
}

## Values that a standard does not have

centre-mouth = `{ $given }` : un trou de centre { $name } a { $mouth } mm de diamètre à l’entrée
centre-mouth-help = écrire `{ $name }`
centre-unknown = `{ $given }` n’est pas un trou de centre d’ISO 6411
centre-unknown-help = écrire A, B ou R et le diamètre de l’avant-trou, par exemple `A2.5` ; avant-trous : { $pilots } (B et R à partir de 1)
general-too-small = { $size } mm est inférieur à { $from } mm, où ISO 2768 ne donne pas de tolérance générale
general-too-small-help = donner une tolérance : `tolerance: h6`, ou en mm `tolerance: [-0.01, 0]`
general-too-large = { $size } mm dépasse la table des tolérances générales
general-too-large-help = donner une tolérance en mm : `tolerance: [-0.5, 0.5]`
iso286-grade = le degré de tolérance { $grade } n’est pas dans la table
iso286-grade-help = les degrés vont de { $first } à { $last }
iso286-no-class = `{ $class }` n’est pas dans la table
iso286-j-help = j existe comme j5, j6 et j7 ; pour d’autres degrés, utiliser js
iso286-no-class-at = `{ $class }` n’est pas dans la table pour { $diameter } mm
iso286-t-help = t commence au-dessus de 24 mm ; utiliser u en dessous
iso286-hole = `{ $class }` est une classe pour trous
iso286-hole-help = un arbre prend des lettres minuscules : `{ $class }`
iso286-unknown = `{ $class }` n’est pas une classe de tolérance d’arbre
iso286-unknown-help = écrire une classe d’ISO 286 avec d, e, f, g, h, j, js, k, m, n, p, r, s, t, u ou x et un degré de 4 à 13, par exemple `h6`, ou des écarts en mm : `[-0.05 mm, 0]`
engraving-letter = `{ $letter }` ne peut pas être gravé
engraving-letter-help = les lettres A à Z sans accents, les chiffres, l’espace, Ø et - . , / + : ( ) sont connus

## Labels of the drawing

label-knurl = Ø{ $diameter } moleté
label-flats = sur plats { $size } ×{ $sides }
label-ground = rectifié Ø{ $diameter } { $class }
label-keyway = rainure int. { $width } × { $depth }
label-hexagon = 6 pans { $size } × { $depth }
label-face = dressage { $depth }
label-bore = alésage Ø{ $diameter }

## A family of parts.
varied-range = { $key } de { $section }, { $from } à { $to } { -mm } par pas de { $step }
varied-size = { $key } de { $section } { $size } { -mm }
