package hearthcloth.words.ruling;

/** The room of ruling in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishRuling implements RulingWords {

    @Override
    public String asked() {
        return "hearth, bars and rounds as wished";
    }

    @Override
    public String askedGift(String gift, String tie) {
        return gift + ", " + tie;
    }

    @Override
    public String bars(String rule) {
        return "The bars round it are " + rule + ".";
    }

    @Override
    public String bendBars(String rule, String widths) {
        return "The bars are cut " + widths + " wide, not " + rule + ".";
    }

    @Override
    public String bendColours(String found, String scheme, String ways) {
        return (found.equals("none") ? "The colours lie as the fabric falls, not: " + ways + "." : "The colours: " + scheme + ", not: " + ways + ".");
    }

    @Override
    public String bendHearth(String rule, String share, String size) {
        return "The hearth is cut " + size + ", " + share + " of the cloth's width, not " + rule + ".";
    }

    @Override
    public String bendJoins(int joins, String most) {
        return "One bar has " + (joins == 1 ? "" + joins + " join" : "" + joins + " joins") + ", not at most " + most + ".";
    }

    @Override
    public String bendMiddle(String lies, String wanted) {
        return "In the middle lies " + lies + ", not " + wanted + ".";
    }

    @Override
    public String bendOrder(String found, String wanted) {
        return (found.equals("ROUND") ? "The bars are laid round the square" : found.equals("PAIRS") ? "The bars are laid in opposite pairs" : found.equals("TWO_SIDES") ? "The bars are laid to two sides" : "The bars are laid in another order") + ", not " + (wanted.equals("ROUND") ? "round the square" : wanted.equals("PAIRS") ? "in opposite pairs" : "to two sides") + ".";
    }

    @Override
    public String bendRounds(int rounds, String rule) {
        return (rounds == 1 ? "There is one round, not " + rule + "." : "There are " + rounds + " rounds, not " + rule + ".");
    }

    @Override
    public String bendSize(String rule, String size) {
        return "The cloth is " + size + ", not " + rule + ".";
    }

    @Override
    public String bendWidths(String least, String most) {
        return least + " to " + most;
    }

    @Override
    public String colours(String rule) {
        return "Colours: " + rule + ".";
    }

    @Override
    public String fileField(String field, String what) {
        return "\"" + field + "\": " + what + ".";
    }

    @Override
    public String fileFormat(String guideline, String plan, String text) {
        return "this is \"" + text + "\"; a plan file says " + plan + ", a guideline " + guideline;
    }

    @Override
    public String fileGuideline(String what) {
        return "This is no guideline file: " + what + ".";
    }

    @Override
    public String fileJson(String line, String text, String why) {
        return "line " + line + ": " + (why.equals("AFTER") ? "there is more after the end of the one object in the file" : why.equals("EARLY") ? "the file ends too early; it may have been sent or saved only in part" : why.equals("COLON") ? "a " + text + " is missing after the name of a field" : why.equals("COMMA_FIELD") ? "a " + text + " is missing, or a comma after a field" : why.equals("COMMA_LIST") ? "a " + text + " is missing, or a comma in a list" : why.equals("DEEP") ? "it is nested too deeply" : why.equals("NAME") ? "the name of a field is missing; it stands in quotes" : why.equals("TWICE") ? "\"" + text + "\" stands twice; leave one out" : why.equals("OPEN_QUOTE") ? "a quote is not closed" : why.equals("LINE_END") ? "a line ends inside quotes; write \\n for a new line" : why.equals("ESCAPE") ? "" + text + " is not a letter of JSON; write two backslashes for one" : why.equals("CODE") ? "\\u wants four figures from 0 to f" : "a value is not understood; words stand in quotes");
    }

    @Override
    public String fileKind(String kind, String signs) {
        return (kind.equals("OBJECT") ? "this is to be an object with fields, in " + signs : kind.equals("LIST") ? "this is to be a list, in " + signs : "this is to be words in quotes");
    }

    @Override
    public String fileLong(String letters, String most) {
        return "this is " + letters + " letters long; " + most + " fit";
    }

    @Override
    public String fileMissing() {
        return "it is missing";
    }

    @Override
    public String fileObject(String sign) {
        return "The file holds no object; its first sign is " + sign + ".";
    }

    @Override
    public String filePatches(String why) {
        return (why.equals("SCRAPS") ? "This plan is a cloth of scraps, which has no hearth and bars to hand on." : why.equals("HEARTH") ? "No patch of this plan is the hearth; print the plan anew." : why.equals("NONE") ? "This plan has no patches; print the plan anew." : why.equals("MANY") ? "This plan has more patches than a cloth of ours can; print the plan anew." : "The patches of this plan do not fit together; print the plan anew.");
    }

    @Override
    public String filePicture(String why) {
        return (why.equals("LARGE") ? "the picture is too large; make it smaller, to at most 330 kB" : "this is no picture in base 64; put the picture in again");
    }

    @Override
    public String filePlan(String what) {
        return "This is no plan file: " + what + ".";
    }

    @Override
    public String fileUnknown(String names) {
        return "this field is not known here; there are " + names;
    }

    @Override
    public String fileWhole(String least, String most, String there) {
        return (there.equals("no") ? "it is missing; write a whole number from " + least + " to " + most : "this will not do; write a whole number from " + least + " to " + most);
    }

    @Override
    public String giftBooks(String sizes) {
        return "two books, each " + sizes;
    }

    @Override
    public String giftBottle(String across, String high) {
        return "a bottle " + across + " across, " + high + " high";
    }

    @Override
    public String giftBottles(String across, String high) {
        return "two bottles " + across + " across, " + high + " high";
    }

    @Override
    public String giftBox(String sizes) {
        return "a box " + sizes;
    }

    @Override
    public String giftRoll(String across, String length) {
        return "a roll " + across + " across, " + length + " long";
    }

    @Override
    public String giftRound(String across) {
        return "something round, " + across + " across";
    }

    @Override
    public String hearth(String rule) {
        return "The hearth, the piece in the middle, is " + rule + ".";
    }

    @Override
    public String isBars(String kind, String most, String width) {
        return (kind.equals("WIDTHS") ? "" + width + " wide, as cut" : kind.equals("WIDTHS_FINISHED") ? "" + width + " wide, finished" : kind.equals("BETWEEN") ? "from " + width + " to " + most + " wide, as cut" : kind.equals("BETWEEN_FINISHED") ? "from " + width + " to " + most + " wide, finished" : kind.equals("SHARE") ? "" + width + " to " + most + " % of the cloth's width" : kind.equals("STRIPS") ? "as wide as your strips are" : "as your heap has them");
    }

    @Override
    public String isColours(String open, String ways) {
        return (open.equals("yes") ? "as your heap has them" : "" + ways);
    }

    @Override
    public String isGift(String gift, String tie) {
        return "large enough to wrap " + gift + ", " + tie;
    }

    @Override
    public String isHearth(String kind, String least, String most, String size) {
        return (kind.equals("EXACT") ? "" + size + ", as cut" : kind.equals("FINISHED") ? "" + size + ", finished" : kind.equals("SHARE") ? "" + least + " to " + most + " % of the cloth's width" : kind.equals("SQUARE") ? "the largest square that one of your pieces gives" : "as your heap has it");
    }

    @Override
    public String isRounds(String least, int most) {
        return (most == 0 ? "as many rounds as your heap gives" : most == 1 ? "" + (least.equals("none") ? "" : "" + least + " to ") + most + " round of bars" : "" + (least.equals("none") ? "" : "" + least + " to ") + most + " rounds of bars");
    }

    @Override
    public String isSize(String kind, String most, String size) {
        return (kind.equals("EXACT") ? "" + size + ", finished" : kind.equals("WITHIN") ? "a square from " + size + " to " + most + ", as large as your heap allows" : "as large as your heap allows");
    }

    @Override
    public String isWay(String idea, String scheme) {
        return scheme + " (" + idea + ")";
    }

    @Override
    public String joins(String least, int most) {
        return (most == 0 ? "Each bar is one piece; none is joined." : most == 1 ? "A bar may be joined from pieces, with at most " + most + " join, none finishing under " + least + "." : "A bar may be joined from pieces, with at most " + most + " joins, none finishing under " + least + ".");
    }

    @Override
    public String middle(String middle) {
        return "In the middle lies " + (middle.equals("FAVOURITE") ? "your favourite fabric" : middle.equals("LIGHTEST") ? "your lightest fabric that is large enough" : middle.equals("DARKEST") ? "your darkest fabric that is large enough" : "any fabric") + ".";
    }

    @Override
    public String order(String order) {
        return (order.equals("ROUND") ? "Each bar is laid to the next side, round and round." : order.equals("PAIRS") ? "Bars are laid in opposite pairs." : "Bars are laid to two sides only, so that the hearth stays in a corner.");
    }

    @Override
    public String orderOpen() {
        return "The order of the bars is as your heap gives it.";
    }

    @Override
    public String plannerMissing() {
        return "This Hearthcloth was built without the planner for pages; run ideapage/build in its folder, then build it again.";
    }

    @Override
    public String rounds(String rule) {
        return "There are " + rule + ".";
    }

    @Override
    public String ruleBar(String text) {
        return "\"" + text + "\" is no bar; bars are called 1A, 1B and so on";
    }

    @Override
    public String ruleMeasure(String rule, String text) {
        return "\"" + text + "\" will not do; write " + (rule.equals("SIZE") ? "open, a size such as \"16 in\" or \"16 to 20 in\", or \"for box 30 x 20 x 8 cm\"" : rule.equals("HEARTH") ? "open, largest square, a share such as \"30 to 40 %\" or a size such as \"14 in\"" : "open, strips, a share such as \"8 to 12 %\" or widths such as \"2 to 3 in\"");
    }

    @Override
    public String ruleMost(String most, String none, String text) {
        return "\"" + text + "\" will not do; write " + (none.equals("yes") ? "a length of at most " + most : "more than nothing and at most " + most);
    }

    @Override
    public String ruleRange(String text) {
        return "\"" + text + "\" is no range; write the smaller measure first, such as \"2 to 3 in\"";
    }

    @Override
    public String ruleReach(String text) {
        return "\"" + text + "\" is out of reach; write more than nothing and at most 5 m, and check the unit";
    }

    @Override
    public String ruleRounds(String most, String text) {
        return "\"" + text + "\" will not do; write a number of rounds from 1 to " + most + ", two such as \"2 to 4\", or \"open\"";
    }

    @Override
    public String ruleSeam(String names, String text) {
        return "\"" + text + "\" is not a seam we know; there are " + names;
    }

    @Override
    public String ruleShare(String text) {
        return "\"" + text + "\" is no share; write whole numbers from 1 to 99, the smaller first, such as \"30 to 40 %\"";
    }

    @Override
    public String ruleWay(String names, String text) {
        return "\"" + text + "\" is no way of colour; write " + names;
    }

    @Override
    public String ruleWider() {
        return "the wide allowance wraps round the narrow one, so it must be the wider one";
    }

    @Override
    public String seam(String name, String seam) {
        return (seam.equals("felled_and_trimmed") ? "felled and trimmed" : seam.equals("french_trimmed") ? "french, trimmed" : "" + name);
    }

    @Override
    public String sewn(String corner, String first, String narrow, String seam, String second, String wide) {
        return "Seams: " + seam + ", " + narrow + " + " + wide + ". Hem: " + first + " + " + second + ", " + (corner.equals("MITRED") ? "mitred" : "square") + " corners.";
    }

    @Override
    public String size(String rule) {
        return "The cloth is " + rule + ".";
    }

    @Override
    public String suited(String tie) {
        return (tie.equals("FOUR_CORNER") ? "boxes, tiered and heavy things" : tie.equals("EDGE_ALONG_EDGE") ? "boxes on a large cloth" : tie.equals("ERRAND") ? "boxes carried by hand" : tie.equals("FLAT") ? "flat boxes and folded garments, without a knot" : tie.equals("TWO_KNOT") ? "long boxes and rolled mats" : tie.equals("ONE_BOTTLE") ? "a bottle standing up" : tie.equals("TWO_BOTTLES") ? "two like bottles" : tie.equals("ROUND") ? "balls, melons, round things" : tie.equals("BOOKS") ? "two like books" : "bolts of cloth, tubes, canisters");
    }

    @Override
    public String tie(String tie) {
        return (tie.equals("FOUR_CORNER") ? "four-corner tie" : tie.equals("EDGE_ALONG_EDGE") ? "four-corner tie, box square to the cloth" : tie.equals("ERRAND") ? "errand wrap" : tie.equals("FLAT") ? "flat wrap" : tie.equals("TWO_KNOT") ? "two-knot wrap" : tie.equals("ONE_BOTTLE") ? "one-bottle wrap" : tie.equals("TWO_BOTTLES") ? "two-bottle wrap" : tie.equals("ROUND") ? "round wrap" : tie.equals("BOOKS") ? "book wrap" : "roll wrap");
    }
}
