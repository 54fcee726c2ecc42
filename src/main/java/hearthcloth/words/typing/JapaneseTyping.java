package hearthcloth.words.typing;

/** The room of typing in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseTyping implements TypingWords {

    @Override
    public String commandUnknown(String command, String commands) {
        return command + " というコマンドはありません。あるのは " + commands + " です。";
    }

    @Override
    public String guidelineFavourite(String fabrics, String name) {
        return "--favourite：\"" + name + "\" という布はありません。あるのは " + fabrics + " です。";
    }

    @Override
    public String guidelineTwice(String option) {
        return option + "：手本に書いてあります。" + option + " を消すか、手本に書いてください。";
    }

    @Override
    public String guidelineWrote(String file, String name) {
        return file + " を書きました：" + name + "。";
    }

    @Override
    public String ideaLarge(String most, String size) {
        return "ページが " + size + " kB になり、" + most + " kB を超えます。画像を外すか、小さくしてください。";
    }

    @Override
    public String ideaNoPieces() {
        return "見本の布がありません。--from STASH.csv で与えてください。";
    }

    @Override
    public String ideaWrote(String file, String size) {
        return file + " を書きました（" + size + " kB）。一つのファイルで、ネットワークなしに開きます。送るか、自分のサイトに置いてください。";
    }

    @Override
    public String inside(String what) {
        return "Hearthcloth の中で問題が起きました（" + what + "）。";
    }

    @Override
    public String kitsBoth() {
        return "--students：数はリストで決まります。--students か --wishes を消してください。";
    }

    @Override
    public String kitsEmpty() {
        return "布がありません。少なくとも 1 枚入れてください。";
    }

    @Override
    public String kitsWhich() {
        return "どの布ですか。--wishes LIST.csv、または --students 12 --size \"16 in\" と書いてください。";
    }

    @Override
    public String language(String tags, String text) {
        return "\"" + text + "\" は使えない言語です。" + tags + " のどれか、またはその名前を書いてください";
    }

    @Override
    public String memory() {
        return "この布の一覧ではメモリーが足りませんでした。布をいくつか減らして、もう一度試してください。";
    }

    @Override
    public String missing(String what) {
        return "足りないものがあります：" + what + "。";
    }

    @Override
    public String notFile(String text) {
        return "\"" + text + "\" はファイル名ではありません。別の名前にしてください";
    }

    @Override
    public String note(String what) {
        return "注意：" + what;
    }

    @Override
    public String optionNoValue(String option, String text) {
        return option + " に値は要りません。\"" + text + "\" を消してください。";
    }

    @Override
    public String optionTwice(String option) {
        return option + " が二度書かれています。一つを消してください。";
    }

    @Override
    public String optionUnknown(String option) {
        return option + " というオプションはありません。";
    }

    @Override
    public String pictureColours(String what) {
        return "画像の色と、いちばん近い手持ちの布：" + what + "。";
    }

    @Override
    public String pictureNear(String colour, String fabric, String percent) {
        return colour + " " + percent + "、" + fabric;
    }

    @Override
    public String pictureNothing(String colour, String percent) {
        return colour + " " + percent + "、近いものなし";
    }

    @Override
    public String progress(String percent, String what) {
        return (what.equals("drawing") ? "描いています" : "読んでいます：" + percent);
    }

    @Override
    public String readCannot(String file) {
        return file + " が読めません：";
    }

    @Override
    public String readCannotInput() {
        return "画像が読めません：";
    }

    @Override
    public String readDrawn(String file) {
        return "写真に描きました：" + file + "。";
    }

    @Override
    public String readMemory() {
        return "この画像にはメモリーが足りませんでした。小さい画像を使ってください。";
    }

    @Override
    public String readNothing() {
        return "このまま入れられる布がないので、布の一覧ファイルは書きませんでした。";
    }

    @Override
    public String report() {
        return "ファイルはそのままです。布の一覧ファイルと入力したことばを添えて、お知らせください。";
    }

    @Override
    public String settings(String file, String line, String name) {
        return name + " が指す設定ファイル " + file + " が読めません。" + line + " のような行を書くか、" + name + " を消してください。";
    }

    @Override
    public String sheetWrote(String file) {
        return file + " を書きました。100 % で、用紙に合わせずに印刷してください。細い線が 20 cm（7 7/8 in）になります。";
    }

    @Override
    public String shown(String command) {
        return "書き方は \"" + command + "\" で見られます。";
    }

    @Override
    public String sizeReach(String text) {
        return "\"" + text + "\" は範囲の外です。布は 5 cm から 5 m までです。数と単位を確かめてください";
    }

    @Override
    public String sizeWhich() {
        return "包むもの（--gift \"box 30 x 20 x 8 cm\"）か、手元の布（--cloth \"38 1/2 in\"）の、どちらか一つを書いてください。";
    }

    @Override
    public String unread(String what) {
        return "このままでは読めません：" + what + "。";
    }

    @Override
    public String unusable(String file) {
        return file + " はこのままでは使えません：";
    }

    @Override
    public String unusableInput(String what) {
        return (what.equals("stash") ? "布の一覧" : "受け取ったもの") + "はこのままでは使えません：";
    }

    @Override
    public String wordTooMany(String word) {
        return "\"" + word + "\" は余分です。いくつかの語からなる希望は、引用符で囲んでください。";
    }
}
