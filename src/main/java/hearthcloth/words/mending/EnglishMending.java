package hearthcloth.words.mending;

/** The room of mending in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishMending implements MendingWords {

    @Override
    public String bar(String bar) {
        return "bar " + bar;
    }

    @Override
    public String deedAgain(String what) {
        return (what.equals("small") ? "planned again after a mistake" : "planned again what is still to cut");
    }

    @Override
    public String deedAllCut(String cloth) {
        return "cut " + cloth;
    }

    @Override
    public String deedCut(int count, String cut, String made, String piece) {
        return (made.equals("yes") ? "" : "not yet ") + (count == 1 ? "cut " + cut + " of piece " + piece : "cuts of piece " + piece);
    }

    @Override
    public String deedLeft(String bar, String wrong) {
        return "bar " + bar + " left " + (wrong.equals("FACE") ? "the other side up" : "on the other side of the work");
    }

    @Override
    public String deedMistake(String piece) {
        return "a mistake in piece " + piece;
    }

    @Override
    public String deedSewn(String name, String size, String what) {
        return (what.equals("bar") ? "sewed " + name + " on" : what.equals("measured") ? "sewed " + name + " on, " + size : "step " + name + " sewn");
    }

    @Override
    public String deedShort(String bar, String way) {
        return "bar " + bar + " too short: " + (way.equals("JOINED_STRIP") ? "join a strip to it" : way.equals("ANEW") ? "make the bar anew" : way.equals("PIECED") ? "make the bar anew, pieced" : "use it as it is, and trim the work to it");
    }

    @Override
    public String deedUnpicked(int more, String name, String what) {
        return "unpicked: " + (what.equals("bar") ? "bar " + name : "step " + name) + (more == 0 ? "" : " and " + more + " more");
    }

    @Override
    public String hearth() {
        return "the hearth";
    }

    @Override
    public String noBar(String bar) {
        return "Bar " + bar + " cannot be as short as that; measure it again, raw ends and all.";
    }

    @Override
    public String noLarge() {
        return "It is as large as it was to be; trim what is more and go on.";
    }

    @Override
    public String noLeft() {
        return "You don't have enough fabric left for that; choose another way.";
    }

    @Override
    public String noNothing() {
        return "A patch of nothing cannot be used; measure what is there, or take another piece.";
    }

    @Override
    public String noShort(String bar) {
        return "Bar " + bar + " is long enough: sew it on, and trim what is more.";
    }

    @Override
    public String noWork() {
        return "The work cannot be as small as that; measure it again, raw edges and all.";
    }

    @Override
    public String piece(String fabric, String piece, String size) {
        return "piece " + piece + ", " + fabric + ", " + size;
    }

    @Override
    public String shortAnew(String bar, String pieces) {
        return "Cut bar " + bar + " again, from " + pieces + ".";
    }

    @Override
    public String shortBack() {
        return "What was cut for it comes back into the stash.";
    }

    @Override
    public String shortPieced(String bar, String pieces) {
        return "Bar " + bar + " is pieced from " + pieces + ".";
    }

    @Override
    public String shortStrip(String bar, String piece, String size) {
        return "Join a strip cut " + size + ", from " + piece + ", to bar " + bar + ".";
    }

    @Override
    public String shortTrim(String bar, String from, String less, String to, String way) {
        return "Trim the sewn work by " + less + ", to " + to + " " + (way.equals("high") ? "high" : "wide") + ", off " + from + ", and sew bar " + bar + " on as it is.";
    }

    @Override
    public String small(String by, String size, String what) {
        return what + " is too small by " + by + ": it measures " + size + ".";
    }

    @Override
    public String smallAcross(String length) {
        return length + " across";
    }

    @Override
    public String smallAlong(String length) {
        return length + " along";
    }

    @Override
    public String wayAgain(String pieces, String what) {
        return "Cut " + what + " again, from " + pieces + ".";
    }

    @Override
    public String wayBars(String bars, int count, String width) {
        return (count == 1 ? "bar " + bars + " " + width + " wide" : "bars " + bars + " " + width + " wide");
    }

    @Override
    public String wayFabric(String now, String was, String what) {
        return what + " is then of " + now + ", not of " + was + ".";
    }

    @Override
    public String waySmaller(String size, String what) {
        return "Use " + what + " as it is; the cloth becomes " + size + ".";
    }

    @Override
    public String wayStrip(String pieces, String what) {
        return "Join a strip to " + what + ", from " + pieces + ".";
    }

    @Override
    public String wayWider(String bars, String size, String what) {
        return "Use " + what + " as it is, and cut " + bars + "; the cloth stays " + size + ".";
    }
}
