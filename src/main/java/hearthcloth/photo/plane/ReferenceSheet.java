package hearthcloth.photo.plane;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PhotographingSentences;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.Sentence;
import java.util.Locale;

/**
 * The reference of known size that lies in the picture.
 *
 * @param name as the maker calls it
 * @param size width by height
 * @param tolerance how far each side of a real one may be from {@code size}
 * @param cornerRadius radius of rounded corners, zero for sharp ones
 * @param white whether it is white paper, which distinguishes it from the scraps
 */
public record ReferenceSheet(String name, Size size, Length tolerance, Length cornerRadius, boolean white) {

    /** A4: 210 × 297 mm, within 2 mm (docs/sources.md#paper-a4). */
    public static final ReferenceSheet A4 =
            new ReferenceSheet("A4", new Size(Length.mm(210), Length.mm(297)), Length.mm(2), Length.ZERO, true);

    /** Letter: 8½ × 11 in, with the tolerance of A4 (docs/sources.md#paper-letter). */
    public static final ReferenceSheet LETTER = new ReferenceSheet(
            "Letter", new Size(Length.inches(17, 2), Length.inches(11)), Length.mm(2), Length.ZERO, true);

    /**
     * A bank or library card: 85.60 × 53.98 mm, corner radius 2.88 to 3.48 mm (docs/sources.md#card); the tolerance of
     * a used one is from memory.
     */
    public static final ReferenceSheet CARD = new ReferenceSheet(
            "card",
            new Size(new Length(85_600_000), new Length(53_980_000)),
            new Length(130_000),
            new Length(3_180_000),
            false);

    /** How our own sheet is called. */
    private static final String OWN = "measuring-sheet";

    /** The share by which a print may be off where nobody has laid a ruler to it (docs/sources.md#print-scale). */
    private static final double PRINT_SHARE = 0.005;

    /** How well a ruler is read along the line of the print, as a share of it: half a millimetre of 20 cm. */
    private static final double RULER_SHARE = 0.0025;

    /** Our own sheet as printed, its line not measured: it is taken to be printed true to size. */
    public static final ReferenceSheet MEASURING = printed(1, PRINT_SHARE);

    public ReferenceSheet {
        if (size.width().isLessThan(Length.mm(20)) || size.height().isLessThan(Length.mm(20))) {
            throw new RefusedException(PhotographingSentences.referenceSmall(Argument.of(size, Rounding.NEAREST)));
        }
    }

    /** Any rectangle the maker has measured, such as a cutting mat; it is taken to be right to half a millimetre. */
    public static ReferenceSheet of(Size size) {
        return new ReferenceSheet("rectangle", size, new Length(500_000), Length.ZERO, false);
    }

    /** Our own sheet, where a ruler says that its line of 20 cm is this long. */
    public static ReferenceSheet measuring(Length line) {
        return printed(MeasuringSheet.enlarged(line), RULER_SHARE);
    }

    private static ReferenceSheet printed(double enlarged, double share) {
        return new ReferenceSheet(
                OWN,
                new Size(mm(MeasuringSheet.WIDTH_MM * enlarged), mm(MeasuringSheet.HEIGHT_MM * enlarged)),
                mm(MeasuringSheet.HEIGHT_MM * share),
                Length.ZERO,
                true);
    }

    private static Length mm(double millimetres) {
        return new Length(Rounding.NEAREST.whole(millimetres * 1e6));
    }

    /** What it is, to be said in a sentence. */
    public Sentence said() {
        return PhotographingSentences.sheet(isMeasuringSheet() ? "MEASURING" : name.toUpperCase(Locale.ROOT));
    }

    /** Whether it is the sheet that we print, which tells itself by its marks. */
    public boolean isMeasuringSheet() {
        return name.equals(OWN);
    }

    /**
     * Reads "sheet" (our own, or "sheet 19.9 cm" with what its line measures), "a4", "letter", "card" or a size such as
     * "12 x 18 in".
     *
     * @throws MeasureException with a sentence for the maker
     */
    public static ReferenceSheet parse(String text) {
        String said = text.strip().toLowerCase(Locale.ROOT);
        if (said.startsWith("sheet ")) {
            return measuring(Length.parse(said.substring("sheet ".length())));
        }
        return switch (said) {
            case "sheet" -> MEASURING;
            case "a4" -> A4;
            case "letter" -> LETTER;
            case "card", "id-1" -> CARD;
            default -> of(Size.parse(text));
        };
    }

    public double widthMm() {
        return size.width().in(Unit.MILLIMETRE);
    }

    public double heightMm() {
        return size.height().in(Unit.MILLIMETRE);
    }

    public double toleranceMm() {
        return tolerance.in(Unit.MILLIMETRE);
    }
}
