package hearthcloth.words.typing;

import hearthcloth.words.korean.Particles;

/** The room of typing in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanTyping implements TypingWords {

    @Override
    public String commandUnknown(String command, String commands) {
        return command + "(이)라는 명령은 없습니다. 있는 것: " + commands + ".";
    }

    @Override
    public String guidelineFavourite(String fabrics, String name) {
        return "--favourite: \"" + name + "\"(이)라는 천은 없습니다. 있는 것: " + fabrics + ".";
    }

    @Override
    public String guidelineTwice(String option) {
        return Particles.fitted(option + ": 본보기에 적혀 있습니다. " + option + "을(를) 빼거나 본보기에 적으세요.");
    }

    @Override
    public String guidelineWrote(String file, String name) {
        return Particles.fitted(file + "을(를) 썼습니다: " + name + ".");
    }

    @Override
    public String ideaLarge(String most, String size) {
        return "페이지가 " + size + " kB가 되어 " + most + " kB를 넘습니다. 그림을 빼거나 줄이세요.";
    }

    @Override
    public String ideaNoPieces() {
        return "예시의 천이 없습니다. --from STASH.csv로 주세요.";
    }

    @Override
    public String ideaWrote(String file, String size) {
        return Particles.fitted(file + "을(를) 썼습니다(" + size + " kB). 네트워크 없이 열리는 파일 하나입니다. 보내거나 자기 사이트에 올리세요.");
    }

    @Override
    public String inside(String what) {
        return "Hearthcloth 안에서 문제가 생겼습니다(" + what + ").";
    }

    @Override
    public String kitsBoth() {
        return "--students: 수는 목록에서 정해집니다. --students나 --wishes를 빼세요.";
    }

    @Override
    public String kitsEmpty() {
        return "천이 없습니다. 적어도 한 장을 넣으세요.";
    }

    @Override
    public String kitsWhich() {
        return "어떤 보자기입니까? --wishes LIST.csv, 또는 --students 12 --size \"16 in\"을 적으세요.";
    }

    @Override
    public String language(String tags, String text) {
        return Particles.fitted("\"" + text + "\"은(는) 쓸 수 없는 언어입니다. " + tags + " 가운데 하나나 그 이름을 적으세요");
    }

    @Override
    public String memory() {
        return "이 천 목록에는 메모리가 모자랐습니다. 천을 몇 장 빼고 다시 해 보세요.";
    }

    @Override
    public String missing(String what) {
        return "빠진 것이 있습니다: " + what + ".";
    }

    @Override
    public String notFile(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 파일 이름이 아닙니다. 다른 이름을 고르세요");
    }

    @Override
    public String note(String what) {
        return "알림: " + what;
    }

    @Override
    public String optionNoValue(String option, String text) {
        return Particles.fitted(option + "에는 값이 없습니다. \"" + text + "\"을(를) 지우세요.");
    }

    @Override
    public String optionTwice(String option) {
        return Particles.fitted(option + "을(를) 두 번 적었습니다. 하나를 지우세요.");
    }

    @Override
    public String optionUnknown(String option) {
        return option + "(이)라는 옵션은 없습니다.";
    }

    @Override
    public String pictureColours(String what) {
        return "그림의 색과 가장 가까운 천: " + what + ".";
    }

    @Override
    public String pictureNear(String colour, String fabric, String percent) {
        return colour + " " + percent + ", " + fabric;
    }

    @Override
    public String pictureNothing(String colour, String percent) {
        return colour + " " + percent + ", 가까운 것 없음";
    }

    @Override
    public String progress(String percent, String what) {
        return (what.equals("drawing") ? "그리는 중" : "읽는 중: " + percent);
    }

    @Override
    public String readCannot(String file) {
        return Particles.fitted(file + "을(를) 읽을 수 없습니다:");
    }

    @Override
    public String readCannotInput() {
        return "그림을 읽을 수 없습니다:";
    }

    @Override
    public String readDrawn(String file) {
        return "사진에 그렸습니다: " + file + ".";
    }

    @Override
    public String readMemory() {
        return "이 그림에는 메모리가 모자랐습니다. 더 작은 그림을 쓰세요.";
    }

    @Override
    public String readNothing() {
        return "이대로 넣을 수 있는 천이 없어서 천 목록 파일을 쓰지 않았습니다.";
    }

    @Override
    public String report() {
        return "파일은 그대로입니다. 천 목록 파일과 입력한 말을 붙여 알려 주세요.";
    }

    @Override
    public String settings(String file, String line, String name) {
        return Particles.fitted(name + "이(가) 가리키는 설정 파일 " + file + "을(를) 읽을 수 없습니다. " + line + " 같은 줄을 적거나 " + name + "을(를) 빼세요.");
    }

    @Override
    public String sheetWrote(String file) {
        return Particles.fitted(file + "을(를) 썼습니다. 100 %로, 쪽에 맞추지 말고 인쇄하세요. 그러면 가는 선이 20 cm(7 7/8 in)입니다.");
    }

    @Override
    public String shown(String command) {
        return "\"" + command + "\"에서 적는 법을 볼 수 있습니다.";
    }

    @Override
    public String sizeReach(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 범위를 벗어납니다. 보자기는 5 cm에서 5 m까지이니 수와 단위를 살피세요");
    }

    @Override
    public String sizeWhich() {
        return "쌀 것(--gift \"box 30 x 20 x 8 cm\")이나 가진 보자기(--cloth \"38 1/2 in\") 가운데 하나를 적으세요.";
    }

    @Override
    public String unread(String what) {
        return "이대로는 읽을 수 없습니다: " + what + ".";
    }

    @Override
    public String unusable(String file) {
        return Particles.fitted(file + "은(는) 이대로 쓸 수 없습니다:");
    }

    @Override
    public String unusableInput(String what) {
        return (what.equals("stash") ? "천 목록은" : "들어온 것은") + " 이대로 쓸 수 없습니다:";
    }

    @Override
    public String wordTooMany(String word) {
        return Particles.fitted("\"" + word + "\"은(는) 남는 말입니다. 여러 낱말로 된 바람은 따옴표로 묶으세요.");
    }
}
