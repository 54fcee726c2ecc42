package hearthcloth.colour;

/** An sRGB colour, 8 bits a channel. */
public record Colour(int rgb) {

    public static Colour of(int rgb) {
        return new Colour(rgb & 0xffffff);
    }

    public static Colour parse(String text) {
        return of(Integer.parseInt(text.substring(1), 16));
    }

    public String hex() {
        return String.format(java.util.Locale.ROOT, "#%06x", rgb);
    }

    /** Relative luminance after WCAG 2.2, 0 (black) to 1 (white). */
    public double luminance() {
        return 0.2126 * linear(rgb >> 16 & 255) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
