package hearthcloth.draw.tied;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.making.Face;
import hearthcloth.draw.soft.Cords;
import hearthcloth.draw.soft.Shape;
import hearthcloth.draw.soft.Skin;
import hearthcloth.draw.soft.SoftCloth;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.json.JsonValue;
import hearthcloth.json.JsonWriter;
import hearthcloth.measure.Unit;
import hearthcloth.wrap.drape.Drape;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.Laying;
import hearthcloth.wrap.fold.ReefKnot;
import hearthcloth.wrap.fold.Visible;
import hearthcloth.wrap.pleat.ReefStrands;
import hearthcloth.wrap.settle.Settled;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A tied cloth as a page can turn it: its surface as a mesh, the pictures of both faces to lay on it, and the strands of
 * the knots. With its folds eased and as cloth brought to rest it is the same to a page, so one takes the other's place
 * with the same fabrics, light and shade.
 */
public record TiedModel(Surface surface, Faces faces, List<Strand> strands) {

    /**
     * Both faces as SVG, seen as on the front.
     *
     * @param outer the face that shows
     */
    record Faces(String outer, String inner) {

        static Faces of(Cloth cloth, Fold fold, TiedLook look) {
            ClothFaces faces = new ClothFaces(cloth, look);
            return new Faces(
                    faces.svg(fold.fit().placing().out()),
                    faces.svg(fold.fit().placing().out().other()));
        }
    }

    /**
     * An end of cloth in a knot.
     *
     * @param line its middle line, in millimetres
     * @param half half its width, in millimetres
     * @param middles where each place of its middle line lies on the plan
     * @param left what one millimetre to the left of that line adds
     */
    record Strand(List<Vector> line, double half, List<Share> middles, Share left) {

        public Strand {
            line = List.copyOf(line);
            middles = List.copyOf(middles);
        }

        Cords.Cord cord() {
            return new Cords.Cord(line, middles.stream().map(Share::point).toList(), half, left.point());
        }
    }

    /** A place or a way on the plan's front, as shares of its width and height. */
    record Share(double x, double y) {
        Point point() {
            return new Point(x, y);
        }
    }

    public TiedModel {
        strands = List.copyOf(strands);
    }

    /** What shows of a fold, eased as its fabrics bend. */
    static TiedModel of(Cloth cloth, Visible visible, TiedLook look) {
        Fold fold = visible.fold();
        Plan plan = new Plan(fold.laying());
        Settled settled = Settled.of(visible, ClothStiffness.of(cloth, fold.laying()));
        List<Strand> strands = strands(fold, plan, lead -> Optional.of(settled.place(lead.from())));
        return new TiedModel(Surface.of(settled, plan), Faces.of(cloth, fold, look), strands);
    }

    /**
     * The same to be drawn dot by dot; empty where cloth so eased would not be cloth any more, and is shown as folded.
     *
     * @param side of the faces' pictures, in dots
     */
    static Optional<SoftCloth> soft(Cloth cloth, Visible visible, TiedLook look, int side) {
        Fold fold = visible.fold();
        Plan plan = new Plan(fold.laying());
        Settled settled = Settled.of(visible, ClothStiffness.of(cloth, fold.laying()));
        if (!settled.isSoft()) {
            return Optional.empty();
        }
        List<Point> shares =
                settled.cloth().stream().map(plan::share).map(Share::point).toList();
        List<Cords.Cord> cords = strands(fold, plan, lead -> Optional.of(settled.place(lead.from()))).stream()
                .map(Strand::cord)
                .toList();
        Face out = fold.fit().placing().out();
        ClothFaces faces = new ClothFaces(cloth, look);
        return Optional.of(new SoftCloth(
                Shape.of(settled.places(), shares, settled.triangles()),
                Cords.of(cords),
                Skin.of(faces.picture(out), side),
                Skin.of(faces.picture(out.other()), side)));
    }

    /** The cloth brought to rest. */
    static TiedModel of(Cloth cloth, Drape drape, TiedLook look) {
        Fold fold = drape.fold();
        Plan plan = new Plan(fold.laying());
        return new TiedModel(
                Surface.of(drape.mesh(), plan),
                Faces.of(cloth, fold, look),
                strands(fold, plan, lead -> Optional.empty()));
    }

    /** From the table to shares of the plan. */
    record Plan(Laying laying) {

        Share share(Point onTable) {
            Point at = laying.plan(onTable);
            return new Share(
                    at.x() / laying.cloth().width().in(Unit.MILLIMETRE),
                    at.y() / laying.cloth().height().in(Unit.MILLIMETRE));
        }
    }

    private static List<Strand> strands(Fold fold, Plan plan, Function<ReefKnot.Lead, Optional<Vector>> arrived) {
        List<Strand> strands = new ArrayList<>();
        for (ReefKnot knot : fold.knots()) {
            ReefStrands reef = ReefStrands.of(knot);
            strands.add(strand(knot, knot.leads().get(0), led(knot, 0, reef.first(), arrived), plan));
            strands.add(strand(knot, knot.leads().get(1), led(knot, 1, reef.second(), arrived), plan));
        }
        return strands;
    }

    /** A strand from where its cloth arrives, where that is near. */
    private static List<Vector> led(
            ReefKnot knot, int which, List<Vector> line, Function<ReefKnot.Lead, Optional<Vector>> arrived) {
        List<Vector> whole = new ArrayList<>(line);
        arrived.apply(knot.leads().get(which))
                .filter(place -> place.minus(line.get(0)).length() < NEAR * knot.bunch())
                .ifPresent(place -> whole.add(0, place));
        return whole;
    }

    /** Cloth arrives at its knot where it is nearer than so many of its gathered ends are thick. */
    private static final double NEAR = 3;

    private static Strand strand(ReefKnot knot, ReefKnot.Lead lead, List<Vector> line, Plan plan) {
        double whole = 0;
        for (int i = 1; i < line.size(); i++) {
            whole += line.get(i).minus(line.get(i - 1)).length();
        }
        List<Share> middles = new ArrayList<>();
        double gone = 0;
        for (int i = 0; i < line.size(); i++) {
            gone += i == 0 ? 0 : line.get(i).minus(line.get(i - 1)).length();
            middles.add(plan.share(lead.after(knot.taken() * gone / whole)));
        }
        Share here = plan.share(lead.from());
        Share aside = plan.share(lead.from().plus(lead.axis().left()));
        return new Strand(
                line,
                Strands.TIGHT * knot.taken() / ReefStrands.UNITS,
                middles,
                new Share(aside.x() - here.x(), aside.y() - here.y()));
    }

    /** As JSON, on one line. */
    public String text() {
        return JsonWriter.tight(JsonValue.object()
                .with("step", number(surface.step()))
                .with("places", surface.places())
                .with("cloth", surface.cloth())
                .with("triangles", surface.triangles())
                .with("outer", faces.outer())
                .with("inner", faces.inner())
                .with(
                        "strands",
                        JsonValue.of(strands.stream().map(TiedModel::json).toList()))
                .done());
    }

    private static JsonValue json(Strand strand) {
        return JsonValue.object()
                .with(
                        "line",
                        JsonValue.of(strand.line().stream().map(TiedModel::json).toList()))
                .with("half", number(strand.half()))
                .with(
                        "middles",
                        JsonValue.of(
                                strand.middles().stream().map(TiedModel::json).toList()))
                .with("left", json(strand.left()))
                .done();
    }

    private static JsonValue json(Vector place) {
        return JsonValue.object()
                .with("x", number(rounded(place.x())))
                .with("y", number(rounded(place.y())))
                .with("z", number(rounded(place.z())))
                .done();
    }

    /** To a thousandth of a millimetre. */
    private static double rounded(double number) {
        return Math.round(number * 1000) / 1000.0;
    }

    private static JsonValue json(Share share) {
        return JsonValue.object()
                .with("x", number(share.x()))
                .with("y", number(share.y()))
                .done();
    }

    private static JsonValue number(double number) {
        return JsonValue.of(BigDecimal.valueOf(number));
    }
}
