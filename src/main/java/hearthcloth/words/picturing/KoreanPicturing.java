package hearthcloth.words.picturing;

import hearthcloth.words.korean.Particles;

/** The room of picturing in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanPicturing implements PicturingWords {

    @Override
    public String added(String first, String last, int n) {
        return "천 " + n + "장을 넣었습니다. 번호 " + first + "–" + last + ".";
    }

    @Override
    public String another() {
        return "사진으로 넣기";
    }

    @Override
    public String askBefore() {
        return "전에 시작한 것";
    }

    @Override
    public String askChoose() {
        return "사진 고르기";
    }

    @Override
    public String askHow() {
        return "놓고 찍는 법";
    }

    @Override
    public String askKinds() {
        return "카메라로 찍은 그대로의 JPEG나 PNG, 80 MB까지. 이 기기에만 남습니다.";
    }

    @Override
    public String askNoSize() {
        return "기준 물건의 크기가 비어 있습니다. 재어서 너비 × 높이를 적으세요.";
    }

    @Override
    public String askNone() {
        return "사진을 고르지 않았습니다. 고르거나 지금 찍으세요.";
    }

    @Override
    public String askNotWhole() {
        return "사진이 온전히 오지 않았습니다. 다시 보내세요.";
    }

    @Override
    public String askNow() {
        return "지금 사진 찍기";
    }

    @Override
    public String askPhotograph(String when) {
        return "사진: " + when;
    }

    @Override
    public String askPreview() {
        return "고른 사진, 작게";
    }

    @Override
    public String askPrint() {
        return "측정지 인쇄";
    }

    @Override
    public String askPrintHow() {
        return "100 %로(쪽에 맞추지 않고) 인쇄하고 선에 자를 대어 보세요.";
    }

    @Override
    public String askRead() {
        return "읽기";
    }

    @Override
    public String askSend() {
        return "사진 보내기";
    }

    @Override
    public String askSheet() {
        return "이 프로그램의 측정지가 가장 확실합니다. 표시가 천과 헷갈리지 않고 휘었는지도 알 수 있습니다.";
    }

    @Override
    public String back() {
        return "천 목록으로 돌아가기";
    }

    @Override
    public String deleted() {
        return "사진을 삭제했습니다.";
    }

    @Override
    public String drawBack() {
        return "마지막 귀퉁이 취소";
    }

    @Override
    public String drawCloser() {
        return "가까이";
    }

    @Override
    public String drawCorner() {
        return "귀퉁이 %2개 가운데 %1. 화살표 키로 움직이고 Shift와 함께 더 멀리.";
    }

    @Override
    public String drawCross() {
        return "십자: Enter로 여기에 귀퉁이를 놓습니다.";
    }

    @Override
    public String drawFarther() {
        return "멀리";
    }

    @Override
    public String drawFew() {
        return "귀퉁이 %d개. 천을 돌며 계속하세요.";
    }

    @Override
    public String drawFind() {
        return "이곳 둘레의 가장자리 찾기";
    }

    @Override
    public String drawHow() {
        return "귀퉁이를 돌아가며 차례로 누르고, 첫 귀퉁이를 다시 눌러 닫으세요. 가까이 가면 더 정확합니다. 또는 가운데를 한 번 눌러 가장자리를 찾게 하세요.";
    }

    @Override
    public String drawKeys() {
        return "두 손가락이나 끌기로 사진을 움직입니다. 자판: 화살표 키로 십자를 움직이고(Shift와 함께 더 멀리), Enter로 귀퉁이를 놓고, Backspace로 취소하고, +와 –로 가까이, 멀리.";
    }

    @Override
    public String drawLeave() {
        return "그만두기";
    }

    @Override
    public String drawMeasure() {
        return "닫고 재기";
    }

    @Override
    public String drawMost() {
        return "귀퉁이 %d개, 더는 놓을 수 없습니다. 이제 닫으세요.";
    }

    @Override
    public String drawNoRim() {
        return "이곳을 두르는 가장자리가 보이지 않습니다. 귀퉁이를 차례로 누르세요. 더한 것은 없습니다.";
    }

    @Override
    public String drawNone() {
        return "아직 귀퉁이가 없습니다.";
    }

    @Override
    public String drawOne() {
        return "귀퉁이 1개. 천을 돌며 계속하거나, 여기가 가운데이면 가장자리를 찾게 하세요.";
    }

    @Override
    public String drawPicture() {
        return "그릴 사진";
    }

    @Override
    public String drawSome() {
        return "귀퉁이 %d개. 계속하거나 닫으세요.";
    }

    @Override
    public String fabricAbout(String faces, String nap, String washed) {
        return (faces.equals("right") ? "겉이 있음" : "양면이 같음") + (nap.equals("yes") ? ", 결은 세로" : "") + (washed.equals("YES") ? ", 빨았음" : washed.equals("NO") ? ", 빨지 않음" : "");
    }

    @Override
    public String fabricFaces() {
        return "겉과 안";
    }

    @Override
    public String fabricKeep() {
        return "저장";
    }

    @Override
    public String fabricKnown() {
        return "천 목록에 있는 천입니다. 색, 겉과 안, 결은 거기에 적힌 대로입니다.";
    }

    @Override
    public String fabricLabel(String name) {
        return "천 " + name;
    }

    @Override
    public String fabricName(String pieces) {
        return "이름, " + pieces;
    }

    @Override
    public String fabricNap() {
        return "결";
    }

    @Override
    public String fabricNapAny() {
        return "없음, 어느 쪽이든";
    }

    @Override
    public String fabricNapLong() {
        return "세로";
    }

    @Override
    public String fabricNo() {
        return "빨지 않음";
    }

    @Override
    public String fabricRight() {
        return "겉이 있음";
    }

    @Override
    public String fabricSame() {
        return "양면이 같음";
    }

    @Override
    public String fabricUnknown() {
        return "모름";
    }

    @Override
    public String fabricWashed() {
        return "빨래";
    }

    @Override
    public String fabricYes() {
        return "빨았음";
    }

    @Override
    public String formCorners() {
        return "귀퉁이가 빠졌습니다. 사진 위에 놓으세요.";
    }

    @Override
    public String formKind() {
        return "다른 종류의 양식입니다. 화면을 다시 불러오세요.";
    }

    @Override
    public String formNumber() {
        return "귀퉁이 번호가 빠졌습니다. 화면을 다시 불러오세요.";
    }

    @Override
    public String formPlace() {
        return "사진 속 위치가 빠졌습니다. 화면을 다시 불러오세요.";
    }

    @Override
    public String goingDoing(String what) {
        return (what.equals("waiting") ? "기다리는 중" : what.equals("opening") ? "사진을 여는 중" : what.equals("ground") ? "바닥을 보는 중" : what.equals("sheet") ? "종이를 찾는 중" : what.equals("pieces") ? "천을 찾는 중" : what.equals("measuring") ? "재는 중" : what.equals("laying") ? "펼쳐 놓는 중" : "끝남");
    }

    @Override
    public String goingLabel() {
        return "사진 읽기";
    }

    @Override
    public String goingLeave() {
        return "이 화면을 떠나도 됩니다. 계속 읽고, 잃는 것은 없습니다.";
    }

    @Override
    public String goingLook() {
        return "다시 보기";
    }

    @Override
    public String goingShare(String share, String what) {
        return share + " %, " + what + " …";
    }

    @Override
    public String goingStop() {
        return "멈추고 치우기";
    }

    @Override
    public String goingTitle() {
        return "사진을 읽는 중";
    }

    @Override
    public String goingWaits(int n) {
        return "앞에 사진 " + n + "장이 있습니다. 차례를 기다립니다.";
    }

    @Override
    public String gone() {
        return "이 사진은 삭제되었습니다. 다시 보내세요.";
    }

    @Override
    public String goneElsewhere() {
        return "이 사진은 다른 창에서 삭제되었습니다.";
    }

    @Override
    public String hintBlurred() {
        return "흐립니다. 움직이지 말고 천에 초점을 맞추어 다시 찍으세요.";
    }

    @Override
    public String hintDark() {
        return "너무 어둡습니다. 낮에 찍거나 불을 더 켜고, 플래시는 쓰지 마세요.";
    }

    @Override
    public String hintFine() {
        return "얼핏 보아 괜찮습니다.";
    }

    @Override
    public String hintNoSheet() {
        return "흰 종이가 또렷이 보이지 않습니다. 더 어두운 바닥에, 아무것에도 닿지 않고, 사진 안에 다 들어와 있나요?";
    }

    @Override
    public String hintSlant() {
        return "25° 넘게 비스듬합니다. 카메라를 한가운데 위에서 수평으로 드세요.";
    }

    @Override
    public String howAbove() {
        return "위에서.";
    }

    @Override
    public String howAboveHow() {
        return "카메라를 한가운데 위에서 수평으로 들고 모두 들어오게 찍으세요. 옆에서 드는 햇빛이 가장 좋고, 플래시는 쓰지 않습니다.";
    }

    @Override
    public String howAbovePicture() {
        return "전화기를 천의 한가운데 위에서 수평으로 들고 있다.";
    }

    @Override
    public String howApart() {
        return "떼어 놓기.";
    }

    @Override
    public String howApartHow() {
        return "천을 손가락 하나만큼 떼어, 천이 잘 드러나는 무늬 없는 바닥에 놓으세요.";
    }

    @Override
    public String howApartPicture() {
        return "천 다섯 장이 무늬 없는 바닥에 떨어져 놓여 있다.";
    }

    @Override
    public String howFlat() {
        return "평평하게.";
    }

    @Override
    public String howFlatHow() {
        return "접힌 곳과 주름을 다려 펴고, 겹치지 않게 놓으세요.";
    }

    @Override
    public String howFlatPicture() {
        return "옆에서 본 그림: 한 장은 평평하고, 접힌 한 장에는 가위표가 있다.";
    }

    @Override
    public String howSheet() {
        return "종이는 평평하게 눌러서.";
    }

    @Override
    public String howSheetHow() {
        return "종이나 카드를 천 사이에, 다 보이게, 아무것에도 닿지 않게 놓으세요. 종이가 말리면 귀퉁이 바로 안쪽마다 동전을 올리세요.";
    }

    @Override
    public String howSheetPicture() {
        return "흰 종이가 천 사이에 평평하게 놓이고 귀퉁이마다 동전이 있다.";
    }

    @Override
    public String kept() {
        return "저장했습니다.";
    }

    @Override
    public String keyDoubt() {
        return "? 확인하세요";
    }

    @Override
    public String keyIn() {
        return "✓ 천 목록에 있음";
    }

    @Override
    public String keyLeft() {
        return "× 뺌";
    }

    @Override
    public String keyMeasured() {
        return "잼";
    }

    @Override
    public String keyUsable() {
        return "쓸 수 있는 부분";
    }

    @Override
    public String labelAdd(int n) {
        return "사진에서 천 " + "" + n + "장" + " 넣음";
    }

    @Override
    public String labelAllRight() {
        return "물음표 모두 맞음";
    }

    @Override
    public String labelBring(String piece) {
        return "천 " + piece + " 다시 넣음";
    }

    @Override
    public String labelCorner(String piece) {
        return "천 " + piece + "의 귀퉁이";
    }

    @Override
    public String labelDraw(String piece) {
        return "천 " + piece + " 그려 넣음";
    }

    @Override
    public String labelDrop(String piece) {
        return "천 " + piece + " 뺌";
    }

    @Override
    public String labelFabric(String name) {
        return "천 " + name;
    }

    @Override
    public String labelGrain(String piece) {
        return "천 " + piece + "의 식서 방향";
    }

    @Override
    public String labelLess(String piece) {
        return "천 " + piece + "에서 귀퉁이 뺌";
    }

    @Override
    public String labelMore(String piece) {
        return "천 " + piece + "에 귀퉁이 더함";
    }

    @Override
    public String labelMove(String piece) {
        return "천 " + piece + "의 종류";
    }

    @Override
    public String labelName(String name) {
        return "이름 " + name;
    }

    @Override
    public String labelNoGrain(String piece) {
        return "천 " + piece + " 식서 방향 없음";
    }

    @Override
    public String labelNotSure(String piece) {
        return "천 " + piece + " 확실하지 않음";
    }

    @Override
    public String labelRight(String piece) {
        return "천 " + piece + " 맞음";
    }

    @Override
    public String labelRim() {
        return "가장자리 모두 뺌";
    }

    @Override
    public String labelSplit(String piece) {
        return "천 " + piece + " 나눔";
    }

    @Override
    public String noPiece() {
        return "이 사진에 그런 천은 없습니다.";
    }

    @Override
    public String notOpened() {
        return "이 사진을 열 수 없습니다.";
    }

    @Override
    public String notRead() {
        return "이 사진은 아직 읽지 않았습니다.";
    }

    @Override
    public String nothingToTake() {
        return "넣을 천이 없습니다. 모두 천 목록에 있거나, 뺐거나, 아직 볼 것입니다.";
    }

    @Override
    public String pieceBring() {
        return "다시 넣기";
    }

    @Override
    public String pieceBringAbout(String piece) {
        return "천 " + piece + " 다시 넣기";
    }

    @Override
    public String pieceBy(String by, String grain) {
        return (by.equals("drawn") ? "직접 그려 넣었습니다" : by.equals("hand") ? "고친 윤곽으로 쟀습니다" : "가장자리로 쟀습니다") + (grain.equals("yes") ? "(식서 방향)" : "") + ".";
    }

    @Override
    public String pieceClose() {
        return "닫기";
    }

    @Override
    public String pieceCloseAbout(String piece) {
        return "천 " + piece + " 닫기";
    }

    @Override
    public String pieceCorner(String all, String n) {
        return "귀퉁이 " + all + "개 가운데 " + n + ". 화살표 키로 움직이고 Shift와 함께 더 멀리.";
    }

    @Override
    public String pieceDrag() {
        return "귀퉁이를 끌거나, 누른 다음 놓을 곳을 누르거나, 화살표 키로 움직이세요.";
    }

    @Override
    public String pieceEnd(String n) {
        return "선의 끝 " + n + ". 화살표 키로 움직이고 Shift와 함께 더 멀리.";
    }

    @Override
    public String pieceFabric() {
        return "어느 천";
    }

    @Override
    public String pieceGrain() {
        return "식서 방향 표시";
    }

    @Override
    public String pieceIsIn() {
        return "천 목록에 있습니다. 여기서 고치려면 천 목록 화면에서 실행 취소하세요.";
    }

    @Override
    public String pieceLeaveAbout(String piece) {
        return Particles.fitted("천 " + piece + "을(를) 천 목록에 넣지 않기");
    }

    @Override
    public String pieceLess(String n) {
        return "귀퉁이 " + n + " 없애기";
    }

    @Override
    public String pieceLessAbout(String n) {
        return "귀퉁이 " + n + " 없애기";
    }

    @Override
    public String pieceLine(String doing) {
        return (doing.equals("split") ? "두 천이 만나는 곳에 선을 놓으세요. 끝을 끌거나 놓을 곳을 누르세요." : "식서 방향으로 선을 놓으세요. 끝을 끌거나 놓을 곳을 누르세요.");
    }

    @Override
    public String pieceLineDone(String doing) {
        return (doing.equals("split") ? "여기서 나누기" : "식서 방향은 이렇게");
    }

    @Override
    public String pieceMore() {
        return "여기에 귀퉁이";
    }

    @Override
    public String pieceMoreAbout(String n) {
        return "변 " + n + "의 가운데에 새 귀퉁이";
    }

    @Override
    public String pieceMove() {
        return "그리로 옮기기";
    }

    @Override
    public String pieceNoGrain() {
        return "식서 방향 상관없음";
    }

    @Override
    public String pieceNotSure() {
        return "다시 보니 모르겠음";
    }

    @Override
    public String pieceOwn() {
        return "따로 된 천";
    }

    @Override
    public String piecePicture(String piece) {
        return "천 " + piece + ", 가까이";
    }

    @Override
    public String pieceSides() {
        return "변과 귀퉁이";
    }

    @Override
    public String pieceSplit() {
        return "둘로 나누기";
    }

    @Override
    public String pieceSquare(String degrees, String one, String same, String two) {
        return "두 대각선은 " + one + ", " + two + "입니다. " + (same.equals("yes") ? "사진으로 보는 한 같습니다" : "그러므로 직각이 아닙니다") + ". 귀퉁이는 직각에서 " + degrees + "° 안입니다.";
    }

    @Override
    public String pieceStraight() {
        return "바로 위에서 본 그림";
    }

    @Override
    public String pieceTitle(String piece) {
        return "천 " + piece;
    }

    @Override
    public String pieces(int n) {
        return "" + n + "장";
    }

    @Override
    public String redo() {
        return "다시 실행";
    }

    @Override
    public String redoNothing() {
        return "다시 실행할 것이 없습니다.";
    }

    @Override
    public String redone(String what) {
        return "다시 실행: " + what + ".";
    }

    @Override
    public String refusedAgain() {
        return "귀퉁이 다시 시작";
    }

    @Override
    public String refusedAnew() {
        return "아니면 새로 찍기";
    }

    @Override
    public String refusedAway() {
        return "이 사진 치우기";
    }

    @Override
    public String refusedFailed() {
        return "이 사진을 읽을 수 없습니다. 도중에 문제가 생겼습니다. 다시 찍거나 JPEG로 다시 저장하여 보내세요.";
    }

    @Override
    public String refusedHundredths() {
        return "귀퉁이마다 가로와 세로의 위치, 사진의 100분율: 21 30, 44 31, 43 62, 20 60";
    }

    @Override
    public String refusedMark() {
        return "이 귀퉁이 표시";
    }

    @Override
    public String refusedNoPieces() {
        return "기준 물건은 찾았지만 옆에 천이 없습니다. 천이 잘 드러나는 무늬 없는 바닥에 떼어 놓고 다시 찍으세요.";
    }

    @Override
    public String refusedNoTap() {
        return "누르지 않고";
    }

    @Override
    public String refusedOnce() {
        return "한 번 더 읽기";
    }

    @Override
    public String refusedOther() {
        return "다른 기준 물건이었나요?";
    }

    @Override
    public String refusedPicture(String reference) {
        return "사진: 귀퉁이를 누르세요(" + reference + ")";
    }

    @Override
    public String refusedRead() {
        return "이 귀퉁이로 읽기";
    }

    @Override
    public String refusedReference(String sheet) {
        return (sheet.equals("MEASURING") ? "측정지" : sheet.equals("A4") ? "A4 종이" : sheet.equals("LETTER") ? "레터 종이" : sheet.equals("CARD") ? "카드" : "직사각형");
    }

    @Override
    public String refusedTake() {
        return "다른 사진 찍기";
    }

    @Override
    public String refusedTap(String n) {
        return (n.equals("none") ? "한 귀퉁이를 누르세요. 가까이만 눌러도 가장 가까운 가장자리를 잡습니다." : n.equals("some") ? "차례로 다음 귀퉁이를 누르세요." : n.equals("three") ? "마지막 귀퉁이를 누르세요." : "네 귀퉁이를 모두 표시했습니다.");
    }

    @Override
    public String refusedTitle() {
        return "읽을 수 없었습니다";
    }

    @Override
    public String refusedTooMuch() {
        return "이 사진은 이 기기의 메모리에 너무 큽니다. 카메라의 화소를 줄여(12메가픽셀이면 충분) 다시 찍으세요.";
    }

    @Override
    public String refusedWhere(String reference) {
        return "거기에 있나요? 어디인지 보여 주세요: " + reference;
    }

    @Override
    public String scriptChosen() {
        return "고른 사진: %s. 이제 “읽기”를 누르세요.";
    }

    @Override
    public String scriptLarge() {
        return "%s은 80 MB보다 큽니다. 카메라로 찍은 그대로나 더 작은 것을 보내세요.";
    }

    @Override
    public String scriptNone() {
        return "아직 사진을 고르지 않았습니다.";
    }

    @Override
    public String scriptSending() {
        return "사진을 보내는 중 …";
    }

    @Override
    public String sheetA4() {
        return "A4 종이";
    }

    @Override
    public String sheetCard() {
        return "은행이나 도서관 카드";
    }

    @Override
    public String sheetLetter() {
        return "레터 종이";
    }

    @Override
    public String sheetLine() {
        return "가는 선의 길이(20 cm, 7 7/8 in가 아니면)";
    }

    @Override
    public String sheetMeasuring() {
        return "측정지";
    }

    @Override
    public String sheetSize() {
        return "직사각형(크기 적기)";
    }

    @Override
    public String sheetSizeExample(String unit) {
        return (unit.equals("in") ? "12 x 18" : "30 x 45");
    }

    @Override
    public String sheetSizeHow(String unit) {
        return "너비 × 높이, " + unit;
    }

    @Override
    public String sheetWhich() {
        return "천 사이에 무엇이 있나요?";
    }

    @Override
    public String sortAllMine(int n) {
        return "" + n + "장 모두 내 것이고 맞게 쟀음";
    }

    @Override
    public String sortAllMineAbout() {
        return "물음표가 있는 천은 모두 내 것이고 맞게 쟀음";
    }

    @Override
    public String sortAway() {
        return "사진 치우기";
    }

    @Override
    public String sortAwayAsk() {
        return "이 사진을 치울까요? 천 목록에 넣은 것은 그대로이고, 나머지는 다시 보내야 합니다.";
    }

    @Override
    public String sortFabrics(int n) {
        return "천 " + n + "가지";
    }

    @Override
    public String sortFabricsHow() {
        return "비슷한 천끼리 모았습니다. 하나에 이름을 적으면 모두에 붙습니다. 천 목록에 있는 이름이면 그 천에 더해집니다.";
    }

    @Override
    public String sortFirst() {
        return "먼저 볼 것";
    }

    @Override
    public String sortLead() {
        return "사진 위에 윤곽과 번호가 있습니다. 천을 눌러 자세히 보고, 틀린 것을 고치고, 천마다 이름을 적은 다음 모두 넣으세요.";
    }

    @Override
    public String sortLeave() {
        return "빼기";
    }

    @Override
    public String sortLeaveAbout(String piece) {
        return "천 " + piece + " 빼기";
    }

    @Override
    public String sortLook() {
        return "자세히 보기";
    }

    @Override
    public String sortLookAt(String piece) {
        return "천 " + piece + " 자세히 보기";
    }

    @Override
    public String sortMaybe(String in, String piece, String there) {
        return Particles.fitted(piece + "은(는) 다른 사진의 천 " + there + "일 수 있습니다" + (in.equals("yes") ? "(이미 천 목록에 있음)" : "") + ".");
    }

    @Override
    public String sortMaybeLook() {
        return "다른 사진";
    }

    @Override
    public String sortMissed() {
        return "빠진 천 그려 넣기";
    }

    @Override
    public String sortRight() {
        return "맞게 쟀음";
    }

    @Override
    public String sortRightAbout(String piece) {
        return "천 " + piece + ": 맞게 쟀음";
    }

    @Override
    public String sortRim(int n) {
        return "가장자리에 걸린 " + n + "장 빼기";
    }

    @Override
    public String sortRimAbout() {
        return "물음표가 있고 사진 밖으로 나가는 천 모두 빼기";
    }

    @Override
    public String sortSame() {
        return "같은 천: 여기서 빼기";
    }

    @Override
    public String sortSameAbout(String piece) {
        return Particles.fitted("천 " + piece + "은(는) 다른 사진의 것과 같음: 여기서 빼기");
    }

    @Override
    public String sortStay(int n) {
        return "" + n + "장은 볼 때까지 남습니다.";
    }

    @Override
    public String sortTake(int n) {
        return "천 " + n + "장 넣기";
    }

    @Override
    public String sortTitle() {
        return "맞게 읽었나요?";
    }

    @Override
    public String sortTold(String off, String size) {
        return size + ", " + off + ".";
    }

    @Override
    public String sortTwice() {
        return "다른 사진에도 있나요?";
    }

    @Override
    public String sortTwiceHow() {
        return "크기, 색, 무늬가 비슷합니다. 묻지 않고 합치지 않습니다. 같은 천이면 빼고, 비슷하기만 하면 둘 다 두세요.";
    }

    @Override
    public String sortWhole(int n) {
        return "천 " + n + "장의 윤곽과 번호가 있는 사진. 목록에 하나하나 있습니다.";
    }

    @Override
    public String stale() {
        return "그사이 다른 창에서 이 사진이 바뀌었습니다. 여기서는 바뀐 것이 없습니다. 화면을 다시 불러와 보세요.";
    }

    @Override
    public String staleTaking() {
        return "그사이 다른 창에서 이 사진이 바뀌었습니다. 아무것도 넣지 않았습니다. 화면을 다시 불러와 보세요.";
    }

    @Override
    public String state(String state) {
        return (state.equals("LOOK") ? "확인하세요" : state.equals("SMALL") ? "자로 재기에 너무 작음" : state.equals("DROPPED") ? "뺌" : state.equals("IN") ? "천 목록에 있음" : "");
    }

    @Override
    public String stays(int n, String pieces) {
        return Particles.fitted("천 " + pieces + "은(는) 볼 때까지 사진에 남습니다.");
    }

    @Override
    public String taken(String piece) {
        return Particles.fitted("천 " + piece + "은(는) 이미 천 목록에 있습니다. 먼저 천 목록 화면에서 되돌리거나 거기서 바꾸세요.");
    }

    @Override
    public String undo() {
        return "실행 취소";
    }

    @Override
    public String undoNothing() {
        return "취소할 것이 없습니다.";
    }

    @Override
    public String undone(String what) {
        return "실행 취소: " + what + ".";
    }
}
