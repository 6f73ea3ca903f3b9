# A plan: its reasons, notes, changes and cautions, as they stand in plan.json.

## Lists

list-and = { $before }、{ $item }
list-comma = { $before }、{ $item }
list-semicolon = { $before }；{ $item }
list-more = { $items } ほか { $more } 件

## What a check found. The numbers carry their unit.

finding-at-most = { $check } は { $demand }、許容は { $limit } 以下です
finding-stiffness = 工具位置での棒材の剛性は { $demand }、必要値は { $limit } 以上です
finding-span-stiffness = つかみ部とブッシュの間の最小剛性は { $demand }、社内限界値は { $limit } です
finding-free-ratio = 前端の自由長さは直径の { $demand } 倍、社内規則の許容は { $limit } 倍です
finding-whirl = 回転速度は危険速度の { $demand } 倍、許容は { $limit } 倍以下です
finding-whip = 回転中の棒材の曲がり（振れ回り）は { $demand }、許容は { $limit } 以下です
finding-sag = 棒材の自重たわみは { $demand }、許容は { $limit } 以下です
finding-pick-up = 自由な前端をつかむときの軸心からのずれは { $demand }、許容は { $limit } 以下です
finding-bore = 背面主軸穴の中での部品の曲がりは { $demand }、許容は { $limit } 以下です
finding-bore-no-room = 背面主軸穴のすき間を確保すると、部品が背面主軸穴に入りません
finding-cut = 棒材のたわみによる切削方向の直径変化は { $demand }、許容は { $limit } 以下です
finding-chatter = 切込みは { $demand }、びびりは { $limit } から始まります
finding-drill = 工具による棒材のたわみは { $demand }、許容は { $limit } 以下です
finding-release = 背面主軸コレットが開いたときの棒材の自重たわみは { $demand }、許容は { $limit } 以下です
finding-torque = トルクは { $demand }、コレットが保持できるのは { $limit } 以下です
finding-push = 荷重は { $demand }、コレットが保持できるのは { $limit } 以下です
finding-buckling = 棒材を軸方向に押す力は { $demand }、座屈しないための許容は { $limit } 以下です
finding-run-out = コレットの振れによる切削中の面の振れは { $demand }、許容は { $limit } 以下です
finding-back = 後端のたわみによる直径変化は { $demand }、許容は { $limit } 以下です

## Where a check fails: one clause before the colon, what the check found after it

reason-gripped = 背面主軸のコレット端面が { $nose } { -mm }、旋削長さが { $turned } { -mm } のとき：{ $finding }
reason-front-free = 前端が自由で、旋削長さが { $turned } { -mm } のとき：{ $finding }
reason-on-centre = 前端をセンタで支え、旋削長さが { $turned } { -mm } のとき：{ $finding }
reason-centre = センタの力
reason-centre-comes = センタが入る前：{ $finding }
reason-turned = 旋削長さが { $turned } { -mm } のとき：{ $finding }
reason-bar-fed-out = 旋削長さが { $turned } { -mm } で、{ $end } { -mm } までの旋削のため棒材を送り出したとき：{ $finding }
reason-along-cut = { $end } { -mm } で終わる切削の途中：{ $finding }
reason-under-tool = 「{ $work }」の間、旋削長さ { $turned } { -mm }：{ $finding }
reason-fed-on = 「{ $work }」のため棒材を { $turned } { -mm } まで送り出したとき：{ $finding }
reason-last-grip-torque = 最後のつかみ、突切り時または後端加工中：{ $finding }（torque_margin { $margin } を含む）
reason-last-grip-torque-share = 最後のつかみ、突切り時または後端加工中：{ $finding }（torque_margin { $margin } を含む。棒材のねじれだけで考えると、このつかみ部が受けるのは突切りトルクの { $percent } %。これを計算に入れるには torsional_stiffness を指定）
reason-last-grip-push = 最後のつかみ、「{ $work }」の間：{ $finding }（torque_margin { $margin } を含む）
reason-last-grip-back = 最後のつかみ、後端加工中（{ $work }）：{ $finding }
reason-part-off = 突切り
reason-front-work = 主軸コレット、前端に荷重を受けるとき（{ $work }）：{ $finding }（torque_margin { $margin } を含む）
reason-front-work-presses = 前端の加工中：{ $finding }

## Why there is no plan

stopped-together = ここでは複数の限界値が妨げとなり、すべてを変える必要があります：{ $reasons }
stopped-other-collet = コレット { $collet } では旋削長さは { $turned } { -mm } までです：{ $reason }
stopped-no-grip = { $reason }。背面主軸も役に立ちません：{ $why }
bar-too-thick-for-bush = { $bar } { -mm } の棒材はガイドブッシュに対して太すぎます。ガイドブッシュに通るのは { $most } { -mm } までです
bar-too-thick-for-bush-only = { $bar } { -mm } の棒材はガイドブッシュに対して太すぎます。ガイドブッシュに通るのは { $most } { -mm } までです。ブッシュなしなら、短い部品用に { $collet } { -mm } まで使えます
bar-too-thick-for-both = { $bar } { -mm } の棒材は、ガイドブッシュ（{ $most } { -mm } まで）に対しても、ブッシュなしの主軸コレット（{ $collet } { -mm } まで）に対しても太すぎます
bar-too-thick-for-collet = { $bar } { -mm } の棒材は主軸コレットに対して太すぎます。主軸コレットに通るのは { $most } { -mm } までです
tools-no-place = 機械に、すべての工具の取付け位置がありません：{ $missing }
tools-no-pair = 旋削工具がすべて同じ側にあるため、対向工具で切削できません
tools-no-tandem = 仕上げ工具をこの側に置いてタンデム工具として切削できる 2 本の旋削工具がありません（機械の工具の `opposed` と `tandem` を参照）
tools-room = { $place }の位置：必要 { $needed }（{ $names }）、機械にあるのは { $places }
tools-room-elsewhere = { $place }の位置：必要 { $needed }（{ $names }）、機械にあるのは { $places }。ほかに別種の位置を { $elsewhere } 使えます
place-turning = 旋削工具
place-cross-driven = クロス回転工具
place-front-fixed = 前端用固定工具
place-front-driven = 前端用回転工具
place-back-fixed = 後端用固定工具
place-back-driven = 後端用回転工具
place-whirling = ワーリングヘッド
support-fails = 棒材を保持するものがありません
support-fails-last-grip = 突切り後、最後のつかみでは部品を保持できません
check-fails = 限界値を超えています
proof-found-limit = この方法では限界値を超えることが検証で分かりました
drill-fails = 回転工具による棒材のたわみが許容値を超えます
part-off-not-held = 突切り時に部品を保持するものがありません
part-off-rear-work = 後端加工には突切り時のつかみが必要ですが、この機械には背面主軸がありません
part-off-too-large = 突切り時に部品を保持するものがありません。部品は長さ { $length } { -mm }、直径 { $diameter } { -mm } で、製品受け（長さ { $most_length } { -mm }、直径 { $most_diameter } { -mm } の部品まで）に対して大きすぎます（part_off.tray）
part-off-too-large-default = 突切り時に部品を保持するものがありません。部品は長さ { $length } { -mm }、直径 { $diameter } { -mm } で、つかまずに落下させるには大きすぎます。機械ファイルに part_off.tray がない場合、落下させてよいのは長さ { $most_length } { -mm }、直径 { $most_diameter } { -mm } の部品までです
part-off-no-collet = 背面主軸にコレットがないため、突切り時に部品を保持するものがありません
front-not-gripped = 仕上がった前端をつかめるコレットがありません
travel-end = 背面主軸は、コレット端面が { $nose } { -mm } の状態で、移動範囲の終端 { $farthest } { -mm } に達しています
travel-end-centre = センタを付けた背面主軸は、移動範囲の終端 { $farthest } { -mm } に達しています
travel-too-short = 背面主軸は、コレット端面が { $nose } { -mm } の状態では、そこまで移動できません
stroke-end-no-stop = 主軸台はストローク { $stroke } { -mm } の終端に達しています。つかみ替えのできる位置もありません。途中の面はどれも、つなぎ目を残せません
stroke-end-front-free = 主軸台はストローク { $stroke } { -mm } の終端に達しています。前端が自由な間はつかみ替えてはいけません
stroke-end-centre = 主軸台はストローク { $stroke } { -mm } の終端に達しています。センタが前端を押している間はつかみ替えてはいけません
driven-part-off = 突切り
driven-torque = { $section } では主軸に { $needed } N·m のトルクが必要ですが、主軸台は { $most } N·m です
driven-feed = { $section } では { $needed } { -n } の送り力が必要ですが、主軸台の送り力は最大 { $most } { -n } です
driven-power = { $section } では、許容される最低回転速度 { $rpm } min⁻¹（speed_floor）でも { $needed } kW のモータが必要ですが、主軸台は { $most } kW です
driven-front-work = 「{ $work }」では主軸に { $needed } N·m のトルクが必要ですが、主軸台は { $most } N·m です
driven-rear-work = 後端の「{ $work }」では { $needed } N·m のトルクが必要ですが、背面主軸は { $most } N·m です
segments-pull-back = { $section } は複数のパスが必要です。しかし、どれだけ引き戻しを短くしても公差に入りません
thread-long-no-unit = { $section } は { $length } { -mm } のねじです。ねじ切りバイトでは棒材をねじの全長だけ引き戻す必要がありますが、ここで引き戻せるのは { $longest } { -mm } までです。ブッシュの案内部のうち { $stays } { -mm } が未旋削の棒材に掛かっていなければならないためです。機械にワーリングユニットがありません（`tools.whirling`）。対策：ワーリングユニット、転造（`thread_by: rolling`）、ガイドブッシュなし、またはねじを短くする
thread-long-asked = { $section } は { $length } { -mm } のねじです。ねじ切りバイトでは棒材をねじの全長だけ引き戻す必要がありますが、ここで引き戻せるのは { $longest } { -mm } までです。ブッシュの案内部のうち { $stays } { -mm } が未旋削の棒材に掛かっていなければならないためです。`thread_by: single_point` を削除してください。このねじはワーリングで加工できます。その他の対策：転造（`thread_by: rolling`）、ガイドブッシュなし、またはねじを短くする
segments-interrupt = { $section } は途中で止めてはいけませんが、{ $travels } パスが必要なため、{ $segments } 個の小区間に分かれ、その間につなぎ目が残ります

## Why no collet takes hold of the front

grip-no-stop = コレット { $collet } は旋削長さ { $from } ～ { $to } { -mm } でつかめますが、そこでは送りを止められません：{ $why }
grip-no-stop-thread = { $section } はねじです。ねじは途中で止めてはいけません
grip-no-stop-never = { $section } は途中で止めてはいけません
grip-no-stop-segments = 複数のパスで切削する区間では、小区間の間でしか止められません
grip-no-farther = { $nose } { -mm } の位置をつかむと、旋削長さは { $turned } { -mm } までです：{ $why }
grip-fails = コレット { $collet } は旋削長さ { $turned } { -mm } でつかめません：{ $why }
grip-out-of-travel = 旋削長さ { $turned } { -mm } では、背面主軸はコレット { $collet } を、つかめる位置まで動かせません
grip-no-counter-spindle = 機械に背面主軸がありません
grip-forbidden = { $section } はつかんではいけません
grip-wished-never = 希望条件により { $section } をつかめません
grip-front-too-thick = { $section } より前にある直径 { $front } { -mm } の部分が、{ $passes } { -mm } まで開くコレット { $collet } を通りません
grip-too-deep = { $section } は奥にありすぎます。背面主軸穴に入るのは { $depth } { -mm } までです
grip-no-clear-length = { $section } には、コレット { $collet } でつかむのに必要な、妨げのない長さ { $hold } { -mm } がありません
grip-more-sections = { $reasons }；ほかの { $more } 区間もつかめません
grip-too-early = コレット { $collet } が最初につかめるのは { $section } で、旋削長さが { $from } { -mm } 以上必要です
grip-nothing-plain = 軸に、コレットでつかめる円筒の区間がありません
grip-no-collet-fits = 円筒の区間（{ $diameters }）に合うコレットがありません：{ $collets }
grip-collet-range = コレット { $collet } は { $from } ～ { $to } { -mm } 用です
length-mm = { $length } { -mm }

## Wishes

wish-impossible-no-counter-spindle = 希望条件「{ $wish }」は実現できません：機械に背面主軸がありません
wish-impossible-no-stop = 希望条件「{ $wish }」は実現できません：その位置（{ $section }）で送りを止めてはいけません
wish-impossible-no-grip = 希望条件「{ $wish }」は実現できません：コレット { $collet } はそこをつかめません
wish-no-grip-goes-on = 希望の受け渡し位置 { $at } { -mm } からは、どこをつかんでも先へ進めません
wish-prevents = 希望条件「{ $wish }」のため計画ができません：{ $reason }。この希望条件がなければサイクルタイムは { $seconds } s です
wishes-prevent = 希望条件の組合せのため計画ができません：{ $reason }。希望条件がなければサイクルタイムは { $seconds } s です

## Changes

change-works = { $change }：サイクルタイム { $seconds } s
set-works = { $changes }：サイクルタイム { $seconds } s
change-saves = { $change }：部品 1 個当たり { $seconds } s の短縮
change-saves-most = { $change }：部品 1 個当たり { $seconds } s の短縮。最大の短縮は { $most } s：{ $best }
change-drop-wish = 希望条件「{ $wish }」を取りやめる
change-rpm = 棒材の直径での回転速度を { $rpm } min⁻¹ に下げる（{ $vc } { -m-min }）
change-speed-floor = 限界値のために必要なところで、回転速度を元の { $percent } % まで下げることを認める
change-ap-max = 1 パスの切込みを { $depth } { -mm } まで認める（工具が許す場合）
change-no-bush = ガイドブッシュなしで加工する
change-bush = ガイドブッシュを使って加工する
change-centre = 背面主軸のセンタで前端を支える（hold: centre）
change-tandem = タンデム工具 2 本で、荒削りと仕上げ削りを 1 パスで行う
change-opposed = 対向工具で旋削し、半径方向の力を釣り合わせる
change-interrupt = { $section } での停止を認める（つなぎ目が残る）
change-grip = { $section } をつかむことを認める
change-straightness = 旋削後の軸の曲がりを 1 { -m } 当たり { $bow } { -mm } に減らす
change-collet = { $diameter } { -mm } 用のコレットを用意する（つかみ長さ { $hold } { -mm }、把握力 { $force } { -n }）
change-collet-opens = 太い前部を通せるよう、{ $opens } { -mm } まで開く { $diameter } { -mm } 用のコレットを用意する（つかみ長さ { $hold } { -mm }、把握力 { $force } { -n }）
change-bar = { $diameter } { -mm } の棒材を使う
change-set-up = 「{ $work }」を別の段取りで、独立した作業として行う（加工 { $seconds } s、部品の取付けに約 { $loading } s）
change-turn-round = 部品を反対の端から加工する：後端面を先にブッシュから出す
change-shop-machine = { $machine } で加工する
change-limit = 限界値 { $limit } を { $value } に緩める（部品と機械が許す場合）
change-collet-run-out = 振れが { $mm } { -mm } 以下の背面主軸コレットを使う
change-section-run-out = 区間の振れを { $times } 倍まで認める（設計部門が同意する場合）
change-shorter-stroke = 主軸台のストロークのうち { $stroke } { -mm } だけを使い、つかみ替えの回数を増やす
change-axial-load = 背面主軸が軸に加え続ける軸方向力を { $force } { -n } だけにする
change-stroke = 主軸台のストロークが { $stroke } { -mm } の機械を使う
change-bush-max-bar = { $bar } { -mm } 用のガイドブッシュを持つ機械を使う
change-smaller-ap-max = 1 回の切込みを { $depth } { -mm } 以下にする（ap_max）
change-smaller-feed = 送りを { $feed } { -mm-rev } 以下にする
change-power = 主軸台の動力が { $power } kW の機械を使う
change-torque = 主軸台のトルクが { $torque } N·m の機械を使う
change-feed-force = 主軸台の送り力が { $force } { -n } の機械を使う
change-counter-torque = 背面主軸のトルクが { $torque } N·m の機械を使う
change-headstock-clamp-force = 把握力 { $force } { -n } の主軸コレットを使う（棒材が許す場合）
change-farthest = ブッシュ端面から { $farthest } { -mm } まで移動できる背面主軸を使う
change-bore-depth = 穴の深さが { $depth } { -mm } の背面主軸を使う
change-bore = 穴径が { $bore } { -mm } の背面主軸を使う
change-clamp-force = 背面主軸の把握力を { $times } 倍にする：{ $collets }（部品が許す場合）
change-clamp-force-collet = コレット { $collet } { $force } { -n }
change-tray = 機械に製品受けがあれば、部品を製品受け（長さ { $length } { -mm }、直径 { $diameter } { -mm } の部品まで）に落下させる（part_off.tray）
change-sleeve = 背面主軸穴に支持スリーブ（剛性は各 { $stiffness } N/µm）を { $pitch } { -mm } 間隔で入れる
change-forming = 六角穴 { $size } をパンチ加工ではなく、細かいストロークのスロッティングで加工する
change-step = 1 ストロークの切込みを { $step } { -mm } にしてスロッティングする
change-whirling = ねじ切りバイトには長すぎるねじのため、ワーリングユニット付きの機械を使う
change-rolling = ねじ切りバイトには長すぎるねじを転造する（`thread_by: rolling`）。転造ロールの幅はねじの長さと同じにする
change-engagement = 棒材を引き戻したとき、ブッシュの案内部を未旋削の棒材に { $mm } { -mm } 掛けておく（`engagement_min`）
change-tool-places = { $place }の位置が { $number } か所ある機械を使う

## What was tried

progress-sets = 役立つ変更を探しています：{ $tried } 組を試行、現在 { $set }
tried-stopped = 変更の探索を中止しました。これまでに分かったことを示します
tried-bound = 変更の組を { $sets } 組試し、計算量の上限で探索を終えました。役立つ組がまだあるかもしれません
tried-forbidden = どの変更の組も役立ちません。一覧の { $changes } 個の変更をすべて合わせても：{ $reason }
tried-more = { $most } 個までの変更を組み合わせても足りません（{ $sets } 組を試行）。一覧のすべての変更を合わせれば足ります
tried-all = { $job } には、どの変更の組も足りません（{ $sets } 組を試行）
progress-finer-stops = 停止位置 { $coarse } { -mm } ごとでは計画が見つからないため、{ $fine } { -mm } ごとを試しています

## Notes

note-not-listed = 工具一覧にない工具：{ $tools }。これらには `cutting` の値を使います
note-drive = この計画の回転速度での旋削には、主軸台のモータ動力が最大 { $power } kW（{ $power_at }）、主軸のトルクが { $torque } N·m（{ $torque_at }）、送り力が { $force } { -n }（{ $force_at }）必要です
note-drive-not-given = { $told }。機械ファイルに { $keys } がありません。機械を確認してください。
note-power-lowers = { $section }：主軸台の動力 { $power } kW のため回転速度が下がります。パスの回転速度は { $speeds } min⁻¹ 以下です
note-ground = { $section } は後で研削します：旋削で { $turned }、研削で { $ground }
note-small-radius = { $section }：隅の半径は { $radius } { -mm } ですが、工具のノーズ半径のため、半径 { $nose } { -mm } 以上が残ります
note-whirled = ねじが長くて、ねじ切りバイトのパスのためには引き戻せないか、`thread_by` の指定があります。このねじは 1 パスのワーリングで加工します
note-whirled-assumed = ねじが長くて、ねじ切りバイトのパスのためには引き戻せないか、`thread_by` の指定があります。このねじは 1 パスのワーリングで加工します。機械ファイルに工具位置がないため、ワーリングユニットがあると仮定しています。`tools` に `whirling: 1` を書いてください。機械にない場合は `whirling` なしで `tools` を書いてください
note-rolled = { $section }：ねじは、有効径に近い { $blank } { -mm } の転造下径から転造します。転造ロールの幅はねじの長さ { $length } { -mm } 以上が必要です。正確な転造下径は試し加工で決めてください。転造の力は計算していません
note-left-hand = { $section }：{ $thread } は左ねじです。主軸の回転方向、送り方向、工具を確認してください
note-passive-deep = 背分力を測定値と比較したのは切込み { $measured } { -mm } までです。ここでの最大の切込みは { $depth } { -mm } なので、背分力は外挿です。
note-passive-floor = 切れ刃から求めた背分力がこれより小さいところでは、主分力の { $share } を使います（cutting.passive_floor。一般的な慣行、出典なし）。
note-chips-of-drill = { $size } { -mm } のドリルの切りくず厚さは { $chip } { -mm } です。比切削抵抗が分かっているのは切りくず厚さ { $low } ～ { $high } { -mm } なので、力は外挿です。切れ刃には丸みがあるため、薄い切りくずでは外挿値より大きな力が要ります。
note-chips-of-tap = { $size } { -mm } のタップの切りくず厚さは { $chip } { -mm } です。比切削抵抗が分かっているのは切りくず厚さ { $low } ～ { $high } { -mm } なので、力は外挿です。切れ刃には丸みがあるため、薄い切りくずでは外挿値より大きな力が要ります。
note-chips-of-cutter = { $size } { -mm } のフライス工具の平均切りくず厚さは { $chip } { -mm } です。比切削抵抗が分かっているのは切りくず厚さ { $low } ～ { $high } { -mm } なので、力は外挿です。切れ刃には丸みがあるため、薄い切りくずでは外挿値より大きな力が要ります。
note-chips-of-turning = 送り { $size } { -mm-rev } の旋削の切りくず厚さは { $chip } { -mm } です。比切削抵抗が分かっているのは切りくず厚さ { $low } ～ { $high } { -mm } なので、力は外挿です。切れ刃には丸みがあるため、薄い切りくずでは外挿値より大きな力が要ります。
note-drill-size = { $size } { -mm } のドリルのスラスト力は外挿です。計算式が分かっているのは { $low } ～ { $high } { -mm } のドリルです。
note-class-assumed = ドリル、タップ、フライス工具の条件は、区分「{ $class }」のものです。これは { $material } のヤング率、密度、kc1.1 から仮定しました。違う場合は shaft.material に `class` を指定してください。
note-feed-lowered = { $section }：Ra { $ra } { -um } にするため、送りを { $given } から { $feed } { -mm-rev } に下げました。理論粗さの { $factor } 倍で計算しています（cutting.ra_factor）
note-ra-floor = { $section }：Ra { $ra } { -um } は、どの送りでも旋削で残る粗さ { $floor } { -um }（cutting.ra_floor）を上回っていません。送りは { $floor } { -um } に対する値です。この面は研削または研磨してください。機械がもっと細かく旋削できる場合は ra_floor を下げてください。
note-unusual-pitch = { $thread }：{ $standard } にこのねじはありません。工具が手に入るか確認してください
note-falls-by-default = 部品は小さいため、突切りで落下します。機械ファイルに part_off.tray がない場合、長さ { $length } { -mm }、直径 { $diameter } { -mm } までの部品は落下させてよいものとします（一般的な慣行、出典なし）。機械に製品受けがないか、もっと小さい場合は part_off.tray を指定してください。長さを 0 にすると、部品は落下しません。
note-centre = センタは前端の加工が終わると入り、突切り前に離れます。両方を合わせて、受け渡し 1 回分の時間を計上しています（一般的な慣行、出典なし）。
note-torque-share = 最も厳しい項目は突切りのトルクで、最後のつかみがその全部を受けるものとしています。棒材のねじれだけで考えると、このつかみ部が受けるのは { $percent } % です。これを計算に入れるには、背面主軸の `torsional_stiffness` を指定してください。
note-no-limit-costs = 時間を延ばしている限界値はありません。どの限界値を 1 つ緩めても、計画は速くなりません。
note-rule-left-out = { $rule }。ここに示す値では、この規則を除いています
optimum-proven = これより速い計画はありません（停止位置 { $stops } か所を試行）
note-slow-cutting = { $section } で下げた回転速度の切削速度は { $speed } { -m-min } で、{ $material } の通常の { $low } ～ { $high } { -m-min } より低い値です。面が粗くなるかもしれません。初品で確認してください。
optimum-gap = 可能な最速の計画より遅くても { $percent } % 以内（停止位置 { $stops } か所を試行）

## The timeline

timeline-hand-over = { $at } { -mm } で受け渡し
timeline-centre = センタ：最初の切削前に入り、突切り前に離れる
timeline-regrip = { $at } { -mm } で主軸つかみ替え
timeline-part-off = 突切り
timeline-part-off-falls = 突切り、部品は製品受けに落下
timeline-unload = 部品の取出し
critical-hand-overs = 受け渡し
critical-regrips = 主軸つかみ替え
critical-tool-changes = 工具交換
critical-cutting = 切削 { $section }
critical-overhead = 接近と戻り

## Tolerances

tolerance-not-in-table = 公差クラスの表に直径 { $diameter } mm はありません。表は { $most } mm までです
tolerance-not-in-table-help = 許容差を mm で指定してください：`tolerance: [-0.05 mm, 0]`

## The mechanics at one moment

at-out-of-range = `--{ $option }` が { $value } です
at-out-of-range-help = `--{ $option }` は { $low } から { $high } の間で指定してください
at-not-held = この状態では棒材を保持するものがありません
at-not-held-help = 機械ファイルの剛性を確認してください
at-no-counter-spindle = 機械に背面主軸がありません
at-no-counter-spindle-help = `--grip` を省いてください
at-grip-on-centre = `hold: centre` では、前端をコレットでつかみません
at-grip-on-centre-help = `--grip` を省くか、ジョブに `hold: collet` と書いてください
at-no-such-collet = 機械にコレット { $collet } がありません
at-no-such-collet-help = 機械のコレット：{ $collets }
at-no-collet-fits = { $at } { -mm } の直径 { $diameter } { -mm } をつかめるコレットが機械にありません
at-no-collet-fits-help = `--grip` を動かすか、計算用のコレットを `--collet` で選んでください：{ $collets }
at-stage-end-with-bush = `--stage-end` はブッシュなしの加工用です
at-stage-end-with-bush-help = `--stage-end` を省いてください
at-headstock-without-bush = `--headstock` はガイドブッシュ付きの加工用です
at-headstock-without-bush-help = `--stage-end` を使ってください。ブッシュなしでは、主軸コレットは段階の終わりに合わせた位置にあります
at-cannot-be-cut-help = `check` を実行すると、役立つ変更が分かります

## A place of a plan moved by hand

move-no-plan = 計画がないため、動かせるものがありません
move-no-plan-help = 先にジョブを直してください
move-not-there = この位置はそこへ動かせません
move-not-there-help = 段階の長さは 0 にできません。受け渡しは前後の受け渡しの間になければなりません
move-off-shaft = コレットが軸から外れます

## Faults found by the proof

proof-failed = 計画は検証に合格しません（{ $rule }：{ $text }）
proof-limit = 旋削長さ { $turned } { -mm } での値は { $demand }、限界値は { $limit } です
proof-no-plan = これは加工可能な計画ではありません
proof-no-such-collet = 機械にコレット { $collet } がありません
proof-no-counter-spindle = 計画はコレット { $collet } を使いますが、機械に背面主軸がありません
proof-way-of-turning = 計画は { $holding } と { $tools } 用ですが、ジョブの指定は { $job_holding } と { $job_tools } です
proof-bar-too-thick = { $bar } { -mm } の棒材は太すぎます。この旋削方法では { $most } { -mm } までです
proof-stage-order = 段階は { $from } ～ { $to } { -mm } ですが、前の段階は { $before } { -mm } で終わっています
proof-free-stage = 前端が自由であるのは最初の段階だけで、ほかの段階では自由にできません
proof-centre-not-asked = 計画にセンタがありますが、ジョブの指定にはありません
proof-centre-told = 計画に、ジョブのセンタが書かれていません
proof-centre-stages = センタを使う場合、部品全体が 1 段階です
proof-centre-travel = 終了時、背面主軸端面はブッシュ端面から { $at } { -mm } ですが、移動できるのは { $farthest } { -mm } までです
proof-driven = { $from } ～ { $to } { -mm } の切削には { $needed } が必要ですが、主軸台は { $limit } です
proof-drive = 計画に書かれた主軸台の必要値が { $power } kW、{ $torque } N·m、{ $force } { -n } と違います
proof-bar-feed = { $from } ～ { $to } { -mm } の切削は { $rpm } min⁻¹ ですが、棒材供給装置の許容は { $most } min⁻¹ までです
proof-part-off-told = 突切り時の部品についての計画の記載が、最後の段階および機械と合いません
proof-falls-rear-work = 突切り時に部品を保持するものがありませんが、その後に後端を加工しなければなりません
proof-too-large-to-fall = 突切り時に部品を保持するものがありません。長さ { $length } { -mm }、直径 { $diameter } { -mm } の部品を落下させてはいけません。落下させてよいのは長さ { $most_length } { -mm }、直径 { $most_diameter } { -mm } までです
proof-end = 最後の段階は { $end } { -mm } で終わりますが、突切りは { $part_off } { -mm } です
proof-no-stop = 送りを { $at } { -mm } で止めてはいけません
proof-hand-overs-listed = 受け渡しの一覧が段階と合いません
proof-regrips-listed = 主軸つかみ替えの一覧が段階と合いません
proof-no-feed-out = ブッシュなしでは、2 番目以降の段階は主軸つかみ替えで始めなければなりません
proof-regrip-outside = { $at } { -mm } の主軸つかみ替えが、その段階の外にあります
proof-regrip-front-free = 前端が自由な間に、主軸コレットが { $at } { -mm } で開きます
proof-stroke = { $from } ～ { $to } { -mm } では、主軸台にストローク { $stroke } { -mm } を超える移動が必要です
proof-grip-no-collet = 段階につかみ部がありますが、計画にコレットがありません
proof-grip-length = つかみ部の長さがコレットのつかみ長さと違います
proof-grip-forbidden = { $section } はつかんではいけません
proof-grip-diameter = コレット { $collet } は { $diameter } { -mm } をつかめません
proof-grip-described = 計画ではつかみ部は区間 { $section } の { $diameter } { -mm } ですが、実際は区間 { $real_section } の { $real_diameter } { -mm } です
proof-grip-not-plain = { $from } ～ { $to } { -mm } のつかみ部が 1 つの円筒上にありません
proof-grip-feature = { $from } ～ { $to } { -mm } の穴または軸キー溝が、つかみ部の下にあります
proof-grip-front = 前方の直径 { $front } { -mm } の部分が、{ $passes } { -mm } まで開くコレット { $collet } を通りません
proof-grip-depth = 軸の { $length } { -mm } が、深さ { $depth } { -mm } の背面主軸穴に入りません
proof-grip-not-turned = 旋削長さ { $turned } { -mm } では、{ $to } { -mm } までのつかみ部はまだ旋削されていません
proof-grip-travel = 旋削長さ { $turned } { -mm } で、コレットはブッシュ端面から { $distance } { -mm } ですが、許容範囲は { $nearest } ～ { $farthest } { -mm } です
proof-time = 計画では「{ $name }」は { $given } s ですが、合計は { $sum } s です
proof-cycle-time = 計画のサイクルタイムは { $given } s ですが、作業からは { $sum } s です
proof-wish = 希望条件「{ $wish }」が守られていません
proof-wish-grip = { $from } ～ { $to } { -mm } のつかみ部は、希望条件「つかまない：{ $name }」に反します
proof-wish-hand-overs = 計画の受け渡しは { $number } 回ですが、希望条件では { $most } 回までです
proof-cut-not-as-asked = { $from } ～ { $to } { -mm } の切削がジョブの指定と違います
proof-cut-missing = { $from } ～ { $to } { -mm } の長さを切削するものがありません
proof-speed = { $from } ～ { $to } { -mm } で計画の回転速度は { $rpm } min⁻¹ ですが、ジョブの指定は { $wanted } min⁻¹ です
proof-speed-range = { $from } ～ { $to } { -mm } で計画の回転速度は { $rpm } min⁻¹ ですが、ジョブの指定は { $least } ～ { $wanted } min⁻¹ です
proof-not-held = 棒材を保持するものがありません
proof-not-held-at = 旋削長さ { $turned } { -mm } で棒材を保持するものがありません
proof-not-held-open = 背面主軸コレットが開いている間、棒材を保持するものがありません
proof-not-held-last = 最後のつかみでは部品を保持できません
proof-no-tool-place = 機械に、すべての工具の取付け位置がありません
proof-timeline-order = タイムチャートの停止中の作業順が、検証した順序と違います
proof-fed-on = 「{ $work }」は旋削長さ { $turned } { -mm } で行いますが、機械は棒材をそこまで送れません
proof-work-missing = 「{ $work }」が、工具の届く位置で行われていません
proof-work-stage = 旋削長さ { $turned } { -mm } の「{ $work }」は、この段階のものではありません
proof-length = 計画では { $told } { -mm } ですが、軸の長さは { $length } { -mm } です
proof-margin = 計画では { $told } ですが、検証では { $proven } です
proof-margin-missing = 計画に余裕の値がありませんが、検証では { $proven } です
proof-margin-at = { $check } は限界値の { $used } で、余裕 { $margin } になりません
proof-line-missing = { $at } { -mm } の停止でつなぎ目が残りますが、計画にありません
proof-line-without-stop = 計画には { $at } { -mm } につなぎ目がありますが、そこで止まるものはありません
proof-line-section = { $at } { -mm } のつなぎ目は区間 { $section } にあり、面の指定は { $interrupt } です
proof-pieces = 計画では棒材 1 本から { $told } 個ですが、実際は { $real } 個です
proof-material = 計画では部品 1 個当たり { $told_kg } kg、残材 { $told_mm } { -mm } ですが、実際は { $kg } kg、{ $mm } { -mm } です
proof-cost = 計画では部品 1 個当たり { $told } ですが、費用は { $real } です
proof-cost-no-rates = 計画では部品 1 個当たり { $told } ですが、ジョブに単価がありません
proof-cost-missing = 計画に費用がありませんが、ジョブの単価からは { $real } です

## Cautions: general rules of safe turning, common practice, no source

estimate = これは推定です。決めるのは、機械の取扱説明書、現地の規則、有資格の段取り担当者です。
caution-not-a-plan = これで機械を動かさないでください。これは計画ではありません。段階は、限界値の範囲でどこまで加工できるかを示すだけです。
caution-twice = { $own }（English：{ $english }）
caution-read-first = 段取りの前に、次ページ以降の注意事項を読んでください。決めるのは、機械の取扱説明書、現地の規則、有資格の段取り担当者です。
caution-estimate = これは推定です。切削力の精度は、よくても ± 25 % です。剛性の精度は、機械について与えられた値の精度を超えません。
caution-who-decides = 決めるのは、機械の取扱説明書、現地の規則、有資格の段取り担当者です。この計画と違う場合は、計画ではなくそれらに従ってください。
caution-first-piece = 初品は、回転速度と送りを下げ、1 ブロックずつ（シングルブロック）、扉を閉めて試し加工してください。測定してから、回転速度や送りを上げてください。
caution-limits = 段階の限界値（旋削長さ、無支持長さ、回転速度）を決して超えないでください。機械、コレット、棒材供給装置の限界値も適用されます。最も低い限界値に従ってください。
caution-at-risk = この計画は「リスクあり」です。入力値が不確かなため、抽出した部品 100 個中 { $good } 個しか、すべての限界値に収まりません。回転速度と切込みは少しずつ上げてください。そのつど棒材を監視し、振動したり、振れ回ったり、寸法から外れたりしたら止めてください。
caution-bar-behind = 主軸台の主軸の後方に、支えのない棒材を出さないでください。ある回転速度を超えると、棒材が外側へ曲がり、周囲を打ちます。棒材は全長を案内するか、短く切ってください。
caution-front-free = { $number ->
   *[other] 段階 { $stages } では、部品の前端が自由なまま回転します。前端の回転平面内に入らないでください。回転速度は少しずつ上げてください。
}
caution-counter-spindle = 部品が背面主軸にあるとき：主軸コレットを開く前と、突切りの前に、コレット、部品の把握状態、同期を確認してください。把握または同期が失われた場合、両主軸は同時に停止しなければなりません。
caution-front-long = 自由な前端の長さは、直径の { $ratio } 倍になります。細長い前端は振れ回ることがあります。回転速度は少しずつ上げ、前端を監視し、前端の届く範囲に入らないでください。
caution-centre = 前端をセンタで支えます。センタにグリースを塗るか冷却し、棒材を回す前に押付け力を設定し、センタ穴に汚れがないことを確認してください。センタなしでこの段階を旋削しないでください。センタは突切りの前に離れなければなりません。その後は前端が自由なまま回転するので、前端の回転平面内に入らないでください。
caution-thin-wall = コレットが Ø{ $held } { -mm } をつかむところの肉厚は、{ $wall } { -mm } しかありません。コレットで押しつぶすおそれがあります。把握力を下げるか、穴に栓を入れてください。そのうえで、初品を測定してください。
caution-part-off-not-held = 突切りのとき、部品を保持するものがありません。部品は回転しながら外れます。ゆっくり突っ切り、部品は手ではなく製品受けで受け、部品の通り道に入らず、決して部品に手を伸ばさないでください。
caution-part-falls = 突切りで、部品は製品受けに落下します。部品は回転しながら外れます。工具に引っ掛かることがあり、落下で傷や曲がりが生じることがあります。切り終わりは遅くし、製品受けまでの経路を空けておき、扉を閉めたままにし、最初の数個を確認してから続けてください。
caution-no-bush = ガイドブッシュなしでは、棒材を保持するのは主軸コレットだけです。示された長さを超えないでください。
caution-fixed-bush = ガイドブッシュは回転しません。棒材 { $bar } の直径は { $width } { -mm } の幅でばらつくことがあり、片側では { $side } { -mm } です。固定ブッシュには片側 { $least } ～ { $widest } { -mm } のすき間が必要なので、h6 または h7（公差幅 { $most } { -mm } 以下）の棒材が必要です。ブッシュが緩すぎると、部品の真円度が悪くなります。きつすぎると、棒材が焼き付きます。研削棒材、または棒材と共に回るブッシュを使うか、ブッシュなしで加工してください。
caution-fixed-bush-unknown = ガイドブッシュは回転しません。棒材の公差の指定がありません。固定ブッシュには片側 { $least } ～ { $widest } { -mm } のすき間が必要なので、h6 または h7（公差幅 { $most } { -mm } 以下）の研削棒材が必要です。引抜きまたは旋削の棒材（h9 ～ h12）には、棒材と共に回るブッシュ、またはブッシュなしの加工が必要です。
caution-following-bush = ガイドブッシュは棒材と共に回ります。棒材 { $bar } の直径は { $width } { -mm } の幅でばらつくことがあります。このブッシュに使える棒材は、およそ h9 まで（公差幅 { $most } { -mm } 以下。一般的な慣行）です。ブッシュが緩すぎると、部品の真円度が悪くなります。きつすぎると、棒材が動かなくなります。h9 またはそれより精度の高い棒材を使うか、ブッシュなしで加工してください。
caution-following-bush-unknown = ガイドブッシュは棒材と共に回ります。棒材の公差の指定がありません。このブッシュに使える棒材は、およそ h9 まで（公差幅 { $most } { -mm } 以下。一般的な慣行）です。h9 またはそれより精度の高い棒材を使うか、ブッシュなしで加工してください。
caution-bored = 剛性の計算には、穴、六角穴、穴キー溝が入っていません。その位置では、軸の剛性は計算値より低くなります。
caution-cross-work = 剛性の計算には、横穴、軸キー溝が入っていません。その位置では、軸の剛性は計算値より低くなります。
caution-work-aside = 部品の後端を加工している間に、次の部品の前端の旋削がすでに行われています。背面主軸、部品、工具が、どの位置でも次の部品に干渉しないことを確認してください。最初に部品なしで試してください。
caution-shaving = スロッティング工具とパンチ工具は回転しません。ストローク中、主軸は停止し、角度が固定され、起動しないようにロックされていなければなりません。力は軸方向に働きます。先に部品の把握状態を確認してください。
caution-never-line = 「never」指定の面で、加工要素のために送りが止まり、つなぎ目が残ります：{ $places }。設計部門と取り決めるか、加工要素を別のところで加工してください。
caution-never-line-place = { $section } の { $at } { -mm }
caution-section = 区間 { $number }
caution-section-named = 区間 { $number }（{ $name }）
caution-not-a-program = この表はプログラムではありません。この表で機械を動かしてはいけません。有資格のプログラマが、この表をもとにプログラムを作成し、安全すき間（クリアランス）、工具の退避、表にない加工の回転速度、すべてのインタロックを加えなければなりません。プログラムは、まず部品なしで試してください（ドライラン）。機械の取扱説明書に従ってください。
caution-chips = 長い切りくずは、細長い部品に巻き付きます。切りくずを取り除くときは機械を止めてください。機械が回転している間は、決して手で取り除かないでください。

## Roughing and finishing

tandem-no-bush = ガイドブッシュがないため、最終パスは独立したパスになります
tandem-no-tools = 機械の工具に、そのための 2 本がありません（工具の `opposed` または `tandem`）
tandem-back = 区間の前側の端で直径が一段小さくなるため、両方とも後挽きバイトでなければなりません
tandem-in-counter-spindle = 背面主軸がブッシュから { $nearest } { -mm } まで来るため、仕上げ工具がその中に入ってしまいます
tandem-step = 終端で荒削り工具が離れるとき、直径が { $step } { -um } 変化します。許容は { $limit } { -um } 以下です
note-one-cut = { $section } は { $asked } の指定ですが、切込み { $depth } { -mm } を 1 回で、仕上げ削りなしで切削します。{ $instead }
note-one-cut-both = つなぎ目なしで最終パスを加えることができます（`finish_pass: true`）。または、2 本目の工具が同じパスで仕上げます（`tools: tandem`）。
note-one-cut-pass = つなぎ目なしで最終パスを加えることができます（`finish_pass: true`）。
note-one-cut-tandem = 全体を引き戻して最終パスを加えることはできません。2 本目の工具が同じパスで仕上げることはできます（`tools: tandem`）。
note-one-cut-why = 全体を引き戻して最終パスを加えることも、2 本の工具で 1 パスで切削することもできません：{ $why }。
note-tandem = 2 本の工具で、荒削りと仕上げ削りを 1 パスで行う区間：{ $sections }。
note-tandem-last-pass = { $section } には独立した最終パスがあります。タンデム工具の 2 本では切削しません：{ $why }。
asked-ra = Ra { $ra }
asked-tolerance = 公差 { $width } { -mm }
asked-both = 公差 { $width } { -mm }、Ra { $ra }
progress-confidence = 抽出した部品の { $share } で成立する計画を探しています
plan-confidence-range = 部品の割合を { $range } で指定します。100 個中 95 個なら 0.95 と書いてください
measure-support = { $reading }。`spanhold fit` は、このような測定値から剛性とそのばらつきを求めます
measure-centre = センタでテストバーを押し、センタのそばに横荷重を掛け、そこのダイヤルゲージを読みます。荷重をたわみ（棒のたわみ分を除く）で割った値が剛性です
measure-sleeve = 背面主軸の内部で、支持スリーブのそばのテストバーに横荷重を掛け、そこのダイヤルゲージを読みます
measure-kc = 切込みを十分に大きくして試し切削し、切削中と切削なしのときの主軸動力を読みます。その差を切りくず断面積と切削速度で割ると、その切削の切りくず厚さ h での kc です。kc に h（mm）の mc 乗を掛け、独自材料の kc11 として書きます
measure-passive = 同じ切込みで自由端を 2 回旋削します。1 回はコレットの近く、1 回は遠くです。直径の差は、背分力をそこの剛性で割った値の 2 倍です
measure-e = 棒材を 2 つの支えに載せ、中央に荷重を掛け、そこのダイヤルゲージを読みます。直径は { $fine } { -mm } まで測ります。たわみから E が求まります
measure-damping = つかんだ棒材を軽くたたいて振動を記録し、振幅が半分になるまでの振動の回数 n を数えます。減衰比は 0.11 / n です
measure-ra = 旋削した部品の Ra を測ります。それを、送りの 2 乗をノーズ半径の 32 倍で割った値で割り、結果を cutting.ra_factor に書きます
measure-straightness = 部品をいくつか旋削し、2 つの支えの上で 1 本ずつ転がして、中央のダイヤルゲージを読みます。真直度は、読みの平均の半分を、支えの間隔（m）の 2 乗で割った値です
measure-bar = ロットの棒材を両端で測り、公差または scatter.bar を書きます
measure-run-out = 研削したピンをコレットでつかみ、回してダイヤルゲージを読みます。読みをコレットの run_out に書きます
sampled-no-plan-help = 先に計画が必要です。何が妨げているかを確認してください
sampled-no-part = この番号の抽出部品はありません
sampled-no-part-help = 1 から { $samples } の番号を指定してください
recheck-holds = 抽出した部品 100 個中 { $good } 個で成立します。
recheck-holds-told = 抽出した部品 100 個中 { $good } 個で成立します。計画の記載は { $told } 個です。
recheck-at-risk = リスクあり：抽出した部品 100 個中 { $good } 個でしか成立しません。
recheck-at-risk-told = リスクあり：抽出した部品 100 個中 { $good } 個でしか成立しません。計画の記載は { $told } 個です。
measure-counter-spindle = コレットの 1 つでつかめる直径のテストバーをつかみ、コレット端面のそばに荷重を掛け、そこのダイヤルゲージを読みます。`spanhold fit` は、このような測定値から剛性とそのばらつきを求めます
