package hearthcloth.words.refusing;

import hearthcloth.words.korean.Particles;

/** The room of refusing in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanRefusing implements RefusingWords {

    @Override
    public String fileAfterQuote(String text) {
        return "닫는 따옴표 뒤에 글이 있습니다: " + text + ". 글에 든 따옴표는 \"6 1/2\"\" wide\"처럼 두 번 적으세요";
    }

    @Override
    public String fileAt(String column, String line, String what) {
        return (column.equals("none") ? "" + line + "번째 줄: " + what : "" + line + "번째 줄, " + column + ": " + what);
    }

    @Override
    public String fileCells(String cells, String columns) {
        return "칸은 " + cells + "개인데 열은 " + columns + "개입니다. 쉼표가 든 칸은 \"16,5 cm\"처럼 따옴표 \"로 묶으세요";
    }

    @Override
    public String fileChoice(String one, String other, String text) {
        return Particles.fitted(text + "은(는) 여기서 뜻이 없습니다. " + one + "이나 " + other + "를 적거나 비워 두세요");
    }

    @Override
    public String fileColour(String text) {
        return Particles.fitted(text + "은(는) 색이 아닙니다. #8a9a5b나 dark green 같은 이름을 적거나 비워 두세요");
    }

    @Override
    public String fileCount(String most, String text) {
        return Particles.fitted(text + "은(는) 장수가 아닙니다. 1부터 " + most + "까지의 정수를 적거나, 한 장이면 비워 두세요");
    }

    @Override
    public String fileDisagree(String before, String name, String now, String was) {
        return Particles.fitted(name + "은(는) 여기서 " + now + ", " + before + "번째 줄에서 " + was + "입니다. 천은 둘 중 하나이니 한 줄을 고치거나 다른 이름을 주세요");
    }

    @Override
    public String fileEmpty() {
        return "천 목록 파일이 비어 있습니다. 첫 줄에 열 이름 fabric,width,length를 적고 다음 줄부터 천을 한 장씩 적으세요";
    }

    @Override
    public String fileLongName(String letters, String most, String name) {
        return Particles.fitted(name + "은(는) " + letters + "자입니다. 이름표에는 " + most + "자까지 들어갑니다. 줄이고 나머지는 note에 적으세요");
    }

    @Override
    public String fileMore(String more) {
        return "그 밖에 " + more + "건";
    }

    @Override
    public String fileMost(String metres, String text) {
        return Particles.fitted(text + "은(는) 천 한 장으로 받는 " + metres + " m를 넘습니다. 수와 단위를 확인하세요");
    }

    @Override
    public String fileNoColumn(String header) {
        return "이 이름의 열이 없습니다. 첫 줄에 fabric, width, length 열이 있어야 합니다(지금은 " + header + ")";
    }

    @Override
    public String fileNoName() {
        return "천에 이름이 없습니다. 부르는 이름을 적으세요";
    }

    @Override
    public String fileNoPieces() {
        return "열 이름만 있고 천이 없습니다. 천마다 한 줄을 적으세요";
    }

    @Override
    public String fileNoUnit(int more) {
        return "크기에 단위가 없습니다" + (more == 0 ? "" : "(다른 " + more + "줄도)") + ". 수 뒤에 in, cm, mm를 적거나 unit 열을 넣거나, --unit in이나 --unit cm를 쓰세요";
    }

    @Override
    public String fileNothing(String text) {
        return text + ": 크기가 0입니다. 0보다 큰 크기를 적거나 줄을 지우세요";
    }

    @Override
    public String fileQuoteOpen() {
        return "여기서 열린 따옴표 \"가 닫히지 않습니다. 닫거나 지우세요";
    }

    @Override
    public String fileTooMany(String most) {
        return "여기서 천이 " + most + "장을 넘습니다. 장수를 확인하거나 일부를 빼세요";
    }

    @Override
    public String fileTwice() {
        return "이 이름의 열이 둘입니다. 하나의 이름을 바꾸거나 지우세요";
    }

    @Override
    public String fileTwoColours(String before, String line, String name, String now, String side, String was) {
        return Particles.fitted(line + "번째 줄: " + name + (side.equals("wrong") ? "의 안" : "") + "은(는) 여기서 " + now + ", " + before + "번째 줄에서 " + was + "입니다. 먼저 것을 씁니다");
    }

    @Override
    public String fileUnit(String text) {
        return Particles.fitted(text + "은(는) 단위가 아닙니다. in, cm, mm, m, ft, yd 가운데 하나를 적으세요");
    }

    @Override
    public String giftBook() {
        return "책 한 권은 상자처럼 쌉니다. \"box\"와 크기 셋을 적거나, 같은 책 두 권이면 \"books\"를 적으세요";
    }

    @Override
    public String giftBottle() {
        return "병의 주둥이는 몸보다 넓지 않고 어깨는 주둥이보다 높지 않습니다. 병의 크기를 확인하세요";
    }

    @Override
    public String giftCount(String count, String rule, String text) {
        return "\"" + text + "\"에 크기가 " + count + "개 있습니다. " + rule;
    }

    @Override
    public String giftKinds() {
        return "종류와 크기를 적으세요. 예: \"box 30 x 20 x 8 cm\", \"bottle 8 x 30 cm\", \"two bottles 8 x 30 cm\", \"ball 22 cm\", \"books 21 x 15 x 2 cm\", \"roll 6 x 40 cm\"";
    }

    @Override
    public String giftLarge(String size) {
        return Particles.fitted(size + "은(는) 2미터를 넘어 보자기 하나로 쌀 수 없습니다. 수와 단위를 확인하세요");
    }

    @Override
    public String giftLong(String kinds, String text) {
        return Particles.fitted("\"" + text + "…\"은(는) 선물로 너무 깁니다. " + kinds);
    }

    @Override
    public String giftNone(String kinds) {
        return "선물이 적혀 있지 않습니다. " + kinds;
    }

    @Override
    public String giftRule(String kind) {
        return (kind.equals("BOX") ? "상자는 크기가 셋입니다: 길이 x 너비 x 높이" : kind.equals("CUBE") ? "정육면체는 크기가 하나입니다" : kind.equals("BOTTLE") ? "병은 크기가 둘입니다: 지름 x 높이" : kind.equals("BOTTLES") ? "같은 병 둘은 크기가 둘입니다: 지름 x 높이" : kind.equals("BALL") ? "둥근 것은 크기가 하나, 지름입니다" : kind.equals("BOOKS") ? "같은 책 두 권은 한 권의 크기 셋입니다: 높이 x 너비 x 두께" : "두루마리는 크기가 둘입니다: 지름 x 길이");
    }

    @Override
    public String giftSmall() {
        return "1센티미터보다 짧은 선물은 쌀 수 없습니다. 수와 단위를 확인하세요";
    }

    @Override
    public String giftUnmeasured(String rule, String text) {
        return "\"" + text + "\"에 크기가 없습니다. " + rule;
    }

    @Override
    public String giftWhat(String kinds, String text) {
        return "\"" + text + "\"만으로는 무슨 선물인지 알 수 없습니다. " + kinds;
    }

    @Override
    public String giftWord(String kinds, String text, String word) {
        return Particles.fitted("\"" + text + "\": \"" + word + "\"을(를) 알 수 없습니다. " + kinds);
    }

    @Override
    public String giftZero() {
        return "선물의 크기는 모두 0보다 큽니다. 빠진 것을 적으세요";
    }

    @Override
    public String givenCsv(String name, String such) {
        return name + ": 폴더입니다. 그 안의 CSV 파일을 적으세요. 예: " + such;
    }

    @Override
    public String givenEmpty(String name) {
        return name + ": 비어 있습니다. 첫 줄에는 fabric,width,length 열 이름을, 그다음 줄마다 천 한 장을 적습니다.";
    }

    @Override
    public String givenGone(String name, String place) {
        return name + " 파일이 없습니다. 이름과 지금 있는 곳(" + place + ")을 확인하세요.";
    }

    @Override
    public String givenInput() {
        return "표준 입력";
    }

    @Override
    public String givenLarge(String most, String name) {
        return name + ": " + most + " MB가 넘습니다. 천 목록에는 너무 큽니다. 가진 천을 적은 파일을 주세요.";
    }

    @Override
    public String givenNoText(String line, String name, String why) {
        return (why.equals("ARCHIVE") ? "" + name + ": 텍스트가 아니라 통합 문서나 압축 파일입니다. 표를 CSV(UTF-8)로 저장해서 그 파일을 주세요." : why.equals("UTF16") ? "" + name + ": UTF-16 텍스트입니다. 표를 CSV(UTF-8)로 저장해서 그 파일을 주세요." : why.equals("BYTE") ? "" + name + ": 텍스트가 아닙니다(" + line + "번째 줄에 글자가 아닌 바이트가 있습니다). 표를 CSV(UTF-8)로 저장해서 그 파일을 주세요." : "" + name + ": UTF-8이 아닙니다(" + line + "번째 줄에 다른 인코딩의 글자가 있습니다). 표를 CSV(UTF-8)로 저장해서 그 파일을 주세요.");
    }

    @Override
    public String givenNot(String name, String why) {
        return (why.equals("NAME") ? "\"" + name + "\"(은)는 파일 이름이 아닙니다. 어떻게 썼는지 확인하세요." : why.equals("LOCKED") ? "" + name + " 파일을 읽을 권한이 없습니다. 권한을 바꾸거나 파일을 복사하세요." : "" + name + " 파일을 끝까지 읽지 못했습니다. 디스크를 확인하고 다시 해 보세요.");
    }

    @Override
    public String givenPhoto(String name) {
        return name + ": 폴더입니다. 그 안의 사진을 적으세요.";
    }

    @Override
    public String givenPhotoEmpty(String name) {
        return name + ": 비어 있습니다. 카메라나 전화기로 찍은 그대로의 사진을 주세요.";
    }

    @Override
    public String heapLine(String line, String what) {
        return line + "번째 줄: " + what + ".";
    }

    @Override
    public String heapMany(String most, String pieces) {
        return "천이 " + pieces + "장입니다. 이 화면은 " + most + "장까지 계획합니다. 일부를 빼세요.";
    }

    @Override
    public String listAt(String line, String list, String what) {
        return list + ", " + line + "번째 줄, " + what;
    }

    @Override
    public String listColumn(String names, String text) {
        return "\"" + text + "\"이라는 바람은 없습니다. 있는 것: " + names + ".";
    }

    @Override
    public String listExtent() {
        return "크기가 없습니다. 16 in 같은 크기나 선물을 적으세요";
    }

    @Override
    public String listFile(String list, String what) {
        return list + ", " + what + ".";
    }

    @Override
    public String listMissing() {
        return "name: 이름이 없습니다. 누구의 보자기인지 적으세요.";
    }

    @Override
    public String listMost(String list, String most) {
        return list + "에 보자기가 " + most + "개를 넘습니다. 나누세요.";
    }

    @Override
    public String listNoName() {
        return "name이라는 열이 없습니다. 첫 줄에 name,size,gift 같은 열 이름을 적으세요.";
    }

    @Override
    public String listNone(String list) {
        return list + "에 보자기가 없습니다. 첫 줄에 name,size,gift 같은 열 이름을, 다음 줄부터 보자기를 한 줄씩 적으세요.";
    }

    @Override
    public String listSame(String text) {
        return "name: \"" + text + "\"이라는 보자기가 또 있습니다. 다르게 적으세요.";
    }

    @Override
    public String listTwice(String text) {
        return text + ": 이 이름의 열이 둘입니다. 하나를 지우세요.";
    }

    @Override
    public String listUnder(String text) {
        return "\"" + text + "\"에 맞는 열이 없습니다. 쉼표가 든 것은 따옴표로 묶으세요.";
    }

    @Override
    public String listWhole(String line, String list, String what) {
        return list + ", " + line + "번째 줄: " + what;
    }

    @Override
    public String listYes(String text) {
        return Particles.fitted("free: \"" + text + "\"은(는) 안 됩니다. yes나 no를 적으세요.");
    }

    @Override
    public String outEnding(String ending, String name, String option) {
        return Particles.fitted(option + ": \"" + name + "\"(으)로는 안 됩니다. " + ending + "(으)로 끝나는 파일 이름을 쓰세요.");
    }

    @Override
    public String outFile(String name, String option, String why) {
        return (why.equals("FOLDER") ? "" + option + ": " + name + ": 폴더입니다. 파일 이름을 쓰세요." : why.equals("THERE") ? "" + option + ": " + name + " 파일이 이미 있습니다. 다른 이름을 쓰거나 --replace를 붙여 덮어쓰세요." : why.equals("NOWHERE") ? "" + option + ": " + name + " 파일을 둘 폴더가 없습니다. 먼저 만들거나 이름을 확인하세요." : why.equals("LOCKED") ? "" + option + ": " + name + " 파일의 폴더에 쓸 권한이 없습니다. 권한을 바꾸거나 다른 폴더를 쓰세요." : why.equals("NAME") ? "" + option + ": \"" + name + "\"(은)는 파일 이름이 아닙니다. 어떻게 썼는지 확인하세요." : "" + option + ": " + name + " 파일을 쓰지 못했습니다. 권한과 디스크의 빈자리를 확인하세요.");
    }

    @Override
    public String outFolder(String name, String why) {
        return (why.equals("MISSING") ? "--out: 폴더가 없습니다. --out cloths처럼 쓰세요." : why.equals("FILE") ? "--out: " + name + ": 파일입니다. 폴더를 쓰세요. 아직 없는 폴더여도 됩니다." : why.equals("NAME") ? "--out: \"" + name + "\"(은)는 폴더 이름이 아닙니다. 어떻게 썼는지 확인하세요." : why.equals("CLOSED") ? "--out: " + name + " 안을 볼 수 없습니다. 권한을 확인하세요." : "--out: " + name + " 폴더에 쓰지 못했습니다. 권한과 디스크의 빈자리를 확인하세요. 바뀐 것은 없습니다.");
    }

    @Override
    public String outHolds(String name, String thing) {
        return "--out: " + name + "에 다른 것(" + thing + ")이 있습니다. 새 폴더나 제안만 든 폴더를 쓰세요.";
    }

    @Override
    public String outInWay(String name, String thing) {
        return "--out: " + name + " 폴더를 만들 자리에 파일(" + thing + ")이 있습니다. 다른 폴더를 쓰세요.";
    }

    @Override
    public String outStopped(String name) {
        return "멈췄습니다. " + name + "에서 바뀐 것은 없습니다.";
    }

    @Override
    public String stashFull(String most) {
        return "천이 " + most + "장을 넘게 됩니다. 장수를 확인하세요. 더한 것은 없습니다";
    }

    @Override
    public String stashKnown(String fabric) {
        return Particles.fitted(fabric + "은(는) 이미 있습니다. 색, 겉과 안, 결은 여기 적힌 대로 둡니다.");
    }

    @Override
    public String tieFirst() {
        return "묶을 것이 있어야 합니다. --gift \"box 30 x 20 x 8 cm\"를 더하세요";
    }

    @Override
    public String tieOther(String names, String suited, String tie) {
        return tie + ": " + suited + "에 씁니다. 이 선물에는 " + names + " 가운데 고르세요";
    }

    @Override
    public String tieUnknown(String names, String text) {
        return Particles.fitted("\"" + text + "\"은(는) 아는 묶는 법이 아닙니다. 있는 것: " + names);
    }

    @Override
    public String wishAt(String field, String what) {
        return field + ": " + what + ".";
    }

    @Override
    public String wishBands() {
        return "꼭 들어가거나 가운데에 놓을 천과는 함께 쓰지 않습니다";
    }

    @Override
    public String wishBlocks(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 블록 수가 아닙니다. \"3 x 3\"처럼 적으세요");
    }

    @Override
    public String wishBlocksReach(String most, String text) {
        return Particles.fitted("\"" + text + "\"은(는) 할 수 없습니다. 1 x 1부터 " + most + " x " + most + "까지 계획합니다");
    }

    @Override
    public String wishBoth() {
        return "크기와 선물을 함께 바랄 수 없습니다. 하나를 빼세요";
    }

    @Override
    public String wishCloth(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 할 수 없는 크기입니다. 보자기는 2 in(5 cm)부터 196 in(5 m)까지 계획합니다. 수와 단위를 확인하세요");
    }

    @Override
    public String wishContrast(String names, String text) {
        return Particles.fitted("\"" + text + "\"은(는) 대비가 아닙니다. 다음 가운데 하나를 적으세요: " + names);
    }

    @Override
    public String wishFabric(int more, String name, String names) {
        return "천 목록에 \"" + name + "\"이라는 천이 없습니다. 있는 것: " + names + (more == 0 ? "" : " 그 밖에 " + more + "가지");
    }

    @Override
    public String wishFar(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 할 수 없는 길이입니다. 수와 단위를 확인하세요");
    }

    @Override
    public String wishFell(String text) {
        return Particles.fitted("\"" + text + "\"(으)로는 쌈솔이 되지 않습니다. 둘째 시접이 첫째를 감싸므로 더 넓어야 합니다");
    }

    @Override
    public String wishGoes(String other) {
        return other + "와(과) 함께 씁니다";
    }

    @Override
    public String wishGoesBars() {
        return "중심 조각과 띠에 씁니다. --free나 --blocks와는 쓰지 않습니다";
    }

    @Override
    public String wishManyWidths(String count, String most) {
        return "너비 " + count + "개는 너무 많습니다. " + most + "개까지 적으세요";
    }

    @Override
    public String wishMiddle() {
        return "천 한 장의 번호를 적으세요";
    }

    @Override
    public String wishMixed(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 섞을 수 없습니다. + 뒤에 scattered evenly나 one bright scrap을 적으세요");
    }

    @Override
    public String wishNarrow(String band, String eaten, String how, String needed, String text) {
        return Particles.fitted("\"" + text + "\"은(는) 너무 좁습니다. " + (how.equals("finished") ? "쌈솔만 " + band + "입니다" : "솔기나 단이 " + eaten + "까지 차지하고 쌈솔이 " + band + "를 덮습니다") + ". " + needed + "보다 크게 적으세요");
    }

    @Override
    public String wishNeed(String most, String size, String tie) {
        return tie + ": " + size + "의 보자기가 필요하지만 " + most + "까지 계획합니다. 더 작은 것을 싸거나 다른 묶는 법을 고르세요";
    }

    @Override
    public String wishNoCloth(String most, String text) {
        return Particles.fitted("\"" + text + "\"은(는) " + most + "를 넘어 천이 남지 않습니다. 수와 단위를 확인하세요");
    }

    @Override
    public String wishNotWith(String other) {
        return other + "와(과)는 함께 쓰지 않습니다";
    }

    @Override
    public String wishNothing() {
        return "크기가 0인 조각은 박을 수 없습니다. \"2 in\"처럼 길이를 적으세요";
    }

    @Override
    public String wishOff(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 한가운데에서 벗어난 정도가 아닙니다. 길이와 right, left, away, near를 적으세요: \"2 cm left, 3 cm away\"");
    }

    @Override
    public String wishOrder(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 순서가 아닙니다. round, pairs, two-sides 가운데 하나를 적으세요");
    }

    @Override
    public String wishPair(int count, String text, String what) {
        return "\"" + text + "\"에 수가 " + "" + count + "개" + " 있습니다. " + (what.equals("seam") ? "쌈솔에는 \"1/4 + 1/2 in\"처럼 좁은 시접과 넓은 시접이 있습니다" : "단에는 \"1/4 + 1/4 in\"처럼 첫째와 둘째 접음이 있습니다");
    }

    @Override
    public String wishPart(String most, String text) {
        return Particles.fitted("\"" + text + "\"은(는) 안 됩니다. 각 부분은 0보다 크고 " + most + "까지입니다");
    }

    @Override
    public String wishReach(String least, String most, String text) {
        return Particles.fitted("\"" + text + "\"은(는) 할 수 없는 크기입니다. " + least + "부터 " + most + "까지 계획합니다. 수와 단위를 확인하세요");
    }

    @Override
    public String wishScheme(String names, String text) {
        return Particles.fitted("\"" + text + "\"은(는) 색 배치가 아닙니다. stash나 다음 가운데 하나를 적으세요: " + names);
    }

    @Override
    public String wishScraps(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 자투리 규칙이 아닙니다. as-they-are, cut, either 가운데 하나를 적으세요");
    }

    @Override
    public String wishSeam(String names, String text) {
        return Particles.fitted("\"" + text + "\"은(는) 솔기가 아닙니다. \"1/4 + 1/2 in\"처럼 좁은 시접과 넓은 시접을 적거나 다음 가운데 하나를 적으세요: " + names);
    }

    @Override
    public String wishSeed(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 정수가 아닙니다. 7처럼 적으세요");
    }

    @Override
    public String wishSetting(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 배치가 아닙니다. straight furrow, barn raising, sunshine and shadow, turned at will, all alike 가운데 하나를 적으세요");
    }

    @Override
    public String wishShow(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 천이 둘 이상입니다. 보일 것 하나를 적으세요");
    }

    @Override
    public String wishSlack(String most, String text) {
        return Particles.fitted("\"" + text + "\"은(는) " + most + "를 넘습니다. 바느질이 그만큼 차지하지 않습니다. 수와 단위를 확인하거나 none이라고 적으세요");
    }

    @Override
    public String wishTied() {
        return "묶은 선물에 쓰는 것입니다. --gift \"box 30 x 20 x 8 cm\"를 더하세요";
    }

    @Override
    public String wishTime(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 시간이 아닙니다. 2s, 500ms, 1min처럼 적으세요");
    }

    @Override
    public String wishTimeReach(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 할 수 없는 시간입니다. 1ms부터 10min까지 쓰세요");
    }

    @Override
    public String wishUnit(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 재는 단위가 아닙니다. in이나 cm를 적으세요");
    }

    @Override
    public String wishWhole(String least, String most, String text) {
        return Particles.fitted("\"" + text + "\"은(는) 안 됩니다. " + least + "부터 " + most + "까지의 정수를 적으세요");
    }

    @Override
    public String wishWidths(int rounds, int widths) {
        return "둘레 " + "" + rounds + "개" + "에 너비가 " + "" + widths + "개" + "입니다. 둘레마다 너비 하나를 적거나 둘레를 늘리세요";
    }

    @Override
    public String wishWord(String names, String text) {
        return Particles.fitted("\"" + text + "\"은(는) 안 됩니다. 다음 가운데 하나를 적으세요: " + names);
    }
}
