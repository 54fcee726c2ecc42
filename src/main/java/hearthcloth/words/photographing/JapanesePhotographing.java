package hearthcloth.words.photographing;

/** The room of photographing in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapanesePhotographing implements PhotographingWords {

    @Override
    public String absent(String sheet) {
        return sheet + "が見つかりませんでした。";
    }

    @Override
    public String again(String how, String sheet) {
        return (how.equals("FREE") ? "" + sheet + "の全体が入り、周りが空くようにして撮り直してください。" : how.equals("FLAT") ? "" + sheet + "を何にも触れないように平らに置き、撮り直してください。" : "" + sheet + "を何にも触れないように平らに置き、もっと近くから撮り直してください。");
    }

    @Override
    public String doubtCutOff() {
        return "写真からはみ出しています。中に寄せるか後ろに下がって、撮り直してください。";
    }

    @Override
    public String doubtEdge() {
        return "写真の端に届いています。その先は測られません。続いているなら撮り直してください。";
    }

    @Override
    public String doubtFar() {
        return "基準の紙から遠く、寸法が確かではありません。近くに置いてください。";
    }

    @Override
    public String doubtFrayed(String mm) {
        return "端が約 " + mm + " mm ほつれています。糸を除いて測りました。確実にするには先に切りそろえてください。";
    }

    @Override
    public String doubtGround() {
        return "下の面とほとんど見分けがつきません。もっと明るいか暗いものの上に置いてください。";
    }

    @Override
    public String doubtOver(String piece) {
        return "布 " + piece + " に重なっています。片方を外さないと、同じ布が二度入ります。";
    }

    @Override
    public String doubtRim() {
        return "縁の一部が見分けられません。輪郭を確かめるか、別のものの上に置いてください。";
    }

    @Override
    public String doubtRough() {
        return "角の位置が大まかです。よく見て、それぞれ正しい位置まで動かしてください。";
    }

    @Override
    public String doubtSheetAlike(String sheet) {
        return "これほど斜めだと A4 とレターは見分けがつきません。" + sheet + "で合っているか確かめるか、真上から撮ってください。";
    }

    @Override
    public String doubtSheetFaint(String sheet) {
        return sheet + "が下の面とほとんど見分けがつきません。すべての寸法がこれで決まります。輪郭が合っているか確かめるか、もっと暗いか色のあるものの上に置いて撮り直してください。";
    }

    @Override
    public String doubtSheetSkew(String share, String sheet) {
        return sheet + "の縦横の比が " + share + " % ずれて見えます。一部が隠れているか、平らでないか、小さすぎるのかもしれません。すべての寸法がこれで決まります。平らに、隠れないように置き、もっと近くから撮り直してください。";
    }

    @Override
    public String doubtSheetTapped(String share, String sheet) {
        return "押した" + sheet + "の縦横の比が " + share + " % ずれて見えます。角が外れているか、平らでないのかもしれません。すべての寸法がこれで決まります。";
    }

    @Override
    public String doubtSheetUnseen(String sheet, int sides) {
        return sheet + "の" + "見えない辺があるので" + "、押した所にあるものとしました。すべての寸法がこれで決まります。";
    }

    @Override
    public String doubtSheetsApart(String share) {
        return "写っているシートどうしが合いません。一方で測ると、もう一方より全体が約 " + share + " % 大きくなります。平らに、何も重ならないように置くか、一枚だけ残して、撮り直してください。";
    }

    @Override
    public String doubtSides() {
        return "辺がよく分かりません。輪郭を確かめてください。";
    }

    @Override
    public String doubtTwo() {
        return "触れ合うか重なった二枚の布かもしれません。離して置くか、ここで分けてください。";
    }

    @Override
    public String doubtUneven() {
        return "縁がでこぼこしています。輪郭を確かめてください。";
    }

    @Override
    public String goneFabric() {
        return "その布は、この写真にはもうありません。";
    }

    @Override
    public String gonePiece(String piece) {
        return "この写真に布 " + piece + " はもうありません。";
    }

    @Override
    public String kept(String why) {
        return (why.equals("LARGE") ? "この画像は 20 MB を超えています。小さくしてもう一度試してください。" : why.equals("DAMAGED") ? "この画像は壊れています。PNG か JPEG で書き出し直してください。" : why.equals("KIND") ? "PNG でも JPEG でもありません。どちらかで書き出してください。" : "この画像は 50 メガピクセルを超えています。小さくしてもう一度試してください。");
    }

    @Override
    public String noMarks() {
        return "測定シートが見つかりません。四角い印が三つも見分けられません。布の間に平らに、隠れないように置き、もっと近くから、はっきりと真上から撮ってください。";
    }

    @Override
    public String noRival(String sheet) {
        return sheet + "かもしれないものが二つあります。一つは形が合い、もう一つは同じくらい白いのですが、曲がっているか、隠れているか、陰か、切れています。正しい方の四つの角を押すか、もう一方を除いて撮り直してください。";
    }

    @Override
    public String noRound(String sheet) {
        return "押した四つの角が一つの形を囲んでいません。" + sheet + "の周りを順に押し直してください。";
    }

    @Override
    public String noShadow(String sheet) {
        return sheet + "かもしれないものが二つあります。大きい方も同じように白いのですが、影の縁がかかっています。もう一方を除くか、紙全体を光か日陰に置いて、撮り直してください。";
    }

    @Override
    public String noShare(String share, String sheet) {
        return "四つの角の間の比が、" + sheet + "としては " + share + " % ずれています。どの紙かを選ぶか、角を押し直してください。";
    }

    @Override
    public String noSizes(String sheet) {
        return sheet + "かもしれないものが二つあり、大きさが違います。同じ形の布を写真から除いて、撮り直してください。";
    }

    @Override
    public String noTwin(String sheet, String twin) {
        return "そこにあるのは" + sheet + "ではなく" + twin + "のようです。" + twin + "を選ぶか、" + sheet + "を置いて撮り直してください。";
    }

    @Override
    public String notePicture(String numbers) {
        return "写真の中：" + numbers;
    }

    @Override
    public String outlineCorner() {
        return "この布に、その角はもうありません。";
    }

    @Override
    public String outlineFault(String fault, String most) {
        return (fault.equals("FEW") ? "布の角は三つ以上です。もう一つ置いてください。" : fault.equals("OUTSIDE") ? "角が写真の外にあります。戻して、写真の上に置いてください。" : fault.equals("CROSSING") ? "二つの辺が交わっています。最後の角を戻し、布の周りを順に置いてください。" : fault.equals("SMALL") ? "そこからは 1 cm × 1 cm も切り取れません。布はそれより大きいものです。" : "角は " + most + " 個までです。いくつか戻し、あとで辺に足してください。") + "何も加えていません。";
    }

    @Override
    public String outlineGrain() {
        return "線が短すぎて向きが分かりません。何も変わっていません。";
    }

    @Override
    public String outlineNone() {
        return "それでは輪郭が残りません。角は三つ以上必要で、反対側の縁を越えてはいけません。何も変わっていません。";
    }

    @Override
    public String outlineSplit(String piece) {
        return "線が布 " + piece + " を二つに分けていません。端から端まで引いてください。何も変わっていません。";
    }

    @Override
    public String pictureDamaged() {
        return "写真が壊れています。JPEG で保存し直して送ってください。";
    }

    @Override
    public String pictureHeic() {
        return "HEIC（または AVIF）の写真なので、ここでは読めません。JPEG で送ってください。カメラの設定で JPEG か最も互換性の高い形式を選んで撮り直すか、開いて JPEG で保存または共有してください。";
    }

    @Override
    public String pictureKind() {
        return "JPEG または PNG の写真ではありません。どちらかで送ってください。";
    }

    @Override
    public String pictureLarge() {
        return "ファイルが 80 MB を超えています。電話で撮ったまま送ってください。";
    }

    @Override
    public String picturePixels(String height, String mega, String width) {
        return "写真が " + width + " × " + height + " 画素（" + mega + " メガピクセル）です。読めるのは 50 までです。もっと小さいものを送ってください。";
    }

    @Override
    public String pictureScans() {
        return "この JPEG はカメラでは作られない形です。書き出し直して、もう一度送ってください。";
    }

    @Override
    public String pictureSmall(String height, String width) {
        return "写真が " + width + " × " + height + " 画素しかありません。測るには 2 メガピクセル以上が必要です。元の大きさで送ってください。";
    }

    @Override
    public String pictureUnread() {
        return "写真が壊れているか、ここでは読めない種類です。JPEG で保存し直して送ってください。";
    }

    @Override
    public String referenceCorner(String corner) {
        return "「" + corner + "」は角ではありません。横と縦のどこにあるかを、写真に対する割合で書いてください。例: 0.21 0.30";
    }

    @Override
    public String referenceCorners(String count) {
        return "紙の角は四つですが、" + count + " 個書かれています。四つを順に、読点かコンマで区切って書いてください。";
    }

    @Override
    public String referenceLine() {
        return "測定シートの線は約 20 cm（7 7/8 in）のはずです。両端の印の間の細い線をもう一度測ってください。";
    }

    @Override
    public String referenceSmall(String size) {
        return size + " は基準にするには小さすぎます。2 cm 以上のものを使ってください。";
    }

    @Override
    public String seenCut(String where, String white, String why) {
        return "写真の" + (where.equals("MIDDLE") ? "真ん中" : where.equals("UPPER_LEFT") ? "左上" : where.equals("UPPER") ? "上" : where.equals("UPPER_RIGHT") ? "右上" : where.equals("LEFT") ? "左" : where.equals("RIGHT") ? "右" : where.equals("LOWER_LEFT") ? "左下" : where.equals("LOWER") ? "下" : "右下") + "に" + (white.equals("yes") ? "白いもの" : "四つの角があるもの") + "がありますが、" + (why.equals("CUT") ? "写真からはみ出しているか、はみ出すものに触れています" : why.equals("RIM") ? "縁がまっすぐな四辺ではありません。何かが触れているか載っているか、折れています" : "小さすぎるか、はっきりしないので、基準にできません") + "。";
    }

    @Override
    public String seenNothing(String white) {
        return "下の面から浮き出て見える、" + (white.equals("yes") ? "白くて四辺がまっすぐなもの" : "四辺がまっすぐなもの") + "がありません。布の間に平らに、全体が入るように、何にも触れないように置き、真上から撮ってください。";
    }

    @Override
    public String seenSkew(String share, String sheet, String where, String white) {
        return "写真の" + (where.equals("MIDDLE") ? "真ん中" : where.equals("UPPER_LEFT") ? "左上" : where.equals("UPPER") ? "上" : where.equals("UPPER_RIGHT") ? "右上" : where.equals("LEFT") ? "左" : where.equals("RIGHT") ? "右" : where.equals("LOWER_LEFT") ? "左下" : where.equals("LOWER") ? "下" : "右下") + "に" + (white.equals("yes") ? "白いもの" : "四つの角があるもの") + "がありますが、縦横の比が" + sheet + "と " + share + " % ずれています。それで合っているなら、曲がっているか一部が隠れています。何にも触れないように平らに置いて撮り直してください。違うなら、何かを選んでください。";
    }

    @Override
    public String seenWhite(String sheet) {
        return "写真の大部分が明るく、ほとんど色がありません。" + sheet + "が写真いっぱいにあるか、同じくらい白いものの上にあります。もっと暗いか色のあるものの上に、布を周りに置いて、何にも触れないようにして撮り直してください。";
    }

    @Override
    public String sheet(String sheet) {
        return (sheet.equals("MEASURING") ? "測定シート" : sheet.equals("A4") ? "A4 の紙" : sheet.equals("LETTER") ? "レターの紙" : sheet.equals("CARD") ? "カード" : "長方形");
    }
}
