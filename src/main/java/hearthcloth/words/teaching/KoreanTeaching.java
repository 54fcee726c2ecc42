package hearthcloth.words.teaching;

import hearthcloth.words.korean.Particles;

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
    public String classWith() {
        return "이것으로 수업 시작";
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
    public String ideaBack() {
        return "뒷면";
    }

    @Override
    public String ideaBy(String name) {
        return name + " 님의 아이디어";
    }

    @Override
    public String ideaCare(String words) {
        return "조심: " + words;
    }

    @Override
    public String ideaEmpty() {
        return "보여 줄 것이 없습니다.";
    }

    @Override
    public String ideaExample(String size) {
        return "보기의 앞면, " + size + ". 천은 지어낸 것입니다.";
    }

    @Override
    public String ideaExampleBack() {
        return "그 뒷면.";
    }

    @Override
    public String ideaFirst() {
        return "첫 보자기입니다. 더 나은 것을 찾고 있습니다 …";
    }

    @Override
    public String ideaFoot() {
        return "이 쪽은 네트워크에 아무것도 묻지 않고 아무것도 간직하지 않습니다. 계획은 여러분의 기기에서 짭니다. Hearthcloth 로 만들었습니다.";
    }

    @Override
    public String ideaFront() {
        return "앞면";
    }

    @Override
    public String ideaGuide() {
        return "안내서 전체, 쪽마다";
    }

    @Override
    public String ideaHeapHelp() {
        return "너비는 가로, 길이는 식서 방향입니다. 이 줄들은 보기이니 위에 덮어 쓰십시오.";
    }

    @Override
    public String ideaKeep() {
        return "계획 저장";
    }

    @Override
    public String ideaLabel() {
        return "아이디어";
    }

    @Override
    public String ideaLanguage() {
        return "언어";
    }

    @Override
    public String ideaMade() {
        return "만드는 법";
    }

    @Override
    public String ideaMadeMore() {
        return "바느질, 단, 묶기, 빨래, 조심할 곳";
    }

    @Override
    public String ideaNoCloth(String all, String name) {
        return "“" + name + "”이라는 파일도 보자기도 없습니다. 있는 것: " + all + ".";
    }

    @Override
    public String ideaNoneKept(String name) {
        return "“" + name + "”이라는 파일도 보자기도 없습니다. 가운데 천과 띠가 있는 것이 없습니다.";
    }

    @Override
    public String ideaOld() {
        return "이 브라우저에서는 짤 수 없습니다. 더 새로운 것(2023년 이후)에서 여십시오.";
    }

    @Override
    public String ideaOne() {
        return "보자기가 나왔습니다.";
    }

    @Override
    public String ideaOwn() {
        return "내 조각으로 만드는 나의 것";
    }

    @Override
    public String ideaPieces() {
        return "어느 조각에서 무엇을 자르나";
    }

    @Override
    public String ideaPrint() {
        return "이 보자기 인쇄";
    }

    @Override
    public String ideaSave() {
        return "지침을 파일로 저장";
    }

    @Override
    public String ideaStop() {
        return "멈추기";
    }

    @Override
    public String ideaStopped() {
        return "멈추었습니다.";
    }

    @Override
    public String ideaSuchAs(String fabric) {
        return "보기: " + fabric;
    }

    @Override
    public String ideaTied() {
        return "묶은 모습.";
    }

    @Override
    public String ideaTrouble() {
        return "짜기가 멈추었습니다. 적은 줄은 그대로 있습니다. 조각을 줄여 다시 해 보십시오.";
    }

    @Override
    public String ideaTwo() {
        return "보자기와, 또 다른 하나입니다.";
    }

    @Override
    public String ideaTying() {
        return "묶는 법";
    }

    @Override
    public String kitCame() {
        return "꾸러미가 왔습니다. 조각은 보관한 천에 있고, 보자기는 그 조각으로 짜여 있습니다.";
    }

    @Override
    public String kitHelp() {
        return "꾸러미 파일은 자기 조각을 함께 가져옵니다.";
    }

    @Override
    public String kitRefused() {
        return "이 꾸러미는 쓸 수 없습니다. 더 새로운 Hearthcloth 의 것이거나, 상했거나, 손으로 고친 것입니다. 다시 받으십시오. 아무것도 들이지 않았습니다.";
    }

    @Override
    public String kitsAnew() {
        return "더는 여기 없습니다. 다시 짜십시오.";
    }

    @Override
    public String kitsAsked(String asked) {
        return "바란 것: " + asked;
    }

    @Override
    public String kitsCount() {
        return "학생 수";
    }

    @Override
    public String kitsCountFault(String given, String most) {
        return Particles.fitted("“" + given + "”은(는) 학생 수로 쓸 수 없습니다. 1에서 " + most + "까지의 수를 쓰세요.");
    }

    @Override
    public String kitsEmpty() {
        return "보관한 천에 빈 조각이 없습니다. 먼저 천을 넣으십시오.";
    }

    @Override
    public String kitsFair(String least, String most) {
        return "한 보자기에 가장 많은 이음: " + most + ". 이 무더기를 어떻게 나누어도 " + least + "보다 적지 않습니다.";
    }

    @Override
    public String kitsFile() {
        return "꾸러미 파일";
    }

    @Override
    public String kitsForget() {
        return "이 계획 치우기";
    }

    @Override
    public String kitsGoing(String all, String tried) {
        return "더 고르게 나누는 길을 찾고 있습니다: " + all + "번 가운데 " + tried + "번.";
    }

    @Override
    public String kitsGuide() {
        return "수업용 안내서";
    }

    @Override
    public String kitsHeap(int count) {
        return "보관한 천에서 조각 " + count + "장이 비어 있습니다.";
    }

    @Override
    public String kitsInTurn(String joins, String lacking) {
        return "하나씩 차례로 짰다면 가장 불리한 것이 " + joins + "이고, " + lacking + "명은 받지 못합니다.";
    }

    @Override
    public String kitsIntro() {
        return "한 무더기에서 여러 보자기를 함께 짭니다. 같은 조각을 두 번 약속하지 않고, 가장 불리한 사람도 될 수 있는 대로 좋은 것을 받습니다.";
    }

    @Override
    public String kitsJoins(int count) {
        return (count == 0 ? "이음 없음" : "이음 " + count + "개");
    }

    @Override
    public String kitsKeep() {
        return "이 보자기들 간직하기";
    }

    @Override
    public String kitsKeepHelp() {
        return "만든 것으로 가고, 그 조각은 보관한 천에서 이 보자기 몫이 됩니다.";
    }

    @Override
    public String kitsKept(int count) {
        return "보자기 " + count + "장을 간직했습니다." + " 조각은 그 보자기 몫입니다.";
    }

    @Override
    public String kitsLines() {
        return "한 줄에 보자기 하나";
    }

    @Override
    public String kitsLinesHelp() {
        return "이름 다음에 크기나 선물을 적습니다. 또는 첫 줄에 name, size, gift, tie, fabrics 를 적은 목록을 붙이십시오.";
    }

    @Override
    public String kitsList() {
        return "한 철의 선물: 한 줄에 보자기 하나";
    }

    @Override
    public String kitsMove() {
        return "조각을 다른 보자기로 옮기기";
    }

    @Override
    public String kitsMoveIt() {
        return "옮기고 나머지는 다시 맞추기";
    }

    @Override
    public String kitsMoved(String name, String piece) {
        return piece + "번 조각은 이제 " + name + " 님의 보자기에 있습니다. 나머지는 다시 맞추었습니다.";
    }

    @Override
    public String kitsNearest() {
        return "만들 수 있는 가장 가까운 것입니다.";
    }

    @Override
    public String kitsNotMoved(String name, String piece) {
        return name + " 님에게 " + piece + "번 조각을 쓰는 보자기를 찾지 못했습니다. 바뀐 것은 없습니다.";
    }

    @Override
    public String kitsNothing() {
        return "아무것도 만들 수 없습니다.";
    }

    @Override
    public String kitsPiece() {
        return "조각";
    }

    @Override
    public String kitsPlan() {
        return "수업 짜기";
    }

    @Override
    public String kitsPlanGifts() {
        return "선물 짜기";
    }

    @Override
    public String kitsPrint() {
        return "이름표, 살 것 목록, 선생님 쪽지";
    }

    @Override
    public String kitsSample() {
        return "Anna, 40 cm\n할머니, box 30 x 20 x 8 cm";
    }

    @Override
    public String kitsSize() {
        return "완성 크기";
    }

    @Override
    public String kitsStop() {
        return "멈추고 지금까지 가장 좋은 것 쓰기";
    }

    @Override
    public String kitsStudents() {
        return "수업: 같은 보자기 여러 장";
    }

    @Override
    public String kitsTheList() {
        return "목록";
    }

    @Override
    public String kitsTitle() {
        return "꾸러미와 선물";
    }

    @Override
    public String kitsTo() {
        return "받을 사람";
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
