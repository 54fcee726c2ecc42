package hearthcloth.words.choosing;

/** The room of choosing in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseChoosing implements ChoosingWords {

    @Override
    public String chipBars(String bars, String width) {
        return (bars.equals("narrow") ? "細く、裁ち " + width : "太く、裁ち " + width);
    }

    @Override
    public String chipKind(String kind) {
        return (kind.equals("hearth") ? "中心布：" : kind.equals("show") ? "見せる：" : kind.equals("only") ? "これだけ：" : kind.equals("without") ? "使わない：" : kind.equals("first") ? "先に：" : kind.equals("scheme") ? "色：" : kind.equals("with") ? "組み合わせ：" : kind.equals("contrast") ? "コントラスト：" : kind.equals("bars") ? "ストリップ：" : "");
    }

    @Override
    public String chipNeeds(String what) {
        return "必要：" + what;
    }

    @Override
    public String chipNoGift() {
        return "品物がまだない";
    }

    @Override
    public String chipNoPiece() {
        return "足りる大きさの布がない";
    }

    @Override
    public String chipNotTogether() {
        return "一つ目と一緒には見つからない";
    }

    @Override
    public String chipQuick() {
        return "縫い目の少ない順";
    }

    @Override
    public String chooseNone() {
        return "まだ布がありません。";
    }

    @Override
    public String chooseSee() {
        return "手持ちの布で作れるものを見る";
    }

    @Override
    public String contrast(String contrast) {
        return (contrast.equals("most") ? "できるだけはっきり" : contrast.equals("reads") ? "ログキャビンが見える" : contrast.equals("easy") ? "その中間" : contrast.equals("quiet") ? "できるだけ静かに" : "一つの地にとける");
    }

    @Override
    public String countPieces(int n, String name) {
        return "" + name + "、布 " + n + " 枚";
    }

    @Override
    public String foundBack() {
        return "すべてに戻る";
    }

    @Override
    public String foundBackFace() {
        return "背面";
    }

    @Override
    public String foundBeside() {
        return "並べて見る";
    }

    @Override
    public String foundCannot() {
        return "手持ちの布では作れません。";
    }

    @Override
    public String foundFailed() {
        return "この布では探す途中でつまずきました。希望を変えてもう一度探してください。";
    }

    @Override
    public String foundFigures(int joins, String lost, String patches) {
        return (joins == 0 ? "" + patches + "・はぎなし・むだ " + lost : "" + patches + "・はぎ " + joins + " か所・むだ " + lost);
    }

    @Override
    public String foundFiguresFree(String lost, String patches) {
        return patches + "・むだ " + lost;
    }

    @Override
    public String foundFront(String size, String title) {
        return "正面：" + title + "、" + size;
    }

    @Override
    public String foundGone() {
        return "その案はもうありません。いまの案はこちらです。";
    }

    @Override
    public String foundJoins(String joins) {
        return "はぎ：" + joins + "。";
    }

    @Override
    public String foundKept() {
        return "布として保存しました。";
    }

    @Override
    public String foundKeptTap() {
        return "布として保存しました。ストリップを押すと変えられます。";
    }

    @Override
    public String foundLooking() {
        return "手持ちの布を調べています";
    }

    @Override
    public String foundMore() {
        return "あと 4 つ見る";
    }

    @Override
    public String foundNearest() {
        return "作れるものの中でいちばん近いのはこれです。";
    }

    @Override
    public String foundNotYet() {
        return "手持ちの布で作る方法がまだ見つかりません。";
    }

    @Override
    public String foundOneScale() {
        return "同じ縮尺の図です。";
    }

    @Override
    public String foundPatches(int n) {
        return "ピース " + n + " 枚";
    }

    @Override
    public String foundSoFar(int n) {
        return (n == 0 ? "探しています。" : "いままでに " + n + " 件、まだ探しています。");
    }

    @Override
    public String foundStop() {
        return "探すのをやめる";
    }

    @Override
    public String foundStopped() {
        return "止めました。いままででいちばんよいものです。";
    }

    @Override
    public String foundTake() {
        return "これにする";
    }

    @Override
    public String foundTakeNamed(String title) {
        return "「" + title + "」にする";
    }

    @Override
    public String galleryAddWish() {
        return "+ 希望";
    }

    @Override
    public String galleryChange() {
        return "変更";
    }

    @Override
    public String galleryDropWishes() {
        return "なしで始める";
    }

    @Override
    public String galleryEmpty() {
        return "作業台に布を置いてください";
    }

    @Override
    public String galleryEmptySays() {
        return "手持ちの布で作りますが、まだ 1 枚もありません。";
    }

    @Override
    public String galleryFor(String gift) {
        return "包むもの：" + gift + "。";
    }

    @Override
    public String galleryKeepWishes() {
        return "そのまま使う";
    }

    @Override
    public String galleryKept() {
        return "保存した布";
    }

    @Override
    public String galleryLarge() {
        return "布の足りるかぎり大きく。";
    }

    @Override
    public String galleryNoneLeft() {
        return "この希望では使える布が残りません。どれか取り消してください。";
    }

    @Override
    public String gallerySayGift() {
        return "何を包むか入れる";
    }

    @Override
    public String gallerySpent() {
        return "どの布も使い道が決まっています";
    }

    @Override
    public String galleryTakeBack(String kind, String wish) {
        return "外す：" + kind + " " + wish;
    }

    @Override
    public String galleryTitle() {
        return "手持ちの布で作れるもの";
    }

    @Override
    public String galleryWaiting(String gift) {
        return gift + " のときの希望があります。今回も同じにしますか？";
    }

    @Override
    public String galleryWish() {
        return "希望";
    }

    @Override
    public String giftCloth() {
        return "布は決まっていて、品物はまだ";
    }

    @Override
    public String giftClothExample(String unit) {
        return (unit.equals("metric") ? "90 または 90 x 70" : "38 1/2 または 38 x 30");
    }

    @Override
    public String giftClothSize(String unit) {
        return "大きさ、" + unit;
    }

    @Override
    public String giftHow() {
        return "どう測りますか？";
    }

    @Override
    public String giftHowSays(String unit) {
        return "置いたときの形で測ります。いちばん長い辺、その隣の辺、高さ。取っ手やふた、リボンも含めて測ります。やわらかいものは、結ぶときと同じくらい押さえて測ります。" + (unit.equals("metric") ? "30 や 30.5 のように書きます。" : "12、12 1/2、12.5 のように書きます。30 cm のようにセンチでもかまいません。");
    }

    @Override
    public String giftKinds() {
        return "品物の種類";
    }

    @Override
    public String giftPlanSize() {
        return "この大きさで計画する";
    }

    @Override
    public String giftRuler() {
        return "手元の定規";
    }

    @Override
    public String giftShow() {
        return "見る";
    }

    @Override
    public String giftType() {
        return "図の上に書きます。分数でも小数でもかまいません。";
    }

    @Override
    public String giftWhatTies() {
        return "何が包めますか？";
    }

    @Override
    public String heldKind() {
        return "ものの種類";
    }

    @Override
    public String heldLargest() {
        return "包める最大のもの";
    }

    @Override
    public String heldSmall() {
        return "この結び方には小さすぎます";
    }

    @Override
    public String heldTie() {
        return "結び方";
    }

    @Override
    public String heldTitle() {
        return "この布で包めるもの";
    }

    @Override
    public String leftAside(int n) {
        return "取り分けた布 " + n + " 枚";
    }

    @Override
    public String leftCloth(String cloth, int n) {
        return "「" + cloth + "」に使う布 " + n + " 枚";
    }

    @Override
    public String leftMore(String before, String next) {
        return before + "。" + next;
    }

    @Override
    public String leftOut(String what) {
        return "除いたもの：" + what + "。";
    }

    @Override
    public String leftShared(String what) {
        return "一緒に使うもの：" + what + "。";
    }

    @Override
    public String leftUnuse() {
        return "除く";
    }

    @Override
    public String leftUse() {
        return "これも使って考える";
    }

    @Override
    public String lovedFile() {
        return "庭、壁など：PNG または JPEG。色だけを保存します";
    }

    @Override
    public String lovedFind() {
        return "いちばん近い布を探す";
    }

    @Override
    public String lovedList() {
        return "写真の色と、それにいちばん近い手持ちの布";
    }

    @Override
    public String lovedNone() {
        return "この写真の色に近い布はありません。どの布も使えます。";
    }

    @Override
    public String lovedNothing() {
        return "近い布なし";
    }

    @Override
    public String lovedTitle() {
        return "好きな写真の色";
    }

    @Override
    public String nameNumber(String n, String title) {
        return title + " " + n;
    }

    @Override
    public String nameOf(String hearth, String most, String scheme) {
        return (scheme.equals("HALVES") ? "" + hearth + "、明るい半分と暗い半分" : scheme.equals("ROUNDS") ? "" + hearth + "をめぐる輪" : scheme.equals("TURNS") ? "" + hearth + "をめぐる明と暗" : scheme.equals("FIELD") ? "" + most + "の地に" + hearth : scheme.equals("SPIRAL") ? "" + hearth + "からのうずまき" : scheme.equals("SCATTERED") ? "いろいろな布の中の" + hearth : scheme.equals("GRADED") ? "" + hearth + "から夕暮れへ" : scheme.equals("FRAMES") ? "" + most + "の枠に" + hearth : scheme.equals("ACCENT") ? "" + hearth + "と明るいはぎれ一つ" : scheme.equals("OUTWARDS") ? "" + hearth + "を中心に、よい面を外に" : "" + hearth + "を囲む" + most);
    }

    @Override
    public String nameSeams(int n, String title) {
        return "" + title + "、縫い目 " + n + " 本";
    }

    @Override
    public String tiesCannot(String most) {
        return "手持ちの布を超えます。最大 " + most + " 角";
    }

    @Override
    public String tiesFinished(String size, String tie) {
        return "仕上がり " + size + " 角。" + tie + "。";
    }

    @Override
    public String tiesGo() {
        return "この布で何が作れる？";
    }

    @Override
    public String tiesJust() {
        return "とにかく何か見る";
    }

    @Override
    public String tiesLaid() {
        return "布の上の置き方";
    }

    @Override
    public String tiesNote(String tie) {
        return (tie.equals("FOUR_CORNER") ? "重いものに" : tie.equals("EDGE_ALONG_EDGE") ? "大きな布で" : tie.equals("ERRAND") ? "手に持って" : tie.equals("FLAT") ? "結び目なし" : tie.equals("TWO_KNOT") ? "長いものに" : tie.equals("ONE_BOTTLE") ? "立てて" : tie.equals("TWO_BOTTLES") ? "並べて" : tie.equals("ROUND") ? "丸いものに" : tie.equals("BOOKS") ? "同じもの二つに" : "寝かせて");
    }

    @Override
    public String tiesRange(String least, String most) {
        return "端が短ければ " + least + "、長ければ " + most + "。子ども、火、機械の近くでは短くします。";
    }

    @Override
    public String tiesSee() {
        return "結ぶところを順に見る";
    }

    @Override
    public String tiesSquare(String size) {
        return size + " 角";
    }

    @Override
    public String tiesTheirs() {
        return "おまかせ";
    }

    @Override
    public String tiesTheirsNote() {
        return "布がいちばん見える";
    }

    @Override
    public String tiesTitle() {
        return "どう結びますか？";
    }

    @Override
    public String tiesUnsized() {
        return "図の上に大きさを書くと、結び方ごとに布の大きさが出ます。";
    }

    @Override
    public String way(String way) {
        return (way.equals("free") ? "はぎれをそのまま" : way.equals("among") ? "はぎれの中のログキャビン" : way.equals("two") ? "小さなログキャビン 4 つ" : way.equals("three") ? "小さなログキャビン 9 つ" : way.equals("four") ? "小さなログキャビン 16" : "中心布と周りのストリップ");
    }

    @Override
    public String wishAgain() {
        return "もう一度探す";
    }

    @Override
    public String wishAlso() {
        return "ほかの布に使う予定のものも";
    }

    @Override
    public String wishAny() {
        return "自由";
    }

    @Override
    public String wishBands() {
        return "端から端までの帯";
    }

    @Override
    public String wishBandsPick(String way) {
        return (way.equals("across") ? "横に渡す" : way.equals("down") ? "縦に渡す" : "なりゆき");
    }

    @Override
    public String wishBarWidths(String unit) {
        return "ストリップ、裁ち、" + unit;
    }

    @Override
    public String wishBars() {
        return "ストリップと縫い目";
    }

    @Override
    public String wishBefore() {
        return "前の布";
    }

    @Override
    public String wishColours() {
        return "色";
    }

    @Override
    public String wishContrast() {
        return "コントラスト";
    }

    @Override
    public String wishContrastPick(String contrast) {
        return (contrast.equals("most") ? "できるだけはっきり" : contrast.equals("reads") ? "ログキャビンが見える" : contrast.equals("easy") ? "その中間" : contrast.equals("quiet") ? "できるだけ静かに" : "一つの地にとける");
    }

    @Override
    public String wishCutting() {
        return "はぎれを二つに切る";
    }

    @Override
    public String wishCuttingPick(String rule) {
        return (rule.equals("as_they_are") ? "切らない（端だけ落とす）" : rule.equals("cut") ? "役に立つところで切る" : "どちらでも");
    }

    @Override
    public String wishExact() {
        return "大きさ、順番、組み方";
    }

    @Override
    public String wishGood() {
        return "手持ちの布に合う配色";
    }

    @Override
    public String wishGoodWhy(String fabric, String kind) {
        return (kind.equals("HALVES") ? "明るい布と暗い布がはっきり分かれています" : kind.equals("SPIRAL") ? "明るい布と暗い布がはっきり分かれています" : kind.equals("TURNS") ? "明るい布と暗い布がはっきり分かれています" : kind.equals("GRADED") ? "明るい布から暗い布まで、ほぼ同じ幅で並んでいます" : kind.equals("ACCENT") ? "" + fabric + "がほかのどの布より鮮やかです" : kind.equals("SCATTERED") ? "布の種類が多く、どれも多すぎません" : kind.equals("FIELD") ? "布の半分以上が" + fabric + "です" : kind.equals("FRAMES") ? "明るさの違う二種類の布がほとんどです" : "数種類の布が一周分ずつあります");
    }

    @Override
    public String wishHeading(String what) {
        return (what.equals("hearth") ? "中心布にする" : what.equals("show") ? "結んだとき見せる" : "使わない");
    }

    @Override
    public String wishHearth(String unit) {
        return "中心布、裁ち、" + unit;
    }

    @Override
    public String wishMiddle() {
        return "切らずに真ん中に置く布";
    }

    @Override
    public String wishMixed() {
        return "組み合わせる";
    }

    @Override
    public String wishMostTrim(String unit) {
        return "1 枚から落とす幅の上限、" + unit;
    }

    @Override
    public String wishNarrow() {
        return "細いストリップ";
    }

    @Override
    public String wishOpen() {
        return "空けておけるのはどれですか？";
    }

    @Override
    public String wishOpenSays() {
        return "どれも空けておけます。中心布はまん中の四角、ストリップはその周りの細長い布、1 周は各辺に 1 本です。空けたところは手持ちの布に合わせます。ストリップの幅は中心から外へ並べて書けます：3, 4, 5。";
    }

    @Override
    public String wishOrder() {
        return "順番";
    }

    @Override
    public String wishPatches() {
        return "布片の大きさ";
    }

    @Override
    public String wishPatchesPick(String sizes) {
        return (sizes.equals("mixed") ? "大小を混ぜる" : sizes.equals("even") ? "できるだけそろえる" : "自由");
    }

    @Override
    public String wishPick(String fabric, String what) {
        return (what.equals("hearth") ? "中心布にする：" + fabric : what.equals("show") ? "結んだとき見せる：" + fabric : "使わない：" + fabric);
    }

    @Override
    public String wishQuick() {
        return "縫い目の少ない順";
    }

    @Override
    public String wishRounds() {
        return "周";
    }

    @Override
    public String wishScraps() {
        return "はぎれをそのまま使うとき";
    }

    @Override
    public String wishSlack(String unit) {
        return "最小よりどれだけ大きく、" + unit + "。空けると最小";
    }

    @Override
    public String wishTogether() {
        return "組み方";
    }

    @Override
    public String wishWide() {
        return "太いストリップ";
    }

    @Override
    public String wishWith() {
        return "必ず入れる布";
    }
}
