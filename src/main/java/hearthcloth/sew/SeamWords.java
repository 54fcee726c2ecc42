package hearthcloth.sew;

import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.words.sewing.SewingWords;
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
    private final SewingWords said;
    private final SeamKind kind;
    private final List<String> lines = new ArrayList<>();

    private SeamWords(Meeting meeting, MakerWords words) {
        this.meeting = meeting;
        this.words = words;
        this.said = words.said();
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
            case LAPPED, WHIPPED -> seam.sewnAsBefore();
        }
        return List.copyOf(seam.lines);
    }

    private void sewnAsBefore() {
        String added = meeting.added().name();
        String work = meeting.work().name();
        String side = meeting.sideSeen(meeting.plain()).word();
        lines.add(told(List.of(said.briefSew(added, part(), side, work), said.briefWraps(wrapping()))));
    }

    private void briefly(Face inside, Length fromWrapped) {
        String added = meeting.added().name();
        String work = meeting.work().name();
        String turn = said.briefTurn(added, part(), meeting.sideSeen(inside).word(), work);
        lines.add(told(List.of(turn, words.layTouching(meeting, inside))));
        if (meeting.isBar() && words.shows(meeting.tooLong())) {
            lines.add(said.seamLevel(meeting.start(inside).word()));
        }
        Length top = meeting.addedWraps() ? fromWrapped.plus(meeting.offset()) : fromWrapped;
        String wraps = meeting.offset().isPositive()
                ? said.briefSticksOut(words.exact(meeting.offset()), wrapping())
                : said.briefWraps(wrapping());
        lines.add(told(List.of(wraps, said.briefStitch(words.exact(top)))));
    }

    /** Sentences one after the other, each with a large letter. */
    private String told(List<String> sentences) {
        return words.voice()
                .sentences(sentences.stream().map(MakerWords::capital).toList());
    }

    /** What of the work the new half is laid to. */
    private String part() {
        return meeting.isJoin() ? "end" : "edge";
    }

    private void felled() {
        lay(meeting.plain());
        offset();
        stitch(kind.narrow());
        boolean trims = kind.narrow().isMoreThan(kind.band());
        if (trims) {
            add(said.seamTrimAllowance(words.exact(trimmed()), wrapped()));
        }
        add(
                trims || meeting.offset().isPositive()
                        ? said.seamOpen(felledFace(), wrapped(), wrapping())
                        : said.seamOpenEven(felledFace(), wrapped(), wrapping()));
        Length under = kind.wide().minus(kind.band());
        if (under.isPositive()) {
            add(said.seamFold(words.exact(kind.band()), words.exact(under), wrapped(), wrapping()));
            add(said.seamEdgestitch(words.edgestitch(), kind.build().plies(1, 1)));
        }
    }

    private void add(String sentence) {
        lines.add(MakerWords.capital(sentence));
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
        String added = meeting.added().name();
        add(
                meeting.offset().isPositive()
                        ? said.seamStitchBoth(
                                added,
                                words.exact(below),
                                words.stitch(),
                                words.exact(top),
                                meeting.work().name())
                        : said.seamStitch(added, words.stitch(), words.exact(top)));
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
        add(first.isLessThan(kind.band()) ? said.frenchSnip() : said.frenchTrim(words.exact(half(kind.band()))));
        String other = said.frenchOther(MakerWords.face(meeting.plain()));
        lines.add(told(List.of(other, words.touching(meeting, meeting.plain()), said.frenchSharp())));
        add(said.frenchSecond(words.exact(kind.band())));
        add(said.frenchOpen(felledFace(), wrapped()));
    }

    private void lapped() {
        Length turn = kind.wide().minus(half(kind.band()));
        Length under = kind.narrow().minus(half(kind.band()));
        add(said.lappedPress(felledFace(), words.exact(turn), words.exact(under), wrapped(), wrapping()));
        add(said.lappedLay(
                meeting.added().name(),
                felledFace(),
                meeting.sideSeen(meeting.making().fell()).word(),
                meeting.work().name()));
        level(meeting.making().fell());
        add(said.lappedHook(words.exact(kind.band()), wrapping()));
        add(said.lappedStitch(words.edgestitch(), words.stitch()));
    }

    private void whipped() {
        add(said.whipPress(felledFace(), words.exact(kind.narrow()), words.exact(kind.wide()), wrapped(), wrapping()));
        lay(meeting.plain());
        add(said.whipSew());
        add(said.whipOpen(felledFace()));
    }

    /** Adds the line that lays the halves face to face, with {@code inside} inside. */
    private void lay(Face inside) {
        String lay = said.seamLay(
                meeting.added().name(),
                MakerWords.face(inside),
                part(),
                meeting.sideSeen(inside).word(),
                meeting.work().name());
        lines.add(told(List.of(lay, words.layTouching(meeting, inside))));
        level(inside);
    }

    private void level(Face up) {
        if (meeting.isBar() && words.shows(meeting.tooLong())) {
            lines.add(told(List.of(
                    said.seamLevel(meeting.start(up).word()),
                    said.seamRunsPast(
                            meeting.added().name(),
                            meeting.start(up).opposite().word(),
                            words.exact(meeting.tooLong())))));
        }
    }

    private void offset() {
        add(
                meeting.offset().isPositive()
                        ? said.seamOffset(words.exact(meeting.offset()), wrapped(), wrapping())
                        : said.seamEven());
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
}
