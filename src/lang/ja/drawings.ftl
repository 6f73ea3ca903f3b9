# Drawings and tables of sections; stiffnesses from readings.

# Stiffnesses from readings.
fit-loose-bar = 棒材が保持されていない測定配置があります
fit-loose-bar-help = `grip` と `holding` を確認してください。棒材は 2 か所で保持されていなければなりません
fit-spindle-never-used = 棒材を背面主軸で保持した測定配置がないため、その剛性は求められません
fit-undetermined = これらの測定値では、次の剛性を求めるのに足りません：{ $supports }
fit-leave-out = または `fit: [{ $supports }]` と書いてください
fit-other-bar = もっと太く短い棒で測定し、支持部のたわみが棒のたわみより大きくなるようにしてください
fit-add = { $reading }を加えてください。これで { $supports } の剛性が ± { $error } % またはそれより良い精度で求まります
fit-add-several = 測定値をいくつか加えてください。最も役立つのは{ $reading }ですが、それだけでは { $supports } に足りません
fit-reading-in = 測定配置 `{ $set_up }` での測定 { $reading }（約 { $expected } µm）
fit-reading-of-new = `{ $key }` のある測定配置と、その測定 { $reading }（約 { $expected } µm）
fit-load-free = Ø{ $bar } のテストバーを、主軸コレット端面をブッシュ端面の後方 { $headstock } { -mm } に置いて保持し、ブッシュ端面の前に { $front } { -mm } 出します。ブッシュ端面の{ $behind ->
    [yes] 後方
   *[no] 前方
} { $at } { -mm } に { $load } { -n } の荷重を掛け、そこのダイヤルゲージを読みます（約 { $expected } { -um }）
fit-load-gripped = Ø{ $bar } のテストバーを、主軸コレット端面をブッシュ端面の後方 { $headstock } { -mm } に置いて保持し、ブッシュ端面の前方 { $nose } { -mm } を背面主軸でつかみます。ブッシュ端面の{ $behind ->
    [yes] 後方
   *[no] 前方
} { $at } { -mm } に { $load } { -n } の荷重を掛け、そこのダイヤルゲージを読みます（約 { $expected } { -um }）
fit-load-no-bush = Ø{ $bar } のテストバーを、ブッシュなしで主軸台に保持し、前に { $front } { -mm } 出します。主軸コレット端面の前方 { $at } { -mm } に { $load } { -n } の荷重を掛け、そこのダイヤルゲージを読みます（約 { $expected } { -um }）
fit-load-no-bush-gripped = Ø{ $bar } のテストバーを、ブッシュなしで主軸台に保持し、主軸コレット端面の前方 { $nose } { -mm } を背面主軸でつかみます。主軸コレット端面の前方 { $at } { -mm } に { $load } { -n } の荷重を掛け、そこのダイヤルゲージを読みます（約 { $expected } { -um }）
fit-misfit = 測定値に合う剛性がありません。最大の差は { $set_up } の { $reading }：測定 { $measured } { $unit }、計算 { $fitted } { $unit }
fit-misfit-help = 位置と単位（N, mm, µm, Hz）を確認してください。がたをなくすため、棒材に予荷重を掛けてください。測定値が正しい場合は、`errors` に大きい値を書いてください
fit-dial-reading = ダイヤルゲージの測定 { $number }
fit-tap = 打撃試験
fit-note-no-spare = 測定値の数が剛性の数と同じため、結果を確かめられません。測定値を加えてください。
fit-note-misfit = 測定値と結果の差が、測定値の誤差から見込まれる大きさの { $times } 倍あります。標準誤差をこの倍率で大きくしました。がた、つかみの滑り、位置の誤りがないか確認してください。
fit-note-fixed = 当てはめずに機械ファイルの値を使ったもの：{ $supports }。
fit-note-sleeves = 背面主軸穴の支持スリーブの剛性は機械ファイルの値です。当てはめていません。

# Drawings: what prevents a draft.
draft-is-dwg = `{ $file }` は DXF ファイルではなく DWG ファイルです
draft-is-dwg-help = 図面を DXF（ASCII またはバイナリ、バージョン R12 ～ 2018）で保存してください
draft-not-dxf = `{ $file }` を DXF として読めません（バージョン { $version }）：{ $reason }
draft-not-dxf-help = 図面を別のバージョン（R12 ～ 2018）の ASCII DXF で保存し、そのファイルで試してください
draft-reader-failed = 内容が壊れています
draft-empty = `{ $file }` に図がありません
draft-empty-help = DXF ファイルであること、軸がモデル空間にあることを確認してください
draft-damaged = `{ $file }` は壊れています：{ $kind } の図形要素 { $there } 個のうち { $read } 個しか読めません
draft-damaged-help = CAD プログラムでファイルを開き、修復して保存し直してください
draft-unknown-file = `{ $file }` の種類が分かりません
draft-unknown-file-help = 図面（.dxf）または表（.csv, .xlsx）を指定してください
draft-sections = `{ $file }` の区間は { $sections } 個です
draft-sections-help = 軸の区間は 1 から { $most } 個です
draft-no-job = `{ $file }` の下書きは、ジョブとして計画できません
draft-no-job-help = 下の誤りを直してください。位置は下書きのテキストの中のものです
draft-no-contour = 図面に輪郭の線がありません
draft-no-contour-help = 輪郭を実線で、寸法、図枠、ハッチング、文字の画層以外に描いてください
draft-no-axis = 軸線が見つかりません：中心線も、対称性も、半輪郭の直線の辺もありません
draft-no-axis-help = 軸線を、軸の全長にわたって、画層 CENTER または線種 CENTER の線で描いてください
draft-open-contour = 輪郭が { $from } と { $to } の間で開いています
draft-open-contour-help = 図面の輪郭を閉じるか、`--gap` を大きくしてください。今は { $gap } mm までのすき間を閉じています
draft-no-profile = 軸線に沿った輪郭の線がありません
draft-no-profile-help = 図面の軸線が軸の軸線であることを確認してください

# Drawings: what was found and assumed.
draft-axis-is-line = 軸線は、画層 `{ $layer }` の { $from } から { $to } までの中心線です。
draft-axis-is-symmetry-level = 中心線がありません。軸線は、{ $through } を通る水平の対称線です。
draft-axis-is-symmetry-upright = 中心線がありません。軸線は、{ $through } を通る垂直の対称線です。
draft-axis-is-side = 要確認：中心線も対称性もありません。図面を軸の半分として読みました：軸線は { $axis } = { $at } の直線の辺、直径はそこからの距離の 2 倍です。
draft-axis-through-ends = 要確認：中心線も対称性もありません。図面を軸の半分として読みました：軸線は、開いた両端 { $from } と { $to } を通る線です。
draft-halves-differ = 要確認：輪郭の両半分が違います。最初の箇所は { $at }：一方の側の直径は { $used }、反対側は { $other } です。前者を使います。
draft-front-left = 要確認：前端（ガイドブッシュから先に出る端）は左端（{ $at }）です。右端なら `--flip` を付けて呼び出してください。
draft-front-right = 要確認：前端（ガイドブッシュから先に出る端）は右端（{ $at }）です。左端なら `--flip` を付けずに呼び出してください。
draft-front-lower = 要確認：前端（ガイドブッシュから先に出る端）は下端（{ $at }）です。上端なら `--flip` を付けて呼び出してください。
draft-front-upper = 要確認：前端（ガイドブッシュから先に出る端）は上端（{ $at }）です。下端なら `--flip` を付けずに呼び出してください。
draft-unit = 図面の単位は { $unit } です：1 は { $mm } mm です。
draft-unit-of-call = 図面の単位は { $unit } ですが、呼出しの指定は { $used } です。図面を { $used } で読みました。
draft-no-unit = 要確認：図面に単位がありません。mm で読みました。単位がインチなら `--units inch` を付けて呼び出してください。
draft-no-unit-but-metric = 要確認：図面に単位がありませんが、メートル系の印があります。mm で読みました。単位がインチなら `--units inch` を付けて呼び出してください。
unit-inches = インチ
draft-scale = 要確認：寸法値は描かれた長さの { $factor } 倍です。図面を尺度 { $scale } で読みました。1:1 で描かれているなら `--scale 1` を付けて呼び出してください。
draft-factor-of-new = 要確認：図面に寸法がありませんが、新しい寸法の設定は描かれた長さの { $factor } 倍です。ジョブの値は描かれた長さです。図面が 1:2 なら `--scale 0.5` を付けて呼び出してください。
draft-other-factor = 要確認：{ $count } 個の寸法が、描かれた長さの { $factor } 倍です。最初の箇所は { $at }。大部分の寸法は、描かれた長さの { $used } 倍です。ジョブは大部分の寸法に従います。違う場合は `--scale` を付けて呼び出してください。
draft-arc = 要確認：{ $at } の半径 { $radius } mm の円弧は、ジョブでは直線のテーパになります。
section-with-radius = 半径 { $radius } mm 付き
section-with-chamfer = 面取り { $chamfer } 付き
section-from-arc = 要確認：図面では半径 { $radius } mm の円弧
draft-needs-tolerance = 要確認：区間 { $section }（直径 { $diameter } mm）は、普通公差を適用するには細すぎます。`tolerance` を加えてください。
draft-inside = 輪郭の内側、不使用（稜線、穴、ねじ、軸キー溝）：画層 `{ $layer }` の { $kind } { $count } 個、最初の箇所は { $at }。
draft-beside = 輪郭に含まれない：画層 `{ $layer }` の { $kind } { $count } 個、最初の箇所は { $at }。
draft-beside-near = 要確認：このうち 1 つの端が、輪郭から { $distance } mm の { $at } にあります。輪郭の一部なら `--gap` を大きくしてください。
draft-not-read = 読み取らず：画層 `{ $layer }` の { $kind } { $count } 個、最初の箇所は { $at }：{ $why }。
draft-not-understood = 解釈できず：画層 `{ $layer }` の { $at } の { $entity } `{ $text }`：{ $why }。

# Why an entity is not read.
entity-unknown = この種類の図形要素には対応していません
entity-hidden = 非表示です
entity-squeezed = 傾いているか、縦横の倍率が違います
entity-squeezed-arc = この円弧は縦横の倍率が違います
entity-mesh = メッシュです
entity-at-angle = 傾いています
entity-not-finite = 数値が有限ではありません
entity-too-many = 線が多すぎます
entity-circle = 完全な円です
entity-no-block = そのブロックが図面にありません
entity-nested = ブロックの入れ子が深すぎます
entity-copies = 複写が 100 個を超えています

# Texts and dimensions of a drawing.
label-no-size = 公差、ねじ、粗さのどれかを伴う寸法ではありません
label-at-no-surface = 区間の表面にありません
label-no-roughness = ローレットと平取りには粗さを付けられません
label-second = 区間にはすでに別の値があります
label-given = 区間 { $section }（長さ { $length } mm）に、図面から { $values } を与えます。
label-unknown-word = `{ $word }` が分かりません
label-other-size = 文字は { $text } ですが、描かれているのは { $drawn } mm です。ジョブの値は描かれた寸法です
label-length-tolerance = 長さの公差はジョブに書けません
label-no-diameter = 直径がありません
label-no-section = 直径 { $diameter } mm の単純な区間がありません
label-several-sections = 合う区間が複数あるため、どれにも使いません
title-material = 材料
title-drawing = 図面番号
title-revision = 改訂
title-taken = 図面から：{ $field } { $value }。
title-several = 要確認：図面に「{ $field }」が 2 つ以上あります：{ $values }。どれも使いません。
title-material-unknown = 要確認：図面の材料 { $material } は材料の表にありません。ジョブには仮の値を入れました。`--material` で指定して呼び出してください。

# The text of a draft.
draft-head = { $file } から作った下書きです。このジョブで計画する前に、すべての行を図面と照合してください。
draft-head-lengths = 長さは mm です。区間は前端面（ガイドブッシュから先に出る端）から始まります。
draft-head-notes = 見つけたもの、仮定したもの、解釈できなかったもの：
draft-placeholder-material = 仮の値：図面に既知の材料なし
draft-placeholder-bar = 仮の値：すぐ上の一般的な棒材寸法。`--stock` で別の値を指定
draft-placeholder-machine = 仮の値：例の機械です。自社の機械のファイルを指定してください：`machine: my-machine.yaml`。または `--machine my-machine.yaml` を付けて下書きを作ってください。
draft-placeholder-cutting = 仮の値：一般的な値です。自社の値を設定してください。
draft-straightness = 仕上がった軸の曲がり、1 m 当たりの mm：実際に測定すること
draft-default-speed = m/min。標準値：材料の通常の範囲の中央
draft-default-feed = mm/rev。標準値：粗さから求め、0.15 以下

# Tables of sections.
table-not-utf8 = `{ $file }` は UTF-8 のテキストではありません
table-not-utf8-help = 表を UTF-8 の CSV で保存してください
table-not-csv = `{ $file }` を CSV として読めません：{ $reason }
table-too-long = `{ $file }` の行が多すぎます
table-empty = `{ $file }` が空です
table-form = 1 行目に次の見出しを書いてください：length (mm)（長さ）、diameter (mm)（直径）、必要なら rear diameter (mm)（後側の直径）、kind（種類）、thread（ねじ）、tolerance（公差）、Ra (µm)、name（名前）、across flats (mm)（二面幅）、sides（面数）。区間ごとに 1 行を、前から順に書いてください
table-cell = { $file }、{ $row } 行、{ $column } 列：{ $what }
table-row = { $file }、{ $row } 行：{ $what }
table-heading = { $file }、{ $row } 行、{ $column } 列、`{ $heading }`：{ $what }
table-heading-missing = { $file }、{ $row } 行：見出し `{ $heading }` がありません
table-heading-unknown = 未知の見出しです
table-heading-twice = この列が 2 回あります
table-heading-twice-help = 一方を削除してください
table-heading-unit = 未知の単位です
table-heading-unit-help = 次のどれかの単位を使ってください：{ $units }
table-heading-no-unit-help = 単位を削除してください。この列に単位はありません
table-tolerance-in-inches = 要確認：{ $column } 列（`{ $heading }`）の許容差を、表の寸法と同じくインチで読みました。mm なら、見出しに `tolerance (mm)` と書いてください。
table-roughness-unit = インチの表に、粗さの単位がありません
table-roughness-unit-help = 見出しに `Ra (µin)` または `Ra (µm)` と書いてください。Ra 16 µin は 0.4 µm です
table-number = `{ $text }` は正の数ではありません
table-number-help = 単位を見出しに付けて（`length (mm)`）数だけを書くか、数の後に単位を書いてください（`1 in`）
table-no-length = 長さがありません
table-no-length-help = すべての区間に長さを書いてください
table-thread-size = { $thread } の直径は { $given } mm ではなく { $major } mm です
table-thread-size-help = ねじの直径を削除してください
table-flats = 平取りの面数がありません
table-flats-help = `sides` の列に 2、4、6、8 のどれかを書いてください
table-kind-needs = 寸法が足りません（種類：{ $kind }）
table-no-kind = 行は cylinder（円筒）、taper（テーパ）、thread（ねじ）、flats（平取り）のどれかでなければなりません
table-no-kind-help = テーパには直径と後側の直径、ねじには呼び、平取りには二面幅と面数、その他には直径を書いてください
table-tolerance-unit = mm でない表に、`{ $text }` の単位がありません
table-tolerance-unit-help = 見出しに `tolerance (mm)` と書いてください
table-tolerance = `{ $text }` は公差ではありません
table-tolerance-help = h6 などの公差クラス、または mm で ±0.1 や +0.02/-0.01 のように書いてください
table-kind = `{ $text }` は区間の種類ではありません

# Workbooks.
workbook-sheet-used = 要確認：区間はシート `{ $sheet }` から読みました。ブックにはシートが { $sheets } 枚あります。別のシートを使うには `--sheet` を付けて呼び出してください。
workbook-cells-beyond = 読み取らず：シートの { $row } 行または { $column } 列を超えるセル { $cells } 個。
workbook-unreadable = `{ $file }` をブックとして読めません：{ $reason }
workbook-unreadable-help = .xlsx、または UTF-8 の .csv で保存してください
workbook-too-large = `{ $file }` はブックとして大きすぎます：{ $reason }
workbook-too-large-help = 区間のシートだけを .xlsx または .csv で保存してください
workbook-parts = 構成部分が { $parts } 個あります。読めるのは { $most } 個までです
workbook-unpacked = 展開すると、1 つの部分で { $part } MiB、または全体で { $all } MiB を超えます
workbook-cells = セルが { $cells } 個あります。読めるのは { $most } 個までです
workbook-repeats = 行または列の繰返し数が整数ではありません
workbook-no-sheet = `{ $file }` にシート `{ $sheet }` がありません
workbook-no-sheet-help = 次のどれかのシートを使ってください：{ $sheets }
workbook-no-sheets = `{ $file }` にシートがありません
