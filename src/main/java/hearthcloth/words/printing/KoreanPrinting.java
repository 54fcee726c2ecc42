package hearthcloth.words.printing;

import hearthcloth.words.korean.Particles;

/** The room of printing in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanPrinting implements PrintingWords {

    @Override
    public String altCut(String fabric, int n, String piece, String size) {
        return "천 " + piece + ", " + fabric + ", " + size + ", 재단 " + n + "번";
    }

    @Override
    public String altFace(String face, String size, String title) {
        return (face.equals("front") ? "앞면: " + title + ", " + size : "뒷면: " + title + ", " + size);
    }

    @Override
    public String altPatches(int n) {
        return "조각 " + n + "개";
    }

    @Override
    public String altStep(String added, String step, String work) {
        return step + "단계: 박기 전의 " + work + ", " + added + ". 앞면이 위";
    }

    @Override
    public String bagAbout(String size, String title) {
        return title + ", " + size + ".";
    }

    @Override
    public String bagFor(String gift, String size, String title) {
        return title + ", " + size + ". 쌀 것: " + gift + ".";
    }

    @Override
    public String bagHow() {
        return "점선을 따라 오려 쪽지에 적힌 천과 함께 봉투에 넣으세요. 크기는 너비 × 길이이고 길이는 식서 방향입니다.";
    }

    @Override
    public String bagPiece(String patches, String piece, String size) {
        return "천 " + piece + ", " + size + "(" + patches + ")";
    }

    @Override
    public String bagSlips() {
        return "봉투 쪽지";
    }

    @Override
    public String bagTitle(String n, String name) {
        return "봉투 " + n + ", " + name;
    }

    @Override
    public String beforeTitle() {
        return "자르기 전에";
    }

    @Override
    public String boxMeasure() {
        return "이제 크기는";
    }

    @Override
    public String boxWay() {
        return "너비 × 높이, 앞면이 위";
    }

    @Override
    public String cardMeasures(String size) {
        return "크기 " + size + ".";
    }

    @Override
    public String cardOthers(int n) {
        return "나머지도 같은 방법으로 박습니다.";
    }

    @Override
    public String cardThick(String places) {
        return "두꺼운 곳: " + places + ". 거기서는 천천히.";
    }

    @Override
    public String careTitle() {
        return "조심할 것";
    }

    @Override
    public String chosenTitle() {
        return "대신 고른 것";
    }

    @Override
    public String coloursEyes(String eyes) {
        return (eyes.equals("protan") ? "적색맹의 눈에 보이는 모습" : eyes.equals("deutan") ? "녹색맹의 눈에 보이는 모습" : "청색맹의 눈에 보이는 모습");
    }

    @Override
    public String coloursGrey(String shade) {
        return (shade.equals("black") ? "검정" : shade.equals("dark") ? "짙은 회색" : shade.equals("middle") ? "회색" : shade.equals("light") ? "밝은 회색" : "흰색");
    }

    @Override
    public String coloursLeast() {
        return "가장 눈에 띄지 않음";
    }

    @Override
    public String coloursLike(String fabric) {
        return fabric + " 같은 색";
    }

    @Override
    public String coloursMost() {
        return "가장 눈에 띔";
    }

    @Override
    public String coloursSeams() {
        return "솔기";
    }

    @Override
    public String coloursThread() {
        return "솔기마다 어울리는 실의 색입니다. 가장 눈에 띄지 않는 실은 고르지 않은 땀을 가려 주고, 가장 눈에 띄는 실은 무늬가 됩니다.";
    }

    @Override
    public String coloursTitle() {
        return "색";
    }

    @Override
    public String coloursValues() {
        return "밝기를 다섯 단계로";
    }

    @Override
    public String corner() {
        return "귀 하나";
    }

    @Override
    public String cornerFirst(String length) {
        return "첫 접기, 재단 끝에서 " + length;
    }

    @Override
    public String cornerLast(String length) {
        return "마지막 접기, 재단 끝에서 " + length + ": 완성된 변";
    }

    @Override
    public String cornerLife() {
        return "귀 하나, 실물 크기";
    }

    @Override
    public String cornerMitre() {
        return "액자형 귀: 귀를 반으로 접어 박은 선";
    }

    @Override
    public String cornerOff() {
        return "잘라 낸 귀";
    }

    @Override
    public String cutHead(String row, String scale, String unit, String washed) {
        return "천 목록 " + row + "째 줄" + (washed.equals("YES") ? ", 빨았음" : washed.equals("NO") ? ", 빨지 않음" : "") + ". 축척 " + scale + ", 단위는 " + (unit.equals("metric") ? "센티미터" : "인치") + ".";
    }

    @Override
    public String cutHow() {
        return "번호 차례로 자릅니다. 번호는 자를 선 위에 치수와 함께 있습니다. 화살촉은 재기 시작하는 변을 가리킵니다. 남은 천은 옅게 그리고 이름을 적었으니 둡니다. 가위표는 쓰기에 너무 작은 자투리입니다. 그림은 모두 식서 방향이 위아래입니다. \"90도 돌림\"은 보자기에 놓이는 방향에서 90도 돌려 그렸다는 뜻입니다.";
    }

    @Override
    public String cutLeft(String left) {
        return "남는 것: " + left + ".";
    }

    @Override
    public String cutNothing() {
        return "자를 것 없음: 천을 통째로 씁니다.";
    }

    @Override
    public String cutSheet(int n, String title) {
        return "" + title + ". 천 " + n + "장. 번호 차례로 자릅니다. 동그라미의 화살촉은 재기 시작하는 변을 가리킵니다.";
    }

    @Override
    public String cutTitle() {
        return "자르기";
    }

    @Override
    public String cutWhole() {
        return "통째로 쓰는 천";
    }

    @Override
    public String drawn(String scale) {
        return "축척 " + scale + ".";
    }

    @Override
    public String faceDrawn(String face, String scale) {
        return face + ", 축척 " + scale;
    }

    @Override
    public String faceFells(String face) {
        return (face.equals("front") ? "앞면(솔기와 단이 보임)" : "뒷면(솔기와 단이 보임)");
    }

    @Override
    public String faceName(String face) {
        return (face.equals("front") ? "앞면" : "뒷면");
    }

    @Override
    public String faceSheet(String scale, String size, String title) {
        return title + ". 단까지 완성 크기 " + size + ". 축척 " + scale + ".";
    }

    @Override
    public String figureCuts() {
        return "재단";
    }

    @Override
    public String figureFinished() {
        return "완성";
    }

    @Override
    public String figureJoins() {
        return "이음";
    }

    @Override
    public String figureLost() {
        return "버림";
    }

    @Override
    public String figurePatches() {
        return "조각";
    }

    @Override
    public String figureSeams() {
        return "솔기";
    }

    @Override
    public String figureThread() {
        return "실";
    }

    @Override
    public String grain() {
        return "식서 방향";
    }

    @Override
    public String grainNap() {
        return "식서 방향, 결은 이쪽";
    }

    @Override
    public String hemTitle() {
        return "단";
    }

    @Override
    public String item(String topic, String words) {
        return topic + ": " + words;
    }

    @Override
    public String kitsBuy(String name, String what) {
        return name + ": " + what + ".";
    }

    @Override
    public String kitsEach(String shared) {
        return (shared.equals("yes") ? "천은 한 봉투에만 있습니다. 둘이 나누어 쓰는 것만은 첫째 사람이 먼저 자릅니다." : "천은 한 봉투에만 있어 아무도 기다리지 않습니다.");
    }

    @Override
    public String kitsFirst(String of, String piece, String size, String who) {
        return Particles.fitted(who + "이(가) 천 " + of + "을(를) 먼저 자르고, 남은 " + size + "이(가) 천 " + piece + "이(가) 됩니다.");
    }

    @Override
    public String kitsHanded(String of, String piece, String who) {
        return Particles.fitted("천 " + piece + "은(는) " + who + "이(가) 천 " + of + "에서 남긴 것입니다. " + who + " 다음에 자르세요.");
    }

    @Override
    public String kitsLacks(String made, String name, String why) {
        return name + ": " + (made.equals("no") ? "아무것도 만들 수 없었습니다." : "바란 대로가 아닙니다.") + " " + why;
    }

    @Override
    public String kitsNearest() {
        return "만들 수 있는 가장 가까운 것입니다. 살 것 목록을 보세요.";
    }

    @Override
    public String kitsQuarters(int n) {
        return "팻쿼터 " + n + "장";
    }

    @Override
    public String kitsRunning(int n) {
        return "보자기 " + n + "개의 꾸러미";
    }

    @Override
    public String kitsTitle() {
        return "꾸러미";
    }

    @Override
    public String kitsWay(String goods, String unit) {
        return (goods.equals("FAT_QUARTERS") ? "" + (unit.equals("in") ? "팻쿼터로(적어도 18 × 20 in)" : "팻쿼터로(적어도 45 × 50 cm)") : goods.equals("NARROW_BOLT") ? "" + (unit.equals("in") ? "너비 44 in 원단에서(식서 사이 40 in)" : "너비 110 cm 원단에서(식서 사이 102 cm)") : "" + (unit.equals("in") ? "너비 60 in 원단에서(식서 사이 58 in)" : "너비 150 cm 원단에서(식서 사이 145 cm)"));
    }

    @Override
    public String kitsWorst(int n) {
        return (n == 0 ? "이은 띠가 하나도 없습니다." : "이음은 한 사람에 " + n + "곳까지입니다.");
    }

    @Override
    public String kitsYards(String n, String way) {
        return n + " 야드" + "";
    }

    @Override
    public String labelHearth() {
        return "중심";
    }

    @Override
    public String labelOffcut(String number) {
        return "남은 천 " + number;
    }

    @Override
    public String legendFell() {
        return "접은 솔기, 조금 짙게";
    }

    @Override
    public String legendStitches() {
        return "박은 줄";
    }

    @Override
    public String legendUnknown(String fabric) {
        return fabric + "(색을 아직 모름)";
    }

    @Override
    public String legendWrong() {
        return "빗금: 천의 안";
    }

    @Override
    public String lostJoins(int n) {
        return "이 보자기를 이음 " + n + "개보다 적게 만들 방법은 없습니다.";
    }

    @Override
    public String lostLeast(String least, String touched) {
        return "버림: 다시 쓰기에 너무 작은 자투리. 자르는 천은 " + touched + "이며, 이 보자기를 " + least + "보다 적게 자를 방법은 없습니다.";
    }

    @Override
    public String lostLeastLost(String least, String lost, String touched) {
        return "버림: 다시 쓰기에 너무 작은 자투리. 자르는 천은 " + touched + "이며, 이 보자기를 " + least + "보다 적게 자르거나 " + lost + "보다 적게 버릴 방법은 없습니다.";
    }

    @Override
    public String lostTouched(String touched) {
        return "버림: 다시 쓰기에 너무 작은 자투리. 자르는 천은 " + touched + "입니다.";
    }

    @Override
    public String matStays() {
        return "남음";
    }

    @Override
    public String matTitle(String all, String made, String piece) {
        return "재단판 위의 천 " + piece + ", 재단 " + all + "번 가운데 " + made + "번 함";
    }

    @Override
    public String measuringPrint() {
        return "100 %로, 쪽에 맞추지 않고 인쇄하세요. 천 사이에 평평하게 놓으세요.";
    }

    @Override
    public String measuringRuler() {
        return "가는 선에 자를 대어 보세요. 20 cm(7 7/8 in)여야 합니다.";
    }

    @Override
    public String measuringSay() {
        return "아니면 사진을 보낼 때 길이를 적으세요.";
    }

    @Override
    public String measuringTitle() {
        return "측정지";
    }

    @Override
    public String needsTitle() {
        return "필요한 것";
    }

    @Override
    public String netFold() {
        return "앞에 놓인 그대로 안쪽이 위입니다. 선을 따라 접습니다. 선이 몰린 곳은 천이 모인 곳이니 종이를 구기거나 꼽니다.";
    }

    @Override
    public String netHow(String gift, String scale, String size, String small) {
        return size + " 보자기로 싸는 것: " + gift + ". 축척 " + scale + ". 오려 내면 두꺼운 종이로 만든 이것을 쌉니다: " + small + ".";
    }

    @Override
    public String netSquare(String side) {
        return "한 변 " + side;
    }

    @Override
    public String netTitle(String tie) {
        return "접는 선: " + tie;
    }

    @Override
    public String page(String all, String number) {
        return all + "쪽 가운데 " + number + "쪽";
    }

    @Override
    public String pictureCuts(String name) {
        return "재단 그림: " + name;
    }

    @Override
    public String pictureDone() {
        return "묶은 모습";
    }

    @Override
    public String pictureKnot() {
        return "맞매듭";
    }

    @Override
    public String pictureNet() {
        return "펼친 그림, 안쪽이 위. 선을 따라 접습니다";
    }

    @Override
    public String pictureTied() {
        return "묶은 선물을 위, 앞, 모서리에서 본 그림";
    }

    @Override
    public String pictureTying() {
        return "묶는 중";
    }

    @Override
    public String piecesDone(String piece) {
        return piece + ", 재단함";
    }

    @Override
    public String piecesHow(String unit) {
        return "천마다 거기서 자르는 것입니다. 크기는 너비 × 길이, 단위는 " + (unit.equals("metric") ? "센티미터" : "인치") + ". 둘째 수가 식서 방향입니다.";
    }

    @Override
    public String piecesTitle() {
        return "천과 조각";
    }

    @Override
    public String pinHatched() {
        return "모든 그림의 빗금: 천의 안.";
    }

    @Override
    public String pinLies(String added, String face, String work) {
        return Particles.fitted(added + "이(가) " + (face.equals("front") ? "앞면" : "뒷면") + "을 위로 하고 위에 있습니다. 아래: " + work + ".");
    }

    @Override
    public String pinSticksOut(String length, String wrapping) {
        return Particles.fitted(wrapping + "이(가) " + length + " 나옵니다. 이 넓은 시접이 다른 시접을 감쌉니다.");
    }

    @Override
    public String pinStitching() {
        return "점선이 박을 선입니다. 시침핀은 노루발에 닿기 전에 뽑습니다.";
    }

    @Override
    public String pinTitle() {
        return "1단계, 시침핀 꽂기";
    }

    @Override
    public String seamTitle() {
        return "솔기";
    }

    @Override
    public String sectionFold() {
        return "접어 눌러 박기";
    }

    @Override
    public String sectionOpen() {
        return "펼쳐 다리기";
    }

    @Override
    public String sectionStitch() {
        return "박기";
    }

    @Override
    public String sectionWrapped(String name) {
        return name + ", 감싸임";
    }

    @Override
    public String sectionWraps(String name) {
        return name + ", 감쌈";
    }

    @Override
    public String sewTitle() {
        return "박기";
    }

    @Override
    public String shopNoWay() {
        return "천 한 가지를 아무리 더해도 만들 방법을 찾지 못했습니다.";
    }

    @Override
    public String shopNone() {
        return "없습니다. 모두 가진 천으로 자를 수 있습니다. 실과 도구는 안내서마다 적혀 있습니다.";
    }

    @Override
    public String shopTitle() {
        return "살 것";
    }

    @Override
    public String shopWays() {
        return "다음 가운데 하나면, 남는 천과 함께 넉넉합니다. 하나하나 계획해 보았습니다. 산 천은 자르기 전에 빨아 다리세요.";
    }

    @Override
    public String slipsHow() {
        return "점선을 따라 오립니다. 조각을 자르면 바로 보자기의 앞면이 될 쪽에 꽂습니다. 화살표는 보자기의 위를 가리킵니다.";
    }

    @Override
    public String slipsRunning(String title) {
        return title + ", 조각표";
    }

    @Override
    public String slipsSize(String size) {
        return size + ", 재단 크기";
    }

    @Override
    public String slipsTitle() {
        return "조각표";
    }

    @Override
    public String slipsTop() {
        return "위";
    }

    @Override
    public String slipsUp(String showing) {
        return (showing.equals("RIGHT") ? "겉이 위" : showing.equals("WRONG") ? "안이 위" : "어느 쪽이든");
    }

    @Override
    public String square(String side) {
        return "이 정사각형은 한 변이 " + side + "입니다. 다르면 100 %로 다시 인쇄합니다(\"쪽에 맞춤\"을 쓰지 않습니다). 종이에서는 \"실물 크기\"라고 적힌 곳만 잽니다. 다른 곳은 적힌 치수를 씁니다.";
    }

    @Override
    public String stepTrim() {
        return "자름";
    }

    @Override
    public String stepWraps() {
        return "감쌈";
    }

    @Override
    public String tableAlone(String alone, String measure) {
        return measure + ", 띠만 " + alone;
    }

    @Override
    public String tableHow() {
        return "솔기는 모두 1단계처럼 박습니다. \"작업물\"은 그때까지 이은 전체입니다. 크기는 너비 × 높이, 앞면이 위. 두꺼운 곳은 천천히 박거나 손바퀴를 돌립니다.";
    }

    @Override
    public String tableJoin(String n, String what) {
        return what + "(먼저 부분 " + n + "개를 잇기)";
    }

    @Override
    public String tableMeasures() {
        return "크기";
    }

    @Override
    public String tableNewWraps() {
        return "이은 띠에서는 새 부분이 앞 부분을 감쌉니다.";
    }

    @Override
    public String tableOldWraps() {
        return "이은 띠에서는 앞 부분이 다음 부분을 감쌉니다.";
    }

    @Override
    public String tableSew() {
        return "박을 것";
    }

    @Override
    public String tableStep() {
        return "단계";
    }

    @Override
    public String tableThick() {
        return "두꺼움";
    }

    @Override
    public String tableTitle() {
        return "모든 솔기, 차례대로";
    }

    @Override
    public String tableWraps() {
        return "감쌈";
    }

    @Override
    public String teacherAbout(int joins, int patches, int pieces, String size, String title) {
        return title + ", " + size + ": " + "천 " + pieces + "장" + "에서 " + "조각 " + patches + "개" + (joins == 0 ? "" : ", 이음 " + joins + "곳") + ".";
    }

    @Override
    public String teacherDot() {
        return "보자기의 점은 가장 여러 겹이 만나는 곳입니다. 그곳을 박을 때는 스팀으로 다리고 손바퀴를 돌리게 하세요.";
    }

    @Override
    public String teacherNoCross() {
        return "서로 엇갈리는 솔기가 없습니다.";
    }

    @Override
    public String teacherThick(int count, int places, String plies, String steps) {
        return "가장 두꺼운 곳: " + "" + places + "곳" + "에서 " + plies + "겹, " + "" + steps + "단계에서" + " 박습니다.";
    }

    @Override
    public String teacherTitle() {
        return "가르치는 사람에게";
    }

    @Override
    public String thickTitle() {
        return "두꺼워지는 곳";
    }

    @Override
    public String threadTitle() {
        return "실";
    }

    @Override
    public String tieCare() {
        return "묶을 때 조심할 것";
    }

    @Override
    public String tieKnot() {
        return "맞매듭";
    }

    @Override
    public String tieTitle() {
        return "묶기";
    }

    @Override
    public String tiedCare() {
        return "묶은 뒤 조심할 것";
    }

    @Override
    public String tiedHow(String suited, String tie) {
        return tie + ". 알맞은 것: " + suited + ". 화살표 끝이 지금 귀가 있는 곳입니다.";
    }

    @Override
    public String tiedHowNamed(String suited, String tie, String trade) {
        return tie + "(" + trade + "). 알맞은 것: " + suited + ". 화살표 끝이 지금 귀가 있는 곳입니다.";
    }

    @Override
    public String tiedJust(String reason, String size) {
        return "이 보자기(" + size + ")는 꼭 맞습니다(" + reason + ").";
    }

    @Override
    public String tiedKnot() {
        return "매듭";
    }

    @Override
    public String tiedLeaves(String reason, String size, String spare) {
        return "이 보자기(" + size + ")는 계획보다 " + spare + " 여유가 있습니다(" + reason + ").";
    }

    @Override
    public String tiedNear() {
        return "매듭 가까이(한 뼘쯤)에서는 실제 천이 주름지고, 늘어진 끝은 제멋대로 떨어집니다.";
    }

    @Override
    public String tiedNext(String size, String uses) {
        return "바로 위의 기성품 크기는 " + size + ", 쓰임: " + uses + ".";
    }

    @Override
    public String tiedNextNamed(String size, String trade, String uses) {
        return "바로 위의 기성품 크기는 " + size + "(" + trade + "), 쓰임: " + uses + ".";
    }

    @Override
    public String tiedSheet(String gift, String tie) {
        return "묶은 선물: " + gift + ", " + tie;
    }

    @Override
    public String tiedShort() {
        return "귀가 닿지 않을 때";
    }

    @Override
    public String tiedShows() {
        return "보이는 것";
    }

    @Override
    public String tiedSure() {
        return "크기는 얼마나 확실한가";
    }

    @Override
    public String tiedTitle() {
        return "묶은 선물";
    }

    @Override
    public String tiedTying() {
        return "묶는 법";
    }

    @Override
    public String toolsEach(String tool) {
        return tool + ".";
    }

    @Override
    public String toolsTitle() {
        return "도구";
    }

    @Override
    public String view(String view) {
        return (view.equals("above") ? "위에서" : view.equals("front") ? "앞에서" : view.equals("right") ? "오른쪽에서" : view.equals("spine") ? "책등에서" : "모서리에서");
    }

    @Override
    public String washingTitle() {
        return "빨래";
    }
}
