package hearthcloth.cutstock.piecing;

/** A finished cloth's width and height. */
public record Size(long width, long height) {

    public Size {
        if (width < 1 || height < 1) {
            throw new IllegalArgumentException("cloth of " + width + " x " + height);
        }
    }

    long area() {
        return width * height;
    }
}
