package hearthcloth.words.framing;

/** The room of framing in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseFraming implements FramingWords {

    @Override
    public String begunCuts(int n) {
        return "" + n + " 回裁ちました";
    }

    @Override
    public String begunGoCutting() {
        return "続けて裁つ";
    }

    @Override
    public String begunGoOn() {
        return "続ける";
    }

    @Override
    public String begunGoSewing() {
        return "続けて縫う";
    }

    @Override
    public String begunGoSewingNext(String next) {
        return "続けて縫う：" + next;
    }

    @Override
    public String begunLacks() {
        return "布が足りません";
    }

    @Override
    public String begunLook() {
        return "見てみる";
    }

    @Override
    public String begunPlanned() {
        return "計画済み";
    }

    @Override
    public String begunPlannedFor(String gift) {
        return "計画済み、包むもの：" + gift;
    }

    @Override
    public String begunRecut(String seams, String sewn) {
        return "縫い目 " + seams + " 本のうち " + sewn + " 本を縫いました。先に裁つものがあります";
    }

    @Override
    public String begunSewn(String seams, String sewn) {
        return "縫い目 " + seams + " 本のうち " + sewn + " 本を縫いました";
    }

    @Override
    public String begunSewnFor(String gift, String seams, String sewn) {
        return "縫い目 " + seams + " 本のうち " + sewn + " 本を縫いました。包むもの：" + gift;
    }

    @Override
    public String drawerMeasures() {
        return "定規、用紙、言語";
    }

    @Override
    public String drawerTitle() {
        return "引き出し";
    }

    @Override
    public String field(String field) {
        return (field.equals("name") ? "名前" : field.equals("width") ? "幅" : field.equals("length") ? "長さ" : field.equals("fabric") ? "布" : field.equals("washed") ? "水通し" : field.equals("at") ? "切る位置" : field.equals("many") ? "枚数" : field.equals("colour") ? "色" : field.equals("faces") ? "表裏" : field.equals("nap") ? "毛並み" : field.equals("made") ? "作った日" : field.equals("wrapped") ? "包んだもの" : "持っている人");
    }

    @Override
    public String firstAgain() {
        return "もう一度見る";
    }

    @Override
    public String firstExample() {
        return "見本";
    }

    @Override
    public String firstFilm() {
        return "見本：かごのはぎれ 9 枚が 12 本のストリップの布になり、箱を包みます";
    }

    @Override
    public String firstFour() {
        return "包めました。ほどけばまた一枚の布です。";
    }

    @Override
    public String firstKinds() {
        return "何を包みますか？";
    }

    @Override
    public String firstOne() {
        return "かごから出したはぎれ 9 枚";
    }

    @Override
    public String firstPrivate() {
        return "すべてこの機械の中だけにあります。インターネットには何も尋ねません。";
    }

    @Override
    public String firstStop() {
        return "止める";
    }

    @Override
    public String firstThree() {
        return "ストリップ 12 本を順に縫い、";
    }

    @Override
    public String firstTwo() {
        return "そして贈りものの箱。";
    }

    @Override
    public String frameBesides() {
        return "そのほか";
    }

    @Override
    public String frameCopies() {
        return "控え";
    }

    @Override
    public String frameExample() {
        return "見本";
    }

    @Override
    public String frameExampleAway() {
        return "見本を片づける";
    }

    @Override
    public String frameExampleIs() {
        return "自由に試せる見本です。";
    }

    @Override
    public String frameExampleNotYours() {
        return "あなたのものは入っていません。";
    }

    @Override
    public String frameGuidelines() {
        return "手引き";
    }

    @Override
    public String frameHome() {
        return "Hearthcloth、作業台";
    }

    @Override
    public String frameLeave() {
        return "出る";
    }

    @Override
    public String framePeople() {
        return "人";
    }

    @Override
    public String frameSkip() {
        return "本文へ";
    }

    @Override
    public String frameStages() {
        return "手順";
    }

    @Override
    public String frameStudio() {
        return "教室";
    }

    @Override
    public String giftCloth(String size) {
        return size + " の布";
    }

    @Override
    public String giftKind(String shape) {
        return (shape.equals("BOX") ? "箱" : shape.equals("BOTTLE") ? "瓶" : shape.equals("TWO_BOTTLES") ? "瓶 2 本" : shape.equals("ROUND") ? "丸いもの" : shape.equals("BOOKS") ? "本 2 冊" : "筒");
    }

    @Override
    public String giftMeasure(String measure) {
        return (measure.equals("long") ? "長さ" : measure.equals("wide") ? "幅" : measure.equals("high") ? "高さ" : measure.equals("across") ? "直径" : "厚さ");
    }

    @Override
    public String giftTied(String gift, String tie) {
        return gift + "、" + tie;
    }

    @Override
    public String handEats(String eats, String n, String spread, String usual) {
        return "縫い目 1 本に平均 " + eats + " 使っています（" + n + " 本の中央値）。半分はそこから " + spread + " 以内でした。ふつうの縫い目は " + usual + " です。";
    }

    @Override
    public String handFrom() {
        return "何からわかったか";
    }

    @Override
    public String handIsOwn() {
        return "新しい布は自分の縫い目で計画します。";
    }

    @Override
    public String handIsUsual() {
        return "新しい布はふつうの縫い目で計画します。";
    }

    @Override
    public String handOwn() {
        return "新しい布をこの縫い目で計画する";
    }

    @Override
    public String handTitle() {
        return "自分の縫いぐせ";
    }

    @Override
    public String handUnknown(String n) {
        return "「縫う」のページで縫い目を " + n + " 本測ると、実際にどれだけ使うかがここに出ます。";
    }

    @Override
    public String handUsual() {
        return "ふつうの縫い目で計画する";
    }

    @Override
    public String homeAll(String n) {
        return "すべて（" + n + "）";
    }

    @Override
    public String homeEmpty() {
        return "作業台は空です。かごに何がありますか？";
    }

    @Override
    public String homeFirst() {
        return "最初の一枚がここに入ります";
    }

    @Override
    public String homeMade() {
        return "できたもの";
    }

    @Override
    public String homeMaking() {
        return "作っている途中";
    }

    @Override
    public String homeNothing() {
        return "まだありません。何を包むかを入れると、手持ちの布で作れるものが見られます。";
    }

    @Override
    public String homeOnTable() {
        return "作業台の上";
    }

    @Override
    public String homePhotograph() {
        return "写真を撮る";
    }

    @Override
    public String homePieces(int n) {
        return "作業台に布 " + n + " 枚";
    }

    @Override
    public String homeTitle() {
        return "何を包みますか？";
    }

    @Override
    public String key(String key) {
        return (key.equals("tab") ? "Tab" : key.equals("enter") ? "Enter" : key.equals("space") ? "スペース" : key.equals("pageDown") ? "Page Down" : key.equals("pageUp") ? "Page Up" : "Esc");
    }

    @Override
    public String keysArrows() {
        return "作業台では布から布へ、布の図ではストリップからストリップへ。結んだ品物は回します";
    }

    @Override
    public String keysEnter() {
        return "押す";
    }

    @Override
    public String keysEscape() {
        return "開いているものを閉じる";
    }

    @Override
    public String keysNumbers() {
        return "布の四つの見方、ギャラリーの布";
    }

    @Override
    public String keysPages() {
        return "裁つときと縫うときの「できた」と「戻る」。フットスイッチもこれを送ります";
    }

    @Override
    public String keysPlusMinus() {
        return "作業台と結んだ品物を近く、遠く";
    }

    @Override
    public String keysSingle() {
        return "この機器で 1 文字のキーを使う";
    }

    @Override
    public String keysSpace() {
        return "布やストリップを選ぶ。裁つときと縫うときは「できた」";
    }

    @Override
    public String keysTab() {
        return "次のものへ移る";
    }

    @Override
    public String keysTitle() {
        return "キー";
    }

    @Override
    public String keysU() {
        return "最後にしたことを取り消す";
    }

    @Override
    public String measureA4() {
        return "A4";
    }

    @Override
    public String measureEighths() {
        return "インチ、⅛ まで";
    }

    @Override
    public String measureKeep() {
        return "保存";
    }

    @Override
    public String measureLanguage() {
        return "言語";
    }

    @Override
    public String measureLetter() {
        return "レター";
    }

    @Override
    public String measureMillimetres() {
        return "センチ、1 mm まで";
    }

    @Override
    public String measurePaper() {
        return "プリンターの用紙";
    }

    @Override
    public String measureQuarters() {
        return "インチ、¼ まで";
    }

    @Override
    public String measureRuler() {
        return "手元の定規";
    }

    @Override
    public String measureSixteenths() {
        return "インチ、1⁄16 まで";
    }

    @Override
    public String safeArchive() {
        return "すべてを 1 つのファイルに";
    }

    @Override
    public String safeArchiveHow() {
        return "布の一覧、布、作った布を別の場所に保管";
    }

    @Override
    public String safeClose() {
        return "作業部屋を閉じる";
    }

    @Override
    public String safeCloseHow() {
        return "失われるものはありません";
    }

    @Override
    public String safeCopies() {
        return "毎日作られる、戻れる全体の控え";
    }

    @Override
    public String safeDevices() {
        return "このタブレットと電話";
    }

    @Override
    public String safeDevicesHow() {
        return "ほかの画面でも作業部屋を使う";
    }

    @Override
    public String safeTitle() {
        return "安全に、手の届くところに";
    }

    @Override
    public String scriptKeeping() {
        return "保存しています…";
    }

    @Override
    public String scriptKeepingMore() {
        return "保存しています。あと %d 件待っています。";
    }

    @Override
    public String scriptKeepingOne() {
        return "保存しています。あと 1 つ待っています。";
    }

    @Override
    public String scriptSilent() {
        return "作業部屋が応答しません。Hearthcloth をもう一度起動してください。保存したものは失われていません。";
    }

    @Override
    public String stage(String stage) {
        return (stage.equals("Gift") ? "品物" : stage.equals("Stash") ? "布" : stage.equals("Cloth") ? "包み" : stage.equals("Cut") ? "裁つ" : stage.equals("Sew") ? "縫う" : stage.equals("Tie") ? "結ぶ" : stage.equals("Made") ? "できた" : "引き出し");
    }

    @Override
    public String staleCloth(String name) {
        return "その間に別の画面で「" + name + "」が変更されました。ここでは何も変わっていません。";
    }

    @Override
    public String staleTitle() {
        return "2 つの画面で変更されました";
    }

    @Override
    public String threadsColour(String line, String name) {
        return "糸「" + line + "」の色がわかりません。後ろに色を書いてください。例：" + name + " #8a9a5b";
    }

    @Override
    public String threadsKept(int n) {
        return "糸 " + n + " 色を保存しました。";
    }

    @Override
    public String threadsLines() {
        return "1 行に 1 つ：名前。名前で色がわからなければ色も（old navy #27344d）";
    }

    @Override
    public String threadsMany(String longest, String most) {
        return "糸は " + most + " 色まで、1 つ " + longest + " 字までにしてください。";
    }

    @Override
    public String threadsNeed(String all, String bobbin) {
        return "糸：全部で " + all + "（糸端と 15 % の余裕を含む）。うち下糸 " + bobbin + "。";
    }

    @Override
    public String threadsSave() {
        return "保存";
    }

    @Override
    public String threadsSeam(String least, String most) {
        return "この縫い目でいちばん目立たないのは" + least + "、いちばん目立つのは" + most + "です。";
    }

    @Override
    public String threadsSeamOne(String least) {
        return "この縫い目でいちばん目立たないのは" + least + "です。";
    }

    @Override
    public String threadsSuits(String least, String most) {
        return "手持ちの糸では、この布に " + least + " がいちばん目立たず、" + most + " がいちばん目立ちます。";
    }

    @Override
    public String threadsSuitsOne(String least) {
        return "手持ちの糸では、この布に " + least + " がいちばん目立ちません。";
    }

    @Override
    public String threadsTitle() {
        return "手持ちの糸";
    }

    @Override
    public String threadsUsed() {
        return "「縫う」のページで、どの糸が布にいちばん目立たないか、いちばん目立つかがわかります。";
    }

    @Override
    public String troubleColour(String written) {
        return "「" + written + "」という色はわかりません。sage green や #8a9a5b のように書くか、空けておいてください。";
    }

    @Override
    public String troubleComeIn() {
        return "先に名前と合い言葉で入ってください。";
    }

    @Override
    public String troubleGone() {
        return "ページを開くと書き直されます。";
    }

    @Override
    public String troubleInside() {
        return "作業部屋の中で問題が起きました。何も変わっていません。もう一度お試しください。";
    }

    @Override
    public String troubleLarge(String most) {
        return "このファイルは " + most + " MB を超えています。小さいものを選んでください。";
    }

    @Override
    public String troubleNoFile() {
        return "ファイルが選ばれていないか、空です。";
    }

    @Override
    public String troubleNotWhole() {
        return "ファイルが最後まで届きませんでした。もう一度送ってください。";
    }

    @Override
    public String troubleNothing() {
        return "このアドレスには何もありません。";
    }

    @Override
    public String troublePlain() {
        return "うまくいきませんでした。";
    }

    @Override
    public String troubleTitle() {
        return "うまくいきませんでした";
    }

    @Override
    public String troubleUnread() {
        return "送られたものが読めません。ページを開き直して、もう一度送ってください。";
    }

    @Override
    public String unitCentimetres() {
        return "センチで測る";
    }

    @Override
    public String unitInches() {
        return "インチで測る";
    }

    @Override
    public String wayExample() {
        return "見本で試す";
    }

    @Override
    public String wayExampleHow() {
        return "はぎれ 60 枚と布 1 枚。ひと押しで片づきます。";
    }

    @Override
    public String wayGift() {
        return "品物から始める";
    }

    @Override
    public String wayGiftHow() {
        return "どれくらいの布が要るかがわかります";
    }

    @Override
    public String wayPhotograph() {
        return "写真に撮る";
    }

    @Override
    public String wayPhotographHow() {
        return "紙を 1 枚そばに置いて並べる";
    }

    @Override
    public String waySay() {
        return "布を 1 枚書く";
    }

    @Override
    public String waySayHow() {
        return "「緑のプリント 12 枚、10×20」。何行まとめてもかまいません";
    }
}
