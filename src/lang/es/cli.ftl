# The command line.

# For every command.
defect-of-program = Un error de este programa (se ruega notificarlo con el archivo de trabajo)
defect-of-program-because = Un error de este programa (se ruega notificarlo con el archivo de trabajo). No se muestra ningún plan. Motivo: { $reason }
result-not-printed = No se pudo mostrar el resultado: { $reason }.
interrupted = Interrumpido.
option-out-of-range = `--{ $option }` no puede ser { $value }
option-out-of-range-help = Escribir un número de { $low } a { $high }
progress-counting = {"{msg} {bar:40} {pos} de {len}, quedan {eta}"}
progress-jobs = trabajos
progress-ways = variantes

# Files that are written.
file-unwritable = No se puede escribir `{ $file }`: { $reason }
file-now-at = El contenido anterior de `{ $file }` está ahora en `{ $now }`. Cambiar el nombre de este archivo
file-exists = `{ $file }` ya existe
file-exists-help = Indicar otro archivo, o eliminar este
file-no-name = `{ $file }` no es un nombre de archivo
file-no-name-help = Indicar otro archivo
file-is-device = `{ $file }` es un dispositivo o una tubería, no un archivo
file-is-input = `{ $file }` es una entrada de esta llamada y se sobrescribiría
file-is-input-help = Indicar otro lugar para la salida
folder-not-made = No se puede crear la carpeta `{ $folder }`: { $reason }

# at
at-note = Nota: { $note }
at-turned = longitud torneada
at-turned-is = { $turned } { -mm }, tramo { $section } ({ $work })
at-front = extremo frontal
at-front-is-held = sujeto por la pinza { $collet }, nariz a { $nose } { -mm }
at-front-is-free = libre
at-front-is-on-centre = en el punto
at-headstock = cabezal
at-headstock-is = a { $at } { -mm } de la cara del casquillo
at-speed = velocidad
at-unsupported = longitud sin apoyo
at-unsupported-is = { $length } { -mm }, L/d { $ratio }
at-critical-speed = velocidad crítica
at-frequencies = frecuencias propias
at-stiffness = rigidez en la herramienta
at-span-stiffness = lugar más flexible
at-span-stiffness-is = { $stiffness } N/µm a { $at } { -mm }, entre agarre y casquillo
at-sag = flecha por peso propio
at-bow = curvatura en giro
at-main-force = fuerza principal de corte
at-passive-force = fuerza pasiva
at-passive-force-is = { $force } { -n }, quedan { $net } { -n } sobre la barra
at-finisher = herramienta de acabado
at-finisher-is = a { $at } { -mm }, donde se indica la flexión
at-deflection = flexión en la herramienta
at-deflection-is = { $deflection } { -um }; el diámetro cambia { $change } { -um } a lo largo de la pasada
at-chatter-limit = límite de vibración
at-chatter-limit-is = { $depth } { -mm } de profundidad de corte
at-head-check = comprob.
at-head-found = hallado
at-head-limit = límite
at-head-unit = unidad
at-head-used = uso
at-head-place = peor lugar, { -mm }

# batch
batch-stdin-unreadable = No se puede leer stdin: { $reason }
batch-stdin-twice = stdin (`-`) se ha indicado dos veces
batch-stdin-twice-help = Indicar `-` una sola vez
batch-document-too-large = El documento es mayor que { $most } MiB
batch-document-too-large-help = Separar los documentos con líneas `---`
batch-document-not-utf8 = El documento no es texto UTF-8
batch-document-not-utf8-help = Escribir los documentos en UTF-8
batch-path-not-utf8 = Una ruta de stdin no es texto UTF-8
batch-map-of-one = Un mapa necesita un solo trabajo y una sola máquina
batch-map-of-one-help = Llamar a `batch` una vez por cada trabajo y máquina, con un mapa para cada uno
batch-map-stdin = Un mapa necesita un archivo de trabajo, no stdin
batch-map-stdin-help = Escribir el trabajo en un archivo
batch-map-no-family = `{ $file }` no tiene `vary`, así que no hay nada que dibujar
batch-map-no-family-help = Añadir `vary: {"{"}length: {"{"}section: body, from: 200, to: 1200, step: 50{"}"}{"}"}` al trabajo
batch-map-axis = { $key } de { $section }, { -mm }
batch-interrupted = Las líneas de { $file } están completas. `--resume` continúa después de ellas.
batch-same-file = Las líneas y el mapa tienen el mismo archivo, `{ $file }`
batch-same-file-help = Indicar otro archivo para uno de los dos
batch-file-without-lines = `{ $file }` ya existe y no contiene líneas de `batch`
batch-file-without-drawing = `{ $file }` ya existe y no es un dibujo
batch-file-in-use = Otra llamada está escribiendo en `{ $file }`
batch-file-in-use-help = Esperar a que termine, o indicar otro archivo
batch-line-unwritten = No se puede escribir una línea en `{ $file }`: { $reason }
batch-line-unwritten-help = Eliminar la causa y llamar de nuevo con `--resume`. Las líneas anteriores están completas
batch-resume-no-line = La línea { $line } de `{ $file }` no es una línea de `batch`
batch-resume-other = La línea { $line } de `{ $file }` es el resultado de { $found }, pero esta llamada tiene ahí { $wanted }
batch-resume-beyond = La línea { $line } de `{ $file }` es el resultado de { $found }, pero esta llamada no tiene más trabajos
batch-resume-help = Indicar los trabajos y las máquinas de la llamada interrumpida en el mismo orden, o quitar `--resume` para escribir el archivo de nuevo
batch-lines = { $lines ->
    [one] { $lines } línea en { $time } s
   *[other] { $lines } líneas en { $time } s
}
batch-lines-resumed = { $lines ->
    [one] { $lines } línea ({ $before } de la llamada interrumpida) en { $time } s
   *[other] { $lines } líneas ({ $before } de la llamada interrumpida) en { $time } s
}
batch-machine-of-job = máquina del trabajo
batch-head-machine = máquina
batch-head-feasible = viables
batch-head-at-risk = en riesgo
batch-head-infeasible = no viables
batch-head-wrong = errores de datos
batch-head-defects = errores de programa
batch-head-time = cálculo, s
batch-row-all = todos

# compare
compare-no-bush = la máquina no tiene casquillo guía
compare-only-bush = la máquina no trabaja sin su casquillo guía
compare-best = Variantes viables: { $feasible } de { $ways }{ $at_risk ->
    [0] {""}
   *[other] , de ellas en riesgo: { $at_risk }
}. La mejor: { $holding }, { $tools }, { $time } s por pieza en { $machine }
compare-none = Ninguna de { $ways } variantes es viable en { $machines }
compare-bush = casquillo
compare-no-bush-short = sin casquillo
compare-single = una herramienta
compare-opposed = par opuesto
compare-tandem = tándem
compare-feasible = Viables (las que están en riesgo al final, menor tiempo primero; cumple: en cuántas de 100 piezas simuladas)
compare-infeasible = No viables (mayor longitud torneada primero)
compare-way = { $way }, { $tools }:
compare-way-reaches = { $way }, { $tools }, longitud torneada { $turned } de { $length } { -mm }:
compare-way-full-length = { $way }, { $tools }, torneado en toda la longitud:
compare-head-machine = máquina
compare-head-holding = sujeción
compare-head-tools = herram.
compare-head-stages = etapas
compare-head-hand-overs = transfer.
compare-head-lines = marcas
compare-head-check = más ajustada
compare-head-good = cumple
compare-head-time = s/pieza
compare-head-pieces = por barra

# draft, new
draft-file-too-large-help = Guardar un plano que solo contenga el eje
draft-written = { $file } está escrito. Comprobarlo y después llamar: spanhold plan { $file }
new-shop-written = { $file } está escrito. Poner en él las máquinas, las pinzas, los materiales y las barras propios. Los trabajos de su carpeta y de las inferiores lo usan si se llama shop.yaml
new-two-files = `new` escribe un solo archivo, y `{ $file }` es el segundo
new-two-files-help = Escribir `spanhold new FILE` para un trabajo, o `spanhold new shop FILE` para un archivo del taller
new-written = { $file } está escrito. Llamar después: spanhold plan { $file }

# recheck
recheck-no-plan = `{ $file }` no es un plan: { $reason }
recheck-no-plan-help = Indicar el plan.json de `plan --out`
recheck-changed = El trabajo o la máquina han cambiado desde que se hizo el plan.
recheck-unchanged = El trabajo y la máquina no han cambiado.
recheck-margin = El margen ha cambiado: queda { $found } %, el plan dice { $planned } %.
recheck-proven = SIGUE VERIFICADO  { $job }: { $states } estados comprobados, la comprobación más ajustada está en { $used } de su límite
recheck-not-proven = YA NO ESTÁ VERIFICADO  { $job }: { $rules ->
    [one] se incumple { $rules } regla
   *[other] se incumplen { $rules } reglas
}
recheck-breach-of-stage = Etapa { $stage }: { $rule }: { $why }
recheck-breach-of-plan = Plan: { $rule }: { $why }

# The language.
option-lang = Idioma de los textos: { $languages }. Si no, el del trabajo o el del archivo del taller (`language`); si no, inglés
option-units = Unidades de los textos: `mm` o `inch`. Si no, las del trabajo o las del archivo del taller (`units`); si no, { -mm }
no-such-language = hay textos en { $languages }

# The font of the PDF.
font-help = indicar un archivo de fuente, TTF u OTF
font-unreadable = `{ $file }` no se puede leer como fuente: { $reason }
font-wanted = sheet.pdf se omite: a sus fuentes les faltan las letras de este idioma. Indicar un archivo de fuente con `--font FILE`.
