package hearthcloth.draw.tied;

import hearthcloth.cloth.Cloth;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.json.JsonValue;
import hearthcloth.json.JsonWriter;
import hearthcloth.measure.Unit;
import hearthcloth.wrap.drape.Drape;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.Laying;
import hearthcloth.wrap.fold.ReefKnot;
import hearthcloth.wrap.pleat.ReefStrands;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;

/**
 * A draped cloth as a page can show it: a mesh in sixteen-bit numbers, the pictures of both faces to lay on it, and the
 * strands of the knots. Rows of numbers are little-endian, in base 64.
 *
 * @param step millimetres to one of {@code places}, of which there are three a point
 * @param cloth where each point lies on the plan's front: the share of its width and of its height, in 65535ths
 * @param triangles three numbers each, anticlockwise seen from the inner face
 * @param outer the face that shows, {@code inner} the other, as SVG seen as on the front
 */
public record DrapedModel(
        double step, String places, String cloth, String triangles, String outer, String inner, List<Strand> strands) {

    /**
     * An end of cloth in a knot.
     *
     * @param middles where each place of its middle line lies on the plan, as shares of width and height
     * @param left what one millimetre to the left of that line adds
     */
    record Strand(List<Model.Corner> line, double half, List<Share> middles, Share left) {

        public Strand {
            line = List.copyOf(line);
            middles = List.copyOf(middles);
        }
    }

    /** A place or a way on the plan, as shares of its width and height. */
    public record Share(double x, double y) {}

    private static final int FULL = 65535;
    private static final int HALF = 32000;

    public DrapedModel {
        strands = List.copyOf(strands);
    }

    static DrapedModel of(Cloth cloth, Drape drape, TiedLook look) {
        Fold fold = drape.fold();
        Plan plan = new Plan(fold.laying());
        Drape.Mesh mesh = drape.mesh();
        double most = 1;
        for (Vector place : mesh.places()) {
            most = Math.max(most, Math.max(Math.abs(place.x()), Math.max(Math.abs(place.y()), Math.abs(place.z()))));
        }
        double step = most / HALF;
        List<Integer> places = new ArrayList<>();
        List<Integer> shares = new ArrayList<>();
        for (int k = 0; k < mesh.places().size(); k++) {
            Vector place = mesh.places().get(k);
            places.add((int) Math.round(place.x() / step));
            places.add((int) Math.round(place.y() / step));
            places.add((int) Math.round(place.z() / step));
            Share at = plan.share(mesh.cloth().get(k));
            shares.add(whole(at.x()));
            shares.add(whole(at.y()));
        }
        ClothFaces faces = new ClothFaces(cloth, look);
        return new DrapedModel(
                step,
                packed(places),
                packed(shares),
                packed(mesh.triangles()),
                faces.svg(fold.fit().placing().out()),
                faces.svg(fold.fit().placing().out().other()),
                strands(fold, plan));
    }

    private static int whole(double share) {
        return (int) Math.round(FULL * Math.max(0, Math.min(1, share)));
    }

    private static String packed(List<Integer> numbers) {
        ByteBuffer bytes = ByteBuffer.allocate(2 * numbers.size()).order(ByteOrder.LITTLE_ENDIAN);
        numbers.forEach(number -> bytes.putShort(number.shortValue()));
        return Base64.getEncoder().encodeToString(bytes.array());
    }

    /** From the table to shares of the plan. */
    private record Plan(Laying laying) {

        Share share(Point onTable) {
            Point at = laying.plan(onTable);
            return new Share(
                    at.x() / laying.cloth().width().in(Unit.MILLIMETRE),
                    at.y() / laying.cloth().height().in(Unit.MILLIMETRE));
        }
    }

    private static List<Strand> strands(Fold fold, Plan plan) {
        List<Strand> strands = new ArrayList<>();
        for (ReefKnot knot : fold.knots()) {
            ReefStrands reef = ReefStrands.of(knot);
            strands.add(strand(knot, knot.leads().get(0), reef.first(), plan));
            strands.add(strand(knot, knot.leads().get(1), reef.second(), plan));
        }
        return strands;
    }

    private static Strand strand(ReefKnot knot, ReefKnot.Lead lead, List<Vector> line, Plan plan) {
        List<Share> middles = new ArrayList<>();
        double gone = 0;
        for (int i = 0; i < line.size(); i++) {
            gone += i == 0 ? 0 : line.get(i).minus(line.get(i - 1)).length();
            middles.add(plan.share(lead.after(gone)));
        }
        Share here = plan.share(lead.from());
        Share aside = plan.share(lead.from().plus(lead.axis().left()));
        return new Strand(
                line.stream().map(Model.Corner::of).toList(),
                Strands.TIGHT * knot.taken() / ReefStrands.UNITS,
                middles,
                new Share(aside.x() - here.x(), aside.y() - here.y()));
    }

    /** As JSON, on one line. */
    public String text() {
        return JsonWriter.tight(JsonValue.object()
                .with("step", number(step))
                .with("places", places)
                .with("cloth", cloth)
                .with("triangles", triangles)
                .with("outer", outer)
                .with("inner", inner)
                .with(
                        "strands",
                        JsonValue.of(strands.stream().map(DrapedModel::json).toList()))
                .done());
    }

    private static JsonValue json(Strand strand) {
        return JsonValue.object()
                .with(
                        "line",
                        JsonValue.of(strand.line().stream().map(Model::json).toList()))
                .with("half", number(strand.half()))
                .with(
                        "middles",
                        JsonValue.of(
                                strand.middles().stream().map(DrapedModel::json).toList()))
                .with("left", json(strand.left()))
                .done();
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
