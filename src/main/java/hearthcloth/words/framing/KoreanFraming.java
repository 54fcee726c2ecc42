package hearthcloth.words.framing;

import hearthcloth.words.korean.Particles;

/** The room of framing in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanFraming implements FramingWords {

    @Override
    public String begunCuts(int n) {
        return "" + n + "번 잘랐습니다";
    }

    @Override
    public String begunGoCutting() {
        return "이어서 자르기";
    }

    @Override
    public String begunGoOn() {
        return "이어서 하기";
    }

    @Override
    public String begunGoSewing() {
        return "이어서 박기";
    }

    @Override
    public String begunGoSewingNext(String next) {
        return "이어서 박기: " + next;
    }

    @Override
    public String begunLacks() {
        return "천이 모자랍니다";
    }

    @Override
    public String begunLook() {
        return "살펴보기";
    }

    @Override
    public String begunPlanned() {
        return "계획함";
    }

    @Override
    public String begunPlannedFor(String gift) {
        return "계획함, 쌀 것: " + gift;
    }

    @Override
    public String begunRecut(String seams, String sewn) {
        return "솔기 " + seams + "개 중 " + sewn + "개를 박았습니다. 먼저 자를 것이 있습니다";
    }

    @Override
    public String begunSewn(String seams, String sewn) {
        return "솔기 " + seams + "개 중 " + sewn + "개를 박았습니다";
    }

    @Override
    public String begunSewnFor(String gift, String seams, String sewn) {
        return "솔기 " + seams + "개 중 " + sewn + "개를 박았습니다. 쌀 것: " + gift;
    }

    @Override
    public String drawerMeasures() {
        return "자, 종이, 언어";
    }

    @Override
    public String drawerTitle() {
        return "서랍";
    }

    @Override
    public String field(String field) {
        return (field.equals("name") ? "이름" : field.equals("width") ? "너비" : field.equals("length") ? "길이" : field.equals("fabric") ? "천" : field.equals("washed") ? "빨래" : field.equals("at") ? "자르는 곳" : field.equals("many") ? "몇 장" : field.equals("colour") ? "색" : field.equals("faces") ? "겉과 안" : field.equals("nap") ? "결" : field.equals("made") ? "만든 날" : field.equals("wrapped") ? "싼 것" : "가진 사람");
    }

    @Override
    public String firstAgain() {
        return "다시 보기";
    }

    @Override
    public String firstExample() {
        return "예시";
    }

    @Override
    public String firstFilm() {
        return "예시: 바구니의 자투리 아홉 장이 띠 열두 개의 보자기가 되어 상자를 쌉니다";
    }

    @Override
    public String firstFour() {
        return "쌉니다. 풀면 다시 보자기입니다.";
    }

    @Override
    public String firstKinds() {
        return "무엇을 쌀까요?";
    }

    @Override
    public String firstOne() {
        return "바구니에서 꺼낸 자투리 아홉 장";
    }

    @Override
    public String firstPrivate() {
        return "모두 이 기기에만 남습니다. 인터넷에는 아무것도 묻지 않습니다.";
    }

    @Override
    public String firstStop() {
        return "멈추기";
    }

    @Override
    public String firstThree() {
        return "띠 열두 개를 하나씩 잇고,";
    }

    @Override
    public String firstTwo() {
        return "그리고 선물할 상자 하나.";
    }

    @Override
    public String frameBesides() {
        return "그 밖에";
    }

    @Override
    public String frameCopies() {
        return "안전 사본";
    }

    @Override
    public String frameExample() {
        return "예시";
    }

    @Override
    public String frameExampleAway() {
        return "예시 치우기";
    }

    @Override
    public String frameExampleIs() {
        return "마음대로 만져 보는 예시입니다.";
    }

    @Override
    public String frameExampleNotYours() {
        return "여기에 있는 것은 직접 넣으신 것이 아닙니다.";
    }

    @Override
    public String frameGuidelines() {
        return "지침";
    }

    @Override
    public String frameHome() {
        return "Hearthcloth, 작업대";
    }

    @Override
    public String frameLeave() {
        return "나가기";
    }

    @Override
    public String framePeople() {
        return "사람";
    }

    @Override
    public String frameSkip() {
        return "본문으로";
    }

    @Override
    public String frameStages() {
        return "단계";
    }

    @Override
    public String frameStudio() {
        return "공방";
    }

    @Override
    public String giftCloth(String size) {
        return size + " 보자기";
    }

    @Override
    public String giftKind(String shape) {
        return (shape.equals("BOX") ? "상자" : shape.equals("BOTTLE") ? "병" : shape.equals("TWO_BOTTLES") ? "병 두 개" : shape.equals("ROUND") ? "공" : shape.equals("BOOKS") ? "책 두 권" : "두루마리");
    }

    @Override
    public String giftMeasure(String measure) {
        return (measure.equals("long") ? "길이" : measure.equals("wide") ? "너비" : measure.equals("high") ? "높이" : measure.equals("across") ? "지름" : "두께");
    }

    @Override
    public String giftTied(String gift, String tie) {
        return gift + ", " + tie;
    }

    @Override
    public String handEats(String eats, String n, String spread, String usual) {
        return Particles.fitted("솔기 하나에 평균 " + eats + "이(가) 들어갑니다(솔기 " + n + "개의 중앙값). 절반은 그 값에서 " + spread + " 안이었습니다. 보통 솔기에는 " + usual + "이(가) 들어갑니다.");
    }

    @Override
    public String handFrom() {
        return "무엇에서 배웠나";
    }

    @Override
    public String handIsOwn() {
        return "새 보자기는 내 솔기로 계획합니다.";
    }

    @Override
    public String handIsUsual() {
        return "새 보자기는 보통 솔기로 계획합니다.";
    }

    @Override
    public String handOwn() {
        return "새 보자기를 이 솔기로 계획하기";
    }

    @Override
    public String handTitle() {
        return "내 솜씨";
    }

    @Override
    public String handUnknown(String n) {
        return "바느질 쪽에서 솔기 " + n + "개를 재면, 솔기에 실제로 얼마가 들어가는지 여기에 나옵니다.";
    }

    @Override
    public String handUsual() {
        return "다시 보통 솔기로 계획하기";
    }

    @Override
    public String homeAll(String n) {
        return "모두 " + n + "개";
    }

    @Override
    public String homeEmpty() {
        return "작업대가 비어 있습니다. 바구니에 무엇이 있나요?";
    }

    @Override
    public String homeFirst() {
        return "첫 보자기가 놓일 자리입니다";
    }

    @Override
    public String homeMade() {
        return "완성";
    }

    @Override
    public String homeMaking() {
        return "만드는 중";
    }

    @Override
    public String homeNothing() {
        return "아직 없습니다. 무엇을 쌀지 말하고, 가진 천으로 무엇을 만들 수 있는지 봅니다.";
    }

    @Override
    public String homeOnTable() {
        return "작업대 위";
    }

    @Override
    public String homePhotograph() {
        return "사진 찍기";
    }

    @Override
    public String homePieces(int n) {
        return "작업대 위 천 " + n + "장";
    }

    @Override
    public String homeTitle() {
        return "무엇을 쌀까요?";
    }

    @Override
    public String key(String key) {
        return (key.equals("tab") ? "Tab" : key.equals("enter") ? "Enter" : key.equals("space") ? "스페이스" : key.equals("pageDown") ? "Page Down" : key.equals("pageUp") ? "Page Up" : "Esc");
    }

    @Override
    public String keysArrows() {
        return "작업대에서는 천에서 천으로, 보자기에서는 띠에서 띠로. 묶은 선물은 돌립니다";
    }

    @Override
    public String keysEnter() {
        return "누르기";
    }

    @Override
    public String keysEscape() {
        return "열린 것을 닫습니다";
    }

    @Override
    public String keysNumbers() {
        return "보자기를 보는 네 가지 방법, 모음의 보자기";
    }

    @Override
    public String keysPages() {
        return "재단과 바느질에서 완료와 뒤로. 발 스위치가 보내는 키입니다";
    }

    @Override
    public String keysPlusMinus() {
        return "작업대와 묶은 선물을 가깝게, 멀게";
    }

    @Override
    public String keysSingle() {
        return "이 기기에서 글자나 기호 하나짜리 단축키를 씁니다";
    }

    @Override
    public String keysSpace() {
        return "천이나 띠를 고릅니다. 재단과 바느질에서는 완료";
    }

    @Override
    public String keysTab() {
        return "다음 것으로 옮기기";
    }

    @Override
    public String keysTitle() {
        return "단축키";
    }

    @Override
    public String keysU() {
        return "마지막에 한 일을 되돌립니다";
    }

    @Override
    public String measureA4() {
        return "A4";
    }

    @Override
    public String measureEighths() {
        return "인치, ⅛까지";
    }

    @Override
    public String measureKeep() {
        return "저장";
    }

    @Override
    public String measureLanguage() {
        return "언어";
    }

    @Override
    public String measureLetter() {
        return "레터";
    }

    @Override
    public String measureMillimetres() {
        return "센티미터, 1 mm까지";
    }

    @Override
    public String measurePaper() {
        return "프린터의 종이";
    }

    @Override
    public String measureQuarters() {
        return "인치, ¼까지";
    }

    @Override
    public String measureRuler() {
        return "쓰시는 자";
    }

    @Override
    public String measureSixteenths() {
        return "인치, 1⁄16까지";
    }

    @Override
    public String safeArchive() {
        return "한 파일에 모두";
    }

    @Override
    public String safeArchiveHow() {
        return "천 목록, 천, 보자기를 다른 곳에 보관";
    }

    @Override
    public String safeClose() {
        return "작업실 닫기";
    }

    @Override
    public String safeCloseHow() {
        return "잃는 것은 없습니다";
    }

    @Override
    public String safeCopies() {
        return "되돌아갈 수 있게 날마다 만드는 전체 사본";
    }

    @Override
    public String safeDevices() {
        return "이 태블릿과 전화기";
    }

    @Override
    public String safeDevicesHow() {
        return "다른 화면에서도 작업실 쓰기";
    }

    @Override
    public String safeTitle() {
        return "안전하게, 손 닿는 곳에";
    }

    @Override
    public String scriptKeeping() {
        return "저장하는 중 …";
    }

    @Override
    public String scriptKeepingMore() {
        return "저장하는 중이며, %d개가 기다립니다.";
    }

    @Override
    public String scriptKeepingOne() {
        return "저장하는 중이며, 하나가 기다립니다.";
    }

    @Override
    public String scriptSilent() {
        return "작업실이 응답하지 않습니다. Hearthcloth를 다시 시작하세요. 저장한 것은 그대로 있습니다.";
    }

    @Override
    public String stage(String stage) {
        return (stage.equals("Gift") ? "선물" : stage.equals("Stash") ? "천" : stage.equals("Cloth") ? "보자기" : stage.equals("Cut") ? "재단" : stage.equals("Sew") ? "바느질" : stage.equals("Tie") ? "묶기" : stage.equals("Made") ? "완성" : "서랍");
    }

    @Override
    public String staleCloth(String name) {
        return Particles.fitted("그사이 다른 창에서 " + name + "이(가) 바뀌었습니다. 여기서는 바뀐 것이 없습니다.");
    }

    @Override
    public String staleTitle() {
        return "두 창에서 바뀜";
    }

    @Override
    public String threadsColour(String line, String name) {
        return "실 \"" + line + "\"의 색을 알 수 없습니다. 뒤에 색을 적으세요. 예: " + name + " #8a9a5b";
    }

    @Override
    public String threadsKept(int n) {
        return "실 " + n + "개를 저장했습니다.";
    }

    @Override
    public String threadsLines() {
        return "한 줄에 하나: 이름, 이름에 색이 없으면 색도(old navy #27344d)";
    }

    @Override
    public String threadsMany(String longest, String most) {
        return "실은 " + most + "개까지, 하나에 " + longest + "자까지 적으세요.";
    }

    @Override
    public String threadsNeed(String all, String bobbin) {
        return "실: 모두 " + all + "(실 끝과 여유 15 % 포함), 그중 북실 " + bobbin + ".";
    }

    @Override
    public String threadsSave() {
        return "저장";
    }

    @Override
    public String threadsSeam(String least, String most) {
        return "이 솔기에 가장 덜 보이는 것은 " + least + ", 가장 잘 보이는 것은 " + most + "입니다.";
    }

    @Override
    public String threadsSeamOne(String least) {
        return "이 솔기에 가장 덜 보이는 것은 " + least + "입니다.";
    }

    @Override
    public String threadsSuits(String least, String most) {
        return "가진 실 가운데 이 천들에 가장 덜 보이는 것은 " + least + ", 가장 잘 보이는 것은 " + most + "입니다.";
    }

    @Override
    public String threadsSuitsOne(String least) {
        return "가진 실 가운데 이 천들에 가장 덜 보이는 것은 " + least + "입니다.";
    }

    @Override
    public String threadsTitle() {
        return "가진 실";
    }

    @Override
    public String threadsUsed() {
        return "바느질 쪽에서 어떤 실이 보자기에 가장 덜 보이고 어떤 실이 가장 잘 보이는지 알려 줍니다.";
    }

    @Override
    public String troubleColour(String written) {
        return Particles.fitted("\"" + written + "\"은(는) 아는 색이 아닙니다. sage green이나 #8a9a5b처럼 적거나 비워 두세요.");
    }

    @Override
    public String troubleComeIn() {
        return "먼저 이름과 암호 문구로 들어오세요.";
    }

    @Override
    public String troubleGone() {
        return "쪽을 열면 새로 씁니다.";
    }

    @Override
    public String troubleInside() {
        return "작업실 안에서 문제가 생겼습니다. 바뀐 것은 없습니다. 다시 해 보세요.";
    }

    @Override
    public String troubleLarge(String most) {
        return "이 파일은 " + most + " MB를 넘습니다. 더 작은 것을 고르세요.";
    }

    @Override
    public String troubleNoFile() {
        return "파일을 고르지 않았거나 비어 있습니다.";
    }

    @Override
    public String troubleNotWhole() {
        return "파일이 온전히 오지 않았습니다. 다시 보내세요.";
    }

    @Override
    public String troubleNothing() {
        return "이 주소에는 아무것도 없습니다.";
    }

    @Override
    public String troublePlain() {
        return "되지 않았습니다.";
    }

    @Override
    public String troubleTitle() {
        return "되지 않았습니다";
    }

    @Override
    public String troubleUnread() {
        return "보낸 것을 읽을 수 없습니다. 쪽을 다시 열고 다시 보내세요.";
    }

    @Override
    public String unitCentimetres() {
        return "센티미터로 재기";
    }

    @Override
    public String unitInches() {
        return "인치로 재기";
    }

    @Override
    public String wayExample() {
        return "예시 만져 보기";
    }

    @Override
    public String wayExampleHow() {
        return "자투리 예순 장과 보자기 하나. 한 번 눌러 다시 치웁니다.";
    }

    @Override
    public String wayGift() {
        return "선물부터 시작하기";
    }

    @Override
    public String wayGiftHow() {
        return "보자기가 얼마나 커야 하는지 봅니다";
    }

    @Override
    public String wayPhotograph() {
        return "사진 찍기";
    }

    @Override
    public String wayPhotographHow() {
        return "종이 한 장 옆에 펼쳐 놓고";
    }

    @Override
    public String waySay() {
        return "천 하나 말하기";
    }

    @Override
    public String waySayHow() {
        return "“초록 무늬 12장, 10×20”. 여러 줄을 한꺼번에 넣어도 됩니다";
    }
}
