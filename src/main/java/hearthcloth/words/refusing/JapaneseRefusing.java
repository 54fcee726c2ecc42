package hearthcloth.words.refusing;

/** The room of refusing in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseRefusing implements RefusingWords {

    @Override
    public String fileAfterQuote(String text) {
        return "閉じる引用符のあとに文字があります: " + text + "。文字の一部の引用符は \"6 1/2\"\" wide\" のように二つ重ねてください";
    }

    @Override
    public String fileAt(String column, String line, String what) {
        return (column.equals("none") ? "" + line + " 行目: " + what : "" + line + " 行目、" + column + ": " + what);
    }

    @Override
    public String fileCells(String cells, String columns) {
        return "セルが " + cells + " 個で列は " + columns + " 列です。コンマを含むセルは \"16,5 cm\" のように引用符 \" で囲んでください";
    }

    @Override
    public String fileChoice(String one, String other, String text) {
        return text + " はここでは意味がありません。" + one + " か " + other + " を書くか、空けてください";
    }

    @Override
    public String fileColour(String text) {
        return text + " は色ではありません。#8a9a5b や dark green のような名前を書くか、空けてください";
    }

    @Override
    public String fileCount(String most, String text) {
        return text + " は枚数ではありません。1 から " + most + " までの整数を書くか、一枚なら空けてください";
    }

    @Override
    public String fileDisagree(String before, String name, String now, String was) {
        return name + " はここでは " + now + "、" + before + " 行目では " + was + " です。布はどちらか一方です。片方の行を直すか、別の名前にしてください";
    }

    @Override
    public String fileEmpty() {
        return "布の一覧のファイルが空です。一行目に列名 fabric,width,length を書き、次の行から布を一枚ずつ書いてください";
    }

    @Override
    public String fileLongName(String letters, String most, String name) {
        return name + " は " + letters + " 文字です。札に入るのは " + most + " 文字までです。短くして、残りは note に書いてください";
    }

    @Override
    public String fileMore(String more) {
        return "ほか " + more + " 件";
    }

    @Override
    public String fileMost(String metres, String text) {
        return text + " は一枚の布として受け付ける " + metres + " m を超えています。数と単位を確かめてください";
    }

    @Override
    public String fileNoColumn(String header) {
        return "この名前の列がありません。一行目に fabric、width、length の列名が必要です（今は " + header + "）";
    }

    @Override
    public String fileNoName() {
        return "布に名前がありません。呼び名を書いてください";
    }

    @Override
    public String fileNoPieces() {
        return "列名だけで布がありません。布ごとに一行書いてください";
    }

    @Override
    public String fileNoUnit(int more) {
        return "寸法に単位がありません" + (more == 0 ? "" : "（ほか " + more + " 行も）") + "。数のあとに in、cm、mm を書くか、unit の列を加えるか、--unit in または --unit cm を使ってください";
    }

    @Override
    public String fileNothing(String text) {
        return text + " は 0 です。0 より大きい寸法を書くか、行を除いてください";
    }

    @Override
    public String fileQuoteOpen() {
        return "ここで開いた引用符 \" が閉じていません。閉じるか消してください";
    }

    @Override
    public String fileTooMany(String most) {
        return "ここで布が " + most + " 枚を超えます。枚数を確かめるか、いくつか除いてください";
    }

    @Override
    public String fileTwice() {
        return "この名前の列が二つあります。一つの名前を変えるか、消してください";
    }

    @Override
    public String fileTwoColours(String before, String line, String name, String now, String side, String was) {
        return line + " 行目: " + name + (side.equals("wrong") ? " の裏" : "") + " はここでは " + now + "、" + before + " 行目では " + was + " です。先の方を使います";
    }

    @Override
    public String fileUnit(String text) {
        return text + " は単位ではありません。in、cm、mm、m、ft、yd のどれかを書いてください";
    }

    @Override
    public String giftBook() {
        return "本一冊は箱として包みます。\"box\" と三つの寸法、同じ本二冊なら \"books\" と書いてください";
    }

    @Override
    public String giftBottle() {
        return "瓶の口は胴より広くなく、肩は口より高くありません。瓶の寸法を確かめてください";
    }

    @Override
    public String giftCount(String count, String rule, String text) {
        return "「" + text + "」には寸法が " + count + " 個あります。" + rule;
    }

    @Override
    public String giftKinds() {
        return "種類と寸法を書いてください。例: \"box 30 x 20 x 8 cm\"、\"bottle 8 x 30 cm\"、\"two bottles 8 x 30 cm\"、\"ball 22 cm\"、\"books 21 x 15 x 2 cm\"、\"roll 6 x 40 cm\"";
    }

    @Override
    public String giftLarge(String size) {
        return size + " は 2 メートルを超え、一枚の布では包めません。数と単位を確かめてください";
    }

    @Override
    public String giftLong(String kinds, String text) {
        return "「" + text + "…」は贈り物としては長すぎます。" + kinds;
    }

    @Override
    public String giftNone(String kinds) {
        return "贈り物が書かれていません。" + kinds;
    }

    @Override
    public String giftRule(String kind) {
        return (kind.equals("BOX") ? "箱の寸法は三つです: 長さ x 幅 x 高さ" : kind.equals("CUBE") ? "立方体の寸法は一つです" : kind.equals("BOTTLE") ? "瓶の寸法は二つです: 直径 x 高さ" : kind.equals("BOTTLES") ? "同じ瓶二本の寸法は二つです: 直径 x 高さ" : kind.equals("BALL") ? "丸いものの寸法は一つ、直径です" : kind.equals("BOOKS") ? "同じ本二冊の寸法は一冊分の三つです: 高さ x 幅 x 厚さ" : "筒の寸法は二つです: 直径 x 長さ");
    }

    @Override
    public String giftSmall() {
        return "1 センチより短い贈り物は包めません。数と単位を確かめてください";
    }

    @Override
    public String giftUnmeasured(String rule, String text) {
        return "「" + text + "」に寸法がありません。" + rule;
    }

    @Override
    public String giftWhat(String kinds, String text) {
        return "「" + text + "」では何の贈り物か分かりません。" + kinds;
    }

    @Override
    public String giftWord(String kinds, String text, String word) {
        return "「" + text + "」: 「" + word + "」が分かりません。" + kinds;
    }

    @Override
    public String giftZero() {
        return "贈り物の寸法はどれも 0 より大きいはずです。足りないものを書いてください";
    }

    @Override
    public String givenCsv(String name, String such) {
        return name + " はフォルダーです。その中の CSV ファイルを書いてください。例：" + such;
    }

    @Override
    public String givenEmpty(String name) {
        return name + " は空です。1 行目に列名 fabric,width,length を、続く各行に布を 1 枚ずつ書きます。";
    }

    @Override
    public String givenGone(String name, String place) {
        return "ファイル " + name + " がありません。名前と、今いる場所（" + place + "）を確かめてください。";
    }

    @Override
    public String givenInput() {
        return "標準入力";
    }

    @Override
    public String givenLarge(String most, String name) {
        return name + " は " + most + " MB を超えています。布の一覧には大きすぎます。手持ちの布を書いたファイルを指定してください。";
    }

    @Override
    public String givenNoText(String line, String name, String why) {
        return (why.equals("ARCHIVE") ? "" + name + " はテキストではなく、ブックか圧縮ファイルです。表を CSV（UTF-8）で保存して、そのファイルを指定してください。" : why.equals("UTF16") ? "" + name + " は UTF-16 のテキストです。表を CSV（UTF-8）で保存して、そのファイルを指定してください。" : why.equals("BYTE") ? "" + name + " はテキストではありません（" + line + " 行目に文字でないバイトがあります）。表を CSV（UTF-8）で保存して、そのファイルを指定してください。" : "" + name + " は UTF-8 ではありません（" + line + " 行目にほかの符号の文字があります）。表を CSV（UTF-8）で保存して、そのファイルを指定してください。");
    }

    @Override
    public String givenNot(String name, String why) {
        return (why.equals("NAME") ? "「" + name + "」はファイル名ではありません。書き方を確かめてください。" : why.equals("LOCKED") ? "" + name + " を読む権限がありません。権限を変えるか、コピーしてください。" : "" + name + " を最後まで読めませんでした。ディスクを確かめて、もう一度お試しください。");
    }

    @Override
    public String givenPhoto(String name) {
        return name + " はフォルダーです。その中の写真を書いてください。";
    }

    @Override
    public String givenPhotoEmpty(String name) {
        return name + " は空です。カメラやスマートフォンで撮ったままの写真を指定してください。";
    }

    @Override
    public String heapLine(String line, String what) {
        return line + " 行目: " + what + "。";
    }

    @Override
    public String heapMany(String most, String pieces) {
        return "布が " + pieces + " 枚あります。この画面で計画できるのは " + most + " 枚までです。いくつか除いてください。";
    }

    @Override
    public String listAt(String line, String list, String what) {
        return list + "、" + line + " 行目、" + what;
    }

    @Override
    public String listColumn(String names, String text) {
        return "「" + text + "」という望みはありません。あるのは " + names + " です。";
    }

    @Override
    public String listExtent() {
        return "大きさがありません。16 in のような寸法か贈り物を書いてください";
    }

    @Override
    public String listFile(String list, String what) {
        return list + "、" + what + "。";
    }

    @Override
    public String listMissing() {
        return "name: 名前がありません。誰の布かを書いてください。";
    }

    @Override
    public String listMost(String list, String most) {
        return list + "に布が " + most + " 枚より多くあります。分けてください。";
    }

    @Override
    public String listNoName() {
        return "name という列がありません。一行目に name,size,gift のような列名を書いてください。";
    }

    @Override
    public String listNone(String list) {
        return list + "に布がありません。一行目に name,size,gift のような列名を、次の行から布を一行ずつ書いてください。";
    }

    @Override
    public String listSame(String text) {
        return "name: 「" + text + "」という布がほかにもあります。区別してください。";
    }

    @Override
    public String listTwice(String text) {
        return text + ": この名前の列が二つあります。一つを消してください。";
    }

    @Override
    public String listUnder(String text) {
        return "「" + text + "」に当たる列がありません。コンマを含むものは引用符で囲んでください。";
    }

    @Override
    public String listWhole(String line, String list, String what) {
        return list + "、" + line + " 行目: " + what;
    }

    @Override
    public String listYes(String text) {
        return "free: 「" + text + "」は使えません。yes か no を書いてください。";
    }

    @Override
    public String outEnding(String ending, String name, String option) {
        return option + "：「" + name + "」は使えません。" + ending + " で終わるファイル名を書いてください。";
    }

    @Override
    public String outFile(String name, String option, String why) {
        return (why.equals("FOLDER") ? "" + option + "：" + name + " はフォルダーです。ファイル名を書いてください。" : why.equals("THERE") ? "" + option + "：ファイル " + name + " はもうあります。ほかの名前にするか、--replace を付けて上書きしてください。" : why.equals("NOWHERE") ? "" + option + "：" + name + " を置くフォルダーがありません。先に作るか、名前を確かめてください。" : why.equals("LOCKED") ? "" + option + "：" + name + " のフォルダーに書く権限がありません。権限を変えるか、ほかのフォルダーにしてください。" : why.equals("NAME") ? "" + option + "：「" + name + "」はファイル名ではありません。書き方を確かめてください。" : "" + option + "：" + name + " を書けませんでした。権限とディスクの空きを確かめてください。");
    }

    @Override
    public String outFolder(String name, String why) {
        return (why.equals("MISSING") ? "--out：フォルダーがありません。--out cloths のように書いてください。" : why.equals("FILE") ? "--out：" + name + " はファイルです。フォルダーを書いてください。まだ無くてもかまいません。" : why.equals("NAME") ? "--out：「" + name + "」はフォルダー名ではありません。書き方を確かめてください。" : why.equals("CLOSED") ? "--out：" + name + " の中を見られませんでした。権限を確かめてください。" : "--out：" + name + " に書けませんでした。権限とディスクの空きを確かめてください。何も変わっていません。");
    }

    @Override
    public String outHolds(String name, String thing) {
        return "--out：" + name + " にはほかのもの（" + thing + "）があります。新しいフォルダーか、提案だけが入ったフォルダーを指定してください。";
    }

    @Override
    public String outInWay(String name, String thing) {
        return "--out：" + name + " を作る場所にファイル（" + thing + "）があります。ほかのフォルダーを指定してください。";
    }

    @Override
    public String outStopped(String name) {
        return "止めました。" + name + " では何も変わっていません。";
    }

    @Override
    public String stashFull(String most) {
        return "布が " + most + " 枚を超えてしまいます。枚数を確かめてください。何も加えていません";
    }

    @Override
    public String stashKnown(String fabric) {
        return fabric + " はもうあります。色、表裏、毛並みはここにあるままにします。";
    }

    @Override
    public String tieFirst() {
        return "包むものが必要です。--gift \"box 30 x 20 x 8 cm\" を加えてください";
    }

    @Override
    public String tieOther(String names, String suited, String tie) {
        return tie + "は" + suited + "に使います。この贈り物には " + names + " から選んでください";
    }

    @Override
    public String tieUnknown(String names, String text) {
        return "「" + text + "」という結び方はありません。あるのは " + names + " です";
    }

    @Override
    public String wishAt(String field, String what) {
        return field + ": " + what + "。";
    }

    @Override
    public String wishBands() {
        return "必ず入れる布や真ん中に置く布とは一緒に使いません";
    }

    @Override
    public String wishBlocks(String text) {
        return "「" + text + "」はブロックの数ではありません。\"3 x 3\" のように書いてください";
    }

    @Override
    public String wishBlocksReach(String most, String text) {
        return "「" + text + "」は範囲の外です。1 x 1 から " + most + " x " + most + " まで計画できます";
    }

    @Override
    public String wishBoth() {
        return "大きさと贈り物を両方は望めません。どちらかを外してください";
    }

    @Override
    public String wishCloth(String text) {
        return "「" + text + "」は範囲の外です。布は 2 in（5 cm）から 196 in（5 m）まで計画できます。数と単位を確かめてください";
    }

    @Override
    public String wishContrast(String names, String text) {
        return "「" + text + "」は明暗の強さではありません。次のどれかを書いてください: " + names;
    }

    @Override
    public String wishFabric(int more, String name, String names) {
        return "布の一覧に「" + name + "」という布はありません。あるのは " + names + (more == 0 ? "" : " ほか " + more + " 種");
    }

    @Override
    public String wishFar(String text) {
        return "「" + text + "」は範囲の外です。数と単位を確かめてください";
    }

    @Override
    public String wishFell(String text) {
        return "「" + text + "」では折り伏せになりません。二つ目の縫い代が一つ目を包むので、広くなければなりません";
    }

    @Override
    public String wishGoes(String other) {
        return other + " と一緒に使います";
    }

    @Override
    public String wishGoesBars() {
        return "中心布とストリップに使います。--free や --blocks とは使いません";
    }

    @Override
    public String wishManyWidths(String count, String most) {
        return "幅 " + count + " 個は多すぎます。" + most + " 個までにしてください";
    }

    @Override
    public String wishMiddle() {
        return "布一枚の番号を書いてください";
    }

    @Override
    public String wishMixed(String text) {
        return "「" + text + "」は組み合わせられません。+ のあとに scattered evenly か one bright scrap を書いてください";
    }

    @Override
    public String wishNarrow(String band, String eaten, String how, String needed, String text) {
        return "「" + text + "」は狭すぎます。" + (how.equals("finished") ? "折り伏せだけで幅 " + band + " あります" : "縫い代や縁が " + eaten + " まで取り、折り伏せが " + band + " を覆います") + "。" + needed + " より大きく書いてください";
    }

    @Override
    public String wishNeed(String most, String size, String tie) {
        return tie + "には " + size + " の布が必要ですが、計画できるのは " + most + " までです。もっと小さいものを包むか、別の結び方を選んでください";
    }

    @Override
    public String wishNoCloth(String most, String text) {
        return "「" + text + "」は " + most + " を超え、布が残りません。数と単位を確かめてください";
    }

    @Override
    public String wishNotWith(String other) {
        return other + " とは一緒に使いません";
    }

    @Override
    public String wishNothing() {
        return "寸法 0 のピースは縫えません。\"2 in\" のように長さを書いてください";
    }

    @Override
    public String wishOff(String text) {
        return "「" + text + "」は真ん中からのずれではありません。長さと right、left、away、near を書いてください: \"2 cm left, 3 cm away\"";
    }

    @Override
    public String wishOrder(String text) {
        return "「" + text + "」は順序ではありません。round、pairs、two-sides のどれかを書いてください";
    }

    @Override
    public String wishPair(int count, String text, String what) {
        return "「" + text + "」には数が " + "" + count + " 個" + "あります。" + (what.equals("seam") ? "折り伏せ縫いは \"1/4 + 1/2 in\" のように狭い縫い代と広い縫い代です" : "縁は \"1/4 + 1/4 in\" のように一つ目と二つ目の折りです");
    }

    @Override
    public String wishPart(String most, String text) {
        return "「" + text + "」は使えません。それぞれ 0 より大きく " + most + " までです";
    }

    @Override
    public String wishReach(String least, String most, String text) {
        return "「" + text + "」は範囲の外です。計画できるのは " + least + " から " + most + " までです。数と単位を確かめてください";
    }

    @Override
    public String wishScheme(String names, String text) {
        return "「" + text + "」は配色ではありません。stash か次のどれかを書いてください: " + names;
    }

    @Override
    public String wishScraps(String text) {
        return "「" + text + "」ははぎれの決まりではありません。as-they-are、cut、either のどれかを書いてください";
    }

    @Override
    public String wishSeam(String names, String text) {
        return "「" + text + "」は縫い方ではありません。\"1/4 + 1/2 in\" のように狭い縫い代と広い縫い代を書くか、次のどれかを書いてください: " + names;
    }

    @Override
    public String wishSeed(String text) {
        return "「" + text + "」は整数ではありません。7 のように書いてください";
    }

    @Override
    public String wishSetting(String text) {
        return "「" + text + "」は並べ方ではありません。straight furrow、barn raising、sunshine and shadow、turned at will、all alike のどれかを書いてください";
    }

    @Override
    public String wishShow(String text) {
        return "「" + text + "」は布が二つ以上です。見せたいものを一つ書いてください";
    }

    @Override
    public String wishSlack(String most, String text) {
        return "「" + text + "」は " + most + " を超えています。縫い縮みはそれほどありません。数と単位を確かめるか、none と書いてください";
    }

    @Override
    public String wishTied() {
        return "包んだ贈り物についてのものです。--gift \"box 30 x 20 x 8 cm\" を加えてください";
    }

    @Override
    public String wishTime(String text) {
        return "「" + text + "」は時間ではありません。2s、500ms、1min のように書いてください";
    }

    @Override
    public String wishTimeReach(String text) {
        return "「" + text + "」は範囲の外です。1ms から 10min までにしてください";
    }

    @Override
    public String wishUnit(String text) {
        return "「" + text + "」は測る単位ではありません。in か cm を書いてください";
    }

    @Override
    public String wishWhole(String least, String most, String text) {
        return "「" + text + "」は使えません。" + least + " から " + most + " までの整数を書いてください";
    }

    @Override
    public String wishWidths(int rounds, int widths) {
        return "" + rounds + " 周" + "に幅が " + "" + widths + " 個" + "です。一周に一つ書くか、周を増やしてください";
    }

    @Override
    public String wishWord(String names, String text) {
        return "「" + text + "」は使えません。次のどれかを書いてください: " + names;
    }
}
