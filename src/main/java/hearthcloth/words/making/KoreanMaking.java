package hearthcloth.words.making;

import hearthcloth.words.korean.Particles;

/** The room of making in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanMaking implements MakingWords {

    @Override
    public String amissBar(String bar) {
        return Particles.fitted("띠 " + bar + "이(가) 너무 짧음: 끝까지 잰 길이");
    }

    @Override
    public String amissBarNoWay(String told) {
        return told + " 지금 있는 것으로 이어 갈 방법을 찾지 못했습니다. 천을 더 넣거나, 마지막 띠를 뜯고 다른 띠를 박으세요.";
    }

    @Override
    public String amissBarPage() {
        return "띠가 너무 짧습니다";
    }

    @Override
    public String amissBarSewn(String bar) {
        return Particles.fitted("띠 " + bar + "은(는) 이미 박았습니다. 먼저 뜯으세요.");
    }

    @Override
    public String amissBarTold(String bar, String measured, String planned) {
        return "띠 " + bar + "의 길이는 " + measured + ", 계획은 " + planned + "이었습니다.";
    }

    @Override
    public String amissRedo() {
        return "이 단계를 다시 해야 함";
    }

    @Override
    public String amissTitle() {
        return "뭔가 잘못됨";
    }

    @Override
    public String back() {
        return "뒤로";
    }

    @Override
    public String care() {
        return "조심할 것";
    }

    @Override
    public String caution(String topic, String words) {
        return topic + ": " + words;
    }

    @Override
    public String cutAgain() {
        return "천이 다시 천 목록에 있고 재단 표시도 그대로입니다.";
    }

    @Override
    public String cutAlready() {
        return "이 보자기는 이미 잘랐습니다.";
    }

    @Override
    public String cutAmiss() {
        return "계획대로 자를 수 없습니다. 무엇이 문제인지 아래에 있습니다.";
    }

    @Override
    public String cutChanged() {
        return "자른 뒤에 바뀐 것이 있습니다. 먼저 보자기 화면의 실행 취소로 되돌리세요.";
    }

    @Override
    public String cutGone() {
        return "이 재단은 이제 계획에 없습니다. 화면을 다시 불러오세요.";
    }

    @Override
    public String cutIsCut(int n) {
        return "잘랐습니다. 남은 천 " + n + "장이 천 목록에 돌아왔습니다.";
    }

    @Override
    public String cutNone() {
        return "그런 재단은 없습니다.";
    }

    @Override
    public String cutPieceGone() {
        return "이 천은 이제 계획에 없습니다. 화면을 다시 불러오세요.";
    }

    @Override
    public String cutTicked(int n) {
        return "재단 " + n + "번에 표시가 있습니다.";
    }

    @Override
    public String cutTitle(String cloth) {
        return "재단: " + cloth;
    }

    @Override
    public String cutWhich() {
        return "어느 보자기를 자를까요?";
    }

    @Override
    public String done() {
        return "다 했음";
    }

    @Override
    public String height() {
        return "높이";
    }

    @Override
    public String keys() {
        return "스페이스나 Page Down은 다 했음, Page Up은 뒤로. 발 스위치도 이 키를 보냅니다.";
    }

    @Override
    public String length() {
        return "길이";
    }

    @Override
    public String listed(String before, String last) {
        return before + ", " + last;
    }

    @Override
    public String lookAgain() {
        return "한 번 더 보세요";
    }

    @Override
    public String matAll() {
        return "모든 천";
    }

    @Override
    public String matAllAreCut() {
        return "천을 모두 잘랐습니다.";
    }

    @Override
    public String matAllDone(int n) {
        return (n == 2 ? "둘 다 잘랐음" : "" + n + "번 모두 잘랐음");
    }

    @Override
    public String matAllIsCut() {
        return "모두 잘랐음";
    }

    @Override
    public String matAsItIs() {
        return "통째로 씁니다. 자를 것이 없습니다.";
    }

    @Override
    public String matClothIsCut() {
        return "이 보자기는 다 잘랐습니다.";
    }

    @Override
    public String matCount(String all, String done) {
        return done + "/" + all;
    }

    @Override
    public String matCounted() {
        return "자른 천";
    }

    @Override
    public String matCutOf(String all, String n) {
        return "재단 " + n + "/" + all;
    }

    @Override
    public String matDescribed(String fabric, String size) {
        return fabric + ", " + size;
    }

    @Override
    public String matGives(String gives) {
        return "나오는 것: " + gives + ".";
    }

    @Override
    public String matLeave() {
        return "자른 천은 천 목록에서 빠지고 남은 천이 돌아옵니다.";
    }

    @Override
    public String matMore() {
        return "잘못됐나요? 더 보기";
    }

    @Override
    public String matNextPiece() {
        return "다음 천";
    }

    @Override
    public String matNow(String measure, String n) {
        return "재단 " + n + ": " + measure + ".";
    }

    @Override
    public String matOff(String side) {
        return Particles.fitted((side.equals("left") ? "왼쪽" : side.equals("right") ? "오른쪽" : side.equals("top") ? "위쪽" : "아래쪽") + "을(를) 잘라 냄");
    }

    @Override
    public String matPicture() {
        return "재단 그림";
    }

    @Override
    public String matPiece(String done, String n, String words) {
        return "천 " + n + ", " + words + (done.equals("yes") ? ", 잘랐음" : "");
    }

    @Override
    public String matPieceIsCut() {
        return "이 천은 다 잘랐습니다.";
    }

    @Override
    public String matPin() {
        return "조각표를 꽂으세요.";
    }

    @Override
    public String matPrintSlips() {
        return "조각표 모두 인쇄";
    }

    @Override
    public String matProgress(String all, String done, String n) {
        return "천 " + all + "장 가운데 " + n + "째, " + done + "장 끝남.";
    }

    @Override
    public String matSew() {
        return "박으러 가기";
    }

    @Override
    public String matShown(String n, String words) {
        return "천 " + n + ": " + words;
    }

    @Override
    public String measureAgain() {
        return "돌아가서 다시 재기";
    }

    @Override
    public String measuredBefore() {
        return "앞 단계가 아직 끝나지 않았습니다.";
    }

    @Override
    public String measuredCrooked(String by, String trim) {
        return Particles.fitted("한쪽 끝이 다른 쪽보다 " + by + " 깁니다. 먼저 반듯하게 맞추어 " + trim + "(으)로 자르고 다시 재세요.");
    }

    @Override
    public String measuredFar(String planned, String written) {
        return Particles.fitted(written + "은(는) 계획한 " + planned + "과(와) 많이 다릅니다. 한 번 더 재세요.");
    }

    @Override
    public String measuredFarMeant(String meant, String planned, String written) {
        return Particles.fitted(written + "은(는) 계획한 " + planned + "과(와) 많이 다릅니다. " + meant + "인가요?");
    }

    @Override
    public String measuredIsIt(String meant) {
        return meant + "인가요?";
    }

    @Override
    public String measuredIsRight() {
        return "맞나요?";
    }

    @Override
    public String measuredOtherStep() {
        return "띠를 박은 뒤에 잽니다. 이 단계는 다른 단계입니다.";
    }

    @Override
    public String measuredScraps() {
        return "자투리 보자기에는 새로 자를 띠가 없습니다. 올 한두 가닥 넘게 어긋난 솔기는 뜯으세요.";
    }

    @Override
    public String measuredSquare() {
        return "먼저 반듯하게 맞추기";
    }

    @Override
    public String measuredSwapped() {
        return "가로세로가 바뀌었나요?";
    }

    @Override
    public String measuredSwappedHow(String planned, String size) {
        return Particles.fitted(size + "은(는) 가로세로가 바뀌었습니다. 약 " + planned + "이어야 합니다. 앞면을 위로 하고 너비를 먼저 적습니다.");
    }

    @Override
    public String measuredTitle() {
        return "잰 크기";
    }

    @Override
    public String measuredTold(String across, String both, String height, String size, String up, String width) {
        return "크기는 " + size + "입니다. 계획보다 " + (across.equals("less") ? "너비가 " + width + " 좁" + (up.equals("same") ? "습니다" : "고") : across.equals("more") ? "너비가 " + width + " 넓" + (up.equals("same") ? "습니다" : "고") : "") + (both.equals("yes") ? " " : "") + (up.equals("less") ? "높이가 " + height + " 낮습니다" : up.equals("more") ? "높이가 " + height + " 높습니다" : "") + ".";
    }

    @Override
    public String measuredTooMany(String written) {
        return "“" + written + "”에는 치수가 둘보다 많습니다. 하나만 적거나 양 끝을 적으세요.";
    }

    @Override
    public String more() {
        return "더 보기";
    }

    @Override
    public String printGuide() {
        return "인쇄할 전체 안내";
    }

    @Override
    public String printPage() {
        return "이 화면 인쇄";
    }

    @Override
    public String sewAsPlanned() {
        return "계획대로입니다. 이어서 박으세요.";
    }

    @Override
    public String sewAsleep() {
        return "그동안 이 기기의 화면이 꺼질 수 있습니다. 화면이 켜져 있게 설정하세요.";
    }

    @Override
    public String sewBackToCut() {
        return "자르기로 돌아가기";
    }

    @Override
    public String sewDiffers() {
        return "내 것은 다름";
    }

    @Override
    public String sewFinish() {
        return "다 박았음: 사진과 이름표";
    }

    @Override
    public String sewFollows() {
        return "어떻게 되는지 보기";
    }

    @Override
    public String sewHours(String hours, String minutes) {
        return hours + "시간 " + minutes + "분";
    }

    @Override
    public String sewHow() {
        return "방법은?";
    }

    @Override
    public String sewHowLabel() {
        return "하는 방법";
    }

    @Override
    public String sewLookOnly() {
        return "모두 자를 때까지는 볼 수만 있습니다.";
    }

    @Override
    public String sewMeasureHow(String unit) {
        return "솔기를 박은 뒤에 잽니다. 수 하나면 됩니다. 재단 끝까지 모두 재세요. 양 끝이 다르면 둘 다 적으세요. 예: " + (unit.equals("in") ? "12 1/8 ; 12 3/8" : "31.2 ; 31.7") + ".";
    }

    @Override
    public String sewMeasures() {
        return "이제 크기는";
    }

    @Override
    public String sewMeasuresHow() {
        return "너비 × 높이, 앞면이 위";
    }

    @Override
    public String sewMinutes(String minutes) {
        return minutes + "분";
    }

    @Override
    public String sewNext() {
        return "다음";
    }

    @Override
    public String sewNoStep() {
        return "그런 단계는 없습니다. 화면을 다시 불러오세요.";
    }

    @Override
    public String sewNotCut() {
        return "이 보자기는 아직 다 자르지 않았습니다. 먼저 재단에 표시하고 “모두 잘랐음”을 누르세요.";
    }

    @Override
    public String sewPace(String time) {
        return "지금까지의 빠르기로 약 " + time + " 남았습니다.";
    }

    @Override
    public String sewPlanned() {
        return "다시 계획했습니다. 이어서 박으세요.";
    }

    @Override
    public String sewPlannedCut() {
        return "다시 계획했습니다. 먼저 이것을 자르고 이어서 박으세요.";
    }

    @Override
    public String sewProgress(String all, String done, String n) {
        return all + "단계 가운데 " + n + "단계" + (done.equals("yes") ? ", 끝남" : "");
    }

    @Override
    public String sewRead() {
        return "소리 내어 읽기";
    }

    @Override
    public String sewSaid(String progress, String title) {
        return progress + ". " + title;
    }

    @Override
    public String sewThick(String where) {
        return where + ". 거기서는 천천히 하세요.";
    }

    @Override
    public String sewTitle(String cloth) {
        return "바느질: " + cloth;
    }

    @Override
    public String sewToCut() {
        return "자르기로";
    }

    @Override
    public String sewToNow() {
        return "지금 단계로";
    }

    @Override
    public String sewWhich() {
        return "어느 보자기를 박을까요?";
    }

    @Override
    public String sewWhole(String all, String done) {
        return "보자기 전체: " + all + "단계 가운데 " + done + "단계가 끝났습니다";
    }

    @Override
    public String sewYes() {
        return "네, 맞습니다";
    }

    @Override
    public String showWays() {
        return "이어 갈 방법 보기";
    }

    @Override
    public String sideAlike() {
        return "이 천은 양면이 같아 보입니다. 이어서 박으세요.";
    }

    @Override
    public String sideCannot() {
        return "그럴 수 없습니다. 그러면 잘라 둔 나머지 띠가 작업물에 맞지 않습니다.";
    }

    @Override
    public String sideFrayed() {
        return "뜯으면 가장자리의 올이 풀려 조금 줄어듭니다. 박은 뒤에 다시 재세요.";
    }

    @Override
    public String sideGoBack() {
        return "뜯고 돌아가기";
    }

    @Override
    public String sideLead(String bar, String wrong) {
        return "띠 " + bar + ": " + (wrong.equals("face") ? "안이 위로 왔습니다" : "작업물의 다른 쪽에 박았습니다") + ". 어떻게 할까요?";
    }

    @Override
    public String sideLeave() {
        return "그대로 두기";
    }

    @Override
    public String sideLeft() {
        return "이제부터 그림에 그렇게 나옵니다.";
    }

    @Override
    public String sideLooks() {
        return "그러면 앞면이 이렇게 됩니다. 자르거나 뜯을 것이 없습니다.";
    }

    @Override
    public String sideNoBar() {
        return "이 단계에서는 띠를 박지 않습니다. 띠를 박은 단계를 고르세요.";
    }

    @Override
    public String sideNoFit() {
        return "그러면 나머지 띠가 맞지 않습니다. 뜯으세요.";
    }

    @Override
    public String sideNotSewn() {
        return "이 단계는 아직 박지 않았습니다.";
    }

    @Override
    public String sidePage() {
        return "잘못 박음";
    }

    @Override
    public String sidePicture(String bar, String wrong) {
        return "앞면, 띠 " + bar + ": " + (wrong.equals("face") ? "다른 면이 위" : "작업물의 다른 쪽");
    }

    @Override
    public String sideRight() {
        return "돌아가기, 맞게 놓였음";
    }

    @Override
    public String sideSteps(int n) {
        return "그 띠까지 가려면 " + n + "단계를 마지막부터 뜯고 다시 합니다.";
    }

    @Override
    public String sideUnpick() {
        return "뜯기";
    }

    @Override
    public String sideWrong(String bar, String wrong) {
        return "띠 " + bar + ": " + (wrong.equals("face") ? "안이 위로 왔음" : "작업물의 다른 쪽에 박았음");
    }

    @Override
    public String smallAcross() {
        return "가로";
    }

    @Override
    public String smallAllCut() {
        return "이 천의 조각은 모두 잘랐습니다. 잘못 자른 곳의 표시를 지우세요.";
    }

    @Override
    public String smallDown() {
        return "위에서 아래로";
    }

    @Override
    public String smallHow() {
        return "이 천에서 맞게 자른 곳에 표시하세요. 그림에 놓인 대로 다음 조각을 재면 얼마인가요?";
    }

    @Override
    public String smallLarger() {
        return "남은 것이 처음 천보다 클 수 없습니다. 두 변을 확인하세요.";
    }

    @Override
    public String smallNoWay() {
        return "지금 있는 것으로 이어 갈 방법을 찾지 못했습니다.";
    }

    @Override
    public String smallPage() {
        return "너무 작게 나왔습니다";
    }

    @Override
    public String smallTitle() {
        return "조각이 너무 작게 나옴";
    }

    @Override
    public String smallWrite() {
        return "지금 조각의 가로와 세로를 적으세요.";
    }

    @Override
    public String waysAfterCut(String way) {
        return (way.equals("WIDER_NEIGHBOURS") ? "그대로 쓰고 옆의 띠를 넓게 자르기" : way.equals("ANOTHER_PIECE") ? "다시 자르기" : way.equals("JOINED_STRIP") ? "긴 천을 이어 붙이기" : "그대로 쓰고 보자기를 작게 하기");
    }

    @Override
    public String waysCut(String told) {
        return told + " 자른 것은 그대로 둡니다. 어떻게 이어 갈까요?";
    }

    @Override
    public String waysGone() {
        return "그런 방법은 없습니다. 다시 재세요.";
    }

    @Override
    public String waysLacking() {
        return "남은 천이 모자랍니다.";
    }

    @Override
    public String waysMeasured(String way) {
        return (way.equals("accept") ? "그대로 이어서 박기" : way.equals("keep") ? "크기를 지키기: 남은 띠를 새로 자르기" : "좁은 둘레를 더하기");
    }

    @Override
    public String waysNoCut() {
        return "잘라 둔 띠는 모두 길이가 넉넉합니다. 자를 것은 없고 다듬는 양만 조금 달라집니다.";
    }

    @Override
    public String waysPicture(String size) {
        return "그때의 보자기, " + size;
    }

    @Override
    public String waysSewn(String told) {
        return told + " 박은 것은 그대로 둡니다. 어떻게 이어 갈까요?";
    }

    @Override
    public String waysShortBar(String way) {
        return (way.equals("JOINED_STRIP") ? "긴 천을 이어 붙이기" : way.equals("ANEW") ? "띠를 새로 만들기" : way.equals("PIECED") ? "띠를 이어서 새로 만들기" : "그대로 쓰고 작업물을 거기에 맞추어 자르기");
    }

    @Override
    public String waysSize(String size) {
        return Particles.fitted("보자기는 " + size + "이(가) 됩니다.");
    }

    @Override
    public String waysSizeLabel() {
        return "보자기 크기";
    }

    @Override
    public String waysThis() {
        return "이렇게 하기";
    }

    @Override
    public String waysTies(String gift, String tie) {
        return Particles.fitted(tie + "(으)로 이만한 것을 묶습니다: " + gift + ".");
    }

    @Override
    public String waysToCut(String bars, int n, int pieces) {
        return "지금 자를 것: " + "띠" + " " + bars + ", 천 " + "" + pieces + "장" + "에서.";
    }

    @Override
    public String width() {
        return "너비";
    }

    @Override
    public String wrongAllUsed() {
        return "잘라 둔 조각은 모두 그대로 씁니다.";
    }

    @Override
    public String wrongChange() {
        return "띠나 너비를 바꾸세요.";
    }

    @Override
    public String wrongFewerJoins(int n) {
        return "이음이 " + "" + n + "개" + " 줄어듭니다.";
    }

    @Override
    public String wrongHow() {
        return "못 쓰게 된 곳의 표시를 지우세요. 표시된 조각은 그대로 두고 나머지를 다시 계획합니다. 이 천에서 아직 자를 수 있는 가장 큰 부분의 크기는 얼마인가요? 남은 것이 없으면 둘 다 비워 두세요.";
    }

    @Override
    public String wrongLateLacking(String why) {
        return "아직 자를 것에 쓸 천이 모자랍니다. " + why + " 천을 더 넣고 다시 알려 주세요.";
    }

    @Override
    public String wrongLatePlanned() {
        return "남은 천으로 다시 계획했습니다. 박은 것과 자른 것은 그대로입니다.";
    }

    @Override
    public String wrongMoreJoins(int n) {
        return "이음이 " + "" + n + "개" + " 늘어납니다.";
    }

    @Override
    public String wrongPlan() {
        return "나머지 다시 계획";
    }

    @Override
    public String wrongPlanned() {
        return "남은 천으로 다시 계획했습니다.";
    }

    @Override
    public String wrongSameJoins() {
        return "이음 수는 전과 같습니다.";
    }

    @Override
    public String wrongScraps() {
        return "자투리 보자기는 실수 뒤에 다시 계획하지 않습니다. 재단 크기 이상의 다른 자투리에서 조각을 자르거나, 남은 천으로 새 제안을 찾으세요.";
    }

    @Override
    public String wrongSomeUsed(int n, int used) {
        return "잘라 둔 조각 " + "" + n + "장" + " 가운데 " + "" + used + "장" + "을 그대로 씁니다.";
    }

    @Override
    public String wrongTitle() {
        return "잘못 잘랐어요";
    }
}
