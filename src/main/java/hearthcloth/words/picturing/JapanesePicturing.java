package hearthcloth.words.picturing;

/** The room of picturing in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapanesePicturing implements PicturingWords {

    @Override
    public String added(String first, String last, int n) {
        return "布 " + n + " 枚を入れました。番号 " + first + "～" + last + "。";
    }

    @Override
    public String another() {
        return "写真から";
    }

    @Override
    public String askBefore() {
        return "前に始めたもの";
    }

    @Override
    public String askChoose() {
        return "写真を選ぶ";
    }

    @Override
    public String askHow() {
        return "並べ方と撮り方";
    }

    @Override
    public String askKinds() {
        return "撮ったままの JPEG か PNG、80 MB まで。この機器の外には出ません。";
    }

    @Override
    public String askNoSize() {
        return "基準の大きさが空欄です。測って、幅 × 高さを書いてください。";
    }

    @Override
    public String askNone() {
        return "写真が選ばれていません。選ぶか、今撮ってください。";
    }

    @Override
    public String askNotWhole() {
        return "写真が最後まで届きませんでした。もう一度送ってください。";
    }

    @Override
    public String askNow() {
        return "今、写真を撮る";
    }

    @Override
    public String askPhotograph(String when) {
        return "写真：" + when;
    }

    @Override
    public String askPreview() {
        return "選んだ写真の縮小";
    }

    @Override
    public String askPrint() {
        return "測定シートを印刷";
    }

    @Override
    public String askPrintHow() {
        return "用紙に合わせず 100 % で印刷し、線に定規を当ててください。";
    }

    @Override
    public String askRead() {
        return "読み取る";
    }

    @Override
    public String askSend() {
        return "写真を送る";
    }

    @Override
    public String askSheet() {
        return "いちばん確かなのは専用の測定シートです。印は布と間違えられず、曲がりもわかります。";
    }

    @Override
    public String back() {
        return "布の一覧に戻る";
    }

    @Override
    public String deleted() {
        return "写真を削除しました。";
    }

    @Override
    public String drawBack() {
        return "最後の角を戻す";
    }

    @Override
    public String drawCloser() {
        return "近く";
    }

    @Override
    public String drawCorner() {
        return "角 %2 か所中 %1。矢印キーで動かし、Shift で大きく。";
    }

    @Override
    public String drawCross() {
        return "十字：Enter でここに角を置きます。";
    }

    @Override
    public String drawFarther() {
        return "遠く";
    }

    @Override
    public String drawFew() {
        return "角 %d か所。続けて一周してください。";
    }

    @Override
    public String drawFind() {
        return "この場所の縁を探す";
    }

    @Override
    public String drawHow() {
        return "角を順に押して一周し、最初の角をもう一度押して閉じます。近づくと正確に押せます。または真ん中を一度押して、縁を探させます。";
    }

    @Override
    public String drawKeys() {
        return "2 本指かドラッグで写真を動かします。キーボードでは、矢印キーで十字を動かし（Shift で大きく）、Enter で角を置き、Backspace で戻し、+ と – で近づき、離れます。";
    }

    @Override
    public String drawLeave() {
        return "やめる";
    }

    @Override
    public String drawMeasure() {
        return "閉じて測る";
    }

    @Override
    public String drawMost() {
        return "角 %d か所、これが上限です。閉じてください。";
    }

    @Override
    public String drawNoRim() {
        return "この場所を囲む縁が見つかりません。角を順に押してください。何も加えていません。";
    }

    @Override
    public String drawNone() {
        return "まだ角がありません。";
    }

    @Override
    public String drawOne() {
        return "角 1 か所。続けて一周するか、ここが真ん中なら縁を探させてください。";
    }

    @Override
    public String drawPicture() {
        return "描き込む写真";
    }

    @Override
    public String drawSome() {
        return "角 %d か所。続けるか、閉じてください。";
    }

    @Override
    public String fabricAbout(String faces, String nap, String washed) {
        return (faces.equals("right") ? "表がある" : "両面同じ") + (nap.equals("yes") ? "、毛並みは縦" : "") + (washed.equals("YES") ? "、水通し済み" : washed.equals("NO") ? "、水通し前" : "");
    }

    @Override
    public String fabricFaces() {
        return "表裏";
    }

    @Override
    public String fabricKeep() {
        return "保存";
    }

    @Override
    public String fabricKnown() {
        return "この布地は一覧にあります。色、表裏、毛並みは一覧のままです。";
    }

    @Override
    public String fabricLabel(String name) {
        return "布地 " + name;
    }

    @Override
    public String fabricName(String pieces) {
        return "名前、" + pieces;
    }

    @Override
    public String fabricNap() {
        return "毛並み";
    }

    @Override
    public String fabricNapAny() {
        return "なし、向きは自由";
    }

    @Override
    public String fabricNapLong() {
        return "縦";
    }

    @Override
    public String fabricNo() {
        return "水通し前";
    }

    @Override
    public String fabricRight() {
        return "表がある";
    }

    @Override
    public String fabricSame() {
        return "両面同じ";
    }

    @Override
    public String fabricUnknown() {
        return "わからない";
    }

    @Override
    public String fabricWashed() {
        return "水通し";
    }

    @Override
    public String fabricYes() {
        return "水通し済み";
    }

    @Override
    public String formCorners() {
        return "角がありません。写真の上に置いてください。";
    }

    @Override
    public String formKind() {
        return "別の種類の入力です。画面を読み込み直してください。";
    }

    @Override
    public String formNumber() {
        return "角の番号がありません。画面を読み込み直してください。";
    }

    @Override
    public String formPlace() {
        return "写真の中の場所がありません。画面を読み込み直してください。";
    }

    @Override
    public String goingDoing(String what) {
        return (what.equals("waiting") ? "待っています" : what.equals("opening") ? "写真を開いています" : what.equals("ground") ? "下地を見ています" : what.equals("sheet") ? "紙を探しています" : what.equals("pieces") ? "布を探しています" : what.equals("measuring") ? "測っています" : what.equals("laying") ? "並べています" : "済みました");
    }

    @Override
    public String goingLabel() {
        return "写真の読み取り";
    }

    @Override
    public String goingLeave() {
        return "この画面を離れてもかまいません。読み取りは続き、何も失われません。";
    }

    @Override
    public String goingLook() {
        return "もう一度見る";
    }

    @Override
    public String goingShare(String share, String what) {
        return share + " %、" + what + "…";
    }

    @Override
    public String goingStop() {
        return "やめて片づける";
    }

    @Override
    public String goingTitle() {
        return "写真を読み取っています";
    }

    @Override
    public String goingWaits(int n) {
        return "先に " + n + " 枚を読み取っています。順番を待っています。";
    }

    @Override
    public String gone() {
        return "この写真は削除されました。もう一度送ってください。";
    }

    @Override
    public String goneElsewhere() {
        return "この写真は別の窓で削除されました。";
    }

    @Override
    public String hintBlurred() {
        return "ぼけています。動かさずに、布にピントを合わせて撮り直してください。";
    }

    @Override
    public String hintDark() {
        return "とても暗いです。昼の光か、明かりを増やして、フラッシュなしで撮ってください。";
    }

    @Override
    public String hintFine() {
        return "ひと目見たところ、問題ありません。";
    }

    @Override
    public String hintNoSheet() {
        return "白い紙がはっきり見えません。全体が写り、何にも触れず、濃い色の上にありますか？";
    }

    @Override
    public String hintSlant() {
        return "25° を超えて斜めから写っています。真ん中の真上で、水平に持ってください。";
    }

    @Override
    public String howAbove() {
        return "上から。";
    }

    @Override
    public String howAboveHow() {
        return "カメラを真ん中の真上に水平に持ち、全部が写るようにします。横からの日光がいちばんです。フラッシュは使いません。";
    }

    @Override
    public String howAbovePicture() {
        return "電話機を布の真ん中の真上に水平に持っている。";
    }

    @Override
    public String howApart() {
        return "離して。";
    }

    @Override
    public String howApartHow() {
        return "布を指 1 本分ずつ離し、布が目立つ無地の場所に置きます。";
    }

    @Override
    public String howApartPicture() {
        return "無地の上に 5 枚の布が離れて置かれている。";
    }

    @Override
    public String howFlat() {
        return "平らに。";
    }

    @Override
    public String howFlatHow() {
        return "折り目やしわを伸ばし、布を重ねません。";
    }

    @Override
    public String howFlatPicture() {
        return "横から：1 枚は平ら、もう 1 枚は折れていて×印が付いている。";
    }

    @Override
    public String howSheet() {
        return "紙は平らに、重しをして。";
    }

    @Override
    public String howSheetHow() {
        return "紙かカードを布の間に、全体が見え、何にも触れないように置きます。紙が反るときは、角のすぐ内側に硬貨を置きます。";
    }

    @Override
    public String howSheetPicture() {
        return "白い紙が布の間に平らに置かれ、角ごとに硬貨がある。";
    }

    @Override
    public String kept() {
        return "保存しました。";
    }

    @Override
    public String keyDoubt() {
        return "? 確かめる";
    }

    @Override
    public String keyIn() {
        return "✓ 一覧にある";
    }

    @Override
    public String keyLeft() {
        return "× 外した";
    }

    @Override
    public String keyMeasured() {
        return "測った形";
    }

    @Override
    public String keyUsable() {
        return "使える部分";
    }

    @Override
    public String labelAdd(int n) {
        return "写真から布 " + "" + n + " 枚" + "を追加";
    }

    @Override
    public String labelAllRight() {
        return "「?」はすべて正しい";
    }

    @Override
    public String labelBring(String piece) {
        return "布 " + piece + " を戻す";
    }

    @Override
    public String labelCorner(String piece) {
        return "布 " + piece + " の角";
    }

    @Override
    public String labelDraw(String piece) {
        return "布 " + piece + " を描き入れる";
    }

    @Override
    public String labelDrop(String piece) {
        return "布 " + piece + " を外す";
    }

    @Override
    public String labelFabric(String name) {
        return "布地 " + name;
    }

    @Override
    public String labelGrain(String piece) {
        return "布 " + piece + " の縦地";
    }

    @Override
    public String labelLess(String piece) {
        return "布 " + piece + " の角を減らす";
    }

    @Override
    public String labelMore(String piece) {
        return "布 " + piece + " に角を追加";
    }

    @Override
    public String labelMove(String piece) {
        return "布 " + piece + " の布地";
    }

    @Override
    public String labelName(String name) {
        return "名前 " + name;
    }

    @Override
    public String labelNoGrain(String piece) {
        return "布 " + piece + " の縦地なし";
    }

    @Override
    public String labelNotSure(String piece) {
        return "布 " + piece + " は確かでない";
    }

    @Override
    public String labelRight(String piece) {
        return "布 " + piece + " は正しい";
    }

    @Override
    public String labelRim() {
        return "端をすべて外す";
    }

    @Override
    public String labelSplit(String piece) {
        return "布 " + piece + " を分ける";
    }

    @Override
    public String noPiece() {
        return "この写真にその布はありません。";
    }

    @Override
    public String notOpened() {
        return "この写真は開けません。";
    }

    @Override
    public String notRead() {
        return "この写真はまだ読み取っていません。";
    }

    @Override
    public String nothingToTake() {
        return "入れる布がありません。どれも一覧にあるか、外したか、まだ確かめていません。";
    }

    @Override
    public String pieceBring() {
        return "戻す";
    }

    @Override
    public String pieceBringAbout(String piece) {
        return "布 " + piece + " を戻す";
    }

    @Override
    public String pieceBy(String by, String grain) {
        return (by.equals("drawn") ? "自分で描き入れました" : by.equals("hand") ? "直した輪郭で測りました" : "縁で測りました") + (grain.equals("yes") ? "（縦地に沿って）" : "") + "。";
    }

    @Override
    public String pieceClose() {
        return "閉じる";
    }

    @Override
    public String pieceCloseAbout(String piece) {
        return "布 " + piece + " を閉じる";
    }

    @Override
    public String pieceCorner(String all, String n) {
        return "角 " + all + " か所中 " + n + "。矢印キーで動かし、Shift で大きく。";
    }

    @Override
    public String pieceDrag() {
        return "角をドラッグするか、押してから置く場所を押すか、矢印キーで動かします。";
    }

    @Override
    public String pieceEnd(String n) {
        return "線の端 " + n + "。矢印キーで動かし、Shift で大きく。";
    }

    @Override
    public String pieceFabric() {
        return "布地";
    }

    @Override
    public String pieceGrain() {
        return "縦地を示す";
    }

    @Override
    public String pieceIsIn() {
        return "一覧に入っています。ここで直すには、一覧の画面で「元に戻す」を押してください。";
    }

    @Override
    public String pieceLeaveAbout(String piece) {
        return "布 " + piece + " を一覧に入れない";
    }

    @Override
    public String pieceLess(String n) {
        return "角 " + n + " を消す";
    }

    @Override
    public String pieceLessAbout(String n) {
        return "角 " + n + " を消す";
    }

    @Override
    public String pieceLine(String doing) {
        return (doing.equals("split") ? "2 枚の境目に線を置きます。端をドラッグするか、置く場所を押します。" : "縦地に沿って線を置きます。端をドラッグするか、置く場所を押します。");
    }

    @Override
    public String pieceLineDone(String doing) {
        return (doing.equals("split") ? "ここで分ける" : "縦地はこの向き");
    }

    @Override
    public String pieceMore() {
        return "ここに角";
    }

    @Override
    public String pieceMoreAbout(String n) {
        return "辺 " + n + " の真ん中に新しい角";
    }

    @Override
    public String pieceMove() {
        return "そこへ移す";
    }

    @Override
    public String pieceNoGrain() {
        return "縦地は問わない";
    }

    @Override
    public String pieceNotSure() {
        return "やはり確かでない";
    }

    @Override
    public String pieceOwn() {
        return "別の布地";
    }

    @Override
    public String piecePicture(String piece) {
        return "布 " + piece + "、拡大";
    }

    @Override
    public String pieceSides() {
        return "辺と角";
    }

    @Override
    public String pieceSplit() {
        return "二つに分ける";
    }

    @Override
    public String pieceSquare(String degrees, String one, String same, String two) {
        return "二つの対角線は " + one + " と " + two + " です。" + (same.equals("yes") ? "写真でわかる限り同じです" : "したがって直角ではありません") + "。角は直角から " + degrees + "° 以内です。";
    }

    @Override
    public String pieceStraight() {
        return "真上から見た写真";
    }

    @Override
    public String pieceTitle(String piece) {
        return "布 " + piece;
    }

    @Override
    public String pieces(int n) {
        return "" + n + " 枚";
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
    public String redone(String what) {
        return "やり直しました：" + what + "。";
    }

    @Override
    public String refusedAgain() {
        return "角をやり直す";
    }

    @Override
    public String refusedAnew() {
        return "または撮り直す";
    }

    @Override
    public String refusedAway() {
        return "この写真を片づける";
    }

    @Override
    public String refusedFailed() {
        return "この写真は読み取れません。途中で問題が起きました。撮り直すか、JPEG で保存し直して送ってください。";
    }

    @Override
    public String refusedHundredths() {
        return "角ごとの横と縦の位置、写真の 100 分率：21 30, 44 31, 43 62, 20 60";
    }

    @Override
    public String refusedMark() {
        return "この角に印を付ける";
    }

    @Override
    public String refusedNoPieces() {
        return "基準は見つかりましたが、そばに布がありません。布が目立つ無地の場所に離して置き、撮り直してください。";
    }

    @Override
    public String refusedNoTap() {
        return "押さずに";
    }

    @Override
    public String refusedOnce() {
        return "もう一度読み取る";
    }

    @Override
    public String refusedOther() {
        return "別のものが基準でしたか？";
    }

    @Override
    public String refusedPicture(String reference) {
        return "写真：" + reference + "の角を押してください";
    }

    @Override
    public String refusedRead() {
        return "この角で読み取る";
    }

    @Override
    public String refusedReference(String sheet) {
        return (sheet.equals("MEASURING") ? "測定シート" : sheet.equals("A4") ? "A4 用紙" : sheet.equals("LETTER") ? "レター用紙" : sheet.equals("CARD") ? "カード" : "長方形");
    }

    @Override
    public String refusedTake() {
        return "別の写真を撮る";
    }

    @Override
    public String refusedTap(String n) {
        return (n.equals("none") ? "角を一つ押してください。近ければ十分です。いちばん近い縁を使います。" : n.equals("some") ? "順に、次の角を押してください。" : n.equals("three") ? "最後の角を押してください。" : "四つとも印を付けました。");
    }

    @Override
    public String refusedTitle() {
        return "読み取れませんでした";
    }

    @Override
    public String refusedTooMuch() {
        return "この写真は、この機器のメモリーには大きすぎます。画素数を減らして（1200 万画素で十分）、撮り直してください。";
    }

    @Override
    public String refusedWhere(String reference) {
        return reference + "は写っていますか？ 場所を示してください";
    }

    @Override
    public String scriptChosen() {
        return "選んだ写真：%s。「読み取る」を押してください。";
    }

    @Override
    public String scriptLarge() {
        return "%s は 80 MB を超えています。撮ったままのものか、小さいものを送ってください。";
    }

    @Override
    public String scriptNone() {
        return "まだ写真が選ばれていません。";
    }

    @Override
    public String scriptSending() {
        return "写真を送っています…";
    }

    @Override
    public String sheetA4() {
        return "A4 用紙";
    }

    @Override
    public String sheetCard() {
        return "銀行や図書館のカード";
    }

    @Override
    public String sheetLetter() {
        return "レター用紙";
    }

    @Override
    public String sheetLine() {
        return "細い線の長さ（20 cm、7 7/8 in でないとき）";
    }

    @Override
    public String sheetMeasuring() {
        return "測定シート";
    }

    @Override
    public String sheetSize() {
        return "長方形（大きさを書く）";
    }

    @Override
    public String sheetSizeExample(String unit) {
        return (unit.equals("in") ? "12 x 18" : "30 x 45");
    }

    @Override
    public String sheetSizeHow(String unit) {
        return "幅 × 高さ、" + unit;
    }

    @Override
    public String sheetWhich() {
        return "布の間に何がありますか？";
    }

    @Override
    public String sortAllMine(int n) {
        return "" + n + " 枚とも自分の布で、正しい";
    }

    @Override
    public String sortAllMineAbout() {
        return "「?」の付いた布はすべて自分の布で、正しい";
    }

    @Override
    public String sortAway() {
        return "写真を片づける";
    }

    @Override
    public String sortAwayAsk() {
        return "この写真を片づけますか？ 一覧に入れたものは残ります。残りは送り直しになります。";
    }

    @Override
    public String sortFabrics(int n) {
        return "布地 " + n + " 種類";
    }

    @Override
    public String sortFabricsHow() {
        return "似た布をまとめてあります。一つに名前を付ければ、みな同じ名前になります。一覧にある名前なら、その布地に加わります。";
    }

    @Override
    public String sortFirst() {
        return "先に見るもの";
    }

    @Override
    public String sortLead() {
        return "写真の上に輪郭と番号があります。布を押して詳しく見て、違うところを直し、布地の名前を書いてから、全部入れてください。";
    }

    @Override
    public String sortLeave() {
        return "外す";
    }

    @Override
    public String sortLeaveAbout(String piece) {
        return "布 " + piece + " を外す";
    }

    @Override
    public String sortLook() {
        return "詳しく見る";
    }

    @Override
    public String sortLookAt(String piece) {
        return "布 " + piece + " を詳しく見る";
    }

    @Override
    public String sortMaybe(String in, String piece, String there) {
        return piece + " は別の写真の布 " + there + " かもしれません" + (in.equals("yes") ? "（一覧に入っています）" : "") + "。";
    }

    @Override
    public String sortMaybeLook() {
        return "別の写真";
    }

    @Override
    public String sortMissed() {
        return "見落とされた布を描き入れる";
    }

    @Override
    public String sortRight() {
        return "正しい";
    }

    @Override
    public String sortRightAbout(String piece) {
        return "布 " + piece + " は正しい";
    }

    @Override
    public String sortRim(int n) {
        return "端にかかる " + n + " 枚を外す";
    }

    @Override
    public String sortRimAbout() {
        return "「?」が付いて写真からはみ出す布をすべて外す";
    }

    @Override
    public String sortSame() {
        return "同じ布：ここでは外す";
    }

    @Override
    public String sortSameAbout(String piece) {
        return "布 " + piece + " は別の写真と同じ：ここでは外す";
    }

    @Override
    public String sortStay(int n) {
        return "" + n + " 枚は、確かめるまで残ります。";
    }

    @Override
    public String sortTake(int n) {
        return "布 " + n + " 枚を入れる";
    }

    @Override
    public String sortTitle() {
        return "正しく読み取れましたか？";
    }

    @Override
    public String sortTold(String off, String size) {
        return size + "、" + off + "。";
    }

    @Override
    public String sortTwice() {
        return "別の写真にも写っていますか？";
    }

    @Override
    public String sortTwiceHow() {
        return "大きさ、色、柄が似ています。勝手にまとめることはありません。同じ布なら外し、似ているだけなら両方入れてください。";
    }

    @Override
    public String sortWhole(int n) {
        return "布 " + n + " 枚の輪郭と番号が付いた写真。一覧に一枚ずつあります。";
    }

    @Override
    public String stale() {
        return "この写真は、別の窓で変更されました。ここでは何も変わっていません。画面を読み込み直してください。";
    }

    @Override
    public String staleTaking() {
        return "この写真は、別の窓で変更されました。何も入れていません。画面を読み込み直してください。";
    }

    @Override
    public String state(String state) {
        return (state.equals("LOOK") ? "確かめる" : state.equals("SMALL") ? "定規には小さすぎる" : state.equals("DROPPED") ? "外した" : state.equals("IN") ? "一覧にある" : "");
    }

    @Override
    public String stays(int n, String pieces) {
        return "布 " + pieces + " は、確かめるまで写真に残ります。";
    }

    @Override
    public String taken(String piece) {
        return "布 " + piece + " はもう一覧にあります。先に一覧の画面で元に戻すか、そこで変えてください。";
    }

    @Override
    public String undo() {
        return "元に戻す";
    }

    @Override
    public String undoNothing() {
        return "元に戻すものはありません。";
    }

    @Override
    public String undone(String what) {
        return "元に戻しました：" + what + "。";
    }
}
