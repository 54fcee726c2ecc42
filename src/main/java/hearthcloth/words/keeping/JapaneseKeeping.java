package hearthcloth.words.keeping;

/** The room of keeping in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseKeeping implements KeepingWords {

    @Override
    public String aboutAlsoWith(String before, String who) {
        return before + "。持っている人：" + who;
    }

    @Override
    public String aboutAlsoWrapped(String before, String what) {
        return before + "。包んだもの：" + what;
    }

    @Override
    public String aboutMade(String day) {
        return "作った日 " + day;
    }

    @Override
    public String aboutWith(String who) {
        return "持っている人：" + who;
    }

    @Override
    public String aboutWrapped(String what) {
        return "包んだもの：" + what;
    }

    @Override
    public String archiveAdd() {
        return "ここのものを残して加える";
    }

    @Override
    public String archiveBring() {
        return "取り込む";
    }

    @Override
    public String archiveBrought(int cloths, int pieces) {
        return "布 " + pieces + " 枚" + "と" + "作品 " + cloths + " 点" + "を取り込みました。布の一覧の「元に戻す」で取り出せます。";
    }

    @Override
    public String archiveHow() {
        return "すでにここにあるもの";
    }

    @Override
    public String archiveIn() {
        return "取り込む保管ファイル";
    }

    @Override
    public String archiveInstead() {
        return "ここのものを置き換える：布の一覧と、保管ファイルにもある布";
    }

    @Override
    public String archiveOut() {
        return "すべて取り出す";
    }

    @Override
    public String archiveTitle() {
        return "すべてを 1 つのファイルに";
    }

    @Override
    public String archiveWhat() {
        return "布の一覧、布の写真、作った布を 1 つの zip ファイルに入れます。安全な場所に保管したり、ほかの機械へ移したりできます。";
    }

    @Override
    public String beside() {
        return "並べて見る";
    }

    @Override
    public String cardLacking() {
        return "これには布が足りません。";
    }

    @Override
    public String cardMore() {
        return "手引き、ファイル、名前";
    }

    @Override
    public String cardPhotograph() {
        return "写真を撮る";
    }

    @Override
    public String cardSlip() {
        return "札";
    }

    @Override
    public String cardUsed(String stage, String used) {
        return stage + "、" + used;
    }

    @Override
    public String classes() {
        return "教室";
    }

    @Override
    public String compareBack() {
        return "作った布に戻る";
    }

    @Override
    public String compareFew() {
        return "並べて見るには布を二つ以上選んでください。";
    }

    @Override
    public String copy() {
        return "これをもとに新しく";
    }

    @Override
    public String find() {
        return "布を探す";
    }

    @Override
    public String findExample() {
        return "名前、布、品物、人";
    }

    @Override
    public String findGo() {
        return "探す";
    }

    @Override
    public String first() {
        return "最初の一枚がここに入ります。";
    }

    @Override
    public String found(String all, String found, String sought) {
        return "「" + sought + "」：" + all + " 件中 " + found + " 件。";
    }

    @Override
    public String ideaGo() {
        return "アイデアを出す、入れる";
    }

    @Override
    public String ideaTitle() {
        return "アイデアを 1 つファイルに";
    }

    @Override
    public String ideaWhat() {
        return "布を決まりごととして渡すと、手持ちの布ごとに違う仕上がりになります。もらったものを取り込むこともできます。";
    }

    @Override
    public String kits() {
        return "キットと品物";
    }

    @Override
    public String labelRemoved(String name) {
        return name + " を外す";
    }

    @Override
    public String name() {
        return "名前";
    }

    @Override
    public String open(String name) {
        return "「" + name + "」を開く";
    }

    @Override
    public String redo(String deed) {
        return "やり直す：" + deed;
    }

    @Override
    public String remove() {
        return "削除";
    }

    @Override
    public String removeSure(String name) {
        return "「" + name + "」を削除しますか？";
    }

    @Override
    public String removed(String name) {
        return "「" + name + "」を削除しました。元に戻すと戻ります。";
    }

    @Override
    public String rename() {
        return "名前を変える";
    }

    @Override
    public String see() {
        return "手持ちの布で作れるものを見る";
    }

    @Override
    public String showAll() {
        return "すべて見る";
    }

    @Override
    public String stage(String stage) {
        return (stage.equals("DESIGNED") ? "デザイン済み" : stage.equals("CUT") ? "裁断済み" : stage.equals("RECUT") ? "裁断済み、あとから必要な分はまだ" : "縫い上がり");
    }

    @Override
    public String take(String what) {
        return (what.equals("cloth") ? "布" : what.equals("cut") ? "裁つ" : what.equals("sew") ? "縫う" : what.equals("guideA4") ? "手引き、A4" : what.equals("guideLetter") ? "手引き、レター" : what.equals("guide") ? "手引き" : what.equals("class") ? "教室用の手引き" : what.equals("slips") ? "ピース札" : what.equals("front") ? "正面の図" : what.equals("back") ? "背面の図" : what.equals("plan") ? "計画ファイル" : what.equals("kit") ? "キットのファイル" : "アイデアを渡す");
    }

    @Override
    public String tick() {
        return "二つ以上選んでください。";
    }

    @Override
    public String title() {
        return "作ったもの";
    }

    @Override
    public String undo(String deed) {
        return "元に戻す：" + deed;
    }

    @Override
    public String useFor(String who) {
        return who + " へ";
    }

    @Override
    public String used(int n) {
        return "" + n + " 回使った";
    }

    @Override
    public String usedLast(String last, int n) {
        return "" + n + " 回使った。最後：" + last;
    }
}
