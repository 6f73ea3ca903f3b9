# Names of works and tools, and wishes, as they stand in a plan.

## Works. Lengths are in mm.

work-centre-hole = センタ穴 { $hole }
work-hole = 穴 Ø{ $diameter }、深さ { $depth }
work-hole-for-thread = { $hole }（{ $thread } の下穴）
work-hole-for-socket = { $hole }（六角穴の下穴）
work-hole-across-for-thread = 横穴 Ø{ $diameter }（{ $thread } の下穴）
work-tap = タップ { $thread }、深さ { $depth }
work-tap-across = 横タップ { $thread }
work-socket-shaved = 六角穴 { $size }、深さ { $depth }、スロッティング 6 × { $strokes } ストローク
work-socket-punched = 六角穴 { $size }、深さ { $depth }、パンチ加工
work-keyway = 穴キー溝 { $width } × { $depth }、長さ { $length }、スロッティング { $strokes } ストローク
work-keyseat = 軸キー溝 { $width } × { $depth }、{ $from } ～ { $to }
work-engraving = 文字彫り { $text }、高さ { $height }
work-facing = 端面削り { $depth }
work-rolling = 転造 { $thread }、{ $section }
work-flats = 平取り { $sides } 面、二面幅 { $across }、{ $section }
work-knurl = ローレット、{ $section }
work-cross-hole = 横穴 Ø{ $diameter }
work-front = { $work }、前端
work-back = { $work }、後端

## Tools

tool-turning = 旋削工具
tool-roughing-of-pair = 対向工具の荒削り工具
tool-finishing-of-pair = 対向工具の仕上げ工具
tool-finishing = 仕上げ工具
tool-back-turning = 後挽きバイト
tool-pitch = ピッチ { $pitch }
tool-angle-pitch = { $angle }°、ピッチ { $pitch }
tool-part-off = 突切りバイト
tool-grooving = 溝入れバイト { $width }
tool-whirling = ワーリングヘッド、{ $cutter }
tool-threading = ねじ切りバイト、{ $cutter }
tool-centre-drill = センタ穴ドリル { $hole }
tool-drill = ドリル Ø{ $diameter }
tool-tap = タップ { $thread }
tool-shaving-hexagon = スロッティング工具、六角 { $size }
tool-shaving-keyway = スロッティング工具、穴キー溝 { $width }
tool-punch = パンチ、六角 { $size }
tool-engraver = 文字彫りカッタ
tool-facing = 端面削りバイト
tool-rolls = ねじ転造ロール { $thread }
tool-flats = 平取り用フライス工具
tool-knurling = ローレット工具
tool-slot = キー溝フライス { $width }

## Wishes, to be put after "the wish to".

wish-hand-over = { $at } { -mm } で受け渡す
wish-hand-over-nose = 背面主軸端面 { $nose } { -mm }、旋削長さ { $at } { -mm } で受け渡す
wish-never-grip = つかまない：{ $what }
wish-at-most = 受け渡しは { $number } 回まで

## Values that a standard does not have

centre-mouth = `{ $given }`：センタ穴 { $name } の端面での口元は { $mouth } mm です
centre-mouth-help = `{ $name }` と書いてください
centre-unknown = `{ $given }` は ISO 6411 のセンタ穴ではありません
centre-unknown-help = A、B、R のどれかと呼び径を、`A2.5` のように書いてください。呼び径：{ $pilots }（B と R は 1 から）
general-too-small = { $size } mm は { $from } mm 未満で、ISO 2768 に普通公差がありません
general-too-small-help = 公差を指定してください：`tolerance: h6`、または mm で `tolerance: [-0.01, 0]`
general-too-large = { $size } mm は普通公差の表の範囲を超えています
general-too-large-help = 公差を mm で指定してください：`tolerance: [-0.5, 0.5]`
iso286-grade = 公差等級 { $grade } は表にありません
iso286-grade-help = 等級は { $first } から { $last } までです
iso286-no-class = `{ $class }` は表にありません
iso286-j-help = j には j5、j6、j7 があります。ほかの等級では js を使ってください
iso286-no-class-at = `{ $class }` は { $diameter } mm の表にありません
iso286-t-help = t は 24 mm を超える寸法からです。それ以下では u を使ってください
iso286-hole = `{ $class }` は穴の公差クラスです
iso286-hole-help = 軸には小文字を使います：`{ $class }`
iso286-unknown = `{ $class }` は軸の公差クラスではありません
iso286-unknown-help = ISO 286 の公差クラスを、d, e, f, g, h, j, js, k, m, n, p, r, s, t, u, x のどれかと 4 ～ 13 の等級で `h6` のように書くか、許容差を mm で書いてください：`[-0.05 mm, 0]`
engraving-letter = `{ $letter }` は彫れません
engraving-letter-help = 使えるのは、アクセントのない A ～ Z の文字、数字、空白、Ø、- . , / + : ( ) です

## Labels of the drawing

label-knurl = Ø{ $diameter } ローレット
label-flats = 二面幅 { $size } ×{ $sides }
label-ground = 研削 Ø{ $diameter } { $class }
label-keyway = 穴キー溝 { $width } × { $depth }
label-hexagon = 六角 { $size } × { $depth }
label-face = 端面 { $depth }
label-bore = 内径 Ø{ $diameter }

## A family of parts.
varied-range = { $section } の { $key }、{ $from } ～ { $to } { -mm }、{ $step } 刻み
varied-size = { $section } の { $key } { $size } { -mm }
