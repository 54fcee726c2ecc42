package hearthcloth.words.tying;

/** The room of tying in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseTying implements TyingWords {

    @Override
    public String booksClosed() {
        return "1 冊をもう 1 冊に重ねて閉じ、すき間を背にします。";
    }

    @Override
    public String booksEnds() {
        return "左右の角を本の上に持ってきます。すき間でしっかり交差させます。";
    }

    @Override
    public String booksLaid() {
        return "布をひし形に広げます。1 冊を手前に、1 冊を向こうに置きます。間を 2 冊の厚さの分だけあけます。";
    }

    @Override
    public String booksTied() {
        return "両端をねじります。背に沿って戻し、結びます。";
    }

    @Override
    public String booksWound() {
        return "手前の角を手前の本に、向こうの角を向こうの本にかぶせて折ります。";
    }

    @Override
    public String bottleCrossed() {
        return "左右の角を寄せます。瓶に回し、後ろで交差させます。";
    }

    @Override
    public String bottleHandle() {
        return "持ち手を作るには、上の結び目を半分ほどきます。両端をねじって結び合わせます。";
    }

    @Override
    public String bottleLaid() {
        return "布をひし形に広げます。瓶を中央に立てます。";
    }

    @Override
    public String bottlePair() {
        return "手前と向こうの角を持ち上げます。瓶の口のすぐ上で真結びにします。";
    }

    @Override
    public String bottleTied() {
        return "前へ持ってきて、瓶にぴったりと結びます。";
    }

    @Override
    public String bottlesLaid() {
        return "布をひし形に広げます。2 本の瓶を底どうし向かい合わせて横に寝かせ、こぶし一つ分あけます。";
    }

    @Override
    public String bottlesStood() {
        return "向こうの角をすき間に入れます。2 本とも立てると、底の間で布が折れます。";
    }

    @Override
    public String bottlesTied() {
        return "両端を瓶の上で真結びにします。";
    }

    @Override
    public String bottlesWound() {
        return "手前の角を瓶にかぶせます。向こうの角まで転がして巻きます。";
    }

    @Override
    public String careBottle() {
        return "まずテーブルの上で結び目を確かめます。それまでは片手で瓶の底を支えます。";
    }

    @Override
    public String careChildren() {
        return "長い端や輪は、小さな子どもやベビーベッドに近づけません。結んだ布は首をしめることがあります。";
    }

    @Override
    public String careFlames() {
        return "包んだ品物は、ろうそく、こんろ、ランプから離します。垂れた端に最初に火がつきます。";
    }

    @Override
    public String careFood() {
        return "食べ物は先に箱や紙に入れます。食べ物に触れる前に布を洗います。";
    }

    @Override
    public String careSpills() {
        return "こぼれるものには使いません。筒は横に寝かせます。";
    }

    @Override
    public String corner(String corner) {
        return (corner.equals("RIGHT") ? "右の角" : corner.equals("FAR") ? "向こうの角" : corner.equals("LEFT") ? "左の角" : corner.equals("NEAR") ? "手前の角" : corner.equals("FAR_RIGHT") ? "右奥の角" : corner.equals("FAR_LEFT") ? "左奥の角" : corner.equals("NEAR_LEFT") ? "左手前の角" : corner.equals("NEAR_RIGHT") ? "右手前の角" : "布");
    }

    @Override
    public String diamond() {
        return "布をひし形に広げ、角を一つ手前に向けます。外に見せたい面を下にします。品物を中央に置き、長い辺を左右に向けます。";
    }

    @Override
    public String diamondRoll() {
        return "布をひし形に広げます。筒を左右の向きに置きます。";
    }

    @Override
    public String doubt(String end, String large, String least, String most, String small, String usual) {
        return "はっきりしないのは結び目です。薄い布は角を使う分が少なく、厚い布は多くなります。結び目と端に角ごとに " + least + " 使うなら " + small + " の正方形で足り、" + most + " 使うなら " + large + " が必要です。ここでは " + usual + " としています。端を約 " + end + " 残す薄手の木綿に合います。";
    }

    @Override
    public String edgeFlaps() {
        return "品物の上の布の縁をまっすぐに整え、上にかぶせます。";
    }

    @Override
    public String edgeLaid() {
        return "布をまっすぐ前に広げ、外に見せたい面を下にします。品物を中央に置き、辺を布の辺にそろえます。";
    }

    @Override
    public String edgePair() {
        return "向かい合う 2 つの角を、品物の角に沿って持ち上げます。中央で結びます。";
    }

    @Override
    public String edgeTied() {
        return "残りの 2 つの角を、最初の結び目の上で結びます。";
    }

    @Override
    public String errandFar() {
        return "向こうの角をその上にかぶせ、先を折り込みます。";
    }

    @Override
    public String errandHidden() {
        return "結び目を隠すには、向こうの角の先を結び目の下から引き出し、上にかぶせます。";
    }

    @Override
    public String errandNear() {
        return "手前の角を品物にかぶせます。先を向こうの縁の下に入れます。";
    }

    @Override
    public String errandSides() {
        return "左右の角を持ち上げ、側面を整えます。";
    }

    @Override
    public String errandTied() {
        return "上で 1 回、真結びにします。";
    }

    @Override
    public String fitJust(String gift, String tie) {
        return "この布でちょうど足ります：" + gift + "、" + tie + "。";
    }

    @Override
    public String fitJustKnotted(String gift, String tail, String tie) {
        return "この布でちょうど足ります：" + gift + "、" + tie + "。結ぶ角ごとに、結び目と端の分が " + tail + " 残ります。";
    }

    @Override
    public String fitNearly(String gift) {
        return "このくらいなら結べます：" + gift + "。";
    }

    @Override
    public String fitSewnSmaller(String spare) {
        return spare + " 小さく仕上がっても足ります。";
    }

    @Override
    public String fitShorter(String gift, String less, String tail, String tie, String usual) {
        return "この布は、あるべき大きさより " + less + " 小さめです：" + gift + "、" + tie + "。それでも結べます。結ぶ角ごとに、結び目と端の分が " + usual + " ではなく " + tail + " 残ります。";
    }

    @Override
    public String fitTies(String gift, String reason, String spare, String tie) {
        return "この布で結べます：" + gift + "、" + tie + "。必要より " + spare + " の余裕があります（" + reason + "）。";
    }

    @Override
    public String fitTooSmall(String corner, String gift, String lack, String reason, String size, String tie) {
        return "この布では足りません：" + gift + "、" + tie + "。足りないところ：" + corner + "、" + lack + "（" + reason + "）。" + size + " の布なら足ります。";
    }

    @Override
    public String fitUsualEnds(String gift) {
        return "端をふつうの長さにすると、これを結べます：" + gift + "。";
    }

    @Override
    public String fitWraps(String gift, String reason, String spare, String tie) {
        return "この布で包めます：" + gift + "、" + tie + "。必要より " + spare + " の余裕があります（" + reason + "）。";
    }

    @Override
    public String flatFar() {
        return "向こうの角を全体にかぶせます。先を手前の縁に差し込みます。";
    }

    @Override
    public String flatNear() {
        return "手前の角を品物にかぶせます。先が余ったら下へ折り返します。";
    }

    @Override
    public String flatSides() {
        return "左、右の順にかぶせます。どちらも品物の縁に沿って整えます。";
    }

    @Override
    public String fourCornerNearAndFar() {
        return "手前と向こうの角を中央で合わせます。品物にぴったりと真結びにします。";
    }

    @Override
    public String fourCornerSides() {
        return "左右の角をまっすぐ持ち上げます。品物の横に出た布は、角の内側へ折って側面に沿わせます。";
    }

    @Override
    public String fourCornerTied() {
        return "最初の結び目の上で左右の角を結びます。4 つの端を広げます。";
    }

    @Override
    public String knotFirst() {
        return "左の端を右の端の上に重ねます。後ろへ回して上へ出します。これで半分です。";
    }

    @Override
    public String knotPull() {
        return "両端を引きます。真結びは平らで、端が引く向きにそろいます。端が縦になったら縦結びで、ほどけます。後の半分をほどいて、逆に交差させます。";
    }

    @Override
    public String knotSecond() {
        return "いま右にある同じ端を、もう一度もう一方の端の上に重ね、輪に通します。";
    }

    @Override
    public String reason(String reason) {
        return (reason.equals("KNOT") ? "結び目と端" : reason.equals("COVER") ? "品物を覆う分" : reason.equals("TUCK") ? "最後の端を差し込む分" : "左右の重なり");
    }

    @Override
    public String rollCrossed() {
        return "そこで交差させ、両側へ 1 本ずつ下ろします。";
    }

    @Override
    public String rollEnds() {
        return "左右の布を筒の両端にかぶせて折ります。筒に沿って中央へ持ってきます。";
    }

    @Override
    public String rollTied() {
        return "筒を裏返します。反対側で真結びにします。";
    }

    @Override
    public String rollWound() {
        return "手前の角を筒にかぶせます。向こうの角まで転がして巻きます。";
    }

    @Override
    public String roundHandle() {
        return "持ち手を作るには、2 つ目の結び目を 1 つ目の下にくぐらせます。引きしめます。";
    }

    @Override
    public String roundLaid() {
        return "布を広げます。ボールを中央に置きます。";
    }

    @Override
    public String roundPair() {
        return "手前の角と右の角をボールの上で結びます。輪になるように端を長く残します。";
    }

    @Override
    public String roundTied() {
        return "向こうの角と左の角を結びます。";
    }

    @Override
    public String ruleMore(String more, String rule, String size, String source) {
        return "よくある目安（" + rule + "）では " + size + " です（" + source + "）。この結び方に必要な大きさより " + more + " 大きくなります。";
    }

    @Override
    public String ruleSmall(String gift, String less, String rule, String size, String source) {
        return "よくある目安（" + rule + "）では " + size + " です（" + source + "）。この品物には " + less + " 足りません：" + gift + "。";
    }

    @Override
    public String ruleSmallForTall(String gift, String less, String rule, String size, String source) {
        return "よくある目安（" + rule + "）では " + size + " です（" + source + "）。高さがあるので " + less + " 足りません：" + gift + "。";
    }

    @Override
    public String ruleWords(String rule) {
        return (rule.equals("DIAGONAL_THREE_TIMES_THE_LONGEST_SIDE") ? "対角線＝いちばん長い辺の 3 倍" : "一辺＝瓶の高さの 3 倍");
    }

    @Override
    public String shortBooks() {
        return "ねじった端が短いときは、閉じる前にすき間で結びます。本は脇に抱えて運びます。";
    }

    @Override
    public String shortBottle() {
        return "角が口の上で届かないときは、首に回して結び、首を見せます。";
    }

    @Override
    public String shortCorners() {
        return "2 つの角が届かないときは、品物の上で交差させます。二つ結びのように、それぞれ横の角と結びます。または、同じ辺の 2 つの角を結び、残りの 2 つも結びます。";
    }

    @Override
    public String shortFlat() {
        return "向こうの角が手前の縁に届かないときは、折り込んでまち針でとめます。または、お使い包みにします。";
    }

    @Override
    public String shortRolled() {
        return "端が短いときは、巻く布を少なくします。または、間にリボンを入れて結びます。";
    }

    @Override
    public String shortRound() {
        return "2 つの角が短いときは、向かい合う角を上で結び、持ち手は作りません。";
    }

    @Override
    public String shortTwoKnot() {
        return "片方の角が短いときは、交差をそちらへ寄せます。または、間にリボンを入れて結びます。";
    }

    @Override
    public String showsFabric(String fabric, String percent, String where) {
        return fabric + "：見える部分の " + percent + (where.equals("top") ? "、上面" : where.equals("sides") ? "、側面" : where.equals("both") ? "、側面と上面" : "") + "。";
    }

    @Override
    public String showsFabricInKnot(String fabric) {
        return fabric + "：結び目と端にだけ見えます。";
    }

    @Override
    public String showsFabricNot(String fabric) {
        return fabric + "：見えません。";
    }

    @Override
    public String showsHearth(String percent, String where) {
        return "中心布の " + percent + " が" + (where.equals("top") ? "上面に" : where.equals("sides") ? "側面に" : where.equals("both") ? "側面と上面に" : "") + "見えます。";
    }

    @Override
    public String showsHearthAndUnder(String percent, String thing, String under, String where) {
        return "中心布の " + percent + " が" + (where.equals("top") ? "上面に" : where.equals("sides") ? "側面に" : where.equals("both") ? "側面と上面に" : "") + "見えます。" + under + " は" + (thing.equals("box") ? "箱" : thing.equals("books") ? "本" : thing.equals("roll") ? "筒" : thing.equals("ball") ? "ボール" : "瓶") + "の下にあります。";
    }

    @Override
    public String showsHearthInKnot() {
        return "中心布は結び目と端にだけ見えます。";
    }

    @Override
    public String showsHearthInside() {
        return "中心布は内側に折り込まれます。";
    }

    @Override
    public String showsHearthUnder(String thing) {
        return "中心布は" + (thing.equals("box") ? "箱" : thing.equals("books") ? "本" : thing.equals("roll") ? "筒" : thing.equals("ball") ? "ボール" : "瓶") + "の下に隠れます。";
    }

    @Override
    public String showsSpare() {
        return "数が二つあるところは、余った四つの角を折り返しの下にたくし込むか、外に垂れたままにするかで変わります。";
    }

    @Override
    public String tieName(String tie) {
        return (tie.equals("FOUR_CORNER") ? "四つ結び" : tie.equals("EDGE_ALONG_EDGE") ? "四つ結び（箱を布と平行に置く）" : tie.equals("ERRAND") ? "お使い包み" : tie.equals("FLAT") ? "平包み" : tie.equals("TWO_KNOT") ? "二つ結び" : tie.equals("ONE_BOTTLE") ? "瓶包み（1 本）" : tie.equals("TWO_BOTTLES") ? "瓶包み（2 本）" : tie.equals("ROUND") ? "すいか包み" : tie.equals("BOOKS") ? "本包み" : "巻き結び");
    }

    @Override
    public String tieSuited(String tie) {
        return (tie.equals("FOUR_CORNER") ? "箱、重ねたもの、重いもの" : tie.equals("EDGE_ALONG_EDGE") ? "大きな布に置いた箱" : tie.equals("ERRAND") ? "手に持って運ぶ箱" : tie.equals("FLAT") ? "平たい箱とたたんだ服（結ばない）" : tie.equals("TWO_KNOT") ? "長い箱と巻いたござ" : tie.equals("ONE_BOTTLE") ? "立てた瓶" : tie.equals("TWO_BOTTLES") ? "同じ瓶 2 本" : tie.equals("ROUND") ? "ボール、メロン、丸いもの" : tie.equals("BOOKS") ? "同じ大きさの本 2 冊" : "巻いた布、筒、缶");
    }

    @Override
    public String tradeAll(String enough) {
        return "足りる既製サイズ：" + enough + "。";
    }

    @Override
    public String tradeNone(String small) {
        return "贈り物用の既製サイズはどれも足りません：" + small + "。";
    }

    @Override
    public String tradeSome(String enough, String small) {
        return "足りる既製サイズ：" + enough + "。足りないサイズ：" + small + "。";
    }

    @Override
    public String tradeUses(String size) {
        return (size.equals("CHUHABA") ? "小さな贈り物、弁当箱、封筒" : size.equals("SHAKUSAN") ? "弁当箱、ティッシュ箱、500 ml のボトル" : size.equals("SHAKUYON") ? "弁当箱" : size.equals("FUTAHABA") ? "ケーキの箱、ワイン 1 本、服、丸いもの" : size.equals("NISHAKU") ? "大きめのケーキの箱" : size.equals("NISHI") ? "一升瓶 1 本、ワイン 2 本、かばん" : size.equals("MIHABA") ? "一升瓶、2 本入りの箱、買い物袋" : size.equals("LARGE") ? "大きな袋" : size.equals("YOHABA") ? "座布団 2～4 枚、テーブルクロス" : size.equals("ITSUHABA") ? "座布団 5～6 枚" : size.equals("MUHABA") ? "布団 1 組" : "布団 2 組");
    }

    @Override
    public String twoKnotCrossed() {
        return "手前と向こうの角を品物にかぶせます。結ぶには届きません。中央で交差させ、一方を左、もう一方を右に向けます。";
    }

    @Override
    public String twoKnotRight() {
        return "右の角を持ち上げ、右に向けた角と結びます。";
    }

    @Override
    public String twoKnotTied() {
        return "左の角も同じように結びます。2 つの結び目は中央から同じ距離になります。";
    }

    @Override
    public String twoKnotRollCrossed() {
        return "手前と向こうの角をかぶせます。上で交差させ、筒に沿わせます。";
    }

    @Override
    public String twoKnotRollEnds() {
        return "左右の布を筒の両端にかぶせて折り込みます。";
    }

    @Override
    public String twoKnotRollTied() {
        return "それぞれ、向かってくる角と結びます。";
    }
}
