package hearthcloth.words.designing;

/** The room of designing in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseDesigning implements DesigningWords {

    @Override
    public String againButton() {
        return "色を計画し直す";
    }

    @Override
    public String againLocked() {
        return "固定したものはそのままです。";
    }

    @Override
    public String altEyes(String eyes, String name, String size) {
        return eyes + "目に見える「" + name + "」、" + size;
    }

    @Override
    public String altFace(String face, String name, String size) {
        return (face.equals("FRONT") ? "「" + name + "」の正面、" + size : "「" + name + "」の背面、" + size);
    }

    @Override
    public String altFront() {
        return "正面。ストリップを 1 本ずつ選べます";
    }

    @Override
    public String altTarget(String bar, String cut, String fabrics, String locked) {
        return bar + "、" + fabrics + "、裁ち " + cut + (locked.equals("yes") ? "、固定" : "");
    }

    @Override
    public String altValues(String name) {
        return "「" + name + "」の明暗、5 段階";
    }

    @Override
    public String altWide(String width) {
        return "幅 " + width;
    }

    @Override
    public String barAny() {
        return "どの布でも";
    }

    @Override
    public String barAnySays() {
        return "計画が選びます";
    }

    @Override
    public String barCut(String unit) {
        return "裁ち、" + unit;
    }

    @Override
    public String barLock() {
        return "固定する";
    }

    @Override
    public String barLockIt() {
        return "このまま固定";
    }

    @Override
    public String barLocked() {
        return "固定";
    }

    @Override
    public String barMiddle() {
        return "まん中";
    }

    @Override
    public String barName(String bar, String label) {
        return (bar.equals("hearth") ? "中心布" : "ストリップ " + label);
    }

    @Override
    public String barNarrower() {
        return "細く";
    }

    @Override
    public String barSet() {
        return "幅を決める";
    }

    @Override
    public String barUnlock() {
        return "固定しています。押すと外れます";
    }

    @Override
    public String barWhere(String round, String side) {
        return (side.equals("LEFT") ? "左、" + round + " 周目" : side.equals("RIGHT") ? "右、" + round + " 周目" : side.equals("TOP") ? "上、" + round + " 周目" : "下、" + round + " 周目");
    }

    @Override
    public String barWider() {
        return "太く";
    }

    @Override
    public String benchChoices() {
        return "選択";
    }

    @Override
    public String benchClose() {
        return "選択をやめる";
    }

    @Override
    public String benchHolds(String largest, String tie) {
        return tie + "：" + largest;
    }

    @Override
    public String benchLacking() {
        return "これには布が足りません。";
    }

    @Override
    public String benchPanel() {
        return "変えられるもの";
    }

    @Override
    public String benchRedo() {
        return "やり直す";
    }

    @Override
    public String benchRedoWhat(String deed) {
        return "やり直す：" + deed;
    }

    @Override
    public String benchReplan() {
        return "手持ちの布で計画し直す";
    }

    @Override
    public String benchReplanCuts() {
        return "まだ裁つものを計画し直す";
    }

    @Override
    public String benchTap() {
        return "中心布やストリップを押すと、布や幅を変えられます。斜線のストリップは布の裏が見えます。";
    }

    @Override
    public String benchTies() {
        return "包めるもの";
    }

    @Override
    public String benchUndo() {
        return "元に戻す";
    }

    @Override
    public String benchUndoWhat(String deed) {
        return "元に戻す：" + deed;
    }

    @Override
    public String benchViews() {
        return "見方";
    }

    @Override
    public String benchWall() {
        return "図を画面いっぱいに";
    }

    @Override
    public String besideName(String deed, String name) {
        return name + "、" + deed;
    }

    @Override
    public String besideOld() {
        return "このページを開いてから、別の画面でこの布が何度も変更されました。ここでは何も変わっていません。開き直してください。";
    }

    @Override
    public String besideSaid(String deed, String name) {
        return "その間に別の画面で「" + name + "」が変更されました。両方とも保存しました。一つはその画面のまま、もう一つにここでの変更（" + deed + "）があります。";
    }

    @Override
    public String coloursBest() {
        return "計画がよいと見るとおり";
    }

    @Override
    public String coloursContrast() {
        return "コントラスト";
    }

    @Override
    public String coloursLabel() {
        return "色";
    }

    @Override
    public String copyName(String name) {
        return name + "、もう一枚";
    }

    @Override
    public String deedAgain() {
        return "色の計画し直し";
    }

    @Override
    public String deedAnyFabric() {
        return "どの布でも";
    }

    @Override
    public String deedBar(String bar) {
        return bar + " の幅";
    }

    @Override
    public String deedFabric(String fabric, String place) {
        return place + " に" + fabric;
    }

    @Override
    public String deedFell() {
        return "倒した縫い代の面";
    }

    @Override
    public String deedHearth() {
        return "中心布";
    }

    @Override
    public String deedLock(String on, String place) {
        return (on.equals("yes") ? "" + place + " を固定" : "" + place + " の固定を外す");
    }

    @Override
    public String deedMaking(String what) {
        return (what.equals("seam") ? "縫い目" : "縁の始末");
    }

    @Override
    public String deedOrder() {
        return "順番";
    }

    @Override
    public String deedReplan() {
        return "計画し直し";
    }

    @Override
    public String deedRound(String round) {
        return round + " 周目の幅";
    }

    @Override
    public String deedRounds(int n) {
        return "" + n + " 周";
    }

    @Override
    public String deedRules() {
        return "はぎの決まり";
    }

    @Override
    public String deedSwap() {
        return "布の入れ替え";
    }

    @Override
    public String exampleAway() {
        return "見本を片づける";
    }

    @Override
    public String exampleGone() {
        return "見本を消しました。";
    }

    @Override
    public String exampleLaid() {
        return "試せる見本の布と作品があります。ひと押しで消えます。";
    }

    @Override
    public String exampleLay() {
        return "見本を並べる";
    }

    @Override
    public String exampleName(String title) {
        return "見本：" + title;
    }

    @Override
    public String eyes(String eyes) {
        return (eyes.equals("PROTAN") ? "赤が見えにくい" : eyes.equals("DEUTAN") ? "緑が見えにくい" : "青が見えにくい");
    }

    @Override
    public String eyesTo() {
        return "ほかの目には：";
    }

    @Override
    public String eyesTold(String colours, String eyes) {
        return eyes + "目には：" + colours;
    }

    @Override
    public String fabricsSwap() {
        return "入れ替える";
    }

    @Override
    public String fabricsTitle() {
        return "布";
    }

    @Override
    public String fabricsWith() {
        return "これと";
    }

    @Override
    public String face(String face) {
        return (face.equals("front") ? "正面" : "背面");
    }

    @Override
    public String figureCuts() {
        return "裁ち";
    }

    @Override
    public String figureJoins() {
        return "はぎ";
    }

    @Override
    public String figureJoinsFew(int above, String joins) {
        return (above == 0 ? "" + joins + "、これが最少" : "" + joins + "、最少より多くても " + above + " 多い");
    }

    @Override
    public String figureLayers(int n) {
        return "" + n + " 枚重ね";
    }

    @Override
    public String figureLost() {
        return "むだになる布";
    }

    @Override
    public String figurePatches() {
        return "ピース";
    }

    @Override
    public String figurePieces() {
        return "裁つ布";
    }

    @Override
    public String figureThickest() {
        return "いちばん厚いところ";
    }

    @Override
    public String figureThread() {
        return "糸";
    }

    @Override
    public String figureWas(String was) {
        return "前は " + was;
    }

    @Override
    public String figuresAll() {
        return "すべての数値";
    }

    @Override
    public String goCut() {
        return "この布を裁つ";
    }

    @Override
    public String goRecut() {
        return "必要な分を裁つ";
    }

    @Override
    public String goSew() {
        return "この布を縫う";
    }

    @Override
    public String handEnough() {
        return "足りる";
    }

    @Override
    public String handJoined() {
        return "はいで";
    }

    @Override
    public String handShort() {
        return "短すぎる";
    }

    @Override
    public String handWide(String width) {
        return "幅 " + width;
    }

    @Override
    public String labelRenamed(String name, String was) {
        return was + " の名前を " + name + " に変更";
    }

    @Override
    public String look(String look) {
        return (look.equals("FLAT") ? "平ら" : look.equals("BACK") ? "背面" : look.equals("TIED") ? "結ぶ" : look.equals("VALUES") ? "明暗" : look.equals("PROTAN") ? "1 型" : look.equals("DEUTAN") ? "2 型" : "3 型");
    }

    @Override
    public String nameCopy() {
        return "写しを保存";
    }

    @Override
    public String nameMore() {
        return "ほかの案";
    }

    @Override
    public String nameName() {
        return "名前";
    }

    @Override
    public String nameRename() {
        return "名前を変える";
    }

    @Override
    public String nameTitle() {
        return "名前と写し";
    }

    @Override
    public String nearGone() {
        return "それはもう作れません。もう一度見てください。";
    }

    @Override
    public String nearKind(String kind) {
        return (kind.equals("FABRICS") ? "別の布で" : kind.equals("BARS") ? "帯を細くして" : kind.equals("HEARTH") ? "中心布を小さくして" : kind.equals("ROUNDS") ? "周を減らして" : "全体を小さくして");
    }

    @Override
    public String nearLead() {
        return "どれもひとつだけが違い、布は足りています。";
    }

    @Override
    public String nearNone() {
        return "空いている布では、これに近いものは作れません。元に戻すか、ほかの布を見てください。";
    }

    @Override
    public String nearOf(String fabrics) {
        return "使う布：" + fabrics + "。";
    }

    @Override
    public String nearTaken(String way) {
        return "「" + way + "」にしました。";
    }

    @Override
    public String nearTitle() {
        return "作れるいちばん近い布";
    }

    @Override
    public String picturesBack(String kind) {
        return "背面、" + kind;
    }

    @Override
    public String picturesBoth() {
        return "両方、送る用";
    }

    @Override
    public String picturesFlat(String kind) {
        return "平らな図、" + kind;
    }

    @Override
    public String picturesTied(String kind) {
        return "結んだ図、" + kind;
    }

    @Override
    public String picturesTitle() {
        return "取っておく、送る図";
    }

    @Override
    public String picturesWhat() {
        return "両面と結んだ品物を 1 枚に、または 1 つずつ。";
    }

    @Override
    public String piecingApart(String several) {
        return (several.equals("yes") ? "分ける" : "戻す");
    }

    @Override
    public String piecingClear() {
        return "机を片づける";
    }

    @Override
    public String piecingDeed() {
        return "布片";
    }

    @Override
    public String piecingFill(String again) {
        return (again.equals("yes") ? "固定したものを残して並べ直す" : "残りを埋める");
    }

    @Override
    public String piecingFit(String piece, String way) {
        return piece + "、" + way;
    }

    @Override
    public String piecingFrom() {
        return "一枚ずつ変える";
    }

    @Override
    public String piecingGo() {
        return "はぎれを手で合わせる";
    }

    @Override
    public String piecingHeap(int n) {
        return "横にあるはぎれ" + n + "枚";
    }

    @Override
    public String piecingIntro() {
        return "はぎれを一枚、次にもう一枚タップすると、合わせ方と切り落とす分が見えます。残りはいつでも埋められます。合わせたものは合わせたままです。";
    }

    @Override
    public String piecingIsLocked(String piece) {
        return piece + "、固定";
    }

    @Override
    public String piecingJoined(String a, String b, String trims) {
        return a + "番と" + b + "番を合わせました。" + trims + "。";
    }

    @Override
    public String piecingKeep(String cloth) {
        return cloth + "に入れる";
    }

    @Override
    public String piecingLay() {
        return "机に置く";
    }

    @Override
    public String piecingLock(String on) {
        return (on.equals("yes") ? "固定を外す" : "固定する");
    }

    @Override
    public String piecingMake() {
        return "この布を作る";
    }

    @Override
    public String piecingMore(String area, String how) {
        return (how.equals("SAME") ? "切り落としは今と同じ" : how.equals("MORE") ? "切り落としが" + area + "多い" : "切り落としが" + area + "少ない");
    }

    @Override
    public String piecingNext() {
        return "次に合うもの";
    }

    @Override
    public String piecingNone(String what) {
        return (what.equals("next") ? "この布では隣に合うものがありません。" : what.equals("two") ? "この二枚は合いません。見える幅が足りないか、布に入りません。" : "この場所に足りる大きさのはぎれがほかにありません。");
    }

    @Override
    public String piecingPanel() {
        return "選んだはぎれ";
    }

    @Override
    public String piecingPiece(String fabric, String piece, String size) {
        return piece + " " + fabric + "、" + size;
    }

    @Override
    public String piecingSaid(String what) {
        return (what.equals("UNDO") ? "元に戻しました。" : what.equals("REDO") ? "やり直しました。" : what.equals("CLEAR") ? "机を片づけました。" : what.equals("LAY") ? "机に置きました。布に入ります。" : what.equals("APART") ? "分けました。" : what.equals("LOCK") ? "できました。" : what.equals("TURN") ? "回しました。" : what.equals("SWAP") ? "入れ替えました。" : what.equals("SIZE") ? "大きさを決めました。" : what.equals("FILL") ? "布が埋まりました。一枚をタップすると、固定や取り替えができます。" : what.equals("SHORT") ? "この大きさでは残りを埋められませんでした。何かを分けるか、布を小さくしてください。" : what.equals("MADE") ? "布を保存しました。" : what.equals("FROM") ? "一枚をタップして取り替えるか、気に入ったものを固定して残りを並べ直してください。" : "この布はここでは変えられません。一枚の布から二枚を裁っているか、布がなくなっています。");
    }

    @Override
    public String piecingSet() {
        return "決める";
    }

    @Override
    public String piecingSize(String unit) {
        return "布の大きさ（" + unit + "）";
    }

    @Override
    public String piecingStale() {
        return "その間に机が変わりました。もう一度見てください。";
    }

    @Override
    public String piecingSwap() {
        return "この場所に別のはぎれ";
    }

    @Override
    public String piecingTable() {
        return "机の上";
    }

    @Override
    public String piecingTitle() {
        return "はぎれを手で";
    }

    @Override
    public String piecingTrim(String length, String off, String piece) {
        return (off.equals("NONE") ? "切り落としなし" : off.equals("SECOND") ? "" + piece + "番から" + length + "切り落とし" : "もう一方から" + length + "切り落とし");
    }

    @Override
    public String piecingTurn() {
        return "回す";
    }

    @Override
    public String piecingWay(String turned, String where) {
        return (where.equals("BESIDE") ? "右に" : "下に") + (turned.equals("yes") ? "、回して" : "");
    }

    @Override
    public String piecingWays(String piece) {
        return piece + "と合わせる";
    }

    @Override
    public String piecingWhole(String cloth, int n, String percent) {
        return "" + n + "枚" + "、" + cloth + "、切り落とし" + percent + " %。";
    }

    @Override
    public String place(String label, String place) {
        return (place.equals("hearth") ? "中心布" : "" + label);
    }

    @Override
    public String saidCalled(String name) {
        return "名前は「" + name + "」になりました。";
    }

    @Override
    public String saidCopy() {
        return "これは写しです。元のものはそのままです。";
    }

    @Override
    public String saidLacking() {
        return "布が足りません。ストリップか幅を変えてください。";
    }

    @Override
    public String saidLocked() {
        return "固定しました。計画し直してもそのままです。";
    }

    @Override
    public String saidNothing() {
        return "取り消すものはありません。";
    }

    @Override
    public String saidPlanned() {
        return "手持ちの布で計画し直しました。";
    }

    @Override
    public String saidRedone(String deed) {
        return "やり直しました：" + deed + "。";
    }

    @Override
    public String saidUndone(String deed) {
        return "取り消しました：" + deed + "。";
    }

    @Override
    public String saidUnlocked() {
        return "固定を外しました。";
    }

    @Override
    public String seamKind(String name, String seam) {
        return (seam.equals("felled") ? "折り伏せ縫い：片方の縫い代でもう片方を包んで縫い止める" : seam.equals("ssamsol") ? "ssamsol（サムソル）：韓国のポジャギの細い折り伏せ縫い" : seam.equals("felled_and_trimmed") ? "切りそろえる折り伏せ縫い：そろえて縫い、片方を切ってから倒す" : seam.equals("lapped") ? "かみ合わせ縫い：折った端どうしを組み合わせる" : seam.equals("french") ? "袋縫い：二度縫って裁ち端を中に閉じる" : seam.equals("french_trimmed") ? "切りそろえる袋縫い：縫い代を広くとり、一度目の後で切る" : seam.equals("gamchimjil") ? "gamchimjil（カムチムジル）：折った端どうしを手でかがる" : "" + name);
    }

    @Override
    public String set() {
        return "決める";
    }

    @Override
    public String sewingAllowances() {
        return "折り伏せ、細い + 太い";
    }

    @Override
    public String sewingCorner() {
        return "縁の角";
    }

    @Override
    public String sewingCorners(String corner) {
        return (corner.equals("square") ? "四角い角" : "額縁の角");
    }

    @Override
    public String sewingFell() {
        return "倒した縫い代のある面";
    }

    @Override
    public String sewingHelp() {
        return "細い、太いとは何ですか？";
    }

    @Override
    public String sewingHelpSays() {
        return "折り伏せ縫いは、片方の縫い代が細く、もう片方の広い縫い代がそれを包んで縫い止められます。両方とも下で決めます。倒した縫い代は片面にあり、そこに線が出ます。いちばん短い部分とは、ストリップにはいでもよい最短の長さです。";
    }

    @Override
    public String sewingHem(String unit) {
        return "縁、1 つ目 + 2 つ目の折り、" + unit;
    }

    @Override
    public String sewingJoins() {
        return "ストリップ 1 本のはぎの最大";
    }

    @Override
    public String sewingLeast(String unit) {
        return "いちばん短い部分、仕上がり、" + unit;
    }

    @Override
    public String sewingSeam() {
        return "縫い目";
    }

    @Override
    public String sewingTitle() {
        return "縫い目、縁、はぎ";
    }

    @Override
    public String shapeHearth(String unit) {
        return "中心布、裁ち、" + unit;
    }

    @Override
    public String shapeHearthHeight(String unit) {
        return "中心布の高さ、裁ち、" + unit;
    }

    @Override
    public String shapeHearthWidth(String unit) {
        return "中心布の幅、裁ち、" + unit;
    }

    @Override
    public String shapeHelp() {
        return "この幅は何ですか？";
    }

    @Override
    public String shapeHelpSays() {
        return "幅はどれも縫い代を含めて裁つ幅です。仕上がりのストリップは、縫い目と縁の始末の分だけ細くなります。上の大きさは縁まで仕上げた布です。順番は、1 周のストリップをどの順に縫い付けるかです。";
    }

    @Override
    public String shapeMixed() {
        return "（それぞれ違う）";
    }

    @Override
    public String shapeOrder() {
        return "順番";
    }

    @Override
    public String shapeRound(String round, String unit) {
        return round + " 周目、ストリップ裁ち、" + unit;
    }

    @Override
    public String shapeRounds() {
        return "周";
    }

    @Override
    public String shapeSetHearth() {
        return "中心布を決める";
    }

    @Override
    public String shapeTitle() {
        return "形";
    }

    @Override
    public String shapeWhole() {
        return "布全体";
    }

    @Override
    public String shortJoins(int n) {
        return "はぎ";
    }

    @Override
    public String shortLayers() {
        return "枚重ね";
    }

    @Override
    public String shortLost() {
        return "むだ";
    }

    @Override
    public String shortSize(String kind) {
        return (kind.equals("square") ? "角" : "仕上がり");
    }

    @Override
    public String shortThread() {
        return "糸";
    }

    @Override
    public String sinceEnough() {
        return "また布が足ります。";
    }

    @Override
    public String sinceJoins(String before, String now) {
        return "はぎ " + before + "、いまは " + now + "。";
    }

    @Override
    public String sinceLacking(String why) {
        return "布が足りません：" + why;
    }

    @Override
    public String sinceLost(String before, String now) {
        return "むだ " + before + "、いまは " + now + "。";
    }

    @Override
    public String sinceSame() {
        return "変更しました。大きさ、はぎ、むだは前のままです。";
    }

    @Override
    public String sinceSize(String before, String now) {
        return "大きさ " + before + "、いまは " + now + "。";
    }

    @Override
    public String sizeSquare(String size) {
        return size + " 角";
    }

    @Override
    public String staleCalled(String name) {
        return "名前は「" + name + "」です。";
    }

    @Override
    public String staleRenamed() {
        return "その間に別の画面でこの布の名前が変わりました。ここでは何も変わっていません。";
    }

    @Override
    public String tiedAlt(String fit, String name) {
        return name + "、結んだ姿。" + fit;
    }

    @Override
    public String tiedColours() {
        return "元の色で";
    }

    @Override
    public String tiedExample() {
        return "box 30 x 20 x 10 cm";
    }

    @Override
    public String tiedFaces() {
        return "外に出る面と布の向き";
    }

    @Override
    public String tiedGreys() {
        return "明暗";
    }

    @Override
    public String tiedMore() {
        return "見えるもの、ほか";
    }

    @Override
    public String tiedQuarter(String turn) {
        return (turn.equals("0") ? "図のまま" : turn.equals("1") ? "4 分の 1" : turn.equals("2") ? "半分" : "4 分の 3");
    }

    @Override
    public String tiedRound() {
        return "何を包むか";
    }

    @Override
    public String tiedRoundWhat() {
        return "何を";
    }

    @Override
    public String tiedSay() {
        return "何を包むか書いてください。";
    }

    @Override
    public String tiedShow() {
        return "見る";
    }

    @Override
    public String tiedSize() {
        return "大きさ";
    }

    @Override
    public String tiedTooSmall() {
        return "小さすぎる";
    }

    @Override
    public String tiedUnsaid(String gift) {
        return "包むものがまだ書かれていないので、" + gift + "に結んだところです。";
    }

    @Override
    public String tiedWhich() {
        return "どの結び方で";
    }

    @Override
    public String turnCanvas() {
        return "結んだ品物。矢印キーで回し、プラスとマイナスで近づけたり離したり、Home で斜めから見ます。";
    }

    @Override
    public String turnGroup() {
        return "品物を回す";
    }

    @Override
    public String turnSaid(String way) {
        return (way.equals("left") ? "左へ回しました" : way.equals("right") ? "右へ回しました" : way.equals("up") ? "手前に傾けました" : "向こうに傾けました");
    }

    @Override
    public String turnTo(String way) {
        return (way.equals("left") ? "左へ回す" : way.equals("right") ? "右へ回す" : way.equals("up") ? "手前に傾ける" : way.equals("down") ? "向こうに傾ける" : way.equals("nearer") ? "近く" : "遠く");
    }

    @Override
    public String warnAside(int n, String pieces) {
        return "この布に使う予定の布が取り分けてあります：" + pieces + "。布のページで戻すか、計画し直してください。";
    }

    @Override
    public String warnMany(String fabrics, int n) {
        return "布 " + n + " 枚（" + fabrics + "）";
    }

    @Override
    public String warnMissing(int n, String pieces) {
        return "この布に使う予定の布が、計画したときのままではありません：" + pieces + "。このままでは裁てません。計画し直してください。";
    }

    @Override
    public String warnPiece(String fabric, String number) {
        return number + "（" + fabric + "）";
    }

    @Override
    public String warnPieces(int n, String pieces) {
        return "布 " + pieces;
    }

    @Override
    public String warnRuler(String begun, String ruler) {
        return (ruler.equals("metric") ? "この布はセンチで測っています" : "この布はインチで測っています") + (begun.equals("yes") ? "。そのように裁ちました。" : "。そのように計画しました。いまの定規にするには計画し直してください。");
    }

    @Override
    public String warnShared(String cloth, String pieces) {
        return "「" + cloth + "」にも使う予定です：" + pieces + "。先に裁つ布が使い、もう一方は計画し直します。";
    }

    @Override
    public String wrongBar() {
        return "先にストリップを選んでください。";
    }

    @Override
    public String wrongCloth() {
        return "それでは 1 枚の布になりません。何も変わっていません。ほかの寸法にしてください。";
    }

    @Override
    public String wrongFabric(String fabric) {
        return "手持ちに「" + fabric + "」という布はありません。";
    }

    @Override
    public String wrongForm() {
        return "このフォームは種類が違います。ページを開き直してください。";
    }

    @Override
    public String wrongIsCut() {
        return "この布はもう裁ってあります。デザインを変えるには写しを保存してください。";
    }

    @Override
    public String wrongLacking() {
        return "この布には布地が足りません。先に変更してください。";
    }

    @Override
    public String wrongLeast() {
        return "いちばん短い部分は 0 より大きく 1 m までです。";
    }

    @Override
    public String wrongName() {
        return "名前を 80 字までで書いてください。";
    }

    @Override
    public String wrongNoBars() {
        return "この布には変えられるストリップがありません。別のはぎれや大きさなら、もう一度案を探してください。";
    }

    @Override
    public String wrongNoOther() {
        return "この大きさではほかの色の計画が見つかりません。ストリップの固定を外すか、幅を変えてください。";
    }

    @Override
    public String wrongNone() {
        return "この布はありません。削除されたのかもしれません。";
    }

    @Override
    public String wrongOrder(String written) {
        return "「" + written + "」という順番はありません。";
    }

    @Override
    public String wrongPart() {
        return "それぞれ 0 より大きく 10 cm までです。";
    }

    @Override
    public String wrongScheme(String needs, String scheme) {
        return "この大きさでは「" + scheme + "」が見つかりません。必要：" + needs + "。";
    }

    @Override
    public String wrongSeam(String written) {
        return "「" + written + "」という縫い目はわかりません。";
    }

    @Override
    public String wrongTiesNone() {
        return "この布で包むものがまだありません。何を包むか書いてください。";
    }

    @Override
    public String wrongTwo(String what, String written) {
        return (what.equals("hem") ? "「" + written + "」は使えません。縁には 1 つ目と 2 つ目の折りがあります。例：0.6 + 1.2 cm。" : "「" + written + "」は使えません。折り伏せ縫いには細い縫い代と太い縫い代があります。例：0.6 + 1.2 cm。");
    }

    @Override
    public String wrongWhole(String least, String most, String written) {
        return "「" + written + "」は使えません。" + least + " から " + most + " までの整数を書いてください。";
    }

    @Override
    public String wrongWide(String written) {
        return "「" + written + "」はどの布よりも広いです。単位を確かめてください。";
    }

    @Override
    public String wrongWrap() {
        return "広い方が細い方を包むので、2 つ目を広くしてください。";
    }
}
