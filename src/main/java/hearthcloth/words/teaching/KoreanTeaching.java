package hearthcloth.words.teaching;

/** The room of teaching in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanTeaching implements TeachingWords {

    @Override
    public String classBegin() {
        return "수업 시작";
    }

    @Override
    public String classCode() {
        return "코드";
    }

    @Override
    public String classCount(int inside) {
        return (inside == 0 ? "아직 아무도 없습니다." : "" + inside + "명이 들어와 있습니다.");
    }

    @Override
    public String classEnd() {
        return "수업 끝내기";
    }

    @Override
    public String classEndAsk() {
        return "수업을 끝낼까요? 학생이 모두 나가고, 저장하지 않은 것은 사라집니다.";
    }

    @Override
    public String classEnded() {
        return "수업이 끝났습니다. 모두 나갔습니다.";
    }

    @Override
    public String classFile() {
        return "파일";
    }

    @Override
    public String classFromCloth() {
        return "보자기의 아이디어로 시작하기";
    }

    @Override
    public String classFromFile() {
        return "지침 파일로 시작하기";
    }

    @Override
    public String classHidden() {
        return "아직 보여 주지 않음";
    }

    @Override
    public String classIntro() {
        return "학생들이 휴대전화로 들어와 자기 조각 천을 적습니다. 저마다 선생님의 아이디어에 따른 보자기를 받습니다. 벽에는 학생이 보여 주려는 것만 보입니다.";
    }

    @Override
    public String classIsOut(String name) {
        return name + " 님이 나갔습니다.";
    }

    @Override
    public String classNoCloth() {
        return "가운데 천과 띠가 있는 보자기가 아직 없습니다.";
    }

    @Override
    public String classNotShared() {
        return "작업실이 네트워크에 열려 있어야 학생이 들어올 수 있습니다. 작업실을 닫고, 믿을 수 있는 네트워크에서 ./hearthcloth --lan 으로 다시 여십시오.";
    }

    @Override
    public String classOut(String name) {
        return name + " 내보내기";
    }

    @Override
    public String classPoint() {
        return "휴대전화 카메라를 그림에 비추거나, 주소를 열고 코드를 적으십시오. 수업이 이어지는 동안 누구나 이 코드로 들어옵니다.";
    }

    @Override
    public String classQr() {
        return "코드가 든 주소의 QR 코드";
    }

    @Override
    public String classSeams(String all, String sewn) {
        return "솔기 " + all + "개 가운데 " + sewn + "개 박음";
    }

    @Override
    public String classTitle() {
        return "수업";
    }

    @Override
    public String classWall() {
        return "벽";
    }

    @Override
    public String comeCode() {
        return "선생님 화면의 코드";
    }

    @Override
    public String comeFull() {
        return "자리가 다 찼습니다.";
    }

    @Override
    public String comeIn() {
        return "들어가기";
    }

    @Override
    public String comeName() {
        return "다른 사람에게 보이는 이름";
    }

    @Override
    public String comeNone() {
        return "지금은 수업이 없습니다. 선생님께 물어보십시오.";
    }

    @Override
    public String comeTitle() {
        return "수업에 들어가기";
    }

    @Override
    public String comeWait() {
        return "틀린 코드가 너무 많습니다. 십 분 기다리십시오.";
    }

    @Override
    public String comeWrong() {
        return "코드가 맞지 않습니다. 선생님 화면을 보십시오.";
    }

    @Override
    public String cutCut() {
        return "재단";
    }

    @Override
    public String cutFabric() {
        return "천";
    }

    @Override
    public String cutList() {
        return "재단 목록";
    }

    @Override
    public String cutPatch() {
        return "부분";
    }

    @Override
    public String cutPiece() {
        return "조각";
    }

    @Override
    public String mineAgain() {
        return "다시 짜기";
    }

    @Override
    public String mineAnother() {
        return "다른 것 보기";
    }

    @Override
    public String mineCentimetres() {
        return "센티미터";
    }

    @Override
    public String mineFavourite() {
        return "가장 좋아하는 천";
    }

    @Override
    public String mineGuide() {
        return "인쇄할 안내서";
    }

    @Override
    public String mineHelp() {
        return "종류마다 한 줄씩: 너비와 길이, 몇 장, 어떤 천인지. 너비는 가로, 길이는 식서 방향입니다.";
    }

    @Override
    public String mineHide() {
        return "벽에서 내리기";
    }

    @Override
    public String mineInches() {
        return "인치";
    }

    @Override
    public String mineKeep() {
        return "수업이 끝나면 아무것도 남지 않습니다. 가져갈 것을 저장하십시오.";
    }

    @Override
    public String mineKeeps() {
        return "아이디어의 규칙을 모두 지킵니다.";
    }

    @Override
    public String mineLeave() {
        return "수업에서 나가기";
    }

    @Override
    public String mineLess() {
        return "솔기 하나 되돌리기";
    }

    @Override
    public String mineLooking() {
        return "보자기를 찾고 있습니다 …";
    }

    @Override
    public String mineMore() {
        return "솔기 하나 더";
    }

    @Override
    public String mineNearest() {
        return "가진 조각으로 만들 수 있는 가장 가까운 것입니다.";
    }

    @Override
    public String mineNone() {
        return "이 조각들로는 아직 보자기가 되지 않습니다.";
    }

    @Override
    public String mineOnWall() {
        return "벽에는 그림과 크기와 이름이 보입니다.";
    }

    @Override
    public String minePlan() {
        return "내 보자기 짜기";
    }

    @Override
    public String minePlanFile() {
        return "간직할 계획 파일";
    }

    @Override
    public String mineRuler() {
        return "자";
    }

    @Override
    public String mineRules() {
        return "아이디어의 규칙";
    }

    @Override
    public String mineSample() {
        return "10 x 20 cm, 12장, 초록 무늬";
    }

    @Override
    public String mineScraps() {
        return "내 조각 천";
    }

    @Override
    public String mineScrapsOnly() {
        return "가진 조각으로는 가운데 천과 둘레 띠가 나오지 않습니다. 조각을 있는 그대로 이었습니다.";
    }

    @Override
    public String mineShow() {
        return "벽에 보여 주기";
    }

    @Override
    public String mineWhy() {
        return "까닭";
    }
}
