package hearthcloth.draw.guide;

import hearthcloth.draw.cloth.Legend;
import hearthcloth.draw.cloth.PatchName;
import hearthcloth.draw.cloth.PrintSizes;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Stroke;
import hearthcloth.draw.picture.TextColumn;
import hearthcloth.draw.picture.Type;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.stash.Fabric;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;

/** A slip for every bag, to cut out and put in: whose it is, how the cloth will look, and each piece that must be inside. */
public final class BagSlips {

    private static final double AIR = 5;
    private static final double PICTURE = 46;
    private static final double SWATCH = 4;

    private final Voice voice;
    private final Flow flow;

    public BagSlips(Voice voice, Flow flow) {
        this.voice = voice;
        this.flow = flow;
    }

    /** Adds the slips, in the order of the bags. */
    public void flow(List<Bag> bags) {
        flow.add(new TextColumn(flow.width())
                .words(voice.printing().bagSlips(), PrintSizes.HEADING)
                .words(voice.printing().bagHow(), PrintSizes.BODY)
                .gap(1)
                .finished(voice.printing().bagSlips()));
        bags.forEach(bag -> flow.gap(4).add(slip(bag)));
    }

    private Picture slip(Bag bag) {
        double left = flow.width() - 3 * AIR - PICTURE;
        Picture words = words(bag, left);
        Picture cloth = SmallCloth.of(bag.plan(), PICTURE);
        double height = Math.max(words.height(), cloth.height() + 4) + 2 * AIR;
        return new Sketch()
                .outline(new Bounds(0, 0, flow.width(), height), Stroke.stitches(0.3, Palette.SECOND_INK))
                .place(words, new Point(AIR, AIR))
                .place(cloth, new Point(flow.width() - AIR - cloth.width(), AIR + 2))
                .finished(bag.title(voice), flow.width(), height);
    }

    private Picture words(Bag bag, double width) {
        TextColumn column = new TextColumn(width);
        column.words(bag.number() + "  " + bag.name(), 0, PrintSizes.HEADING, 2);
        column.words(about(bag), PrintSizes.BODY);
        bag.notes().forEach(note -> column.words(note, PrintSizes.STRONG));
        column.gap(1.5);
        for (Fabric fabric : bag.plan().fabrics()) {
            fabric(column, bag, fabric);
        }
        return column.finished(bag.title(voice));
    }

    private String about(Bag bag) {
        String title = bag.plan().story().title().in(voice);
        String size = voice.write(bag.plan().cloth().finished(), Rounding.NEAREST);
        return bag.asked().isEmpty()
                ? voice.printing().bagAbout(size, title)
                : voice.printing().bagFor(bag.asked(), size, title);
    }

    private void fabric(TextColumn column, Bag bag, Fabric fabric) {
        List<String> pieces = new ArrayList<>();
        for (PieceCut cut : bag.plan().cuts()) {
            if (cut.piece().fabric().equals(fabric)) {
                pieces.add(piece(cut));
            }
        }
        Type type = PrintSizes.BODY;
        double in = SWATCH + 3;
        column.draw(
                0,
                (sketch, y) -> Legend.swatch(
                        sketch, new Bounds(0, y + (type.leading() - SWATCH) / 2, SWATCH, SWATCH), fabric.colour()));
        column.words(fabric.name() + ": " + String.join("; ", pieces), in, type, Integer.MAX_VALUE)
                .gap(0.8);
    }

    /** {@code piece 14, 6 × 12 in (1A, 2B)}. */
    private String piece(PieceCut cut) {
        List<String> patches = cut.tree().kept().stream()
                .map(kept -> PatchName.of(kept.patch(), voice))
                .toList();
        String size = voice.write(cut.piece().size(), Rounding.DOWN);
        return voice.printing().bagPiece(voice.commas(patches), cut.piece().id(), size);
    }
}
