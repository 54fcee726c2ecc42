package hearthcloth.words.ruling;

/** The room of ruling in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseRuling implements RulingWords {

    @Override
    public String asked() {
        return "望みどおりの中心布、ストリップ、周";
    }

    @Override
    public String askedGift(String gift, String tie) {
        return gift + "、" + tie;
    }

    @Override
    public String bars(String rule) {
        return "周りのストリップ: " + rule + "。";
    }

    @Override
    public String bendBars(String rule, String widths) {
        return "ストリップの裁ち幅は " + widths + "、手本は" + rule + "です。";
    }

    @Override
    public String bendColours(String found, String scheme, String ways) {
        return (found.equals("none") ? "色は布の出るままです。手本は" + ways + "です。" : "色は" + scheme + "です。手本は" + ways + "です。");
    }

    @Override
    public String bendHearth(String rule, String share, String size) {
        return "中心布の裁ち寸法は " + size + "（布の幅の " + share + "）、手本は" + rule + "です。";
    }

    @Override
    public String bendJoins(int joins, String most) {
        return "はぎが " + "" + joins + " か所" + "のストリップがあります。手本は " + most + " か所までです。";
    }

    @Override
    public String bendMiddle(String lies, String wanted) {
        return "真ん中は " + wanted + " ではなく " + lies + " です。";
    }

    @Override
    public String bendOrder(String found, String wanted) {
        return "ストリップは" + (found.equals("ROUND") ? "ぐるりと" : found.equals("PAIRS") ? "向かい合う組で" : found.equals("TWO_SIDES") ? "二辺に" : "別の順で") + "付けます。手本は" + (wanted.equals("ROUND") ? "ぐるりと" : wanted.equals("PAIRS") ? "向かい合う組" : "二辺") + "です。";
    }

    @Override
    public String bendRounds(int rounds, String rule) {
        return "" + rounds + " 周です。手本は" + rule + "です。";
    }

    @Override
    public String bendSize(String rule, String size) {
        return "布は " + size + "、手本は" + rule + "です。";
    }

    @Override
    public String bendWidths(String least, String most) {
        return least + "～" + most;
    }

    @Override
    public String colours(String rule) {
        return "色: " + rule + "。";
    }

    @Override
    public String fileField(String field, String what) {
        return "「" + field + "」：" + what + "。";
    }

    @Override
    public String fileFormat(String guideline, String plan, String text) {
        return "ここには「" + text + "」とあります。計画のファイルには " + plan + "、手本のファイルには " + guideline + " とあります";
    }

    @Override
    public String fileGuideline(String what) {
        return "手本のファイルではありません：" + what + "。";
    }

    @Override
    public String fileJson(String line, String text, String why) {
        return line + " 行目：" + (why.equals("AFTER") ? "ファイルのオブジェクトの終わりの後に続きがあります" : why.equals("EARLY") ? "ファイルが途中で終わっています。一部しか送られていないか、保存されていないようです" : why.equals("COLON") ? "項目の名前の後に " + text + " がありません" : why.equals("COMMA_FIELD") ? "" + text + " か、項目の後のコンマがありません" : why.equals("COMMA_LIST") ? "" + text + " か、一覧の中のコンマがありません" : why.equals("DEEP") ? "入れ子が深すぎます" : why.equals("NAME") ? "項目の名前がありません。名前は引用符の中に書きます" : why.equals("TWICE") ? "「" + text + "」が二度あります。一つを消してください" : why.equals("OPEN_QUOTE") ? "引用符が閉じていません" : why.equals("LINE_END") ? "引用符の中で行が終わっています。改行は \\n と書いてください" : why.equals("ESCAPE") ? "" + text + " は JSON の文字ではありません。逆斜線は二つ書いてください" : why.equals("CODE") ? "\\u の後には 0 から f までの字が四つ要ります" : "値が読めません。言葉は引用符の中に書きます");
    }

    @Override
    public String fileKind(String kind, String signs) {
        return (kind.equals("OBJECT") ? "ここには " + signs + " の中に項目のあるオブジェクトが入ります" : kind.equals("LIST") ? "ここには " + signs + " の中の一覧が入ります" : "ここには引用符の中の言葉が入ります");
    }

    @Override
    public String fileLong(String letters, String most) {
        return letters + " 文字あります。" + most + " 文字まで入ります";
    }

    @Override
    public String fileMissing() {
        return "ありません";
    }

    @Override
    public String fileObject(String sign) {
        return "ファイルにオブジェクトがありません。最初の字は " + sign + " です。";
    }

    @Override
    public String filePatches(String why) {
        return (why.equals("SCRAPS") ? "この計画は端切れの布で、渡せる中心布もストリップもありません。" : why.equals("HEARTH") ? "この計画には中心布がありません。計画のファイルを作り直してください。" : why.equals("NONE") ? "この計画には布片がありません。計画のファイルを作り直してください。" : why.equals("MANY") ? "この計画の布片は一枚の布に入る数を超えています。計画のファイルを作り直してください。" : "この計画の布片は互いに合いません。計画のファイルを作り直してください。");
    }

    @Override
    public String filePicture(String why) {
        return (why.equals("LARGE") ? "絵が大きすぎます。330 kB までに小さくしてください" : "base64 の絵ではありません。絵を入れ直してください");
    }

    @Override
    public String filePlan(String what) {
        return "計画のファイルではありません：" + what + "。";
    }

    @Override
    public String fileUnknown(String names) {
        return "この項目はここでは使いません。あるもの: " + names;
    }

    @Override
    public String fileWhole(String least, String most, String there) {
        return (there.equals("no") ? "ありません。" + least + " から " + most + " までの整数を書いてください" : "使えません。" + least + " から " + most + " までの整数を書いてください");
    }

    @Override
    public String giftBooks(String sizes) {
        return "本 2 冊（各 " + sizes + "）";
    }

    @Override
    public String giftBottle(String across, String high) {
        return "瓶（直径 " + across + "、高さ " + high + "）";
    }

    @Override
    public String giftBottles(String across, String high) {
        return "瓶 2 本（直径 " + across + "、高さ " + high + "）";
    }

    @Override
    public String giftBox(String sizes) {
        return "箱 " + sizes;
    }

    @Override
    public String giftRoll(String across, String length) {
        return "筒（直径 " + across + "、長さ " + length + "）";
    }

    @Override
    public String giftRound(String across) {
        return "丸いもの（直径 " + across + "）";
    }

    @Override
    public String hearth(String rule) {
        return "真ん中の中心布: " + rule + "。";
    }

    @Override
    public String isBars(String kind, String most, String width) {
        return (kind.equals("WIDTHS") ? "裁ち幅 " + width : kind.equals("WIDTHS_FINISHED") ? "出来上がり幅 " + width : kind.equals("BETWEEN") ? "裁ち幅 " + width + "～" + most : kind.equals("BETWEEN_FINISHED") ? "出来上がり幅 " + width + "～" + most : kind.equals("SHARE") ? "布の幅の " + width + "～" + most + " %" : kind.equals("STRIPS") ? "手持ちの細い布の幅のまま" : "手持ちの布によります");
    }

    @Override
    public String isColours(String open, String ways) {
        return (open.equals("yes") ? "手持ちの布によります" : "" + ways);
    }

    @Override
    public String isGift(String gift, String tie) {
        return gift + "を包める大きさ、" + tie;
    }

    @Override
    public String isHearth(String kind, String least, String most, String size) {
        return (kind.equals("EXACT") ? "裁ち " + size : kind.equals("FINISHED") ? "出来上がり " + size : kind.equals("SHARE") ? "布の幅の " + least + "～" + most + " %" : kind.equals("SQUARE") ? "手持ちの布一枚から取れるいちばん大きな正方形" : "手持ちの布によります");
    }

    @Override
    public String isRounds(String least, int most) {
        return (most == 0 ? "手持ちの布でできるだけ" : "ストリップ " + (least.equals("none") ? "" : "" + least + "～") + most + " 周");
    }

    @Override
    public String isSize(String kind, String most, String size) {
        return (kind.equals("EXACT") ? "出来上がり " + size : kind.equals("WITHIN") ? "一辺 " + size + "～" + most + " の正方形、手持ちの布でできるだけ大きく" : "手持ちの布でできるだけ大きく");
    }

    @Override
    public String isWay(String idea, String scheme) {
        return scheme + "（" + idea + "）";
    }

    @Override
    public String joins(String least, int most) {
        return (most == 0 ? "ストリップはどれも一枚で、はぎません。" : "ストリップははいでもかまいません。はぎは " + most + " か所まで、仕上がりは " + least + " より小さくしません。");
    }

    @Override
    public String middle(String middle) {
        return "真ん中には、" + (middle.equals("FAVOURITE") ? "お気に入りの布" : middle.equals("LIGHTEST") ? "大きさの足りる布でいちばん明るいもの" : middle.equals("DARKEST") ? "大きさの足りる布でいちばん暗いもの" : "どの布でも") + "置きます。";
    }

    @Override
    public String order(String order) {
        return (order.equals("ROUND") ? "ストリップを次の辺へ、ぐるぐると付けます。" : order.equals("PAIRS") ? "ストリップを向かい合う辺に、組で付けます。" : "ストリップを二辺にだけ付け、中心布は角に残ります。");
    }

    @Override
    public String orderOpen() {
        return "ストリップの順は、手持ちの布によります。";
    }

    @Override
    public String plannerMissing() {
        return "この Hearthcloth はページ用の計画の部品なしに作られています。そのフォルダーで ideapage/build を実行してから作り直してください。";
    }

    @Override
    public String rounds(String rule) {
        return "周の数: " + rule + "。";
    }

    @Override
    public String ruleBar(String text) {
        return "「" + text + "」はストリップではありません。ストリップの名前は 1A、1B のようになります";
    }

    @Override
    public String ruleMeasure(String rule, String text) {
        return "「" + text + "」は使えません。次のどれかを書いてください: " + (rule.equals("SIZE") ? "open、\"16 in\" や \"16 to 20 in\" のような大きさ、\"for box 30 x 20 x 8 cm\"" : rule.equals("HEARTH") ? "open、largest square、\"30 to 40 %\" のような割合、\"14 in\" のような大きさ" : "open、strips、\"8 to 12 %\" のような割合、\"2 to 3 in\" のような幅");
    }

    @Override
    public String ruleMost(String most, String none, String text) {
        return "「" + text + "」は使えません。" + (none.equals("yes") ? "" + most + " までの長さを書いてください" : "0 より大きく " + most + " までの長さを書いてください");
    }

    @Override
    public String ruleRange(String text) {
        return "「" + text + "」は範囲ではありません。\"2 to 3 in\" のように小さい寸法を先に書いてください";
    }

    @Override
    public String ruleReach(String text) {
        return "「" + text + "」は範囲の外です。0 より大きく 5 m までで書き、単位を確かめてください";
    }

    @Override
    public String ruleRounds(String most, String text) {
        return "「" + text + "」は使えません。1 から " + most + " までの周の数、\"2 to 4\" のような二つの数、または \"open\" を書いてください";
    }

    @Override
    public String ruleSeam(String names, String text) {
        return "「" + text + "」は知られている縫い方ではありません。あるもの: " + names;
    }

    @Override
    public String ruleShare(String text) {
        return "「" + text + "」は割合ではありません。\"30 to 40 %\" のように 1 から 99 までの整数を小さい方から書いてください";
    }

    @Override
    public String ruleWay(String names, String text) {
        return "「" + text + "」は配色ではありません。次のどれかを書いてください: " + names;
    }

    @Override
    public String ruleWider() {
        return "広い縫い代が狭い縫い代を包むので、広くなければなりません";
    }

    @Override
    public String seam(String name, String seam) {
        return (seam.equals("felled") ? "折り伏せ縫い" : seam.equals("ssamsol") ? "サムソル（細い折り伏せ縫い）" : seam.equals("felled_and_trimmed") ? "切りそろえた折り伏せ縫い" : seam.equals("lapped") ? "かみ合わせ縫い" : seam.equals("french") ? "袋縫い" : seam.equals("french_trimmed") ? "切りそろえた袋縫い" : seam.equals("gamchimjil") ? "カムチムジル（巻きかがり）" : "" + name);
    }

    @Override
    public String sewn(String corner, String first, String narrow, String seam, String second, String wide) {
        return "縫い目: " + seam + "、" + narrow + " + " + wide + "。縁の始末: " + first + " + " + second + "、角は" + (corner.equals("MITRED") ? "額縁仕立て" : "直角") + "。";
    }

    @Override
    public String size(String rule) {
        return "布の大きさ: " + rule + "。";
    }

    @Override
    public String suited(String tie) {
        return (tie.equals("FOUR_CORNER") ? "箱、重ねたもの、重いもの" : tie.equals("EDGE_ALONG_EDGE") ? "大きな布に置いた箱" : tie.equals("ERRAND") ? "手に持って運ぶ箱" : tie.equals("FLAT") ? "平たい箱とたたんだ服（結ばない）" : tie.equals("TWO_KNOT") ? "長い箱と巻いたござ" : tie.equals("ONE_BOTTLE") ? "立てた瓶" : tie.equals("TWO_BOTTLES") ? "同じ瓶 2 本" : tie.equals("ROUND") ? "ボール、メロン、丸いもの" : tie.equals("BOOKS") ? "同じ大きさの本 2 冊" : "巻いた布、筒、缶");
    }

    @Override
    public String tie(String tie) {
        return (tie.equals("FOUR_CORNER") ? "四つ結び" : tie.equals("EDGE_ALONG_EDGE") ? "四つ結び（箱を布と平行に置く）" : tie.equals("ERRAND") ? "お使い包み" : tie.equals("FLAT") ? "平包み" : tie.equals("TWO_KNOT") ? "二つ結び" : tie.equals("ONE_BOTTLE") ? "瓶包み（1 本）" : tie.equals("TWO_BOTTLES") ? "瓶包み（2 本）" : tie.equals("ROUND") ? "すいか包み" : tie.equals("BOOKS") ? "本包み" : "巻き結び");
    }
}
