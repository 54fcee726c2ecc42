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
    public String tiedBackFace() {
        return "뒷면";
    }

    @Override
    public String tiedByPatch() {
        return "조각마다";
    }

    @Override
    public String tiedCanvas() {
        return "묶은 선물. 화살표 키로 돌리고, 더하기와 빼기로 가깝게 또는 멀게 하고, Home은 모서리에서 봅니다.";
    }

    @Override
    public String tiedDown() {
        return "뒤로 기울이기";
    }

    @Override
    public String tiedDrag() {
        return "손가락이나 마우스로 끌거나 화살표 키를 쓰세요.";
    }

    @Override
    public String tiedExample(String unit) {
        return (unit.equals("in") ? "box 12 x 8 x 4 in" : "box 30 x 20 x 10 cm");
    }

    @Override
    public String tiedFace() {
        return "밖으로 보이는 면";
    }

    @Override
    public String tiedFarther() {
        return "멀리";
    }

    @Override
    public String tiedFolds() {
        return "종이 접는 선: 오려서 작게 접어 보기";
    }

    @Override
    public String tiedFromAbove() {
        return "위에서";
    }

    @Override
    public String tiedFromCorner() {
        return "모서리에서";
    }

    @Override
    public String tiedFromFront() {
        return "앞에서";
    }

    @Override
    public String tiedFront() {
        return "앞면";
    }

    @Override
    public String tiedHow() {
        return "묶는 방법";
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
    public String tiedLeft() {
        return "왼쪽으로";
    }

    @Override
    public String tiedNear() {
        return "보자기를 놓은 대로 그렸습니다. 매듭 가까이(한 뼘쯤)에서는 실제 천이 주름지고, 끝은 제멋대로 떨어집니다.";
    }

    @Override
    public String tiedNearer() {
        return "가까이";
    }

    @Override
    public String tiedNone() {
        return "이 보자기로는 그 선물을 묶을 수 없습니다.";
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
    public String tiedQuarter(String turns) {
        return (turns.equals("none") ? "그린 대로" : turns.equals("one") ? "90도" : turns.equals("two") ? "180도" : "270도");
    }

    @Override
    public String tiedQuarters() {
        return "보자기를 시계 반대 방향으로 돌리기";
    }

    @Override
    public String tiedRight() {
        return "오른쪽으로";
    }

    @Override
    public String tiedRightExample() {
        return "0, −2는 왼쪽";
    }

    @Override
    public String tiedSay() {
        return "무엇을 쌀지 적으세요: box 30 x 20 x 10 cm(상자), bottle 8 x 30 cm(병), two bottles 8 x 30 cm(병 두 개), ball 20 cm(둥근 것), books 22 x 15 x 3 cm(책 두 권), roll 5 x 40 cm(두루마리).";
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
    public String tiedTie() {
        return "묶기";
    }

    @Override
    public String tiedTurn() {
        return "선물 돌리기";
    }

    @Override
    public String tiedTurned(String way) {
        return (way.equals("left") ? "왼쪽으로 돌림" : way.equals("right") ? "오른쪽으로 돌림" : way.equals("up") ? "앞으로 기울임" : "뒤로 기울임");
    }

    @Override
    public String tiedTurning() {
        return "돌려 보는 선물";
    }

    @Override
    public String tiedUp() {
        return "앞으로 기울이기";
    }

    @Override
    public String tiedWhat() {
        return "싸는 것";
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
