package hearthcloth.draw.cloth;

import hearthcloth.cloth.Showing;
import hearthcloth.cloth.face.Shown;
import hearthcloth.colour.Colour;
import hearthcloth.draw.fabric.FabricLook;
import hearthcloth.draw.picture.Affine;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Paragraph;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.draw.picture.Type;
import hearthcloth.geometry.Point;
import hearthcloth.stash.Fabric;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;

/** What the colours, hatches and dashes of a face mean. */
public final class Legend {

    private static final double SWATCH = 6;

    private final double cell;
    private final int columns;
    private final Voice voice;
    private final Type type = PrintSizes.SMALL;
    private final List<Entry> entries = new ArrayList<>();

    private record Entry(String words, Drawing drawing) {}

    @FunctionalInterface
    private interface Drawing {
        void into(Sketch sketch, Bounds swatch);
    }

    private Legend(double width, Voice voice) {
        this.columns = Math.max(1, (int) (width / 58));
        this.cell = width / columns;
        this.voice = voice;
    }

    static Picture of(Shown shown, Dyes dyes, double width, Voice voice) {
        Legend legend = new Legend(width, voice);
        dyes.fabrics().forEach(legend::fabric);
        Fabric sample = dyes.fabrics().get(0);
        if (shown.fields().stream().anyMatch(field -> field.patch().showing() == Showing.WRONG)) {
            legend.wrongSide(dyes, shown);
        }
        if (shown.fields().stream().anyMatch(Shown.Field::fell)) {
            legend.entries.add(new Entry(voice.printing().legendFell(), (sketch, at) -> {
                sketch.fill(at, sample.colour());
                sketch.fill(
                        new Bounds(at.x(), at.y(), SWATCH / 2.5, SWATCH),
                        sample.colour().shade());
                sketch.outline(at, Stroke.solid(0.25, Palette.INK));
            }));
        }
        legend.entries.add(new Entry(voice.printing().legendStitches(), (sketch, at) -> {
            sketch.fill(at, sample.colour());
            double y = at.middle().y();
            sketch.line(new Point(at.x(), y), new Point(at.right(), y), dyes.stitches());
            sketch.outline(at, Stroke.solid(0.25, Palette.INK));
        }));
        return legend.finished();
    }

    private void fabric(Fabric fabric) {
        entries.add(new Entry(words(fabric), (sketch, at) -> {
            // a swatch shows a repeat and a half, to no scale
            FabricLook look = FabricLook.of(fabric);
            double scale =
                    look.print().map(tile -> at.width() / tile.width() / 1.5).orElse(1.0);
            look.fill(sketch, at.outline(), Affine.scaled(scale, at.x(), at.y()), 0);
            sketch.outline(at, Stroke.solid(0.25, Palette.INK));
        }));
    }

    private String words(Fabric fabric) {
        return fabric.colour().isKnown() ? fabric.name() : voice.printing().legendUnknown(fabric.name());
    }

    public static void swatch(Sketch sketch, Bounds at, Colour colour) {
        sketch.fill(at, colour);
        sketch.outline(at, Stroke.solid(0.25, Palette.INK));
    }

    private void wrongSide(Dyes dyes, Shown shown) {
        Colour ground = shown.fields().stream()
                .filter(field -> field.patch().showing() == Showing.WRONG)
                .map(field -> dyes.colour(field.patch().fabric(), Showing.WRONG))
                .findFirst()
                .orElseThrow();
        entries.add(new Entry(voice.printing().legendWrong(), (sketch, at) -> {
            sketch.fill(at, ground);
            sketch.hatch(at, Dyes.HATCH, Dyes.hatch(ground));
            sketch.outline(at, Stroke.solid(0.25, Palette.INK));
        }));
    }

    private Picture finished() {
        TextColumn column = new TextColumn(cell * columns);
        for (int row = 0; row * columns < entries.size(); row++) {
            List<Entry> inRow = entries.subList(row * columns, Math.min(entries.size(), (row + 1) * columns));
            column.draw(SWATCH + 1.8, (sketch, y) -> {
                for (int i = 0; i < inRow.size(); i++) {
                    Bounds swatch = new Bounds(i * cell, y, SWATCH, SWATCH);
                    inRow.get(i).drawing().into(sketch, swatch);
                    String words = Paragraph.cut(inRow.get(i).words(), cell - SWATCH - 4, type);
                    Point at = new Point(swatch.right() + 2, swatch.middle().y() + Dimensions.halfCaps(type));
                    sketch.words(words, at, type);
                }
            });
        }
        return column.finished("Legend");
    }
}
