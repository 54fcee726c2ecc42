package hearthcloth.words.reporting;

/** The room of reporting in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishReporting implements ReportingWords {

    @Override
    public String areaLarge(String number, String unit) {
        return number + " " + (unit.equals("metric") ? "m²" : "sq yd");
    }

    @Override
    public String care(String what) {
        return "Take care: " + what;
    }

    @Override
    public String giftLeast(String gift, String size, String tie) {
        return gift + ", " + tie + ": a square cloth of at least " + size;
    }

    @Override
    public String giftRange(String gift, String least, String most, String size, String tie) {
        return gift + ", " + tie + ": a square cloth of at least " + size + " (" + least + "–" + most + " with thin or thick cloth at the knots)";
    }

    @Override
    public String guidelineBent(String what) {
        return "Bent: " + what;
    }

    @Override
    public String guidelineKeeps() {
        return "nothing; it keeps every rule.";
    }

    @Override
    public String guidelineNearest(String folder, String number, String size, String title) {
        return number + "  " + title + ", " + size + ", in " + folder + ", ready to cut and sew by.";
    }

    @Override
    public String guidelineNone() {
        return "No cloth can be made from this stash.";
    }

    @Override
    public String guidelineNoneKept(String name) {
        return "No cloth that keeps every rule of \"" + name + "\" was found in this stash.";
    }

    @Override
    public String guidelineScraps() {
        return "These pieces give no hearth with bars round it; the scraps are laid together as they are.";
    }

    @Override
    public String kitsCloth(String fabric, int n, String size, String title) {
        return title + ", " + size + ", hearth of " + fabric + ", " + (n == 0 ? "no joins" : n == 1 ? "" + n + " join" : "" + n + " joins");
    }

    @Override
    public String kitsFree(int n, String size, String title) {
        return title + ", " + size + ", " + (n == 0 ? "no joins" : n == 1 ? "" + n + " join" : "" + n + " joins");
    }

    @Override
    public String kitsHanded(int n) {
        return (n == 1 ? "" + n + " piece is left by one cloth for another; kits.pdf says who cuts first." : "" + n + " pieces are left by one cloth for another; kits.pdf says who cuts first.");
    }

    @Override
    public String kitsInTurn(String n) {
        return "One after another: " + n + ".";
    }

    @Override
    public String kitsMost(String bound, String worst) {
        return "Most joins: " + worst + "; no division of this stash has fewer than " + bound + ".";
    }

    @Override
    public String kitsNothing(String name) {
        return name + ": nothing could be made. Not as it was asked for.";
    }

    @Override
    public String kitsPart(String cloth, String folder, String name) {
        return name + ": " + cloth + ", in " + folder + ".";
    }

    @Override
    public String kitsPartOther(String cloth, String folder, String name) {
        return name + ": " + cloth + ", in " + folder + ". Not as it was asked for.";
    }

    @Override
    public String kitsPrint(String file) {
        return "Slips, shopping list and the teacher's sheet: " + file;
    }

    @Override
    public String kitsWithout(String n) {
        return "One after another, " + n + " would have gone without.";
    }

    @Override
    public String planChosen(String what) {
        return "Chosen for you: " + what;
    }

    @Override
    public String planCuts(String cuts, String lost, String percent, String touched) {
        return "Cuts: " + cuts + ". Lost: " + lost + " (" + percent + " of the " + touched + " cut into).";
    }

    @Override
    public String planCutsBound(String cuts, String least, String lost, String percent, String touched) {
        return "Cuts: " + cuts + ". Lost: " + lost + " (" + percent + " of the " + touched + " cut into; no plan for it cuts into less than " + least + ").";
    }

    @Override
    public String planCutsBounds(String cuts, String least, String leastLost, String lost, String percent, String touched) {
        return "Cuts: " + cuts + ". Lost: " + lost + " (" + percent + " of the " + touched + " cut into; no plan for it cuts into less than " + least + " or loses less than " + leastLost + ").";
    }

    @Override
    public String planGift(String gift) {
        return "Gift: " + gift + ".";
    }

    @Override
    public String planHead(String folder, String size, String title) {
        return title + ", " + size + ", in " + folder;
    }

    @Override
    public String planImpossible() {
        return "This cloth cannot be made from this stash.";
    }

    @Override
    public String planJoinsAbove(String above, String n) {
        return "Joins: " + n + ", at most " + above + " above the fewest possible.";
    }

    @Override
    public String planJoinsFewest(String n) {
        return "Joins: " + n + ", the fewest possible.";
    }

    @Override
    public String planLarger(String length) {
        return "It is planned " + length + " larger than the least, for what sewing may take.";
    }

    @Override
    public String planMore(String size) {
        return "For more like it, ask with --size \"" + size + "\", leaving the rest to the stash.";
    }

    @Override
    public String planNearest(String size, String title) {
        return "The nearest that can be made is " + size + ": " + title + ".";
    }

    @Override
    public String planNearestJoins(int n, String size, String title) {
        return "The nearest that can be made is " + size + ": " + title + ", " + (n == 0 ? "no joins" : n == 1 ? "" + n + " join" : "" + n + " joins") + ".";
    }

    @Override
    public String planNotFound() {
        return "No way was found to make this cloth from this stash.";
    }

    @Override
    public String planPatches(String patches, String seams) {
        return "Patches: " + patches + ". Seams: " + seams + ".";
    }

    @Override
    public String planReady(String fabrics, String folder) {
        return "It is in " + folder + ", ready to cut and sew by: in " + fabrics + ".";
    }

    @Override
    public String planStash(String area, int fabrics, int pieces) {
        return "Stash: " + (pieces == 1 ? "" + pieces + " piece" : "" + pieces + " pieces") + " of " + (fabrics == 1 ? "" + fabrics + " fabric" : "" + fabrics + " fabrics") + ", " + area + ".";
    }

    @Override
    public String planTied(String what) {
        return "Tied: " + what;
    }

    @Override
    public String planTimeOut(String budget) {
        return "Note: The time ran out before everything was tried; a longer --budget, such as " + budget + ", may find better.";
    }

    @Override
    public String progressBest(int n, String tried) {
        return (n == 1 ? "" + tried + ", best with " + n + " join" : "" + tried + ", best with " + n + " joins");
    }

    @Override
    public String progressLayouts(String found, String of, String tried) {
        return "planning: " + tried + " of " + of + " layouts tried, " + found + " can be made";
    }

    @Override
    public String progressTogether(int asked, String made, String most, String of, String tried) {
        return (asked == 1 ? "planning together: " + tried + " of " + of + " divisions tried, " + made + " of " + asked + " cloth made, most joins " + most : "planning together: " + tried + " of " + of + " divisions tried, " + made + " of " + asked + " cloths made, most joins " + most);
    }

    @Override
    public String readAll(String doubt) {
        return "All pieces: " + doubt;
    }

    @Override
    public String readColumn(String column) {
        return (column.equals("usable") ? "usable" : column.equals("shape") ? "shape" : column.equals("colour") ? "colour" : column.equals("look") ? "look" : column.equals("fabric") ? "fabric" : "sides");
    }

    @Override
    public String readDoubts() {
        return "In doubt:";
    }

    @Override
    public String readFound(int fabrics, int pieces) {
        return "Found " + (pieces == 1 ? "" + pieces + " piece" : "" + pieces + " pieces") + ", by the look of them of " + (fabrics == 1 ? "" + fabrics + " fabric" : "" + fabrics + " fabrics") + ".";
    }

    @Override
    public String readKnow() {
        return "Good to know:";
    }

    @Override
    public String readLeft(int n, String numbers) {
        return (n == 1 ? "Left out of the file because of a doubt: " + n + " piece (" + numbers + "). Take the picture again as said, or add --keep-doubtful to write it too." : "Left out of the file because of a doubt: " + n + " pieces (" + numbers + "). Take the picture again as said, or add --keep-doubtful to write them too.");
    }

    @Override
    public String readLittle() {
        return "too little";
    }

    @Override
    public String readLook(String figured) {
        return (figured.equals("yes") ? "figured" : "plain");
    }

    @Override
    public String readNarrow(int n, String numbers) {
        return (n == 1 ? "Left out because no rectangle a centimetre wide can be cut from it: " + n + " piece (" + numbers + ")." : "Left out because no rectangle a centimetre wide can be cut from them: " + n + " pieces (" + numbers + ").");
    }

    @Override
    public String readNone() {
        return "No piece of cloth was found beside the sheet. Lay the pieces on ground they stand out from, with some of it showing round each.";
    }

    @Override
    public String readPiece(String doubt, String number) {
        return "Piece " + number + ": " + doubt;
    }

    @Override
    public String readShape(String n, String shape) {
        return (shape.equals("TRIANGLE") ? "triangle" : shape.equals("STRIP") ? "strip" : shape.equals("SQUARE") ? "square" : shape.equals("RECTANGLE") ? "rectangle" : shape.equals("UNEVEN") ? "four uneven sides" : shape.equals("L") ? "L-shape" : "" + n + " sides");
    }

    @Override
    public String readWrote(int fabrics, String file, int lines, int pieces) {
        return "Wrote " + file + ": " + (pieces == 1 ? "" + pieces + " piece" : "" + pieces + " pieces") + " of " + (fabrics == 1 ? "" + fabrics + " fabric" : "" + fabrics + " fabrics") + " in " + (lines == 1 ? "" + lines + " line" : "" + lines + " lines") + ". A picture does not show which side is the right one, or the selvage: both faces are written as the same, and the longer side as the length. Change the file where that is not so.";
    }

    @Override
    public String sizeCloth(String end, String size) {
        return "The largest gifts that a finished cloth " + size + " ties, with " + end + " at each knotted corner for knot and end:";
    }

    @Override
    public String sizeEnds(String least, String leastEnd, String most, String mostEnd, String usual) {
        return "with " + usual + " at each knotted corner; " + least + " with " + leastEnd + ", " + most + " with " + mostEnd;
    }

    @Override
    public String sizeFits(String enough) {
        return (enough.equals("yes") ? "fits" : "small");
    }

    @Override
    public String sizeGift(String gift) {
        return "Round " + gift + ", the finished cloth is a square of at least:";
    }

    @Override
    public String sizeKnot() {
        return "The reef knot:";
    }

    @Override
    public String sizeNoKnot() {
        return "no knot";
    }

    @Override
    public String sizeNone(String uses) {
        return "none; sold for: " + uses;
    }

    @Override
    public String sizeNothing() {
        return "nothing; it is too small";
    }

    @Override
    public String sizeShape(String shape) {
        return (shape.equals("cake") ? "a box 3 : 2 : 0.8, like a cake box" : shape.equals("cube") ? "a cube" : shape.equals("flat") ? "a flat box 3 : 2 : 0.3, like a folded shirt" : shape.equals("long") ? "a long box 5 : 1 : 1" : shape.equals("bottle") ? "a bottle four times as high as wide, like a wine bottle" : shape.equals("bottles") ? "two such bottles" : shape.equals("ball") ? "a ball" : shape.equals("books") ? "two paperbacks 1.4 : 1 : 0.14" : "a roll four times as long as thick");
    }

    @Override
    public String sizeSold(String tie) {
        return "Ready-made sizes (common practice), and the largest gift of this shape in the " + tie + ":";
    }

    @Override
    public String sizeSteps(String tie) {
        return "How to tie the " + tie + ":";
    }

    @Override
    public String sizeTrade(String size) {
        return "The next ready-made size up is " + size + ".";
    }

    @Override
    public String sizeTradeNamed(String size, String trade) {
        return "The next ready-made size up is " + size + " (" + trade + ").";
    }

    @Override
    public String sizeUpTo(String gift, String uses) {
        return "up to " + gift + "; sold for: " + uses;
    }

    @Override
    public String square(String side) {
        return side + " square";
    }

    @Override
    public String student(String n) {
        return "Student " + n;
    }
}
