package hearthcloth.words.tying;

import hearthcloth.words.korean.Particles;

/** The room of tying in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanTying implements TyingWords {

    @Override
    public String booksClosed() {
        return "한 권을 다른 권 위로 덮어 틈이 책등이 되게 합니다.";
    }

    @Override
    public String booksEnds() {
        return "왼쪽 귀와 오른쪽 귀를 책 위로 가져옵니다. 틈에서 팽팽하게 엇겁니다.";
    }

    @Override
    public String booksLaid() {
        return "보자기를 마름모로 폅니다. 책 한 권은 가까이, 한 권은 멀리 놓습니다. 사이를 두 권의 두께만큼 띄웁니다.";
    }

    @Override
    public String booksTied() {
        return "두 끝을 꼽니다. 책등을 따라 되돌려 묶습니다.";
    }

    @Override
    public String booksWound() {
        return "앞쪽 귀를 앞쪽 책 위로, 먼 쪽 귀를 먼 쪽 책 위로 접습니다.";
    }

    @Override
    public String bottleCrossed() {
        return "왼쪽 귀와 오른쪽 귀를 모아 쥡니다. 병을 돌려 뒤에서 엇겁니다.";
    }

    @Override
    public String bottleHandle() {
        return "손잡이를 만들려면 위 매듭의 반을 풉니다. 두 끝을 꼬아서 서로 묶습니다.";
    }

    @Override
    public String bottleLaid() {
        return "보자기를 마름모로 폅니다. 병을 한가운데에 세웁니다.";
    }

    @Override
    public String bottlePair() {
        return "앞쪽 귀와 먼 쪽 귀를 올립니다. 병 위에서 병 입구에 바싹 대고 맞매듭으로 묶습니다.";
    }

    @Override
    public String bottleTied() {
        return "앞으로 가져와 병에 바싹 대고 묶습니다.";
    }

    @Override
    public String bottlesLaid() {
        return "보자기를 마름모로 폅니다. 두 병을 밑바닥끼리 마주 보게 눕히고 주먹 하나만큼 뗍니다.";
    }

    @Override
    public String bottlesStood() {
        return "먼 쪽 귀를 틈에 끼웁니다. 두 병을 세우면 밑바닥 사이에서 천이 꺾입니다.";
    }

    @Override
    public String bottlesTied() {
        return "두 끝을 병 위에서 맞매듭으로 묶습니다.";
    }

    @Override
    public String bottlesWound() {
        return "앞쪽 귀를 병 위로 덮습니다. 먼 쪽 귀까지 앞으로 굴려 맙니다.";
    }

    @Override
    public String careBottle() {
        return "먼저 탁자 위에서 매듭을 시험합니다. 그때까지는 한 손으로 병을 받칩니다.";
    }

    @Override
    public String careChildren() {
        return "긴 끝과 고리는 어린아이와 아기 침대에서 멀리 둡니다. 묶은 천이 목을 조를 수 있습니다.";
    }

    @Override
    public String careFlames() {
        return "싼 선물을 촛불, 화구, 등에서 멀리 둡니다. 늘어진 끝에 먼저 불이 붙습니다.";
    }

    @Override
    public String careFood() {
        return "음식은 먼저 상자나 종이에 담습니다. 음식에 닿기 전에 천을 빱니다.";
    }

    @Override
    public String careSpills() {
        return "흐를 수 있는 것에는 쓰지 않습니다. 두루마리는 눕혀 놓습니다.";
    }

    @Override
    public String corner(String corner) {
        return (corner.equals("RIGHT") ? "오른쪽 귀" : corner.equals("FAR") ? "먼 쪽 귀" : corner.equals("LEFT") ? "왼쪽 귀" : corner.equals("NEAR") ? "앞쪽 귀" : corner.equals("FAR_RIGHT") ? "먼 쪽 오른쪽 귀" : corner.equals("FAR_LEFT") ? "먼 쪽 왼쪽 귀" : corner.equals("NEAR_LEFT") ? "앞쪽 왼쪽 귀" : corner.equals("NEAR_RIGHT") ? "앞쪽 오른쪽 귀" : "보자기");
    }

    @Override
    public String diamond() {
        return "보자기를 마름모로 펴고 한 귀를 내 쪽으로 둡니다. 보이게 할 면이 아래로 갑니다. 선물을 한가운데에 놓고 긴 변이 좌우로 가게 합니다.";
    }

    @Override
    public String diamondRoll() {
        return "보자기를 마름모로 폅니다. 두루마리를 좌우로 놓습니다.";
    }

    @Override
    public String doubt(String end, String large, String least, String most, String small, String usual) {
        return Particles.fitted("확실하지 않은 것은 매듭입니다. 얇은 천은 귀를 적게 쓰고 두꺼운 천은 많이 씁니다. 매듭과 끝에 귀마다 " + least + "이(가) 들면 " + small + "의 정사각형으로 충분하고, " + most + "이(가) 들면 " + large + "의 정사각형이 필요합니다. 여기서는 " + usual + "을(를) 잡았습니다. 얇은 면으로 끝을 약 " + end + " 남길 때 알맞습니다.");
    }

    @Override
    public String edgeFlaps() {
        return "선물 윗면 둘레의 가장자리를 반듯하게 펴서 자락이 윗면을 덮게 합니다.";
    }

    @Override
    public String edgeLaid() {
        return "보자기를 앞에 반듯하게 펴고 보이게 할 면을 아래로 둡니다. 선물을 한가운데에 놓고 변을 보자기의 변과 나란히 맞춥니다.";
    }

    @Override
    public String edgePair() {
        return "마주 보는 두 귀를 선물의 모서리를 따라 올립니다. 가운데에서 묶습니다.";
    }

    @Override
    public String edgeTied() {
        return "나머지 두 귀를 첫 매듭 위에서 묶습니다.";
    }

    @Override
    public String errandFar() {
        return "먼 쪽 귀를 그 위로 덮고 귀 끝을 접어 넣습니다.";
    }

    @Override
    public String errandHidden() {
        return "매듭을 감추려면 먼 쪽 귀의 끝을 매듭 아래에서 빼내어 매듭 위에 덮습니다.";
    }

    @Override
    public String errandNear() {
        return "앞쪽 귀를 선물 위로 덮습니다. 귀 끝을 먼 쪽 모서리 아래로 밀어 넣습니다.";
    }

    @Override
    public String errandSides() {
        return "왼쪽 귀와 오른쪽 귀를 들고 옆자락을 매끈하게 정리합니다.";
    }

    @Override
    public String errandTied() {
        return "위에서 맞매듭 하나로 묶습니다.";
    }

    @Override
    public String fitJust(String gift, String tie) {
        return "이 보자기는 꼭 맞는 크기입니다: " + gift + ", " + tie + ".";
    }

    @Override
    public String fitJustKnotted(String gift, String tail, String tie) {
        return Particles.fitted("이 보자기는 꼭 맞는 크기입니다: " + gift + ", " + tie + ". 묶는 귀마다 매듭과 끝에 쓸 " + tail + "이(가) 남습니다.");
    }

    @Override
    public String fitNearly(String gift) {
        return "이만한 것은 묶을 수 있습니다: " + gift + ".";
    }

    @Override
    public String fitSewnSmaller(String spare) {
        return spare + " 작게 지어도 됩니다.";
    }

    @Override
    public String fitShorter(String gift, String less, String tail, String tie, String usual) {
        return Particles.fitted("이 보자기는 있어야 할 크기보다 " + less + " 작습니다: " + gift + ", " + tie + ". 그래도 묶을 수 있습니다. 묶는 귀마다 매듭과 끝에 " + usual + " 대신 " + tail + "이(가) 남습니다.");
    }

    @Override
    public String fitTies(String gift, String reason, String spare, String tie) {
        return "이 보자기로 묶을 수 있습니다: " + gift + ", " + tie + ". 필요한 것보다 " + spare + "의 여유가 있습니다(" + reason + ").";
    }

    @Override
    public String fitTooSmall(String corner, String gift, String lack, String reason, String size, String tie) {
        return "이 보자기는 작습니다: " + gift + ", " + tie + ". 모자란 곳: " + corner + ", " + lack + "(" + reason + "). " + size + "의 보자기면 충분합니다.";
    }

    @Override
    public String fitUsualEnds(String gift) {
        return "매듭 끝을 보통 길이로 하면 이만한 것을 묶습니다: " + gift + ".";
    }

    @Override
    public String fitWraps(String gift, String reason, String spare, String tie) {
        return "이 보자기로 쌀 수 있습니다: " + gift + ", " + tie + ". 필요한 것보다 " + spare + "의 여유가 있습니다(" + reason + ").";
    }

    @Override
    public String flatFar() {
        return "먼 쪽 귀를 모두 위로 덮습니다. 귀 끝을 앞쪽 모서리에 끼웁니다.";
    }

    @Override
    public String flatNear() {
        return "앞쪽 귀를 선물 위로 덮습니다. 귀 끝이 넘어가는 곳은 안으로 접습니다.";
    }

    @Override
    public String flatSides() {
        return "왼쪽 자락을 덮고 오른쪽 자락을 덮습니다. 저마다 선물의 모서리를 따라 매끈하게 폅니다.";
    }

    @Override
    public String fourCornerNearAndFar() {
        return "앞쪽 귀와 먼 쪽 귀를 가운데로 올립니다. 선물에 바싹 대고 맞매듭으로 묶습니다.";
    }

    @Override
    public String fourCornerSides() {
        return "왼쪽 귀와 오른쪽 귀를 똑바로 들어 올립니다. 선물 옆으로 나온 천은 귀 안쪽으로 접어 옆면에 붙입니다.";
    }

    @Override
    public String fourCornerTied() {
        return "첫 매듭 위에서 왼쪽 귀와 오른쪽 귀를 묶습니다. 네 끝을 펼칩니다.";
    }

    @Override
    public String knotFirst() {
        return "왼쪽 끝을 오른쪽 끝 위에 놓습니다. 뒤로 돌려 위로 뺍니다. 매듭의 반입니다.";
    }

    @Override
    public String knotPull() {
        return "두 끝을 당깁니다. 맞매듭은 납작하고 끝이 당기는 방향으로 놓입니다. 끝이 위아래로 서면 세로매듭이라 풀립니다. 나중의 반을 풀어 반대로 엇겁니다.";
    }

    @Override
    public String knotSecond() {
        return "이제 오른쪽에 온 같은 끝을 다시 다른 끝 위에 놓고 고리로 뺍니다.";
    }

    @Override
    public String reason(String reason) {
        return (reason.equals("KNOT") ? "매듭과 매듭 끝" : reason.equals("COVER") ? "선물을 덮는 부분" : reason.equals("TUCK") ? "마지막 자락을 끼우는 부분" : "옆자락이 겹치는 부분");
    }

    @Override
    public String rollCrossed() {
        return "거기서 엇걸어 양옆으로 하나씩 내립니다.";
    }

    @Override
    public String rollEnds() {
        return "옆자락을 두루마리의 양 끝으로 접습니다. 두루마리를 따라 가운데로 가져옵니다.";
    }

    @Override
    public String rollTied() {
        return "두루마리를 뒤집습니다. 반대쪽에서 맞매듭으로 묶습니다.";
    }

    @Override
    public String rollWound() {
        return "앞쪽 귀를 두루마리 위로 덮습니다. 먼 쪽 귀까지 앞으로 굴려 맙니다.";
    }

    @Override
    public String roundHandle() {
        return "손잡이를 만들려면 둘째 매듭을 첫 매듭 아래로 빼냅니다. 당겨서 조입니다.";
    }

    @Override
    public String roundLaid() {
        return "보자기를 폅니다. 공을 한가운데에 놓습니다.";
    }

    @Override
    public String roundPair() {
        return "앞쪽 귀와 오른쪽 귀를 공 위에서 묶습니다. 고리를 만들 만큼 끝을 길게 남깁니다.";
    }

    @Override
    public String roundTied() {
        return "먼 쪽 귀와 왼쪽 귀를 묶습니다.";
    }

    @Override
    public String ruleMore(String more, String rule, String size, String source) {
        return "흔히 쓰는 어림셈(" + rule + ")으로는 " + size + "입니다(" + source + "). 이 묶기에 필요한 것보다 " + more + " 큽니다.";
    }

    @Override
    public String ruleSmall(String gift, String less, String rule, String size, String source) {
        return "흔히 쓰는 어림셈(" + rule + ")으로는 " + size + "입니다(" + source + "). 이 선물에는 " + less + " 작습니다: " + gift + ".";
    }

    @Override
    public String ruleSmallForTall(String gift, String less, String rule, String size, String source) {
        return "흔히 쓰는 어림셈(" + rule + ")으로는 " + size + "입니다(" + source + "). 선물이 높아서 " + less + " 작습니다: " + gift + ".";
    }

    @Override
    public String ruleWords(String rule) {
        return (rule.equals("DIAGONAL_THREE_TIMES_THE_LONGEST_SIDE") ? "대각선 = 가장 긴 변의 세 배" : "한 변 = 병 높이의 세 배");
    }

    @Override
    public String shortBooks() {
        return "꼰 끝이 짧으면 덮기 전에 틈에서 묶습니다. 책은 팔에 끼고 듭니다.";
    }

    @Override
    public String shortBottle() {
        return "귀가 병 입구 위에서 만나지 않으면 병목에 둘러 묶고 병목을 드러냅니다.";
    }

    @Override
    public String shortCorners() {
        return "두 귀가 서로 닿지 않으면 선물 위에서 엇겁니다. 두 매듭 싸기처럼 저마다 옆 귀와 묶습니다. 또는 한 변의 두 귀를 묶고 나머지 두 귀를 묶습니다.";
    }

    @Override
    public String shortFlat() {
        return "먼 쪽 귀가 앞쪽 모서리에 닿지 않으면 접어 넣고 시침핀을 꽂습니다. 또는 한 매듭 싸기로 합니다.";
    }

    @Override
    public String shortRolled() {
        return "끝이 짧으면 천을 덜 말아 쌉니다. 또는 사이에 끈을 넣어 묶습니다.";
    }

    @Override
    public String shortRound() {
        return "두 귀가 짧으면 마주 보는 귀끼리 위에서 묶고 손잡이는 만들지 않습니다.";
    }

    @Override
    public String shortTwoKnot() {
        return "한 귀가 짧으면 엇거는 곳을 그쪽으로 옮깁니다. 또는 사이에 끈을 넣어 묶습니다.";
    }

    @Override
    public String showsFabric(String fabric, String percent, String where) {
        return fabric + ": 보이는 부분의 " + percent + (where.equals("top") ? ", 윗면" : where.equals("sides") ? ", 옆면" : where.equals("both") ? ", 옆면과 윗면" : "") + ".";
    }

    @Override
    public String showsFabricInKnot(String fabric) {
        return fabric + ": 매듭과 매듭 끝에만 보입니다.";
    }

    @Override
    public String showsFabricNot(String fabric) {
        return fabric + ": 보이지 않습니다.";
    }

    @Override
    public String showsHearth(String percent, String where) {
        return Particles.fitted("중심 조각의 " + percent + "이(가) " + (where.equals("top") ? "윗면에 " : where.equals("sides") ? "옆면에 " : where.equals("both") ? "옆면과 윗면에 " : "") + "보입니다.");
    }

    @Override
    public String showsHearthAndUnder(String percent, String thing, String under, String where) {
        return Particles.fitted("중심 조각의 " + percent + "이(가) " + (where.equals("top") ? "윗면에 " : where.equals("sides") ? "옆면에 " : where.equals("both") ? "옆면과 윗면에 " : "") + "보입니다. " + under + "은(는) " + (thing.equals("box") ? "상자" : thing.equals("books") ? "책" : thing.equals("roll") ? "두루마리" : thing.equals("ball") ? "공" : "병") + " 아래에 있습니다.");
    }

    @Override
    public String showsHearthInKnot() {
        return "중심 조각은 매듭과 매듭 끝에만 보입니다.";
    }

    @Override
    public String showsHearthInside() {
        return "중심 조각은 안으로 접혀 보이지 않습니다.";
    }

    @Override
    public String showsHearthUnder(String thing) {
        return "중심 조각은 " + (thing.equals("box") ? "상자" : thing.equals("books") ? "책" : thing.equals("roll") ? "두루마리" : thing.equals("ball") ? "공" : "병") + " 아래에 가려집니다.";
    }

    @Override
    public String showsSpare() {
        return "숫자가 둘인 곳은 남는 네 모서리를 접힌 자락 밑에 넣느냐, 떨어지는 대로 바깥에 두느냐에 따라 다릅니다.";
    }

    @Override
    public String tieName(String tie) {
        return (tie.equals("FOUR_CORNER") ? "네 귀 묶기" : tie.equals("EDGE_ALONG_EDGE") ? "네 귀 묶기(상자를 보자기와 나란히)" : tie.equals("ERRAND") ? "한 매듭 싸기" : tie.equals("FLAT") ? "평싸기" : tie.equals("TWO_KNOT") ? "두 매듭 싸기" : tie.equals("ONE_BOTTLE") ? "병 하나 싸기" : tie.equals("TWO_BOTTLES") ? "병 두 개 싸기" : tie.equals("ROUND") ? "둥근 물건 싸기" : tie.equals("BOOKS") ? "책 싸기" : "두루마리 싸기");
    }

    @Override
    public String tieSuited(String tie) {
        return (tie.equals("FOUR_CORNER") ? "상자, 쌓은 것, 무거운 것" : tie.equals("EDGE_ALONG_EDGE") ? "큰 보자기에 놓은 상자" : tie.equals("ERRAND") ? "손에 들고 가는 상자" : tie.equals("FLAT") ? "납작한 상자와 갠 옷(매듭 없음)" : tie.equals("TWO_KNOT") ? "긴 상자와 돗자리" : tie.equals("ONE_BOTTLE") ? "세워 놓은 병" : tie.equals("TWO_BOTTLES") ? "같은 병 두 개" : tie.equals("ROUND") ? "공, 멜론, 둥근 것" : tie.equals("BOOKS") ? "같은 크기의 책 두 권" : "말아 놓은 천, 통, 원통형 용기");
    }

    @Override
    public String tradeAll(String enough) {
        return "충분한 기성품 크기: " + enough + ".";
    }

    @Override
    public String tradeNone(String small) {
        return "파는 선물용 크기는 여기에 모두 작습니다: " + small + ".";
    }

    @Override
    public String tradeSome(String enough, String small) {
        return "충분한 기성품 크기: " + enough + ". 작은 크기: " + small + ".";
    }

    @Override
    public String tradeUses(String size) {
        return (size.equals("CHUHABA") ? "작은 선물, 도시락, 봉투" : size.equals("SHAKUSAN") ? "도시락, 휴지 상자, 0.5리터 병" : size.equals("SHAKUYON") ? "도시락" : size.equals("FUTAHABA") ? "케이크 상자, 포도주 한 병, 옷, 둥근 것" : size.equals("NISHAKU") ? "큰 케이크 상자" : size.equals("NISHI") ? "1.8리터 병 하나, 포도주 두 병, 가방" : size.equals("MIHABA") ? "1.8리터 병, 두 병들이 상자, 장바구니" : size.equals("LARGE") ? "큰 가방" : size.equals("YOHABA") ? "방석 두 장에서 네 장, 식탁보" : size.equals("ITSUHABA") ? "방석 다섯 장이나 여섯 장" : size.equals("MUHABA") ? "이불 한 채" : "이불 두 채");
    }

    @Override
    public String twoKnotCrossed() {
        return "앞쪽 귀와 먼 쪽 귀를 선물 위로 덮습니다. 서로 묶기에는 짧습니다. 가운데에서 엇걸어 하나는 왼쪽, 하나는 오른쪽으로 돌립니다.";
    }

    @Override
    public String twoKnotRight() {
        return "오른쪽 귀를 들어 오른쪽으로 돌린 귀와 묶습니다.";
    }

    @Override
    public String twoKnotTied() {
        return "왼쪽 귀도 같은 방법으로 묶습니다. 두 매듭은 가운데에서 같은 거리에 있습니다.";
    }

    @Override
    public String twoKnotRollCrossed() {
        return "앞쪽 귀와 먼 쪽 귀를 덮습니다. 위에서 엇걸어 두루마리를 따라 돌립니다.";
    }

    @Override
    public String twoKnotRollEnds() {
        return "왼쪽 자락과 오른쪽 자락을 두루마리의 양 끝으로 접어 넣습니다.";
    }

    @Override
    public String twoKnotRollTied() {
        return "자락마다 제 쪽으로 오는 엇건 귀와 묶습니다.";
    }
}
