package hearthcloth.words.stashing;

/** The room of stashing in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseStashing implements StashingWords {

    @Override
    public String added(String first, String last, int n) {
        return (n == 1 ? "布 " + n + " 枚を加えました。番号 " + first + "。" : "布 " + n + " 枚を加えました。番号 " + first + "～" + last + "。");
    }

    @Override
    public String addedKnown(String fabric) {
        return "「" + fabric + "」はもうありました。色、表裏、毛並みはここにあるままにします。";
    }

    @Override
    public String and(String before, String next) {
        return before + "、" + next;
    }

    @Override
    public String area(String number, String unit) {
        return (unit.equals("m") ? "" + number + " m²" : "" + number + " 平方ヤード");
    }

    @Override
    public String asideBack() {
        return "戻す";
    }

    @Override
    public String asideNote() {
        return "取り分けた布は一覧に残りますが、計画には使いません。";
    }

    @Override
    public String asideSet() {
        return "取り分ける";
    }

    @Override
    public String asideTitle() {
        return "ほかに使う";
    }

    @Override
    public String backStash() {
        return "布の一覧に戻る";
    }

    @Override
    public String backTable() {
        return "作業台に戻る";
    }

    @Override
    public String chosen() {
        return "選んだもの";
    }

    @Override
    public String chosenBack() {
        return "戻す";
    }

    @Override
    public String chosenFirst() {
        return "これを先に使う";
    }

    @Override
    public String chosenFreeAlready() {
        return "もう使えるようになっています。";
    }

    @Override
    public String chosenKeep() {
        return "取っておく";
    }

    @Override
    public String chosenKeptAlready() {
        return "もう取っておいてあります。";
    }

    @Override
    public String chosenMany() {
        return "%d 枚を選択";
    }

    @Override
    public String chosenMore() {
        return "くわしく";
    }

    @Override
    public String chosenNone() {
        return "選択なし";
    }

    @Override
    public String chosenNothing() {
        return "先に作業台の布を選んでください。";
    }

    @Override
    public String chosenUsed() {
        return "使い切った";
    }

    @Override
    public String colour(String hue, String tone) {
        return (tone.equals("dark") ? "濃い" + hue : tone.equals("light") ? "明るい" + hue : tone.equals("pale") ? "淡い" + hue : tone.equals("bright") ? "鮮やかな" + hue : tone.equals("greyish") ? "灰みの" + hue : "" + hue);
    }

    @Override
    public String colourUnknown() {
        return "色はまだ不明";
    }

    @Override
    public String deedAdd(String what) {
        return what + "を加える";
    }

    @Override
    public String deedAddFile(String what) {
        return "ファイルから " + what + "を加える";
    }

    @Override
    public String deedAside(String what) {
        return what + "を取り分ける";
    }

    @Override
    public String deedBack(String what) {
        return what + "を戻す";
    }

    @Override
    public String deedChange(String what) {
        return what + "を変更";
    }

    @Override
    public String deedDelete(String what) {
        return what + "を削除";
    }

    @Override
    public String deedFabric(String fabric) {
        return "布「" + fabric + "」を変更";
    }

    @Override
    public String deedSplit(String what) {
        return what + "を二つに裁つ";
    }

    @Override
    public String deedUse(String what) {
        return what + "を使い切る";
    }

    @Override
    public String done(String deed) {
        return "完了：" + deed + "。";
    }

    @Override
    public String fabricAbout(String colour, String faces, String nap) {
        return colour + "、" + (faces.equals("RIGHT") ? "表がある" : "両面同じ") + (nap.equals("LENGTHWISE") ? "、毛並みは縦" : "");
    }

    @Override
    public String fabricAboutWrong(String colour, String faces, String nap, String wrong) {
        return colour + "、" + (faces.equals("RIGHT") ? "表がある" : "両面同じ") + "、裏は" + wrong + (nap.equals("LENGTHWISE") ? "、毛並みは縦" : "");
    }

    @Override
    public String fabricAcross() {
        return "短い辺に写る布の長さ";
    }

    @Override
    public String fabricAll() {
        return "この布すべてに";
    }

    @Override
    public String fabricAsideAll() {
        return "すべて取り分ける";
    }

    @Override
    public String fabricAsideSome(String aside, String pieces) {
        return pieces + " 枚のうち " + aside + " 枚を取り分けています。";
    }

    @Override
    public String fabricAway() {
        return "写真を外す";
    }

    @Override
    public String fabricAwaySure() {
        return "写真を外しますか？ もう一度使うには送り直す必要があります。";
    }

    @Override
    public String fabricBackAll() {
        return "すべて戻す";
    }

    @Override
    public String fabricChanged(String pieces) {
        return "変更しました：" + pieces + "。";
    }

    @Override
    public String fabricFile() {
        return "写真（PNG または JPEG）";
    }

    @Override
    public String fabricHow() {
        return "日中の光で布を平らに置いて撮ります。写真の中央が、この布の図に繰り返し使われます。";
    }

    @Override
    public String fabricIsAside() {
        return "取り分けました。計画には使いません。";
    }

    @Override
    public String fabricIsBack() {
        return "戻しました。また計画に使います。";
    }

    @Override
    public String fabricMerge() {
        return "ほかの布と同じ名前にすると一つになります。布のページで元に戻せます。";
    }

    @Override
    public String fabricNoPicture() {
        return "この布の写真はありません。";
    }

    @Override
    public String fabricNone() {
        return "その名前の布はもうありません。";
    }

    @Override
    public String fabricOwn() {
        return "自分の写真";
    }

    @Override
    public String fabricPicture(String about) {
        return about + "。図は 20 cm（約 8 インチ）分です。";
    }

    @Override
    public String fabricSavePicture() {
        return "写真を保存";
    }

    @Override
    public String fabricTiled() {
        return "写真を保存し、縮尺に合わせて並べました。";
    }

    @Override
    public String fabricUntiled() {
        return "写真を外しました。また色で表示します。";
    }

    @Override
    public String fabricWrongAcross() {
        return "写真に写る布は 1 cm から 3 m までです。左端から右端までを測ってください。";
    }

    @Override
    public String fieldColour() {
        return "色";
    }

    @Override
    public String fieldColourBlank() {
        return "色（空欄でもよい）";
    }

    @Override
    public String fieldFabric() {
        return "布";
    }

    @Override
    public String fieldFaces() {
        return "表裏";
    }

    @Override
    public String fieldFacesAre(String faces) {
        return (faces.equals("same") ? "両面同じ" : "表がある");
    }

    @Override
    public String fieldHowMany() {
        return "枚数";
    }

    @Override
    public String fieldHowManyOf(String n) {
        return n + " 枚のうち何枚";
    }

    @Override
    public String fieldLength() {
        return "耳の方向の長さ";
    }

    @Override
    public String fieldLengthIn(String unit) {
        return "耳の方向の長さ、" + unit;
    }

    @Override
    public String fieldName() {
        return "名前";
    }

    @Override
    public String fieldNap() {
        return "毛並み";
    }

    @Override
    public String fieldNapIs(String nap) {
        return (nap.equals("any") ? "なし、どの向きでも" : "縦");
    }

    @Override
    public String fieldWashed() {
        return "水通し";
    }

    @Override
    public String fieldWashedIs(String washed) {
        return (washed.equals("UNKNOWN") ? "わからない" : washed.equals("YES") ? "水通し済み" : "水通し前");
    }

    @Override
    public String fieldWidth() {
        return "幅";
    }

    @Override
    public String fieldWidthIn(String unit) {
        return "幅、" + unit;
    }

    @Override
    public String fieldWrong() {
        return "裏";
    }

    @Override
    public String fieldWrongOwn() {
        return "裏はこの色です";
    }

    @Override
    public String fileColumns() {
        return "布に関係のない列は除きました。";
    }

    @Override
    public String fileEncoding() {
        return "このファイルは UTF-8 の文字ではありません。表計算ソフトから CSV（UTF-8）で保存してください。";
    }

    @Override
    public String fileRefused() {
        return "ファイルは取り込まれませんでした。何も変わっていません。";
    }

    @Override
    public String goCloth() {
        return "この布で何が作れる？";
    }

    @Override
    public String goGift() {
        return "何を包む？";
    }

    @Override
    public String goneDelete() {
        return "削除（まちがえて入れた）";
    }

    @Override
    public String goneNoPiece() {
        return "この布はもうありません。使い切ったか削除されました。";
    }

    @Override
    public String goneTitle() {
        return "もうない";
    }

    @Override
    public String goneUndo() {
        return "どちらも布のページで元に戻せます。";
    }

    @Override
    public String groupNote(String faces, String nap, String pieces) {
        return pieces + (faces.equals("RIGHT") ? " · R" : "") + (nap.equals("LENGTHWISE") ? " · 毛並み" : "");
    }

    @Override
    public String heardAbout(String about, String length, String width) {
        return about + "。幅 " + width + "、耳の方向 " + length;
    }

    @Override
    public String heardFabrics(int fabrics, String pieces) {
        return "" + pieces + "、" + fabrics + " 種類";
    }

    @Override
    public String heardKnown(String about, String fabric) {
        return "「" + fabric + "」はもう手持ちにあり、そのままにします：" + about + "。";
    }

    @Override
    public String heardUnclear(String first, int n) {
        return "わからない行が " + n + " 行あります。最初の行：" + first;
    }

    @Override
    public String heardWhat(String fabric, String size) {
        return size + "、" + fabric;
    }

    @Override
    public String heldAside(int n) {
        return (n == 0 ? "取り分け" : "取り分け " + n + " 枚");
    }

    @Override
    public String heldFor(String cloth, int n) {
        return (n == 0 ? "「" + cloth + "」に使う" : "「" + cloth + "」に使う " + n + " 枚");
    }

    @Override
    public String heldMore(String before, String next) {
        return before + "。" + next;
    }

    @Override
    public String hue(String hue) {
        return (hue.equals("white") ? "白" : hue.equals("grey") ? "グレー" : hue.equals("black") ? "黒" : hue.equals("pink") ? "ピンク" : hue.equals("wine_red") ? "ワインレッド" : hue.equals("orange") ? "オレンジ" : hue.equals("brown") ? "茶色" : hue.equals("red") ? "赤" : hue.equals("cream") ? "クリーム色" : hue.equals("beige") ? "ベージュ" : hue.equals("yellow") ? "黄色" : hue.equals("olive_green") ? "オリーブ色" : hue.equals("green") ? "緑" : hue.equals("yellow_green") ? "黄緑" : hue.equals("teal") ? "青緑" : hue.equals("turquoise") ? "ターコイズ" : hue.equals("blue") ? "青" : "紫");
    }

    @Override
    public String lineAdd() {
        return "加える";
    }

    @Override
    public String lineAsks() {
        return "何枚、どんな布、どの大きさ。何行でもかまいません。";
    }

    @Override
    public String lineExample(String unit) {
        return (unit.equals("metric") ? "緑のプリント 12枚 10 x 20" : "緑のプリント 12枚 4 x 8");
    }

    @Override
    public String lineListening() {
        return "聞いています。押すと止まります";
    }

    @Override
    public String lineMany(String lines, String most) {
        return lines + " 行あります。一度に " + most + " 行までです。CSV ファイルならもっと入ります。";
    }

    @Override
    public String lineMend() {
        return "先に直してください。";
    }

    @Override
    public String linePhotograph() {
        return "写真に撮る";
    }

    @Override
    public String lineSay() {
        return "布を書く";
    }

    @Override
    public String lineSpeak() {
        return "話す";
    }

    @Override
    public String lineStill() {
        return "この行は下の欄に残っています。";
    }

    @Override
    public String lineUnclear(String line, String why) {
        return "「" + line + "」：" + why + "。";
    }

    @Override
    public String lot(String fabric, int n, String numbers, String size) {
        return "" + fabric + " " + size + "、" + n + " 枚、番号 " + numbers;
    }

    @Override
    public String lotWashed(String fabric, int n, String numbers, String size, String washed) {
        return "" + fabric + " " + size + "、" + washed + "、" + n + " 枚、番号 " + numbers;
    }

    @Override
    public String markClaimed() {
        return "使う予定あり";
    }

    @Override
    public String markGreys() {
        return "暗から明へ";
    }

    @Override
    public String markKept() {
        return "取り置き";
    }

    @Override
    public String markNap() {
        return "毛並みは上向き";
    }

    @Override
    public String markRight() {
        return "表がある";
    }

    @Override
    public String moreAll() {
        return "すべての布";
    }

    @Override
    public String moreByFabric() {
        return "布ごと";
    }

    @Override
    public String moreFiles() {
        return "入力欄、ファイル";
    }

    @Override
    public String moreFill() {
        return "欄に入力、またはファイルを読み込む";
    }

    @Override
    public String moreFind() {
        return "探す";
    }

    @Override
    public String moreLeast() {
        return "この大きさ以上";
    }

    @Override
    public String moreLeastExample() {
        return "4 x 8";
    }

    @Override
    public String moreSave() {
        return "CSV で保存";
    }

    @Override
    public String moreText() {
        return "布または番号";
    }

    @Override
    public String moreTitle() {
        return "その他：探す、布、ファイル";
    }

    @Override
    public String photoBegun(String day, String pieces) {
        return day + "、取り込む " + pieces;
    }

    @Override
    public String photoDay() {
        return "M月d日 HH:mm";
    }

    @Override
    public String photoNotRead(String day) {
        return day + "、まだ読み取っていない";
    }

    @Override
    public String photoNothing(String day) {
        return day + "、何も読み取れなかった";
    }

    @Override
    public String pieceAlike(int n, String numbers) {
        return "同じ布 " + n + " 枚、番号 " + numbers;
    }

    @Override
    public String pieceChange() {
        return "変更";
    }

    @Override
    public String pieceTitle(String fabric, String size) {
        return size + "、" + fabric;
    }

    @Override
    public String pieceWay(String about) {
        return about + "。長さ（耳の方向）は図の上から下です。";
    }

    @Override
    public String pieces(int n) {
        return "布 " + n + " 枚";
    }

    @Override
    public String piecesOf(String fabric, int n) {
        return "" + fabric + " " + n + " 枚";
    }

    @Override
    public String piecesSaid(String fabric, int n) {
        return "" + fabric + " " + n + " 枚";
    }

    @Override
    public String redo() {
        return "やり直す";
    }

    @Override
    public String redoNothing() {
        return "やり直すものはありません。";
    }

    @Override
    public String redone(String deed) {
        return "やり直しました：" + deed + "。";
    }

    @Override
    public String save() {
        return "保存";
    }

    @Override
    public String splitAt(String unit) {
        return "位置、" + unit;
    }

    @Override
    public String splitDivides() {
        return "まっすぐ 1 回裁って分けるのは";
    }

    @Override
    public String splitLength(String length) {
        return "長さ、" + length;
    }

    @Override
    public String splitTitle() {
        return "二つに裁つ";
    }

    @Override
    public String splitWidth(String width) {
        return "幅、" + width;
    }

    @Override
    public String staleChoose() {
        return "その間に別の画面でこの布が変更されました。何も変わっていません。もう一度見て選んでください。";
    }

    @Override
    public String staleFabric() {
        return "その間に別の画面でこの布が変更されました。ここでは何も変わっていません。";
    }

    @Override
    public String staleFabricNow(String about, String colour, String fabric, String pieces) {
        return fabric + "、" + colour + "、" + about + "。" + pieces + "。";
    }

    @Override
    public String staleGone() {
        return "もう手持ちにありません。";
    }

    @Override
    public String staleLast(String deed) {
        return "その間に別の画面で手持ちの布が変更されました。いまの最後の変更は「" + deed + "」です。何も変わっていません。もう一度見てください。";
    }

    @Override
    public String staleNothing() {
        return "その間に別の画面で手持ちの布が変更されました。取り消すものはもうありません。何も変わっていません。もう一度見てください。";
    }

    @Override
    public String staleNow(String pieces, String size) {
        return pieces + "、" + size + "。";
    }

    @Override
    public String staleNowWashed(String pieces, String size, String washed) {
        return pieces + "、" + size + "、" + washed + "。";
    }

    @Override
    public String stalePieces() {
        return "その間に別の画面でこの布が変更されました。ここでは何も変わっていません。";
    }

    @Override
    public String summary(String area, int n) {
        return "布 " + n + " 枚、" + area;
    }

    @Override
    public String summarySome(String area, String found, int n) {
        return "布 " + n + " 枚のうち " + found + " 枚、" + area;
    }

    @Override
    public String tableBefore() {
        return "前";
    }

    @Override
    public String tableChange(String fabric) {
        return "布「" + fabric + "」を変更";
    }

    @Override
    public String tableColour() {
        return "色";
    }

    @Override
    public String tableColours() {
        return "色";
    }

    @Override
    public String tableDrawn() {
        return "手持ちの布、同じ縮尺で";
    }

    @Override
    public String tableFarther() {
        return "遠く";
    }

    @Override
    public String tableGreys() {
        return "明暗";
    }

    @Override
    public String tableKeep() {
        return "保管";
    }

    @Override
    public String tableNearer() {
        return "近く";
    }

    @Override
    public String tableNext() {
        return "次";
    }

    @Override
    public String tableNone() {
        return "そのような布はありません。";
    }

    @Override
    public String tablePage(String page, String pages) {
        return page + " / " + pages + " ページ";
    }

    @Override
    public String tablePages() {
        return "布の一覧のページ";
    }

    @Override
    public String tableShowAll() {
        return "すべて見る";
    }

    @Override
    public String tableShown() {
        return "作業台の見せ方";
    }

    @Override
    public String tableTap() {
        return "布を押すと選べます。";
    }

    @Override
    public String tableUnknown() {
        return "色が未定：押して選ぶ";
    }

    @Override
    public String title() {
        return "どんな布がありますか？";
    }

    @Override
    public String titleWays() {
        return "入力欄とファイル";
    }

    @Override
    public String unchanged() {
        return "何も変わっていません。";
    }

    @Override
    public String undo() {
        return "元に戻す";
    }

    @Override
    public String undoNothing() {
        return "取り消すものはありません。";
    }

    @Override
    public String undoWhat(String deed) {
        return "元に戻す：" + deed;
    }

    @Override
    public String undone(String deed) {
        return "取り消しました：" + deed + "。";
    }

    @Override
    public String washed(String washed) {
        return (washed.equals("YES") ? "水通し済み" : washed.equals("NO") ? "水通し前" : "");
    }

    @Override
    public String waysAddFile() {
        return "ファイルを加える";
    }

    @Override
    public String waysAlso(String unit) {
        return "count、colour、faces（same か right）、nap（any か lengthwise）、washed（yes か no）も使えます。単位のない寸法は" + (unit.equals("metric") ? "センチ" : "インチ") + "です。1 行でも誤りがあれば何も加えません。";
    }

    @Override
    public String waysColumns() {
        return "fabric、width、length の列があるファイル";
    }

    @Override
    public String waysFields() {
        return "入力欄で";
    }

    @Override
    public String waysFile() {
        return "CSV ファイルで";
    }

    @Override
    public String waysHelp() {
        return "作業台の欄には何を書けますか？";
    }

    @Override
    public String waysHelpSays(String unit) {
        return "順番は自由です。枚数、呼び名、幅と長さ、色、片面が表なら「表」、向きを変えられなければ「毛並み」、「水通し済み」。幅は布を横切り、長さは耳に沿います。" + (unit.equals("metric") ? "「緑のプリント 12枚 10 x 20」「セージのリネン 3枚 30 x 30 cm」。" : "「緑のプリント 12枚 4 x 8」「セージのリネン 3枚 12 x 12 in」。") + "何行まとめて貼り付けてもかまいません。";
    }

    @Override
    public String wrongCount(String count) {
        return "「" + count + "」は枚数として読めません。整数を書くか、1 枚なら空けておいてください。";
    }

    @Override
    public String wrongHowMany(String n) {
        return n + " 枚あります。1 から " + n + " までの枚数を書いてください。";
    }

    @Override
    public String wrongLongName(String most) {
        return "名前が長すぎます。" + most + " 字まで入ります。";
    }

    @Override
    public String wrongNoName() {
        return "布の名前がありません。呼び名を書いてください。";
    }

    @Override
    public String wrongOutside(String whole) {
        return "裁つ位置が布の外です。0 より大きく " + whole + " より小さい値を書いてください。";
    }
}
