package hearthcloth.words.handing;

import hearthcloth.words.korean.Particles;

/** The room of handing in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanHanding implements HandingWords {

    @Override
    public String asScraps() {
        return "가진 천에서는 중심 조각과 띠가 나오지 않습니다. 자투리를 그대로 맞추어 놓습니다.";
    }

    @Override
    public String by() {
        return "나누는 사람(적고 싶으면)";
    }

    @Override
    public String choice(String choice) {
        return (choice.equals("kept") ? "생각: 이 보자기처럼" : choice.equals("open") ? "그날만: 가진 천에 따라" : choice.equals("share") ? "생각: 보자기 너비에 대한 비율" : choice.equals("square") ? "가진 가장 큰 정사각형" : choice.equals("strips") ? "가진 긴 천의 너비대로" : choice.equals("any") ? "어느 천이든" : choice.equals("favourite") ? "좋아하는 천" : choice.equals("lightest") ? "가장 밝은 천" : "가장 어두운 천");
    }

    @Override
    public String classAfter(String cloth, String teacher) {
        return cloth + "(" + teacher + ")";
    }

    @Override
    public String classAway() {
        return "거두기";
    }

    @Override
    public String classAwayAbout(String cloth) {
        return cloth + " 거두기";
    }

    @Override
    public String classAwayAsk(String cloth) {
        return Particles.fitted(cloth + "을(를) 거둘까요?");
    }

    @Override
    public String classFitAbout(String cloth) {
        return Particles.fitted(cloth + "을(를) 내 천에 맞추기");
    }

    @Override
    public String classFits() {
        return "가진 천에 맞습니다. 이제 내 것이니 마음대로 바꾸세요.";
    }

    @Override
    public String classFrom(String size, String teacher) {
        return size + ", " + teacher;
    }

    @Override
    public String classHand() {
        return "모두에게 보자기 나누어 주기";
    }

    @Override
    public String classHandOut() {
        return "나누어 주기";
    }

    @Override
    public String classHanded(String cloth) {
        return Particles.fitted(cloth + "을(를) 모두에게 나누어 주었습니다.");
    }

    @Override
    public String classIsAway() {
        return "거두었습니다. 이것으로 만든 보자기는 만든 사람에게 남습니다.";
    }

    @Override
    public String classKeepFirst() {
        return "먼저 내 보자기를 하나 저장하세요. 그러면 모두에게 나누어 줄 수 있습니다.";
    }

    @Override
    public String classLacks() {
        return "천이 모자랍니다. 무엇이 모자라는지 화면에 있습니다.";
    }

    @Override
    public String classLead() {
        return "크기와 차례와 짓는 법은 선생님의 것, 천은 내 것입니다.";
    }

    @Override
    public String classNone() {
        return "아직 나누어 준 보자기가 없습니다.";
    }

    @Override
    public String classOne() {
        return "내 보자기 하나";
    }

    @Override
    public String classTitle() {
        return "지침";
    }

    @Override
    public String classWithdrawn() {
        return "이 지침은 거두었습니다.";
    }

    @Override
    public String empty() {
        return "천 목록이 비어 있습니다. 먼저 가진 천을 넣으세요.";
    }

    @Override
    public String field(String field) {
        return (field.equals("size") ? "크기" : field.equals("hearth") ? "중심 조각" : field.equals("bars") ? "띠" : field.equals("rounds") ? "둘레 수" : field.equals("order") ? "차례" : field.equals("colours") ? "색" : "가운데");
    }

    @Override
    public String fitsAll() {
        return "가진 천에 맞고 규칙을 모두 지킵니다. 이제 내 것이니 마음대로 바꾸세요.";
    }

    @Override
    public String inFavourite() {
        return "가장 좋아하는 천(생각에서 물으면)";
    }

    @Override
    public String inFile() {
        return "파일";
    }

    @Override
    public String inFit() {
        return "내 천에 맞추기";
    }

    @Override
    public String inHow() {
        return "누가 보내 준 지침 파일이나 보자기 하나의 계획 파일. 가진 천에 맞춥니다. 규칙을 다 지킬 수 없으면 가장 가까운 것을 만들고 무엇을 굽혔는지 알려 줍니다.";
    }

    @Override
    public String inTitle() {
        return "생각 가져오기";
    }

    @Override
    public String is() {
        return "이것은";
    }

    @Override
    public String lacks() {
        return "이 보자기에는 아직 천이 모자랍니다. 만들 수 있는 보자기에서만 생각을 꺼낼 수 있습니다.";
    }

    @Override
    public String lead(String cloth) {
        return cloth + "에서 고른 것마다 그것이 이 생각의 뜻인지, 그날만의 것인지 정하세요. 솔기와 단은 그대로 따라갑니다.";
    }

    @Override
    public String name() {
        return "생각의 이름";
    }

    @Override
    public String nearest(String bent, String why) {
        return "가진 천으로 가장 가까운 것입니다. " + bent + " 까닭: " + why;
    }

    @Override
    public String noCloth() {
        return "그런 보자기는 없습니다. 지워졌을 수 있습니다.";
    }

    @Override
    public String noneFits(String why) {
        return "가진 천으로는 아직 이 생각의 보자기를 만들 수 없습니다. " + why;
    }

    @Override
    public String outNone() {
        return "중심 조각과 띠가 있는 보자기가 아직 없습니다.";
    }

    @Override
    public String outTitle() {
        return "내 보자기 나누기";
    }

    @Override
    public String own(String example) {
        return "또는 직접 적는 규칙, 예: " + example;
    }

    @Override
    public String refused(String why) {
        return "이 파일은 그대로 쓸 수 없습니다. " + why;
    }

    @Override
    public String saveFile() {
        return "지침 파일로 저장";
    }

    @Override
    public String savePage() {
        return "누구나 여는 페이지로 저장";
    }

    @Override
    public String scraps() {
        return "자투리 보자기는 그 천에만 맞습니다. 중심 조각과 띠가 있는 보자기만 나눌 수 있습니다.";
    }

    @Override
    public String title() {
        return "생각 나누기";
    }

    @Override
    public String words() {
        return "하고 싶은 말";
    }
}
