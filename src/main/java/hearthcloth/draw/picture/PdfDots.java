package hearthcloth.draw.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.HashMap;
import java.util.Map;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/**
 * Pictures of dots in a PDF, each once a file. They lie on white paper and are kept as photographs are, since without loss
 * they would be several times as large.
 */
final class PdfDots {

    /** From 0 to 1; threads of cloth still look like threads (ours). */
    private static final float QUALITY = 0.8f;

    private final PDDocument document;
    private final Map<String, PDImageXObject> known = new HashMap<>();

    PdfDots(PDDocument document) {
        this.document = document;
    }

    /** @param png the bytes of a PNG file in base 64 */
    PDImageXObject of(String png) throws IOException {
        PDImageXObject found = known.get(png);
        if (found == null) {
            found = JPEGFactory.createFromImage(document, onPaper(png), QUALITY);
            known.put(png, found);
        }
        return found;
    }

    private static BufferedImage onPaper(String png) throws IOException {
        BufferedImage given =
                ImageIO.read(new ByteArrayInputStream(Base64.getDecoder().decode(png)));
        BufferedImage flat = new BufferedImage(given.getWidth(), given.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = flat.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, flat.getWidth(), flat.getHeight());
        graphics.drawImage(given, 0, 0, null);
        graphics.dispose();
        return flat;
    }
}
