package hearthcloth.words.mending;

import hearthcloth.words.korean.Particles;

/** The room of mending in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanMending implements MendingWords {

    @Override
    public String bar(String bar) {
        return "띠 " + bar;
    }

    @Override
    public String deedAgain(String what) {
        return (what.equals("small") ? "실수한 뒤 다시 계획함" : "아직 자를 것을 다시 계획함");
    }

    @Override
    public String deedAllCut(String cloth) {
        return cloth + " 자름";
    }

    @Override
    public String deedCut(int count, String cut, String made, String piece) {
        return "천 " + piece + "의 " + "" + cut + "번째 재단" + (made.equals("yes") ? "" : "(아직 안 함)");
    }

    @Override
    public String deedLeft(String bar, String wrong) {
        return "띠 " + bar + ": " + (wrong.equals("FACE") ? "뒤집힌 채로 둠" : "작업물의 다른 변에 둔 채로");
    }

    @Override
    public String deedMistake(String piece) {
        return "천 " + piece + "에서 실수";
    }

    @Override
    public String deedSewn(String name, String size, String what) {
        return (what.equals("bar") ? "띠 " + name + " 박음" : what.equals("measured") ? "띠 " + name + " 박음, " + size : "" + name + "단계 박음");
    }

    @Override
    public String deedShort(String bar, String way) {
        return Particles.fitted("띠 " + bar + "이(가) 짧음: " + (way.equals("JOINED_STRIP") ? "천을 이어 붙이기" : way.equals("ANEW") ? "띠 새로 만들기" : way.equals("PIECED") ? "띠를 이어서 새로 만들기" : "그대로 쓰고 작업물을 맞추어 자르기"));
    }

    @Override
    public String deedUnpicked(int more, String name, String what) {
        return "뜯음: " + (what.equals("bar") ? "띠 " + name : "" + name + "단계") + (more == 0 ? "" : ", 그 밖에 " + more + "단계");
    }

    @Override
    public String hearth() {
        return "중심 조각";
    }

    @Override
    public String noBar(String bar) {
        return Particles.fitted("띠 " + bar + "이(가) 그렇게 짧을 수 없습니다. 자른 끝까지 다시 재세요.");
    }

    @Override
    public String noLarge() {
        return "계획한 크기가 됩니다. 남는 것을 자르고 계속하세요.";
    }

    @Override
    public String noLeft() {
        return "그러기에는 남은 천이 모자랍니다. 다른 방법을 고르세요.";
    }

    @Override
    public String noNothing() {
        return "크기가 0인 조각은 쓸 수 없습니다. 있는 것을 재거나 다른 천을 쓰세요.";
    }

    @Override
    public String noShort(String bar) {
        return "띠 " + bar + "의 길이는 넉넉합니다. 그대로 박고 남는 것을 자르세요.";
    }

    @Override
    public String noWork() {
        return "작업물이 그렇게 작을 수 없습니다. 시접까지 다시 재세요.";
    }

    @Override
    public String piece(String fabric, String piece, String size) {
        return "천 " + piece + "(" + fabric + ", " + size + ")";
    }

    @Override
    public String shortAnew(String bar, String pieces) {
        return Particles.fitted("띠 " + bar + "을(를) 다시 자릅니다. 쓸 천: " + pieces + ".");
    }

    @Override
    public String shortBack() {
        return "그 띠로 자른 것은 천 목록으로 돌아갑니다.";
    }

    @Override
    public String shortPieced(String bar, String pieces) {
        return Particles.fitted("띠 " + bar + "을(를) 이어서 만듭니다. 쓸 천: " + pieces + ".");
    }

    @Override
    public String shortStrip(String bar, String piece, String size) {
        return Particles.fitted(piece + "에서 " + size + "(으)로 자른 천을 띠 " + bar + "에 이어 붙입니다.");
    }

    @Override
    public String shortTrim(String bar, String from, String less, String to, String way) {
        return Particles.fitted("박은 작업물을 " + from + " 쪽에서 " + less + " 잘라 " + (way.equals("high") ? "높이" : "너비") + " " + to + "(으)로 하고, 띠 " + bar + "을(를) 그대로 박습니다.");
    }

    @Override
    public String small(String by, String size, String what) {
        return what + ": " + by + " 모자랍니다. 지금 크기는 " + size + ".";
    }

    @Override
    public String smallAcross(String length) {
        return "가로 " + length;
    }

    @Override
    public String smallAlong(String length) {
        return "세로 " + length;
    }

    @Override
    public String wayAgain(String pieces, String what) {
        return Particles.fitted(what + "을(를) 다시 자릅니다. 쓸 천: " + pieces + ".");
    }

    @Override
    public String wayBars(String bars, int count, String width) {
        return "띠 " + bars + " 너비 " + width;
    }

    @Override
    public String wayFabric(String now, String was, String what) {
        return Particles.fitted("그러면 " + what + "은(는) " + was + " 대신 " + now + "이(가) 됩니다.");
    }

    @Override
    public String waySmaller(String size, String what) {
        return Particles.fitted(what + "은(는) 그대로 씁니다. 보자기는 " + size + "이(가) 됩니다.");
    }

    @Override
    public String wayStrip(String pieces, String what) {
        return what + "에 좁은 천을 이어 붙입니다. 쓸 천: " + pieces + ".";
    }

    @Override
    public String wayWider(String bars, String size, String what) {
        return Particles.fitted(what + "은(는) 그대로 쓰고, " + bars + "(으)로 자릅니다. 보자기는 그대로 " + size + "입니다.");
    }
}
