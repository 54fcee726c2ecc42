package hearthcloth.words.storing;

import hearthcloth.words.korean.Particles;

/** The room of storing in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanStoring implements StoringWords {

    @Override
    public String again() {
        return "바뀐 것은 없습니다. 다시 해 보세요.";
    }

    @Override
    public String archive(String why) {
        return (why.equals("DAMAGED") ? "보관 파일이 손상되었습니다. 아무것도 넣지 않았습니다." : why.equals("LARGE") ? "보관 파일에 작업방이 담을 수 있는 것보다 많이 들어 있습니다. 아무것도 넣지 않았습니다." : why.equals("NONE") ? "Hearthcloth의 보관 파일이 아닙니다." : why.equals("NEWER") ? "더 새로운 Hearthcloth의 보관 파일입니다. 아무것도 넣지 않았습니다." : why.equals("PIECES") ? "보관 파일의 천이 너무 많습니다. 아무것도 넣지 않았습니다." : why.equals("CHOOSE") ? "먼저 보관 파일을 고르세요." : why.equals("WHOLE") ? "파일이 온전히 오지 않았습니다. 다시 해 보세요." : why.equals("BUSY") ? "다른 보관 파일을 넣는 중입니다. 잠시 뒤 다시 해 보세요." : why.equals("MEMORY") ? "보관 파일이 이 기기의 메모리에 너무 큽니다. 아무것도 넣지 않았습니다." : "보관 파일을 쓸 수 없었습니다.");
    }

    @Override
    public String archiveIn() {
        return "보관 파일을 넣음";
    }

    @Override
    public String archiveLacks(String name) {
        return Particles.fitted("Hearthcloth의 온전한 보관 파일이 아닙니다. " + name + "이(가) 없습니다.");
    }

    @Override
    public String archivePass(String most) {
        return "이것까지 넣으면 천이 " + most + "장을 넘습니다. 아무것도 넣지 않았습니다.";
    }

    @Override
    public String changed(String name, String what) {
        return Particles.fitted((what.equals("CLOTH") ? "그 사이 이 보자기가 다른 창에서 바뀌었습니다. 바뀐 것은 없으니 다시 보세요." : what.equals("PHOTO") ? "그 사이 이 사진이 다른 창에서 바뀌었습니다. 바뀐 것은 없으니 다시 보세요." : "그 사이 " + name + "이(가) 바뀌었거나 쓰였습니다. 바뀐 것은 없으니 다시 보세요."));
    }

    @Override
    public String copy(String path, String why) {
        return Particles.fitted((why.equals("FOLDER") ? "안전 사본 폴더 " + path + "을(를) 읽을 수 없습니다." : why.equals("MAKE") ? "" + path + "에 안전 사본을 만들 수 없었습니다." : why.equals("FULL") ? "폴더에 쓸 수 없거나 디스크가 찼습니다." : why.equals("BACK") ? "사본을 되돌려 놓을 수 없었습니다. 작업방은 그대로입니다." : why.equals("DAMAGED") ? "사본 " + path + "이(가) 손상되었거나 읽을 수 없습니다. 바뀐 것은 없으니 다른 것을 고르세요." : "사본을 되돌려 놓을 수 없었습니다. " + path + "의 폴더에 쓸 수 없습니다."));
    }

    @Override
    public String copyWhole() {
        return "사본이 온전하지 않았습니다.";
    }

    @Override
    public String example() {
        return "이 프로그램에 보기가 들어 있지 않습니다. Hearthcloth를 다시 만드세요.";
    }

    @Override
    public String gone(String what) {
        return (what.equals("CLOTH") ? "이 보자기는 다른 창에서 지워졌습니다." : what.equals("PHOTO") ? "이 사진은 다른 창에서 지워졌습니다." : "그 사본은 더 없습니다. 바뀐 것은 없습니다.");
    }

    @Override
    public String journal() {
        return "한 일의 기록을 읽을 수 없습니다.";
    }

    @Override
    public String lacking() {
        return "이 보자기에 쓸 천이 모자랍니다. 먼저 고치세요.";
    }

    @Override
    public String misfit() {
        return "이 변경의 기록이 저장된 것과 맞지 않습니다. 바뀐 것은 없습니다.";
    }

    @Override
    public String misfitAt(String what) {
        return "\"" + what + "\"에서 한 일의 기록이 저장된 것과 맞지 않습니다. 고칠 때까지 이 파일은 바꾸지 않습니다. 모두 보거나, 보관 파일로 꺼내거나, 안전 사본을 되돌려 놓으세요.";
    }

    @Override
    public String missing(String name, String path) {
        return path + "에 안전 사본" + (name.equals("last") ? "이" : " \"" + name + "\"이") + " 없습니다. 바뀐 것은 없습니다.";
    }

    @Override
    public String openAlready(String address) {
        return (address.equals("none") ? "작업실이 이미 열려 있습니다" : "작업실이 이미 열려 있습니다: " + address);
    }

    @Override
    public String openAt(String address) {
        return "작업실을 열었습니다: " + address;
    }

    @Override
    public String openCamera(String address) {
        return "전화기에서 10분 안에 이것을 열면 바로 카메라로 갑니다: " + address;
    }

    @Override
    public String openClose(String address) {
        return (address.equals("none") ? "작업실이 이미 열려 있습니다. 먼저 닫고 다시 하세요." : "작업실이 이미 열려 있습니다(" + address + "). 먼저 닫고 다시 하세요.");
    }

    @Override
    public String openCode(String code) {
        return "거기에 입력할 코드: " + code;
    }

    @Override
    public String openFolder(String file) {
        return file + " 파일의 폴더를 만들 수 없습니다. --data로 다른 파일을 고르세요.";
    }

    @Override
    public String openKept(String file) {
        return "작업은 " + file + "에 저장됩니다. 닫으려면 Ctrl-C를 누르세요.";
    }

    @Override
    public String openLan(String address) {
        return "이 네트워크의 다른 기기는 여기로 들어옵니다: " + address;
    }

    @Override
    public String openRestoreStudio() {
        return "공방의 데이터베이스는 관리하는 사람이 복원합니다. 방법은 docs/studio.md에 있습니다.";
    }

    @Override
    public String openRestored(String made) {
        return "되돌려 놓은 안전 사본: " + made;
    }

    @Override
    public String openStudio(String address) {
        return "공방의 작업은 " + address + "에 저장됩니다. 닫으려면 Ctrl-C를 누르세요.";
    }

    @Override
    public String openedDamaged(String copy, String name) {
        return Particles.fitted((copy.equals("none") ? "파일 " + name + "이(가) 손상되어 그대로 둡니다. 아직 안전 사본이 없습니다. 꺼내 둔 보관 파일은 새 파일에 들여올 수 있습니다." : "파일 " + name + "이(가) 손상되어 그대로 둡니다. 마지막 안전 사본은 " + copy + " 것입니다. \"--restore last\"로 시작하면 제자리에 놓입니다. 손상된 파일은 곁에 남습니다."));
    }

    @Override
    public String openedFile(String name, String why) {
        return Particles.fitted((why.equals("FOLDER") ? "" + name + "은(는) 폴더입니다. 그대로 둡니다. --data로 다른 것을 고르세요." : why.equals("UNREAD") ? "파일 " + name + "을(를) 읽을 수 없습니다. 그대로 둡니다. --data로 다른 것을 고르세요." : why.equals("FOREIGN") ? "파일 " + name + "은(는) 다른 프로그램의 것입니다. 그대로 둡니다. --data로 다른 것을 고르세요." : why.equals("NEWER") ? "파일 " + name + "은(는) 더 새로운 Hearthcloth가 쓴 것이어서 그것으로 열립니다. 그대로 둡니다. --data로 다른 것을 고르세요." : "파일 " + name + "은(는) 그대로 둡니다. --data로 다른 것을 고르세요."));
    }

    @Override
    public String openedGone(String copy, String path) {
        return (copy.equals("none") ? "작업이 " + path + "에 있었는데 이제 없습니다. 파일을 되돌려 놓거나 --new로 그곳에 빈 작업실을 시작하세요." : "작업이 " + path + "에 있었는데 이제 없습니다. 파일을 되돌려 놓거나, \"--restore last\"로 시작해 " + copy + "의 안전 사본을 쓰거나, --new로 그곳에 빈 작업실을 시작하세요.");
    }

    @Override
    public String openedOlder(String name, String why) {
        return Particles.fitted("파일 " + name + "은(는) 이전 Hearthcloth의 것이어서 새로 고쳐야 하지만 그러지 못했습니다. " + why + " 그대로 둡니다.");
    }

    @Override
    public String person(String most, String why) {
        return (why.equals("BEGUN") ? "방금 누가 이 공방을 시작했습니다. 들여 달라고 하세요." : why.equals("NAME") ? "이름을 " + most + "자까지 적으세요." : why.equals("PASSPHRASE") ? "암호 문구는 " + most + "자가 넘고 이름이 들어 있지 않아야 합니다. 서로 상관없는 낱말 서넛이면 좋습니다." : why.equals("TAKEN") ? "같은 이름이 이미 있습니다. 둘째 이름을 더하세요." : why.equals("WRONG") ? "이 이름에 틀린 암호 문구가 너무 많았습니다. 1분 뒤 다시 해 보세요." : why.equals("BUSY") ? "지금 여럿이 들어오고 있습니다. 몇 초 뒤 다시 해 보세요." : "본보기는 가르치는 사람만 나누어 주고 거둡니다.");
    }

    @Override
    public String photoUnread() {
        return "이 사진에서 읽은 것을 더 읽을 수 없습니다.";
    }

    @Override
    public String photosFull() {
        return "시작한 사진으로 자리가 찼습니다. 그 천을 넣거나 하나를 치우고 다시 보내세요.";
    }

    @Override
    public String piece(String fabric, String piece) {
        return fabric + "의 천 " + piece;
    }

    @Override
    public String placeArriving(String path) {
        return path + "에 받은 파일을 둘 폴더를 만들 수 없습니다.";
    }

    @Override
    public String placeNoPort(String port) {
        return port + "부터 비어 있는 포트가 없습니다. --port로 다른 것을 고르세요.";
    }

    @Override
    public String proxy() {
        return "프록시 주소를 읽을 수 없습니다. https://studio.example처럼 쓰세요.";
    }

    @Override
    public String record(String what, String why) {
        return (what.equals("none") ? "이 변경" : "\"" + what + "\"") + "의 기록을 읽을 수 없습니다" + (why.equals("none") ? "." : ": " + why + ".");
    }

    @Override
    public String studio(String address, String why) {
        return (why.equals("OPEN") ? "" + address + "의 공방을 열 수 없습니다. 돌고 있는지 보고 --data를 확인하세요." : why.equals("NEWER") ? "더 새로운 Hearthcloth의 공방입니다. 그대로 두었습니다. 이것을 새것으로 바꾸세요." : why.equals("LEFT") ? "공방은 그대로 두었습니다." : "공방의 주소를 읽을 수 없습니다. postgresql://NAME@HOST/DATABASE로 적고, 암호의 @나 / 같은 글자는 %40이나 %2F로 적으세요.");
    }

    @Override
    public String teacher() {
        return "가르치는 사람만 할 수 있습니다.";
    }

    @Override
    public String trouble(String why) {
        return (why.equals("QUICKER") ? "다른 창이 같은 번호로 먼저 했습니다." : why.equals("SILENT") ? "공방의 데이터베이스가 대답하지 않습니다." : why.equals("HELD") ? "다른 프로그램이 파일을 너무 오래 잡고 있습니다." : why.equals("UNWRITABLE") ? "파일이나 그 폴더에 쓸 수 없습니다." : why.equals("DISK") ? "디스크가 제대로 읽거나 쓰지 못했습니다." : why.equals("DAMAGED") ? "파일이 손상되었습니다." : why.equals("FULL") ? "디스크가 찼습니다." : why.equals("UNOPENED") ? "파일을 열거나 만들 수 없습니다." : why.equals("FOREIGN") ? "Hearthcloth가 쓴 파일이 아닙니다." : why.equals("REFUSED") ? "공방의 데이터베이스가 이 이름이나 암호를 받지 않습니다." : why.equals("WORK") ? "다른 작업방이 이 작업을 너무 오래 잡고 있습니다." : why.equals("NONE") ? "그런 이름의 데이터베이스가 없습니다." : why.equals("STUDIO_FULL") ? "공방 데이터베이스의 디스크가 찼습니다." : why.equals("STUDIO_BUSY") ? "공방의 데이터베이스가 바쁩니다." : why.equals("STUDIO_UNWRITABLE") ? "이 이름으로는 공방의 데이터베이스에 쓸 수 없습니다." : why.equals("STUDIO") ? "공방의 데이터베이스가 제대로 움직이지 않습니다." : "파일이 제대로 움직이지 않습니다.");
    }

    @Override
    public String troubleGone(String path) {
        return Particles.fitted("작업이 제자리에 없습니다. " + path + "이(가) 옮겨졌거나 지워졌습니다. 바뀐 것은 없습니다.");
    }

    @Override
    public String work(String path, String why) {
        return (why.equals("OPEN") ? "작업방을 열 수 없습니다." : why.equals("PLACE") ? "작업은 제자리에 있습니다. 바뀐 것은 없습니다." : why.equals("OTHER") ? "지금 " + path + "에 다른 파일이 있습니다. 먼저 옮기세요. 바뀐 것은 없습니다." : "작업을 " + path + "에 쓸 수 없었습니다.");
    }
}
