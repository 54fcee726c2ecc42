package hearthcloth.words.wrapping;

/** The room of wrapping in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishWrapping implements WrappingWords {

    @Override
    public String labelKeep() {
        return "what it wraps";
    }

    @Override
    public String showsCaption(String what) {
        return (what.equals("patch") ? "Where the cloth of each patch went, in per cent of the patch" : "Where the cloth of each fabric went, in per cent of the fabric");
    }

    @Override
    public String showsEnds() {
        return "Knot and ends";
    }

    @Override
    public String showsFrom() {
        return "Seen from";
    }

    @Override
    public String showsHidden() {
        return "Folded away";
    }

    @Override
    public String showsName(String what) {
        return (what.equals("patch") ? "Patch" : "Fabric");
    }

    @Override
    public String showsOf() {
        return "Of what is seen";
    }

    @Override
    public String showsSides() {
        return "On the sides";
    }

    @Override
    public String showsTop() {
        return "On top";
    }

    @Override
    public String showsUnder() {
        return "Underneath";
    }

    @Override
    public String showsView(String view) {
        return (view.equals("ABOVE") ? "above" : view.equals("FRONT") ? "the front" : view.equals("BACK") ? "the back" : view.equals("RIGHT") ? "the right" : view.equals("LEFT") ? "the left" : view.equals("CORNER") ? "a corner" : view.equals("UNDERNEATH") ? "underneath" : "nowhere");
    }

    @Override
    public String showsWhere(String what) {
        return (what.equals("patch") ? "Where each patch went" : "Where each fabric went");
    }

    @Override
    public String tieCare() {
        return "Take care";
    }

    @Override
    public String tieFits(String fits) {
        return (fits.equals("yes") ? "fits" : "too small");
    }

    @Override
    public String tieKnot() {
        return "The knot: a reef, not a granny";
    }

    @Override
    public String tieLarge() {
        return "How large the cloth must be";
    }

    @Override
    public String tieLead(String gift, String own, String suited) {
        return "For " + suited + "; here round " + gift + ", drawn with " + (own.equals("yes") ? "your cloth" : "a plain cloth") + ". Each arrow ends where the corner is now.";
    }

    @Override
    public String tieNone() {
        return "There is no such tie here.";
    }

    @Override
    public String tieNothing() {
        return "nothing of this shape";
    }

    @Override
    public String tieShort() {
        return "When a corner will not reach";
    }

    @Override
    public String tieSold() {
        return "Sizes that are sold";
    }

    @Override
    public String tieSoldFor() {
        return "Sold for (common practice)";
    }

    @Override
    public String tieSquare() {
        return "square, finished";
    }

    @Override
    public String tieSquareOf() {
        return "Square of";
    }

    @Override
    public String tieThisGift() {
        return "This gift";
    }

    @Override
    public String tieTitle(String tie) {
        return "The " + tie;
    }

    @Override
    public String tieTitleNamed(String tie, String trade) {
        return "The " + tie + ", " + trade;
    }

    @Override
    public String tieUnsuited(String gift, String suited, String tie) {
        return "The " + tie + " is for " + suited + "; choose another tie for " + gift + ".";
    }

    @Override
    public String tieUpTo() {
        return "This tie, a gift of this shape up to";
    }

    @Override
    public String tiedAwayExample() {
        return "0; −2 is nearer";
    }

    @Override
    public String tiedBack() {
        return "Back to the cloth";
    }

    @Override
    public String tiedByPatch() {
        return "Patch by patch";
    }

    @Override
    public String tiedFolds() {
        return "The folds on paper, to cut out and fold small";
    }

    @Override
    public String tiedHowTie(String tie) {
        return "How the " + tie + " is tied";
    }

    @Override
    public String tiedIsFor(String cloth, String gift) {
        return cloth + " is for " + gift + " now.";
    }

    @Override
    public String tiedKeep() {
        return "This is what the cloth is for";
    }

    @Override
    public String tiedLacks() {
        return "You don't have enough fabric for this cloth yet, so there is nothing to tie.";
    }

    @Override
    public String tiedNear() {
        return "Drawn as the cloth is laid. Near the knot, about a hand wide, real cloth gathers up, and the ends fall where they will.";
    }

    @Override
    public String tiedNone() {
        return "This cloth does not tie that gift.";
    }

    @Override
    public String tiedOff() {
        return "The gift off the middle";
    }

    @Override
    public String tiedOffAway(String unit) {
        return "Off the middle, away from you, " + unit;
    }

    @Override
    public String tiedOffRight(String unit) {
        return "Off the middle, to the right, " + unit;
    }

    @Override
    public String tiedRightExample() {
        return "0; −2 is left";
    }

    @Override
    public String tiedShare(String percent) {
        return percent + " %";
    }

    @Override
    public String tiedShow() {
        return "Show";
    }

    @Override
    public String tiedShows() {
        return "What shows";
    }

    @Override
    public String tiedSides() {
        return "Look at it";
    }

    @Override
    public String title(String cloth) {
        return cloth + ", tied";
    }

    @Override
    public String which() {
        return "Which cloth will you tie?";
    }
}
