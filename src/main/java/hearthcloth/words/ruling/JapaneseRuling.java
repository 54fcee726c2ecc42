package hearthcloth.words.ruling;

/** The room of ruling in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseRuling implements RulingWords {

    @Override
    public String asked() {
        return "望みどおりの中心布、ストリップ、周";
    }

    @Override
    public String askedGift(String gift, String tie) {
        return gift + "、" + tie;
    }

    @Override
    public String bars(String rule) {
        return "周りのストリップ: " + rule + "。";
    }

    @Override
    public String bendBars(String rule, String widths) {
        return "ストリップの裁ち幅は " + widths + "、手本は" + rule + "です。";
    }

    @Override
    public String bendColours(String found, String scheme, String ways) {
        return (found.equals("none") ? "色は布の出るままです。手本は" + ways + "です。" : "色は" + scheme + "です。手本は" + ways + "です。");
    }

    @Override
    public String bendHearth(String rule, String share, String size) {
        return "中心布の裁ち寸法は " + size + "（布の幅の " + share + "）、手本は" + rule + "です。";
    }

    @Override
    public String bendJoins(int joins, String most) {
        return "はぎが " + "" + joins + " か所" + "のストリップがあります。手本は " + most + " か所までです。";
    }

    @Override
    public String bendMiddle(String lies, String wanted) {
        return "真ん中は " + wanted + " ではなく " + lies + " です。";
    }

    @Override
    public String bendOrder(String found, String wanted) {
        return "ストリップは" + (found.equals("ROUND") ? "ぐるりと" : found.equals("PAIRS") ? "向かい合う組で" : found.equals("TWO_SIDES") ? "二辺に" : "別の順で") + "付けます。手本は" + (wanted.equals("ROUND") ? "ぐるりと" : wanted.equals("PAIRS") ? "向かい合う組" : "二辺") + "です。";
    }

    @Override
    public String bendRounds(int rounds, String rule) {
        return "" + rounds + " 周です。手本は" + rule + "です。";
    }

    @Override
    public String bendSize(String rule, String size) {
        return "布は " + size + "、手本は" + rule + "です。";
    }

    @Override
    public String bendWidths(String least, String most) {
        return least + "～" + most;
    }

    @Override
    public String colours(String rule) {
        return "色: " + rule + "。";
    }

    @Override
    public String giftBooks(String sizes) {
        return "本 2 冊（各 " + sizes + "）";
    }

    @Override
    public String giftBottle(String across, String high) {
        return "瓶（直径 " + across + "、高さ " + high + "）";
    }

    @Override
    public String giftBottles(String across, String high) {
        return "瓶 2 本（直径 " + across + "、高さ " + high + "）";
    }

    @Override
    public String giftBox(String sizes) {
        return "箱 " + sizes;
    }

    @Override
    public String giftRoll(String across, String length) {
        return "筒（直径 " + across + "、長さ " + length + "）";
    }

    @Override
    public String giftRound(String across) {
        return "丸いもの（直径 " + across + "）";
    }

    @Override
    public String hearth(String rule) {
        return "真ん中の中心布: " + rule + "。";
    }

    @Override
    public String isBars(String kind, String most, String width) {
        return (kind.equals("WIDTHS") ? "裁ち幅 " + width : kind.equals("WIDTHS_FINISHED") ? "出来上がり幅 " + width : kind.equals("BETWEEN") ? "裁ち幅 " + width + "～" + most : kind.equals("BETWEEN_FINISHED") ? "出来上がり幅 " + width + "～" + most : kind.equals("SHARE") ? "布の幅の " + width + "～" + most + " %" : kind.equals("STRIPS") ? "手持ちの細い布の幅のまま" : "手持ちの布によります");
    }

    @Override
    public String isColours(String open, String ways) {
        return (open.equals("yes") ? "手持ちの布によります" : "" + ways);
    }

    @Override
    public String isGift(String gift, String tie) {
        return gift + "を包める大きさ、" + tie;
    }

    @Override
    public String isHearth(String kind, String least, String most, String size) {
        return (kind.equals("EXACT") ? "裁ち " + size : kind.equals("FINISHED") ? "出来上がり " + size : kind.equals("SHARE") ? "布の幅の " + least + "～" + most + " %" : kind.equals("SQUARE") ? "手持ちの布一枚から取れるいちばん大きな正方形" : "手持ちの布によります");
    }

    @Override
    public String isRounds(String least, int most) {
        return (most == 0 ? "手持ちの布でできるだけ" : "ストリップ " + (least.equals("none") ? "" : "" + least + "～") + most + " 周");
    }

    @Override
    public String isSize(String kind, String most, String size) {
        return (kind.equals("EXACT") ? "出来上がり " + size : kind.equals("WITHIN") ? "一辺 " + size + "～" + most + " の正方形、手持ちの布でできるだけ大きく" : "手持ちの布でできるだけ大きく");
    }

    @Override
    public String isWay(String idea, String scheme) {
        return scheme + "（" + idea + "）";
    }

    @Override
    public String joins(String least, int most) {
        return (most == 0 ? "ストリップはどれも一枚で、はぎません。" : "ストリップははいでもかまいません。はぎは " + most + " か所まで、仕上がりは " + least + " より小さくしません。");
    }

    @Override
    public String middle(String middle) {
        return "真ん中には、" + (middle.equals("FAVOURITE") ? "お気に入りの布" : middle.equals("LIGHTEST") ? "大きさの足りる布でいちばん明るいもの" : middle.equals("DARKEST") ? "大きさの足りる布でいちばん暗いもの" : "どの布でも") + "置きます。";
    }

    @Override
    public String order(String order) {
        return (order.equals("ROUND") ? "ストリップを次の辺へ、ぐるぐると付けます。" : order.equals("PAIRS") ? "ストリップを向かい合う辺に、組で付けます。" : "ストリップを二辺にだけ付け、中心布は角に残ります。");
    }

    @Override
    public String orderOpen() {
        return "ストリップの順は、手持ちの布によります。";
    }

    @Override
    public String rounds(String rule) {
        return "周の数: " + rule + "。";
    }

    @Override
    public String seam(String name, String seam) {
        return (seam.equals("felled") ? "折り伏せ縫い" : seam.equals("ssamsol") ? "サムソル（細い折り伏せ縫い）" : seam.equals("felled_and_trimmed") ? "切りそろえた折り伏せ縫い" : seam.equals("lapped") ? "かみ合わせ縫い" : seam.equals("french") ? "袋縫い" : seam.equals("french_trimmed") ? "切りそろえた袋縫い" : seam.equals("gamchimjil") ? "カムチムジル（巻きかがり）" : "" + name);
    }

    @Override
    public String sewn(String corner, String first, String narrow, String seam, String second, String wide) {
        return "縫い目: " + seam + "、" + narrow + " + " + wide + "。縁の始末: " + first + " + " + second + "、角は" + (corner.equals("MITRED") ? "額縁仕立て" : "直角") + "。";
    }

    @Override
    public String size(String rule) {
        return "布の大きさ: " + rule + "。";
    }

    @Override
    public String suited(String tie) {
        return (tie.equals("FOUR_CORNER") ? "箱、重ねたもの、重いもの" : tie.equals("EDGE_ALONG_EDGE") ? "大きな布に置いた箱" : tie.equals("ERRAND") ? "手に持って運ぶ箱" : tie.equals("FLAT") ? "平たい箱とたたんだ服（結ばない）" : tie.equals("TWO_KNOT") ? "長い箱と巻いたござ" : tie.equals("ONE_BOTTLE") ? "立てた瓶" : tie.equals("TWO_BOTTLES") ? "同じ瓶 2 本" : tie.equals("ROUND") ? "ボール、メロン、丸いもの" : tie.equals("BOOKS") ? "同じ大きさの本 2 冊" : "巻いた布、筒、缶");
    }

    @Override
    public String tie(String tie) {
        return (tie.equals("FOUR_CORNER") ? "四つ結び" : tie.equals("EDGE_ALONG_EDGE") ? "四つ結び（箱を布と平行に置く）" : tie.equals("ERRAND") ? "お使い包み" : tie.equals("FLAT") ? "平包み" : tie.equals("TWO_KNOT") ? "二つ結び" : tie.equals("ONE_BOTTLE") ? "瓶包み（1 本）" : tie.equals("TWO_BOTTLES") ? "瓶包み（2 本）" : tie.equals("ROUND") ? "すいか包み" : tie.equals("BOOKS") ? "本包み" : "巻き結び");
    }
}
