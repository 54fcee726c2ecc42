package hearthcloth.sew;

import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * How one seam is sewn, from laying the halves together to the last pressing, for each way a seam is built. Derived
 * from the allowances alone (docs/sources.md#seam-arithmetic): the joining row lies n from the wrapped edge, which is W
 * from the wrapping one; the fold lies a band f from that row, so the wide edge is turned under by W − f.
 */
final class SeamWords {

    private final Meeting meeting;
    private final MakerWords words;
    private final SeamKind kind;
    private final List<String> lines = new ArrayList<>();

    private SeamWords(Meeting meeting, MakerWords words) {
        this.meeting = meeting;
        this.words = words;
        this.kind = meeting.making().seam();
    }

    static List<String> of(Meeting meeting, MakerWords words) {
        SeamWords seam = new SeamWords(meeting, words);
        switch (seam.kind.build()) {
            case FELLED -> seam.felled();
            case FRENCH -> seam.french();
            case LAPPED -> seam.lapped();
            case WHIPPED -> seam.whipped();
        }
        return List.copyOf(seam.lines);
    }

    /** What is particular to this seam, for whoever has sewn the first one: all seams of a cloth are built alike. */
    static List<String> brief(Meeting meeting, MakerWords words) {
        SeamWords seam = new SeamWords(meeting, words);
        switch (seam.kind.build()) {
            case FELLED -> seam.briefly(meeting.plain(), seam.kind.narrow());
            case FRENCH ->
                seam.briefly(meeting.making().fell(), seam.kind.narrow().minus(seam.kind.band()));
            case LAPPED, WHIPPED ->
                seam.lines.add("Sew " + meeting.added().name() + " to the " + seam.edge(meeting.plain())
                        + ", as in step 1. " + MakerWords.capital(seam.wrapping()) + " wraps.");
        }
        return List.copyOf(seam.lines);
    }

    private void briefly(Face inside, Length fromWrapped) {
        String sides = meeting.sidesTogether(inside);
        String how = sides.isEmpty() ? "." : sides.endsWith("together") ? ", " + sides + "." : ", with " + sides + ".";
        lines.add(turned(inside) + " onto the " + edge(inside) + how);
        if (meeting.isBar() && words.shows(meeting.tooLong())) {
            lines.add("Line up the ends at the " + meeting.start(inside).word() + ".");
        }
        Length top = meeting.addedWraps() ? fromWrapped.plus(meeting.offset()) : fromWrapped;
        String wraps = meeting.offset().isPositive()
                ? MakerWords.capital(wrapping()) + " wraps: let its edge stick out " + words.exact(meeting.offset())
                        + "."
                : MakerWords.capital(wrapping()) + " wraps.";
        lines.add(wraps + " Stitch " + words.exact(top) + " from the edge on top. Finish as in step 1.");
    }

    private String turned(Face inside) {
        String added = meeting.added().name();
        return switch (meeting.sideSeen(inside)) {
            case LEFT, RIGHT -> "Turn " + added + " over";
            case TOP -> "Flip " + added + " down";
            case BOTTOM -> "Flip " + added + " up";
        };
    }

    private String edge(Face inside) {
        return meeting.sideSeen(inside).word()
                + (meeting.isJoin() ? " end of " : " edge of ")
                + meeting.work().name();
    }

    private void felled() {
        lay(meeting.plain());
        offset();
        stitch(kind.narrow());
        boolean trims = kind.narrow().isMoreThan(kind.band());
        if (trims) {
            lines.add("Trim the seam allowance of " + wrapped() + " to " + words.exact(trimmed()) + ".");
        }
        String wider = trims || meeting.offset().isPositive() ? "the wider one of " : "the one of ";
        lines.add("Open the seam out flat, " + felledFace() + " up. Press both seam allowances towards " + wrapped()
                + "; " + wider + wrapping() + " lies on top.");
        Length under = kind.wide().minus(kind.band());
        if (under.isPositive()) {
            lines.add("Fold the raw edge of " + wrapping() + " under by " + words.exact(under)
                    + ", so that it wraps the raw edge of " + wrapped() + ". The fold lies " + words.exact(kind.band())
                    + " from the stitching. Press and pin.");
            lines.add("Edgestitch " + words.edgestitch() + " from the fold, through all "
                    + number(kind.build().plies(1, 1)) + " layers. Backstitch at both ends. Press.");
        }
    }

    /**
     * Adds the joining row, {@code fromWrapped} from the wrapped edge, told first from the edge that can be seen: the
     * new half lies on top. Stitch length and backstitching are common practice (docs/sources.md#stitch-length).
     */
    private void stitch(Length fromWrapped) {
        Length fromWrapping = fromWrapped.plus(meeting.offset());
        boolean wrappingOnTop = meeting.addedWraps();
        Length top = wrappingOnTop ? fromWrapping : fromWrapped;
        Length below = wrappingOnTop ? fromWrapped : fromWrapping;
        lines.add("Stitch " + words.exact(top) + " from the edge of "
                + meeting.added().name() + ", which lies on top, with " + MakerWords.STITCH + " stitches."
                + (meeting.offset().isPositive()
                        ? " That is " + words.exact(below) + " from the edge of "
                                + meeting.work().name() + " underneath."
                        : "")
                + " Backstitch at both ends.");
    }

    /**
     * The width to which a narrow allowance is trimmed that would be wider than the band: as much as is turned under.
     */
    private Length trimmed() {
        return kind.wide().minus(kind.band()).min(kind.band());
    }

    private void french() {
        Length first = kind.narrow().minus(kind.band());
        lay(meeting.making().fell());
        offset();
        stitch(first);
        lines.add(
                first.isLessThan(kind.band())
                        ? "Snip off loose threads, so that none can show."
                        : "Trim both seam allowances to " + words.exact(half(kind.band())) + ".");
        lines.add("Press the seam, then fold along the stitching the other way, " + together(meeting.plain())
                + ". Press the fold sharp.");
        lines.add("Stitch " + words.exact(kind.band())
                + " from the fold. Backstitch at both ends. The raw edges are now" + " shut in.");
        lines.add("Open the seam out flat, " + felledFace() + " up. Press the flap towards " + wrapped() + ".");
    }

    private void lapped() {
        Length turn = kind.wide().minus(half(kind.band()));
        Length under = kind.narrow().minus(half(kind.band()));
        lines.add("Press " + words.exact(turn) + " along the edge of " + wrapping() + " to its "
                + MakerWords.face(meeting.plain()) + ", and " + words.exact(under) + " along the edge of " + wrapped()
                + " to its " + felledFace() + ".");
        lines.add("Lay " + meeting.work().name() + " " + felledFace() + " up. Lay "
                + meeting.added().name()
                + " beside it, also " + felledFace() + " up, at the "
                + meeting.sideSeen(meeting.making().fell()).word() + " edge.");
        level(meeting.making().fell());
        lines.add("Hook the folds into each other, " + wrapping() + " on top, until they overlap by "
                + words.exact(kind.band()) + " and the raw edges meet inside. Pin.");
        lines.add("Edgestitch " + words.edgestitch() + " from the fold you see, with " + MakerWords.STITCH
                + " stitches. Turn over and edgestitch the other fold. Backstitch at both ends. Press.");
    }

    private void whipped() {
        lines.add("Press " + words.exact(kind.wide()) + " along the edge of " + wrapping() + " and "
                + words.exact(kind.narrow()) + " along the edge of " + wrapped() + " to the " + felledFace() + ".");
        lay(meeting.plain());
        lines.add("Line up the two folds. Whipstitch them together by hand, about 1 mm apart. Each stitch catches a"
                + " thread or two of both folds.");
        lines.add("Open the seam out and press it flat. The raw edges stay on the " + felledFace() + ".");
    }

    /** Adds the line that lays the halves face to face, with {@code inside} inside. */
    private void lay(Face inside) {
        String up = MakerWords.face(inside);
        String onto = meeting.sideSeen(inside).isUpright() ? " onto it like a page, " : " onto it, ";
        lines.add("Lay " + meeting.work().name() + " " + up + " up. " + turned(inside) + onto + up + " down, along the "
                + edge(inside) + "." + sides(inside));
        level(inside);
    }

    private void level(Face up) {
        if (meeting.isBar() && words.shows(meeting.tooLong())) {
            lines.add("Line up the ends at the " + meeting.start(up).word() + ". "
                    + MakerWords.capital(meeting.added().name()) + " is cut "
                    + words.exact(meeting.tooLong()) + " too long and runs past the "
                    + meeting.start(up).opposite().word() + ".");
        }
    }

    private void offset() {
        if (meeting.offset().isPositive()) {
            lines.add("Let the edge of " + wrapping() + " stick out " + words.exact(meeting.offset())
                    + " beyond the edge of " + wrapped()
                    + ". This wider seam allowance will wrap round the other. Pin.");
        } else {
            lines.add("Line up the two edges. Pin.");
        }
    }

    private String sides(Face inside) {
        String sides = meeting.sidesTogether(inside);
        if (sides.isEmpty()) {
            return "";
        }
        return sides.endsWith("together") ? " Lay them " + sides + "." : " Lay them with " + sides + ".";
    }

    private String together(Face inside) {
        String sides = meeting.sidesTogether(inside);
        if (sides.isEmpty()) {
            return MakerWords.face(inside) + " to " + MakerWords.face(inside);
        }
        return sides.endsWith("together") ? sides : "with " + sides;
    }

    private String wrapping() {
        return meeting.wrapping().name();
    }

    private String wrapped() {
        return meeting.wrapped().name();
    }

    private String felledFace() {
        return MakerWords.face(meeting.making().fell());
    }

    private static Length half(Length length) {
        return length.dividedBy(2, hearthcloth.measure.Rounding.NEAREST);
    }

    private static String number(int plies) {
        return plies == 4 ? "four" : String.valueOf(plies);
    }
}
