package hearthcloth.words.teaching;

/** The room of teaching in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishTeaching implements TeachingWords {

    @Override
    public String classBegin() {
        return "Begin the class";
    }

    @Override
    public String classCode() {
        return "Code";
    }

    @Override
    public String classCount(int inside) {
        return (inside == 0 ? "Nobody is in yet." : inside == 1 ? "" + inside + " student is in." : "" + inside + " students are in.");
    }

    @Override
    public String classEnd() {
        return "End the class";
    }

    @Override
    public String classEndAsk() {
        return "End the class? All students are put out, and what they did not save is gone.";
    }

    @Override
    public String classEnded() {
        return "The class is over. All students are out.";
    }

    @Override
    public String classFile() {
        return "The file";
    }

    @Override
    public String classFromCloth() {
        return "Begin with the idea of a cloth";
    }

    @Override
    public String classFromFile() {
        return "Begin with a guideline file";
    }

    @Override
    public String classHidden() {
        return "shows nothing yet";
    }

    @Override
    public String classIntro() {
        return "Students come in with their phones and type their own scraps. Each gets a cloth of your idea. The wall shows what they choose to show.";
    }

    @Override
    public String classIsOut(String name) {
        return name + " is out.";
    }

    @Override
    public String classNoCloth() {
        return "There is no cloth with a hearth and bars yet.";
    }

    @Override
    public String classNotShared() {
        return "Students can come in only where the workroom is open to the network. Close it and start it with ./hearthcloth --lan, on a network you trust.";
    }

    @Override
    public String classOut(String name) {
        return "Put " + name + " out";
    }

    @Override
    public String classPoint() {
        return "Point a phone’s camera at the picture, or open the address and type the code. The code lets everybody in while the class lasts.";
    }

    @Override
    public String classQr() {
        return "QR code of the address with the code";
    }

    @Override
    public String classSeams(String all, String sewn) {
        return sewn + " of " + all + " seams sewn";
    }

    @Override
    public String classTitle() {
        return "A class";
    }

    @Override
    public String classWall() {
        return "The wall";
    }

    @Override
    public String comeCode() {
        return "Code on the teacher’s screen";
    }

    @Override
    public String comeFull() {
        return "The class is full.";
    }

    @Override
    public String comeIn() {
        return "Come in";
    }

    @Override
    public String comeName() {
        return "Your name, as others see it";
    }

    @Override
    public String comeNone() {
        return "There is no class just now. Ask your teacher.";
    }

    @Override
    public String comeTitle() {
        return "Come into the class";
    }

    @Override
    public String comeWait() {
        return "Too many wrong codes. Wait ten minutes.";
    }

    @Override
    public String comeWrong() {
        return "That code is not right. Look at the teacher’s screen.";
    }

    @Override
    public String cutCut() {
        return "Cut";
    }

    @Override
    public String cutFabric() {
        return "Fabric";
    }

    @Override
    public String cutList() {
        return "Cut list";
    }

    @Override
    public String cutPatch() {
        return "Patch";
    }

    @Override
    public String cutPiece() {
        return "Piece";
    }

    @Override
    public String mineAgain() {
        return "Plan again";
    }

    @Override
    public String mineAnother() {
        return "Show me the other one";
    }

    @Override
    public String mineCentimetres() {
        return "centimetres";
    }

    @Override
    public String mineFavourite() {
        return "The fabric you like best";
    }

    @Override
    public String mineGuide() {
        return "Guide to print";
    }

    @Override
    public String mineHelp() {
        return "A line for each kind: width by length, how many, what it is. Width across, length along the selvage.";
    }

    @Override
    public String mineHide() {
        return "Take it off the wall";
    }

    @Override
    public String mineInches() {
        return "inches";
    }

    @Override
    public String mineKeep() {
        return "Nothing is kept when the class ends. Save what you want to take home.";
    }

    @Override
    public String mineKeeps() {
        return "It keeps every rule of the idea.";
    }

    @Override
    public String mineLeave() {
        return "Leave the class";
    }

    @Override
    public String mineLess() {
        return "One seam back";
    }

    @Override
    public String mineLooking() {
        return "Looking for your cloth …";
    }

    @Override
    public String mineMore() {
        return "One seam more";
    }

    @Override
    public String mineNearest() {
        return "The nearest your pieces make.";
    }

    @Override
    public String mineNone() {
        return "These pieces make no cloth yet.";
    }

    @Override
    public String mineOnWall() {
        return "The wall shows its picture, its size and your name.";
    }

    @Override
    public String minePlan() {
        return "Plan my cloth";
    }

    @Override
    public String minePlanFile() {
        return "Plan file to keep";
    }

    @Override
    public String mineRuler() {
        return "Ruler";
    }

    @Override
    public String mineRules() {
        return "The rules of the idea";
    }

    @Override
    public String mineSample() {
        return "4 x 8 in, 12 of them, green print";
    }

    @Override
    public String mineScraps() {
        return "Your pieces";
    }

    @Override
    public String mineScrapsOnly() {
        return "Your pieces give no hearth with bars round it. The scraps are laid together as they are.";
    }

    @Override
    public String mineShow() {
        return "Show it on the wall";
    }

    @Override
    public String mineWhy() {
        return "Why";
    }
}
