package hearthcloth.draw.picture;

/** A picture as dots, some of which may let shine through. Immutable. */
public final class Dots {

    private final int width;
    private final int height;
    private final int[] argb;

    /** Dots row by row: how much covers, red, green and blue, of eight bits each. */
    public Dots(int width, int height, int[] argb) {
        if (argb.length != width * height) {
            throw new IllegalArgumentException(argb.length + " dots are not " + width + " × " + height);
        }
        this.width = width;
        this.height = height;
        this.argb = argb.clone();
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    /** How much covers, red, green and blue, of eight bits each. */
    public int argb(int x, int y) {
        return argb[y * width + x];
    }
}
