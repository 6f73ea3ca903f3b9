# What each number of a file means: a phrase that fits after "the". The key is that of the file, with `-` for each dot.

## Keys of the job

field-shaft-sections-length = 区間の長さ
field-shaft-sections-diameter = 区間の直径
field-shaft-sections-taper = テーパの一端の直径
field-shaft-sections-thread = ねじの外径
field-shaft-sections-corners = 平取りの対角距離
field-shaft-sections-across_flats = 二面幅
field-shaft-sections-sides = 平取りの面数
field-shaft-sections-ra = 表面粗さ Ra
field-shaft-sections-run_out = つかみ部とブッシュの間の軸線に対する区間の振れ、読みの全幅（ISO 1101）
field-shaft-sections-tolerance = 直径の許容差
field-shaft-straightness = 仕上がった軸の長さ 1 m 当たりの曲がり
field-shaft-features-cross_hole = 横穴の直径
field-shaft-features-at = 前端面から穴の中心まで、または文字彫りの始めまでの距離
field-shaft-features-thrust = ドリルの軸方向力
field-shaft-features-keyseat = 軸キー溝の幅または深さ
field-shaft-features-from = 前端面から軸キー溝の前側の端までの距離
field-shaft-features-to = 前端面から軸キー溝の後側の端までの距離
field-shaft-back_work-radial_force = 部品に加わる半径方向力
field-shaft-back_work-torque = 部品の軸まわりのトルク
field-shaft-back_work-time_s = 作業の時間
field-shaft-back_work-tolerance = 作業の公差
field-stock-diameter = 棒材の直径
field-stock-bar_length = 棒材の長さ
field-shaft-material-e_gpa = ヤング率
field-shaft-material-density = 密度
field-shaft-material-kc11 = 比切削抵抗 kc1.1（切りくず厚さ 1 mm）
field-shaft-material-mc = 切りくず厚さの指数 mc
field-shaft-material-poisson = ポアソン比
field-shaft-material-vc = 材料の通常の切削速度の最低値または最高値
field-cutting-vc = 切削速度
field-cutting-feed = 1 回転当たりの送り
field-cutting-nose_radius = 工具のノーズ半径
field-cutting-approach_angle = 工具の切込み角
field-cutting-ap_max = 最大の切込み
field-cutting-ap_finish = 最終パスの切込み
field-cutting-speed_floor = 許容される最低回転速度、計画した回転速度に対する割合。1 なら減速しない
field-cutting-lag = 対向工具またはタンデム工具の、荒削り工具から仕上げ工具までの棒材方向の距離
field-cutting-finisher-nose_radius = 仕上げ工具のノーズ半径
field-cutting-finisher-approach_angle = 仕上げ工具の切込み角
field-cutting-unbalance = 両側の 2 本の工具によって棒材に残る最小の半径方向力、大きい方の力に対する割合
field-cutting-in_plane_share = 切れ刃の各部分に働く送り面内の力、その主分力に対する割合
field-cutting-passive_floor = 工具の最小の背分力（半径方向）、主分力に対する割合
field-cutting-ra_factor = 旋削面の粗さ Ra、送りとノーズ半径から求めた理論値 Ra に対する倍数
field-cutting-ra_floor = どの送りでも旋削がそれより細かくならない粗さ Ra
field-limits-stiffness_min = 許容される最小の横方向剛性
field-limits-span_stiffness_min = つかみ部とブッシュの間で許容される最小の横方向剛性、社内限界値
field-limits-free_ratio = 前端の最大の自由長さ、その平均仕上がり径に対する倍数、社内規則
field-limits-whirl_ratio = 許容される最高回転速度、危険速度に対する割合
field-limits-whip = 棒材の回転中に許容される最大の曲がり
field-limits-sag = 無支持長さの最大の自重たわみ
field-limits-pick_up = 背面主軸コレットが掛かるときの、自由な前端の軸心からの最大のずれ
field-limits-release = コレットが開いたときの、前のつかみ部での最大の自重たわみ
field-limits-tolerance_share = 公差のうち、たわみが使ってよい割合
field-limits-drill = 横穴の位置での、ドリルの軸方向力による最大のたわみ
field-planning-station_pitch = 最初に試す停止位置の間隔
field-limits-damping_ratio = 棒材の振動の減衰比
field-limits-bore_clearance = 背面主軸穴の中の部品まわりのすき間、半径で
field-limits-torque_margin = つかみ部が受けるトルクに対する安全率
field-limits-buckling_share = 許容される最大の軸方向荷重、棒材が座屈する荷重に対する割合
field-limits-avoid_penalty_s = `avoid` の面のつなぎ目に対する加算値、機械の時間ではない
field-rates-machine_per_hour = 1 時間当たりの機械費
field-rates-material_per_kg = 1 kg 当たりの材料費

## Edges of sections

field-shaft-sections-chamfer = 前側の端の 45° 面取りの幅
field-shaft-sections-chamfer-front = 45° 面取りの幅
field-shaft-sections-chamfer-rear = 45° 面取りの幅
field-shaft-sections-radius = 前側の角または前の隅の半径
field-shaft-sections-radius-front = 角の丸みまたは隅の半径
field-shaft-sections-radius-rear = 角の丸みまたは隅の半径
field-shaft-sections-grind = 後で研削する取り代、直径で
field-shaft-sections-turned_ra = 研削前の旋削面の粗さ Ra
field-stock-bore = 中空棒材の内径

## Work on the ends and across

field-shaft-features-facing = 端面削りの取り代（長さ）
field-shaft-features-axial_hole = 軸方向穴の直径
field-shaft-features-depth = 軸方向穴、ねじ、六角穴または文字彫りの深さ
field-shaft-features-drill_depth = ねじ下穴の深さ
field-shaft-features-hex_socket = 六角穴の二面幅
field-shaft-features-keyway = 穴キー溝の幅または深さ
field-shaft-features-length = 端面からの穴キー溝の長さ
field-shaft-features-step = スロッティング工具の 1 ストロークの切込み
field-shaft-features-height = 文字の高さ
field-shaft-back_work-axial_force = 部品に加わる軸方向力
field-machine-headstock-clamp_force = 主軸コレットの把握力、半径方向力の合計
field-machine-headstock-power = 主軸台のモータの連続定格動力
field-machine-headstock-efficiency = モータの動力のうち、切削に届く割合
field-machine-headstock-torque = 主軸台の主軸の最大トルク
field-machine-headstock-feed_force = 主軸台が棒材を軸方向に送る最大の力
field-machine-counter_spindle-torque = 後端加工での背面主軸の駆動の最大トルク
field-machine-headstock-friction = 主軸コレットと棒材の間の摩擦係数
field-machine-counter_spindle-unload_s = 完成した部品の取出し時間
field-machine-tool_change_s = 1 回の工具交換の時間
field-machine-bar_change_s = 新しい棒材を入れる時間
field-machine-rapid = 早送り速度
field-machine-tools-turning = 旋削工具の位置数
field-machine-tools-cross_driven = クロス回転工具の位置数
field-machine-tools-front_fixed = 前端用固定工具の位置数
field-machine-tools-front_driven = 前端用回転工具の位置数
field-machine-tools-back_fixed = 後端用固定工具の位置数
field-machine-tools-back_driven = 後端用回転工具の位置数
field-machine-tools-whirling = ねじ用ワーリングユニットの数
field-machine-tools-turret-stations = タレットのステーション数
field-machine-tools-turret-tools_per_station = タレットの 1 ステーション当たりの工具数
field-order-pieces = 製作する個数
field-order-set_up_h = 機械の段取り時間
field-order-shift_h = 1 シフトの長さ
field-order-running_share = シフトのうち、機械が運転する割合

## The machine

field-machine-bush-max_bar = ガイドブッシュに通る棒材の最大直径
field-machine-bush-land = ブッシュの案内部の長さ
field-machine-bush-gap = 刃先からブッシュ端面までの距離（刃先すき間）
field-machine-bush-stiffness = ブッシュの半径方向剛性
field-machine-bush-engagement_min = 棒材を引き戻したとき、未旋削の棒材に掛かっていなければならない案内部の長さ
field-machine-no_bush-max_bar = ガイドブッシュなしでの棒材の最大直径
field-machine-no_bush-collet_gap = 段階の終わりから主軸コレット端面までの距離
field-machine-headstock-nearest = 主軸コレット端面からブッシュ端面までの最短距離
field-machine-headstock-stroke = 主軸台のストローク
field-machine-headstock-hold = 主軸コレットのつかみ長さ
field-machine-headstock-stiffness = 主軸コレットの半径方向剛性
field-machine-headstock-max_rpm = 主軸台の最高回転速度
field-machine-headstock-regrip_s = 1 回の主軸つかみ替えの時間
field-machine-counter_spindle-nearest = 背面主軸端面からブッシュ端面までの最短距離
field-machine-counter_spindle-farthest = 背面主軸端面からブッシュ端面までの最長距離
field-machine-counter_spindle-bore = 背面主軸穴の直径
field-machine-counter_spindle-bore_depth = 背面主軸端面からの背面主軸穴の深さ
field-machine-counter_spindle-stiffness = 背面主軸コレットの半径方向剛性
field-machine-counter_spindle-max_rpm = 背面主軸の最高回転速度
field-machine-counter_spindle-hand_over_s = 1 回の受け渡しの時間
field-machine-counter_spindle-friction = 背面主軸コレットと部品の間の摩擦係数
field-machine-counter_spindle-axial_load = 背面主軸がつかんだ軸に加え続ける軸方向力。正の値は引く力、負の値は押す力
field-machine-counter_spindle-torsional_stiffness = 駆動を含む背面主軸のねじり剛性。主軸台もこれと同じ剛性とみなす
field-machine-counter_spindle-phase_error = 両主軸が同じ棒材を保持している間の、両主軸の間の角度
field-machine-counter_spindle-centre-force = センタが部品を押す軸方向力
field-machine-counter_spindle-centre-stiffness = センタ先端での半径方向剛性
field-machine-counter_spindle-centre-stands_out = 背面主軸端面からセンタ先端までの距離
field-machine-counter_spindle-sleeve-pitch = 背面主軸穴の支持スリーブの間隔
field-machine-counter_spindle-sleeve-stiffness = 背面主軸穴の各支持スリーブの半径方向剛性
field-machine-counter_spindle-collets-range = コレットがつかむ最小または最大の直径
field-machine-counter_spindle-collets-hold = コレットのつかみ長さ
field-machine-counter_spindle-collets-passes = 開いたコレットを通る最大の直径
field-machine-counter_spindle-collets-clamp_force = コレットの把握力、半径方向力の合計
field-machine-counter_spindle-collets-run_out = コレット端面位置での振れ、読みの全幅
field-machine-bar_feed-max_rpm = 主軸台の後方で棒材供給装置が棒材を回してよい最高回転速度
field-machine-driven_max_rpm = 回転工具の最高回転速度
field-machine-shared_stop_saving_s = 受け渡しと主軸つかみ替えを同じ停止で行うときの短縮時間
field-machine-cross_tool_reach = 切削工具からクロス回転工具までの棒材方向の距離
field-machine-segment_overhead_s = 切削以外に、工具の 1 パスごとに加わる時間
field-machine-part_off-width = 突切りバイトの幅
field-machine-part_off-time_s = 突切りの時間
field-machine-part_off-tray-max_length = 製品受けに落下させてよい部品の最大長さ。0：部品は落下しない
field-machine-part_off-tray-max_diameter = 製品受けに落下させてよい部品の最大直径
field-machine-bar_end = どのコレットでもつかめない棒材端の長さ
field-machine-facing = 各部品の前端の端面削りの取り代（長さ）。ジョブの端面削りの方が大きければそれによる

## Wishes and families

field-wishes-hand_over_at = 受け渡しを行わなければならない旋削長さ
field-wishes-hand_over_at-at = 受け渡しの旋削長さ
field-wishes-hand_over_at-nose = 受け渡し時の、前端面から背面主軸端面までの距離
field-wishes-never_grip = つかみ部が触れてはいけない長さ範囲の一端までの、前端面からの距離
field-wishes-at_most_hand_overs = 部品 1 個当たりの受け渡しの最大回数、最初のつかみを含む
field-vary-length-from = 可変区間の最短の長さ
field-vary-length-to = 可変区間の最長の長さ
field-vary-length-step = 長さの刻み
field-vary-diameter-from = 可変区間の最小の直径
field-vary-diameter-to = 可変区間の最大の直径
field-vary-diameter-step = 直径の刻み

## Spread

field-confidence = 計画がすべての限界値に収まらなければならない抽出部品の割合
field-confidence_warn = すべての限界値に収まる抽出部品の割合。これを下回る計画は「リスクあり」
field-scatter-samples = 抽出する部品の数
field-scatter-seed = 無作為抽出の開始番号
field-scatter-straightness = 曲がりのばらつき、その値に対する割合
field-scatter-supports = 各支持部の剛性のばらつき、その値に対する割合
field-scatter-bush = ガイドブッシュの剛性のばらつき、割合
field-scatter-headstock = 主軸台の剛性のばらつき、割合
field-scatter-counter_spindle = 背面主軸の剛性のばらつき、割合
field-scatter-centre = センタの剛性のばらつき、割合
field-scatter-sleeve = 背面主軸穴の支持スリーブの剛性のばらつき、割合
field-scatter-kc = 比切削抵抗のばらつき、その値に対する割合
field-scatter-passive = 主分力とは別の、背分力と送り分力のばらつき、その値に対する割合
field-scatter-e = ヤング率のばらつき、その値に対する割合
field-scatter-damping = 減衰比のばらつき、その値に対する割合
field-scatter-ra = 理論粗さに対する実際の粗さの比（cutting.ra_factor）のばらつき、その値に対する割合
field-scatter-run_out = 背面主軸コレットの振れのばらつき、割合
field-scatter-bar = 棒材の直径のばらつき
field-machine-scatter-bush = ガイドブッシュの剛性のばらつき、割合
field-machine-scatter-headstock = 主軸台の剛性のばらつき、割合
field-machine-scatter-counter_spindle = 背面主軸の剛性のばらつき、割合
field-machine-scatter-centre = センタの剛性のばらつき、割合
field-machine-scatter-sleeve = 背面主軸穴の支持スリーブの剛性のばらつき、割合
field-machine-scatter-damping = 減衰比のばらつき、割合
field-machine-scatter-run_out = 背面主軸コレットの振れのばらつき、割合
field-shaft-material-scatter-kc = 比切削抵抗のばらつき、割合
field-shaft-material-scatter-e = ヤング率のばらつき、割合
field-shop-bars-scatter-straightness = この棒材から作る軸の曲がりのばらつき、割合
field-shop-bars-scatter-bar = この棒材の直径のばらつき

## What a change is worth

field-change_prices-wish = ジョブの希望条件を取りやめることの順位
field-change_prices-speed = 回転速度を下げることの順位
field-change_prices-cut = 切込みの変更、送りの低減、ストロークの増加の順位
field-change_prices-tools = 2 本目の工具で同時に切削することの順位
field-change_prices-hold = 保持方法の変更の順位：ガイドブッシュの有無、コレットかセンタか、ストロークの短縮
field-change_prices-method = ねじまたは六角穴の加工法の変更の順位
field-change_prices-turn_round = 部品を反対の端から加工することの順位
field-change_prices-bar = 別の直径の棒材にすることの順位
field-change_prices-straightness = 曲がりの小さい棒材にすることの順位
field-change_prices-collet = 別のコレットにすることの順位
field-change_prices-tray = 部品が入る製品受けにすることの順位
field-change_prices-stop = 停止してはいけない面で停止することの順位
field-change_prices-grip = つかんではいけない面をつかむことの順位
field-change_prices-sleeve = 背面主軸に支持スリーブを入れることの順位
field-change_prices-set_up = 別の段取りで加工することの順位
field-change_prices-drawing = 図面を変更することの順位
field-change_prices-shop_machine = 工場の別の機械にすることの順位
field-change_prices-machine = 能力の高い機械にすることの順位

## The tool list

field-tool_list-nose_radius = チップのノーズ半径
field-tool_list-approach_angle = 工具の切込み角
field-tool_list-ap_max = 工具の最大の切込み
field-tool_list-width = 溝入れバイトまたは突切りバイトの幅
field-tool_list-vc = 切削速度
field-tool_list-feed = 1 回転当たりの送り。仕上げ削りではその最大値

## The shop's file

field-shop-machines-per_hour = この機械の 1 時間当たりの費用
field-shop-materials-price_per_kg = 材料の 1 kg 当たりの価格
field-shop-bars-diameter = 棒材の直径
field-shop-bars-bar_length = 棒材の長さ
field-shop-bars-price_per_kg = この棒材の 1 kg 当たりの価格

## Readings

field-readings-diameter = 測定した棒材の直径
field-readings-set_ups-front = ブッシュ端面から棒材の前端までの距離
field-readings-set_ups-headstock = ブッシュ端面から主軸コレット端面までの距離
field-readings-set_ups-grip = ブッシュ端面から背面主軸コレット端面までの距離
field-readings-set_ups-frequency = 打撃試験による横方向の 1 次固有振動数
field-readings-set_ups-dial-load = 棒材に加えた荷重
field-readings-set_ups-dial-at = ブッシュ端面から荷重までの距離。端面より後ろは負
field-readings-set_ups-dial-read_at = ブッシュ端面からダイヤルゲージまでの距離。端面より後ろは負
field-readings-set_ups-dial-deflection = ダイヤルゲージで読んだたわみ。荷重の向きを正とする
field-readings-errors-dial = ダイヤルゲージの読みの不確かさ
field-readings-errors-load = 荷重の不確かさ、その値に対する割合
field-readings-errors-tap = 振動数の不確かさ、その値に対する割合
