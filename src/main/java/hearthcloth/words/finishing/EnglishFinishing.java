package hearthcloth.words.finishing;

/** The room of finishing in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishFinishing implements FinishingWords {

    @Override
    public String againBefore(int n) {
        return (n == 1 ? "Once before, without a note." : "" + n + " times before, without a note.");
    }

    @Override
    public String againFor(String who) {
        return "for " + who;
    }

    @Override
    public String againSomething() {
        return "something";
    }

    @Override
    public String againTitle() {
        return "Wrapped again";
    }

    @Override
    public String againUsed(String cloth, int n) {
        return cloth + " has been used " + (n == 1 ? "" + n + " time" : "" + n + " times") + ".";
    }

    @Override
    public String againWhat() {
        return "What";
    }

    @Override
    public String againWhen() {
        return "When";
    }

    @Override
    public String againWho() {
        return "For whom";
    }

    @Override
    public String bars(int n) {
        return (n == 1 ? "" + n + " bar" : "" + n + " bars");
    }

    @Override
    public String date(String day, String month, String year) {
        return day + " " + (month.equals("m1") ? "Jan" : month.equals("m2") ? "Feb" : month.equals("m3") ? "Mar" : month.equals("m4") ? "Apr" : month.equals("m5") ? "May" : month.equals("m6") ? "Jun" : month.equals("m7") ? "Jul" : month.equals("m8") ? "Aug" : month.equals("m9") ? "Sep" : month.equals("m10") ? "Oct" : month.equals("m11") ? "Nov" : "Dec") + " " + year;
    }

    @Override
    public String how(int days, int fabrics, String parts) {
        return parts + ", " + (fabrics == 1 ? "" + fabrics + " fabric" : "" + fabrics + " fabrics") + (days == 0 ? "" : days == 1 ? ", sewn in one day" : ", sewn on " + days + " days") + ".";
    }

    @Override
    public String labelAgain() {
        return "wrapped again";
    }

    @Override
    public String labelSlip() {
        return "slip";
    }

    @Override
    public String labelSlipOf(String cloth) {
        return "slip of " + cloth;
    }

    @Override
    public String lastStep() {
        return "Back to the last step";
    }

    @Override
    public String leftBack(int n) {
        return (n == 1 ? "It is back on the table, as it measures now." : "They are back on the table, as they measure now.");
    }

    @Override
    public String leftFirst() {
        return "These leftovers are used first. What will they wrap?";
    }

    @Override
    public String leftHeading(int n) {
        return (n == 0 ? "No leftovers worth keeping" : n == 1 ? "One leftover worth keeping" : n == 2 ? "Two leftovers worth keeping" : n == 3 ? "Three leftovers worth keeping" : n == 4 ? "Four leftovers worth keeping" : n == 5 ? "Five leftovers worth keeping" : n == 6 ? "Six leftovers worth keeping" : n == 7 ? "Seven leftovers worth keeping" : n == 8 ? "Eight leftovers worth keeping" : n == 9 ? "Nine leftovers worth keeping" : "" + n + " leftovers worth keeping");
    }

    @Override
    public String leftNone() {
        return "None of them is in the stash any more.";
    }

    @Override
    public String leftOne(String fabric, String size) {
        return fabric + ", " + size;
    }

    @Override
    public String leftSome(String n) {
        return n + " of them on the table still, the rest used since.";
    }

    @Override
    public String leftUse() {
        return "Use the leftovers";
    }

    @Override
    public String leftUsed() {
        return "All of it has been used since.";
    }

    @Override
    public String notMade() {
        return "It is not made yet: you don't have enough fabric for it.";
    }

    @Override
    public String patches(int n) {
        return (n == 1 ? "" + n + " patch" : "" + n + " patches");
    }

    @Override
    public String photoAnother() {
        return "Another photograph";
    }

    @Override
    public String photoAway() {
        return "Take it away";
    }

    @Override
    public String photoAwayAsk() {
        return "Take the photograph away? It is not kept anywhere else here.";
    }

    @Override
    public String photoDrawn(String cloth) {
        return cloth + ", drawn";
    }

    @Override
    public String photoIsAway() {
        return "The photograph is taken away; the drawing stands there again.";
    }

    @Override
    public String photoIts() {
        return "Its photograph";
    }

    @Override
    public String photoKeep() {
        return "Keep it";
    }

    @Override
    public String photoKept() {
        return "The photograph is kept. Where and when it was taken is not kept with it.";
    }

    @Override
    public String photoNone() {
        return "There is no photograph of this cloth.";
    }

    @Override
    public String photoSend() {
        return "Both sides, to send";
    }

    @Override
    public String photoTake() {
        return "Take its photograph";
    }

    @Override
    public String photoYours(String cloth) {
        return "Your photograph of " + cloth;
    }

    @Override
    public String picture(String cloth) {
        return "Front of " + cloth;
    }

    @Override
    public String slipAgainst(String across, String both, String height, String up, String width) {
        return (across.equals("less") ? "" + width + " narrower" : across.equals("more") ? "" + width + " wider" : "") + (both.equals("yes") ? ", " : "") + (up.equals("less") ? "" + height + " lower" : up.equals("more") ? "" + height + " higher" : "") + " than planned.";
    }

    @Override
    public String slipAnd() {
        return "and";
    }

    @Override
    public String slipAsPlanned() {
        return "As planned.";
    }

    @Override
    public String slipCorners() {
        return "Corner to corner";
    }

    @Override
    public String slipCornersOther() {
        return "Corner to corner, the other way";
    }

    @Override
    public String slipHeight() {
        return "Height";
    }

    @Override
    public String slipIsKept() {
        return "The slip is kept.";
    }

    @Override
    public String slipIts() {
        return "Its slip";
    }

    @Override
    public String slipKeep() {
        return "Keep this slip";
    }

    @Override
    public String slipKeeper() {
        return "Who is it for";
    }

    @Override
    public String slipLeans(String length) {
        return "Corner to corner the two ways differ by " + length + ": it leans a little. Tied, nobody sees it.";
    }

    @Override
    public String slipLongName(String most) {
        return "Write a name of up to " + most + " letters.";
    }

    @Override
    public String slipLongNote(String most) {
        return "A note is at most " + most + " letters long.";
    }

    @Override
    public String slipMade() {
        return "Made on";
    }

    @Override
    public String slipMeasures(String unit) {
        return "It measures, " + unit;
    }

    @Override
    public String slipMissing(String side) {
        return (side.equals("width") ? "Give the width as well, or leave all of the size blank." : "Give the height as well, or leave all of the size blank.");
    }

    @Override
    public String slipName() {
        return "Its name";
    }

    @Override
    public String slipPlanned(String size) {
        return "planned " + size;
    }

    @Override
    public String slipPrint() {
        return "Print it";
    }

    @Override
    public String slipSewn() {
        return "It is sewn";
    }

    @Override
    public String slipStraight() {
        return "Corner to corner it is the same both ways.";
    }

    @Override
    public String slipTie() {
        return "Show how it is tied";
    }

    @Override
    public String slipUnread(String field, String why) {
        return (field.equals("width") ? "The width" : field.equals("height") ? "The height" : field.equals("corner") ? "Corner to corner" : "The other corners") + ": " + why;
    }

    @Override
    public String slipWidth() {
        return "Width";
    }

    @Override
    public String slipWord() {
        return "A word to yourself";
    }

    @Override
    public String slipWrapped() {
        return "It wrapped";
    }

    @Override
    public String title() {
        return "It is sewn, and it holds.";
    }
}
