package hearthcloth.cutstock.piecing;

/** A finished cloth's width and height. */
public record WishedCloth(long width, long height) {

    public WishedCloth {
        if (width < 1 || height < 1) {
            throw new IllegalArgumentException("cloth of " + width + " x " + height);
        }
    }
}
