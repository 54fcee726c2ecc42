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
    public String classWith() {
        return "これで教室を始める";
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
    public String ideaBack() {
        return "背面";
    }

    @Override
    public String ideaBy(String name) {
        return name + "さんのアイデア";
    }

    @Override
    public String ideaCare(String words) {
        return "注意：" + words;
    }

    @Override
    public String ideaEmpty() {
        return "見せるものがありません。";
    }

    @Override
    public String ideaExample(String size) {
        return "例の正面、" + size + "。布は架空のものです。";
    }

    @Override
    public String ideaExampleBack() {
        return "その背面。";
    }

    @Override
    public String ideaFirst() {
        return "最初の一枚です。もっとよいものをさがしています …";
    }

    @Override
    public String ideaFoot() {
        return "このページはネットワークに何も求めず、何も残しません。計画はあなたの機器の中で立てます。Hearthclothで作りました。";
    }

    @Override
    public String ideaFront() {
        return "正面";
    }

    @Override
    public String ideaGuide() {
        return "ガイド全体、一ページずつ";
    }

    @Override
    public String ideaHeapHelp() {
        return "幅は横、長さは耳に沿って。これらの行は例です。上から書きかえてください。";
    }

    @Override
    public String ideaKeep() {
        return "計画を保存";
    }

    @Override
    public String ideaLabel() {
        return "アイデア";
    }

    @Override
    public String ideaLanguage() {
        return "言語";
    }

    @Override
    public String ideaMade() {
        return "作り方";
    }

    @Override
    public String ideaMadeMore() {
        return "縫い方、縁、結び方、洗い方、気をつけるところ";
    }

    @Override
    public String ideaNoCloth(String all, String name) {
        return "「" + name + "」というファイルも布もありません。あるのは" + all + "です。";
    }

    @Override
    public String ideaNoneKept(String name) {
        return "「" + name + "」というファイルも布もありません。中心布とストリップのあるものがありません。";
    }

    @Override
    public String ideaOld() {
        return "このブラウザーでは計画できません。新しいもの（2023年以降）で開いてください。";
    }

    @Override
    public String ideaOne() {
        return "あなたの一枚です。";
    }

    @Override
    public String ideaOwn() {
        return "あなたのはぎれで、あなたの一枚";
    }

    @Override
    public String ideaPieces() {
        return "どの布から何を裁つか";
    }

    @Override
    public String ideaPrint() {
        return "この一枚を印刷";
    }

    @Override
    public String ideaSave() {
        return "手引きをファイルに保存";
    }

    @Override
    public String ideaStop() {
        return "止める";
    }

    @Override
    public String ideaStopped() {
        return "止めました。";
    }

    @Override
    public String ideaSuchAs(String fabric) {
        return "たとえば " + fabric;
    }

    @Override
    public String ideaTied() {
        return "結んだところ。";
    }

    @Override
    public String ideaTrouble() {
        return "計画が止まりました。書いた行は残っています。布を減らしてもう一度どうぞ。";
    }

    @Override
    public String ideaTwo() {
        return "あなたの一枚と、もう一枚です。";
    }

    @Override
    public String ideaTying() {
        return "結び方";
    }

    @Override
    public String kitCame() {
        return "キットが届きました。布は手持ちに入り、一枚はその布で考えられています。";
    }

    @Override
    public String kitHelp() {
        return "キットのファイルは自分の布を一緒に持ってきます。";
    }

    @Override
    public String kitRefused() {
        return "このキットは使えません。新しいHearthclothのものか、壊れているか、手で変えられています。もう一度もらってください。何も取り入れていません。";
    }

    @Override
    public String kitsAnew() {
        return "もうここにありません。考えなおしてください。";
    }

    @Override
    public String kitsAsked(String asked) {
        return "望み：" + asked;
    }

    @Override
    public String kitsCount() {
        return "生徒の数";
    }

    @Override
    public String kitsCountFault(String given, String most) {
        return "「" + given + "」は人数として使えません。1 から " + most + " までの数を書いてください。";
    }

    @Override
    public String kitsEmpty() {
        return "手持ちに空いた布がありません。まず布を入れてください。";
    }

    @Override
    public String kitsFair(String least, String most) {
        return "一枚の中の継ぎ目は多くて" + most + "。この山をどう分けても" + least + "より少なくなりません。";
    }

    @Override
    public String kitsFile() {
        return "キットのファイル";
    }

    @Override
    public String kitsForget() {
        return "この計画をしまう";
    }

    @Override
    public String kitsGoing(String all, String tried) {
        return "もっと公平な分け方をさがしています：" + all + "回のうち" + tried + "回。";
    }

    @Override
    public String kitsGuide() {
        return "教室用ガイド";
    }

    @Override
    public String kitsHeap(int count) {
        return "手持ちの布のうち" + count + "枚が空いています。";
    }

    @Override
    public String kitsInTurn(String joins, String lacking) {
        return "一枚ずつ順に考えると、いちばん不利なものは" + joins + "、" + lacking + "人が受け取れません。";
    }

    @Override
    public String kitsIntro() {
        return "一つの山から何枚もの布をまとめて考えます。同じ布を二度約束せず、いちばん不利な人もできるだけよいものを受け取ります。";
    }

    @Override
    public String kitsJoins(int count) {
        return (count == 0 ? "継ぎ目なし" : "継ぎ目" + count + "か所");
    }

    @Override
    public String kitsKeep() {
        return "これらの布を残す";
    }

    @Override
    public String kitsKeepHelp() {
        return "作ったものに入り、その布は手持ちの中でこの一枚のものになります。";
    }

    @Override
    public String kitsKept(int count) {
        return "" + count + "枚を残しました。" + " 布はその一枚のものです。";
    }

    @Override
    public String kitsLines() {
        return "一行に一枚";
    }

    @Override
    public String kitsLinesHelp() {
        return "名前のあとに寸法か贈り物。または、一行目に name, size, gift, tie, fabrics と列の名を書いた表を貼ります。";
    }

    @Override
    public String kitsList() {
        return "季節の贈り物：一行に一枚";
    }

    @Override
    public String kitsMove() {
        return "布をほかの一枚へ移す";
    }

    @Override
    public String kitsMoveIt() {
        return "移して、ほかは合わせなおす";
    }

    @Override
    public String kitsMoved(String name, String piece) {
        return piece + "番の布はいま" + name + "さんの一枚にあります。ほかは合わせなおしました。";
    }

    @Override
    public String kitsNearest() {
        return "できる中でいちばん近いものです。";
    }

    @Override
    public String kitsNotMoved(String name, String piece) {
        return name + "さんに" + piece + "番の布を使う一枚は見つかりませんでした。何も変えていません。";
    }

    @Override
    public String kitsNothing() {
        return "何もできません。";
    }

    @Override
    public String kitsPiece() {
        return "手持ち";
    }

    @Override
    public String kitsPlan() {
        return "教室の分を考える";
    }

    @Override
    public String kitsPlanGifts() {
        return "贈り物を考える";
    }

    @Override
    public String kitsPrint() {
        return "名札、買い物表、先生の用紙";
    }

    @Override
    public String kitsSample() {
        return "Anna, 40 cm\nおばあさん, box 30 x 20 x 8 cm";
    }

    @Override
    public String kitsSize() {
        return "できあがり寸法";
    }

    @Override
    public String kitsStop() {
        return "止めて、いままでの一番を使う";
    }

    @Override
    public String kitsStudents() {
        return "教室：同じ布を何枚か";
    }

    @Override
    public String kitsTheList() {
        return "一覧";
    }

    @Override
    public String kitsTitle() {
        return "キットと贈り物";
    }

    @Override
    public String kitsTo() {
        return "渡す相手";
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
