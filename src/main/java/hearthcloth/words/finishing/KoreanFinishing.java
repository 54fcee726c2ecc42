package hearthcloth.words.finishing;

import hearthcloth.words.korean.Particles;

/** The room of finishing in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanFinishing implements FinishingWords {

    @Override
    public String againBefore(int n) {
        return "전에 " + n + "번, 메모 없음.";
    }

    @Override
    public String againFor(String who) {
        return "받는 사람: " + who;
    }

    @Override
    public String againSomething() {
        return "무언가";
    }

    @Override
    public String againTitle() {
        return "다시 쌈";
    }

    @Override
    public String againUsed(String cloth, int n) {
        return Particles.fitted(cloth + "을(를) " + "" + n + "번" + " 썼습니다.");
    }

    @Override
    public String againWhat() {
        return "무엇을";
    }

    @Override
    public String againWhen() {
        return "언제";
    }

    @Override
    public String againWho() {
        return "누구에게";
    }

    @Override
    public String bars(int n) {
        return "띠 " + n + "개";
    }

    @Override
    public String date(String day, String month, String year) {
        return year + "년 " + (month.equals("m1") ? "1" : month.equals("m2") ? "2" : month.equals("m3") ? "3" : month.equals("m4") ? "4" : month.equals("m5") ? "5" : month.equals("m6") ? "6" : month.equals("m7") ? "7" : month.equals("m8") ? "8" : month.equals("m9") ? "9" : month.equals("m10") ? "10" : month.equals("m11") ? "11" : "12") + "월 " + day + "일";
    }

    @Override
    public String how(int days, int fabrics, String parts) {
        return parts + ", 천 " + "" + fabrics + "가지" + (days == 0 ? "" : ", " + days + "일에 걸쳐 박음") + ".";
    }

    @Override
    public String labelAgain() {
        return "다시 쌈";
    }

    @Override
    public String labelSlip() {
        return "이름표";
    }

    @Override
    public String labelSlipOf(String cloth) {
        return cloth + "의 이름표";
    }

    @Override
    public String lastStep() {
        return "마지막 단계로 돌아가기";
    }

    @Override
    public String leftBack(int n) {
        return "지금 크기대로 작업대에 돌아와 있습니다.";
    }

    @Override
    public String leftFirst() {
        return "이 남은 천을 먼저 씁니다. 무엇을 쌀까요?";
    }

    @Override
    public String leftHeading(int n) {
        return (n == 0 ? "둘 만한 남은 천이 없습니다" : "둘 만한 남은 천 " + n + "장");
    }

    @Override
    public String leftNone() {
        return "이제 천 목록에 하나도 없습니다.";
    }

    @Override
    public String leftOne(String fabric, String size) {
        return fabric + ", " + size;
    }

    @Override
    public String leftSome(String n) {
        return n + "장은 아직 작업대에 있고 나머지는 썼습니다.";
    }

    @Override
    public String leftUse() {
        return "남은 천 쓰기";
    }

    @Override
    public String leftUsed() {
        return "그 뒤로 모두 썼습니다.";
    }

    @Override
    public String notMade() {
        return "아직 만들지 않았습니다. 천이 모자랍니다.";
    }

    @Override
    public String patches(int n) {
        return "조각 " + n + "장";
    }

    @Override
    public String photoAnother() {
        return "다른 사진";
    }

    @Override
    public String photoAway() {
        return "사진 지우기";
    }

    @Override
    public String photoAwayAsk() {
        return "사진을 지울까요? 다른 곳에는 보관되어 있지 않습니다.";
    }

    @Override
    public String photoDrawn(String cloth) {
        return cloth + ", 그림";
    }

    @Override
    public String photoIsAway() {
        return "사진을 지웠습니다. 그림이 다시 나옵니다.";
    }

    @Override
    public String photoIts() {
        return "사진";
    }

    @Override
    public String photoKeep() {
        return "저장";
    }

    @Override
    public String photoKept() {
        return "사진을 저장했습니다. 언제 어디서 찍었는지는 저장하지 않습니다.";
    }

    @Override
    public String photoNone() {
        return "이 보자기의 사진이 없습니다.";
    }

    @Override
    public String photoSend() {
        return "보내기용 양면 그림";
    }

    @Override
    public String photoTake() {
        return "사진 찍기";
    }

    @Override
    public String photoYours(String cloth) {
        return cloth + "의 사진";
    }

    @Override
    public String picture(String cloth) {
        return cloth + "의 앞면";
    }

    @Override
    public String slipAgainst(String across, String both, String height, String up, String width) {
        return "계획보다 " + (across.equals("less") ? "너비가 " + width + " 좁" + (up.equals("same") ? "습니다" : "고") : across.equals("more") ? "너비가 " + width + " 넓" + (up.equals("same") ? "습니다" : "고") : "") + (both.equals("yes") ? " " : "") + (up.equals("less") ? "높이가 " + height + " 낮습니다" : up.equals("more") ? "높이가 " + height + " 높습니다" : "") + ".";
    }

    @Override
    public String slipAnd() {
        return ",";
    }

    @Override
    public String slipAsPlanned() {
        return "계획대로입니다.";
    }

    @Override
    public String slipCorners() {
        return "귀에서 귀까지";
    }

    @Override
    public String slipCornersOther() {
        return "귀에서 귀까지, 다른 쪽";
    }

    @Override
    public String slipHeight() {
        return "높이";
    }

    @Override
    public String slipIsKept() {
        return "이름표를 저장했습니다.";
    }

    @Override
    public String slipIts() {
        return "이름표";
    }

    @Override
    public String slipKeep() {
        return "이름표 저장";
    }

    @Override
    public String slipKeeper() {
        return "받는 사람";
    }

    @Override
    public String slipLeans(String length) {
        return "귀에서 귀까지 두 방향이 " + length + " 다릅니다. 조금 기울었지만 묶으면 아무도 모릅니다.";
    }

    @Override
    public String slipLongName(String most) {
        return "이름은 " + most + "자까지 적으세요.";
    }

    @Override
    public String slipLongNote(String most) {
        return "메모는 " + most + "자까지입니다.";
    }

    @Override
    public String slipMade() {
        return "만든 날";
    }

    @Override
    public String slipMeasures(String unit) {
        return "실제 크기, " + unit;
    }

    @Override
    public String slipMissing(String side) {
        return (side.equals("width") ? "너비도 적거나 크기를 모두 비워 두세요." : "높이도 적거나 크기를 모두 비워 두세요.");
    }

    @Override
    public String slipName() {
        return "이름";
    }

    @Override
    public String slipPlanned(String size) {
        return "계획 " + size;
    }

    @Override
    public String slipPrint() {
        return "인쇄";
    }

    @Override
    public String slipSewn() {
        return "다 박았음";
    }

    @Override
    public String slipStraight() {
        return "귀에서 귀까지 두 방향이 같습니다.";
    }

    @Override
    public String slipTie() {
        return "묶는 법 보기";
    }

    @Override
    public String slipUnread(String field, String why) {
        return (field.equals("width") ? "너비" : field.equals("height") ? "높이" : field.equals("corner") ? "귀에서 귀까지" : "다른 귀") + ": " + why;
    }

    @Override
    public String slipWidth() {
        return "너비";
    }

    @Override
    public String slipWord() {
        return "나에게 한마디";
    }

    @Override
    public String slipWrapped() {
        return "싼 것";
    }

    @Override
    public String title() {
        return "다 박았고 튼튼합니다.";
    }
}
