package hearthcloth.draw.picture;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.DocumentLimits;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import hearthcloth.draw.letters.FontFile;
import hearthcloth.draw.letters.Script;
import hearthcloth.draw.letters.Weight;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.imageio.ImageIO;

/** Writes a picture as PNG by drawing its SVG, so that both look alike. */
public final class PngWriter {

    private PngWriter() {}

    /**
     * The bytes of a PNG file.
     *
     * @param dotsPerInch 96 for a screen, 300 for print
     */
    public static byte[] write(Picture picture, double dotsPerInch) {
        double scale = dotsPerInch / 25.4;
        int width = (int) Math.ceil(picture.width() * scale);
        int height = (int) Math.ceil(picture.height() * scale);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        graphics.setColor(java.awt.Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        Letters.ready();
        read(picture).render(null, graphics, new ViewBox(0, 0, width, height));
        graphics.dispose();
        return bytes(image);
    }

    /** The bytes of a PNG file of a picture that is dots already. */
    public static byte[] write(Dots dots) {
        return bytes(image(dots));
    }

    private static BufferedImage image(Dots dots) {
        BufferedImage image = new BufferedImage(dots.width(), dots.height(), BufferedImage.TYPE_INT_ARGB);
        for (int y = 0; y < dots.height(); y++) {
            for (int x = 0; x < dots.width(); x++) {
                image.setRGB(x, y, dots.argb(x, y));
            }
        }
        return image;
    }

    /**
     * Limits for our own pictures, which may hold many lines: a large stash has as many hatched offcuts as it has
     * pieces.
     */
    private static final LoaderContext OUR_OWN = LoaderContext.builder()
            .documentLimits(new DocumentLimits(
                    DocumentLimits.DEFAULT_MAX_NESTING_DEPTH,
                    DocumentLimits.DEFAULT_MAX_USE_NESTING_DEPTH,
                    Integer.MAX_VALUE))
            .build();

    private static SVGDocument read(Picture picture) {
        byte[] svg = SvgWriter.writeBare(printable(picture)).getBytes(StandardCharsets.UTF_8);
        SVGDocument document = new SVGLoader().load(new ByteArrayInputStream(svg), null, OUR_OWN);
        if (document == null) {
            throw new IllegalStateException("the SVG of \"" + picture.title() + "\" cannot be read back");
        }
        return document;
    }

    /** The same with a box for each letter that no font has, which would be drawn as nothing. */
    private static Picture printable(Picture picture) {
        List<Mark> marks = picture.marks().stream()
                .map(mark -> mark instanceof Mark.Words words
                        ? new Mark.Words(FontFile.printable(words.text()), words.at(), words.type())
                        : mark)
                .toList();
        return new Picture(picture.title(), picture.width(), picture.height(), marks);
    }

    private static byte[] bytes(BufferedImage image) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.setUseCache(false);
            ImageIO.write(image, "png", out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Registers the typeface with Java's drawing, once. */
    private static final class Letters {
        static {
            for (Script script : Script.values()) {
                for (Weight weight : Weight.values()) {
                    register(script, weight);
                }
            }
        }

        private static void register(Script script, Weight weight) {
            if (script.cut(weight) != weight) {
                return;
            }
            try (InputStream in = FontFile.file(script, weight)) {
                GraphicsEnvironment.getLocalGraphicsEnvironment().registerFont(Font.createFont(Font.TRUETYPE_FONT, in));
            } catch (IOException | FontFormatException e) {
                throw new IllegalStateException("the font " + script.resource(weight) + " cannot be read", e);
            }
        }

        static void ready() {}
    }
}
