package hearthcloth.draw.picture;

/** In the page the tied gift is drawn by its facets; no picture there is made of dots. */
public final class PngWriter {

    private PngWriter() {}

    public static byte[] write(Dots dots) {
        throw new UnsupportedOperationException("a picture of the page is not made of " + dots.width() + " dots a row");
    }
}
