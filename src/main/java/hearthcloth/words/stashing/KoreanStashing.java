package hearthcloth.words.stashing;

import hearthcloth.words.korean.Particles;

/** The room of stashing in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanStashing implements StashingWords {

    @Override
    public String added(String first, String last, int n) {
        return (n == 1 ? "천 " + n + "장을 넣었습니다. 번호 " + first + "." : "천 " + n + "장을 넣었습니다. 번호 " + first + "–" + last + ".");
    }

    @Override
    public String addedKnown(String fabric) {
        return Particles.fitted(fabric + "은(는) 이미 있었습니다. 색, 겉과 안, 결은 여기에 있는 대로 둡니다.");
    }

    @Override
    public String and(String before, String next) {
        return before + ", " + next;
    }

    @Override
    public String area(String number, String unit) {
        return (unit.equals("m") ? "" + number + " m²" : "" + number + "제곱야드");
    }

    @Override
    public String asideBack() {
        return "되돌려 놓기";
    }

    @Override
    public String asideNote() {
        return "따로 둔 천은 목록에 남지만, 그것으로 보자기를 계획하지 않습니다.";
    }

    @Override
    public String asideSet() {
        return "따로 두기";
    }

    @Override
    public String asideTitle() {
        return "다른 데 쓸 것";
    }

    @Override
    public String backStash() {
        return "천 목록으로";
    }

    @Override
    public String backTable() {
        return "작업대로";
    }

    @Override
    public String chosen() {
        return "고른 것";
    }

    @Override
    public String chosenBack() {
        return "되돌려 놓기";
    }

    @Override
    public String chosenFirst() {
        return "이것부터 쓰기";
    }

    @Override
    public String chosenFreeAlready() {
        return "이미 쓸 수 있습니다.";
    }

    @Override
    public String chosenKeep() {
        return "남겨 두기";
    }

    @Override
    public String chosenKeptAlready() {
        return "이미 남겨 두었습니다.";
    }

    @Override
    public String chosenMany() {
        return "%d장 고름";
    }

    @Override
    public String chosenMore() {
        return "자세히";
    }

    @Override
    public String chosenNone() {
        return "고르지 않음";
    }

    @Override
    public String chosenNothing() {
        return "먼저 작업대에서 천을 고르세요.";
    }

    @Override
    public String chosenUsed() {
        return "다 썼음";
    }

    @Override
    public String colour(String hue, String tone) {
        return (tone.equals("dark") ? "진한 " + hue : tone.equals("light") ? "밝은 " + hue : tone.equals("pale") ? "옅은 " + hue : tone.equals("bright") ? "선명한 " + hue : tone.equals("greyish") ? "잿빛 " + hue : "" + hue);
    }

    @Override
    public String colourUnknown() {
        return "색을 아직 모름";
    }

    @Override
    public String deedAdd(String what) {
        return what + " 넣기";
    }

    @Override
    public String deedAddFile(String what) {
        return "파일에서 " + what + " 넣기";
    }

    @Override
    public String deedAside(String what) {
        return what + " 따로 두기";
    }

    @Override
    public String deedBack(String what) {
        return what + " 되돌려 놓기";
    }

    @Override
    public String deedChange(String what) {
        return what + " 바꾸기";
    }

    @Override
    public String deedDelete(String what) {
        return what + " 지우기";
    }

    @Override
    public String deedFabric(String fabric) {
        return "천 바꾸기: " + fabric;
    }

    @Override
    public String deedSplit(String what) {
        return what + " 둘로 자르기";
    }

    @Override
    public String deedUse(String what) {
        return what + " 다 씀";
    }

    @Override
    public String done(String deed) {
        return "완료: " + deed + ".";
    }

    @Override
    public String fabricAbout(String colour, String faces, String nap) {
        return colour + ", " + (faces.equals("RIGHT") ? "겉이 있음" : "양면이 같음") + (nap.equals("LENGTHWISE") ? ", 결이 길이 방향" : "");
    }

    @Override
    public String fabricAboutWrong(String colour, String faces, String nap, String wrong) {
        return colour + ", " + (faces.equals("RIGHT") ? "겉이 있음" : "양면이 같음") + ", 안은 " + wrong + (nap.equals("LENGTHWISE") ? ", 결이 길이 방향" : "");
    }

    @Override
    public String fabricAcross() {
        return "짧은 변에 담긴 천의 길이";
    }

    @Override
    public String fabricAll() {
        return "이 천 모두에";
    }

    @Override
    public String fabricAsideAll() {
        return "모두 따로 두기";
    }

    @Override
    public String fabricAsideSome(String aside, String pieces) {
        return pieces + "장 중 " + aside + "장을 따로 두었습니다.";
    }

    @Override
    public String fabricAway() {
        return "사진 빼기";
    }

    @Override
    public String fabricAwaySure() {
        return "사진을 뺄까요? 다시 쓰려면 다시 보내야 합니다.";
    }

    @Override
    public String fabricBackAll() {
        return "모두 되돌려 놓기";
    }

    @Override
    public String fabricChanged(String pieces) {
        return "바꾸었습니다: " + pieces + ".";
    }

    @Override
    public String fabricFile() {
        return "사진(PNG 또는 JPEG)";
    }

    @Override
    public String fabricHow() {
        return "밝은 낮에 천을 평평하게 놓고 찍습니다. 사진의 가운데를 이 천이 그려지는 곳마다 이어 붙입니다.";
    }

    @Override
    public String fabricIsAside() {
        return "따로 두었습니다. 이것으로 보자기를 계획하지 않습니다.";
    }

    @Override
    public String fabricIsBack() {
        return "되돌려 놓았습니다. 다시 보자기를 계획할 때 씁니다.";
    }

    @Override
    public String fabricMerge() {
        return "다른 천의 이름을 주면 둘이 하나가 됩니다. 천 쪽에서 되돌릴 수 있습니다.";
    }

    @Override
    public String fabricNoPicture() {
        return "이 천의 사진이 없습니다.";
    }

    @Override
    public String fabricNone() {
        return "그런 이름의 천이 이제 없습니다.";
    }

    @Override
    public String fabricOwn() {
        return "직접 찍은 사진";
    }

    @Override
    public String fabricPicture(String about) {
        return about + ". 그림은 20 cm(약 8인치)를 보여 줍니다.";
    }

    @Override
    public String fabricSavePicture() {
        return "사진 저장";
    }

    @Override
    public String fabricTiled() {
        return "사진을 저장하고 축척에 맞게 이어 붙였습니다.";
    }

    @Override
    public String fabricUntiled() {
        return "사진을 뺐습니다. 다시 색으로 보입니다.";
    }

    @Override
    public String fabricWrongAcross() {
        return "사진에는 천이 1 cm에서 3 m까지 담깁니다. 왼쪽 끝에서 오른쪽 끝까지 재세요.";
    }

    @Override
    public String fieldColour() {
        return "색";
    }

    @Override
    public String fieldColourBlank() {
        return "색(비워 두어도 됩니다)";
    }

    @Override
    public String fieldFabric() {
        return "천";
    }

    @Override
    public String fieldFaces() {
        return "겉과 안";
    }

    @Override
    public String fieldFacesAre(String faces) {
        return (faces.equals("same") ? "양면이 같음" : "겉이 있음");
    }

    @Override
    public String fieldHowMany() {
        return "몇 장";
    }

    @Override
    public String fieldHowManyOf(String n) {
        return n + "장 중 몇 장";
    }

    @Override
    public String fieldLength() {
        return "식서 방향 길이";
    }

    @Override
    public String fieldLengthIn(String unit) {
        return "식서 방향 길이, " + unit;
    }

    @Override
    public String fieldName() {
        return "이름";
    }

    @Override
    public String fieldNap() {
        return "결";
    }

    @Override
    public String fieldNapIs(String nap) {
        return (nap.equals("any") ? "없음, 아무 방향" : "길이 방향");
    }

    @Override
    public String fieldWashed() {
        return "빨래";
    }

    @Override
    public String fieldWashedIs(String washed) {
        return (washed.equals("UNKNOWN") ? "모름" : washed.equals("YES") ? "빨았음" : "빨지 않음");
    }

    @Override
    public String fieldWidth() {
        return "너비";
    }

    @Override
    public String fieldWidthIn(String unit) {
        return "너비, " + unit;
    }

    @Override
    public String fieldWrong() {
        return "안";
    }

    @Override
    public String fieldWrongOwn() {
        return "안이 이 색입니다";
    }

    @Override
    public String fileColumns() {
        return "천에 관한 것이 아닌 열은 뺐습니다.";
    }

    @Override
    public String fileEncoding() {
        return "이 파일은 UTF-8 글이 아닙니다. 표 프로그램에서 CSV(UTF-8)로 저장하세요.";
    }

    @Override
    public String fileRefused() {
        return "파일을 받지 않았습니다. 바뀐 것은 없습니다.";
    }

    @Override
    public String goCloth() {
        return "이 천으로 무엇을 만들까요?";
    }

    @Override
    public String goGift() {
        return "무엇을 쌀까요?";
    }

    @Override
    public String goneDelete() {
        return "지우기(잘못 넣음)";
    }

    @Override
    public String goneNoPiece() {
        return "이런 천은 이제 없습니다. 다 썼거나 지웠습니다.";
    }

    @Override
    public String goneTitle() {
        return "이제 없음";
    }

    @Override
    public String goneUndo() {
        return "둘 다 천 쪽에서 되돌릴 수 있습니다.";
    }

    @Override
    public String groupNote(String faces, String nap, String pieces) {
        return pieces + (faces.equals("RIGHT") ? " · R" : "") + (nap.equals("LENGTHWISE") ? " · 결" : "");
    }

    @Override
    public String heardAbout(String about, String length, String width) {
        return about + ". 너비 " + width + ", 식서 방향 " + length;
    }

    @Override
    public String heardFabrics(int fabrics, String pieces) {
        return "" + pieces + ", 천 종류 " + fabrics + "가지";
    }

    @Override
    public String heardKnown(String about, String fabric) {
        return Particles.fitted(fabric + "은(는) 이미 천 목록에 있으며 그대로 둡니다: " + about + ".");
    }

    @Override
    public String heardUnclear(String first, int n) {
        return "알 수 없는 줄이 " + n + "개입니다. 첫 줄: " + first;
    }

    @Override
    public String heardWhat(String fabric, String size) {
        return size + ", " + fabric;
    }

    @Override
    public String heldAside(int n) {
        return (n == 0 ? "따로 둠" : "따로 둠 " + n + "장");
    }

    @Override
    public String heldFor(String cloth, int n) {
        return (n == 0 ? "" + cloth + "에 쓸 것" : "" + cloth + "에 쓸 것 " + n + "장");
    }

    @Override
    public String heldMore(String before, String next) {
        return before + "; " + next;
    }

    @Override
    public String hue(String hue) {
        return (hue.equals("white") ? "하양" : hue.equals("grey") ? "회색" : hue.equals("black") ? "검정" : hue.equals("pink") ? "분홍" : hue.equals("wine_red") ? "포도주색" : hue.equals("orange") ? "주황" : hue.equals("brown") ? "갈색" : hue.equals("red") ? "빨강" : hue.equals("cream") ? "크림색" : hue.equals("beige") ? "베이지" : hue.equals("yellow") ? "노랑" : hue.equals("olive_green") ? "올리브색" : hue.equals("green") ? "초록" : hue.equals("yellow_green") ? "연두" : hue.equals("teal") ? "청록" : hue.equals("turquoise") ? "터키색" : hue.equals("blue") ? "파랑" : "보라");
    }

    @Override
    public String lineAdd() {
        return "넣기";
    }

    @Override
    public String lineAsks() {
        return "몇 장, 어떤 천, 얼마나 큰지. 여러 줄도 됩니다.";
    }

    @Override
    public String lineExample(String unit) {
        return (unit.equals("metric") ? "초록 무늬 12장 10 x 20" : "초록 무늬 12장 4 x 8");
    }

    @Override
    public String lineListening() {
        return "듣는 중, 누르면 멈춥니다";
    }

    @Override
    public String lineMany(String lines, String most) {
        return lines + "줄입니다. 한 번에 " + most + "줄까지 받습니다. CSV 파일은 더 받습니다.";
    }

    @Override
    public String lineMend() {
        return "먼저 고쳐야 합니다.";
    }

    @Override
    public String linePhotograph() {
        return "사진 찍기";
    }

    @Override
    public String lineSay() {
        return "천 말하기";
    }

    @Override
    public String lineSpeak() {
        return "말하기";
    }

    @Override
    public String lineStill() {
        return "이 줄들은 아래 칸에 그대로 있습니다.";
    }

    @Override
    public String lineUnclear(String line, String why) {
        return "“" + line + "”: " + why + ".";
    }

    @Override
    public String lot(String fabric, int n, String numbers, String size) {
        return "" + fabric + " " + size + ", " + n + "장, 번호 " + numbers;
    }

    @Override
    public String lotWashed(String fabric, int n, String numbers, String size, String washed) {
        return "" + fabric + " " + size + ", " + washed + ", " + n + "장, 번호 " + numbers;
    }

    @Override
    public String markClaimed() {
        return "보자기에 쓸 천";
    }

    @Override
    public String markGreys() {
        return "어두움에서 밝음으로";
    }

    @Override
    public String markKept() {
        return "남겨 둔 천";
    }

    @Override
    public String markNap() {
        return "결이 위로";
    }

    @Override
    public String markRight() {
        return "겉이 있음";
    }

    @Override
    public String moreAll() {
        return "천 모두";
    }

    @Override
    public String moreByFabric() {
        return "천별";
    }

    @Override
    public String moreFiles() {
        return "칸에 적기, 파일로 넣기";
    }

    @Override
    public String moreFill() {
        return "칸에 적거나 파일 가져오기";
    }

    @Override
    public String moreFind() {
        return "찾기";
    }

    @Override
    public String moreLeast() {
        return "적어도 이 크기";
    }

    @Override
    public String moreLeastExample() {
        return "4 x 8";
    }

    @Override
    public String moreSave() {
        return "CSV로 저장";
    }

    @Override
    public String moreText() {
        return "천 또는 번호";
    }

    @Override
    public String moreTitle() {
        return "더 보기: 찾기, 천, 파일";
    }

    @Override
    public String photoBegun(String day, String pieces) {
        return day + ", 넣을 것: " + pieces;
    }

    @Override
    public String photoDay() {
        return "M월 d일 HH:mm";
    }

    @Override
    public String photoNotRead(String day) {
        return day + ", 아직 읽지 않음";
    }

    @Override
    public String photoNothing(String day) {
        return day + ", 읽은 것이 없음";
    }

    @Override
    public String pieceAlike(int n, String numbers) {
        return "같은 천 " + n + "장, 번호 " + numbers;
    }

    @Override
    public String pieceChange() {
        return "바꾸기";
    }

    @Override
    public String pieceTitle(String fabric, String size) {
        return size + ", " + fabric;
    }

    @Override
    public String pieceWay(String about) {
        return about + ". 길이(식서 방향)는 그림에서 위에서 아래입니다.";
    }

    @Override
    public String pieces(int n) {
        return "천 " + n + "장";
    }

    @Override
    public String piecesOf(String fabric, int n) {
        return "" + fabric + " " + n + "장";
    }

    @Override
    public String piecesSaid(String fabric, int n) {
        return "" + fabric + " " + n + "장";
    }

    @Override
    public String redo() {
        return "다시 하기";
    }

    @Override
    public String redoNothing() {
        return "다시 할 것이 없습니다.";
    }

    @Override
    public String redone(String deed) {
        return "다시 함: " + deed + ".";
    }

    @Override
    public String save() {
        return "저장";
    }

    @Override
    public String splitAt(String unit) {
        return "자르는 곳, " + unit;
    }

    @Override
    public String splitDivides() {
        return "한 번 곧게 잘라 나눌 것";
    }

    @Override
    public String splitLength(String length) {
        return "길이, " + length;
    }

    @Override
    public String splitTitle() {
        return "둘로 자르기";
    }

    @Override
    public String splitWidth(String width) {
        return "너비, " + width;
    }

    @Override
    public String staleChoose() {
        return "그사이 다른 창에서 이 천들이 바뀌었습니다. 바뀐 것은 없습니다. 다시 보고 고르세요.";
    }

    @Override
    public String staleFabric() {
        return "그사이 다른 창에서 이 천이 바뀌었습니다. 여기서는 바뀐 것이 없습니다.";
    }

    @Override
    public String staleFabricNow(String about, String colour, String fabric, String pieces) {
        return fabric + ", " + colour + ", " + about + "; " + pieces + ".";
    }

    @Override
    public String staleGone() {
        return "이제 천 목록에 없습니다.";
    }

    @Override
    public String staleLast(String deed) {
        return "그사이 다른 창에서 천 목록이 바뀌었습니다. 이제 마지막 변경은 “" + deed + "”입니다. 바뀐 것은 없습니다. 다시 보세요.";
    }

    @Override
    public String staleNothing() {
        return "그사이 다른 창에서 천 목록이 바뀌었습니다. 되돌릴 것이 없습니다. 바뀐 것은 없습니다. 다시 보세요.";
    }

    @Override
    public String staleNow(String pieces, String size) {
        return pieces + ", " + size + ".";
    }

    @Override
    public String staleNowWashed(String pieces, String size, String washed) {
        return pieces + ", " + size + ", " + washed + ".";
    }

    @Override
    public String stalePieces() {
        return "그사이 다른 창에서 이 천들이 바뀌었습니다. 여기서는 바뀐 것이 없습니다.";
    }

    @Override
    public String summary(String area, int n) {
        return "천 " + n + "장, " + area;
    }

    @Override
    public String summarySome(String area, String found, int n) {
        return "천 " + n + "장 중 " + found + "장, " + area;
    }

    @Override
    public String tableBefore() {
        return "앞";
    }

    @Override
    public String tableChange(String fabric) {
        return "천 바꾸기: " + fabric;
    }

    @Override
    public String tableColour() {
        return "색";
    }

    @Override
    public String tableColours() {
        return "색";
    }

    @Override
    public String tableDrawn() {
        return "가진 천, 같은 축척으로";
    }

    @Override
    public String tableFarther() {
        return "멀리";
    }

    @Override
    public String tableGreys() {
        return "명암";
    }

    @Override
    public String tableKeep() {
        return "남김";
    }

    @Override
    public String tableNearer() {
        return "가까이";
    }

    @Override
    public String tableNext() {
        return "다음";
    }

    @Override
    public String tableNone() {
        return "그런 천이 없습니다.";
    }

    @Override
    public String tablePage(String page, String pages) {
        return pages + "쪽 중 " + page + "쪽";
    }

    @Override
    public String tablePages() {
        return "천 목록의 쪽";
    }

    @Override
    public String tableShowAll() {
        return "천 모두 보기";
    }

    @Override
    public String tableShown() {
        return "작업대 보기";
    }

    @Override
    public String tableTap() {
        return "천을 누르면 골라집니다.";
    }

    @Override
    public String tableUnknown() {
        return "색을 아직 모름: 눌러서 고르기";
    }

    @Override
    public String title() {
        return "어떤 천이 있나요?";
    }

    @Override
    public String titleWays() {
        return "칸과 파일";
    }

    @Override
    public String unchanged() {
        return "바뀐 것이 없습니다.";
    }

    @Override
    public String undo() {
        return "되돌리기";
    }

    @Override
    public String undoNothing() {
        return "되돌릴 것이 없습니다.";
    }

    @Override
    public String undoWhat(String deed) {
        return "되돌리기: " + deed;
    }

    @Override
    public String undone(String deed) {
        return "되돌림: " + deed + ".";
    }

    @Override
    public String washed(String washed) {
        return (washed.equals("YES") ? "빨았음" : washed.equals("NO") ? "빨지 않음" : "");
    }

    @Override
    public String waysAddFile() {
        return "파일 넣기";
    }

    @Override
    public String waysAlso(String unit) {
        return "count, colour, faces(same 또는 right), nap(any 또는 lengthwise), washed(yes 또는 no)도 됩니다. 단위 없는 크기는 " + (unit.equals("metric") ? "센티미터" : "인치") + "입니다. 한 줄이라도 틀리면 아무것도 넣지 않습니다.";
    }

    @Override
    public String waysColumns() {
        return "fabric, width, length 열이 있는 파일";
    }

    @Override
    public String waysFields() {
        return "칸에 적기";
    }

    @Override
    public String waysFile() {
        return "CSV 파일로";
    }

    @Override
    public String waysHelp() {
        return "작업대의 줄에 무엇을 적을 수 있나요?";
    }

    @Override
    public String waysHelpSays(String unit) {
        return "순서는 상관없습니다. 몇 장인지, 부르는 이름, 너비와 길이, 색, 한 면이 겉이면 “겉”, 돌리면 안 되면 “결”, “세탁”. 너비는 천을 가로지르고 길이는 식서를 따릅니다. " + (unit.equals("metric") ? "“초록 무늬 12장 10 x 20”, “쑥색 리넨 3장 30 x 30 cm”." : "“초록 무늬 12장 4 x 8”, “쑥색 리넨 3장 12 x 12 in”.") + " 여러 줄을 한꺼번에 붙여 넣을 수 있습니다.";
    }

    @Override
    public String wrongCount(String count) {
        return Particles.fitted("\"" + count + "\"은(는) 장수가 아닙니다. 정수로 적거나, 한 장이면 비워 두세요.");
    }

    @Override
    public String wrongHowMany(String n) {
        return "이런 천이 " + n + "장 있습니다. 몇 장인지 1에서 " + n + "까지로 적으세요.";
    }

    @Override
    public String wrongLongName(String most) {
        return "이름이 라벨에 비해 너무 깁니다. " + most + "자까지 들어갑니다.";
    }

    @Override
    public String wrongNoName() {
        return "천에 이름이 없습니다. 부르는 이름을 적으세요.";
    }

    @Override
    public String wrongOutside(String whole) {
        return "자르는 곳이 천 밖입니다. 0보다 크고 " + whole + "보다 작게 적으세요.";
    }
}
