package hearthcloth.draw;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Half;
import hearthcloth.cloth.Join;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Step;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.json.JsonValue;
import hearthcloth.json.JsonWriter;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanFigures;
import hearthcloth.sew.thread.Stitch;
import hearthcloth.sew.thread.ThreadNeed;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * The plan file: everything about a plan that another program may want to read, as JSON. Lengths are whole nanometres and
 * areas whole square nanometres; places are measured from the top left of the front, or of the stock piece. Its schema is in
 * docs/formats. A cloth is sent in it too: fabrics carry their colours, and from seams, hem and patches the same cloth is made
 * again.
 */
final class PlanFile {

    private final Plan plan;

    private PlanFile(Plan plan) {
        this.plan = plan;
    }

    /**
     * The text of the file, indented by two blanks for each level and ended by a line break; an unpaired surrogate in a
     * name becomes U+FFFD.
     */
    static String text(Plan plan) {
        return JsonWriter.write(new PlanFile(plan).file());
    }

    private JsonValue file() {
        Cloth cloth = plan.cloth();
        Making making = cloth.making();
        return JsonValue.object()
                .with("format", "hearthcloth-plan")
                .with("version", 1)
                .with("units", "nm")
                .with("seam", seam(making.seam()))
                .with("hem", hem(making.hem()))
                .with("leeway", making.leeway().nm())
                .with("leastPiece", plan.rules().leastPiece().nm())
                .with("clearance", plan.rules().clearance().nm())
                .with("finished", size(cloth.finished()))
                .with(
                        "stock",
                        JsonValue.of(plan.cuts().stream().map(PlanFile::stock).toList()))
                .with("patches", patches())
                .with("seams", seams(cloth))
                .with("offcuts", offcuts())
                .with("figures", figures())
                .with("title", plan.story().title().english())
                .with(
                        "fabrics",
                        JsonValue.of(
                                plan.fabrics().stream().map(PlanFile::fabric).toList()))
                .with("making", making(making))
                .done();
    }

    private static JsonValue seams(Cloth cloth) {
        String name = cloth.making().seam().name();
        return JsonValue.of(cloth.steps().stream().map(step -> seam(step, name)).toList());
    }

    private static JsonValue seam(SeamKind seam) {
        return JsonValue.object()
                .with("narrow", seam.narrow().nm())
                .with("wide", seam.wide().nm())
                .done();
    }

    private static JsonValue hem(Hem hem) {
        return JsonValue.object()
                .with("first", hem.first().nm())
                .with("second", hem.second().nm())
                .done();
    }

    /** What else is needed to make the same cloth again. */
    private JsonValue making(Making making) {
        return JsonValue.object()
                .with("kind", making.seam().name())
                .with("band", making.seam().band().nm())
                .with("corner", making.hem().corner() == Hem.Corner.MITRED ? "mitred" : "square")
                .with("fell", making.fell() == Face.FRONT ? "front" : "back")
                .with("trim", making.trim().nm())
                .with("mark", making.margins().mark().nm())
                .with("mostJoins", plan.rules().mostJoins())
                .done();
    }

    private static JsonValue size(Size size) {
        return JsonValue.object()
                .with("width", size.width().nm())
                .with("height", size.height().nm())
                .done();
    }

    private static JsonValue area(Rect rect) {
        return JsonValue.object()
                .with("x", rect.x().nm())
                .with("y", rect.y().nm())
                .with("width", rect.width().nm())
                .with("height", rect.height().nm())
                .done();
    }

    private static JsonValue fabric(Fabric fabric) {
        JsonValue.Building written = JsonValue.object();
        fabric.wrong().ifPresent(colour -> written.with("wrong", colour.hex()));
        return written.with("name", fabric.name())
                .with("colour", fabric.colour().hex())
                .with("faces", fabric.faces().name().toLowerCase(Locale.ROOT))
                .with("nap", fabric.nap().name().toLowerCase(Locale.ROOT))
                .done();
    }

    private static JsonValue stock(PieceCut cut) {
        Piece piece = cut.piece();
        return JsonValue.object()
                .with("id", piece.id())
                .with("fabric", piece.fabric().name())
                .with("width", piece.size().width().nm())
                .with("length", piece.size().height().nm())
                .with("row", piece.row())
                .done();
    }

    private JsonValue patches() {
        Map<String, Plan.Source> sources = plan.sources();
        return JsonValue.of(plan.cloth().laid().stream()
                .map(laid -> patch(
                        laid,
                        Objects.requireNonNull(sources.get(laid.patch().place().id()))))
                .toList());
    }

    private static JsonValue patch(Laid laid, Plan.Source source) {
        Patch patch = laid.patch();
        var edges = laid.allowances();
        JsonValue.Building entry =
                JsonValue.object().with("id", patch.place().id()).with("fabric", patch.fabric());
        role(patch.place(), entry);
        return entry.with("finished", area(laid.at()))
                .with(
                        "allowances",
                        JsonValue.object()
                                .with("left", edges.left().nm())
                                .with("top", edges.top().nm())
                                .with("right", edges.right().nm())
                                .with("bottom", edges.bottom().nm())
                                .done())
                .with("exact", size(laid.exact()))
                .with("cut", size(laid.cut()))
                .with("from", source.from().piece().id())
                .with(
                        "at",
                        JsonValue.object()
                                .with("x", source.kept().at().x().nm())
                                .with("y", source.kept().at().y().nm())
                                .done())
                .with("turned", JsonValue.of(source.kept().turned()))
                .with("front", patch.showing().word())
                .done();
    }

    private static void role(Place place, JsonValue.Building entry) {
        if (place instanceof Place.Bar bar) {
            entry.with("role", "bar")
                    .with("bar", bar.bar())
                    .with("round", bar.round())
                    .with("side", bar.side().word());
        } else {
            entry.with("role", place instanceof Place.Hearth ? "hearth" : "patch")
                    .with("bar", new JsonValue.Nothing())
                    .with("round", new JsonValue.Nothing())
                    .with("side", new JsonValue.Nothing());
        }
    }

    private static JsonValue seam(Step step, String kind) {
        return JsonValue.object()
                .with("step", step.number())
                .with("axis", step.seam().join() == Join.BESIDE ? "vertical" : "horizontal")
                .with("first", ids(step, Half.FIRST))
                .with("second", ids(step, Half.SECOND))
                .with("wraps", step.seam().wraps() == Half.FIRST ? "first" : "second")
                .with("kind", kind)
                .with("length", step.length().nm())
                .with("running", size(step.running()))
                .done();
    }

    private static JsonValue ids(Step step, Half half) {
        return JsonValue.of(step.patches(half).stream()
                .map(patch -> JsonValue.of(patch.place().id()))
                .toList());
    }

    private JsonValue offcuts() {
        List<JsonValue> offcuts = new ArrayList<>();
        for (PieceCut cut : plan.cuts()) {
            for (Rect left : cut.tree().left()) {
                if (CutTree.isReusable(left.size(), plan.rules().leastPiece())) {
                    offcuts.add(JsonValue.object()
                            .with("from", cut.piece().id())
                            .with("x", left.x().nm())
                            .with("y", left.y().nm())
                            .with("width", left.width().nm())
                            .with("height", left.height().nm())
                            .done());
                }
            }
        }
        return JsonValue.of(offcuts);
    }

    /** Areas in square nanometres, summed exactly. */
    private record Areas(BigInteger used, BigInteger offcuts, BigInteger lost) {}

    private Areas areas() {
        BigInteger used = BigInteger.ZERO;
        BigInteger offcuts = BigInteger.ZERO;
        BigInteger lost = BigInteger.ZERO;
        for (PieceCut cut : plan.cuts()) {
            for (CutTree.Kept kept : cut.tree().kept()) {
                used = used.add(square(kept.at().size()));
            }
            for (Rect left : cut.tree().left()) {
                if (CutTree.isReusable(left.size(), plan.rules().leastPiece())) {
                    offcuts = offcuts.add(square(left.size()));
                } else {
                    lost = lost.add(square(left.size()));
                }
            }
        }
        return new Areas(used, offcuts, lost);
    }

    private JsonValue figures() {
        Areas areas = areas();
        PlanFigures figures = plan.figures();
        return JsonValue.object()
                .with("joins", figures.joins())
                .with("cuts", figures.cuts())
                .with("lostArea", whole(areas.lost()))
                .with("offcutArea", whole(areas.offcuts()))
                .with("usedArea", whole(areas.used()))
                .with(
                        "boundLostArea",
                        JsonValue.of(BigDecimal.valueOf(plan.bound().lostMm2())
                                .movePointRight(12)
                                .setScale(0, RoundingMode.FLOOR)))
                .with("boundJoins", plan.bound().joins())
                .with(
                        "threadLength",
                        ThreadNeed.of(plan.cloth(), Stitch.USUAL).total().nm())
                .with("seamLength", figures.seamLength().nm())
                .done();
    }

    private static JsonValue whole(BigInteger number) {
        return JsonValue.of(new BigDecimal(number));
    }

    private static BigInteger square(Size size) {
        return BigInteger.valueOf(size.width().nm())
                .multiply(BigInteger.valueOf(size.height().nm()));
    }
}
