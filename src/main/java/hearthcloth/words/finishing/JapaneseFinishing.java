package hearthcloth.words.finishing;

/** The room of finishing in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseFinishing implements FinishingWords {

    @Override
    public String againBefore(int n) {
        return "以前に " + n + " 回、メモなし。";
    }

    @Override
    public String againFor(String who) {
        return who + " へ";
    }

    @Override
    public String againSomething() {
        return "何か";
    }

    @Override
    public String againTitle() {
        return "また包んだ";
    }

    @Override
    public String againUsed(String cloth, int n) {
        return cloth + " は " + "" + n + " 回" + "使いました。";
    }

    @Override
    public String againWhat() {
        return "何を";
    }

    @Override
    public String againWhen() {
        return "いつ";
    }

    @Override
    public String againWho() {
        return "だれに";
    }

    @Override
    public String bars(int n) {
        return "ストリップ " + n + " 本";
    }

    @Override
    public String date(String day, String month, String year) {
        return year + "年" + (month.equals("m1") ? "1" : month.equals("m2") ? "2" : month.equals("m3") ? "3" : month.equals("m4") ? "4" : month.equals("m5") ? "5" : month.equals("m6") ? "6" : month.equals("m7") ? "7" : month.equals("m8") ? "8" : month.equals("m9") ? "9" : month.equals("m10") ? "10" : month.equals("m11") ? "11" : "12") + "月" + day + "日";
    }

    @Override
    public String how(int days, int fabrics, String parts) {
        return parts + "、布地 " + "" + fabrics + " 種類" + (days == 0 ? "" : "、" + days + " 日で縫いました") + "。";
    }

    @Override
    public String labelAgain() {
        return "また包んだ";
    }

    @Override
    public String labelSlip() {
        return "札";
    }

    @Override
    public String labelSlipOf(String cloth) {
        return cloth + " の札";
    }

    @Override
    public String lastStep() {
        return "最後の手順に戻る";
    }

    @Override
    public String leftBack(int n) {
        return "今の大きさで、台の上に戻っています。";
    }

    @Override
    public String leftFirst() {
        return "この残り布から先に使います。何を包みますか？";
    }

    @Override
    public String leftHeading(int n) {
        return (n == 0 ? "取っておく残り布はありません" : "取っておける残り布 " + n + " 枚");
    }

    @Override
    public String leftNone() {
        return "もう一枚も布の一覧にありません。";
    }

    @Override
    public String leftOne(String fabric, String size) {
        return fabric + "、" + size;
    }

    @Override
    public String leftSome(String n) {
        return n + " 枚はまだ台の上にあり、残りは使いました。";
    }

    @Override
    public String leftUse() {
        return "残り布を使う";
    }

    @Override
    public String leftUsed() {
        return "その後、すべて使いました。";
    }

    @Override
    public String notMade() {
        return "まだ作っていません。布が足りません。";
    }

    @Override
    public String patches(int n) {
        return "ピース " + n + " 枚";
    }

    @Override
    public String photoAnother() {
        return "別の写真";
    }

    @Override
    public String photoAway() {
        return "写真を外す";
    }

    @Override
    public String photoAwayAsk() {
        return "写真を外しますか？ ほかの場所には残っていません。";
    }

    @Override
    public String photoDrawn(String cloth) {
        return cloth + "、図";
    }

    @Override
    public String photoIsAway() {
        return "写真を外しました。図に戻ります。";
    }

    @Override
    public String photoIts() {
        return "写真";
    }

    @Override
    public String photoKeep() {
        return "保存";
    }

    @Override
    public String photoKept() {
        return "写真を保存しました。撮った場所と日時は保存しません。";
    }

    @Override
    public String photoNone() {
        return "この布の写真はありません。";
    }

    @Override
    public String photoSend() {
        return "送るための両面";
    }

    @Override
    public String photoTake() {
        return "写真を撮る";
    }

    @Override
    public String photoYours(String cloth) {
        return cloth + " の写真";
    }

    @Override
    public String picture(String cloth) {
        return cloth + " の正面";
    }

    @Override
    public String slipAgainst(String across, String both, String height, String up, String width) {
        return "計画より、" + (across.equals("less") ? "幅が " + width + " 狭" + (up.equals("same") ? "いです" : "く") : across.equals("more") ? "幅が " + width + " 広" + (up.equals("same") ? "いです" : "く") : "") + (both.equals("yes") ? "、" : "") + (up.equals("less") ? "高さが " + height + " 低いです" : up.equals("more") ? "高さが " + height + " 高いです" : "") + "。";
    }

    @Override
    public String slipAnd() {
        return "と";
    }

    @Override
    public String slipAsPlanned() {
        return "計画どおりです。";
    }

    @Override
    public String slipCorners() {
        return "角から角まで";
    }

    @Override
    public String slipCornersOther() {
        return "角から角まで、もう一方";
    }

    @Override
    public String slipHeight() {
        return "高さ";
    }

    @Override
    public String slipIsKept() {
        return "札を保存しました。";
    }

    @Override
    public String slipIts() {
        return "札";
    }

    @Override
    public String slipKeep() {
        return "この札を保存";
    }

    @Override
    public String slipKeeper() {
        return "だれに";
    }

    @Override
    public String slipLeans(String length) {
        return "角から角までが、両方向で " + length + " 違います。少し傾いていますが、結べばだれにもわかりません。";
    }

    @Override
    public String slipLongName(String most) {
        return "名前は " + most + " 文字までにしてください。";
    }

    @Override
    public String slipLongNote(String most) {
        return "メモは " + most + " 文字までです。";
    }

    @Override
    public String slipMade() {
        return "作った日";
    }

    @Override
    public String slipMeasures(String unit) {
        return "実際の大きさ、" + unit;
    }

    @Override
    public String slipMissing(String side) {
        return (side.equals("width") ? "幅も書くか、大きさをすべて空けておいてください。" : "高さも書くか、大きさをすべて空けておいてください。");
    }

    @Override
    public String slipName() {
        return "名前";
    }

    @Override
    public String slipPlanned(String size) {
        return "計画 " + size;
    }

    @Override
    public String slipPrint() {
        return "印刷";
    }

    @Override
    public String slipSewn() {
        return "縫い上がった";
    }

    @Override
    public String slipStraight() {
        return "角から角までは、両方向とも同じです。";
    }

    @Override
    public String slipTie() {
        return "結び方を見る";
    }

    @Override
    public String slipUnread(String field, String why) {
        return (field.equals("width") ? "幅" : field.equals("height") ? "高さ" : field.equals("corner") ? "角から角まで" : "もう一方の角") + "：" + why;
    }

    @Override
    public String slipWidth() {
        return "幅";
    }

    @Override
    public String slipWord() {
        return "自分へのひとこと";
    }

    @Override
    public String slipWrapped() {
        return "包んだもの";
    }

    @Override
    public String title() {
        return "縫い上がりました。しっかりしています。";
    }
}
