package hearthcloth.words.planning;

import hearthcloth.words.korean.Particles;

/** The room of planning in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanPlanning implements PlanningWords {

    @Override
    public String barNoPiece(String piece, String width) {
        return "재단 너비 " + width + "의 띠를 낼 만큼 넓은 천이 없습니다. 가장 넓은 것은 " + piece + ".";
    }

    @Override
    public String betterCuts() {
        return "재단이 적음";
    }

    @Override
    public String betterFewerBars() {
        return "꿰맬 띠가 적음";
    }

    @Override
    public String betterHearth() {
        return "중심 조각이 큼";
    }

    @Override
    public String betterJoins() {
        return "이음이 적음";
    }

    @Override
    public String betterLost() {
        return "버리는 천이 적음";
    }

    @Override
    public String betterMoreBars() {
        return "보이는 띠가 많음";
    }

    @Override
    public String betterNarrower() {
        return "띠가 좁음";
    }

    @Override
    public String betterPieces() {
        return "쓰는 천이 많음";
    }

    @Override
    public String betterSize() {
        return "보자기가 큼";
    }

    @Override
    public String betterTouched() {
        return "자르기 시작하는 천이 적음";
    }

    @Override
    public String betterWider() {
        return "띠가 넓음";
    }

    @Override
    public String cabinTitle(String scraps) {
        return (scraps.equals("yes") ? "자투리 사이의 통나무집 무늬" : "통나무집 무늬");
    }

    @Override
    public String cabinsFew(String across, String down, int rounds, String size) {
        return Particles.fitted("이 자투리로는 둘레 " + "" + rounds + "번" + "의 통나무집 무늬 " + across + " × " + down + "을(를) " + size + " 크기로 만들기에 모자랐습니다. 블록이나 둘레를 줄이면 덜 듭니다.");
    }

    @Override
    public String cabinsTitle(String across, String down, String scraps, String setting) {
        return setting + ", 통나무집 무늬 " + across + " × " + down + (scraps.equals("yes") ? ", 자투리 사이" : "");
    }

    @Override
    public String chosenBands(String direction) {
        return (direction.equals("ACROSS") ? "보자기를 가로지르는" : "보자기를 세로로 지나는") + " 띠로, 가장자리에서 가장자리까지 이어집니다.";
    }

    @Override
    public String chosenBars(String width) {
        return "띠의 재단 너비는 " + width + ".";
    }

    @Override
    public String chosenByHand() {
        return "손수 골랐습니다.";
    }

    @Override
    public String chosenCabin(String order, int rounds) {
        return "통나무집 무늬 하나, 둘레 " + "" + rounds + "번" + ", " + order + ".";
    }

    @Override
    public String chosenCabins(String across, String count, String down, String order, int rounds) {
        return "통나무집 무늬 " + count + "개, " + across + " × " + down + ", 저마다 둘레 " + "" + rounds + "번" + ", " + order + ".";
    }

    @Override
    public String chosenHearth(String size) {
        return "중심 조각의 재단 크기는 " + size + ".";
    }

    @Override
    public String chosenMiddle(String piece) {
        return piece + "번 천이 그대로 가운데에 놓입니다.";
    }

    @Override
    public String chosenMixed() {
        return "밝은 천과 어두운 천이 섞여 있습니다. 나눌 방법이 없었습니다.";
    }

    @Override
    public String chosenOrder(String order) {
        return "순서: " + order + ".";
    }

    @Override
    public String chosenOuter(String size) {
        return Particles.fitted("보자기가 " + size + "이(가) 되도록 바깥 둘레를 맞추어 자릅니다.");
    }

    @Override
    public String chosenReadyBars(String widths) {
        return "띠의 재단 너비는 " + widths + ". 가지고 있는 천의 너비입니다.";
    }

    @Override
    public String chosenReadyRounds(String rounds) {
        return "띠의 재단 너비(가지고 있는 천의 너비): " + rounds + ".";
    }

    @Override
    public String chosenRound(String number, String widths) {
        return "둘레 " + number + ": " + widths;
    }

    @Override
    public String chosenRounds(int n) {
        return "둘레 " + n + "번.";
    }

    @Override
    public String chosenSizeFound(String limit) {
        return "크기: 찾은 것 가운데 가장 큰 정사각형. 모든 천을 합쳐도 " + limit + "보다 크게는 만들 수 없습니다.";
    }

    @Override
    public String chosenSizeScraps(String limit, String side) {
        return "크기: 찾은 것 가운데 가장 큰 정사각형, " + side + ". 이 자투리를 모두 합쳐도 " + limit + "보다 크게는 만들 수 없습니다.";
    }

    @Override
    public String chosenSizeSteps() {
        return "크기: 약 14분의 1 단위로 찾은 것 가운데 가장 큽니다.";
    }

    @Override
    public String chosenSizeSure(String step) {
        return "크기: " + step + " 단위로 더 큰 정사각형은 만들 수 없습니다.";
    }

    @Override
    public String chosenSmaller(String percent) {
        return "이 보자기는 원한 것보다 " + percent + " 작습니다.";
    }

    @Override
    public String chosenWith(String pieces) {
        return "원한 천이 들어 있습니다: " + pieces + ".";
    }

    @Override
    public String colour(String what) {
        return what + ".";
    }

    @Override
    public String colourApart() {
        return "같은 천이 서로 닿지 않습니다";
    }

    @Override
    public String colourBack(String what) {
        return "뒷면: " + what + ".";
    }

    @Override
    public String colourCouldLie(String length) {
        return "솔기 가운데 나아질 수 있는 길이는 많아야 " + length + "입니다.";
    }

    @Override
    public String colourField() {
        return "띠가 모두 한 가지 천입니다";
    }

    @Override
    public String colourHearthAll() {
        return "중심 조각이 모든 변에서 두드러집니다";
    }

    @Override
    public String colourHearthNone() {
        return "중심 조각이 차분하고 둘레와 비슷합니다";
    }

    @Override
    public String colourHearthSome(String share) {
        return "중심 조각이 가장자리의 " + share + "에서 두드러집니다";
    }

    @Override
    public String colourMixed(int n) {
        return "띠 " + n + "개가 여러 천으로 되어 있습니다";
    }

    @Override
    public String colourOutside(String fabric, String share) {
        return fabric + ": 묶었을 때 보이는 것의 " + share + ".";
    }

    @Override
    public String colourOutsideAlways(String fabric, String least, String most) {
        return fabric + ": 어떻게 묶어도 보입니다. 묶었을 때 보이는 것의 " + least + "~" + most + ".";
    }

    @Override
    public String colourOutsideRange(String fabric, String least, String most) {
        return fabric + ": 묶었을 때 보이는 것의 " + least + "~" + most + ", 남는 모서리를 두는 방식에 따라 다릅니다.";
    }

    @Override
    public String colourPrice(int n) {
        return "색을 위해 찾은 것 가운데 가장 적은 것보다 " + n + "번 더 자릅니다.";
    }

    @Override
    public String colourPriceJoins(int n) {
        return "색을 위해 찾은 것 가운데 가장 적은 것보다 이음이 " + n + "곳 더 많습니다.";
    }

    @Override
    public String colourProven() {
        return "띠마다 천을 어떻게 골라도 이보다 나을 수 없음이 증명되었습니다.";
    }

    @Override
    public String colourSame(String share) {
        return "띠 사이 솔기의 " + share + "에서 같은 천이 닿습니다";
    }

    @Override
    public String colourTied(String what) {
        return "묶었을 때 보이는 경계: " + what + ".";
    }

    @Override
    public String fabricUnknown(String name, String names) {
        return "천 목록에 \"" + name + "\"이라는 천이 없습니다. 있는 것: " + names + ".";
    }

    @Override
    public String good(String idea, String points) {
        return idea + ". " + points + ".";
    }

    @Override
    public String goodAlone(String idea) {
        return idea + ".";
    }

    @Override
    public String heapEmpty() {
        return "천이 없습니다. 천을 한 장 이상 넣으십시오.";
    }

    @Override
    public String hearth() {
        return "중심 조각";
    }

    @Override
    public String hearthNoPiece(String piece, String size) {
        return "중심 조각(재단 크기 " + size + ")을 낼 수 있는 천이 한 장도 없습니다. 가장 나은 것은 " + piece + ".";
    }

    @Override
    public String moreAdded(String pieces) {
        return "이것을 더하면 됩니다: " + pieces + ".";
    }

    @Override
    public String morePiece(String fabric, String size) {
        return fabric + ", " + size;
    }

    @Override
    public String morePieces(String fabric, String number, String size) {
        return fabric + ", " + size + ", " + number + "장";
    }

    @Override
    public String moreTime() {
        return "계획에 시간이 더 필요합니다. 시간을 늘려 다시 계획하십시오.";
    }

    @Override
    public String needFabrics() {
        return "시도해 본 어떤 배색에도 이 천들이 모자랍니다.";
    }

    @Override
    public String needMore(String has, String more, String takes) {
        return Particles.fitted("천이 가장 적게 드는 배치도 솔기와 단을 합쳐 " + takes + "이(가) 듭니다. 가진 천은 모두 " + has + "이므로 약 " + more + "이(가) 더 필요합니다.");
    }

    @Override
    public String order(String order) {
        return (order.equals("ROUND") ? "빙 둘러" : order.equals("PAIRS") ? "마주 보는 짝" : "두 변");
    }

    @Override
    public String pieceLine(String fabric, String line, String size) {
        return fabric + ", " + size + " (" + line + "번째 줄)";
    }

    @Override
    public String pointFewestBars(String n) {
        return "꿰맬 띠가 가장 적음, " + n + "개";
    }

    @Override
    public String pointFewestCuts(String n) {
        return "재단이 가장 적음, " + n + "번";
    }

    @Override
    public String pointFewestJoins(String n) {
        return "이음이 가장 적음, " + n + "곳";
    }

    @Override
    public String pointJoins(int n) {
        return "이음 " + n + "곳";
    }

    @Override
    public String pointJoinsAsFew(int n) {
        return "이음 " + n + "곳, 더 적은 것은 없음";
    }

    @Override
    public String pointLargest() {
        return "이 가운데 가장 큼";
    }

    @Override
    public String pointLargestHearth() {
        return "중심 조각이 가장 큼";
    }

    @Override
    public String pointLeastLost() {
        return "버리는 천이 가장 적음";
    }

    @Override
    public String pointLeavesMost() {
        return "가진 천을 가장 온전히 남김";
    }

    @Override
    public String pointMostBars(String n) {
        return "보이는 띠가 가장 많음, " + n + "개";
    }

    @Override
    public String pointMostPieces(String n) {
        return "천을 가장 많이 씀, " + n + "장";
    }

    @Override
    public String pointNarrowest() {
        return "띠가 가장 좁음";
    }

    @Override
    public String pointNoJoin() {
        return "띠를 이을 곳이 없음";
    }

    @Override
    public String pointOnlyWithoutCut() {
        return "자르지 않는 것은 이것뿐";
    }

    @Override
    public String pointOnlyWithoutJoin() {
        return "이음이 없는 것은 이것뿐";
    }

    @Override
    public String pointThan(String better) {
        return "첫째보다 " + better;
    }

    @Override
    public String pointWidest() {
        return "띠가 가장 넓음";
    }

    @Override
    public String rulesNone() {
        return "여러 가지를 시도했지만 모두 지키는 것을 찾지 못했습니다.";
    }

    @Override
    public String scheme(String scheme) {
        return (scheme.equals("HALVES") ? "두 반쪽" : scheme.equals("ROUNDS") ? "둘레마다" : scheme.equals("TURNS") ? "번갈아" : scheme.equals("FIELD") ? "한 바탕" : scheme.equals("SPIRAL") ? "소용돌이" : scheme.equals("SCATTERED") ? "고루 흩기" : scheme.equals("GRADED") ? "밝음에서 어두움으로" : scheme.equals("FRAMES") ? "테두리" : scheme.equals("ACCENT") ? "밝은 자투리 하나" : scheme.equals("ALL") ? "가진 천 모두에서" : scheme.equals("FALLS") ? "천이 나오는 대로" : scheme.equals("OUTWARDS") ? "좋은 쪽을 밖으로" : "직접 고름");
    }

    @Override
    public String schemeIdea(String scheme) {
        return (scheme.equals("HALVES") ? "밝음과 어두움이 대각선에서 만납니다" : scheme.equals("ROUNDS") ? "둘레마다 천이 다릅니다" : scheme.equals("TURNS") ? "띠마다 밝음과 어두움이 번갈아 갑니다" : scheme.equals("FIELD") ? "중심 조각이 한 가지 천 속에 홀로 있습니다" : scheme.equals("SPIRAL") ? "밝음과 어두움이 나란히 바깥으로 돕니다" : scheme.equals("SCATTERED") ? "띠마다 천이 하나이고 같은 천이 이웃하지 않습니다" : scheme.equals("GRADED") ? "바깥 둘레가 안쪽보다 어둡습니다" : scheme.equals("FRAMES") ? "두 천이 둘레마다 번갈아 갑니다" : scheme.equals("ACCENT") ? "밝은 천이 몇 곳에서 두드러집니다" : scheme.equals("ALL") ? "천을 어디에나 씁니다" : scheme.equals("FALLS") ? "천을 가장 아끼는 곳에서 띠를 자릅니다" : scheme.equals("OUTWARDS") ? "고른 천이 묶었을 때 보이는 곳에 있습니다" : "손수 골랐습니다");
    }

    @Override
    public String schemeNeeds(String scheme) {
        return (scheme.equals("HALVES") ? "밝은 천과 어두운 천이 뚜렷이 나뉘고 각각 넉넉할 것" : scheme.equals("TURNS") ? "밝은 천과 어두운 천이 뚜렷이 나뉘고 각각 넉넉할 것" : scheme.equals("SPIRAL") ? "밝은 천과 어두운 천이 뚜렷이 나뉘고 각각 넉넉할 것" : scheme.equals("ROUNDS") ? "둘레마다 한 가지 천이 넉넉하고, 그 천이 중심 조각의 천이 아닐 것" : scheme.equals("FIELD") ? "모든 띠에 넉넉한 천 하나와 중심 조각의 다른 천" : scheme.equals("SCATTERED") ? "같은 천이 이웃하지 않을 만큼 여러 가지 넉넉한 천" : scheme.equals("GRADED") ? "바깥으로 갈수록 어두운, 둘레마다 다른 천" : scheme.equals("FRAMES") ? "한쪽이 뚜렷이 밝은 두 천, 각각 둘레에 넉넉하게" : scheme.equals("ACCENT") ? "차분한 천들 곁의 밝은 천 하나" : "천만 있으면 됩니다");
    }

    @Override
    public String schemeUntrue(String needs, String scheme) {
        return "\"" + scheme + "\"에 맞는 보자기를 찾지 못했습니다. 필요한 것: " + needs + ".";
    }

    @Override
    public String scrapsByHand() {
        return "손으로 맞춘 것";
    }

    @Override
    public String scrapsMore(String size) {
        return size + " 천이 한 장 더 있으면 만들 수 있습니다.";
    }

    @Override
    public String scrapsNoPiece(String piece) {
        return "한 장을 마를 수 있는 " + piece + "번 천이 없습니다. 가진 천에서 찾아보세요.";
    }

    @Override
    public String scrapsNone() {
        return "이 자투리로는 보자기를 만들 수 없었습니다. 더 많거나 더 큰 자투리가 필요합니다.";
    }

    @Override
    public String scrapsShort(String area) {
        return "이 자투리를 어떻게 놓아도 솔기를 빼면 " + area + " 모자랍니다.";
    }

    @Override
    public String scrapsTitle(String choice) {
        return (choice.equals("ANY") ? "자투리 나오는 대로" : choice.equals("WHOLE") ? "둘로 자르지 않은 자투리" : choice.equals("SMALL") ? "작은 자투리 여럿" : choice.equals("LARGE") ? "큰 자투리 몇 장" : choice.equals("EVEN") ? "크기를 비슷하게" : choice.equals("CALM") ? "가까운 색끼리" : choice.equals("ALIKE") ? "비슷한 크기끼리" : "밝음과 어두움");
    }

    @Override
    public String scrapsTooSmall(String length) {
        return "가로세로 " + length + " 보이는 조각을 낼 만큼 큰 천이 없습니다. --least-piece를 더 작게 하십시오.";
    }

    @Override
    public String scrapsUsed(String lost, int n, String parted, String trimmed, String whole) {
        return Particles.fitted("자투리 " + n + "장: 그대로 " + whole + "장, 다듬은 것 " + trimmed + "장, 둘로 자른 것 " + parted + "장. 꿰매는 천의 " + lost + "을(를) 다듬어 버립니다.");
    }

    @Override
    public String seamsApart() {
        return "같은 천이 이웃하지 않습니다.";
    }

    @Override
    public String seamsClear(String clear) {
        return "다른 솔기를 사이에 두고 " + clear + " 안에서 끝나는 두 솔기가 없습니다.";
    }

    @Override
    public String seamsNear(String clear, int n) {
        return "" + n + "곳에서 솔기들이 다른 솔기를 사이에 두고 " + clear + " 안에서 끝납니다. 두꺼운 곳은 안내서에 있습니다.";
    }

    @Override
    public String seamsNowhere() {
        return "네 솔기가 만나는 곳이 없습니다.";
    }

    @Override
    public String seamsThick(int n) {
        return "" + n + "곳에서 솔기가 다른 솔기의 양쪽에서 만납니다. 두꺼운 곳은 안내서에 있습니다.";
    }

    @Override
    public String setting(String setting) {
        return (setting.equals("ALIKE") ? "모두 같게" : setting.equals("STRAIGHT_FURROW") ? "곧은 고랑" : setting.equals("BARN_RAISING") ? "헛간 올리기" : setting.equals("SUNSHINE_AND_SHADOW") ? "햇빛과 그늘" : "마음대로 돌림");
    }

    @Override
    public String settingIdea(String setting) {
        return (setting.equals("ALIKE") ? "모든 블록이 같은 방향입니다." : setting.equals("STRAIGHT_FURROW") ? "밝음과 어두움이 귀에서 귀로 띠를 이룹니다." : setting.equals("BARN_RAISING") ? "밝음과 어두움이 가운데에서 마름모로 퍼져 나갑니다." : setting.equals("SUNSHINE_AND_SHADOW") ? "네 블록의 밝은 반쪽끼리, 어두운 반쪽끼리 만납니다." : "블록마다 아무렇게나 돌려 놓았습니다.");
    }

    @Override
    public String shapeComes(String sizes) {
        return Particles.fitted("이 중심 조각과 이 띠로는 " + sizes + "이(가) 됩니다. 이 가운데 하나를 고르거나 중심 조각이나 띠를 천에 맡기십시오.");
    }

    @Override
    public String shapeNone(String size) {
        return Particles.fitted("이런 중심 조각과 띠로는 " + size + "이(가) 되지 않습니다. 하나를 천에 맡기거나 둘레 수를 바꾸십시오.");
    }

    @Override
    public String shapeNoneAny() {
        return "이런 중심 조각과 띠로는 보자기가 되지 않습니다. 하나를 천에 맡기거나 둘레 수를 바꾸십시오.";
    }

    @Override
    public String shapeNothing() {
        return "이 솔기로는 중심 조각이나 띠가 남지 않습니다. 더 크게 하십시오.";
    }

    @Override
    public String shapeSize(int rounds, String size) {
        return "둘레 " + "" + rounds + "번" + "에 " + size;
    }

    @Override
    public String shortAny(String fabric, String length, String number, String sure, String what, String width) {
        return what + "에 쓸 너비 " + width + "의 천이 " + fabric + " 등 " + number + "가지 어느 것이든 " + (sure.equals("proven") ? "적어도" : "약") + " " + length + " 모자랍니다.";
    }

    @Override
    public String shortCloth(String has, String missing, String size) {
        return "보자기만 " + size + "인데 가진 천은 모두 " + has + "이므로, 솔기를 빼고도 적어도 " + missing + " 모자랍니다.";
    }

    @Override
    public String shortOf(String fabrics, String length, String sure, String what, String width) {
        return Particles.fitted(what + "에 쓸 너비 " + width + "의 " + fabrics + "이(가) " + (sure.equals("proven") ? "적어도" : "약") + " " + length + " 모자랍니다.");
    }

    @Override
    public String stashEmpty() {
        return "천 목록이 비어 있습니다. 천을 한 장 이상 넣으십시오.";
    }

    @Override
    public String title(String order, String scheme) {
        return scheme + ", " + order;
    }

    @Override
    public String washMixed(String unwashed, String unwashedFabric, String washed, String washedFabric) {
        return "빤 천(" + washed + ", " + washedFabric + " 등)과 빨지 않은 천(" + unwashed + ", " + unwashedFabric + " 등)이 섞여 있어 서로 다르게 줄어듭니다. 자르기 전에 모두 빨아 다리십시오.";
    }
}
