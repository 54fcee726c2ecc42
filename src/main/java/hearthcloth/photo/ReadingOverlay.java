package hearthcloth.photo;

import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.photo.image.ImageDecoder;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.plane.LargestRectangle;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.GlyphVector;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/**
 * Draws what was read onto the photograph: outlines, the usable rectangle dashed, number and size on each piece, and a
 * question mark with a dotted outline where there is doubt. Colour alone never carries a meaning.
 */
public final class ReadingOverlay {

    /** The most pixels of the drawn picture's longer side. */
    private static final int LONG_SIDE = 1600;
    /** The height of a line of words, in pixels. */
    private static final int LINE = 24;

    private static final Color SURE = new Color(0x0b6e4f);
    private static final Color DOUBTFUL = new Color(0xb3261e);
    private static final Color SHEET = new Color(0x1f4e9c);

    private final Reading.Read read;
    private final Ruler ruler;
    private final BufferedImage image;
    private final Graphics2D pen;
    private final double scale;

    private ReadingOverlay(BufferedImage image, Reading.Read read, Ruler ruler) {
        this.image = image;
        this.read = read;
        this.ruler = ruler;
        this.scale = image.getWidth() / (double) read.scale().pictureWidth();
        this.pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    /**
     * The picture, at most 1600 pixels long, with the reading drawn on it.
     *
     * @param photograph the same bytes that were read
     */
    public static BufferedImage drawn(byte[] photograph, Reading.Read read, Ruler ruler) {
        int lines = doubts(read).size();
        BufferedImage image =
                small(ImageDecoder.decode(photograph).picture(), lines == 0 ? 0 : lines * LINE + LINE / 2);
        ReadingOverlay overlay = new ReadingOverlay(image, read, ruler);
        overlay.draw();
        overlay.pen.dispose();
        return overlay.image;
    }

    /** The same as the bytes of a PNG. */
    public static byte[] png(byte[] photograph, Reading.Read read, Ruler ruler) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(drawn(photograph, read, ruler), "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** The picture reduced, with room for words below it. */
    private static BufferedImage small(PixelImage picture, int below) {
        int step = Math.max(1, (int) Math.ceil(Math.max(picture.width, picture.height) / (double) LONG_SIDE));
        BufferedImage image =
                new BufferedImage(picture.width / step, picture.height / step + below, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < image.getHeight() - below; y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                image.setRGB(x, y, average(picture, x * step, y * step, step));
            }
        }
        return image;
    }

    private static int average(PixelImage picture, int x, int y, int step) {
        int r = 0;
        int g = 0;
        int b = 0;
        for (int i = 0; i < step * step; i++) {
            int rgb = picture.rgb(x + i % step, y + i / step);
            r += rgb >> 16 & 255;
            g += rgb >> 8 & 255;
            b += rgb & 255;
        }
        int n = step * step;
        return ((r / n) << 16) | ((g / n) << 8) | (b / n);
    }

    private void draw() {
        read.scale().sheetsInPicture().forEach(sheet -> outlined(sheet, SHEET, new float[] {}));
        for (ReadPiece piece : read.pieces()) {
            boolean sure = !piece.isDoubted();
            outlined(piece.outline().picture(), sure ? SURE : DOUBTFUL, sure ? new float[] {} : new float[] {3, 5});
            outlined(
                    piece.usable().corners().stream()
                            .map(read.scale()::inPicture)
                            .toList(),
                    sure ? SURE : DOUBTFUL,
                    new float[] {9, 5});
        }
        for (ReadPiece piece : read.pieces()) {
            label(piece);
        }
        explain();
    }

    /** Writes every doubt in words below the picture. */
    private void explain() {
        int top = (int) Math.round(read.scale().pictureHeight() * scale);
        pen.setColor(Color.WHITE);
        pen.fillRect(0, top, image.getWidth(), image.getHeight() - top);
        pen.setColor(Color.BLACK);
        int line = top;
        for (String words : doubts(read)) {
            line += LINE;
            int size = 16;
            pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, size));
            while (size > 9 && pen.getFontMetrics().stringWidth(words) > image.getWidth() - 20) {
                size--;
                pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, size));
            }
            pen.drawString(words, 10, line);
        }
    }

    /** A line for each doubt that all pieces share, and for each of a piece's own. */
    private static List<String> doubts(Reading.Read read) {
        Stream<String> shared = read.sharedDoubts().stream().map(d -> "All ?  " + d.sentence());
        Stream<String> own = read.pieces().stream()
                .flatMap(piece -> piece.ownDoubts().stream().map(d -> piece.number() + " ?  " + d.sentence()));
        return Stream.concat(shared, own).toList();
    }

    private void outlined(List<Point> corners, Color colour, float[] dash) {
        Path2D path = new Path2D.Double();
        for (Point spot : corners) {
            if (path.getCurrentPoint() == null) {
                path.moveTo(spot.x() * scale, spot.y() * scale);
            } else {
                path.lineTo(spot.x() * scale, spot.y() * scale);
            }
        }
        path.closePath();
        pen.setColor(new Color(255, 255, 255, dash.length == 0 ? 255 : 140));
        pen.setStroke(new BasicStroke(4, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        pen.draw(path);
        pen.setColor(colour);
        pen.setStroke(
                dash.length == 0
                        ? new BasicStroke(2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
                        : new BasicStroke(2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0));
        pen.draw(path);
    }

    private void label(ReadPiece piece) {
        Point middle = read.scale().inPicture(piece.usable().middle());
        LargestRectangle.Box box = piece.usable();
        String size = ruler.number(length(Math.max(box.width(), box.height())), Rounding.DOWN) + " × "
                + ruler.write(length(Math.min(box.width(), box.height())), Rounding.DOWN);
        String head = piece.number() + (piece.isDoubted() ? " ?" : "");
        written(head, middle.x() * scale, middle.y() * scale - 3, 20, piece.isDoubted() ? DOUBTFUL : SURE);
        written(size, middle.x() * scale, middle.y() * scale + 15, 15, Color.BLACK);
    }

    private static Length length(double millimetres) {
        return new Length(Rounding.DOWN.whole(millimetres * 1e6));
    }

    private void written(String text, double x, double y, int size, Color colour) {
        Font font = new Font(Font.SANS_SERIF, Font.BOLD, size);
        GlyphVector glyphs = font.createGlyphVector(pen.getFontRenderContext(), text);
        double width = glyphs.getVisualBounds().getWidth();
        double left = Math.max(3, Math.min(image.getWidth() - width - 3, x - width / 2));
        Shape shape = glyphs.getOutline((float) left, (float) y);
        pen.setColor(Color.WHITE);
        pen.setStroke(new BasicStroke(5, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        pen.draw(shape);
        pen.setColor(colour);
        pen.fill(shape);
    }
}
