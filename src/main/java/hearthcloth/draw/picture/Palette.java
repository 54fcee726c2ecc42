package hearthcloth.draw.picture;

import hearthcloth.colour.Colour;

/** The quiet colours of everything that is not cloth. On white, ink and madder both contrast above 4.5 : 1. */
public final class Palette {

    public static final Colour SHEET = Colour.of(0xffffff);
    public static final Colour RAMIE = Colour.of(0xf3f3ef);
    public static final Colour INK = Colour.of(0x20242b);
    public static final Colour SECOND_INK = Colour.of(0x5b616b);
    public static final Colour MAT_LINE = Colour.of(0xcdd4cc);
    public static final Colour LINE = Colour.of(0xd7d7cf);
    public static final Colour INDIGO = Colour.of(0x27467d);
    public static final Colour WASH = Colour.of(0xe6ebf5);
    /** Words on madder. */
    public static final Colour ON_MADDER = Colour.of(0xfffefd);

    public static final Colour MADDER = Colour.of(0xa63d24);

    private Palette() {}
}
