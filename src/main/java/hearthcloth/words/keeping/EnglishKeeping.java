package hearthcloth.words.keeping;

/** The room of keeping in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishKeeping implements KeepingWords {

    @Override
    public String aboutAlsoWith(String before, String who) {
        return before + "; with " + who;
    }

    @Override
    public String aboutAlsoWrapped(String before, String what) {
        return before + "; wrapped " + what;
    }

    @Override
    public String aboutMade(String day) {
        return "Made " + day;
    }

    @Override
    public String aboutWith(String who) {
        return "With " + who;
    }

    @Override
    public String aboutWrapped(String what) {
        return "Wrapped " + what;
    }

    @Override
    public String archiveAdd() {
        return "Keep what is here and add the archive";
    }

    @Override
    public String archiveBring() {
        return "Bring in";
    }

    @Override
    public String archiveBrought(int cloths, int pieces) {
        return "Brought in " + (pieces == 1 ? "" + pieces + " piece" : "" + pieces + " pieces") + " and " + (cloths == 1 ? "" + cloths + " cloth" : "" + cloths + " cloths") + ". The stash's undo takes the pieces out again.";
    }

    @Override
    public String archiveHow() {
        return "Work that is here already";
    }

    @Override
    public String archiveIn() {
        return "An archive to bring in";
    }

    @Override
    public String archiveInstead() {
        return "Replace what is here: the stash, and cloths the archive has too";
    }

    @Override
    public String archiveOut() {
        return "Take everything out";
    }

    @Override
    public String archiveTitle() {
        return "Everything in one file";
    }

    @Override
    public String archiveWhat() {
        return "Stash, pictures of fabrics and cloths, in one zip file. Keep a copy somewhere safe, or take it to another machine.";
    }

    @Override
    public String beside() {
        return "Side by side";
    }

    @Override
    public String cardLacking() {
        return "You don't have enough fabric for it.";
    }

    @Override
    public String cardMore() {
        return "Guide, files, name";
    }

    @Override
    public String cardPhotograph() {
        return "Take its photograph";
    }

    @Override
    public String cardSlip() {
        return "Its slip";
    }

    @Override
    public String cardUsed(String stage, String used) {
        return stage + ", " + used;
    }

    @Override
    public String classes() {
        return "A class";
    }

    @Override
    public String compareBack() {
        return "Back to your cloths";
    }

    @Override
    public String compareFew() {
        return "Choose two cloths or more to see them side by side.";
    }

    @Override
    public String copy() {
        return "New design from it";
    }

    @Override
    public String find() {
        return "Find a cloth";
    }

    @Override
    public String findExample() {
        return "name, fabric, gift or person";
    }

    @Override
    public String findGo() {
        return "Find";
    }

    @Override
    public String first() {
        return "The first one goes here.";
    }

    @Override
    public String found(String all, String found, String sought) {
        return found + " of " + all + " for “" + sought + "”.";
    }

    @Override
    public String ideaGo() {
        return "Ideas, out and in";
    }

    @Override
    public String ideaTitle() {
        return "One idea in a file";
    }

    @Override
    public String ideaWhat() {
        return "Hand a cloth on as rules that come out different from every heap, or bring in what somebody sent you.";
    }

    @Override
    public String kits() {
        return "Kits and gifts";
    }

    @Override
    public String labelRemoved(String name) {
        return "removed " + name;
    }

    @Override
    public String name() {
        return "Name";
    }

    @Override
    public String open(String name) {
        return "Open " + name;
    }

    @Override
    public String redo(String deed) {
        return "Redo: " + deed;
    }

    @Override
    public String remove() {
        return "Remove";
    }

    @Override
    public String removeSure(String name) {
        return "Remove " + name + " for good?";
    }

    @Override
    public String removed(String name) {
        return name + " is removed. Undo brings it back.";
    }

    @Override
    public String rename() {
        return "Rename";
    }

    @Override
    public String see() {
        return "See what your stash can make";
    }

    @Override
    public String showAll() {
        return "Show all";
    }

    @Override
    public String stage(String stage) {
        return (stage.equals("DESIGNED") ? "designed" : stage.equals("CUT") ? "cut" : stage.equals("RECUT") ? "cut, but for what was asked for since" : "sewn");
    }

    @Override
    public String take(String what) {
        return (what.equals("cloth") ? "Cloth" : what.equals("cut") ? "Cut" : what.equals("sew") ? "Sew" : what.equals("guideA4") ? "Guide, A4" : what.equals("guideLetter") ? "Guide, Letter" : what.equals("guide") ? "Guide" : what.equals("class") ? "Guide for a class" : what.equals("slips") ? "Patch slips" : what.equals("front") ? "Front picture" : what.equals("back") ? "Back picture" : what.equals("plan") ? "Plan file" : what.equals("kit") ? "Kit file" : "Hand on the idea");
    }

    @Override
    public String tick() {
        return "Tick two or more.";
    }

    @Override
    public String title() {
        return "What you made";
    }

    @Override
    public String undo(String deed) {
        return "Undo: " + deed;
    }

    @Override
    public String useFor(String who) {
        return "for " + who;
    }

    @Override
    public String used(int n) {
        return (n == 1 ? "used " + n + " time" : "used " + n + " times");
    }

    @Override
    public String usedLast(String last, int n) {
        return (n == 1 ? "used " + n + " time: " + last : "used " + n + " times, last: " + last);
    }
}
