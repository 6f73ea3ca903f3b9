# The command line.

# For every command.
defect-of-program = An error in this program (please report it with the job file)
defect-of-program-because = An error in this program (please report it with the job file). No plan is printed. Reason: { $reason }
result-not-printed = The result could not be printed: { $reason }.
interrupted = Interrupted.
option-out-of-range = `--{ $option }` cannot be { $value }
option-out-of-range-help = Write a number from { $low } to { $high }
progress-counting = {"{msg} {bar:40} {pos} of {len}, {eta} left"}
progress-jobs = jobs
progress-ways = ways

# Files that are written.
file-unwritable = `{ $file }` cannot be written: { $reason }
file-now-at = The old content of `{ $file }` is now in `{ $now }`. Rename this file
file-exists = `{ $file }` exists already
file-exists-help = Name another file, or remove this one
file-no-name = `{ $file }` is not the name of a file
file-no-name-help = Name another file
file-is-device = `{ $file }` is a device or a pipe, not a file
file-is-input = `{ $file }` is an input of this call and would be overwritten
file-is-input-help = Name another place for the output
folder-not-made = The folder `{ $folder }` cannot be made: { $reason }

# at
at-note = Note: { $note }
at-turned = turned length
at-turned-is = { $turned } { -mm }, section { $section } ({ $work })
at-front = front end
at-front-is-held = held by collet { $collet }, nose at { $nose } { -mm }
at-front-is-free = free
at-front-is-on-centre = on the centre
at-headstock = headstock
at-headstock-is = { $at } { -mm } from the bush face
at-speed = speed
at-unsupported = unsupported length
at-unsupported-is = { $length } { -mm }, L/d { $ratio }
at-critical-speed = critical speed
at-frequencies = natural frequencies
at-stiffness = stiffness at tool
at-span-stiffness = softest place
at-span-stiffness-is = { $stiffness } N/µm at { $at } { -mm }, between grip and bush
at-sag = sag
at-bow = bow while rotating
at-main-force = main cutting force
at-passive-force = passive force
at-passive-force-is = { $force } { -n }, { $net } { -n } left on the bar
at-finisher = finishing tool
at-finisher-is = at { $at } { -mm }, where the deflection is told
at-deflection = deflection at the tool
at-deflection-is = { $deflection } { -um }; the diameter changes by { $change } { -um } along the travel
at-chatter-limit = chatter limit
at-chatter-limit-is = { $depth } { -mm } depth of cut
at-head-check = check
at-head-found = found
at-head-limit = limit
at-head-unit = unit
at-head-used = used
at-head-place = worst at { -mm }

# batch
batch-stdin-unreadable = stdin cannot be read: { $reason }
batch-stdin-twice = stdin (`-`) is given twice
batch-stdin-twice-help = Give `-` once
batch-document-too-large = The document is larger than { $most } MiB
batch-document-too-large-help = Separate the documents with `---` lines
batch-document-not-utf8 = The document is not UTF-8 text
batch-document-not-utf8-help = Write the documents in UTF-8
batch-path-not-utf8 = A path on stdin is not UTF-8 text
batch-map-of-one = A map needs one job and one machine
batch-map-of-one-help = Call `batch` once for each job and machine, with a map for each
batch-map-stdin = A map needs a job file, not stdin
batch-map-stdin-help = Write the job into a file
batch-map-no-family = `{ $file }` has no `vary`, so there is nothing to draw
batch-map-no-family-help = Add `vary: {"{"}length: {"{"}section: body, from: 200, to: 1200, step: 50{"}"}{"}"}` to the job
batch-map-axis = { $key } of { $section }, { -mm }
batch-interrupted = The lines in { $file } are complete. `--resume` continues after them.
batch-same-file = The lines and the map have the same file, `{ $file }`
batch-same-file-help = Name another file for one of them
batch-file-without-lines = `{ $file }` exists already and does not have lines of `batch`
batch-file-without-drawing = `{ $file }` exists already and is not a drawing
batch-file-in-use = Another call is writing into `{ $file }`
batch-file-in-use-help = Wait for its end, or name another file
batch-line-unwritten = A line cannot be written into `{ $file }`: { $reason }
batch-line-unwritten-help = Remove the cause and call again with `--resume`. The lines before are complete
batch-resume-no-line = Line { $line } of `{ $file }` is not a line of `batch`
batch-resume-other = Line { $line } of `{ $file }` is the result of { $found }, but this call has { $wanted } there
batch-resume-beyond = Line { $line } of `{ $file }` is the result of { $found }, but this call has no more jobs
batch-resume-help = Give the jobs and machines of the interrupted call in the same order, or remove `--resume` to write the file anew
batch-lines = { $lines ->
    [one] { $lines } line in { $time } s
   *[other] { $lines } lines in { $time } s
}
batch-lines-resumed = { $lines ->
    [one] { $lines } line ({ $before } from the interrupted call) in { $time } s
   *[other] { $lines } lines ({ $before } from the interrupted call) in { $time } s
}
batch-machine-of-job = machine of the job
batch-head-machine = machine
batch-head-feasible = feasible
batch-head-at-risk = at risk
batch-head-infeasible = infeasible
batch-head-wrong = input errors
batch-head-defects = program errors
batch-head-time = planning, s
batch-row-all = all

# compare
compare-no-bush = the machine has no guide bush
compare-only-bush = the machine does not work without its guide bush
compare-best = { $feasible } of { $ways } ways feasible{ $at_risk ->
    [0] {""}
   *[other] , { $at_risk } of them at risk
}. Best: { $holding }, { $tools }, { $time } s per part on { $machine }
compare-none = None of { $ways } ways is feasible on { $machines }
compare-bush = bush
compare-no-bush-short = no bush
compare-single = single tool
compare-opposed = opposed pair
compare-tandem = tandem
compare-feasible = Feasible (those at risk last, shortest time first; holds: in so many of 100 sampled parts)
compare-infeasible = Not feasible (longest turned length first)
compare-way = { $way }, { $tools }:
compare-way-reaches = { $way }, { $tools }, turned length { $turned } of { $length } { -mm }:
compare-way-full-length = { $way }, { $tools }, turned to the full length:
compare-head-machine = machine
compare-head-holding = holding
compare-head-tools = tools
compare-head-stages = stages
compare-head-hand-overs = hand-overs
compare-head-lines = lines
compare-head-check = closest check
compare-head-good = holds
compare-head-time = s/part
compare-head-pieces = per bar

# draft, new
draft-file-too-large-help = Save a drawing of the shaft alone
draft-written = { $file } is written. Check it, then call: spanhold plan { $file }
new-shop-written = { $file } is written. Put in your machines, collets, materials and bars. Jobs in its folder and below use it if it is called shop.yaml
new-two-files = `new` writes one file, and `{ $file }` is a second one
new-two-files-help = Write `spanhold new FILE` for a job, or `spanhold new shop FILE` for a shop's file
new-written = { $file } is written. Next call: spanhold plan { $file }

# recheck
recheck-no-plan = `{ $file }` is not a plan: { $reason }
recheck-no-plan-help = Give the plan.json of `plan --out`
recheck-changed = The job or the machine has changed since the plan was made.
recheck-unchanged = The job and the machine have not changed.
recheck-margin = The margin has changed: { $found } % is left, the plan says { $planned } %.
recheck-proven = STILL PROVEN  { $job }: { $states } states checked, the closest check is at { $used } of its limit
recheck-not-proven = NO LONGER PROVEN  { $job }: { $rules ->
    [one] { $rules } rule is broken
   *[other] { $rules } rules are broken
}
recheck-breach-of-stage = Stage { $stage }: { $rule }: { $why }
recheck-breach-of-plan = Plan: { $rule }: { $why }

# The language.
option-lang = Language of the texts: { $languages }. Else that of the job or of the shop's file (`language`), else English
option-units = Units of the texts: `mm` or `inch`. Else those of the job or of the shop's file (`units`), else { -mm }
no-such-language = there are texts in { $languages }

# The font of the PDF.
font-help = name a font file, TTF or OTF
font-unreadable = `{ $file }` cannot be read as a font: { $reason }
font-wanted = sheet.pdf is left out: its fonts lack the letters of this language. Name a font file with `--font FILE`.
