package hearthcloth.words.entering;

/** The room of entering in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanEntering implements EnteringWords {

    @Override
    public String awayAgain() {
        return "화면 다시 열기";
    }

    @Override
    public String awayAnew() {
        return "새로 쓰기";
    }

    @Override
    public String awayAnewHow() {
        return "파일을 있던 곳에 되돌려 놓거나, 마지막으로 바꾼 상태의 작업 전체를 거기에 새로 쓰게 하세요.";
    }

    @Override
    public String awayHeading() {
        return "작업에 닿을 수 없습니다";
    }

    @Override
    public String awaySend() {
        return "다시 보내기";
    }

    @Override
    public String awayTitle() {
        return "닿지 않음";
    }

    @Override
    public String awayWrote() {
        return "적은 것은 이 화면에 남아 있습니다:";
    }

    @Override
    public String bothAgain() {
        return "그래도 하기";
    }

    @Override
    public String bothLook() {
        return "보고 그대로 두기";
    }

    @Override
    public String bothNow() {
        return "지금 상태";
    }

    @Override
    public String bothWrote() {
        return "적은 것";
    }

    @Override
    public String closeClosed() {
        return "작업실을 닫았습니다. 작업은 저장되어 있습니다. 이 화면도 닫아도 됩니다.";
    }

    @Override
    public String closeElsewhere() {
        return "작업실은 다른 기기에서 돌아갑니다. 거기서 닫습니다.";
    }

    @Override
    public String closeKept() {
        return "바꿀 때마다 저장됩니다. 닫아도 잃는 것이 없습니다.";
    }

    @Override
    public String closeOpen() {
        return "오늘처럼 메뉴나 명령으로 다시 여세요.";
    }

    @Override
    public String closeOthers() {
        return "이 작업실을 쓰는 전화기와 태블릿은 다시 열 때까지 쓸 수 없습니다.";
    }

    @Override
    public String closeTitle() {
        return "작업실 닫기";
    }

    @Override
    public String copiesAlone() {
        return "내 것만 완성 화면에서 파일 하나로 꺼낼 수 있습니다.";
    }

    @Override
    public String copiesAnew() {
        return "작업이 마지막으로 바꾼 상태로 제자리에 돌아왔습니다.";
    }

    @Override
    public String copiesBack() {
        return "되돌리기";
    }

    @Override
    public String copiesBackAbout(String made) {
        return made + " 사본으로 되돌리기";
    }

    @Override
    public String copiesBackAsk(String made) {
        return made + "의 상태로 돌아갈까요? 지금 것을 먼저 복사합니다.";
    }

    @Override
    public String copiesIsBack(String made) {
        return "작업이 " + made + "의 상태입니다. 그전의 것은 이 목록의 가장 새 사본입니다.";
    }

    @Override
    public String copiesIsMade(String size) {
        return "복사했습니다: " + size + ".";
    }

    @Override
    public String copiesKeeper() {
        return "공방에서는 관리하는 사람이 데이터베이스 전체를 복사합니다.";
    }

    @Override
    public String copiesLead() {
        return "하나하나가 그때의 작업 전체입니다. 되돌리기 전에 지금 것을 먼저 복사하므로 해 보아도 잃는 것이 없습니다.";
    }

    @Override
    public String copiesLie(String folder) {
        return "사본이 있는 곳: " + folder + ". 가끔 이 폴더를 다른 디스크에 옮겨 두세요. 디스크가 고장 나면 곁에 있는 사본은 소용없습니다.";
    }

    @Override
    public String copiesMade() {
        return "만든 때";
    }

    @Override
    public String copiesNone() {
        return "아직 없습니다. 날마다 처음 열 때 하나를 만듭니다.";
    }

    @Override
    public String copiesNow() {
        return "지금 사본 만들기";
    }

    @Override
    public String copiesReason(String reason) {
        return (reason.equals("DAILY") ? "그날 처음 열 때" : reason.equals("UPDATE") ? "새 Hearthcloth로 옮기기 전" : reason.equals("RESTORE") ? "예전 사본으로 되돌리기 전" : "직접 만듦");
    }

    @Override
    public String copiesSize() {
        return "크기";
    }

    @Override
    public String copiesStudio() {
        return "작업은 공방의 데이터베이스에 있습니다. 관리하는 사람이 전체를 복사합니다. 예전 상태는 거기에 물어보세요.";
    }

    @Override
    public String copiesTime(String day, String month, String time, String year) {
        return year + "년 " + (month.equals("m1") ? "1" : month.equals("m2") ? "2" : month.equals("m3") ? "3" : month.equals("m4") ? "4" : month.equals("m5") ? "5" : month.equals("m6") ? "6" : month.equals("m7") ? "7" : month.equals("m8") ? "8" : month.equals("m9") ? "9" : month.equals("m10") ? "10" : month.equals("m11") ? "11" : "12") + "월 " + day + "일 " + time;
    }

    @Override
    public String copiesTitle() {
        return "안전 사본";
    }

    @Override
    public String copiesTo() {
        return "완성으로";
    }

    @Override
    public String copiesWhy() {
        return "까닭";
    }

    @Override
    public String copiesWrongClock(String made) {
        return made + "(그때나 지금의 시계가 틀림)";
    }

    @Override
    public String devicesAsks(String address, String mark, String name) {
        return "표시 " + mark + "의 기기가 들어오려고 합니다: " + name + ", " + address + ". 내 기기에 이 표시가 보일 때만 들이세요.";
    }

    @Override
    public String devicesAtMachine() {
        return "기기는 작업실이 있는 기기에서 들이고 내보냅니다.";
    }

    @Override
    public String devicesCode() {
        return "코드:";
    }

    @Override
    public String devicesComes(String yes) {
        return (yes.equals("yes") ? "몇 초 안에 들어옵니다." : "그 기기는 들이지 않습니다.");
    }

    @Override
    public String devicesHere() {
        return "작업실은 이 기기에서만 열립니다.";
    }

    @Override
    public String devicesInside() {
        return "들어와 있는 기기";
    }

    @Override
    public String devicesIsOut() {
        return "그 기기를 내보냈습니다.";
    }

    @Override
    public String devicesKeepOut(String mark) {
        return mark + " 들이지 않기";
    }

    @Override
    public String devicesLet() {
        return "들이기";
    }

    @Override
    public String devicesLetAbout(String mark) {
        return mark + " 들이기";
    }

    @Override
    public String devicesNo() {
        return "아니요";
    }

    @Override
    public String devicesNone() {
        return "없습니다.";
    }

    @Override
    public String devicesNotShared() {
        return "이 작업실은 함께 쓰지 않습니다. 다른 기기에서 쓰려면 --lan을 붙여 시작하세요.";
    }

    @Override
    public String devicesOnce() {
        return "10분 안에 기기 하나를 한 번 들입니다. 믿는 네트워크에서만 쓰세요. 오가는 것을 다른 사람이 읽을 수 있습니다.";
    }

    @Override
    public String devicesOut() {
        return "내보내기";
    }

    @Override
    public String devicesOutAbout(String name) {
        return name + " 내보내기";
    }

    @Override
    public String devicesPhotograph() {
        return "자투리 사진 찍기";
    }

    @Override
    public String devicesPicture() {
        return "주소와 코드가 든 QR 코드";
    }

    @Override
    public String devicesPoint() {
        return "다른 기기의 카메라를 그림에 대거나, 거기서 주소를 열고 코드를 적으세요.";
    }

    @Override
    public String devicesSew() {
        return "바느질하기";
    }

    @Override
    public String devicesSince(String name, String since) {
        return name + ", " + since + "부터";
    }

    @Override
    public String devicesStart() {
        return "같은 네트워크의 전화기나 태블릿에서 쓰려면, 닫고 이 말을 붙여 다시 시작하세요:";
    }

    @Override
    public String devicesTitle() {
        return "다른 기기에서";
    }

    @Override
    public String devicesTooMany() {
        return "지금 들어오려는 기기가 너무 많습니다. 나중에 다시 하세요.";
    }

    @Override
    public String devicesTrust() {
        return "믿는 네트워크에서만 하세요. 오가는 것을 같은 네트워크의 다른 사람이 읽을 수 있습니다.";
    }

    @Override
    public String devicesWait() {
        return "틀린 코드가 너무 많습니다. 10분 기다리거나, 들어가기를 청하고 다른 화면에서 들이세요.";
    }

    @Override
    public String devicesWrongCode() {
        return "코드가 틀리거나 더는 쓸 수 없습니다. 다른 화면에서 지금 코드를 보세요.";
    }

    @Override
    public String doorBefore() {
        return "들어오기 전에 읽을 수 있는 것보다 큽니다.";
    }

    @Override
    public String doorBusy() {
        return "작업실이 다른 큰 파일로 바쁩니다. 바뀐 것이 없습니다. 다시 보내세요.";
    }

    @Override
    public String doorCharset() {
        return "보낸 것의 글자를 여기서 알 수 없습니다.";
    }

    @Override
    public String doorClosing() {
        return "작업실을 닫는 중입니다.";
    }

    @Override
    public String doorEarlier() {
        return "작업실을 다시 시작하기 전의 화면입니다. 다시 불러오세요.";
    }

    @Override
    public String doorLarge(String most) {
        return most + " MB보다 큽니다. 나누어 보내세요.";
    }

    @Override
    public String doorLargePhotograph() {
        return "사진이 80 MB보다 큽니다. 전화기로 찍은 그대로나 더 작은 것을 보내세요.";
    }

    @Override
    public String doorLetters() {
        return "글자가 아닌 것이 들어 있습니다. 다시 적으세요.";
    }

    @Override
    public String doorNotIn() {
        return "이 기기는 들이지 않았거나 더는 들어와 있지 않습니다. /join을 열고 코드를 적으세요.";
    }

    @Override
    public String doorNotOurs() {
        return "이 변경은 작업실의 화면에서 오지 않았습니다.";
    }

    @Override
    public String doorOwnAddress() {
        return "이 작업실은 이 기기의 제 주소로만 열립니다.";
    }

    @Override
    public String enterAtMachine() {
        return "공방은 작업실이 돌아가는 기기에서 시작합니다. 먼저 거기서 들어가세요.";
    }

    @Override
    public String enterBegin() {
        return "시작";
    }

    @Override
    public String enterBusy() {
        return "이 기기에서 누군가 들어오는 중입니다. 몇 초 뒤에 다시 하세요.";
    }

    @Override
    public String enterFirst() {
        return "아직 이 공방에 아무도 없습니다. 먼저 들어온 사람이 선생님이 되어 다른 사람을 들입니다.";
    }

    @Override
    public String enterForgotten() {
        return "암호 문구를 잊었나요? 선생님이 새로 정해 줍니다.";
    }

    @Override
    public String enterIn() {
        return "들어가기";
    }

    @Override
    public String enterLeft() {
        return "나갔습니다. 이제 여기서 아무도 볼 수 없습니다.";
    }

    @Override
    public String enterLong() {
        return "12자 이상. 서로 상관없는 낱말 서너 개가 좋습니다. 아무도 대신 찾아 줄 수 없습니다.";
    }

    @Override
    public String enterName() {
        return "이름";
    }

    @Override
    public String enterOwn() {
        return "여기서 천과 보자기는 나만 봅니다.";
    }

    @Override
    public String enterPassphrase() {
        return "암호 문구";
    }

    @Override
    public String enterTitle(String first) {
        return (first.equals("yes") ? "공방 시작하기" : "들어가기");
    }

    @Override
    public String enterWrong() {
        return "이름이나 암호 문구가 틀립니다. 다시 하세요.";
    }

    @Override
    public String joinAsk() {
        return "들어가기 청하기";
    }

    @Override
    public String joinAsks() {
        return "이 기기가 들어가기를 청했습니다. 표시:";
    }

    @Override
    public String joinCode() {
        return "다른 화면의 코드";
    }

    @Override
    public String joinHeading() {
        return "작업실로 들어가기";
    }

    @Override
    public String joinLook() {
        return "작업실 기기의 서랍 → 다른 기기에서 화면에서 이 표시를 찾아 들이세요. 이 화면은 저절로 넘어갑니다.";
    }

    @Override
    public String joinName() {
        return "이 기기의 이름";
    }

    @Override
    public String joinNoCode() {
        return "코드가 없나요? 들어가기를 청하고 작업실 기기에서 들이세요.";
    }

    @Override
    public String joinTablet() {
        return "내 태블릿";
    }

    @Override
    public String joinTitle() {
        return "들어가기";
    }

    @Override
    public String peopleAs() {
        return "역할";
    }

    @Override
    public String peopleBring() {
        return "사람 들이기";
    }

    @Override
    public String peopleBringIn() {
        return "들이기";
    }

    @Override
    public String peopleCanCome(String name) {
        return "이제 " + name + " 님이 들어올 수 있습니다. 암호 문구를 알려 주세요. 여기서 바꿀 수 있습니다.";
    }

    @Override
    public String peopleChange() {
        return "바꾸기";
    }

    @Override
    public String peopleChanged() {
        return "암호 문구를 바꾸었습니다. 다른 기기에서는 다시 들어가세요.";
    }

    @Override
    public String peopleCurrent() {
        return "지금 암호 문구";
    }

    @Override
    public String peopleFirstPassphrase() {
        return "첫 암호 문구";
    }

    @Override
    public String peopleGive() {
        return "정하기";
    }

    @Override
    public String peopleHasNew(String name) {
        return name + " 님의 암호 문구를 새로 정했습니다. 알려 주세요. 여기서 바꿀 수 있습니다.";
    }

    @Override
    public String peopleNew() {
        return "새 암호 문구";
    }

    @Override
    public String peopleNewFor(String name) {
        return name + "의 새 암호 문구";
    }

    @Override
    public String peopleNewPassphrase() {
        return "새 암호 문구";
    }

    @Override
    public String peopleNobody() {
        return "이 번호의 사람이 없습니다.";
    }

    @Override
    public String peopleNotYours() {
        return "암호 문구가 다릅니다. 바뀐 것이 없습니다.";
    }

    @Override
    public String peoplePart(String part) {
        return (part.equals("teacher") ? "선생님" : "만드는 사람");
    }

    @Override
    public String peopleTeacherOnly() {
        return "선생님만 할 수 있습니다.";
    }

    @Override
    public String peopleTitle() {
        return "이 공방의 사람";
    }

    @Override
    public String peopleYours() {
        return "내 암호 문구";
    }

    @Override
    public String troubleBack() {
        return "있던 곳으로 돌아가기";
    }
}
