# The topics of `help`: files, checks, materials.
help-job =
    ジョブファイルには、何を旋削するかを書きます：軸、棒材、機械、切削の条件です。YAML ファイルです。
    長さは mm、`units: inch` があればインチです。軸上の位置は前端面（ガイドブッシュから先に出る端）から測ります。
    `spanhold new` は、コメント付きの長い例を出力します。入力中にエディタでファイルを検査できます：`spanhold schema job`。
    名前の後の `[]` は、リストの各項目を表します。
help-machine =
    機械ファイルには旋盤 1 台を書きます。YAML ファイルです。ジョブから名前で指定するか、ジョブの `machine` の下に同じキーを書きます。
    長さは mm、`units: inch` があればインチです。剛性は N/µm です。長さと回転速度は機械の取扱説明書から取ってください。剛性は測定してください：`spanhold help readings` を参照。
    名前の後の `[]` は、リストの各項目を表します。
help-shop =
    工場ファイルには、工場のすべてのジョブに共通のものを書きます：機械、コレット、価格付きの材料、棒材、単価、社内の値です。
    YAML ファイルです。spanhold は、ジョブのフォルダまたはその上にある `shop.yaml` を使います。`--shop FILE` またはジョブの `shop` で別のファイルを指定できます。
    工場ファイルにあるものはジョブでは省けます。ジョブに書いたものが優先します。`spanhold new shop shop.yaml` でコメント付きのファイルを書き出せます。
    `cutting`、`limits`、`planning`、`scatter`、`order`、`rates` のキーはジョブと同じです（`spanhold help job`）。ただし `cutting.vc` と `order.pieces` を除きます。
    名前の後の `[]` は、リストの各項目を表します。
help-readings =
    測定値ファイルには、機械で測ったものを書きます。`spanhold fit` は、そこから各支持部の剛性を計算します。
    位置は、ブッシュ端面から背面主軸に向かって mm で測ります。ブッシュなしでは、主軸コレット端面から測ります。
    測定の前に機械をロックアウトしてください。機械の取扱説明書と現地の規則に従ってください。
    名前の後の `[]` は、リストの各項目を表します。
help-materials =
    ジョブの `shaft.material` に使える内蔵の材料です。名前、番号、または別名を指定します。大文字と小文字、空白、ハイフン、体系の名前（AISI、JIS、UNS、W.-Nr.）、名前の前の規格番号は区別しません。
    E：ヤング率。kc1.1 と mc：切りくず厚さ 1 mm での比切削抵抗とその指数。vc：被覆超硬と切削油剤を使うときの通常の切削速度。
    信頼度は、kc1.1 と mc をどこまで信頼できるかを示します。high：その材種の出典が 1 つ分かっている。medium：出典により異なる、または合う材料群の値。low：推定値。
    値は、便覧と規格の記憶、工具メーカの資料、または推定によるものです。切削力の精度は、よくても ± 25 % です。
    ほかの材料はマップで指定します：`name`、`e_gpa`、`density`、`kc11`、`mc`、必要なら `poisson`、`vc`、`class`。`spanhold help job` を参照。
help-speeds =
    ドリル、タップ、フライス工具の速度と送りです。材料の区分から決まります。内蔵の材料には区分があります。独自の材料には `class` を指定してください。指定しなければほかの数値から仮定し、計画にそのことを書きます。
    ドリルとタップは高速度鋼、フライス工具は全幅で切削する被覆ソリッド超硬で、すべて切削油剤を使う場合です。超硬ドリルの速度は 2 ～ 4 倍です。回転工具は、機械の `driven_max_rpm` より速くは回りません。
    文字は、それぞれの値の出典を示します：ドリル、タップ、フライス工具の順です。出典の範囲には幅があります。
    2 つの直径の間では、1 刃当たりの送りを直線で補間します。表より細い工具では直径に比例し、表より太い工具では最後の値です。
help-checks =
    計画の判定項目です。各項目では、値をその限界値と比べます。すべての値が限界値の 100 % 以下なら、計画は成立します。
    限界値の標準値は一般的な慣行によるもので、出典はありません。ジョブの `limits` で変えられます。
help-plan-file =
    plan.json のキーです。このファイルは `spanhold plan --out` が書き出し、`spanhold plan --format json` が出力します。
    数はすべて有限です。`null` は「ない」ことを表します。多くの名前は末尾が単位です。旋削長さと軸上の位置は前端面から測ります。
    名前の後の `[]` は、リストの各項目を表します。
help-group-root = ファイルのキー：{ $what }。
help-group = { $paths }：{ $what }。
help-group-kinds = { $title } 次の種類のうち、ちょうど 1 つを指定します：{ $kinds }。
help-head-key = キー
help-head-meaning = 意味
help-head-unit = 単位
help-head-takes = 書ける値
help-head-holds = 内容
help-head-left-out = 省いたとき
help-head-check = 判定項目
help-head-looks-at = 見るもの
help-head-made = 時期
help-head-limit = 限界値のキー
help-head-material = 名前
help-head-class = 区分
help-head-drill-vc = ドリル、m/min
help-head-drill-feed = ドリルの送り、× 直径
help-head-tap-vc = タップ、m/min
help-head-mill-vc = フライス、m/min
help-head-tooth-feed = 1 刃の送り
help-head-sources = 出典
help-head-cutter = フライス工具の直径、mm
help-head-letter = 文字
help-head-source = 出典
help-speeds-meaning = 区分：
help-speeds-classes = 速度と送り：
help-speeds-teeth = フライス工具の直径ごとの 1 刃当たりの送り、mm：
help-speeds-sources = 出典：
tooth-feed-full = 通常
tooth-feed-small = 小
help-head-number = 番号
help-head-names = 別名
help-head-state = 状態
help-head-e = E, GPa
help-head-density = 密度、kg/m³
help-head-kc = kc1.1, N/mm²
help-head-mc = mc
help-head-vc = vc, m/min
help-head-confidence = 信頼度
help-takes-range = { $least } ～ { $most }
help-takes-text = 文字列
help-takes-number = 数
help-takes-whole = 整数
help-takes-flag = `true` または `false`
help-takes-null = `null`
help-takes-map = マップ
help-takes-list = リスト：{ $item }
help-takes-pair = 2 つの値：{ $item }
help-takes-or = { $one } または { $other }
help-takes-any = 任意の値
help-must-be-given = 必須
help-must-be-given-with = { $keys } があれば必須
help-another-kind = 別の種類
help-another-kind-of = 別の種類：{ $others }
help-material-about = { $name }（{ $group }、{ $state }）、ポアソン比 { $poisson }、区分 { $class }。kc1.1 と mc：{ $source }。
help-material-group = { $group }：
help-materials-more =
    `spanhold materials WORD` は、語（名前、番号、または材料群）に合う材料の別名、棒材の状態、出典を示します。
    `--format json` はすべてを出力します。
help-material-names = { "  " }別名：{ $names }。
help-check-at-rest = すべての旋削長さ
help-check-by-speed = すべての旋削長さ。回転速度を下げると緩和
help-check-at-event = 1 つの動作時
help-check-at-both = 切削中のすべての状態と、端の加工時
help-check-no-limit = なし
help-check-no-default = 工具、棒材、保持により異なる
help-check-stiffness = 工具位置での棒材の横方向剛性。
help-check-span-stiffness = つかみ部とブッシュの間の最小の横方向剛性。単独工具に対する社内限界値です。前端を自由のまま加工できるところには適用しません。
help-check-free-ratio = 社内規則です。キーを省くと働きません。前端の自由長さを平均仕上がり径で割った値（L/d）。
help-check-whirl = 回転速度を最低の危険速度で割った値。文中では「危険速度」と書きます。
help-check-whip = 旋削後の軸の曲がり。回転で大きくなった値。
help-check-sag = つかみ部とブッシュの間の、軸の自重によるたわみ。自由な前端については `pick_up` を参照。
help-check-pick-up = 背面主軸コレットが掛かるときの、自由な前端の軸心からのずれ。曲がりと自重によるもの。
help-check-bore = 背面主軸の中での同じ曲がりを、穴の余裕と比べます。曲がりは回転で大きくなった値。限界値のキーは、空けておくすき間です。
help-check-cut = 棒材のたわみによる、切削方向の直径の変化。限界値は公差に対する割合です。
help-check-chatter = 再生びびりが始まる切込みに対する、実際の切込み。`limits.damping_ratio` でその切込みが変わります。
help-check-buckling = 棒材を押す軸方向荷重。座屈する荷重の一定割合と比べます。限界値の 4 分の 1 未満なら、この行を省きます。
help-check-run-out = 背面主軸コレットの振れによる、切削中の面の振れ。コレットと区間の両方に `run_out` があるときに判定します。
help-check-drill = クロス工具（ドリルまたはフライス工具）の加工中に、その力で生じるたわみ。
help-check-release = 受け渡しでコレットが開いたときの、前のつかみ部での軸の下がり。
help-check-torque = 突切りと後端加工のトルクに余裕を掛けた値。最後のつかみの摩擦と比べます。
help-check-push = 端の加工のスラスト力とトルクに余裕を掛けた値。保持するコレットの摩擦と比べます。
help-check-back = 突切り後の加工による後端のたわみ。限界値は、その加工の公差に対する割合です。
help-unknown-topic = `{ $word }` のヘルプはありません
help-topics-and-commands = 項目：{ $topics }。コマンド：{ $commands }
help-nearest = `{ $near }` のことですか。{ $all }
help-more-topics = 項目：{ $topics }。読むには：spanhold help TOPIC
help-materials-of-shop = `{ $file }` の材料
help-head-price = kg 単価
help-no-material = `{ $word }` に合う内蔵の材料はありません
help-all-materials = `spanhold materials` ですべて一覧できます
left-out-none = なし
left-out-defaults = 各キーの標準値
left-out-shaft-name = `shaft`
left-out-run-out = `run_out` を判定しない
left-out-section-name = 「区間」とその番号
left-out-section-kind = 単純な円筒、ねじ、テーパまたは平取り
left-out-section-sides = `across_flats` があれば必須
left-out-section-ra = 粗さの指定なし
left-out-section-tolerance = ISO 2768-m
left-out-thread-by = `single_point`。棒材をねじの全長だけ引き戻せなければ `whirling`
left-out-section-interrupt = ねじ、IT7 以上の精度、Ra 0.8 以下なら `never`。IT9 まで、または Ra 1.6 までなら `avoid`。それ以外は `free`
left-out-section-grip = 単純な円筒なら `true`、それ以外は `false`
left-out-feature-thrust = 穴から計算
left-out-feature-at = `cross_hole`、および軸の横の `tapped_hole` と `engrave` では必須
left-out-language = 工場ファイルの言語。なければ `en`
left-out-feature-depth = `axial_hole`、`hex_socket`、端の `tapped_hole` では必須。`engrave` では { $default }
left-out-feature-drill-depth = `depth` に 4 ピッチを加えた値
left-out-material-vc = その場合は `cutting.vc` を指定
left-out-material-class = ヤング率、密度、kc1.1 から仮定
left-out-finisher = 同じ側、荒削り工具と同じ切れ刃
left-out-finisher-edge = 荒削り工具と同じ
left-out-cutting-vc = 材料の通常の範囲の中央
left-out-cutting-feed = 荒削り 0.15。仕上げは Ra から求め、0.15 以下
left-out-cutting-ap-finish = { $default }、ただし `ap_max` 以下
left-out-stiffness = 棒材の直径 1 mm 当たり { $share } N/µm
left-out-span-stiffness = `stiffness_min` と同じ
left-out-whip = 棒材の直径 1 mm 当たり { $share } mm
left-out-rates = 費用を計算しない
left-out-order = 受注の見積りをしない
left-out-vary = 部品 1 種類
left-out-wish-nose = 計画時に選ぶ
left-out-wish-most = 制限なし
left-out-scatter-support = 機械の `scatter`、なければ `supports`
left-out-own-scatter = ジョブまたは工場の `scatter`
left-out-confidence = なし：最速の計画
left-out-scatter-bar = 棒材の公差内で一様。公差がなければ、なし
left-out-machine-name = ファイルの名前
left-out-bush = ブッシュなし、`holding: no_bush` だけ
left-out-no-bush = ブッシュなしの加工なし
left-out-engagement = `land` の半分
left-out-counter-spindle = 背面主軸なし
left-out-sleeve = 支持スリーブなし
left-out-centre = センタなし
left-out-centre-stands-out = センタ先端は背面主軸端面にあるとみなす
left-out-torsional-stiffness = 最後のつかみが突切りトルクの全部を受ける
left-out-edge = 面取りや丸みのない角
left-out-grind = 研削しない
left-out-drive = 判定しない。必要値は計画に示す
left-out-clamp-force = 前端の `push` を判定しない
left-out-bush-kind = 棒材の公差についての注意を出さない
left-out-bar-feed = 棒材供給装置による回転速度の制限なし
left-out-tray = 背面主軸あり：{ $length } mm × Ø{ $diameter } mm までの部品は落下してよい。なし：すべての部品が落下する
left-out-tools = 工具取付け位置を判定しない
left-out-turret = タレットなし
left-out-fit = 機械のすべての支持部
left-out-set-up-name = 「測定配置」とその番号
left-out-set-up-headstock = ブッシュがあれば必須
left-out-set-up-grip = 前端は自由
left-out-set-up-collet = 棒材をつかめるコレットが 2 つ以上あれば必須
left-out-dial = その場合は `frequency` を指定
left-out-frequency = その場合は `dial` を指定
left-out-read-at = 荷重の位置
man-unknown-command = コマンド `{ $word }` はありません
man-commands = コマンド：{ $commands }
class-free-cutting-steel = 快削鋼
class-structural-steel = 構造用鋼、はだ焼鋼
class-carbon-steel = 炭素約 0.35 % 以上の非合金鋼
class-alloy-steel = 合金鋼、焼入焼戻し
class-tool-steel = 工具鋼
class-free-cutting-stainless = 硫黄入り快削ステンレス鋼
class-ferritic-stainless = フェライト系、マルテンサイト系ステンレス鋼
class-austenitic-stainless = オーステナイト系ステンレス鋼
class-duplex-stainless = 二相系、析出硬化系ステンレス鋼
class-heat-resistant-steel = 鉄基耐熱合金
class-pure-titanium = 純チタン
class-titanium-alloy = チタン合金
class-cobalt-chromium = コバルトクロム合金
class-nickel-alloy = ニッケル合金
class-free-cutting-copper = 鉛入り黄銅などの快削銅合金
class-copper-alloy = 銅、青銅、鉛を含まない黄銅
class-aluminium = アルミニウム合金
class-plastic = プラスチック

# The shop's file.
schema-shop = 工場にあるもの
schema-shop-of-job = 工場ファイルのパス。`none`：工場ファイルを使わない
schema-shop-machine = 機械
schema-shop-machines = 機械。最初のものが標準の機械
schema-shop-machine-name = ジョブから指定するときの名前
schema-shop-collets = 機械ファイルのコレットに加えて使える、背面主軸用のコレット
schema-shop-collet-machines = 取り付けられる機械
schema-shop-materials = 材種の価格と値、またはその一覧のファイルのパス
schema-shop-material = 材種
schema-shop-grade = 内蔵の表の材種。並べて書いた値は表の値に代わる
schema-shop-grade-name = 独自の材種の名前
schema-shop-bars = 在庫の棒材
schema-shop-bar = 棒材
schema-shop-bar-material = その材料の名前
schema-language = 文章と段取り表の言語
left-out-to-shop = 工場ファイルの値
left-out-shop-machine-name = そのファイルの名前
left-out-shop-machine-file = `machine` が必須
left-out-shop-machine-here = `file` が必須
left-out-shop-per-hour = `rates.machine_per_hour`
left-out-shop-collet = すべての機械
left-out-shop-grade = 独自の材種
left-out-shop-grade-value = 表の値。`grade` がなければ必須
left-out-shop-grade-or = 表の値。`grade` がなければ { $default }
left-out-shop-grade-maybe = 表の値。`grade` がなければ、なし
left-out-shop-grade-name = 表の名前。`grade` がなければ必須
left-out-shop-price = `rates.material_per_kg`
left-out-shop-house = 標準値
left-out-shop-bar-length = 3000

# The tool list.
schema-tool-list = ある工具の一覧。計画はこの中から選ぶ
schema-tool = 工具
schema-tool-name = 工具の名前
schema-tool-kind = 工具の用途
schema-tool-station = 取付け位置
schema-tool-insert = チップ、自由な表記で
schema-tool-rough = 荒削りの条件
schema-tool-finish = 仕上げ削りの条件
schema-tool-materials = 特定の材料での別の切削条件、材料の名前ごとに
schema-tool-material = この材料での切削条件
left-out-tool-list = 1 組の値、`cutting`
left-out-tool-cutting = `cutting` と同じ
left-out-tool-width = どの溝にも合う
left-out-tool-cut = どちらの指定もなければ、両方
# Units of a file.
schema-units = このファイルで単位のない数の単位：メートル系またはインチ
left-out-machine-units = それを含むファイルの単位。なければ `mm`
