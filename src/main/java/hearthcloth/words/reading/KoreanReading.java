package hearthcloth.words.reading;

import hearthcloth.words.korean.Particles;

/** The room of reading in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanReading implements ReadingWords {

    @Override
    public String lengthBelow(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 0보다 작습니다. 길이는 0 이상입니다");
    }

    @Override
    public String lengthByZero(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 0으로 나눕니다. 1/2처럼 쓰십시오");
    }

    @Override
    public String lengthMissing() {
        return "길이가 없습니다. \"16.5 cm\"나 \"6 1/2 in\"처럼 쓰십시오";
    }

    @Override
    public String lengthNoUnit(String text) {
        return "\"" + text + "\"에 단위가 없습니다. 수 뒤에 cm, mm, in 가운데 하나를 쓰십시오";
    }

    @Override
    public String lengthNumbers(String n, String text) {
        return "\"" + text + "\"에 수가 " + n + "개 있습니다. 크기에는 하나(정사각형)나 둘, \"30 x 20 cm\"처럼 쓰십시오";
    }

    @Override
    public String lengthTooLong(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 1킬로미터보다 깁니다. 수와 단위를 확인하십시오");
    }

    @Override
    public String lengthTwoWays(String one, String other, String text) {
        return Particles.fitted("\"" + text + "\"은(는) 두 가지로 읽힙니다. " + one + "이나 " + other + "처럼 쓰십시오");
    }

    @Override
    public String lengthUnit(String text, String word) {
        return Particles.fitted("\"" + text + "\": \"" + word + "\"은(는) 단위가 아닙니다. cm, mm, m, in, ft, yd 가운데 하나를 쓰십시오");
    }

    @Override
    public String lengthUnread(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 길이가 아닙니다. \"16.5 cm\"나 \"6 1/2 in\"처럼 쓰십시오");
    }

    @Override
    public String lineColour(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 색이 아닙니다. #8a9a5b나 teal 같은 이름을 적으십시오");
    }

    @Override
    public String lineHowMany(String most) {
        return "몇 장입니까? 1에서 " + most + "까지의 수를 쓰십시오";
    }

    @Override
    public String lineLong(String n) {
        return "이 줄은 " + n + "자입니다. 한 줄에 한 가지 천만 쓰십시오";
    }

    @Override
    public String lineLongName(String most) {
        return "천 이름이 이름표에 쓰기에 너무 깁니다. " + most + "자까지 됩니다";
    }

    @Override
    public String lineNoName() {
        return "천 이름이 무엇입니까? \"초록 무늬\"처럼 색만 써도 됩니다";
    }

    @Override
    public String sizeMissing() {
        return "크기가 얼마입니까? \"10 x 20 cm\"처럼 쓰십시오";
    }

    @Override
    public String sizeNothing() {
        return "한 변이 0입니다. 0보다 큰 크기를 쓰십시오";
    }

    @Override
    public String sizeOneSide(String side) {
        return Particles.fitted(side + "은(는) 한 변입니다. 다른 변은? \"" + side + " x 20 cm\"처럼 쓰십시오");
    }

    @Override
    public String sizeTooMuch() {
        return "어떤 천 한 필보다도 큽니다. 수와 단위를 확인하십시오";
    }
}
