package hearthcloth.words.printing;

/** The room of printing in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapanesePrinting implements PrintingWords {

    @Override
    public String altCut(String fabric, int n, String piece, String size) {
        return "布 " + piece + "、" + fabric + "、" + size + "、裁断 " + n + " 回";
    }

    @Override
    public String altFace(String face, String size, String title) {
        return (face.equals("front") ? "正面：" + title + "、" + size : "背面：" + title + "、" + size);
    }

    @Override
    public String altPatches(int n) {
        return "ピース " + n + " 枚";
    }

    @Override
    public String altStep(String added, String step, String work) {
        return "手順 " + step + "：縫う前の" + work + "と" + added + "、正面が上";
    }

    @Override
    public String bagAbout(String size, String title) {
        return title + "、" + size + "。";
    }

    @Override
    public String bagFor(String gift, String size, String title) {
        return title + "、" + size + "。包むもの: " + gift + "。";
    }

    @Override
    public String bagHow() {
        return "破線に沿って切り、書かれた布と一緒にそれぞれの袋に入れてください。寸法は幅 × 長さ、長さは耳に沿った向きです。";
    }

    @Override
    public String bagPiece(String patches, String piece, String size) {
        return "布 " + piece + "、" + size + "（" + patches + "）";
    }

    @Override
    public String bagSlips() {
        return "袋に入れる紙";
    }

    @Override
    public String bagTitle(String n, String name) {
        return "袋 " + n + "、" + name;
    }

    @Override
    public String beforeTitle() {
        return "切る前に";
    }

    @Override
    public String boxMeasure() {
        return "今の寸法";
    }

    @Override
    public String boxWay() {
        return "幅 × 高さ、正面が上";
    }

    @Override
    public String cardMeasures(String size) {
        return "寸法 " + size + "。";
    }

    @Override
    public String cardOthers(int n) {
        return "ほかも同じように縫います。";
    }

    @Override
    public String cardThick(String places) {
        return "厚いところ：" + places + "。ゆっくり縫います。";
    }

    @Override
    public String careTitle() {
        return "注意";
    }

    @Override
    public String chosenTitle() {
        return "代わりに選んだこと";
    }

    @Override
    public String coloursEyes(String eyes) {
        return (eyes.equals("protan") ? "赤が見えにくい目で見た表" : eyes.equals("deutan") ? "緑が見えにくい目で見た表" : "青が見えにくい目で見た表");
    }

    @Override
    public String coloursGrey(String shade) {
        return (shade.equals("black") ? "黒" : shade.equals("dark") ? "濃い灰色" : shade.equals("middle") ? "灰色" : shade.equals("light") ? "薄い灰色" : "白");
    }

    @Override
    public String coloursLeast() {
        return "いちばん目立たない";
    }

    @Override
    public String coloursLike(String fabric) {
        return fabric + "のような色";
    }

    @Override
    public String coloursMost() {
        return "いちばん目立つ";
    }

    @Override
    public String coloursSeams() {
        return "縫い目";
    }

    @Override
    public String coloursThread() {
        return "縫い目ごとの糸の色。いちばん目立たない糸は縫い目のむらを隠し、いちばん目立つ糸は模様になります。";
    }

    @Override
    public String coloursTitle() {
        return "色";
    }

    @Override
    public String coloursValues() {
        return "明るさを五段階で";
    }

    @Override
    public String corner() {
        return "角の一つ";
    }

    @Override
    public String cornerFirst(String length) {
        return "1 回目の折り目、裁ち端から " + length;
    }

    @Override
    public String cornerLast(String length) {
        return "最後の折り目、裁ち端から " + length + "：仕上がりの辺";
    }

    @Override
    public String cornerLife() {
        return "角の一つ、実物大";
    }

    @Override
    public String cornerMitre() {
        return "額縁：角を半分に折って縫った線";
    }

    @Override
    public String cornerOff() {
        return "切り落とした角";
    }

    @Override
    public String cutHead(String row, String scale, String unit, String washed) {
        return "布の一覧 " + row + " 行目" + (washed.equals("YES") ? "、水通し済み" : washed.equals("NO") ? "、水通し前" : "") + "。縮尺 " + scale + "、単位は" + (unit.equals("metric") ? "センチ" : "インチ") + "。";
    }

    @Override
    public String cutHow() {
        return "番号の順に切ります。番号は切る線の上に、寸法とともにあります。矢じりは、測り始める辺を指します。残り布は薄く描き、名前を付けてあります。取っておきます。×印は小さすぎるはぎれです。どの図も縦地が上下です。「90 度回す」とあるピースは、布に置く向きから 90 度回して描いてあります。";
    }

    @Override
    public String cutLeft(String left) {
        return "残り：" + left + "。";
    }

    @Override
    public String cutNothing() {
        return "切りません。布をそのまま使います。";
    }

    @Override
    public String cutSheet(int n, String title) {
        return "" + title + "。布 " + n + " 枚。番号の順に切ります。丸の矢じりは、測り始める辺を指します。";
    }

    @Override
    public String cutTitle() {
        return "裁断";
    }

    @Override
    public String cutWhole() {
        return "そのまま使う布";
    }

    @Override
    public String drawn(String scale) {
        return "縮尺 " + scale + "。";
    }

    @Override
    public String faceDrawn(String face, String scale) {
        return face + "、縮尺 " + scale;
    }

    @Override
    public String faceFells(String face) {
        return (face.equals("front") ? "正面（倒した縫い代と縁が見える面）" : "背面（倒した縫い代と縁が見える面）");
    }

    @Override
    public String faceName(String face) {
        return (face.equals("front") ? "正面" : "背面");
    }

    @Override
    public String faceSheet(String scale, String size, String title) {
        return title + "。縁まで仕上がり " + size + "。縮尺 " + scale + "。";
    }

    @Override
    public String figureCuts() {
        return "裁断";
    }

    @Override
    public String figureFinished() {
        return "仕上がり";
    }

    @Override
    public String figureJoins() {
        return "つなぎ";
    }

    @Override
    public String figureLost() {
        return "むだ";
    }

    @Override
    public String figurePatches() {
        return "ピース";
    }

    @Override
    public String figureSeams() {
        return "縫い目";
    }

    @Override
    public String figureThread() {
        return "糸";
    }

    @Override
    public String grain() {
        return "縦地";
    }

    @Override
    public String grainNap() {
        return "縦地、毛並みはこちら";
    }

    @Override
    public String hemTitle() {
        return "縁の始末";
    }

    @Override
    public String item(String topic, String words) {
        return topic + "：" + words;
    }

    @Override
    public String kitsBuy(String name, String what) {
        return name + ": " + what + "。";
    }

    @Override
    public String kitsEach(String shared) {
        return (shared.equals("yes") ? "布はそれぞれ一つの袋にだけ入ります。二人で分けるものは、一人目が先に切ります。" : "布はそれぞれ一つの袋にだけ入り、だれも待たずにすみます。");
    }

    @Override
    public String kitsFirst(String of, String piece, String size, String who) {
        return who + " が布 " + of + " を先に切り、残りの " + size + " が布 " + piece + " になります。";
    }

    @Override
    public String kitsHanded(String of, String piece, String who) {
        return "布 " + piece + " は " + who + " が布 " + of + " から残したものです。" + who + " のあとに切ってください。";
    }

    @Override
    public String kitsLacks(String made, String name, String why) {
        return name + ": " + (made.equals("no") ? "何も作れませんでした。" : "望みどおりではありません。") + why;
    }

    @Override
    public String kitsNearest() {
        return "作れるもののうちいちばん近いものです。買い物の一覧を見てください。";
    }

    @Override
    public String kitsQuarters(int n) {
        return "ファットクォーター " + n + " 枚";
    }

    @Override
    public String kitsRunning(int n) {
        return "布 " + n + " 枚分のキット";
    }

    @Override
    public String kitsTitle() {
        return "キット";
    }

    @Override
    public String kitsWay(String goods, String unit) {
        return (goods.equals("FAT_QUARTERS") ? "" + (unit.equals("in") ? "ファットクォーターで（18 × 20 in 以上）" : "ファットクォーターで（45 × 50 cm 以上）") : goods.equals("NARROW_BOLT") ? "" + (unit.equals("in") ? "幅 44 in の反物から（耳の間 40 in）" : "幅 110 cm の反物から（耳の間 102 cm）") : "" + (unit.equals("in") ? "幅 60 in の反物から（耳の間 58 in）" : "幅 150 cm の反物から（耳の間 145 cm）"));
    }

    @Override
    public String kitsWorst(int n) {
        return (n == 0 ? "はいだストリップは一つもありません。" : "はぎは一人 " + n + " か所までです。");
    }

    @Override
    public String kitsYards(String n, String way) {
        return n + " ヤード" + "";
    }

    @Override
    public String labelHearth() {
        return "中心";
    }

    @Override
    public String labelOffcut(String number) {
        return "残り布 " + number;
    }

    @Override
    public String legendFell() {
        return "倒した縫い代、少し濃く";
    }

    @Override
    public String legendStitches() {
        return "縫い目の列";
    }

    @Override
    public String legendUnknown(String fabric) {
        return fabric + "（色はまだ不明）";
    }

    @Override
    public String legendWrong() {
        return "斜線：生地の裏";
    }

    @Override
    public String lostJoins(int n) {
        return "この布をつなぎ " + n + " か所より少なく作る計画はありません。";
    }

    @Override
    public String lostLeast(String least, String touched) {
        return "むだ：再び使うには小さすぎるはぎれ。切る布は " + touched + " です。この布を " + least + " より少なく作る計画はありません。";
    }

    @Override
    public String lostLeastLost(String least, String lost, String touched) {
        return "むだ：再び使うには小さすぎるはぎれ。切る布は " + touched + " です。この布を " + least + " より少なく、またはむだを " + lost + " より少なく作る計画はありません。";
    }

    @Override
    public String lostTouched(String touched) {
        return "むだ：再び使うには小さすぎるはぎれ。切る布は " + touched + " です。";
    }

    @Override
    public String matStays() {
        return "残り";
    }

    @Override
    public String matTitle(String all, String made, String piece) {
        return "マットの上の布 " + piece + "、" + all + " か所中 " + made + " か所裁断済み";
    }

    @Override
    public String measuringPrint() {
        return "100 % で、ページに合わせずに印刷し、布の間に平らに置いてください。";
    }

    @Override
    public String measuringRuler() {
        return "細い線に定規を当ててください。20 cm（7 7/8 in）のはずです。";
    }

    @Override
    public String measuringSay() {
        return "違うときは、写真を送るときに長さを書いてください。";
    }

    @Override
    public String measuringTitle() {
        return "測定シート";
    }

    @Override
    public String needsTitle() {
        return "用意するもの";
    }

    @Override
    public String netFold() {
        return "前に置いたとおり、内側が上です。線で折ります。線が集まるところは布が寄るところなので、紙をしわにするか、ねじります。";
    }

    @Override
    public String netHow(String gift, String scale, String size, String small) {
        return size + " の布で包むもの：" + gift + "。縮尺 " + scale + "。切り抜くと、厚紙で作ったこれを包めます：" + small + "。";
    }

    @Override
    public String netSquare(String side) {
        return "一辺 " + side;
    }

    @Override
    public String netTitle(String tie) {
        return "折り線：" + tie;
    }

    @Override
    public String page(String all, String number) {
        return number + "／" + all + " ページ";
    }

    @Override
    public String pictureCuts(String name) {
        return "裁ち図：" + name;
    }

    @Override
    public String pictureDone() {
        return "結び上がり";
    }

    @Override
    public String pictureKnot() {
        return "真結び";
    }

    @Override
    public String pictureNet() {
        return "展開図、内側が上。線に沿って折ります";
    }

    @Override
    public String pictureTied() {
        return "結んだ贈り物を上、正面、角から見た図";
    }

    @Override
    public String pictureTying() {
        return "結ぶ途中";
    }

    @Override
    public String piecesDone(String piece) {
        return piece + "、裁断済み";
    }

    @Override
    public String piecesHow(String unit) {
        return "布ごとに、そこから切るもの。寸法は幅 × 長さ、単位は" + (unit.equals("metric") ? "センチ" : "インチ") + "。2 つ目の数が縦地です。";
    }

    @Override
    public String piecesTitle() {
        return "布とピース";
    }

    @Override
    public String pinHatched() {
        return "どの図でも斜線：生地の裏。";
    }

    @Override
    public String pinLies(String added, String face, String work) {
        return added + "が" + (face.equals("front") ? "正面" : "背面") + "を上にして重なっています。下：" + work + "。";
    }

    @Override
    public String pinSticksOut(String length, String wrapping) {
        return wrapping + "が " + length + " 出ています。この広い縫い代がもう一方をくるみます。";
    }

    @Override
    public String pinStitching() {
        return "破線が縫う線です。まち針は押さえに届く前に抜きます。";
    }

    @Override
    public String pinTitle() {
        return "手順 1、まち針でとめたところ";
    }

    @Override
    public String seamTitle() {
        return "縫い目";
    }

    @Override
    public String sectionFold() {
        return "折り込んで縫う";
    }

    @Override
    public String sectionOpen() {
        return "開いてアイロン";
    }

    @Override
    public String sectionStitch() {
        return "縫う";
    }

    @Override
    public String sectionWrapped(String name) {
        return name + "、くるまれる";
    }

    @Override
    public String sectionWraps(String name) {
        return name + "、くるむ";
    }

    @Override
    public String sewTitle() {
        return "縫う";
    }

    @Override
    public String shopNoWay() {
        return "一種類の布をどれだけ足しても、作る方法が見つかりませんでした。";
    }

    @Override
    public String shopNone() {
        return "ありません。どの布も手持ちから裁てます。糸と道具は、それぞれの手順書にあります。";
    }

    @Override
    public String shopTitle() {
        return "買い物の一覧";
    }

    @Override
    public String shopWays() {
        return "次のどれか一つで、ほかの残りと合わせて足ります。どれも実際に計画してみました。買った布は、裁つ前に水通しをしてアイロンをかけてください。";
    }

    @Override
    public String slipsHow() {
        return "点線で切り離します。ピースを切ったらすぐ、布の正面になる側にとめます。矢印は布の上を指します。";
    }

    @Override
    public String slipsRunning(String title) {
        return title + "、ピース札";
    }

    @Override
    public String slipsSize(String size) {
        return size + "、裁断寸法";
    }

    @Override
    public String slipsTitle() {
        return "ピース札";
    }

    @Override
    public String slipsTop() {
        return "上";
    }

    @Override
    public String slipsUp(String showing) {
        return (showing.equals("RIGHT") ? "表を上に" : showing.equals("WRONG") ? "裏を上に" : "どちらの面でも");
    }

    @Override
    public String square(String side) {
        return "この正方形は一辺 " + side + " です。違うときは 100 % で印刷し直します（「用紙に合わせる」は使いません）。紙の上で測れるのは「実物大」とあるところだけです。ほかは書いてある寸法を使います。";
    }

    @Override
    public String stepTrim() {
        return "切る";
    }

    @Override
    public String stepWraps() {
        return "くるむ";
    }

    @Override
    public String tableAlone(String alone, String measure) {
        return measure + "、単独 " + alone;
    }

    @Override
    public String tableHow() {
        return "縫い目はどれも手順 1 のように縫います。「本体」とは、それまでに縫い合わせた全体です。寸法は幅 × 高さ、正面が上。厚いところはゆっくり縫うか、はずみ車を回します。";
    }

    @Override
    public String tableJoin(String n, String what) {
        return what + "（先に " + n + " 枚をつなぐ）";
    }

    @Override
    public String tableMeasures() {
        return "寸法";
    }

    @Override
    public String tableNewWraps() {
        return "つないだストリップでは、新しい部分が前の部分をくるみます。";
    }

    @Override
    public String tableOldWraps() {
        return "つないだストリップでは、前の部分が次の部分をくるみます。";
    }

    @Override
    public String tableSew() {
        return "縫うもの";
    }

    @Override
    public String tableStep() {
        return "手順";
    }

    @Override
    public String tableThick() {
        return "厚いところ";
    }

    @Override
    public String tableTitle() {
        return "すべての縫い目（順番どおり）";
    }

    @Override
    public String tableWraps() {
        return "くるむ側";
    }

    @Override
    public String teacherAbout(int joins, int patches, int pieces, String size, String title) {
        return title + "、" + size + ": " + "布 " + pieces + " 枚" + "から" + "ピース " + patches + " 枚" + (joins == 0 ? "" : "、はぎ " + joins + " か所") + "。";
    }

    @Override
    public String teacherDot() {
        return "布の点は、いちばん多く重なる所です。そこを縫うときは、スチームで押さえ、はずみ車を手で回してもらってください。";
    }

    @Override
    public String teacherNoCross() {
        return "交わる縫い目はありません。";
    }

    @Override
    public String teacherThick(int count, int places, String plies, String steps) {
        return "いちばん厚い所: " + "" + places + " か所" + "で " + plies + " 枚、" + "手順 " + steps + " で縫います。";
    }

    @Override
    public String teacherTitle() {
        return "教える人へ";
    }

    @Override
    public String thickTitle() {
        return "厚くなるところ";
    }

    @Override
    public String threadTitle() {
        return "糸";
    }

    @Override
    public String tieCare() {
        return "結ぶときの注意";
    }

    @Override
    public String tieKnot() {
        return "真結び";
    }

    @Override
    public String tieTitle() {
        return "結ぶ";
    }

    @Override
    public String tiedCare() {
        return "結んだあとの注意";
    }

    @Override
    public String tiedHow(String suited, String tie) {
        return tie + "。向くもの：" + suited + "。矢印の先が、今の角の場所です。";
    }

    @Override
    public String tiedHowNamed(String suited, String tie, String trade) {
        return tie + "（" + trade + "）。向くもの：" + suited + "。矢印の先が、今の角の場所です。";
    }

    @Override
    public String tiedJust(String reason, String size) {
        return "この布（" + size + "）でちょうど足ります（" + reason + "）。";
    }

    @Override
    public String tiedKnot() {
        return "結び目";
    }

    @Override
    public String tiedLeaves(String reason, String size, String spare) {
        return "この布（" + size + "）は、計画より " + spare + " 余裕があります（" + reason + "）。";
    }

    @Override
    public String tiedNear() {
        return "結び目の近く（手のひらほど）では実際の布はしわになり、垂れた端は自由に落ちます。";
    }

    @Override
    public String tiedNext(String size, String uses) {
        return "次に大きい既製サイズは " + size + "、用途：" + uses + "。";
    }

    @Override
    public String tiedNextNamed(String size, String trade, String uses) {
        return "次に大きい既製サイズは " + size + "（" + trade + "）、用途：" + uses + "。";
    }

    @Override
    public String tiedSheet(String gift, String tie) {
        return "結んだ品物：" + gift + "、" + tie;
    }

    @Override
    public String tiedShort() {
        return "角が届かないとき";
    }

    @Override
    public String tiedShows() {
        return "見えるもの";
    }

    @Override
    public String tiedSure() {
        return "大きさの確かさ";
    }

    @Override
    public String tiedTitle() {
        return "結んだ品物";
    }

    @Override
    public String tiedTying() {
        return "結び方";
    }

    @Override
    public String toolsEach(String tool) {
        return tool + "。";
    }

    @Override
    public String toolsTitle() {
        return "道具";
    }

    @Override
    public String view(String view) {
        return (view.equals("above") ? "上から" : view.equals("front") ? "前から" : view.equals("right") ? "右から" : view.equals("spine") ? "背から" : "斜めから");
    }

    @Override
    public String washingTitle() {
        return "洗濯";
    }
}
