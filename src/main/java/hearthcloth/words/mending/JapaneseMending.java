package hearthcloth.words.mending;

/** The room of mending in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseMending implements MendingWords {

    @Override
    public String bar(String bar) {
        return "ストリップ " + bar;
    }

    @Override
    public String deedAgain(String what) {
        return (what.equals("small") ? "間違いのあと計画し直し" : "まだ裁つものを計画し直し");
    }

    @Override
    public String deedAllCut(String cloth) {
        return cloth + " を裁断";
    }

    @Override
    public String deedCut(int count, String cut, String made, String piece) {
        return "布 " + piece + " の裁断 " + "" + cut + (made.equals("yes") ? "" : "（まだ）");
    }

    @Override
    public String deedLeft(String bar, String wrong) {
        return "ストリップ " + bar + ": " + (wrong.equals("FACE") ? "裏返しのまま" : "本体の別の辺のまま");
    }

    @Override
    public String deedMistake(String piece) {
        return "布 " + piece + " の間違い";
    }

    @Override
    public String deedSewn(String name, String size, String what) {
        return (what.equals("bar") ? "ストリップ " + name + " を縫った" : what.equals("measured") ? "ストリップ " + name + " を縫った、" + size : "手順 " + name + " を縫った");
    }

    @Override
    public String deedShort(String bar, String way) {
        return "ストリップ " + bar + " が短い: " + (way.equals("JOINED_STRIP") ? "布をはぐ" : way.equals("ANEW") ? "ストリップを作り直す" : way.equals("PIECED") ? "ストリップをはいで作り直す" : "そのまま使い、本体を合わせて切る");
    }

    @Override
    public String deedUnpicked(int more, String name, String what) {
        return "ほどいた: " + (what.equals("bar") ? "ストリップ " + name : "手順 " + name) + (more == 0 ? "" : " ほか " + more + " 手順");
    }

    @Override
    public String hearth() {
        return "中心布";
    }

    @Override
    public String noBar(String bar) {
        return "ストリップ " + bar + " がそれほど短いはずはありません。裁ち端まで含めて測り直してください。";
    }

    @Override
    public String noLarge() {
        return "予定の大きさがあります。余りを切って続けてください。";
    }

    @Override
    public String noLeft() {
        return "それには残りの布が足りません。別の方法を選んでください。";
    }

    @Override
    public String noNothing() {
        return "寸法が 0 のピースは使えません。今あるものを測るか、別の布を使ってください。";
    }

    @Override
    public String noShort(String bar) {
        return "ストリップ " + bar + " の長さは足りています。縫い付けて、余りを切ってください。";
    }

    @Override
    public String noWork() {
        return "本体がそれほど小さいはずはありません。裁ち端まで含めて測り直してください。";
    }

    @Override
    public String piece(String fabric, String piece, String size) {
        return "布 " + piece + "（" + fabric + "、" + size + "）";
    }

    @Override
    public String shortAnew(String bar, String pieces) {
        return "ストリップ " + bar + " を裁ち直します。使う布: " + pieces + "。";
    }

    @Override
    public String shortBack() {
        return "そのために切った布は、布の一覧に戻ります。";
    }

    @Override
    public String shortPieced(String bar, String pieces) {
        return "ストリップ " + bar + " をはぎ合わせて作ります。使う布: " + pieces + "。";
    }

    @Override
    public String shortStrip(String bar, String piece, String size) {
        return piece + "から " + size + " に裁った布を、ストリップ " + bar + " にはぎます。";
    }

    @Override
    public String shortTrim(String bar, String from, String less, String to, String way) {
        return "縫った本体を" + from + "の側で " + less + " 切り、" + (way.equals("high") ? "高さ" : "幅") + " " + to + " にして、ストリップ " + bar + " をそのまま縫い付けます。";
    }

    @Override
    public String small(String by, String size, String what) {
        return what + "が" + by + "足りません。今の寸法は " + size + " です。";
    }

    @Override
    public String smallAcross(String length) {
        return "横 " + length;
    }

    @Override
    public String smallAlong(String length) {
        return "縦 " + length;
    }

    @Override
    public String wayAgain(String pieces, String what) {
        return what + "を裁ち直します。使う布: " + pieces + "。";
    }

    @Override
    public String wayBars(String bars, int count, String width) {
        return "ストリップ " + bars + " を幅 " + width + " ";
    }

    @Override
    public String wayFabric(String now, String was, String what) {
        return "すると" + what + "は " + was + " ではなく " + now + " になります。";
    }

    @Override
    public String waySmaller(String size, String what) {
        return what + "はそのまま使います。布は " + size + " になります。";
    }

    @Override
    public String wayStrip(String pieces, String what) {
        return what + "に細い布をはぎます。使う布: " + pieces + "。";
    }

    @Override
    public String wayWider(String bars, String size, String what) {
        return what + "はそのまま使い、" + bars + "に裁ちます。布は " + size + " のままです。";
    }
}
