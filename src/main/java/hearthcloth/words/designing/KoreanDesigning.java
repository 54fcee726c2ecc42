package hearthcloth.words.designing;

import hearthcloth.words.korean.Particles;

/** The room of designing in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanDesigning implements DesigningWords {

    @Override
    public String againButton() {
        return "색 다시 계획하기";
    }

    @Override
    public String againLocked() {
        return "고정한 것은 그대로입니다.";
    }

    @Override
    public String altEyes(String eyes, String name, String size) {
        return eyes + "의 눈에 보이는 " + name + ", " + size;
    }

    @Override
    public String altFace(String face, String name, String size) {
        return (face.equals("FRONT") ? "" + name + "의 앞면, " + size : "" + name + "의 뒷면, " + size);
    }

    @Override
    public String altFront() {
        return "앞면, 띠를 하나씩 고를 수 있습니다";
    }

    @Override
    public String altTarget(String bar, String cut, String fabrics, String locked) {
        return bar + ", " + fabrics + ", 재단 " + cut + (locked.equals("yes") ? ", 고정됨" : "");
    }

    @Override
    public String altValues(String name) {
        return name + "의 명암, 다섯 단계";
    }

    @Override
    public String altWide(String width) {
        return "너비 " + width;
    }

    @Override
    public String barAny() {
        return "아무 천";
    }

    @Override
    public String barAnySays() {
        return "계획이 고릅니다";
    }

    @Override
    public String barCut(String unit) {
        return "재단, " + unit;
    }

    @Override
    public String barLock() {
        return "고정";
    }

    @Override
    public String barLockIt() {
        return "이대로 고정";
    }

    @Override
    public String barLocked() {
        return "고정됨";
    }

    @Override
    public String barMiddle() {
        return "한가운데";
    }

    @Override
    public String barName(String bar, String label) {
        return (bar.equals("hearth") ? "중심 조각" : "띠 " + label);
    }

    @Override
    public String barNarrower() {
        return "좁게";
    }

    @Override
    public String barSet() {
        return "너비 정하기";
    }

    @Override
    public String barUnlock() {
        return "고정됨, 누르면 풉니다";
    }

    @Override
    public String barWhere(String round, String side) {
        return (side.equals("LEFT") ? "왼쪽, 둘레 " + round : side.equals("RIGHT") ? "오른쪽, 둘레 " + round : side.equals("TOP") ? "위, 둘레 " + round : "아래, 둘레 " + round);
    }

    @Override
    public String barWider() {
        return "넓게";
    }

    @Override
    public String benchChoices() {
        return "고르기";
    }

    @Override
    public String benchClose() {
        return "고르지 않기";
    }

    @Override
    public String benchHolds(String largest, String tie) {
        return tie + ": " + largest;
    }

    @Override
    public String benchLacking() {
        return "이것을 만들 천이 모자랍니다.";
    }

    @Override
    public String benchPanel() {
        return "바꿀 수 있는 것";
    }

    @Override
    public String benchRedo() {
        return "다시 하기";
    }

    @Override
    public String benchRedoWhat(String deed) {
        return "다시 하기: " + deed;
    }

    @Override
    public String benchReplan() {
        return "가진 천으로 다시 계획하기";
    }

    @Override
    public String benchReplanCuts() {
        return "아직 자를 것을 다시 계획하기";
    }

    @Override
    public String benchTap() {
        return "중심 조각이나 띠를 누르면 천이나 너비를 바꿉니다. 빗금 친 띠는 천의 안이 보입니다.";
    }

    @Override
    public String benchTies() {
        return "쌀 수 있는 것";
    }

    @Override
    public String benchUndo() {
        return "되돌리기";
    }

    @Override
    public String benchUndoWhat(String deed) {
        return "되돌리기: " + deed;
    }

    @Override
    public String benchViews() {
        return "보는 방법";
    }

    @Override
    public String benchWall() {
        return "그림으로 화면 채우기";
    }

    @Override
    public String besideName(String deed, String name) {
        return name + ", " + deed;
    }

    @Override
    public String besideOld() {
        return "이 쪽을 연 뒤 다른 창에서 이 보자기가 여러 번 바뀌었습니다. 여기서는 바뀐 것이 없습니다. 다시 여세요.";
    }

    @Override
    public String besideSaid(String deed, String name) {
        return Particles.fitted("그사이 다른 창에서 " + name + "이(가) 바뀌었습니다. 둘 다 저장했습니다. 하나는 그 창에서 바꾼 대로이고, 다른 하나에는 여기서 바꾼 것(" + deed + ")이 있습니다.");
    }

    @Override
    public String coloursBest() {
        return "계획이 가장 좋다고 보는 대로";
    }

    @Override
    public String coloursContrast() {
        return "대비";
    }

    @Override
    public String coloursLabel() {
        return "색";
    }

    @Override
    public String copyName(String name) {
        return name + ", 하나 더";
    }

    @Override
    public String deedAgain() {
        return "색 다시 계획";
    }

    @Override
    public String deedAnyFabric() {
        return "아무 천";
    }

    @Override
    public String deedBar(String bar) {
        return bar + "의 너비";
    }

    @Override
    public String deedFabric(String fabric, String place) {
        return place + "에 " + fabric;
    }

    @Override
    public String deedFell() {
        return "접은 솔기의 면";
    }

    @Override
    public String deedHearth() {
        return "중심 조각";
    }

    @Override
    public String deedLock(String on, String place) {
        return (on.equals("yes") ? "" + place + " 고정" : "" + place + " 고정 풀기");
    }

    @Override
    public String deedMaking(String what) {
        return (what.equals("seam") ? "솔기" : "단");
    }

    @Override
    public String deedOrder() {
        return "차례";
    }

    @Override
    public String deedReplan() {
        return "다시 계획";
    }

    @Override
    public String deedRound(String round) {
        return "둘레 " + round + "의 너비";
    }

    @Override
    public String deedRounds(int n) {
        return "둘레 " + n + "개";
    }

    @Override
    public String deedRules() {
        return "잇는 규칙";
    }

    @Override
    public String deedSwap() {
        return "천 바꾸기";
    }

    @Override
    public String exampleAway() {
        return "예시 치우기";
    }

    @Override
    public String exampleGone() {
        return "예시를 지웠습니다.";
    }

    @Override
    public String exampleLaid() {
        return "만져 볼 예시 천과 보자기가 있습니다. 한 번 누르면 다시 지웁니다.";
    }

    @Override
    public String exampleLay() {
        return "예시 펼치기";
    }

    @Override
    public String exampleName(String title) {
        return "예시: " + title;
    }

    @Override
    public String eyes(String eyes) {
        return (eyes.equals("PROTAN") ? "적색맹" : eyes.equals("DEUTAN") ? "녹색맹" : "청색맹");
    }

    @Override
    public String eyesTo() {
        return "다른 눈에는:";
    }

    @Override
    public String eyesTold(String colours, String eyes) {
        return eyes + "의 눈에는: " + colours;
    }

    @Override
    public String fabricsSwap() {
        return "바꾸기";
    }

    @Override
    public String fabricsTitle() {
        return "천";
    }

    @Override
    public String fabricsWith() {
        return "이것과";
    }

    @Override
    public String face(String face) {
        return (face.equals("front") ? "앞면" : "뒷면");
    }

    @Override
    public String figureCuts() {
        return "자르기";
    }

    @Override
    public String figureJoins() {
        return "이음";
    }

    @Override
    public String figureJoinsFew(int above, String joins) {
        return (above == 0 ? "" + joins + ", 가장 적음" : "" + joins + ", 가장 적은 것보다 많아야 " + above + " 많음");
    }

    @Override
    public String figureLayers(int n) {
        return "" + n + "겹";
    }

    @Override
    public String figureLost() {
        return "버리는 천";
    }

    @Override
    public String figurePatches() {
        return "조각";
    }

    @Override
    public String figurePieces() {
        return "자르는 천";
    }

    @Override
    public String figureThickest() {
        return "가장 두꺼운 곳";
    }

    @Override
    public String figureThread() {
        return "실";
    }

    @Override
    public String figureWas(String was) {
        return "전에는 " + was;
    }

    @Override
    public String figuresAll() {
        return "모든 수치";
    }

    @Override
    public String goCut() {
        return "이 보자기 자르기";
    }

    @Override
    public String goRecut() {
        return "필요한 것 자르기";
    }

    @Override
    public String goSew() {
        return "이 보자기 박기";
    }

    @Override
    public String handEnough() {
        return "충분함";
    }

    @Override
    public String handJoined() {
        return "이어서";
    }

    @Override
    public String handShort() {
        return "너무 짧음";
    }

    @Override
    public String handWide(String width) {
        return "너비 " + width;
    }

    @Override
    public String labelRenamed(String name, String was) {
        return Particles.fitted(was + "의 이름을 " + name + "(으)로 바꿈");
    }

    @Override
    public String look(String look) {
        return (look.equals("FLAT") ? "펼침" : look.equals("BACK") ? "뒷면" : look.equals("TIED") ? "묶음" : look.equals("VALUES") ? "명암" : look.equals("PROTAN") ? "적색맹" : look.equals("DEUTAN") ? "녹색맹" : "청색맹");
    }

    @Override
    public String nameCopy() {
        return "사본 저장";
    }

    @Override
    public String nameMore() {
        return "다른 제안";
    }

    @Override
    public String nameName() {
        return "이름";
    }

    @Override
    public String nameRename() {
        return "이름 바꾸기";
    }

    @Override
    public String nameTitle() {
        return "이름과 사본";
    }

    @Override
    public String nearGone() {
        return "그것은 이제 만들 수 없습니다. 다시 보세요.";
    }

    @Override
    public String nearKind(String kind) {
        return (kind.equals("FABRICS") ? "다른 천으로" : kind.equals("BARS") ? "조각 띠를 좁게" : kind.equals("HEARTH") ? "중심 조각을 작게" : kind.equals("ROUNDS") ? "둘레를 줄여서" : "전체를 작게");
    }

    @Override
    public String nearLead() {
        return "하나씩만 다르고, 천은 모자라지 않습니다.";
    }

    @Override
    public String nearNone() {
        return "남은 천으로는 이와 비슷한 것을 만들 수 없습니다. 되돌리거나 다른 보자기를 보세요.";
    }

    @Override
    public String nearOf(String fabrics) {
        return "쓰는 천: " + fabrics + ".";
    }

    @Override
    public String nearTaken(String way) {
        return "“" + way + "”로 했습니다.";
    }

    @Override
    public String nearTitle() {
        return "만들 수 있는 가장 가까운 보자기";
    }

    @Override
    public String picturesBack(String kind) {
        return "뒷면, " + kind;
    }

    @Override
    public String picturesBoth() {
        return "둘 다, 보내기용";
    }

    @Override
    public String picturesFlat(String kind) {
        return "펼친 그림, " + kind;
    }

    @Override
    public String picturesTied(String kind) {
        return "묶은 그림, " + kind;
    }

    @Override
    public String picturesTitle() {
        return "간직하고 보낼 그림";
    }

    @Override
    public String picturesWhat() {
        return "양면과 묶은 선물을 한 그림에, 또는 하나씩.";
    }

    @Override
    public String piecingApart(String several) {
        return (several.equals("yes") ? "떼어 놓기" : "되돌리기");
    }

    @Override
    public String piecingClear() {
        return "상 비우기";
    }

    @Override
    public String piecingDeed() {
        return "조각";
    }

    @Override
    public String piecingFill(String again) {
        return (again.equals("yes") ? "고정한 것을 두고 다시 채우기" : "나머지 채우기");
    }

    @Override
    public String piecingFit(String piece, String way) {
        return piece + ", " + way;
    }

    @Override
    public String piecingFrom() {
        return "한 조각씩 바꾸기";
    }

    @Override
    public String piecingGo() {
        return "자투리를 손으로 맞추기";
    }

    @Override
    public String piecingHeap(int n) {
        return "옆에 있는 자투리 " + n + "장";
    }

    @Override
    public String piecingIntro() {
        return "자투리 하나를 누르고 또 하나를 누르면 어떻게 맞는지, 얼마나 잘라 내는지 보입니다. 나머지는 언제든 채울 수 있고, 맞춘 것은 그대로 있습니다.";
    }

    @Override
    public String piecingIsLocked(String piece) {
        return piece + ", 고정";
    }

    @Override
    public String piecingJoined(String a, String b, String trims) {
        return a + "번과 " + b + "번을 맞췄습니다. " + trims + ".";
    }

    @Override
    public String piecingKeep(String cloth) {
        return cloth + "에 담기";
    }

    @Override
    public String piecingLay() {
        return "상에 놓기";
    }

    @Override
    public String piecingLock(String on) {
        return (on.equals("yes") ? "고정 풀기" : "고정하기");
    }

    @Override
    public String piecingMake() {
        return "이 보자기 만들기";
    }

    @Override
    public String piecingMore(String area, String how) {
        return (how.equals("SAME") ? "지금만큼 잘라 냄" : how.equals("MORE") ? "" + area + " 더 잘라 냄" : "" + area + " 덜 잘라 냄");
    }

    @Override
    public String piecingNext() {
        return "다음에 맞는 것";
    }

    @Override
    public String piecingNone(String what) {
        return (what.equals("next") ? "이 보자기에서는 옆에 맞는 것이 없습니다." : what.equals("two") ? "이 둘은 맞지 않습니다. 보이는 폭이 모자라거나 보자기에 들어가지 않습니다." : "이 자리에 넉넉한 다른 자투리가 없습니다.");
    }

    @Override
    public String piecingPanel() {
        return "고른 자투리";
    }

    @Override
    public String piecingPiece(String fabric, String piece, String size) {
        return piece + " " + fabric + ", " + size;
    }

    @Override
    public String piecingSaid(String what) {
        return (what.equals("UNDO") ? "되돌렸습니다." : what.equals("REDO") ? "다시 했습니다." : what.equals("CLEAR") ? "상을 비웠습니다." : what.equals("LAY") ? "상에 놓았습니다. 보자기에 들어갑니다." : what.equals("APART") ? "떼어 놓았습니다." : what.equals("LOCK") ? "되었습니다." : what.equals("TURN") ? "돌렸습니다." : what.equals("SWAP") ? "둘의 자리를 바꿨습니다." : what.equals("SIZE") ? "크기를 정했습니다." : what.equals("FILL") ? "보자기를 채웠습니다. 조각을 누르면 고정하거나 다른 자투리로 바꿀 수 있습니다." : what.equals("SHORT") ? "이 크기로는 나머지를 채울 수 없었습니다. 무언가를 떼어 놓거나 보자기를 작게 하세요." : what.equals("MADE") ? "보자기를 간직했습니다." : what.equals("FROM") ? "조각을 눌러 다른 자투리로 바꾸거나, 마음에 드는 것을 고정하고 나머지를 다시 채우세요." : "이 보자기는 여기서 바꿀 수 없습니다. 한 장에서 두 조각이 나오거나 천이 없어졌습니다.");
    }

    @Override
    public String piecingSet() {
        return "정하기";
    }

    @Override
    public String piecingSize(String unit) {
        return "보자기 크기(" + unit + ")";
    }

    @Override
    public String piecingStale() {
        return "그사이 상이 바뀌었습니다. 다시 보세요.";
    }

    @Override
    public String piecingSwap() {
        return "이 자리에 다른 자투리";
    }

    @Override
    public String piecingTable() {
        return "상 위";
    }

    @Override
    public String piecingTitle() {
        return "자투리를 손으로";
    }

    @Override
    public String piecingTrim(String length, String off, String piece) {
        return (off.equals("NONE") ? "잘라 내는 것 없음" : off.equals("SECOND") ? "" + piece + "번에서 " + length + " 잘라 냄" : "다른 쪽에서 " + length + " 잘라 냄");
    }

    @Override
    public String piecingTurn() {
        return "돌리기";
    }

    @Override
    public String piecingWay(String turned, String where) {
        return (where.equals("BESIDE") ? "오른쪽에" : "아래에") + (turned.equals("yes") ? ", 돌려서" : "");
    }

    @Override
    public String piecingWays(String piece) {
        return piece + "와 함께";
    }

    @Override
    public String piecingWhole(String cloth, int n, String percent) {
        return "" + n + "조각" + ", " + cloth + ", " + percent + " % 잘라 냄.";
    }

    @Override
    public String place(String label, String place) {
        return (place.equals("hearth") ? "중심 조각" : "" + label);
    }

    @Override
    public String saidCalled(String name) {
        return "이제 이름은 " + name + "입니다.";
    }

    @Override
    public String saidCopy() {
        return "이것은 사본입니다. 처음 것은 그대로입니다.";
    }

    @Override
    public String saidLacking() {
        return "천이 모자랍니다. 띠나 너비를 바꾸세요.";
    }

    @Override
    public String saidLocked() {
        return "고정했습니다. 다시 계획해도 그대로 둡니다.";
    }

    @Override
    public String saidNothing() {
        return "되돌릴 것이 없습니다.";
    }

    @Override
    public String saidPlanned() {
        return "가진 천으로 다시 계획했습니다.";
    }

    @Override
    public String saidRedone(String deed) {
        return "다시 함: " + deed + ".";
    }

    @Override
    public String saidUndone(String deed) {
        return "되돌림: " + deed + ".";
    }

    @Override
    public String saidUnlocked() {
        return "고정을 풀었습니다.";
    }

    @Override
    public String seamKind(String name, String seam) {
        return (seam.equals("felled") ? "한쪽 시접으로 다른 쪽을 감싸 박는 솔기" : seam.equals("ssamsol") ? "쌈솔: 보자기에 쓰는 좁은 쌈솔" : seam.equals("felled_and_trimmed") ? "잘라 낸 쌈솔: 나란히 박고 한쪽 시접을 자른 뒤 쌈솔" : seam.equals("lapped") ? "맞물림 솔기: 접은 두 끝을 서로 걸어 박음" : seam.equals("french") ? "통솔: 두 번 박아 끝을 안에 넣음" : seam.equals("french_trimmed") ? "잘라 낸 통솔: 시접을 넓게 두고 첫 줄 뒤에 자름" : seam.equals("gamchimjil") ? "감침질: 접은 두 끝을 손으로 감침" : "" + name);
    }

    @Override
    public String set() {
        return "정하기";
    }

    @Override
    public String sewingAllowances() {
        return "쌈솔, 좁은 쪽 + 넓은 쪽";
    }

    @Override
    public String sewingCorner() {
        return "단의 귀";
    }

    @Override
    public String sewingCorners(String corner) {
        return (corner.equals("square") ? "네모 귀" : "액자형 귀");
    }

    @Override
    public String sewingFell() {
        return "접은 솔기가 놓이는 면";
    }

    @Override
    public String sewingHelp() {
        return "좁고 넓은 것은 무엇인가요?";
    }

    @Override
    public String sewingHelpSays() {
        return "쌈솔은 한쪽 시접이 좁고, 넓은 쪽 시접이 그것을 감싸 박힙니다. 둘 다 아래에서 정합니다. 접은 솔기는 한 면에 놓여 거기에 줄이 생깁니다. 가장 짧은 부분은 띠에 이어 써도 되는 가장 짧은 길이입니다.";
    }

    @Override
    public String sewingHem(String unit) {
        return "단, 첫째 + 둘째 접기, " + unit;
    }

    @Override
    public String sewingJoins() {
        return "띠 하나의 이음 최대";
    }

    @Override
    public String sewingLeast(String unit) {
        return "가장 짧은 부분, 완성, " + unit;
    }

    @Override
    public String sewingSeam() {
        return "솔기";
    }

    @Override
    public String sewingTitle() {
        return "솔기, 단, 잇기";
    }

    @Override
    public String shapeHearth(String unit) {
        return "중심 조각, 재단, " + unit;
    }

    @Override
    public String shapeHearthHeight(String unit) {
        return "중심 조각 높이, 재단, " + unit;
    }

    @Override
    public String shapeHearthWidth(String unit) {
        return "중심 조각 너비, 재단, " + unit;
    }

    @Override
    public String shapeHelp() {
        return "이 너비는 무엇인가요?";
    }

    @Override
    public String shapeHelpSays() {
        return "너비는 모두 시접까지 넣어 자르는 너비입니다. 완성된 띠는 솔기와 단에 들어가는 만큼 좁아집니다. 위의 크기는 단까지 마친 보자기입니다. 차례는 한 둘레의 띠를 어떤 순서로 잇는지입니다.";
    }

    @Override
    public String shapeMixed() {
        return "(서로 다름)";
    }

    @Override
    public String shapeOrder() {
        return "차례";
    }

    @Override
    public String shapeRound(String round, String unit) {
        return "둘레 " + round + ", 띠 재단, " + unit;
    }

    @Override
    public String shapeRounds() {
        return "둘레";
    }

    @Override
    public String shapeSetHearth() {
        return "중심 조각 정하기";
    }

    @Override
    public String shapeTitle() {
        return "모양";
    }

    @Override
    public String shapeWhole() {
        return "보자기 전체";
    }

    @Override
    public String shortJoins(int n) {
        return "이음";
    }

    @Override
    public String shortLayers() {
        return "겹";
    }

    @Override
    public String shortLost() {
        return "버림";
    }

    @Override
    public String shortSize(String kind) {
        return (kind.equals("square") ? "정사각형" : "완성");
    }

    @Override
    public String shortThread() {
        return "실";
    }

    @Override
    public String sinceEnough() {
        return "다시 천이 충분합니다.";
    }

    @Override
    public String sinceJoins(String before, String now) {
        return "이음 " + before + ", 이제 " + now + ".";
    }

    @Override
    public String sinceLacking(String why) {
        return "천이 모자랍니다: " + why;
    }

    @Override
    public String sinceLost(String before, String now) {
        return "버림 " + before + ", 이제 " + now + ".";
    }

    @Override
    public String sinceSame() {
        return "바꿨습니다. 크기, 이음, 버림은 그대로입니다.";
    }

    @Override
    public String sinceSize(String before, String now) {
        return "크기 " + before + ", 이제 " + now + ".";
    }

    @Override
    public String sizeSquare(String size) {
        return size + " 정사각형";
    }

    @Override
    public String staleCalled(String name) {
        return "이름은 " + name + "입니다.";
    }

    @Override
    public String staleRenamed() {
        return "그사이 다른 창에서 이 보자기의 이름이 바뀌었습니다. 여기서는 바뀐 것이 없습니다.";
    }

    @Override
    public String tiedAlt(String fit, String name) {
        return name + ", 묶음. " + fit;
    }

    @Override
    public String tiedColours() {
        return "원래 색으로";
    }

    @Override
    public String tiedExample() {
        return "box 30 x 20 x 10 cm";
    }

    @Override
    public String tiedFaces() {
        return "바깥에 보일 면과 보자기 놓는 법";
    }

    @Override
    public String tiedGreys() {
        return "명암";
    }

    @Override
    public String tiedMore() {
        return "보이는 것과 그 밖에";
    }

    @Override
    public String tiedQuarter(String turn) {
        return (turn.equals("0") ? "그림대로" : turn.equals("1") ? "4분의 1" : turn.equals("2") ? "절반" : "4분의 3");
    }

    @Override
    public String tiedRound() {
        return "무엇을 쌌나";
    }

    @Override
    public String tiedRoundWhat() {
        return "무엇을";
    }

    @Override
    public String tiedSay() {
        return "무엇을 쌀지 적으세요.";
    }

    @Override
    public String tiedShow() {
        return "보기";
    }

    @Override
    public String tiedSize() {
        return "크기";
    }

    @Override
    public String tiedTooSmall() {
        return "너무 작음";
    }

    @Override
    public String tiedUnsaid(String gift) {
        return "무엇을 쌀지 아직 적지 않으셔서 " + gift + "에 묶은 모습입니다.";
    }

    @Override
    public String tiedWhich() {
        return "어떻게 묶나";
    }

    @Override
    public String turnCanvas() {
        return "묶은 선물. 화살표 키로 돌리고, 더하기와 빼기로 가깝고 멀게, Home으로 모서리에서 봅니다.";
    }

    @Override
    public String turnGroup() {
        return "선물 돌리기";
    }

    @Override
    public String turnSaid(String way) {
        return (way.equals("left") ? "왼쪽으로 돌렸습니다" : way.equals("right") ? "오른쪽으로 돌렸습니다" : way.equals("up") ? "내 쪽으로 기울였습니다" : "저쪽으로 기울였습니다");
    }

    @Override
    public String turnTo(String way) {
        return (way.equals("left") ? "왼쪽으로 돌리기" : way.equals("right") ? "오른쪽으로 돌리기" : way.equals("up") ? "내 쪽으로 기울이기" : way.equals("down") ? "저쪽으로 기울이기" : way.equals("nearer") ? "가까이" : "멀리");
    }

    @Override
    public String warnAside(int n, String pieces) {
        return "이 보자기에 쓸 천을 따로 두었습니다: " + pieces + ". 천 쪽에서 되돌려 놓거나 다시 계획하세요.";
    }

    @Override
    public String warnMany(String fabrics, int n) {
        return "천 " + n + "장(" + fabrics + ")";
    }

    @Override
    public String warnMissing(int n, String pieces) {
        return "이 보자기에 쓸 천이 계획한 대로 있지 않습니다: " + pieces + ". 이대로는 자를 수 없으니 다시 계획하세요.";
    }

    @Override
    public String warnPiece(String fabric, String number) {
        return number + "(" + fabric + ")";
    }

    @Override
    public String warnPieces(int n, String pieces) {
        return "천 " + pieces;
    }

    @Override
    public String warnRuler(String begun, String ruler) {
        return (ruler.equals("metric") ? "이 보자기는 센티미터로 재었습니다" : "이 보자기는 인치로 재었습니다") + (begun.equals("yes") ? ". 그렇게 잘랐습니다." : ". 그렇게 계획했습니다. 지금 쓰는 자로 하려면 다시 계획하세요.");
    }

    @Override
    public String warnShared(String cloth, String pieces) {
        return cloth + "에도 쓸 천입니다: " + pieces + ". 먼저 자르는 보자기가 쓰고, 다른 것은 다시 계획합니다.";
    }

    @Override
    public String wrongBar() {
        return "먼저 띠를 고르세요.";
    }

    @Override
    public String wrongCloth() {
        return "그러면 보자기가 되지 않습니다. 바뀐 것은 없습니다. 다른 치수를 쓰세요.";
    }

    @Override
    public String wrongFabric(String fabric) {
        return "가진 천 가운데 \"" + fabric + "\"이라는 것이 없습니다.";
    }

    @Override
    public String wrongForm() {
        return "다른 종류의 양식입니다. 쪽을 다시 여세요.";
    }

    @Override
    public String wrongIsCut() {
        return "이 보자기는 이미 잘랐습니다. 디자인을 바꾸려면 사본을 저장하세요.";
    }

    @Override
    public String wrongLacking() {
        return "이 보자기를 만들 천이 모자랍니다. 먼저 바꾸세요.";
    }

    @Override
    public String wrongLeast() {
        return "가장 짧은 부분은 0보다 크고 1 m까지입니다.";
    }

    @Override
    public String wrongName() {
        return "이름을 80자까지 적으세요.";
    }

    @Override
    public String wrongNoBars() {
        return "이 보자기에는 바꿀 띠가 없습니다. 다른 자투리나 크기는 다시 제안을 찾아보세요.";
    }

    @Override
    public String wrongNoOther() {
        return "이 크기로는 다른 색 계획을 찾지 못했습니다. 띠의 고정을 풀거나 너비를 바꾸세요.";
    }

    @Override
    public String wrongNone() {
        return "이런 보자기가 없습니다. 지웠을 수 있습니다.";
    }

    @Override
    public String wrongOrder(String written) {
        return Particles.fitted("\"" + written + "\"은(는) 차례가 아닙니다.");
    }

    @Override
    public String wrongPart() {
        return "각 부분은 0보다 크고 10 cm까지입니다.";
    }

    @Override
    public String wrongScheme(String needs, String scheme) {
        return Particles.fitted("이 크기로는 \"" + scheme + "\"을(를) 찾지 못했습니다. 필요한 것: " + needs + ".");
    }

    @Override
    public String wrongSeam(String written) {
        return Particles.fitted("\"" + written + "\"은(는) 아는 솔기가 아닙니다.");
    }

    @Override
    public String wrongTiesNone() {
        return "이 보자기로 쌀 것이 아직 없습니다. 무엇을 쌀지 적으세요.";
    }

    @Override
    public String wrongTwo(String what, String written) {
        return Particles.fitted((what.equals("hem") ? "\"" + written + "\"은(는) 쓸 수 없습니다. 단에는 첫째와 둘째 접기가 있습니다. 예: 0.6 + 1.2 cm." : "\"" + written + "\"은(는) 쓸 수 없습니다. 쌈솔에는 좁은 시접과 넓은 시접이 있습니다. 예: 0.6 + 1.2 cm."));
    }

    @Override
    public String wrongWhole(String least, String most, String written) {
        return Particles.fitted("\"" + written + "\"은(는) 쓸 수 없습니다. " + least + "에서 " + most + "까지 정수를 적으세요.");
    }

    @Override
    public String wrongWide(String written) {
        return Particles.fitted("\"" + written + "\"은(는) 어떤 보자기보다 넓습니다. 단위를 확인하세요.");
    }

    @Override
    public String wrongWrap() {
        return "넓은 쪽이 좁은 쪽을 감싸므로 둘째가 더 넓어야 합니다.";
    }
}
