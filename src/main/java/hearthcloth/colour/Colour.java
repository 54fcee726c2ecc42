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
}
