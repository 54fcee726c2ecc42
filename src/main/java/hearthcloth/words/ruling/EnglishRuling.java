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
    public String rounds(String rule) {
        return "There are " + rule + ".";
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
