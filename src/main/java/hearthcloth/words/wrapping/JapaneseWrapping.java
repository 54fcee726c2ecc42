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
    public String tiedBackFace() {
        return "背面";
    }

    @Override
    public String tiedByPatch() {
        return "ピースごとに";
    }

    @Override
    public String tiedCanvas() {
        return "結んだ品物。矢印キーで回し、プラスとマイナスで近づけたり遠ざけたり、Home で角から見ます。";
    }

    @Override
    public String tiedDown() {
        return "向こうに傾ける";
    }

    @Override
    public String tiedDrag() {
        return "指かマウスでドラッグするか、矢印キーを使います。";
    }

    @Override
    public String tiedExample(String unit) {
        return (unit.equals("in") ? "box 12 x 8 x 4 in" : "box 30 x 20 x 10 cm");
    }

    @Override
    public String tiedFace() {
        return "外に見える面";
    }

    @Override
    public String tiedFarther() {
        return "遠く";
    }

    @Override
    public String tiedFolds() {
        return "紙の折り線（切り抜いて小さく折る）";
    }

    @Override
    public String tiedFromAbove() {
        return "上から";
    }

    @Override
    public String tiedFromCorner() {
        return "角から";
    }

    @Override
    public String tiedFromFront() {
        return "正面から";
    }

    @Override
    public String tiedFront() {
        return "正面";
    }

    @Override
    public String tiedHow() {
        return "結び方";
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
    public String tiedLeft() {
        return "左へ回す";
    }

    @Override
    public String tiedNear() {
        return "布を置いたとおりに描いています。結び目の近く（手幅ほど）では実際の布は寄り、端は思い思いに落ちます。";
    }

    @Override
    public String tiedNearer() {
        return "近く";
    }

    @Override
    public String tiedNone() {
        return "この布では、その品物は包めません。";
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
    public String tiedQuarter(String turns) {
        return (turns.equals("none") ? "図のまま" : turns.equals("one") ? "90 度" : turns.equals("two") ? "180 度" : "270 度");
    }

    @Override
    public String tiedQuarters() {
        return "布を反時計回りに回す";
    }

    @Override
    public String tiedRight() {
        return "右へ回す";
    }

    @Override
    public String tiedRightExample() {
        return "0、−2 は左";
    }

    @Override
    public String tiedSay() {
        return "何を包むか書いてください：box 30 x 20 x 10 cm（箱）、bottle 8 x 30 cm（瓶）、two bottles 8 x 30 cm（瓶 2 本）、ball 20 cm（丸いもの）、books 22 x 15 x 3 cm（本 2 冊）、roll 5 x 40 cm（巻物）。";
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
    public String tiedTie() {
        return "結び方";
    }

    @Override
    public String tiedTurn() {
        return "品物を回す";
    }

    @Override
    public String tiedTurned(String way) {
        return (way.equals("left") ? "左へ回しました" : way.equals("right") ? "右へ回しました" : way.equals("up") ? "手前に傾けました" : "向こうに傾けました");
    }

    @Override
    public String tiedTurning() {
        return "回して見る品物";
    }

    @Override
    public String tiedUp() {
        return "手前に傾ける";
    }

    @Override
    public String tiedWhat() {
        return "包むもの";
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
