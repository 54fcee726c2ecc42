package hearthcloth.words.ruling;

import hearthcloth.words.korean.Particles;

/** The room of ruling in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanRuling implements RulingWords {

    @Override
    public String asked() {
        return "바란 대로의 중심 조각, 띠, 둘레";
    }

    @Override
    public String askedGift(String gift, String tie) {
        return gift + ", " + tie;
    }

    @Override
    public String bars(String rule) {
        return "둘레의 띠: " + rule + ".";
    }

    @Override
    public String bendBars(String rule, String widths) {
        return "띠의 재단 너비는 " + widths + ". 본보기는 " + rule + ".";
    }

    @Override
    public String bendColours(String found, String scheme, String ways) {
        return (found.equals("none") ? "색이 천이 나오는 대로 놓였습니다. 본보기는 " + ways + "." : "색: " + scheme + ". 본보기는 " + ways + ".");
    }

    @Override
    public String bendHearth(String rule, String share, String size) {
        return "중심 조각의 재단 크기는 " + size + "(보자기 너비의 " + share + "). 본보기는 " + rule + ".";
    }

    @Override
    public String bendJoins(int joins, String most) {
        return "이음이 " + "" + joins + "곳" + "인 띠가 있습니다. 본보기는 " + most + "곳까지입니다.";
    }

    @Override
    public String bendMiddle(String lies, String wanted) {
        return Particles.fitted("가운데에 " + wanted + " 대신 " + lies + "이(가) 놓였습니다.");
    }

    @Override
    public String bendOrder(String found, String wanted) {
        return (found.equals("ROUND") ? "띠를 빙 둘러 붙였습니다" : found.equals("PAIRS") ? "띠를 마주 보는 짝으로 붙였습니다" : found.equals("TWO_SIDES") ? "띠를 두 변에 붙였습니다" : "띠를 다른 순서로 붙였습니다") + ". 본보기는 " + (wanted.equals("ROUND") ? "빙 둘러" : wanted.equals("PAIRS") ? "마주 보는 짝" : "두 변") + ".";
    }

    @Override
    public String bendRounds(int rounds, String rule) {
        return "" + rounds + "둘레입니다. 본보기는 " + rule + ".";
    }

    @Override
    public String bendSize(String rule, String size) {
        return "보자기는 " + size + ". 본보기는 " + rule + ".";
    }

    @Override
    public String bendWidths(String least, String most) {
        return least + "~" + most;
    }

    @Override
    public String colours(String rule) {
        return "색: " + rule + ".";
    }

    @Override
    public String fileField(String field, String what) {
        return "\"" + field + "\": " + what + ".";
    }

    @Override
    public String fileFormat(String guideline, String plan, String text) {
        return "여기에 \"" + text + "\"라고 적혀 있습니다. 도안 파일에는 " + plan + ", 견본 파일에는 " + guideline + "이라고 적혀 있습니다";
    }

    @Override
    public String fileGuideline(String what) {
        return "견본 파일이 아닙니다: " + what + ".";
    }

    @Override
    public String fileJson(String line, String text, String why) {
        return Particles.fitted(line + "번째 줄: " + (why.equals("AFTER") ? "파일의 객체가 끝난 뒤에 내용이 더 있습니다" : why.equals("EARLY") ? "파일이 중간에서 끝납니다. 일부만 전송되었거나 저장되었을 수 있습니다" : why.equals("COLON") ? "항목 이름 뒤에 " + text + " 표가 없습니다" : why.equals("COMMA_FIELD") ? "" + text + " 표나 항목 뒤의 쉼표가 없습니다" : why.equals("COMMA_LIST") ? "" + text + " 표나 목록 안의 쉼표가 없습니다" : why.equals("DEEP") ? "너무 여러 겹으로 들어 있습니다" : why.equals("NAME") ? "항목 이름이 없습니다. 이름은 따옴표 안에 적습니다" : why.equals("TWICE") ? "\"" + text + "\" 항목이 두 번 있습니다. 하나를 지우세요" : why.equals("OPEN_QUOTE") ? "따옴표가 닫히지 않았습니다" : why.equals("LINE_END") ? "따옴표 안에서 줄이 끝납니다. 새 줄은 \\n으로 적으세요" : why.equals("ESCAPE") ? "" + text + "은(는) JSON의 글자가 아닙니다. 역사선은 두 번 적으세요" : why.equals("CODE") ? "\\u 뒤에는 0부터 f까지의 글자 네 개가 옵니다" : "값을 알 수 없습니다. 글은 따옴표 안에 적습니다"));
    }

    @Override
    public String fileKind(String kind, String signs) {
        return (kind.equals("OBJECT") ? "여기에는 " + signs + " 안에 항목이 있는 객체가 와야 합니다" : kind.equals("LIST") ? "여기에는 " + signs + " 안에 목록이 와야 합니다" : "여기에는 따옴표 안의 글이 와야 합니다");
    }

    @Override
    public String fileLong(String letters, String most) {
        return letters + "자입니다. " + most + "자까지 됩니다";
    }

    @Override
    public String fileMissing() {
        return "없습니다";
    }

    @Override
    public String fileObject(String sign) {
        return "파일에 객체가 없습니다. 첫 글자는 " + sign + " 입니다.";
    }

    @Override
    public String filePatches(String why) {
        return (why.equals("SCRAPS") ? "이 도안은 자투리 보자기여서 넘겨줄 중심 조각과 띠가 없습니다." : why.equals("HEARTH") ? "이 도안에는 중심 조각이 없습니다. 도안 파일을 다시 만드세요." : why.equals("NONE") ? "이 도안에는 조각이 없습니다. 도안 파일을 다시 만드세요." : why.equals("MANY") ? "이 도안에는 보자기 하나에 들 수 있는 것보다 조각이 많습니다. 도안 파일을 다시 만드세요." : "이 도안의 조각들은 서로 맞지 않습니다. 도안 파일을 다시 만드세요.");
    }

    @Override
    public String filePicture(String why) {
        return (why.equals("LARGE") ? "그림이 너무 큽니다. 330 kB까지 줄이세요" : "base64로 된 그림이 아닙니다. 그림을 다시 넣으세요");
    }

    @Override
    public String filePlan(String what) {
        return "도안 파일이 아닙니다: " + what + ".";
    }

    @Override
    public String fileUnknown(String names) {
        return "이 항목은 여기서 쓰지 않습니다. 있는 것: " + names;
    }

    @Override
    public String fileWhole(String least, String most, String there) {
        return (there.equals("no") ? "없습니다. " + least + "부터 " + most + "까지의 정수를 적으세요" : "안 됩니다. " + least + "부터 " + most + "까지의 정수를 적으세요");
    }

    @Override
    public String giftBooks(String sizes) {
        return "책 두 권(각 " + sizes + ")";
    }

    @Override
    public String giftBottle(String across, String high) {
        return "병(지름 " + across + ", 높이 " + high + ")";
    }

    @Override
    public String giftBottles(String across, String high) {
        return "병 두 개(지름 " + across + ", 높이 " + high + ")";
    }

    @Override
    public String giftBox(String sizes) {
        return "상자 " + sizes;
    }

    @Override
    public String giftRoll(String across, String length) {
        return "두루마리(지름 " + across + ", 길이 " + length + ")";
    }

    @Override
    public String giftRound(String across) {
        return "둥근 물건(지름 " + across + ")";
    }

    @Override
    public String hearth(String rule) {
        return "가운데의 중심 조각: " + rule + ".";
    }

    @Override
    public String isBars(String kind, String most, String width) {
        return (kind.equals("WIDTHS") ? "재단 너비 " + width : kind.equals("WIDTHS_FINISHED") ? "완성 너비 " + width : kind.equals("BETWEEN") ? "재단 너비 " + width + "~" + most : kind.equals("BETWEEN_FINISHED") ? "완성 너비 " + width + "~" + most : kind.equals("SHARE") ? "보자기 너비의 " + width + "~" + most + " %" : kind.equals("STRIPS") ? "가진 좁은 천의 너비대로" : "가진 천에 따라");
    }

    @Override
    public String isColours(String open, String ways) {
        return (open.equals("yes") ? "가진 천에 따라" : "" + ways);
    }

    @Override
    public String isGift(String gift, String tie) {
        return Particles.fitted(gift + "을(를) 쌀 만큼, " + tie);
    }

    @Override
    public String isHearth(String kind, String least, String most, String size) {
        return (kind.equals("EXACT") ? "재단 " + size : kind.equals("FINISHED") ? "완성 " + size : kind.equals("SHARE") ? "보자기 너비의 " + least + "~" + most + " %" : kind.equals("SQUARE") ? "가진 천 한 장에서 나오는 가장 큰 정사각형" : "가진 천에 따라");
    }

    @Override
    public String isRounds(String least, int most) {
        return (most == 0 ? "가진 천이 되는 만큼" : "띠 " + (least.equals("none") ? "" : "" + least + "~") + most + "둘레");
    }

    @Override
    public String isSize(String kind, String most, String size) {
        return (kind.equals("EXACT") ? "완성 " + size : kind.equals("WITHIN") ? "한 변 " + size + "~" + most + "의 정사각형, 가진 천으로 되는 만큼 크게" : "가진 천으로 되는 만큼 크게");
    }

    @Override
    public String isWay(String idea, String scheme) {
        return scheme + "(" + idea + ")";
    }

    @Override
    public String joins(String least, int most) {
        return (most == 0 ? "띠는 모두 한 장이며 잇지 않습니다." : "띠는 이어도 됩니다. 이음은 " + most + "곳까지, 완성 크기는 " + least + "보다 작지 않게.");
    }

    @Override
    public String middle(String middle) {
        return Particles.fitted("가운데에는 " + (middle.equals("FAVOURITE") ? "가장 좋아하는 천" : middle.equals("LIGHTEST") ? "넉넉한 천 가운데 가장 밝은 것" : middle.equals("DARKEST") ? "넉넉한 천 가운데 가장 어두운 것" : "아무 천") + "이(가) 놓입니다.");
    }

    @Override
    public String order(String order) {
        return (order.equals("ROUND") ? "띠를 다음 변에 빙 둘러 붙입니다." : order.equals("PAIRS") ? "띠를 마주 보는 변에 짝으로 붙입니다." : "띠를 두 변에만 붙여 중심 조각이 귀퉁이에 남습니다.");
    }

    @Override
    public String orderOpen() {
        return "띠의 순서는 가진 천에 따릅니다.";
    }

    @Override
    public String plannerMissing() {
        return "이 Hearthcloth는 페이지용 계획기 없이 만들어졌습니다. 폴더에서 ideapage/build를 실행한 뒤 다시 만드세요.";
    }

    @Override
    public String rounds(String rule) {
        return "둘레의 수: " + rule + ".";
    }

    @Override
    public String ruleBar(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 띠가 아닙니다. 띠의 이름은 1A, 1B와 같습니다");
    }

    @Override
    public String ruleMeasure(String rule, String text) {
        return Particles.fitted("\"" + text + "\"은(는) 안 됩니다. 다음 가운데 하나를 적으세요: " + (rule.equals("SIZE") ? "open, \"16 in\"이나 \"16 to 20 in\" 같은 크기, \"for box 30 x 20 x 8 cm\"" : rule.equals("HEARTH") ? "open, largest square, \"30 to 40 %\" 같은 비율, \"14 in\" 같은 크기" : "open, strips, \"8 to 12 %\" 같은 비율, \"2 to 3 in\" 같은 너비"));
    }

    @Override
    public String ruleMost(String most, String none, String text) {
        return Particles.fitted("\"" + text + "\"은(는) 안 됩니다. " + (none.equals("yes") ? "" + most + "까지의 길이를 적으세요" : "0보다 크고 " + most + "까지의 길이를 적으세요"));
    }

    @Override
    public String ruleRange(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 범위가 아닙니다. \"2 to 3 in\"처럼 작은 치수를 먼저 적으세요");
    }

    @Override
    public String ruleReach(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 벗어났습니다. 0보다 크고 5 m까지 적고 단위를 확인하세요");
    }

    @Override
    public String ruleRounds(String most, String text) {
        return Particles.fitted("\"" + text + "\"은(는) 안 됩니다. 1부터 " + most + "까지의 둘레 수, \"2 to 4\"처럼 두 수, 또는 \"open\"을 적으세요");
    }

    @Override
    public String ruleSeam(String names, String text) {
        return Particles.fitted("\"" + text + "\"은(는) 아는 솔기가 아닙니다. 있는 것: " + names);
    }

    @Override
    public String ruleShare(String text) {
        return Particles.fitted("\"" + text + "\"은(는) 비율이 아닙니다. \"30 to 40 %\"처럼 1부터 99까지의 정수를 작은 것부터 적으세요");
    }

    @Override
    public String ruleWay(String names, String text) {
        return Particles.fitted("\"" + text + "\"은(는) 색 배치가 아닙니다. 다음 가운데 하나를 적으세요: " + names);
    }

    @Override
    public String ruleWider() {
        return "넓은 시접이 좁은 시접을 감싸므로 더 넓어야 합니다";
    }

    @Override
    public String seam(String name, String seam) {
        return (seam.equals("felled") ? "쌈솔" : seam.equals("ssamsol") ? "쌈솔(좁게)" : seam.equals("felled_and_trimmed") ? "다듬은 쌈솔" : seam.equals("lapped") ? "맞물린 쌈솔" : seam.equals("french") ? "통솔" : seam.equals("french_trimmed") ? "다듬은 통솔" : seam.equals("gamchimjil") ? "감침질" : "" + name);
    }

    @Override
    public String sewn(String corner, String first, String narrow, String seam, String second, String wide) {
        return "솔기: " + seam + ", " + narrow + " + " + wide + ". 단: " + first + " + " + second + ", " + (corner.equals("MITRED") ? "액자형" : "직각") + " 귀.";
    }

    @Override
    public String size(String rule) {
        return "보자기 크기: " + rule + ".";
    }

    @Override
    public String suited(String tie) {
        return (tie.equals("FOUR_CORNER") ? "상자, 쌓은 것, 무거운 것" : tie.equals("EDGE_ALONG_EDGE") ? "큰 보자기에 놓은 상자" : tie.equals("ERRAND") ? "손에 들고 가는 상자" : tie.equals("FLAT") ? "납작한 상자와 갠 옷(매듭 없음)" : tie.equals("TWO_KNOT") ? "긴 상자와 돗자리" : tie.equals("ONE_BOTTLE") ? "세워 놓은 병" : tie.equals("TWO_BOTTLES") ? "같은 병 두 개" : tie.equals("ROUND") ? "공, 멜론, 둥근 것" : tie.equals("BOOKS") ? "같은 크기의 책 두 권" : "말아 놓은 천, 통, 원통형 용기");
    }

    @Override
    public String tie(String tie) {
        return (tie.equals("FOUR_CORNER") ? "네 귀 묶기" : tie.equals("EDGE_ALONG_EDGE") ? "네 귀 묶기(상자를 보자기와 나란히)" : tie.equals("ERRAND") ? "한 매듭 싸기" : tie.equals("FLAT") ? "평싸기" : tie.equals("TWO_KNOT") ? "두 매듭 싸기" : tie.equals("ONE_BOTTLE") ? "병 하나 싸기" : tie.equals("TWO_BOTTLES") ? "병 두 개 싸기" : tie.equals("ROUND") ? "둥근 물건 싸기" : tie.equals("BOOKS") ? "책 싸기" : "두루마리 싸기");
    }
}
