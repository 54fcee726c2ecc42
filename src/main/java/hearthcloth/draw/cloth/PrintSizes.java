package hearthcloth.draw.cloth;

import hearthcloth.draw.letters.Weight;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Type;

/** The sizes of type on a printed page, to be read standing, at arm's length from the machine. */
public final class PrintSizes {

    public static final Type BODY = Type.of(11.5 * Type.POINT, Weight.REGULAR, Palette.INK);
    public static final Type STRONG = BODY.in(Weight.SEMIBOLD);
    public static final Type SMALL = Type.of(11 * Type.POINT, Weight.REGULAR, Palette.SECOND_INK);
    public static final Type TITLE = Type.of(26 * Type.POINT, Weight.BOLD, Palette.INK);
    public static final Type HEADING = Type.of(18 * Type.POINT, Weight.BOLD, Palette.INK);
    public static final Type STEP = Type.of(15 * Type.POINT, Weight.BOLD, Palette.INK);
    public static final Type FIGURE = Type.of(24 * Type.POINT, Weight.BOLD, Palette.INK);
    public static final Type CARE = BODY.in(Palette.MADDER);

    private PrintSizes() {}
}
