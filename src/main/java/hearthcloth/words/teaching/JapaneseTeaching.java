package hearthcloth.words.teaching;

/** The room of teaching in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseTeaching implements TeachingWords {

    @Override
    public String classBegin() {
        return "教室を始める";
    }

    @Override
    public String classCode() {
        return "コード";
    }

    @Override
    public String classCount(int inside) {
        return (inside == 0 ? "まだだれもいません。" : "" + inside + "人が入っています。");
    }

    @Override
    public String classEnd() {
        return "教室を終える";
    }

    @Override
    public String classEndAsk() {
        return "教室を終えますか。全員が外に出て、保存していないものは消えます。";
    }

    @Override
    public String classEnded() {
        return "教室は終わりました。全員が外に出ました。";
    }

    @Override
    public String classFile() {
        return "ファイル";
    }

    @Override
    public String classFromCloth() {
        return "布のアイデアで始める";
    }

    @Override
    public String classFromFile() {
        return "手引きのファイルで始める";
    }

    @Override
    public String classHidden() {
        return "まだ見せていません";
    }

    @Override
    public String classIntro() {
        return "生徒は自分の電話で入り、自分のはぎれを書きます。それぞれに、あなたのアイデアに沿った布ができます。壁には、見せたいものだけが映ります。";
    }

    @Override
    public String classIsOut(String name) {
        return name + "さんは外に出ました。";
    }

    @Override
    public String classNoCloth() {
        return "中心布とストリップのある布がまだありません。";
    }

    @Override
    public String classNotShared() {
        return "作業室がネットワークに開いていないと、生徒は入れません。作業室を閉じ、信頼できるネットワークで ./hearthcloth --lan で開きなおしてください。";
    }

    @Override
    public String classOut(String name) {
        return name + "さんを外に出す";
    }

    @Override
    public String classPoint() {
        return "電話のカメラを図に向けるか、アドレスを開いてコードを書きます。教室のあいだは、だれでもこのコードで入れます。";
    }

    @Override
    public String classQr() {
        return "コードつきアドレスのQRコード";
    }

    @Override
    public String classSeams(String all, String sewn) {
        return "縫い目" + all + "本のうち" + sewn + "本を縫いました";
    }

    @Override
    public String classTitle() {
        return "教室";
    }

    @Override
    public String classWall() {
        return "壁";
    }

    @Override
    public String comeCode() {
        return "先生の画面のコード";
    }

    @Override
    public String comeFull() {
        return "教室は満員です。";
    }

    @Override
    public String comeIn() {
        return "入る";
    }

    @Override
    public String comeName() {
        return "ほかの人に見える名前";
    }

    @Override
    public String comeNone() {
        return "いまは教室がありません。先生に聞いてください。";
    }

    @Override
    public String comeTitle() {
        return "教室に入る";
    }

    @Override
    public String comeWait() {
        return "違うコードが多すぎます。十分待ってください。";
    }

    @Override
    public String comeWrong() {
        return "コードが違います。先生の画面を見てください。";
    }

    @Override
    public String cutCut() {
        return "裁断";
    }

    @Override
    public String cutFabric() {
        return "布";
    }

    @Override
    public String cutList() {
        return "裁断表";
    }

    @Override
    public String cutPatch() {
        return "パーツ";
    }

    @Override
    public String cutPiece() {
        return "手持ち";
    }

    @Override
    public String mineAgain() {
        return "考えなおす";
    }

    @Override
    public String mineAnother() {
        return "もう一つを見る";
    }

    @Override
    public String mineCentimetres() {
        return "センチ";
    }

    @Override
    public String mineFavourite() {
        return "いちばん好きな布";
    }

    @Override
    public String mineGuide() {
        return "印刷用のガイド";
    }

    @Override
    public String mineHelp() {
        return "一種類に一行：幅と長さ、枚数、どんな布か。幅は横、長さは耳に沿って。";
    }

    @Override
    public String mineHide() {
        return "壁から外す";
    }

    @Override
    public String mineInches() {
        return "インチ";
    }

    @Override
    public String mineKeep() {
        return "教室が終わると何も残りません。持ち帰りたいものを保存してください。";
    }

    @Override
    public String mineKeeps() {
        return "アイデアの決まりをすべて守っています。";
    }

    @Override
    public String mineLeave() {
        return "教室を出る";
    }

    @Override
    public String mineLess() {
        return "縫い目を一つ戻す";
    }

    @Override
    public String mineLooking() {
        return "布をさがしています …";
    }

    @Override
    public String mineMore() {
        return "縫い目を一つ進める";
    }

    @Override
    public String mineNearest() {
        return "手持ちの布でできる、いちばん近いものです。";
    }

    @Override
    public String mineNone() {
        return "この布ではまだ一枚になりません。";
    }

    @Override
    public String mineOnWall() {
        return "壁には絵と大きさと名前が映ります。";
    }

    @Override
    public String minePlan() {
        return "わたしの布を考える";
    }

    @Override
    public String minePlanFile() {
        return "とっておく計画ファイル";
    }

    @Override
    public String mineRuler() {
        return "ものさし";
    }

    @Override
    public String mineRules() {
        return "アイデアの決まり";
    }

    @Override
    public String mineSample() {
        return "10 x 20 cm、12枚、緑のプリント";
    }

    @Override
    public String mineScraps() {
        return "手持ちの布";
    }

    @Override
    public String mineScrapsOnly() {
        return "手持ちの布では、中心布とまわりのストリップがとれません。はぎれをそのままはぎ合わせました。";
    }

    @Override
    public String mineShow() {
        return "壁に見せる";
    }

    @Override
    public String mineWhy() {
        return "理由";
    }
}
