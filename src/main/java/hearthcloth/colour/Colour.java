package hearthcloth.colour;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** An sRGB colour, 8 bits a channel, as on a screen. Immutable. */
public record Colour(int rgb) {

    public static final Colour BLACK = new Colour(0);
    public static final Colour WHITE = new Colour(0xffffff);

    /**
     * Plain undyed cloth, which stands for a colour that nobody has told yet. It is kept for that: nobody picks this
     * very shade by chance.
     */
    public static final Colour UNDYED = new Colour(0xe6dbc3);

    /**
     * One shade, in points of L*: ours. It is clearly seen (a CIEDE2000 above 5, docs/sources.md#just-noticed) and the
     * cloth stays the same cloth.
     */
    private static final double SHADE = 10;

    public Colour {
        if (rgb < 0 || rgb > 0xffffff) {
            throw new IllegalArgumentException("a colour has 24 bits: " + Integer.toHexString(rgb));
        }
    }

    /** The colour 0xRRGGBB; higher bits, where images keep their opacity, are dropped. */
    public static Colour of(int rgb) {
        return new Colour(rgb & 0xffffff);
    }

    /** The colour of three channels, each 0 to 255. */
    public static Colour of(int red, int green, int blue) {
        if (((red | green | blue) & ~0xff) != 0) {
            throw new IllegalArgumentException("a channel is 0 to 255: " + red + ", " + green + ", " + blue);
        }
        return new Colour(red << 16 | green << 8 | blue);
    }

    /**
     * Reads "#rrggbb", "#rgb" or a colour name of CSS, in upper or lower case, with or without blanks around it.
     *
     * @throws ColourException if the text is none of these
     * @see #named for the words people use for cloth
     */
    public static Colour parse(String text) {
        String word = text.strip().toLowerCase(Locale.ROOT);
        if (word.matches("#[0-9a-f]{6}")) {
            return of(Integer.parseInt(word.substring(1), 16));
        }
        if (word.matches("#[0-9a-f]{3}")) {
            int rgb = Integer.parseInt(word.substring(1), 16);
            return of((rgb >> 8) * 17, (rgb >> 4 & 15) * 17, (rgb & 15) * 17);
        }
        return CssNames.find(word).orElseThrow(() -> new ColourException(text.strip()));
    }

    /**
     * The colour that everyday words for cloth bring to mind, such as "sage green" or "old navy shirt".
     *
     * <p>Words that name no colour are passed over, so that a fabric's whole name may be handed in; empty if no word
     * names one. Several colours ("red and white gingham") give their mean, as seen from across the room. The words and
     * their colours are ours, after common use; where CSS means something else ("brown", "indigo"), cloth wins.
     */
    public static Optional<Colour> named(String words) {
        List<Colour> all = allNamed(words);
        Lab mean = Lab.BLACK;
        for (int i = 0; i < all.size(); i++) {
            mean = mean.mixed(all.get(i).lab(), 1.0 / (i + 1));
        }
        return all.isEmpty() ? Optional.empty() : Optional.of(all.size() == 1 ? all.get(0) : mean.toColour());
    }

    /** Every colour that everyday words for cloth name, each once and in their order: "green and brown linen" has two. */
    public static List<Colour> allNamed(String words) {
        return FabricWords.colours(words);
    }

    /** Whether this is a cloth's own colour, and not the {@link #UNDYED} that stands for one not known yet. */
    public boolean isKnown() {
        return !equals(UNDYED);
    }

    public int red() {
        return rgb >> 16;
    }

    public int green() {
        return rgb >> 8 & 0xff;
    }

    public int blue() {
        return rgb & 0xff;
    }

    /** "#rrggbb" in lower case. */
    public String hex() {
        return String.format(Locale.ROOT, "#%06x", rgb);
    }

    public Lab lab() {
        return Lab.of(this);
    }

    /** One shade darker, as in shadow: 10 points of L* down, or black where fewer are left. */
    public Colour darker() {
        return withLightness(Math.max(0, lab().lightness() - SHADE));
    }

    /** One shade lighter, as if paled by white: 10 points of L* up, or white where fewer are left. */
    public Colour lighter() {
        return withLightness(Math.min(100, lab().lightness() + SHADE));
    }

    /** This colour so many points of L* lighter, or darker where they are negative; at most white or black. */
    public Colour shaded(double points) {
        return points == 0 ? this : withLightness(Math.max(0, Math.min(100, lab().lightness() + points)));
    }

    /**
     * This colour at another L*, 0 to 100: dimmed towards black or mixed with white, in linear light.
     *
     * <p>Straight lines in linear light never leave what a screen can show, so nothing is clipped and L* is met to
     * within the rounding to 8 bits; straight lines in Lab would turn blue to purple on the way.
     */
    Colour withLightness(double lightness) {
        double now = Lab.luminance(lab().lightness());
        double then = Lab.luminance(lightness);
        if (then <= now) {
            return now == 0 ? this : Light.toColour(Light.of(this).times(then / now));
        }
        double share = (then - now) / (1 - now);
        return Light.toColour(Light.of(this).times(1 - share).plus(share));
    }

    /** The fell band's shade: one darker, or one lighter on cloth too dark for that to show (L* below 20). */
    public Colour shade() {
        return lab().lightness() < 2 * SHADE ? lighter() : darker();
    }

    /** Relative luminance, from 0 (black) to 1 (white). Source: docs/sources.md#contrast. */
    public double luminance() {
        var light = Light.of(this);
        return 0.2126 * light.x() + 0.7152 * light.y() + 0.0722 * light.z();
    }

    /**
     * Contrast ratio, from 1 to 21, the same both ways round; never round it before comparing. Source:
     * docs/sources.md#contrast.
     */
    public double contrastWith(Colour other) {
        double one = luminance() + 0.05;
        double two = other.luminance() + 0.05;
        return Math.max(one, two) / Math.min(one, two);
    }

    /**
     * Black or white, whichever reads better on this colour. The contrast is always at least 4.5 : 1
     * (docs/sources.md#contrast).
     *
     * <p>The contrasts of black and of white multiply to 21 on every colour, so the better one is never below √21 =
     * 4.58. Softer inks cannot promise that: black and white themselves have only 4.58 against 4.5 to spare, under 2 %.
     */
    public Colour inkOn() {
        return contrastWith(BLACK) >= contrastWith(WHITE) ? BLACK : WHITE;
    }
}
