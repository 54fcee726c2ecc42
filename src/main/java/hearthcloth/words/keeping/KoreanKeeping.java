package hearthcloth.words.keeping;

import hearthcloth.words.korean.Particles;

/** The room of keeping in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanKeeping implements KeepingWords {

    @Override
    public String aboutAlsoWith(String before, String who) {
        return before + "; 가진 사람: " + who;
    }

    @Override
    public String aboutAlsoWrapped(String before, String what) {
        return before + "; 싼 것: " + what;
    }

    @Override
    public String aboutMade(String day) {
        return "만든 날 " + day;
    }

    @Override
    public String aboutWith(String who) {
        return "가진 사람: " + who;
    }

    @Override
    public String aboutWrapped(String what) {
        return "싼 것: " + what;
    }

    @Override
    public String archiveAdd() {
        return "여기 것을 두고 보관 파일을 더하기";
    }

    @Override
    public String archiveBring() {
        return "들여오기";
    }

    @Override
    public String archiveBrought(int cloths, int pieces) {
        return "천 " + "" + pieces + "장" + "과 보자기 " + "" + cloths + "개" + "를 넣었습니다. 천 목록의 되돌리기로 다시 뺄 수 있습니다.";
    }

    @Override
    public String archiveHow() {
        return "이미 여기 있는 것";
    }

    @Override
    public String archiveIn() {
        return "들여올 보관 파일";
    }

    @Override
    public String archiveInstead() {
        return "여기 것을 바꾸기: 천 목록, 그리고 보관 파일에도 있는 보자기";
    }

    @Override
    public String archiveOut() {
        return "모두 내보내기";
    }

    @Override
    public String archiveTitle() {
        return "한 파일에 모두";
    }

    @Override
    public String archiveWhat() {
        return "천 목록, 천 사진, 보자기를 zip 파일 하나에 담습니다. 안전한 곳에 두거나 다른 기기로 옮깁니다.";
    }

    @Override
    public String beside() {
        return "나란히";
    }

    @Override
    public String cardLacking() {
        return "이것을 만들 천이 모자랍니다.";
    }

    @Override
    public String cardMore() {
        return "안내, 파일, 이름";
    }

    @Override
    public String cardPhotograph() {
        return "사진 찍기";
    }

    @Override
    public String cardSlip() {
        return "쪽지";
    }

    @Override
    public String cardUsed(String stage, String used) {
        return stage + ", " + used;
    }

    @Override
    public String classes() {
        return "수업";
    }

    @Override
    public String compareBack() {
        return "보자기 목록으로";
    }

    @Override
    public String compareFew() {
        return "나란히 보려면 보자기를 둘 이상 고르세요.";
    }

    @Override
    public String copy() {
        return "여기서 새 디자인";
    }

    @Override
    public String find() {
        return "보자기 찾기";
    }

    @Override
    public String findExample() {
        return "이름, 천, 선물, 사람";
    }

    @Override
    public String findGo() {
        return "찾기";
    }

    @Override
    public String first() {
        return "첫 보자기가 놓일 자리입니다.";
    }

    @Override
    public String found(String all, String found, String sought) {
        return "“" + sought + "”: " + all + "개 중 " + found + "개.";
    }

    @Override
    public String ideaGo() {
        return "아이디어 내보내고 들여오기";
    }

    @Override
    public String ideaTitle() {
        return "아이디어 하나를 파일로";
    }

    @Override
    public String ideaWhat() {
        return "보자기를 규칙으로 전하면 천마다 다르게 나옵니다. 받은 것을 들여올 수도 있습니다.";
    }

    @Override
    public String kits() {
        return "꾸러미와 선물";
    }

    @Override
    public String labelRemoved(String name) {
        return name + " 뺌";
    }

    @Override
    public String name() {
        return "이름";
    }

    @Override
    public String open(String name) {
        return name + " 열기";
    }

    @Override
    public String redo(String deed) {
        return "다시 하기: " + deed;
    }

    @Override
    public String remove() {
        return "지우기";
    }

    @Override
    public String removeSure(String name) {
        return Particles.fitted(name + "을(를) 아주 지울까요?");
    }

    @Override
    public String removed(String name) {
        return Particles.fitted(name + "을(를) 지웠습니다. 되돌리기로 다시 나옵니다.");
    }

    @Override
    public String rename() {
        return "이름 바꾸기";
    }

    @Override
    public String see() {
        return "가진 천으로 만들 수 있는 것 보기";
    }

    @Override
    public String showAll() {
        return "모두 보기";
    }

    @Override
    public String stage(String stage) {
        return (stage.equals("DESIGNED") ? "디자인함" : stage.equals("CUT") ? "재단함" : stage.equals("RECUT") ? "재단함, 나중에 필요한 것은 아직" : "박음");
    }

    @Override
    public String take(String what) {
        return (what.equals("cloth") ? "보자기" : what.equals("cut") ? "재단" : what.equals("sew") ? "바느질" : what.equals("guideA4") ? "안내, A4" : what.equals("guideLetter") ? "안내, 레터" : what.equals("guide") ? "안내" : what.equals("class") ? "수업용 안내" : what.equals("slips") ? "조각표" : what.equals("front") ? "앞면 그림" : what.equals("back") ? "뒷면 그림" : what.equals("plan") ? "계획 파일" : what.equals("kit") ? "꾸러미 파일" : "아이디어 전하기");
    }

    @Override
    public String tick() {
        return "둘 이상 고르세요.";
    }

    @Override
    public String title() {
        return "만든 것";
    }

    @Override
    public String undo(String deed) {
        return "되돌리기: " + deed;
    }

    @Override
    public String useFor(String who) {
        return who + "에게";
    }

    @Override
    public String used(int n) {
        return "" + n + "번 썼음";
    }

    @Override
    public String usedLast(String last, int n) {
        return "" + n + "번 썼음, 마지막: " + last;
    }
}
