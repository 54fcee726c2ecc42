package hearthcloth.web.drawn;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.face.Shown;
import hearthcloth.cloth.making.Face;
import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.web.kit.Swatches;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * The front of a cloth to work on: every bar and the hearth is a link. The marks on it are a drawing of their own over
 * the cloth, as large on every screen as letters are.
 */
public final class BenchDrawing {

    /** Pixels that the cloth takes at least, on a telephone; marks that fit there fit everywhere. */
    private static final double SMALLEST = 280;

    /** Pixels that it takes on a tablet. */
    private static final double USUAL = 470;

    /** Height of a mark and width of one of its letters, in pixels. */
    private static final double MARK = 16;

    private static final double LETTER = 8;

    private final FaceDrawing drawing;
    private final String hearth;
    private final Map<String, Rect> places = new LinkedHashMap<>();

    /**
     * What a bar is called by those who cannot see it, and where pressing it leads.
     *
     * @param locked true where planning again leaves it as it is
     * @param width where it can be pulled
     */
    public record Target(String words, String href, boolean chosen, boolean locked, Optional<Pull> width) {}

    /** What the whole drawing is called by those who cannot see it, and what stands in the hearth. */
    public record Said(String drawing, String hearth) {}

    /** A cut width that can be pulled, in marks of her ruler of which {@code parts} make a unit. */
    public record Pull(Length cut, Length step, long parts) {}

    private BenchDrawing(Cloth cloth, Swatches swatches, String hearth) {
        this.hearth = hearth;
        this.drawing = new FaceDrawing(cloth, Face.FRONT, swatches);
        for (Shown.Field field : drawing.shown().fields()) {
            if (!field.fell()) {
                places.merge(ClothDrawing.name(field.patch().place()), field.at(), BenchDrawing::around);
            }
        }
    }

    /** {@code target} says what a patch of that place leads to. */
    public static String of(Cloth cloth, Swatches swatches, Said said, Function<String, Target> target) {
        BenchDrawing bench = new BenchDrawing(cloth, swatches, said.hearth);
        Map<String, Target> targets = new LinkedHashMap<>();
        bench.places.keySet().forEach(name -> targets.put(name, target.apply(name)));
        bench.drawing.open("cloth", "role=\"group\" aria-label=\"" + FaceDrawing.escaped(said.drawing) + "\"");
        bench.drawing.paint();
        bench.drawing.threads();
        bench.links(targets);
        return bench.drawing.close() + bench.marks(targets);
    }

    private static Rect around(Rect one, Rect other) {
        Length x = one.x().min(other.x());
        Length y = one.y().min(other.y());
        Length right = one.right().max(other.right());
        Length bottom = one.bottom().max(other.bottom());
        return Rect.at(x, y, new Size(right.minus(x), bottom.minus(y)));
    }

    private void links(Map<String, Target> targets) {
        StringBuilder svg = drawing.svg();
        targets.forEach((name, to) -> {
            Rect at = at(name);
            svg.append("<a class=\"tap\" id=\"tap-")
                    .append(FaceDrawing.escaped(name))
                    .append("\" href=\"")
                    .append(FaceDrawing.escaped(to.href()))
                    .append("\" hx-get=\"")
                    .append(FaceDrawing.escaped(to.href()))
                    .append("\" aria-label=\"")
                    .append(FaceDrawing.escaped(to.words()))
                    .append(to.chosen() ? "\" aria-current=\"true\">" : "\">");
            drawing.rect(at, "class=\"room\"");
            if (to.chosen()) {
                drawing.rect(at, "class=\"ring under\"");
                drawing.rect(at, "class=\"ring\"");
            }
            svg.append("</a>");
        });
        // Grips lie over all bars, so that a neighbour does not catch the finger.
        targets.forEach((name, to) -> to.width().ifPresent(pull -> handle(side(name), at(name), pull)));
    }

    private Rect at(String name) {
        return Objects.requireNonNull(places.get(name));
    }

    private Side side(String name) {
        return drawing.shown().fields().stream()
                .map(field -> field.patch().place())
                .filter(place -> ClothDrawing.name(place).equals(name) && place instanceof Place.Bar)
                .map(place -> ((Place.Bar) place).side())
                .findFirst()
                .orElse(Side.RIGHT);
    }

    /** A grip on the outer edge of a bar. For the eye and the finger alone: the field beside the picture does the same. */
    private void handle(Side side, Rect at, Pull pull) {
        boolean forth = side == Side.RIGHT || side == Side.BOTTOM;
        double x = side.isUpright() ? mm(forth ? at.right() : at.x()) : (mm(at.x()) + mm(at.right())) / 2;
        double y = side.isUpright() ? (mm(at.y()) + mm(at.bottom())) / 2 : mm(forth ? at.bottom() : at.y());
        double grip = Math.max(drawing.width(), drawing.height()) / 60;
        drawing.svg()
                .append(String.format(
                        Locale.ROOT,
                        "<g class=\"handle\" aria-hidden=\"true\" data-upright=\"%s\" data-out=\"%d\" data-cut=\"%.4f\""
                                + " data-step=\"%.4f\" data-parts=\"%d\"><circle cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\"/>"
                                + "<circle class=\"room\" cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\"/></g>",
                        side.isUpright(),
                        forth ? 1 : -1,
                        mm(pull.cut()),
                        mm(pull.step()),
                        pull.parts(),
                        x,
                        y,
                        grip,
                        x,
                        y,
                        grip * 2));
    }

    /** The names of the bars and the padlocks, at places in per cent of the cloth, each on a rim of its fabric's colour. */
    private String marks(Map<String, Target> targets) {
        StringBuilder marks = new StringBuilder("<svg class=\"marks\" aria-hidden=\"true\">");
        for (Shown.Field field : drawing.shown().fields()) {
            if (!field.fell()) {
                label(marks, field);
            }
        }
        targets.forEach((name, to) -> {
            Rect at = at(name);
            if (to.locked()) {
                marks.append(String.format(
                        Locale.ROOT,
                        "<svg x=\"%.2f%%\" y=\"%.2f%%\" class=\"lock\"><circle r=\"11\"/><rect x=\"-5.5\" y=\"-1\" width=\"11\""
                                + " height=\"7.5\" rx=\"1.5\"/><path d=\"M-3.4-1v-2.6a3.4 3.4 0 0 1 6.8 0V-1\"/></svg>",
                        per(mm(at.x()) + mm(at.width()) / 2, drawing.width()),
                        per(mm(at.y()) + mm(at.height()) / 2, drawing.height())));
            }
        });
        return marks.append("<text class=\"pulled\" x=\"50%\" y=\"50%\"></text></svg>")
                .toString();
    }

    private void label(StringBuilder marks, Shown.Field field) {
        String words = field.patch().place() instanceof Place.Hearth
                ? hearth
                : field.patch().place().label();
        double longest = Math.max(drawing.width(), drawing.height());
        Optional<Boolean> small = along(words, field.at(), SMALLEST / longest);
        Optional<Boolean> along = small.or(() -> along(words, field.at(), USUAL / longest));
        if (along.isEmpty()) {
            return;
        }
        Colour ground = drawing.ground(field);
        marks.append(String.format(
                Locale.ROOT,
                "<svg x=\"%.2f%%\" y=\"%.2f%%\"%s><text%s fill=\"%s\" stroke=\"%s\">%s</text></svg>",
                per(mm(field.at().x()) + mm(field.at().width()) / 2, drawing.width()),
                per(mm(field.at().y()) + mm(field.at().height()) / 2, drawing.height()),
                small.isPresent() ? "" : " class=\"roomy\"",
                along.get() ? "" : " transform=\"rotate(-90)\"",
                ground.inkOn().hex(),
                ground.hex(),
                FaceDrawing.escaped(words)));
    }

    /** Whether a mark stands along a bar, or up it; empty where it has no room at so many pixels to a millimetre. */
    private static Optional<Boolean> along(String words, Rect at, double pixels) {
        double wide = mm(at.width()) * pixels;
        double high = mm(at.height()) * pixels;
        double length = words.length() * LETTER + 4;
        if (length <= wide && MARK <= high) {
            return Optional.of(true);
        }
        return length <= high && MARK <= wide ? Optional.of(false) : Optional.empty();
    }

    private static double per(double part, double whole) {
        return 100 * part / whole;
    }

    private static double mm(Length length) {
        return FaceDrawing.mm(length);
    }
}
