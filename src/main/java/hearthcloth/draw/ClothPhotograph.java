package hearthcloth.draw;

import hearthcloth.photo.image.ImageDecoder;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;

/**
 * Her photograph of a finished cloth, prepared to be kept: read from PNG or JPEG, turned upright, reduced, and drawn anew,
 * so that nothing else in the given file (places, times, the camera's name) is kept.
 */
public final class ClothPhotograph {

    /** The longer side of what is kept, in pixels: sharp on half of a tablet's screen of two dots to a pixel. */
    private static final int LONGER = 1280;

    /** The longer side among other photographs, in pixels. */
    private static final int SMALL = 480;

    private ClothPhotograph() {}

    /**
     * The photograph as a JPEG, upright, at most 1280 pixels long.
     *
     * @throws RefusedPictureException with a sentence for the maker, where it is no picture or too large
     */
    public static byte[] jpeg(byte[] file) {
        int turn = ImageDecoder.turn(file);
        return FabricPicture.jpeg(file, LONGER, read -> drawn(read, turn, LONGER));
    }

    /** A kept photograph once more, at most 480 pixels long. */
    public static byte[] small(byte[] kept) {
        return FabricPicture.jpeg(kept, SMALL, read -> drawn(read, 1, SMALL));
    }

    private static BufferedImage drawn(BufferedImage read, int turn, int longer) {
        double scale = Math.min(1, (double) longer / Math.max(read.getWidth(), read.getHeight()));
        int wide = Math.max(1, (int) Math.round(read.getWidth() * scale));
        int high = Math.max(1, (int) Math.round(read.getHeight() * scale));
        boolean isOnItsSide = turn >= 5;
        BufferedImage drawn =
                new BufferedImage(isOnItsSide ? high : wide, isOnItsSide ? wide : high, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = drawn.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, drawn.getWidth(), drawn.getHeight());
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        graphics.transform(upright(turn, wide, high));
        graphics.drawImage(read, 0, 0, wide, high, null);
        graphics.dispose();
        return drawn;
    }

    /** Where a point of the picture as it was written lies when it is upright, for each of the eight ways EXIF knows. */
    private static AffineTransform upright(int turn, int wide, int high) {
        return switch (turn) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, wide, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, wide, high);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, high);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, high, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, high, wide);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, wide);
            default -> new AffineTransform();
        };
    }
}
