package hearthcloth.words.framing;

/** The room of framing in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishFraming implements FramingWords {

    @Override
    public String begunCuts(int n) {
        return "" + n + " cuts are made";
    }

    @Override
    public String begunGoCutting() {
        return "Go on cutting";
    }

    @Override
    public String begunGoOn() {
        return "Go on with it";
    }

    @Override
    public String begunGoSewing() {
        return "Go on sewing";
    }

    @Override
    public String begunGoSewingNext(String next) {
        return "Go on sewing " + next;
    }

    @Override
    public String begunLacks() {
        return "it lacks fabric";
    }

    @Override
    public String begunLook() {
        return "Look at it";
    }

    @Override
    public String begunPlanned() {
        return "planned";
    }

    @Override
    public String begunPlannedFor(String gift) {
        return "planned for " + gift;
    }

    @Override
    public String begunRecut(String seams, String sewn) {
        return sewn + " of " + seams + " seams are sewn; something is to cut first";
    }

    @Override
    public String begunSewn(String seams, String sewn) {
        return sewn + " of " + seams + " seams are sewn";
    }

    @Override
    public String begunSewnFor(String gift, String seams, String sewn) {
        return sewn + " of " + seams + " seams are sewn, for " + gift;
    }

    @Override
    public String drawerMeasures() {
        return "Ruler, paper and language";
    }

    @Override
    public String drawerTitle() {
        return "The drawer";
    }

    @Override
    public String field(String field) {
        return (field.equals("name") ? "Name" : field.equals("width") ? "Width" : field.equals("length") ? "Length" : field.equals("fabric") ? "Fabric" : field.equals("washed") ? "Washed" : field.equals("at") ? "Cut at" : field.equals("many") ? "How many" : field.equals("colour") ? "Colour" : field.equals("faces") ? "Faces" : field.equals("nap") ? "Nap" : field.equals("made") ? "Made on" : field.equals("wrapped") ? "Wrapped" : "Who has it");
    }

    @Override
    public String firstAgain() {
        return "Play again";
    }

    @Override
    public String firstExample() {
        return "An example";
    }

    @Override
    public String firstFilm() {
        return "An example: nine scraps from a basket become a cloth of twelve bars and are tied round a box";
    }

    @Override
    public String firstFour() {
        return "and it is wrapped. It stays a cloth.";
    }

    @Override
    public String firstKinds() {
        return "What will it wrap?";
    }

    @Override
    public String firstOne() {
        return "Nine scraps from a basket";
    }

    @Override
    public String firstPrivate() {
        return "Everything stays on this machine. Nothing is asked of the internet.";
    }

    @Override
    public String firstStop() {
        return "Stop";
    }

    @Override
    public String firstThree() {
        return "Twelve bars, one after another,";
    }

    @Override
    public String firstTwo() {
        return "and a box to give away.";
    }

    @Override
    public String frameBesides() {
        return "Besides";
    }

    @Override
    public String frameCopies() {
        return "Safety copies";
    }

    @Override
    public String frameExample() {
        return "Example";
    }

    @Override
    public String frameExampleAway() {
        return "Put the example away";
    }

    @Override
    public String frameExampleIs() {
        return "This is an example to play with.";
    }

    @Override
    public String frameExampleNotYours() {
        return "Nothing in it is yours.";
    }

    @Override
    public String frameGuidelines() {
        return "Guidelines";
    }

    @Override
    public String frameHome() {
        return "Hearthcloth, the table";
    }

    @Override
    public String frameLeave() {
        return "Leave";
    }

    @Override
    public String framePeople() {
        return "People";
    }

    @Override
    public String frameSkip() {
        return "To the page";
    }

    @Override
    public String frameStages() {
        return "Stages";
    }

    @Override
    public String frameStudio() {
        return "Studio";
    }

    @Override
    public String giftCloth(String size) {
        return "a cloth " + size;
    }

    @Override
    public String giftKind(String shape) {
        return (shape.equals("BOX") ? "Box" : shape.equals("BOTTLE") ? "Bottle" : shape.equals("TWO_BOTTLES") ? "Two bottles" : shape.equals("ROUND") ? "Ball" : shape.equals("BOOKS") ? "Two books" : "Roll");
    }

    @Override
    public String giftMeasure(String measure) {
        return (measure.equals("long") ? "long" : measure.equals("wide") ? "wide" : measure.equals("high") ? "high" : measure.equals("across") ? "across" : "thick");
    }

    @Override
    public String giftTied(String gift, String tie) {
        return gift + ", " + tie;
    }

    @Override
    public String handEats(String eats, String n, String spread, String usual) {
        return "Your seams take up " + eats + " on average (median of " + n + "); half of them were within " + spread + " of that. The usual seam takes up " + usual + ".";
    }

    @Override
    public String handFrom() {
        return "What it is learnt from";
    }

    @Override
    public String handIsOwn() {
        return "New cloths are planned with your own seam.";
    }

    @Override
    public String handIsUsual() {
        return "New cloths are planned with the usual seam.";
    }

    @Override
    public String handOwn() {
        return "Plan new cloths with this seam";
    }

    @Override
    public String handTitle() {
        return "Your own hand";
    }

    @Override
    public String handUnknown(String n) {
        return "Once " + n + " seams are measured on the Sew page, this says what your seams really take up.";
    }

    @Override
    public String handUsual() {
        return "Plan with the usual seam again";
    }

    @Override
    public String homeAll(String n) {
        return "All " + n;
    }

    @Override
    public String homeEmpty() {
        return "Your table is empty. What is in your basket?";
    }

    @Override
    public String homeFirst() {
        return "The first one goes here";
    }

    @Override
    public String homeMade() {
        return "Made";
    }

    @Override
    public String homeMaking() {
        return "In the making";
    }

    @Override
    public String homeNothing() {
        return "Nothing yet. Say what it will wrap, and see what your heap can make.";
    }

    @Override
    public String homeOnTable() {
        return "On the table";
    }

    @Override
    public String homePhotograph() {
        return "Take its photograph";
    }

    @Override
    public String homePieces(int n) {
        return (n == 1 ? "" + n + " piece on the table" : "" + n + " pieces on the table");
    }

    @Override
    public String homeTitle() {
        return "What will it wrap?";
    }

    @Override
    public String key(String key) {
        return (key.equals("tab") ? "Tab" : key.equals("enter") ? "Enter" : key.equals("space") ? "Space" : key.equals("pageDown") ? "Page Down" : key.equals("pageUp") ? "Page Up" : "Esc");
    }

    @Override
    public String keysArrows() {
        return "from piece to piece on the table, from bar to bar on the cloth; turn the tied gift";
    }

    @Override
    public String keysEnter() {
        return "presses it";
    }

    @Override
    public String keysEscape() {
        return "closes what is open";
    }

    @Override
    public String keysNumbers() {
        return "the four views of a cloth; a cloth of the gallery";
    }

    @Override
    public String keysPages() {
        return "Done and Back when cutting and sewing; a foot switch sends these";
    }

    @Override
    public String keysPlusMinus() {
        return "nearer and farther on the table and round the tied gift";
    }

    @Override
    public String keysSingle() {
        return "Keys of one letter or sign work on this device";
    }

    @Override
    public String keysSpace() {
        return "chooses a piece or a bar; when cutting and sewing: Done";
    }

    @Override
    public String keysTab() {
        return "from one thing to the next";
    }

    @Override
    public String keysTitle() {
        return "Keys";
    }

    @Override
    public String keysU() {
        return "takes back what was done last";
    }

    @Override
    public String measureA4() {
        return "A4";
    }

    @Override
    public String measureEighths() {
        return "inches, to ⅛";
    }

    @Override
    public String measureKeep() {
        return "Keep";
    }

    @Override
    public String measureLanguage() {
        return "Your language";
    }

    @Override
    public String measureLetter() {
        return "Letter";
    }

    @Override
    public String measureMillimetres() {
        return "centimetres, to 1 mm";
    }

    @Override
    public String measurePaper() {
        return "The paper in your printer";
    }

    @Override
    public String measureQuarters() {
        return "inches, to ¼";
    }

    @Override
    public String measureRuler() {
        return "The ruler in your hand";
    }

    @Override
    public String measureSixteenths() {
        return "inches, to 1⁄16";
    }

    @Override
    public String safeArchive() {
        return "Everything in one file";
    }

    @Override
    public String safeArchiveHow() {
        return "stash, fabrics and cloths, to keep elsewhere";
    }

    @Override
    public String safeClose() {
        return "Close the workroom";
    }

    @Override
    public String safeCloseHow() {
        return "nothing is lost by it";
    }

    @Override
    public String safeCopies() {
        return "whole copies of your work, made each day, to go back to";
    }

    @Override
    public String safeDevices() {
        return "This tablet, and a phone";
    }

    @Override
    public String safeDevicesHow() {
        return "use the workroom on another screen as well";
    }

    @Override
    public String safeTitle() {
        return "Kept safe, and within reach";
    }

    @Override
    public String scriptKeeping() {
        return "Keeping it …";
    }

    @Override
    public String scriptKeepingMore() {
        return "Keeping it; %d more wait.";
    }

    @Override
    public String scriptKeepingOne() {
        return "Keeping it; one more waits.";
    }

    @Override
    public String scriptSilent() {
        return "The workroom does not answer. Start Hearthcloth again; nothing that was kept is lost.";
    }

    @Override
    public String stage(String stage) {
        return (stage.equals("Gift") ? "Gift" : stage.equals("Stash") ? "Stash" : stage.equals("Cloth") ? "Cloth" : stage.equals("Cut") ? "Cut" : stage.equals("Sew") ? "Sew" : stage.equals("Tie") ? "Tie" : stage.equals("Made") ? "Made" : "Drawer");
    }

    @Override
    public String staleCloth(String name) {
        return name + " has meanwhile been changed in another window. Nothing was changed here.";
    }

    @Override
    public String staleTitle() {
        return "Changed in two windows";
    }

    @Override
    public String threadsColour(String line, String name) {
        return "The thread \"" + line + "\" has no colour we know; write its colour after it, such as " + name + " #8a9a5b.";
    }

    @Override
    public String threadsKept(int n) {
        return (n == 1 ? "One thread is kept." : "" + n + " threads are kept.");
    }

    @Override
    public String threadsLines() {
        return "One a line: its name, and its colour if the name does not say it (old navy #27344d)";
    }

    @Override
    public String threadsMany(String longest, String most) {
        return "Write up to " + most + " threads of up to " + longest + " letters each.";
    }

    @Override
    public String threadsNeed(String all, String bobbin) {
        return "Thread: " + all + " in all, with thread ends and 15 % extra; " + bobbin + " of it on the bobbin.";
    }

    @Override
    public String threadsSave() {
        return "Save";
    }

    @Override
    public String threadsSeam(String least, String most) {
        return "On this seam " + least + " shows least, " + most + " most.";
    }

    @Override
    public String threadsSeamOne(String least) {
        return "On this seam " + least + " shows least.";
    }

    @Override
    public String threadsSuits(String least, String most) {
        return "Of your threads " + least + " shows least on these fabrics, " + most + " most.";
    }

    @Override
    public String threadsSuitsOne(String least) {
        return "Of your threads " + least + " shows least on these fabrics.";
    }

    @Override
    public String threadsTitle() {
        return "Your threads";
    }

    @Override
    public String threadsUsed() {
        return "The Sew page says which of them shows least on a cloth, and which most.";
    }

    @Override
    public String troubleColour(String written) {
        return "\"" + written + "\" is no colour we know; write one such as sage green or #8a9a5b, or leave it blank.";
    }

    @Override
    public String troubleComeIn() {
        return "Come in by name and passphrase first.";
    }

    @Override
    public String troubleGone() {
        return "Load the page to have it written anew.";
    }

    @Override
    public String troubleInside() {
        return "Something went wrong inside the workroom. Nothing was changed; try again.";
    }

    @Override
    public String troubleLarge(String most) {
        return "This file is over " + most + " MB; choose a smaller one.";
    }

    @Override
    public String troubleNoFile() {
        return "No file was chosen, or it is empty.";
    }

    @Override
    public String troubleNotWhole() {
        return "The file did not arrive whole; send it again.";
    }

    @Override
    public String troubleNothing() {
        return "There is nothing at this address.";
    }

    @Override
    public String troublePlain() {
        return "That did not work.";
    }

    @Override
    public String troubleTitle() {
        return "That did not work";
    }

    @Override
    public String troubleUnread() {
        return "What was sent cannot be read; load the page again and send it anew.";
    }

    @Override
    public String unitCentimetres() {
        return "I measure in centimetres";
    }

    @Override
    public String unitInches() {
        return "I measure in inches";
    }

    @Override
    public String wayExample() {
        return "Play with the example";
    }

    @Override
    public String wayExampleHow() {
        return "Sixty scraps and a cloth, put away again with one press.";
    }

    @Override
    public String wayGift() {
        return "Begin with the gift";
    }

    @Override
    public String wayGiftHow() {
        return "and see how large a cloth it takes";
    }

    @Override
    public String wayPhotograph() {
        return "Photograph them";
    }

    @Override
    public String wayPhotographHow() {
        return "laid out beside a sheet of paper";
    }

    @Override
    public String waySay() {
        return "Say one piece";
    }

    @Override
    public String waySayHow() {
        return "“twelve green prints, four by eight”; many lines at once will do";
    }
}
