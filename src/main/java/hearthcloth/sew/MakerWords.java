package hearthcloth.sew;

import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.making.Face;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.words.sewing.SewingWords;
import hearthcloth.words.speech.Voice;
import java.util.List;

/**
 * Numbers and names as one maker says them to another.
 *
 * <p>A number that lies on the maker's ruler is written as it is; one that does not is written on a finer ruler instead
 * of being moved, and only what no ruler shows is called "about".
 */
record MakerWords(Voice voice) {

    Ruler ruler() {
        return voice.ruler();
    }

    SewingWords said() {
        return voice.sewing();
    }

    /** The stitch length said in a step; machines are set in millimetres everywhere (docs/sources.md#stitch-length). */
    String stitch() {
        return voice.local("2.5") + " mm";
    }

    /** How far from a fold an edgestitched row lies: ¹⁄₁₆ in, 1 to 2 mm (common practice, no source). */
    String edgestitch() {
        return ruler().isMetric() ? "1–2 mm" : "¹⁄₁₆ " + voice.unit() + " (1–2 mm)";
    }

    /** An allowance, fold or distance, exact wherever a ruler can show it. */
    String exact(Length length) {
        List<Ruler> rulers = ruler().isMetric()
                ? List.of(ruler(), Ruler.SIXTEENTHS)
                : List.of(ruler(), Ruler.SIXTEENTHS, Ruler.MILLIMETRES);
        for (Ruler finer : rulers) {
            if (isOn(finer, length)) {
                return voice.by(finer).write(length, Rounding.NEAREST);
            }
        }
        return said().about(near(length));
    }

    /**
     * A cut size, on the ruler's marks as planned; rounded up to the next one should the plan be read on another ruler.
     */
    String cut(Length length) {
        return voice.write(length, Rounding.UP);
    }

    String cut(Size size) {
        return voice.write(size, Rounding.UP);
    }

    /** A size that was measured, of which no more is there. */
    String had(Size size) {
        return voice.write(size, Rounding.DOWN);
    }

    /** The size that the work should have, to the nearest mark. */
    String measured(Size size) {
        String near = voice.write(size, Rounding.NEAREST);
        return isOn(ruler(), size.width()) && isOn(ruler(), size.height()) ? near : said().about(near);
    }

    String near(Length length) {
        return voice.write(length, Rounding.NEAREST);
    }

    /** A length to the nearest mark; less than one mark is said so. */
    String about(Length length) {
        return shows(length) ? said().about(near(length)) : said().lessThan(near(ruler().step()));
    }

    /** Distances with the unit once: {@code 3⅛, 5 and 9¼ in}. */
    String near(List<Length> lengths) {
        List<String> numbers = lengths.stream()
                .map(length -> voice.number(length, Rounding.NEAREST))
                .distinct()
                .toList();
        return voice.list(numbers) + " " + voice.unit();
    }

    /** Whether a length is half a mark or more; anything less is lost in the width of a thread. */
    boolean shows(Length length) {
        return ruler().mark(length, Rounding.NEAREST).isPositive();
    }

    static boolean isOn(Ruler ruler, Length length) {
        return ruler.mark(length, Rounding.NEAREST).equals(length);
    }

    /** A patch by its name in a sentence. */
    String patch(Patch patch) {
        if (patch.place() instanceof Place.Hearth) {
            return said().nameHearth();
        }
        if (patch.place() instanceof Place.Bar bar) {
            return bar.part() == 0 ? said().nameBar(bar.label()) : said().namePart(bar.label());
        }
        Place.Free free = (Place.Free) patch.place();
        return free.task() == 0 ? said().namePatch(Integer.toString(free.number())) : said().nameFree(free.id());
    }

    /** Which sides of the fabrics touch where {@code inside} lies inside; empty where nobody can tell them apart. */
    String touching(Meeting meeting, Face inside) {
        Meeting.Touching sides = meeting.touching(inside);
        String added = meeting.added().name();
        String work = meeting.work().name();
        return switch (sides.kind()) {
            case MIXED -> said().touchMixed();
            case UNSEEN -> "";
            case ALIKE -> said().touchTogether(sides.added());
            case ADDED -> capital(said().touchFacing(added, work, sides.added()));
            case WORK -> capital(said().touchFacing(work, added, sides.work()));
            case BOTH -> capital(said().touchBoth(added, sides.added(), sides.work(), work));
        };
    }

    /** The same as something to do. */
    String layTouching(Meeting meeting, Face inside) {
        Meeting.Touching sides = meeting.touching(inside);
        String added = meeting.added().name();
        String work = meeting.work().name();
        return switch (sides.kind()) {
            case MIXED -> said().touchLayMixed();
            case UNSEEN -> "";
            case ALIKE -> said().touchLayTogether(sides.added());
            case ADDED -> capital(said().touchLayFacing(added, work, sides.added()));
            case WORK -> capital(said().touchLayFacing(work, added, sides.work()));
            case BOTH -> capital(said().touchLayBoth(added, sides.added(), sides.work(), work));
        };
    }

    /** The word by which a catalogue tells the faces apart. */
    static String face(Face face) {
        return face == Face.FRONT ? "front" : "back";
    }

    static String capital(String sentence) {
        return sentence.isEmpty()
                ? sentence
                : sentence.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + sentence.substring(1);
    }
}
