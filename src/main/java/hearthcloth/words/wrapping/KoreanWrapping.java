package hearthcloth.words.wrapping;

/** The room of wrapping in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanWrapping implements WrappingWords {

    @Override
    public String labelKeep() {
        return "싸는 것";
    }

    @Override
    public String showsCaption(String what) {
        return (what.equals("patch") ? "조각마다 천이 간 곳, 조각의 퍼센트" : "천마다 간 곳, 그 천의 퍼센트");
    }

    @Override
    public String showsEnds() {
        return "매듭과 끝";
    }

    @Override
    public String showsFrom() {
        return "보이는 방향";
    }

    @Override
    public String showsHidden() {
        return "접혀 들어감";
    }

    @Override
    public String showsName(String what) {
        return (what.equals("patch") ? "조각" : "천");
    }

    @Override
    public String showsOf() {
        return "보이는 것 중";
    }

    @Override
    public String showsSides() {
        return "옆";
    }

    @Override
    public String showsTop() {
        return "위";
    }

    @Override
    public String showsUnder() {
        return "아래";
    }

    @Override
    public String showsView(String view) {
        return (view.equals("ABOVE") ? "위" : view.equals("FRONT") ? "앞" : view.equals("BACK") ? "뒤" : view.equals("RIGHT") ? "오른쪽" : view.equals("LEFT") ? "왼쪽" : view.equals("CORNER") ? "모서리" : view.equals("UNDERNEATH") ? "아래" : "없음");
    }

    @Override
    public String showsWhere(String what) {
        return (what.equals("patch") ? "조각마다 간 곳" : "천마다 간 곳");
    }

    @Override
    public String tieCare() {
        return "조심할 것";
    }

    @Override
    public String tieFits(String fits) {
        return (fits.equals("yes") ? "맞음" : "작음");
    }

    @Override
    public String tieKnot() {
        return "매듭: 세로매듭이 아니라 맞매듭";
    }

    @Override
    public String tieLarge() {
        return "보자기는 얼마나 커야 하나";
    }

    @Override
    public String tieLead(String gift, String own, String suited) {
        return "알맞은 것: " + suited + ". 여기서는 " + gift + ", " + (own.equals("yes") ? "내 보자기" : "무지 보자기") + "로 그렸습니다. 화살표 끝이 지금 귀가 있는 곳입니다.";
    }

    @Override
    public String tieNone() {
        return "그런 묶기는 없습니다.";
    }

    @Override
    public String tieNothing() {
        return "이런 모양은 쌀 수 없음";
    }

    @Override
    public String tieShort() {
        return "귀가 닿지 않을 때";
    }

    @Override
    public String tieSold() {
        return "파는 크기";
    }

    @Override
    public String tieSoldFor() {
        return "쓰임(통례)";
    }

    @Override
    public String tieSquare() {
        return "정사각형, 완성 크기";
    }

    @Override
    public String tieSquareOf() {
        return "한 변";
    }

    @Override
    public String tieThisGift() {
        return "이 선물";
    }

    @Override
    public String tieTitle(String tie) {
        return tie;
    }

    @Override
    public String tieTitleNamed(String tie, String trade) {
        return tie + ", " + trade;
    }

    @Override
    public String tieUnsuited(String gift, String suited, String tie) {
        return tie + "에 알맞은 것: " + suited + ". 이 물건에는 다른 묶기를 고르세요: " + gift + ".";
    }

    @Override
    public String tieUpTo() {
        return "이 묶기로 싸는 이런 모양의 최대 크기";
    }

    @Override
    public String tiedAwayExample() {
        return "0, −2는 앞쪽";
    }

    @Override
    public String tiedBack() {
        return "보자기로 돌아가기";
    }

    @Override
    public String tiedByPatch() {
        return "조각마다";
    }

    @Override
    public String tiedFolds() {
        return "종이 접는 선: 오려서 작게 접어 보기";
    }

    @Override
    public String tiedHowTie(String tie) {
        return "묶는 법: " + tie;
    }

    @Override
    public String tiedIsFor(String cloth, String gift) {
        return "이제 " + cloth + "의 쓰임: " + gift + ".";
    }

    @Override
    public String tiedKeep() {
        return "이 보자기의 쓰임으로 정하기";
    }

    @Override
    public String tiedLacks() {
        return "아직 이 보자기를 만들 천이 모자라서 묶을 것이 없습니다.";
    }

    @Override
    public String tiedNear() {
        return "보자기를 놓은 대로 그렸습니다. 매듭 가까이(한 뼘쯤)에서는 실제 천이 주름지고, 끝은 제멋대로 떨어집니다.";
    }

    @Override
    public String tiedNone() {
        return "이 보자기로는 그 선물을 묶을 수 없습니다.";
    }

    @Override
    public String tiedOff() {
        return "선물을 가운데에서 벗어나게";
    }

    @Override
    public String tiedOffAway(String unit) {
        return "가운데에서 먼 쪽으로, " + unit;
    }

    @Override
    public String tiedOffRight(String unit) {
        return "가운데에서 오른쪽으로, " + unit;
    }

    @Override
    public String tiedRightExample() {
        return "0, −2는 왼쪽";
    }

    @Override
    public String tiedShare(String percent) {
        return percent + "%";
    }

    @Override
    public String tiedShow() {
        return "보기";
    }

    @Override
    public String tiedShows() {
        return "보이는 것";
    }

    @Override
    public String tiedSides() {
        return "보는 방향";
    }

    @Override
    public String title(String cloth) {
        return cloth + ", 묶은 모습";
    }

    @Override
    public String which() {
        return "어느 보자기로 묶을까요?";
    }
}
