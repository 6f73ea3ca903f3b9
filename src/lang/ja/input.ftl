# What is wrong with a job, a machine or a readings file.

# The place of an error in a file.
diag-place = { $file }、{ $line } 行、{ $column } 列
diag-place-of-key = { $file }、{ $line } 行、{ $column } 列、{ $key }

errors-more = ほかの { $count } 件の誤りは表示していません
errors-more-help = 先に上の誤りを直してください
did-you-mean = `{ $near }` のことですか
defect-of-reader = 本プログラムの誤りのため、ファイルの読込みが止まりました
defect-of-reader-help = 報告してください

# Kinds of values.
kind-nothing = 空の値
kind-flag = true または false
kind-number = 数
kind-text = 文字列
kind-list = リスト
kind-map = キーの組

# The text as YAML.
yaml-empty = ファイルが空です
yaml-empty-help = `spanhold new` が出力するジョブから始めてください
yaml-nested = 値の入れ子が深すぎます
yaml-nested-help = 入れ子は 8 段までにしてください
yaml-anchors = アンカーとエイリアス（`&`, `*`）は使えません
yaml-anchors-help = 値をすべて書いてください。& または * で始まる文字列は引用符で囲んでください
yaml-documents = ファイルに文書が 2 つ以上あります
yaml-documents-help = 1 ファイルにジョブを 1 つ書いてください。`---` の行を削除してください
yaml-values = ファイルの値の数が、ジョブの上限を超えています
yaml-values-help = 区間は 1000 個まで、加工要素は 1000 個までにしてください
yaml-tags = タグ（`!`）は使えません
yaml-tags-help = タグを削除してください。`!` で始まる文字列は引用符で囲んでください
yaml-merge-keys = マージキー（`<<`）は使えません
yaml-merge-keys-help = キーをすべて書いてください
yaml-invalid = 正しい YAML ではありません：{ $reason }
yaml-invalid-help = ここと上の行の括弧、コロン、引用符、字下げを確認してください

# Keys.
keys-needed = ここには値の付いたキーが必要ですが、書かれているのは「{ $kind }」です
keys-needed-help = `key: value` の形で書いてください。使えるキー：{ $keys }
key-twice = `{ $key }` が 2 回あります
key-twice-help = 一方を削除してください。1 回目は { $line } 行目です
key-unknown = 未知のキー `{ $key }`
key-unknown-help = 次のどれかのキーを使ってください：{ $keys }
key-is-of-planning = `planning` の下に書いてください：`planning: {"{"}station_pitch: 5{"}"}`
key-is-decimal = `{ $key }` はキーではありません
key-is-decimal-help = 小数は小数点（ピリオド）で書いてください：`{ $meant }`
key-not-text = キーは文字列でなければなりませんが、書かれているのは「{ $kind }」です
key-missing = `{ $key }` がありません
key-missing-help = `{ $key }` を加えてください：{ $hint }
value-missing = `{ $key }` に値がありません
value-missing-help = 値を書くか、キーを削除してください

# Numbers.
number-too-small = { $value } は小さすぎます
number-too-large = { $value } は大きすぎます
number-not-finite = 有限の数ではありません
number-range = { $low } から { $high } の数を書いてください（{ $meaning }）
number-range-in-unit = { $low } から { $high } の数を { $unit } で書いてください（{ $meaning }）
number-needed = ここには数が必要ですが、書かれているのは「{ $kind }」です
number-not-whole = { $value } は整数ではありません
number-not-whole-help = 整数を書いてください（{ $meaning }）
number-not-decimal = `{ $value }` は 10 進数ではありません
number-write = { $value } と書いてください
number-in-quotes = 引用符があるため、{ $value } は数ではなく文字列になります
number-in-quotes-help = { $value } を引用符なしで書いてください
number-unreadable = `{ $text }` は数ではありません
number-decimal-comma = `{ $text }` の小数点がコンマになっています
number-has-unit = `{ $text }` の単位はここでは使えません
number-in-unit = 数の後に次のいずれかの単位を書いてください：{ $units }。数だけの場合の単位は { $own } です
number-without-unit = 数だけを書いてください。この値に単位はありません
pair-needed = ここには 2 つの数が必要ですが、書かれているのは「{ $kind }」です
pair-needed-list = ここには 2 つの数が必要ですが、{ $count } 個のリストが書かれています
pair-needed-help = `{ $key }: { $form }` の形で書いてください
pair-needed-point = `{ $key }: { $form }` の形で、小数点（ピリオド）を使って書いてください

# Lists, texts, words.
list-too-long = `{ $key }` の項目が { $count } 個あります
list-too-long-help = 項目は { $most } 個までにしてください
list-needed = ここにはリストが必要ですが、書かれているのは「{ $kind }」です
list-needed-help = 1 行に 1 項目を `- ` の後に書くか、全項目を角括弧に入れて書いてください：[..., ...]
text-needed = `{ $key }` には文字列が必要ですが、書かれているのは「{ $kind }」です
text-needed-help = 文字列を 1 行で書いてください
text-empty = `{ $key }` が空です
text-too-long = 文字列が長すぎるか、改行があります
text-too-long-help = { $most } 文字以内で 1 行に書いてください
choice-unknown = `{ $word }` は `{ $key }` の値ではありません
choice-help = 次のどれかを書いてください：{ $words }
flag-needed = ここには `true` または `false` が必要ですが、書かれているのは「{ $kind }」です
flag-needed-help = `{ $key }: true` または `{ $key }: false` と書いてください

# Files.
file-missing = ファイル `{ $file }` がありません
file-check-path = パスを確認してください
file-not-permitted = `{ $file }` を読む権限がありません
file-not-permitted-help = ファイルの権限を確認してください
file-unreadable = `{ $file }` を読めません：{ $reason }
file-not-utf8 = `{ $file }` は UTF-8 のテキストではありません（最初の誤りは { $line } 行目）
file-not-utf8-help = ファイルを UTF-8 で保存してください
file-is-folder = `{ $file }` はフォルダです
file-is-folder-help = このフォルダの中のファイルを指定してください
file-too-large = `{ $file }` が { $most } MiB を超えています
file-too-large-help = ファイル名を確認してください。ジョブファイルや機械ファイルは数 kB しかありません

# Machine files.
machine-not-job = これはジョブではなく機械ファイルです
machine-not-job-help = ジョブファイルを指定してください。機械は、ジョブの中で `machine: { $file }` と書くか、呼出しで `JOB --machine { $file }` と指定します
machine-in-file = 機械は別のファイル `{ $file }` にあります
machine-in-file-help = そのファイルも開くか、機械をジョブの中に書いてください
machine-path-or-name = または `{ $file }` にある名前を書いてください：{ $names }
machine-path-from = パスは { $file } のフォルダを基準とします
machine-without = 機械 `{ $machine }` に `{ $key }` がありません
machine-without-holding = 機械 `{ $machine }` に `{ $key }` がありませんが、ジョブは `holding: { $key }` で加工します
machine-without-holding-help = 機械に `{ $key }` を加えるか、`holding: { $other }` と書いてください
phase-error-alone = 位相誤差には、背面主軸のねじり剛性が必要です
phase-error-alone-help = torsional_stiffness を N·m/rad で加えるか、phase_error を省いてください
bush-engagement = { $engagement } mm はブッシュの案内部より長い値です
bush-engagement-help = { $most } 以下の値を書いてください
spindle-farthest = { $farthest } mm は `nearest` より遠くありません
spindle-farthest-help = ブッシュ端面から背面主軸端面までの距離を、{ $nearest } より大きい値で書いてください
collets-none = 背面主軸にコレットがありません
collets-none-help = コレットを 1 つ以上加えるか、`counter_spindle` を削除してください
collets-same-name = 2 つのコレットの名前が同じ `{ $name }` です
collets-same-name-help = コレットごとに別の名前を付けてください
collet-range = 大きい方の直径が先に書かれています
collet-range-help = 小さい方の直径を先に書いてください：`range: [{ $smallest }, { $largest }]`
collet-passes = { $passes } mm は、コレットがつかむ最大の直径より小さい値です
collet-passes-help = { $largest } 以上の値を書いてください
headstock-in-bush = { $nearest } mm はブッシュの案内部より短い値です
headstock-in-bush-help = ブッシュ端面からコレット端面までの距離を書いてください：{ $land } 以上

# Bar and cutting.
stock-too-thin = { $bar } mm の棒材は細すぎます：{ $section } には { $needed } mm が必要です
stock-too-thin-help = { $needed } mm 以上の棒材を使ってください
stock-too-short = { $bar } mm の棒材は、軸 1 本分には短すぎます
stock-too-short-help = `bar_length` を、{ $needed } mm（軸、突切り、端面削り）に残材を加えた長さ以上にしてください
cutting-last-pass = 最終パスの { $depth } mm が `ap_max` より深くなっています
cutting-last-pass-help = { $most } 以下の値を書いてください
cutting-no-lag = タンデム工具では、仕上げ工具が荒削り工具の後ろになければなりません
cutting-no-lag-help = `lag` を 0 より大きい値（mm）で書いてください。同じ位置の 2 本の工具は対向工具です：`tools: opposed`
cutting-finisher-alone = `finisher` はタンデム工具の仕上げ工具の指定ですが、`tools` は { $tools } です
cutting-finisher-alone-help = `tools: tandem` と書くか、`finisher` を省いてください
cutting-no-speed = 切削速度がなく、材料 { $material } には通常の範囲がありません
cutting-no-speed-help = `cutting` に `vc` を m/min で加えるか、材料に `vc: [low, high]` を加えてください
material-unknown = 材料 `{ $name }` は表にありません
material-near = `{ $near }` のことですか。または独自の値を指定してください：{"{"}name, e_gpa, density, kc11, mc, vc: [low, high]{"}"}
material-far = 番号からは「{ $family }」ですが、表に近い番号がありません。この群は `spanhold materials "{ $word }"` で一覧できます。または独自の値を指定してください：{"{"}name, e_gpa, density, kc11, mc, vc: [low, high]{"}"}
material-none-near = 表に近い名前がありません。`spanhold materials` ですべて一覧できます。または独自の値を指定してください：{"{"}name, e_gpa, density, kc11, mc, vc: [low, high]{"}"}
material-unalloyed = 非合金鋼
material-tool = 工具鋼
material-special = 高速度鋼または軸受鋼
material-stainless = ステンレス鋼
material-heat-resistant = 耐熱鋼
material-alloyed = 合金鋼
material-copper = 銅または銅合金
material-nickel = ニッケル合金またはコバルト合金
material-aluminium = アルミニウムまたはアルミニウム合金
material-titanium = チタンまたはチタン合金
material-vc = 高い方の速度が先に書かれています
material-vc-help = `vc: [{ $low }, { $high }]` と書いてください

# Sections.
shaft-no-sections = 軸に区間がありません
shaft-no-sections-help = 区間を 1 つ以上書いてください：`- {"{"}length: 60, diameter: 12{"}"}`
shaft-too-long = 区間の合計の長さが { $length } mm あります
shaft-too-long-help = 長さは mm で書いてください。軸の長さは { $most } mm までです
section-is-thread = コレットはねじをつかめません
section-is-taper = コレットはテーパをつかめません
section-is-groove = コレットは溝をつかめません
section-is-knurl = コレットはローレットをつかめません
section-has-flats = コレットは平取りの区間をつかめません
section-grip-help = `grip: false` と書くか、単純な円筒の部分を独立した区間にしてください
section-no-size = 区間に直径がありません
section-no-size-help = 次のどれかを加えてください：`diameter: 18`、`thread: M16x1.5`、`taper: [18, 22]`、または `across_flats: 17` と `sides: 6`
section-kind-size = 溝とローレットの寸法は `diameter` だけです
section-kind-size-help = `kind` を削除するか、寸法を `diameter` だけで指定してください
section-two-sizes = 区間に形状が 2 つ以上あります：{ $keys }
section-two-sizes-help = これらのキーの 1 つだけを残すか、区間を分けてください
section-unknown = 名前が `{ $name }` の区間はありません
section-unknown-help = 区間の `name`、または前から数えた番号（1 から { $most }）を書いてください
sections-same-name = { $count } 個の区間の名前が同じ `{ $name }` です
sections-same-name-help = 区間ごとに別の名前を付けるか、前から数えた番号を書いてください：`section: { $number }`
thread-interrupted = ねじの途中で送りを止めてはいけません
thread-interrupted-help = この区間から `interrupt` を削除してください
thread-class = `{ $class }` はねじの公差クラスです
thread-class-help = `tolerance` を削除し、公差クラスをねじの後に書いてください：`thread: { $designation }-{ $class }`
thread-by-alone = `thread` がないのに `thread_by` があります
thread-by-alone-help = `thread_by` を削除してください。これはねじの加工法の指定です
taper-same = テーパの両端の直径が同じです
taper-same-help = `diameter: { $diameter }` と書いてください
sides-alone = `across_flats` がないのに `sides` があります
sides-alone-help = `across_flats: 17, sides: 6` のように書いてください
sides-number = { $sides } は平取りの面数として使えません
sides-number-help = 2、4、6、8 のどれかを書いてください
flats-too-thick = 直径 { $diameter } mm が二面幅より大きくありません
flats-too-thick-help = { $across } より大きい直径を書いてください
flats-beyond-corners = 直径 { $diameter } mm が対角距離より大きくなっています
flats-beyond-corners-help = `diameter` を削除してください。棒材は対角距離の { $corners } mm に旋削されます
flats-without-diameter = 2 面の平取りには円筒の直径が必要です
flats-without-diameter-help = `diameter` を加えてください
tolerance-order = 1 つ目の許容差が 2 つ目より小さくありません
tolerance-order-help = `tolerance: [lower, upper]` の形で書いてください。例：`[-0.05, 0]`
tolerance-one-number = 公差には 1 つの数ではなく、2 つの許容差が必要です
tolerance-one-number-help = 上下の許容差を書いてください。例：`tolerance: [-0.05, 0.05]` または `tolerance: ±0.05`

# Features.
feature-kind = 加工要素には種類が 1 つ必要です
feature-kind-help = 次のどれかのキーを最初に書いてください：{ $kinds }。例：`{"{"}cross_hole: 5, at: 120{"}"}`、`{"{"}keyseat: [6, 3.5], from: 500, to: 540{"}"}`
feature-key = `{ $key }` は `{ $kind }` のキーではありません
place-beyond-shaft = 加工要素が { $from } ～ { $to } mm で、軸からはみ出しています
place-beyond-shaft-help = 距離は前端面からの mm で書いてください。軸は { $length } mm で終わります
hole-too-wide = 穴が軸より小さくありません。{ $at } mm での軸の太さは { $diameter } mm です
hole-too-wide-help = 穴を小さくするか、位置を変えてください
keyseat-backwards = 軸キー溝が { $from } から { $to } mm になっています
keyseat-backwards-help = `from` より大きい `to` を書いてください
keyseat-too-wide = 軸キー溝の幅は { $width } mm ですが、そこの軸の太さは { $diameter } mm しかありません
keyseat-too-wide-help = `keyseat: [width, depth]` を mm で、幅を直径より小さくして書いてください
keyseat-too-deep = 軸キー溝の深さは { $depth } mm ですが、そこの軸の太さは { $diameter } mm しかありません
keyseat-too-deep-help = `keyseat: [width, depth]` を mm で、深さを直径の半分未満にして書いてください
centre-hole-too-wide = センタ穴 { $hole } の口元は { $mouth } mm ですが、端面は { $face } mm しかありません
centre-hole-too-wide-help = 小さいセンタ穴にしてください
work-too-deep = 深さ { $depth } mm が軸の長さ { $length } mm を超えています
work-too-deep-help = 深さは端面からの mm で書いてください
work-too-wide = そこの軸の太さは { $diameter } mm しかありませんが、{ $size } mm を超える太さが必要です
work-too-wide-help = 寸法または深さを小さくしてください
thread-deeper-than-hole = { $hole } mm の下穴がねじより浅くなっています
thread-deeper-than-hole-help = { $least } 以上の値を書くか、`drill_depth` を削除してください
tapped-hole-where = ねじ穴には、軸の横の位置（`at`）または端面からの深さ（`depth`）が必要です
tapped-hole-where-help = `{"{"}tapped_hole: M4, at: 60{"}"}` または `{"{"}tapped_hole: M6, depth: 12, end: front{"}"}` のように書いてください
socket-punched-step = パンチ加工の六角穴に `step` はありません
socket-punched-step-help = `step` を削除するか、`forming: shave` と書いてください
engraving-too-long = 文字彫りの文字列が長すぎます
engraving-too-long-help = { $most } 文字以内にしてください
engraving-beyond-face = 文字列には { $needed } mm が必要ですが、端面は { $diameter } mm しかありません
engraving-beyond-face-help = 文字を小さくするか、文字列を短くしてください
engraving-where = 文字彫りには、軸方向の位置（`at`）または端面（`end`）が必要です
engraving-where-help = `{"{"}engrave: LP 42, height: 2, at: 60{"}"}` または `{"{"}engrave: 42, height: 2, end: front{"}"}` のように書いてください
engraving-on-two = { $from } ～ { $to } mm の文字列が、1 つの円筒または平取り面に収まっていません
engraving-on-two-help = 文字列を移動するか、文字を小さくしてください
engraving-too-high = { $height } mm の文字は面より高くなっています
engraving-too-high-help = { $most } 以下の値を書いてください
keyway-without-hole = 穴キー溝には、同じ端に十分な深さと直径の軸方向穴が必要です
keyway-without-hole-help = この端に `{"{"}axial_hole: 12, depth: { $depth }{"}"}` を、{ $width } より大きい直径で加えてください
keyway-no-wall = 穴キー溝で肉がなくなります：軸心から { $reach } mm に達します
keyway-no-wall-help = 穴または穴キー溝を小さくしてください。軸の表面は軸心から { $most } mm です

# Families and wishes.
vary-nothing = `vary` が空です
vary-nothing-help = `length: {"{"}section: body, from: 200, to: 1200, step: 50{"}"}`、`diameter`、またはその両方を書いてください
vary-too-many = `vary` で部品が { $parts } 個になります
vary-too-many-help = `step` を大きくしてください。部品は { $most } 個までです
vary-backwards = 範囲が { $from } から { $to } mm になっています
vary-backwards-help = `from` より小さくない `to` を書いてください
vary-no-diameter = { $section } には、変えられる単純な直径がありません
vary-no-diameter-help = 長さを変えてください。ねじ、テーパ、平取りの直径は変えられません
wish-too-few = { $most } 回では足りません：`hand_over_at` に { $wished } 回の指定があります
wish-too-few-help = { $wished } 以上の値を書くか、`hand_over_at` から受け渡しを減らしてください
wish-twice = { $at } mm の受け渡しが 2 回指定されています
wish-twice-help = 一方を削除してください
wish-off-shaft = { $at } mm の受け渡しは軸の上にありません
wish-off-shaft-help = 0 から { $length } mm の間の旋削長さを書いてください
wish-nose = { $nose } mm の位置はまだ旋削されていません
wish-nose-help = { $most } 以下の値を書いてください。背面主軸は仕上がった面だけをつかみます
wish-backwards = 長さ範囲が { $from } から { $to } mm になっています
wish-backwards-help = 前側の端を先に書いてください：`[120, 140]`
wish-section-help = 区間の名前か番号（1 から { $most }）、または 2 つの位置を書いてください：`[120, 140]`

# Readings.
set-ups-empty-help = 測定値のある測定配置を 1 つ以上加えてください
set-up-unnamed = 測定配置 { $number }
set-up-no-reading = 測定配置に測定値がありません
set-up-no-reading-help = `dial`（{"{"}load, at, deflection{"}"} のリスト）、または打撃試験の `frequency` を加えてください
set-up-bar-too-thick = { $bar } mm の棒材は太すぎます：`{ $key }` に通るのは { $most } mm までです
set-up-bar-too-thick-help = `diameter` と `machine` が測定時のものか確認してください
set-up-holding-help = 機械に `{ $key }` を加えるか、測定時の `holding` を書いてください
set-up-headstock = ガイドブッシュなしでは、主軸台の位置は使われません
set-up-headstock-help = `headstock` を削除してください。ブッシュなしでは、距離は主軸コレット端面から測ります
set-up-out-of-travel = ブッシュ端面から { $at } mm は `{ $machine }` の移動範囲の外です
set-up-out-of-travel-help = { $nearest } から { $farthest } mm の距離を書いてください
set-up-collet-alone = `grip` がないのに `collet` があります
set-up-collet-alone-help = `grip`（ブッシュ端面から背面主軸端面までの距離）を加えるか、`collet` を削除してください
set-up-no-spindle-help = `grip` を削除してください
set-up-collet-size = コレット `{ $collet }` は { $bar } mm の棒材をつかめません
set-up-collet-unknown = 名前が `{ $collet }` のコレットはありません
set-up-no-collet = { $bar } mm の棒材をつかめるコレットが機械にありません
set-up-no-collet-help = 測定時のコレットを機械に加えるか、別の棒材で測定してください。コレット：{ $collets }
set-up-collet-which = { $bar } mm の棒材をつかめるコレットが 2 つ以上あります
set-up-collet-which-help = `collet: "{ $first }"` と書くか、次の中から別のものを書いてください：{ $collets }
set-up-bar-in-collet = 棒材の端がブッシュ端面から { $front } mm で、コレットの中にあります
set-up-bar-in-collet-help = `front` を { $least } 以上にしてください。コレット { $collet } は全長でつかまなければなりません
fit-not-on-machine-help = `fit` から削除するか、機械に加えてください
fit-twice-help = 一方を削除してください
reading-beyond-bar = この位置は棒材の前端より先です
reading-in-spindle = この位置は背面主軸の中です
reading-in-headstock = この位置は主軸コレットの中です
reading-in-bush = この位置はブッシュの中です
reading-behind-headstock = この位置は主軸コレットの中か、その後ろです
reading-place-help = ブッシュ端面から（ブッシュなしでは主軸コレット端面から）の距離を書いてください。端面より後ろは負です
reading-no-deflection = 荷重位置のたわみが 0 より大きくありません
reading-no-deflection-help = 荷重の向きのたわみを µm で、正の数で書いてください

# Edits of a text.
edit-impossible = この値はここでは編集できません
edit-refused = この編集では、この値以外も変わってしまいます
edit-help = ファイルのテキストを編集してください

# What the reader assumed: notes of a plan.
note-speed-unusual = 切削速度 { $speed } { -m-min } は、{ $material } の通常の範囲 { $low } ～ { $high } { -m-min } から外れています。
note-speed-assumed = 切削速度の指定がありません。{ $material } の通常の範囲（{ $low } ～ { $high } { -m-min }）の中央の { $speed } { -m-min } と仮定しました。
note-straightness-of-bar = 旋削後の軸の真直度の指定がありません。棒材（stock.kind: { $kind }）から、曲がりを 1 { -m } 当たり { $bow } { -mm } と仮定しました。
note-straightness = 旋削後の軸の真直度の指定がありません。曲がりを 1 { -m } 当たり { $bow } { -mm } と仮定しました。
note-cutting-force = { $material } の比切削抵抗：kc1.1 { $kc11 } N/mm²、mc { $mc }。出典：{ $source }。信頼度：{ $confidence }。
note-wishes = 計画は次の希望条件を守っています：{ $wishes }。
note-not-turned = 区間 { $section } は棒材の直径のままで、旋削しません。公差 { $label } で許されるのは { $needed } ですが、棒材の公差 { $bar } では { $found } になります。太い棒材を使って旋削するか、この公差の棒材を注文してください。
note-not-turned-unknown = 区間 { $section } は棒材の直径のままで、旋削しません。公差 { $label } で許されるのは { $needed } ですが、棒材の公差の指定がありません。太い棒材を使って旋削するか、この公差の棒材を注文してください。
note-family = このジョブでは { $ranges } が変化します。この計画は区間の値によるものです。範囲全体は `spanhold batch` で計画します。
note-part-of-family = 部品群の 1 部品：{ $sizes }。

# A centre in the front face.
centre-not-there = `hold: centre` にはセンタが必要ですが、機械 { $machine } にありません
centre-not-there-help = 機械ファイルの `counter_spindle` の下に、実際の機械の値で `centre: {"{"}force: 300, stiffness: 40{"}"}` と書くか、`hold: collet` と書いてください
centre-no-counter-spindle-help = `centre` のある背面主軸を持つ機械を選ぶか、`hold` を削除してください
centre-no-hole = `hold: centre` には前端面のセンタ穴が必要です
centre-no-hole-help = `shaft.features` の下に `- {"{"}centre_hole: A2, end: front{"}"}` を加えるか、`hold: collet` と書いてください
centre-hand-over = `hold: centre` では部品全体が 1 段階で、受け渡しはありません
centre-hand-over-help = `hand_over_at` を削除するか、`hold: collet` と書いてください
centre-too-short = センタの突出しは { $out } mm で、背面主軸はブッシュから { $nearest } mm までしか近づけないため、前端面に届きません
centre-too-short-help = `stands_out` が { $least } mm 以上のセンタを使うか、`hold: collet` と書いてください

# The shop's file.
note-shop = `{ $file }` から：{ $keys }
note-cutting-force-shop = { $material } の比切削抵抗（kc1.1 { $kc11 } N/mm²、mc { $mc }）：`{ $file }` にある自社の値
shop-machine-unknown = `{ $name }` はこの工場の機械ではありません
shop-machine-unknown-help = 上の `machines` にある名前を書いてください：{ $machines }
shop-material-twice = { $name } が 2 回載っています
shop-material-twice-help = 一方の項目を削除してください
shop-no-bar-of = `{ $file }` に { $material } の棒材がありません
shop-no-bar-of-help = ジョブで棒材を指定する（例：`stock: {"{"}diameter: 20{"}"}`）か、`bars` に加えてください。棒材のある材料：{ $grades }
shop-no-bar = `{ $file }` の { $material } の棒材からは、この軸を作れません。Ø{ $needed } 以上が必要です
shop-no-bar-help = ある棒材：{ $sizes }。棒材は { $machine } に通らなければなりません。ジョブで棒材を指定してください。例：`stock: {"{"}diameter: { $needed }{"}"}`
shop-no-collet = { $machine } の背面主軸のコレットが分かりません。機械のファイルにも `{ $file }` にもありません
shop-no-collet-help = 機械ファイルに `collets` を書くか、工場ファイルにこの機械用のコレットを書いてください

# The tool list.
tools-number = 工具 { $number } 本
tool-twice = 名前 { $name } が 2 回あります
tool-twice-help = 工具ごとに別の名前を付けてください
tool-key-unused = 種類 `{ $kind }` の工具に `{ $key }` はありません
tool-key-unused-help = `{ $key }` を削除するか、別の `kind` を書いてください
tool-materials-help = 材料の名前とその切削条件を書いてください。例：`C45: {"{"}rough: {"{"}vc: 160, feed: 0.2{"}"}{"}"}`

edge-both = 1 つの端に面取りと半径の両方があります
edge-both-help = 端ごとにどちらか一方を書いてください
edge-too-long = { $section } の面取りまたは半径が、全長 { $length } mm を占めています
edge-no-step = { $section } のその端には角が出ていません：隣の区間の太さが同じか、それより太くなっています
edge-too-large = { $size } mm は { $section } の段差 { $step } mm より大きい値です
edge-help = 面取りは出ている角に付け、段差より大きくできません。端を指定してください：`chamfer: {"{"}front: 1, rear: 0.5{"}"}`。数が 1 つなら前側の端です
turned-alone = `{ $key }` には `grind` が必要です
turned-alone-help = 後で研削する取り代を書く（例：`grind: 0.3`）か、このキーを省いてください
grind-cylinder = `grind` を指定できるのは単純な円筒だけです
grind-cylinder-help = 旋削する寸法を指定し、研削することは名前に書いてください
grind-nothing-left = Ø{ $turned } mm { $label } に旋削すると、研削代が残らないことがあります
grind-nothing-left-help = `grind` を大きくするか、`turned_tolerance` を厳しくしてください
bore-too-wide = { $bore } mm の内径では { $section } の肉がなくなります：{ $smallest } mm
bore-too-wide-help = { $smallest } mm 未満の内径を書くか、中実の棒材なら `bore` を省いてください
bore-hole = 棒材の内径が { $bore } mm あるため、{ $size } mm では穴加工する部分がありません
bore-hole-help = 端の加工は、棒材の内径より大きくなければなりません

# Designations of threads.
thread-unknown = `{ $text }` はねじの呼びではありません
thread-unknown-help = `M16x1.5`、`1/4-20 UNC`、`G1/4`、`Tr20x4` のように書いてください。続けて公差クラスと、左ねじなら `LH` を書けます：`M16x1.5-6g-LH`
thread-write = `{ $designation }` と書いてください
thread-no-coarse = M{ $major } には ISO 261 に並目ピッチがありません
thread-no-coarse-help = ピッチを付けて `M{ $major }x1` と書くか、並目ピッチのある最も近い寸法 `M{ $near }` を書いてください
thread-too-fine = `{ $text }`：ピッチ { $pitch } mm は細かすぎます
thread-too-fine-help = { $least } mm 以上のピッチを書いてください
thread-too-coarse = `{ $text }`：ピッチ { $pitch } mm は直径 { $major } mm に対して粗すぎます
thread-write-coarse = M{ $major } の並目ピッチは { $coarse } mm です：`M{ $major }` と書くか、もっと細かいピッチを書いてください
thread-finer = もっと細かいピッチを書いてください（{ $most } mm 以下）
thread-lead = `{ $text }`：リード { $lead } mm がピッチ { $pitch } mm の整数倍ではありません
thread-lead-help = 多条ねじのリードはピッチの 2 ～ { $most } 倍（ここでは { $twice } mm またはその倍数）で書き、ピッチを括弧に入れてください
thread-no-pitch = `{ $text }`：台形ねじにはピッチが必要です
thread-no-pipe-size = `{ $text }`：この寸法の管用ねじは ISO 228-1 にありません
thread-no-unified = `{ $text }` は ASME B1.1 にありません
thread-no-unified-help = ASME B1.1 にあるもの：{ $near }
thread-no-unified-special = ASME B1.1 にあるもの：{ $near }。特殊ねじは `{ $special }` のように書いてください
thread-tail-unknown = `{ $text }`：`{ $word }` はこのねじの公差クラスではありません
thread-tail-help = 例えば `{ $designation }`、左ねじなら `LH` と書いてください
thread-class-of-hole = `{ $class }` は穴のねじ（めねじ）の公差クラスです
thread-class-of-shaft = `{ $class }` は軸のねじ（おねじ）の公差クラスです
thread-class-write = 例えば `{ $with }`、公差クラスなしなら `{ $without }` と書いてください
# Units of a file.
note-mixed-units = `{ $file }` には 2 つの単位系の値が混在しています：{ $values }。それぞれの単位で換算しました。単位が意図どおりか確認してください。
note-mixed-units-value = { $line } 行目の `{ $key }`
