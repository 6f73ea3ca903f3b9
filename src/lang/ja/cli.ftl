# The command line.

# For every command.
defect-of-program = 本プログラムの誤りです（ジョブファイルを添えて報告してください）
defect-of-program-because = 本プログラムの誤りです（ジョブファイルを添えて報告してください）。計画は表示されません。理由：{ $reason }
result-not-printed = 結果を表示できませんでした：{ $reason }。
interrupted = 中断しました。
option-out-of-range = `--{ $option }` に { $value } は指定できません
option-out-of-range-help = { $low } から { $high } の数を指定してください
progress-counting = {"{msg} {bar:40} {pos} / {len}、残り {eta}"}
progress-jobs = ジョブ
progress-ways = 方法

# Files that are written.
file-unwritable = `{ $file }` に書き込めません：{ $reason }
file-now-at = `{ $file }` の元の内容は `{ $now }` にあります。このファイルの名前を変えてください
file-exists = `{ $file }` はすでにあります
file-exists-help = 別のファイル名を指定するか、このファイルを削除してください
file-no-name = `{ $file }` はファイル名ではありません
file-no-name-help = 別のファイル名を指定してください
file-is-device = `{ $file }` はファイルではなく、デバイスまたはパイプです
file-is-input = `{ $file }` はこの呼出しの入力で、上書きされてしまいます
file-is-input-help = 別の出力先を指定してください
folder-not-made = フォルダ `{ $folder }` を作れません：{ $reason }

# at
at-note = 注記：{ $note }
at-turned = 旋削長さ
at-turned-is = { $turned } { -mm }、区間 { $section }（{ $work }）
at-front = 前端
at-front-is-held = コレット { $collet } でつかみ、コレット端面は { $nose } { -mm }
at-front-is-free = 自由
at-front-is-on-centre = センタで支持
at-headstock = 主軸台
at-headstock-is = ブッシュ端面から { $at } { -mm }
at-speed = 回転速度
at-unsupported = 無支持長さ
at-unsupported-is = { $length } { -mm }、L/d { $ratio }
at-critical-speed = 危険速度
at-frequencies = 固有振動数
at-stiffness = 工具位置の剛性
at-span-stiffness = 剛性の最も低い位置
at-span-stiffness-is = { $at } { -mm } で { $stiffness } N/µm、つかみ部とブッシュの間
at-sag = 自重たわみ
at-bow = 回転中の曲がり
at-main-force = 主分力
at-passive-force = 背分力
at-passive-force-is = { $force } { -n }、棒材に残る力 { $net } { -n }
at-finisher = 仕上げ工具
at-finisher-is = { $at } { -mm }、たわみはこの位置の値
at-deflection = 工具位置のたわみ
at-deflection-is = { $deflection } { -um }、パスに沿った直径変化 { $change } { -um }
at-chatter-limit = びびり限界
at-chatter-limit-is = 切込み { $depth } { -mm }
at-head-check = 判定項目
at-head-found = 値
at-head-limit = 限界値
at-head-unit = 単位
at-head-used = 使用率
at-head-place = 最も厳しい位置 { -mm }

# batch
batch-stdin-unreadable = 標準入力を読めません：{ $reason }
batch-stdin-twice = 標準入力（`-`）が 2 回指定されています
batch-stdin-twice-help = `-` は 1 回だけ指定してください
batch-document-too-large = 文書が { $most } MiB を超えています
batch-document-too-large-help = 文書を `---` の行で区切ってください
batch-document-not-utf8 = 文書が UTF-8 のテキストではありません
batch-document-not-utf8-help = 文書を UTF-8 で書いてください
batch-path-not-utf8 = 標準入力のパスが UTF-8 のテキストではありません
batch-map-of-one = マップには、ジョブ 1 つと機械 1 台が必要です
batch-map-of-one-help = ジョブと機械の組ごとに `batch` を 1 回呼び出し、それぞれにマップを指定してください
batch-map-stdin = マップには、標準入力ではなくジョブファイルが必要です
batch-map-stdin-help = ジョブをファイルに書いてください
batch-map-no-family = `{ $file }` に `vary` がないため、描くものがありません
batch-map-no-family-help = ジョブに `vary: {"{"}length: {"{"}section: body, from: 200, to: 1200, step: 50{"}"}{"}"}` を加えてください
batch-map-axis = { $section } の { $key }、{ -mm }
batch-interrupted = { $file } の行は完結しています。`--resume` で続きから始めます。
batch-same-file = 行の出力とマップが同じファイル `{ $file }` です
batch-same-file-help = どちらかに別のファイル名を指定してください
batch-file-without-lines = `{ $file }` はすでにありますが、`batch` の行がありません
batch-file-without-drawing = `{ $file }` はすでにありますが、図ではありません
batch-file-in-use = 別の呼出しが `{ $file }` に書き込んでいます
batch-file-in-use-help = 終わるまで待つか、別のファイル名を指定してください
batch-line-unwritten = `{ $file }` に行を書き込めません：{ $reason }
batch-line-unwritten-help = 原因を取り除き、`--resume` を付けて呼び出し直してください。それまでの行は完結しています
batch-resume-no-line = `{ $file }` の { $line } 行目は `batch` の行ではありません
batch-resume-other = `{ $file }` の { $line } 行目は { $found } の結果ですが、この呼出しではそこが { $wanted } です
batch-resume-beyond = `{ $file }` の { $line } 行目は { $found } の結果ですが、この呼出しにはそれ以上のジョブがありません
batch-resume-help = 中断した呼出しと同じジョブと機械を同じ順に指定するか、`--resume` を外してファイルを書き直してください
batch-lines = { $lines } 行、{ $time } s
batch-lines-resumed = { $lines } 行（うち { $before } 行は中断した呼出しのもの）、{ $time } s
batch-machine-of-job = ジョブの機械
batch-head-machine = 機械
batch-head-feasible = 加工可能
batch-head-at-risk = リスクあり
batch-head-infeasible = 加工不可
batch-head-wrong = 入力の誤り
batch-head-defects = プログラムの誤り
batch-head-time = 計画時間、s
batch-row-all = すべて

# compare
compare-no-bush = 機械にガイドブッシュがありません
compare-only-bush = 機械はガイドブッシュなしでは加工できません
compare-best = { $ways } 通り中 { $feasible } 通りが加工可能{ $at_risk ->
    [0] {""}
   *[other] 、うち { $at_risk } 通りはリスクあり
}。最良：{ $holding }、{ $tools }、{ $machine } で部品 1 個当たり { $time } s
compare-none = { $ways } 通りのどれも加工不可：{ $machines }
compare-bush = ブッシュ
compare-no-bush-short = ブッシュなし
compare-single = 単独工具
compare-opposed = 対向工具
compare-tandem = タンデム工具
compare-feasible = 加工可能（時間の短い順、リスクありは最後。成立：抽出した部品 100 個中の個数）
compare-infeasible = 加工不可（旋削長さの長い順）
compare-way = { $way }、{ $tools }：
compare-way-reaches = { $way }、{ $tools }、旋削長さ { $turned } / { $length } { -mm }：
compare-way-full-length = { $way }、{ $tools }、全長を旋削：
compare-head-machine = 機械
compare-head-holding = 保持
compare-head-tools = 工具
compare-head-stages = 段階
compare-head-hand-overs = 受け渡し
compare-head-lines = つなぎ目
compare-head-check = 最も厳しい項目
compare-head-good = 成立
compare-head-time = s/個
compare-head-pieces = 個/本

# draft, new
draft-file-too-large-help = 軸だけの図面を保存してください
draft-written = { $file } を書き出しました。内容を確認してから呼び出してください：spanhold plan { $file }
new-shop-written = { $file } を書き出しました。自社の機械、コレット、材料、棒材を記入してください。ファイル名が shop.yaml なら、そのフォルダとその下のジョブで使われます
new-two-files = `new` が書き出すのは 1 ファイルですが、2 つ目の `{ $file }` が指定されています
new-two-files-help = ジョブなら `spanhold new FILE`、工場ファイルなら `spanhold new shop FILE` と指定してください
new-written = { $file } を書き出しました。次の呼出し：spanhold plan { $file }

# recheck
recheck-no-plan = `{ $file }` は計画ではありません：{ $reason }
recheck-no-plan-help = `plan --out` の plan.json を指定してください
recheck-changed = 計画の作成後に、ジョブまたは機械が変わっています。
recheck-unchanged = ジョブと機械は変わっていません。
recheck-margin = 余裕が変わりました：現在 { $found } %、計画では { $planned } %。
recheck-proven = 検証は引き続き成立  { $job }：{ $states } 状態を確認、最も厳しい項目は限界値の { $used }
recheck-not-proven = 検証は成立しなくなりました  { $job }：{ $rules } 件の規則に違反
recheck-breach-of-stage = 段階 { $stage }：{ $rule }：{ $why }
recheck-breach-of-plan = 計画：{ $rule }：{ $why }

# The language.
option-lang = 表示の言語：{ $languages }。なければジョブまたは工場ファイルの言語（`language`）、それもなければ英語
option-units = 表示の単位：`mm` または `inch`。指定がなければジョブまたは工場ファイルの単位（`units`）、それもなければ { -mm }
no-such-language = 文章のある言語：{ $languages }

# The font of the PDF.
font-help = フォントファイル（TTF または OTF）を指定してください
font-unreadable = `{ $file }` はフォントとして読めません: { $reason }
font-wanted = sheet.pdf は省きました。内蔵フォントにこの言語の文字がありません。`--font FILE` でフォントファイルを指定してください。
