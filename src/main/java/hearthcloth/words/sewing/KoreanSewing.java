package hearthcloth.words.sewing;

import hearthcloth.words.korean.Particles;

/** The room of sewing in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanSewing implements SewingWords {

    @Override
    public String about(String length) {
        return "약 " + length;
    }

    @Override
    public String beforeGrain() {
        return "천을 모두 식서 방향(세로 올)이 위아래로 가게 놓습니다.";
    }

    @Override
    public String beforeMeasure(String length) {
        return "천을 모두 잽니다. 이 계획보다 " + length + " 넘게 작은 것이 있으면 실제 크기로 다시 계획합니다.";
    }

    @Override
    public String beforePin() {
        return "조각을 자르면 바로 조각표를 꽂습니다. 보자기의 앞면이 될 쪽에, 조각표의 위가 보자기의 위로 가게 꽂습니다.";
    }

    @Override
    public String beforePress() {
        return "천을 모두 다려 펴고 식힙니다. 식서가 남아 있으면 잘라 내고 다시 잽니다.";
    }

    @Override
    public String beforeStraight() {
        return "모든 재단은 변에서 재므로 먼저 왼쪽 변과 위쪽 변을 곧고 직각이 되게 자릅니다. 조각이 천의 끝까지 필요한 곳에서는 올 한두 가닥만 잘라 냅니다.";
    }

    @Override
    public String blockBegins(String first, String last, String letters) {
        return Particles.fitted("묶음 " + letters + "을(를) 시작합니다. " + first + "부터 " + last + "까지 앞면 그림처럼 놓습니다. 다른 것은 필요 없습니다.");
    }

    @Override
    public String blockDone(String letters) {
        return Particles.fitted("묶음 " + letters + "이(가) 끝났습니다.");
    }

    @Override
    public String briefSew(String added, String part, String side, String work) {
        return Particles.fitted(added + "을(를) " + work + "의 " + (side.equals("left") ? "왼쪽" : side.equals("right") ? "오른쪽" : side.equals("top") ? "위쪽" : "아래쪽") + " " + (part.equals("end") ? "끝" : "변") + "에 1단계처럼 잇습니다.");
    }

    @Override
    public String briefSticksOut(String length, String wrapping) {
        return Particles.fitted(wrapping + "이(가) 감쌉니다. 변을 " + length + " 나오게 합니다.");
    }

    @Override
    public String briefStitch(String top) {
        return "위에 있는 변에서 " + top + " 되는 곳을 박습니다. 1단계처럼 마무리합니다.";
    }

    @Override
    public String briefTurn(String added, String part, String side, String work) {
        return Particles.fitted(added + "을(를) " + (side.equals("left") ? "넘겨" : side.equals("right") ? "넘겨" : side.equals("top") ? "아래로 젖혀" : "위로 젖혀") + " " + work + "의 " + (side.equals("left") ? "왼쪽" : side.equals("right") ? "오른쪽" : side.equals("top") ? "위쪽" : "아래쪽") + " " + (part.equals("end") ? "끝" : "변") + "에 얹습니다.");
    }

    @Override
    public String briefWraps(String wrapping) {
        return Particles.fitted(wrapping + "이(가) 감쌉니다.");
    }

    @Override
    public String careChildren() {
        return "묶은 천은 목을 조를 수 있습니다. 세 살이 안 된 아이 곁에 두지 않습니다. 끝이 22 cm보다 길면 더욱 그렇습니다.";
    }

    @Override
    public String careChildrenTitle() {
        return "어린아이";
    }

    @Override
    public String careCutter() {
        return "자를 때마다 덮개를 닫습니다. 날을 세우고 몸 바깥쪽으로 자릅니다. 손가락을 자의 가장자리에서 멀리 두고 재단판에 핀을 두지 않습니다. 헌 날은 싸서 버립니다.";
    }

    @Override
    public String careCutterTitle() {
        return "로터리 커터";
    }

    @Override
    public String careDye() {
        return "짙은 빨강, 파랑, 보라는 처음 몇 번 빨 때 물이 빠질 수 있습니다. 젖은 천을 옅은 것 위에 두어도 물듭니다.";
    }

    @Override
    public String careDyeTitle() {
        return "물 빠짐";
    }

    @Override
    public String careFlames() {
        return "천은 탑니다. 싼 선물은 불에서 30 cm 넘게 떨어뜨립니다.";
    }

    @Override
    public String careFlamesTitle() {
        return "촛불과 화구";
    }

    @Override
    public String careFood() {
        return "음식용 보자기를 따로 둡니다. 자주 빨고 잘 말립니다. 날고기는 먼저 봉지에 넣어 막습니다.";
    }

    @Override
    public String careFoodTitle() {
        return "음식";
    }

    @Override
    public String careIron() {
        return "줄에 걸리지 않는 곳에 세워 둡니다. 얼굴과 손을 김에 대지 않습니다. 끝나면 플러그를 뽑습니다.";
    }

    @Override
    public String careIronTitle() {
        return "다리미";
    }

    @Override
    public String careNeedle() {
        return "시침핀은 노루발에 닿기 전에 뽑고 입에 물지 않습니다. 바늘이 부러지면 조각을 모두 찾습니다.";
    }

    @Override
    public String careNeedleTitle() {
        return "바늘";
    }

    @Override
    public String cutGives(String how, String patch, String size) {
        return patch + ": " + size + (how.equals("turned") ? "(90도 돌림)" : how.equals("whole") ? ", 천 전체" : how.equals("turnedWhole") ? "(90도 돌림), 천 전체" : "");
    }

    @Override
    public String cutKeep(String number, String size) {
        return Particles.fitted("남은 천 " + number + "은(는) 둡니다: " + size);
    }

    @Override
    public String cutLine(String gives, String leaves, String measure, String side, String way, String what) {
        return Particles.fitted(what + "을(를) " + (way.equals("down") ? "위에서 아래로" : "왼쪽에서 오른쪽으로") + " 자릅니다. " + (side.equals("left") ? "왼쪽" : side.equals("right") ? "오른쪽" : side.equals("top") ? "위쪽" : "아래쪽") + " 변에서 " + measure + "입니다. 나오는 것: " + gives + ". 남는 것: " + leaves + ".");
    }

    @Override
    public String cutScraps(int n) {
        return "쓰기에 너무 작은 자투리 " + n + "개";
    }

    @Override
    public String cutTitle(String fabric, String piece, String size) {
        return "천 " + piece + ": " + fabric + ", " + size;
    }

    @Override
    public String cutTitleDone(String fabric, String piece, String size) {
        return "천 " + piece + ": " + fabric + ", " + size + ", 재단함";
    }

    @Override
    public String fewClip(String length) {
        return "귀마다 세모를 잘라 냅니다. 두 변에서 " + length + ".";
    }

    @Override
    public String fewClipNoMore() {
        return "그보다 더 자르지 않습니다. 귀가 덜 두껍고 막혀 있습니다.";
    }

    @Override
    public String fewClosePush() {
        return "실밥을 바늘귀로 밀어 넣습니다.";
    }

    @Override
    public String fewCloseSew() {
        return "열린 곳을 손으로 몇 땀 떠서 막습니다.";
    }

    @Override
    public String fewDiagonals(String length) {
        return "두 대각선을 잽니다. 저마다 약 " + length + ".";
    }

    @Override
    public String fewFold(String under, String wrapped, String wrapping) {
        return Particles.fitted(wrapped + " 쪽으로 다리고 " + wrapping + "을(를) " + under + " 접어 넣어 박습니다.");
    }

    @Override
    public String fewFoldShort(String under) {
        return "다린 뒤 넓은 시접을 " + under + " 접어 넣어 박습니다.";
    }

    @Override
    public String fewFrenchFold(String band) {
        return "박은 선에서 반대로 접습니다. 접은 선에서 " + band + " 되는 곳을 박습니다.";
    }

    @Override
    public String fewFrenchOpen(String wrapped) {
        return "펼쳐서 시접을 " + wrapped + " 쪽으로 다립니다.";
    }

    @Override
    public String fewFrenchOpenShort() {
        return "펼쳐서 시접을 다려 눕힙니다.";
    }

    @Override
    public String fewHemFold(String edges, String face, String length) {
        return (face.equals("front") ? "앞면" : "뒷면") + "을 위로. " + (edges.equals("topBottom") ? "위아래 변을" : edges.equals("sides") ? "양옆 변을 단의 끝까지" : "네 변을 모두") + " " + length + " 접어 다립니다.";
    }

    @Override
    public String fewHemFoldAgain(String length) {
        return length + " 더 접습니다. 다리고 시침핀.";
    }

    @Override
    public String fewHemFoldOnce(String edges, String face, String length) {
        return (face.equals("front") ? "앞면" : "뒷면") + "을 위로. " + (edges.equals("topBottom") ? "위아래 변을" : edges.equals("sides") ? "양옆 변을 단의 끝까지" : "네 변을 모두") + " " + length + " 접습니다. 다리고 시침핀.";
    }

    @Override
    public String fewHemOpen() {
        return "다시 펼칩니다. 안쪽 자국이 엇갈리는 곳이 귀가 됩니다.";
    }

    @Override
    public String fewHemPress() {
        return "다립니다.";
    }

    @Override
    public String fewHemStitch(String edge, String from) {
        return (from.equals("fold") ? "안쪽 접은 선" : "재단 끝") + "에서 " + edge + " 되는 곳을 박습니다. 양 끝은 되돌아박기.";
    }

    @Override
    public String fewHemStitchRound(String edge, String from) {
        return (from.equals("fold") ? "안쪽 접은 선" : "재단 끝") + "에서 " + edge + " 되는 곳을 빙 둘러 박습니다.";
    }

    @Override
    public String fewLappedHook(String band) {
        return "접은 변을 " + band + " 겹쳐 겁니다. 시침핀.";
    }

    @Override
    public String fewLappedLay(String added, String face, String side) {
        return "둘 다 " + (face.equals("front") ? "앞면" : "뒷면") + "을 위로. " + (side.equals("left") ? "왼쪽" : side.equals("right") ? "오른쪽" : side.equals("top") ? "위쪽" : "아래쪽") + "에: " + added + ".";
    }

    @Override
    public String fewLappedLayShort(String face) {
        return "둘 다 " + (face.equals("front") ? "앞면" : "뒷면") + "을 위로 나란히 놓습니다.";
    }

    @Override
    public String fewLappedPress(String face, String turn, String under, String wrapping) {
        return Particles.fitted(wrapping + "은(는) " + (face.equals("front") ? "뒷면" : "앞면") + "으로 " + turn + ", 다른 쪽은 " + (face.equals("front") ? "앞면" : "뒷면") + "으로 " + under + " 다려 접습니다.");
    }

    @Override
    public String fewLappedPressShort() {
        return "솔기 그림처럼 두 변을 다려 접습니다.";
    }

    @Override
    public String fewLappedStitch() {
        return "두 접은 선을 양쪽에서 하나씩 박습니다. 다립니다.";
    }

    @Override
    public String fewLay(String added, String face, String part, String side) {
        return Particles.fitted((face.equals("front") ? "앞면" : "뒷면") + "을 위로. " + added + "을(를) " + (side.equals("left") ? "왼쪽" : side.equals("right") ? "오른쪽" : side.equals("top") ? "위쪽" : "아래쪽") + " " + (part.equals("end") ? "끝" : "변") + "에 넘겨 얹습니다.");
    }

    @Override
    public String fewLayLook() {
        return "물러서서 봅니다. 크기가 같은 둘은 아직 바꿀 수 있습니다.";
    }

    @Override
    public String fewLayOut(int n) {
        return "조각 " + n + "개를 그림처럼 놓고 조각표를 붙여 둡니다.";
    }

    @Override
    public String fewLayShort(String added, String face, String part, String side) {
        return (face.equals("front") ? "앞면" : "뒷면") + "을 위로. " + (side.equals("left") ? "왼쪽" : side.equals("right") ? "오른쪽" : side.equals("top") ? "위쪽" : "아래쪽") + " " + (part.equals("end") ? "끝" : "변") + "에: " + added + ".";
    }

    @Override
    public String fewLayStack() {
        return "박을 차례대로 쌓고 첫 조각을 맨 위에 둡니다.";
    }

    @Override
    public String fewLevel(String end, String length, String start) {
        return (start.equals("left") ? "왼쪽" : start.equals("right") ? "오른쪽" : start.equals("top") ? "위" : "아래") + "을 맞춥니다. " + (end.equals("left") ? "왼쪽" : end.equals("right") ? "오른쪽" : end.equals("top") ? "위" : "아래") + "로 " + length + " 나옵니다.";
    }

    @Override
    public String fewMitreFold(String face) {
        return "귀를 반으로 접어 " + (face.equals("front") ? "앞면끼리" : "뒷면끼리") + " 대고 재단 끝을 맞춥니다.";
    }

    @Override
    public String fewMitreMark(String length) {
        return "귀 끝에서 " + length + " 되는 곳을 두 재단 끝에 표시합니다.";
    }

    @Override
    public String fewMitreRule() {
        return "표시에서 접은 선에 직각으로 선을 긋습니다.";
    }

    @Override
    public String fewMitreStitch(String about) {
        return "접은 선부터 선을 따라 박습니다(" + about + "). 양 끝은 되돌아박기.";
    }

    @Override
    public String fewMitreStitchOut() {
        return "접은 선에서 재단 끝까지 박습니다. 양 끝은 되돌아박기.";
    }

    @Override
    public String fewMitreTrim(String about) {
        return "선 옆 " + about + " 되는 곳에서 끝을 자릅니다. 갈라 다리고 뒤집습니다.";
    }

    @Override
    public String fewPress(String wrapped) {
        return "두 시접을 " + wrapped + " 쪽으로 다립니다.";
    }

    @Override
    public String fewPressShort() {
        return "두 시접을 한쪽으로 다립니다.";
    }

    @Override
    public String fewPull() {
        return "다르면 짧은 쪽을 당기고 다시 다립니다.";
    }

    @Override
    public String fewRoundCorner() {
        return "귀에서는 바늘을 꽂은 채 노루발을 들고 돌립니다.";
    }

    @Override
    public String fewRoundEnd() {
        return "끝에서 처음 땀 위로 겹쳐 박습니다. 다립니다.";
    }

    @Override
    public String fewRoundFold() {
        return "자국을 따라 단을 접고 귀를 뾰족하게 합니다. 다리고 시침핀.";
    }

    @Override
    public String fewRoundStart() {
        return "한 변의 가운데에서 시작합니다.";
    }

    @Override
    public String fewSides() {
        return "천의 겉과 안은 그림처럼.";
    }

    @Override
    public String fewSquare(String face) {
        return "보자기를 " + (face.equals("front") ? "앞면" : "뒷면") + "이 위로 오게 다려 폅니다.";
    }

    @Override
    public String fewSticksOut(String length, String wrapping) {
        return Particles.fitted(wrapping + "을(를) " + length + " 나오게 합니다. 나중에 감쌉니다. 시침핀.");
    }

    @Override
    public String fewSticksOutShort(String length) {
        return "감싸는 변을 " + length + " 나오게 합니다. 시침핀.";
    }

    @Override
    public String fewStitch(String top) {
        return "위의 변에서 " + top + " 되는 곳을 박습니다. 양 끝은 되돌아박기.";
    }

    @Override
    public String fewTrialCut(String side) {
        return "자투리 두 장을 " + side + " 정사각형으로 잘라 첫 솔기처럼 박습니다.";
    }

    @Override
    public String fewTrialLength(String stitch) {
        return Particles.fitted("땀 길이를 " + stitch + "(으)로 맞춥니다.");
    }

    @Override
    public String fewTrialMeasure() {
        return "단계마다 잽니다.";
    }

    @Override
    public String fewTrialNarrow() {
        return "좁으면 다음에 실 한 올만큼 끝에 가깝게 박습니다.";
    }

    @Override
    public String fewTrialWide() {
        return "넓으면 실 한 올만큼 안쪽으로 박습니다.";
    }

    @Override
    public String fewTrimBoth(String length) {
        return "끝을 맞추어 자르고 변을 " + length + " 자릅니다.";
    }

    @Override
    public String fewTrimEdge(String length) {
        return "변을 " + length + " 자릅니다.";
    }

    @Override
    public String fewTrimEdges() {
        return "변은 곧지 않은 곳만 자릅니다.";
    }

    @Override
    public String fewTrimEnd() {
        return "끝을 맞추어 자릅니다.";
    }

    @Override
    public String fewWhipOpen() {
        return "펼쳐서 다립니다.";
    }

    @Override
    public String fewWhipPress(String face, String narrow, String wide, String wrapping) {
        return Particles.fitted(wrapping + "은(는) " + wide + ", 다른 쪽은 " + narrow + " " + (face.equals("front") ? "앞면" : "뒷면") + "으로 다려 접습니다.");
    }

    @Override
    public String fewWhipPressShort(String face) {
        return "두 변을 " + (face.equals("front") ? "앞면" : "뒷면") + "으로 다려 접습니다.";
    }

    @Override
    public String fewWhipSew() {
        return "접은 두 변을 맞추고 약 1 mm 간격으로 손으로 감침질합니다.";
    }

    @Override
    public String frenchOpen(String face, String wrapped) {
        return "솔기를 " + (face.equals("front") ? "앞면" : "뒷면") + "이 위로 오게 펼칩니다. 시접을 " + wrapped + " 쪽으로 다려 눕힙니다.";
    }

    @Override
    public String frenchOther(String face) {
        return "솔기를 다린 뒤 박은 선을 따라 반대로 접어 " + (face.equals("front") ? "앞면끼리" : "뒷면끼리") + " 마주 댑니다.";
    }

    @Override
    public String frenchSecond(String band) {
        return "접은 선에서 " + band + " 되는 곳을 박습니다. 양 끝은 되돌아박기를 합니다. 이제 시접 끝이 속에 갇혔습니다.";
    }

    @Override
    public String frenchSharp() {
        return "접은 선을 눌러 다립니다.";
    }

    @Override
    public String frenchSnip() {
        return "실밥이 보이지 않게 잘라 냅니다.";
    }

    @Override
    public String frenchTrim(String length) {
        return Particles.fitted("두 시접을 " + length + "(으)로 자릅니다.");
    }

    @Override
    public String hemCheck(String size) {
        return "이제 보자기의 크기는 " + size + "이어야 합니다(너비 × 높이, 앞면이 위).";
    }

    @Override
    public String hemClip(String length) {
        return "귀마다 작은 세모를 잘라 냅니다. 두 변에서 " + length + "까지만 자릅니다. 단의 귀가 덜 두꺼워집니다.";
    }

    @Override
    public String hemClipTitle() {
        return "네 귀 자르기";
    }

    @Override
    public String hemClosePush() {
        return "옆단은 양 끝이 열려 있습니다. 실밥을 바늘귀로 밀어 넣습니다.";
    }

    @Override
    public String hemCloseSew() {
        return "열린 곳을 손으로 몇 땀 떠서 막습니다.";
    }

    @Override
    public String hemCloseTitle() {
        return "네 귀 막기";
    }

    @Override
    public String hemCreases() {
        return "단을 다시 펼칩니다. 귀마다 접은 자국이 엇갈립니다. 안쪽 자국이 엇갈리는 곳이 완성된 귀가 됩니다.";
    }

    @Override
    public String hemFold(String edges, String length) {
        return (edges.equals("topBottom") ? "위쪽 변과 아래쪽 변을" : edges.equals("sides") ? "왼쪽 변과 오른쪽 변을 방금 박은 단의 끝까지" : "네 변을 모두") + " " + length + " 접습니다. 다립니다.";
    }

    @Override
    public String hemFoldAgain(String length) {
        return length + " 더 접어 재단 끝을 속에 넣습니다. 다리고 시침핀을 꽂습니다.";
    }

    @Override
    public String hemFoldOnce(String edges, String length) {
        return (edges.equals("topBottom") ? "위쪽 변과 아래쪽 변을" : edges.equals("sides") ? "왼쪽 변과 오른쪽 변을 방금 박은 단의 끝까지" : "네 변을 모두") + " " + length + " 접습니다. 다리고 시침핀을 꽂습니다. 재단 끝은 보입니다.";
    }

    @Override
    public String hemLay(String face) {
        return "보자기를 " + (face.equals("front") ? "앞면" : "뒷면") + "이 위로 오게 놓습니다. 단은 " + (face.equals("front") ? "앞면" : "뒷면") + "으로 접습니다.";
    }

    @Override
    public String hemMitreFold(String face) {
        return "귀를 반으로 접어 " + (face.equals("front") ? "앞면끼리" : "뒷면끼리") + " 마주 대고 두 재단 끝을 맞춥니다.";
    }

    @Override
    public String hemMitreMark(String length) {
        return "귀 끝에서 " + length + " 되는 곳을 재단 끝에 표시합니다. 거기서 대각선 접은 선에 직각으로 선을 긋습니다. 안쪽 자국이 엇갈리는 곳에서 접은 선과 만납니다.";
    }

    @Override
    public String hemMitreStitch(String about) {
        return "접은 선에서 바깥 자국까지 선을 따라 박습니다(" + about + "). 양 끝은 되돌아박기를 합니다. 재단 끝까지의 나머지는 접어 넣을 것이니 박지 않습니다.";
    }

    @Override
    public String hemMitreStitchOut() {
        return "접은 선에서 재단 끝까지 선을 따라 박습니다. 양 끝은 되돌아박기를 합니다.";
    }

    @Override
    public String hemMitreTitle() {
        return "액자형 귀 네 곳을 하나씩 만들기";
    }

    @Override
    public String hemMitreTrim(String about) {
        return "선 옆의 끝을 잘라 냅니다. 두 재단 끝에서 " + about + " 되는 곳부터 자릅니다. 작은 솔기를 갈라 다리고 귀를 뒤집습니다.";
    }

    @Override
    public String hemPressTitle() {
        return "단 다려 접기";
    }

    @Override
    public String hemRoundCorner() {
        return "귀마다 바늘을 꽂은 채 멈추고 노루발을 들어 보자기를 돌립니다. 끝에서는 처음 땀 위로 겹쳐 박습니다. 다립니다.";
    }

    @Override
    public String hemRoundFold() {
        return "자국을 따라 단을 다시 접고 귀를 뾰족하게 밀어냅니다. 다리고 시침핀을 꽂습니다.";
    }

    @Override
    public String hemRoundStitch(String edge, String from) {
        return (from.equals("fold") ? "안쪽 접은 선" : "재단 끝") + "에서 " + edge + " 되는 곳을 빙 둘러 박습니다. 한 변의 가운데에서 시작합니다.";
    }

    @Override
    public String hemRoundTitle() {
        return "단 박기";
    }

    @Override
    public String hemSidesTitle() {
        return "양옆 단 박기";
    }

    @Override
    public String hemSquareDiagonals(String length) {
        return "두 대각선을 잽니다. 저마다 약 " + length + "이어야 합니다. 다르면 짧은 쪽을 살살 당기고 다시 다립니다.";
    }

    @Override
    public String hemSquarePress(String face) {
        return "보자기 전체를 " + (face.equals("front") ? "앞면" : "뒷면") + "이 위로 오게 다려 폅니다.";
    }

    @Override
    public String hemSquareTitle() {
        return "반듯하게 맞추기";
    }

    @Override
    public String hemSquareTrim() {
        return "네 변은 곧지 않은 곳만 자릅니다.";
    }

    @Override
    public String hemStitch(String edge, String from, String stitch) {
        return Particles.fitted((from.equals("fold") ? "안쪽 접은 선" : "재단 끝") + "에서 " + edge + " 되는 곳을 땀 길이 " + stitch + "(으)로 박습니다. 양 끝은 되돌아박기를 합니다. 다립니다.");
    }

    @Override
    public String hemThick(String places, String plies, String side) {
        return (side.equals("left") ? "왼쪽" : side.equals("right") ? "오른쪽" : side.equals("top") ? "위쪽" : "아래쪽") + " 변의 " + (side.equals("left") ? "위에서" : side.equals("right") ? "위에서" : "왼쪽에서") + " 약 " + places + " 되는 곳이 두껍습니다(앞면에서 볼 때). 솔기가 단으로 들어가 " + plies + "겹까지 됩니다.";
    }

    @Override
    public String hemThickCorners(String plies) {
        return "귀마다 " + plies + "겹까지 두껍습니다. 조금 안쪽에서 시작하고 귀는 마지막에 박습니다. 거기서는 손바퀴를 돌립니다.";
    }

    @Override
    public String hemTopBottomTitle() {
        return "위아래 단 박기";
    }

    @Override
    public String lappedHook(String band, String wrapping) {
        return Particles.fitted(wrapping + "을(를) 위로 하여 접은 변을 서로 겁니다. " + band + " 겹치고 시접 끝이 속에서 만나게 합니다. 시침핀을 꽂습니다.");
    }

    @Override
    public String lappedLay(String added, String face, String side, String work) {
        return Particles.fitted(work + "을(를) " + (face.equals("front") ? "앞면" : "뒷면") + "이 위로 오게 놓습니다. " + added + "도 같은 면이 위로 오게 그 " + (side.equals("left") ? "왼쪽" : side.equals("right") ? "오른쪽" : side.equals("top") ? "위쪽" : "아래쪽") + "에 놓습니다.");
    }

    @Override
    public String lappedPress(String face, String turn, String under, String wrapped, String wrapping) {
        return wrapping + "의 변을 " + (face.equals("front") ? "뒷면" : "앞면") + "으로 " + turn + " 다려 접고, " + wrapped + "의 변을 " + (face.equals("front") ? "앞면" : "뒷면") + "으로 " + under + " 다려 접습니다.";
    }

    @Override
    public String lappedStitch(String edge, String stitch) {
        return Particles.fitted("보이는 접은 선에서 " + edge + " 안쪽을 땀 길이 " + stitch + "(으)로 눌러 박습니다. 뒤집어 다른 접은 선도 박습니다. 양 끝은 되돌아박기를 합니다. 다립니다.");
    }

    @Override
    public String layAll(int n) {
        return "조각 " + n + "개를 모두 앞면 그림처럼 놓고 조각표를 붙여 둡니다.";
    }

    @Override
    public String layBars() {
        return "중심 조각이 한가운데입니다. 띠의 이름은 둘레와 차례입니다. 2C는 둘째 둘레의 셋째 띠이고, 2C·1은 그 띠의 첫 부분입니다.";
    }

    @Override
    public String layLetters() {
        return "글자 하나가 작은 일 하나입니다. 번호 차례로 먼저 A를 모두 잇고, 다음에 B를 모두 잇습니다. 글자마다 따로 쌓아 둡니다.";
    }

    @Override
    public String layLook() {
        return "물러서서 봅니다. 크기가 같은 두 조각을 바꿀 마지막 기회입니다.";
    }

    @Override
    public String layStack() {
        return "박을 차례대로 조각을 쌓고 첫 조각을 맨 위에 둡니다.";
    }

    @Override
    public String layTitle() {
        return "모두 펼쳐 놓기";
    }

    @Override
    public String layWork() {
        return "아래 단계에서 \"작업물\"은 그때까지 이은 전체입니다.";
    }

    @Override
    public String lessThan(String length) {
        return length + " 미만";
    }

    @Override
    public String nameBar(String label) {
        return "띠 " + label;
    }

    @Override
    public String nameBlock(String letters) {
        return "묶음 " + letters;
    }

    @Override
    public String nameFree(String label) {
        return "조각 " + label;
    }

    @Override
    public String nameHearth() {
        return "중심 조각";
    }

    @Override
    public String nameJoined(String label) {
        return "이어 붙인 띠 " + label;
    }

    @Override
    public String nameOffcut(String number) {
        return "남은 천 " + number;
    }

    @Override
    public String namePair(String from, String to) {
        return "짝 " + from + "·" + to;
    }

    @Override
    public String namePart(String label) {
        return "부분 " + label;
    }

    @Override
    public String namePartTo(String from, String to) {
        return "부분 " + from + "~" + to;
    }

    @Override
    public String namePatch(String label) {
        return "조각 " + label;
    }

    @Override
    public String namePiece(String label) {
        return "천 " + label;
    }

    @Override
    public String nameScrap() {
        return "쓰기에 너무 작은 자투리";
    }

    @Override
    public String nameStepBlock(String step) {
        return step + "단계의 묶음";
    }

    @Override
    public String nameStrip(String label) {
        return "긴 천 " + label;
    }

    @Override
    public String nameThePiece() {
        return "천";
    }

    @Override
    public String nameWork() {
        return "작업물";
    }

    @Override
    public String nameWorkTo(String from, String to) {
        return "작업물 " + from + "~" + to;
    }

    @Override
    public String needPiece(String piece, String size) {
        return "천 " + piece + ", " + size;
    }

    @Override
    public String needPieceDone(String piece, String size) {
        return "천 " + piece + ", " + size + ", 재단함";
    }

    @Override
    public String seamCheck(String size, String what) {
        return "이제 " + (what.equals("bar") ? "띠" : "작업물") + "의 크기는 " + size + "이어야 합니다(너비 × 높이, 앞면이 위).";
    }

    @Override
    public String seamEdgestitch(String edge, int plies) {
        return "접은 선에서 " + edge + " 안쪽을 " + (plies == 4 ? "네" : "" + plies) + " 겹 모두 꿰어 눌러 박습니다. 양 끝은 되돌아박기를 합니다. 다립니다.";
    }

    @Override
    public String seamEven() {
        return "두 변을 맞춥니다. 시침핀을 꽂습니다.";
    }

    @Override
    public String seamFold(String band, String under, String wrapped, String wrapping) {
        return wrapping + "의 시접 끝을 " + under + " 접어 넣어 " + wrapped + "의 시접 끝을 감쌉니다. 접은 선은 박은 선에서 " + band + "입니다. 다리고 시침핀을 꽂습니다.";
    }

    @Override
    public String seamLay(String added, String face, String part, String side, String work) {
        return Particles.fitted(work + "을(를) " + (face.equals("front") ? "앞면" : "뒷면") + "이 위로 오게 놓습니다. " + added + "을(를) " + (side.equals("left") ? "책장 넘기듯" : side.equals("right") ? "책장 넘기듯" : side.equals("top") ? "아래로 젖혀" : "위로 젖혀") + " 그 위에 " + (face.equals("front") ? "앞면" : "뒷면") + "이 아래로 가게 얹어 " + work + "의 " + (side.equals("left") ? "왼쪽" : side.equals("right") ? "오른쪽" : side.equals("top") ? "위쪽" : "아래쪽") + " " + (part.equals("end") ? "끝" : "변") + "에 맞춥니다.");
    }

    @Override
    public String seamLevel(String start) {
        return (start.equals("left") ? "왼쪽" : start.equals("right") ? "오른쪽" : start.equals("top") ? "위쪽" : "아래쪽") + " 끝을 맞춥니다.";
    }

    @Override
    public String seamOffset(String length, String wrapped, String wrapping) {
        return wrapping + "의 변을 " + wrapped + "의 변보다 " + length + " 나오게 합니다. 이 넓은 시접이 다른 시접을 감쌉니다. 시침핀을 꽂습니다.";
    }

    @Override
    public String seamOpen(String face, String wrapped, String wrapping) {
        return "솔기를 " + (face.equals("front") ? "앞면" : "뒷면") + "이 위로 오게 펼칩니다. 두 시접을 " + wrapped + " 쪽으로 다려 눕힙니다. " + wrapping + "의 넓은 시접이 위에 옵니다.";
    }

    @Override
    public String seamOpenEven(String face, String wrapped, String wrapping) {
        return "솔기를 " + (face.equals("front") ? "앞면" : "뒷면") + "이 위로 오게 펼칩니다. 두 시접을 " + wrapped + " 쪽으로 다려 눕힙니다. " + wrapping + "의 시접이 위에 옵니다.";
    }

    @Override
    public String seamRunsPast(String added, String end, String length) {
        return Particles.fitted(added + "은(는) " + length + " 길게 잘라서 " + (end.equals("left") ? "왼쪽" : end.equals("right") ? "오른쪽" : end.equals("top") ? "위쪽" : "아래쪽") + "으로 나옵니다.");
    }

    @Override
    public String seamStitch(String added, String stitch, String top) {
        return Particles.fitted("위에 놓인 " + added + "의 변에서 " + top + " 되는 곳을 땀 길이 " + stitch + "(으)로 박습니다. 양 끝은 되돌아박기를 합니다.");
    }

    @Override
    public String seamStitchBoth(String added, String below, String stitch, String top, String work) {
        return Particles.fitted("위에 놓인 " + added + "의 변에서 " + top + " 되는 곳을 땀 길이 " + stitch + "(으)로 박습니다. 아래 " + work + "의 변에서는 " + below + "입니다. 양 끝은 되돌아박기를 합니다.");
    }

    @Override
    public String seamThickAt(String end, String places) {
        return (end.equals("top") ? "위에서" : "왼쪽에서") + " " + places;
    }

    @Override
    public String seamTrimAllowance(String length, String wrapped) {
        return Particles.fitted(wrapped + "의 시접을 " + length + "(으)로 자릅니다.");
    }

    @Override
    public String seamTrimEdge(String across, String added, String length, String way) {
        return added + "의 바깥 변을 " + length + " 곧게 잘라 냅니다. 그러면 작업물의 " + (way.equals("wide") ? "너비" : "높이") + "는 " + across + "입니다.";
    }

    @Override
    public String seamTrimEnd(String added, String work) {
        return added + "의 끝을 " + work + "에 맞추어 자릅니다.";
    }

    @Override
    public String seamWarning(String end, String places, String plies) {
        return (end.equals("top") ? "위 끝에서" : "왼쪽 끝에서(앞면에서 볼 때)") + " 약 " + places + " 되는 곳이 두껍습니다. 솔기가 다른 솔기와 엇갈려 " + plies + "겹까지 됩니다. 천천히 박거나 손바퀴를 돌립니다.";
    }

    @Override
    public String thickAt(String places) {
        return "두꺼운 곳: " + places;
    }

    @Override
    public String thickBand(String plies) {
        return "보통 솔기는 " + plies + "겹입니다.";
    }

    @Override
    public String thickFoot() {
        return "거기에 이르면 접은 자투리를 노루발 뒤에 괴어 수평을 맞춥니다. 땀을 조금 길게 하고 손바퀴를 돌립니다. 천을 밀거나 당기지 않습니다. 바늘이 휩니다.";
    }

    @Override
    public String thickHem() {
        return "솔기가 들어오는 곳이 두껍습니다";
    }

    @Override
    public String thickPlace(String height, int n, String plies) {
        return "" + plies + "겹까지 되는 곳 " + n + "군데, 두께 약 " + height + ".";
    }

    @Override
    public String thickPress() {
        return "두꺼운 곳을 박기 전에 스팀으로 힘주어 다립니다. 또는 자투리를 덮고 망치로 두드려 납작하게 합니다.";
    }

    @Override
    public String threadHand(String percent, String ply, String stitch, String tail, String total) {
        return Particles.fitted("모두 약 " + total + "입니다. 땀 길이를 " + stitch + "(으)로 맞춥니다. 두께 " + ply + "의 천에 줄마다 양 끝의 실 " + tail + ", 여유 " + percent + "을(를) 셈했습니다.");
    }

    @Override
    public String threadMachine(String each, String percent, String ply, String stitch, String tail, String total) {
        return Particles.fitted("모두 약 " + total + "입니다. 그 반인 " + each + "을(를) 북실로 감습니다. 땀 길이를 " + stitch + "(으)로 맞춥니다. 두께 " + ply + "의 천에 줄마다 양 끝의 실 " + tail + ", 여유 " + percent + "을(를) 셈했습니다.");
    }

    @Override
    public String titleJoin(String added, String work) {
        return Particles.fitted(added + "을(를) " + work + "에 잇기");
    }

    @Override
    public String titleSeam(String added, String side, String work) {
        return work + "의 " + (side.equals("left") ? "왼쪽" : side.equals("right") ? "오른쪽" : side.equals("top") ? "위쪽" : "아래쪽") + "에 " + added;
    }

    @Override
    public String toolCutter() {
        return "로터리 커터, 자, 재단판 또는 가위, 자, 초크";
    }

    @Override
    public String toolHand() {
        return "가는 손바늘과 단에 쓸 재봉틀";
    }

    @Override
    public String toolIron() {
        return "다리미와 다리미판, 물 조금이나 분무기";
    }

    @Override
    public String toolMachine(String needle) {
        return "새 바늘을 끼운 재봉틀, 바늘 " + needle + "호";
    }

    @Override
    public String toolPins() {
        return "시침핀이나 집게, 실뜯개, 작은 가위";
    }

    @Override
    public String toolSlips() {
        return "조각표나 작은 종이, 하나마다 시침핀 하나";
    }

    @Override
    public String toolThread() {
        return "실(이 안내의 \"실\"을 보세요)";
    }

    @Override
    public String touchBoth(String added, String ofAdded, String ofWork, String work) {
        return added + "의 " + (ofAdded.equals("right") ? "겉" : "안") + "과 " + work + "의 " + (ofWork.equals("right") ? "겉" : "안") + "을 마주 댑니다.";
    }

    @Override
    public String touchFacing(String one, String other, String side) {
        return one + "의 " + (side.equals("right") ? "겉" : "안") + "이 " + other + " 쪽을 향합니다.";
    }

    @Override
    public String touchLayBoth(String added, String ofAdded, String ofWork, String work) {
        return added + "의 " + (ofAdded.equals("right") ? "겉" : "안") + "과 " + work + "의 " + (ofWork.equals("right") ? "겉" : "안") + "을 마주 댑니다.";
    }

    @Override
    public String touchLayFacing(String one, String other, String side) {
        return one + "의 " + (side.equals("right") ? "겉" : "안") + "이 " + other + " 쪽을 향합니다.";
    }

    @Override
    public String touchLayMixed() {
        return "그림처럼 어떤 조각은 겉이 안으로, 어떤 조각은 안이 안으로 갑니다.";
    }

    @Override
    public String touchLayTogether(String side) {
        return (side.equals("right") ? "겉끼리 마주 댑니다." : "안끼리 마주 댑니다.");
    }

    @Override
    public String touchMixed() {
        return "그림처럼 어떤 조각은 겉이 안으로, 어떤 조각은 안이 안으로 갑니다.";
    }

    @Override
    public String touchTogether(String side) {
        return (side.equals("right") ? "겉끼리 마주 댑니다." : "안끼리 마주 댑니다.");
    }

    @Override
    public String trialCheck(String size) {
        return "이은 크기는 " + size + "이어야 합니다. 먼저 솔기를 가로질러 잽니다.";
    }

    @Override
    public String trialCut(String side) {
        return "자투리 두 장을 " + side + " 정사각형으로 자르고 아래의 첫 솔기처럼 박습니다.";
    }

    @Override
    public String trialFells(String fells) {
        return "솔기는 모두 " + (fells.equals("front") ? "앞면" : "뒷면") + "으로 눕히고 " + (fells.equals("front") ? "뒷면" : "앞면") + "은 매끈합니다. 이것으로 앞뒤를 가립니다.";
    }

    @Override
    public String trialFree() {
        return "단계마다 잽니다. 여기서는 길게 자른 것이 없습니다. 올 한두 가닥 넘게 어긋나면 옆 조각과 맞지 않습니다.";
    }

    @Override
    public String trialLeeway(String leeway) {
        return "단계마다 잽니다. 띠는 모두 " + leeway + " 길게 잘랐으니 작은 차이는 괜찮습니다. 그보다 크면 뜯습니다.";
    }

    @Override
    public String trialLength(String loss, String narrow, String stitch, String wide) {
        return Particles.fitted("땀 길이를 " + stitch + "(으)로 맞춥니다. 솔기는 한쪽 변에서 " + narrow + ", 다른 쪽 변에서 " + wide + ", 모두 " + loss + "을(를) 씁니다.");
    }

    @Override
    public String trialTitle() {
        return "자투리 두 장으로 솔기 시험하기";
    }

    @Override
    public String trialWidth() {
        return "너무 좁으면 실 한 올만큼 가장자리에 가깝게 박습니다. 너무 넓으면 실 한 올만큼 안쪽으로 박습니다.";
    }

    @Override
    public String washAll() {
        return "천을 모두 빨았습니다.";
    }

    @Override
    public String washDye(String fabrics) {
        return "짙은 색은 옅은 색에 물들 수 있습니다. " + fabrics + "의 귀퉁이를 따뜻한 비눗물에 30분 담갔다가 젖은 채 흰 천에 누릅니다. 물이 들면 들지 않을 때까지 그 천만 따로 빨거나 쓰지 않습니다.";
    }

    @Override
    public String washMixed(String pieces, String which) {
        return "빤 천과 빨지 않은 천이 섞여 있습니다. " + (which.equals("washed") ? "빤 천" : "빨지 않은 천") + ": " + pieces + ".";
    }

    @Override
    public String washMixedThen(String length) {
        return "빨지 않은 천을 먼저 빨고 다시 잽니다. 이 보자기의 한 변에서 다른 천보다 약 " + length + " 더 줄어 보자기가 울 수 있습니다.";
    }

    @Override
    public String washNone() {
        return "빤 천이 없습니다. 완성한 보자기를 빨 방법으로 지금 모두 빨고 다시 잽니다. 줄었으면 다시 계획합니다. 아니면 모두 빨지 않습니다.";
    }

    @Override
    public String washNoneSaid() {
        return "천 목록에는 빤 천이 없습니다. 완성한 보자기를 빨 방법으로 지금 모두 빨고 다시 잽니다. 줄었으면 다시 계획합니다. 아니면 모두 빨지 않습니다.";
    }

    @Override
    public String washSomeUnknown(int n, String pieces) {
        return "빨았는지 천 목록에 없습니다: " + pieces + ". 확실하지 않으면 빱니다.";
    }

    @Override
    public String washUnknown() {
        return "무엇을 빨았는지 천 목록에 없습니다. 완성한 보자기를 빨 방법으로 모두 빨고 다시 잽니다. 줄었으면 다시 계획합니다. 아니면 모두 빨지 않습니다.";
    }

    @Override
    public String washingAlone() {
        return "완성한 보자기는 처음에 따로 빱니다. 가장 여린 천에 맞추어 살살 빱니다. 확실하지 않으면 찬물에 손으로 빱니다.";
    }

    @Override
    public String washingSquare(String face) {
        return "젖었을 때 반듯하게 당겨 뉘어 말립니다. 다 마르기 전에 " + (face.equals("front") ? "앞면" : "뒷면") + "을 다립니다.";
    }

    @Override
    public String whipOpen(String face) {
        return "솔기를 펼쳐 다립니다. 시접은 " + (face.equals("front") ? "앞면" : "뒷면") + "에 남습니다.";
    }

    @Override
    public String whipPress(String face, String narrow, String wide, String wrapped, String wrapping) {
        return wrapping + "의 변을 " + wide + ", " + wrapped + "의 변을 " + narrow + " " + (face.equals("front") ? "앞면" : "뒷면") + "으로 다려 접습니다.";
    }

    @Override
    public String whipSew() {
        return "접은 두 변을 맞춥니다. 약 1 mm 간격으로 손으로 감침질합니다. 땀마다 두 변의 올을 한두 가닥 뜹니다.";
    }
}
