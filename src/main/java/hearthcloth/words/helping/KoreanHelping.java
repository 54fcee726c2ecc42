package hearthcloth.words.helping;

/** The room of helping in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanHelping implements HelpingWords {

    @Override
    public String command() {
        return "[명령]";
    }

    @Override
    public String completionHeader() {
        return "bash, zsh, fish의 자동 완성이나 설명서를 씁니다.";
    }

    @Override
    public String completionKind() {
        return "무엇을 쓸지.";
    }

    @Override
    public String guidelineAbout() {
        return "보자기의 선택마다 무엇인지 적습니다: 본보기 그 자체(\"kept\"), 보자기 너비에 대한 몫(\"share\"), 그날 그렇게 된 것뿐(\"open\"), 또는 직접 적은 규칙. 솔기와 단은 그 보자기의 것입니다.";
    }

    @Override
    public String guidelineBars() {
        return "\"kept\", \"share\", \"open\", \"strips\"(가진 띠의 너비), \"2 to 3 in\", \"8 to 12 %\". 보통 \"open\".";
    }

    @Override
    public String guidelineBy() {
        return "건네는 사람.";
    }

    @Override
    public String guidelineCloth() {
        return "보자기: 그 폴더의 plan.json, 표준 입력이면 \"-\", 또는 만든 보자기의 이름.";
    }

    @Override
    public String guidelineColours() {
        return "\"kept\", \"open\", 또는 \"two halves or frames\"(두 반쪽 또는 테두리) 같은 배색. 보통 \"kept\".";
    }

    @Override
    public String guidelineExFollow() {
        return "그 본보기대로, 가진 천으로 만드는 보자기";
    }

    @Override
    public String guidelineExPage() {
        return "누구나 열어서 계획할 수 있는 페이지";
    }

    @Override
    public String guidelineHeader() {
        return "완성한 보자기에서 다른 사람에게 건넬 본보기를 만듭니다.";
    }

    @Override
    public String guidelineHearth() {
        return "중심 조각: \"kept\", \"share\", \"open\", \"largest square\"(가장 큰 정사각형), \"30 to 40 %\", \"14 in cut\"(재단). 보통 \"share\".";
    }

    @Override
    public String guidelineMiddle() {
        return "가운데에 놓는 천: \"any\"(아무거나), \"favourite\"(좋아하는 천), \"lightest\"(가장 밝은 천), \"darkest\"(가장 어두운 천), 또는 천의 이름. 보통 \"any\".";
    }

    @Override
    public String guidelineMostJoins() {
        return "띠 하나의 이음은 많아도 이만큼, 0~40. 적지 않으면 그 보자기대로.";
    }

    @Override
    public String guidelineName() {
        return "본보기의 이름. 적지 않으면 계획의 제목.";
    }

    @Override
    public String guidelineOrder() {
        return "\"kept\" 또는 \"open\". 보통 \"kept\".";
    }

    @Override
    public String guidelinePicture() {
        return "직접 찍거나 그린 그림, PNG 또는 JPEG.";
    }

    @Override
    public String guidelineRounds() {
        return "\"kept\", \"open\", \"3\", \"2 to 4\". 보통 \"kept\".";
    }

    @Override
    public String guidelineSize() {
        return "\"kept\", \"open\", \"16 in\", \"16 to 20 in\", \"for box 30 x 20 x 8 cm\". 보통 \"open\".";
    }

    @Override
    public String guidelineUnit() {
        return "본보기를 따르는 사람의 자. 적지 않으면 그 보자기를 재단한 대로.";
    }

    @Override
    public String guidelineWords() {
        return "본보기에 덧붙이고 싶은 말.";
    }

    @Override
    public String heading(String of) {
        return (of.equals("commands") ? "명령:" : of.equals("wishes") ? "바라는 것:" : of.equals("examples") ? "예:" : of.equals("stash") ? "천 목록 파일" : of.equals("list") ? "목록" : of.equals("idea") ? "무엇을 본보기로 삼는가:" : of.equals("ends") ? "끝나는 번호:" : of.equals("try") ? "함께 들어 있는 예시로 해 보기:" : "옵션:");
    }

    @Override
    public String helpAbout() {
        return "명령이 없으면 프로그램을 설명합니다.";
    }

    @Override
    public String helpHeader() {
        return "명령과 그 옵션을 모두 설명합니다.";
    }

    @Override
    public String helpWhich() {
        return "설명할 명령.";
    }

    @Override
    public String ideaAbout() {
        return "페이지는 파일 하나입니다. 어느 휴대 전화나 컴퓨터에서도 네트워크 없이 열리고, 읽는 사람이 적은 천으로 그 사람의 보자기를 계획합니다. 보내거나 자기 사이트에 올리세요.";
    }

    @Override
    public String ideaExFrom() {
        return "페이지의 예시는 가진 자투리로 계획됩니다";
    }

    @Override
    public String ideaFile() {
        return "본보기 파일. \"-\"는 표준 입력을 읽습니다.";
    }

    @Override
    public String ideaFrom() {
        return "페이지의 예시에 쓸 천. 적지 않으면 지어낸 천.";
    }

    @Override
    public String ideaHeader() {
        return "본보기를 누구나 열어 계획할 수 있는 페이지 하나로 씁니다.";
    }

    @Override
    public String kitsAbout() {
        return "목록의 한 줄마다, 또는 학생 한 사람마다 보자기를 계획하며, 같은 천을 두 번 쓰지 않습니다. 고르게 나눕니다. 이음은 꼭 필요한 만큼만, 중심 조각은 서로 다르게, 누구에게나 밝은 천과 어두운 천이 갑니다. plan처럼 저마다 번호 붙은 폴더를 받습니다. 그 밖에 kits.pdf(선생님용 한 장, 장보기 목록, 봉투와 조각마다의 조각표)와 kits.json이 있습니다. 여기서 바라는 것은 모두에게 해당하고, 목록에서 달리 적을 수 있습니다.";
    }

    @Override
    public String kitsCsv() {
        return "쉼표로 나눈 글(CSV, UTF-8), 보자기 하나에 한 줄. 첫 줄에 칸의 이름을 적습니다: name(이름)과, gift(선물) 또는 size(크기). 그 밖에 plan의 어떤 바람이든 앞의 줄표 없이 적을 수 있습니다. 예: tie, hearth, bars, rounds, fabrics, free.";
    }

    @Override
    public String kitsDone() {
        return "모두 바라는 대로입니다";
    }

    @Override
    public String kitsExList() {
        return "선물 목록";
    }

    @Override
    public String kitsExStudents() {
        return "수업에 쓸 봉투 열두 개, 크기는 모두 같게";
    }

    @Override
    public String kitsFirst() {
        return "안나";
    }

    @Override
    public String kitsHeader() {
        return "천 목록 하나로 수업이나 철마다의 선물을 위한 보자기를 여럿 계획합니다.";
    }

    @Override
    public String kitsSecond() {
        return "할머니";
    }

    @Override
    public String kitsShort() {
        return "모자라는 것이 있습니다. 무엇인지 알리고 가장 가까운 것을 그립니다";
    }

    @Override
    public String kitsStudents() {
        return "목록 대신 같은 보자기를 이만큼: 1~99.";
    }

    @Override
    public String kitsWishes() {
        return "보자기 목록.";
    }

    @Override
    public String label(String of) {
        return (of.equals("URL") ? "URL" : of.equals("FILE") ? "파일" : of.equals("COPY") ? "사본" : of.equals("FOLDER") ? "폴더" : of.equals("LIST") ? "목록" : of.equals("STASH") ? "천목록" : of.equals("IDEA") ? "본보기" : of.equals("PLAN") ? "plan" : of.equals("CLOTH") ? "보자기" : of.equals("PAGE") ? "페이지" : of.equals("PICTURE") ? "그림" : of.equals("PHOTO") ? "사진" : of.equals("SHEET") ? "종이" : of.equals("FABRIC") ? "천" : of.equals("NAMES") ? "이름" : of.equals("NAME") ? "이름" : of.equals("WORDS") ? "말" : of.equals("GIFT") ? "선물" : of.equals("TIE") ? "싸는법" : of.equals("LENGTH") ? "길이" : of.equals("SIZE") ? "크기" : of.equals("SIZES") ? "크기" : of.equals("WIDTHS") ? "너비" : of.equals("FACE") ? "면" : of.equals("WAY") ? "방향" : of.equals("ORDER") ? "차례" : of.equals("SETTING") ? "배치" : of.equals("RULE") ? "규칙" : of.equals("PIECE") ? "번호" : of.equals("PIECES") ? "번호" : of.equals("SEAM") ? "솔기" : of.equals("HEM") ? "단" : of.equals("CORNER") ? "귀" : of.equals("COLOURS") ? "배색" : of.equals("HOW") ? "정도" : of.equals("TIME") ? "시간" : of.equals("LANGUAGE") ? "언어" : of.equals("COMMAND") ? "명령" : "");
    }

    @Override
    public String mainAbout() {
        return "명령이 없으면 작업방을 브라우저에 엽니다.";
    }

    @Override
    public String mainAddress() {
        return "이 컴퓨터의 프록시를 거쳐 공방에 들어가는 주소: https://studio.example";
    }

    @Override
    public String mainCode() {
        return "다른 사람도 로그인해 있는 이 컴퓨터에서도 번호를 묻습니다.";
    }

    @Override
    public String mainData() {
        return "작업을 담아 두는 파일. 적지 않으면 늘 쓰는 곳. 또는 공방의 데이터베이스: postgresql://HOST/NAME";
    }

    @Override
    public String mainDone() {
        return "다 되었습니다";
    }

    @Override
    public String mainHeader() {
        return "가진 천으로 양면을 다 쓰는 홑겹 조각 보자기를 계획합니다.";
    }

    @Override
    public String mainLan() {
        return "이 네트워크의 휴대 전화와 태블릿을 들입니다. 저마다 작업방에 나오는 번호가 있어야 합니다.";
    }

    @Override
    public String mainLanguage() {
        return "이 도움말과 여기서 알리는 말의 언어: \"en\", \"ko\", \"ja\", \"fr\", \"de\", \"es\". 작업방은 브라우저의 언어로 말합니다.";
    }

    @Override
    public String mainMore(String command) {
        return "바라는 것 모두와 예: " + command;
    }

    @Override
    public String mainNew() {
        return "파일이 있다가 없어진 자리에 빈 작업방을 새로 시작합니다.";
    }

    @Override
    public String mainNoBrowser() {
        return "작업방의 주소만 알리고 브라우저는 열지 않습니다.";
    }

    @Override
    public String mainPort(String usual) {
        return "작업방의 포트. 보통 " + usual + ". 쓰이고 있으면 다음 빈 포트를 씁니다.";
    }

    @Override
    public String mainRestore() {
        return "먼저 안전 사본을 파일 자리에 되돌려 놓습니다: \"last\"(마지막 것) 또는 사본의 이름.";
    }

    @Override
    public String mainShort() {
        return "가진 천으로는 바라는 것을 만들 수 없습니다. 무엇이 모자라는지 알립니다";
    }

    @Override
    public String mainWrong() {
        return "입력한 것이나 파일에 적힌 것을 쓸 수 없습니다. 어디인지 알립니다";
    }

    @Override
    public String manualFiles() {
        return "하신 작업. 그 곁의 workroom.db.copies에 안전 사본이 있습니다.";
    }

    @Override
    public String manualSame() {
        return "그 이름의 옵션을 적지 않았을 때 쓰는 것.";
    }

    @Override
    public String manualSettings() {
        return "HEARTHCLOTH_PORT=4732 같은 줄이 있는 파일. 둘 다 없을 때 씁니다.";
    }

    @Override
    public String optionBudget(String usual) {
        return "더 나은 것을 찾는 시간: \"500ms\", \"2s\", \"1min\". 보통 \"" + usual + "\".";
    }

    @Override
    public String optionFile() {
        return "써넣을 파일.";
    }

    @Override
    public String optionFolder() {
        return "써넣을 폴더: 새것, 또는 전에 계획한 것.";
    }

    @Override
    public String optionGift() {
        return "쌀 것: \"box 30 x 20 x 8 cm\"(상자), \"bottle 8 x 30 cm\"(병), \"two bottles 8 x 30 cm\"(병 두 개), \"ball 22 cm\"(공), \"books 21 x 15 x 2 cm\"(책), \"roll 6 x 40 cm\"(두루마리).";
    }

    @Override
    public String optionGuide(String usual) {
        return "guide.pdf에 얼마나 적을지: \"full\"은 혼자 보는 이에게, \"class\"는 가르칠 때 쓰는 네 쪽에서 여섯 쪽. 보통 \"" + usual + "\".";
    }

    @Override
    public String optionHelp() {
        return "이 도움말을 보입니다.";
    }

    @Override
    public String optionJson() {
        return "프로그램을 위해 JSON으로 알립니다. 길이는 나노미터.";
    }

    @Override
    public String optionLanguage() {
        return "알리고 인쇄하는 언어: \"en\", \"ko\", \"ja\", \"fr\", \"de\", \"es\", 또는 그 이름. 적지 않으면 셸의 언어.";
    }

    @Override
    public String optionPaper() {
        return "인쇄할 종이: \"a4\" 또는 \"letter\". 적지 않으면 인치는 letter, 그 밖에는 A4.";
    }

    @Override
    public String optionReplace() {
        return "이미 있는 파일 위에 씁니다.";
    }

    @Override
    public String optionStash() {
        return "천 목록 파일. \"-\"는 표준 입력을 읽습니다.";
    }

    @Override
    public String optionTie() {
        return "싸는 법. 예: \"errand wrap\"(한 매듭 싸기). 적지 않으면 계획은 보통 싸는 법을 쓰고, size는 모두 알립니다.";
    }

    @Override
    public String optionUnit() {
        return "쓰는 자, 그리고 단위 없는 수의 단위: \"in\"(인치) 또는 \"cm\". 적지 않으면 읽은 것이 적힌 대로.";
    }

    @Override
    public String optionVersion() {
        return "판과, 어느 커밋에서 만들었는지 알립니다.";
    }

    @Override
    public String optional() {
        return "[옵션]";
    }

    @Override
    public String planAbout() {
        return "천 목록을 읽고, 정말로 만들 수 있는 서로 다른 보자기를 여럿 계획합니다. 저마다 번호 붙은 폴더를 받으며, 좋은 것부터 plan.json, front.svg, back.svg, cut.svg, guide.pdf가 들어갑니다. --gift가 있으면 싼 모습인 tied.svg도 들어갑니다. 적지 않은 것은 대신 고르고, 무엇을 골랐는지 알립니다.";
    }

    @Override
    public String planCsv() {
        return "쉼표로 나눈 글(CSV, UTF-8). 첫 줄에는 칸의 이름을 아무 차례로나 적고, 그다음은 천 한 장에 한 줄입니다. 꼭 있어야 하는 것: fabric(천), width(너비), length(길이, 식서를 따라). 있으면 좋은 것: count(장수), colour(색, \"#8a9a5b\" 또는 \"olive\"), faces(\"same\"은 양면이 같음, \"right\"는 겉이 하나), nap(결: \"any\" 또는 \"lengthwise\"), washed(빨았는지: \"yes\" 또는 \"no\"), unit(단위), note(메모).";
    }

    @Override
    public String planCsvOther() {
        return "돛 줄무늬";
    }

    @Override
    public String planCsvPlain() {
        return "다시마빛 리넨";
    }

    @Override
    public String planDone() {
        return "보자기를 계획했습니다";
    }

    @Override
    public String planExBest() {
        return "가진 천으로 가장 잘되는 것을 되도록 크게";
    }

    @Override
    public String planExBlocks() {
        return "작은 통나무집 무늬 아홉을 이어서";
    }

    @Override
    public String planExCut() {
        return "중심 조각과 띠는 재단 크기. 완성 크기는 거기서 나옵니다";
    }

    @Override
    public String planExFree() {
        return "자투리를 있는 그대로 이어서";
    }

    @Override
    public String planExGift() {
        return "그 상자를 쌀 만한 크기";
    }

    @Override
    public String planExIdea() {
        return "선생님의 본보기를 가진 천에 맞추어";
    }

    @Override
    public String planExInput() {
        return "천 목록은 다른 프로그램에서";
    }

    @Override
    public String planExPairs() {
        return "띠를 마주 보게 두 개씩 박고, 천은 두 가지만";
    }

    @Override
    public String planFavourite() {
        return "--guideline과 함께: 가장 좋아하는 천. 본보기가 그것을 청할 때 가운데에 씁니다.";
    }

    @Override
    public String planGuideline() {
        return "직접 바라는 것 대신 이 본보기를 따릅니다. 가장 가까운 보자기와, 지키지 못한 규칙을 알립니다.";
    }

    @Override
    public String planHeader() {
        return "천 목록으로 보자기를 계획합니다. 어느 천에서 무엇을 재단하고 어떻게 꿰매는지까지.";
    }

    @Override
    public String planLike() {
        return "색이 마음에 드는 그림. 그 주된 색에 가장 가까운 천만 씁니다.";
    }

    @Override
    public String planNet() {
        return "--gift와 함께: net.pdf와 net.svg도 씁니다. 접는 금을 다 넣은 펼친 보자기로, 종이로 접어 볼 수 있습니다.";
    }

    @Override
    public String planPng() {
        return "그림을 PNG로도 씁니다.";
    }

    @Override
    public String planShort() {
        return "가진 천으로는 바라는 것을 만들 수 없습니다. 무엇이 모자라는지 알리고 가장 가까운 것을 써 둡니다";
    }

    @Override
    public String planSlips() {
        return "slips.pdf도 씁니다. 조각마다 꽂아 두는 조각표입니다.";
    }

    @Override
    public String readAbout() {
        return "천을 판판하게, 서로 떼어, 잘 구별되는 바닥에 놓습니다. 크기를 아는 종이나 은행 카드, 재단판을 함께 놓습니다. 위에서, 모두 다 들어오게 한 장 찍습니다. 천의 크기는 그 종이로 잽니다. 미심쩍은 천은 이름을 알리고 뺍니다. 넣을 수도 있습니다.";
    }

    @Override
    public String readDone() {
        return "천 목록 파일을 썼습니다";
    }

    @Override
    public String readExPicture() {
        return "읽은 것을 사진에도 그립니다";
    }

    @Override
    public String readExPlan() {
        return "읽은 것으로 보자기를 계획합니다";
    }

    @Override
    public String readFile() {
        return "파일에는 천과 크기마다 한 줄이 있습니다. 그 천에서 틀림없이 나오는 가장 큰 직사각형을 자의 눈금으로 내려 적습니다. 닮은 천은 한 가지로 보고 색의 이름으로 부릅니다. 파일에서 이름을 고치고, 겉이 있는 천을 적으세요.";
    }

    @Override
    public String readHeader() {
        return "사진에서 천을 읽어 천 목록 파일로 씁니다.";
    }

    @Override
    public String readKeepDoubtful() {
        return "미심쩍은 천도 씁니다.";
    }

    @Override
    public String readOut() {
        return "써넣을 천 목록 파일.";
    }

    @Override
    public String readPhoto() {
        return "JPEG 또는 PNG. \"-\"는 표준 입력을 읽습니다.";
    }

    @Override
    public String readPicture() {
        return "읽은 것을 사진에도 그립니다.";
    }

    @Override
    public String readSheet() {
        return "사진 속에 있는 크기를 아는 것: \"sheet\"(재는 종이. 선의 길이가 다르면 \"sheet 19.9 cm\"), \"a4\", \"letter\", \"card\"(은행 카드), 또는 \"12 x 18 in\" 같은 크기.";
    }

    @Override
    public String readShort() {
        return "쓸 수 있는 천이 없습니다. 까닭을 알립니다";
    }

    @Override
    public String readUnit() {
        return "쓰는 자. 적지 않으면 \"letter\"는 인치, \"a4\"는 센티미터, 그 밖에는 종이를 적은 대로.";
    }

    @Override
    public String sheetAbout() {
        return "이 종이를 함께 찍으면 맨종이보다 더 틀림없이 잽니다. 그 표시는 천으로 잘못 보이지 않고, 종이가 휜 것도 알려 줍니다. 100 %로, 쪽에 맞추지 말고 인쇄합니다. 그런 다음 가는 선에 자를 대어 봅니다. 20 cm(7 7/8 in)입니다.";
    }

    @Override
    public String sheetExRuler() {
        return "자로 재니 인쇄된 선이 19.9 cm일 때";
    }

    @Override
    public String sheetHeader() {
        return "천 사이에 놓을 재는 종이를 인쇄하도록 씁니다.";
    }

    @Override
    public String sheetPaper() {
        return "프린터의 종이: \"a4\" 또는 \"letter\". 보통 \"a4\".";
    }

    @Override
    public String sizeAbout() {
        return "선물은 바깥을 잽니다. 상자는 길이 x 너비 x 높이, 병은 지름 x 높이, 공은 지름, 책은 한 권의 높이 x 너비 x 두께, 두루마리는 지름 x 길이. 바닥의 두 변은 어느 쪽을 먼저 적어도 됩니다. 크기는 모두 단까지 마친 완성 크기입니다.";
    }

    @Override
    public String sizeCloth() {
        return "완성된 보자기: \"38 1/2 in\" 또는 \"90 x 100 cm\".";
    }

    @Override
    public String sizeExCloth() {
        return "그 정사각형 보자기로 쌀 수 있는 것";
    }

    @Override
    public String sizeExSteps() {
        return "싸는 차례와 함께";
    }

    @Override
    public String sizeExTie() {
        return "이 싸는 법만, 센티미터로";
    }

    @Override
    public String sizeHeader() {
        return "선물에 드는 보자기의 크기, 또는 보자기로 쌀 수 있는 것을 알립니다.";
    }

    @Override
    public String sizeSteps() {
        return "싸는 법도 차례대로 알립니다. --tie와 함께 쓰는 것이 좋습니다.";
    }

    @Override
    public String usage() {
        return "쓰는 법:";
    }

    @Override
    public String wishBands() {
        return "--free와 함께: 가로로 놓이는 줄(\"across\"), 세로로 놓이는 줄(\"down\"), 또는 \"any\". 보통 \"any\".";
    }

    @Override
    public String wishBars() {
        return "띠의 재단 너비: \"5 in\"이면 모두 같게, \"5 in, 4 in\"이면 둘레마다(마지막이 이어짐). 보이는 너비라면 \"finished\"를 붙입니다. 보통 \"stash\".";
    }

    @Override
    public String wishBlocks() {
        return "작은 통나무집 무늬의 가로 수와 세로 수: \"3 x 3\". 이때 --rounds와 --order는 블록마다의 것입니다.";
    }

    @Override
    public String wishClearance() {
        return "이음은 만나게 될 솔기에서 이만큼 떨어집니다: \"1 in\" 또는 \"25 mm\".";
    }

    @Override
    public String wishContrast() {
        return "\"most\"(되도록 강하게), \"reads\"(통나무집 무늬가 보이게), \"easy\"(그 사이), \"quiet\"(은은하게), \"melts\"(한 바탕으로 녹아들게). 보통 \"reads\".";
    }

    @Override
    public String wishCorner() {
        return "단의 귀: \"square\"(네모 귀) 또는 \"mitred\"(액자형 귀).";
    }

    @Override
    public String wishFabrics() {
        return "이 천만 씁니다. 쉼표로 나누며, 첫째가 가운데 천입니다.";
    }

    @Override
    public String wishFell() {
        return "접은 솔기와 단이 놓이는 면: \"front\"(앞면) 또는 \"back\"(뒷면).";
    }

    @Override
    public String wishFree() {
        return "중심 조각과 띠 없이 자투리를 있는 그대로 잇습니다. --blocks나 --rounds와 함께 쓰면 통나무집 무늬 둘레에 자투리.";
    }

    @Override
    public String wishHearth() {
        return "가운데 조각의 재단 크기: \"14 in\", \"12 x 9 in\". 보이는 크기라면 \"12 in finished\". 보통 \"stash\"(가진 천에 맡김).";
    }

    @Override
    public String wishHem() {
        return "단의 첫째 + 둘째 접기: \"1/4 + 1/4 in\".";
    }

    @Override
    public String wishLeastPiece() {
        return "이은 띠의 어느 부분도 이보다 짧게 보이지 않습니다: \"2 in\" 또는 \"5 cm\".";
    }

    @Override
    public String wishLeeway() {
        return "띠를 이만큼 길게 재단하고 박은 뒤에 잘라 냅니다: \"1/2 in\" 또는 \"12 mm\".";
    }

    @Override
    public String wishMiddle() {
        return "--free와 함께: 한가운데에 그대로 놓을 천의 번호. 나머지는 그 둘레에.";
    }

    @Override
    public String wishMostJoins() {
        return "띠 하나의 이음은 많아도 이만큼, 0~40. 보통 4.";
    }

    @Override
    public String wishMostTrim() {
        return "--free와 함께: 천의 너비나 길이에서 이보다 많이 잘라 내지 않습니다: \"1/2 in\".";
    }

    @Override
    public String wishOffMiddle() {
        return "선물을 보자기 한가운데에서 비켜 놓기: \"1 in right\"(오른쪽으로), \"2 cm left, 3 cm away\"(왼쪽으로, 먼 쪽으로. 앞쪽은 \"near\").";
    }

    @Override
    public String wishOrder() {
        return "\"round\"(띠마다 다음 변에), \"pairs\"(마주 보는 변에), \"two-sides\"(중심 조각은 귀에 남음).";
    }

    @Override
    public String wishOutside() {
        return "쌌을 때 보이는 면: \"front\"(앞면) 또는 \"back\"(뒷면). 보통 \"front\".";
    }

    @Override
    public String wishProposals() {
        return "서로 다른 보자기를 몇 가지 내놓을지, 1~12. 보통 4.";
    }

    @Override
    public String wishRounds() {
        return "띠의 둘레 수, 1~40, 또는 \"stash\".";
    }

    @Override
    public String wishScheme() {
        return "배색: \"two halves\"(두 반쪽), \"spiral\"(소용돌이), \"turn and turn about\"(번갈아), \"ring by ring\"(둘레마다), \"light to dark\"(밝음에서 어두움으로), \"frames\"(테두리), \"one field\"(한 바탕), \"scattered evenly\"(고루 흩기), \"one bright scrap\"(밝은 자투리 하나). 보통 \"stash\". 한꺼번에 둘: \"two halves + one bright scrap\".";
    }

    @Override
    public String wishScraps() {
        return "--free와 함께: \"as-they-are\"(자투리를 둘로 자르지 않음), \"cut\"(도움이 되면 자름), \"either\"(어느 쪽이든). 보통 \"either\".";
    }

    @Override
    public String wishSeam() {
        return "쌈솔의 좁은 시접 + 넓은 시접, \"1/4 + 1/2 in\". 또는 솔기의 이름: \"ssamsol\", \"french\", \"lapped\" 등.";
    }

    @Override
    public String wishSeed() {
        return "다른 정수를 적으면 다른 우연을 시험합니다. 보통 1.";
    }

    @Override
    public String wishSetting() {
        return "블록의 밝은 반쪽과 어두운 반쪽을 놓는 법: \"straight furrow\"(곧은 고랑), \"barn raising\"(헛간 올리기), \"sunshine and shadow\"(햇빛과 그늘), \"turned at will\"(마음대로 돌림), \"all alike\"(모두 같게).";
    }

    @Override
    public String wishShow() {
        return "이 천을 쌌을 때 보이는 곳에 놓습니다.";
    }

    @Override
    public String wishSize() {
        return "선물 대신 완성 크기: \"38 1/2 in\"(정사각형) 또는 \"38 x 30 in\".";
    }

    @Override
    public String wishSizes() {
        return "--free와 함께: \"mixed\"(크고 작은 조각), \"even\"(되도록 고르게), \"any\"(아무렇게나). 보통 \"any\".";
    }

    @Override
    public String wishSlack() {
        return "선물을 쌀 보자기를, 꿰매며 줄어들 것에 대비해 가장 작은 것보다 얼마나 크게 할지: \"1/2 in\", \"12 mm\", 또는 \"none\"(가장 작게).";
    }

    @Override
    public String wishTrim() {
        return "띠를 이만큼 넓게 재단하고 박은 뒤에 잘라 냅니다. 보통 \"none\"(없음).";
    }

    @Override
    public String wishTurned() {
        return "선물 밑에서 보자기를 왼쪽으로 4분의 1씩 돌리는 수: 0~3. 보통 0.";
    }

    @Override
    public String wishWith() {
        return "--free와 함께: 꼭 들어가야 하는 천의 번호, 쉼표로 나누어: \"3, 12-2\".";
    }
}
