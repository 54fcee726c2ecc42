package hearthcloth.plan.rework;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.colour.Colour;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.MendingSentences;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.Sentence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Plans the rest of a cloth again from what is there: the sewn work, the patches cut for later bars, the stash. What is
 * sewn stays as it is; a bar that is already cut and still long enough is used unchanged; only the others are cut anew.
 *
 * <p>Every piece that was cut stays in the new plan as it was cut, as a past one, so that guide and figures tell the whole
 * story; a patch that is not used any more is left of it.
 */
public final class RemainingPlan {

    static final String WORK = "sewn-work";

    private final Plan before;
    private final int bars;
    private final Map<String, Length> real;
    private final Map<String, List<Patch>> parts = new LinkedHashMap<>();
    private final Map<String, Plan.Source> sources;

    /**
     * Starts from the plan that was cut, of which {@code bars} bars are sewn on.
     *
     * @param real the measured raw length, joined, of bars not sewn yet that turned out shorter or longer than planned
     */
    public RemainingPlan(Plan before, int bars, Map<String, Length> real) {
        this.before = before;
        this.bars = bars;
        this.real = Map.copyOf(real);
        this.sources = before.sources();
        for (Patch patch : before.cloth().patches()) {
            // A patch that was only asked for is not there to be sewn.
            if (sources.containsKey(patch.place().id())) {
                parts.computeIfAbsent(bar(patch.place()), none -> new ArrayList<>())
                        .add(patch);
            }
        }
    }

    /**
     * The plan from here on.
     *
     * @param cuts to be made now, from pieces of the stash and of {@code come}
     * @param come patches that were cut and are not sewn in as they were planned: fabric again, some of it cut now
     */
    public record Resewn(Plan plan, List<PieceCut> cuts, List<Piece> come) {
        public Resewn {
            cuts = List.copyOf(cuts);
            come = List.copyOf(come);
        }
    }

    /** The result of planning again: a plan, or sentences on what is short. */
    public sealed interface Answer {
        record Made(Resewn resewn) implements Answer {}

        record Lacking(List<Sentence> why) implements Answer {
            public Lacking {
                why = List.copyOf(why);
            }
        }
    }

    private static String bar(Place place) {
        return place instanceof Place.Bar bar ? bar.bar() : place.id();
    }

    /** The cut length of bar {@code name}, joined and not yet trimmed; zero where it was not cut. */
    public Length cutLength(String name) {
        Length length = Length.ZERO;
        List<Patch> of = parts.getOrDefault(name, List.of());
        for (int i = 0; i < of.size(); i++) {
            length = length.plus(along(of.get(i).place(), cut(of.get(i))));
            if (i > 0) {
                length = length.minus(before.cloth().making().seam().loss());
            }
        }
        return length;
    }

    /** The cut size of a patch, as it lies in the cloth. */
    Size cut(Patch patch) {
        CutTree.Kept kept =
                Objects.requireNonNull(sources.get(patch.place().id())).kept();
        return kept.turned() ? kept.at().size().turned() : kept.at().size();
    }

    private static Length along(Place place, Size size) {
        return place instanceof Place.Bar bar && bar.side().isUpright() ? size.height() : size.width();
    }

    private static Length across(Place place, Size size) {
        return place instanceof Place.Bar bar && bar.side().isUpright() ? size.width() : size.height();
    }

    /** The real cut lengths of the parts of a bar, in joining order. */
    List<Length> lengths(String name) {
        List<Length> lengths = new ArrayList<>();
        for (Patch patch : parts.getOrDefault(name, List.of())) {
            lengths.add(along(patch.place(), cut(patch)));
        }
        Length measured = real.get(name);
        if (measured != null && !lengths.isEmpty()) {
            int last = lengths.size() - 1;
            lengths.set(last, lengths.get(last).plus(measured).minus(cutLength(name)));
        }
        return lengths;
    }

    /**
     * What a patch that is cut and not sewn in measures, as it lies on its piece: of a bar that was measured, its last
     * part has the difference, so that nothing is planned from fabric that is not there.
     */
    Size realSize(Patch patch, CutTree.Kept kept) {
        Size cut = cut(patch);
        String name = bar(patch.place());
        List<Patch> of = parts(name);
        if (!real.containsKey(name) || !patch.equals(of.get(of.size() - 1))) {
            return kept.at().size();
        }
        Length along = lengths(name).get(of.size() - 1);
        if (!along.isPositive()) {
            throw new RefusedException(MendingSentences.noBar(Argument.text(name)));
        }
        boolean upright = patch.place() instanceof Place.Bar bar && bar.side().isUpright();
        Size size = upright ? new Size(cut.width(), along) : new Size(along, cut.height());
        return kept.turned() ? size.turned() : size;
    }

    /** The same of a patch by its name. */
    Size realSize(CutTree.Kept kept) {
        return parts.values().stream()
                .flatMap(List::stream)
                .filter(patch -> patch.place().id().equals(kept.patch()))
                .findFirst()
                .map(patch -> realSize(patch, kept))
                .orElse(kept.at().size());
    }

    /** Plans {@code after}, in which the sewn bars have their real sizes. */
    public Answer fit(Design after, Table table, Budget budget) {
        return answer(new RemainingWork(this, after, asTheyAre(after), table.next()), table, budget);
    }

    /**
     * What there is to cut from.
     *
     * @param stash what is there besides the patches of this cloth
     * @param next the first number that is free for a new piece
     * @param ruler she cuts with
     */
    public record Table(Stash stash, int next, Ruler ruler) {

        Table without(Piece piece) {
            return new Table(
                    new Stash(stash.pieces().stream()
                            .filter(one -> !one.equals(piece))
                            .toList()),
                    next,
                    ruler);
        }
    }

    /** For each bar that is cut and suffices for {@code after}, the finished lengths of its parts. */
    Map<String, List<Length>> asTheyAre(Design after) {
        Map<String, List<Length>> asTheyAre = new LinkedHashMap<>();
        Cloth whole = after.whole();
        Map<String, Laid> wanted = new LinkedHashMap<>();
        whole.laid().forEach(one -> wanted.put(one.patch().place().id(), one));
        List<Layout.Slot> slots = after.layout().slots();
        for (Layout.Slot slot : slots.subList(bars, slots.size())) {
            Laid bar = Objects.requireNonNull(wanted.get(slot.place().id()));
            List<Length> shown = sufficing(after, slot, bar);
            if (!shown.isEmpty()) {
                asTheyAre.put(slot.place().bar(), shown);
            }
        }
        return asTheyAre;
    }

    Answer answer(RemainingWork rest, Table table, Budget budget) {
        DesignFit.Answer answer = new DesignFit(rest.stash(table.stash()))
                .fit(rest.design(), before.story().title(), budget);
        return answer instanceof DesignFit.Answer.Made made
                ? new Answer.Made(rest.composed(made.plan()))
                : new Answer.Lacking(((DesignFit.Answer.Lacking) answer).why());
    }

    /**
     * The finished lengths of the parts of a cut bar as it is needed now; empty where the bar is too short, too wide,
     * or was never cut.
     */
    private List<Length> sufficing(Design after, Layout.Slot slot, Laid bar) {
        List<Patch> of = parts.getOrDefault(slot.place().bar(), List.of());
        if (of.isEmpty()
                || !((Place.Bar) of.get(0).place()).side().equals(slot.place().side())) {
            return List.of();
        }
        if (!across(slot.place(), cut(of.get(0))).equals(across(slot.place(), bar.cut()))) {
            return List.of();
        }
        List<Length> cut = lengths(slot.place().bar());
        List<Length> shown = after.finishedParts(bar, slot, cut);
        Length last = shown.get(shown.size() - 1);
        Length start = of.size() == 1
                ? Design.firstEnd(bar, slot)
                : after.making().seam().narrow();
        boolean reaches = !last.plus(start).plus(Design.lastEnd(bar, slot)).isMoreThan(cut.get(cut.size() - 1));
        boolean shows = of.size() == 1
                ? last.isPositive()
                : !last.isLessThan(after.rules().leastPiece());
        return reaches && shows ? shown : List.of();
    }

    Plan before() {
        return before;
    }

    int bars() {
        return bars;
    }

    /** The parts of a bar, or the hearth, as they were cut. */
    List<Patch> parts(String name) {
        return parts.getOrDefault(name, List.of());
    }

    /** The parts of a bar that is already sewn on; its last part takes the difference. */
    List<Layout.Part> sewn(Layout.Slot slot) {
        List<Patch> of = parts(slot.place().bar());
        Length left = slot.length();
        List<Layout.Part> out = new ArrayList<>();
        for (int i = 0; i < of.size(); i++) {
            Length length =
                    i + 1 < of.size() ? along(of.get(i).place(), of.get(i).size()) : left;
            if (!length.isPositive()) {
                throw new RefusedException(MendingSentences.noWork());
            }
            out.add(new Layout.Part(of.get(i).fabric(), of.get(i).showing(), length));
            left = left.minus(length);
        }
        return out;
    }

    /** The parts of a bar that is used as it was cut. */
    List<Layout.Part> kept(String name, List<Length> shown) {
        List<Layout.Part> out = new ArrayList<>();
        List<Patch> of = parts(name);
        for (int i = 0; i < of.size(); i++) {
            out.add(new Layout.Part(of.get(i).fabric(), of.get(i).showing(), shown.get(i)));
        }
        return out;
    }

    static Fabric standIn(String name, Stash stash) {
        String free = name;
        while (stash.fabric(free).isPresent()) {
            free += " itself";
        }
        return new Fabric(free, Colour.of(0x808080), Fabric.Faces.SAME, Fabric.Nap.LENGTHWISE);
    }
}
