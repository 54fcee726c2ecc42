package hearthcloth.words.reporting;

import hearthcloth.words.korean.Particles;

/** The room of reporting in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanReporting implements ReportingWords {

    @Override
    public String areaLarge(String number, String unit) {
        return number + " " + (unit.equals("metric") ? "m²" : "제곱야드");
    }

    @Override
    public String care(String what) {
        return "주의: " + what;
    }

    @Override
    public String giftLeast(String gift, String size, String tie) {
        return gift + ", " + tie + ": 정사각형 보자기 " + size + " 이상";
    }

    @Override
    public String giftRange(String gift, String least, String most, String size, String tie) {
        return gift + ", " + tie + ": 정사각형 보자기 " + size + " 이상(매듭의 천이 얇거나 두꺼우면 " + least + "~" + most + ")";
    }

    @Override
    public String guidelineBent(String what) {
        return "굽힌 규칙: " + what;
    }

    @Override
    public String guidelineKeeps() {
        return "없음. 규칙을 모두 지킵니다.";
    }

    @Override
    public String guidelineNearest(String folder, String number, String size, String title) {
        return number + "  " + title + ", " + size + ", " + folder + "에 있으며 바로 자르고 꿰맬 수 있습니다.";
    }

    @Override
    public String guidelineNone() {
        return "이 천들로는 보자기를 만들 수 없습니다.";
    }

    @Override
    public String guidelineNoneKept(String name) {
        return "이 천들에서는 \"" + name + "\"의 규칙을 모두 지키는 보자기를 찾지 못했습니다.";
    }

    @Override
    public String guidelineScraps() {
        return "이 천들로는 중심 조각 둘레에 띠를 두를 수 없어, 조각을 있는 그대로 이었습니다.";
    }

    @Override
    public String kitsCloth(String fabric, int n, String size, String title) {
        return title + ", " + size + ", 중심 조각은 " + fabric + ", " + (n == 0 ? "이음 없음" : "이음 " + n + "곳");
    }

    @Override
    public String kitsFree(int n, String size, String title) {
        return title + ", " + size + ", " + (n == 0 ? "이음 없음" : "이음 " + n + "곳");
    }

    @Override
    public String kitsHanded(int n) {
        return "천 " + n + "장을 한 보자기가 다른 보자기에 남깁니다. 누가 먼저 자르는지는 kits.pdf에 있습니다.";
    }

    @Override
    public String kitsInTurn(String n) {
        return "차례로 나누면: " + n + ".";
    }

    @Override
    public String kitsMost(String bound, String worst) {
        return "가장 많은 이음: " + worst + ". 이 천을 어떻게 나누어도 " + bound + "보다 적을 수 없습니다.";
    }

    @Override
    public String kitsNothing(String name) {
        return name + ": 아무것도 만들 수 없었습니다. 부탁한 대로는 아닙니다.";
    }

    @Override
    public String kitsPart(String cloth, String folder, String name) {
        return name + ": " + cloth + ", " + folder + "에.";
    }

    @Override
    public String kitsPartOther(String cloth, String folder, String name) {
        return name + ": " + cloth + ", " + folder + "에. 부탁한 대로는 아닙니다.";
    }

    @Override
    public String kitsPrint(String file) {
        return "이름표, 장보기 목록, 선생님용 한 장: " + file;
    }

    @Override
    public String kitsWithout(String n) {
        return "차례로 나누었다면 " + n + "명은 받지 못했을 것입니다.";
    }

    @Override
    public String planChosen(String what) {
        return "대신 고른 것: " + what;
    }

    @Override
    public String planCuts(String cuts, String lost, String percent, String touched) {
        return "재단: " + cuts + ". 버림: " + lost + "(자른 천 " + touched + "의 " + percent + ").";
    }

    @Override
    public String planCutsBound(String cuts, String least, String lost, String percent, String touched) {
        return "재단: " + cuts + ". 버림: " + lost + "(자른 천 " + touched + "의 " + percent + ". 이 보자기는 어떻게 해도 " + least + "보다 적게 자를 수 없습니다).";
    }

    @Override
    public String planCutsBounds(String cuts, String least, String leastLost, String lost, String percent, String touched) {
        return "재단: " + cuts + ". 버림: " + lost + "(자른 천 " + touched + "의 " + percent + ". 이 보자기는 어떻게 해도 " + least + "보다 적게 자르거나 " + leastLost + "보다 적게 버릴 수 없습니다).";
    }

    @Override
    public String planGift(String gift) {
        return "선물: " + gift + ".";
    }

    @Override
    public String planHead(String folder, String size, String title) {
        return title + ", " + size + ", " + folder + "에";
    }

    @Override
    public String planImpossible() {
        return "가진 천으로는 이 보자기를 만들 수 없습니다.";
    }

    @Override
    public String planJoinsAbove(String above, String n) {
        return "이음: " + n + ", 가장 적은 수보다 많아야 " + above + " 많습니다.";
    }

    @Override
    public String planJoinsFewest(String n) {
        return "이음: " + n + ", 가장 적게.";
    }

    @Override
    public String planLarger(String length) {
        return "꿰매면서 줄어들 것을 생각해 최소보다 " + length + " 크게 계획합니다.";
    }

    @Override
    public String planMore(String size) {
        return Particles.fitted("비슷한 것을 더 보려면 --size \"" + size + "\"(으)로 묻고 나머지는 천에 맡기십시오.");
    }

    @Override
    public String planNearest(String size, String title) {
        return "만들 수 있는 가장 가까운 것은 " + size + ": " + title + ".";
    }

    @Override
    public String planNearestJoins(int n, String size, String title) {
        return "만들 수 있는 가장 가까운 것은 " + size + ": " + title + ", " + (n == 0 ? "이음 없음" : "이음 " + n + "곳") + ".";
    }

    @Override
    public String planNotFound() {
        return "가진 천으로 이 보자기를 만들 방법을 찾지 못했습니다.";
    }

    @Override
    public String planPatches(String patches, String seams) {
        return "조각: " + patches + ". 솔기: " + seams + ".";
    }

    @Override
    public String planReady(String fabrics, String folder) {
        return folder + "에 있으며 바로 자르고 꿰맬 수 있습니다: " + fabrics + ".";
    }

    @Override
    public String planStash(String area, int fabrics, int pieces) {
        return "천: " + "" + fabrics + "가지" + " " + "" + pieces + "장" + ", " + area + ".";
    }

    @Override
    public String planTied(String what) {
        return "묶으면: " + what;
    }

    @Override
    public String planTimeOut(String budget) {
        return "알림: 모두 시도하기 전에 시간이 끝났습니다. --budget을 " + budget + "처럼 늘리면 더 나은 것을 찾을 수 있습니다.";
    }

    @Override
    public String progressBest(int n, String tried) {
        return "" + tried + ". 가장 좋은 것은 이음 " + n + "곳";
    }

    @Override
    public String progressLayouts(String found, String of, String tried) {
        return "계획하는 중: 배치 " + of + "가지 가운데 " + tried + "가지를 해 보았고 " + found + "가지를 만들 수 있습니다";
    }

    @Override
    public String progressTogether(int asked, String made, String most, String of, String tried) {
        return "함께 계획하는 중: 나누는 방법 " + of + "가지 가운데 " + tried + "가지를 해 보았습니다. 보자기 " + asked + "장 가운데 " + made + "장, 이음은 많아야 " + most + "곳";
    }

    @Override
    public String readAll(String doubt) {
        return "모든 천: " + doubt;
    }

    @Override
    public String readColumn(String column) {
        return (column.equals("usable") ? "쓸 수 있는 크기" : column.equals("shape") ? "모양" : column.equals("colour") ? "색" : column.equals("look") ? "무늬" : column.equals("fabric") ? "천" : "변");
    }

    @Override
    public String readDoubts() {
        return "확실하지 않은 것:";
    }

    @Override
    public String readFound(int fabrics, int pieces) {
        return "천 " + "" + pieces + "장" + "을 찾았습니다. 겉모습으로 보아 " + "" + fabrics + "가지" + "입니다.";
    }

    @Override
    public String readKnow() {
        return "알아 둘 것:";
    }

    @Override
    public String readLeft(int n, String numbers) {
        return "확실하지 않아 파일에서 뺀 것: 천 " + n + "장(" + numbers + "). 안내대로 사진을 다시 찍거나, --keep-doubtful을 붙여 함께 쓰세요.";
    }

    @Override
    public String readLittle() {
        return "너무 작음";
    }

    @Override
    public String readLook(String figured) {
        return (figured.equals("yes") ? "무늬" : "민무늬");
    }

    @Override
    public String readNarrow(int n, String numbers) {
        return "폭 1센티미터짜리 직사각형도 자를 수 없어 뺀 것: 천 " + n + "장(" + numbers + ").";
    }

    @Override
    public String readNone() {
        return "종이 옆에서 천을 찾지 못했습니다. 천이 뚜렷이 보이는 바닥에 놓고, 천마다 둘레로 바닥이 조금씩 보이게 하세요.";
    }

    @Override
    public String readPiece(String doubt, String number) {
        return "천 " + number + ": " + doubt;
    }

    @Override
    public String readShape(String n, String shape) {
        return (shape.equals("TRIANGLE") ? "삼각형" : shape.equals("STRIP") ? "띠" : shape.equals("SQUARE") ? "정사각형" : shape.equals("RECTANGLE") ? "직사각형" : shape.equals("UNEVEN") ? "고르지 않은 네 변" : shape.equals("L") ? "L자 모양" : "변 " + n + "개");
    }

    @Override
    public String readWrote(int fabrics, String file, int lines, int pieces) {
        return file + " 저장: 천 " + "" + pieces + "장" + ", " + "" + fabrics + "가지" + ", " + "" + lines + "줄" + ". 사진으로는 어느 쪽이 겉인지, 식서가 어디인지 알 수 없습니다. 그래서 두 면을 같다고 적고 긴 변을 길이로 적었습니다. 다르면 파일을 고치세요.";
    }

    @Override
    public String sizeCloth(String end, String size) {
        return Particles.fitted("완성 보자기 " + size + "(으)로 쌀 수 있는 가장 큰 선물(매듭과 끝에 귀마다 " + end + "):");
    }

    @Override
    public String sizeEnds(String least, String leastEnd, String most, String mostEnd, String usual) {
        return "매듭 귀마다 " + usual + "; " + leastEnd + "이면 " + least + ", " + mostEnd + "이면 " + most;
    }

    @Override
    public String sizeFits(String enough) {
        return (enough.equals("yes") ? "맞음" : "작음");
    }

    @Override
    public String sizeGift(String gift) {
        return Particles.fitted(gift + "을(를) 싸려면 완성 보자기는 적어도 이만한 정사각형입니다:");
    }

    @Override
    public String sizeKnot() {
        return "맞매듭:";
    }

    @Override
    public String sizeNoKnot() {
        return "매듭 없음";
    }

    @Override
    public String sizeNone(String uses) {
        return "없음; 파는 쓰임: " + uses;
    }

    @Override
    public String sizeNothing() {
        return "없음; 너무 작습니다";
    }

    @Override
    public String sizeShape(String shape) {
        return (shape.equals("cake") ? "3 : 2 : 0.8의 상자, 케이크 상자처럼" : shape.equals("cube") ? "정육면체" : shape.equals("flat") ? "3 : 2 : 0.3의 납작한 상자, 갠 셔츠처럼" : shape.equals("long") ? "5 : 1 : 1의 긴 상자" : shape.equals("bottle") ? "높이가 너비의 네 배인 병, 포도주 병처럼" : shape.equals("bottles") ? "그런 병 두 개" : shape.equals("ball") ? "공" : shape.equals("books") ? "1.4 : 1 : 0.14의 책 두 권" : "길이가 굵기의 네 배인 두루마리");
    }

    @Override
    public String sizeSold(String tie) {
        return Particles.fitted("기성 크기(관행)와, 이 모양의 선물을 " + tie + "(으)로 쌀 때의 가장 큰 것:");
    }

    @Override
    public String sizeSteps(String tie) {
        return tie + " 묶는 법:";
    }

    @Override
    public String sizeTrade(String size) {
        return "그다음 기성 크기는 " + size + "입니다.";
    }

    @Override
    public String sizeTradeNamed(String size, String trade) {
        return "그다음 기성 크기는 " + size + "(" + trade + ")입니다.";
    }

    @Override
    public String sizeUpTo(String gift, String uses) {
        return gift + "까지; 파는 쓰임: " + uses;
    }

    @Override
    public String square(String side) {
        return side + " 정사각형";
    }

    @Override
    public String student(String n) {
        return "수강생 " + n;
    }
}
