package hearthcloth.words.reading;

/** The room of reading in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseReading implements ReadingWords {

    @Override
    public String lengthBelow(String text) {
        return "「" + text + "」は 0 より小さいです。長さは 0 以上です";
    }

    @Override
    public String lengthByZero(String text) {
        return "「" + text + "」は 0 で割っています。1/2 のように書いてください";
    }

    @Override
    public String lengthMissing() {
        return "長さがありません。「16.5 cm」や「6 1/2 in」のように書いてください";
    }

    @Override
    public String lengthNoUnit(String text) {
        return "「" + text + "」に単位がありません。数の後に cm、mm、in のどれかを書いてください";
    }

    @Override
    public String lengthNumbers(String n, String text) {
        return "「" + text + "」に数が " + n + " 個あります。大きさは一つ（正方形）か二つ、「30 x 20 cm」のように書いてください";
    }

    @Override
    public String lengthTooLong(String text) {
        return "「" + text + "」は 1 キロメートルより長いです。数と単位を確かめてください";
    }

    @Override
    public String lengthTwoWays(String one, String other, String text) {
        return "「" + text + "」は二通りに読めます。" + one + " か " + other + " と書いてください";
    }

    @Override
    public String lengthUnit(String text, String word) {
        return "「" + text + "」：「" + word + "」は単位ではありません。cm、mm、m、in、ft、yd のどれかを書いてください";
    }

    @Override
    public String lengthUnread(String text) {
        return "「" + text + "」は長さではありません。「16.5 cm」や「6 1/2 in」のように書いてください";
    }

    @Override
    public String lineColour(String text) {
        return "「" + text + "」は色ではありません。#8a9a5b や teal のような名前を書いてください";
    }

    @Override
    public String lineHowMany(String most) {
        return "何枚ですか。1 から " + most + " までの数を書いてください";
    }

    @Override
    public String lineLong(String n) {
        return "この行は " + n + " 文字あります。一行に一種類の布を書いてください";
    }

    @Override
    public String lineLongName(String most) {
        return "布の名前が札に入りません。" + most + " 文字まで入ります";
    }

    @Override
    public String lineNoName() {
        return "布の名前は何ですか。「緑のプリント」のように色でもかまいません";
    }

    @Override
    public String sizeMissing() {
        return "大きさはいくつですか。「10 x 20 cm」のように書いてください";
    }

    @Override
    public String sizeNothing() {
        return "一辺が 0 です。0 より大きい寸法を書いてください";
    }

    @Override
    public String sizeOneSide(String side) {
        return side + " は一辺です。もう一辺は？「" + side + " x 20 cm」のように書いてください";
    }

    @Override
    public String sizeTooMuch() {
        return "どの反物よりも大きいです。数と単位を確かめてください";
    }
}
