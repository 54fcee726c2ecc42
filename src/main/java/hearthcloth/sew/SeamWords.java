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

    private void felled() {
        lay(meeting.plain());
        jut();
        String at = "Stitch " + words.exact(kind.narrow()) + " from the edge of " + wrapped();
        lines.add(
                meeting.offset().isPositive()
                        ? at + "; that is " + words.exact(kind.wide()) + " from the edge of " + wrapping() + "."
                        : at + ".");
        if (kind.narrow().isMoreThan(kind.band())) {
            lines.add("Trim the allowance of " + wrapped() + " to " + words.exact(trimmed()) + ".");
        }
        lines.add("Open out and lay the " + felledFace() + " up. Press both allowances over " + wrapped()
                + ", the one of " + wrapping() + " on top.");
        Length under = kind.wide().minus(kind.band());
        if (under.isPositive()) {
            lines.add("Turn the edge of " + wrapping() + " under by " + words.exact(under)
                    + ", round the raw edge of " + wrapped() + ". The fold lies " + words.exact(kind.band())
                    + " from the stitching. Press and pin.");
            lines.add("Stitch close to the fold, through all "
                    + number(kind.build().plies(1, 1)) + " layers. Press.");
        }
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
        jut();
        lines.add("Stitch " + words.exact(first) + " from the edge of " + wrapped() + ".");
        lines.add(
                first.isLessThan(kind.band())
                        ? "Snip off loose threads, so that none can peep out."
                        : "Trim both allowances to " + words.exact(half(kind.band())) + ".");
        lines.add("Press, then fold along the stitching the other way, " + together(meeting.plain())
                + ". Press the edge sharp.");
        lines.add("Stitch " + words.exact(kind.band()) + " from that edge. The raw edges are shut in.");
        lines.add("Open out and lay the " + felledFace() + " up. Press the flap over " + wrapped() + ".");
    }

    private void lapped() {
        Length turn = kind.wide().minus(half(kind.band()));
        Length under = kind.narrow().minus(half(kind.band()));
        lines.add("Press " + words.exact(turn) + " along the edge of " + wrapping() + " to its "
                + MakerWords.face(meeting.plain()) + ", and " + words.exact(under) + " along the edge of " + wrapped()
                + " to its " + felledFace() + ".");
        lines.add("Lay " + meeting.work().name() + " with its " + felledFace() + " up. Lay "
                + meeting.added().name()
                + " beside it, also with its " + felledFace() + " up, at the "
                + meeting.sideSeen(meeting.making().fell()).word() + " edge.");
        level(meeting.making().fell());
        lines.add("Push the folds into each other, " + wrapping() + " on top, until they overlap by "
                + words.exact(kind.band()) + " and the raw edges meet inside. Pin.");
        lines.add("Stitch close to the fold you see. Turn over and stitch close to the other fold. Press.");
    }

    private void whipped() {
        lines.add("Press " + words.exact(kind.wide()) + " along the edge of " + wrapping() + " and "
                + words.exact(kind.narrow()) + " along the edge of " + wrapped() + " to the " + felledFace() + ".");
        lay(meeting.plain());
        lines.add("Bring the two folds level. Whip them together by hand: small stitches, about 1 mm apart, each"
                + " catching a thread or two of both folds.");
        lines.add("Open out and press flat. The raw edges stay on the " + felledFace() + ".");
    }

    /** Adds the line that lays the halves face to face, with {@code inside} inside. */
    private void lay(Face inside) {
        String up = MakerWords.face(inside);
        String edge = meeting.sideSeen(inside).word() + (meeting.isJoin() ? " end of " : " edge of ");
        lines.add("Lay " + meeting.work().name() + " with its " + up + " up. Turn "
                + meeting.added().name()
                + " over onto it like a page, its " + up + " down, along the " + edge
                + meeting.work().name() + sides(inside) + ".");
        level(inside);
    }

    private void level(Face up) {
        if (meeting.isBar() && words.shows(meeting.tooLong())) {
            lines.add("Start level at the " + meeting.start(up).word() + "; the bar is cut "
                    + words.exact(meeting.tooLong()) + " too long and runs on past the "
                    + meeting.start(up).opposite().word() + ".");
        }
    }

    private void jut() {
        if (meeting.offset().isPositive()) {
            lines.add("Let the edge of " + wrapping() + " jut out " + words.exact(meeting.offset())
                    + " beyond the edge of " + wrapped() + ": " + wrapping() + " will wrap. Pin.");
        } else {
            lines.add("Bring the two edges level. Pin.");
        }
    }

    private String sides(Face inside) {
        String sides = meeting.sidesTogether(inside);
        return sides.isEmpty() ? "" : ": " + sides;
    }

    private String together(Face inside) {
        String sides = meeting.sidesTogether(inside);
        return sides.isEmpty() ? MakerWords.face(inside) + " to " + MakerWords.face(inside) : sides;
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
