package hearthcloth.words.reporting;

/** The room of reporting in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseReporting implements ReportingWords {

    @Override
    public String areaLarge(String number, String unit) {
        return number + " " + (unit.equals("metric") ? "m²" : "平方ヤード");
    }

    @Override
    public String care(String what) {
        return "注意：" + what;
    }

    @Override
    public String giftLeast(String gift, String size, String tie) {
        return gift + "、" + tie + "：正方形の布 " + size + " 以上";
    }

    @Override
    public String giftRange(String gift, String least, String most, String size, String tie) {
        return gift + "、" + tie + "：正方形の布 " + size + " 以上（結び目の布が薄いか厚いかで " + least + "～" + most + "）";
    }

    @Override
    public String guidelineBent(String what) {
        return "ゆるめた決まり：" + what;
    }

    @Override
    public String guidelineKeeps() {
        return "なし。すべての決まりを守っています。";
    }

    @Override
    public String guidelineNearest(String folder, String number, String size, String title) {
        return number + "  " + title + "、" + size + "、" + folder + " にあり、すぐ裁って縫えます。";
    }

    @Override
    public String guidelineNone() {
        return "この布では 1 枚も作れません。";
    }

    @Override
    public String guidelineNoneKept(String name) {
        return "「" + name + "」の決まりをすべて守る布は、この手持ちからは見つかりませんでした。";
    }

    @Override
    public String guidelineScraps() {
        return "この布では中心布のまわりにストリップを回せないので、はぎれをそのままつなぎました。";
    }

    @Override
    public String kitsCloth(String fabric, int n, String size, String title) {
        return title + "、" + size + "、中心布は " + fabric + "、" + (n == 0 ? "つなぎなし" : "つなぎ " + n + " か所");
    }

    @Override
    public String kitsFree(int n, String size, String title) {
        return title + "、" + size + "、" + (n == 0 ? "つなぎなし" : "つなぎ " + n + " か所");
    }

    @Override
    public String kitsHanded(int n) {
        return "布 " + n + " 枚が一つの作品から別の作品へ残されます。だれが先に切るかは kits.pdf にあります。";
    }

    @Override
    public String kitsInTurn(String n) {
        return "順番に分けると：" + n + "。";
    }

    @Override
    public String kitsMost(String bound, String worst) {
        return "いちばん多いつなぎ：" + worst + "。この布をどう分けても " + bound + " より少なくはなりません。";
    }

    @Override
    public String kitsNothing(String name) {
        return name + "：何も作れませんでした。頼まれたとおりではありません。";
    }

    @Override
    public String kitsPart(String cloth, String folder, String name) {
        return name + "：" + cloth + "、" + folder + " に。";
    }

    @Override
    public String kitsPartOther(String cloth, String folder, String name) {
        return name + "：" + cloth + "、" + folder + " に。頼まれたとおりではありません。";
    }

    @Override
    public String kitsPrint(String file) {
        return "札、買い物リスト、先生用の一枚：" + file;
    }

    @Override
    public String kitsWithout(String n) {
        return "順番に分けたら、" + n + " 人の分がありませんでした。";
    }

    @Override
    public String planChosen(String what) {
        return "代わりに選んだこと：" + what;
    }

    @Override
    public String planCuts(String cuts, String lost, String percent, String touched) {
        return "裁断：" + cuts + "。むだ：" + lost + "（切った布 " + touched + " の " + percent + "）。";
    }

    @Override
    public String planCutsBound(String cuts, String least, String lost, String percent, String touched) {
        return "裁断：" + cuts + "。むだ：" + lost + "（切った布 " + touched + " の " + percent + "。どう計画しても " + least + " より少なくは切れません）。";
    }

    @Override
    public String planCutsBounds(String cuts, String least, String leastLost, String lost, String percent, String touched) {
        return "裁断：" + cuts + "。むだ：" + lost + "（切った布 " + touched + " の " + percent + "。どう計画しても " + least + " より少なく切ることも、むだを " + leastLost + " より少なくすることもできません）。";
    }

    @Override
    public String planGift(String gift) {
        return "贈り物：" + gift + "。";
    }

    @Override
    public String planHead(String folder, String size, String title) {
        return title + "、" + size + "、" + folder + " に";
    }

    @Override
    public String planImpossible() {
        return "手持ちの布では、この布は作れません。";
    }

    @Override
    public String planJoinsAbove(String above, String n) {
        return "つなぎ：" + n + "、最少より多くても " + above + " 多いだけです。";
    }

    @Override
    public String planJoinsFewest(String n) {
        return "つなぎ：" + n + "、これより少なくはできません。";
    }

    @Override
    public String planLarger(String length) {
        return "縫い縮みを見込んで、最小より " + length + " 大きく計画します。";
    }

    @Override
    public String planMore(String size) {
        return "似たものをもっと見るには、--size \"" + size + "\" として、ほかは布にまかせてください。";
    }

    @Override
    public String planNearest(String size, String title) {
        return "作れるいちばん近いものは " + size + "：" + title + "。";
    }

    @Override
    public String planNearestJoins(int n, String size, String title) {
        return "作れるいちばん近いものは " + size + "：" + title + "、" + (n == 0 ? "つなぎなし" : "つなぎ " + n + " か所") + "。";
    }

    @Override
    public String planNotFound() {
        return "手持ちの布でこの布を作る方法は見つかりませんでした。";
    }

    @Override
    public String planPatches(String patches, String seams) {
        return "ピース：" + patches + "。縫い目：" + seams + "。";
    }

    @Override
    public String planReady(String fabrics, String folder) {
        return folder + " にあり、すぐに裁って縫えます：" + fabrics + "。";
    }

    @Override
    public String planStash(String area, int fabrics, int pieces) {
        return "手持ちの布：" + "" + fabrics + " 種類" + " " + "" + pieces + " 枚" + "、" + area + "。";
    }

    @Override
    public String planTied(String what) {
        return "結ぶと：" + what;
    }

    @Override
    public String planTimeOut(String budget) {
        return "お知らせ：すべて試す前に時間が切れました。--budget を " + budget + " のように長くすると、よりよいものが見つかるかもしれません。";
    }

    @Override
    public String progressBest(int n, String tried) {
        return "" + tried + "。いちばん良いものはつなぎ " + n + " か所";
    }

    @Override
    public String progressLayouts(String found, String of, String tried) {
        return "計画中：並べ方 " + of + " 通りのうち " + tried + " 通りを試し、" + found + " 通りが作れます";
    }

    @Override
    public String progressTogether(int asked, String made, String most, String of, String tried) {
        return "まとめて計画中：分け方 " + of + " 通りのうち " + tried + " 通りを試しました。布 " + asked + " 枚のうち " + made + " 枚、つなぎは多くて " + most + " か所";
    }

    @Override
    public String readAll(String doubt) {
        return "すべての布：" + doubt;
    }

    @Override
    public String readColumn(String column) {
        return (column.equals("usable") ? "使える大きさ" : column.equals("shape") ? "形" : column.equals("colour") ? "色" : column.equals("look") ? "柄" : column.equals("fabric") ? "布" : "辺");
    }

    @Override
    public String readDoubts() {
        return "はっきりしないもの：";
    }

    @Override
    public String readFound(int fabrics, int pieces) {
        return "布が " + "" + pieces + " 枚" + "見つかりました。見たところ " + "" + fabrics + " 種類" + "です。";
    }

    @Override
    public String readKnow() {
        return "知っておくとよいこと：";
    }

    @Override
    public String readLeft(int n, String numbers) {
        return "はっきりしないのでファイルから除いたもの：布 " + n + " 枚（" + numbers + "）。言われたとおりに撮り直すか、--keep-doubtful を付けて一緒に書いてください。";
    }

    @Override
    public String readLittle() {
        return "小さすぎる";
    }

    @Override
    public String readLook(String figured) {
        return (figured.equals("yes") ? "柄物" : "無地");
    }

    @Override
    public String readNarrow(int n, String numbers) {
        return "幅 1 センチの長方形も裁てないので除いたもの：布 " + n + " 枚（" + numbers + "）。";
    }

    @Override
    public String readNone() {
        return "紙のそばに布が見つかりませんでした。布がはっきり見える床に置き、どの布もまわりに床が少し見えるようにしてください。";
    }

    @Override
    public String readPiece(String doubt, String number) {
        return "布 " + number + "：" + doubt;
    }

    @Override
    public String readShape(String n, String shape) {
        return (shape.equals("TRIANGLE") ? "三角形" : shape.equals("STRIP") ? "細長い布" : shape.equals("SQUARE") ? "正方形" : shape.equals("RECTANGLE") ? "長方形" : shape.equals("UNEVEN") ? "ふぞろいな四辺" : shape.equals("L") ? "L 字形" : "辺 " + n + " 本");
    }

    @Override
    public String readWrote(int fabrics, String file, int lines, int pieces) {
        return file + " を書きました：布 " + "" + pieces + " 枚" + "、" + "" + fabrics + " 種類" + "、" + "" + lines + " 行" + "。写真ではどちらが表か、耳がどこかは分かりません。両面は同じ、長い辺を丈として書いてあります。違うところはファイルを直してください。";
    }

    @Override
    public String sizeCloth(String end, String size) {
        return "仕上がり " + size + " の布で包めるいちばん大きい贈り物（結び目と端に角ごと " + end + "）：";
    }

    @Override
    public String sizeEnds(String least, String leastEnd, String most, String mostEnd, String usual) {
        return "結ぶ角に " + usual + " ずつ。" + leastEnd + " なら " + least + "、" + mostEnd + " なら " + most;
    }

    @Override
    public String sizeFits(String enough) {
        return (enough.equals("yes") ? "足りる" : "小さい");
    }

    @Override
    public String sizeGift(String gift) {
        return gift + " を包むには、仕上がりは少なくともこの大きさの正方形です：";
    }

    @Override
    public String sizeKnot() {
        return "真結び：";
    }

    @Override
    public String sizeNoKnot() {
        return "結び目なし";
    }

    @Override
    public String sizeNone(String uses) {
        return "なし。用途：" + uses;
    }

    @Override
    public String sizeNothing() {
        return "なし。小さすぎます";
    }

    @Override
    public String sizeShape(String shape) {
        return (shape.equals("cake") ? "3 : 2 : 0.8 の箱、ケーキの箱など" : shape.equals("cube") ? "立方体" : shape.equals("flat") ? "3 : 2 : 0.3 の平たい箱、たたんだシャツなど" : shape.equals("long") ? "5 : 1 : 1 の長い箱" : shape.equals("bottle") ? "高さが幅の四倍の瓶、ワインの瓶など" : shape.equals("bottles") ? "そのような瓶二本" : shape.equals("ball") ? "球" : shape.equals("books") ? "1.4 : 1 : 0.14 の本二冊" : "長さが太さの四倍の筒");
    }

    @Override
    public String sizeSold(String tie) {
        return "既製の大きさ（慣行）と、" + tie + " で包めるこの形のいちばん大きい贈り物：";
    }

    @Override
    public String sizeSteps(String tie) {
        return tie + " の結び方：";
    }

    @Override
    public String sizeTrade(String size) {
        return "次に大きい既製の大きさは " + size + " です。";
    }

    @Override
    public String sizeTradeNamed(String size, String trade) {
        return "次に大きい既製の大きさは " + size + "（" + trade + "）です。";
    }

    @Override
    public String sizeUpTo(String gift, String uses) {
        return gift + " まで。用途：" + uses;
    }

    @Override
    public String square(String side) {
        return side + " 四方";
    }

    @Override
    public String student(String n) {
        return "受講者 " + n;
    }
}
