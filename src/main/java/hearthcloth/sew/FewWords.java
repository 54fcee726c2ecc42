package hearthcloth.sew;

import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * One seam in at most five short lines, to be read from beside the machine; {@link SeamWords} says the same in full. How
 * short: five lines of 75 signs fit beside a picture on a tablet in letters that are read at arm's length (ours).
 */
final class FewWords {

    /** Lines that are short enough to stand beside the picture. */
    private static final int MOST = 5;

    /** Signs in one of them. */
    private static final int LONGEST = 75;

    private final Meeting meeting;
    private final MakerWords words;
    private final SeamKind kind;
    private final List<String> lines = new ArrayList<>();

    private FewWords(Meeting meeting, MakerWords words) {
        this.meeting = meeting;
        this.words = words;
        this.kind = meeting.making().seam();
    }

    /** The seam, without what is trimmed afterwards. */
    static List<String> of(Meeting meeting, MakerWords words) {
        FewWords seam = new FewWords(meeting, words);
        switch (seam.kind.build()) {
            case FELLED -> seam.felled();
            case FRENCH -> seam.french();
            case LAPPED -> seam.lapped();
            case WHIPPED -> seam.whipped();
        }
        return List.copyOf(seam.lines);
    }

    /** What is trimmed off a bar, in a few words; none where nothing is. */
    static List<String> trimmed(Meeting meeting, MakerWords words) {
        boolean end = meeting.isBar() && words.shows(meeting.tooLong());
        boolean edge = meeting.isBar() && words.shows(meeting.tooWide());
        if (!end && !edge) {
            return List.of();
        }
        String off = words.exact(meeting.tooWide());
        return List.of(
                end && edge
                        ? "Trim its end, and its edge by " + off + "."
                        : end ? "Trim its end even." : "Trim its edge by " + off + ".");
    }

    /**
     * At most five lines of at most 75 signs: neighbours that are short enough together share one, and what is still too
     * much is left to the full task.
     */
    static List<String> fitted(List<String> all) {
        List<String> lines = new ArrayList<>(
                all.stream().filter(line -> length(line) <= LONGEST).toList());
        while (lines.size() > MOST) {
            int best = shortestPair(lines);
            if (length(lines.get(best) + " " + lines.get(best + 1)) > LONGEST) {
                // Which sides touch, and what runs on where, the picture shows too; what is done is never left out.
                lines.remove(1);
                continue;
            }
            lines.set(best, lines.get(best) + " " + lines.remove(best + 1));
        }
        return List.copyOf(lines);
    }

    private static int shortestPair(List<String> lines) {
        int best = 0;
        for (int i = 1; i + 1 < lines.size(); i++) {
            if (length(lines.get(i)) + length(lines.get(i + 1))
                    < length(lines.get(best)) + length(lines.get(best + 1))) {
                best = i;
            }
        }
        return best;
    }

    private static int length(String line) {
        return line.codePointCount(0, line.length());
    }

    private void felled() {
        lay(meeting.plain());
        pin();
        stitch(kind.narrow());
        Length under = kind.wide().minus(kind.band());
        lines.add(
                under.isPositive()
                        ? first(
                                "Press to " + wrapped() + ", turn " + wrapping() + " under " + words.exact(under)
                                        + ", stitch the fold.",
                                "Press; turn the wide edge under " + words.exact(under) + ", stitch the fold.")
                        : first("Press both edges towards " + wrapped() + ".", "Press both edges one way."));
    }

    private void french() {
        lay(meeting.making().fell());
        pin();
        stitch(kind.narrow().minus(kind.band()));
        lines.add("Fold the other way along the stitches. Stitch " + words.exact(kind.band()) + " from the fold.");
        lines.add(first("Open it, press the flap towards " + wrapped() + ".", "Open it, press the flap flat."));
    }

    private void lapped() {
        Length half = new Length(kind.band().nm() / 2);
        lines.add(first(
                "Press " + words.exact(kind.wide().minus(half)) + " of " + wrapping() + " to the "
                        + MakerWords.face(meeting.plain()) + ", "
                        + words.exact(kind.narrow().minus(half)) + " of the other to the " + felledFace() + ".",
                "Press both edges over, as the picture of the seam shows."));
        lines.add(first(
                "Both " + felledFace() + " up, " + meeting.added().name() + " at the "
                        + meeting.sideSeen(meeting.making().fell()).word() + ".",
                "Both " + felledFace() + " up, beside each other."));
        level(meeting.making().fell());
        lines.add("Hook the folds, " + words.exact(kind.band()) + " over each other. Pin.");
        lines.add("Stitch along both folds, one from each side. Press.");
    }

    private void whipped() {
        lines.add(first(
                "Press " + words.exact(kind.wide()) + " of " + wrapping() + ", " + words.exact(kind.narrow())
                        + " of the other to the " + felledFace() + ".",
                "Press both edges to the " + felledFace() + "."));
        lay(meeting.plain());
        lines.add("Line up the two folds. Whipstitch them by hand, about 1 mm apart.");
        lines.add("Open it out and press it flat.");
    }

    private void lay(Face inside) {
        String up = MakerWords.capital(MakerWords.face(inside)) + " up. ";
        String over = turned(inside) + " " + meeting.added().name();
        String edge = meeting.sideSeen(inside).word() + (meeting.isJoin() ? " end" : " edge");
        lines.add(first(
                up + over
                        + (meeting.sideSeen(inside).isUpright() ? " onto it like a page, at its " : " onto it, at its ")
                        + edge + ".",
                up + over + " onto its " + edge + "."));
        String sides = words.touching(meeting, inside);
        if (!sides.isEmpty()) {
            lines.add(first(sides, "Sides as in the picture."));
        }
        level(inside);
    }

    private String turned(Face inside) {
        return meeting.sideSeen(inside).isUpright() ? "Turn" : "Flip";
    }

    private void level(Face up) {
        if (meeting.isBar() && words.shows(meeting.tooLong())) {
            lines.add("Level at the " + meeting.start(up).word() + "; " + words.exact(meeting.tooLong())
                    + " runs on at the " + meeting.start(up).opposite().word() + ".");
        }
    }

    private void pin() {
        lines.add(
                meeting.offset().isPositive()
                        ? first(
                                "Let " + wrapping() + " stick out " + words.exact(meeting.offset())
                                        + ": it will wrap. Pin.",
                                "Let the edge that wraps stick out " + words.exact(meeting.offset()) + ". Pin.")
                        : "Line up the two edges. Pin.");
    }

    private void stitch(Length fromWrapped) {
        Length top = meeting.addedWraps() ? fromWrapped.plus(meeting.offset()) : fromWrapped;
        lines.add("Stitch " + words.exact(top) + " from the edge on top. Backstitch both ends.");
    }

    /** The fuller wording where it is short enough. */
    private static String first(String full, String shorter) {
        return length(full) <= LONGEST ? full : shorter;
    }

    private String felledFace() {
        return MakerWords.face(meeting.making().fell());
    }

    private String wrapping() {
        return meeting.wrapping().name();
    }

    private String wrapped() {
        return meeting.wrapped().name();
    }
}
