package hearthcloth.draw;

import hearthcloth.colour.Colour;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.letters.Weight;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.PdfWriter;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.draw.picture.Type;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Ruler;
import hearthcloth.photo.plane.MeasuringSheet;
import hearthcloth.words.Language;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.speech.Voice;
import java.util.List;

/** The measuring sheet as it is printed: its dark rim, its marks, fields of white and grey, and the line to check. */
public final class MeasuringSheetPage {

    private static final Colour GREY = Colour.of(0x808080);

    /** The thickness of the line to check and of its end strokes, and the reach of those, in millimetres. */
    private static final double LINE_MM = 0.35;

    private static final double END_MM = 2.5;

    private static final double BODY_MM = 3.4;
    private static final Point WORDS = new Point(56, 97.5);

    private final PrintingWords words;

    private MeasuringSheetPage(PrintingWords words) {
        this.words = words;
    }

    /** The sheet as a PDF of one page, true to size. */
    public static byte[] pdf(Paper paper, Language language) {
        PrintingWords words = Voice.of(language, Ruler.MILLIMETRES).printing();
        return PdfWriter.write(
                words.measuringTitle(), language.tag(), List.of(new MeasuringSheetPage(words).of(paper)));
    }

    private Picture of(Paper paper) {
        Point corner = new Point(
                (paper.width() - MeasuringSheet.WIDTH_MM) / 2, (paper.height() - MeasuringSheet.HEIGHT_MM) / 2);
        Sketch sketch = new Sketch();
        rim(sketch);
        MeasuringSheet.marks().forEach(mark -> mark(sketch, mark));
        Point grey = MeasuringSheet.GREY.get(0);
        Point to = MeasuringSheet.GREY.get(1);
        sketch.fill(new Bounds(grey.x(), grey.y(), to.x() - grey.x(), to.y() - grey.y()), GREY);
        line(sketch);
        words(sketch);
        Picture block = sketch.finished(words.measuringTitle(), MeasuringSheet.WIDTH_MM, MeasuringSheet.HEIGHT_MM);
        return new Sketch().place(block, corner).finished(words.measuringTitle(), paper.width(), paper.height());
    }

    private static void rim(Sketch sketch) {
        double rim = MeasuringSheet.RIM_MM;
        double width = MeasuringSheet.WIDTH_MM;
        double height = MeasuringSheet.HEIGHT_MM;
        sketch.fill(new Bounds(0, 0, width, height), Colour.BLACK);
        sketch.fill(new Bounds(rim, rim, width - 2 * rim, height - 2 * rim), Colour.WHITE);
    }

    /** Runs of black cells of a row are drawn as one, so that no printer leaves a hair of white between them. */
    private static void mark(Sketch sketch, MeasuringSheet.Mark mark) {
        double cell = MeasuringSheet.MARK_MM / MeasuringSheet.CELLS;
        sketch.fill(
                new Bounds(mark.corner().x(), mark.corner().y(), MeasuringSheet.MARK_MM, MeasuringSheet.MARK_MM),
                Colour.BLACK);
        for (int row = 1; row < MeasuringSheet.CELLS - 1; row++) {
            for (int from = 1; from < MeasuringSheet.CELLS - 1; from++) {
                int to = from;
                while (!mark.isBlack(to, row)) {
                    to++;
                }
                if (to > from) {
                    sketch.fill(
                            new Bounds(
                                    mark.corner().x() + from * cell,
                                    mark.corner().y() + row * cell,
                                    (to - from) * cell,
                                    cell),
                            Colour.WHITE);
                    from = to;
                }
            }
        }
    }

    private static void line(Sketch sketch) {
        Point from = MeasuringSheet.LINE_FROM;
        Point to = from.plus(0, MeasuringSheet.LINE.in(hearthcloth.measure.Unit.MILLIMETRE));
        Stroke stroke = Stroke.solid(LINE_MM, Colour.BLACK);
        sketch.line(from, to, stroke);
        for (Point end : List.of(from, to)) {
            sketch.line(end.plus(-END_MM, 0), end.plus(END_MM, 0), stroke);
        }
    }

    private void words(Sketch sketch) {
        List<String> lines = List.of(words.measuringPrint(), words.measuringRuler(), words.measuringSay());
        sketch.words(words.measuringTitle(), WORDS, Type.of(BODY_MM * 1.4, Weight.SEMIBOLD, Colour.BLACK));
        for (int i = 0; i < lines.size(); i++) {
            sketch.words(
                    lines.get(i), WORDS.plus(0, 4.6 * (i + 1)), Type.of(BODY_MM * 0.85, Weight.REGULAR, Colour.BLACK));
        }
        sketch.words("20 cm", MeasuringSheet.LINE_FROM.plus(2, 124), Type.of(BODY_MM, Weight.REGULAR, Colour.BLACK));
        sketch.words(
                "7 7/8 in", MeasuringSheet.LINE_FROM.plus(2, 128.5), Type.of(BODY_MM, Weight.REGULAR, Colour.BLACK));
    }
}
