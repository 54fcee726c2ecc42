package hearthcloth.draw;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Half;
import hearthcloth.cloth.Join;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Step;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.thread.Stitch;
import hearthcloth.sew.thread.ThreadNeed;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The plan file: everything about a plan that another program may want to read, as JSON. Lengths are whole nanometres and
 * areas whole square nanometres; places are measured from the top left of the front, or of the stock piece.
 */
record PlanFile(
        String format,
        int version,
        String units,
        SeamMeasures seam,
        HemMeasures hem,
        long leeway,
        long leastPiece,
        long clearance,
        Extent finished,
        List<Stock> stock,
        List<PatchEntry> patches,
        List<SeamEntry> seams,
        List<Offcut> offcuts,
        FigureEntry figures) {

    record SeamMeasures(long narrow, long wide) {}

    record HemMeasures(long first, long second) {}

    record Extent(long width, long height) {
        static Extent of(Size size) {
            return new Extent(size.width().nm(), size.height().nm());
        }
    }

    record Spot(long x, long y) {}

    record Area(long x, long y, long width, long height) {
        static Area of(Rect rect) {
            return new Area(
                    rect.x().nm(),
                    rect.y().nm(),
                    rect.width().nm(),
                    rect.height().nm());
        }
    }

    record Allowances(long left, long top, long right, long bottom) {}

    record Stock(String id, String fabric, long width, long length, int row) {}

    record PatchEntry(
            String id,
            String fabric,
            String role,
            @Nullable String bar,
            @Nullable Integer round,
            @Nullable String side,
            Area finished,
            Allowances allowances,
            Extent exact,
            Extent cut,
            String from,
            Spot at,
            boolean turned,
            String front) {}

    record SeamEntry(
            int step,
            String axis,
            List<String> first,
            List<String> second,
            String wraps,
            String kind,
            long length,
            Extent running) {}

    record Offcut(String from, long x, long y, long width, long height) {}

    record FigureEntry(
            int joins,
            int cuts,
            BigInteger lostArea,
            BigInteger offcutArea,
            BigInteger usedArea,
            BigInteger boundLostArea,
            int boundJoins,
            long threadLength,
            long seamLength) {}

    /**
     * The text of the file, indented by two blanks for each level and ended by a line break; an unpaired surrogate in a
     * name becomes U+FFFD.
     */
    static String text(Plan plan) {
        try {
            String json = JsonMapper.builder()
                    .build()
                    .writerWithDefaultPrettyPrinter()
                    .writeValueAsString(of(plan));
            return json.replaceAll("\\p{Cs}", "\ufffd") + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a plan that cannot be written", e);
        }
    }

    private static PlanFile of(Plan plan) {
        Cloth cloth = plan.cloth();
        var making = cloth.making();
        return new PlanFile(
                "hearthcloth-plan",
                1,
                "nm",
                new SeamMeasures(
                        making.seam().narrow().nm(), making.seam().wide().nm()),
                new HemMeasures(making.hem().first().nm(), making.hem().second().nm()),
                making.leeway().nm(),
                plan.rules().leastPiece().nm(),
                plan.rules().clearance().nm(),
                Extent.of(cloth.finished()),
                plan.cuts().stream().map(PlanFile::stock).toList(),
                patches(plan),
                cloth.steps().stream()
                        .map(step -> seam(step, making.seam().name()))
                        .toList(),
                offcuts(plan),
                figures(plan));
    }

    private static Stock stock(PieceCut cut) {
        var piece = cut.piece();
        return new Stock(
                piece.id(),
                piece.fabric().name(),
                piece.size().width().nm(),
                piece.size().height().nm(),
                piece.row());
    }

    private static List<PatchEntry> patches(Plan plan) {
        Map<String, Plan.Source> sources = plan.sources();
        return plan.cloth().laid().stream()
                .map(laid -> patch(
                        laid,
                        Objects.requireNonNull(sources.get(laid.patch().place().id()))))
                .toList();
    }

    private static PatchEntry patch(Laid laid, Plan.Source source) {
        Patch patch = laid.patch();
        Optional<Place.Bar> bar = patch.place() instanceof Place.Bar one ? Optional.of(one) : Optional.empty();
        var edges = laid.allowances();
        return new PatchEntry(
                patch.place().id(),
                patch.fabric(),
                bar.isPresent() ? "bar" : patch.place() instanceof Place.Hearth ? "hearth" : "patch",
                bar.map(Place.Bar::bar).orElse(null),
                bar.map(Place.Bar::round).orElse(null),
                bar.map(one -> one.side().word()).orElse(null),
                Area.of(laid.at()),
                new Allowances(
                        edges.left().nm(),
                        edges.top().nm(),
                        edges.right().nm(),
                        edges.bottom().nm()),
                Extent.of(laid.exact()),
                Extent.of(laid.cut()),
                source.from().piece().id(),
                new Spot(source.kept().at().x().nm(), source.kept().at().y().nm()),
                source.kept().turned(),
                patch.showing().word());
    }

    private static SeamEntry seam(Step step, String kind) {
        return new SeamEntry(
                step.number(),
                step.seam().join() == Join.BESIDE ? "vertical" : "horizontal",
                ids(step, Half.FIRST),
                ids(step, Half.SECOND),
                step.seam().wraps() == Half.FIRST ? "first" : "second",
                kind,
                step.length().nm(),
                Extent.of(step.running()));
    }

    private static List<String> ids(Step step, Half half) {
        return step.patches(half).stream().map(patch -> patch.place().id()).toList();
    }

    private static List<Offcut> offcuts(Plan plan) {
        List<Offcut> offcuts = new ArrayList<>();
        for (PieceCut cut : plan.cuts()) {
            for (Rect left : cut.tree().left()) {
                if (CutTree.isReusable(left.size(), plan.rules().leastPiece())) {
                    Area area = Area.of(left);
                    offcuts.add(new Offcut(cut.piece().id(), area.x(), area.y(), area.width(), area.height()));
                }
            }
        }
        return List.copyOf(offcuts);
    }

    private static FigureEntry figures(Plan plan) {
        BigInteger used = BigInteger.ZERO;
        BigInteger offcuts = BigInteger.ZERO;
        BigInteger lost = BigInteger.ZERO;
        for (PieceCut cut : plan.cuts()) {
            for (CutTree.Kept kept : cut.tree().kept()) {
                used = used.add(area(kept.at().size()));
            }
            for (Rect left : cut.tree().left()) {
                if (CutTree.isReusable(left.size(), plan.rules().leastPiece())) {
                    offcuts = offcuts.add(area(left.size()));
                } else {
                    lost = lost.add(area(left.size()));
                }
            }
        }
        var figures = plan.figures();
        return new FigureEntry(
                figures.joins(),
                figures.cuts(),
                lost,
                offcuts,
                used,
                BigDecimal.valueOf(plan.bound().lostMm2())
                        .movePointRight(12)
                        .setScale(0, RoundingMode.FLOOR)
                        .toBigInteger(),
                plan.bound().joins(),
                ThreadNeed.of(plan.cloth(), Stitch.USUAL).total().nm(),
                figures.seamLength().nm());
    }

    private static BigInteger area(Size size) {
        return BigInteger.valueOf(size.width().nm())
                .multiply(BigInteger.valueOf(size.height().nm()));
    }
}
