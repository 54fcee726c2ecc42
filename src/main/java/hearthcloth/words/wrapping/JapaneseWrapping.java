package hearthcloth.words.wrapping;

/** The room of wrapping in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseWrapping implements WrappingWords {

    @Override
    public String labelKeep() {
        return "包むもの";
    }

    @Override
    public String showsCaption(String what) {
        return (what.equals("patch") ? "ピースごとの行き先、ピースに対する％" : "布地ごとの行き先、布地に対する％");
    }

    @Override
    public String showsEnds() {
        return "結び目と端";
    }

    @Override
    public String showsFrom() {
        return "見える方向";
    }

    @Override
    public String showsHidden() {
        return "折り込まれる";
    }

    @Override
    public String showsName(String what) {
        return (what.equals("patch") ? "ピース" : "布地");
    }

    @Override
    public String showsOf() {
        return "見える分のうち";
    }

    @Override
    public String showsSides() {
        return "側面";
    }

    @Override
    public String showsTop() {
        return "上";
    }

    @Override
    public String showsUnder() {
        return "底";
    }

    @Override
    public String showsView(String view) {
        return (view.equals("ABOVE") ? "上" : view.equals("FRONT") ? "正面" : view.equals("BACK") ? "後ろ" : view.equals("RIGHT") ? "右" : view.equals("LEFT") ? "左" : view.equals("CORNER") ? "角" : view.equals("UNDERNEATH") ? "下" : "なし");
    }

    @Override
    public String showsWhere(String what) {
        return (what.equals("patch") ? "ピースの行き先" : "布地の行き先");
    }

    @Override
    public String tieCare() {
        return "注意";
    }

    @Override
    public String tieFits(String fits) {
        return (fits.equals("yes") ? "合う" : "小さい");
    }

    @Override
    public String tieKnot() {
        return "結び目：縦結びではなく真結び";
    }

    @Override
    public String tieLarge() {
        return "布の大きさはどれだけ要るか";
    }

    @Override
    public String tieLead(String gift, String own, String suited) {
        return "向くもの：" + suited + "。ここでは " + gift + " を、" + (own.equals("yes") ? "あなたの布" : "無地の布") + "で描いています。矢印の先が、今その角のあるところです。";
    }

    @Override
    public String tieNone() {
        return "その結び方はありません。";
    }

    @Override
    public String tieNothing() {
        return "この形は包めない";
    }

    @Override
    public String tieShort() {
        return "角が届かないとき";
    }

    @Override
    public String tieSold() {
        return "売られている大きさ";
    }

    @Override
    public String tieSoldFor() {
        return "用途（通例）";
    }

    @Override
    public String tieSquare() {
        return "四方、仕上がり";
    }

    @Override
    public String tieSquareOf() {
        return "一辺";
    }

    @Override
    public String tieThisGift() {
        return "この品物";
    }

    @Override
    public String tieTitle(String tie) {
        return tie;
    }

    @Override
    public String tieTitleNamed(String tie, String trade) {
        return tie + "（" + trade + "）";
    }

    @Override
    public String tieUnsuited(String gift, String suited, String tie) {
        return tie + "に向くもの：" + suited + "。" + gift + " には別の結び方を選んでください。";
    }

    @Override
    public String tieUpTo() {
        return "この結び方で、この形なら";
    }

    @Override
    public String tiedAwayExample() {
        return "0、−2 は手前";
    }

    @Override
    public String tiedBack() {
        return "布に戻る";
    }

    @Override
    public String tiedByPatch() {
        return "ピースごとに";
    }

    @Override
    public String tiedFolds() {
        return "紙の折り線（切り抜いて小さく折る）";
    }

    @Override
    public String tiedHowTie(String tie) {
        return "結び方：" + tie;
    }

    @Override
    public String tiedIsFor(String cloth, String gift) {
        return cloth + " の用途：" + gift + "。";
    }

    @Override
    public String tiedKeep() {
        return "この布の用途にする";
    }

    @Override
    public String tiedLacks() {
        return "この布を作る布地がまだ足りないので、結べません。";
    }

    @Override
    public String tiedNear() {
        return "布を置いたとおりに描いています。結び目の近く（手幅ほど）では実際の布は寄り、端は思い思いに落ちます。";
    }

    @Override
    public String tiedNone() {
        return "この布では、その品物は包めません。";
    }

    @Override
    public String tiedOff() {
        return "品物を中心からずらす";
    }

    @Override
    public String tiedOffAway(String unit) {
        return "中心から向こうへ、" + unit;
    }

    @Override
    public String tiedOffRight(String unit) {
        return "中心から右へ、" + unit;
    }

    @Override
    public String tiedRightExample() {
        return "0、−2 は左";
    }

    @Override
    public String tiedShare(String percent) {
        return percent + "％";
    }

    @Override
    public String tiedShow() {
        return "見る";
    }

    @Override
    public String tiedShows() {
        return "見えるもの";
    }

    @Override
    public String tiedSides() {
        return "見る向き";
    }

    @Override
    public String title(String cloth) {
        return cloth + "、結んだところ";
    }

    @Override
    public String which() {
        return "どの布で結びますか？";
    }
}
