package hearthcloth.words.planning;

/** The room of planning in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapanesePlanning implements PlanningWords {

    @Override
    public String barNoPiece(String piece, String width) {
        return "裁ち幅 " + width + " のストリップが取れる布がありません。いちばん広いのは " + piece + " です。";
    }

    @Override
    public String betterCuts() {
        return "裁断が少ない";
    }

    @Override
    public String betterFewerBars() {
        return "縫うストリップが少ない";
    }

    @Override
    public String betterHearth() {
        return "中心布が大きい";
    }

    @Override
    public String betterJoins() {
        return "つなぎが少ない";
    }

    @Override
    public String betterLost() {
        return "むだになる布が少ない";
    }

    @Override
    public String betterMoreBars() {
        return "見えるストリップが多い";
    }

    @Override
    public String betterNarrower() {
        return "ストリップが細い";
    }

    @Override
    public String betterPieces() {
        return "使う布が多い";
    }

    @Override
    public String betterSize() {
        return "布が大きい";
    }

    @Override
    public String betterTouched() {
        return "切り始める布が少ない";
    }

    @Override
    public String betterWider() {
        return "ストリップが太い";
    }

    @Override
    public String cabinTitle(String scraps) {
        return (scraps.equals("yes") ? "はぎれの中のログキャビン" : "ログキャビン");
    }

    @Override
    public String cabinsFew(String across, String down, int rounds, String size) {
        return "このはぎれでは、" + "" + rounds + " 周" + "のログキャビン " + across + " × " + down + "（" + size + "）に足りませんでした。ブロックか周を減らすと少なくてすみます。";
    }

    @Override
    public String cabinsTitle(String across, String down, String scraps, String setting) {
        return setting + "、ログキャビン " + across + " × " + down + (scraps.equals("yes") ? "、はぎれの中" : "");
    }

    @Override
    public String chosenBands(String direction) {
        return (direction.equals("ACROSS") ? "布を横切る" : "布を縦に通る") + "帯で、端から端まで続きます。";
    }

    @Override
    public String chosenBars(String width) {
        return "ストリップの裁ち幅は " + width + "。";
    }

    @Override
    public String chosenByHand() {
        return "手で選びました。";
    }

    @Override
    public String chosenCabin(String order, int rounds) {
        return "ログキャビン一つ、" + "" + rounds + " 周" + "、" + order + "。";
    }

    @Override
    public String chosenCabins(String across, String count, String down, String order, int rounds) {
        return "ログキャビン " + count + " 個、" + across + " × " + down + "、それぞれ " + "" + rounds + " 周" + "、" + order + "。";
    }

    @Override
    public String chosenHearth(String size) {
        return "中心布の裁ち寸法は " + size + "。";
    }

    @Override
    public String chosenMiddle(String piece) {
        return piece + "番の布がそのまま中央にあります。";
    }

    @Override
    public String chosenMixed() {
        return "明と暗が混ざっています。分ける方法がありませんでした。";
    }

    @Override
    public String chosenOrder(String order) {
        return "順番：" + order + "。";
    }

    @Override
    public String chosenOuter(String size) {
        return "布が " + size + " に仕上がるように、外の周を合わせて切ります。";
    }

    @Override
    public String chosenReadyBars(String widths) {
        return "ストリップの裁ち幅は " + widths + "。手持ちの布の幅です。";
    }

    @Override
    public String chosenReadyRounds(String rounds) {
        return "ストリップの裁ち幅（手持ちの布の幅）：" + rounds + "。";
    }

    @Override
    public String chosenRound(String number, String widths) {
        return number + " 周目：" + widths;
    }

    @Override
    public String chosenRounds(int n) {
        return "" + n + " 周。";
    }

    @Override
    public String chosenSizeFound(String limit) {
        return "大きさ：見つかったいちばん大きい正方形。すべての布を合わせても " + limit + " を超えることはできません。";
    }

    @Override
    public String chosenSizeScraps(String limit, String side) {
        return "大きさ：見つかったいちばん大きい正方形、" + side + "。このはぎれをすべて合わせても " + limit + " を超えることはできません。";
    }

    @Override
    public String chosenSizeSteps() {
        return "大きさ：約 14 分の 1 刻みで見つかったいちばん大きいもの。";
    }

    @Override
    public String chosenSizeSure(String step) {
        return "大きさ：" + step + " 刻みで、これより大きい正方形はできません。";
    }

    @Override
    public String chosenSmaller(String percent) {
        return "この布は希望より" + percent + "小さくなります。";
    }

    @Override
    public String chosenWith(String pieces) {
        return "希望した布が入っています：" + pieces + "。";
    }

    @Override
    public String colour(String what) {
        return what + "。";
    }

    @Override
    public String colourApart() {
        return "同じ布が隣り合いません";
    }

    @Override
    public String colourBack(String what) {
        return "裏：" + what + "。";
    }

    @Override
    public String colourCouldLie(String length) {
        return "縫い目のうち、よくできるのは多くても " + length + " です。";
    }

    @Override
    public String colourField() {
        return "ストリップはすべて同じ布です";
    }

    @Override
    public String colourHearthAll() {
        return "中心布がどの辺でも目立ちます";
    }

    @Override
    public String colourHearthNone() {
        return "中心布は控えめで、まわりと近い色です";
    }

    @Override
    public String colourHearthSome(String share) {
        return "中心布がふちの " + share + " で目立ちます";
    }

    @Override
    public String colourMixed(int n) {
        return "ストリップ " + n + " 本が何種類かの布でできています";
    }

    @Override
    public String colourOutside(String fabric, String share) {
        return fabric + "：結んだとき見える部分の " + share + "。";
    }

    @Override
    public String colourOutsideAlways(String fabric, String least, String most) {
        return fabric + "：どう結んでも見えます。結んだとき見える部分の " + least + "〜" + most + "。";
    }

    @Override
    public String colourOutsideRange(String fabric, String least, String most) {
        return fabric + "：結んだとき見える部分の " + least + "〜" + most + "。余った角の収まり方で変わります。";
    }

    @Override
    public String colourPrice(int n) {
        return "配色のため、見つかった最少より裁断が " + n + " 回多くなります。";
    }

    @Override
    public String colourPriceJoins(int n) {
        return "配色のため、見つかった最少よりつなぎが " + n + " か所多くなります。";
    }

    @Override
    public String colourProven() {
        return "ストリップごとの布をどう選んでも、これよりよくならないことが証明されています。";
    }

    @Override
    public String colourSame(String share) {
        return "ストリップの間の縫い目の " + share + " で同じ布が隣り合います";
    }

    @Override
    public String colourTied(String what) {
        return "結んだとき見える境目：" + what + "。";
    }

    @Override
    public String fabricUnknown(String name, String names) {
        return "布の一覧に「" + name + "」という布はありません。あるのは " + names + " です。";
    }

    @Override
    public String good(String idea, String points) {
        return idea + "。" + points + "。";
    }

    @Override
    public String goodAlone(String idea) {
        return idea + "。";
    }

    @Override
    public String heapEmpty() {
        return "布がありません。布を一枚以上入れてください。";
    }

    @Override
    public String hearth() {
        return "中心布";
    }

    @Override
    public String hearthNoPiece(String piece, String size) {
        return "中心布（裁ち寸法 " + size + "）が取れる布が一枚もありません。いちばんよいのは " + piece + " です。";
    }

    @Override
    public String moreAdded(String pieces) {
        return "これを足せばできます：" + pieces + "。";
    }

    @Override
    public String morePiece(String fabric, String size) {
        return fabric + "、" + size;
    }

    @Override
    public String morePieces(String fabric, String number, String size) {
        return fabric + "、" + size + "、" + number + " 枚";
    }

    @Override
    public String moreTime() {
        return "計画にもっと時間が必要です。時間を長くしてもう一度計画してください。";
    }

    @Override
    public String needFabrics() {
        return "試したどの配色にも、これらの布では足りません。";
    }

    @Override
    public String needMore(String has, String more, String takes) {
        return "布がいちばん少なくてすむ配置でも、縫い代と縁を含めて " + takes + " かかります。手持ちの布は全部で " + has + " なので、あと約 " + more + " 必要です。";
    }

    @Override
    public String order(String order) {
        return (order.equals("ROUND") ? "ぐるりと" : order.equals("PAIRS") ? "向かい合う組" : "二辺");
    }

    @Override
    public String pieceLine(String fabric, String line, String size) {
        return fabric + "、" + size + "（" + line + " 行目）";
    }

    @Override
    public String pointFewestBars(String n) {
        return "縫うストリップがいちばん少ない、" + n + " 本";
    }

    @Override
    public String pointFewestCuts(String n) {
        return "裁断がいちばん少ない、" + n + " 回";
    }

    @Override
    public String pointFewestJoins(String n) {
        return "つなぎがいちばん少ない、" + n + " か所";
    }

    @Override
    public String pointJoins(int n) {
        return "つなぎ " + n + " か所";
    }

    @Override
    public String pointJoinsAsFew(int n) {
        return "つなぎ " + n + " か所、これより少ないものはない";
    }

    @Override
    public String pointLargest() {
        return "この中でいちばん大きい";
    }

    @Override
    public String pointLargestHearth() {
        return "中心布がいちばん大きい";
    }

    @Override
    public String pointLeastLost() {
        return "むだになる布がいちばん少ない";
    }

    @Override
    public String pointLeavesMost() {
        return "手持ちの布をいちばん切らずに残す";
    }

    @Override
    public String pointMostBars(String n) {
        return "見えるストリップがいちばん多い、" + n + " 本";
    }

    @Override
    public String pointMostPieces(String n) {
        return "使う布がいちばん多い、" + n + " 枚";
    }

    @Override
    public String pointNarrowest() {
        return "ストリップがいちばん細い";
    }

    @Override
    public String pointNoJoin() {
        return "どのストリップもつながなくてよい";
    }

    @Override
    public String pointOnlyWithoutCut() {
        return "裁断のないのはこれだけ";
    }

    @Override
    public String pointOnlyWithoutJoin() {
        return "つなぎのないのはこれだけ";
    }

    @Override
    public String pointThan(String better) {
        return "最初のものより" + better;
    }

    @Override
    public String pointWidest() {
        return "ストリップがいちばん太い";
    }

    @Override
    public String rulesNone() {
        return "いろいろ試しましたが、すべてを守るものは見つかりませんでした。";
    }

    @Override
    public String scheme(String scheme) {
        return (scheme.equals("HALVES") ? "二つの半分" : scheme.equals("ROUNDS") ? "周ごとに" : scheme.equals("TURNS") ? "かわるがわる" : scheme.equals("FIELD") ? "一つの地" : scheme.equals("SPIRAL") ? "うずまき" : scheme.equals("SCATTERED") ? "まんべんなく" : scheme.equals("GRADED") ? "明から暗へ" : scheme.equals("FRAMES") ? "枠" : scheme.equals("ACCENT") ? "明るいはぎれ一つ" : scheme.equals("ALL") ? "手持ちの布すべてから" : scheme.equals("FALLS") ? "布の出るままに" : scheme.equals("OUTWARDS") ? "よい面を外に" : "自分で選ぶ");
    }

    @Override
    public String schemeIdea(String scheme) {
        return (scheme.equals("HALVES") ? "明と暗が対角線で出会います" : scheme.equals("ROUNDS") ? "周ごとに布が違います" : scheme.equals("TURNS") ? "ストリップごとに明と暗が入れ替わります" : scheme.equals("FIELD") ? "中心布が一種類の布の中に置かれます" : scheme.equals("SPIRAL") ? "明と暗が並んで外へ回ります" : scheme.equals("SCATTERED") ? "ストリップごとに一種類で、同じ布が隣り合いません" : scheme.equals("GRADED") ? "外の周ほど暗くなります" : scheme.equals("FRAMES") ? "二種類の布が周ごとに入れ替わります" : scheme.equals("ACCENT") ? "明るい布が数か所で目立ちます" : scheme.equals("ALL") ? "どの布もどこにでも使います" : scheme.equals("FALLS") ? "布がいちばん持つところからストリップを切ります" : scheme.equals("OUTWARDS") ? "選んだ布が、結んだとき見える場所にあります" : "手で選びました");
    }

    @Override
    public String schemeNeeds(String scheme) {
        return (scheme.equals("HALVES") ? "明と暗にはっきり分かれ、それぞれ十分な布" : scheme.equals("TURNS") ? "明と暗にはっきり分かれ、それぞれ十分な布" : scheme.equals("SPIRAL") ? "明と暗にはっきり分かれ、それぞれ十分な布" : scheme.equals("ROUNDS") ? "周ごとに十分な一種類の布。中心布とは別のもの" : scheme.equals("FIELD") ? "すべてのストリップに足りる布一種類と、中心布用の別の布" : scheme.equals("SCATTERED") ? "同じ布が隣り合わずにすむだけの、何種類かの十分な布" : scheme.equals("GRADED") ? "外の周ほど暗くなる、周ごとに違う布" : scheme.equals("FRAMES") ? "一方がはっきり明るい二種類の布。それぞれ周に足りるだけ" : scheme.equals("ACCENT") ? "落ち着いた布と、明るい布一種類" : "布だけ");
    }

    @Override
    public String schemeUntrue(String needs, String scheme) {
        return "「" + scheme + "」に当てはまる布は見つかりませんでした。必要なもの：" + needs + "。";
    }

    @Override
    public String scrapsByHand() {
        return "手で合わせた布";
    }

    @Override
    public String scrapsMore(String size) {
        return size + " の布がもう一枚あればできます。";
    }

    @Override
    public String scrapsNoPiece(String piece) {
        return "一枚分を裁てる" + piece + "番の布はありません。手持ちの布で確かめてください。";
    }

    @Override
    public String scrapsNone() {
        return "このはぎれでは布を作れませんでした。もっと多くか、もっと大きいはぎれが必要です。";
    }

    @Override
    public String scrapsShort(String area) {
        return "このはぎれをどう並べても、縫い代を除くと " + area + " 足りません。";
    }

    @Override
    public String scrapsTitle(String choice) {
        return (choice.equals("ANY") ? "はぎれのままに" : choice.equals("WHOLE") ? "二つに切らないはぎれ" : choice.equals("SMALL") ? "小さいはぎれをたくさん" : choice.equals("LARGE") ? "大きいはぎれを少し" : choice.equals("EVEN") ? "大きさをそろえて" : choice.equals("CALM") ? "近い色どうし" : choice.equals("ALIKE") ? "近い大きさどうし" : "明と暗");
    }

    @Override
    public String scrapsTooSmall(String length) {
        return "縦横 " + length + " 見えるピースが取れる布がありません。--least-piece を小さくしてください。";
    }

    @Override
    public String scrapsUsed(String lost, int n, String parted, String trimmed, String whole) {
        return "はぎれ " + n + " 枚：そのまま " + whole + " 枚、端を整える " + trimmed + " 枚、二つに切る " + parted + " 枚。縫う布の " + lost + " が切り落とされてむだになります。";
    }

    @Override
    public String seamsApart() {
        return "同じ布が隣り合いません。";
    }

    @Override
    public String seamsClear(String clear) {
        return "別の縫い目をはさんで " + clear + " 以内で終わる縫い目はありません。";
    }

    @Override
    public String seamsNear(String clear, int n) {
        return "" + n + " か所で縫い目が別の縫い目をはさんで " + clear + " 以内で終わります。厚いところは手順書にあります。";
    }

    @Override
    public String seamsNowhere() {
        return "四本の縫い目が出会うところはありません。";
    }

    @Override
    public String seamsThick(int n) {
        return "" + n + " か所で縫い目が別の縫い目の両側で出会います。厚いところは手順書にあります。";
    }

    @Override
    public String setting(String setting) {
        return (setting.equals("ALIKE") ? "みな同じ向き" : setting.equals("STRAIGHT_FURROW") ? "ストレートファロー" : setting.equals("BARN_RAISING") ? "バーンレイジング" : setting.equals("SUNSHINE_AND_SHADOW") ? "サンシャイン・アンド・シャドー" : "向きは自由");
    }

    @Override
    public String settingIdea(String setting) {
        return (setting.equals("ALIKE") ? "どのブロックも同じ向きです。" : setting.equals("STRAIGHT_FURROW") ? "明と暗が角から角へ帯になります。" : setting.equals("BARN_RAISING") ? "明と暗が中央からひし形に広がります。" : setting.equals("SUNSHINE_AND_SHADOW") ? "四つのブロックの明るい半分どうし、暗い半分どうしが出会います。" : "ブロックの向きはばらばらです。");
    }

    @Override
    public String shapeComes(String sizes) {
        return "この中心布とこのストリップでは " + sizes + " になります。このどれかにするか、中心布かストリップを布にまかせてください。";
    }

    @Override
    public String shapeNone(String size) {
        return "この種の中心布とストリップでは " + size + " になりません。どちらかを布にまかせるか、周の数を変えてください。";
    }

    @Override
    public String shapeNoneAny() {
        return "この種の中心布とストリップでは布になりません。どちらかを布にまかせるか、周の数を変えてください。";
    }

    @Override
    public String shapeNothing() {
        return "この縫い目では中心布かストリップが残りません。大きくしてください。";
    }

    @Override
    public String shapeSize(int rounds, String size) {
        return "" + rounds + " 周" + "で " + size;
    }

    @Override
    public String shortAny(String fabric, String length, String number, String sure, String what, String width) {
        return what + "に使う幅 " + width + " の布が、" + fabric + " など " + number + " 種類のどれでも" + (sure.equals("proven") ? "少なくとも" : "約") + " " + length + " 足りません。";
    }

    @Override
    public String shortCloth(String has, String missing, String size) {
        return "布だけで " + size + " ですが、手持ちの布は全部で " + has + " なので、縫い代の前に少なくとも " + missing + " 足りません。";
    }

    @Override
    public String shortOf(String fabrics, String length, String sure, String what, String width) {
        return what + "に使う幅 " + width + " の " + fabrics + " が" + (sure.equals("proven") ? "少なくとも" : "約") + " " + length + " 足りません。";
    }

    @Override
    public String stashEmpty() {
        return "布の一覧が空です。布を一枚以上入れてください。";
    }

    @Override
    public String title(String order, String scheme) {
        return scheme + "、" + order;
    }

    @Override
    public String washMixed(String unwashed, String unwashedFabric, String washed, String washedFabric) {
        return "水通しした布（" + washed + "、" + washedFabric + " など）としていない布（" + unwashed + "、" + unwashedFabric + " など）があり、縮み方が違います。切る前にすべて洗ってアイロンをかけてください。";
    }
}
