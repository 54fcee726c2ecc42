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
    public String classWith() {
        return "Begin a class with it";
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
    public String ideaBack() {
        return "Back";
    }

    @Override
    public String ideaBy(String name) {
        return "An idea from " + name;
    }

    @Override
    public String ideaCare(String words) {
        return "Take care: " + words;
    }

    @Override
    public String ideaEmpty() {
        return "There is nothing to show.";
    }

    @Override
    public String ideaExample(String size) {
        return "The front of an example, " + size + "; its fabrics are invented.";
    }

    @Override
    public String ideaExampleBack() {
        return "Its back.";
    }

    @Override
    public String ideaFirst() {
        return "A first cloth; looking for better …";
    }

    @Override
    public String ideaFoot() {
        return "This page asks nothing of any network and keeps nothing. Measures are planned on your own device. Made with Hearthcloth.";
    }

    @Override
    public String ideaFront() {
        return "Front";
    }

    @Override
    public String ideaGuide() {
        return "The whole guide, page by page";
    }

    @Override
    public String ideaHeapHelp() {
        return "Width across, length along the selvage. These lines are an example; write yours over them.";
    }

    @Override
    public String ideaKeep() {
        return "Save its plan";
    }

    @Override
    public String ideaLabel() {
        return "The idea";
    }

    @Override
    public String ideaLanguage() {
        return "Language";
    }

    @Override
    public String ideaMade() {
        return "How it is made";
    }

    @Override
    public String ideaMadeMore() {
        return "Sewing, hem, tying, washing, and where to take care";
    }

    @Override
    public String ideaNoCloth(String all, String name) {
        return "No file and no cloth of yours is called “" + name + "”; there are " + all + ".";
    }

    @Override
    public String ideaNoneKept(String name) {
        return "No file and no cloth of yours is called “" + name + "”; none with a hearth and bars is kept.";
    }

    @Override
    public String ideaOld() {
        return "This browser cannot run the planner; open the page in a newer one (2023 or later).";
    }

    @Override
    public String ideaOne() {
        return "Here is your cloth.";
    }

    @Override
    public String ideaOwn() {
        return "Your own, from your scraps";
    }

    @Override
    public String ideaPieces() {
        return "What to cut from which piece";
    }

    @Override
    public String ideaPrint() {
        return "Print this cloth";
    }

    @Override
    public String ideaSave() {
        return "Save the guideline as a file";
    }

    @Override
    public String ideaStop() {
        return "Stop";
    }

    @Override
    public String ideaStopped() {
        return "Stopped.";
    }

    @Override
    public String ideaSuchAs(String fabric) {
        return "such as " + fabric;
    }

    @Override
    public String ideaTied() {
        return "Tied.";
    }

    @Override
    public String ideaTrouble() {
        return "The planner stopped. Your lines are still here; try again with fewer pieces.";
    }

    @Override
    public String ideaTwo() {
        return "Here is your cloth, and another.";
    }

    @Override
    public String ideaTying() {
        return "How it is tied";
    }

    @Override
    public String kitCame() {
        return "The kit is here: its pieces are in your stash, and the cloth is planned from them.";
    }

    @Override
    public String kitHelp() {
        return "A kit file brings its own pieces along.";
    }

    @Override
    public String kitRefused() {
        return "This kit cannot be used: it is of a newer Hearthcloth, damaged, or was changed by hand. Ask for it anew; nothing was taken from it.";
    }

    @Override
    public String kitsAnew() {
        return "These are no longer here; plan them again.";
    }

    @Override
    public String kitsAsked(String asked) {
        return "Asked for: " + asked;
    }

    @Override
    public String kitsCount() {
        return "How many students";
    }

    @Override
    public String kitsCountFault(String given, String most) {
        return "“" + given + "” students will not do; write a number from 1 to " + most + ".";
    }

    @Override
    public String kitsEmpty() {
        return "Your stash has no free piece. Lay something in first.";
    }

    @Override
    public String kitsFair(String least, String most) {
        return "Most joins in one cloth: " + most + ". No way to share this heap has fewer than " + least + ".";
    }

    @Override
    public String kitsFile() {
        return "Kit file";
    }

    @Override
    public String kitsForget() {
        return "Put this plan away";
    }

    @Override
    public String kitsGoing(String all, String tried) {
        return "Looking for a fairer way to share: " + tried + " of " + all + ".";
    }

    @Override
    public String kitsGuide() {
        return "Guide for a class";
    }

    @Override
    public String kitsHeap(int count) {
        return (count == 1 ? "" + count + " piece of your stash is free." : "" + count + " pieces of your stash are free.");
    }

    @Override
    public String kitsInTurn(String joins, String lacking) {
        return "One after another, the worst would have " + joins + ", and " + lacking + " would go without.";
    }

    @Override
    public String kitsIntro() {
        return "Plan many cloths from one heap together: nothing is promised twice, and whoever fares worst fares as well as can be.";
    }

    @Override
    public String kitsJoins(int count) {
        return (count == 0 ? "no joins" : count == 1 ? "" + count + " join" : "" + count + " joins");
    }

    @Override
    public String kitsKeep() {
        return "Keep these cloths";
    }

    @Override
    public String kitsKeepHelp() {
        return "They go to Made, and their pieces are promised to them in your stash.";
    }

    @Override
    public String kitsKept(int count) {
        return (count == 1 ? "" + count + " cloth is kept." : "" + count + " cloths are kept.") + " Their pieces are promised to them.";
    }

    @Override
    public String kitsLines() {
        return "One cloth a line";
    }

    @Override
    public String kitsLinesHelp() {
        return "A name, then a size or a gift. Or paste a list whose first line names the columns: name, size, gift, tie, fabrics.";
    }

    @Override
    public String kitsList() {
        return "A season: a cloth a line";
    }

    @Override
    public String kitsMove() {
        return "Move a piece to another cloth";
    }

    @Override
    public String kitsMoveIt() {
        return "Move it and let the others settle";
    }

    @Override
    public String kitsMoved(String name, String piece) {
        return "Piece " + piece + " is in the cloth of " + name + " now. The others have settled.";
    }

    @Override
    public String kitsNearest() {
        return "This is the nearest that could be made.";
    }

    @Override
    public String kitsNotMoved(String name, String piece) {
        return "No cloth was found for " + name + " that uses piece " + piece + ". Nothing was changed.";
    }

    @Override
    public String kitsNothing() {
        return "Nothing could be made.";
    }

    @Override
    public String kitsPiece() {
        return "Piece";
    }

    @Override
    public String kitsPlan() {
        return "Plan the class";
    }

    @Override
    public String kitsPlanGifts() {
        return "Plan the gifts";
    }

    @Override
    public String kitsPrint() {
        return "Slips, shopping list and teacher’s sheet";
    }

    @Override
    public String kitsSample() {
        return "Anna, 16 in\nGrandmother, box 30 x 20 x 8 cm";
    }

    @Override
    public String kitsSize() {
        return "Finished size";
    }

    @Override
    public String kitsStop() {
        return "Stop and take the best so far";
    }

    @Override
    public String kitsStudents() {
        return "A class: so many cloths alike";
    }

    @Override
    public String kitsTheList() {
        return "The list";
    }

    @Override
    public String kitsTitle() {
        return "Kits and gifts";
    }

    @Override
    public String kitsTo() {
        return "To";
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
