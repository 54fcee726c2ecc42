package hearthcloth.draw.picture;

import hearthcloth.colour.Colour;
import hearthcloth.draw.letters.FontFile;
import hearthcloth.draw.letters.Run;
import hearthcloth.draw.letters.SafeText;
import hearthcloth.draw.letters.Script;
import hearthcloth.draw.letters.Weight;
import hearthcloth.geometry.Point;
import java.awt.geom.AffineTransform;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDPattern;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.pattern.PDTilingPattern;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.util.Matrix;

/**
 * Writes pictures as the pages of a PDF, true to scale, with the letters they use embedded as text that can be searched.
 * The same pictures always give the same bytes.
 */
public final class PdfWriter {

    private static final float POINTS = (float) (72 / 25.4);

    /** The distance of the control points of a quarter circle along its tangents, as a share of the radius. */
    private static final double ARC = 4.0 / 3 * (Math.sqrt(2) - 1);

    private final PDDocument document;
    private final Map<String, PDFont> fonts = new HashMap<>();

    private final Map<Mark.Figured, PDTilingPattern> repeats = new HashMap<>();

    private final Map<Picture, PDFormXObject> tiles = new HashMap<>();

    private final PdfDots dots;

    private PdfWriter(PDDocument document) {
        this.document = document;
        this.dots = new PdfDots(document);
    }

    /**
     * The bytes of a PDF file.
     *
     * @param title shown by readers
     * @param language of the words, such as {@code en}
     */
    public static byte[] write(String title, String language, List<Picture> pages) {
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(1L);
            document.getDocumentInformation().setTitle(SafeText.clean(title));
            document.getDocumentCatalog().setLanguage(language);
            PdfWriter writer = new PdfWriter(document);
            for (Picture page : pages) {
                writer.repeats.clear();
                writer.page(page);
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void page(Picture picture) throws IOException {
        PDPage page = new PDPage(new PDRectangle((float) picture.width() * POINTS, (float) picture.height() * POINTS));
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            content.transform(new Matrix(POINTS, 0, 0, -POINTS, 0, (float) picture.height() * POINTS));
            for (Mark mark : picture.marks()) {
                if (mark instanceof Mark.Figured figured) {
                    figured(figured, page, content);
                } else {
                    draw(mark, content);
                }
            }
        }
    }

    /** What lets shine through, by how much of it covers. */
    private final Map<Double, PDExtendedGraphicsState> veils = new HashMap<>();

    private void tint(Mark.Tint tint, PDPageContentStream content) throws IOException {
        content.saveGraphicsState();
        content.setGraphicsStateParameters(veils.computeIfAbsent(tint.share(), share -> {
            PDExtendedGraphicsState veil = new PDExtendedGraphicsState();
            veil.setNonStrokingAlphaConstant(share.floatValue());
            return veil;
        }));
        content.setNonStrokingColor(awt(tint.colour()));
        path(tint.outline(), content);
        content.fill();
        content.restoreGraphicsState();
    }

    private void draw(Mark mark, PDPageContentStream content) throws IOException {
        if (mark instanceof Mark.Area area) {
            content.setNonStrokingColor(awt(area.colour()));
            path(area.outline(), content);
            content.fill();
        } else if (mark instanceof Mark.Bare bare) {
            content.setNonStrokingColor(awt(Palette.SHEET));
            path(bare.outline(), content);
            content.fill();
        } else if (mark instanceof Mark.Tint tint) {
            tint(tint, content);
        } else if (mark instanceof Mark.Line line) {
            stroke(line, content);
        } else if (mark instanceof Mark.Disc disc) {
            content.setNonStrokingColor(awt(disc.colour()));
            circle(disc, content);
            content.fill();
        } else if (mark instanceof Mark.Words words) {
            words(words, content);
        } else if (mark instanceof Mark.Dotted dotted) {
            dotted(dotted, content);
        }
    }

    private void dotted(Mark.Dotted dotted, PDPageContentStream content) throws IOException {
        Bounds at = dotted.at();
        // the page goes down, a picture up
        content.drawImage(
                dots.of(dotted.png()),
                new Matrix((float) at.width(), 0, 0, -(float) at.height(), (float) at.x(), (float) at.bottom()));
    }

    /** A tiling pattern, kept once a page for all areas that are filled with the same repeat. */
    private void figured(Mark.Figured figured, PDPage page, PDPageContentStream content) throws IOException {
        Mark.Figured repeat = new Mark.Figured(List.of(), figured.tile(), figured.laid());
        PDTilingPattern pattern = repeats.get(repeat);
        if (pattern == null) {
            pattern = pattern(figured, page.getMediaBox().getHeight());
            repeats.put(repeat, pattern);
        }
        COSName name = page.getResources().add(pattern);
        content.setNonStrokingColor(new PDColor(name, new PDPattern(page.getResources())));
        path(figured.outline(), content);
        content.fill();
    }

    private PDTilingPattern pattern(Mark.Figured figured, float pageHeight) throws IOException {
        Picture tile = figured.tile();
        PDTilingPattern pattern = new PDTilingPattern();
        pattern.setResources(new PDResources());
        pattern.setPaintType(PDTilingPattern.PAINT_COLORED);
        pattern.setTilingType(PDTilingPattern.TILING_CONSTANT_SPACING);
        pattern.setBBox(new PDRectangle((float) tile.width(), (float) tile.height()));
        pattern.setXStep((float) tile.width());
        pattern.setYStep((float) tile.height());
        Affine laid = figured.laid();
        pattern.setMatrix(new AffineTransform(
                POINTS * laid.a(),
                -POINTS * laid.b(),
                POINTS * laid.c(),
                -POINTS * laid.d(),
                POINTS * laid.e(),
                pageHeight - POINTS * laid.f()));
        // the writer of contents knows pages and appearances; a pattern's stream is written like the latter
        PDAppearanceStream form = new PDAppearanceStream((COSStream) pattern.getCOSObject());
        try (PDPageContentStream content = new PDPageContentStream(
                document, form, pattern.getContentStream().createOutputStream(COSName.FLATE_DECODE))) {
            content.drawForm(once(tile));
        }
        pattern.getCOSObject().removeItem(COSName.SUBTYPE);
        pattern.getCOSObject().setItem(COSName.TYPE, COSName.PATTERN);
        return pattern;
    }

    /** What a tile shows, kept once a file however many pages and turns it is laid in. */
    private PDFormXObject once(Picture tile) throws IOException {
        PDFormXObject known = tiles.get(tile);
        if (known != null) {
            return known;
        }
        PDAppearanceStream form = new PDAppearanceStream(document);
        form.setResources(new PDResources());
        form.setBBox(new PDRectangle((float) tile.width(), (float) tile.height()));
        try (PDPageContentStream content = new PDPageContentStream(
                document, form, form.getContentStream().createOutputStream(COSName.FLATE_DECODE))) {
            for (Mark mark : tile.marks()) {
                draw(mark, content);
            }
        }
        tiles.put(tile, form);
        return form;
    }

    private static void path(List<Point> points, PDPageContentStream content) throws IOException {
        content.moveTo((float) points.get(0).x(), (float) points.get(0).y());
        for (Point point : points.subList(1, points.size())) {
            content.lineTo((float) point.x(), (float) point.y());
        }
    }

    private static void stroke(Mark.Line line, PDPageContentStream content) throws IOException {
        Stroke stroke = line.stroke();
        content.setStrokingColor(awt(stroke.colour()));
        content.setLineWidth((float) stroke.width());
        float[] dashes = new float[stroke.dashes().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = stroke.dashes().get(i).floatValue();
        }
        content.setLineDashPattern(dashes, 0);
        path(line.points(), content);
        if (line.points().get(0).equals(line.points().get(line.points().size() - 1))) {
            content.closePath();
        }
        content.stroke();
    }

    private static void circle(Mark.Disc disc, PDPageContentStream content) throws IOException {
        float x = (float) disc.middle().x();
        float y = (float) disc.middle().y();
        float r = (float) disc.radius();
        float c = (float) (disc.radius() * ARC);
        content.moveTo(x + r, y);
        content.curveTo(x + r, y + c, x + c, y + r, x, y + r);
        content.curveTo(x - c, y + r, x - r, y + c, x - r, y);
        content.curveTo(x - r, y - c, x - c, y - r, x, y - r);
        content.curveTo(x + c, y - r, x + r, y - c, x + r, y);
        content.closePath();
    }

    private void words(Mark.Words words, PDPageContentStream content) throws IOException {
        Type type = words.type();
        List<Run> runs = Run.of(FontFile.printable(words.text()));
        double before = type.anchor().share() * type.size() * width(runs, type.weight());
        content.beginText();
        content.setNonStrokingColor(awt(type.colour()));
        float x = (float) words.at().x();
        float y = (float) words.at().y();
        content.setTextMatrix(
                type.way() == Type.Way.ALONG
                        ? new Matrix(1, 0, 0, -1, (float) (x - before), y)
                        : new Matrix(0, -1, -1, 0, x, (float) (y + before)));
        for (Run run : runs) {
            content.setFont(font(run.script(), type.weight()), (float) type.size());
            content.showText(run.text());
        }
        content.endText();
    }

    /** The width as a share of the em. */
    private double width(List<Run> runs, Weight weight) throws IOException {
        double width = 0;
        for (Run run : runs) {
            width += font(run.script(), weight).getStringWidth(run.text()) / 1000;
        }
        return width;
    }

    /** Each font is embedded once a file, when its first letters are written. */
    private PDFont font(Script script, Weight weight) throws IOException {
        String name = script.resource(weight);
        PDFont known = fonts.get(name);
        if (known == null) {
            known = PDType0Font.load(document, FontFile.open(script, weight), true);
            fonts.put(name, known);
        }
        return known;
    }

    private static java.awt.Color awt(Colour colour) {
        return new java.awt.Color(colour.rgb());
    }
}
