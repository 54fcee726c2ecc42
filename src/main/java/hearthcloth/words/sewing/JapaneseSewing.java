package hearthcloth.words.sewing;

/** The room of sewing in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseSewing implements SewingWords {

    @Override
    public String about(String length) {
        return "約 " + length;
    }

    @Override
    public String beforeGrain() {
        return "布はすべて縦地（耳の方向）を上下に向けて置きます。";
    }

    @Override
    public String beforeMeasure(String length) {
        return "布をすべて測ります。この計画より " + length + " を超えて小さいものがあれば、実際の大きさで計画し直します。";
    }

    @Override
    public String beforePin() {
        return "ピースを切ったら、すぐ札をとめます。布の正面になる側に、札の上を布の上に向けてとめます。";
    }

    @Override
    public String beforePress() {
        return "布はすべてアイロンで平らにし、冷まします。耳が残っていれば切り落とし、測り直します。";
    }

    @Override
    public String beforeStraight() {
        return "裁断はどれも辺から測るので、まず左と上の辺をまっすぐ直角に切ります。ピースが布の端まで必要なところでは、糸 1～2 本だけ切り落とします。";
    }

    @Override
    public String blockBegins(String first, String last, String letters) {
        return "ブロック " + letters + " を始めます。" + first + " から " + last + " までを正面の図のとおりに並べます。ほかには何も要りません。";
    }

    @Override
    public String blockDone(String letters) {
        return "ブロック " + letters + " ができました。";
    }

    @Override
    public String briefSew(String added, String part, String side, String work) {
        return added + "を" + work + "の" + (side.equals("left") ? "左" : side.equals("right") ? "右" : side.equals("top") ? "上" : "下") + "の" + (part.equals("end") ? "端" : "辺") + "に、手順 1 のように縫います。";
    }

    @Override
    public String briefSticksOut(String length, String wrapping) {
        return wrapping + "がくるみます。辺を " + length + " 出します。";
    }

    @Override
    public String briefStitch(String top) {
        return "上の辺から " + top + " のところを縫います。手順 1 のように仕上げます。";
    }

    @Override
    public String briefTurn(String added, String part, String side, String work) {
        return added + "を" + (side.equals("left") ? "返して" : side.equals("right") ? "返して" : side.equals("top") ? "下へ返して" : "上へ返して") + work + "の" + (side.equals("left") ? "左" : side.equals("right") ? "右" : side.equals("top") ? "上" : "下") + "の" + (part.equals("end") ? "端" : "辺") + "に重ねます。";
    }

    @Override
    public String briefWraps(String wrapping) {
        return wrapping + "がくるみます。";
    }

    @Override
    public String careChildren() {
        return "結んだ布は首をしめることがあります。3 歳未満の子どものそばに置きません。端が 22 cm より長いときは特に注意します。";
    }

    @Override
    public String careChildrenTitle() {
        return "小さな子ども";
    }

    @Override
    public String careCutter() {
        return "切るたびに刃をしまいます。刃を立て、体の向こうへ切ります。指は定規の縁から十分離し、マットにまち針を置きません。古い刃は包んで捨てます。";
    }

    @Override
    public String careCutterTitle() {
        return "ロータリーカッター";
    }

    @Override
    public String careDye() {
        return "濃い赤、青、紫は、はじめの数回の洗濯で色が出ることがあります。ぬれた布を薄い色の上に置いても移ります。";
    }

    @Override
    public String careDyeTitle() {
        return "色落ち";
    }

    @Override
    public String careFlames() {
        return "布は燃えます。包んだ品物は火から 30 cm 以上離します。";
    }

    @Override
    public String careFlamesTitle() {
        return "ろうそくとこんろ";
    }

    @Override
    public String careFood() {
        return "食べ物用の布は別にします。よく洗い、しっかり乾かします。生肉は先に袋に入れて閉じます。";
    }

    @Override
    public String careFoodTitle() {
        return "食べ物";
    }

    @Override
    public String careIron() {
        return "コードに引っかからないところに立てて置きます。顔や指を蒸気に近づけません。終わったらプラグを抜きます。";
    }

    @Override
    public String careIronTitle() {
        return "アイロン";
    }

    @Override
    public String careNeedle() {
        return "まち針は押さえに届く前に抜き、口にくわえません。針が折れたら、かけらをすべて探します。";
    }

    @Override
    public String careNeedleTitle() {
        return "針";
    }

    @Override
    public String cutGives(String how, String patch, String size) {
        return patch + "：" + size + (how.equals("turned") ? "（90 度回す）" : how.equals("whole") ? "、布全体" : how.equals("turnedWhole") ? "（90 度回す）、布全体" : "");
    }

    @Override
    public String cutKeep(String number, String size) {
        return "残り布 " + number + " は取っておく：" + size;
    }

    @Override
    public String cutLine(String gives, String leaves, String measure, String side, String way, String what) {
        return what + "を" + (way.equals("down") ? "上から下へ" : "左から右へ") + "切ります。" + (side.equals("left") ? "左" : side.equals("right") ? "右" : side.equals("top") ? "上" : "下") + "の辺から " + measure + " です。できるもの：" + gives + "。残るもの：" + leaves + "。";
    }

    @Override
    public String cutScraps(int n) {
        return "小さすぎるはぎれ " + n + " 枚";
    }

    @Override
    public String cutTitle(String fabric, String piece, String size) {
        return "布 " + piece + "：" + fabric + "、" + size;
    }

    @Override
    public String cutTitleDone(String fabric, String piece, String size) {
        return "布 " + piece + "：" + fabric + "、" + size + "、裁断済み";
    }

    @Override
    public String fewClip(String length) {
        return "角ごとに三角を切り落とします。両辺とも " + length + "。";
    }

    @Override
    public String fewClipNoMore() {
        return "それ以上は切りません。角が薄くなり、開きません。";
    }

    @Override
    public String fewClosePush() {
        return "糸くずを針の穴の側で押し込みます。";
    }

    @Override
    public String fewCloseSew() {
        return "開いたところを手で数針縫ってとじます。";
    }

    @Override
    public String fewDiagonals(String length) {
        return "二つの対角線を測ります。どちらも約 " + length + "。";
    }

    @Override
    public String fewFold(String under, String wrapped, String wrapping) {
        return wrapped + "側へ倒し、" + wrapping + "を " + under + " 折り込み、折り山を縫います。";
    }

    @Override
    public String fewFoldShort(String under) {
        return "アイロンで倒し、広い縫い代を " + under + " 折り込み、縫います。";
    }

    @Override
    public String fewFrenchFold(String band) {
        return "縫い目で逆に折ります。折り山から " + band + " のところを縫います。";
    }

    @Override
    public String fewFrenchOpen(String wrapped) {
        return "開いて、縫い代を" + wrapped + "側へ倒します。";
    }

    @Override
    public String fewFrenchOpenShort() {
        return "開いて、縫い代を倒します。";
    }

    @Override
    public String fewHemFold(String edges, String face, String length) {
        return (face.equals("front") ? "正面" : "背面") + "を上に。" + (edges.equals("topBottom") ? "上下の辺" : edges.equals("sides") ? "左右の辺を縁の端まで" : "四辺すべて") + "を " + length + " 折り、アイロンをかけます。";
    }

    @Override
    public String fewHemFoldAgain(String length) {
        return "さらに " + length + " 折ります。アイロン、まち針。";
    }

    @Override
    public String fewHemFoldOnce(String edges, String face, String length) {
        return (face.equals("front") ? "正面" : "背面") + "を上に。" + (edges.equals("topBottom") ? "上下の辺" : edges.equals("sides") ? "左右の辺を縁の端まで" : "四辺すべて") + "を " + length + " 折ります。アイロン、まち針。";
    }

    @Override
    public String fewHemOpen() {
        return "もう一度開きます。内側の折り目が交わるところが角になります。";
    }

    @Override
    public String fewHemPress() {
        return "アイロンをかけます。";
    }

    @Override
    public String fewHemStitch(String edge, String from) {
        return (from.equals("fold") ? "内側の折り山" : "裁ち端") + "から " + edge + " のところを縫います。両端は返し縫い。";
    }

    @Override
    public String fewHemStitchRound(String edge, String from) {
        return (from.equals("fold") ? "内側の折り山" : "裁ち端") + "から " + edge + " のところを、ぐるりと縫います。";
    }

    @Override
    public String fewLappedHook(String band) {
        return "折り山を " + band + " 重ねて引っかけます。まち針。";
    }

    @Override
    public String fewLappedLay(String added, String face, String side) {
        return "どちらも" + (face.equals("front") ? "正面" : "背面") + "を上に。" + (side.equals("left") ? "左" : side.equals("right") ? "右" : side.equals("top") ? "上" : "下") + "に：" + added + "。";
    }

    @Override
    public String fewLappedLayShort(String face) {
        return "どちらも" + (face.equals("front") ? "正面" : "背面") + "を上に並べます。";
    }

    @Override
    public String fewLappedPress(String face, String turn, String under, String wrapping) {
        return wrapping + "は" + (face.equals("front") ? "背面" : "正面") + "へ " + turn + "、もう一方は" + (face.equals("front") ? "正面" : "背面") + "へ " + under + " 折ります。";
    }

    @Override
    public String fewLappedPressShort() {
        return "縫い目の図のように両方の辺を折ります。";
    }

    @Override
    public String fewLappedStitch() {
        return "二つの折り山を両側から一つずつ縫います。アイロン。";
    }

    @Override
    public String fewLay(String added, String face, String part, String side) {
        return (face.equals("front") ? "正面" : "背面") + "を上に。" + added + "を" + (side.equals("left") ? "左" : side.equals("right") ? "右" : side.equals("top") ? "上" : "下") + "の" + (part.equals("end") ? "端" : "辺") + "に返して重ねます。";
    }

    @Override
    public String fewLayLook() {
        return "離れて見ます。同じ大きさの 2 枚はまだ入れ替えられます。";
    }

    @Override
    public String fewLayOut(int n) {
        return "ピース " + n + " 枚を、図のとおりに札を付けて並べます。";
    }

    @Override
    public String fewLayShort(String added, String face, String part, String side) {
        return (face.equals("front") ? "正面" : "背面") + "を上に。" + (side.equals("left") ? "左" : side.equals("right") ? "右" : side.equals("top") ? "上" : "下") + "の" + (part.equals("end") ? "端" : "辺") + "に：" + added + "。";
    }

    @Override
    public String fewLayStack() {
        return "縫う順に重ね、最初のものを上にします。";
    }

    @Override
    public String fewLevel(String end, String length, String start) {
        return (start.equals("left") ? "左" : start.equals("right") ? "右" : start.equals("top") ? "上" : "下") + "をそろえます。" + (end.equals("left") ? "左" : end.equals("right") ? "右" : end.equals("top") ? "上" : "下") + "に " + length + " はみ出します。";
    }

    @Override
    public String fewMitreFold(String face) {
        return "角を半分に折って" + (face.equals("front") ? "正面どうし" : "背面どうし") + "を合わせ、裁ち端をそろえます。";
    }

    @Override
    public String fewMitreMark(String length) {
        return "先から " + length + " のところで両方の裁ち端に印をつけます。";
    }

    @Override
    public String fewMitreRule() {
        return "印から折り山に直角に線を引きます。";
    }

    @Override
    public String fewMitreStitch(String about) {
        return "折り山から線の上を縫います（" + about + "）。両端は返し縫い。";
    }

    @Override
    public String fewMitreStitchOut() {
        return "折り山から裁ち端まで線の上を縫います。両端は返し縫い。";
    }

    @Override
    public String fewMitreTrim(String about) {
        return "線の横" + about + "で先を切ります。割って、表に返します。";
    }

    @Override
    public String fewPress(String wrapped) {
        return "両方の縫い代を" + wrapped + "側へ倒します。";
    }

    @Override
    public String fewPressShort() {
        return "両方の縫い代を片側へ倒します。";
    }

    @Override
    public String fewPull() {
        return "違えば短いほうを引き、もう一度アイロンをかけます。";
    }

    @Override
    public String fewRoundCorner() {
        return "角では針を下ろし、押さえを上げて布を回します。";
    }

    @Override
    public String fewRoundEnd() {
        return "最後は縫い始めに重ねて縫います。アイロン。";
    }

    @Override
    public String fewRoundFold() {
        return "折り目どおりに縁を折り、角を出します。アイロン、まち針。";
    }

    @Override
    public String fewRoundStart() {
        return "辺の途中から始めます。";
    }

    @Override
    public String fewSides() {
        return "生地の表と裏は図のとおり。";
    }

    @Override
    public String fewSquare(String face) {
        return "布全体を" + (face.equals("front") ? "正面" : "背面") + "を上にしてアイロンで平らにします。";
    }

    @Override
    public String fewSticksOut(String length, String wrapping) {
        return wrapping + "を " + length + " 出します。あとでくるみます。まち針。";
    }

    @Override
    public String fewSticksOutShort(String length) {
        return "くるむ辺を " + length + " 出します。まち針。";
    }

    @Override
    public String fewStitch(String top) {
        return "上の辺から " + top + " のところを縫います。両端は返し縫い。";
    }

    @Override
    public String fewTrialCut(String side) {
        return "はぎれ 2 枚を " + side + " の正方形に切り、最初の縫い目のとおりに縫います。";
    }

    @Override
    public String fewTrialLength(String stitch) {
        return "縫い目の長さを " + stitch + " にします。";
    }

    @Override
    public String fewTrialMeasure() {
        return "手順ごとに測ります。";
    }

    @Override
    public String fewTrialNarrow() {
        return "狭ければ、次は糸 1 本分だけ端寄りを縫います。";
    }

    @Override
    public String fewTrialWide() {
        return "広ければ、糸 1 本分だけ内側を縫います。";
    }

    @Override
    public String fewTrimBoth(String length) {
        return "端をそろえて切り、辺を " + length + " 切ります。";
    }

    @Override
    public String fewTrimEdge(String length) {
        return "辺を " + length + " 切ります。";
    }

    @Override
    public String fewTrimEdges() {
        return "辺は、まっすぐでないところだけ切ります。";
    }

    @Override
    public String fewTrimEnd() {
        return "端をそろえて切ります。";
    }

    @Override
    public String fewWhipOpen() {
        return "開いて、アイロンで平らにします。";
    }

    @Override
    public String fewWhipPress(String face, String narrow, String wide, String wrapping) {
        return wrapping + "は " + wide + "、もう一方は " + narrow + "、" + (face.equals("front") ? "正面" : "背面") + "へ折ります。";
    }

    @Override
    public String fewWhipPressShort(String face) {
        return "両方の辺を" + (face.equals("front") ? "正面" : "背面") + "へ折ります。";
    }

    @Override
    public String fewWhipSew() {
        return "折り山をそろえ、約 1 mm 間隔で手で巻きかがりにします。";
    }

    @Override
    public String frenchOpen(String face, String wrapped) {
        return "縫い目を開き、" + (face.equals("front") ? "正面" : "背面") + "を上にします。縫い代を" + wrapped + "側へアイロンで倒します。";
    }

    @Override
    public String frenchOther(String face) {
        return "縫い目にアイロンをかけ、縫い目で逆に折り、" + (face.equals("front") ? "正面どうし" : "背面どうし") + "を合わせます。";
    }

    @Override
    public String frenchSecond(String band) {
        return "折り山から " + band + " のところを縫います。両端は返し縫いをします。裁ち端が中に収まりました。";
    }

    @Override
    public String frenchSharp() {
        return "折り山をアイロンでしっかり押さえます。";
    }

    @Override
    public String frenchSnip() {
        return "糸くずが見えないように切り落とします。";
    }

    @Override
    public String frenchTrim(String length) {
        return "両方の縫い代を " + length + " に切りそろえます。";
    }

    @Override
    public String hemCheck(String size) {
        return "布は " + size + " になるはずです（幅 × 高さ、正面が上）。";
    }

    @Override
    public String hemClip(String length) {
        return "角ごとに小さな三角を切り落とします。両辺とも " + length + " までにします。角が厚くなりにくくなります。";
    }

    @Override
    public String hemClipTitle() {
        return "四つの角を切る";
    }

    @Override
    public String hemClosePush() {
        return "左右の縁は両端が開いています。糸くずを針の穴の側で押し込みます。";
    }

    @Override
    public String hemCloseSew() {
        return "開いたところを手で数針縫ってとじます。";
    }

    @Override
    public String hemCloseTitle() {
        return "四つの角をとじる";
    }

    @Override
    public String hemCreases() {
        return "縁をもう一度開きます。角ごとに折り目が交わります。内側の折り目が交わるところが仕上がりの角になります。";
    }

    @Override
    public String hemFold(String edges, String length) {
        return (edges.equals("topBottom") ? "上と下の辺" : edges.equals("sides") ? "左と右の辺（縫ったばかりの縁の端も）" : "四辺すべて") + "を " + length + " 折ります。アイロンをかけます。";
    }

    @Override
    public String hemFoldAgain(String length) {
        return "さらに " + length + " 折り、裁ち端を中に入れます。アイロンをかけ、まち針でとめます。";
    }

    @Override
    public String hemFoldOnce(String edges, String length) {
        return (edges.equals("topBottom") ? "上と下の辺" : edges.equals("sides") ? "左と右の辺（縫ったばかりの縁の端も）" : "四辺すべて") + "を " + length + " 折ります。アイロンをかけ、まち針でとめます。裁ち端は見えたままです。";
    }

    @Override
    public String hemLay(String face) {
        return "布を" + (face.equals("front") ? "正面" : "背面") + "を上にして置きます。縁は" + (face.equals("front") ? "正面" : "背面") + "へ折ります。";
    }

    @Override
    public String hemMitreFold(String face) {
        return "角を半分に折って" + (face.equals("front") ? "正面どうし" : "背面どうし") + "を合わせ、二つの裁ち端をそろえます。";
    }

    @Override
    public String hemMitreMark(String length) {
        return "角の先から " + length + " のところで裁ち端に印をつけます。そこから斜めの折り山に直角に線を引きます。線は、内側の折り目が交わるところで折り山に届きます。";
    }

    @Override
    public String hemMitreStitch(String about) {
        return "線の上を、折り山から外側の折り目まで縫います（" + about + "）。両端は返し縫いをします。裁ち端までの残りは折り込むので縫いません。";
    }

    @Override
    public String hemMitreStitchOut() {
        return "線の上を、折り山から裁ち端まで縫います。両端は返し縫いをします。";
    }

    @Override
    public String hemMitreTitle() {
        return "四つの角を一つずつ額縁に仕立てる";
    }

    @Override
    public String hemMitreTrim(String about) {
        return "線の横の先を切り落とします。両方の裁ち端の" + about + "のところから切ります。小さな縫い目を割り、角を表に返します。";
    }

    @Override
    public String hemPressTitle() {
        return "縁に折り目をつける";
    }

    @Override
    public String hemRoundCorner() {
        return "角では針を下ろしたまま止め、押さえを上げて布を回します。最後は縫い始めに重ねて縫います。アイロンをかけます。";
    }

    @Override
    public String hemRoundFold() {
        return "折り目どおりに縁を折り、角をきれいに出します。アイロンをかけ、まち針でとめます。";
    }

    @Override
    public String hemRoundStitch(String edge, String from) {
        return (from.equals("fold") ? "内側の折り山" : "裁ち端") + "から " + edge + " のところを、ぐるりと縫います。辺の途中から始めます。";
    }

    @Override
    public String hemRoundTitle() {
        return "縁を縫う";
    }

    @Override
    public String hemSidesTitle() {
        return "左右の縁を縫う";
    }

    @Override
    public String hemSquareDiagonals(String length) {
        return "二つの対角線を測ります。どちらも約 " + length + " のはずです。違うときは、短いほうをそっと引いて、もう一度アイロンをかけます。";
    }

    @Override
    public String hemSquarePress(String face) {
        return "布全体を、" + (face.equals("front") ? "正面" : "背面") + "を上にしてアイロンで平らにします。";
    }

    @Override
    public String hemSquareTitle() {
        return "四角を整える";
    }

    @Override
    public String hemSquareTrim() {
        return "四辺は、まっすぐでないところだけ切ります。";
    }

    @Override
    public String hemStitch(String edge, String from, String stitch) {
        return (from.equals("fold") ? "内側の折り山" : "裁ち端") + "から " + edge + " のところを、縫い目の長さ " + stitch + " で縫います。両端は返し縫いをします。アイロンをかけます。";
    }

    @Override
    public String hemThick(String places, String plies, String side) {
        return (side.equals("left") ? "左" : side.equals("right") ? "右" : side.equals("top") ? "上" : "下") + "の辺の、" + (side.equals("left") ? "上から" : side.equals("right") ? "上から" : "左から") + "約 " + places + " のところは厚くなります（正面から見て）。縫い目が縁に入り、最大 " + plies + " 枚重なります。";
    }

    @Override
    public String hemThickCorners(String plies) {
        return "角はどれも厚く、最大 " + plies + " 枚重なります。少し内側から縫い始め、角は最後に縫います。そこではずみ車を回します。";
    }

    @Override
    public String hemTopBottomTitle() {
        return "上下の縁を縫う";
    }

    @Override
    public String lappedHook(String band, String wrapping) {
        return wrapping + "を上にして折り山どうしを引っかけ、" + band + " 重ねて裁ち端を中で突き合わせます。まち針でとめます。";
    }

    @Override
    public String lappedLay(String added, String face, String side, String work) {
        return work + "を" + (face.equals("front") ? "正面" : "背面") + "を上にして置きます。" + added + "も同じ面を上にして、その" + (side.equals("left") ? "左" : side.equals("right") ? "右" : side.equals("top") ? "上" : "下") + "に置きます。";
    }

    @Override
    public String lappedPress(String face, String turn, String under, String wrapped, String wrapping) {
        return wrapping + "の辺を" + (face.equals("front") ? "背面" : "正面") + "へ " + turn + "、" + wrapped + "の辺を" + (face.equals("front") ? "正面" : "背面") + "へ " + under + "、アイロンで折ります。";
    }

    @Override
    public String lappedStitch(String edge, String stitch) {
        return "見えている折り山から " + edge + " のところに、縫い目の長さ " + stitch + " で端ミシンをかけます。裏返して、もう一方の折り山も縫います。両端は返し縫いをします。アイロンをかけます。";
    }

    @Override
    public String layAll(int n) {
        return "ピース " + n + " 枚を、正面の図のとおりに札を付けて並べます。";
    }

    @Override
    public String layBars() {
        return "中心布が中央です。ストリップの名前は周と順番です。2C は 2 周目の 3 本目、2C·1 はその最初の部分です。";
    }

    @Override
    public String layLetters() {
        return "文字一つが小さな作業一つです。番号順に、まず A をすべて縫い合わせ、次に B をすべて縫い合わせます。文字ごとに分けて重ねておきます。";
    }

    @Override
    public String layLook() {
        return "離れて見ます。同じ大きさの 2 枚を入れ替えるなら、これが最後です。";
    }

    @Override
    public String layStack() {
        return "縫う順にピースを重ね、最初のものをいちばん上に置きます。";
    }

    @Override
    public String layTitle() {
        return "すべて並べる";
    }

    @Override
    public String layWork() {
        return "以下の手順で「本体」とは、それまでに縫い合わせた全体です。";
    }

    @Override
    public String lessThan(String length) {
        return length + " 未満";
    }

    @Override
    public String nameBar(String label) {
        return "ストリップ " + label;
    }

    @Override
    public String nameBlock(String letters) {
        return "ブロック " + letters;
    }

    @Override
    public String nameFree(String label) {
        return "ピース " + label;
    }

    @Override
    public String nameHearth() {
        return "中心布";
    }

    @Override
    public String nameJoined(String label) {
        return "つないだストリップ " + label;
    }

    @Override
    public String nameOffcut(String number) {
        return "残り布 " + number;
    }

    @Override
    public String namePair(String from, String to) {
        return from + " と " + to + " の組";
    }

    @Override
    public String namePart(String label) {
        return "部分 " + label;
    }

    @Override
    public String namePartTo(String from, String to) {
        return "部分 " + from + "～" + to;
    }

    @Override
    public String namePatch(String label) {
        return "ピース " + label;
    }

    @Override
    public String namePiece(String label) {
        return "布 " + label;
    }

    @Override
    public String nameScrap() {
        return "小さすぎるはぎれ";
    }

    @Override
    public String nameStepBlock(String step) {
        return "手順 " + step + " のブロック";
    }

    @Override
    public String nameStrip(String label) {
        return "細長い布 " + label;
    }

    @Override
    public String nameThePiece() {
        return "布";
    }

    @Override
    public String nameWork() {
        return "本体";
    }

    @Override
    public String nameWorkTo(String from, String to) {
        return "本体 " + from + "～" + to;
    }

    @Override
    public String needPiece(String piece, String size) {
        return "布 " + piece + "、" + size;
    }

    @Override
    public String needPieceDone(String piece, String size) {
        return "布 " + piece + "、" + size + "、裁断済み";
    }

    @Override
    public String seamCheck(String size, String what) {
        return (what.equals("bar") ? "ストリップ" : "本体") + "は " + size + " になるはずです（幅 × 高さ、正面が上）。";
    }

    @Override
    public String seamEdgestitch(String edge, int plies) {
        return "折り山から " + edge + " のところに、" + (plies == 4 ? "4" : "" + plies) + " 枚を通して端ミシンをかけます。両端は返し縫いをします。アイロンをかけます。";
    }

    @Override
    public String seamEven() {
        return "二つの辺をそろえます。まち針でとめます。";
    }

    @Override
    public String seamFold(String band, String under, String wrapped, String wrapping) {
        return wrapping + "の裁ち端を " + under + " 折り込み、" + wrapped + "の裁ち端をくるみます。折り山は縫い目から " + band + " です。アイロンをかけ、まち針でとめます。";
    }

    @Override
    public String seamLay(String added, String face, String part, String side, String work) {
        return work + "を" + (face.equals("front") ? "正面" : "背面") + "を上にして置きます。" + added + "を" + (side.equals("left") ? "ページをめくるように" : side.equals("right") ? "ページをめくるように" : side.equals("top") ? "下へ返して" : "上へ返して") + "重ね、" + (face.equals("front") ? "正面" : "背面") + "を下にして、" + work + "の" + (side.equals("left") ? "左" : side.equals("right") ? "右" : side.equals("top") ? "上" : "下") + "の" + (part.equals("end") ? "端" : "辺") + "に合わせます。";
    }

    @Override
    public String seamLevel(String start) {
        return (start.equals("left") ? "左" : start.equals("right") ? "右" : start.equals("top") ? "上" : "下") + "の端をそろえます。";
    }

    @Override
    public String seamOffset(String length, String wrapped, String wrapping) {
        return wrapping + "の辺を" + wrapped + "の辺より " + length + " 出します。この広い縫い代がもう一方をくるみます。まち針でとめます。";
    }

    @Override
    public String seamOpen(String face, String wrapped, String wrapping) {
        return "縫い目を開き、" + (face.equals("front") ? "正面" : "背面") + "を上にします。両方の縫い代を" + wrapped + "側へアイロンで倒します。" + wrapping + "の広い縫い代が上になります。";
    }

    @Override
    public String seamOpenEven(String face, String wrapped, String wrapping) {
        return "縫い目を開き、" + (face.equals("front") ? "正面" : "背面") + "を上にします。両方の縫い代を" + wrapped + "側へアイロンで倒します。" + wrapping + "の縫い代が上になります。";
    }

    @Override
    public String seamRunsPast(String added, String end, String length) {
        return added + "は " + length + " 長めに切ってあり、" + (end.equals("left") ? "左" : end.equals("right") ? "右" : end.equals("top") ? "上" : "下") + "にはみ出します。";
    }

    @Override
    public String seamStitch(String added, String stitch, String top) {
        return "上になっている" + added + "の辺から " + top + " のところを、縫い目の長さ " + stitch + " で縫います。両端は返し縫いをします。";
    }

    @Override
    public String seamStitchBoth(String added, String below, String stitch, String top, String work) {
        return "上になっている" + added + "の辺から " + top + " のところを、縫い目の長さ " + stitch + " で縫います。下の" + work + "の辺からは " + below + " です。両端は返し縫いをします。";
    }

    @Override
    public String seamThickAt(String end, String places) {
        return (end.equals("top") ? "上から" : "左から") + " " + places;
    }

    @Override
    public String seamTrimAllowance(String length, String wrapped) {
        return wrapped + "の縫い代を " + length + " に切りそろえます。";
    }

    @Override
    public String seamTrimEdge(String across, String added, String length, String way) {
        return added + "の外側の辺を " + length + " まっすぐ切り落とします。本体の" + (way.equals("wide") ? "幅" : "高さ") + "は " + across + " になります。";
    }

    @Override
    public String seamTrimEnd(String added, String work) {
        return added + "の端を" + work + "にそろえて切ります。";
    }

    @Override
    public String seamWarning(String end, String places, String plies) {
        return (end.equals("top") ? "上端から" : "左端から（正面から見て）") + "約 " + places + " のところは厚くなります。ほかの縫い目と交差し、最大 " + plies + " 枚重なります。ゆっくり縫うか、はずみ車を回します。";
    }

    @Override
    public String thickAt(String places) {
        return "厚いところ：" + places;
    }

    @Override
    public String thickBand(String plies) {
        return "ふつうの縫い目は " + plies + " 枚重なります。";
    }

    @Override
    public String thickFoot() {
        return "そこに来たら、折ったはぎれを押さえの後ろに入れて水平にします。縫い目を少し長くし、はずみ車を回します。布を押したり引いたりしません。針が曲がります。";
    }

    @Override
    public String thickHem() {
        return "縫い目が入るところは厚くなります";
    }

    @Override
    public String thickPlace(String height, int n, String plies) {
        return "最大 " + plies + " 枚重なるところ " + n + " か所、厚さ約 " + height + "。";
    }

    @Override
    public String thickPress() {
        return "厚いところを縫う前に、スチームでしっかり押さえます。または、はぎれをのせて金づちでたたき、平らにします。";
    }

    @Override
    public String threadHand(String percent, String ply, String stitch, String tail, String total) {
        return "全部で約 " + total + " です。縫い目の長さを " + stitch + " にします。厚さ " + ply + " の布、一列ごとに両端の糸 " + tail + "、余裕 " + percent + " で計算しました。";
    }

    @Override
    public String threadMachine(String each, String percent, String ply, String stitch, String tail, String total) {
        return "全部で約 " + total + " です。半分の " + each + " をボビンに巻きます。縫い目の長さを " + stitch + " にします。厚さ " + ply + " の布、一列ごとに両端の糸 " + tail + "、余裕 " + percent + " で計算しました。";
    }

    @Override
    public String titleJoin(String added, String work) {
        return added + "を" + work + "につなぐ";
    }

    @Override
    public String titleSeam(String added, String side, String work) {
        return work + "の" + (side.equals("left") ? "左" : side.equals("right") ? "右" : side.equals("top") ? "上" : "下") + "に" + added;
    }

    @Override
    public String toolCutter() {
        return "ロータリーカッター、定規、カッティングマット。または、はさみ、定規、チャコ";
    }

    @Override
    public String toolHand() {
        return "細い手縫い針。縁を縫うミシン";
    }

    @Override
    public String toolIron() {
        return "アイロンとアイロン台、水少々または霧吹き";
    }

    @Override
    public String toolMachine(String needle) {
        return "新しい針を付けたミシン、針 " + needle;
    }

    @Override
    public String toolPins() {
        return "まち針またはクリップ、リッパー、小ばさみ";
    }

    @Override
    public String toolSlips() {
        return "ピース札または小さな紙と、1 枚につきまち針 1 本";
    }

    @Override
    public String toolThread() {
        return "糸（この手引きの「糸」を参照）";
    }

    @Override
    public String touchBoth(String added, String ofAdded, String ofWork, String work) {
        return added + "の" + (ofAdded.equals("right") ? "表" : "裏") + "と" + work + "の" + (ofWork.equals("right") ? "表" : "裏") + "を合わせます。";
    }

    @Override
    public String touchFacing(String one, String other, String side) {
        return one + "の" + (side.equals("right") ? "表" : "裏") + "を" + other + "に向けます。";
    }

    @Override
    public String touchLayBoth(String added, String ofAdded, String ofWork, String work) {
        return added + "の" + (ofAdded.equals("right") ? "表" : "裏") + "と" + work + "の" + (ofWork.equals("right") ? "表" : "裏") + "を合わせます。";
    }

    @Override
    public String touchLayFacing(String one, String other, String side) {
        return one + "の" + (side.equals("right") ? "表" : "裏") + "を" + other + "に向けます。";
    }

    @Override
    public String touchLayMixed() {
        return "図のとおり、表が内側のピースと裏が内側のピースがあります。";
    }

    @Override
    public String touchLayTogether(String side) {
        return (side.equals("right") ? "中表に合わせます。" : "外表に合わせます。");
    }

    @Override
    public String touchMixed() {
        return "図のとおり、表が内側のピースと裏が内側のピースがあります。";
    }

    @Override
    public String touchTogether(String side) {
        return (side.equals("right") ? "中表に合わせます。" : "外表に合わせます。");
    }

    @Override
    public String trialCheck(String size) {
        return "縫い合わせた大きさは " + size + " になるはずです。まず縫い目と直角に測ります。";
    }

    @Override
    public String trialCut(String side) {
        return "はぎれ 2 枚を " + side + " の正方形に切り、下の最初の縫い目のとおりに縫います。";
    }

    @Override
    public String trialFells(String fells) {
        return "縫い代はすべて" + (fells.equals("front") ? "正面" : "背面") + "に倒し、" + (fells.equals("front") ? "背面" : "正面") + "は平らです。これで正面と背面を見分けます。";
    }

    @Override
    public String trialFree() {
        return "手順ごとに測ります。ここでは長めに切ったものはありません。糸 1～2 本を超えてずれると、隣と合わなくなります。";
    }

    @Override
    public String trialLeeway(String leeway) {
        return "手順ごとに測ります。ストリップはどれも " + leeway + " 長めに切ってあるので、少しの違いはかまいません。それより大きければほどきます。";
    }

    @Override
    public String trialLength(String loss, String narrow, String stitch, String wide) {
        return "縫い目の長さを " + stitch + " にします。縫い目は片方の辺から " + narrow + "、もう片方から " + wide + "、合わせて " + loss + " を使います。";
    }

    @Override
    public String trialTitle() {
        return "はぎれ 2 枚で縫い目を試す";
    }

    @Override
    public String trialWidth() {
        return "狭くなったら、糸 1 本分だけ端寄りを縫います。広くなったら、糸 1 本分だけ内側を縫います。";
    }

    @Override
    public String washAll() {
        return "布はすべて水通し済みです。";
    }

    @Override
    public String washDye(String fabrics) {
        return "濃い色は薄い色に色移りすることがあります。" + fabrics + "の角をぬるい石けん水に 30 分つけ、ぬれたまま白い布に押し当てます。色が移ったら、移らなくなるまでその布だけ洗うか、使いません。";
    }

    @Override
    public String washMixed(String pieces, String which) {
        return "水通しした布としていない布が混ざっています。" + (which.equals("washed") ? "した布" : "していない布") + "：" + pieces + "。";
    }

    @Override
    public String washMixedThen(String length) {
        return "していない布を先に洗い、測り直します。この布の一辺で、ほかより約 " + length + " 多く縮み、全体が波打つことがあります。";
    }

    @Override
    public String washNone() {
        return "どの布も水通ししていません。仕上がった布を洗うのと同じ方法で今すべて洗い、測り直します。縮んだら計画し直します。または、すべて洗いません。";
    }

    @Override
    public String washNoneSaid() {
        return "布の一覧では、どの布も水通ししていません。仕上がった布を洗うのと同じ方法で今すべて洗い、測り直します。縮んだら計画し直します。または、すべて洗いません。";
    }

    @Override
    public String washSomeUnknown(int n, String pieces) {
        return "水通ししたかどうか、布の一覧にありません：" + pieces + "。迷ったら洗います。";
    }

    @Override
    public String washUnknown() {
        return "どれを水通ししたか、布の一覧にありません。仕上がった布を洗うのと同じ方法ですべて洗い、測り直します。縮んだら計画し直します。または、すべて洗いません。";
    }

    @Override
    public String washingAlone() {
        return "仕上がった布は、はじめは単独で洗います。いちばん傷みやすい布に合わせてやさしく洗います。迷ったら冷水で手洗いします。";
    }

    @Override
    public String washingSquare(String face) {
        return "ぬれているうちに四角に整え、平らに干します。乾ききる前に" + (face.equals("front") ? "正面" : "背面") + "からアイロンをかけます。";
    }

    @Override
    public String whipOpen(String face) {
        return "縫い目を開き、アイロンで平らにします。裁ち端は" + (face.equals("front") ? "正面" : "背面") + "に残ります。";
    }

    @Override
    public String whipPress(String face, String narrow, String wide, String wrapped, String wrapping) {
        return wrapping + "の辺を " + wide + "、" + wrapped + "の辺を " + narrow + "、" + (face.equals("front") ? "正面" : "背面") + "へアイロンで折ります。";
    }

    @Override
    public String whipSew() {
        return "二つの折り山をそろえます。約 1 mm 間隔で手で巻きかがりにします。一針ごとに両方の折り山の糸を 1～2 本すくいます。";
    }
}
