package hearthcloth.plan.fit;

import hearthcloth.cloth.Assembly;
import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Rect;
import hearthcloth.cloth.Seam;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cutstock.cutjoin.Recut;
import hearthcloth.cutstock.job.CutPiece;
import hearthcloth.cutstock.job.CutPlan;
import hearthcloth.cutstock.job.Cutting;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Bound;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanCheck;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * The search's answer to a {@link CutJob}, converted back into a cloth. It is built as an ordinary {@link Cloth} and
 * checked by the cloth's folds, so that an error of the search cannot print a wrong instruction.
 *
 * @param turned the patches that lie with their other face on the front, by the name of their place
 */
public record CutAnswer(CutJob job, CutPlan found, Set<String> turned) {

    public CutAnswer {
        turned = Set.copyOf(turned);
    }

    /** Every patch as its fabric lies usually. */
    public CutAnswer(CutJob job, CutPlan found) {
        this(job, found, Set.of());
    }

    /** The same with these patches turned over and no others. */
    public CutAnswer turned(Set<String> others) {
        return new CutAnswer(job, found, others);
    }

    /** The cloth and its cuts as the search's answer describes them. */
    public Plan plan(Plan.Story story, Bound bound) {
        Cloth cloth = cloth();
        Map<String, Laid> laid = new LinkedHashMap<>();
        cloth.laid().forEach(one -> laid.put(one.patch().place().id(), one));
        List<PieceCut> cuts = new ArrayList<>();
        for (CutPiece cut : found.pieces()) {
            cuts.add(new PieceCut(job.piece(cut.piece().id()), tree(cut, laid)));
        }
        Plan plan = new Plan(story, cloth, job.design().rules(), cuts, bound);
        PlanCheck.require(plan);
        return plan;
    }

    /** The same parts from the same pieces, cut so that fewer and larger leftovers remain. */
    CutAnswer recut() {
        return new CutAnswer(job, Recut.of(job.job(), found), turned);
    }

    /** The pieces that are cut into. */
    public List<Piece> used() {
        return found.pieces().stream().map(cut -> job.piece(cut.piece().id())).toList();
    }

    /** The cloth of these parts. */
    public Cloth cloth() {
        List<List<Layout.Part>> bars = new ArrayList<>();
        for (int i = 0; i < job.slots().size(); i++) {
            List<CutPlan.Placed> parts = found.partsOf(i + 1);
            List<Length> cut = parts.stream()
                    .map(part -> job.mark().times(part.part().cutLength()))
                    .toList();
            List<Length> finished =
                    job.design().finishedParts(job.laidBar(i), job.slots().get(i), cut);
            List<Layout.Part> bar = new ArrayList<>();
            for (int part = 0; part < parts.size(); part++) {
                Fabric fabric = job.piece(parts.get(part).piece().id()).fabric();
                bar.add(new Layout.Part(fabric.name(), Design.showing(fabric), finished.get(part)));
            }
            bars.add(bar);
        }
        int hearth = found.partsOf(0).get(0).piece().id();
        Cloth cloth = job.design().sewn(job.piece(hearth).fabric(), bars);
        return turned.isEmpty() ? cloth : new Cloth(cloth.work().fold(new Turning(turned)), cloth.making());
    }

    private record Turning(Set<String> turned) implements Assembly.Fold<Assembly> {

        @Override
        public Assembly patch(Patch patch) {
            return turned.contains(patch.place().id())
                    ? new Patch(
                            patch.place(),
                            patch.fabric(),
                            patch.size(),
                            patch.showing().turnedOver())
                    : patch;
        }

        @Override
        public Assembly seam(Seam seam, Assembly first, Assembly second) {
            return Seam.of(seam.join(), seam.wraps(), first, second);
        }
    }

    private CutTree tree(CutPiece cut, Map<String, Laid> laid) {
        Piece piece = job.piece(cut.piece().id());
        return grown(cut.cutting(), Rect.at(Length.ZERO, Length.ZERO, piece.size()), laid);
    }

    /** The search's tree in lengths; what a piece measures beyond a whole mark stays with its last offcut. */
    private CutTree grown(Cutting cutting, Rect at, Map<String, Laid> laid) {
        if (cutting instanceof Cutting.Cut cut) {
            Length line = job.mark().times(cut.at());
            return CutTree.parted(
                    at,
                    cut.lengthwise(),
                    line,
                    grown(cut.first(), before(at, cut.lengthwise(), line), laid),
                    grown(cut.second(), after(at, cut.lengthwise(), line), laid));
        }
        if (cutting instanceof Cutting.Part part) {
            return kept(part, at, laid);
        }
        return new CutTree.Left(at);
    }

    /**
     * A part as it is cut. Where a seam takes no whole number of marks the search counts it as one more, and leaves a join
     * so much more than it needs; the patch is cut to its own size all the same.
     */
    private CutTree kept(Cutting.Part part, Rect at, Map<String, Laid> laid) {
        boolean upright = part.demand() == 0
                || job.slots().get(part.demand() - 1).place().side().isUpright();
        boolean turned = part.turned() == upright;
        Size cut = Objects.requireNonNull(laid.get(id(part))).cut();
        Size lies = turned ? cut.turned() : cut;
        Size size = new Size(
                job.mark().times(part.width()).min(lies.width()),
                job.mark().times(part.height()).min(lies.height()));
        CutTree kept = new CutTree.Kept(Rect.at(at.x(), at.y(), size), id(part), turned);
        return trimmed(kept, at);
    }

    /**
     * A part that reaches the piece's own edge is separated from the remainder smaller than a mark, if there is one.
     */
    private static CutTree trimmed(CutTree kept, Rect at) {
        CutTree tree = kept;
        Rect part = kept.at();
        if (part.height().isLessThan(at.height())) {
            Rect row = Rect.at(at.x(), at.y(), new Size(part.width(), at.height()));
            tree = CutTree.parted(row, false, part.bottom(), tree, new CutTree.Left(after(row, false, part.bottom())));
        }
        if (part.width().isLessThan(at.width())) {
            tree = CutTree.parted(at, true, part.right(), tree, new CutTree.Left(after(at, true, part.right())));
        }
        return tree;
    }

    private String id(Cutting.Part part) {
        if (part.demand() == 0) {
            return "hearth";
        }
        var place = job.slots().get(part.demand() - 1).place();
        return found.partsOf(part.demand()).size() == 1
                ? place.id()
                : place.part(part.index() + 1).id();
    }

    private static Rect before(Rect at, boolean upright, Length line) {
        return upright
                ? Rect.at(at.x(), at.y(), new Size(line.minus(at.x()), at.height()))
                : Rect.at(at.x(), at.y(), new Size(at.width(), line.minus(at.y())));
    }

    private static Rect after(Rect at, boolean upright, Length line) {
        return upright
                ? Rect.at(line, at.y(), new Size(at.right().minus(line), at.height()))
                : Rect.at(at.x(), line, new Size(at.width(), at.bottom().minus(line)));
    }
}
