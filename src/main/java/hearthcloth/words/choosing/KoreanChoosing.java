package hearthcloth.words.choosing;

import hearthcloth.words.korean.Particles;

/** The room of choosing in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanChoosing implements ChoosingWords {

    @Override
    public String chipBars(String bars, String width) {
        return (bars.equals("narrow") ? "좁게, 재단 " + width : "넓게, 재단 " + width);
    }

    @Override
    public String chipKind(String kind) {
        return (kind.equals("hearth") ? "중심 조각:" : kind.equals("show") ? "보일 천:" : kind.equals("only") ? "이것만:" : kind.equals("without") ? "빼기:" : kind.equals("first") ? "먼저:" : kind.equals("scheme") ? "색:" : kind.equals("with") ? "섞기:" : kind.equals("contrast") ? "대비:" : kind.equals("bars") ? "띠:" : "");
    }

    @Override
    public String chipNeeds(String what) {
        return "필요한 것: " + what;
    }

    @Override
    public String chipNoGift() {
        return "아직 선물이 없음";
    }

    @Override
    public String chipNoPiece() {
        return "충분히 큰 천이 없음";
    }

    @Override
    public String chipNotTogether() {
        return "첫째와 함께 찾지 못함";
    }

    @Override
    public String chipQuick() {
        return "솔기가 적은 것부터";
    }

    @Override
    public String chooseNone() {
        return "아직 보자기가 없습니다.";
    }

    @Override
    public String chooseSee() {
        return "가진 천으로 만들 수 있는 것 보기";
    }

    @Override
    public String contrast(String contrast) {
        return (contrast.equals("most") ? "대비를 가장 크게" : contrast.equals("reads") ? "통나무집 무늬가 읽히게" : contrast.equals("easy") ? "둘 사이" : contrast.equals("quiet") ? "가장 차분하게" : "한 바탕으로 녹아들게");
    }

    @Override
    public String countPieces(int n, String name) {
        return "" + name + ", 천 " + n + "장";
    }

    @Override
    public String foundBack() {
        return "모두 보기로";
    }

    @Override
    public String foundBackFace() {
        return "뒷면";
    }

    @Override
    public String foundBeside() {
        return "나란히";
    }

    @Override
    public String foundCannot() {
        return "가진 천으로는 만들 수 없습니다.";
    }

    @Override
    public String foundFailed() {
        return "이 천으로는 찾다가 막혔습니다. 바라는 것을 바꾸고 다시 찾으세요.";
    }

    @Override
    public String foundFigures(int joins, String lost, String patches) {
        return (joins == 0 ? "" + patches + " · 이음 없음 · 버림 " + lost : "" + patches + " · 이음 " + joins + "곳 · 버림 " + lost);
    }

    @Override
    public String foundFiguresFree(String lost, String patches) {
        return patches + " · 버림 " + lost;
    }

    @Override
    public String foundFront(String size, String title) {
        return "앞면: " + title + ", " + size;
    }

    @Override
    public String foundGone() {
        return "그 제안은 이제 없습니다. 지금은 이것들입니다.";
    }

    @Override
    public String foundJoins(String joins) {
        return "이음: " + joins + ".";
    }

    @Override
    public String foundKept() {
        return "보자기로 저장했습니다.";
    }

    @Override
    public String foundKeptTap() {
        return "보자기로 저장했습니다. 띠를 누르면 바꿀 수 있습니다.";
    }

    @Override
    public String foundLooking() {
        return "가진 천을 살펴보는 중";
    }

    @Override
    public String foundMore() {
        return "네 개 더 보기";
    }

    @Override
    public String foundNearest() {
        return "만들 수 있는 것 중 가장 가까운 것입니다.";
    }

    @Override
    public String foundNotYet() {
        return "가진 천으로 만드는 방법을 아직 찾지 못했습니다.";
    }

    @Override
    public String foundOneScale() {
        return "같은 축척으로 그렸습니다.";
    }

    @Override
    public String foundPatches(int n) {
        return "조각 " + n + "개";
    }

    @Override
    public String foundSoFar(int n) {
        return (n == 0 ? "찾는 중입니다." : "지금까지 " + n + "개, 더 찾는 중입니다.");
    }

    @Override
    public String foundStop() {
        return "그만 찾기";
    }

    @Override
    public String foundStopped() {
        return "멈췄습니다. 지금까지 가장 좋은 것을 보여 줍니다.";
    }

    @Override
    public String foundTake() {
        return "이것으로 하기";
    }

    @Override
    public String foundTakeNamed(String title) {
        return Particles.fitted(title + "(으)로 하기");
    }

    @Override
    public String galleryAddWish() {
        return "+ 바라기";
    }

    @Override
    public String galleryChange() {
        return "바꾸기";
    }

    @Override
    public String galleryDropWishes() {
        return "없이 시작하기";
    }

    @Override
    public String galleryEmpty() {
        return "작업대에 천을 올리세요";
    }

    @Override
    public String galleryEmptySays() {
        return "보자기는 가진 천으로 만드는데, 아직 하나도 없습니다.";
    }

    @Override
    public String galleryFor(String gift) {
        return "쌀 것: " + gift + ".";
    }

    @Override
    public String galleryKeepWishes() {
        return "그대로 하기";
    }

    @Override
    public String galleryKept() {
        return "저장한 보자기";
    }

    @Override
    public String galleryLarge() {
        return "천이 되는 데까지 크게.";
    }

    @Override
    public String galleryNoneLeft() {
        return "지금 바라는 대로라면 쓸 천이 남지 않습니다. 하나를 거두어 주세요.";
    }

    @Override
    public String gallerySayGift() {
        return "무엇을 쌀지 말하기";
    }

    @Override
    public String gallerySpent() {
        return "모든 천에 쓸 곳이 정해져 있습니다";
    }

    @Override
    public String galleryTakeBack(String kind, String wish) {
        return "빼기: " + kind + " " + wish;
    }

    @Override
    public String galleryTitle() {
        return "가진 천으로 만들 수 있는 것";
    }

    @Override
    public String galleryWaiting(String gift) {
        return gift + "에 바란 것이 있었습니다. 이번에도 그대로 할까요?";
    }

    @Override
    public String galleryWish() {
        return "바라는 것";
    }

    @Override
    public String giftCloth() {
        return "보자기 크기는 아는데 선물은 아직";
    }

    @Override
    public String giftClothExample(String unit) {
        return (unit.equals("metric") ? "90 또는 90 x 70" : "38 1/2 또는 38 x 30");
    }

    @Override
    public String giftClothSize(String unit) {
        return "크기, " + unit;
    }

    @Override
    public String giftHow() {
        return "어떻게 재나요?";
    }

    @Override
    public String giftHowSays(String unit) {
        return "놓일 모습 그대로 잽니다. 가장 긴 변, 그 옆의 변, 높이. 손잡이, 뚜껑, 리본까지 넣어 잽니다. 부드러운 것은 묶을 만큼 눌러서 잽니다. " + (unit.equals("metric") ? "30 또는 30.5처럼 적습니다." : "12, 12 1/2, 12.5처럼 적습니다. 30 cm처럼 센티미터도 됩니다.");
    }

    @Override
    public String giftKinds() {
        return "선물의 종류";
    }

    @Override
    public String giftPlanSize() {
        return "이 크기로 계획하기";
    }

    @Override
    public String giftRuler() {
        return "쓰시는 자";
    }

    @Override
    public String giftShow() {
        return "보기";
    }

    @Override
    public String giftType() {
        return "그림 위에 적습니다. 분수나 소수 모두 됩니다.";
    }

    @Override
    public String giftWhatTies() {
        return "무엇을 쌀 수 있나요?";
    }

    @Override
    public String heldKind() {
        return "물건의 종류";
    }

    @Override
    public String heldLargest() {
        return "쌀 수 있는 가장 큰 것";
    }

    @Override
    public String heldSmall() {
        return "이 묶는 법에는 너무 작음";
    }

    @Override
    public String heldTie() {
        return "묶는 법";
    }

    @Override
    public String heldTitle() {
        return "이 보자기로 쌀 수 있는 것";
    }

    @Override
    public String leftAside(int n) {
        return "따로 둔 천 " + n + "장";
    }

    @Override
    public String leftCloth(String cloth, int n) {
        return "" + cloth + "에 쓸 천 " + n + "장";
    }

    @Override
    public String leftMore(String before, String next) {
        return before + "; " + next;
    }

    @Override
    public String leftOut(String what) {
        return "뺀 것: " + what + ".";
    }

    @Override
    public String leftShared(String what) {
        return "함께 쓰는 것: " + what + ".";
    }

    @Override
    public String leftUnuse() {
        return "빼기";
    }

    @Override
    public String leftUse() {
        return "이것도 써서 찾기";
    }

    @Override
    public String lovedFile() {
        return "정원, 벽: PNG 또는 JPEG. 색만 저장합니다";
    }

    @Override
    public String lovedFind() {
        return "가장 가까운 천 찾기";
    }

    @Override
    public String lovedList() {
        return "사진의 색과 거기에 가장 가까운 가진 천";
    }

    @Override
    public String lovedNone() {
        return "이 사진의 색에 가까운 천이 없습니다. 아무 천이나 쓸 수 있습니다.";
    }

    @Override
    public String lovedNothing() {
        return "가까운 천 없음";
    }

    @Override
    public String lovedTitle() {
        return "좋아하는 사진의 색";
    }

    @Override
    public String nameNumber(String n, String title) {
        return title + " " + n;
    }

    @Override
    public String nameOf(String hearth, String most, String scheme) {
        return (scheme.equals("HALVES") ? "" + hearth + ", 반은 밝고 반은 어둡게" : scheme.equals("ROUNDS") ? "" + hearth + " 둘레의 고리" : scheme.equals("TURNS") ? "" + hearth + " 둘레의 밝음과 어두움" : scheme.equals("FIELD") ? "" + most + " 바탕에 " + hearth : scheme.equals("SPIRAL") ? "" + hearth + "에서 시작하는 소용돌이" : scheme.equals("SCATTERED") ? "여러 천 사이의 " + hearth : scheme.equals("GRADED") ? "" + hearth + "에서 어스름으로" : scheme.equals("FRAMES") ? "" + most + " 테두리 속 " + hearth : scheme.equals("ACCENT") ? "" + hearth + " 그리고 밝은 자투리 하나" : scheme.equals("OUTWARDS") ? "" + hearth + " 둘레, 좋은 쪽을 밖으로" : "" + hearth + " 둘레의 " + most);
    }

    @Override
    public String nameSeams(int n, String title) {
        return "" + title + ", 솔기 " + n + "개";
    }

    @Override
    public String tiesCannot(String most) {
        return "가진 천보다 큽니다. 가장 커도 " + most + " 정사각형";
    }

    @Override
    public String tiesFinished(String size, String tie) {
        return "완성 크기 " + size + " 정사각형. " + tie + ".";
    }

    @Override
    public String tiesGo() {
        return "이 천으로 무엇을 만들까요?";
    }

    @Override
    public String tiesJust() {
        return "그냥 무엇이든 보기";
    }

    @Override
    public String tiesLaid() {
        return "보자기에 놓는 법";
    }

    @Override
    public String tiesNote(String tie) {
        return (tie.equals("FOUR_CORNER") ? "무거운 것에" : tie.equals("EDGE_ALONG_EDGE") ? "큰 보자기에" : tie.equals("ERRAND") ? "손에 들고 갈 때" : tie.equals("FLAT") ? "매듭 없이" : tie.equals("TWO_KNOT") ? "긴 것에" : tie.equals("ONE_BOTTLE") ? "세워서" : tie.equals("TWO_BOTTLES") ? "나란히" : tie.equals("ROUND") ? "둥근 것에" : tie.equals("BOOKS") ? "같은 것 두 개에" : "눕혀서");
    }

    @Override
    public String tiesRange(String least, String most) {
        return "끝이 짧으면 " + least + ", 길면 " + most + ". 아이, 불, 기계 가까이에서는 짧게 합니다.";
    }

    @Override
    public String tiesSee() {
        return "한 단계씩 묶는 모습 보기";
    }

    @Override
    public String tiesSquare(String size) {
        return size + " 정사각형";
    }

    @Override
    public String tiesTheirs() {
        return "맡기기";
    }

    @Override
    public String tiesTheirsNote() {
        return "천이 가장 많이 보임";
    }

    @Override
    public String tiesTitle() {
        return "어떻게 묶을까요?";
    }

    @Override
    public String tiesUnsized() {
        return "그림 위에 크기를 적으면, 묶는 법마다 보자기가 얼마나 커야 하는지 나옵니다.";
    }

    @Override
    public String way(String way) {
        return (way.equals("free") ? "자투리를 생긴 대로" : way.equals("among") ? "자투리 사이의 통나무집" : way.equals("two") ? "작은 통나무집 넷" : way.equals("three") ? "작은 통나무집 아홉" : way.equals("four") ? "작은 통나무집 열여섯" : "중심 조각과 둘레의 띠");
    }

    @Override
    public String wishAgain() {
        return "다시 찾기";
    }

    @Override
    public String wishAlso() {
        return "다른 보자기에 쓸 것도";
    }

    @Override
    public String wishAny() {
        return "아무거나";
    }

    @Override
    public String wishBands() {
        return "끝에서 끝까지 이어지는 띠";
    }

    @Override
    public String wishBandsPick(String way) {
        return (way.equals("across") ? "가로로" : way.equals("down") ? "세로로" : "되는 대로");
    }

    @Override
    public String wishBarWidths(String unit) {
        return "띠, 재단, " + unit;
    }

    @Override
    public String wishBars() {
        return "띠와 솔기";
    }

    @Override
    public String wishBefore() {
        return "앞의 보자기";
    }

    @Override
    public String wishColours() {
        return "색";
    }

    @Override
    public String wishContrast() {
        return "대비";
    }

    @Override
    public String wishContrastPick(String contrast) {
        return (contrast.equals("most") ? "대비를 가장 크게" : contrast.equals("reads") ? "통나무집 무늬가 읽히게" : contrast.equals("easy") ? "둘 사이" : contrast.equals("quiet") ? "가장 차분하게" : "한 바탕으로 녹아들게");
    }

    @Override
    public String wishCutting() {
        return "자투리를 둘로 자르기";
    }

    @Override
    public String wishCuttingPick(String rule) {
        return (rule.equals("as_they_are") ? "자르지 않고 가장자리만 다듬기" : rule.equals("cut") ? "도움이 되는 곳에서만" : "어느 쪽이든");
    }

    @Override
    public String wishExact() {
        return "크기, 차례, 잇는 법";
    }

    @Override
    public String wishGood() {
        return "가진 천에 어울리는 배색";
    }

    @Override
    public String wishGoodWhy(String fabric, String kind) {
        return Particles.fitted((kind.equals("HALVES") ? "밝은 천과 어두운 천이 뚜렷이 나뉩니다" : kind.equals("SPIRAL") ? "밝은 천과 어두운 천이 뚜렷이 나뉩니다" : kind.equals("TURNS") ? "밝은 천과 어두운 천이 뚜렷이 나뉩니다" : kind.equals("GRADED") ? "밝은 천에서 어두운 천까지 고르게 이어집니다" : kind.equals("ACCENT") ? "" + fabric + "이(가) 다른 천보다 훨씬 선명합니다" : kind.equals("SCATTERED") ? "천의 종류가 많고 어느 하나가 대부분을 차지하지 않습니다" : kind.equals("FIELD") ? "천의 절반 이상이 " + fabric + "입니다" : kind.equals("FRAMES") ? "밝기가 뚜렷이 다른 두 천이 대부분입니다" : "여러 천이 한 둘레씩 넉넉히 있습니다"));
    }

    @Override
    public String wishHeading(String what) {
        return (what.equals("hearth") ? "중심 조각의 천" : what.equals("show") ? "묶었을 때 보일 천" : "뺄 천");
    }

    @Override
    public String wishHearth(String unit) {
        return "중심 조각, 재단, " + unit;
    }

    @Override
    public String wishMiddle() {
        return "자르지 않고 가운데에 둘 조각";
    }

    @Override
    public String wishMixed() {
        return "섞을 것";
    }

    @Override
    public String wishMostTrim(String unit) {
        return "한 조각에서 잘라 낼 최대 길이, " + unit;
    }

    @Override
    public String wishNarrow() {
        return "좁은 띠";
    }

    @Override
    public String wishOpen() {
        return "무엇을 비워 두어도 되나요?";
    }

    @Override
    public String wishOpenSays() {
        return "모두 됩니다. 중심 조각은 가운데 네모이고, 띠는 그 둘레의 긴 조각이며, 한 둘레는 변마다 띠 하나입니다. 비워 둔 것은 가진 천에 맞춥니다. 띠 너비는 중심에서 바깥으로 여러 개를 적어도 됩니다: 3, 4, 5.";
    }

    @Override
    public String wishOrder() {
        return "차례";
    }

    @Override
    public String wishPatches() {
        return "조각 크기";
    }

    @Override
    public String wishPatchesPick(String sizes) {
        return (sizes.equals("mixed") ? "크고 작은 것을 섞어" : sizes.equals("even") ? "되도록 고르게" : "아무렇게나");
    }

    @Override
    public String wishPick(String fabric, String what) {
        return (what.equals("hearth") ? "중심 조각의 천: " + fabric : what.equals("show") ? "묶었을 때 보일 천: " + fabric : "뺄 천: " + fabric);
    }

    @Override
    public String wishQuick() {
        return "솔기가 적은 것부터";
    }

    @Override
    public String wishRounds() {
        return "둘레";
    }

    @Override
    public String wishScraps() {
        return "자투리를 생긴 대로 쓸 때";
    }

    @Override
    public String wishSlack(String unit) {
        return "가장 작은 것보다 얼마나 크게, " + unit + ". 비우면 가장 작게";
    }

    @Override
    public String wishTogether() {
        return "잇는 법";
    }

    @Override
    public String wishWide() {
        return "넓은 띠";
    }

    @Override
    public String wishWith() {
        return "꼭 들어가야 할 조각";
    }
}
