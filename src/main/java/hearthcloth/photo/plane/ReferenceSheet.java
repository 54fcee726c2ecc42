package hearthcloth.photo.plane;

import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
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

    public ReferenceSheet {
        if (size.width().isLessThan(Length.mm(20)) || size.height().isLessThan(Length.mm(20))) {
            throw new MeasureException(
                    "a reference of " + size + " is too small to measure by; use one of 2 cm or more");
        }
    }

    /** Any rectangle the maker has measured, such as a cutting mat; it is taken to be right to half a millimetre. */
    public static ReferenceSheet of(Size size) {
        return new ReferenceSheet("rectangle", size, new Length(500_000), Length.ZERO, false);
    }

    /**
     * Reads "a4", "letter", "card" or a size such as "12 x 18 in".
     *
     * @throws MeasureException with a sentence for the maker
     */
    public static ReferenceSheet parse(String text) {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
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
