package hearthcloth.sew;

import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.words.sewing.SewingWords;
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
    private final SewingWords said;
    private final SeamKind kind;
    private final List<String> lines = new ArrayList<>();

    private FewWords(Meeting meeting, MakerWords words) {
        this.meeting = meeting;
        this.words = words;
        this.said = words.said();
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
        SewingWords said = words.said();
        return List.of(end && edge ? said.fewTrimBoth(off) : end ? said.fewTrimEnd() : said.fewTrimEdge(off));
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
        add(
                under.isPositive()
                        ? first(
                                said.fewFold(words.exact(under), wrapped(), wrapping()),
                                said.fewFoldShort(words.exact(under)))
                        : first(said.fewPress(wrapped()), said.fewPressShort()));
    }

    private void add(String line) {
        lines.add(MakerWords.capital(line));
    }

    private void french() {
        lay(meeting.making().fell());
        pin();
        stitch(kind.narrow().minus(kind.band()));
        add(said.fewFrenchFold(words.exact(kind.band())));
        add(first(said.fewFrenchOpen(wrapped()), said.fewFrenchOpenShort()));
    }

    private void lapped() {
        Length half = new Length(kind.band().nm() / 2);
        String turn = words.exact(kind.wide().minus(half));
        String under = words.exact(kind.narrow().minus(half));
        add(first(said.fewLappedPress(felledFace(), turn, under, wrapping()), said.fewLappedPressShort()));
        String side = meeting.sideSeen(meeting.making().fell()).word();
        add(first(said.fewLappedLay(meeting.added().name(), felledFace(), side), said.fewLappedLayShort(felledFace())));
        level(meeting.making().fell());
        add(said.fewLappedHook(words.exact(kind.band())));
        add(said.fewLappedStitch());
    }

    private void whipped() {
        String narrow = words.exact(kind.narrow());
        String wide = words.exact(kind.wide());
        add(first(said.fewWhipPress(felledFace(), narrow, wide, wrapping()), said.fewWhipPressShort(felledFace())));
        lay(meeting.plain());
        add(said.fewWhipSew());
        add(said.fewWhipOpen());
    }

    private void lay(Face inside) {
        String face = MakerWords.face(inside);
        String side = meeting.sideSeen(inside).word();
        String part = meeting.isJoin() ? "end" : "edge";
        String added = meeting.added().name();
        add(first(said.fewLay(added, face, part, side), said.fewLayShort(added, face, part, side)));
        String sides = words.touching(meeting, inside);
        if (!sides.isEmpty()) {
            add(first(sides, said.fewSides()));
        }
        level(inside);
    }

    private void level(Face up) {
        if (meeting.isBar() && words.shows(meeting.tooLong())) {
            add(said.fewLevel(
                    meeting.start(up).opposite().word(),
                    words.exact(meeting.tooLong()),
                    meeting.start(up).word()));
        }
    }

    private void pin() {
        String out = words.exact(meeting.offset());
        add(
                meeting.offset().isPositive()
                        ? first(said.fewSticksOut(out, wrapping()), said.fewSticksOutShort(out))
                        : said.seamEven());
    }

    private void stitch(Length fromWrapped) {
        Length top = meeting.addedWraps() ? fromWrapped.plus(meeting.offset()) : fromWrapped;
        add(said.fewStitch(words.exact(top)));
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
